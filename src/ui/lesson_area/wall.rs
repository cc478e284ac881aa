//! The lesson as it hangs on a wall: two to two and a half times as large, and nothing else in the window.

use egui::{Context, Ui, Vec2, vec2};

use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;

/// How much larger everything is on the wall, at least and at most.
const LARGE: std::ops::RangeInclusive<f32> = 2.0..=2.5;
/// What the predictions and the level need side by side, in points.
const NEEDED: Vec2 = vec2(512.0, 350.0);

/// Where a lesson is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum View {
    /// In the window, among everything else.
    Window,
    /// On a wall, from the other end of the room.
    Wall,
}

impl View {
    /// Width of what is expected beside the level, in points.
    pub(super) fn predictions(self) -> f32 {
        match self {
            Self::Window => 112.0 * grid::STEP,
            Self::Wall => 58.0 * grid::STEP,
        }
    }

    /// Between that and the level, in points.
    pub(super) fn between(self) -> f32 {
        match self {
            Self::Window => grid::APART,
            Self::Wall => grid::EASY,
        }
    }

    /// The least width of a level beside it, in points.
    pub(super) fn level(self) -> f32 {
        match self {
            Self::Window => 70.0 * grid::STEP,
            Self::Wall => 57.0 * grid::STEP,
        }
    }

    /// Width of the names of rows, in points.
    pub(super) fn names(self) -> f32 {
        match self {
            Self::Window => 27.0 * grid::STEP,
            Self::Wall => 15.0 * grid::STEP,
        }
    }

    /// Height of a row, in points.
    pub(super) fn row(self) -> f32 {
        match self {
            Self::Window => grid::TARGET,
            Self::Wall => 5.0 * grid::STEP,
        }
    }

    /// Between rows, in points.
    pub(super) fn between_rows(self) -> f32 {
        match self {
            Self::Window => grid::TIGHT,
            Self::Wall => grid::TIGHT / 2.0,
        }
    }

    /// Least width of a button for a guess, in points.
    pub(super) fn guess(self) -> f32 {
        match self {
            Self::Window => 24.0 * grid::STEP,
            Self::Wall => 10.0 * grid::STEP,
        }
    }

    /// Rows and buttons stand closer where everything is large.
    pub(super) fn space(self, ui: &mut Ui) {
        if self == Self::Wall {
            let spacing = ui.spacing_mut();
            spacing.interact_size.y = self.row();
            spacing.button_padding = vec2(1.5 * grid::STEP, 1.0);
            spacing.item_spacing = vec2(grid::TIGHT, grid::TIGHT / 2.0);
            // Nothing moves aside when a bar comes: it lies in the margin.
            spacing.scroll.floating_allocated_width = 0.0;
        }
    }
}

/// Makes everything as large as the window has room for.
pub(super) fn enlarge(ctx: &Context, view: &mut ViewState) {
    let now = ctx.zoom_factor();
    view.own_zoom.get_or_insert(now);
    let zoom = zoom_for(ctx.content_rect().size() * now);
    if (zoom - now).abs() > 0.01 {
        ctx.set_zoom_factor(zoom);
    }
}

/// Gives the window its own size back.
pub(super) fn shrink(ctx: &Context, view: &mut ViewState) {
    if let Some(own) = view.own_zoom.take() {
        ctx.set_zoom_factor(own);
    }
}

/// For a window of this size when nothing is enlarged, in points.
fn zoom_for(window: Vec2) -> f32 {
    let fits = window / NEEDED;
    fits.min_elem().clamp(*LARGE.start(), *LARGE.end())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_wall_is_two_to_two_and_a_half_times_as_large_by_the_room() {
        for (window, zoom) in [
            (vec2(640.0, 480.0), 2.0),
            (vec2(1024.0, 700.0), 2.0),
            (vec2(1280.0, 800.0), 800.0 / 350.0),
            (vec2(1920.0, 1080.0), 2.5),
        ] {
            assert!((zoom_for(window) - zoom).abs() < 1e-3, "{window:?}");
        }
    }
}
