//! The list on the left: find, sort, and go through it with the arrows. Only the rows in sight are drawn.

use egui::{
    Button, EventFilter, Key, Modifiers, Rect, Response, RichText, ScrollArea, Sense, Stroke,
    TextEdit, Ui, WidgetInfo, pos2, vec2,
};

use super::item::{Counter, CounterItem, Kind};
use super::state::CounterState;
use super::table::{OrderOf, Row, RowsOf, as_table, columns};
use crate::book::IngredientId;
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::commands::{UiCommand, pressed_here};
use crate::ui::icons::{Icon, icon_button, paint};
use crate::ui::sorted_list::{
    Column, cell_ui, headings_ui, neighbour, offset_to, places, take_focus, visible_columns,
};
use crate::ui::spreadsheet::copy_ui;
use crate::ui::starter_kit_offer::starter_kit_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::link_ui;
use crate::ui::widgets::name::elided_with_more;
use crate::ui::widgets::role_colour;
use crate::ui::words::{self, Spoken};
use crate::workbench::{Action, published_ingredients};

/// Height of a row, in points.
const ROW: f32 = grid::TARGET + 2.0;
/// Room for the button of the published tables, in points.
const FROM_TABLE: f32 = 50.0 * grid::STEP;
/// Least and most width of the field that finds, in points.
const FIND: (f32, f32) = (44.0 * grid::STEP, 90.0 * grid::STEP);
/// Height of the list of published ingredients, in points.
const PUBLISHED: f32 = 80.0 * grid::STEP;

/// What the person wants of the list.
pub(super) enum Wish {
    /// An ingredient like this one of the published tables.
    Published(IngredientId),
    /// To see an item.
    Open(CounterItem),
    /// A new item of the kind in hand, with the name that none was found by.
    New(Option<String>),
}

/// The list of the kind in hand.
pub(super) fn list_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    state: &mut CounterState,
    actions: &mut Vec<Action>,
) -> Option<Wish> {
    let mut wish = find_ui(ui, state);
    // Enter where nothing is found opens nothing, now or later.
    let enters = std::mem::take(&mut state.enter_row);
    let width = ui.available_width() - ui.spacing().scroll.allocated_width();
    let shown = visible_columns(columns(state.kind), width);
    ui.add_space(grid::TIGHT);
    ui.spacing_mut().item_spacing.y = 0.0;
    let first = counter.speaker.word("counter-column-name");
    headings_ui(ui, &mut state.sort, first, &shown, width);
    ui.add_space(grid::TIGHT);
    let wanted = OrderOf {
        rows: RowsOf {
            kind: state.kind,
            spoken: Spoken::by(counter.speaker),
        },
        find: state.find.clone(),
        sort: state.sort,
    };
    let (rows, order) = (
        counter.answers.to(&wanted.rows),
        counter.answers.to(&wanted),
    );
    if order.is_empty() && state.find.is_empty() {
        starter_kit_ui(ui, counter.speaker, counter.answers, actions);
    }
    if order.is_empty() {
        if nothing_ui(ui, state) {
            wish = Some(wish_for_new(state));
        }
    } else {
        state.enter_row = enters;
        let foot = grid::TARGET + grid::TIGHT;
        let room = vec2(
            ui.available_width(),
            (ui.available_height() - foot).max(grid::TARGET),
        );
        wish = ui
            .allocate_ui(room, |ui| {
                rows_ui(ui, state, (&rows, &order), &shown, width)
            })
            .inner
            .or(wish);
        let of = say!(counter.speaker, "counter-table-of", kind: state.kind.key());
        copy_ui(ui, &of, || {
            as_table(counter, state.kind, order.iter().map(|at| &rows[*at]))
        });
    }
    wish
}

fn find_ui(ui: &mut Ui, state: &mut CounterState) -> Option<Wish> {
    let mut wish = None;
    let has_tables = state.kind == Kind::Ingredients;
    let room = ui.available_width() - grid::TARGET - 3.0 * grid::NEAR;
    // Where the list is narrow the tables stand below the field.
    let tables_beside = has_tables && room >= FIND.0 + FROM_TABLE;
    ui.horizontal(|ui| {
        let speaker = words::speaker(ui.ctx());
        let behind = if tables_beside { FROM_TABLE } else { 0.0 };
        let width = (room - behind).clamp(FIND.0, FIND.1);
        let field = TextEdit::singleline(&mut state.find)
            .id(egui::Id::unique("find at the counter"))
            .hint_text(if state.kind == Kind::Ingredients {
                speaker.word("counter-find-ingredient")
            } else {
                speaker.word("counter-find-other")
            })
            .desired_width(width);
        let response = ui
            .add(field)
            .accessible_name(say!(speaker, "counter-find-named", kind: state.kind.key()));
        if std::mem::take(&mut state.focus_find) {
            response.request_focus();
        }
        if response.changed() {
            state.row = 0;
        }
        if response.has_focus() && pressed_here(ui.ctx(), UiCommand::LineBelow) {
            state.focus_row = true;
        }
        if response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter)) {
            state.enter_row = true;
        }
        let words = say!(speaker, "counter-new", kind: state.kind.key());
        if icon_button(ui, Icon::Add, &words, &words).clicked() {
            // What is typed and found under other names is a name, too: another brand of the same.
            wish = Some(wish_for_new(state));
        }
        if tables_beside {
            wish = wish.take().or(tables_ui(ui));
        }
    });
    if has_tables && !tables_beside {
        wish = wish.or(tables_ui(ui));
    }
    wish
}

