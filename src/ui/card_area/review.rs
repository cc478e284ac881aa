//! The review of what is brought in: the list of ingredients line by line, and the mappings of a foreign recipe.

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::Arc;

use egui::{Button, ComboBox, Grid, Label, RichText, Ui};

use super::bring_in::away_ui;
use crate::book::Book;
use crate::edit::Edit;
use crate::exchange::{
    Arrival, DecimalSign, DecimalSigns, Delimiter, Encoding, Field, ForeignRecipe, LineMapping,
    MappedTo, Mapping, Outcome, Review, ReviewLine, TextTable, arrival, edits_of, guess_mapping,
    propose_mappings, read_table, review_price_list,
};
use crate::quantity::{name_as_shown, show_number};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::tall_list::TallList;
use crate::ui::theme::{self, grid};
use crate::ui::words::heading_ui;
use crate::workbench::{Action, Command, ListContent, ListInHand, today};

/// What taking lines of a list does.
struct Taking {
    /// How many lines are taken.
    count: usize,
    /// `None` when nothing would change.
    edit: Result<Option<Edit>, String>,
}

/// What is looked at of a list.
#[derive(Default)]
pub(super) struct ReviewState {
    path: Option<PathBuf>,
    book: Option<Arc<Book>>,
    table: Option<Result<Arc<TextTable>, String>>,
    mapping: Mapping,
    /// The decimal sign that a person chose.
    sign: Option<DecimalSign>,
    signs: DecimalSigns,
    review: Option<Arc<Review>>,
    /// Lines that are not to be taken, by position.
    refused: BTreeSet<usize>,
    /// What taking the others does.
    taking: Option<Arc<Taking>>,
    rows: TallList,
    mappings: Vec<LineMapping>,
    arrival: Option<Result<Box<Arrival>, String>>,
}

impl ReviewState {
    /// What taking the ticked lines does; worked out once for what is ticked.
    fn taking(&mut self) -> Option<Arc<Taking>> {
        let (review, book) = (self.review.as_ref()?, self.book.as_ref()?);
        let refused = &self.refused;
        let taking = self.taking.get_or_insert_with(|| {
            let taken = |at: usize| review.lines[at].is_change() && !refused.contains(&at);
            let count = (0..review.lines.len()).filter(|at| taken(*at)).count();
            let label = match count {
                1 => "bring in an ingredient".to_owned(),
                count => format!("bring in {count} ingredients"),
            };
            let edit = edits_of(book, review, taken, label).map_err(|error| error.to_string());
            Arc::new(Taking { count, edit })
        });
        Some(taking.clone())
    }

    /// The list is looked at anew: with another meaning of a column, or beside another book.
    fn look_again(&mut self) {
        self.review = None;
        self.taking = None;
        self.rows = TallList::default();
    }

    /// Begins anew with another file, and looks again when the book has changed.
    pub(super) fn follow(&mut self, book: &Arc<Book>, list: &ListInHand) {
        if self.path.as_ref() != Some(&list.path) {
            *self = Self {
                path: Some(list.path.clone()),
                ..Self::default()
            };
            if let ListContent::Table(bytes) = &list.content {
                self.take(read_table(bytes, None).map_err(|error| error.to_string()));
            }
        }
        let same_book = self
            .book
            .as_ref()
            .is_some_and(|known| Arc::ptr_eq(known, book));
        if !same_book {
            self.book = Some(book.clone());
            self.look_again();
            self.arrival = None;
            if let ListContent::OtherShop(Ok(foreign)) = &list.content {
                self.mappings = propose_mappings(book, foreign);
            }
        }
        if self.review.is_none()
            && let Some(Ok(table)) = &self.table
        {
            let review = review_price_list(book, table, &self.mapping, &self.signs, &today());
            self.review = Some(Arc::new(review));
        }
    }

    fn take(&mut self, table: Result<TextTable, String>) {
        if let Ok(table) = &table {
            self.mapping = guess_mapping(&table.headings);
        }
        self.table = Some(table.map(Arc::new));
        self.sign = None;
        self.look_at_signs();
        self.look_again();
        self.refused.clear();
    }

    fn look_at_signs(&mut self) {
        if let Some(Ok(table)) = &self.table {
            self.signs = DecimalSigns::of(table, &self.mapping, self.sign);
        }
    }

    pub(super) fn read_with(&mut self, list: &ListInHand, delimiter: Delimiter) {
        if let ListContent::Table(bytes) = &list.content {
            self.take(read_table(bytes, Some(delimiter)).map_err(|error| error.to_string()));
        }
    }

    pub(super) fn table(&self) -> Option<&Arc<TextTable>> {
        self.table.as_ref()?.as_ref().ok()
    }

    pub(super) fn table_error(&self) -> Option<&str> {
        self.table.as_ref()?.as_ref().err().map(String::as_str)
    }

    pub(super) fn delimiter(&self) -> Option<Delimiter> {
        self.table().map(|table| table.delimiter)
    }

