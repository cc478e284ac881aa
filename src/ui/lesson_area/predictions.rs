//! The rows of a lesson: what the group expects of each axis and, once revealed, what came and why.

use egui::{Align, Align2, Button, Grid, Label, Layout, RichText, Ui, vec2};

use super::model::{MOST_LEARNERS, Score};
use super::state::{Lesson, LessonState};
use super::wall::View;
use super::why;
use crate::balance::{AxisDifference, Taste};
use crate::quantity::show_number;
use crate::say::{Speaker, say};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::swap_area;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::level::marks_of;
use crate::ui::widgets::name::{name_ui, width_of};
use crate::ui::words::{capitalised, quiet_ui};

/// What the group expects of each axis and, once revealed, what came.
pub(super) fn predictions_ui(
    ui: &mut Ui,
    lesson: &Lesson<'_>,
    view: View,
    state: &mut LessonState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = lesson.speaker();
    let heading = if state.is_revealed {
        // On the wall the results speak for themselves.
        (view == View::Window).then_some("lesson-result")
    } else if state.step == 1 {
        Some("lesson-ask-first")
    } else {
        Some("lesson-ask-next")
    };
    if let Some(heading) = heading {
        let heading = RichText::new(speaker.word(heading)).font(TypeStyle::Strong.font_id());
        ui.add(Label::new(heading.color(palette.text_strong)).wrap());
    }
    if state.is_revealed {
        results_ui(ui, lesson, view, state);
        if view == View::Window {
            copy_ui(ui, speaker.word("lesson-table"), || as_table(lesson, state));
        }
        score_ui(ui, lesson, state);
        if view == View::Wall {
            reasons_of_all_ui(ui, lesson, state);
        }
    } else {
        guesses_ui(ui, lesson, view, state);
    }
    if view == View::Window {
        ui.add_space(grid::NEAR);
        quiet_ui(ui, speaker.word("lesson-same"));
    }
}

/// A row an axis with a button for each guess.
fn guesses_ui(ui: &mut Ui, lesson: &Lesson<'_>, view: View, state: &mut LessonState) {
    let palette = theme::palette(ui.visuals());
    let speaker = lesson.speaker();
    let step = state.step;
    let outcomes: Vec<&AxisDifference> = lesson.step(step).difference.counted().collect();
    let learners = state.guesses.learners();
    if view == View::Window {
        learners_ui(ui, speaker, state);
    }
    let words = |guess: Taste, axis: &AxisDifference, hands: u32| {
        let words = match view {
            View::Window => speaker.taste(guess, &axis.axis),
            View::Wall => short_guess(speaker, guess).to_owned(),
        };
        if view == View::Window && learners > 1 && hands > 0 {
            say!(speaker, "lesson-hands", guess: words, count: hands.to_string())
        } else {
            words
        }
    };
    // On the wall there is only room for the number itself.
    let badge = if view == View::Wall && learners > 1 {
        width_of(ui, &learners.to_string(), &TypeStyle::Small.font_id())
    } else {
        0.0
    };
    let around = 2.0 * ui.spacing().button_padding.x;
    let widths = Taste::ALL.map(|guess| {
        let all = outcomes.iter().map(|axis| words(guess, axis, learners));
        all.map(|words| width_of(ui, &words, &TypeStyle::Body.font_id()) + around + badge)
            .fold(view.guess(), f32::max)
    });
    Grid::new("guesses")
        .num_columns(4)
        .spacing(vec2(grid::TIGHT, view.between_rows()))
        .min_row_height(view.row())
        .show(ui, |ui| {
            for came in &outcomes {
                let axis = speaker.axis(&came.axis);
                axis_ui(ui, lesson, view, came);
                for (guess, width) in Taste::ALL.into_iter().zip(widths) {
                    let whole = speaker.taste(guess, &came.axis);
                    let name = say!(speaker, "lesson-prediction", axis: &axis, guess: &whole);
                    let hands = state.guesses.get(step, &came.axis, guess);
                    let words = RichText::new(words(guess, came, hands)).color(palette.text_normal);
                    let button = Button::selectable(hands > 0, words)
                        .frame_when_inactive(true)
                        .min_size(vec2(width, view.row()));
                    let button = ui.add(button).accessible_name(name);
                    if badge > 0.0 && hands > 0 {
                        ui.painter().text(
                            button.rect.right_center() - vec2(2.0, 0.0),
                            Align2::RIGHT_CENTER,
                            hands,
                            TypeStyle::Small.font_id(),
                            palette.text_normal,
                        );
                    }
                    if button.clicked() {
                        state.guesses.raise(step, &came.axis, guess);
                    }
                }
                ui.end_row();
            }
        });
}