fn tables_ui(ui: &mut Ui) -> Option<Wish> {
    let words = words::speaker(ui.ctx()).word("counter-published");
    let menu = ui.menu_button(words, published_ui);
    menu.inner.flatten().map(Wish::Published)
}

/// The ingredients of the published tables; the one that is taken.
fn published_ui(ui: &mut Ui) -> Option<IngredientId> {
    let palette = theme::palette(ui.visuals());
    let Ok(book) = published_ingredients() else {
        ui.label(words::speaker(ui.ctx()).word("counter-published-unreadable"));
        return None;
    };
    ui.set_min_width(240.0);
    let words = RichText::new(&book.settings.note).font(TypeStyle::Small.font_id());
    ui.add(egui::Label::new(words.color(palette.text_quiet)).wrap());
    let mut taken = None;
    egui::ScrollArea::vertical()
        .max_height(PUBLISHED)
        .show(ui, |ui| {
            for ingredient in &book.ingredients {
                let button = ui
                    .button(name_as_shown(&ingredient.name).as_ref())
                    .on_hover_text(&ingredient.note);
                if button.clicked() {
                    taken = Some(ingredient.id.clone());
                    ui.close();
                }
            }
        });
    taken
}

/// A new item by the name that is typed to find one.
fn wish_for_new(state: &CounterState) -> Wish {
    let name = state.find.trim();
    Wish::New((!name.is_empty()).then(|| name.to_owned()))
}

