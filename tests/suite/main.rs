//! All integration tests in one binary.

mod picture;
mod published_cases;
