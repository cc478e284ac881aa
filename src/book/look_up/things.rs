//! What of a book can be found, and the piece of its text that says why.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;

use super::folded::folded;
use super::found::{FoundKind, Hit, KindWord, PIECE, Spot, Thing};
use super::texts::{contents, in_all_languages, in_other_languages, words_of_contents};
use super::{Fit, WantedWords};
use crate::book::{
    Book, Change, Entry, Ingredient, Level, LevelName, LineId, Recipe, Settings, Tasting, Version,
    VersionId,
};
use crate::quantity::excerpt;

/// Longest name that is shown, in characters.
const NAME: usize = 120;

/// The words for kinds, worked out once each.
struct Words<'further> {
    further: &'further dyn Fn(KindWord) -> Option<String>,
    known: RefCell<BTreeMap<KindWord, Rc<str>>>,
}

impl Words<'_> {
    /// The word that a book is written in, and the further one.
    fn of(&self, word: KindWord) -> Rc<str> {
        if let Some(known) = self.known.borrow().get(&word) {
            return known.clone();
        }
        let own = word.word();
        let words: Rc<str> = match (self.further)(word) {
            Some(further) if further != own => format!("{own} {further}").into(),
            _ => own.into(),
        };
        self.known.borrow_mut().insert(word, words.clone());
        words
    }

    fn of_kind(&self, kind: FoundKind) -> Rc<str> {
        self.of(KindWord::Found(kind))
    }
}

fn thing(kind: FoundKind, spot: Spot, name: &str, beside: &str, text: &str) -> Thing {
    let mut words = folded(name.trim());
    let name_ends = words.len();
    words.push('\n');
    words.push_str(&folded(beside));
    let beside_ends = words.len();
    if !text.trim().is_empty() {
        words.push('\n');
        words.push_str(&folded(text));
    }
    words.shrink_to_fit();
    Thing {
        kind,
        spot,
        words,
        name_ends,
        beside_ends,
    }
}

/// Everything, shelf by shelf.
pub(super) fn all(book: &Book, further: &dyn Fn(KindWord) -> Option<String>) -> Vec<Thing> {
    let words = &Words {
        further,
        known: RefCell::default(),
    };
    let mut things = Vec::new();
    for recipe in &book.recipes {
        of_recipe(book, recipe, words, &mut things);
    }
    for tasting in &book.tastings {
        of_tasting(book, tasting, words, &mut things);
    }
    for item in &book.ingredients {
        of_ingredient(item, words, &mut things);
    }
    for item in &book.measures {
        let kind = FoundKind::Measure;
        // What it is and what one use of it is called: a pump gives presses.
        let beside = [
            words.of_kind(kind),
            words.of(KindWord::Measure(item.kind)),
            words.of(KindWord::Use(item.kind)),
        ];
        let others = in_other_languages(&item.name, &item.translations);
        let beside = format!("{} {others}", beside.join(" "));
        let spot = Spot::Measure(item.id.clone());
        let note = in_all_languages(&item.note, &item.translations);
        things.push(thing(kind, spot, &item.name, &beside, &note));
    }
    for item in &book.vessels {
        let kind = FoundKind::Vessel;
        let what = words.of(KindWord::Vessel(item.kind));
        let others = in_other_languages(&item.name, &item.translations);
        let beside = format!("{} {what} {others}", words.of_kind(kind));
        let spot = Spot::Vessel(item.id.clone());
        let note = in_all_languages(&item.note, &item.translations);
        things.push(thing(kind, spot, &item.name, &beside, &note));
    }
    of_shop(&book.settings, words, &mut things);
    things
}

fn of_shop(settings: &Settings, words: &Words<'_>, things: &mut Vec<Thing>) {
    let levels = [
        (
            settings.sugar_levels(),
            FoundKind::SugarLevel,
            Spot::SugarLevel as fn(usize) -> Spot,
        ),
        (
            settings.ice_levels(),
            FoundKind::IceLevel,
            Spot::IceLevel as fn(usize) -> Spot,
        ),
    ];
    for (levels, kind, spot) in levels {
        for (at, level) in levels.iter().enumerate() {
            let name = match &level.name {
                LevelName::OfShop(name) => name.as_str().into(),
                LevelName::Percent => format!("{} %", level.percent).into(),
                LevelName::Ice(usual) => words.of(KindWord::Ice(*usual)),
            };
            let others = in_other_languages(&name, &settings.translations);
            let beside = format!("{} {others}", words.of_kind(kind));
            things.push(thing(kind, spot(at), &name, &beside, ""));
        }
    }
    if !settings.shop.trim().is_empty() {
        let kind = FoundKind::Shop;
        let beside = words.of_kind(kind);
        things.push(thing(kind, Spot::Shop, &settings.shop, &beside, ""));
    }
    if !settings.note.trim().is_empty() {
        let kind = FoundKind::Note;
        let beside = format!("{} {}", words.of(KindWord::Book), words.of_kind(kind));
        things.push(thing(kind, Spot::BookNote, "", &beside, &settings.note));
    }
}

