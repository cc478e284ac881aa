//! The texts of a book that can be said in other languages.

use std::collections::BTreeSet;

use super::{
    Book, Change, Entry, Ingredient, ItemId, Measure, Recipe, Settings, Translation, Version,
    Vessel,
};

/// What a text of an item is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TextKind {
    /// The name of the item.
    Name,
    /// The name of a version.
    VersionName,
    /// An instruction.
    Instruction,
    /// The note on a line.
    LineNote,
    /// The note on the item.
    Note,
    /// The name of a flavour.
    Flavour,
    /// What a level of sugar or ice is called.
    Level,
}

/// Whether a text is said otherwise in another language: "75 %" is not.
fn has_words(text: &str) -> bool {
    text.chars().any(char::is_alphabetic)
}

/// Texts in the order of the item, each once.
#[derive(Default)]
struct Texts<'item> {
    list: Vec<(TextKind, &'item str)>,
    known: BTreeSet<&'item str>,
}

impl<'item> Texts<'item> {
    fn add(&mut self, kind: TextKind, text: &'item str) {
        if has_words(text) && self.known.insert(text) {
            self.list.push((kind, text));
        }
    }

    fn add_entry(&mut self, entry: &'item Entry) {
        match entry {
            Entry::Line(line) => self.add(TextKind::LineNote, &line.note),
            Entry::Instruction(instruction) => self.add(TextKind::Instruction, &instruction.text),
        }
    }

    fn add_version(&mut self, version: &'item Version) {
        self.add(TextKind::VersionName, &version.name);
        for change in &version.changes {
            match change {
                Change::Instruction(_, text) => self.add(TextKind::Instruction, text),
                Change::Note(_, text) => self.add(TextKind::LineNote, text),
                Change::Add(_, entry) => self.add_entry(entry),
                _ => {}
            }
        }
    }

    fn of(name: &'item str, note: &'item str) -> Vec<(TextKind, &'item str)> {
        let mut texts = Self::default();
        texts.add(TextKind::Name, name);
        texts.add(TextKind::Note, note);
        texts.list
    }
}

impl Ingredient {
    /// What can be said in other languages.
    pub fn texts(&self) -> Vec<(TextKind, &str)> {
        Texts::of(&self.name, &self.note)
    }
}

impl Measure {
    /// What can be said in other languages.
    pub fn texts(&self) -> Vec<(TextKind, &str)> {
        Texts::of(&self.name, &self.note)
    }
}

impl Vessel {
    /// What can be said in other languages.
    pub fn texts(&self) -> Vec<(TextKind, &str)> {
        Texts::of(&self.name, &self.note)
    }
}

impl Recipe {
    /// What can be said in other languages: of the recipe and of all its versions.
    pub fn texts(&self) -> Vec<(TextKind, &str)> {
        let mut texts = Texts::default();
        texts.add(TextKind::Name, &self.name);
        for entry in &self.entries {
            texts.add_entry(entry);
        }
        for version in &self.versions {
            texts.add_version(version);
        }
        texts.add(TextKind::Note, &self.note);
        texts.list
    }
}

impl Settings {
    /// What can be said in other languages: the levels that the shop names. The flavours of its ingredients are words of the
    /// whole shop, too, and are handed in.
    fn texts<'book>(
        &'book self,
        flavours: impl Iterator<Item = &'book str>,
    ) -> Vec<(TextKind, &'book str)> {
        let mut texts = Texts::default();
        for level in self.sugar_levels.iter().chain(&self.ice_levels) {
            texts.add(TextKind::Level, &level.name);
        }
        for flavour in flavours {
            texts.add(TextKind::Flavour, flavour);
        }
        texts.list
    }
}

impl Book {
    /// Whether the book is written in the language of a code; in English when it does not say.
    pub fn is_written_in(&self, code: &str) -> bool {
        let own = self.settings.language.as_ref();
        own.map_or(code == "en", |own| own.is(code))
    }

    /// Whether a text of the book lacks words in the language of a code, unless it has a translation.
    pub fn lacks_words_in(&self, code: &str, text: &str) -> bool {
        has_words(text) && !self.is_written_in(code)
    }

    /// The texts of an item that can be said in other languages; none of an item that is not there.
    pub fn texts_of(&self, item: &ItemId) -> Vec<(TextKind, &str)> {
        let found = match item {
            ItemId::Settings => {
                let ingredients = self.ingredients.iter();
                let flavours = ingredients.flat_map(|item| &item.composition.flavours);
                Some(
                    self.settings
                        .texts(flavours.map(|flavour| flavour.name.as_str())),
                )
            }
            ItemId::Ingredient(id) => self.ingredient(id).map(|item| item.texts()),
            ItemId::Measure(id) => self.measure(id).map(|item| item.texts()),
            ItemId::Vessel(id) => self.vessel(id).map(|item| item.texts()),
            ItemId::Recipe(id) => self.recipe(id).map(|item| item.texts()),
            // What people said of a cup stays as they said it.
            ItemId::Tasting(_) => None,
        };
        found.unwrap_or_default()
    }

    /// What an item is in other languages.
    pub fn translations_of(&self, item: &ItemId) -> &[Translation] {
        match item {
            ItemId::Settings => Some(&self.settings.translations),
            ItemId::Ingredient(id) => self.ingredient(id).map(|item| &item.translations),
            ItemId::Measure(id) => self.measure(id).map(|item| &item.translations),
            ItemId::Vessel(id) => self.vessel(id).map(|item| &item.translations),
            ItemId::Recipe(id) => self.recipe(id).map(|item| &item.translations),
            ItemId::Tasting(_) => None,
        }
        .map_or(&[], Vec::as_slice)
    }
}
