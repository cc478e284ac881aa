//! How long work takes as it grows: the ratio of two sizes in one run, which a slow machine leaves as it is.

use std::time::{Duration, Instant};

/// Each size is tried so often: what a busy machine adds to one run is not in the quickest.
const ROUNDS: usize = 2;

/// The smaller is done so often in a row that both take about as long: a short run fits between the turns of other programs
/// and a long one does not.
const REPEATS: u32 = 10;

/// Ten times as much takes ten times as long where it should, with room for caches and a busy machine; what grows with the
/// square takes a hundred times as long.
pub(crate) const TENFOLD: f64 = 40.0;

/// How many times as long the same work takes on the larger of two inputs.
pub(crate) fn growth<T>([smaller, larger]: [&T; 2], work: impl Fn(&T)) -> f64 {
    let took = |input, times: u32| {
        let started = Instant::now();
        (0..times).for_each(|_| work(input));
        started.elapsed() / times
    };
    let (mut short, mut long) = (Duration::MAX, Duration::MAX);
    for _ in 0..ROUNDS {
        short = short.min(took(smaller, REPEATS));
        long = long.min(took(larger, 1));
    }
    long.as_secs_f64() / short.as_secs_f64()
}
