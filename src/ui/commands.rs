//! Every command of the window in one table: its words and its keys, for menus, buttons and the keyboard alike.

use egui::{Context, Key, KeyboardShortcut, Modifiers};

use super::area::Area;
use crate::say::{Speaker, say};

/// What a person can ask for with a key, a button or a menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UiCommand {
    /// Begin an empty book.
    NewBook,
    /// Open another book.
    OpenBook,
    /// Save the book under another name.
    SaveAs,
    /// Save the book.
    Save,
    /// Repeat the step that was taken back.
    Redo,
    /// Take the last step back.
    Undo,
    /// Begin a new drink.
    NewRecipe,
    /// Find anything in the book.
    LookUp,
    /// Add an instruction behind the line in hand.
    AddInstruction,
    /// Add an ingredient behind the line in hand.
    AddLine,
    /// Ask for a swap of the ingredient in hand.
    SwapLine,
    /// Move the line in hand one place up.
    MoveLineUp,
    /// Move the line in hand one place down.
    MoveLineDown,
    /// Take the line in hand out of the recipe.
    RemoveLine,
    /// Go to the line above.
    LineAbove,
    /// Go to the line below.
    LineBelow,
    /// Back to where one was: close a list, drop a draft, return to the recipe.
    Back,
    /// Read temperatures in the other unit.
    OtherDegrees,
    /// Read volumes in the other unit.
    OtherVolumes,
    /// Show the keys.
    ShowKeys,
    /// Go to an area of work.
    GoTo(Area),
}

/// The messages and keys of a command.
struct Entry {
    label: &'static str,
    tooltip: &'static str,
    shortcut: KeyboardShortcut,
    alternative: Option<KeyboardShortcut>,
}

const CONTROL_SHIFT: Modifiers = Modifiers::COMMAND.plus(Modifiers::SHIFT);

const fn keys(modifiers: Modifiers, key: Key) -> KeyboardShortcut {
    KeyboardShortcut::new(modifiers, key)
}

impl UiCommand {
    /// All of them; where keys contain each other, the more specific command comes first.
    pub const ALL: [Self; 29] = [
        Self::NewRecipe,
        Self::NewBook,
        Self::OpenBook,
        Self::SaveAs,
        Self::Save,
        Self::LookUp,
        Self::Redo,
        Self::Undo,
        Self::AddInstruction,
        Self::AddLine,
        Self::SwapLine,
        Self::MoveLineUp,
        Self::MoveLineDown,
        Self::RemoveLine,
        Self::LineAbove,
        Self::LineBelow,
        Self::Back,
        Self::OtherDegrees,
        Self::OtherVolumes,
        Self::ShowKeys,
        Self::GoTo(Area::Recipe),
        Self::GoTo(Area::Swap),
        Self::GoTo(Area::Variations),
        Self::GoTo(Area::Compare),
        Self::GoTo(Area::Lesson),
        Self::GoTo(Area::Serving),
        Self::GoTo(Area::Counter),
        Self::GoTo(Area::Cards),
        Self::GoTo(Area::Findings),
    ];

