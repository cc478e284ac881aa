//! Somebody who clicks, types and takes back whatever is there, in every area: the program must not end, and what it saves must
//! open again.
//!
//! It runs in a process of its own, so that what memory it takes is its own.

use std::env;
use std::fs;
use std::process::Command;

use egui::{Key, Modifiers, Role};
use egui_kittest::Node;
use egui_kittest::kittest::NodeT as _;
use evensip::book::{Severity, findings};
use evensip::book_file::load;
use evensip::workbench::Home;

use crate::at_the_window::{Window, area_keys, is_field};
use crate::instances::Chance;
use crate::safekeeping::Shop;

/// Says how many actions a run of its own takes.
const ACTIONS: &str = "EVENSIP_ACTIONS";
/// Tells the process that it is the run.
const RUN: &str = "EVENSIP_MONKEY_RUN";
/// Actions without the variable: about half a minute.
const USUAL: u64 = 400;
/// Growth of memory behind the first third that is the allocator's own, kB.
const ALLOCATOR: u64 = 96 * 1024;

/// What is typed: amounts, numbers of no use, long and mixed scripts, what files and tables read as something else.
const TEXTS: [&str; 16] = [
    "",
    "3 scoops",
    "7,5 g",
    "1,000 ml",
    "-4",
    "NaN",
    "1e400",
    "to 400 ml",
    "=1+1",
    "栗ほうじ茶 三匙",
    "شاي بالحليب 12 ml",
    "\u{202e}reversed",
    "\"quoted\" (name: [",
    "2026-02-31",
    "61 °F",
    "a long name that goes on and on, since whoever typed it held the key down for as long as it took to say all of this",
];

/// Leads out of the program, or asks the system for a window.
const NOT_PRESSED: [&str; 4] = ["Open to print", "Show the folder", "Quit", "Leave"];

fn can_be_pressed(node: &Node<'_>) -> bool {
    let node = node.accesskit_node();
    let label = node.label().unwrap_or_default();
    let is_control = matches!(
        node.role(),
        Role::Button
            | Role::CheckBox
            | Role::RadioButton
            | Role::ComboBox
            | Role::Link
            | Role::Slider
            | Role::SpinButton
            | Role::Tab
            | Role::MenuItem
    );
    is_control && !node.is_disabled() && !NOT_PRESSED.iter().any(|word| label.contains(word))
}

fn can_be_typed_into(node: &Node<'_>) -> bool {
    is_field(node) && !node.accesskit_node().is_disabled()
}

fn one_of<T: Copy>(chance: &mut Chance, of: &[T]) -> T {
    of[usize::try_from(chance.below(of.len() as u64)).unwrap_or(0)]
}

/// One of the nodes, as chance wills.
fn pick<'tree>(
    window: &'tree Window,
    chance: &mut Chance,
    wanted: impl Fn(&Node<'tree>) -> bool,
) -> Option<Node<'tree>> {
    let nodes: Vec<Node<'tree>> = window.root().children_recursive().filter(wanted).collect();
    let at = usize::try_from(chance.below(nodes.len() as u64)).ok()?;
    nodes.into_iter().nth(at)
}

fn act(window: &mut Window, chance: &mut Chance) -> String {
    let key = |window: &mut Window, modifiers, key| {
        window.key_press_modifiers(modifiers, key);
        format!("{modifiers:?} {key:?}")
    };
    match chance.below(100) {
        0..55 => {
            let Some(node) = pick(window, chance, can_be_pressed) else {
                return "nothing to press".to_owned();
            };
            let label = node.accesskit_node().label().unwrap_or_default();
            node.click();
            format!("press {label}")
        }
        55..75 => {
            let text = one_of(chance, &TEXTS);
            let label = {
                let Some(node) = pick(window, chance, can_be_typed_into) else {
                    return "nothing to type into".to_owned();
                };
                node.focus();
                node.accesskit_node().label().unwrap_or_default()
            };
            window.run_ok();
            window.key_press_modifiers(Modifiers::COMMAND, Key::A);
            window.run_ok();
            let focused = window.root().children_recursive().find(Node::is_focused);
            if let Some(node) = focused {
                node.type_text(text);
            }
            window.run_ok();
            window.key_press(Key::Enter);
            format!("type {text:?} into {label}")
        }
        75..85 => key(window, Modifiers::COMMAND, Key::Z),
        85..89 => key(window, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z),
        89..96 => {
            let (_, keys) = one_of(chance, &area_keys().collect::<Vec<_>>());
            key(window, keys.modifiers, keys.logical_key)
        }
        _ => {
            let keys = [
                Key::Escape,
                Key::Tab,
                Key::Delete,
                Key::ArrowDown,
                Key::Enter,
                Key::Space,
            ];
            key(window, Modifiers::NONE, one_of(chance, &keys))
        }
    }
}

