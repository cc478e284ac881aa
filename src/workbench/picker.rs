//! Asking the system for a file, apart from the screen so that tests can answer instead.

use crate::say::Speaker;
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, Sender, channel};

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PickRequest {
    /// A book to open.
    Open,
    /// A place to save the book.
    Save,
    /// A price list or a recipe to bring in.
    List,
}

/// Asks a person for a file. Blocks until there is an answer; `None` is "cancelled" or "no dialog to be had".
pub trait FilePicker: Send + Sync {
    /// Asks in the words of a speaker; `beside` is the file that is open.
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
            _ => rfd::FileDialog::new().add_filter(voice.word("pick-kind-book"), &["ron"]),
        };
        if let Some(folder) = beside.and_then(Path::parent) {
            dialog = dialog.set_directory(folder);
        }
        match request {
            PickRequest::Open => dialog.set_title(voice.word("pick-open")).pick_file(),
            PickRequest::List => dialog.set_title(voice.word("pick-list")).pick_file(),
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
    fn pick(&self, _: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        None
    }
}

/// What has become of a question to the picker.
pub(super) enum Polled {
    /// Nobody has answered yet.
    Waiting,
    /// A file, or none when it was cancelled.
    Answered(Option<PathBuf>),
}

/// A question to the picker that is still open.
pub(super) struct Asking {
    pub(super) request: PickRequest,
    answer: Receiver<Option<PathBuf>>,
}

impl Asking {
    /// Asks on a thread of its own and wakes the screen when the answer is there.
    pub(super) fn start(
        picker: std::sync::Arc<dyn FilePicker>,
        request: PickRequest,
        beside: Option<PathBuf>,
        voice: Speaker<'static>,
        wake: std::sync::Arc<dyn Fn() + Send + Sync>,
    ) -> Self {
        let (sender, answer): (Sender<Option<PathBuf>>, _) = channel();
        std::thread::spawn(move || {
            let picked = picker.pick(request, beside.as_deref(), voice);
            // The window may have gone meanwhile; then nobody waits for the answer.
            if sender.send(picked).is_ok() {
                wake();
            }
        });
        Self { request, answer }
    }

    /// The answer, once it is there.
    pub(super) fn poll(&self) -> Polled {
        match self.answer.try_recv() {
            Ok(answer) => Polled::Answered(answer),
            Err(std::sync::mpsc::TryRecvError::Empty) => Polled::Waiting,
            // The dialog broke down: the same as cancelled.
            Err(std::sync::mpsc::TryRecvError::Disconnected) => Polled::Answered(None),
        }
    }
}
