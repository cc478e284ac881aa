//! The words under the level: as full as the width allows.

use std::sync::Arc;

use egui::{Color32, Galley, Ui};

use super::model::{LevelMark, MarkStanding};
use crate::say::Speaker;
use crate::ui::theme::{Palette, TypeStyle};

/// Space between two labels of one row, in points.
const BETWEEN_LABELS: f32 = 8.0;

/// The labels under the columns.
pub(super) struct Labels {
    /// Name and, where there is room, words of each axis.
    pub(super) galleys: Vec<Vec<Arc<Galley>>>,
    /// One, or two staggered ones.
    pub(super) rows: usize,
    /// In points.
    pub(super) row_height: f32,
    /// Whether the words of the differences stand under the names.
    pub(super) with_words: bool,
}

/// The fullest labels that fit: names with words, names alone, names cut short; in one row, else in two staggered ones.
pub(super) fn arrange_labels(
    ui: &Ui,
    marks: &[LevelMark],
    column: f32,
    palette: &Palette,
    speaker: Speaker<'_>,
) -> Labels {
    let font = TypeStyle::Small.font_id();
    let set =
        |text: String, colour: Color32| ui.painter().layout_no_wrap(text, font.clone(), colour);
    let name = |mark: &LevelMark| set(mark.short_name(speaker).to_owned(), palette.text_normal);
    let full = |mark: &LevelMark| {
        let words = set(mark.short_words(speaker), colour_of_words(mark, palette));
        vec![name(mark), words]
    };
    let widest = |galleys: &[Vec<Arc<Galley>>]| {
        galleys
            .iter()
            .flatten()
            .map(|galley| galley.size().x)
            .fold(0.0, f32::max)
    };
    let with_words: Vec<_> = marks.iter().map(full).collect();
    let names: Vec<_> = marks.iter().map(|mark| vec![name(mark)]).collect();
    for (galleys, words) in [(with_words, true), (names, false)] {
        for rows in [1_usize, 2] {
            if widest(&galleys) + BETWEEN_LABELS <= column * rows as f32 {
                return Labels::new(galleys, rows, words);
            }
        }
    }
    let room = 2.0 * column - BETWEEN_LABELS;
    let short = marks
        .iter()
        .map(|mark| vec![shortened(ui, mark.short_name(speaker), room, palette)])
        .collect();
    Labels::new(short, 2, false)
}

impl Labels {
    fn new(galleys: Vec<Vec<Arc<Galley>>>, rows: usize, with_words: bool) -> Self {
        let height =
            |galleys: &Vec<Arc<Galley>>| galleys.iter().map(|galley| galley.size().y).sum::<f32>();
        let row_height = galleys.iter().map(height).fold(0.0, f32::max) + 2.0;
        Self {
            galleys,
            rows,
            row_height,
            with_words,
        }
    }
}

/// A word that is cut with an ellipsis where it does not fit; its tooltip has it whole.
fn shortened(ui: &Ui, word: &str, room: f32, palette: &Palette) -> Arc<Galley> {
    let mut job = egui::text::LayoutJob::simple_singleline(
        word.to_owned(),
        TypeStyle::Small.font_id(),
        palette.text_normal,
    );
    job.wrap = egui::text::TextWrapping::truncate_at_width(room);
    ui.painter().layout_job(job)
}

fn colour_of_words(mark: &LevelMark, palette: &Palette) -> Color32 {
    match mark.standing {
        MarkStanding::Off => palette.off_level,
        _ => palette.text_quiet,
    }
}
