//! A book that takes long to open: the window says so, it can be given up, and nothing is lost meanwhile.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use egui::{Key, Modifiers, Role};
use egui_kittest::kittest::Queryable as _;
use evensip::book_file::{built_in_book, save};
use evensip::workbench::{Command, Home, Intent, Message, Unfiled, Workbench};

use super::kept_work::{SlowDisk, command, edit, eventually, failed};
use crate::at_the_window::{NARROW, Window, WindowBuilder};

const SHORT: Duration = Duration::from_millis(20);

/// A workbench with the sample that has been asked for a book on a disk that does not answer yet.
fn waiting(path: &Path) -> (Workbench, Arc<SlowDisk>) {
    let disk = SlowDisk::closed_to_readers();
    let mut workbench = Workbench::with_sample()
        .with_disk(disk.clone())
        .with_patience(SHORT);
    command(&mut workbench, Command::Do(Intent::Open(path.to_owned())));
    assert_eq!(workbench.opening().unwrap().0, path);
    assert!(matches!(workbench.home(), Home::Nowhere(_)));
    (workbench, disk)
}

fn arrives(workbench: &mut Workbench) {
    eventually("the book is read", || {
        workbench.poll();
        workbench.opening().is_none()
    });
}

fn book_in(folder: &Path) -> PathBuf {
    let path = folder.join("far-away.ron");
    let mut book = built_in_book().unwrap();
    "of the far disk".clone_into(&mut book.settings.note);
    save(&path, &book).unwrap();
    path
}

#[test]
fn a_book_that_takes_long_comes_when_it_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    let (mut workbench, disk) = waiting(&path);
    workbench.poll();
    assert!(workbench.opening().is_some());
    disk.open();
    arrives(&mut workbench);
    assert_eq!(*workbench.home(), Home::File(path));
    assert_eq!(workbench.book().settings.note, "of the far disk");
    assert!(!workbench.has_unsaved_changes());
}

#[test]
fn a_book_that_was_given_up_does_not_come_later() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    let (mut workbench, disk) = waiting(&path);
    let before = workbench.book().clone();
    command(&mut workbench, Command::StopOpening);
    assert!(workbench.opening().is_none());
    assert!(
        matches!(workbench.message(), Some(Message::Done(text)) if text.contains("far-away.ron was not opened"))
    );
    disk.open();
    std::thread::sleep(Duration::from_millis(100));
    workbench.poll();
    assert!(Arc::ptr_eq(workbench.book(), &before));
    assert!(matches!(workbench.home(), Home::Nowhere(_)));
}

#[test]
fn a_file_that_is_no_book_is_said_however_late() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("torn.ron");
    fs::write(&path, "(format: 1, settings: (").unwrap();
    let (mut workbench, disk) = waiting(&path);
    disk.open();
    arrives(&mut workbench);
    assert!(failed(&workbench).contains("torn.ron"));
    assert!(matches!(workbench.home(), Home::Nowhere(_)));
}

#[test]
fn what_was_changed_while_a_book_was_read_is_asked_about() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    let (mut workbench, disk) = waiting(&path);
    edit(&mut workbench, "mine");
    disk.open();
    arrives(&mut workbench);
    assert_eq!(workbench.book().settings.note, "mine");
    assert_eq!(workbench.pending(), Some(&Intent::Open(path.clone())));
    command(&mut workbench, Command::DiscardThenDo);
    arrives(&mut workbench);
    assert_eq!(*workbench.home(), Home::File(path));
}

#[test]
fn another_book_takes_the_place_of_the_one_that_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    let (mut workbench, disk) = waiting(&path);
    command(&mut workbench, Command::Do(Intent::New));
    assert!(workbench.opening().is_none());
    disk.open();
    std::thread::sleep(Duration::from_millis(100));
    workbench.poll();
    assert_eq!(*workbench.home(), Home::Nowhere(Unfiled::New));
    assert_eq!(workbench.title(), "New book");
}

fn window(path: &Path, disk: &Arc<SlowDisk>) -> Window {
    let workbench = Workbench::with_sample()
        .with_disk(disk.clone())
        .with_patience(SHORT);
    WindowBuilder::of(NARROW)
        .with_workbench(workbench)
        .with_file(path)
        .begin()
}

#[test]
fn the_window_says_which_book_it_opens_and_then_shows_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    let disk = SlowDisk::closed_to_readers();
    let mut window = window(&path, &disk);
    window.step();
    window.get_by_role_and_label(Role::Heading, "Opening far-away.ron");
    assert!(
        window.query_by_label_contains("Cautions").is_none(),
        "no drink is on the screen"
    );
    // No key reaches the book behind it.
    window.key_press_modifiers(Modifiers::COMMAND, Key::N);
    window.step();
    window.get_by_role_and_label(Role::Heading, "Opening far-away.ron");
    disk.open();
    eventually("the book is on the screen", || {
        window.step();
        window.state().workbench().opening().is_none()
    });
    window.step();
    assert!(window.query_by_label("Opening far-away.ron").is_none());
    assert_eq!(window.state().workbench().title(), "far-away.ron");
}

#[test]
fn opening_is_stopped_by_its_button_and_by_escape() {
    let folder = tempfile::tempdir().unwrap();
    let path = book_in(folder.path());
    for by_key in [false, true] {
        let disk = SlowDisk::closed_to_readers();
        let mut window = window(&path, &disk);
        window.step();
        if by_key {
            window.key_press(Key::Escape);
        } else {
            window
                .get_by_role_and_label(Role::Button, "Stop opening")
                .click();
        }
        // The line at the foot makes room for it first.
        for _ in 0..4 {
            window.step();
        }
        window.get_by_label_contains("far-away.ron was not opened");
        assert_eq!(window.state().workbench().title(), "Harrowmere (sample)");
        disk.open();
    }
}
