//! The window as every test drives it: a book on a screen of some size, found by the words of the accessibility tree, clicked
//! and typed into until it is still, and read aloud.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{Event, Key, Modifiers, OutputCommand, Role, vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, HarnessBuilder, Node};
use evensip::book::{Book, IngredientId, RecipeId, VersionId};
use evensip::say::Language;
use evensip::swap::Question;
use evensip::ui::counter_area::CounterItem;
use evensip::ui::theme::Appearance;
use evensip::ui::{App, Area, AskedSwap, Opening, UiCommand};
use evensip::workbench::{FilePicker, Home, Shown, Unfiled, Workbench};

use crate::kept_work::{self, PATIENT};
use crate::picture::CpuRenderer;

pub(crate) type Window = Harness<'static, App>;

/// Width and height in points.
pub(crate) type Size = [f32; 2];

pub(crate) const NARROW: Size = [1024.0, 700.0];
pub(crate) const MIDDLE: Size = [1360.0, 860.0];
pub(crate) const WIDE: Size = [1920.0, 1080.0];
/// High enough that everything is in sight: a click goes to a place on the screen.
pub(crate) const TALL: Size = [1360.0, 3400.0];

/// Frames within which a window that nothing happens to is still.
const MOST_FRAMES: u64 = 64;
/// What a window is opened on.
#[must_use]
pub(crate) struct WindowBuilder {
    builder: HarnessBuilder<App>,
    workbench: Workbench,
    path: Option<PathBuf>,
    unsaved_work: Option<PathBuf>,
}

impl WindowBuilder {
    /// The built-in book on a screen of this size.
    pub(crate) fn of(size: Size) -> Self {
        Self {
            builder: Harness::builder()
                .with_size(vec2(size[0], size[1]))
                .with_theme(egui::Theme::Light)
                .with_max_steps(MOST_FRAMES)
                .with_render_cursor(false)
                .renderer(CpuRenderer::default()),
            workbench: Workbench::with_sample().with_patience(PATIENT),
            path: None,
            unsaved_work: None,
        }
    }

    /// A book that is in no file.
    pub(crate) fn with_book(self, book: Book) -> Self {
        let workbench = Workbench::with_book(book, Home::Nowhere(Unfiled::New));
        self.with_workbench(workbench.with_patience(PATIENT))
    }

    /// The book in a file.
    pub(crate) fn with_file(self, path: impl Into<PathBuf>) -> Self {
        let path = Some(path.into());
        Self { path, ..self }
    }

    pub(crate) fn with_workbench(self, workbench: Workbench) -> Self {
        Self { workbench, ..self }
    }

    pub(crate) fn with_picker(self, picker: Arc<dyn FilePicker>) -> Self {
        let workbench = self.workbench.with_picker(picker);
        Self { workbench, ..self }
    }

    /// Keeps unsaved work in this folder.
    pub(crate) fn keeping_work_in(self, folder: impl Into<PathBuf>) -> Self {
        let unsaved_work = Some(folder.into());
        Self {
            unsaved_work,
            ..self
        }
    }

    /// Letters that no font has are boxes: fonts of other scripts are looked for when their letters are there.
    pub(crate) fn with_any_letters(self) -> Self {
        let builder = self.builder.allow_missing_glyphs();
        Self { builder, ..self }
    }

    /// The window in its first frame.
    pub(crate) fn begin(self) -> Window {
        let (workbench, path, unsaved_work) = (self.workbench, self.path, self.unsaved_work);
        let window = self.builder.build_eframe(move |cc| {
            let mut app = App::with_workbench(cc, Opening { path }, workbench);
            if let Some(folder) = unsaved_work {
                app.keep_unsaved_work_in(&folder);
            }
            app
        });
        window.ctx.add_plugin(HandsAtWork::default());
        window
    }

    /// The window when it is still.
    pub(crate) fn open(self) -> Window {
        let mut window = self.begin();
        settle(&mut window);
        window
    }
}

pub(crate) fn window_of(size: Size) -> Window {
    WindowBuilder::of(size).open()
}

pub(crate) fn window() -> Window {
    window_of(MIDDLE)
}

/// A window on an area of work with a drink in hand.
pub(crate) fn window_on(size: Size, area: Area, recipe: &str, version: Option<&str>) -> Window {
    let mut window = window_of(size);
    show(&mut window, recipe, version);
    go(&mut window, area);
    window
}

// ---- Time

