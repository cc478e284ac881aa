//! What a swap comes to in one drink of the review: the level of its first suggestion, or why there is none.

use egui::{Label, RichText, Ui};

use super::answer;
use crate::say::{Speaker, say};
use crate::swap::{ReviewItem, Suggestion};
use crate::ui::theme;
use crate::ui::widgets::level::overall_words;
use crate::ui::widgets::level_strip_ui;

/// How a suggestion tastes beside the standard: its level, and what that comes to in words.
pub(super) fn outcome_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    item: &ReviewItem,
    suggestion: &Suggestion,
    words: impl FnOnce(String) -> String,
) {
    let palette = theme::palette(ui.visuals());
    let line = answer::line_words(speaker, &item.answer);
    level_strip_ui(ui, &suggestion.difference, line, speaker);
    let colour = if suggestion.difference.within_one_step() == Some(false) {
        palette.off_level
    } else {
        palette.text_normal
    };
    let words = words(overall_words(&suggestion.difference, speaker));
    ui.add(Label::new(RichText::new(words).color(colour)).wrap());
}

/// Why nothing is suggested.
pub(super) fn reasons_ui(ui: &mut Ui, speaker: Speaker<'_>, item: &ReviewItem) {
    let palette = theme::palette(ui.visuals());
    let reasons = speaker.swap_reasons(&item.answer.reasons);
    let words = say!(speaker, "swap-screen-no-suggestion", reason: reasons);
    ui.add(Label::new(RichText::new(words).color(palette.caution)).wrap());
}
