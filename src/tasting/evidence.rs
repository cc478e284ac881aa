//! What tastings say of how sweet or strong ingredients are: one joint update of all factors.
//!
//! A factor multiplies what the label, or an assumption, says an ingredient brings to an axis. Its logarithm `x` is normal before
//! any tasting, with mean 0 and the standard uncertainty of that figure (`0.25` for ± 25 %); one ingredient per flavour is the
//! reference and has none. A cup's intensity on an axis is `Σ aᵢ·exp(xᵢ) + rest`, and two cups are
//! `δ = ln(second / first)` apart. A taster perceives `d′ = δ/ln(1 + step)·d′(75 %)`: a noticeable step is what three in four answers of a
//! pair get right. Each tasting has its own likelihood of `δ`: pairs, triangles and duo–trios by [`super::right_answers`], cups that were
//! found alike by a normal one.
//!
//! The update is expectation propagation (Minka, Uncertainty in Artificial Intelligence 17, 2001: 362; value from memory): each tasting is replaced by a normal
//! factor along its own `δ` that has the moments of the exact one, in turns until nothing moves; the cups are made linear anew at each
//! turn. Unlike a Laplace approximation this holds for a triangle, whose likelihood has no direction and two humps: it bounds the
//! size of a difference and never says which cup has more.

use super::blind_test::BlindTest;
use super::distributions::{at_most, exactly, normal_below, normal_quantile};
use super::power::{Effect, right_answers};
use crate::quantity::RECTANGULAR;

/// The share of right answers of a pair at one noticeable step.
const RIGHT_AT_A_STEP: f64 = 0.75;

/// The largest number of turns; most sets of tastings settle in twenty.
const TURNS: u32 = 200;

/// After so many turns each makes half the change: what swings back and forth comes to rest.
const CALM_AFTER: u32 = 15;

/// Points of the integrals over `δ`, an odd number.
const POINTS: u32 = 241;

/// How far they go, in standard uncertainties.
const REACH: f64 = 6.0;

/// How much of each change is made in a turn: all of it can swing back and forth.
const DAMPING: f64 = 0.7;

/// Relative standard uncertainty of "about 0.8 times as strong" (assumed: people tell tenths).
const TOLD_RATIO: f64 = 0.15;

/// Below this probability a tasting contradicts what all others say.
const CONTRADICTION: f64 = 0.01;

/// How a cup comes by its intensity on an axis.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CupIntensity {
    /// By factor: its place in the list of priors, and what it brings when the factor is 1.
    pub parts: Vec<(usize, f64)>,
    /// What no factor changes.
    pub rest: f64,
}

/// What came out of a tasting of two cups.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TastingResult {
    /// A blind test; in a pair, so many chose the second cup.
    Blind {
        /// The test.
        test: BlindTest,
        /// How many people, each counted once.
        people: u32,
        /// How many of them were right.
        right: u32,
    },
    /// So many people found them alike, as close as they can tell: a matched pair, or an approval as equal.
    Alike {
        /// How many people.
        people: u32,
        /// How much may still have passed as alike, in noticeable steps: a half for cups that were matched, 1 for an approval.
        within_steps: f64,
    },
    /// A note at the bench: so many people found that the second cup has about so many times what the first one has.
    About {
        /// How many people.
        people: u32,
        /// How many times as much.
        times: f64,
    },
}

/// Two cups that were tasted on one axis.
#[derive(Clone, Debug, PartialEq)]
pub struct ComparedCups {
    /// The first.
    pub first: CupIntensity,
    /// The second.
    pub second: CupIntensity,
    /// The noticeable step, as a share of the intensity.
    pub step: f64,
    /// What came out.
    pub result: TastingResult,
}

/// A factor as it is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FactorEstimate {
    /// The logarithm of the factor.
    pub log: f64,
    /// Its standard uncertainty: the relative one of the factor.
    pub u: f64,
}

/// What all tastings together say.
#[derive(Clone, Debug, PartialEq)]
pub struct Evidence {
    /// By factor, in the order of the priors.
    pub factors: Vec<FactorEstimate>,
    /// By tasting: how likely a result at least as strange was, by everything else that is known.
    pub likely: Vec<f64>,
    /// Whether nothing moved any more.
    pub settled: bool,
}

