//! What leaves the workbench: one layout model of a card, made from the book, and a writer for each format.
//!
//! [`card`] turns a [`CardRequest`] into a [`Document`], which holds every word that is printed and no coordinate. The
//! writers ([`html`], [`markdown`], [`csv`], [`json`], [`pdf`]) turn documents into bytes; the PDF and the preview of the
//! window are drawn from the same [`Page`]s. Nothing here touches the disk (the fonts of the machine are looked up by the
//! text layout) or asks a clock: paths and dates are given.

mod approval_words;
mod batch_sheet;
mod blind_sheets;
mod card;
mod comparison_sheet;
mod counter_card;
mod csv;
mod document;
mod exercise;
mod figure_words;
mod figures_sheet;
mod file_name;
mod html;
mod json;
mod json_ld;
mod ladder_table;
mod markdown;
mod matrix_sheet;
mod menu_figures;
mod menu_matrix;
mod pages;
mod pdf;
mod pdf_tags;
mod picture;
mod recipe_blocks;
mod recognised;
mod request;
mod training_sheet;

pub use card::card;
pub use csv::{csv, neutral_cell};
pub use document::{
    Align, Block, CardKind, CautionLine, Column, Document, Fact, Orientation, StageSteps, StepRow,
    Table,
};
pub use figure_words::{figure_words, unit_of};
pub use file_name::file_name;
pub use html::html;
pub use json::json;
pub use json_ld::{JsonLdRecipe, json_ld};
pub use markdown::markdown;
pub use menu_figures::{MenuRow, menu_figures, menu_figures_watched};
pub use menu_matrix::MOST_ON_MENU;
pub use pages::{
    Element, Fonts, GlyphRun, Ink, Mark, MissingCharacter, Page, Paper, Part, PlacedGlyph, RowKind,
    Text, Typesetter, reading,
};
pub use pdf::{PdfError, pdf};
pub use picture::{Picture, picture};
pub use recognised::is_card_like;
pub use request::{
    AskedOfTasters, BatchItem, BlindTasting, CardError, CardOptions, CardRequest, Drink, OnMenu,
    TaughtSwap, drinks_of_menu,
};
