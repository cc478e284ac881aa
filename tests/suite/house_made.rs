//! What the house makes is begun where it is wanted, in a shop that has cups: batches, brews of leaf; pieces and foams beside them.

use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable as _;
use evensip::balance::{Measurand, house_brew};
use evensip::book::{
    Amount, Book, Evidence, Form, Ingredient, IngredientId, Line, MeasureKind, Price, RecipeId,
    Role, Stage, VesselKind,
};
use evensip::ui::Area;
use evensip::ui::counter_area::CounterItem;

use crate::at_the_window::{
    TALL, Window, WindowBuilder, at_the_counter, book, choose, click, go, has, press, says, show,
    text_of, type_into, type_on, undo,
};
use crate::sample::{balance_of, cup, line, recipe, water};

fn id(text: &str) -> IngredientId {
    IngredientId::new(text).unwrap()
}

fn leaf() -> Ingredient {
    let mut leaf = Ingredient::new(id("leaf"), "Dark Kelby leaf".to_owned());
    leaf.form = Form::Leaf;
    leaf.role = Role::Tea;
    leaf.price = Some(Price {
        pack: 13.5,
        content: evensip::quantity::Pack::of_grams(500.0),
        waste_percent: 0.0,
        date: None,
    });
    leaf
}

/// A shop with cups, a leaf, one drink, and nothing that is made in the house.
fn shop() -> Book {
    let mut drink = recipe(vec![line("water", "water", 200.0, 78.0, Role::Water)]);
    drink.cup = Some(cup("cup", 12.0, 1.3).id);
    crate::sample::book(vec![water(), leaf()], vec![cup("cup", 12.0, 1.3)], drink)
}

fn window() -> Window {
    let mut window = WindowBuilder::of(TALL).with_book(shop()).open();
    show(&mut window, "drink", None);
    window
}

fn lines(window: &Window, recipe: &str) -> Vec<Line> {
    let book = book(window);
    let recipe = book.recipe(&RecipeId::new(recipe).unwrap()).unwrap();
    let lines = recipe.entries.iter().filter_map(|entry| entry.line());
    lines.cloned().collect()
}

#[test]
fn a_tea_is_brewed_from_its_leaf_where_a_drink_wants_it() {
    let mut window = window();
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "dark");
    click(&mut window, "Brew a tea from Dark Kelby leaf");
    // The keyboard is in its amount.
    type_on(&mut window, "100 ml");
    let after = book(&window);
    let tea = after.ingredient(&id("dark-kelby-brewed")).unwrap();
    assert_eq!(
        (tea.name.as_str(), tea.form),
        ("Dark Kelby, brewed", Form::Liquid)
    );
    let made = tea.house_made.as_ref().unwrap();
    assert_eq!(after.recipe(&made.recipe).unwrap().cup, None);
    let brew = house_brew(&after, tea).unwrap();
    assert_eq!((brew.brew.water, brew.brew.leaf), (1000.0, 20.0));
    let drink = balance_of(&after, "drink", None);
    assert!(drink.figures.complete(Measurand::TeaSolids).unwrap() > 0.3);
    // The leaf is what it was; a second brew of it is not offered again.
    assert_eq!(after.ingredient(&id("leaf")).unwrap().as_ref(), &leaf());
    press(&mut window, Modifiers::NONE, Key::Escape);
    click(&mut window, "See its recipe");
    assert!(has(&window, "Amount of Dark Kelby leaf"));
    let lines = lines(&window, "dark-kelby-brewed");
    assert_eq!(lines[1].stage, Stage::Steeped);
    // Brew, ingredient and line were one step, and the amount another.
    undo(&mut window);
    undo(&mut window);
    assert_eq!(*book(&window), shop());
}

