//! What the check finds in figures that are each possible and do not go together.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::published::energy;
use evensip::book::{
    Allergen, AllergenStatement, Basis, Book, Evidence, Figure, Form, HouseMade, Ingredient,
    Nutrient, Price, RecipeId, Role, SugarProfile, energy_of_composition, findings,
};

use super::sample;

/// An ingredient of label figures, as a creamer in powder.
fn label(figures: &[(Nutrient, f64)]) -> Ingredient {
    let mut item = sample::ingredient("item", Form::Powder, Role::Creamer, figures);
    item.composition
        .printed
        .values_mut()
        .for_each(|figure| figure.evidence = Evidence::Label);
    item
}

const CREAMER: [(Nutrient, f64); 5] = [
    (Nutrient::Energy, 2263.0),
    (Nutrient::Fat, 32.0),
    (Nutrient::Carbohydrate, 55.0),
    (Nutrient::Protein, 8.0),
    (Nutrient::Fibre, 1.0),
];

fn said_of(items: Vec<Ingredient>) -> Vec<String> {
    let mut book = Book::default();
    for item in items {
        book.ingredients.put(item);
    }
    findings(&book).iter().map(ToString::to_string).collect()
}

fn with(nutrient: Nutrient, value: f64) -> Ingredient {
    let mut item = label(&CREAMER);
    item.composition
        .printed
        .insert(nutrient, Figure::new(value, Evidence::Label));
    item
}

#[test]
fn the_check_reckons_with_the_factors_of_the_engine() {
    for (nutrient, factor) in [
        (Nutrient::Fat, energy::FAT),
        (Nutrient::Carbohydrate, energy::CARBOHYDRATE),
        (Nutrient::Protein, energy::PROTEIN),
        (Nutrient::Fibre, energy::FIBRE),
        (Nutrient::Acid, energy::ORGANIC_ACID),
    ] {
        // Everything else is stated to be nothing; ten grams more of one thing are ten times its factor.
        let energy_with = |grams: f64| {
            let parts = [
                Nutrient::Fat,
                Nutrient::Carbohydrate,
                Nutrient::Protein,
                Nutrient::Fibre,
                Nutrient::Acid,
                Nutrient::Polyols,
            ];
            let mut item = label(&parts.map(|part| (part, 0.0)));
            item.composition
                .printed
                .insert(nutrient, Figure::new(grams, Evidence::Label));
            let range = energy_of_composition(&item.composition, false).unwrap();
            f64::midpoint(range.from, range.to)
        };
        let difference = energy_with(40.0) - energy_with(30.0);
        assert!(
            (difference - 10.0 * factor.kj_per_g).abs() < 1e-9,
            "{nutrient:?}: {difference}"
        );
    }
}

#[test]
fn an_energy_that_the_composition_does_not_give_is_found_and_said_by_how_much() {
    assert_eq!(said_of(vec![label(&CREAMER)]), Vec::<String>::new());
    for fits in [2180.0, 2340.0] {
        assert_eq!(
            said_of(vec![with(Nutrient::Energy, fits)]),
            Vec::<String>::new(),
            "{fits}"
        );
    }
    // Polyols are not stated, so that all of the 55 g could be: from 2263 − 28 − 7 × 55 = 1850 kJ on.
    let said = said_of(vec![with(Nutrient::Energy, 1400.0)]).concat();
    assert!(
        said.contains("stated as 1400 kJ, 24 % too low; expected 1850 to"),
        "{said}"
    );
    let said = said_of(vec![with(Nutrient::Energy, 3100.0)]).concat();
    assert!(said.contains("% too high"), "{said}");
    let said = said_of(vec![with(Nutrient::Energy, 541.0)]).concat();
    assert!(said.contains("fits as kilocalories"), "{said}");
}

