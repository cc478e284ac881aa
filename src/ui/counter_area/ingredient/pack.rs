//! What the pack says in words: its statement of ingredients, allergens and diets.

use egui::{Checkbox, Ui};

use crate::balance::Verdict;
use crate::book::{Allergen, AllergenStatement, Declared, Ingredient};
use crate::edit::{FieldName, Which};
use crate::say::{Speaker, say};
use crate::ui::field::take_keyboard;
use crate::ui::theme::grid;
use crate::ui::widgets::form::{Entry, Sheet, cell_ui, section_ui, words_ui};
use crate::ui::words::{capitalised, quiet_ui};

pub(super) fn pack_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let before = sheet.item.clone();
    sheet.row(ui, speaker.word("ingredient-statement"), |sheet, ui| {
        let name = speaker.word("ingredient-statement-named");
        let hint = speaker.word("ingredient-statement-hint");
        let spot = Entry::wide("statement", name).hint(hint);
        sheet.text(ui, &spot.several_rows(), &before.statement, |item, text| {
            item.statement = text;
        });
    });
    let word = |stated: &Option<bool>| match stated {
        Some(true) => speaker.verdict(Verdict::Yes),
        Some(false) => speaker.verdict(Verdict::No),
        None => speaker.word("ingredient-not-stated"),
    };
    let all = [Some(true), Some(false), None];
    let vegan = speaker.word("ingredient-vegan");
    sheet.row(ui, vegan, |sheet, ui| {
        let word = |stated: &Option<bool>| word(stated).to_owned();
        sheet.choice(
            ui,
            &Entry::wide("vegan", &capitalised(vegan)),
            &before.diet.vegan,
            &all,
            word,
            |item, to| item.diet.vegan = to,
        );
        let dairy_free = speaker.word("ingredient-dairy-free");
        quiet_ui(ui, dairy_free);
        let name = capitalised(dairy_free);
        let spot = Entry::wide("dairy-free", &name);
        sheet.choice(
            ui,
            &spot,
            &before.diet.dairy_free,
            &all,
            word,
            |item, to| {
                item.diet.dairy_free = to;
            },
        );
    });
}

/// Width of the name of an allergen, in points.
const NAME: f32 = 39.0 * grid::STEP;
/// Width of a column of boxes, in points.
const BOX: f32 = 12.0 * grid::STEP;

/// The fourteen allergens in two columns, once the pack states them, and what else the lists of the shop name.
pub(super) fn allergens_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let allergens = speaker.word("ingredient-allergens");
    section_ui(ui, allergens);
    let before = sheet.item.allergens.clone();
    ui.horizontal(|ui| {
        let word = |stated: &bool| {
            let word = speaker.word(if *stated {
                "ingredient-allergens-stated"
            } else {
                "ingredient-allergens-silent"
            });
            word.to_owned()
        };
        let spot = Entry::wide("allergens", allergens);
        sheet.choice(
            ui,
            &spot,
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
            quiet_ui(ui, speaker.word("ingredient-allergens-none"));
        }
    });
    let Some(stated) = before else { return };
    let two = ui.available_width() >= 2.0 * (NAME + 2.0 * BOX) + grid::EASY;
    let rows = if two {
        Allergen::ANNEX.len().div_ceil(2)
    } else {
        Allergen::ANNEX.len()
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        for _ in 0..if two { 2 } else { 1 } {
            words_ui(ui, "", NAME);
            words_ui(ui, speaker.word("ingredient-allergen-has"), BOX);
            words_ui(
                ui,
                speaker.word("ingredient-allergen-may"),
                BOX + grid::EASY,
            );
        }
    });
    for row in 0..rows {
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 0.0;
            for allergen in Allergen::ANNEX.into_iter().skip(row).step_by(rows) {
                allergen_ui(ui, speaker, sheet, &stated, allergen);
            }
        });
    }
    further_ui(ui, speaker, sheet, &stated);
}

/// What the lists of the shop name beyond the fourteen, and what the pack states all the same: a pack that states its allergens
/// says nothing of these unless somebody has asked.
fn further_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    stated: &AllergenStatement,
) {
    let asked: Vec<Allergen> = speaker.book.settings.further_allergens().collect();
    let is_shown = |allergen: &Allergen| {
        let lists = [&stated.contains, &stated.may_contain, &stated.free_of];
        let is_stated = lists.iter().any(|list| list.contains(allergen));
        !allergen.is_in_annex() && (is_stated || asked.contains(allergen))
    };
    let all = [
        Declared::Contains,
        Declared::MayContain,
        Declared::Free,
        Declared::NotStated,
    ];
    let word = |declared: &Declared| {
        let message = match declared {
            Declared::Contains => "ingredient-declared-contains",
            Declared::MayContain => "ingredient-declared-may-contain",
            Declared::Free => "ingredient-declared-free",
            Declared::NotStated => "ingredient-declared-not-stated",
        };
        speaker.word(message).to_owned()
    };
    for allergen in Allergen::ALL.into_iter().filter(is_shown) {
        let name = speaker.allergen(allergen);
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = 0.0;
            words_ui(ui, name, NAME);
            let declared = stated.says_of(allergen);
            let field = FieldName::of("allergen", Which::Allergen(allergen));
            sheet.choice(
                ui,
                &Entry::wide(field, name),
                &declared,
                &all,
                word,
                |item, declared| {
                    if let Some(stated) = &mut item.allergens {
                        stated.declare(allergen, declared);
                    }
                },
            );
        });
    }
}

fn allergen_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    stated: &AllergenStatement,
    allergen: Allergen,
) {
    let word = speaker.allergen(allergen);
    words_ui(ui, word, NAME);
    let boxes = [
        (
            say!(speaker, "allergens-contains", allergens: word),
            &stated.contains,
            BOX,
        ),
        (
            say!(speaker, "allergens-may-contain", allergens: word),
            &stated.may_contain,
            BOX + grid::EASY,
        ),
    ];
    for (at, (name, list, width)) in boxes.into_iter().enumerate() {
        cell_ui(ui, width, |ui| {
            let mut ticked = list.contains(&allergen);
            let response = ui.add(Checkbox::without_text(&mut ticked));
            let which = Which::Allergen(allergen);
            let field = FieldName::of(["contains", "may-contain"][at], which);
            take_keyboard(ui, &sheet.focus(field.clone()), &response);
            if response.accessible_name(name).changed() {
                sheet.change(field, |item| {
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