#[test]
fn a_shop_with_cups_begins_a_batch_from_the_list_and_from_the_form() {
    let mut window = window();
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "Quince glaze");
    click(&mut window, "New house-made “Quince glaze”");
    let after = book(&window);
    let glaze = after.ingredient(&id("quince-glaze")).unwrap();
    let made = glaze.house_made.as_ref().unwrap();
    assert_eq!(made.yield_grams.evidence, Evidence::Assumed);
    assert_eq!(after.recipe(&made.recipe).unwrap().cup, None);
    assert!(
        lines(&window, "drink")
            .iter()
            .any(|line| line.ingredient == glaze.id)
    );
    // In the form of an ingredient that is bought until now.
    go(&mut window, Area::Counter);
    click(&mut window, "New ingredient");
    type_into(&mut window, "Name", "Cooked pearls");
    choose(
        &mut window,
        "Comes from: a supplier",
        "a new batch made here",
    );
    assert_eq!(window.state().view().area, Area::Recipe);
    let after = book(&window);
    let pearls = after.ingredient(&id("new-ingredient")).unwrap();
    let made = pearls.house_made.as_ref().unwrap();
    assert_eq!(after.recipe(&made.recipe).unwrap().name, "Cooked pearls");
    assert_eq!(
        after
            .vessels
            .iter()
            .filter(|vessel| vessel.kind == VesselKind::Cup)
            .count(),
        1
    );
}

#[test]
fn a_brew_is_written_down_in_the_form_of_its_tea() {
    let mut window = window();
    go(&mut window, Area::Counter);
    click(&mut window, "New ingredient");
    type_into(&mut window, "Name", "Kelby tea");
    choose(
        &mut window,
        "Comes from: a supplier",
        "a new brew of Dark Kelby leaf",
    );
    type_into(&mut window, "Water of the brew", "125 g");
    type_into(&mut window, "Leaf of the brew", "6 g");
    type_into(&mut window, "Steeping time in minutes", "10");
    let tea = |window: &Window| {
        book(window)
            .ingredient(&id("new-ingredient"))
            .unwrap()
            .clone()
    };
    let reckoned = tea(&window).house_made.clone().unwrap();
    assert_eq!(reckoned.yield_grams.evidence, Evidence::Assumed);
    assert!(
        (reckoned.yield_grams.value - 102.0).abs() < 1.5,
        "{reckoned:?}"
    );
    assert_eq!(reckoned.steep_minutes, Some(10.0));
    type_into(&mut window, "Yield of a batch", "100");
    let brewed = tea(&window);
    assert_eq!(brewed.role, Role::Tea);
    let after = book(&window);
    let brew = house_brew(&after, &brewed).unwrap();
    assert_eq!((brew.brew.water, brew.brew.leaf), (125.0, 6.0));
    assert!(says(&window, "of spent leaf behind"));
    // 6 g at 27 a kilogram for 100 g of tea; the water has no price.
    assert!(says(&window, "a price is missing"));
    // Half a number on the way leaves no trace: the last step undone is the yield, then the time.
    undo(&mut window);
    assert_eq!(tea(&window).house_made.clone().unwrap(), reckoned);
}

#[test]
fn the_planner_writes_a_brew_onto_no_leaf_and_counts_the_steeping() {
    let mut window = window();
    go(&mut window, Area::Serving);
    click(&mut window, "Tea: Dark Kelby leaf");
    type_into(&mut window, "Ready tea", "2 l");
    type_into(&mut window, "Time when the water is poured on", "10:00");
    type_into(&mut window, "Steeping time in minutes", "10");
    assert!(says(&window, "Ready at 10:10"));
    assert!(!says(&window, "Use these figures for"));
    assert!(has(&window, "spent leaf left behind") || says(&window, "spent leaf left behind"));
    click(&mut window, "Add “Dark Kelby, brewed” to the book");
    let after = book(&window);
    assert_eq!(after.ingredient(&id("leaf")).unwrap().as_ref(), &leaf());
    let tea = after.ingredient(&id("dark-kelby-brewed")).unwrap();
    assert_eq!(tea.house_made.as_ref().unwrap().steep_minutes, Some(10.0));
    // Chosen now, its own batch is what the planner goes by.
    assert!(says(
        &window,
        "This is the batch of Dark Kelby, brewed in the book."
    ));
    type_into(&mut window, "Ready tea", "4 l");
    click(
        &mut window,
        "Use this brew as the batch of Dark Kelby, brewed",
    );
    let after = book(&window);
    let tea = after.ingredient(&id("dark-kelby-brewed")).unwrap();
    let yields = tea.house_made.as_ref().unwrap().yield_grams;
    assert!((yields.value - 4000.0).abs() < 5.0, "{yields:?}");
}

