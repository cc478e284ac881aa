//! What the variations say, as plain values: names, amounts, what limits a level of sugar.

use crate::balance::{Balance, Measurand};
use crate::book::VesselId;
use crate::say::{Speaker, say};
use crate::swap::{Adapted, Ladder};
use crate::ui::Screen;
use crate::workbench::VariationKind;

/// Sugar below which a line is not worth a word, g.
const LITTLE: f64 = 0.05;

/// The amounts of a drink that differ from the version in hand, in counter measures.
pub(super) fn amounts(screen: &Screen<'_>, drink: &Adapted) -> String {
    let lines = [&drink.balance.resolved, &screen.balance.resolved];
    let speaker = screen.speaker;
    let moves: Vec<String> = drink
        .moves
        .iter()
        .map(|moved| speaker.line_move(moved, &lines))
        .collect();
    if moves.is_empty() {
        speaker.word("variations-no-amount-changes").to_owned()
    } else {
        moves.join(", ")
    }
}

/// Sugar of a drink, g; `None` when it is not known.
pub(super) fn sugar(balance: &Balance) -> Option<f64> {
    balance.figures.complete(Measurand::TotalSugar)
}

/// What carries the sugar that can't be taken out: "12.1 g of the 19.6 g …: powder 10.2 g, milk 1.9 g".
pub(super) fn floor_words(speaker: Speaker<'_>, ladder: &Ladder) -> String {
    let (Some(floor), Some(standard)) = (sugar(&ladder.floor), sugar(&ladder.standard)) else {
        return speaker.word("variations-sugar-not-known").to_owned();
    };
    let mut carriers: Vec<(f64, String)> = ladder
        .floor
        .lines
        .iter()
        .filter_map(|share| {
            let sugar = share.sugar.filter(|sugar| *sugar >= LITTLE)?;
            Some((sugar, speaker.ingredient(&share.ingredient)))
        })
        .collect();
    carriers.sort_by(|one, other| other.0.total_cmp(&one.0));
    let grams = |sugar: f64| speaker.in_unit(sugar, "g", 1);
    let carriers: Vec<String> = carriers
        .into_iter()
        .map(|(sugar, name)| format!("{name} {}", grams(sugar)))
        .collect();
    if carriers.is_empty() {
        return speaker.word("variations-all-from-sweetener").to_owned();
    }
    say!(speaker, "variations-floor", floor: grams(floor), sugar: grams(standard),
        carriers: carriers.join(", "))
}

/// The name of a version with a level of sugar.
pub(super) fn level_version(speaker: Speaker<'_>, level: &str) -> String {
    let typed = level.to_lowercase();
    let words = speaker.word("variations-level-says-sugar");
    let mut words = words.split(',').map(str::trim);
    if words.any(|word| typed.contains(word)) {
        level.to_owned()
    } else {
        say!(speaker, "variations-level-version", level: level)
    }
}

/// What a variation is called in the list, and as a version.
pub(super) fn variation_names(speaker: Speaker<'_>, kind: &VariationKind) -> (String, String) {
    let cup = |id: &VesselId| {
        let vessel = speaker.book.vessel(id);
        vessel.map_or_else(|| id.to_string(), |vessel| vessel.name.clone())
    };
    match kind {
        VariationKind::Size(id) => {
            let title = match speaker.book.vessel(id) {
                Some(vessel) => {
                    let volume = speaker.volume(vessel.capacity, 0);
                    say!(speaker, "variations-cup", cup: cup(id), volume: volume)
                }
                None => cup(id),
            };
            (title, cup(id))
        }
        VariationKind::Iced(id) => {
            let title = say!(speaker, "variations-iced-cup", cup: cup(id));
            (title, speaker.word("variations-iced").to_owned())
        }
        VariationKind::Hot(id) => {
            let title = say!(speaker, "variations-hot-cup", cup: cup(id));
            (title, speaker.word("variations-hot").to_owned())
        }
        VariationKind::Ice(level) => {
            let percent = speaker.in_unit(level.percent, "%", 0);
            let name = speaker.level_name(level);
            let title = say!(speaker, "variations-ice-level", level: &name, percent: percent);
            (title, name)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    #[test]
    fn a_version_is_not_called_sugar_twice() {
        let english = Speaker::without_book();
        assert_eq!(level_version(english, "50 %"), "50 % sugar");
        assert_eq!(level_version(english, "half sweet"), "half sweet");
        let german = english.in_language(Language::from_code("de").unwrap());
        assert_eq!(level_version(german, "50 %"), "50 % Zucker");
        for level in ["Halbe Süße", "ohne Zucker", "half sweet"] {
            assert_eq!(level_version(german, level), level);
        }
    }
}
