//! What is computed from the book: each question about a state of it is worked out once.

use std::any::{Any, TypeId};
use std::cell::{Cell, RefCell};
use std::collections::HashMap;
use std::hash::Hash;
use std::sync::Arc;

use crate::book::Book;

/// Which book a derived value belongs to. Stamps come from a counter that never goes back, so that undo gets a new one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BookStamp(pub u64);

/// A question about a book. What is not in the book, like the language of an answer in words, is part of the question.
pub trait BookQuestion: Clone + Eq + Hash + Send + 'static {
    /// The answer, cheap to clone: an `Arc`, or an option of one where the book may have nothing such.
    type Answer: Clone + Send + 'static;

    /// How many answers are kept of one state of the book; few where somebody types what is asked.
    const KEPT: usize = usize::MAX;

    /// Whether an answer holds for another state of the book, too. Mostly that can't be told: an ingredient may be in every
    /// recipe.
    const STAYS_FOR: Option<fn(&Self::Answer, &Book) -> bool> = None;

    /// Works the answer out. What it rests on is asked as well, so that it is not worked out twice.
    fn work_out(&self, answers: Answers<'_>) -> Self::Answer;
}

/// Most answers of a question with typed words in it: what is taken back is still there.
pub const KEPT_OF_TYPED: usize = 16;

/// One state of the book, and the answers to questions about it.
#[derive(Clone, Copy)]
pub struct Answers<'book> {
    book: &'book Arc<Book>,
    stamp: BookStamp,
    derived: &'book Derived,
}

impl<'book> Answers<'book> {
    /// The book.
    pub fn book(self) -> &'book Arc<Book> {
        self.book
    }

    /// The answer to a question, worked out when it is asked for the first time.
    pub fn to<Q: BookQuestion>(self, question: &Q) -> Q::Answer {
        if let Some(known) = self.derived.known(self, question) {
            return known;
        }
        // Nothing is borrowed meanwhile: the question may ask others.
        let answer = question.work_out(self);
        self.derived.keep(self, question.clone(), answer.clone());
        answer
    }
}

/// The answers to questions about one book. They are dropped as a whole when the book changes, but for those that may stay.
#[derive(Default)]
pub(super) struct Derived {
    kept: RefCell<Kept>,
    engine_calls: Cell<u64>,
}

/// The answers, a table for each type of question.
#[derive(Default)]
struct Kept {
    of: BookStamp,
    tables: HashMap<TypeId, Box<dyn Table>>,
}

/// The answers to one type of question.
trait Table: Any + Send {
    /// Whether some may hold for another state of the book.
    fn may_stay(&self) -> bool;
}

/// Answers, each with the state of the book that it was last found to hold for.
struct Known<Q: BookQuestion>(HashMap<Q, (BookStamp, Q::Answer)>);

impl<Q: BookQuestion> Table for Known<Q> {
    fn may_stay(&self) -> bool {
        Q::STAYS_FOR.is_some()
    }
}

impl Derived {
    /// The answers about a state of the book.
    pub(super) fn answers<'book>(
        &'book self,
        book: &'book Arc<Book>,
        stamp: BookStamp,
    ) -> Answers<'book> {
        Answers {
            book,
            stamp,
            derived: self,
        }
    }

    /// How often something was worked out since the start.
    pub(super) fn engine_calls(&self) -> u64 {
        self.engine_calls.get()
    }

    /// Something was worked out that is kept elsewhere.
    pub(super) fn count_call(&self) {
        self.engine_calls.set(self.engine_calls.get() + 1);
    }

    fn known<Q: BookQuestion>(&self, about: Answers<'_>, question: &Q) -> Option<Q::Answer> {
        let mut kept = self.kept.borrow_mut();
        kept.follow(about.stamp);
        let (holds_for, answer) = kept.table::<Q>()?.0.get_mut(question)?;
        if *holds_for != about.stamp {
            Q::STAYS_FOR.filter(|stays| stays(answer, about.book))?;
            *holds_for = about.stamp;
        }
        Some(answer.clone())
    }

    fn keep<Q: BookQuestion>(&self, about: Answers<'_>, question: Q, answer: Q::Answer) {
        self.count_call();
        if let Some(Known(known)) = self.kept.borrow_mut().table() {
            if known.len() >= Q::KEPT {
                known.clear();
            }
            known.insert(question, (about.stamp, answer));
        }
    }
}

