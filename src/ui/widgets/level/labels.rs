//! The words under the level: whole, in as few lines as the width allows.

use std::sync::Arc;

use egui::text::{LayoutJob, TextWrapping};
use egui::{Align, Color32, Galley, Ui};

use super::model::{LevelMark, MarkStanding};
use crate::say::Speaker;
use crate::ui::theme::{Palette, TypeStyle};

/// Space between two labels of one row, in points.
const BETWEEN_LABELS: f32 = 8.0;

/// Where the words of the marks stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LevelWords {
    /// Below the marks.
    Below,
    /// In rows beside the level.
    Beside,
}

/// The labels under the columns.
pub(super) struct Labels {
    /// Name and words of each axis, laid out around their middle.
    pub(super) galleys: Vec<Vec<Arc<Galley>>>,
    /// One, or two staggered ones.
    pub(super) rows: usize,
    /// In points.
    pub(super) row_height: f32,
}

/// The labels in the fewest lines: names, each with its words below it, in one row or in two staggered ones. What has no room
/// even there is cut short.
pub(super) fn arrange_labels(
    ui: &Ui,
    marks: &[LevelMark],
    column: f32,
    words: LevelWords,
    palette: &Palette,
    speaker: Speaker<'_>,
) -> Labels {
    let texts: Vec<Vec<(String, Color32)>> = marks
        .iter()
        .map(|mark| {
            let mut texts = vec![(mark.short_name(speaker).to_owned(), palette.text_normal)];
            if words == LevelWords::Below {
                texts.push((mark.short_words(speaker), colour_of_words(mark, palette)));
            }
            texts
        })
        .collect();
    let widest_word = texts
        .iter()
        .flatten()
        .flat_map(|(text, _)| text.split(' '))
        .map(|word| set(ui, word, Color32::PLACEHOLDER, f32::INFINITY).size().x)
        .fold(0.0, f32::max);
    let room = |rows: usize| column * rows as f32 - BETWEEN_LABELS;
    let in_rows = |rows: usize| {
        let labels = texts.iter().map(|texts| {
            let set = |(text, colour): &(String, Color32)| set(ui, text, *colour, room(rows));
            texts.iter().map(set).collect()
        });
        Labels::new(labels.collect(), rows)
    };
    [1, 2]
        .into_iter()
        .filter(|rows| widest_word <= room(*rows))
        .map(in_rows)
        .min_by(|one, other| one.height().total_cmp(&other.height()))
        .unwrap_or_else(|| {
            let labels = texts.iter().map(|texts| {
                let cut =
                    |(text, colour): &(String, Color32)| shortened(ui, text, *colour, room(2));
                texts.iter().map(cut).collect()
            });
            Labels::new(labels.collect(), 2)
        })
}

/// Words broken where there is no room, each line in the middle.
fn set(ui: &Ui, text: &str, colour: Color32, room: f32) -> Arc<Galley> {
    let mut job = LayoutJob::simple(text.to_owned(), TypeStyle::Small.font_id(), colour, room);
    job.halign = Align::Center;
    ui.painter().layout_job(job)
}

impl Labels {
    fn new(galleys: Vec<Vec<Arc<Galley>>>, rows: usize) -> Self {
        let height =
            |galleys: &Vec<Arc<Galley>>| galleys.iter().map(|galley| galley.size().y).sum::<f32>();
        let row_height = galleys.iter().map(height).fold(0.0, f32::max) + 2.0;
        Self {
            galleys,
            rows,
            row_height,
        }
    }

    /// Of all rows, in points.
    pub(super) fn height(&self) -> f32 {
        self.rows as f32 * self.row_height
    }
}

/// Words that are cut with an ellipsis where they do not fit; their tooltip has them whole.
fn shortened(ui: &Ui, text: &str, colour: Color32, room: f32) -> Arc<Galley> {
    let font = TypeStyle::Small.font_id();
    let mut job = LayoutJob::simple_singleline(text.to_owned(), font, colour);
    job.wrap = TextWrapping::truncate_at_width(room.max(0.0));
    job.halign = Align::Center;
    ui.painter().layout_job(job)
}

fn colour_of_words(mark: &LevelMark, palette: &Palette) -> Color32 {
    match mark.standing {
        MarkStanding::Off => palette.off_level,
        _ => palette.text_quiet,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Axis;
    use crate::say::Language;

    fn marks() -> Vec<LevelMark> {
        let steps = [2.13, -1.5, 0.0, -0.4, -3.8, 1.02, -12.0, 7.0];
        let axes = [
            Axis::Sweetness,
            Axis::TeaStrength,
            Axis::Flavour("roasted barley".to_owned()),
            Axis::Creaminess,
            Axis::Acidity,
            Axis::Body,
            Axis::Temperature,
            Axis::Volume,
        ];
        let marks = axes.into_iter().zip(steps).map(|(axis, steps)| LevelMark {
            axis,
            steps: Some(steps),
            u_steps: 0.2,
            standing: MarkStanding::Off,
        });
        marks.collect()
    }

    #[test]
    fn words_stand_under_every_level_and_no_two_labels_of_a_row_touch() {
        let ctx = egui::Context::default();
        crate::ui::theme::install(&ctx);
        let marks = marks();
        ctx.run_ui(egui::RawInput::default(), |ui| {
            let palette = crate::ui::theme::palette(ui.visuals());
            for code in ["en", "de"] {
                let speaker =
                    Speaker::without_book().in_language(Language::from_code(code).unwrap());
                for width in (224..=840).step_by(7) {
                    let column = width as f32 / (marks.len() as f32 + 1.0);
                    for words in [LevelWords::Below, LevelWords::Beside] {
                        let labels = arrange_labels(ui, &marks, column, words, palette, speaker);
                        let lines = if words == LevelWords::Below { 2 } else { 1 };
                        assert!(labels.galleys.iter().all(|galleys| galleys.len() == lines));
                        let room = column * labels.rows as f32;
                        for galley in labels.galleys.iter().flatten() {
                            let wide = galley.size().x;
                            assert!(
                                wide <= room,
                                "{code} {width}: {} is {wide} of {room}",
                                galley.text()
                            );
                        }
                    }
                }
            }
        })
        .drop_without_applying_deltas();
    }
}
