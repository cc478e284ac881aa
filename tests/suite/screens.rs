//! The window from outside: what a person with a keyboard, a mouse or a screen reader finds and does.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::{Key, Modifiers, Role, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{Measurand, balance_version};
use evensip::book::{LineId, RecipeId, State, resolve};
use evensip::say::Speaker;
use evensip::ui::Area;
use evensip::ui::theme::{self, Appearance};
use evensip::workbench::{FilePicker, PickRequest};

use crate::at_the_window::{
    MIDDLE, NARROW, WIDE, Window, WindowBuilder, book, click, eventually, focus, go, look, press,
    retype, says, settle, show, shown, text_of, type_into, type_on, undo, window, window_of,
};

/// Always picks the same file.
struct Picks(PathBuf);

impl FilePicker for Picks {
    fn pick(&self, _: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        Some(self.0.clone())
    }
}

/// The field of the sweetener's amount in the recipe that most tests use.
const SWEETENER: &str = "Amount of House sweetener, syrup";

/// Sugar of the version in hand, g.
fn sugar(window: &Window) -> f64 {
    let (book, shown) = (book(window), shown(window));
    let recipe = book.recipe(&shown.recipe).unwrap();
    let balance = balance_version(&book, recipe, shown.version.as_ref()).unwrap();
    balance.figures.get(Measurand::TotalSugar).unwrap()
}

#[test]
fn a_changed_amount_changes_the_sugar_on_the_screen_and_undo_brings_it_back() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    let before = sugar(&window);
    type_into(&mut window, SWEETENER, "2");
    let after = sugar(&window);
    assert!(after > before + 5.0, "{before} and then {after}");
    assert!(window.query_by_label("unsaved").is_some());
    undo(&mut window);
    assert!((sugar(&window) - before).abs() < 1e-9);
    assert!(window.query_by_label("unsaved").is_none());
}

#[test]
fn typing_an_amount_is_one_step_named_in_the_tooltip() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    for text in ["1", "5", " ", "ml"] {
        type_into(&mut window, SWEETENER, text);
    }
    assert_eq!(
        window.state().workbench().undo_label().as_deref(),
        Some("change the amount of House sweetener, syrup")
    );
    undo(&mut window);
    assert_eq!(window.state().workbench().undo_label(), None);
}

#[test]
fn nonsense_stays_in_the_field_as_a_marked_draft_and_changes_nothing() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    let stamp = window.state().workbench().stamp();
    type_into(&mut window, SWEETENER, "a good deal");
    assert_eq!(window.state().workbench().stamp(), stamp);
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(text_of(&window, SWEETENER), "a good deal");
    assert!(says(&window, "not changed"));
}

#[test]
fn escape_lets_a_draft_go() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    type_into(&mut window, SWEETENER, "a good deal");
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(text_of(&window, SWEETENER), "1 spoon");
    assert!(!says(&window, "not changed"));
}

#[test]
fn a_change_to_an_approved_version_goes_into_a_new_draft_that_is_shown() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    let before = window
        .state()
        .workbench()
        .book()
        .recipe(&RecipeId::new("hazelthwaite").unwrap())
        .unwrap()
        .clone();
    type_into(&mut window, SWEETENER, "2");
    let shown = window
        .state()
        .view()
        .shown_in(window.state().workbench().book())
        .unwrap();
    let after = window
        .state()
        .workbench()
        .book()
        .recipe(&shown.recipe)
        .unwrap()
        .clone();
    let draft = shown.version.expect("the draft is shown");
    assert_eq!(after.version(&draft).unwrap().state, State::Draft);
    assert_eq!(
        (&after.entries, &after.approvals),
        (&before.entries, &before.approvals)
    );
}

#[test]
fn saved_and_opened_again_the_file_has_the_same_bytes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut window = WindowBuilder::of(MIDDLE)
        .with_picker(Arc::new(Picks(path.clone())))
        .open();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    type_into(&mut window, SWEETENER, "2");
    press(&mut window, Modifiers::COMMAND, Key::S);
    eventually(&mut window, "the book is saved where it was picked", |_| {
        path.exists()
    });
    settle(&mut window);
    let first = std::fs::read(&path).unwrap();
    assert!(window.query_by_label("unsaved").is_none());
    let again = folder.path().join("again.ron");
    let mut second = WindowBuilder::of(MIDDLE).with_file(path).open();
    press(&mut second, Modifiers::COMMAND | Modifiers::SHIFT, Key::S);
    retype(&mut second, "Path to save to", &again.display().to_string());
    click(&mut second, "Save here");
    assert_eq!(std::fs::read(&again).unwrap(), first);
}

