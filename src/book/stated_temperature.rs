//! The temperature of a line as somebody has stated it.

use super::{Amount, Book, Line, Temperature};

impl Book {
    /// The temperature that a line states, or that of the button that it comes from.
    pub fn stated_temperature(&self, line: &Line) -> Option<Temperature> {
        let poured = || match &line.amount {
            Amount::Count(_, id) => self.measure(id)?.temperature,
            _ => None,
        };
        line.temperature.or_else(poured)
    }
}
