//! The swap on the screen: steps that move marks, lines that are held, demands that can't be met, and every recipe at once.

use std::sync::Arc;

use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::book::{Amount, Book, LineId, Recipe, RecipeId, VersionId, resolve};
use evensip::ui::Area;

use crate::at_the_window::{
    Size, Window, ask_swap, book, click, focus, has, press, retype, says, shown, speak, tick,
    type_into, undo, window_on,
};

const SWEETENER: &str = "House sweetener, syrup";

/// A window with the swap of one ingredient for another in a recipe.
fn window(size: Size, recipe: &str, replace: &str, with: &str) -> Window {
    let mut window = window_on(size, Area::Swap, recipe, None);
    ask_swap(&mut window, replace, with);
    window
}

fn chestnut() -> Window {
    window(
        [1360.0, 2000.0],
        "hazelthwaite",
        "tambrel-chestnut",
        "ketterby-chestnut",
    )
}

fn recipe(window: &Window, id: &str) -> Arc<Recipe> {
    let id = RecipeId::new(id).unwrap();
    book(window).recipe(&id).unwrap().clone()
}

fn amount_of(recipe: &Recipe, version: Option<&VersionId>, line: &str) -> Option<Amount> {
    let lines = resolve(recipe, version).0;
    let line = lines.line(&LineId::new(line).unwrap())?;
    Some(line.amount.clone())
}

#[test]
fn a_trainer_steps_through_a_swap_and_every_step_moves_its_marks() {
    let mut window = chestnut();
    click(&mut window, "Step by step");
    // The plain swap: chestnut powder with more sugar in it.
    assert!(says(&window, "Moved: sweetness: level → sweeter by"));
    press(&mut window, Modifiers::NONE, Key::ArrowRight);
    assert!(says(&window, "Moved: sweetness: sweeter by"));
    assert!(says(&window, "1 → ½ spoon: the result"));
    // Beyond the last step there is none.
    press(&mut window, Modifiers::NONE, Key::ArrowRight);
    assert!(says(&window, "Moved: sweetness: sweeter by"));
    press(&mut window, Modifiers::NONE, Key::ArrowLeft);
    assert!(says(&window, "Moved: sweetness: level → sweeter by"));
    click(&mut window, "Step back");
    assert!(
        !says(&window, "Moved:"),
        "the standard has come from nowhere"
    );
    click(&mut window, "Next step");
    assert!(says(&window, "Moved: sweetness: level → sweeter by"));
}

#[test]
fn a_line_that_is_held_stays_in_what_is_kept() {
    let mut window = chestnut();
    let before = recipe(&window, "hazelthwaite");
    click(&mut window, "Show conditions");
    tick(&mut window, SWEETENER);
    assert!(says(&window, "1 line locked or limited"));
    click(&mut window, "Keep as new version");
    let after = recipe(&window, "hazelthwaite");
    let kept = shown(&window).version.expect("the new version is shown");
    assert!(before.version(&kept).is_none());
    assert_eq!(
        amount_of(&after, Some(&kept), "sweetener"),
        amount_of(&before, None, "sweetener")
    );
    assert_ne!(resolve(&after, Some(&kept)).0, resolve(&before, None).0);
}

#[test]
fn limits_are_typed_in_the_measure_of_the_line() {
    let mut window = chestnut();
    click(&mut window, "Show conditions");
    let least = format!("Least of {SWEETENER}");
    type_into(&mut window, &least, "1½ spoons");
    click(&mut window, "Keep as new version");
    let after = recipe(&window, "hazelthwaite");
    let kept = shown(&window).version.unwrap();
    let amount = amount_of(&after, Some(&kept), "sweetener").unwrap();
    assert!(amount.number().unwrap() >= 1.5, "{amount:?}");
}

#[test]
fn a_limit_in_another_measure_is_refused_in_words() {
    let mut window = chestnut();
    click(&mut window, "Show conditions");
    let least = format!("Least of {SWEETENER}");
    type_into(&mut window, &least, "20 ml");
    assert!(says(&window, "this line is counted in spoons"));
}

#[test]
fn a_cap_that_can_not_be_kept_gives_its_reason_and_is_taken_back() {
    let mut window = chestnut();
    click(&mut window, "Show conditions");
    type_into(&mut window, "Sugar per 100 ml at most", "0,5");
    assert!(says(
        &window,
        "No suggestion: a limit of 0.5\u{a0}g of sugar per 100 ml"
    ));
    assert!(says(
        &window,
        "conditions: at most 0.5\u{a0}g of sugar per 100 ml"
    ));
    click(&mut window, "Clear all conditions");
    assert!(!says(&window, "No suggestion"));
}

#[test]
fn amounts_set_by_hand_move_the_level_and_change_nothing_until_they_are_kept() {
    let mut window = chestnut();
    click(&mut window, "By hand");
    let stamp = window.state().workbench().stamp();
    let slider = format!("Amount of {SWEETENER}");
    focus(&mut window, &slider);
    press(&mut window, Modifiers::NONE, Key::ArrowRight);
    press(&mut window, Modifiers::NONE, Key::ArrowRight);
    assert!(says(&window, "Moved: sweetness"));
    assert_eq!(window.state().workbench().stamp(), stamp);
    click(&mut window, "Keep as new version");
    let after = recipe(&window, "hazelthwaite");
    let kept = shown(&window).version.unwrap();
    assert!(kept.as_str().ends_with("by-hand"), "{kept}");
    let amount = amount_of(&after, Some(&kept), "sweetener").unwrap();
    assert!(amount.number().unwrap() > 0.5, "{amount:?}");
}

