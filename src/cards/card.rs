//! The document that answers what a card is asked for.

use super::document::Document;
use super::request::{CardError, CardOptions, CardRequest};
use super::{
    batch_sheet, comparison_sheet, counter_card, exercise, ladder_table, menu_matrix,
    training_sheet,
};
use crate::book::Book;

/// The card that is asked for.
pub fn card(
    book: &Book,
    request: &CardRequest,
    options: &CardOptions,
) -> Result<Document, CardError> {
    let speaker = options.speaker(book);
    let mut document = match request {
        CardRequest::Counter(drink) => counter_card::document(speaker, drink)?,
        CardRequest::Training(drink) => training_sheet::document(speaker, drink)?,
        CardRequest::Exercise {
            drink,
            replace,
            with,
        } => exercise::document(speaker, drink, replace, with)?,
        CardRequest::Menu => menu_matrix::document(speaker)?,
        CardRequest::Ladder(drink) => ladder_table::document(speaker, drink)?,
        CardRequest::Comparison(drinks) => comparison_sheet::document(speaker, drinks)?,
        CardRequest::Batch(items) => batch_sheet::document(speaker, items)?,
    };
    document.kind = request.kind();
    document.shop.clone_from(&book.settings.shop);
    document.date.clone_from(&options.date);
    document.language = options.language;
    Ok(document)
}