fn of_ingredient(item: &Ingredient, words: &Words<'_>, things: &mut Vec<Thing>) {
    let kind = FoundKind::Ingredient;
    let (role, form) = (
        words.of(KindWord::Role(item.role)),
        words.of(KindWord::Form(item.form)),
    );
    let beside = [
        item.brand.as_str(),
        &item.supplier,
        &role,
        &form,
        &words.of_kind(kind),
        &in_other_languages(&item.name, &item.translations),
    ];
    let mut text = text_of_ingredient(item);
    text.push_str(&in_other_languages(&item.note, &item.translations));
    let spot = Spot::Ingredient(item.id.clone());
    things.push(thing(kind, spot, &item.name, &beside.join(" "), &text));
    for (at, flavour) in item.composition.flavours.iter().enumerate() {
        let kind = FoundKind::Flavour;
        let beside = format!("{} {} {}", item.name, item.brand, words.of_kind(kind));
        let spot = Spot::Flavour(item.id.clone(), at);
        things.push(thing(kind, spot, &flavour.name, &beside, ""));
    }
}

/// A tasting of drinks is found by its day, by who tasted, and by why and what was said; one of cups that were mixed has no sheet
/// that it stands on.
fn of_tasting(book: &Book, tasting: &Tasting, words: &Words<'_>, things: &mut Vec<Thing>) {
    let mut recipes = tasting.cups.iter().filter_map(|cup| cup.recipe.as_ref());
    let Some(recipe) = recipes.find_map(|id| book.recipe(id)) else {
        return;
    };
    let kind = FoundKind::Tasting;
    let people = tasting.people.join(" ");
    let beside = [&recipe.name, &tasting.date, &people, &*words.of_kind(kind)].join(" ");
    let spot = Spot::Tasting(recipe.id.clone(), tasting.id.clone());
    things.push(thing(kind, spot, "", &beside, &text_of_tasting(tasting)));
}

fn text_of_tasting(tasting: &Tasting) -> String {
    let notes = tasting.notes.iter();
    let notes = notes.flat_map(|note| [note.person.as_str(), note.text.as_str()]);
    let parts = std::iter::once(tasting.reason.as_str()).chain(notes);
    let parts: Vec<&str> = parts.filter(|part| !part.trim().is_empty()).collect();
    parts.join(" · ")
}

fn text_of_ingredient(item: &Ingredient) -> String {
    let parts = [&item.note, &item.statement, &item.lot];
    let parts = parts.map(|part| part.trim());
    parts
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join(" · ")
}

fn of_recipe(book: &Book, recipe: &Recipe, words: &Words<'_>, things: &mut Vec<Thing>) {
    let kind = FoundKind::Recipe;
    let state = words.of(KindWord::State(recipe.state));
    let others = in_other_languages(&recipe.name, &recipe.translations);
    let beside = format!("{state} {} {others}", words.of_kind(kind));
    let spot = Spot::Drink(recipe.id.clone(), None);
    let within = words_of_contents(book, recipe.ingredients());
    things.push(thing(kind, spot, &recipe.name, &beside, &within));
    if !recipe.note.trim().is_empty() {
        let kind = FoundKind::Note;
        let beside = format!("{} {}", recipe.name, words.of_kind(kind));
        let spot = Spot::RecipeNote(recipe.id.clone());
        let note = in_all_languages(&recipe.note, &recipe.translations);
        things.push(thing(kind, spot, "", &beside, &note));
    }
    for entry in &recipe.entries {
        of_entry(recipe, None, entry, words, things);
    }
    for version in &recipe.versions {
        of_version(book, recipe, version, words, things);
    }
    for (at, approval) in recipe.approvals.iter().enumerate() {
        let kind = FoundKind::Approval;
        let beside = format!(
            "{} {} {} {}",
            recipe.name,
            approval.date,
            approval.by,
            words.of_kind(kind)
        );
        let spot = Spot::Approval(recipe.id.clone(), at);
        things.push(thing(kind, spot, "", &beside, &approval.reason));
    }
}

fn of_version(
    book: &Book,
    recipe: &Recipe,
    version: &Version,
    words: &Words<'_>,
    things: &mut Vec<Thing>,
) {
    let kind = FoundKind::Version;
    let beside = format!(
        "{} {} {} {} {}",
        recipe.name,
        version.season,
        words.of(KindWord::State(version.state)),
        words.of_kind(kind),
        in_other_languages(&version.name, &recipe.translations),
    );
    let spot = Spot::Drink(recipe.id.clone(), Some(version.id.clone()));
    // What it takes over from the recipe is found there.
    let within = words_of_contents(book, version.ingredients_brought());
    things.push(thing(kind, spot, &version.name, &beside, &within));
    let id = Some(&version.id);
    for change in &version.changes {
        match change {
            Change::Note(line, note) => {
                of_text(recipe, id, line, FoundKind::Note, note, words, things);
            }
            Change::Instruction(line, text) => {
                of_text(
                    recipe,
                    id,
                    line,
                    FoundKind::Instruction,
                    text,
                    words,
                    things,
                );
            }
            Change::Add(_, entry) => of_entry(recipe, id, entry, words, things),
            _ => {}
        }
    }
}

