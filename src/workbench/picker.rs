//! Asking the system for a file, apart from the screen so that tests can answer instead.

use crate::say::Speaker;
use std::path::{Path, PathBuf};

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PickRequest {
    /// A book to open.
    Open,
    /// A place to save the book.
    Save,
    /// A price list or a recipe to bring in.
    List,
    /// A folder for files.
    Folder,
}

/// Asks a person for a file. Blocks until there is an answer; `None` is "cancelled" or "no dialog to be had".
pub trait FilePicker: Send + Sync {
    /// Whether there may be a dialog at all.
    fn has_dialog(&self) -> bool {
        true
    }

    /// Asks in the words of a speaker; `beside` is the file that is open, for a folder the one that was asked for last.
    fn pick(
        &self,
        request: PickRequest,
        beside: Option<&Path>,
        voice: Speaker<'_>,
    ) -> Option<PathBuf>;
}

/// The dialog of the system.
#[derive(Clone, Copy, Debug, Default)]
pub struct SystemPicker;

impl FilePicker for SystemPicker {
    fn pick(
        &self,
        request: PickRequest,
        beside: Option<&Path>,
        voice: Speaker<'_>,
    ) -> Option<PathBuf> {
        let mut dialog = match request {
            PickRequest::List => rfd::FileDialog::new().add_filter(
                voice.word("pick-kind-list"),
                &["csv", "tsv", "txt", "json", "jsonld", "ron"],
            ),
            PickRequest::Folder => rfd::FileDialog::new(),
            PickRequest::Open | PickRequest::Save => {
                rfd::FileDialog::new().add_filter(voice.word("pick-kind-book"), &["ron"])
            }
        };
        if request == PickRequest::Folder {
            if let Some(folder) = beside.filter(|folder| !folder.as_os_str().is_empty()) {
                dialog = dialog.set_directory(folder);
            }
        } else if let Some(folder) = beside.and_then(Path::parent) {
            dialog = dialog.set_directory(folder);
        }
        match request {
            PickRequest::Open => dialog.set_title(voice.word("pick-open")).pick_file(),
            PickRequest::List => dialog.set_title(voice.word("pick-list")).pick_file(),
            PickRequest::Folder => dialog.set_title(voice.word("pick-folder")).pick_folder(),
            PickRequest::Save => {
                let name = beside
                    .and_then(Path::file_name)
                    .and_then(|name| name.to_str())
                    .unwrap_or("book.ron");
                dialog
                    .set_title(voice.word("pick-save"))
                    .set_file_name(name)
                    .save_file()
            }
        }
    }
}

/// Never has a file: for places without a dialog.
#[derive(Clone, Copy, Debug, Default)]
pub struct NoPicker;

impl FilePicker for NoPicker {
    fn has_dialog(&self) -> bool {
        false
    }

    fn pick(&self, _: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        None
    }
}
