//! The open book and the disk: recovery after a crash, two hands on one file, slow disks, earlier copies.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::env;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Condvar, Mutex};
use std::time::{Duration, Instant};

use evensip::book::{
    Book, Change, Conflict, Ingredient, IngredientId, ItemId, RecipeId, Settings,
    difference_of_books,
};
use evensip::book_file::{
    self, Fingerprint, LoadError, Loaded, OnDisk, RecoveryNote, RecoveryPlace, SaveError, Saved,
    built_in_book, earlier_copies, load, save,
};
use evensip::edit::{Edit, Focus};
use evensip::say::Speaker;
use evensip::workbench::{
    Action, ChangesSince, Command, ConflictsWith, Disk, EarlierBook, Home, Intent, Message,
    RecoveryState, Snapshot, SystemDisk, Theirs, Unfiled, Workbench,
};

use super::saving::helper;

const PAUSE: Duration = Duration::from_millis(40);

/// Longer than a small book takes on the busiest machine: it is there when the command has been carried out.
pub(crate) const PATIENT: Duration = Duration::from_mins(1);

/// Waits until something holds; a busy machine gets all the time that it needs, and what never comes is said at last.
pub(crate) fn eventually(what: &str, mut holds: impl FnMut() -> bool) {
    let started = Instant::now();
    while !holds() {
        assert!(started.elapsed() < Duration::from_mins(10), "{what}");
        std::thread::sleep(Duration::from_millis(5));
    }
}

pub(crate) fn edit(workbench: &mut Workbench, note: &str) {
    let settings = Settings {
        note: note.to_owned(),
        ..workbench.book().settings.clone()
    };
    // Each is a step of its own, whatever field it is in.
    workbench.perform(Action::Command(Command::CloseStep));
    workbench.perform(Action::edit(Edit::SetSettings(settings), Focus::Book));
}

pub(crate) fn rename(workbench: &mut Workbench, recipe: &str, name: &str) {
    let recipe = RecipeId::new(recipe).unwrap();
    workbench.perform(Action::Command(Command::CloseStep));
    workbench.perform(Action::edit(
        Edit::RenameRecipe {
            recipe,
            name: name.to_owned(),
        },
        Focus::Book,
    ));
}

pub(crate) fn command(workbench: &mut Workbench, command: Command) {
    workbench.perform(Action::Command(command));
}

pub(crate) fn failed(workbench: &Workbench) -> &str {
    match workbench.message() {
        Some(Message::Failed(text)) => text,
        other => panic!("{other:?}"),
    }
}

/// A workbench that waits for the disk, however busy the machine is.
fn patient() -> Workbench {
    Workbench::default().with_patience(PATIENT)
}

/// A workbench with the sample book in a file.
pub(crate) fn opened(path: &Path) -> Workbench {
    if !path.exists() {
        save(path, &built_in_book().unwrap()).unwrap();
    }
    let mut workbench = patient();
    command(&mut workbench, Command::Do(Intent::Open(path.to_owned())));
    assert_eq!(
        *workbench.home(),
        Home::File(path.to_owned()),
        "{:?}",
        workbench.message()
    );
    workbench
}

fn name_of(book: &Book, recipe: &str) -> String {
    book.recipe(&RecipeId::new(recipe).unwrap())
        .unwrap()
        .name
        .clone()
}

fn is_kept(workbench: &Workbench) -> bool {
    matches!(workbench.recovery_state(), RecoveryState::Kept(_))
}

/// What the helper process does: changes a book and keeps the work until it is killed.
pub(crate) fn keep_work_and_wait(path: &Path) {
    let folder = path.with_file_name("data");
    let mut workbench = opened(path).with_recovery_every(&folder, PAUSE);
    rename(&mut workbench, "pear-drift", "Pear Drift of the killed");
    eventually("the work is kept", || is_kept(&workbench));
    fs::write(path.with_extension("ready"), "").unwrap();
    loop {
        std::thread::sleep(Duration::from_secs(1));
    }
}

