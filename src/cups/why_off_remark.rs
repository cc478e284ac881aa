//! What there is to say of a cup that is off, as facts.

use super::why_off::{LikelyFault, NextMeasurement, OffBy, WhyOff};

/// Causes less likely than this are not named.
const NAMED_FROM: f64 = 0.02;

/// Most causes that are named at once.
const MOST_NAMED: usize = 6;

/// A fact about a cup that is off.
#[derive(Clone, Debug, PartialEq)]
pub enum WhyOffRemark {
    /// A reading beside what it should be, or that nobody knows that.
    Reading(OffBy),
    /// No reading can be compared with anything.
    NothingToCompare,
    /// One cause is likely.
    Likely(LikelyFault),
    /// Which others are possible.
    Others(Vec<LikelyFault>),
    /// The readings do not tell which of these it was.
    CannotTell(Vec<LikelyFault>),
    /// No single cause brings a cup as far off.
    Unexplained,
    /// What to measure next.
    Next(NextMeasurement),
}

impl WhyOff {
    /// What there is to say, in the order in which it is read.
    pub fn remarks(&self) -> Vec<WhyOffRemark> {
        let readings = self.readings.iter().copied();
        let mut remarks: Vec<WhyOffRemark> = readings.map(WhyOffRemark::Reading).collect();
        if self.causes.is_empty() {
            remarks.push(WhyOffRemark::NothingToCompare);
        } else if self.is_unexplained {
            remarks.push(WhyOffRemark::Unexplained);
        } else if let Some(told) = self.told() {
            remarks.push(WhyOffRemark::Likely(told.clone()));
            let others = self.named(1);
            if !others.is_empty() {
                remarks.push(WhyOffRemark::Others(others));
            }
        } else {
            let listed = self.listed().len().min(MOST_NAMED);
            let listed = self.causes[..listed].to_vec();
            remarks.push(WhyOffRemark::CannotTell(listed));
        }
        remarks.extend(self.next.map(WhyOffRemark::Next));
        remarks
    }

    fn named(&self, first: usize) -> Vec<LikelyFault> {
        let causes = self.causes.iter().skip(first);
        let named = causes.filter(|cause| cause.probability >= NAMED_FROM);
        named.take(MOST_NAMED).cloned().collect()
    }
}
