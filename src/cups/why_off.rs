//! Why one cup is off: the causes behind its weight, °Brix, temperature or ice, with their probabilities.
//!
//! Readings `y` of a cup without a fault are normal around the figures of the recipe: the covariance is `Σ J·Jᵀ` over all causes
//! of doubt, with the engine's own slopes J, and the instruments' own (JCGM 102:2011, 6.2). A fault moves the mean to the figures of a
//! drink with that fault, which the engine works out; its size is one of a few equally likely ones. The probability of a fault is that of
//! Bayes, over "only scatter" and every single fault. Two faults in one cup are not looked for: that no single one explains the
//! readings is said.
//!
//! The priors are assumed: one in five cups that somebody asks about is only scatter, and all faults are equally likely.

use super::aim::is_there;
use super::fault::{Fault, Makeable, SizedFault};
use super::gauss::{Covariance, Root};
use super::normal::NormalDraws;
use super::remedy::thermometer_limits;
use crate::balance::{Balance, Figures, Measurand, balance_version, scale_uncertainty};
use crate::book::{Book, Recipe, VersionId};
use crate::quantity::{RECTANGULAR, Uncertain};
use crate::tasting::{BrixReading, Misleading, USUAL_LIMITS_BRIX, soluble_solids};

/// The part of the cups asked about that nothing went wrong with (assumed).
const ONLY_SCATTER: f64 = 0.2;

/// From this probability on a cause is named as the likely one (assumed).
const LIKELY: f64 = 0.6;

/// Causes are listed until they are so likely together.
const LISTED: f64 = 0.8;

/// A measurement is worth making when it makes the likely cause so much likelier.
const WORTH: f64 = 0.05;

/// Below this probability of anything as far off, no single fault explains the readings.
const UNEXPLAINED: f64 = 0.001;

/// Protein, fat or fibre in 100 ml from which a drink blurs a refractometer, g (assumed: water with a tenth of milk holds 0.3 g).
const MILKY: f64 = 0.3;

/// Standard uncertainty of ice that is fished out and weighed, g (assumed: the water that clings to it).
const CLINGING: f64 = 3.0;

/// What can be measured of a cup, the cheapest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Measured {
    /// What is in the cup, on the scale, g.
    Weight,
    /// The temperature as it is handed over, °C.
    Temperature,
    /// Soluble solids of the liquid, °Brix.
    Brix,
    /// The ice in it, fished out and weighed, g.
    Ice,
}

impl Measured {
    /// All of them in their order, the cheapest first (assumed: scale, thermometer, refractometer, sieve).
    pub const ALL: [Self; 4] = [Self::Weight, Self::Temperature, Self::Brix, Self::Ice];

    /// The figure of the drink that it is.
    pub const fn measurand(self) -> Measurand {
        match self {
            Self::Weight => Measurand::Mass,
            Self::Temperature => Measurand::ServingTemperature,
            Self::Brix => Measurand::Brix,
            Self::Ice => Measurand::IceLeft,
        }
    }

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Weight => "weight",
            Self::Temperature => "temperature",
            Self::Brix => "brix",
            Self::Ice => "ice",
        }
    }

    /// Standard uncertainty of one reading of it in a shop, in the unit of the figure. A refractometer reads what is milky or pulpy
    /// badly.
    pub fn uncertainty(self, book: &Book, balance: &Balance, value: f64) -> f64 {
        match self {
            Self::Weight => scale_uncertainty(book),
            Self::Temperature => thermometer_limits(book) * RECTANGULAR,
            Self::Brix => soluble_solids(&BrixReading {
                brix: value,
                celsius: None,
                limits: USUAL_LIMITS_BRIX,
                misleading: misleading(balance),
            })
            .map_or(USUAL_LIMITS_BRIX * RECTANGULAR, |read| read.solids.u),
            Self::Ice => CLINGING,
        }
    }
}

/// What misleads a refractometer in a drink.
fn misleading(balance: &Balance) -> Vec<Misleading> {
    let figures = &balance.figures;
    let is_there = |measurand: Measurand| figures.of[measurand.slot()] > MILKY;
    let is_dairy = is_there(Measurand::ProteinPer100Ml) || is_there(Measurand::FatPer100Ml);
    let dairy = is_dairy.then_some(Misleading::Dairy);
    let fibre = is_there(Measurand::FibrePer100Ml).then_some(Misleading::Fibre);
    dairy.into_iter().chain(fibre).collect()
}

