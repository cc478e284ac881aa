//! The counter: what the shop has — ingredients, measures, vessels — and what holds for the shop as a whole.

mod entry_sheet;
mod ingredient;
mod list;
mod measure;
mod removal;
mod shop;
mod steps;
mod table;
mod uses;
mod vessel;

pub(super) use self::removal::new_ingredient;

use std::sync::Arc;

use egui::{CentralPanel, Frame, Margin, Panel, ScrollArea, Ui, UiBuilder};

use self::list::Wish;
use self::table::{Shelf, Sort};
use super::area::{Area, Navigation};
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::theme::{self, grid};
use super::view_state::ViewState;
use crate::book::{self, Book, Finding, IngredientId, MeasureId, VesselId};
use crate::say::Speaker;
use crate::ui::words;
use crate::workbench::Action;

/// What is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Kind {
    /// What goes into drinks.
    #[default]
    Ingredients,
    /// What measures it.
    Measures,
    /// What it is made and served in.
    Vessels,
    /// What holds for the whole shop.
    Shop,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Ingredients, Self::Measures, Self::Vessels, Self::Shop];

    /// What an item of it is called in the names of fields, and what messages choose by.
    fn key(self) -> &'static str {
        match self {
            Self::Ingredients => "ingredient",
            Self::Measures => "measure",
            Self::Vessels => "vessel",
            Self::Shop => "shop",
        }
    }
}

/// An item of the shop.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CounterItem {
    /// An ingredient.
    Ingredient(IngredientId),
    /// A measure.
    Measure(MeasureId),
    /// A vessel.
    Vessel(VesselId),
}

impl CounterItem {
    /// An item of the book that is an item of the shop; `None` for a recipe and the settings.
    fn of(item: &book::ItemId) -> Option<Self> {
        match item {
            book::ItemId::Ingredient(id) => Some(Self::Ingredient(id.clone())),
            book::ItemId::Measure(id) => Some(Self::Measure(id.clone())),
            book::ItemId::Vessel(id) => Some(Self::Vessel(id.clone())),
            book::ItemId::Settings | book::ItemId::Recipe(_) => None,
        }
    }

    fn kind(&self) -> Kind {
        match self {
            Self::Ingredient(_) => Kind::Ingredients,
            Self::Measure(_) => Kind::Measures,
            Self::Vessel(_) => Kind::Vessels,
        }
    }

    /// Its kind and id as one word, for the names of its fields.
    fn place(&self) -> String {
        let id = match self {
            Self::Ingredient(id) => id.as_str(),
            Self::Measure(id) => id.as_str(),
            Self::Vessel(id) => id.as_str(),
        };
        format!("{}/{id}", self.kind().key())
    }

    fn is_in(&self, book: &Book) -> bool {
        match self {
            Self::Ingredient(id) => book.ingredients.contains(id),
            Self::Measure(id) => book.measures.contains(id),
            Self::Vessel(id) => book.vessels.contains(id),
        }
    }
}

/// What the counter remembers between frames.
#[derive(Default)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a wish that the next frame carries out"
)]
pub struct CounterState {
    /// What is looked at.
    pub kind: Kind,
    /// The item that is open.
    pub open: Option<CounterItem>,
    /// What is typed to find an item.
    pub find: String,
    sort: Option<Sort>,
    shelf: Shelf,
    /// The row that the keyboard is on.
    row: usize,
    focus_row: bool,
    /// Whether the keyboard goes into the field that finds.
    focus_find: bool,
    enter_row: bool,
    /// Whether the keyboard goes into the item that has just been opened.
    enter_field: bool,
    scroll_to_row: bool,
    find_row: Option<CounterItem>,
    /// An item that opens as soon as the book has it.
    wanted: Option<CounterItem>,
    scrolled: f32,
    /// The item that was to be deleted although it is used.
    refused: Option<CounterItem>,
}

impl CounterState {
    /// Opens an item.
    pub fn show(&mut self, item: CounterItem) {
        if self.kind != item.kind() {
            self.look_at(item.kind());
        }
        self.find_row = Some(item.clone());
        self.open = Some(item);
        self.refused = None;
    }

    /// Opens an item and puts the keyboard on its row.
    pub(super) fn show_in_list(&mut self, item: CounterItem) {
        self.show(item);
        self.find.clear();
        self.focus_row = true;
    }

    /// Puts the keyboard into the field that finds: whoever came by key goes on by key.
    pub(super) fn take_keyboard(&mut self) {
        self.focus_find = self.kind != Kind::Shop;
    }

    /// Looks at another kind.
    pub fn look_at(&mut self, kind: Kind) {
        if self.kind != kind {
            let shelf = std::mem::take(&mut self.shelf);
            *self = Self {
                kind,
                shelf,
                ..Self::default()
            };
        }
    }

