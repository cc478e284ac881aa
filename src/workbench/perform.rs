//! Carries out what the screen wants done, and takes what has come meanwhile.

use std::time::Duration;

use super::action::{Action, Command, Home, Intent, Message, Sample, Shown, Unfiled};
use super::document::Document;
use super::job::{BrokeDown, Job};
use super::open_book::Workbench;
use super::picker::PickRequest;
use crate::book::{Approval, Book, ItemId, RecipeId, Settings, VersionId, resolve};
use crate::book_file;
use crate::edit::{Edit, Focus};
use crate::say::say;

/// A dialog that ends without an answer within this time was never there.
const NO_DIALOG: Duration = Duration::from_millis(250);

impl Workbench {
    /// Does what the screen wants.
    pub fn perform(&mut self, action: Action) {
        match action {
            Action::Edit { edits, focus } => self.edit(edits, focus),
            Action::Command(command) => self.command(command),
        }
    }

    /// Takes what has come meanwhile: an answer of the file dialog, the end of a save, a change of the file by another
    /// program. Called once a frame.
    pub fn poll(&mut self) {
        self.poll_opening(Duration::ZERO);
        self.poll_file();
        self.poll_left_work(Duration::ZERO);
        self.poll_recovery();
        self.poll_earlier();
        self.poll_picker();
        self.poll_list(Duration::ZERO);
        self.poll_taking(Duration::ZERO);
    }

    fn poll_picker(&mut self) {
        let ended = Job::take_ended(&mut self.jobs.asking, Duration::ZERO);
        match ended {
            Some((PickRequest::Open, Ok(Some(path)))) => self.intend(Intent::Open(path)),
            Some((PickRequest::Save, Ok(Some(path)))) => self.save_as_picked(path),
            Some((PickRequest::Folder, Ok(Some(path)))) => self.told.folder = Some(path),
            Some((PickRequest::List, Ok(Some(path)))) => self.read_list(path),
            // The system has no dialog: nobody cancels one so soon.
            Some((PickRequest::Save, Ok(None) | Err(BrokeDown)))
                if self
                    .told
                    .asked
                    .is_some_and(|since| since.elapsed() < NO_DIALOG) =>
            {
                self.told.wants_typed_path = true;
                (self.jobs.wake)();
            }
            // Cancelled; a dialog that broke down is the same.
            Some((_, Ok(None) | Err(BrokeDown))) | None => {}
        }
    }

    fn command(&mut self, command: Command) {
        match command {
            Command::Undo | Command::Redo => self.travel(command == Command::Undo),
            Command::Save => self.save(),
            Command::SaveAs(path) => self.save_as_asking(path),
            Command::ReplaceFile => self.replace_file(),
            Command::LeaveFile => self.disk.replacing = None,
            Command::PickOpen => self.ask(PickRequest::Open),
            Command::PickSave => self.ask(PickRequest::Save),
            Command::PickFolder(from) => self.ask_beside(PickRequest::Folder, Some(from)),
            Command::Do(intent) => self.intend(intent),
            Command::StopOpening => self.stop_opening(),
            Command::SaveThenDo => {
                if !self.is_saving() {
                    self.save();
                }
                if !self.has_unsaved_changes()
                    && !self.is_saving()
                    && let Some(intent) = self.told.pending.take()
                {
                    self.carry_out(intent);
                }
            }
            Command::DiscardThenDo => {
                if let Some(intent) = self.told.pending.take() {
                    self.carry_out(intent);
                }
            }
            Command::StayHere => self.told.pending = None,
            Command::Withdraw(focus) => {
                let before = self.book().clone();
                if let Some(edits) = self.document.history.withdraw(&focus) {
                    self.show_where(&edits);
                    self.note_change(&before);
                }
            }
            Command::CloseStep => self.document.history.close_step(),
            Command::StopSearching => self.stop_searching(),
            Command::SearchAgain => self.search_again(),
            Command::DismissMessage => self.told.message = None,
            Command::Approve {
                recipe,
                version,
                by,
                reason,
                tasted_at,
            } => {
                self.approve(&recipe, version, by, reason, tasted_at);
            }
            Command::GoBackToApproval { recipe, number } => {
                self.go_back_to_approval(&recipe, number);
            }
            Command::ListEarlier => self.list_earlier(),
            Command::LookAtEarlier(path) => self.look_at_earlier(path),
            Command::RestoreEarlier(path) => self.restore_earlier(&path),
            Command::TakeTheirs => self.take_theirs(),
            Command::KeepMineAsCopy => self.keep_mine_as_copy(),
            Command::MergeWithDisk { take_theirs } => self.merge_with_disk(&take_theirs),
            Command::OverwriteDisk => self.overwrite_disk(),
            Command::LeaveDiskChange => self.leave_disk_change(),
            Command::AcceptRecovery => self.accept_recovery(),
            Command::DiscardRecovery => self.discard_recovery(),
            Command::ExportCards(order) => self.export_cards(order),
            Command::StopExport => self.stop_export(),
            Command::ShowFile(path) => self.show_file(&path),
            Command::ReadList(path) => self.read_list(path),
            Command::PickList => self.ask(PickRequest::List),
            Command::TakeList(taking) => self.take_list(taking),
            Command::PutListAway => self.put_list_away(),
        }
    }

