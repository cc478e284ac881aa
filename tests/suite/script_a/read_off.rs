//! What has been set up is what was read off.

use evensip::balance::{
    AxisDifference, Measurand, Taste, balance_version, difference, house_brew, noticeable_step,
    standard_balance, volume_of_use,
};
use evensip::book::{
    Axis, Basis, Book, Entry, Form, Ingredient, MeasureKind, Nutrient, Recipe, Role, Temperature,
    VesselKind,
};
use evensip::swap::drifted;

pub(super) fn named(book: &Book, name: &str) -> Ingredient {
    let found = book
        .ingredients
        .iter()
        .find(|item| item.full_name() == name);
    found
        .unwrap_or_else(|| panic!("no `{name}`"))
        .as_ref()
        .clone()
}

/// What has been set up is what was read off the packs, scales and jugs.
pub(super) fn assert_it_is_the_shop(book: &Book) {
    let settings = &book.settings;
    assert_eq!(settings.shop, "Millrace Tea");
    assert_eq!(settings.sales_tax_percent, Some(10.0));
    assert_eq!(settings.room_temperature, 21.0.into());
    let vessels: Vec<_> = book
        .vessels
        .iter()
        .map(|item| (item.name.as_str(), item.kind, item.capacity, item.mass))
        .collect();
    assert_eq!(
        vessels,
        [
            ("paper cup 500 ml", VesselKind::Cup, 500.0, Some(12.0)),
            ("paper cup 700 ml", VesselKind::Cup, 700.0, None),
            ("clear cup 500 ml", VesselKind::Cup, 500.0, None),
            (
                "steel shaker 700 ml",
                VesselKind::Shaker,
                700.0,
                Some(240.0)
            ),
        ]
    );
    let kinds: Vec<_> = book.measures.iter().map(|item| item.kind).collect();
    assert_eq!(
        kinds,
        [
            MeasureKind::Scoop,
            MeasureKind::Scoop,
            MeasureKind::Pump,
            MeasureKind::Spoon,
            MeasureKind::IceScoop,
            MeasureKind::Button,
            MeasureKind::Piece,
        ]
    );
    let measure = |at: usize| book.measures.iter().nth(at).unwrap();
    let barley = named(book, "Thornby roasted barley powder");
    let brown = measure(0).calibration(Some(&barley.id)).unwrap();
    assert!((brown.grams - 8.98).abs() < 1e-9 && brown.readings == 10);
    let white = named(book, "Ostley creamer powder");
    let white = measure(1).calibration(Some(&white.id)).unwrap();
    assert!((white.grams - 7.41).abs() < 1e-9);
    let pump = volume_of_use(measure(2)).unwrap();
    assert!((pump.value - 7.7).abs() < 1e-9 && measure(2).readings.len() == 10);
    let spoon = volume_of_use(measure(3)).unwrap();
    assert!((spoon.value - 7.0).abs() < 1e-9);
    let tap = measure(5).temperature;
    assert_eq!(tap, Some(Temperature::between(75.0, 80.0)));
    let aldgrave = named(book, "Aldgrave roasted barley powder");
    assert_eq!(aldgrave.composition.basis, Basis::PerServing(22.0));
    let sodium = aldgrave.composition.get(Nutrient::Salt).unwrap().value;
    assert!((sodium - 0.1125).abs() < 1e-9, "{sodium}");
    let forms = [
        ("Ostley oat creamer powder", Form::Powder, Role::Creamer),
        ("Pellow quince syrup", Form::Syrup, Role::Flavour),
        ("house sweetener syrup", Form::Syrup, Role::Sweetener),
        ("house sweetener crystals", Form::Crystals, Role::Sweetener),
        ("black tea leaf", Form::Leaf, Role::Tea),
    ];
    for (name, form, role) in forms {
        let item = named(book, name);
        assert_eq!((item.form, item.role), (form, role), "{name}");
    }
}

fn lantern(book: &Book) -> &Recipe {
    let mut recipes = book.recipes.iter();
    let found = recipes.find(|recipe| recipe.name == "Barley Lantern");
    found.unwrap()
}

