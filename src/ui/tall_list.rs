//! A list of rows of unlike heights, of which only those in sight are drawn, with some on either side for the keyboard and
//! for screen readers: ten thousand rows cost a frame what a hundred do.

use egui::{Rangef, Rect, Ui, UiBuilder, vec2};

use super::theme::grid;

/// Rows that are drawn above and below those in sight.
const BESIDE: usize = 24;

/// Height of a row that has not been drawn yet, in points.
const ROW: f32 = grid::TARGET;

/// Frames in which a row is sought before it is left where it is.
const MOST_FRAMES: u8 = 30;

/// What a place may be off after scrolling to it, in points.
const ROUNDING: f32 = 2.0;

/// How tall each row is, as far as it has been drawn.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct TallList {
    /// The top of each row and, last, the end of the list, in points.
    tops: Vec<f32>,
    /// What was in sight in the last frame, from the top of the list, in points.
    in_sight: Rangef,
    /// The row that is being brought into sight, and the frames that are left for it.
    sought: Option<(usize, u8)>,
}

impl Default for TallList {
    fn default() -> Self {
        Self {
            tops: Vec::new(),
            in_sight: Rangef::new(0.0, 0.0),
            sought: None,
        }
    }
}

impl TallList {
    /// A list of so many rows, each of a height that is expected; what is known already stays.
    pub(super) fn expect(&mut self, rows: usize, height: f32) {
        if self.tops.len() == rows + 1 {
            return;
        }
        self.tops = (0..=rows).map(|row| row as f32 * height).collect();
    }

    /// Brings a row into sight, from the next frame on; none any more for `None`.
    pub(super) fn seek(&mut self, row: Option<usize>) {
        self.sought = row.map(|row| (row, MOST_FRAMES));
    }

    /// How far to scroll in this frame to the row that is sought.
    pub(super) fn offset_to_sought(&mut self) -> Option<f32> {
        let (row, left) = self.sought.take()?;
        let offset = self.offset_to(row)?;
        self.sought = left.checked_sub(1).map(|left| (row, left));
        Some(offset)
    }

    /// How far the list is to be scrolled so that a row comes into sight; `None` when it is there. While heights on the way are
    /// guesses it takes some frames until it stays.
    fn offset_to(&self, row: usize) -> Option<f32> {
        let (top, end) = (*self.tops.get(row)?, *self.tops.get(row + 1)?);
        // Of a row that is taller than what is in sight, its head.
        let end = end.min(top + self.in_sight.span());
        let is_there = top >= self.in_sight.min - ROUNDING && end <= self.in_sight.max + ROUNDING;
        (!is_there).then(|| (top - self.in_sight.span() / 3.0).max(0.0))
    }

    /// Draws the rows around `viewport`, which is relative to the top of the list, and takes room for all of them.
    pub(super) fn rows_ui(
        &mut self,
        ui: &mut Ui,
        viewport: Rect,
        mut row_ui: impl FnMut(&mut Ui, usize),
    ) {
        self.in_sight = viewport.y_range();
        let rows = self.tops.len().saturating_sub(1);
        if rows == 0 {
            return;
        }
        let origin = ui.min_rect().left_top();
        let width = ui.available_width();
        let in_sight = |top: f32| {
            self.tops
                .partition_point(|row| *row <= top)
                .saturating_sub(1)
        };
        let first = in_sight(viewport.top()).saturating_sub(BESIDE);
        let last = (in_sight(viewport.bottom()) + BESIDE).min(rows - 1);
        for row in first..=last {
            let place = Rect::from_min_size(origin + vec2(0.0, self.tops[row]), vec2(width, 0.0));
            // By its own number, so that what has the keyboard keeps it when the list is scrolled.
            let builder = UiBuilder::new().id_salt(row).max_rect(place);
            let drawn = ui.scope_builder(builder, |ui| row_ui(ui, row));
            self.set_height(row, drawn.response.rect.height());
        }
        ui.expand_to_include_y(origin.y + self.tops[rows]);
    }

    /// Draws a list that stands in a sheet which is scrolled as a whole: the rows in sight, and room for the others.
    pub(super) fn in_sheet_ui(
        &mut self,
        ui: &mut Ui,
        rows: usize,
        mut row_ui: impl FnMut(&mut Ui, usize),
    ) {
        self.expect(rows, ROW);
        ui.scope(|ui| {
            // What is in sight of the sheet, seen from the top of the list.
            let in_sight = ui.clip_rect().translate(-ui.min_rect().min.to_vec2());
            self.rows_ui(ui, in_sight, |ui, row| {
                row_ui(ui, row);
                ui.add_space(ui.spacing().item_spacing.y);
            });
        });
    }

    /// Moves what stands below a row whose height turns out to be another.
    fn set_height(&mut self, row: usize, height: f32) {
        let by = height - (self.tops[row + 1] - self.tops[row]);
        if by.abs() > 0.1 {
            for top in &mut self.tops[row + 1..] {
                *top += by;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use egui::{Context, RawInput, pos2};

    /// The rows that are drawn and the height of the whole, after some frames.
    fn drawn(rows: usize, viewport: (f32, f32)) -> (Vec<usize>, f32) {
        let mut list = TallList::default();
        let (mut seen, mut height) = (Vec::new(), 0.0);
        let ctx = Context::default();
        for _ in 0..3 {
            let input = RawInput {
                screen_rect: Some(Rect::from_min_size(pos2(0.0, 0.0), vec2(300.0, 600.0))),
                ..RawInput::default()
            };
            let mut output = ctx.run_ui(input, |ui| {
                seen.clear();
                list.expect(rows, 20.0);
                let viewport = Rect::from_min_max(pos2(0.0, viewport.0), pos2(300.0, viewport.1));
                list.rows_ui(ui, viewport, |ui, row| {
                    seen.push(row);
                    // Every tenth row is taller than expected.
                    let tall = if row % 10 == 0 { 50.0 } else { 20.0 };
                    ui.allocate_space(vec2(100.0, tall));
                });
                height = ui.min_rect().height();
            });
            // The images are for a screen that is not there.
            output.textures_delta.clear();
        }
        (seen, height)
    }

    #[test]
    fn a_long_list_draws_what_is_in_sight_and_a_short_one_everything() {
        let (all, height) = drawn(20, (0.0, 400.0));
        assert_eq!(all, (0..20).collect::<Vec<_>>());
        assert!(
            (height - (18.0 * 20.0 + 2.0 * 50.0)).abs() < 1.0,
            "{height}"
        );
        let (some, height) = drawn(10_000, (100_000.0, 100_400.0));
        assert!(some.len() < 80, "{}", some.len());
        assert!(some[0] > 4_000 && some.windows(2).all(|pair| pair[1] == pair[0] + 1));
        assert!(height >= 200_000.0);
        assert_eq!(drawn(0, (0.0, 400.0)).0, Vec::<usize>::new());
    }

    #[test]
    fn a_row_is_scrolled_to_unless_it_is_in_sight() {
        let mut list = TallList::default();
        list.expect(100, 20.0);
        list.in_sight = Rangef::new(200.0, 500.0);
        assert_eq!(list.offset_to(10), None);
        assert_eq!(list.offset_to(24), None);
        assert_eq!(list.offset_to(25), Some(400.0));
        assert_eq!(list.offset_to(2), Some(0.0));
        assert_eq!(list.offset_to(100), None);
        list.set_height(30, 900.0);
        list.in_sight = Rangef::new(600.0, 900.0);
        assert_eq!(list.offset_to(30), None, "its head is in sight");
    }
}
