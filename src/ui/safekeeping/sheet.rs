//! What the sheets of this folder are made of.

use egui::{Context, Ui};

use crate::say::{Speaker, say};
use crate::ui::modal::wide_sheet;
use crate::workbench::{Action, Command};

/// Width of the sheets, in points.
const WIDTH: f32 = 640.0;
const WIDTH_OF_TWO: f32 = 820.0;

/// Height of a sheet without its list, and of what is seen of the window around it, in points.
const REST_OF_SHEET: f32 = 340.0;

/// Height of a list in a sheet, in points: what the window has, less the rest of the sheet.
pub(super) fn room_for_list(ctx: &Context) -> f32 {
    (ctx.content_rect().height() - REST_OF_SHEET).max(120.0)
}

/// A button that is not the one that Enter means.
pub(super) fn button_ui(ui: &mut Ui, words: &str, explanation: &str) -> bool {
    ui.button(words).on_hover_text(explanation).clicked()
}

pub(super) fn command(actions: &mut Vec<Action>, command: Command) {
    actions.push(Action::Command(command));
}

/// "41 kB".
pub(super) fn size_words(speaker: Speaker<'_>, bytes: u64) -> String {
    const KILO: u64 = 1000;
    match bytes {
        0..1_000 => say!(speaker, "safekeeping-bytes", count: bytes),
        1_000..1_000_000 => {
            let size = bytes.div_ceil(KILO).to_string();
            say!(speaker, "safekeeping-kilobytes", size: size)
        }
        _ => {
            let digits = format!("{}.{}", bytes / (KILO * KILO), bytes / 100_000 % 10);
            say!(speaker, "safekeeping-megabytes", size: speaker.digits(&digits))
        }
    }
}

pub(super) fn sentence_ui(ui: &mut Ui, words: &str) {
    ui.add(egui::Label::new(words).wrap());
}

/// A sheet with two columns.
pub(super) fn wide_sheet_ui(ctx: &Context, name: &str, contents: impl FnOnce(&mut Ui)) -> bool {
    wide_sheet(ctx, name, WIDTH_OF_TWO, |ui| {
        contents(ui);
        true
    })
}

pub(super) fn sheet_ui(ctx: &Context, name: &str, contents: impl FnOnce(&mut Ui)) -> bool {
    wide_sheet(ctx, name, WIDTH, |ui| {
        contents(ui);
        true
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_said_in_the_unit_that_fits() {
        for (bytes, words) in [
            (0, "0 bytes"),
            (1, "1 byte"),
            (999, "999 bytes"),
            (1_001, "2\u{a0}kB"),
            (5_242_880, "5.2\u{a0}MB"),
        ] {
            assert_eq!(size_words(Speaker::without_book(), bytes), words);
        }
    }
}
