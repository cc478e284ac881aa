//! What an item was when drinks were approved with it, and what its change means for their standards.

use egui::{Label, RichText, Ui};

use super::area::Area;
use super::field::take_keyboard;
use super::theme::{self, grid};
use super::widgets::form::{Entry, Sheet, link_ui, read_date, section_ui};
use super::words::quiet_ui;
use crate::book::{ItemId, Tasted};
use crate::edit::Edit;
use crate::say::{Speaker, say};

/// From when on an item has been another one: what can be said of the latest state that was kept.
#[derive(Clone)]
pub(super) struct Since {
    item: ItemId,
    day: Option<String>,
    lot: String,
}

impl Since {
    /// As it stands in the history of an item.
    pub(super) fn of<T: Tasted>(item: &T, id: &ItemId) -> Self {
        let latest = item.earlier().latest();
        Self {
            item: id.clone(),
            day: latest.and_then(|state| state.until.clone()),
            lot: latest.map_or_else(String::new, |state| state.until_lot.clone()),
        }
    }

    /// What is put in its place.
    pub(super) fn edit(self) -> Edit {
        Edit::DateChange {
            item: self.item,
            day: self.day,
            lot: self.lot,
        }
    }
}

/// Where the person goes from here.
pub(super) type Way = Option<Area>;

/// What was kept of an item, the latest first; nothing when nothing was.
pub(super) fn earlier_ui<T: Tasted>(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    item: &T,
    id: &ItemId,
    mut sheet: Sheet<'_, Since>,
) -> Way {
    let earlier = item.earlier();
    earlier.latest()?;
    let palette = theme::palette(ui.visuals());
    section_ui(ui, speaker.word("counter-earlier"));
    quiet_ui(ui, speaker.word("counter-earlier-about"));
    let mut next = item.as_it_was(&item.for_keeping()).alone(speaker.book);
    for state in earlier.states.iter().rev() {
        let was = item.as_it_was(&state.was).alone(speaker.book);
        let changes = speaker.and(&speaker.about(&next).item_changes(&was, id, &[]));
        let words = match &state.until {
            Some(day) => say!(speaker, "counter-earlier-since", day: day, changes: changes),
            None => say!(speaker, "counter-earlier-now", changes: changes),
        };
        ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
        next = was;
    }
    since_ui(ui, speaker, &mut sheet, id);
    let wrong = link_ui(ui, speaker.word("counter-earlier-wrong"));
    take_keyboard(ui, &sheet.focus("earlier"), &wrong);
    let hint = speaker.word("counter-earlier-wrong-hint");
    if wrong.on_hover_text(hint).clicked() {
        sheet.edit("earlier", Edit::PutRight(id.clone()));
    }
    let drifted = link_ui(ui, speaker.word("counter-earlier-drifted"));
    let way = drifted.clicked().then_some(Area::Findings);
    ui.add_space(grid::NEAR);
    way
}

/// The day and the lot from which on the item has been as it is now.
fn since_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Since>, id: &ItemId) {
    let since = sheet.item.clone();
    sheet.row(ui, speaker.word("counter-earlier-day"), |sheet, ui| {
        let spot = Entry::wide("since", speaker.word("counter-earlier-day-named"));
        let spot = spot.hint(speaker.word("counter-not-stated"));
        sheet.read(
            ui,
            &spot,
            since.day.as_deref().unwrap_or_default(),
            |text| read_date(speaker, text),
            |since, day| since.day = day,
        );
    });
    if matches!(id, ItemId::Ingredient(_)) {
        sheet.row(ui, speaker.word("counter-earlier-lot"), |sheet, ui| {
            let spot = Entry::wide("since-lot", speaker.word("counter-earlier-lot-named"));
            let spot = spot.hint(speaker.word("counter-not-stated"));
            sheet.text(ui, &spot, &since.lot, |since, lot| since.lot = lot);
        });
    }
}
