//! A lesson for a group: what does a swap do to the drink, and what brings it back? Expect first, then reveal, step by step.
//!
//! A drink is always held to its standard, by the band of the level: what the band holds is "the same".

mod model;
mod predictions;
mod state;
mod wall;
mod why;

use egui::{Button, EventFilter, Frame, Key, Label, Panel, Response, RichText, ScrollArea, Ui};

use super::Screen;
use super::area::{Area, Navigation};
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::swap_area::{self, SwapState};
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::cautions::Cautions;
use super::widgets::name::name_ui;
use super::widgets::{LevelWords, level_moved_ui, level_with_ui};
use super::words::{heading_ui, paragraph_ui};
use crate::balance::Balance;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::swap::{Question, WalkStep};
use crate::workbench::{Action, Look, Shown, SwapFound, Workbench};

pub(super) use state::LessonState;

use model::NextDrink;
use state::Lesson;
use wall::View;

/// The widest level, in points.
const LEVEL: f32 = 150.0 * grid::STEP;

impl AreaOfWork for LessonState {
    fn place(&self) -> Place {
        if self.is_on_wall {
            Place::Alone
        } else {
            Place::Sheet
        }
    }

    fn look(&mut self, workbench: &mut Workbench, _: Option<&Shown>, view: &mut ViewState) {
        self.swap.take_asked(&view.swap);
        self.look = view
            .swap
            .complete()
            .map(|question| workbench.swap(question, &view.swap.demands))
            .unwrap_or_default();
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        let Some(screen) = desk.drink else {
            return;
        };
        if self.is_on_wall {
            wall::enlarge(ui.ctx(), view);
            View::Wall.space(ui);
            cautions_ui(ui, screen, self);
            ScrollArea::vertical().auto_shrink(false).show(ui, |ui| {
                lesson_area_ui(ui, screen, self, view, actions);
            });
        } else {
            wall::shrink(ui.ctx(), view);
            lesson_area_ui(ui, screen, self, view, actions);
        }
        self.swap.hand_asked(&mut view.swap);
    }

    /// Gives the window its own size back.
    fn leave(&mut self, ctx: &egui::Context, view: &mut ViewState) {
        self.is_on_wall = false;
        wall::shrink(ctx, view);
    }

    fn step_back(&mut self, _: &mut ViewState) -> bool {
        std::mem::take(&mut self.is_on_wall)
    }

    /// How far the lesson is stays: its swap may be asked again.
    fn forget_book(&mut self) {
        self.swap = SwapState::default();
        self.look = Look::default();
    }
}

/// What hurts somebody in the drink as it stands and in the one that the step makes: whoever watches the wall tastes both.
fn cautions_ui(ui: &mut Ui, screen: &Screen<'_>, state: &LessonState) {
    let steps = state.swap.asked.complete();
    let steps = steps.and_then(|question| Some(taught(&state.look, question)?.1));
    let drinks: Vec<&Balance> = match steps {
        Some(steps) => {
            let step = state.step.clamp(1, steps.len() - 1);
            let tasted = &steps[step - 1..=step];
            tasted.iter().map(|step| &*step.balance).collect()
        }
        None => vec![screen.balance],
    };
    let cautions = Cautions::that_hurt(ui, screen.speaker, &drinks);
    if !cautions.is_empty() {
        Panel::bottom("wall-cautions")
            .exact_size(cautions.height())
            .resizable(false)
            .frame(Frame::new())
            .show_separator_line(false)
            .show(ui, |ui| cautions.show(ui, &mut false));
    }
}

/// What was found for a swap, with the steps to its first suggestion; `None` where there is nothing to reveal.
fn taught<'look>(
    look: &'look Look<Option<SwapFound>>,
    question: &Question,
) -> Option<(&'look SwapFound, &'look [WalkStep])> {
    let found = found_for(look, question)?;
    let steps = found.walks.first()?;
    (steps.len() > 1).then_some((found, steps.as_slice()))
}

