//! What the list of ingredients offers for the words that are typed: those of the book, those of the published tables, and a
//! new one by that name.

use std::collections::HashSet;

use egui::{Response, Ui, vec2};

use crate::book::{Book, Entry, Evidence, Form, Ingredient, IngredientId, Role, WantedWords};
use crate::edit::Edit;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::counter_area;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::{name, pick_list};
use crate::workbench::{Begun, begin_batch, published_ingredients};

/// Most ingredients of the book that are listed; whoever does not find it types another letter.
const MOST_ROWS: usize = 60;
/// Most ingredients of the published tables that are listed.
const MOST_PUBLISHED: usize = 8;

/// A row of the list.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Choice<'book> {
    /// The book has it.
    InBook(&'book Ingredient),
    /// A published table has it.
    Published(&'static Ingredient),
    /// Nobody has it yet: it gets the name that is typed.
    New(String),
    /// Nobody has it yet, and the house will make it by a recipe of its own.
    MadeHere(String),
    /// A tea that the house will brew of a leaf that it has.
    Brewed(&'book Ingredient),
}

/// Most leaves of which a brew is offered.
const MOST_BREWS: usize = 3;

impl Choice<'_> {
    /// The ingredient with what puts it into the book; one that the book does not have yet gets an id that is free in it. `None`
    /// where nothing comes off a leaf.
    pub(super) fn taken(
        &self,
        book: &Book,
        speaker: Speaker<'_>,
    ) -> Option<(Ingredient, Vec<Edit>)> {
        let named = |name: &str| IngredientId::from_name(name, |id| book.ingredients.contains(id));
        let put = |item: Ingredient| {
            let edits = vec![Edit::PutIngredient(item.clone())];
            (item, edits)
        };
        let begun = |begun: Begun| {
            let mut put = begun.edits.iter().filter_map(|edit| match edit {
                Edit::PutIngredient(item) if item.id == begun.ingredient => Some(item.clone()),
                _ => None,
            });
            Some((put.next()?, begun.edits))
        };
        match self {
            Self::InBook(known) => Some(((*known).clone(), Vec::new())),
            Self::Published(found) => Some(put(Ingredient {
                id: named(&found.name),
                ..(*found).clone()
            })),
            Self::New(name) => Some(put(counter_area::new_ingredient(book, name))),
            Self::MadeHere(name) => {
                let item = counter_area::new_ingredient(book, name);
                begun(begin_batch(book, item, name))
            }
            Self::Brewed(leaf) => {
                let tea = counter_area::brewed_tea(book, speaker, leaf);
                begun(counter_area::begin_reference_brew(
                    book, speaker, tea, &leaf.id,
                )?)
            }
        }
    }
}

/// What the batches of the house are made of: a leaf among it is brewed already.
fn in_batches(book: &Book) -> HashSet<&IngredientId> {
    let made = book.ingredients.iter().map(|item| &item.house_made);
    let recipes = made.flatten().filter_map(|made| book.recipe(&made.recipe));
    let lines = recipes.flat_map(|recipe| recipe.entries.iter().filter_map(Entry::line));
    lines.map(|line| &line.ingredient).collect()
}

/// What can be chosen for a text. In place of another ingredient stands `current`.
pub(super) fn choices<'book>(
    book: &'book Book,
    text: &str,
    current: Option<&Ingredient>,
) -> Vec<Choice<'book>> {
    let name = text.trim();
    let in_book = matching(book, text, current);
    let listed = in_book.iter().take(MOST_ROWS).copied();
    let mut found: Vec<Choice<'_>> = listed.map(Choice::InBook).collect();
    let leaves = in_book.iter().take(MOST_ROWS).copied();
    let leaves = leaves.filter(|item| item.form == Form::Leaf && item.role == Role::Tea);
    let in_batches = in_batches(book);
    let unbrewed = leaves.filter(|leaf| !in_batches.contains(&leaf.id));
    found.extend(unbrewed.take(MOST_BREWS).map(Choice::Brewed));
    if name.is_empty() {
        return found;
    }
    // What is called like a row below has its words, and is among what fits.
    let called: HashSet<String> = in_book
        .iter()
        .flat_map(|known| [known.name.to_lowercase(), known.full_name().to_lowercase()])
        .collect();
    let is_called = |name: &str| called.contains(&name.to_lowercase());
    let wanted = WantedWords::of(text);
    let published = published_ingredients().ok();
    let published = published
        .into_iter()
        .flat_map(|tables| tables.ingredients.iter().map(AsRef::as_ref))
        .filter(|published| wanted.are_in(&published.name) && !is_called(&published.name));
    found.extend(published.take(MOST_PUBLISHED).map(Choice::Published));
    if !is_called(name) {
        found.push(Choice::New(name.to_owned()));
        found.push(Choice::MadeHere(name.to_owned()));
    }
    found
}

