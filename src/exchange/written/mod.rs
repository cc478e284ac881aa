//! Ingredients of a recipe as people write them: "2 Tbsp honey", "1 cup (240 ml) tea", "1 Prise Salz", "ice to fill".

mod household;
mod line;
mod tokens;
mod units;

pub use household::Household;
pub(super) use units::{counter_word, is_called};
pub use line::{Span, UnclearAmount, WrittenAmount, WrittenLine, read_line};
