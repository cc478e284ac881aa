//! A search seen from outside: how far it is, and the wish that it stops.

use std::sync::atomic::{AtomicBool, AtomicU32, AtomicU64, Ordering};

/// Shared between a search and whoever waits for it.
#[derive(Debug, Default)]
pub struct Watch {
    stopped: AtomicBool,
    boxes: AtomicU64,
    done: AtomicU32,
    all: AtomicU32,
}

impl Watch {
    /// Asks the search to stop; what it gives back then is not the answer.
    pub fn stop(&self) {
        self.stopped.store(true, Ordering::Relaxed);
    }

    /// Whether it was asked to stop.
    pub fn is_stopped(&self) -> bool {
        self.stopped.load(Ordering::Relaxed)
    }

    /// Boxes of the grid that were looked at so far.
    pub fn boxes(&self) -> u64 {
        self.boxes.load(Ordering::Relaxed)
    }

    /// Parts that are done, and how many there are: recipes of a list, rungs of a ladder. `None` for a single search.
    pub fn parts(&self) -> Option<(u32, u32)> {
        let all = self.all.load(Ordering::Relaxed);
        (all > 0).then(|| (self.done.load(Ordering::Relaxed).min(all), all))
    }

    pub(super) fn count_boxes(&self, more: u64) {
        self.boxes.fetch_add(more, Ordering::Relaxed);
    }

    /// There are so many more parts to do.
    pub fn expect(&self, more: usize) {
        let more = u32::try_from(more).unwrap_or(u32::MAX / 2);
        self.all.fetch_add(more, Ordering::Relaxed);
    }

    /// One of the parts is done.
    pub fn done(&self) {
        self.done.fetch_add(1, Ordering::Relaxed);
    }
}
