//! Unsaved work in a file of its own, so that a crash or a power cut costs seconds.
//!
//! Each running program has one such file in the user's data folder, beside a lock that the system gives free when the program
//! ends, in whatever way. A file whose lock is free is what a program has left that did not end as it should. Changes are
//! appended to it as they are made (`changes`); now and then a whole book is put beside them, with one comment in front that says
//! whose work it is. That can be opened like any other book.

use std::collections::BTreeSet;
use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use super::changes::{ChangesFile, read_changes};
use super::error::{LoadError, SaveError};
use super::fingerprint::content_number;
use super::load::read_text;
use super::parse;
use super::save::{readable_text, replace, save_error};
use super::work_note::{Known, RecoveryNote, WorkFault};
use crate::book::Book;

/// A lock without work beside it is taken away when it is older than this.
const IDLE: Duration = Duration::from_hours(1);

/// Ending of a file that holds a whole book.
const WHOLE: &str = "ron";

/// Ending of a file that holds changes.
const CHANGES: &str = "changes";

const BEGINNING: &str = "// Unsaved work of Evensip: ";

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

    /// A file for changes that begin on a file, as it was then, or on an empty book.
    pub fn changes(&self, base: Option<&RecoveryNote>) -> ChangesFile {
        ChangesFile::new(self.changes_file(), base)
    }

    fn changes_file(&self) -> PathBuf {
        self.file.with_extension(CHANGES)
    }

    /// Keeps a whole book in place of the one that was kept before. It is on the disk when this returns. Changes that are kept
    /// beside it lead on from it when they began before it.
    ///
    /// Tells its length, bytes.
    pub fn keep(&self, book: &Book, note: &RecoveryNote) -> Result<u64, SaveError> {
        let text = readable_text(&self.file, book)?;
        let header = header_line(note, &text)
            .map_err(|source| save_error(&self.file, io::Error::other(source)))?;
        replace(&self.file, format!("{header}\n{text}").as_bytes())
            .map_err(|source| save_error(&self.file, source))?;
        Ok(text.len() as u64)
    }

    /// Takes away what was kept: it has been saved or given up.
    pub fn clear(&self) -> io::Result<()> {
        // The changes lead to the last state, the whole book to an older one: what a crash leaves in between is the last one.
        for file in [&self.file, &self.changes_file()] {
            match fs::remove_file(file) {
                Err(error) if error.kind() != ErrorKind::NotFound => return Err(error),
                _ => {}
            }
        }
        Ok(())
    }

    fn holds_work(&self) -> bool {
        self.file.exists() || self.changes_file().exists()
    }
}

