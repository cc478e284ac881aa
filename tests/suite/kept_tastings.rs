//! Tastings that a book keeps: what is wrong with them, what they say of ingredients, and what taking that over does.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::sync::Arc;

use egui::{Key, Modifiers};
use evensip::balance::{Measurand, balance_version, standard_balance};
use evensip::book::{
    Amount, Axis, Book, Figure, FindingKind, IngredientId, MeasureId, Nutrient, RecipeId,
    TasteNote, TastedCup, TastedFactor, TastedFigure, Tasting, TastingId, TastingOutcome,
    Unfinished, VersionId, findings,
};
use evensip::book_file::{built_in_book, load, parse, write};
use evensip::edit::{Edit, EditError, Focus, History, apply, apply_all, apply_soundly};
use evensip::say::Speaker;
use evensip::tasting::{Factor, Proposal, SetAside, effects, learned};
use evensip::ui::Area;
use serde_json::Value;

use crate::at_the_window::{
    TALL, Window, book, choose, click, go, press, retype, says, show, type_into, type_on, undo,
    window_of,
};
use crate::commands::{SAMPLE, evensip};

fn ingredient(id: &str) -> IngredientId {
    IngredientId::new(id).unwrap()
}

fn chestnut() -> TastedFactor {
    TastedFactor::Flavour("chestnut".to_owned())
}

/// So much of some ingredients in hot water.
fn mixed(book: &Book, parts: &[(&str, f64)]) -> TastedCup {
    let parts = parts.iter().map(|(id, grams)| (*id, Amount::Grams(*grams)));
    let water = ("water", Amount::Millilitres(150.0));
    let parts = parts.chain([water]);
    TastedCup::mixed(book, parts.map(|(id, amount)| (ingredient(id), amount)))
}

fn tasting(id: &str, axis: Axis, cups: [TastedCup; 2], outcome: TastingOutcome) -> Tasting {
    Tasting {
        cups: cups.into(),
        axis: Some(axis),
        outcome,
        counts: true,
        ..Tasting::new(TastingId::new(id).unwrap(), "2026-11-20".to_owned())
    }
}

/// The sample book in which the Ketterby powder at 15 g was matched with the Tambrel one at 20 g.
fn with_matched_powders() -> Book {
    let book = built_in_book().unwrap();
    let cups = [
        mixed(&book, &[("tambrel-chestnut", 20.0)]),
        mixed(&book, &[("ketterby-chestnut", 15.0)]),
    ];
    let axis = Axis::Flavour("chestnut".to_owned());
    let matched = tasting("matched", axis, cups, TastingOutcome::Matched { people: 4 });
    apply_soundly(&book, [&Edit::PutTasting(matched)]).unwrap()
}

fn proposal(book: &Book, id: &str, what: &TastedFactor) -> Proposal {
    let found = learned(book);
    assert!(found.settled);
    let proposal = found.proposal(&ingredient(id), what);
    proposal.unwrap_or_else(|| panic!("{found:?}")).clone()
}

fn take(proposal: &Proposal) -> Edit {
    Edit::TakeTasted {
        ingredient: proposal.factor.ingredient.clone(),
        figure: TastedFigure {
            what: proposal.factor.what.clone(),
            times: proposal.times,
            u: proposal.u,
            date: "2026-11-21".to_owned(),
            by: "Maren".to_owned(),
            reason: String::new(),
            tastings: proposal.tastings.clone(),
        },
    }
}

/// The strength per gram that drinks are worked out with.
fn strength(book: &Book, id: &str) -> (f64, f64) {
    let item = book.ingredient(&ingredient(id)).unwrap();
    let figure = item.strength(&item.composition.flavours[0]);
    (figure.value, figure.standard_uncertainty())
}

