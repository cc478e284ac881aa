//! Searches for bytes that break the law of this name.

#![no_main]
#![allow(dead_code, reason = "the laws of all targets come along")]

#[path = "../../suite/arbitrary_book.rs"]
mod arbitrary_book;
#[path = "../../suite/arbitrary_document.rs"]
mod arbitrary_document;
#[path = "../laws.rs"]
mod laws;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| laws::recipes_of_other_shops_come_in_whole(bytes));
