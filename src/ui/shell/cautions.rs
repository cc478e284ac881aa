//! The cautions: in words, at the foot of every screen, always in the same place.

use egui::text::LayoutJob;
use egui::{Frame, Label, Margin, ScrollArea, TextFormat, Ui};

use super::top_strip::sign_ui;
use crate::ui::Screen;
use crate::ui::icons::Icon;
use crate::ui::theme::{self, TypeStyle, grid};

/// Part of the window's height that cautions take before they scroll, and the bounds of it in points.
const MOST_PART: f32 = 0.13;
const MOST_HEIGHT: std::ops::RangeInclusive<f32> = 84.0..=150.0;
/// Room left and right of the sentences, in points.
const MARGIN: i8 = 16;
/// Room above and below, in points.
const MARGIN_ABOVE: i8 = 6;
/// Between two cautions, in points.
const GAP: f32 = 2.0;
/// The sign before a sentence with the gap behind it, in points.
const SIGN: f32 = grid::EASY + grid::NEAR;

/// Height that the cautions take at the foot of the window, in points.
pub(super) fn height(ui: &Ui, screen: &Screen<'_>) -> f32 {
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width() - 2.0 * f32::from(MARGIN) - SIGN - grid::NEAR;
    let row = |job: LayoutJob| {
        let mut job = job;
        job.wrap.max_width = width;
        ui.fonts_mut(|fonts| fonts.layout_job(job)).size().y + GAP
    };
    let cautions = &screen.balance.cautions;
    let rows: f32 = cautions.iter().map(|caution| row(sentence(caution.kind.word(), &caution.text, palette))).sum();
    let most = (ui.content_rect().height() * MOST_PART).clamp(*MOST_HEIGHT.start(), *MOST_HEIGHT.end());
    (rows.max(grid::EASY + grid::NEAR) + 2.0 * f32::from(MARGIN_ABOVE)).min(most)
}

pub(super) fn cautions_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let palette = theme::palette(ui.visuals());
    let cautions = &screen.balance.cautions;
    let fill = if cautions.is_empty() { palette.ground } else { palette.caution_fill };
    let frame = Frame::new().fill(fill).inner_margin(Margin::symmetric(MARGIN, MARGIN_ABOVE));
    frame.show(ui, |ui| {
        ui.set_min_size(ui.available_size());
        ScrollArea::vertical().id_salt("cautions").auto_shrink(false).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = GAP;
            if cautions.is_empty() {
                let text = egui::RichText::new("No cautions for this drink, as far as its labels say")
                    .font(TypeStyle::Small.font_id())
                    .color(palette.text_quiet);
                ui.label(text);
            }
            for caution in cautions {
                ui.horizontal_top(|ui| {
                    sign_ui(ui, Icon::Caution, palette.caution);
                    ui.add(Label::new(sentence(caution.kind.word(), &caution.text, palette)).wrap());
                });
            }
        });
    });
}

/// "Allergen  contains milk": the kind strong, its reason behind it.
fn sentence(kind: &str, text: &str, palette: &theme::Palette) -> LayoutJob {
    let mut job = LayoutJob::default();
    let mut kind = kind.to_owned();
    if let Some(first) = kind.get_mut(0..1) {
        first.make_ascii_uppercase();
    }
    let set = |style: TypeStyle, color| TextFormat { font_id: style.font_id(), color, ..TextFormat::default() };
    job.append(&kind, 0.0, set(TypeStyle::Strong, palette.caution));
    job.append(text, grid::NEAR, set(TypeStyle::Body, palette.text_strong));
    job
}
