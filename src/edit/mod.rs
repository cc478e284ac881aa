//! The only way a book changes: an edit is a value, applying it gives a new book.

mod focus;
mod history;
mod kept_states;

pub use focus::{FieldName, FigurePart, Focus, LineField, Which};
pub use history::{History, Step};

use std::sync::Arc;

use kept_states::{Revising, keep_all, put, put_settings, revise};

use crate::book::{
    Approval, Book, Change, ChangeRefused, FiledReading, Finding, IdKind, Ingredient, IngredientId,
    Item, ItemId, LimitPassed, Measure, MeasureId, Recipe, RecipeId, Settings, Shelf, State,
    TastedFactor, TastedFigure, Tasting, TastingId, Translation, Version, VersionId, Vessel,
    VesselId, new_errors, put_change, put_translation,
};

/// What a person wants changed.
#[expect(
    clippy::large_enum_variant,
    reason = "edits live for a step; a box would be read at every use"
)]
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// A change in a recipe itself (`version: None`) or in one of its versions.
    Change {
        /// The recipe.
        recipe: RecipeId,
        /// The version, or the recipe itself.
        version: Option<VersionId>,
        /// The change.
        change: Change,
    },
    /// Another name of a recipe.
    RenameRecipe {
        /// The recipe.
        recipe: RecipeId,
        /// Its new name.
        name: String,
    },
    /// Another note on a recipe.
    NoteRecipe {
        /// The recipe.
        recipe: RecipeId,
        /// Its new note.
        note: String,
    },
    /// What a text of an item is in another language; an empty one takes away what stood for it.
    Translate {
        /// The item.
        item: ItemId,
        /// The text in that language.
        translation: Translation,
    },
    /// Another state of a recipe itself or of a version.
    SetState {
        /// The recipe.
        recipe: RecipeId,
        /// The version, or the recipe itself.
        version: Option<VersionId>,
        /// The new state.
        state: State,
    },
    /// A new version.
    AddVersion {
        /// The recipe.
        recipe: RecipeId,
        /// The version.
        version: Version,
    },
    /// Another name of a version.
    RenameVersion {
        /// The recipe.
        recipe: RecipeId,
        /// The version.
        version: VersionId,
        /// Its new name.
        name: String,
    },
    /// A version taken away. Those that build on it must go first.
    RemoveVersion {
        /// The recipe.
        recipe: RecipeId,
        /// The version.
        version: VersionId,
    },
    /// An approval, which makes what it approves the standard.
    Approve {
        /// The recipe.
        recipe: RecipeId,
        /// The approval.
        approval: Approval,
    },
    /// A reading of a cup filed in the record of a recipe.
    FileReading {
        /// The recipe.
        recipe: RecipeId,
        /// The reading.
        reading: FiledReading,
    },
    /// A reading taken out of the record of a recipe again.
    RemoveReading {
        /// The recipe.
        recipe: RecipeId,
        /// How many readings stand before it.
        place: usize,
    },
    /// A recipe put in place of the one with its id, or added.
    PutRecipe(Recipe),
    /// A recipe taken away.
    RemoveRecipe(RecipeId),
    /// An ingredient put in place of the one with its id, or added.
    PutIngredient(Ingredient),
    /// An ingredient taken away.
    RemoveIngredient(IngredientId),
    /// A measure put in place of the one with its id, or added.
    PutMeasure(Measure),
    /// A measure taken away.
    RemoveMeasure(MeasureId),
    /// A vessel put in place of the one with its id, or added.
    PutVessel(Vessel),
    /// A vessel taken away.
    RemoveVessel(VesselId),
    /// A tasting put in place of the one with its id, or added. Cups that do not say so yet are of the book as it is.
    PutTasting(Tasting),
    /// A tasting taken away.
    RemoveTasting(TastingId),
    /// Other settings of the shop.
    SetSettings(Settings),
    /// The latest change of the figures of an item put right what was wrong: what was approved with it had these figures all
    /// along. Without this a changed figure means that the product is another one, and approved drinks stay as they were tasted.
    PutRight(ItemId),
    /// What tastings show of an ingredient is taken over as a figure of it. The cups that were tasted did not change: what was
    /// approved with the ingredient had this figure all along.
    TakeTasted {
        /// The ingredient.
        ingredient: IngredientId,
        /// The figure.
        figure: TastedFigure,
    },
    /// What was taken over from tastings is given up again, and what is stated or assumed holds.
    DropTasted {
        /// The ingredient.
        ingredient: IngredientId,
        /// What of it.
        what: TastedFactor,
    },
    /// From when the figures of an item were no longer what they had been.
    DateChange {
        /// The item.
        item: ItemId,
        /// The day, `2026-05-04`; none when nobody knows.
        day: Option<String>,
        /// The first lot that was otherwise; empty when none is stated.
        lot: String,
    },
    /// Another state of the whole book: an earlier copy, what stands on the disk, a merge of the two.
    PutBook {
        /// The book. Items that it shares with the one before stay the same shared values.
        book: Arc<Book>,
        /// Where it is from.
        reason: WholeBook,
    },
}

