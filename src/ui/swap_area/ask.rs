//! Asking for a swap: what goes and what comes, once or several times in the same drink.

use egui::{Align, Label, Layout, Response, RichText, Sense, Ui, UiBuilder, vec2};

use super::coming::{Coming, ComingFor};
use super::model;
use super::state::{Choosing, SwapState};
use crate::book::{IngredientId, Role};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::swap::Question;
use crate::ui::Screen;
use crate::ui::icons::{self, Icon};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::name_ui;
use crate::ui::widgets::pick_list;
use crate::ui::words::{paragraph_ui, subheading_ui};

/// From this width on the two lists stand side by side, in points.
const SIDE_BY_SIDE: f32 = 150.0 * grid::STEP;
/// Part of the width that the list of what goes takes.
const GOES_PART: f32 = 0.42;
/// The widest list, in points.
const LIST_WIDTH: f32 = 110.0 * grid::STEP;
/// Height of the list of what may come, in points.
const LIST_HEIGHT: f32 = 90.0 * grid::STEP;

/// The two lists.
pub(in crate::ui) fn choose_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut SwapState) {
    if ui.available_width() >= SIDE_BY_SIDE {
        let room = ui.available_width() - grid::APART;
        let widths = [GOES_PART, 1.0 - GOES_PART].map(|part| (room * part).min(LIST_WIDTH));
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            ui.vertical(|ui| {
                ui.set_width(widths[0]);
                goes_ui(ui, screen, state);
            });
            ui.vertical(|ui| {
                ui.set_width(widths[1]);
                comes_ui(ui, screen, state);
            });
        });
    } else {
        goes_ui(ui, screen, state);
        ui.add_space(grid::EASY);
        comes_ui(ui, screen, state);
    }
    if state.choosing != Choosing::Nothing && state.asked.complete().is_some() {
        ui.add_space(grid::EASY);
        if ui.button(screen.speaker.word("swap-screen-back")).clicked() {
            state.choosing = Choosing::Nothing;
        }
    }
}

fn goes_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut SwapState) {
    let is_another = matches!(state.choosing, Choosing::Another(_));
    let speaker = screen.speaker;
    let heading = if is_another {
        "swap-screen-replace-as-well"
    } else {
        "swap-screen-replace"
    };
    subheading_ui(ui, speaker.word(heading));
    let chosen = what_goes(state);
    if screen.balance.resolved.lines().next().is_none() {
        let palette = theme::palette(ui.visuals());
        let words = speaker.word("swap-screen-no-lines");
        ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    }
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for going in model::going(screen) {
            if is_another && goes_already(state, &going.id) {
                continue;
            }
            let item = screen.book.ingredient(&going.id);
            let quiet = item.map_or_else(
                || going.amounts.clone(),
                |item| speaker.beside_name(item, &going.amounts),
            );
            let row = Row {
                name: &going.name,
                quiet: &quiet,
                role: going.role,
            };
            let is_chosen = chosen.as_ref() == Some(&going.id);
            let words = say!(speaker, "swap-screen-replace-ingredient", ingredient: &going.name);
            if row_ui(ui, &row, is_chosen, &words).clicked() {
                goes(screen, state, going.id);
            }
        }
    });
}

/// Another ingredient goes; what comes has to be chosen anew.
fn goes(screen: &Screen<'_>, state: &mut SwapState, id: IngredientId) {
    state.coming.list.text.clear();
    if let Choosing::Another(goes) = &mut state.choosing {
        *goes = Some(id);
        return;
    }
    let shown = screen.shown;
    state
        .asked
        .goes(shown.recipe.clone(), shown.version.clone(), id);
}

/// What goes in the pair that is being chosen.
fn what_goes(state: &SwapState) -> Option<IngredientId> {
    match &state.choosing {
        Choosing::Another(goes) => goes.clone(),
        _ => state
            .asked
            .question
            .as_ref()
            .map(|question| question.replace.clone()),
    }
}

fn goes_already(state: &SwapState, id: &IngredientId) -> bool {
    let own = state
        .asked
        .question
        .as_ref()
        .map(|question| &question.replace);
    own == Some(id)
        || state
            .asked
            .demands
            .also
            .iter()
            .any(|(replace, _)| replace == id)
}

fn comes_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut SwapState) {
    let speaker = screen.speaker;
    subheading_ui(ui, speaker.word("swap-screen-with"));
    let palette = theme::palette(ui.visuals());
    let (Some(question), Some(replace)) = (state.asked.question.clone(), what_goes(state)) else {
        let words = speaker.word("swap-screen-choose-first");
        ui.label(RichText::new(words).color(palette.text_quiet));
        return;
    };
    let role = role_of(screen, &replace);
    let coming = &mut state.coming;
    let field = coming.list.field_ui(
        ui,
        "find-what-comes",
        speaker.word("swap-screen-find"),
        speaker.word("swap-screen-find-hint"),
    );
    let wanted = ComingFor {
        replace,
        role,
        typed: coming.list.text.clone(),
        language: speaker.language,
    };
    coming.follow(screen, &wanted);
    if field.has_focus() {
        coming.list.walk(ui, coming.found.len());
    }
    let entered = coming.list.entered(ui, &field);
    let clicked = coming_ui(ui, speaker, coming, role, field.has_focus());
    let taken = entered.or(clicked).and_then(|at| coming.found.get(at));
    let taken = taken.map(|ingredient| ingredient.id.clone());
    if let Some(with) = taken {
        if let Choosing::Another(_) = state.choosing {
            state.asked.demands.also.push((wanted.replace, with));
        } else {
            state.asked.brings_back = false;
            state.asked.everywhere = false;
            state.asked.question = Some(Question {
                with,
                adjust: None,
                ..question
            });
        }
        state.choosing = Choosing::Nothing;
        state.suggestion = 0;
        state.plain_name = None;
        state.begin_anew();
    }
}

