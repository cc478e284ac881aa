//! The review of what is brought in: the list of ingredients line by line, and the mappings of a foreign recipe.

use std::collections::{BTreeMap, BTreeSet};
use std::path::PathBuf;
use std::sync::Arc;

use egui::{Button, ComboBox, Grid, Label, RichText, Ui};

use crate::book::IngredientId;
use crate::edit::{Edit, Focus};
use crate::exchange::{
    Arrival, DecimalSign, Delimiter, Field, ForeignRecipe, LineMapping, MappedTo, Review,
    ReviewLine,
};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::tall_list::TallList;
use crate::ui::theme::{self, grid};
use crate::ui::words::{heading_ui, quiet_ui, speaker};
use crate::workbench::{
    Action, ArrivalOrder, ArrivalReview, Command, ListContent, ListInHand, ListTaking, Look,
    RecipeOrder, RecipeReview, TableOrder, TableReview, Workbench,
};

/// What the workbench has found for the list in hand.
#[derive(Clone, Debug, Default)]
pub struct ReviewLooks {
    /// What a table would do to the book.
    pub table: Look<Result<TableReview, String>>,
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
            }
            ListContent::OtherShop(Ok(foreign)) => {
                looks.arrival = workbench.arrival_review(&state.arrival_order(&list, foreign));
            }
            ListContent::Recipe(Ok(recipe)) => {
                looks.recipe = workbench.recipe_review(&RecipeOrder(recipe.clone()));
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
    columns: Option<Vec<Option<Field>>>,
    sign: Option<DecimalSign>,
    /// Lines that are not to be taken, by position.
    refused: BTreeSet<usize>,
    rows: TallList,
    /// The list that the rows are of.
    listed: Option<Arc<Result<TableReview, String>>>,
    /// What stands for an ingredient of another shop.
    mapped: BTreeMap<IngredientId, MappedTo>,
    /// Something was chosen in this frame; what comes of it is asked for in the next one.
    has_changed: bool,
}

impl ReviewState {
    /// Begins anew with another file.
    pub(super) fn follow(&mut self, list: &ListInHand) {
        if self.path.as_ref() != Some(&list.path) {
            *self = Self {
                path: Some(list.path.clone()),
                ..Self::default()
            };
        }
    }

    fn table_order(&self, list: &ListInHand, bytes: &Arc<Vec<u8>>) -> TableOrder {
        let is_of_list = self.path.as_ref() == Some(&list.path);
        TableOrder {
            bytes: bytes.clone(),
            delimiter: self.delimiter.filter(|_| is_of_list),
            columns: self.columns.clone().filter(|_| is_of_list),
            sign: self.sign.filter(|_| is_of_list),
        }
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
        self.columns = None;
        self.sign = None;
        self.refused.clear();
        self.has_changed = true;
    }

    pub(super) fn set_sign(&mut self, sign: DecimalSign) {
        self.sign = Some(sign);
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
        self.has_changed = true;
    }

    /// The rows are measured anew for another list.
    fn follow_list(&mut self, reviewed: &Arc<Result<TableReview, String>>) {
        let is_same = |known: &Arc<Result<TableReview, String>>| Arc::ptr_eq(known, reviewed);
        if !self.listed.as_ref().is_some_and(is_same) {
            self.listed = Some(reviewed.clone());
            self.rows = TallList::default();
        }
    }
}

