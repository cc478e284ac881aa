//! What is begun when the house makes something: a batch, or a brew of a leaf, with the recipe that makes it.

use super::published::published_ingredients;
use crate::balance::{
    Brew, BrewMethod, HouseBrew, Infusion, REFERENCE_LEAF_PER_100_ML, RETENTION, house_brew,
    yield_of,
};
use crate::book::{
    Amount, Book, Change, Composition, Entry, Evidence, Figure, Form, HouseMade, Ingredient,
    IngredientId, Line, LineId, Recipe, RecipeId, Role, Stage,
};
use crate::edit::{Edit, apply};

/// Grams that a batch yields until somebody weighs it (assumed): a batch cannot be without any.
const FIRST_YIELD: f64 = 1000.0;

/// Amounts that differ by a smaller part are the same one, reckoned twice.
const SAME_AMOUNT: f64 = 1e-6;

/// A batch that is begun: the edits that put it into the book, in one step.
#[derive(Clone, Debug, PartialEq)]
pub struct Begun {
    /// What the house makes.
    pub ingredient: IngredientId,
    /// The recipe of a batch of it.
    pub recipe: RecipeId,
    /// What puts both into the book.
    pub edits: Vec<Edit>,
}

/// Begins a batch of an ingredient, which may be new: its recipe is empty, and has no cup whatever cups the shop has.
pub fn begin_batch(book: &Book, item: Ingredient, recipe_name: &str) -> Begun {
    let recipe = empty_recipe(book, recipe_name);
    let yield_grams = Figure::new(FIRST_YIELD, Evidence::Assumed);
    begun(item, recipe, yield_grams, |_| {})
}

/// Begins a brew of a leaf, which an ingredient becomes: leaf steeps in water, and what comes off is the ingredient. What a label
/// says of it stays, and goes before the batch until [`by_its_batch`] is asked for. `None` where nothing comes off the leaf.
pub fn begin_brew(
    book: &Book,
    item: Ingredient,
    leaf: &IngredientId,
    (brew, method): (&Brew, &BrewMethod),
    (recipe_name, water_name): (&str, &str),
) -> Option<Begun> {
    let yield_grams = yield_of(brew, method, None)?;
    let mut recipe = empty_recipe(book, recipe_name);
    let (water, new_water) = water_of(book, &item.id, water_name);
    let line = |id: &str, ingredient: &IngredientId, amount, role, stage| {
        Entry::Line(Line {
            id: LineId::from_name(id, |_| false),
            ingredient: ingredient.clone(),
            amount,
            temperature: None,
            role,
            stage,
            carried: None,
            note: String::new(),
        })
    };
    let mut pot = line(
        "water",
        &water,
        Amount::Grams(brew.water),
        Role::Water,
        Stage::Mixed,
    );
    if let Entry::Line(line) = &mut pot {
        line.temperature = Some(method.water_celsius.into());
    }
    let leaves = line(
        "leaf",
        leaf,
        Amount::Grams(brew.leaf),
        Role::Tea,
        Stage::Steeped,
    );
    recipe.entries = vec![pot, leaves];
    let tea = Ingredient {
        form: Form::Liquid,
        role: Role::Tea,
        ..item
    };
    let mut begun = begun(tea, recipe, yield_grams, |made| {
        made.steep_minutes = Some(method.steep_minutes);
        // A hot brew is what leaf is taken for where nothing is said.
        let is_usual = method.extraction == Infusion::Hot.usual().extraction;
        made.extraction = (!is_usual).then_some(Figure {
            value: method.extraction.value,
            evidence: Evidence::Assumed,
            u: Some(method.extraction.u),
        });
    });
    begun.edits.splice(0..0, new_water.map(Edit::PutIngredient));
    Some(begun)
}

/// Leaves the figures of a label to the batch; what it tastes of stays, because no batch says that.
pub fn by_its_batch(item: &mut Ingredient) {
    let flavours = std::mem::take(&mut item.composition.flavours);
    item.composition = Composition {
        flavours,
        ..Composition::default()
    };
}