    fn entry(self) -> Entry {
        let entry = |label, tooltip, shortcut| Entry {
            label,
            tooltip,
            shortcut,
            alternative: None,
        };
        let alone = |label, tooltip, key| entry(label, tooltip, keys(Modifiers::NONE, key));
        let control = |label, tooltip, key| entry(label, tooltip, keys(Modifiers::COMMAND, key));
        let shifted = |label, tooltip, key| entry(label, tooltip, keys(CONTROL_SHIFT, key));
        let either = |entry: Entry, alternative| Entry {
            alternative: Some(alternative),
            ..entry
        };
        match self {
            Self::NewBook => control("command-new-book", "command-new-book-does", Key::N),
            Self::NewRecipe => shifted("command-new-recipe", "command-new-recipe-does", Key::N),
            Self::LookUp => control("command-look-up", "command-look-up-does", Key::F),
            Self::OpenBook => control("command-open-book", "command-open-book-does", Key::O),
            Self::SaveAs => shifted("command-save-as", "command-save-as-does", Key::S),
            Self::Save => control("command-save", "command-save-does", Key::S),
            Self::Redo => either(
                shifted("command-redo", "command-redo-does", Key::Z),
                keys(Modifiers::COMMAND, Key::Y),
            ),
            Self::Undo => control("command-undo", "command-undo-does", Key::Z),
            Self::AddInstruction => shifted(
                "command-add-instruction",
                "command-add-instruction-does",
                Key::Enter,
            ),
            Self::AddLine => either(
                alone("command-add-line", "command-add-line-does", Key::Insert),
                keys(Modifiers::COMMAND, Key::Enter),
            ),
            Self::SwapLine => control("command-swap-line", "command-swap-line-does", Key::R),
            Self::MoveLineUp => entry(
                "command-move-up",
                "command-move-up-does",
                keys(Modifiers::ALT, Key::ArrowUp),
            ),
            Self::MoveLineDown => entry(
                "command-move-down",
                "command-move-down-does",
                keys(Modifiers::ALT, Key::ArrowDown),
            ),
            Self::RemoveLine => alone("command-remove", "command-remove-does", Key::Delete),
            Self::LineAbove => alone(
                "command-line-above",
                "command-line-above-does",
                Key::ArrowUp,
            ),
            Self::LineBelow => alone(
                "command-line-below",
                "command-line-below-does",
                Key::ArrowDown,
            ),
            Self::Back => alone("command-back", "command-back-does", Key::Escape),
            Self::OtherDegrees => shifted(
                "command-other-degrees",
                "command-other-degrees-does",
                Key::D,
            ),
            Self::OtherVolumes => shifted(
                "command-other-volumes",
                "command-other-volumes-does",
                Key::L,
            ),
            Self::ShowKeys => alone("command-show-keys", "command-show-keys-does", Key::F1),
            Self::GoTo(area) => {
                let (label, key) = area_entry(area);
                control(label, "command-go-to-does", key)
            }
        }
    }

    /// Its first keys.
    pub fn shortcut(self) -> KeyboardShortcut {
        self.entry().shortcut
    }

