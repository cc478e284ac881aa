//! What is brought in: read, reviewed and taken on threads of their own, because a list may have a hundred thousand rows and a
//! recipe is brought back to its standard by a search.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use super::open_book::{Message, Workbench};
use super::search::{Look, Search};
use crate::book::{Book, IngredientId};
use crate::book_file;
use crate::edit::Edit;
use crate::exchange::{
    Arrival, DecimalSign, DecimalSigns, Delimiter, Field, ForeignRecipe, LineMapping, MappedTo,
    Mapping, MappingReason, ReadRecipe, RecipeQuestion, Review, TextTable, arrival_watched,
    edits_of, guess_mapping, propose_mappings, read_json_ld, read_recipe, read_table,
    review_price_list, utf8_text,
};
use crate::say::{Speaker, say};
use crate::swap::Watch;

/// A file that is being brought in.
#[derive(Clone, Debug, PartialEq)]
pub struct ListInHand {
    /// Where it is.
    pub path: PathBuf,
    /// What stands in it.
    pub content: ListContent,
}

/// What a file that is brought in holds, by the ending of its name.
#[derive(Clone, Debug, PartialEq)]
pub enum ListContent {
    /// A table: the bytes, for the delimiter is still to be chosen.
    Table(Arc<Vec<u8>>),
    /// A schema.org recipe, or why it is none.
    Recipe(Result<Arc<ReadRecipe>, String>),
    /// A recipe of another shop, or why it is none.
    OtherShop(Result<Arc<ForeignRecipe>, String>),
}

/// How a table is to be read: what a person has chosen, the rest is told from the table.
#[derive(Clone, Debug)]
pub struct TableOrder {
    /// The bytes of the file.
    pub bytes: Arc<Vec<u8>>,
    /// The sign between cells.
    pub delimiter: Option<Delimiter>,
    /// What each column means.
    pub columns: Option<Vec<Option<Field>>>,
    /// The decimal sign.
    pub sign: Option<DecimalSign>,
}

impl PartialEq for TableOrder {
    fn eq(&self, other: &Self) -> bool {
        // It is asked for in every frame: the bytes are the same when they are the same in memory.
        Arc::ptr_eq(&self.bytes, &other.bytes)
            && self.delimiter == other.delimiter
            && self.columns == other.columns
            && self.sign == other.sign
    }
}

/// A table as it was read, and what it would do to the book.
#[derive(Clone, Debug, PartialEq)]
pub struct TableReview {
    /// The table.
    pub table: TextTable,
    /// What its columns mean.
    pub mapping: Mapping,
    /// Its decimal signs.
    pub signs: DecimalSigns,
    /// Line by line.
    pub review: Review,
    /// How many lines are new, changed, the same, skipped.
    pub counts: [usize; 4],
    /// The book that it is about.
    of: Arc<Book>,
}

impl TableReview {
    /// The book that it is about.
    pub fn book(&self) -> &Book {
        &self.of
    }
}

/// A recipe of another shop, with what a person has chosen to stand for some of its ingredients.
#[derive(Clone, Debug)]
pub struct ArrivalOrder {
    /// The recipe.
    pub foreign: Arc<ForeignRecipe>,
    /// What stands for a foreign ingredient.
    pub chosen: BTreeMap<IngredientId, MappedTo>,
}

impl PartialEq for ArrivalOrder {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.foreign, &other.foreign) && self.chosen == other.chosen
    }
}

/// A recipe of another shop as this shop would make it.
#[derive(Clone, Debug, PartialEq)]
pub struct ArrivalReview {
    /// What stands for each foreign ingredient.
    pub mappings: Vec<LineMapping>,
    /// The recipe and what accepting it does, or why it can't be taken over.
    pub arrival: Result<(Arrival, Edit), String>,
}

/// A schema.org recipe.
#[derive(Clone, Debug)]
pub struct RecipeOrder(pub Arc<ReadRecipe>);

impl PartialEq for RecipeOrder {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// What adding a schema.org recipe does, with what has to be looked at; or why it can't be added.
pub type RecipeReview = Result<(Edit, Vec<RecipeQuestion>), String>;

/// Lines of a list that are taken into the book: all that change something, but for those that are refused.
#[derive(Clone, Debug, PartialEq)]
pub struct ListTaking {
    /// The list.
    pub reviewed: Arc<Result<TableReview, String>>,
    /// Lines that are left out, by position.
    pub refused: BTreeSet<usize>,
}

/// An answer that comes from a thread.
struct Awaited<T>(Receiver<T>);

impl<T: Send + 'static> Awaited<T> {
    fn start(work: impl FnOnce() -> T + Send + 'static, wake: Arc<dyn Fn() + Send + Sync>) -> Self {
        let (sender, answer) = channel();
        std::thread::spawn(move || {
            // Nobody waits for what was given up.
            if sender.send(work()).is_ok() {
                wake();
            }
        });
        Self(answer)
    }

