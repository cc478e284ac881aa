//! What a ranking of three cups shows and does not show, and what a panel could: facts, each of which becomes a sentence.

use super::power::Effect;
use super::ranking::{
    CupOrder, MOST_EXACT, Prediction, RankSums, friedman_chance, least_rank_difference,
    least_ranking_panel, page_chance, page_needed, ranking_power, ranks_needed, shown_order_share,
};
use super::serving_order::Sample;

/// What is agreed on before a ranking.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RankingTerms {
    /// The risk of finding a difference between equal cups, 0 to 1.
    pub level: f64,
    /// The wanted probability of finding a difference that is there, 0 to 1.
    pub power: f64,
    /// The order that was predicted, the most first.
    pub predicted: Option<CupOrder>,
}

/// A fact about a ranking.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RankingRemark {
    /// Friedman's `F` must reach so much.
    Needed {
        /// With so many people.
        people: u32,
        /// At least so much.
        friedman: f64,
        /// The probability of that by guessing.
        chance: f64,
    },
    /// Page's `L` must reach so much, for an order that was predicted.
    OrderNeeded {
        /// With so many people.
        people: u32,
        /// At least so much.
        page: u32,
        /// The probability of that by guessing.
        chance: f64,
    },
    /// No answers of so many people show a difference.
    CannotShow {
        /// So many people.
        people: u32,
        /// The level.
        level: f64,
        /// The smallest panel that can, where there is one.
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
    /// The smallest share of people who taste the order that a panel finds often enough.
    Shows {
        /// So many people.
        people: u32,
        /// The share.
        share: f64,
        /// How often.
        power: f64,
    },
    /// A predicted order is found more often.
    PredictedShowsMore {
        /// The difference.
        effect: Effect,
        /// How often any order is found.
        power: f64,
        /// How often a predicted one is.
        predicted: f64,
    },
    /// The smallest panel for a difference.
    LeastPanel {
        /// So many people.
        people: u32,
        /// The probability with which they find it.
        power: f64,
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
    /// What came out.
    Sums {
        /// What people answered.
        sums: RankSums,
    },
    /// How far from chance it is.
    Friedman {
        /// `F`.
        friedman: f64,
        /// The probability of as much by guessing.
        chance: f64,
        /// Whether that was counted order by order.
        is_exact: bool,
    },
    /// How far from chance it is in the direction that was predicted.
    Page {
        /// The order, the most first.
        predicted: CupOrder,
        /// `L`.
        page: u32,
        /// The probability of as much by guessing.
        chance: f64,
    },
    /// The cups differ.
    Found {
        /// The level.
        level: f64,
    },
    /// The predicted order is found.
    OrderFound {
        /// The order, the most first.
        predicted: CupOrder,
        /// The level.
        level: f64,
    },
    /// No difference is found, which is not the same as the same taste.
    NotFound {
        /// The level.
        level: f64,
    },
    /// So far apart two rank sums must be.
    LeastDifference {
        /// So far.
        difference: u32,
        /// With this probability at most by guessing.
        level: f64,
    },
    /// Two cups are that far apart.
    Apart {
        /// The one with more.
        more: Sample,
        /// The one with less.
        less: Sample,
        /// How far their rank sums are apart.
        difference: u32,
    },
    /// Two cups are not: nothing is shown of them.
    NotApart {
        /// The one.
        a: Sample,
        /// The other.
        b: Sample,
        /// How far their rank sums are apart.
        difference: u32,
    },
}

impl RankingRemark {
    /// The word for it.
    pub const fn word(&self) -> &'static str {
        match self {
            Self::Needed { .. } => "rank-needed",
            Self::OrderNeeded { .. } => "rank-order-needed",
            Self::CannotShow { .. } => "rank-cannot-show",
            Self::Power { .. } => "rank-power",
            Self::Shows { .. } => "rank-shows",
            Self::PredictedShowsMore { .. } => "rank-predicted-shows-more",
            Self::LeastPanel { .. } => "rank-least-panel",
            Self::NoPanel { .. } => "rank-no-panel",
            Self::Sums { .. } => "rank-sums",
            Self::Friedman { .. } => "rank-friedman",
            Self::Page { .. } => "rank-page",
            Self::Found { .. } => "rank-found",
            Self::OrderFound { .. } => "rank-order-found",
            Self::NotFound { .. } => "rank-not-found",
            Self::LeastDifference { .. } => "rank-least-difference",
            Self::Apart { .. } => "rank-apart",
            Self::NotApart { .. } => "rank-not-apart",
        }
    }
}

impl RankingTerms {
    fn prediction(&self) -> Prediction {
        match self.predicted {
            Some(_) => Prediction::Order,
            None => Prediction::None,
        }
    }
}

