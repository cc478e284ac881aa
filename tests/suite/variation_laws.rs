//! Laws of what is made of a drink: a level of sugar, another size, ice. What is promised is what the kept version shows.

use std::collections::BTreeSet;

use evensip::balance::{
    Balance, Difference, Measurand, balance_version, difference, room_of, standard_balance,
};
use evensip::book::{
    Amount, Axis, Book, Entry, MeasureKind, Recipe, RecipeId, Role, Stage, VersionId, VesselId,
    VesselKind, resolve,
};
use evensip::book_file::parse;
use evensip::edit::apply;
use evensip::say::Speaker;
use evensip::swap::{
    Adapted, MatrixIce, Unadaptable, Watch, iced, ladder, matrix, resize, with_ice_level,
};

use crate::sample::{figure, sample};

/// A shop that serves a hot drink with a pump and a spoon, and an iced large one at half its sweetness.
pub(crate) fn iced_large() -> Book {
    let path =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/instances/iced-large.ron");
    let text = std::fs::read_to_string(path).unwrap();
    let (book, findings) = parse(&text).unwrap();
    let errors: Vec<_> = findings
        .iter()
        .filter(|found| found.severity == evensip::book::Severity::Error)
        .collect();
    assert!(errors.is_empty(), "{errors:?}");
    book
}

fn lantern(book: &Book) -> Recipe {
    let id = RecipeId::new("barley-lantern").unwrap();
    book.recipe(&id).unwrap().as_ref().clone()
}

fn vessel(id: &str) -> VesselId {
    VesselId::new(id).unwrap()
}

fn version(id: &str) -> VersionId {
    VersionId::new(id).unwrap()
}

fn steps(difference: &Difference, axis: &Axis) -> f64 {
    let mut axes = difference.axes.iter();
    let found = axes.find(|found| found.axis == *axis);
    found.and_then(|found| found.steps).unwrap()
}

/// The drink as a version of the book.
fn kept(
    book: &Book,
    recipe: &Recipe,
    from: Option<&VersionId>,
    drink: &Adapted,
) -> (Book, VersionId) {
    let (edit, id) = drink.accept(recipe, from, "kept");
    (apply(book, &edit).unwrap(), id)
}

/// What a kept version shows is what was promised: the figures, and how far it is from what it is held to.
fn assert_kept_as_promised(
    book: &Book,
    recipe: &Recipe,
    from: Option<&VersionId>,
    drink: &Adapted,
) {
    let (after, id) = kept(book, recipe, from, drink);
    let now = after.recipe(&recipe.id).unwrap();
    let shown = balance_version(&after, now, Some(&id)).unwrap();
    assert_eq!(shown.figures, drink.balance.figures, "{}", recipe.id);
    assert_eq!(shown.resolved, drink.balance.resolved);
    let Some((standard, _)) = standard_balance(&after, now, Some(&id)) else {
        return;
    };
    let shown = difference(&after.settings, &standard, &shown);
    assert_eq!(
        shown, drink.difference,
        "{} {:?}",
        recipe.id, drink.adaptation
    );
}

/// The recipe and its first versions.
fn first_versions(recipe: &Recipe) -> Vec<Option<&VersionId>> {
    let versions = recipe.versions.iter().map(|version| Some(&version.id));
    std::iter::once(None).chain(versions).take(2).collect()
}

fn cups(book: &Book) -> Vec<VesselId> {
    let cups = book.vessels.iter();
    cups.filter(|vessel| vessel.kind == VesselKind::Cup)
        .map(|vessel| vessel.id.clone())
        .collect()
}

#[test]
fn what_is_promised_is_what_the_kept_version_shows() {
    let mut checked = 0;
    for book in [iced_large(), sample()] {
        for recipe in book
            .recipes
            .iter()
            .filter(|recipe| recipe.cup.is_some())
            .take(5)
        {
            for from in first_versions(recipe) {
                let mut drinks = Vec::new();
                for cup in cups(&book).iter().take(2) {
                    drinks.extend(resize(&book, recipe, from, cup));
                }
                drinks.extend(iced(&book, recipe, from, None));
                drinks.extend(
                    [0.0, 50.0]
                        .into_iter()
                        .filter_map(|percent| with_ice_level(&book, recipe, from, percent)),
                );
                let levels = book.settings.sugar_levels();
                let found = ladder(&book, recipe, from, &levels).unwrap();
                for rung in found.rungs {
                    drinks.extend(rung.offers.into_iter().map(|offer| Ok(offer.drink)));
                    drinks.push(rung.drink);
                }
                for drink in drinks.into_iter().filter_map(Result::ok) {
                    assert_kept_as_promised(&book, recipe, from, &drink);
                    checked += 1;
                }
            }
        }
    }
    assert!(checked > 40, "{checked}");
}

