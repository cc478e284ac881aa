//! A drink with ice: how much is left, and what standing does to the taste; and the shop's own melt rate.

use egui::{RichText, Ui};

use super::sheet;
use super::typed::{self, LABEL, Range};
use crate::balance::{Measurand, MeltRate, Standing};
use crate::book::{ItemId, Settings};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::{Uncertain, rounded, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::field::draft_error_ui;
use crate::ui::glossary::Term;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::facts::{fact_ui, figure_ui};
use crate::ui::widgets::figure_table::{Column, TableRow, figure_table_ui};
use crate::ui::widgets::form::NumberRow;
use crate::ui::words;
use crate::workbench::{Action, Serving};

/// Melt rates that can be.
const RATE: Range = Range {
    from: 0.01,
    to: 100.0,
    unit: "g/min",
};
/// Times of a weighing.
const MINUTES: Range = Range {
    from: 0.0,
    to: 1440.0,
    unit: "min",
};
/// Ice that can be weighed.
const GRAMS: Range = Range {
    from: 0.0,
    to: 5000.0,
    unit: "g",
};
/// Room for the minutes before a row, in points.
const AFTER: f32 = 16.0 * grid::STEP;
/// The field of the rate at which ice melts.
fn rate_focus(screen: &Screen<'_>) -> Focus {
    screen.serving(ItemId::Settings, "melt-rate")
}

/// Weighings of drained ice as they are typed, minutes and grams; not kept in the book.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Weighings(Vec<[String; 2]>);

impl Weighings {
    /// The weighings of which both halves can be read.
    fn read(&self) -> Vec<(f64, f64)> {
        let read = |[minutes, grams]: &[String; 2]| {
            Some((MINUTES.read(minutes).ok()??, GRAMS.read(grams).ok()??))
        };
        self.0.iter().filter_map(read).collect()
    }

    /// Keeps one empty row behind the last one that has been begun.
    fn keep_one_free(&mut self) {
        let is_empty = |row: &[String; 2]| row.iter().all(|text| text.trim().is_empty());
        while self.0.len() > 1 && self.0.iter().rev().take(2).all(is_empty) {
            self.0.pop();
        }
        if self.0.last().is_none_or(|row| !is_empty(row)) {
            self.0.push([String::new(), String::new()]);
        }
    }
}

pub(super) fn melting_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    weighings: &mut Weighings,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let ice = Value::of(speaker, screen.balance, Measurand::IceLeft, 0);
    let name = speaker.word("serving-ice-served");
    figure_ui(ui, screen, name, &ice, "g", Measurand::IceLeft);
    if let Some(last) = serving.standing.last() {
        let gone = Value::known(last.ice_gone_after, 0);
        fact_ui(ui, speaker.word("serving-ice-gone"), &gone, "min");
        ui.add_space(grid::NEAR);
        standing_ui(ui, screen, &serving.standing);
        sheet::quiet_ui(ui, speaker.word("serving-ice-stands"));
    } else {
        sheet::words_ui(ui, speaker.word("serving-ice-none"));
    }
    rate_ui(ui, screen, serving.melt_rate, weighings, drafts, actions);
}

fn standing_ui(ui: &mut Ui, screen: &Screen<'_>, standing: &[Standing]) {
    let speaker = screen.speaker;
    let column = |name: &str, unit: &str, term: Option<Term>| Column {
        name: name.to_owned(),
        unit: unit.to_owned(),
        term,
    };
    let figure = |measurand, unit: &str| {
        let term = Term::of_measurand(measurand);
        column(speaker.measurand(measurand), unit, term)
    };
    let (melted, tea) = ("serving-ice-melted", "serving-ice-tea");
    let columns = [
        column(speaker.measurand(Measurand::IceLeft), "g", None),
        column(speaker.word(melted), "g", None),
        figure(Measurand::Dilution, "g/g"),
        figure(Measurand::Sweetness, "g/100 ml"),
        column(speaker.word(tea), "g/100 ml", Some(Term::TeaStrength)),
    ];
    let rows: Vec<TableRow> = standing.iter().map(|row| row_of(speaker, row)).collect();
    let first = (speaker.word("serving-ice-time"), AFTER);
    figure_table_ui(
        ui,
        speaker.word("serving-ice-table"),
        first,
        &columns,
        &rows,
    );
    let Some(first) = standing.first() else {
        return;
    };
    let figures = [
        (first.sweetness.is_some(), Measurand::Sweetness),
        (first.tea_strength.is_some(), Measurand::TeaStrength),
        (first.dilution.is_some(), Measurand::Dilution),
    ];
    sheet::gaps_ui(ui, screen, &figures);
}

fn row_of(speaker: Speaker<'_>, standing: &Standing) -> TableRow {
    let figure = |figure: Option<Uncertain>, decimals: i32| {
        figure.map_or_else(Value::default, |figure| Value::known(figure, decimals))
    };
    let grams = |figure: Uncertain| Value::known(figure, 0);
    TableRow {
        name: speaker.in_unit(standing.minutes, "min", 0),
        is_part: false,
        cells: vec![
            grams(standing.ice_left),
            grams(standing.melted),
            figure(standing.dilution, 2),
            figure(standing.sweetness, 1),
            figure(standing.tea_strength, 3),
        ],
        unit: String::new(),
    }
}

