//! The window: opens the book, runs the frame loop, and keeps what should be there again tomorrow.
//!
//! A frame asks the workbench for what it shows, draws with read-only values, and performs the collected actions last.

use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use eframe::egui;
use egui::{Context, Ui, ViewportCommand};

use super::Screen;
use super::area::{Area, Navigation};
use super::area_of_work::{Desk, Place};
use super::areas::Areas;
use super::book_in_hand::BookInHand;
use super::commands::{self, UiCommand};
use super::dialog::Dialog;
use super::dialogs;
use super::field::Field;
use super::in_order::InOrder;
use super::look_up::LookUpState;
use super::opening_page::opening_page_ui;
use super::remembered;
use super::safekeeping::{self, SafekeepingState};
use super::shell::{self, ShellState};
use super::theme::{self, Appearance, Marks};
use super::view_state::ViewState;
use super::words;
use crate::book::{Book, Finding};
use crate::edit::Focus;
use crate::say::{Speaker, say};
use crate::swap::Drifted;
use crate::workbench::{
    Action, BalanceOf, Command, FilePicker, FindingsOfBook, Home, Intent, Shown, StandardOf,
    Unfiled, Workbench,
};

/// The name of the program to the system, and of its folder of data.
pub(super) const APP_ID: &str = "evensip";

/// How the window begins.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Opening {
    /// The book to open; the last one when none is named, else the built-in one.
    pub path: Option<PathBuf>,
}

/// The program behind the window.
pub struct App {
    workbench: Workbench,
    view: ViewState,
    areas: Areas,
    shell: ShellState,
    safekeeping: SafekeepingState,
    look_up: LookUpState,
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
    /// The zoom at which the size of the window was kept, until it has that size again.
    window_zoom: Option<f32>,
    /// Whether what has the keyboard is marked.
    marks: Marks,
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
        app.window_zoom = cc.storage.and_then(remembered::window_zoom);
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
            areas: Areas::default(),
            shell: ShellState::default(),
            safekeeping: SafekeepingState::default(),
            look_up: LookUpState::default(),
            closing: false,
            shown_last: None,
            title: String::new(),
            remembered_home: Home::Nowhere(Unfiled::Called(String::new())),
            ctx: ctx.clone(),
            focused_before: None,
            window_zoom: None,
            marks: Marks::default(),
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

    /// What the areas of work remember.
    pub fn areas(&self) -> &Areas {
        &self.areas
    }

    /// Sets what the areas of work remember.
    pub fn areas_mut(&mut self) -> &mut Areas {
        &mut self.areas
    }

    /// Sets what is in hand on the screen.
    pub fn view_mut(&mut self) -> &mut ViewState {
        &mut self.view
    }

    pub(super) fn frame(&mut self, ui: &mut Ui) {
        let ctx = ui.ctx().clone();
        self.restore_size(&ctx);
        self.marks = ctx.input(|input| self.marks.after(&input.events));
        let look = (self.view.appearance, self.marks);
        if (theme::appearance(ui.visuals()), theme::marks(ui.visuals())) != look {
            theme::apply_with(&ctx, look.0, look.1);
            ui.set_style(ctx.global_style());
            ctx.request_repaint();
        }
        words::speak(&ctx, self.view.speaker(self.workbench.book()));
        self.workbench.speak(words::speaker(&ctx));
        self.let_cursor_rest(&ctx);
        let before = self.workbench.book().clone();
        self.workbench.poll();
        if !Arc::ptr_eq(&before, self.workbench.book()) {
            self.forget_book();
            self.view.shown = self.shown_last.take();
        }
        if self.workbench.opening().is_none() {
            self.shown_last = None;
        }
        self.follow_workbench();
        safekeeping::keep_looking(&ctx, &mut self.workbench);
        let mut actions = Vec::new();
        self.take_outside_events(&ctx, &mut actions);
        self.take_keys(&ctx, &mut actions);
        self.lead(&ctx);
        self.draw(ui, &mut actions);
        self.light_up(&ctx);
        self.perform_all(&ctx, actions);
        self.tell_window(&ctx);
    }

    /// Forgets what belongs to a book that is no longer open.
    fn forget_book(&mut self) {
        self.view.forget_book();
        self.safekeeping.forget_book();
        self.look_up = LookUpState::default();
        for area in self.areas.all() {
            area.forget_book();
        }
    }

