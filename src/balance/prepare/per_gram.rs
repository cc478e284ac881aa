//! From the label of an ingredient to a mix of one gram.
//!
//! What a label does not state is not zero: its component keeps the known part and is marked. What the kind of an ingredient
//! settles ([`super::kind`]) is taken for granted, with a name and a doubt of its own. What is left to 100 g is water in a
//! liquid; in a powder it is the stated or usual moisture and undeclared solids.

use super::densities::{density_uncertainty, foam_density, liquid_density};
use super::kind::Nature;
use super::label::{Label, UNDECLARED_SOLIDS, factor_of, per_100_grams_factor};
use super::sugar_profile::{profile_fractions, sugars_of_glucose_syrup};
use crate::balance::assumption::{Assumed, Assumption, Because};
use crate::balance::cause::Cause;
use crate::balance::mix::{Component, Mix, flavour_slot, high_potency_slot};
use crate::balance::published::freezing::Solute;
use crate::balance::published::sweetness::{self, RelativeSweetness};
use crate::balance::published::{energy, polyol};
use crate::balance::slots::Slots;
use crate::book::{
    Basis, Form, Ingredient, IngredientId, Nutrient, PolyolKind, SugarProfile, TastedFactor,
};
use crate::quantity::{KILOJOULES_PER_KILOCALORIE, Uncertain};

/// Share of fructose that may be glucose instead (or the other way) in a mixed sugar profile, as standard uncertainty.
/// Honey and invert syrups vary by some 2 % of their sugars (assumed).
const SPLIT_UNCERTAINTY: f64 = 0.02;

/// Part of the energy of a polyol of no known kind by which it may be less, as standard uncertainty: one in seven kinds has none
/// (assumed).
const PERHAPS_ERYTHRITOL: f64 = 0.3;

/// What weighs, warms and takes room without being stated.
const SOLIDS: u64 = Component::Fat.bit()
    | Component::Carbohydrate.bit()
    | Component::Sugars.bit()
    | Component::Polyols.bit()
    | Component::Fibre.bit()
    | Component::Protein.bit()
    | Component::Salt.bit()
    | Component::Acid.bit()
    | Component::TeaSolids.bit();

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
    /// What nobody has stated and is taken for granted, and of which ingredient: this one, or one that it is made of.
    pub assumptions: Vec<(IngredientId, Assumption)>,
}

/// The mix of one gram, from the label alone.
pub fn per_gram(item: &Ingredient, slots: &mut Slots) -> PerGram {
    let nature = Nature::of(item);
    let (factor, density) = per_100_grams_factor(item);
    let moisture = nature.moisture(item);
    let mut label = Label::printed(item, factor, moisture.value);
    let mut assumptions = label.assume(item, &nature, factor);
    let base = solids(item, &nature, &label);
    let mut making = Making {
        item,
        nature: &nature,
        base,
        sensitivities: Vec::new(),
    };
    making.vary_stated(&label, factor);
    making.vary_assumed(&label, &assumptions);
    making.vary_split(&label, &mut assumptions);
    making.vary_undeclared(&label, moisture, &mut assumptions);
    making.vary_free_sugars(&mut assumptions);
    making.vary_polyol(&mut assumptions);
    if let (Basis::Per100Millilitres, Some(density)) = (item.composition.basis, density) {
        // Figures per 100 ml divide by the density: all of them fall together when it rises.
        let relative = density_uncertainty(density) / density.value.max(0.1);
        let mut off = Label::printed(item, factor / (1.0 + relative), moisture.value);
        off.assume(item, &nature, factor / (1.0 + relative));
        making.vary(Cause::Density(item.id.clone()), &off);
    }
    if item.density.is_none() && !item.form.is_dry() && item.form != Form::Ice {
        assumptions.push(Assumption {
            what: Assumed::Density,
            figure: None,
            because: Because::Kind(nature.kind),
        });
    }
    if item.form == Form::Pieces && item.bulk_density.is_none() {
        assumptions.push(Assumption {
            what: Assumed::Packing,
            figure: Some(super::densities::PACKING),
            because: Because::Kind(nature.kind),
        });
    }
    if item.form == Form::Leaf && item.bulk_density.is_none() {
        assumptions.push(Assumption {
            what: Assumed::PouredDensity,
            figure: Some(crate::balance::brewing::LEAF_BULK_DENSITY),
            because: Because::Kind(nature.kind),
        });
    }
    if making.base.unknown & SOLIDS != 0 {
        assumptions.push(Assumption {
            what: Assumed::Rest,
            figure: None,
            because: Because::Kind(nature.kind),
        });
    }
    assumptions.extend(no_sweetener(item, &nature));
    assumptions.extend(flavours_of_no_known_strength(item, &nature));
    let named = assumptions
        .into_iter()
        .map(|assumption| (item.id.clone(), assumption));
    let mut per_gram = PerGram {
        mix: making.base,
        sensitivities: making.sensitivities,
        assumptions: named.collect(),
    };
    add_tasted_sweetness(item, &mut per_gram);
    add_flavours(item, slots, &mut per_gram);
    add_sweeteners(item, &nature, factor, slots, &mut per_gram);
    add_air(item, &mut per_gram);
    per_gram
}