fn found_for<'look>(
    look: &'look Look<Option<SwapFound>>,
    question: &Question,
) -> Option<&'look SwapFound> {
    let found = look.found.as_ref().and_then(|found| (**found).as_ref());
    found.filter(|found| found.answer.question == *question)
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
        if state.is_on_wall {
            wall_button_ui(ui, speaker, state);
        }
        heading_ui(ui, speaker.word("lesson-title"));
        paragraph_ui(ui, speaker.word("lesson-introduction"), palette.text_quiet);
        ui.add_space(grid::EASY);
        swap_area::choose_ui(ui, screen, &mut state.swap);
        ask_again(ui, before != state.swap.asked.question, state);
        return;
    };
    if !state.is_on_wall {
        head_ui(ui, screen, &question, state, view);
    }
    ask_again(ui, before != state.swap.asked.question, state);
    let look = state.look.clone();
    swap_area::progress_ui(ui, look.state, swap_area::Parts::Amounts, actions);
    let taught = taught(&look, &question);
    if state.is_on_wall && taught.is_none() {
        ui.horizontal(|ui| wall_head_ui(ui, screen, &question, state));
    }
    if found_for(&look, &question).is_none() {
        return;
    }
    let Some((found, steps)) = taught else {
        paragraph_ui(ui, speaker.word("lesson-nothing"), palette.text_normal);
        ui.horizontal(|ui| {
            if ui.button(speaker.word("lesson-see-swap")).clicked() {
                view.area = Area::Swap;
            }
            next_drink_ui(ui, screen, &question, state, view);
        });
        return;
    };
    let lesson = Lesson {
        screen,
        answer: &found.answer,
        steps,
    };
    step_ui(ui, &lesson, &question, state, view);
}

fn ask_again(ui: &Ui, is_other: bool, state: &mut LessonState) {
    if is_other {
        state.begin_again();
        ui.request_repaint();
    }
}

fn title(screen: &Screen<'_>, question: &Question) -> String {
    let speaker = screen.speaker;
    say!(
        speaker,
        "lesson-of-swap",
        recipe: name_as_shown(&screen.recipe.name),
        with: speaker.ingredient(&question.with),
        replace: speaker.ingredient(&question.replace)
    )
}

/// The swap in words, and the ways to begin again and to show it to a room.
fn head_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    state: &mut LessonState,
    view: &mut ViewState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let title = RichText::new(title(screen, question)).font(TypeStyle::Title.font_id());
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
        wall_button_ui(ui, speaker, state);
    });
    ui.add_space(grid::EASY);
}

/// The way back from the wall, and the swap in what is left of the line.
fn wall_head_ui(ui: &mut Ui, screen: &Screen<'_>, question: &Question, state: &mut LessonState) {
    let palette = theme::palette(ui.visuals());
    wall_button_ui(ui, screen.speaker, state);
    let (title, colour) = (title(screen, question), palette.text_quiet);
    name_ui(ui, &title, TypeStyle::Small, colour, f32::INFINITY);
}

fn wall_button_ui(ui: &mut Ui, speaker: Speaker<'_>, state: &mut LessonState) {
    let words = if state.is_on_wall {
        "lesson-leave-wall"
    } else {
        "lesson-wall"
    };
    if ui.button(speaker.word(words)).clicked() {
        state.is_on_wall = !state.is_on_wall;
        ui.request_repaint();
    }
}