#[test]
fn matched_cups_narrow_an_assumed_strength_and_taking_it_over_counts_nothing_twice() {
    let book = with_matched_powders();
    let (_, assumed) = strength(&book, "ketterby-chestnut");
    assert!((assumed - 0.25).abs() < 1e-12);
    let found = proposal(&book, "ketterby-chestnut", &chestnut());
    // Equal tastes at 20 g and 15 g: a third stronger, drawn a little towards the label.
    assert!((1.2..1.34).contains(&found.times), "{found:?}");
    assert!(found.u < 0.2 && found.u > 0.02, "{found:?}");
    assert!((found.before - 0.25).abs() < 1e-12);
    assert!(found.is_news() && found.taken.is_none());
    let first = proposal(&book, "tambrel-chestnut", &chestnut());
    assert!(first.is_reference() && (first.times - 1.0).abs() < 1e-12 && !first.is_news());

    let after = apply_soundly(&book, [&take(&found)]).unwrap();
    let (value, u) = strength(&after, "ketterby-chestnut");
    assert!((value - found.times).abs() < 1e-12 && (u - found.u).abs() < 1e-12);
    // Weighed anew, the same tasting says the same against what is assumed, and nothing is left to be taken over.
    let again = proposal(&after, "ketterby-chestnut", &chestnut());
    assert!((again.times - found.times).abs() < 1e-9 && (again.u - found.u).abs() < 1e-9);
    assert!(again.taken.is_some() && !again.is_news(), "{again:?}");

    let factor = Factor {
        ingredient: ingredient("ketterby-chestnut"),
        what: chestnut(),
    };
    let given_up = Edit::DropTasted {
        ingredient: factor.ingredient.clone(),
        what: chestnut(),
    };
    let back = apply_soundly(&after, [&given_up]).unwrap();
    assert_eq!(
        strength(&back, "ketterby-chestnut"),
        strength(&book, "ketterby-chestnut")
    );
    let moved = effects(&book, &after, &factor);
    assert!(!moved.is_empty());
    assert!(
        moved.iter().all(|effect| effect.taste.steps.unwrap() > 0.5),
        "{moved:?}"
    );
    assert!(
        moved
            .iter()
            .all(|effect| effect.taste.axis == Axis::Flavour("chestnut".into()))
    );
}

/// An approved drink with the ingredient, before and after the figure is taken over.
#[test]
fn what_was_approved_follows_and_one_undo_brings_all_of_it_back() {
    let book = with_matched_powders();
    let recipe = RecipeId::new("hob-and-ember").unwrap();
    let found = book.recipe(&recipe).unwrap();
    let version = found.versions.iter().find(|version| {
        let (lines, _) = evensip::book::resolve(found, Some(&version.id));
        lines
            .lines()
            .any(|line| line.ingredient.as_str() == "ketterby-chestnut")
    });
    let version: VersionId = version.unwrap().id.clone();
    let resolved = evensip::book::resolve(found, Some(&version)).0;
    let approval = evensip::book::Approval {
        version: Some(version.clone()),
        date: "2026-11-20".to_owned(),
        by: "Idris".to_owned(),
        reason: String::new(),
        tasted_at: None,
        resolved,
        tasted_with: None,
    };
    let approve = Edit::Approve {
        recipe: recipe.clone(),
        approval,
    };
    let book = apply(&book, &approve).unwrap();
    let chestnut_of = |book: &Book| {
        let item = book.recipe(&recipe).unwrap();
        let (standard, _) = standard_balance(book, item, Some(&version)).unwrap();
        let axis = Axis::Flavour("chestnut".to_owned());
        standard.axis(&axis).unwrap().value.unwrap()
    };
    let found = proposal(&book, "ketterby-chestnut", &chestnut());
    let mut history = History::new(Arc::new(book.clone()));
    history.perform(vec![take(&found)], Focus::Book).unwrap();
    let ratio = chestnut_of(history.book()) / chestnut_of(&book);
    assert!(
        (ratio - found.times).abs() < 1e-9,
        "{ratio} is not {}",
        found.times
    );
    assert!(evensip::swap::drifted(history.book()).is_empty());
    history.undo();
    assert_eq!(**history.book(), book);
    // A product that changes afterwards leaves the standard where the tasting put it.
    history.redo();
    let taken = history.book().clone();
    let mut other = (**taken.ingredient(&ingredient("ketterby-chestnut")).unwrap()).clone();
    other.composition.flavours[0].per_gram =
        Some(Figure::new(0.5, evensip::book::Evidence::Measured));
    let changed = apply(&taken, &Edit::PutIngredient(other)).unwrap();
    assert!((chestnut_of(&changed) - chestnut_of(&taken)).abs() < 1e-12);
    // And what was tasted was the former product.
    let said = learned(&changed);
    let aside = Err(SetAside::Changed(vec![ingredient("ketterby-chestnut")]));
    assert_eq!(said.tastings[0].likely, aside);
    assert!(said.proposals.is_empty());
}

