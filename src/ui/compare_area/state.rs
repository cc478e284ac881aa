//! What the comparison remembers between frames, and what its columns show.

use std::sync::Arc;

use super::model::{self, Drink, Part};
use crate::balance::difference;
use crate::quantity::DisplayUnits;
use crate::say::{Language, Speaker};
use crate::ui::view_state::ViewState;
use crate::workbench::{BookStamp, Shown, Workbench};

/// Most drinks beside the first.
pub(super) const MOST_BESIDE: usize = 3;

/// What this area remembers between frames.
#[derive(Clone, Debug, Default)]
pub struct CompareState {
    /// The drinks beside the one in hand.
    pub beside: Vec<Shown>,
    /// What is typed to find another drink.
    pub(super) find: String,
    /// What was worked out for the columns, until the book or the columns change.
    pub(super) kept: Option<Arc<CompareLooks>>,
}

/// What the columns show.
#[derive(Debug, Default)]
pub(super) struct CompareLooks {
    stamp: BookStamp,
    units: DisplayUnits,
    language: Language,
    wanted: Vec<Shown>,
    pub(super) drinks: Vec<Drink>,
    pub(super) parts: Vec<Part>,
    /// What sets each drink apart from the first.
    pub(super) apart: Vec<String>,
}

impl CompareLooks {
    /// The columns as they are kept, or worked out anew when the book, the columns or what the window speaks in has changed.
    pub(super) fn take(
        workbench: &mut Workbench,
        shown: &Shown,
        state: &mut CompareState,
        view: &ViewState,
    ) -> Arc<Self> {
        let book = workbench.book().clone();
        let speaker = view.speaker(&book);
        let others = state.beside.iter().filter(|other| *other != shown);
        let wanted: Vec<Shown> = std::iter::once(shown)
            .chain(others.take(MOST_BESIDE))
            .cloned()
            .collect();
        let kept = state.kept.take();
        let looks = kept
            .filter(|kept| {
                let is_of_now = kept.stamp == workbench.stamp() && kept.wanted == wanted;
                is_of_now && (kept.units, kept.language) == (speaker.units, speaker.language)
            })
            .unwrap_or_else(|| Arc::new(Self::work_out(workbench, speaker, wanted)));
        state.kept = Some(looks.clone());
        looks
    }

    /// Asks the workbench for every column; one that is no longer in the book is left out.
    fn work_out(workbench: &mut Workbench, speaker: Speaker<'_>, shown: Vec<Shown>) -> Self {
        let book = speaker.book;
        let mut drinks: Vec<Drink> = Vec::new();
        for wanted in &shown {
            let version = wanted.version.as_ref();
            let recipe = book.recipe(&wanted.recipe).cloned();
            let balance = workbench.balance(&wanted.recipe, version);
            let serving = workbench.serving(&wanted.recipe, version);
            let (Some(recipe), Some(balance), Some(serving)) = (recipe, balance, serving) else {
                continue;
            };
            let difference = drinks
                .first()
                .map(|first| Arc::new(difference(&book.settings, &first.balance, &balance)));
            drinks.push(Drink {
                shown: wanted.clone(),
                recipe,
                balance,
                serving,
                difference,
            });
        }
        let apart = drinks
            .split_first()
            .map_or_else(Vec::new, |(first, others)| {
                let words = |other| model::apart(speaker, first, other);
                others.iter().map(words).collect()
            });
        Self {
            stamp: workbench.stamp(),
            units: speaker.units,
            language: speaker.language,
            wanted: shown,
            parts: model::parts(speaker, &drinks),
            apart,
            drinks,
        }
    }
}
