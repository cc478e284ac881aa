//! Which tea of the book is brewed: words in a row for a few teas, a list that is typed into for many.

use std::sync::Arc;

use egui::containers::menu::{MenuButton, MenuConfig};
use egui::{Button, PopupCloseBehavior, ScrollArea, TextEdit, Ui, vec2};

use super::sheet::{choice_ui, chosen_word_ui};
use crate::book::{Book, IngredientId, Role, WantedWords};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::grid;

/// Most teas that stand in a row; more of them are looked up in a list.
const IN_A_ROW: usize = 12;
/// Width of the list, in points.
const WIDTH: f32 = 75.0 * grid::STEP;
/// Most height of the list, in points.
const HEIGHT: f32 = 75.0 * grid::STEP;

/// The teas of a book with their names, gathered once per state of the book and language.
#[derive(Default)]
pub(super) struct Teas {
    book: Option<Arc<Book>>,
    /// What stands for no tea of the book.
    any: &'static str,
    all: Vec<(Option<IngredientId>, String)>,
    /// What is typed into the list.
    text: String,
    just_opened: bool,
    /// The teas that fit what was typed.
    found: Option<(String, Vec<usize>)>,
}

impl Teas {
    fn follow(&mut self, book: &Arc<Book>, any: &'static str) {
        let is_same = |known: &Arc<Book>| Arc::ptr_eq(known, book) && self.any == any;
        if self.book.as_ref().is_some_and(is_same) {
            return;
        }
        let teas = book.ingredients.iter();
        let teas = teas.filter(|item| item.role == Role::Tea).map(|item| {
            let name = name_as_shown(&item.full_name()).into_owned();
            (Some(item.id.clone()), name)
        });
        self.all = std::iter::once((None, any.to_owned()))
            .chain(teas)
            .collect();
        self.book = Some(book.clone());
        self.any = any;
        self.found = None;
    }

    /// The positions of the teas that fit what is typed, in the order of the book.
    fn found(&mut self) -> &[usize] {
        let is_known = matches!(&self.found, Some((text, _)) if *text == self.text);
        if !is_known {
            let wanted = WantedWords::of(&self.text);
            let fits = |at: &usize| wanted.are_in(&self.all[*at].1);
            let found = (0..self.all.len()).filter(fits).collect();
            self.found = Some((self.text.clone(), found));
        }
        self.found.as_ref().map_or(&[], |(_, found)| found)
    }
}

/// The choice of a tea.
pub(super) fn teas_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    teas: &mut Teas,
    tea: &mut Option<IngredientId>,
) {
    let (book, speaker) = (screen.book, screen.speaker);
    let name = speaker.word("serving-teas");
    let any = speaker.word("serving-teas-any");
    teas.follow(book, any);
    if teas.all.len() <= IN_A_ROW + 1 {
        choice_ui(ui, name, tea, &teas.all);
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
        let count = teas.all.len() - 1;
        let button = Button::new(say!(speaker, "serving-teas-choose", count: count));
        let config = MenuConfig::new().close_behavior(PopupCloseBehavior::CloseOnClickOutside);
        let menu = MenuButton::from_button(button).config(config);
        let (response, _) = menu.ui(ui, |ui| list_ui(ui, speaker, teas, tea));
        if response.clicked() {
            teas.text.clear();
            teas.just_opened = true;
        }
    });
}

/// The list with the field that narrows it down; only what is in sight of it is drawn.
fn list_ui(ui: &mut Ui, speaker: Speaker<'_>, teas: &mut Teas, tea: &mut Option<IngredientId>) {
    ui.set_width(WIDTH);
    // A menu has no room around what is typed.
    ui.spacing_mut().button_padding = vec2(grid::NEAR, grid::TIGHT);
    let field = TextEdit::singleline(&mut teas.text)
        .hint_text(speaker.word("serving-teas-hint"))
        .desired_width(f32::INFINITY);
    let response = ui
        .add(field)
        .accessible_name(speaker.word("serving-teas-find"));
    // The first pass only measures the list, so the wish stands until the field has the keyboard.
    if response.has_focus() {
        teas.just_opened = false;
    } else if teas.just_opened {
        response.request_focus();
        ui.request_repaint();
    }
    let rows = teas.found().len();
    if rows == 0 {
        ui.label(speaker.word("serving-teas-none"));
    }
    ScrollArea::vertical()
        .max_height(HEIGHT)
        .auto_shrink([false, true])
        .show_rows(ui, grid::TARGET, rows, |ui, in_sight| {
            for row in in_sight {
                let at = teas.found()[row];
                let (id, name) = &teas.all[at];
                let button = Button::selectable(*tea == *id, name.as_str())
                    .truncate()
                    .min_size(vec2(ui.available_width(), grid::TARGET));
                if ui.add(button).clicked() {
                    tea.clone_from(id);
                    ui.close();
                }
            }
        });
}