#[test]
fn a_larger_cup_of_the_half_sweet_version_stays_half_sweet() {
    let book = iced_large();
    let recipe = lantern(&book);
    let half = version("half-sugar");
    let found = resize(&book, &recipe, Some(&half), &vessel("paper-700"));
    let large = found.unwrap().unwrap();
    assert_eq!(large.balance.resolved.sugar_level, Some(50.0));
    let (small, full) = (
        balance_version(&book, &recipe, Some(&half)).unwrap(),
        balance_version(&book, &recipe, None).unwrap(),
    );
    let sweetness = |balance: &Balance| figure(balance, Measurand::Sweetness);
    let (large, small, full) = (
        sweetness(&large.balance),
        sweetness(&small),
        sweetness(&full),
    );
    assert!(
        (large - small).abs() < 0.25 * (full - small),
        "{large} against {small} of {full}"
    );
}

#[test]
fn a_large_cup_is_not_told_to_be_too_large() {
    let book = iced_large();
    let recipe = lantern(&book);
    let large = resize(&book, &recipe, None, &vessel("paper-700"))
        .unwrap()
        .unwrap();
    let (after, id) = kept(&book, &recipe, None, &large);
    let recipe = after.recipe(&recipe.id).unwrap();
    let (standard, _) = standard_balance(&after, recipe, Some(&id)).unwrap();
    let shown = balance_version(&after, recipe, Some(&id)).unwrap();
    let difference = difference(&after.settings, &standard, &shown);
    assert!(steps(&difference, &Axis::Volume).abs() <= 1.0);
    assert!(figure(&shown, Measurand::Volume) > 1.3 * figure(&standard, Measurand::Volume));
}

#[test]
fn an_iced_drink_takes_the_ice_scoop_leaves_ice_and_fills_its_cup() {
    for left in [None, Some(5.0), Some(30.0)] {
        let mut book = iced_large();
        book.settings.ice_left = left;
        let recipe = lantern(&book);
        let mut volumes = Vec::new();
        for cup in ["clear-500", "clear-700"] {
            let drink = iced(&book, &recipe, None, Some(&vessel(cup))).unwrap();
            let drink = drink.unwrap_or_else(|reason| {
                panic!(
                    "{left:?} {cup}: {}",
                    Speaker::new(&book).unadaptable(&reason)
                )
            });
            let lines: Vec<_> = drink.balance.resolved.lines().collect();
            let ice = lines.iter().find(|line| line.role == Role::Ice).unwrap();
            let Amount::Count(_, measure) = &ice.amount else {
                panic!("{:?}", ice.amount);
            };
            assert_eq!(book.measure(measure).unwrap().kind, MeasureKind::IceScoop);
            let capacity = book.vessel(&vessel(cup)).unwrap().capacity;
            let wanted = book.settings.ice_left_in(capacity);
            let found = figure(&drink.balance, Measurand::IceLeft);
            assert!(found >= wanted, "{found} of {wanted}");
            let room = room_of(&book, Some(&vessel(cup))).unwrap();
            let filled = figure(&drink.balance, Measurand::Fill) / 100.0 * capacity;
            assert!(filled > 0.92 * room, "{filled} of {room} in {cup}");
            volumes.push(figure(&drink.balance, Measurand::Volume));
            assert!(steps(&drink.difference, &Axis::Sweetness).abs() <= 1.0);
        }
        assert!(volumes[1] > 1.25 * volumes[0], "{volumes:?}");
    }
}

