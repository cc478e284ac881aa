//! The list on the left: the drinks with the versions of the one in hand, and what is made in the house.

use std::collections::BTreeSet;
use std::sync::Arc;

use egui::{Rect, RichText, ScrollArea, Sense, Ui, pos2, vec2};

use super::drink_rows::Row;
use super::state::ShellState;
use crate::book::{Book, ItemId, Recipe, RecipeId, State, Version, VersionId};
use crate::edit::{Edit, Focus};
use crate::quantity::{excerpt, name_as_shown};
use crate::say::{Speaker, say};
use crate::ui::area::Area;
use crate::ui::book_in_hand::BookInHand;
use crate::ui::commands::UiCommand;
use crate::ui::icons::{Icon, icon_button, paint};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::workbench::{Action, Shown, draft_on};

/// Longest name in the list, in characters; hidden ones are written out.
const NAME: usize = 200;

/// What a row has above and below its name, in points.
const ROOM: f32 = 13.0;

/// The same for a version.
const QUIET_ROOM: f32 = 9.0;
/// The least that the name of a version has beside its state, in points.
const LEAST_NAME: f32 = 24.0 * grid::STEP;

/// Of more versions of a drink only those in sight are drawn.
const ALL_DRAWN: usize = 200;

pub(super) fn shelf_list_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    state: &mut ShellState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.spacing_mut().item_spacing.y = 0.0;
    let ShellState {
        wanted,
        places,
        unfolded,
        buttons,
        ..
    } = state;
    search_ui(ui, in_hand, &mut wanted.search, view, actions);
    ui.add_space(grid::NEAR);
    let rows = in_hand.answers.to(wanted);
    let shown = view.shown_in(in_hand.book).map(|shown| shown.recipe);
    places.seek(&rows, shown, unfolded);
    let height = ui.text_style_height(&egui::TextStyle::Body) + ROOM;
    places.list.expect(rows.len(), height);
    let mut area = ScrollArea::vertical().id_salt("drinks").auto_shrink(false);
    if let Some(offset) = places.list.offset_to_sought() {
        area = area.vertical_scroll_offset(offset);
        ui.ctx().request_repaint();
    }
    area.show_viewport(ui, |ui, viewport| {
        places.list.rows_ui(ui, viewport, |ui, at| match &rows[at] {
            Row::Recipe(id) => {
                if let Some(recipe) = in_hand.book.recipe(id) {
                    let fold = (&mut *unfolded, &mut *buttons);
                    recipe_ui(ui, in_hand.speaker, recipe, fold, view, actions);
                }
            }
            Row::Within => {
                let typed = excerpt(wanted.search.trim(), NAME);
                let words = say!(in_hand.speaker, "shell-found-within", typed: typed);
                small_heading_row_ui(ui, &words);
            }
            Row::Batches => {
                small_heading_row_ui(ui, in_hand.speaker.word("shell-house-made"));
            }
        });
        let typed = wanted.search.trim();
        if rows.is_empty() && !typed.is_empty() {
            let typed = excerpt(typed, NAME);
            quiet_ui(
                ui,
                &say!(in_hand.speaker, "shell-no-recipe-matches", typed: typed),
            );
        }
    });
}

/// The heading of a part of the list.
fn small_heading_row_ui(ui: &mut Ui, words: &str) {
    ui.add_space(grid::EASY);
    quiet_ui(ui, words);
    ui.add_space(grid::TIGHT);
}

fn search_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    search: &mut String,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = in_hand.speaker;
    ui.horizontal(|ui| {
        let width = ui.available_width() - grid::TARGET - grid::TIGHT;
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let field = egui::TextEdit::singleline(search)
            .hint_text(speaker.word("shell-find-drink-hint"))
            .desired_width(width);
        ui.add(field)
            .accessible_name(speaker.word("shell-find-drink"));
        let new_recipe = UiCommand::NewRecipe;
        let (name, hover) = (new_recipe.label(speaker), new_recipe.tooltip(speaker));
        if icon_button(ui, Icon::Add, name, &hover).clicked() {
            add_recipe(in_hand.book, view, actions);
        }
    });
}