/// Two syrups of one label; the second is matched at less, so that it must be the sweeter one.
#[test]
fn a_sweeter_syrup_than_its_label_is_found_and_sweetens_drinks_but_adds_no_sugar() {
    let book = built_in_book().unwrap();
    let cups = [
        mixed(&book, &[("sugar-crystals", 20.0)]),
        mixed(&book, &[("tambrel-pear-syrup", 28.0)]),
    ];
    let matched = tasting(
        "sweet",
        Axis::Sweetness,
        cups,
        TastingOutcome::Matched { people: 6 },
    );
    let book = apply_soundly(&book, [&Edit::PutTasting(matched)]).unwrap();
    let found = proposal(&book, "tambrel-pear-syrup", &TastedFactor::Sweetness);
    assert!(found.times > 1.0 && found.u < found.before, "{found:?}");
    let after = apply_soundly(&book, [&take(&found)]).unwrap();
    let drink = |book: &Book| {
        let recipe = book
            .recipe(&RecipeId::new("hob-and-ember").unwrap())
            .unwrap();
        balance_version(book, recipe, None).unwrap()
    };
    let (was, is) = (drink(&book), drink(&after));
    let figure = |balance: &evensip::balance::Balance, of: Measurand| balance.reported(of);
    let sweetness = |balance| figure(balance, Measurand::Sweetness).value.unwrap();
    assert!(sweetness(&is) > sweetness(&was));
    for same in [
        Measurand::TotalSugar,
        Measurand::Mass,
        Measurand::EnergyKj,
        Measurand::ServingTemperature,
    ] {
        let (one, other) = (figure(&was, same).value, figure(&is, same).value);
        assert_eq!(one, other, "{same:?}");
    }
    // As much sweeter as the syrup brings beyond its label, to the last digit.
    let line = |balance: &evensip::balance::Balance| {
        let lens = evensip::balance::Lens::Sweetness;
        let lines = balance.lines.iter();
        let mut of_syrup = lines.filter(|line| line.line.as_str() == "pear");
        of_syrup.next().unwrap().through(lens).unwrap()
    };
    assert!(line(&is) > line(&was));
}

#[test]
fn a_factor_of_one_that_is_as_doubtful_as_the_label_says_what_the_label_says() {
    let book = built_in_book().unwrap();
    let recipe = book
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    let was = balance_version(&book, recipe, None).unwrap();
    let label = evensip::balance::label_sweetness(
        book.ingredient(&ingredient("tambrel-pear-syrup")).unwrap(),
    )
    .unwrap();
    let edit = |times: f64, u: f64| Edit::TakeTasted {
        ingredient: ingredient("tambrel-pear-syrup"),
        figure: TastedFigure {
            what: TastedFactor::Sweetness,
            times,
            u,
            date: "2026-11-21".to_owned(),
            by: String::new(),
            reason: String::new(),
            tastings: Vec::new(),
        },
    };
    let balanced = |edit: &Edit| {
        let after = apply(&book, edit).unwrap();
        let recipe = after.recipe(&recipe.id).unwrap();
        let balance = balance_version(&after, recipe, None).unwrap();
        let sweetness = balance.reported(Measurand::Sweetness);
        (sweetness.value.unwrap(), sweetness.u.unwrap())
    };
    let before = was.reported(Measurand::Sweetness);
    let (same, as_unsure) = balanced(&edit(1.0, label.u / label.value));
    assert!((same - before.value.unwrap()).abs() < 1e-12);
    let (_, sure) = balanced(&edit(1.0, 0.01));
    assert!(sure < as_unsure, "{sure} {as_unsure}");
}