    /// The answer, `None` while there is none; `Err` when the thread broke down.
    fn poll(&self, patience: Duration) -> Option<Result<T, ()>> {
        match self.0.recv_timeout(patience) {
            Ok(answer) => Some(Ok(answer)),
            Err(RecvTimeoutError::Timeout) => None,
            Err(RecvTimeoutError::Disconnected) => Some(Err(())),
        }
    }
}

/// A file that is being read, with what it says or why it can't be read.
type Reading = (PathBuf, Awaited<Result<ListContent, String>>);

/// What is being taken over into a book, with the edit that does it.
type Taking = (Arc<Book>, Awaited<Result<Option<Edit>, String>>);

/// What is being brought in.
#[derive(Default)]
pub(super) struct BringingIn {
    list: Option<ListInHand>,
    reading: Option<Reading>,
    tables: Search<TableOrder, Result<TableReview, String>>,
    arrivals: Search<ArrivalOrder, ArrivalReview>,
    recipes: Search<RecipeOrder, RecipeReview>,
    taking: Option<Taking>,
}

impl BringingIn {
    pub(super) fn is_searching(&self) -> bool {
        self.tables.is_running() || self.arrivals.is_running() || self.recipes.is_running()
    }
}

impl Workbench {
    pub(super) fn read_list(&mut self, path: PathBuf) {
        let (of, voice) = (path.clone(), self.voice);
        let work = move || {
            let bytes = book_file::read_bytes(&of).map_err(|error| voice.read_error(&error))?;
            Ok(content_of(voice, &of, bytes))
        };
        let awaited = Awaited::start(work, self.wake.clone());
        self.bringing_in.reading = Some((path, awaited));
        self.poll_list(self.file.patience);
    }

    pub(super) fn poll_list(&mut self, patience: Duration) {
        let Some((_, awaited)) = &self.bringing_in.reading else {
            return;
        };
        let Some(content) = awaited.poll(patience) else {
            return;
        };
        let Some((path, _)) = self.bringing_in.reading.take() else {
            return;
        };
        match content {
            Ok(Ok(content)) => {
                self.bringing_in.list = Some(ListInHand { path, content });
            }
            Ok(Err(error)) => self.message = Some(Message::Failed(error)),
            Err(()) => {
                let path = path.display().to_string();
                let text = say!(self.voice, "list-broke-down", path: path);
                self.message = Some(Message::Failed(text));
            }
        }
    }

    pub(super) fn put_list_away(&mut self) {
        self.bringing_in = BringingIn::default();
    }

    /// The list that is being brought in.
    pub fn list_in_hand(&self) -> Option<&ListInHand> {
        self.bringing_in.list.as_ref()
    }

    /// The file that is being read, while that takes longer than usual.
    pub fn list_being_read(&self) -> Option<&Path> {
        let (path, _) = self.bringing_in.reading.as_ref()?;
        Some(path)
    }

    /// Whether lines of a list are being taken into the book.
    pub fn is_taking_list(&self) -> bool {
        self.bringing_in.taking.is_some()
    }

    /// What a table would do to the book.
    pub fn table_review(&mut self, order: &TableOrder) -> Look<Result<TableReview, String>> {
        let (book, stamp) = (self.history.book(), self.stamp());
        let tables = &mut self.bringing_in.tables;
        let voice = self.voice;
        let find =
            move |book: &Arc<Book>, order: &TableOrder, _: &Watch| find_table(voice, book, order);
        tables.look(book, stamp, order, &self.wake, find).0
    }

    /// A recipe of another shop as this shop would make it.
    pub fn arrival_review(&mut self, order: &ArrivalOrder) -> Look<ArrivalReview> {
        let (book, stamp) = (self.history.book(), self.stamp());
        let (arrivals, voice) = (&mut self.bringing_in.arrivals, self.voice);
        let (look, begun) = arrivals.look(
            book,
            stamp,
            order,
            &self.wake,
            move |book: &Arc<Book>, order: &ArrivalOrder, watch: &Watch| {
                find_arrival(voice, book, order, watch)
            },
        );
        self.count_engine_calls(begun);
        look
    }

    /// What adding a schema.org recipe does.
    pub fn recipe_review(&mut self, order: &RecipeOrder) -> Look<RecipeReview> {
        let voice = self.voice;
        let find = move |book: &Arc<Book>, order: &RecipeOrder, _: &Watch| {
            let (read, speaker) = (&order.0, voice.about(book));
            let edit = read.edit(book, &speaker.read_recipe_name(read));
            edit.map_err(|error| speaker.edit_error(&error))
        };
        let (book, stamp) = (self.history.book(), self.stamp());
        let recipes = &mut self.bringing_in.recipes;
        recipes.look(book, stamp, order, &self.wake, find).0
    }

