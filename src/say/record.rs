//! The record that the book keeps of itself: what was read beside what had been foretold.

use super::{Speaker, say};
use crate::book::{CupQuantity, DoubtClass, RescaledDoubt};
use crate::quantity::{Uncertain, name_as_shown};
use crate::record::{ClassRecord, FROM_READINGS, Scored, Source};

impl Speaker<'_> {
    /// What the doubts of a class are about.
    pub fn doubt_class(&self, class: DoubtClass) -> String {
        say!(self, "record-class", class: class.word())
    }

    /// What was read of a cup.
    pub fn cup_quantity(&self, what: CupQuantity) -> String {
        say!(self, "record-quantity", what: what.word())
    }

    /// "Serving temperature: 133 of 140 inside two ±."
    pub fn record_count(&self, record: &ClassRecord) -> String {
        say!(
            self,
            "record-count",
            class: self.doubt_class(record.class),
            inside: record.inside(),
            count: record.readings.len(),
        )
    }

    /// What a record says of the doubts of its class.
    pub fn record_verdict(&self, record: &ClassRecord) -> String {
        let times = |times: f64| self.in_unit(times, "", 2);
        say!(
            self,
            "record-verdict",
            verdict: record.verdict.word(),
            times: times(record.scale.times),
            low: times(record.scale.low),
            high: times(record.scale.high),
            accepted: times(record.accepted),
            inside: record.inside_rescaled(),
            count: record.readings.len(),
            wanted: FROM_READINGS.to_string(),
        )
    }

    /// What was accepted of a record, when and by whom.
    pub fn rescaled_doubt(&self, doubt: &RescaledDoubt) -> String {
        let (class, times) = (
            self.doubt_class(doubt.class),
            self.in_unit(doubt.times, "", 2),
        );
        let (day, by) = (name_as_shown(&doubt.date), name_as_shown(&doubt.by));
        let (inside, count) = (doubt.inside.to_string(), doubt.readings.to_string());
        if by.trim().is_empty() {
            return say!(
                self,
                "record-accepted",
                class: class,
                times: times,
                day: day,
                inside: inside,
                count: count,
            );
        }
        say!(
            self,
            "record-accepted-by",
            class: class,
            times: times,
            day: day,
            by: by,
            inside: inside,
            count: count,
        )
    }

    /// A reading beside what had been foretold of it.
    pub fn scored(&self, scored: &Scored) -> String {
        let (what, unit) = match &scored.source {
            Source::Cup {
                recipe,
                version,
                what,
                ..
            } => {
                let drink = self.drink(recipe, version.as_ref());
                let quantity = self.cup_quantity(*what);
                let named = say!(self, "record-of-cup", drink: drink, what: quantity);
                (named, what.unit())
            }
            Source::Measure {
                measure,
                ingredient,
            } => (self.measured(measure, ingredient.as_ref()), "g"),
            Source::Tasting(id) => (self.tasting(id), ""),
        };
        let inside = if scored.inside { "yes" } else { "no" };
        let day = name_as_shown(&scored.date);
        match scored.figures {
            None => say!(self, "record-tasting", day: day, what: what, inside: inside),
            Some((read, value, u)) => say!(
                self,
                "record-reading",
                day: day,
                what: what,
                read: self.rounded(read, Some(u), 2, unit),
                foretold: self.uncertain(Uncertain { value, u }, unit),
                inside: inside,
            ),
        }
    }
}
