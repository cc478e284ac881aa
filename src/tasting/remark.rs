//! What a blind test shows and does not show, and what a panel could: facts, each of which becomes a sentence.

use super::answers::Counted;
use super::blind_test::{BlindTest, Sides, guessed, needed};
use super::power::{Effect, Panel, least_panel, power, power_with, share, shown_share};
use super::ranking::RankSums;
use super::ranking_remark::{self, RankingRemark, RankingTerms};
use super::similarity::{ShareLimits, least_panel_for_similar, share_limits};

/// No panel is looked for beyond so many people.
pub const MOST_PEOPLE: u32 = 1000;

/// What is agreed on before a tasting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Terms {
    /// The test.
    pub test: BlindTest,
    /// The risk of finding a difference between equal cups, 0 to 1.
    pub level: f64,
    /// The wanted probability of finding a difference that is there, 0 to 1.
    pub power: f64,
    /// How sure limits are, 0 to 1.
    pub confidence: f64,
}

/// A fact about a plan or a result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Remark {
    /// So many answers are needed.
    Needed {
        /// Of what test.
        test: BlindTest,
        /// By so many people.
        people: u32,
        /// At least so many.
        answers: u32,
        /// The probability of that by guessing.
        chance: f64,
    },
    /// No answers of so many people show a difference.
    CannotShow {
        /// So many people.
        people: u32,
        /// The level.
        level: f64,
        /// The smallest panel that can.
        least: Option<u32>,
    },
    /// How often this panel finds a difference.
    Power {
        /// So many people.
        people: u32,
        /// The probability.
        power: f64,
        /// Of such a difference.
        effect: Effect,
    },
    /// The smallest share of people who taste a difference that a panel finds often enough.
    Shows {
        /// So many people.
        people: u32,
        /// The share.
        share: f64,
        /// How often.
        power: f64,
    },
    /// The smallest panel for a difference.
    LeastPanel {
        /// The panel.
        panel: Panel,
        /// The difference.
        effect: Effect,
    },
    /// No panel of up to so many people finds it often enough.
    NoPanel {
        /// So many.
        most: u32,
        /// The difference.
        effect: Effect,
    },
    /// Equal cups are shown to be alike with so many people.
    LeastForSimilar {
        /// So many people, where there are enough at all.
        people: Option<u32>,
        /// Up to this share may still taste a difference.
        share: f64,
        /// How sure.
        confidence: f64,
    },
    /// A pair finds the same cups different more often.
    PairShowsMore {
        /// The difference.
        effect: Effect,
        /// How often this test does.
        power: f64,
        /// How often a pair does whose direction was agreed on.
        pair: f64,
    },
    /// One answer a person.
    OneAnswerEach,
    /// Cups that look different must be hidden.
    HideColour,
    /// What came out.
    Result {
        /// Of what test.
        test: BlindTest,
        /// So many people.
        people: u32,
        /// So many right answers.
        right: u32,
        /// The probability of a result as far from guessing, by guessing.
        chance: f64,
    },
    /// There is a difference.
    Found {
        /// The level.
        level: f64,
    },
    /// How many people taste it.
    Tasters {
        /// The best estimate.
        share: f64,
        /// The limits.
        limits: ShareLimits,
        /// How sure each limit is.
        confidence: f64,
    },
    /// There is none to be seen, which is not the same as the same taste.
    NotFound {
        /// So many may taste one.
        most: f64,
        /// How sure.
        confidence: f64,
    },
    /// Alike, in the sense that was agreed on.
    Similar {
        /// At most so many may taste a difference, and fewer do.
        share: f64,
        /// How sure.
        confidence: f64,
    },
    /// Not shown to be alike.
    NotSimilar {
        /// So many were agreed on.
        share: f64,
        /// So many may taste one.
        most: f64,
        /// How sure.
        confidence: f64,
    },
    /// Answers that people gave again.
    Repeated {
        /// So many people.
        people: u32,
        /// So many further answers.
        repeated: u32,
    },
    /// Of three cups that are put in order.
    Ranking(RankingRemark),
}

impl Remark {
    /// The word for it.
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Needed { .. } => "needed",
            Self::CannotShow { .. } => "cannot-show",
            Self::Power { .. } => "power",
            Self::Shows { .. } => "shows",
            Self::LeastPanel { .. } => "least-panel",
            Self::NoPanel { .. } => "no-panel",
            Self::LeastForSimilar { .. } => "least-for-similar",
            Self::PairShowsMore { .. } => "pair-shows-more",
            Self::OneAnswerEach => "one-answer-each",
            Self::HideColour => "hide-colour",
            Self::Result { .. } => "result",
            Self::Found { .. } => "found",
            Self::Tasters { .. } => "tasters",
            Self::NotFound { .. } => "not-found",
            Self::Similar { .. } => "similar",
            Self::NotSimilar { .. } => "not-similar",
            Self::Repeated { .. } => "repeated",
            Self::Ranking(remark) => remark.word(),
        }
    }
}