#[test]
fn a_result_against_everything_else_is_shown_and_not_averaged_away() {
    let mut book = with_matched_powders();
    for (at, people) in [("again", 6), ("once-more", 8)] {
        let mut more = book.tastings.iter().next().unwrap().as_ref().clone();
        more.id = TastingId::new(at).unwrap();
        more.outcome = TastingOutcome::Matched { people };
        book = apply_soundly(&book, [&Edit::PutTasting(more)]).unwrap();
    }
    assert!(learned(&book).tastings.iter().all(|one| !one.contradicts));
    let mut against = book.tastings.iter().next().unwrap().as_ref().clone();
    against.id = TastingId::new("against").unwrap();
    against.cups = vec![
        mixed(&book, &[("tambrel-chestnut", 20.0)]),
        mixed(&book, &[("ketterby-chestnut", 40.0)]),
    ];
    against.outcome = TastingOutcome::Matched { people: 6 };
    let book = apply_soundly(&book, [&Edit::PutTasting(against)]).unwrap();
    let found = learned(&book);
    let contradicting: Vec<&str> = found
        .tastings
        .iter()
        .filter(|one| one.contradicts)
        .map(|one| one.tasting.as_str())
        .collect();
    assert!(contradicting.contains(&"against"), "{found:?}");
    let speaker = Speaker::new(&book);
    let said = found
        .tastings
        .iter()
        .filter_map(|one| speaker.weighed_tasting(one));
    let said: Vec<String> = said.collect();
    assert!(
        said.iter()
            .any(|words| words.contains("contradicts everything else")),
        "{said:?}"
    );
}

#[test]
fn what_a_tasting_can_not_say_is_said() {
    let book = built_in_book().unwrap();
    let cups = || {
        [
            mixed(&book, &[("tambrel-chestnut", 20.0)]),
            mixed(&book, &[("ketterby-chestnut", 20.0)]),
        ]
    };
    let pair = TastingOutcome::PairEitherWay {
        people: 6,
        right: 3,
    };
    let aside = |tasting: Tasting| {
        let after = apply(&book, &Edit::PutTasting(tasting)).unwrap();
        let found = learned(&after);
        let weighed = found.tastings.first().cloned();
        (
            weighed.map(|one| one.likely),
            Speaker::new(&after).not_learned(&found).is_some(),
        )
    };
    let of = |axis: Axis| tasting("one", axis, cups(), pair);
    let body = aside(of(Axis::Body)).0.unwrap();
    assert_eq!(body, Err(SetAside::OtherAxis(Axis::Body)));
    let no_axis = Tasting {
        axis: None,
        ..of(Axis::Sweetness)
    };
    assert_eq!(aside(no_axis).0.unwrap(), Err(SetAside::NoAxis));
    let said = Tasting {
        outcome: TastingOutcome::Said,
        ..of(Axis::Sweetness)
    };
    assert_eq!(aside(said).0.unwrap(), Err(SetAside::NothingCounted));
    let same = Tasting {
        cups: vec![cups()[0].clone(), cups()[0].clone()],
        ..of(Axis::Sweetness)
    };
    assert_eq!(aside(same).0.unwrap(), Err(SetAside::NothingDiffers));
    let one_cup = Tasting {
        cups: vec![cups()[0].clone()],
        ..of(Axis::Sweetness)
    };
    assert_eq!(aside(one_cup).0.unwrap(), Err(SetAside::Unfinished));
    let no_flavour = aside(of(Axis::Flavour("smoke".to_owned()))).0.unwrap();
    assert!(no_flavour.is_err(), "{no_flavour:?}");
    let left_out = Tasting {
        counts: false,
        ..of(Axis::Sweetness)
    };
    assert_eq!(aside(left_out), (None, true));
    assert!(aside(of(Axis::Sweetness)).0.unwrap().is_ok());
}

