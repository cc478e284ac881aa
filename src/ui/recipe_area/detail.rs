//! What belongs to the line in hand: its part in the drink, what one use weighs, and what the same spoon would hold otherwise.

use egui::{Button, Label, RichText, Sense, Ui, vec2};

use super::amount_cell;
use super::line_command::line_command;
use super::model::{self, LineRow};
use super::row::Columns;
use crate::book::{Carried, Change, Form, IngredientId, ItemId, Line, Role, Stage};
use crate::edit::{Focus, LineField};
use crate::quantity::{name_as_shown, parse_in_unit};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::commands::UiCommand;
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::{choice_ui, word_menu_ui};
use crate::ui::words::quiet_ui;
use crate::workbench::{Action, Shown};

pub(super) fn detail_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    columns: &Columns,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let frame = egui::Frame::new()
        .fill(palette.stripe)
        .corner_radius(egui::CornerRadius {
            nw: 0,
            ne: 0,
            sw: grid::CORNER,
            se: grid::CORNER,
        })
        .inner_margin(egui::Margin {
            left: 32,
            right: 12,
            top: 2,
            bottom: 8,
        });
    frame.show(ui, |ui| {
        ui.set_width(columns.width - 44.0);
        ui.spacing_mut().item_spacing.y = 2.0;
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            part_ui(ui, screen, row, actions);
            if columns.compact {
                quiet_ui(ui, screen.speaker.word("recipe-sheet-at"));
                let (rect, _) = ui.allocate_exact_size(vec2(56.0, grid::TARGET), Sense::hover());
                amount_cell::temperature_ui(ui, screen, row, rect, view, actions);
            }
            note_ui(ui, screen, row, view, actions);
        });
        weighing_ui(ui, screen, row);
        if row.line.stage == Stage::Topping || row.line.carried.is_some() {
            carried_ui(ui, screen, row, view, actions);
        }
        command_row_ui(ui, screen, row, view, actions);
    });
    ui.add_space(grid::TIGHT);
}

/// Role and stage.
fn part_ui(ui: &mut Ui, screen: &Screen<'_>, row: &LineRow<'_>, actions: &mut Vec<Action>) {
    let (line, speaker) = (row.line, screen.speaker);
    quiet_ui(ui, speaker.word("recipe-sheet-as"));
    let name = speaker.word("recipe-sheet-role");
    let focus = screen.field_of(&line.id, LineField::Role);
    word_menu_ui(ui, &focus, name, speaker.role(line.role), |ui| {
        let word = |role: &Role| speaker.role(*role).to_owned();
        if let Some(role) = choice_ui(ui, Role::ALL, &line.role, word) {
            let change = Change::Role(line.id.clone(), role);
            actions.push(Action::edit(screen.shown.change(change), focus.clone()));
        }
    });
    quiet_ui(ui, speaker.word("recipe-sheet-in-the-drink"));
    let name = speaker.word("recipe-sheet-stage");
    let focus = screen.field_of(&line.id, LineField::Stage);
    word_menu_ui(ui, &focus, name, speaker.stage(line.stage), |ui| {
        let word = |stage: &Stage| speaker.stage(*stage).to_owned();
        if let Some(stage) = choice_ui(ui, Stage::ALL, &line.stage, word) {
            let change = Change::Stage(line.id.clone(), stage);
            actions.push(Action::edit(screen.shown.change(change), focus.clone()));
        }
    });
}

/// What one use weighs and why that is known; for a sweetener what the same measure would hold in its other forms.
fn weighing_ui(ui: &mut Ui, screen: &Screen<'_>, row: &LineRow<'_>) {
    let palette = theme::palette(ui.visuals());
    let celsius = row
        .share
        .map_or(screen.book.settings.room_temperature.celsius(), |share| {
            share.celsius
        });
    if let Some(words) = model::use_words(screen, row.line, celsius) {
        quiet_ui(ui, &words);
    }
    let held = model::same_measure(screen.answers, row.line, celsius);
    if let Some(words) = model::same_measure_words(screen.speaker, row.line, &held) {
        let text = RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_strong);
        ui.add(Label::new(text).wrap());
    }
}

/// Syrup that a topping brings along until somebody weighs it, g (assumed).
const FIRST_CARRIED: f64 = 5.0;

