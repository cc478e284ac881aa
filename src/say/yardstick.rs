//! Published guidance, and what a drink comes to by it.

use super::{Speaker, say};
use crate::balance::{Band, DayLimit, Grade, LARGE_PORTION, Level, Outcome, YardstickPart};
use crate::book::Yardstick;

impl Speaker<'_> {
    /// The name of a yardstick, in small letters.
    pub fn yardstick(&self, yardstick: Yardstick) -> &'static str {
        self.word(match yardstick {
            Yardstick::SingaporeGrade => "yardstick-singapore-name",
            Yardstick::UkFrontOfPack => "yardstick-uk-bands-name",
            Yardstick::WhoFreeSugars => "yardstick-who-name",
            Yardstick::UkFreeSugars => "yardstick-uk-sugars-name",
        })
    }

    /// Who publishes it, and when.
    pub fn yardstick_publisher(&self, yardstick: Yardstick) -> &'static str {
        self.word(match yardstick {
            Yardstick::SingaporeGrade => "yardstick-singapore-publisher",
            Yardstick::UkFrontOfPack => "yardstick-uk-bands-publisher",
            Yardstick::WhoFreeSugars => "yardstick-who-publisher",
            Yardstick::UkFreeSugars => "yardstick-uk-sugars-publisher",
        })
    }

    /// What it counts, and per what, as a clause.
    pub fn yardstick_definition(&self, yardstick: Yardstick) -> String {
        let message = match yardstick {
            Yardstick::UkFrontOfPack => {
                let portion = self.volume(LARGE_PORTION, 0);
                return say!(self, "yardstick-uk-bands-definition", portion: portion);
            }
            Yardstick::SingaporeGrade => "yardstick-singapore-definition",
            Yardstick::WhoFreeSugars => "yardstick-who-definition",
            Yardstick::UkFreeSugars => "yardstick-uk-sugars-definition",
        };
        self.word(message).to_owned()
    }

    /// What a line of a yardstick looks at: "sugar without lactose".
    pub fn yardstick_part(&self, part: YardstickPart) -> String {
        let message = match part {
            YardstickPart::Grade {
                has_sweetener: false,
            } => "yardstick-line-grade",
            YardstickPart::Grade {
                has_sweetener: true,
            } => "yardstick-line-grade-with-sweetener",
            YardstickPart::SugarWithoutLactose => "yardstick-line-sugar-without-lactose",
            YardstickPart::ToppingSugar => "yardstick-line-topping-sugar",
            YardstickPart::Fat => "yardstick-line-fat",
            YardstickPart::Saturates => "yardstick-line-saturates",
            YardstickPart::Sugars => "yardstick-line-sugars",
            YardstickPart::Salt => "yardstick-line-salt",
            YardstickPart::Day(limit) => return self.day_limit(limit),
        };
        self.word(message).to_owned()
    }

    fn day_limit(&self, limit: DayLimit) -> String {
        let grams = self.in_unit(limit.grams(), "g", 0);
        match limit {
            DayLimit::World => say!(self, "yardstick-line-who", grams: grams),
            DayLimit::WorldConditional => {
                say!(self, "yardstick-line-who-conditional", grams: grams)
            }
            DayLimit::UkAdults => say!(self, "yardstick-line-uk-adults", grams: grams),
            DayLimit::UkSevenToTen => say!(self, "yardstick-line-uk-seven-to-ten", grams: grams),
            DayLimit::UkFourToSix => say!(self, "yardstick-line-uk-four-to-six", grams: grams),
        }
    }

    /// What a drink comes to: "B", "at least B", "not known".
    pub fn yardstick_outcome(&self, outcome: Outcome) -> String {
        match outcome {
            Outcome::Is(level) => self.level(level),
            Outcome::AtLeast(level) => self.at_least(self.level(level), false),
            Outcome::NotKnown => self.word("yardstick-not-known").to_owned(),
        }
    }

    fn level(&self, level: Level) -> String {
        match level {
            // The letters of the scheme, in every language.
            Level::Grade(Grade::A) => "A".to_owned(),
            Level::Grade(Grade::B) => "B".to_owned(),
            Level::Grade(Grade::C) => "C".to_owned(),
            Level::Grade(Grade::D) => "D".to_owned(),
            Level::Band(Band::Low) => self.word("yardstick-band-low").to_owned(),
            Level::Band(Band::Medium) => self.word("yardstick-band-medium").to_owned(),
            Level::Band(Band::High) => self.word("yardstick-band-high").to_owned(),
            Level::Grams(grams) => self.in_unit(grams, "g", 1),
            Level::Percent(percent) => self.in_unit(percent, "%", 0),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_known_part_is_at_least_that() {
        let speaker = Speaker::without_book();
        for (outcome, expected) in [
            (Outcome::Is(Level::Grade(Grade::B)), "B"),
            (Outcome::AtLeast(Level::Band(Band::High)), "at least high"),
            (Outcome::AtLeast(Level::Percent(41.6)), "at least 42\u{a0}%"),
            (Outcome::Is(Level::Grams(3.25)), "3.2\u{a0}g"),
            (Outcome::NotKnown, "not known"),
        ] {
            assert_eq!(speaker.yardstick_outcome(outcome), expected);
        }
        assert_eq!(
            speaker.yardstick_part(YardstickPart::Day(DayLimit::UkSevenToTen)),
            "of 24\u{a0}g per day, 7 to 10 years"
        );
        for yardstick in Yardstick::ALL {
            assert!(!speaker.yardstick(yardstick).is_empty());
            assert!(speaker.yardstick_definition(yardstick).len() > 50);
            assert!(!speaker.yardstick_publisher(yardstick).is_empty());
        }
    }
}
