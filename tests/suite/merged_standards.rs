//! Two hands change the figures of one product and approve drinks with them: the merged book has every standard as it was tasted.

use evensip::book::{
    Amount, Approval, Book, Entry, Evidence, Figure, Form, Ingredient, IngredientId, ItemId, Line,
    LineId, Measure, MeasureId, MeasureKind, Nominal, Nutrient, Recipe, RecipeId, Role, Side,
    Stage, merge, resolve,
};
use evensip::edit::{Edit, apply};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;

const POWDERS: [&str; 2] = ["barley", "chestnut"];
const DRINKS: [&str; 3] = ["lantern", "mill", "lamp"];

fn id(name: &str) -> IngredientId {
    IngredientId::new(name).unwrap()
}

fn recipe_id(name: &str) -> RecipeId {
    RecipeId::new(name).unwrap()
}

/// Three drinks of two powders by the scoop.
fn shop() -> Book {
    let mut book = Book::default();
    let scoop = MeasureId::new("scoop").unwrap();
    book.measures.put(Measure {
        nominal: Some(Nominal::Volume(15.0)),
        ..Measure::new(scoop.clone(), "scoop".to_owned(), MeasureKind::Scoop)
    });
    for name in POWDERS {
        let mut item = Ingredient::new(id(name), name.to_owned());
        item.form = Form::Powder;
        let sugars = Figure::new(50.0, Evidence::Label);
        item.composition.state(Nutrient::Sugars, sugars);
        book.ingredients.put(item);
    }
    for (at, name) in DRINKS.into_iter().enumerate() {
        let line = |powder: &str| {
            Entry::Line(Line {
                id: LineId::new(powder).unwrap(),
                ingredient: id(powder),
                amount: Amount::Count(2.0, scoop.clone()),
                temperature: None,
                role: Role::Flavour,
                stage: Stage::Mixed,
                carried: None,
                note: String::new(),
            })
        };
        book.recipes.put(Recipe {
            // The first has one of them, the last both.
            entries: POWDERS[..=at / 2]
                .iter()
                .map(|powder| line(powder))
                .collect(),
            ..Recipe::new(recipe_id(name), name.to_owned())
        });
    }
    book
}

fn with(book: &Book, edits: &[Edit]) -> Book {
    edits
        .iter()
        .fold(book.clone(), |book, edit| apply(&book, edit).unwrap())
}

fn powder(book: &Book, name: &str, change: impl FnOnce(&mut Ingredient)) -> Edit {
    let mut item = book.ingredient(&id(name)).unwrap().as_ref().clone();
    change(&mut item);
    Edit::PutIngredient(item)
}

fn sugars(book: &Book, name: &str, value: f64) -> Edit {
    let figure = Figure::new(value, Evidence::Label);
    powder(book, name, |item| {
        item.composition.state(Nutrient::Sugars, figure);
    })
}

fn heaviness(book: &Book, name: &str, value: f64) -> Edit {
    let figure = Figure::new(value, Evidence::Label);
    powder(book, name, |item| item.bulk_density = Some(figure))
}

fn approve(book: &Book, name: &str, by: &str) -> Edit {
    let (resolved, _) = resolve(book.recipe(&recipe_id(name)).unwrap(), None);
    Edit::Approve {
        recipe: recipe_id(name),
        approval: Approval {
            version: None,
            date: "2026-11-30".to_owned(),
            by: by.to_owned(),
            reason: String::new(),
            tasted_at: None,
            resolved,
            tasted_with: None,
        },
    }
}

/// What a hand does.
fn some_edit(dice: &mut Dice, book: &Book, by: &str) -> Edit {
    let name = dice.pick(&POWDERS);
    match dice.below(6) {
        0 | 1 => sugars(book, name, 40.0 + dice.below(9) as f64),
        2 => heaviness(book, name, 0.4 + dice.below(4) as f64 / 10.0),
        3 => {
            let scoop = MeasureId::new("scoop").unwrap();
            let mut scoop = book.measure(&scoop).unwrap().as_ref().clone();
            scoop.nominal = Some(Nominal::Volume(14.0 + dice.below(4) as f64));
            Edit::PutMeasure(scoop)
        }
        _ => approve(
            book,
            dice.pick(&DRINKS),
            &format!("{by} {}", dice.below(1_000_000)),
        ),
    }
}

/// What an approved drink was tasted with: sugars and weights of its powders, and the scoop.
fn tasted(book: &Book, approval: &Approval) -> Vec<(Option<f64>, Option<f64>, Option<Nominal>)> {
    let then = book.as_tasted(approval);
    let scoop = then.measures.iter().next().unwrap().nominal;
    let of_line = |line: &Line| {
        let item = then.ingredient(&line.ingredient).unwrap();
        let sugars = item.composition.get(Nutrient::Sugars);
        let weight = item.bulk_density.map(|figure| figure.value);
        (sugars.map(|figure| figure.value), weight, scoop)
    };
    approval.resolved.lines().map(of_line).collect()
}

