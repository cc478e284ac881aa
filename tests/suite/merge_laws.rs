//! Laws of two hands on one book: each field is merged by itself, and what the two did fits together.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::mem::discriminant;

use evensip::book::{
    Amount, Book, Change, Entry, Evidence, Figure, Finding, FindingKind, Form, HouseMade,
    Ingredient, IngredientId, ItemId, Line, LineId, Measure, MergeNote, Part, Price, Reading,
    ReadingAmount, Recipe, RecipeId, Role, Severity, Side, Stage, Vessel, findings, merge,
};
use evensip::edit::{Edit, apply, apply_soundly};
use evensip::quantity::Pack;
use proptest::prelude::*;

use super::arbitrary_book::{self as arbitrary, Dice};
use crate::sample;

/// Items of each kind that a tidy book has at first.
const ITEMS: usize = 4;

fn ingredient_id(dice: &mut Dice) -> IngredientId {
    IngredientId::new(&format!("ingredient-{}", dice.below(ITEMS + 2))).unwrap()
}

fn recipe_id(dice: &mut Dice) -> RecipeId {
    RecipeId::new(&format!("recipe-{}", dice.below(ITEMS))).unwrap()
}

fn line(dice: &mut Dice, at: usize) -> Entry {
    Entry::Line(Line {
        id: LineId::new(&format!("line-{at}")).unwrap(),
        ingredient: ingredient_id(dice),
        amount: if dice.coin() {
            Amount::Grams(dice.below(50) as f64)
        } else {
            Amount::Count(1.0, arbitrary::measure(dice).id)
        },
        temperature: None,
        role: Role::Water,
        stage: Stage::Mixed,
        carried: None,
        note: String::new(),
    })
}

fn recipe(dice: &mut Dice) -> Recipe {
    Recipe {
        id: recipe_id(dice),
        name: format!("recipe {}", dice.below(9)),
        entries: (0..dice.below(4)).map(|at| line(dice, at)).collect(),
        cup: dice.coin().then(|| arbitrary::vessel(dice).id),
        ..sample::recipe(Vec::new())
    }
}

fn measure(dice: &mut Dice) -> Measure {
    Measure {
        readings: Vec::new(),
        nominal: None,
        increment: None,
        temperature: None,
        ..arbitrary::measure(dice)
    }
}

fn vessel(dice: &mut Dice) -> Vessel {
    Vessel {
        capacity: 500.0,
        shape: None,
        mass: None,
        specific_heat: None,
        temperature: None,
        cooling_minutes: None,
        cooling_run: None,
        price: None,
        closures: Vec::new(),
        serviceware: Vec::new(),
        ..arbitrary::vessel(dice)
    }
}

/// What a person does in a form or at a recipe: one field, an item added, an item taken away.
fn some_edit(dice: &mut Dice, book: &Book) -> Edit {
    match dice.below(19) {
        0..=6 => Edit::PutIngredient(ingredient(dice, book)),
        7 => Edit::RemoveIngredient(ingredient_id(dice)),
        8 => Edit::RemoveRecipe(recipe_id(dice)),
        9 => Edit::RemoveMeasure(arbitrary::measure(dice).id),
        10 => Edit::RemoveVessel(arbitrary::vessel(dice).id),
        11 => {
            let mut item = measure(dice);
            item.readings.push(Reading {
                ingredient: Some(ingredient_id(dice)),
                uses: 10,
                amount: ReadingAmount::Grams(100.0),
                date: None,
            });
            Edit::PutMeasure(item)
        }
        12 => {
            let mut item = vessel(dice);
            item.price = Some(dice.below(9) as f64);
            Edit::PutVessel(item)
        }
        13..=17 => Edit::PutRecipe(recipe(dice)),
        _ => {
            let mut settings = book.settings.clone();
            match dice.below(3) {
                0 => settings.shop = dice.text(),
                1 => settings.room_temperature = (dice.below(40) as f64).into(),
                _ => settings.sales_tax_percent = Some(dice.below(20) as f64),
            }
            Edit::SetSettings(settings)
        }
    }
}