/// A reading of a cup.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CupReading {
    /// What was measured.
    pub measured: Measured,
    /// What came out, with the standard uncertainty of the instrument.
    pub read: Uncertain,
}

/// A reading beside what it should be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OffBy {
    /// The reading.
    pub reading: CupReading,
    /// What the recipe gives, with everything that is doubtful about it; `None` when that is not known.
    pub should: Option<Uncertain>,
    /// How far it is above, in standard uncertainties of both; negative below.
    pub apart: Option<f64>,
}

/// A cause with its probability.
#[derive(Clone, Debug, PartialEq)]
pub struct LikelyFault {
    /// What went wrong; `None` for scatter alone.
    pub fault: Option<Fault>,
    /// How likely it is, 0 to 1.
    pub probability: f64,
    /// By how much, g or K, where it has a size.
    pub size: Option<Uncertain>,
}

/// A measurement that would tell causes apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NextMeasurement {
    /// What to measure.
    pub measured: Measured,
    /// How likely the likeliest cause is then, on the mean over what may come out.
    pub likely: f64,
}

/// Why a cup is off.
#[derive(Clone, Debug, PartialEq)]
pub struct WhyOff {
    /// The readings beside what they should be.
    pub readings: Vec<OffBy>,
    /// All causes, the likeliest first; none when no reading can be compared.
    pub causes: Vec<LikelyFault>,
    /// The cheapest measurement that would make one cause likely, or else the one that helps most; `None` when none would help.
    pub next: Option<NextMeasurement>,
    /// Whether no single cause explains the readings.
    pub is_unexplained: bool,
    /// The drink as it should be.
    pub balance: Balance,
}

impl WhyOff {
    /// The likely cause; `None` when that can't be told.
    pub fn told(&self) -> Option<&LikelyFault> {
        let first = self.causes.first()?;
        (first.probability >= LIKELY && !self.is_unexplained).then_some(first)
    }

    /// The fewest causes that are likely together.
    pub fn listed(&self) -> &[LikelyFault] {
        let mut sum = 0.0;
        let enough = self.causes.iter().position(|cause| {
            sum += cause.probability;
            sum >= LISTED
        });
        &self.causes[..enough.map_or(self.causes.len(), |at| at + 1)]
    }
}

/// A drink with what can go wrong, to be asked about many cups.
pub struct CupDoctor {
    balance: Balance,
    drink: Makeable,
    usual: [f64; Measured::ALL.len()],
    suspects: Vec<Suspect>,
}

/// A fault of one size, or none, with the figures that it leads to.
struct Suspect {
    /// Which of the faults; `None` for scatter alone.
    fault: Option<usize>,
    size: Option<f64>,
    /// How much of the size this one stands for.
    piece: f64,
    weight: f64,
    means: [f64; Measured::ALL.len()],
}

/// A cup of which it is known what went wrong: for tests of the answers.
#[derive(Clone, Debug, PartialEq)]
pub struct SimulatedCup {
    /// What went wrong; `None` for scatter alone.
    pub fault: Option<Fault>,
    /// What is read of it, each quantity with its usual instrument.
    pub readings: Vec<CupReading>,
}

impl CupDoctor {
    /// The drink of a version; `None` when there is no such version, or nothing in its cup.
    pub fn of(book: &Book, recipe: &Recipe, version: Option<&VersionId>) -> Option<Self> {
        let balance = balance_version(book, recipe, version).filter(is_there)?;
        let drink = Makeable::of(book, &balance);
        let mut suspects = vec![Suspect {
            fault: None,
            size: None,
            piece: 0.0,
            weight: ONLY_SCATTER,
            means: means_of(&drink.figures(None, &[])),
        }];
        let each = (1.0 - ONLY_SCATTER) / drink.faults.len().max(1) as f64;
        for (at, fallible) in drink.faults.iter().enumerate() {
            suspects.extend(fallible.sizes.iter().map(|sized| Suspect {
                fault: Some(at),
                size: sized.size,
                piece: sized.piece,
                weight: each / fallible.sizes.len() as f64,
                means: means_of(&drink.figures(Some(sized), &[])),
            }));
        }
        Some(Self {
            usual: Measured::ALL.map(|measured| {
                let value = balance.figures.of[measured.measurand().slot()];
                measured.uncertainty(book, &balance, value)
            }),
            balance,
            drink,
            suspects,
        })
    }

