//! Published yardsticks that a shop may hold its drinks against, each by its own definition.
//!
//! They are guidance and no claim of compliance. When a figure that a yardstick needs is missing, its line says what the known
//! part already amounts to ("at least B") or that it is not known; it never takes the missing part for nothing.

use super::balance::Balance;
use super::parts::parts;
use crate::balance::measurand::Measurand;
use crate::balance::mix::{Component, HIGH_POTENCY_SLOTS, Mix, high_potency_slot};
use crate::balance::statement::names_sweetener;
use crate::book::{Book, IngredientId, Yardstick};

/// A concentration that is a hair above a line by the arithmetic of a filled volume is on the line, g/100 ml.
const ON_THE_LINE: f64 = 1e-6;

/// Front-of-pack criteria per portion hold for portions above this, ml.
pub const LARGE_PORTION: f64 = 150.0;

/// A grade of the Singapore scheme, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Least sugar and saturates, and no sweetener.
    A,
    /// Little.
    B,
    /// More.
    C,
    /// Most.
    D,
}

impl Grade {
    const ALL: [Self; 4] = [Self::A, Self::B, Self::C, Self::D];
}

/// A band of the front-of-pack guide.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// Green.
    Low,
    /// Amber.
    Medium,
    /// Red.
    High,
}

impl Band {
    const ALL: [Self; 3] = [Self::Low, Self::Medium, Self::High];
}

/// What a drink reaches on a line of a yardstick.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Level {
    /// A grade.
    Grade(Grade),
    /// A band.
    Band(Band),
    /// A mass, g.
    Grams(f64),
    /// A part of what is advised for a day, percent.
    Percent(f64),
}

/// What a line of a yardstick comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// This.
    Is(Level),
    /// The known part amounts to this already.
    AtLeast(Level),
    /// Nothing can be told.
    NotKnown,
}

/// What a line of a yardstick looks at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YardstickPart {
    /// The grade of the drink.
    Grade {
        /// Whether a sweetener rules the best grade out.
        has_sweetener: bool,
    },
    /// Sugars less lactose.
    SugarWithoutLactose,
    /// Sugars of the toppings.
    ToppingSugar,
    /// Fat.
    Fat,
    /// Saturates.
    Saturates,
    /// Sugars.
    Sugars,
    /// Salt.
    Salt,
    /// Free sugars, as a part of what is advised for a day.
    Day(DayLimit),
}

/// Free sugars that are advised for a day at most.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayLimit {
    /// World Health Organization, strong recommendation.
    World,
    /// World Health Organization, conditional recommendation.
    WorldConditional,
    /// United Kingdom, adults.
    UkAdults,
    /// United Kingdom, 7 to 10 years.
    UkSevenToTen,
    /// United Kingdom, 4 to 6 years.
    UkFourToSix,
}

impl DayLimit {
    const WORLD: [Self; 2] = [Self::World, Self::WorldConditional];
    const UK: [Self; 3] = [Self::UkAdults, Self::UkSevenToTen, Self::UkFourToSix];

    /// Free sugars, g a day: 10 % and 5 % of 2000 kcal (World Health Organization 2015); Scientific Advisory Committee on
    /// Nutrition 2015 (value from memory).
    pub const fn grams(self) -> f64 {
        match self {
            Self::World => 50.0,
            Self::WorldConditional => 25.0,
            Self::UkAdults => 30.0,
            Self::UkSevenToTen => 24.0,
            Self::UkFourToSix => 19.0,
        }
    }
}

/// One line of a yardstick.
#[derive(Clone, Debug, PartialEq)]
pub struct YardstickLine {
    /// What is looked at.
    pub part: YardstickPart,
    /// Its figure, the known part when something is missing.
    pub value: Option<f64>,
    /// The unit of the figure.
    pub unit: &'static str,
    /// What it comes to.
    pub outcome: Outcome,
    /// Ingredients that do not state what it needs.
    pub missing: Vec<IngredientId>,
}

