//! From a line to what one unit of it brings to the drink, and what is uncertain in that.

use super::per_gram::{PerGram, Sensitivity, density_doubt, polyol_of};
use super::portion::{Portion, mark_uncertainty, portion};
use super::preparation::{Preparation, unknown_mix};
use super::setup::temperature_uncertainty;
use crate::balance::brewing::{Infusion, RETENTION};
use crate::balance::cause::Cause;
use crate::balance::mix::{Component, Mix};
use crate::balance::published::{polyol, sugar_solution};
use crate::balance::slots::Slots;
use crate::balance::solve::physics::{enthalpy, frozen_at};
use crate::balance::solve::prepared::{
    AssumedIn, Fill, LineSensitivity, Prepared, PreparedLine, Scaling, Setup,
};
use crate::book::{
    Amount, Basis, Finding, FindingKind, Form, Ingredient, IngredientId, Line, Place, Resolved,
    Role, Stage, Temperature,
};
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

/// Where a line is put.
#[derive(Clone, Copy, Default)]
struct Put<'line> {
    /// `None` for what a topping brings along.
    stage: Option<Stage>,
    /// What it steeps in, if it does.
    steeps_in: Option<&'line Line>,
}

/// The line that leaf steeps in: the last water that is poured before it, or else the next one; without water, whatever else is
/// mixed there.
fn steeps_in<'line>(resolved: &'line Resolved, leaf: &Line) -> Option<&'line Line> {
    let at = resolved.lines().position(|line| line.id == leaf.id)?;
    let mixed: Vec<&Line> = resolved.lines().collect();
    let (before, behind) = mixed.split_at(at);
    let nearest = |fits: &dyn Fn(&Line) -> bool| {
        let is_around = |line: &&&Line| line.stage == Stage::Mixed && fits(line);
        let last = before.iter().rev().find(is_around);
        last.or_else(|| behind.iter().find(is_around)).copied()
    };
    nearest(&|line| line.role == Role::Water).or_else(|| nearest(&|line| line.role != Role::Ice))
}

