//! What the window needs of cards: a preview, an export that runs, a list that is being brought in.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::derived::BookStamp;
use super::exporting::{
    CardPreview, Export, ExportOrder, ExportState, PreviewOrder, Previewing, SharedFonts,
};
use super::open_book::{Message, Workbench};
use crate::book_file;
use crate::exchange::{ForeignRecipe, ReadRecipe, read_json_ld, read_recipe};

/// A file that is being brought in.
#[derive(Clone, Debug, PartialEq)]
pub struct ListInHand {
    /// Where it is.
    pub path: PathBuf,
    /// What stands in it.
    pub content: ListContent,
}

/// What a file that is brought in holds, by the ending of its name.
#[derive(Clone, Debug, PartialEq)]
pub enum ListContent {
    /// A table: the bytes, for the delimiter is still to be chosen.
    Table(Arc<Vec<u8>>),
    /// A schema.org recipe, or why it is none.
    Recipe(Result<Arc<ReadRecipe>, String>),
    /// A recipe of another shop, or why it is none.
    OtherShop(Result<Arc<ForeignRecipe>, String>),
}

/// A preview as far as it is there.
#[derive(Clone, Debug, Default)]
pub struct PreviewShown {
    /// The last one that was made, or why there is none.
    pub preview: Option<Result<Arc<CardPreview>, String>>,
    /// Whether it is of what was asked for, and of the book as it is.
    pub is_current: bool,
}

type Asked = (BookStamp, PreviewOrder);

/// Previews, exports and lists of one workbench.
#[derive(Debug, Default)]
pub(super) struct CardDesk {
    fonts: SharedFonts,
    shown: Option<(Asked, Result<Arc<CardPreview>, String>)>,
    making: Option<(Asked, Previewing)>,
    export: Option<Export>,
    list: Option<ListInHand>,
}

impl Workbench {
    /// Sets cards in these fonts.
    #[must_use]
    pub fn with_fonts(mut self, fonts: SharedFonts) -> Self {
        self.cards.fonts = fonts;
        self
    }

    /// The preview of a card. It is made beside the window; until then the last one is shown.
    pub fn card_preview(&mut self, order: &PreviewOrder) -> PreviewShown {
        let asked = (self.stamp(), order.clone());
        if let Some((made, making)) = &self.cards.making
            && let Some(preview) = making.poll()
        {
            self.cards.shown = Some((made.clone(), preview.map(Arc::new)));
            self.cards.making = None;
        }
        let is_current = self
            .cards
            .shown
            .as_ref()
            .is_some_and(|(shown, _)| *shown == asked);
        if !is_current && self.cards.making.is_none() {
            let making = Previewing::start(
                self.book().clone(),
                order.clone(),
                self.cards.fonts.clone(),
                self.wake.clone(),
            );
            self.cards.making = Some((asked, making));
        }
        PreviewShown {
            preview: self
                .cards
                .shown
                .as_ref()
                .map(|(_, preview)| preview.clone()),
            is_current,
        }
    }

    pub(super) fn export_cards(&mut self, order: ExportOrder) {
        let fonts = self.cards.fonts.clone();
        let export = Export::start(self.book().clone(), order, fonts, self.wake.clone());
        self.cards.export = Some(export);
    }

    pub(super) fn stop_export(&mut self) {
        if let Some(export) = &self.cards.export {
            export.cancel();
        }
    }

    /// How far the last export is.
    pub fn export_state(&mut self) -> Option<ExportState> {
        self.cards.export.as_mut().map(Export::state)
    }

    /// Shows a file in the viewer that the system has for it, from where it can be printed.
    pub(super) fn show_file(&mut self, path: &Path) {
        if let Err(error) = open::that_detached(path) {
            self.message = Some(Message::Failed(format!(
                "the system has no program to show {} with ({error}); open it from your folder",
                path.display()
            )));
        }
    }

    pub(super) fn read_list(&mut self, path: PathBuf) {
        match book_file::read_bytes(&path) {
            Ok(bytes) => {
                let content = content_of(&path, bytes);
                self.cards.list = Some(ListInHand { path, content });
            }
            Err(error) => self.message = Some(Message::Failed(error.to_string())),
        }
    }

    pub(super) fn put_list_away(&mut self) {
        self.cards.list = None;
    }

    /// The list that is being brought in.
    pub fn list_in_hand(&self) -> Option<&ListInHand> {
        self.cards.list.as_ref()
    }
}

fn content_of(path: &Path, bytes: Vec<u8>) -> ListContent {
    let ending = path.extension().and_then(|ending| ending.to_str());
    match ending.map(str::to_lowercase).as_deref() {
        Some("json" | "jsonld") => {
            let read = read_json_ld(&String::from_utf8_lossy(&bytes));
            ListContent::Recipe(read.map(Arc::new).map_err(|error| error.to_string()))
        }
        Some("ron") => {
            let parsed = book_file::parse(&String::from_utf8_lossy(&bytes));
            let parsed = parsed.map_err(|problems| {
                let problems: Vec<String> = problems.iter().map(ToString::to_string).collect();
                problems.join("\n")
            });
            let read =
                parsed.and_then(|(book, _)| read_recipe(book).map_err(|error| error.to_string()));
            ListContent::OtherShop(read.map(Arc::new))
        }
        _ => ListContent::Table(Arc::new(bytes)),
    }
}

/// Today, `2026-05-04`, by the clock of the machine.
pub fn today() -> String {
    jiff::ZonedDateTime::now().date().to_string()
}
