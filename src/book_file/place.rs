//! Where a file is.

use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};

/// Longest chain of symbolic links that is followed, as on Linux.
const LINKS: usize = 40;

/// The file at the end of symbolic links, whether or not it exists.
pub(super) fn followed(path: &Path) -> io::Result<PathBuf> {
    let mut target = path.to_owned();
    for _ in 0..LINKS {
        match fs::read_link(&target) {
            // A relative link is relative to the folder that it is in.
            Ok(link) => target = folder_of(&target).join(link),
            Err(_) => return Ok(target),
        }
    }
    // Links that lead in a loop are an error of the system; a longer chain ends somewhere.
    fs::canonicalize(path)
}

/// The folder that a file is in.
pub(super) fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

/// Brings the new name onto the disk. The book itself is there by now, so that a folder that can't be synced (on a network
/// or on Windows) is no reason to report a failure.
pub(super) fn sync_folder(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
}
