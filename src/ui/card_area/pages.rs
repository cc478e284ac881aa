//! The preview, page by page, as the pages will come out.

use egui::{ColorImage, Frame, Image, RichText, TextureOptions, Ui, vec2};

use super::identity;
use super::model::CardState;
use crate::cards::picture;
use crate::ui::theme::{self, grid};
use crate::workbench::PreviewShown;

/// A page is not drawn larger than this many points per point of paper: more shows nothing more.
const LARGEST: f32 = 1.5;

/// Most textures that are kept.
const MOST_TEXTURES: usize = 6;

pub(super) fn pages_ui(ui: &mut Ui, shown: &PreviewShown, state: &mut CardState) {
    let palette = theme::palette(ui.visuals());
    let preview = match &shown.preview {
        None => {
            ui.label(RichText::new("Laying out the page…").color(palette.text_quiet));
            return;
        }
        Some(Err(reason)) => {
            ui.colored_label(palette.off_level, reason);
            return;
        }
        Some(Ok(preview)) => preview,
    };
    let count = preview.pages.len();
    state.page = state.page.min(count.saturating_sub(1));
    turn_ui(ui, count, shown.is_current, state);
    let Some(page) = preview.pages.get(state.page) else {
        return;
    };
    let width = ui.available_width() - 2.0 * grid::TIGHT;
    let scale = (width / page.width).clamp(0.2, LARGEST);
    let size = vec2(page.width, page.height) * scale;
    let pixels_per_point = scale * ui.ctx().pixels_per_point();
    let key = (identity(preview), state.page, pixels_per_point.to_bits());
    let known = state
        .textures
        .iter()
        .position(|(of, page, scale, _)| (*of, *page, *scale) == key);
    let texture = if let Some(at) = known {
        state.textures[at].3.clone()
    } else {
        let drawn = picture(page, pixels_per_point);
        let image = ColorImage::from_rgba_unmultiplied(
            [usize::from(drawn.width), usize::from(drawn.height)],
            &drawn.rgba,
        );
        let texture = ui.ctx().load_texture("page", image, TextureOptions::LINEAR);
        state.textures.push((key.0, key.1, key.2, texture.clone()));
        if state.textures.len() > MOST_TEXTURES {
            drop(state.textures.remove(0));
        }
        texture
    };
    Frame::new()
        .stroke(egui::Stroke::new(grid::HAIRLINE, palette.outline))
        .show(ui, |ui| {
            // Who can't see the page hears what stands on it.
            let words = preview.document.texts().join("\n");
            let words = format!("Page {} of {count}\n{words}", state.page + 1);
            ui.add(Image::new(&texture).fit_to_exact_size(size).alt_text(words));
        });
}

fn turn_ui(ui: &mut Ui, count: usize, is_current: bool, state: &mut CardState) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal(|ui| {
        ui.add_enabled_ui(state.page > 0, |ui| {
            if ui.button("Page before").clicked() {
                state.page -= 1;
            }
        });
        ui.label(format!("Page {} of {count}", state.page + 1));
        ui.add_enabled_ui(state.page + 1 < count, |ui| {
            if ui.button("Next page").clicked() {
                state.page += 1;
            }
        });
        if !is_current {
            ui.label(RichText::new("being laid out …").color(palette.text_quiet));
        }
    });
}
