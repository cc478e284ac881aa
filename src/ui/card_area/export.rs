//! Files: in which format, where to; how far it is; and the viewer of the system, from where one prints.

use std::path::{Path, PathBuf};

use egui::{Button, ComboBox, Label, ProgressBar, RichText, TextEdit, Ui};

use super::CardFrame;
use super::choose::row_ui;
use super::model::CardState;
use crate::cards::drinks_of_menu;
use crate::quantity::DisplayUnits;
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{heading_ui, quiet_ui};
use crate::workbench::{Action, CardFormat, Command, ExportOrder, ExportState, WrittenCard};

pub(super) fn export_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
    heading_ui(ui, "To a file");
    row_ui(ui, "Format", |ui| {
        let combo = ComboBox::from_id_salt("card format")
            .selected_text(state.format.word())
            .width(120.0)
            .show_ui(ui, |ui| {
                for format in CardFormat::ALL {
                    ui.selectable_value(&mut state.format, format, format.word());
                }
            });
        combo.response.accessible_name("Format");
    });
    row_ui(ui, "Folder", |ui| {
        let field = TextEdit::singleline(&mut state.folder).desired_width(f32::INFINITY);
        ui.add(field).accessible_name("Folder for the files");
    });
    let runs = matches!(frame.export, Some(ExportState::Running { .. }));
    let request = state.request(screen.shown);
    ui.add_space(grid::TIGHT);
    ui.horizontal_wrapped(|ui| {
        let palette = theme::palette(ui.visuals());
        let words = RichText::new("Write the card").color(palette.on_accent);
        let button = Button::new(words).fill(palette.accent);
        let ready = request.is_some() && !runs && !state.folder.trim().is_empty();
        if ui.add_enabled(ready, button).clicked() {
            let requests = request.into_iter().collect();
            actions.push(order(state, requests, screen.speaker.units));
        }
        if let Some(kind) = state.kind_of_each_drink() {
            let button = ui
                .add_enabled(ready, Button::new("Write the whole menu"))
                .on_hover_text("A card of every drink and version on the menu, a file each");
            if button.clicked() {
                let requests = drinks_of_menu(screen.book).into_iter().map(kind).collect();
                actions.push(order(state, requests, screen.speaker.units));
            }
        }
    });
    match &frame.export {
        Some(ExportState::Running { done, of }) => running_ui(ui, *done, *of, actions),
        Some(ExportState::Ended { written, stopped }) => {
            ended_ui(ui, written, stopped.as_deref(), actions);
        }
        None => {
            quiet_ui(ui, "To print, write a PDF and open it in your viewer.");
        }
    }
}

fn order(
    state: &CardState,
    requests: Vec<crate::cards::CardRequest>,
    units: DisplayUnits,
) -> Action {
    // What another program reads is metric.
    let units = match state.format {
        CardFormat::Csv | CardFormat::Json => DisplayUnits::METRIC,
        CardFormat::Pdf | CardFormat::Html | CardFormat::Markdown => units,
    };
    Action::Command(Command::ExportCards(ExportOrder {
        requests,
        options: state.options(units),
        paper: state.paper(),
        format: state.format,
        folder: PathBuf::from(state.folder.trim()),
    }))
}

fn running_ui(ui: &mut Ui, done: usize, of: usize, actions: &mut Vec<Action>) {
    ui.add_space(grid::TIGHT);
    let part = done as f32 / of.max(1) as f32;
    ui.add(ProgressBar::new(part).text(format!("{done} of {of}")));
    if ui.button("Stop").clicked() {
        actions.push(Action::Command(Command::StopExport));
    }
}

fn ended_ui(
    ui: &mut Ui,
    written: &[WrittenCard],
    stopped: Option<&str>,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    ui.add_space(grid::TIGHT);
    if let Some(reason) = stopped {
        let words = RichText::new(reason).color(palette.off_level);
        ui.add(Label::new(words).wrap());
    }
    let Some(last) = written.last() else { return };
    ui.add(
        Label::new(RichText::new(written_words(written)).font(TypeStyle::Small.font_id())).wrap(),
    )
    .on_hover_text(last.path.display().to_string());
    let last = &last.path;
    ui.horizontal(|ui| {
        if written.len() == 1
            && ui
                .button("Open to print")
                .on_hover_text("Opens the file in the viewer of your system, which prints it")
                .clicked()
        {
            actions.push(Action::Command(Command::ShowFile(last.clone())));
        }
        if let Some(folder) = last.parent()
            && ui.button("Show the folder").clicked()
        {
            actions.push(Action::Command(Command::ShowFile(folder.to_path_buf())));
        }
    });
}

/// What was written, and which files have another name because theirs was taken.
fn written_words(written: &[WrittenCard]) -> String {
    let renamed = written.iter().filter(|card| card.was_taken.is_some());
    match (written, renamed.count()) {
        ([only], _) => match &only.was_taken {
            Some(taken) => {
                let name = name_of(&only.path);
                format!("Written: {name}, because there is a {taken} already")
            }
            None => format!("Written: {}", name_of(&only.path)),
        },
        (several, 0) => format!("{} files written", several.len()),
        (several, renamed) => format!(
            "{} files written, {renamed} of them with a number, because there are files with their names already",
            several.len()
        ),
    }
}

fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(
        || path.display().to_string(),
        |name| name.to_string_lossy().into_owned(),
    )
}