    pub(super) fn take_list(&mut self, taking: ListTaking) {
        let Ok(reviewed) = taking.reviewed.as_ref() else {
            return;
        };
        let book = self.book().clone();
        if !Arc::ptr_eq(&reviewed.of, &book) {
            self.message = Some(Message::Failed(self.changed_meanwhile()));
            return;
        }
        let (of, voice) = (book.clone(), self.voice);
        let work = move || match taking.reviewed.as_ref() {
            Ok(reviewed) => edit_of(voice.about(&of), &reviewed.review, &taking.refused),
            Err(error) => Err(error.clone()),
        };
        let awaited = Awaited::start(work, self.wake.clone());
        self.bringing_in.taking = Some((book, awaited));
        self.poll_taking(self.file.patience);
    }

    pub(super) fn poll_taking(&mut self, patience: Duration) {
        let Some((_, awaited)) = &self.bringing_in.taking else {
            return;
        };
        let Some(edit) = awaited.poll(patience) else {
            return;
        };
        let Some((of, _)) = self.bringing_in.taking.take() else {
            return;
        };
        let failed = match edit {
            // An edit of the whole book would take back what was done since.
            Ok(Ok(Some(_))) if !Arc::ptr_eq(&of, self.book()) => self.changed_meanwhile(),
            Ok(Ok(Some(edit))) => {
                self.edit(vec![edit], "book".to_owned());
                self.history.close_step();
                self.put_list_away();
                return;
            }
            Ok(Ok(None)) => return,
            Ok(Err(error)) => error,
            Err(()) => self.voice.word("list-not-added").to_owned(),
        };
        self.message = Some(Message::Failed(failed));
    }

    /// What is said when the book is another one than that which a list was compared with.
    fn changed_meanwhile(&self) -> String {
        self.voice.word("list-book-changed").to_owned()
    }
}

fn content_of(speaker: Speaker<'_>, path: &Path, bytes: Vec<u8>) -> ListContent {
    let ending = path.extension().and_then(|ending| ending.to_str());
    match ending.map(str::to_lowercase).as_deref() {
        Some("json" | "jsonld") => {
            let text = utf8_text(&bytes).map_err(|error| speaker.not_utf8(error));
            let read = text
                .and_then(|text| read_json_ld(text).map_err(|error| speaker.json_ld_error(error)));
            ListContent::Recipe(read.map(Arc::new))
        }
        Some("ron") => {
            let text = utf8_text(&bytes).map_err(|error| speaker.not_utf8(error));
            let parsed = text.and_then(|text| {
                book_file::parse(text).map_err(|problems| speaker.load_problems(&problems))
            });
            let read = parsed.and_then(|(book, _)| {
                read_recipe(book).map_err(|error| speaker.recipe_exchange_error(&error))
            });
            ListContent::OtherShop(read.map(Arc::new))
        }
        _ => ListContent::Table(Arc::new(bytes)),
    }
}

fn find_table(
    voice: Speaker<'_>,
    book: &Arc<Book>,
    order: &TableOrder,
) -> Result<TableReview, String> {
    let table = read_table(&order.bytes, order.delimiter)
        .map_err(|error| voice.about(book).table_error(&error))?;
    let mut mapping = guess_mapping(&table.headings);
    if let Some(columns) = &order.columns {
        mapping.columns.clone_from(columns);
    }
    let signs = DecimalSigns::of(&table, &mapping, order.sign);
    let review = review_price_list(book, &table, &mapping, &signs, &super::today());
    Ok(TableReview {
        counts: review.counts(),
        table,
        mapping,
        signs,
        review,
        of: book.clone(),
    })
}

fn edit_of(
    speaker: Speaker<'_>,
    review: &Review,
    refused: &BTreeSet<usize>,
) -> Result<Option<Edit>, String> {
    let taken = |at: usize| review.lines[at].is_change() && !refused.contains(&at);
    edits_of(speaker.book, review, taken).map_err(|error| speaker.edit_error(&error))
}

fn find_arrival(
    voice: Speaker<'_>,
    book: &Arc<Book>,
    order: &ArrivalOrder,
    watch: &Watch,
) -> ArrivalReview {
    let speaker = voice.about(book);
    let mut mappings = propose_mappings(book, &order.foreign);
    for mapping in &mut mappings {
        let Some(to) = order.chosen.get(&mapping.foreign.ingredient) else {
            continue;
        };
        let is_there = match to {
            MappedTo::Ours(id) => book.ingredient(id).is_some(),
            MappedTo::Added => true,
        };
        if is_there {
            mapping.to = to.clone();
            mapping.why = MappingReason::Chosen;
        }
    }
    let arrival = arrival_watched(book, &order.foreign, &mappings, watch)
        .map_err(|error| speaker.recipe_exchange_error(&error))
        .and_then(|arrival| {
            let note = speaker.arrival_note(&arrival);
            let edit = arrival
                .edit(book, note)
                .map_err(|error| speaker.edit_error(&error))?;
            Ok((arrival, edit))
        });
    ArrivalReview { mappings, arrival }
}
