//! A hundred cups of a drink in sentences.

use super::{Speaker, say};
use crate::balance::{Balance, Taste};
use crate::book::Axis;
use crate::cups::{Cups, CupsRemark, DrawnCause, HeldTo, Helps, OfAHundred, Remedy, When};

impl Speaker<'_> {
    /// A fact about the cups of a drink.
    pub fn cups_remark(&self, cups: &Cups, remark: &CupsRemark) -> String {
        match remark {
            CupsRemark::Share { within, off } => self.cups_share(cups, *within, off),
            CupsRemark::NothingKnown => self.word("cups-nothing-known").to_owned(),
            CupsRemark::Drawn => self.cups_drawn(cups),
            CupsRemark::RecipeOff(off) => {
                let changes = off.iter();
                let changes: Vec<String> = changes
                    .map(|(axis, steps)| self.axis_change(axis, *steps))
                    .collect();
                say!(self, "cups-recipe-off", changes: self.and(&changes))
            }
            CupsRemark::NotKnown(axes) => {
                let axes: Vec<String> = axes.iter().map(|axis| self.axis(axis)).collect();
                say!(self, "cups-not-known", axes: self.and(&axes))
            }
            CupsRemark::Helps(helps) => self.cups_help(&cups.balance, helps),
            CupsRemark::NothingHelps => self.word("cups-helps-nothing").to_owned(),
            CupsRemark::Varies(when, causes) => self.varies(&cups.balance, *when, causes),
            CupsRemark::Held => self.word("cups-held").to_owned(),
        }
    }

    /// What the cups are held to: "the standard".
    pub fn cups_held_to(&self, held_to: &HeldTo) -> &'static str {
        self.word(match held_to {
            HeldTo::Standard(_) => "cups-the-standard",
            HeldTo::Itself => "cups-the-recipe",
        })
    }

    /// "93", "more than 99", "all": how many of a hundred cups.
    pub fn of_a_hundred(&self, of: OfAHundred) -> String {
        let word = match of {
            OfAHundred::About(cups) => return self.number(f64::from(cups), 0),
            OfAHundred::All => "cups-share-all",
            OfAHundred::Over99 => "cups-share-nearly-all",
            OfAHundred::Under1 => "cups-share-hardly-any",
            OfAHundred::None => "cups-share-none",
        };
        self.word(word).to_owned()
    }

    fn cups_share(
        &self,
        cups: &Cups,
        within: OfAHundred,
        off: &[(OfAHundred, Axis, Taste)],
    ) -> String {
        let held = self.cups_held_to(&cups.held_to);
        let off: Vec<String> = off
            .iter()
            .map(|(of, axis, taste)| self.cups_off(*of, axis, *taste))
            .collect();
        let list = self.and(&off);
        match (within, off.is_empty()) {
            (OfAHundred::All, _) => say!(self, "cups-all", held: held),
            (OfAHundred::Over99, _) => say!(self, "cups-nearly-all", held: held),
            (OfAHundred::About(count), true) => say!(self, "cups-some", count: count, held: held),
            (OfAHundred::About(count), false) => {
                say!(self, "cups-some-off", count: count, held: held, off: list)
            }
            (OfAHundred::Under1, true) => say!(self, "cups-hardly-any", held: held),
            (OfAHundred::Under1, false) => {
                say!(self, "cups-hardly-any-off", held: held, off: list)
            }
            (OfAHundred::None, true) => say!(self, "cups-none", held: held),
            (OfAHundred::None, false) => say!(self, "cups-none-off", held: held, off: list),
        }
    }

    /// "5 are sweeter", "3 have stronger tea".
    fn cups_off(&self, of: OfAHundred, axis: &Axis, taste: Taste) -> String {
        let change = self.taste(taste, axis);
        let is_held = matches!(axis, Axis::TeaStrength | Axis::Flavour(_));
        match (of, is_held) {
            (OfAHundred::About(count), false) => {
                say!(self, "cups-off", count: count, change: change)
            }
            (OfAHundred::About(count), true) => {
                say!(self, "cups-off-holding", count: count, change: change)
            }
            (OfAHundred::Over99, false) => say!(self, "cups-off-nearly-all", change: change),
            (OfAHundred::Over99, true) => say!(self, "cups-off-holding-nearly-all", change: change),
            (OfAHundred::All, false) => say!(self, "cups-off-all", change: change),
            (OfAHundred::All, true) => say!(self, "cups-off-holding-all", change: change),
            // So few are not told.
            (OfAHundred::Under1 | OfAHundred::None, _) => change,
        }
    }

    fn cups_drawn(&self, cups: &Cups) -> String {
        let question = cups.question;
        let [low, high] = cups.shifts.unwrap_or_default();
        let share = cups.within.map_or_else(String::new, |share| {
            self.figure(100.0 * share.value, Some(100.0 * share.u), "")
        });
        say!(
            self,
            "cups-drawn",
            cups: self.number((question.shifts * question.per_shift) as f64, 0),
            shifts: self.number(question.shifts as f64, 0),
            share: share,
            low: self.number(100.0 * low, 0),
            high: self.number(100.0 * high, 0),
        )
    }

    fn cups_help(&self, balance: &Balance, helps: &Helps) -> String {
        let share = self.of_a_hundred(OfAHundred::of(helps.share));
        let of_line = |line| balance.resolved.line(line);
        match &helps.remedy {
            Remedy::BringLevel => say!(self, "cups-helps-level", share: share),
            Remedy::Weigh(line, grams) => say!(
                self,
                "cups-helps-weigh",
                grams: self.in_unit(*grams, "g", usize::from(*grams < 100.0)),
                ingredient: self.line(balance, line),
                amount: of_line(line).map_or_else(String::new, |line| self.amount(&line.amount)),
                share: share,
            ),
            Remedy::SmallerTwice(line, measure) => say!(
                self,
                "cups-helps-smaller",
                ingredient: self.line(balance, line),
                measure: self.measure(measure),
                share: share,
            ),
            Remedy::Recalibrate(measure) => {
                say!(self, "cups-helps-recalibrate", measure: self.measure(measure), share: share)
            }
            Remedy::Thermometer(cause, limits) => say!(
                self,
                "cups-helps-thermometer",
                what: self.cause(balance, cause).what,
                limits: self.kelvin(*limits, 1),
                share: share,
            ),
        }
    }

    fn varies(&self, balance: &Balance, when: When, causes: &[DrawnCause]) -> String {
        let causes = causes.iter();
        let causes: Vec<String> = causes
            .map(|drawn| self.cause(balance, &drawn.cause).what)
            .collect();
        let causes = self.and(&causes);
        if when == When::EachCup {
            say!(self, "cups-each-cup", causes: causes)
        } else {
            say!(self, "cups-each-shift", causes: causes)
        }
    }
}