/// The brew of a batch with other water or leaf, and what it yields then; `None` where nothing would come off the leaf, or where
/// several lines pour the water.
///
/// The lines are changed to so many grams; what the shop measured of the yield stays as long as leaf and water keep their proportion.
pub fn brew_otherwise(
    item: &Ingredient,
    house: &HouseBrew,
    brew: &Brew,
    method: &BrewMethod,
) -> Option<(Ingredient, Vec<Edit>)> {
    let made = item.house_made.as_ref()?;
    let water_line = house.water_line.as_ref()?;
    let keeps_back = |method: &BrewMethod| (method.extraction, method.retention);
    let is_as_before = keeps_back(method) == keeps_back(&house.method);
    let before = is_as_before.then_some((&house.brew, made.yield_grams));
    let yield_grams = yield_of(brew, method, before)?;
    let change = |line: &LineId, was: f64, grams: f64| {
        let amount = Amount::Grams(grams);
        let is_other = (grams - was).abs() > SAME_AMOUNT * was;
        is_other.then(|| Edit::Change {
            recipe: made.recipe.clone(),
            version: None,
            change: Change::Amount(line.clone(), amount),
        })
    };
    let edits = [
        change(water_line, house.brew.water, brew.water),
        change(&house.leaf_line, house.brew.leaf, brew.leaf),
    ];
    let made = HouseMade {
        yield_grams,
        ..made.clone()
    };
    let item = Ingredient {
        house_made: Some(made),
        ..item.clone()
    };
    Some((item, edits.into_iter().flatten().collect()))
}

/// The brew with another amount in one of its lines, in whatever it is measured; `None` where the batch would be no brew any more.
///
/// A yield for another proportion of leaf and water is reckoned by what leaf usually keeps back: while somebody types, what the
/// yield says of the retention may rest on half a number.
pub fn brew_with_amount(
    book: &Book,
    item: &Ingredient,
    house: &HouseBrew,
    line: &LineId,
    amount: Amount,
) -> Option<(Ingredient, Vec<Edit>)> {
    let mut item = item.clone();
    let made = item.house_made.as_mut()?;
    let change = Edit::Change {
        recipe: made.recipe.clone(),
        version: None,
        change: Change::Amount(line.clone(), amount),
    };
    let after = apply(book, &change).ok()?;
    let method = BrewMethod {
        retention: RETENTION,
        ..house.method
    };
    let before = Some((&house.brew, made.yield_grams));
    let yields = house_brew(&after, &item).and_then(|now| yield_of(&now.brew, &method, before));
    let made = item.house_made.as_mut()?;
    made.yield_grams = yields.unwrap_or(Figure {
        evidence: Evidence::Assumed,
        ..made.yield_grams
    });
    Some((item, vec![change]))
}

/// The reference brew in a pot of a litre: a first brew, until the shop has one of its own.
pub fn reference_brew() -> Brew {
    Brew {
        water: 1000.0,
        leaf: 10.0 * REFERENCE_LEAF_PER_100_ML,
        leaf_u: 0.0,
        caffeine_per_gram: None,
    }
}

/// The water of the shop, or of the published tables for a book that has none: a brew can't do without.
fn water_of(book: &Book, but_not: &IngredientId, name: &str) -> (IngredientId, Option<Ingredient>) {
    let is_water = |item: &Ingredient| item.role == Role::Water && item.form == Form::Liquid;
    if let Some(own) = book.ingredients.iter().find(|item| is_water(item)) {
        return (own.id.clone(), None);
    }
    let published = published_ingredients().ok();
    let published = published.and_then(|tables| {
        let mut all = tables.ingredients.iter();
        all.find(|item| is_water(item))
    });
    let id = IngredientId::from_name(name, |id| book.ingredients.contains(id) || id == but_not);
    let water = published.map_or_else(
        || Ingredient {
            form: Form::Liquid,
            role: Role::Water,
            ..Ingredient::new(id.clone(), name.to_owned())
        },
        |found| Ingredient {
            id: id.clone(),
            name: name.to_owned(),
            ..found.as_ref().clone()
        },
    );
    (id, Some(water))
}

fn empty_recipe(book: &Book, name: &str) -> Recipe {
    let id = RecipeId::from_name(name, |id| book.recipe(id).is_some());
    Recipe::new(id, name.to_owned())
}

