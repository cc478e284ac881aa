//! One row of the sheet: the grip with the colour of the role, amount, ingredient, temperature, mass, and the share.

use egui::{
    Align, Event, EventFilter, Key, Layout, Modifiers, Rangef, Rect, Response, Sense, Ui,
    UiBuilder, pos2, vec2,
};

use super::amount_cell;
use super::line_command::line_command;
use super::model::{self, LineRow, Neighbours};
use crate::balance::{Lens, LineShare};
use crate::book::{Change, Instruction, LineId};
use crate::edit::LineField;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::commands::{UiCommand, pressed_here};
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::icons::{Icon, paint};
use crate::ui::sorted_list::take_focus;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::unseen::unseen_ui;
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name;
use crate::ui::widgets::{role_colour, share_bar};
use crate::workbench::Action;

/// Where the columns stand, from the left edge of the sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Columns {
    /// Width of the whole.
    pub width: f32,
    /// Whether mass and temperature stand under the ingredient for want of room.
    pub compact: bool,
    /// The amount.
    pub amount: Rangef,
    /// The ingredient.
    pub ingredient: Rangef,
    /// The temperature.
    pub temperature: Rangef,
    /// The mass with its uncertainty.
    pub mass: Rangef,
    /// The share.
    pub share: Rangef,
}

impl Columns {
    /// Room for the number of the mass with its unit, before its uncertainty.
    pub(super) const MASS_NUMBER: f32 = 64.0;
    const GRIP: f32 = 28.0;
    const AMOUNT: f32 = 112.0;
    /// How much wider than usual the amounts may become, in points: measures have longer names in other languages.
    const MORE_AMOUNT: f32 = 40.0;
    const TEMPERATURE: f32 = 62.0;
    const MASS: f32 = Self::MASS_NUMBER + 48.0;
    /// Below this width, in points, a row has two lines.
    const COMPACT_BELOW: f32 = 690.0;

    /// The columns of a sheet of this width, with as much room for the amounts as the widest of them wants, within limits.
    pub(super) fn new(width: f32, widest_amount: f32) -> Self {
        let compact = width < Self::COMPACT_BELOW;
        let (grip, usual, gap) = if compact {
            (Self::GRIP - 4.0, Self::AMOUNT - 24.0, grid::TIGHT)
        } else {
            (Self::GRIP, Self::AMOUNT, grid::NEAR)
        };
        let amount_width = widest_amount.clamp(usual, usual + Self::MORE_AMOUNT);
        let share = Rangef::new(width - share_bar::WIDTH, width);
        let (temperature, mass) = if compact {
            (Rangef::point(share.min), Rangef::point(share.min))
        } else {
            let mass = Rangef::new(share.min - grid::NEAR - Self::MASS, share.min - grid::NEAR);
            (Rangef::new(mass.min - Self::TEMPERATURE, mass.min), mass)
        };
        let amount = Rangef::new(grip, grip + amount_width);
        let ingredient = Rangef::new(amount.max + gap, temperature.min - grid::TIGHT);
        Self {
            width,
            compact,
            amount,
            ingredient,
            temperature,
            mass,
            share,
        }
    }

    fn height(&self) -> f32 {
        if self.compact { 48.0 } else { 34.0 }
    }
}

/// The part of a row that a column takes, in its first line.
fn cell(rect: Rect, column: Rangef) -> Rect {
    let middle = rect.top() + 17.0;
    let half = grid::TARGET / 2.0;
    Rect::from_min_max(
        pos2(rect.left() + column.min, middle - half),
        pos2(rect.left() + column.max, middle + half),
    )
}

/// What a line was asked for.
pub(super) struct LineResponses {
    /// The grip.
    pub(super) handle: Response,
    /// The row between its fields.
    pub(super) ground: Response,
    /// The name of the ingredient.
    pub(super) ingredient: Response,
}

