//! Blind tests by forced choice: what guessing gets right, and how many right answers are more than guessing.
//!
//! Under the hypothesis of no difference every answer is a guess, and the number of right answers of `n` people is binomial with the
//! share of right guesses `c`: `p = Σ_{i ≥ k} C(n, i)·cⁱ·(1 − c)ⁿ⁻ⁱ`. ISO 4120:2021 (triangle, `c` = 1/3), ISO 10399:2017 (duo–trio,
//! 1/2) and ISO 5495:2005 (paired comparison, 1/2, one-sided or two-sided).
//! One answer a person: who answers again is no further person (see [`super::answers`]).

use super::distributions::at_least;

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

    /// The test of a word.
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|test| test.word() == word)
    }

    /// The share of right answers of people who guess.
    pub const fn guessing(self) -> f64 {
        match self {
            Self::Triangle => 1.0 / 3.0,
            Self::DuoTrio | Self::Pair(_) => 0.5,
        }
    }

    /// How many cups stand before each person, a reference among them.
    pub const fn cups(self) -> u32 {
        match self {
            Self::Triangle | Self::DuoTrio => 3,
            Self::Pair(_) => 2,
        }
    }
}

/// The probability of a result at least as far from guessing, by guessing alone: the p value, exact.
///
/// `right` counts right answers; in a two-sided pair, answers for one of the samples, whichever it is. More right answers than
/// people count as all of them.
pub fn guessed(test: BlindTest, people: u32, right: u32) -> f64 {
    let right = right.min(people);
    match test {
        BlindTest::Pair(Sides::Two) => {
            let more = right.max(people - right);
            // Both tails of a symmetric distribution; they meet where the votes are even.
            (2.0 * at_least(people, more, 0.5)).min(1.0)
        }
        _ => at_least(people, right, test.guessing()),
    }
}

/// How many right answers of so many people show a difference at a level: 0.05 for one false alarm in twenty tastings of equal cups.
/// `None` where even all of them don't.
pub fn needed(test: BlindTest, people: u32, level: f64) -> Option<Needed> {
    // Half of the votes or fewer show nothing in a two-sided pair, where fewer votes are as far from even as more.
    let mut least = match test {
        BlindTest::Pair(Sides::Two) => people.div_ceil(2),
        _ => 0,
    };
    let mut most = people.checked_add(1)?;
    while least < most {
        let middle = u32::midpoint(least, most);
        if middle <= people && guessed(test, people, middle) > level {
            least = middle + 1;
        } else {
            most = middle;
        }
    }
    (least <= people).then(|| Needed {
        answers: least,
        chance: guessed(test, people, least),
    })
}