impl Edit {
    /// The item that it puts in place of one in the book, and the fields that it changes in that: what a person did who edits
    /// one field of a form. No fields when the item is new.
    ///
    /// A form hands back the whole item, so this is the one place that says which field was meant.
    pub fn changed_fields(&self, book: &Book) -> Option<(ItemId, Vec<&'static str>)> {
        fn fields<T>(
            before: Option<&Arc<T>>,
            after: &T,
            changed: fn(&T, &T) -> Vec<&'static str>,
        ) -> Vec<&'static str> {
            before.map_or_else(Vec::new, |before| changed(before, after))
        }
        Some(match self {
            Self::PutRecipe(item) => {
                let changed = fields(book.recipe(&item.id), item, Recipe::fields_changed_to);
                (ItemId::Recipe(item.id.clone()), changed)
            }
            Self::PutIngredient(item) => {
                let before = book.ingredient(&item.id);
                let changed = fields(before, item, Ingredient::fields_changed_to);
                (ItemId::Ingredient(item.id.clone()), changed)
            }
            Self::PutMeasure(item) => {
                let changed = fields(book.measure(&item.id), item, Measure::fields_changed_to);
                (ItemId::Measure(item.id.clone()), changed)
            }
            Self::PutVessel(item) => {
                let changed = fields(book.vessel(&item.id), item, Vessel::fields_changed_to);
                (ItemId::Vessel(item.id.clone()), changed)
            }
            Self::PutTasting(item) => {
                let changed = fields(book.tasting(&item.id), item, Tasting::fields_changed_to);
                (ItemId::Tasting(item.id.clone()), changed)
            }
            Self::SetSettings(settings) => {
                let changed = book.settings.fields_changed_to(settings);
                (ItemId::Settings, changed)
            }
            _ => return None,
        })
    }
}

/// Why the whole book is another one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WholeBook {
    /// An earlier copy was restored, of the moment as a person reads it when that is known.
    EarlierCopy(Option<String>),
    /// Unsaved work was restored, of the moment as a person reads it.
    RecoveredWork(String),
    /// What another program wrote into the file was taken.
    FileOnDisk,
    /// The changes of another program were joined with those made here.
    Merge,
    /// A recipe of this name was brought in.
    Recipe(String),
    /// So many ingredients were brought in.
    Ingredients(usize),
}

impl WholeBook {
    /// Whether it is the book before with something new in it, rather than another state of it with a history of its own.
    fn adds_to_the_book(&self) -> bool {
        matches!(self, Self::Recipe(_) | Self::Ingredients(_))
    }
}

/// Why an edit can't be carried out: what it is about is gone, something still stands on it, or the book could not be opened
/// again or would have an error.
#[derive(Clone, Debug, PartialEq)]
pub enum EditError {
    /// The target is no longer in the book.
    Gone {
        /// What it is.
        kind: IdKind,
        /// Its id.
        id: String,
    },
    /// The id is taken already.
    Taken {
        /// What has it.
        kind: IdKind,
        /// The id.
        id: String,
    },
    /// A name of blanks only.
    NoName {
        /// What would have it.
        kind: IdKind,
    },
    /// An approved version without a cup would be given one.
    GivesApprovedCup {
        /// Name of the approved version.
        version: String,
    },
    /// No earlier state of the item was kept.
    NothingKept(ItemId),
    /// The book would pass a limit, and could not be opened again.
    PastLimit(LimitPassed),
    /// The book would have errors that it has not now: the first, and the others.
    Faulty(Box<Finding>, Vec<Finding>),
    /// Other versions build on the one that should go.
    BuiltOn {
        /// Name of the version.
        version: String,
        /// Names of those that build on it.
        others: Vec<String>,
    },
}

