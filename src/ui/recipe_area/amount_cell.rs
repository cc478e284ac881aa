//! The fields of a row that are typed in: how much, and how warm.

use egui::{Rect, Response, Ui};

use super::model::{LineRow, Neighbours};
use crate::book::Change;
use crate::edit::LineField;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::commands::{UiCommand, pressed_here};
use crate::ui::field::Field;
use crate::ui::view_state::ViewState;
use crate::workbench::Action;

pub(super) fn amount_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    rect: Rect,
    neighbours: &Neighbours,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> Response {
    let line = row.line;
    let key = screen.field_of(&line.id, LineField::Amount);
    if ui.memory(|memory| memory.has_focus(Field::id(&key))) {
        arrows(ui, screen, neighbours, view);
    }
    let speaker = screen.speaker;
    let name = say!(speaker, "recipe-sheet-amount-of", ingredient: row.name());
    let outcome = Field::new(key.clone(), &name, &row.amount)
        .amount()
        .underlined()
        .show(ui, rect, &mut view.drafts, actions);
    let read = |text: &str| speaker.read_amount(text, row.ingredient, Some(&line.amount));
    if let Some(amount) = outcome.read(&mut view.drafts, read) {
        let change = Change::Amount(line.id.clone(), amount);
        actions.push(Action::edit(screen.shown.change(change), key));
    }
    if outcome.entered || outcome.escaped {
        view.focus_wanted = Some(screen.row(&line.id));
        ui.ctx().request_repaint();
    }
    outcome.response
}

/// Arrows in an amount go to the amounts above and below.
fn arrows(ui: &Ui, screen: &Screen<'_>, neighbours: &Neighbours, view: &mut ViewState) {
    for (command, neighbour) in [UiCommand::LineAbove, UiCommand::LineBelow]
        .into_iter()
        .zip(neighbours)
    {
        if pressed_here(ui.ctx(), command)
            && let Some(neighbour) = neighbour
        {
            let has_amount = screen.balance.resolved.line(neighbour).is_some();
            view.focus_wanted = Some(if has_amount {
                screen.field_of(neighbour, LineField::Amount)
            } else {
                screen.row(neighbour)
            });
            ui.ctx().request_repaint();
        }
    }
}

/// The temperature; empty takes that of the ingredient, which stands there as a hint.
pub(super) fn temperature_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    rect: Rect,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let unit = screen.speaker.units.of("°C");
    let key = screen.field_of(&row.line.id, LineField::Temperature);
    let speaker = screen.speaker;
    let name = say!(speaker, "recipe-sheet-temperature-of", ingredient: row.name());
    let hint = row
        .temperature
        .map(|(celsius, _)| speaker.stated_temperature(celsius, 0))
        .unwrap_or_default();
    let stated = row.temperature.filter(|(_, stated)| *stated);
    let shown = stated
        .map(|(celsius, _)| speaker.stated_temperature(celsius, 1))
        .unwrap_or_default();
    let field = Field {
        align: egui::Align::Max,
        ..Field::new(key.clone(), &name, shown)
    }
    .style(crate::ui::theme::TypeStyle::Small)
    .hint(&hint);
    let outcome = field.show(ui, rect, &mut view.drafts, actions);
    let read = |text: &str| {
        unit.read_stated_or_nothing(text)
            .map_err(|error| speaker.number_error(&error))
    };
    if let Some(celsius) = outcome.read(&mut view.drafts, read) {
        let change = Change::Temperature(row.line.id.clone(), celsius);
        actions.push(Action::edit(screen.shown.change(change), key));
    }
}
