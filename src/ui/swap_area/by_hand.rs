//! Amounts set by hand around a suggestion: a slider for each line that may move, and the level that answers at once.

use egui::{Label, RichText, Slider, Stroke, Ui};

use super::answer::{line_words, scatter_words};
use super::figures::figures_ui;
use super::state::SwapState;
use super::{accept, model};
use crate::say::{Speaker, say};
use crate::swap::{Adjustable, Answer, Nearby, Suggestion};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::{self, grid};
use crate::ui::widgets::{LevelWords, level_moved_ui};
use crate::ui::words::heading_ui;
use crate::workbench::Action;

/// How far a slider reaches from the suggestion, in steps of the line.
const REACH: i32 = 8;
/// From this width on the sliders stand beside the level, in points.
const SIDE_BY_SIDE: f32 = 165.0 * grid::STEP;
/// Width of the sliders with their amounts, in points.
const SLIDERS: f32 = 84.0 * grid::STEP;
/// Length of a slider, in points.
const SLIDER: f32 = 50.0 * grid::STEP;
/// The widest level, in points.
const LEVEL: f32 = 140.0 * grid::STEP;

/// The sliders and the drink that they give.
#[expect(
    clippy::too_many_arguments,
    reason = "what is shown, and where the answer goes"
)]
pub(super) fn by_hand_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    suggestion: &Suggestion,
    nearby: Option<&Nearby>,
    is_current: bool,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let fits = |point: &Vec<i32>| point.len() == answer.adjustable.len();
    if state.point.as_ref().is_none_or(|point| !fits(point)) {
        state.point = Some(suggestion.point.clone());
    }
    if ui.available_width() >= SIDE_BY_SIDE {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            ui.vertical(|ui| {
                ui.set_width(SLIDERS);
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                sliders_ui(ui, screen, answer, suggestion, state);
            });
            ui.vertical(|ui| {
                ui.set_width(ui.available_width().min(LEVEL));
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                let drink = (answer, suggestion, nearby);
                drink_ui(ui, screen, drink, is_current, state, actions);
            });
        });
    } else {
        sliders_ui(ui, screen, answer, suggestion, state);
        ui.add_space(grid::NEAR);
        let drink = (answer, suggestion, nearby);
        drink_ui(ui, screen, drink, is_current, state, actions);
    }
}

fn sliders_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    suggestion: &Suggestion,
    state: &mut SwapState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let words = speaker.word("swap-screen-sliders");
    ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    let Some(point) = &mut state.point else {
        return;
    };
    for ((adjustable, steps), suggested) in answer
        .adjustable
        .iter()
        .zip(point.iter_mut())
        .zip(&suggestion.point)
    {
        slider_ui(ui, speaker, adjustable, steps, *suggested);
    }
    ui.add_space(grid::NEAR);
    let is_moved = *point != suggestion.point;
    let back = egui::Button::new(speaker.word("swap-screen-sliders-back"));
    if ui.add_enabled(is_moved, back).clicked() {
        point.clone_from(&suggestion.point);
    }
}

fn slider_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    adjustable: &Adjustable,
    steps: &mut i32,
    suggested: i32,
) {
    let palette = theme::palette(ui.visuals());
    let name = speaker.ingredient(&adjustable.line.ingredient);
    let (low, high) = ((suggested - REACH).max(0), suggested + REACH);
    ui.add_space(grid::TIGHT);
    ui.label(RichText::new(&name).color(palette.text_strong));
    ui.horizontal(|ui| {
        ui.spacing_mut().slider_width = SLIDER;
        let slider = Slider::new(steps, low..=high).show_value(false);
        let label = say!(speaker, "swap-screen-slider", ingredient: &name);
        let response = ui.add(slider).accessible_name(label);
        #[expect(clippy::cast_precision_loss, reason = "a handful of steps")]
        let part = (suggested - low) as f32 / (high - low) as f32;
        let rail = theme::handle_range(response.rect);
        let x = egui::lerp(rail.min..=rail.max, part);
        let end = response.rect.bottom();
        let stroke = Stroke::new(grid::FOCUS_RING, palette.accent);
        ui.painter().vline(x, end - 2.0..=end + 4.0, stroke);
        let amount = amount_words(speaker, adjustable, *steps);
        ui.label(RichText::new(amount).color(palette.text_strong));
    });
}

fn amount_words(speaker: Speaker<'_>, adjustable: &Adjustable, steps: i32) -> String {
    if steps == 0 {
        return speaker.word("line-none").to_owned();
    }
    speaker.amount(&adjustable.amount(steps))
}

fn drink_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    (answer, suggestion, nearby): (&Answer, &Suggestion, Option<&Nearby>),
    is_current: bool,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let Some(nearby) = nearby else {
        return;
    };
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("swap-screen-with-these"));
    let line = line_words(speaker, answer);
    level_moved_ui(
        ui,
        &nearby.difference,
        &suggestion.difference,
        line,
        LevelWords::Below,
        screen.speaker,
    );
    let scatter = scatter_words(speaker, nearby.within_scatter, &nearby.difference);
    ui.add(Label::new(RichText::new(scatter).color(palette.text_normal)).wrap())
        .explained(Term::Scatter);
    if let Some(obstacle) = &nearby.obstacle {
        let reason = speaker.forbidden(obstacle);
        let words = say!(speaker, "swap-screen-conditions-not-met", reason: reason);
        ui.add(Label::new(RichText::new(words).color(palette.caution)).wrap());
    }
    ui.add_space(grid::NEAR);
    let standard = Some(&*answer.standard);
    let figures = model::compared(screen, &nearby.balance, standard);
    figures_ui(ui, speaker, &figures);
    let table = speaker.word("swap-screen-with-these-table");
    copy_ui(ui, table, || {
        let amounts = answer.adjustable.iter().zip(&nearby.point);
        let amounts = amounts.map(|(adjustable, steps)| {
            let name = speaker.ingredient(&adjustable.line.ingredient);
            (name, amount_words(speaker, adjustable, *steps))
        });
        model::by_hand_as_table(speaker, amounts, &figures)
    });
    ui.add_space(grid::NEAR);
    let is_here = state.point.as_ref() == Some(&nearby.point);
    ui.add_enabled_ui(is_current && is_here, |ui| {
        let with = speaker.ingredient(&answer.question.with);
        let wanted = say!(speaker, "swap-screen-name-by-hand", ingredient: with);
        accept::main_ui(ui, screen, answer, &nearby.changes, &wanted, state, actions);
    });
}