    pub(super) fn encoding(&self) -> Option<Encoding> {
        self.table().map(|table| table.encoding)
    }

    /// The decimal sign that is chosen, or that the numbers tell; none when they tell none.
    pub(super) fn sign(&self) -> Option<DecimalSign> {
        self.signs.chosen.or(self.signs.found)
    }

    pub(super) fn set_sign(&mut self, sign: DecimalSign) {
        self.sign = Some(sign);
        self.look_at_signs();
        self.look_again();
    }

    pub(super) fn mapping(&self) -> &Mapping {
        &self.mapping
    }

    /// Says what a column means; a field has one column, so another one that had it is left out.
    pub(super) fn map(&mut self, at: usize, field: Option<Field>) {
        for column in &mut self.mapping.columns {
            if field.is_some() && *column == field {
                *column = None;
            }
        }
        if let Some(column) = self.mapping.columns.get_mut(at) {
            *column = field;
        }
        self.look_at_signs();
        self.look_again();
    }
}

/// The list, line by line, and the button that takes what is ticked.
pub(super) fn list_ui(ui: &mut Ui, state: &mut ReviewState, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    let (Some(review), Some(taking)) = (state.review.clone(), state.taking()) else {
        away_ui(ui, "Back to the cards", actions);
        return;
    };
    heading_ui(ui, "What would change");
    let [new, changed, same, skipped] = review.counts();
    let counts = format!("{new} new, {changed} changed, {same} the same, {skipped} skipped");
    ui.label(RichText::new(counts).color(palette.text_quiet));
    ui.add_space(grid::TIGHT);
    ui.horizontal(|ui| {
        let words = format!("Take {} into the book", taking.count);
        let words = RichText::new(words).color(palette.on_accent);
        let button = Button::new(words).fill(palette.accent);
        let edit = match &taking.edit {
            Ok(edit) => edit.as_ref(),
            Err(reason) => {
                ui.colored_label(palette.off_level, reason);
                None
            }
        };
        if ui.add_enabled(edit.is_some(), button).clicked()
            && let Some(edit) = edit
        {
            actions.push(Action::edit(edit.clone(), "book"));
            actions.push(Action::Command(Command::CloseStep));
            actions.push(Action::Command(Command::PutListAway));
        }
        away_ui(ui, "Leave it", actions);
    });
    ui.add_space(grid::NEAR);
    let mut ticked = None;
    let refused = &state.refused;
    state.rows.in_sheet_ui(ui, review.lines.len(), |ui, at| {
        if line_ui(ui, &review.lines[at], refused.contains(&at)) {
            ticked = Some(at);
        }
    });
    if let Some(at) = ticked {
        if !state.refused.remove(&at) {
            state.refused.insert(at);
        }
        state.taking = None;
    }
    copy_ui(ui, "what would change", || {
        list_as_table(&review, &state.refused)
    });
}

/// A line of the list; `true` when it is ticked or unticked.
fn line_ui(ui: &mut Ui, line: &ReviewLine, is_refused: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let mut changed = false;
    ui.horizontal_wrapped(|ui| {
        let name = if line.name.is_empty() {
            format!("line {}", line.line)
        } else {
            format!("{}, line {}", name_as_shown(&line.name), line.line)
        };
        if line.is_change() {
            changed = ui.checkbox(&mut !is_refused, name).changed();
        } else {
            ui.label(RichText::new(name).color(palette.text_quiet));
        }
        let words = match outcome_details(line) {
            details if details.is_empty() => line.word().to_owned(),
            details => format!("{}: {details}", line.word()),
        };
        ui.add(Label::new(words).wrap());
    });
    for doubt in &line.doubts {
        ui.indent("doubt", |ui| {
            ui.add(Label::new(RichText::new(doubt).color(palette.caution)).wrap());
        });
    }
    changed
}

/// What changes, or why it is not taken.
fn outcome_details(line: &ReviewLine) -> String {
    match &line.outcome {
        Outcome::Changed { changes, .. } => changes.join("; "),
        Outcome::Skipped(why) => why.clone(),
        Outcome::New(_) | Outcome::Same => String::new(),
    }
}

/// The list line by line, with what is ticked.
fn list_as_table(review: &Review, refused: &BTreeSet<usize>) -> Table {
    let heads = [
        "line",
        "ingredient",
        "taken",
        "outcome",
        "details",
        "doubts",
    ];
    let mut table = Table::new(heads);
    for (at, line) in review.lines.iter().enumerate() {
        let taken = match (line.is_change(), refused.contains(&at)) {
            (false, _) => "",
            (true, true) => "no",
            (true, false) => "yes",
        };
        table.row([
            Cell::figure(&line.line.to_string()),
            Cell::words(&name_as_shown(&line.name)),
            Cell::words(taken),
            Cell::words(line.word()),
            Cell::words(&outcome_details(line)),
            Cell::words(&line.doubts.join("; ")),
        ]);
    }
    table
}

