//! Unsaved changes, appended to a file one after the other: what is kept costs as much as what was changed, not as the book.
//!
//! A record holds whole items, as they are after the change, and the ids of those that are gone. Replayed in order on the book
//! that they began on, or on any state between that and the last one, the records lead to the last one.

use std::collections::{BTreeMap, BTreeSet};
use std::fs::{self, File, OpenOptions};
use std::io::{self, ErrorKind, Write as _};
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize, de::DeserializeOwned};

use super::earlier::earlier_copies;
use super::error::SaveError;
use super::fingerprint::{Fingerprint, OnDisk, content_number, look_closely};
use super::load::{Loaded, load};
use super::parse::read_book;
use super::save::{readable_text, replace, save_error};
use super::work_note::{NoteInFile, RecoveryNote, WorkFault};
use crate::book::{Book, Item, Shelf};

const BEGINNING: &str = "// Unsaved changes of Evensip: ";
const RECORD: &str = "// Change: ";

/// Where the changes begin: a file, as it was then; `None` is an empty book.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Opening {
    base: Option<NoteInFile>,
}

/// What stands in front of the items of a record.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Head {
    note: NoteInFile,
    /// Whether the settings of the record count.
    settings: bool,
    /// Ids that are gone: ingredients, measures, vessels, recipes.
    gone: [Vec<String>; 4],
    /// The ids of a shelf in order, where putting and taking away does not give it.
    order: [Option<Vec<String>>; 4],
    /// The same of the tastings; absent in what was written before there were any.
    #[serde(default)]
    tastings: (Vec<String>, Option<Vec<String>>),
    /// Length of the items, bytes.
    bytes: usize,
    /// The number of the items: a record that lost its end is damaged.
    content: u64,
}

/// The file that changes are appended to.
#[derive(Debug)]
pub struct ChangesFile {
    path: PathBuf,
    file: Option<File>,
    base: Option<NoteInFile>,
    bytes: u64,
}

impl ChangesFile {
    /// Changes that begin on a file, as the note says what it was; or on an empty book.
    pub(super) fn new(path: PathBuf, base: Option<&RecoveryNote>) -> Self {
        Self {
            path,
            file: None,
            base: base.map(NoteInFile::new),
            bytes: 0,
        }
    }

    /// How long the file is, bytes.
    pub fn bytes(&self) -> u64 {
        self.bytes
    }

    /// Appends what leads from one state to another. It is on the disk when this returns.
    pub fn append(
        &mut self,
        before: &Book,
        after: &Book,
        note: &RecoveryNote,
    ) -> Result<(), SaveError> {
        let record = record(&self.path, before, after, note)?;
        self.put(&record)
            .map_err(|source| save_error(&self.path, source))
    }

    /// Replaces all records by one, which begins on a later state that is kept elsewhere.
    pub fn begin_anew(
        &mut self,
        before: &Book,
        after: &Book,
        note: &RecoveryNote,
    ) -> Result<(), SaveError> {
        self.file = None;
        self.append(before, after, note)
    }

    fn put(&mut self, record: &str) -> io::Result<()> {
        if let Some(file) = &mut self.file {
            file.write_all(record.as_bytes())?;
            file.sync_data()?;
            self.bytes += record.len() as u64;
            return Ok(());
        }
        let opening = Opening {
            base: self.base.clone(),
        };
        let text = format!("{BEGINNING}{}\n{record}", line(&opening)?);
        replace(&self.path, text.as_bytes())?;
        self.bytes = text.len() as u64;
        self.file = Some(OpenOptions::new().append(true).open(&self.path)?);
        Ok(())
    }
}

fn line(value: &impl Serialize) -> io::Result<String> {
    ron::to_string(value).map_err(io::Error::other)
}

/// A record as it stands in the file.
fn record(
    path: &Path,
    before: &Book,
    after: &Book,
    note: &RecoveryNote,
) -> Result<String, SaveError> {
    let mut items = Book::default();
    let settings = before.settings != after.settings;
    if settings {
        items.settings = after.settings.clone();
    }
    let put = [
        difference(
            &before.ingredients,
            &after.ingredients,
            &mut items.ingredients,
        ),
        difference(&before.measures, &after.measures, &mut items.measures),
        difference(&before.vessels, &after.vessels, &mut items.vessels),
        difference(&before.recipes, &after.recipes, &mut items.recipes),
    ];
    let tastings = difference(&before.tastings, &after.tastings, &mut items.tastings);
    let mut head = Head {
        note: NoteInFile::new(note),
        settings,
        gone: Default::default(),
        order: Default::default(),
        tastings,
        bytes: 0,
        content: 0,
    };
    for (at, (gone, order)) in put.into_iter().enumerate() {
        head.gone[at] = gone;
        head.order[at] = order;
    }
    let text = readable_text(path, &items)?;
    head.bytes = text.len();
    head.content = content_number(text.as_bytes());
    let head = line(&head).map_err(|source| save_error(path, source))?;
    Ok(format!("{RECORD}{head}\n{text}"))
}

/// What is gone from a shelf, and its order where that has to be said; what is new or another is put onto `items`.
fn difference<T: Item>(
    before: &Shelf<T>,
    after: &Shelf<T>,
    items: &mut Shelf<T>,
) -> (Vec<String>, Option<Vec<String>>)
where
    T::Id: AsRef<str>,
{
    for item in after.unlike(before) {
        if before.get(item.id()).is_none_or(|known| known != item) {
            items.put(item.as_ref().clone());
        }
    }
    let text = |id: &T::Id| id.as_ref().to_owned();
    let gone = before
        .unlike(after)
        .map(|item| item.id())
        .filter(|id| !after.contains(id));
    let gone: Vec<String> = gone.map(text).collect();
    let stays = before.iter().map(|item| item.id());
    let stays = stays.filter(|id| after.contains(id));
    let comes = items.iter().map(|item| item.id());
    let comes = comes.filter(|id| !before.contains(id));
    let is_in_order = stays.chain(comes).eq(after.iter().map(|item| item.id()));
    let order = (!is_in_order).then(|| after.iter().map(|item| text(item.id())).collect());
    (gone, order)
}

