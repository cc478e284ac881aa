//! `evensip record`: what was read beside what had been foretold, and what that says of the doubts.

use std::fmt::Write as _;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Args, Subcommand, ValueEnum};
use serde_json::{Value, json};

use super::tasting::{after, load, write};
use super::{Failure, facts, open, print, print_json, recipe_called, report_errors, speaker};
use super::{unknown, version_called};
use crate::balance::balance_version;
use crate::book::{Book, CupQuantity, DoubtClass, RescaledDoubt};
use crate::edit::Edit;
use crate::record::{ClassRecord, RecordVerdict, filed_reading, record};
use crate::say::{Speaker, say};
use crate::workbench::{rescaling, rescaling_given_up, today};

/// What to do with the record of a book.
#[derive(Debug, Subcommand)]
pub enum RecordCommand {
    /// Tell how often readings lay inside two ± of what had been foretold, by class of doubt
    Show(ShowArguments),
    /// File a reading of a cup beside what is foretold of it now
    File(FileArguments),
    /// Take a reading of a cup out again
    Remove(RemoveArguments),
    /// Multiply the doubts of a class with what the record says
    Accept(AcceptArguments),
    /// Go back to the doubts of a class as they are assumed
    GiveUp(GiveUpArguments),
}

/// Arguments of `record show`.
#[derive(Debug, Args)]
pub struct ShowArguments {
    /// The book
    book: PathBuf,
    /// Also every reading
    #[arg(long)]
    readings: bool,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// What was read, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum WhatArgument {
    /// Temperature as it is handed over, °C
    Temperature,
    /// Soluble solids of the liquid, °Brix
    Brix,
    /// Weight of what is in the cup, g
    Weight,
}

impl From<WhatArgument> for CupQuantity {
    fn from(argument: WhatArgument) -> Self {
        match argument {
            WhatArgument::Temperature => Self::Temperature,
            WhatArgument::Brix => Self::Brix,
            WhatArgument::Weight => Self::Weight,
        }
    }
}

/// Arguments of `record file`.
#[derive(Debug, Args)]
pub struct FileArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// What was read
    #[arg(long, value_enum)]
    what: WhatArgument,
    /// What the instrument said
    #[arg(long, value_parser = super::amount, allow_negative_numbers = true, value_name = "NUMBER")]
    value: f64,
    /// Who read it
    #[arg(long, default_value = "", value_name = "NAME")]
    by: String,
    /// The day; today when none is given
    #[arg(long, value_parser = super::day, value_name = "DAY")]
    date: Option<String>,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// Arguments of `record remove`.
#[derive(Debug, Args)]
pub struct RemoveArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Which of its readings, counted from 1
    #[arg(long, value_name = "NUMBER")]
    number: usize,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// The class of doubt, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum ClassArgument {
    /// How much goes in
    Dose,
    /// How warm a drink is handed over
    Temperature,
    /// What is in it
    Composition,
    /// How sweet it tastes
    Sweetness,
    /// How strong a flavour is
    Flavour,
}

impl From<ClassArgument> for DoubtClass {
    fn from(argument: ClassArgument) -> Self {
        match argument {
            ClassArgument::Dose => Self::Dose,
            ClassArgument::Temperature => Self::Temperature,
            ClassArgument::Composition => Self::Composition,
            ClassArgument::Sweetness => Self::Sweetness,
            ClassArgument::Flavour => Self::Flavour,
        }
    }
}