impl Evidence {
    /// The tastings that contradict what all others and the labels say.
    pub fn contradictions(&self) -> impl Iterator<Item = usize> + '_ {
        let likely = self.likely.iter().enumerate();
        likely
            .filter(|(_, likely)| **likely < CONTRADICTION)
            .map(|(place, _)| place)
    }
}

/// A normal factor along the `δ` of a tasting: precision, and precision times mean.
#[derive(Clone, Copy, Debug, Default)]
struct Site {
    precision: f64,
    shift: f64,
}

/// A tasting made linear: `δ = slope·x + offset`.
struct Line {
    slope: Vec<f64>,
    offset: f64,
}

/// The joint normal distribution of the logarithms.
#[derive(Clone)]
struct Joint {
    mean: Vec<f64>,
    covariance: Vec<Vec<f64>>,
}

/// Works out all factors at once. `priors` are standard uncertainties of logarithms; a factor with 0 is fixed.
pub fn evidence(priors: &[f64], tastings: &[ComparedCups]) -> Evidence {
    let mut sites = vec![Site::default(); tastings.len()];
    let mut joint = Joint::before(priors);
    let mut settled = tastings.is_empty();
    for turn in 0..TURNS {
        let part = if turn < CALM_AFTER {
            DAMPING
        } else {
            DAMPING / 2.0
        };
        let lines: Vec<Line> = tastings.iter().map(|one| one.line(&joint.mean)).collect();
        joint = Joint::of(priors, &lines, &sites);
        let before = joint.mean.clone();
        let mut moved: f64 = 0.0;
        for ((tasting, line), site) in tastings.iter().zip(&lines).zip(&mut sites) {
            let Some(wanted) = joint
                .without(line, *site)
                .and_then(|rest| tasting.site(rest))
            else {
                continue;
            };
            let precision = part * (wanted.precision - site.precision);
            let shift = part * (wanted.shift - site.shift);
            moved = moved.max(precision.abs() / (1.0 + wanted.precision));
            joint.add(line, Site { precision, shift });
            site.precision += precision;
            site.shift += shift;
        }
        let steps = joint
            .mean
            .iter()
            .zip(&before)
            .map(|(now, then)| (now - then).abs());
        if moved < 1e-5 && steps.fold(0.0, f64::max) < 1e-6 {
            settled = true;
            break;
        }
    }
    let likely = tastings.iter().zip(&sites).map(|(tasting, site)| {
        let line = tasting.line(&joint.mean);
        let rest = joint.without(&line, *site);
        rest.map_or(1.0, |rest| tasting.likely(rest))
    });
    let likely = likely.collect();
    let factors = (0..priors.len()).map(|place| FactorEstimate {
        log: joint.mean[place],
        u: joint.covariance[place][place].max(0.0).sqrt(),
    });
    Evidence {
        factors: factors.collect(),
        likely,
        settled,
    }
}

/// What was foretold of a tasting by the packs and the tastings before it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Foretold {
    /// How likely a result at least as strange was.
    pub likely: f64,
    /// The logarithm of the probability (for two cups that were found alike, or told apart by a number: of the density) of what came
    /// out, up to a constant of the tasting.
    pub log_probability: f64,
}

/// What was foretold of each tasting by those before it, in turn; `None` where nothing was unsure. Each is taken in by the moments
/// of the exact update before the next one is foretold (assumed density filtering: one turn of the expectation propagation above).
pub fn foretold_in_turn(priors: &[f64], tastings: &[ComparedCups]) -> Vec<Option<Foretold>> {
    let mut joint = Joint::before(priors);
    let each = tastings.iter().map(|tasting| {
        let line = tasting.line(&joint.mean);
        let before = joint.without(&line, Site::default())?;
        let weighed = before
            .points()
            .map(|(delta, density)| (density, density * tasting.likelihood(delta)));
        let (all, hit) = weighed.fold((0.0, 0.0), |(all, hit), (density, weight)| {
            (all + density, hit + weight)
        });
        let found = Foretold {
            likely: tasting.likely(before),
            log_probability: (hit / all).max(f64::MIN_POSITIVE).ln(),
        };
        if let Some(site) = tasting.site(before) {
            joint.add(&line, site);
        }
        Some(found)
    });
    each.collect()
}

