//! Puts a written file in the place of a book, unless another hand has been there.

use std::io::{self, ErrorKind};
use std::path::Path;

use tempfile::NamedTempFile;

use super::fingerprint::{Fingerprint, OnDisk, look, look_closely};

/// How a file came, or did not come, into its place.
pub(super) enum Put {
    Done,
    /// The place holds what another hand has put there.
    ChangedMeanwhile,
}

/// Puts a file in place in one step, whatever is there.
pub(super) fn put_over(beside: NamedTempFile, target: &Path) -> io::Result<Put> {
    beside.persist(target).map_err(|error| error.error)?;
    Ok(Put::Done)
}

/// The same, where the known content is expected, or nothing at all.
///
/// What a look finds may be replaced before the next step of the program, so the two files change places in one step, and
/// what came out is looked at afterwards. Where the system has no such step, a look comes last.
pub(super) fn put_expecting(
    beside: NamedTempFile,
    target: &Path,
    known: &Fingerprint,
) -> io::Result<Put> {
    match exchange(beside.path(), target) {
        Ok(()) => after_exchange(beside, target, known),
        Err(error) if error.kind() == ErrorKind::NotFound => put_new(beside, target),
        Err(_) => match look(target, known)? {
            OnDisk::Changed(_) => Ok(Put::ChangedMeanwhile),
            OnDisk::Same => put_over(beside, target),
            OnDisk::Gone => put_new(beside, target),
        },
    }
}

/// Looks at what was taken out, which stands in the place of the new file now, and gives it back when it is not what was known.
fn after_exchange(taken: NamedTempFile, target: &Path, known: &Fingerprint) -> io::Result<Put> {
    let is_known = |path: &Path| Ok::<_, io::Error>(look_closely(path, known)? == OnDisk::Same);
    if is_known(taken.path())? {
        return Ok(Put::Done);
    }
    exchange(taken.path(), target)?;
    // A third version may have come in between the two steps; it stays beside the book rather than nowhere.
    let ours = taken.as_file().metadata()?;
    if !is_same_file(&ours, &taken.path().metadata()?) {
        taken.keep().map_err(|error| error.error)?;
    }
    Ok(Put::ChangedMeanwhile)
}

/// Puts a file where there was none a moment ago.
pub(super) fn put_new(beside: NamedTempFile, target: &Path) -> io::Result<Put> {
    match beside.persist_noclobber(target) {
        Ok(_) => Ok(Put::Done),
        Err(refused) if refused.error.kind() == ErrorKind::AlreadyExists => {
            Ok(Put::ChangedMeanwhile)
        }
        // Some file systems know no such step.
        Err(refused) => put_over(refused.file, target),
    }
}

#[cfg(unix)]
fn is_same_file(one: &std::fs::Metadata, other: &std::fs::Metadata) -> bool {
    use std::os::unix::fs::MetadataExt as _;
    (one.dev(), one.ino()) == (other.dev(), other.ino())
}

#[cfg(not(unix))]
fn is_same_file(_: &std::fs::Metadata, _: &std::fs::Metadata) -> bool {
    true
}

/// Lets two files change places in one step.
#[cfg(any(target_os = "linux", target_vendor = "apple"))]
fn exchange(one: &Path, other: &Path) -> io::Result<()> {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    Ok(renameat_with(CWD, one, CWD, other, RenameFlags::EXCHANGE)?)
}

#[cfg(not(any(target_os = "linux", target_vendor = "apple")))]
fn exchange(_: &Path, _: &Path) -> io::Result<()> {
    Err(ErrorKind::Unsupported.into())
}

#[cfg(test)]
mod tests {
    use std::fs;

    use super::*;

    /// A folder with a book of this content, and a written file that is to take its place.
    fn folder_with(content: &str) -> (tempfile::TempDir, std::path::PathBuf, NamedTempFile) {
        let folder = tempfile::tempdir().unwrap();
        let target = folder.path().join("book.ron");
        fs::write(&target, content).unwrap();
        let beside = NamedTempFile::new_in(folder.path()).unwrap();
        fs::write(beside.path(), "ours").unwrap();
        (folder, target, beside)
    }

    fn known(content: &str, target: &Path) -> Fingerprint {
        Fingerprint::new(content.as_bytes(), &fs::metadata(target).unwrap())
    }

    fn names(folder: &tempfile::TempDir) -> usize {
        fs::read_dir(folder.path()).unwrap().count()
    }

    #[test]
    fn what_is_known_is_replaced_and_nothing_is_left_beside_it() {
        let (folder, target, beside) = folder_with("before");
        let known = known("before", &target);
        assert!(matches!(
            put_expecting(beside, &target, &known),
            Ok(Put::Done)
        ));
        assert_eq!(fs::read_to_string(&target).unwrap(), "ours");
        assert_eq!(names(&folder), 1);
    }

    /// The look before this step saw the known content, and another hand was there since.
    #[test]
    fn what_came_between_the_look_and_the_step_stays() {
        let (folder, target, beside) = folder_with("before");
        let known = known("before", &target);
        fs::write(&target, "theirs").unwrap();
        assert!(matches!(
            put_expecting(beside, &target, &known),
            Ok(Put::ChangedMeanwhile)
        ));
        assert_eq!(fs::read_to_string(&target).unwrap(), "theirs");
        assert_eq!(names(&folder), 1);
    }

    #[test]
    fn a_file_that_is_gone_is_written_anew() {
        let (folder, target, beside) = folder_with("before");
        let known = known("before", &target);
        fs::remove_file(&target).unwrap();
        assert!(matches!(
            put_expecting(beside, &target, &known),
            Ok(Put::Done)
        ));
        assert_eq!(fs::read_to_string(&target).unwrap(), "ours");
        assert_eq!(names(&folder), 1);
    }
}
