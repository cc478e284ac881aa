//! Lays out and draws the level.

use std::sync::Arc;

use egui::{Align2, Color32, Galley, Painter, Rect, Shape, Stroke, Ui, pos2, vec2};

use super::labels::{Labels, LevelWords, arrange_labels};
use super::model::{LevelMark, MarkStanding};
use crate::say::Speaker;
use crate::ui::theme::{self, Palette, TypeStyle, grid};

/// Height of one noticeable step, in points.
const STEP_HEIGHT: f32 = 28.0;
/// The steps from top to bottom: the band takes two, a third of the height.
const STEPS_IN_SIGHT: f32 = 6.0;
/// Height of the drawing, in points: the same whatever the marks are, so that one level can be read against another.
const PLOT_HEIGHT: f32 = STEPS_IN_SIGHT * STEP_HEIGHT;
/// Thickness of an axis's stretch of the line, in points.
const STRETCH: f32 = 4.0;
/// Part of a column that its stretch takes: all of it, but for a seam.
const STRETCH_PART: f32 = 0.86;
/// The longest stretch, in points.
const LONGEST_STRETCH: f32 = 72.0;
/// Thickness of the standard's line, in points.
const LINE: f32 = 1.5;
/// Half the width of a whisker's ends, in points.
const WHISKER_END: f32 = 3.0;
/// Length of the samples in the legend, in points.
const SAMPLE: f32 = 18.0;
/// A mark that moves less is still, in steps.
const SAME_PLACE: f64 = 0.05;

/// Where a mark is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Drawn {
    /// In its place.
    Still,
    /// On the way from where it was; both in steps.
    Moving { was: f64, at: f64 },
}

/// A level that has found its arrangement for a width.
pub(super) struct Drawing<'marks> {
    marks: &'marks [LevelMark],
    width: f32,
    labels: Labels,
    legend: [Arc<Galley>; 2],
    /// Whether the parts of the legend stand one below the other.
    is_stacked: bool,
    overall: Arc<Galley>,
}

impl<'marks> Drawing<'marks> {
    pub(super) fn arrange(
        ui: &Ui,
        marks: &'marks [LevelMark],
        width: f32,
        standard_words: &str,
        overall: &str,
        words: LevelWords,
        speaker: Speaker<'marks>,
    ) -> Self {
        let palette = theme::palette(ui.visuals());
        let small = TypeStyle::Small.font_id();
        let legend = [standard_words, speaker.word("widget-level-band")].map(|text| {
            let room = width - SAMPLE - grid::TIGHT;
            let (text, font) = (text.to_owned(), small.clone());
            ui.painter().layout(text, font, palette.text_quiet, room)
        });
        let needed = legend
            .iter()
            .map(|galley| galley.size().x + SAMPLE + grid::NEAR)
            .sum::<f32>()
            + grid::EASY;
        let off = marks.iter().any(|mark| mark.standing == MarkStanding::Off);
        let colour = if off {
            palette.off_level
        } else {
            palette.text_strong
        };
        let overall = ui.painter().layout(
            overall.to_owned(),
            TypeStyle::Strong.font_id(),
            colour,
            width,
        );
        let column = width / (marks.len() as f32 + 1.0);
        Self {
            marks,
            width,
            labels: arrange_labels(ui, marks, column, words, palette, speaker),
            legend,
            is_stacked: needed > width,
            overall,
        }
    }

    pub(super) fn height(&self) -> f32 {
        self.legend_height()
            + PLOT_HEIGHT
            + self.labels_height()
            + grid::NEAR
            + self.overall.size().y
    }

    fn legend_height(&self) -> f32 {
        let [line, band] = self.legend.each_ref().map(|galley| galley.size().y);
        let height = if self.is_stacked {
            line + band
        } else {
            line.max(band)
        };
        height + grid::TIGHT
    }

    fn labels_height(&self) -> f32 {
        self.labels.height()
    }

    fn plot(&self, rect: Rect) -> Rect {
        let top = rect.top() + self.legend_height();
        Rect::from_min_size(pos2(rect.left(), top), vec2(self.width, PLOT_HEIGHT))
    }

    fn column_width(&self) -> f32 {
        // Half a column stays free at each end, so that the outer labels have as much room as the others.
        self.width / (self.marks.len() as f32 + 1.0)
    }

    fn centre(&self, rect: Rect, index: usize) -> f32 {
        rect.left() + (index as f32 + 1.0) * self.column_width()
    }

    /// The column of a mark with its label, for the pointer.
    pub(super) fn column(&self, rect: Rect, index: usize) -> Rect {
        let plot = self.plot(rect);
        let half = self.column_width() / 2.0;
        let x = self.centre(rect, index);
        Rect::from_min_max(
            pos2(x - half, plot.top()),
            pos2(x + half, plot.bottom() + self.labels_height()),
        )
    }

