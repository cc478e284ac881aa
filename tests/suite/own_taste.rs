//! What tastes of itself, because no label names its flavour, lies on no axis: only its share of the drink can be kept.

use evensip::book::{Amount, Book, Role, Stage, VesselKind, resolve};
use evensip::cards::drinks_of_menu;
use evensip::swap::{Adaptation, resize};

use crate::sample::sample;

/// The sample shop before anybody has named a flavour.
fn without_flavours() -> Book {
    let mut book = sample();
    for item in &sample().ingredients {
        let mut item = (**item).clone();
        item.composition.flavours.clear();
        book.ingredients.put(item);
    }
    book
}

#[test]
fn in_another_cup_it_ends_within_a_step_of_its_grown_amount() {
    let book = without_flavours();
    let cups: Vec<_> = book
        .vessels
        .iter()
        .filter(|vessel| vessel.kind == VesselKind::Cup)
        .collect();
    let mut held = 0;
    for drink in drinks_of_menu(&book) {
        let (recipe, version) = (book.recipe(&drink.recipe).unwrap(), drink.version.as_ref());
        let before = resolve(recipe, version).0;
        for cup in &cups {
            let Some(Ok(adapted)) = resize(&book, recipe, version, &cup.id) else {
                continue;
            };
            let Adaptation::Cup { ratio, .. } = adapted.adaptation else {
                panic!("{:?}", adapted.adaptation)
            };
            for line in before.lines() {
                let Amount::Count(uses, measure) = &line.amount else {
                    continue;
                };
                if line.role != Role::Flavour || line.stage != Stage::Mixed {
                    continue;
                }
                let after = adapted.balance.resolved.line(&line.id).unwrap();
                let after = after.amount.number().unwrap();
                let step = book.measure(measure).unwrap().step();
                // Half a step to the whole measure, and the one that it may move.
                let may = (1.5 * step + 1e-9).max(step - uses * ratio);
                assert!(
                    (after - uses * ratio).abs() <= may,
                    "{drink:?} in {}: {uses} became {after} at {ratio:.2} times",
                    cup.id
                );
                held += 1;
            }
        }
    }
    assert!(held > 20, "{held}");
}
