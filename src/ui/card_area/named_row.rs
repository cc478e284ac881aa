//! A row of the choices for a card: words in a column of their own, then what is chosen.

use egui::Ui;

use crate::ui::theme::grid;

/// Room for the words before a field, in points.
pub(super) const LABEL: f32 = 96.0;

/// A row of the choices: words, then their field.
pub(super) fn row_ui(ui: &mut Ui, words: &str, contents: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        let (rect, _) =
            ui.allocate_exact_size(egui::vec2(LABEL, grid::TARGET), egui::Sense::hover());
        let mut label = ui.new_child(
            egui::UiBuilder::new()
                .max_rect(rect)
                .layout(egui::Layout::left_to_right(egui::Align::Center)),
        );
        label.label(words);
        contents(ui);
    });
}
