//! The counter: what the shop has — ingredients, measures, vessels — and what holds for the shop as a whole.

mod ingredient;
mod item;
mod list;
mod measure;
mod measure_first;
mod removal;
mod shop;
mod state;
mod steps;
mod table;
mod uses;
mod vessel;

pub(super) use self::ingredient::begin_reference_brew;
pub use self::item::{CounterItem, Kind};
pub(super) use self::removal::{brewed_tea, new_ingredient};
pub use self::state::CounterState;

use egui::{CentralPanel, Frame, Margin, Panel, ScrollArea, Ui, UiBuilder};

use self::item::Counter;
use self::list::Wish;
use super::area::{Area, Navigation};
use super::area_of_work::{AreaOfWork, Desk, Place};
use super::theme::{self, grid};
use super::view_state::ViewState;
use crate::book::ItemId;
use crate::edit::Focus;
use crate::ui::words;
use crate::workbench::{Action, Shown, Workbench};

impl AreaOfWork for CounterState {
    fn place(&self) -> Place {
        Place::Window
    }

    fn needs_drink(&self) -> bool {
        false
    }

    fn look(&mut self, workbench: &mut Workbench, _: Option<&Shown>, _: &mut ViewState) {
        if self.kind == Kind::Shop && self.open.is_none() {
            self.measure_first = workbench.measure_first();
        }
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        let counter = Counter {
            book: desk.in_hand.book,
            answers: desk.in_hand.answers,
            findings: desk.in_hand.findings,
            speaker: desk.in_hand.speaker,
        };
        counter_area_ui(ui, counter, self, view, actions);
    }

    fn go(&mut self, to: &Navigation) {
        match to {
            Navigation::ByKey(Area::Counter) => self.take_keyboard(),
            Navigation::Item(ItemId::Tasting(_)) => {}
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

    fn open(&mut self, focus: &Focus) {
        if let Focus::Item(item) | Focus::Field(item, _) = focus {
            match CounterItem::of(item) {
                Some(item) => self.show(item),
                None => self.look_at(Kind::Shop),
            }
        }
    }

    fn step_back(&mut self, _: &mut ViewState) -> bool {
        CounterState::step_back(self)
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
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
        measure_first::measure_first_ui(ui, counter.speaker, state, view);
        return;
    }
    match list::list_ui(ui, counter, state, actions) {
        Some(Wish::Open(item)) => {
            let enters = std::mem::take(&mut state.enter_field);
            if enters {
                view.focus_wanted = Some(Focus::name_of(item.id()));
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
    let salt = ("counter item", &open);
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
    use crate::book::{IngredientId, MeasureId};
    use crate::edit::FieldName;

    #[test]
    fn undo_finds_the_item_whose_field_was_changed() {
        let mut state = CounterState::default();
        let item = CounterItem::Measure(MeasureId::new("spoon-7").unwrap());
        let focus = Focus::Field(item.id(), FieldName::at("reading-amount", 2));
        assert_eq!(Area::of(&focus), Some(Area::Counter));
        AreaOfWork::open(&mut state, &focus);
        assert_eq!(
            (state.kind, state.open.clone()),
            (Kind::Measures, Some(item))
        );
        AreaOfWork::open(&mut state, &Focus::name_of(ItemId::Settings));
        assert_eq!(state.kind, Kind::Shop);
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
