//! The editor of an ingredient: what the pack says, what it costs, and beside it what is missing and what does not add up.

mod beside;
mod checks;
mod composition;
mod house_made;
mod pack;
mod piece;
mod price;
mod price_history;
mod sold;
mod sweetness;
mod tasted;

pub(in crate::ui) use self::house_made::begin_reference_brew;

use egui::Ui;

use super::item::{Counter, CounterItem};
use super::removal::{self, Going};
use super::state::CounterState;
use crate::book::{Evidence, Form, Ingredient, IngredientId, ItemId, Role};
use crate::edit::{Edit, FieldName};
use crate::say::Speaker;
use crate::ui::earlier_states::{Since, earlier_ui};
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::ui::widgets::asked_figure::Asked;
use crate::ui::widgets::form::{Entry, Sheet, columns_ui};
use crate::ui::words::{capitalised, quiet_ui};
use crate::workbench::{Action, lines_to_usual_stage};

/// From this width on the editor has three columns, in points.
const THREE: f32 = 1210.0;
/// From this width on it has two, in points.
const TWO: f32 = 620.0;
/// Width of the first of three columns, in points.
const FIRST: f32 = 428.0;
/// Width of the column beside, in points.
const BESIDE: f32 = 288.0;
/// From this width on the column beside has more room, in points.
const ROOMY: f32 = 820.0;
/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    id: &IngredientId,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let Some(found) = counter.book.ingredient(id).cloned() else {
        return false;
    };
    let speaker = counter.speaker;
    let item = CounterItem::Ingredient(id.clone());
    let mut sheet = Sheet::new(
        found.as_ref().clone(),
        counter.speaker.units,
        item.id(),
        Edit::PutIngredient,
        &mut view.drafts,
        actions,
    );
    let room = ui.available_width() - grid::TARGET - grid::EASY;
    sheet.title(
        ui,
        &Entry::wide(FieldName::NAME, speaker.word("ingredient-name")).width(room),
        &found.name,
        |item, name| item.name = name,
    );
    let room = removal::commands_room(ui, counter, &item, state);
    let mut going = None;
    ui.add_space(grid::TIGHT);
    let width = ui.available_width();
    let widths = match width {
        width if width >= THREE => vec![FIRST, width - FIRST - BESIDE - 2.0 * grid::APART, BESIDE],
        width if width >= TWO => {
            let beside = if width >= ROOMY { BESIDE } else { 216.0 };
            vec![width - beside - grid::APART, beside]
        }
        _ => vec![width],
    };
    let last = widths.len() - 1;
    let mut escaped = false;
    let (tasted, mut way) = (ItemId::Ingredient(id.clone()), None);
    columns_ui(ui, &widths, |ui, at| {
        if at == 0 {
            what_it_is_ui(ui, counter, &mut sheet, &mut going);
            pack::pack_ui(ui, speaker, &mut sheet);
        }
        if at == last / 2 {
            composition::composition_ui(ui, speaker, &mut sheet);
            sweetness::sweetness_ui(ui, speaker, &mut sheet);
        }
        if at == 0 {
            pack::allergens_ui(ui, speaker, &mut sheet);
            let item = ItemId::Ingredient(id.clone());
            sheet.other_languages(ui, speaker, &item, &mut view.other_language);
        }
        escaped |= sheet.escaped;
        if at == last {
            let since = sheet.beside(Since::of(&*found, &tasted), Since::edit);
            way = earlier_ui(ui, speaker, &*found, &tasted, since);
            tasted::tasted_ui(ui, counter, &mut sheet, &found);
            let wished = beside::beside_ui(ui, counter, &found);
            going = going.take().or(wished);
        }
    });
    let asked = removal::commands_ui(ui, room, speaker.word("ingredient-duplicate"));
    going = asked.or(going);
    drop(sheet);
    view.area = way.unwrap_or(view.area);
    if let Some(going) = going {
        removal::carry_out(going, counter, &item, state, view, actions);
    }
    escaped
}