    /// A reading of a cup of this drink, with what the instruments of a shop may be off by.
    pub fn reading(&self, book: &Book, measured: Measured, value: f64) -> CupReading {
        let u = measured.uncertainty(book, &self.balance, value);
        let read = Uncertain { value, u };
        CupReading { measured, read }
    }

    /// The drink as it should be.
    pub fn drink(&self) -> &Balance {
        &self.balance
    }

    /// What can go wrong with the drink.
    pub fn faults(&self) -> impl Iterator<Item = &Fault> {
        self.drink.faults.iter().map(|fallible| &fallible.fault)
    }

    /// Whether something is known of the drink that can be measured.
    pub fn can_compare(&self, measured: Measured) -> bool {
        let is_known = self
            .balance
            .figures
            .complete(measured.measurand())
            .is_some();
        is_known && (measured != Measured::Ice || self.balance.iced)
    }

    /// Why a cup with these readings is off. Of two readings of the same quantity the last one counts.
    pub fn why_off(&self, readings: &[CupReading]) -> WhyOff {
        let known = self.comparable(readings);
        let posterior = Posterior::of(self, &known);
        let causes = posterior.causes(self);
        WhyOff {
            readings: readings
                .iter()
                .map(|reading| self.off_by(*reading))
                .collect(),
            next: posterior.next(self, &causes),
            is_unexplained: !known.is_empty() && posterior.is_unexplained(),
            causes: if known.is_empty() { Vec::new() } else { causes },
            balance: self.balance.clone(),
        }
    }

    /// The causes alone, the likeliest first: what a cup without readings has is the prior.
    pub fn causes(&self, readings: &[CupReading]) -> Vec<LikelyFault> {
        Posterior::of(self, &self.comparable(readings)).causes(self)
    }

    /// The readings that something is known to compare with.
    fn comparable(&self, readings: &[CupReading]) -> Vec<CupReading> {
        Measured::ALL
            .into_iter()
            .filter(|measured| self.can_compare(*measured))
            .filter_map(|measured| {
                let mut last = readings.iter().rev();
                last.find(|reading| reading.measured == measured).copied()
            })
            .collect()
    }

    /// A cup drawn from the very assumptions: everything that is doubtful or scatters is drawn, the fault is drawn by its prior, or is
    /// one of [`Self::faults`].
    pub fn simulated(&self, seed: u64, fault: Option<usize>) -> SimulatedCup {
        let mut draws = NormalDraws::new(seed, 0);
        let at = fault.or_else(|| {
            let drawn = draws.uniform();
            let all = self.drink.faults.len();
            let part = (drawn - ONLY_SCATTER) / (1.0 - ONLY_SCATTER);
            let wrong = (0..all).rev().find(|at| part >= *at as f64 / all as f64);
            wrong.filter(|_| part >= 0.0)
        });
        let found = at.and_then(|at| self.drink.faults.get(at));
        let size = draws.uniform();
        let sized: Option<&SizedFault> = found.and_then(|found| {
            let sizes = &found.sizes;
            let place = (0..sizes.len())
                .rev()
                .find(|at| size >= *at as f64 / sizes.len() as f64);
            sizes.get(place?)
        });
        let mut times = vec![0.0; self.drink.causes()];
        draws.fill(&mut times);
        let means = means_of(&self.drink.figures(sized, &times));
        let mut noise = [0.0; Measured::ALL.len()];
        draws.fill(&mut noise);
        let readings = Measured::ALL
            .into_iter()
            .filter(|measured| self.can_compare(*measured))
            .map(|measured| {
                let at = measured as usize;
                let (value, u) = (means[at] + self.usual[at] * noise[at], self.usual[at]);
                let read = Uncertain { value, u };
                CupReading { measured, read }
            })
            .collect();
        SimulatedCup {
            fault: found.map(|found| found.fault.clone()),
            readings,
        }
    }

