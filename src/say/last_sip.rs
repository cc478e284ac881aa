//! A drink from the counter to the last sip, in sentences.

use super::{Speaker, say};
use crate::balance::{LastSip, LastSipRemark, OtherWay};

impl Speaker<'_> {
    /// A fact about a drink from the counter to the last sip.
    pub fn last_sip_remark(&self, remark: &LastSipRemark) -> String {
        match remark {
            LastSipRemark::Level([from, to]) if to - from < 1.0 => {
                say!(self, "last-sip-level-once", minutes: self.minutes(*from))
            }
            LastSipRemark::Level([from, to]) => {
                let (from, to) = (self.minutes(*from), self.minutes(*to));
                say!(self, "last-sip-level", from: from, to: to)
            }
            LastSipRemark::NeverLevel => self.word("last-sip-never").to_owned(),
            LastSipRemark::Best { minutes, distance } => {
                let (minutes, steps) = (self.minutes(*minutes), self.steps(*distance));
                say!(self, "last-sip-best", minutes: minutes, steps: steps)
            }
            LastSipRemark::NothingKnown => self.word("last-sip-nothing-known").to_owned(),
            LastSipRemark::End(sip) => {
                let minutes = self.minutes(sip.minutes);
                let temperature = self.uncertain(sip.temperature, "°C");
                match sip.sweetness {
                    Some(sweetness) => say!(
                        self,
                        "last-sip-end-sweetness",
                        minutes: minutes,
                        temperature: temperature,
                        sweetness: self.uncertain(sweetness, "g/100 ml"),
                    ),
                    None => {
                        say!(self, "last-sip-end", minutes: minutes, temperature: temperature)
                    }
                }
            }
            LastSipRemark::Arrives { sip, best_minutes } => {
                let level = match sip.is_level() {
                    Some(true) => "within",
                    Some(false) => "off",
                    None => "unknown",
                };
                let arrives = say!(
                    self,
                    "last-sip-arrives",
                    minutes: self.minutes(sip.minutes),
                    temperature: self.uncertain(sip.temperature, "°C"),
                    level: level,
                );
                let best = if *best_minutes > sip.minutes {
                    say!(self, "last-sip-arrives-before-best", best: self.minutes(*best_minutes))
                } else {
                    self.word("last-sip-arrives-at-best").to_owned()
                };
                format!("{arrives} {best}")
            }
            LastSipRemark::Melts(rate) => {
                let basis = if rate.is_stated { "stated" } else { "assumed" };
                let rate = self.uncertain(rate.grams_per_minute, "g/min");
                say!(self, "last-sip-melts", rate: rate, basis: basis)
            }
        }
    }

    /// What another way to hand a drink over changes; `None` where nothing is known.
    pub fn last_sip_otherwise(&self, way: &OtherWay, course: &LastSip) -> Option<String> {
        let way = self.other_way(way);
        let best = course.best()?;
        let minutes = self.minutes(best.minutes);
        let Some([from, to]) = course.level_between() else {
            let steps = self.steps(best.distance?);
            return Some(say!(
                self,
                "last-sip-other-never",
                way: way,
                minutes: minutes,
                steps: steps
            ));
        };
        let (from, to) = (self.minutes(from), self.minutes(to));
        Some(say!(
            self,
            "last-sip-other-level",
            way: way,
            from: from,
            to: to,
            minutes: minutes
        ))
    }

    /// Another way to hand a drink over.
    fn other_way(&self, way: &OtherWay) -> String {
        match way {
            OtherWay::Closure(kind) => say!(self, "last-sip-way-closure", closure: kind.word()),
            OtherWay::Ice(percent) => {
                say!(self, "last-sip-way-ice", percent: self.in_unit(*percent, "%", 0))
            }
        }
    }

    fn minutes(&self, minutes: f64) -> String {
        self.in_unit(minutes, "min", 0)
    }
}
