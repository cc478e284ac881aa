//! The figures of a drink as they are listed: in which order, with which digits, and what stands where one is not known.

use crate::balance::{Balance, Layer, Lens, Measurand, Reported};
use crate::quantity::{Rounded, rounded, rounded_at_most, show_number};
use crate::say::{Speaker, say};
use crate::ui::value::Value;

/// Groups of figures by the message of their name, in the order in which they are read.
const GROUPS: [(&str, &[Measurand]); 4] = [
    (
        "widget-figures-taste",
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
        "widget-figures-cup",
        &[
            Measurand::ServingTemperature,
            Measurand::MinutesToDrinkable,
            Measurand::Volume,
            Measurand::Fill,
            Measurand::Dilution,
        ],
    ),
    (
        "widget-figures-nutrition",
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
    ("widget-figures-cost", &[Measurand::Cost]),
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
    Said(String),
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
pub fn groups(speaker: Speaker<'_>, balance: &Balance, lens: Lens) -> Vec<FigureGroup> {
    let row = |measurand: &Measurand| row(speaker, balance, lens, *measurand);
    let mut groups: Vec<FigureGroup> = GROUPS
        .iter()
        .map(|(name, of)| FigureGroup {
            name: speaker.word(name),
            rows: of.iter().map(row).collect(),
        })
        .collect();
    let rows = layer_rows(speaker, balance);
    if !rows.is_empty() {
        let name = speaker.word("widget-figures-on-top");
        groups.insert(1, FigureGroup { name, rows });
    }
    groups
}

/// One row.
pub fn row(speaker: Speaker<'_>, balance: &Balance, lens: Lens, measurand: Measurand) -> FigureRow {
    let unit = match measurand {
        Measurand::Cost => speaker.book.settings.currency.clone(),
        _ => speaker.units.of(measurand.unit()).symbol.to_owned(),
    };
    FigureRow {
        measurand,
        name: name(speaker, balance, measurand),
        text: said(speaker, balance, measurand)
            .unwrap_or_else(|| text(speaker, measurand, &balance.reported(measurand))),
        unit,
        in_100_ml: in_100_ml(balance, measurand),
        is_lens: lens.measurand() == measurand,
        is_of_drink: true,
    }
}

fn name(speaker: Speaker<'_>, balance: &Balance, measurand: Measurand) -> String {
    let celsius = speaker.trimmed(balance.drinking_temperature, "°C", 1);
    match measurand {
        Measurand::Sweetness => say!(speaker, "widget-sweetness-at", celsius: celsius),
        Measurand::MinutesToDrinkable => say!(speaker, "widget-minutes-until", celsius: celsius),
        other => speaker.measurand(other).to_owned(),
    }
}

/// A drink that is handed over at its drinking temperature or below has no time to wait for.
fn said(speaker: Speaker<'_>, balance: &Balance, measurand: Measurand) -> Option<FigureText> {
    let serving = balance.figures.get(Measurand::ServingTemperature)?;
    let waits = measurand == Measurand::MinutesToDrinkable;
    (waits && serving <= balance.drinking_temperature).then(|| {
        // What it is compared with is the temperature at which its own standard was found right.
        FigureText::Said(match balance.tasted_at {
            Some(tasted) => {
                let celsius = speaker.trimmed(tasted, "°C", 1);
                say!(speaker, "widget-served-below-tasted", celsius: celsius)
            }
            None => speaker.word("widget-served-below").to_owned(),
        })
    })
}

fn text(speaker: Speaker<'_>, measurand: Measurand, reported: &Reported) -> FigureText {
    let unit = speaker.units.of(measurand.unit());
    let gap = || {
        let not_stated = || {
            let ingredients = speaker.ingredients(&reported.missing);
            say!(speaker, "value-not-stated", ingredients: ingredients)
        };
        let reason = reported.reason.map(|reason| speaker.no_figure(reason));
        reason.map_or_else(not_stated, str::to_owned)
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
fn layer_rows(speaker: Speaker<'_>, balance: &Balance) -> Vec<FigureRow> {
    let Some(layers) = &balance.layers else {
        return Vec::new();
    };
    let row = |message: &str, layer: &Layer, measurand: Measurand| {
        let found = layer.get(measurand)?;
        let shown = rounded(found.value, Some(found.u));
        Some(FigureRow {
            measurand,
            name: say!(speaker, message, figure: speaker.measurand(measurand)),
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
    let of = |message: &str, layer| {
        Layer::TASTED
            .into_iter()
            .filter_map(|measurand| row(message, layer, measurand))
            .collect::<Vec<_>>()
    };
    [
        of("widget-first-sip", &layers.first_sip),
        of("widget-stirred", &layers.stirred),
    ]
    .concat()
}

impl FigureRow {
    /// The row in one sentence.
    pub fn words(&self, speaker: Speaker<'_>) -> String {
        if let FigureText::Said(words) = &self.text {
            return say!(speaker, "value-known", name: &self.name, figure: words);
        }
        Value::from(&self.text).sentence(speaker, &self.name, &self.unit)
    }

    /// "20.3 g", "≥ 12.3 g", "not known".
    pub fn figure(&self, speaker: Speaker<'_>) -> String {
        let with_unit = |digits: &str| {
            let digits = speaker.digits(digits);
            format!("{digits} {}", self.unit).trim_end().to_owned()
        };
        match &self.text {
            FigureText::Known { value, .. } => with_unit(value),
            FigureText::AtLeast { value, .. } => format!("≥ {}", with_unit(value)),
            FigureText::Said(words) => words.clone(),
            FigureText::NotKnown { .. } => speaker.word("widget-not-known").to_owned(),
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
