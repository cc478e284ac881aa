//! A drink with ice: how much is left, and what standing does to the taste; and the shop's own melt rate.

use egui::{RichText, Ui};

use super::InServing;
use super::sheet::{self, Column, TableRow};
use super::typed::{self, Range, TypedField};
use crate::balance::{Measurand, MeltRate, Standing};
use crate::book::Settings;
use crate::edit::Edit;
use crate::quantity::{Uncertain, rounded, show_number};
use crate::ui::Screen;
use crate::ui::field::draft_error_ui;
use crate::ui::glossary::Term;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::Value;
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
/// The name of the field for the rate.
const RATE_KEY: &str = "field melt rate";

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
    view: &mut InServing<'_>,
    actions: &mut Vec<Action>,
) {
    let ice = Value::of(screen.speaker, screen.balance, Measurand::IceLeft, 0);
    sheet::figure_ui(
        ui,
        screen,
        "ice left when served",
        &ice,
        "g",
        Measurand::IceLeft,
    );
    if let Some(last) = serving.standing.last() {
        let gone = Value::known(last.ice_gone_after, 0);
        sheet::fact_ui(ui, "all of it gone after", &gone, "min");
        ui.add_space(grid::NEAR);
        standing_ui(ui, screen, &serving.standing);
        sheet::quiet_ui(ui, "For a drink that stands untouched and unstirred.");
    } else {
        sheet::words_ui(ui, "No ice is left in it when it is handed over.");
    }
    rate_ui(ui, screen, serving.melt_rate, view, actions);
}

fn standing_ui(ui: &mut Ui, screen: &Screen<'_>, standing: &[Standing]) {
    let column = |name: &str, unit: &str, term: Option<Term>| Column {
        name: name.to_owned(),
        unit: unit.to_owned(),
        term,
    };
    let columns = [
        column("ice left", "g", None),
        column("melted", "g", None),
        column("dilution", "g/g", Some(Term::Dilution)),
        column("sweetness", "g/100 ml", Some(Term::Sweetness)),
        column("tea", "g/100 ml", Some(Term::TeaStrength)),
    ];
    let rows: Vec<TableRow> = standing.iter().map(row_of).collect();
    sheet::table_ui(ui, &columns, AFTER, &rows);
    copy_ui(ui, "standing", || {
        sheet::as_table(screen.speaker, "time", &columns, &rows)
    });
    let Some(first) = standing.first() else {
        return;
    };
    for (is_known, name, measurand) in [
        (first.sweetness.is_some(), "sweetness", Measurand::Sweetness),
        (
            first.tea_strength.is_some(),
            "tea strength",
            Measurand::TeaStrength,
        ),
        (first.dilution.is_some(), "dilution", Measurand::Dilution),
    ] {
        if !is_known {
            let gap =
                crate::ui::value::gap_words(screen.speaker, &screen.balance.reported(measurand));
            sheet::quiet_ui(
                ui,
                format!(
                    "The {name}: {}.",
                    gap.unwrap_or_else(|| "not known".to_owned())
                ),
            );
        }
    }
}

fn row_of(standing: &Standing) -> TableRow {
    let figure = |figure: Option<Uncertain>, decimals: i32| {
        figure.map_or_else(Value::default, |figure| Value::known(figure, decimals))
    };
    let grams = |figure: Uncertain| Value::known(figure, 0);
    TableRow {
        name: format!("{} min", show_number(standing.minutes, 0)),
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

fn put_rate(settings: &Settings, rate: Option<f64>) -> Action {
    let settings = Settings {
        ice_melt_rate: rate,
        ..settings.clone()
    };
    Action::edit(Edit::SetSettings(settings), RATE_KEY)
}

fn rate_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    rate: MeltRate,
    view: &mut InServing<'_>,
    actions: &mut Vec<Action>,
) {
    words::subheading_ui(ui, "How fast ice melts here");
    let settings = &screen.book.settings;
    let assumed = show_number(rate.grams_per_minute.value, 1);
    let field = TypedField {
        key: RATE_KEY,
        words: "melt rate",
        name: "Melt rate of ice",
        shown: settings
            .ice_melt_rate
            .map(|rate| show_number(rate, 2))
            .unwrap_or_default(),
        hint: &assumed,
        unit: "g/min",
    };
    let outcome = field.show(ui, &mut view.drafts, actions);
    if let Some(rate) = outcome.read(RATE_KEY, &mut view.drafts, |text| RATE.read(text)) {
        actions.push(put_rate(settings, rate));
    }
    draft_error_ui(ui, &view.drafts, RATE_KEY);
    let u = rounded(rate.grams_per_minute.value, Some(rate.grams_per_minute.u))
        .u
        .unwrap_or_default();
    let basis = if rate.is_stated {
        "Stated by the shop"
    } else {
        "Assumed, since the shop states none"
    };
    sheet::quiet_ui(
        ui,
        format!(
            "{basis}; ± {u} g/min. To measure your own, fill several cups with the same ice and drink. Every five minutes, drain one, weigh its ice and enter the weight."
        ),
    );
    weighings_ui(ui, screen, view, actions);
}

fn weighings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut InServing<'_>,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let quiet = |words: &str| {
        RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet)
    };
    view.state.weighings.keep_one_free();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        typed::column_head_ui(ui, quiet("minutes"));
        typed::column_head_ui(ui, quiet("g of ice left"));
    });
    for at in 0..view.state.weighings.0.len() {
        weighing_ui(ui, at, view, actions);
    }
    let read = view.state.weighings.read();
    if !read.is_empty() {
        copy_ui(ui, "weighings of ice", || {
            let mut table = Table::new(["minutes".to_owned(), spreadsheet::head("ice left", "g")]);
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
    let doubt = figure.u.map(|u| format!(" ± {u}")).unwrap_or_default();
    sheet::words_ui(
        ui,
        format!("By these weighings {}{doubt} g/min.", figure.value),
    );
    let button = ui.button(format!("Use {} g/min for the shop", figure.value));
    if button.clicked() {
        actions.push(put_rate(
            &screen.book.settings,
            Some((rate * 1000.0).round() / 1000.0),
        ));
    }
}

fn weighing_ui(ui: &mut Ui, at: usize, view: &mut InServing<'_>, actions: &mut Vec<Action>) {
    let halves = [("Minutes", MINUTES), ("Grams", GRAMS)];
    let key = |word: &str| format!("weighing {at} {word}");
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        for (half, (word, range)) in halves.into_iter().enumerate() {
            let key = key(word);
            let name = format!("{word} of weighing {}", at + 1);
            let shown = view.state.weighings.0[at][half].clone();
            let field = TypedField {
                key: &key,
                words: "",
                name: &name,
                shown,
                hint: "–",
                unit: "",
            };
            let outcome = typed::cell_ui(ui, &field, &mut view.drafts, actions);
            if let Some(text) = &outcome.changed {
                view.state.weighings.0[at][half].clone_from(text);
            }
            outcome.read(&key, &mut view.drafts, |text| range.read(text));
        }
    });
    for (word, _) in halves {
        draft_error_ui(ui, &view.drafts, &key(word));
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