/// A triangle in which nobody found the odd cup bounds the size of a difference, and says nothing of its direction.
#[test]
fn a_triangle_narrows_without_a_direction() {
    let book = built_in_book().unwrap();
    let cups = [
        mixed(&book, &[("tambrel-chestnut", 20.0)]),
        mixed(&book, &[("ketterby-chestnut", 20.0)]),
    ];
    let outcome = TastingOutcome::Triangle {
        people: 24,
        right: 8,
    };
    let axis = Axis::Flavour("chestnut".to_owned());
    let edit = Edit::PutTasting(tasting("triangle", axis, cups, outcome));
    let book = apply_soundly(&book, [&edit]).unwrap();
    let found = proposal(&book, "ketterby-chestnut", &chestnut());
    assert!((found.times - 1.0).abs() < 0.02, "{found:?}");
    assert!(found.u < found.before, "{found:?}");
}

#[test]
fn contradictions_of_an_entry_are_found() {
    let book = built_in_book().unwrap();
    let kinds = |change: &dyn Fn(&mut Tasting)| -> Vec<FindingKind> {
        let cups = [
            mixed(&book, &[("tambrel-chestnut", 20.0)]),
            mixed(&book, &[("ketterby-chestnut", 20.0)]),
        ];
        let outcome = TastingOutcome::Triangle {
            people: 6,
            right: 5,
        };
        let mut entry = tasting("one", Axis::Sweetness, cups, outcome);
        change(&mut entry);
        let mut with = book.clone();
        with.tastings.put(entry);
        let before = findings(&book);
        let mut found = findings(&with);
        found.retain(|finding| !before.contains(finding));
        found.into_iter().map(|finding| finding.kind).collect()
    };
    assert_eq!(kinds(&|_| ()), []);
    assert_eq!(
        kinds(&|entry| entry.outcome = TastingOutcome::Triangle {
            people: 5,
            right: 6
        }),
        [FindingKind::Unfinished(Unfinished::MoreRightThanPeople {
            people: 5,
            right: 6
        })]
    );
    assert_eq!(
        kinds(&|entry| {
            entry.cups.pop();
        }),
        [FindingKind::Unfinished(Unfinished::NotTwoCups { cups: 1 })]
    );
    let note = TasteNote {
        cup: 3,
        ..TasteNote::default()
    };
    assert_eq!(
        kinds(&|entry| entry.notes = vec![note.clone()]),
        [FindingKind::Unfinished(Unfinished::NoSuchCup {
            cup: 3,
            cups: 2
        })]
    );
    assert_eq!(
        kinds(&|entry| entry.people = vec!["AB".to_owned(), "CD".to_owned()]),
        [FindingKind::MoreAnswersThanPeople {
            answers: 6,
            named: 2
        }]
    );
    assert!(matches!(
        kinds(&|entry| entry.date = "last week".to_owned())[..],
        [FindingKind::NoDate { .. }]
    ));
    assert!(matches!(
        kinds(&|entry| entry.outcome = TastingOutcome::About {
            people: 2,
            times: 0.0
        })[..],
        [FindingKind::OutOfRange { .. }]
    ));
    let lost = ingredient("nothing-like-it");
    assert!(matches!(
        kinds(
            &|entry| entry.cups[0] = TastedCup::mixed(&book, [(lost.clone(), Amount::Grams(1.0))])
        )[..],
        [FindingKind::Dangling { .. }]
    ));
    let scoop = Amount::Count(1.0, MeasureId::new("no-scoop").unwrap());
    assert!(matches!(
        kinds(&|entry| entry.cups[0] =
            TastedCup::mixed(&book, [(ingredient("tambrel-chestnut"), scoop.clone())]))[..],
        [FindingKind::Dangling { .. }]
    ));
}

#[test]
fn a_drink_may_go_and_what_was_in_its_cup_may_not() {
    let book = built_in_book().unwrap();
    let recipe = RecipeId::new("hob-and-ember").unwrap();
    let drink = TastedCup::of_drink(&book, &recipe, None).unwrap();
    let outcome = TastingOutcome::PassedAsEqual { people: 2 };
    let cups = [drink.clone(), drink];
    let entry = tasting("of-drink", Axis::Sweetness, cups, outcome);
    let book = apply_soundly(&book, [&Edit::PutTasting(entry)]).unwrap();
    let without = apply_soundly(&book, [&Edit::RemoveRecipe(recipe)]).unwrap();
    let kept = without.tastings.iter().next().unwrap();
    assert!(kept.cups[0].lines.lines().count() > 3);
    let refused = apply_soundly(
        &without,
        [&Edit::RemoveIngredient(ingredient("tambrel-chestnut"))],
    );
    assert!(matches!(refused, Err(EditError::Faulty(..))), "{refused:?}");
    let (read, _) = parse(&write(&without)).unwrap();
    assert_eq!(read, without);
}

