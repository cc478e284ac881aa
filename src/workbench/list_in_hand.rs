//! A list or recipe that is being brought in: what is asked about it, and what waits for an answer.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::Arc;

use super::job::Job;
use super::search::Search;
use crate::book::{Book, IngredientId};
use crate::edit::Edit;
use crate::exchange::{
    Arrival, CostEffect, DecimalSign, DecimalSigns, Delimiter, Field, ForeignRecipe, LineMapping,
    ListChoices, MappedTo, Mapping, ReadRecipe, Review, RowMatch, TextTable, WrittenArrival,
};

/// A file that is being brought in.
#[derive(Clone, Debug, PartialEq)]
pub struct ListInHand {
    /// Where it is.
    pub path: PathBuf,
    /// What stands in it.
    pub content: ListContent,
}

/// What a file that is brought in holds, by the ending of its name.
#[derive(Clone, Debug, PartialEq)]
pub enum ListContent {
    /// A table: the bytes, for the delimiter is still to be chosen.
    Table(Arc<Vec<u8>>),
    /// A schema.org recipe, or why it is none.
    Recipe(Result<Arc<ReadRecipe>, String>),
    /// A recipe of another shop, or why it is none.
    OtherShop(Result<Arc<ForeignRecipe>, String>),
}

/// How a table is to be read: what a person has chosen, the rest is told from the table.
#[derive(Clone, Debug)]
pub struct TableOrder {
    /// The bytes of the file.
    pub bytes: Arc<Vec<u8>>,
    /// The sign between cells.
    pub delimiter: Option<Delimiter>,
    /// The line of the headings, from 1.
    pub heading_line: Option<u64>,
    /// What each column means.
    pub columns: Option<Vec<Option<Field>>>,
    /// The decimal sign.
    pub sign: Option<DecimalSign>,
    /// What is said of its rows; without a day its prices are of today.
    pub choices: Arc<ListChoices>,
}

impl PartialEq for TableOrder {
    fn eq(&self, other: &Self) -> bool {
        // It is asked for in every frame: the bytes are the same when they are the same in memory.
        Arc::ptr_eq(&self.bytes, &other.bytes)
            && self.delimiter == other.delimiter
            && self.heading_line == other.heading_line
            && self.choices == other.choices
            && self.columns == other.columns
            && self.sign == other.sign
    }
}

/// A table as it was read, and what it would do to the book.
#[derive(Clone, Debug, PartialEq)]
pub struct TableReview {
    /// The table.
    pub table: TextTable,
    /// What its columns mean.
    pub mapping: Mapping,
    /// Its decimal signs.
    pub signs: DecimalSigns,
    /// Line by line.
    pub review: Review,
    /// How many lines are new, changed, the same, skipped.
    pub counts: [usize; 4],
    /// Lines that are taken unless somebody says otherwise, by position.
    pub sure: BTreeSet<usize>,
    /// How many lines would change something and are not taken unless somebody says so.
    pub unsure: usize,
    /// Everybody who sells something to the shop.
    pub suppliers: BTreeSet<String>,
    /// The book that it is about.
    pub(super) of: Arc<Book>,
}

impl TableReview {
    /// The book that it is about.
    pub fn book(&self) -> &Book {
        &self.of
    }
}

/// A recipe of another shop, with what a person has chosen to stand for some of its ingredients.
#[derive(Clone, Debug)]
pub struct ArrivalOrder {
    /// The recipe.
    pub foreign: Arc<ForeignRecipe>,
    /// What stands for a foreign ingredient.
    pub chosen: BTreeMap<IngredientId, MappedTo>,
}

impl PartialEq for ArrivalOrder {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.foreign, &other.foreign) && self.chosen == other.chosen
    }
}

/// A recipe of another shop as this shop would make it.
#[derive(Clone, Debug, PartialEq)]
pub struct ArrivalReview {
    /// What stands for each foreign ingredient.
    pub mappings: Vec<LineMapping>,
    /// The recipe and what accepting it does, or why it can't be taken over.
    pub arrival: Result<(Arrival, Edit), String>,
}

/// A schema.org recipe, with what a person has said of its ingredients, by position.
#[derive(Clone, Debug)]
pub struct RecipeOrder {
    /// The recipe.
    pub recipe: Arc<ReadRecipe>,
    /// What its ingredients are.
    pub chosen: Arc<BTreeMap<usize, RowMatch>>,
}

impl PartialEq for RecipeOrder {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.recipe, &other.recipe) && self.chosen == other.chosen
    }
}

/// A schema.org recipe as a draft of the book; or why it can't be added.
pub type RecipeReview = Result<WrittenArrival, String>;

/// Lines of a list that are taken into the book, by position.
#[derive(Clone, Debug)]
pub struct ListTaking {
    /// The list.
    pub reviewed: Arc<Result<TableReview, String>>,
    /// The lines.
    pub taken: Arc<BTreeSet<usize>>,
}

impl PartialEq for ListTaking {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.reviewed, &other.reviewed) && self.taken == other.taken
    }
}

/// What taking lines of a list does to the cost of the drinks, the largest rise first; or why they can't be taken.
pub type EffectReview = Result<Vec<CostEffect>, String>;

/// What is being taken over into a book, with the edit that does it.
pub(super) type Taking = Job<Arc<Book>, Result<Option<(Edit, Counted)>, String>>;

/// How many ingredients are new and how many change.
#[derive(Clone, Copy, Debug)]
pub(super) struct Counted {
    pub(super) new: usize,
    pub(super) changed: usize,
}

/// What is being brought in.
#[derive(Default)]
pub(super) struct BringingIn {
    pub(super) list: Option<ListInHand>,
    /// A file that is being read, with what it says or why it can't be read.
    pub(super) reading: Option<Job<PathBuf, Result<ListContent, String>>>,
    pub(super) tables: Search<TableOrder, Result<TableReview, String>>,
    pub(super) effects: Search<ListTaking, EffectReview>,
    pub(super) arrivals: Search<ArrivalOrder, ArrivalReview>,
    pub(super) recipes: Search<RecipeOrder, RecipeReview>,
    pub(super) taking: Option<Taking>,
}

impl BringingIn {
    pub(super) fn is_searching(&self) -> bool {
        self.tables.is_running()
            || self.effects.is_running()
            || self.arrivals.is_running()
            || self.recipes.is_running()
    }
}
