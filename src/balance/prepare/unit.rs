//! What one unit of an ingredient brings to a drink: a gram, a millilitre, a use of a measure, at a temperature.

use super::per_gram::{PerGram, Sensitivity, density_doubt, polyol_of};
use super::portion::{Portion, portion};
use crate::balance::brewing::{Infusion, RETENTION};
use crate::balance::cause::Cause;
use crate::balance::mix::{Component, Mix};
use crate::balance::published::{polyol, sugar_solution};
use crate::balance::solve::physics::{enthalpy, frozen_at};
use crate::book::{Amount, Basis, Book, Form, Ingredient};
use crate::quantity::Uncertain;

/// Caffeine that a hot brew draws out of leaf, as a part of it: 69 % in the first five minutes, 92 % in ten (Hicks, Hsieh & Bell 1996,
/// Food Res. Int. 29:325).
const CAFFEINE_DRAWN: Uncertain = Uncertain { value: 0.8, u: 0.1 };

/// Caffeine of dry tea leaf that states none, mg/g: black, green and oolong teas from 8 to 37 (Hicks et al. 1996; Sanchez 2017,
/// Foods 6:109), the middle and a quarter of the range.
const CAFFEINE_OF_LEAF: Uncertain = Uncertain {
    value: 25.0,
    u: 7.0,
};

/// How a unit is asked for. Of the amount it counts what one unit of it is, not how many there are.
#[derive(Clone, Copy)]
pub(super) struct Asked<'line> {
    /// What there is a unit of.
    pub(super) of: &'line Amount,
    /// Temperature at which it is measured, °C.
    pub(super) celsius: f64,
    /// Temperature at which it comes to the drink, °C: of what steeps, that of the water.
    pub(super) leaves_at: f64,
    /// Standard uncertainty of that, K, where there is something that it may be off by.
    pub(super) warmer: Option<f64>,
    /// Whether it counts as what dilutes.
    pub(super) dilutes: bool,
    /// Whether it is leaf that is taken out again.
    pub(super) is_steeped: bool,
}

/// What one unit brings to a drink.
pub(super) struct Unit {
    /// One gram as it comes to the drink.
    pub(super) gram: Mix,
    /// What a unit weighs. The offset of its whole amount is left out of it.
    pub(super) portion: Portion,
    /// All of the unit.
    pub(super) mix: Mix,
    /// What is uncertain in what it is made of.
    pub(super) changes: Vec<Sensitivity>,
    /// What it brings more when it comes warmer by the standard uncertainty of its temperature.
    pub(super) warmer: Option<Mix>,
}

impl Unit {
    /// A unit of an ingredient; `None` where nobody knows what it weighs.
    pub(super) fn of(
        book: &Book,
        item: &Ingredient,
        per_gram: &PerGram,
        asked: &Asked<'_>,
    ) -> Option<Self> {
        let extract = asked.is_steeped.then(|| steeped(item, per_gram, None));
        let per_gram = extract.as_ref().unwrap_or(per_gram);
        let portion = portion(book, item, &per_gram.mix, asked.of, asked.celsius)?;
        let portion = with_doubt_of_composition(portion, item, per_gram, asked.celsius);
        let at = |mix: &Mix, celsius: f64| {
            let mut gram = at_temperature(item, mix, celsius);
            if asked.dilutes {
                gram.set(Component::Diluting, gram.get(Component::Mass));
            }
            gram
        };
        let gram = at(&per_gram.mix, asked.leaves_at);
        let change = |varied: &Mix| {
            let mut change = *varied;
            change.add_times(&gram, -1.0);
            change.unknown = 0;
            change.times(portion.grams)
        };
        let changes = per_gram.sensitivities.iter().map(|sensitivity| {
            let mut moved = per_gram.mix;
            moved.add_times(&sensitivity.change, 1.0);
            Sensitivity {
                cause: sensitivity.cause.clone(),
                change: change(&at(&moved, asked.leaves_at)),
            }
        });
        let warmer = asked
            .warmer
            .map(|kelvin| change(&at(&per_gram.mix, asked.leaves_at + kelvin)));
        Some(Self {
            changes: changes.collect(),
            warmer,
            mix: gram.times(portion.grams),
            gram,
            portion,
        })
    }
}