fn approvals(book: &Book) -> impl Iterator<Item = (&RecipeId, &Approval)> {
    let recipes = book.recipes.iter();
    recipes.flat_map(|recipe| {
        recipe
            .approvals
            .iter()
            .map(|approval| (&recipe.id, approval))
    })
}

/// The same approval in another book, whatever its revisions are counted as.
fn same<'book>(book: &'book Book, recipe: &RecipeId, wanted: &Approval) -> Option<&'book Approval> {
    let mut approvals = book.recipe(recipe)?.approvals.iter();
    approvals.find(|one| one.by == wanted.by && one.date == wanted.date)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_merge_moves_no_standard(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let mut hand = |book: &Book, by: &str, edits: usize| {
            let mut book = book.clone();
            for _ in 0..edits {
                let edit = some_edit(&mut dice, &book, by);
                book = apply(&book, &edit).unwrap();
            }
            book
        };
        let base = hand(&shop(), "base", 6);
        let (mine, theirs) = (hand(&base, "mine", 7), hand(&base, "theirs", 7));
        for side in [Side::Mine, Side::Theirs] {
            let merged = merge(&base, &mine, &theirs, |_| side).book;
            for (recipe, approval) in approvals(&merged) {
                let from = same(&mine, recipe, approval).map(|one| (&mine, one));
                let from = from.or_else(|| same(&theirs, recipe, approval).map(|one| (&theirs, one)));
                let (book, then) = from.unwrap();
                prop_assert_eq!(tasted(&merged, approval), tasted(book, then), "{}", approval.by);
            }
            // What is merged has nothing left to put together.
            let again = merge(&merged, &merged, &merged, |_| side).book;
            prop_assert_eq!(&again, &merged);
            let exchanged = match side {
                Side::Mine => Side::Theirs,
                Side::Theirs => Side::Mine,
            };
            let other = merge(&base, &theirs, &mine, |_| exchanged).book;
            for item in &merged.ingredients {
                prop_assert_eq!(other.ingredient(&item.id), Some(item));
            }
        }
    }
}

/// One approves a drink with the figure that the other one puts right.
#[test]
fn what_one_side_puts_right_is_right_for_what_the_other_one_has_approved() {
    let start = shop();
    let base = with(&start, &[approve(&start, "mill", "base")]);
    let mine = with(&base, &[approve(&base, "lantern", "mine")]);
    let right = ItemId::Ingredient(id("barley"));
    let theirs = with(
        &base,
        &[sugars(&base, "barley", 61.0), Edit::PutRight(right)],
    );
    for side in [Side::Mine, Side::Theirs] {
        let merged = merge(&base, &mine, &theirs, |_| side).book;
        let count = approvals(&merged).inspect(|(_, approval)| {
            assert_eq!(
                tasted(&merged, approval)[0].0,
                Some(61.0),
                "{}",
                approval.by
            );
        });
        assert_eq!(count.count(), 2);
    }
    // The product changed, and nothing was wrong: both were tasted with what it was.
    let theirs = with(&base, &[sugars(&base, "barley", 61.0)]);
    let merged = merge(&base, &mine, &theirs, |_| Side::Theirs).book;
    for (_, approval) in approvals(&merged) {
        assert_eq!(
            tasted(&merged, approval)[0].0,
            Some(50.0),
            "{}",
            approval.by
        );
    }
}

/// Each has another pack in hand and approves a drink with it: one pack is in the book, and both drinks were tasted.
#[test]
fn two_states_that_both_tasted_are_both_kept_and_the_choice_is_a_conflict() {
    let base = shop();
    let of = |value: f64, drink: &str, by: &str| {
        let changed = with(&base, &[sugars(&base, "barley", value)]);
        with(&changed, &[approve(&changed, drink, by)])
    };
    let (mine, theirs) = (of(48.0, "lantern", "mine"), of(62.0, "mill", "theirs"));
    for (side, stays) in [(Side::Mine, 48.0), (Side::Theirs, 62.0)] {
        let merge = merge(&base, &mine, &theirs, |_| side);
        assert_eq!(merge.conflicts.len(), 1, "{:?}", merge.conflicts);
        let barley = merge.book.ingredient(&id("barley")).unwrap();
        let now = barley.composition.get(Nutrient::Sugars).unwrap().value;
        assert!((now - stays).abs() < 1e-9);
        for (_, approval) in approvals(&merge.book) {
            let was = if approval.by == "mine" { 48.0 } else { 62.0 };
            assert_eq!(
                tasted(&merge.book, approval)[0].0,
                Some(was),
                "{}",
                approval.by
            );
        }
    }
}
