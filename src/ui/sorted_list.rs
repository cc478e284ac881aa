//! What lists that are sorted by a click on a heading have in common: columns, cells, their order and their places in a row.

use std::cmp::Ordering;

use egui::{Align2, Rect, Response, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::commands::{UiCommand, pressed_here};
use super::theme::{self, TypeStyle, grid};
use super::widgets::name::elided;
use super::words;
use crate::say::{Speaker, say};

/// Between two columns, in points.
const GAP: f32 = grid::EASY;
/// The least that the name needs, in points.
const NAME: f32 = 44.0 * grid::STEP;
/// The mark of the role with the gap behind it, in points.
pub(in crate::ui) const MARK: f32 = grid::EASY + grid::TIGHT;

/// A column behind the name.
#[derive(Clone, Copy, Debug)]
pub(in crate::ui) struct Column {
    /// The message of its words.
    pub title: &'static str,
    /// Its width, in points.
    pub width: f32,
    /// Whether it holds numbers, which stand at its right edge.
    pub is_number: bool,
    /// The message that stands there when a figure is not known, if there is one.
    pub gap: &'static str,
    /// Columns of a high rank are the first to go when there is little room.
    pub rank: u8,
}

impl Column {
    /// What stands there when a figure is not known.
    pub(in crate::ui) fn gap_words(&self, speaker: Speaker<'_>) -> &'static str {
        if self.gap.is_empty() {
            return "";
        }
        speaker.word(self.gap)
    }
}

pub(in crate::ui) const fn words(title: &'static str, width: f32, rank: u8) -> Column {
    Column {
        title,
        width,
        is_number: false,
        gap: "",
        rank,
    }
}

pub(in crate::ui) const fn numbers(
    title: &'static str,
    width: f32,
    gap: &'static str,
    rank: u8,
) -> Column {
    Column {
        title,
        width,
        is_number: true,
        gap,
        rank,
    }
}

/// What a column says of an item, and what it is sorted by.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::ui) enum ListCell {
    /// A word.
    Word(String),
    /// A number with its text.
    Number(f64, String),
    /// Nothing is known.
    Gap,
}

impl ListCell {
    pub(in crate::ui) fn number(speaker: Speaker<'_>, value: Option<f64>, decimals: usize) -> Self {
        value.map_or(Self::Gap, |value| {
            Self::Number(value, speaker.number(value, decimals))
        })
    }

    /// With its unit behind it.
    pub(in crate::ui) fn in_unit(self, unit: &str) -> Self {
        match self {
            Self::Number(value, text) => Self::Number(value, format!("{text}\u{a0}{unit}")),
            other => other,
        }
    }

    pub(in crate::ui) fn count(count: usize) -> Self {
        Self::Number(count as f64, count.to_string())
    }

    fn order(&self, other: &Self) -> Ordering {
        match (self, other) {
            (Self::Word(one), Self::Word(two)) => one.to_lowercase().cmp(&two.to_lowercase()),
            (Self::Number(one, _), Self::Number(two, _)) => one.total_cmp(two),
            _ => Ordering::Equal,
        }
    }
}

/// Which column sorts, and which way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(in crate::ui) struct Sort {
    /// The column, or the name.
    pub column: Option<usize>,
    /// From large to small.
    pub descending: bool,
}

impl Sort {
    /// What a click on a heading does: this column upwards, then downwards, then the order of the book.
    pub(in crate::ui) fn clicked(before: Option<Self>, column: Option<usize>) -> Option<Self> {
        match before {
            Some(sort) if sort.column == column && sort.descending => None,
            Some(sort) if sort.column == column => Some(Self {
                descending: true,
                ..sort
            }),
            _ => Some(Self {
                column,
                descending: false,
            }),
        }
    }

