//! The one form: words with fields behind them in rows. A sheet is a form over one item of the book, where every change is
//! one edit of the item.

use egui::{Align, Button, Layout, Response, RichText, Sense, Ui, UiBuilder, vec2};

use super::name::{name_at, name_ui, width_of};
use super::word_menu::{choice_ui, word_menu_ui};
use crate::book::{Day, ItemId, Temperature};
use crate::edit::{Edit, FieldName, FigurePart, Focus};
use crate::quantity::{DisplayUnits, ShownUnit, show_editable};
use crate::say::{Language, Speaker, say};
use crate::ui::field::{Field, FieldOutcome, TypingError, draft_error_ui, take_keyboard};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::other_languages::other_languages_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::unseen::unseen_ui;
use crate::ui::view_state::Drafts;
use crate::ui::words::{self, quiet_ui, subheading_ui};
use crate::workbench::{Action, Command};

/// Width of the words before the fields of a sheet, in points.
pub(in crate::ui) const WORDS: f32 = 27.0 * grid::STEP;
/// Where the fields of a row of a sheet begin, in points: behind the words and a gap.
pub(in crate::ui) const BEFORE_FIELDS: f32 = WORDS + grid::TIGHT;
/// Width of a field for a number of a sheet, in points.
pub(in crate::ui) const NUMBER: f32 = 16.0 * grid::STEP;
/// Most characters of what was typed that a refusal repeats.
pub(in crate::ui) const REPEATED: usize = 40;

/// A field of a sheet: which one it is, what it is called, and how it is set.
pub(in crate::ui) struct Entry<'entry> {
    field: FieldName,
    name: &'entry str,
    width: f32,
    hint: &'entry str,
    align: Align,
    metric: &'static str,
    several_rows: bool,
    is_aside: bool,
}

impl<'entry> Entry<'entry> {
    /// A field for text, as wide as what is left; `name` is what a screen reader says.
    pub(in crate::ui) fn wide(field: impl Into<FieldName>, name: &'entry str) -> Self {
        Self {
            field: field.into(),
            name,
            width: f32::INFINITY,
            hint: "",
            align: Align::Min,
            metric: "",
            several_rows: false,
            is_aside: false,
        }
    }

    /// A field for a number.
    pub(in crate::ui) fn number(field: impl Into<FieldName>, name: &'entry str) -> Self {
        Self {
            width: NUMBER,
            align: Align::Max,
            ..Self::wide(field, name)
        }
    }

    /// What stands in it while it is empty.
    pub(in crate::ui) fn hint(self, hint: &'entry str) -> Self {
        Self { hint, ..self }
    }

    /// In another width, in points.
    pub(in crate::ui) fn width(self, width: f32) -> Self {
        Self { width, ..self }
    }

    /// For a number of this metric unit: it is typed in the unit that the person reads, whose symbol stands behind.
    pub(in crate::ui) fn metric(self, metric: &'static str) -> Self {
        Self { metric, ..self }
    }

    /// With its text broken into rows.
    pub(in crate::ui) fn several_rows(self) -> Self {
        Self {
            several_rows: true,
            ..self
        }
    }

    /// One that is filled in already as it mostly is: Enter goes past it, and Tab leads to it.
    pub(in crate::ui) fn aside(self) -> Self {
        Self {
            is_aside: true,
            ..self
        }
    }
}

/// The item in hand and where its changes go.
pub(in crate::ui) struct Sheet<'frame, T> {
    /// The item with the changes of this frame.
    pub item: T,
    /// What temperatures and volumes are read in.
    pub units: DisplayUnits,
    place: ItemId,
    edit: fn(T) -> Edit,
    drafts: &'frame mut Drafts,
    actions: &'frame mut Vec<Action>,
    /// Fields drawn since the last row whose sentences stand below it.
    in_row: Vec<Focus>,
    /// Whether a field was left with Escape.
    pub escaped: bool,
    /// Whether Enter was pressed in the field before, so that the keyboard goes on to the next one.
    goes_on: bool,
}