    fn off_by(&self, reading: CupReading) -> OffBy {
        let measurand = reading.measured.measurand();
        let value = self.balance.figures.complete(measurand);
        let should = value
            .filter(|_| self.can_compare(reading.measured))
            .map(|value| Uncertain {
                value,
                u: self.balance.uncertainty(measurand.slot()),
            });
        OffBy {
            reading,
            should,
            apart: should.map(|should| {
                let apart = reading.read.value - should.value;
                apart / reading.read.u.hypot(should.u).max(f64::MIN_POSITIVE)
            }),
        }
    }

    /// The covariance of readings: everything doubtful about the drink, and each instrument.
    fn covariance(&self, of: &[(Measured, f64)]) -> Covariance {
        let slot = |at: usize| of[at].0.measurand().slot();
        Covariance::of(of.len(), |row, column| {
            let shared = self.balance.contributions.iter();
            let shared: f64 = shared
                .map(|cause| cause.effect[slot(row)] * cause.effect[slot(column)])
                .sum();
            let own = if row == column {
                of[row].1.powi(2)
            } else {
                0.0
            };
            shared + own
        })
    }
}

fn means_of(figures: &Figures) -> [f64; Measured::ALL.len()] {
    Measured::ALL.map(|measured| figures.of[measured.measurand().slot()])
}

/// The suspects with how likely readings make them.
struct Posterior {
    known: Vec<CupReading>,
    values: Vec<f64>,
    /// By suspect; they add up to 1.
    probabilities: Vec<f64>,
    /// How far the best of them is off, as a sum of squares.
    least_squares: f64,
}

impl Posterior {
    fn of(doctor: &CupDoctor, known: &[CupReading]) -> Self {
        let of = readings_of(known);
        let values: Vec<f64> = known.iter().map(|reading| reading.read.value).collect();
        let root = doctor.covariance(&of).root();
        let squares: Vec<f64> = doctor
            .suspects
            .iter()
            .map(|suspect| root.squares(&values, &means_for(suspect, &of)))
            .collect();
        let least_squares = squares.iter().copied().fold(f64::INFINITY, f64::min);
        let weights: Vec<f64> = doctor
            .suspects
            .iter()
            .zip(&squares)
            .map(|(suspect, squares)| suspect.weight * (-(squares - least_squares) / 2.0).exp())
            .collect();
        let all: f64 = weights.iter().sum();
        Self {
            known: known.to_vec(),
            values,
            probabilities: weights.iter().map(|weight| weight / all).collect(),
            least_squares,
        }
    }

    /// Whether even the best single cause is further off than chance brings it.
    fn is_unexplained(&self) -> bool {
        beyond(self.known.len(), self.least_squares) < UNEXPLAINED
    }

    fn causes(&self, doctor: &CupDoctor) -> Vec<LikelyFault> {
        let mut causes: Vec<LikelyFault> = (0..=doctor.drink.faults.len())
            .map(|place| self.cause(doctor, place.checked_sub(1)))
            .collect();
        causes.sort_by(|a, b| b.probability.total_cmp(&a.probability));
        causes
    }

    /// One cause in all its sizes.
    fn cause(&self, doctor: &CupDoctor, at: Option<usize>) -> LikelyFault {
        let sizes: Vec<(f64, Option<f64>)> = doctor
            .suspects
            .iter()
            .zip(&self.probabilities)
            .filter(|(suspect, _)| suspect.fault == at)
            .map(|(suspect, probability)| (*probability, suspect.size))
            .collect();
        let probability: f64 = sizes.iter().map(|(probability, _)| probability).sum();
        let mean = |of: &dyn Fn(f64) -> f64| -> Option<f64> {
            let parts: Option<Vec<f64>> = sizes
                .iter()
                .map(|(probability, size)| Some(probability * of((*size)?)))
                .collect();
            Some(parts?.iter().sum::<f64>() / probability.max(f64::MIN_POSITIVE))
        };
        let value = mean(&|size| size);
        // A size is no surer than the piece that stands for it.
        let mut suspects = doctor.suspects.iter();
        let piece = suspects.find(|suspect| suspect.fault == at);
        let piece = piece.map_or(0.0, |suspect| suspect.piece / 2.0 * RECTANGULAR);
        LikelyFault {
            fault: at.map(|at| doctor.drink.faults[at].fault.clone()),
            probability,
            size: value.map(|value| Uncertain {
                value,
                u: mean(&|size| (size - value).powi(2))
                    .unwrap_or(0.0)
                    .sqrt()
                    .hypot(piece),
            }),
        }
    }

