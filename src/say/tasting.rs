//! What a blind test shows and does not show.

use super::{Speaker, say};
use crate::tasting::{
    CupOrder, Effect, RankingRemark, Remark, RuleErrors, Sample, StoppingRule, TooManyCups,
};

/// A probability that rounds to less than this is told as below it.
const LEAST_PERCENT: f64 = 0.01;

impl Speaker<'_> {
    /// A fact about a plan or a result, as a sentence.
    #[expect(clippy::too_many_lines, reason = "a sentence for each kind")]
    pub fn tasting_remark(&self, remark: &Remark) -> String {
        match remark {
            Remark::Needed {
                test,
                people,
                answers,
                chance,
            } => {
                let (people, answers) = (people.to_string(), answers.to_string());
                let chance = self.probability(*chance);
                say!(self, "tasting-needed", test: test.word(), people: people, answers: answers, chance: chance)
            }
            Remark::CannotShow {
                people,
                level,
                least,
            } => {
                let (people, level) = (people.to_string(), self.probability(*level));
                say!(self, "tasting-cannot-show", people: people, level: level, least: least.unwrap_or(0))
            }
            Remark::Power {
                people,
                power,
                effect,
            } => {
                let (people, power) = (people.to_string(), self.whole_percent(*power));
                say!(self, "tasting-power", people: people, power: power, effect: self.effect(*effect))
            }
            Remark::Shows { share, power, .. } => {
                let (share, power) = (self.whole_percent(*share), self.whole_percent(*power));
                say!(self, "tasting-shows", share: share, power: power)
            }
            Remark::LeastPanel { panel, effect } => {
                let (people, answers) = (panel.people.to_string(), panel.needed.to_string());
                let power = self.whole_percent(panel.power);
                let effect = self.effect(*effect);
                say!(self, "tasting-least-panel", people: people, answers: answers, power: power, effect: effect)
            }
            Remark::NoPanel { most, effect } => {
                let (most, effect) = (most.to_string(), self.effect(*effect));
                say!(self, "tasting-no-panel", most: most, effect: effect)
            }
            Remark::LeastForSimilar {
                people,
                share,
                confidence,
            } => {
                let share = self.whole_percent(*share);
                let confidence = self.whole_percent(*confidence);
                say!(self, "tasting-least-for-similar", people: people.unwrap_or(0), share: share, confidence: confidence)
            }
            Remark::PairShowsMore {
                effect,
                power,
                pair,
            } => {
                let (power, pair) = (self.whole_percent(*power), self.whole_percent(*pair));
                say!(self, "tasting-pair-shows-more", effect: self.effect(*effect), power: power, pair: pair)
            }
            Remark::OneAnswerEach => self.word("tasting-one-answer-each").to_owned(),
            Remark::HideColour => self.word("tasting-hide-colour").to_owned(),
            Remark::Result {
                test,
                people,
                right,
                chance,
            } => {
                let (people, right) = (people.to_string(), right.to_string());
                let chance = self.probability(*chance);
                say!(self, "tasting-result", test: test.word(), people: people, right: right, chance: chance)
            }
            Remark::Found { level } => say!(self, "tasting-found", level: self.probability(*level)),
            Remark::Tasters {
                share,
                limits,
                confidence,
            } => {
                let share = self.whole_percent(*share);
                let least = self.whole_percent(limits.least);
                let most = self.whole_percent(limits.most);
                let confidence = self.whole_percent(*confidence);
                say!(self, "tasting-tasters", share: share, least: least, most: most, confidence: confidence)
            }
            Remark::NotFound { most, confidence } => {
                let (most, confidence) =
                    (self.whole_percent(*most), self.whole_percent(*confidence));
                say!(self, "tasting-not-found", most: most, confidence: confidence)
            }
            Remark::Similar { share, confidence } => {
                let share = self.whole_percent(*share);
                let confidence = self.whole_percent(*confidence);
                say!(self, "tasting-similar", share: share, confidence: confidence)
            }
            Remark::NotSimilar {
                share,
                most,
                confidence,
            } => {
                let (share, most) = (self.whole_percent(*share), self.whole_percent(*most));
                let confidence = self.whole_percent(*confidence);
                say!(self, "tasting-not-similar", share: share, most: most, confidence: confidence)
            }
            Remark::Repeated { people, repeated } => {
                say!(self, "tasting-repeated", people: people.to_string(), repeated: *repeated)
            }
            Remark::Ranking(remark) => self.ranking_remark(remark),
        }
    }

    /// A fact about three cups that are put in order, as a sentence.
    #[expect(clippy::too_many_lines, reason = "a sentence for each kind")]
    fn ranking_remark(&self, remark: &RankingRemark) -> String {
        match *remark {
            RankingRemark::Needed {
                people,
                friedman,
                chance,
            } => {
                let friedman = self.trimmed(friedman, "", 2);
                let chance = self.probability(chance);
                say!(self, "tasting-rank-needed", people: people.to_string(), friedman: friedman, chance: chance)
            }
            RankingRemark::OrderNeeded {
                people,
                page,
                chance,
            } => {
                let (people, page) = (people.to_string(), page.to_string());
                let chance = self.probability(chance);
                say!(self, "tasting-rank-order-needed", people: people, page: page, chance: chance)
            }
            RankingRemark::CannotShow {
                people,
                level,
                least,
            } => self.tasting_remark(&Remark::CannotShow {
                people,
                level,
                least,
            }),
            RankingRemark::Power {
                people,
                power,
                effect,
            } => {
                let (power, effect) = (self.whole_percent(power), self.order_effect(effect));
                say!(self, "tasting-power", people: people.to_string(), power: power, effect: effect)
            }
            RankingRemark::Shows { share, power, .. } => {
                let (share, power) = (self.whole_percent(share), self.whole_percent(power));
                say!(self, "tasting-rank-shows", share: share, power: power)
            }
            RankingRemark::PredictedShowsMore {
                effect,
                power,
                predicted,
            } => {
                let (power, predicted) = (self.whole_percent(power), self.whole_percent(predicted));
                let effect = self.order_effect(effect);
                say!(self, "tasting-rank-predicted-shows-more", effect: effect, power: power, predicted: predicted)
            }
            RankingRemark::LeastPanel {
                people,
                power,
                effect,
            } => {
                let (power, effect) = (self.whole_percent(power), self.order_effect(effect));
                say!(self, "tasting-rank-least-panel", people: people.to_string(), power: power, effect: effect)
            }
            RankingRemark::NoPanel { most, effect } => {
                let effect = self.order_effect(effect);
                say!(self, "tasting-no-panel", most: most.to_string(), effect: effect)
            }
            RankingRemark::Sums { sums } => {
                let [a, b, c] = sums.sums.map(|sum| sum.to_string());
                let people = sums.people.to_string();
                say!(self, "tasting-rank-sums", people: people, a: a, b: b, c: c)
            }
            RankingRemark::Friedman {
                friedman,
                chance,
                is_exact,
            } => {
                let friedman = self.trimmed(friedman, "", 2);
                let counted = if is_exact { "exact" } else { "approximate" };
                let chance = self.probability(chance);
                say!(self, "tasting-rank-friedman", friedman: friedman, counted: counted, chance: chance)
            }
            RankingRemark::Page {
                predicted,
                page,
                chance,
            } => {
                let (order, page) = (order_letters(predicted), page.to_string());
                let chance = self.probability(chance);
                say!(self, "tasting-rank-page", order: order, page: page, chance: chance)
            }
            RankingRemark::Found { level } => {
                say!(self, "tasting-rank-found", level: self.probability(level))
            }
            RankingRemark::OrderFound { predicted, level } => {
                let (order, level) = (order_letters(predicted), self.probability(level));
                say!(self, "tasting-rank-order-found", order: order, level: level)
            }
            RankingRemark::NotFound { level } => {
                say!(self, "tasting-rank-not-found", level: self.probability(level))
            }
            RankingRemark::LeastDifference { difference, level } => {
                let (difference, level) = (difference.to_string(), self.probability(level));
                say!(self, "tasting-rank-least-difference", difference: difference, level: level)
            }
            RankingRemark::Apart {
                more,
                less,
                difference,
            } => {
                let (more, less) = (more.letter(), less.letter());
                say!(self, "tasting-rank-apart", more: more, less: less, difference: difference.to_string())
            }
            RankingRemark::NotApart { a, b, difference } => {
                let (a, b) = (a.letter(), b.letter());
                say!(self, "tasting-rank-not-apart", a: a, b: b, difference: difference.to_string())
            }
        }
    }

    fn order_effect(&self, effect: Effect) -> String {
        match effect {
            Effect::Share(share) => {
                say!(self, "tasting-rank-effect-share", share: self.whole_percent(share))
            }
            Effect::DPrime(size) => {
                say!(self, "tasting-rank-effect-d-prime", size: self.trimmed(size, "", 2))
            }
        }
    }

    /// How a rule that stops early does, and how it is used.
    pub fn stopping_rule(&self, rule: &StoppingRule, errors: &RuleErrors) -> String {
        say!(
            self,
            "tasting-rule",
            most: rule.most.to_string(),
            alarms: self.probability(errors.false_alarm),
            power: self.whole_percent(errors.power),
            equal: self.number(errors.people_if_equal, 1),
            different: self.number(errors.people_if_different, 1),
        )
    }

    /// Why there is no rule for stopping early.
    pub fn no_stopping_rule(&self) -> &'static str {
        self.word("tasting-no-rule")
    }

    /// Why cups can't all have a code.
    pub fn too_many_cups(&self, error: TooManyCups) -> String {
        say!(self, "tasting-too-many", most: error.most.to_string())
    }

    /// That some orders are served more often than others.
    pub fn unbalanced_orders(&self, people: u32, multiple: u32) -> String {
        say!(self, "tasting-unbalanced", people: people.to_string(), multiple: multiple.to_string())
    }

    fn effect(&self, effect: Effect) -> String {
        match effect {
            Effect::Share(share) => {
                say!(self, "tasting-effect-share", share: self.whole_percent(share))
            }
            Effect::DPrime(size) => {
                say!(self, "tasting-effect-d-prime", size: self.trimmed(size, "", 2))
            }
        }
    }

    /// "61 %".
    fn whole_percent(&self, share: f64) -> String {
        self.in_unit(share * 100.0, "%", 0)
    }

    /// "1.8 %", with two significant digits below 10 %, and never 0.
    pub(super) fn probability(&self, probability: f64) -> String {
        let percent = probability * 100.0;
        if percent < LEAST_PERCENT {
            return format!("<\u{a0}{}", self.in_unit(LEAST_PERCENT, "%", 2));
        }
        let decimals = if percent < 1.0 {
            2
        } else {
            usize::from(percent < 10.0)
        };
        self.trimmed(percent, "%", decimals)
    }
}

/// "A, C, B": the most first.
fn order_letters(order: CupOrder) -> String {
    order.map(Sample::letter).join(", ")
}
