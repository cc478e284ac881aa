//! The card that is looked at, and those that are being written.

use std::sync::Arc;

use super::derived::BookStamp;
use super::exporting::{CardPreview, Export, PreviewOrder, Previewing, SharedFonts};
use crate::say::Language;

/// A preview as far as it is there.
#[derive(Clone, Debug, Default)]
pub struct PreviewShown {
    /// The last one that was made, or why there is none.
    pub preview: Option<Result<Arc<CardPreview>, String>>,
    /// Whether it is of what was asked for, and of the book as it is.
    pub is_current: bool,
}

/// Of which state of the book, what, and in which language a reason is told why there is none.
pub(super) type Asked = (BookStamp, PreviewOrder, Language);

/// Previews and exports of one workbench.
#[derive(Default)]
pub(super) struct CardDesk {
    pub(super) fonts: SharedFonts,
    pub(super) shown: Option<(Asked, Result<Arc<CardPreview>, String>)>,
    pub(super) making: Option<(Asked, Previewing)>,
    pub(super) export: Option<Export>,
}
