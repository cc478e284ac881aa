//! What is said of drinks side by side: what sets them apart first, then every figure, then the lines. Knows no screen.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::sync::Arc;

use crate::balance::{Balance, Difference, Measurand, figure_difference, wording};
use crate::book::{Allergen, Book, Entry, LineId, Recipe};
use crate::quantity::{name_as_shown, rounded_at_most};
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
    /// "vegan", or "as written".
    pub(super) fn version(&self) -> Cow<'_, str> {
        let version = self.shown.version.as_ref();
        version
            .and_then(|id| self.recipe.version(id))
            .map_or("as written".into(), |version| name_as_shown(&version.name))
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
pub(super) fn parts(book: &Book, drinks: &[Drink]) -> Vec<Part> {
    let Some(first) = drinks.first() else {
        return Vec::new();
    };
    let figures = FIGURES
        .into_iter()
        .filter(|(measurand, _)| {
            // Ice in none of them and a figure that none of them has are no rows.
            *measurand != Measurand::IceLeft || drinks.iter().any(|drink| drink.balance.iced)
        })
        .map(|(measurand, decimals)| figure_row(book, first, drinks, measurand, decimals));
    vec![
        Part {
            heading: "Cost and guests",
            rows: cost_rows(book, first, drinks),
        },
        Part {
            heading: "Figures",
            rows: figures.collect(),
        },
        Part {
            heading: "How it is made",
            rows: line_rows(book, drinks),
        },
    ]
}

fn unit_of(book: &Book, measurand: Measurand) -> String {
    if measurand == Measurand::Cost {
        book.settings.currency.clone()
    } else {
        measurand.unit().to_owned()
    }
}

fn figure_row(
    book: &Book,
    first: &Drink,
    drinks: &[Drink],
    measurand: Measurand,
    decimals: i32,
) -> Row {
    let cell = |drink: &Drink| Cell::Figure {
        value: Value::of(book, &drink.balance, measurand, decimals),
        against: drink
            .difference
            .as_ref()
            .and_then(|_| against(&first.balance, &drink.balance, measurand, decimals)),
    };
    Row {
        name: measurand.word().to_owned(),
        unit: unit_of(book, measurand),
        cells: drinks.iter().map(cell).collect(),
    }
}

/// "+3.4 ± 0.2": more than the first drink, with the doubt of the difference.
fn against(
    first: &Balance,
    other: &Balance,
    measurand: Measurand,
    decimals: i32,
) -> Option<String> {
    let difference = figure_difference(first, other, measurand)?;
    let rounded = rounded_at_most(difference.value, Some(difference.u), decimals);
    let sign = if rounded.value.starts_with(['−', '0']) && difference.value <= 0.0 {
        ""
    } else {
        "+"
    };
    let doubt = rounded.u.map(|u| format!(" ± {u}")).unwrap_or_default();
    Some(format!("{sign}{}{doubt}", rounded.value))
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
        cells: texts.into_iter().map(cell).collect(),
    }
}

fn cost_rows(book: &Book, first: &Drink, drinks: &[Drink]) -> Vec<Row> {
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
    let listed = |allergens: &BTreeSet<Allergen>| {
        let words: Vec<&str> = allergens.iter().map(|allergen| allergen.word()).collect();
        if words.is_empty() {
            "none named".to_owned()
        } else {
            words.join(", ")
        }
    };
    vec![
        figure_row(book, first, drinks, Measurand::Cost, 2),
        Row {
            name: "margin".to_owned(),
            unit: currency.clone(),
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
            let ids: Vec<_> = drink.balance.allergens.not_stated.iter().cloned().collect();
            if ids.is_empty() {
                "—".to_owned()
            } else {
                wording::names(book, &ids)
            }
        }),
        words_row("vegan, by ingredients", drinks, |drink| {
            drink.balance.vegan.word().to_owned()
        }),
        words_row("free of dairy, by ingredients", drinks, |drink| {
            drink.balance.dairy_free.word().to_owned()
        }),
    ]
}

/// Cup and lines; a line that two drinks share by its id is one row.
fn line_rows(book: &Book, drinks: &[Drink]) -> Vec<Row> {
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
                    format!("{} {name}", book.amount_words(&line.amount))
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
    match against(&first.balance, &other.balance, Measurand::Cost, 2) {
        Some(more) if more.starts_with("0.00") => {}
        Some(more) => words.push(format!("cost {more} {currency} a drink")),
        None => words.push("cost can't be compared: a price is not stated".to_owned()),
    }
    let names = |set: Vec<&Allergen>| {
        set.iter()
            .map(|allergen| allergen.word())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let (before, after) = (&first.balance.allergens, &other.balance.allergens);
    let gone: Vec<&Allergen> = before.contains.difference(&after.contains).collect();
    let come: Vec<&Allergen> = after.contains.difference(&before.contains).collect();
    if !come.is_empty() {
        words.push(format!("contains {} as well", names(come)));
    }
    if !gone.is_empty() {
        words.push(format!("no {} by its ingredients", names(gone)));
    }
    let traces: Vec<&Allergen> = after.may_contain.difference(&before.may_contain).collect();
    if !traces.is_empty() {
        words.push(format!("may contain {}", names(traces)));
    }
    if first.balance.vegan != other.balance.vegan {
        words.push(wording::vegan_words(other.balance.vegan).to_owned());
    }
    if let Some(difference) = &other.difference {
        words.push(crate::ui::widgets::level::overall_words(difference));
    }
    words
}

/// The table for a spreadsheet: tabs between cells, a figure and its doubt in cells of their own.
pub(super) fn as_text(drinks: &[Drink], parts: &[Part]) -> String {
    let plain = |text: &str| text.replace(['\t', '\n', '\r'], " ");
    let mut lines = vec![format!(
        "\tunit{}",
        drinks.iter().fold(String::new(), |mut line, drink| {
            line.push('\t');
            line.push_str(&crate::ui::spreadsheet::cell(&drink.name()));
            line.push_str("\t±");
            line
        })
    )];
    for part in parts {
        lines.push(part.heading.to_owned());
        for row in &part.rows {
            let mut line = format!("{}\t{}", plain(&row.name), plain(&row.unit));
            for cell in &row.cells {
                let (text, doubt) = match cell {
                    Cell::Words { text, .. } => (crate::ui::spreadsheet::cell(text), String::new()),
                    Cell::Figure { value, .. } => (
                        value
                            .text
                            .clone()
                            .unwrap_or_else(|| "not known".to_owned())
                            .replace('−', "-"),
                        value.u.clone().unwrap_or_default(),
                    ),
                };
                line.push('\t');
                line.push_str(&plain(&text));
                line.push('\t');
                line.push_str(&doubt);
            }
            lines.push(line);
        }
    }
    lines.push(String::new());
    lines.join("\n")
}
