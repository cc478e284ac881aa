//! Words as every area sets them: headings, and what can be passed over.

use std::sync::Arc;

use egui::{
    Color32, Context, Galley, Id, Label, Response, RichText, Role, Sense, Ui, Vec2, WidgetInfo,
    vec2,
};

use super::theme::{self, TypeStyle, grid};
use crate::book::Book;
use crate::quantity::DisplayUnits;
pub(super) use crate::say::capitalised;
use crate::say::{Language, Speaker};

/// What the window speaks in: a part of every question about the book whose answer is words.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub(super) struct Spoken {
    units: DisplayUnits,
    language: Language,
}

impl Spoken {
    /// What a speaker speaks in.
    pub(super) fn by(speaker: Speaker<'_>) -> Self {
        Self {
            units: speaker.units,
            language: speaker.language,
        }
    }

    /// Speaks in it about a book.
    pub(super) fn about(self, book: &Book) -> Speaker<'_> {
        Speaker::new(book)
            .in_units(self.units)
            .in_language(self.language)
    }
}

/// Sets what the window speaks in this frame.
pub(super) fn speak(ctx: &Context, speaker: Speaker<'_>) {
    ctx.data_mut(|data| data.insert_temp(Id::unique("spoken"), Spoken::by(speaker)));
}

/// Speaks as the window does where no book is at hand: labels, headings, tables of the screen.
pub(super) fn speaker(ctx: &Context) -> Speaker<'static> {
    let spoken: Spoken = ctx
        .data(|data| data.get_temp(Id::unique("spoken")))
        .unwrap_or_default();
    let Speaker { book, .. } = Speaker::without_book();
    spoken.about(book)
}

/// The heading of an area or a sheet; a heading to screen readers, too.
pub(super) fn heading_ui(ui: &mut Ui, words: &str) -> Response {
    heading_in(ui, words, TypeStyle::Heading)
}

/// The heading of a part of a sheet.
pub(super) fn subheading_ui(ui: &mut Ui, words: &str) -> Response {
    ui.add_space(grid::NEAR);
    heading_in(ui, words, TypeStyle::Strong)
}

/// A small heading that is quieter than what stands below it: in a menu, and where a sheet's own figures come first.
pub(super) fn small_heading_ui(ui: &mut Ui, words: &str) -> Response {
    let colour = theme::palette(ui.visuals()).text_quiet;
    let galley = laid_out(ui, words, TypeStyle::Small, colour);
    // No wider than its words: a menu is as wide as what is in it.
    let size = galley.size() + vec2(0.0, grid::TIGHT);
    drawn_ui(ui, words, galley, size, colour)
}

fn heading_in(ui: &mut Ui, words: &str, style: TypeStyle) -> Response {
    let colour = theme::palette(ui.visuals()).text_strong;
    let galley = laid_out(ui, words, style, colour);
    let size = vec2(ui.available_width(), galley.size().y + grid::TIGHT);
    drawn_ui(ui, words, galley, size, colour)
}

fn laid_out(ui: &Ui, words: &str, style: TypeStyle, colour: Color32) -> Arc<Galley> {
    let width = ui.available_width();
    ui.painter()
        .layout(words.to_owned(), style.font_id(), colour, width)
}

fn drawn_ui(
    ui: &mut Ui,
    words: &str,
    galley: Arc<Galley>,
    size: Vec2,
    colour: Color32,
) -> Response {
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Heading, true, words));
    ui.painter().galley(rect.left_top(), galley, colour);
    response
}

/// A paragraph that can be passed over: sources, hints.
pub(super) fn quiet_ui(ui: &mut Ui, words: &str) -> Response {
    let palette = theme::palette(ui.visuals());
    let words = RichText::new(words).font(TypeStyle::Small.font_id());
    ui.add(Label::new(words.color(palette.text_quiet)).wrap())
}

/// A paragraph in a colour.
pub(super) fn paragraph_ui(ui: &mut Ui, words: impl Into<String>, colour: Color32) -> Response {
    ui.add(Label::new(RichText::new(words).color(colour)).wrap())
}
