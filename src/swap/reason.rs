//! Why nothing, or not enough, can be suggested: facts, of which `say` makes the sentences.

use crate::balance::Unweighed;
use crate::book::{Allergen, Amount, Axis, IngredientId};

use super::obstacle::Obstacle;
use super::shortfall::Hindrance;
use super::unheld::{Bound, Unheld};

/// Why nothing, or not enough, can be suggested.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// The ingredient that is to be replaced is not in the version.
    NotInVersion(IngredientId),
    /// Nobody knows what an amount of a drink weighs, and with it not how it tastes.
    NotWeighed(Unweighed),
    /// The sweetness of a drink is not known, and with it not what brings it back.
    SweetnessNotKnown {
        /// Of which drink.
        drink: ComparedDrink,
        /// Ingredients that don't state their sugars.
        missing: Vec<IngredientId>,
    },
    /// The drink must be vegan, and these are not, or are not known to be.
    NotVegan {
        /// The ingredients, each of them once.
        ingredients: Vec<IngredientId>,
        /// Whether they are known not to be.
        is_known: bool,
    },
    /// These contain an allergen that must not be in the drink.
    Contains {
        /// The ingredients, each of them once.
        ingredients: Vec<IngredientId>,
        /// The allergen.
        allergen: Allergen,
    },
    /// These don't state whether they contain what must not be in the drink.
    AllergensNotStated {
        /// The ingredients, each of them once.
        ingredients: Vec<IngredientId>,
        /// The allergens.
        allergens: Vec<Allergen>,
    },
    /// These may hold traces of what must not be in the drink. It forbids nothing, and the guest must hear of it.
    MayContain {
        /// The ingredients, each of them once.
        ingredients: Vec<IngredientId>,
        /// The allergen.
        allergen: Allergen,
    },
    /// No amounts are allowed.
    Impossible(Impossible),
    /// The closest amounts miss an axis by more than a noticeable step.
    NotReached {
        /// The axis.
        axis: Axis,
        /// How far it is off, in noticeable steps; more than the standard when positive.
        steps: f64,
        /// What stands in the way.
        why: Hindrance,
    },
    /// The search kept to these limits, and an axis is not reached.
    KeptTo(Vec<Bound>),
    /// These axes could not be compared.
    NotCompared {
        /// The ingredient that is added.
        with: IngredientId,
        /// The axes.
        axes: Vec<Axis>,
    },
    /// A limit that can't be held against the drink.
    Unheld(Unheld),
}

/// A drink whose taste is compared in a swap.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ComparedDrink {
    /// What the others are compared with.
    Standard,
    /// The other ingredient by equal measures.
    PlainSwap,
}

/// Why no amounts are allowed.
#[derive(Clone, Debug, PartialEq)]
pub enum Impossible {
    /// The closest amounts without one of the conditions break that condition.
    Forbidden(Forbidden),
    /// Even the least of all lines is too much for the cup.
    LeastOverfills {
        /// Part of the cup that it fills, percent.
        fill: f64,
        /// Part that may be filled, percent.
        room: f64,
    },
    /// No single condition stands in the way, but all of them together do.
    AllConditions,
}

/// A condition that amounts break.
#[derive(Clone, Debug, PartialEq)]
pub struct Forbidden {
    /// The condition, with figures.
    pub obstacle: Obstacle,
    /// The ingredient that brings most of what a cap limits; `None` for conditions that are no caps.
    pub carrier: Option<Carrier>,
}

/// What an ingredient brings of something that is limited.
#[derive(Clone, Debug, PartialEq)]
pub struct Carrier {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// How much it brings: g of sugar, kJ of energy or money, as the cap has it.
    pub amount: f64,
}

/// Why a drink can't be made in another way: in another cup, iced, hot, or with less sugar or ice.
#[derive(Clone, Debug, PartialEq)]
pub enum Unadaptable {
    /// It has no cup that its size could be told from.
    NoCup,
    /// It is iced already.
    AlreadyIced,
    /// No ingredient of the book is ice.
    NoIceInBook,
    /// It has no ice.
    NoIce,
    /// Its ice has no amount of its own: it fills the cup.
    IceFills,
    /// Whole measures of what sweetens it do not come near the level.
    NotInWholeMeasures {
        /// What sweetens it, with the smallest amount of each.
        sweeteners: Vec<(IngredientId, Amount)>,
    },
    /// Neither water nor tea is in it, which could be poured hot.
    NothingPouredHot,
    /// No amounts are allowed.
    Impossible(Impossible),
}

/// Why a drink has no sugar levels.
#[derive(Clone, Debug, PartialEq)]
pub enum NoLevels {
    /// Nobody knows what an amount of it weighs.
    NotWeighed(Unweighed),
    /// Its sweetness is not known.
    SweetnessNotKnown {
        /// Ingredients that don't state their sugars.
        missing: Vec<IngredientId>,
    },
    /// No line is there to sweeten.
    NoSweetener {
        /// Sugar that the other lines bring, g.
        sugar: f64,
    },
    /// What sweetens has no amount that could be made smaller step by step.
    NotInSteps {
        /// The sweeteners.
        sweeteners: Vec<IngredientId>,
    },
}

impl Reason {
    /// A word for programs that read what is said.
    pub fn word(&self) -> &'static str {
        match self {
            Self::NotInVersion(_) => "not-in-version",
            Self::NotWeighed(_) => "not-weighed",
            Self::SweetnessNotKnown { .. } => "sweetness-not-known",
            Self::NotVegan { is_known: true, .. } => "not-vegan",
            Self::NotVegan { .. } => "not-known-vegan",
            Self::Contains { .. } => "contains-allergen",
            Self::AllergensNotStated { .. } => "allergens-not-stated",
            Self::MayContain { .. } => "may-contain-allergen",
            Self::Impossible(impossible) => impossible.word(),
            Self::NotReached { .. } => "not-reached",
            Self::KeptTo(_) => "kept-to-limits",
            Self::NotCompared { .. } => "not-compared",
            Self::Unheld(_) => "limit-not-known",
        }
    }
}

impl Impossible {
    /// A word for programs that read what is said.
    pub fn word(&self) -> &'static str {
        match self {
            Self::Forbidden(forbidden) => forbidden.obstacle.word(),
            Self::LeastOverfills { .. } => "cup-too-small",
            Self::AllConditions => "all-conditions",
        }
    }
}

impl Unadaptable {
    /// A word for programs that read what is said.
    pub fn word(&self) -> &'static str {
        match self {
            Self::NoCup => "no-cup",
            Self::AlreadyIced => "already-iced",
            Self::NoIceInBook => "no-ice-in-book",
            Self::NoIce => "no-ice",
            Self::IceFills => "ice-fills",
            Self::NotInWholeMeasures { .. } => "not-in-whole-measures",
            Self::NothingPouredHot => "nothing-poured-hot",
            Self::Impossible(impossible) => impossible.word(),
        }
    }
}

impl NoLevels {
    /// A word for programs that read what is said.
    pub fn word(&self) -> &'static str {
        match self {
            Self::NotWeighed(_) => "not-weighed",
            Self::SweetnessNotKnown { .. } => "sweetness-not-known",
            Self::NoSweetener { .. } => "no-sweetener",
            Self::NotInSteps { .. } => "not-in-steps",
        }
    }
}
