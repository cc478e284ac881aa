//! From the label of an ingredient to a mix of one gram.
//!
//! What a label does not state is not zero: its component keeps the known part and is marked. Two things close gaps
//! without a guess: when what is stated adds up to the whole, nothing is left for the rest, and a part of nothing is nothing
//! (no fat, no saturates). What is left to 100 g is water in a liquid; in a powder it is the stated moisture (4 %, assumed,
//! when none is stated) and undeclared solids.

use super::cause::Cause;
use super::label::Label;
use super::mix::{
    Component, FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
use super::physics::liquid_volume;
use crate::book::{
    Basis, CarbohydrateKind, Composition, Figure, Form, HighPotencySweetener, Ingredient,
    IngredientId, Nutrient, SugarProfile,
};

/// Moisture of a powder that states none, g per 100 g (assumed).
const ASSUMED_MOISTURE: f64 = 4.0;

/// Standard uncertainty of that moisture, g per 100 g (assumed: rectangular, 1 to 7).
const ASSUMED_MOISTURE_UNCERTAINTY: f64 = 1.7;

/// Share of fructose that may be glucose instead (or the other way) in a mixed sugar profile, as standard uncertainty.
/// Honey and invert syrups vary by some 2 % of their sugars (assumed).
const SPLIT_UNCERTAINTY: f64 = 0.02;

/// What is stated may miss the whole by this much and still count as closed, g per 100 g: a label rounds to a tenth.
const CLOSED_WITHIN: f64 = 0.11;

/// The flavours and high-potency sweeteners that have a slot in one question, in the order of their slots.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Slots {
    /// Names of flavours.
    pub flavours: Vec<String>,
    /// High-potency sweeteners.
    pub sweeteners: Vec<HighPotencySweetener>,
}

impl Slots {
    /// The slot of a flavour, given one if there is room.
    pub(super) fn flavour(&mut self, name: &str) -> Option<usize> {
        slot_in(
            &mut self.flavours,
            FLAVOUR_SLOTS,
            |known| known == name,
            || name.to_owned(),
        )
    }

    /// The slot of a sweetener, given one if there is room.
    pub(super) fn sweetener(&mut self, sweetener: HighPotencySweetener) -> Option<usize> {
        slot_in(
            &mut self.sweeteners,
            HIGH_POTENCY_SLOTS,
            |known| *known == sweetener,
            || sweetener,
        )
    }
}

fn slot_in<T>(
    taken: &mut Vec<T>,
    limit: usize,
    same: impl Fn(&T) -> bool,
    new: impl Fn() -> T,
) -> Option<usize> {
    taken.iter().position(same).or_else(|| {
        (taken.len() < limit).then(|| {
            taken.push(new());
            taken.len() - 1
        })
    })
}

/// A change of a mix when one cause is off by its standard uncertainty.
#[derive(Clone, Debug, PartialEq)]
pub struct Sensitivity {
    /// The cause.
    pub cause: Cause,
    /// The change of the mix, per gram or per unit as the mix itself.
    pub change: Mix,
}

/// One gram of an ingredient at 0 °C (without heat and cost), and how each of its figures moves it.
#[derive(Clone, Debug, PartialEq)]
pub struct PerGram {
    /// The mix of one gram.
    pub mix: Mix,
    /// What is uncertain in it.
    pub sensitivities: Vec<Sensitivity>,
}