/// What a file of changes holds, as far as it is whole.
pub(super) struct ReadChanges {
    base: Option<NoteInFile>,
    records: Vec<(Head, Book)>,
    /// Something whole stands behind a record that is not: more is lost than the end of a write that was cut short.
    pub(super) is_damaged: bool,
}

/// Reads a file of changes; `None` when there is none.
pub(super) fn read_changes(path: &Path) -> Result<Option<ReadChanges>, WorkFault> {
    let text = match fs::read(path) {
        Ok(bytes) => String::from_utf8_lossy(&bytes).into_owned(),
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(WorkFault::System(error)),
    };
    let (first, mut rest) = text.split_once('\n').ok_or(WorkFault::FirstLineDamaged)?;
    let opening: Opening = after_mark(first, BEGINNING).ok_or(WorkFault::FirstLineDamaged)?;
    let mut read = ReadChanges {
        base: opening.base,
        records: Vec::new(),
        is_damaged: false,
    };
    while !rest.is_empty() {
        let Some((record, behind)) = next_record(rest) else {
            read.is_damaged = rest.contains(&format!("\n{RECORD}"));
            break;
        };
        read.records.push(record);
        rest = behind;
    }
    Ok(Some(read))
}

fn after_mark<T: DeserializeOwned>(line: &str, mark: &str) -> Option<T> {
    ron::from_str(line.strip_prefix(mark)?).ok()
}

fn next_record(text: &str) -> Option<((Head, Book), &str)> {
    let (first, rest) = text.split_once('\n')?;
    let head: Head = after_mark(first, RECORD)?;
    let items = rest.get(..head.bytes)?;
    if content_number(items.as_bytes()) != head.content {
        return None;
    }
    let book = read_book(items).ok()?;
    let behind = &rest[head.bytes..];
    Some(((head, book), behind))
}

impl ReadChanges {
    /// The note of the last record.
    pub(super) fn note(&self) -> Option<RecoveryNote> {
        self.records.last()?.0.note.to_note()
    }

    /// The book that the changes began on, as far as it can still be read: the file if it is what it was, else its earlier copy
    /// that is, else the file as it is now.
    pub(super) fn base(&self) -> Book {
        let Some(note) = self.base.as_ref().and_then(NoteInFile::to_note) else {
            return Book::default();
        };
        let Some(home) = note.home else {
            return Book::default();
        };
        let now = load(&home).ok();
        let is_same = |loaded: &Loaded| {
            note.known
                .is_none_or(|known| loaded.fingerprint.has_content_of(&known))
        };
        let found = match now {
            Some(loaded) if is_same(&loaded) => Some(loaded),
            now => {
                let earlier = note.known.and_then(|known| earlier_state(&home, &known));
                earlier.or(now)
            }
        };
        found.map_or_else(Book::default, |loaded| loaded.book)
    }

    /// Replays the changes.
    pub(super) fn replay(self, mut book: Book) -> Book {
        for (head, items) in self.records {
            if head.settings {
                book.settings = items.settings;
            }
            let of = |at: usize| (head.gone[at].as_slice(), head.order[at].as_deref());
            book.ingredients = replayed(&book.ingredients, &items.ingredients, of(0));
            book.measures = replayed(&book.measures, &items.measures, of(1));
            book.vessels = replayed(&book.vessels, &items.vessels, of(2));
            book.recipes = replayed(&book.recipes, &items.recipes, of(3));
            let (gone, order) = (head.tastings.0.as_slice(), head.tastings.1.as_deref());
            book.tastings = replayed(&book.tastings, &items.tastings, (gone, order));
        }
        book
    }
}

fn replayed<T: Item>(
    shelf: &Shelf<T>,
    items: &Shelf<T>,
    (gone, order): (&[String], Option<&[String]>),
) -> Shelf<T>
where
    T::Id: AsRef<str>,
{
    if items.is_empty() && gone.is_empty() && order.is_none() {
        return shelf.clone();
    }
    let gone: BTreeSet<&str> = gone.iter().map(String::as_str).collect();
    let stays = shelf
        .iter()
        .map(|item| items.get(item.id()).unwrap_or(item));
    let comes = items.iter().filter(|item| !shelf.contains(item.id()));
    let mut all: Vec<_> = stays
        .filter(|item| !gone.contains(item.id().as_ref()))
        .chain(comes)
        .cloned()
        .collect();
    if let Some(order) = order {
        let place_of: BTreeMap<&str, usize> = order
            .iter()
            .enumerate()
            .map(|(place, id)| (id.as_str(), place))
            .collect();
        all.sort_by_key(|item| {
            place_of
                .get(item.id().as_ref())
                .copied()
                .unwrap_or(usize::MAX)
        });
    }
    // Ids are those of two shelves, each once.
    Shelf::from_shared(all).unwrap_or_default()
}

/// The earlier copy of a book with this content.
pub fn earlier_state(path: &Path, known: &Fingerprint) -> Option<Loaded> {
    let copies = earlier_copies(path).ok()?;
    let of_length = copies.iter().filter(|copy| copy.bytes == known.length);
    let found = of_length
        .into_iter()
        .find(|copy| matches!(look_closely(&copy.path, known), Ok(OnDisk::Same)))?;
    load(&found.path).ok()
}