/// The book with the edit carried out. Items that it does not touch stay the same shared values.
///
/// The lists of recipes stay within their limits; errors may arise, see [`apply_soundly`].
pub fn apply(book: &Book, edit: &Edit) -> Result<Book, EditError> {
    apply_all(book, [edit])
}

/// The book with all edits carried out, one after the other; none of them when one can't be.
pub fn apply_all<'edit>(
    book: &Book,
    edits: impl IntoIterator<Item = &'edit Edit>,
) -> Result<Book, EditError> {
    let mut after = book.clone();
    for edit in edits {
        carry_out(&mut after, edit)?;
    }
    match after.limit_passed_since(book) {
        Some(passed) => Err(EditError::PastLimit(passed)),
        None => Ok(after),
    }
}

/// The same, refused when the book has an error afterwards that it had not before.
///
/// Another state of the whole book is taken as it is: a file that another program wrote may be wrong, and is put right here.
pub fn apply_soundly<'edit>(
    book: &Book,
    edits: impl IntoIterator<Item = &'edit Edit>,
) -> Result<Book, EditError> {
    let mut takes_whole_book = false;
    let edits = edits.into_iter().inspect(|edit| {
        takes_whole_book |= matches!(edit, Edit::PutBook { .. });
    });
    let after = apply_all(book, edits)?;
    if takes_whole_book {
        return Ok(after);
    }
    let mut faults = new_errors(book, &after).into_iter();
    match faults.next() {
        None => Ok(after),
        Some(first) => Err(EditError::Faulty(Box::new(first), faults.collect())),
    }
}

fn carry_out(book: &mut Book, edit: &Edit) -> Result<(), EditError> {
    match edit {
        Edit::Change {
            recipe,
            version,
            change,
        } => {
            change_recipe(book, recipe, |recipe| {
                apply_change(recipe, version.as_ref(), change)
            })?;
        }
        Edit::RenameRecipe { recipe, name } => {
            needs_name(IdKind::Recipe, name)?;
            change_recipe(book, recipe, |recipe| {
                recipe.name.clone_from(name);
                Ok(())
            })?;
        }
        Edit::NoteRecipe { recipe, note } => {
            change_recipe(book, recipe, |recipe| {
                recipe.note.clone_from(note);
                Ok(())
            })?;
        }
        Edit::Translate { item, translation } => translate(book, item, translation)?,
        Edit::SetState {
            recipe,
            version,
            state,
        } => {
            change_recipe(book, recipe, |recipe| {
                set_state(recipe, version.as_ref(), *state)
            })?;
        }
        Edit::AddVersion { recipe, version } => {
            change_recipe(book, recipe, |recipe| add_version(recipe, version))?;
        }
        Edit::RenameVersion {
            recipe,
            version,
            name,
        } => {
            needs_name(IdKind::Version, name)?;
            change_recipe(book, recipe, |recipe| {
                version_of(recipe, version)?.name.clone_from(name);
                Ok(())
            })?;
        }
        Edit::RemoveVersion { recipe, version } => {
            change_recipe(book, recipe, |recipe| remove_version(recipe, version))?;
        }
        Edit::Approve { recipe, approval } => {
            let mut approval = approval.clone();
            let tasted_with = || book.tasted_with(&approval.resolved);
            approval.tasted_with = approval.tasted_with.or_else(|| Some(tasted_with()));
            change_recipe(book, recipe, |recipe| {
                let version = approval.version.clone();
                recipe.approvals.push(approval);
                set_state(recipe, version.as_ref(), State::Approved)
            })?;
        }
        Edit::FileReading { .. } | Edit::RemoveReading { .. } => change_record(book, edit)?,
        Edit::PutRecipe(item) => put(book, item.clone()),
        Edit::RemoveRecipe(id) => removed(book.recipes.remove(id), IdKind::Recipe, id)?,
        Edit::PutIngredient(item) => put(book, item.clone()),
        Edit::RemoveIngredient(id) => removed(book.ingredients.remove(id), IdKind::Ingredient, id)?,
        Edit::PutMeasure(item) => put(book, item.clone()),
        Edit::RemoveMeasure(id) => removed(book.measures.remove(id), IdKind::Measure, id)?,
        Edit::PutVessel(item) => put(book, item.clone()),
        Edit::RemoveVessel(id) => removed(book.vessels.remove(id), IdKind::Vessel, id)?,
        Edit::PutTasting(item) => put_tasting(book, item.clone()),
        Edit::RemoveTasting(id) => removed(book.tastings.remove(id), IdKind::Tasting, id)?,
        Edit::SetSettings(settings) => put_settings(book, settings.clone()),
        Edit::PutRight(item) => revised(book, item, &Revising::PutRight)?,
        Edit::TakeTasted { ingredient, figure } => {
            correct_tasted(book, ingredient, |tasted| tasted.push(figure.clone()))?;
        }
        Edit::DropTasted { ingredient, what } => {
            correct_tasted(book, ingredient, |tasted| {
                tasted.retain(|figure| figure.what != *what);
            })?;
        }
        Edit::DateChange { item, day, lot } => {
            let until = day.as_deref();
            revised(book, item, &Revising::Date { until, lot })?;
        }
        Edit::PutBook {
            book: other,
            reason,
        } => {
            let before = std::mem::replace(book, other.as_ref().clone());
            if reason.adds_to_the_book() {
                keep_all(&before, book);
            }
        }
    }
    Ok(())
}