/// An ingredient of the book with another value of one field, or a new one.
fn ingredient(dice: &mut Dice, book: &Book) -> Ingredient {
    let id = ingredient_id(dice);
    let Some(item) = book.ingredient(&id) else {
        return Ingredient::new(id, "new".to_owned());
    };
    let mut item = item.as_ref().clone();
    let figure = |dice: &mut Dice, least: f64| {
        Some(Figure::new(
            least + dice.below(9) as f64 / 10.0,
            Evidence::Label,
        ))
    };
    match dice.below(10) {
        0 => item.name = format!("name {}", dice.below(9)),
        1 => item.supplier = format!("supplier {}", dice.below(9)),
        2 => item.form = dice.pick(&[Form::Foam, Form::Liquid, Form::Powder]),
        3 => item.density = figure(dice, if item.form == Form::Foam { 0.1 } else { 0.6 }),
        4 => {
            item.price = Some(Price {
                pack: dice.below(99) as f64,
                content: Pack::of_grams(500.0),
                waste_percent: 0.0,
                date: None,
            });
        }
        5 => item.note = format!("note {}", dice.below(9)),
        _ => {
            let is_made = dice.below(4) > 0;
            item.house_made = is_made.then(|| HouseMade {
                recipe: recipe_id(dice),
                yield_grams: Figure::new(100.0, Evidence::Measured),
                extraction: None,
                steep_minutes: None,
                shelf_life_hours: None,
                waste_percent: 0.0,
            });
        }
    }
    item
}

fn tidy_book(dice: &mut Dice) -> Book {
    let mut book = Book::default();
    for at in 0..ITEMS {
        let id = IngredientId::new(&format!("ingredient-{at}")).unwrap();
        book.ingredients
            .put(Ingredient::new(id, format!("ingredient {at}")));
        book.measures.put(measure(dice));
        book.vessels.put(vessel(dice));
    }
    after(&book, dice, 30)
}

/// The book after edits that leave no error behind.
fn after(book: &Book, dice: &mut Dice, edits: usize) -> Book {
    let mut book = book.clone();
    for _ in 0..edits {
        let edit = some_edit(dice, &book);
        book = apply_soundly(&book, [&edit]).unwrap_or(book);
    }
    book
}

fn errors(book: &Book) -> Vec<Finding> {
    let mut errors = findings(book);
    errors.retain(|finding| finding.severity == Severity::Error);
    errors
}

/// Whether a book has an error just there. A circle may be met from any of its members.
fn has_error(book: &Book, errors: &[Finding], error: &Finding) -> bool {
    if let FindingKind::HouseMadeCycle { chain } = &error.kind {
        // The first one is made as the last one is; the circle is behind it.
        let ids: Vec<IngredientId> = chain[1..]
            .iter()
            .map(|id| IngredientId::new(id).unwrap())
            .collect();
        let is_made_from = |item: &IngredientId, part: &IngredientId| {
            let recipe = book.ingredient(item).and_then(|item| item.recipe_in(book));
            let mut lines = recipe.iter().flat_map(|recipe| &recipe.entries);
            lines.any(|entry| entry.line().is_some_and(|line| line.ingredient == *part))
        };
        let next = ids.iter().cycle().skip(1);
        return ids
            .iter()
            .zip(next)
            .all(|(item, part)| is_made_from(item, part));
    }
    errors.iter().any(|other| {
        other.place == error.place && discriminant(&other.kind) == discriminant(&error.kind)
    })
}

fn check_errors(mine: &Book, theirs: &Book, merged: &[Finding]) -> Result<(), TestCaseError> {
    let (of_mine, of_theirs) = (errors(mine), errors(theirs));
    for error in merged {
        prop_assert!(
            has_error(mine, &of_mine, error) || has_error(theirs, &of_theirs, error),
            "{:?}",
            error
        );
    }
    Ok(())
}

/// A field that only one side has changed is as that side has it, and nothing else is changed.
fn check_fields(
    [base, mine, theirs, merged]: [&Book; 4],
    is_apart: impl Fn(&ItemId) -> bool,
) -> Result<(), TestCaseError> {
    for item in &base.ingredients {
        let id = ItemId::Ingredient(item.id.clone());
        let of = |book: &Book| book.ingredient(&item.id).cloned();
        if let (Some(mine), Some(theirs), Some(merged)) = (of(mine), of(theirs), of(merged))
            && !is_apart(&id)
        {
            let mut both = item.fields_changed_to(&mine);
            both.extend(item.fields_changed_to(&theirs));
            let mut changed = item.fields_changed_to(&merged);
            both.sort_unstable();
            both.dedup();
            changed.sort_unstable();
            prop_assert_eq!(changed, both, "{}", item.id);
            let from = |side: &Ingredient, other: &Ingredient| {
                let taken = side.fields_changed_to(&merged);
                let changed = item.fields_changed_to(other);
                taken.iter().all(|field| changed.contains(field))
            };
            prop_assert!(from(&mine, &theirs) && from(&theirs, &mine), "{}", item.id);
        }
    }
    Ok(())
}

