//! Keeping unsaved work for the case of a crash, and bringing it back.

use std::path::Path;
use std::time::Duration;

use super::action::{Home, Message, Unfiled};
use super::disk_desk::UnsavedWork;
use super::document::Document;
use super::job::{BrokeDown, Job};
use super::keeper::{Keeper, Order, RecoveryState, Work};
use super::left_work::{FoundWork, LooksForWork, OfferedRecovery};
use super::moments::moment_words;
use super::open_book::Workbench;
use crate::book::Book;
use crate::book_file::{RecoveryNote, RecoveryPlace, left_work};
use crate::edit::WholeBook;
use crate::say::say;
use crate::swap::Watch;
use jiff::Timestamp;

/// While changes go on they are kept at most so often: what has been on the screen for a quarter of a second is on the disk.
const USUAL_PAUSE: Duration = Duration::from_millis(80);

impl Workbench {
    /// Keeps unsaved work in this folder from now on, and offers what other programs have left there.
    #[must_use]
    pub fn with_recovery(self, folder: &Path) -> Self {
        self.with_recovery_every(folder, USUAL_PAUSE)
    }

    /// The same with another pause between two writes.
    #[must_use]
    pub fn with_recovery_every(mut self, folder: &Path, pause: Duration) -> Self {
        let looks = LooksForWork {
            folder: folder.to_owned(),
            pause,
        };
        let folder = looks.folder.clone();
        let work = move |_: &Watch| {
            let (left, set_aside) = left_work(&folder);
            FoundWork {
                offered: left.into_iter().rev().map(OfferedRecovery::new).collect(),
                set_aside,
                // After the look: what lies in the folder by then is of others.
                place: RecoveryPlace::claim(&folder).map_err(|error| error.to_string()),
            }
        };
        self.disk.work = UnsavedWork::Looking(Job::start(looks, &self.jobs.wake, work));
        self.poll_left_work(self.disk.patience);
        self
    }

    /// Takes what was found in the folder of unsaved work. Nothing is kept before that, and everything from then on.
    pub(super) fn poll_left_work(&mut self, patience: Duration) {
        let UnsavedWork::Looking(job) = &self.disk.work else {
            return;
        };
        let Some(found) = job.poll(patience) else {
            return;
        };
        let LooksForWork { folder, pause } = job.about.clone();
        self.disk.work = UnsavedWork::NotKept;
        let place = match found {
            Ok(FoundWork {
                offered,
                set_aside,
                place,
            }) => {
                self.disk.offered = offered;
                if !set_aside.is_empty() {
                    let speaker = self.voice;
                    let sentences: Vec<String> =
                        set_aside.iter().map(|one| speaker.set_aside(one)).collect();
                    self.add_failure(&sentences.join("\n"));
                }
                place
            }
            Err(BrokeDown) => Err(self.voice.word("recovery-broke-down").to_owned()),
        };
        match place {
            Ok(place) => {
                self.disk.work = UnsavedWork::Kept {
                    keeper: Keeper::start(place, pause),
                    failure_is_said: false,
                };
            }
            Err(error) => {
                let (folder, error) = (folder.display().to_string(), error.clone());
                let text = say!(self.voice, "recovery-no-folder", folder: folder, error: error);
                self.add_failure(&text);
            }
        }
        self.keep_unsaved_work();
    }

    /// Says one more thing that has failed, behind what was said before.
    pub(super) fn add_failure(&mut self, sentence: &str) {
        let before = match self.told.message.take() {
            Some(Message::Failed(before)) => format!("{before}\n"),
            _ => String::new(),
        };
        self.told.message = Some(Message::Failed(format!("{before}{sentence}")));
    }

    /// Whether unsaved work is kept.
    pub fn recovery_state(&self) -> RecoveryState {
        let keeper = self.disk.keeper();
        keeper.map_or(RecoveryState::Off, Keeper::state)
    }

