//! Ways to lose a book by ordinary use of the window: its file goes away, another is opened while it is being saved, a click
//! goes astray. None of them may.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fs;

use egui::{Event, Key, Modifiers, PointerButton, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::book_file::{built_in_book, earlier_copies, load, save};
use evensip::workbench::{Command, Home, Intent, Message, Workbench};

use super::kept_work::{PATIENT, command, edit, failed, opened, slowly_saving};
use super::safekeeping::{Shop, name_of, name_on_screen, type_name};
use crate::at_the_window::{
    Window, book, click, eventually, focus, press, says, show, type_into, undo,
};

#[test]
fn a_book_whose_file_is_gone_counts_as_unsaved_and_is_saved_there_again() {
    let shop = Shop::new();
    let mut window = shop.window();
    assert!(!window.state().workbench().has_unsaved_changes());
    fs::remove_file(&shop.path).unwrap();
    eventually(&mut window, "the strip", |window| {
        says(window, "was deleted, renamed or moved")
    });
    assert!(window.state().workbench().has_unsaved_changes());
    // Kept for the case of a crash although nothing was changed.
    eventually(&mut window, "the work is kept", |_| shop.left_files() == 1);
    // Put off, it still can't be left unasked.
    click(&mut window, "Later");
    assert!(!says(&window, "was deleted, renamed or moved"));
    press(&mut window, Modifiers::COMMAND, Key::N);
    assert!(says(&window, "so the book is unsaved"));
    click(&mut window, "Cancel");
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert!(load(&shop.path).unwrap().book == built_in_book().unwrap());
    assert!(!window.state().workbench().has_unsaved_changes());
}

#[test]
fn a_file_that_comes_back_needs_no_answer() {
    let shop = Shop::new();
    let away = shop.folder.path().join("away.ron");
    let mut window = shop.window();
    fs::rename(&shop.path, &away).unwrap();
    eventually(&mut window, "the strip", |window| {
        says(window, "was deleted, renamed or moved")
    });
    fs::rename(&away, &shop.path).unwrap();
    eventually(&mut window, "the strip goes", |window| {
        !says(window, "was deleted, renamed or moved")
    });
    assert!(!window.state().workbench().has_unsaved_changes());
    // The same for a file that is half-written for a moment.
    let whole = fs::read(&shop.path).unwrap();
    fs::write(&shop.path, &whole[..whole.len() / 2]).unwrap();
    eventually(&mut window, "the strip", |window| {
        says(window, "something that is no book")
    });
    fs::write(&shop.path, &whole).unwrap();
    eventually(&mut window, "the strip goes", |window| {
        !says(window, "something that is no book")
    });
}

#[test]
fn another_book_under_the_name_of_one_that_was_gone_is_not_saved_over_unseen() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    fs::remove_file(&shop.path).unwrap();
    eventually(&mut window, "the strip", |window| {
        says(window, "was deleted, renamed or moved")
    });
    click(&mut window, "Later");
    save(&shop.path, &evensip::book::Book::default()).unwrap();
    let theirs = fs::read(&shop.path).unwrap();
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(fs::read(&shop.path).unwrap(), theirs);
    assert!(says(&window, "was changed by another program"));
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift, mine");
}

#[test]
fn a_gone_file_whose_folder_is_gone_too_is_said_and_saved_elsewhere() {
    let shop = Shop::new();
    let inner = shop.folder.path().join("books");
    fs::create_dir(&inner).unwrap();
    let path = inner.join("winter.ron");
    let mut workbench = opened(&path);
    edit(&mut workbench, "mine");
    fs::remove_dir_all(&inner).unwrap();
    command(&mut workbench, Command::Save);
    let text = failed(&workbench);
    for part in [
        "the folder does not exist",
        path.to_str().unwrap(),
        "Nothing is lost",
        "Save as…",
    ] {
        assert!(text.contains(part), "{text}");
    }
    let elsewhere = shop.folder.path().join("elsewhere.ron");
    command(&mut workbench, Command::SaveAs(elsewhere.clone()));
    assert_eq!(load(&elsewhere).unwrap().book.settings.note, "mine");
    assert!(!workbench.has_unsaved_changes());
}

