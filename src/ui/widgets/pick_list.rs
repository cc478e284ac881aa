//! The one list from which something is picked by typing: a field that narrows it down, arrows that go through it, Enter or
//! a click that takes.

use egui::{
    Id, Key, Rect, Response, Role as NodeRole, ScrollArea, Sense, TextEdit, Ui, WidgetInfo, vec2,
};

use super::{name, role_colour};
use crate::book::Role;
use crate::ui::field::select_all;
use crate::ui::tall_list::TallList;
use crate::ui::theme::{self, TypeStyle, grid};

/// Rows that a page is taken for.
const PAGE: usize = 8;

/// What is typed, and which of the rows is chosen.
#[derive(Clone, Debug, Default)]
pub(in crate::ui) struct PickList {
    /// What is typed.
    pub(in crate::ui) text: String,
    chosen: usize,
    rows: TallList,
    wants_keyboard: bool,
}

impl PickList {
    /// Begins anew with the keyboard in the field; what was typed last stands there and is replaced by typing.
    pub(in crate::ui) fn open(&mut self) {
        self.wants_keyboard = true;
        self.begin();
    }

    /// Goes to the first row: there are others now.
    pub(in crate::ui) fn begin(&mut self) {
        self.go_to(0);
    }

    /// Whether the field has yet to get the keyboard.
    pub(in crate::ui) fn is_opening(&self) -> bool {
        self.wants_keyboard
    }

    fn go_to(&mut self, row: usize) {
        self.chosen = row;
        self.rows.seek(Some(row));
    }

    /// The field; `name` is what a screen reader says.
    pub(in crate::ui) fn field_ui(
        &mut self,
        ui: &mut Ui,
        id: &'static str,
        name: &str,
        hint: &str,
    ) -> Response {
        let id = Id::unique(id);
        // The first pass only measures a menu, so the wish stands until the field has kept the keyboard.
        self.wants_keyboard &= !ui.memory(|memory| memory.has_focus(id));
        if self.wants_keyboard {
            // Before the field is drawn: what is typed in this very frame already replaces what stands there.
            select_all(ui, id, &self.text);
            ui.memory_mut(|memory| memory.request_focus(id));
            ui.request_repaint();
        }
        let field = TextEdit::singleline(&mut self.text)
            .id(id)
            .hint_text(hint)
            .desired_width(f32::INFINITY);
        let response = ui.add(field).accessible_name(name);
        if response.changed() {
            self.begin();
        }
        response
    }

    /// Goes by the arrows through so many rows. A key that is held down is counted as often as it came since the last frame.
    pub(in crate::ui) fn walk(&mut self, ui: &Ui, rows: usize) {
        let presses = |key| ui.input(|input| input.num_presses(key));
        let down = presses(Key::ArrowDown) + PAGE * presses(Key::PageDown);
        let up = presses(Key::ArrowUp) + PAGE * presses(Key::PageUp);
        let last = rows.saturating_sub(1);
        let row = (self.chosen + down).min(last).saturating_sub(up);
        if row != self.chosen {
            self.go_to(row);
        }
    }

    /// The row that is taken when the field was left with Enter.
    pub(in crate::ui) fn entered(&self, ui: &Ui, field: &Response) -> Option<usize> {
        let entered = field.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
        entered.then_some(self.chosen)
    }

    /// The rows, each told whether it is chosen, in a list of at most this height; tells which one was clicked.
    pub(in crate::ui) fn rows_ui(
        &mut self,
        ui: &mut Ui,
        most: f32,
        rows: usize,
        row_height: f32,
        mut row_ui: impl FnMut(&mut Ui, usize, bool) -> Response,
    ) -> Option<usize> {
        let mut area = ScrollArea::vertical()
            .id_salt("what can be picked")
            .max_height(most)
            // A menu is as low as its list was before: more rows than then get their room at once.
            .min_scrolled_height(most)
            .auto_shrink([false, true]);
        if let Some(offset) = self.rows.offset_to_sought() {
            area = area.vertical_scroll_offset(offset);
            ui.request_repaint();
        }
        let mut taken = None;
        area.show_viewport(ui, |ui, viewport| {
            ui.spacing_mut().item_spacing.y = 0.0;
            self.rows.expect(rows, row_height);
            let chosen = self.chosen;
            self.rows.rows_ui(ui, viewport, |ui, row| {
                if row_ui(ui, row, row == chosen).clicked() {
                    taken = Some(row);
                }
            });
        });
        taken
    }
}

/// A row that holds nothing but words: cut by the middle where they have no room, and then whole under the pointer.
pub(in crate::ui) fn words_row_ui(
    ui: &mut Ui,
    is_chosen: bool,
    words: &str,
    role: Option<Role>,
) -> Response {
    let mut is_cut = false;
    let response = row_ui(ui, grid::TARGET, is_chosen, words, role, |ui, room| {
        let colour = theme::palette(ui.visuals()).text_strong;
        is_cut = name::painted(ui, room, words, TypeStyle::Body, colour);
    });
    if is_cut {
        return response.on_hover_text(words);
    }
    response
}

/// A row with a ground that tells how it stands; `words` are what a screen reader says. A mark stands before what is of a
/// role. What is in the row is drawn where its room is given, as long as it is in sight.
pub(in crate::ui) fn row_ui(
    ui: &mut Ui,
    height: f32,
    is_chosen: bool,
    words: &str,
    role: Option<Role>,
    contents: impl FnOnce(&mut Ui, Rect),
) -> Response {
    let size = vec2(ui.available_width(), height);
    let (rect, response) = ui.allocate_exact_size(size, Sense::click());
    response.widget_info(|| WidgetInfo::selected(NodeRole::Button, true, is_chosen, words));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    let palette = theme::palette(ui.visuals());
    let corner = f32::from(grid::CORNER);
    if is_chosen {
        ui.painter().rect_filled(rect, corner, palette.selection);
    } else if response.hovered() || response.has_focus() {
        ui.painter().rect_filled(rect, corner, palette.hover);
    }
    if response.has_focus() {
        theme::focus_ring(ui, rect);
    }
    let mut left = grid::NEAR;
    if let Some(role) = role {
        let size = vec2(4.0, height - 14.0);
        let mark = Rect::from_min_size(rect.min + vec2(4.0, 7.0), size);
        ui.painter()
            .rect_filled(mark, 2.0, role_colour(palette, role));
        left = 16.0;
    }
    let room = rect
        .with_min_x(rect.left() + left)
        .with_max_x(rect.right() - grid::NEAR);
    contents(ui, room);
    response
}