fn begun(
    item: Ingredient,
    recipe: Recipe,
    yield_grams: Figure,
    also: impl FnOnce(&mut HouseMade),
) -> Begun {
    let before = item.house_made.clone();
    let mut made = HouseMade {
        recipe: recipe.id.clone(),
        yield_grams,
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: before.as_ref().and_then(|made| made.shelf_life_hours),
        waste_percent: before.map_or(0.0, |made| made.waste_percent),
    };
    also(&mut made);
    let item = Ingredient {
        house_made: Some(made),
        ..item
    };
    Begun {
        ingredient: item.id.clone(),
        recipe: recipe.id.clone(),
        edits: vec![Edit::PutRecipe(recipe), Edit::PutIngredient(item)],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Nutrient;
    use crate::edit::apply_soundly;

    fn leaf() -> Ingredient {
        let mut leaf = Ingredient::new(IngredientId::new("leaf").unwrap(), "Dark leaf".into());
        leaf.form = Form::Leaf;
        leaf.role = Role::Tea;
        leaf
    }

    fn begun_in(book: &Book) -> (Book, Begun) {
        let tea = Ingredient::new(IngredientId::new("tea").unwrap(), "Dark tea".into());
        let method = Infusion::Hot.usual();
        let brew = Brew {
            water: 1000.0,
            leaf: 20.0,
            leaf_u: 0.0,
            caffeine_per_gram: None,
        };
        let id = IngredientId::new("leaf").unwrap();
        let names = ("Dark tea", "Water");
        let begun = begin_brew(book, tea, &id, (&brew, &method), names).unwrap();
        (apply_soundly(book, &begun.edits).unwrap(), begun)
    }

    #[test]
    fn a_brew_is_begun_in_an_empty_book_and_is_read_back_as_it_was_planned() {
        let mut book = Book::default();
        book.ingredients.put(leaf());
        let (book, begun) = begun_in(&book);
        let tea = book.ingredient(&begun.ingredient).unwrap();
        let house = house_brew(&book, tea).unwrap();
        assert_eq!((house.brew.water, house.brew.leaf), (1000.0, 20.0));
        assert!((house.method.steep_minutes - 5.0).abs() < 1e-9);
        let planned = Infusion::Hot.usual();
        // The yield is written to the gram.
        assert!((house.method.retention.value - planned.retention.value).abs() < 0.03);
        assert_eq!(book.recipe(&begun.recipe).unwrap().cup, None);
        assert!(tea.composition.printed.is_empty());
    }

    #[test]
    fn what_a_label_says_of_a_tea_stays_until_the_batch_is_asked_for() {
        let mut book = Book::default();
        book.ingredients.put(leaf());
        let mut tea = Ingredient::new(IngredientId::new("tea").unwrap(), "Dark tea".into());
        let figure = Figure::new(0.4, Evidence::Label);
        tea.composition.state(Nutrient::TeaSolids, figure);
        let brew = reference_brew();
        let (id, names) = (leaf().id, ("Dark tea", "Water"));
        let method = Infusion::Hot.usual();
        let begun = begin_brew(&book, tea.clone(), &id, (&brew, &method), names).unwrap();
        let book = apply_soundly(&book, &begun.edits).unwrap();
        let mut brewed = book.ingredient(&tea.id).unwrap().as_ref().clone();
        assert_eq!(brewed.composition, tea.composition);
        by_its_batch(&mut brewed);
        assert_eq!(brewed.composition, Composition::default());
        assert!(brewed.house_made.is_some());
    }

    #[test]
    fn a_measured_yield_stays_with_its_proportion_and_is_reckoned_for_another() {
        let mut book = Book::default();
        book.ingredients.put(leaf());
        let (book, begun) = begun_in(&book);
        let mut tea = book.ingredient(&begun.ingredient).unwrap().as_ref().clone();
        if let Some(made) = &mut tea.house_made {
            made.yield_grams = Figure::new(900.0, Evidence::Measured);
        }
        let book = apply_soundly(&book, [&Edit::PutIngredient(tea.clone())]).unwrap();
        let house = house_brew(&book, &tea).unwrap();
        let yields = |water: f64, leaf: f64| {
            let brew = Brew {
                water,
                leaf,
                ..house.brew
            };
            let (item, edits) = brew_otherwise(&tea, &house, &brew, &house.method).unwrap();
            let after = apply_soundly(
                &book,
                edits.iter().chain([&Edit::PutIngredient(item.clone())]),
            );
            let again = house_brew(&after.unwrap(), &item).unwrap();
            assert_eq!((again.brew.water, again.brew.leaf), (water, leaf));
            item.house_made.unwrap().yield_grams
        };
        let twice = yields(2000.0, 40.0);
        assert_eq!((twice.value, twice.evidence), (1800.0, Evidence::Measured));
        let stronger = yields(1000.0, 40.0);
        assert_eq!(stronger.evidence, Evidence::Assumed);
        assert!(stronger.value < 820.0, "{stronger:?}");
    }

    #[test]
    fn a_batch_has_no_cup_and_a_name_that_is_taken_gets_an_id_of_its_own() {
        let mut book = Book::default();
        book.ingredients.put(leaf());
        let (book, first) = begun_in(&book);
        let pearls = Ingredient::new(IngredientId::new("pearls").unwrap(), "Pearls".into());
        let second = begin_batch(&book, pearls, "Dark tea");
        assert_ne!(first.recipe, second.recipe);
        let book = apply_soundly(&book, &second.edits).unwrap();
        assert_eq!(book.recipe(&second.recipe).unwrap().cup, None);
    }
}
