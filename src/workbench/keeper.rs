//! The thread that keeps unsaved work.
//!
//! A change is appended to what is kept within a fraction of a second. A whole book is written beside it, on a thread of its own,
//! once there have been changes for a while, and again when they have become longer than a book: then the work stands alone,
//! whatever becomes of the file.

use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, channel};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread::JoinHandle;
use std::time::{Duration, Instant};

use jiff::Timestamp;

use super::job::{Job, UNTIL_ITS_END, Wake};
use crate::book::Book;
use crate::book_file::{ChangesFile, RecoveryNote, RecoveryPlace, SaveError};
use crate::say::Speaker;
use crate::swap::Watch;

/// How long after the first change a whole book is written.
const WHOLE_AFTER: Duration = Duration::from_secs(2);

/// Changes may always grow so long before a whole book takes their place, bytes.
const SHORT: u64 = 4 * 1024 * 1024;

/// Whether unsaved work is kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum RecoveryState {
    /// Nobody has said where.
    #[default]
    Off,
    /// There is none to keep.
    Empty,
    /// It will be kept in a moment.
    Waiting,
    /// It is on the disk.
    Kept(Timestamp),
    /// It can't be kept.
    Failing(String),
}

/// What the thread that keeps the work is told.
pub(super) enum Order {
    Keep(Box<Work>),
    /// The same, and when it is on the disk the place that it came from is cleared.
    TakeOver(Box<Work>, RecoveryPlace),
    Clear,
}

/// Work that is not in any file.
pub(super) struct Work {
    pub(super) book: Arc<Book>,
    /// What the file holds that the note names; `None` when there is none.
    pub(super) in_file: Option<Arc<Book>>,
    pub(super) note: RecoveryNote,
    /// Says why it can't be kept.
    pub(super) voice: Speaker<'static>,
}

/// The thread that keeps the work. It ends with the value, after the last order.
pub(super) struct Keeper {
    orders: Option<Sender<Order>>,
    thread: Option<JoinHandle<()>>,
    state: Arc<Mutex<RecoveryState>>,
}

impl Keeper {
    pub(super) fn start(place: RecoveryPlace, pause: Duration) -> Self {
        let (orders, received) = channel();
        let state = Arc::new(Mutex::new(RecoveryState::Empty));
        let keeping = Keeping {
            place: Arc::new(place),
            told: state.clone(),
            pause,
            taken_over: Vec::new(),
            waiting: None,
            kept: None,
            written: None,
            whole: None,
        };
        let thread = std::thread::spawn(move || keeping.run(&received));
        Self {
            orders: Some(orders),
            thread: Some(thread),
            state,
        }
    }

    pub(super) fn order(&self, order: Order) {
        if let Some(orders) = &self.orders {
            // The thread ends only when this is dropped.
            let _ = orders.send(order);
        }
    }

    pub(super) fn state(&self) -> RecoveryState {
        self.state
            .lock()
            .unwrap_or_else(PoisonError::into_inner)
            .clone()
    }
}

impl Drop for Keeper {
    fn drop(&mut self) {
        self.orders = None;
        if let Some(thread) = self.thread.take() {
            // A panic there has cost the recovery file and nothing else.
            let _ = thread.join();
        }
    }
}

/// What is on the disk.
struct Kept {
    changes: ChangesFile,
    /// The state that the changes begin on, and the one that they lead to.
    begins: Arc<Book>,
    book: Arc<Book>,
    note: RecoveryNote,
    since: Instant,
    /// Length of what stands alone without the file, bytes; `None` while nothing does.
    alone: Option<u64>,
    /// A whole book is wanted without delay.
    is_alone_at_once: bool,
    /// A write has failed half-way: what comes behind it could not be read.
    is_broken: bool,
}

struct Keeping {
    place: Arc<RecoveryPlace>,
    told: Arc<Mutex<RecoveryState>>,
    pause: Duration,
    taken_over: Vec<RecoveryPlace>,
    waiting: Option<(Box<Work>, Instant)>,
    kept: Option<Kept>,
    written: Option<Instant>,
    /// A whole book that is being written, and how long it became.
    whole: Option<Job<Arc<Book>, Result<u64, SaveError>>>,
}

/// How often it is looked whether a whole book has been written.
const LOOK: Duration = Duration::from_millis(20);

impl Keeping {
    fn run(mut self, orders: &Receiver<Order>) {
        loop {
            let order = match self.next_wake() {
                None => orders.recv().map_err(|_| RecvTimeoutError::Disconnected),
                Some(wait) => orders.recv_timeout(wait),
            };
            match order {
                Ok(Order::Keep(work)) => self.wait_with(work),
                Ok(Order::TakeOver(work, from)) => {
                    self.taken_over.push(from);
                    self.wait_with(work);
                }
                Ok(Order::Clear) => self.clear(),
                Err(RecvTimeoutError::Timeout) => {}
                Err(RecvTimeoutError::Disconnected) => {
                    self.keep_waiting();
                    self.finish_whole(UNTIL_ITS_END);
                    return;
                }
            }
            let is_due = |(_, due): &(Box<Work>, Instant)| *due <= Instant::now();
            if self.waiting.as_ref().is_some_and(is_due) {
                self.keep_waiting();
            }
            self.finish_whole(Duration::ZERO);
            self.begin_whole();
        }
    }