#[test]
fn every_recipe_that_uses_it_is_taken_in_one_step_and_goes_in_one() {
    let mut window = chestnut();
    let before = book(&window);
    let versions = |book: &Book| -> usize {
        book.recipes
            .iter()
            .map(|recipe| recipe.versions.len())
            .sum()
    };
    click(&mut window, "All recipes that use it");
    tick(&mut window, "Hazelthwaite");
    let words = |window: &Window| {
        let buttons = window.query_all_by_label_contains("new versions");
        let labels = buttons.filter_map(|node| node.accesskit_node().label());
        labels
            .into_iter()
            .find(|label| label.starts_with("Add "))
            .unwrap()
    };
    let label = words(&window);
    let count: usize = label.split_whitespace().nth(1).unwrap().parse().unwrap();
    assert!(count >= 3, "{label}");
    click(&mut window, &label);
    let after = book(&window);
    assert_eq!(versions(&after), versions(&before) + count);
    for recipe in &before.recipes {
        let now = after.recipe(&recipe.id).unwrap();
        assert_eq!(
            (&now.entries, &now.approvals),
            (&recipe.entries, &recipe.approvals)
        );
        for version in &recipe.versions {
            assert_eq!(now.version(&version.id), Some(version));
        }
    }
    let add = format!("add {count} versions");
    assert_eq!(
        window.state().workbench().undo_label().as_deref(),
        Some(add.as_str())
    );
    undo(&mut window);
    assert_eq!(book(&window), before);
    assert_eq!(window.state().workbench().undo_label(), None);
}

#[test]
fn a_second_pair_is_swapped_in_the_same_drink_and_what_changes_for_guests_is_said() {
    let mut window = window(
        [1360.0, 2000.0],
        "hob-and-ember",
        "tambrel-chestnut",
        "ketterby-chestnut",
    );
    click(&mut window, "Swap another ingredient too");
    click(&mut window, "Replace Ondry non-dairy creamer");
    click(&mut window, "With Velloom rice creamer");
    assert!(says(&window, "No milk by ingredients"));
    assert!(says(
        &window,
        "Vegan by ingredients; the standard: not vegan"
    ));
    click(&mut window, "Show conditions");
    tick(&mut window, "be vegan by its ingredients");
    click(&mut window, "Keep as new version");
    let recipe = recipe(&window, "hob-and-ember");
    let kept = shown(&window).version.unwrap();
    let lines = resolve(&recipe, Some(&kept)).0;
    let used: Vec<&str> = lines.lines().map(|line| line.ingredient.as_str()).collect();
    for wanted in ["ketterby-chestnut", "velloom-rice-creamer"] {
        assert!(used.contains(&wanted), "{used:?}");
    }
}

#[test]
fn what_is_not_stated_is_not_guessed_and_the_screen_says_what_to_read() {
    let window = window(
        [1024.0, 1200.0],
        "hob-and-ember",
        "ondry-creamer",
        "velloom-oat-creamer",
    );
    assert!(says(
        &window,
        "No suggestion: the sweetness of the swap is not known"
    ));
    assert!(says(&window, "°Brix"));
}

#[test]
fn suggestions_of_each_kind_are_chosen_with_the_keyboard() {
    let mut window = chestnut();
    let buttons = window.query_all_by_label_contains("least sugar");
    let mut labels = buttons.filter_map(|node| node.accesskit_node().label());
    let label = labels.next().unwrap();
    drop(labels);
    focus(&mut window, &label);
    press(&mut window, Modifiers::NONE, Key::Enter);
    let heading = format!("{}{}", label[..1].to_uppercase(), &label[1..]);
    assert!(has(&window, &heading), "{heading}");
}

#[test]
fn in_another_language_limits_are_typed_and_found_in_its_words() {
    let mut window = chestnut();
    speak(&mut window, "de");
    click(&mut window, "Bedingungen anzeigen");
    let least = format!("Mindestmenge: {SWEETENER}");
    type_into(&mut window, &least, "20 ml");
    assert!(says(&window, "die Einheit dieser Zeile ist: Löffel"));
    retype(&mut window, &least, "1½ Löffel");
    assert!(says(&window, "1 Zeile festgehalten oder begrenzt"));
    let sugar = "Zucker je 100\u{a0}ml höchstens";
    type_into(&mut window, sugar, "0,5");
    assert!(says(&window, "höchstens 0,5\u{a0}g Zucker je 100\u{a0}ml"));
    click(&mut window, "Alle Bedingungen löschen");
    click(&mut window, "Austausch ändern");
    type_into(&mut window, "Ersatz suchen", "Süßung");
    assert!(says(&window, "Durch House sweetener"));
    assert!(!says(&window, "Durch Ketterby chestnut powder"));
}
