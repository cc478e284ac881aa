//! Books at random in which ingredients claim, declare and name what they like: batches in batches, circles, missing recipes.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::collections::BTreeSet;

use evensip::balance::{Balance, Verdict};
use evensip::book::{
    Allergen, AllergenList, AllergenStatement, Amount, Book, Carried, Entry, Evidence, Figure,
    Form, HouseMade, Ingredient, IngredientId, Line, LineId, Nutrient, Recipe, RecipeId, Role,
    Stage, SugarProfile,
};

use crate::arbitrary_book::Dice;
use crate::sample;

/// Statements, the allergens that they name, and whether they name an animal that is no allergen.
pub(crate) const STATEMENTS: [(&str, &[Allergen], bool); 12] = [
    ("", &[], false),
    ("Sugar, water.", &[], false),
    ("Glucose syrup, sodium caseinate.", &[Allergen::Milk], false),
    (
        "Whey powder, wheat flour",
        &[Allergen::Milk, Allergen::Gluten],
        false,
    ),
    ("Honey.", &[], true),
    ("Sugar, gelatine, colour E 120.", &[], true),
    ("Egg white powder.", &[Allergen::Eggs], false),
    ("Sugar, emulsifier E 471.", &[], false),
    ("Soya beans, salt.", &[Allergen::Soybeans], false),
    ("Sugar. May contain traces of milk.", &[], false),
    ("Sugar, free from milk and egg.", &[], false),
    ("Coconut milk, cocoa butter.", &[], false),
];

pub(crate) const INGREDIENTS: usize = 8;
pub(crate) const RECIPES: usize = 5;

pub(crate) fn ingredient_id(at: usize) -> IngredientId {
    IngredientId::new(&format!("i{at}")).unwrap()
}

pub(crate) fn recipe_id(at: usize) -> RecipeId {
    RecipeId::new(&format!("r{at}")).unwrap()
}

pub(crate) fn line_of(dice: &mut Dice, id: &str) -> Entry {
    // Some ids name nothing.
    let ingredient = ingredient_id(dice.below(INGREDIENTS + 1));
    let grams = dice.pick(&[0.0, 1.0, 20.0, 150.0]);
    let carried = (dice.below(4) == 0).then(|| Carried {
        ingredient: ingredient_id(dice.below(INGREDIENTS)),
        grams: dice.pick(&[0.0, 15.0]),
    });
    Entry::Line(Line {
        id: LineId::new(id).unwrap(),
        ingredient,
        amount: Amount::Grams(grams),
        temperature: None,
        role: dice.pick(&[Role::Creamer, Role::Sweetener, Role::Topping, Role::Tea]),
        stage: dice.pick(&Stage::ALL),
        carried,
        note: String::new(),
    })
}

pub(crate) fn some_allergens(dice: &mut Dice) -> Vec<Allergen> {
    (0..dice.below(3))
        .map(|_| dice.pick(&Allergen::ALL))
        .collect()
}

pub(crate) fn claim(dice: &mut Dice) -> Option<bool> {
    // Claims of "yes" are what can go wrong.
    dice.pick(&[None, Some(true), Some(true), Some(false)])
}

