//! The swap: what goes, what comes, and what brings the taste back; side by side, step by step, by hand, and everywhere.

mod accept;
mod answer;
mod ask;
mod by_hand;
mod coming;
mod conditions;
mod figures;
mod limits;
mod model;
mod progress;
mod review;
mod review_beside;
mod review_model;
mod review_outcome;
mod state;
mod steps;

use std::sync::Arc;

use egui::{Label, RichText, ScrollArea, Ui};

use crate::book::{Book, IngredientId};
use crate::say::Speaker;
use crate::swap::{Answer, Nearby, Question, ReviewItem};
use crate::ui::Screen;
use crate::ui::area::Area;
use crate::ui::area_of_work::{AreaOfWork, Desk, Place};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::{Drafts, ViewState};
use crate::ui::words::heading_ui;
use crate::workbench::{Action, Look, LookState, Review, Shown, SwapFound, Workbench};

pub(super) use answer::line_words;
pub(super) use ask::choose_ui;
pub(super) use model::{follow, step_words, version_name};
pub(super) use progress::{Parts, progress_ui};
pub use state::SwapState;

use state::{Choosing, Way};

/// The area in the window.
#[derive(Default)]
pub(super) struct SwapArea {
    state: SwapState,
    looks: SwapLooks,
}

impl AreaOfWork for SwapArea {
    fn place(&self) -> Place {
        Place::SheetOfItsOwn
    }

