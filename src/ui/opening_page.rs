//! What stands in the window while a book takes long to open: which one, for how long, and a way back.

use std::path::Path;
use std::time::{Duration, Instant};

use egui::{CentralPanel, Frame, Label, Margin, RichText, Ui};

use super::theme::{self, TypeStyle, grid};
use super::words::{heading_ui, quiet_ui};
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
        let name = path.file_name().unwrap_or(path.as_os_str());
        heading_ui(ui, &format!("Opening {}", name.display()));
        quiet_ui(ui, &path.display().to_string());
        ui.add_space(grid::NEAR);
        let text = RichText::new(progress_words(since.elapsed()))
            .font(TypeStyle::Body.font_id())
            .color(palette.text_normal);
        ui.add(Label::new(text).wrap());
        ui.add_space(grid::NEAR);
        let stop = ui.button("Stop opening");
        if stop.clicked() || ui.input(|input| input.key_pressed(egui::Key::Escape)) {
            actions.push(Action::Command(Command::StopOpening));
        }
        quiet_ui(
            ui,
            &format!("You can also press Escape; {book_on_screen} then stays open."),
        );
    });
}

fn progress_words(taken: Duration) -> String {
    match taken.as_secs() {
        0 => "Reading and checking it…".to_owned(),
        1 => "Reading and checking it: 1 second so far.".to_owned(),
        seconds => format!("Reading and checking it: {seconds} seconds so far."),
    }
}