#[cfg(unix)]
#[test]
fn the_work_of_a_killed_program_is_offered_and_brought_back() {
    let folder = tempfile::tempdir().unwrap();
    let (path, data) = (folder.path().join("book.ron"), folder.path().join("data"));
    let mut child = helper(&env::current_exe().unwrap(), "keep work and wait", &path)
        .spawn()
        .unwrap();
    eventually("the helper is ready", || {
        path.with_extension("ready").exists()
    });
    // While it runs, its work is its own.
    let another = patient().with_recovery_every(&data, PAUSE);
    assert!(another.offered_recovery().is_none());
    drop(another);
    child.kill().unwrap();
    child.wait().unwrap();

    let mut workbench = patient().with_recovery_every(&data, PAUSE);
    let offered = workbench.offered_recovery().unwrap();
    assert_eq!(offered.home.as_ref(), Some(&path));
    assert_eq!(
        Speaker::without_book().book_difference(&offered.difference),
        "1 recipe changed (Pear Drift of the killed)"
    );
    assert!(!offered.file_changed && !offered.stands_alone);
    let age = jiff::Timestamp::now().duration_since(offered.kept);
    assert!((0..60).contains(&age.as_secs()), "{age:?}");
    // Nobody else is offered it meanwhile.
    assert!(
        patient()
            .with_recovery_every(&data, PAUSE)
            .offered_recovery()
            .is_none()
    );

    command(&mut workbench, Command::AcceptRecovery);
    assert!(workbench.offered_recovery().is_none());
    assert_eq!(
        name_of(workbench.book(), "pear-drift"),
        "Pear Drift of the killed"
    );
    assert!(workbench.has_unsaved_changes());
    assert!(
        workbench
            .undo_label()
            .unwrap()
            .starts_with("restore the unsaved work of")
    );
    eventually("the work is kept anew", || is_kept(&workbench));
    command(&mut workbench, Command::Save);
    assert!(
        !workbench.has_unsaved_changes(),
        "{:?}",
        workbench.message()
    );
    drop(workbench);
    assert_eq!(
        name_of(&load(&path).unwrap().book, "pear-drift"),
        "Pear Drift of the killed"
    );
    assert!(
        patient()
            .with_recovery_every(&data, PAUSE)
            .offered_recovery()
            .is_none()
    );
    assert_eq!(
        fs::read_dir(&data).unwrap().count(),
        0,
        "nothing is left of it"
    );
}

#[test]
fn work_is_kept_until_it_is_saved_undone_or_given_up() {
    let folder = tempfile::tempdir().unwrap();
    let (path, data) = (folder.path().join("book.ron"), folder.path().join("data"));
    let files = || {
        fs::read_dir(&data)
            .unwrap()
            .filter(|entry| {
                entry
                    .as_ref()
                    .unwrap()
                    .path()
                    .extension()
                    .is_some_and(|ending| ending == "ron" || ending == "changes")
            })
            .count()
    };
    let mut workbench = opened(&path).with_recovery_every(&data, PAUSE);
    assert_eq!(workbench.recovery_state(), RecoveryState::Empty);
    for end in ["save", "undo", "give up"] {
        edit(&mut workbench, end);
        eventually(end, || is_kept(&workbench) && files() == 1);
        match end {
            "save" => command(&mut workbench, Command::Save),
            "undo" => command(&mut workbench, Command::Undo),
            _ => {
                command(&mut workbench, Command::Do(Intent::Quit));
                assert!(!workbench.wants_to_quit());
                command(&mut workbench, Command::DiscardThenDo);
                assert!(workbench.wants_to_quit());
            }
        }
        eventually(end, || {
            workbench.recovery_state() == RecoveryState::Empty && files() == 0
        });
    }
}

#[test]
fn many_quick_changes_are_few_writes_and_the_last_one_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let pause = Duration::from_millis(300);
    let mut workbench = Workbench::with_sample()
        .with_patience(PATIENT)
        .with_recovery_every(&data, pause);
    let started = Instant::now();
    let (mut written, mut last) = (0_u32, None);
    for number in 0..200 {
        edit(&mut workbench, &format!("note {number}"));
        if let RecoveryState::Kept(when) = workbench.recovery_state()
            && last.replace(when) != Some(when)
        {
            written += 1;
        }
        std::thread::sleep(Duration::from_millis(2));
    }
    assert!(
        u128::from(written) <= 1 + started.elapsed().as_millis() / pause.as_millis(),
        "{written} writes"
    );
    // Dropped without a save, as when the window is torn down: what waits is written first.
    drop(workbench);
    let workbench = patient().with_recovery_every(&data, pause);
    let offered = workbench.offered_recovery().unwrap();
    assert_eq!(
        (offered.home.as_ref(), offered.name.as_str()),
        (None, "Harrowmere (sample)")
    );
    assert!(offered.stands_alone);
    let mut workbench = workbench;
    command(&mut workbench, Command::AcceptRecovery);
    assert_eq!(workbench.book().settings.note, "note 199");
    assert_eq!(
        *workbench.home(),
        Home::Nowhere(Unfiled::Called("Harrowmere (sample)".to_owned()))
    );
}

