//! The one place that says how the window looks: fonts, colours, sizes and distances.
//!
//! Views ask for a [`Palette`] and a [`TypeStyle`]; no colour or font size is written anywhere else.
//!
//! ```
//! let ctx = egui::Context::default();
//! evensip::ui::theme::install(&ctx);
//! evensip::ui::theme::apply(&ctx, evensip::ui::theme::Appearance::Dark);
//! ```

mod appearance;
pub mod grid;
mod palette;
mod type_scale;
mod widget_look;

pub use appearance::{Appearance, Marks};
pub use palette::{Palette, RoleColours};
pub use type_scale::TypeStyle;

/// Gives a context the bundled fonts and both looks; call it once, before the first frame.
pub fn install(ctx: &egui::Context) {
    ctx.set_fonts(type_scale::font_definitions());
    for appearance in [Appearance::Light, Appearance::Dark] {
        ctx.set_style_of(
            appearance.egui_theme(),
            widget_look::style(appearance, Marks::default()),
        );
    }
}

/// Shows the window in this appearance from the next frame on, whatever the system prefers.
pub fn apply(ctx: &egui::Context, appearance: Appearance) {
    apply_with(ctx, appearance, Marks::default());
}

/// The same, with what has the keyboard marked or not.
pub(super) fn apply_with(ctx: &egui::Context, appearance: Appearance, marks: Marks) {
    let theme = appearance.egui_theme();
    ctx.set_style_of(theme, widget_look::style(appearance, marks));
    ctx.set_theme(theme);
}

/// What is marked with these visuals.
pub(super) fn marks(visuals: &egui::Visuals) -> Marks {
    let ring = visuals.widgets.active.bg_stroke;
    if ring.color == palette(visuals).focus_ring {
        Marks::Keyboard
    } else {
        Marks::Nothing
    }
}

/// The appearance that these visuals belong to.
pub fn appearance(visuals: &egui::Visuals) -> Appearance {
    if visuals.panel_fill == palette::CONTRAST_BY_DAY.ground {
        Appearance::ContrastByDay
    } else if !visuals.dark_mode {
        Appearance::Light
    } else if visuals.panel_fill == palette::CONTRAST.ground {
        Appearance::Contrast
    } else {
        Appearance::Dark
    }
}

/// The colours to draw with: `theme::palette(ui.visuals())`.
pub fn palette(visuals: &egui::Visuals) -> &'static Palette {
    appearance(visuals).palette()
}

/// Where the middle of a slider's handle goes, from end to end.
pub(super) fn handle_range(slider: egui::Rect) -> egui::Rangef {
    widget_look::handle_range(slider)
}

/// Marks what has the keyboard while the keyboard is used.
pub(super) fn focus_ring(ui: &egui::Ui, rect: egui::Rect) {
    if marks(ui.visuals()) == Marks::Nothing {
        return;
    }
    let ring = egui::Stroke::new(grid::FOCUS_RING, palette(ui.visuals()).focus_ring);
    let corner = f32::from(grid::CORNER);
    ui.painter()
        .rect_stroke(rect, corner, ring, egui::StrokeKind::Inside);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_applied_appearance_is_the_one_that_is_drawn() {
        let ctx = egui::Context::default();
        install(&ctx);
        for wanted in [Appearance::ALL, Appearance::ALL].concat() {
            for marked in [Marks::Nothing, Marks::Keyboard] {
                apply_with(&ctx, wanted, marked);
                let mut drawn = None;
                ctx.run_ui(egui::RawInput::default(), |ui| {
                    drawn = Some((appearance(ui.visuals()), marks(ui.visuals())));
                })
                .drop_without_applying_deltas();
                assert_eq!(drawn, Some((wanted, marked)));
            }
        }
    }
}
