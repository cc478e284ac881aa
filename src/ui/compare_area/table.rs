//! The table of a comparison: a column a drink, what differs from the first in stronger ink.

use std::sync::Arc;

use egui::{Color32, Galley, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::model::{Cell, Part, Row};
use crate::say::{Speaker, say};
use crate::ui::glossary::Explained as _;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::value::more_words;
use crate::ui::words::heading_ui;

/// Room for the name of a row, in points.
pub(super) const NAME: f32 = 44.0 * grid::STEP;
/// Height of a line of text in a row, in points.
const LINE: f32 = 6.0 * grid::STEP;
/// Between two columns, in points.
const GAP: f32 = grid::EASY;
/// The widest column, in points.
const MOST: f32 = 120.0 * grid::STEP;
/// Width of the column of a difference beside that of a drink.
const DIFFERENCE: f32 = 0.6;
/// From this width on a difference stands beside its doubt, in points.
const BROAD: f32 = 30.0 * grid::STEP;

/// How wide the columns are, in points: the first drink has one, each of the others one and that of its difference.
#[derive(Clone, Copy, Debug)]
pub(super) struct Widths {
    pub(super) drink: f32,
    pub(super) difference: f32,
}

impl Widths {
    /// For so many drinks.
    pub(super) fn of(available: f32, drinks: usize) -> Self {
        let others = drinks.saturating_sub(1) as f32;
        let room = (available - NAME).max(0.0);
        let drink = room / (1.0 + others * (1.0 + DIFFERENCE));
        let drink = drink.min(MOST);
        Self {
            drink,
            difference: drink * DIFFERENCE,
        }
    }

    /// Where the column of a drink begins, from the left edge of the table.
    pub(super) fn left_of(self, at: usize) -> f32 {
        NAME + self.drink * at as f32 + self.difference * at.saturating_sub(1) as f32
    }

    /// Width of the whole table.
    pub(super) fn whole(self, drinks: usize) -> f32 {
        self.left_of(drinks)
    }
}

/// A part with its heading.
pub(super) fn part_ui(ui: &mut Ui, speaker: Speaker<'_>, part: &Part, widths: Widths) {
    heading_ui(ui, part.heading);
    let decimal = decimal_place(ui, part);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (at, row) in part.rows.iter().enumerate() {
            row_ui(ui, speaker, row, (widths, decimal), at % 2 == 1);
        }
    });
}

/// Where the decimal sign of the figures stands in a column of this part: behind the widest whole number, in points.
fn decimal_place(ui: &Ui, part: &Part) -> f32 {
    let cells = part.rows.iter().flat_map(|row| &row.cells);
    cells
        .filter_map(|cell| match cell {
            Cell::Figure { value, .. } => value.text.as_deref(),
            Cell::Words { .. } => None,
        })
        .map(|text| whole_width(ui, text))
        .fold(0.0, f32::max)
}

/// Width of a number up to its decimal sign, in points.
fn whole_width(ui: &Ui, number: &str) -> f32 {
    let whole = number.split('.').next().unwrap_or_default().to_owned();
    let font = TypeStyle::Body.font_id();
    let galley = ui
        .painter()
        .layout_no_wrap(whole, font, Color32::PLACEHOLDER);
    galley.size().x
}

/// A cell, laid out.
struct Laid {
    /// How far it stands from the left edge of the column, in points.
    indent: f32,
    main: Arc<Galley>,
    quiet: Option<Arc<Galley>>,
}

impl Laid {
    fn height(&self) -> f32 {
        let quiet = self.quiet.as_ref().map_or(0.0, |quiet| quiet.size().y);
        self.main.size().y + quiet + grid::TIGHT
    }
}

fn lay(
    ui: &Ui,
    speaker: Speaker<'_>,
    cell: &Cell,
    unit: &str,
    (width, decimal): (f32, f32),
) -> Laid {
    let palette = theme::palette(ui.visuals());
    let indent = match cell {
        Cell::Figure { value, .. } => {
            let whole = value.text.as_deref().map(|text| whole_width(ui, text));
            whole.map_or(0.0, |whole| decimal - whole)
        }
        Cell::Words { .. } => 0.0,
    };
    let galley = |text: String, style: TypeStyle, colour: Color32| {
        let room = width - indent;
        ui.painter().layout(text, style.font_id(), colour, room)
    };
    match cell {
        Cell::Words { text, differs } => {
            let (style, colour) = if *differs {
                (TypeStyle::Strong, palette.text_strong)
            } else {
                (TypeStyle::Body, palette.text_normal)
            };
            Laid {
                indent,
                main: galley(text.clone(), style, colour),
                quiet: None,
            }
        }
        Cell::Figure { value, .. } => {
            let mut words = match value.digits_in(speaker) {
                Some(digits) => [digits.as_str(), unit].join("\u{a0}"),
                None => speaker.word("compare-not-known").to_owned(),
            };
            if let Some(u) = &value.u {
                words.push_str("  ± ");
                words.push_str(&speaker.digits(u));
            }
            let below = value.gap.clone();
            Laid {
                indent,
                main: galley(words, TypeStyle::Body, palette.text_strong),
                quiet: below.map(|below| galley(below, TypeStyle::Small, palette.text_quiet)),
            }
        }
    }
}

