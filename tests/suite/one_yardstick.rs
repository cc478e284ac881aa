//! One yardstick: what the level draws, what a lesson and an exercise call right, and what the sentences say agree, whatever the
//! difference is; and a bar is a share of the whole wherever it is drawn.

use evensip::balance::{
    AxisDifference, Balance, Difference, LEVEL_STEPS, Lens, Taste, balance_version,
    overall_distance,
};
use evensip::book::{Axis, Book, IngredientId, RecipeId};
use evensip::book_file::parse;
use evensip::say::{Language, Speaker};
use evensip::swap::{Question, WalkMove, answer, driver, walk};
use evensip::ui::widgets::level::{MarkStanding, marks_of};
use proptest::prelude::*;

use crate::arbitrary_book;
use crate::sample::sample;

fn axis(steps: Option<f64>, weight: f64) -> AxisDifference {
    AxisDifference {
        axis: Axis::Flavour("plum".to_owned()),
        standard: Some(2.0),
        value: steps.map(|steps| 2.0 + steps),
        step: 1.0,
        weight,
        steps,
        u_steps: Some(0.2),
        scatter_steps: Some(0.1),
    }
}

fn difference(axes: Vec<AxisDifference>) -> Difference {
    let distance = overall_distance(axes.iter().map(|axis| (axis.steps, axis.weight)));
    Difference { axes, distance }
}

/// What a lesson calls right, where the mark stands, and what is said agree.
fn agree(difference: &Difference) {
    let speaker = Speaker::without_book();
    let marks = marks_of(difference);
    for (axis, mark) in difference.axes.iter().zip(&marks) {
        let said = speaker.against_standard(axis);
        let taste = axis.taste();
        let what = format!("{axis:?}: {said}, {:?}", mark.standing);
        match mark.standing {
            MarkStanding::NotKnown => {
                assert_eq!((taste, said.as_str()), (None, "not known"), "{what}");
            }
            MarkStanding::Level | MarkStanding::Within => {
                assert_eq!(
                    (taste, said.as_str()),
                    (Some(Taste::Same), "the same"),
                    "{what}"
                );
            }
            MarkStanding::Off => {
                let more = axis.steps.is_some_and(|steps| steps > 0.0);
                let expected = if more { Taste::More } else { Taste::Less };
                assert_eq!(taste, Some(expected), "{what}");
                assert!(
                    said.starts_with(&speaker.taste(expected, &axis.axis)),
                    "{what}"
                );
                assert!(!said.contains(" 1.0 "), "{what}");
                // The words under the level have the same number.
                let number = speaker.steps(axis.steps.unwrap());
                assert!(said.contains(&number), "{what}");
                assert!(mark.short_words(speaker).contains(&number), "{what}");
            }
            MarkStanding::NotCounted => assert!(axis.weight <= 0.0, "{what}"),
        }
    }
    let counted: Vec<Option<Taste>> = difference.counted().map(AxisDifference::taste).collect();
    let level = if counted.iter().flatten().any(|taste| *taste != Taste::Same) {
        Some(false)
    } else if counted.contains(&None) {
        None
    } else {
        Some(true)
    };
    assert_eq!(difference.within_one_step(), level);
}

