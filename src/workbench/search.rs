//! Searches that may take longer than a frame: each runs on a thread of its own, is watched, and is stopped once nobody waits.
//!
//! A search that ends at once looks as if it had been made in place. One that takes longer leaves the window alive; what was
//! found before stands there meanwhile.

use std::sync::Arc;
use std::time::Duration;

use super::derived::BookStamp;
use super::job::{BrokeDown, Job, Wake};
use crate::book::Book;
use crate::swap::Watch;

/// How long a frame waits for a search: half of one at sixty a second.
const PATIENCE: Duration = Duration::from_millis(8);

/// What there is to show of a search.
#[derive(Debug)]
pub struct Look<V> {
    /// What was found, for this question or, while that is looked for, for the one before.
    pub found: Option<Arc<V>>,
    /// How far it is.
    pub state: LookState,
}

impl<V> Clone for Look<V> {
    fn clone(&self) -> Self {
        Self {
            found: self.found.clone(),
            state: self.state,
        }
    }
}

impl<V> Default for Look<V> {
    fn default() -> Self {
        Self {
            found: None,
            state: LookState::Idle,
        }
    }
}

impl<V> Look<V> {
    /// A search that has ended.
    pub fn done(found: V) -> Self {
        Self {
            found: Some(Arc::new(found)),
            state: LookState::Done,
        }
    }

    /// What was found for the very question.
    pub fn current(&self) -> Option<&V> {
        self.found
            .as_deref()
            .filter(|_| self.state == LookState::Done)
    }
}

/// How far a search is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LookState {
    /// Nothing was asked.
    Idle,
    /// It has ended.
    Done,
    /// It is under way.
    Running {
        /// Combinations or boxes looked at.
        boxes: u64,
        /// Parts done of all parts, where there are several.
        parts: Option<(u32, u32)>,
    },
    /// The person has stopped it.
    Stopped,
}

/// The latest search of a kind.
pub(super) struct Search<K, V> {
    latest: Option<((BookStamp, K), Arc<V>)>,
    stage: Stage<K, V>,
}

/// What goes on beside what was found last.
enum Stage<K, V> {
    /// Nothing.
    Idle,
    /// A search for a question about a state of the book.
    Running(Job<(BookStamp, K), V>),
    /// One was stopped, and is not begun again until something else is asked.
    Stopped((BookStamp, K)),
}

impl<K, V> Default for Search<K, V> {
    fn default() -> Self {
        Self {
            latest: None,
            stage: Stage::Idle,
        }
    }
}

impl<K, V> Search<K, V>
where
    K: Clone + PartialEq + Send + 'static,
    V: Send + 'static,
{
    /// What is known of a question about a book; begins to look for it when that is not under way. `true` when it was begun.
    pub(super) fn look(
        &mut self,
        book: &Arc<Book>,
        stamp: BookStamp,
        key: &K,
        wake: &Wake,
        find: impl FnOnce(&Arc<Book>, &K, &Watch) -> V + Send + 'static,
    ) -> (Look<V>, bool) {
        let is_asked = |(of, asked): &(BookStamp, K)| *of == stamp && asked == key;
        if let Some((of, found)) = &self.latest
            && is_asked(of)
        {
            let look = look(Some(found), LookState::Done);
            if self.is_running() {
                self.stage = Stage::Idle;
            }
            return (look, false);
        }
        let (job, is_begun) = match std::mem::replace(&mut self.stage, Stage::Idle) {
            Stage::Stopped(of) if is_asked(&of) => {
                self.stage = Stage::Stopped(of);
                return (self.before(LookState::Stopped), false);
            }
            Stage::Running(job) if is_asked(&job.about) => (job, false),
            _ => {
                let (book, asked) = (book.clone(), key.clone());
                let work = move |watch: &Watch| find(&book, &asked, watch);
                (Job::start((stamp, key.clone()), wake, work), true)
            }
        };
        let patience = if is_begun { PATIENCE } else { Duration::ZERO };
        let look = match job.poll(patience) {
            Some(Ok(found)) => {
                let found = Arc::new(found);
                self.latest = Some((job.about, found.clone()));
                look(Some(&found), LookState::Done)
            }
            Some(Err(BrokeDown)) => {
                self.stage = Stage::Stopped(job.about);
                self.before(LookState::Stopped)
            }
            None => {
                let state = LookState::Running {
                    boxes: job.watch().boxes(),
                    parts: job.watch().parts(),
                };
                self.stage = Stage::Running(job);
                self.before(state)
            }
        };
        (look, is_begun)
    }

    /// Stops what is under way; it is not begun again until something else is asked.
    pub(super) fn stop(&mut self) {
        self.stage = match std::mem::replace(&mut self.stage, Stage::Idle) {
            Stage::Running(job) => Stage::Stopped(job.about),
            other => other,
        };
    }

    /// Begins again what was stopped.
    pub(super) fn go_on(&mut self) {
        if matches!(self.stage, Stage::Stopped(_)) {
            self.stage = Stage::Idle;
        }
    }

    pub(super) fn is_running(&self) -> bool {
        matches!(self.stage, Stage::Running(_))
    }

    fn before(&self, state: LookState) -> Look<V> {
        look(self.latest.as_ref().map(|(_, found)| found), state)
    }
}