/// What a panel can show and what it takes, before a ranking.
pub(super) fn plan(
    terms: &RankingTerms,
    people: Option<u32>,
    effect: Effect,
) -> Vec<RankingRemark> {
    let mut remarks = people.map_or_else(Vec::new, |people| panel(terms, people, effect));
    let least = least_ranking_panel(terms.level, effect, terms.power, terms.prediction());
    remarks.push(match least {
        Some((people, power)) => RankingRemark::LeastPanel {
            people,
            power,
            effect,
        },
        None => RankingRemark::NoPanel {
            most: MOST_EXACT,
            effect,
        },
    });
    remarks
}

fn panel(terms: &RankingTerms, people: u32, effect: Effect) -> Vec<RankingRemark> {
    let Some(needed) = needed(terms, people) else {
        return vec![cannot_show(terms, people)];
    };
    let mut remarks = vec![needed];
    let found = ranking_power(people, terms.level, effect, terms.prediction());
    if let Some(power) = found {
        remarks.push(RankingRemark::Power {
            people,
            power,
            effect,
        });
    }
    remarks.extend(shows(terms, people));
    let predicted = ranking_power(people, terms.level, effect, Prediction::Order);
    if let (None, Some(power), Some(predicted)) = (terms.predicted, found, predicted)
        && predicted > power
    {
        remarks.push(RankingRemark::PredictedShowsMore {
            effect,
            power,
            predicted,
        });
    }
    remarks
}

/// What must come out of so many people.
fn needed(terms: &RankingTerms, people: u32) -> Option<RankingRemark> {
    if terms.predicted.is_some() {
        let (page, chance) = page_needed(people, terms.level)?;
        return Some(RankingRemark::OrderNeeded {
            people,
            page,
            chance,
        });
    }
    let needed = ranks_needed(people, terms.level)?;
    Some(RankingRemark::Needed {
        people,
        friedman: needed.friedman,
        chance: needed.chance,
    })
}

fn cannot_show(terms: &RankingTerms, people: u32) -> RankingRemark {
    RankingRemark::CannotShow {
        people,
        level: terms.level,
        least: (1..=MOST_EXACT).find(|people| needed(terms, *people).is_some()),
    }
}

fn shows(terms: &RankingTerms, people: u32) -> Option<RankingRemark> {
    let share = shown_order_share(people, terms.level, terms.power, terms.prediction())?;
    Some(RankingRemark::Shows {
        people,
        share,
        power: terms.power,
    })
}

/// What a ranking shows, and what it does not.
pub(super) fn verdict(terms: &RankingTerms, sums: RankSums) -> Vec<RankingRemark> {
    let (people, level) = (sums.people, terms.level);
    let mut remarks = vec![RankingRemark::Sums { sums }];
    let chance = if let Some(predicted) = terms.predicted {
        let page = sums.page(predicted);
        let chance = page_chance(people, page);
        remarks.push(RankingRemark::Page {
            predicted,
            page,
            chance,
        });
        chance
    } else {
        let chance = friedman_chance(&sums);
        remarks.push(RankingRemark::Friedman {
            friedman: sums.friedman(),
            chance,
            is_exact: people <= MOST_EXACT,
        });
        chance
    };
    if chance > level {
        remarks.push(RankingRemark::NotFound { level });
        match needed(terms, people) {
            Some(needed) => remarks.push(needed),
            None if people <= MOST_EXACT => remarks.push(cannot_show(terms, people)),
            None => {}
        }
        remarks.extend(shows(terms, people));
    } else if let Some(predicted) = terms.predicted {
        remarks.push(RankingRemark::OrderFound { predicted, level });
    } else {
        remarks.push(RankingRemark::Found { level });
        remarks.extend(pairs(&sums, level));
    }
    remarks
}

/// Which cups are further apart than chance, once the three as a whole are.
fn pairs(sums: &RankSums, level: f64) -> Vec<RankingRemark> {
    let Some(least) = least_rank_difference(sums.people, level) else {
        return Vec::new();
    };
    let mut remarks = vec![RankingRemark::LeastDifference {
        difference: least,
        level,
    }];
    let [a, b, c] = Sample::ALL;
    for (first, second) in [(a, b), (a, c), (b, c)] {
        let (one, other) = (sums.sums[first as usize], sums.sums[second as usize]);
        let difference = one.abs_diff(other);
        // A small sum is of the cup with more.
        let (more, less) = if one <= other {
            (first, second)
        } else {
            (second, first)
        };
        remarks.push(if difference >= least {
            RankingRemark::Apart {
                more,
                less,
                difference,
            }
        } else {
            RankingRemark::NotApart {
                a: first,
                b: second,
                difference,
            }
        });
    }
    remarks
}
