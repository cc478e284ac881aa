//! From text to a book.

use ron::Options;
use ron::error::{Position, SpannedError};
use ron::extensions::Extensions;

use super::error::{Found, LoadProblem, TextFault, Wanted};
use super::format_v1::{FIGURE, TEMPERATURE};
use super::{FORMAT, LONGEST_TEXT, format_v1, scan};
use crate::book::{self, Book, Finding};
use crate::quantity::excerpt;

/// Brackets in brackets that are read before the text is refused. Each costs the deserializer a few frames of stack; a
/// book has eleven.
const DEEPEST: usize = 96;

/// Longest words of the reader that are passed on, in characters.
const LONGEST_WORDS: usize = 160;

/// Reads the text of a book and lists what is wrong in it; or says why it can't become a book.
///
/// A text that is not RON of this format gives the first fault; one that is gives all ids and numbers that can't be taken.
pub fn parse(text: &str) -> Result<(Book, Vec<Finding>), Vec<LoadProblem>> {
    let book = read_book(text)?;
    let findings = book::findings(&book);
    Ok((book, findings))
}

/// The same without a look at what is wrong in it.
pub(super) fn read_book(text: &str) -> Result<Book, Vec<LoadProblem>> {
    // Some editors put a byte order mark in front of UTF-8.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    check_header(text).map_err(|problem| vec![problem])?;
    let options = Options::default()
        .with_default_extension(Extensions::IMPLICIT_SOME)
        .with_recursion_limit(DEEPEST);
    let file: format_v1::Book = options
        .from_str(text)
        .map_err(|error| vec![text_problem(text, error)])?;
    file.into_book(text)
}

/// Refuses what is too long or of another format before anything else is read: a newer format may hold fields that are
/// unknown here, and complaining of those would hide the reason.
fn check_header(text: &str) -> Result<(), LoadProblem> {
    let bytes = text.len() as u64;
    if bytes > LONGEST_TEXT {
        return Err(LoadProblem::TooLong { bytes });
    }
    let found = scan::format_number(text).ok_or(LoadProblem::NoFormat)?;
    match found.parse::<u64>() {
        Ok(FORMAT) => Ok(()),
        Ok(found) if found > FORMAT => Err(LoadProblem::NewerFormat { found }),
        _ => Err(LoadProblem::BadFormat {
            found: found.to_owned(),
        }),
    }
}

fn text_problem(text: &str, error: SpannedError) -> LoadProblem {
    use ron::Error as Ron;
    let fault = match error.code {
        Ron::Eof => TextFault::Ended,
        Ron::ExpectedStringEnd => TextFault::OpenString,
        Ron::UnclosedBlockComment | Ron::UnclosedLineComment => TextFault::OpenComment,
        Ron::ExceededRecursionLimit => TextFault::TooDeep,
        Ron::NoSuchStructField {
            found, expected, ..
        } => TextFault::UnknownField {
            found,
            known: expected.to_vec(),
        },
        Ron::NoSuchEnumVariant {
            found, expected, ..
        } => TextFault::UnknownWord {
            found,
            known: expected.to_vec(),
        },
        Ron::MissingStructField { field, .. } => TextFault::MissingField { field },
        Ron::DuplicateStructField { field, .. } => TextFault::FieldTwice { field },
        Ron::InvalidValueForType { expected, found } => TextFault::WrongKind {
            found: Found::Reader(excerpt(&found, LONGEST_WORDS)),
            wanted: wanted_by_reader(&expected),
        },
        Ron::ExpectedDifferentLength { expected, found } => TextFault::WrongKind {
            found: Found::Values(found),
            wanted: wanted_by_reader(&expected),
        },
        Ron::IntegerOutOfBounds => TextFault::WrongKind {
            found: Found::NoWholeNumber,
            wanted: Wanted::Count,
        },
        other => wrong_kind(text, &error.span.end, wanted(&other)),
    };
    // The reader stands behind a name or number that it has taken, and before anything else.
    let Position { line, col: column } = match fault {
        TextFault::UnknownField { .. }
        | TextFault::UnknownWord { .. }
        | TextFault::FieldTwice { .. } => error.span.start,
        _ => error.span.end,
    };
    LoadProblem::Text {
        fault,
        line,
        column,
    }
}

fn wrong_kind(text: &str, at: &Position, wanted: Wanted) -> TextFault {
    match text_at(text, at) {
        None => TextFault::Ended,
        Some(found) => TextFault::WrongKind {
            found: Found::Text(found),
            wanted,
        },
    }
}

/// What the reader wanted.
fn wanted(error: &ron::Error) -> Wanted {
    use ron::Error as Ron;
    match error {
        Ron::ExpectedArray => Wanted::List,
        Ron::ExpectedArrayEnd => Wanted::EndOfList,
        Ron::ExpectedStructLike | Ron::ExpectedNamedStructLike(_) => Wanted::Group,
        Ron::ExpectedStructLikeEnd => Wanted::EndOfGroup,
        Ron::ExpectedMapColon => Wanted::Colon,
        Ron::ExpectedComma => Wanted::Comma,
        Ron::ExpectedFloat => Wanted::Number,
        Ron::ExpectedInteger => Wanted::WholeNumber,
        Ron::ExpectedString => Wanted::Text,
        Ron::ExpectedIdentifier => Wanted::Word,
        Ron::ExpectedBoolean => Wanted::YesOrNo,
        Ron::TrailingCharacters => Wanted::EndOfBook,
        other => {
            let sentence = other.to_string();
            let mut characters = sentence.chars();
            let sentence: String = characters.next().map_or_else(String::new, |first| {
                first.to_lowercase().chain(characters).collect()
            });
            wanted_by_reader(&sentence)
        }
    }
}

/// What the reader wanted, in its own words. They may repeat a word of the text, which may be long or hold characters that can't
/// be seen.
fn wanted_by_reader(words: &str) -> Wanted {
    if words == FIGURE {
        Wanted::Figure
    } else if words == TEMPERATURE {
        Wanted::Number
    } else {
        Wanted::Reader(excerpt(words, LONGEST_WORDS))
    }
}

/// The beginning of what stands at or behind a place; `None` when nothing does.
fn text_at(text: &str, at: &Position) -> Option<String> {
    let from_line: usize = text
        .split_inclusive('\n')
        .take(at.line.saturating_sub(1))
        .map(str::len)
        .sum();
    let in_line: usize = text[from_line..]
        .chars()
        .take(at.col.saturating_sub(1))
        .map(char::len_utf8)
        .sum();
    let rest = text[from_line + in_line..].trim_start();
    let end = rest.find(['\n', ',']).map_or(rest.len(), |end| end.max(1));
    (end > 0).then(|| excerpt(rest[..end].trim_end(), 24))
}