    /// Says once that unsaved work can't be kept, until it can.
    pub(super) fn poll_recovery(&mut self) {
        let UnsavedWork::Kept {
            keeper,
            failure_is_said,
        } = &mut self.disk.work
        else {
            return;
        };
        match keeper.state() {
            RecoveryState::Failing(reason) if !*failure_is_said => {
                *failure_is_said = true;
                let speaker = self.voice;
                self.add_failure(&say!(speaker, "recovery-failing", reason: reason));
            }
            RecoveryState::Kept(_) | RecoveryState::Empty => *failure_is_said = false,
            _ => {}
        }
    }

    /// The newest unsaved work that a program has left which did not end as it should. When it has been accepted or discarded
    /// the next one is offered.
    pub fn offered_recovery(&self) -> Option<&OfferedRecovery> {
        self.disk.offered.last()
    }

    /// The work as it is now, for the thread that keeps it.
    fn work(&self) -> Work {
        let file = &self.document.file;
        let note = RecoveryNote {
            home: file.path().cloned(),
            name: self.title(),
            known: file.known,
            kept: Timestamp::UNIX_EPOCH,
        };
        let is_in_file = note.home.is_some() && note.known.is_some() && !file.is_gone();
        Work {
            book: self.book().clone(),
            in_file: is_in_file.then(|| file.saved.clone()),
            note,
            voice: self.voice,
        }
    }

    /// Keeps the work when there is any; takes the file away when there is none.
    pub(super) fn keep_unsaved_work(&self) {
        if let Some(keeper) = self.disk.keeper() {
            keeper.order(if self.has_unsaved_changes() {
                Order::Keep(Box::new(self.work()))
            } else {
                Order::Clear
            });
        }
    }

    /// The work was saved or given up.
    pub(super) fn drop_unsaved_work(&self) {
        if let Some(keeper) = self.disk.keeper() {
            keeper.order(Order::Clear);
        }
    }

    pub(super) fn accept_recovery(&mut self) {
        if self.has_unsaved_changes() {
            let text = self.voice.word("recovery-unsaved-changes");
            self.told.message = Some(Message::Failed(text.to_owned()));
            return;
        }
        let Some(offered) = self.disk.offered.pop() else {
            return;
        };
        let OfferedRecovery {
            home,
            name,
            kept,
            stands_alone,
            file_changed,
            book,
            base,
            known,
            place,
            ..
        } = offered;
        let fingerprint = base.as_ref().map(|base| base.fingerprint);
        let has_comments = base.as_ref().is_some_and(|base| base.text_has_comments);
        let is_there = home.as_ref().is_some_and(|path| path.exists());
        let home = match home {
            Some(path) => Home::File(path),
            None => Home::Nowhere(Unfiled::Called(name)),
        };
        let book_in_file = base.map_or_else(Book::default, |base| base.book);
        self.replace(Document::new(book_in_file, home, has_comments));
        // With the old fingerprint a file that was changed since is noticed and merged; one that is gone is written anew.
        self.document.file.known = if file_changed {
            fingerprint
        } else {
            // A file that can't be read is not one to be saved over unseen either.
            known.filter(|_| !stands_alone || is_there)
        };
        let moment = moment_words(self.voice, kept);
        self.put_book(&book, WholeBook::RecoveredWork(moment));
        match self.disk.keeper() {
            Some(keeper) if self.has_unsaved_changes() => {
                keeper.order(Order::TakeOver(Box::new(self.work()), place));
            }
            // Without a keeper the work stays where it is until the book is saved and it is discarded.
            _ => {}
        }
    }

    pub(super) fn discard_recovery(&mut self) {
        if let Some(offered) = self.disk.offered.pop()
            && let Err(error) = offered.place.clear()
        {
            let (path, error) = (
                offered.place.file().display().to_string(),
                error.to_string(),
            );
            let text = say!(self.voice, "recovery-not-deleted", path: path, error: error);
            self.told.message = Some(Message::Failed(text));
        }
    }
}
