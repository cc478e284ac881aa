//! A blind test that may stop early: Wald's sequential ratio with an end, and its errors worked out exactly.
//!
//! After each answer the likelihood ratio of "so different" against "guessing" is looked at. It shows a difference from `1/α` up
//! and none from `β` down; in between the next person tastes, and who is still undecided after the last person has shown nothing.
//! `1/α` instead of Wald's `(1 − β)/α` (Sequential tests of statistical hypotheses, Ann. Math. Stat. 16, 1945: 117; value from memory) keeps the false
//! alarms at or below `α` for every end (Ville's inequality); likewise `β` for the lower limit.
//! Looking at a result after each person and stopping when it looks good, without such a rule, finds a difference in equal cups far
//! more often than its level says.

use super::blind_test::{BlindTest, Sides};
use super::power::{Effect, right_answers};

/// A rule for stopping early.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StoppingRule {
    /// The log of the ratio that a right answer adds.
    right: f64,
    /// The log of the ratio that a wrong answer adds.
    wrong: f64,
    /// From here up there is a difference.
    upper: f64,
    /// From here down there is none of the size that was asked for.
    lower: f64,
    /// How many people taste at most.
    pub most: u32,
    guessing: f64,
    tasting: f64,
}

/// What a rule says after some answers.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// The next person tastes.
    GoOn,
    /// There is a difference.
    Difference,
    /// No difference of the size that was asked for.
    NoSuchDifference,
    /// The last person has tasted, and nothing is shown.
    Undecided,
}

/// How a rule does: exact, by the paths that answers can take.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RuleErrors {
    /// The probability of finding a difference in equal cups.
    pub false_alarm: f64,
    /// The probability of finding it in cups that differ as much as was asked for.
    pub power: f64,
    /// How many people taste equal cups, on average.
    pub people_if_equal: f64,
    /// How many people taste cups that differ as much as was asked for, on average.
    pub people_if_different: f64,
}

impl StoppingRule {
    /// A rule; `None` for a two-sided pair, for which none is offered, for a difference of no size and for a level or risk that is
    /// none.
    pub fn new(test: BlindTest, effect: Effect, level: f64, miss: f64, most: u32) -> Option<Self> {
        let guessing = test.guessing();
        let tasting = right_answers(test, effect).min(1.0 - f64::EPSILON);
        let is_risk = |risk: f64| risk > 0.0 && risk < 0.5;
        if test == BlindTest::Pair(Sides::Two)
            || tasting <= guessing
            || !is_risk(level)
            || !is_risk(miss)
        {
            return None;
        }
        Some(Self {
            right: (tasting / guessing).ln(),
            wrong: ((1.0 - tasting) / (1.0 - guessing)).ln(),
            upper: -level.ln(),
            lower: miss.ln(),
            most,
            guessing,
            tasting,
        })
    }

    /// What the rule says once so many people have answered, if it said to go on until then.
    pub fn standing(&self, people: u32, right: u32) -> Standing {
        let wrong = people.saturating_sub(right);
        let ratio = f64::from(right) * self.right + f64::from(wrong) * self.wrong;
        if ratio >= self.upper {
            Standing::Difference
        } else if ratio <= self.lower {
            Standing::NoSuchDifference
        } else if people >= self.most {
            Standing::Undecided
        } else {
            Standing::GoOn
        }
    }

    /// What the rule says of answers in their order, and after how many of them; later ones change nothing.
    pub fn after(&self, answers: impl IntoIterator<Item = bool>) -> (Standing, u32) {
        let (mut people, mut right) = (0, 0);
        for answer in answers {
            people += 1;
            right += u32::from(answer);
            let standing = self.standing(people, right);
            if standing != Standing::GoOn {
                return (standing, people);
            }
        }
        (self.standing(people, right), people)
    }

    /// After so many people: at most so many right answers end it without a difference, at least so many with one.
    pub fn limits(&self, people: u32) -> (Option<u32>, Option<u32>) {
        let shows = |wanted: Standing| move |right: &u32| self.standing(people, *right) == wanted;
        let none = (0..=people).rev().find(shows(Standing::NoSuchDifference));
        (none, (0..=people).find(shows(Standing::Difference)))
    }

    /// The errors of the rule.
    pub fn errors(&self) -> RuleErrors {
        let (false_alarm, people_if_equal) = self.outcome(self.guessing);
        let (power, people_if_different) = self.outcome(self.tasting);
        RuleErrors {
            false_alarm,
            power,
            people_if_equal,
            people_if_different,
        }
    }

    /// The probability of finding a difference, and how many people taste on average, when each is right with a probability.
    fn outcome(&self, each: f64) -> (f64, f64) {
        // By the number of right answers: the probability of coming here undecided.
        let mut open = vec![1.0];
        let (mut found, mut expected) = (0.0, 0.0);
        for people in 1..=self.most {
            let going_on: f64 = open.iter().sum();
            expected += going_on;
            let mut next = vec![0.0; open.len() + 1];
            for (right, probability) in open.iter().enumerate() {
                next[right] += probability * (1.0 - each);
                next[right + 1] += probability * each;
            }
            for (right, probability) in (0u32..).zip(next.iter_mut()) {
                let standing = self.standing(people, right);
                if standing == Standing::Difference {
                    found += *probability;
                }
                if standing != Standing::GoOn {
                    *probability = 0.0;
                }
            }
            open = next;
        }
        (found, expected)
    }
}