/// The mix of one gram, from the label alone.
pub fn per_gram(ingredient: &Ingredient, slots: &mut Slots) -> PerGram {
    let composition = &ingredient.composition;
    let (factor, density) = per_100_grams_factor(ingredient);
    let scaled = |figure: Figure, nutrient: Nutrient| {
        // °Brix is a percentage of mass whatever the label is per.
        if nutrient == Nutrient::Brix {
            figure.value
        } else {
            figure.value * factor
        }
    };
    let mut label = Label {
        stated: [None; Nutrient::ALL.len()],
        moisture: ASSUMED_MOISTURE,
        split_shift: 0.0,
        undeclared_as_solids: 0.0,
    };
    for (nutrient, figure) in &composition.figures {
        label.stated[*nutrient as usize] = Some(scaled(*figure, *nutrient));
    }
    let base = solids(ingredient, &label);
    let mut sensitivities = Vec::new();
    let mut vary = |cause: Cause, varied: &Label| {
        let change = difference(&solids(ingredient, varied), &base);
        if change.of.iter().any(|amount| amount.abs() > 1e-15) {
            sensitivities.push(Sensitivity { cause, change });
        }
    };
    for (nutrient, figure) in &composition.figures {
        let u = scaled(
            Figure {
                value: figure.standard_uncertainty(),
                ..*figure
            },
            *nutrient,
        );
        let varied = label.with_off(*nutrient, u, figure.u.is_some());
        vary(
            Cause::Composition(ingredient.id.clone(), *nutrient),
            &varied,
        );
    }
    if has_mixed_profile(composition) {
        vary(
            Cause::SugarSplit(ingredient.id.clone()),
            &Label {
                split_shift: SPLIT_UNCERTAINTY,
                ..label
            },
        );
    }
    vary_undeclared(ingredient, &label, &base, &mut vary);
    let mut per_gram = PerGram {
        mix: base,
        sensitivities,
    };
    add_flavours(ingredient, slots, &mut per_gram);
    add_sweeteners(ingredient, factor, slots, &mut per_gram);
    if let (Basis::Per100Millilitres, Some(density)) = (composition.basis, density) {
        add_density(&ingredient.id, density, &mut per_gram);
    }
    per_gram
}

/// What the figures are multiplied with to be per 100 g, and the density that this rests on.
fn per_100_grams_factor(ingredient: &Ingredient) -> (f64, Option<Figure>) {
    match ingredient.composition.basis {
        Basis::PerServing(grams) if grams > 0.0 => (100.0 / grams, None),
        Basis::Per100Grams | Basis::PerServing(_) => (1.0, None),
        Basis::Per100Millilitres => {
            let density = ingredient
                .density
                .unwrap_or_else(|| density_from_label(ingredient));
            (1.0 / density.value.max(0.1), Some(density))
        }
    }
}

/// The density of a liquid whose label is per 100 ml and states none: that of a sugar solution which holds as many grams
/// of solids in 100 ml, found by repeating. Within 2 % for sweetened drinks and milk.
fn density_from_label(ingredient: &Ingredient) -> Figure {
    let stated = |nutrient| {
        ingredient
            .composition
            .get(nutrient)
            .map_or(0.0, |figure| figure.value)
    };
    let solids =
        stated(Nutrient::Carbohydrate).max(stated(Nutrient::Sugars)) + stated(Nutrient::Protein);
    let mut density = 1.0;
    for _ in 0..20 {
        let fraction = (solids / 100.0 / density).clamp(0.0, 0.85);
        density = super::published::sugar_solution::density_kg_per_m3(fraction, 20.0) / 1000.0;
    }
    Figure {
        value: density,
        evidence: crate::book::Evidence::Assumed,
        u: Some(0.02 * density),
    }
}

fn has_mixed_profile(composition: &Composition) -> bool {
    matches!(
        composition.sugar_profile,
        Some(
            SugarProfile::Invert
                | SugarProfile::Honey
                | SugarProfile::Hfcs42
                | SugarProfile::Hfcs55
                | SugarProfile::GlucoseSyrup { .. }
                | SugarProfile::Own { .. }
        )
    )
}

fn vary_undeclared(
    ingredient: &Ingredient,
    label: &Label,
    base: &Mix,
    vary: &mut impl FnMut(Cause, &Label),
) {
    let cause = || Cause::Undeclared(ingredient.id.clone());
    if ingredient.form.rest_is_water() {
        // Water by default; when solids are missing from the label, up to two thirds of the rest may be sugar (a syrup).
        let gap = !base.knows(Component::Water);
        if gap {
            vary(
                cause(),
                &Label {
                    undeclared_as_solids: 0.65 / 3.0_f64.sqrt(),
                    ..*label
                },
            );
        }
    } else if label.get(Nutrient::Water).is_none() {
        let varied = Label {
            moisture: label.moisture + ASSUMED_MOISTURE_UNCERTAINTY,
            ..*label
        };
        vary(cause(), &varied);
    }
}

fn difference(one: &Mix, other: &Mix) -> Mix {
    let mut difference = Mix::EMPTY;
    for (slot, (one, other)) in one.of.iter().zip(&other.of).enumerate() {
        difference.of[slot] = one - other;
    }
    difference
}