fn recipe_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    recipe: &Recipe,
    (unfolded, buttons): (&mut BTreeSet<RecipeId>, &mut f32),
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let shown = view.shown_in(speaker.book);
    let in_hand = shown
        .as_ref()
        .is_some_and(|shown| shown.recipe == recipe.id);
    let row = ListRow {
        name: &recipe.name,
        state: unlocked(speaker, recipe, None),
        depth: 0.0,
        selected: in_hand,
        quiet: false,
    };
    let (name, state) = (name_as_shown(&recipe.name), speaker.state_of(recipe, None));
    let said = || say!(speaker, "shell-recipe-row", recipe: &*name, state: state);
    let response = row.show(ui, said);
    let version_in_hand = shown.filter(|_| in_hand).and_then(|shown| shown.version);
    if response.clicked() {
        // Pressed again, the drink in hand folds its versions away and shows them again.
        let is_open = in_hand && version_in_hand.is_none();
        if is_open && !unfolded.remove(&recipe.id) {
            unfolded.insert(recipe.id.clone());
        }
        view.show(Shown {
            recipe: recipe.id.clone(),
            version: None,
        });
        leave_findings(view);
    }
    response.context_menu(|ui| recipe_menu_ui(ui, speaker, recipe, view, actions));
    if !unfolded.contains(&recipe.id) {
        return;
    }
    let own = ListRow {
        name: speaker.word("shell-original"),
        state: unlocked(speaker, recipe, None),
        depth: 1.0,
        selected: in_hand && version_in_hand.is_none(),
        quiet: true,
    };
    let said = || say!(speaker, "shell-original-row", recipe: &*name);
    if own.show(ui, said).clicked() {
        view.show(Shown {
            recipe: recipe.id.clone(),
            version: None,
        });
        leave_findings(view);
    }
    let is_long = recipe.versions.len() > ALL_DRAWN;
    let font = TypeStyle::Small.font_id();
    let one_row = ui.fonts_mut(|fonts| fonts.row_height(&font)) + QUIET_ROOM;
    for (version, depth) in recipe.versions.iter().zip(recipe.depths()) {
        let size = vec2(ui.available_width(), one_row);
        if is_long && !ui.is_rect_visible(Rect::from_min_size(ui.cursor().min, size)) {
            // What is out of sight takes its place and nothing else.
            ui.allocate_exact_size(size, Sense::hover());
            continue;
        }
        let in_hand = version_in_hand.as_ref();
        let version = (version, depth);
        version_ui(ui, speaker, recipe, version, in_hand, view, actions);
    }
    if !in_hand {
        ui.add_space(*buttons);
        return;
    }
    let version = version_in_hand.as_ref();
    let drawn = ui.scope(|ui| row_of_buttons_ui(ui, speaker, recipe, version, view, actions));
    *buttons = drawn.response.rect.height();
}

fn version_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    recipe: &Recipe,
    (version, depth): (&Version, usize),
    in_hand: Option<&VersionId>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let row = ListRow {
        name: &version.name,
        state: unlocked(speaker, recipe, Some(&version.id)),
        depth: depth.clamp(1, 3) as f32,
        selected: in_hand == Some(&version.id),
        quiet: true,
    };
    let state = speaker.state_of(recipe, Some(&version.id));
    let name = name_as_shown(&version.name);
    let said = || say!(speaker, "shell-version-row", version: &*name, state: state);
    let response = row.show(ui, said);
    if response.clicked() {
        view.show(Shown {
            recipe: recipe.id.clone(),
            version: Some(version.id.clone()),
        });
        leave_findings(view);
    }
    response.context_menu(|ui| {
        if ui
            .button(speaker.word("shell-new-version-on-this"))
            .clicked()
        {
            add_version(speaker, recipe, Some(&version.id), view, actions);
        }
        let delete = speaker.word("shell-delete-version");
        if ui.button(delete).clicked() {
            remove_version(recipe, &version.id, view, actions);
        }
    });
}

/// What can be done with the recipe in hand, for those who do not look for a context menu.
fn row_of_buttons_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    recipe: &Recipe,
    version: Option<&VersionId>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.horizontal(|ui| {
        ui.add_space(grid::EASY);
        ui.spacing_mut().item_spacing.x = 0.0;
        let quiet = |words: &str| {
            egui::Button::new(RichText::new(words).font(TypeStyle::Small.font_id()))
                .frame_when_inactive(false)
        };
        if ui
            .add(quiet(speaker.word("shell-new-version")))
            .on_hover_text(speaker.word("shell-new-version-does"))
            .clicked()
        {
            add_version(speaker, recipe, version, view, actions);
        }
        let more =
            egui::containers::menu::MenuButton::from_button(quiet(speaker.word("shell-more")));
        more.ui(ui, |ui| {
            if let Some(version) = version
                && ui.button(speaker.word("shell-delete-version")).clicked()
            {
                remove_version(recipe, version, view, actions);
            }
            recipe_menu_ui(ui, speaker, recipe, view, actions);
        });
    });
    ui.add_space(grid::TIGHT);
}