#[test]
fn the_dialog_of_the_system_asks_where_to_save() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("picked.ron");
    let mut window = WindowBuilder::of(MIDDLE)
        .with_picker(Arc::new(Picks(path.clone())))
        .open();
    press(&mut window, Modifiers::COMMAND, Key::S);
    eventually(&mut window, "the book is saved where it was picked", |_| {
        path.exists()
    });
}

#[test]
fn a_file_that_is_no_book_leaves_the_sample_open_and_says_why() {
    let mut window = WindowBuilder::of(MIDDLE)
        .with_file("/no/such/book.ron")
        .open();
    window.run();
    assert!(says(&window, "/no/such/book.ron"));
    assert!(says(&window, "Hazelthwaite, approved"));
}

#[test]
fn unsaved_changes_are_asked_about_before_another_book_is_opened() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    type_into(&mut window, SWEETENER, "2");
    press(&mut window, Modifiers::COMMAND, Key::N);
    assert!(says(&window, "has unsaved changes"));
    click(&mut window, "Cancel");
    assert!(!says(&window, "has unsaved changes"));
    assert!(window.query_by_label(SWEETENER).is_some());
    press(&mut window, Modifiers::COMMAND, Key::N);
    click(&mut window, "Discard");
    assert!(window.state().workbench().book().recipes.is_empty());
    assert!(
        window
            .query_by_label("This book has no recipes yet")
            .is_some()
    );
}

#[test]
fn closing_the_window_with_unsaved_changes_asks_first() {
    let close = |window: &mut Window| {
        let root = window
            .input_mut()
            .viewports
            .entry(egui::ViewportId::ROOT)
            .or_default();
        root.events.push(egui::ViewportEvent::Close);
        window.step();
        window
            .input_mut()
            .viewports
            .entry(egui::ViewportId::ROOT)
            .or_default()
            .events
            .clear();
        window.run();
    };
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    close(&mut window);
    assert!(!says(&window, "has unsaved changes"));
    type_into(&mut window, SWEETENER, "2");
    close(&mut window);
    assert!(says(&window, "has unsaved changes"));
    assert!(!window.state().workbench().wants_to_quit());
    click(&mut window, "Discard");
    assert!(window.state().workbench().wants_to_quit());
}

/// What the recipe asks: the version, its standard, what is wrong with the book, the list of drinks, which drinks have drifted,
/// and what one use holds of the sweetener in hand and of its two other forms.
const ASKED_BY_THE_RECIPE: u64 = 5 + 3;

#[test]
fn nothing_is_worked_out_while_nothing_changes_and_everything_once_after_an_edit() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    window.get_by_label(SWEETENER).focus();
    window.run();
    let before = window.state().workbench().engine_calls();
    for _ in 0..100 {
        window.step();
    }
    assert_eq!(window.state().workbench().engine_calls(), before);
    type_into(&mut window, SWEETENER, "2");
    let after = window.state().workbench().engine_calls();
    assert_eq!(after, before + ASKED_BY_THE_RECIPE);
}

#[test]
fn no_area_works_anything_out_while_nothing_changes() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    for area in Area::TABS.into_iter().chain([Area::Findings]) {
        go(&mut window, area);
        let before = window.state().workbench().engine_calls();
        for _ in 0..5 {
            window.step();
        }
        assert_eq!(
            window.state().workbench().engine_calls(),
            before,
            "{area:?}"
        );
    }
}

#[test]
fn arrows_move_through_the_lines_and_typing_replaces_the_amount() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    assert_eq!(
        window.state().view().line_in_hand,
        LineId::new("sweetener").ok()
    );
    for typed in ["1", "½"] {
        type_on(&mut window, typed);
    }
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert_eq!(text_of(&window, SWEETENER), "1½ spoons");
    press(&mut window, Modifiers::NONE, Key::Delete);
    assert!(window.query_by_label(SWEETENER).is_none());
}

#[test]
fn an_ingredient_is_found_and_added_with_the_keyboard_alone() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "hon");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(window.query_by_label("Amount of Honey, runny").is_some());
}

#[test]
fn a_line_is_moved_with_the_keyboard() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    press(&mut window, Modifiers::ALT, Key::ArrowDown);
    assert_eq!(order(&window)[1], "powder");
}

#[test]
fn a_sweetener_says_where_it_is_edited_what_the_same_spoon_would_hold_of_the_other_form() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    focus(&mut window, SWEETENER);
    let words = window.get_by_label_contains("the same spoon");
    let words =
        words.value().unwrap_or_default() + &words.accesskit_node().label().unwrap_or_default();
    assert!(
        words.contains("syrup 7.5\u{a0}g") && words.contains("crystals 5.9\u{a0}g"),
        "{words}"
    );
}