#[test]
fn a_tasting_freezes_its_cups() {
    let book = with_matched_powders();
    let mut other = (**book.ingredient(&ingredient("tambrel-chestnut")).unwrap()).clone();
    let sugars = other.composition.get(Nutrient::Sugars).unwrap();
    let less = Figure {
        value: sugars.value / 2.0,
        ..sugars
    };
    other.composition.printed.insert(Nutrient::Sugars, less);
    let after = apply_all(&book, [&Edit::PutIngredient(other)]).unwrap();
    let cup = &after.tastings.iter().next().unwrap().cups[0];
    let then = cup.in_its_book(&after);
    let kept = then.ingredient(&ingredient("tambrel-chestnut")).unwrap();
    assert_eq!(kept.composition.get(Nutrient::Sugars), Some(sugars));
}

fn text(arguments: &[&str]) -> String {
    let output = evensip(arguments);
    let errors = String::from_utf8_lossy(&output.stderr).into_owned();
    assert_eq!(output.status.code(), Some(0), "{arguments:?}: {errors}");
    String::from_utf8(output.stdout).unwrap()
}

fn refused(arguments: &[&str]) -> String {
    let output = evensip(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    String::from_utf8(output.stderr).unwrap()
}

/// A shop's way: a tasting entered, weighed, taken over, given up and deleted.
#[test]
fn the_commands_keep_a_tasting_and_take_over_what_it_says() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    std::fs::copy(SAMPLE, &path).unwrap();
    let book = path.to_str().unwrap();
    let first = "tambrel-chestnut=2 scoops + water=150 ml";
    let second = "ketterby-chestnut=1½ scoops + water=150 ml";
    let add = [
        "tasting",
        "add",
        book,
        "--outcome",
        "matched",
        "--cup",
        first,
        "--cup",
        second,
        "--axis",
        "chestnut",
        "--people",
        "4",
        "--taster",
        "Maren",
        "--taster",
        "Idris",
        "--taster",
        "AB",
        "--taster",
        "CD",
        "--reason",
        "new powder",
        "--date",
        "2026-11-20",
        "--said",
        "Idris/2/chestnut=a little rounder",
    ];
    let said = text(&add);
    assert!(
        said.contains("matched by 4 people") && said.contains("Maren, Idris, AB and CD"),
        "{said}"
    );
    let kept = load(&path).unwrap().book;
    assert_eq!(kept.tastings.len(), 1);
    let listed = text(&["tasting", "list", book]);
    assert!(
        listed.contains("new powder") && listed.contains("a little rounder"),
        "{listed}"
    );
    let weighed: Value =
        serde_json::from_str(&text(&["tasting", "weigh", book, "--json"])).unwrap();
    let proposal = weighed["proposals"]
        .as_array()
        .unwrap()
        .iter()
        .find(|one| one["kind"] == "proposal")
        .unwrap();
    assert_eq!(proposal["arguments"]["ingredient"], "ketterby-chestnut");
    assert!(!proposal["effects"].as_array().unwrap().is_empty());
    let said = text(&["tasting", "weigh", book]);
    assert!(said.contains("times what is stated or assumed"), "{said}");
    let take = [
        "tasting",
        "take-over",
        book,
        "--ingredient",
        "ketterby-chestnut",
        "--flavour",
        "chestnut",
        "--by",
        "Maren",
    ];
    text(&take);
    let taken = load(&path).unwrap().book;
    let item = taken.ingredient(&ingredient("ketterby-chestnut")).unwrap();
    let figure = item.tasted_figure(&chestnut()).unwrap();
    assert_eq!((figure.by.as_str(), figure.tastings.len()), ("Maren", 1));
    text(&[
        "tasting",
        "give-up",
        book,
        "--ingredient",
        "ketterby-chestnut",
        "--flavour",
        "chestnut",
    ]);
    assert!(refused(&["tasting", "remove", book, "no-such-one"]).contains("no tasting"));
    text(&["tasting", "remove", book, "2026-11-20"]);
    let empty = load(&path).unwrap().book;
    assert!(empty.tastings.is_empty());
    assert!(text(&["tasting", "list", book]).contains("no tastings"));
}

