//! The file of the open book: what it held when it was last read or written, and what has become of it since.

use std::path::PathBuf;
use std::sync::Arc;

use super::action::Home;
use super::theirs::{DiskChange, Theirs};
use crate::book::Book;
use crate::book_file::Fingerprint;

/// The file of the open book, as far as this program knows. Another book has another one.
pub(super) struct KeptFile {
    pub(super) home: Home,
    /// The book as it was last read or written.
    pub(super) saved: Arc<Book>,
    /// The file as it was then.
    pub(super) known: Option<Fingerprint>,
    comments: TextComments,
    standing: Standing,
}

/// Comments in the text of the file: a save does not keep them.
enum TextComments {
    /// There are none.
    None,
    /// There are some, and nobody was asked about them yet.
    Unasked,
    /// The person knows that the next save drops them.
    GivenUp,
}

/// What has become of the file since it was read or written last.
enum Standing {
    /// Nothing, as far as is known.
    Steady,
    /// Another program has changed it or taken it away: it is asked what becomes of that.
    Changed(DiskChange),
    /// The person decides about a change later; only one more is asked about.
    Left(Option<Fingerprint>),
    /// It is gone, which the person knows.
    Gone,
}

impl KeptFile {
    /// A book that was just read, or begun.
    pub(super) fn new(home: Home, saved: Arc<Book>, text_has_comments: bool) -> Self {
        Self {
            home,
            saved,
            known: None,
            comments: TextComments::found(text_has_comments),
            standing: Standing::Steady,
        }
    }

    /// Where it is, if the book is in a file.
    pub(super) fn path(&self) -> Option<&PathBuf> {
        match &self.home {
            Home::File(path) => Some(path),
            Home::Nowhere(_) => None,
        }
    }

    /// It was written just now, or found to hold a book that the one on the screen is held against from now on.
    pub(super) fn hold(
        &mut self,
        book: Arc<Book>,
        known: Option<Fingerprint>,
        text_has_comments: bool,
    ) {
        self.saved = book;
        self.known = known;
        self.comments = TextComments::found(text_has_comments);
    }

    /// Whether the next save drops comments, and nobody has agreed to that yet.
    pub(super) fn save_drops_comments(&self) -> bool {
        matches!(self.comments, TextComments::Unasked)
    }

    /// The person has been told of the comments.
    pub(super) fn give_up_comments(&mut self) {
        self.comments = TextComments::GivenUp;
    }

    /// The change that is asked about.
    pub(super) fn change(&self) -> Option<&DiskChange> {
        match &self.standing {
            Standing::Changed(change) => Some(change),
            _ => None,
        }
    }

    /// It was there and is not there now: no file holds the book, whether or not it was changed.
    pub(super) fn is_gone(&self) -> bool {
        match &self.standing {
            Standing::Gone => true,
            Standing::Changed(change) => matches!(change.theirs, Theirs::Gone),
            Standing::Steady | Standing::Left(_) => false,
        }
    }

    /// What is no news when it is found in the file.
    pub(super) fn left(&self) -> Option<Fingerprint> {
        match &self.standing {
            Standing::Left(left) => *left,
            Standing::Gone => self.known,
            Standing::Steady | Standing::Changed(_) => None,
        }
    }

    /// Another program has changed it.
    pub(super) fn note_change(&mut self, change: DiskChange) {
        self.standing = Standing::Changed(change);
    }

    /// Something is done about the change. What is gone stays so until it is written.
    pub(super) fn take_change(&mut self) -> Option<DiskChange> {
        let after = if self.is_gone() {
            Standing::Gone
        } else {
            Standing::Steady
        };
        self.change()?;
        match std::mem::replace(&mut self.standing, after) {
            Standing::Changed(change) => Some(change),
            _ => None,
        }
    }

    /// The person decides about the change later.
    pub(super) fn leave_change(&mut self) {
        if let Some(change) = self.take_change()
            && !self.is_gone()
        {
            self.standing = Standing::Left(change.fingerprint.or(self.known));
        }
    }

    /// The file is what it was when it was read or written last; `true` when it had been gone.
    pub(super) fn note_back(&mut self) -> bool {
        let was_gone = self.is_gone();
        let is_answered = self.change().is_none_or(|change| !change.at_save);
        let is_left = matches!(self.standing, Standing::Left(_));
        if is_answered && !is_left {
            self.standing = Standing::Steady;
        }
        was_gone
    }

    /// It was saved. A change that stopped another save still waits for its answer.
    pub(super) fn note_saved(&mut self, path: PathBuf, book: Arc<Book>, known: Fingerprint) {
        self.home = Home::File(path);
        self.hold(book, Some(known), false);
        let is_asked = self.change().is_some_and(|change| change.at_save);
        if !is_asked || self.is_gone() {
            self.standing = Standing::Steady;
        }
    }
}

impl TextComments {
    fn found(are_there: bool) -> Self {
        if are_there { Self::Unasked } else { Self::None }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(text_has_comments: bool) -> KeptFile {
        let home = Home::File("book.ron".into());
        KeptFile::new(home, Arc::default(), text_has_comments)
    }

    fn change(theirs: Theirs, at_save: bool) -> DiskChange {
        DiskChange {
            path: "book.ron".into(),
            theirs,
            at_save,
            fingerprint: None,
            text_has_comments: false,
        }
    }

    fn half_written() -> Theirs {
        let reason = "it ends in the middle".to_owned();
        Theirs::Unreadable { reason }
    }

    #[test]
    fn what_is_gone_stays_so_whatever_is_answered_until_it_is_back() {
        let is_carried_out = |file: &mut KeptFile| assert!(file.take_change().is_some());
        for answer in [is_carried_out, KeptFile::leave_change] {
            let mut file = file(false);
            file.note_change(change(Theirs::Gone, false));
            assert!(file.is_gone());
            answer(&mut file);
            assert!(file.is_gone() && file.change().is_none());
            assert!(file.note_back() && !file.is_gone());
            assert!(!file.note_back(), "told once");
        }
    }

    #[test]
    fn only_a_change_that_stopped_a_save_is_asked_about_when_the_file_is_what_it_was() {
        for at_save in [false, true] {
            let mut file = file(false);
            file.note_change(change(half_written(), at_save));
            assert!(!file.note_back());
            assert_eq!(file.change().is_some(), at_save);
            file.leave_change();
            assert!(file.change().is_none() && !file.is_gone());
        }
    }

    #[test]
    fn comments_are_asked_about_once_for_each_text_that_has_them() {
        let mut file = file(true);
        assert!(file.save_drops_comments());
        file.give_up_comments();
        assert!(!file.save_drops_comments());
        file.hold(Arc::default(), None, true);
        assert!(file.save_drops_comments());
        file.hold(Arc::default(), None, false);
        assert!(!file.save_drops_comments());
    }
}