pub(super) fn line_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    columns: &Columns,
    neighbours: &Neighbours,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> LineResponses {
    let line = row.line;
    let (rect, _) = ui.allocate_exact_size(vec2(columns.width, columns.height()), Sense::hover());
    let lit = screen.lit == Some(&line.id);
    paint_ground(ui, rect, lit, view.line_in_hand.as_ref() == Some(&line.id));
    let ground = ui.interact(rect, ui.scope_id().with(("ground", &line.id)), Sense::CLICK);
    let handle = handle_ui(
        ui,
        screen,
        rect,
        &line.id,
        &model::spoken(screen.speaker, row, screen.lens),
        view,
    );
    let colour = role_colour(theme::palette(ui.visuals()), line.role);
    let mark = Rect::from_min_size(
        pos2(rect.left() + 2.0, rect.top() + 8.0),
        vec2(4.0, rect.height() - 16.0),
    );
    ui.painter().rect_filled(mark, 2.0, colour);
    row_keys(
        ui, screen, &handle, &line.id, neighbours, true, view, actions,
    );
    let amount = amount_cell::amount_ui(
        ui,
        screen,
        row,
        cell(rect, columns.amount),
        neighbours,
        view,
        actions,
    );
    let ingredient = ingredient_ui(
        ui,
        screen.speaker,
        row,
        cell(rect, columns.ingredient),
        !columns.compact,
        view,
    );
    if columns.compact {
        second_line_ui(ui, screen.speaker, row, rect, columns);
    } else {
        amount_cell::temperature_ui(
            ui,
            screen,
            row,
            cell(rect, columns.temperature),
            view,
            actions,
        );
        mass_ui(ui, screen.speaker, row, cell(rect, columns.mass));
    }
    share_ui(
        ui,
        screen,
        row.share,
        cell(rect, columns.share),
        colour,
        lit,
    );
    if ground.hovered() || ui.rect_contains_pointer(rect) || handle.has_focus() {
        view.lit_next = Some(line.id.clone());
    }
    let pointer_is_down = ui.input(|input| input.pointer.any_down());
    let focused = handle.has_focus() || amount.has_focus();
    // The detail opens below; while the button is down nothing may move under the pointer.
    if (focused && !pointer_is_down) || ground.clicked() || handle.clicked() {
        view.line_in_hand = Some(line.id.clone());
    }
    for field in [LineField::Amount, LineField::Temperature] {
        let key = screen.field_of(&line.id, field);
        if view.drafts.error(&key).is_some() {
            ui.indent(&key, |ui| draft_error_ui(ui, &view.drafts, &key));
        }
    }
    carried_ui(
        ui,
        screen,
        row,
        columns,
        view.line_in_hand.as_ref() == Some(&line.id),
    );
    LineResponses {
        handle,
        ground,
        ingredient,
    }
}

fn paint_ground(ui: &Ui, rect: Rect, lit: bool, in_hand: bool) {
    let palette = theme::palette(ui.visuals());
    let colour = match (lit, in_hand) {
        (true, _) => palette.fill,
        (false, true) => palette.stripe,
        _ => return,
    };
    // The detail of the row in hand goes on below without a seam.
    let foot = if in_hand { 0 } else { grid::CORNER };
    let corner = egui::CornerRadius {
        nw: grid::CORNER,
        ne: grid::CORNER,
        sw: foot,
        se: foot,
    };
    ui.painter().rect_filled(rect, corner, colour);
}

/// The grip: takes the keyboard, and is dragged to move the row.
fn handle_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    rect: Rect,
    id: &LineId,
    name: &str,
    view: &mut ViewState,
) -> Response {
    let palette = theme::palette(ui.visuals());
    let key = screen.row(id);
    let place = rect.with_max_x(rect.left() + Columns::GRIP);
    let response = ui.interact(place, Field::id(&key), Sense::click_and_drag());
    let enabled = ui.is_enabled();
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, enabled, name));
    if view.focus_wanted.as_ref() == Some(&key) {
        view.focus_wanted = None;
        take_focus(ui, &response);
        ui.scroll_to_rect(rect.expand(grid::EASY), None);
    }
    if response.has_focus() {
        theme::focus_ring(ui, rect);
    }
    if response.hovered() || response.dragged() || ui.rect_contains_pointer(rect) {
        let sign = Rect::from_center_size(
            pos2(place.right() - 9.0, rect.top() + 17.0),
            vec2(14.0, 14.0),
        );
        paint(ui.painter(), sign, Icon::Grip, palette.text_quiet);
    }
    response.on_hover_cursor(egui::CursorIcon::Grab)
}

/// The keys of a row that has the keyboard: arrows to the neighbours, Enter or typing to the amount, Delete removes.
#[expect(
    clippy::too_many_arguments,
    reason = "a row passes on what every view gets"
)]
fn row_keys(
    ui: &Ui,
    screen: &Screen<'_>,
    handle: &Response,
    id: &LineId,
    neighbours: &Neighbours,
    has_amount: bool,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if !handle.has_focus() {
        return;
    }
    let filter = EventFilter {
        vertical_arrows: true,
        ..EventFilter::default()
    };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(handle.id, filter));
    for (command, neighbour) in [UiCommand::LineAbove, UiCommand::LineBelow]
        .into_iter()
        .zip(neighbours)
    {
        if pressed_here(ui.ctx(), command)
            && let Some(neighbour) = neighbour
        {
            view.focus_wanted = Some(screen.row(neighbour));
            ui.ctx().request_repaint();
        }
    }
    if pressed_here(ui.ctx(), UiCommand::RemoveLine) {
        view.line_in_hand = Some(id.clone());
        line_command(UiCommand::RemoveLine, screen, view, actions);
        view.focus_wanted = neighbours
            .iter()
            .rev()
            .flatten()
            .next()
            .map(|next| screen.row(next));
    }
    if pressed_here(ui.ctx(), UiCommand::Back) {
        view.line_in_hand = None;
        handle.surrender_focus();
    }
    if !has_amount {
        return;
    }
    let field = screen.field_of(id, LineField::Amount);
    let typed = ui.input(|input| {
        input
            .events
            .iter()
            .any(|event| matches!(event, Event::Text(text) if !text.trim().is_empty()))
    });
    if typed {
        // The field that gets the keyboard now takes the typed sign from the same frame.
        view.drafts.keep(&field, String::new());
    }
    if typed || ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
        ui.memory_mut(|memory| memory.request_focus(Field::id(&field)));
    }
}