    /// One step back: closes the item, or lets go what is typed to find one; `false` when there is nothing to go back from.
    pub fn step_back(&mut self) -> bool {
        if self.open.take().is_some() {
            self.refused = None;
            return true;
        }
        !std::mem::take(&mut self.find).is_empty()
    }
}

impl AreaOfWork for CounterState {
    fn place(&self) -> Place {
        Place::Window
    }

    fn needs_drink(&self) -> bool {
        false
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        let counter = Counter {
            book: desk.in_hand.book,
            findings: desk.in_hand.findings,
            speaker: desk.in_hand.speaker,
        };
        counter_area_ui(ui, counter, self, view, actions);
    }

    fn go(&mut self, to: &Navigation) {
        match to {
            Navigation::ByKey(Area::Counter) => self.take_keyboard(),
            Navigation::Item(item) => match CounterItem::of(item) {
                Some(item) => self.show_in_list(item),
                None => self.look_at(Kind::Shop),
            },
            Navigation::Form(item) => match CounterItem::of(item) {
                Some(item) => self.show(item),
                None => self.look_at(Kind::Shop),
            },
            _ => {}
        }
    }

    fn go_to_focus(&mut self, focus: &str, _: &Book, view: &mut ViewState) -> bool {
        go_to(focus, self, view)
    }

    fn step_back(&mut self, _: &mut ViewState) -> bool {
        CounterState::step_back(self)
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// Names of fields of the counter begin so.
const FIELD: &str = "field counter ";
/// What undo goes back to when an item was added or deleted.
const PLACE: &str = "counter ";

/// The name of a field of an item.
fn field_key(place: &str, field: &str) -> String {
    format!("{FIELD}{place} {field}")
}

/// The name of the field of a flavour, by its number from 0.
pub(super) fn flavour_focus(id: &IngredientId, at: usize) -> String {
    let item = CounterItem::Ingredient(id.clone());
    field_key(&item.place(), &format!("flavour {at}"))
}

/// The name of a field of an item; `None` for what is not at the counter.
pub(super) fn field_focus(item: &book::ItemId, field: &str) -> Option<String> {
    let place = match item {
        book::ItemId::Settings => shop::PLACE.to_owned(),
        item => CounterItem::of(item)?.place(),
    };
    Some(field_key(&place, field))
}

/// The name of the field of the shop's name.
pub(super) fn shop_name_focus() -> String {
    field_key(shop::PLACE, "shop")
}

/// The name of the field of the note on the book.
pub(super) fn book_note_focus() -> String {
    field_key(shop::PLACE, "note")
}

/// Goes to where undo or redo was; `false` when that was not at the counter.
fn go_to(focus: &str, state: &mut CounterState, view: &mut ViewState) -> bool {
    let Some(rest) = focus
        .strip_prefix(FIELD)
        .or_else(|| focus.strip_prefix(PLACE))
    else {
        return false;
    };
    let place = rest.split(' ').next().unwrap_or_default();
    let Some((kind, id)) = place.split_once('/') else {
        return false;
    };
    let item = match kind {
        "ingredient" => IngredientId::new(id).ok().map(CounterItem::Ingredient),
        "measure" => MeasureId::new(id).ok().map(CounterItem::Measure),
        "vessel" => VesselId::new(id).ok().map(CounterItem::Vessel),
        _ => None,
    };
    view.area = Area::Counter;
    match item {
        Some(item) => state.show(item),
        None => state.look_at(Kind::Shop),
    }
    true
}

/// What every view of the counter may read.
#[derive(Clone, Copy)]
struct Counter<'frame> {
    book: &'frame Arc<Book>,
    findings: &'frame [Finding],
    /// Speaks about the book in the units and the language of the window.
    speaker: Speaker<'frame>,
}

/// From this width of the window on the list keeps its columns beside an open item, in points.
const WIDE: f32 = 1500.0;
/// Below this width of the window it is narrow, in points.
const NARROW: f32 = 1240.0;

/// The counter fills the window below the strip.
fn counter_area_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let book = counter.book;
    state.shelf.take(book, counter.speaker);
    if let Some(item) = state.wanted.take_if(|item| item.is_in(book)) {
        state.show(item);
    }
    if state.open.as_ref().is_some_and(|item| !item.is_in(book)) {
        state.open = None;
    }
    let palette = theme::palette(ui.visuals());
    let paper = Frame::new().fill(palette.ground).inner_margin(Margin {
        left: 16,
        right: 8,
        top: 10,
        bottom: 0,
    });
    let sheet = Frame::new().fill(palette.sheet).inner_margin(Margin {
        left: 20,
        right: 4,
        top: 10,
        bottom: 0,
    });
    let width = ui.available_width();
    if state.open.is_none() && state.kind != Kind::Shop {
        CentralPanel::default().frame(sheet).show(ui, |ui| {
            let rect = ui.available_rect_before_wrap();
            let rect = rect.with_max_x(rect.right().min(rect.left() + WHOLE_LIST));
            ui.scope_builder(UiBuilder::new().max_rect(rect), |ui| {
                left_ui(ui, counter, state, view, actions);
            });
        });
        return;
    }
    let list = match width {
        _ if state.kind == Kind::Shop => 288.0,
        width if width >= WIDE => 600.0,
        width if width >= NARROW => 400.0,
        _ => 288.0,
    };
    Panel::left("counter list")
        .exact_size(list)
        .resizable(false)
        .frame(paper)
        .show(ui, |ui| left_ui(ui, counter, state, view, actions));
    CentralPanel::default()
        .frame(sheet)
        .show(ui, |ui| item_ui(ui, counter, state, view, actions));
}

