//! A drink as it is made at the counter: what is prepared, and by which draw each of its causes is off.

use std::collections::BTreeMap;

use super::drawn::{When, when_drawn};
use crate::balance::{Cause, Figures, Prepared, Slots, figures_when_all_off, prepare};
use crate::book::{Book, Place, Resolved};

/// How a cause of a prepared drink is drawn.
#[derive(Clone, Copy, Debug)]
struct Drawn {
    when: When,
    /// Standard uncertainties for one standard normal draw.
    times: f64,
    /// Which of the draws of a cup or a shift it takes.
    draw: usize,
}

/// A drink that is made again and again.
#[derive(Debug)]
pub(super) struct Counter {
    prepared: Prepared,
    drawn: Vec<Drawn>,
    /// The draw of each cause.
    draws: BTreeMap<Cause, usize>,
}

impl Counter {
    /// A drink with a draw for each of its causes.
    pub(super) fn of(book: &Book, lines: &Resolved) -> Self {
        Self::drawing(book, lines, BTreeMap::new())
    }

    /// The same drink made in another way by the same hands: what both have in common has the same draws, and each cause that is
    /// named first takes those of the one beside it.
    pub(super) fn made_otherwise(
        &self,
        book: &Book,
        lines: &Resolved,
        in_place_of: &[(Cause, Cause)],
    ) -> Self {
        let mut draws = self.draws.clone();
        for (cause, before) in in_place_of {
            if let Some(draw) = self.draws.get(before) {
                draws.entry(cause.clone()).or_insert(*draw);
            }
        }
        Self::drawing(book, lines, draws)
    }

    fn drawing(book: &Book, lines: &Resolved, mut draws: BTreeMap<Cause, usize>) -> Self {
        let place = Place::Settings;
        let prepared = prepare(book, lines, &mut Slots::default(), &place);
        let mut next = draws.values().max().map_or(0, |last| last + 1);
        let drawn = prepared.causes.iter().map(|cause| {
            let draw = *draws.entry(cause.clone()).or_insert(next);
            next = next.max(draw + 1);
            let (when, times) = when_drawn(book, cause);
            Drawn { when, times, draw }
        });
        let drawn = drawn.collect();
        Self {
            prepared,
            drawn,
            draws,
        }
    }

    /// The same drink with one cause that scatters by so many times what it does.
    pub(super) fn with_cause(&self, cause: &Cause, part: f64) -> Self {
        let mut drawn = self.drawn.clone();
        for (known, drawn) in self.prepared.causes.iter().zip(&mut drawn) {
            if known == cause {
                drawn.times *= part;
            }
        }
        Self {
            prepared: self.prepared.clone(),
            drawn,
            draws: self.draws.clone(),
        }
    }

    /// The draws that a cup or a shift takes.
    pub(super) fn draws(&self) -> usize {
        self.draws.values().max().map_or(0, |last| last + 1)
    }

    /// The figures of a cup. `times` is room for as many numbers as there are causes.
    pub(super) fn cup(&self, shift: &[f64], cup: &[f64], times: &mut Vec<f64>) -> Figures {
        times.clear();
        times.extend(self.drawn.iter().map(|drawn| {
            let draws = match drawn.when {
                When::EachCup => cup,
                When::EachShift => shift,
                When::Held => return 0.0,
            };
            // A way of making it may bring a cause that the drink as it is made has not; it takes a draw of another.
            drawn.times * draws[drawn.draw % draws.len()]
        }));
        figures_when_all_off(&self.prepared, times)
    }
}
