//! The record: filing what was read of a cup, how often the ± held, and accepting what that says of the doubts.

use egui::Ui;

use super::sheet;
use crate::book::{CupQuantity, ItemId};
use crate::cups::Measured;
use crate::edit::{Edit, FieldName, Focus};
use crate::record::filed_reading;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::field::take_keyboard;
use crate::ui::theme::grid;
use crate::ui::widgets::form::{section_ui, wrapped_link_ui};
use crate::workbench::{Action, RecordOfBook, rescaling, rescaling_given_up, today};

/// What of a cup is filed; ice that was fished out is not foretold of a cup that is handed over.
const fn quantity(measured: Measured) -> Option<CupQuantity> {
    match measured {
        Measured::Weight => Some(CupQuantity::Weight),
        Measured::Temperature => Some(CupQuantity::Temperature),
        Measured::Brix => Some(CupQuantity::Brix),
        Measured::Ice => None,
    }
}

/// The record below what was read of a cup, in the order of [`Measured::ALL`]. Whether the readings were filed.
pub(super) fn record_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    read: &[Option<f64>; Measured::ALL.len()],
    actions: &mut Vec<Action>,
) -> bool {
    let speaker = screen.speaker;
    let recipe = &screen.shown.recipe;
    let focus = screen.serving(ItemId::Settings, FieldName::from("record"));
    ui.add_space(grid::NEAR);
    section_ui(ui, speaker.word("record-title"));
    sheet::quiet_ui(ui, speaker.word("record-about"));
    let is_filed = file_ui(ui, screen, read, &focus, actions);
    let count = screen.recipe.readings.len();
    if count > 0 {
        sheet::quiet_ui(ui, say!(speaker, "record-filed", count: count));
        let out = wrapped_link_ui(ui, speaker.word("record-take-out"));
        take_keyboard(ui, &focus, &out);
        if out.clicked() {
            let edit = Edit::RemoveReading {
                recipe: recipe.clone(),
                place: count - 1,
            };
            actions.push(Action::edit(edit, focus.clone()));
        }
    }
    classes_ui(ui, screen, &focus, actions);
    is_filed
}

fn file_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    read: &[Option<f64>; Measured::ALL.len()],
    focus: &Focus,
    actions: &mut Vec<Action>,
) -> bool {
    let speaker = screen.speaker;
    let read: Vec<(CupQuantity, f64)> = Measured::ALL
        .into_iter()
        .zip(read)
        .filter_map(|(measured, value)| Some((quantity(measured)?, (*value)?)))
        .collect();
    if read.is_empty() {
        return false;
    }
    let file = wrapped_link_ui(ui, speaker.word("record-file"));
    take_keyboard(ui, focus, &file);
    let file = file.on_hover_text(speaker.word("record-file-hint"));
    if !file.clicked() {
        return false;
    }
    let (version, date) = (screen.shown.version.as_ref(), today());
    let edits = read.into_iter().filter_map(|read| {
        let reading = filed_reading(screen.book, screen.balance, version, read, (&date, ""))?;
        Some(Edit::FileReading {
            recipe: screen.shown.recipe.clone(),
            reading,
        })
    });
    let edits: Vec<Edit> = edits.collect();
    let is_filed = !edits.is_empty();
    if is_filed {
        let focus = focus.clone();
        actions.push(Action::Edit { edits, focus });
    }
    is_filed
}

/// How often the ± held, by class, and what can be done about it.
fn classes_ui(ui: &mut Ui, screen: &Screen<'_>, focus: &Focus, actions: &mut Vec<Action>) {
    let speaker = screen.speaker;
    let record = screen.answers.to(&RecordOfBook);
    if record.classes.is_empty() {
        sheet::quiet_ui(ui, speaker.word("record-none"));
    }
    for found in &record.classes {
        ui.add_space(grid::TIGHT);
        sheet::words_ui(ui, speaker.record_count(found));
        if let Some(edit) = rescaling(screen.book, found, &today(), "", "") {
            sheet::off_ui(ui, speaker.record_verdict(found));
            let take = wrapped_link_ui(ui, speaker.word("record-take"));
            take_keyboard(ui, focus, &take);
            let take = take.on_hover_text(speaker.word("record-take-hint"));
            if take.clicked() {
                actions.push(Action::edit(edit, focus.clone()));
            }
        } else {
            sheet::quiet_ui(ui, speaker.record_verdict(found));
        }
    }
    for doubt in &screen.book.settings.doubts {
        ui.add_space(grid::TIGHT);
        sheet::words_ui(ui, speaker.rescaled_doubt(doubt));
        let give_up = wrapped_link_ui(ui, speaker.word("record-give-up"));
        take_keyboard(ui, focus, &give_up);
        if give_up.clicked()
            && let Some(edit) = rescaling_given_up(screen.book, doubt.class)
        {
            actions.push(Action::edit(edit, focus.clone()));
        }
    }
}