#[test]
fn a_save_that_fails_before_the_book_is_left_is_said_in_the_sheet_with_a_way_out() {
    let mut shop = Shop::new();
    let inner = shop.folder.path().join("books");
    fs::create_dir(&inner).unwrap();
    fs::rename(&shop.path, inner.join("winter.ron")).unwrap();
    shop.path = inner.join("winter.ron");
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, mine");
    fs::remove_dir_all(&inner).unwrap();
    press(&mut window, Modifiers::COMMAND, Key::N);
    click(&mut window, "Save");
    assert!(window.state().workbench().pending().is_some());
    // In the message of the window and in the sheet before it.
    let said = "Not saved: the folder does not exist";
    assert_eq!(window.query_all_by_label_contains(said).count(), 2);
    click(&mut window, "Save as…");
    press(&mut window, Modifiers::COMMAND, Key::A);
    let elsewhere = shop.folder.path().join("elsewhere.ron");
    window
        .get_by_label("Path to save to")
        .type_text(elsewhere.to_str().unwrap());
    window.run();
    click(&mut window, "Save here");
    window.run();
    let saved = load(&elsewhere).unwrap().book;
    assert_eq!(name_of(&saved, "pear-drift"), "Pear Drift, mine");
    // What waited goes on.
    assert!(matches!(
        window.state().workbench().home(),
        Home::Nowhere(_)
    ));
}

/// Whatever ends while another book is open concerns the book that was saved.
#[test]
fn a_book_that_is_opened_during_a_slow_save_never_goes_into_the_other_s_file() {
    for fails in [false, true] {
        let folder = tempfile::tempdir().unwrap();
        let (first, second) = (
            folder.path().join("first.ron"),
            folder.path().join("second.ron"),
        );
        save(&second, &built_in_book().unwrap()).unwrap();
        let (workbench, disk) = slowly_saving(&first, fails);
        let mut workbench = workbench.with_patience(PATIENT);
        command(&mut workbench, Command::Do(Intent::Open(second.clone())));
        assert_eq!(*workbench.home(), Home::File(first.clone()));
        assert!(workbench.pending().is_some());
        command(&mut workbench, Command::DiscardThenDo);
        assert_eq!(*workbench.home(), Home::File(second.clone()));
        disk.open();
        super::kept_work::eventually("the save ends", || {
            workbench.poll();
            !workbench.is_saving()
        });
        assert_eq!(*workbench.home(), Home::File(second.clone()));
        assert!(!workbench.has_unsaved_changes());
        assert!(workbench.disk_change().is_none());
        if fails {
            assert!(
                failed(&workbench).contains("first.ron"),
                "{:?}",
                workbench.message()
            );
        } else {
            assert_eq!(load(&first).unwrap().book.settings.note, "first");
            assert!(matches!(workbench.message(), Some(Message::Done(_))));
            edit(&mut workbench, "of the second");
            command(&mut workbench, Command::Save);
            assert_eq!(load(&first).unwrap().book.settings.note, "first");
            assert_eq!(load(&second).unwrap().book.settings.note, "of the second");
        }
    }
}

#[test]
fn what_waits_for_a_slow_save_goes_on_when_it_has_ended() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let (mut workbench, disk) = slowly_saving(&path, false);
    command(&mut workbench, Command::Do(Intent::Quit));
    command(&mut workbench, Command::SaveThenDo);
    assert!(!workbench.wants_to_quit());
    disk.open();
    super::kept_work::eventually("the save ends", || {
        workbench.poll();
        !workbench.is_saving()
    });
    command(&mut workbench, Command::SaveThenDo);
    super::kept_work::eventually("the program ends", || {
        workbench.poll();
        workbench.wants_to_quit()
    });
    assert_eq!(load(&path).unwrap().book.settings.note, "first");
}

#[test]
fn a_book_that_was_named_from_another_folder_keeps_its_place() {
    let mut workbench = Workbench::default().with_patience(PATIENT);
    let relative = std::path::PathBuf::from("sample-books/first-steps.ron");
    command(&mut workbench, Command::Do(Intent::Open(relative.clone())));
    let whole = std::path::absolute(&relative).unwrap();
    assert_eq!(*workbench.home(), Home::File(whole));
}