/// That nothing is said of a high-potency sweetener is taken for there being none, unless one is likely.
fn no_sweetener(item: &Ingredient, nature: &Nature) -> Option<Assumption> {
    let is_silent = item.composition.high_potency.is_empty() && item.statement.trim().is_empty();
    (is_silent && !nature.hides_sweetener(&item.composition)).then_some(Assumption {
        what: Assumed::NoSweetener,
        figure: Some(Uncertain::exact(0.0)),
        because: Because::Kind(nature.kind),
    })
}

/// A gram in the making: the label is moved cause by cause, and what that does to the mix is kept.
struct Making<'item> {
    item: &'item Ingredient,
    nature: &'item Nature,
    base: Mix,
    sensitivities: Vec<Sensitivity>,
}

impl Making<'_> {
    fn vary(&mut self, cause: Cause, varied: &Label) {
        let change = difference(&solids(self.item, self.nature, varied), &self.base);
        self.push(cause, &change);
    }

    fn push(&mut self, cause: Cause, change: &Mix) {
        if change.of.iter().any(|amount| amount.abs() > 1e-15) {
            let change = *change;
            self.sensitivities.push(Sensitivity { cause, change });
        }
    }

    fn vary_stated(&mut self, label: &Label, factor: f64) {
        let composition = &self.item.composition;
        for (nutrient, printed) in &composition.printed {
            let u = composition.standard_uncertainty(*nutrient).unwrap_or(0.0);
            let u = u * factor_of(*nutrient, factor);
            let varied = label.with_off(*nutrient, u, printed.u.is_some());
            self.vary(Cause::Composition(self.item.id.clone(), *nutrient), &varied);
        }
    }

    fn vary_assumed(&mut self, label: &Label, assumptions: &[Assumption]) {
        for assumption in assumptions {
            if let (Assumed::Figure(nutrient), Some(figure)) = (assumption.what, assumption.figure)
            {
                let varied = label.with_off(nutrient, figure.u, true);
                self.vary(Cause::Composition(self.item.id.clone(), nutrient), &varied);
            }
        }
    }

    fn vary_split(&mut self, label: &Label, assumptions: &mut Vec<Assumption>) {
        if self.item.composition.sugar_profile.is_none() && self.base.get(Component::Sugars) > 0.0 {
            assumptions.push(Assumption {
                what: Assumed::SugarSplit,
                figure: None,
                because: Because::Kind(self.nature.kind),
            });
        }
        let varied = Label {
            split_shift: 1.0,
            ..*label
        };
        self.vary(Cause::SugarSplit(self.item.id.clone()), &varied);
    }

    fn vary_undeclared(
        &mut self,
        label: &Label,
        moisture: Uncertain,
        assumptions: &mut Vec<Assumption>,
    ) {
        let cause = Cause::Undeclared(self.item.id.clone());
        if self.item.form.rest_is_water() {
            // Water by default, when solids are missing from the label.
            if !self.base.knows(Component::Water) {
                let varied = Label {
                    undeclared_as_solids: UNDECLARED_SOLIDS,
                    ..*label
                };
                self.vary(cause, &varied);
            }
        } else if label.get(Nutrient::Water).is_none() {
            assumptions.push(Assumption {
                what: Assumed::Moisture,
                figure: Some(moisture),
                because: Because::Kind(self.nature.kind),
            });
            let varied = Label {
                moisture: label.moisture + moisture.u,
                ..*label
            };
            self.vary(cause, &varied);
        }
    }

    fn vary_free_sugars(&mut self, assumptions: &mut Vec<Assumption>) {
        let sugars = self.base.get(Component::Sugars);
        if self.item.composition.free_sugar_fraction.is_some() || sugars <= 0.0 {
            return;
        }
        let Some(part) = self.nature.free_sugars(self.item) else {
            return;
        };
        assumptions.push(Assumption {
            what: Assumed::FreeSugars,
            figure: Some(part),
            because: Because::Kind(self.nature.kind),
        });
        let mut change = Mix::EMPTY;
        change.set(Component::FreeSugars, sugars * part.u);
        self.push(Cause::FreeSugars(self.item.id.clone()), &change);
    }

    fn vary_polyol(&mut self, assumptions: &mut Vec<Assumption>) {
        let grams = self.base.get(Component::Polyols);
        if grams <= 0.0 {
            return;
        }
        let kind = self.nature.polyol(&self.item.composition);
        let mut change = Mix::EMPTY;
        let u = polyol::relative_sweetness(kind).standard_uncertainty;
        change.set(Component::PolyolSweetness, grams * u);
        self.push(Cause::PolyolSweetness(kind), &change);
        if kind.is_none() {
            assumptions.push(Assumption {
                what: Assumed::PolyolKind,
                figure: None,
                because: Because::Kind(self.nature.kind),
            });
            // It may be erythritol, which has no energy by law.
            let mut change = Mix::EMPTY;
            let part = grams * PERHAPS_ERYTHRITOL;
            change.set(Component::EnergyKj, -part * energy::POLYOLS.kj_per_g);
            change.set(Component::EnergyKcal, -part * energy::POLYOLS.kcal_per_g);
            self.push(Cause::PolyolEnergy(self.item.id.clone()), &change);
        }
    }
}