#[test]
fn what_can_not_be_entered_is_refused_and_the_book_stays() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    std::fs::copy(SAMPLE, &path).unwrap();
    let before = std::fs::read(&path).unwrap();
    let book = path.to_str().unwrap();
    let add = |more: &[&str]| refused(&[&["tasting", "add", book, "--outcome"], more].concat());
    let words = add(&["triangle", "--people", "5", "--right", "6"]);
    assert!(words.contains('6') && words.contains('5'), "{words}");
    assert!(add(&["triangle", "--people", "5"]).contains("--right"));
    assert!(add(&["about", "--people", "2"]).contains("--times"));
    assert!(add(&["said", "--date", "2999-01-01"]).contains("after today"));
    assert!(!add(&["said", "--cup", "tambrel-chestnut=much"]).is_empty());
    assert!(add(&["said", "--cup", "nothing-like-it"]).contains("no recipe"));
    assert!(add(&["said", "--axis", "chestnutty"]).contains("chestnut"));
    assert!(add(&["said", "--said", "just words"]).contains("PERSON/CUP"));
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

/// On the sheet of a drink, by names and keys alone: a tasting is entered, what it says is taken over at the counter, and undone.
#[test]
fn the_window_keeps_a_tasting_and_leads_to_what_it_says() {
    let mut window = window_of(TALL);
    show(&mut window, "hob-and-ember", Some("ketterby-two"));
    go(&mut window, Area::Recipe);
    click(&mut window, "Enter a tasting");
    let kept = |window: &Window| book(window).tastings.iter().next().cloned().unwrap();
    assert_eq!(kept(&window).cups.len(), 2);
    type_into(&mut window, "Name or initials of a taster", "AB");
    press(&mut window, Modifiers::NONE, Key::Enter);
    type_on(&mut window, "CD");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert_eq!(kept(&window).people, ["AB", "CD"]);
    choose(&mut window, "What was asked about: sweetness", "chestnut");
    choose(
        &mut window,
        "Kind of outcome: nothing counted",
        "cup 2 was matched to cup 1",
    );
    retype(
        &mut window,
        "How many people answered, each counted once",
        "2",
    );
    press(&mut window, Modifiers::NONE, Key::Tab);
    type_into(
        &mut window,
        "What somebody said of a cup",
        "AB 2: a little rounder",
    );
    press(&mut window, Modifiers::NONE, Key::Enter);
    let entered = kept(&window);
    assert_eq!(entered.outcome, TastingOutcome::Matched { people: 2 });
    assert_eq!(
        (entered.notes[0].person.as_str(), entered.notes[0].cup),
        ("AB", 2)
    );
    assert!(says(&window, "a little rounder"));
    assert!(says(&window, "times what is stated or assumed"));
    let leads = "See what it does to the drinks, and take it over for Ketterby chestnut powder";
    click(&mut window, leads);
    assert_eq!(window.state().view().area, Area::Counter);
    assert!(says(&window, "from its standard"));
    click(&mut window, "Take this over");
    let figures = |window: &Window| {
        let book = book(window);
        let item = book.ingredient(&ingredient("ketterby-chestnut")).unwrap();
        item.tasted.clone()
    };
    assert_eq!(figures(&window)[0].by, "AB, CD");
    assert!(says(&window, "Taken over on"));
    let label = window.state().workbench().undo_label().unwrap();
    assert!(label.contains("take over what tastings show"), "{label}");
    undo(&mut window);
    assert!(figures(&window).is_empty());
}