impl Drop for RecoveryPlace {
    /// The lock file is of no use without work beside it.
    fn drop(&mut self) {
        if !self.holds_work() {
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
#[derive(Debug)]
pub struct SetAside {
    /// Where it is now.
    pub path: PathBuf,
    /// What is wrong with it.
    pub reason: Arc<WorkFault>,
}

/// What programs have left in a folder, the newest first, and what of it could not be read.
pub fn left_work(folder: &Path) -> (Vec<LeftWork>, Vec<SetAside>) {
    let (mut found, mut set_aside) = (Vec::new(), Vec::new());
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let files: BTreeSet<PathBuf> = entries
        .map(|entry| entry.path())
        .filter(|path| is_work(path))
        .map(|path| path.with_extension(WHOLE))
        .collect();
    remove_idle_locks(folder);
    for file in files.into_iter().rev() {
        let Some(place) = taken_over(&file) else {
            continue;
        };
        match read_work(&file) {
            Ok(Some(ReadWork { note, book, damage })) => {
                if let Some(reason) = damage {
                    let changes = place.changes_file();
                    set_aside.extend(copied_aside(&changes, reason));
                }
                found.push(LeftWork { note, book, place });
            }
            // Cleared since the list of the folder was made.
            Ok(None) => {}
            Err(reason) => {
                let reason = Arc::new(reason);
                for file in [&place.changes_file(), &file] {
                    set_aside.extend(moved_aside(file, &reason));
                }
            }
        }
    }
    (found, set_aside)
}

/// Renames a file that can't be read. When it can't even be renamed it is met again at the next start: a nuisance, and no loss.
fn moved_aside(file: &Path, reason: &Arc<WorkFault>) -> Option<SetAside> {
    let path = aside(file);
    let path = match fs::rename(file, &path) {
        Ok(()) => path,
        Err(error) if error.kind() == ErrorKind::NotFound => return None,
        Err(_) => file.to_owned(),
    };
    let reason = reason.clone();
    Some(SetAside { path, reason })
}

/// Copies a file of which a part could be read: the file itself goes with the work.
fn copied_aside(file: &Path, reason: WorkFault) -> Option<SetAside> {
    let path = aside(file);
    let reason = Arc::new(reason);
    fs::copy(file, &path).ok()?;
    Some(SetAside { path, reason })
}

fn aside(file: &Path) -> PathBuf {
    if file.extension().is_some_and(|ending| ending == CHANGES) {
        file.with_extension("changes.damaged")
    } else {
        file.with_extension("damaged")
    }
}

/// Takes away the locks of programs that ended without leaving work: each of them would leave one for ever. A young one may
/// belong to a program that has made it and not locked it yet.
fn remove_idle_locks(folder: &Path) {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    for path in entries.map(|entry| entry.path()) {
        let work = path.with_extension(WHOLE);
        let is_old = || {
            let modified = fs::metadata(&path).and_then(|metadata| metadata.modified());
            modified.is_ok_and(|time| time.elapsed().is_ok_and(|age| age > IDLE))
        };
        if path.extension().is_some_and(|ending| ending == "lock")
            && is_work(&work)
            && !work.exists()
            && !work.with_extension(CHANGES).exists()
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
    name.starts_with("unsaved-")
        && path
            .extension()
            .is_some_and(|ending| ending == WHOLE || ending == CHANGES)
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
            let place = RecoveryPlace {
                file: file.to_owned(),
                lock_file,
                _lock: lock,
            };
            place.holds_work().then_some(place)
        }
    }
}

/// Work as far as it can be read.
struct ReadWork {
    note: RecoveryNote,
    book: Book,
    /// Why the last changes are not in it, when more is wrong than that the last write was cut short.
    damage: Option<WorkFault>,
}

/// The work of a place: the whole book that was kept last, or what the changes began on, with the changes carried out.
fn read_work(file: &Path) -> Result<Option<ReadWork>, WorkFault> {
    let whole = file.exists().then(|| read_whole(file)).transpose()?;
    let changes = read_changes(&file.with_extension(CHANGES))?;
    let Some(changes) = changes else {
        return Ok(whole.map(|(note, book)| ReadWork {
            note,
            book,
            damage: None,
        }));
    };
    let damage = changes.is_damaged.then_some(WorkFault::ChangeDamaged);
    let of_changes = changes.note();
    let (note, base) = match (whole, of_changes) {
        (Some((note, book)), later) => (later.unwrap_or(note), book),
        (None, Some(note)) => (note, changes.base()),
        (None, None) => return Err(WorkFault::NoWholeChange),
    };
    let book = changes.replay(base);
    Ok(Some(ReadWork { note, book, damage }))
}

fn read_whole(file: &Path) -> Result<(RecoveryNote, Book), WorkFault> {
    let (text, _) = read_text(file).map_err(|error| match error {
        LoadError::Problems { problems, .. } => WorkFault::NoBook(problems),
        other => WorkFault::Unreadable(other),
    })?;
    let (line, rest) = text.split_once('\n').ok_or(WorkFault::EndsEarly)?;
    let header = line.strip_prefix(BEGINNING).ok_or(WorkFault::NoOwner)?;
    let header: Header = ron::from_str(header).map_err(|_| WorkFault::FirstLineDamaged)?;
    if content_number(rest.as_bytes()) != header.content {
        return Err(WorkFault::PartMissing);
    }
    let (book, _) = parse(rest).map_err(WorkFault::NoBook)?;
    let kept = header.kept.parse().map_err(|_| WorkFault::TimeDamaged)?;
    let known = header.known.as_ref().map(Known::to_fingerprint);
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

fn header_line(note: &RecoveryNote, text: &str) -> ron::Result<String> {
    let known = note.known.map(Known::new);
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