#[test]
fn damaged_work_is_set_aside_and_the_program_starts() {
    let folder = tempfile::tempdir().unwrap();
    let data = folder.path().join("data");
    let mut workbench = Workbench::with_sample()
        .with_patience(PATIENT)
        .with_recovery_every(&data, PAUSE);
    edit(&mut workbench, "kept");
    drop(workbench);
    let changes = fs::read_dir(&data)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .find(|path| path.extension().is_some_and(|e| e == "changes"))
        .unwrap();
    damaged_is_set_aside(&data, &changes, "changes.damaged");
    // A whole book, as one is put beside the changes after a while.
    let place = RecoveryPlace::claim(&data).unwrap();
    let note = RecoveryNote {
        home: None,
        name: "kept".to_owned(),
        known: None,
        kept: jiff::Timestamp::now(),
    };
    let mut book = evensip::book_file::built_in_book().unwrap();
    book.settings.note = "Harrowmere".to_owned();
    place.keep(&book, &note).unwrap();
    let file = place.file().to_owned();
    drop(place);
    damaged_is_set_aside(&data, &file, "damaged");
}

fn damaged_is_set_aside(data: &Path, file: &Path, aside: &str) {
    let whole = fs::read(file).unwrap();
    let line = whole.iter().position(|byte| *byte == b'\n').unwrap();
    let changed = String::from_utf8(whole.clone())
        .unwrap()
        .replacen("Harrowmere", "Harrowmera", 2)
        .into_bytes();
    for (name, bytes) in [
        ("empty", Vec::new()),
        ("cut short", whole[..whole.len() / 2].to_vec()),
        ("only its first line", whole[..line].to_vec()),
        ("a changed word", changed),
        ("no text", vec![0xff; 5000]),
        ("no note", whole[line + 1..].to_vec()),
    ] {
        fs::write(file, bytes).unwrap();
        let workbench = Workbench::with_sample()
            .with_patience(PATIENT)
            .with_recovery_every(data, PAUSE);
        assert!(workbench.offered_recovery().is_none(), "{name}");
        assert!(
            failed(&workbench).contains("can't be read"),
            "{name}: {}",
            failed(&workbench)
        );
        assert!(
            !file.exists() && file.with_extension(aside).exists(),
            "{name}"
        );
    }
    fs::write(file, &whole).unwrap();
    let mut workbench = Workbench::with_sample()
        .with_patience(PATIENT)
        .with_recovery_every(data, PAUSE);
    assert!(workbench.offered_recovery().is_some());
    command(&mut workbench, Command::DiscardRecovery);
    assert!(workbench.offered_recovery().is_none() && !file.exists());
}

#[test]
fn where_nothing_can_be_kept_it_is_said_and_the_work_goes_on() {
    let folder = tempfile::tempdir().unwrap();
    let blocked = folder.path().join("a file");
    fs::write(&blocked, "").unwrap();
    let mut workbench = Workbench::with_sample()
        .with_patience(PATIENT)
        .with_recovery_every(&blocked.join("data"), PAUSE);
    assert!(
        failed(&workbench).contains("unsaved work can’t be kept"),
        "{}",
        failed(&workbench)
    );
    edit(&mut workbench, "still works");
    assert_eq!(workbench.recovery_state(), RecoveryState::Off);
    assert_eq!(workbench.book().settings.note, "still works");
}

/// A workbench on a file that another hand then changes by a function.
fn changed_by_another(
    path: &Path,
    mine: impl Fn(&mut Workbench),
    theirs: impl Fn(&mut Workbench),
) -> Workbench {
    let mut one = opened(path);
    let mut other = opened(path);
    mine(&mut one);
    theirs(&mut other);
    command(&mut other, Command::Save);
    assert!(!other.has_unsaved_changes(), "{:?}", other.message());
    one
}

