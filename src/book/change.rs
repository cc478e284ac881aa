//! The changes that a version makes to the lines that it builds on.

use super::line::{Amount, Carried, Entry, Role, Stage};
use super::{IngredientId, LineId, Temperature, VersionId, VesselId};

/// What a version changes: absolute values, by the id of a line and a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Another ingredient in a line.
    Ingredient(LineId, IngredientId),
    /// Another amount of a line.
    Amount(LineId, Amount),
    /// Another temperature of a line; `None` takes that of the ingredient.
    Temperature(LineId, Option<Temperature>),
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
    /// Another part of the added sweetness, percent; `None` is all of it.
    SugarLevel(Option<f64>),
}

impl Change {
    /// The line or instruction that it is about, if it is about one.
    pub fn target(&self) -> Option<&LineId> {
        match self {
            Self::Ingredient(id, _)
            | Self::Amount(id, _)
            | Self::Temperature(id, _)
            | Self::Role(id, _)
            | Self::Stage(id, _)
            | Self::Carried(id, _)
            | Self::Note(id, _)
            | Self::Instruction(id, _)
            | Self::Remove(id)
            | Self::Move(id, _) => Some(id),
            Self::Add(_, entry) => Some(entry.id()),
            Self::Cup(_)
            | Self::Shaker(_)
            | Self::Strained(_)
            | Self::DrinkingTemperature(_)
            | Self::MenuPrice(_)
            | Self::SugarLevel(_) => None,
        }
    }

    /// The line or instruction behind which it puts something.
    pub fn anchor(&self) -> Option<&LineId> {
        match self {
            Self::Add(after, _) | Self::Move(_, after) => after.as_ref(),
            _ => None,
        }
    }

    /// The same change, which puts what it adds or moves behind another line, or at the beginning.
    #[must_use]
    pub(super) fn anchored_behind(self, after: Option<LineId>) -> Self {
        match self {
            Self::Add(_, entry) => Self::Add(after, entry),
            Self::Move(id, _) => Self::Move(id, after),
            other => other,
        }
    }

    /// Whether it changes which lines there are, or their order.
    pub(super) fn is_of_order(&self) -> bool {
        matches!(self, Self::Add(..) | Self::Remove(_) | Self::Move(..))
    }

    /// Whether it says another value of what the other change is about.
    pub(super) fn is_of_same_field(&self, other: &Self) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
            && self.target() == other.target()
    }

    /// What it changes.
    pub fn field(&self) -> ChangedField {
        match self {
            Self::Ingredient(..) => ChangedField::Ingredient,
            Self::Amount(..) => ChangedField::Amount,
            Self::Temperature(..) => ChangedField::Temperature,
            Self::Role(..) => ChangedField::Role,
            Self::Stage(..) => ChangedField::Stage,
            Self::Carried(..) => ChangedField::CarriedSyrup,
            Self::Note(..) => ChangedField::Note,
            Self::Instruction(..) => ChangedField::Instruction,
            Self::Add(..) => ChangedField::AddedLine,
            Self::Remove(..) => ChangedField::RemovedLine,
            Self::Move(..) => ChangedField::Order,
            Self::Cup(_) => ChangedField::Cup,
            Self::Shaker(_) => ChangedField::Shaker,
            Self::Strained(_) => ChangedField::Straining,
            Self::DrinkingTemperature(_) => ChangedField::DrinkingTemperature,
            Self::MenuPrice(_) => ChangedField::MenuPrice,
            Self::SugarLevel(_) => ChangedField::SugarLevel,
        }
    }
}

/// What a change of a recipe changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ChangedField {
    /// The ingredient of a line.
    Ingredient,
    /// The amount of a line.
    Amount,
    /// The temperature of a line.
    Temperature,
    /// The role of a line.
    Role,
    /// Where a line goes in.
    Stage,
    /// The syrup that sticks to what a line adds.
    CarriedSyrup,
    /// The note on a line.
    Note,
    /// The text of an instruction.
    Instruction,
    /// A line that is added.
    AddedLine,
    /// A line that is removed.
    RemovedLine,
    /// The order of the lines.
    Order,
    /// The cup.
    Cup,
    /// The shaker.
    Shaker,
    /// Whether the ice is strained off.
    Straining,
    /// The temperature at which the drink is compared.
    DrinkingTemperature,
    /// The price on the menu.
    MenuPrice,
    /// The part of the added sweetness that it is made with.
    SugarLevel,
}

/// Why a change is not carried out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ChangeRefused {
    /// The version is gone.
    NoVersion(VersionId),
    /// The line or instruction that it is about, or behind which it puts something, is gone.
    NoEntry(LineId),
    /// A line or instruction, perhaps of another version, has this id already.
    IdTaken(LineId),
    /// An approved version has no cup, and no change of a version can say so; it would take over the cup of the recipe.
    GivesApprovedCup(VersionId),
}