fn difference(of: &Mix, from: &Mix) -> Mix {
    let mut difference = Mix::EMPTY;
    for (slot, (of, from)) in of.of.iter().zip(&from.of).enumerate() {
        difference.of[slot] = of - from;
    }
    difference
}

/// The mix of one gram from the numbers of a label.
fn solids(item: &Ingredient, nature: &Nature, label: &Label) -> Mix {
    let mut mix = Mix::EMPTY;
    mix.set(Component::Mass, 1.0);
    if item.form == Form::Ice {
        mix.set(Component::Ice, 1.0);
        return mix;
    }
    let soluble = soluble_by_brix(item, nature, label);
    let carbohydrate = label.get(Nutrient::Carbohydrate);
    for (component, value) in [
        (Component::Fat, label.get(Nutrient::Fat)),
        (Component::Saturates, label.get(Nutrient::Saturates)),
        (
            Component::Carbohydrate,
            carbohydrate.or(soluble.carbohydrate),
        ),
        (
            Component::Sugars,
            label.get(Nutrient::Sugars).or(soluble.sugars),
        ),
        (Component::Polyols, label.get(Nutrient::Polyols)),
        (Component::Fibre, label.get(Nutrient::Fibre)),
        (Component::Protein, label.get(Nutrient::Protein)),
        (Component::Salt, label.get(Nutrient::Salt)),
        (Component::Acid, label.get(Nutrient::Acid)),
        (Component::TeaSolids, label.get(Nutrient::TeaSolids)),
        (Component::Insoluble, label.get(Nutrient::Insoluble)),
        // Milligrams in 100 g are hundredths of a milligram in a gram, as grams are.
        (Component::Caffeine, label.get(Nutrient::Caffeine)),
    ] {
        match value {
            Some(value) => mix.set(component, value / 100.0),
            None => mix.mark_unknown(component),
        }
    }
    if label.hides_fibre || !mix.knows(Component::Carbohydrate) {
        // What is known of it: the sugars and polyols that are part of it.
        mix.mark_unknown(Component::Carbohydrate);
        mix.set(
            Component::Carbohydrate,
            mix.get(Component::Sugars) + mix.get(Component::Polyols),
        );
    }
    divide_sugars(item, nature, label, &mut mix);
    put_water(item, label, &mut mix);
    put_polyols_and_particles(item, nature, &mut mix);
    put_energy(item, nature, label, &mut mix);
    mix
}