/// What the book on the screen and the one in its file have both changed.
fn conflicts(workbench: &Workbench) -> Arc<Vec<Conflict>> {
    let change = workbench.disk_change().unwrap();
    let Theirs::Book { book, .. } = &change.theirs else {
        panic!("{change:?}")
    };
    let [theirs, base] = [book, workbench.saved_book()].map(|book| Snapshot(book.clone()));
    workbench.answers().to(&ConflictsWith { theirs, base })
}

#[test]
fn a_change_on_disk_is_noticed_without_a_save() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut workbench = changed_by_another(
        &path,
        |_| (),
        |other| rename(other, "snowgate", "Snowgate, theirs"),
    );
    eventually("noticed", || {
        workbench.poll();
        workbench.disk_change().is_some()
    });
    let change = workbench.disk_change().unwrap();
    let mine = ChangesSince(Snapshot(workbench.saved_book().clone()));
    assert!(!change.at_save && workbench.answers().to(&mine).is_empty());
    let Theirs::Book { difference, .. } = &change.theirs else {
        panic!("{change:?}")
    };
    assert_eq!(
        Speaker::without_book().book_difference(difference),
        "1 recipe changed (Snowgate, theirs)"
    );
    assert_eq!(conflicts(&workbench).len(), 0);
    command(&mut workbench, Command::TakeTheirs);
    assert_eq!(name_of(workbench.book(), "snowgate"), "Snowgate, theirs");
    assert!(!workbench.has_unsaved_changes() && workbench.disk_change().is_none());
    command(&mut workbench, Command::Undo);
    assert_eq!(name_of(workbench.book(), "snowgate"), "Snowgate");
}

#[test]
fn a_change_on_disk_is_heard_of_and_not_only_looked_for() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut workbench = opened(&path).with_file_watch();
    // The seldom look of a watched file comes after twenty seconds: what is noticed sooner was heard of.
    let started = Instant::now();
    while started.elapsed() < Duration::from_secs(4) {
        workbench.poll();
        std::thread::sleep(Duration::from_millis(20));
    }
    assert!(workbench.next_look().unwrap() > Duration::from_secs(10));
    assert!(workbench.disk_change().is_none());
    let text = fs::read_to_string(&path).unwrap();
    fs::write(&path, text.replace("Pear Drift", "Pear Flow")).unwrap();
    let changed = Instant::now();
    while workbench.disk_change().is_none() {
        assert!(changed.elapsed() < Duration::from_secs(12), "not heard of");
        workbench.poll();
        std::thread::sleep(Duration::from_millis(20));
    }
}

#[test]
fn one_s_own_save_is_no_change_by_another() {
    let folder = tempfile::tempdir().unwrap();
    let mut workbench = opened(&folder.path().join("book.ron"));
    for number in 0..20 {
        edit(&mut workbench, &format!("{number}"));
        workbench.look_at_disk();
        command(&mut workbench, Command::Save);
        for _ in 0..5 {
            workbench.poll();
            std::thread::sleep(Duration::from_millis(2));
        }
        assert!(
            workbench.disk_change().is_none(),
            "{:?}",
            workbench.disk_change()
        );
        assert!(!workbench.has_unsaved_changes());
    }
}

#[test]
fn a_save_over_a_changed_file_stops_and_a_merge_keeps_both() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut workbench = changed_by_another(
        &path,
        |mine| {
            rename(mine, "pear-drift", "Pear Drift, mine");
            rename(mine, "snowgate", "Snowgate, mine");
        },
        |other| {
            rename(other, "snowgate", "Snowgate, theirs");
            rename(other, "ninebell", "Ninebell, theirs");
        },
    );
    let before = fs::read(&path).unwrap();
    command(&mut workbench, Command::Save);
    assert_eq!(fs::read(&path).unwrap(), before, "nothing was overwritten");
    let change = workbench.disk_change().unwrap();
    assert!(change.at_save);
    let conflicts = conflicts(&workbench);
    assert_eq!(conflicts.len(), 1);
    let snowgate = ItemId::Recipe(RecipeId::new("snowgate").unwrap());
    let part = conflicts[0].part.clone();
    assert_eq!((&part.item, part.fields), (&snowgate, &["name"][..]));
    command(
        &mut workbench,
        Command::MergeWithDisk {
            take_theirs: vec![part],
        },
    );
    for (recipe, name) in [
        ("pear-drift", "Pear Drift, mine"),
        ("snowgate", "Snowgate, theirs"),
        ("ninebell", "Ninebell, theirs"),
    ] {
        assert_eq!(name_of(workbench.book(), recipe), name);
    }
    assert!(workbench.has_unsaved_changes());
    command(&mut workbench, Command::Save);
    assert!(
        !workbench.has_unsaved_changes(),
        "{:?}",
        workbench.message()
    );
    assert!(load(&path).unwrap().book == **workbench.book());
}

