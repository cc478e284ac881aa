//! What belongs to the line in hand: its part in the drink, what one use weighs, and what the same spoon would hold otherwise.

use egui::{Button, Label, RichText, Sense, Ui, vec2};

use super::heading::word_menu_ui;
use super::model::{self, LineRow};
use super::row::Columns;
use super::{amount_cell, line_command};
use crate::book::{Carried, Change, Form, ItemId, Line, Role, Stage};
use crate::quantity::{name_as_shown, parse_in_unit};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::commands::UiCommand;
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::workbench::Action;

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
    let focus = super::lines::row_focus(&screen.recipe.id, &line.id);
    quiet_ui(ui, speaker.word("recipe-sheet-as"));
    let name = speaker.word("recipe-sheet-role");
    word_menu_ui(ui, name, speaker.role(line.role), |ui| {
        for role in Role::ALL {
            if ui
                .add(Button::selectable(role == line.role, speaker.role(role)))
                .clicked()
            {
                let change = Change::Role(line.id.clone(), role);
                actions.push(Action::edit(screen.shown.change(change), &focus));
            }
        }
    });
    quiet_ui(ui, speaker.word("recipe-sheet-in-the-drink"));
    let name = speaker.word("recipe-sheet-stage");
    word_menu_ui(ui, name, speaker.stage(line.stage), |ui| {
        for stage in Stage::ALL {
            if ui
                .add(Button::selectable(
                    stage == line.stage,
                    speaker.stage(stage),
                ))
                .clicked()
            {
                let change = Change::Stage(line.id.clone(), stage);
                actions.push(Action::edit(screen.shown.change(change), &focus));
            }
        }
    });
}

/// What one use weighs and why that is known; for a sweetener what the same measure would hold in its other forms.
fn weighing_ui(ui: &mut Ui, screen: &Screen<'_>, row: &LineRow<'_>) {
    let palette = theme::palette(ui.visuals());
    let celsius = row
        .share
        .map_or(screen.book.settings.room_temperature, |share| share.celsius);
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
    let key = format!("field carried {}/{}", screen.recipe.id, line.id);
    let carried = line.carried.as_ref();
    let put = |carried: Option<Carried>| {
        Action::edit(
            screen
                .shown
                .change(Change::Carried(line.id.clone(), carried)),
            &key,
        )
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
            let (rect, _) = ui.allocate_exact_size(vec2(48.0, grid::TARGET), Sense::hover());
            let shown = crate::quantity::show_count(carried.grams);
            let name = speaker.word("recipe-sheet-grams-along");
            let field = Field {
                align: egui::Align::Max,
                ..Field::new(key.clone(), name, shown).underlined()
            };
            let outcome = field.show(ui, rect, &mut view.drafts, actions);
            let read = |text: &str| not_negative(speaker, text);
            if let Some(grams) = outcome.read(&key, &mut view.drafts, read) {
                actions.push(put(Some(Carried {
                    ingredient: carried.ingredient.clone(),
                    grams,
                })));
            }
            quiet_ui(ui, speaker.word("recipe-sheet-grams-of"));
        }
        let menu = speaker.word("recipe-sheet-comes-along");
        word_menu_ui(ui, menu, &name, |ui| {
            if ui
                .add(Button::selectable(carried.is_none(), nothing))
                .clicked()
            {
                actions.push(put(None));
            }
            for syrup in screen
                .book
                .ingredients
                .iter()
                .filter(|ingredient| ingredient.form == Form::Syrup)
            {
                let chosen = carried.is_some_and(|carried| carried.ingredient == syrup.id);
                if ui
                    .add(Button::selectable(
                        chosen,
                        name_as_shown(&syrup.name).as_ref(),
                    ))
                    .clicked()
                {
                    let grams = carried.map_or(FIRST_CARRIED, |carried| carried.grams);
                    actions.push(put(Some(Carried {
                        ingredient: syrup.id.clone(),
                        grams,
                    })));
                }
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
    let key = format!("field note {}/{}", screen.recipe.id, row.line.id);
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
            &key,
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
