//! A quiet text field on paper: a thin line under the text, a frame only where the keyboard is.
//!
//! Text goes into the book as soon as it can be read; what can't be read stays in the field as a marked draft.

use std::borrow::Cow;

use egui::text::{CCursor, CCursorRange, LayoutJob};
use egui::widgets::text_edit::TextEditState;
use egui::{
    Align, CornerRadius, Frame, Id, Key, Margin, Rect, Response, Sense, Stroke, StrokeKind,
    TextEdit, TextFormat, Ui, UiBuilder, Vec2, vec2,
};

use super::theme::{self, TypeStyle, grid};
use super::view_state::Drafts;
use super::words;
use crate::edit::Focus;
use crate::quantity::NumberError;
use crate::say::{Speaker, say};
use crate::workbench::{Action, Command};

/// A field that shows a value of the book.
pub(super) struct Field<'field> {
    /// Where it is; the same as long as the person types.
    pub key: Focus,
    /// What a screen reader says.
    pub name: &'field str,
    /// The value as it stands in the book.
    pub shown: String,
    /// What stands there when it is empty.
    pub hint: Cow<'field, str>,
    /// How it is set.
    pub style: TypeStyle,
    /// Where the text stands.
    pub align: Align,
    /// Whether its text is broken into rows.
    pub several_rows: bool,
    /// Whether a thin line stands under it while nobody touches it.
    pub underlined: bool,
    /// Whether a press on it selects the whole of it, as in every field whose text ends at the right edge.
    pub is_number: bool,
}

impl<'field> Field<'field> {
    /// A field of body text.
    pub(super) fn new(key: Focus, name: &'field str, shown: impl Into<String>) -> Self {
        Self {
            key,
            name,
            shown: shown.into(),
            hint: Cow::Borrowed(""),
            style: TypeStyle::Body,
            align: Align::Min,
            several_rows: false,
            underlined: false,
            is_number: false,
        }
    }

    /// A field for a number: it ends where all numbers end.
    pub(super) fn number(key: Focus, name: &'field str, shown: impl Into<String>) -> Self {
        Self {
            align: Align::Max,
            underlined: true,
            ..Self::new(key, name, shown)
        }
    }

    /// With a hint.
    pub(super) fn hint(self, hint: &'field str) -> Self {
        Self {
            hint: Cow::Borrowed(hint),
            ..self
        }
    }

    /// For a number with its unit, which a press selects whole.
    pub(super) fn amount(self) -> Self {
        Self {
            is_number: true,
            ..self
        }
    }

    /// With a line under it.
    pub(super) fn underlined(self) -> Self {
        Self {
            underlined: true,
            ..self
        }
    }

    /// Width of its text with the margins, in points.
    pub(super) fn width(&self, ui: &Ui, drafts: &Drafts) -> f32 {
        let text = drafts
            .get(&self.key)
            .map_or(&self.shown, |draft| &draft.text);
        let job = self.job(text, egui::Color32::PLACEHOLDER, f32::INFINITY);
        ui.fonts_mut(|fonts| fonts.layout_job(job)).size().x + 16.0
    }

    /// With its text broken into rows.
    pub(super) fn several_rows(self) -> Self {
        Self {
            several_rows: true,
            ..self
        }
    }

    /// Height that its text takes in this width, at least that of a target, in points.
    pub(super) fn height(&self, ui: &Ui, drafts: &Drafts, width: f32) -> f32 {
        let text = drafts
            .get(&self.key)
            .map_or(&self.shown, |draft| &draft.text);
        let text = if text.is_empty() { &*self.hint } else { text };
        let galley = ui.fonts_mut(|fonts| {
            fonts.layout_job(self.job(text, egui::Color32::PLACEHOLDER, width - 8.0))
        });
        (galley.size().y + 10.0).max(grid::TARGET)
    }

    fn job(&self, text: &str, color: egui::Color32, width: f32) -> LayoutJob {
        let format = TextFormat {
            font_id: self.style.font_id(),
            color,
            italics: self.style == TypeStyle::Method,
            ..TextFormat::default()
        };
        let mut job = LayoutJob::single_section(text.to_owned(), format);
        job.wrap.max_width = width;
        job.keep_trailing_whitespace = true;
        job
    }

    /// In another style.
    pub(super) fn style(self, style: TypeStyle) -> Self {
        Self { style, ..self }
    }

    /// The id by which the keyboard finds it.
    pub(super) fn id(key: &Focus) -> Id {
        Id::unique(("focus", key))
    }

    /// Shows it where the next widget stands, in this size, and gives the text back when it has changed.
    pub(super) fn show_in(
        self,
        ui: &mut Ui,
        size: Vec2,
        drafts: &mut Drafts,
        actions: &mut Vec<Action>,
    ) -> FieldOutcome {
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        self.show(ui, rect, drafts, actions)
    }

