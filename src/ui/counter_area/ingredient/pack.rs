//! What the pack says in words: its statement of ingredients, allergens and diets.

use egui::{Checkbox, Ui};

use super::group_ui;
use crate::book::{Allergen, AllergenStatement, Ingredient};
use crate::ui::counter_area::sheet::{Sheet, Spot, cell_ui, words_ui};
use crate::ui::theme::grid;
use crate::ui::words::quiet_ui;

pub(super) fn pack_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    let before = sheet.item.clone();
    sheet.row(ui, "ingredients", |sheet, ui| {
        let spot = Spot::wide("statement", "Ingredient list").hint("as printed on the pack");
        sheet.long_text(ui, spot, &before.statement, |item, text| {
            item.statement = text;
        });
    });
    let word = |stated: &Option<bool>| match stated {
        Some(true) => "yes",
        Some(false) => "no",
        None => "not stated",
    };
    let all = [Some(true), Some(false), None];
    sheet.row(ui, "vegan", |sheet, ui| {
        let word = |stated: &Option<bool>| word(stated).to_owned();
        sheet.choice(
            ui,
            Spot::wide("vegan", "Vegan"),
            &before.diet.vegan,
            &all,
            word,
            |item, to| item.diet.vegan = to,
        );
        quiet_ui(ui, "dairy-free");
        let spot = Spot::wide("dairy-free", "Dairy-free");
        sheet.choice(ui, spot, &before.diet.dairy_free, &all, word, |item, to| {
            item.diet.dairy_free = to;
        });
    });
}

/// Width of the name of an allergen, in points.
const NAME: f32 = 39.0 * grid::STEP;
/// Width of a column of boxes, in points.
const BOX: f32 = 9.0 * grid::STEP;

/// The fourteen allergens in two columns, once the pack states them.
pub(super) fn allergens_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    group_ui(ui, "Allergens");
    let before = sheet.item.allergens.clone();
    ui.horizontal(|ui| {
        let word = |stated: &bool| {
            if *stated {
                "the pack states them"
            } else {
                "the pack says nothing"
            }
            .to_owned()
        };
        let spot = Spot::wide("allergens", "Allergens");
        sheet.choice(
            ui,
            spot,
            &before.is_some(),
            &[false, true],
            word,
            |item, stated| {
                item.allergens = stated.then(AllergenStatement::default);
            },
        );
        if before
            .as_ref()
            .is_some_and(|stated| stated.contains.is_empty() && stated.may_contain.is_empty())
        {
            quiet_ui(ui, "contains none of the fourteen");
        }
    });
    let Some(stated) = before else { return };
    let two = ui.available_width() >= 2.0 * (NAME + 2.0 * BOX) + grid::EASY;
    let rows = if two {
        Allergen::ALL.len().div_ceil(2)
    } else {
        Allergen::ALL.len()
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        for _ in 0..if two { 2 } else { 1 } {
            words_ui(ui, "", NAME);
            words_ui(ui, "has", BOX);
            words_ui(ui, "may", BOX + grid::EASY);
        }
    });
    for row in 0..rows {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 0.0;
            for allergen in Allergen::ALL.into_iter().skip(row).step_by(rows) {
                allergen_ui(ui, sheet, &stated, allergen);
            }
        });
    }
}

fn allergen_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Ingredient>,
    stated: &AllergenStatement,
    allergen: Allergen,
) {
    words_ui(ui, allergen.word(), NAME);
    let boxes = [
        ("contains", &stated.contains, BOX),
        ("may contain", &stated.may_contain, BOX + grid::EASY),
    ];
    for (at, (words, list, width)) in boxes.into_iter().enumerate() {
        cell_ui(ui, width, |ui| {
            let mut ticked = list.contains(&allergen);
            let response = ui.add(Checkbox::without_text(&mut ticked));
            if response
                .accessible_name(format!("{words} {}", allergen.word()))
                .changed()
            {
                sheet.change("allergens", |item| {
                    if let Some(stated) = &mut item.allergens {
                        let list = if at == 0 {
                            &mut stated.contains
                        } else {
                            &mut stated.may_contain
                        };
                        list.retain(|known| *known != allergen);
                        if ticked {
                            list.push(allergen);
                            list.sort_unstable();
                        }
                    }
                });
            }
        });
    }
}
