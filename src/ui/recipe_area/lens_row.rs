//! The lens: one row of words, one figure for the whole screen.

use egui::{Button, RichText, Ui};

use crate::balance::Lens;
use crate::say::say;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::speaker;

pub(super) fn lens_row_ui(ui: &mut Ui, view: &mut ViewState) {
    let (palette, speaker) = (theme::palette(ui.visuals()), speaker(ui.ctx()));
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        ui.spacing_mut().button_padding.x = grid::NEAR;
        ui.label(
            RichText::new(speaker.word("recipe-sheet-show"))
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        ui.add_space(grid::TIGHT);
        for lens in Lens::ALL {
            let chosen = view.lens == lens;
            let style = if chosen {
                TypeStyle::Strong
            } else {
                TypeStyle::Body
            };
            let colour = if chosen {
                palette.accent
            } else {
                palette.text_quiet
            };
            let text = RichText::new(speaker.lens(lens))
                .font(style.font_id())
                .color(colour);
            let button = Button::selectable(chosen, text)
                .frame_when_inactive(false)
                .fill(egui::Color32::TRANSPARENT);
            let response = ui
                .add(button)
                .accessible_name(say!(
                    speaker,
                    "recipe-sheet-show-lens",
                    lens: speaker.lens(lens)
                ))
                .explained(Term::of_lens(lens));
            if chosen {
                let line = response.rect.x_range().shrink(grid::NEAR);
                let stroke = egui::Stroke::new(2.0, palette.accent);
                ui.painter()
                    .hline(line, response.rect.bottom() - 2.0, stroke);
            }
            if response.clicked() {
                view.lens = lens;
            }
        }
    });
}
