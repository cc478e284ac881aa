//! Below the lines: the note on the recipe, what the version changes, and what has been approved.

use egui::{Label, RichText, Sense, Ui, vec2};

use crate::book::{Change, IngredientId, LineId, RecipeId, Version, VesselId};
use crate::edit::Edit;
use crate::quantity::{name_as_shown, show_number};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::field::Field;
use crate::ui::safekeeping::approvals_ui;
use crate::ui::theme::{self, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::small_heading_ui;
use crate::workbench::Action;

pub(super) fn history_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if let Some(version) = screen
        .shown
        .version
        .as_ref()
        .and_then(|id| screen.recipe.version(id))
    {
        changes_ui(ui, screen, version);
    }
    note_ui(ui, screen, view, actions);
    approvals_ui(ui, screen, view, actions);
}

fn heading_ui(ui: &mut Ui, words: &str) {
    ui.add_space(grid::EASY);
    small_heading_ui(ui, words);
}

/// The name of the field of the note.
pub(in crate::ui) fn note_focus(recipe: &RecipeId) -> String {
    format!("field recipe-note {recipe}")
}

fn note_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    heading_ui(ui, "Note on the recipe");
    let key = note_focus(&screen.recipe.id);
    let field = Field::new(key.clone(), "Note on the recipe", &screen.recipe.note)
        .several_rows()
        .hint("What should the next person know?");
    let width = ui.available_width();
    let height = field.height(ui, &view.drafts, width);
    let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    let outcome = field.show(
        ui,
        rect.translate(vec2(-4.0, 0.0)),
        &mut view.drafts,
        actions,
    );
    if let Some(note) = outcome.changed {
        let edit = Edit::NoteRecipe {
            recipe: screen.recipe.id.clone(),
            note,
        };
        actions.push(Action::edit(edit, &key));
    }
}

/// What the version changes of what it builds on.
fn changes_ui(ui: &mut Ui, screen: &Screen<'_>, version: &Version) {
    let palette = theme::palette(ui.visuals());
    let on = version
        .builds_on
        .as_ref()
        .and_then(|id| screen.recipe.version(id));
    let on = on.map_or("the original recipe".into(), |on| name_as_shown(&on.name));
    heading_ui(ui, &format!("Changes from {on}"));
    if version.changes.is_empty() {
        ui.label(RichText::new("in nothing yet").color(palette.text_quiet));
    }
    for change in &version.changes {
        ui.add(
            Label::new(RichText::new(change_words(screen, change)).color(palette.text_normal))
                .wrap(),
        );
    }
}

/// "House sweetener: 1½ spoons".
fn change_words(screen: &Screen<'_>, change: &Change) -> String {
    let book = screen.book;
    let line_name = |id: &LineId| {
        let in_recipe = || {
            screen
                .recipe
                .entries
                .iter()
                .filter_map(|entry| entry.line())
                .find(|line| line.id == *id)
        };
        let line = screen.balance.resolved.line(id).or_else(in_recipe);
        line.map_or_else(
            || "instruction".to_owned(),
            |line| {
                book.ingredient(&line.ingredient).map_or_else(
                    || line.ingredient.to_string(),
                    |found| name_as_shown(&found.name).into_owned(),
                )
            },
        )
    };
    let vessel = |id: &VesselId| {
        book.vessel(id).map_or_else(
            || id.to_string(),
            |vessel| name_as_shown(&vessel.name).into_owned(),
        )
    };
    let celsius = |value: &Option<f64>| {
        value.map_or("as it comes".to_owned(), |value| {
            screen.units.temperature(value, 1)
        })
    };
    match change {
        Change::Ingredient(id, to) => {
            let before = screen
                .recipe
                .entries
                .iter()
                .filter_map(|entry| entry.line())
                .find(|line| line.id == *id);
            let name = |id: &IngredientId| {
                book.ingredient(id).map_or_else(
                    || id.to_string(),
                    |found| name_as_shown(&format!("{} {}", found.name, found.brand)).into_owned(),
                )
            };
            match before {
                Some(line) => format!(
                    "{} instead of {}",
                    name(to).trim(),
                    name(&line.ingredient).trim()
                ),
                None => format!("{} instead", name(to).trim()),
            }
        }
        Change::Amount(id, to) => format!(
            "{}: {}",
            line_name(id),
            book.amount_words_in(to, screen.units)
        ),
        Change::Temperature(id, to) => format!("{} at {}", line_name(id), celsius(to)),
        Change::Role(id, to) => format!("{} as {}", line_name(id), to.word()),
        Change::Stage(id, to) => {
            format!("{}: {}", line_name(id), Speaker::without_book().stage(*to))
        }
        Change::Carried(id, None) => format!("{} brings nothing along", line_name(id)),
        Change::Carried(id, Some(to)) => format!(
            "{} brings along {} g",
            line_name(id),
            show_number(to.grams, 1)
        ),
        Change::Note(id, _) => format!("{}: another note", line_name(id)),
        Change::Instruction(_, text) => format!("“{text}”"),
        Change::Add(_, entry) => match entry.line() {
            Some(line) => format!(
                "added: {} {}",
                book.amount_words_in(&line.amount, screen.units),
                line_name(&line.id)
            ),
            None => "added: an instruction".to_owned(),
        },
        Change::Remove(id) => format!("without {}", line_name(id)),
        Change::Move(id, _) => format!("{} in another place", line_name(id)),
        Change::Cup(to) => format!("in the {}", vessel(to)),
        Change::Shaker(None) => "made in the cup".to_owned(),
        Change::Shaker(Some(to)) => format!("shaken in the {}", vessel(to)),
        Change::Strained(true) => "the ice stays behind in the shaker".to_owned(),
        Change::Strained(false) => "poured with the ice".to_owned(),
        Change::DrinkingTemperature(to) => format!("taste compared at {}", celsius(to)),
        Change::MenuPrice(None) => "not on the menu".to_owned(),
        Change::MenuPrice(Some(to)) => format!(
            "{} {} on the menu",
            show_number(*to, 2),
            book.settings.currency
        ),
    }
}
