//! All look-ups happen here: measures, labels and profiles become mixes per unit, and [`super::figures`] then allocates nothing.

mod batch;
mod line;
mod setup;

use std::collections::BTreeMap;

use super::cause::Cause;
use super::composition::{PerGram, Slots};
use super::cooling::CoolingCurve;
use super::kind::Assumption;
use super::mix::{COMPONENTS, HIGH_POTENCY_SLOTS, Mix};
use super::physics::{Freezing, Wall};
use crate::book::{
    Book, Finding, FindingKind, HighPotencySweetener, Ingredient, IngredientId, LineId, Place,
    Recipe, Resolved, Role, SlotKind, Stage, resolve,
};

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
    /// Whether it is loose ice, which melts into the drink wherever it lies.
    pub is_ice: bool,
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
    /// Relative sweetness at the drinking temperature, in the order of [`super::Sweet::ALL`].
    pub sweetness: [f64; 5],
    /// Which high-potency sweetener each slot holds.
    pub sweeteners: [Option<HighPotencySweetener>; HIGH_POTENCY_SLOTS],
    /// Factor on the sweetness of each slot; 1, unless its uncertainty is tried out.
    pub potency: [f64; HIGH_POTENCY_SLOTS],
    /// Factor on what several high-potency sweeteners taste of together; 1, unless its uncertainty is tried out.
    pub mixture: f64,
    /// How the freezing point departs from the law.
    pub freezing: Freezing,
    /// Part of the ice that melts in the end which has not melted yet; 0, unless its uncertainty is tried out.
    pub unmelted: f64,
    /// Part of the way to the temperature of the room that is lost while mixing and pouring; 0, unless its uncertainty is tried
    /// out.
    pub heat_lost: f64,
    /// Factor on the volume of the drink; 1, unless its uncertainty is tried out.
    pub volume: f64,
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
    /// How sweet the sweetener of a slot is, as a part of it.
    Potency(usize, f64),
    /// What several sweeteners taste of together, as a part of it.
    Mixture(f64),
    /// How far the freezing point is lowered, as a part of it, and by what nobody states, K.
    Freezing {
        /// As a part of it.
        relative: f64,
        /// Beside that, K.
        kelvin: f64,
    },
    /// The part of the melting that has not happened yet.
    Unmelted(f64),
    /// The part of the way to the temperature of the room that is lost.
    HeatLost(f64),
    /// The volume of the drink, as a part of it.
    Volume(f64),
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
    /// What is taken for granted in its lines.
    pub assumptions: Vec<AssumedIn>,
}

/// Something that is taken for granted in a line.
#[derive(Clone, Debug, PartialEq)]
pub struct AssumedIn {
    /// The line.
    pub line: LineId,
    /// The ingredient that it is assumed of: that of the line, or one that it is made of.
    pub whose: IngredientId,
    /// What is assumed.
    pub assumption: Assumption,
}

impl Prepared {
    fn new(setup: &Setup) -> Self {
        Self {
            lines: Vec::new(),
            setup: *setup,
            slots: Slots::default(),
            causes: Vec::new(),
            setup_changes: Vec::new(),
            findings: Vec::new(),
            assumptions: Vec::new(),
        }
    }

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
    prepared(&mut Preparation::of(book), resolved, slots, place)
}

/// The recipes of a house, one after the other: what one batch is made of is worked out once for all of them.
pub struct Kitchen<'book> {
    preparation: Preparation<'book>,
    slots: Slots,
}

impl<'book> Kitchen<'book> {
    /// The kitchen of a book.
    pub fn new(book: &'book Book) -> Self {
        Self {
            preparation: Preparation::of(book),
            slots: Slots::default(),
        }
    }

    /// Prepares the recipe as it is written.
    pub fn prepare(&mut self, recipe: &Recipe) -> Prepared {
        let place = Place::Recipe(recipe.id.clone(), "lines");
        let lines = resolve(recipe, None).0;
        prepared(&mut self.preparation, &lines, &mut self.slots, &place)
    }
}

fn prepared(
    preparation: &mut Preparation<'_>,
    resolved: &Resolved,
    slots: &mut Slots,
    place: &Place,
) -> Prepared {
    let book = preparation.book;
    preparation.place = place.clone();
    let setup = setup::setup(book, resolved);
    let mut prepared = preparation.lines(resolved, &setup, slots);
    for (slot, sweetener) in slots.sweeteners.iter().enumerate() {
        prepared.setup.sweeteners[slot] = Some(*sweetener);
    }
    prepared.slots.clone_from(slots);
    prepared.setup.cooling = setup::cooling(book, resolved, &prepared);
    setup::add_causes(book, resolved, &mut prepared);
    prepared.findings.append(&mut preparation.findings);
    add_slot_findings(book, resolved, place, &mut prepared.findings);
    prepared
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
        (
            SlotKind::Flavours,
            flavours.len(),
            super::mix::FLAVOUR_SLOTS,
        ),
        (
            SlotKind::HighPotencySweeteners,
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
    /// House-made ingredients that are being worked out, to notice a circle.
    making: Vec<IngredientId>,
    /// House-made ingredients that have been worked out: a batch may be part of many.
    made: BTreeMap<IngredientId, PerGram>,
    /// What is wrong with batches.
    findings: Vec<Finding>,
}

impl<'book> Preparation<'book> {
    fn of(book: &'book Book) -> Self {
        Self {
            book,
            place: Place::Settings,
            making: Vec::new(),
            made: BTreeMap::new(),
            findings: Vec::new(),
        }
    }
}
