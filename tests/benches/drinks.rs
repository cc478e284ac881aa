//! What a drink costs to work out, hot, iced, filled and both, beside the bare sum of its lines, and what a whole book of them does:
//! `cargo bench --bench drinks`.
//!
//! What counts is the ratio to the bare sum of the same drink, that of the balance to its figures, and that of a version in a book
//! of ten thousand recipes, worked out on all cores, to a balance alone.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs,
    reason = "a measurement ends at the first thing that is not as expected"
)]

use std::hint::black_box;
use std::time::Instant;

use evensip::balance::{
    Fill, Mix, Prepared, Slots, VersionBalances, balance, difference, effects, figures, prepare,
    prepare_afresh,
};
use evensip::book::{Book, Place, Recipe, Resolved, Role, resolve};
use evensip::book_file::built_in_book;
use rayon::prelude::*;

#[path = "support/mod.rs"]
mod support;

use support::large_book;

/// Recipes of the whole book.
const RECIPES: usize = 10_000;

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

/// Works out every version of a recipe beside its standard; how many there are.
fn versions(book: &Book, recipe: &Recipe) -> usize {
    let mut balances = VersionBalances::new(book, recipe);
    let versions = recipe.versions.iter().map(|version| Some(&version.id));
    let all = std::iter::once(None).chain(versions);
    all.map(|version| {
        let balance = balances.balance(version).unwrap();
        let standard = balances.standard(version);
        black_box(standard.map(|standard| difference(&book.settings, &standard, &balance)));
        black_box(balance)
    })
    .count()
}

fn whole_book() {
    let book = large_book(0, RECIPES);
    let recipes = book.recipes.iter().as_slice();
    let timed = |work: &dyn Fn() -> usize| {
        let start = Instant::now();
        let versions = work();
        (versions, start.elapsed().as_secs_f64())
    };
    let part = &recipes[..RECIPES / 10];
    let one_core = || part.iter().map(|recipe| versions(&book, recipe)).sum();
    let (count, seconds) = timed(&one_core);
    println!("one core: {:.1} µs a version", seconds / count as f64 * 1e6);
    let all_cores = || recipes.par_iter().map(|recipe| versions(&book, recipe));
    let (count, seconds) = timed(&|| all_cores().sum());
    println!(
        "all cores: {count} versions of {RECIPES} recipes in {seconds:.2} s, {:.1} µs a version",
        seconds / count as f64 * 1e6
    );
}

fn main() {
    whole_book();
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
        let afresh = microseconds(|| {
            prepare_afresh(&book, &lines, &mut Slots::default(), &place)
                .lines
                .len()
        });
        let whole = microseconds(|| balance(&book, lines.clone(), &place).axes.len());
        println!(
            "{name}: preparing {preparing:.1} µs ({afresh:.1} µs with no batch kept), balance with uncertainty {whole:.1} µs"
        );
    }
}
