//! What is said of drinks side by side: what sets them apart first, then every figure, then the lines. Knows no screen.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::sync::Arc;

use crate::balance::{Balance, Difference, Measurand, figure_difference, wording};
use crate::book::{Allergen, Book, Entry, LineId, Recipe};
use crate::quantity::{Beside, DisplayUnits, Rounded, Uncertain, name_as_shown, rounded_beside};
use crate::say::Speaker;
use crate::ui::glossary::Term;
use crate::ui::spreadsheet::{self, Table};
use crate::ui::value::Value;
use crate::workbench::{Serving, Shown};

/// A drink in a column.
#[derive(Debug)]
pub(super) struct Drink {
    pub(super) shown: Shown,
    pub(super) recipe: Arc<Recipe>,
    pub(super) balance: Arc<Balance>,
    pub(super) serving: Arc<Serving>,
    /// How it differs from the first; `None` for the first itself.
    pub(super) difference: Option<Arc<Difference>>,
}

impl Drink {
    /// "vegan", or "original".
    pub(super) fn version(&self) -> Cow<'_, str> {
        let version = self.shown.version.as_ref();
        version
            .and_then(|id| self.recipe.version(id))
            .map_or("original".into(), |version| name_as_shown(&version.name))
    }

    /// "Hob & Ember, vegan".
    pub(super) fn name(&self) -> String {
        format!("{}, {}", name_as_shown(&self.recipe.name), self.version())
    }
}

/// What stands in a cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Cell {
    /// A figure, and how much more it is than that of the first drink.
    Figure {
        value: Value,
        against: Option<String>,
    },
    /// Words, and whether they are others than those of the first drink.
    Words { text: String, differs: bool },
}

/// A row of the table.
#[derive(Debug)]
pub(super) struct Row {
    pub(super) name: String,
    pub(super) unit: String,
    pub(super) term: Option<Term>,
    pub(super) cells: Vec<Cell>,
}

/// Rows under one heading.
#[derive(Debug)]
pub(super) struct Part {
    pub(super) heading: &'static str,
    pub(super) rows: Vec<Row>,
}

/// Figures of the second part, with the most decimals that are shown.
const FIGURES: [(Measurand, i32); 14] = [
    (Measurand::TotalSugar, 1),
    (Measurand::FreeSugars, 1),
    (Measurand::Sweetness, 2),
    (Measurand::TeaSolids, 2),
    (Measurand::ServingTemperature, 1),
    (Measurand::MinutesToDrinkable, 0),
    (Measurand::Volume, 0),
    (Measurand::Fill, 1),
    (Measurand::IceLeft, 0),
    (Measurand::Dilution, 2),
    (Measurand::EnergyKj, 0),
    (Measurand::Fat, 1),
    (Measurand::Salt, 2),
    (Measurand::Caffeine, 1),
];

/// The whole comparison, the first drink in the first column.
pub(super) fn parts(book: &Book, drinks: &[Drink], units: DisplayUnits) -> Vec<Part> {
    let Some(first) = drinks.first() else {
        return Vec::new();
    };
    let figures = FIGURES
        .into_iter()
        .filter(|(measurand, _)| {
            // Ice in none of them and a figure that none of them has are no rows.
            *measurand != Measurand::IceLeft || drinks.iter().any(|drink| drink.balance.iced)
        })
        .map(|figure| figure_row(book, first, drinks, figure, units));
    vec![
        Part {
            heading: "Cost and guests",
            rows: cost_rows(book, first, drinks, units),
        },
        Part {
            heading: "Figures",
            rows: figures.collect(),
        },
        Part {
            heading: "How it is made",
            rows: line_rows(book, drinks, units),
        },
    ]
}

fn unit_of(book: &Book, measurand: Measurand, units: DisplayUnits) -> String {
    if measurand == Measurand::Cost {
        book.settings.currency.clone()
    } else {
        units.of(measurand.unit()).symbol.to_owned()
    }
}

