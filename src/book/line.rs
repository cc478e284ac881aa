//! The lines of a recipe: what goes in, how much of it, and where it ends up.

use super::{IngredientId, LineId, MeasureId, Temperature};

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

    /// Its key in reports and in the names of messages.
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

    /// Its key in reports and in the names of messages.
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
    /// Its temperature; that of the ingredient when none is stated.
    pub temperature: Option<Temperature>,
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
