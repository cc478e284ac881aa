//! `evensip tasting`: the tastings that a book keeps, what they say of its ingredients, and taking that over.

use std::fmt::Write as _;
use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::Arc;

use clap::{Args, Subcommand, ValueEnum};
use serde_json::{Value, json};

use super::{Failure, facts, ingredient_called, open, print, print_json, report_errors, speaker};
use super::{bring_in, bring_in_list, recipe_called, unknown, version_called};
use crate::book::{
    Axis, Book, IngredientId, TasteNote, TastedCup, TastedFactor, Tasting, TastingId,
    TastingOutcome,
};
use crate::book_file;
use crate::edit::{Edit, Focus, History};
use crate::quantity::excerpt;
use crate::say::{Speaker, say};
use crate::tasting::{DrinkEffect, Factor, Proposal, WeighedTasting, effects, learned};
use crate::workbench::{taking_over, today, verdict_of};

/// What to do about the tastings of a book.
#[derive(Debug, Subcommand)]
pub enum TastingCommand {
    /// List the tastings of a book, with what those of two cups show
    List(ListArguments),
    /// Enter a tasting
    Add(Box<AddArguments>),
    /// Delete a tasting
    Remove(RemoveArguments),
    /// Tell what all tastings that count say together of the ingredients, and what that would do to the drinks
    Weigh(WeighArguments),
    /// Take over what the tastings say of an ingredient; what was approved with it follows, since the tasted cups did not change
    TakeOver(TakeOverArguments),
    /// Give up what was taken over, so that the pack or the assumption holds again
    GiveUp(GiveUpArguments),
}

/// Arguments of `tasting list`.
#[derive(Debug, Args)]
pub struct ListArguments {
    /// The book
    book: PathBuf,
    /// Only tastings of this recipe
    #[arg(long)]
    recipe: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// What came out, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum OutcomeArgument {
    /// Nothing was counted; what people said stands in the notes
    Said,
    /// Three cups, two of them the same: how many found the odd one
    Triangle,
    /// A reference and two cups: how many found the one that is the same
    DuoTrio,
    /// Two cups, and agreed on beforehand that the second should have more: how many chose it
    Pair,
    /// Two cups, either of which may have more: how many chose the second
    PairEitherWay,
    /// The second cup was changed until it was as the first
    Matched,
    /// The second cup passed as equal to the first
    PassedAsEqual,
    /// The second cup has about so many times what the first has
    About,
}

