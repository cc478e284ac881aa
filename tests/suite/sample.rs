//! The sample book, and small books that tests build.

use evensip::balance::{Balance, Measurand, balance_version};
use evensip::book::{
    Amount, Book, Composition, Entry, Evidence, Figure, Form, Ingredient, IngredientId, Line,
    LineId, Measure, MeasureId, MeasureKind, Nominal, Nutrient, Recipe, RecipeId, Role, Stage,
    VersionId, Vessel, VesselId, VesselKind,
};

/// The built-in book.
pub(crate) fn sample() -> Book {
    evensip::book_file::built_in_book().expect("the built-in book opens")
}

/// The balance of a recipe of the book, or of one of its versions.
pub(crate) fn balance_of(book: &Book, recipe: &str, version: Option<&str>) -> Balance {
    let recipe = book
        .recipe(&RecipeId::new(recipe).unwrap())
        .expect("the recipe is in the book");
    let version = version.map(|id| VersionId::new(id).unwrap());
    balance_version(book, recipe, version.as_ref()).expect("the version is in the recipe")
}

/// A figure that nothing is missing for.
pub(crate) fn figure(balance: &Balance, measurand: Measurand) -> f64 {
    balance
        .figures
        .complete(measurand)
        .unwrap_or_else(|| panic!("{} is not known", measurand.key()))
}

/// An ingredient with these figures per 100 g, at room temperature.
pub(crate) fn ingredient(
    id: &str,
    form: Form,
    role: Role,
    figures: &[(Nutrient, f64)],
) -> Ingredient {
    Ingredient {
        form,
        role,
        composition: Composition {
            printed: figures
                .iter()
                .map(|&(nutrient, value)| (nutrient, Figure::new(value, Evidence::Published)))
                .collect(),
            free_sugar_fraction: Some(1.0),
            sugar_profile: Some(evensip::book::SugarProfile::Sucrose),
            ..Composition::default()
        },
        ..Ingredient::new(IngredientId::new(id).unwrap(), id.to_owned())
    }
}

/// Pure water.
pub(crate) fn water() -> Ingredient {
    ingredient(
        "water",
        Form::Liquid,
        Role::Water,
        &[(Nutrient::Water, 100.0)],
    )
}

/// Ice.
pub(crate) fn ice() -> Ingredient {
    ingredient("ice", Form::Ice, Role::Ice, &[])
}

/// A line of so many grams at a temperature.
pub(crate) fn line(id: &str, ingredient: &str, grams: f64, celsius: f64, role: Role) -> Entry {
    Entry::Line(Line {
        id: LineId::new(id).unwrap(),
        ingredient: IngredientId::new(ingredient).unwrap(),
        amount: Amount::Grams(grams),
        temperature: Some(celsius.into()),
        role,
        stage: Stage::Mixed,
        carried: None,
        note: String::new(),
    })
}

/// A recipe of these lines, without a cup.
pub(crate) fn recipe(entries: Vec<Entry>) -> Recipe {
    Recipe {
        entries,
        ..Recipe::new(RecipeId::new("drink").unwrap(), "drink".to_owned())
    }
}

/// A cup of a mass (g) and specific heat (kJ/(kg K)) that stands in the room.
pub(crate) fn cup(id: &str, mass: f64, specific_heat: f64) -> Vessel {
    Vessel {
        mass: Some(mass),
        specific_heat: Some(specific_heat),
        ..Vessel::new(
            VesselId::new(id).unwrap(),
            id.to_owned(),
            VesselKind::Cup,
            500.0,
        )
    }
}

/// A measure that nobody has weighed, by what stands on it.
pub(crate) fn measure(id: &str, kind: MeasureKind, nominal: Nominal) -> Measure {
    Measure {
        nominal: Some(nominal),
        ..Measure::new(MeasureId::new(id).unwrap(), id.to_owned(), kind)
    }
}

/// A book of one recipe with these ingredients and vessels.
pub(crate) fn book(ingredients: Vec<Ingredient>, vessels: Vec<Vessel>, recipe: Recipe) -> Book {
    let mut book = Book::default();
    for ingredient in ingredients {
        book.ingredients.put(ingredient);
    }
    for vessel in vessels {
        book.vessels.put(vessel);
    }
    book.recipes.put(recipe);
    book
}
