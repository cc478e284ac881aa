//! A version whose look-ups are done: what the solver takes.

use std::hash::{Hash, Hasher};

use super::cooling::CoolingCurve;
use super::physics::{Freezing, Wall};
use crate::balance::assumption::Assumption;
use crate::balance::cause::Cause;
use crate::balance::mix::{HIGH_POTENCY_SLOTS, Mix};
use crate::balance::number::Number;
use crate::balance::slots::Slots;
use crate::book::{Finding, HighPotencySweetener, IngredientId, LineId, Role, Stage};

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

impl Fill {
    /// The volume that is filled, ml; `None` at the rim of no cup.
    pub fn mark<N>(self, setup: &Setup<N>) -> Option<f64> {
        match self {
            Self::Volume(millilitres) => Some(millilitres),
            Self::Rim => Some(setup.capacity? - setup.head_room),
        }
    }
}

/// Everything apart from the lines that a figure depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setup<N = f64> {
    /// What the drink is mixed in before it is poured.
    pub shaker: Option<Wall<N>>,
    /// The cup.
    pub cup: Wall<N>,
    /// Whether the ice stays behind in the shaker.
    pub strained: bool,
    /// Volume of the cup to the rim, ml.
    pub capacity: Option<f64>,
    /// Room that stays free below the rim, ml.
    pub head_room: f64,
    /// How a drink cools in the cup with its usual closure.
    pub cooling: Option<CoolingCurve>,
    /// Factor on the minutes of cooling; 1, unless their uncertainty is tried out.
    pub cooling_time_factor: N,
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
    /// Relative sweetness at the drinking temperature, in the order of [`crate::balance::Sweet::ALL`].
    pub sweetness: [N; 5],
    /// Which high-potency sweetener each slot holds.
    pub sweeteners: [Option<HighPotencySweetener>; HIGH_POTENCY_SLOTS],
    /// Factor on the sweetness of each slot; 1, unless its uncertainty is tried out.
    pub potency: [N; HIGH_POTENCY_SLOTS],
    /// Factor on what several high-potency sweeteners taste of together; 1, unless its uncertainty is tried out.
    pub mixture: N,
    /// How the freezing point departs from the law.
    pub freezing: Freezing<N>,
    /// Part of the ice that melts in the end which has not melted yet; 0, unless its uncertainty is tried out.
    pub unmelted: N,
    /// Part of the way to the temperature of the room that is lost while mixing and pouring; 0, unless its uncertainty is tried
    /// out.
    pub heat_lost: N,
    /// Factor on the volume of the drink; 1, unless its uncertainty is tried out.
    pub volume: N,
    /// Whether there is ice in it.
    pub iced: bool,
}

impl<N: Number> Setup<N> {
    /// The setup with plain numbers, as others that do not move.
    pub(super) fn lifted(plain: &Setup) -> Self {
        let wall = |wall: Wall| Wall {
            heat_capacity: N::from(wall.heat_capacity),
            celsius: N::from(wall.celsius),
        };
        Self {
            shaker: plain.shaker.map(wall),
            cup: wall(plain.cup),
            strained: plain.strained,
            capacity: plain.capacity,
            head_room: plain.head_room,
            cooling: plain.cooling,
            cooling_time_factor: N::from(plain.cooling_time_factor),
            room: plain.room,
            drinking: plain.drinking,
            ice_bulk_density: plain.ice_bulk_density,
            serviceware_cost: plain.serviceware_cost,
            serviceware_cost_known: plain.serviceware_cost_known,
            sweetness: plain.sweetness.map(N::from),
            sweeteners: plain.sweeteners,
            potency: plain.potency.map(N::from),
            mixture: N::from(plain.mixture),
            freezing: Freezing {
                factor: N::from(plain.freezing.factor),
                kelvin: N::from(plain.freezing.kelvin),
            },
            unmelted: N::from(plain.unmelted),
            heat_lost: N::from(plain.heat_lost),
            volume: N::from(plain.volume),
            iced: plain.iced,
        }
    }
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
    /// A mark of each cause, by which most of the others are told from it at a glance.
    marks: Vec<u64>,
    /// What the causes do to the setup.
    pub setup_changes: Vec<(usize, SetupChange)>,
    /// What could not be looked up.
    pub findings: Vec<Finding>,
    /// What is taken for granted in its lines.
    pub assumptions: Vec<AssumedIn>,
}

/// Mixes a value down to one word: equal values have equal marks.
struct Mark(u64);

impl Mark {
    fn of(value: &impl Hash) -> u64 {
        let mut mark = Self(0);
        value.hash(&mut mark);
        mark.finish()
    }
}

impl Hasher for Mark {
    fn finish(&self) -> u64 {
        self.0
    }

    fn write(&mut self, bytes: &[u8]) {
        // An odd number with as many ones as noughts, in no order.
        const SPREAD: u64 = 0x9E37_79B9_7F4A_7C15;
        for chunk in bytes.chunks(size_of::<u64>()) {
            let mut word = [0; size_of::<u64>()];
            word[..chunk.len()].copy_from_slice(chunk);
            let mixed = (self.0 ^ u64::from_le_bytes(word)).wrapping_mul(SPREAD);
            self.0 = mixed.rotate_left(32);
        }
    }
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
    pub(in crate::balance) fn new(setup: &Setup) -> Self {
        Self {
            lines: Vec::new(),
            setup: *setup,
            slots: Slots::default(),
            causes: Vec::new(),
            marks: Vec::new(),
            setup_changes: Vec::new(),
            findings: Vec::new(),
            assumptions: Vec::new(),
        }
    }

    /// The index of a cause, entered when it is new.
    pub(in crate::balance) fn cause(&mut self, cause: Cause) -> usize {
        let mark = Mark::of(&cause);
        let mut known = self.marks.iter().zip(&self.causes);
        if let Some(at) = known.position(|(known, other)| *known == mark && *other == cause) {
            return at;
        }
        self.marks.push(mark);
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
