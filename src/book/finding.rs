//! What is wrong with a book, as facts with a place.

use super::{
    Allergen, Axis, ChangedField, FigureName, FigureRange, IngredientId, LineId, MeasureId,
    Miscalled, Nutrient, RecipeId, TastingId, VersionId, VesselId,
};

/// How bad a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth a look; figures can be computed.
    Warning,
    /// Something is wrong; figures that need it are not known.
    Error,
}

impl Severity {
    /// The word in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Warning => "warning",
            Self::Error => "error",
        }
    }
}

/// Where in the book something stands.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// The shop's settings.
    Settings,
    /// An ingredient, and the field in it.
    Ingredient(IngredientId, &'static str),
    /// A measure, and the field in it.
    Measure(MeasureId, &'static str),
    /// A vessel, and the field in it.
    Vessel(VesselId, &'static str),
    /// A recipe as a whole, and the field in it.
    Recipe(RecipeId, &'static str),
    /// A line of a recipe or of a version.
    Line(RecipeId, Option<VersionId>, LineId),
    /// A version of a recipe.
    Version(RecipeId, VersionId),
    /// An approval of a recipe, counted from 1.
    Approval(RecipeId, usize),
    /// A tasting, and the field in it.
    Tasting(TastingId, &'static str),
}

/// What an id is meant to name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum IdKind {
    /// An ingredient.
    Ingredient,
    /// A measure.
    Measure,
    /// A vessel.
    Vessel,
    /// A recipe.
    Recipe,
    /// A version of a recipe.
    Version,
    /// A line or an instruction of a recipe.
    Line,
    /// A tasting.
    Tasting,
}

impl IdKind {
    /// The word for machines, by which a sentence is chosen.
    pub fn key(self) -> &'static str {
        match self {
            Self::Ingredient => "ingredient",
            Self::Measure => "measure",
            Self::Vessel => "vessel",
            Self::Recipe => "recipe",
            Self::Version => "version",
            Self::Line => "line",
            Self::Tasting => "tasting",
        }
    }
}

/// An entry that further typing puts right.
#[derive(Clone, Debug, PartialEq)]
pub enum Unfinished {
    /// A reading that nobody has weighed yet.
    EmptyReading,
    /// Fractions of sugars that do not sum to 1.
    SugarFractions {
        /// Their sum.
        sum: f64,
    },
    /// A window of temperatures with the warmer end first.
    Window {
        /// Which window.
        what: FigureName,
        /// Its first end, °C.
        from: f64,
        /// Its second end, °C.
        to: f64,
    },
    /// A noticeable step of nothing.
    NoStep(Axis),
    /// More people who were right than people who answered.
    MoreRightThanPeople {
        /// People who answered.
        people: u32,
        /// Those who were right.
        right: u32,
    },
    /// What compares two cups has another number of them.
    NotTwoCups {
        /// How many there are.
        cups: usize,
    },
    /// A note on a cup that the tasting does not have.
    NoSuchCup {
        /// The number of the cup, from 1.
        cup: u32,
        /// How many cups there are.
        cups: usize,
    },
}

/// What the yield of a batch can't pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YieldLimit {
    /// It is more than what goes in.
    WhatGoesIn,
    /// It is less than the solids that go in.
    Solids,
}

/// Of what one drink carries a limited number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SlotKind {
    /// Flavours.
    Flavours,
    /// High-potency sweeteners.
    HighPotencySweeteners,
}

/// What an ingredient is stated to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StatedClaim {
    /// Free of milk.
    DairyFree,
    /// Free of everything from animals.
    Vegan,
    /// Listed with all its allergens.
    AllergensListed,
}

/// What speaks against a claim.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AgainstClaim {
    /// An allergen that it is stated to contain.
    Contains(Allergen),
    /// Its sugars are lactose.
    Lactose,
    /// Its sugars are those of honey.
    Honey,
    /// It is stated not to be dairy-free.
    NotDairyFree,
    /// A part of it that contains an allergen.
    PartContains(IngredientId, Allergen),
    /// A part of it that is stated not to be so.
    PartIsNot(IngredientId),
}

