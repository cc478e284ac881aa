//! What days that are played whole have in common: going through a sheet by Enter, answers to the dialogs of the system, and what
//! each part of the day takes.

#![allow(clippy::print_stdout, reason = "the counts are the finding")]

use std::path::{Path, PathBuf};

use egui::{Key, Modifiers};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::say::Speaker;
use evensip::workbench::{FilePicker, PickRequest};

use crate::at_the_window::{Hands, Window, hands, is_field, press, settle, type_on};

pub(crate) fn enter(window: &mut Window) {
    press(window, Modifiers::NONE, Key::Enter);
}

/// Puts the pointer into a field.
pub(crate) fn click_into(window: &mut Window, label: &str) {
    let found = window.get_all_by_label(label).find(is_field);
    found
        .unwrap_or_else(|| panic!("no field `{label}`"))
        .click();
    settle(window);
}

/// Goes on with Enter to a field and types into it.
pub(crate) fn fill(window: &mut Window, label: &str, text: &str) {
    let is_there = |window: &Window| {
        let node = window
            .root()
            .children_recursive()
            .find(egui_kittest::Node::is_focused);
        node.and_then(|node| node.accesskit_node().label())
            .as_deref()
            == Some(label)
    };
    for _ in 0..40 {
        if is_there(window) {
            type_on(window, text);
            return;
        }
        enter(window);
    }
    panic!("Enter does not lead to `{label}`");
}

/// Answers every dialog of the system.
pub(crate) struct Picks {
    /// Where everything is written.
    pub(crate) folder: PathBuf,
    /// The list that is brought in, in that folder.
    pub(crate) list: Option<&'static str>,
}

impl FilePicker for Picks {
    fn pick(&self, request: PickRequest, _: Option<&Path>, _: Speaker<'_>) -> Option<PathBuf> {
        match request {
            PickRequest::Save => Some(self.folder.join("millrace.ron")),
            PickRequest::Folder => Some(self.folder.clone()),
            PickRequest::List => self.list.map(|name| self.folder.join(name)),
            PickRequest::Open => None,
        }
    }
}

/// A part of the day, and what it is called.
pub(crate) type Part = (&'static str, fn(&mut Window));

/// Plays parts and tells what each took; the sum since the beginning.
pub(crate) fn play(window: &mut Window, parts: &[Part]) -> Hands {
    let mut last = hands(window);
    for (what, part) in parts {
        part(window);
        let now = hands(window);
        let [presses, texts] = [now.presses - last.presses, now.texts - last.texts];
        println!("{what}: {presses} presses, {texts} texts");
        last = now;
    }
    last
}