/// How many books are merged.
fn cases() -> u32 {
    let wanted = std::env::var("EVENSIP_MERGES").ok();
    wanted.and_then(|wanted| wanted.parse().ok()).unwrap_or(200)
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: cases(),
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn two_hands_on_a_tidy_book_leave_it_tidy_and_merge_field_by_field(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let base = tidy_book(&mut dice);
        prop_assert_eq!(errors(&base), Vec::new());
        let mine = after(&base, &mut dice, 12);
        let theirs = after(&base, &mut dice, 12);
        for side in [Side::Mine, Side::Theirs] {
            let merged = merge(&base, &mine, &theirs, |_| side);
            check_errors(&mine, &theirs, &errors(&merged.book))?;
            let is_apart = |item: &ItemId| {
                let is_conflict = merged.conflicts.iter().any(|one| one.part.item == *item);
                let is_whole = merged.notes.iter().any(|note| match note {
                    MergeNote::Kept { .. } => false,
                    MergeNote::TakenWhole { items, .. } => items.iter().any(|(one, _)| one == item),
                });
                is_conflict || is_whole
            };
            check_fields([&base, &mine, &theirs, &merged.book], is_apart)?;
        }
    }

    #[test]
    fn a_merge_of_any_books_has_no_error_that_neither_side_had(seed in any::<u64>()) {
        let base = arbitrary::book(seed);
        let mut dice = Dice(seed ^ 0x6e57);
        // Files that were written by hand may name what is missing, and a merge may close a circle through such a gap.
        let is_by_hand = dice.coin();
        let mut hand = || {
            let mut book = base.clone();
            for _ in 0..10 {
                let edit = arbitrary::edit(&mut dice, &book);
                let next = if is_by_hand { apply(&book, &edit) } else { apply_soundly(&book, [&edit]) };
                book = next.unwrap_or(book);
            }
            book
        };
        let (mine, theirs) = (hand(), hand());
        for side in [Side::Mine, Side::Theirs] {
            let merged = merge(&base, &mine, &theirs, |_| side);
            let mut errors = errors(&merged.book);
            let is_circle = |kind: &FindingKind| matches!(kind, FindingKind::HouseMadeCycle { .. });
            errors.retain(|error| !(is_by_hand && is_circle(&error.kind)));
            check_errors(&mine, &theirs, &errors)?;
        }
    }
}

#[test]
fn the_dice_throw_what_the_laws_are_about() {
    let (mut kept, mut whole, mut fields) = (0, 0, 0);
    for seed in 0..120 {
        let mut dice = Dice(seed);
        let base = tidy_book(&mut dice);
        let mine = after(&base, &mut dice, 12);
        let theirs = after(&base, &mut dice, 12);
        let merged = merge(&base, &mine, &theirs, |_| Side::Mine);
        let is_kept = |note: &&MergeNote| matches!(note, MergeNote::Kept { .. });
        let of_kept = merged.notes.iter().filter(is_kept).count();
        kept += of_kept;
        whole += merged.notes.len() - of_kept;
        let of_fields = merged.conflicts.iter();
        fields += of_fields.filter(|one| !one.part.fields.is_empty()).count();
    }
    assert!(
        kept > 0 && whole > 0 && fields > 0,
        "{kept} {whole} {fields}"
    );
}

fn oat(change: impl FnOnce(&mut Ingredient)) -> Ingredient {
    let mut item = Ingredient::new(IngredientId::new("oat").unwrap(), "Oat syrup".to_owned());
    change(&mut item);
    item
}

fn price(pack: f64, date: &str) -> Price {
    Price {
        pack,
        content: Pack::of_grams(500.0),
        waste_percent: 0.0,
        date: Some(date.to_owned()),
    }
}

fn with(book: &Book, edits: &[Edit]) -> Book {
    apply_soundly(book, edits).unwrap()
}

#[test]
fn one_changes_the_price_and_the_other_the_name_and_both_are_kept() {
    let base = with(&Book::default(), &[Edit::PutIngredient(oat(|_| ()))]);
    let mine = oat(|item| item.price = Some(price(8.0, "2026-05-04")));
    let theirs = oat(|item| item.name = "Oat sirup".to_owned());
    let [mine, theirs] = [mine, theirs].map(|item| with(&base, &[Edit::PutIngredient(item)]));
    let merged = merge(&base, &mine, &theirs, |_| Side::Mine);
    assert_eq!((merged.conflicts.len(), merged.notes.len()), (0, 0));
    let item = merged.book.ingredients.iter().next().unwrap();
    assert_eq!(item.name, "Oat sirup");
    assert_eq!(item.price, Some(price(8.0, "2026-05-04")));
}