impl CupIntensity {
    /// The intensity and its slopes by the logarithms.
    fn at(&self, logs: &[f64]) -> (f64, Vec<f64>) {
        let mut slopes = vec![0.0; logs.len()];
        let mut sum = self.rest;
        for (place, amount) in &self.parts {
            let part = amount * logs[*place].exp();
            sum += part;
            slopes[*place] += part;
        }
        (sum.max(f64::MIN_POSITIVE), slopes)
    }
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}

impl ComparedCups {
    fn line(&self, logs: &[f64]) -> Line {
        let (first, first_slopes) = self.first.at(logs);
        let (second, second_slopes) = self.second.at(logs);
        let slopes = first_slopes.iter().zip(&second_slopes);
        let slope: Vec<f64> = slopes.map(|(a, b)| b / second - a / first).collect();
        Line {
            offset: (second / first).ln() - dot(&slope, logs),
            slope,
        }
    }

    /// What a `δ` of 1 is in `d′`.
    fn d_prime_of_log(&self) -> f64 {
        let at_a_step = 2f64.sqrt() * normal_quantile(RIGHT_AT_A_STEP);
        at_a_step / self.step.ln_1p()
    }

    /// The share of right answers at a `δ`; in a pair, of those for the second cup.
    fn right_at(&self, test: BlindTest, delta: f64) -> f64 {
        let d_prime = delta * self.d_prime_of_log();
        match test {
            BlindTest::Pair(_) => normal_below(d_prime / 2f64.sqrt()),
            _ => right_answers(test, Effect::DPrime(d_prime.abs())),
        }
    }

    /// The standard uncertainty of a finding that two cups are alike: what each person misses by, and what may have passed.
    fn alike_u(&self, people: u32, within_steps: f64) -> f64 {
        let each = 2f64.sqrt() / self.d_prime_of_log();
        let passed = within_steps * self.step.ln_1p() * RECTANGULAR;
        (each / f64::from(people.max(1)).sqrt()).hypot(passed)
    }

    /// The standard uncertainty of a ratio that was told at the bench: what each person misses by, and that a number for a taste is a
    /// guess, however many agree on it.
    fn about_u(&self, people: u32) -> f64 {
        self.alike_u(people, 0.0).hypot(TOLD_RATIO)
    }

    /// The likelihood of a `δ`.
    fn likelihood(&self, delta: f64) -> f64 {
        match self.result {
            TastingResult::Blind {
                test,
                people,
                right,
            } => exactly(people, right, self.right_at(test, delta)),
            TastingResult::Alike {
                people,
                within_steps,
            } => (-(delta / self.alike_u(people, within_steps)).powi(2) / 2.0).exp(),
            TastingResult::About { people, times } => {
                let off = (delta - times.ln()) / self.about_u(people);
                (-off * off / 2.0).exp()
            }
        }
    }

    /// The factor that has the moments of this tasting beside everything else; `None` where they can't be told.
    fn site(&self, rest: Normal) -> Option<Site> {
        let weighed: Vec<(f64, f64)> = rest
            .points()
            .map(|(delta, density)| (delta, density * self.likelihood(delta)))
            .collect();
        let sum: f64 = weighed.iter().map(|(_, weight)| weight).sum();
        if sum <= 0.0 || !sum.is_finite() {
            return None;
        }
        let mean = weighed
            .iter()
            .map(|(delta, weight)| delta * weight)
            .sum::<f64>()
            / sum;
        let square = weighed
            .iter()
            .map(|(delta, weight)| (delta - mean).powi(2) * weight);
        let variance = square.sum::<f64>() / sum;
        let precision = 1.0 / variance - 1.0 / rest.variance;
        // A difference without a direction makes `δ` less sure, and nothing is surer than before: only its mean moves.
        if precision <= 0.0 || !precision.is_finite() {
            return Some(Site {
                precision: 0.0,
                shift: (mean - rest.mean) / rest.variance,
            });
        }
        Some(Site {
            precision,
            shift: mean / variance - rest.mean / rest.variance,
        })
    }

