//! What the lists of the counter say, without drawing: columns and rows, found by typing and sorted by a column.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::item::{Counter, CounterItem, Kind};
use super::uses::{Uses, UsesOfBook};
use crate::balance::{Component, usable_grams};
use crate::book::{
    Book, Filling, Ingredient, IngredientId, Item, Measure, Nominal, Reading, Role, Vessel,
    WantedWords, folded,
};
use crate::say::Speaker;
use crate::ui::sorted_list::{Column, ListCell, Sort, numbers, words};
use crate::ui::spreadsheet::{self, Table};
use crate::ui::words::Spoken;
use crate::workbench::{Answers, BookQuestion, GramOf, KEPT_OF_TYPED, SugarsOfBatches};

const INGREDIENTS: [Column; 6] = [
    words("counter-column-form", 68.0, 4),
    words("counter-column-role", 80.0, 3),
    numbers("counter-column-sugars", 108.0, "counter-not-stated", 0),
    numbers("counter-column-price-per-kg", 88.0, "counter-no-price", 1),
    numbers("counter-column-used", 44.0, "", 2),
    numbers(
        "counter-column-last-reading",
        92.0,
        "counter-not-weighed",
        5,
    ),
];

const MEASURES: [Column; 6] = [
    words("counter-column-kind", 80.0, 3),
    numbers("counter-column-called", 72.0, "counter-dash", 2),
    numbers("counter-column-one-use", 96.0, "counter-not-weighed", 0),
    numbers("counter-column-readings", 72.0, "", 4),
    numbers("counter-column-used", 44.0, "", 1),
    numbers(
        "counter-column-last-reading",
        92.0,
        "counter-not-weighed",
        5,
    ),
];

const VESSELS: [Column; 5] = [
    words("counter-column-kind", 72.0, 2),
    numbers("counter-column-capacity", 80.0, "", 0),
    numbers("counter-column-mass", 72.0, "counter-not-stated", 3),
    numbers("counter-column-price", 72.0, "counter-no-price", 4),
    numbers("counter-column-used", 44.0, "", 1),
];

/// The columns of a kind.
pub(super) fn columns(kind: Kind) -> &'static [Column] {
    match kind {
        Kind::Ingredients => &INGREDIENTS,
        Kind::Measures => &MEASURES,
        Kind::Vessels => &VESSELS,
        Kind::Shop => &[],
    }
}

/// A row of a list.
#[derive(Clone, Debug)]
pub(super) struct Row {
    /// The item.
    pub id: CounterItem,
    /// Its name.
    pub name: String,
    /// Its brand, quieter.
    pub quiet: String,
    /// That it is no longer sold.
    pub mark: Option<&'static str>,
    /// Its role, for the colour of its mark.
    pub role: Option<Role>,
    /// What the columns say.
    pub cells: Vec<ListCell>,
    /// What it is found by, folded.
    words: String,
}

/// The rows of a kind, in the order of the book.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct RowsOf {
    pub kind: Kind,
    pub spoken: Spoken,
}

impl BookQuestion for RowsOf {
    type Answer = Arc<Vec<Row>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let (book, uses) = (answers.book(), answers.to(&UsesOfBook));
        let speaker = self.spoken.about(book);
        let rows = match self.kind {
            Kind::Ingredients => {
                let dates = last_readings(book);
                let row = |item: &Arc<Ingredient>| {
                    let date = dates.get(item.id());
                    let (sugars, price) = (sugars_of(answers, item), price_per_kg(answers, item));
                    ingredient_row(speaker, &uses, item, sugars, price, date)
                };
                book.ingredients.iter().map(row).collect()
            }
            Kind::Measures => {
                let row = |item: &Arc<Measure>| measure_row(speaker, &uses, item);
                book.measures.iter().map(row).collect()
            }
            Kind::Vessels => {
                let row = |item: &Arc<Vessel>| vessel_row(speaker, &uses, item);
                book.vessels.iter().map(row).collect()
            }
            Kind::Shop => Vec::new(),
        };
        Arc::new(rows)
    }
}

/// Which of the rows are shown, and in which order.
#[derive(Clone, PartialEq, Eq, Hash)]
pub(super) struct OrderOf {
    pub rows: RowsOf,
    pub find: String,
    pub sort: Option<Sort>,
}

impl BookQuestion for OrderOf {
    type Answer = Arc<Vec<usize>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let rows = answers.to(&self.rows);
        Arc::new(order(&rows, &self.find, self.sort))
    }
}

/// Sugars in 100 g of an ingredient, g, where they are known.
fn sugars_of(answers: Answers<'_>, item: &Ingredient) -> Option<f64> {
    if item.house_made.is_some() {
        return answers.to(&SugarsOfBatches).get(&item.id).copied();
    }
    let gram = answers.to(&GramOf(item.id.clone()))?;
    let sugars = || 100.0 * gram.mix.get(Component::Sugars);
    gram.mix.knows(Component::Sugars).then(sugars)
}