/// The list of what may come; what was clicked in it.
fn coming_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    coming: &mut Coming,
    role: Role,
    has_keyboard: bool,
) -> Option<usize> {
    if coming.found.is_empty() {
        let palette = theme::palette(ui.visuals());
        paragraph_ui(ui, speaker.word("swap-screen-no-match"), palette.text_quiet);
        return None;
    }
    let Coming { found, list, .. } = coming;
    let rows = found.len();
    list.rows_ui(ui, LIST_HEIGHT, rows, grid::TARGET, |ui, at, is_chosen| {
        let ingredient = &found[at];
        let name = ingredient.full_name();
        let quiet = speaker.beside_name(ingredient, &model::facts(speaker, ingredient, role));
        let label = say!(speaker, "swap-screen-with-ingredient", ingredient: &name);
        let row = Row {
            name: &name,
            quiet: &quiet,
            role: ingredient.role,
        };
        row_ui(ui, &row, has_keyboard && is_chosen, &label)
    })
}

fn role_of(screen: &Screen<'_>, id: &IngredientId) -> Role {
    let line = screen
        .balance
        .resolved
        .lines()
        .find(|line| line.ingredient == *id);
    line.map_or(Role::Flavour, |line| line.role)
}

struct Row<'row> {
    name: &'row str,
    quiet: &'row str,
    role: Role,
}

fn row_ui(ui: &mut Ui, row: &Row<'_>, is_chosen: bool, accessible_name: &str) -> Response {
    let (words, role) = (name_as_shown(accessible_name), Some(row.role));
    pick_list::row_ui(ui, grid::TARGET, is_chosen, &words, role, |ui, room| {
        let palette = theme::palette(ui.visuals());
        let builder = UiBuilder::new()
            .max_rect(room)
            .layout(Layout::right_to_left(Align::Center));
        let mut line = ui.new_child(builder);
        let quiet = RichText::new(name_as_shown(row.quiet))
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        line.add(Label::new(quiet).selectable(false));
        line.with_layout(Layout::left_to_right(Align::Center), |ui| {
            name_ui(
                ui,
                row.name,
                TypeStyle::Body,
                palette.text_strong,
                f32::INFINITY,
            );
        });
    })
}

/// What was chosen, a line for each pair, and the ways to choose otherwise.
pub(super) fn chosen_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    question: &Question,
    state: &mut SwapState,
) {
    let speaker = screen.speaker;
    ui.horizontal_wrapped(|ui| {
        if state.asked.brings_back {
            let name = speaker.ingredient(&question.with);
            let words = say!(speaker, "swap-screen-brings-back", ingredient: name);
            let palette = theme::palette(ui.visuals());
            ui.label(
                RichText::new(words)
                    .font(TypeStyle::Heading.font_id())
                    .color(palette.text_strong),
            );
        } else {
            pair_ui(ui, speaker, &question.replace, &question.with);
        }
        ui.add_space(grid::NEAR);
        if ui.button(speaker.word("swap-screen-change")).clicked() {
            state.choosing = Choosing::Main;
        }
        let another = ui.button(speaker.word("swap-screen-another"));
        let another = another.on_hover_text(speaker.word("swap-screen-another-hint"));
        if another.clicked() {
            state.choosing = Choosing::Another(None);
            state.coming.list.text.clear();
        }
    });
    let mut taken_out = None;
    for (index, (replace, with)) in state.asked.demands.also.iter().enumerate() {
        ui.horizontal_wrapped(|ui| {
            pair_ui(ui, speaker, replace, with);
            ui.add_space(grid::NEAR);
            let name = speaker.ingredient(replace);
            let name = say!(speaker, "swap-screen-remove-pair", ingredient: name);
            if icons::icon_button(ui, Icon::Delete, &name, &name).clicked() {
                taken_out = Some(index);
            }
        });
    }
    if let Some(index) = taken_out {
        state.asked.demands.also.remove(index);
        state.begin_anew();
    }
}

fn pair_ui(ui: &mut Ui, speaker: Speaker<'_>, replace: &IngredientId, with: &IngredientId) {
    let palette = theme::palette(ui.visuals());
    let name = |id| RichText::new(speaker.ingredient(id)).font(TypeStyle::Heading.font_id());
    ui.label(name(replace).color(palette.text_quiet));
    let (rect, _) = ui.allocate_exact_size(vec2(grid::ICON, grid::TARGET), Sense::hover());
    icons::paint(ui.painter(), rect, Icon::Swap, palette.accent);
    ui.label(name(with).color(palette.text_strong));
}
