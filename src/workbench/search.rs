//! Searches that may take longer than a frame: each runs on a thread of its own, is watched, and is stopped once nobody waits.
//!
//! A search that ends at once looks as if it had been made in place. One that takes longer leaves the window alive; what was
//! found before stands there meanwhile.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use super::derived::BookStamp;
use crate::book::Book;
use crate::swap::Watch;

/// How long a frame waits for a search: half of one at sixty a second.
const PATIENCE: Duration = Duration::from_millis(8);

/// Wakes the screen when an answer has come.
pub(super) type Wake = Arc<dyn Fn() + Send + Sync>;

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
    latest: Option<(BookStamp, K, Arc<V>)>,
    running: Option<Running<K, V>>,
    stopped: Option<(BookStamp, K)>,
}

struct Running<K, V> {
    stamp: BookStamp,
    key: K,
    watch: Arc<Watch>,
    answer: Receiver<V>,
}

impl<K, V> Drop for Running<K, V> {
    fn drop(&mut self) {
        self.watch.stop();
    }
}

impl<K, V> Default for Search<K, V> {
    fn default() -> Self {
        Self {
            latest: None,
            running: None,
            stopped: None,
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
        let is_asked = |of: BookStamp, asked: &K| of == stamp && asked == key;
        if let Some((of, asked, found)) = &self.latest
            && is_asked(*of, asked)
        {
            self.running = None;
            return (look(Some(found), LookState::Done), false);
        }
        if let Some((of, asked)) = &self.stopped
            && is_asked(*of, asked)
        {
            return (self.before(LookState::Stopped), false);
        }
        let goes_on = self
            .running
            .as_ref()
            .is_some_and(|running| is_asked(running.stamp, &running.key));
        if !goes_on {
            self.running = begin(book.clone(), stamp, key.clone(), wake.clone(), find);
        }
        let waited = if goes_on { Duration::ZERO } else { PATIENCE };
        let Some(running) = &self.running else {
            return (self.before(LookState::Stopped), !goes_on);
        };
        match running.answer.recv_timeout(waited) {
            Ok(found) => {
                let found = Arc::new(found);
                self.latest = Some((stamp, key.clone(), found.clone()));
                self.running = None;
                self.stopped = None;
                (look(Some(&found), LookState::Done), !goes_on)
            }
            Err(RecvTimeoutError::Timeout) => {
                let state = LookState::Running {
                    boxes: running.watch.boxes(),
                    parts: running.watch.parts(),
                };
                (self.before(state), !goes_on)
            }
            Err(RecvTimeoutError::Disconnected) => {
                self.running = None;
                self.stopped = Some((stamp, key.clone()));
                (self.before(LookState::Stopped), !goes_on)
            }
        }
    }

    /// Stops what is under way; it is not begun again until something else is asked.
    pub(super) fn stop(&mut self) {
        if let Some(running) = self.running.take() {
            self.stopped = Some((running.stamp, running.key.clone()));
        }
    }

    /// Begins again what was stopped.
    pub(super) fn go_on(&mut self) {
        self.stopped = None;
    }

    pub(super) fn is_running(&self) -> bool {
        self.running.is_some()
    }

    fn before(&self, state: LookState) -> Look<V> {
        look(self.latest.as_ref().map(|(_, _, found)| found), state)
    }
}

fn look<V>(found: Option<&Arc<V>>, state: LookState) -> Look<V> {
    Look {
        found: found.cloned(),
        state,
    }
}

/// `None` when the system gives no thread.
fn begin<K: Clone + Send + 'static, V: Send + 'static>(
    book: Arc<Book>,
    stamp: BookStamp,
    key: K,
    wake: Wake,
    find: impl FnOnce(&Arc<Book>, &K, &Watch) -> V + Send + 'static,
) -> Option<Running<K, V>> {
    let watch = Arc::new(Watch::default());
    let (sender, answer) = channel();
    let (asked, watched) = (key.clone(), watch.clone());
    let work = move || {
        let found = find(&book, &asked, &watched);
        if !watched.is_stopped() && sender.send(found).is_ok() {
            wake();
        }
    };
    std::thread::Builder::new()
        .name("search".to_owned())
        .spawn(work)
        .ok()?;
    Some(Running {
        stamp,
        key,
        watch,
        answer,
    })
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
    fn another_question_stops_the_search_before_it() {
        let mut search = Asked::default();
        ask(&mut search, 5, endless);
        let watch = search.running.as_ref().unwrap().watch.clone();
        wait(&mut search, 6, at_once);
        assert!(watch.is_stopped());
    }
}
