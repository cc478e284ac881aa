//! A list of the items in which two books differ; each that has changed unfolds to what changed inside.

use std::collections::BTreeSet;

use egui::{Button, Label, RichText, Ui};

use crate::book::{BookDifference, ItemChange, ItemDifference, ItemId};
use crate::quantity::excerpt;
use crate::say::Speaker;
use crate::ui::theme::{self, grid};
use crate::ui::words::quiet_ui;

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
    if difference.is_empty() {
        quiet_ui(ui, "nothing differs");
    }
    for item in difference.items.iter().take(ROWS) {
        item_ui(ui, list, item, unfolded, &details);
    }
    if difference.items.len() > ROWS {
        quiet_ui(ui, &format!("and {} more", difference.items.len() - ROWS));
    }
    for kind in &difference.reordered {
        quiet_ui(ui, &Speaker::without_book().another_order(*kind));
    }
}

fn item_ui(
    ui: &mut Ui,
    list: &'static str,
    item: &ItemDifference,
    unfolded: &mut BTreeSet<(&'static str, ItemId)>,
    details: &impl Fn(&ItemId) -> Vec<String>,
) {
    let palette = theme::palette(ui.visuals());
    let name = item_name(&item.item, &item.name);
    let key = (list, item.item.clone());
    let has_details = item.change == ItemChange::Changed;
    let open = has_details && unfolded.contains(&key);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        if has_details {
            ui.spacing_mut().button_padding.x = grid::TIGHT;
            let text = RichText::new(&name).color(palette.accent);
            let button = Button::new(text).frame_when_inactive(false).truncate();
            let words = if open {
                "Hide details"
            } else {
                "What changed inside"
            };
            if ui.add(button).on_hover_text(words).clicked() {
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
        let words = match &item.item {
            ItemId::Settings => item.change.word().to_owned(),
            other => format!("{}, {}", other.words().0, item.change.word()),
        };
        quiet_ui(ui, &words);
    });
    if open {
        let sentences = details(&item.item);
        // Two files are compared as they are kept.
        ui.indent(("inside", list, &name), |ui| {
            sentences_ui(ui, &sentences, str::to_owned);
        });
    }
}

/// Sentences about one item, one below the other.
pub(super) fn sentences_ui(ui: &mut Ui, sentences: &[String], shown: impl Fn(&str) -> String) {
    let palette = theme::palette(ui.visuals());
    if sentences.is_empty() {
        quiet_ui(ui, "nothing that is said here");
    }
    for sentence in sentences.iter().take(ROWS) {
        ui.add(Label::new(RichText::new(shown(sentence)).color(palette.text_normal)).wrap());
    }
    if sentences.len() > ROWS {
        quiet_ui(ui, &format!("and {} more", sentences.len() - ROWS));
    }
}

/// The name of an item for people: "the shop's settings" have none of their own.
pub(super) fn item_name(item: &ItemId, name: &str) -> String {
    match item {
        ItemId::Settings => "the shop’s settings".to_owned(),
        _ if name.trim().is_empty() => "without a name".to_owned(),
        _ => excerpt(name, NAME),
    }
}
