//! Rows with one figure each: what it is, the figure with its uncertainty, its unit. They are drawn and copied alike.

use egui::{Popup, PopupCloseBehavior, Response, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::figure;
use super::why_ui;
use crate::balance::Measurand;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
use crate::ui::words::speaker;

/// The widest row of figures, in points: beyond it the eye loses the row.
pub(in crate::ui) const MOST_WIDTH: f32 = 125.0 * grid::STEP;
/// Height of a row with one line of text, in points.
pub(super) const ROW: f32 = 6.0 * grid::STEP;
/// Room for the unit behind a figure, in points.
pub(super) const UNIT: f32 = 15.0 * grid::STEP;
/// Room for the decimals and the uncertainty, in points.
const AFTER_DECIMAL: f32 = 19.0 * grid::STEP;
/// Where the uncertainty stands behind the decimal sign, in points.
const UNCERTAINTY: f32 = 9.0 * grid::STEP;
/// Width of the answer to "how this is worked out", in points.
const WHY_WIDTH: f32 = 100.0 * grid::STEP;

/// A fact as it is drawn and copied: name, figure, unit.
pub(in crate::ui) type Fact<'fact> = (String, Value, &'fact str);

/// Facts below each other, and the button that copies them; `of` says which they are.
pub(in crate::ui) fn facts_ui(ui: &mut Ui, of: &str, facts: &[Fact<'_>]) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in facts {
            fact_ui(ui, name, value, unit);
        }
    });
    let speaker = speaker(ui.ctx());
    copy_ui(ui, of, || facts_as_table(speaker, facts.iter().cloned()));
}

/// A row with one figure: "to drinking temperature, 58 °C   7.4 ± 1.1 min".
pub(in crate::ui) fn fact_ui(ui: &mut Ui, name: &str, value: &Value, unit: &str) {
    row_ui(ui, name, value, unit, Sense::hover());
}

/// The same for a figure of the balance; a click tells why it is what it is.
pub(in crate::ui) fn figure_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    name: &str,
    value: &Value,
    unit: &str,
    measurand: Measurand,
) {
    let response = row_ui(ui, name, value, unit, Sense::click());
    let speaker = screen.speaker;
    let click = speaker.word("serving-how-worked-out");
    let response = response.explained_with(Term::of_measurand(measurand), click);
    Popup::from_toggle_button_response(&response)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(WHY_WIDTH)
        .accessible_name(say!(speaker, "serving-why", figure: name))
        .show(|ui| why_ui(ui, screen, measurand));
}

fn row_ui(ui: &mut Ui, name: &str, value: &Value, unit: &str, sense: Sense) -> Response {
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width().min(MOST_WIDTH);
    let figure_from = width - UNIT - AFTER_DECIMAL;
    let gap = value.gap.as_deref().map(|gap| {
        let font = TypeStyle::Small.font_id();
        ui.painter()
            .layout(gap.to_owned(), font, palette.text_quiet, width)
    });
    let named = ui.painter().layout(
        name.to_owned(),
        TypeStyle::Body.font_id(),
        palette.text_normal,
        (figure_from - 12.0 * grid::STEP).max(20.0 * grid::STEP),
    );
    let line = named.size().y.max(ROW - grid::TIGHT) + grid::TIGHT;
    let height = line + gap.as_ref().map_or(0.0, |gap| gap.size().y + grid::TIGHT);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), sense);
    let role = if sense.senses_click() {
        Role::Button
    } else {
        Role::Label
    };
    let speaker = speaker(ui.ctx());
    response.widget_info(|| WidgetInfo::labeled(role, true, value.sentence(speaker, name, unit)));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    figure::ground(ui, rect, &response, false);
    let y = rect.top() + line / 2.0;
    ui.painter().galley(
        pos2(rect.left(), y - named.size().y / 2.0),
        named,
        palette.text_normal,
    );
    figure::figure(ui, pos2(rect.left() + figure_from, y), value, UNCERTAINTY);
    let at = pos2(rect.left() + width - UNIT, y);
    if value.text.is_some() {
        figure::quiet(ui, at, unit);
    }
    if let Some(gap) = gap {
        ui.painter().galley(
            pos2(rect.left(), rect.top() + line),
            gap,
            palette.text_quiet,
        );
    }
    response
}

/// The facts of a sheet for a spreadsheet.
pub(in crate::ui) fn facts_as_table<'fact>(
    speaker: Speaker<'_>,
    facts: impl IntoIterator<Item = Fact<'fact>>,
) -> Table {
    let mut table = Table::new([
        "",
        speaker.word("serving-head-unit"),
        speaker.word("serving-head-value"),
        "±",
        speaker.word("serving-head-remark"),
    ]);
    for (name, value, unit) in facts {
        let [figure, doubt] = Cell::figure_and_doubt(&value);
        let remark = Cell::words(value.gap.as_deref().unwrap_or_default());
        table.row([Cell::words(&name), Cell::words(unit), figure, doubt, remark]);
    }
    table
}