#[test]
fn slices_are_counted_in_pieces_of_the_weight_of_one() {
    let mut book_of_slices = shop();
    let mut slice = Ingredient::new(id("slice"), "Dried pear slice".to_owned());
    slice.form = Form::Pieces;
    slice.role = Role::Garnish;
    book_of_slices.ingredients.put(slice);
    let mut window = WindowBuilder::of(TALL).with_book(book_of_slices).open();
    show(&mut window, "drink", None);
    go(&mut window, Area::Counter);
    at_the_counter(&mut window, CounterItem::Ingredient(id("slice")));
    type_into(&mut window, "Weight of one piece", "1.4");
    let after = book(&window);
    let measure = after.measures.iter().next().unwrap();
    assert_eq!(
        (measure.kind, measure.readings.len()),
        (MeasureKind::Piece, 1)
    );
    go(&mut window, Area::Recipe);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "dried");
    press(&mut window, Modifiers::NONE, Key::Enter);
    for typed in ["3 pieces", "3 slices", "3"] {
        crate::at_the_window::retype(&mut window, "Amount of Dried pear slice", typed);
        let lines = lines(&window, "drink");
        assert_eq!(
            lines[1].amount,
            Amount::Count(3.0, measure.id.clone()),
            "{typed}"
        );
        assert_eq!(lines[1].stage, Stage::OnTop);
    }
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(text_of(&window, "Amount of Dried pear slice"), "3 pieces");
    let balance = balance_of(&book(&window), "drink", None);
    assert!((balance.lines[1].grams.unwrap() - 4.2).abs() < 1e-9);
    // One reading says little of the next slice.
    assert!(balance.lines[1].u_grams.unwrap() > 0.1);
}

#[test]
fn what_is_whipped_floats_and_its_density_is_no_error() {
    let mut foamy = shop();
    let mut topping = Ingredient::new(id("whip"), "Whipped topping".to_owned());
    topping.form = Form::Foam;
    topping.role = Role::Topping;
    topping.density = Some(evensip::book::Figure::new(0.42, Evidence::Label));
    foamy.ingredients.put(topping);
    let findings = evensip::book::findings(&foamy);
    let of_density = |finding: &&evensip::book::Finding| matches!(&finding.place, evensip::book::Place::Ingredient(of, field) if *of == id("whip") && field.contains("density"));
    assert_eq!(findings.iter().find(of_density), None);
    let mut window = WindowBuilder::of(TALL).with_book(foamy).open();
    show(&mut window, "drink", None);
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "whipped top");
    press(&mut window, Modifiers::NONE, Key::Enter);
    type_on(&mut window, "50 ml");
    let found = lines(&window, "drink");
    assert_eq!(found[1].stage, Stage::OnTop);
    let grams = balance_of(&book(&window), "drink", None).lines[1]
        .grams
        .unwrap();
    assert!((grams - 21.0).abs() < 0.5, "{grams}");
}

#[test]
fn a_recipe_with_a_cup_becomes_a_batch_by_taking_the_cup_away() {
    let mut window = window();
    choose(&mut window, "Cup: cup", "no cup");
    assert_eq!(
        book(&window)
            .recipe(&RecipeId::new("drink").unwrap())
            .unwrap()
            .cup,
        None
    );
    undo(&mut window);
    assert!(window.query_by_label("Cup: cup").is_some());
}
