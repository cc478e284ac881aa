//! Why a book can't be opened or saved: facts, and one sentence for each.

use std::fmt;
use std::io;
use std::path::PathBuf;

use super::{FORMAT, LONGEST_TEXT};
use crate::book::{IdError, MOST_LINES, nearest};
use crate::quantity::excerpt;

const MEGABYTE: u64 = 1024 * 1024;

/// How many problems are listed before the rest is counted.
const LISTED: usize = 20;

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

/// The word for one item of a list.
fn item_word(list: &str) -> &str {
    match list {
        "entries" => "line",
        "flavours" => "flavour",
        "high_potency" => "sweetener",
        "serviceware" => "serviceware",
        other => other.strip_suffix('s').unwrap_or(other),
    }
}

impl fmt::Display for FilePlace {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut parts: Vec<String> = Vec::new();
        for step in &self.steps {
            match step {
                Step::Field(name) => parts.push((*name).to_owned()),
                Step::Item { index, label } => {
                    let list = parts.pop().unwrap_or_default();
                    let word = item_word(&list);
                    parts.push(if label.is_empty() {
                        format!("{word} {}", index + 1)
                    } else {
                        format!("{word} `{}`", shortened(label))
                    });
                }
            }
        }
        if let Some(line) = self.line {
            write!(formatter, "line {line}")?;
            if !parts.is_empty() {
                write!(formatter, ", ")?;
            }
        }
        write!(formatter, "{}", parts.join(", "))
    }
}

/// Longest excerpt of a file in a message, in characters.
const EXCERPT: usize = 40;

fn shortened(text: &str) -> String {
    excerpt(text, EXCERPT)
}

/// Why a text is not a book of this format, as the reader of the text met it.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TextFault {
    /// The text ends too early.
    #[error(
        "the text ends in the middle of the book; expected closing brackets, so a part of the file is missing"
    )]
    Ended,
    /// A string that is never closed.
    #[error("a text in quotes is never closed; expected `\"` at its end")]
    OpenString,
    /// A comment that is never closed.
    #[error("a comment is never closed; expected `*/` at its end")]
    OpenComment,
    /// Brackets in brackets in brackets.
    #[error("brackets are nested too deeply; expected a book, which needs fewer than twenty")]
    TooDeep,
    /// A field that nobody knows.
    #[error("there is no field `{}`{}; expected {}", shortened(.found), did_you_mean(.found, .expected), one_of(.expected))]
    UnknownField {
        /// The field.
        found: String,
        /// The fields that there are.
        expected: Vec<&'static str>,
    },
    /// A word that is none of a choice.
    #[error(
        "`{}` is none of the words that can stand here{}; expected {}", shortened(.found), did_you_mean(.found, .expected), one_of(.expected)
    )]
    UnknownWord {
        /// The word.
        found: String,
        /// The words that there are.
        expected: Vec<&'static str>,
    },
    /// A field that must be stated and is not.
    #[error(
        "the field `{field}` is missing before this place; expected it, because no value can be assumed for it"
    )]
    MissingField {
        /// The field.
        field: &'static str,
    },
    /// The same field twice.
    #[error(
        "the field `{field}` stands here a second time; expected it once, so delete one of the two"
    )]
    FieldTwice {
        /// The field.
        field: &'static str,
    },
    /// Another kind of value.
    #[error("found {found}; expected {expected}")]
    WrongKind {
        /// What stands there.
        found: String,
        /// What should.
        expected: String,
    },
}

fn one_of(words: &[&'static str]) -> String {
    match words {
        [] => "nothing".to_owned(),
        [only] => format!("`{only}`"),
        [first @ .., last] => {
            let quoted: Vec<String> = first.iter().map(|word| format!("`{word}`")).collect();
            format!("{} or `{last}`", quoted.join(", "))
        }
    }
}

/// The word that was probably meant, in brackets; nothing when there is none like it or it is too long to be a slip.
fn did_you_mean(found: &str, expected: &[&'static str]) -> String {
    if found.len() > EXCERPT {
        return String::new();
    }
    nearest(found, expected.iter().copied())
        .first()
        .map_or_else(String::new, |near| format!(" (did you mean `{near}`?)"))
}

/// Why a text can't become a book.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LoadProblem {
    /// Too much text.
    #[error("the text has {} MB; expected at most {} MB", .bytes.div_ceil(MEGABYTE), LONGEST_TEXT / MEGABYTE)]
    TooLong {
        /// Its length.
        bytes: u64,
    },
    /// No format number.
    #[error("no format number found; expected a book, which begins with `(format: {FORMAT},`")]
    NoFormat,
    /// A format number that is none.
    #[error("the format is `{}`; expected the whole number {FORMAT}", shortened(.found))]
    BadFormat {
        /// What stands there.
        found: String,
    },
    /// Written by a newer program.
    #[error(
        "the book has format {found}; this program reads format {FORMAT} and older, so open it with a newer program"
    )]
    NewerFormat {
        /// The format of the book.
        found: u64,
    },
    /// The text is not a book.
    #[error("{fault}, at line {line}, column {column}")]
    Text {
        /// What is wrong.
        fault: TextFault,
        /// Line, from 1.
        line: usize,
        /// Column in characters, from 1.
        column: usize,
    },
    /// Two items with one id.
    #[error(
        "{kind} `{id}` stands in the book twice; expected one, so give one of them another id: {first}; {second}"
    )]
    DuplicateId {
        /// "ingredient", "measure" …
        kind: &'static str,
        /// The id.
        id: String,
        /// The first.
        first: FilePlace,
        /// The second.
        second: FilePlace,
    },
    /// An id that is none.
    #[error("{error}, in {place}")]
    BadId {
        /// What is wrong with it.
        error: IdError,
        /// Where.
        place: FilePlace,
    },
    /// More entries in a list than a recipe may have.
    #[error(
        "there are {count} entries; expected at most {MOST_LINES}, so divide them among several recipes, in {place}"
    )]
    TooMany {
        /// How many there are.
        count: usize,
        /// Where.
        place: FilePlace,
    },
    /// A number that is none, or larger than a computer can hold.
    #[error("a number is {found}; expected a finite one, such as 12.5, in {place}")]
    NotFinite {
        /// The number.
        found: f64,
        /// Where.
        place: FilePlace,
    },
}