impl Preparation<'_> {
    /// The lines of a version; what a topping brings along is a line of its own.
    pub(super) fn lines(
        &mut self,
        resolved: &Resolved,
        setup: &Setup,
        slots: &mut Slots,
    ) -> Prepared {
        let mut prepared = Prepared::new(setup);
        for line in resolved.lines() {
            let steeps_in = (line.stage == Stage::Steeped).then(|| steeps_in(resolved, line));
            self.add(
                line,
                &line.ingredient,
                &line.amount,
                Put {
                    stage: Some(line.stage),
                    steeps_in: steeps_in.flatten(),
                },
                slots,
                &mut prepared,
            );
            if let Some(carried) = &line.carried {
                // Syrup that clings to a topping dissolves into the drink. It is a part of what the topping is taken by.
                let amount = Amount::Grams(carried.grams);
                self.add(
                    line,
                    &carried.ingredient,
                    &amount,
                    Put::default(),
                    slots,
                    &mut prepared,
                );
            }
        }
        prepared
    }

    /// Adds a line, or with no stage what it brings along.
    fn add(
        &mut self,
        line: &Line,
        ingredient: &IngredientId,
        amount: &Amount,
        put: Put<'_>,
        slots: &mut Slots,
        prepared: &mut Prepared,
    ) {
        let mut entry = PreparedLine {
            id: line.id.clone(),
            carried: put.stage.is_none(),
            ingredient: ingredient.clone(),
            role: line.role,
            stage: put.stage.unwrap_or(Stage::Mixed),
            per_unit: unknown_mix(),
            grams_per_unit: 0.0,
            count: amount
                .number()
                .filter(|_| !amount.fills())
                .unwrap_or(0.0)
                .max(0.0),
            fill: match amount {
                Amount::FillTo(millilitres) => Some(Fill::Volume(*millilitres)),
                Amount::FillToRim => Some(Fill::Rim),
                _ => None,
            },
            celsius: self.book.settings.room_temperature.celsius(),
            is_ice: false,
            sensitivities: Vec::new(),
        };
        if let Some(found) = self.book.ingredient(ingredient) {
            let lines = (line, put.steeps_in);
            self.look_up(lines, found, amount, &mut entry, slots, prepared);
        }
        // An amount that fills and can't be worked out is not nothing.
        if entry.fill.is_some() && entry.grams_per_unit == 0.0 {
            entry.fill = None;
            entry.count = 1.0;
        }
        // What is not known about nothing does not matter.
        if entry.count == 0.0 && entry.fill.is_none() && entry.grams_per_unit == 0.0 {
            entry.per_unit = Mix::EMPTY;
        }
        prepared.lines.push(entry);
    }

    fn look_up(
        &mut self,
        (line, steeps_in): (&Line, Option<&Line>),
        found: &Ingredient,
        amount: &Amount,
        entry: &mut PreparedLine,
        slots: &mut Slots,
        prepared: &mut Prepared,
    ) {
        let (stated, temperature_cause) = self.temperature(line, amount, found);
        let celsius = stated.celsius();
        entry.celsius = celsius;
        entry.is_ice = found.form == Form::Ice;
        let mut per_gram = self.one_gram(found, slots);
        let assumed = per_gram
            .assumptions
            .iter()
            .map(|(whose, assumption)| AssumedIn {
                line: line.id.clone(),
                whose: whose.clone(),
                assumption: *assumption,
            });
        prepared.assumptions.extend(assumed);
        let mut leaves_at = (celsius, stated, temperature_cause);
        if entry.stage == Stage::Steeped {
            per_gram = steeped(found, &per_gram, None);
            // What the wet leaf takes along has come to the temperature of the water around it. What the dry leaf itself takes to get as
            // hot is left out: a kelvin for six grams in a cup.
            let water =
                steeps_in.and_then(|water| Some((water, self.book.ingredient(&water.ingredient)?)));
            if let Some((water, item)) = water {
                let (stated, cause) = self.temperature(water, &water.amount, item);
                leaves_at = (stated.celsius(), stated, cause);
            }
        }
        if *amount == Amount::FillToRim && prepared.setup.capacity.is_none() {
            let finding = Finding::error(self.place.clone(), FindingKind::NoCup);
            prepared.findings.push(finding);
            return;
        }
        let portion = portion(self.book, found, &per_gram.mix, amount, celsius);
        match portion.map(|portion| with_doubt_of_composition(portion, found, &per_gram, celsius)) {
            Some(portion) => FilledIn {
                item: found,
                amount,
                per_gram: &per_gram,
                portion: &portion,
                mark: mark_uncertainty(self.book),
                celsius: leaves_at.0,
                thermometer: temperature_uncertainty(self.book, leaves_at.1),
            }
            .put_into(entry, leaves_at.2, prepared),
            None => prepared.findings.push(self.no_mass(line, found, amount)),
        }
    }

    /// Temperature of a line: its own, that of the button it comes from, that of the ingredient, or that of the room.
    fn temperature(
        &self,
        line: &Line,
        amount: &Amount,
        item: &Ingredient,
    ) -> (Temperature, Option<Cause>) {
        let settings = &self.book.settings;
        let poured = match amount {
            Amount::Count(_, id) => self
                .book
                .measure(id)
                .and_then(|measure| measure.temperature)
                .map(|stated| (stated, Cause::MeasureTemperature(id.clone()))),
            _ => None,
        };
        let of_line = line
            .temperature
            .map(|stated| (stated, Cause::LineTemperature(line.id.clone())));
        let of_item = item
            .temperature
            .map(|stated| (stated, Cause::Temperature(item.id.clone())));
        let stated = of_line.or(poured).or(of_item);
        if item.form == Form::Ice {
            let (stated, cause) = stated.unwrap_or((
                settings.ice_temperature.into(),
                Cause::Temperature(item.id.clone()),
            ));
            // Ice above its melting point would be water; warmer ice is ice that begins to melt.
            let [from, to] = stated.ends().map(|end| end.min(0.0));
            return (Temperature::between(from, to), Some(cause));
        }
        let (stated, cause) = stated.unwrap_or((settings.room_temperature, Cause::RoomTemperature));
        (stated, Some(cause))
    }

    fn no_mass(&self, line: &Line, item: &Ingredient, amount: &Amount) -> Finding {
        let measure = match amount {
            Amount::Count(_, measure) => Some(measure.clone()),
            _ => None,
        };
        let place = match &self.place {
            Place::Recipe(recipe, _) => Place::Line(recipe.clone(), None, line.id.clone()),
            Place::Version(recipe, version) => {
                Place::Line(recipe.clone(), Some(version.clone()), line.id.clone())
            }
            other => other.clone(),
        };
        let ingredient = item.id.clone();
        Finding::warning(
            place,
            FindingKind::NoMass {
                ingredient,
                measure,
            },
        )
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
        mix.unknown |= unknown_mix().unknown & !Component::Mass.bit() & !Component::Cost.bit();
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

/// What is known of a line when all has been looked up.
struct FilledIn<'line> {
    item: &'line Ingredient,
    amount: &'line Amount,
    per_gram: &'line PerGram,
    portion: &'line Portion,
    /// Standard uncertainty of a mark, as a part of the volume.
    mark: f64,
    /// Temperature at which it comes to the drink, °C: of what steeps, that of the water.
    celsius: f64,
    /// Standard uncertainty of that, K.
    thermometer: f64,
}

