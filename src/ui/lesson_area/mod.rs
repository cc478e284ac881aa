//! A lesson for a group: what does a swap do to the drink, and what brings it back? Expect first, then reveal, step by step.

mod model;

use egui::{Button, EventFilter, Grid, Key, Label, Response, RichText, Ui};

use super::Screen;
use super::area::{Area, Navigation};
use super::area_of_work::{AreaOfWork, Desk};
use super::spreadsheet::{Cell, Table, copy_ui};
use super::swap_area::{self, SwapState};
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::{level_moved_ui, level_ui};
use super::words::heading_ui;
use crate::quantity::{name_as_shown, show_number};
use crate::say::{Speaker, say};
use crate::swap::{Answer, AxisMove, NOT_TASTED, WalkStep, axis_moves};
use crate::workbench::{Action, Look, Shown, SwapFound, Workbench};

use model::{Guess, Guesses};

/// How much larger everything is for a screen on the wall.
const LARGE: f32 = 1.5;
/// The widest level, in points.
const LEVEL: f32 = 150.0 * grid::STEP;
/// Room for what is expected beside the level, in points.
const EXPECTED: f32 = 118.0 * grid::STEP;
/// From this width on the level stands beside what is expected, in points.
const SIDE_BY_SIDE: f32 = 215.0 * grid::STEP;
/// Width of a button for what is expected, in points.
const GUESS: f32 = 27.0 * grid::STEP;

/// What this area remembers between frames.
#[derive(Default)]
pub(super) struct LessonState {
    /// The step that is in hand; the standard is 0, and the first to be expected 1.
    step: usize,
    /// Whether the step in hand has been revealed.
    is_revealed: bool,
    guesses: Guesses,
    /// The zoom and the list of drinks as they were before the large type, while that is on.
    before_large: Option<(f32, Option<bool>)>,
    /// The swap that is taught, as it is chosen here.
    swap: SwapState,
    look: Look<Option<SwapFound>>,
}

impl AreaOfWork for LessonState {
    fn look(&mut self, workbench: &mut Workbench, _: Option<&Shown>, view: &mut ViewState) {
        self.swap.take_asked(&view.swap);
        self.look = view
            .swap
            .complete()
            .map(|question| workbench.swap(question, &view.swap.demands))
            .unwrap_or_default();
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        if let Some(screen) = desk.drink {
            lesson_area_ui(ui, screen, self, view, actions);
            self.swap.hand_asked(&mut view.swap);
        }
    }

    /// Gives the window its own size back.
    fn leave(&mut self, ctx: &egui::Context, view: &mut ViewState) {
        if let Some((zoom, list_open)) = self.before_large.take() {
            ctx.set_zoom_factor(zoom);
            view.list_open = list_open;
        }
    }

    /// How far the lesson is stays: its swap may be asked again.
    fn forget_book(&mut self) {
        self.swap = SwapState::default();
        self.look = Look::default();
    }
}

impl LessonState {
    fn begin_again(&mut self) {
        self.step = 1;
        self.is_revealed = false;
        self.guesses = Guesses::default();
    }
}

/// The lesson on the swap that was asked last.
fn lesson_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut LessonState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let before = state.swap.asked.question.clone();
    swap_area::follow(&mut state.swap, screen);
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let Some(question) = state.swap.asked.complete().cloned() else {
        heading_ui(ui, speaker.word("lesson-title"));
        let words = speaker.word("lesson-introduction");
        ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
        ui.add_space(grid::EASY);
        swap_area::choose_ui(ui, screen, &mut state.swap);
        ask_again(ui, before != state.swap.asked.question, state);
        return;
    };
    head_ui(ui, screen, &question, state, view);
    ask_again(ui, before != state.swap.asked.question, state);
    let look = state.look.clone();
    swap_area::progress_ui(ui, look.state, swap_area::Parts::Amounts, actions);
    let found = look.found.as_ref().and_then(|found| (**found).as_ref());
    let Some(found) = found.filter(|found| found.answer.question == question) else {
        return;
    };
    let Some(steps) = found.walks.first().filter(|steps| steps.len() > 1) else {
        let words = speaker.word("lesson-nothing");
        ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
        if ui.button(speaker.word("lesson-see-swap")).clicked() {
            view.area = Area::Swap;
        }
        return;
    };
    step_ui(ui, screen, &found.answer, steps, state);
}