/// What fits in the book: names that begin with what was typed first, of the role that is wanted first, and what stands in the
/// line before all while nothing is typed; what is no longer sold last. The order of the book stays otherwise.
fn matching<'book>(
    book: &'book Book,
    text: &str,
    current: Option<&Ingredient>,
) -> Vec<&'book Ingredient> {
    let wanted = WantedWords::of(text);
    let mut found: Vec<&Ingredient> = book
        .ingredients
        .iter()
        .map(AsRef::as_ref)
        .filter(|ingredient| wanted.are_in(&format!("{} {}", ingredient.name, ingredient.brand)))
        .collect();
    let is_current =
        |ingredient: &Ingredient| current.is_some_and(|current| current.id == ingredient.id);
    let same_role =
        |ingredient: &Ingredient| current.is_some_and(|current| current.role == ingredient.role);
    found.sort_by_key(|ingredient| {
        (
            !(wanted.is_empty() && is_current(ingredient)),
            ingredient.no_longer_sold,
            !wanted.begin(&ingredient.name),
            !same_role(ingredient),
        )
    });
    found
}

/// A row for a choice.
pub(super) fn choice_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    choice: &Choice<'_>,
    chosen: bool,
    current: Option<&Ingredient>,
) -> Response {
    match choice {
        Choice::InBook(ingredient) => {
            let mut words = vec![
                name_as_shown(&ingredient.brand).into_owned(),
                speaker.form(ingredient.form).to_owned(),
            ];
            if current.is_some_and(|current| current.id == ingredient.id) {
                words.push(speaker.word("recipe-sheet-in-drink-now").to_owned());
            }
            if ingredient.no_longer_sold {
                words.push(speaker.sold(true).to_owned());
            }
            words.retain(|word| !word.is_empty());
            let (name, brand) = (
                name_as_shown(&ingredient.name),
                name_as_shown(&ingredient.brand),
            );
            let spoken = format!("{name} {brand}");
            ingredient_ui(ui, ingredient, chosen, spoken.trim(), &words.join(" · "))
        }
        Choice::Published(ingredient) => {
            let name = name_as_shown(&ingredient.name);
            let spoken = say!(speaker, "recipe-sheet-of-published-table", ingredient: name);
            let source = speaker.evidence_kind(Evidence::Published);
            let quiet = format!("{source} · {}", speaker.form(ingredient.form));
            ingredient_ui(ui, ingredient, chosen, &spoken, &quiet).on_hover_text(&ingredient.note)
        }
        Choice::New(name) => {
            let words = say!(speaker, "recipe-sheet-new-ingredient", name: name_as_shown(name));
            new_ui(
                ui,
                chosen,
                &words,
                speaker.word("recipe-sheet-new-ingredient-hint"),
            )
        }
        Choice::MadeHere(name) => {
            let words = say!(speaker, "recipe-sheet-new-batch", name: name_as_shown(name));
            new_ui(
                ui,
                chosen,
                &words,
                speaker.word("recipe-sheet-new-batch-hint"),
            )
        }
        Choice::Brewed(leaf) => {
            let name = leaf.full_name();
            let words = say!(speaker, "recipe-sheet-new-brew", leaf: name_as_shown(&name));
            new_ui(
                ui,
                chosen,
                &words,
                speaker.word("recipe-sheet-new-brew-hint"),
            )
        }
    }
}