    /// Puts rows in order by their name or a cell; what is not known comes last whichever way.
    pub(in crate::ui) fn order<'row>(
        self,
        rows: &mut [usize],
        of: impl Fn(usize) -> (&'row str, &'row [ListCell]),
    ) {
        match self.column {
            None => self.by_name(rows, |at| of(at).0.to_lowercase()),
            Some(column) => rows.sort_by(|one, two| {
                let (one, two) = (&of(*one).1[column], &of(*two).1[column]);
                let gaps = (*one == ListCell::Gap).cmp(&(*two == ListCell::Gap));
                gaps.then(self.way(one.order(two)))
            }),
        }
    }

    /// Puts rows in order by their name.
    pub(in crate::ui) fn by_name(self, rows: &mut [usize], name: impl Fn(usize) -> String) {
        rows.sort_by_cached_key(|at| name(*at));
        if self.descending {
            rows.reverse();
        }
    }

    /// An order upwards, the way that is sorted.
    pub(in crate::ui) fn way(self, order: Ordering) -> Ordering {
        if self.descending {
            order.reverse()
        } else {
            order
        }
    }
}

/// How far a list is scrolled so that a row is in sight with one before and behind it, in points.
pub(in crate::ui) fn offset_to(row: usize, each: f32, scrolled: f32, height: f32) -> f32 {
    let top = row as f32 * each;
    let least = (top + 2.0 * each - height).max(0.0);
    scrolled.clamp(least, (top - each).max(least))
}

/// The row that an arrow leads to from another one; `None` without an arrow, and at the ends.
pub(in crate::ui) fn neighbour(ui: &Ui, place: usize, count: usize) -> Option<usize> {
    let mut to = place;
    if pressed_here(ui.ctx(), UiCommand::LineBelow) {
        to = (place + 1).min(count - 1);
    }
    if pressed_here(ui.ctx(), UiCommand::LineAbove) {
        to = place.saturating_sub(1);
    }
    (to != place).then_some(to)
}

/// Gives the keyboard to a row that an arrow led to.
pub(in crate::ui) fn take_focus(ui: &Ui, response: &Response) {
    response.request_focus();
    // The arrow has done its work: egui would take it for a step further.
    ui.memory_mut(|memory| memory.move_focus(egui::FocusDirection::None));
}

/// The columns that there is room for, with their right edges counted from the right edge of the list.
pub(in crate::ui) fn visible_columns(columns: &[Column], width: f32) -> Vec<(usize, Column)> {
    let mut shown: Vec<(usize, Column)> = columns.iter().copied().enumerate().collect();
    let taken = |shown: &[(usize, Column)]| {
        shown
            .iter()
            .map(|(_, column)| column.width + GAP)
            .sum::<f32>()
    };
    while width - MARK - taken(&shown) < NAME {
        let Some(last) = (0..shown.len()).max_by_key(|at| shown[*at].1.rank) else {
            break;
        };
        shown.remove(last);
    }
    shown
}

/// As many columns as there is room for, from one of them on; near the end those that fill the room with the last one.
pub(in crate::ui) fn columns_from(
    columns: &[Column],
    width: f32,
    first: usize,
) -> Vec<(usize, Column)> {
    let room = width - MARK - NAME;
    let fit = |from: usize| {
        let mut taken = 0.0;
        let fitting = columns[from..].iter().take_while(|column| {
            taken += column.width + GAP;
            taken <= room
        });
        fitting.count()
    };
    let reaches_end = |from: &usize| from + fit(*from) == columns.len();
    let last = (0..columns.len()).find(reaches_end).unwrap_or_default();
    let from = first.min(last);
    let shown = columns.iter().copied().enumerate();
    shown.skip(from).take(fit(from).max(1)).collect()
}

/// The places of the columns in a row, the name's first.
pub(in crate::ui) fn places(rect: Rect, shown: &[(usize, Column)]) -> (Rect, Vec<Rect>) {
    let mut right = rect.right() - grid::NEAR;
    let mut cells = Vec::new();
    for (_, column) in shown.iter().rev() {
        cells.push(Rect::from_min_max(
            pos2(right - column.width, rect.top()),
            pos2(right, rect.bottom()),
        ));
        right -= column.width + GAP;
    }
    cells.reverse();
    (
        Rect::from_min_max(
            pos2(rect.left() + MARK, rect.top()),
            pos2(right, rect.bottom()),
        ),
        cells,
    )
}