impl<'frame, T: Clone> Sheet<'frame, T> {
    /// A sheet over an item, which undo finds again by its `place` among the items of the book.
    pub(in crate::ui) fn new(
        item: T,
        units: DisplayUnits,
        place: ItemId,
        edit: fn(T) -> Edit,
        drafts: &'frame mut Drafts,
        actions: &'frame mut Vec<Action>,
    ) -> Self {
        Self {
            item,
            units,
            place,
            edit,
            drafts,
            actions,
            in_row: Vec::new(),
            escaped: false,
            goes_on: false,
        }
    }

    /// A sheet over something that belongs to the item, at the same place.
    pub(in crate::ui) fn beside<U: Clone>(&mut self, item: U, edit: fn(U) -> Edit) -> Sheet<'_, U> {
        Sheet::new(
            item,
            self.units,
            self.place.clone(),
            edit,
            self.drafts,
            self.actions,
        )
    }

    /// An edit that is no change of the item itself: a step of its own.
    pub(in crate::ui) fn edit(&mut self, field: impl Into<FieldName>, edit: Edit) {
        let focus = self.focus(field);
        self.actions.push(Action::edit(edit, focus));
        self.actions.push(Action::Command(Command::CloseStep));
    }

    /// Where a field is.
    pub(in crate::ui) fn focus(&self, field: impl Into<FieldName>) -> Focus {
        Focus::Field(self.place.clone(), field.into())
    }

    /// Changes the item by a click: a step of its own.
    pub(in crate::ui) fn change(
        &mut self,
        field: impl Into<FieldName>,
        change: impl FnOnce(&mut T),
    ) {
        // What was typed in the same field is another step.
        self.actions.push(Action::Command(Command::CloseStep));
        self.put(self.focus(field), change);
        self.actions.push(Action::Command(Command::CloseStep));
    }

    /// Changes the item by typing: one step as long as the keyboard stays in the field. What was typed before is taken back
    /// first, because the label of the step may hold the very name that is being typed.
    fn typed(&mut self, focus: Focus, change: impl FnOnce(&mut T)) {
        let withdraw = Command::Withdraw(focus.clone());
        self.actions.push(Action::Command(withdraw));
        self.put(focus, change);
    }

    fn put(&mut self, focus: Focus, change: impl FnOnce(&mut T)) {
        change(&mut self.item);
        let edit = (self.edit)(self.item.clone());
        self.actions.push(Action::edit(edit, focus));
    }

    /// A place of a list has gone: what was being typed in this field of it belongs to nothing any more.
    pub(in crate::ui) fn forget_draft(&mut self, field: impl Into<FieldName>) {
        self.drafts.drop(&self.focus(field));
    }

    /// A link that adds something to the item; what it leads to is changed with the same `field`, and undo comes back to it.
    pub(in crate::ui) fn adds(&self, ui: &mut Ui, field: &'static str, words: &str) -> bool {
        let response = link_ui(ui, words);
        take_keyboard(ui, &self.focus(field), &response);
        response.clicked()
    }

    /// What the texts of the item are in other languages.
    pub(in crate::ui) fn other_languages(
        &mut self,
        ui: &mut Ui,
        speaker: Speaker<'_>,
        item: &ItemId,
        chosen: &mut Option<Language>,
    ) {
        ui.add_space(grid::NEAR);
        other_languages_ui(ui, speaker, item, chosen, self.drafts, self.actions);
    }

    /// A row: quiet words, then fields in a line, then the sentences of fields that can't be read.
    pub(in crate::ui) fn row(
        &mut self,
        ui: &mut Ui,
        words: &str,
        contents: impl FnOnce(&mut Self, &mut Ui),
    ) {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing = vec2(grid::TIGHT, 0.0);
            words_ui(ui, words, WORDS);
            contents(self, ui);
        });
        self.errors_ui(ui, BEFORE_FIELDS);
    }

    /// The sentences of the fields that were drawn since the last row.
    pub(in crate::ui) fn errors_ui(&mut self, ui: &mut Ui, indent: f32) {
        for key in std::mem::take(&mut self.in_row) {
            if self.drafts.error(&key).is_some() {
                ui.horizontal(|ui| {
                    ui.add_space(indent);
                    draft_error_ui(ui, self.drafts, &key);
                });
            }
        }
    }

    /// Shows the field of an entry.
    fn show(&mut self, ui: &mut Ui, entry: &Entry<'_>, shown: &str) -> FieldOutcome {
        let field = Field {
            align: entry.align,
            several_rows: entry.several_rows,
            ..Field::new(self.focus(entry.field.clone()), entry.name, shown)
        }
        .hint(entry.hint)
        .underlined();
        self.show_field(ui, field, entry.width, entry.is_aside)
    }

    fn show_field(
        &mut self,
        ui: &mut Ui,
        field: Field<'_>,
        width: f32,
        is_aside: bool,
    ) -> FieldOutcome {
        let width = width.min(ui.available_width() - grid::TIGHT).max(grid::FAR);
        let height = if field.several_rows {
            field.height(ui, self.drafts, width)
        } else if field.style == TypeStyle::Heading {
            grid::TARGET + grid::TIGHT
        } else {
            grid::TARGET
        };
        self.in_row.push(field.key.clone());
        // A label is typed figure after figure: what is doubted of one is asked for by Tab only.
        let is_doubt = matches!(
            &field.key,
            Focus::Field(_, name) if name.part == FigurePart::Uncertainty
        );
        let outcome = field.show_in(ui, vec2(width, height), self.drafts, self.actions);
        self.escaped |= outcome.escaped;
        if self.goes_on && !is_doubt && !is_aside {
            outcome.response.request_focus();
            ui.ctx().request_repaint();
            self.goes_on = false;
        }
        self.goes_on |= outcome.entered;
        outcome
    }

    /// A field for text that is taken as it is.
    pub(in crate::ui) fn text(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        shown: &str,
        put: impl FnOnce(&mut T, String),
    ) {
        let outcome = self.show(ui, entry, shown);
        if let Some(text) = outcome.changed {
            self.typed(outcome.focus, |item| put(item, text));
        }
    }

    /// The name of the item, which is never empty.
    pub(in crate::ui) fn title(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        shown: &str,
        put: impl FnOnce(&mut T, String),
    ) {
        let field = Field::new(self.focus(entry.field.clone()), entry.name, shown)
            .hint(entry.hint)
            .style(TypeStyle::Heading);
        let outcome = self.show_field(ui, field, entry.width, entry.is_aside);
        let speaker = words::speaker(ui.ctx());
        if let Some(text) = outcome.read(self.drafts, |text| name(speaker, text)) {
            self.typed(outcome.focus.clone(), |item| put(item, text));
        }
        if outcome.left_empty {
            let sentence = speaker.word("counter-error-no-name-kept");
            self.drafts.refuse(&outcome.focus, shown, sentence);
        }
        let what = speaker.word("counter-the-name");
        unseen_ui(ui, 0.0, what, shown, TypeStyle::Heading);
        self.errors_ui(ui, 0.0);
    }

    /// A field whose text has to be read; what can't be read stays as a draft.
    pub(in crate::ui) fn read<V, E: TypingError>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        shown: &str,
        read: impl FnOnce(&str) -> Result<V, E>,
        put: impl FnOnce(&mut T, V),
    ) {
        let outcome = self.show(ui, entry, shown);
        if let Some(value) = outcome.read(self.drafts, read) {
            self.typed(outcome.focus, |item| put(item, value));
        }
    }

    /// A field for something that is no part of the item; what is typed is there when it can be read.
    pub(in crate::ui) fn ask<V, E: TypingError>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        shown: &str,
        read: impl FnOnce(&str) -> Result<V, E>,
    ) -> Option<V> {
        self.show(ui, entry, shown).read(self.drafts, read)
    }

    /// A field that gives what was typed when it is left with Enter, or for another field, and is empty again; after Enter the
    /// keyboard stays in it.
    pub(in crate::ui) fn take<V, E: TypingError>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        read: impl Fn(&str) -> Result<V, E>,
    ) -> Option<V> {
        let draft = self.drafts.get(&self.focus(entry.field.clone()));
        let typed = draft.map(|draft| draft.text.clone()).unwrap_or_default();
        let outcome = self.show(ui, entry, "");
        self.goes_on = false;
        // While it is typed, it is only judged.
        let _ = outcome.read(self.drafts, &read);
        if !outcome.response.lost_focus() || outcome.escaped {
            return None;
        }
        let typed = outcome.changed.clone().unwrap_or(typed);
        let taken = read(&typed).ok().filter(|_| !typed.trim().is_empty());
        if outcome.entered && !typed.trim().is_empty() {
            outcome.response.request_focus();
            ui.ctx().request_repaint();
        }
        taken
    }

    /// The same where what is typed changes other items as well: all of it is one edit.
    pub(in crate::ui) fn read_with<V, E: TypingError>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        shown: &str,
        read: impl FnOnce(&str) -> Result<V, E>,
        put: impl FnOnce(&mut T, V) -> Vec<Edit>,
    ) {
        let outcome = self.show(ui, entry, shown);
        if let Some(value) = outcome.read(self.drafts, read) {
            let withdraw = Command::Withdraw(outcome.focus.clone());
            self.actions.push(Action::Command(withdraw));
            let mut edits = put(&mut self.item, value);
            edits.push((self.edit)(self.item.clone()));
            self.actions.push(Action::Edit {
                edits,
                focus: outcome.focus,
            });
        }
    }

    /// A field for a number that may be absent.
    pub(in crate::ui) fn number(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        value: Option<f64>,
        put: impl FnOnce(&mut T, Option<f64>),
    ) {
        let unit = self.units.of(entry.metric);
        let shown = value.map(|value| in_unit(&unit, value)).unwrap_or_default();
        self.read(ui, entry, &shown, |text| unit.read_optional(text), put);
        symbol_ui(ui, &unit);
    }

    /// A field for a number that has to be there.
    pub(in crate::ui) fn required(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        value: f64,
        put: impl FnOnce(&mut T, f64),
    ) {
        let unit = self.units.of(entry.metric);
        let shown = in_unit(&unit, value);
        self.read(ui, entry, &shown, |text| unit.read(text), put);
        symbol_ui(ui, &unit);
    }

    /// A field for a temperature or a range of temperatures, which may be absent.
    pub(in crate::ui) fn temperature(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        value: Option<Temperature>,
        put: impl FnOnce(&mut T, Option<Temperature>),
    ) {
        let unit = self.units.of("°C");
        let shown = value.map(|value| typed_temperature(ui, &unit, value));
        let read = |text: &str| unit.read_stated_or_nothing(text);
        self.read(ui, entry, &shown.unwrap_or_default(), read, put);
        symbol_ui(ui, &unit);
    }

    /// The same for one that has to be there.
    pub(in crate::ui) fn required_temperature(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        value: Temperature,
        put: impl FnOnce(&mut T, Temperature),
    ) {
        let unit = self.units.of("°C");
        let shown = typed_temperature(ui, &unit, value);
        self.read(ui, entry, &shown, |text| unit.read_stated(text), put);
        symbol_ui(ui, &unit);
    }

    /// A word that opens a menu of words.
    pub(in crate::ui) fn choice<V: Clone + PartialEq>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        current: &V,
        all: &[V],
        word: impl Fn(&V) -> String,
        put: impl FnOnce(&mut T, V),
    ) -> Response {
        let put = |item: &mut T, value: V| {
            put(item, value);
            Vec::new()
        };
        self.choice_with(ui, entry, current, all, word, put)
    }

    /// The same where what is chosen changes other items as well: all of it is one edit.
    pub(in crate::ui) fn choice_with<V: Clone + PartialEq>(
        &mut self,
        ui: &mut Ui,
        entry: &Entry<'_>,
        current: &V,
        all: &[V],
        word: impl Fn(&V) -> String,
        put: impl FnOnce(&mut T, V) -> Vec<Edit>,
    ) -> Response {
        let mut taken = None;
        let focus = self.focus(entry.field.clone());
        let response = word_menu_ui(ui, &focus, entry.name, &word(current), |ui| {
            taken = choice_ui(ui, all.iter().cloned(), current, word);
        });
        if let Some(value) = taken.filter(|value| value != current) {
            self.actions.push(Action::Command(Command::CloseStep));
            let mut edits = put(&mut self.item, value);
            edits.push((self.edit)(self.item.clone()));
            self.actions.push(Action::Edit { edits, focus });
            self.actions.push(Action::Command(Command::CloseStep));
        }
        response
    }
}

