//! Opens a book file.

use std::fs::{self, File};
use std::io::{self, ErrorKind, Read as _};
use std::path::Path;

use super::error::{LoadError, LoadProblem};
use super::fingerprint::Fingerprint;
use super::{LONGEST_TEXT, parse, scan};
use crate::book::{Book, Finding};

/// A book as it was found in a file.
#[derive(Clone, Debug, PartialEq)]
pub struct Loaded {
    /// The book.
    pub book: Book,
    /// What is wrong in it.
    pub findings: Vec<Finding>,
    /// The text has comments. They are no part of the book, so saving it loses them, which a person should be told before.
    pub text_has_comments: bool,
    /// The file as it was read.
    pub fingerprint: Fingerprint,
}

/// Reads a book from a file. The file is never changed.
pub fn load(path: &Path) -> Result<Loaded, LoadError> {
    let (text, fingerprint) = read_text(path)?;
    let (book, findings) = parse(&text).map_err(|problems| LoadError::Problems {
        path: path.to_owned(),
        problems,
    })?;
    Ok(Loaded {
        book,
        findings,
        text_has_comments: scan::has_comments(&text),
        fingerprint,
    })
}

/// The text of a file, and the file as it was when it was read.
pub(super) fn read_text(path: &Path) -> Result<(String, Fingerprint), LoadError> {
    let io_error = |source| load_error(path, source);
    // Looked at before it is opened: to open a pipe would wait for its other end.
    let kind = fs::metadata(path).map_err(io_error)?.file_type();
    if kind.is_dir() {
        return Err(LoadError::Directory {
            path: path.to_owned(),
        });
    }
    if !kind.is_file() {
        return Err(LoadError::NotAFile {
            path: path.to_owned(),
        });
    }
    let file = File::open(path).map_err(io_error)?;
    let metadata = file.metadata().map_err(io_error)?;
    let mut bytes = Vec::new();
    // One byte more than allowed shows that there is more, even when the file grows while it is read.
    file.take(LONGEST_TEXT + 1)
        .read_to_end(&mut bytes)
        .map_err(io_error)?;
    if bytes.len() as u64 > LONGEST_TEXT {
        let problems = vec![LoadProblem::TooLong {
            bytes: metadata.len().max(LONGEST_TEXT + 1),
        }];
        return Err(LoadError::Problems {
            path: path.to_owned(),
            problems,
        });
    }
    let fingerprint = Fingerprint::new(&bytes, &metadata);
    let text = String::from_utf8(bytes).map_err(|error| {
        let valid = &error.as_bytes()[..error.utf8_error().valid_up_to()];
        let line = valid.split(|byte| *byte == b'\n').count();
        LoadError::NotUtf8 {
            path: path.to_owned(),
            line,
        }
    })?;
    Ok((text, fingerprint))
}

fn load_error(path: &Path, source: io::Error) -> LoadError {
    let path = path.to_owned();
    match source.kind() {
        ErrorKind::NotFound => LoadError::Missing { path },
        ErrorKind::PermissionDenied => LoadError::NoPermission { path },
        ErrorKind::IsADirectory => LoadError::Directory { path },
        _ => LoadError::Read { path, source },
    }
}