/// What the °Brix of a syrup says of its sugars, per 100 g.
struct Soluble {
    carbohydrate: Option<f64>,
    sugars: Option<f64>,
}

/// A syrup that is given by its °Brix alone holds sugars: its soluble solids less what is stated of them by name. Of glucose
/// syrup and maltodextrin only the part that their dextrose equivalent says is sugar; what sweetens by polyols holds nobody knows
/// how much of it. °Brix of tea and juice is no figure of sugar.
fn soluble_by_brix(item: &Ingredient, nature: &Nature, label: &Label) -> Soluble {
    let none = Soluble {
        carbohydrate: None,
        sugars: None,
    };
    let Some(brix) = label
        .get(Nutrient::Brix)
        .filter(|_| item.form == Form::Syrup)
    else {
        return none;
    };
    if label.get(Nutrient::Carbohydrate).is_some() {
        return none;
    }
    let named = [
        Nutrient::Acid,
        Nutrient::TeaSolids,
        Nutrient::Protein,
        Nutrient::Salt,
    ];
    let named: f64 = named.into_iter().map(|part| label.amount(part)).sum();
    let carbohydrate = (brix - named).max(0.0);
    let sugars = match item.composition.sugar_profile {
        _ if !nature.hints.polyols.is_empty() || label.amount(Nutrient::Polyols) > 0.0 => None,
        Some(SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        }) => {
            let (glucose, maltose) = sugars_of_glucose_syrup(dextrose_equivalent);
            Some(carbohydrate * (glucose + maltose))
        }
        _ => Some(carbohydrate),
    };
    Soluble {
        carbohydrate: label
            .get(Nutrient::Sugars)
            .is_none()
            .then_some(carbohydrate),
        sugars,
    }
}

fn put_water(item: &Ingredient, label: &Label, mix: &mut Mix) {
    let rest = mix.undeclared_solids();
    let stated = label.get(Nutrient::Water).map(|water| water / 100.0);
    // °Brix counts what is dissolved; fat and what does not dissolve take their place from the water.
    let not_dissolved = label.amount(Nutrient::Fat) + label.amount(Nutrient::Insoluble);
    let by_brix = label
        .get(Nutrient::Brix)
        .filter(|_| item.form == Form::Syrup)
        .map(|brix| 1.0 - (brix + not_dissolved) / 100.0);
    let solids_missing = !mix.knows(Component::Carbohydrate)
        || !mix.knows(Component::Fat)
        || !mix.knows(Component::Protein);
    let is_told = stated.or(by_brix).is_some();
    let water = match stated.or(by_brix) {
        Some(water) => water.clamp(0.0, 1.0),
        None if item.form.rest_is_water() => rest * (1.0 - label.undeclared_as_solids),
        None => (label.moisture / 100.0).min(rest),
    };
    mix.set(Component::Water, water);
    let wet = matches!(item.form, Form::Paste | Form::Pieces);
    // What is wet and adds up to the whole has no room for water.
    if !is_told && (solids_missing || (wet && rest > 0.01)) {
        mix.mark_unknown(Component::Water);
    }
}

