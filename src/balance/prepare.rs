//! All look-ups happen here: measures, labels and profiles become mixes per unit, and [`super::figures`] then allocates nothing.

use std::collections::BTreeMap;

use super::cause::{Cause, Sweet};
use super::composition::{PerGram, Sensitivity, Slots, per_gram};
use super::cooling::{CoolingCurve, curve_of, fill_of};
use super::figures::figures;
use super::mix::{COMPONENTS, Component, HIGH_POTENCY_SLOTS, Mix};
use super::physics::{Wall, enthalpy};
use super::portion::{MARK_UNCERTAINTY, Portion, portion};
use super::published::{sugar_solution, sweetness};
use crate::book::{
    Amount, Book, Finding, FindingKind, Form, HighPotencySweetener, Ingredient, IngredientId, Line,
    LineId, Place, Resolved, Role, Stage, Vessel, resolve,
};

/// Standard uncertainty of the temperature at which something comes, K (assumed).
const TEMPERATURE_UNCERTAINTY: f64 = 1.5;

/// Relative standard uncertainty of the heat capacity of a vessel (assumed).
const VESSEL_UNCERTAINTY: f64 = 0.15;

/// A temperature at which hot drinks are handed over, °C, for the relative uncertainty of their cooling (assumed).
const POURED_HOT: f64 = 75.0;

/// How the effect of a cause grows with the count of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scaling {
    /// With the count: every unit is off the same way.
    PerUnit,
    /// With the root of the count: each unit scatters for itself.
    PerRootUnit,
    /// Not at all: the whole amount is off once.
    Once,
}

impl Scaling {
    /// What the effect of one unit is multiplied with.
    pub fn of(self, count: f64) -> f64 {
        match self {
            Self::PerUnit => count,
            Self::PerRootUnit => count.max(0.0).sqrt(),
            Self::Once if count > 0.0 => 1.0,
            Self::Once => 0.0,
        }
    }
}

/// The effect of one cause on a line.
#[derive(Clone, Debug, PartialEq)]
pub struct LineSensitivity {
    /// Index of the cause in [`Prepared::causes`].
    pub cause: usize,
    /// Change of the mix when the cause is off by its standard uncertainty.
    pub change: Mix,
    /// How it grows with the count.
    pub scaling: Scaling,
}

/// A line whose look-ups are done.
#[derive(Clone, Debug, PartialEq)]
pub struct PreparedLine {
    /// The line; what a topping brings along has the id of the topping.
    pub id: LineId,
    /// Whether this is what a topping brings along.
    pub carried: bool,
    /// Its ingredient.
    pub ingredient: IngredientId,
    /// Its role.
    pub role: Role,
    /// Where it ends up.
    pub stage: Stage,
    /// The mix of one unit, with heat and cost.
    pub per_unit: Mix,
    /// Grams of one unit.
    pub grams_per_unit: f64,
    /// How many units; 0 for an amount that fills, until it is solved.
    pub count: f64,
    /// What it fills to, if it does.
    pub fill: Option<Fill>,
    /// Its temperature, °C.
    pub celsius: f64,
    /// What is uncertain.
    pub sensitivities: Vec<LineSensitivity>,
}

/// What an amount fills to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fill {
    /// A volume of the mixed drink, ml.
    Volume(f64),
    /// The rim, less the head room.
    Rim,
}