fn ingredient_row(
    speaker: Speaker<'_>,
    uses: &Uses,
    item: &Ingredient,
    sugars: Option<f64>,
    price: Option<f64>,
    date: Option<&String>,
) -> Row {
    let id = CounterItem::Ingredient(item.id.clone());
    let cells = vec![
        ListCell::Word(speaker.form(item.form).to_owned()),
        ListCell::Word(speaker.role(item.role).to_owned()),
        ListCell::number(speaker, sugars, 1).in_unit("g"),
        match price {
            // Water from the tap is cheap and not free.
            Some(price) if price > 0.0 && price < 0.005 => {
                ListCell::Number(price, format!("< {}", speaker.number(0.01, 2)))
            }
            price => ListCell::number(speaker, price, 2),
        }
        .in_unit(&speaker.book.settings.currency),
        ListCell::count(uses.recipes(&id)),
        date.map_or(ListCell::Gap, |date| ListCell::Word(date.clone())),
    ];
    let mark = item.no_longer_sold.then(|| speaker.sold(true));
    let words = folded(&format!(
        "{} {} {} {} {}",
        item.name,
        item.brand,
        speaker.role(item.role),
        speaker.form(item.form),
        mark.unwrap_or_default()
    ));
    Row {
        id,
        name: item.name.clone(),
        quiet: item.brand.clone(),
        mark,
        role: Some(item.role),
        cells,
        words,
    }
}

fn measure_row(speaker: Speaker<'_>, uses: &Uses, item: &Measure) -> Row {
    let id = CounterItem::Measure(item.id.clone());
    let kind = speaker.measure_kind(item.kind);
    let called = match item.nominal {
        Some(Nominal::Volume(value)) => ListCell::Number(value, speaker.volume(value, 0)),
        Some(Nominal::Mass(value)) => ListCell::Number(value, speaker.in_unit(value, "g", 0)),
        None => ListCell::Gap,
    };
    let ingredient = item.readings.first().map(Reading::weighed);
    let use_grams = ingredient
        .and_then(|ingredient| item.calibration(ingredient))
        .map(|found| found.grams);
    let one_use = use_grams.map_or(ListCell::Gap, |grams| {
        ListCell::Number(grams, speaker.in_unit(grams, "g", 1))
    });
    let date = item
        .readings
        .iter()
        .filter_map(|reading| reading.date.as_ref())
        .max();
    let cells = vec![
        ListCell::Word(kind.to_owned()),
        called,
        one_use,
        ListCell::count(item.readings.len()),
        ListCell::count(uses.recipes(&id)),
        date.map_or(ListCell::Gap, |date| ListCell::Word(date.clone())),
    ];
    let quiet = if item.filling == Filling::Heaped {
        speaker.word("counter-measure-heaped")
    } else {
        ""
    };
    let words = folded(&format!("{} {kind} {quiet}", item.name));
    Row {
        id,
        name: item.name.clone(),
        quiet: quiet.to_owned(),
        mark: None,
        role: None,
        cells,
        words,
    }
}

fn vessel_row(speaker: Speaker<'_>, uses: &Uses, item: &Vessel) -> Row {
    let id = CounterItem::Vessel(item.id.clone());
    let kind = speaker.vessel_kind(item.kind);
    let cells = vec![
        ListCell::Word(kind.to_owned()),
        ListCell::Number(item.capacity, speaker.volume(item.capacity, 0)),
        ListCell::number(speaker, item.mass, 0).in_unit("g"),
        ListCell::number(speaker, item.price, 3).in_unit(&speaker.book.settings.currency),
        ListCell::count(uses.recipes(&id)),
    ];
    let words = folded(&format!("{} {kind}", item.name));
    Row {
        id,
        name: item.name.clone(),
        quiet: String::new(),
        mark: None,
        role: None,
        cells,
        words,
    }
}

