//! A label as it is printed: every basis, either unit of energy, salt or sodium; what is missing and what does not add up.

use evensip::book::{Basis, Ingredient, IngredientId, Nutrient};
use evensip::ui::Area;

use crate::at_the_window::{
    Window, book, choose, click, go, retype, says, text_of, type_into, window_of,
};

/// A new ingredient of which nothing is stated.
fn window() -> Window {
    let mut window = window_of([1360.0, 1900.0]);
    go(&mut window, Area::Counter);
    click(&mut window, "New ingredient");
    window
}

fn item(window: &Window) -> Ingredient {
    let id = IngredientId::new("new-ingredient").unwrap();
    book(window).ingredient(&id).unwrap().as_ref().clone()
}

fn value(window: &Window, nutrient: Nutrient) -> f64 {
    item(window).composition.get(nutrient).unwrap().value
}

#[test]
fn a_label_per_100_g_in_kilojoules_with_salt_lands_as_it_stands() {
    let mut window = window();
    for (field, text) in [
        ("energy", "1650"),
        ("fat", "8,5"),
        ("saturates", "7.9"),
        ("carbohydrate", "78"),
        ("sugars", "61"),
        ("protein", "2.4"),
        ("salt", "0.35"),
    ] {
        type_into(&mut window, &format!("label: {field}"), text);
    }
    assert_eq!(item(&window).composition.basis, Basis::Per100Grams);
    for (nutrient, expected) in [
        (Nutrient::Energy, 1650.0),
        (Nutrient::Fat, 8.5),
        (Nutrient::Saturates, 7.9),
        (Nutrient::Carbohydrate, 78.0),
        (Nutrient::Sugars, 61.0),
        (Nutrient::Protein, 2.4),
        (Nutrient::Salt, 0.35),
    ] {
        assert!(
            (value(&window, nutrient) - expected).abs() < 1e-9,
            "{nutrient:?}"
        );
    }
    assert!(!says(&window, "sugars: not stated — read the label"));
    assert!(
        says(&window, "price: not stated"),
        "what is missing has a name"
    );
    assert!(
        !says(&window, "caffeine: not stated"),
        "no pack prints what its kind can't hold"
    );
}

#[test]
fn sodium_is_salt_and_calories_are_kilojoules_whichever_way_they_are_typed() {
    let mut window = window();
    choose(&mut window, "Salt is printed as: salt", "sodium");
    for text in ["400", "400 mg", "0.4 g", "0,4 g"] {
        retype(&mut window, "label: sodium", text);
        assert!(
            (value(&window, Nutrient::Salt) - 1.0).abs() < 1e-9,
            "{text}"
        );
    }
    choose(&mut window, "Salt is printed as: sodium", "salt");
    assert_eq!(text_of(&window, "label: salt"), "1");
    // A unit typed behind the number counts, whatever the field is set to.
    type_into(&mut window, "label: energy", "420 kcal");
    assert!((value(&window, Nutrient::Energy) - 420.0 * 4.184).abs() < 1e-9);
    choose(&mut window, "Energy is printed in: kJ", "kcal");
    assert_eq!(text_of(&window, "label: energy"), "420");
    type_into(&mut window, "label: sugars", "12 kcal");
    assert!(item(&window).composition.get(Nutrient::Sugars).is_none());
    assert!(says(
        &window,
        "“kcal” is not a unit of this figure; enter a number in g"
    ));
}

#[test]
fn a_label_per_100_ml_waits_for_the_density_and_says_so() {
    let mut window = window();
    choose(&mut window, "Form: powder", "syrup");
    choose(&mut window, "Figures are per: 100 g", "100 ml");
    type_into(&mut window, "label: sugars", "90");
    assert_eq!(item(&window).composition.basis, Basis::Per100Millilitres);
    assert!(says(
        &window,
        "the label is per 100 ml, so weigh 100 ml of it"
    ));
    type_into(&mut window, "Density", "1.25");
    assert!(!says(&window, "so weigh 100 ml of it"));
    // 90 g in 100 ml that weigh 125 g are 72 g in 100 g.
    assert!(says(&window, "72.0 per 100 g"));
    assert!(
        (value(&window, Nutrient::Sugars) - 90.0).abs() < 1e-9,
        "the book keeps what is printed"
    );
}

#[test]
fn a_serving_may_be_stated_in_millilitres_once_the_density_is_known() {
    let mut window = window();
    choose(&mut window, "Form: powder", "liquid");
    choose(&mut window, "Figures are per: 100 g", "serving");
    type_into(&mut window, "Grams of a serving", "250 ml");
    assert!(says(&window, "a serving in ml needs a density"));
    type_into(&mut window, "Density", "1.04");
    retype(&mut window, "Grams of a serving", "250ml");
    let Basis::PerServing(grams) = item(&window).composition.basis else {
        panic!("{:?}", item(&window).composition.basis);
    };
    assert!((grams - 260.0).abs() < 1e-9);
}

#[test]
fn what_does_not_add_up_is_said_beside_the_label() {
    let mut window = window();
    for (field, text) in [
        ("energy", "400"),
        ("fat", "10"),
        ("saturates", "12"),
        ("carbohydrate", "60"),
        ("sugars", "75"),
        ("protein", "2"),
    ] {
        type_into(&mut window, &format!("label: {field}"), text);
    }
    assert!(says(
        &window,
        "12 g of saturates are more than the 10 g of fat"
    ));
    assert!(says(
        &window,
        "75 g of sugars are more than the 60 g of carbohydrate"
    ));
    assert!(says(&window, "stated energy is 400 kJ"));
}
