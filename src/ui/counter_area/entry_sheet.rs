//! A form over one item of the book: rows of a word and its fields, where every change is one edit of the item.

use egui::containers::menu::MenuButton;
use egui::{
    Align, Button, Color32, Label, Layout, Rect, Response, RichText, Sense, Ui, UiBuilder, pos2,
    vec2,
};

use crate::book::{Day, Evidence, Figure, ItemId};
use crate::edit::Edit;
use crate::quantity::{
    DisplayUnits, ShownUnit, parse_in_unit, parse_in_unit_up_to, parse_number, show_editable,
};
use crate::say::{Language, Speaker, say};
use crate::ui::field::{Field, FieldOutcome, draft_error_ui};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::icons::{Icon, paint};
use crate::ui::other_languages::{Fold, other_languages_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::unseen::unseen_ui;
use crate::ui::view_state::Drafts;
use crate::ui::words::{self, quiet_ui, subheading_ui};
use crate::workbench::{Action, Command};

/// Width of the words before the fields, in points.
pub(super) const WORDS: f32 = 27.0 * grid::STEP;
/// Width of a field for a number, in points.
pub(super) const NUMBER: f32 = 16.0 * grid::STEP;

/// No figure in grams is as large, so that `1,250` can only be a little more than one.
const MOST_GRAMS: f64 = 999.0;

/// Where a field stands and what it is called.
#[derive(Clone, Copy)]
pub(super) struct EntrySpot<'spot> {
    /// Its name within the item; stable.
    pub field: &'spot str,
    /// What a screen reader says.
    pub name: &'spot str,
    /// Its width, in points.
    pub width: f32,
    /// What stands in it while it is empty.
    pub hint: &'spot str,
}

impl<'spot> EntrySpot<'spot> {
    /// A field for a number.
    pub(super) fn number(field: &'spot str, name: &'spot str) -> Self {
        Self {
            field,
            name,
            width: NUMBER,
            hint: "",
        }
    }

    /// A field as wide as what is left.
    pub(super) fn wide(field: &'spot str, name: &'spot str) -> Self {
        Self {
            field,
            name,
            width: f32::INFINITY,
            hint: "",
        }
    }

    /// With a hint.
    pub(super) fn hint(self, hint: &'spot str) -> Self {
        Self { hint, ..self }
    }

    /// In another width.
    pub(super) fn width(self, width: f32) -> Self {
        Self { width, ..self }
    }
}

/// A figure that is asked for.
#[derive(Clone, Copy)]
pub(super) struct Asked<'asked> {
    /// Its name within the item; stable.
    pub field: &'asked str,
    /// What a screen reader says.
    pub name: &'asked str,
    /// Its unit.
    pub unit: &'asked str,
    /// Room for the unit, in points.
    pub unit_width: f32,
    /// What is typed is the kept value times this.
    pub factor: f64,
    /// Where a figure comes from that is typed for the first time.
    pub first: Evidence,
}

/// Width of the value of a figure, in points.
pub(super) const VALUE: f32 = 19.0 * grid::STEP;
/// Width of the word for its evidence, in points.
pub(super) const EVIDENCE: f32 = 36.0 * grid::STEP;
/// The field of an uncertainty is named like that of its figure, with this behind it.
const UNCERTAINTY: &str = " uncertainty";
/// Width of its uncertainty, in points.
pub(super) const SPREAD: f32 = 12.0 * grid::STEP;

/// The item in hand and where its changes go.
pub(super) struct Sheet<'frame, T> {
    /// The item with the changes of this frame.
    pub item: T,
    /// What temperatures and volumes are read in.
    pub units: DisplayUnits,
    place: String,
    edit: fn(T) -> Edit,
    drafts: &'frame mut Drafts,
    actions: &'frame mut Vec<Action>,
    /// Fields drawn since the last row whose sentences stand below it.
    in_row: Vec<String>,
    /// Whether a field was left with Escape.
    pub escaped: bool,
    /// Whether Enter was pressed in the field before, so that the keyboard goes on to the next one.
    goes_on: bool,
}