/// A list with nothing in it says what to do; `true` when what was looked for is to be added.
fn nothing_ui(ui: &mut Ui, state: &CounterState) -> bool {
    let palette = theme::palette(ui.visuals());
    let speaker = words::speaker(ui.ctx());
    let name = state.find.trim();
    let words = if name.is_empty() {
        say!(speaker, "counter-none-yet", kind: state.kind.key())
    } else {
        say!(speaker, "counter-none-match", kind: state.kind.key())
    };
    ui.add_space(grid::NEAR);
    ui.add(egui::Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    if name.is_empty() {
        return false;
    }
    let words = say!(speaker, "counter-add-named", name: name_as_shown(name));
    link_ui(ui, &words).clicked()
}

fn focus_ring(ui: &Ui, response: &Response, place: Rect) {
    if response.has_focus() {
        theme::focus_ring(ui, place);
    }
}

fn rows_ui(
    ui: &mut Ui,
    state: &mut CounterState,
    (rows, order): (&[Row], &[usize]),
    shown: &[(usize, Column)],
    width: f32,
) -> Option<Wish> {
    let mut wish = None;
    if let Some(place) = state
        .find_row
        .take()
        .and_then(|id| order.iter().position(|at| rows[*at].id == id))
    {
        state.row = place;
        state.scroll_to_row = true;
    }
    state.row = state.row.min(order.len() - 1);
    if std::mem::take(&mut state.enter_row) {
        wish = Some(Wish::Open(rows[order[state.row]].id.clone()));
    }
    let mut area = ScrollArea::vertical()
        .id_salt(("counter list", state.kind as u8))
        .auto_shrink(false);
    if state.focus_row || std::mem::take(&mut state.scroll_to_row) {
        let offset = offset_to(state.row, ROW, state.scrolled, ui.available_height());
        area = area.vertical_scroll_offset(offset);
    }
    let output = area.show_rows(ui, ROW, order.len(), |ui, range| {
        // As wide as the headings, whether or not there is a bar beside the rows.
        ui.set_max_width(width);
        for place in range {
            let row = &rows[order[place]];
            let response = row_ui(ui, state, row, place, shown);
            if response.clicked() {
                // The arrows go on from where the pointer was.
                response.request_focus();
                state.row = place;
                wish = Some(Wish::Open(row.id.clone()));
            }
            if response.has_focus()
                && let Some(asked) = row_keys(ui, state, &response, rows, order, place)
            {
                wish = Some(asked);
            }
        }
    });
    state.scrolled = output.state.clamped_offset().y;
    wish
}

/// Arrows to the neighbours, Enter opens, Escape goes back.
fn row_keys(
    ui: &Ui,
    state: &mut CounterState,
    response: &Response,
    rows: &[Row],
    order: &[usize],
    place: usize,
) -> Option<Wish> {
    let filter = EventFilter {
        vertical_arrows: true,
        escape: true,
        ..EventFilter::default()
    };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    if let Some(to) = neighbour(ui, place, order.len()) {
        state.row = to;
        state.focus_row = true;
        ui.ctx().request_repaint();
        // What is open follows the arrows, so that items can be leafed through.
        return state
            .open
            .is_some()
            .then(|| Wish::Open(rows[order[to]].id.clone()));
    }
    if ui.input_mut(|input| input.consume_key(Modifiers::NONE, Key::Enter)) {
        state.enter_field = true;
        return Some(Wish::Open(rows[order[place]].id.clone()));
    }
    if pressed_here(ui.ctx(), UiCommand::Back) && !state.step_back() {
        response.surrender_focus();
    }
    None
}

fn row_ui(
    ui: &mut Ui,
    state: &mut CounterState,
    row: &Row,
    place: usize,
    shown: &[(usize, Column)],
) -> Response {
    let palette = theme::palette(ui.visuals());
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    let rect = rect.with_max_x(rect.right() - grid::TIGHT);
    let response = ui.interact(
        rect,
        egui::Id::unique(("counter row", &row.id)),
        Sense::click(),
    );
    let is_open = state.open.as_ref() == Some(&row.id);
    let (own, quiet) = (name_as_shown(&row.name), name_as_shown(&row.quiet));
    let spoken = format!("{own} {quiet} {}", row.mark.unwrap_or_default());
    response.widget_info(|| WidgetInfo::selected(egui::Role::Button, true, is_open, spoken.trim()));
    if state.focus_row && state.row == place {
        state.focus_row = false;
        take_focus(ui, &response);
    }
    let corner = egui::CornerRadius::same(grid::CORNER);
    let ground = if is_open {
        Some(palette.selection)
    } else {
        response.hovered().then_some(palette.hover)
    };
    if let Some(colour) = ground {
        ui.painter().rect_filled(rect, corner, colour);
    }
    focus_ring(ui, &response, rect);
    if let Some(role) = row.role {
        let mark = Rect::from_min_size(rect.min + vec2(4.0, 8.0), vec2(4.0, rect.height() - 16.0));
        ui.painter()
            .rect_filled(mark, 2.0, role_colour(palette, role));
    }
    let (name, cells) = places(rect.with_max_x(rect.right() + grid::TIGHT), shown);
    let (galley, is_cut) = elided_with_more(
        ui,
        (&own, palette.text_strong),
        (&quiet, palette.text_quiet),
        row.mark.map(|mark| (mark, palette.caution)),
        name.width(),
    );
    ui.painter().galley(
        pos2(name.left(), name.center().y - galley.size().y / 2.0),
        galley,
        palette.text_normal,
    );
    for ((at, column), place) in shown.iter().zip(cells) {
        cell_ui(ui, &row.cells[*at], column, place);
    }
    if is_cut {
        return response.on_hover_text(spoken.trim());
    }
    response
}

/// The kinds as words; the one in hand has a line under it.
pub(super) fn kinds_ui(ui: &mut Ui, state: &mut CounterState, counts: [usize; 3]) {
    let speaker = words::speaker(ui.ctx());
    let palette = theme::palette(ui.visuals());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        ui.spacing_mut().button_padding.x = grid::TIGHT + 1.0;
        for kind in Kind::ALL {
            let chosen = state.kind == kind;
            let style = if chosen {
                TypeStyle::Strong
            } else {
                TypeStyle::Body
            };
            let colour = if chosen {
                palette.accent
            } else {
                palette.text_quiet
            };
            let text = RichText::new(say!(speaker, "counter-kinds", kind: kind.key()))
                .font(style.font_id())
                .color(colour);
            let button = Button::selectable(chosen, text)
                .frame_when_inactive(false)
                .fill(egui::Color32::TRANSPARENT);
            let response = ui
                .add(button)
                .accessible_name(say!(speaker, "counter-look-at", kind: kind.key()));
            let response = match counts.get(kind as usize) {
                Some(count) => response
                    .on_hover_text(say!(speaker, "counter-count", kind: kind.key(), count: *count)),
                None => response,
            };
            if chosen {
                let line = response.rect.x_range().shrink(grid::TIGHT + 1.0);
                ui.painter().hline(
                    line,
                    response.rect.bottom() - 2.0,
                    Stroke::new(2.0, palette.accent),
                );
            }
            if response.clicked() {
                state.look_at(kind);
            }
        }
    });
}

/// The sign that closes what is open.
pub(super) fn close_ui(ui: &mut Ui, rect: Rect) -> bool {
    let response = ui.interact(rect, ui.scope_id().with("close"), Sense::click());
    let speaker = words::speaker(ui.ctx());
    let name = speaker.word("counter-close");
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Button, true, name));
    let palette = theme::palette(ui.visuals());
    if response.hovered() {
        ui.painter()
            .rect_filled(rect, f32::from(grid::CORNER), palette.hover);
    }
    focus_ring(ui, &response, rect);
    paint(
        ui.painter(),
        rect.shrink(7.0),
        Icon::Delete,
        palette.text_quiet,
    );
    response
        .on_hover_text(speaker.word("counter-close-hint"))
        .clicked()
}
