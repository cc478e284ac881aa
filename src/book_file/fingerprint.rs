//! What tells that a file has been changed by another hand.

use std::fs;
use std::io::{self, ErrorKind};
use std::path::Path;
use std::time::SystemTime;

use super::LONGEST_TEXT;

/// A file as it was when it was last read or written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Fingerprint {
    /// Length, bytes.
    pub length: u64,
    /// When it was changed last, as the system says; `None` where it does not.
    pub modified: Option<SystemTime>,
    /// A number made from its content (FNV-1a, 64 bit).
    pub content: u64,
}

impl Fingerprint {
    /// The fingerprint of a content, with the time that the system says.
    pub(super) fn new(bytes: &[u8], metadata: &fs::Metadata) -> Self {
        Self {
            length: bytes.len() as u64,
            modified: metadata.modified().ok(),
            content: content_number(bytes),
        }
    }

    /// Whether both are of the same content, whenever it was written.
    pub fn has_content_of(&self, other: &Self) -> bool {
        (self.length, self.content) == (other.length, other.content)
    }
}

/// FNV-1a over 64 bits (Fowler, Noll & Vo): no defence against an attacker, who could write the file anyway, but the
/// same in every program version, unlike the hashes of the standard library.
pub(super) fn content_number(bytes: &[u8]) -> u64 {
    const OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0100_0000_01b3;
    bytes.iter().fold(OFFSET, |number, byte| {
        (number ^ u64::from(*byte)).wrapping_mul(PRIME)
    })
}

/// What has become of a file since its fingerprint was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OnDisk {
    /// The same content.
    Same,
    /// Another content.
    Changed(Fingerprint),
    /// There is no such file any more.
    Gone,
}

/// Looks whether a file is still what it was. Reads it only when its length or time is another: cheap enough for every few
/// seconds. A change that keeps both is found by [`look_closely`].
pub fn look(path: &Path, known: &Fingerprint) -> io::Result<OnDisk> {
    match fs::metadata(path) {
        Ok(found)
            if found.len() == known.length
                && found.modified().ok() == known.modified
                && known.modified.is_some() =>
        {
            Ok(OnDisk::Same)
        }
        Ok(_) => look_closely(path, known),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(OnDisk::Gone),
        Err(error) => Err(error),
    }
}

/// Looks whether a file is still what it was, by its content.
pub fn look_closely(path: &Path, known: &Fingerprint) -> io::Result<OnDisk> {
    match fingerprint_of(path)? {
        None => Ok(OnDisk::Gone),
        Some(found) if found.has_content_of(known) => Ok(OnDisk::Same),
        Some(found) => Ok(OnDisk::Changed(found)),
    }
}

/// The fingerprint of a file; `None` when there is none.
fn fingerprint_of(path: &Path) -> io::Result<Option<Fingerprint>> {
    let metadata = match fs::metadata(path) {
        Ok(metadata) => metadata,
        Err(error) if error.kind() == ErrorKind::NotFound => return Ok(None),
        Err(error) => return Err(error),
    };
    if !metadata.is_file() || metadata.len() > LONGEST_TEXT {
        // No book, whatever it is: its length stands for it.
        return Ok(Some(Fingerprint {
            length: metadata.len(),
            modified: metadata.modified().ok(),
            content: 0,
        }));
    }
    Ok(Some(Fingerprint::new(&fs::read(path)?, &metadata)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_number_of_a_content_is_that_of_the_published_function() {
        // Test vectors of Fowler, Noll & Vo for 64-bit FNV-1a (values from memory).
        assert_eq!(content_number(b""), 0xcbf2_9ce4_8422_2325);
        assert_eq!(content_number(b"a"), 0xaf63_dc4c_8601_ec8c);
        assert_eq!(content_number(b"foobar"), 0x8594_4171_f739_67e8);
    }
}
