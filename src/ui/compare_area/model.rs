//! What is said of drinks side by side: what sets them apart first, then every figure, then the lines. Knows no screen.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::sync::Arc;

use crate::balance::{Balance, Difference, Measurand, figure_difference};
use crate::book::{Allergen, Entry, LineId, Recipe};
use crate::quantity::{Beside, DisplayUnits, Rounded, Uncertain, name_as_shown, rounded_beside};
use crate::say::{Speaker, say};
use crate::ui::glossary::Term;
use crate::ui::spreadsheet::{self, Table};
use crate::ui::value::{Value, more_words};
use crate::ui::widgets::level::overall_words;
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
    pub(super) fn version(&self, speaker: Speaker<'_>) -> Cow<'_, str> {
        let version = self.shown.version.as_ref();
        version
            .and_then(|id| self.recipe.version(id))
            .map_or(speaker.word("version-original").into(), |version| {
                name_as_shown(&version.name)
            })
    }

    /// "Hob & Ember, vegan".
    pub(super) fn name(&self, speaker: Speaker<'_>) -> String {
        let (recipe, version) = (name_as_shown(&self.recipe.name), self.version(speaker));
        say!(speaker, "compare-drink", recipe: recipe, version: version)
    }
}

/// What stands in a cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Cell {
    /// A figure, and how much more it is than that of the first drink; `None` where one of them is not stated.
    Figure { value: Value, more: Option<Rounded> },
    /// Words, and whether they are others than those of the first drink.
    Words { text: String, differs: bool },
}

/// A row of the table.
#[derive(Debug)]
pub(super) struct Row {
    pub(super) name: String,
    pub(super) unit: String,
    /// The unit of a difference: that of temperatures has no zero.
    pub(super) difference_unit: String,
    pub(super) term: Option<Term>,
    pub(super) cells: Vec<Cell>,
}

/// Rows under one heading.
#[derive(Debug)]
pub(super) struct Part {
    pub(super) heading: &'static str,
    pub(super) rows: Vec<Row>,
}