fn recipe_menu_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    recipe: &Recipe,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if ui.button(speaker.word("shell-new-version")).clicked() {
        add_version(speaker, recipe, None, view, actions);
    }
    if ui.button(speaker.word("shell-duplicate")).clicked() {
        duplicate(speaker, recipe, view, actions);
    }
    if ui
        .button(speaker.word("shell-delete-recipe"))
        .on_hover_text(speaker.word("shell-delete-recipe-does"))
        .clicked()
    {
        actions.push(Action::edit(
            Edit::RemoveRecipe(recipe.id.clone()),
            Focus::Item(ItemId::Recipe(recipe.id.clone())),
        ));
    }
}

fn leave_findings(view: &mut ViewState) {
    if view.area == Area::Findings {
        view.area = Area::Recipe;
    }
}

/// A new recipe with an empty sheet.
pub(super) fn add_recipe(book: &Book, view: &mut ViewState, actions: &mut Vec<Action>) {
    let id = RecipeId::from_name("new drink", |taken| book.recipe(taken).is_some());
    let cup = book
        .vessels
        .iter()
        .find(|vessel| vessel.kind == crate::book::VesselKind::Cup);
    let recipe = Recipe {
        cup: cup.map(|cup| cup.id.clone()),
        ..Recipe::new(
            id.clone(),
            view.speaker(book).word("shell-new-recipe-name").to_owned(),
        )
    };
    let item = ItemId::Recipe(id.clone());
    actions.push(Action::edit(
        Edit::PutRecipe(recipe),
        Focus::Item(item.clone()),
    ));
    view.focus_wanted = Some(Focus::name_of(item));
    view.show(Shown {
        recipe: id,
        version: None,
    });
    view.area = Area::Recipe;
}

fn duplicate(
    speaker: Speaker<'_>,
    recipe: &Recipe,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let book = speaker.book;
    let id = RecipeId::from_name(recipe.id.as_str(), |taken| book.recipe(taken).is_some());
    // A copy has not been tasted: it begins without approvals, and what was approved is a draft again.
    let draft = |state: State| {
        if state == State::Approved {
            State::Draft
        } else {
            state
        }
    };
    let mut copy = recipe.clone();
    copy.id = id.clone();
    copy.name = say!(speaker, "shell-copy-of", recipe: &recipe.name);
    copy.state = draft(copy.state);
    copy.approvals.clear();
    for version in &mut copy.versions {
        version.state = draft(version.state);
    }
    let item = ItemId::Recipe(id.clone());
    actions.push(Action::edit(Edit::PutRecipe(copy), Focus::Item(item)));
    view.show(Shown {
        recipe: id,
        version: None,
    });
}

fn add_version(
    speaker: Speaker<'_>,
    recipe: &Recipe,
    on: Option<&VersionId>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let (id, version) = draft_on(recipe, on, speaker);
    actions.push(Action::edit(
        Edit::AddVersion {
            recipe: recipe.id.clone(),
            version,
        },
        Focus::Item(ItemId::Recipe(recipe.id.clone())),
    ));
    view.show(Shown {
        recipe: recipe.id.clone(),
        version: Some(id),
    });
    view.area = Area::Recipe;
}

fn remove_version(
    recipe: &Recipe,
    version: &VersionId,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let edit = Edit::RemoveVersion {
        recipe: recipe.id.clone(),
        version: version.clone(),
    };
    let item = ItemId::Recipe(recipe.id.clone());
    actions.push(Action::edit(edit, Focus::Item(item)));
    let builds_on = recipe
        .version(version)
        .and_then(|version| version.builds_on.clone());
    view.show(Shown {
        recipe: recipe.id.clone(),
        version: builds_on,
    });
}

/// The word for how far a recipe or version is, but for one whose approval is kept.
fn unlocked(
    speaker: Speaker<'_>,
    recipe: &Recipe,
    version: Option<&VersionId>,
) -> Option<&'static str> {
    let is_locked =
        recipe.state_of(version) == Some(State::Approved) && !recipe.is_only_marked(version);
    (!is_locked).then(|| speaker.state_of(recipe, version))
}

