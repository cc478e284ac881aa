//! The window: opens the book, runs the frame loop, and keeps what should be there again tomorrow.
//!
//! A frame asks the workbench for what it shows, draws with read-only values, and performs the collected actions last.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use eframe::egui;
use egui::{Context, Ui, ViewportCommand};

use super::commands::{self, UiCommand};
use super::dialogs;
use super::field::Field;
use super::in_order::InOrder;
use super::opening_page::opening_page_ui;
use super::recipe_area;
use super::remembered;
use super::safekeeping;
use super::shell::{self, BookInHand};
use super::start::{Start, window_options};
use super::theme::{self, Appearance};
use super::view_state::{Area, ViewState};
use super::words;
use super::{
    Screen, card_area, compare_area, counter_area, ladder_area, lesson_area, serving_area,
    swap_area,
};
use crate::book::{Book, Finding, Recipe};
use crate::say::{Speaker, say};
use crate::workbench::{
    Action, Command, FilePicker, Home, Intent, Look, Shown, SystemPicker, Unfiled, Workbench,
};

/// The name of the program to the system, and of its folder of data.
pub(super) const APP_ID: &str = "evensip";

/// How the window begins.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Opening {
    /// The book to open; the last one when none is named, else the built-in one.
    pub path: Option<PathBuf>,
}

/// Why there is no window.
#[derive(Debug, thiserror::Error)]
pub enum WindowError {
    /// No display, or one that can't draw.
    #[error("{}", say!(Speaker::without_book(), "shell-no-window", reason: reason))]
    NoWindow {
        /// What the system says.
        reason: String,
    },
}

/// Opens the window and returns when it is closed.
pub fn run(opening: Opening) -> Result<(), WindowError> {
    let start = Start::begin();
    eframe::run_native_ext(
        "Evensip",
        window_options(),
        Some(start.context()),
        Box::new(move |cc| {
            let mut app = start.finish(cc, opening, Arc::new(SystemPicker));
            if let Some(folder) = eframe::storage_dir(APP_ID) {
                app.keep_unsaved_work_in(&folder.join("unsaved"));
            }
            Ok(Box::new(app))
        }),
    )
    .map_err(|error| WindowError::NoWindow {
        reason: without_source_places(&error.to_string()),
    })
}

/// What the system says, without the place in the source of a library that some of its messages begin with
/// ("os error at …/linux/mod.rs:700: …").
fn without_source_places(message: &str) -> String {
    let words: Vec<&str> = message.split_whitespace().collect();
    let is_place = |word: &&str| word.contains(".rs:");
    let Some(at) = words.iter().rposition(is_place) else {
        return message.to_owned();
    };
    let reason = words[at + 1..].join(" ");
    if reason.is_empty() {
        Speaker::without_book()
            .word("shell-no-window-reason")
            .to_owned()
    } else {
        reason
    }
}

/// The program behind the window.
pub struct App {
    workbench: Workbench,
    view: ViewState,
    /// Set once the question about unsaved changes has been answered, so that closing is not asked twice.
    closing: bool,
    /// What was in hand when the window was closed, until the book that it is in has come.
    shown_last: Option<Shown>,
    title: String,
    home: Home,
    /// Where the book was kept when that was last written to the user's data folder.
    remembered_home: Home,
    ctx: Context,
    /// What had the keyboard in the last frame: egui takes it away on Escape before a field hears of the key.
    focused_before: Option<egui::Id>,
    /// When a key or the pointer was last used, seconds by the clock of the window.
    last_input: f64,
}

/// The text cursor stands still when nothing was typed or pointed at for so long, seconds.
const CURSOR_RESTS_AFTER: f64 = 6.0;

impl App {
    /// Keeps unsaved work in this folder from now on, and offers what is there.
    pub fn keep_unsaved_work_in(&mut self, folder: &Path) {
        let workbench = std::mem::take(&mut self.workbench);
        self.workbench = workbench.with_recovery(folder);
    }

    /// The program with another way to ask for files. It waits for a book as long as that takes, so that on a busy machine it
    /// shows the same as on an idle one.
    pub fn with_picker(
        cc: &eframe::CreationContext<'_>,
        opening: Opening,
        picker: Arc<dyn FilePicker>,
    ) -> Self {
        let workbench = Workbench::with_sample()
            .with_picker(picker)
            .with_patience(Duration::from_mins(1));
        Self::with_workbench(cc, opening, workbench)
    }