fn any_steps() -> impl Strategy<Value = Option<f64>> {
    prop_oneof![
        1 => Just(None),
        1 => Just(Some(f64::NAN)),
        2 => prop::sample::select(vec![0.0, LEVEL_STEPS, 1.0, -1.0, 1.0 + 1e-12, -1.04, 1.05]).prop_map(Some),
        8 => (-3.0..3.0_f64).prop_map(Some),
        1 => (-1e6..1e6_f64).prop_map(Some),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_a_lesson_calls_right_is_what_the_level_shows(
        axes in prop::collection::vec((any_steps(), prop::bool::weighted(0.8)), 1..9),
    ) {
        let axes = axes.into_iter().map(|(steps, counts)| axis(steps, f64::from(u8::from(counts))));
        agree(&difference(axes.collect()));
    }
}

/// The books of the folder of samples.
fn books() -> Vec<Book> {
    let files = std::fs::read_dir("sample-books").unwrap();
    let paths = files.map(|file| file.unwrap().path());
    let texts = paths.filter(|path| path.extension().is_some_and(|end| end == "ron"));
    let books = texts.map(|path| parse(&std::fs::read_to_string(path).unwrap()).unwrap().0);
    books.collect()
}

#[test]
fn every_step_of_a_swap_is_judged_by_the_band_and_its_cause_points_the_way_it_went() {
    let book = sample();
    let mut causes = 0;
    for (recipe, replace, with) in [
        ("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
        ("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut"),
    ] {
        let question = Question {
            recipe: RecipeId::new(recipe).unwrap(),
            version: None,
            replace: IngredientId::new(replace).unwrap(),
            with: IngredientId::new(with).unwrap(),
            adjust: None,
        };
        let answer = answer(&book, &question).unwrap();
        let steps = walk(&book, &answer, &answer.suggestions[0]);
        for step in &steps {
            agree(&step.difference);
            for axis in step.difference.counted() {
                let Some(driver) = driver(&answer.standard, &step.balance, axis) else {
                    continue;
                };
                let amount = |side: Option<f64>| side.unwrap_or(0.0);
                let before = amount(driver.before.as_ref().map(|(_, amount)| *amount));
                let now = amount(driver.now.as_ref().map(|(_, amount)| *amount));
                assert!(
                    (now - before) * axis.steps.unwrap() > 0.0,
                    "{axis:?} {driver:?}"
                );
                if step.does == WalkMove::PlainSwap && axis.axis == Axis::Sweetness {
                    let names = [&driver.before, &driver.now].map(|side| side.clone().unwrap().0);
                    assert_eq!(names, [question.replace.clone(), question.with.clone()]);
                    causes += 1;
                }
            }
        }
    }
    assert_eq!(causes, 2, "sugar is behind the sweetness of another powder");
}

/// Bars of the lines and of the rest fill the whole and never more.
fn bars_hold(balance: &Balance, what: &str) {
    for lens in Lens::ALL {
        let whole = balance.whole_through(lens);
        let lines = balance.lines.iter().filter_map(|line| line.through(lens));
        let parts: Vec<f64> = lines.chain(balance.rest_through(lens)).collect();
        // Figures of a book at random may be beyond all numbers.
        if !parts.iter().sum::<f64>().is_finite() {
            continue;
        }
        assert!(
            whole.is_finite() && whole >= 0.0,
            "{what} {lens:?}: {whole}"
        );
        let most = parts.iter().map(|part| part.abs()).fold(0.0, f64::max);
        assert!(
            most <= whole * (1.0 + 1e-9) + 1e-9,
            "{what} {lens:?}: {most} of {whole}"
        );
        let brought: f64 = parts.iter().filter(|part| **part > 0.0).sum();
        assert!(brought <= whole * (1.0 + 1e-9) + 1e-9, "{what} {lens:?}");
        if parts.iter().all(|part| *part >= 0.0) {
            assert!(
                (brought - whole).abs() < 1e-9 * (1.0 + whole),
                "{what} {lens:?}: {brought} of {whole}"
            );
        }
    }
}

#[test]
fn a_bar_is_a_share_of_the_whole_through_every_lens() {
    let mut seen = 0;
    let random = (0..60).map(arbitrary_book::book);
    for book in books().into_iter().chain(random) {
        for recipe in &book.recipes {
            let versions = recipe.versions.iter().map(|version| Some(&version.id));
            for version in std::iter::once(None).chain(versions) {
                let Some(balance) = balance_version(&book, recipe, version) else {
                    continue;
                };
                bars_hold(&balance, recipe.id.as_str());
                seen += 1;
            }
        }
    }
    assert!(seen > 40, "{seen}");
}

#[test]
fn a_hair_beyond_a_step_is_never_said_to_be_one_step() {
    for code in ["en", "de", "fr"] {
        let speaker = Speaker::without_book().in_language(Language::from_code(code).unwrap());
        let said = speaker.against_standard(&axis(Some(1.02), 1.0));
        assert!(said.contains("1.02") || said.contains("1,02"), "{said}");
    }
}