/// Changes what tastings have shown of an ingredient, as a correction: standards follow.
fn correct_tasted(
    book: &mut Book,
    id: &IngredientId,
    change: impl FnOnce(&mut Vec<TastedFigure>),
) -> Result<(), EditError> {
    let found = book.ingredient(id);
    let mut item = found
        .ok_or_else(|| gone(IdKind::Ingredient, id))?
        .as_ref()
        .clone();
    let kept = item.earlier.states.len();
    change(&mut item.tasted);
    put(book, item);
    let keeps_more = |item: &Arc<Ingredient>| item.earlier.states.len() > kept;
    if book.ingredient(id).is_some_and(keeps_more) {
        revised(book, &ItemId::Ingredient(id.clone()), &Revising::PutRight)?;
    }
    Ok(())
}

fn put_tasting(book: &mut Book, mut tasting: Tasting) {
    for cup in &mut tasting.cups {
        if cup.tasted_with.is_none() {
            cup.tasted_with = Some(book.tasted_with(&cup.lines));
        }
    }
    book.tastings.put(tasting);
}

fn revised(book: &mut Book, item: &ItemId, how: &Revising<'_>) -> Result<(), EditError> {
    revise(book, item, how).ok_or_else(|| EditError::NothingKept(item.clone()))
}

fn gone(kind: IdKind, id: &(impl ToString + ?Sized)) -> EditError {
    EditError::Gone {
        kind,
        id: id.to_string(),
    }
}

fn needs_name(kind: IdKind, name: &str) -> Result<(), EditError> {
    if name.trim().is_empty() {
        Err(EditError::NoName { kind })
    } else {
        Ok(())
    }
}

fn translate(book: &mut Book, item: &ItemId, new: &Translation) -> Result<(), EditError> {
    /// Changes a copy of an item and puts it in place.
    fn within<T: Item + Clone>(
        shelf: &mut Shelf<T>,
        kind: IdKind,
        id: &T::Id,
        change: impl FnOnce(&mut T),
    ) -> Result<(), EditError>
    where
        T::Id: ToString,
    {
        let mut item = shelf
            .get(id)
            .ok_or_else(|| gone(kind, id))?
            .as_ref()
            .clone();
        change(&mut item);
        shelf.put(item);
        Ok(())
    }
    let put = |list: &mut Vec<Translation>| put_translation(list, new.clone());
    match item {
        ItemId::Settings => {
            put(&mut book.settings.translations);
            Ok(())
        }
        ItemId::Ingredient(id) => within(&mut book.ingredients, IdKind::Ingredient, id, |item| {
            put(&mut item.translations);
        }),
        ItemId::Measure(id) => within(&mut book.measures, IdKind::Measure, id, |item| {
            put(&mut item.translations);
        }),
        ItemId::Vessel(id) => within(&mut book.vessels, IdKind::Vessel, id, |item| {
            put(&mut item.translations);
        }),
        ItemId::Recipe(id) => within(&mut book.recipes, IdKind::Recipe, id, |item| {
            put(&mut item.translations);
        }),
        // What people said of a cup is said in no other language.
        ItemId::Tasting(id) => Err(gone(IdKind::Tasting, id)),
    }
}