/// A row with one number: words before it, its unit behind it, and below it why it can't be read.
pub(in crate::ui) struct NumberRow<'row> {
    /// Where it is.
    pub focus: Focus,
    /// The words before it.
    pub words: &'row str,
    /// Their width, in points: that of all rows below each other.
    pub words_width: f32,
    /// The term that they name.
    pub term: Option<Term>,
    /// What a screen reader says.
    pub name: &'row str,
    /// What stands in it.
    pub shown: String,
    /// What is taken while it is empty.
    pub hint: &'row str,
    /// The unit behind it.
    pub unit: &'row str,
}

impl NumberRow<'_> {
    /// Width of the field, in points.
    pub(in crate::ui) const FIELD: f32 = 22.0 * grid::STEP;

    /// Shows the row; what is typed is there when it can be read.
    pub(in crate::ui) fn ask_ui<V, E: TypingError>(
        self,
        ui: &mut Ui,
        drafts: &mut Drafts,
        actions: &mut Vec<Action>,
        read: impl FnOnce(&str) -> Result<V, E>,
    ) -> Option<V> {
        let focus = self.focus.clone();
        let outcome = ui
            .horizontal(|ui| {
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                label_ui(ui, self.words, self.words_width).explained(self.term);
                let outcome = Field::number(self.focus, self.name, self.shown)
                    .hint(self.hint)
                    .show_in(ui, vec2(Self::FIELD, grid::TARGET), drafts, actions);
                quiet_ui(ui, self.unit);
                outcome
            })
            .inner;
        let value = outcome.read(drafts, read);
        draft_error_ui(ui, drafts, &focus);
        value
    }
}