/// Everything apart from the lines that a figure depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setup {
    /// What the drink is mixed in before it is poured.
    pub shaker: Option<Wall>,
    /// The cup.
    pub cup: Wall,
    /// Whether the ice stays behind in the shaker.
    pub strained: bool,
    /// Volume of the cup to the rim, ml.
    pub capacity: Option<f64>,
    /// Room that stays free below the rim, ml.
    pub head_room: f64,
    /// How a drink cools in the cup with its usual closure.
    pub cooling: Option<CoolingCurve>,
    /// Factor on the minutes of cooling; 1, unless their uncertainty is tried out.
    pub cooling_time_factor: f64,
    /// Temperature of the room, °C.
    pub room: f64,
    /// Temperature at which the drink is tasted, °C.
    pub drinking: f64,
    /// Bulk density of ice, g/ml.
    pub ice_bulk_density: f64,
    /// Cost of cup, closure, straw and sleeve, in the book's currency; only what is stated.
    pub serviceware_cost: f64,
    /// Whether every price of it is stated.
    pub serviceware_cost_known: bool,
    /// Relative sweetness at the drinking temperature, in the order of [`Sweet::ALL`].
    pub sweetness: [f64; 6],
    /// Which high-potency sweetener each slot holds.
    pub sweeteners: [Option<HighPotencySweetener>; HIGH_POTENCY_SLOTS],
    /// Whether there is ice in it.
    pub iced: bool,
}

/// What a cause does to the setup instead of to a line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SetupChange {
    /// The heat capacity of the cup, kJ/K.
    CupHeat(f64),
    /// The heat capacity of the shaker, kJ/K.
    ShakerHeat(f64),
    /// The temperature of cup and shaker that stand in the room, K.
    WallTemperature {
        /// Whether the cup stands in the room.
        cup: bool,
        /// Whether the shaker does.
        shaker: bool,
        /// By how much, K.
        kelvin: f64,
    },
    /// One relative sweetness.
    Sweetness(usize, f64),
    /// The minutes of cooling, as a part of them.
    CoolingTime(f64),
}

/// A version with all look-ups done.
#[derive(Clone, Debug, PartialEq)]
pub struct Prepared {
    /// Its lines; what a topping brings along is a line of its own behind it.
    pub lines: Vec<PreparedLine>,
    /// Everything else.
    pub setup: Setup,
    /// Names of the slots.
    pub slots: Slots,
    /// Every cause of uncertainty, each once.
    pub causes: Vec<Cause>,
    /// What the causes do to the setup.
    pub setup_changes: Vec<(usize, SetupChange)>,
    /// What could not be looked up.
    pub findings: Vec<Finding>,
}

impl Prepared {
    /// The index of a cause, entered when it is new.
    fn cause(&mut self, cause: Cause) -> usize {
        if let Some(known) = self.causes.iter().position(|known| *known == cause) {
            return known;
        }
        self.causes.push(cause);
        self.causes.len() - 1
    }

    /// The position of a line by its id (not of what it brings along).
    pub fn position(&self, id: &LineId) -> Option<usize> {
        self.lines
            .iter()
            .position(|line| line.id == *id && !line.carried)
    }
}

/// Prepares a version. `place` says where its findings belong.
///
/// `slots` gives flavours and sweeteners their places; two versions that will be compared are prepared with the same.
pub fn prepare(book: &Book, resolved: &Resolved, slots: &mut Slots, place: &Place) -> Prepared {
    let mut preparation = Preparation {
        book,
        place: place.clone(),
        has_cup: resolved.cup.is_some(),
        making: Vec::new(),
        made: BTreeMap::new(),
        findings: Vec::new(),
    };
    let iced = resolved.lines().any(|line| line.role == Role::Ice);
    let mut prepared = Prepared {
        lines: Vec::new(),
        setup: setup(book, resolved, iced),
        slots: Slots::default(),
        causes: Vec::new(),
        setup_changes: Vec::new(),
        findings: Vec::new(),
    };
    for line in resolved.lines() {
        preparation.add_line(line, slots, &mut prepared);
    }
    for (slot, sweetener) in slots.sweeteners.iter().enumerate() {
        prepared.setup.sweeteners[slot] = Some(*sweetener);
    }
    prepared.slots.clone_from(slots);
    prepared.setup.cooling = cooling(book, resolved, &prepared);
    add_setup_causes(book, resolved, &mut prepared);
    prepared.findings.append(&mut preparation.findings);
    add_slot_findings(book, resolved, place, &mut prepared.findings);
    prepared
}

