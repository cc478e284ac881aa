//! What the window needs of cards: a preview and an export that runs.

use std::path::Path;
use std::sync::Arc;

use super::action::Message;
use super::card_previews::PreviewShown;
use super::exporting::{Export, ExportOrder, ExportState, PreviewOrder, Previewing, SharedFonts};
use super::open_book::Workbench;
use crate::say::say;

impl Workbench {
    /// Sets cards in these fonts.
    #[must_use]
    pub fn with_fonts(mut self, fonts: SharedFonts) -> Self {
        self.jobs.cards.fonts = fonts;
        self
    }

    /// The preview of a card. It is made beside the window; until then the last one is shown.
    pub fn card_preview(&mut self, order: &PreviewOrder) -> PreviewShown {
        let asked = (self.stamp(), order.clone(), self.voice.language);
        if let Some((made, making)) = &self.jobs.cards.making
            && let Some(preview) = making.poll()
        {
            self.jobs.cards.shown = Some((made.clone(), preview.map(Arc::new)));
            self.jobs.cards.making = None;
        }
        let is_current = self
            .jobs
            .cards
            .shown
            .as_ref()
            .is_some_and(|(shown, _)| *shown == asked);
        if !is_current && self.jobs.cards.making.is_none() {
            let making = Previewing::start(
                self.book().clone(),
                order.clone(),
                self.jobs.cards.fonts.clone(),
                self.voice,
                &self.jobs.wake,
            );
            self.jobs.cards.making = Some((asked, making));
        }
        PreviewShown {
            preview: self
                .jobs
                .cards
                .shown
                .as_ref()
                .map(|(_, preview)| preview.clone()),
            is_current,
        }
    }

    pub(super) fn export_cards(&mut self, order: ExportOrder) {
        let fonts = self.jobs.cards.fonts.clone();
        let export = Export::start(
            self.book().clone(),
            order,
            fonts,
            self.voice,
            &self.jobs.wake,
        );
        self.jobs.cards.export = Some(export);
    }

    pub(super) fn stop_export(&mut self) {
        if let Some(export) = &self.jobs.cards.export {
            export.cancel();
        }
    }

    /// How far the last export is.
    pub fn export_state(&mut self) -> Option<ExportState> {
        self.jobs.cards.export.as_mut().map(Export::state)
    }

    /// Shows a file in the viewer that the system has for it, from where it can be printed.
    pub(super) fn show_file(&mut self, path: &Path) {
        if let Err(error) = open::that_detached(path) {
            let (path, error) = (path.display().to_string(), error.to_string());
            let text = say!(self.voice, "file-no-viewer", path: path, error: error);
            self.told.message = Some(Message::Failed(text));
        }
    }
}