#[test]
fn what_is_typed_into_a_field_is_in_the_book_when_it_is_saved() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_into(&mut window, "Name of the recipe", "Half typed");
    // Neither Enter nor Tab: straight to saving.
    press(&mut window, Modifiers::COMMAND, Key::S);
    assert_eq!(
        name_of(&load(&shop.path).unwrap().book, "pear-drift"),
        "Half typed"
    );
}

fn key(key: Key, modifiers: Modifiers) -> Event {
    Event::Key {
        key,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers,
    }
}

/// A window with the keyboard in the name of a recipe.
fn at_the_name(shop: &Shop) -> Window {
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    focus(&mut window, "Name of the recipe");
    window
}

#[test]
fn a_save_in_the_frame_of_the_typing_before_it_saves_what_was_typed() {
    let shop = Shop::new();
    let mut window = at_the_name(&shop);
    let events = [
        key(Key::A, Modifiers::COMMAND),
        Event::Text("Pear Rush".to_owned()),
        key(Key::Enter, Modifiers::NONE),
        key(Key::S, Modifiers::COMMAND),
    ];
    window.input_mut().events.extend(events);
    window.step();
    window.run();
    let saved = load(&shop.path).unwrap().book;
    assert_eq!(name_of(&saved, "pear-drift"), "Pear Rush");
    assert!(!window.state().workbench().has_unsaved_changes());
}

#[test]
fn keys_of_one_frame_do_what_they_do_in_a_frame_each() {
    let mut dice = crate::arbitrary_book::Dice(0x0e5);
    for _ in 0..4 {
        let events: Vec<Event> = (0..9)
            .map(|number| match dice.below(7) {
                0 => key(Key::S, Modifiers::COMMAND),
                1 => key(Key::Z, Modifiers::COMMAND),
                2 => key(Key::A, Modifiers::COMMAND),
                3 => key(Key::Enter, Modifiers::NONE),
                4 => key(Key::Escape, Modifiers::NONE),
                _ => Event::Text(format!("n{number}")),
            })
            .collect();
        let ends = [false, true].map(|at_once| {
            let shop = Shop::new();
            let mut window = at_the_name(&shop);
            if at_once {
                window.input_mut().events.extend(events.clone());
                window.step();
            } else {
                for event in &events {
                    window.input_mut().events.push(event.clone());
                    window.step();
                }
            }
            window.run();
            let saved = load(&shop.path).unwrap().book;
            let book = book(&window);
            (name_of(&book, "pear-drift"), name_of(&saved, "pear-drift"))
        });
        assert_eq!(ends[0], ends[1], "{events:?}");
    }
}

#[test]
fn an_earlier_copy_over_unsaved_changes_is_a_step_that_brings_them_back() {
    let shop = Shop::new();
    let mut window = shop.window();
    show(&mut window, "pear-drift", None);
    type_name(&mut window, "Pear Drift, saved");
    press(&mut window, Modifiers::COMMAND, Key::S);
    type_name(&mut window, "Pear Drift, not saved");
    let copy = earlier_copies(&shop.path).unwrap()[0].path.clone();
    let saved = fs::read(&shop.path).unwrap();
    click(&mut window, "Book");
    click(&mut window, "Earlier copies…");
    let year = format!(" {}, ", jiff::ZonedDateTime::now().year());
    eventually(&mut window, "the list", |window| says(window, &year));
    window.get_by_label_contains(&year).click();
    window.run();
    eventually(&mut window, "the copy", |window| {
        says(window, "Since then, on the screen")
    });
    click(&mut window, "Restore this copy");
    assert_eq!(name_on_screen(&window, "pear-drift"), "Pear Drift");
    assert_eq!(fs::read(&shop.path).unwrap(), saved);
    assert!(copy.exists());
    undo(&mut window);
    assert_eq!(
        name_on_screen(&window, "pear-drift"),
        "Pear Drift, not saved"
    );
}

