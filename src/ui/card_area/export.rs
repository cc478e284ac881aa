//! Files: in which format, where to; how far it is; and the viewer of the system, from where one prints.

use std::path::{Path, PathBuf};

use egui::{Button, ComboBox, Label, ProgressBar, RichText, TextEdit, Ui};

use super::frame::CardFrame;
use super::model::CardState;
use super::named_row::row_ui;
use crate::cards::drinks_of_menu;
use crate::quantity::DisplayUnits;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::width_of;
use crate::ui::words::{heading_ui, quiet_ui, speaker};
use crate::workbench::{Action, CardFormat, Command, ExportOrder, ExportState, WrittenCard};

pub(super) fn export_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("cards-screen-file"));
    let name = speaker.word("cards-screen-format");
    row_ui(ui, name, |ui| {
        let combo = ComboBox::from_id_salt("card-format")
            .selected_text(state.format.word())
            .width(120.0)
            .show_ui(ui, |ui| {
                for format in CardFormat::ALL {
                    ui.selectable_value(&mut state.format, format, format.word());
                }
            });
        combo.response.accessible_name(name);
    });
    row_ui(ui, speaker.word("cards-screen-folder"), |ui| {
        let choose = speaker.word("cards-screen-folder-choose");
        let button = egui::TextStyle::Button.resolve(ui.style());
        let words = width_of(ui, choose, &button);
        let gaps = 2.0 * ui.spacing().button_padding.x + ui.spacing().item_spacing.x;
        let field = TextEdit::singleline(&mut state.folder)
            .desired_width(ui.available_width() - words - gaps - grid::NEAR);
        ui.add(field)
            .accessible_name(speaker.word("cards-screen-folder-field"));
        let button = ui
            .button(choose)
            .on_hover_text(speaker.word("cards-screen-bring-in-choose-does"))
            .accessible_name(speaker.word("cards-screen-folder-choose-field"));
        if button.clicked() {
            let from = PathBuf::from(state.folder.trim());
            actions.push(Action::Command(Command::PickFolder(from)));
        }
    });
    let runs = matches!(frame.export, Some(ExportState::Running { .. }));
    let request = state.request(screen.shown);
    let in_sight = state
        .order(screen.shown, screen.speaker.units)
        .map(|order| (order, state.format));
    ui.add_space(grid::TIGHT);
    ui.horizontal_wrapped(|ui| {
        let palette = theme::palette(ui.visuals());
        let words = RichText::new(speaker.word("cards-screen-write")).color(palette.on_accent);
        let button = Button::new(words).fill(palette.accent);
        let ready = request.is_some() && !runs && !state.folder.trim().is_empty();
        if ui.add_enabled(ready, button).clicked() {
            let requests = request.into_iter().collect();
            state.written_for.clone_from(&in_sight);
            actions.push(order(state, requests, screen.speaker.units));
        }
        if let Some(kind) = state.kind_of_each_drink() {
            let words = speaker.word("cards-screen-write-menu");
            let button = ui
                .add_enabled(ready, Button::new(words))
                .on_hover_text(speaker.word("cards-screen-write-menu-does"));
            if button.clicked() {
                let requests = drinks_of_menu(screen.book).into_iter().map(kind).collect();
                state.written_for.clone_from(&in_sight);
                actions.push(order(state, requests, screen.speaker.units));
            }
        }
    });
    match &frame.export {
        Some(ExportState::Running { done, of }) => running_ui(ui, *done, *of, actions),
        // A fault is said wherever one is; what was written, beside the card that it is of.
        Some(ExportState::Ended { written, stopped })
            if stopped.is_some() || state.written_for == in_sight =>
        {
            ended_ui(ui, written, stopped.as_deref(), actions);
        }
        _ => {
            quiet_ui(ui, speaker.word("cards-screen-to-print"));
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
    let speaker = speaker(ui.ctx());
    let words = say!(
        speaker,
        "cards-screen-written-so-far",
        done: done.to_string(),
        all: of.to_string(),
    );
    ui.add(ProgressBar::new(part).text(words));
    if ui.button(speaker.word("cards-screen-stop")).clicked() {
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
    let speaker = speaker(ui.ctx());
    let words = RichText::new(written_words(speaker, written)).font(TypeStyle::Small.font_id());
    ui.add(Label::new(words).wrap())
        .on_hover_text(last.path.display().to_string());
    let last = &last.path;
    ui.horizontal(|ui| {
        if written.len() == 1
            && ui
                .button(speaker.word("cards-screen-open-to-print"))
                .on_hover_text(speaker.word("cards-screen-open-to-print-does"))
                .clicked()
        {
            actions.push(Action::Command(Command::ShowFile(last.clone())));
        }
        if let Some(folder) = last.parent()
            && ui
                .button(speaker.word("cards-screen-show-folder"))
                .clicked()
        {
            actions.push(Action::Command(Command::ShowFile(folder.to_path_buf())));
        }
    });
}

/// What was written, and which files have another name because theirs was taken.
fn written_words(speaker: Speaker<'_>, written: &[WrittenCard]) -> String {
    let renamed = written.iter().filter(|card| card.was_taken.is_some());
    match (written, renamed.count()) {
        ([only], _) => {
            let name = name_of(&only.path);
            match &only.was_taken {
                Some(taken) => {
                    say!(speaker, "cards-screen-written-renamed", name: name, taken: taken)
                }
                None => say!(speaker, "cards-screen-written", name: name),
            }
        }
        (several, 0) => say!(speaker, "cards-screen-files-written", count: several.len()),
        (several, renamed) => say!(
            speaker,
            "cards-screen-files-written-renamed",
            count: several.len(),
            renamed: renamed,
        ),
    }
}

fn name_of(path: &Path) -> String {
    path.file_name().map_or_else(
        || path.display().to_string(),
        |name| name.to_string_lossy().into_owned(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    fn card(name: &str, was_taken: Option<&str>) -> WrittenCard {
        WrittenCard {
            path: Path::new("cards").join(name),
            was_taken: was_taken.map(str::to_owned),
        }
    }

    #[test]
    fn what_was_written_is_counted_in_the_language_of_the_window() {
        let (plain, renamed) = (card("a.pdf", None), card("b (2).pdf", Some("b.pdf")));
        let both = [plain.clone(), renamed.clone()];
        let english = Speaker::without_book();
        let german = english.in_language(Language::from_code("de").unwrap());
        for (speaker, written, words) in [
            (english, &both[..1], "Written: a.pdf"),
            (
                english,
                &both[1..],
                "Written: b (2).pdf, because there is a b.pdf already",
            ),
            (
                english,
                &both[..],
                "2 files written, 1 of them with a number, because there is a file with its name already",
            ),
            (english, &[plain.clone(), plain][..], "2 files written"),
            (
                german,
                &both[1..],
                "Geschrieben: b (2).pdf, weil es b.pdf schon gibt",
            ),
            (
                german,
                &[renamed.clone(), renamed][..],
                "2 Dateien geschrieben, davon 2 mit einer Nummer, weil es Dateien mit ihren Namen schon gibt",
            ),
        ] {
            assert_eq!(written_words(speaker, written), words);
        }
    }
}
