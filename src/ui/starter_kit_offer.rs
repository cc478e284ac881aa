//! The starter kit, offered wherever a book lacks what nearly every counter has.

use std::sync::Arc;

use egui::{Label, RichText, Ui};

use super::theme::{self, TypeStyle, grid};
use super::words::Spoken;
use crate::edit::{Edit, Focus};
use crate::say::Speaker;
use crate::workbench::{Action, Answers, BookQuestion, starter_kit};

/// What the kit would put into the book.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
struct KitFor(Spoken);

impl BookQuestion for KitFor {
    type Answer = Arc<Vec<Edit>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        Arc::new(starter_kit(book, self.0.about(book)))
    }
}

/// A button that puts in what the book lacks, as one step; nothing where it lacks nothing.
pub(super) fn starter_kit_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    answers: Answers<'_>,
    actions: &mut Vec<Action>,
) {
    let kit = answers.to(&KitFor(Spoken::by(speaker)));
    let Some((first, _)) = kit
        .first()
        .and_then(|edit| edit.changed_fields(answers.book()))
    else {
        return;
    };
    let palette = theme::palette(ui.visuals());
    if ui.button(speaker.word("starter-kit")).clicked() {
        actions.push(Action::Edit {
            edits: kit.to_vec(),
            focus: Focus::Item(first),
        });
    }
    let about = RichText::new(speaker.word("starter-kit-about"))
        .font(TypeStyle::Small.font_id())
        .color(palette.text_quiet);
    ui.add(Label::new(about).wrap());
    ui.add_space(grid::TIGHT);
}