fn divide_sugars(item: &Ingredient, nature: &Nature, label: &Label, mix: &mut Mix) {
    let sugars = mix.get(Component::Sugars);
    let sugars_known = mix.knows(Component::Sugars);
    let fractions = if let Some(profile) = item.composition.sugar_profile {
        profile_fractions(profile, SPLIT_UNCERTAINTY * label.split_shift)
    } else {
        let (typical, other) = nature.sugars(item);
        std::array::from_fn(|at| typical[at] + (other[at] - typical[at]) * label.split_shift)
    };
    for (component, fraction) in Component::SUGAR_KINDS.into_iter().zip(fractions) {
        mix.set(component, sugars * fraction);
        if !sugars_known && fraction > 0.0 {
            mix.mark_unknown(component);
        }
    }
    let free = item
        .composition
        .free_sugar_fraction
        .or_else(|| nature.free_sugars(item).map(|part| part.value));
    match free {
        Some(fraction) => mix.set(Component::FreeSugars, sugars * fraction),
        None if sugars == 0.0 && sugars_known => {}
        None => mix.mark_unknown(Component::FreeSugars),
    }
    if !sugars_known && free != Some(0.0) {
        mix.mark_unknown(Component::FreeSugars);
    }
}

fn put_polyols_and_particles(item: &Ingredient, nature: &Nature, mix: &mut Mix) {
    let kind = nature.polyol(&item.composition);
    let polyols = mix.get(Component::Polyols);
    mix.set(
        Component::PolyolSweetness,
        polyols * polyol::relative_sweetness(kind).typical,
    );
    if !mix.knows(Component::Polyols) {
        mix.mark_unknown(Component::PolyolSweetness);
    }
    let kinds = [
        (Solute::Sucrose, Component::Sucrose),
        (Solute::Glucose, Component::Glucose),
        (Solute::Fructose, Component::Fructose),
        (Solute::Lactose, Component::Lactose),
        (Solute::Maltose, Component::Maltose),
    ];
    let named: f64 = kinds.iter().map(|(_, component)| mix.get(*component)).sum();
    let particles: f64 = kinds
        .iter()
        .map(|(solute, component)| solute.particles_mmol(mix.get(*component)))
        .sum();
    // Sugars whose kind is not known are taken as sucrose, the commonest.
    let others = Solute::Sucrose.particles_mmol((mix.get(Component::Sugars) - named).max(0.0));
    let polyols = polyol::solute(kind).particles_mmol(polyols);
    let acid = Solute::CitricAcid.particles_mmol(mix.get(Component::Acid));
    let salt = Solute::Salt.particles_mmol(mix.get(Component::Salt));
    mix.set(
        Component::Particles,
        particles + others + polyols + acid + salt,
    );
}

/// Energy by the factors of Regulation (EU) 1169/2011, Annex XIV, where every part is known; the printed one otherwise; the
/// known part where neither is.
fn put_energy(item: &Ingredient, nature: &Nature, label: &Label, mix: &mut Mix) {
    let parts = [
        Component::Carbohydrate,
        Component::Polyols,
        Component::Protein,
        Component::Fat,
        Component::Fibre,
        Component::Acid,
    ];
    let is_complete = parts.into_iter().all(|part| mix.knows(part));
    let kind = nature.polyol(&item.composition);
    let (kj, kcal) = match label.get(Nutrient::Energy).filter(|_| !is_complete) {
        Some(printed) => (
            printed / 100.0,
            printed / 100.0 / KILOJOULES_PER_KILOCALORIE,
        ),
        None => (
            energy::of(mix, |factor| factor.kj_per_g, kind),
            energy::of(mix, |factor| factor.kcal_per_g, kind),
        ),
    };
    mix.set(Component::EnergyKj, kj);
    mix.set(Component::EnergyKcal, kcal);
    if !is_complete && label.get(Nutrient::Energy).is_none() {
        mix.mark_unknown(Component::EnergyKj);
        mix.mark_unknown(Component::EnergyKcal);
    }
}