#[test]
fn what_the_other_hand_removed_stays_when_it_is_needed_here_and_this_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let spare = IngredientId::new("spare").unwrap();
    let put = |workbench: &mut Workbench| {
        let item = Ingredient::new(spare.clone(), "Spare syrup".to_owned());
        workbench.perform(Action::edit(Edit::PutIngredient(item), Focus::Book));
    };
    let mut first = opened(&path);
    put(&mut first);
    command(&mut first, Command::Save);
    let mut workbench = changed_by_another(
        &path,
        |mine| {
            let recipe = mine.book().recipes.iter().next().unwrap();
            let line = recipe.plain().lines().next().unwrap().id.clone();
            let edit = Edit::Change {
                recipe: recipe.id.clone(),
                version: None,
                change: Change::Ingredient(line, spare.clone()),
            };
            mine.perform(Action::edit(edit, Focus::Book));
        },
        |other| {
            let edit = Edit::RemoveIngredient(spare.clone());
            other.perform(Action::edit(edit, Focus::Book));
        },
    );
    assert!(workbench.has_unsaved_changes());
    command(&mut workbench, Command::Save);
    command(
        &mut workbench,
        Command::MergeWithDisk {
            take_theirs: vec![],
        },
    );
    assert!(workbench.book().ingredient(&spare).is_some());
    let Some(Message::Done(said)) = workbench.message() else {
        panic!("{:?}", workbench.message())
    };
    assert!(
        said.starts_with("“Spare syrup” was removed in the file but stays"),
        "{said}"
    );
}

#[test]
fn mine_can_be_kept_as_a_copy_or_saved_over_with_theirs_among_the_earlier_copies() {
    let folder = tempfile::tempdir().unwrap();
    for overwrite in [false, true] {
        let path = folder.path().join(format!("book-{overwrite}.ron"));
        let mut workbench = changed_by_another(
            &path,
            |mine| edit(mine, "mine"),
            |other| edit(other, "theirs"),
        );
        command(&mut workbench, Command::Save);
        assert!(workbench.disk_change().is_some_and(|change| change.at_save));
        if overwrite {
            command(&mut workbench, Command::OverwriteDisk);
            assert_eq!(load(&path).unwrap().book.settings.note, "mine");
            let copies = earlier_copies(&path).unwrap();
            assert!(
                copies
                    .iter()
                    .any(|copy| load(&copy.path).unwrap().book.settings.note == "theirs")
            );
        } else {
            command(&mut workbench, Command::KeepMineAsCopy);
            assert_eq!(load(&path).unwrap().book.settings.note, "theirs");
            let Home::File(copy) = workbench.home().clone() else {
                panic!("{:?}", workbench.home())
            };
            assert_ne!(copy, path);
            assert_eq!(load(&copy).unwrap().book.settings.note, "mine");
        }
        assert!(!workbench.has_unsaved_changes() && workbench.disk_change().is_none());
    }
}

#[test]
fn a_file_that_became_no_book_or_went_away_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut workbench = opened(&path);
    edit(&mut workbench, "mine");
    fs::write(&path, "(format: 1, settings: (").unwrap();
    command(&mut workbench, Command::Save);
    let change = workbench.disk_change().unwrap();
    assert!(
        matches!(&change.theirs, Theirs::Unreadable { reason } if reason.contains("ends in the middle")),
        "{change:?}"
    );
    command(&mut workbench, Command::LeaveDiskChange);
    assert!(workbench.disk_change().is_none());
    fs::remove_file(&path).unwrap();
    command(&mut workbench, Command::Save);
    assert_eq!(load(&path).unwrap().book.settings.note, "mine");
}