fn look<V>(found: Option<&Arc<V>>, state: LookState) -> Look<V> {
    Look {
        found: found.cloned(),
        state,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    type Asked = Search<u64, u64>;

    fn ask(search: &mut Asked, key: u64, find: fn(&Arc<Book>, &u64, &Watch) -> u64) -> Look<u64> {
        let wake: Wake = Arc::new(|| ());
        let book = Arc::new(Book::default());
        search.look(&book, BookStamp(1), &key, &wake, find).0
    }

    #[expect(
        clippy::trivially_copy_pass_by_ref,
        reason = "keys are passed so, whatever they are"
    )]
    fn at_once(_: &Arc<Book>, key: &u64, _: &Watch) -> u64 {
        key * 2
    }

    /// Ends only when it is told to.
    #[expect(
        clippy::trivially_copy_pass_by_ref,
        reason = "keys are passed so, whatever they are"
    )]
    fn endless(_: &Arc<Book>, _: &u64, watch: &Watch) -> u64 {
        while !watch.is_stopped() {
            std::thread::sleep(Duration::from_millis(1));
        }
        0
    }

    fn wait(search: &mut Asked, key: u64, find: fn(&Arc<Book>, &u64, &Watch) -> u64) -> Look<u64> {
        for _ in 0..1000 {
            let look = ask(search, key, find);
            if look.state == LookState::Done {
                return look;
            }
            std::thread::sleep(Duration::from_millis(1));
        }
        ask(search, key, find)
    }

    #[test]
    fn what_was_found_is_not_looked_for_again() {
        let mut search = Asked::default();
        assert_eq!(wait(&mut search, 4, at_once).current(), Some(&8));
        // The answer that is known stands, even where another search would never end.
        assert_eq!(ask(&mut search, 4, endless).current(), Some(&8));
    }

    #[test]
    fn while_a_search_runs_the_answer_before_stands_there_and_is_not_taken_for_this_one() {
        let mut search = Asked::default();
        wait(&mut search, 4, at_once);
        let look = ask(&mut search, 5, endless);
        assert!(matches!(look.state, LookState::Running { .. }));
        assert_eq!((look.found.as_deref(), look.current()), (Some(&8), None));
    }

    #[test]
    fn a_search_that_was_stopped_stays_so_until_it_is_wanted_again() {
        let mut search = Asked::default();
        ask(&mut search, 5, endless);
        search.stop();
        assert_eq!(ask(&mut search, 5, at_once).state, LookState::Stopped);
        search.go_on();
        assert_eq!(wait(&mut search, 5, at_once).current(), Some(&10));
    }

    #[test]
    fn whoever_asks_something_else_meanwhile_wants_what_was_stopped_again() {
        let mut search = Asked::default();
        ask(&mut search, 5, endless);
        search.stop();
        wait(&mut search, 6, at_once);
        assert_eq!(wait(&mut search, 5, at_once).current(), Some(&10));
    }

    #[test]
    fn a_search_that_breaks_down_is_not_begun_in_every_frame() {
        let mut search = Asked::default();
        ask(&mut search, 5, |_, _, _| panic!("as it happens"));
        for _ in 0..1000 {
            if ask(&mut search, 5, endless).state == LookState::Stopped {
                return;
            }
            std::thread::sleep(Duration::from_millis(1));
        }
        panic!("it still runs");
    }

    #[test]
    fn another_question_stops_the_search_before_it() {
        let mut search = Asked::default();
        let (told, stopped) = std::sync::mpsc::channel();
        let wake: Wake = Arc::new(|| ());
        let tells_when_stopped = move |book: &Arc<Book>, key: &u64, watch: &Watch| {
            let found = endless(book, key, watch);
            // The test may have failed by then.
            let _ = told.send(());
            found
        };
        let (book, stamp) = (Arc::new(Book::default()), BookStamp(1));
        search.look(&book, stamp, &5, &wake, tells_when_stopped);
        wait(&mut search, 6, at_once);
        assert!(stopped.recv_timeout(Duration::from_secs(10)).is_ok());
    }
}
