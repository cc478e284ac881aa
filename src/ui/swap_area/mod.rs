//! The swap: what goes, what comes, and what brings the taste back; standard, plain swap and suggestion side by side.

mod accept;
mod answer;
mod ask;
mod model;

use egui::{Label, RichText, ScrollArea, Ui};

use crate::book::VersionId;
use crate::swap::{Answer, Question};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::workbench::Action;

/// What the swap area remembers between frames.
#[derive(Clone, Debug, Default)]
pub struct SwapState {
    /// The swap that is asked for. While nothing is chosen that comes, `with` is what goes.
    pub question: Option<Question>,
    /// A version that was just kept and should be shown; taken by whoever shows it.
    pub show_version: Option<VersionId>,
    /// Whether the two ingredients are being chosen although both are known.
    choosing: bool,
    /// What is typed to find the ingredient that comes.
    find: String,
    /// The row of what was found that the keyboard is on.
    found: usize,
    /// Which of the suggestions is looked at.
    suggestion: usize,
    /// The name that is being typed for the suggestion.
    suggestion_name: Option<String>,
    /// The name that is being typed for the plain swap.
    plain_name: Option<String>,
}

impl SwapState {
    /// The area as it begins with a question.
    pub fn asking(question: Question) -> Self {
        Self {
            question: Some(question),
            ..Self::default()
        }
    }

    /// The question once both ingredients are chosen.
    fn complete(&self) -> Option<&Question> {
        self.question
            .as_ref()
            .filter(|question| question.with != question.replace)
    }
}

/// The swap of the version in hand. `answer` belongs to the question of the last frame.
pub fn swap_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: Option<&Answer>,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    model::follow(state, screen);
    let asked = state.question.clone();
    ScrollArea::vertical()
        .id_salt("swap area")
        .auto_shrink(false)
        .show(ui, |ui| {
            ui.set_width(ui.available_width() - grid::NEAR);
            let complete = state.complete().cloned();
            if let Some(question) = complete.filter(|_| !state.choosing) {
                ask::chosen_ui(ui, screen, &question, state);
                if let Some(answer) = answer.filter(|answer| answer.question == question) {
                    ask::may_move_ui(ui, screen, answer, state);
                    ui.add_space(grid::EASY);
                    answer::answer_ui(ui, screen, answer, state, actions);
                }
            } else {
                introduction_ui(ui);
                ask::choose_ui(ui, screen, state);
            }
            ui.add_space(grid::APART);
        });
    if state.question != asked {
        // The answer to what was just asked is there in the next frame.
        ui.request_repaint();
    }
}

/// The empty state says what to do.
fn introduction_ui(ui: &mut Ui) {
    let palette = theme::palette(ui.visuals());
    let heading = RichText::new("Swap an ingredient").font(TypeStyle::Heading.font_id());
    ui.label(heading.color(palette.text_strong));
    let words = "Choose what goes and what comes instead. You then see the drink with equal measures, and which amounts bring \
                 it back to the standard. Nothing changes until you keep one as a new version.";
    ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    ui.add_space(grid::EASY);
}