fn figure_row(
    book: &Book,
    first: &Drink,
    drinks: &[Drink],
    (measurand, decimals): (Measurand, i32),
    units: DisplayUnits,
) -> Row {
    let shown = beside(first, drinks, (measurand, decimals), units);
    let cell = |(drink, shown): (&Drink, Option<Beside>)| match shown {
        Some(Beside { figure, more }) => Cell::Figure {
            value: Value::rounded(figure),
            against: more.map(more_words),
        },
        // A figure of which something is missing is no measure for the others.
        None => Cell::Figure {
            value: Value::of(
                Speaker::new(book).in_units(units),
                &drink.balance,
                measurand,
                decimals,
            ),
            against: None,
        },
    };
    Row {
        name: Speaker::new(book).measurand(measurand).to_owned(),
        unit: unit_of(book, measurand, units),
        term: Term::of_measurand(measurand),
        cells: drinks.iter().zip(shown).map(cell).collect(),
    }
}

/// A figure of every drink, read against the first; `None` where something is missing of it.
fn beside<'drink>(
    first: &Drink,
    drinks: impl IntoIterator<Item = &'drink Drink>,
    (measurand, decimals): (Measurand, i32),
    units: DisplayUnits,
) -> Vec<Option<Beside>> {
    let unit = units.of(measurand.unit());
    let complete = |drink: &Drink| {
        let value = drink.balance.figures.complete(measurand)?;
        let u = drink.balance.uncertainty(measurand.slot());
        Some(unit.uncertain(Uncertain { value, u }))
    };
    let doubt = |drink: &Drink| {
        drink.difference.as_ref()?;
        let found = figure_difference(&first.balance, &drink.balance, measurand)?;
        Some(unit.difference(found.u))
    };
    let figures: Vec<_> = drinks
        .into_iter()
        .map(|drink| (complete(drink), doubt(drink)))
        .collect();
    rounded_beside(&figures, unit.decimals(decimals))
}

/// "+3.4 ± 0.2": more than the first drink, with the doubt of the difference.
fn more_words(difference: Rounded) -> String {
    let doubt = difference.u.map(|u| format!(" ± {u}")).unwrap_or_default();
    format!("{}{doubt}", difference.value)
}

fn words_row(name: &str, drinks: &[Drink], words: impl Fn(&Drink) -> String) -> Row {
    let texts: Vec<String> = drinks.iter().map(words).collect();
    let first = texts.first().cloned().unwrap_or_default();
    let cell = |text: String| Cell::Words {
        differs: text != first,
        text,
    };
    Row {
        name: name.to_owned(),
        unit: String::new(),
        term: None,
        cells: texts.into_iter().map(cell).collect(),
    }
}

fn cost_rows(book: &Book, first: &Drink, drinks: &[Drink], units: DisplayUnits) -> Vec<Row> {
    let currency = &book.settings.currency;
    let margin = |drink: &Drink| match &drink.serving.margin {
        None => Value::not_known("no menu price"),
        Some(margin) => {
            let value = Value::known(margin.margin, 2);
            if margin.is_at_most {
                value.at_most()
            } else {
                value
            }
        }
    };
    let speaker = Speaker::new(book);
    let listed = |allergens: &BTreeSet<Allergen>| {
        if allergens.is_empty() {
            "none named".to_owned()
        } else {
            speaker.allergens(allergens)
        }
    };
    vec![
        figure_row(book, first, drinks, (Measurand::Cost, 2), units),
        Row {
            name: "margin".to_owned(),
            unit: currency.clone(),
            term: None,
            cells: drinks
                .iter()
                .map(|drink| Cell::Figure {
                    value: margin(drink),
                    against: None,
                })
                .collect(),
        },
        words_row("contains", drinks, |drink| {
            listed(&drink.balance.allergens.contains)
        }),
        words_row("may contain", drinks, |drink| {
            listed(&drink.balance.allergens.may_contain)
        }),
        words_row("allergens not stated by", drinks, |drink| {
            let silent = &drink.balance.allergens.not_stated;
            if silent.is_empty() {
                "—".to_owned()
            } else {
                speaker.ingredients(silent)
            }
        }),
        words_row("vegan, by ingredients", drinks, |drink| {
            speaker.verdict(drink.balance.vegan).to_owned()
        }),
        words_row("free of dairy, by ingredients", drinks, |drink| {
            speaker.verdict(drink.balance.dairy_free).to_owned()
        }),
    ]
}