/// The widest that a list is drawn, in points: longer lines lead the eye astray.
const WHOLE_LIST: f32 = 1000.0;

fn left_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let book = counter.book;
    list::kinds_ui(
        ui,
        state,
        [
            book.ingredients.len(),
            book.measures.len(),
            book.vessels.len(),
        ],
    );
    ui.add_space(grid::NEAR);
    if state.kind == Kind::Shop {
        words::quiet_ui(ui, counter.speaker.word("counter-shop-about"));
        return;
    }
    match list::list_ui(ui, counter, state) {
        Some(Wish::Open(item)) => {
            let enters = std::mem::take(&mut state.enter_field);
            if enters {
                view.focus_wanted = Some(field_key(&item.place(), "name"));
            }
            state.open = Some(item);
            state.refused = None;
            ui.ctx().request_repaint();
        }
        Some(Wish::New(name)) => removal::add_new(counter, name.as_deref(), state, view, actions),
        Some(Wish::Published(id)) => removal::add_published(counter, &id, state, view, actions),
        None => {}
    }
}

/// The item that is open, or the shop.
fn item_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let open = state.open.clone();
    let whole = ui.max_rect();
    let salt = ("counter item", open.as_ref().map(CounterItem::place));
    let mut escaped = false;
    ScrollArea::vertical()
        .id_salt(salt)
        .auto_shrink(false)
        .show(ui, |ui| {
            // The bar floats over the content; it gets a margin of its own.
            ui.set_width(ui.available_width() - grid::EASY);
            ui.spacing_mut().item_spacing.y = 2.0;
            escaped = match &open {
                Some(CounterItem::Ingredient(id)) => {
                    ingredient::editor_ui(ui, counter, id, state, view, actions)
                }
                Some(CounterItem::Measure(id)) => {
                    measure::editor_ui(ui, counter, id, state, view, actions)
                }
                Some(CounterItem::Vessel(id)) => {
                    vessel::editor_ui(ui, counter, id, state, view, actions)
                }
                None => shop::editor_ui(ui, counter, view, actions),
            };
            ui.add_space(grid::FAR);
        });
    if open.is_some() {
        // What scrolls past it does not show through the sign.
        let corner = egui::Rect::from_min_size(
            egui::pos2(whole.right() - grid::TARGET - grid::NEAR, whole.top()),
            egui::Vec2::splat(grid::TARGET),
        );
        ui.painter()
            .rect_filled(corner, 0.0, theme::palette(ui.visuals()).sheet);
        let mut child = ui.new_child(UiBuilder::new().max_rect(corner));
        if list::close_ui(&mut child, corner) {
            state.step_back();
        }
    }
    if escaped && open.is_some() {
        state.focus_row = true;
        ui.ctx().request_repaint();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn undo_finds_the_item_whose_field_was_changed() {
        let (mut state, mut view) = (CounterState::default(), ViewState::default());
        let item = CounterItem::Measure(MeasureId::new("spoon-7").unwrap());
        assert!(go_to(
            &field_key(&item.place(), "reading 2 grams"),
            &mut state,
            &mut view
        ));
        assert_eq!(
            (view.area, state.kind, state.open.clone()),
            (Area::Counter, Kind::Measures, Some(item))
        );
        assert!(!go_to("row hob-and-ember/powder", &mut state, &mut view));
    }

    #[test]
    fn one_step_back_closes_the_item_before_it_lets_go_what_is_typed() {
        let mut state = CounterState {
            find: "pear".into(),
            ..CounterState::default()
        };
        state.show(CounterItem::Ingredient(IngredientId::new("pear").unwrap()));
        assert!(state.step_back() && state.open.is_none() && state.find == "pear");
        assert!(state.step_back() && state.find.is_empty());
        assert!(!state.step_back());
    }
}
