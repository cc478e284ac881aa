//! A suggestion step by step, for teaching: the plain swap, then one compensation after the other, and every mark that moves.

use egui::{EventFilter, Key, Label, Response, RichText, Ui};

use super::answer::line_words;
use super::figures::figures_ui;
use super::model;
use super::state::SwapState;
use crate::say::say;
use crate::swap::{Answer, WalkStep};
use crate::ui::Screen;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::level::moved_words;
use crate::ui::widgets::{LevelWords, level_moved_ui, level_ui};

/// From this width on the steps stand beside the level, in points.
const SIDE_BY_SIDE: f32 = 150.0 * grid::STEP;
/// Width of the list of steps, in points.
const LIST: f32 = 68.0 * grid::STEP;
/// The widest level, in points.
const LEVEL: f32 = 140.0 * grid::STEP;

/// The steps, and the drink after the one that is shown.
pub(super) fn steps_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    state: &mut SwapState,
) {
    let Some(last) = steps.len().checked_sub(1) else {
        return;
    };
    state.step = state.step.min(last);
    if ui.available_width() >= SIDE_BY_SIDE {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            ui.vertical(|ui| {
                ui.set_width(LIST);
                list_ui(ui, screen, answer, steps, state);
            });
            ui.vertical(|ui| {
                ui.set_width(ui.available_width().min(LEVEL));
                drink_ui(ui, screen, answer, steps, state);
            });
        });
    } else {
        list_ui(ui, screen, answer, steps, state);
        ui.add_space(grid::NEAR);
        drink_ui(ui, screen, answer, steps, state);
    }
}

fn list_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    state: &mut SwapState,
) {
    let speaker = screen.speaker;
    let last = steps.len() - 1;
    let mut wanted = state.step;
    let mut has_keyboard = ui.memory(|memory| memory.focused().is_none());
    let mut take_keys = |response: &Response| {
        if response.has_focus() {
            has_keyboard = true;
            let filter = EventFilter {
                horizontal_arrows: true,
                ..EventFilter::default()
            };
            response
                .ctx
                .memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
        }
    };
    ui.horizontal(|ui| {
        let back = egui::Button::new(speaker.word("swap-screen-step-back"));
        let back = ui.add_enabled(state.step > 0, back);
        take_keys(&back);
        if back.clicked() {
            wanted = state.step.saturating_sub(1);
        }
        let on = egui::Button::new(speaker.word("swap-screen-step-next"));
        let on = ui.add_enabled(state.step < last, on);
        take_keys(&on);
        if on.clicked() {
            wanted = state.step + 1;
        }
        let palette = theme::palette(ui.visuals());
        let words = RichText::new(speaker.word("swap-screen-step-keys"));
        let words = words.font(TypeStyle::Small.font_id());
        ui.label(words.color(palette.text_quiet));
    });
    ui.add_space(grid::TIGHT);
    for at in 0..=last {
        let does = model::step_words(screen, answer, steps, at);
        let number = (at + 1).to_string();
        let words = if at == last && at > 1 {
            say!(speaker, "swap-screen-step-row-result", number: number, does: does)
        } else {
            say!(speaker, "swap-screen-step-row", number: number, does: does)
        };
        let row = egui::Button::selectable(at == state.step, words).wrap();
        let row = ui.add(row);
        take_keys(&row);
        if row.clicked() {
            wanted = at;
        }
    }
    copy_ui(ui, speaker.word("swap-screen-steps-table"), || {
        model::steps_as_table(screen, answer, steps)
    });
    if has_keyboard {
        let pressed = |key| ui.input(|input| input.key_pressed(key));
        if pressed(Key::ArrowRight) {
            wanted = (state.step + 1).min(last);
        } else if pressed(Key::ArrowLeft) {
            wanted = state.step.saturating_sub(1);
        }
    }
    if wanted != state.step {
        state.step = wanted;
        ui.request_repaint();
    }
}

fn drink_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    state: &SwapState,
) {
    let palette = theme::palette(ui.visuals());
    let step = &steps[state.step];
    let speaker = screen.speaker;
    let line = line_words(speaker, answer);
    let before = state.step.checked_sub(1).map(|before| &steps[before]);
    let title = model::step_words(screen, answer, steps, state.step);
    let title = RichText::new(title).font(TypeStyle::Heading.font_id());
    ui.add(Label::new(title.color(palette.text_strong)).wrap());
    match before {
        Some(before) => level_moved_ui(
            ui,
            &step.difference,
            &before.difference,
            line,
            LevelWords::Below,
            screen.speaker,
        ),
        None => level_ui(ui, &step.difference, line, screen.speaker),
    };
    ui.add_space(grid::NEAR);
    if let Some(before) = before {
        let moved = moved_words(&before.difference, &step.difference, screen.speaker);
        if moved.is_empty() {
            let words = speaker.word("swap-screen-no-mark-moves");
            ui.label(RichText::new(words).color(palette.text_quiet));
        }
        for words in moved {
            ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
        }
        ui.add_space(grid::NEAR);
    }
    let standard = (state.step > 0).then_some(&*answer.standard);
    let figures = model::compared(screen, &step.balance, standard);
    figures_ui(ui, speaker, &figures);
}
