//! A lesson: what a group expects of each step of a swap, and what came of it. Knows no screen.

use std::collections::BTreeMap;

use crate::book::Axis;
use crate::say::Speaker;
use crate::swap::{AxisMove, NOT_TASTED};

/// What is expected of an axis.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Guess {
    /// Less of it than before.
    Less,
    /// As before, to the tongue.
    Same,
    /// More of it than before.
    More,
}

impl Guess {
    pub(super) const ALL: [Self; 3] = [Self::Less, Self::Same, Self::More];

    /// "less sweet", "the same", "sweeter".
    pub(super) fn words(self, speaker: Speaker<'_>, axis: &Axis) -> String {
        match self {
            Self::Less => speaker.less(axis),
            Self::Same => speaker.word("axis-same").to_owned(),
            Self::More => speaker.more(axis),
        }
    }
}

/// What a right expectation of this would have been; `None` when it is not known.
pub(super) fn right(outcome: &AxisMove) -> Option<Guess> {
    Some(match outcome.moved? {
        moved if moved.abs() < NOT_TASTED => Guess::Same,
        moved if moved > 0.0 => Guess::More,
        _ => Guess::Less,
    })
}

/// What the group expects, by step and axis.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Guesses(BTreeMap<(usize, String), Guess>);

impl Guesses {
    pub(super) fn get(&self, step: usize, axis: &Axis) -> Option<Guess> {
        self.0.get(&(step, axis.word().to_owned())).copied()
    }

    /// Takes a guess, or takes it back when it is the one that stands.
    pub(super) fn toggle(&mut self, step: usize, axis: &Axis, guess: Guess) {
        let key = (step, axis.word().to_owned());
        if self.0.get(&key) == Some(&guess) {
            self.0.remove(&key);
        } else {
            self.0.insert(key, guess);
        }
    }

    /// How many of the guesses on a step were right, and how many there were of which it is known.
    pub(super) fn score(&self, step: usize, outcomes: &[AxisMove]) -> (usize, usize) {
        let judged: Vec<bool> = outcomes
            .iter()
            .filter_map(|outcome| {
                let guess = self.get(step, &outcome.axis)?;
                Some(right(outcome)? == guess)
            })
            .collect();
        (judged.iter().filter(|right| **right).count(), judged.len())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn outcome(axis: Axis, moved: Option<f64>) -> AxisMove {
        AxisMove { axis, moved }
    }

    #[test]
    fn half_a_step_is_not_tasted_and_what_is_not_known_is_not_judged() {
        let outcomes = [
            outcome(Axis::Sweetness, Some(1.9)),
            outcome(Axis::Body, Some(-0.3)),
            outcome(Axis::TeaStrength, Some(-0.8)),
            outcome(Axis::Creaminess, None),
        ];
        let judged: Vec<_> = outcomes.iter().map(right).collect();
        assert_eq!(
            judged,
            [
                Some(Guess::More),
                Some(Guess::Same),
                Some(Guess::Less),
                None
            ]
        );
        let mut guesses = Guesses::default();
        for (axis, guess) in [
            (Axis::Sweetness, Guess::More),
            (Axis::Body, Guess::More),
            (Axis::Creaminess, Guess::Less),
        ] {
            guesses.toggle(1, &axis, guess);
        }
        assert_eq!(guesses.score(1, &outcomes), (1, 2));
        guesses.toggle(1, &Axis::Body, Guess::More);
        assert_eq!(guesses.score(1, &outcomes), (1, 1));
        assert_eq!(guesses.score(2, &outcomes), (0, 0));
    }
}