/// The mix of one gram from the numbers of a label.
fn solids(ingredient: &Ingredient, label: &Label) -> Mix {
    let composition = &ingredient.composition;
    let mut mix = Mix::EMPTY;
    mix.set(Component::Mass, 1.0);
    if ingredient.form == Form::Ice {
        mix.set(Component::Ice, 1.0);
        return mix;
    }
    let closed = is_closed(composition, label);
    // When what is stated adds up to the whole, there is none of what is not stated.
    put_stated(&mut mix, Component::Fat, label.get(Nutrient::Fat), closed);
    let sugars = stated_sugars(composition, label);
    let carbohydrate = stated_carbohydrate(composition, label);
    // Carbohydrate that has its fibre in it is not told apart by adding up.
    let fibre_hidden = carbohydrate.is_none() && label.get(Nutrient::Carbohydrate).is_some();
    put_stated(
        &mut mix,
        Component::Carbohydrate,
        carbohydrate,
        closed && !fibre_hidden,
    );
    // A part of nothing is nothing; a part of something stated is not known by adding up.
    let none_of = |whole: Option<f64>| whole.map_or(closed, |whole| whole == 0.0);
    put_stated(
        &mut mix,
        Component::Saturates,
        label.get(Nutrient::Saturates),
        none_of(label.get(Nutrient::Fat)),
    );
    put_stated(&mut mix, Component::Sugars, sugars, none_of(carbohydrate));
    put_stated(
        &mut mix,
        Component::Polyols,
        label.get(Nutrient::Polyols),
        none_of(carbohydrate),
    );
    put_stated(
        &mut mix,
        Component::Fibre,
        label.get(Nutrient::Fibre),
        closed && !fibre_hidden,
    );
    put_stated(
        &mut mix,
        Component::Protein,
        label.get(Nutrient::Protein),
        closed,
    );
    put_stated(&mut mix, Component::Salt, label.get(Nutrient::Salt), closed);
    put_stated(&mut mix, Component::Acid, label.get(Nutrient::Acid), closed);
    put_stated(
        &mut mix,
        Component::TeaSolids,
        label.get(Nutrient::TeaSolids),
        closed,
    );
    // Insoluble solids are a part of the others; only those that are stated are left out of °Brix.
    put_stated(
        &mut mix,
        Component::Insoluble,
        label.get(Nutrient::Insoluble),
        true,
    );
    // Caffeine is too little to be missed when the rest adds up: only pure water, sugar and the like are free of it without
    // saying so. Leaf, cocoa and coffee come with protein or tea solids.
    let no_plant = [Nutrient::TeaSolids, Nutrient::Protein]
        .into_iter()
        .all(|part| label.get(part).unwrap_or(0.0) == 0.0);
    let no_caffeine = closed && no_plant;
    match label.get(Nutrient::Caffeine) {
        Some(milligrams) => mix.set(Component::Caffeine, milligrams / 100.0),
        None if no_caffeine => {}
        None => mix.mark_unknown(Component::Caffeine),
    }
    if carbohydrate.is_none() {
        // What is known of it: the sugars and polyols that are part of it. When the label adds up, they are all of it.
        mix.set(
            Component::Carbohydrate,
            mix.get(Component::Sugars) + mix.get(Component::Polyols),
        );
    }
    divide_sugars(composition, label, &mut mix);
    put_water(ingredient, label, closed, &mut mix);
    mix
}

/// Puts a figure per 100 g into the mix of one gram; without one the component is marked, unless there is none of it.
fn put_stated(mix: &mut Mix, component: Component, per_100_grams: Option<f64>, none: bool) {
    match per_100_grams {
        Some(value) => mix.set(component, value / 100.0),
        None if none => {}
        None => mix.mark_unknown(component),
    }
}

/// Whether what is stated adds up to the whole, so that nothing is left for what is not stated.
fn is_closed(composition: &Composition, label: &Label) -> bool {
    let fibre = match composition.carbohydrate_kind {
        CarbohydrateKind::WithoutFibre => label.get(Nutrient::Fibre).unwrap_or(0.0),
        CarbohydrateKind::WithFibre => 0.0,
    };
    let parts = [
        Nutrient::Water,
        Nutrient::Fat,
        Nutrient::Protein,
        Nutrient::Salt,
        Nutrient::Acid,
        Nutrient::TeaSolids,
    ];
    let carbohydrate = label
        .get(Nutrient::Carbohydrate)
        .or(label.get(Nutrient::Sugars))
        .unwrap_or(0.0);
    let sum: f64 = parts
        .into_iter()
        .filter_map(|part| label.get(part))
        .sum::<f64>()
        + carbohydrate
        + fibre;
    sum >= 100.0 - CLOSED_WITHIN
}

