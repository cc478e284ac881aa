//! The propagation of uncertainty (JCGM 100:2008) against the propagation of distributions (JCGM 101:2008): 100,000 draws in
//! which every cause is off at once, each by its own normal multiple of its standard uncertainty.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]
#![allow(
    clippy::print_stdout,
    reason = "the two uncertainties side by side are what one wants to read"
)]

use evensip::balance::{Measurand, Slots, figures_when_all_off, prepare};
use evensip::book::{Place, VersionId, resolve};

use crate::sample::{balance_of, sample};

const DRAWS: usize = 100_000;

/// xorshift64* (Vigna 2016, ACM Trans. Math. Softw. 42:30): the same draws in every run.
struct Draws(u64);

impl Draws {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }

    /// Between 0 and 1, neither of them.
    fn uniform(&mut self) -> f64 {
        ((self.next() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    /// Two independent standard normal draws (Box & Muller 1958).
    fn normal_pair(&mut self) -> (f64, f64) {
        let radius = (-2.0 * self.uniform().ln()).sqrt();
        let angle = 2.0 * std::f64::consts::PI * self.uniform();
        (radius * angle.cos(), radius * angle.sin())
    }

    fn fill(&mut self, times: &mut [f64]) {
        for pair in times.chunks_mut(2) {
            let (one, other) = self.normal_pair();
            pair[0] = one;
            if let Some(second) = pair.get_mut(1) {
                *second = other;
            }
        }
    }
}

/// Mean and spread of a stream of values (Welford 1962).
#[derive(Clone, Copy, Default)]
struct Spread {
    count: f64,
    mean: f64,
    squares: f64,
}

impl Spread {
    fn add(&mut self, value: f64) {
        self.count += 1.0;
        let before = value - self.mean;
        self.mean += before / self.count;
        self.squares += before * (value - self.mean);
    }

    fn standard_deviation(&self) -> f64 {
        (self.squares / (self.count - 1.0)).sqrt()
    }
}

/// Compares every figure of a version; `but` names those that are no linear function of their causes, and why.
fn compare(recipe: &str, version: Option<&str>, but: &[(Measurand, &str)]) {
    let book = sample();
    let balance = balance_of(&book, recipe, version);
    let found = book
        .recipes
        .iter()
        .find(|found| found.id.as_str() == recipe)
        .unwrap();
    let (resolved, _) = resolve(
        found,
        version.map(|id| VersionId::new(id).unwrap()).as_ref(),
    );
    let prepared = prepare(&book, &resolved, &mut Slots::default(), &Place::Settings);
    let known: Vec<Measurand> = Measurand::ALL
        .into_iter()
        .filter(|measurand| balance.figures.complete(*measurand).is_some())
        .collect();
    let mut spreads = vec![Spread::default(); known.len()];
    let mut times = vec![0.0; prepared.causes.len()];
    let mut draws = Draws(20_260_914);
    for _ in 0..DRAWS {
        draws.fill(&mut times);
        let figures = figures_when_all_off(&prepared, &times);
        for (spread, measurand) in spreads.iter_mut().zip(&known) {
            spread.add(figures.of[measurand.slot()]);
        }
    }
    println!("{recipe} {version:?}: {} causes", prepared.causes.len());
    for (spread, measurand) in spreads.iter().zip(&known) {
        let (by_draws, propagated) = (
            spread.standard_deviation(),
            balance.uncertainty(measurand.slot()),
        );
        let ratio = by_draws / propagated;
        let why = but
            .iter()
            .find(|(other, _)| other == measurand)
            .map(|(_, why)| *why);
        println!(
            "{:22} propagated {propagated:9.4}, drawn {by_draws:9.4} {}",
            measurand.key(),
            why.unwrap_or("")
        );
        if propagated < 1e-9 && by_draws < 1e-6 {
            continue;
        }
        let agrees = (ratio - 1.0).abs() < 0.05;
        assert_eq!(
            agrees,
            why.is_none(),
            "{} of {recipe}: drawn/propagated {ratio:.3}",
            measurand.key()
        );
    }
}

#[test]
fn propagated_and_drawn_uncertainties_agree_for_a_hot_drink() {
    compare("hob-and-ember", None, &[]);
}

#[test]
fn propagated_and_drawn_uncertainties_agree_for_a_shaken_iced_drink() {
    let ice = "no more ice melts than there is: the effect is one-sided";
    compare("pear-drift", None, &[(Measurand::ServingTemperature, ice)]);
}
