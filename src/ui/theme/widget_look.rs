//! How buttons, fields, menus and windows look in each appearance, in egui's terms.

use egui::style::{HandleShape, ScrollStyle, Selection, TextCursorStyle, WidgetVisuals, Widgets};
use egui::{Color32, CornerRadius, Margin, Rangef, Rect, Shadow, Stroke, Style, Visuals, vec2};

use super::appearance::{Appearance, Marks};
use super::{Palette, TypeStyle, grid, type_scale};

/// Length of the handle of a slider against its height.
const HANDLE: f32 = 0.4;

/// Where the middle of a slider's handle goes, from end to end.
pub(super) fn handle_range(slider: Rect) -> Rangef {
    // egui gives a handle four fifths of the height.
    slider.x_range().shrink(slider.height() / 2.5 * HANDLE)
}

/// The whole egui style of an appearance.
pub(super) fn style(appearance: Appearance, marks: Marks) -> Style {
    let mut style = Style {
        text_styles: type_scale::text_styles(),
        drag_value_text_style: TypeStyle::Body.text_style(),
        visuals: visuals(appearance, marks),
        animation_time: 0.12,
        ..Style::default()
    };
    space(&mut style.spacing);
    style
}

fn space(spacing: &mut egui::Spacing) {
    spacing.item_spacing = vec2(grid::NEAR, grid::NEAR);
    // A row of body text is 18 points high; with these it fills a target, so that text stands in its middle.
    spacing.button_padding = vec2(grid::EASY, 5.0);
    spacing.interact_size = vec2(grid::TARGET, grid::TARGET);
    spacing.window_margin = Margin::same(16);
    spacing.menu_margin = Margin::same(8);
    spacing.menu_spacing = grid::TIGHT;
    spacing.indent = 5.0 * grid::STEP;
    spacing.icon_width = grid::ICON;
    spacing.icon_width_inner = 2.0 * grid::STEP;
    spacing.icon_spacing = grid::NEAR;
    spacing.slider_rail_height = grid::TIGHT;
    spacing.tooltip_width = 360.0;
    spacing.combo_height = 320.0;
    spacing.scroll = ScrollStyle {
        bar_width: 8.0,
        floating_width: 4.0,
        // The bar has a margin of its own and lies on no text.
        floating_allocated_width: 10.0,
        ..ScrollStyle::floating()
    };
}

fn visuals(appearance: Appearance, marks: Marks) -> Visuals {
    let palette = appearance.palette();
    let (stock, shadow_alpha) = match appearance {
        Appearance::Light => (Visuals::light(), 36),
        Appearance::Dark => (Visuals::dark(), 120),
        Appearance::Contrast => (Visuals::dark(), 0),
        Appearance::ContrastByDay => (Visuals::light(), 0),
    };
    let shadow = |offset: i8, blur: u8| Shadow {
        offset: [0, offset],
        blur,
        spread: 0,
        color: Color32::from_black_alpha(shadow_alpha),
    };
    Visuals {
        widgets: widgets(palette, marks),
        selection: Selection {
            bg_fill: palette.selection,
            // Also the edge of the field that is being typed in.
            stroke: Stroke::new(grid::FOCUS_RING, palette.focus_ring),
        },
        weak_text_color: Some(palette.text_quiet),
        hyperlink_color: palette.accent,
        faint_bg_color: palette.stripe,
        extreme_bg_color: palette.sheet,
        text_edit_bg_color: Some(palette.sheet),
        code_bg_color: palette.fill,
        warn_fg_color: palette.caution,
        error_fg_color: palette.off_level,
        panel_fill: palette.ground,
        window_fill: palette.sheet,
        window_stroke: Stroke::new(grid::HAIRLINE, palette.line),
        window_corner_radius: CornerRadius::same(grid::CORNER_WINDOW),
        menu_corner_radius: CornerRadius::same(grid::CORNER_WINDOW),
        window_highlight_topmost: false,
        window_shadow: shadow(8, 28),
        popup_shadow: shadow(4, 16),
        text_cursor: TextCursorStyle {
            stroke: Stroke::new(2.0, palette.accent),
            ..TextCursorStyle::default()
        },
        indent_has_left_vline: false,
        slider_trailing_fill: true,
        handle_shape: HandleShape::Rect {
            aspect_ratio: HANDLE,
        },
        ..stock
    }
}

fn widgets(palette: &Palette, marks: Marks) -> Widgets {
    let look = |area: Color32, edge: Stroke, text: Color32| WidgetVisuals {
        bg_fill: area,
        weak_bg_fill: area,
        bg_stroke: edge,
        corner_radius: CornerRadius::same(grid::CORNER),
        fg_stroke: Stroke::new(1.5, text),
        expansion: 0.0,
    };
    let hairline = |colour| Stroke::new(grid::HAIRLINE, colour);
    // egui shows "pressed" and "has the keyboard" alike, so the pressed look carries the focus ring while that is marked.
    let ring = match marks {
        Marks::Keyboard => Stroke::new(grid::FOCUS_RING, palette.focus_ring),
        Marks::Nothing => hairline(palette.text_strong),
    };
    Widgets {
        noninteractive: look(palette.ground, hairline(palette.line), palette.text_normal),
        inactive: look(palette.fill, hairline(palette.outline), palette.text_normal),
        hovered: look(
            palette.hover,
            hairline(palette.text_quiet),
            palette.text_strong,
        ),
        active: look(palette.hover, ring, palette.text_strong),
        open: look(
            palette.hover,
            hairline(palette.outline),
            palette.text_strong,
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn buttons_and_fields_are_as_high_as_a_target_so_that_rows_align() {
        let ctx = egui::Context::default();
        crate::ui::theme::install(&ctx);
        let mut heights = Vec::new();
        ctx.run_ui(egui::RawInput::default(), |ui| {
            let button = ui.button("Swap");
            let field = ui.add(egui::TextEdit::singleline(&mut "1½ scoops".to_owned()));
            heights = vec![button.rect.height(), field.rect.height()];
        })
        .drop_without_applying_deltas();
        assert_eq!(heights, [grid::TARGET, grid::TARGET]);
    }
}
