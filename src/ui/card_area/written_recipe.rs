//! The review of a schema.org recipe: what each of its sentences becomes.

use egui::{Button, Label, RichText, Ui};

use super::match_menu::{Asked, match_menu_ui, match_words};
use super::review::{ReviewState, away_ui, working_ui};
use crate::exchange::{ArrivedLine, Becomes, ReadRecipe, RowMatch, WrittenArrival};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, grid};
use crate::ui::words::{heading_ui, quiet_ui};
use crate::workbench::{Action, Command, Look, RecipeReview};

pub(super) fn recipe_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    recipe: &ReadRecipe,
    look: &Look<RecipeReview>,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    heading_ui(ui, &name_as_shown(&recipe.name));
    // What was found for the choice before stays there while the next one is worked out.
    match look.found.as_deref() {
        None => {
            working_ui(ui, speaker.word("cards-screen-recipe-looking"));
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Err(error)) => {
            ui.add(Label::new(RichText::new(error).color(palette.off_level)).wrap());
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        Some(Ok(arrival)) => {
            lines_ui(ui, screen, arrival, state);
            for instruction in &recipe.instructions {
                let words = RichText::new(name_as_shown(instruction)).color(palette.text_quiet);
                ui.add(Label::new(words).wrap());
            }
            ui.add_space(grid::EASY);
            heading_ui(ui, speaker.word("cards-screen-to-look-at"));
            ui.add(Label::new(speaker.word("question-not-in-file")).wrap());
            for left in &recipe.left_out {
                quiet_ui(ui, &say!(speaker, "cards-screen-left-out", text: left));
            }
            ui.add_space(grid::EASY);
            ui.horizontal(|ui| {
                let words = RichText::new(speaker.word("cards-screen-add-recipe"));
                let words = words.color(palette.on_accent);
                let button = Button::new(words).fill(palette.accent);
                let is_current = look.current().is_some();
                if ui.add_enabled(is_current, button).clicked() {
                    let edit = Box::new(arrival.edit.clone());
                    actions.push(Action::Command(Command::TakeRecipe(edit)));
                }
                away_ui(ui, speaker.word("cards-screen-leave"), actions);
            });
        }
    }
}

/// The sentences, what each becomes, and the menu that says what it is about.
fn lines_ui(ui: &mut Ui, screen: &Screen<'_>, arrival: &WrittenArrival, state: &mut ReviewState) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let after = speaker.about(&arrival.after);
    let mut matched = None;
    for (at, line) in arrival.lines.iter().enumerate() {
        let sentence = name_as_shown(&line.text);
        ui.add(Label::new(RichText::new(sentence.as_ref()).color(palette.text_strong)).wrap());
        ui.indent(("sentence", at), |ui| {
            ui.horizontal_wrapped(|ui| {
                ui.add(Label::new(after.becomes(line)).wrap());
                if let Some(now) = now_words(after, speaker, line) {
                    let asked = Asked {
                        at,
                        name: &line.text,
                        now: &now,
                    };
                    if let Some(to) =
                        match_menu_ui(ui, (speaker, screen.answers), &mut state.menu, &asked)
                    {
                        matched = Some((at, to));
                    }
                }
            });
            for question in &line.questions {
                let words = RichText::new(after.recipe_question(question)).color(palette.caution);
                ui.add(Label::new(words).wrap());
            }
        });
        ui.add_space(grid::TIGHT);
    }
    if let Some((at, to)) = matched {
        state.match_sentence(at, to);
    }
    copy_ui(ui, speaker.word("cards-screen-sentences-table"), || {
        let heads = [
            "cards-screen-sentences-table-sentence",
            "cards-screen-sentences-table-becomes",
            "cards-screen-changes-table-doubts",
        ];
        let mut table = Table::new(heads.map(|head| speaker.word(head)));
        for line in &arrival.lines {
            let questions = line.questions.iter();
            let questions: Vec<String> = questions.map(|one| after.recipe_question(one)).collect();
            table.row([
                Cell::words(&name_as_shown(&line.text)),
                Cell::words(&after.becomes(line)),
                Cell::words(&questions.join("; ")),
            ]);
        }
        table
    });
    ui.add_space(grid::EASY);
}

/// What a sentence is about, and why; `None` for one that states no ingredient.
fn now_words(after: Speaker<'_>, speaker: Speaker<'_>, line: &ArrivedLine) -> Option<String> {
    match &line.becomes {
        Becomes::Instruction => None,
        Becomes::LeftOut => Some(match_words(speaker, &RowMatch::LeftOut)),
        Becomes::Line {
            ingredient, why, ..
        } => Some(if let Some(why) = why {
            let name = match_words(after, &RowMatch::Ours(ingredient.clone()));
            say!(speaker, "cards-screen-match-why", ingredient: name, why: speaker.why_alike(*why))
        } else {
            let new = after.book.ingredient(ingredient)?;
            match_words(after, &RowMatch::New(new.form))
        }),
    }
}