/// The list, line by line, and the button that takes what is ticked.
pub(super) fn list_ui(
    ui: &mut Ui,
    looks: &ReviewLooks,
    reviewed: &Arc<Result<TableReview, String>>,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let Ok(table) = reviewed.as_ref() else { return };
    let speaker = speaker(ui.ctx()).about(table.book());
    state.follow_list(reviewed);
    let palette = theme::palette(ui.visuals());
    let review = &table.review;
    heading_ui(ui, speaker.word("cards-screen-changes"));
    let [new, changed, same, skipped] = table.counts;
    let counts = say!(
        speaker,
        "cards-screen-changes-counted",
        new: new.to_string(),
        changed: changed.to_string(),
        same: same.to_string(),
        skipped: skipped.to_string(),
    );
    ui.label(RichText::new(counts).color(palette.text_quiet));
    ui.add_space(grid::TIGHT);
    ui.horizontal(|ui| {
        let is_refused = |at: &&usize| review.lines.get(**at).is_some_and(ReviewLine::is_change);
        let count = new + changed - state.refused.iter().filter(is_refused).count();
        let words = say!(speaker, "cards-screen-changes-take", count: count.to_string());
        let words = RichText::new(words).color(palette.on_accent);
        let button = Button::new(words).fill(palette.accent);
        // What is still being looked through may differ from what stands there.
        let is_ready = count > 0 && !looks.is_taking && looks.table.current().is_some();
        if ui.add_enabled(is_ready, button).clicked() {
            actions.push(Action::Command(Command::TakeList(ListTaking {
                reviewed: reviewed.clone(),
                refused: state.refused.clone(),
            })));
        }
        away_ui(ui, speaker.word("cards-screen-leave"), actions);
        if looks.is_taking {
            let words = RichText::new(speaker.word("cards-screen-changes-taking"));
            ui.label(words.color(palette.text_quiet));
        }
    });
    ui.add_space(grid::NEAR);
    let mut ticked = None;
    let refused = &state.refused;
    state.rows.in_sheet_ui(ui, review.lines.len(), |ui, at| {
        if line_ui(ui, speaker, &review.lines[at], refused.contains(&at)) {
            ticked = Some(at);
        }
    });
    if let Some(at) = ticked
        && !state.refused.remove(&at)
    {
        state.refused.insert(at);
    }
    copy_ui(ui, speaker.word("cards-screen-changes-table"), || {
        list_as_table(speaker, review, &state.refused)
    });
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

/// A line of the list; `true` when it is ticked or unticked.
fn line_ui(ui: &mut Ui, speaker: Speaker<'_>, line: &ReviewLine, is_refused: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let mut changed = false;
    ui.horizontal_wrapped(|ui| {
        let number = line.line.to_string();
        let name = if line.name.is_empty() {
            say!(speaker, "cards-screen-line", line: number)
        } else {
            let name = name_as_shown(&line.name);
            say!(speaker, "cards-screen-line-of", name: name, line: number)
        };
        if line.is_change() {
            changed = ui.checkbox(&mut !is_refused, name).changed();
        } else {
            ui.label(RichText::new(name).color(palette.text_quiet));
        }
        let outcome = speaker.outcome(&line.outcome);
        let words = match speaker.outcome_details(line) {
            details if details.is_empty() => outcome.to_owned(),
            details => {
                say!(speaker, "cards-screen-outcome", outcome: outcome, details: details)
            }
        };
        ui.add(Label::new(words).wrap());
    });
    for doubt in &line.doubts {
        ui.indent("doubt", |ui| {
            ui.add(Label::new(RichText::new(speaker.doubt(doubt)).color(palette.caution)).wrap());
        });
    }
    changed
}

/// The list line by line, with what is ticked.
fn list_as_table(speaker: Speaker<'_>, review: &Review, refused: &BTreeSet<usize>) -> Table {
    let heads = [
        "cards-screen-changes-table-line",
        "cards-screen-changes-table-ingredient",
        "cards-screen-changes-table-taken",
        "cards-screen-changes-table-outcome",
        "cards-screen-changes-table-details",
        "cards-screen-changes-table-doubts",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for (at, line) in review.lines.iter().enumerate() {
        let taken = match (line.is_change(), refused.contains(&at)) {
            (false, _) => "",
            (true, true) => speaker.word("cards-screen-no"),
            (true, false) => speaker.word("cards-screen-yes"),
        };
        table.row([
            Cell::figure(&line.line.to_string()),
            Cell::words(&name_as_shown(&line.name)),
            Cell::words(taken),
            Cell::words(speaker.outcome(&line.outcome)),
            Cell::words(&speaker.outcome_details(line)),
            Cell::words(&speaker.doubts(&line.doubts)),
        ]);
    }
    table
}

/// The mappings of a recipe of another shop, and what comes of them.
pub(super) fn other_shop_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    foreign: &ForeignRecipe,
    look: &Look<ArrivalReview>,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let theirs = foreign.book.recipe(&foreign.recipe);
    let unnamed = speaker.word("cards-screen-other-shop-recipe");
    let name = theirs.map_or(unnamed.into(), |recipe| name_as_shown(&recipe.name));
    heading_ui(ui, &name);
    let shop = name_as_shown(&foreign.book.settings.shop);
    let from = say!(speaker, "cards-screen-other-shop-from", shop: shop);
    ui.label(RichText::new(from).color(palette.text_quiet));
    ui.add_space(grid::NEAR);
    let is_current = look.current().is_some();
    // What was found for the choice before stays there while the next one is worked out.
    if let Some(found) = &look.found {
        mappings_ui(ui, screen, &found.mappings, state);
        ui.add_space(grid::EASY);
    }
    if !is_current {
        working_ui(ui, speaker.word("cards-screen-arrival-looking"));
    }
    match look.found.as_deref().map(|found| &found.arrival) {
        Some(Ok((arrived, edit))) => {
            arrival_ui(ui, screen, arrived, edit, is_current, actions);
        }
        Some(Err(reason)) => {
            ui.add(Label::new(RichText::new(reason).color(palette.off_level)).wrap());
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        None => away_ui(ui, speaker.word("cards-screen-leave"), actions),
    }
}

fn mappings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    mappings: &[LineMapping],
    state: &mut ReviewState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    Grid::new("other-shop")
        .spacing(egui::vec2(grid::APART, grid::NEAR))
        .show(ui, |ui| {
            for (at, mapping) in mappings.iter().enumerate() {
                ui.label(name_as_shown(&mapping.foreign.name).as_ref());
                let name = |to: &MappedTo| mapped_words(speaker, to);
                let chosen = state.mapped.get(&mapping.foreign.ingredient);
                let now = chosen.unwrap_or(&mapping.to).clone();
                let combo = ComboBox::from_id_salt(("mapping", at))
                    .selected_text(name(&now))
                    .width(240.0)
                    .show_ui(ui, |ui| {
                        let ours = mapping.candidates.iter().cloned().map(MappedTo::Ours);
                        for to in ours.chain([MappedTo::Added]) {
                            if ui.selectable_label(now == to, name(&to)).clicked() {
                                let theirs = mapping.foreign.ingredient.clone();
                                state.mapped.insert(theirs, to);
                                state.has_changed = true;
                            }
                        }
                    });
                let name = name_as_shown(&mapping.foreign.name);
                combo
                    .response
                    .accessible_name(say!(speaker, "cards-screen-mapping-field", ingredient: name));
                let why = RichText::new(speaker.mapping_reason(mapping));
                ui.label(why.color(palette.text_quiet));
                ui.end_row();
            }
        });
    copy_ui(ui, speaker.word("cards-screen-mappings-table"), || {
        let heads = [
            "cards-screen-mappings-table-theirs",
            "cards-screen-mappings-table-here",
            "cards-screen-mappings-table-why",
        ];
        let mut table = Table::new(heads.map(|head| speaker.word(head)));
        for mapping in mappings {
            table.row([
                Cell::words(&name_as_shown(&mapping.foreign.name)),
                Cell::words(&mapped_words(speaker, &mapping.to)),
                Cell::words(&speaker.mapping_reason(mapping)),
            ]);
        }
        table
    });
}

/// What stands for an ingredient of another shop.
fn mapped_words(speaker: Speaker<'_>, to: &MappedTo) -> String {
    match to {
        MappedTo::Ours(id) => speaker.ingredient(id),
        MappedTo::Added => speaker.word("cards-screen-mapping-added").to_owned(),
    }
}

/// Amount and ingredient of each line, as this shop would make it.
fn arrived_lines(screen: &Screen<'_>, arrived: &Arrival) -> Vec<[String; 2]> {
    let entries = arrived.recipe.entries.iter();
    let words = |line: &crate::book::Line| {
        let ours = screen.book.ingredient(&line.ingredient).map(AsRef::as_ref);
        let mut added = arrived.added.iter();
        let item = ours.or_else(|| added.find(|item| item.id == line.ingredient));
        let name = item.map_or_else(
            || line.ingredient.to_string(),
            |item| name_as_shown(&item.full_name()).into_owned(),
        );
        [screen.speaker.amount(&line.amount), name]
    };
    entries
        .filter_map(|entry| entry.line())
        .map(words)
        .collect()
}

fn arrival_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    arrived: &Arrival,
    edit: &Edit,
    is_current: bool,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("cards-screen-arrival"));
    let lines = arrived_lines(screen, arrived);
    for [amount, name] in &lines {
        ui.label(say!(speaker, "cards-screen-arrival-line", amount: amount, ingredient: name));
    }
    copy_ui(ui, speaker.word("cards-screen-arrival-table"), || {
        let heads = [
            "cards-screen-arrival-table-amount",
            "cards-screen-arrival-table-ingredient",
        ];
        let mut table = Table::new(heads.map(|head| speaker.word(head)));
        for line in &lines {
            table.row(line.each_ref().map(|words| Cell::words(words)));
        }
        table
    });
    ui.add_space(grid::TIGHT);
    ui.label(difference_words(speaker, arrived));
    let words = RichText::new(speaker.arrival(arrived)).color(palette.text_quiet);
    ui.add(Label::new(words).wrap());
    ui.add_space(grid::EASY);
    ui.horizontal(|ui| {
        let words = RichText::new(speaker.word("cards-screen-add-recipe"));
        let button = Button::new(words.color(palette.on_accent)).fill(palette.accent);
        if ui.add_enabled(is_current, button).clicked() {
            actions.push(Action::edit(edit.clone(), Focus::Book));
            actions.push(Action::Command(Command::CloseStep));
            actions.push(Action::Command(Command::PutListAway));
        }
        away_ui(ui, speaker.word("cards-screen-leave"), actions);
    });
}

/// How far the recipe is from the standard of the other shop, with the amounts as they are now and as they were.
fn difference_words(speaker: Speaker<'_>, arrived: &Arrival) -> String {
    let (after, before) = (arrived.difference.distance, arrived.plain.distance);
    let known = match (after, before) {
        (Some(_), Some(_)) => "both",
        (Some(_), None) => "after",
        (None, Some(_)) => "before",
        (None, None) => "neither",
    };
    let steps =
        |distance: Option<f64>| distance.map_or_else(String::new, |steps| speaker.number(steps, 2));
    say!(
        speaker,
        "cards-screen-arrival-difference",
        known: known,
        steps: steps(after),
        before: steps(before),
    )
}