/// Another brand of a flavour is taken to be as strong per gram.
fn flavours_of_no_known_strength(
    item: &Ingredient,
    nature: &Nature,
) -> impl Iterator<Item = Assumption> {
    let because = Because::Kind(nature.kind);
    let flavours = item.composition.flavours.iter().enumerate();
    let silent = flavours.filter(|(_, flavour)| {
        let what = TastedFactor::Flavour(flavour.name.clone());
        flavour.per_gram.is_none() && item.tasted_figure(&what).is_none()
    });
    silent.map(move |(at, flavour)| {
        let figure = flavour.figure();
        Assumption {
            what: Assumed::Flavour(at),
            figure: Some(Uncertain {
                value: figure.value,
                u: figure.standard_uncertainty(),
            }),
            because,
        }
    })
}

/// Temperature at which sugars count as sweet as tastings multiply it, °C: that of the room (assumed). A tasting is evaluated with
/// the same, so that what it says of the cup that was tasted holds whatever the temperature of that cup.
const TASTED_AT: f64 = 20.0;

fn sweet_sugars() -> [(Component, RelativeSweetness); 6] {
    [
        (Component::Sucrose, sweetness::SUCROSE),
        (Component::Glucose, sweetness::GLUCOSE),
        (Component::Fructose, sweetness::fructose(TASTED_AT)),
        (Component::Lactose, sweetness::LACTOSE),
        (Component::Maltose, sweetness::MALTOSE),
        (Component::OtherSugar, sweetness::OTHER_SUGAR),
    ]
}

/// Grams of sucrose as sweet as the sugars and polyols of a mix.
fn sweetness_by_label(mix: &Mix) -> f64 {
    let sugars = sweet_sugars().map(|(kind, sweet)| mix.get(kind) * sweet.typical);
    sugars.into_iter().sum::<f64>() + mix.get(Component::PolyolSweetness)
}

/// How much sweeter it is than its label says, where that was tasted. What the label may be off by then no longer tells how sweet
/// it is: the tasted cup was as sweet as it was, whatever its sugars are.
fn add_tasted_sweetness(item: &Ingredient, per_gram: &mut PerGram) {
    let Some(tasted) = item.tasted_figure(&TastedFactor::Sweetness) else {
        return;
    };
    let by_label = sweetness_by_label(&per_gram.mix);
    for sensitivity in &mut per_gram.sensitivities {
        let moved = sweetness_by_label(&sensitivity.change);
        sensitivity.change.set(Component::TastedSweetness, -moved);
    }
    let beyond = (tasted.times - 1.0) * by_label;
    per_gram.mix.set(Component::TastedSweetness, beyond);
    let mut change = Mix::EMPTY;
    change.set(Component::TastedSweetness, tasted.u * by_label);
    per_gram.sensitivities.push(Sensitivity {
        cause: Cause::TastedSweetness(item.id.clone()),
        change,
    });
}

/// How sweet the label of an ingredient makes it, g of sucrose per gram of it, with what is doubtful in the label and in how sweet its
/// sugars are; `None` where it does not say what sweetens it, or has no sweetness. High-potency sweeteners are left out: how sweet
/// they are depends on the drink.
pub fn label_sweetness(item: &Ingredient) -> Option<Uncertain> {
    let item = item.untasted();
    let per_gram = per_gram(&item, &mut Slots::default());
    let knows = |component| per_gram.mix.knows(component);
    let is_told = Component::SUGAR_KINDS.into_iter().all(knows)
        && knows(Component::PolyolSweetness)
        && knows(Component::HiddenSweetener);
    let value = sweetness_by_label(&per_gram.mix);
    let each = per_gram.sensitivities.iter();
    let of_label = each.map(|one| sweetness_by_label(&one.change));
    let sugars = sweet_sugars().into_iter();
    let of_sugars = sugars.map(|(kind, sweet)| per_gram.mix.get(kind) * sweet.standard_uncertainty);
    let u = of_label.chain(of_sugars).fold(0.0, f64::hypot);
    (is_told && value > 0.0).then_some(Uncertain { value, u })
}

