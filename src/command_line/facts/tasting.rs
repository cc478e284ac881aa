//! What blind tests and refractometer readings show.

use serde_json::{Value, json};

use super::{Fact, ids};
use crate::book::TastingOutcome;
use crate::command_line::json::uncertain;
use crate::tasting::{
    BrixCaution, BrixComparison, CupOrder, DrinkEffect, Effect, Proposal, RankingRemark, Remark,
    RuleErrors, Sample, SetAside, ShareLimits, StoppingRule, WeighedTasting,
};

/// How different two cups are.
pub(in crate::command_line) fn effect(effect: Effect) -> Value {
    match effect {
        Effect::Share(share) => json!({ "share": share }),
        Effect::DPrime(size) => json!({ "d_prime": size }),
    }
}

/// A fact about a plan or a result; shares and probabilities from 0 to 1.
pub(in crate::command_line) fn remark(remark: &Remark) -> Fact {
    let arguments = match *remark {
        Remark::Needed {
            test,
            people,
            answers,
            chance,
        } => {
            json!({ "test": test.word(), "people": people, "answers": answers, "chance": chance })
        }
        Remark::CannotShow {
            people,
            level,
            least,
        } => json!({ "people": people, "level": level, "least": least }),
        Remark::Power {
            people,
            power,
            effect,
        } => json!({ "people": people, "power": power, "effect": self::effect(effect) }),
        Remark::Shows {
            people,
            share,
            power,
        } => json!({ "people": people, "share": share, "power": power }),
        Remark::LeastPanel { panel, effect } => json!({
            "people": panel.people,
            "answers": panel.needed,
            "power": panel.power,
            "effect": self::effect(effect),
        }),
        Remark::NoPanel { most, effect } => {
            json!({ "most": most, "effect": self::effect(effect) })
        }
        Remark::LeastForSimilar {
            people,
            share,
            confidence,
        } => json!({ "people": people, "share": share, "confidence": confidence }),
        Remark::PairShowsMore {
            effect,
            power,
            pair,
        } => json!({ "effect": self::effect(effect), "power": power, "pair": pair }),
        Remark::OneAnswerEach | Remark::HideColour => json!({}),
        Remark::Result {
            test,
            people,
            right,
            chance,
        } => json!({ "test": test.word(), "people": people, "right": right, "chance": chance }),
        Remark::Found { level } => json!({ "level": level }),
        Remark::Tasters {
            share,
            limits: ShareLimits { least, most },
            confidence,
        } => {
            json!({ "share": share, "least": least, "most": most, "confidence": confidence })
        }
        Remark::NotFound { most, confidence } => json!({ "most": most, "confidence": confidence }),
        Remark::Similar { share, confidence } => {
            json!({ "share": share, "confidence": confidence })
        }
        Remark::NotSimilar {
            share,
            most,
            confidence,
        } => json!({ "share": share, "most": most, "confidence": confidence }),
        Remark::Repeated { people, repeated } => {
            json!({ "people": people, "repeated": repeated })
        }
        Remark::Ranking(remark) => ranking(remark),
    };
    Fact::new(remark.word(), arguments)
}

/// The letters of the cups, the most first.
fn letters(order: CupOrder) -> Value {
    json!(order.map(Sample::letter))
}

/// What is told of three cups that are put in order.
fn ranking(remark: RankingRemark) -> Value {
    match remark {
        RankingRemark::Needed {
            people,
            friedman,
            chance,
        } => json!({ "people": people, "friedman": friedman, "chance": chance }),
        RankingRemark::OrderNeeded {
            people,
            page,
            chance,
        } => json!({ "people": people, "page": page, "chance": chance }),
        RankingRemark::CannotShow {
            people,
            level,
            least,
        } => json!({ "people": people, "level": level, "least": least }),
        RankingRemark::Power {
            people,
            power,
            effect,
        }
        | RankingRemark::LeastPanel {
            people,
            power,
            effect,
        } => json!({ "people": people, "power": power, "effect": self::effect(effect) }),
        RankingRemark::Shows {
            people,
            share,
            power,
        } => json!({ "people": people, "share": share, "power": power }),
        RankingRemark::PredictedShowsMore {
            effect,
            power,
            predicted,
        } => json!({ "effect": self::effect(effect), "power": power, "predicted": predicted }),
        RankingRemark::NoPanel { most, effect } => {
            json!({ "most": most, "effect": self::effect(effect) })
        }
        RankingRemark::Sums { sums } => {
            let [a, b, c] = sums.sums;
            json!({ "people": sums.people, "sums": { "A": a, "B": b, "C": c } })
        }
        RankingRemark::Friedman {
            friedman,
            chance,
            is_exact,
        } => json!({ "friedman": friedman, "chance": chance, "exact": is_exact }),
        RankingRemark::Page {
            predicted,
            page,
            chance,
        } => json!({ "order": letters(predicted), "page": page, "chance": chance }),
        RankingRemark::Found { level } | RankingRemark::NotFound { level } => {
            json!({ "level": level })
        }
        RankingRemark::OrderFound { predicted, level } => {
            json!({ "order": letters(predicted), "level": level })
        }
        RankingRemark::LeastDifference { difference, level } => {
            json!({ "difference": difference, "level": level })
        }
        RankingRemark::Apart {
            more,
            less,
            difference,
        } => json!({ "more": more.letter(), "less": less.letter(), "difference": difference }),
        RankingRemark::NotApart { a, b, difference } => {
            json!({ "cups": [a.letter(), b.letter()], "difference": difference })
        }
    }
}