    /// The window over a workbench, whose book stays on the screen when there is none to open.
    pub fn with_workbench(
        cc: &eframe::CreationContext<'_>,
        opening: Opening,
        workbench: Workbench,
    ) -> Self {
        let mut app = Self::over(&cc.egui_ctx, workbench);
        let last_book = cc
            .storage
            .and_then(|storage| remembered::read(storage, &mut app.view, &app.ctx));
        theme::apply(&app.ctx, app.view.appearance);
        if let Some(path) = opening.path.or(last_book) {
            app.workbench
                .perform(Action::Command(Command::Do(Intent::Open(path))));
        }
        let waits = app.workbench.opening().is_some();
        app.shown_last = app.view.shown.take_if(|_| waits);
        app.home = app.workbench.home().clone();
        app.note_home();
        app
    }

    /// The program as it looks without anything that was kept from the last time.
    pub(super) fn over(ctx: &Context, workbench: Workbench) -> Self {
        theme::install(ctx);
        theme::apply(ctx, Appearance::default());
        ctx.add_plugin(InOrder::default());
        let waker = ctx.clone();
        let workbench = workbench
            .with_wake(Arc::new(move || waker.request_repaint()))
            .with_file_watch();
        Self {
            home: workbench.home().clone(),
            workbench,
            view: ViewState::default(),
            closing: false,
            shown_last: None,
            title: String::new(),
            remembered_home: Home::Nowhere(Unfiled::Called(String::new())),
            ctx: ctx.clone(),
            focused_before: None,
            last_input: 0.0,
        }
    }

    /// The workbench without its window.
    pub(super) fn into_workbench(self) -> Workbench {
        self.workbench
    }

    /// The open book.
    pub fn workbench(&self) -> &Workbench {
        &self.workbench
    }

    /// What is in hand on the screen.
    pub fn view(&self) -> &ViewState {
        &self.view
    }

    /// Sets what is in hand on the screen.
    pub fn view_mut(&mut self) -> &mut ViewState {
        &mut self.view
    }

    pub(super) fn frame(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        if theme::appearance(ui.visuals()) != self.view.appearance {
            theme::apply(&ctx, self.view.appearance);
            ctx.request_repaint();
        }
        words::speak(&ctx, self.view.units, self.view.language);
        self.workbench.speak(words::speaker(&ctx));
        self.let_cursor_rest(&ctx);
        let before = self.workbench.book().clone();
        self.workbench.poll();
        if !Arc::ptr_eq(&before, self.workbench.book()) {
            self.view.forget_book();
            self.view.shown = self.shown_last.take();
        }
        if self.workbench.opening().is_none() {
            self.shown_last = None;
        }
        self.follow_workbench();
        if self.view.area != Area::Lesson {
            lesson_area::leave(&ctx, &mut self.view);
        }
        safekeeping::keep_looking(&ctx, &mut self.workbench);
        let mut actions = Vec::new();
        self.take_outside_events(&ctx, &mut actions);
        self.take_keys(&ctx, &mut actions);
        self.draw(ui, &mut actions);
        self.light_up(&ctx);
        self.perform_all(&ctx, actions);
        self.tell_window(&ctx);
    }

    /// The text cursor blinks while somebody is there: each blink draws the whole window.
    fn let_cursor_rest(&mut self, ctx: &Context) {
        let (now, is_used) = ctx.input(|input| (input.time, !input.events.is_empty()));
        if is_used {
            self.last_input = now;
        }
        let blinks = now - self.last_input < CURSOR_RESTS_AFTER;
        if ctx.global_style().visuals.text_cursor.blink != blinks {
            ctx.all_styles_mut(|style| style.visuals.text_cursor.blink = blinks);
        }
    }

