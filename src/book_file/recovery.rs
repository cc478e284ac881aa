//! Unsaved work in a file of its own, so that a crash or a power cut costs seconds.
//!
//! Each running program has one such file in the user's data folder, beside a lock that the system gives free when the program
//! ends, in whatever way. A file whose lock is free is what a program has left that did not end as it should. The file is
//! a book with one comment in front that says whose work it is; it can be opened like any other.

use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use super::error::{LoadError, LoadProblem, SaveError};
use super::fingerprint::{Fingerprint, content_number};
use super::load::read_text;
use super::parse;
use super::save::{readable_text, replace, save_error};
use crate::book::Book;

/// A lock without work beside it is taken away when it is older than this.
const IDLE: Duration = Duration::from_hours(1);

const BEGINNING: &str = "// Unsaved work of Evensip: ";

/// Whose work it is.
#[derive(Clone, Debug, PartialEq)]
pub struct RecoveryNote {
    /// The file that the book was opened from; `None` when it was in none, or its path is not Unicode.
    pub home: Option<PathBuf>,
    /// The name of the book on the screen.
    pub name: String,
    /// The file as it was when it was last read or written.
    pub known: Option<Fingerprint>,
    /// When the work was kept.
    pub kept: Timestamp,
}

/// The note as it stands in the file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header {
    kept: String,
    home: Option<String>,
    name: String,
    known: Option<Known>,
    /// The number of the text below the line: a file that lost its end is damaged although it may still be a book.
    content: u64,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Known {
    length: u64,
    content: u64,
    modified_nanoseconds: Option<u128>,
}

/// A place for unsaved work that belongs to this program as long as the value lives.
#[derive(Debug)]
pub struct RecoveryPlace {
    file: PathBuf,
    lock_file: PathBuf,
    /// Held, never read: the system gives the lock free when it is closed.
    _lock: File,
}

impl RecoveryPlace {
    /// A place of one's own in a folder, which is made when it is missing.
    pub fn claim(folder: &Path) -> io::Result<Self> {
        fs::create_dir_all(folder)?;
        let moment = Timestamp::now().strftime("%Y-%m-%dT%H-%M-%S").to_string();
        let process = std::process::id();
        let mut number = 1_u32;
        loop {
            let lock_file = folder.join(format!("unsaved-{moment}-{process}-{number}.lock"));
            match OpenOptions::new()
                .write(true)
                .create_new(true)
                .open(&lock_file)
            {
                Ok(lock) => match lock.try_lock() {
                    Err(TryLockError::WouldBlock) => number += 1,
                    // Where locks are unknown the place is used without: the worst is an offer of what is not lost.
                    Ok(()) | Err(TryLockError::Error(_)) => {
                        return Ok(Self {
                            file: lock_file.with_extension("ron"),
                            lock_file,
                            _lock: lock,
                        });
                    }
                },
                Err(error) if error.kind() == ErrorKind::AlreadyExists => number += 1,
                Err(error) => return Err(error),
            }
        }
    }

    /// Where the work is kept.
    pub fn file(&self) -> &Path {
        &self.file
    }

    /// Keeps a book in place of what was kept before. It is on the disk when this returns.
    pub fn keep(&self, book: &Book, note: &RecoveryNote) -> Result<(), SaveError> {
        let text = readable_text(&self.file, book)?;
        let header = header_line(note, &text)
            .map_err(|source| save_error(&self.file, io::Error::other(source)))?;
        replace(&self.file, format!("{header}\n{text}").as_bytes())
            .map_err(|source| save_error(&self.file, source))
    }

    /// Takes away what was kept: it has been saved or given up.
    pub fn clear(&self) -> io::Result<()> {
        match fs::remove_file(&self.file) {
            Err(error) if error.kind() != ErrorKind::NotFound => Err(error),
            _ => Ok(()),
        }
    }
}

impl Drop for RecoveryPlace {
    /// The lock file is of no use without work beside it.
    fn drop(&mut self) {
        if !self.file.exists() {
            let _ = fs::remove_file(&self.lock_file);
        }
    }
}

/// Work that a program has left.
#[derive(Debug)]
pub struct LeftWork {
    /// Whose it is.
    pub note: RecoveryNote,
    /// The book with the work in it.
    pub book: Book,
    /// Where it is, now in the hands of this program.
    pub place: RecoveryPlace,
}

/// A recovery file that can't be read. It has been renamed so that it is not met again, and not deleted.
#[derive(Debug, thiserror::Error)]
#[error("unsaved work was found that can't be read ({reason}); it is kept as {}", .path.display())]
pub struct SetAside {
    /// Where it is now.
    pub path: PathBuf,
    /// What is wrong with it.
    pub reason: String,
}

