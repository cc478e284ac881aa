//! What is doubtful about a row, and why a row is left out: facts, of which `say` makes the sentences.

use super::row_fault::RowFault;
use crate::book::{FindingKind, Form, IngredientId};
use crate::quantity::DecimalSign;

/// A cell that is left out of what is taken, or an assumption about its row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// The cell does not say what its column wants.
    Cell {
        /// The heading of its column, shortened.
        heading: String,
        /// What stands in it, shortened.
        cell: String,
        /// What is wrong with it.
        why: CellFault,
    },
    /// The number may be a thousand or one.
    Ambiguous {
        /// The heading of its column, shortened.
        heading: String,
        /// What stands in it, shortened.
        cell: String,
        /// The number without a sign between thousands.
        thousands: String,
        /// The number with decimals.
        decimals: String,
    },
    /// A new ingredient whose form only its name tells: it decides what the rest to 100 g is.
    FormByName(Form),
}

/// What is wrong with a cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CellFault {
    /// The figure is for 100 ml, and what they weigh is not known here.
    PerHundredMillilitres,
    /// "<0.5" is a bound and no figure.
    Bound,
    /// It is no number, as this decimal sign has it.
    NotANumber(Option<DecimalSign>),
    /// The number is negative or larger than any figure, see [`MOST_IN_CELL`].
    OutOfRange,
    /// More than 100 g in 100 g.
    MoreThanAll,
    /// Without a unit it may be milligrams or grams.
    MilligramsOrGrams,
    /// The unit is none of those that are understood here.
    Unit(UnitsOf),
    /// A pack without a unit.
    NoPackUnit,
    /// The weight of a pack with its packing instead of its content.
    WithPacking,
    /// A letter beside a price, which may be meant as a digit.
    LetterBesideNumber,
    /// A price, and no content of the pack.
    NoPackContent,
    /// A price, and the cell for the content of the pack is empty: it is taken for a pack as the book has it.
    PackOfBook,
    /// A price for a kilogram or a litre instead of for a pack.
    PricePerAmount,
    /// A price with sales tax: those of the book are without.
    WithSalesTax,
    /// A price in another currency than that of the book.
    AnotherCurrency,
    /// It is no day.
    NotADay,
    /// It is none of the forms.
    NotAForm,
    /// It is none of the roles.
    NotARole,
}

/// What a unit is wanted of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UnitsOf {
    /// Grams or milligrams.
    Mass,
    /// Kilojoules or kilocalories.
    Energy,
    /// A part of a hundred.
    Share,
    /// The content of a pack, by mass or volume.
    Pack,
}

/// The number of a cell lies below this, in whatever unit the cell has.
pub const MOST_IN_CELL: f64 = 1e6;

/// Why a row is left out.
#[derive(Clone, Debug, PartialEq)]
pub enum Skip {
    /// Nobody knows which column is the name.
    NoNameColumn,
    /// The name is empty.
    NoName,
    /// A person says that it is nothing that goes into a drink.
    LeftOut,
    /// The list has a column of prices, and the row states none and nothing else that is new.
    NoPrice,
    /// It is about a new ingredient whose form nothing tells.
    NoForm,
    /// Nothing of it could be read.
    NothingRead,
    /// An earlier row is about the same ingredient.
    SameIngredient {
        /// The line of that row, from 1.
        before: u64,
    },
    /// The same brand and name stand in an earlier row.
    Again {
        /// The line of that row, from 1.
        before: u64,
    },
    /// The book has several ingredients of this name.
    Several {
        /// The ingredients.
        ingredients: Vec<IngredientId>,
    },
    /// The row would bring an error into the book.
    Error(Box<FindingKind>),
    /// The row is not what it seems.
    Row(RowFault),
}