#[test]
fn two_prices_are_one_conflict_and_a_supplier_goes_with_its_price() {
    let base = with(&Book::default(), &[Edit::PutIngredient(oat(|_| ()))]);
    let mine = oat(|item| item.price = Some(price(8.0, "2026-05-04")));
    let theirs = oat(|item| {
        item.price = Some(price(7.0, "2026-05-05"));
        item.supplier = "Ombery".to_owned();
        item.note = "opened".to_owned();
    });
    let [mine, theirs] = [mine, theirs].map(|item| with(&base, &[Edit::PutIngredient(item)]));
    let asked = |part: &Part| {
        assert!(part.fields.contains(&"price"), "{part:?}");
        Side::Mine
    };
    let merged = merge(&base, &mine, &theirs, asked);
    assert_eq!(merged.conflicts.len(), 1);
    assert_eq!(merged.conflicts[0].fields, ["price", "supplier"]);
    let item = merged.book.ingredients.iter().next().unwrap();
    assert_eq!(item.price, Some(price(8.0, "2026-05-04")));
    assert_eq!((item.supplier.as_str(), item.note.as_str()), ("", "opened"));
}

#[test]
fn what_one_removes_and_the_other_needs_stays_with_what_it_needs_itself() {
    let syrup = RecipeId::new("syrup").unwrap();
    let recipe = |id: &RecipeId, ingredient: Option<&str>| Recipe {
        id: id.clone(),
        name: id.to_string(),
        entries: ingredient
            .map(|ingredient| {
                let mut entry = line(&mut Dice(1), 0);
                if let Entry::Line(line) = &mut entry {
                    line.ingredient = IngredientId::new(ingredient).unwrap();
                    line.amount = Amount::Grams(1.0);
                }
                entry
            })
            .into_iter()
            .collect(),
        cup: None,
        ..self::recipe(&mut Dice(1))
    };
    let made = HouseMade {
        recipe: syrup.clone(),
        yield_grams: Figure::new(100.0, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    };
    let item = oat(|item| item.house_made = Some(made));
    let id = item.id.clone();
    let edits = [
        Edit::PutRecipe(recipe(&syrup, None)),
        Edit::PutIngredient(item),
    ];
    let base = with(&Book::default(), &edits);
    let theirs = with(
        &base,
        &[
            Edit::RemoveIngredient(id.clone()),
            Edit::RemoveRecipe(syrup.clone()),
        ],
    );
    let drink = RecipeId::new("drink").unwrap();
    let mine = with(&base, &[Edit::PutRecipe(recipe(&drink, Some("oat")))]);
    let merged = merge(&base, &mine, &theirs, |_| Side::Theirs);
    assert!(merged.book.ingredient(&id).is_some() && merged.book.recipe(&syrup).is_some());
    assert_eq!(errors(&merged.book), []);
    let kept: Vec<(&str, &str)> = merged
        .notes
        .iter()
        .map(|note| match note {
            MergeNote::Kept {
                name,
                removed_by: Side::Theirs,
                needed_by_name,
                ..
            } => (name.as_str(), needed_by_name.as_str()),
            other => panic!("{other:?}"),
        })
        .collect();
    assert_eq!(kept, [("Oat syrup", "drink"), ("syrup", "Oat syrup")]);

    // Made from the drink here, and put into the drink there: one of the two has to give way.
    let base = with(&base, &[Edit::PutRecipe(recipe(&drink, None))]);
    let mine = oat(|item| {
        let mut made = base.ingredient(&id).unwrap().house_made.clone().unwrap();
        made.recipe = drink.clone();
        item.house_made = Some(made);
    });
    let mine = with(&base, &[Edit::PutIngredient(mine)]);
    let into_drink = Change::Add(None, recipe(&drink, Some("oat")).entries.remove(0));
    let theirs = with(
        &base,
        &[Edit::Change {
            recipe: drink.clone(),
            version: None,
            change: into_drink,
        }],
    );
    for (side, whole) in [(Side::Mine, &mine), (Side::Theirs, &theirs)] {
        let merged = merge(&base, &mine, &theirs, |_| side);
        assert!(merged.book == *whole);
        assert!(
            matches!(&merged.notes[..], [MergeNote::TakenWhole { items, taken }] if items.len() == 2 && *taken == side),
            "{:?}",
            merged.notes
        );
    }
}