/// The pointer comes, presses and lets go in one frame, as on a slow machine or from a touchpad.
fn click_in_one_frame(window: &mut Window, label: &str) {
    let pos = window
        .get_by_role_and_label(Role::Button, label)
        .rect()
        .center();
    let events = &mut window.input_mut().events;
    events.push(Event::PointerMoved(pos));
    for pressed in [true, false] {
        events.push(Event::PointerButton {
            pos,
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        });
    }
    window.step();
    window.run();
}

/// A window that asks which names count: those of two recipes were changed here and in the file.
fn at_the_decision(shop: &Shop) -> Window {
    let mut window = shop.window();
    for recipe in ["pear-drift", "snowgate"] {
        show(&mut window, recipe, None);
        type_name(&mut window, &format!("{recipe}, mine"));
    }
    shop.change("name: \"Pear Drift\"", "name: \"Pear Drift, theirs\"");
    shop.change("name: \"Snowgate\"", "name: \"Snowgate, theirs\"");
    eventually(&mut window, "the strip", |window| {
        says(window, "Another program has changed")
    });
    click(&mut window, "Decide…");
    window
}

#[test]
fn a_side_is_chosen_by_a_click_that_comes_with_the_pointer() {
    let shop = Shop::new();
    let mut window = at_the_decision(&shop);
    // The first click after the sheet has opened, while it may not have its place yet.
    click_in_one_frame(&mut window, "In the file: name of Snowgate, theirs");
    for _ in 0..3 {
        click_in_one_frame(&mut window, "In the file: name of Pear Drift, theirs");
        click_in_one_frame(&mut window, "Here: name of Pear Drift, theirs");
    }
    click_in_one_frame(&mut window, "Merge");
    assert_eq!(name_on_screen(&window, "snowgate"), "Snowgate, theirs");
    assert_eq!(name_on_screen(&window, "pear-drift"), "pear-drift, mine");
}

#[test]
fn a_second_window_on_the_book_does_not_save_over_the_first() {
    let shop = Shop::new();
    let (mut first, mut second) = (shop.window(), shop.window());
    for (window, recipe) in [(&mut first, "pear-drift"), (&mut second, "snowgate")] {
        show(window, recipe, None);
        type_name(window, &format!("{recipe}, mine"));
        press(window, Modifiers::COMMAND, Key::S);
    }
    let on_disk = load(&shop.path).unwrap().book;
    assert_eq!(name_of(&on_disk, "pear-drift"), "pear-drift, mine");
    assert_eq!(name_of(&on_disk, "snowgate"), "Snowgate");
    click(&mut second, "Merge");
    press(&mut second, Modifiers::COMMAND, Key::S);
    let on_disk = load(&shop.path).unwrap().book;
    assert_eq!(name_of(&on_disk, "pear-drift"), "pear-drift, mine");
    assert_eq!(name_of(&on_disk, "snowgate"), "snowgate, mine");
}

#[test]
fn a_sheet_stays_where_it_is_when_the_pointer_comes() {
    let shop = Shop::new();
    let mut window = at_the_decision(&shop);
    let place = |window: &Window| {
        window
            .get_by_role_and_label(Role::Button, "In the file: name of Snowgate, theirs")
            .rect()
    };
    let before = place(&window);
    window.step();
    assert_eq!(place(&window), before);
    // Unfolding makes it higher; it has its new place before anybody can press.
    click(&mut window, "snowgate, mine");
    let before = place(&window);
    window.step();
    assert_eq!(place(&window), before);
}

#[test]
fn characters_that_nobody_sees_are_written_out_in_every_list() {
    let shop = Shop::new();
    shop.change("name: \"Pear Drift\"", "name: \"Pear\u{202e} Drift\"");
    shop.change("name: \"Oat drink\"", "name: \"Oat\u{200b} drink\"");
    let mut window = shop.window();
    assert!(says(&window, "Pear\\u{202e} Drift"));
    click(&mut window, "Counter");
    assert!(says(&window, "Oat\\u{200b} drink"));
    press(&mut window, Modifiers::COMMAND, Key::F);
    window
        .get_by_role_and_label(Role::TextInput, "Find in the book")
        .type_text("oat");
    window.run();
    assert!(says(&window, "ingredient: Oat\\u{200b} drink"));
}