impl Kept {
    /// Takes the state of the book that is asked about now.
    fn follow(&mut self, stamp: BookStamp) {
        if self.of != stamp {
            self.of = stamp;
            self.tables.retain(|_, table| table.may_stay());
        }
    }

    fn table<Q: BookQuestion>(&mut self) -> Option<&mut Known<Q>> {
        let table = self.tables.entry(TypeId::of::<Q>());
        let table: &mut dyn Any = table
            .or_insert_with(|| Box::new(Known::<Q>(HashMap::new())))
            .as_mut();
        table.downcast_mut()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Settings;

    /// The length of the shop's name and the book's note, asked for under a number.
    #[derive(Clone, PartialEq, Eq, Hash)]
    struct Lengths(u8);

    /// The length of the shop's name, which stays as long as the name is that of the book it was asked about.
    #[derive(Clone, PartialEq, Eq, Hash)]
    struct NameLength;

    impl BookQuestion for Lengths {
        type Answer = Arc<usize>;
        const KEPT: usize = 2;

        fn work_out(&self, answers: Answers<'_>) -> Arc<usize> {
            Arc::new(answers.to(&NameLength).1 + answers.book().settings.note.len())
        }
    }

    impl BookQuestion for NameLength {
        type Answer = (Arc<Book>, usize);
        const STAYS_FOR: Option<fn(&Self::Answer, &Book) -> bool> =
            Some(|(of, _), now| of.settings.shop == now.settings.shop);

        fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
            (answers.book().clone(), answers.book().settings.shop.len())
        }
    }

    fn book(shop: &str, note: &str) -> Arc<Book> {
        let settings = Settings {
            shop: shop.to_owned(),
            note: note.to_owned(),
            ..Settings::default()
        };
        Arc::new(Book {
            settings,
            ..Book::default()
        })
    }

    #[test]
    fn a_question_is_worked_out_once_with_what_it_rests_on() {
        let (derived, book) = (Derived::default(), book("Harrow", "note"));
        let answers = derived.answers(&book, BookStamp(1));
        assert_eq!(*answers.to(&Lengths(0)), 10);
        assert_eq!(derived.engine_calls(), 2);
        let again = answers.to(&Lengths(0));
        assert!(Arc::ptr_eq(&again, &answers.to(&Lengths(0))));
        assert_eq!(answers.to(&NameLength).1, 6);
        assert_eq!(derived.engine_calls(), 2);
    }

    #[test]
    fn another_state_of_the_book_drops_what_does_not_stay() {
        let derived = Derived::default();
        let [first, noted, renamed] = [("Harrow", ""), ("Harrow", "note"), ("Mere", "note")]
            .map(|(shop, note)| book(shop, note));
        let lengths = |book, stamp| *derived.answers(book, BookStamp(stamp)).to(&Lengths(0));
        assert_eq!((lengths(&first, 1), derived.engine_calls()), (6, 2));
        // The name is known.
        assert_eq!((lengths(&noted, 2), derived.engine_calls()), (10, 3));
        assert_eq!((lengths(&renamed, 3), derived.engine_calls()), (8, 5));
        // Undo brings the same book back under another stamp.
        assert_eq!((lengths(&first, 4), derived.engine_calls()), (6, 7));
    }

    #[test]
    fn no_more_answers_are_kept_than_the_question_says() {
        let (derived, book) = (Derived::default(), book("Harrow", ""));
        let answers = derived.answers(&book, BookStamp(1));
        let calls = |number| {
            let before = derived.engine_calls();
            answers.to(&Lengths(number));
            derived.engine_calls() - before
        };
        assert_eq!([0, 1, 1, 0].map(calls), [2, 1, 0, 0]);
        assert_eq!([2, 2, 0].map(calls), [1, 0, 1]);
    }
}
