//! What the texts of an item are in other languages.

use std::collections::BTreeSet;

use super::{
    Book, Change, Entry, Ingredient, ItemId, LanguageId, Measure, Recipe, Settings, Version, Vessel,
};

/// A text of an item in another language.
///
/// It belongs to the text as it stands, not to a place: when an instruction becomes another one, what was said for the former
/// is no longer printed for it, in no version and no approval, and comes back when the text does.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Translation {
    /// The language.
    pub language: LanguageId,
    /// The text of the item that it is for.
    pub of: String,
    /// The text in that language.
    pub text: String,
}

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

/// The text in the language of a code, if it has one; of two for the same text the first.
pub fn translated<'list>(
    translations: &'list [Translation],
    code: &str,
    of: &str,
) -> Option<&'list str> {
    translations
        .iter()
        .find(|known| known.of == of && known.language.is(code) && !known.text.is_empty())
        .map(|known| known.text.as_str())
}

impl LanguageId {
    /// Whether it names the language of this code, in any case.
    pub fn is(&self, code: &str) -> bool {
        self.as_str().eq_ignore_ascii_case(code)
    }
}

/// Whether a text is said otherwise in another language: "75 %" is not.
fn has_words(text: &str) -> bool {
    text.chars().any(char::is_alphabetic)
}

/// Puts a translation in place of what stood for the same text in its language; an empty one only takes that away.
pub fn put_translation(translations: &mut Vec<Translation>, new: Translation) {
    let is_for_same = |known: &Translation| known.language == new.language && known.of == new.of;
    let at = translations.iter().position(is_for_same);
    translations.retain(|known| !is_for_same(known));
    if !new.text.is_empty() {
        let end = translations.len();
        translations.insert(at.unwrap_or(end).min(end), new);
    }
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
        }
        .map_or(&[], Vec::as_slice)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn german(of: &str, text: &str) -> Translation {
        Translation {
            language: LanguageId::new("de").unwrap(),
            of: of.to_owned(),
            text: text.to_owned(),
        }
    }

    #[test]
    fn a_translation_belongs_to_the_text_as_it_stands_and_keeps_its_place() {
        let mut list = vec![german("pear", "Birne"), german("plum", "Pflaume")];
        put_translation(&mut list, german("pear", "Williamsbirne"));
        assert_eq!(list[0], german("pear", "Williamsbirne"));
        assert_eq!(translated(&list, "DE", "pear"), Some("Williamsbirne"));
        assert_eq!(translated(&list, "de", "pears"), None);
        put_translation(&mut list, german("pear", ""));
        assert_eq!(list, [german("plum", "Pflaume")]);
        put_translation(&mut list, german("sour plum", ""));
        assert_eq!(list.len(), 1);
    }
}
