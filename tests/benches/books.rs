//! A book of ten thousand recipes: opening, editing, checking and saving, beside reading and parsing the same bytes with the RON
//! crate alone.
//!
//! `cargo bench --bench books`. What counts is the ratio to `ron alone`, which is the same on every machine.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs,
    reason = "a measurement ends at the first thing that is not as expected"
)]

use std::fs;
use std::hint::black_box;
use std::sync::Arc;
use std::time::Duration;

use criterion::{Criterion, criterion_group, criterion_main};
use evensip::book::findings;
use evensip::book_file::{load, save, write};
use evensip::edit::{Edit, Focus, History};

#[path = "support/mod.rs"]
mod support;

use support::large_book;

const RECIPES: usize = 10_000;

fn books(criterion: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let book = large_book(0, RECIPES);
    save(&path, &book).unwrap();
    println!(
        "{} recipes, {:.1} MB",
        book.recipes.len(),
        fs::metadata(&path).unwrap().len() as f64 / 1e6
    );
    let mut group = criterion.benchmark_group("10000 recipes");
    group
        .sample_size(10)
        .measurement_time(Duration::from_secs(15));
    group.bench_function("read and parse, ron alone", |bencher| {
        bencher.iter(|| {
            let text = fs::read_to_string(&path).unwrap();
            black_box(ron::from_str::<ron::Value>(&text).unwrap())
        });
    });
    group.bench_function("open (read, parse, check)", |bencher| {
        bencher.iter(|| black_box(load(&path).unwrap()));
    });
    group.bench_function("check alone", |bencher| {
        bencher.iter(|| black_box(findings(&book)));
    });
    group.bench_function("write alone", |bencher| {
        bencher.iter(|| black_box(write(&book)));
    });
    group.bench_function("save (write, sync, replace, earlier copy)", |bencher| {
        let mut number = 0;
        let mut book = book.clone();
        bencher.iter(|| {
            number += 1;
            book.settings.note = format!("save {number}");
            black_box(save(&path, &book).unwrap())
        });
    });
    group.bench_function("one edit and its undo", |bencher| {
        let mut history = History::new(Arc::new(book.clone()));
        let recipe = book.recipes.iter().nth(RECIPES / 2).unwrap().id.clone();
        bencher.iter(|| {
            let edit = Edit::RenameRecipe {
                recipe: recipe.clone(),
                name: "another".to_owned(),
            };
            history.perform(vec![edit], Focus::Book).unwrap();
            black_box(history.undo())
        });
    });
    group.finish();
}

criterion_group!(benches, books);
criterion_main!(benches);
