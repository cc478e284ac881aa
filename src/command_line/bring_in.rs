//! `evensip bring-in`: what a price list, a schema.org recipe or another shop's recipe would do to a book; with `--accept`
//! it is done.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;

use super::bring_in_list::{failed, is_among, price_list, row_matched};
use super::{BringInArguments, Failure, print, report_errors, speaker};
use crate::book::{self, Book, IngredientId};
use crate::book_file::{self, Loaded, SaveError};
use crate::edit::{Edit, Focus, History};
use crate::exchange::{
    LineMapping, MappedTo, MappingReason, RecipeExchangeError, arrival, propose_mappings,
    read_json_ld, read_recipe, utf8_text,
};
use crate::quantity::show_number;
use crate::say::{Speaker, say};

/// Why nothing is written although it was accepted.
#[derive(Debug, PartialEq, Eq)]
enum AcceptFault {
    /// A save would drop the comments of the text.
    Comments(PathBuf),
    /// Another program wrote the book after it was read.
    ChangedMeanwhile(PathBuf),
}

impl AcceptFault {
    fn words(&self) -> String {
        let path = |path: &Path| path.display().to_string();
        match self {
            Self::Comments(at) => say!(speaker(), "command-book-has-comments", path: path(at)),
            Self::ChangedMeanwhile(at) => {
                say!(speaker(), "command-book-changed-meanwhile", path: path(at))
            }
        }
    }
}

pub(super) fn run(arguments: &BringInArguments) -> Result<ExitCode, Failure> {
    let loaded = book_file::load(&arguments.book)
        .map_err(|error| Failure::Book(speaker().load_error(&error)))?;
    let bytes = book_file::read_bytes(&arguments.file)
        .map_err(|error| Failure::Book(speaker().read_error(&error)))?;
    let ending = arguments
        .file
        .extension()
        .and_then(|ending| ending.to_str());
    let (mut text, edit) = match ending.map(str::to_lowercase).as_deref() {
        Some("ron") => recipe_of_shop(&loaded.book, arguments, &bytes)?,
        Some("json" | "jsonld") => schema_recipe(&loaded.book, arguments, &bytes)?,
        _ => price_list(&loaded.book, arguments, &bytes)?,
    };
    let mut findings = loaded.findings.clone();
    // Written before anything is said: nobody may be listening.
    let end = match edit {
        Some(edit) if arguments.accept => {
            // Held to the limits that opening keeps.
            let book = Arc::new(loaded.book.clone());
            let mut history = History::new(book).measured_by(book_file::text_measure());
            history
                .perform(vec![edit], Focus::Book)
                .map_err(|error| failed(&loaded.book, &error))?;
            let path = &arguments.book;
            let end = accept(&loaded, history.book(), path, arguments.drop_comments)?;
            findings = book::findings(history.book());
            end
        }
        Some(_) => speaker().word("command-nothing-written").to_owned(),
        None => speaker().word("command-nothing-changes").to_owned(),
    };
    let _ = writeln!(text, "{end}");
    print(&text)?;
    Ok(report_errors(&loaded.book, &findings))
}

/// Writes the book, guarded as a save of the window is, and tells what was done.
pub(super) fn accept(
    loaded: &Loaded,
    after: &Book,
    path: &Path,
    drop_comments: bool,
) -> Result<String, Failure> {
    if loaded.text_has_comments && !drop_comments {
        let fault = AcceptFault::Comments(path.to_owned());
        return Err(Failure::Usage(fault.words()));
    }
    let saved = book_file::save_over(path, after, &loaded.fingerprint).map_err(|error| {
        Failure::Book(match error {
            SaveError::ChangedOnDisk { path } => AcceptFault::ChangedMeanwhile(path).words(),
            error => speaker().save_error(&error),
        })
    })?;
    let path = path.display().to_string();
    Ok(match saved.earlier {
        Ok(_) => say!(speaker(), "command-written", path: path),
        Err(error) => {
            let error = error.to_string();
            say!(speaker(), "command-written-without-copy", path: path, error: error)
        }
    })
}