#[test]
fn recovered_work_on_a_file_that_changed_since_is_merged_and_not_saved_over_it() {
    let folder = tempfile::tempdir().unwrap();
    let (path, data) = (folder.path().join("book.ron"), folder.path().join("data"));
    let mut workbench = opened(&path).with_recovery_every(&data, PAUSE);
    rename(&mut workbench, "pear-drift", "Pear Drift, recovered");
    drop(workbench);
    let mut other = opened(&path);
    rename(&mut other, "snowgate", "Snowgate, saved meanwhile");
    command(&mut other, Command::Save);

    let mut workbench = patient().with_recovery_every(&data, PAUSE);
    assert!(workbench.offered_recovery().unwrap().file_changed);
    command(&mut workbench, Command::AcceptRecovery);
    command(&mut workbench, Command::Save);
    assert!(
        workbench.disk_change().is_some_and(|change| change.at_save),
        "{:?}",
        workbench.message()
    );
    command(
        &mut workbench,
        Command::MergeWithDisk {
            take_theirs: vec![],
        },
    );
    command(&mut workbench, Command::Save);
    let saved = load(&path).unwrap().book;
    assert_eq!(name_of(&saved, "pear-drift"), "Pear Drift, recovered");
    assert_eq!(name_of(&saved, "snowgate"), "Snowgate, saved meanwhile");
}

#[test]
fn an_earlier_copy_is_compared_brought_back_and_opened_without_being_saved_over() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut workbench = opened(&path);
    rename(&mut workbench, "snowgate", "Snowgate, later");
    command(&mut workbench, Command::Save);
    let copies = earlier_copies(&path).unwrap();
    assert_eq!(copies.len(), 1);
    let restore = Command::RestoreEarlier(copies[0].path.clone());
    command(&mut workbench, restore.clone());
    assert!(failed(&workbench).contains("look at it first"));
    command(
        &mut workbench,
        Command::LookAtEarlier(copies[0].path.clone()),
    );
    eventually("the copy is read", || {
        workbench.poll();
        !matches!(workbench.earlier_book(), Some((_, EarlierBook::Reading)))
    });
    let Some((_, EarlierBook::Read(earlier))) = workbench.earlier_book() else {
        panic!("{:?}", workbench.earlier_book());
    };
    let difference = difference_of_books(earlier, workbench.book());
    assert_eq!(
        Speaker::without_book().book_difference(&difference),
        "1 recipe changed (Snowgate, later)"
    );
    command(&mut workbench, restore);
    assert_eq!(name_of(workbench.book(), "snowgate"), "Snowgate");
    assert!(
        workbench
            .undo_label()
            .unwrap()
            .starts_with("restore the copy of")
    );
    command(&mut workbench, Command::Undo);
    assert_eq!(name_of(workbench.book(), "snowgate"), "Snowgate, later");
    command(
        &mut workbench,
        Command::Do(Intent::Open(copies[0].path.clone())),
    );
    assert!(
        matches!(workbench.home(), Home::Nowhere(Unfiled::Called(name)) if name.starts_with("book.ron of")),
        "{:?}",
        workbench.home()
    );
    let before = fs::read(&copies[0].path).unwrap();
    command(&mut workbench, Command::SaveAs(copies[0].path.clone()));
    assert!(failed(&workbench).contains("stays as it is"));
    assert_eq!(fs::read(&copies[0].path).unwrap(), before);
}

/// A disk at the other end of a bad network.
pub(crate) struct SlowDisk {
    gate: Mutex<bool>,
    opened: Condvar,
    fails: bool,
    /// Reading waits as well.
    reads_slowly: bool,
}

impl SlowDisk {
    pub(crate) fn closed(fails: bool) -> Arc<Self> {
        Arc::new(Self {
            gate: Mutex::new(false),
            opened: Condvar::new(),
            fails,
            reads_slowly: false,
        })
    }

    pub(crate) fn closed_to_readers() -> Arc<Self> {
        Arc::new(Self {
            gate: Mutex::new(false),
            opened: Condvar::new(),
            fails: false,
            reads_slowly: true,
        })
    }

    fn wait(&self) {
        let closed = self.gate.lock().unwrap();
        drop(self.opened.wait_while(closed, |is_open| !*is_open).unwrap());
    }