/// That nobody sells the ingredient any more.
fn mark_of<'words>(speaker: Speaker<'words>, row: &LineRow<'_>) -> Option<&'words str> {
    let is_gone = row.ingredient.is_some_and(|item| item.no_longer_sold);
    is_gone.then(|| speaker.sold(true))
}

/// The name of the ingredient, with its brand and mark where there is room for them; a click finds another one.
fn ingredient_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    row: &LineRow<'_>,
    rect: Rect,
    brand: bool,
    view: &mut ViewState,
) -> Response {
    let palette = theme::palette(ui.visuals());
    let colour = if row.ingredient.is_some() {
        palette.text_strong
    } else {
        palette.off_level
    };
    let more = row.brand();
    let more = if brand && !row.name().contains(more.as_ref()) {
        more.as_ref()
    } else {
        ""
    };
    let mark = mark_of(speaker, row);
    let spoken = match mark {
        Some(mark) => say!(speaker, "clauses", before: row.name(), after: mark),
        None => row.name().into_owned(),
    };
    let (name, _) = name::elided_with_more(
        ui,
        (&row.name(), colour),
        (more, palette.text_quiet),
        mark.filter(|_| brand).map(|mark| (mark, palette.caution)),
        rect.width() - 2.0 * grid::TIGHT,
    );
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::left_to_right(Align::Center)),
    );
    child.spacing_mut().button_padding.x = grid::TIGHT;
    let button = egui::Button::new(name).frame_when_inactive(false);
    let response = child
        .add(button)
        .accessible_name(say!(speaker, "recipe-sheet-ingredient", ingredient: spoken));
    let whole_name = speaker.ingredient(&row.line.ingredient);
    let told = say!(speaker, "recipe-sheet-put-another", ingredient: whole_name);
    let response = response.on_hover_text(told);
    if response.clicked() {
        view.line_in_hand = Some(row.line.id.clone());
    }
    response
}

/// A label in a place of its own.
fn label_at(
    ui: &mut Ui,
    rect: Rect,
    layout: Layout,
    text: &str,
    style: TypeStyle,
    colour: egui::Color32,
) {
    name::name_at(ui, rect, layout, text, style, colour);
}

/// The mass right-aligned, so that its decimal signs stand in one column, and its uncertainty behind it.
fn mass_ui(ui: &mut Ui, speaker: Speaker<'_>, row: &LineRow<'_>, rect: Rect) {
    let palette = theme::palette(ui.visuals());
    let Some(share) = row.share else { return };
    let (mass, spread) = model::mass_words(speaker, share);
    let middle = rect.left() + Columns::MASS_NUMBER;
    let (number, behind) = (
        rect.with_max_x(middle),
        rect.with_min_x(middle + grid::TIGHT),
    );
    let right = Layout::right_to_left(Align::Center);
    let place = if share.grams.is_none() { rect } else { number };
    label_at(
        ui,
        place,
        right,
        &mass,
        TypeStyle::Small,
        palette.text_normal,
    );
    if !spread.is_empty() {
        label_at(
            ui,
            behind,
            Layout::left_to_right(Align::Center),
            &spread,
            TypeStyle::Small,
            palette.text_quiet,
        );
    }
}