fn entry(dice: &mut Dice, at: usize) -> Ingredient {
    let role = dice.pick(&[Role::Creamer, Role::Sweetener, Role::Flavour, Role::Water]);
    let mut item = sample::ingredient(
        &format!("i{at}"),
        Form::Liquid,
        role,
        &[(Nutrient::Water, 90.0)],
    );
    dice.pick(&STATEMENTS).0.clone_into(&mut item.statement);
    item.diet.vegan = claim(dice);
    item.diet.dairy_free = claim(dice);
    item.allergens = dice.pick(&[true, true, false]).then(|| AllergenStatement {
        contains: if dice.below(3) == 0 {
            some_allergens(dice)
        } else {
            Vec::new()
        },
        may_contain: if dice.below(4) == 0 {
            some_allergens(dice)
        } else {
            Vec::new()
        },
        free_of: if dice.coin() {
            some_allergens(dice)
        } else {
            Vec::new()
        },
    });
    item.composition.sugar_profile = dice.pick(&[
        None,
        None,
        None,
        Some(SugarProfile::Sucrose),
        Some(SugarProfile::Honey),
        Some(SugarProfile::Lactose),
    ]);
    item.house_made = dice.pick(&[true, false, false]).then(|| HouseMade {
        recipe: recipe_id(dice.below(RECIPES + 1)),
        yield_grams: Figure::new(1000.0, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    item
}

fn recipe_of(dice: &mut Dice, id: RecipeId, least: usize) -> Recipe {
    let lines = least + dice.below(3);
    Recipe {
        id,
        ..sample::recipe(
            (0..lines)
                .map(|at| line_of(dice, &format!("l{at}")))
                .collect(),
        )
    }
}

/// A book with a drink `drink`. Seeds of one kind in four give entries that state much, so that "yes" is not rare.
pub(crate) fn thrown(seed: u64) -> Book {
    let dice = &mut Dice(seed);
    let mut book = Book::default();
    let is_calm = seed.is_multiple_of(4);
    if dice.coin() {
        book.settings.allergen_lists = vec![dice.pick(&AllergenList::ALL)];
    }
    for at in 0..INGREDIENTS {
        let mut item = entry(dice, at);
        if is_calm && dice.below(8) != 0 {
            item.diet.vegan = Some(true);
            item.diet.dairy_free = Some(true);
            item.allergens = Some(AllergenStatement {
                free_of: vec![Allergen::Mango, Allergen::Peach],
                ..AllergenStatement::default()
            });
            let statements = ["", "Sugar, water.", "Sugar, emulsifier E 471."];
            dice.pick(&statements).clone_into(&mut item.statement);
            item.composition.sugar_profile = None;
        }
        book.ingredients.put(item);
    }
    for at in 0..RECIPES {
        let least = dice.below(2);
        book.recipes.put(recipe_of(dice, recipe_id(at), least));
    }
    let drink = RecipeId::new("drink").unwrap();
    book.recipes.put(recipe_of(dice, drink, 1));
    book
}

pub(crate) fn drink(book: &Book) -> Balance {
    sample::balance_of(book, "drink", None)
}

/// The verdicts on a drink, each the nearer to "yes" the smaller it is.
pub(crate) fn verdicts(balance: &Balance) -> Vec<Verdict> {
    let free = Allergen::ALL.map(|allergen| balance.allergens.free_of(allergen));
    [balance.vegan, balance.dairy_free]
        .into_iter()
        .chain(free)
        .collect()
}

/// What a walk of its own finds in the drink: the entries, and whether something in it is nothing that the book knows.
pub(crate) struct Walked<'book> {
    pub(crate) entries: Vec<&'book Ingredient>,
    pub(crate) is_broken: bool,
}

pub(crate) fn walked(book: &Book) -> Walked<'_> {
    fn ids(recipe: &Recipe) -> Vec<&IngredientId> {
        let mut ids = Vec::new();
        for entry in &recipe.entries {
            let Entry::Line(line) = entry else { continue };
            if line.amount != Amount::Grams(0.0) {
                ids.push(&line.ingredient);
            }
            if let Some(carried) = line.carried.as_ref().filter(|carried| carried.grams > 0.0) {
                ids.push(&carried.ingredient);
            }
        }
        ids
    }
    fn go<'book>(
        book: &'book Book,
        id: &IngredientId,
        making: &mut Vec<IngredientId>,
        found: &mut Walked<'book>,
    ) {
        let Some(item) = book.ingredient(id) else {
            found.is_broken = true;
            return;
        };
        if making.contains(id) {
            found.is_broken = true;
            return;
        }
        if !found.entries.iter().any(|known| known.id == *id) {
            found.entries.push(item);
        }
        let Some(made) = &item.house_made else { return };
        let parts = book
            .recipe(&made.recipe)
            .map(|recipe| ids(recipe))
            .unwrap_or_default();
        found.is_broken |= parts.is_empty();
        making.push(id.clone());
        for part in parts {
            go(book, part, making, found);
        }
        making.pop();
    }
    let mut found = Walked {
        entries: Vec::new(),
        is_broken: false,
    };
    let recipe = book.recipe(&RecipeId::new("drink").unwrap()).unwrap();
    for id in ids(recipe) {
        go(book, id, &mut Vec::new(), &mut found);
    }
    found
}

/// The allergen of the annex that another one is a kind of.
pub(crate) fn kind_of(allergen: Allergen) -> Option<Allergen> {
    use Allergen as A;
    let kinds = [
        (A::Gluten, &[A::Wheat][..]),
        (A::Nuts, &[A::Walnuts]),
        (A::Fish, &[A::Mackerel]),
        (A::Crustaceans, &[A::Crab, A::Shrimp]),
        (A::Molluscs, &[A::Squid, A::Shellfish]),
    ];
    let found = kinds.iter().find(|(_, kinds)| kinds.contains(&allergen));
    found.map(|(of_annex, _)| *of_annex)
}

/// The allergens that an entry declares or shows, by the table of statements.
pub(crate) fn shown(item: &Ingredient) -> BTreeSet<Allergen> {
    let declared = item
        .allergens
        .iter()
        .flat_map(|stated| stated.contains.iter())
        .flat_map(|named| [Some(*named), kind_of(*named)])
        .flatten();
    let named = STATEMENTS
        .iter()
        .find(|(text, _, _)| *text == item.statement)
        .map_or(&[][..], |(_, named, _)| named);
    let sugar =
        (item.composition.sugar_profile == Some(SugarProfile::Lactose)).then_some(Allergen::Milk);
    declared.chain(named.iter().copied()).chain(sugar).collect()
}

pub(crate) fn shows_animal(item: &Ingredient) -> bool {
    let named = STATEMENTS
        .iter()
        .any(|(text, _, animal)| *animal && *text == item.statement);
    let animals = [
        Allergen::Milk,
        Allergen::Eggs,
        Allergen::Fish,
        Allergen::Crustaceans,
        Allergen::Molluscs,
        Allergen::Pork,
        Allergen::Chicken,
        Allergen::Beef,
    ];
    named
        || item.composition.sugar_profile == Some(SugarProfile::Honey)
        || animals.iter().any(|animal| shown(item).contains(animal))
}
