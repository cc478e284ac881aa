//! What is wrong with a book, as facts with a place.

use std::fmt;

use super::{IngredientId, LineId, MeasureId, RecipeId, VersionId, VesselId};

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
}

impl fmt::Display for Place {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Settings => write!(formatter, "settings"),
            Self::Ingredient(id, field) => write!(formatter, "ingredient `{id}`, {field}"),
            Self::Measure(id, field) => write!(formatter, "measure `{id}`, {field}"),
            Self::Vessel(id, field) => write!(formatter, "vessel `{id}`, {field}"),
            Self::Recipe(id, field) => write!(formatter, "recipe `{id}`, {field}"),
            Self::Line(recipe, None, line) => write!(formatter, "recipe `{recipe}`, line `{line}`"),
            Self::Line(recipe, Some(version), line) => {
                write!(formatter, "recipe `{recipe}`, version `{version}`, line `{line}`")
            }
            Self::Version(recipe, version) => write!(formatter, "recipe `{recipe}`, version `{version}`"),
            Self::Approval(recipe, number) => write!(formatter, "recipe `{recipe}`, approval {number}"),
        }
    }
}

/// What is wrong, with the facts that a sentence needs.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FindingKind {
    /// An id that names nothing.
    #[error("there is no {kind} `{id}`; {}", nearest_advice(.nearest))]
    Dangling {
        /// "ingredient", "measure" …
        kind: &'static str,
        /// The id.
        id: String,
        /// Ids that look like it.
        nearest: Vec<String>,
    },
    /// The same id twice in one recipe.
    #[error("the id `{id}` is used twice in this recipe; give one of them another id")]
    DuplicateInRecipe {
        /// The id.
        id: String,
    },
    /// Versions that build on each other in a circle.
    #[error("the versions build on each other in a circle: {}; let one of them build on the recipe", .chain.join(" → "))]
    VersionCycle {
        /// The ids in order, the first one again at the end.
        chain: Vec<String>,
    },
    /// House-made ingredients that need each other.
    #[error("house-made ingredients need each other in a circle: {}; take one of them out of the recipe of the other", .chain.join(" → "))]
    HouseMadeCycle {
        /// The ids in order, the first one again at the end.
        chain: Vec<String>,
    },
    /// A change whose target is gone.
    #[error("a change of {field} has no target any more; delete the change or bring the line back")]
    ChangeWithoutTarget {
        /// What it changes.
        field: &'static str,
    },
    /// A number outside what is possible.
    #[error("{what} is {found}; expected {expected}")]
    OutOfRange {
        /// What the number is.
        what: String,
        /// The number as text.
        found: String,
        /// What is possible.
        expected: &'static str,
    },
    /// Parts that add up to more than the whole.
    #[error("{parts} add up to {sum:.1} g per 100 g; check the figures and their basis")]
    SumOver100 {
        /// Which parts.
        parts: &'static str,
        /// Their sum.
        sum: f64,
    },
    /// A part that is larger than what it is a part of.
    #[error("{part} ({part_value}) are more than {whole} ({whole_value}) that they are a part of; check the label")]
    PartOverWhole {
        /// The part.
        part: &'static str,
        /// Its value.
        part_value: f64,
        /// The whole.
        whole: &'static str,
        /// Its value.
        whole_value: f64,
    },
    /// A spoon that is not what it is called.
    #[error(
        "a {name} of {nominal_ml} ml holds {found_ml:.1} ml by its readings: a bigger spoon, a heaped one, or grams read as \
         millilitres (5 ml of a 77 °Brix syrup weigh about 7 g)"
    )]
    SpoonNotAsCalled {
        /// The name of the spoon.
        name: String,
        /// What it is called to hold.
        nominal_ml: f64,
        /// What it holds.
        found_ml: f64,
    },
    /// A measure that nobody has weighed.
    #[error("no readings yet; weigh ten uses together three times")]
    NeverCalibrated,
    /// More flavours or sweeteners in one drink than the engine carries.
    #[error("{count} {kind} in one drink; only the first {limit} are compared")]
    TooManySlots {
        /// "flavours", "high-potency sweeteners".
        kind: &'static str,
        /// How many there are.
        count: usize,
        /// How many there may be.
        limit: usize,
    },
    /// More than one line takes what the others leave.
    #[error("more than one line fills up; only one amount can be left open")]
    SeveralFillAmounts,
    /// An amount in millilitres whose mass can't be told.
    #[error("{what}; state its density or weigh the measure with it")]
    NoMass {
        /// Which ingredient, and why.
        what: String,
    },
    /// A day that is no day.
    #[error("`{found}` is no date; expected year-month-day, such as 2026-05-04")]
    NoDate {
        /// What was found.
        found: String,
    },
    /// A drink without a cup.
    #[error("no cup is named; volume, fill and serving temperature need one")]
    NoCup,
}

fn nearest_advice(nearest: &[String]) -> String {
    if nearest.is_empty() {
        "add it or name another".to_owned()
    } else {
        let quoted: Vec<String> = nearest.iter().map(|id| format!("`{id}`")).collect();
        format!("did you mean {}?", quoted.join(" or "))
    }
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
        Self { severity: Severity::Error, place, kind }
    }

    /// A warning at a place.
    pub fn warning(place: Place, kind: FindingKind) -> Self {
        Self { severity: Severity::Warning, place, kind }
    }
}

impl fmt::Display for Finding {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "{}: {}", self.place, self.kind)
    }
}