/// Sugars as stated or, for a syrup that is given by its °Brix alone, all of its soluble solids.
fn stated_sugars(composition: &Composition, label: &Label) -> Option<f64> {
    let by_brix = || {
        let alone = composition.get(Nutrient::Carbohydrate).is_none();
        label.get(Nutrient::Brix).filter(|_| alone)
    };
    label.get(Nutrient::Sugars).or_else(by_brix)
}

/// Carbohydrate without fibre.
fn stated_carbohydrate(composition: &Composition, label: &Label) -> Option<f64> {
    let stated = label.get(Nutrient::Carbohydrate);
    match composition.carbohydrate_kind {
        CarbohydrateKind::WithoutFibre => stated.or_else(|| {
            label
                .get(Nutrient::Brix)
                .filter(|_| label.get(Nutrient::Sugars).is_none())
        }),
        // Without the fibre figure, carbohydrate without fibre can't be told.
        CarbohydrateKind::WithFibre => Some((stated? - label.get(Nutrient::Fibre)?).max(0.0)),
    }
}

fn put_water(ingredient: &Ingredient, label: &Label, closed: bool, mix: &mut Mix) {
    let solid_sum = 1.0 - mix.undeclared_solids();
    let rest = (1.0 - solid_sum).max(0.0);
    let stated = label.get(Nutrient::Water).map(|water| water / 100.0);
    let by_brix = label
        .get(Nutrient::Brix)
        .filter(|_| ingredient.form == Form::Syrup)
        .map(|brix| 1.0 - brix / 100.0);
    let solids_missing = !mix.knows(Component::Carbohydrate)
        || !mix.knows(Component::Fat)
        || !mix.knows(Component::Protein);
    let water = match stated.or(by_brix) {
        Some(water) => water.min(1.0),
        None if ingredient.form.rest_is_water() => rest * (1.0 - label.undeclared_as_solids),
        None => (label.moisture / 100.0).min(rest),
    };
    mix.set(Component::Water, water);
    let stated = label.get(Nutrient::Water).is_some() || by_brix.is_some();
    if !stated
        && !closed
        && (solids_missing || matches!(ingredient.form, Form::Paste | Form::Pieces))
    {
        mix.mark_unknown(Component::Water);
    }
}

fn divide_sugars(composition: &Composition, label: &Label, mix: &mut Mix) {
    let sugars = mix.get(Component::Sugars);
    let sugars_known = mix.knows(Component::Sugars);
    if sugars == 0.0 && sugars_known {
        return;
    }
    match composition.sugar_profile {
        Some(profile) => {
            let fractions = profile_fractions(profile, label.split_shift);
            for (component, fraction) in Component::SUGAR_KINDS.into_iter().zip(fractions) {
                mix.set(component, sugars * fraction);
                if !sugars_known && fraction > 0.0 {
                    mix.mark_unknown(component);
                }
            }
        }
        None => Component::SUGAR_KINDS
            .into_iter()
            .for_each(|component| mix.mark_unknown(component)),
    }
    match composition.free_sugar_fraction {
        Some(fraction) => mix.set(Component::FreeSugars, sugars * fraction),
        None => mix.mark_unknown(Component::FreeSugars),
    }
    if !sugars_known {
        mix.mark_unknown(Component::FreeSugars);
    }
}