/// Arguments of `record accept`.
#[derive(Debug, Args)]
pub struct AcceptArguments {
    /// The book
    book: PathBuf,
    /// The class of doubt
    #[arg(long, value_enum)]
    class: ClassArgument,
    /// Who accepts it
    #[arg(long, value_name = "NAME")]
    by: String,
    /// Why
    #[arg(long, default_value = "", value_name = "TEXT")]
    reason: String,
    /// The day; today when none is given
    #[arg(long, value_parser = super::day, value_name = "DAY")]
    date: Option<String>,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// Arguments of `record give-up`.
#[derive(Debug, Args)]
pub struct GiveUpArguments {
    /// The book
    book: PathBuf,
    /// The class of doubt
    #[arg(long, value_enum)]
    class: ClassArgument,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

pub(super) fn run(command: &RecordCommand) -> Result<ExitCode, Failure> {
    match command {
        RecordCommand::Show(arguments) => show(arguments),
        RecordCommand::File(arguments) => file(arguments),
        RecordCommand::Remove(arguments) => remove(arguments),
        RecordCommand::Accept(arguments) => accept(arguments),
        RecordCommand::GiveUp(arguments) => give_up(arguments),
    }
}

fn show(arguments: &ShowArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let found = record(&book);
    let about = Speaker::new(&book);
    if arguments.json {
        let classes = found.classes.iter();
        let classes = classes.map(|one| class_json(about, one, arguments.readings));
        let accepted = book.settings.doubts.iter();
        let accepted = accepted.map(|one| {
            facts::rescaled_doubt(one).beside(json!({ "text": about.rescaled_doubt(one) }))
        });
        print_json(&json!({
            "classes": classes.collect::<Vec<_>>(),
            "accepted": accepted.collect::<Vec<_>>(),
        }))?;
        return Ok(report_errors(&book, &findings));
    }
    let mut text = String::new();
    for one in &found.classes {
        let _ = writeln!(text, "{}", about.record_count(one));
        let _ = writeln!(text, "  {}", about.record_verdict(one));
        for scored in one.readings.iter().filter(|_| arguments.readings) {
            let _ = writeln!(text, "  {}", about.scored(scored));
        }
    }
    for doubt in &book.settings.doubts {
        let _ = writeln!(text, "{}", about.rescaled_doubt(doubt));
    }
    if text.is_empty() {
        text.push_str(speaker().word("record-none"));
    }
    print(&text)?;
    Ok(report_errors(&book, &findings))
}

fn class_json(about: Speaker<'_>, record: &ClassRecord, with_readings: bool) -> Value {
    let verdict = facts::record_verdict(record).beside(json!({
        "text": about.record_verdict(record),
    }));
    let mut document = json!({
        "class": record.class.word(),
        "inside": record.inside(),
        "readings": record.readings.len(),
        "offered": record.offered(),
        "verdict": verdict,
    });
    if with_readings {
        let each = record.readings.iter();
        let each = each.map(|one| facts::scored(one).beside(json!({ "text": about.scored(one) })));
        document["each"] = Value::Array(each.collect());
    }
    document
}

/// What is said of records that call for another doubt, beside the findings of a book.
pub(super) fn wrong_doubts(book: &Book) -> Vec<ClassRecord> {
    let is_wrong = |one: &ClassRecord| {
        matches!(
            one.verdict,
            RecordVerdict::TooSmall | RecordVerdict::TooLarge
        )
    };
    let found = record(book).classes.into_iter();
    found.filter(is_wrong).collect()
}

fn file(arguments: &FileArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let recipe = recipe_called(book, &arguments.recipe)?;
    let version = version_called(recipe, arguments.version.as_deref())?;
    let date = arguments.date.clone().unwrap_or_else(today);
    let reading = balance_version(book, recipe, version.as_ref()).and_then(|balance| {
        let read = (arguments.what.into(), arguments.value);
        let when = (date.as_str(), arguments.by.as_str());
        filed_reading(book, &balance, version.as_ref(), read, when)
    });
    let Some(reading) = reading else {
        return Err(Failure::Usage(
            speaker().word("record-not-foretold").to_owned(),
        ));
    };
    let class = reading.what.class();
    let edit = Edit::FileReading {
        recipe: recipe.id.clone(),
        reading,
    };
    let then = after(book, edit)?;
    let about = Speaker::new(&then);
    let mut said = String::new();
    if let Some(found) = record(&then).class(class) {
        let _ = write!(
            said,
            "{}\n{}",
            about.record_count(found),
            about.record_verdict(found)
        );
    }
    write(
        &loaded,
        &arguments.book,
        &then,
        arguments.drop_comments,
        &said,
    )
}

fn remove(arguments: &RemoveArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let recipe = recipe_called(book, &arguments.recipe)?;
    let Some(place) = arguments
        .number
        .checked_sub(1)
        .filter(|at| *at < recipe.readings.len())
    else {
        let numbers: Vec<String> = (1..=recipe.readings.len())
            .map(|one| one.to_string())
            .collect();
        let known = numbers.iter().map(String::as_str);
        return Err(unknown(
            "command-no-reading",
            &arguments.number.to_string(),
            known,
        ));
    };
    let edit = Edit::RemoveReading {
        recipe: recipe.id.clone(),
        place,
    };
    carry_out(&loaded, &arguments.book, edit, arguments.drop_comments)
}

fn accept(arguments: &AcceptArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let class = DoubtClass::from(arguments.class);
    let date = arguments.date.clone().unwrap_or_else(today);
    let found = record(book);
    let found = found.class(class);
    let edit =
        found.and_then(|found| rescaling(book, found, &date, &arguments.by, &arguments.reason));
    let Some(edit) = edit else {
        return Err(nothing_to_rescale(book, class));
    };
    let then = after(book, edit)?;
    let doubts = then.settings.doubts.iter();
    let said = doubts.rev().find(|one: &&RescaledDoubt| one.class == class);
    let said = said.map(|one| Speaker::new(&then).rescaled_doubt(one));
    let said = said.unwrap_or_default();
    write(
        &loaded,
        &arguments.book,
        &then,
        arguments.drop_comments,
        &said,
    )
}

fn give_up(arguments: &GiveUpArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let class = DoubtClass::from(arguments.class);
    let Some(edit) = rescaling_given_up(book, class) else {
        return Err(nothing_to_rescale(book, class));
    };
    carry_out(&loaded, &arguments.book, edit, arguments.drop_comments)
}

fn nothing_to_rescale(book: &Book, class: DoubtClass) -> Failure {
    let class = Speaker::new(book).doubt_class(class);
    Failure::Usage(say!(speaker(), "command-nothing-to-rescale", class: class))
}

fn carry_out(
    loaded: &crate::book_file::Loaded,
    path: &std::path::Path,
    edit: Edit,
    drop_comments: bool,
) -> Result<ExitCode, Failure> {
    let said = Speaker::new(&loaded.book).edit_label(&edit);
    let then = after(&loaded.book, edit)?;
    write(loaded, path, &then, drop_comments, &said)
}
