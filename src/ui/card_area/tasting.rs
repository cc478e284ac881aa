//! How a blind tasting is held: the test, how many people taste, what they are asked.

use egui::{ComboBox, RichText, TextEdit, Ui};

use super::named_row::row_ui;
use crate::book::Axis;
use crate::cards::{AskedOfTasters, BlindTasting, Drink};
use crate::say::{Speaker, say};
use crate::tasting::ServingDesign;
use crate::ui::Screen;
use crate::ui::field::select_when_pressed;
use crate::ui::theme::{self, grid};

/// Width of the menus, in points.
const MENU: f32 = 180.0;
/// Width of the fields for a number, in points.
const FIELD: f32 = 15.0 * grid::STEP;

/// A tasting, as typed.
#[derive(Clone, Debug)]
pub struct TastingOrder {
    /// What is put before each person.
    pub design: ServingDesign,
    /// How many people taste, as typed.
    people: String,
    /// What codes and orders are drawn from, as typed.
    seed: String,
    /// What a pair or a ranking asks.
    asked: AskedOfTasters,
}

impl Default for TastingOrder {
    fn default() -> Self {
        Self {
            design: ServingDesign::Triangle,
            people: "6".to_owned(),
            seed: "1".to_owned(),
            asked: AskedOfTasters::More(Axis::Sweetness),
        }
    }
}

impl TastingOrder {
    /// The tasting of these drinks; `None` while something typed is no number.
    pub(super) fn of(&self, samples: Vec<Drink>) -> Option<BlindTasting> {
        Some(BlindTasting {
            design: self.design,
            samples,
            people: self.people.trim().parse().ok()?,
            seed: self.seed.trim().parse().ok()?,
            asked: self.asked.clone(),
        })
    }
}

/// The fields of a tasting.
pub(super) fn tasting_ui(ui: &mut Ui, screen: &Screen<'_>, order: &mut TastingOrder) {
    let speaker = screen.speaker;
    let name = speaker.word("cards-screen-test");
    row_ui(ui, name, |ui| {
        let combo = ComboBox::from_id_salt("test")
            .selected_text(design_words(&speaker, order.design))
            .width(MENU)
            .show_ui(ui, |ui| {
                for design in ServingDesign::ALL {
                    let words = design_words(&speaker, design);
                    ui.selectable_value(&mut order.design, design, words);
                }
            });
        combo.response.accessible_name(name);
    });
    if matches!(order.design, ServingDesign::Pair | ServingDesign::Ranking) {
        let name = speaker.word("cards-screen-asked");
        row_ui(ui, name, |ui| {
            let combo = ComboBox::from_id_salt("asked")
                .selected_text(asked_words(&speaker, &order.asked))
                .width(MENU)
                .show_ui(ui, |ui| {
                    let axes = screen.book.axes().into_iter();
                    let all = axes.map(AskedOfTasters::More);
                    for asked in all.chain([AskedOfTasters::Liking]) {
                        let words = asked_words(&speaker, &asked);
                        ui.selectable_value(&mut order.asked, asked, words);
                    }
                });
            combo.response.accessible_name(name);
        });
    }
    number_ui(ui, speaker.word("cards-screen-tasters"), &mut order.people);
    number_ui(ui, speaker.word("cards-screen-seed"), &mut order.seed);
    if order.of(Vec::new()).is_none() {
        let words = speaker.word("cards-screen-whole-numbers");
        let colour = theme::palette(ui.visuals()).off_level;
        ui.label(RichText::new(words).color(colour));
    }
    ui.add_space(grid::NEAR);
}

fn number_ui(ui: &mut Ui, name: &str, typed: &mut String) {
    row_ui(ui, name, |ui| {
        let field = ui.add(TextEdit::singleline(typed).desired_width(FIELD));
        select_when_pressed(ui, &field, typed);
        field.accessible_name(name);
    });
}

fn design_words(speaker: &Speaker<'_>, design: ServingDesign) -> String {
    say!(speaker, "cards-screen-design", design: design.word())
}

fn asked_words(speaker: &Speaker<'_>, asked: &AskedOfTasters) -> String {
    match asked {
        AskedOfTasters::More(axis) => speaker.more(axis),
        AskedOfTasters::Liking => speaker.word("cards-screen-liked").to_owned(),
    }
}
