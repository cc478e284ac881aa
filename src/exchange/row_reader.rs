//! The cells of a row: their words, numbers and figures, and what in them can't be read.

use std::collections::BTreeMap;

use super::basis::{Basis, without_basis};
use super::doubt::{CellFault, Doubt, MOST_IN_CELL, UnitsOf};
use super::field::{Field, Mapping};
use super::number::{DecimalSigns, number_and_unit};
use super::table::TextTable;
use crate::book::{Nutrient, SALT_PER_SODIUM};
use crate::quantity::{DecimalSign, KILOJOULES_PER_KILOCALORIE, NumberError, excerpt};

/// Longest name in a sentence, in characters.
pub(super) const NAME: usize = 60;

pub(super) struct RowReader<'table> {
    table: &'table TextTable,
    mapping: &'table Mapping,
    columns: &'table BTreeMap<Field, usize>,
    cells: &'table [String],
    signs: &'table DecimalSigns,
    pub(super) doubts: Vec<Doubt>,
}

impl<'table> RowReader<'table> {
    /// A row of a table; `columns` has the column of each field, so that a row of few cells is looked up in few steps.
    pub(super) fn new(
        table: &'table TextTable,
        mapping: &'table Mapping,
        columns: &'table BTreeMap<Field, usize>,
        cells: &'table [String],
        signs: &'table DecimalSigns,
    ) -> Self {
        Self {
            table,
            mapping,
            columns,
            cells,
            signs,
            doubts: Vec::new(),
        }
    }

    fn column(&self, field: Field) -> Option<usize> {
        self.columns.get(&field).copied()
    }

    /// Whether the list has a column of this.
    pub(super) fn has_column(&self, field: Field) -> bool {
        self.column(field).is_some()
    }

    /// Whether a cell states anything.
    pub(super) fn states(&self, field: Field) -> bool {
        !self.text(field).is_empty()
    }

    /// The decimal sign of a column.
    pub(super) fn sign(&self, field: Field) -> Option<DecimalSign> {
        let column = self.column(field);
        column.and_then(|column| self.signs.in_column(column))
    }

    /// What stands in a cell; empty where it states nothing, also where a dash or "n/a" says so.
    pub(super) fn text(&self, field: Field) -> String {
        let column = self.column(field);
        let cell = column.and_then(|column| self.cells.get(column));
        let text = cell.map_or("", |cell| cell.trim());
        // An export that made a formula harmless put an apostrophe in front.
        let formula = text
            .strip_prefix('\'')
            .filter(|rest| rest.starts_with(['=', '+', '-', '@']));
        let text = formula.unwrap_or(text);
        if states_nothing(text) { "" } else { text }.to_owned()
    }

    /// The heading of a field as it stands in the list; empty where there is no such column.
    pub(super) fn heading(&self, field: Field) -> &str {
        let column = self.column(field);
        let heading = column.and_then(|column| self.table.headings.get(column));
        heading.map_or("", String::as_str)
    }

    /// The heading of a field and what stands below it, shortened.
    fn heading_and_cell(&self, field: Field) -> (String, String) {
        let column = self.column(field).unwrap_or(0);
        let heading = self.heading(field);
        let cell = self.cells.get(column).map_or("", String::as_str);
        (excerpt(heading, NAME), excerpt(cell, NAME))
    }

    pub(super) fn doubt(&mut self, field: Field, why: CellFault) {
        let (heading, cell) = self.heading_and_cell(field);
        self.doubts.push(Doubt::Cell { heading, cell, why });
    }

    /// A number and its unit, that of the cell before that of the heading; `None` for an empty cell or one in doubt.
    pub(super) fn number(&mut self, field: Field) -> Option<(f64, String)> {
        let text = self.text(field);
        self.number_in(field, &text)
    }

    /// A figure of a label with its unit. Per 100 ml it is none of the list's: what 100 ml weigh is not known here.
    fn figure_in_100_g(&mut self, field: Field) -> Option<(f64, String)> {
        let (text, of_cell) = without_basis(&self.text(field));
        let (number, unit) = self.number_in(field, &text)?;
        // What the cell says comes before what stands above the column.
        let basis = match of_cell {
            Basis::Unstated => without_basis(self.heading_unit(field)).1,
            stated => stated,
        };
        if basis == Basis::HundredMillilitres {
            self.doubt(field, CellFault::PerHundredMillilitres);
            return None;
        }
        Some((number, without_basis(&unit).0))
    }

