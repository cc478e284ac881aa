//! What commands print for people.

use std::fmt::Write as _;

use super::speaker;
use crate::balance::{Balance, Difference, Layer, Measurand, Reported};
use crate::book::Book;
use crate::quantity::{rounded, show_number};
use crate::say::{Speaker, say};

/// The figures of a balance for people, in the order in which they are asked for at the counter.
const SHOWN: [Measurand; 22] = [
    Measurand::TotalSugar,
    Measurand::FreeSugars,
    Measurand::Sweetness,
    Measurand::Brix,
    Measurand::ServingTemperature,
    Measurand::MinutesToDrinkable,
    Measurand::IceLeft,
    Measurand::Volume,
    Measurand::Mass,
    Measurand::Dilution,
    Measurand::Fill,
    Measurand::EnergyKj,
    Measurand::EnergyKcal,
    Measurand::Fat,
    Measurand::Saturates,
    Measurand::Carbohydrate,
    Measurand::Protein,
    Measurand::Salt,
    Measurand::Caffeine,
    Measurand::TeaSolids,
    Measurand::Acid,
    Measurand::Cost,
];

/// "20.3 g ± 1.1", "at least 20.3 g ± 1.1 — not stated: Velloom oat creamer", "not known: …".
pub(super) fn reported(book: &Book, reported: &Reported, unit: &str) -> String {
    let names: Vec<String> = reported
        .missing
        .iter()
        .map(|id| {
            book.ingredient(id)
                .map_or_else(|| id.to_string(), |item| item.full_name())
        })
        .collect();
    let Some(value) = reported.value else {
        let why = reported.reason.map_or_else(
            || say!(speaker(), "command-not-stated-by", ingredients: names.join(", ")),
            |reason| speaker().no_figure(reason).to_owned(),
        );
        return say!(speaker(), "command-not-known-why", why: why);
    };
    let shown = rounded(value, reported.u);
    let mut text = format!("{} {unit}", shown.value);
    if let Some(u) = shown.u {
        let _ = write!(text, " ± {u}");
    }
    if !names.is_empty() || reported.reason.is_some() {
        text = say!(speaker(), "command-at-least", figure: text);
    }
    if !names.is_empty() {
        let names = names.join(", ");
        text = say!(speaker(), "command-figure-not-stated", figure: text, ingredients: names);
    }
    if let Some(reason) = reported.reason {
        let why = speaker().no_figure(reason);
        text = say!(speaker(), "command-figure-why", figure: text, why: why);
    }
    text
}

/// Figures whose doubt is taken apart.
const DOUBTED: [Measurand; 4] = [
    Measurand::TotalSugar,
    Measurand::Sweetness,
    Measurand::ServingTemperature,
    Measurand::Cost,
];
/// How many causes each of them names.
const CAUSES: usize = 3;

/// What makes the main figures uncertain, the cause with the largest part of the variance first.
fn doubt(book: &Book, balance: &Balance) -> String {
    let speaker = Speaker::new(book);
    let mut text = String::new();
    for measurand in DOUBTED {
        for (at, (cause, part)) in balance
            .largest_causes(measurand.slot(), CAUSES)
            .into_iter()
            .filter(|(_, part)| *part >= 0.05)
            .enumerate()
        {
            let name = if at == 0 {
                speaker.measurand(measurand)
            } else {
                ""
            };
            let words = speaker.cause(balance, cause);
            let cause = match words.narrow {
                Some(narrow) => {
                    say!(speaker, "command-doubt-to-narrow", cause: words.what, to_narrow: narrow)
                }
                None => words.what,
            };
            let _ = writeln!(
                text,
                "    {name:<20}{:>3} %  {cause}",
                show_number(part * 100.0, 0)
            );
        }
    }
    if !text.is_empty() {
        text.insert_str(0, &format!("  {}\n", speaker.word("command-doubt")));
    }
    text
}