    /// What the line and the band are, for the pointer.
    pub(super) fn legend(&self, rect: Rect) -> Rect {
        rect.with_max_y(rect.top() + self.legend_height())
    }

    /// The sentence beneath, for the pointer.
    pub(super) fn overall(&self, rect: Rect) -> Rect {
        rect.with_min_y(rect.bottom() - self.overall.size().y)
    }

    pub(super) fn paint(&self, painter: &Painter, rect: Rect, palette: &Palette, drawn: &[Drawn]) {
        let plot = self.plot(rect);
        self.paint_legend(painter, rect, palette);
        let stretch = (self.column_width() * STRETCH_PART).min(LONGEST_STRETCH);
        let frame = Frame {
            painter,
            palette,
            plot,
            step_height: STEP_HEIGHT,
            stretch,
        };
        let centres: Vec<f32> = (0..self.marks.len())
            .map(|index| self.centre(rect, index))
            .collect();
        frame.ground(self.marks, &centres);
        for ((mark, x), drawn) in self.marks.iter().zip(&centres).zip(drawn) {
            if let Drawn::Moving { was, .. } = *drawn {
                frame.ghost(was, mark.drawn_at().unwrap_or(was), *x);
            }
            frame.mark(mark, *x, *drawn);
        }
        self.paint_labels(painter, rect, palette);
        let below = pos2(
            rect.left(),
            plot.bottom() + self.labels_height() + grid::NEAR,
        );
        painter.galley(below, self.overall.clone(), palette.text_strong);
    }

    fn paint_legend(&self, painter: &Painter, rect: Rect, palette: &Palette) {
        let row = self.legend[0].rows.first().map_or(0.0, |row| row.height());
        let mut at = rect.left_top();
        let middle = at.y + row / 2.0;
        let stroke = Stroke::new(LINE, palette.accent);
        painter.hline(at.x..=at.x + SAMPLE, middle, stroke);
        painter.galley(
            at + vec2(SAMPLE + grid::TIGHT, 0.0),
            self.legend[0].clone(),
            palette.text_quiet,
        );
        if self.is_stacked {
            at.y += self.legend[0].size().y;
        } else {
            at.x = rect.left() + self.width - self.legend[1].size().x - SAMPLE - grid::TIGHT;
        }
        let sample = Rect::from_min_size(at + vec2(0.0, 3.0), vec2(SAMPLE, row - 6.0));
        painter.rect_filled(sample, 2.0, palette.level_band);
        painter.rect_stroke(
            sample,
            2.0,
            Stroke::new(grid::HAIRLINE, palette.line),
            egui::StrokeKind::Inside,
        );
        painter.galley(
            at + vec2(SAMPLE + grid::TIGHT, 0.0),
            self.legend[1].clone(),
            palette.text_quiet,
        );
    }

    fn paint_labels(&self, painter: &Painter, rect: Rect, palette: &Palette) {
        let top = self.plot(rect).bottom();
        for (index, galleys) in self.labels.galleys.iter().enumerate() {
            let x = self.centre(rect, index);
            let row = index % self.labels.rows;
            let mut y = top + row as f32 * self.labels.row_height;
            if row > 0 {
                painter.vline(x, top..=y, Stroke::new(grid::HAIRLINE, palette.line));
            }
            for galley in galleys {
                painter.galley(pos2(x, y), galley.clone(), palette.text_normal);
                y += galley.size().y;
            }
        }
    }
}

fn colour_of_mark(mark: &LevelMark, palette: &Palette) -> Color32 {
    match mark.standing {
        MarkStanding::Off => palette.off_level,
        MarkStanding::NotCounted => palette.outline,
        _ => palette.within_level,
    }
}

/// Where marks are drawn.
struct Frame<'frame> {
    painter: &'frame Painter,
    palette: &'frame Palette,
    plot: Rect,
    step_height: f32,
    stretch: f32,
}