    /// How long there is nothing to do unless an order comes; `None` for ever.
    fn next_wake(&self) -> Option<Duration> {
        let now = Instant::now();
        let due = self.waiting.as_ref().map(|(_, due)| *due);
        let whole = match (&self.whole, &self.kept) {
            (Some(_), _) => Some(now + LOOK),
            (None, Some(kept)) if kept.alone.is_none() => Some(kept.since + WHOLE_AFTER),
            _ => None,
        };
        let next = due.into_iter().chain(whole).min()?;
        Some(next.saturating_duration_since(now))
    }

    fn say(&self, now: RecoveryState) {
        *self.told.lock().unwrap_or_else(PoisonError::into_inner) = now;
    }

    /// Later changes do not put off what is due.
    fn wait_with(&mut self, work: Box<Work>) {
        let now = Instant::now();
        let earliest = self.written.map_or(now, |written| written + self.pause);
        let due = self
            .waiting
            .take()
            .map_or(earliest.max(now), |(_, due)| due);
        self.waiting = Some((work, due));
        self.say(RecoveryState::Waiting);
    }

    fn clear(&mut self) {
        self.waiting = None;
        // What is still being written must not come behind.
        self.finish_whole(UNTIL_ITS_END);
        self.kept = None;
        let cleared = self.place.clear();
        self.say(cleared.map_or_else(
            |error| RecoveryState::Failing(error.to_string()),
            |()| RecoveryState::Empty,
        ));
    }

    fn keep_waiting(&mut self) {
        let Some((work, _)) = self.waiting.take() else {
            return;
        };
        let kept = Timestamp::now();
        let voice = work.voice;
        let outcome = self.keep(*work, kept);
        self.written = Some(Instant::now());
        if let Err(error) = outcome {
            self.say(RecoveryState::Failing(voice.save_error(&error)));
            return;
        }
        for other in self.taken_over.drain(..) {
            // What stays is offered once more: a nuisance, and no loss.
            let _ = other.clear();
        }
        self.say(RecoveryState::Kept(kept));
    }

    fn keep(&mut self, work: Work, moment: Timestamp) -> Result<(), SaveError> {
        let note = RecoveryNote {
            kept: moment,
            ..work.note
        };
        let kept = self.kept.get_or_insert_with(|| {
            let begins = work.in_file.clone();
            Kept {
                changes: self.place.changes(begins.is_some().then_some(&note)),
                alone: begins.is_none().then_some(0),
                book: begins.clone().unwrap_or_default(),
                begins: begins.unwrap_or_default(),
                note: note.clone(),
                since: Instant::now(),
                is_alone_at_once: false,
                is_broken: false,
            }
        });
        if work.in_file.is_none() && kept.alone.is_none() {
            // The file is gone or is another one: a whole book is wanted at once.
            kept.is_alone_at_once = true;
        }
        let outcome = if kept.is_broken {
            kept.changes.begin_anew(&kept.begins, &work.book, &note)
        } else {
            kept.changes.append(&kept.book, &work.book, &note)
        };
        kept.is_broken = outcome.is_err();
        if outcome.is_ok() {
            kept.book = work.book;
            kept.note = note;
            // The first record holds all of a book that is in no file.
            if kept.alone == Some(0) {
                kept.alone = Some(kept.changes.bytes());
            }
        }
        outcome
    }

    /// Begins to write a whole book when it is time, beside the changes that go on.
    fn begin_whole(&mut self) {
        let Some(kept) = self.kept.as_ref().filter(|kept| !kept.is_broken) else {
            return;
        };
        let is_time = match kept.alone {
            None => kept.is_alone_at_once || kept.since.elapsed() >= WHOLE_AFTER,
            Some(alone) => kept.changes.bytes() > alone + SHORT.max(alone),
        };
        if self.whole.is_some() || !is_time {
            return;
        }
        let (place, book, note) = (self.place.clone(), kept.book.clone(), kept.note.clone());
        // The loop looks whether it has ended.
        let nobody: Wake = Arc::new(|| ());
        let work = move |_: &Watch| place.keep(&book, &note);
        self.whole = Some(Job::start(kept.book.clone(), &nobody, work));
    }

    /// Takes away the changes that a whole book holds, when it has been written.
    fn finish_whole(&mut self, patience: Duration) {
        let ended = Job::take_ended(&mut self.whole, patience);
        let (Some((book, done)), Some(kept)) = (ended, &mut self.kept) else {
            return;
        };
        kept.since = Instant::now();
        kept.is_alone_at_once = false;
        if let Ok(Ok(bytes)) = done {
            kept.begins = book;
            kept.alone = Some(bytes);
            // The changes before it do no harm: they lead on from there just as well.
            let outcome = kept
                .changes
                .begin_anew(&kept.begins, &kept.book, &kept.note);
            kept.is_broken = outcome.is_err();
        }
    }
}
