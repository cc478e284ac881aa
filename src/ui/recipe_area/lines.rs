//! The lines and instructions in order, in aligned columns; rows can be dragged by their grip.

use egui::{Align2, Key, Response, RichText, Sense, Stroke, Ui, pos2, vec2};

use super::commands::{add_instruction, carry_out};
use super::finder::FinderState;
use super::row::{Columns, instruction_ui, line_ui};
use super::state::RecipeState;
use super::{detail, finder, model};
use crate::balance::Lens;
use crate::book::{Entry, LineId};
use crate::edit::Focus;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::commands::UiCommand;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name::width_of;
use crate::workbench::Action;

/// Of so many lines the amounts are measured in a frame: further ones get the room of these.
const MOST_MEASURED: usize = 100;

pub(super) fn lines_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut RecipeState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.spacing_mut().item_spacing.y = 0.0;
    let entries = &screen.balance.resolved.entries;
    let columns = Columns::new(ui.available_width(), widest_amount(ui, screen));
    header_ui(ui, screen, &columns);
    take_wish_for_any_row(screen, view);
    let mut tops = Vec::with_capacity(entries.len() + 1);
    for (at, entry) in entries.iter().enumerate() {
        let neighbours = [
            at.checked_sub(1).and_then(|at| entries.get(at)),
            entries.get(at + 1),
        ]
        .map(|entry| entry.map(|entry| entry.id().clone()));
        tops.push(ui.cursor().top());
        match entry {
            Entry::Line(line) => {
                let row = model::line_row(screen.speaker, screen.balance, line);
                let asked = line_ui(ui, screen, &row, &columns, &neighbours, view, actions);
                if asked.ingredient.clicked() {
                    state.finder.open_to_replace(line.id.clone());
                }
                if state.finder.replaces(&line.id) {
                    let finder = &mut state.finder;
                    finder::finder_ui(&asked.ingredient, screen, finder, view, actions);
                }
                // The menu of the row opens wherever it is asked for, not on the grip alone.
                let places = [&asked.handle, &asked.ground, &asked.ingredient];
                row_asked_ui(screen, &line.id, &places, state, view, actions);
                if view.line_in_hand.as_ref() == Some(&line.id) {
                    detail::detail_ui(ui, screen, &row, &columns, view, actions);
                }
            }
            Entry::Instruction(instruction) => {
                let (id, places) = (&instruction.id, &neighbours);
                let handle =
                    instruction_ui(ui, screen, instruction, &columns, places, view, actions);
                row_asked_ui(screen, id, &[&handle], state, view, actions);
            }
        }
    }
    tops.push(ui.cursor().top());
    drag_ui(ui, screen, &tops, &mut state.dragged, actions);
    add_row_ui(ui, screen, &columns, &mut state.finder, view, actions);
}

/// Room for the widest amount in its field, in points.
fn widest_amount(ui: &Ui, screen: &Screen<'_>) -> f32 {
    let font = TypeStyle::Body.font_id();
    let lines = screen.balance.resolved.lines().take(MOST_MEASURED);
    let widths = lines.map(|line| width_of(ui, &screen.speaker.amount(&line.amount), &font));
    widths
        .map(|width| width + 2.0 * grid::TIGHT)
        .fold(0.0, f32::max)
}

/// What stands in the columns.
fn header_ui(ui: &mut Ui, screen: &Screen<'_>, columns: &Columns) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let (rect, _) = ui.allocate_exact_size(vec2(columns.width, 22.0), Sense::hover());
    let font = TypeStyle::Small.font_id();
    let y = rect.center().y;
    let put = |x: f32, align: Align2, words: &str| {
        ui.painter().text(
            pos2(rect.left() + x, y),
            align,
            words,
            font.clone(),
            palette.text_quiet,
        );
    };
    if !columns.compact {
        put(
            columns.temperature.max - grid::TIGHT,
            Align2::RIGHT_CENTER,
            speaker.word("recipe-sheet-at"),
        );
        put(
            columns.mass.min + Columns::MASS_NUMBER,
            Align2::RIGHT_CENTER,
            speaker.word("recipe-sheet-mass"),
        );
    }
    let (sum, _) = screen.balance.total_through(screen.lens);
    let known = screen
        .balance
        .lines
        .iter()
        .all(|line| line.through(screen.lens).is_some());
    let total = model::share_words(speaker, Some(sum), screen.lens);
    let lens = speaker.lens(screen.lens);
    let words = match (screen.lens, known) {
        (Lens::Heat, _) => speaker.word("recipe-sheet-heat").to_owned(),
        (Lens::Uncertainty, _) => speaker.word("recipe-sheet-uncertainty").to_owned(),
        (_, true) => say!(speaker, "recipe-sheet-total", lens: lens, total: total),
        (_, false) => say!(speaker, "recipe-sheet-total-at-least", lens: lens, total: total),
    };
    put(columns.share.min, Align2::LEFT_CENTER, &words);
    ui.painter().hline(
        rect.x_range(),
        rect.bottom(),
        Stroke::new(grid::HAIRLINE, palette.line),
    );
}

