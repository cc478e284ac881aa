//! What the window asks in a sheet of its own: which book, where to save, what becomes of changes, what is approved.

use std::path::PathBuf;

use egui::{Align2, Area, Button, Id, Key, Label, Modal, RichText, TextEdit, Ui, vec2};

use super::Screen;
use super::commands::UiCommand;
use super::keys_sheet;
use super::look_up;
use super::shell::BookInHand;
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::words;
pub(super) use super::words::quiet_ui;
use crate::book::{RecipeId, VersionId};
use crate::quantity::{DisplayUnits, name_as_shown};
use crate::say::Speaker;
use crate::workbench::{Action, Command, FileState, Home, Intent, Message, Sample};

/// A dialog with what has been typed into it.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Dialog {
    /// Which book to open.
    Open {
        /// The typed path.
        path: String,
    },
    /// Where to save.
    SaveAs {
        /// The typed path.
        path: String,
    },
    /// Approve a version.
    Approve(Approving),
    /// Find anything in the book.
    LookUp,
    /// The keys.
    Keys,
}

/// What is asked before a version is approved.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Approving {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
    /// "Hazelthwaite, as written".
    pub name: String,
    /// Who.
    pub by: String,
    /// Why.
    pub reason: String,
    /// Temperature at which it was tasted, as typed.
    pub tasted_at: String,
}

impl Dialog {
    /// Which book to open.
    pub(super) fn open_book(home: &Home) -> Self {
        Self::Open { path: typed(home) }
    }

    /// Where to save.
    pub(super) fn save_as(home: &Home) -> Self {
        Self::SaveAs { path: typed(home) }
    }

    /// Approve the version in hand.
    pub(super) fn approve(screen: &Screen<'_>) -> Self {
        let version = screen
            .shown
            .version
            .as_ref()
            .and_then(|id| screen.recipe.version(id));
        let name = version.map_or("original", |version| &version.name);
        let name = format!("{}, {name}", screen.recipe.name);
        Self::Approve(Approving {
            recipe: screen.recipe.id.clone(),
            version: screen.shown.version.clone(),
            name: name_as_shown(&name).into_owned(),
            by: screen
                .recipe
                .approvals
                .last()
                .map(|last| last.by.clone())
                .unwrap_or_default(),
            reason: String::new(),
            tasted_at: screen
                .units
                .of("°C")
                .digits(screen.balance.drinking_temperature, 1),
        })
    }
}

fn typed(home: &Home) -> String {
    match home {
        Home::File(path) => path.display().to_string(),
        Home::Nowhere(_) => String::new(),
    }
}

/// Shows the dialog that is open, if any.
pub(super) fn dialogs_ui(
    ctx: &egui::Context,
    in_hand: &BookInHand<'_>,
    pending: Option<&Intent>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if let Some(mut dialog) = view.dialog.take() {
        let area = Modal::default_area(Id::unique("dialog"));
        let (area, width) = if dialog == Dialog::LookUp {
            let top = Align2::CENTER_TOP;
            (area.anchor(top, vec2(0.0, look_up::TOP)), look_up::WIDTH)
        } else if dialog == Dialog::Keys {
            (area, keys_sheet::width(ctx.content_rect().width()))
        } else {
            (area, WIDTH)
        };
        let keep = sheet_in(ctx, area, width, |ui| match &mut dialog {
            Dialog::Open { path } => open_ui(ui, path, view, actions),
            Dialog::SaveAs { path } => save_as_ui(ui, path, actions),
            Dialog::Approve(approving) => approve_ui(ui, approving, view.units, actions),
            Dialog::LookUp => look_up::look_up_ui(ui, in_hand.book, view),
            Dialog::Keys => keys_sheet::keys_ui(ui),
        });
        if keep {
            view.dialog = Some(dialog);
        }
    } else if let Some(pending) = pending {
        let stays = sheet(ctx, "unsaved", |ui| {
            unsaved_ui(ui, in_hand, pending, view, actions)
        });
        let answered = actions.iter().any(|action| {
            matches!(
                action,
                Action::Command(Command::SaveThenDo | Command::DiscardThenDo | Command::StayHere)
            )
        });
        if !stays && !answered && view.dialog.is_none() {
            actions.push(Action::Command(Command::StayHere));
        }
    }
}

/// Width of a sheet, in points.
const WIDTH: f32 = 480.0;

/// A sheet over the window; `false` when it should go: the contents say so, Escape, or a click beside it.
fn sheet(ctx: &egui::Context, name: &str, contents: impl FnOnce(&mut Ui) -> bool) -> bool {
    wide_sheet(ctx, name, WIDTH, contents)
}

/// The same with a width of its own, in points.
pub(super) fn wide_sheet(
    ctx: &egui::Context,
    name: &str,
    width: f32,
    contents: impl FnOnce(&mut Ui) -> bool,
) -> bool {
    let area = Modal::default_area(Id::unique(name));
    sheet_in(ctx, area, width, contents)
}