    /// The unit in the heading of a field; empty where none stands.
    pub(super) fn heading_unit(&self, field: Field) -> &str {
        let column = self.column(field);
        let unit = column.and_then(|column| self.mapping.units.get(column));
        unit.map_or("", String::as_str)
    }

    fn number_in(&mut self, field: Field, text: &str) -> Option<(f64, String)> {
        // What is left of "– /100 g" is a dash again.
        if states_nothing(text) {
            return None;
        }
        // "<0.5" on a label is a bound, and no number that adds up.
        if text.starts_with(['<', '>', '~']) {
            self.doubt(field, CellFault::Bound);
            return None;
        }
        let sign = self.sign(field);
        let (number, beside) = match number_and_unit(text, sign) {
            Ok(read) => read,
            Err(error) => {
                self.no_number(field, error);
                return None;
            }
        };
        if !(0.0..MOST_IN_CELL).contains(&number) {
            self.doubt(field, CellFault::OutOfRange);
            return None;
        }
        let unit = if beside.is_empty() {
            self.heading_unit(field).to_owned()
        } else {
            beside
        };
        Some((number, unit.to_lowercase()))
    }

    /// A number that can't be read.
    pub(super) fn no_number(&mut self, field: Field, error: NumberError) {
        let NumberError::Ambiguous {
            thousands,
            decimals,
            ..
        } = error
        else {
            self.doubt(field, CellFault::NotANumber(self.sign(field)));
            return;
        };
        let (heading, cell) = self.heading_and_cell(field);
        self.doubts.push(Doubt::Ambiguous {
            heading,
            cell,
            thousands,
            decimals,
        });
    }

    /// A figure of the composition in the unit that the book keeps it in.
    pub(super) fn figure(&mut self, nutrient: Nutrient) -> Option<f64> {
        if nutrient == Nutrient::Energy {
            return self
                .energy(Field::Nutrient(nutrient), 1.0)
                .or_else(|| self.energy(Field::EnergyKcal, KILOJOULES_PER_KILOCALORIE));
        }
        let (field, factor) = match nutrient {
            Nutrient::Salt if !self.has_column(Field::Nutrient(Nutrient::Salt)) => {
                (Field::Sodium, SALT_PER_SODIUM)
            }
            _ => (Field::Nutrient(nutrient), 1.0),
        };
        let (number, unit) = self.figure_in_100_g(field)?;
        let in_milligrams = nutrient == Nutrient::Caffeine;
        let unit = match (unit.as_str(), in_milligrams) {
            ("mg", true) | ("g" | "%" | "", false) => 1.0,
            ("g", true) => 1000.0,
            ("mg", false) => 0.001,
            ("", true) => {
                self.doubt(field, CellFault::MilligramsOrGrams);
                return None;
            }
            _ => {
                self.doubt(field, CellFault::Unit(UnitsOf::Mass));
                return None;
            }
        };
        let value = number * unit * factor;
        if !in_milligrams && value > 100.0 {
            self.doubt(field, CellFault::MoreThanAll);
            return None;
        }
        Some(value)
    }

    /// Energy in kilojoules; `usual` is what a number without a unit is in, kJ.
    fn energy(&mut self, field: Field, usual: f64) -> Option<f64> {
        let (number, unit) = self.figure_in_100_g(field)?;
        match unit.as_str() {
            "" => Some(number * usual),
            "kj" => Some(number),
            "kcal" => Some(number * KILOJOULES_PER_KILOCALORIE),
            _ => {
                self.doubt(field, CellFault::Unit(UnitsOf::Energy));
                None
            }
        }
    }

    /// A word of a list; in doubt when it is none of them.
    pub(super) fn word<T: Copy>(
        &mut self,
        field: Field,
        all: &[T],
        word: fn(T) -> &'static str,
        why: CellFault,
    ) -> Option<T> {
        let text = self.text(field).to_lowercase();
        if text.is_empty() {
            return None;
        }
        let found = all.iter().copied().find(|item| word(*item) == text);
        if found.is_none() {
            self.doubt(field, why);
        }
        found
    }
}

/// Whether a text says that nothing is stated.
fn states_nothing(text: &str) -> bool {
    let signs = ["", "-", "–", "—", "−", "--", "?"];
    let words = ["n/a", "na", "n.a.", "k.a.", "k. a."];
    signs.contains(&text) || words.contains(&text.to_lowercase().as_str())
}