impl FilledIn<'_> {
    fn put_into(
        &self,
        entry: &mut PreparedLine,
        temperature_cause: Option<Cause>,
        prepared: &mut Prepared,
    ) {
        let (item, portion) = (self.item, self.portion);
        let at = |mix: &Mix, celsius: f64| {
            let mut gram = at_temperature(item, mix, celsius);
            if matches!(entry.role, Role::Water | Role::Tea | Role::Ice) {
                gram.set(Component::Diluting, gram.get(Component::Mass));
            }
            gram
        };
        let gram = at(&self.per_gram.mix, self.celsius);
        let mut effects: Vec<(Cause, Mix, Scaling)> = Vec::new();
        let mut vary = |cause: Cause, varied: &Mix| {
            let mut change = *varied;
            change.add_times(&gram, -1.0);
            change.unknown = 0;
            effects.push((cause, change.times(portion.grams), Scaling::PerUnit));
        };
        for sensitivity in &self.per_gram.sensitivities {
            let mut moved = self.per_gram.mix;
            moved.add_times(&sensitivity.change, 1.0);
            vary(sensitivity.cause.clone(), &at(&moved, self.celsius));
        }
        if let Some(cause) = temperature_cause {
            let warmer = at(&self.per_gram.mix, self.celsius + self.thermometer);
            vary(cause, &warmer);
        }
        self.push_amount(entry, &gram, prepared, &mut effects);
        entry.per_unit = gram.times(portion.grams);
        entry.grams_per_unit = portion.grams;
        for (cause, change, scaling) in effects {
            let cause = prepared.cause(cause);
            entry.sensitivities.push(LineSensitivity {
                cause,
                change,
                scaling,
            });
        }
    }

    /// What is uncertain in how much of it goes in.
    fn push_amount(
        &self,
        entry: &PreparedLine,
        gram: &Mix,
        prepared: &Prepared,
        effects: &mut Vec<(Cause, Mix, Scaling)>,
    ) {
        let portion = self.portion;
        let scaled = |grams: f64| Mix {
            unknown: 0,
            ..gram.times(grams)
        };
        if let Amount::Count(_, measure) = self.amount {
            let with = portion.is_weighed_with_it.then(|| self.item.id.clone());
            effects.push((
                Cause::Calibration(measure.clone(), with),
                scaled(portion.grams * portion.calibration),
                Scaling::PerUnit,
            ));
            effects.push((
                Cause::UseScatter(entry.id.clone()),
                scaled(portion.scatter),
                Scaling::PerRootUnit,
            ));
        }
        if let Some((relative, cause)) = portion.density_cause(&self.item.id) {
            effects.push((cause, scaled(portion.grams * relative), Scaling::PerUnit));
        }
        // The rim is a mark like any other.
        let at_rim = entry.fill.filter(|fill| *fill == Fill::Rim);
        let rim = at_rim
            .and_then(|fill| fill.mark(&prepared.setup))
            .unwrap_or(0.0);
        let offset = portion.offset + self.mark * rim * portion.grams;
        if offset > 0.0 {
            effects.push((
                Cause::Reading(entry.id.clone()),
                scaled(offset),
                Scaling::Once,
            ));
        }
    }
}
