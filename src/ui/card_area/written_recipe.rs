//! The review of a schema.org recipe.

use egui::{Button, Label, RichText, Ui};

use super::review::{away_ui, working_ui};
use crate::exchange::ReadRecipe;
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::theme::{self, grid};
use crate::ui::words::{heading_ui, quiet_ui, speaker};
use crate::workbench::{Action, Command, Look, RecipeReview};

pub(super) fn recipe_ui(
    ui: &mut Ui,
    recipe: &ReadRecipe,
    look: &Look<RecipeReview>,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
    heading_ui(ui, &name_as_shown(&recipe.name));
    for ingredient in &recipe.ingredients {
        ui.label(&ingredient.text);
    }
    for instruction in &recipe.instructions {
        let words = RichText::new(instruction).color(palette.text_quiet);
        ui.add(Label::new(words).wrap());
    }
    ui.add_space(grid::EASY);
    match look.current() {
        None => {
            working_ui(ui, speaker.word("cards-screen-recipe-looking"));
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Err(error)) => {
            ui.add(Label::new(RichText::new(error).color(palette.off_level)).wrap());
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Ok((edit, questions))) => {
            heading_ui(ui, speaker.word("cards-screen-to-look-at"));
            for question in questions {
                let words = speaker.recipe_question(question);
                ui.add(Label::new(words).wrap());
            }
            for left in &recipe.left_out {
                quiet_ui(ui, &say!(speaker, "cards-screen-left-out", text: left));
            }
            ui.add_space(grid::EASY);
            ui.horizontal(|ui| {
                let words = RichText::new(speaker.word("cards-screen-add-recipe"));
                let words = words.color(palette.on_accent);
                if ui.add(Button::new(words).fill(palette.accent)).clicked() {
                    actions.push(Action::Command(Command::TakeRecipe(Box::new(edit.clone()))));
                }
                away_ui(ui, speaker.word("cards-screen-leave"), actions);
            });
        }
    }
}
