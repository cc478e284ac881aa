//! Every command of the window in one table: its words and its keys, for menus, buttons and the keyboard alike.

use egui::{Context, Key, KeyboardShortcut, Modifiers};

use super::view_state::Area;

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

/// The words and keys of a command.
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
            Self::NewBook => control("New book", "Begin an empty book", Key::N),
            Self::NewRecipe => shifted("New recipe", "Begin a new drink", Key::N),
            Self::LookUp => control(
                "Find…",
                "Find recipes, ingredients, notes and approvals in this book",
                Key::F,
            ),
            Self::OpenBook => control("Open…", "Open another book", Key::O),
            Self::SaveAs => shifted("Save as…", "Save the book in another file", Key::S),
            Self::Save => control("Save", "Save the book", Key::S),
            Self::Redo => either(
                shifted("Redo", "Repeat the step that was taken back", Key::Z),
                keys(Modifiers::COMMAND, Key::Y),
            ),
            Self::Undo => control("Undo", "Take the last step back", Key::Z),
            Self::AddInstruction => shifted(
                "Add an instruction",
                "Add an instruction below the selected line",
                Key::Enter,
            ),
            Self::AddLine => either(
                alone(
                    "Add an ingredient…",
                    "Find an ingredient and add it",
                    Key::Insert,
                ),
                keys(Modifiers::COMMAND, Key::Enter),
            ),
            Self::SwapLine => control(
                "Swap this ingredient…",
                "Replace this ingredient and match the taste",
                Key::R,
            ),
            Self::MoveLineUp => entry(
                "Move up",
                "Move the line one place up",
                keys(Modifiers::ALT, Key::ArrowUp),
            ),
            Self::MoveLineDown => entry(
                "Move down",
                "Move the line one place down",
                keys(Modifiers::ALT, Key::ArrowDown),
            ),
            Self::RemoveLine => alone("Remove", "Take the line out of the recipe", Key::Delete),
            Self::LineAbove => alone("Line above", "Go to the line above", Key::ArrowUp),
            Self::LineBelow => alone("Line below", "Go to the line below", Key::ArrowDown),
            Self::Back => alone(
                "Back",
                "Close what is open, or return to the recipe",
                Key::Escape,
            ),
            Self::OtherDegrees => shifted("°C or °F", "Show temperatures in °F or °C", Key::D),
            Self::OtherVolumes => shifted(
                "ml or fl oz",
                "Read volumes in US fluid ounces instead of millilitres, and back",
                Key::L,
            ),
            Self::ShowKeys => alone("Keys…", "Show the keys", Key::F1),
            Self::GoTo(area) => {
                let (label, key) = area_entry(area);
                control(label, "Go to this screen", key)
            }
        }
    }

    /// The words in a menu or on a button.
    pub fn label(self) -> &'static str {
        self.entry().label
    }

    /// What it does, with its keys.
    pub fn tooltip(self) -> String {
        format!("{} ({})", self.entry().tooltip, self.keys_in_words())
    }

    /// What it does.
    pub fn explanation(self) -> &'static str {
        self.entry().tooltip
    }

    /// Its keys: "Ctrl+Shift+S".
    pub fn keys_in_words(self) -> String {
        let entry = self.entry();
        let first = shortcut_in_words(entry.shortcut);
        match entry.alternative {
            Some(other) => format!("{first} or {}", shortcut_in_words(other)),
            None => first,
        }
    }

    /// Its first keys alone, for a menu.
    pub fn menu_keys(self) -> String {
        shortcut_in_words(self.entry().shortcut)
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

/// The word of an area and its number on the keyboard, from left to right.
const fn area_entry(area: Area) -> (&'static str, Key) {
    match area {
        Area::Recipe => ("Recipe", Key::Num1),
        Area::Swap => ("Swap", Key::Num2),
        Area::Variations => ("Variations", Key::Num3),
        Area::Compare => ("Compare", Key::Num4),
        Area::Lesson => ("Lesson", Key::Num5),
        Area::Serving => ("Serving", Key::Num6),
        Area::Counter => ("Counter", Key::Num7),
        Area::Cards => ("Cards", Key::Num8),
        Area::Findings => ("Findings", Key::Num9),
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

fn shortcut_in_words(shortcut: KeyboardShortcut) -> String {
    let mut words = Vec::new();
    let held = shortcut.modifiers;
    if held.command || held.ctrl {
        words.push(if cfg!(target_os = "macos") {
            "Cmd"
        } else {
            "Ctrl"
        });
    }
    if held.alt {
        words.push("Alt");
    }
    if held.shift {
        words.push("Shift");
    }
    words.push(match shortcut.logical_key {
        Key::Escape => "Esc",
        Key::ArrowUp => "Up",
        Key::ArrowDown => "Down",
        other => other.name(),
    });
    words.join("+")
}

#[cfg(test)]
mod tests {
    use super::*;

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
                    shortcut_in_words(shortcut)
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
}