/// Width that the longest of some words takes before a field, in points.
pub(in crate::ui) fn label_width<'words>(
    ui: &Ui,
    words: impl IntoIterator<Item = &'words str>,
) -> f32 {
    let font = TypeStyle::Body.font_id();
    let widths = words.into_iter().map(|words| width_of(ui, words, &font));
    widths.fold(0.0, f32::max).ceil()
}

/// Words of a fixed width, so that the fields of several rows stand below each other.
pub(in crate::ui) fn label_ui(ui: &mut Ui, words: &str, width: f32) -> Response {
    let palette = theme::palette(ui.visuals());
    let size = vec2(width, grid::TARGET);
    ui.allocate_ui_with_layout(size, Layout::left_to_right(Align::Center), |ui| {
        ui.set_min_width(width);
        name_ui(ui, words, TypeStyle::Body, palette.text_normal, width)
    })
    .inner
}

/// Quiet words over a column of numbers.
pub(in crate::ui) fn number_heading_ui(ui: &mut Ui, words: &str, width: f32) -> Response {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let rect = rect.with_max_x(rect.right() - grid::TIGHT);
    let (layout, colour) = (Layout::right_to_left(Align::Center), palette.text_quiet);
    name_at(ui, rect, layout, words, TypeStyle::Small, colour)
}