impl<'frame, T: Clone> Sheet<'frame, T> {
    /// A sheet over an item; `place` is its kind and id, by which undo finds it again.
    pub(super) fn new(
        item: T,
        units: DisplayUnits,
        place: impl Into<String>,
        edit: fn(T) -> Edit,
        drafts: &'frame mut Drafts,
        actions: &'frame mut Vec<Action>,
    ) -> Self {
        Self {
            item,
            units,
            place: place.into(),
            edit,
            drafts,
            actions,
            in_row: Vec::new(),
            escaped: false,
            goes_on: false,
        }
    }

    /// The name of a field among the drafts and for undo.
    fn key(&self, field: &str) -> String {
        super::field_key(&self.place, field)
    }

    /// Changes the item by a click: a step of its own.
    pub(super) fn change(&mut self, field: &str, change: impl FnOnce(&mut T)) {
        self.put(field, change);
        self.actions.push(Action::Command(Command::CloseStep));
    }

    /// Changes the item by typing: one step as long as the keyboard stays in the field. What was typed before is taken back
    /// first, because the label of the step may hold the very name that is being typed.
    fn typed(&mut self, field: &str, change: impl FnOnce(&mut T)) {
        let key = self.key(field);
        self.actions.push(Action::Command(Command::Withdraw(key)));
        self.put(field, change);
    }

    fn put(&mut self, field: &str, change: impl FnOnce(&mut T)) {
        change(&mut self.item);
        let key = self.key(field);
        self.actions
            .push(Action::edit((self.edit)(self.item.clone()), key));
    }

    /// A place of a list has gone: what was being typed in this field of it belongs to nothing any more.
    pub(super) fn forget_draft(&mut self, field: &str) {
        let key = self.key(field);
        self.drafts.drop(&key);
    }

    /// What the texts of the item are in other languages.
    pub(super) fn other_languages(
        &mut self,
        ui: &mut Ui,
        speaker: Speaker<'_>,
        item: ItemId,
        chosen: &mut Option<Language>,
    ) {
        let place = &self.place;
        let fold = Fold {
            item,
            key: &|field| super::field_key(place, field),
        };
        ui.add_space(grid::NEAR);
        other_languages_ui(ui, speaker, &fold, chosen, self.drafts, self.actions);
    }

    /// A row: quiet words, then fields in a line, then the sentences of fields that can't be read.
    pub(super) fn row(
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
        self.errors_ui(ui, WORDS);
    }

    /// The sentences of the fields that were drawn since the last row.
    pub(super) fn errors_ui(&mut self, ui: &mut Ui, indent: f32) {
        for key in std::mem::take(&mut self.in_row) {
            if self.drafts.error(&key).is_some() {
                ui.horizontal(|ui| {
                    ui.add_space(indent);
                    draft_error_ui(ui, self.drafts, &key);
                });
            }
        }
    }

    fn show(&mut self, ui: &mut Ui, field: Field<'_>, width: f32, height: f32) -> FieldOutcome {
        let width = width.min(ui.available_width() - grid::TIGHT).max(grid::FAR);
        let (rect, _) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
        self.in_row.push(field.key.clone());
        // A label is typed figure after figure: what is doubted of one is asked for by Tab only.
        let is_passed_over = field.key.ends_with(UNCERTAINTY);
        let outcome = field.show(ui, rect, self.drafts, self.actions);
        self.escaped |= outcome.escaped;
        if self.goes_on && !is_passed_over {
            outcome.response.request_focus();
            ui.ctx().request_repaint();
            self.goes_on = false;
        }
        self.goes_on |= outcome.entered;
        outcome
    }

    /// A field for text that is taken as it is.
    pub(super) fn text(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: &str,
        put: impl FnOnce(&mut T, String),
    ) {
        let field = Field::new(self.key(spot.field), spot.name, shown)
            .hint(spot.hint)
            .underlined();
        if let Some(text) = self.show(ui, field, spot.width, grid::TARGET).changed {
            self.typed(spot.field, |item| put(item, text));
        }
    }