/// Figures below the level, with the most decimals that are shown.
const FIGURES: [(Measurand, i32); 13] = [
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
pub(super) fn parts(speaker: Speaker<'_>, drinks: &[Drink]) -> Vec<Part> {
    let Some(first) = drinks.first() else {
        return Vec::new();
    };
    let figures = FIGURES
        .into_iter()
        .filter(|(measurand, _)| {
            // Ice in none of them and a figure that none of them has are no rows.
            *measurand != Measurand::IceLeft || drinks.iter().any(|drink| drink.balance.iced)
        })
        .map(|figure| figure_row(speaker, first, drinks, figure));
    vec![
        Part {
            heading: speaker.word("compare-cost-and-guests"),
            rows: cost_rows(speaker, first, drinks),
        },
        Part {
            heading: speaker.word("compare-figures"),
            rows: figures.collect(),
        },
        Part {
            heading: speaker.word("compare-how-made"),
            rows: line_rows(speaker, drinks),
        },
    ]
}

fn unit_of(speaker: Speaker<'_>, measurand: Measurand) -> String {
    if measurand == Measurand::Cost {
        speaker.book.settings.currency.clone()
    } else {
        speaker.units.of(measurand.unit()).symbol.to_owned()
    }
}

fn figure_row(
    speaker: Speaker<'_>,
    first: &Drink,
    drinks: &[Drink],
    (measurand, decimals): (Measurand, i32),
) -> Row {
    let shown = beside(first, drinks, (measurand, decimals), speaker.units);
    let cell = |(drink, shown): (&Drink, Option<Beside>)| match shown {
        Some(Beside { figure, more }) => Cell::Figure {
            value: Value::rounded(figure),
            more,
        },
        // A figure of which something is missing is no measure for the others.
        None => Cell::Figure {
            value: Value::of(speaker, &drink.balance, measurand, decimals),
            more: None,
        },
    };
    Row {
        name: speaker.measurand(measurand).to_owned(),
        unit: unit_of(speaker, measurand),
        difference_unit: if measurand.unit() == "°C" {
            speaker.units.of("K").symbol.to_owned()
        } else {
            unit_of(speaker, measurand)
        },
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

fn words_row(name: String, drinks: &[Drink], words: impl Fn(&Drink) -> String) -> Row {
    let texts: Vec<String> = drinks.iter().map(words).collect();
    let first = texts.first().cloned().unwrap_or_default();
    let cell = |text: String| Cell::Words {
        differs: text != first,
        text,
    };
    Row {
        name,
        unit: String::new(),
        difference_unit: String::new(),
        term: None,
        cells: texts.into_iter().map(cell).collect(),
    }
}

/// What is left of each menu price. The prices are exact: the doubt of a difference is that of the cost.
fn margin_row(speaker: Speaker<'_>, first: &Drink, drinks: &[Drink]) -> Row {
    let whole = |drink: &Drink| {
        let margin = drink.serving.margin.as_ref();
        let margin = margin.filter(|margin| !margin.is_at_most)?;
        Some(margin.margin)
    };
    let doubt = |drink: &Drink| {
        drink.difference.as_ref()?;
        let found = figure_difference(&first.balance, &drink.balance, Measurand::Cost)?;
        Some(found.u)
    };
    let figures: Vec<_> = drinks
        .iter()
        .map(|drink| (whole(drink), doubt(drink)))
        .collect();
    let shown = rounded_beside(&figures, 2);
    let cell = |(drink, shown): (&Drink, Option<Beside>)| match (shown, &drink.serving.margin) {
        (Some(Beside { figure, more }), _) => Cell::Figure {
            value: Value::rounded(figure),
            more,
        },
        (None, Some(margin)) => Cell::Figure {
            value: Value::of_margin(margin),
            more: None,
        },
        (None, None) => Cell::Figure {
            value: Value::not_known(speaker.word("compare-no-menu-price")),
            more: None,
        },
    };
    Row {
        name: speaker.word("compare-margin").to_owned(),
        unit: speaker.book.settings.currency.clone(),
        difference_unit: speaker.book.settings.currency.clone(),
        term: None,
        cells: drinks.iter().zip(shown).map(cell).collect(),
    }
}

fn cost_rows(speaker: Speaker<'_>, first: &Drink, drinks: &[Drink]) -> Vec<Row> {
    let listed = |allergens: &BTreeSet<Allergen>| {
        if allergens.is_empty() {
            speaker.word("compare-none-named").to_owned()
        } else {
            speaker.allergens(allergens)
        }
    };
    let words = |name: &str, text: &dyn Fn(&Drink) -> String| {
        words_row(speaker.word(name).to_owned(), drinks, text)
    };
    vec![
        figure_row(speaker, first, drinks, (Measurand::Cost, 2)),
        margin_row(speaker, first, drinks),
        // What is asked first when a drink changes: it stands above the level, where it is seen without scrolling.
        figure_row(speaker, first, drinks, (Measurand::TotalSugar, 1)),
        words("compare-contains", &|drink| {
            listed(&drink.balance.allergens.contains)
        }),
        words("compare-may-contain", &|drink| {
            listed(&drink.balance.allergens.may_contain)
        }),
        words("compare-not-stated", &|drink| {
            let summary = &drink.balance.allergens;
            let mut silent = speaker.allergen_silences(summary);
            if !summary.not_stated.is_empty() {
                silent.insert(0, speaker.ingredients(&summary.not_stated));
            }
            if silent.is_empty() {
                "—".to_owned()
            } else {
                silent.join("; ")
            }
        }),
        words("compare-vegan", &|drink| {
            speaker.verdict(drink.balance.vegan).to_owned()
        }),
        words("compare-dairy-free", &|drink| {
            speaker.verdict(drink.balance.dairy_free).to_owned()
        }),
    ]
}

/// Cup and lines; a line that two drinks share by its id is one row.
fn line_rows(speaker: Speaker<'_>, drinks: &[Drink]) -> Vec<Row> {
    let name = speaker.word("compare-cup").to_owned();
    let cup = words_row(name, drinks, |drink| {
        let cup = drink.balance.resolved.cup.as_ref();
        let cup = cup.and_then(|id| speaker.book.vessel(id));
        cup.map_or_else(
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
        let name = say!(speaker, "compare-line", number: (at + 1).to_string());
        words_row(name, drinks, |drink| {
            let line = drink.balance.resolved.line(id);
            line.map_or_else(
                || "—".to_owned(),
                |line| {
                    let (amount, name) = (&line.amount, &line.ingredient);
                    let (amount, name) = (speaker.amount(amount), speaker.ingredient(name));
                    say!(speaker, "compare-amount", amount: amount, ingredient: name)
                },
            )
        })
    });
    std::iter::once(cup).chain(rows).collect()
}

/// What sets a drink apart from the first, in clauses: money and guests before taste.
pub(super) fn apart(speaker: Speaker<'_>, first: &Drink, other: &Drink) -> String {
    let mut clauses = Vec::new();
    let cost = (Measurand::Cost, 2);
    let mut beside = beside(first, [first, other], cost, speaker.units);
    match beside.pop().flatten().and_then(|beside| beside.more) {
        Some(more) if more.value.starts_with('0') => {}
        Some(more) => {
            let currency = &speaker.book.settings.currency;
            let more = more_words(speaker, more);
            clauses.push(say!(speaker, "compare-cost", more: more, currency: currency));
        }
        None => clauses.push(speaker.word("compare-cost-not-known").to_owned()),
    }
    let (before, after) = (&first.balance.allergens, &other.balance.allergens);
    clauses.extend(speaker.allergen_differences(before, after));
    if first.balance.vegan != other.balance.vegan {
        clauses.push(speaker.vegan(other.balance.vegan).to_owned());
    }
    if let Some(difference) = &other.difference {
        clauses.push(overall_words(difference, speaker));
    }
    let clauses = clauses.into_iter();
    clauses
        .reduce(|before, after| say!(speaker, "clauses", before: before, after: after))
        .unwrap_or_default()
}

/// The table for a spreadsheet: a figure and its doubt in cells of their own, and behind each drink but the first how much more
/// it has than that.
pub(super) fn as_table(speaker: Speaker<'_>, drinks: &[Drink], parts: &[Part]) -> Table {
    let difference = speaker.word("compare-difference");
    let heads = drinks.iter().enumerate().flat_map(|(at, drink)| {
        let own = [drink.name(speaker), "±".to_owned()];
        let more = (at > 0).then(|| [difference.to_owned(), "±".to_owned()]);
        own.into_iter().chain(more.into_iter().flatten())
    });
    let unit = speaker.word("serving-head-unit").to_owned();
    let mut table = Table::new([String::new(), unit].into_iter().chain(heads));
    for part in parts {
        table.heading(part.heading);
        for row in &part.rows {
            let mut cells = vec![
                spreadsheet::Cell::words(&row.name),
                spreadsheet::Cell::words(&row.unit),
            ];
            for (at, cell) in row.cells.iter().enumerate() {
                let more = match cell {
                    Cell::Words { text, .. } => {
                        cells
                            .extend([spreadsheet::Cell::words(text), spreadsheet::Cell::default()]);
                        [spreadsheet::Cell::default(), spreadsheet::Cell::default()]
                    }
                    Cell::Figure { value, more } => {
                        cells.extend(spreadsheet::Cell::figure_and_doubt(value));
                        more_cells(more.as_ref())
                    }
                };
                if at > 0 {
                    cells.extend(more);
                }
            }
            table.row(cells);
        }
    }
    table
}

fn more_cells(more: Option<&Rounded>) -> [spreadsheet::Cell; 2] {
    let value = more.map(|more| Value {
        text: Some(more.value.trim_start_matches('+').to_owned()),
        u: more.u.clone(),
        gap: None,
    });
    spreadsheet::Cell::figure_and_doubt(&value.unwrap_or_default())
}
