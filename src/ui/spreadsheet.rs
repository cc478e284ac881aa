//! Tables that go to a spreadsheet by the clipboard: tabs between cells, and nothing that a spreadsheet takes for a formula.

use egui::{Button, Id, RichText, Ui};

use super::theme::{self, TypeStyle, grid};
use super::value::Value;
use super::words;
use crate::cards::neutral_cell;
use crate::say::{Speaker, say};

/// A table as a spreadsheet takes it.
#[derive(Clone, Debug, Default)]
pub(super) struct Table {
    rows: Vec<Vec<Cell>>,
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
        self.rows.push(cells.into_iter().collect());
    }

    /// A line with a heading of its own between rows.
    pub(super) fn heading(&mut self, words: &str) {
        self.row([Cell::words(words)]);
    }

    /// The rows of another table behind those of this one, with an empty line between.
    pub(super) fn then(mut self, other: Self) -> Self {
        self.rows.push(Vec::new());
        self.rows.extend(other.rows);
        self
    }

    /// The text for the clipboard, with the decimal sign that a spreadsheet of the language reads.
    pub(super) fn text(&self, speaker: Speaker<'_>) -> String {
        let line = |row: &Vec<Cell>| {
            let cells: Vec<String> = row.iter().map(|cell| cell.text(speaker)).collect();
            cells.join("\t") + "\n"
        };
        self.rows.iter().map(line).collect()
    }
}

/// A cell that a spreadsheet takes for what it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Cell {
    /// Text.
    Words(String),
    /// Digits with a decimal point or comma, "≥ " or "≤ " before them when something is missing.
    Figure(String),
    /// A figure that is not known.
    NotKnown,
}

impl Default for Cell {
    /// Nothing.
    fn default() -> Self {
        Self::Words(String::new())
    }
}

impl Cell {
    /// Words: what begins like a formula gets an apostrophe in front, tabs and line ends become spaces.
    pub(super) fn words(text: &str) -> Self {
        Self::Words(text.to_owned())
    }

    /// Digits; anything but a number is words.
    pub(super) fn figure(text: &str) -> Self {
        Self::Figure(text.to_owned())
    }

    /// A figure and its doubt in cells of their own.
    pub(super) fn figure_and_doubt(value: &Value) -> [Self; 2] {
        [
            value.text.as_deref().map_or(Self::NotKnown, Self::figure),
            Self::figure(value.u.as_deref().unwrap_or_default()),
        ]
    }

    fn text(&self, speaker: Speaker<'_>) -> String {
        match self {
            Self::Words(text) => plain_words(text),
            Self::Figure(text) => figure_in(text, speaker),
            Self::NotKnown => speaker.word("shell-not-known").to_owned(),
        }
    }
}

fn plain_words(text: &str) -> String {
    neutral_cell(&text.replace(['\t', '\n', '\r'], " "))
}

/// A figure with the minus sign of a spreadsheet and the decimal sign of the language, however it was written.
fn figure_in(text: &str, speaker: Speaker<'_>) -> String {
    let (bound, digits) = match text.strip_prefix("≥ ") {
        Some(digits) => ("≥ ", digits),
        None => text
            .strip_prefix("≤ ")
            .map_or(("", text), |digits| ("≤ ", digits)),
    };
    let is_negative = digits.starts_with(['−', '-']);
    let magnitude = digits
        .strip_prefix(['−', '-'])
        .unwrap_or(digits)
        .replace(',', ".");
    let begins_as_number = magnitude.starts_with(|first: char| first.is_ascii_digit());
    if !begins_as_number || magnitude.parse::<f64>().is_err() {
        return plain_words(text);
    }
    let sign = if is_negative { "-" } else { "" };
    format!("{bound}{sign}{}", speaker.digits(&magnitude))
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
        let speaker = words::speaker(ui.ctx());
        let words = speaker.word("shell-copy-table");
        let words = RichText::new(words).font(TypeStyle::Small.font_id());
        let button = Button::new(words.color(palette.accent)).frame_when_inactive(false);
        let response = ui
            .add(button)
            .accessible_name(say!(speaker, "shell-copy-table-of", table: of))
            .on_hover_text(speaker.word("shell-copy-table-does"));
        if response.clicked() {
            ui.ctx().copy_text(table().text(speaker));
            ui.data_mut(|data| data.insert_temp(last, of.to_owned()));
        }
        let copied: Option<String> = ui.data(|data| data.get_temp(last));
        if copied.as_deref() == Some(of) {
            let words = RichText::new(speaker.word("shell-copied-table"));
            let words = words.font(TypeStyle::Small.font_id());
            ui.label(words.color(palette.text_quiet));
        }
    });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    fn english(cell: &Cell) -> String {
        cell.text(Speaker::without_book())
    }

    #[test]
    fn what_looks_like_a_formula_stays_words() {
        for (text, cell) in [
            ("=1+1", "'=1+1"),
            (" @sum", "' @sum"),
            ("a\tb\nc", "a b c"),
            ("Hob & Ember", "Hob & Ember"),
        ] {
            assert_eq!(english(&Cell::words(text)), cell);
        }
    }

    #[test]
    fn a_negative_number_stays_a_number_and_a_formula_after_a_sign_does_not() {
        let english = |text| english(&Cell::figure(text));
        assert_eq!(english("−3.5"), "-3.5");
        assert_eq!(english("-2+cmd"), "'-2+cmd");
        assert_eq!(english("≥ 3"), "≥ 3");
        assert_eq!(english(""), "");
    }

    #[test]
    fn a_figure_has_the_decimal_sign_of_the_language_however_it_was_written() {
        let german = Speaker::without_book().in_language(Language::from_code("de").unwrap());
        for (written, cell) in [
            ("20.30", "20,30"),
            ("20,30", "20,30"),
            ("−0.5", "-0,5"),
            ("≥ 1.5", "≥ 1,5"),
            ("≤ 12", "≤ 12"),
            ("1200", "1200"),
            ("2.5 of 3", "2.5 of 3"),
            ("=1.5", "'=1.5"),
        ] {
            assert_eq!(Cell::figure(written).text(german), cell);
        }
        assert_eq!(Cell::NotKnown.text(german), "nicht bekannt");
    }

    #[test]
    fn rows_end_and_cells_are_parted_as_a_spreadsheet_wants_it() {
        let mut table = Table::new(["drink", "sugar, g"]);
        table.row([Cell::words("=Tea"), Cell::figure("20.3")]);
        let mut more = Table::default();
        more.heading("more");
        assert_eq!(
            table.then(more).text(Speaker::without_book()),
            "drink\tsugar, g\n'=Tea\t20.3\n\nmore\n"
        );
    }
}
