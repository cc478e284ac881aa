//! Two ingredients that might come, side by side in the list of every recipe: which is level more often, and what each costs.

use egui::{Button, Label, RichText, ScrollArea, TextEdit, Ui};

use super::coming::ComingFor;
use super::review_outcome::{outcome_ui, reasons_ui};
use super::state::SwapState;
use super::{model, review_model};
use crate::book::{IngredientId, Role};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::swap::{Question, ReviewItem};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::capitalised;

/// Most ingredients that the menu lists; whoever does not find one types another letter.
const MOST_LISTED: usize = 60;
/// Height and least width of the menu, in points.
const LIST: f32 = 75.0 * grid::STEP;
const WIDTH: f32 = 75.0 * grid::STEP;
/// How far the second answer is set in, in points.
const INDENT: f32 = 7.0 * grid::STEP;

/// How the ingredient that comes does in all recipes and, once another one is chosen, that one below it.
pub(super) fn compare_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    (items, beside): (&[ReviewItem], Option<&[ReviewItem]>),
    state: &mut SwapState,
) {
    let speaker = screen.speaker;
    whole_ui(ui, screen, &question.with, items);
    if let Some(other) = state.beside.clone() {
        if let Some(items) = beside {
            whole_ui(ui, screen, &other, items);
        }
        ui.horizontal_wrapped(|ui| {
            let name = speaker.ingredient(&other);
            let instead = say!(speaker, "swap-screen-review-instead", ingredient: name);
            if ui.button(instead).clicked()
                && let Some(asked) = &mut state.asked.question
            {
                state.beside = Some(std::mem::replace(&mut asked.with, other));
                state.chosen.clear();
                state.begin_anew();
            }
            let alone = speaker.word("swap-screen-review-alone");
            if ui.button(alone).clicked() {
                state.beside = None;
            }
        });
        return;
    }
    let words = speaker.word("swap-screen-review-beside");
    let menu = ui.menu_button(words, |ui| candidates_ui(ui, screen, question, state));
    if let Some(chosen) = menu.inner.flatten() {
        state.beside = Some(chosen);
    }
}

/// "With Ketterby chestnut powder: 5 of 7 level. One of each costs +0.12 EUR more."
fn whole_ui(ui: &mut Ui, screen: &Screen<'_>, with: &IngredientId, items: &[ReviewItem]) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let name = speaker.ingredient(with);
    let level = review_model::level_count(items);
    let words = say!(
        speaker,
        "swap-screen-review-whole",
        ingredient: name,
        level: level,
        count: items.len(),
    );
    let suggested = items
        .iter()
        .filter(|item| !item.answer.suggestions.is_empty());
    let sum = review_model::cost_in_sum(suggested);
    let cost = review_model::cost_in_sum_words(speaker, &sum);
    let words = match cost {
        Some(cost) => say!(speaker, "clauses", before: words, after: cost),
        None => words,
    };
    let text = RichText::new(capitalised(&words)).font(TypeStyle::Strong.font_id());
    ui.add(Label::new(text.color(palette.text_strong)).wrap());
}

/// The ingredients that might come as well, in an open menu; the one that is clicked.
fn candidates_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    state: &mut SwapState,
) -> Option<IngredientId> {
    let speaker = screen.speaker;
    ui.set_min_width(WIDTH);
    let typed = &mut state.find_beside;
    let field = TextEdit::singleline(typed).hint_text(speaker.word("swap-screen-find-hint"));
    let name = speaker.word("swap-screen-find");
    ui.add(field).accessible_name(name).on_hover_text(name);
    let role = screen.book.ingredient(&question.replace);
    let role = role.map_or(Role::Flavour, |item| item.role);
    let found = screen.answers.to(&ComingFor {
        replace: question.replace.clone(),
        role,
        typed: typed.clone(),
        language: speaker.language,
    });
    let others = found.iter().filter(|item| item.id != question.with);
    let mut clicked = None;
    ScrollArea::vertical().max_height(LIST).show(ui, |ui| {
        for item in others.take(MOST_LISTED) {
            let name = speaker.ingredient(&item.id);
            let quiet = speaker.beside_name(item, &model::facts(speaker, item, role));
            let label = say!(speaker, "swap-screen-review-beside-named", ingredient: &name);
            let quiet = RichText::new(name_as_shown(&quiet)).font(TypeStyle::Small.font_id());
            let button = Button::new(name)
                .right_text(quiet)
                .frame_when_inactive(false);
            if ui.add(button).accessible_name(label).clicked() {
                clicked = Some(item.id.clone());
                ui.close();
            }
        }
        if found.is_empty() {
            ui.label(speaker.word("swap-screen-no-match"));
        }
    });
    clicked
}

/// The answer of the other ingredient for a row, below that of the first.
pub(super) fn other_ui(ui: &mut Ui, screen: &Screen<'_>, item: &ReviewItem) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let name = speaker.ingredient(&item.answer.question.with);
    ui.horizontal(|ui| {
        ui.add_space(INDENT);
        let words = say!(speaker, "swap-screen-review-with", ingredient: name);
        let words = RichText::new(capitalised(&words)).color(palette.text_normal);
        let Some(suggestion) = item.answer.suggestions.first() else {
            ui.label(words);
            reasons_ui(ui, speaker, item);
            return;
        };
        ui.label(words);
        let cost = review_model::cost_words(speaker, item);
        outcome_ui(
            ui,
            speaker,
            item,
            suggestion,
            |overall| say!(speaker, "clauses", before: overall, after: cost),
        );
    });
}