/// Ice goes in before what is done with all that is mixed: "stir, pour" comes last.
#[test]
fn the_order_of_an_iced_drink_is_how_it_is_made() {
    let book = iced_large();
    let recipe = lantern(&book);
    let drink = iced(&book, &recipe, None, None).unwrap().unwrap();
    let entries = &drink.balance.resolved.entries;
    let ice = entries
        .iter()
        .position(|entry| entry.line().is_some_and(|line| line.role == Role::Ice))
        .unwrap();
    assert!(matches!(entries.last(), Some(Entry::Instruction(_))));
    assert!(
        entries[ice + 1..]
            .iter()
            .all(|entry| entry.line().is_none_or(|line| line.stage != Stage::Mixed))
    );
}

#[test]
fn nobody_waits_no_time_for_what_never_comes() {
    for book in [iced_large(), sample()] {
        for recipe in &book.recipes {
            for from in first_versions(recipe) {
                let balance = balance_version(&book, recipe, from).unwrap();
                let served = balance.figures.get(Measurand::ServingTemperature);
                let minutes = balance.figures.get(Measurand::MinutesToDrinkable);
                if served.is_some_and(|served| served > balance.drinking_temperature) {
                    assert!(minutes.is_none_or(|minutes| minutes > 0.0), "{}", recipe.id);
                }
            }
        }
    }
}

#[test]
fn each_level_that_is_had_has_sweeteners_of_its_own() {
    for book in [iced_large(), sample()] {
        for recipe in book.recipes.iter().filter(|recipe| recipe.cup.is_some()) {
            let levels = book.settings.sugar_levels();
            let found = ladder(&book, recipe, None, &levels).unwrap();
            let had: Vec<(f64, &Adapted)> = found
                .rungs
                .iter()
                .filter_map(|rung| Some((rung.level.percent, rung.drink.as_ref().ok()?)))
                .collect();
            for pair in had.windows(2) {
                let sugar = |drink: &Adapted| figure(&drink.balance, Measurand::Sweetness);
                assert!(
                    sugar(pair[0].1) > sugar(pair[1].1),
                    "{}: {} % and {} %",
                    recipe.id,
                    pair[0].0,
                    pair[1].0
                );
                // Nothing but what the sweetener leaves is made up.
                assert!(steps(&pair[1].1.difference, &Axis::Volume).abs() <= 1.5);
            }
            for rung in &found.rungs {
                if let Err(Unadaptable::NotInWholeMeasures { sweeteners }) = &rung.drink {
                    assert!(!sweeteners.is_empty());
                }
                for offer in &rung.offers {
                    assert!(steps(&offer.drink.difference, &Axis::Sweetness).abs() <= 1.0);
                }
            }
        }
    }
}

#[test]
fn a_level_between_two_presses_is_offered_by_other_means() {
    let book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let recipe = book.recipe(&id).unwrap();
    let found = ladder(&book, recipe, None, &book.settings.sugar_levels()).unwrap();
    let half = found
        .rungs
        .iter()
        .find(|rung| (rung.level.percent - 50.0).abs() < 1e-9);
    let half = half.unwrap();
    assert!(matches!(
        half.drink,
        Err(Unadaptable::NotInWholeMeasures { .. })
    ));
    assert!(!half.offers.is_empty());
}

#[test]
fn the_matrix_holds_every_level_in_every_size_with_and_without_ice() {
    let book = iced_large();
    let recipe = lantern(&book);
    let found = matrix(&book, &recipe, None, &Watch::default()).unwrap();
    assert_eq!(found.levels.len(), 5);
    let iced = found
        .columns
        .iter()
        .filter(|column| column.ice == MatrixIce::Iced);
    let own = found
        .columns
        .iter()
        .find(|column| column.ice == MatrixIce::AsItStands && column.cup == recipe.cup);
    assert!(own.is_some());
    let mut cells = 0;
    for column in &found.columns {
        let Ok(rungs) = &column.rungs else { continue };
        for drink in rungs.iter().filter_map(|rung| rung.drink.as_ref().ok()) {
            assert_kept_as_promised(&book, &recipe, None, drink);
            cells += 1;
        }
    }
    assert!(cells >= 6, "{cells}");
    let large = iced
        .filter(|column| column.cup == Some(vessel("clear-700")))
        .flat_map(|column| column.rungs.iter().flatten());
    let half = large
        .filter(|rung| (rung.level.percent - 50.0).abs() < 1e-9)
        .flat_map(|rung| {
            let offers = rung.offers.iter().map(|offer| &offer.drink);
            rung.drink.as_ref().ok().into_iter().chain(offers)
        });
    let half: Vec<&Adapted> = half.collect();
    assert!(!half.is_empty());
    for drink in half {
        assert_eq!(drink.balance.resolved.sugar_level, Some(50.0));
        assert!(figure(&drink.balance, Measurand::IceLeft) > 0.0);
    }
}