fn what_it_is_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    going: &mut Option<Going>,
) {
    let speaker = counter.speaker;
    let before = sheet.item.clone();
    let brand = speaker.word("ingredient-brand");
    sheet.row(ui, brand, |sheet, ui| {
        let name = capitalised(brand);
        let spot = Entry::wide(FieldName::BRAND, &name);
        sheet.text(ui, &spot, &before.brand, |item, text| item.brand = text);
    });
    let supplier = speaker.word("ingredient-supplier");
    sheet.row(ui, supplier, |sheet, ui| {
        let name = capitalised(supplier);
        let spot = Entry::wide("supplier", &name);
        sheet.text(ui, &spot, &before.supplier, |item, text| {
            item.supplier = text;
        });
    });
    sheet.row(ui, speaker.word("ingredient-lot"), |sheet, ui| {
        let spot = Entry::wide("lot", speaker.word("ingredient-lot-named"));
        sheet.text(ui, &spot, &before.lot, |item, text| item.lot = text);
    });
    let form = speaker.word("ingredient-form");
    sheet.row(ui, form, |sheet, ui| {
        let name = capitalised(form);
        sheet.choice_with(
            ui,
            &Entry::wide("form", &name),
            &before.form,
            &Form::ALL,
            |form| speaker.form(*form).to_owned(),
            |item, form| {
                item.form = form;
                lines_to_usual_stage(counter.book, &before, item)
            },
        );
        quiet_ui(ui, speaker.word("ingredient-role"));
        let role = Entry::wide("role", speaker.word("ingredient-role-named"));
        sheet.choice(
            ui,
            &role,
            &before.role,
            &Role::ALL,
            |role| speaker.role(*role).to_owned(),
            |item, role| item.role = role,
        );
    });
    let room = counter
        .speaker
        .units
        .of("°C")
        .trimmed(counter.book.settings.room_temperature.celsius(), 1);
    let room = speaker.digits(&room);
    let temperature = speaker.word("ingredient-temperature");
    sheet.row(ui, temperature, |sheet, ui| {
        let name = capitalised(temperature);
        let spot = Entry::number("temperature", &name).hint(&room);
        sheet.temperature(ui, &spot, before.temperature, |item, stated| {
            item.temperature = stated;
        });
    });
    sheet.row(ui, speaker.word("ingredient-opened"), |sheet, ui| {
        let spot = Entry::number("opened", speaker.word("ingredient-opened-named")).hint("–");
        sheet.number(ui, &spot, before.opened_life_hours, |item, hours| {
            item.opened_life_hours = hours;
        });
        quiet_ui(ui, speaker.word("ingredient-hours"));
    });
    density_ui(ui, speaker, sheet, &before);
    piece::piece_ui(ui, counter, sheet, &before);
    house_made::source_ui(ui, counter, sheet, &before, going);
    price::price_ui(ui, counter, sheet, &before);
    price_history::price_history_ui(ui, counter, sheet, &before);
    sold::sold_ui(ui, counter, sheet, &before, going);
    let note = speaker.word("ingredient-note");
    sheet.row(ui, note, |sheet, ui| {
        let name = capitalised(note);
        let spot = Entry::wide(FieldName::NOTE, &name);
        sheet.text(ui, &spot.several_rows(), &before.note, |item, text| {
            item.note = text;
        });
    });
}

/// How heavy a millilitre is: of a liquid, or of a powder as it is poured.
fn density_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
) {
    fn asked<'asked>(field: &'static str, name: &'asked str) -> Asked<'asked> {
        Asked {
            field: field.into(),
            name,
            unit: "g/ml",
            unit_width: 30.0,
            factor: 1.0,
            first: Evidence::Assumed,
        }
    }
    // A form shows the one that it is measured by; the other stays in sight while it is stated.
    if !before.form.is_dry() || before.density.is_some() {
        let density = speaker.word("ingredient-density");
        sheet.row(ui, density, |sheet, ui| {
            let name = capitalised(density);
            let asked = asked("density", &name);
            sheet.figure(ui, &asked, before.density, |item, figure| {
                item.density = figure;
            });
        });
    }
    if before.form.is_dry() || before.bulk_density.is_some() {
        sheet.row(
            ui,
            speaker.word("ingredient-poured-density"),
            |sheet, ui| {
                let asked = asked("bulk", speaker.word("ingredient-poured-density-named"));
                sheet.figure(ui, &asked, before.bulk_density, |item, figure| {
                    item.bulk_density = figure;
                });
            },
        );
    }
}