/// What is wrong, with the facts that a sentence needs.
#[derive(Clone, Debug, PartialEq)]
pub enum FindingKind {
    /// An id that names nothing.
    Dangling {
        /// What it should name.
        kind: IdKind,
        /// The id.
        id: String,
        /// Ids that look like it.
        nearest: Vec<String>,
    },
    /// The same id twice in one recipe.
    DuplicateInRecipe {
        /// The id.
        id: String,
    },
    /// Versions that build on each other in a circle.
    VersionCycle {
        /// The ids in order, the first one again at the end.
        chain: Vec<String>,
    },
    /// House-made ingredients that need each other.
    HouseMadeCycle {
        /// The ids in order, the first one again at the end.
        chain: Vec<String>,
    },
    /// A change whose target is gone.
    ChangeWithoutTarget {
        /// What it changes.
        field: ChangedField,
    },
    /// A number outside what is possible.
    OutOfRange {
        /// What the number is.
        what: FigureName,
        /// The number, in the unit of the range.
        value: f64,
        /// What is possible.
        range: FigureRange,
    },
    /// An entry that more than one field makes, and that is not right until all of them are typed. An edit may pass through it.
    Unfinished(Unfinished),
    /// A batch that weighs what can't be of what goes into it.
    ImpossibleYield {
        /// The stated yield, g.
        grams: f64,
        /// What it passes.
        limit: YieldLimit,
    },
    /// Parts that add up to more than the whole.
    SumOverWhole {
        /// Which parts.
        parts: Vec<Nutrient>,
        /// Their sum, g.
        sum: f64,
        /// The whole, g.
        whole: f64,
    },
    /// A part that is larger than what it is a part of.
    PartOverWhole {
        /// The part.
        part: Nutrient,
        /// Its value.
        part_value: f64,
        /// The whole.
        whole: Nutrient,
        /// Its value.
        whole_value: f64,
    },
    /// A measure that is not of the size that it is called.
    SizeNotAsCalled {
        /// The name of the measure.
        name: String,
        /// What it is called, and what it holds.
        miscalled: Miscalled,
    },
    /// Readings of one measure with one ingredient that are far apart.
    ReadingsDisagree {
        /// The least that a use weighs, g.
        least: f64,
        /// The most, g.
        most: f64,
    },
    /// A measure that nobody has weighed.
    NeverCalibrated,
    /// More flavours or sweeteners in one drink than the engine carries.
    TooManySlots {
        /// What there are too many of.
        kind: SlotKind,
        /// How many there are.
        count: usize,
        /// How many there may be.
        limit: usize,
    },
    /// More than one line takes what the others leave.
    SeveralFillAmounts,
    /// An amount in millilitres whose mass can't be told.
    NoMass {
        /// The ingredient.
        ingredient: IngredientId,
        /// The measure that it is counted in; none for millilitres.
        measure: Option<MeasureId>,
    },
    /// A name with characters that nobody sees.
    HiddenCharacters {
        /// The name with those characters written out.
        shown: String,
    },
    /// A day that is no day.
    NoDate {
        /// What was found.
        found: String,
    },
    /// An energy that the other figures do not give.
    EnergyNotOfComposition {
        /// The stated energy, kJ in the basis of the composition.
        stated: f64,
        /// The least that the composition gives, kJ.
        from: f64,
        /// The most that it gives, kJ.
        to: f64,
        /// How far the stated one is outside, percent; none when the composition gives hardly any.
        percent: Option<f64>,
        /// The stated number would fit if it were kilocalories.
        fits_as_kilocalories: bool,
    },
    /// A density that the composition does not give.
    DensityNotOfComposition {
        /// Which density.
        what: FigureName,
        /// The stated one, g/ml.
        stated: f64,
        /// The least that is likely, g/ml.
        low: f64,
        /// The most that is likely, g/ml.
        high: f64,
    },
    /// A claim that the other figures speak against.
    ClaimNotCarried {
        /// What is claimed.
        claim: StatedClaim,
        /// What speaks against it.
        against: AgainstClaim,
    },
    /// A price that nobody has looked at for long.
    StalePrice {
        /// Day of the price.
        date: String,
        /// Full months from it to the newest day.
        months: u32,
        /// The newest day in the book.
        newest: String,
    },
    /// An ingredient that nobody sells any more, in what is still made.
    NoLongerSold {
        /// The ingredient.
        ingredient: IngredientId,
    },
    /// More answers than people who are named: whoever tastes again is no further person.
    MoreAnswersThanPeople {
        /// Answers that are counted.
        answers: u32,
        /// People who are named.
        named: usize,
    },
    /// Versions that would take too long to carry out.
    TooManyToCheck,
    /// There is more than is listed.
    MoreFindings {
        /// How many are listed.
        listed: usize,
    },
    /// An amount that fills and never gets there.
    FillOutOfReach,
    /// Something steeped that is no leaf.
    NotALeaf,
    /// A drink without a cup.
    NoCup,
    /// Marked approved, though no approval of it is kept.
    MarkedOnly,
    /// Marked approved, though it is no longer what was approved.
    ChangedSinceApproval {
        /// Day of the approval.
        date: String,
    },
}

