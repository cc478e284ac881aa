//! Where a thing stands that was looked up.

use super::{Language, Speaker, say};
use crate::book::{Change, Entry, Hit, KindWord, LineId, LookUpIndex, Recipe, Spot, VersionId};
use crate::quantity::excerpt;

/// Longest place that is told, in characters.
const LONGEST: usize = 120;

impl Speaker<'_> {
    /// Where a thing stands that belongs to another one ("in Hob & Ember, iced"), or what it is; `None` for what needs neither.
    pub fn found_place(&self, spot: &Spot) -> Option<String> {
        let place = match spot {
            Spot::Drink(id, None) => self.state(self.book.recipe(id)?.state).to_owned(),
            Spot::Drink(id, Some(version)) => {
                let recipe = self.book.recipe(id)?;
                let state = self.state(recipe.version(version)?.state);
                say!(self, "look-up-version-of", recipe: &recipe.name, state: state)
            }
            Spot::RecipeNote(id) => {
                say!(self, "look-up-note-on", name: &self.book.recipe(id)?.name)
            }
            Spot::Entry(id, version, line) => {
                let recipe = self.book.recipe(id)?;
                let drink = self.drink_found(recipe, version.as_ref());
                match self.note_on(recipe, version.as_ref(), line) {
                    Some(ingredient) => {
                        say!(self, "look-up-line-note", ingredient: ingredient, drink: drink)
                    }
                    None => say!(self, "look-up-in", name: drink),
                }
            }
            Spot::Approval(id, at) => {
                let recipe = self.book.recipe(id)?;
                let approval = recipe.approvals.get(*at)?;
                let drink = self.drink_found(recipe, approval.version.as_ref());
                let (date, by) = (&approval.date, &approval.by);
                say!(self, "look-up-approval-of", drink: drink, date: date, by: by)
            }
            Spot::Tasting(recipe, id) => {
                let recipe = self.book.recipe(recipe)?;
                let date = excerpt(&self.book.tasting(id)?.date, LONGEST);
                let drink = self.drink_found(recipe, None);
                say!(self, "look-up-tasting-of", drink: drink, date: date)
            }
            Spot::Ingredient(id) => {
                let item = self.book.ingredient(id)?;
                let (role, form) = (self.role(item.role), self.form(item.form));
                let place = match item.brand.as_str() {
                    "" => say!(self, "look-up-ingredient", role: role, form: form),
                    brand => {
                        say!(self, "look-up-ingredient-of", brand: brand, role: role, form: form)
                    }
                };
                self.beside_name(item, &place)
            }
            Spot::Flavour(id, _) => {
                say!(self, "look-up-in", name: self.book.ingredient(id)?.full_name())
            }
            Spot::Measure(id) => self.measure_kind(self.book.measure(id)?.kind).to_owned(),
            Spot::Vessel(id) => self.vessel_kind(self.book.vessel(id)?.kind).to_owned(),
            Spot::SugarLevel(at) => self.percent_of(self.book.settings.sugar_levels().get(*at)?),
            Spot::IceLevel(at) => self.percent_of(self.book.settings.ice_levels().get(*at)?),
            Spot::Shop => return None,
            Spot::BookNote => self.word("look-up-note-on-book").to_owned(),
        };
        Some(excerpt(&place, LONGEST))
    }

    /// The name of a thing that was found; what stands for it where it has none.
    pub fn found_name(&self, hit: &Hit) -> String {
        let settings = &self.book.settings;
        let level = match hit.spot {
            _ if !hit.name.is_empty() => return hit.name.clone(),
            Spot::SugarLevel(at) => settings.sugar_levels().into_iter().nth(at),
            Spot::IceLevel(at) => settings.ice_levels().into_iter().nth(at),
            _ => None,
        };
        match level {
            Some(level) => self.level_name(&level),
            None => self.word("look-up-no-reason").to_owned(),
        }
    }

    /// A word of this language that things of a kind are found by.
    pub fn kind_word(&self, word: KindWord) -> String {
        match word {
            KindWord::Found(kind) => self.found_kind(kind).to_owned(),
            KindWord::State(state) => self.state(state).to_owned(),
            KindWord::Role(role) => self.role(role).to_owned(),
            KindWord::Form(form) => self.form(form).to_owned(),
            KindWord::Measure(kind) => self.measure_kind(kind).to_owned(),
            KindWord::Use(kind) => self.uses_word(kind),
            KindWord::Vessel(kind) => self.vessel_kind(kind).to_owned(),
            KindWord::Ice(usual) => self.usual_ice(usual).to_owned(),
            KindWord::Book => self.word("look-up-book").to_owned(),
        }
    }

    /// What is to be found in the book, by the words of this language for kinds of things, too.
    pub fn look_up_index(&self) -> LookUpIndex {
        // In English they are those that a book is written in.
        let is_english = self.language == Language::ENGLISH;
        LookUpIndex::with_words(self.book, &|word| {
            (!is_english).then(|| self.kind_word(word))
        })
    }

    /// "Hob & Ember, iced"; the recipe alone for what stands in it as written.
    fn drink_found(&self, recipe: &Recipe, version: Option<&VersionId>) -> String {
        match version.and_then(|id| recipe.version(id)) {
            Some(version) => {
                say!(self, "look-up-drink", recipe: &recipe.name, version: &version.name)
            }
            None => recipe.name.clone(),
        }
    }

    /// What the note of a line is on; `None` for an instruction, and for a note that a version gives to a line that it did not
    /// add.
    fn note_on(
        &self,
        recipe: &Recipe,
        version: Option<&VersionId>,
        wanted: &LineId,
    ) -> Option<String> {
        let entry = match version {
            None => recipe.entries.iter().find(|entry| entry.id() == wanted)?,
            Some(id) => {
                let mut changes = recipe.version(id)?.changes.iter();
                changes.find_map(|change| match change {
                    Change::Add(_, entry) if entry.id() == wanted => Some(entry),
                    _ => None,
                })?
            }
        };
        match entry {
            Entry::Line(line) => Some(self.ingredient(&line.ingredient)),
            Entry::Instruction(_) => None,
        }
    }
}
