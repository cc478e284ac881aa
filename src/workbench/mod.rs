//! The open book.