fn of_entry(
    recipe: &Recipe,
    version: Option<&VersionId>,
    entry: &Entry,
    words: &Words<'_>,
    things: &mut Vec<Thing>,
) {
    let (kind, text) = match entry {
        Entry::Line(line) => (FoundKind::Note, &line.note),
        Entry::Instruction(instruction) => (FoundKind::Instruction, &instruction.text),
    };
    of_text(recipe, version, entry.id(), kind, text, words, things);
}

fn of_text(
    recipe: &Recipe,
    version: Option<&VersionId>,
    line: &LineId,
    kind: FoundKind,
    text: &str,
    words: &Words<'_>,
    things: &mut Vec<Thing>,
) {
    if text.trim().is_empty() {
        return;
    }
    let name = version.and_then(|id| recipe.version(id));
    let name = name.map_or("", |version| version.name.as_str());
    let beside = format!("{} {name} {}", recipe.name, words.of_kind(kind));
    let spot = Spot::Entry(recipe.id.clone(), version.cloned(), line.clone());
    let text = in_all_languages(text, &recipe.translations);
    things.push(thing(kind, spot, "", &beside, &text));
}

/// A thing that was found, with the piece of its text that says why; `None` when the book does not hold it.
pub(super) fn hit(book: &Book, thing: &Thing, fit: Fit, wanted: &WantedWords) -> Option<Hit> {
    let piece = |text: &dyn Fn() -> String| match fit {
        Fit::InText => wanted.piece_of(&text(), PIECE),
        _ => String::new(),
    };
    let in_text = |text: &str| piece(&|| text.to_owned());
    let level = |levels: &[Level], at: usize| match &levels.get(at)?.name {
        LevelName::OfShop(name) => Some(name.clone()),
        LevelName::Percent | LevelName::Ice(_) => Some(String::new()),
    };
    let (name, found) = match &thing.spot {
        Spot::Drink(recipe, None) => {
            let recipe = book.recipe(recipe)?;
            let within = || contents(book, recipe.ingredients());
            (recipe.name.clone(), piece(&within))
        }
        Spot::Drink(recipe, Some(version)) => {
            let version = book.recipe(recipe)?.version(version)?;
            let within = || contents(book, version.ingredients_brought());
            (version.name.clone(), piece(&within))
        }
        Spot::RecipeNote(recipe) => {
            let note = &book.recipe(recipe)?.note;
            (wanted.piece_of(note, PIECE), String::new())
        }
        Spot::Entry(recipe, version, line) => {
            let recipe = book.recipe(recipe)?;
            let text = text_of(recipe, version.as_ref(), line)?;
            (wanted.piece_of(text, PIECE), String::new())
        }
        Spot::Approval(recipe, at) => {
            let approval = book.recipe(recipe)?.approvals.get(*at)?;
            (wanted.piece_of(&approval.reason, PIECE), String::new())
        }
        Spot::Tasting(_, id) => {
            let text = text_of_tasting(book.tasting(id)?);
            (wanted.piece_of(&text, PIECE), String::new())
        }
        Spot::Ingredient(id) => {
            let item = book.ingredient(id)?;
            (item.name.clone(), in_text(&text_of_ingredient(item)))
        }
        Spot::Flavour(id, at) => {
            let flavours = &book.ingredient(id)?.composition.flavours;
            (flavours.get(*at)?.name.clone(), String::new())
        }
        Spot::Measure(id) => {
            let item = book.measure(id)?;
            (item.name.clone(), in_text(&item.note))
        }
        Spot::Vessel(id) => {
            let item = book.vessel(id)?;
            (item.name.clone(), in_text(&item.note))
        }
        Spot::SugarLevel(at) => (level(&book.settings.sugar_levels(), *at)?, String::new()),
        Spot::IceLevel(at) => (level(&book.settings.ice_levels(), *at)?, String::new()),
        Spot::Shop => (book.settings.shop.clone(), String::new()),
        Spot::BookNote => {
            let note = wanted.piece_of(&book.settings.note, PIECE);
            (note, String::new())
        }
    };
    Some(Hit {
        kind: thing.kind,
        spot: thing.spot.clone(),
        name: excerpt(&name, NAME),
        piece: found,
    })
}

/// The sentence of an instruction or the note on a line.
fn text_of<'book>(
    recipe: &'book Recipe,
    version: Option<&VersionId>,
    wanted: &LineId,
) -> Option<&'book str> {
    let of_entry = |entry: &'book Entry| match entry {
        Entry::Line(line) => line.note.as_str(),
        Entry::Instruction(instruction) => instruction.text.as_str(),
    };
    let Some(id) = version else {
        let entry = recipe.entries.iter().find(|entry| entry.id() == wanted)?;
        return Some(of_entry(entry));
    };
    let changes = &recipe.version(id)?.changes;
    changes.iter().find_map(|change| match change {
        Change::Note(line, text) | Change::Instruction(line, text) if line == wanted => {
            Some(text.as_str())
        }
        Change::Add(_, entry) if entry.id() == wanted => Some(of_entry(entry)),
        _ => None,
    })
}