/// A row of the list.
struct ListRow<'row> {
    name: &'row str,
    /// How far it is; none where an approval of it is kept, which a lock stands for.
    state: Option<&'static str>,
    /// Steps of indentation.
    depth: f32,
    selected: bool,
    /// A version rather than a drink.
    quiet: bool,
}

impl ListRow<'_> {
    fn show(&self, ui: &mut Ui, accessible_name: impl Fn() -> String) -> egui::Response {
        let palette = theme::palette(ui.visuals());
        let width = ui.available_width();
        let left = grid::NEAR + self.depth * grid::EASY;
        let state = self.state_galley(ui);
        let state_width = state.as_ref().map_or(grid::EASY, |state| state.size().x);
        let colour = if self.selected {
            palette.text_strong
        } else {
            palette.text_normal
        };
        let whole = (width - left - 2.0 * grid::NEAR).max(grid::FAR);
        let beside = (whole - state_width).max(grid::FAR);
        // Where a long word would be broken beside it, the state stands below the name.
        let is_below = self.quiet && state.is_some() && beside < LEAST_NAME;
        let room = if is_below { whole } else { beside };
        let name = ui.painter().layout(
            excerpt(self.name, NAME),
            self.style().font_id(),
            colour,
            room,
        );
        // Strong words may take a line more: what is below must not move when the drink comes to hand.
        let strong = (!self.quiet).then(|| {
            let strong = TypeStyle::Strong.font_id();
            let words = excerpt(self.name, NAME);
            ui.painter().layout(words, strong, colour, room).size().y
        });
        let text = strong.unwrap_or_default().max(name.size().y);
        let last_row = name.rows.last().map_or(0.0, |row| row.rect().width());
        let needs_row = is_below && last_row + grid::NEAR + state_width > whole;
        let foot = state.as_ref().map_or(0.0, |state| state.size().y);
        let text = text + if needs_row { foot } else { 0.0 };
        let height = text + if self.quiet { QUIET_ROOM } else { ROOM };
        let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::click());
        let (selected, enabled) = (self.selected, ui.is_enabled());
        response.widget_info(|| {
            egui::WidgetInfo::selected(egui::Role::Button, enabled, selected, accessible_name())
        });
        if ui.is_rect_visible(rect) {
            self.paint_ground(ui, rect, &response);
            let tall = if is_below { text } else { name.size().y };
            let top = rect.center().y - tall / 2.0;
            ui.painter()
                .galley(pos2(rect.left() + left, top), name, colour);
            let of_state = if is_below {
                rect.with_min_y(rect.bottom() - foot - QUIET_ROOM)
            } else {
                rect
            };
            paint_state(ui, of_state, state);
        }
        response
    }

    fn style(&self) -> TypeStyle {
        match (self.quiet, self.selected) {
            (true, _) => TypeStyle::Small,
            (false, true) => TypeStyle::Strong,
            (false, false) => TypeStyle::Body,
        }
    }

    fn paint_ground(&self, ui: &Ui, rect: Rect, response: &egui::Response) {
        let palette = theme::palette(ui.visuals());
        let corner = egui::CornerRadius::same(grid::CORNER);
        let chosen = (self.selected && self.quiet).then_some(palette.selection);
        let area = if response.hovered() {
            Some(palette.hover)
        } else {
            chosen
        };
        if let Some(colour) = area {
            ui.painter().rect_filled(rect, corner, colour);
        }
        if response.has_focus() {
            theme::focus_ring(ui, rect);
        }
    }

    /// The state as a word; a kept approval is a lock instead.
    fn state_galley(&self, ui: &Ui) -> Option<Arc<egui::Galley>> {
        let palette = theme::palette(ui.visuals());
        let word = self.state?.to_owned();
        let font = TypeStyle::Small.font_id();
        Some(ui.painter().layout_no_wrap(word, font, palette.text_quiet))
    }
}

/// The state at the right end.
fn paint_state(ui: &Ui, rect: Rect, state: Option<Arc<egui::Galley>>) {
    let palette = theme::palette(ui.visuals());
    let right = rect.right() - grid::NEAR;
    if let Some(word) = state {
        let place = pos2(right - word.size().x, rect.center().y - word.size().y / 2.0);
        ui.painter().galley(place, word, palette.text_quiet);
    } else {
        let lock = Rect::from_center_size(pos2(right - 7.0, rect.center().y), vec2(13.0, 13.0));
        paint(ui.painter(), lock, Icon::Lock, palette.text_quiet);
    }
}