    /// Makes the window as large as it was: its size was kept in points of the zoom that it had.
    fn restore_size(&mut self, ctx: &Context) {
        let Some(zoom) = self.window_zoom.take() else {
            return;
        };
        let is_free = ctx.input(|input| {
            let window = input.viewport();
            window.maximized != Some(true) && window.fullscreen != Some(true)
        });
        if is_free && (zoom - 1.0).abs() > 1e-3 {
            let size = ctx.content_rect().size() * zoom;
            ctx.send_viewport_cmd(ViewportCommand::InnerSize(size));
        }
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

    /// Shows what the workbench wants shown.
    fn follow_workbench(&mut self) {
        if let Some(shown) = self.workbench.take_show() {
            self.view.show(shown);
        }
        if let Some(focus) = self.workbench.take_focus() {
            let (book, view) = (self.workbench.book(), &mut self.view);
            self.areas.go_to(focus, book, view);
        }
        if self.workbench.take_wants_typed_path() {
            self.view.dialog = Some(Dialog::save_as(self.workbench.home()));
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
            || safekeeping::asks(&self.workbench, &self.safekeeping)
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
            let shown = self.view.shown_in(self.workbench.book());
            self.view.focus_wanted = shown.map(|shown| Focus::AnyRow(shown.recipe));
        }
        if commands::pressed_here(ctx, UiCommand::Back) {
            let area = self.areas.of(self.view.area);
            if !area.step_back(&mut self.view) {
                self.view.area = Area::Recipe;
            }
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
        let (view, areas) = (&mut self.view, &mut self.areas);
        with_drink(&self.workbench, view, &book, |_, drink, view| {
            if let Some(drink) = drink {
                let mut areas = areas.all().into_iter();
                areas.any(|area| area.carry_out(command, drink, view, actions));
            }
        });
    }

    fn draw(&mut self, ui: &mut Ui, actions: &mut Vec<Action>) {
        if let Some((path, since)) = self.workbench.opening() {
            opening_page_ui(ui, path, since, &self.workbench.title(), actions);
            return;
        }
        let book = self.workbench.book().clone();
        let front = self.view.area;
        for area in self.areas.all_but(front) {
            area.leave(ui.ctx(), &mut self.view);
        }
        let shown = self.view.shown_in(&book);
        let area = self.areas.of(front);
        area.look(&mut self.workbench, shown.as_ref(), &mut self.view);
        let beside = shown
            .as_ref()
            .filter(|_| area.place() == Place::BesideTheLevel);
        self.shell.look(&mut self.workbench, beside);
        let findings = self.workbench.answers().to(&FindingsOfBook);
        let drifted = self.workbench.drifted().found.unwrap_or_default();
        let speaker = self.view.speaker(&book);
        let steps = [self.workbench.undo_label(), self.workbench.redo_label()];
        let (shell, look_up) = (&mut self.shell, &mut self.look_up);
        let safekeeping = &mut self.safekeeping;
        with_drink(
            &self.workbench,
            &mut self.view,
            &book,
            |workbench, drink, view| {
                let found = (&findings[..], &drifted[..]);
                let in_hand = &in_hand(workbench, &book, found, speaker, &steps);
                let desk = Desk { in_hand, drink };
                shell::shell_ui(ui, desk, area, shell, view, actions);
                if !safekeeping::asks_ui(ui.ctx(), workbench, safekeeping, view, actions) {
                    let pending = workbench.pending();
                    dialogs::dialogs_ui(ui.ctx(), in_hand, pending, look_up, view, actions);
                }
            },
        );
        self.lead(ui.ctx());
    }

    /// Leads where somebody wanted to be led in this frame.
    fn lead(&mut self, ctx: &Context) {
        for to in std::mem::take(&mut self.view.navigation) {
            self.safekeeping.go(&to);
            if to == Navigation::LookUp {
                self.look_up.open();
            }
            for area in self.areas.all() {
                area.go(&to);
            }
            ctx.request_repaint();
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
                self.forget_book();
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
        // Who has the screen read to them hears which window this is.
        ctx.accesskit_node_builder(egui::accesskit_root_id(), |node| {
            node.set_label(self.title.clone());
        });
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
            .take_if(|focus| !is_taken_by_a_row(focus))
        {
            ctx.memory_mut(|memory| memory.request_focus(Field::id(&field)));
        }
    }
}

/// Hands on the drink in hand, as it is balanced now; an empty book has none.
fn with_drink(
    workbench: &Workbench,
    view: &mut ViewState,
    book: &Arc<Book>,
    then: impl FnOnce(&Workbench, Option<&Screen<'_>>, &mut ViewState),
) {
    let Some(shown) = view.shown_in(book) else {
        return then(workbench, None, view);
    };
    let answers = workbench.answers();
    let balance = answers.to(&BalanceOf(shown.clone()));
    let standard = answers.to(&StandardOf(shown.clone()));
    let findings = answers.to(&FindingsOfBook);
    let lit = view.lit.clone();
    let recipe = book.recipe(&shown.recipe).cloned();
    let speaker = view.speaker(book);
    let drink = recipe.zip(balance);
    let drink = drink.as_ref().map(|(recipe, balance)| Screen {
        book,
        answers,
        shown: &shown,
        recipe,
        balance,
        standard: standard.as_deref(),
        findings: &findings,
        lens: view.lens,
        speaker,
        lit: lit.as_ref(),
    });
    then(workbench, drink.as_ref(), view);
}

/// Whether what is there takes the keyboard itself when it is drawn: a long list draws what is in sight.
fn is_taken_by_a_row(focus: &Focus) -> bool {
    matches!(
        focus,
        Focus::AnyRow(_) | Focus::Row(..) | Focus::Approval(..)
    )
}

/// The book with what the frame round every area says of it.
fn in_hand<'frame>(
    workbench: &'frame Workbench,
    book: &'frame Arc<Book>,
    (findings, drifted): (&'frame [Finding], &'frame [Drifted]),
    speaker: Speaker<'frame>,
    steps: &'frame [Option<String>; 2],
) -> BookInHand<'frame> {
    let [undo, redo] = steps.each_ref().map(Option::as_deref);
    BookInHand {
        book,
        answers: workbench.answers(),
        speaker,
        title: workbench.title(),
        unsaved: workbench.has_unsaved_changes(),
        undo,
        redo,
        message: workbench.message(),
        findings,
        drifted,
        home: workbench.home(),
        saved: workbench.saved_book(),
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
