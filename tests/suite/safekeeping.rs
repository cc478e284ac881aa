//! What the window asks so that nothing is lost: found work, a file that another program changed, earlier copies, approvals.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use egui::{Key, Modifiers};
use egui_kittest::kittest::Queryable as _;
use evensip::book::{Book, IngredientId, RecipeId};
use evensip::book_file::{RecoveryNote, RecoveryPlace, built_in_book, earlier_copies, load, save};
use evensip::ui::counter_area::CounterItem;
use evensip::workbench::Home;

use crate::at_the_window::{
    MIDDLE, Size, TALL, Window, WindowBuilder, at_the_counter, click, eventually, focus, press,
    retype, says, show, type_into, undo,
};

/// A folder with the sample book in a file.
pub(crate) struct Shop {
    pub(crate) folder: tempfile::TempDir,
    pub(crate) path: PathBuf,
}

impl Shop {
    pub(crate) fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("winter.ron");
        save(&path, &built_in_book().unwrap()).unwrap();
        Self { folder, path }
    }

    fn data(&self) -> PathBuf {
        self.folder.path().join("data")
    }

    pub(crate) fn window(&self) -> Window {
        self.builder().open()
    }

    /// The file on the screen, with what is not saved beside it.
    pub(crate) fn builder(&self) -> WindowBuilder {
        self.builder_of(MIDDLE)
    }

    fn builder_of(&self, size: Size) -> WindowBuilder {
        WindowBuilder::of(size)
            .with_file(&self.path)
            .keeping_work_in(self.data())
    }

    /// What another program does to the file.
    pub(crate) fn change(&self, from: &str, to: &str) {
        let text = fs::read_to_string(&self.path).unwrap();
        assert!(text.contains(from), "{from}");
        fs::write(&self.path, text.replacen(from, to, 1)).unwrap();
    }

    /// Work on a recipe's name that a program has left.
    pub(crate) fn leave_work(&self, name: &str) {
        let place = RecoveryPlace::claim(&self.data()).unwrap();
        let loaded = load(&self.path).unwrap();
        let mut book = loaded.book;
        rename(&mut book, "pear-drift", name);
        let note = RecoveryNote {
            home: Some(self.path.clone()),
            name: "winter.ron".to_owned(),
            known: Some(loaded.fingerprint),
            kept: "2026-05-04T10:22:31Z".parse().unwrap(),
        };
        place.keep(&book, &note).unwrap();
    }

    pub(crate) fn left_files(&self) -> usize {
        let entries = fs::read_dir(self.data()).unwrap();
        // A whole book and the changes beside it are of one program.
        let work: BTreeSet<_> = entries
            .map(|entry| entry.unwrap().path())
            .filter(|path| {
                path.extension()
                    .is_some_and(|ending| ending == "ron" || ending == "changes")
            })
            .map(|path| path.with_extension(""))
            .collect();
        work.len()
    }
}

fn rename(book: &mut Book, recipe: &str, name: &str) {
    let mut recipe = book
        .recipe(&RecipeId::new(recipe).unwrap())
        .unwrap()
        .as_ref()
        .clone();
    name.clone_into(&mut recipe.name);
    book.recipes.put(recipe);
}

pub(crate) fn name_of(book: &Book, recipe: &str) -> String {
    let id = RecipeId::new(recipe).unwrap();
    book.recipe(&id).unwrap().name.clone()
}

pub(crate) fn name_on_screen(window: &Window, recipe: &str) -> String {
    name_of(window.state().workbench().book(), recipe)
}

/// Renames the recipe in hand as a person does.
pub(crate) fn type_name(window: &mut Window, name: &str) {
    type_into(window, "Name of the recipe", name);
    press(window, Modifiers::NONE, Key::Enter);
}

#[test]
fn found_work_is_offered_with_its_time_and_what_differs_and_can_be_taken_back() {
    let shop = Shop::new();
    shop.leave_work("Pear Drift of the crash");
    let mut window = shop.window();
    assert!(says(&window, "May 2026"));
    click(&mut window, "Pear Drift of the crash");
    assert!(says(
        &window,
        "name: Pear Drift of the crash instead of Pear Drift"
    ));
    click(&mut window, "Restore this work");
    assert_eq!(
        name_on_screen(&window, "pear-drift"),
        "Pear Drift of the crash"
    );
    assert!(window.state().workbench().has_unsaved_changes());
    assert_eq!(
        *window.state().workbench().home(),
        Home::File(shop.path.clone())
    );
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(
        name_of(&load(&shop.path).unwrap().book, "pear-drift"),
        "Pear Drift of the crash"
    );
}

