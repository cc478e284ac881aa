//! How long work takes as it grows: the ratio of two sizes in one run, which a slow machine leaves as it is.

use std::time::{Duration, Instant};

/// Each size is tried so often: what a busy machine adds to one run is not in the quickest.
const ROUNDS: usize = 3;

/// Ten times as much takes ten times as long where it should, with room for caches and a busy machine; what grows with the
/// square takes a hundred times as long.
pub(crate) const TENFOLD: f64 = 40.0;

/// How many times as long the same work takes on the larger of two inputs.
pub(crate) fn growth<T>([smaller, larger]: [&T; 2], work: impl Fn(&T)) -> f64 {
    let took = |input| {
        let started = Instant::now();
        work(input);
        started.elapsed()
    };
    let (mut short, mut long) = (Duration::MAX, Duration::MAX);
    for _ in 0..ROUNDS {
        short = short.min(took(smaller));
        long = long.min(took(larger));
    }
    long.as_secs_f64() / short.as_secs_f64()
}
