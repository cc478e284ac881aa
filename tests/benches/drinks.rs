//! What a drink costs to work out, hot, iced, filled and both, beside the bare sum of its lines: `cargo bench --bench drinks`.
//!
//! What counts is the ratio to the bare sum of the same drink, and that of the balance to its figures.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs,
    reason = "a measurement ends at the first thing that is not as expected"
)]

use std::hint::black_box;
use std::time::Instant;

use evensip::balance::{Fill, Mix, Prepared, Slots, balance, effects, figures, prepare};
use evensip::book::{Book, Place, Resolved, Role, resolve};
use evensip::book_file::built_in_book;

/// Measurements of each, the best of which counts.
const RUNS: usize = 7;

/// How long one measurement takes, s.
const LONG_ENOUGH: f64 = 0.05;

/// Microseconds of one call, at best.
fn microseconds<T>(mut call: impl FnMut() -> T) -> f64 {
    let mut calls = 1_u32;
    let mut best = f64::INFINITY;
    let mut runs = 0;
    while runs < RUNS {
        let start = Instant::now();
        for _ in 0..calls {
            black_box(call());
        }
        let seconds = start.elapsed().as_secs_f64();
        if seconds < LONG_ENOUGH {
            calls *= 2;
        } else {
            best = best.min(seconds / f64::from(calls));
            runs += 1;
        }
    }
    best * 1e6
}

/// The lines alone, added up.
fn bare_sum(prepared: &Prepared) -> Mix {
    let mut sum = Mix::EMPTY;
    for line in &prepared.lines {
        sum.add_times(&line.per_unit, line.count);
    }
    sum
}

fn filled(mut prepared: Prepared) -> Prepared {
    let mut lines = prepared.lines.iter_mut();
    let line = lines
        .rfind(|line| matches!(line.role, Role::Water | Role::Tea))
        .unwrap();
    line.fill = Some(Fill::Volume(320.0));
    line.count = 0.0;
    prepared
}

fn report(name: &str, prepared: &Prepared) {
    let sum = microseconds(|| bare_sum(black_box(prepared)));
    let of_figures = microseconds(|| figures(black_box(prepared)));
    let of_effects = microseconds(|| effects(black_box(prepared)));
    println!(
        "{name}: {} lines, {} causes; sum {sum:.3} µs, figures {of_figures:.3} µs ({:.1} sums), effects {of_effects:.1} µs ({:.0} \
         figures)",
        prepared.lines.len(),
        prepared.causes.len(),
        of_figures / sum,
        of_effects / of_figures,
    );
}

fn drink(book: &Book, recipe: &str, version: Option<&str>) -> Resolved {
    let recipe = book
        .recipes
        .iter()
        .find(|known| known.id.as_str() == recipe)
        .unwrap();
    let version = version.map(|name| {
        let mut versions = recipe.versions.iter();
        &versions.find(|known| known.id.as_str() == name).unwrap().id
    });
    resolve(recipe, version).0
}

fn main() {
    let book = built_in_book().unwrap();
    for (name, recipe, version) in [
        ("hot", "hob-and-ember", None),
        ("iced", "hob-and-ember", Some("iced")),
        ("with batches", "ninebell", None),
    ] {
        let lines = drink(&book, recipe, version);
        let place = Place::Settings;
        let prepared = prepare(&book, &lines, &mut Slots::default(), &place);
        report(name, &prepared);
        report(&format!("{name}, filled"), &filled(prepared));
        let preparing = microseconds(|| {
            prepare(&book, &lines, &mut Slots::default(), &place)
                .lines
                .len()
        });
        let whole = microseconds(|| balance(&book, lines.clone(), &place).axes.len());
        println!("{name}: preparing {preparing:.1} µs, balance with uncertainty {whole:.1} µs");
    }
}