/// The syrup that comes along with a topping.
fn carried_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let (line, speaker) = (row.line, screen.speaker);
    let key = screen.field_of(&line.id, LineField::Carried);
    let carried = line.carried.as_ref();
    let put = |carried: Option<Carried>, focus: &Focus| {
        let change = Change::Carried(line.id.clone(), carried);
        Action::edit(screen.shown.change(change), focus.clone())
    };
    let nothing = speaker.word("recipe-sheet-brings-nothing");
    let name = carried.map_or_else(
        || nothing.to_owned(),
        |carried| model::short_name(speaker, &carried.ingredient),
    );
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        quiet_ui(ui, speaker.word("recipe-sheet-brings"));
        if let Some(carried) = carried {
            let shown = crate::quantity::show_count(carried.grams);
            let name = speaker.word("recipe-sheet-grams-along");
            let outcome = Field::number(key.clone(), name, shown).show_in(
                ui,
                vec2(48.0, grid::TARGET),
                &mut view.drafts,
                actions,
            );
            let read = |text: &str| not_negative(speaker, text);
            if let Some(grams) = outcome.read(&mut view.drafts, read) {
                let along = Carried {
                    ingredient: carried.ingredient.clone(),
                    grams,
                };
                actions.push(put(Some(along), &key));
            }
            quiet_ui(ui, speaker.word("recipe-sheet-grams-of"));
        }
        let menu = speaker.word("recipe-sheet-comes-along");
        let syrups = screen.book.ingredients.iter();
        let syrups = syrups.filter(|ingredient| ingredient.form == Form::Syrup);
        let all = std::iter::once(None).chain(syrups.map(|syrup| Some(syrup.id.clone())));
        let word = |id: &Option<IngredientId>| {
            let syrup = id.as_ref().and_then(|id| screen.book.ingredient(id));
            syrup.map_or_else(
                || nothing.to_owned(),
                |syrup| name_as_shown(&syrup.name).into_owned(),
            )
        };
        let focus = screen.field_of(&line.id, LineField::CarriedIngredient);
        word_menu_ui(ui, &focus, menu, &name, |ui| {
            let chosen = carried.map(|carried| carried.ingredient.clone());
            if let Some(taken) = choice_ui(ui, all, &chosen, word) {
                let grams = carried.map_or(FIRST_CARRIED, |carried| carried.grams);
                let along = taken.map(|ingredient| Carried { ingredient, grams });
                actions.push(put(along, &focus));
            }
        });
    });
    draft_error_ui(ui, &view.drafts, &key);
}

/// A number of grams.
fn not_negative(speaker: Speaker<'_>, text: &str) -> Result<f64, String> {
    match parse_in_unit(text, "g") {
        Ok(number) if number < 0.0 => {
            Err(say!(speaker, "recipe-sheet-grams-below-zero", text: text))
        }
        Ok(number) => Ok(number),
        Err(error) => Err(speaker.number_error(&error)),
    }
}

fn note_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let width = ui.available_width() - grid::NEAR;
    if width < 60.0 {
        return;
    }
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let key = screen.field_of(&row.line.id, LineField::Note);
    let speaker = screen.speaker;
    let name = say!(speaker, "recipe-sheet-note-on", ingredient: row.name());
    let field = Field::new(key.clone(), &name, &row.line.note)
        .style(TypeStyle::Small)
        .hint(speaker.word("recipe-sheet-note-hint"))
        .underlined();
    let outcome = field.show(ui, rect, &mut view.drafts, actions);
    if let Some(note) = outcome.changed {
        actions.push(Action::edit(
            screen.shown.change(Change::Note(row.line.id.clone(), note)),
            key,
        ));
    }
}

fn command_row_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        for command in [
            UiCommand::SwapLine,
            UiCommand::MoveLineUp,
            UiCommand::MoveLineDown,
            UiCommand::RemoveLine,
        ] {
            let response = ui.add(quiet_button(ui, command.label(screen.speaker)));
            if response
                .on_hover_text(command.tooltip(screen.speaker))
                .clicked()
            {
                view.line_in_hand = Some(row.line.id.clone());
                line_command(command, screen, view, actions);
            }
        }
        let speaker = screen.speaker;
        let response = ui.add(quiet_button(ui, speaker.word(AT_THE_COUNTER)));
        let told = speaker.word("recipe-sheet-open-in-counter-hint");
        if response.on_hover_text(told).clicked() {
            go_to_counter(row.line, view);
        }
        let made = row.ingredient.and_then(|item| item.house_made.as_ref());
        if let Some(made) = made.filter(|made| screen.book.recipe(&made.recipe).is_some()) {
            let response = ui.add(quiet_button(ui, speaker.word("recipe-sheet-see-batch")));
            let told = speaker.word("recipe-sheet-see-batch-hint");
            if response.on_hover_text(told).clicked() {
                view.show(Shown {
                    recipe: made.recipe.clone(),
                    version: None,
                });
            }
        }
    });
}

fn quiet_button(ui: &Ui, words: &'static str) -> Button<'static> {
    let palette = theme::palette(ui.visuals());
    let text = RichText::new(words)
        .font(TypeStyle::Small.font_id())
        .color(palette.accent);
    Button::new(text).frame_when_inactive(false)
}

/// The message of what leads from a line to its ingredient.
pub(super) const AT_THE_COUNTER: &str = "recipe-sheet-open-in-counter";

/// Opens the ingredient of a line at the counter.
pub(super) fn go_to_counter(line: &Line, view: &mut ViewState) {
    let item = ItemId::Ingredient(line.ingredient.clone());
    view.go(Area::Counter, Navigation::Item(item));
}
