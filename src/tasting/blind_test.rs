//! Blind tests by forced choice: what guessing gets right, and how many right answers are more than guessing.
//!
//! Under the hypothesis of no difference every answer is a guess, and the number of right answers of `n` people is binomial with the
//! share of right guesses `c`: `p = Σ_{i ≥ k} C(n, i)·cⁱ·(1 − c)ⁿ⁻ⁱ`. ISO 4120:2021 (triangle, `c` = 1/3), ISO 10399:2017 (duo–trio,
//! 1/2) and ISO 5495:2005 (paired comparison, 1/2, one-sided or two-sided).
//! One answer a person: who answers again is no further person (see [`super::answers`]).

use super::distributions::{at_least, first};
use crate::book::TastingOutcome;

/// Whether the answer that is counted was agreed on before the tasting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Sides {
    /// It was: "B is the sweeter one". Only answers that say so count.
    One,
    /// Either sample may be the one with more.
    Two,
}

/// A blind test in which each person gives one of a few answers, whether they taste a difference or not.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum BlindTest {
    /// Three cups, two of them the same: which one is odd?
    Triangle,
    /// A reference and two cups: which one is the same as the reference?
    DuoTrio,
    /// Two cups: which one has more of what is asked about? Names a direction, so it shows a difference with fewer people.
    Pair(Sides),
}

/// How many answers show a difference.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Needed {
    /// At least so many right answers; in a two-sided pair, so many for the same sample.
    pub answers: u32,
    /// The probability of that many or more by guessing alone: at most the level that was asked for, and often well below it.
    pub chance: f64,
}

/// The blind test of a kept tasting, the people who answered, and those who were right; in a pair, who chose the second cup. `None`
/// where nobody had to choose, and of an entry that is not finished: nobody in it, or more right answers than people.
pub fn blind_answers(outcome: TastingOutcome) -> Option<(BlindTest, u32, u32)> {
    let test = match outcome {
        TastingOutcome::Triangle { .. } => BlindTest::Triangle,
        TastingOutcome::DuoTrio { .. } => BlindTest::DuoTrio,
        TastingOutcome::Pair { .. } => BlindTest::Pair(Sides::One),
        TastingOutcome::PairEitherWay { .. } => BlindTest::Pair(Sides::Two),
        _ => return None,
    };
    let (people, right) = (outcome.people()?, outcome.right()?);
    (people > 0 && right <= people).then_some((test, people, right))
}

impl BlindTest {
    /// All of them.
    pub const ALL: [Self; 4] = [
        Self::Triangle,
        Self::DuoTrio,
        Self::Pair(Sides::One),
        Self::Pair(Sides::Two),
    ];

    /// The word for it in commands, files and the names of messages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Triangle => "triangle",
            Self::DuoTrio => "duo-trio",
            Self::Pair(Sides::One) => "pair",
            Self::Pair(Sides::Two) => "pair-either-way",
        }
    }

    /// The share of right answers of people who guess.
    pub const fn guessing(self) -> f64 {
        match self {
            Self::Triangle => 1.0 / 3.0,
            Self::DuoTrio | Self::Pair(_) => 0.5,
        }
    }

    /// The answers that count: in a two-sided pair those for the sample with more of them.
    pub(super) fn votes(self, people: u32, right: u32) -> u32 {
        match self {
            Self::Pair(Sides::Two) => right.max(people - right),
            _ => right,
        }
    }

    /// The fewest answers that can count: in a two-sided pair one sample has half of them at least.
    pub(super) fn fewest_votes(self, people: u32) -> u32 {
        match self {
            Self::Pair(Sides::Two) => people.div_ceil(2),
            _ => 0,
        }
    }
}

/// The probability of a result at least as far from guessing, by guessing alone: the p value, exact.
///
/// `right` counts right answers; in a two-sided pair, answers for one of the samples, whichever it is. More right answers than
/// people count as all of them.
pub fn guessed(test: BlindTest, people: u32, right: u32) -> f64 {
    let votes = test.votes(people, right.min(people));
    let more = at_least(people, votes, test.guessing());
    match test {
        // Both tails of a symmetric distribution; they meet where the votes are even.
        BlindTest::Pair(Sides::Two) => (2.0 * more).min(1.0),
        _ => more,
    }
}

/// How many right answers of so many people show a difference at a level: 0.05 for one false alarm in twenty tastings of equal cups.
/// `None` where even all of them don't.
pub fn needed(test: BlindTest, people: u32, level: f64) -> Option<Needed> {
    // Half of the votes or fewer show nothing in a two-sided pair, where fewer votes are as far from even as more.
    let (fewest, end) = (test.fewest_votes(people), people.checked_add(1)?);
    let least = first(fewest, end, |right| guessed(test, people, right) <= level);
    (least <= people).then(|| Needed {
        answers: least,
        chance: guessed(test, people, least),
    })
}
