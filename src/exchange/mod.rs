//! What comes in from elsewhere: price lists and ingredients as CSV, recipes as JSON-LD and from another shop.
//!
//! Nothing here changes a book. Text becomes a list for a person to review, and what is accepted becomes edits.

mod basis;
mod cost_effect;
mod delimiter;
mod doubt;
mod exchange_error;
mod field;
mod in_grams;
mod known_names;
mod likely;
mod list_choices;
mod number;
mod price_list;
mod recipe_json_ld;
mod recipe_of_shop;
mod renamed;
mod review;
mod row_fault;
mod row_outcome;
mod row_price;
mod row_reader;
mod table;
mod text;
mod written;
mod written_arrival;

pub use crate::quantity::DecimalSign;
pub use cost_effect::{CostEffect, KnownCost, cost_effects};
pub use delimiter::Delimiter;
pub use doubt::{CellFault, Doubt, MOST_IN_CELL, Skip, UnitsOf};
pub use exchange_error::RecipeExchangeError;
pub use field::{Field, Mapping, guess_mapping};
pub use in_grams::{ForeignEntry, LineWithoutGrams, NoGrams};
pub use likely::{WhyAlike, form_told, role_told};
pub use list_choices::{ListChoices, RowMatch};
pub use number::{DecimalSigns, number_and_unit};
pub use price_list::review_price_list;
pub use recipe_json_ld::{JsonLdError, ReadRecipe, read_json_ld};
pub use recipe_of_shop::{
    Arrival, ForeignLine, ForeignRecipe, LineMapping, MappedTo, MappingReason, Origin, arrival,
    arrival_watched, propose_mappings, read_recipe, write_recipe,
};
pub use review::{FAR, FieldChange, Outcome, Review, ReviewLine, edits_of};
pub use row_fault::RowFault;
pub use table::{Encoding, MOST_ROWS, TableError, TextTable, read_table};
pub use text::{NotUtf8, utf8_text};
pub use written::{
    Household, Span, UnclearAmount, WrittenAmount, WrittenLine, is_called as is_called_like,
    kitchen_spoon_called, read_line,
};
pub use written_arrival::{
    ArrivedLine, Becomes, NameMeasure, NewMeasure, RecipeQuestion, WrittenArrival,
};