/// How much more a figure is than that of the first drink, as it stands in its column; nothing beside words.
fn difference_words(speaker: Speaker<'_>, cell: &Cell, unit: &str) -> Option<String> {
    let Cell::Figure { more, .. } = cell else {
        return None;
    };
    Some(more.clone().map_or_else(
        || speaker.word("compare-not-stated-difference").to_owned(),
        |more| [more_words(speaker, more).as_str(), unit].join("\u{a0}"),
    ))
}

fn row_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    row: &Row,
    (widths, decimal): (Widths, f32),
    is_striped: bool,
) {
    let palette = theme::palette(ui.visuals());
    let lay_cell = |(at, cell): (usize, &Cell)| {
        // Words have no difference: they take its room as well.
        let more = match cell {
            Cell::Words { .. } if at > 0 => widths.difference,
            _ => 0.0,
        };
        let room = (widths.drink + more - GAP, decimal);
        let difference = (at > 0).then(|| difference_words(speaker, cell, &row.difference_unit));
        let difference = difference.flatten().map(|words| {
            // Where there is little room the doubt stands below.
            let (style, words) = if widths.difference < BROAD {
                (TypeStyle::Small, words.replace(" ± ", "\n± "))
            } else {
                (TypeStyle::Body, words)
            };
            let width = widths.difference - GAP;
            ui.painter()
                .layout(words, style.font_id(), palette.text_quiet, width)
        });
        (lay(ui, speaker, cell, &row.unit, room), difference)
    };
    let laid: Vec<(Laid, Option<Arc<Galley>>)> =
        row.cells.iter().enumerate().map(lay_cell).collect();
    let name = ui.painter().layout(
        row.name.clone(),
        TypeStyle::Body.font_id(),
        palette.text_quiet,
        NAME - GAP,
    );
    let height = laid
        .iter()
        .map(|(cell, difference)| {
            let difference = difference.as_ref().map_or(0.0, |words| words.size().y);
            cell.height().max(difference + grid::TIGHT)
        })
        .fold(name.size().y + grid::TIGHT, f32::max)
        .max(LINE);
    let width = widths.whole(row.cells.len());
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Label, true, sentence(speaker, row)));
    response.explained(row.term);
    if !ui.is_rect_visible(rect) {
        return;
    }
    let painter = ui.painter();
    if is_striped {
        painter.rect_filled(rect.expand2(vec2(grid::TIGHT, 0.0)), 0.0, palette.stripe);
    }
    let top = rect.top() + grid::TIGHT / 2.0;
    painter.galley(pos2(rect.left(), top), name, palette.text_quiet);
    for (at, (cell, difference)) in laid.into_iter().enumerate() {
        let left = rect.left() + widths.left_of(at);
        let place = pos2(left + cell.indent, top);
        let below = cell.main.size().y;
        painter.galley(place, cell.main, palette.text_normal);
        if let Some(quiet) = cell.quiet {
            painter.galley(place + vec2(0.0, below), quiet, palette.text_quiet);
        }
        if let Some(difference) = difference {
            let place = pos2(left + widths.drink, top);
            painter.galley(place, difference, palette.text_quiet);
        }
    }
}

/// The row in one sentence.
fn sentence(speaker: Speaker<'_>, row: &Row) -> String {
    let cells = row.cells.iter().enumerate().map(|(at, cell)| match cell {
        Cell::Words { text, .. } => text.clone(),
        Cell::Figure { value, .. } => {
            let figure = value.short(speaker, "", &row.unit);
            match difference_words(speaker, cell, &row.difference_unit).filter(|_| at > 0) {
                Some(more) => {
                    say!(speaker, "compare-figure-and-more", figure: figure, more: more)
                }
                None => figure,
            }
        }
    });
    let cells =
        cells.reduce(|before, after| say!(speaker, "clauses", before: before, after: after));
    let cells = cells.unwrap_or_default();
    say!(speaker, "value-known", name: &row.name, figure: cells)
}

/// The heads of the columns are set by the area; here is the rule under them.
pub(super) fn rule_ui(ui: &mut Ui, width: f32) {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TIGHT), Sense::hover());
    ui.painter().hline(
        rect.x_range(),
        rect.center().y,
        egui::Stroke::new(grid::HAIRLINE, palette.line),
    );
}