#[test]
fn found_work_can_be_put_off_and_is_deleted_only_in_two_steps() {
    let shop = Shop::new();
    shop.leave_work("Pear Drift of the crash");
    let mut window = shop.window();
    click(&mut window, "Ask again next time");
    assert!(!says(&window, "Unsaved work was found"));
    assert_eq!(shop.left_files(), 1);
    click(&mut window, "Book");
    click(&mut window, "Unsaved work that was found…");
    click(&mut window, "Delete it…");
    assert_eq!(shop.left_files(), 1);
    assert!(says(&window, "for good? The file stays as it is."));
    // Enter is the harmless answer, and Escape deletes nothing either.
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert!(says(&window, "Restore this work"));
    click(&mut window, "Delete it…");
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(!says(&window, "Unsaved work was found"));
    assert_eq!(shop.left_files(), 1);
    click(&mut window, "Book");
    click(&mut window, "Unsaved work that was found…");
    click(&mut window, "Delete it…");
    click(&mut window, "Delete it for good");
    assert!(!says(&window, "Unsaved work was found"));
    assert_eq!(shop.left_files(), 0);
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift");
}

#[test]
fn damaged_work_is_set_aside_with_a_message_and_the_window_opens() {
    let shop = Shop::new();
    fs::create_dir_all(shop.data()).unwrap();
    fs::write(shop.data().join("unsaved-2026-1-1.ron"), "half a book").unwrap();
    let window = shop.window();
    assert!(says(&window, "unsaved work can't be read"));
    assert!(shop.data().join("unsaved-2026-1-1.damaged").exists());
    assert_eq!(
        *window.state().workbench().home(),
        Home::File(shop.path.clone())
    );
}

#[test]
fn a_change_on_disk_is_noticed_and_merged_with_a_choice_for_each_item() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    show(&mut window, "snowgate", None);
    type_name(&mut window, "Snowgate, mine");
    shop.change("name: \"Pear Drift\"", "name: \"Pear Drift, theirs\"");
    shop.change("name: \"Snowgate\"", "name: \"Snowgate, theirs\"");
    shop.change("name: \"Hazelthwaite\"", "name: \"Hazelthwaite, theirs\"");
    eventually(&mut window, "the strip", |window| {
        says(window, "Another program has changed “winter.ron”")
    });
    assert!(says(&window, "you have changed 2 of them, too"));
    click(&mut window, "Decide…");
    assert!(says(
        &window,
        "name: Pear Drift, mine instead of Pear Drift"
    ));
    assert!(says(
        &window,
        "name: Pear Drift, theirs instead of Pear Drift"
    ));
    click(&mut window, "In the file: name of Snowgate, theirs");
    click(&mut window, "Merge");
    for (recipe, name) in [
        ("pear-drift", "Pear Drift, mine"),
        ("snowgate", "Snowgate, theirs"),
        ("hazelthwaite", "Hazelthwaite, theirs"),
    ] {
        assert_eq!(name_on_screen(&window, recipe), name);
    }
    undo(&mut window);
    assert_eq!(name_on_screen(&window, "hazelthwaite"), "Hazelthwaite");
    assert_eq!(name_on_screen(&window, "snowgate"), "Snowgate, mine");
}

#[test]
fn where_both_changed_a_field_the_values_of_either_side_are_told() {
    let shop = Shop::new();
    let mut window = shop.window();
    let creamer = IngredientId::new("ondry-creamer").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(creamer));
    retype(&mut window, "label: sugars", "9.5");
    press(&mut window, Modifiers::NONE, Key::Tab);
    shop.change("sugars: (9.0, Label)", "sugars: (8.25, Measured)");
    eventually(&mut window, "the strip", |window| {
        says(window, "Another program has changed")
    });
    click(&mut window, "Decide…");
    for said in [
        "sugars: 9.5\u{a0}g (label) instead of 9\u{a0}g (label)",
        "sugars: 8.25\u{a0}g (measured) instead of 9\u{a0}g (label)",
    ] {
        assert!(says(&window, said), "{said}");
    }
}