/// Cup and lines; a line that two drinks share by its id is one row.
fn line_rows(book: &Book, drinks: &[Drink], units: DisplayUnits) -> Vec<Row> {
    let cup = words_row("cup", drinks, |drink| {
        let cup = drink.balance.resolved.cup.as_ref();
        cup.and_then(|id| book.vessel(id)).map_or_else(
            || "—".to_owned(),
            |vessel| name_as_shown(&vessel.name).into_owned(),
        )
    });
    let mut ids: Vec<&LineId> = Vec::new();
    for drink in drinks {
        let mut behind = None;
        for entry in &drink.balance.resolved.entries {
            let Entry::Line(line) = entry else { continue };
            let known = ids.iter().position(|id| **id == line.id);
            behind = Some(known.unwrap_or_else(|| {
                let at = behind.map_or(0, |at: usize| at + 1);
                ids.insert(at, &line.id);
                at
            }));
        }
    }
    let rows = ids.into_iter().enumerate().map(|(at, id)| {
        words_row(&format!("line {}", at + 1), drinks, |drink| {
            let line = drink.balance.resolved.line(id);
            line.map_or_else(
                || "—".to_owned(),
                |line| {
                    let name = wording::ingredient_name(book, &line.ingredient);
                    format!("{} {name}", book.amount_words_in(&line.amount, units))
                },
            )
        })
    });
    std::iter::once(cup).chain(rows).collect()
}

/// What sets a drink apart from the first, in words: money and guests before taste.
pub(super) fn apart(book: &Book, first: &Drink, other: &Drink) -> Vec<String> {
    let mut words = Vec::new();
    let currency = &book.settings.currency;
    let cost = (Measurand::Cost, 2);
    let mut beside = beside(first, [first, other], cost, DisplayUnits::METRIC);
    match beside.pop().flatten().and_then(|beside| beside.more) {
        Some(more) if more.value.starts_with('0') => {}
        Some(more) => words.push(format!("cost {} {currency} a drink", more_words(more))),
        None => words.push("cost can't be compared: a price is not stated".to_owned()),
    }
    let (before, after) = (&first.balance.allergens, &other.balance.allergens);
    words.extend(Speaker::new(book).allergen_differences(before, after));
    if first.balance.vegan != other.balance.vegan {
        words.push(Speaker::new(book).vegan(other.balance.vegan).to_owned());
    }
    if let Some(difference) = &other.difference {
        words.push(crate::ui::widgets::level::overall_words(
            difference,
            Speaker::new(book),
        ));
    }
    words
}

/// The table for a spreadsheet: a figure and its doubt in cells of their own.
pub(super) fn as_table(drinks: &[Drink], parts: &[Part]) -> Table {
    let heads = drinks
        .iter()
        .flat_map(|drink| [drink.name(), "±".to_owned()]);
    let mut table = Table::new([String::new(), "unit".to_owned()].into_iter().chain(heads));
    for part in parts {
        table.heading(part.heading);
        for row in &part.rows {
            let names = [
                spreadsheet::Cell::words(&row.name),
                spreadsheet::Cell::words(&row.unit),
            ];
            let cells = row.cells.iter().flat_map(|cell| match cell {
                Cell::Words { text, .. } => {
                    [spreadsheet::Cell::words(text), spreadsheet::Cell::default()]
                }
                Cell::Figure { value, .. } => spreadsheet::Cell::figure_and_doubt(value),
            });
            table.row(names.into_iter().chain(cells));
        }
    }
    table
}
