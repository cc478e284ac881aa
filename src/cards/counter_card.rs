//! The counter card: one drink as it is made, on paper that stands beside the shaker.

use super::document::{Block, Document};
use super::recipe_blocks::{Made, footnotes};
use super::request::{CardError, Drink};
use crate::say::Speaker;

pub(super) fn document(speaker: Speaker<'_>, drink: &Drink) -> Result<Document, CardError> {
    let made = Made::new(speaker, drink)?;
    Ok(Document {
        title: made.recipe_name().to_owned(),
        subtitle: made.version_name().to_owned(),
        revision: made.revision(),
        is_unapproved: !made.is_approved(),
        blocks: vec![
            made.steps(),
            Block::Facts(made.facts()),
            Block::Cautions(made.cautions()),
            footnotes(&speaker),
        ],
        ..Document::default()
    })
}