    /// Shows what the workbench or the swap wants shown.
    fn follow_workbench(&mut self) {
        if let Some(shown) = self.workbench.take_show() {
            self.view.show(shown);
        }
        if let Some(version) = self.view.swap.show_version.take()
            && let Some(before) = self.view.shown_in(self.workbench.book())
        {
            self.view.show(Shown {
                recipe: before.recipe,
                version: Some(version),
            });
            self.view.area = Area::Recipe;
        }
        if let Some(focus) = self.workbench.take_focus() {
            counter_area::go_to(&focus, &mut self.view);
            if let Some(recipe) = recipe_area::recipe_of_focus(&focus)
                && self
                    .view
                    .shown_in(self.workbench.book())
                    .is_none_or(|shown| shown.recipe != recipe)
                && self.workbench.book().recipe(&recipe).is_some()
            {
                self.view.show(Shown {
                    recipe,
                    version: None,
                });
            }
            self.view.focus_wanted = Some(focus);
        }
        if *self.workbench.home() != self.home {
            self.note_home();
        }
    }

    fn note_home(&mut self) {
        self.home = self.workbench.home().clone();
        if let Home::File(path) = &self.home {
            self.view.remember_book(path.clone());
        }
    }

    /// What comes from outside the views: the window is to be closed, files are dropped on it.
    fn take_outside_events(&mut self, ctx: &Context, actions: &mut Vec<Action>) {
        let (close_requested, dropped) = ctx.input(|input| {
            let dropped = input
                .raw
                .dropped_files
                .first()
                .map(|file| file.path().to_path_buf());
            (input.viewport().close_requested(), dropped)
        });
        let holds_back = self.workbench.has_unsaved_changes() || self.workbench.is_saving();
        if close_requested && !self.closing && holds_back {
            ctx.send_viewport_cmd(ViewportCommand::CancelClose);
            actions.push(Action::Command(Command::Do(Intent::Quit)));
        }
        if let Some(path) = dropped {
            actions.push(Action::Command(Command::Do(Intent::Open(path))));
        }
        // Saved meanwhile, perhaps under a new name: nothing is lost any more, so what waited goes on.
        if self.workbench.pending().is_some() && !holds_back {
            actions.push(Action::Command(Command::DiscardThenDo));
        }
    }

    /// Whether something stands in the way of the screen: a sheet over it, or a book that is being opened.
    fn asks(&self) -> bool {
        self.workbench.opening().is_some()
            || self.view.dialog.is_some()
            || self.workbench.pending().is_some()
            || safekeeping::asks(&self.workbench, &self.view.safekeeping)
    }

    fn take_keys(&mut self, ctx: &Context, actions: &mut Vec<Action>) {
        let dialog_is_open = self.asks();
        for command in commands::pressed(ctx) {
            if !dialog_is_open {
                self.carry_out(command, actions);
            }
        }
        let focused_before =
            std::mem::replace(&mut self.focused_before, ctx.memory(egui::Memory::focused));
        let nothing_focused = self.focused_before.is_none() && focused_before.is_none();
        if nothing_focused && !dialog_is_open && !egui::Popup::is_any_open(ctx) {
            self.take_keys_without_focus(ctx);
        }
    }

    /// Arrows go to a line even when nothing has the keyboard; Escape goes back to the recipe.
    fn take_keys_without_focus(&mut self, ctx: &Context) {
        let down = commands::pressed_here(ctx, UiCommand::LineBelow);
        if (down || commands::pressed_here(ctx, UiCommand::LineAbove))
            && self.view.area == Area::Recipe
        {
            self.view.focus_wanted = Some(recipe_area::ANY_ROW.to_owned());
        }
        if commands::pressed_here(ctx, UiCommand::Back) {
            if self.view.area == Area::Counter && self.view.counter.step_back() {
                return;
            }
            if self.view.area == Area::Recipe {
                self.view.line_in_hand = None;
            }
            self.view.area = Area::Recipe;
        }
    }

    /// Carries out a command that was asked for by key or menu.
    fn carry_out(&mut self, command: UiCommand, actions: &mut Vec<Action>) {
        let book = self.workbench.book().clone();
        if shell::carry_out(
            command,
            &book,
            &mut self.view,
            self.workbench.home(),
            actions,
        ) {
            return;
        }
        let Some(shown) = self.view.shown_in(&book) else {
            return;
        };
        let balance = self
            .workbench
            .balance(&shown.recipe, shown.version.as_ref());
        if let Some((recipe, balance)) = book.recipe(&shown.recipe).zip(balance) {
            recipe_area::carry_out(
                command,
                recipe,
                &shown,
                &balance.resolved,
                &mut self.view,
                actions,
            );
        }
    }

