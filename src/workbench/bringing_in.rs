//! What is brought in: read, reviewed and taken on threads of their own, because a list may have a hundred thousand rows and a
//! recipe is brought back to its standard by a search.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use super::action::Message;
use super::job::{BrokeDown, Job};
use super::list_in_hand::{
    ArrivalOrder, ArrivalReview, BringingIn, Counted, EffectReview, ListContent, ListInHand,
    ListTaking, RecipeOrder, RecipeReview, TableOrder, TableReview,
};
use super::open_book::Workbench;
use super::search::Look;
use crate::book::{Book, Ingredient};
use crate::book_file;
use crate::edit::{Edit, Focus, WholeBook, apply};
use crate::exchange::{
    DecimalSigns, MappedTo, MappingReason, Outcome, Review, ReviewLine, arrival_watched,
    cost_effects, edits_of, guess_mapping, propose_mappings, read_json_ld, read_recipe, read_table,
    review_price_list, utf8_text,
};
use crate::say::{Speaker, say};
use crate::swap::Watch;

impl Workbench {
    pub(super) fn read_list(&mut self, path: PathBuf) {
        let (of, voice) = (path.clone(), self.voice);
        let work = move |_: &Watch| {
            let bytes = book_file::read_bytes(&of).map_err(|error| voice.read_error(&error))?;
            Ok(content_of(voice, &of, bytes))
        };
        self.jobs.bringing_in.reading = Some(Job::start(path, &self.jobs.wake, work));
        self.poll_list(self.disk.patience);
    }

    pub(super) fn poll_list(&mut self, patience: Duration) {
        let ended = Job::take_ended(&mut self.jobs.bringing_in.reading, patience);
        let Some((path, content)) = ended else {
            return;
        };
        match content {
            Ok(Ok(content)) => {
                self.jobs.bringing_in.list = Some(ListInHand { path, content });
            }
            Ok(Err(error)) => self.told.message = Some(Message::Failed(error)),
            Err(BrokeDown) => {
                let path = path.display().to_string();
                let text = say!(self.voice, "list-broke-down", path: path);
                self.told.message = Some(Message::Failed(text));
            }
        }
    }

    pub(super) fn put_list_away(&mut self) {
        self.jobs.bringing_in = BringingIn::default();
    }

    /// The list that is being brought in.
    pub fn list_in_hand(&self) -> Option<&ListInHand> {
        self.jobs.bringing_in.list.as_ref()
    }

    /// The file that is being read, while that takes longer than usual.
    pub fn list_being_read(&self) -> Option<&Path> {
        self.jobs
            .bringing_in
            .reading
            .as_ref()
            .map(|job| &*job.about)
    }

    /// Whether lines of a list are being taken into the book.
    pub fn is_taking_list(&self) -> bool {
        self.jobs.bringing_in.taking.is_some()
    }