/// Why a file can't be opened.
#[derive(Debug, thiserror::Error)]
pub enum LoadError {
    /// There is none.
    #[error("there is no such file; expected a book: {}", .path.display())]
    Missing {
        /// The path.
        path: PathBuf,
    },
    /// A directory.
    #[error("this is a folder; expected a book file: {}", .path.display())]
    Directory {
        /// The path.
        path: PathBuf,
    },
    /// A device, a pipe …
    #[error("this is not an ordinary file; expected a book file: {}", .path.display())]
    NotAFile {
        /// The path.
        path: PathBuf,
    },
    /// May not be read.
    #[error("this user may not read the file; expected permission to read: {}", .path.display())]
    NoPermission {
        /// The path.
        path: PathBuf,
    },
    /// Reading failed.
    #[error("the file could not be read ({source}); expected a book file: {}", .path.display())]
    Read {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Not text.
    #[error("line {line} is not UTF-8 text; expected a book saved as UTF-8: {}", .path.display())]
    NotUtf8 {
        /// The path.
        path: PathBuf,
        /// The line with the first wrong byte, from 1.
        line: usize,
    },
    /// Text that is no book.
    #[error("{}: {}", listed(.problems), .path.display())]
    Problems {
        /// The path.
        path: PathBuf,
        /// What is wrong with it.
        problems: Vec<LoadProblem>,
    },
}

fn listed(problems: &[LoadProblem]) -> String {
    if let [only] = problems {
        return only.to_string();
    }
    let lines: Vec<String> = problems
        .iter()
        .take(LISTED)
        .map(|problem| format!("- {problem}\n"))
        .collect();
    let more = match problems.len().saturating_sub(LISTED) {
        0 => String::new(),
        more => format!("- and {more} more\n"),
    };
    format!(
        "{} problems; expected none:\n{}{more}file",
        problems.len(),
        lines.concat()
    )
}

/// Why a book can't be saved. The file that was there before is untouched.
#[derive(Debug, thiserror::Error)]
pub enum SaveError {
    /// A directory.
    #[error("this is a folder; expected the name of a file: {}", .path.display())]
    Directory {
        /// The path.
        path: PathBuf,
    },
    /// A device, a pipe …
    #[error("this is not an ordinary file, and replacing it would take it from whoever uses it; expected the name of a file: {}", .path.display())]
    NotAFile {
        /// The path.
        path: PathBuf,
    },
    /// The folder of the file is missing.
    #[error("the folder of the file does not exist; expected one to save in: {}", .path.display())]
    NoFolder {
        /// The path.
        path: PathBuf,
    },
    /// The file may not be written.
    #[error("the file may only be read, not changed; expected permission to write it: {}", .path.display())]
    NoPermission {
        /// The path.
        path: PathBuf,
    },
    /// Nothing may be written in the folder of the file.
    #[error("nothing may be written in this folder; expected permission to make files in it: {}", .path.display())]
    NoPermissionInFolder {
        /// The path.
        path: PathBuf,
    },
    /// Nothing can be written on the disk at all.
    #[error("this disk may only be read; expected one that can be written: {}", .path.display())]
    ReadOnlyDisk {
        /// The path.
        path: PathBuf,
    },
    /// A number that could not be read back.
    #[error("{count} numbers of the book are not finite; expected digits, because the file could not be opened again: {}", .path.display())]
    NotFinite {
        /// The path.
        path: PathBuf,
        /// How many.
        count: usize,
    },
    /// A text that is longer than what is read.
    #[error("the text of the book has {} MB; expected at most {} MB, because the file could not be opened again: {}", .bytes.div_ceil(MEGABYTE), LONGEST_TEXT / MEGABYTE, .path.display())]
    TooLong {
        /// The path.
        path: PathBuf,
        /// Its length.
        bytes: u64,
    },
    /// Another program has changed the file since it was read.
    #[error("the file was changed by another program since it was opened here; expected a choice before it is overwritten: {}", .path.display())]
    ChangedOnDisk {
        /// The path.
        path: PathBuf,
    },
    /// No room is left.
    #[error("the disk is full; expected room for the book and for the one that it replaces: {}", .path.display())]
    DiskFull {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
    /// Writing failed.
    #[error("the book could not be written ({source}); expected a disk with room for it: {}", .path.display())]
    Write {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
}