/// Worked by hand where it can be: two scoops of Thornby hold 2 × 8.98 g × 61 % of sugar.
pub(super) fn assert_it_is_the_drink(book: &Book) {
    let recipe = lantern(book);
    assert_eq!(recipe.approvals.len(), 1);
    let approval = &recipe.approvals[0];
    assert_eq!(
        (approval.by.as_str(), approval.tasted_at),
        ("Wren", Some(52.0))
    );
    let told = recipe.entries.iter().filter_map(|entry| match entry {
        Entry::Instruction(told) => Some(told.text.as_str()),
        Entry::Line(_) => None,
    });
    assert_eq!(told.collect::<Vec<_>>(), ["stir", "pour"]);
    let drink = balance_version(book, recipe, None).unwrap();
    let grams: Vec<_> = drink.lines.iter().filter_map(|line| line.grams).collect();
    assert_eq!(grams.len(), 6, "every line has a mass");
    assert!((grams[0] - 17.96).abs() < 1e-6 && (grams[1] - 14.82).abs() < 1e-6);
    let served = drink.reported(Measurand::ServingTemperature);
    let celsius = served.value.unwrap();
    assert!((45.0..60.0).contains(&celsius), "{celsius}");
    assert!(drink.reported(Measurand::TotalSugar).value.unwrap() > 25.0);
}

/// What the house makes: 125 ml on 6 g give 100 g of tea, 1,000 g of dry pearls 2,200 g, of which 6 % are thrown away.
pub(super) fn assert_it_is_what_the_house_makes(book: &Book) {
    let tea = named(book, "black tea, brewed");
    let made = tea.house_made.as_ref().unwrap();
    assert_eq!(
        (made.steep_minutes, made.yield_grams.value),
        (Some(10.0), 100.0)
    );
    let brew = house_brew(book, &tea).unwrap();
    let of_brew = (brew.brew.water, brew.brew.leaf);
    // A millilitre of water as hot as it is poured on, 95 °C, weighs 0.962 g.
    assert!(
        (of_brew.0 - 120.25).abs() < 0.1 && (of_brew.1 - 6.0).abs() < 1e-9,
        "{of_brew:?}"
    );
    let pearls = named(book, "cooked pearls");
    let made = pearls.house_made.as_ref().unwrap();
    assert_eq!(
        (
            made.yield_grams.value,
            made.shelf_life_hours,
            made.waste_percent
        ),
        (2200.0, Some(4.0), 6.0)
    );
    let topping = named(book, "whipped topping");
    assert_eq!(topping.form, Form::Foam);
    assert!((topping.density.unwrap().value - 0.42).abs() < 1e-12);
    let slice = named(book, "dried pear slice");
    assert_eq!((slice.form, slice.role), (Form::Pieces, Role::Garnish));
}

/// Three swaps, a level of half the sugar, that in a larger cup, and ice: each holds what it is held to.
pub(super) fn assert_it_is_what_became_of_the_drink(book: &Book) {
    let recipe = lantern(book);
    let names: Vec<_> = recipe
        .versions
        .iter()
        .map(|version| version.name.as_str())
        .collect();
    assert_eq!(
        names,
        [
            "with Aldgrave roasted barley powder",
            "with Hurst quince syrup",
            "Ostley oat creamer powder, equal measures",
            "50 % sugar",
            "paper cup 700 ml",
            "iced",
        ]
    );
    let balance = |at: usize| balance_version(book, recipe, Some(&recipe.versions[at].id)).unwrap();
    let (standard, _) = standard_balance(book, recipe, None).unwrap();
    for swapped in [0, 1] {
        let off = difference(&book.settings, &standard, &balance(swapped));
        let tastes = off.axes.iter().filter_map(AxisDifference::taste);
        assert!(
            tastes.into_iter().all(|taste| taste == Taste::Same),
            "{off:?}"
        );
    }
    let unknown = balance(2).reported(Measurand::TotalSugar);
    assert_eq!(
        unknown.missing,
        [named(book, "Ostley oat creamer powder").id]
    );
    let of = |at: usize, measurand| balance(at).figures.complete(measurand).unwrap();
    let (hot, half, large) = (1, 3, 4);
    let sweet = |at| of(at, Measurand::Sweetness);
    assert!(
        sweet(half) < 0.9 * sweet(hot),
        "{} of {}",
        sweet(half),
        sweet(hot)
    );
    // The larger cup of the half-sugar drink stays half sugar, and keeps what gives it its name.
    let step = noticeable_step(&book.settings, &Axis::Sweetness, sweet(half)).0;
    assert!((sweet(large) - sweet(half)).abs() <= step);
    let grown = of(large, Measurand::Volume) / of(half, Measurand::Volume);
    assert!((1.3..1.5).contains(&grown), "{grown}");
    let scoops = |at| {
        balance(at)
            .resolved
            .lines()
            .next()
            .unwrap()
            .amount
            .number()
            .unwrap()
    };
    assert!((scoops(large) / scoops(half) / grown - 1.0).abs() < 0.25);
    let iced = balance(5);
    assert!(iced.iced);
    let left = iced.figures.complete(Measurand::IceLeft).unwrap();
    assert!(left > 50.0, "{left} g of ice left");
    // The scoop has been weighed with another powder since the drink was approved: the drink is the same.
    assert_eq!(drifted(book), []);
}
