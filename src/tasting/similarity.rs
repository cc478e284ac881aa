//! How different two cups may still be after a blind test: the limits of the share of people who taste it.
//!
//! The limits are those of Clopper & Pearson for the share of right answers (Biometrika 26, 1934: 404; value from memory), which are exact: they
//! hold at least as often as they say, for every share and any panel. ISO 4120:2021, Annex B, gives the normal approximation
//! `1.5·(x/n) − 0.5 + 1.5·z·√((n·x − x²)/n³)` (value from memory), which is too narrow for small panels.

use super::blind_test::{BlindTest, Sides};
use super::distributions::{at_least, at_most, first};
use super::power::{Effect, right_answers, share};
use crate::balance::number::crossing;

/// The share of people who taste a difference: at least and at most so many, each with the confidence that was asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShareLimits {
    /// The lower limit, 0 to 1.
    pub least: f64,
    /// The upper limit, 0 to 1.
    pub most: f64,
}

/// The one-sided limits of the share of right answers.
pub fn right_limits(people: u32, right: u32, confidence: f64) -> ShareLimits {
    let right = right.min(people);
    let miss = 1.0 - confidence;
    ShareLimits {
        least: if right == 0 {
            0.0
        } else {
            crossing((0.0, 1.0), miss, |each| at_least(people, right, each))
        },
        most: if right == people {
            1.0
        } else {
            // Fewer answers become less likely as each gets likelier.
            crossing((0.0, 1.0), -miss, |each| -at_most(people, right, each))
        },
    }
}

/// The one-sided limits of the share of people who taste the difference. In a two-sided pair it counts for the sample with more votes.
pub fn share_limits(test: BlindTest, people: u32, right: u32, confidence: f64) -> ShareLimits {
    let votes = test.votes(people, right.min(people));
    let limits = right_limits(people, votes, confidence);
    ShareLimits {
        least: share(test, limits.least),
        most: share(test, limits.most),
    }
}

/// The most right answers after which fewer than a share of people taste the difference, with a confidence; `None` where not even
/// none right says so, because the panel is too small.
pub fn most_right_for_similar(
    test: BlindTest,
    people: u32,
    share: f64,
    confidence: f64,
) -> Option<u32> {
    // The upper limit is at or below a share where so few right answers are as unlikely at that share as the confidence asks for.
    let each = right_answers(test, Effect::Share(share));
    let is_similar = |right: u32| at_most(people, right, each) <= 1.0 - confidence;
    let (fewest, end) = (test.fewest_votes(people), people.checked_add(1)?);
    let first_apart = first(fewest, end, |right| !is_similar(right));
    (first_apart > fewest).then(|| first_apart - 1)
}

/// The smallest panel in which the answers of people who all guess show with a wanted probability that fewer than a share of people
/// taste the difference; `None` where more than `most` people are needed.
pub fn least_panel_for_similar(
    test: BlindTest,
    share: f64,
    confidence: f64,
    wanted: f64,
    most: u32,
) -> Option<u32> {
    (1..=most).find(|people| {
        let right = most_right_for_similar(test, *people, share, confidence);
        right.is_some_and(|right| {
            let too_many = 1.0 - at_most(*people, right, test.guessing());
            // Of a two-sided pair both samples must stay below.
            let tails = if test == BlindTest::Pair(Sides::Two) {
                2.0
            } else {
                1.0
            };
            1.0 - tails * too_many >= wanted
        })
    })
}
