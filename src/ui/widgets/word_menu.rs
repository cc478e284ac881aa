//! A word that opens a menu of words.

use egui::containers::menu::MenuButton;
use egui::{Button, Color32, Rect, Response, RichText, Ui, pos2, vec2};

use super::name::width_of;
use crate::edit::Focus;
use crate::quantity::cut_in_the_middle;
use crate::say::say;
use crate::ui::field::take_keyboard;
use crate::ui::icons::{Icon, paint};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words;

/// Least width of the menu, in points.
const LEAST: f32 = 40.0 * grid::STEP;

/// Shows `word`, which stands for what `name` is now; undo of what is chosen in it leads back to `focus`.
pub(in crate::ui) fn word_menu_ui(
    ui: &mut Ui,
    focus: &Focus,
    name: &str,
    word: &str,
    items: impl FnOnce(&mut Ui),
) -> Response {
    let palette = theme::palette(ui.visuals());
    // Room for the sign behind the word.
    let with_sign = |word: &str| format!("{word}\u{a0}\u{a0}\u{a0}\u{a0}");
    let font = TypeStyle::Body.font_id();
    let needed = |ui: &Ui, word: &str| width_of(ui, &with_sign(word), &font) + 2.0 * grid::TIGHT;
    if ui.layout().main_wrap && needed(ui, word) > ui.available_size_before_wrap().x {
        ui.end_row();
    }
    let room = ui.available_size_before_wrap().x.max(LEAST);
    let shown = cut_in_the_middle(word, |word| needed(ui, word) <= room);
    let is_cut = *shown != *word;
    let text = RichText::new(with_sign(&shown)).color(palette.text_normal);
    let button = Button::new(text)
        .frame_when_inactive(false)
        .fill(Color32::TRANSPARENT);
    let (response, _) = ui
        .scope(|ui| {
            ui.spacing_mut().button_padding.x = grid::TIGHT;
            MenuButton::from_button(button).ui(ui, |ui| {
                ui.set_min_width(LEAST);
                items(ui);
            })
        })
        .inner;
    take_keyboard(ui, focus, &response);
    let spoken = say!(words::speaker(ui.ctx()), "choice-named", name: name, word: word);
    let response = response.accessible_name(spoken);
    let right = response.rect.right() - grid::NEAR - 2.0;
    let sign = Rect::from_center_size(
        pos2(right, response.rect.center().y + 1.0),
        vec2(12.0, 12.0),
    );
    paint(ui.painter(), sign, Icon::ChevronDown, palette.text_quiet);
    if is_cut {
        return response.on_hover_text(word);
    }
    response
}

/// The words of a menu of which one is chosen; tells which one was clicked.
pub(in crate::ui) fn choice_ui<V: PartialEq + Clone>(
    ui: &mut Ui,
    all: impl IntoIterator<Item = V>,
    chosen: &V,
    word: impl Fn(&V) -> String,
) -> Option<V> {
    let mut taken = None;
    for one in all {
        if ui
            .add(Button::selectable(one == *chosen, word(&one)))
            .clicked()
        {
            taken = Some(one);
        }
    }
    taken
}
