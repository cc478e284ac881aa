//! Finding anything in the book by typing: what fits, what it is and where it stands, and the way there.

use std::sync::Arc;

use egui::{Align2, Rect, Response, Ui, pos2};

use super::area::{Area, Navigation};
use super::book_in_hand::BookInHand;
use super::modal::title_ui;
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::name::elided;
use super::widgets::pick_list::{self, PickList};
use super::words::quiet_ui;
use crate::book::{Hit, Hits, ItemId, LookUpIndex, Spot};
use crate::edit::{FieldName, Focus};
use crate::quantity::{excerpt, name_as_shown, show_grouped};
use crate::say::{Language, Speaker, say};
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED, Shown};

/// Width of the sheet, in points.
pub(super) const WIDTH: f32 = 640.0;
/// Height of a hit: its name, and below it where it stands.
const ROW: f32 = 11.0 * grid::STEP;
/// The column that says what kind of thing it is.
const KIND: f32 = 22.0 * grid::STEP;
/// From the top of the window to the sheet, which grows downwards with what is found, in points.
pub(super) const TOP: f32 = 18.0 * grid::STEP;
/// Most height of the list, and of the sheet and the window around it, in points.
const LIST: f32 = 10.0 * ROW;
const REST_OF_SHEET: f32 = TOP + 200.0;
/// Most hits that are listed; whoever does not find it types another word.
const MOST: usize = 100;

/// What there is to be found, in the words of a language.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
struct IndexIn(Language);

impl BookQuestion for IndexIn {
    type Answer = Arc<LookUpIndex>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let speaker = Speaker::new(answers.book()).in_language(self.0);
        Arc::new(speaker.look_up_index())
    }
}

/// What is found for words that are typed.
#[derive(Clone, Default, PartialEq, Eq, Hash)]
struct HitsFor {
    language: Language,
    typed: String,
}

impl BookQuestion for HitsFor {
    type Answer = Arc<Hits>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let index = answers.to(&IndexIn(self.language));
        Arc::new(index.find(answers.book(), &self.typed, MOST))
    }
}

/// What is typed, and which of what was found is in hand.
#[derive(Default)]
pub(super) struct LookUpState {
    list: PickList,
}

impl LookUpState {
    /// Begins anew; what was typed last stands there and is replaced by typing.
    pub(super) fn open(&mut self) {
        self.list.open();
    }
}

/// The sheet; `false` when it should go.
pub(super) fn look_up_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    state: &mut LookUpState,
    view: &mut ViewState,
) -> bool {
    let speaker = in_hand.speaker;
    title_ui(ui, speaker.word("look-up-title"));
    let title = speaker.word("look-up-title");
    let field = state
        .list
        .field_ui(ui, "find-in-the-book", title, speaker.word("look-up-hint"));
    // The field has the keyboard as long as the sheet is open.
    if !field.has_focus() && !field.lost_focus() {
        field.request_focus();
        ui.ctx().request_repaint();
    }
    let hits = in_hand.answers.to(&HitsFor {
        language: speaker.language,
        typed: state.list.text.clone(),
    });
    let best = &hits.best;
    state.list.walk(ui, best.len());
    let entered = state.list.entered(ui, &field);
    ui.add_space(grid::NEAR);
    count_ui(ui, speaker, &state.list.text, hits.count);
    ui.add_space(grid::TIGHT);
    let height = LIST.min(ui.ctx().content_rect().height() - REST_OF_SHEET);
    let clicked = state
        .list
        .rows_ui(ui, height, best.len(), ROW, |ui, at, is_chosen| {
            hit_ui(ui, speaker, &best[at], is_chosen)
        });
    let taken = entered.or(clicked).and_then(|at| best.get(at));
    let Some(spot) = taken.map(|hit| &hit.spot) else {
        return true;
    };
    go_to(spot, view);
    ui.ctx().request_repaint();
    false
}

/// How many fit, or what to do.
fn count_ui(ui: &mut Ui, speaker: Speaker<'_>, typed: &str, count: usize) {
    let words = if typed.trim().is_empty() {
        speaker.word("look-up-what-to-do").to_owned()
    } else if count == 0 {
        let typed = excerpt(typed.trim(), 60);
        say!(speaker, "look-up-nothing", typed: typed)
    } else if count > MOST {
        let all = show_grouped(count as f64);
        say!(speaker, "look-up-best", all: all, best: MOST)
    } else {
        say!(speaker, "look-up-found", count: count)
    };
    quiet_ui(ui, &words);
}