#[test]
fn a_change_on_disk_is_reloaded_when_nothing_is_unsaved() {
    let shop = Shop::new();
    let mut window = shop.window();
    shop.change("name: \"Pear Drift\"", "name: \"Pear Drift, theirs\"");
    eventually(&mut window, "the strip", |window| {
        says(window, "Another program has changed")
    });
    click(&mut window, "Decide…");
    click(&mut window, "Reload");
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift, theirs");
    assert!(!window.state().workbench().has_unsaved_changes());
}

#[test]
fn saving_over_an_unseen_change_stops_and_asks() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    shop.change("name: \"Pear Drift\"", "name: \"Pear Drift, theirs\"");
    let theirs = fs::read(&shop.path).unwrap();
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    assert!(says(
        &window,
        "Nothing was saved, and your changes are still here."
    ));
    // Put off, it is asked again at the next save.
    click(&mut window, "Later");
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    // Another change while the question is open is not overwritten by the answer to the first either.
    shop.change("name: \"Snowgate\"", "name: \"Snowgate, theirs\"");
    let theirs = fs::read(&shop.path).unwrap();
    click(&mut window, "Save over it");
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    assert!(says(&window, "Snowgate, theirs"));
    click(&mut window, "Keep mine as a copy");
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    let Home::File(copy) = window.state().workbench().home().clone() else {
        panic!("no file")
    };
    assert_ne!(copy, shop.path);
    assert_eq!(
        name_of(&load(&copy).unwrap().book, "pear-drift"),
        "Pear Drift, mine"
    );
}

#[test]
fn a_file_that_became_no_book_is_said_once_and_not_saved_over_unasked() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    fs::write(&shop.path, "no book at all").unwrap();
    eventually(&mut window, "the strip", |window| {
        says(window, "something that is no book")
    });
    click(&mut window, "Later");
    // What was put off is not noticed again and again.
    std::thread::sleep(Duration::from_millis(2200));
    for _ in 0..20 {
        window.run();
        std::thread::sleep(Duration::from_millis(20));
    }
    assert!(!says(&window, "something that is no book"));
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(fs::read_to_string(&shop.path).unwrap(), "no book at all");
    click(&mut window, "Save over it");
    assert_eq!(
        name_of(&load(&shop.path).unwrap().book, "pear-drift"),
        "Pear Drift, mine"
    );
    let copies = earlier_copies(&shop.path).unwrap();
    assert_eq!(
        fs::read_to_string(&copies[0].path).unwrap(),
        "no book at all"
    );
}

pub(crate) fn save_as(window: &mut Window, path: &Path) {
    press(window, Modifiers::COMMAND | Modifiers::SHIFT, Key::S);
    press(window, Modifiers::COMMAND, Key::A);
    let field = window.get_by_label("Path to save to");
    field.type_text(path.to_str().unwrap());
    window.run();
    click(window, "Save here");
}

#[test]
fn a_typed_name_that_another_file_has_is_asked_about_first() {
    let shop = Shop::new();
    let other = shop.folder.path().join("spring.ron");
    save(&other, &Book::default()).unwrap();
    let before = fs::read(&other).unwrap();
    let mut window = shop.window();
    save_as(&mut window, &other);
    assert!(says(&window, "A file with this name already exists"));
    assert_eq!(fs::read(&other).unwrap(), before);
    press(&mut window, Modifiers::NONE, Key::Escape);
    assert!(!says(&window, "A file with this name already exists"));
    assert_eq!(fs::read(&other).unwrap(), before);
    assert_eq!(
        *window.state().workbench().home(),
        Home::File(shop.path.clone())
    );
    save_as(&mut window, &other);
    click(&mut window, "Replace it");
    assert!(load(&other).unwrap().book == built_in_book().unwrap());
    assert_eq!(
        *window.state().workbench().home(),
        Home::File(other.clone())
    );
    let copies = earlier_copies(&other).unwrap();
    assert_eq!(fs::read(&copies[0].path).unwrap(), before);
}

