//! Random swaps: drinks of the sample book's ingredients, held to a standard that was made with other brands.
//!
//! A seed gives the same drink everywhere. Used by the tests of the search and by its benchmark.

use evensip::balance::{Component, PreparedLine, Slots, figures, noticeable_step, prepare};
use evensip::book::{
    Amount, Axis, Book, Entry, IngredientId, Line, LineId, MeasureId, Place, RecipeId, Resolved,
    Role, Stage, TemperatureWindow, VesselId,
};
use evensip::optimiser::Range;
use evensip::swap::{Bounds, Dimension, Target, TasteLandscape};

/// A small generator of random numbers (`SplitMix64`, Steele, Lea & Flood 2014).
pub(crate) struct Chance(u64);

impl Chance {
    /// A generator that starts from a seed.
    pub(crate) fn new(seed: u64) -> Self {
        Self(
            seed.wrapping_mul(0x9E37_79B9_7F4A_7C15)
                .wrapping_add(0x1234_5678_9ABC_DEF1),
        )
    }

    /// The next 64 bits.
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// A whole number from 0 up to but not including `below`.
    pub(crate) fn below(&mut self, below: u64) -> u64 {
        self.bits() % below.max(1)
    }

    /// A whole number of a closed range.
    pub(crate) fn between(&mut self, low: i32, high: i32) -> i32 {
        let width = u64::try_from(i64::from(high) - i64::from(low) + 1).unwrap_or(1);
        low + i32::try_from(self.below(width)).unwrap_or(0)
    }
}

/// What kind of drink it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    /// Hot in a paper cup.
    Hot,
    /// With ice, poured over it.
    Iced,
    /// With ice, shaken and poured with it.
    Shaken,
    /// With ice, shaken and strained.
    Strained,
    /// Hot, filled up to a volume.
    Filled,
    /// Over ice, filled up to a volume.
    FilledIced,
    /// Ice to the rim.
    IceToRim,
    /// Hot, with toppings.
    Topped,
    /// Hot, with toppings of a mass that nobody knows: neither temperature nor level are known.
    Unweighed,
}

/// Every kind.
pub(crate) const KINDS: [Kind; 9] = [
    Kind::Hot,
    Kind::Iced,
    Kind::Shaken,
    Kind::Strained,
    Kind::Filled,
    Kind::FilledIced,
    Kind::IceToRim,
    Kind::Topped,
    Kind::Unweighed,
];

/// Lines that a drink is made of: the standard's brand, the other brand, grams of one step, whether it is poured hot.
pub(crate) const LINES: [(&str, &str, f64, bool); 9] = [
    ("tambrel-chestnut", "ketterby-chestnut", 1.0, false),
    ("black-tea", "oolong-tea", 5.0, true),
    ("house-sweetener", "sugar-crystals", 1.0, false),
    ("ondry-creamer", "velloom-rice-creamer", 1.0, false),
    ("tambrel-pear-syrup", "ketterby-pear-syrup", 1.0, false),
    ("whole-milk", "soy-drink", 4.0, true),
    ("ginger-syrup", "ginger-syrup", 1.0, false),
    ("malt-powder", "malt-powder", 1.0, false),
    ("light-drops", "light-drops", 0.1, false),
];

pub(crate) fn line(
    id: &str,
    ingredient: &str,
    amount: Amount,
    celsius: f64,
    role: Role,
    stage: Stage,
) -> Entry {
    Entry::Line(Line {
        id: LineId::new(id).expect("an id"),
        ingredient: IngredientId::new(ingredient).expect("an id"),
        amount,
        temperature: Some(celsius.into()),
        role,
        stage,
        carried: None,
        note: String::new(),
    })
}