impl Frame<'_> {
    #[expect(clippy::cast_possible_truncation, reason = "a place on the screen")]
    fn y(&self, steps: f64) -> f32 {
        self.plot.center().y - steps as f32 * self.step_height
    }

    /// The band, and the standard's line with a gap where an axis is not known.
    fn ground(&self, marks: &[LevelMark], centres: &[f32]) {
        let band = Rect::from_min_max(
            pos2(self.plot.left(), self.y(1.0)),
            pos2(self.plot.right(), self.y(-1.0)),
        );
        self.painter.rect_filled(band, 0.0, self.palette.level_band);
        for edge in [band.top(), band.bottom()] {
            self.painter.hline(
                band.x_range(),
                edge,
                Stroke::new(grid::HAIRLINE, self.palette.line),
            );
        }
        let stroke = Stroke::new(LINE, self.palette.accent);
        let mut from = self.plot.left();
        for (_, x) in marks
            .iter()
            .zip(centres)
            .filter(|(mark, _)| mark.steps.is_none())
        {
            self.painter
                .hline(from..=x - self.stretch / 2.0, self.y(0.0), stroke);
            from = x + self.stretch / 2.0;
            self.gap(*x);
        }
        self.painter
            .hline(from..=self.plot.right(), self.y(0.0), stroke);
    }

    /// Two ends that do not meet.
    fn gap(&self, x: f32) {
        let stroke = Stroke::new(LINE, self.palette.outline);
        for end in [x - self.stretch / 2.0, x + self.stretch / 2.0] {
            self.painter
                .vline(end, self.y(0.35)..=self.y(-0.35), stroke);
        }
        let place = pos2(x, self.y(0.0));
        self.painter.text(
            place,
            Align2::CENTER_CENTER,
            "?",
            TypeStyle::Small.font_id(),
            self.palette.text_quiet,
        );
    }

    /// An empty mark where it was, and a thin way from there to where it is.
    fn ghost(&self, was: f64, is: f64, x: f32) {
        if (was - is).abs() < SAME_PLACE {
            return;
        }
        let stroke = Stroke::new(grid::HAIRLINE, self.palette.outline);
        let size = vec2(self.stretch, STRETCH + 2.0);
        let empty = Rect::from_center_size(pos2(x, self.y(was)), size);
        self.painter
            .rect_stroke(empty, STRETCH / 2.0, stroke, egui::StrokeKind::Inside);
        let side = x - self.stretch / 2.0 + 3.0;
        let way = [pos2(side, self.y(was)), pos2(side, self.y(is))];
        self.painter
            .extend(Shape::dashed_line(&way, stroke, 3.0, 2.0));
    }

    fn mark(&self, mark: &LevelMark, x: f32, drawn: Drawn) {
        let Some(place) = mark.drawn_at() else { return };
        let at = match drawn {
            Drawn::Still => place,
            Drawn::Moving { at, .. } => at,
        };
        let aside = at - place;
        let colour = colour_of_mark(mark, self.palette);
        let y = self.y(at);
        if at.abs() > 1.0 {
            let stem = [pos2(x, self.y(0.0)), pos2(x, y)];
            self.painter
                .extend(Shape::dotted_line(&stem, colour, 4.0, 0.8));
        }
        if let Some((low, high)) = mark.whisker() {
            let stroke = Stroke::new(grid::HAIRLINE, colour);
            let (low, high) = (low + aside, high + aside);
            self.painter.vline(x, self.y(high)..=self.y(low), stroke);
            for end in [low, high] {
                self.painter
                    .hline(x - WHISKER_END..=x + WHISKER_END, self.y(end), stroke);
            }
        }
        let stretch = Rect::from_center_size(pos2(x, y), vec2(self.stretch, STRETCH));
        self.painter.rect_filled(stretch, STRETCH / 2.0, colour);
        if mark.is_beyond() {
            self.open_end(x, y, at.is_sign_positive(), colour);
        }
    }

    /// An angle that points on, beyond the last mark.
    fn open_end(&self, x: f32, y: f32, up: bool, colour: Color32) {
        let away = if up { -1.0 } else { 1.0 };
        let foot = y + away * (STRETCH + 1.0);
        let points = vec![
            pos2(x - 4.0, foot),
            pos2(x, foot + away * 3.0),
            pos2(x + 4.0, foot),
        ];
        self.painter
            .add(Shape::line(points, Stroke::new(LINE, colour)));
    }
}

/// The compact level: line, band and marks only.
pub(super) fn paint_strip(painter: &Painter, rect: Rect, marks: &[LevelMark], palette: &Palette) {
    let column = rect.width() / (marks.len() as f32).max(1.0);
    let frame = Frame {
        painter,
        palette,
        plot: rect,
        step_height: rect.height() / STEPS_IN_SIGHT,
        stretch: column * STRETCH_PART,
    };
    let centres: Vec<f32> = (0..marks.len())
        .map(|index| rect.left() + (index as f32 + 0.5) * column)
        .collect();
    let band = Rect::from_min_max(
        pos2(rect.left(), frame.y(1.0)),
        pos2(rect.right(), frame.y(-1.0)),
    );
    painter.rect_filled(band, 2.0, palette.level_band);
    let mut from = rect.left();
    let line = Stroke::new(grid::HAIRLINE, palette.accent);
    for (mark, x) in marks.iter().zip(&centres) {
        let Some(at) = mark.drawn_at() else {
            painter.hline(from..=x - column / 2.0, frame.y(0.0), line);
            from = x + column / 2.0;
            continue;
        };
        let stretch =
            Rect::from_center_size(pos2(*x, frame.y(at)), vec2(frame.stretch, STRETCH * 0.75));
        painter.rect_filled(stretch, 1.0, colour_of_mark(mark, palette));
    }
    painter.hline(from..=rect.right(), frame.y(0.0), line);
}