/// One thing that is wrong, and where.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// How bad it is.
    pub severity: Severity,
    /// Where it stands.
    pub place: Place,
    /// What is wrong.
    pub kind: FindingKind,
}

impl Finding {
    /// An error at a place.
    pub fn error(place: Place, kind: FindingKind) -> Self {
        Self {
            severity: Severity::Error,
            place,
            kind,
        }
    }

    /// A warning at a place.
    pub fn warning(place: Place, kind: FindingKind) -> Self {
        Self {
            severity: Severity::Warning,
            place,
            kind,
        }
    }
}

impl FindingKind {
    /// The word for machines.
    pub fn key(&self) -> &'static str {
        match self {
            Self::Dangling { .. } => "dangling",
            Self::DuplicateInRecipe { .. } => "duplicate-in-recipe",
            Self::VersionCycle { .. } => "version-cycle",
            Self::HouseMadeCycle { .. } => "house-made-cycle",
            Self::ChangeWithoutTarget { .. } => "change-without-target",
            Self::OutOfRange { .. } => "out-of-range",
            Self::Unfinished(_) => "unfinished",
            Self::ImpossibleYield { .. } => "impossible-yield",
            Self::SumOverWhole { .. } => "sum-over-whole",
            Self::PartOverWhole { .. } => "part-over-whole",
            Self::SizeNotAsCalled { .. } => "size-not-as-called",
            Self::ReadingsDisagree { .. } => "readings-disagree",
            Self::NeverCalibrated => "never-calibrated",
            Self::TooManySlots { .. } => "too-many-slots",
            Self::SeveralFillAmounts => "several-fill-amounts",
            Self::NoMass { .. } => "no-mass",
            Self::HiddenCharacters { .. } => "hidden-characters",
            Self::NoDate { .. } => "no-date",
            Self::EnergyNotOfComposition { .. } => "energy-not-of-composition",
            Self::DensityNotOfComposition { .. } => "density-not-of-composition",
            Self::ClaimNotCarried { .. } => "claim-not-carried",
            Self::StalePrice { .. } => "stale-price",
            Self::NoLongerSold { .. } => "no-longer-sold",
            Self::MoreAnswersThanPeople { .. } => "more-answers-than-people",
            Self::TooManyToCheck => "too-many-to-check",
            Self::MoreFindings { .. } => "more-findings",
            Self::FillOutOfReach => "fill-out-of-reach",
            Self::NotALeaf => "not-a-leaf",
            Self::NoCup => "no-cup",
            Self::MarkedOnly => "marked-only",
            Self::ChangedSinceApproval { .. } => "changed-since-approval",
        }
    }
}