/// Memory that the process holds, kB; `None` where the system does not say.
fn resident() -> Option<u64> {
    let status = fs::read_to_string("/proc/self/status").ok()?;
    let line = status
        .lines()
        .find_map(|line| line.strip_prefix("VmRSS:"))?;
    line.trim().trim_end_matches("kB").trim().parse().ok()
}

fn errors(book: &evensip::book::Book) -> Vec<String> {
    findings(book)
        .into_iter()
        .filter(|finding| finding.severity == Severity::Error)
        .map(|finding| format!("{finding:?}"))
        .collect()
}

#[test]
fn whoever_presses_everything_ends_nothing_and_loses_nothing() {
    if env::var_os(RUN).is_some() {
        return run();
    }
    let test = "monkey::whoever_presses_everything_ends_nothing_and_loses_nothing";
    // A name that is typed without a folder is a file of the folder that the program runs in, and cards go home.
    let folder = tempfile::tempdir().expect("there is room");
    let output = Command::new(env::current_exe().expect("a test has a program"))
        .current_dir(folder.path())
        .env("HOME", folder.path())
        .env("USERPROFILE", folder.path())
        .args([test, "--exact", "--nocapture"])
        .env(RUN, "1")
        .output()
        .expect("the run begins");
    let text = String::from_utf8_lossy(&output.stderr);
    let lines: Vec<&str> = text.lines().collect();
    // What was pressed last, what went wrong, and the beginning of where.
    let wrong = lines.iter().position(|line| line.contains("panicked"));
    let from = wrong.unwrap_or(lines.len()).saturating_sub(30);
    let told = lines.iter().skip(from).take(90).collect::<Vec<_>>();
    assert!(output.status.success(), "{told:#?}");
}

fn window_of(shop: &Shop) -> Window {
    shop.builder().with_any_letters().open()
}

fn run() {
    let actions = env::var(ACTIONS)
        .ok()
        .and_then(|text| text.parse().ok())
        .unwrap_or(USUAL);
    let shop = Shop::new();
    let mut window = window_of(&shop);
    let mut chance = Chance::new(2026);
    let (mut saves, mut early) = (0, None);
    let mut trail: Vec<String> = Vec::new();
    for at in 0..actions {
        let action = act(&mut window, &mut chance);
        eprintln!("{at}: {action}");
        trail.push(action);
        window.run_ok();
        if chance.below(20) == 0 {
            window.key_press_modifiers(Modifiers::COMMAND, Key::S);
            window.run_ok();
            let opened = load(&shop.path).expect("what was saved opens");
            let workbench = window.state().workbench();
            let is_here = *workbench.home() == Home::File(shop.path.clone());
            if is_here && !workbench.has_unsaved_changes() && !workbench.is_saving() {
                let trail = &trail[trail.len().saturating_sub(30)..];
                assert!(**workbench.book() == opened.book, "after {trail:?}");
                saves += 1;
            } else if !is_here {
                // Another book was opened; on with the first one.
                window = window_of(&shop);
            }
            let wrong = errors(&opened.book);
            assert_eq!(
                wrong,
                [""; 0],
                "after {:?}",
                &trail[trail.len().saturating_sub(30)..]
            );
        }
        if at == actions / 3 {
            early = resident();
        }
    }
    assert!(saves > actions / 100, "{saves} saves");
    if let (Some(early), Some(late)) = (early, resident()) {
        eprintln!(
            "{actions} actions, {saves} saves, {early} kB after a third, {late} kB at the end"
        );
        assert!(
            late < early + early / 4 + ALLOCATOR,
            "{early} kB grew to {late} kB"
        );
    }
}