fn setup(book: &Book, resolved: &Resolved, iced: bool) -> Setup {
    let settings = &book.settings;
    let cup = resolved.cup.as_ref().and_then(|id| book.vessel(id));
    let shaker = resolved.shaker.as_ref().and_then(|id| book.vessel(id));
    let wall = |vessel: &Vessel| Wall {
        heat_capacity: vessel.heat_capacity().unwrap_or(0.0),
        celsius: vessel.temperature.unwrap_or(settings.room_temperature),
    };
    let usual = if iced {
        settings.iced_drinking_temperature
    } else {
        settings.hot_drinking_temperature
    };
    let drinking = resolved.drinking_temperature.unwrap_or(usual);
    let room = Wall {
        heat_capacity: 0.0,
        celsius: settings.room_temperature,
    };
    let closure = cup.and_then(|cup| cup.usual_closure());
    let prices = cup.map_or_else(Vec::new, |cup| {
        let serviceware = cup.serviceware.iter().map(|ware| ware.price);
        std::iter::once(cup.price)
            .chain(closure.map(|closure| closure.price))
            .chain(serviceware)
            .collect()
    });
    Setup {
        shaker: shaker.map(|shaker| wall(shaker)),
        cup: cup.map_or(room, |cup| wall(cup)),
        strained: resolved.strained && shaker.is_some(),
        capacity: cup.map(|cup| cup.capacity),
        head_room: closure.map_or(0.0, |closure| closure.head_room),
        cooling: None,
        cooling_time_factor: 1.0,
        room: settings.room_temperature,
        drinking,
        ice_bulk_density: settings.ice_bulk_density,
        serviceware_cost: prices.iter().flatten().sum(),
        serviceware_cost_known: cup.is_none() || prices.iter().all(Option::is_some),
        sweetness: Sweet::ALL.map(|sweet| relative_sweetness(sweet, drinking).typical),
        sweeteners: [None; HIGH_POTENCY_SLOTS],
        iced,
    }
}

fn relative_sweetness(sweet: Sweet, drinking: f64) -> sweetness::RelativeSweetness {
    match sweet {
        Sweet::Glucose => sweetness::GLUCOSE,
        Sweet::Fructose => sweetness::fructose(drinking),
        Sweet::Lactose => sweetness::LACTOSE,
        Sweet::Maltose => sweetness::MALTOSE,
        Sweet::OtherSugar => sweetness::OTHER_SUGAR,
        Sweet::Polyol => sweetness::OTHER_POLYOL,
    }
}

fn add_setup_causes(book: &Book, resolved: &Resolved, prepared: &mut Prepared) {
    let drinking = prepared.setup.drinking;
    for (slot, sweet) in Sweet::ALL.into_iter().enumerate() {
        let u = relative_sweetness(sweet, drinking).standard_uncertainty;
        let cause = prepared.cause(Cause::RelativeSweetness(sweet));
        prepared
            .setup_changes
            .push((cause, SetupChange::Sweetness(slot, u)));
    }
    let stands_in_room = |id: &crate::book::VesselId| {
        book.vessel(id)
            .is_some_and(|vessel| vessel.temperature.is_none() && vessel.heat_capacity().is_some())
    };
    if let Some(id) = &resolved.cup {
        let heat = prepared.setup.cup.heat_capacity * VESSEL_UNCERTAINTY;
        let cause = prepared.cause(Cause::VesselHeat(id.clone()));
        prepared
            .setup_changes
            .push((cause, SetupChange::CupHeat(heat)));
    }
    if let (Some(id), Some(curve)) = (&resolved.cup, prepared.setup.cooling) {
        let cause = prepared.cause(Cause::Cooling(id.clone()));
        let relative = curve.doubt_between(POURED_HOT, prepared.setup.drinking);
        prepared
            .setup_changes
            .push((cause, SetupChange::CoolingTime(relative)));
    }
    if let (Some(id), Some(wall)) = (&resolved.shaker, prepared.setup.shaker) {
        let heat = wall.heat_capacity * VESSEL_UNCERTAINTY;
        let cause = prepared.cause(Cause::VesselHeat(id.clone()));
        prepared
            .setup_changes
            .push((cause, SetupChange::ShakerHeat(heat)));
    }
    let change = SetupChange::WallTemperature {
        cup: resolved.cup.as_ref().is_some_and(stands_in_room),
        shaker: resolved.shaker.as_ref().is_some_and(stands_in_room),
        kelvin: TEMPERATURE_UNCERTAINTY,
    };
    let cause = prepared.cause(Cause::RoomTemperature);
    prepared.setup_changes.push((cause, change));
}