fn put_rate(screen: &Screen<'_>, rate: Option<f64>) -> Action {
    let settings = Settings {
        ice_melt_rate: rate,
        ..screen.book.settings.clone()
    };
    Action::edit(Edit::SetSettings(settings), rate_focus(screen))
}

fn rate_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    rate: MeltRate,
    weighings: &mut Weighings,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    words::subheading_ui(ui, speaker.word("serving-ice-melting"));
    let settings = &screen.book.settings;
    let assumed = speaker.number(rate.grams_per_minute.value, 1);
    let row = NumberRow {
        focus: rate_focus(screen),
        words: speaker.word("serving-ice-rate"),
        words_width: LABEL,
        term: None,
        name: speaker.word("serving-ice-rate-named"),
        shown: settings
            .ice_melt_rate
            .map(|rate| show_number(rate, 2))
            .unwrap_or_default(),
        hint: &assumed,
        unit: "g/min",
    };
    if let Some(rate) = row.ask_ui(ui, drafts, actions, |text| RATE.read(text)) {
        actions.push(put_rate(screen, rate));
    }
    let u = rounded(rate.grams_per_minute.value, Some(rate.grams_per_minute.u))
        .u
        .unwrap_or_default();
    let u = speaker.digits(&u);
    let basis = if rate.is_stated {
        say!(speaker, "serving-ice-rate-stated", u: u)
    } else {
        say!(speaker, "serving-ice-rate-assumed", u: u)
    };
    sheet::quiet_ui(ui, basis);
    sheet::quiet_ui(ui, speaker.word("serving-ice-how-to-measure"));
    weighings_ui(ui, screen, weighings, drafts, actions);
}

fn weighings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    weighings: &mut Weighings,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let quiet = |words: &str| {
        RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet)
    };
    weighings.keep_one_free();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        typed::column_head_ui(ui, quiet(speaker.word("serving-head-minutes")));
        typed::column_head_ui(ui, quiet(speaker.word("serving-ice-grams")));
    });
    for at in 0..weighings.0.len() {
        weighing_ui(ui, speaker, at, weighings, drafts, actions);
    }
    let read = weighings.read();
    if !read.is_empty() {
        copy_ui(ui, speaker.word("serving-ice-weighings"), || {
            let minutes = speaker.word("serving-head-minutes").to_owned();
            let left = spreadsheet::head(speaker.measurand(Measurand::IceLeft), "g");
            let mut table = Table::new([minutes, left]);
            for (minutes, grams) in &read {
                table.row([minutes, grams].map(|number| Cell::figure(&number.to_string())));
            }
            table
        });
    }
    let Some((rate, u)) = MeltRate::from_weighings(&read) else {
        return;
    };
    let figure = rounded(rate, u);
    let digits = speaker.digits(&figure.value);
    let doubt = figure.u.map(|u| format!(" ± {}", speaker.digits(&u)));
    let measured = digits.clone() + &doubt.unwrap_or_default();
    sheet::words_ui(ui, say!(speaker, "serving-ice-measured", rate: measured));
    let button = ui.button(say!(speaker, "serving-ice-use", rate: digits));
    if button.clicked() {
        actions.push(put_rate(screen, Some((rate * 1000.0).round() / 1000.0)));
    }
}

fn weighing_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    at: usize,
    weighings: &mut Weighings,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let number = (at + 1).to_string();
    let names = [
        say!(speaker, "serving-ice-minutes-named", number: &number),
        say!(speaker, "serving-ice-grams-named", number: &number),
    ];
    let ranges = [MINUTES, GRAMS];
    let fields = ["weighing-minutes", "weighing-grams"];
    let key = |half: usize| Focus::Question(FieldName::at(fields[half], at));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        for (half, (name, range)) in names.iter().zip(ranges).enumerate() {
            let key = key(half);
            let shown = weighings.0[at][half].clone();
            let outcome = typed::cell_ui(ui, key, name, shown, drafts, actions);
            if let Some(text) = &outcome.changed {
                weighings.0[at][half].clone_from(text);
            }
            outcome.read(drafts, |text| range.read(text));
        }
    });
    for half in 0..ranges.len() {
        draft_error_ui(ui, drafts, &key(half));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_is_always_one_free_row_and_what_can_not_be_read_is_left_out() {
        let mut weighings = Weighings::default();
        weighings.keep_one_free();
        assert_eq!(weighings.0.len(), 1);
        weighings.0[0] = ["0".into(), "100".into()];
        weighings.keep_one_free();
        weighings.0[1] = ["5".into(), "many".into()];
        weighings.keep_one_free();
        assert_eq!(
            (weighings.0.len(), weighings.read()),
            (3, vec![(0.0, 100.0)])
        );
        weighings.0[1] = [String::new(), String::new()];
        weighings.keep_one_free();
        assert_eq!(weighings.0.len(), 2);
    }
}
