//! What lies on a cup, and what that does to its cooling.

use super::run::UNDER_A_LID;
use crate::book::{Closure, ClosureKind};

/// Standard uncertainty of the logarithm of the factor that is stated for a lid or a film (assumed).
const STATED_FACTOR: f64 = 0.1;

/// What a cup has on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cover {
    /// What the rates are multiplied with.
    pub(super) rate: f64,
    /// What the evaporation is multiplied with.
    pub(super) evaporation: f64,
    /// Standard uncertainty of the logarithm of the one, and of the other.
    pub(super) doubt: (f64, f64),
}

impl Cover {
    pub(super) const NONE: Self = Self {
        rate: 1.0,
        evaporation: 1.0,
        doubt: (0.0, 0.0),
    };

    /// A stated factor holds for the rate as a whole, and no lid makes a drink cool faster. A lid or film without a factor keeps
    /// vapour in.
    pub(super) fn of(closure: Option<&Closure>) -> Self {
        let Some(closure) = closure else {
            return Self::NONE;
        };
        let stated = closure
            .cooling_factor
            .filter(|factor| factor.is_finite() && *factor > 0.0);
        match (closure.kind, stated) {
            (ClosureKind::Open, None) => Self::NONE,
            (ClosureKind::Open, Some(rate)) => Self { rate, ..Self::NONE },
            (ClosureKind::Lid | ClosureKind::Film, Some(rate)) => Self {
                rate: rate.min(1.0),
                doubt: (STATED_FACTOR, 0.0),
                ..Self::NONE
            },
            (ClosureKind::Lid | ClosureKind::Film, None) => Self {
                evaporation: UNDER_A_LID.0,
                doubt: (0.0, UNDER_A_LID.1),
                ..Self::NONE
            },
        }
    }
}
