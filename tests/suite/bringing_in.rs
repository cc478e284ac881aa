//! What is brought in is worked out beside the window, and is about the book as it is.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fmt::Write as _;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use evensip::book::Settings;
use evensip::edit::{Edit, Focus};
use evensip::workbench::{
    Action, Command, ListContent, ListTaking, Look, LookState, Message, TableOrder, TableReview,
    Workbench,
};

use super::kept_work::{command, eventually};

fn long_list(folder: &Path, rows: usize) -> PathBuf {
    let mut text = "name;brand;form;price;pack;fat;sugars\n".to_owned();
    for number in 0..rows {
        writeln!(text, "Powder {number};Velm;powder;9,50;1 kg;3,25;61,5").unwrap();
    }
    let path = folder.join("prices.csv");
    std::fs::write(&path, text).unwrap();
    path
}

fn order(workbench: &Workbench) -> TableOrder {
    let list = workbench.list_in_hand().unwrap();
    let ListContent::Table(bytes) = &list.content else {
        panic!("a table")
    };
    TableOrder {
        bytes: bytes.clone(),
        delimiter: None,
        heading_line: None,
        columns: None,
        sign: None,
        choices: Arc::default(),
    }
}

fn in_hand(workbench: &mut Workbench, path: PathBuf) {
    command(workbench, Command::ReadList(path));
    eventually("the list is read", || {
        workbench.poll();
        workbench.list_in_hand().is_some()
    });
}

fn reviewed(workbench: &mut Workbench) -> Arc<Result<TableReview, String>> {
    let order = order(workbench);
    let mut found = None;
    eventually("the list is looked through", || {
        let look = workbench.table_review(&order);
        if look.state == LookState::Done {
            found = look.found;
        }
        found.is_some()
    });
    found.unwrap()
}

fn note(workbench: &mut Workbench, text: &str) {
    let settings = Settings {
        note: text.to_owned(),
        ..workbench.book().settings.clone()
    };
    workbench.perform(Action::edit(Edit::SetSettings(settings), Focus::Book));
}

#[test]
fn a_list_of_a_hundred_thousand_rows_is_looked_through_beside_the_window() {
    let folder = tempfile::tempdir().unwrap();
    let mut workbench = Workbench::with_sample();
    in_hand(&mut workbench, long_list(folder.path(), 99_000));
    let order = order(&workbench);
    // No machine reads so many rows within the few milliseconds that a frame waits.
    let look: Look<_> = workbench.table_review(&order);
    assert!(
        matches!(look.state, LookState::Running { .. }),
        "{:?}",
        look.state
    );
    assert!(look.found.is_none() && workbench.is_searching());
    let found = reviewed(&mut workbench);
    assert_eq!(found.as_ref().as_ref().unwrap().counts, [99_000, 0, 0, 0]);
    // It is known now, and looked through again when the book is another one; the rows before stay in sight meanwhile.
    assert_eq!(workbench.table_review(&order).state, LookState::Done);
    note(&mut workbench, "changed");
    let look = workbench.table_review(&order);
    assert!(matches!(look.state, LookState::Running { .. }));
    assert!(look.current().is_none() && look.found.is_some());
    command(&mut workbench, Command::PutListAway);
    assert!(!workbench.is_searching());
}

#[test]
fn lines_are_taken_as_one_step_and_never_into_another_book() {
    let folder = tempfile::tempdir().unwrap();
    let mut workbench = Workbench::with_sample().with_patience(Duration::ZERO);
    in_hand(&mut workbench, long_list(folder.path(), 300));
    let before = workbench.book().clone();
    let taking = ListTaking {
        reviewed: reviewed(&mut workbench),
        taken: Arc::new((0..300).filter(|at| ![0, 5].contains(at)).collect()),
    };
    // Somebody has typed since the list was looked through.
    note(&mut workbench, "typed");
    let typed = workbench.book().clone();
    command(&mut workbench, Command::TakeList(taking.clone()));
    assert!(matches!(workbench.message(), Some(Message::Failed(_))));
    assert!(Arc::ptr_eq(workbench.book(), &typed) && !workbench.is_taking_list());
    // Or while it is being taken.
    let taking = ListTaking {
        reviewed: reviewed(&mut workbench),
        ..taking
    };
    command(&mut workbench, Command::TakeList(taking.clone()));
    if workbench.is_taking_list() {
        note(&mut workbench, "typed again");
        eventually("it ends", || {
            workbench.poll();
            !workbench.is_taking_list()
        });
        assert_eq!(workbench.book().settings.note, "typed again");
        assert_eq!(workbench.book().ingredients.len(), before.ingredients.len());
    }
    let taking = ListTaking {
        reviewed: reviewed(&mut workbench),
        ..taking
    };
    let typed = workbench.book().clone();
    command(&mut workbench, Command::TakeList(taking));
    eventually("it is taken", || {
        workbench.poll();
        workbench.list_in_hand().is_none()
    });
    assert_eq!(
        workbench.book().ingredients.len(),
        before.ingredients.len() + 298
    );
    assert_eq!(
        workbench.undo_label().as_deref(),
        Some("bring in 298 ingredients")
    );
    command(&mut workbench, Command::Undo);
    assert_eq!(**workbench.book(), *typed);
}

#[test]
fn a_file_that_is_not_there_is_said_and_one_that_takes_long_can_be_given_up() {
    let folder = tempfile::tempdir().unwrap();
    let mut workbench = Workbench::with_sample().with_patience(Duration::ZERO);
    command(
        &mut workbench,
        Command::ReadList(folder.path().join("missing.csv")),
    );
    eventually("it is said", || {
        workbench.poll();
        workbench.list_being_read().is_none()
    });
    assert!(matches!(workbench.message(), Some(Message::Failed(_))));
    command(
        &mut workbench,
        Command::ReadList(long_list(folder.path(), 50_000)),
    );
    command(&mut workbench, Command::PutListAway);
    assert!(workbench.list_being_read().is_none());
    workbench.poll();
    assert!(workbench.list_in_hand().is_none());
}
