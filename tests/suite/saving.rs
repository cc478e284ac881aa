//! Saving under real faults: killed processes, a full disk, folders that may not be written.
//!
//! A test that needs a process of its own runs this test binary once more, with only the helper test below and a variable that
//! says what to do. `EVENSIP_KILLS=1000` makes the first test kill a thousand saves instead of fifty:
//! `EVENSIP_KILLS=1000 cargo test --test suite saving::a_save_that_is_killed -- --nocapture`.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    reason = "a test tells what it measured, and ends at the first surprise"
)]

use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use evensip::book::{Book, RecipeId};
use evensip::book_file::{
    SaveError, built_in_book, earlier_copies, earlier_folder, load, save, save_over, write,
};

use super::arbitrary_book::Dice;

/// What the helper does, and with which file.
const TASK: &str = "EVENSIP_SAVING_TASK";
const FILE: &str = "EVENSIP_SAVING_FILE";

/// The size of a book that takes a while to save.
const LARGE: usize = 5 * 1024 * 1024;

/// A book of five megabytes; the note tells two of them apart.
fn large_book(note: &str) -> Book {
    let mut book = built_in_book().unwrap();
    let recipes: Vec<_> = book.recipes.iter().cloned().collect();
    note.clone_into(&mut book.settings.note);
    let mut copy = 0;
    while copy % 8 != 0 || write(&book).len() <= LARGE {
        for recipe in &recipes {
            let id = RecipeId::new(&format!("copy-{copy}-{}", recipe.id)).unwrap();
            book.recipes.put(evensip::book::Recipe {
                id,
                ..recipe.as_ref().clone()
            });
        }
        copy += 1;
    }
    book
}

/// Not a test by itself: what the other tests have done in processes of their own.
#[test]
fn helper_process() {
    let Ok(task) = env::var(TASK) else { return };
    let path = PathBuf::from(env::var(FILE).unwrap());
    match task.as_str() {
        "save in a loop" => {
            let books = [large_book("one"), large_book("two")];
            loop {
                for book in &books {
                    save(&path, book).unwrap();
                    fs::write(path.with_extension("begun"), "").unwrap();
                }
            }
        }
        "save on a full disk" => save_on_full_disk(&path),
        "save where nothing may be written" => save_where_nothing_may_be_written(&path),
        "keep work and wait" => super::kept_work::keep_work_and_wait(&path),
        "type" => super::kept_changes::type_for_ever(&path),
        other => panic!("{other}"),
    }
}

/// This test binary as a process that does one task.
pub(crate) fn helper(program: &Path, task: &str, file: &Path) -> Command {
    let mut command = Command::new(program);
    command
        .args(["--exact", "saving::helper_process", "--nocapture"])
        .env(TASK, task)
        .env(FILE, file);
    command.stdout(Stdio::null());
    command
}

fn wait_for(path: &Path, child: &mut Child) {
    let started = Instant::now();
    while !path.exists() {
        assert!(
            child.try_wait().unwrap().is_none(),
            "the process ended by itself"
        );
        assert!(
            started.elapsed() < Duration::from_mins(2),
            "nothing was saved"
        );
        std::thread::sleep(Duration::from_millis(2));
    }
}

#[cfg(unix)]
#[test]
fn a_save_that_is_killed_leaves_the_old_book_or_the_new_one() {
    let kills: usize = env::var("EVENSIP_KILLS")
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(50);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let texts = [write(&large_book("one")), write(&large_book("two"))];
    assert!(texts[0].len() > LARGE, "{}", texts[0].len());
    for text in &texts {
        assert!(evensip::book_file::parse(text).is_ok());
    }
    fs::write(&path, &texts[0]).unwrap();
    let mut dice = Dice(0x6b11);
    let (mut each, mut cut_short) = ([0, 0], 0);
    let mut child = None;
    for _ in 0..kills {
        let begun = path.with_extension("begun");
        let _ = fs::remove_file(&begun);
        let mut running = helper(&env::current_exe().unwrap(), "save in a loop", &path)
            .spawn()
            .unwrap();
        wait_for(&begun, &mut running);
        std::thread::sleep(Duration::from_micros(dice.next() % 120_000));
        running.kill().unwrap();
        running.wait().unwrap();
        let found = fs::read_to_string(&path).unwrap();
        // Byte by byte one of the two, and each of them opens.
        let which = texts.iter().position(|text| *text == found);
        each[which.expect("neither the old book nor the new one")] += 1;
        let left_over =
            |entry: &fs::DirEntry| entry.file_name().to_string_lossy().contains(".saving-");
        cut_short += fs::read_dir(folder.path())
            .unwrap()
            .filter(|entry| left_over(entry.as_ref().unwrap()))
            .count();
        for entry in fs::read_dir(folder.path())
            .unwrap()
            .map(|entry| entry.unwrap())
            .filter(left_over)
        {
            fs::remove_file(entry.path()).unwrap();
        }
        child = Some(running.id());
    }
    println!(
        "{kills} processes killed, {cut_short} of them while they wrote; the book was {} times one, {} times the other",
        each[0], each[1]
    );
    assert!(child.is_some() && load(&path).is_ok());
    // The earlier copies are whole, too.
    for copy in earlier_copies(&path).unwrap() {
        assert!(
            texts.contains(&fs::read_to_string(&copy.path).unwrap()),
            "{}",
            copy.path.display()
        );
    }
}