/// Mass, temperature, brand and mark under the ingredient.
fn second_line_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    row: &LineRow<'_>,
    rect: Rect,
    columns: &Columns,
) {
    let palette = theme::palette(ui.visuals());
    let mut place = Rect::from_min_max(
        pos2(
            rect.left() + columns.ingredient.min + grid::TIGHT,
            rect.top() + 28.0,
        ),
        pos2(rect.left() + columns.share.max, rect.bottom() - 2.0),
    );
    if let Some(mark) = mark_of(speaker, row) {
        let font = TypeStyle::Small.font_id();
        let mark = ui
            .painter()
            .layout_no_wrap(mark.to_owned(), font, palette.caution);
        let at = pos2(place.left(), place.center().y - mark.size().y / 2.0);
        place.min.x += mark.size().x + grid::EASY;
        ui.painter().galley(at, mark, palette.caution);
    }
    let Some(share) = row.share else { return };
    let (mass, spread) = model::mass_words(speaker, share);
    let temperature = row.temperature.map(|(stated, _)| {
        let temperature = speaker.stated_temperature(stated, 0);
        say!(speaker, "recipe-sheet-at-temperature", temperature: temperature)
    });
    let figures = format!("{mass} {spread}");
    let brand = Some(row.brand().into_owned()).filter(|brand| !brand.is_empty());
    let words: Vec<String> = [Some(figures), temperature, brand]
        .into_iter()
        .flatten()
        .collect();
    let words = words.join("   ");
    label_at(
        ui,
        place,
        Layout::left_to_right(Align::Center),
        &words,
        TypeStyle::Small,
        palette.text_quiet,
    );
}

fn share_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    share: Option<&LineShare>,
    rect: Rect,
    colour: egui::Color32,
    lit: bool,
) {
    let through = share.and_then(|share| share.through(screen.lens));
    let text = model::share_words(screen.speaker, through, screen.lens);
    let mut child = ui.new_child(
        UiBuilder::new()
            .max_rect(rect)
            .layout(Layout::left_to_right(Align::Center)),
    );
    share_bar::share_bar_ui(
        &mut child,
        through,
        screen.balance.whole_through(screen.lens),
        screen.lens == Lens::Heat,
        &text,
        colour,
        lit,
    );
}

/// What a topping brings along, indented under it.
fn carried_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &LineRow<'_>,
    columns: &Columns,
    in_hand: bool,
) {
    let (Some(carried), Some(share)) = (&row.line.carried, row.carried) else {
        return;
    };
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(columns.width, grid::TARGET), Sense::hover());
    if in_hand {
        ui.painter().rect_filled(rect, 0.0, palette.stripe);
    }
    let words = model::carried_words(screen.speaker, carried, share);
    let place = rect
        .with_min_x(rect.left() + columns.ingredient.min + grid::TIGHT)
        .with_max_x(rect.left() + columns.share.min - grid::NEAR);
    label_at(
        ui,
        place,
        Layout::left_to_right(Align::Center),
        &words,
        TypeStyle::Small,
        palette.text_quiet,
    );
    let colour = role_colour(palette, share.role);
    let lit = screen.lit == Some(&row.line.id);
    let column = Rect::from_min_max(pos2(rect.left() + columns.share.min, rect.top()), rect.max);
    share_ui(ui, screen, Some(share), column, colour, lit);
}

/// A sentence of method.
pub(super) fn instruction_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    instruction: &Instruction,
    columns: &Columns,
    neighbours: &Neighbours,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> Response {
    let key = screen.field_of(&instruction.id, LineField::Instruction);
    let speaker = screen.speaker;
    let name = speaker.word("recipe-sheet-instruction");
    let field = Field::new(key.clone(), name, &instruction.text)
        .style(TypeStyle::Method)
        .several_rows()
        .hint(speaker.word("recipe-sheet-instruction-hint"));
    let height = field.height(ui, &view.drafts, columns.width - columns.amount.min) + 4.0;
    let (rect, _) = ui.allocate_exact_size(vec2(columns.width, height), Sense::hover());
    let name = say!(speaker, "recipe-sheet-instruction-row", text: &instruction.text);
    let handle = handle_ui(ui, screen, rect, &instruction.id, &name, view);
    row_keys(
        ui,
        screen,
        &handle,
        &instruction.id,
        neighbours,
        false,
        view,
        actions,
    );
    if handle.has_focus() || handle.clicked() {
        view.line_in_hand = Some(instruction.id.clone());
    }
    let place = Rect::from_min_max(
        pos2(rect.left() + columns.amount.min, rect.top() + 2.0),
        rect.max - vec2(0.0, 2.0),
    );
    let outcome = field.show(ui, place, &mut view.drafts, actions);
    if outcome.response.has_focus() {
        view.line_in_hand = Some(instruction.id.clone());
    }
    if let Some(text) = outcome.changed {
        let change = Change::Instruction(instruction.id.clone(), text);
        actions.push(Action::edit(screen.shown.change(change), key));
    }
    if outcome.left_empty {
        let change = Change::Remove(instruction.id.clone());
        actions.push(Action::edit(
            screen.shown.change(change),
            screen.row(&instruction.id),
        ));
    }
    let indent = columns.amount.min;
    unseen_ui(
        ui,
        indent,
        speaker.word("recipe-sheet-the-instruction"),
        &instruction.text,
        TypeStyle::Method,
    );
    handle
}