/// Goes to the line in hand, or to the first row, when only "a row" was wished for.
fn take_wish_for_any_row(screen: &Screen<'_>, view: &mut ViewState) {
    if matches!(&view.focus_wanted, Some(Focus::AnyRow(recipe)) if *recipe == screen.recipe.id) {
        let entries = &screen.balance.resolved.entries;
        let known = view
            .line_in_hand
            .as_ref()
            .filter(|id| entries.iter().any(|entry| entry.id() == *id));
        let row = known.or_else(|| entries.first().map(Entry::id));
        view.focus_wanted = row.map(|id| screen.row(id));
    }
}

/// While a row is dragged a line shows where it would go; letting go moves it.
fn drag_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tops: &[f32],
    dragged: &mut Option<LineId>,
    actions: &mut Vec<Action>,
) {
    let Some(id) = dragged.clone() else {
        return;
    };
    let Some(pointer) = ui.input(|input| input.pointer.latest_pos()) else {
        return;
    };
    let place = (0..tops.len())
        .min_by(|one, other| {
            (tops[*one] - pointer.y)
                .abs()
                .total_cmp(&(tops[*other] - pointer.y).abs())
        })
        .unwrap_or(0);
    if ui.input(|input| input.pointer.any_down()) {
        let palette = theme::palette(ui.visuals());
        let stroke = Stroke::new(grid::FOCUS_RING, palette.accent);
        ui.painter()
            .hline(ui.max_rect().x_range(), tops[place], stroke);
        return;
    }
    *dragged = None;
    if ui.input(|input| input.key_pressed(Key::Escape)) {
        return;
    }
    if let Some(change) = model::move_before(&screen.balance.resolved.entries, &id, place) {
        actions.push(Action::edit(screen.shown.change(change), screen.row(&id)));
    }
}

/// A row that is dragged by its grip, the first of the places, and the menu of a row in all of them.
fn row_asked_ui(
    screen: &Screen<'_>,
    id: &LineId,
    places: &[&Response],
    state: &mut RecipeState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if places.first().is_some_and(|grip| grip.drag_started()) {
        state.dragged = Some(id.clone());
    }
    for place in places {
        place.context_menu(|ui| row_menu_ui(ui, screen, id, &mut state.finder, view, actions));
    }
}

/// What can be done with a row, for a menu.
fn row_menu_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    id: &LineId,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    for command in [
        UiCommand::AddLine,
        UiCommand::SwapLine,
        UiCommand::MoveLineUp,
        UiCommand::MoveLineDown,
        UiCommand::RemoveLine,
    ] {
        if ui
            .add(
                egui::Button::new(command.label(screen.speaker))
                    .shortcut_text(command.menu_keys(screen.speaker)),
            )
            .clicked()
        {
            view.line_in_hand = Some(id.clone());
            carry_out(command, screen, finder, view, actions);
        }
    }
    // An instruction has no ingredient.
    if let Some(line) = screen.balance.resolved.line(id)
        && ui
            .button(screen.speaker.word(detail::AT_THE_COUNTER))
            .clicked()
    {
        detail::go_to_counter(line, view);
    }
}

fn add_row_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    columns: &Columns,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    ui.add_space(grid::TIGHT);
    let row = ui.horizontal(|ui| {
        ui.add_space(columns.amount.min);
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        let quiet = |words: &str| {
            egui::Button::new(RichText::new(words).color(palette.accent)).frame_when_inactive(false)
        };
        let add = ui
            .add(quiet(speaker.word("recipe-sheet-add-ingredient")))
            .on_hover_text(UiCommand::AddLine.tooltip(speaker));
        if add.clicked() {
            finder.open_to_add(view.line_in_hand.clone());
        }
        let instruct = ui
            .add(quiet(speaker.word("recipe-sheet-add-instruction")))
            .on_hover_text(UiCommand::AddInstruction.tooltip(speaker));
        if instruct.clicked() {
            add_instruction(screen, view, actions);
        }
        copy_ui(ui, speaker.word("recipe-sheet-table"), || {
            model::as_table(screen)
        });
        add
    });
    if finder.adds() {
        finder::finder_ui(&row.inner, screen, finder, view, actions);
    }
}