    /// What a table would do to the book.
    pub fn table_review(&mut self, order: &TableOrder) -> Look<Result<TableReview, String>> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let tables = &mut self.jobs.bringing_in.tables;
        let voice = self.voice;
        let find =
            move |book: &Arc<Book>, order: &TableOrder, _: &Watch| find_table(voice, book, order);
        tables.look(book, stamp, order, &self.jobs.wake, find).0
    }

    /// What taking lines of a list does to the cost of the drinks.
    pub fn effect_review(&mut self, taking: &ListTaking) -> Look<EffectReview> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (effects, voice) = (&mut self.jobs.bringing_in.effects, self.voice);
        let find = move |book: &Arc<Book>, taking: &ListTaking, _: &Watch| {
            let Ok(reviewed) = taking.reviewed.as_ref() else {
                return Ok(Vec::new());
            };
            if !Arc::ptr_eq(&reviewed.of, book) {
                return Err(voice.word("list-book-changed").to_owned());
            }
            let speaker = voice.about(book);
            let taken = edit_of(speaker, &reviewed.review, &taking.taken)?;
            let Some((edit, _)) = taken else {
                return Ok(Vec::new());
            };
            let after = apply(book, &edit).map_err(|error| speaker.edit_error(&error))?;
            Ok(cost_effects(book, &after))
        };
        let (look, begun) = effects.look(book, stamp, taking, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// A recipe of another shop as this shop would make it.
    pub fn arrival_review(&mut self, order: &ArrivalOrder) -> Look<ArrivalReview> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (arrivals, voice) = (&mut self.jobs.bringing_in.arrivals, self.voice);
        let (look, begun) = arrivals.look(
            book,
            stamp,
            order,
            &self.jobs.wake,
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
            let (read, speaker) = (&order.recipe, voice.about(book));
            let name = speaker.read_recipe_name(read);
            let arrival = read.arrive(book, &name, &order.chosen, &|new| speaker.new_measure(new));
            arrival.map_err(|error| speaker.edit_error(&error))
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let recipes = &mut self.jobs.bringing_in.recipes;
        recipes.look(book, stamp, order, &self.jobs.wake, find).0
    }

    pub(super) fn take_recipe(&mut self, edit: Edit) {
        let name = match &edit {
            Edit::PutBook {
                reason: WholeBook::Recipe(name),
                ..
            } => name.clone(),
            _ => String::new(),
        };
        let words = say!(self.voice, "recipe-taken", recipe: name);
        self.bring_in(edit, words);
    }

    pub(super) fn take_list(&mut self, taking: ListTaking) {
        let Ok(reviewed) = taking.reviewed.as_ref() else {
            return;
        };
        let book = self.book().clone();
        if !Arc::ptr_eq(&reviewed.of, &book) {
            self.told.message = Some(Message::Failed(self.changed_meanwhile()));
            return;
        }
        let (of, voice) = (book.clone(), self.voice);
        let work = move |_: &Watch| match taking.reviewed.as_ref() {
            Ok(reviewed) => edit_of(voice.about(&of), &reviewed.review, &taking.taken),
            Err(error) => Err(error.clone()),
        };
        self.jobs.bringing_in.taking = Some(Job::start(book, &self.jobs.wake, work));
        self.poll_taking(self.disk.patience);
    }

    pub(super) fn poll_taking(&mut self, patience: Duration) {
        let ended = Job::take_ended(&mut self.jobs.bringing_in.taking, patience);
        let Some((of, edit)) = ended else { return };
        let failed = match edit {
            // An edit of the whole book would take back what was done since.
            Ok(Ok(Some(_))) if !Arc::ptr_eq(&of, self.book()) => self.changed_meanwhile(),
            Ok(Ok(Some((edit, counted)))) => {
                let words = say!(
                    self.voice,
                    "list-taken",
                    count: counted.new + counted.changed,
                    new: counted.new,
                    changed: counted.changed,
                );
                self.bring_in(edit, words);
                return;
            }
            Ok(Ok(None)) => return,
            Ok(Err(error)) => error,
            Err(BrokeDown) => self.voice.word("list-not-added").to_owned(),
        };
        self.told.message = Some(Message::Failed(failed));
    }

    /// Takes what was reviewed into the book, as a step of its own that the message takes back.
    pub(super) fn bring_in(&mut self, edit: Edit, words: String) {
        let before = self.book().clone();
        self.edit(vec![edit], Focus::Book);
        if Arc::ptr_eq(&before, self.book()) {
            return;
        }
        self.document.history.close_step();
        self.put_list_away();
        self.told.message = Some(Message::Taken(words));
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
    let table = read_table(&order.bytes, order.delimiter, order.heading_line)
        .map_err(|error| voice.about(book).table_error(&error))?;
    let mut mapping = guess_mapping(&table.headings);
    if let Some(columns) = &order.columns {
        mapping.columns.clone_from(columns);
    }
    let signs = DecimalSigns::of(&table, &mapping, order.sign);
    let mut choices = (*order.choices).clone();
    if choices.date.is_empty() {
        choices.date = super::today();
    }
    let review = review_price_list(book, &table, &mapping, &signs, &choices);
    let sure = |(at, line): (usize, &ReviewLine)| line.is_sure().then_some(at);
    let is_unsure = |line: &&ReviewLine| line.is_change() && !line.is_sure();
    let sells =
        |item: &Arc<Ingredient>| Some(item.supplier.clone()).filter(|name| !name.is_empty());
    Ok(TableReview {
        counts: review.counts(),
        sure: review.lines.iter().enumerate().filter_map(sure).collect(),
        unsure: review.lines.iter().filter(is_unsure).count(),
        suppliers: book.ingredients.iter().filter_map(sells).collect(),
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
    taken: &BTreeSet<usize>,
) -> Result<Option<(Edit, Counted)>, String> {
    let is_taken = |at: usize| taken.contains(&at);
    let edit = edits_of(speaker.book, review, is_taken);
    let edit = edit.map_err(|error| speaker.edit_error(&error))?;
    let lines = || {
        review
            .lines
            .iter()
            .enumerate()
            .filter(|(at, _)| is_taken(*at))
    };
    let is_new = |line: &ReviewLine| matches!(line.outcome, Outcome::New(_));
    let counted = Counted {
        new: lines().filter(|(_, line)| is_new(line)).count(),
        changed: lines()
            .filter(|(_, line)| line.is_change() && !is_new(line))
            .count(),
    };
    Ok(edit.map(|edit| (edit, counted)))
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
