//! What can go wrong with one cup, each fault alone and named, with what it does to the figures of the drink.

use super::aim::stated_temperature;
use crate::balance::{
    Balance, Cause, Figures, Prepared, PreparedLine, Slots, figures_when_all_off, prepare,
    solved_count, temperature_uncertainty,
};
use crate::book::{Amount, Book, Line, LineId, MeasureKind, Place, Resolved, Role};

/// One thing that went wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// One use of the measure too many.
    OneMore(LineId),
    /// One use of the measure too few.
    OneFewer(LineId),
    /// Left out.
    LeftOut(LineId),
    /// Too much of it, by an amount in g.
    TooMuch(LineId),
    /// Too little of it, by an amount in g.
    TooLittle(LineId),
    /// Something came warmer than stated, by so many K.
    Warmer(Cause),
    /// Something came cooler than stated, by so many K.
    Cooler(Cause),
}

impl Fault {
    /// The word for it.
    pub const fn word(&self) -> &'static str {
        match self {
            Self::OneMore(_) => "one-more",
            Self::OneFewer(_) => "one-fewer",
            Self::LeftOut(_) => "left-out",
            Self::TooMuch(_) => "too-much",
            Self::TooLittle(_) => "too-little",
            Self::Warmer(_) => "warmer",
            Self::Cooler(_) => "cooler",
        }
    }

    /// The line that it is about, if it is about one.
    pub const fn line(&self) -> Option<&LineId> {
        match self {
            Self::OneMore(line)
            | Self::OneFewer(line)
            | Self::LeftOut(line)
            | Self::TooMuch(line)
            | Self::TooLittle(line) => Some(line),
            Self::Warmer(_) | Self::Cooler(_) => None,
        }
    }
}

/// The parts of an amount by which hands that pour or shovel err, each equally likely (assumed): less is scatter, more is seen.
const PARTS: Sizes = Sizes {
    from: 0.1,
    to: 0.75,
    pieces: 26,
};

/// The kelvin by which what is hot comes too cool, or what is cold too warm, each equally likely (assumed).
const KELVINS: Sizes = Sizes {
    from: 4.0,
    to: 20.0,
    pieces: 16,
};

/// Sizes between two ends, each equally likely: the middles of so many pieces stand for them.
struct Sizes {
    from: f64,
    to: f64,
    pieces: u32,
}

impl Sizes {
    fn piece(&self) -> f64 {
        (self.to - self.from) / f64::from(self.pieces)
    }

    fn middles(&self) -> impl Iterator<Item = f64> {
        (0..self.pieces).map(|at| self.from + (f64::from(at) + 0.5) * self.piece())
    }
}

/// A fault of one size.
#[derive(Clone, Debug)]
pub(super) struct SizedFault {
    /// g or K, without a sign; `None` where a use of a measure says it.
    pub(super) size: Option<f64>,
    /// How much of that one piece covers.
    pub(super) piece: f64,
    /// The drink with it.
    made: Made,
}

/// How a drink with a fault is made.
#[derive(Clone, Debug)]
enum Made {
    /// With so many units of a line in place of its own.
    Count(usize, f64),
    /// With a cause off by so many standard uncertainties.
    Off(usize, f64),
}

/// A fault in all its sizes.
#[derive(Clone, Debug)]
pub(super) struct Fallible {
    pub(super) fault: Fault,
    pub(super) sizes: Vec<SizedFault>,
}

/// A drink whose cups can go wrong.
pub(super) struct Makeable {
    prepared: Prepared,
    /// What can go wrong.
    pub(super) faults: Vec<Fallible>,
}

impl Makeable {
    /// A drink with everything that can go wrong with it.
    pub(super) fn of(book: &Book, balance: &Balance) -> Self {
        let lines = &balance.resolved;
        let prepared = prepare(book, lines, &mut Slots::default(), &Place::Settings);
        let mut faults = Vec::new();
        for line in lines.lines() {
            faults.extend(of_line(book, &prepared, line));
        }
        for (at, cause) in prepared.causes.iter().enumerate() {
            faults.extend(of_temperature(book, lines, cause, at).into_iter().flatten());
        }
        Self { prepared, faults }
    }

