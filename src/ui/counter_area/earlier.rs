//! What an item was when drinks were approved with it, and what its change means for their standards.

use egui::{Label, RichText, Ui};

use super::item::Counter;
use crate::book::{EarlierState, ItemId, Tasted};
use crate::edit::Edit;
use crate::say::say;
use crate::ui::area::Area;
use crate::ui::field::take_keyboard;
use crate::ui::theme::{self, grid};
use crate::ui::widgets::form::{Entry, Sheet, link_ui, section_ui};
use crate::ui::words::quiet_ui;

/// From when on an item has been another one.
#[derive(Clone)]
struct Since {
    item: ItemId,
    day: String,
    lot: String,
}

/// Where the person goes from here.
pub(super) type Way = Option<Area>;

/// What was kept of an item, the latest first; nothing when nothing was.
pub(super) fn earlier_ui<T: Tasted<Kept = T>>(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, T>,
    id: &ItemId,
) -> Way {
    let speaker = counter.speaker;
    let earlier = sheet.item.earlier().clone();
    let latest = earlier.latest()?;
    let palette = theme::palette(ui.visuals());
    section_ui(ui, speaker.word("counter-earlier"));
    quiet_ui(ui, speaker.word("counter-earlier-about"));
    let mut next = sheet.item.for_keeping().alone();
    for state in earlier.states.iter().rev() {
        // As it would be kept today: what does not enter drinks is not told.
        let was = sheet.item.as_it_was(&state.was).for_keeping().alone();
        let changes = speaker.and(&speaker.about(&next).item_changes(&was, id, &[]));
        let words = match &state.until {
            Some(day) => say!(speaker, "counter-earlier-since", day: day, changes: changes),
            None => say!(speaker, "counter-earlier-now", changes: changes),
        };
        ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
        next = was;
    }
    since_ui(ui, counter, sheet, id, latest);
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
fn since_ui<T: Tasted>(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, T>,
    id: &ItemId,
    latest: &EarlierState<T::Kept>,
) {
    let speaker = counter.speaker;
    let since = Since {
        item: id.clone(),
        day: latest.until.clone().unwrap_or_default(),
        lot: latest.until_lot.clone(),
    };
    let mut sheet = sheet.beside(since.clone(), |since| Edit::DateChange {
        item: since.item,
        day: (!since.day.trim().is_empty()).then_some(since.day),
        lot: since.lot,
    });
    sheet.row(ui, speaker.word("counter-earlier-day"), |sheet, ui| {
        let spot = Entry::wide("since", speaker.word("counter-earlier-day-named"));
        let spot = spot.hint(speaker.word("counter-not-stated"));
        sheet.text(ui, &spot, &since.day, |since, day| since.day = day);
    });
    if matches!(id, ItemId::Ingredient(_)) {
        sheet.row(ui, speaker.word("counter-earlier-lot"), |sheet, ui| {
            let spot = Entry::wide("since-lot", speaker.word("counter-earlier-lot-named"));
            let spot = spot.hint(speaker.word("counter-not-stated"));
            sheet.text(ui, &spot, &since.lot, |since, lot| since.lot = lot);
        });
    }
}
