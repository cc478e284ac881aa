//! Saves a book so that there is never a half-written one.

use std::fs::{self, File, OpenOptions};
use std::io::{self, ErrorKind, Write as _};
use std::path::{Path, PathBuf};

use super::error::SaveError;
use super::write::write_counting;
use crate::book::Book;

/// Longest chain of symbolic links that is followed, as on Linux.
const LINKS: usize = 40;

/// Writes a book to a file: beside it first, onto the disk, and then in its place in one step.
///
/// An existing file keeps its permissions, and a symbolic link stays one: the file that it leads to is replaced.
/// Owner and hard links are not kept, because the replaced file is a new one.
pub fn save(path: &Path, book: &Book) -> Result<(), SaveError> {
    let (text, count) = write_counting(book);
    if count > 0 {
        return Err(SaveError::NotFinite { path: path.to_owned(), count });
    }
    let target = followed(path).map_err(|source| save_error(path, source))?;
    replace(&target, text.as_bytes()).map_err(|source| save_error(path, source))
}

/// The file at the end of symbolic links, whether or not it exists.
fn followed(path: &Path) -> io::Result<PathBuf> {
    let mut target = path.to_owned();
    for _ in 0..LINKS {
        match fs::read_link(&target) {
            // A relative link is relative to the folder that it is in.
            Ok(link) => target = folder_of(&target).join(link),
            Err(_) => return Ok(target),
        }
    }
    Err(io::Error::other("symbolic links lead in a circle"))
}

fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

fn replace(target: &Path, bytes: &[u8]) -> io::Result<()> {
    let permissions = match fs::metadata(target) {
        Ok(metadata) if metadata.is_dir() => return Err(ErrorKind::IsADirectory.into()),
        Ok(metadata) => {
            // A rename would replace even a file that may not be written, so that is asked for first.
            OpenOptions::new().write(true).open(target)?;
            Some(metadata.permissions())
        }
        Err(error) if error.kind() == ErrorKind::NotFound => None,
        Err(error) => return Err(error),
    };
    let folder = folder_of(target);
    let mut beside = new_file_in(folder)?;
    beside.write_all(bytes)?;
    if let Some(permissions) = permissions {
        beside.as_file().set_permissions(permissions)?;
    }
    beside.as_file().sync_all()?;
    beside.persist(target).map_err(|error| error.error)?;
    sync_folder(folder);
    Ok(())
}

/// A file with a name of its own that is deleted unless it is put in place.
fn new_file_in(folder: &Path) -> io::Result<tempfile::NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".evensip-").suffix(".ron");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        // The usual permissions of a new file, less what the user's mask takes away.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}

/// Brings the new name onto the disk. The book itself is there by now, so that a folder that can't be synced (on a network
/// or on Windows) is no reason to report a failure.
fn sync_folder(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
}

fn save_error(path: &Path, source: io::Error) -> SaveError {
    let path = path.to_owned();
    match source.kind() {
        ErrorKind::IsADirectory => SaveError::Directory { path },
        ErrorKind::NotFound | ErrorKind::NotADirectory => SaveError::NoFolder { path },
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => SaveError::NoPermission { path },
        _ => SaveError::Write { path, source },
    }
}
