//! The figures of a drink as they are listed: in which order, with which digits, and what stands where one is not known.

use crate::balance::{Balance, Layer, Lens, Measurand, Reported};
use crate::book::Book;
use crate::quantity::{DisplayUnits, Rounded, rounded, rounded_at_most, show_number};
use crate::say::Speaker;

/// Groups of figures, in the order in which they are read.
const GROUPS: [(&str, &[Measurand]); 4] = [
    (
        "Taste",
        &[
            Measurand::TotalSugar,
            Measurand::FreeSugars,
            Measurand::Sweetness,
            Measurand::Brix,
            Measurand::TeaSolids,
            Measurand::Acid,
        ],
    ),
    (
        "In the cup",
        &[
            Measurand::ServingTemperature,
            Measurand::MinutesToDrinkable,
            Measurand::Volume,
            Measurand::Fill,
            Measurand::Dilution,
        ],
    ),
    (
        "Nutrition",
        &[
            Measurand::EnergyKj,
            Measurand::EnergyKcal,
            Measurand::Fat,
            Measurand::Saturates,
            Measurand::Carbohydrate,
            Measurand::Protein,
            Measurand::Salt,
            Measurand::Caffeine,
        ],
    ),
    ("Cost", &[Measurand::Cost]),
];

/// What is said of one figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FigureText {
    /// A value.
    Known {
        /// In digits.
        value: String,
        /// Standard uncertainty in digits.
        u: Option<String>,
    },
    /// The known part of a sum.
    AtLeast {
        /// In digits.
        value: String,
        /// "not stated: Velloom oat creamer".
        gap: String,
    },
    /// A word instead of a number.
    Said(&'static str),
    /// No value.
    NotKnown {
        /// Why.
        gap: String,
    },
}

/// One row of the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FigureRow {
    /// What it is a figure of.
    pub measurand: Measurand,
    /// "sweetness at 58 °C".
    pub name: String,
    /// The figure.
    pub text: FigureText,
    /// Its unit.
    pub unit: String,
    /// The same in 100 ml, where that makes sense.
    pub in_100_ml: Option<String>,
    /// Whether it is what the person looks at.
    pub is_lens: bool,
    /// Whether it is a figure of the drink, which can be taken apart.
    pub is_of_drink: bool,
}

/// A group of rows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FigureGroup {
    /// Its name.
    pub name: &'static str,
    /// Its rows.
    pub rows: Vec<FigureRow>,
}

/// The list of a drink, seen through a lens.
pub fn groups(book: &Book, balance: &Balance, lens: Lens, units: DisplayUnits) -> Vec<FigureGroup> {
    let row = |measurand: &Measurand| row(book, balance, lens, *measurand, units);
    let mut groups: Vec<FigureGroup> = GROUPS
        .iter()
        .map(|(name, of)| FigureGroup {
            name,
            rows: of.iter().map(row).collect(),
        })
        .collect();
    let rows = layer_rows(balance);
    if !rows.is_empty() {
        let name = "With what floats on top";
        groups.insert(1, FigureGroup { name, rows });
    }
    groups
}

/// One row.
pub fn row(
    book: &Book,
    balance: &Balance,
    lens: Lens,
    measurand: Measurand,
    units: DisplayUnits,
) -> FigureRow {
    let unit = match measurand {
        Measurand::Cost => book.settings.currency.clone(),
        _ => units.of(measurand.unit()).symbol.to_owned(),
    };
    FigureRow {
        measurand,
        name: name(balance, measurand, units),
        text: said(balance, measurand)
            .unwrap_or_else(|| text(book, measurand, &balance.reported(measurand), units)),
        unit,
        in_100_ml: in_100_ml(balance, measurand),
        is_lens: lens.measurand() == measurand,
        is_of_drink: true,
    }
}

fn name(balance: &Balance, measurand: Measurand, units: DisplayUnits) -> String {
    let celsius = units.of("°C");
    let drinking = celsius.trimmed(balance.drinking_temperature, 1);
    match measurand {
        Measurand::Sweetness => {
            format!("sweetness at {drinking} {}", celsius.symbol)
        }
        Measurand::MinutesToDrinkable => {
            format!("minutes until {drinking} {}", celsius.symbol)
        }
        other => Speaker::without_book().measurand(other).to_owned(),
    }
}

/// A drink that is handed over at its drinking temperature or below has no time to wait for.
fn said(balance: &Balance, measurand: Measurand) -> Option<FigureText> {
    let serving = balance.figures.get(Measurand::ServingTemperature)?;
    let waits = measurand == Measurand::MinutesToDrinkable;
    (waits && serving <= balance.drinking_temperature)
        .then_some(FigureText::Said("served below this"))
}