    /// Shows it in a rectangle and gives the text back when it has changed.
    pub(super) fn show(
        mut self,
        ui: &mut Ui,
        rect: Rect,
        drafts: &mut Drafts,
        actions: &mut Vec<Action>,
    ) -> FieldOutcome {
        // What ends at the right edge is a figure.
        if self.align == Align::Max {
            let speaker = words::speaker(ui.ctx());
            self.shown = speaker.digits(&self.shown);
            self.hint = speaker.digits(&self.hint).into();
        }
        let id = Self::id(&self.key);
        let had_focus = ui.memory(|memory| memory.has_focus(id));
        let draft = drafts.get(&self.key).map(|draft| draft.text.clone());
        let is_begun = draft.is_some();
        let mut text = draft.unwrap_or_else(|| self.shown.clone());
        let before = text.clone();
        let background = ui.painter().add(egui::Shape::Noop);
        let response = self.text_edit(ui, rect, id, &mut text);
        self.paint_frame(ui, rect, &response, background, drafts);
        // egui tells of a gain only when the keyboard comes in a frame that draws the field.
        let gained = response.has_focus() && drafts.keyboard_comes(&self.key, &self.shown);
        let is_number = self.is_number || self.align == Align::Max;
        let is_pressed = is_number && ui.input(|input| input.pointer.any_down());
        if is_number {
            let brought = gained && !is_begun && is_pressed;
            select_by_press(ui, id, &response, brought, &text);
        }
        if gained {
            actions.push(Action::Command(Command::CloseStep));
            // What has been begun by typing on the row goes on; what stands there is replaced by typing.
            if !is_begun && !is_pressed {
                select_all(ui, id, &text);
            }
            ui.scroll_to_rect(rect.expand(grid::NEAR), None);
        }
        let changed = text != before;
        if changed {
            drafts.keep(&self.key, text.clone());
        }
        // egui takes the keyboard away on Escape before the field is drawn.
        let escaped = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Escape));
        let enter = ui.input(|input| input.key_pressed(Key::Enter));
        if self.several_rows && had_focus && enter {
            response.surrender_focus();
        }
        let entered = response.lost_focus() && enter;
        let in_hand = response.has_focus() || response.lost_focus();
        if escaped || in_hand && !changed && drafts.error(&self.key).is_some() {
            // Given up, or refused: a part of it that could be read on the way does not stay in the book.
            actions.push(Action::Command(Command::Withdraw(self.key.clone())));
        }
        let came_with = if response.has_focus() {
            None
        } else {
            drafts.keyboard_goes(&self.key)
        };
        let left_with = if escaped {
            came_with.unwrap_or_default()
        } else {
            text.clone()
        };
        let left_empty = response.lost_focus() && left_with.trim().is_empty();
        if response.lost_focus() {
            actions.push(Action::Command(Command::CloseStep));
            if escaped || drafts.error(&self.key).is_none() {
                drafts.drop(&self.key);
            }
        }
        FieldOutcome {
            focus: self.key,
            changed: changed.then_some(text),
            response,
            entered,
            escaped,
            left_empty,
        }
    }

    fn text_edit(&self, ui: &mut Ui, rect: Rect, id: Id, text: &mut String) -> Response {
        let palette = theme::palette(ui.visuals());
        let colour = self.colour(palette);
        let mut layouter = |ui: &Ui, text: &dyn egui::TextBuffer, width: f32| {
            let job = self.job(text.as_str(), colour, width);
            ui.fonts_mut(|fonts| fonts.layout_job(job))
        };
        let edit = if self.several_rows {
            TextEdit::multiline(text)
                .desired_rows(1)
                .return_key(None)
                .layouter(&mut layouter)
        } else {
            TextEdit::singleline(text)
        };
        let hint = egui::RichText::new(&*self.hint)
            .font(self.style.font_id())
            .color(palette.text_quiet);
        let edit = edit
            .id(id)
            .font(self.style.font_id())
            .text_color(colour)
            .hint_text(hint)
            .desired_width(rect.width())
            .min_size(vec2(0.0, rect.height()))
            .align(egui::Align2([self.align, Align::Center]))
            .frame(Frame::NONE.inner_margin(Margin::symmetric(4, 0)));
        // A child of its own: the field stands where it is put and moves nothing behind it.
        let mut child = ui.new_child(UiBuilder::new().max_rect(rect));
        child.add(edit).accessible_name(self.name)
    }

    fn colour(&self, palette: &theme::Palette) -> egui::Color32 {
        match self.style {
            TypeStyle::Small | TypeStyle::Method => palette.text_quiet,
            TypeStyle::Body => palette.text_normal,
            _ => palette.text_strong,
        }
    }

    fn paint_frame(
        &self,
        ui: &Ui,
        rect: Rect,
        response: &Response,
        background: egui::layers::ShapeIdx,
        drafts: &Drafts,
    ) {
        let palette = theme::palette(ui.visuals());
        let corner = CornerRadius::same(grid::CORNER);
        let wrong = drafts.error(&self.key).is_some();
        if response.has_focus() || response.hovered() {
            ui.painter().set(
                background,
                egui::Shape::rect_filled(rect, corner, palette.sheet),
            );
        }
        if response.has_focus() {
            let colour = if wrong {
                palette.off_level
            } else {
                palette.focus_ring
            };
            ui.painter().rect_stroke(
                rect,
                corner,
                Stroke::new(grid::FOCUS_RING, colour),
                StrokeKind::Inside,
            );
        } else if response.hovered() {
            let edge = Stroke::new(grid::HAIRLINE, palette.outline);
            ui.painter()
                .rect_stroke(rect, corner, edge, StrokeKind::Inside);
        } else if wrong || self.underlined {
            let (colour, width) = if wrong {
                (palette.off_level, grid::FOCUS_RING)
            } else {
                (palette.line, grid::HAIRLINE)
            };
            let y = rect.bottom() - 3.0;
            ui.painter()
                .hline(rect.x_range().shrink(2.0), y, Stroke::new(width, colour));
        }
    }
}