#[test]
fn parts_beyond_their_whole_are_found_in_every_basis() {
    let said = said_of(vec![with(Nutrient::Protein, 20.0)]).concat();
    assert!(
        said.contains("fat, carbohydrate, protein, fibre add up to 108 g in 100 g"),
        "{said}"
    );
    let mut serving = label(&[(Nutrient::Fat, 12.0), (Nutrient::Carbohydrate, 25.0)]);
    serving.composition.basis = Basis::PerServing(30.0);
    assert!(
        said_of(vec![serving.clone()])
            .concat()
            .contains("add up to 37 g in 30 g")
    );
    serving.composition.basis = Basis::PerServing(38.0);
    assert_eq!(said_of(vec![serving]), Vec::<String>::new());
    for (nutrient, words) in [
        (
            Nutrient::Sugars,
            "sugars (60) are more than carbohydrate (55)",
        ),
        (
            Nutrient::Polyols,
            "polyols (60) are more than carbohydrate (55)",
        ),
        (Nutrient::Saturates, "saturates (60) are more than fat (32)"),
    ] {
        let said = said_of(vec![with(nutrient, 60.0)]).concat();
        assert!(said.contains(words), "{said}");
    }
}

#[test]
fn a_density_that_the_composition_does_not_give_is_found() {
    let syrup = |density: f64| {
        let mut item = label(&[(Nutrient::Carbohydrate, 70.0)]);
        item.form = Form::Syrup;
        item.density = Some(Figure::new(density, Evidence::SpecSheet));
        said_of(vec![item]).concat()
    };
    // 70 % sugar has 1.347 g/ml at 20 °C (ICUMSA).
    assert_eq!(syrup(1.347), "");
    for (wrong, words) in [
        (1.0, "the density is 1 g/ml; expected 1.2"),
        (1.7, "the density is 1.7 g/ml; expected 1.2"),
    ] {
        assert!(syrup(wrong).contains(words), "{}", syrup(wrong));
    }
    let powder = |bulk: f64| {
        let mut item = label(&CREAMER);
        item.bulk_density = Some(Figure::new(bulk, Evidence::Measured));
        said_of(vec![item]).concat()
    };
    assert_eq!(powder(0.45), "");
    assert!(
        powder(1.2).contains("the bulk density is 1.2 g/ml"),
        "{}",
        powder(1.2)
    );
}

#[test]
fn claims_that_the_entry_speaks_against_are_found() {
    let claiming = |dairy_free, vegan, contains: Vec<Allergen>| {
        let mut item = label(&CREAMER);
        item.diet = evensip::book::Diet { dairy_free, vegan };
        item.allergens = Some(AllergenStatement {
            contains,
            may_contain: vec![Allergen::Milk],
        });
        item
    };
    let yes = Some(true);
    assert_eq!(
        said_of(vec![claiming(yes, yes, vec![Allergen::Soybeans])]),
        Vec::<String>::new()
    );
    for (item, words) in [
        (
            claiming(yes, None, vec![Allergen::Milk]),
            "dairy-free, but its allergens contain milk",
        ),
        (
            claiming(None, yes, vec![Allergen::Eggs]),
            "vegan, but its allergens contain eggs",
        ),
        (
            claiming(Some(false), yes, vec![]),
            "vegan, but it is stated not to be dairy-free",
        ),
    ] {
        let said = said_of(vec![item]);
        assert!(said.len() == 1 && said[0].contains(words), "{said:?}");
    }
    let mut honey = claiming(None, yes, vec![]);
    honey.composition.sugar_profile = Some(SugarProfile::Honey);
    assert!(
        said_of(vec![honey])
            .concat()
            .contains("its sugars are those of honey")
    );
}

