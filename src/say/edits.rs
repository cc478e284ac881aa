//! What an edit does, and why an edit is refused.

use super::{Language, Speaker, say};
use crate::book::{
    Change, ItemId, LimitPassed, LimitedList, MOST_CUPS, MOST_LINES, RecipeId, VersionId, resolve,
};
use crate::edit::{Edit, EditError, WholeBook};
use crate::quantity::{excerpt, name_as_shown};

/// Longest name in a label, in characters.
const NAME: usize = 60;

/// How many fields of an item a label names; whoever changes more has put another item in its place.
const FIELDS: usize = 3;

const MEGABYTE: u64 = 1024 * 1024;

impl Speaker<'_> {
    /// What edits of this book do as one step; what was asked for last names it.
    pub fn step_label(&self, edits: &[Edit]) -> String {
        let adds_version = |edit: &Edit| matches!(edit, Edit::AddVersion { .. });
        match edits.last() {
            Some(_) if edits.len() > 1 && edits.iter().all(adds_version) => {
                say!(self, "edit-add-versions", count: edits.len())
            }
            Some(_) if edits.len() > 1 && edits.iter().all(|edit| self.adds_item(edit)) => {
                say!(self, "edit-add-items", count: edits.len())
            }
            Some(last) => self.edit_label(last),
            None => String::new(),
        }
    }

    /// Whether an edit puts something into the shop that it did not have.
    fn adds_item(&self, edit: &Edit) -> bool {
        match edit {
            Edit::PutIngredient(item) => self.book.ingredient(&item.id).is_none(),
            Edit::PutMeasure(item) => self.book.measure(&item.id).is_none(),
            Edit::PutVessel(item) => self.book.vessel(&item.id).is_none(),
            _ => false,
        }
    }

    /// What an edit of this book does, for the undo menu: "change the amount of Tambrel chestnut powder".
    pub fn edit_label(&self, edit: &Edit) -> String {
        match edit {
            Edit::Change {
                recipe,
                version,
                change,
            } => self.change_label(recipe, version.as_ref(), change),
            Edit::RenameRecipe { name, .. } => {
                say!(self, "edit-rename-recipe", name: name_as_shown(name))
            }
            Edit::NoteRecipe { recipe, .. } => {
                say!(self, "edit-note-recipe", recipe: self.recipe(recipe))
            }
            Edit::Translate { translation, .. } => say!(
                self,
                "edit-translate",
                text: excerpt(&translation.of, NAME),
                language: Language::name_of(&translation.language),
            ),
            Edit::SetState { state, .. } => {
                say!(self, "edit-set-state", state: self.state(*state))
            }
            Edit::AddVersion { version, .. } => {
                say!(self, "edit-add-version", version: name_as_shown(&version.name))
            }
            Edit::RenameVersion { name, .. } => {
                say!(self, "edit-rename-version", name: name_as_shown(name))
            }
            Edit::RemoveVersion { recipe, version } => {
                say!(self, "edit-remove-version", version: self.version(recipe, version))
            }
            Edit::Approve { recipe, .. } => {
                say!(self, "edit-approve", recipe: self.recipe(recipe))
            }
            Edit::FileReading { recipe, .. } => {
                say!(self, "edit-file-reading", recipe: self.recipe(recipe))
            }
            Edit::RemoveReading { recipe, .. } => {
                say!(self, "edit-remove-reading", recipe: self.recipe(recipe))
            }
            Edit::PutRecipe(recipe) => self.put_label(edit, &recipe.name),
            Edit::PutIngredient(ingredient) => self.put_label(edit, &ingredient.full_name()),
            Edit::PutMeasure(measure) => self.put_label(edit, &measure.name),
            Edit::PutVessel(vessel) => self.put_label(edit, &vessel.name),
            Edit::RemoveRecipe(id) => say!(self, "edit-remove-recipe", name: self.recipe(id)),
            Edit::RemoveIngredient(id) => {
                say!(self, "edit-remove-ingredient", name: self.ingredient(id))
            }
            Edit::RemoveMeasure(id) => say!(self, "edit-remove-measure", name: self.measure(id)),
            Edit::RemoveVessel(id) => say!(self, "edit-remove-vessel", name: self.vessel(id)),
            Edit::PutTasting(tasting) => self.put_label(edit, &self.name_of_tasting(tasting)),
            Edit::RemoveTasting(id) => say!(self, "edit-remove-tasting", name: self.tasting(id)),
            Edit::SetSettings(_) => self.put_label(edit, ""),
            Edit::PutRight(item) => say!(self, "edit-put-right", name: self.item(item)),
            Edit::TakeTasted { ingredient, .. } => {
                say!(self, "edit-take-tasted", name: self.ingredient(ingredient))
            }
            Edit::DropTasted { ingredient, .. } => {
                say!(self, "edit-drop-tasted", name: self.ingredient(ingredient))
            }
            Edit::DateChange { item, .. } => say!(self, "edit-date-change", name: self.item(item)),
            Edit::PutBook { reason, .. } => self.whole_book(reason),
        }
    }

    fn whole_book(&self, reason: &WholeBook) -> String {
        match reason {
            WholeBook::EarlierCopy(Some(moment)) => say!(self, "step-go-back-to", moment: moment),
            WholeBook::EarlierCopy(None) => self.word("step-go-back").to_owned(),
            WholeBook::RecoveredWork(moment) => say!(self, "step-restore-work", moment: moment),
            WholeBook::FileOnDisk => self.word("step-take-theirs").to_owned(),
            WholeBook::Merge => self.word("step-merge-theirs").to_owned(),
            WholeBook::Recipe(name) => say!(self, "step-bring-in", name: excerpt(name, NAME)),
            WholeBook::Ingredients(count) => {
                say!(self, "step-bring-in-ingredients", count: *count)
            }
        }
    }

    /// What a form over an item does: the fields that it changes, unless they are many.
    fn put_label(&self, edit: &Edit, name: &str) -> String {
        let Some((item, fields)) = edit.changed_fields(self.book) else {
            return String::new();
        };
        let (name, named) = (name_as_shown(name), self.and(&self.item_fields(&fields)));
        match (item, fields.len()) {
            (ItemId::Settings, 1..=FIELDS) => say!(self, "edit-settings-fields", fields: named),
            (ItemId::Settings, _) => self.word("edit-settings").to_owned(),
            (_, 0) => say!(self, "edit-add", name: name),
            (_, 1..=FIELDS) => say!(self, "edit-put-fields", fields: named, name: name),
            _ => say!(self, "edit-put", name: name),
        }
    }

    fn change_label(
        &self,
        recipe: &RecipeId,
        version: Option<&VersionId>,
        change: &Change,
    ) -> String {
        let recipe = self.book.recipe(recipe);
        let resolved = recipe.map(|recipe| resolve(recipe, version).0);
        let line = change
            .target()
            .and_then(|id| resolved.as_ref().and_then(|resolved| resolved.line(id)));
        let known = line.filter(|line| self.book.ingredient(&line.ingredient).is_some());
        let name = known.map(|line| self.ingredient(&line.ingredient));
        match (change, name) {
            (Change::Add(_, entry), _) => match entry.line() {
                Some(line) => {
                    say!(self, "edit-add-line", ingredient: self.ingredient(&line.ingredient))
                }
                None => self.word("edit-add-instruction").to_owned(),
            },
            (Change::Remove(_), Some(name)) => say!(self, "edit-remove-line", ingredient: name),
            (Change::Remove(_), None) => self.word("edit-remove-instruction").to_owned(),
            (Change::Move(..), Some(name)) => say!(self, "edit-move-line", ingredient: name),
            (Change::Move(..), None) => self.word("edit-move-instruction").to_owned(),
            (_, Some(name)) => say!(
                self,
                "edit-change-of-line",
                field: self.changed_field(change.field()),
                ingredient: name,
            ),
            (_, None) => say!(self, "edit-change", field: self.changed_field(change.field())),
        }
    }

    /// Why an edit is refused.
    pub fn edit_error(&self, error: &EditError) -> String {
        match error {
            EditError::Gone { kind, id } => {
                say!(self, "edit-error-gone", kind: kind.key(), id: id)
            }
            EditError::Taken { kind, id } => {
                say!(self, "edit-error-taken", kind: kind.key(), id: id)
            }
            EditError::NoName { kind } => say!(self, "edit-error-no-name", kind: kind.key()),
            EditError::GivesApprovedCup { version } => {
                say!(self, "edit-error-gives-approved-cup", version: name_as_shown(version))
            }
            EditError::NothingKept(item) => {
                say!(self, "edit-error-nothing-kept", name: self.item(item))
            }
            EditError::PastLimit(passed) => self.limit_passed(passed),
            EditError::Faulty(first, more) => {
                let first = self.finding(first);
                match more.len() {
                    0 => first,
                    more => say!(self, "edit-error-faulty", first: first, count: more),
                }
            }
            EditError::BuiltOn { version, others } => {
                let names: Vec<_> = others.iter().map(|name| name_as_shown(name)).collect();
                say!(
                    self,
                    "edit-error-built-on",
                    version: name_as_shown(version),
                    others: self.and(&names),
                    count: names.len(),
                )
            }
        }
    }

    /// A limit of books that an edit would pass.
    pub fn limit_passed(&self, passed: &LimitPassed) -> String {
        match passed {
            LimitPassed::List {
                recipe,
                list,
                count,
            } => {
                let (recipe, count) = (recipe.as_str(), *count);
                match list {
                    LimitedList::Lines => {
                        say!(self, "limit-lines", recipe: recipe, count: count, most: MOST_LINES)
                    }
                    LimitedList::Changes(version) => say!(
                        self,
                        "limit-changes",
                        version: version.as_str(),
                        recipe: recipe,
                        count: count,
                        most: MOST_LINES,
                    ),
                    LimitedList::Approved(number) => say!(
                        self,
                        "limit-approved",
                        number: *number,
                        recipe: recipe,
                        count: count,
                        most: MOST_LINES,
                    ),
                }
            }
            LimitPassed::Cups { tasting, count } => say!(
                self,
                "limit-cups",
                tasting: tasting.as_str(),
                count: *count,
                most: MOST_CUPS,
            ),
            LimitPassed::TastedLines {
                tasting,
                cup,
                count,
            } => say!(
                self,
                "limit-tasted-lines",
                number: *cup,
                tasting: tasting.as_str(),
                count: *count,
                most: MOST_LINES,
            ),
            LimitPassed::Text { bytes, most } => say!(
                self,
                "limit-text",
                megabytes: bytes.div_ceil(MEGABYTE),
                most: most / MEGABYTE,
            ),
            LimitPassed::NotFinite { count } => say!(self, "limit-not-finite", count: *count),
        }
    }
}