/// Arguments of `tasting add`.
#[derive(Debug, Args)]
pub struct AddArguments {
    /// The book
    book: PathBuf,
    /// What came out
    #[arg(long, value_enum)]
    outcome: OutcomeArgument,
    /// A cup, first the one that the other is held against: RECIPE, RECIPE/VERSION or what was mixed, as
    /// "INGREDIENT=AMOUNT + INGREDIENT=AMOUNT"
    #[arg(long = "cup", value_name = "CUP")]
    cups: Vec<String>,
    /// What was asked about: sweetness, or the name of a flavour
    #[arg(long, value_name = "AXIS")]
    axis: Option<String>,
    /// How many people answered or agreed, each counted once
    #[arg(long, value_parser = clap::value_parser!(u32).range(1..=100_000), value_name = "COUNT")]
    people: Option<u32>,
    /// How many of them were right; in a pair, chose the second cup
    #[arg(long, value_name = "COUNT")]
    right: Option<u32>,
    /// With --outcome about: how many times as much the second cup has
    #[arg(long, value_parser = super::amount, value_name = "TIMES")]
    times: Option<f64>,
    /// Who tasted, by name or initials
    #[arg(long = "taster", value_name = "NAME")]
    tasters: Vec<String>,
    /// Why
    #[arg(long, default_value = "", value_name = "TEXT")]
    reason: String,
    /// The day; today when none is given
    #[arg(long, value_parser = super::day, value_name = "DAY")]
    date: Option<String>,
    /// The number that orders and codes were drawn from
    #[arg(long)]
    seed: Option<u64>,
    /// What somebody said of a cup, as PERSON/CUP=TEXT or PERSON/CUP/AXIS=TEXT; cups are counted from 1
    #[arg(long = "said", value_name = "PERSON/CUP=TEXT")]
    said: Vec<String>,
    /// Keep it without letting it count
    #[arg(long)]
    leave_out: bool,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// Arguments of `tasting remove`.
#[derive(Debug, Args)]
pub struct RemoveArguments {
    /// The book
    book: PathBuf,
    /// Id of the tasting
    id: String,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// Arguments of `tasting weigh`.
#[derive(Debug, Args)]
pub struct WeighArguments {
    /// The book
    book: PathBuf,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Which figure of an ingredient.
#[derive(Debug, Args)]
struct FactorArguments {
    /// Id of the ingredient
    #[arg(long)]
    ingredient: String,
    /// The flavour whose strength it is; how sweet the ingredient is when none is given
    #[arg(long, value_name = "NAME")]
    flavour: Option<String>,
    /// Write although the book has text comments, which are lost
    #[arg(long)]
    drop_comments: bool,
}

/// Arguments of `tasting take-over`.
#[derive(Debug, Args)]
pub struct TakeOverArguments {
    /// The book
    book: PathBuf,
    #[command(flatten)]
    factor: FactorArguments,
    /// Who takes it over
    #[arg(long, value_name = "NAME")]
    by: String,
    /// Why
    #[arg(long, default_value = "", value_name = "TEXT")]
    reason: String,
    /// The day; today when none is given
    #[arg(long, value_parser = super::day, value_name = "DAY")]
    date: Option<String>,
}

/// Arguments of `tasting give-up`.
#[derive(Debug, Args)]
pub struct GiveUpArguments {
    /// The book
    book: PathBuf,
    #[command(flatten)]
    factor: FactorArguments,
}

pub(super) fn run(command: &TastingCommand) -> Result<ExitCode, Failure> {
    match command {
        TastingCommand::List(arguments) => list(arguments),
        TastingCommand::Add(arguments) => add(arguments),
        TastingCommand::Remove(arguments) => remove(arguments),
        TastingCommand::Weigh(arguments) => weigh(arguments),
        TastingCommand::TakeOver(arguments) => take_over(arguments),
        TastingCommand::GiveUp(arguments) => give_up(arguments),
    }
}

fn list(arguments: &ListArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = match &arguments.recipe {
        Some(text) => Some(recipe_called(&book, text)?.id.clone()),
        None => None,
    };
    let wanted = |tasting: &&Arc<Tasting>| recipe.as_ref().is_none_or(|id| tasting.is_of(id));
    let tastings: Vec<&Arc<Tasting>> = book.tastings.iter().filter(wanted).collect();
    let about = Speaker::new(&book);
    if arguments.json {
        let tastings: Vec<Value> = tastings
            .iter()
            .map(|one| tasting_json(about, one))
            .collect();
        print_json(&json!({ "tastings": tastings }))?;
        return Ok(report_errors(&book, &findings));
    }
    let mut text = String::new();
    for tasting in &tastings {
        let _ = writeln!(text, "{}", tasting_text(about, tasting));
    }
    if tastings.is_empty() {
        text.push_str(speaker().word("command-no-tastings"));
    }
    print(&text)?;
    Ok(report_errors(&book, &findings))
}

fn tasting_text(about: Speaker<'_>, tasting: &Tasting) -> String {
    let people = about.tasters(tasting);
    let mut text = say!(
        speaker(),
        "command-tasting",
        id: tasting.id.as_str(),
        tasting: about.name_of_tasting(tasting),
        outcome: about.tasting_outcome(tasting.outcome),
        counts: about.tasting_counts(tasting.counts),
    );
    if !people.is_empty() {
        let by = say!(speaker(), "command-tasting-people", people: people);
        let _ = write!(text, "\n  {by}");
    }
    for (number, cup) in (1..).zip(&tasting.cups) {
        let number: usize = number;
        let cup = about.tasted_cup(cup);
        let cup = say!(speaker(), "command-tasting-cup", number: number, cup: cup);
        let _ = write!(text, "\n  {cup}");
    }
    for remark in verdict_of(tasting.outcome) {
        let _ = write!(text, "\n  {}", about.tasting_remark(&remark));
    }
    for note in &tasting.notes {
        let (person, number) = (excerpt(&note.person, TEXT), note.cup.to_string());
        let text_of_note = excerpt(&note.text, TEXT);
        let said = match &note.axis {
            None => say!(
                speaker(),
                "command-tasting-said",
                person: person,
                number: number,
                text: text_of_note,
            ),
            Some(axis) => say!(
                speaker(),
                "command-tasting-said-of",
                person: person,
                number: number,
                axis: about.axis(axis),
                text: text_of_note,
            ),
        };
        let _ = write!(text, "\n  {said}");
    }
    text
}

/// Longest text of a person in a line, in characters.
const TEXT: usize = 120;

fn tasting_json(about: Speaker<'_>, tasting: &Tasting) -> Value {
    let cups = tasting.cups.iter().map(|cup| {
        json!({
            "recipe": cup.recipe.as_ref().map(AsRef::<str>::as_ref),
            "version": cup.version.as_ref().map(AsRef::<str>::as_ref),
            "name": about.tasted_cup(cup),
        })
    });
    let notes = tasting.notes.iter().map(|note| {
        json!({
            "person": note.person,
            "cup": note.cup,
            "axis": note.axis.as_ref().map(Axis::word),
            "note": note.text,
        })
    });
    let remarks = verdict_of(tasting.outcome);
    let remarks = remarks
        .iter()
        .map(|one| facts::remark(one).beside(json!({ "text": about.tasting_remark(one) })));
    json!({
        "id": tasting.id.as_str(),
        "date": tasting.date,
        "people": tasting.people,
        "note": tasting.reason,
        "axis": tasting.axis.as_ref().map(Axis::word),
        "result": facts::tasting_outcome(tasting.outcome),
        "counts": tasting.counts,
        "seed": tasting.seed,
        "cups": cups.collect::<Vec<_>>(),
        "notes": notes.collect::<Vec<_>>(),
        "remarks": remarks.collect::<Vec<_>>(),
    })
}

fn add(arguments: &AddArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let today = today();
    let date = arguments.date.clone().unwrap_or_else(|| today.clone());
    // Days are compared as text: each has its year first, and as many digits as any other.
    if date > today {
        let words = say!(speaker(), "command-tasting-in-future", day: date, today: today);
        return Err(Failure::Usage(words));
    }
    let id = TastingId::from_name(&date, |taken| book.tasting(taken).is_some());
    let cups = arguments.cups.iter().map(|text| cup_called(book, text));
    let axis = arguments.axis.as_deref();
    let axis = axis.map(|text| axis_called(book, text)).transpose()?;
    let notes = arguments.said.iter().map(|text| note_from(book, text));
    let tasting = Tasting {
        people: arguments.tasters.clone(),
        reason: arguments.reason.clone(),
        cups: cups.collect::<Result<_, _>>()?,
        axis,
        outcome: outcome(arguments)?,
        counts: !arguments.leave_out,
        seed: arguments.seed,
        notes: notes.collect::<Result<_, _>>()?,
        ..Tasting::new(id, date)
    };
    let said = tasting_text(Speaker::new(book), &tasting);
    write(
        &loaded,
        &arguments.book,
        after(book, Edit::PutTasting(tasting))?.as_ref(),
        arguments.drop_comments,
        &said,
    )
}

impl OutcomeArgument {
    /// An outcome of this kind in which nobody is counted yet.
    fn kind(self) -> TastingOutcome {
        let (people, right) = (0, 0);
        match self {
            Self::Said => TastingOutcome::Said,
            Self::Triangle => TastingOutcome::Triangle { people, right },
            Self::DuoTrio => TastingOutcome::DuoTrio { people, right },
            Self::Pair => TastingOutcome::Pair { people, right },
            Self::PairEitherWay => TastingOutcome::PairEitherWay { people, right },
            Self::Matched => TastingOutcome::Matched { people },
            Self::PassedAsEqual => TastingOutcome::PassedAsEqual { people },
            Self::About => TastingOutcome::About { people, times: 1.0 },
        }
    }
}

fn outcome(arguments: &AddArguments) -> Result<TastingOutcome, Failure> {
    fn needed<T: Default>(given: Option<T>, is_needed: bool, what: &str) -> Result<T, Failure> {
        let needs = || Failure::Usage(say!(speaker(), "command-tasting-needs", argument: what));
        if is_needed {
            given.ok_or_else(needs)
        } else {
            Ok(T::default())
        }
    }
    let kind = arguments.outcome.kind();
    let people = needed(arguments.people, kind.people().is_some(), "--people")?;
    let right = needed(arguments.right, kind.right().is_some(), "--right")?;
    if right > people {
        let (people, right) = (people.to_string(), right.to_string());
        let words = say!(speaker(), "command-more-right-than-people", people: people, right: right);
        return Err(Failure::Usage(words));
    }
    Ok(match kind.counting(people, right) {
        TastingOutcome::About { people, .. } => TastingOutcome::About {
            people,
            times: needed(arguments.times, true, "--times")?,
        },
        counted => counted,
    })
}

/// A drink as RECIPE or RECIPE/VERSION, or what was mixed as INGREDIENT=AMOUNT + INGREDIENT=AMOUNT.
fn cup_called(book: &Book, text: &str) -> Result<TastedCup, Failure> {
    if !text.contains('=') {
        let (recipe, version) = match text.split_once('/') {
            Some((recipe, version)) => (recipe, Some(version)),
            None => (text, None),
        };
        let recipe = recipe_called(book, recipe.trim())?;
        let version = version_called(recipe, version.map(str::trim))?;
        return Ok(TastedCup::of_drink(book, &recipe.id, version.as_ref()).unwrap_or_default());
    }
    let parts = text.split('+').map(|part| {
        let Some((ingredient, amount)) = part.split_once('=') else {
            let part = excerpt(part.trim(), super::REPEATED);
            return Err(Failure::Usage(
                say!(speaker(), "command-enter-cup", text: part),
            ));
        };
        let id = ingredient_called(book, ingredient.trim())?;
        let item = book.ingredient(&id).map(AsRef::as_ref);
        let amount = Speaker::new(book)
            .read_amount(amount.trim(), item, None)
            .map_err(Failure::Usage)?;
        Ok((id, amount))
    });
    let parts: Vec<_> = parts.collect::<Result<_, Failure>>()?;
    Ok(TastedCup::mixed(book, parts))
}

/// An axis by its word, or a flavour that an ingredient of the book has.
fn axis_called(book: &Book, text: &str) -> Result<Axis, Failure> {
    let fixed = Axis::FIXED.into_iter().find(|axis| axis.word() == text);
    if let Some(fixed) = fixed {
        return Ok(fixed);
    }
    let ingredients = book.ingredients.iter();
    let flavours = ingredients.flat_map(|item| &item.composition.flavours);
    let mut names: Vec<&str> = flavours.map(|flavour| flavour.name.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    if names.contains(&text) {
        return Ok(Axis::Flavour(text.to_owned()));
    }
    let fixed = Axis::FIXED;
    let known = names.into_iter().chain(fixed.iter().map(Axis::word));
    let known: Vec<&str> = known.collect();
    Err(unknown("command-no-axis", text, known.into_iter()))
}

/// PERSON/CUP=TEXT or PERSON/CUP/AXIS=TEXT.
fn note_from(book: &Book, typed: &str) -> Result<TasteNote, Failure> {
    let parts = typed.split_once('=').and_then(|(head, text)| {
        let mut head = head.splitn(3, '/');
        let (person, cup) = (head.next()?, head.next()?.trim().parse::<u32>().ok()?);
        Some((person.trim().to_owned(), cup, head.next(), text.trim()))
    });
    let Some((person, cup, axis, text)) = parts else {
        let typed = excerpt(typed, super::REPEATED);
        return Err(Failure::Usage(
            say!(speaker(), "command-enter-note", text: typed),
        ));
    };
    Ok(TasteNote {
        person,
        cup,
        axis: axis
            .map(|axis| axis_called(book, axis.trim()))
            .transpose()?,
        text: text.to_owned(),
    })
}

fn remove(arguments: &RemoveArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let found = TastingId::new(&arguments.id)
        .ok()
        .and_then(|id| book.tasting(&id));
    let Some(tasting) = found else {
        let known = book.tastings.iter().map(|tasting| tasting.id.as_str());
        return Err(unknown("command-no-tasting", &arguments.id, known));
    };
    let edit = Edit::RemoveTasting(tasting.id.clone());
    let said = Speaker::new(book).edit_label(&edit);
    write(
        &loaded,
        &arguments.book,
        after(book, edit)?.as_ref(),
        arguments.drop_comments,
        &said,
    )
}

fn weigh(arguments: &WeighArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let found = learned(&book);
    let proposals = found.proposals.iter().map(|proposal| {
        let effects = match taking_over(&found, proposal, "", "", "") {
            Some(edit) => after(&book, edit)
                .map(|after| effects(&book, &after, &proposal.factor))
                .unwrap_or_default(),
            None => Vec::new(),
        };
        (proposal, effects)
    });
    let proposals: Vec<(&Proposal, Vec<DrinkEffect>)> = proposals.collect();
    let about = Speaker::new(&book);
    if arguments.json {
        let proposals = proposals.iter().map(|(proposal, effects)| {
            let effects = effects.iter().map(|effect| {
                facts::drink_effect(effect).beside(json!({ "text": about.drink_effect(effect) }))
            });
            facts::proposal(proposal).beside(json!({
                "text": about.tasting_proposal(proposal),
                "effects": effects.collect::<Vec<_>>(),
            }))
        });
        let tastings = found.tastings.iter().map(|one| weighed_json(about, one));
        print_json(&json!({
            "settled": found.settled,
            "proposals": proposals.collect::<Vec<_>>(),
            "tastings": tastings.collect::<Vec<_>>(),
        }))?;
        return Ok(report_errors(&book, &findings));
    }
    let mut text = String::new();
    if let Some(why) = about.not_learned(&found) {
        let _ = writeln!(text, "{why}");
    }
    for (proposal, effects) in &proposals {
        let _ = writeln!(text, "{}", about.tasting_proposal(proposal));
        for effect in effects {
            let _ = writeln!(text, "  {}", about.drink_effect(effect));
        }
        if effects.is_empty() && !proposal.is_reference() {
            let _ = writeln!(text, "  {}", about.no_effect());
        }
    }
    for weighed in &found.tastings {
        if let Some(said) = about.weighed_tasting(weighed) {
            let _ = writeln!(text, "{said}");
        }
    }
    print(&text)?;
    Ok(report_errors(&book, &findings))
}

fn weighed_json(about: Speaker<'_>, weighed: &WeighedTasting) -> Value {
    let mut document = json!({
        "tasting": weighed.tasting.as_str(),
        "likely": weighed.likely.as_ref().ok(),
        "contradicts": weighed.contradicts,
    });
    if let Some(text) = about.weighed_tasting(weighed) {
        document["text"] = json!(text);
        return facts::weighed_tasting(weighed).beside(document);
    }
    document
}

/// The book with an edit carried out.
pub(super) fn after(book: &Book, edit: Edit) -> Result<Arc<Book>, Failure> {
    let mut history = History::new(Arc::new(book.clone())).measured_by(book_file::text_measure());
    history
        .perform(vec![edit], Focus::Book)
        .map_err(|error| bring_in_list::failed(book, &error))?;
    Ok(history.book().clone())
}

impl FactorArguments {
    fn factor(&self, book: &Book) -> Result<Factor, Failure> {
        Ok(Factor {
            ingredient: ingredient_called(book, &self.ingredient)?,
            what: match &self.flavour {
                Some(name) => TastedFactor::Flavour(name.clone()),
                None => TastedFactor::Sweetness,
            },
        })
    }
}

fn take_over(arguments: &TakeOverArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let factor = arguments.factor.factor(book)?;
    let found = learned(book);
    let proposal = found.proposal(&factor.ingredient, &factor.what);
    let date = arguments.date.clone().unwrap_or_else(today);
    let edit = proposal.and_then(|proposal| {
        taking_over(&found, proposal, &date, &arguments.by, &arguments.reason)
    });
    let (Some(proposal), Some(edit)) = (proposal, edit) else {
        return Err(nothing_of(book, &factor));
    };
    let about = Speaker::new(book);
    let mut said = about.tasting_proposal(proposal);
    let then = after(book, edit)?;
    for effect in effects(book, &then, &factor) {
        let _ = write!(said, "\n  {}", about.drink_effect(&effect));
    }
    write(
        &loaded,
        &arguments.book,
        &then,
        arguments.factor.drop_comments,
        &said,
    )
}

fn nothing_of(book: &Book, factor: &Factor) -> Failure {
    let about = Speaker::new(book);
    let what = about.tasted_factor(&factor.what);
    let ingredient: &IngredientId = &factor.ingredient;
    Failure::Usage(say!(
        speaker(),
        "command-nothing-tasted",
        ingredient: about.ingredient(ingredient),
        what: what,
    ))
}

fn give_up(arguments: &GiveUpArguments) -> Result<ExitCode, Failure> {
    let loaded = load(&arguments.book)?;
    let book = &loaded.book;
    let factor = arguments.factor.factor(book)?;
    let item = book.ingredient(&factor.ingredient);
    if item.is_none_or(|item| item.tasted_figure(&factor.what).is_none()) {
        return Err(nothing_of(book, &factor));
    }
    let Factor { ingredient, what } = factor;
    let edit = Edit::DropTasted { ingredient, what };
    let said = Speaker::new(book).edit_label(&edit);
    write(
        &loaded,
        &arguments.book,
        after(book, edit)?.as_ref(),
        arguments.factor.drop_comments,
        &said,
    )
}

pub(super) fn load(path: &std::path::Path) -> Result<book_file::Loaded, Failure> {
    book_file::load(path).map_err(|error| Failure::Book(speaker().load_error(&error)))
}

/// Writes the book as it is after an edit, then tells what was done: nobody may be listening.
pub(super) fn write(
    loaded: &book_file::Loaded,
    path: &std::path::Path,
    after: &Book,
    drop_comments: bool,
    said: &str,
) -> Result<ExitCode, Failure> {
    let end = bring_in::accept(loaded, after, path, drop_comments)?;
    print(&format!("{said}\n{end}"))?;
    Ok(report_errors(after, &crate::book::findings(after)))
}
