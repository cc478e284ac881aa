//! Work on a thread of its own, and its answer.
//!
//! What ends at once looks as if it had been done in place. What takes longer leaves the window alive.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

use crate::swap::Watch;

/// Wakes the screen when an answer has come.
pub(super) type Wake = Arc<dyn Fn() + Send + Sync>;

/// Long enough for whatever is under way.
pub(super) const UNTIL_ITS_END: Duration = Duration::MAX;

/// The thread broke down, or the system gave none.
pub(super) struct BrokeDown;

/// Work under way, with what it is about. Dropped it is asked to stop, and nobody waits for its answer.
pub(super) struct Job<W, T> {
    pub(super) about: W,
    answer: Receiver<T>,
    watch: Watched,
}

/// Asks the work to stop when nobody waits for it any more.
struct Watched(Arc<Watch>);

impl Drop for Watched {
    fn drop(&mut self) {
        self.0.stop();
    }
}

impl<W, T: Send + 'static> Job<W, T> {
    /// Begins to work, and wakes the screen at the end.
    pub(super) fn start(
        about: W,
        wake: &Wake,
        work: impl FnOnce(&Watch) -> T + Send + 'static,
    ) -> Self {
        Self::start_for_news(about, wake, |_| true, work)
    }

    /// Begins to work, and wakes the screen for an answer that is news to it.
    pub(super) fn start_for_news(
        about: W,
        wake: &Wake,
        is_news: impl FnOnce(&T) -> bool + Send + 'static,
        work: impl FnOnce(&Watch) -> T + Send + 'static,
    ) -> Self {
        let (sender, answer) = channel();
        let (watch, wake) = (Arc::new(Watch::default()), wake.clone());
        let watched = watch.clone();
        let thread = move || {
            let found = work(&watched);
            let is_news = is_news(&found);
            if sender.send(found).is_ok() && is_news {
                wake();
            }
        };
        // Without a thread nobody sends an answer: the job has broken down.
        let _ = std::thread::Builder::new().spawn(thread);
        Self {
            about,
            answer,
            watch: Watched(watch),
        }
    }

    /// How far it is.
    pub(super) fn watch(&self) -> &Watch {
        &self.watch.0
    }

    /// The answer, given once; `None` while there is none after so long a wait.
    pub(super) fn poll(&self, patience: Duration) -> Option<Result<T, BrokeDown>> {
        match self.answer.recv_timeout(patience) {
            Ok(answer) => Some(Ok(answer)),
            Err(RecvTimeoutError::Timeout) => None,
            Err(RecvTimeoutError::Disconnected) => Some(Err(BrokeDown)),
        }
    }

    /// Takes a job out of its place when it has ended.
    pub(super) fn take_ended(
        place: &mut Option<Self>,
        patience: Duration,
    ) -> Option<(W, Result<T, BrokeDown>)> {
        let answer = place.as_ref()?.poll(patience)?;
        place.take().map(|job| (job.about, answer))
    }
}

#[cfg(test)]
mod tests {
    use std::sync::atomic::{AtomicU32, Ordering};

    use super::*;

    /// A place for a job that ends when it is told to, and how often it has waked the screen.
    fn running(is_news: bool) -> (Option<Job<&'static str, u8>>, Arc<AtomicU32>) {
        let waked = Arc::new(AtomicU32::new(0));
        let counted = waked.clone();
        let wake: Wake = Arc::new(move || {
            counted.fetch_add(1, Ordering::SeqCst);
        });
        let work = |watch: &Watch| {
            while !watch.is_stopped() {
                std::thread::sleep(Duration::from_millis(1));
            }
            7
        };
        let job = Job::start_for_news("what for", &wake, move |_| is_news, work);
        (Some(job), waked)
    }

    #[test]
    fn a_job_stays_in_its_place_until_it_has_ended_and_answers_once() {
        let (mut place, _) = running(true);
        assert!(Job::take_ended(&mut place, Duration::ZERO).is_none());
        place.as_ref().unwrap().watch().stop();
        let (about, answer) = Job::take_ended(&mut place, UNTIL_ITS_END).unwrap();
        assert_eq!((about, answer.ok()), ("what for", Some(7)));
        assert!(place.is_none());
        assert!(Job::take_ended(&mut place, Duration::ZERO).is_none());
    }

    #[test]
    fn a_job_that_nobody_waits_for_is_asked_to_stop() {
        let (place, waked) = running(true);
        let watch = place.as_ref().unwrap().watch.0.clone();
        drop(place);
        assert!(watch.is_stopped());
        assert_eq!(waked.load(Ordering::SeqCst), 0);
    }

    #[test]
    fn a_job_that_breaks_down_is_told_from_one_that_takes_long() {
        let wake: Wake = Arc::new(|| ());
        let broken = Job::<(), u8>::start((), &wake, |_| panic!("as it happens"));
        assert!(matches!(broken.poll(UNTIL_ITS_END), Some(Err(BrokeDown))));
    }

    #[test]
    fn what_is_no_news_leaves_the_screen_asleep() {
        for (is_news, calls) in [(true, 1), (false, 0)] {
            let (mut place, waked) = running(is_news);
            place.as_ref().unwrap().watch().stop();
            assert!(Job::take_ended(&mut place, UNTIL_ITS_END).is_some());
            // The screen is waked behind the answer.
            std::thread::sleep(Duration::from_millis(20));
            assert_eq!(waked.load(Ordering::SeqCst), calls);
        }
    }
}
