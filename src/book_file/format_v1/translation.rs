//! What the texts of an item are in other languages, as it stands in a file.

use super::super::checker::Checker;
use super::stored::{Stored, file_group, in_file};

in_file! {
    struct Translation {
        language: String,
        of: String,
        text: String,
    }
}
