//! What the variations say, as plain values: names, amounts, what limits a level of sugar.

use crate::balance::{Balance, Measurand};
use crate::book::{Book, VesselId};
use crate::quantity::{DisplayUnits, show_number};
use crate::say::Speaker;
use crate::swap::{Adapted, Ladder};
use crate::ui::Screen;
use crate::ui::wording::ingredient_name;
use crate::workbench::VariationKind;

/// Sugar below which a line is not worth a word, g.
const LITTLE: f64 = 0.05;

/// The amounts of a drink that differ from the version in hand, in counter measures.
pub(super) fn amounts(screen: &Screen<'_>, drink: &Adapted) -> String {
    let lines = [&drink.balance.resolved, &screen.balance.resolved];
    let speaker = Speaker::new(screen.book).in_units(screen.units);
    let moves: Vec<String> = drink
        .moves
        .iter()
        .map(|moved| speaker.line_move(moved, &lines))
        .collect();
    if moves.is_empty() {
        "no amount changes".to_owned()
    } else {
        moves.join(", ")
    }
}

/// Sugar of a drink, g; `None` when it is not known.
pub(super) fn sugar(balance: &Balance) -> Option<f64> {
    balance.figures.complete(Measurand::TotalSugar)
}

/// What carries the sugar that can't be taken out: "12.1 g of the 19.6 g …: powder 10.2 g, milk 1.9 g".
pub(super) fn floor_words(book: &Book, ladder: &Ladder) -> String {
    let (Some(floor), Some(standard)) = (sugar(&ladder.floor), sugar(&ladder.standard)) else {
        return "The sugar is not known: a label does not state it.".to_owned();
    };
    let mut carriers: Vec<(f64, String)> = ladder
        .floor
        .lines
        .iter()
        .filter_map(|share| {
            let sugar = share.sugar.filter(|sugar| *sugar >= LITTLE)?;
            Some((sugar, ingredient_name(book, &share.ingredient)))
        })
        .collect();
    carriers.sort_by(|one, other| other.0.total_cmp(&one.0));
    let carriers: Vec<String> = carriers
        .into_iter()
        .map(|(sugar, name)| format!("{name} {} g", show_number(sugar, 1)))
        .collect();
    if carriers.is_empty() {
        return "All the sugar comes from the sweetener, so it can be left out completely."
            .to_owned();
    }
    format!(
        "{} g of its {} g of sugar can't be taken out, because other ingredients bring it: {}. A sugar level changes only what the sweetener adds.",
        show_number(floor, 1),
        show_number(standard, 1),
        carriers.join(", ")
    )
}

/// The name of a version with a level of sugar.
pub(super) fn level_version(level: &str) -> String {
    if level.to_lowercase().contains("sugar") || level.to_lowercase().contains("sweet") {
        level.to_owned()
    } else {
        format!("{level} sugar")
    }
}

/// What a variation is called in the list, and as a version.
pub(super) fn variation_names(
    book: &Book,
    kind: &VariationKind,
    units: DisplayUnits,
) -> (String, String) {
    let cup = |id: &VesselId| {
        book.vessel(id)
            .map_or_else(|| id.to_string(), |vessel| vessel.name.clone())
    };
    match kind {
        VariationKind::Size(id) => {
            let room = book.vessel(id).map_or_else(String::new, |vessel| {
                format!(", {}", units.volume(vessel.capacity, 0))
            });
            (format!("{}{room}", cup(id)), cup(id))
        }
        VariationKind::Iced(id) => (format!("iced, {}", cup(id)), "iced".to_owned()),
        VariationKind::Hot(id) => (format!("hot, {}", cup(id)), "hot".to_owned()),
        VariationKind::Ice(level) => {
            let percent = show_number(level.percent, 0);
            (
                format!("{}, {percent} % of the ice", level.name),
                level.name.clone(),
            )
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_version_is_not_called_sugar_twice() {
        assert_eq!(level_version("50 %"), "50 % sugar");
        assert_eq!(level_version("half sweet"), "half sweet");
    }
}