/// Quiet words in a column of their own.
pub(in crate::ui) fn words_ui(ui: &mut Ui, words: &str, width: f32) {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let (layout, colour) = (Layout::left_to_right(Align::Center), palette.text_quiet);
    name_at(ui, rect, layout, words, TypeStyle::Small, colour);
}

/// A cell of fixed width, so that what is empty keeps its place.
pub(in crate::ui) fn cell_ui(ui: &mut Ui, width: f32, contents: impl FnOnce(&mut Ui)) {
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::left_to_right(Align::Center)),
    );
    contents(&mut child);
}

/// Columns side by side, each as wide as it says.
pub(in crate::ui) fn columns_ui(
    ui: &mut Ui,
    widths: &[f32],
    mut contents: impl FnMut(&mut Ui, usize),
) {
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = grid::APART;
        for (at, width) in widths.iter().enumerate() {
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing = vec2(grid::TIGHT, 2.0);
                ui.set_width(*width);
                contents(ui, at);
            });
        }
    });
}

/// The name of a group of rows.
pub(in crate::ui) fn section_ui(ui: &mut Ui, words: &str) -> Response {
    ui.add_space(grid::TIGHT);
    subheading_ui(ui, words)
}

/// Words that are pressed like a link.
pub(in crate::ui) fn link_ui(ui: &mut Ui, words: &str) -> egui::Response {
    let palette = theme::palette(ui.visuals());
    let text = RichText::new(words).color(palette.accent);
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        ui.add(Button::new(text).frame_when_inactive(false))
    })
    .inner
}

