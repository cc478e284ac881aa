//! Which tea of the book is brewed: words in a row for a few teas, a list that is typed into for many.

use std::sync::Arc;

use egui::containers::menu::{MenuButton, MenuConfig};
use egui::{Button, PopupCloseBehavior, Ui, vec2};

use super::sheet::{choice_ui, chosen_word_ui};
use crate::book::{Book, IngredientId, Role, WantedWords};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::pick_list::{self, PickList, elided};

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
    list: PickList,
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
        let is_known = matches!(&self.found, Some((text, _)) if *text == self.list.text);
        if !is_known {
            let wanted = WantedWords::of(&self.list.text);
            let fits = |at: &usize| wanted.are_in(&self.all[*at].1);
            let found = (0..self.all.len()).filter(fits).collect();
            self.found = Some((self.list.text.clone(), found));
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
            teas.list.text.clear();
            teas.list.open();
        }
    });
}

/// The list with the field that narrows it down; only what is in sight of it is drawn.
fn list_ui(ui: &mut Ui, speaker: Speaker<'_>, teas: &mut Teas, tea: &mut Option<IngredientId>) {
    ui.set_width(WIDTH);
    // A menu has no room around what is typed.
    ui.spacing_mut().button_padding = vec2(grid::NEAR, grid::TIGHT);
    let name = speaker.word("serving-teas-find");
    let hint = speaker.word("serving-teas-hint");
    let field = teas.list.field_ui(ui, "find-a-tea", name, hint);
    let rows = teas.found().len();
    teas.list.walk(ui, rows);
    let entered = teas.list.entered(ui, &field);
    if rows == 0 {
        ui.label(speaker.word("serving-teas-none"));
    }
    let found = teas.found().to_vec();
    let (list, all) = (&mut teas.list, &teas.all);
    let clicked = list.rows_ui(ui, HEIGHT, rows, grid::TARGET, |ui, row, is_chosen| {
        let name = all[found[row]].1.as_str();
        pick_list::row_ui(ui, grid::TARGET, is_chosen, name, None, |ui, room| {
            let (font, colour) = (
                TypeStyle::Body.font_id(),
                theme::palette(ui.visuals()).text_strong,
            );
            let name = elided(ui, name, &font, colour, room.width());
            let place = room.left_center() - vec2(0.0, name.size().y / 2.0);
            ui.painter().galley(place, name, colour);
        })
    });
    if let Some(at) = entered.or(clicked).and_then(|row| found.get(row)) {
        tea.clone_from(&all[*at].0);
        ui.close();
    }
}
