//! Tables that go to a spreadsheet by the clipboard: tabs between cells, and nothing that a spreadsheet takes for a formula.

use egui::{Button, Id, RichText, Ui};

use super::theme::{self, TypeStyle, grid};
use super::value::Value;
use crate::cards::neutral_cell;

/// A table as a spreadsheet takes it.
#[derive(Clone, Debug, Default)]
pub(super) struct Table {
    lines: Vec<String>,
}

impl Table {
    /// A table with its headings; a heading says the unit of its column.
    pub(super) fn new<H: AsRef<str>>(heads: impl IntoIterator<Item = H>) -> Self {
        let mut table = Self::default();
        table.row(heads.into_iter().map(|head| Cell::words(head.as_ref())));
        table
    }

    /// A row.
    pub(super) fn row(&mut self, cells: impl IntoIterator<Item = Cell>) {
        let cells: Vec<String> = cells.into_iter().map(|Cell(text)| text).collect();
        self.lines.push(cells.join("\t"));
    }

    /// A line with a heading of its own between rows.
    pub(super) fn heading(&mut self, words: &str) {
        self.row([Cell::words(words)]);
    }

    /// The rows of another table behind those of this one, with an empty line between.
    pub(super) fn then(mut self, other: Self) -> Self {
        self.lines.push(String::new());
        self.lines.extend(other.lines);
        self
    }

    /// The text for the clipboard.
    pub(super) fn text(&self) -> String {
        let mut text = self.lines.join("\n");
        text.push('\n');
        text
    }
}

/// A cell that a spreadsheet takes for what it is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Cell(String);

impl Cell {
    /// Words: what begins like a formula gets an apostrophe in front, tabs and line ends become spaces.
    pub(super) fn words(text: &str) -> Self {
        let plain = text.replace(['\t', '\n', '\r'], " ");
        Self(neutral_cell(&plain))
    }

    /// Digits with the minus sign of a spreadsheet; anything but a number is words.
    pub(super) fn figure(text: &str) -> Self {
        let plain = text.replace('−', "-");
        if plain.parse::<f64>().is_ok() {
            Self(plain)
        } else {
            Self::words(text)
        }
    }

    /// A figure and its doubt in cells of their own.
    pub(super) fn figure_and_doubt(value: &Value) -> [Self; 2] {
        let text = value.text.as_deref().unwrap_or("not known");
        [
            Self::figure(text),
            Self::figure(value.u.as_deref().unwrap_or_default()),
        ]
    }
}

/// "sweetness, g/100 ml", for the head of a column.
pub(super) fn head(name: &str, unit: &str) -> String {
    if unit.is_empty() {
        name.to_owned()
    } else {
        format!("{name}, {unit}")
    }
}

/// The button under a table. `of` says which table it is; the table is made when it is asked for.
pub(super) fn copy_ui(ui: &mut Ui, of: &str, table: impl FnOnce() -> Table) {
    let palette = theme::palette(ui.visuals());
    let last = Id::unique("table copied last");
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        let words = RichText::new("Copy the table").font(TypeStyle::Small.font_id());
        let button = Button::new(words.color(palette.accent)).frame_when_inactive(false);
        let response = ui
            .add(button)
            .accessible_name(format!("Copy the table: {of}"))
            .on_hover_text("For a spreadsheet: tabs between the cells, units in the headings");
        if response.clicked() {
            ui.ctx().copy_text(table().text());
            ui.data_mut(|data| data.insert_temp(last, of.to_owned()));
        }
        let copied: Option<String> = ui.data(|data| data.get_temp(last));
        if copied.as_deref() == Some(of) {
            let words = RichText::new("Copied: paste it into a spreadsheet.");
            let words = words.font(TypeStyle::Small.font_id());
            ui.label(words.color(palette.text_quiet));
        }
    });
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_looks_like_a_formula_stays_words() {
        for (text, cell) in [
            ("=1+1", "'=1+1"),
            (" @sum", "' @sum"),
            ("a\tb\nc", "a b c"),
            ("Hob & Ember", "Hob & Ember"),
        ] {
            assert_eq!(Cell::words(text).0, cell);
        }
    }

    #[test]
    fn a_negative_number_stays_a_number_and_a_formula_after_a_sign_does_not() {
        assert_eq!(Cell::figure("−3.5").0, "-3.5");
        assert_eq!(Cell::figure("-2+cmd").0, "'-2+cmd");
        assert_eq!(Cell::figure("≥ 3").0, "≥ 3");
    }

    #[test]
    fn rows_end_and_cells_are_parted_as_a_spreadsheet_wants_it() {
        let mut table = Table::new(["drink", "sugar, g"]);
        table.row([Cell::words("=Tea"), Cell::figure("20.3")]);
        let mut more = Table::default();
        more.heading("more");
        assert_eq!(
            table.then(more).text(),
            "drink\tsugar, g\n'=Tea\t20.3\n\nmore\n"
        );
    }
}