/// A sentence that is pressed like a link, in as many lines as it takes.
pub(in crate::ui) fn wrapped_link_ui(ui: &mut Ui, words: &str) -> egui::Response {
    let palette = theme::palette(ui.visuals());
    let text = RichText::new(words)
        .font(TypeStyle::Small.font_id())
        .color(palette.accent);
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        ui.add(Button::new(text).wrap().frame_when_inactive(false))
    })
    .inner
}

/// The symbol behind a field for a number of a unit.
fn symbol_ui(ui: &mut Ui, unit: &ShownUnit<'_>) {
    if !unit.symbol.is_empty() {
        quiet_ui(ui, unit.symbol);
    }
}

/// A number with as many decimals as it has, at most four, as a field reads it.
pub(in crate::ui) fn plain(value: f64) -> String {
    show_editable(value, 4)
}

/// A metric value as it is typed in a unit.
pub(in crate::ui) fn in_unit(unit: &ShownUnit<'_>, metric: f64) -> String {
    if unit.is_metric() {
        plain(metric)
    } else {
        unit.trimmed(metric, 1)
    }
}

/// A temperature or the two ends of a range as they are typed.
fn typed_temperature(ui: &Ui, unit: &ShownUnit<'_>, value: Temperature) -> String {
    let speaker = words::speaker(ui.ctx());
    value.shown(|celsius| speaker.digits(&in_unit(unit, celsius)))
}

/// An uncertainty with its two leading digits.
pub(in crate::ui) fn plain_to(value: f64) -> String {
    crate::quantity::rounded(value, Some(value)).value
}

/// A name is not empty.
fn name(speaker: Speaker<'_>, text: &str) -> Result<String, &'static str> {
    let text = text.trim();
    if text.is_empty() {
        Err(speaker.word("counter-error-no-name"))
    } else {
        Ok(text.to_owned())
    }
}

/// A day as `2026-05-04`, or nothing for an empty text.
pub(in crate::ui) fn read_date(speaker: Speaker<'_>, text: &str) -> Result<Option<String>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    if Day::from_text(text).is_some() {
        Ok(Some(text.to_owned()))
    } else {
        Err(say!(speaker, "counter-error-date", found: text))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_shown_the_way_it_was_typed() {
        for (value, shown) in [
            (58.0, "58"),
            (6.9, "6.9"),
            (-5.0, "−5"),
            (0.0, "0"),
            (1000.0, "1000"),
            (0.018, "0.018"),
            (28.349, "28.3490"),
        ] {
            assert_eq!(plain(value), shown);
        }
        // 420 kcal are kept in kJ and come back as 420.
        assert_eq!(plain(420.0 * 4.184 / 4.184), "420");
    }

    #[test]
    fn a_day_is_read_or_refused() {
        assert_eq!(
            read_date(Speaker::without_book(), " 2026-05-04 "),
            Ok(Some("2026-05-04".to_owned()))
        );
        assert_eq!(read_date(Speaker::without_book(), ""), Ok(None));
        for text in [
            "4.5.2026",
            "2026-13-01",
            "2026-02-31",
            "2026-05-40",
            "2026-5-4",
            "yesterday",
        ] {
            assert!(read_date(Speaker::without_book(), text).is_err(), "{text}");
        }
    }
}
