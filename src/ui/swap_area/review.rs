//! One swap in every recipe that uses what goes: a list to look through, with one compensation each.

use std::collections::BTreeMap;

use egui::{Checkbox, Label, RichText, Ui};

use super::review_outcome::{outcome_ui, reasons_ui};
use super::state::{Reviewed, SwapState};
use super::{model, review_beside, review_model};
use crate::edit::Focus;
use crate::say::say;
use crate::swap::{Question, ReviewItem, Suggestion};
use crate::ui::Screen;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{capitalised, paragraph_ui};
use crate::workbench::{Action, Look};

/// How far the second lines are set in, in points.
const INDENT: f32 = 7.0 * grid::STEP;
/// Least room for the name and the state of a recipe, in points, and its part of a wide list.
const NAME: f32 = 75.0 * grid::STEP;
const NAME_PART: f32 = 0.36;
/// The widest list, in points.
const WIDTH: f32 = 200.0 * grid::STEP;

/// The list, and the button that takes what is ticked.
pub(super) fn review_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    (look, beside): (&Look<Vec<ReviewItem>>, &Look<Vec<ReviewItem>>),
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let goes = speaker.ingredient(&question.replace);
    let Some(items) = look.current() else {
        return;
    };
    ui.set_max_width(WIDTH.min(ui.available_width()));
    if items.is_empty() {
        let words = if state.asked.brings_back {
            speaker.word("swap-screen-none-drifted").to_owned()
        } else {
            say!(speaker, "swap-screen-review-none", ingredient: goes)
        };
        paragraph_ui(ui, capitalised(&words), palette.text_quiet);
        return;
    }
    let words = if state.asked.brings_back {
        speaker.word("swap-screen-review-drifted").to_owned()
    } else {
        say!(speaker, "swap-screen-review", ingredient: goes)
    };
    paragraph_ui(ui, capitalised(&words), palette.text_quiet);
    ui.add_space(grid::NEAR);
    let beside = beside.current().map(Vec::as_slice);
    if !state.asked.brings_back {
        review_beside::compare_ui(ui, screen, question, (items, beside), state);
        ui.add_space(grid::NEAR);
    }
    take_ui(ui, screen, items, state, actions);
    ui.add_space(grid::NEAR);
    let beside = beside.filter(|_| state.beside.is_some());
    let beside: BTreeMap<Reviewed, &ReviewItem> = beside
        .into_iter()
        .flatten()
        .map(|item| (review_model::place(item), item))
        .collect();
    let mut rows = std::mem::take(&mut state.review_rows);
    rows.in_sheet_ui(ui, items.len(), |ui, at| {
        let item = &items[at];
        item_ui(ui, screen, item, state);
        if let Some(other) = beside.get(&review_model::place(item)) {
            review_beside::other_ui(ui, screen, other);
        }
        ui.add_space(grid::NEAR);
    });
    state.review_rows = rows;
    copy_ui(ui, speaker.word("swap-screen-review-table"), || {
        review_model::as_table(screen, items, &state.chosen)
    });
}

fn take_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    items: &[ReviewItem],
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let all = |tick: bool| {
        let items = items.iter().filter(|item| item.can_be_taken());
        items.map(move |item| (review_model::place(item), tick))
    };
    ui.horizontal_wrapped(|ui| {
        let count = review_model::taken(screen.book, items, &state.chosen).count();
        let words = say!(speaker, "swap-screen-review-add", count: count);
        let words = RichText::new(words).color(palette.on_accent);
        let button = egui::Button::new(words).fill(palette.accent);
        if ui.add_enabled(count > 0, button).clicked() {
            let edits = review_model::edits(speaker, items, &state.chosen);
            state.taken = Some((count, review_model::versions(screen.book) + count));
            actions.push(Action::Edit {
                edits,
                focus: Focus::Book,
            });
            actions.push(Action::Command(crate::workbench::Command::CloseStep));
        }
        let chosen = &mut state.chosen;
        if ui
            .button(speaker.word("swap-screen-review-level"))
            .clicked()
        {
            chosen.clear();
            state.taken = None;
        }
        if ui.button(speaker.word("swap-screen-review-all")).clicked() {
            *chosen = all(true).collect();
            state.taken = None;
        }
        let none = speaker.word("swap-screen-review-none-selected");
        if ui.button(none).clicked() {
            *chosen = all(false).collect();
        }
    });
    let ticked = review_model::taken(screen.book, items, &state.chosen).map(|(item, _)| item);
    let sum = review_model::cost_in_sum(ticked);
    if let Some(words) = review_model::cost_in_sum_words(speaker, &sum) {
        ui.label(RichText::new(capitalised(&words)).color(palette.text_normal));
    }
    // Once it is undone, nothing was added.
    let now = review_model::versions(screen.book);
    if let Some((count, _)) = state.taken.filter(|(_, since)| *since == now) {
        let words = say!(speaker, "swap-screen-review-added", count: count);
        ui.label(RichText::new(words).color(palette.text_strong));
    }
}

fn item_ui(ui: &mut Ui, screen: &Screen<'_>, item: &ReviewItem, state: &mut SwapState) {
    let palette = theme::palette(ui.visuals());
    let place = review_model::place(item);
    let speaker = screen.speaker;
    let (name, state_word) = review_model::title(speaker, item);
    let suggestion = item.answer.suggestions.first();
    let width = ui.available_width();
    ui.horizontal(|ui| {
        let can_be_taken = item.can_be_taken();
        let mut ticked = review_model::is_ticked(screen.book, item, &state.chosen);
        let size = egui::vec2(NAME.max(width * NAME_PART), grid::TARGET);
        let layout = egui::Layout::left_to_right(egui::Align::Center);
        ui.allocate_ui_with_layout(size, layout, |ui| {
            ui.set_min_size(size);
            let checkbox = Checkbox::new(&mut ticked, RichText::new(&name).strong());
            if ui.add_enabled(can_be_taken, checkbox).changed() {
                state.chosen.insert(place, ticked);
            }
            ui.label(RichText::new(state_word).color(palette.text_quiet));
        });
        if let Some(suggestion) = suggestion {
            outcome_ui(ui, speaker, item, suggestion, |overall| overall);
        }
    });
    ui.indent(("review", &name), |ui| {
        ui.spacing_mut().indent = INDENT;
        if let Some(suggestion) = suggestion {
            changes_ui(ui, screen, item, suggestion);
        } else {
            reasons_ui(ui, speaker, item);
        }
    });
}

fn changes_ui(ui: &mut Ui, screen: &Screen<'_>, item: &ReviewItem, suggestion: &Suggestion) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    if let Some(version) = &item.already {
        let name = speaker.drink(&item.recipe, Some(version));
        let words = say!(speaker, "swap-screen-review-already-as", drink: name);
        ui.add(Label::new(RichText::new(capitalised(&words)).color(palette.text_quiet)).wrap());
    }
    let changes = review_model::changes(screen, item, suggestion).join(", ");
    let cost = review_model::cost_words(speaker, item);
    let words = say!(speaker, "clauses", before: cost, after: changes);
    ui.add(Label::new(RichText::new(capitalised(&words)).color(palette.text_strong)).wrap());
    let standard = &item.answer.standard;
    let diet = model::diet_words(screen.speaker, standard, &suggestion.balance);
    if diet.len() > 1 || item.answer.standard.allergens != suggestion.balance.allergens {
        let small = RichText::new(format!("{}.", diet.join(". ")));
        let small = small.font(TypeStyle::Small.font_id());
        ui.add(Label::new(small.color(palette.text_quiet)).wrap());
    }
}
