//! Why a book can't be opened or saved, as facts.

use std::io;
use std::path::{Path, PathBuf};

use crate::book::{IdError, IdKind};

/// One step on the way to a value in a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Step {
    /// Into a field.
    Field(&'static str),
    /// Into an item of a list.
    Item {
        /// Where it stands, from 0.
        index: usize,
        /// Its id as it stands in the file; empty when it has none.
        label: String,
    },
}

/// Where in a file something stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FilePlace {
    /// Line, from 1; not looked up when there are very many problems.
    pub line: Option<usize>,
    /// The way from the beginning of the book.
    pub steps: Vec<Step>,
}

/// Why a text is not a book of this format, as the reader of the text met it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TextFault {
    /// The text ends too early.
    Ended,
    /// A string that is never closed.
    OpenString,
    /// A comment that is never closed.
    OpenComment,
    /// Brackets in brackets in brackets.
    TooDeep,
    /// A field that nobody knows.
    UnknownField {
        /// The field.
        found: String,
        /// The fields that there are.
        known: Vec<&'static str>,
    },
    /// A word that is none of a choice.
    UnknownWord {
        /// The word.
        found: String,
        /// The words that there are.
        known: Vec<&'static str>,
    },
    /// A field that must be stated and is not.
    MissingField {
        /// The field.
        field: &'static str,
    },
    /// The same field twice.
    FieldTwice {
        /// The field.
        field: &'static str,
    },
    /// Another kind of value.
    WrongKind {
        /// What stands there.
        found: Found,
        /// What should.
        wanted: Wanted,
    },
}

/// What stands in a text in place of another kind of value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Found {
    /// The beginning of it.
    Text(String),
    /// So many values between brackets.
    Values(usize),
    /// A number that is negative or far too large where things are counted.
    NoWholeNumber,
    /// In the words of the library that reads the text.
    Reader(String),
}

/// What should stand in a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// A list.
    List,
    /// The end of a list.
    EndOfList,
    /// A group of values between brackets.
    Group,
    /// The end of a group.
    EndOfGroup,
    /// A colon behind the name of a field.
    Colon,
    /// A comma.
    Comma,
    /// A number.
    Number,
    /// A whole number.
    WholeNumber,
    /// A whole number that is not negative.
    Count,
    /// A text in quotes.
    Text,
    /// A word.
    Word,
    /// True or false.
    YesOrNo,
    /// Nothing more.
    EndOfBook,
    /// A figure with its evidence.
    Figure,
    /// In the words of the library that reads the text.
    Reader(String),
}

/// Why a text can't become a book.
#[derive(Clone, Debug, PartialEq)]
pub enum LoadProblem {
    /// Too much text.
    TooLong {
        /// Its length.
        bytes: u64,
    },
    /// No format number.
    NoFormat,
    /// A format number that is none.
    BadFormat {
        /// What stands there.
        found: String,
    },
    /// Written by a newer program.
    NewerFormat {
        /// The format of the book.
        found: u64,
    },
    /// The text is not a book.
    Text {
        /// What is wrong.
        fault: TextFault,
        /// Line, from 1.
        line: usize,
        /// Column in characters, from 1.
        column: usize,
    },
    /// Two items with one id.
    DuplicateId {
        /// What has it.
        kind: IdKind,
        /// The id.
        id: String,
        /// The first.
        first: FilePlace,
        /// The second.
        second: FilePlace,
    },
    /// An id that is none.
    BadId {
        /// What is wrong with it.
        error: IdError,
        /// Where.
        place: FilePlace,
    },
    /// More entries in a list than a recipe may have.
    TooMany {
        /// How many there are.
        count: usize,
        /// Where.
        place: FilePlace,
    },
    /// A price that states what its pack holds neither in grams nor in millilitres, or in both.
    PackContent {
        /// Where.
        place: FilePlace,
    },
    /// A number that is none, or larger than a computer can hold.
    NotFinite {
        /// The number.
        found: f64,
        /// Where.
        place: FilePlace,
    },
}

/// Why a file can't be opened.
#[derive(Debug)]
pub enum LoadError {
    /// There is none.
    Missing {
        /// The path.
        path: PathBuf,
    },
    /// A directory.
    Directory {
        /// The path.
        path: PathBuf,
    },
    /// A device, a pipe …
    NotAFile {
        /// The path.
        path: PathBuf,
    },
    /// May not be read.
    NoPermission {
        /// The path.
        path: PathBuf,
    },
    /// Reading failed.
    Read {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Not text.
    NotUtf8 {
        /// The path.
        path: PathBuf,
        /// The line with the first wrong byte, from 1.
        line: usize,
    },
    /// Text that is no book.
    Problems {
        /// The path.
        path: PathBuf,
        /// What is wrong with it.
        problems: Vec<LoadProblem>,
    },
}

/// How many problems of a file are listed before the rest is counted.
pub const MOST_LISTED: usize = 20;

/// A line of what is said of a file that can't be opened.
#[derive(Clone, Copy, Debug)]
pub enum LoadErrorLine<'error> {
    /// The file can't be read; the line says all.
    Whole(&'error LoadError),
    /// The only problem of its text; the line says all.
    Only(&'error LoadProblem, &'error Path),
    /// How many problems its text has.
    Count(usize),
    /// One of several.
    Problem(&'error LoadProblem),
    /// How many more there are than are listed.
    More(usize),
    /// The file, after its problems.
    File(&'error Path),
}

impl LoadError {
    /// What is said of it, line by line.
    pub fn lines(&self) -> Vec<LoadErrorLine<'_>> {
        let Self::Problems { path, problems } = self else {
            return vec![LoadErrorLine::Whole(self)];
        };
        if let [only] = problems.as_slice() {
            return vec![LoadErrorLine::Only(only, path)];
        }
        let mut lines = vec![LoadErrorLine::Count(problems.len())];
        lines.extend(
            problems
                .iter()
                .take(MOST_LISTED)
                .map(LoadErrorLine::Problem),
        );
        let more = problems.len().saturating_sub(MOST_LISTED);
        if more > 0 {
            lines.push(LoadErrorLine::More(more));
        }
        lines.push(LoadErrorLine::File(path));
        lines
    }
}

/// Why a book can't be saved. The file that was there before is untouched.
#[derive(Debug)]
pub enum SaveError {
    /// A directory.
    Directory {
        /// The path.
        path: PathBuf,
    },
    /// A device, a pipe …
    NotAFile {
        /// The path.
        path: PathBuf,
    },
    /// The folder of the file is missing.
    NoFolder {
        /// The path.
        path: PathBuf,
    },
    /// The file may not be written.
    NoPermission {
        /// The path.
        path: PathBuf,
    },
    /// Nothing may be written in the folder of the file.
    NoPermissionInFolder {
        /// The path.
        path: PathBuf,
    },
    /// Nothing can be written on the disk at all.
    ReadOnlyDisk {
        /// The path.
        path: PathBuf,
    },
    /// A number that could not be read back.
    NotFinite {
        /// The path.
        path: PathBuf,
        /// How many.
        count: usize,
    },
    /// A text that is longer than what is read.
    TooLong {
        /// The path.
        path: PathBuf,
        /// Its length.
        bytes: u64,
    },
    /// Another program has changed the file since it was read.
    ChangedOnDisk {
        /// The path.
        path: PathBuf,
    },
    /// No room is left.
    DiskFull {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Writing failed.
    Write {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
}
