//! Ingredients of a recipe as people write them: "2 Tbsp honey", "1 cup (240 ml) tea", "1 Prise Salz", "ice to fill".

mod amount;
mod degrees;
mod household;
mod line;
mod reader;
mod tokens;
mod units;

pub use amount::{Span, UnclearAmount, WrittenAmount};
pub use household::Household;
pub use line::{WrittenLine, read_line};
pub(super) use units::counter_word;
pub use units::{is_called, kitchen_spoon_called};