#[cfg(unix)]
#[test]
fn the_book_s_own_file_under_another_spelling_is_not_saved_over_unseen() {
    let shop = Shop::new();
    let link = shop.folder.path().join("link.ron");
    std::os::unix::fs::symlink(&shop.path, &link).unwrap();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    shop.change("name: \"Pear Drift\"", "name: \"Pear Drift, theirs\"");
    let theirs = fs::read(&shop.path).unwrap();
    save_as(&mut window, &link);
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    assert!(says(&window, "was changed by another program"));
}

#[test]
fn a_folder_that_is_missing_is_said_and_the_work_stays() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    save_as(&mut window, &shop.folder.path().join("no/such/book.ron"));
    assert!(says(&window, "the folder does not exist"));
    assert!(says(&window, "Nothing is lost"));
    assert!(window.state().workbench().has_unsaved_changes());
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift, mine");
}

#[test]
fn an_earlier_copy_is_compared_and_taken_back_as_a_step() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(earlier_copies(&shop.path).unwrap().len(), 1);
    click(&mut window, "Book");
    click(&mut window, "Earlier copies…");
    let year = format!(" {}, ", jiff::ZonedDateTime::now().year());
    eventually(&mut window, "the list", |window| {
        window.query_by_label_contains(&year).is_some()
    });
    window.get_by_label_contains(&year).click();
    window.run();
    eventually(&mut window, "the copy", |window| {
        says(window, "Since then, on the screen")
    });
    click(&mut window, "Pear Drift, mine");
    assert!(says(
        &window,
        "name: Pear Drift, mine instead of Pear Drift"
    ));
    click(&mut window, "Restore this copy");
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift");
    assert!(window.state().workbench().has_unsaved_changes());
    undo(&mut window);
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift, mine");
}

#[test]
fn an_earlier_copy_opens_by_itself_and_is_never_saved_over() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    press(&mut window, Modifiers::COMMAND, Key::S);
    let copy = earlier_copies(&shop.path).unwrap()[0].path.clone();
    let before = fs::read(&copy).unwrap();
    click(&mut window, "Book");
    click(&mut window, "Earlier copies…");
    let year = format!(" {}, ", jiff::ZonedDateTime::now().year());
    eventually(&mut window, "the list", |window| {
        window.query_by_label_contains(&year).is_some()
    });
    window.get_by_label_contains(&year).click();
    window.run();
    eventually(&mut window, "the copy", |window| {
        says(window, "Since then, on the screen")
    });
    click(&mut window, "Open as a copy");
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift");
    assert!(matches!(
        window.state().workbench().home(),
        Home::Nowhere(_)
    ));
    save_as(&mut window, &copy);
    assert!(says(&window, "an earlier copy stays as it is"));
    assert_eq!(fs::read(&copy).unwrap(), before);
}

#[test]
fn approvals_say_who_why_and_what_changed_and_lead_back() {
    let shop = Shop::new();
    let mut window = shop.builder_of(TALL).open();
    show(&mut window, "hob-and-ember", None);
    assert!(says(&window, "2026-10-12 — original, by Maren and Idris"));
    assert!(says(&window, "Half a scoop more creamer"));
    assert!(says(&window, "2 scoops instead of 1½ scoops"));
    let versions = |window: &Window| {
        let id = RecipeId::new("hob-and-ember").unwrap();
        let book = window.state().workbench().book();
        book.recipe(&id).unwrap().versions.len()
    };
    let before = versions(&window);
    click(&mut window, "Go back to the approval of 2026-02-09");
    assert_eq!(versions(&window), before + 1);
    assert!(says(&window, "as approved on 2026-02-09"));
    // From the latest approval to the draft that goes back to the first one.
    assert!(says(&window, "1½ scoops instead of 2 scoops"));
    undo(&mut window);
    assert_eq!(versions(&window), before);
}

#[test]
fn a_name_that_is_emptied_stays_with_a_sentence() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    focus(&mut window, "Name of the recipe");
    press(&mut window, Modifiers::COMMAND, Key::A);
    press(&mut window, Modifiers::NONE, Key::Backspace);
    press(&mut window, Modifiers::NONE, Key::Enter);
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift");
    assert!(says(&window, "A recipe needs a name"));
}

#[test]
fn characters_that_nobody_sees_are_named_below_the_name() {
    let shop = Shop::new();
    shop.change("name: \"Pear Drift\"", "name: \"Pear\u{202e} Drift\"");
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    assert!(says(&window, "invisible characters: U+202E"));
}
