//! What stands in the window while a book takes long to open: which one, for how long, and a way back.

use std::path::Path;
use std::time::{Duration, Instant};

use egui::{CentralPanel, Frame, Label, Margin, RichText, Ui};

use super::theme::{self, TypeStyle, grid};
use super::words::{heading_ui, quiet_ui, speaker};
use crate::say::{Speaker, say};
use crate::workbench::{Action, Command};

/// How often the seconds are counted.
const COUNTED: Duration = Duration::from_millis(200);

pub(super) fn opening_page_ui(
    ui: &mut Ui,
    path: &Path,
    since: Instant,
    book_on_screen: &str,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let paper = Frame::new()
        .fill(palette.ground)
        .inner_margin(Margin::symmetric(48, 48));
    ui.ctx().request_repaint_after(COUNTED);
    CentralPanel::default().frame(paper).show(ui, |ui| {
        ui.set_max_width(640.0);
        let speaker = speaker(ui.ctx());
        let name = path.file_name().unwrap_or(path.as_os_str());
        let name = name.display().to_string();
        heading_ui(ui, &say!(speaker, "shell-opening", file: name));
        quiet_ui(ui, &path.display().to_string());
        ui.add_space(grid::NEAR);
        let text = RichText::new(progress_words(speaker, since.elapsed()))
            .font(TypeStyle::Body.font_id())
            .color(palette.text_normal);
        ui.add(Label::new(text).wrap());
        ui.add_space(grid::NEAR);
        let stop = ui.button(speaker.word("shell-stop-opening"));
        if stop.clicked() || ui.input(|input| input.key_pressed(egui::Key::Escape)) {
            actions.push(Action::Command(Command::StopOpening));
        }
        quiet_ui(
            ui,
            &say!(speaker, "shell-stop-opening-keys", book: book_on_screen),
        );
    });
}

fn progress_words(speaker: Speaker<'_>, taken: Duration) -> String {
    match taken.as_secs() {
        0 => speaker.word("shell-reading").to_owned(),
        seconds => say!(speaker, "shell-reading-for", seconds: seconds),
    }
}