/// A drink held against a yardstick.
#[derive(Clone, Debug, PartialEq)]
pub struct YardstickReading {
    /// Which one.
    pub yardstick: Yardstick,
    /// Its lines; the first sums up the others where the scheme does.
    pub lines: Vec<YardstickLine>,
}

/// The yardsticks that the shop has turned on.
pub fn yardsticks(book: &Book, balance: &Balance) -> Vec<YardstickReading> {
    book.settings
        .yardsticks
        .iter()
        .map(|yardstick| yardstick_reading(*yardstick, book, balance))
        .collect()
}

/// One yardstick, turned on or not.
pub fn yardstick_reading(yardstick: Yardstick, book: &Book, balance: &Balance) -> YardstickReading {
    let lines = match yardstick {
        Yardstick::SingaporeGrade => singapore(book, balance),
        Yardstick::UkFrontOfPack => front_of_pack(book, balance),
        Yardstick::WhoFreeSugars => free_sugars(balance, &DayLimit::WORLD),
        Yardstick::UkFreeSugars => free_sugars(balance, &DayLimit::UK),
    };
    YardstickReading { yardstick, lines }
}

/// A figure of which the known part and, when nothing is missing, the whole is known.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Bounds {
    low: f64,
    high: Option<f64>,
}

impl Bounds {
    fn of(mix: &Mix, component: Component, factor: f64) -> Self {
        let value = mix.get(component) * factor;
        Self {
            low: value,
            high: mix.knows(component).then_some(value),
        }
    }

    /// The step of a ladder that both ends reach: exact, or only the lower one.
    fn step(self, on_ladder: impl Fn(f64) -> usize) -> (usize, bool) {
        let low = on_ladder(self.low);
        (low, self.high.is_some_and(|high| on_ladder(high) == low))
    }
}

/// How many lines a value is above.
fn above(lines: &[f64], value: f64) -> usize {
    lines
        .iter()
        .filter(|line| value > **line + ON_THE_LINE)
        .count()
}

fn outcome(level: Level, is_exact: bool, is_lowest: bool) -> Outcome {
    match (is_exact, is_lowest) {
        (true, _) => Outcome::Is(level),
        // "At least the lowest" says nothing.
        (false, true) => Outcome::NotKnown,
        (false, false) => Outcome::AtLeast(level),
    }
}

fn missing(balance: &Balance, components: &[Component]) -> Vec<IngredientId> {
    let mut missing: Vec<IngredientId> = Vec::new();
    for unstated in balance
        .unstated
        .iter()
        .filter(|unstated| components.contains(&unstated.component))
    {
        if !missing.contains(&unstated.ingredient) {
            missing.push(unstated.ingredient.clone());
        }
    }
    missing
}

/// Singapore Food Regulations, Sixteenth Schedule (S 451/2023, in force 30 December 2023): upper lines of A, B and C, g/100 ml.
const GRADE_SUGAR: [f64; 3] = [1.0, 5.0, 10.0];
const GRADE_SATURATES: [f64; 3] = [0.7, 1.2, 2.8];

