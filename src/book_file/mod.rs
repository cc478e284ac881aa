//! Reads and writes book files: RON text of a numbered format, checked in full before it becomes a book.
//!
//! The types of [`crate::book`] know nothing of files. Reading goes text → types of the format → book and writing goes back the
//! same way, so that the document can change without the files of older programs becoming unreadable. The format lists each
//! field once; `layout` writes a value a line, so that one changed value is one changed line in a version control.
//!
//! What can't become a book is a [`LoadProblem`]; what a book may contain although it is wrong (a dangling id, an amount
//! below zero) is a finding of the book, so that it can be opened and put right.

mod built_in;
mod changes;
mod checker;
mod earlier;
mod error;
mod export;
mod fingerprint;
mod format_v1;
mod layout;
mod load;
mod parse;
mod place;
mod put;
mod recovery;
mod save;
mod scan;
mod work_note;
mod write;

pub use built_in::{built_in, built_in_book};
pub use changes::{ChangesFile, earlier_state};
pub use earlier::{EarlierCopy, book_of_earlier_copy, earlier_copies, earlier_folder};
pub use error::{
    FilePlace, Found, LoadError, LoadErrorLine, LoadProblem, MOST_LISTED, SaveError, Step,
    TextFault, Wanted,
};
pub use export::{
    LONGEST_LIST, ReadError, begins_as_book, read_bytes, replace_file, write_beside_others,
};
pub use fingerprint::{Fingerprint, OnDisk, look, look_closely};
pub use load::{Loaded, load};
pub use parse::parse;
pub use recovery::{LeftWork, RecoveryPlace, SetAside, left_work};
pub use save::{Saved, save, save_over};
pub use work_note::{RecoveryNote, WorkFault};
pub use write::{text_measure, write};

/// The format that this program writes, and the newest that it reads.
pub const FORMAT: u64 = 1;

/// Longest text that is read, in bytes. A book of ten thousand recipes like those of the samples has some 35 MB.
pub const LONGEST_TEXT: u64 = 64 * 1024 * 1024;
