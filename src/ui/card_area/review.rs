//! What a person has chosen for what is brought in, and what the workbench has found for it.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::Arc;

use egui::Ui;

use super::match_menu::MatchMenu;
use crate::book::{Form, IngredientId};
use crate::exchange::{
    DecimalSign, Delimiter, Field, ForeignRecipe, ListChoices, MappedTo, ReadRecipe, ReviewLine,
    RowMatch,
};
use crate::ui::tall_list::TallList;
use crate::ui::words::quiet_ui;
use crate::workbench::{
    Action, ArrivalOrder, ArrivalReview, Command, EffectReview, ListContent, ListInHand,
    ListTaking, Look, RecipeOrder, RecipeReview, TableOrder, TableReview, Workbench,
};

/// What the workbench has found for the list in hand.
#[derive(Clone, Debug, Default)]
pub struct ReviewLooks {
    /// What a table would do to the book.
    pub table: Look<Result<TableReview, String>>,
    /// What taking its ticked lines does to the cost of the drinks.
    pub effects: Look<EffectReview>,
    /// What a recipe of another shop becomes.
    pub arrival: Look<ArrivalReview>,
    /// What adding a schema.org recipe does.
    pub recipe: Look<RecipeReview>,
    /// Whether lines are being taken into the book.
    pub is_taking: bool,
}

impl ReviewLooks {
    /// Asks the workbench for what is shown of the list in hand.
    pub(super) fn take(workbench: &mut Workbench, state: &ReviewState) -> Self {
        let mut looks = Self {
            is_taking: workbench.is_taking_list(),
            ..Self::default()
        };
        let Some(list) = workbench.list_in_hand().cloned() else {
            return looks;
        };
        match &list.content {
            ListContent::Table(bytes) => {
                looks.table = workbench.table_review(&state.table_order(&list, bytes));
                let taking = state.taking().filter(|taking| !taking.taken.is_empty());
                if let Some(taking) = taking
                    && looks.table.current().is_some()
                {
                    looks.effects = workbench.effect_review(&taking);
                }
            }
            ListContent::OtherShop(Ok(foreign)) => {
                looks.arrival = workbench.arrival_review(&state.arrival_order(&list, foreign));
            }
            ListContent::Recipe(Ok(recipe)) => {
                looks.recipe = workbench.recipe_review(&state.recipe_order(&list, recipe));
            }
            ListContent::Recipe(Err(_)) | ListContent::OtherShop(Err(_)) => {}
        }
        looks
    }
}

/// What a person has chosen for a list; it stays when the book changes.
#[derive(Default)]
pub(super) struct ReviewState {
    path: Option<PathBuf>,
    delimiter: Option<Delimiter>,
    heading_line: Option<u64>,
    columns: Option<Vec<Option<Field>>>,
    sign: Option<DecimalSign>,
    choices: Arc<ListChoices>,
    /// Lines that a person has ticked or unticked, by position.
    ticks: BTreeMap<usize, bool>,
    /// Lines that are ticked, by position.
    taken: Arc<BTreeSet<usize>>,
    pub(super) rows: TallList,
    pub(super) menu: MatchMenu,
    /// Whether all drinks are listed whose cost changes.
    pub(super) lists_all_effects: bool,
    /// The list that the rows are of.
    listed: Option<Arc<Result<TableReview, String>>>,
    /// What the sentences of a recipe are about, by position.
    sentences: Arc<BTreeMap<usize, RowMatch>>,
    /// What stands for an ingredient of another shop.
    mapped: BTreeMap<IngredientId, MappedTo>,
    /// Something was chosen in this frame; what comes of it is asked for in the next one.
    has_changed: bool,
}

impl ReviewState {
    /// Begins anew with another file; tells whether it did.
    pub(super) fn follow(&mut self, list: &ListInHand) -> bool {
        let is_another = self.path.as_ref() != Some(&list.path);
        if is_another {
            *self = Self {
                path: Some(list.path.clone()),
                ..Self::default()
            };
        }
        is_another
    }

    /// The list has been dealt with: whoever brings the same file in again begins anew.
    pub(super) fn forget(&mut self) {
        if self.path.is_some() {
            *self = Self::default();
        }
    }

    fn table_order(&self, list: &ListInHand, bytes: &Arc<Vec<u8>>) -> TableOrder {
        let is_of_list = self.path.as_ref() == Some(&list.path);
        TableOrder {
            bytes: bytes.clone(),
            delimiter: self.delimiter.filter(|_| is_of_list),
            columns: self.columns.clone().filter(|_| is_of_list),
            sign: self.sign.filter(|_| is_of_list),
            heading_line: self.heading_line.filter(|_| is_of_list),
            choices: if is_of_list {
                self.choices.clone()
            } else {
                Arc::default()
            },
        }
    }

    fn recipe_order(&self, list: &ListInHand, recipe: &Arc<ReadRecipe>) -> RecipeOrder {
        let is_of_list = self.path.as_ref() == Some(&list.path);
        RecipeOrder {
            recipe: recipe.clone(),
            chosen: if is_of_list {
                self.sentences.clone()
            } else {
                Arc::default()
            },
        }
    }