/// The mappings of a recipe of another shop, and what comes of them.
pub(super) fn other_shop_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    foreign: &ForeignRecipe,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let theirs = foreign.book.recipe(&foreign.recipe);
    let name = theirs.map_or("A recipe".into(), |recipe| name_as_shown(&recipe.name));
    heading_ui(ui, &name);
    let from = format!("from {}", name_as_shown(&foreign.book.settings.shop));
    ui.label(RichText::new(from).color(palette.text_quiet));
    ui.add_space(grid::NEAR);
    mappings_ui(ui, screen, state);
    ui.add_space(grid::EASY);
    if state.arrival.is_none() {
        let arrived = arrival(screen.book, foreign, &state.mappings);
        state.arrival = Some(arrived.map(Box::new).map_err(|error| error.to_string()));
    }
    match &state.arrival {
        Some(Ok(arrived)) => arrival_ui(ui, screen, arrived, actions),
        Some(Err(reason)) => {
            ui.add(Label::new(RichText::new(reason).color(palette.off_level)).wrap());
            away_ui(ui, "Leave it", actions);
        }
        None => {}
    }
}

fn mappings_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut ReviewState) {
    let palette = theme::palette(ui.visuals());
    let mut changed = false;
    Grid::new("other shop")
        .spacing(egui::vec2(grid::APART, grid::NEAR))
        .show(ui, |ui| {
            for (at, mapping) in state.mappings.iter_mut().enumerate() {
                ui.label(name_as_shown(&mapping.foreign.name).as_ref());
                let name = |to: &MappedTo| mapped_words(screen, to);
                let combo = ComboBox::from_id_salt(("mapping", at))
                    .selected_text(name(&mapping.to))
                    .width(240.0)
                    .show_ui(ui, |ui| {
                        let ours = mapping.candidates.iter().cloned().map(MappedTo::Ours);
                        for to in ours.chain([MappedTo::Added]).collect::<Vec<_>>() {
                            if ui.selectable_label(mapping.to == to, name(&to)).clicked() {
                                mapping.to = to;
                                "chosen by you".clone_into(&mut mapping.why);
                                changed = true;
                            }
                        }
                    });
                combo.response.accessible_name(format!(
                    "What stands for {}",
                    name_as_shown(&mapping.foreign.name)
                ));
                ui.label(RichText::new(&mapping.why).color(palette.text_quiet));
                ui.end_row();
            }
        });
    copy_ui(ui, "what stands for what", || {
        let mut table = Table::new(["theirs", "here", "why"]);
        for mapping in &state.mappings {
            table.row([
                Cell::words(&name_as_shown(&mapping.foreign.name)),
                Cell::words(&mapped_words(screen, &mapping.to)),
                Cell::words(&mapping.why),
            ]);
        }
        table
    });
    if changed {
        state.arrival = None;
    }
}

/// What stands for an ingredient of another shop.
fn mapped_words(screen: &Screen<'_>, to: &MappedTo) -> String {
    match to {
        MappedTo::Ours(id) => screen.book.ingredient(id).map_or_else(
            || id.to_string(),
            |item| name_as_shown(&item.full_name()).into_owned(),
        ),
        MappedTo::Added => "added as it is".to_owned(),
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
        let amount = screen.book.amount_words_in(&line.amount, screen.units);
        [amount, name]
    };
    entries
        .filter_map(|entry| entry.line())
        .map(words)
        .collect()
}

fn arrival_ui(ui: &mut Ui, screen: &Screen<'_>, arrived: &Arrival, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    heading_ui(ui, "As this shop would make it");
    let lines = arrived_lines(screen, arrived);
    for [amount, name] in &lines {
        ui.label(format!("{amount} {name}"));
    }
    copy_ui(ui, "lines", || {
        let mut table = Table::new(["amount", "ingredient"]);
        for line in &lines {
            table.row(line.each_ref().map(|words| Cell::words(words)));
        }
        table
    });
    let steps = |distance: Option<f64>| {
        distance.map_or_else(|| "not known".to_owned(), |steps| show_number(steps, 2))
    };
    ui.add_space(grid::TIGHT);
    ui.label(format!(
        "Distance from their standard: {} noticeable steps, {} before the amounts moved",
        steps(arrived.difference.distance),
        steps(arrived.plain.distance)
    ));
    ui.add(
        Label::new(
            RichText::new(screen.units.words(&arrived.explanation)).color(palette.text_quiet),
        )
        .wrap(),
    );
    ui.add_space(grid::EASY);
    ui.horizontal(|ui| {
        let words = RichText::new("Add the recipe as a draft").color(palette.on_accent);
        let edit = arrived.edit(screen.book);
        if ui
            .add_enabled(edit.is_ok(), Button::new(words).fill(palette.accent))
            .clicked()
            && let Ok(edit) = edit
        {
            actions.push(Action::edit(edit, "book"));
            actions.push(Action::Command(Command::CloseStep));
            actions.push(Action::Command(Command::PutListAway));
        }
        away_ui(ui, "Leave it", actions);
    });
}