/// A landscape of so many lines with so many values each; with caps on sugar and energy in some of them if `capped`.
#[expect(
    clippy::too_many_lines,
    reason = "one draw after the other, in the order that the seed fixes"
)]
pub(crate) fn landscape(
    book: &Book,
    seed: u64,
    kind: Kind,
    lines: usize,
    values: i32,
    capped: bool,
) -> TasteLandscape {
    let mut chance = Chance::new(seed);
    let iced = matches!(
        kind,
        Kind::Iced | Kind::Shaken | Kind::Strained | Kind::FilledIced | Kind::IceToRim
    );
    // Sweeteners of high potency in one drink of five; the rest start anywhere in the list.
    let pool = if chance.below(5) == 0 {
        LINES.len()
    } else {
        LINES.len() - 1
    };
    let start = usize::try_from(chance.below(pool as u64)).unwrap_or(0);
    let chosen: Vec<_> = (0..lines).map(|at| LINES[(start + at) % pool]).collect();
    let swapped = chance.below(lines as u64);
    let low: Vec<i32> = chosen
        .iter()
        .map(|_| {
            if chance.below(3) == 0 {
                chance.between(0, 6)
            } else {
                0
            }
        })
        .collect();
    let standard: Vec<i32> = low
        .iter()
        .map(|low| low + chance.between(values / 8, values - 1 - values / 8))
        .collect();
    let resolved = |other: bool| {
        let mut entries: Vec<Entry> = chosen
            .iter()
            .enumerate()
            .map(|(at, (usual, swap, step, hot))| {
                let id = if other && at as u64 == swapped {
                    swap
                } else {
                    usual
                };
                let celsius = match (iced, hot) {
                    (true, _) => 8.0,
                    (false, true) => 74.0,
                    (false, false) => 22.0,
                };
                let amount = Amount::Grams(f64::from(standard[at]) * step);
                line(
                    &format!("line-{at}"),
                    id,
                    amount,
                    celsius,
                    Role::Base,
                    Stage::Mixed,
                )
            })
            .collect();
        entries.extend(rest(kind));
        Resolved {
            entries,
            cup: VesselId::new(if iced { "pet-cup-500" } else { "paper-cup-700" }).ok(),
            shaker: matches!(kind, Kind::Shaken | Kind::Strained)
                .then(|| VesselId::new("steel-shaker").expect("an id")),
            strained: kind == Kind::Strained,
            ..Resolved::default()
        }
    };
    let place = Place::Recipe(RecipeId::new("drink").expect("an id"), "lines");
    let mut slots = Slots::default();
    let wanted = figures(&prepare(book, &resolved(false), &mut slots, &place));
    let prepared = prepare(book, &resolved(true), &mut slots, &place);
    let mut axes = vec![Axis::Sweetness, Axis::TeaStrength];
    axes.extend(slots.flavours.iter().cloned().map(Axis::Flavour));
    axes.extend([
        Axis::Creaminess,
        Axis::Acidity,
        Axis::Body,
        Axis::Temperature,
        Axis::Volume,
    ]);
    let targets = axes
        .into_iter()
        .filter_map(|axis| {
            let slot = Target::slot_of(&slots.flavours, &axis)?;
            let value = wanted.of[slot];
            let (step, weight) = noticeable_step(&book.settings, &axis, value);
            Some(Target {
                axis,
                slot,
                value,
                step,
                weight,
                limit: None,
            })
        })
        .collect();
    let dimensions = (0..lines)
        .map(|at| Dimension {
            line: at,
            step: chosen[at].2,
            standard: f64::from(standard[at]) * chosen[at].2,
            range: Range {
                low: low[at],
                high: low[at] + values - 1,
            },
        })
        .collect();
    let bounds = Bounds {
        window: TemperatureWindow {
            from: -5.0,
            to: 80.0,
        },
        sugar_per_100_ml: (chance.below(4) == 0 && capped).then_some(9.0),
        energy_kj: (chance.below(6) == 0 && capped).then_some(900.0),
        cost: None,
        ice_left: None,
        hot_water: None,
        hot_from: 60.0,
    };
    let is_weighed = |line: &PreparedLine| line.per_unit.knows(Component::Mass);
    debug_assert_eq!(
        prepared.lines.iter().all(is_weighed),
        kind != Kind::Unweighed
    );
    TasteLandscape::new(prepared, targets, dimensions, bounds)
}

/// The lines that do not move.
pub(crate) fn rest(kind: Kind) -> Vec<Entry> {
    let water = |amount: Amount, celsius: f64| {
        line("water", "water", amount, celsius, Role::Water, Stage::Mixed)
    };
    let ice = |amount: Amount| line("ice", "ice", amount, -5.0, Role::Ice, Stage::Mixed);
    let topping = |amount: Amount| {
        let (role, stage) = (Role::Topping, Stage::Topping);
        line("top", "cooked-pearls", amount, 30.0, role, stage)
    };
    match kind {
        Kind::Hot => vec![water(Amount::Grams(130.0), 78.0)],
        Kind::Iced | Kind::Shaken | Kind::Strained => {
            vec![water(Amount::Grams(60.0), 60.0), ice(Amount::Grams(120.0))]
        }
        Kind::Filled => vec![water(Amount::FillTo(420.0), 78.0)],
        Kind::FilledIced => vec![ice(Amount::Grams(90.0)), water(Amount::FillTo(400.0), 22.0)],
        Kind::IceToRim => vec![water(Amount::Grams(60.0), 60.0), ice(Amount::FillToRim)],
        Kind::Topped => vec![
            water(Amount::Grams(130.0), 78.0),
            topping(Amount::Grams(50.0)),
        ],
        Kind::Unweighed => {
            let unweighed = MeasureId::new("ice-scoop").expect("an id");
            vec![
                water(Amount::Grams(130.0), 78.0),
                topping(Amount::Count(1.0, unweighed)),
            ]
        }
    }
}