    pub(crate) fn open(&self) {
        *self.gate.lock().unwrap() = true;
        self.opened.notify_all();
    }
}

impl Disk for SlowDisk {
    fn load(&self, path: &Path) -> Result<Loaded, LoadError> {
        if self.reads_slowly {
            self.wait();
        }
        SystemDisk.load(path)
    }

    fn save(
        &self,
        path: &Path,
        book: &Book,
        known: Option<&Fingerprint>,
    ) -> Result<Saved, SaveError> {
        self.wait();
        if self.fails {
            let source = io::Error::new(io::ErrorKind::TimedOut, "the server does not answer");
            return Err(SaveError::Write {
                path: path.to_owned(),
                source,
            });
        }
        SystemDisk.save(path, book, known)
    }

    fn look(&self, path: &Path, known: &Fingerprint) -> io::Result<OnDisk> {
        book_file::look(path, known)
    }
}

pub(crate) fn slowly_saving(path: &Path, fails: bool) -> (Workbench, Arc<SlowDisk>) {
    save(path, &built_in_book().unwrap()).unwrap();
    let disk = SlowDisk::closed(fails);
    let workbench = Workbench::default().with_disk(disk.clone());
    let mut workbench = workbench.with_patience(PATIENT);
    command(&mut workbench, Command::Do(Intent::Open(path.to_owned())));
    let mut workbench = workbench.with_patience(Duration::from_millis(50));
    edit(&mut workbench, "first");
    command(&mut workbench, Command::Save);
    (workbench, disk)
}

#[test]
fn a_slow_save_leaves_the_window_alive_and_what_is_changed_meanwhile_unsaved() {
    let folder = tempfile::tempdir().unwrap();
    let path: PathBuf = folder.path().join("book.ron");
    let (mut workbench, disk) = slowly_saving(&path, false);
    assert!(workbench.is_saving());
    assert!(
        matches!(workbench.message(), Some(Message::Done(text)) if text.contains("is taking a while"))
    );
    edit(&mut workbench, "second");
    command(&mut workbench, Command::Save);
    assert!(failed(&workbench).contains("still saving"));
    disk.open();
    eventually("the save ends", || {
        workbench.poll();
        !workbench.is_saving()
    });
    assert_eq!(load(&path).unwrap().book.settings.note, "first");
    assert!(workbench.has_unsaved_changes());
    command(&mut workbench, Command::Save);
    eventually("the second save ends", || {
        workbench.poll();
        !workbench.has_unsaved_changes()
    });
    assert_eq!(load(&path).unwrap().book.settings.note, "second");
}

#[test]
fn a_failed_save_loses_nothing_and_says_so() {
    let folder = tempfile::tempdir().unwrap();
    let path: PathBuf = folder.path().join("book.ron");
    let (mut workbench, disk) = slowly_saving(&path, true);
    disk.open();
    eventually("the save ends", || {
        workbench.poll();
        !workbench.is_saving()
    });
    let text = failed(&workbench);
    assert!(
        text.contains("the server does not answer") && text.contains("Nothing is lost"),
        "{text}"
    );
    assert!(workbench.has_unsaved_changes());
    assert_eq!(workbench.book().settings.note, "first");
}

#[test]
fn an_approval_comes_back_as_a_new_draft_that_is_shown() {
    let mut workbench = Workbench::with_sample();
    let recipe = RecipeId::new("hob-and-ember").unwrap();
    let approvals = workbench.book().recipe(&recipe).unwrap().approvals.len();
    assert!(approvals >= 2);
    command(
        &mut workbench,
        Command::GoBackToApproval {
            recipe: recipe.clone(),
            number: 1,
        },
    );
    let shown = workbench.take_show().unwrap();
    let book = workbench.book().clone();
    let found = book.recipe(&recipe).unwrap();
    let (resolved, findings) = evensip::book::resolve(found, shown.version.as_ref());
    assert!(findings.is_empty() && resolved == found.approvals[0].resolved);
    assert_eq!(found.approvals.len(), approvals, "history is not rewritten");
    command(
        &mut workbench,
        Command::GoBackToApproval { recipe, number: 99 },
    );
    assert!(Arc::ptr_eq(workbench.book(), &book));
}
