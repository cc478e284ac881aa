//! The drink from the counter to the last sip: when it is at its best, on the way to its guest too, and what another lid or less ice changes.

use egui::{Response, Ui};

use super::last_sip_plot::{self, Stroke};
use super::sheet;
use super::typed::{LABEL, Range};
use crate::balance::{LastSip, LastSipRemark, Measurand, Sip};
use crate::edit::{FieldName, Focus};
use crate::quantity::{Uncertain, show_number};
use crate::say::say;
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::NumberRow;
use crate::ui::words;
use crate::workbench::{Action, LAST_SIP_MINUTES, LastSipOf};

/// For how long a drink can be on the way.
const ON_THE_WAY: Range = Range {
    from: 0.0,
    to: 1440.0,
    unit: "min",
};

pub(super) fn last_sip_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    on_the_way: &mut String,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let Some(standings) = screen.answers.to(&LastSipOf(screen.shown.clone())) else {
        sheet::words_ui(ui, speaker.word("last-sip-no-course"));
        return;
    };
    let course = &standings.course;
    for remark in course.remarks() {
        let said = speaker.last_sip_remark(&remark);
        match remark {
            LastSipRemark::NeverLevel | LastSipRemark::NothingKnown => {
                sheet::off_ui(ui, said);
            }
            LastSipRemark::End(_) | LastSipRemark::Melts(_) => sheet::quiet_ui(ui, said),
            LastSipRemark::Level(_)
            | LastSipRemark::Best { .. }
            | LastSipRemark::Arrives { .. } => {
                sheet::words_ui(ui, said);
            }
        }
    }
    ui.add_space(grid::TIGHT);
    let way = on_the_way_ui(ui, screen, course, on_the_way, drafts, actions);
    ui.add_space(grid::NEAR);
    last_sip_plot::strips_ui(ui, speaker, &standings, way);
    if let Some(first) = course.sips.first() {
        let figures = [
            (first.sweetness.is_some(), Measurand::Sweetness),
            (first.tea_strength.is_some(), Measurand::TeaStrength),
        ];
        sheet::gaps_ui(ui, screen, &figures);
    }
    let table = speaker.word("last-sip-table");
    copy_ui(ui, table, || as_table(screen, course));
    sheet::quiet_ui(ui, speaker.word("last-sip-legend"));
    if way.is_some() {
        sheet::quiet_ui(ui, speaker.word("last-sip-legend-way"));
    }
    if standings.others.is_empty() {
        return;
    }
    words::subheading_ui(ui, speaker.word("last-sip-otherwise"));
    for (at, (way, other)) in standings.others.iter().enumerate() {
        if let Some(said) = speaker.last_sip_otherwise(way, other) {
            ui.horizontal_top(|ui| -> Response {
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                last_sip_plot::sample_ui(ui, Stroke::of_other(at));
                sheet::words_ui(ui, said)
            });
        }
    }
}

/// Asks how long the drink is on the way to its guest, and says what it is then.
fn on_the_way_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    course: &LastSip,
    text: &mut String,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) -> Option<f64> {
    let speaker = screen.speaker;
    let row = NumberRow {
        focus: Focus::Question(FieldName::at("on-the-way", 0)),
        words: speaker.word("last-sip-way"),
        words_width: LABEL,
        term: None,
        name: speaker.word("last-sip-way-named"),
        shown: text.clone(),
        hint: "–",
        unit: "min",
    };
    if let Some(minutes) = row.ask_ui(ui, drafts, actions, |text| ON_THE_WAY.read(text)) {
        let unit = speaker.units.of("min");
        *text = minutes.map_or_else(String::new, |minutes| unit.trimmed(minutes, 1));
    }
    let minutes = ON_THE_WAY.read(text).ok().flatten()?;
    if minutes <= 0.0 {
        return None;
    }
    let last = f64::from(LAST_SIP_MINUTES);
    match course.arrival(minutes) {
        Some(remark) => {
            sheet::words_ui(ui, speaker.last_sip_remark(&remark));
        }
        None if minutes > last => {
            let last = speaker.in_unit(last, "min", 0);
            sheet::off_ui(ui, say!(speaker, "last-sip-way-too-long", minutes: last));
        }
        None => {}
    }
    Some(minutes.min(last))
}

/// The drink minute by minute.
fn as_table(screen: &Screen<'_>, course: &LastSip) -> Table {
    let speaker = screen.speaker;
    let celsius = speaker.units.of("°C");
    let concentration = speaker.units.of("g/100 ml");
    let grams = speaker.units.of("g");
    let temperature = spreadsheet::head(speaker.word("serving-head-temperature"), celsius.symbol);
    let of = |measurand, unit: &str| spreadsheet::head(speaker.measurand(measurand), unit);
    let sweetness = of(Measurand::Sweetness, concentration.symbol);
    let tea = of(Measurand::TeaStrength, concentration.symbol);
    let ice = of(Measurand::IceLeft, "g");
    let minutes = speaker.word("serving-head-minutes");
    let off_by = speaker.word("last-sip-off-by");
    let mut table = Table::new([
        minutes,
        temperature.as_str(),
        "±",
        sweetness.as_str(),
        "±",
        tea.as_str(),
        "±",
        ice.as_str(),
        "±",
        off_by,
    ]);
    for sip in &course.sips {
        let known = |figure: Option<Uncertain>, decimals: i32| {
            let value = figure.map_or_else(Value::default, |figure| {
                Value::shown(figure, &concentration, decimals)
            });
            Cell::figure_and_doubt(&value)
        };
        let Sip {
            minutes, distance, ..
        } = sip;
        let mut cells = vec![Cell::figure(&show_number(*minutes, 0))];
        cells.extend(Cell::figure_and_doubt(&Value::shown(
            sip.temperature,
            &celsius,
            1,
        )));
        cells.extend(known(sip.sweetness, 1));
        cells.extend(known(sip.tea_strength, 3));
        cells.extend(Cell::figure_and_doubt(&Value::shown(sip.ice, &grams, 0)));
        let off_by = distance.map_or_else(String::new, |distance| show_number(distance, 1));
        cells.push(Cell::figure(&off_by));
        table.row(cells);
    }
    table
}
