//! How the end of a save is told: what is wrong, that nothing is lost, and what can be done.

use std::path::Path;

use super::keeper::RecoveryState;
use super::open_book::{Message, Workbench};
use crate::book_file::{SaveError, Saved};
use crate::say::Speaker;

impl Workbench {
    /// A save has ended whose book is no longer open.
    pub(super) fn say_of_book_left_behind(
        &mut self,
        path: &Path,
        saved: Option<Result<Saved, SaveError>>,
    ) {
        let path = path.display();
        let reason = match saved {
            Some(Ok(_)) => {
                if self.message.is_none() {
                    self.message = Some(Message::Done(format!("saved to {path}")));
                }
                return;
            }
            Some(Err(error)) => Speaker::without_book().save_error(&error),
            None => "the save broke down".to_owned(),
        };
        self.add_failure(&format!(
            "the book that was open before was not saved to {path}: {reason}"
        ));
    }

    /// A save has failed: what is wrong, that nothing is lost, and what can be done.
    pub(super) fn say_unsaved(&mut self, error: &str, way_out: &str) {
        let kept = match self.recovery_state() {
            RecoveryState::Off | RecoveryState::Empty => "the changes are still here.".to_owned(),
            RecoveryState::Waiting => {
                "the changes are still here and go into the recovery file now.".to_owned()
            }
            RecoveryState::Kept(_) => {
                "the changes are still here and in the recovery file.".to_owned()
            }
            RecoveryState::Failing(reason) => format!(
                "the changes are still here. They are nowhere else, so do not close the window: {reason}"
            ),
        };
        self.message = Some(Message::Failed(format!(
            "Not saved: {error}\nNothing is lost: {kept}\n{way_out}"
        )));
        self.keep_unsaved_work();
    }
}

/// What can be done when nothing more is known.
pub(super) const ELSEWHERE: &str = "Save once more, or use “Save as…” for another place.";

/// What can be done about a failed save.
pub(super) fn way_out(error: &SaveError) -> &'static str {
    match error {
        SaveError::NoPermission { .. } | SaveError::NoPermissionInFolder { .. } => {
            "Use “Save as…” for another place, or ask whoever looks after this computer for permission."
        }
        SaveError::ReadOnlyDisk { .. }
        | SaveError::Directory { .. }
        | SaveError::NotAFile { .. } => "Use “Save as…” for another place.",
        SaveError::NoFolder { .. } => {
            "Bring the folder back and save once more, or use “Save as…” for another place."
        }
        SaveError::DiskFull { .. } => {
            "Make room and save once more, or use “Save as…” for another disk."
        }
        SaveError::TooLong { .. } => "Take something out of the book and save once more.",
        SaveError::NotFinite { .. } => "Type numbers in their place and save once more.",
        SaveError::ChangedOnDisk { .. } | SaveError::Write { .. } => ELSEWHERE,
    }
}