/// The helper runs where 256 kB are all there is.
fn save_on_full_disk(path: &Path) {
    let small = Book::default();
    save(path, &small).unwrap();
    let before = fs::read(path).unwrap();
    let error = save(path, &large_book("too large")).unwrap_err();
    assert!(matches!(error, SaveError::DiskFull { .. }), "{error:?}");
    assert_eq!(fs::read(path).unwrap(), before);
    assert_eq!(
        fs::read_dir(path.parent().unwrap()).unwrap().count(),
        1,
        "something was left behind"
    );
    // Fill the disk to the last byte: even then the small book that is there can be replaced or is left as it is.
    let filler = path.with_extension("filler");
    let _ = fs::write(&filler, vec![0; 1024 * 1024]);
    let mut changed = small.clone();
    changed.settings.note = "x".repeat(100_000);
    if let Err(error) = save(path, &changed) {
        assert!(matches!(error, SaveError::DiskFull { .. }), "{error:?}");
        assert_eq!(fs::read(path).unwrap(), before);
    }
    fs::remove_file(filler).unwrap();
    save(path, &changed).unwrap();
    assert!(load(path).unwrap().book == changed);
}

/// A real disk of 256 kB where a file system may be mounted; elsewhere a real limit on the size of files, which fails a write in
/// the same place with another number.
#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_said_and_the_old_book_stays() {
    let folder = tempfile::tempdir().unwrap();
    let disk = folder.path().join("disk");
    fs::create_dir(&disk).unwrap();
    let program = env::current_exe().unwrap();
    let file = disk.join("book.ron");
    let may_mount = Command::new("unshare")
        .args([
            "--mount",
            "--map-root-user",
            "sh",
            "-c",
            "mount -t tmpfs -o size=256k none \"$0\"",
        ])
        .arg(&disk)
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success());
    let script = if may_mount {
        "mount -t tmpfs -o size=256k none \"$0\" && shift 0 && exec \"$@\""
    } else {
        // 512-byte blocks; the signal that goes with the limit is ignored, so that the write itself fails.
        "trap '' XFSZ; ulimit -f 512; exec \"$@\""
    };
    println!(
        "{}",
        if may_mount {
            "a mounted disk of 256 kB"
        } else {
            "no disk can be mounted; a limit on file sizes stands in"
        }
    );
    let mut command = if may_mount {
        let mut command = Command::new("unshare");
        command.args(["--mount", "--map-root-user", "sh"]);
        command
    } else {
        Command::new("sh")
    };
    let helper = helper(&program, "save on a full disk", &file);
    command
        .args(["-c", script])
        .arg(&disk)
        .arg(helper.get_program())
        .args(helper.get_args());
    command.env(TASK, "save on a full disk").env(FILE, &file);
    let output = command.output().unwrap();
    assert!(
        output.status.success(),
        "{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
}

/// The helper runs as an ordinary user in a folder that belongs to another one.
fn save_where_nothing_may_be_written(path: &Path) {
    let before = fs::read(path).unwrap();
    // The file itself may be written, and the folder takes no other in its place.
    let error = save(path, &Book::default()).unwrap_err();
    assert!(
        matches!(error, SaveError::NoPermissionInFolder { .. }),
        "{error:?}"
    );
    let error = save(&path.with_file_name("new.ron"), &Book::default()).unwrap_err();
    assert!(
        matches!(error, SaveError::NoPermissionInFolder { .. }),
        "{error:?}"
    );
    // A file that may not be written is not replaced either, even in a folder where it could be.
    let locked = path.parent().unwrap().join("open/locked.ron");
    let error = save(&locked, &Book::default()).unwrap_err();
    assert!(matches!(error, SaveError::NoPermission { .. }), "{error:?}");
    assert_eq!(fs::read(path).unwrap(), before);
    // A folder that takes a book but no other folder's copies: the book is saved all the same.
    let crowded = path.parent().unwrap().join("open/book.ron");
    fs::write(&crowded, "(format: 1)").unwrap();
    fs::write(
        earlier_folder(&crowded),
        "a file where the folder of copies should be",
    )
    .unwrap();
    assert!(
        save(&crowded, &built_in_book().unwrap())
            .unwrap()
            .earlier
            .is_err()
    );
    assert!(load(&crowded).unwrap().book == built_in_book().unwrap());
}