fn add_flavours(item: &Ingredient, slots: &mut Slots, per_gram: &mut PerGram) {
    for (at, flavour) in item.composition.flavours.iter().enumerate() {
        let Some(slot) = slots.flavour(&flavour.name) else {
            continue;
        };
        let figure = item.strength(flavour);
        per_gram.mix.of[flavour_slot(slot)] += figure.value;
        let mut change = Mix::EMPTY;
        change.of[flavour_slot(slot)] = figure.standard_uncertainty();
        per_gram.sensitivities.push(Sensitivity {
            cause: Cause::Flavour(item.id.clone(), at),
            change,
        });
    }
}

fn add_sweeteners(
    item: &Ingredient,
    nature: &Nature,
    factor: f64,
    slots: &mut Slots,
    per_gram: &mut PerGram,
) {
    for (at, amount) in item.composition.high_potency.iter().enumerate() {
        let Some(milligrams) = amount.milligrams else {
            per_gram.mix.mark_unknown(Component::HiddenSweetener);
            continue;
        };
        let Some(slot) = slots.sweetener(amount.sweetener) else {
            // More than fit are a finding; what is left out is not nothing.
            per_gram.mix.mark_unknown(Component::HiddenSweetener);
            continue;
        };
        per_gram.mix.of[high_potency_slot(slot)] += milligrams.value * factor / 100.0;
        let mut change = Mix::EMPTY;
        change.of[high_potency_slot(slot)] = milligrams.standard_uncertainty() * factor / 100.0;
        let cause = Cause::HighPotency(item.id.clone(), at);
        per_gram.sensitivities.push(Sensitivity { cause, change });
    }
    if nature.hides_sweetener(&item.composition) {
        per_gram.mix.mark_unknown(Component::HiddenSweetener);
    }
}

/// The air in a foam: what a gram of it takes up beyond its liquid.
fn add_air(item: &Ingredient, per_gram: &mut PerGram) {
    if item.form != Form::Foam {
        return;
    }
    let liquid = 1.0 / liquid_density(&per_gram.mix, 20.0);
    let foam = foam_density(item);
    let air = |density: f64| (1.0 / density.max(0.01) - liquid).max(0.0);
    per_gram.mix.set(Component::Air, air(foam.value));
    let mut change = Mix::EMPTY;
    let denser = foam.value + density_uncertainty(foam);
    change.set(Component::Air, air(denser) - air(foam.value));
    per_gram.sensitivities.push(Sensitivity {
        cause: Cause::Density(item.id.clone()),
        change,
    });
}

/// Relative standard uncertainty that the density by components has from what is doubtful in the composition itself.
pub(super) fn density_doubt(per_gram: &PerGram, celsius: f64) -> f64 {
    let density = liquid_density(&per_gram.mix, celsius);
    let of = |sensitivity: &Sensitivity| {
        let mut moved = per_gram.mix;
        for (amount, change) in moved.of.iter_mut().zip(&sensitivity.change.of) {
            *amount += change;
        }
        (liquid_density(&moved, celsius) / density - 1.0).powi(2)
    };
    per_gram.sensitivities.iter().map(of).sum::<f64>().sqrt()
}

/// Polyols by kind stay together with what they are told from.
pub(super) fn polyol_of(item: &Ingredient) -> Option<PolyolKind> {
    Nature::of(item).polyol(&item.composition)
}
