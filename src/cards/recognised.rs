//! Tells a card from any other file, so that only a card gives way to a card.

use serde_json::Value;

/// The sign of this program in a page for a browser.
pub(super) const GENERATOR: &str = "<meta name=\"generator\" content=\"Evensip\">";

/// The sign of this program in a PDF, as `pdf` writes it.
const CREATOR: &[u8] = b"(Evensip)";

/// Whether a file holds an earlier state of the card that is about to be written there, or nothing that could be lost: it is
/// empty, the same, or a card of this program in the same format. A text without such a sign has to begin with the same line.
/// A book is no card.
pub fn is_card_like(before: &[u8], card: &[u8]) -> bool {
    if before.trim_ascii().is_empty() || before == card {
        return true;
    }
    if card.starts_with(b"%PDF-") {
        return before.starts_with(b"%PDF-") && contains(before, CREATOR);
    }
    if card.starts_with(b"<!DOCTYPE html>") {
        return before.starts_with(b"<!DOCTYPE html>") && contains(before, GENERATOR.as_bytes());
    }
    match card.first() {
        Some(b'{') => same_json(before, card),
        // Another shop's recipe is a book, and the books of a shop begin alike.
        Some(b'(') => false,
        _ => first_line(before) == first_line(card),
    }
}

fn contains(bytes: &[u8], sign: &[u8]) -> bool {
    bytes.windows(sign.len()).any(|window| window == sign)
}

fn first_line(bytes: &[u8]) -> &[u8] {
    let line = bytes.split(|byte| *byte == b'\n').next();
    line.unwrap_or_default().trim_ascii()
}

/// Whether both are of one kind: the same fields at the top, and the same kind of card or type of schema.org.
fn same_json(before: &[u8], card: &[u8]) -> bool {
    let object = |bytes: &[u8]| match serde_json::from_slice(bytes) {
        Ok(Value::Object(object)) => Some(object),
        _ => None,
    };
    let (Some(before), Some(card)) = (object(before), object(card)) else {
        return false;
    };
    let kinds = ["kind", "@type"];
    let has_kind = kinds.iter().any(|kind| card.contains_key(*kind));
    has_kind
        && kinds
            .iter()
            .all(|kind| before.get(*kind) == card.get(*kind))
        && ["blocks", "recipeIngredient"]
            .iter()
            .all(|field| before.contains_key(*field) == card.contains_key(*field))
}
