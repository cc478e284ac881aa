//! Published yardsticks, and what a drink comes to by them.

use serde_json::{Value, json};

use super::Fact;
use crate::balance::{Band, DayLimit, Grade, Level, Outcome, YardstickLine, YardstickPart};
use crate::book::Yardstick;

/// A yardstick.
pub(in crate::command_line) fn yardstick(yardstick: Yardstick) -> Fact {
    Fact::alone(match yardstick {
        Yardstick::SingaporeGrade => "singapore-grade",
        Yardstick::UkFrontOfPack => "uk-front-of-pack",
        Yardstick::WhoFreeSugars => "who-free-sugars",
        Yardstick::UkFreeSugars => "uk-free-sugars",
    })
}

/// A line of a yardstick: what it looks at, and what the drink comes to.
pub(in crate::command_line) fn yardstick_line(line: &YardstickLine) -> Fact {
    let (outcome, level) = match line.outcome {
        Outcome::Is(level) => ("is", Some(level)),
        Outcome::AtLeast(level) => ("at-least", Some(level)),
        Outcome::NotKnown => ("not-known", None),
    };
    let mut arguments = json!({ "outcome": outcome, "level": level.map(self::level) });
    if let Value::Object(map) = &mut arguments {
        match line.part {
            YardstickPart::Grade { has_sweetener } => {
                map.insert("has_sweetener".to_owned(), json!(has_sweetener));
            }
            YardstickPart::Day(limit) => {
                map.insert("limit".to_owned(), json!(day_limit(limit)));
                map.insert("limit_g".to_owned(), json!(limit.grams()));
            }
            _ => {}
        }
    }
    Fact::new(part(line.part), arguments)
}

fn level(level: Level) -> Value {
    match level {
        Level::Grade(grade) => json!({ "grade": self::grade(grade) }),
        Level::Band(band) => json!({ "band": self::band(band) }),
        Level::Grams(grams) => json!({ "grams": grams }),
        Level::Percent(percent) => json!({ "percent": percent }),
    }
}

fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::A => "A",
        Grade::B => "B",
        Grade::C => "C",
        Grade::D => "D",
    }
}

/// A band.
fn band(band: Band) -> &'static str {
    match band {
        Band::Low => "low",
        Band::Medium => "medium",
        Band::High => "high",
    }
}

/// Whose advice.
fn day_limit(limit: DayLimit) -> &'static str {
    match limit {
        DayLimit::World => "world",
        DayLimit::WorldConditional => "world-conditional",
        DayLimit::UkAdults => "uk-adults",
        DayLimit::UkSevenToTen => "uk-seven-to-ten",
        DayLimit::UkFourToSix => "uk-four-to-six",
    }
}

/// What a line looks at.
fn part(part: YardstickPart) -> &'static str {
    match part {
        YardstickPart::Grade { .. } => "grade",
        YardstickPart::SugarWithoutLactose => "sugar-without-lactose",
        YardstickPart::ToppingSugar => "topping-sugar",
        YardstickPart::Fat => "fat",
        YardstickPart::Saturates => "saturates",
        YardstickPart::Sugars => "sugars",
        YardstickPart::Salt => "salt",
        YardstickPart::Day(..) => "day",
    }
}
