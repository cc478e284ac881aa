//! What a millilitre of an ingredient weighs, and how sure that is.

use super::label::per_100_grams_factor;
use crate::balance::mix::{Component, Mix};
use crate::balance::solve::physics::{liquid_volume, volume_uncertainty};
use crate::book::{Basis, Evidence, Figure, Form, Ingredient};
use crate::quantity::Uncertain;

/// Density of a foam that states none, g/ml: whipped creams and toppings of USDA SR28 weigh 0.20 (from a pressure can) to 0.68
/// (whipped cream cheese).
const FOAM_DENSITY: Uncertain = Uncertain {
    value: 0.42,
    u: 0.14,
};

pub(super) fn foam_density(item: &Ingredient) -> Figure {
    item.density.unwrap_or(Figure {
        value: FOAM_DENSITY.value,
        evidence: Evidence::Assumed,
        u: Some(FOAM_DENSITY.u),
    })
}

/// Density of the liquid of a mix at a temperature, g/ml.
pub(super) fn liquid_density(mix: &Mix, celsius: f64) -> f64 {
    mix.get(Component::Mass) / liquid_volume(mix, mix.get(Component::Ice), celsius)
}

/// Standard uncertainty of a density, g/ml: the stated one, else what weighing 100 ml, a specification sheet or a table is good for
/// (assumed).
pub(super) fn density_uncertainty(density: Figure) -> f64 {
    let relative = match density.evidence {
        Evidence::Measured | Evidence::Label => 0.01,
        Evidence::SpecSheet | Evidence::Published => 0.005,
        Evidence::Assumed => 0.03,
    };
    density.u.unwrap_or(relative * density.value)
}

/// Density of an ingredient at a temperature, g/ml: the stated one at 20 °C, moved to the temperature as the components
/// of the ingredient move; without a stated one, that which its label per 100 ml rests on, or that of its components.
pub(super) fn density_at(item: &Ingredient, mix: &Mix, celsius: f64) -> Figure {
    let at_20 = match (item.form, item.density, item.composition.basis) {
        (Form::Foam, ..) => Some(foam_density(item)),
        (_, Some(stated), _) => Some(stated),
        (_, None, Basis::Per100Millilitres) => per_100_grams_factor(item).1,
        (_, None, _) => None,
    };
    let expansion = liquid_density(mix, celsius) / liquid_density(mix, 20.0);
    let figure = at_20.unwrap_or_else(|| {
        let value = liquid_density(mix, 20.0);
        Figure {
            value,
            evidence: Evidence::Assumed,
            u: Some(volume_uncertainty(mix, celsius) * value),
        }
    });
    Figure {
        value: figure.value * expansion,
        u: Some(density_uncertainty(figure) * expansion),
        ..figure
    }
}

/// The part of a measure that pieces of a size fill, with its standard uncertainty: that of equal spheres in random close packing.
///
/// The pieces of USDA SR28 with an odd number (14 measures of fruit, raw beans and dry coconut) fill 0.34 to 0.79 of a cup of the density
/// of fruit, and scatter by 0.14 about 0.64; those with an even number check it.
pub(super) const PACKING: Uncertain = Uncertain {
    value: 0.64,
    u: 0.14,
};
