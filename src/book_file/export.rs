//! Files beside the book: cards that are written, lists that are read. Written in one step, like the book itself.

use std::fs::{self, File};
use std::io::{self, Read as _};
use std::path::{Path, PathBuf};

use super::error::SaveError;
use super::place::followed;
use super::save::{replace, save_error, write_new};
use super::scan;

/// Longest list that is read, in bytes.
pub const LONGEST_LIST: u64 = 32 * 1024 * 1024;

/// Why a list can't be read.
#[derive(Debug)]
pub enum ReadError {
    /// It is no file.
    NotAFile {
        /// The path.
        path: PathBuf,
    },
    /// It is longer than any list of ingredients.
    TooLong {
        /// The path.
        path: PathBuf,
    },
    /// The system refuses.
    Read {
        /// The path.
        path: PathBuf,
        /// What the system says.
        source: io::Error,
    },
}

/// The bytes of a file that is brought in.
pub fn read_bytes(path: &Path) -> Result<Vec<u8>, ReadError> {
    let read_error = |source| ReadError::Read {
        path: path.to_owned(),
        source,
    };
    // Looked at before it is opened: to open a pipe would wait for its other end.
    if !fs::metadata(path).map_err(read_error)?.is_file() {
        return Err(ReadError::NotAFile {
            path: path.to_owned(),
        });
    }
    let mut bytes = Vec::new();
    File::open(path)
        .map_err(read_error)?
        .take(LONGEST_LIST + 1)
        .read_to_end(&mut bytes)
        .map_err(read_error)?;
    if bytes.len() as u64 > LONGEST_LIST {
        return Err(ReadError::TooLong {
            path: path.to_owned(),
        });
    }
    Ok(bytes)
}

/// Writes a file that is exported into a folder, whole or not at all, and tells where. A file that is there stays: of "card.pdf"
/// becomes "card-2.pdf".
pub fn write_beside_others(folder: &Path, name: &str, bytes: &[u8]) -> Result<PathBuf, SaveError> {
    let (stem, ending) = name.rsplit_once('.').unwrap_or((name, ""));
    let mut path = folder.join(name);
    let mut number = 2_usize;
    loop {
        match write_new(&path, bytes) {
            Ok(()) => return Ok(path),
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => {}
            Err(source) => return Err(save_error(&path, source)),
        }
        path = folder.join(match ending {
            "" => format!("{stem}-{number}"),
            ending => format!("{stem}-{number}.{ending}"),
        });
        number += 1;
    }
}

/// Writes a file that is exported to the path that a person named: whole or not at all. A link stays one: the file that it
/// leads to is replaced. What is no ordinary file is never replaced.
pub fn replace_file(path: &Path, bytes: &[u8]) -> Result<(), SaveError> {
    let replaced = followed(path).and_then(|target| replace(&target, bytes));
    replaced.map_err(|source| save_error(path, source))
}

/// Whether a text begins as a book does, of whatever format.
pub fn begins_as_book(bytes: &[u8]) -> bool {
    let text = String::from_utf8_lossy(bytes);
    scan::format_number(text.strip_prefix('\u{feff}').unwrap_or(&text)).is_some()
}