/// Rows of a kind for a spreadsheet, with every column and the units in the headings.
pub(super) fn as_table<'row>(
    counter: Counter<'_>,
    kind: Kind,
    rows: impl Iterator<Item = &'row Row>,
) -> Table {
    let speaker = counter.speaker;
    let currency = &counter.book.settings.currency;
    let volume = counter.speaker.units.of("ml").symbol;
    // What a measure is called in differs from row to row, and stays behind its number.
    let unit = |column: &Column| match column.title {
        "counter-column-sugars" | "counter-column-one-use" | "counter-column-mass" => "g",
        "counter-column-price-per-kg" | "counter-column-price" => currency,
        "counter-column-capacity" => volume,
        _ => "",
    };
    let columns = columns(kind);
    let of_columns = columns
        .iter()
        .map(|column| spreadsheet::head(speaker.word(column.title), unit(column)));
    let quiet = match kind {
        Kind::Ingredients => speaker.word("counter-column-brand"),
        _ => speaker.word("counter-column-remark"),
    };
    let sold = (kind == Kind::Ingredients).then(|| speaker.word("ingredient-sold"));
    let names = [speaker.word("counter-column-name"), quiet];
    let names = names.into_iter().chain(sold).map(str::to_owned);
    let mut table = Table::new(names.chain(of_columns));
    for row in rows {
        let mark = sold.map(|_| row.mark.unwrap_or_default());
        let names = [row.name.as_str(), row.quiet.as_str()]
            .into_iter()
            .chain(mark);
        let names = names.map(spreadsheet::Cell::words);
        let cells = columns
            .iter()
            .zip(&row.cells)
            .map(|(column, cell)| match cell {
                ListCell::Word(word) => spreadsheet::Cell::words(word),
                ListCell::Number(_, text) => {
                    let digits = text.strip_suffix(unit(column)).unwrap_or(text);
                    spreadsheet::Cell::figure(digits.trim_end())
                }
                ListCell::Gap => spreadsheet::Cell::words(column.gap_words(speaker)),
            });
        table.row(names.chain(cells));
    }
    table
}

/// Price of a kilogram that is used, waste taken off; in the book's currency.
fn price_per_kg(answers: Answers<'_>, item: &Ingredient) -> Option<f64> {
    let price = item.price.as_ref()?;
    let gram = answers.to(&GramOf(item.id.clone()))?;
    let usable = usable_grams(answers.book(), item, &gram.mix, price)?;
    Some(1000.0 * price.pack / usable)
}

fn last_readings(book: &Book) -> BTreeMap<IngredientId, String> {
    let mut dates: BTreeMap<IngredientId, String> = BTreeMap::new();
    for reading in book.measures.iter().flat_map(|measure| &measure.readings) {
        if let (Some(ingredient), Some(date)) = (&reading.ingredient, &reading.date) {
            let latest = dates.entry(ingredient.clone()).or_default();
            if date > latest {
                latest.clone_from(date);
            }
        }
    }
    dates
}

/// Rows that hold every typed word, sorted; what is not known comes last either way.
fn order(rows: &[Row], find: &str, sort: Option<Sort>) -> Vec<usize> {
    let wanted = WantedWords::of(find);
    let mut shown: Vec<usize> = (0..rows.len())
        .filter(|at| wanted.are_in_folded(&rows[*at].words))
        .collect();
    if let Some(sort) = sort {
        sort.order(&mut shown, |at| {
            (rows[at].name.as_str(), rows[at].cells.as_slice())
        });
    }
    shown
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::MeasureId;

    fn row(name: &str, cell: ListCell) -> Row {
        let id = CounterItem::Measure(MeasureId::new("measure").unwrap());
        Row {
            id,
            name: name.into(),
            quiet: String::new(),
            mark: None,
            role: None,
            cells: vec![cell],
            words: name.to_lowercase(),
        }
    }

    #[test]
    fn what_is_not_known_comes_last_whichever_way_a_column_is_sorted() {
        let rows = [
            row("a", ListCell::Gap),
            row("b", ListCell::number(Speaker::without_book(), Some(2.0), 0)),
            row("c", ListCell::number(Speaker::without_book(), Some(1.0), 0)),
        ];
        let by = |descending| {
            order(
                &rows,
                "",
                Some(Sort {
                    column: Some(0),
                    descending,
                }),
            )
        };
        assert_eq!(by(false), [2, 1, 0]);
        assert_eq!(by(true), [1, 2, 0]);
        assert_eq!(order(&rows, "", None), [0, 1, 2]);
    }

    #[test]
    fn a_heading_sorts_up_then_down_then_not_at_all() {
        let up = Sort::clicked(None, Some(1));
        let down = Sort::clicked(up, Some(1));
        assert_eq!(up.map(|sort| sort.descending), Some(false));
        assert_eq!(down.map(|sort| sort.descending), Some(true));
        assert_eq!(Sort::clicked(down, Some(1)), None);
        assert_eq!(
            Sort::clicked(down, None),
            Some(Sort {
                column: None,
                descending: false
            })
        );
    }

    #[test]
    fn every_typed_word_has_to_be_found() {
        let rows = [
            row("Pear syrup Tambrel", ListCell::Gap),
            row("Pear purée", ListCell::Gap),
        ];
        assert_eq!(order(&rows, "TAMB pear", None), [0]);
        assert_eq!(order(&rows, "pear", None), [0, 1]);
        assert!(order(&rows, "plum", None).is_empty());
    }
}