/// The order of the entries of the version in hand.
fn order(window: &Window) -> Vec<String> {
    let (book, shown) = (book(window), shown(window));
    let recipe = book.recipe(&shown.recipe).unwrap();
    let resolved = resolve(recipe, shown.version.as_ref()).0;
    resolved
        .entries
        .iter()
        .map(|entry| entry.id().to_string())
        .collect()
}

#[test]
fn a_row_is_dragged_by_its_grip_to_another_place() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    assert_eq!(order(&window)[..2], ["powder", "sweetener"]);
    let from = window
        .get_by_label_contains("Line Chestnut powder")
        .rect()
        .center();
    let to = window
        .get_by_label_contains("Line Water")
        .rect()
        .left_bottom();
    window.drag_at(from);
    window.run();
    window.hover_at(from + vec2(0.0, 20.0));
    window.run();
    window.hover_at(to);
    window.run();
    window.drop_at(to);
    window.run();
    assert_eq!(order(&window)[..3], ["sweetener", "water", "powder"]);
}

#[test]
fn a_recipe_is_begun_with_the_mouse_alone() {
    let mut window = window();
    click(&mut window, "New recipe");
    assert_eq!(text_of(&window, "Name of the recipe"), "New recipe");
    click(&mut window, "Add an ingredient");
    click(&mut window, "Water");
    assert!(window.query_by_label("Amount of Water").is_some());
    click(&mut window, "Undo");
    click(&mut window, "Undo");
    assert!(window.query_by_label("New recipe, draft").is_none());
}

#[test]
fn the_swap_opens_with_the_ingredient_in_hand_and_escape_goes_back() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    press(&mut window, Modifiers::NONE, Key::ArrowDown);
    press(&mut window, Modifiers::COMMAND, Key::R);
    let view = window.state().view();
    assert_eq!(view.area, evensip::ui::Area::Swap);
    assert_eq!(
        view.swap
            .question
            .as_ref()
            .map(|question| question.replace.as_str()),
        Some("ketterby-chestnut")
    );
    press(&mut window, Modifiers::NONE, Key::Escape);
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(window.state().view().area, evensip::ui::Area::Recipe);
}

#[test]
fn the_appearance_is_changed_on_a_click() {
    let mut window = window();
    for (button, expected) in [
        ("Dark appearance", Appearance::Dark),
        ("Dark appearance with high contrast", Appearance::Contrast),
        (
            "Light appearance with high contrast",
            Appearance::ContrastByDay,
        ),
        ("Light appearance", Appearance::Light),
    ] {
        click(&mut window, button);
        assert_eq!(
            theme::appearance(&window.ctx.global_style().visuals),
            expected
        );
    }
}

#[test]
fn what_has_the_keyboard_is_marked_while_keys_are_used_and_not_after_a_click() {
    let mut window = window();
    let is_marked = |window: &Window| {
        let visuals = &window.ctx.global_style().visuals;
        let ring = theme::palette(visuals).focus_ring;
        visuals.widgets.active.bg_stroke.color == ring
    };
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert!(is_marked(&window));
    click(&mut window, "Swap");
    assert!(!is_marked(&window), "the pointer shows where it is");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert!(is_marked(&window));
    look(&mut window, Appearance::ContrastByDay);
    assert!(is_marked(&window), "in every appearance");
}

#[test]
fn what_is_not_stated_is_said_in_words() {
    let mut window = window();
    click(&mut window, "Book");
    click(&mut window, "Unread labels (sample)");
    assert!(window.query_all_by_label_contains("not stated").count() > 0);
}

#[test]
fn an_approval_asks_who_and_sets_the_standard() {
    let mut window = window();
    show(&mut window, "quillmere", None);
    click(&mut window, "Approve this version…");
    type_into(&mut window, "Approved by", "Maren");
    click(&mut window, "Approve");
    let recipe = window
        .state()
        .workbench()
        .book()
        .recipe(&RecipeId::new("quillmere").unwrap())
        .unwrap()
        .clone();
    assert_eq!((recipe.state, recipe.approvals.len()), (State::Approved, 1));
}

#[test]
fn the_part_of_a_refused_amount_that_could_be_read_does_not_stay() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    let before = book(&window);
    type_into(&mut window, SWEETENER, "3");
    assert_ne!(*window.state().workbench().book(), before);
    type_on(&mut window, " ladles");
    press(&mut window, Modifiers::NONE, Key::Tab);
    assert_eq!(*window.state().workbench().book(), before);
    assert_eq!(text_of(&window, SWEETENER), "3 ladles");
    assert!(says(&window, "not changed"));
    assert_eq!(window.state().workbench().undo_label(), None);
}