fn text(book: &Book, measurand: Measurand, reported: &Reported, units: DisplayUnits) -> FigureText {
    let unit = units.of(measurand.unit());
    let gap = || match reported.reason {
        Some(reason) => Speaker::new(book).no_figure(reason).to_owned(),
        None => format!(
            "not stated: {}",
            Speaker::new(book).ingredients(&reported.missing)
        ),
    };
    let rounded = |value: f64, u: Option<f64>| match measurand {
        // Nobody pays less than a hundredth, or tells a tenth of a degree.
        Measurand::Cost => rounded_at_most(value, u, 2),
        Measurand::ServingTemperature | Measurand::MinutesToDrinkable | Measurand::Volume => {
            rounded_at_most(value, u, unit.decimals(1))
        }
        // One decimal always, so that the fill of two versions can be read against each other.
        Measurand::Fill => Rounded {
            value: show_number(value, 1),
            u: u.filter(|u| *u >= 0.05).map(|u| show_number(u, 1)),
        },
        _ => rounded(value, u),
    };
    match reported.value {
        Some(value) if reported.missing.is_empty() => {
            let rounded = rounded(unit.value(value), reported.u.map(|u| unit.difference(u)));
            FigureText::Known {
                value: rounded.value,
                u: rounded.u,
            }
        }
        Some(value) => FigureText::AtLeast {
            value: rounded(unit.value(value), reported.u.map(|u| unit.difference(u))).value,
            gap: gap(),
        },
        None => FigureText::NotKnown { gap: gap() },
    }
}

/// What is in 100 ml of the mixed drink, toppings and what floats on it left out.
fn in_100_ml(balance: &Balance, measurand: Measurand) -> Option<String> {
    let figure = measurand.per_100_ml()?;
    let value = balance.figures.complete(figure)?;
    Some(rounded(value, balance.reported(figure).u).value)
}

/// What is tasted of what floats on top, and of the drink with it stirred in.
fn layer_rows(balance: &Balance) -> Vec<FigureRow> {
    let Some(layers) = &balance.layers else {
        return Vec::new();
    };
    let row = |name: &str, layer: &Layer, measurand: Measurand| {
        let found = layer.get(measurand)?;
        let shown = rounded(found.value, Some(found.u));
        Some(FigureRow {
            measurand,
            name: format!("{name}: {}", Speaker::without_book().measurand(measurand)),
            text: FigureText::Known {
                value: shown.value,
                u: shown.u,
            },
            unit: measurand.unit().to_owned(),
            in_100_ml: None,
            is_lens: false,
            is_of_drink: false,
        })
    };
    let of = |name: &str, layer| {
        Layer::TASTED
            .into_iter()
            .filter_map(|measurand| row(name, layer, measurand))
            .collect::<Vec<_>>()
    };
    [
        of("first sip", &layers.first_sip),
        of("stirred", &layers.stirred),
    ]
    .concat()
}

impl FigureRow {
    /// The row in one sentence.
    pub fn words(&self) -> String {
        let unit = if self.unit.is_empty() {
            String::new()
        } else {
            format!(" {}", self.unit)
        };
        match &self.text {
            FigureText::Known { value, u: Some(u) } => {
                format!("{}: {value}{unit}, ± {u}", self.name)
            }
            FigureText::Known { value, u: None } => format!("{}: {value}{unit}", self.name),
            FigureText::AtLeast { value, gap } => {
                format!("{}: at least {value}{unit}; {gap}", self.name)
            }
            FigureText::Said(words) => format!("{}: {words}", self.name),
            FigureText::NotKnown { gap } => format!("{}: not known; {gap}", self.name),
        }
    }

    /// "20.3 g", "≥ 12.3 g", "not known".
    pub fn figure(&self) -> String {
        let unit = if self.unit.is_empty() {
            String::new()
        } else {
            format!(" {}", self.unit)
        };
        match &self.text {
            FigureText::Known { value, .. } => format!("{value}{unit}"),
            FigureText::AtLeast { value, .. } => format!("≥ {value}{unit}"),
            FigureText::Said(words) => (*words).to_owned(),
            FigureText::NotKnown { .. } => "not known".to_owned(),
        }
    }

    /// What is missing, if anything.
    pub fn gap(&self) -> Option<&str> {
        match &self.text {
            FigureText::Known { .. } | FigureText::Said(_) => None,
            FigureText::AtLeast { gap, .. } | FigureText::NotKnown { gap } => Some(gap),
        }
    }
}