/// How many learners predict, each for themselves.
fn learners_ui(ui: &mut Ui, speaker: Speaker<'_>, state: &mut LessonState) {
    let learners = state.guesses.learners();
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        ui.label(say!(speaker, "lesson-learners", count: learners));
        for (sign, message, other) in [
            ("−", "lesson-learners-fewer", learners - 1),
            ("+", "lesson-learners-more", learners + 1),
        ] {
            let name = speaker.word(message);
            let button = Button::new(sign).min_size(vec2(grid::TARGET, grid::TARGET));
            let button = ui.add_enabled((1..=MOST_LEARNERS).contains(&other), button);
            if button.accessible_name(name).on_hover_text(name).clicked() {
                state.guesses.set_learners(other);
            }
        }
        if learners > 1 {
            quiet_ui(ui, speaker.word("lesson-learners-what"));
        }
    });
}

/// The name of a row; on the wall the one that stands under the level, too.
fn axis_ui(ui: &mut Ui, lesson: &Lesson<'_>, view: View, came: &AxisDifference) {
    let palette = theme::palette(ui.visuals());
    let speaker = lesson.speaker();
    let name = match view {
        View::Window => speaker.axis(&came.axis),
        View::Wall => {
            let marks = marks_of(&lesson.step(1).difference);
            let mark = marks.iter().find(|mark| mark.axis == came.axis);
            mark.map_or_else(
                || speaker.axis(&came.axis),
                |mark| mark.short_name(speaker).to_owned(),
            )
        }
    };
    ui.allocate_ui_with_layout(
        vec2(view.names(), view.row()),
        Layout::left_to_right(Align::Center),
        |ui| {
            ui.set_min_width(view.names());
            name_ui(
                ui,
                &name,
                TypeStyle::Body,
                palette.text_normal,
                view.names(),
            );
        },
    );
}

/// A row an axis: what came, and whether that was expected; below it why. On the wall the reasons follow all rows.
fn results_ui(ui: &mut Ui, lesson: &Lesson<'_>, view: View, state: &LessonState) {
    let palette = theme::palette(ui.visuals());
    ui.add_space(grid::TIGHT);
    for came in lesson.step(state.step).difference.counted() {
        ui.horizontal_top(|ui| {
            axis_ui(ui, lesson, view, came);
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                ui.set_width(ui.available_width());
                let colour = if is_off(came) {
                    palette.off_level
                } else {
                    palette.text_strong
                };
                let words = outcome_words(lesson.speaker(), came, view, state);
                // In the middle of the row, like the name.
                let above = (view.row() - TypeStyle::Body.size() * 1.2) / 2.0;
                ui.add_space(above.max(0.0));
                ui.add(Label::new(RichText::new(words).color(colour)).wrap());
                if view == View::Window {
                    reasons_ui(ui, lesson, came, state);
                }
            });
        });
    }
    ui.add_space(grid::TIGHT);
}

/// Why an axis is as it is: its figures and, where it is off or was off before, the line behind that.
fn reasons_ui(ui: &mut Ui, lesson: &Lesson<'_>, came: &AxisDifference, state: &LessonState) {
    let speaker = lesson.speaker();
    quiet_ui(ui, &why::figures_words(speaker, came));
    let drink = &lesson.step(state.step).balance;
    let cause = if is_off(came) {
        why::cause_words(speaker, &lesson.answer.standard, drink, came)
    } else {
        let before = lesson.step(state.step - 1);
        off_before(lesson, came, state).and_then(|was| {
            let moved = AxisDifference {
                steps: came.steps.zip(was.steps).map(|(is, was)| is - was),
                ..came.clone()
            };
            why::cause_words(speaker, &before.balance, drink, &moved)
        })
    };
    if let Some(cause) = cause {
        quiet_ui(ui, &cause);
    }
}

/// The axis as it was before the step, if a taster noticed it then.
fn off_before<'frame>(
    lesson: &Lesson<'frame>,
    came: &AxisDifference,
    state: &LessonState,
) -> Option<&'frame AxisDifference> {
    let mut before = lesson.step(state.step - 1).difference.counted();
    before.find(|was| was.axis == came.axis && is_off(was))
}

/// Why the axes that a taster notices, or noticed before the step, are as they are.
fn reasons_of_all_ui(ui: &mut Ui, lesson: &Lesson<'_>, state: &LessonState) {
    let speaker = lesson.speaker();
    for came in lesson.step(state.step).difference.counted() {
        if !is_off(came) && off_before(lesson, came, state).is_none() {
            continue;
        }
        let (axis, verdict) = (speaker.axis(&came.axis), speaker.against_standard(came));
        let verdict = say!(speaker, "widget-mark-of-axis", axis: axis, difference: verdict);
        let verdict = capitalised(&verdict);
        ui.label(RichText::new(verdict).font(TypeStyle::Strong.font_id()));
        reasons_ui(ui, lesson, came, state);
    }
}

