//! What the screen of a swap stands on: its steps, amounts set by hand, hot from iced, and searches that are given up.

use evensip::balance::{Measurand, difference};
use evensip::book::{Axis, Book, IngredientId, RecipeId, VesselId};
use evensip::swap::{
    Answer, CapKind, Demands, Impossible, Obstacle, Question, Reason, Unadaptable, WalkMove, Watch,
    answer, answer_watched, answer_with, everywhere_watched, hot, walk,
};

use crate::sample::{balance_of, figure, sample};

fn question(recipe: &str, replace: &str, with: &str) -> Question {
    Question {
        recipe: RecipeId::new(recipe).unwrap(),
        version: None,
        replace: IngredientId::new(replace).unwrap(),
        with: IngredientId::new(with).unwrap(),
        adjust: None,
    }
}

fn chestnut(book: &Book) -> Answer {
    answer(
        book,
        &question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap()
}

#[test]
fn a_walk_goes_from_the_standard_over_the_plain_swap_one_line_at_a_time_to_the_suggestion() {
    let book = sample();
    let answer = chestnut(&book);
    for suggestion in &answer.suggestions {
        let steps = walk(&book, &answer, suggestion);
        assert_eq!(steps[0].does, WalkMove::Standard);
        assert_eq!(steps[0].difference.distance, Some(0.0));
        assert_eq!(steps[1].does, WalkMove::PlainSwap);
        assert_eq!(steps[1].difference, answer.plain_difference);
        for pair in steps[1..].windows(2) {
            let (before, after) = (&pair[0].balance.resolved, &pair[1].balance.resolved);
            let differing = after
                .lines()
                .filter(|line| before.line(&line.id) != Some(line))
                .count()
                + before
                    .lines()
                    .filter(|line| after.line(&line.id).is_none())
                    .count();
            assert_eq!(differing, 1, "one line moves in one step");
        }
        let last = steps.last().unwrap();
        assert_eq!(last.balance.resolved, suggestion.balance.resolved);
        assert_eq!(last.difference, suggestion.difference);
    }
}

#[test]
fn the_amounts_of_a_suggestion_set_by_hand_are_the_suggestion() {
    let book = sample();
    let answer = chestnut(&book);
    for suggestion in &answer.suggestions {
        let nearby = answer.nearby(&book, &suggestion.point).unwrap();
        assert_eq!(nearby.balance, suggestion.balance);
        assert_eq!(nearby.changes, suggestion.changes);
        assert_eq!(nearby.obstacle, None);
    }
    assert_eq!(answer.nearby(&book, &[1]), None, "steps of another answer");
}

#[test]
fn amounts_by_hand_that_break_what_is_asked_say_so() {
    let book = sample();
    let demands = Demands {
        most_sugar_per_100_ml: Some(6.0),
        ..Demands::default()
    };
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let answer = answer_with(&book, &asked, &demands).unwrap();
    let mut point = answer.suggestions[0].point.clone();
    let sweetener = answer
        .adjustable
        .iter()
        .position(|one| one.line.id.as_str() == "sweetener")
        .unwrap();
    point[sweetener] += 12;
    let nearby = answer.nearby(&book, &point).unwrap();
    let obstacle = nearby.obstacle.unwrap();
    assert!(
        matches!(
            obstacle.obstacle,
            Obstacle::Cap { kind: CapKind::Sugar, most: 6.0, found } if found > 6.0
        ),
        "{obstacle:?}"
    );
}

#[test]
fn a_cup_that_is_to_be_filled_less_is_filled_less_and_an_empty_one_is_refused() {
    let book = sample();
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let standard = figure(&balance_of(&book, "hazelthwaite", None), Measurand::Fill);
    let with = |most| {
        let demands = Demands {
            most_fill: Some(most),
            ..Demands::default()
        };
        answer_with(&book, &asked, &demands).unwrap()
    };
    let less = with(standard - 2.0);
    assert!(!less.suggestions.is_empty(), "{:?}", less.reasons);
    for suggestion in &less.suggestions {
        assert!(figure(&suggestion.balance, Measurand::Fill) <= standard - 2.0 + 0.02);
    }
    let none = with(1.0);
    assert!(none.suggestions.is_empty());
    assert!(
        matches!(
            none.reasons[0],
            Reason::Impossible(Impossible::LeastOverfills { fill, room: 1.0 }) if fill > 1.0
        ),
        "{:?}",
        none.reasons
    );
}

#[test]
fn a_search_that_is_given_up_ends_early() {
    let book = sample();
    let watch = Watch::default();
    watch.stop();
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let answer = answer_watched(&book, &asked, &Demands::default(), &watch).unwrap();
    assert_eq!(watch.boxes(), 0);
    assert!(!answer.proven_optimal);
    let (old, new) = (asked.replace, asked.with);
    let list = everywhere_watched(&book, &old, &new, &Demands::default(), &watch);
    assert!(list.is_empty());
}

#[test]
fn progress_counts_every_recipe_of_a_list() {
    let book = sample();
    let watch = Watch::default();
    let old = IngredientId::new("tambrel-chestnut").unwrap();
    let new = IngredientId::new("ketterby-chestnut").unwrap();
    let list = everywhere_watched(&book, &old, &new, &Demands::default(), &watch);
    let count = u32::try_from(list.len()).unwrap();
    assert_eq!(watch.parts(), Some((count, count)));
}

#[test]
fn an_iced_drink_is_made_hot_within_the_window_and_keeps_its_strength() {
    let book = sample();
    let recipe = book.recipe(&RecipeId::new("copper-plum").unwrap()).unwrap();
    let cup = VesselId::new("paper-cup-500").unwrap();
    let drink = hot(&book, recipe, None, Some(&cup), &Watch::default())
        .unwrap()
        .unwrap();
    assert!(!drink.balance.iced);
    let window = book.settings.hot_window;
    let served = figure(&drink.balance, Measurand::ServingTemperature);
    assert!((window.from..=window.to).contains(&served), "{served} °C");
    let of = |axis: Axis| {
        let found = drink.difference.axes.iter().find(|one| one.axis == axis);
        found.and_then(|one| one.steps).unwrap()
    };
    for axis in [Axis::Sweetness, Axis::Flavour("plum".to_owned())] {
        assert!(
            of(axis.clone()).abs() <= 1.0,
            "{axis:?}: {}",
            of(axis.clone())
        );
    }
    // A hot drink has nothing to be made hot.
    let hazelthwaite = book
        .recipe(&RecipeId::new("hazelthwaite").unwrap())
        .unwrap();
    let refused = hot(&book, hazelthwaite, None, None, &Watch::default()).unwrap();
    assert_eq!(refused.unwrap_err(), Unadaptable::NoIce);
}

#[test]
fn a_syrup_rich_in_fructose_is_right_hot_and_wrong_iced() {
    // The sample's demonstration: one press of Ketterby pear for one of Tambrel pear and 10 ml more water, hot and iced alike.
    // 55 % of that syrup's sugar is fructose, as sweet as sucrose at 58 °C and 1.44 times as sweet at 5 °C.
    let book = sample();
    let sweeter = |from: Option<&str>, to: &str| {
        let (from, to) = (
            balance_of(&book, "hob-and-ember", from),
            balance_of(&book, "hob-and-ember", Some(to)),
        );
        let axes = difference(&book.settings, &from, &to).axes;
        let sweetness = axes.iter().find(|axis| axis.axis == Axis::Sweetness);
        sweetness.and_then(|axis| axis.steps).unwrap()
    };
    let (hot, iced) = (
        sweeter(None, "ketterby-pear"),
        sweeter(Some("iced"), "iced-ketterby-pear"),
    );
    assert!(hot.abs() < 1.0, "hot: {hot} steps");
    assert!(iced > 1.0, "iced: {iced} steps");
}