fn step_ui(
    ui: &mut Ui,
    lesson: &Lesson<'_>,
    question: &Question,
    state: &mut LessonState,
    view: &mut ViewState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = lesson.speaker();
    let last = lesson.last();
    state.step = state.step.clamp(1, last);
    let does = swap_area::step_words(lesson.screen, lesson.answer, lesson.steps, state.step);
    let (number, count) = (state.step.to_string(), last.to_string());
    let title = say!(speaker, "lesson-step", number: number, count: count, does: does);
    let title = RichText::new(title).font(TypeStyle::Heading.font_id());
    let title = Label::new(title.color(palette.text_strong)).wrap();
    let place = state.view();
    if place == View::Wall {
        buttons_ui(ui, lesson, question, state, view);
        ui.add(title);
    } else {
        ui.add(title);
        buttons_ui(ui, lesson, question, state, view);
        ui.add_space(grid::TIGHT);
    }
    if ui.available_width() >= place.predictions() + place.between() + place.level() {
        ui.horizontal_top(|ui| {
            let usual = ui.spacing().item_spacing.x;
            ui.spacing_mut().item_spacing.x = place.between();
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = usual;
                ui.set_width(place.predictions());
                predictions::predictions_ui(ui, lesson, place, state);
            });
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = usual;
                ui.set_width((ui.available_width() - grid::NEAR).min(LEVEL));
                shown_level_ui(ui, lesson, place, state);
            });
        });
    } else {
        predictions::predictions_ui(ui, lesson, place, state);
        ui.add_space(grid::EASY);
        shown_level_ui(ui, lesson, place, state);
    }
}

/// The level before the step while it is covered, then the one after it.
fn shown_level_ui(ui: &mut Ui, lesson: &Lesson<'_>, place: View, state: &LessonState) {
    let (before, after) = (lesson.step(state.step - 1), lesson.step(state.step));
    let line = swap_area::line_words(lesson.speaker(), lesson.answer);
    let labels = match place {
        View::Window => LevelWords::Below,
        View::Wall => LevelWords::Beside,
    };
    if state.is_revealed {
        level_moved_ui(
            ui,
            &after.difference,
            &before.difference,
            line,
            labels,
            lesson.speaker(),
        );
    } else {
        level_with_ui(ui, &before.difference, line, labels, lesson.speaker());
    }
}

/// Back and on; at the end to the next drink.
fn buttons_ui(
    ui: &mut Ui,
    lesson: &Lesson<'_>,
    question: &Question,
    state: &mut LessonState,
    view: &mut ViewState,
) {
    let speaker = lesson.speaker();
    let last = lesson.last();
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
    let is_at_end = state.is_revealed && state.step == last;
    ui.horizontal(|ui| {
        let can_go_back = state.step > 1 || state.is_revealed;
        back = pressed(&ui.add_enabled(can_go_back, Button::new(speaker.word("lesson-back"))));
        if is_at_end {
            next_drink_ui(ui, lesson.screen, question, state, view);
        } else {
            let words = if state.is_revealed {
                "lesson-next"
            } else {
                "lesson-reveal"
            };
            let words = RichText::new(speaker.word(words)).font(TypeStyle::Strong.font_id());
            on = pressed(&ui.button(words));
        }
        if state.is_on_wall {
            wall_head_ui(ui, lesson.screen, question, state);
        } else {
            let words = RichText::new(speaker.word("swap-screen-step-keys"));
            let words = words.font(TypeStyle::Small.font_id());
            ui.label(words.color(theme::palette(ui.visuals()).text_quiet));
        }
    });
    if has_keyboard {
        on |= !is_at_end && ui.input(|input| input.key_pressed(Key::ArrowRight));
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

/// The way to the next drink; where there is no other, that this was the last step.
fn next_drink_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    state: &mut LessonState,
    view: &mut ViewState,
) {
    let speaker = screen.speaker;
    let next = screen.answers.to(&NextDrink {
        after: screen.recipe.id.clone(),
        ingredient: question.replace.clone(),
    });
    let Some(next) = next else {
        ui.add_enabled(false, Button::new(speaker.word("lesson-last")));
        return;
    };
    let name = speaker.drink(&next.recipe, next.version.as_ref());
    let words = RichText::new(say!(speaker, "lesson-next-drink", drink: name));
    if ui.button(words.font(TypeStyle::Strong.font_id())).clicked() {
        view.show(next);
        state.begin_again();
        ui.request_repaint();
    }
}
