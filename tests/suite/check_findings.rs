//! What the check finds in figures that are each possible and do not go together.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::balance::published::energy;
use evensip::book::{
    AgainstClaim, Allergen, AllergenStatement, Basis, Book, Evidence, Figure, FigureName,
    FindingKind, Form, HouseMade, Ingredient, IngredientId, Nutrient, Price, RecipeId, Role,
    StatedClaim, SugarProfile, energy_of_composition, findings,
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

fn found_in(items: Vec<Ingredient>) -> Vec<FindingKind> {
    let mut book = Book::default();
    for item in items {
        book.ingredients.put(item);
    }
    kinds(&book)
}

fn kinds(book: &Book) -> Vec<FindingKind> {
    findings(book)
        .into_iter()
        .map(|finding| finding.kind)
        .collect()
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
    assert_eq!(found_in(vec![label(&CREAMER)]), []);
    for fits in [2180.0, 2340.0] {
        let found = found_in(vec![with(Nutrient::Energy, fits)]);
        assert_eq!(found, [], "{fits}");
    }
    // Polyols are not stated, so that all of the 55 g could be: from 2263 − 28 − 7 × 55 = 1850 kJ on.
    let off = |energy: f64| match found_in(vec![with(Nutrient::Energy, energy)]).as_slice() {
        [
            FindingKind::EnergyNotOfComposition {
                stated,
                from,
                percent: Some(percent),
                fits_as_kilocalories,
                ..
            },
        ] => (
            *stated,
            from.round(),
            percent.round(),
            *fits_as_kilocalories,
        ),
        other => panic!("{other:?}"),
    };
    assert_eq!(off(1400.0), (1400.0, 1850.0, -24.0, false));
    assert!(off(3100.0).2 > 0.0);
    assert!(off(541.0).3);
}

#[test]
fn parts_beyond_their_whole_are_found_in_every_basis() {
    let over = |item: Ingredient| match found_in(vec![item]).as_slice() {
        [FindingKind::SumOverWhole { parts, sum, whole }, ..] => {
            Some((parts.clone(), sum.round(), *whole))
        }
        _ => None,
    };
    let parts = vec![
        Nutrient::Fat,
        Nutrient::Carbohydrate,
        Nutrient::Protein,
        Nutrient::Fibre,
    ];
    let found = over(with(Nutrient::Protein, 20.0));
    assert_eq!(found, Some((parts, 108.0, 100.0)));
    let mut serving = label(&[(Nutrient::Fat, 12.0), (Nutrient::Carbohydrate, 25.0)]);
    serving.composition.basis = Basis::PerServing(30.0);
    let parts = vec![Nutrient::Fat, Nutrient::Carbohydrate];
    assert_eq!(over(serving.clone()), Some((parts, 37.0, 30.0)));
    serving.composition.basis = Basis::PerServing(38.0);
    assert_eq!(found_in(vec![serving]), []);
    for (part, whole, whole_value) in [
        (Nutrient::Sugars, Nutrient::Carbohydrate, 55.0),
        (Nutrient::Polyols, Nutrient::Carbohydrate, 55.0),
        (Nutrient::Saturates, Nutrient::Fat, 32.0),
    ] {
        let found = found_in(vec![with(part, 60.0)]);
        let wanted = FindingKind::PartOverWhole {
            part,
            part_value: 60.0,
            whole,
            whole_value,
        };
        assert!(found.contains(&wanted), "{found:?}");
    }
}

#[test]
fn a_density_that_the_composition_does_not_give_is_found() {
    // Which density, what is stated, and the least that the composition gives.
    let densities = |item: Ingredient| -> Vec<(FigureName, f64, f64)> {
        let found = found_in(vec![item]).into_iter();
        found
            .map(|kind| match kind {
                FindingKind::DensityNotOfComposition {
                    what, stated, low, ..
                } => (what, stated, (low * 10.0).floor() / 10.0),
                other => panic!("{other:?}"),
            })
            .collect()
    };
    let syrup = |density: f64| {
        let mut item = label(&[(Nutrient::Carbohydrate, 70.0)]);
        item.form = Form::Syrup;
        item.density = Some(Figure::new(density, Evidence::SpecSheet));
        densities(item)
    };
    // 70 % sugar has 1.347 g/ml at 20 °C (ICUMSA).
    assert_eq!(syrup(1.347), []);
    for wrong in [1.0, 1.7] {
        assert_eq!(syrup(wrong), [(FigureName::Density, wrong, 1.2)]);
    }
    let powder = |bulk: f64| {
        let mut item = label(&CREAMER);
        item.bulk_density = Some(Figure::new(bulk, Evidence::Measured));
        densities(item)
    };
    assert_eq!(powder(0.45), []);
    assert_eq!(powder(1.2)[0].0, FigureName::BulkDensity);
}

#[test]
fn claims_that_the_entry_speaks_against_are_found() {
    let claiming = |dairy_free, vegan, contains: Vec<Allergen>| {
        let mut item = label(&CREAMER);
        item.diet = evensip::book::Diet { dairy_free, vegan };
        item.allergens = Some(AllergenStatement {
            contains,
            may_contain: vec![Allergen::Milk],
            free_of: Vec::new(),
        });
        item
    };
    let yes = Some(true);
    let soy = claiming(yes, yes, vec![Allergen::Soybeans]);
    assert_eq!(found_in(vec![soy]), []);
    let mut honey = claiming(None, yes, vec![]);
    honey.composition.sugar_profile = Some(SugarProfile::Honey);
    for (item, claim, against) in [
        (
            claiming(yes, None, vec![Allergen::Milk]),
            StatedClaim::DairyFree,
            AgainstClaim::Contains(Allergen::Milk),
        ),
        (
            claiming(None, yes, vec![Allergen::Eggs]),
            StatedClaim::Vegan,
            AgainstClaim::Contains(Allergen::Eggs),
        ),
        (
            claiming(Some(false), yes, vec![]),
            StatedClaim::Vegan,
            AgainstClaim::NotDairyFree,
        ),
        (honey, StatedClaim::Vegan, AgainstClaim::Honey),
    ] {
        let found = found_in(vec![item]);
        assert_eq!(found, [FindingKind::ClaimNotCarried { claim, against }]);
    }
}

/// Milk among the parts speaks against a claim, and against the list of allergens.
fn milk_against(claim: StatedClaim) -> [FindingKind; 2] {
    [claim, StatedClaim::AllergensListed].map(|claim| FindingKind::ClaimNotCarried {
        claim,
        against: AgainstClaim::PartContains(IngredientId::new("milk").unwrap(), Allergen::Milk),
    })
}

#[test]
fn a_claim_of_what_the_house_makes_is_held_against_its_parts() {
    let mut milk = sample::ingredient("milk", Form::Liquid, Role::Creamer, &[]);
    milk.allergens = Some(AllergenStatement {
        contains: vec![Allergen::Milk],
        may_contain: vec![],
        free_of: Vec::new(),
    });
    let mut foam = sample::ingredient("foam", Form::Liquid, Role::Creamer, &[]);
    foam.diet.vegan = Some(true);
    foam.allergens = Some(AllergenStatement::default());
    foam.house_made = Some(HouseMade {
        recipe: RecipeId::new("drink").unwrap(),
        yield_grams: Figure::new(100.0, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    let recipe = sample::recipe(vec![sample::line("a", "milk", 100.0, 5.0, Role::Creamer)]);
    let book = sample::book(vec![milk, foam], vec![], recipe);
    assert_eq!(kinds(&book), milk_against(StatedClaim::Vegan));
}

/// Milk in a foam, the foam in a topping, and a syrup of which there is none.
#[test]
fn a_claim_is_held_against_what_is_deeper_down() {
    let made = |recipe: &str| {
        Some(HouseMade {
            recipe: RecipeId::new(recipe).unwrap(),
            yield_grams: Figure::new(100.0, Evidence::Measured),
            extraction: None,
            steep_minutes: None,
            shelf_life_hours: None,
            waste_percent: 0.0,
        })
    };
    let contains = |allergen| {
        Some(AllergenStatement {
            contains: vec![allergen],
            may_contain: vec![],
            free_of: Vec::new(),
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
    assert_eq!(kinds(&book), milk_against(StatedClaim::DairyFree));
}

#[test]
fn a_price_is_stale_against_the_newest_day_of_the_book() {
    let priced = |id: &str, date: Option<&str>| {
        let mut item = sample::ingredient(id, Form::Powder, Role::Flavour, &[]);
        item.price = Some(Price {
            pack: 1.0,
            content: evensip::quantity::Pack::of_grams(100.0),
            waste_percent: 0.0,
            date: date.map(str::to_owned),
        });
        item
    };
    let found = found_in(vec![
        priced("old", Some("2025-05-03")),
        priced("year", Some("2025-05-05")),
        priced("new", Some("2026-05-04")),
        priced("none", None),
    ]);
    let stale = FindingKind::StalePrice {
        date: "2025-05-03".into(),
        months: 12,
        newest: "2026-05-04".into(),
    };
    assert_eq!(found, [stale]);
    assert_eq!(found_in(vec![priced("alone", Some("1999-01-01"))]), []);
}