/// Runs frames until something holds that threads, the disk or a clock bring about.
pub(crate) fn eventually(window: &mut Window, what: &str, mut holds: impl FnMut(&Window) -> bool) {
    kept_work::eventually(what, || {
        let is_there = holds(window);
        if !is_there {
            window.run();
        }
        is_there
    });
}

/// Chooses the folder for the files of cards, and waits for it: the field begins with the home folder, and the answer of the dialog
/// comes from a thread of its own.
pub(crate) fn choose_folder(window: &mut Window) {
    let usual = text_of(window, "Folder for the files");
    click(window, "Choose the folder for the files");
    eventually(window, "the folder", |window| {
        text_of(window, "Folder for the files") != usual
    });
}

/// Runs frames until nothing moves and nothing is looked for any more.
pub(crate) fn settle(window: &mut Window) {
    window.run();
    if window.state().workbench().is_searching() {
        eventually(window, "still looking", |window| {
            !window.state().workbench().is_searching()
        });
        window.run();
    }
}

// ---- What is in hand

pub(crate) fn book(window: &Window) -> Arc<Book> {
    window.state().workbench().book().clone()
}

/// The recipe and version in hand.
pub(crate) fn shown(window: &Window) -> Shown {
    window.state().view().shown_in(&book(window)).unwrap()
}

pub(crate) fn show(window: &mut Window, recipe: &str, version: Option<&str>) {
    let version = version.map(|version| VersionId::new(version).unwrap());
    window.state_mut().view_mut().show(Shown {
        recipe: RecipeId::new(recipe).unwrap(),
        version,
    });
    settle(window);
}

pub(crate) fn go(window: &mut Window, area: Area) {
    window.state_mut().view_mut().area = area;
    settle(window);
}

/// The keys that lead to the areas of work.
pub(crate) fn area_keys() -> impl Iterator<Item = (Area, egui::KeyboardShortcut)> {
    UiCommand::ALL
        .into_iter()
        .filter_map(|command| match command {
            UiCommand::GoTo(area) => Some((area, command.shortcut())),
            _ => None,
        })
}

pub(crate) fn look(window: &mut Window, appearance: Appearance) {
    window.state_mut().view_mut().appearance = appearance;
    settle(window);
}

pub(crate) fn speak(window: &mut Window, language: &str) {
    window.state_mut().view_mut().language = Language::from_code(language).unwrap();
    settle(window);
}

/// Opens a sheet of the counter.
pub(crate) fn at_the_counter(window: &mut Window, item: CounterItem) {
    window.state_mut().areas_mut().counter.show(item);
    go(window, Area::Counter);
}

/// Asks for one ingredient in place of another, in the recipe in hand as it is written.
pub(crate) fn ask_swap(window: &mut Window, replace: &str, with: &str) {
    let question = Question {
        recipe: shown(window).recipe,
        version: None,
        replace: IngredientId::new(replace).unwrap(),
        with: IngredientId::new(with).unwrap(),
        adjust: None,
    };
    window.state_mut().view_mut().swap = AskedSwap::asking(question);
    settle(window);
}

// ---- Hands

pub(crate) fn press(window: &mut Window, modifiers: Modifiers, key: Key) {
    window.key_press_modifiers(modifiers, key);
    settle(window);
}

pub(crate) fn undo(window: &mut Window) {
    press(window, Modifiers::COMMAND, Key::Z);
}

/// Presses a button.
pub(crate) fn click(window: &mut Window, label: &str) {
    click_on(window, Role::Button, label);
}

pub(crate) fn tick(window: &mut Window, label: &str) {
    click_on(window, Role::CheckBox, label);
}

pub(crate) fn click_on(window: &mut Window, role: Role, label: &str) {
    window.get_by_role_and_label(role, label).click();
    settle(window);
}

/// Opens the menu behind a word and takes one of its words.
pub(crate) fn choose(window: &mut Window, menu: &str, word: &str) {
    click(window, menu);
    let words = window.get_all_by_role_and_label(Role::Button, word);
    words.last().unwrap().click();
    settle(window);
}

pub(crate) fn is_field(node: &Node<'_>) -> bool {
    let role = node.accesskit_node().role();
    matches!(role, Role::TextInput | Role::MultilineTextInput)
}

fn field<'tree>(window: &'tree Window, label: &'tree str) -> Node<'tree> {
    let called = window.get_all_by_label(label);
    let mut fields = called.filter(is_field);
    let found = fields
        .next()
        .unwrap_or_else(|| panic!("no field `{label}`"));
    assert!(fields.next().is_none(), "two fields `{label}`");
    found
}

