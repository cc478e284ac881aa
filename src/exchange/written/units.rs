//! The words of amounts in English and German recipes.

use super::household::Household;
use crate::quantity::{PackUnit, mass_or_volume_called};

/// What a word after a number is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Unit {
    Grams(f64),
    Millilitres(f64),
    Household(Household),
    /// Something that others are packed in: "can".
    Container,
    /// Something that is counted: "slice".
    Piece,
}

const HOUSEHOLD: &[(&[&str], Household)] = &[
    (
        &[
            "tablespoon",
            "tablespoons",
            "tbsp",
            "tbsps",
            "tbs",
            "tbl",
            "el",
            "esslöffel",
            "eßlöffel",
        ],
        Household::Tablespoon,
    ),
    (
        &["teaspoon", "teaspoons", "tsp", "tsps", "tl", "teelöffel"],
        Household::Teaspoon,
    ),
    (&["cup", "cups"], Household::Cup),
    (&["tasse", "tassen"], Household::Tasse),
    (&["pinch", "pinches", "prise", "prisen"], Household::Pinch),
    (
        &["messerspitze", "messerspitzen", "msp"],
        Household::KnifeTip,
    ),
    (&["dash", "dashes", "spritzer"], Household::Dash),
    (
        &["splash", "splashes", "schuss", "schuß"],
        Household::Splash,
    ),
];

const CONTAINERS: &[&str] = &[
    "bag",
    "bags",
    "beutel",
    "bottle",
    "bottles",
    "box",
    "boxes",
    "can",
    "cans",
    "carton",
    "cartons",
    "dose",
    "dosen",
    "flasche",
    "flaschen",
    "glas",
    "gläser",
    "jar",
    "jars",
    "pack",
    "package",
    "packages",
    "packet",
    "packets",
    "packs",
    "packung",
    "packungen",
    "pck",
    "pkg",
    "pouch",
    "pouches",
    "päckchen",
    "sachet",
    "sachets",
    "tin",
    "tins",
    "tüte",
    "tüten",
];

const PIECES: &[&str] = &[
    "ball",
    "balls",
    "becher",
    "blatt",
    "blätter",
    "bund",
    "bunch",
    "clove",
    "cloves",
    "cube",
    "cubes",
    "drop",
    "drops",
    "handful",
    "handfuls",
    "handvoll",
    "hub",
    "hübe",
    "jigger",
    "jiggers",
    "knob",
    "kugel",
    "kugeln",
    "leaf",
    "leaves",
    "messlöffel",
    "piece",
    "pieces",
    "press",
    "presses",
    "pump",
    "pumps",
    "scheibe",
    "scheiben",
    "scoop",
    "scoops",
    "shot",
    "shots",
    "slice",
    "slices",
    "spoon",
    "spoons",
    "sprig",
    "sprigs",
    "stange",
    "stangen",
    "stick",
    "sticks",
    "stück",
    "stücke",
    "tea bag",
    "tea bags",
    "teebeutel",
    "tropfen",
    "wedge",
    "wedges",
    "würfel",
    "zehe",
    "zehen",
    "zweig",
    "zweige",
    "eislöffel",
    "ice scoop",
    "ice scoops",
    "portion",
    "portionen",
];

/// What one or two words are; a letter alone tells a spoon by its case.
pub(super) fn unit_called(word: &str) -> Option<Unit> {
    match word {
        "T" => return Some(Unit::Household(Household::Tablespoon)),
        "t" => return Some(Unit::Household(Household::Teaspoon)),
        "c" | "C" => return Some(Unit::Household(Household::Cup)),
        _ => {}
    }
    let word = word.to_lowercase();
    let word = word.as_str();
    let metric = mass_or_volume_called(word).map(|(unit, factor)| match unit {
        PackUnit::Grams => Unit::Grams(factor),
        PackUnit::Millilitres => Unit::Millilitres(factor),
    });
    let household = HOUSEHOLD.iter().find(|(words, _)| words.contains(&word));
    metric
        .or_else(|| household.map(|(_, of)| Unit::Household(*of)))
        .or_else(|| CONTAINERS.contains(&word).then_some(Unit::Container))
        .or_else(|| PIECES.contains(&word).then_some(Unit::Piece))
}