fn ask_again(ui: &Ui, is_other: bool, state: &mut LessonState) {
    if is_other {
        state.begin_again();
        ui.request_repaint();
    }
}

/// The swap in words, and the ways to begin again and to show it to a room.
fn head_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &crate::swap::Question,
    state: &mut LessonState,
    view: &mut ViewState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let title = say!(
        speaker,
        "lesson-of-swap",
        recipe: name_as_shown(&screen.recipe.name),
        with: speaker.ingredient(&question.with),
        replace: speaker.ingredient(&question.replace)
    );
    let title = RichText::new(title).font(TypeStyle::Title.font_id());
    ui.add(Label::new(title.color(palette.text_strong)).wrap());
    ui.horizontal_wrapped(|ui| {
        if ui.button(speaker.word("lesson-begin-again")).clicked() {
            state.begin_again();
        }
        if ui.button(speaker.word("lesson-another-swap")).clicked() {
            state.swap = SwapState::default();
            state.begin_again();
            ui.request_repaint();
        }
        if ui.button(speaker.word("lesson-exercise")).clicked() {
            let (replace, with) = (question.replace.clone(), question.with.clone());
            view.go(Area::Cards, Navigation::Exercise(replace, with));
        }
        let mut is_large = state.before_large.is_some();
        if ui
            .checkbox(&mut is_large, speaker.word("lesson-large"))
            .changed()
        {
            if is_large {
                let zoom = ui.ctx().zoom_factor();
                state.before_large = Some((zoom, view.list_open));
                ui.ctx().set_zoom_factor(zoom * LARGE);
                view.list_open = Some(false);
            } else {
                state.leave(&ui.ctx().clone(), view);
            }
        }
    });
    ui.add_space(grid::EASY);
}

fn step_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    state: &mut LessonState,
) {
    let palette = theme::palette(ui.visuals());
    let last = steps.len() - 1;
    state.step = state.step.clamp(1, last);
    let (before, after) = (&steps[state.step - 1], &steps[state.step]);
    let outcomes = axis_moves(&before.difference, &after.difference);
    let does = swap_area::step_words(screen, answer, steps, state.step);
    let speaker = screen.speaker;
    let (number, count) = (state.step.to_string(), last.to_string());
    let title = say!(speaker, "lesson-step", number: number, count: count, does: does);
    let title = RichText::new(title);
    ui.add(
        Label::new(
            title
                .font(TypeStyle::Heading.font_id())
                .color(palette.text_strong),
        )
        .wrap(),
    );
    buttons_ui(ui, speaker, last, state);
    ui.add_space(grid::NEAR);
    let line = swap_area::line_words(screen.speaker, answer);
    let show_level = |ui: &mut Ui, is_revealed: bool| {
        if is_revealed {
            level_moved_ui(
                ui,
                &after.difference,
                &before.difference,
                line,
                screen.speaker,
            );
        } else {
            level_ui(ui, &before.difference, line, screen.speaker);
        }
    };
    let table = |state: &LessonState| as_table(screen, answer, steps, state);
    if ui.available_width() >= SIDE_BY_SIDE {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::FAR;
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                ui.set_width(EXPECTED);
                expected_ui(ui, speaker, &outcomes, table, state);
            });
            ui.vertical(|ui| {
                ui.set_width((ui.available_width() - grid::EASY).min(LEVEL));
                show_level(ui, state.is_revealed);
            });
        });
    } else {
        expected_ui(ui, speaker, &outcomes, table, state);
        ui.add_space(grid::EASY);
        show_level(ui, state.is_revealed);
    }
}