/// Gives the keyboard to a widget that is no text field, when it was led to where that widget is.
pub(super) fn take_keyboard(ui: &Ui, focus: &Focus, response: &Response) {
    if ui.memory(|memory| memory.has_focus(Field::id(focus))) {
        response.request_focus();
        response.scroll_to_me(None);
    }
}

/// Why a text is not taken: words that are said already, or a fact that is said in the language of the window.
pub(super) trait TypingError {
    /// The reason as a clause: a small letter first and no full stop.
    fn said(&self, speaker: Speaker<'_>) -> String;
}

impl TypingError for String {
    fn said(&self, _speaker: Speaker<'_>) -> String {
        self.clone()
    }
}

impl TypingError for &str {
    fn said(&self, _speaker: Speaker<'_>) -> String {
        (*self).to_owned()
    }
}

impl TypingError for NumberError {
    fn said(&self, speaker: Speaker<'_>) -> String {
        speaker.number_error(self)
    }
}

/// What happened in a field.
pub(super) struct FieldOutcome {
    /// Where it is.
    pub focus: Focus,
    /// The text, when it has changed.
    pub changed: Option<String>,
    /// The response of the field.
    pub response: Response,
    /// Whether it was left with Enter.
    pub entered: bool,
    /// Whether it was left with Escape.
    pub escaped: bool,
    /// Whether it was left with nothing in it.
    pub left_empty: bool,
}

impl FieldOutcome {
    /// Reads the text when it has changed; text that can't be read stays as a draft with the reason.
    pub(super) fn read<T, E: TypingError>(
        &self,
        drafts: &mut Drafts,
        read: impl FnOnce(&str) -> Result<T, E>,
    ) -> Option<T> {
        match read(self.changed.as_deref()?) {
            Ok(value) => {
                drafts.judge(&self.focus, None);
                Some(value)
            }
            Err(error) => {
                let speaker = words::speaker(&self.response.ctx);
                drafts.judge(&self.focus, Some(error.said(speaker)));
                // The next frame withdraws what could be read on the way.
                self.response.ctx.request_repaint();
                None
            }
        }
    }
}

/// The sentence under a field whose text can't be read.
pub(super) fn draft_error_ui(ui: &mut Ui, drafts: &Drafts, key: &Focus) {
    if let Some(error) = drafts.error(key) {
        let palette = theme::palette(ui.visuals());
        let words = say!(words::speaker(ui.ctx()), "shell-not-changed", reason: error);
        let text = egui::RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.off_level);
        ui.add(egui::Label::new(text).wrap());
    }
}

/// Selects the whole number when a press has brought the keyboard, so that typing replaces it. It does so when the button is let
/// go: a press that is drawn over the digits selects those, and a second press puts the cursor between them.
fn select_by_press(ui: &Ui, id: Id, response: &Response, brought: bool, text: &str) {
    let waits = id.with("is selected when the button is let go");
    let (is_down, is_drawn) = ui.input(|input| {
        let pointer = &input.pointer;
        (pointer.any_down(), pointer.is_decidedly_dragging())
    });
    let waited = ui.data(|data| data.get_temp::<bool>(waits)).is_some();
    if !(brought || waited) {
        return;
    }
    if is_down && !is_drawn && response.has_focus() {
        ui.data_mut(|data| data.insert_temp(waits, true));
        return;
    }
    ui.data_mut(|data| data.remove::<bool>(waits));
    if !is_down && !is_drawn && response.has_focus() {
        select_all(ui, id, text);
    }
}

/// The same for a plain field that holds a number or a day.
pub(super) fn select_when_pressed(ui: &Ui, response: &Response, text: &str) {
    let brought = response.gained_focus() && ui.input(|input| input.pointer.any_down());
    select_by_press(ui, response.id, response, brought, text);
}

/// Selects the whole text, so that typing replaces it.
pub(super) fn select_all(ui: &Ui, id: Id, text: &str) {
    let mut state = TextEditState::load(ui.ctx(), id).unwrap_or_default();
    let all = CCursorRange::two(CCursor::new(0), CCursor::new(text.chars().count()));
    state.cursor.set_char_range(Some(all));
    state.store(ui.ctx(), id);
}