fn sheet_in(
    ctx: &egui::Context,
    area: Area,
    width: f32,
    contents: impl FnOnce(&mut Ui) -> bool,
) -> bool {
    let id = area.layer().id;
    let size_of = || ctx.memory(|memory| memory.area_rect(id).map(|rect| rect.size()));
    let before = size_of();
    let response = Modal::new(id).area(area).show(ctx, |ui| {
        ui.set_width(width.min(ctx.content_rect().width() - 2.0 * grid::FAR));
        egui::Frame::new()
            .inner_margin(egui::Margin::same(12))
            .show(ui, contents)
            .inner
    });
    if size_of() != before {
        // A sheet is placed by the size that it had: without another frame it would jump as soon as the pointer moves, and a
        // click would miss what it was meant for.
        ctx.request_repaint();
    }
    let keep = response.inner;
    keep && !response.should_close()
}

pub(super) fn title_ui(ui: &mut Ui, words: &str) {
    let palette = theme::palette(ui.visuals());
    ui.label(
        RichText::new(words)
            .font(TypeStyle::Heading.font_id())
            .color(palette.text_strong),
    );
    ui.add_space(grid::TIGHT);
}

/// The button that does what the dialog is for.
pub(super) fn main_button_ui(ui: &mut Ui, words: &str, enabled: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let button = Button::new(RichText::new(words).color(palette.on_accent)).fill(palette.accent);
    let response = ui.add_enabled(enabled, button);
    // Enter means this button as long as nothing else has the keyboard.
    if enabled && ui.memory(|memory| memory.focused().is_none()) {
        response.request_focus();
    }
    response.clicked()
}

/// A field for a path that takes the keyboard when the dialog opens; `true` when Enter was pressed in it.
fn path_ui(ui: &mut Ui, path: &mut String, name: &str) -> bool {
    let field = TextEdit::singleline(path)
        .hint_text("/home/me/books/winter.ron")
        .desired_width(f32::INFINITY);
    let response = ui.add(field).accessible_name(name);
    if ui.memory(|memory| memory.focused().is_none()) && !response.lost_focus() {
        response.request_focus();
    }
    response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter))
}

fn path_of(text: &str) -> PathBuf {
    PathBuf::from(text.trim())
}

fn open_ui(ui: &mut Ui, path: &mut String, view: &ViewState, actions: &mut Vec<Action>) -> bool {
    title_ui(ui, "Open a book");
    let mut intent = None;
    let entered = path_ui(ui, path, "Path of the book");
    let has_path = !path.trim().is_empty();
    let mut keep = true;
    ui.horizontal(|ui| {
        if (main_button_ui(ui, "Open", has_path) || entered) && has_path {
            intent = Some(Intent::Open(path_of(path)));
        }
        if ui
            .button("Browse…")
            .on_hover_text("Ask with the dialog of the system, where there is one")
            .clicked()
        {
            actions.push(Action::Command(Command::PickOpen));
            keep = false;
        }
        if ui.button("Cancel").clicked() {
            keep = false;
        }
    });
    if !view.recent.is_empty() {
        ui.add_space(grid::NEAR);
        quiet_ui(ui, "Recent books");
    }
    for recent in &view.recent {
        let button = Button::new(recent.display().to_string())
            .frame_when_inactive(false)
            .truncate();
        if ui.add(button).clicked() {
            intent = Some(Intent::Open(recent.clone()));
        }
    }
    ui.add_space(grid::NEAR);
    quiet_ui(ui, "Samples");
    for sample in Sample::ALL {
        if ui
            .add(Button::new(sample.name(words::speaker(ui.ctx()))).frame_when_inactive(false))
            .clicked()
        {
            intent = Some(Intent::OpenSample(sample));
        }
    }
    if let Some(intent) = intent {
        actions.push(Action::Command(Command::Do(intent)));
        keep = false;
    }
    keep
}

fn save_as_ui(ui: &mut Ui, path: &mut String, actions: &mut Vec<Action>) -> bool {
    title_ui(ui, "Save the book as");
    let entered = path_ui(ui, path, "Path to save to");
    quiet_ui(ui, "A text file; its name ends in .ron");
    let has_path = !path.trim().is_empty();
    let mut keep = true;
    ui.horizontal(|ui| {
        if (main_button_ui(ui, "Save here", has_path) || entered) && has_path {
            actions.push(Action::Command(Command::SaveAs(path_of(path))));
            keep = false;
        }
        if ui
            .button("Browse…")
            .on_hover_text("Ask with the dialog of the system, where there is one")
            .clicked()
        {
            actions.push(Action::Command(Command::PickSave));
            keep = false;
        }
        if ui.button("Cancel").clicked() {
            keep = false;
        }
    });
    keep
}