    /// The cheapest measurement that is expected to make one cause likely, else the one that helps most.
    fn next(&self, doctor: &CupDoctor, causes: &[LikelyFault]) -> Option<NextMeasurement> {
        let now = causes.first().map_or(0.0, |cause| cause.probability);
        if now >= LIKELY && !self.known.is_empty() {
            return None;
        }
        let open = Measured::ALL.into_iter().filter(|measured| {
            let is_known = self.known.iter().any(|known| known.measured == *measured);
            !is_known && doctor.can_compare(*measured)
        });
        let mut found: Option<NextMeasurement> = None;
        for measured in open {
            let likely = self.likely_with(doctor, measured);
            let next = NextMeasurement { measured, likely };
            if likely >= LIKELY {
                return Some(next);
            }
            if found.is_none_or(|found| likely > found.likely) {
                found = Some(next);
            }
        }
        found.filter(|next| next.likely >= now + WORTH)
    }

    /// How likely the likeliest cause is on the mean when one thing more is measured: ∫ max over causes of their joint density.
    fn likely_with(&self, doctor: &CupDoctor, measured: Measured) -> f64 {
        // How far the integral goes beyond the outermost suspects, and how many points it has to a standard deviation.
        const REACH: f64 = 5.0;
        const POINTS: f64 = 3.0;
        // A suspect less likely than this changes nothing.
        const LEAST: f64 = 1e-9;
        let mut of = readings_of(&self.known);
        of.push((measured, doctor.usual[measured as usize]));
        let root: Root = doctor.covariance(&of).root();
        let suspects: Vec<(usize, f64, f64, f64)> = doctor
            .suspects
            .iter()
            .zip(&self.probabilities)
            .filter(|(_, probability)| **probability > LEAST)
            .map(|(suspect, probability)| {
                let (mean, deviation) = root.last_given(&self.values, &means_for(suspect, &of));
                let cause = suspect.fault.map_or(0, |at| at + 1);
                (cause, *probability, mean, deviation)
            })
            .collect();
        let Some(&(.., deviation)) = suspects.first() else {
            return 0.0;
        };
        let means = suspects.iter().map(|(_, _, mean, _)| *mean);
        let low = means.clone().fold(f64::INFINITY, f64::min) - REACH * deviation;
        let high = means.fold(f64::NEG_INFINITY, f64::max) + REACH * deviation;
        let width = deviation / POINTS;
        let mut densities = vec![0.0; doctor.drink.faults.len() + 1];
        let mut sum = 0.0;
        let mut value = low;
        while value < high {
            densities.fill(0.0);
            for (cause, probability, mean, deviation) in &suspects {
                let off = (value - mean) / deviation;
                densities[*cause] += probability * (-off * off / 2.0).exp();
            }
            sum += densities.iter().copied().fold(0.0, f64::max);
            value += width;
        }
        sum * width / (deviation * std::f64::consts::TAU.sqrt())
    }
}

/// What was measured, and how well.
fn readings_of(known: &[CupReading]) -> Vec<(Measured, f64)> {
    let readings = known.iter();
    readings
        .map(|reading| (reading.measured, reading.read.u))
        .collect()
}

fn means_for(suspect: &Suspect, of: &[(Measured, f64)]) -> Vec<f64> {
    of.iter()
        .map(|(measured, _)| suspect.means[*measured as usize])
        .collect()
}

/// The probability of a chi-square value of so many degrees beyond `squares`; exact for up to four, which is all that can be read.
fn beyond(freedom: usize, squares: f64) -> f64 {
    use statrs::distribution::{ChiSquared, ContinuousCDF as _};
    ChiSquared::new(freedom.max(1) as f64).map_or(0.0, |chi| chi.sf(squares))
}