    /// The name of the item, which is never empty.
    pub(super) fn title(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: &str,
        put: impl FnOnce(&mut T, String),
    ) {
        let key = self.key(spot.field);
        let field = Field::new(key.clone(), spot.name, shown)
            .hint(spot.hint)
            .style(TypeStyle::Heading);
        let outcome = self.show(ui, field, spot.width, grid::TARGET + grid::TIGHT);
        if let Some(text) = outcome.read(&key, self.drafts, |text| {
            name(words::speaker(ui.ctx()), text)
        }) {
            self.typed(spot.field, |item| put(item, text));
        }
        if outcome.left_empty {
            let sentence = words::speaker(ui.ctx()).word("counter-error-no-name-kept");
            self.drafts.refuse(&key, shown, sentence);
        }
        let what = words::speaker(ui.ctx()).word("counter-the-name");
        unseen_ui(ui, 0.0, what, shown, TypeStyle::Heading);
        self.errors_ui(ui, 0.0);
    }

    /// A field for text that is broken into rows.
    pub(super) fn long_text(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: &str,
        put: impl FnOnce(&mut T, String),
    ) {
        let field = Field::new(self.key(spot.field), spot.name, shown)
            .hint(spot.hint)
            .several_rows()
            .underlined();
        let width = spot
            .width
            .min(ui.available_width() - grid::TIGHT)
            .max(grid::FAR);
        let height = field.height(ui, self.drafts, width);
        if let Some(text) = self.show(ui, field, width, height).changed {
            self.typed(spot.field, |item| put(item, text));
        }
    }

    /// A field whose text has to be read; what can't be read stays as a draft.
    pub(super) fn reading<V, E: crate::ui::field::TypingError>(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: String,
        read: impl FnOnce(&str) -> Result<V, E>,
        put: impl FnOnce(&mut T, V),
    ) {
        self.aligned(ui, spot, shown, Align::Min, read, put);
    }

    /// The same for a number with rules of its own.
    pub(super) fn measured<V, E: crate::ui::field::TypingError>(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: String,
        read: impl FnOnce(&str) -> Result<V, E>,
        put: impl FnOnce(&mut T, V),
    ) {
        self.aligned(ui, spot, shown, Align::Max, read, put);
    }

    fn aligned<V, E: crate::ui::field::TypingError>(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        shown: String,
        align: Align,
        read: impl FnOnce(&str) -> Result<V, E>,
        put: impl FnOnce(&mut T, V),
    ) {
        let key = self.key(spot.field);
        let field = Field {
            align,
            ..Field::new(key.clone(), spot.name, shown)
                .hint(spot.hint)
                .underlined()
        };
        let outcome = self.show(ui, field, spot.width, grid::TARGET);
        if let Some(value) = outcome.read(&key, self.drafts, read) {
            self.typed(spot.field, |item| put(item, value));
        }
    }

    /// A field for a number that may be absent.
    pub(super) fn number(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        value: Option<f64>,
        put: impl FnOnce(&mut T, Option<f64>),
    ) {
        self.aligned(
            ui,
            spot,
            value.map(plain).unwrap_or_default(),
            Align::Max,
            optional_number,
            put,
        );
    }

    /// A field for a number that has to be there.
    pub(super) fn required(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        value: f64,
        put: impl FnOnce(&mut T, f64),
    ) {
        self.aligned(ui, spot, plain(value), Align::Max, parse_number, put);
    }

    /// A number of a metric unit that may be absent, in the unit that the person reads; its symbol stands behind.
    pub(super) fn number_in(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        metric: &str,
        value: Option<f64>,
        put: impl FnOnce(&mut T, Option<f64>),
    ) {
        let unit = self.units.of(metric);
        let shown = value.map(|value| in_unit(&unit, value)).unwrap_or_default();
        let read = |text: &str| unit.read_optional(text);
        self.aligned(ui, spot, shown, Align::Max, read, put);
        quiet_ui(ui, unit.symbol);
    }