#[test]
fn escape_gives_up_what_was_typed_with_the_version_that_it_had_made() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    let before = book(&window);
    type_into(&mut window, SWEETENER, "3");
    assert!(
        window
            .state()
            .view()
            .shown
            .as_ref()
            .unwrap()
            .version
            .is_some()
    );
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(*window.state().workbench().book(), before);
    assert_eq!(window.state().view().shown.as_ref().unwrap().version, None);
    assert_eq!(window.state().workbench().undo_label(), None);
    assert_eq!(text_of(&window, SWEETENER), "1 spoon");
}

#[test]
fn a_new_version_is_counted_from_the_recipe_as_written() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    type_into(&mut window, SWEETENER, "3");
    assert_eq!(text_of(&window, "Name of the version"), "version 2");
}

#[test]
fn typing_replaces_the_amount_of_an_added_ingredient() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    press(&mut window, Modifiers::NONE, Key::Insert);
    type_on(&mut window, "hon");
    press(&mut window, Modifiers::NONE, Key::Enter);
    type_on(&mut window, "7 g");
    assert_eq!(text_of(&window, "Amount of Honey, runny"), "7 g");
}

#[test]
fn a_new_instruction_begins_empty_and_is_gone_when_nothing_is_typed() {
    let mut window = window();
    show(&mut window, "hazelthwaite", Some("ketterby"));
    let before = order(&window).len();
    press(
        &mut window,
        Modifiers::COMMAND | Modifiers::SHIFT,
        Key::Enter,
    );
    assert_eq!(order(&window).len(), before + 1);
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert_eq!(order(&window).len(), before);
    press(
        &mut window,
        Modifiers::COMMAND | Modifiers::SHIFT,
        Key::Enter,
    );
    type_on(&mut window, "Shake well.");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(
        window
            .query_all_by_label_contains("Instruction Shake well.")
            .count()
            > 0
    );
}

#[test]
fn a_new_drink_is_named_by_typing_on() {
    let mut window = window();
    press(&mut window, Modifiers::COMMAND | Modifiers::SHIFT, Key::N);
    type_on(&mut window, "Fig Mist");
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(
        window
            .state()
            .workbench()
            .book()
            .recipes
            .iter()
            .any(|recipe| recipe.name == "Fig Mist")
    );
}

#[test]
fn enter_presses_the_main_button_of_a_dialog() {
    let mut window = window();
    press(&mut window, Modifiers::NONE, Key::F1);
    window.run();
    assert!(
        window
            .query_by_role_and_label(Role::Button, "Close")
            .is_some()
    );
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(
        window
            .query_by_role_and_label(Role::Button, "Close")
            .is_none()
    );
}

#[test]
fn opening_the_list_of_ingredients_replaces_nothing_until_another_is_chosen() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    let before = book(&window);
    click(&mut window, "Ingredient Whole milk");
    assert!(says(&window, "Replaces it by equal measures"));
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(!says(&window, "Replaces it by equal measures"));
    assert_eq!(*window.state().workbench().book(), before);
    click(&mut window, "Ingredient Whole milk");
    click(&mut window, "Swap…");
    assert_eq!(window.state().view().area, evensip::ui::Area::Swap);
}

#[test]
fn tab_goes_through_the_sheet_before_the_figures_beside_it() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    focus(&mut window, "Menu price");
    let mut passed = Vec::new();
    for _ in 0..160 {
        press(&mut window, Modifiers::NONE, Key::Tab);
        #[expect(
            clippy::redundant_closure_for_method_calls,
            reason = "the method alone is not general enough over its lifetime"
        )]
        let focused = window.query_all_by(|node| node.is_focused()).last();
        passed.push(
            focused
                .and_then(|node| node.accesskit_node().label())
                .unwrap_or_default(),
        );
    }
    let at = |wanted: &str| {
        passed
            .iter()
            .position(|label| label.starts_with(wanted))
            .expect(wanted)
    };
    assert!(
        at("Amount of House sweetener") < at("total sugar"),
        "{passed:?}"
    );
    assert!(at("Note on the recipe") < at("total sugar"), "{passed:?}");
}

#[test]
fn a_drink_below_its_drinking_temperature_has_no_minutes_to_wait() {
    let mut window = window();
    show(&mut window, "hazelthwaite", None);
    assert!(says(&window, "served below this"));
}

#[test]
fn every_recipe_is_drawn_in_both_appearances_and_sizes_without_a_panic() {
    for appearance in Appearance::ALL {
        for size in [NARROW, WIDE] {
            let mut window = window_of(size);
            look(&mut window, appearance);
            let book = book(&window);
            for recipe in &book.recipes {
                let versions = std::iter::once(None).chain(
                    recipe
                        .versions
                        .iter()
                        .map(|version| Some(version.id.as_str())),
                );
                for version in versions {
                    show(&mut window, recipe.id.as_str(), version);
                }
            }
            assert_eq!(
                theme::appearance(&window.ctx.global_style().visuals),
                appearance
            );
        }
    }
}