    /// Takes the last step back, or repeats the one that was taken back, and goes to where that was.
    fn travel(&mut self, is_undo: bool) {
        let before = self.book().clone();
        let next = if is_undo {
            self.document.history.next_undo()
        } else {
            self.document.history.next_redo()
        };
        let edits = next.map(|step| step.edits.clone()).unwrap_or_default();
        self.told.focus = if is_undo {
            self.document.history.undo()
        } else {
            self.document.history.redo()
        };
        // A step all over the book was at none of its drinks.
        if self.told.focus != Some(Focus::Book) {
            self.show_where(&edits);
        }
        self.note_change(&before);
    }

    /// Shows the version that edits were about; in place of one that they had added and that is gone again, what it was built
    /// on.
    fn show_where(&mut self, edits: &[Edit]) {
        let book = self.book();
        let shown = edits.iter().find_map(|edit| {
            let (recipe, version, else_shown) = match edit {
                Edit::AddVersion { recipe, version } => {
                    (recipe, Some(&version.id), Some(version.builds_on.clone()))
                }
                Edit::Change {
                    recipe, version, ..
                }
                | Edit::SetState {
                    recipe, version, ..
                } => (recipe, version.as_ref(), None),
                Edit::RenameVersion {
                    recipe, version, ..
                }
                | Edit::RemoveVersion { recipe, version } => (recipe, Some(version), None),
                _ => return None,
            };
            let known = book.recipe(recipe)?;
            let is_there = version.is_none_or(|version| known.version(version).is_some());
            Some(Shown {
                recipe: recipe.clone(),
                version: if is_there {
                    version.cloned()
                } else {
                    else_shown?
                },
            })
        });
        self.told.show = shown.or(self.told.show.take());
    }

    fn approve(
        &mut self,
        id: &RecipeId,
        version: Option<VersionId>,
        by: String,
        reason: String,
        tasted_at: Option<f64>,
    ) {
        let Some(recipe) = self.book().recipe(id) else {
            return;
        };
        let resolved = resolve(recipe, version.as_ref()).0;
        let date = jiff::ZonedDateTime::now().date().to_string();
        let approval = Approval {
            version,
            date,
            by,
            reason,
            tasted_at,
            resolved,
            tasted_with: None,
        };
        self.edit(
            vec![Edit::Approve {
                recipe: id.clone(),
                approval,
            }],
            Focus::Item(ItemId::Recipe(id.clone())),
        );
        self.document.history.close_step();
    }

    fn go_back_to_approval(&mut self, id: &RecipeId, number: usize) {
        let voice = self.voice;
        let name = |approval: &Approval| say!(voice, "version-as-approved", day: &approval.date);
        let Some(version) = self
            .book()
            .recipe(id)
            .and_then(|recipe| recipe.version_like_approval(number, name))
        else {
            return;
        };
        self.told.show = Some(Shown {
            recipe: id.clone(),
            version: Some(version.id.clone()),
        });
        self.edit(
            vec![Edit::AddVersion {
                recipe: id.clone(),
                version,
            }],
            Focus::Item(ItemId::Recipe(id.clone())),
        );
        self.document.history.close_step();
    }

    pub(super) fn intend(&mut self, intent: Intent) {
        if self.has_unsaved_changes() || self.is_saving() {
            self.told.pending = Some(intent);
        } else {
            self.carry_out(intent);
        }
    }

    fn carry_out(&mut self, intent: Intent) {
        match intent {
            Intent::Open(path) => self.open(path),
            Intent::OpenSample(sample) => self.open_sample(sample),
            Intent::New => {
                let settings = Settings {
                    shop: self.voice.word("new-shop").to_owned(),
                    ..Settings::default()
                };
                let book = Book {
                    settings,
                    ..Book::default()
                };
                self.replace(Document::new(book, Home::Nowhere(Unfiled::New), false));
            }
            Intent::Quit => {
                // Saved or given up: there is nothing to bring back.
                self.drop_unsaved_work();
                self.told.quit = true;
            }
        }
    }

    pub(super) fn open_sample(&mut self, sample: Sample) {
        match book_file::parse(sample.text()) {
            Ok((book, _)) => {
                let home = Home::Nowhere(Unfiled::Sample(sample));
                self.replace(Document::new(book, home, false));
            }
            Err(problems) => {
                let said = self.voice.load_problems(&problems);
                self.told.message = Some(Message::Failed(said));
            }
        }
    }
}