    /// The words in a menu or on a button.
    pub fn label(self, speaker: Speaker<'_>) -> &'static str {
        speaker.word(self.entry().label)
    }

    /// What it does, with its keys.
    pub fn tooltip(self, speaker: Speaker<'_>) -> String {
        let keys = self.keys_in_words(speaker);
        say!(speaker, "command-with-keys", what: self.explanation(speaker), keys: keys)
    }

    /// What it does.
    pub fn explanation(self, speaker: Speaker<'_>) -> &'static str {
        speaker.word(self.entry().tooltip)
    }

    /// Its keys: "Ctrl+Shift+S".
    pub fn keys_in_words(self, speaker: Speaker<'_>) -> String {
        let entry = self.entry();
        let first = shortcut_in_words(speaker, entry.shortcut);
        match entry.alternative {
            Some(other) => {
                let second = shortcut_in_words(speaker, other);
                say!(speaker, "keys-either", first: first, second: second)
            }
            None => first,
        }
    }

    /// Its first keys in words, for a menu.
    pub fn menu_keys(self, speaker: Speaker<'_>) -> String {
        shortcut_in_words(speaker, self.shortcut())
    }

    /// Whether its keys also mean something to a text field, so that a field keeps them.
    fn belongs_to_fields(self) -> bool {
        matches!(
            self,
            Self::RemoveLine | Self::LineAbove | Self::LineBelow | Self::Back
        )
    }

    fn consume(self, ctx: &Context) -> bool {
        let entry = self.entry();
        ctx.input_mut(|input| {
            let mut pressed = input.consume_shortcut(&entry.shortcut);
            if let Some(other) = entry.alternative {
                pressed |= input.consume_shortcut(&other);
            }
            pressed
        })
    }
}

/// The message of an area and its number on the keyboard, from left to right.
const fn area_entry(area: Area) -> (&'static str, Key) {
    match area {
        Area::Recipe => ("command-area-recipe", Key::Num1),
        Area::Swap => ("command-area-swap", Key::Num2),
        Area::Variations => ("command-area-variations", Key::Num3),
        Area::Compare => ("command-area-compare", Key::Num4),
        Area::Lesson => ("command-area-lesson", Key::Num5),
        Area::Serving => ("command-area-serving", Key::Num6),
        Area::Counter => ("command-area-counter", Key::Num7),
        Area::Cards => ("command-area-cards", Key::Num8),
        Area::Findings => ("command-area-findings", Key::Num9),
    }
}

/// The commands whose keys were pressed and that hold everywhere. Keys that a field or a row needs stay for them.
pub(super) fn pressed(ctx: &Context) -> Vec<UiCommand> {
    UiCommand::ALL
        .into_iter()
        .filter(|command| !command.belongs_to_fields() && command.consume(ctx))
        .collect()
}

/// Whether the keys of a command that a field or row keeps for itself were pressed; the press is used up.
pub(super) fn pressed_here(ctx: &Context, command: UiCommand) -> bool {
    command.consume(ctx)
}

/// "Ctrl+Shift+S", in the words that stand on the keys.
fn shortcut_in_words(speaker: Speaker<'_>, shortcut: KeyboardShortcut) -> String {
    let mut words = Vec::new();
    let held = shortcut.modifiers;
    if held.command || held.ctrl {
        words.push(speaker.word(if cfg!(target_os = "macos") {
            "keys-command"
        } else {
            "keys-control"
        }));
    }
    if held.alt {
        words.push(speaker.word("keys-alt"));
    }
    if held.shift {
        words.push(speaker.word("keys-shift"));
    }
    words.push(match shortcut.logical_key {
        Key::Escape => speaker.word("keys-escape"),
        Key::Enter => speaker.word("keys-enter"),
        Key::Insert => speaker.word("keys-insert"),
        Key::Delete => speaker.word("keys-delete"),
        Key::ArrowUp => speaker.word("keys-up"),
        Key::ArrowDown => speaker.word("keys-down"),
        // A letter, a digit or a key such as F1 has the same name everywhere.
        other => other.name(),
    });
    words.join("+")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    #[test]
    fn no_two_commands_have_the_same_keys() {
        let mut seen: Vec<KeyboardShortcut> = Vec::new();
        for command in UiCommand::ALL {
            let entry = command.entry();
            for shortcut in [Some(entry.shortcut), entry.alternative]
                .into_iter()
                .flatten()
            {
                assert!(
                    !seen.contains(&shortcut),
                    "{command:?} shares {}",
                    shortcut_in_words(Speaker::without_book(), shortcut)
                );
                seen.push(shortcut);
            }
        }
    }

    #[test]
    fn keys_that_contain_others_come_first() {
        let place = |wanted| UiCommand::ALL.iter().position(|command| *command == wanted);
        assert!(place(UiCommand::NewRecipe) < place(UiCommand::NewBook));
        assert!(place(UiCommand::AddInstruction) < place(UiCommand::AddLine));
        assert!(place(UiCommand::SaveAs) < place(UiCommand::Save));
        assert!(place(UiCommand::Redo) < place(UiCommand::Undo));
        assert!(place(UiCommand::MoveLineUp) < place(UiCommand::LineAbove));
    }
    #[test]
    fn keys_are_called_what_stands_on_them() {
        let english = Speaker::without_book();
        let german = english.in_language(Language::from_code("de").unwrap());
        for (command, in_english, in_german) in [
            (UiCommand::SaveAs, "Ctrl+Shift+S", "Strg+Umsch+S"),
            (UiCommand::Back, "Esc", "Esc"),
            (
                UiCommand::AddLine,
                "Insert or Ctrl+Enter",
                "Einfg oder Strg+Eingabe",
            ),
            (UiCommand::MoveLineUp, "Alt+Up", "Alt+Pfeil nach oben"),
            (UiCommand::GoTo(Area::Lesson), "Ctrl+5", "Strg+5"),
        ] {
            // A Mac calls the key that is held down otherwise, in every language.
            let said = |speaker| command.keys_in_words(speaker).replace("Cmd", "Ctrl");
            assert_eq!(said(english), in_english);
            assert_eq!(said(german).replace("Ctrl", "Strg"), in_german);
        }
    }
}
