//! What cautions say, as facts: ids, quantities and kinds. The sentences are made where they are said.

use crate::balance::diet::{AllergenSummary, Contradiction};
use crate::balance::measurand::Measurand;
use crate::balance::published::serving::ScaldTime;
use crate::balance::statement::StatementKind;
use crate::book::{IngredientId, VesselId};

/// What a caution is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CautionKind {
    /// Too hot to drink at once.
    Heat,
    /// Allergens, and what an entry says of them or of diets.
    Allergen,
    /// Choking.
    Choking,
    /// Milk or soy with acid.
    Curdling,
    /// Caffeine.
    Caffeine,
    /// Additives whose mention the law may ask for.
    Additive,
    /// How long and how warm something may be kept.
    Holding,
    /// More sugar than dissolves.
    Undissolved,
    /// It does not fit the cup.
    Fill,
    /// Something is not known.
    Unknown,
}

impl CautionKind {
    /// The word in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Heat => "heat",
            Self::Allergen => "allergen",
            Self::Choking => "choking",
            Self::Curdling => "curdling",
            Self::Caffeine => "caffeine",
            Self::Additive => "additive",
            Self::Holding => "holding",
            Self::Undissolved => "undissolved",
            Self::Fill => "fill",
            Self::Unknown => "unknown",
        }
    }
}

/// A warning, as a fact.
#[derive(Clone, Debug, PartialEq)]
pub enum CautionFact {
    /// Above [`crate::balance::published::serving::VERY_HOT_CELSIUS`].
    TooHot(Hot),
    /// Drawn through a wide straw and above [`super::HOT_FOR_A_WIDE_STRAW`].
    HotThroughWideStraw(Hot),
    /// Scalds before a person can help it.
    Scalds(Hot),
    /// What packs say of allergens.
    Allergens(AllergenSummary),
    /// Statements of ingredients that name what the entry leaves out or denies.
    StatementsContradict(Vec<NamedWords>),
    /// Claims of entries that something else in the book speaks against.
    ClaimsContradicted(Vec<Contradiction>),
    /// Small pieces that are drawn through a straw.
    Choking(Vec<IngredientId>),
    /// What is kept neither cold nor hot enough.
    KeptAt(Vec<KeptAt>),
    /// Until when things may be used.
    UseWithin(Vec<UseWithin>),
    /// Acid meets milk or soy.
    Curdles {
        /// Acid of the mixed drink, g per 100 ml, as far as it is known.
        acid: f64,
        /// Whether every ingredient states its acid.
        is_complete: bool,
    },
    /// Milk or soy meets something that is likely to be sour and does not say how sour it is.
    MayCurdle {
        /// What does not state its acid.
        acid_not_stated: Vec<IngredientId>,
    },
    /// Caffeine above a line of published guidance.
    Caffeine {
        /// Caffeine, mg, as far as it is known.
        milligrams: f64,
        /// Whether every ingredient states its caffeine.
        is_complete: bool,
        /// The highest line for a single dose that it is above.
        dose: Option<CaffeineDose>,
        /// Caffeine of a litre, mg, where that is above the line for a notice on the drink.
        per_litre: Option<f64>,
    },
    /// Ingredients that do not state their caffeine.
    CaffeineNotKnown(Vec<IngredientId>),
    /// Additives whose mention the law may ask for.
    Additives(Vec<Mention>),
    /// More sucrose than dissolves.
    Undissolved {
        /// Sucrose, g per 100 g of sucrose and water.
        found: f64,
        /// The most that dissolves, g per 100 g of both.
        most: f64,
        /// At this temperature, °C.
        celsius: f64,
    },
    /// It runs over.
    RunsOver {
        /// The cup.
        cup: VesselId,
        /// How full it is, percent.
        fill: f64,
        /// The most below its rim and closure, percent.
        most: f64,
    },
    /// What nobody knows of the drink.
    NotKnown(Vec<NotKnown>),
}

impl CautionFact {
    /// What it is about.
    pub fn kind(&self) -> CautionKind {
        match self {
            Self::TooHot(_) | Self::HotThroughWideStraw(_) | Self::Scalds(_) => CautionKind::Heat,
            Self::Allergens(_) | Self::StatementsContradict(_) | Self::ClaimsContradicted(_) => {
                CautionKind::Allergen
            }
            Self::Choking(_) => CautionKind::Choking,
            Self::KeptAt(_) | Self::UseWithin(_) => CautionKind::Holding,
            Self::Curdles { .. } | Self::MayCurdle { .. } => CautionKind::Curdling,
            Self::Caffeine { .. } | Self::CaffeineNotKnown(_) => CautionKind::Caffeine,
            Self::Additives(_) => CautionKind::Additive,
            Self::Undissolved { .. } => CautionKind::Undissolved,
            Self::RunsOver { .. } => CautionKind::Fill,
            Self::NotKnown(_) => CautionKind::Unknown,
        }
    }
}

/// How hot a drink is, and how soon it burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hot {
    /// Temperature as it is handed over, °C.
    pub celsius: f64,
    /// Until it burns the skin of adults.
    pub adult: Option<ScaldTime>,
    /// Until it burns the skin of small children.
    pub child: Option<ScaldTime>,
}

/// Words of the statement of an ingredient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NamedWords {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// The words, with commas between them.
    pub words: String,
}

/// An ingredient and the temperature at which it is kept.
#[derive(Clone, Debug, PartialEq)]
pub struct KeptAt {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// Its temperature, °C.
    pub celsius: f64,
    /// Whether it is kept warm rather than cold.
    pub is_warm: bool,
}

/// An ingredient and how long it may be used.
#[derive(Clone, Debug, PartialEq)]
pub struct UseWithin {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// Since when the time runs.
    pub since: Since,
    /// The shop's rule, hours; `None` when it has none.
    pub hours: Option<f64>,
}

/// Since when a holding time runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Since {
    /// Since tea was brewed.
    Brewing,
    /// Since the house made it.
    Making,
    /// Since the pack was opened.
    Opening,
}

/// A published line for one dose of caffeine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CaffeineDose {
    /// It may disturb sleep.
    Sleep,
    /// More than raises no concern in adults.
    Single,
}

/// Additives of one kind and where they are.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mention {
    /// What the words are a sign of.
    pub kind: StatementKind,
    /// The words, ingredient by ingredient.
    pub named: Vec<NamedWords>,
}

/// What is not known of a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotKnown {
    /// A figure.
    Figure(Measurand),
    /// Whether it is vegan.
    Vegan,
}