/// Fractions of sucrose, glucose, fructose, lactose, maltose and other sugars.
///
/// HFCS: Hanover & White 1993, Am J Clin Nutr 58:724S, of the solids (42 % fructose, 53 % glucose, 5 % other; 55, 42, 3).
/// Honey: USDA SR28 NDB 19296, of its sugars (fructose 50 %, glucose 44 %, sucrose 1 %, maltose 2 %, galactose 4 %, rounded).
/// Glucose syrup: its sugars are taken as glucose and maltose; the share of glucose is taken as the dextrose equivalent
/// (assumed; at DE 42 some 19 % of the solids are glucose and 14 % maltose, value from memory).
/// `shift` moves that much from glucose to fructose.
fn profile_fractions(profile: SugarProfile, shift: f64) -> [f64; 6] {
    let mut fractions = match profile {
        SugarProfile::Sucrose => [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
        SugarProfile::Invert => [0.0, 0.5, 0.5, 0.0, 0.0, 0.0],
        SugarProfile::Hfcs42 => [0.0, 0.53, 0.42, 0.0, 0.0, 0.05],
        SugarProfile::Hfcs55 => [0.0, 0.42, 0.55, 0.0, 0.0, 0.03],
        SugarProfile::Fructose => [0.0, 0.0, 1.0, 0.0, 0.0, 0.0],
        SugarProfile::Glucose => [0.0, 1.0, 0.0, 0.0, 0.0, 0.0],
        SugarProfile::Lactose => [0.0, 0.0, 0.0, 1.0, 0.0, 0.0],
        SugarProfile::Honey => [0.01, 0.43, 0.50, 0.0, 0.02, 0.04],
        SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        } => {
            let glucose = (dextrose_equivalent / 100.0).clamp(0.0, 1.0);
            [0.0, glucose, 0.0, 0.0, 1.0 - glucose, 0.0]
        }
        SugarProfile::Own {
            sucrose,
            glucose,
            fructose,
            lactose,
            maltose,
            other,
        } => [sucrose, glucose, fructose, lactose, maltose, other],
    };
    if matches!(profile, SugarProfile::GlucoseSyrup { .. }) {
        fractions[1] += shift;
        fractions[4] -= shift;
    } else {
        fractions[2] += shift;
        fractions[1] -= shift;
    }
    fractions
}

fn add_flavours(ingredient: &Ingredient, slots: &mut Slots, per_gram: &mut PerGram) {
    for (at, flavour) in ingredient.composition.flavours.iter().enumerate() {
        let Some(slot) = slots.flavour(&flavour.name) else {
            continue;
        };
        let figure = flavour.figure();
        per_gram.mix.of[flavour_slot(slot)] += figure.value;
        let mut change = Mix::EMPTY;
        change.of[flavour_slot(slot)] = figure.standard_uncertainty();
        per_gram.sensitivities.push(Sensitivity {
            cause: Cause::Flavour(ingredient.id.clone(), at),
            change,
        });
    }
}

fn add_sweeteners(ingredient: &Ingredient, factor: f64, slots: &mut Slots, per_gram: &mut PerGram) {
    for (at, amount) in ingredient.composition.high_potency.iter().enumerate() {
        let Some(slot) = slots.sweetener(amount.sweetener) else {
            continue;
        };
        per_gram.mix.of[high_potency_slot(slot)] += amount.milligrams.value * factor / 100.0;
        let mut change = Mix::EMPTY;
        change.of[high_potency_slot(slot)] =
            amount.milligrams.standard_uncertainty() * factor / 100.0;
        let cause = Cause::HighPotency(ingredient.id.clone(), at);
        per_gram.sensitivities.push(Sensitivity { cause, change });
    }
}

/// Figures per 100 ml divide by the density: all of them fall together when it rises.
fn add_density(id: &IngredientId, density: Figure, per_gram: &mut PerGram) {
    let relative = density.standard_uncertainty() / density.value.max(0.1);
    let mut change = per_gram.mix.times(-relative);
    change.unknown = 0;
    // The mass of a gram is a gram; what the solids lose is water.
    change.set(Component::Mass, 0.0);
    let solids = -(per_gram.mix.dry_matter()) * relative;
    change.set(Component::Water, -solids);
    per_gram.sensitivities.push(Sensitivity {
        cause: Cause::Density(id.clone()),
        change,
    });
}

/// Density of an ingredient at a temperature, g/ml: the stated one at 20 °C, moved to the temperature as the components
/// of the ingredient move; without a stated one, that of its components (2 % assumed uncertainty).
pub(super) fn density_at(ingredient: &Ingredient, mix: &Mix, celsius: f64) -> Figure {
    let model = |celsius: f64| mix.get(Component::Mass) / liquid_volume(mix, 0.0, celsius);
    if let Some(stated) = ingredient.density {
        return Figure {
            value: stated.value * model(celsius) / model(20.0),
            ..stated
        };
    }
    let value = model(celsius);
    Figure {
        value,
        evidence: crate::book::Evidence::Assumed,
        u: Some(0.02 * value),
    }
}