    fn draw(&mut self, ui: &mut Ui, actions: &mut Vec<Action>) {
        if let Some((path, since)) = self.workbench.opening() {
            opening_page_ui(ui, path, since, &self.workbench.title(), actions);
            return;
        }
        let book = self.workbench.book().clone();
        let findings = self.workbench.findings();
        let shown = self.view.shown_in(&book);
        let shown = shown.as_ref();
        let recipe: Option<Arc<Recipe>> =
            shown.and_then(|shown| book.recipe(&shown.recipe)).cloned();
        let balance = shown.and_then(|shown| {
            self.workbench
                .balance(&shown.recipe, shown.version.as_ref())
        });
        let standard = shown.and_then(|shown| {
            self.workbench
                .standard(&shown.recipe, shown.version.as_ref())
        });
        let swap = (self.view.area == Area::Swap)
            .then(|| swap_area::SwapLooks::take(&mut self.workbench, &self.view.swap));
        let variations = shown.filter(|_| self.view.area == Area::Variations);
        let variations = variations
            .map(|shown| ladder_area::LadderLooks::take(&mut self.workbench, shown))
            .unwrap_or_default();
        let compare = shown.filter(|_| self.view.area == Area::Compare);
        let compare = compare
            .map(|shown| {
                compare_area::CompareLooks::take(&mut self.workbench, shown, &mut self.view)
            })
            .unwrap_or_default();
        let lesson = if self.view.area == Area::Lesson {
            lesson_area::take(&mut self.workbench, &self.view.swap)
        } else {
            Look::default()
        };
        let serving = shown.filter(|_| self.view.area == Area::Serving);
        let serving = serving.and_then(|shown| {
            self.workbench
                .serving(&shown.recipe, shown.version.as_ref())
        });
        let cards = (self.view.area == Area::Cards).then(|| {
            let order = shown.and_then(|shown| self.view.cards.order(shown, self.view.units));
            card_area::card_frame(&mut self.workbench, order.as_ref(), &self.view.cards)
        });
        let lit = self.view.lit.clone();
        let speaker = self.view.speaker(&book);
        let steps = [self.workbench.undo_label(), self.workbench.redo_label()];
        let in_hand = in_hand(&self.workbench, &book, &findings, speaker, &steps);
        let screen = shown.zip(recipe.as_deref()).zip(balance.as_deref()).map(
            |((shown, recipe), balance)| Screen {
                book: &book,
                shown,
                recipe,
                balance,
                standard: standard.as_ref(),
                findings: &findings,
                lens: self.view.lens,
                speaker,
                lit: lit.as_ref(),
            },
        );
        let view = &mut self.view;
        shell::shell_ui(
            ui,
            &in_hand,
            screen.as_ref(),
            view,
            actions,
            |ui, screen, view, actions| match view.area {
                Area::Swap => {
                    let (state, drafts) = (&mut view.swap, &mut view.drafts);
                    let looks = swap.unwrap_or_default();
                    swap_area::swap_area_ui(ui, screen, &looks, state, drafts, actions);
                }
                Area::Variations => {
                    ladder_area::ladder_area_ui(ui, screen, &variations, view, actions);
                }
                Area::Compare => compare_area::compare_area_ui(ui, screen, &compare, view),
                Area::Lesson => lesson_area::lesson_area_ui(ui, screen, &lesson, view, actions),
                Area::Serving => {
                    serving_area::serving_area_ui(ui, screen, serving.as_deref(), view, actions);
                }
                Area::Cards => {
                    let frame = cards.unwrap_or_default();
                    card_area::card_area_ui(ui, screen, &frame, &mut view.cards, actions);
                }
                Area::Recipe | Area::Counter | Area::Findings => {
                    recipe_area::recipe_area_ui(ui, screen, view, actions);
                }
            },
        );
        if !safekeeping::asks_ui(ui.ctx(), &self.workbench, view, actions) {
            dialogs::dialogs_ui(ui.ctx(), &in_hand, self.workbench.pending(), view, actions);
        }
    }