    fn look(&mut self, workbench: &mut Workbench, _: Option<&Shown>, view: &mut ViewState) {
        self.state.take_asked(&view.swap);
        self.looks = SwapLooks::take(workbench, &self.state);
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        let Some(screen) = desk.drink else {
            return;
        };
        let drafts = &mut view.drafts;
        swap_area_ui(ui, screen, &self.looks, &mut self.state, drafts, actions);
        self.state.hand_asked(&mut view.swap);
        if let Some(version) = self.state.show_version.take() {
            view.show(Shown {
                recipe: screen.recipe.id.clone(),
                version: Some(version),
            });
            view.area = Area::Recipe;
        }
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// What was looked for in the background for this area.
#[derive(Default)]
pub struct SwapLooks {
    swap: Look<Option<SwapFound>>,
    review: Look<Vec<ReviewItem>>,
    beside: Look<Vec<ReviewItem>>,
    nearby: Option<Arc<Nearby>>,
}

impl SwapLooks {
    /// What there is once a swap has been answered.
    pub fn answered(book: &Book, answer: Answer) -> Self {
        let found = Some(SwapFound::new(book, answer));
        Self {
            swap: Look::done(found),
            ..Self::default()
        }
    }

    /// Asks the workbench for what the area shows.
    pub(super) fn take(workbench: &mut Workbench, state: &SwapState) -> Self {
        let Some(question) = state.asked.complete() else {
            return Self::default();
        };
        let mut looks = Self::default();
        if state.way == Way::Everywhere {
            let demands = review_model::demands_for_all(&state.asked.demands);
            looks.review = if state.asked.brings_back {
                workbench.all_brought_back(&demands)
            } else {
                let review = |with: &IngredientId| Review {
                    replace: question.replace.clone(),
                    with: with.clone(),
                    demands: demands.clone(),
                };
                if let Some(with) = &state.beside {
                    looks.beside = workbench.review_beside(&review(with));
                }
                workbench.review(&review(&question.with))
            };
            return looks;
        }
        looks.swap = workbench.swap(question, &state.asked.demands);
        if let (Way::ByHand, Some(point), Some(found)) =
            (state.way, &state.point, &looks.swap.found)
        {
            looks.nearby = workbench.nearby(found, point);
        }
        looks
    }
}

/// The swap of the version in hand. `looks` belong to the question of the last frame.
pub fn swap_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    looks: &SwapLooks,
    state: &mut SwapState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    model::follow(state, screen);
    let asked = (
        state.asked.question.clone(),
        state.asked.demands.clone(),
        state.way,
        state.point.clone(),
        state.beside.clone(),
    );
    ScrollArea::vertical()
        .id_salt("swap area")
        .auto_shrink(false)
        .show(ui, |ui| {
            ui.set_width(ui.available_width() - grid::NEAR);
            let complete = state.asked.complete().cloned();
            if let Some(question) = complete.filter(|_| state.choosing == Choosing::Nothing) {
                asked_ui(ui, screen, &question, looks, state, drafts, actions);
            } else {
                if state.choosing == Choosing::Nothing {
                    introduction_ui(ui, screen.speaker);
                }
                ask::choose_ui(ui, screen, state);
            }
            ui.add_space(grid::APART);
        });
    let asks = (
        state.asked.question.clone(),
        state.asked.demands.clone(),
        state.way,
        state.point.clone(),
        state.beside.clone(),
    );
    if asks != asked {
        // The answer to what was just asked is there in the next frame.
        ui.request_repaint();
    }
}

/// The swap once both ingredients are chosen.
fn asked_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    looks: &SwapLooks,
    state: &mut SwapState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    ask::chosen_ui(ui, screen, question, state);
    // Above everything that an answer brings, so that it stays where it is whatever the answer.
    way_ui(ui, screen.speaker, state);
    ui.add_space(grid::TIGHT);
    let found = looks
        .swap
        .found
        .as_ref()
        .and_then(|found| (**found).as_ref());
    let found = found.filter(|found| found.answer.question == *question);
    let plain = found.map(|found| &found.answer);
    conditions::conditions_ui(ui, screen, plain, state, drafts, actions);
    ui.add_space(grid::NEAR);
    if state.way == Way::Everywhere {
        progress_ui(ui, looks.review.state, Parts::Recipes, actions);
        progress_ui(ui, looks.beside.state, Parts::Recipes, actions);
        let answers = (&looks.review, &looks.beside);
        review::review_ui(ui, screen, question, answers, state, actions);
        return;
    }
    progress_ui(ui, looks.swap.state, Parts::Amounts, actions);
    let Some(found) = found else {
        return;
    };
    // What was found before stands there, quieter, while what was just asked is looked for.
    let is_current = looks.swap.state == LookState::Done;
    ui.scope(|ui| {
        if !is_current {
            ui.multiply_opacity(0.6);
        }
        let chosen = answer::choice_and_sentences_ui(ui, screen, &found.answer, state);
        ui.add_space(grid::NEAR);
        let Some(suggestion) = chosen else {
            if state.way != Way::SideBySide {
                // There are no steps to nothing, and no amounts around it.
                state.way = Way::SideBySide;
            }
            answer::side_by_side_ui(ui, screen, found, None, is_current, state, actions);
            return;
        };
        let answer = &found.answer;
        match state.way {
            Way::SideBySide | Way::Everywhere => answer::side_by_side_ui(
                ui,
                screen,
                found,
                Some(suggestion),
                is_current,
                state,
                actions,
            ),
            Way::Steps => {
                let steps = found
                    .walks
                    .get(state.suggestion)
                    .map_or(&[][..], Vec::as_slice);
                steps::steps_ui(ui, screen, answer, steps, state);
            }
            Way::ByHand => {
                let nearby = looks.nearby.as_deref();
                by_hand::by_hand_ui(
                    ui, screen, answer, suggestion, nearby, is_current, state, actions,
                );
            }
        }
    });
}

/// The ways to look at the answer.
fn way_ui(ui: &mut Ui, speaker: Speaker<'_>, state: &mut SwapState) {
    let everywhere = if state.asked.brings_back {
        "swap-screen-all-drifted"
    } else {
        "swap-screen-everywhere"
    };
    ui.horizontal_wrapped(|ui| {
        for (way, words) in [
            (Way::SideBySide, "swap-screen-side-by-side"),
            (Way::Steps, "swap-screen-step-by-step"),
            (Way::ByHand, "swap-screen-by-hand"),
            (Way::Everywhere, everywhere),
        ] {
            let words = speaker.word(words);
            if ui.selectable_label(state.way == way, words).clicked() {
                state.way = way;
                state.begin_anew();
            }
        }
    });
}

/// The empty state says what to do.
fn introduction_ui(ui: &mut Ui, speaker: Speaker<'_>) {
    let palette = theme::palette(ui.visuals());
    heading_ui(ui, speaker.word("swap-screen-title"));
    let words = speaker.word("swap-screen-introduction");
    ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    ui.add_space(grid::EASY);
}