/// What programs have left in a folder, the newest first, and what of it could not be read.
pub fn left_work(folder: &Path) -> (Vec<LeftWork>, Vec<SetAside>) {
    let (mut found, mut set_aside) = (Vec::new(), Vec::new());
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let mut files: Vec<PathBuf> = entries
        .map(|entry| entry.path())
        .filter(|path| is_work(path))
        .collect();
    files.sort();
    remove_idle_locks(folder);
    for file in files.into_iter().rev() {
        let Some(place) = taken_over(&file) else {
            continue;
        };
        match read_work(&file) {
            Ok((note, book)) => found.push(LeftWork { note, book, place }),
            Err(reason) => {
                let path = file.with_extension("damaged");
                // When it can't even be renamed it is met again at the next start: a nuisance, and no loss.
                let path = if fs::rename(&file, &path).is_ok() {
                    path
                } else {
                    file
                };
                set_aside.push(SetAside { path, reason });
            }
        }
    }
    (found, set_aside)
}

/// Takes away the locks of programs that ended without leaving work: each of them would leave one for ever. A young one may
/// belong to a program that has made it and not locked it yet.
fn remove_idle_locks(folder: &Path) {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    for path in entries.map(|entry| entry.path()) {
        let work = path.with_extension("ron");
        let is_old = || {
            let modified = fs::metadata(&path).and_then(|metadata| metadata.modified());
            modified.is_ok_and(|time| time.elapsed().is_ok_and(|age| age > IDLE))
        };
        if path.extension().is_some_and(|ending| ending == "lock")
            && is_work(&work)
            && !work.exists()
            && is_old()
            && let Ok(lock) = File::open(&path)
            && lock.try_lock().is_ok()
        {
            // Gone or kept, nothing depends on it.
            let _ = fs::remove_file(&path);
        }
    }
}

fn is_work(path: &Path) -> bool {
    let name = path
        .file_name()
        .and_then(|name| name.to_str())
        .unwrap_or_default();
    name.starts_with("unsaved-") && path.extension().is_some_and(|ending| ending == "ron")
}

/// The place of a file whose program is gone; `None` while it runs.
fn taken_over(file: &Path) -> Option<RecoveryPlace> {
    let lock_file = file.with_extension("lock");
    let lock = OpenOptions::new()
        .write(true)
        .create(true)
        .truncate(false)
        .open(&lock_file)
        .ok()?;
    match lock.try_lock() {
        Err(TryLockError::WouldBlock) => None,
        Ok(()) | Err(TryLockError::Error(_)) => {
            // Between the list of the folder and the lock its owner may have cleared it.
            file.exists().then(|| RecoveryPlace {
                file: file.to_owned(),
                lock_file,
                _lock: lock,
            })
        }
    }
}

fn read_work(file: &Path) -> Result<(RecoveryNote, Book), String> {
    let (text, _) = read_text(file).map_err(|error| reason_of(&error))?;
    let (line, rest) = text
        .split_once('\n')
        .ok_or("it ends after its first line")?;
    let header = line
        .strip_prefix(BEGINNING)
        .ok_or("its first line does not say whose work it is")?;
    let header: Header =
        ron::from_str(header).map_err(|_| "its first line is damaged".to_owned())?;
    if content_number(rest.as_bytes()) != header.content {
        return Err("a part of it is missing or was changed".to_owned());
    }
    let (book, _) = parse(rest).map_err(|problems| {
        problems
            .iter()
            .map(LoadProblem::to_string)
            .collect::<String>()
    })?;
    let kept = header
        .kept
        .parse()
        .map_err(|error| format!("its time is damaged: {error}"))?;
    let known = header.known.map(|known| Fingerprint {
        length: known.length,
        modified: known.modified_nanoseconds.and_then(time_of),
        content: known.content,
    });
    Ok((
        RecoveryNote {
            home: header.home.map(PathBuf::from),
            name: header.name,
            known,
            kept,
        },
        book,
    ))
}

fn reason_of(error: &LoadError) -> String {
    match error {
        LoadError::Problems { problems, .. } => {
            problems.iter().map(LoadProblem::to_string).collect()
        }
        other => other.to_string(),
    }
}

fn header_line(note: &RecoveryNote, text: &str) -> ron::Result<String> {
    let known = note.known.map(|known| Known {
        length: known.length,
        content: known.content,
        modified_nanoseconds: known
            .modified
            .and_then(|time| time.duration_since(UNIX_EPOCH).ok())
            .map(|since| since.as_nanos()),
    });
    let home = note
        .home
        .as_ref()
        .and_then(|home| home.to_str())
        .map(str::to_owned);
    let content = content_number(text.as_bytes());
    let header = Header {
        kept: note.kept.to_string(),
        home,
        name: note.name.clone(),
        known,
        content,
    };
    Ok(format!("{BEGINNING}{}", ron::to_string(&header)?))
}

fn time_of(nanoseconds: u128) -> Option<SystemTime> {
    const SECOND: u128 = 1_000_000_000;
    let seconds = u64::try_from(nanoseconds / SECOND).ok()?;
    let rest = u32::try_from(nanoseconds % SECOND).ok()?;
    UNIX_EPOCH.checked_add(Duration::new(seconds, rest))
}
