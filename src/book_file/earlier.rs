//! Earlier copies of a book, kept in a folder beside it.
//!
//! A copy is made by giving the replaced file a second name: no byte is written, so that even a full disk keeps it. Where that
//! can't be done the bytes are copied. A copy is never worth failing a save for.

use std::collections::BTreeSet;
use std::ffi::{OsStr, OsString};
use std::fs;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::TimeZone;

use super::place::{folder_of, followed, sync_folder};

/// How many of the newest copies are kept, whatever their age.
const NEWEST: usize = 10;

/// Of older ones the last of each day is kept, for so many days with a save.
const DAYS: usize = 20;

/// The time in the name of a copy, in UTC. It has no colons, which some systems do not allow in names.
const NAME_FORMAT: &str = "%Y-%m-%dT%H-%M-%S";

/// Characters of [`NAME_FORMAT`], and of the day at its beginning.
const NAME_LENGTH: usize = 19;
const DAY_LENGTH: usize = 10;

const ENDING: &str = ".earlier";

/// An earlier state of a book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct EarlierCopy {
    /// Where it is. It opens like any book.
    pub path: PathBuf,
    /// When this state was saved.
    pub saved: Timestamp,
    /// Its length, bytes.
    pub bytes: u64,
}

/// The folder of the copies of a book: `.book.ron.earlier` beside `book.ron`.
pub fn earlier_folder(book: &Path) -> PathBuf {
    let mut name = OsString::from(".");
    name.push(book.file_name().unwrap_or(OsStr::new("book")));
    name.push(ENDING);
    folder_of(book).join(name)
}

/// The book that a file is an earlier copy of; `None` when it is none.
pub fn book_of_earlier_copy(path: &Path) -> Option<PathBuf> {
    let folder = path.parent()?;
    let name = folder
        .file_name()?
        .to_str()?
        .strip_prefix('.')?
        .strip_suffix(ENDING)?;
    saved_at(path)?;
    Some(folder.parent()?.join(name))
}

/// The copies of a book, the newest first; none when there is no such folder.
pub fn earlier_copies(book: &Path) -> io::Result<Vec<EarlierCopy>> {
    // A book behind a symbolic link is replaced, and its copies are kept, where the link leads to.
    let target = followed(book)?;
    let entries = match fs::read_dir(earlier_folder(&target)) {
        Ok(entries) => entries,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        Err(error) => return Err(error),
    };
    let mut copies = Vec::new();
    for entry in entries {
        let entry = entry?;
        let metadata = entry.metadata()?;
        if let Some(saved) = saved_at(&entry.path()).filter(|_| metadata.is_file()) {
            copies.push(EarlierCopy {
                path: entry.path(),
                saved,
                bytes: metadata.len(),
            });
        }
    }
    copies.sort_by(|one, other| other.path.cmp(&one.path));
    Ok(copies)
}

/// When a copy was saved, by its name; `None` when it has not the name of one.
fn saved_at(path: &Path) -> Option<Timestamp> {
    let name = path.file_name()?.to_str()?.strip_suffix(".ron")?;
    let time = DateTime::strptime(NAME_FORMAT, name.get(..NAME_LENGTH)?).ok()?;
    TimeZone::UTC.to_timestamp(time).ok()
}

/// Keeps the file that is about to be replaced, and tells where.
pub(super) fn keep(target: &Path) -> io::Result<PathBuf> {
    let folder = earlier_folder(target);
    match fs::create_dir(&folder) {
        Err(error) if error.kind() != ErrorKind::AlreadyExists => return Err(error),
        _ => {}
    }
    let modified = fs::metadata(target)?.modified()?;
    let time = Timestamp::try_from(modified)
        .map_err(io::Error::other)?
        .strftime(NAME_FORMAT)
        .to_string();
    let mut number = next_number(&folder, &time)?;
    loop {
        let copy = folder.join(format!("{time}-{number:03}.ron"));
        match fs::hard_link(target, &copy) {
            Ok(()) => {
                sync_folder(&folder);
                return Ok(copy);
            }
            // Another program keeps a copy of the same second.
            Err(error) if error.kind() == ErrorKind::AlreadyExists => number += 1,
            Err(_) if !copy.exists() => return copied(target, &copy),
            Err(error) => return Err(error),
        }
    }
}

