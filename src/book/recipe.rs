//! Recipes: lines and instructions in order, versions as named changes, and approvals.

use super::{IngredientId, Item, LineId, MeasureId, RecipeId, Resolved, VersionId, VesselId};

/// Most lines and instructions of a recipe, and most changes of a version: far more than any drink has, and few enough that the
/// uncertainty of each line can be tried out against every figure while somebody types.
pub const MOST_LINES: usize = 1000;

/// The part that a line plays in a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// What carries the drink when it is neither tea nor water.
    Base,
    /// What it tastes of.
    Flavour,
    /// Milk, creamer or their plant counterparts.
    Creamer,
    /// What is there to sweeten.
    Sweetener,
    /// Brewed tea.
    Tea,
    /// Water.
    Water,
    /// Ice.
    Ice,
    /// What sits in the cup.
    Topping,
    /// What is there to be seen.
    Garnish,
}

impl Role {
    /// All roles.
    pub const ALL: [Self; 9] = [
        Self::Base,
        Self::Flavour,
        Self::Creamer,
        Self::Sweetener,
        Self::Tea,
        Self::Water,
        Self::Ice,
        Self::Topping,
        Self::Garnish,
    ];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Base => "base",
            Self::Flavour => "flavour",
            Self::Creamer => "creamer",
            Self::Sweetener => "sweetener",
            Self::Tea => "tea",
            Self::Water => "water",
            Self::Ice => "ice",
            Self::Topping => "topping",
            Self::Garnish => "garnish",
        }
    }
}

/// Where a line ends up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stage {
    /// Dissolves into the drink.
    #[default]
    Mixed,
    /// Sits in the cup.
    Topping,
    /// Floats on top: foam, cream.
    OnTop,
    /// Gives its extract and is taken out: tea leaf.
    Steeped,
}

impl Stage {
    /// All stages.
    pub const ALL: [Self; 4] = [Self::Mixed, Self::Topping, Self::OnTop, Self::Steeped];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Mixed => "mixed",
            Self::Topping => "topping",
            Self::OnTop => "on top",
            Self::Steeped => "steeped",
        }
    }
}

/// How much of something.
#[derive(Clone, Debug, PartialEq)]
pub enum Amount {
    /// Grams.
    Grams(f64),
    /// Millilitres at the temperature of the line.
    Millilitres(f64),
    /// So many uses of a measure.
    Count(f64, MeasureId),
    /// What is missing to this volume of the mixed drink, ml.
    FillTo(f64),
    /// What the cup still holds below its head room.
    FillToRim,
}

impl Amount {
    /// The number in it; `None` for "to the rim".
    pub fn number(&self) -> Option<f64> {
        match self {
            Self::Grams(number)
            | Self::Millilitres(number)
            | Self::Count(number, _)
            | Self::FillTo(number) => Some(*number),
            Self::FillToRim => None,
        }
    }

    /// The same kind of amount with another number.
    #[must_use]
    pub fn with_number(&self, number: f64) -> Self {
        match self {
            Self::Grams(_) => Self::Grams(number),
            Self::Millilitres(_) => Self::Millilitres(number),
            Self::Count(_, measure) => Self::Count(number, measure.clone()),
            Self::FillTo(_) => Self::FillTo(number),
            Self::FillToRim => Self::FillToRim,
        }
    }

    /// Whether it takes what the other lines leave.
    pub fn fills(&self) -> bool {
        matches!(self, Self::FillTo(_) | Self::FillToRim)
    }
}

/// Syrup that comes along with a topping and dissolves into the drink.
#[derive(Clone, Debug, PartialEq)]
pub struct Carried {
    /// What comes along.
    pub ingredient: IngredientId,
    /// How much of it, g.
    pub grams: f64,
}

/// One ingredient in a recipe.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Its id, unique in the recipe.
    pub id: LineId,
    /// What goes in.
    pub ingredient: IngredientId,
    /// How much.
    pub amount: Amount,
    /// Its temperature, °C; that of the ingredient when none is stated.
    pub temperature: Option<f64>,
    /// Its part in the drink.
    pub role: Role,
    /// Where it ends up.
    pub stage: Stage,
    /// What it brings along.
    pub carried: Option<Carried>,
    /// A note.
    pub note: String,
}

/// A sentence of method between the lines.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Instruction {
    /// Its id, unique among lines and instructions of the recipe.
    pub id: LineId,
    /// "Stir until smooth."
    pub text: String,
}

/// What stands in a recipe, in order.
#[derive(Clone, Debug, PartialEq)]
pub enum Entry {
    /// An ingredient.
    Line(Line),
    /// A sentence of method.
    Instruction(Instruction),
}

impl Entry {
    /// The id of the line or instruction.
    pub fn id(&self) -> &LineId {
        match self {
            Self::Line(line) => &line.id,
            Self::Instruction(instruction) => &instruction.id,
        }
    }

    /// The line, if it is one.
    pub fn line(&self) -> Option<&Line> {
        match self {
            Self::Line(line) => Some(line),
            Self::Instruction(_) => None,
        }
    }
}

