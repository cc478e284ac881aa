//! The cautions: in words, at the foot of every screen, always in the same place.

use egui::text::LayoutJob;
use egui::{CornerRadius, Frame, Label, Margin, ScrollArea, TextFormat, Ui};

use super::top_strip::sign_ui;
use crate::ui::Screen;
use crate::ui::icons::Icon;
use crate::ui::theme::{self, TypeStyle, grid};

/// Room that cautions take before they scroll, in points.
const MOST_HEIGHT: f32 = 78.0;

pub(super) fn cautions_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let palette = theme::palette(ui.visuals());
    let cautions = &screen.balance.cautions;
    let fill = if cautions.is_empty() { palette.ground } else { palette.caution_fill };
    let frame = Frame::new().fill(fill).corner_radius(CornerRadius::ZERO).inner_margin(Margin::symmetric(16, 6));
    frame.show(ui, |ui| {
        ui.set_width(ui.available_width());
        ScrollArea::vertical().id_salt("cautions").max_height(MOST_HEIGHT).auto_shrink([false, true]).show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            if cautions.is_empty() {
                let text = egui::RichText::new("No cautions for this drink, as far as its labels say")
                    .font(TypeStyle::Small.font_id())
                    .color(palette.text_quiet);
                ui.label(text);
            }
            for caution in cautions {
                ui.horizontal_top(|ui| {
                    ui.add_space(2.0);
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
