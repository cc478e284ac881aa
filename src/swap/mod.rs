//! Swaps.
