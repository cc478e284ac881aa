//! Planning a brew: from what is typed to water, leaf, pots and times. Knows no screen.

use crate::balance::{
    Batches, Brew, BrewError, BrewMethod, BrewTimes, BrewYield, HouseBrew, Infusion,
    LEAF_BULK_DENSITY, brew_for, brew_times, brew_yield, in_batches,
};
use crate::book::{Basis, Evidence, Figure, Ingredient, Nutrient};
use crate::quantity::Uncertain;

/// The tea that is brewed, with what the book says of it.
#[derive(Clone, Copy)]
pub(super) struct TeaInHand<'frame> {
    /// The tea, or the leaf of one.
    pub(super) tea: Option<&'frame Ingredient>,
    /// The brew that it is, when the house makes it of leaf.
    pub(super) house: Option<&'frame HouseBrew>,
    /// The leaf, where the book has it.
    pub(super) leaf: Option<&'frame Ingredient>,
}

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
        /// Dry leaf, g: no surer than its poured density where it was measured by volume.
        leaf: Uncertain,
    },
}

/// What is asked of the planner.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct BrewQuestion {
    /// How it is brewed, as it usually is.
    pub(super) usual: BrewMethod,
    /// Which way round.
    pub(super) way: Way,
    /// The shop's own part of the leaf that dissolves, percent.
    pub(super) extraction: Option<f64>,
    /// The shop's own figure of what a gram of leaf keeps back, g.
    pub(super) retention: Option<f64>,
    /// How long it steeps here, minutes.
    pub(super) minutes: Option<f64>,
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

impl BrewPlan {
    /// What the strength rests on.
    pub(super) fn evidence(&self) -> Evidence {
        if self.is_measured {
            Evidence::Measured
        } else {
            Evidence::Assumed
        }
    }
}

/// How an infusion usually is: as the house brews it, where it does.
pub(super) fn usual_method(house: Option<&HouseBrew>, infusion: Infusion) -> BrewMethod {
    let of_house = house.map(|house| house.method);
    of_house
        .filter(|method| method.infusion == infusion)
        .unwrap_or_else(|| infusion.usual())
}

/// What a millilitre of the leaf weighs as it is poured, g.
pub(super) fn leaf_density(leaf: Option<&Ingredient>) -> Uncertain {
    let stated = leaf.and_then(|leaf| leaf.bulk_density);
    stated.map_or(LEAF_BULK_DENSITY, |figure| Uncertain {
        value: figure.value,
        u: figure.standard_uncertainty(),
    })
}

/// The usual method with the shop's own figures.
pub(super) fn method(
    usual: &BrewMethod,
    extraction: Option<f64>,
    retention: Option<f64>,
) -> BrewMethod {
    let own =
        |value: f64| Uncertain::relative(value, Evidence::Measured.usual_relative_uncertainty());
    BrewMethod {
        extraction: extraction.map_or(usual.extraction, |percent| own(percent / 100.0)),
        retention: retention.map_or(usual.retention, own),
        ..*usual
    }
}

/// The strength of a brew, g of tea solids per 100 g.
pub(super) fn strength(brew: &Brew, method: &BrewMethod) -> Option<f64> {
    Some(brew_yield(brew, method).ok()?.strength.value)
}

/// Plans a brew.
pub(super) fn plan(question: &BrewQuestion) -> Result<BrewPlan, BrewError> {
    let usual = BrewMethod {
        steep_minutes: question.minutes.unwrap_or(question.usual.steep_minutes),
        ..question.usual
    };
    let method = method(&usual, question.extraction, question.retention);
    let caffeine = question.caffeine.map(|caffeine| {
        Uncertain::relative(caffeine, Evidence::Assumed.usual_relative_uncertainty())
    });
    let brew = match question.way {
        Way::ForTea { ready, strength } => brew_for(ready, strength, &method)?,
        Way::FromLeaf { water, leaf } => Brew {
            water,
            leaf: leaf.value,
            leaf_u: leaf.u,
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

/// The ingredient with the figures of a brew in it; `None` for what is dry, which has figures of its own whatever is brewed of it,
/// and for figures per serving of nothing.
///
/// The figures are per 100 g and are turned into what the ingredient's own are per.
pub(super) fn with_figures(ingredient: &Ingredient, plan: &BrewPlan) -> Option<Ingredient> {
    if ingredient.form.is_dry() {
        return None;
    }
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
            usual: Infusion::Hot.usual(),
            minutes: None,
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
        let leaf = Uncertain {
            value: 16.0 * LEAF_BULK_DENSITY.value,
            u: 16.0 * LEAF_BULK_DENSITY.u,
        };
        let plan = plan(&question(Way::FromLeaf { water: 125.0, leaf })).unwrap();
        assert!(
            (plan.found.ready.value - 104.0).abs() < 5.0,
            "{:?}",
            plan.found
        );
    }

    #[test]
    fn leaf_by_volume_makes_strength_and_yield_less_sure() {
        let strength = |leaf| {
            let water = 1000.0;
            plan(&question(Way::FromLeaf { water, leaf }))
                .unwrap()
                .found
        };
        let weighed = strength(Uncertain::exact(20.0));
        let poured = strength(Uncertain {
            value: 20.0,
            u: 4.0,
        });
        assert!(poured.strength.u > 1.2 * weighed.strength.u);
        assert!(poured.ready.u > weighed.ready.u && poured.spent.u > weighed.spent.u);
    }

    #[test]
    fn a_brew_is_never_written_onto_what_is_dry() {
        let asked = question(Way::ForTea {
            ready: 1000.0,
            strength: 0.5,
        });
        let plan = plan(&asked).unwrap();
        let id = crate::book::IngredientId::new("tea").unwrap();
        let mut tea = Ingredient::new(id, "tea".into());
        for form in crate::book::Form::ALL {
            tea.form = form;
            let is_written = with_figures(&tea, &plan).is_some();
            assert_eq!(is_written, !form.is_dry(), "{form:?}");
        }
    }

    #[test]
    fn what_the_shop_has_measured_goes_before_the_usual_figures() {
        let asked = BrewQuestion {
            extraction: Some(30.0),
            ..question(Way::FromLeaf {
                water: 1000.0,
                leaf: Uncertain::exact(20.0),
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
            minutes: Some(12.0),
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
            [(0, 10 * 60 + 12), (0, 14 * 60 + 12)]
        );
    }
}
