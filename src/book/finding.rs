//! What is wrong with a book, as facts with a place.

use std::fmt;

use super::{IngredientId, LineId, MeasureId, Miscalled, RecipeId, VersionId, VesselId};
use crate::quantity::{show_compact, show_number};

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
                write!(
                    formatter,
                    "recipe `{recipe}`, version `{version}`, line `{line}`"
                )
            }
            Self::Version(recipe, version) => {
                write!(formatter, "recipe `{recipe}`, version `{version}`")
            }
            Self::Approval(recipe, number) => {
                write!(formatter, "recipe `{recipe}`, approval {number}")
            }
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
    #[error("the versions build on each other in a circle: {}; let one of them build on the recipe", chained(.chain))]
    VersionCycle {
        /// The ids in order, the first one again at the end.
        chain: Vec<String>,
    },
    /// House-made ingredients that need each other.
    #[error("house-made ingredients need each other in a circle: {}; take one of them out of the recipe of the other", chained(.chain))]
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
    /// An entry that more than one field makes, and that is not right until all of them are typed: a reading that nobody has
    /// weighed yet, fractions that do not sum to 1 yet. An edit may pass through it.
    #[error("{what} is {found}; expected {expected}")]
    Unfinished {
        /// What it is.
        what: String,
        /// What stands there as text.
        found: String,
        /// What is wanted.
        expected: &'static str,
    },
    /// Parts that add up to more than the whole.
    #[error("{parts} add up to {} g in {} g; check the figures and their basis", show_compact(round_to_tenths(*.sum)), show_compact(*.whole))]
    SumOverWhole {
        /// Which parts.
        parts: String,
        /// Their sum, g.
        sum: f64,
        /// The whole, g.
        whole: f64,
    },
    /// A part that is larger than what it is a part of.
    #[error("{part} ({}) are more than {whole} ({}) that they are a part of; check the label", show_compact(*.part_value), show_compact(*.whole_value))]
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
    /// A measure that is not of the size that it is called.
    #[error("“{name}”, {}", .miscalled.words(in_millilitres))]
    SizeNotAsCalled {
        /// The name of the measure.
        name: String,
        /// What it is called, and what it holds.
        miscalled: Miscalled,
    },
    /// Readings of one measure with one ingredient that are far apart.
    #[error(
        "the readings give {} to {} g a use of the same thing; expected one of them to be a slip: weigh once more",
        show_compact(round_to_tenths(*.least)), show_compact(round_to_tenths(*.most))
    )]
    ReadingsDisagree {
        /// The least that a use weighs, g.
        least: f64,
        /// The most, g.
        most: f64,
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
    /// A name with characters that nobody sees.
    #[error(
        "the name holds characters that nobody sees: “{shown}”; expected visible ones only, so type it anew"
    )]
    HiddenCharacters {
        /// The name with those characters written out.
        shown: String,
    },
    /// A day that is no day.
    #[error("`{found}` is no date; expected year-month-day, such as 2026-05-04")]
    NoDate {
        /// What was found.
        found: String,
    },
    /// An energy that the other figures do not give.
    #[error(
        "the energy is stated as {} kJ{}; expected {} to {} kJ by the composition (Regulation (EU) 1169/2011, Annex XIV){}",
        show_compact(*.stated), off_by(*.percent), whole(*.from), whole(*.to),
        if *.fits_as_kilocalories { ": the figure fits as kilocalories" } else { "" }
    )]
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
    #[error("the {what} is {} g/ml; expected {} to {} g/ml by the composition", show_compact(*.stated), show_number(*.low, 2), show_number(*.high, 2))]
    DensityNotOfComposition {
        /// "density", "bulk density".
        what: &'static str,
        /// The stated one, g/ml.
        stated: f64,
        /// The least that is likely, g/ml.
        low: f64,
        /// The most that is likely, g/ml.
        high: f64,
    },
    /// A claim that the other figures speak against.
    #[error("it is stated to be {claim}, but {against}; expected one of the two to be put right")]
    ClaimNotCarried {
        /// "vegan", "dairy-free", "complete in its allergens".
        claim: &'static str,
        /// What speaks against it.
        against: String,
    },
    /// A price that nobody has looked at for long.
    #[error(
        "the price is of {date}, {months} months before the newest day of the book, {newest}; ask for today's price"
    )]
    StalePrice {
        /// Day of the price.
        date: String,
        /// Full months from it to the newest day.
        months: u32,
        /// The newest day in the book.
        newest: String,
    },
    /// Versions that would take too long to carry out.
    #[error(
        "there are too many versions and changes to check them all; expected a few dozen a recipe"
    )]
    TooManyToCheck,
    /// There is more than is listed.
    #[error(
        "only the first {listed} findings of the book are listed; expected fewer, so begin with these"
    )]
    MoreFindings {
        /// How many are listed.
        listed: usize,
    },
    /// An amount that fills and never gets there.
    #[error(
        "no amount of it fills as far as this: its amount is not known; state it in grams, or fill up with another line"
    )]
    FillOutOfReach,
    /// Something steeped that is no leaf.
    #[error(
        "only leaf is steeped: what something else gives to the water is not known; enter the liquor as an ingredient with its own figures"
    )]
    NotALeaf,
    /// A drink without a cup.
    #[error("no cup is named; volume, fill and serving temperature need one")]
    NoCup,
}

/// Longest chain of ids that is written out; of a longer one the beginning and the end are.
const CHAIN: usize = 12;

fn chained(ids: &[String]) -> String {
    if ids.len() <= CHAIN {
        return ids.join(" → ");
    }
    let left_out = ids.len() - CHAIN;
    let (begin, end) = (&ids[..CHAIN - 1], &ids[ids.len() - 1..]);
    format!(
        "{} → … ({left_out} more) → {}",
        begin.join(" → "),
        end.join(" → ")
    )
}

fn in_millilitres(millilitres: f64) -> String {
    format!("{} ml", show_compact(round_to_tenths(millilitres)))
}

fn round_to_tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

fn whole(value: f64) -> String {
    show_compact(value.round())
}

/// ", 24 % too low"; nothing when it can't be told.
fn off_by(percent: Option<f64>) -> String {
    let Some(percent) = percent else {
        return String::new();
    };
    let word = if percent < 0.0 { "low" } else { "high" };
    format!(", {} % too {word}", show_compact(percent.abs().round()))
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

impl fmt::Display for Finding {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "{}: {}", self.place, self.kind)
    }
}
