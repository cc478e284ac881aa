//! What the parts of this area have in common: a name, and the way of a drink into the recipe.

use egui::Ui;

use crate::book::ItemId;
use crate::edit::Focus;
use crate::swap::Adapted;
use crate::ui::Screen;
use crate::ui::area::Area;
use crate::ui::swap_area::version_name;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name;
use crate::workbench::{Action, Shown};

/// A name in a room of its own, so that what stands behind it is aligned.
pub(super) fn name_ui(ui: &mut Ui, name: &str, room: f32) {
    let size = egui::vec2(room, grid::TARGET);
    let layout = egui::Layout::left_to_right(egui::Align::Center);
    ui.allocate_ui_with_layout(size, layout, |ui| {
        ui.set_min_size(size);
        let palette = theme::palette(ui.visuals());
        name::name_ui(ui, name, TypeStyle::Strong, palette.text_strong, room);
    });
}

/// Keeps a drink as a new version, and shows it.
pub(super) fn keep(
    screen: &Screen<'_>,
    drink: &Adapted,
    wanted: &str,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let name = version_name(screen.recipe, wanted);
    let (edit, id) = drink.accept(screen.recipe, screen.shown.version.as_ref(), &name);
    let item = ItemId::Recipe(screen.recipe.id.clone());
    actions.push(Action::edit(edit, Focus::Item(item)));
    view.show(Shown {
        recipe: screen.recipe.id.clone(),
        version: Some(id),
    });
    view.area = Area::Recipe;
}