fn approve_ui(
    ui: &mut Ui,
    approving: &mut Approving,
    units: DisplayUnits,
    actions: &mut Vec<Action>,
) -> bool {
    title_ui(ui, &format!("Approve {}", approving.name));
    quiet_ui(
        ui,
        "Evensip keeps these lines as the standard. Later changes go into a new version.",
    );
    let celsius = units.of("°C");
    let tasted_at = celsius.read(&approving.tasted_at);
    let tasted_name = format!("Tasted at, {}", celsius.symbol);
    let nothing_typed = approving.tasted_at.trim().is_empty();
    let mut entered = false;
    for (name, hint, text) in [
        ("Approved by", "who tasted it", &mut approving.by),
        ("Reason", "why it is right", &mut approving.reason),
        (
            tasted_name.as_str(),
            "leave empty when nobody measured",
            &mut approving.tasted_at,
        ),
    ] {
        ui.add_space(grid::TIGHT);
        quiet_ui(ui, name);
        let field = TextEdit::singleline(text)
            .hint_text(hint)
            .desired_width(f32::INFINITY);
        let response = ui.add(field).accessible_name(name);
        let entered_here = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        entered |= entered_here;
        if ui.memory(|memory| memory.focused().is_none()) && !response.lost_focus() {
            response.request_focus();
        }
    }
    if let Err(error) = &tasted_at
        && !nothing_typed
    {
        let palette = theme::palette(ui.visuals());
        let said = Speaker::without_book().number_error(error);
        ui.label(RichText::new(said).color(palette.off_level));
    }
    let complete = !approving.by.trim().is_empty() && (nothing_typed || tasted_at.is_ok());
    let mut keep = true;
    ui.add_space(grid::NEAR);
    ui.horizontal(|ui| {
        if main_button_ui(ui, "Approve", complete) || entered && complete {
            actions.push(Action::Command(Command::Approve {
                recipe: approving.recipe.clone(),
                version: approving.version.clone(),
                by: approving.by.trim().to_owned(),
                reason: approving.reason.trim().to_owned(),
                tasted_at: tasted_at.ok(),
            }));
            keep = false;
        }
        if ui.button("Cancel").clicked() {
            keep = false;
        }
    });
    keep
}

/// What is asked before changes that no file holds are left, or a book that is still being saved.
fn unsaved_words(in_hand: &BookInHand<'_>, pending: &Intent) -> (String, String) {
    let title = &in_hand.title;
    let next = match pending {
        Intent::Quit => "close the window",
        Intent::New => "begin an empty book",
        Intent::Open(_) | Intent::OpenSample(_) => "open another book",
    };
    if in_hand.file_state == FileState::Saving {
        return (
            format!("“{title}” is still being saved"),
            format!("Evensip will {next} as soon as the book is saved."),
        );
    }
    if in_hand.file_state == FileState::Gone {
        return (
            format!("“{title}” is no longer in its folder"),
            format!(
                "The file was deleted, renamed or moved, so the book is unsaved. Save it again before you {next}?"
            ),
        );
    }
    (
        format!("“{title}” has unsaved changes"),
        format!("Save them before you {next}?"),
    )
}

/// What happens to changes that no file holds.
fn unsaved_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    pending: &Intent,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let (title, question) = unsaved_words(in_hand, pending);
    title_ui(ui, &title);
    ui.add(Label::new(question).wrap());
    // A save that failed is said behind the sheet, too, where it is easily missed.
    let failed = in_hand
        .message
        .filter(|_| in_hand.file_state != FileState::Saving);
    let mut may_save_elsewhere = false;
    if let Some(Message::Failed(reason)) = failed {
        may_save_elsewhere = matches!(in_hand.home, Home::File(_));
        let palette = theme::palette(ui.visuals());
        ui.add_space(grid::TIGHT);
        ui.add(Label::new(RichText::new(reason).color(palette.off_level)).wrap());
    }
    ui.add_space(grid::NEAR);
    let mut keep = true;
    ui.horizontal(|ui| {
        if main_button_ui(ui, "Save", in_hand.file_state != FileState::Saving) {
            match in_hand.home {
                Home::File(_) => actions.push(Action::Command(Command::SaveThenDo)),
                // What waits goes on as soon as the book has a place.
                Home::Nowhere(_) => view.dialog = Some(Dialog::save_as(in_hand.home)),
            }
            keep = false;
        }
        if may_save_elsewhere && ui.button(UiCommand::SaveAs.label()).clicked() {
            view.dialog = Some(Dialog::save_as(in_hand.home));
            keep = false;
        }
        let (words, explanation) = if in_hand.file_state == FileState::Saving {
            (
                "Do not wait",
                "What is being saved might not reach the file",
            )
        } else if in_hand.file_state == FileState::Gone {
            ("Discard", "The whole book will be lost")
        } else {
            ("Discard", "The changes are lost")
        };
        if ui.button(words).on_hover_text(explanation).clicked() {
            actions.push(Action::Command(Command::DiscardThenDo));
            keep = false;
        }
        if ui.button("Cancel").clicked() {
            actions.push(Action::Command(Command::StayHere));
            keep = false;
        }
    });
    keep
}