fn singapore(book: &Book, balance: &Balance) -> Vec<YardstickLine> {
    let parts = parts(book, &balance.resolved);
    let drink = &parts.poured.drink;
    let volume = parts.volume();
    let per_100_ml = 100.0 / volume;
    let sweetened = has_sweetener(drink) || names_sweetener(book, &balance.resolved);
    let sugar = sugar_without_lactose(drink, per_100_ml);
    let saturates = Bounds::of(drink, Component::Saturates, per_100_ml);
    let (by_sugar, sugar_exact) = sugar.step(|value| above(&GRADE_SUGAR, value));
    let (by_saturates, saturates_exact) = saturates.step(|value| above(&GRADE_SATURATES, value));
    let grade = by_sugar.max(by_saturates).max(usize::from(sweetened));
    let is_exact = (sugar_exact && saturates_exact) || grade == Grade::ALL.len() - 1;
    let gap = |components: &[Component]| missing(balance, components);
    let empty = volume <= 0.0;
    let line = |part, bounds: Bounds, step: usize, exact: bool, missing| YardstickLine {
        part,
        value: (!empty).then_some(bounds.low),
        unit: "g/100 ml",
        outcome: if empty {
            Outcome::NotKnown
        } else {
            outcome(Level::Grade(Grade::ALL[step]), exact, step == 0)
        },
        missing,
    };
    let topping_sugar = Bounds::of(&parts.toppings, Component::Sugars, 1.0);
    let grade_gaps = [Component::Sugars, Component::Lactose, Component::Saturates];
    vec![
        YardstickLine {
            part: YardstickPart::Grade {
                has_sweetener: sweetened,
            },
            value: None,
            unit: "",
            outcome: if empty {
                Outcome::NotKnown
            } else {
                outcome(Level::Grade(Grade::ALL[grade]), is_exact, grade == 0)
            },
            missing: gap(&grade_gaps),
        },
        line(
            YardstickPart::SugarWithoutLactose,
            sugar,
            by_sugar,
            sugar_exact,
            gap(&SUGAR_GAPS),
        ),
        line(
            YardstickPart::Saturates,
            saturates,
            by_saturates,
            saturates_exact,
            gap(&[Component::Saturates]),
        ),
        YardstickLine {
            part: YardstickPart::ToppingSugar,
            value: Some(topping_sugar.low),
            unit: "g",
            outcome: grams_outcome(topping_sugar),
            missing: if topping_sugar.high.is_some() {
                Vec::new()
            } else {
                gap(&[Component::Sugars])
            },
        },
    ]
}

/// What the sugar of the grade can be missing.
const SUGAR_GAPS: [Component; 2] = [Component::Sugars, Component::Lactose];

fn grams_outcome(bounds: Bounds) -> Outcome {
    let level = Level::Grams(bounds.low);
    match bounds.high {
        Some(_) => Outcome::Is(level),
        None if bounds.low > 0.0 => Outcome::AtLeast(level),
        None => Outcome::NotKnown,
    }
}

fn has_sweetener(drink: &Mix) -> bool {
    let high_potency = (0..HIGH_POTENCY_SLOTS).any(|slot| drink.of[high_potency_slot(slot)] > 0.0);
    high_potency || drink.get(Component::Polyols) > 0.0
}

/// Total sugars less lactose. Where the kinds are not known, the named kinds apart from lactose are the least, and what is not
/// known to be lactose is the most.
fn sugar_without_lactose(drink: &Mix, factor: f64) -> Bounds {
    let named: f64 = Component::SUGAR_KINDS
        .into_iter()
        .filter(|kind| *kind != Component::Lactose)
        .map(|kind| drink.get(kind))
        .sum();
    let rest = (drink.get(Component::Sugars) - drink.get(Component::Lactose)).max(0.0);
    let low = if drink.knows(Component::Lactose) {
        rest
    } else {
        named.min(rest)
    };
    Bounds {
        low: low * factor,
        high: drink.knows(Component::Sugars).then_some(rest * factor),
    }
}

/// One nutrient of the front-of-pack guide, for drinks: lines per 100 ml, and per portion above 150 ml.
struct Criterion {
    part: YardstickPart,
    component: Component,
    low_to: f64,
    high_from: f64,
    high_portion: f64,
}

/// Department of Health and Food Standards Agency, Guide to creating a front of pack nutrition label, 2013, updated 2016,
/// table for drinks; the lines of sugars were confirmed, the others are half those for food (value from memory).
const CRITERIA: [Criterion; 4] = [
    Criterion {
        part: YardstickPart::Fat,
        component: Component::Fat,
        low_to: 1.5,
        high_from: 8.75,
        high_portion: 10.5,
    },
    Criterion {
        part: YardstickPart::Saturates,
        component: Component::Saturates,
        low_to: 0.75,
        high_from: 2.5,
        high_portion: 3.0,
    },
    Criterion {
        part: YardstickPart::Sugars,
        component: Component::Sugars,
        low_to: 2.5,
        high_from: 11.25,
        high_portion: 13.5,
    },
    Criterion {
        part: YardstickPart::Salt,
        component: Component::Salt,
        low_to: 0.3,
        high_from: 0.75,
        high_portion: 0.9,
    },
];

