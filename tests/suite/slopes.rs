//! What a cause does to a figure is worked out from the formulas themselves; here it is tried out.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::{
    Fill, MEASURANDS, Measurand, Prepared, Slots, effects, figures, figures_when_all_off, prepare,
};
use evensip::book::{Place, Role, resolve};
use evensip::book_file::{built_in_book, parse};
use proptest::prelude::*;

/// Every version of the sample books, prepared.
fn drinks() -> Vec<Prepared> {
    let unread = include_str!("../../sample-books/unread-labels.ron");
    let books = [built_in_book().unwrap(), parse(unread).unwrap().0];
    let mut drinks = Vec::new();
    for book in &books {
        for recipe in &book.recipes {
            let versions = recipe.versions.iter().map(|version| Some(&version.id));
            for version in std::iter::once(None).chain(versions) {
                let lines = resolve(recipe, version).0;
                let place = Place::Recipe(recipe.id.clone(), "lines");
                drinks.push(prepare(book, &lines, &mut Slots::default(), &place));
            }
        }
    }
    drinks
}

/// Half of what the figures differ by when a cause is off by so many standard uncertainties, for a whole one.
fn tried(prepared: &Prepared, cause: usize, times: f64) -> [f64; MEASURANDS] {
    let off = |times: f64| {
        let mut all = vec![0.0; prepared.causes.len()];
        all[cause] = times;
        figures_when_all_off(prepared, &all)
    };
    let (more, less) = (off(times), off(-times));
    std::array::from_fn(|slot| (more.of[slot] - less.of[slot]) / (2.0 * times))
}

/// Each effect is the slope at the drink, or the odd part of what the cause does as far as it reaches.
fn each_effect_is_one_that_was_tried(prepared: &Prepared) -> Result<(), TestCaseError> {
    let at = figures(prepared);
    for (cause, effect) in effects(prepared).iter().enumerate() {
        let (slope, whole) = (tried(prepared, cause, 0.01), tried(prepared, cause, 1.0));
        for slot in 0..MEASURANDS {
            // What a search stops at, over the hundredth that it is divided by.
            let rounding = 1e-5 + 1e-7 * at.of[slot].abs();
            let close = |tried: f64| (effect[slot] - tried).abs() <= rounding + 2e-3 * tried.abs();
            prop_assert!(
                close(slope[slot]) || close(whole[slot]),
                "{:?} on slot {slot}: {} where a try says {} and {}",
                prepared.causes[cause],
                effect[slot],
                slope[slot],
                whole[slot],
            );
        }
    }
    Ok(())
}

#[test]
fn the_effects_on_the_drinks_of_the_samples_are_those_that_a_try_finds() {
    for prepared in drinks() {
        each_effect_is_one_that_was_tried(&prepared).unwrap();
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// Other amounts, filled, with ice, strained, shaken: none of that is in the formulas of the effects.
    #[test]
    fn the_effects_on_any_drink_are_those_that_a_try_finds(
        which in any::<prop::sample::Index>(),
        factors in prop::collection::vec(0.2_f64..3.0, 1..12),
        filled in prop::option::of((any::<prop::sample::Index>(), 50.0_f64..700.0)),
        strained in any::<bool>(),
        heat_lost in 0.0_f64..0.1,
    ) {
        let drinks = drinks();
        let mut prepared = which.get(&drinks).clone();
        for (line, factor) in prepared.lines.iter_mut().zip(factors.iter().cycle()) {
            line.count *= factor;
        }
        let liquids = |prepared: &Prepared| -> Vec<usize> {
            let lines = prepared.lines.iter().enumerate();
            let poured = lines.filter(|(_, line)| {
                matches!(line.role, Role::Water | Role::Tea | Role::Ice | Role::Creamer)
            });
            poured.map(|(at, _)| at).collect()
        };
        let poured = liquids(&prepared);
        if let Some((index, millilitres)) = filled && !poured.is_empty() {
            let line = &mut prepared.lines[*index.get(&poured)];
            line.fill = Some(Fill::Volume(millilitres));
            line.count = 0.0;
        }
        prepared.setup.strained = strained;
        prepared.setup.heat_lost = heat_lost;
        each_effect_is_one_that_was_tried(&prepared)?;
    }
}

/// A drink just at the point where its ice is gone: what the ice does to the temperature has a bend within its uncertainty, and
/// half of it is there.
#[test]
fn where_a_bend_is_near_the_effect_is_tried_out() {
    let mut seen = false;
    for mut prepared in drinks() {
        let Some(ice) = prepared.lines.iter().position(|line| line.is_ice) else {
            continue;
        };
        let left = |prepared: &Prepared, count: f64| {
            let mut with = prepared.clone();
            with.lines[ice].count = count;
            figures(&with).of[Measurand::IceLeft.slot()]
        };
        let (mut gone, mut there) = (0.0, prepared.lines[ice].count * 8.0);
        if left(&prepared, there) == 0.0 {
            continue;
        }
        for _ in 0..60 {
            let middle = f64::midpoint(gone, there);
            if left(&prepared, middle) > 0.0 {
                there = middle;
            } else {
                gone = middle;
            }
        }
        prepared.lines[ice].count = there;
        each_effect_is_one_that_was_tried(&prepared).unwrap();
        let slot = Measurand::IceLeft.slot();
        let slopes = effects(&prepared);
        seen |= (0..prepared.causes.len()).any(|cause| {
            let whole = tried(&prepared, cause, 1.0)[slot];
            whole.abs() > 0.01 && (slopes[cause][slot] - whole).abs() < 1e-6
        });
    }
    assert!(seen, "ice that is just gone is in some drink");
}
