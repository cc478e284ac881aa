//! The nutrition declaration, in the order and the rounding of a label, and where the energy comes from.

use egui::{Layout, RichText, Ui, vec2};

use super::sheet;
use crate::balance::{Lens, LineShare, Measurand, NutritionRow, PrintedValue, Reported};
use crate::book::Stage;
use crate::quantity::{rounded_at_most, show_number};
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::{Value, gap_words};
use crate::ui::widgets::facts::figure_ui;
use crate::ui::widgets::figure_table::{Column, TableRow, figure_table_ui};
use crate::ui::widgets::name::name_ui;
use crate::ui::widgets::{role_colour, share_bar_ui};
use crate::ui::words;
use crate::workbench::Serving;

/// Room for the words of a row, in points.
const WORDS: f32 = 42.0 * grid::STEP;
/// Room for the name of a line, in points.
const LINE_NAME: f32 = 46.0 * grid::STEP;

pub(super) fn nutrition_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    let speaker = screen.speaker;
    let column = |name: &str| Column {
        name: name.to_owned(),
        unit: String::new(),
        term: None,
    };
    let columns = [
        column(speaker.word("serving-nutrition-per-100-ml")),
        column(speaker.word("serving-nutrition-per-drink")),
    ];
    let rows: Vec<TableRow> = serving
        .declaration
        .iter()
        .map(|row| row_of(screen, row))
        .collect();
    let table = speaker.word("serving-nutrition-table");
    figure_table_ui(ui, table, (table, WORDS), &columns, &rows);
    ui.add_space(grid::TIGHT);
    caffeine_ui(ui, screen);
    let apart = screen
        .balance
        .lines
        .iter()
        .any(|line| line.stage != Stage::Mixed);
    sheet::quiet_ui(
        ui,
        speaker.word(if apart {
            "serving-nutrition-basis-with-toppings"
        } else {
            "serving-nutrition-basis"
        }),
    );
    energy_ui(ui, screen);
}

fn row_of(screen: &Screen<'_>, row: &NutritionRow) -> TableRow {
    let reported = screen.balance.reported(row.measurand);
    let gap = gap_words(screen.speaker, &reported);
    let value = |printed: &PrintedValue| {
        if printed.is_complete {
            Value::digits(&printed.text)
        } else if printed.value > 0.0 {
            Value {
                gap: gap.clone(),
                ..Value::digits(&printed.text).at_least()
            }
        } else {
            Value {
                gap: gap.clone(),
                ..Value::default()
            }
        }
    };
    let in_100_ml = row.per_100_ml.as_ref();
    TableRow {
        name: screen.speaker.nutrition_row(row.measurand).to_owned(),
        is_part: row.is_part,
        cells: vec![
            in_100_ml.map_or_else(
                || Value::not_known(screen.speaker.word("serving-nutrition-empty")),
                value,
            ),
            Value {
                u: doubt_of(row, &reported),
                ..value(&row.per_drink)
            },
        ],
        unit: row.unit.to_owned(),
    }
}

/// The uncertainty of what is in the drink, for a figure that is printed as a number and known whole.
fn doubt_of(row: &NutritionRow, reported: &Reported) -> Option<String> {
    let is_number = row.per_drink.is_complete && !row.per_drink.text.starts_with('<');
    let u = reported.u.filter(|u| is_number && *u > 0.0)?;
    rounded_at_most(row.per_drink.value, Some(u), 2).u
}

/// Caffeine and free sugars are asked for, and stand in no declaration.
fn caffeine_ui(ui: &mut Ui, screen: &Screen<'_>) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, measurand, unit) in [
            ("serving-nutrition-caffeine", Measurand::Caffeine, "mg"),
            ("serving-nutrition-free-sugars", Measurand::FreeSugars, "g"),
        ] {
            let value = Value::of(screen.speaker, screen.balance, measurand, 1);
            let name = screen.speaker.word(name);
            figure_ui(ui, screen, name, &value, unit, measurand);
        }
    });
}

/// Where the energy comes from, line by line, the most first.
fn energy_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let speaker = screen.speaker;
    words::subheading_ui(ui, speaker.word("serving-energy-heading"));
    let palette = theme::palette(ui.visuals());
    let mut lines: Vec<_> = screen
        .balance
        .lines
        .iter()
        .filter(|line| line.energy != Some(0.0))
        .collect();
    lines.sort_by(|one, other| {
        other
            .energy
            .unwrap_or(0.0)
            .total_cmp(&one.energy.unwrap_or(0.0))
    });
    let whole = screen.balance.whole_through(Lens::Energy);
    let (total, _) = screen.balance.total_through(Lens::Energy);
    if lines.is_empty() {
        sheet::words_ui(ui, speaker.word("serving-energy-none"));
    }
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for line in &lines {
            let text = line.energy.map_or_else(
                || speaker.word("serving-energy-not-stated").to_owned(),
                |energy| speaker.in_unit(energy, "kJ", 0),
            );
            ui.horizontal(|ui| {
                let size = vec2(LINE_NAME, grid::TARGET);
                ui.allocate_ui_with_layout(
                    size,
                    Layout::left_to_right(egui::Align::Center),
                    |ui| {
                        ui.set_min_width(LINE_NAME);
                        let name = speaker.ingredient(&line.ingredient);
                        let colour = theme::palette(ui.visuals()).text_normal;
                        name_ui(ui, &name, TypeStyle::Body, colour, LINE_NAME);
                    },
                );
                let lit = screen.lit == Some(&line.line);
                share_bar_ui(
                    ui,
                    line.energy,
                    whole,
                    false,
                    &text,
                    role_colour(palette, line.role),
                    lit,
                );
                if let Some(part) = part_of(line, total) {
                    let part =
                        RichText::new(format!("{part}\u{a0}%")).font(TypeStyle::Small.font_id());
                    ui.label(part.color(palette.text_quiet));
                }
            });
        }
    });
    if !lines.is_empty() {
        copy_ui(ui, speaker.word("serving-energy-table"), || {
            energy_as_table(screen, &lines, total)
        });
    }
}

/// The percentage of the energy that a line brings, in digits.
fn part_of(line: &LineShare, total: f64) -> Option<String> {
    let energy = line.energy.filter(|_| total > 0.0)?;
    Some(show_number(energy / total * 100.0, 0))
}

fn energy_as_table(screen: &Screen<'_>, lines: &[&LineShare], total: f64) -> Table {
    let speaker = screen.speaker;
    let heads = [
        ("serving-energy-ingredient", ""),
        ("serving-energy-table", "kJ"),
        ("serving-energy-part", "%"),
    ];
    let mut table =
        Table::new(heads.map(|(name, unit)| spreadsheet::head(speaker.word(name), unit)));
    for line in lines {
        let energy = line.energy.map(|energy| show_number(energy, 0));
        table.row([
            Cell::words(&speaker.ingredient(&line.ingredient)),
            Cell::figure(
                energy
                    .as_deref()
                    .unwrap_or(speaker.word("serving-energy-not-stated")),
            ),
            Cell::figure(&part_of(line, total).unwrap_or_default()),
        ]);
    }
    table
}