fn hit_ui(ui: &mut Ui, speaker: Speaker<'_>, hit: &Hit, chosen: bool) -> Response {
    let kind = speaker.found_kind(hit.kind);
    let place = speaker.found_place(&hit.spot);
    let below = match (place, hit.piece.as_str()) {
        (place, "") => place.unwrap_or_default(),
        (None, piece) => say!(speaker, "look-up-piece", piece: piece),
        (Some(place), piece) => {
            say!(speaker, "look-up-place-and-piece", place: place, piece: piece)
        }
    };
    let name = speaker.found_name(hit);
    let (name, below) = (name_as_shown(&name), name_as_shown(&below));
    let words = if below.is_empty() {
        say!(speaker, "look-up-hit", kind: kind, name: &*name)
    } else {
        say!(speaker, "look-up-hit-at", kind: kind, name: &*name, place: &*below)
    };
    pick_list::row_ui(ui, ROW, chosen, &words, None, |ui, room| {
        paint_hit(ui, room, kind, &name, &below);
    })
}

/// The kind on the left, the name beside it, and below it in quiet where it is.
fn paint_hit(ui: &Ui, rect: Rect, kind: &str, name: &str, below: &str) {
    let palette = theme::palette(ui.visuals());
    let small = TypeStyle::Small.font_id();
    let left = rect.left() + KIND;
    let room = rect.right() - left;
    let name = elided(
        ui,
        name,
        &TypeStyle::Body.font_id(),
        palette.text_strong,
        room,
    );
    let second = (!below.is_empty()).then(|| elided(ui, below, &small, palette.text_quiet, room));
    let height = name.size().y + second.as_ref().map_or(0.0, |second| second.size().y);
    let top = rect.center().y - height / 2.0;
    let middle = top + name.size().y / 2.0;
    ui.painter().text(
        pos2(rect.left(), middle),
        Align2::LEFT_CENTER,
        kind,
        small,
        palette.text_quiet,
    );
    let name_height = name.size().y;
    ui.painter()
        .galley(pos2(left, top), name, palette.text_strong);
    if let Some(second) = second {
        let place = pos2(left, top + name_height);
        ui.painter().galley(place, second, palette.text_quiet);
    }
}

/// Shows what was found: its area, with the thing in hand and the keyboard on it.
fn go_to(spot: &Spot, view: &mut ViewState) {
    match spot {
        Spot::Drink(recipe, version) => {
            show(view, recipe, version.as_ref());
            view.focus_wanted = Some(Focus::AnyRow(recipe.clone()));
        }
        Spot::Entry(recipe, version, line) => {
            show(view, recipe, version.as_ref());
            view.line_in_hand = Some(line.clone());
            view.focus_wanted = Some(Focus::Row(recipe.clone(), line.clone()));
        }
        Spot::RecipeNote(recipe) => {
            show(view, recipe, None);
            view.focus_wanted = Some(Focus::note_of(ItemId::Recipe(recipe.clone())));
        }
        Spot::Approval(recipe, at) => {
            show(view, recipe, None);
            view.focus_wanted = Some(Focus::Approval(recipe.clone(), *at));
        }
        Spot::Tasting(recipe, id) => {
            show(view, recipe, None);
            let tasting = ItemId::Tasting(id.clone());
            view.go(Area::Recipe, Navigation::Item(tasting));
        }
        Spot::Ingredient(id) => at_counter(view, ItemId::Ingredient(id.clone())),
        Spot::Flavour(id, at) => {
            let item = ItemId::Ingredient(id.clone());
            at_counter(view, item.clone());
            view.focus_wanted = Some(Focus::Field(item, FieldName::flavour(*at)));
        }
        Spot::Measure(id) => at_counter(view, ItemId::Measure(id.clone())),
        Spot::Vessel(id) => at_counter(view, ItemId::Vessel(id.clone())),
        Spot::SugarLevel(at) => at_level(view, FieldName::sugar_level(*at)),
        Spot::IceLevel(at) => at_level(view, FieldName::ice_level(*at)),
        Spot::Shop => at_shop(view, Focus::name_of(ItemId::Settings)),
        Spot::BookNote => at_shop(view, Focus::note_of(ItemId::Settings)),
    }
}

fn show(
    view: &mut ViewState,
    recipe: &crate::book::RecipeId,
    version: Option<&crate::book::VersionId>,
) {
    view.show(Shown {
        recipe: recipe.clone(),
        version: version.cloned(),
    });
    view.area = Area::Recipe;
}

fn at_shop(view: &mut ViewState, field: Focus) {
    at_counter(view, ItemId::Settings);
    view.focus_wanted = Some(field);
}

fn at_level(view: &mut ViewState, level: FieldName) {
    view.go(Area::Variations, Navigation::Levels);
    view.focus_wanted = Some(Focus::Level(level));
}

fn at_counter(view: &mut ViewState, item: ItemId) {
    view.go(Area::Counter, Navigation::Item(item));
}
