//! A list of the items in which two books differ; each that has changed unfolds to what changed inside.

use std::collections::BTreeSet;

use egui::{Label, RichText, Ui};

use crate::book::{BookDifference, FoundKind, ItemChange, ItemDifference, ItemId};
use crate::quantity::excerpt;
use crate::say::{Speaker, say};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::name_button_ui;
use crate::ui::words::{quiet_ui, speaker};

/// Longest name in the list, in characters.
const NAME: usize = 60;

/// Most rows that are drawn: a list of thousands is not read.
const ROWS: usize = 100;

/// The items of a difference. `list` tells lists apart; `details` says what changed inside an item.
pub(super) fn differences_ui(
    ui: &mut Ui,
    list: &'static str,
    difference: &BookDifference,
    unfolded: &mut BTreeSet<(&'static str, ItemId)>,
    details: impl Fn(&ItemId) -> Vec<String>,
) {
    let speaker = speaker(ui.ctx());
    if difference.is_empty() {
        quiet_ui(ui, speaker.word("safekeeping-nothing-differs"));
    }
    for item in difference.items.iter().take(ROWS) {
        item_ui(ui, list, item, unfolded, &details);
    }
    more_ui(ui, difference.items.len());
    for kind in &difference.reordered {
        quiet_ui(ui, &speaker.another_order(*kind));
    }
}

/// How many of a list are not drawn, if any.
fn more_ui(ui: &mut Ui, count: usize) {
    if count > ROWS {
        let words = say!(speaker(ui.ctx()), "safekeeping-more", count: count - ROWS);
        quiet_ui(ui, &words);
    }
}

fn item_ui(
    ui: &mut Ui,
    list: &'static str,
    item: &ItemDifference,
    unfolded: &mut BTreeSet<(&'static str, ItemId)>,
    details: &impl Fn(&ItemId) -> Vec<String>,
) {
    let (palette, speaker) = (theme::palette(ui.visuals()), speaker(ui.ctx()));
    let name = item_name(speaker, &item.item, &item.name);
    let key = (list, item.item.clone());
    let has_details = item.change == ItemChange::Changed;
    let open = has_details && unfolded.contains(&key);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        if has_details {
            ui.spacing_mut().button_padding.x = grid::TIGHT;
            let words = speaker.word(if open {
                "safekeeping-hide-details"
            } else {
                "safekeeping-show-details"
            });
            let button = name_button_ui(ui, &name, TypeStyle::Body, palette.accent, false);
            if button.on_hover_text(words).clicked() {
                if open {
                    unfolded.remove(&key);
                } else {
                    unfolded.insert(key);
                }
            }
        } else {
            // In line with the names that can be pressed.
            ui.add_space(grid::TIGHT);
            ui.label(RichText::new(&name).color(palette.text_normal));
        }
        let change = change_word(speaker, item.change);
        let words = match &item.item {
            ItemId::Settings => change.to_owned(),
            other => {
                let kind = kind_word(speaker, other);
                say!(speaker, "safekeeping-item", kind: kind, change: change)
            }
        };
        quiet_ui(ui, &words);
    });
    if open {
        let sentences = details(&item.item);
        ui.indent(("inside", list, &name), |ui| sentences_ui(ui, &sentences));
    }
}

/// Sentences about one item, one below the other.
pub(super) fn sentences_ui(ui: &mut Ui, sentences: &[String]) {
    let palette = theme::palette(ui.visuals());
    if sentences.is_empty() {
        let words = speaker(ui.ctx()).word("safekeeping-nothing-said");
        quiet_ui(ui, words);
    }
    for sentence in sentences.iter().take(ROWS) {
        ui.add(Label::new(RichText::new(sentence).color(palette.text_normal)).wrap());
    }
    more_ui(ui, sentences.len());
}

/// The name of an item for people: "the shop's settings" have none of their own.
pub(super) fn item_name(speaker: Speaker<'_>, item: &ItemId, name: &str) -> String {
    match item {
        ItemId::Settings => speaker.word("safekeeping-settings").to_owned(),
        _ if name.trim().is_empty() => speaker.word("safekeeping-without-name").to_owned(),
        _ => excerpt(name, NAME),
    }
}

/// What kind of item it is: "recipe".
pub(super) fn kind_word(speaker: Speaker<'_>, item: &ItemId) -> &'static str {
    match item {
        ItemId::Settings => speaker.word("safekeeping-kind-settings"),
        ItemId::Ingredient(_) => speaker.found_kind(FoundKind::Ingredient),
        ItemId::Measure(_) => speaker.found_kind(FoundKind::Measure),
        ItemId::Vessel(_) => speaker.found_kind(FoundKind::Vessel),
        ItemId::Recipe(_) => speaker.found_kind(FoundKind::Recipe),
        ItemId::Tasting(_) => speaker.word("safekeeping-kind-tasting"),
    }
}

/// What happened to an item: "added".
pub(super) fn change_word(speaker: Speaker<'_>, change: ItemChange) -> &'static str {
    speaker.word(match change {
        ItemChange::Added => "safekeeping-added",
        ItemChange::Changed => "safekeeping-changed",
        ItemChange::Removed => "safekeeping-removed",
    })
}
