//! What is poured by a volume is no surer than what is known of the liquid.

use evensip::balance::{Measurand, balance};
use evensip::book::{
    Amount, Basis, Entry, Evidence, Form, Ingredient, Nutrient, Place, Resolved, Role,
};
use evensip::quantity::Uncertain;
use proptest::prelude::*;

use crate::sample::{book, figure, ingredient, line, recipe};

/// Grams of 100 ml that are read off a jug without fault.
fn poured(item: &Ingredient) -> Uncertain {
    let mut book = book(vec![item.clone()], Vec::new(), recipe(Vec::new()));
    book.settings.instruments.jug_percent = Some(0.0);
    let mut entry = line("it", "it", 0.0, 20.0, item.role);
    if let Entry::Line(line) = &mut entry {
        line.amount = Amount::Millilitres(100.0);
    }
    let resolved = Resolved {
        entries: vec![entry],
        ..Resolved::default()
    };
    let found = balance(&book, resolved, &Place::Settings);
    Uncertain {
        value: figure(&found, Measurand::Mass),
        u: found.uncertainty(Measurand::Mass.slot()),
    }
}

/// A liquid that states some of what weighs in it.
fn any_liquid() -> impl Strategy<Value = Ingredient> {
    let soluble = prop_oneof![
        Just(None),
        (0.0..60.0_f64).prop_map(|grams| Some((Nutrient::Carbohydrate, grams))),
        (0.0..60.0_f64).prop_map(|grams| Some((Nutrient::Sugars, grams))),
        (0.0..60.0_f64).prop_map(|percent| Some((Nutrient::Brix, percent))),
    ];
    (
        soluble,
        prop::option::of(0.0..8.0_f64),
        prop::option::of(0.0..25.0_f64),
        prop::sample::select(vec![Basis::Per100Grams, Basis::Per100Millilitres]),
        prop::sample::select(vec![Form::Liquid, Form::Syrup]),
        prop::sample::select(vec![
            Evidence::Label,
            Evidence::SpecSheet,
            Evidence::Measured,
            Evidence::Published,
            Evidence::Assumed,
        ]),
    )
        .prop_map(|(soluble, protein, fat, basis, form, evidence)| {
            let others = [(Nutrient::Protein, protein), (Nutrient::Fat, fat)];
            let stated = others
                .into_iter()
                .filter_map(|(nutrient, grams)| Some((nutrient, grams?)));
            let figures: Vec<_> = soluble.into_iter().chain(stated).collect();
            let mut item = ingredient("it", form, Role::Base, &figures);
            item.composition.basis = basis;
            for figure in item.composition.printed.values_mut() {
                figure.evidence = evidence;
            }
            item
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_volume_weighs_no_more_surely_than_each_figure_of_the_liquid_lets_it(item in any_liquid()) {
        let before = poured(&item);
        prop_assert!(before.u >= 0.003 * before.value, "{before:?}");
        for nutrient in item.composition.printed.keys() {
            let u = item.composition.standard_uncertainty(*nutrient).unwrap();
            let mut moved = item.clone();
            let figure = moved.composition.printed.get_mut(nutrient).unwrap();
            figure.value += u;
            let effect = (poured(&moved).value - before.value).abs();
            prop_assert!(before.u >= 0.7 * effect, "{nutrient:?}: {effect} against {before:?} of {item:?}");
        }
    }

    #[test]
    fn a_liquid_that_states_no_solids_may_be_a_syrup(item in any_liquid()) {
        let solids = [Nutrient::Carbohydrate, Nutrient::Sugars, Nutrient::Brix];
        let is_silent = solids.iter().all(|solids| item.composition.get(*solids).is_none());
        let found = poured(&item);
        prop_assert!(!is_silent || found.u >= 0.05 * found.value, "{found:?} of {item:?}");
    }
}