/// What a version changes: absolute values, by the id of a line and a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Another ingredient in a line.
    Ingredient(LineId, IngredientId),
    /// Another amount of a line.
    Amount(LineId, Amount),
    /// Another temperature of a line; `None` takes that of the ingredient.
    Temperature(LineId, Option<f64>),
    /// Another role of a line.
    Role(LineId, Role),
    /// Another stage of a line.
    Stage(LineId, Stage),
    /// Another syrup that comes along.
    Carried(LineId, Option<Carried>),
    /// Another note on a line.
    Note(LineId, String),
    /// Another sentence of an instruction.
    Instruction(LineId, String),
    /// A new line or instruction behind another one; at the beginning for `None`.
    Add(Option<LineId>, Entry),
    /// A line or instruction left out.
    Remove(LineId),
    /// A line or instruction moved behind another one; to the beginning for `None`.
    Move(LineId, Option<LineId>),
    /// Another cup.
    Cup(VesselId),
    /// Another shaker, or none.
    Shaker(Option<VesselId>),
    /// Whether the ice stays behind in the shaker.
    Strained(bool),
    /// Another temperature at which it is tasted, °C; `None` takes the shop's.
    DrinkingTemperature(Option<f64>),
    /// Another price on the menu; `None` is not on the menu.
    MenuPrice(Option<f64>),
}

/// How far a version is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum State {
    /// Being worked on.
    #[default]
    Draft,
    /// Made for guests on trial.
    OnTrial,
    /// Approved: changes to it make a new version.
    Approved,
    /// No longer made.
    Retired,
}

impl State {
    /// All states.
    pub const ALL: [Self; 4] = [Self::Draft, Self::OnTrial, Self::Approved, Self::Retired];

    /// The word on screens and in reports.
    pub fn word(self) -> &'static str {
        match self {
            Self::Draft => "draft",
            Self::OnTrial => "on trial",
            Self::Approved => "approved",
            Self::Retired => "retired",
        }
    }
}

/// Named changes on a recipe.
#[derive(Clone, Debug, PartialEq)]
pub struct Version {
    /// Its id, unique in the recipe.
    pub id: VersionId,
    /// Its name: "vegan", "iced", "with Ketterby chestnut".
    pub name: String,
    /// The version that it builds on; the recipe itself when none is stated.
    pub builds_on: Option<VersionId>,
    /// How far it is.
    pub state: State,
    /// When it is on the menu: "winter".
    pub season: String,
    /// What it changes.
    pub changes: Vec<Change>,
}

/// A dated copy of a version's resolved lines that is never changed.
#[derive(Clone, Debug, PartialEq)]
pub struct Approval {
    /// Which version was approved; `None` is the recipe itself.
    pub version: Option<VersionId>,
    /// Day, `2026-05-04`.
    pub date: String,
    /// Who approved it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// Temperature at which it was tasted, °C.
    pub tasted_at: Option<f64>,
    /// The lines as they were.
    pub resolved: Resolved,
}

/// A drink, or a batch of what the house makes.
#[derive(Clone, Debug, PartialEq)]
pub struct Recipe {
    /// Its id.
    pub id: RecipeId,
    /// Its name, in any script.
    pub name: String,
    /// How far the recipe itself is.
    pub state: State,
    /// Lines and instructions in order.
    pub entries: Vec<Entry>,
    /// The cup; none for a batch.
    pub cup: Option<VesselId>,
    /// What it is shaken or mixed in before it is poured; none when it is made in the cup.
    pub shaker: Option<VesselId>,
    /// Whether the ice stays behind in the shaker.
    pub strained: bool,
    /// Temperature at which it is tasted, °C; the shop's for hot or iced drinks when none is stated.
    pub drinking_temperature: Option<f64>,
    /// Price on the menu, sales tax included.
    pub menu_price: Option<f64>,
    /// Named changes.
    pub versions: Vec<Version>,
    /// Approvals, the oldest first.
    pub approvals: Vec<Approval>,
    /// A note.
    pub note: String,
}

impl Item for Recipe {
    type Id = RecipeId;
    fn id(&self) -> &RecipeId {
        &self.id
    }
}

impl Recipe {
    /// The version of this id.
    pub fn version(&self, id: &VersionId) -> Option<&Version> {
        self.versions.iter().find(|version| version.id == *id)
    }

    /// The state of a version, or of the recipe itself.
    pub fn state_of(&self, version: Option<&VersionId>) -> Option<State> {
        match version {
            None => Some(self.state),
            Some(id) => self.version(id).map(|version| version.state),
        }
    }

    /// The standard that a version is held to: the latest approval of the version itself or, when it has none, of the
    /// nearest one that it builds on; when none of them has any, the latest approval of the recipe.
    ///
    /// An iced version has thus a standard of its own once it is approved, and the vegan one follows the dairy one.
    pub fn standard_for(&self, version: Option<&VersionId>) -> Option<&Approval> {
        let latest_of = |id: &Option<VersionId>| {
            self.approvals
                .iter()
                .rev()
                .find(|approval| approval.version == *id)
        };
        self.lineage(version)
            .iter()
            .find_map(latest_of)
            .or_else(|| self.approvals.last())
    }

    /// Whether an id means a line or instruction of the recipe, or is one that a change of a version speaks of: a line that is
    /// gone may still be waited for.
    pub fn has_entry_id(&self, id: &LineId) -> bool {
        let in_versions = self.versions.iter().flat_map(|version| &version.changes);
        let spoken_of = in_versions.flat_map(|change| [change.target(), change.anchor()]);
        self.entries
            .iter()
            .map(Entry::id)
            .chain(spoken_of.flatten())
            .any(|taken| taken == id)
    }
}
