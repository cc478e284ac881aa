//! Unsaved changes are appended as they are made: whatever cuts the writing short, the changes before it are there.
//!
//! `EVENSIP_TYPING_KILLS=200` makes the last test kill two hundred typing programs instead of six:
//! `EVENSIP_TYPING_KILLS=200 cargo test --test suite kept_changes::what_was -- --nocapture`.

#![allow(clippy::print_stdout, reason = "a count of kills is for a person")]

use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use evensip::book::Book;
use evensip::book_file::{LeftWork, RecoveryNote, RecoveryPlace, left_work, load, save};
use evensip::edit::apply;
use evensip::workbench::Workbench;
use proptest::prelude::*;

use crate::arbitrary_book::{self as arbitrary, Dice};
use crate::kept_work::{opened, rename};
use crate::saving::helper;

/// What has been on the screen for so long is not lost.
const QUARTER_OF_A_SECOND: u128 = 250;

fn note(home: Option<&Path>) -> RecoveryNote {
    RecoveryNote {
        home: home.map(Path::to_owned),
        name: "a book".to_owned(),
        known: home.map(|home| load(home).unwrap().fingerprint),
        kept: jiff::Timestamp::now(),
    }
}

/// States that a person makes of a book, one after the other.
fn states(seed: u64) -> Vec<Book> {
    let mut dice = Dice(seed ^ 0x00c4_a6e5);
    let mut states = vec![arbitrary::book(seed)];
    for _ in 0..6 {
        let mut book = states[states.len() - 1].clone();
        for _ in 0..=dice.below(4) {
            if let Ok(after) = apply(&book, &arbitrary::edit(&mut dice, &book)) {
                book = after;
            }
        }
        // Now and then a person goes back, as undo does: the order of what was taken away is another one.
        if dice.below(4) == 0 {
            let at = dice.below(states.len());
            book = states[at].clone();
        }
        states.push(book);
    }
    states
}

fn changes_in(folder: &Path) -> PathBuf {
    let entries = fs::read_dir(folder).unwrap();
    entries
        .map(|entry| entry.unwrap().path())
        .find(|path| path.extension().is_some_and(|ending| ending == "changes"))
        .unwrap()
}

/// A process that another test has just begun holds the lock of a place until it is a program of its own.
fn left_by(folder: &Path) -> LeftWork {
    let started = Instant::now();
    loop {
        let (found, set_aside) = left_work(folder);
        assert!(set_aside.is_empty(), "{set_aside:?}");
        match found.into_iter().next() {
            Some(work) => return work,
            None => assert!(
                started.elapsed() < Duration::from_secs(20),
                "nothing is left"
            ),
        }
        std::thread::sleep(Duration::from_millis(5));
    }
}

fn left(folder: &Path) -> Book {
    left_by(folder).book
}

/// Whether two books hold the same, in whatever order.
fn same_items(one: &Book, other: &Book) -> bool {
    evensip::book::difference_of_books(one, other)
        .items
        .is_empty()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn changes_lead_to_the_last_state_and_cut_short_to_one_before(seed in any::<u64>()) {
        let folder = tempfile::tempdir().unwrap();
        let (home, data) = (folder.path().join("book.ron"), folder.path().join("data"));
        let states = states(seed);
        let mut dice = Dice(seed ^ 0x7041);
        let is_in_file = dice.coin();
        save(&home, &states[0]).unwrap();
        let note = note(is_in_file.then_some(home.as_path()));
        let place = RecoveryPlace::claim(&data).unwrap();
        let mut changes = place.changes(is_in_file.then_some(&note));
        let nothing = Book::default();
        let begins = if is_in_file { &states[0] } else { &nothing };
        let mut before = begins;
        let mut ends = Vec::new();
        for state in &states {
            changes.append(before, state, &note).unwrap();
            ends.push(changes.bytes());
            before = state;
        }
        let file = changes_in(&data);
        prop_assert_eq!(fs::metadata(&file).unwrap().len(), changes.bytes());
        drop(place);
        let last = states.last().unwrap();
        prop_assert!(left(&data) == *last, "seed {seed}");
        // Cut anywhere behind the first record, as a kill or a full disk does.
        let whole = fs::read(&file).unwrap();
        for _ in 0..6 {
            let first = usize::try_from(ends[0]).unwrap();
            let cut = first + dice.below(whole.len() - first + 1);
            fs::write(&file, &whole[..cut]).unwrap();
            let reached = ends.iter().rposition(|end| usize::try_from(*end).unwrap() <= cut).unwrap();
            prop_assert!(left(&data) == states[reached], "seed {seed}, cut at {cut}");
        }
        fs::write(&file, &whole).unwrap();
        // A whole book of any state in between, with all changes: they lead to the last one all the same.
        let place = left_by(&data).place;
        place.keep(&states[dice.below(states.len())], &note).unwrap();
        drop(place);
        prop_assert!(same_items(&left(&data), last), "seed {seed}");
        // The file that they began on was saved over since: they begin on its earlier copy.
        let place = left_by(&data).place;
        fs::remove_file(place.file()).unwrap();
        drop(place);
        save(&home, &Book::default()).unwrap();
        prop_assert!(left(&data) == *last, "seed {seed}");
    }
}

