//! What items of the book were before their figures changed, kept for the drinks that were approved with them.

use std::collections::BTreeMap;

use super::{IngredientId, MeasureId, RecipeId, VesselId};

/// An item as it was.
#[derive(Clone, Debug, PartialEq)]
pub struct EarlierState<T> {
    /// The revision of the item that this is.
    pub revision: u32,
    /// The day from which it was no longer so, `2026-05-04`; none when nobody knows.
    pub until: Option<String>,
    /// The lot from which it was no longer so; empty when none is stated.
    pub until_lot: String,
    /// The item. Of what does not enter a drink it may keep nothing.
    pub was: T,
}

/// The states of an item that approved drinks were tasted with, the oldest first.
///
/// An item has a revision, counted from 0, which an approval keeps. A revision that nothing was kept of has the figures of the
/// next one that was: it was put right, and what was tasted did not change.
#[derive(Clone, Debug, PartialEq)]
pub struct EarlierStates<T> {
    /// The revision of the item as it is now. It never goes back.
    pub revision: u32,
    /// What it was before.
    pub states: Vec<EarlierState<T>>,
}

impl<T> Default for EarlierStates<T> {
    fn default() -> Self {
        Self {
            revision: 0,
            states: Vec::new(),
        }
    }
}

impl<T> EarlierStates<T> {
    /// The item at a revision; `None` when that is the item as it is now.
    pub fn at(&self, revision: u32) -> Option<&T> {
        let mut states = self.states.iter();
        let kept = states.find(|state| state.revision >= revision)?;
        Some(&kept.was)
    }

    /// The latest that was kept.
    pub fn latest(&self) -> Option<&EarlierState<T>> {
        self.states.last()
    }

    /// Keeps what the item was, for everything that was tasted with it up to a revision: another state of it is going to stand
    /// in its place.
    pub fn keep(&mut self, was: T, tasted: u32) {
        let revision = tasted.max(self.revision);
        self.states.push(EarlierState {
            revision,
            until: None,
            until_lot: String::new(),
            was,
        });
        self.revision = revision.saturating_add(1);
    }

    /// Forgets the latest state that was kept, which was wrong: what was tasted with it had the figures that stand now.
    pub fn put_right(&mut self) {
        self.states.pop();
    }

    /// Says from when the latest state that was kept was no longer so.
    pub fn date_latest(&mut self, until: Option<&str>, lot: &str) {
        if let Some(latest) = self.states.last_mut() {
            latest.until = until.map(str::to_owned);
            lot.clone_into(&mut latest.until_lot);
        }
    }
}

/// The revisions of everything that a drink was tasted with. What is not listed is at its first one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct TastedWith {
    /// Of the settings.
    pub settings: u32,
    /// Of the ingredients, those of batches among them.
    pub ingredients: BTreeMap<IngredientId, u32>,
    /// Of the measures.
    pub measures: BTreeMap<MeasureId, u32>,
    /// Of the vessels.
    pub vessels: BTreeMap<VesselId, u32>,
    /// Of the recipes of batches.
    pub recipes: BTreeMap<RecipeId, u32>,
}