    /// The same for a number that has to be there.
    pub(super) fn required_in(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        metric: &str,
        value: f64,
        put: impl FnOnce(&mut T, f64),
    ) {
        let unit = self.units.of(metric);
        let read = |text: &str| unit.read(text);
        self.aligned(ui, spot, in_unit(&unit, value), Align::Max, read, put);
        quiet_ui(ui, unit.symbol);
    }

    /// A figure with its evidence and its uncertainty; an empty field is not stated.
    pub(super) fn figure(
        &mut self,
        ui: &mut Ui,
        asked: &Asked<'_>,
        figure: Option<Figure>,
        put: impl Fn(&mut T, Option<Figure>),
    ) {
        let factor = asked.factor;
        let speaker = words::speaker(ui.ctx());
        let spot = EntrySpot::number(asked.field, asked.name)
            .width(VALUE)
            .hint(speaker.word("counter-not-stated"));
        let first = Figure::new(0.0, asked.first);
        let shown = figure.map(|figure| plain(figure.value * factor));
        self.measured(
            ui,
            spot,
            shown.unwrap_or_default(),
            |text| match text.trim() {
                "" => Ok(None),
                // Figures in grams are parts of a hundred grams or of a serving.
                text if asked.unit == "g" => {
                    parse_in_unit_up_to(text, asked.unit, MOST_GRAMS).map(Some)
                }
                text => parse_in_unit(text, asked.unit).map(Some),
            },
            |item, value: Option<f64>| {
                put(
                    item,
                    value.map(|value| Figure {
                        value: value / factor,
                        ..figure.unwrap_or(first)
                    }),
                );
            },
        );
        words_ui(ui, asked.unit, asked.unit_width);
        let (name, field) = (
            say!(speaker, "counter-evidence-named", figure: asked.name),
            format!("{} evidence", asked.field),
        );
        cell_ui(ui, EVIDENCE, |ui| {
            let Some(figure) = figure else { return };
            let spot = EntrySpot {
                field: &field,
                name: &name,
                width: EVIDENCE,
                hint: "",
            };
            let word = |evidence: &Evidence| speaker.evidence_kind(*evidence).to_owned();
            self.choice(
                ui,
                spot,
                &figure.evidence,
                &Evidence::ALL,
                word,
                |item, evidence| {
                    put(item, Some(Figure { evidence, ..figure }));
                },
            )
            .explained(Term::Evidence);
        });
        let Some(figure) = figure else { return };
        let (name, field) = (
            say!(speaker, "counter-uncertainty-named", figure: asked.name),
            format!("{}{UNCERTAINTY}", asked.field),
        );
        quiet_ui(ui, "±").explained(Term::Uncertainty);
        let usual = plain_to(figure.standard_uncertainty() * factor);
        let spot = EntrySpot::number(&field, &name).width(SPREAD).hint(&usual);
        self.number(ui, spot, figure.u.map(|u| u * factor), |item, u| {
            put(
                item,
                Some(Figure {
                    u: u.map(|u| u / factor),
                    ..figure
                }),
            );
        });
    }

    /// A word that opens a menu of words.
    pub(super) fn choice<V: Clone + PartialEq>(
        &mut self,
        ui: &mut Ui,
        spot: EntrySpot<'_>,
        current: &V,
        all: &[V],
        word: impl Fn(&V) -> String,
        put: impl FnOnce(&mut T, V),
    ) -> Response {
        let mut taken = None;
        let response = word_menu_ui(ui, spot.name, &word(current), |ui| {
            for other in all {
                if ui
                    .add(Button::selectable(other == current, word(other)))
                    .clicked()
                {
                    taken = Some(other.clone());
                }
            }
        });
        if let Some(value) = taken.filter(|value| value != current) {
            self.change(spot.field, |item| put(item, value));
        }
        response
    }
}

