//! Below the lines: the note on the recipe, what the version changes, and what has been approved.

use egui::{Label, RichText, Sense, Ui, vec2};

use super::model;
use crate::book::{Change, ItemId, Line, LineId, Version};
use crate::edit::{Edit, FieldName};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::earlier_states::{Since, earlier_ui};
use crate::ui::field::Field;
use crate::ui::other_languages::other_languages_ui;
use crate::ui::safekeeping::{ComparedApprovals, approvals_ui};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::form::Sheet;
use crate::ui::words::small_heading_ui;
use crate::workbench::Action;

pub(super) fn history_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    compared: &mut ComparedApprovals,
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
    recipe_languages_ui(ui, screen, view, actions);
    earlier_batches_ui(ui, screen, view, actions);
    approvals_ui(ui, screen, compared, view, actions);
}

fn heading_ui(ui: &mut Ui, words: &str) {
    ui.add_space(grid::EASY);
    small_heading_ui(ui, words);
}

fn note_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("recipe-sheet-note"));
    let key = screen.field(FieldName::NOTE);
    let name = speaker.word("recipe-sheet-note-on-recipe");
    let field = Field::new(key.clone(), name, &screen.recipe.note)
        .several_rows()
        .hint(speaker.word("recipe-sheet-note-on-recipe-hint"));
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
        actions.push(Action::edit(edit, key));
    }
}

fn recipe_languages_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let item = ItemId::Recipe(screen.recipe.id.clone());
    ui.add_space(grid::EASY);
    let (chosen, drafts) = (&mut view.other_language, &mut view.drafts);
    other_languages_ui(ui, screen.speaker, &item, chosen, drafts, actions);
}

/// How a batch was made when drinks were approved with it.
fn earlier_batches_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let (recipe, id) = (screen.recipe, ItemId::Recipe(screen.recipe.id.clone()));
    let since = Sheet::new(
        Since::of(recipe, &id),
        screen.speaker.units,
        id.clone(),
        Since::edit,
        &mut view.drafts,
        actions,
    );
    let way = earlier_ui(ui, screen.speaker, recipe, &id, since);
    view.area = way.unwrap_or(view.area);
}

/// What the version changes of what it builds on.
fn changes_ui(ui: &mut Ui, screen: &Screen<'_>, version: &Version) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let on = version
        .builds_on
        .as_ref()
        .and_then(|id| screen.recipe.version(id));
    let heading = match on {
        Some(on) => say!(speaker, "recipe-sheet-changes-from", version: name_as_shown(&on.name)),
        None => speaker
            .word("recipe-sheet-changes-from-original")
            .to_owned(),
    };
    heading_ui(ui, &heading);
    if version.changes.is_empty() {
        let words = speaker.word("recipe-sheet-no-changes");
        ui.label(RichText::new(words).color(palette.text_quiet));
    }
    for change in &version.changes {
        ui.add(
            Label::new(RichText::new(change_words(screen, change)).color(palette.text_normal))
                .wrap(),
        );
    }
}

/// The line of this id in the recipe as it is without versions.
fn original_line<'screen>(screen: &'screen Screen<'_>, id: &LineId) -> Option<&'screen Line> {
    let lines = screen
        .recipe
        .entries
        .iter()
        .filter_map(|entry| entry.line());
    lines.into_iter().find(|line| line.id == *id)
}

/// "House sweetener: 1½ spoons".
fn change_words(screen: &Screen<'_>, change: &Change) -> String {
    let speaker = screen.speaker;
    let line_name = |id: &LineId| {
        let line = screen.balance.resolved.line(id);
        line.or_else(|| original_line(screen, id)).map_or_else(
            || speaker.word("recipe-sheet-an-instruction").to_owned(),
            |line| model::short_name(speaker, &line.ingredient),
        )
    };
    let celsius = |celsius: f64| speaker.temperature(celsius, 1);
    match change {
        Change::Ingredient(id, to) => {
            let after = speaker.ingredient(to);
            match original_line(screen, id) {
                Some(line) => {
                    let before = speaker.ingredient(&line.ingredient);
                    say!(speaker, "recipe-sheet-change-ingredient", after: after, before: before)
                }
                None => say!(speaker, "recipe-sheet-change-ingredient-only", after: after),
            }
        }
        Change::Amount(id, to) => {
            let amount = speaker.amount(to);
            say!(speaker, "recipe-sheet-change-amount", line: line_name(id), amount: amount)
        }
        Change::Temperature(id, Some(to)) => say!(
            speaker,
            "recipe-sheet-change-temperature",
            line: line_name(id),
            temperature: speaker.stated_temperature(*to, 1),
        ),
        Change::Temperature(id, None) => {
            say!(speaker, "recipe-sheet-change-temperature-stored", line: line_name(id))
        }
        Change::Role(id, to) => {
            let role = speaker.role(*to);
            say!(speaker, "recipe-sheet-change-role", line: line_name(id), role: role)
        }
        Change::Stage(id, to) => {
            let stage = speaker.stage(*to);
            say!(speaker, "recipe-sheet-change-stage", line: line_name(id), stage: stage)
        }
        Change::Carried(id, None) => {
            say!(speaker, "recipe-sheet-change-carries-nothing", line: line_name(id))
        }
        Change::Carried(id, Some(to)) => {
            let mass = speaker.in_unit(to.grams, "g", 1);
            say!(speaker, "recipe-sheet-change-carries", line: line_name(id), mass: mass)
        }
        Change::Note(id, _) => say!(speaker, "recipe-sheet-change-note", line: line_name(id)),
        Change::Instruction(_, text) => {
            say!(speaker, "recipe-sheet-change-instruction", text: text)
        }
        Change::Add(_, entry) => match entry.line() {
            Some(line) => say!(
                speaker,
                "recipe-sheet-change-added",
                amount: speaker.amount(&line.amount),
                line: line_name(&line.id),
            ),
            None => speaker
                .word("recipe-sheet-change-instruction-added")
                .to_owned(),
        },
        Change::Remove(id) => say!(speaker, "recipe-sheet-change-removed", line: line_name(id)),
        Change::Move(id, _) => say!(speaker, "recipe-sheet-change-moved", line: line_name(id)),
        Change::Cup(to) => say!(speaker, "recipe-sheet-change-cup", cup: speaker.vessel(to)),
        Change::Shaker(None) => speaker.word("recipe-sheet-change-no-shaker").to_owned(),
        Change::Shaker(Some(to)) => {
            say!(speaker, "recipe-sheet-change-shaker", shaker: speaker.vessel(to))
        }
        Change::Strained(true) => speaker.word("recipe-sheet-change-strained").to_owned(),
        Change::Strained(false) => speaker.word("recipe-sheet-change-not-strained").to_owned(),
        Change::DrinkingTemperature(Some(to)) => {
            let temperature = celsius(*to);
            say!(
                speaker,
                "recipe-sheet-change-drinking-temperature",
                temperature: temperature,
            )
        }
        Change::DrinkingTemperature(None) => speaker
            .word("recipe-sheet-change-drinking-temperature-of-shop")
            .to_owned(),
        Change::SugarLevel(to) => {
            let percent = speaker.in_unit(to.unwrap_or(100.0), "%", 0);
            say!(speaker, "recipe-sheet-change-sugar-level", percent: percent)
        }
        Change::MenuPrice(None) => speaker.word("recipe-sheet-change-no-menu-price").to_owned(),
        Change::MenuPrice(Some(to)) => {
            let price = model::price_words(speaker, *to);
            say!(speaker, "recipe-sheet-change-menu-price", price: price)
        }
    }
}