/// What the group expects of each axis and, once revealed, what came.
fn expected_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    outcomes: &[AxisMove],
    table: impl FnOnce(&LessonState) -> Table,
    state: &mut LessonState,
) {
    let palette = theme::palette(ui.visuals());
    let asked = if state.is_revealed {
        "lesson-result"
    } else if state.step == 1 {
        "lesson-ask-first"
    } else {
        "lesson-ask-next"
    };
    let asked = RichText::new(speaker.word(asked)).font(TypeStyle::Strong.font_id());
    ui.label(asked.color(palette.text_strong));
    ui.add_space(grid::TIGHT);
    guesses_ui(ui, speaker, outcomes, state);
    if state.is_revealed {
        copy_ui(ui, speaker.word("lesson-table"), || table(state));
    }
    ui.add_space(grid::NEAR);
    let (right, of) = state.guesses.score(state.step, outcomes);
    if state.is_revealed && of > 0 {
        let words = say!(speaker, "lesson-score", right: right.to_string(), count: of);
        let words = RichText::new(words);
        ui.label(
            words
                .font(TypeStyle::Strong.font_id())
                .color(palette.text_strong),
        );
    }
    let words = say!(speaker, "lesson-same", least: speaker.trimmed(NOT_TASTED, "", 1));
    let words = RichText::new(words).font(TypeStyle::Small.font_id());
    ui.add(Label::new(words.color(palette.text_quiet)).wrap());
}

/// A row an axis: what the group expects and, once revealed, what came.
fn guesses_ui(ui: &mut Ui, speaker: Speaker<'_>, outcomes: &[AxisMove], state: &mut LessonState) {
    let palette = theme::palette(ui.visuals());
    let step = state.step;
    let widths = Guess::ALL.map(|guess| column_width(ui, speaker, guess, outcomes));
    Grid::new("guesses")
        .num_columns(4)
        .spacing(egui::vec2(grid::NEAR, grid::TIGHT))
        .show(ui, |ui| {
            for outcome in outcomes {
                let axis = speaker.axis(&outcome.axis);
                ui.label(RichText::new(&axis).color(palette.text_normal));
                let taken = state.guesses.get(step, &outcome.axis);
                if state.is_revealed {
                    let words = outcome_words(speaker, outcome, taken);
                    ui.label(RichText::new(words).color(palette.text_strong));
                    ui.end_row();
                    continue;
                }
                for (guess, width) in Guess::ALL.into_iter().zip(widths) {
                    let words = guess.words(speaker, &outcome.axis);
                    let name = say!(speaker, "lesson-prediction", axis: &axis, guess: &words);
                    let button = Button::selectable(taken == Some(guess), words)
                        .frame_when_inactive(true)
                        .min_size(egui::vec2(width, grid::TARGET));
                    if ui.add(button).accessible_name(name).clicked() {
                        state.guesses.toggle(step, &outcome.axis, guess);
                    }
                }
                ui.end_row();
            }
        });
}

/// The guesses on every step that has been revealed, the one in hand the last, with what came.
fn as_table(
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    state: &LessonState,
) -> Table {
    let speaker = screen.speaker;
    let mut table = Table::new([
        speaker.word("lesson-table-step"),
        speaker.word("lesson-table-change"),
        speaker.word("lesson-table-axis"),
        speaker.word("lesson-table-prediction"),
        speaker.word("lesson-table-result"),
        speaker.word("lesson-table-moved"),
        speaker.word("lesson-table-correct"),
    ]);
    for at in 1..=state.step {
        let does = swap_area::step_words(screen, answer, steps, at);
        for outcome in axis_moves(&steps[at - 1].difference, &steps[at].difference) {
            let taken = state.guesses.get(at, &outcome.axis);
            let expected = taken.map(|guess| guess.words(speaker, &outcome.axis));
            let moved = outcome.moved.map(|moved| show_number(moved, 1));
            let judged = taken.zip(model::right(&outcome));
            let judged = judged.map(|(guess, right)| {
                speaker.word(if guess == right {
                    "verdict-yes"
                } else {
                    "verdict-no"
                })
            });
            table.row([
                Cell::figure(&at.to_string()),
                Cell::words(&does),
                Cell::words(&speaker.axis(&outcome.axis)),
                Cell::words(&expected.unwrap_or_default()),
                Cell::words(&speaker.axis_move(&outcome)),
                Cell::figure(&moved.unwrap_or_default()),
                Cell::words(judged.unwrap_or_default()),
            ]);
        }
    }
    table
}

