//! Choosing a drink of the book in a menu: a field that narrows the list down, by the name of a drink or what is in it.

use std::sync::Arc;

use egui::{Button, RichText, ScrollArea, TextEdit, Ui};

use super::screen::Screen;
use super::theme::{self, grid};
use super::words::Spoken;
use crate::book::{DrinkWords, WantedWords};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED, Shown};

/// Most drinks that the list shows at once.
const MOST_FOUND: usize = 60;
/// Height and least width of the list, in points.
const LIST: f32 = 80.0 * grid::STEP;
const WIDTH: f32 = 65.0 * grid::STEP;

/// What the recipes of the book are found by.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct WordsOfDrinks;

impl BookQuestion for WordsOfDrinks {
    type Answer = Arc<DrinkWords>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(DrinkWords::of(answers.book()))
    }
}

/// The drinks that are served in a cup and fit what is typed.
#[derive(Clone, PartialEq, Eq, Hash)]
struct DrinksFound {
    spoken: Spoken,
    typed: String,
}

/// Those that are listed, each with its name, and whether there are more.
struct Found {
    drinks: Vec<(Shown, String)>,
    has_more: bool,
}

impl BookQuestion for DrinksFound {
    type Answer = Arc<Found>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let speaker = self.spoken.about(book);
        let wanted = WantedWords::of(&self.typed);
        let words = (!wanted.is_empty()).then(|| answers.to(&WordsOfDrinks));
        let mut drinks = Vec::new();
        let served = book.recipes.iter().enumerate();
        for (at, recipe) in served.filter(|(_, recipe)| recipe.cup.is_some()) {
            let holds = words
                .as_ref()
                .is_some_and(|words| words.found_by(at, &wanted).is_some());
            let original = (None, speaker.word("version-original"));
            let versions = recipe.versions.iter();
            let versions = versions.map(|version| (Some(&version.id), version.name.as_str()));
            for (version, name) in std::iter::once(original).chain(versions) {
                let name = say!(speaker, "compare-drink", recipe: &recipe.name, version: name);
                if !holds && !wanted.are_in(&name) {
                    continue;
                }
                if drinks.len() == MOST_FOUND {
                    return Arc::new(Found {
                        drinks,
                        has_more: true,
                    });
                }
                let shown = Shown {
                    recipe: recipe.id.clone(),
                    version: version.cloned(),
                };
                drinks.push((shown, name));
            }
        }
        Arc::new(Found {
            drinks,
            has_more: false,
        })
    }
}

/// The list in an open menu; tells which drink was clicked. `is_chosen` are marked, and `accessible` is what a click on a
/// drink of this name does.
pub(super) fn drinks_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    typed: &mut String,
    is_chosen: impl Fn(&Shown) -> bool,
    accessible: impl Fn(&str) -> String,
) -> Option<Shown> {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    ui.set_min_width(WIDTH);
    let field = TextEdit::singleline(typed).hint_text(speaker.word("compare-find-hint"));
    ui.add(field).accessible_name(speaker.word("compare-find"));
    let found = screen.answers.to(&DrinksFound {
        spoken: Spoken::by(speaker),
        typed: typed.clone(),
    });
    let mut clicked = None;
    ScrollArea::vertical().max_height(LIST).show(ui, |ui| {
        for (shown, name) in &found.drinks {
            let name = name_as_shown(name);
            let button = Button::selectable(is_chosen(shown), name.as_ref());
            if ui.add(button).accessible_name(accessible(&name)).clicked() {
                clicked = Some(shown.clone());
            }
        }
        let words = match (found.drinks.is_empty(), found.has_more) {
            (true, _) => "compare-none",
            (_, true) => "compare-more",
            _ => return,
        };
        ui.label(RichText::new(speaker.word(words)).color(palette.text_quiet));
    });
    clicked
}
