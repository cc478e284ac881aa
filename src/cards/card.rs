//! The document that answers what a card is asked for.

use super::document::Document;
use super::recipe_blocks::confirmation;
use super::request::{CardError, CardOptions, CardRequest};
use super::{
    batch_sheet, blind_sheets, comparison_sheet, counter_card, exercise, figures_sheet,
    ladder_table, matrix_sheet, menu_matrix, training_sheet,
};
use crate::book::Book;
use crate::say::Untranslated;

/// The card that is asked for. Texts of the book are printed in its language where they have words in it; the document lists
/// those that have none.
pub fn card(
    book: &Book,
    request: &CardRequest,
    options: &CardOptions,
) -> Result<Document, CardError> {
    let untranslated = Untranslated::default();
    let speaker = options.speaker(book).translating(&untranslated);
    let mut document = match request {
        CardRequest::Counter(drink) => counter_card::document(speaker, drink)?,
        CardRequest::Training(drink) => training_sheet::document(speaker, drink)?,
        CardRequest::Exercise(swap) => exercise::document(speaker, swap)?,
        CardRequest::Answers(swap) => exercise::answers(speaker, swap)?,
        CardRequest::Menu(on_menu) => menu_matrix::document(speaker, *on_menu)?,
        CardRequest::Figures(on_menu) => figures_sheet::document(speaker, *on_menu)?,
        CardRequest::Ladder(drink) => ladder_table::document(speaker, drink)?,
        CardRequest::Matrix(drink) => matrix_sheet::document(speaker, drink)?,
        CardRequest::Comparison(drinks) => comparison_sheet::document(speaker, drinks)?,
        CardRequest::Batch(items) => batch_sheet::document(speaker, items)?,
        CardRequest::Scores(tasting) => blind_sheets::scores(speaker, tasting)?,
        CardRequest::Pouring(tasting) => blind_sheets::pouring(speaker, tasting)?,
    };
    document.kind = request.kind();
    document.shop.clone_from(&book.settings.shop);
    document.date.clone_from(&options.date);
    document.language = options.language;
    document.confirmation = confirmation(&speaker).cloned();
    document.untranslated = untranslated.into_texts();
    Ok(document)
}