#[cfg(unix)]
#[test]
fn a_folder_that_may_not_be_written_is_said_and_the_book_stays() {
    use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _};
    use std::os::unix::process::CommandExt as _;

    const NOBODY: u32 = 65_534;

    let folder = tempfile::Builder::new()
        .permissions(fs::Permissions::from_mode(0o755))
        .tempdir()
        .unwrap();
    let program = folder.path().join("suite");
    // The test binary may lie where nobody else may look, so a copy is run.
    fs::copy(env::current_exe().unwrap(), &program).unwrap();
    fs::set_permissions(&program, fs::Permissions::from_mode(0o755)).unwrap();
    let (closed, open) = (
        folder.path().join("closed"),
        folder.path().join("closed/open"),
    );
    fs::create_dir_all(&open).unwrap();
    fs::set_permissions(&open, fs::Permissions::from_mode(0o777)).unwrap();
    for (path, mode) in [
        (closed.join("book.ron"), 0o666),
        (open.join("locked.ron"), 0o444),
    ] {
        fs::write(&path, "(format: 1)").unwrap();
        fs::set_permissions(&path, fs::Permissions::from_mode(mode)).unwrap();
    }
    let is_root = fs::metadata(folder.path()).unwrap().uid() == 0;
    fs::set_permissions(&closed, fs::Permissions::from_mode(0o555)).unwrap();
    let mut command = helper(
        &program,
        "save where nothing may be written",
        &closed.join("book.ron"),
    );
    command.current_dir(folder.path());
    if is_root {
        command.uid(NOBODY).gid(NOBODY);
    }
    let output = command
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .output()
        .unwrap();
    fs::set_permissions(&closed, fs::Permissions::from_mode(0o755)).unwrap();
    assert!(
        output.status.success(),
        "{}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
}

#[test]
fn a_changed_file_is_not_saved_over_and_an_unchanged_one_is() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let book = built_in_book().unwrap();
    let known = save(&path, &book).unwrap().fingerprint;
    assert!(load(&path).unwrap().fingerprint.has_content_of(&known));
    // Same length, and the time set back: the content tells.
    let changed = fs::read_to_string(&path)
        .unwrap()
        .replacen("Harrowmere", "Harrowmera", 1);
    fs::write(&path, &changed).unwrap();
    fs::File::options()
        .write(true)
        .open(&path)
        .unwrap()
        .set_modified(known.modified.unwrap())
        .unwrap();
    let error = save_over(&path, &Book::default(), &known).unwrap_err();
    assert!(
        matches!(error, SaveError::ChangedOnDisk { .. }),
        "{error:?}"
    );
    assert_eq!(fs::read_to_string(&path).unwrap(), changed);
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
    let known = load(&path).unwrap().fingerprint;
    save_over(&path, &book, &known).unwrap();
    // A file that is gone overwrites nothing.
    fs::remove_file(&path).unwrap();
    save_over(&path, &book, &known).unwrap();
    assert!(load(&path).unwrap().book == book);
}

#[test]
fn what_is_replaced_is_kept_as_an_earlier_copy_of_bounded_number() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let mut book = Book::default();
    for number in 0..40 {
        book.settings.note = format!("state {number}");
        let saved = save(&path, &book).unwrap();
        assert_eq!(saved.earlier.unwrap().is_some(), number > 0);
    }
    let copies = earlier_copies(&path).unwrap();
    assert!((10..=30).contains(&copies.len()), "{}", copies.len());
    assert_eq!(
        load(&copies[0].path).unwrap().book.settings.note,
        "state 38"
    );
    assert!(copies.windows(2).all(|pair| pair[0].saved >= pair[1].saved));
    // The same state once more makes no copy.
    assert_eq!(save(&path, &book).unwrap().earlier.unwrap(), None);
    // A copy does not change with the book, and an odd file in its folder is left alone.
    let odd = earlier_folder(&path).join("notes.txt");
    fs::write(&odd, "mine").unwrap();
    book.settings.note = "last".to_owned();
    save(&path, &book).unwrap();
    assert_eq!(
        load(&copies[0].path).unwrap().book.settings.note,
        "state 38"
    );
    assert!(odd.exists());
}

#[test]
fn what_a_save_left_long_ago_is_taken_away_and_what_may_be_under_way_is_not() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let (old, new) = (
        folder.path().join(".book.ron.saving-aaaaaa.ron"),
        folder.path().join(".book.ron.saving-bbbbbb.ron"),
    );
    for file in [&old, &new] {
        fs::write(file, "half").unwrap();
    }
    let long_ago = std::time::SystemTime::now() - Duration::from_hours(2);
    fs::File::options()
        .write(true)
        .open(&old)
        .unwrap()
        .set_modified(long_ago)
        .unwrap();
    save(&path, &Book::default()).unwrap();
    assert!(!old.exists() && new.exists());
}