/// A rule for stopping early, or that there is none.
pub(in crate::command_line) fn stopping(rule: Option<&(StoppingRule, RuleErrors)>) -> Fact {
    let Some((rule, errors)) = rule else {
        return Fact::alone("no-rule");
    };
    Fact::new(
        "rule",
        json!({
            "most": rule.most,
            "false_alarm": errors.false_alarm,
            "power": errors.power,
            "people_if_equal": errors.people_if_equal,
            "people_if_different": errors.people_if_different,
        }),
    )
}

/// That some orders are served more often than others.
pub(in crate::command_line) fn unbalanced(people: u32, multiple: u32) -> Fact {
    Fact::new(
        "unbalanced",
        json!({ "people": people, "multiple": multiple }),
    )
}

/// Whether a reading agrees with what was expected.
pub(in crate::command_line) fn brix_comparison(comparison: &BrixComparison) -> Fact {
    let kind = if comparison.agrees() {
        "agrees"
    } else if comparison.apart > 0.0 {
        "above"
    } else {
        "below"
    };
    Fact::new(
        kind,
        json!({
            "read": uncertain(comparison.read),
            "expected": uncertain(comparison.expected),
            "apart": comparison.apart,
        }),
    )
}

/// That a drink has no computed °Brix.
pub(in crate::command_line) fn brix_not_computed() -> Fact {
    Fact::alone("not-computed")
}

/// What to be careful about with a reading.
pub(in crate::command_line) fn brix_caution(caution: &BrixCaution) -> Fact {
    match caution {
        BrixCaution::Misled(by) => Fact::new("misled", json!({ "by": by.word() })),
        BrixCaution::TooWeak { solids } => {
            Fact::new("too-weak", json!({ "brix": uncertain(*solids) }))
        }
        BrixCaution::MoreThanAll => Fact::alone("more-than-all"),
    }
}

/// What came out of a tasting: a kind, and what was counted.
pub(in crate::command_line) fn tasting_outcome(outcome: TastingOutcome) -> Value {
    let times = match outcome {
        TastingOutcome::About { times, .. } => Some(times),
        _ => None,
    };
    let arguments = json!({
        "people": outcome.people(),
        "right": outcome.right(),
        "times": times,
    });
    Fact::new(outcome.word(), arguments).beside(json!({}))
}

/// What all tastings together say of a figure of an ingredient.
pub(in crate::command_line) fn proposal(proposal: &Proposal) -> Fact {
    let tastings = proposal.tastings.iter().map(AsRef::<str>::as_ref);
    let arguments = json!({
        "ingredient": proposal.factor.ingredient.as_str(),
        "of": proposal.factor.what.word(),
        "before_u": proposal.before,
        "times": proposal.times,
        "u": proposal.u,
        "taken_times": proposal.taken.map(|(times, _)| times),
        "taken_u": proposal.taken.map(|(_, u)| u),
        "tastings": tastings.collect::<Vec<_>>(),
    });
    let kind = if proposal.is_reference() {
        "reference"
    } else {
        "proposal"
    };
    Fact::new(kind, arguments)
}

/// What becomes of a drink when a figure is taken over.
pub(in crate::command_line) fn drink_effect(effect: &DrinkEffect) -> Fact {
    let arguments = json!({
        "recipe": effect.recipe.as_str(),
        "version": effect.version.as_ref().map(AsRef::<str>::as_ref),
        "axis": effect.taste.axis.word(),
        "unit": effect.taste.axis.unit(),
        "before": effect.taste.standard,
        "after": effect.taste.value,
        "steps": effect.taste.steps,
        "off_standard_before": effect.off_before,
        "off_standard_after": effect.off_after,
    });
    Fact::new("drink-effect", arguments)
}

/// What is to be said of a tasting that counts.
pub(in crate::command_line) fn weighed_tasting(weighed: &WeighedTasting) -> Fact {
    match &weighed.likely {
        Ok(likely) => Fact::new("contradicts", json!({ "likely": likely })),
        Err(SetAside::NothingCounted) => Fact::alone("nothing-counted"),
        Err(SetAside::Unfinished) => Fact::alone("unfinished"),
        Err(SetAside::NoAxis) => Fact::alone("no-axis"),
        Err(SetAside::OtherAxis(axis)) => Fact::new("other-axis", json!({ "axis": axis.word() })),
        Err(SetAside::NotKnown(axis)) => Fact::new("not-known", json!({ "axis": axis.word() })),
        Err(SetAside::Changed(ingredients)) => {
            Fact::new("changed", json!({ "ingredients": ids(ingredients) }))
        }
        Err(SetAside::NothingDiffers) => Fact::alone("nothing-differs"),
    }
}
