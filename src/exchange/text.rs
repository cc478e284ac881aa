//! Bytes of a file that has to be UTF-8: JSON (RFC 8259, section 8.1) and books.

/// The file is in another encoding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotUtf8 {
    /// The line with the first wrong byte, from 1.
    pub line: usize,
}

/// The text of a file that has to be UTF-8, without a mark at its beginning. Letters of another encoding are never guessed: a
/// name that is taken over wrong is not noticed.
pub fn utf8_text(bytes: &[u8]) -> Result<&str, NotUtf8> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    std::str::from_utf8(bytes).map_err(|error| NotUtf8 {
        line: bytes[..error.valid_up_to()]
            .split(|byte| *byte == b'\n')
            .count(),
    })
}