/// Numbers as words.
pub(super) fn number_called(word: &str) -> Option<f64> {
    let numbers: [&[&str]; 12] = [
        &["a", "an", "one", "ein", "eine", "einen", "einer", "eines"],
        &["two", "zwei"],
        &["three", "drei"],
        &["four", "vier"],
        &["five", "fünf"],
        &["six", "sechs"],
        &["seven", "sieben"],
        &["eight", "acht"],
        &["nine", "neun"],
        &["ten", "zehn"],
        &["eleven", "elf"],
        &["twelve", "zwölf"],
    ];
    let word = word.to_lowercase();
    match word.as_str() {
        "half" | "halbe" | "halber" | "halbes" | "halben" => return Some(0.5),
        "anderthalb" | "eineinhalb" => return Some(1.5),
        _ => {}
    }
    let at = numbers
        .iter()
        .position(|words| words.contains(&word.as_str()))?;
    Some((at + 1) as f64)
}

/// Words that say no more than that a number is not exact.
pub(super) const ABOUT: &[&str] = &[
    "about",
    "approx",
    "approximately",
    "around",
    "roughly",
    "circa",
    "ca",
    "etwa",
    "ungefähr",
    "rund",
    "gut",
    "gute",
    "guter",
    "knapp",
    "knappe",
    "knapper",
    "scant",
    "generous",
    "good",
];

/// How a spoon is filled: heaped, or level for the others.
pub(super) const HEAPED: &[&str] = &[
    "heaped",
    "heaping",
    "rounded",
    "gehäuft",
    "gehäufte",
    "gehäufter",
    "gehäuften",
];
pub(super) const LEVELLED: &[&str] = &[
    "level",
    "levelled",
    "leveled",
    "flat",
    "gestrichen",
    "gestrichene",
    "gestrichener",
    "gestrichenen",
];

/// What asks for as much as there is room for, the longer first.
pub(super) const FILLS: &[&str] = &[
    "to fill the glass",
    "to fill the cup",
    "to fill up",
    "to fill",
    "to top up",
    "to top it up",
    "to top off",
    "to the rim",
    "to the top",
    "to top",
    "for topping up",
    "fill up with",
    "fill with",
    "top up with",
    "top with",
    "top off with",
    "zum auffüllen",
    "zum aufgießen",
    "auffüllen mit",
    "mit auffüllen",
    "auffüllen",
    "aufgießen",
    "bis zum rand",
    "bis oben",
];

/// Little words between an amount and a name.
const BETWEEN: &[&str] = &[
    "and",
    "bei",
    "bis",
    "celsius",
    "degree",
    "degrees",
    "dem",
    "der",
    "each",
    "enough",
    "etwas",
    "fahrenheit",
    "fluid",
    "grad",
    "jeweils",
    "mit",
    "oder",
    "per",
    "plus",
    "some",
    "the",
    "und",
    "vom",
    "von",
    "with",
];

/// Whether a word only says how much there is of something.
pub(super) fn is_of_amount(word: &str) -> bool {
    let lower = word.to_lowercase();
    let lower = lower.as_str();
    let is_part = |words: &[&str]| {
        let mut words = words.iter().flat_map(|words| words.split(' '));
        words.any(|known| known == lower)
    };
    unit_called(word).is_some()
        || number_called(word).is_some()
        || [ABOUT, HEAPED, LEVELLED, FILLS, PIECES, BETWEEN]
            .into_iter()
            .any(is_part)
}

/// The spoon of kitchens that a word means: "EL", "tsp".
pub fn kitchen_spoon_called(word: &str) -> Option<Household> {
    match unit_called(word.trim_end_matches('.'))? {
        Unit::Household(of @ (Household::Tablespoon | Household::Teaspoon)) => Some(of),
        _ => None,
    }
}

/// Whether a measure of a shop is called like one of kitchens: "tablespoon", "Esslöffel (gross)".
pub fn is_called(name: &str, of: Household) -> bool {
    let mut words = name.split(|c: char| !c.is_alphabetic());
    words.any(|word| word.chars().count() > 1 && unit_called(word) == Some(Unit::Household(of)))
}

/// The word that a counter's amount is typed with for what a recipe counts; the word itself where there is no other.
pub(in super::super) fn counter_word(word: &str) -> &str {
    match word.to_lowercase().as_str() {
        "messlöffel" => "scoops",
        "hub" | "hübe" | "pump" | "pumps" => "presses",
        "eislöffel" => "ice scoops",
        _ => word,
    }
}