/// How the drink cools in its cup, as full as the lines fill it: a search that moves amounts keeps that fill.
fn cooling(book: &Book, resolved: &Resolved, prepared: &Prepared) -> Option<CoolingCurve> {
    if prepared.setup.iced {
        return None;
    }
    let cup = book.vessel(resolved.cup.as_ref()?)?;
    let fill = fill_of(&figures(prepared));
    Some(curve_of(cup, book.settings.room_temperature, fill)?.0)
}

fn add_slot_findings(book: &Book, resolved: &Resolved, place: &Place, findings: &mut Vec<Finding>) {
    let ingredients: Vec<&Ingredient> = resolved
        .lines()
        .filter_map(|line| book.ingredient(&line.ingredient))
        .map(AsRef::as_ref)
        .collect();
    let mut flavours: Vec<&str> = ingredients
        .iter()
        .flat_map(|item| &item.composition.flavours)
        .map(|flavour| flavour.name.as_str())
        .collect();
    flavours.sort_unstable();
    flavours.dedup();
    let mut sweeteners: Vec<HighPotencySweetener> = ingredients
        .iter()
        .flat_map(|item| &item.composition.high_potency)
        .map(|amount| amount.sweetener)
        .collect();
    sweeteners.sort_unstable();
    sweeteners.dedup();
    for (kind, count, limit) in [
        ("flavours", flavours.len(), super::mix::FLAVOUR_SLOTS),
        (
            "high-potency sweeteners",
            sweeteners.len(),
            HIGH_POTENCY_SLOTS,
        ),
    ] {
        if count > limit {
            findings.push(Finding::warning(
                place.clone(),
                FindingKind::TooManySlots { kind, count, limit },
            ));
        }
    }
}

/// A mix of which nothing is known.
fn unknown_mix() -> Mix {
    Mix {
        of: [0.0; COMPONENTS],
        unknown: (1 << COMPONENTS) - 1,
    }
}

struct Preparation<'book> {
    book: &'book Book,
    place: Place,
    /// Whether there is a rim to fill to.
    has_cup: bool,
    /// House-made ingredients that are being worked out, to notice a circle.
    making: Vec<IngredientId>,
    /// House-made ingredients that have been worked out: a batch may be part of many.
    made: BTreeMap<IngredientId, PerGram>,
    /// What is wrong with batches.
    findings: Vec<Finding>,
}