/// A row for something that the book does not have yet.
fn new_ui(ui: &mut Ui, chosen: bool, words: &str, hint: &str) -> Response {
    let mut is_cut = false;
    let response = pick_list::row_ui(ui, grid::TARGET, chosen, words, None, |ui, room| {
        let colour = theme::palette(ui.visuals()).accent;
        is_cut = name::painted(ui, room, words, TypeStyle::Body, colour);
    });
    if is_cut {
        return response.on_hover_text(words).on_hover_text(hint);
    }
    response.on_hover_text(hint)
}

fn ingredient_ui(
    ui: &mut Ui,
    ingredient: &Ingredient,
    chosen: bool,
    spoken: &str,
    quiet: &str,
) -> Response {
    let (role, mut is_cut) = (Some(ingredient.role), false);
    let shown = name_as_shown(&ingredient.name);
    let response = pick_list::row_ui(ui, grid::TARGET, chosen, spoken, role, |ui, room| {
        let palette = theme::palette(ui.visuals());
        let (name, more) = ((&*shown, palette.text_strong), (quiet, palette.text_quiet));
        let (galley, cut) = name::elided_with_more(ui, name, more, None, room.width());
        is_cut = cut;
        let at = room.left_center() - vec2(0.0, galley.size().y / 2.0);
        ui.painter().galley(at, galley, palette.text_strong);
    });
    if is_cut {
        return response.on_hover_text(format!("{shown} · {quiet}"));
    }
    response
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_list_that_replaces_begins_with_what_stands_there_and_goes_on_with_its_role() {
        let book = crate::book_file::parse(include_str!("../../../sample-books/harrowmere.ron"))
            .unwrap()
            .0;
        let current = book
            .ingredients
            .iter()
            .find(|ingredient| ingredient.name.contains("Chestnut"))
            .unwrap();
        let names = |text: &str| -> Vec<(String, crate::book::Role)> {
            let found = matching(&book, text, Some(current));
            found
                .iter()
                .map(|found| (found.id.to_string(), found.role))
                .collect()
        };
        let all = names("");
        assert_eq!(all[0].0, current.id.to_string());
        assert_eq!(all[1].1, current.role);
        let last_same = all
            .iter()
            .rposition(|(_, role)| *role == current.role)
            .unwrap();
        assert!(
            all[..=last_same]
                .iter()
                .all(|(_, role)| *role == current.role)
        );
        assert!(
            names("whole milk")
                .iter()
                .all(|(id, _)| *id != current.id.to_string())
        );
    }

    #[test]
    fn the_published_tables_come_before_a_new_ingredient_and_a_known_name_brings_neither() {
        let empty = Book::default();
        let offered = choices(&empty, "water", None);
        let [
            Choice::Published(water),
            Choice::New(name),
            Choice::MadeHere(made),
        ] = offered.as_slice()
        else {
            panic!("{offered:?}");
        };
        assert_eq!(
            (water.name.as_str(), name.as_str(), made.as_str()),
            ("Water", "water", "water")
        );
        assert!(choices(&empty, " ", None).is_empty());
        let book = crate::book_file::parse(include_str!("../../../sample-books/harrowmere.ron"))
            .unwrap()
            .0;
        let offered = choices(&book, "Water", None);
        assert!(
            offered
                .iter()
                .all(|choice| matches!(choice, Choice::InBook(_)))
        );
        // A copy gets an id that is free in the book.
        let taken = Choice::Published(water).taken(&book, Speaker::without_book());
        assert!(!book.ingredients.contains(&taken.unwrap().0.id));
    }
}
