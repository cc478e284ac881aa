//! Brewing tea.

use super::{Speaker, say};
use crate::balance::{BrewAmount, BrewError, DayMinute, Infusion};

impl Speaker<'_> {
    /// How leaf is brewed: "hot", "second infusion".
    pub fn infusion(&self, infusion: Infusion) -> &'static str {
        self.word(match infusion {
            Infusion::Hot => "infusion-hot",
            Infusion::Cold => "infusion-cold",
            Infusion::Second => "infusion-second",
            Infusion::Reference => "infusion-reference",
        })
    }

    /// Where the usual figures of an infusion are from.
    pub fn infusion_source(&self, infusion: Infusion) -> &'static str {
        self.word(match infusion {
            Infusion::Hot => "infusion-source-hot",
            Infusion::Cold => "infusion-source-cold",
            Infusion::Second => "infusion-source-second",
            Infusion::Reference => "infusion-source-reference",
        })
    }

    /// Why a brew is not possible, as a clause without a full stop.
    pub fn brew_error(&self, error: &BrewError) -> String {
        match error {
            BrewError::LeafTakesAll {
                leaf,
                retained,
                water,
            } => say!(
                self,
                "brew-leaf-takes-all",
                leaf: self.in_unit(*leaf, "g", 0),
                retained: self.in_unit(*retained, "g", 0),
                water: self.in_unit(*water, "g", 0)
            ),
            BrewError::TooStrong { wanted, most } => say!(
                self,
                "brew-too-strong",
                wanted: self.in_unit(*wanted, "g", 2),
                most: self.in_unit(*most, "g", 2)
            ),
            BrewError::NotAnAmount { what, found } => {
                let what = match what {
                    BrewAmount::Water => "water",
                    BrewAmount::Leaf => "leaf",
                    BrewAmount::Tea => "tea",
                    BrewAmount::Strength => "strength",
                    BrewAmount::Extraction => "extraction",
                    BrewAmount::Pot => "pot",
                };
                say!(self, "brew-not-an-amount", what: what, found: self.number(*found, 1))
            }
        }
    }

    /// "23:55", "03:55 the next day".
    pub fn day_minute(&self, at: DayMinute) -> String {
        let time = format!("{:02}:{:02}", at.minute / 60, at.minute % 60);
        match at.days_later {
            0 => time,
            1 => say!(self, "time-next-day", time: time),
            days => say!(self, "time-days-later", days: days.unsigned_abs(), time: time),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_of_later_days_and_brews_that_are_not_possible_are_told_whole() {
        let speaker = Speaker::without_book();
        let at = |days_later| {
            speaker.day_minute(DayMinute {
                days_later,
                minute: 235,
            })
        };
        assert_eq!(
            [at(0), at(1), at(3)],
            ["03:55", "03:55 the next day", "03:55 3 days later"]
        );
        let error = BrewError::LeafTakesAll {
            leaf: 30.0,
            retained: 120.0,
            water: 100.0,
        };
        assert_eq!(
            speaker.brew_error(&error),
            "30\u{a0}g of leaf keeps back 120\u{a0}g of the 100\u{a0}g of water; use more water or less leaf"
        );
        let error = BrewError::NotAnAmount {
            what: BrewAmount::Pot,
            found: -2.0,
        };
        assert_eq!(
            speaker.brew_error(&error),
            "the pot is −2.0; enter an amount above 0"
        );
    }
}