    /// The probability of a result at least as strange, by everything else.
    fn likely(&self, rest: Normal) -> f64 {
        match self.result {
            TastingResult::Alike {
                people,
                within_steps,
            } => {
                let u = rest
                    .variance
                    .sqrt()
                    .hypot(self.alike_u(people, within_steps));
                2.0 * normal_below(-(rest.mean / u).abs())
            }
            TastingResult::About { people, times } => {
                let u = rest.variance.sqrt().hypot(self.about_u(people));
                2.0 * normal_below(-((rest.mean - times.ln()) / u).abs())
            }
            TastingResult::Blind {
                test,
                people,
                right,
            } => {
                let right = right.min(people);
                let all: f64 = rest.points().map(|(_, density)| density).sum();
                let parts = rest.points().map(|(delta, density)| {
                    let share = self.right_at(test, delta);
                    // Half of what came out counts to either side, as usual for counts.
                    let below = at_most(people, right, share) - exactly(people, right, share) / 2.0;
                    below * density / all
                });
                let below: f64 = parts.sum();
                2.0 * below.min(1.0 - below).max(0.0)
            }
        }
    }
}

/// A normal distribution of a `δ`.
#[derive(Clone, Copy)]
struct Normal {
    mean: f64,
    variance: f64,
}

impl Normal {
    /// Points over the distribution with their densities.
    fn points(self) -> impl Iterator<Item = (f64, f64)> {
        let u = self.variance.sqrt();
        (0..POINTS).map(move |place| {
            let z = REACH * (2.0 * f64::from(place) / f64::from(POINTS - 1) - 1.0);
            (self.mean + z * u, (-z * z / 2.0).exp())
        })
    }
}

impl Joint {
    fn before(priors: &[f64]) -> Self {
        let row = |at: usize| {
            let row = priors.iter().enumerate();
            row.map(|(place, u)| if place == at { u * u } else { 0.0 })
                .collect()
        };
        Self {
            mean: vec![0.0; priors.len()],
            covariance: (0..priors.len()).map(row).collect(),
        }
    }

    fn of(priors: &[f64], lines: &[Line], sites: &[Site]) -> Self {
        let mut joint = Self::before(priors);
        for (line, site) in lines.iter().zip(sites) {
            joint.add(line, *site);
        }
        joint
    }

    /// How the covariance acts on a line, and the distribution of its `δ`.
    fn along(&self, line: &Line) -> (Vec<f64>, Normal) {
        let rows = self.covariance.iter();
        let reach: Vec<f64> = rows.map(|row| dot(row, &line.slope)).collect();
        let along = Normal {
            mean: dot(&self.mean, &line.slope) + line.offset,
            variance: dot(&reach, &line.slope),
        };
        (reach, along)
    }

    /// Adds a factor along a line: an update of rank one (Sherman & Morrison 1950).
    fn add(&mut self, line: &Line, site: Site) {
        let (reach, at) = self.along(line);
        let scale = 1.0 + site.precision * at.variance;
        if scale <= 0.0 || !scale.is_finite() {
            return;
        }
        let gain = (site.shift - site.precision * at.mean) / scale;
        for (mean, reach) in self.mean.iter_mut().zip(&reach) {
            *mean += gain * reach;
        }
        for (row, a) in self.covariance.iter_mut().zip(&reach) {
            for (value, b) in row.iter_mut().zip(&reach) {
                *value -= site.precision / scale * a * b;
            }
        }
    }

    /// What everything but a factor says of its `δ`; `None` where nothing is unsure.
    fn without(&self, line: &Line, site: Site) -> Option<Normal> {
        let (_, at) = self.along(line);
        if at.variance < 1e-12 {
            return None;
        }
        let precision = 1.0 / at.variance - site.precision;
        if precision <= 0.0 {
            return None;
        }
        let shift = at.mean / at.variance - site.shift;
        Some(Normal {
            mean: shift / precision,
            variance: 1.0 / precision,
        })
    }
}
