//! How long cards take: `cargo bench --bench cards`.
//!
//! Exports 500 counter cards as PDF, and prints what one takes as a ratio to the balance that stands on it, which every
//! frame of the window works out as well: the ratio says the same on a fast and on a slow machine.

#![allow(
    clippy::unwrap_used,
    clippy::print_stdout,
    missing_docs,
    reason = "a benchmark prints and may panic"
)]

use std::hint::black_box;
use std::time::{Duration, Instant};

use criterion::{Criterion, criterion_group, criterion_main};
use evensip::balance::balance_version;
use evensip::book::Book;
use evensip::cards::{
    CardOptions, CardRequest, Drink, Fonts, Paper, Typesetter, card, drinks_of_menu, html, pdf,
    picture,
};

/// Cards of one export.
const CARDS: usize = 500;

fn book() -> Book {
    evensip::book_file::built_in_book().unwrap()
}

fn timed<T>(work: impl FnOnce() -> T) -> (Duration, T) {
    let begun = Instant::now();
    let result = work();
    (begun.elapsed(), result)
}

fn drinks(book: &Book) -> Vec<Drink> {
    drinks_of_menu(book)
        .into_iter()
        .cycle()
        .take(CARDS)
        .collect()
}

fn report(book: &Book) {
    let options = CardOptions::default();
    let drinks = drinks(book);
    let (balances, ()) = timed(|| {
        for drink in &drinks {
            let recipe = book.recipe(&drink.recipe).unwrap();
            black_box(balance_version(book, recipe, drink.version.as_ref()));
        }
    });
    let mut setter = Typesetter::new(Fonts::bundled(), "en");
    let (all, bytes) = timed(|| {
        let write = |drink: &Drink| {
            let document = card(book, &CardRequest::Counter(drink.clone()), &options).unwrap();
            pdf(&document, &setter.pages(&document, Paper::A5))
                .unwrap()
                .len()
        };
        drinks.iter().map(write).sum::<usize>()
    });
    let each = all / 500;
    println!(
        "{CARDS} counter cards as PDF: {:.2} s, {:.2} ms each, {:.1} times their balance ({:.2} ms), {} KB each",
        all.as_secs_f64(),
        each.as_secs_f64() * 1e3,
        all.as_secs_f64() / balances.as_secs_f64(),
        balances.as_secs_f64() * 1e3 / 500.0,
        bytes / CARDS / 1000
    );
}

fn benches(criterion: &mut Criterion) {
    let book = book();
    report(&book);
    let options = CardOptions::default();
    let drink = drinks(&book).remove(0);
    let request = CardRequest::Counter(drink);
    let document = card(&book, &request, &options).unwrap();
    let mut setter = Typesetter::new(Fonts::bundled(), "en");
    criterion.bench_function("document of a counter card", |bencher| {
        bencher.iter(|| black_box(card(&book, &request, &options).unwrap()));
    });
    criterion.bench_function("pages of a counter card", |bencher| {
        bencher.iter(|| black_box(setter.pages(&document, Paper::A5)));
    });
    let pages = setter.pages(&document, Paper::A5);
    criterion.bench_function("PDF of its pages", |bencher| {
        bencher.iter(|| black_box(pdf(&document, &pages).unwrap()));
    });
    criterion.bench_function("HTML of a counter card", |bencher| {
        bencher.iter(|| black_box(html(&document, Paper::A5)));
    });
    criterion.bench_function("preview of a page", |bencher| {
        bencher.iter(|| black_box(picture(&pages[0], 2.0)));
    });
}

criterion_group!(cards, benches);
criterion_main!(cards);