fn removed<T>(item: Option<T>, kind: IdKind, id: &impl ToString) -> Result<(), EditError> {
    item.map(drop).ok_or_else(|| gone(kind, id))
}

fn change_recipe(
    book: &mut Book,
    id: &RecipeId,
    change: impl FnOnce(&mut Recipe) -> Result<(), EditError>,
) -> Result<(), EditError> {
    let mut recipe = book
        .recipe(id)
        .ok_or_else(|| gone(IdKind::Recipe, id))?
        .as_ref()
        .clone();
    change(&mut recipe)?;
    put(book, recipe);
    Ok(())
}

/// Files a reading of a cup, or takes one out.
fn change_record(book: &mut Book, edit: &Edit) -> Result<(), EditError> {
    match edit {
        Edit::FileReading { recipe, reading } => change_recipe(book, recipe, |recipe| {
            recipe.readings.push(reading.clone());
            Ok(())
        }),
        Edit::RemoveReading { recipe, place } => change_recipe(book, recipe, |recipe| {
            if *place < recipe.readings.len() {
                recipe.readings.remove(*place);
            }
            Ok(())
        }),
        _ => Ok(()),
    }
}

fn version_of<'recipe>(
    recipe: &'recipe mut Recipe,
    id: &VersionId,
) -> Result<&'recipe mut Version, EditError> {
    recipe
        .versions
        .iter_mut()
        .find(|version| version.id == *id)
        .ok_or_else(|| gone(IdKind::Version, id))
}

fn apply_change(
    recipe: &mut Recipe,
    version: Option<&VersionId>,
    change: &Change,
) -> Result<(), EditError> {
    put_change(recipe, version, change).map_err(|refused| match refused {
        ChangeRefused::NoVersion(id) => gone(IdKind::Version, &id),
        ChangeRefused::NoEntry(id) => gone(IdKind::Line, &id),
        ChangeRefused::IdTaken(id) => EditError::Taken {
            kind: IdKind::Line,
            id: id.to_string(),
        },
        ChangeRefused::GivesApprovedCup(id) => EditError::GivesApprovedCup {
            version: recipe
                .version(&id)
                .map_or_else(|| id.to_string(), |version| version.name.clone()),
        },
    })
}

fn set_state(
    recipe: &mut Recipe,
    version: Option<&VersionId>,
    state: State,
) -> Result<(), EditError> {
    match version {
        None => recipe.state = state,
        Some(id) => version_of(recipe, id)?.state = state,
    }
    Ok(())
}

fn add_version(recipe: &mut Recipe, version: &Version) -> Result<(), EditError> {
    if recipe.version(&version.id).is_some() {
        return Err(EditError::Taken {
            kind: IdKind::Version,
            id: version.id.to_string(),
        });
    }
    recipe.versions.push(version.clone());
    Ok(())
}

fn remove_version(recipe: &mut Recipe, id: &VersionId) -> Result<(), EditError> {
    let building: Vec<String> = recipe
        .versions
        .iter()
        .filter(|version| version.builds_on.as_ref() == Some(id))
        .map(|version| version.name.clone())
        .collect();
    if !building.is_empty() {
        return Err(EditError::BuiltOn {
            version: recipe
                .version(id)
                .map_or_else(|| id.to_string(), |version| version.name.clone()),
            others: building,
        });
    }
    let before = recipe.versions.len();
    recipe.versions.retain(|version| version.id != *id);
    if recipe.versions.len() == before {
        Err(gone(IdKind::Version, id))
    } else {
        Ok(())
    }
}