fn schema_recipe(
    book: &Book,
    arguments: &BringInArguments,
    bytes: &[u8],
) -> Result<(String, Option<Edit>), Failure> {
    let speaker = Speaker::new(book);
    let text = utf8_text(bytes).map_err(|error| Failure::Book(speaker.not_utf8(error)))?;
    let read = read_json_ld(text).map_err(|error| Failure::Book(speaker.json_ld_error(error)))?;
    let name = speaker.read_recipe_name(&read);
    let mut chosen = BTreeMap::new();
    for text in &arguments.map {
        let (line, to) = row_matched(book, text)?;
        // Ingredients are counted from 1, as people do.
        is_among(line, 1..=read.ingredients.len() as u64)?;
        let at = usize::try_from(line).unwrap_or(usize::MAX).wrapping_sub(1);
        chosen.insert(at, to);
    }
    let arrival = read
        .arrive(book, &name, &chosen, &|new| speaker.new_measure(new))
        .map_err(|error| failed(book, &error))?;
    let after = speaker.about(&arrival.after);
    let mut text = format!("{} ({})\n", read.name, read.makes);
    for line in &arrival.lines {
        let said =
            say!(speaker, "command-sentence", text: &line.text, becomes: after.becomes(line));
        let _ = writeln!(text, "  {said}");
        for question in &line.questions {
            let _ = writeln!(text, "    {}", after.recipe_question(question));
        }
    }
    let _ = writeln!(text, "  {}", speaker.word("question-not-in-file"));
    for left in &read.left_out {
        let left_out = say!(speaker, "command-left-out", text: left);
        let _ = writeln!(text, "  {left_out}");
    }
    Ok((text, Some(arrival.edit)))
}

fn recipe_of_shop(
    book: &Book,
    arguments: &BringInArguments,
    bytes: &[u8],
) -> Result<(String, Option<Edit>), Failure> {
    let speaker = Speaker::new(book);
    let text = utf8_text(bytes).map_err(|error| Failure::Book(speaker.not_utf8(error)))?;
    let (foreign, _) = book_file::parse(text)
        .map_err(|problems| Failure::Book(speaker.load_problems(&problems)))?;
    let exchange_failed =
        |error: RecipeExchangeError| Failure::Book(speaker.recipe_exchange_error(&error));
    let foreign = read_recipe(foreign).map_err(exchange_failed)?;
    let mut mappings = propose_mappings(book, &foreign);
    for text in &arguments.map {
        map_by_hand(book, &mut mappings, text)?;
    }
    let arrived = arrival(book, &foreign, &mappings).map_err(exchange_failed)?;
    let mut sheet = format!("{}\n", arrived.recipe.name);
    for mapping in &mappings {
        let to = match &mapping.to {
            MappedTo::Ours(id) => book
                .ingredient(id)
                .map_or_else(|| id.to_string(), |item| item.full_name()),
            MappedTo::Added => speaker.word("command-added-as-it-is").to_owned(),
        };
        let said = say!(
            speaker,
            "command-mapping",
            name: &mapping.foreign.name,
            id: mapping.foreign.ingredient.as_str(),
            to: to,
            why: speaker.mapping_reason(mapping),
        );
        let _ = writeln!(sheet, "  {said}");
    }
    let distance = |distance: Option<f64>| {
        distance.map_or_else(
            || speaker.word("command-not-known").to_owned(),
            |distance| show_number(distance, 2),
        )
    };
    let said = say!(
        speaker,
        "command-arrival",
        plain: distance(arrived.plain.distance),
        brought: distance(arrived.difference.distance),
        arrival: speaker.arrival(&arrived),
    );
    let _ = writeln!(sheet, "  {said}");
    let note = speaker.arrival_note(&arrived);
    let edit = arrived
        .edit(book, note)
        .map_err(|error| failed(book, &error))?;
    Ok((sheet, Some(edit)))
}

/// "THEIRS=OURS"; an empty right side adds theirs.
fn map_by_hand(book: &Book, mappings: &mut [LineMapping], text: &str) -> Result<(), Failure> {
    let (theirs, ours) = text.split_once('=').ok_or_else(|| {
        let text = text.escape_debug().to_string();
        Failure::Usage(say!(speaker(), "command-enter-mapping", text: text))
    })?;
    let known: Vec<String> = mappings
        .iter()
        .map(|mapping| mapping.foreign.ingredient.to_string())
        .collect();
    let mapping = mappings
        .iter_mut()
        .find(|mapping| mapping.foreign.ingredient.as_str() == theirs)
        .ok_or_else(|| {
            super::unknown(
                "command-no-ingredient",
                theirs,
                known.iter().map(String::as_str),
            )
        })?;
    mapping.why = MappingReason::Chosen;
    mapping.to = if ours.is_empty() {
        MappedTo::Added
    } else {
        let id: IngredientId = super::ingredient_called(book, ours)?;
        MappedTo::Ours(id)
    };
    Ok(())
}