/// Gives the keyboard to a field or a button.
pub(crate) fn focus(window: &mut Window, label: &str) {
    window.get_by_label(label).focus();
    settle(window);
}

/// What stands in a field.
pub(crate) fn text_of(window: &Window, label: &str) -> String {
    field(window, label).value().unwrap_or_default()
}

/// Types into whatever has the keyboard.
pub(crate) fn type_on(window: &mut Window, text: &str) {
    window.event(Event::Text(text.to_owned()));
    settle(window);
}

/// Types into a field, which a field of an amount or a figure takes in place of what stood there.
pub(crate) fn type_into(window: &mut Window, label: &str, text: &str) {
    field(window, label).focus();
    settle(window);
    type_on(window, text);
}

/// Types over what stands in a field, wherever the keyboard was before.
pub(crate) fn retype(window: &mut Window, label: &str, text: &str) {
    field(window, label).focus();
    settle(window);
    press(window, Modifiers::COMMAND, Key::A);
    type_on(window, text);
}

/// What hands have done to a window.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Hands {
    /// Presses of a button of the pointer, and fields that were given the keyboard without a key.
    pub(crate) presses: u32,
    /// Keys and chords.
    pub(crate) keys: u32,
    /// Texts, each typed in one go.
    pub(crate) texts: u32,
}

#[derive(Default)]
struct HandsAtWork(Hands);

impl egui::Plugin for HandsAtWork {
    fn debug_name(&self) -> &'static str {
        "hands at work"
    }

    fn input_hook(&mut self, _: &egui::Context, input: &mut egui::RawInput) {
        for event in &input.events {
            match event {
                Event::PointerButton { pressed: true, .. } | Event::AccessKitActionRequest(_) => {
                    self.0.presses += 1;
                }
                Event::Key { pressed: true, .. } => self.0.keys += 1,
                Event::Text(_) => self.0.texts += 1,
                _ => {}
            }
        }
    }
}

/// What hands have done so far.
pub(crate) fn hands(window: &Window) -> Hands {
    window.ctx.plugin::<HandsAtWork>().lock().0
}

// ---- Words

/// What is read aloud of a part of the screen.
pub(crate) fn words_of(node: &Node<'_>) -> String {
    let words = node.accesskit_node().label().or_else(|| node.value());
    words.unwrap_or_default()
}

/// What is read aloud of the whole screen.
pub(crate) fn read_aloud(window: &Window) -> Vec<String> {
    let mut said = Vec::new();
    for node in window.root().children_recursive() {
        let accessible = node.accesskit_node();
        // What stands in a field is a person's.
        let value = accessible.value().filter(|_| !is_field(&node));
        let placeholder = accessible.placeholder().map(str::to_owned);
        said.extend(
            [accessible.label(), value, placeholder]
                .into_iter()
                .flatten(),
        );
    }
    said
}

/// Whether a part of the screen has these words in it.
pub(crate) fn says(window: &Window, words: &str) -> bool {
    window.query_all_by_label_contains(words).next().is_some()
}

/// Whether a part of the screen is called exactly so.
pub(crate) fn has(window: &Window, label: &str) -> bool {
    window.query_all_by_label(label).next().is_some()
}

/// The sentences that have these words in them.
pub(crate) fn rows(window: &Window, words: &str) -> Vec<String> {
    let found = window.query_all_by_label_contains(words);
    found.map(|node| words_of(&node)).collect()
}

/// The sentence that begins so.
pub(crate) fn row(window: &Window, begin: &str) -> String {
    let mut rows = rows(window, begin).into_iter();
    rows.find(|row| row.starts_with(begin))
        .unwrap_or_else(|| panic!("no row begins with `{begin}`"))
}

/// What the button of a table puts on the clipboard.
pub(crate) fn copied(window: &mut Window, table: &str) -> Vec<Vec<String>> {
    let button = format!("Copy the table: {table}");
    window.get_by_label(&button).click();
    window.step();
    let commands = &window.output().platform_output.commands;
    let text = commands.iter().find_map(|command| match command {
        OutputCommand::CopyText(text) => Some(text.clone()),
        _ => None,
    });
    let text = text.unwrap_or_else(|| panic!("{table} is not copied"));
    settle(window);
    text.lines()
        .map(|line| line.split('\t').map(str::to_owned).collect())
        .collect()
}
