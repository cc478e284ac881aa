//! The sign of the program in the bar and the list of windows: a cup, filled to its line.

use egui::{IconData, Pos2, Rgba, pos2};

use super::theme::Appearance;

/// Width and height, pixels.
const SIZE: u16 = 64;

/// Each pixel is looked at in so many places each way, so that edges are smooth.
const SAMPLES: u16 = 4;

/// The sign as pixels.
pub(super) fn window_icon() -> IconData {
    let palette = Appearance::Light.palette();
    // Of each part once: 65,000 places are looked at.
    let colour_of = |part: Part| match part {
        Part::Outline => palette.text_strong,
        Part::Drink => palette.accent,
        Part::HeadRoom => palette.ground,
    };
    let colours =
        [Part::Outline, Part::Drink, Part::HeadRoom].map(|part| Rgba::from(colour_of(part)));
    let step = 1.0 / f32::from(SIZE * SAMPLES);
    let weight = 1.0 / f32::from(SAMPLES * SAMPLES);
    let mut rgba = Vec::with_capacity(usize::from(SIZE) * usize::from(SIZE) * 4);
    for row in 0..SIZE {
        for column in 0..SIZE {
            let mut sum = Rgba::TRANSPARENT;
            for down in 0..SAMPLES {
                for across in 0..SAMPLES {
                    let x = (f32::from(column * SAMPLES + across) + 0.5) * step;
                    let y = (f32::from(row * SAMPLES + down) + 0.5) * step;
                    if let Some(part) = part_at(pos2(x, y)) {
                        sum = sum + colours[part as usize] * weight;
                    }
                }
            }
            rgba.extend(sum.to_srgba_unmultiplied());
        }
    }
    IconData {
        rgba,
        width: u32::from(SIZE),
        height: u32::from(SIZE),
    }
}

/// What the sign is made of.
#[derive(Clone, Copy)]
enum Part {
    /// The wall of the cup and the line of the level.
    Outline,
    Drink,
    HeadRoom,
}

/// What is at a place; both coordinates run from 0 to 1, the second one downwards.
fn part_at(place: Pos2) -> Option<Part> {
    /// Half the width of the cup at its rim and at its foot.
    const RIM: f32 = 0.36;
    const FOOT: f32 = 0.24;
    const TOP: f32 = 0.10;
    const BOTTOM: f32 = 0.92;
    const WALL: f32 = 0.055;
    const LINE: std::ops::Range<f32> = 0.30..0.36;
    let (across, down) = ((place.x - 0.5).abs(), place.y);
    // The line of the level goes past the cup on both sides.
    if LINE.contains(&down) && across < 0.47 {
        return Some(Part::Outline);
    }
    if !(TOP..BOTTOM).contains(&down) {
        return None;
    }
    let half = RIM + (FOOT - RIM) * (down - TOP) / (BOTTOM - TOP);
    if across >= half {
        None
    } else if across >= half - WALL || down >= BOTTOM - WALL {
        Some(Part::Outline)
    } else if down >= LINE.end {
        Some(Part::Drink)
    } else {
        Some(Part::HeadRoom)
    }
}

#[cfg(test)]
mod tests {
    use egui::Color32;

    use super::*;

    #[test]
    fn the_sign_is_a_cup_with_its_line_on_nothing() {
        let icon = window_icon();
        assert_eq!(icon.rgba.len(), usize::from(SIZE * SIZE) * 4);
        let at = |column: usize, row: usize| {
            let first = (row * usize::from(SIZE) + column) * 4;
            &icon.rgba[first..first + 4]
        };
        let solid = |colour: Color32| colour.to_srgba_unmultiplied();
        let palette = Appearance::Light.palette();
        assert_eq!(at(0, 0)[3], 0, "a corner is clear");
        assert_eq!(at(32, 40), solid(palette.accent), "the drink");
        assert_eq!(at(32, 10), solid(palette.ground), "the head room");
        assert_eq!(at(4, 21), solid(palette.text_strong), "the level");
    }
}