#[test]
fn a_damaged_change_costs_those_behind_it_and_is_said() {
    let folder = tempfile::tempdir().unwrap();
    let place = RecoveryPlace::claim(folder.path()).unwrap();
    let note = note(None);
    let mut changes = place.changes(None);
    let named = |shop: &str| {
        let mut book = Book::default();
        book.settings.shop = shop.to_owned();
        book
    };
    let names = ["first shop", "second shop", "third shop"];
    let mut before = Book::default();
    for name in names {
        changes.append(&before, &named(name), &note).unwrap();
        before = named(name);
    }
    drop(place);
    let file = changes_in(folder.path());
    let text = fs::read_to_string(&file).unwrap();
    fs::write(&file, text.replace("second shop", "secund shop")).unwrap();
    let (found, set_aside) = left_work(folder.path());
    assert_eq!(found[0].book.settings.shop, "first shop");
    assert_eq!(set_aside.len(), 1);
    assert!(set_aside[0].path.exists(), "{:?}", set_aside[0]);
}

fn now_in_milliseconds() -> u128 {
    SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .unwrap()
        .as_millis()
}

/// What the helper process does: types into a name until it is killed, and notes when each letter was there.
pub(crate) fn type_for_ever(path: &Path) {
    let mut workbench: Workbench = opened(path).with_recovery(&path.with_file_name("data"));
    let mut shown = fs::File::create(path.with_extension("shown")).unwrap();
    let mut dice = Dice(u64::from(std::process::id()));
    for number in 0_u64.. {
        rename(&mut workbench, "pear-drift", &format!("typed {number}"));
        workbench.poll();
        // One write for each, so that a kill leaves whole lines.
        let line = format!("{number} {}\n", now_in_milliseconds());
        shown.write_all(line.as_bytes()).unwrap();
        std::thread::sleep(Duration::from_millis(3 + dice.next() % 60));
    }
}

#[cfg(unix)]
#[test]
fn what_was_on_the_screen_for_a_quarter_of_a_second_outlives_a_kill() {
    let kills: usize = std::env::var("EVENSIP_TYPING_KILLS")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(6);
    let mut dice = Dice(0x11fe);
    let (mut lost, mut worst) = (0, 0);
    for kill in 0..kills {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.ron");
        let mut running = helper(&std::env::current_exe().unwrap(), "type", &path)
            .spawn()
            .unwrap();
        let shown = path.with_extension("shown");
        let typed = || fs::read_to_string(&shown).unwrap_or_default();
        while typed().lines().count() < 2 {
            assert!(running.try_wait().unwrap().is_none(), "it ended by itself");
            std::thread::sleep(Duration::from_millis(5));
        }
        // Sometimes before a whole book is written beside the changes, sometimes while it is, sometimes after.
        std::thread::sleep(Duration::from_millis(300 + dice.next() % 2400));
        let killed = now_in_milliseconds();
        running.kill().unwrap();
        running.wait().unwrap();
        let lines = typed();
        let letters: Vec<(u64, u128)> = lines
            .lines()
            .filter_map(|line| line.split_once(' '))
            .filter_map(|(number, moment)| Some((number.parse().ok()?, moment.parse().ok()?)))
            .collect();
        let (found, set_aside) = left_work(&folder.path().join("data"));
        assert!(set_aside.is_empty(), "kill {kill}: {set_aside:?}");
        let recipe = evensip::book::RecipeId::new("pear-drift").unwrap();
        let name = found
            .first()
            .and_then(|work| work.book.recipe(&recipe))
            .map(|recipe| recipe.name.clone());
        let kept: Option<u64> = name.and_then(|name| name.strip_prefix("typed ")?.parse().ok());
        // How long the oldest letter that is lost had been there.
        let oldest_lost = letters
            .iter()
            .find(|(number, _)| kept.is_none_or(|kept| *number > kept))
            .map_or(0, |(_, moment)| killed.saturating_sub(*moment));
        worst = worst.max(oldest_lost);
        lost += usize::from(oldest_lost > QUARTER_OF_A_SECOND);
    }
    println!(
        "{kills} typing programs killed; the oldest letter that was lost was {worst} ms old; {lost} times older than a quarter of a second"
    );
    assert_eq!(
        lost, 0,
        "the oldest letter that was lost was {worst} ms old"
    );
}
