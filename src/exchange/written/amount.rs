//! How much of an ingredient a recipe asks for.

use super::household::Household;
use crate::quantity::NumberError;

/// A number, or a range of which nobody says where in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// The least.
    pub from: f64,
    /// The most.
    pub to: f64,
}

impl Span {
    /// A single number.
    pub fn of(number: f64) -> Self {
        Self {
            from: number,
            to: number,
        }
    }

    /// What is taken for it.
    pub fn middle(self) -> f64 {
        f64::midpoint(self.from, self.to)
    }

    /// Whether it is more than one number.
    pub fn is_range(self) -> bool {
        self.from < self.to
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            from: self.from * factor,
            to: self.to * factor,
        }
    }

    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            from: self.from + other.from,
            to: self.to + other.to,
        }
    }
}

/// Why the amount of an ingredient can't be told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum UnclearAmount {
    /// Its number can be read in two ways.
    Number(NumberError),
    /// "2 500 ml" may be two of 500 ml as well as 2500 ml.
    TwoCounts {
        /// The digits before the space.
        first: String,
        /// Those behind it.
        second: String,
    },
    /// The sentence is longer than any that names an ingredient.
    TooLong,
}

/// How much of an ingredient a sentence asks for.
#[derive(Clone, Debug, PartialEq)]
pub enum WrittenAmount {
    /// Grams.
    Grams(Span),
    /// Millilitres.
    Millilitres(Span),
    /// So many spoons, cups or pinches of a kitchen.
    Household {
        /// How many.
        count: Span,
        /// Of what.
        of: Household,
        /// Whether they are heaped.
        is_heaped: bool,
    },
    /// So many pieces, or uses of something that has this name; empty where only the ingredient is named.
    Counted {
        /// How many.
        count: Span,
        /// Of what, as it is written.
        word: String,
    },
    /// As much as there is room for.
    Fill,
    /// It says no amount.
    NotStated,
    /// The amount may be one thing or another.
    Unclear(UnclearAmount),
}

impl WrittenAmount {
    /// Its number; `None` where it has none.
    pub fn span(&self) -> Option<Span> {
        match self {
            Self::Grams(span)
            | Self::Millilitres(span)
            | Self::Household { count: span, .. }
            | Self::Counted { count: span, .. } => Some(*span),
            Self::Fill | Self::NotStated | Self::Unclear(_) => None,
        }
    }
}

/// So many of what holds an amount each.
pub(super) fn times(each: WrittenAmount, count: Span) -> WrittenAmount {
    let whole = |each: Span| Span {
        from: each.from * count.from,
        to: each.to * count.to,
    };
    match each {
        WrittenAmount::Grams(each) => WrittenAmount::Grams(whole(each)),
        WrittenAmount::Millilitres(each) => WrittenAmount::Millilitres(whole(each)),
        other => other,
    }
}

/// "1 cup plus 2 tablespoons", in the first of the two.
pub(super) fn sum(one: &WrittenAmount, more: &WrittenAmount) -> Option<WrittenAmount> {
    use WrittenAmount::{Grams, Household, Millilitres};
    match (one, more) {
        (Grams(one), Grams(more)) => Some(Grams(one.plus(*more))),
        (Millilitres(one), Millilitres(more)) => Some(Millilitres(one.plus(*more))),
        (
            Household {
                count,
                of,
                is_heaped,
            },
            Household {
                count: more,
                of: smaller,
                ..
            },
        ) => Some(Household {
            count: count.plus(more.times(smaller.millilitres() / of.millilitres())),
            of: *of,
            is_heaped: *is_heaped,
        }),
        _ => None,
    }
}
