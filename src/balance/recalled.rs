//! What a pure function came to, recalled when it is asked for the same again: a statement is read, and a cup fitted, for every drink
//! that it is in.
//!
//! What is recalled is what would be worked out, so nobody can tell the difference but by the clock.

use std::borrow::Borrow;
use std::cell::RefCell;
use std::collections::BTreeMap;

/// Most answers that are kept of one function; with more of them all are forgotten.
const MOST: usize = 4096;

/// The answers of one function.
#[derive(Debug)]
pub(super) struct Recalled<K, V>(RefCell<BTreeMap<K, V>>);

impl<K: Ord, V: Clone> Recalled<K, V> {
    /// Nothing has been asked.
    pub(super) const fn new() -> Self {
        Self(RefCell::new(BTreeMap::new()))
    }

    /// The answer that is kept for a question, where it holds, or else a new one.
    pub(super) fn answer<Q>(
        &self,
        question: &Q,
        holds: impl FnOnce(&V) -> bool,
        answer: impl FnOnce() -> V,
    ) -> V
    where
        K: Borrow<Q>,
        Q: Ord + ToOwned<Owned = K> + ?Sized,
    {
        let kept = self.0.borrow();
        let known = kept.get(question).filter(|known| holds(known)).cloned();
        drop(kept);
        known.unwrap_or_else(|| {
            let new = answer();
            let mut kept = self.0.borrow_mut();
            if kept.len() >= MOST {
                kept.clear();
            }
            kept.insert(question.to_owned(), new.clone());
            new
        })
    }
}