    /// How many causes of doubt there are.
    pub(super) fn causes(&self) -> usize {
        self.prepared.causes.len()
    }

    /// The figures of a cup with a fault, or with none, and every cause off by its own multiple.
    pub(super) fn figures(&self, fault: Option<&SizedFault>, times: &[f64]) -> Figures {
        match fault.map(|fault| &fault.made) {
            None => figures_when_all_off(&self.prepared, times),
            Some(Made::Off(cause, by)) => {
                let mut times = times.to_vec();
                times.resize(times.len().max(cause + 1), 0.0);
                times[*cause] += by;
                figures_when_all_off(&self.prepared, &times)
            }
            Some(Made::Count(at, count)) => {
                let mut prepared = self.prepared.clone();
                let line = &mut prepared.lines[*at];
                line.count = *count;
                // Who overshoots the mark does not pour back.
                line.fill = None;
                figures_when_all_off(&prepared, times)
            }
        }
    }
}

/// What can go wrong with the amount of a line.
fn of_line(book: &Book, prepared: &Prepared, line: &Line) -> Vec<Fallible> {
    let Some(at) = prepared.position(&line.id) else {
        return Vec::new();
    };
    let known = &prepared.lines[at];
    let count = solved_count(prepared, at).unwrap_or(0.0);
    if known.grams_per_unit <= 0.0 || count <= 0.0 {
        return Vec::new();
    }
    let of_count = |fault, count| Fallible {
        fault,
        sizes: vec![SizedFault {
            size: None,
            piece: 0.0,
            made: Made::Count(at, count),
        }],
    };
    let id = || line.id.clone();
    if is_counted(book, line) {
        let fewer = if count > 1.0 {
            of_count(Fault::OneFewer(id()), count - 1.0)
        } else {
            of_count(Fault::LeftOut(id()), 0.0)
        };
        return vec![of_count(Fault::OneMore(id()), count + 1.0), fewer];
    }
    let of_parts = |fault, sign: f64| Fallible {
        fault,
        sizes: PARTS
            .middles()
            .map(|part| sized(known, at, count, part, sign))
            .collect(),
    };
    vec![
        of_parts(Fault::TooMuch(id()), 1.0),
        of_parts(Fault::TooLittle(id()), -1.0),
    ]
}

fn sized(line: &PreparedLine, at: usize, count: f64, part: f64, sign: f64) -> SizedFault {
    let whole = count * line.grams_per_unit;
    SizedFault {
        size: Some(part * whole),
        piece: PARTS.piece() * whole,
        made: Made::Count(at, count * (1.0 + sign * part)),
    }
}

/// Whether a line is counted in uses that nobody mistakes for a part of one. Ice is shovelled, a jug is poured to a mark.
fn is_counted(book: &Book, line: &Line) -> bool {
    let Amount::Count(_, measure) = &line.amount else {
        return false;
    };
    let kind = book.measure(measure).map(|measure| measure.kind);
    let is_poured = matches!(kind, Some(MeasureKind::Jug | MeasureKind::IceScoop));
    line.role != Role::Ice && !is_poured
}

/// What can go wrong with a temperature.
fn of_temperature(
    book: &Book,
    lines: &Resolved,
    cause: &Cause,
    at: usize,
) -> Option<[Fallible; 2]> {
    let stated = stated_temperature(book, lines, cause)?;
    let u = temperature_uncertainty(book, stated);
    let sizes = |sign: f64| {
        let size = |kelvin: f64| SizedFault {
            size: Some(kelvin),
            piece: KELVINS.piece(),
            made: Made::Off(at, sign * kelvin / u),
        };
        KELVINS.middles().map(size).collect()
    };
    (u > 0.0).then(|| {
        [
            Fallible {
                fault: Fault::Warmer(cause.clone()),
                sizes: sizes(1.0),
            },
            Fallible {
                fault: Fault::Cooler(cause.clone()),
                sizes: sizes(-1.0),
            },
        ]
    })
}
