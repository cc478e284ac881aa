//! What cautions are drawn from.

use crate::balance::diet::Claims;
use crate::balance::mix::Mix;
use crate::balance::report::share::LineShare;
use crate::balance::report::unstated::Unstated;
use crate::balance::solve::figures::Figures;
use crate::book::{Book, Resolved};

/// The facts that cautions are drawn from.
pub(in crate::balance::report) struct Facts<'facts> {
    pub(in crate::balance::report) book: &'facts Book,
    pub(in crate::balance::report) resolved: &'facts Resolved,
    pub(in crate::balance::report) figures: &'facts Figures,
    /// What dissolves into the drink.
    pub(in crate::balance::report) mixed: &'facts Mix,
    pub(in crate::balance::report) lines: &'facts [LineShare],
    pub(in crate::balance::report) unstated: &'facts [Unstated],
    pub(in crate::balance::report) claims: &'facts Claims,
}
