//! What commands print for people.

use std::fmt::Write as _;

use crate::balance::{Balance, Difference, Layer, Measurand, Reported};
use crate::book::Book;
use crate::quantity::{rounded, show_number};
use crate::say::Speaker;

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
            || format!("not stated by {}", names.join(", ")),
            |reason| Speaker::new(book).no_figure(reason).to_owned(),
        );
        return format!("not known: {why}");
    };
    let shown = rounded(value, reported.u);
    let mut text = String::new();
    if !names.is_empty() || reported.reason.is_some() {
        text.push_str("at least ");
    }
    let _ = write!(text, "{} {unit}", shown.value);
    if let Some(u) = shown.u {
        let _ = write!(text, " ± {u}");
    }
    if !names.is_empty() {
        let _ = write!(text, " — not stated: {}", names.join(", "));
    }
    if let Some(reason) = reported.reason {
        let _ = write!(text, " — {}", Speaker::new(book).no_figure(reason));
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
            let narrow = words.narrow.map(|narrow| format!(" — {narrow}"));
            let _ = writeln!(
                text,
                "    {name:<20}{:>3} %  {}{}",
                show_number(part * 100.0, 0),
                words.what,
                narrow.unwrap_or_default()
            );
        }
    }
    if !text.is_empty() {
        text.insert_str(0, "  what makes it uncertain\n");
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
    let mut text = format!("{title}\n");
    for measurand in SHOWN {
        let unit = if measurand == Measurand::Cost {
            &book.settings.currency
        } else {
            measurand.unit()
        };
        let figure = reported(book, &balance.reported(measurand), unit);
        let at = match measurand {
            Measurand::Sweetness => {
                format!(" at {} °C", show_number(balance.drinking_temperature, 0))
            }
            _ => String::new(),
        };
        let _ = writeln!(
            text,
            "  {:<22}{figure}{at}",
            Speaker::without_book().measurand(measurand)
        );
    }
    if let Some(layers) = &balance.layers {
        text.push_str(&layer("first sip", &layers.first_sip));
        text.push_str(&layer("stirred", &layers.stirred));
    }
    let _ = writeln!(
        text,
        "  {:<22}{}, by ingredients",
        "vegan",
        Speaker::new(book).verdict(balance.vegan)
    );
    if let Some(difference) = difference {
        text.push_str(&distance("  against the standard", difference));
    }
    text.push_str(&doubt(book, balance));
    for caution in &balance.cautions {
        let _ = writeln!(
            text,
            "  caution ({}): {}",
            caution.kind().word(),
            Speaker::new(book).caution(&caution.fact)
        );
    }
    for finding in &balance.findings {
        let said = Speaker::new(book).finding(finding);
        let _ = writeln!(text, "  {}: {said}", finding.severity.word());
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
            Speaker::without_book().measurand(measurand),
            shown.value
        ))
    };
    let parts: Vec<String> = Layer::TASTED.into_iter().filter_map(of).collect();
    format!("  {name:<22}in 100 ml: {}\n", parts.join(", "))
}

/// "against the standard: distance 2.4 noticeable steps (sweeter by 2.1, …)".
pub(super) fn distance(lead: &str, difference: &Difference) -> String {
    let Some(distance) = difference.distance else {
        return format!("{lead}: nothing can be compared\n");
    };
    let mut axes: Vec<(f64, String)> = difference
        .axes
        .iter()
        .filter_map(|axis| {
            let steps = axis.steps.filter(|steps| steps.abs() >= 0.05)?;
            let (more, less) = axis.axis.comparatives();
            let word = if steps > 0.0 { more } else { less };
            Some((
                steps.abs(),
                format!("{word} by {}", show_number(steps.abs(), 1)),
            ))
        })
        .collect();
    axes.sort_by(|one, other| other.0.total_cmp(&one.0));
    let words: Vec<String> = axes.into_iter().map(|(_, words)| words).collect();
    let words = if words.is_empty() && difference.is_level() {
        "level on every axis".to_owned()
    } else if words.is_empty() {
        "level on every axis that is known".to_owned()
    } else {
        words.join(", ")
    };
    let unknown: Vec<&str> = difference
        .not_compared()
        .map(crate::book::Axis::word)
        .collect();
    let unknown = if unknown.is_empty() {
        String::new()
    } else {
        format!("; not compared: {}", unknown.join(", "))
    };
    format!(
        "{lead}: {} noticeable steps overall ({words}{unknown})\n",
        show_number(distance, 2)
    )
}
