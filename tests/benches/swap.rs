//! How long a swap takes: `cargo bench --bench swap`.
//!
//! Prints medians, worst cases, boxes and the part of the grid that was cut off, over random instances of ordinary drinks, then
//! lets criterion time one of each size. Targets on one core: closest taste in 0.3, 1 and 6 ms for 4, 6 and 8 lines of 41
//! amounts, all four kinds of answer in four times that.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    missing_docs,
    reason = "a benchmark prints and may panic"
)]

use std::hint::black_box;
use std::time::Instant;

use criterion::{Criterion, criterion_group, criterion_main};
use evensip::optimiser::{BranchAndBound, Outcome, Status};
use evensip::swap::{Aim, TasteLandscape};

#[path = "../instances/mod.rs"]
mod instances;

use instances::{KINDS, Kind, landscape};

/// Instances of each size and kind.
const INSTANCES: u64 = 100;

/// Amounts that each line may take.
const AMOUNTS: i32 = 41;

/// Boxes after which a search gives up the proof.
const LIMIT: u64 = 60_000;

fn search(landscape: &TasteLandscape, known: Option<&[i32]>) -> Outcome {
    let mut search = BranchAndBound::new(landscape, &landscape.ranges()).unwrap();
    if let Some(point) = known {
        search.offer(point);
    }
    search.advance(LIMIT);
    search.outcome()
}

/// The closest taste, then the other three kinds held within one step or what the closest reaches.
fn four_kinds(landscape: &TasteLandscape, closest: &Outcome) -> u64 {
    let Some(best) = &closest.best else { return 0 };
    let limits: Vec<f64> = landscape
        .deviations(&landscape.figures(&best.point))
        .iter()
        .map(|steps| steps.abs().max(1.0))
        .collect();
    [Aim::FewestChanges, Aim::Cost, Aim::Sugar]
        .into_iter()
        .map(|aim| search(&landscape.aiming_at(aim, &limits), Some(&best.point)))
        .map(|outcome| u64::from(outcome.status != Status::Optimal))
        .sum()
}

fn median(values: &mut [f64]) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

fn report(kind: Kind, lines: usize, instances: u64) {
    let book = evensip::book_file::built_in_book().unwrap();
    let (mut closest_ms, mut all_ms, mut boxes, mut pruned) =
        (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    let mut unproven = (0, 0);
    for seed in 0..instances {
        let landscape = landscape(&book, seed, kind, lines, AMOUNTS, false);
        let start = Instant::now();
        let outcome = search(&landscape, None);
        closest_ms.push(start.elapsed().as_secs_f64() * 1000.0);
        unproven.0 += u64::from(outcome.status == Status::Feasible);
        unproven.1 += four_kinds(&landscape, &outcome);
        all_ms.push(start.elapsed().as_secs_f64() * 1000.0);
        boxes.push(outcome.nodes as f64);
        let grid = f64::from(AMOUNTS).powi(i32::try_from(lines).unwrap());
        pruned.push(100.0 * (1.0 - (outcome.nodes + outcome.evaluated) as f64 / grid));
    }
    let (closest, all, nodes, share) = (
        median(&mut closest_ms),
        median(&mut all_ms),
        median(&mut boxes),
        median(&mut pruned),
    );
    println!(
        "{kind:?} {lines}×{AMOUNTS}: closest taste {closest:.3} ms (worst {:.1}), {nodes} boxes (worst {}), {share:.6} % of the \
         grid cut off, {} without proof; four kinds {all:.2} ms (worst {:.0}), {} searches without proof",
        closest_ms.last().unwrap(),
        boxes.last().unwrap(),
        unproven.0,
        all_ms.last().unwrap(),
        unproven.1,
    );
}

fn swap(criterion: &mut Criterion) {
    for lines in [4, 6, 8] {
        report(Kind::Hot, lines, INSTANCES);
    }
    for kind in KINDS.into_iter().filter(|kind| *kind != Kind::Hot) {
        for lines in [4, 6] {
            report(kind, lines, 20);
        }
    }
    let book = evensip::book_file::built_in_book().unwrap();
    for lines in [4, 6, 8] {
        let landscape = landscape(&book, 7, Kind::Hot, lines, AMOUNTS, false);
        criterion.bench_function(&format!("closest taste, {lines} lines"), |bencher| {
            bencher.iter(|| black_box(search(black_box(&landscape), None)));
        });
    }
}

criterion_group!(benches, swap);
criterion_main!(benches);
