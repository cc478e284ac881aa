//! From prepared lines to numbers: what melts, what fills, what the sum tastes of, how it cools. No look-ups, no names.

pub(super) mod cooling;
pub(super) mod figures;
pub(super) mod physics;
pub(super) mod prepared;
pub(super) mod slopes;