/// Quiet words over a column of numbers.
pub(super) fn number_heading_ui(ui: &mut Ui, words: &str, width: f32) -> Response {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let rect = rect.with_max_x(rect.right() - grid::TIGHT);
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::right_to_left(Align::Center)),
    );
    let text = RichText::new(words)
        .font(TypeStyle::Small.font_id())
        .color(palette.text_quiet);
    child.add(Label::new(text).selectable(false).truncate())
}

/// Quiet words in a column of their own.
pub(super) fn words_ui(ui: &mut Ui, words: &str, width: f32) {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::left_to_right(Align::Center)),
    );
    let text = RichText::new(words)
        .font(TypeStyle::Small.font_id())
        .color(palette.text_quiet);
    child.add(Label::new(text).selectable(false).truncate());
}

/// A cell of fixed width, so that what is empty keeps its place.
pub(super) fn cell_ui(ui: &mut Ui, width: f32, contents: impl FnOnce(&mut Ui)) {
    let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::left_to_right(Align::Center)),
    );
    contents(&mut child);
}

/// Columns side by side, each as wide as it says.
pub(super) fn columns_ui(ui: &mut Ui, widths: &[f32], mut contents: impl FnMut(&mut Ui, usize)) {
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
pub(super) fn section_ui(ui: &mut Ui, words: &str) -> Response {
    ui.add_space(grid::TIGHT);
    subheading_ui(ui, words)
}

/// Words that are pressed like a link.
pub(super) fn link_ui(ui: &mut Ui, words: &str) -> egui::Response {
    let palette = theme::palette(ui.visuals());
    let text = RichText::new(words).color(palette.accent);
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        ui.add(Button::new(text).frame_when_inactive(false))
    })
    .inner
}

/// A word that opens a menu.
pub(super) fn word_menu_ui(
    ui: &mut Ui,
    name: &str,
    word: &str,
    items: impl FnOnce(&mut Ui),
) -> Response {
    let palette = theme::palette(ui.visuals());
    // Room for the sign behind the word.
    let text = RichText::new(format!("{word}\u{a0}\u{a0}\u{a0}\u{a0}")).color(palette.text_normal);
    let button = Button::new(text)
        .frame_when_inactive(false)
        .fill(Color32::TRANSPARENT)
        .wrap_mode(egui::TextWrapMode::Extend);
    let inner = ui
        .scope(|ui| {
            ui.spacing_mut().button_padding.x = grid::TIGHT;
            MenuButton::from_button(button).ui(ui, |ui| {
                ui.set_min_width(40.0 * grid::STEP);
                items(ui);
            })
        })
        .inner;
    let response = inner.0.accessible_name(say!(
        words::speaker(ui.ctx()),
        "counter-choice-named",
        name: name,
        word: word,
    ));
    let right = response.rect.right() - grid::NEAR - 2.0;
    let sign = Rect::from_center_size(
        pos2(right, response.rect.center().y + 1.0),
        vec2(12.0, 12.0),
    );
    paint(ui.painter(), sign, Icon::ChevronDown, palette.text_quiet);
    response
}

/// A number with as many decimals as it has, at most four, as a field reads it.
pub(super) fn plain(value: f64) -> String {
    show_editable(value, 4)
}

/// A metric value as it is typed in a unit.
pub(super) fn in_unit(unit: &ShownUnit<'_>, metric: f64) -> String {
    if unit.is_metric() {
        plain(metric)
    } else {
        unit.trimmed(metric, 1)
    }
}

/// An uncertainty with its two leading digits.
pub(super) fn plain_to(value: f64) -> String {
    crate::quantity::rounded(value, Some(value)).value
}

/// A number, or nothing for an empty text.
pub(super) fn optional_number(text: &str) -> Result<Option<f64>, crate::quantity::NumberError> {
    if text.trim().is_empty() {
        Ok(None)
    } else {
        parse_number(text).map(Some)
    }
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
pub(super) fn read_date(speaker: Speaker<'_>, text: &str) -> Result<Option<String>, String> {
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