#[test]
fn a_claim_of_what_the_house_makes_is_held_against_its_parts() {
    let mut milk = sample::ingredient("milk", Form::Liquid, Role::Creamer, &[]);
    milk.allergens = Some(AllergenStatement {
        contains: vec![Allergen::Milk],
        may_contain: vec![],
    });
    let mut foam = sample::ingredient("foam", Form::Liquid, Role::Creamer, &[]);
    foam.diet.vegan = Some(true);
    foam.allergens = Some(AllergenStatement::default());
    foam.house_made = Some(HouseMade {
        recipe: RecipeId::new("drink").unwrap(),
        yield_grams: Figure::new(100.0, Evidence::Measured),
        extraction: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    let recipe = sample::recipe(vec![sample::line("a", "milk", 100.0, 5.0, Role::Creamer)]);
    let book = sample::book(vec![milk, foam], vec![], recipe);
    let said: Vec<String> = findings(&book).iter().map(ToString::to_string).collect();
    assert_eq!(said.len(), 2, "{said:?}");
    assert!(
        said[0].contains("vegan, but milk in it contains milk"),
        "{said:?}"
    );
    assert!(
        said[1].contains("complete in its allergens, but milk in it contains milk"),
        "{said:?}"
    );
}

/// Milk in a foam, the foam in a topping, and a syrup of which there is none.
#[test]
fn a_claim_is_held_against_what_is_deeper_down() {
    let made = |recipe: &str| {
        Some(HouseMade {
            recipe: RecipeId::new(recipe).unwrap(),
            yield_grams: Figure::new(100.0, Evidence::Measured),
            extraction: None,
            shelf_life_hours: None,
            waste_percent: 0.0,
        })
    };
    let contains = |allergen| {
        Some(AllergenStatement {
            contains: vec![allergen],
            may_contain: vec![],
        })
    };
    let item = |id: &str| sample::ingredient(id, Form::Liquid, Role::Creamer, &[]);
    let (mut milk, mut eggs, mut foam, mut topping) =
        (item("milk"), item("eggs"), item("foam"), item("topping"));
    milk.allergens = contains(Allergen::Milk);
    eggs.allergens = contains(Allergen::Eggs);
    foam.house_made = made("foam");
    topping.house_made = made("drink");
    topping.diet.dairy_free = Some(true);
    topping.allergens = Some(AllergenStatement::default());
    let lines = vec![
        sample::line("a", "foam", 50.0, 5.0, Role::Creamer),
        sample::line("b", "eggs", 0.0, 5.0, Role::Creamer),
    ];
    let mut book = sample::book(
        vec![milk, eggs, foam, topping],
        vec![],
        sample::recipe(lines),
    );
    book.recipes.put(evensip::book::Recipe {
        id: RecipeId::new("foam").unwrap(),
        ..sample::recipe(vec![sample::line("a", "milk", 100.0, 5.0, Role::Creamer)])
    });
    let said: Vec<String> = findings(&book).iter().map(ToString::to_string).collect();
    assert_eq!(said.len(), 2, "{said:?}");
    assert!(
        said[0].contains("dairy-free, but milk in it contains milk"),
        "{said:?}"
    );
    assert!(
        said[1].contains("complete in its allergens, but milk in it contains milk"),
        "{said:?}"
    );
}

#[test]
fn a_price_is_stale_against_the_newest_day_of_the_book() {
    let priced = |id: &str, date: Option<&str>| {
        let mut item = sample::ingredient(id, Form::Powder, Role::Flavour, &[]);
        item.price = Some(Price {
            pack: 1.0,
            grams: 100.0,
            waste_percent: 0.0,
            date: date.map(str::to_owned),
        });
        item
    };
    let said = said_of(vec![
        priced("old", Some("2025-05-03")),
        priced("year", Some("2025-05-05")),
        priced("new", Some("2026-05-04")),
        priced("none", None),
    ]);
    assert_eq!(said.len(), 1, "{said:?}");
    assert!(
        said[0].contains("`old`, price: the price is of 2025-05-03, 12 months before"),
        "{said:?}"
    );
    assert_eq!(
        said_of(vec![priced("alone", Some("1999-01-01"))]),
        Vec::<String>::new()
    );
}
