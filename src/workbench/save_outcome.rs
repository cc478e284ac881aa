//! How the end of a save is told: what is wrong, that nothing is lost, and what can be done.

use std::path::Path;

use super::action::Message;
use super::job::BrokeDown;
use super::keeper::RecoveryState;
use super::open_book::Workbench;
use crate::book_file::{SaveError, Saved};
use crate::say::say;

impl Workbench {
    /// A save has ended whose book is no longer open.
    pub(super) fn say_of_book_left_behind(
        &mut self,
        path: &Path,
        saved: Result<Result<Saved, SaveError>, BrokeDown>,
    ) {
        let path = path.display().to_string();
        let reason = match saved {
            Ok(Ok(_)) => {
                if self.told.message.is_none() {
                    self.told.message =
                        Some(Message::Done(say!(self.voice, "save-done", path: path)));
                }
                return;
            }
            Ok(Err(error)) => self.voice.save_error(&error),
            Err(BrokeDown) => self.voice.word("save-broke-down").to_owned(),
        };
        let speaker = self.voice;
        self.add_failure(&say!(speaker, "save-left-behind", path: path, reason: reason));
    }

    /// A save has failed: what is wrong, that nothing is lost, and what can be done.
    pub(super) fn say_unsaved(&mut self, error: &str, way_out: &str) {
        let speaker = self.voice;
        let kept = match self.recovery_state() {
            RecoveryState::Off | RecoveryState::Empty => speaker.word("kept-here").to_owned(),
            RecoveryState::Waiting => speaker.word("kept-soon").to_owned(),
            RecoveryState::Kept(_) => speaker.word("kept-in-recovery").to_owned(),
            RecoveryState::Failing(reason) => say!(speaker, "kept-nowhere-else", reason: reason),
        };
        let failed = say!(speaker, "save-failed", error: error);
        let way_out = speaker.word(way_out);
        self.told.message = Some(Message::Failed(format!("{failed}\n{kept}\n{way_out}")));
        self.keep_unsaved_work();
    }
}

/// The message on what can be done when nothing more is known.
pub(super) const ELSEWHERE: &str = "way-out-again-or-elsewhere";

/// The message on what can be done about a failed save.
pub(super) fn way_out(error: &SaveError) -> &'static str {
    match error {
        SaveError::NoPermission { .. } | SaveError::NoPermissionInFolder { .. } => {
            "way-out-permission"
        }
        SaveError::ReadOnlyDisk { .. }
        | SaveError::Directory { .. }
        | SaveError::NotAFile { .. } => "way-out-elsewhere",
        SaveError::NoFolder { .. } => "way-out-folder",
        SaveError::DiskFull { .. } => "way-out-room",
        SaveError::TooLong { .. } => "way-out-shorter",
        SaveError::NotFinite { .. } => "way-out-numbers",
        SaveError::ChangedOnDisk { .. } | SaveError::Write { .. } => ELSEWHERE,
    }
}