    /// What is lit up follows the pointer by one frame; the frame after a change draws it.
    fn light_up(&mut self, ctx: &Context) {
        let next = self.view.lit_next.take();
        if next != self.view.lit {
            self.view.lit = next;
            ctx.request_repaint();
        }
    }

    fn perform_all(&mut self, ctx: &Context, actions: Vec<Action>) {
        let stamp = self.workbench.stamp();
        for action in actions {
            let travels = matches!(
                action,
                Action::Command(
                    Command::Undo
                        | Command::Redo
                        | Command::RestoreEarlier(_)
                        | Command::TakeTheirs
                        | Command::MergeWithDisk { .. }
                )
            );
            let may_replace = matches!(
                action,
                Action::Command(
                    Command::Do(_)
                        | Command::SaveThenDo
                        | Command::DiscardThenDo
                        | Command::AcceptRecovery
                )
            );
            let before = self.workbench.book().clone();
            self.workbench.perform(action);
            if travels {
                self.view.drafts.clear();
            }
            if may_replace && !Arc::ptr_eq(&before, self.workbench.book()) {
                self.view.forget_book();
            }
        }
        let moved = *self.workbench.home() != self.home;
        if moved
            || self.workbench.stamp() != stamp
            || (self.workbench.wants_to_quit() && !self.closing)
        {
            ctx.request_repaint();
        }
    }

    fn tell_window(&mut self, ctx: &Context) {
        let speaker = words::speaker(ctx);
        let book = self.workbench.title();
        let title = if self.workbench.has_unsaved_changes() {
            say!(speaker, "shell-window-title-unsaved", book: book)
        } else {
            say!(speaker, "shell-window-title", book: book)
        };
        if title != self.title {
            ctx.send_viewport_cmd(ViewportCommand::Title(title.clone()));
            self.title = title;
        }
        if self.workbench.wants_to_quit() && !self.closing {
            self.closing = true;
            ctx.send_viewport_cmd(ViewportCommand::Close);
        }
        // What lies under a sheet gets no keyboard until the sheet has been gone for a frame.
        if ctx.memory(|memory| memory.top_modal_layer().is_some()) {
            if self.view.focus_wanted.is_some() && !self.asks() {
                ctx.request_repaint();
            }
            return;
        }
        if let Some(field) = self
            .view
            .focus_wanted
            .take_if(|field| field.starts_with(FIELD_PREFIX))
        {
            ctx.memory_mut(|memory| memory.request_focus(Field::id(&field)));
        }
    }
}

/// Names of fields that undo goes back to begin so.
const FIELD_PREFIX: &str = "field ";

/// The book with what the frame round every area says of it.
fn in_hand<'frame>(
    workbench: &'frame Workbench,
    book: &'frame Arc<Book>,
    findings: &'frame [Finding],
    speaker: Speaker<'frame>,
    steps: &'frame [Option<String>; 2],
) -> BookInHand<'frame> {
    let [undo, redo] = steps.each_ref().map(Option::as_deref);
    BookInHand {
        book,
        speaker,
        title: workbench.title(),
        unsaved: workbench.has_unsaved_changes(),
        undo,
        redo,
        message: workbench.message(),
        findings,
        home: workbench.home(),
        disk_change: workbench.disk_change(),
        file_state: workbench.file_state(),
        has_left_work: workbench.offered_recovery().is_some(),
    }
}

impl eframe::App for App {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        self.frame(ui);
        // At once: a window that is ended from outside is never asked what it wants to keep.
        if self.remembered_home != self.home
            && self.workbench.opening().is_none()
            && let Some(storage) = frame.storage_mut()
        {
            self.remembered_home = self.home.clone();
            remembered::write(storage, &self.view, &self.home, &self.ctx);
            storage.flush();
        }
    }

    fn save(&mut self, storage: &mut dyn eframe::Storage) {
        if self.workbench.opening().is_some() {
            // What was kept names the book that is on its way.
            return;
        }
        remembered::write(storage, &self.view, self.workbench.home(), &self.ctx);
    }

    /// Which lists are scrolled and which menus are open is not worth keeping; the zoom is kept with the rest.
    fn persist_egui_memory(&self) -> bool {
        false
    }
}
