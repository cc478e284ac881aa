//! Which tea of the book is brewed: words in a row for a few teas, a list that is typed into for many.

use std::sync::Arc;

use egui::containers::menu::{MenuButton, MenuConfig};
use egui::{Button, PopupCloseBehavior, Ui, vec2};

use super::sheet::{choice_ui, chosen_word_ui};
use crate::book::{IngredientId, Role, WantedWords};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::theme::grid;
use crate::ui::widgets::pick_list::{self, PickList};
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED};

/// Most teas that stand in a row; more of them are looked up in a list.
const IN_A_ROW: usize = 12;
/// Width of the list, in points.
const WIDTH: f32 = 75.0 * grid::STEP;
/// Most height of the list, in points.
const HEIGHT: f32 = 75.0 * grid::STEP;

/// A tea and its name; the first of a list stands for no tea of the book.
type NamedTea = (Option<IngredientId>, String);

/// The teas of the book by their names.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
struct TeasOfBook {
    /// What stands for no tea of the book.
    any: &'static str,
}

impl BookQuestion for TeasOfBook {
    type Answer = Arc<Vec<NamedTea>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let teas = answers.book().ingredients.iter();
        let teas = teas.filter(|item| item.role == Role::Tea).map(|item| {
            let name = name_as_shown(&item.full_name()).into_owned();
            (Some(item.id.clone()), name)
        });
        let none = std::iter::once((None, self.any.to_owned()));
        Arc::new(none.chain(teas).collect())
    }
}

/// The positions of the teas that fit what is typed, in the order of the book.
#[derive(Clone, PartialEq, Eq, Hash)]
struct TeasFor {
    any: &'static str,
    typed: String,
}

impl BookQuestion for TeasFor {
    type Answer = Arc<Vec<usize>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let teas = answers.to(&TeasOfBook { any: self.any });
        let wanted = WantedWords::of(&self.typed);
        let fits = |at: &usize| wanted.are_in(&teas[*at].1);
        Arc::new((0..teas.len()).filter(fits).collect())
    }
}

/// The choice of a tea.
pub(super) fn teas_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    list: &mut PickList,
    tea: &mut Option<IngredientId>,
) {
    let (book, speaker) = (screen.book, screen.speaker);
    let name = speaker.word("serving-teas");
    let any = speaker.word("serving-teas-any");
    let teas = screen.answers.to(&TeasOfBook { any });
    if teas.len() <= IN_A_ROW + 1 {
        choice_ui(ui, name, tea, &teas);
        return;
    }
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = vec2(grid::TIGHT, 0.0);
        if chosen_word_ui(ui, name, any, tea.is_none()).clicked() {
            *tea = None;
        }
        let chosen = tea.as_ref().and_then(|id| book.ingredient(id));
        if let Some(chosen) = chosen {
            chosen_word_ui(ui, name, &name_as_shown(&chosen.full_name()), true);
        }
        let count = teas.len() - 1;
        let button = Button::new(say!(speaker, "serving-teas-choose", count: count));
        let config = MenuConfig::new().close_behavior(PopupCloseBehavior::CloseOnClickOutside);
        let menu = MenuButton::from_button(button).config(config);
        let (response, _) = menu.ui(ui, |ui| list_ui(ui, screen, list, &teas, tea));
        if response.clicked() {
            list.text.clear();
            list.open();
        }
    });
}

/// The list with the field that narrows it down; only what is in sight of it is drawn.
fn list_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    list: &mut PickList,
    teas: &[NamedTea],
    tea: &mut Option<IngredientId>,
) {
    let speaker = screen.speaker;
    let any = speaker.word("serving-teas-any");
    ui.set_width(WIDTH);
    // A menu has no room around what is typed.
    ui.spacing_mut().button_padding = vec2(grid::NEAR, grid::TIGHT);
    let name = speaker.word("serving-teas-find");
    let hint = speaker.word("serving-teas-hint");
    let field = list.field_ui(ui, "find-a-tea", name, hint);
    let found = screen.answers.to(&TeasFor {
        any,
        typed: list.text.clone(),
    });
    list.walk(ui, found.len());
    let entered = list.entered(ui, &field);
    if found.is_empty() {
        ui.label(speaker.word("serving-teas-none"));
    }
    let rows = found.len();
    let clicked = list.rows_ui(ui, HEIGHT, rows, grid::TARGET, |ui, row, is_chosen| {
        let name = teas[found[row]].1.as_str();
        pick_list::words_row_ui(ui, is_chosen, name, None)
    });
    if let Some(at) = entered.or(clicked).and_then(|row| found.get(row)) {
        tea.clone_from(&teas[*at].0);
        ui.close();
    }
}
