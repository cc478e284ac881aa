//! Planning a brew: from what is typed to water, leaf, pots and times. Knows no screen.

use crate::balance::{
    Batches, Brew, BrewError, BrewMethod, BrewTimes, BrewYield, Infusion,
    REFERENCE_LEAF_PER_100_ML, brew_for, brew_times, brew_yield, in_batches,
};
use crate::book::{Basis, Evidence, Figure, Ingredient, Nutrient};
use crate::quantity::Uncertain;

/// Poured density of tea leaf, g/ml: between the 0.28 and 0.39 of a tea merchant's scale table (value from memory).
pub(super) const LEAF_GRAMS_PER_MILLILITRE: f64 = 0.335;

/// Which way round the planner is asked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Way {
    /// How much water and leaf so much tea takes.
    ForTea {
        /// Ready tea, g.
        ready: f64,
        /// Tea solids, g per 100 g.
        strength: f64,
    },
    /// How much tea comes off the leaf.
    FromLeaf {
        /// Water poured on, g.
        water: f64,
        /// Dry leaf, g.
        leaf: f64,
    },
}

/// What is asked of the planner.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct BrewQuestion {
    /// How it is brewed.
    pub(super) infusion: Infusion,
    /// Which way round.
    pub(super) way: Way,
    /// The shop's own part of the leaf that dissolves, percent.
    pub(super) extraction: Option<f64>,
    /// The shop's own figure of what a gram of leaf keeps back, g.
    pub(super) retention: Option<f64>,
    /// Caffeine that comes out of a gram of leaf, mg.
    pub(super) caffeine: Option<f64>,
    /// Water that a pot holds, g.
    pub(super) pot: Option<f64>,
    /// When the water is poured on, minutes since midnight.
    pub(super) start: Option<i64>,
    /// How long the tea is held, hours.
    pub(super) holding: Option<f64>,
}

/// A brew as it is planned.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct BrewPlan {
    /// How it is brewed, with the shop's own figures in it.
    pub(super) method: BrewMethod,
    /// All pots together.
    pub(super) whole: Brew,
    /// The same divided over pots; `None` when no pot is named.
    pub(super) batches: Option<Batches>,
    /// What comes off the leaf of all pots.
    pub(super) found: BrewYield,
    /// When; `None` without a time at which it begins.
    pub(super) times: Option<BrewTimes>,
    /// Whether its strength rests on an extraction that the shop has measured.
    pub(super) is_measured: bool,
}

/// The method of an infusion with the shop's own figures.
pub(super) fn method(
    infusion: Infusion,
    extraction: Option<f64>,
    retention: Option<f64>,
) -> BrewMethod {
    let own =
        |value: f64| Uncertain::relative(value, Evidence::Measured.usual_relative_uncertainty());
    let usual = infusion.usual();
    BrewMethod {
        extraction: extraction.map_or(usual.extraction, |percent| own(percent / 100.0)),
        retention: retention.map_or(usual.retention, own),
        ..usual
    }
}

/// The strength of the reference brew, g of tea solids per 100 g.
pub(super) fn reference_strength(method: &BrewMethod) -> Option<f64> {
    let brew = Brew {
        water: 100.0,
        leaf: REFERENCE_LEAF_PER_100_ML,
        caffeine_per_gram: None,
    };
    Some(brew_yield(&brew, method).ok()?.strength.value)
}

/// Plans a brew.
pub(super) fn plan(question: &BrewQuestion) -> Result<BrewPlan, BrewError> {
    let method = method(question.infusion, question.extraction, question.retention);
    let caffeine = question.caffeine.map(|caffeine| {
        Uncertain::relative(caffeine, Evidence::Assumed.usual_relative_uncertainty())
    });
    let brew = match question.way {
        Way::ForTea { ready, strength } => brew_for(ready, strength, &method)?,
        Way::FromLeaf { water, leaf } => Brew {
            water,
            leaf,
            caffeine_per_gram: None,
        },
    };
    let whole = Brew {
        caffeine_per_gram: caffeine,
        ..brew
    };
    let found = brew_yield(&whole, &method)?;
    Ok(BrewPlan {
        batches: question
            .pot
            .map(|pot| in_batches(&whole, pot))
            .transpose()?,
        times: question
            .start
            .map(|start| brew_times(start, &method, question.holding)),
        is_measured: question.extraction.is_some(),
        method,
        whole,
        found,
    })
}

/// The ingredient with the figures of a brew in it; `None` for figures per serving of nothing.
///
/// The figures are per 100 g and are turned into what the ingredient's own are per.
pub(super) fn with_figures(ingredient: &Ingredient, plan: &BrewPlan) -> Option<Ingredient> {
    let factor = match ingredient.composition.basis {
        Basis::Per100Grams => 1.0,
        Basis::Per100Millilitres => ingredient.density?.value,
        Basis::PerServing(grams) => grams / 100.0,
    };
    let mut ingredient = ingredient.clone();
    for (nutrient, figure) in plan.found.figures() {
        // What the caffeine rests on is the figure of the leaf, which nobody has measured here.
        let is_measured = plan.is_measured && nutrient != Nutrient::Caffeine;
        let evidence = if is_measured {
            Evidence::Measured
        } else {
            Evidence::Assumed
        };
        let u = figure.u.map(|u| u * factor);
        let figure = Figure {
            value: figure.value * factor,
            evidence,
            u,
        };
        ingredient.composition.state(nutrient, figure);
    }
    (factor > 0.0).then_some(ingredient)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn question(way: Way) -> BrewQuestion {
        BrewQuestion {
            infusion: Infusion::Hot,
            way,
            extraction: None,
            retention: None,
            caffeine: None,
            pot: None,
            start: None,
            holding: None,
        }
    }

    #[test]
    fn a_cup_of_water_on_a_spoon_of_leaf_gives_about_a_hundred_millilitres() {
        // Common practice, no source: 125 ml of water on a spoon (16 ml) of leaf.
        let leaf = 16.0 * LEAF_GRAMS_PER_MILLILITRE;
        let plan = plan(&question(Way::FromLeaf { water: 125.0, leaf })).unwrap();
        assert!(
            (plan.found.ready.value - 104.0).abs() < 5.0,
            "{:?}",
            plan.found
        );
    }

    #[test]
    fn what_the_shop_has_measured_goes_before_the_usual_figures() {
        let asked = BrewQuestion {
            extraction: Some(30.0),
            ..question(Way::FromLeaf {
                water: 1000.0,
                leaf: 20.0,
            })
        };
        let plan = plan(&asked).unwrap();
        assert!(
            (plan.found.tea_solids.value - 6.0 * 0.92).abs() < 0.01,
            "{:?}",
            plan.found
        );
        assert!(plan.is_measured);
    }

    #[test]
    fn pots_and_times_are_there_when_they_are_asked_for() {
        let asked = BrewQuestion {
            pot: Some(1500.0),
            start: Some(600),
            holding: Some(4.0),
            ..question(Way::ForTea {
                ready: 4000.0,
                strength: 0.3,
            })
        };
        let plan = plan(&asked).unwrap();
        assert_eq!(plan.batches.unwrap().count, 3);
        let times = plan.times.unwrap();
        assert_eq!(
            [times.ready, times.use_by.unwrap()].map(|at| (at.days_later, at.minute)),
            [(0, 10 * 60 + 5), (0, 14 * 60 + 5)]
        );
    }
}
