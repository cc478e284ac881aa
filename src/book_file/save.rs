//! Saves a book so that there is never a half-written one.

use std::ffi::OsStr;
use std::fs::{self, OpenOptions};
use std::io::{self, ErrorKind, Write as _};
use std::path::{Path, PathBuf};
use std::time::Duration;

use super::LONGEST_TEXT;
use super::earlier;
use super::error::SaveError;
use super::fingerprint::{Fingerprint, OnDisk, look_closely};
use super::place::{folder_of, followed, sync_folder};
use super::put::{Put, put_expecting, put_new, put_over};
use super::write::write_counting;
use crate::book::Book;

/// A file that a save has left half-written (the power was cut) is taken away after this time: no save takes so long.
const LEFT_OVER: Duration = Duration::from_hours(1);

/// A book that has been saved.
#[derive(Debug)]
pub struct Saved {
    /// The file as it is now.
    pub fingerprint: Fingerprint,
    /// Where the replaced state is kept; `None` when there was none or it was the same. An error is no reason to worry: the
    /// book is saved.
    pub earlier: io::Result<Option<PathBuf>>,
}

/// Writes a book to a file: beside it first, onto the disk, and then in its place in one step.
///
/// An existing file keeps its permissions, and a symbolic link stays one: the file that it leads to is replaced. What is
/// replaced is kept as an earlier copy. Owner and hard links are not kept, because the replaced file is a new one.
pub fn save(path: &Path, book: &Book) -> Result<Saved, SaveError> {
    save_expecting(path, book, None)
}

/// The same, unless the file is no longer what it was when its fingerprint was taken: then nothing is overwritten.
///
/// The file is read before an earlier copy is kept of it, and what is replaced in the end is looked at once more.
pub fn save_over(path: &Path, book: &Book, known: &Fingerprint) -> Result<Saved, SaveError> {
    save_expecting(path, book, Some(known))
}

fn save_expecting(
    path: &Path,
    book: &Book,
    known: Option<&Fingerprint>,
) -> Result<Saved, SaveError> {
    let text = readable_text(path, book)?;
    let io_error = |source| save_error(path, source);
    let target = followed(path).map_err(io_error)?;
    let beside = written_beside(&target, text.as_bytes()).map_err(io_error)?;
    let changed = || SaveError::ChangedOnDisk {
        path: path.to_owned(),
    };
    if let Some(known) = known
        && let OnDisk::Changed(_) = look_closely(&target, known).map_err(io_error)?
    {
        return Err(changed());
    }
    let metadata = beside.as_file().metadata().map_err(io_error)?;
    let earlier = keep_earlier(&target, text.as_bytes());
    let put = match known {
        Some(known) => put_expecting(beside, &target, known),
        None => put_over(beside, &target),
    };
    let refused = match put {
        Ok(Put::Done) => None,
        Ok(Put::ChangedMeanwhile) => Some(changed()),
        Err(error) => Some(io_error(error)),
    };
    if let Some(refused) = refused {
        // What was in place is there still, so that it needs no copy.
        if let Ok(Some(copy)) = &earlier {
            let _ = fs::remove_file(copy);
        }
        return Err(refused);
    }
    sync_folder(folder_of(&target));
    earlier::thin_out(&target);
    remove_left_over(&target);
    Ok(Saved {
        fingerprint: Fingerprint::new(text.as_bytes(), &metadata),
        earlier,
    })
}

/// The text of a book that can be read back.
pub(super) fn readable_text(path: &Path, book: &Book) -> Result<String, SaveError> {
    let (text, count) = write_counting(book);
    let path = || path.to_owned();
    if count > 0 {
        return Err(SaveError::NotFinite {
            path: path(),
            count,
        });
    }
    let bytes = text.len() as u64;
    if bytes > LONGEST_TEXT {
        return Err(SaveError::TooLong {
            path: path(),
            bytes,
        });
    }
    Ok(text)
}

/// Keeps what is about to be replaced, unless it is the same.
fn keep_earlier(target: &Path, text: &[u8]) -> io::Result<Option<PathBuf>> {
    match fs::metadata(target) {
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(error),
        Ok(metadata) => {
            let now = Fingerprint::new(text, &metadata);
            if look_closely(target, &now)? == OnDisk::Same {
                return Ok(None);
            }
        }
    }
    earlier::keep(target).map(Some)
}

