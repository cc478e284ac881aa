//! Any bytes as a book file: never a panic, and what opens is written and read back the same.

#![no_main]

use evensip::book_file::{parse, write};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    match parse(text) {
        Ok((book, findings)) => {
            for finding in &findings {
                assert!(!finding.to_string().is_empty());
            }
            let written = write(&book);
            let read = parse(&written).unwrap_or_else(|problems| panic!("can't be read back: {problems:?}"));
            assert!(read.0 == book, "differs after writing:\n{written}");
            assert_eq!(read.1, findings);
            assert_eq!(write(&read.0), written);
        }
        Err(problems) => {
            assert!(!problems.is_empty());
            for problem in problems {
                let sentence = problem.to_string();
                assert!(sentence.len() < 4000 && !sentence.contains('\u{202e}'), "{sentence:?}");
            }
        }
    }
});