impl Preparation<'_> {
    fn add_line(&mut self, line: &Line, slots: &mut Slots, prepared: &mut Prepared) {
        self.add(
            line,
            &line.ingredient,
            &line.amount,
            line.stage,
            false,
            slots,
            prepared,
        );
        if let Some(carried) = &line.carried {
            // Syrup that clings to a topping dissolves into the drink.
            let amount = Amount::Grams(carried.grams);
            self.add(
                line,
                &carried.ingredient,
                &amount,
                Stage::Mixed,
                true,
                slots,
                prepared,
            );
        }
    }

    #[expect(
        clippy::too_many_arguments,
        reason = "a line and what it brings along differ in these"
    )]
    fn add(
        &mut self,
        line: &Line,
        ingredient: &IngredientId,
        amount: &Amount,
        stage: Stage,
        carried: bool,
        slots: &mut Slots,
        prepared: &mut Prepared,
    ) {
        let mut entry = PreparedLine {
            id: line.id.clone(),
            carried,
            ingredient: ingredient.clone(),
            role: line.role,
            stage,
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
            celsius: self.book.settings.room_temperature,
            sensitivities: Vec::new(),
        };
        if let Some(found) = self.book.ingredient(ingredient) {
            let (celsius, temperature_cause) = self.temperature(line, amount, found);
            entry.celsius = celsius;
            let per_gram = self.one_gram(found, slots);
            let nowhere = *amount == Amount::FillToRim && !self.has_cup;
            match portion(self.book, found, &per_gram.mix, amount, celsius) {
                _ if nowhere => prepared
                    .findings
                    .push(Finding::error(self.place.clone(), FindingKind::NoCup)),
                Some(portion) => {
                    fill_in(
                        &mut entry,
                        found,
                        amount,
                        &per_gram,
                        &portion,
                        temperature_cause,
                        prepared,
                    );
                }
                None => prepared.findings.push(self.no_mass(line, found, amount)),
            }
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

    /// Temperature of a line: its own, that of the button it comes from, that of the ingredient, or that of the room.
    fn temperature(
        &self,
        line: &Line,
        amount: &Amount,
        ingredient: &Ingredient,
    ) -> (f64, Option<Cause>) {
        let settings = &self.book.settings;
        let own = || Some(Cause::Temperature(ingredient.id.clone()));
        let poured = match amount {
            Amount::Count(_, measure) => self
                .book
                .measure(measure)
                .and_then(|measure| measure.temperature),
            _ => None,
        };
        match (line.temperature.or(poured), ingredient.temperature) {
            // Ice above its melting point would be water; warmer ice is ice that begins to melt.
            (Some(celsius), _) | (None, Some(celsius)) if ingredient.form == Form::Ice => {
                (celsius.min(0.0), own())
            }
            (Some(celsius), _) | (None, Some(celsius)) => (celsius, own()),
            (None, None) if ingredient.form == Form::Ice => (settings.ice_temperature, own()),
            (None, None) => (settings.room_temperature, Some(Cause::RoomTemperature)),
        }
    }

    fn no_mass(&self, line: &Line, ingredient: &Ingredient, amount: &Amount) -> Finding {
        let what = match amount {
            Amount::Count(_, measure) => {
                let measure = self
                    .book
                    .measure(measure)
                    .map_or_else(|| measure.to_string(), |found| found.name.clone());
                format!(
                    "nobody knows what a use of the {measure} weighs of {}",
                    ingredient.full_name()
                )
            }
            _ => format!(
                "the mass of a millilitre of {} is not known",
                ingredient.full_name()
            ),
        };
        let place = match &self.place {
            Place::Recipe(recipe, _) => Place::Line(recipe.clone(), None, line.id.clone()),
            Place::Version(recipe, version) => {
                Place::Line(recipe.clone(), Some(version.clone()), line.id.clone())
            }
            other => other.clone(),
        };
        Finding::warning(place, FindingKind::NoMass { what })
    }

    /// One gram of an ingredient, made by its recipe when the house makes it and its label says nothing.
    fn one_gram(&mut self, ingredient: &Ingredient, slots: &mut Slots) -> PerGram {
        let mut from_label = per_gram(ingredient, slots);
        let price = ingredient.price.as_ref();
        let usable = price
            .map(|price| price.grams * (1.0 - price.waste_percent / 100.0))
            .filter(|grams| *grams > 0.0);
        match (price, usable) {
            (Some(price), Some(usable)) => from_label.mix.set(Component::Cost, price.pack / usable),
            _ => from_label.mix.mark_unknown(Component::Cost),
        }
        let Some(made) = &ingredient.house_made else {
            return from_label;
        };
        if let Some(known) = self.made.get(&ingredient.id) {
            return known.clone();
        }
        let Some(mut from_recipe) = self.one_gram_made(ingredient, slots) else {
            return from_label;
        };
        let kept = 1.0 - made.waste_percent / 100.0;
        let cost = from_recipe.mix.get(Component::Cost) / kept.max(0.01);
        let cost_known = from_recipe.mix.knows(Component::Cost);
        if ingredient.composition.figures.is_empty() {
            for slot in Component::ALL.len()..COMPONENTS {
                from_recipe.mix.of[slot] += from_label.mix.of[slot];
            }
            from_recipe
                .sensitivities
                .append(&mut from_label.sensitivities);
            from_label = from_recipe;
        }
        from_label.mix.set(Component::Cost, cost);
        if cost_known {
            from_label.mix.unknown &= !Component::Cost.bit();
        } else {
            from_label.mix.mark_unknown(Component::Cost);
        }
        if self.making.is_empty() || !self.making.contains(&ingredient.id) {
            self.made.insert(ingredient.id.clone(), from_label.clone());
        }
        from_label
    }

    /// One gram of what a batch yields: the sum of its lines, with water making up the difference between what went in
    /// and the yield (soaked up, boiled off or poured away). `None` in a circle or without the recipe.
    fn one_gram_made(&mut self, ingredient: &Ingredient, slots: &mut Slots) -> Option<PerGram> {
        let made = ingredient.house_made.as_ref()?;
        let recipe = self.book.recipe(&made.recipe)?;
        let grams = made.yield_grams.value;
        if self.making.contains(&ingredient.id) || grams <= 0.0 {
            return None;
        }
        self.making.push(ingredient.id.clone());
        let mut batch = Mix::EMPTY;
        let mut by_cause: BTreeMap<Cause, Mix> = BTreeMap::new();
        for line in resolve(recipe, None).0.lines() {
            let Some(found) = self.book.ingredient(&line.ingredient) else {
                batch.unknown |= unknown_mix().unknown;
                continue;
            };
            let per_gram = self.one_gram(found, slots);
            let count = line
                .amount
                .number()
                .filter(|_| !line.amount.fills())
                .unwrap_or(0.0);
            let celsius = line
                .temperature
                .unwrap_or(self.book.settings.room_temperature);
            let Some(portion) = portion(self.book, found, &per_gram.mix, &line.amount, celsius)
            else {
                batch.unknown |= unknown_mix().unknown;
                continue;
            };
            let line_grams = count * portion.grams;
            batch.add_times(&per_gram.mix, line_grams);
            for sensitivity in per_gram.sensitivities {
                // One cause, one effect: a syrup that is in many parts of a batch is off in all of them together.
                by_cause
                    .entry(sensitivity.cause)
                    .or_insert(Mix::EMPTY)
                    .add_times(&sensitivity.change, line_grams / grams);
            }
        }
        self.making.pop();
        let soaked = grams - batch.get(Component::Mass);
        let water = batch.get(Component::Water) + batch.get(Component::Ice) + soaked;
        if water < 0.0 {
            self.findings.push(Finding::error(
                Place::Ingredient(ingredient.id.clone(), "house_made"),
                FindingKind::OutOfRange {
                    what: "the yield".to_owned(),
                    found: format!("{grams} g"),
                    expected: "at least the solids that go into a batch",
                },
            ));
            batch.unknown |= unknown_mix().unknown;
        }
        batch.set(Component::Ice, 0.0);
        batch.set(Component::Water, water.max(0.0));
        batch.set(Component::Mass, grams);
        let mix = batch.times(1.0 / grams);
        let relative = made.yield_grams.standard_uncertainty() / grams;
        let mut change = mix.times(-relative);
        change.set(Component::Mass, 0.0);
        change.set(Component::Water, mix.dry_matter() * relative);
        change.unknown = 0;
        let mut sensitivities: Vec<Sensitivity> = by_cause
            .into_iter()
            .map(|(cause, change)| Sensitivity { cause, change })
            .collect();
        sensitivities.push(Sensitivity {
            cause: Cause::Yield(ingredient.id.clone()),
            change,
        });
        Some(PerGram { mix, sensitivities })
    }
}

/// Enthalpy of one gram at its temperature, kJ; dry crystals bring the chill of dissolving along.
fn heat_of_one_gram(ingredient: &Ingredient, mix: &Mix, celsius: f64) -> f64 {
    let heat = enthalpy(mix, celsius);
    if ingredient.form != Form::Crystals {
        return heat;
    }
    let sugars = mix.get(Component::Sugars);
    let glucose = mix.get(Component::Glucose);
    let crystal = |grams: f64, heat_of_solution: f64| {
        let dry = sugar_solution::crystal_enthalpy_kj_per_kg(celsius, heat_of_solution);
        grams * (dry - sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(celsius)) / 1000.0
    };
    heat + crystal(
        glucose,
        sugar_solution::GLUCOSE_ANHYDROUS_HEAT_OF_SOLUTION_KJ_PER_KG,
    ) + crystal(
        sugars - glucose,
        sugar_solution::SUCROSE_HEAT_OF_SOLUTION_KJ_PER_KG,
    )
}

fn fill_in(
    entry: &mut PreparedLine,
    ingredient: &Ingredient,
    amount: &Amount,
    per_gram: &PerGram,
    portion: &Portion,
    temperature_cause: Option<Cause>,
    prepared: &mut Prepared,
) {
    let mut gram = per_gram.mix;
    gram.set(
        Component::Heat,
        heat_of_one_gram(ingredient, &per_gram.mix, entry.celsius),
    );
    if matches!(entry.role, Role::Water | Role::Tea | Role::Ice) {
        gram.set(Component::Diluting, 1.0);
    }
    entry.per_unit = gram.times(portion.grams);
    entry.grams_per_unit = portion.grams;
    let rim_volume = prepared
        .setup
        .capacity
        .map(|capacity| capacity - prepared.setup.head_room);
    let mut push = |cause: Cause, change: Mix, scaling: Scaling| {
        let cause = prepared.cause(cause);
        entry.sensitivities.push(LineSensitivity {
            cause,
            change,
            scaling,
        });
    };
    for sensitivity in &per_gram.sensitivities {
        let mut change = sensitivity.change;
        let mut moved = per_gram.mix;
        moved.add_times(&change, 1.0);
        change.set(
            Component::Heat,
            heat_of_one_gram(ingredient, &moved, entry.celsius) - gram.get(Component::Heat),
        );
        push(
            sensitivity.cause.clone(),
            change.times(portion.grams),
            Scaling::PerUnit,
        );
    }
    let id = || ingredient.id.clone();
    if let Some(cause) = temperature_cause {
        let warmer = heat_of_one_gram(
            ingredient,
            &per_gram.mix,
            entry.celsius + TEMPERATURE_UNCERTAINTY,
        );
        let mut change = Mix::EMPTY;
        change.set(
            Component::Heat,
            (warmer - gram.get(Component::Heat)) * portion.grams,
        );
        push(cause, change, Scaling::PerUnit);
    }
    let scaled = |grams: f64| Mix {
        unknown: 0,
        ..gram.times(grams)
    };
    if let Amount::Count(_, measure) = amount {
        push(
            Cause::Calibration(measure.clone(), id()),
            scaled(portion.grams * portion.calibration),
            Scaling::PerUnit,
        );
        push(
            Cause::UseScatter(entry.id.clone()),
            scaled(portion.scatter),
            Scaling::PerRootUnit,
        );
    }
    if let Some((relative, bulk)) = portion.density {
        let cause = if bulk {
            Cause::BulkDensity(id())
        } else {
            Cause::Density(id())
        };
        push(cause, scaled(portion.grams * relative), Scaling::PerUnit);
    }
    // The rim is a mark like any other.
    let rim = rim_volume
        .filter(|_| *amount == Amount::FillToRim)
        .unwrap_or(0.0);
    let offset = portion.offset + MARK_UNCERTAINTY * rim * portion.grams;
    if offset > 0.0 {
        push(
            Cause::Reading(entry.id.clone()),
            scaled(offset),
            Scaling::Once,
        );
    }
}