/// A balance as a list of figures.
pub(super) fn balance(
    book: &Book,
    title: &str,
    balance: &Balance,
    difference: Option<&Difference>,
) -> String {
    let speaker = Speaker::new(book);
    let mut text = format!("{title}\n");
    for measurand in SHOWN {
        let unit = if measurand == Measurand::Cost {
            &book.settings.currency
        } else {
            measurand.unit()
        };
        let figure = reported(book, &balance.reported(measurand), unit);
        let figure = match measurand {
            Measurand::Sweetness => {
                let celsius = show_number(balance.drinking_temperature, 0);
                say!(speaker, "command-at-temperature", figure: figure, celsius: celsius)
            }
            _ => figure,
        };
        let _ = writeln!(text, "  {:<22}{figure}", speaker.measurand(measurand));
    }
    if let Some(layers) = &balance.layers {
        text.push_str(&layer(speaker.word("command-first-sip"), &layers.first_sip));
        text.push_str(&layer(speaker.word("command-stirred"), &layers.stirred));
    }
    let verdict = speaker.verdict(balance.vegan);
    let _ = writeln!(
        text,
        "  {:<22}{}",
        speaker.word("command-vegan"),
        say!(speaker, "command-by-ingredients", verdict: verdict)
    );
    if let Some(difference) = difference {
        let lead = format!("  {}", speaker.word("command-against-standard"));
        text.push_str(&distance(&lead, difference));
    }
    text.push_str(&doubt(book, balance));
    for caution in &balance.cautions {
        let caution = say!(
            speaker,
            "command-caution",
            kind: caution.kind().word(),
            caution: speaker.caution(&caution.fact),
        );
        let _ = writeln!(text, "  {caution}");
    }
    for finding in &balance.findings {
        let severity = speaker.severity(finding.severity);
        let _ = writeln!(text, "  {severity}: {}", speaker.finding(finding));
    }
    text
}

/// "first sip: sweetness 4.2 g/100 ml ± 0.3, creaminess …".
fn layer(name: &str, layer: &Layer) -> String {
    let of = |measurand: Measurand| {
        let found = layer.get(measurand)?;
        let shown = rounded(found.value, Some(found.u));
        let doubt = shown.u.map_or_else(String::new, |u| format!(" ± {u}"));
        Some(format!(
            "{} {}{doubt}",
            speaker().measurand(measurand),
            shown.value
        ))
    };
    let parts: Vec<String> = Layer::TASTED.into_iter().filter_map(of).collect();
    let tastes = say!(speaker(), "command-in-100-ml", tastes: parts.join(", "));
    format!("  {name:<22}{tastes}\n")
}

/// "against the standard: distance 2.4 noticeable steps (sweeter by 2.1, …)".
pub(super) fn distance(lead: &str, difference: &Difference) -> String {
    let Some(distance) = difference.distance else {
        return format!(
            "{}\n",
            say!(speaker(), "command-nothing-compared", lead: lead)
        );
    };
    let mut axes: Vec<(f64, String)> = difference
        .axes
        .iter()
        .filter_map(|axis| {
            let steps = axis.steps.filter(|steps| steps.abs() >= 0.05)?;
            let change = if steps > 0.0 {
                speaker().more(&axis.axis)
            } else {
                speaker().less(&axis.axis)
            };
            let shown = show_number(steps.abs(), 1);
            Some((
                steps.abs(),
                say!(speaker(), "command-differs-by", change: change, steps: shown),
            ))
        })
        .collect();
    axes.sort_by(|one, other| other.0.total_cmp(&one.0));
    let words: Vec<String> = axes.into_iter().map(|(_, words)| words).collect();
    let words = if words.is_empty() && difference.is_level() {
        speaker().word("command-level").to_owned()
    } else if words.is_empty() {
        speaker().word("command-level-as-known").to_owned()
    } else {
        words.join(", ")
    };
    let unknown: Vec<&str> = difference
        .not_compared()
        .map(crate::book::Axis::word)
        .collect();
    let differences = if unknown.is_empty() {
        words
    } else {
        let axes = unknown.join(", ");
        say!(speaker(), "command-not-compared", differences: words, axes: axes)
    };
    let said = say!(
        speaker(),
        "command-distance",
        lead: lead,
        steps: show_number(distance, 2),
        differences: differences,
    );
    format!("{said}\n")
}
