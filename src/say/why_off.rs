//! Why one cup is off, in sentences.

use super::{Speaker, say};
use crate::balance::Balance;
use crate::book::{Amount, LineId, MeasureKind};
use crate::cups::{Fault, LikelyFault, Measured, OffBy, WhyOff, WhyOffRemark};

/// A reading counts as off from so many standard uncertainties on: a chance of about one in twenty that it is not.
const COVERAGE: f64 = 2.0;

impl Speaker<'_> {
    /// A fact about a cup that is off.
    pub fn why_off_remark(&self, why: &WhyOff, remark: &WhyOffRemark) -> String {
        let balance = &why.balance;
        match remark {
            WhyOffRemark::Reading(reading) => self.off_by(reading),
            WhyOffRemark::NothingToCompare => self.word("why-off-nothing-to-compare").to_owned(),
            WhyOffRemark::Likely(likely) => say!(
                self,
                "why-off-likely",
                cause: self.fault(balance, likely),
                chance: self.chance(likely.probability)
            ),
            WhyOffRemark::Others(others) => {
                say!(self, "why-off-others", causes: self.faults(balance, others))
            }
            WhyOffRemark::CannotTell(listed) => {
                say!(self, "why-off-cannot-tell", causes: self.faults(balance, listed))
            }
            WhyOffRemark::Unexplained => self.word("why-off-unexplained").to_owned(),
            WhyOffRemark::Next(next) => say!(
                self,
                "why-off-next",
                measured: next.measured.word(),
                chance: self.chance(next.likely)
            ),
        }
    }

    fn off_by(&self, off: &OffBy) -> String {
        let measured = off.reading.measured;
        let unit = unit(measured);
        let decimals = usize::from(!matches!(measured, Measured::Weight | Measured::Ice));
        let read = self.in_unit(off.reading.read.value, unit, decimals);
        let word = measured.word();
        let Some((should, apart)) = off.should.zip(off.apart) else {
            return say!(self, "why-off-not-known", measured: word, read: read);
        };
        let should = self.uncertain(should, unit);
        let side = if apart > COVERAGE {
            "above"
        } else if apart < -COVERAGE {
            "below"
        } else {
            "as-expected"
        };
        say!(self, "why-off-reading", measured: word, read: read, should: should, side: side)
    }

    /// A probability as a percentage, never all or nothing.
    fn chance(&self, probability: f64) -> String {
        let percent = (100.0 * probability).round();
        if percent >= 100.0 {
            return say!(self, "why-off-over", percent: self.in_unit(99.0, "%", 0));
        }
        if percent < 1.0 {
            return say!(self, "why-off-under", percent: self.in_unit(1.0, "%", 0));
        }
        self.in_unit(percent, "%", 0)
    }

    fn faults(&self, balance: &Balance, faults: &[LikelyFault]) -> String {
        let named = |likely: &LikelyFault| {
            let (cause, chance) = (self.fault(balance, likely), self.chance(likely.probability));
            say!(self, "why-off-cause", cause: cause, chance: chance)
        };
        let named: Vec<String> = faults.iter().map(named).collect();
        self.or(&named)
    }

    /// "one scoop of Tambrel chestnut powder too many", "20 ± 8 g too much ice", "only scatter".
    pub fn fault(&self, balance: &Balance, likely: &LikelyFault) -> String {
        let Some(fault) = &likely.fault else {
            return self.word("fault-none").to_owned();
        };
        let size = |unit| {
            let size = likely.size;
            size.map_or_else(String::new, |size| self.uncertain(size, unit))
        };
        match fault {
            Fault::OneMore(line) => {
                let (uses, ingredient) = self.one_use(balance, line);
                say!(self, "fault-one-more", uses: uses, ingredient: ingredient)
            }
            Fault::OneFewer(line) => {
                let (uses, ingredient) = self.one_use(balance, line);
                say!(self, "fault-one-fewer", uses: uses, ingredient: ingredient)
            }
            Fault::LeftOut(line) => {
                say!(self, "fault-left-out", ingredient: self.line(balance, line))
            }
            Fault::TooMuch(line) => say!(
                self,
                "fault-too-much",
                grams: size("g"),
                ingredient: self.line(balance, line)
            ),
            Fault::TooLittle(line) => say!(
                self,
                "fault-too-little",
                grams: size("g"),
                ingredient: self.line(balance, line)
            ),
            Fault::Warmer(cause) => say!(
                self,
                "fault-warmer",
                what: self.cause(balance, cause).what,
                kelvin: size("K")
            ),
            Fault::Cooler(cause) => say!(
                self,
                "fault-cooler",
                what: self.cause(balance, cause).what,
                kelvin: size("K")
            ),
        }
    }

    /// One use of the measure of a line, and its ingredient.
    fn one_use(&self, balance: &Balance, line: &LineId) -> (String, String) {
        let kind = balance
            .resolved
            .line(line)
            .and_then(|line| self.kind_of(&line.amount));
        (self.uses(1.0, kind), self.line(balance, line))
    }

    fn kind_of(&self, amount: &Amount) -> Option<MeasureKind> {
        match amount {
            Amount::Count(_, id) => self.book.measure(id).map(|measure| measure.kind),
            _ => None,
        }
    }
}

fn unit(measured: Measured) -> &'static str {
    match measured {
        Measured::Weight | Measured::Ice => "g",
        Measured::Temperature => "°C",
        Measured::Brix => "°Brix",
    }
}