/// What a panel can show and what it takes, before a tasting. `similar` is the share of people who may still taste a difference
/// between cups that count as alike.
pub fn plan_remarks(
    terms: &Terms,
    people: Option<u32>,
    effect: Effect,
    similar: Option<f64>,
) -> Vec<Remark> {
    let Terms {
        test, level, power, ..
    } = *terms;
    let mut remarks = Vec::new();
    if let Some(people) = people {
        remarks.extend(panel_remarks(terms, people, effect));
    }
    remarks.push(match least_panel(test, level, effect, power, MOST_PEOPLE) {
        Some(panel) => Remark::LeastPanel { panel, effect },
        None => Remark::NoPanel {
            most: MOST_PEOPLE,
            effect,
        },
    });
    if let Some(share) = similar {
        let confidence = terms.confidence;
        remarks.push(Remark::LeastForSimilar {
            people: least_panel_for_similar(test, share, confidence, power, MOST_PEOPLE),
            share,
            confidence,
        });
    }
    remarks.extend([Remark::OneAnswerEach, Remark::HideColour]);
    remarks
}

fn panel_remarks(terms: &Terms, people: u32, effect: Effect) -> Vec<Remark> {
    let Terms { test, level, .. } = *terms;
    let Some(needed) = needed(test, people, level) else {
        return vec![cannot_show(test, people, level)];
    };
    let found = power_with(test, people, needed, effect);
    let mut remarks = vec![
        Remark::Needed {
            test,
            people,
            answers: needed.answers,
            chance: needed.chance,
        },
        Remark::Power {
            people,
            power: found,
            effect,
        },
    ];
    if let Some(share) = shown_share(test, people, level, terms.power) {
        remarks.push(Remark::Shows {
            people,
            share,
            power: terms.power,
        });
    }
    // The same cups in another test are as far apart in d′, not in the share of people.
    if let (Effect::DPrime(_), BlindTest::Triangle | BlindTest::DuoTrio) = (effect, test) {
        let pair = power(BlindTest::Pair(Sides::One), people, level, effect);
        if pair > found {
            remarks.push(Remark::PairShowsMore {
                effect,
                power: found,
                pair,
            });
        }
    }
    remarks
}

/// What a tasting shows, and what it does not.
pub fn verdict_remarks(terms: &Terms, counted: Counted, similar: Option<f64>) -> Vec<Remark> {
    let Terms {
        test,
        level,
        confidence,
        ..
    } = *terms;
    let Counted {
        people,
        right,
        repeated,
    } = counted;
    let chance = guessed(test, people, right);
    let limits = share_limits(test, people, right, confidence);
    let mut remarks = vec![Remark::Result {
        test,
        people,
        right,
        chance,
    }];
    if chance <= level {
        remarks.push(Remark::Found { level });
        let most = test.votes(people, right);
        remarks.push(Remark::Tasters {
            share: share(test, f64::from(most) / f64::from(people)),
            limits,
            confidence,
        });
    } else {
        match needed(test, people, level) {
            Some(needed) => remarks.push(Remark::Needed {
                test,
                people,
                answers: needed.answers,
                chance: needed.chance,
            }),
            None => remarks.push(cannot_show(test, people, level)),
        }
        remarks.push(Remark::NotFound {
            most: limits.most,
            confidence,
        });
        if let Some(share) = shown_share(test, people, level, terms.power) {
            remarks.push(Remark::Shows {
                people,
                share,
                power: terms.power,
            });
        }
    }
    if let Some(share) = similar {
        let most = limits.most;
        remarks.push(if most <= share {
            Remark::Similar { share, confidence }
        } else {
            Remark::NotSimilar {
                share,
                most,
                confidence,
            }
        });
    }
    if repeated > 0 {
        remarks.push(Remark::Repeated { people, repeated });
    }
    remarks
}

fn cannot_show(test: BlindTest, people: u32, level: f64) -> Remark {
    Remark::CannotShow {
        people,
        level,
        least: (1..=MOST_PEOPLE).find(|people| needed(test, *people, level).is_some()),
    }
}

/// What a panel can show of three cups and what it takes, before a ranking.
pub fn ranking_plan(terms: &RankingTerms, people: Option<u32>, effect: Effect) -> Vec<Remark> {
    let remarks = ranking_remark::plan(terms, people, effect).into_iter();
    let remarks = remarks.map(Remark::Ranking);
    remarks
        .chain([Remark::OneAnswerEach, Remark::HideColour])
        .collect()
}

/// What a ranking shows, and what it does not.
pub fn ranking_verdict(terms: &RankingTerms, sums: RankSums) -> Vec<Remark> {
    let RankSums {
        people, repeated, ..
    } = sums;
    let remarks = ranking_remark::verdict(terms, sums).into_iter();
    let again = (repeated > 0).then_some(Remark::Repeated { people, repeated });
    remarks.map(Remark::Ranking).chain(again).collect()
}
