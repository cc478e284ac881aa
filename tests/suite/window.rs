//! The window as tests of several topics drive it: find by the words of the accessibility tree, click, type.

use std::path::PathBuf;
use std::sync::Arc;

use egui::{Key, Modifiers, OutputCommand, Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use evensip::book::{Book, RecipeId, VersionId};
use evensip::ui::{App, Opening};
use evensip::workbench::{NoPicker, Shown};

pub(crate) type Window = Harness<'static, App>;

/// A window of this size with the built-in book, or with the one in a file.
pub(crate) fn window_of(size: [f32; 2], path: Option<PathBuf>) -> Window {
    let mut window = Harness::builder()
        .with_size(vec2(size[0], size[1]))
        .with_max_steps(24)
        .build_eframe(|cc| App::with_picker(cc, Opening { path }, Arc::new(NoPicker)));
    window.run();
    window
}

pub(crate) fn window() -> Window {
    window_of([1360.0, 860.0], None)
}

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
    window.run();
}

pub(crate) fn type_into(window: &mut Window, field: &str, text: &str) {
    window.get_by_label(field).focus();
    window.run();
    window.get_by_label(field).type_text(text);
    window.run();
}

/// Types over what stands in a field, wherever the keyboard was before.
pub(crate) fn retype(window: &mut Window, field: &str, text: &str) {
    window.get_by_label(field).focus();
    window.run();
    press(window, Modifiers::COMMAND, Key::A);
    window.get_by_label(field).type_text(text);
    window.run();
}

pub(crate) fn press(window: &mut Window, modifiers: Modifiers, key: Key) {
    window.key_press_modifiers(modifiers, key);
    window.run();
}

pub(crate) fn click(window: &mut Window, label: &str) {
    window.get_by_role_and_label(Role::Button, label).click();
    window.run();
}

/// Opens the menu behind a word and takes one of its words.
pub(crate) fn choose(window: &mut Window, menu: &str, word: &str) {
    click(window, menu);
    window
        .get_all_by_role_and_label(Role::Button, word)
        .last()
        .unwrap()
        .click();
    window.run();
}

/// Goes on until nothing is looked for any more.
pub(crate) fn settle(window: &mut Window) {
    for _ in 0..12_000 {
        window.run();
        if !window.state().workbench().is_searching() {
            window.run();
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(5));
    }
    panic!("still looking");
}

/// What the button of a table puts on the clipboard.
pub(crate) fn copied(window: &mut Window, table: &str) -> Vec<Vec<String>> {
    window
        .get_by_label(&format!("Copy the table: {table}"))
        .click();
    window.step();
    let commands = &window.output().platform_output.commands;
    let text = commands.iter().find_map(|command| match command {
        OutputCommand::CopyText(text) => Some(text.clone()),
        _ => None,
    });
    let text = text.unwrap_or_else(|| panic!("{table} is not copied"));
    window.run();
    text.lines()
        .map(|line| line.split('\t').map(str::to_owned).collect())
        .collect()
}