/// A shop that serves no iced drink yet has every cup free, a new one among them, for hot drinks and for iced ones.
#[test]
fn a_shop_of_hot_drinks_alone_is_shown_all_of_its_cups() {
    let mut book = iced_large();
    let all: Vec<RecipeId> = book
        .recipes
        .iter()
        .map(|recipe| recipe.id.clone())
        .collect();
    for id in all {
        let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
        recipe.versions.clear();
        recipe.approvals.clear();
        let is_ice = |entry: &Entry| entry.line().is_some_and(|line| line.role == Role::Ice);
        recipe.entries.retain(|entry| !is_ice(entry));
        book.recipes.put(recipe);
    }
    let recipe = lantern(&book);
    let found = matrix(&book, &recipe, None, &Watch::default()).unwrap();
    for ice in [MatrixIce::AsItStands, MatrixIce::Iced] {
        let columns = found.columns.iter().filter(|column| column.ice == ice);
        let shown: BTreeSet<_> = columns.filter_map(|column| column.cup.clone()).collect();
        let all: BTreeSet<_> = cups(&book).into_iter().collect();
        assert_eq!(shown, all, "{ice:?}");
    }
}

/// A drink that can't be made at another level of sugar is made at its own, in every size.
#[test]
fn a_drink_without_levels_has_one_row_in_the_matrix() {
    let mut seen = Vec::new();
    for fault in ["not known", "fills", "none"] {
        let mut book = iced_large();
        for larger in ["paper-700", "clear-700"] {
            book.vessels.remove(&vessel(larger));
        }
        let mut recipe = lantern(&book);
        let sweeteners: Vec<_> = recipe
            .entries
            .iter_mut()
            .filter_map(|entry| match entry {
                Entry::Line(line) if line.role == Role::Sweetener => Some(line),
                _ => None,
            })
            .collect();
        assert!(!sweeteners.is_empty());
        for line in sweeteners {
            match fault {
                "not known" => {
                    let mut item = book.ingredient(&line.ingredient).unwrap().as_ref().clone();
                    item.composition = evensip::book::Composition::default();
                    book.ingredients.put(item);
                }
                "fills" => line.amount = Amount::FillToRim,
                _ => line.role = Role::Flavour,
            }
        }
        recipe.approvals.clear();
        book.recipes.put(recipe.clone());
        let levels = book.settings.sugar_levels();
        let ladder = ladder(&book, &recipe, None, &levels).unwrap();
        assert!(ladder.rungs.is_empty(), "{fault}");
        seen.push(std::mem::discriminant(&ladder.reasons[0]));
        let found = matrix(&book, &recipe, None, &Watch::default()).unwrap();
        assert_eq!(found.levels.len(), 1, "{fault}");
        let rungs = |rungs: &Vec<evensip::swap::Rung>| rungs.len() == 1;
        let mut columns = found.columns.iter();
        assert!(
            columns.all(|column| column.rungs.as_ref().is_ok_and(rungs) || column.rungs.is_err())
        );
    }
    seen.dedup();
    assert_eq!(seen.len(), 3, "each for a reason of its own");
}

#[test]
fn the_demo_of_the_iced_large_half_sweet_drink_is_held_to_its_own_size_ice_and_level() {
    let book = iced_large();
    let recipe = lantern(&book);
    let id = version("iced-large-half");
    let (lines, findings) = resolve(&recipe, Some(&id));
    assert!(findings.is_empty(), "{findings:?}");
    assert_eq!(lines.sugar_level, Some(50.0));
    let (standard, _) = standard_balance(&book, &recipe, Some(&id)).unwrap();
    let own = figure(&standard, Measurand::Volume);
    assert!(standard.aim_on(&Axis::Volume).unwrap() > 1.3 * own);
    let full = figure(&standard, Measurand::Sweetness);
    assert!(standard.aim_on(&Axis::Sweetness).unwrap() < 0.95 * full);
    let balance = balance_version(&book, &recipe, Some(&id)).unwrap();
    assert!(figure(&balance, Measurand::IceLeft) > 0.0);
}