/// The headings, each of which sorts.
pub(in crate::ui) fn headings_ui(
    ui: &mut Ui,
    sorting: &mut Option<Sort>,
    first: &str,
    shown: &[(usize, Column)],
    width: f32,
) {
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let speaker = words::speaker(ui.ctx());
    let (name, cells) = places(rect, shown);
    let mut clicked = None;
    if heading_ui(ui, *sorting, None, first, name, false) {
        clicked = Some(None);
    }
    for ((at, column), place) in shown.iter().zip(cells) {
        if heading_ui(
            ui,
            *sorting,
            Some(*at),
            speaker.word(column.title),
            place,
            column.is_number,
        ) {
            clicked = Some(Some(*at));
        }
    }
    if let Some(column) = clicked {
        *sorting = Sort::clicked(*sorting, column);
    }
    let palette = theme::palette(ui.visuals());
    ui.painter().hline(
        rect.x_range(),
        rect.bottom(),
        Stroke::new(grid::HAIRLINE, palette.line),
    );
}

/// A heading that sorts; the sorting one has a sign for its way.
fn heading_ui(
    ui: &Ui,
    sort: Option<Sort>,
    column: Option<usize>,
    title: &str,
    place: Rect,
    is_number: bool,
) -> bool {
    let palette = theme::palette(ui.visuals());
    let sorting = sort.filter(|sort| sort.column == column);
    let response = ui.interact(
        place,
        ui.scope_id().with(("heading", column)),
        Sense::click(),
    );
    // Said before: the context is locked while a widget tells its name.
    let name = say!(words::speaker(ui.ctx()), "counter-sort-by", column: title);
    response.widget_info(|| {
        WidgetInfo::selected(egui::Role::Button, true, sorting.is_some(), name.as_str())
    });
    let strong = sorting.is_some() || response.hovered() || response.has_focus();
    let colour = if strong {
        palette.text_strong
    } else {
        palette.text_quiet
    };
    let galley = ui
        .painter()
        .layout_no_wrap(title.to_owned(), TypeStyle::Small.font_id(), colour);
    let size = galley.size();
    let left = if is_number {
        place.right() - size.x
    } else {
        place.left()
    };
    ui.painter()
        .galley(pos2(left, place.center().y - size.y / 2.0), galley, colour);
    if let Some(sort) = sorting {
        let x = if is_number {
            left - grid::NEAR
        } else {
            left + size.x + grid::NEAR
        };
        let (middle, rise) = (place.center().y, if sort.descending { 2.0 } else { -2.0 });
        let points = vec![
            pos2(x - 3.5, middle - rise),
            pos2(x, middle + rise),
            pos2(x + 3.5, middle - rise),
        ];
        ui.painter()
            .add(egui::Shape::line(points, Stroke::new(1.5, palette.accent)));
    }
    // Beside the word, not over its first letter.
    if response.has_focus() {
        theme::focus_ring(ui, place.expand2(vec2(grid::TIGHT, 0.0)));
    }
    response.clicked()
}

/// A cell in its place.
pub(in crate::ui) fn cell_ui(ui: &Ui, cell: &ListCell, column: &Column, place: Rect) {
    let palette = theme::palette(ui.visuals());
    let (text, style, colour) = match cell {
        ListCell::Word(text) if column.is_number => {
            (text.as_str(), TypeStyle::Small, palette.text_normal)
        }
        ListCell::Word(text) => (text.as_str(), TypeStyle::Small, palette.text_quiet),
        ListCell::Number(_, text) => (text.as_str(), TypeStyle::Body, palette.text_normal),
        ListCell::Gap => (
            column.gap_words(words::speaker(ui.ctx())),
            TypeStyle::Small,
            palette.text_quiet,
        ),
    };
    let (at, anchor) = if column.is_number {
        (place.right_center(), Align2::RIGHT_CENTER)
    } else {
        (place.left_center(), Align2::LEFT_CENTER)
    };
    let galley = elided(ui, text, &style.font_id(), colour, place.width());
    let at = anchor.anchor_size(at, galley.size());
    ui.painter().galley(at.min, galley, colour);
}