/// The buttons of a column are as wide as the widest words in it need: "less chestnut" sticks out of no row.
fn column_width(ui: &Ui, speaker: Speaker<'_>, guess: Guess, outcomes: &[AxisMove]) -> f32 {
    let around = 2.0 * ui.spacing().button_padding.x;
    let width_of = |outcome: &AxisMove| {
        let words = guess.words(speaker, &outcome.axis);
        let font = TypeStyle::Body.font_id();
        let galley = ui
            .painter()
            .layout_no_wrap(words, font, egui::Color32::PLACEHOLDER);
        galley.size().x + around
    };
    outcomes.iter().map(width_of).fold(GUESS, f32::max)
}

/// "sweeter by 1.9 steps: correct".
fn outcome_words(speaker: Speaker<'_>, outcome: &AxisMove, taken: Option<Guess>) -> String {
    let moved = speaker.axis_move(outcome);
    match (taken, model::right(outcome)) {
        (None, _) | (_, None) => moved,
        (Some(guess), Some(right)) if guess == right => {
            say!(speaker, "lesson-correct", moved: moved)
        }
        (Some(guess), _) => {
            let guess = guess.words(speaker, &outcome.axis);
            say!(speaker, "lesson-not-correct", moved: moved, guess: guess)
        }
    }
}

fn buttons_ui(ui: &mut Ui, speaker: Speaker<'_>, last: usize, state: &mut LessonState) {
    let mut has_keyboard = ui.memory(|memory| memory.focused().is_none());
    let (mut on, mut back) = (false, false);
    // The arrows go through the lesson also while the keyboard is on one of its two buttons.
    let mut pressed = |response: &Response| {
        if response.has_focus() {
            has_keyboard = true;
            let filter = EventFilter {
                horizontal_arrows: true,
                ..EventFilter::default()
            };
            let id = response.id;
            response
                .ctx
                .memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
        }
        response.clicked()
    };
    ui.horizontal_wrapped(|ui| {
        let can_go_back = state.step > 1 || state.is_revealed;
        back = pressed(&ui.add_enabled(can_go_back, Button::new(speaker.word("lesson-back"))));
        let words = match (state.is_revealed, state.step == last) {
            (false, _) => "lesson-reveal",
            (true, false) => "lesson-next",
            (true, true) => "lesson-last",
        };
        let can_go_on = !(state.is_revealed && state.step == last);
        let button =
            Button::new(RichText::new(speaker.word(words)).font(TypeStyle::Strong.font_id()));
        on = pressed(&ui.add_enabled(can_go_on, button));
        let words =
            RichText::new(speaker.word("swap-screen-step-keys")).font(TypeStyle::Small.font_id());
        ui.label(words.color(theme::palette(ui.visuals()).text_quiet));
    });
    if has_keyboard {
        on |= ui.input(|input| input.key_pressed(Key::ArrowRight));
        back |= ui.input(|input| input.key_pressed(Key::ArrowLeft));
    }
    if on {
        if !state.is_revealed {
            state.is_revealed = true;
        } else if state.step < last {
            state.step += 1;
            state.is_revealed = false;
        }
    } else if back {
        if state.is_revealed {
            state.is_revealed = false;
        } else if state.step > 1 {
            state.step -= 1;
            state.is_revealed = true;
        }
    }
    if on || back {
        ui.request_repaint();
    }
}