    /// Says what a sentence of a recipe is about.
    pub(super) fn match_sentence(&mut self, at: usize, to: RowMatch) {
        Arc::make_mut(&mut self.sentences).insert(at, to);
        self.has_changed = true;
    }

    fn arrival_order(&self, list: &ListInHand, foreign: &Arc<ForeignRecipe>) -> ArrivalOrder {
        let is_of_list = self.path.as_ref() == Some(&list.path);
        ArrivalOrder {
            foreign: foreign.clone(),
            chosen: Some(self.mapped.clone())
                .filter(|_| is_of_list)
                .unwrap_or_default(),
        }
    }

    /// Another sign between cells makes other columns and lines.
    pub(super) fn read_with(&mut self, delimiter: Delimiter) {
        self.delimiter = Some(delimiter);
        self.heading_line = None;
        self.read_anew();
    }

    /// So do headings in another line.
    pub(super) fn set_heading_line(&mut self, line: u64) {
        self.heading_line = Some(line);
        self.read_anew();
    }

    fn read_anew(&mut self) {
        self.columns = None;
        self.sign = None;
        self.choices_mut().rows.clear();
        self.forget_ticks();
    }

    /// What was ticked said something else before.
    fn forget_ticks(&mut self) {
        self.ticks.clear();
        self.has_changed = true;
    }

    pub(super) fn set_sign(&mut self, sign: DecimalSign) {
        self.sign = Some(sign);
        self.forget_ticks();
    }

    /// What is said of the rows of the list.
    pub(super) fn choices(&self) -> &ListChoices {
        &self.choices
    }

    fn choices_mut(&mut self) -> &mut ListChoices {
        self.has_changed = true;
        Arc::make_mut(&mut self.choices)
    }

    pub(super) fn set_supplier(&mut self, supplier: String) {
        self.choices_mut().supplier = supplier;
    }

    pub(super) fn set_form(&mut self, form: Option<Form>) {
        self.choices_mut().form = form;
    }

    /// Says what a row is about.
    pub(super) fn match_row(&mut self, at: usize, line: u64, to: RowMatch) {
        self.choices_mut().rows.insert(line, to);
        self.ticks.remove(&at);
    }

    /// Lines that are ticked, by position.
    pub(super) fn taken(&self) -> &Arc<BTreeSet<usize>> {
        &self.taken
    }

    /// Ticks a line, or takes its tick away.
    pub(super) fn tick(&mut self, at: usize) {
        let is_taken = self.taken.contains(&at);
        self.ticks.insert(at, !is_taken);
        let taken = Arc::make_mut(&mut self.taken);
        if is_taken {
            taken.remove(&at);
        } else {
            taken.insert(at);
        }
        self.has_changed = true;
    }

    /// What would be taken of the list that was looked through last.
    pub(super) fn taking(&self) -> Option<ListTaking> {
        Some(ListTaking {
            reviewed: self.listed.clone()?,
            taken: self.taken.clone(),
        })
    }

    /// What stands for ingredients of another shop.
    pub(super) fn mapped(&self) -> &BTreeMap<IngredientId, MappedTo> {
        &self.mapped
    }

    pub(super) fn map_theirs(&mut self, theirs: IngredientId, to: MappedTo) {
        self.mapped.insert(theirs, to);
        self.has_changed = true;
    }

    /// Lets the next frame come at once when something was chosen in this one.
    pub(super) fn show_what_was_chosen(&mut self, ui: &Ui) {
        if std::mem::take(&mut self.has_changed) {
            ui.ctx().request_repaint();
        }
    }

    /// Says what a column means; a field has one column, so another one that had it is left out.
    pub(super) fn map(&mut self, now: &TableReview, at: usize, field: Option<Field>) {
        let mut columns = now.mapping.columns.clone();
        for column in &mut columns {
            if field.is_some() && *column == field {
                *column = None;
            }
        }
        if let Some(column) = columns.get_mut(at) {
            *column = field;
        }
        self.columns = Some(columns);
        self.forget_ticks();
    }

    /// The rows are measured anew for another list, and ticked where they are sure.
    pub(super) fn follow_list(&mut self, reviewed: &Arc<Result<TableReview, String>>) {
        let is_same = |known: &Arc<Result<TableReview, String>>| Arc::ptr_eq(known, reviewed);
        if self.listed.as_ref().is_some_and(is_same) {
            return;
        }
        self.listed = Some(reviewed.clone());
        self.rows = TallList::default();
        let Ok(table) = reviewed.as_ref() else {
            return;
        };
        let mut taken = table.sure.clone();
        for (at, is_ticked) in &self.ticks {
            let line = table.review.lines.get(*at);
            if *is_ticked && line.is_some_and(ReviewLine::is_change) {
                taken.insert(*at);
            } else {
                taken.remove(at);
            }
        }
        self.taken = Arc::new(taken);
        self.has_changed = true;
    }
}

/// Puts the list away without taking anything.
pub(super) fn away_ui(ui: &mut Ui, words: &str, actions: &mut Vec<Action>) {
    if ui.button(words).clicked() {
        actions.push(Action::Command(Command::PutListAway));
    }
}

/// What stands there while a thread is at work on it.
pub(super) fn working_ui(ui: &mut Ui, words: &str) {
    quiet_ui(ui, words);
}