/// The number behind the largest one of a second, from 1. A number that was thinned out is not used again, so that the names
/// stay in the order of the saves.
fn next_number(folder: &Path, time: &str) -> io::Result<u32> {
    let mut largest = 0_u32;
    for entry in fs::read_dir(folder)? {
        let name = entry?.file_name();
        let number = name.to_str().and_then(|name| {
            name.strip_prefix(time)?
                .strip_prefix('-')?
                .strip_suffix(".ron")
        });
        largest = largest.max(number.and_then(|number| number.parse().ok()).unwrap_or(0));
    }
    Ok(largest.saturating_add(1))
}

/// Copies the bytes, where a file can't have two names. A copy that was cut short is taken away again.
fn copied(target: &Path, copy: &Path) -> io::Result<PathBuf> {
    let outcome = fs::copy(target, copy).and_then(|_| fs::File::open(copy)?.sync_all());
    match outcome {
        Ok(()) => Ok(copy.to_owned()),
        Err(error) => {
            let _ = fs::remove_file(copy);
            Err(error)
        }
    }
}

/// Takes away the copies that are beyond the number. What can't be taken away stays for the next time.
pub(super) fn thin_out(book: &Path) {
    let Ok(copies) = earlier_copies(book) else {
        return;
    };
    let names: Vec<&str> = copies
        .iter()
        .filter_map(|copy| copy.path.file_name()?.to_str())
        .collect();
    let superfluous = superfluous(&names);
    for copy in &copies {
        if copy
            .path
            .file_name()
            .and_then(OsStr::to_str)
            .is_some_and(|name| superfluous.contains(name))
        {
            let _ = fs::remove_file(&copy.path);
        }
    }
}

/// Names of copies, the newest first, that need not be kept.
fn superfluous<'name>(names: &[&'name str]) -> BTreeSet<&'name str> {
    let mut days = BTreeSet::new();
    let mut superfluous = BTreeSet::new();
    for (at, name) in names.iter().enumerate() {
        let day = name.get(..DAY_LENGTH).unwrap_or(name);
        let is_last_of_day = days.len() < DAYS && days.insert(day);
        if at >= NEWEST && !is_last_of_day {
            superfluous.insert(*name);
        }
    }
    superfluous
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_newest_copies_and_the_last_of_each_day_are_kept() {
        // Three saves a day for sixty days, the newest first.
        let names: Vec<String> = (0..60)
            .rev()
            .flat_map(|day| {
                [18, 12, 9].map(|hour| {
                    format!(
                        "2026-{:02}-{:02}T{hour:02}-00-00-001.ron",
                        1 + day / 28,
                        1 + day % 28
                    )
                })
            })
            .collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        let gone = superfluous(&names);
        let kept: Vec<&&str> = names.iter().filter(|name| !gone.contains(**name)).collect();
        assert!(kept.len() <= NEWEST + DAYS, "{kept:?}");
        assert_eq!(
            kept[..NEWEST].iter().map(|name| **name).collect::<Vec<_>>(),
            names[..NEWEST]
        );
        assert!(
            kept[NEWEST..].iter().all(|name| name.contains("T18")),
            "{kept:?}"
        );
        assert!(superfluous(&names[..NEWEST]).is_empty());
    }

    #[test]
    fn a_copy_knows_its_book() {
        let book = Path::new("/books/winter.ron");
        let copy = earlier_folder(book).join("2026-05-04T10-22-31-001.ron");
        assert_eq!(book_of_earlier_copy(&copy).as_deref(), Some(book));
        assert_eq!(book_of_earlier_copy(book), None);
        assert_eq!(
            book_of_earlier_copy(&earlier_folder(book).join("notes.txt")),
            None
        );
    }
}
