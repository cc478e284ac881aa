//! What the comparison remembers between frames, and what its columns show.

use std::sync::Arc;

use super::menu_state::{MOST_BESIDE, MenuState};
use super::model::{self, Drink, Part};
use crate::ui::Screen;
use crate::ui::words::Spoken;
use crate::workbench::{Answers, BalanceOf, BookQuestion, DifferenceFrom, ServingOf, Shown};

/// What this area remembers between frames.
#[derive(Clone, Debug, Default)]
pub struct CompareState {
    /// The drinks beside the one in hand.
    pub beside: Vec<Shown>,
    /// What is typed to find another drink.
    pub(super) find: String,
    /// What is looked at.
    pub(super) look_at: CompareView,
    pub(super) menu: MenuState,
}

/// What is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum CompareView {
    /// The drink in hand and a few others, figure by figure.
    #[default]
    SideBySide,
    /// Every drink of the menu, a row each.
    WholeMenu,
}

/// Which drinks stand in the columns, and what is spoken of them.
#[derive(Clone, PartialEq, Eq, Hash)]
pub(super) struct Columns {
    spoken: Spoken,
    drinks: Vec<Shown>,
}

/// What the columns show.
pub(super) struct CompareLooks {
    pub(super) drinks: Vec<Drink>,
    pub(super) parts: Vec<Part>,
    /// What sets each drink apart from the first.
    pub(super) apart: Vec<String>,
}

impl CompareState {
    /// Sets a drink beside the one in hand, or takes it away again.
    pub(super) fn toggle(&mut self, shown: Shown) {
        if self.beside.contains(&shown) {
            self.beside.retain(|other| *other != shown);
        } else if self.beside.len() < MOST_BESIDE {
            self.beside.push(shown);
        }
    }
}

impl Columns {
    pub(super) fn of(screen: &Screen<'_>, beside: &[Shown]) -> Self {
        let others = beside.iter().filter(|other| *other != screen.shown);
        Self {
            spoken: Spoken::by(screen.speaker),
            drinks: std::iter::once(screen.shown)
                .chain(others.take(MOST_BESIDE))
                .cloned()
                .collect(),
        }
    }
}

impl BookQuestion for Columns {
    type Answer = Arc<CompareLooks>;

    /// One that is no longer in the book is left out.
    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let speaker = self.spoken.about(answers.book());
        let mut drinks: Vec<Drink> = Vec::new();
        for shown in &self.drinks {
            let first = drinks.first().map(|first| &first.shown);
            drinks.extend(drink(answers, shown, first));
        }
        let apart = drinks
            .split_first()
            .map_or_else(Vec::new, |(first, others)| {
                let words = |other| model::apart(speaker, first, other);
                others.iter().map(words).collect()
            });
        Arc::new(CompareLooks {
            parts: model::parts(speaker, &drinks),
            apart,
            drinks,
        })
    }
}

/// The drink of a column, held to the first; `None` when it is not in the book.
fn drink(answers: Answers<'_>, shown: &Shown, first: Option<&Shown>) -> Option<Drink> {
    Some(Drink {
        shown: shown.clone(),
        recipe: answers.book().recipe(&shown.recipe)?.clone(),
        balance: answers.to(&BalanceOf(shown.clone()))?,
        serving: answers.to(&ServingOf(shown.clone()))?,
        difference: first.and_then(|first| {
            answers.to(&DifferenceFrom {
                first: first.clone(),
                other: shown.clone(),
            })
        }),
    })
}