impl Criterion {
    fn band(&self, per_100_ml: f64, portion: Option<f64>) -> usize {
        if portion.is_some_and(|grams| grams > self.high_portion + ON_THE_LINE) {
            return 2;
        }
        above(&[self.low_to, self.high_from], per_100_ml)
    }
}

fn front_of_pack(book: &Book, balance: &Balance) -> Vec<YardstickLine> {
    let parts = parts(book, &balance.resolved);
    let drink = &parts.poured.drink;
    let volume = parts.volume();
    let lines = CRITERIA.iter().map(|criterion| {
        let bounds = Bounds::of(drink, criterion.component, 100.0 / volume);
        let band = |value: f64| {
            let portion = (volume > LARGE_PORTION).then_some(value * volume / 100.0);
            criterion.band(value, portion)
        };
        let (step, exact) = bounds.step(band);
        let is_exact = exact || step == Band::ALL.len() - 1;
        YardstickLine {
            part: criterion.part,
            value: (volume > 0.0).then_some(bounds.low),
            unit: "g/100 ml",
            outcome: if volume > 0.0 {
                outcome(Level::Band(Band::ALL[step]), is_exact, step == 0)
            } else {
                Outcome::NotKnown
            },
            missing: missing(balance, &[criterion.component]),
        }
    });
    lines.collect()
}

fn free_sugars(balance: &Balance, limits: &[DayLimit]) -> Vec<YardstickLine> {
    let reported = balance.reported(Measurand::FreeSugars);
    let is_complete = balance.figures.missing(Measurand::FreeSugars) == 0;
    limits
        .iter()
        .map(|limit| {
            let share = reported
                .value
                .map(|grams| Level::Percent(grams / limit.grams() * 100.0));
            YardstickLine {
                part: YardstickPart::Day(*limit),
                value: reported.value,
                unit: "g",
                outcome: match share {
                    Some(share) if is_complete => Outcome::Is(share),
                    Some(share) if reported.value.is_some_and(|grams| grams > 0.0) => {
                        Outcome::AtLeast(share)
                    }
                    _ => Outcome::NotKnown,
                },
                missing: reported.missing.clone(),
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_on_the_line_belongs_below_it() {
        assert_eq!(
            [0.0, 1.0, 1.01, 5.0, 5.01, 10.0, 10.01].map(|value| above(&GRADE_SUGAR, value)),
            [0, 0, 1, 1, 2, 2, 3]
        );
        assert_eq!(
            [0.7, 0.71, 1.2, 1.21, 2.8, 2.81].map(|value| above(&GRADE_SATURATES, value)),
            [0, 1, 1, 2, 2, 3]
        );
    }

    #[test]
    fn a_large_portion_is_high_by_its_grams_alone() {
        let sugars = &CRITERIA[2];
        assert_eq!(sugars.band(5.0, Some(13.5)), 1);
        assert_eq!(sugars.band(5.0, Some(13.6)), 2);
        assert_eq!(
            [2.5, 2.51, 11.25, 11.26].map(|value| sugars.band(value, None)),
            [0, 1, 1, 2]
        );
    }

    #[test]
    fn lactose_that_is_not_known_leaves_a_range() {
        let mut milk = Mix::EMPTY;
        milk.set(Component::Sugars, 10.0);
        milk.set(Component::Sucrose, 4.0);
        milk.mark_unknown(Component::Lactose);
        assert_eq!(
            sugar_without_lactose(&milk, 1.0),
            Bounds {
                low: 4.0,
                high: Some(10.0)
            }
        );
        milk.mark_unknown(Component::Sugars);
        assert_eq!(sugar_without_lactose(&milk, 1.0).high, None);
    }

    #[test]
    fn at_least_the_lowest_band_says_nothing() {
        let [a, b] = [Grade::A, Grade::B].map(Level::Grade);
        assert_eq!(outcome(a, false, true), Outcome::NotKnown);
        assert_eq!(outcome(b, false, false), Outcome::AtLeast(b));
        assert_eq!(outcome(b, true, false), Outcome::Is(b));
    }
}