/// What a gram of leaf leaves in the water that it steeps in: its extract and the caffeine that a brew draws, less the water that the
/// wet leaf takes along when it is lifted out. What else it holds stays in the leaf.
///
/// Something other than leaf gives an extract that nobody knows.
pub(super) fn steeped(item: &Ingredient, leaf: &PerGram, extraction: Option<Uncertain>) -> PerGram {
    let method = Infusion::Hot.usual();
    let extraction = extraction.unwrap_or(method.extraction);
    let extract = |extraction: f64, retained: f64, caffeine: f64| {
        let mut mix = Mix::EMPTY;
        mix.set(Component::TeaSolids, extraction);
        mix.set(Component::Water, -retained);
        mix.set(Component::Mass, extraction - retained);
        mix.set(Component::Caffeine, caffeine);
        mix.set(Component::Cost, leaf.mix.get(Component::Cost));
        mix
    };
    let caffeine = if leaf.mix.knows(Component::Caffeine) {
        Uncertain::exact(leaf.mix.get(Component::Caffeine))
    } else {
        CAFFEINE_OF_LEAF
    };
    let drawn = CAFFEINE_DRAWN.value * caffeine.value;
    let mut mix = extract(extraction.value, RETENTION.value, drawn);
    if !leaf.mix.knows(Component::Cost) {
        mix.mark_unknown(Component::Cost);
    }
    if item.form != Form::Leaf {
        mix.unknown |= Mix::UNKNOWN.unknown & !Component::Mass.bit() & !Component::Cost.bit();
    }
    let mut sensitivities = Vec::new();
    let mut vary = |cause: Cause, changed: Mix| {
        let mut change = changed;
        change.add_times(&mix, -1.0);
        change.unknown = 0;
        change.set(Component::Cost, 0.0);
        sensitivities.push(Sensitivity { cause, change });
    };
    let id = || item.id.clone();
    let more = extract(extraction.value + extraction.u, RETENTION.value, drawn);
    vary(Cause::Extraction(id()), more);
    let more = extract(extraction.value, RETENTION.value + RETENTION.u, drawn);
    vary(Cause::Retention(id()), more);
    let u = drawn
        * (CAFFEINE_DRAWN.u / CAFFEINE_DRAWN.value).hypot(caffeine.u / caffeine.value.max(1e-9));
    let more = extract(extraction.value, RETENTION.value, drawn + u);
    vary(
        Cause::Composition(id(), crate::book::Nutrient::Caffeine),
        more,
    );
    PerGram {
        mix,
        sensitivities,
        assumptions: Vec::new(),
    }
}

/// A portion whose volume is weighed by the density of the components: that density is no surer than the composition.
pub(super) fn with_doubt_of_composition(
    portion: Portion,
    item: &Ingredient,
    per_gram: &PerGram,
    celsius: f64,
) -> Portion {
    let by_components = item.density.is_none()
        && item.composition.basis == Basis::Per100Grams
        && item.form != Form::Foam;
    let density = portion.density.map(|(relative, bulk)| {
        if bulk || !by_components {
            return (relative, bulk);
        }
        (relative.hypot(density_doubt(per_gram, celsius)), bulk)
    });
    Portion { density, ..portion }
}

/// One gram at a temperature, with its enthalpy in kJ: frozen as far as it is colder than its freezing point; dry crystals bring
/// the chill of dissolving along.
fn at_temperature(item: &Ingredient, mix: &Mix, celsius: f64) -> Mix {
    let mut gram = frozen_at(mix, celsius);
    let mut heat = enthalpy(&gram, celsius);
    if item.form == Form::Crystals {
        heat += heat_of_crystals(item, mix, celsius);
    }
    gram.set(Component::Heat, heat);
    gram
}

/// By how much crystals hold less than what is dissolved, kJ.
fn heat_of_crystals(item: &Ingredient, mix: &Mix, celsius: f64) -> f64 {
    let sugars = mix.get(Component::Sugars);
    let glucose = mix.get(Component::Glucose);
    let crystal = |grams: f64, heat_of_solution: f64| {
        let dry = sugar_solution::crystal_enthalpy_kj_per_kg(celsius, heat_of_solution);
        grams * (dry - sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(celsius)) / 1000.0
    };
    crystal(
        glucose,
        sugar_solution::GLUCOSE_ANHYDROUS_HEAT_OF_SOLUTION_KJ_PER_KG,
    ) + crystal(
        sugars - glucose,
        sugar_solution::SUCROSE_HEAT_OF_SOLUTION_KJ_PER_KG,
    ) + crystal(
        mix.get(Component::Polyols),
        polyol::heat_of_solution_kj_per_kg(polyol_of(item)),
    )
}
