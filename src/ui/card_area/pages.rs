//! The preview, page by page, as the pages will come out.

use std::sync::Arc;

use egui::{ColorImage, Frame, Image, RichText, TextureOptions, Ui, vec2};

use super::model::CardState;
use crate::cards::picture;
use crate::say::{Speaker, say};
use crate::ui::theme::{self, grid};
use crate::ui::words::speaker;
use crate::workbench::{CardPreview, PreviewShown};

/// A page is not drawn larger than this many points per point of paper: more shows nothing more.
const LARGEST: f32 = 1.5;

/// Most textures that are kept.
const MOST_TEXTURES: usize = 6;

pub(super) fn pages_ui(ui: &mut Ui, shown: &PreviewShown, state: &mut CardState) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
    let preview = match &shown.preview {
        None => {
            let words = RichText::new(speaker.word("cards-screen-laying-out"));
            ui.label(words.color(palette.text_quiet));
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
            let page = page_words(speaker, state.page, count);
            let words = format!("{page}\n{}", preview.document.texts().join("\n"));
            ui.add(Image::new(&texture).fit_to_exact_size(size).alt_text(words));
        });
}

/// "Page 1 of 2"; pages are counted from 0.
fn page_words(speaker: Speaker<'_>, page: usize, count: usize) -> String {
    let page = (page + 1).to_string();
    say!(speaker, "cards-screen-page", page: page, count: count.to_string())
}

fn turn_ui(ui: &mut Ui, count: usize, is_current: bool, state: &mut CardState) {
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
    ui.horizontal(|ui| {
        ui.add_enabled_ui(state.page > 0, |ui| {
            let words = speaker.word("cards-screen-page-before");
            if ui.button(words).clicked() {
                state.page -= 1;
            }
        });
        ui.label(page_words(speaker, state.page, count));
        ui.add_enabled_ui(state.page + 1 < count, |ui| {
            if ui.button(speaker.word("cards-screen-page-after")).clicked() {
                state.page += 1;
            }
        });
        if !is_current {
            let words = RichText::new(speaker.word("cards-screen-laying-out-again"));
            ui.label(words.color(palette.text_quiet));
        }
    });
}

/// Which preview a texture belongs to.
fn identity(preview: &Arc<CardPreview>) -> usize {
    Arc::as_ptr(preview).addr()
}
