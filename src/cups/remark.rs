//! What there is to say of the cups of a drink, as facts.

use super::drawn::{DrawnCause, When};
use super::remedy::Helps;
use super::shift::Cups;
use crate::balance::Taste;
use crate::book::Axis;

/// Causes that move no axis by more than this part of a step are not named.
const NAMED_FROM: f64 = 0.05;

/// Most causes that are named at once.
const MOST_NAMED: usize = 4;

/// How many of a hundred cups.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OfAHundred {
    /// Every cup that was drawn.
    All,
    /// More than 99, but not all.
    Over99,
    /// So many, to the next whole cup.
    About(u32),
    /// Some, but fewer than one.
    Under1,
    /// None that was drawn.
    None,
}

impl OfAHundred {
    /// The whole cups of a share from 0 to 1.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a count up to a hundred"
    )]
    pub fn of(share: f64) -> Self {
        let cups = (100.0 * share.clamp(0.0, 1.0)).round() as u32;
        match cups {
            _ if share >= 1.0 => Self::All,
            _ if share <= 0.0 => Self::None,
            100 => Self::Over99,
            0 => Self::Under1,
            cups => Self::About(cups),
        }
    }
}

/// A fact about the cups of a drink.
#[derive(Clone, Debug, PartialEq)]
pub enum CupsRemark {
    /// How many taste like what they are held to, and how many don't, by axis and side.
    Share {
        /// How many taste like it.
        within: OfAHundred,
        /// How many are more than a step off, on which axis and which way; the most first.
        off: Vec<(OfAHundred, Axis, Taste)>,
    },
    /// No axis is known.
    NothingKnown,
    /// What the share rests on.
    Drawn,
    /// The recipe itself is off, by so many steps on these axes.
    RecipeOff(Vec<(Axis, f64)>),
    /// Axes of which nobody knows the figure.
    NotKnown(Vec<Axis>),
    /// Something helps.
    Helps(Helps),
    /// Nothing helps noticeably.
    NothingHelps,
    /// What varies from cup to cup or from shift to shift, what moves an axis most first.
    Varies(When, Vec<DrawnCause>),
    /// What is the same in every cup stays as it is.
    Held,
}

impl Cups {
    /// What there is to say, in the order in which it is read.
    pub fn remarks(&self) -> Vec<CupsRemark> {
        let mut remarks = vec![self.share_remark()];
        if self.within.is_some() {
            remarks.push(CupsRemark::Drawn);
        }
        remarks.extend(self.recipe_off());
        let not_known: Vec<Axis> = self.not_known().cloned().collect();
        if !not_known.is_empty() && self.within.is_some() {
            remarks.push(CupsRemark::NotKnown(not_known));
        }
        if self.helps.is_empty() && self.within.is_some() {
            remarks.push(CupsRemark::NothingHelps);
        }
        remarks.extend(self.helps.iter().cloned().map(CupsRemark::Helps));
        remarks.extend([When::EachCup, When::EachShift].map(|when| {
            let named = self.drawn.iter();
            let named = named.filter(|drawn| drawn.when == when && drawn.steps >= NAMED_FROM);
            CupsRemark::Varies(when, named.take(MOST_NAMED).cloned().collect())
        }));
        remarks
            .retain(|remark| !matches!(remark, CupsRemark::Varies(_, causes) if causes.is_empty()));
        remarks.push(CupsRemark::Held);
        remarks
    }

    fn share_remark(&self) -> CupsRemark {
        let Some(within) = self.within else {
            return CupsRemark::NothingKnown;
        };
        let mut off: Vec<(f64, Axis, Taste)> = Vec::new();
        for axis in self.axes.iter().filter(|axis| axis.counts) {
            for (share, taste) in axis.off.into_iter().zip([Taste::Less, Taste::More]) {
                off.push((share, axis.axis.clone(), taste));
            }
        }
        off.sort_by(|a, b| b.0.total_cmp(&a.0));
        let off = off
            .into_iter()
            .map(|(share, axis, taste)| (OfAHundred::of(share), axis, taste));
        let told = off.filter(|(of, ..)| !matches!(of, OfAHundred::Under1 | OfAHundred::None));
        CupsRemark::Share {
            within: OfAHundred::of(within.value),
            off: told.collect(),
        }
    }

    fn recipe_off(&self) -> Option<CupsRemark> {
        let axes = self.axes.iter().filter(|axis| axis.counts);
        let off: Vec<(Axis, f64)> = axes
            .filter_map(|axis| Some((axis.axis.clone(), axis.nominal?)))
            .filter(|(_, steps)| steps.abs() > 1.0)
            .collect();
        (!off.is_empty()).then_some(CupsRemark::RecipeOff(off))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_share_that_rounds_to_all_is_not_all() {
        assert_eq!(OfAHundred::of(1.0), OfAHundred::All);
        assert_eq!(OfAHundred::of(0.9996), OfAHundred::Over99);
        assert_eq!(OfAHundred::of(0.932), OfAHundred::About(93));
        assert_eq!(OfAHundred::of(0.004), OfAHundred::Under1);
        assert_eq!(OfAHundred::of(0.0), OfAHundred::None);
    }
}