/// Replaces a file in one step by one with these bytes, which are on the disk when this returns.
pub(super) fn replace(target: &Path, bytes: &[u8]) -> io::Result<()> {
    written_beside(target, bytes)?
        .persist(target)
        .map_err(|error| error.error)?;
    sync_folder(folder_of(target));
    Ok(())
}

/// Writes a file with these bytes that was not there before; `AlreadyExists` when there is one of its name.
pub(super) fn write_new(target: &Path, bytes: &[u8]) -> io::Result<()> {
    // Whatever has the name: a folder or a link that leads nowhere as well.
    if fs::symlink_metadata(target).is_ok() {
        return Err(ErrorKind::AlreadyExists.into());
    }
    if let Put::ChangedMeanwhile = put_new(written_beside(target, bytes)?, target)? {
        return Err(ErrorKind::AlreadyExists.into());
    }
    sync_folder(folder_of(target));
    Ok(())
}

/// A file beside the target with these bytes, on the disk, and with the permissions of the target when there is one.
fn written_beside(target: &Path, bytes: &[u8]) -> io::Result<tempfile::NamedTempFile> {
    let permissions = match fs::metadata(target) {
        Ok(metadata) if metadata.is_dir() => return Err(ErrorKind::IsADirectory.into()),
        // To open a pipe would wait for its other end, and to replace it would take it from whoever reads it.
        Ok(metadata) if !metadata.is_file() => {
            return Err(ErrorKind::Unsupported.into());
        }
        Ok(metadata) => {
            // A rename would replace even a file that may not be written, so that is asked for first.
            OpenOptions::new().write(true).open(target)?;
            Some(metadata.permissions())
        }
        Err(error) if error.kind() == ErrorKind::NotFound => None,
        Err(error) => return Err(error),
    };
    let mut beside = new_file_beside(target)?;
    beside.write_all(bytes)?;
    if let Some(permissions) = permissions {
        beside.as_file().set_permissions(permissions)?;
    }
    beside.as_file().sync_all()?;
    Ok(beside)
}

/// What the name of a file begins with while a book of this name is being saved.
fn beginning_beside(target: &Path) -> String {
    format!(
        ".{}.saving-",
        target
            .file_name()
            .unwrap_or(OsStr::new("book"))
            .to_string_lossy()
    )
}

/// A file with a name of its own that is deleted unless it is put in place.
fn new_file_beside(target: &Path) -> io::Result<tempfile::NamedTempFile> {
    let beginning = beginning_beside(target);
    let mut builder = tempfile::Builder::new();
    builder.prefix(&beginning).suffix(".ron");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        // The usual permissions of a new file, less what the user's mask takes away.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder_of(target))
}

/// Takes away what saves of this book have left that were cut short long ago.
fn remove_left_over(target: &Path) {
    let beginning = beginning_beside(target);
    let Ok(entries) = fs::read_dir(folder_of(target)) else {
        return;
    };
    for entry in entries.flatten() {
        let is_old = || {
            let modified = entry
                .metadata()
                .and_then(|metadata| metadata.modified())
                .ok();
            modified
                .and_then(|time| time.elapsed().ok())
                .is_some_and(|age| age > LEFT_OVER)
        };
        if entry.file_name().to_string_lossy().starts_with(&beginning) && is_old() {
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// Whether the file itself is not what stands in the way: it can be written, or there is none.
fn may_be_written(path: &Path) -> bool {
    match OpenOptions::new().write(true).open(path) {
        Ok(_) => true,
        Err(error) => error.kind() == ErrorKind::NotFound,
    }
}

fn is_ordinary(path: &Path) -> bool {
    path.metadata().is_ok_and(|metadata| metadata.is_file())
}

pub(super) fn save_error(path: &Path, source: io::Error) -> SaveError {
    let path = path.to_owned();
    match source.kind() {
        ErrorKind::IsADirectory => SaveError::Directory { path },
        // Said of devices and pipes by whoever writes a file beside its place.
        ErrorKind::Unsupported if !is_ordinary(&path) => SaveError::NotAFile { path },
        ErrorKind::NotFound | ErrorKind::NotADirectory => SaveError::NoFolder { path },
        ErrorKind::ReadOnlyFilesystem => SaveError::ReadOnlyDisk { path },
        ErrorKind::PermissionDenied if may_be_written(&path) => {
            SaveError::NoPermissionInFolder { path }
        }
        ErrorKind::PermissionDenied => SaveError::NoPermission { path },
        ErrorKind::StorageFull => SaveError::DiskFull { path, source },
        _ => SaveError::Write { path, source },
    }
}
