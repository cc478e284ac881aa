//! The menu in which a person says what something that comes in is: an ingredient of the book, found by typing, or something
//! else that is offered.

use egui::{Button, Key, Label, Popup, PopupCloseBehavior, RichText, Ui};

use crate::book::{Book, Form, IngredientId, WantedWords};
use crate::exchange::RowMatch;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::pick_list::{self, PickList};

/// The most that the list takes before it scrolls, in points.
const LIST: f32 = 75.0 * grid::STEP;

/// Width of the menu, in points.
const WIDTH: f32 = 340.0;

/// The menu that is open, of all of a review.
#[derive(Clone, Debug, Default)]
pub(super) struct MatchMenu {
    /// The number of what is asked about.
    open: Option<usize>,
    list: PickList,
}

/// What stands there now, and for what.
pub(super) struct Asked<'text> {
    /// The number of what is asked about.
    pub(super) at: usize,
    /// What it is called where it comes from.
    pub(super) name: &'text str,
    /// What it is for now.
    pub(super) now: &'text str,
}

/// The button with what something is for now, and the menu while it is open; tells what was chosen.
pub(super) fn match_menu_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    menu: &mut MatchMenu,
    asked: &Asked<'_>,
) -> Option<RowMatch> {
    let palette = theme::palette(ui.visuals());
    let words = RichText::new(asked.now).font(TypeStyle::Small.font_id());
    let button = ui.add(Button::new(words.color(palette.text_normal)).truncate());
    let name = name_as_shown(asked.name);
    let said = say!(speaker, "cards-screen-match-field", name: name, now: asked.now);
    let button = button.accessible_name(said);
    if button.clicked() {
        menu.open = Some(asked.at);
        menu.list = PickList::default();
        menu.list.open();
    }
    if menu.open != Some(asked.at) {
        return None;
    }
    let mut open = true;
    let mut chosen = None;
    Popup::from_response(&button)
        .id(egui::Id::unique("what a row is"))
        .open_bool(&mut open)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(WIDTH)
        .show(|ui| {
            ui.set_width(WIDTH);
            chosen = list_ui(ui, speaker, &mut menu.list);
            if ui.input(|input| input.key_pressed(Key::Escape)) {
                menu.open = None;
            }
        });
    if chosen.is_some() || !open && !menu.list.is_opening() {
        menu.open = None;
    }
    chosen
}

fn list_ui(ui: &mut Ui, speaker: Speaker<'_>, list: &mut PickList) -> Option<RowMatch> {
    let found = offered(speaker, &list.text);
    list.walk(ui, found.len());
    let field = list.field_ui(
        ui,
        "find-what-a-row-is",
        speaker.word("cards-screen-match-find"),
        speaker.word("cards-screen-match-find-hint"),
    );
    let entered = list.entered(ui, &field);
    let clicked = list.rows_ui(ui, LIST, found.len(), grid::TARGET, |ui, at, is_chosen| {
        let words = match_words(speaker, &found[at]);
        let role = match &found[at] {
            RowMatch::Ours(id) => speaker.book.ingredient(id).map(|item| item.role),
            RowMatch::New(_) | RowMatch::LeftOut => None,
        };
        pick_list::row_ui(ui, grid::TARGET, is_chosen, &words, role, |ui, room| {
            let label = Label::new(words.as_str()).selectable(false).truncate();
            ui.put(room, label);
        })
    });
    if found.is_empty() {
        ui.label(speaker.word("cards-screen-match-none"));
    }
    entered.or(clicked).and_then(|at| found.get(at)).cloned()
}

/// The ingredients that what is typed fits, then what else it may be.
fn offered(speaker: Speaker<'_>, typed: &str) -> Vec<RowMatch> {
    let wanted = WantedWords::of(typed);
    let ours = ingredients(speaker.book).map(RowMatch::Ours);
    let new = Form::ALL.map(RowMatch::New);
    let all = ours.chain(new).chain([RowMatch::LeftOut]);
    all.filter(|one| wanted.are_in(&match_words(speaker, one)))
        .collect()
}

fn ingredients(book: &Book) -> impl Iterator<Item = IngredientId> {
    book.ingredients.iter().map(|item| item.id.clone())
}

/// What something is taken for.
pub(super) fn match_words(speaker: Speaker<'_>, to: &RowMatch) -> String {
    match to {
        RowMatch::Ours(id) => name_as_shown(&speaker.ingredient(id)).into_owned(),
        RowMatch::New(form) => {
            say!(speaker, "cards-screen-match-new", form: speaker.form(*form))
        }
        RowMatch::LeftOut => speaker.word("cards-screen-match-left-out").to_owned(),
    }
}