fn is_off(came: &AxisDifference) -> bool {
    came.taste().is_some_and(|taste| taste != Taste::Same)
}

/// How many predictions were right: on this step and, at the end, on all.
fn score_ui(ui: &mut Ui, lesson: &Lesson<'_>, state: &LessonState) {
    let palette = theme::palette(ui.visuals());
    let speaker = lesson.speaker();
    let put = |ui: &mut Ui, message: &str, Score { right, of }: Score| {
        if of > 0 {
            let words = say!(speaker, message, right: right.to_string(), count: of);
            let words = RichText::new(words).font(TypeStyle::Strong.font_id());
            ui.add(Label::new(words.color(palette.text_strong)).wrap());
        }
    };
    let last = lesson.last();
    let of_step = state.guesses.score(lesson.steps, state.step..=state.step);
    put(ui, "lesson-score", of_step);
    if state.step == last {
        let of_all = state.guesses.score(lesson.steps, 1..=last);
        put(ui, "lesson-score-in-all", of_all);
    }
}

fn short_guess(speaker: Speaker<'_>, guess: Taste) -> &'static str {
    speaker.word(match guess {
        Taste::Less => "lesson-less",
        Taste::Same => "axis-same",
        Taste::More => "lesson-more",
    })
}

/// "sweeter by 1.9 steps: correct".
fn outcome_words(
    speaker: Speaker<'_>,
    came: &AxisDifference,
    view: View,
    state: &LessonState,
) -> String {
    let outcome = match (view, came.steps) {
        (View::Wall, Some(steps)) if is_off(came) => {
            let steps = speaker.steps(steps);
            let change = came.taste().map(|taste| speaker.taste(taste, &came.axis));
            say!(speaker, "widget-mark-short", change: change.unwrap_or_default(), steps: steps)
        }
        _ => speaker.against_standard(came),
    };
    match state.guesses.judged(state.step, came) {
        None => outcome,
        Some(Score { right, of }) if state.guesses.learners() > 1 => {
            say!(speaker, "lesson-some-correct", outcome: outcome, right: right.to_string(), count: of)
        }
        Some(Score { right: 0, .. }) => {
            let guess = expected_words(speaker, state, state.step, came);
            say!(speaker, "lesson-not-correct", outcome: outcome, guess: guess)
        }
        Some(_) => say!(speaker, "lesson-correct", outcome: outcome),
    }
}

/// "less sweet"; of several learners "less sweet: 1, sweeter: 3".
fn expected_words(
    speaker: Speaker<'_>,
    state: &LessonState,
    step: usize,
    came: &AxisDifference,
) -> String {
    let guesses = &state.guesses;
    let expected = Taste::ALL.into_iter().filter_map(|guess| {
        let hands = guesses.get(step, &came.axis, guess);
        let words = speaker.taste(guess, &came.axis);
        (hands > 0).then(|| {
            if guesses.learners() > 1 {
                say!(speaker, "lesson-hands", guess: words, count: hands.to_string())
            } else {
                words
            }
        })
    });
    expected.collect::<Vec<_>>().join(", ")
}

/// The guesses on every step that has been revealed, the one in hand the last, with what came.
fn as_table(lesson: &Lesson<'_>, state: &LessonState) -> Table {
    let speaker = lesson.speaker();
    let mut table = Table::new([
        speaker.word("lesson-table-step"),
        speaker.word("lesson-table-change"),
        speaker.word("lesson-table-axis"),
        speaker.word("lesson-table-prediction"),
        speaker.word("lesson-table-result"),
        speaker.word("lesson-table-difference"),
        speaker.word("lesson-table-correct"),
    ]);
    for at in 1..=state.step {
        let does = swap_area::step_words(lesson.screen, lesson.answer, lesson.steps, at);
        for came in lesson.step(at).difference.counted() {
            let expected = expected_words(speaker, state, at, came);
            let steps = came.steps.map(|steps| show_number(steps, 2));
            let judged = state.guesses.judged(at, came).map(|Score { right, of }| {
                if state.guesses.learners() > 1 {
                    return say!(speaker, "lesson-table-correct-of", right: right.to_string(), count: of.to_string());
                }
                let verdict = if right > 0 { "verdict-yes" } else { "verdict-no" };
                speaker.word(verdict).to_owned()
            });
            table.row([
                Cell::figure(&at.to_string()),
                Cell::words(&does),
                Cell::words(&speaker.axis(&came.axis)),
                Cell::words(&expected),
                Cell::words(&speaker.against_standard(came)),
                Cell::figure(&steps.unwrap_or_default()),
                Cell::words(&judged.unwrap_or_default()),
            ]);
        }
    }
    table
}
