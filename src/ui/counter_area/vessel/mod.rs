//! The editor of a vessel: what it holds, its shape, the heat it takes, how it is closed and what goes with it.

mod drawing;
mod extras;

use egui::Ui;

use super::removal;
use super::sheet::{Sheet, Spot, VALUE, columns_ui, section_ui};
use super::{Counter, ItemId};
use crate::book::{Shape, Vessel, VesselId, VesselKind};
use crate::edit::Edit;
use crate::ui::field::TypingError as _;
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::workbench::Action;

/// From this width on the drawing stands beside the fields, in points.
const TWO: f32 = 620.0;

/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    id: &VesselId,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let Some(found) = counter.book.vessel(id).cloned() else {
        return false;
    };
    let item = ItemId::Vessel(id.clone());
    let mut sheet = Sheet::new(
        found.as_ref().clone(),
        counter.units,
        item.place(),
        Edit::PutVessel,
        &mut view.drafts,
        actions,
    );
    let room = ui.available_width() - grid::TARGET - grid::EASY;
    sheet.title(
        ui,
        Spot::wide("name", "Name").width(room),
        &found.name,
        |item, name| item.name = name,
    );
    let state = &view.counter;
    let room = removal::commands_room(ui, counter, &item, state);
    let mut going = None;
    ui.add_space(grid::TIGHT);
    let width = ui.available_width();
    let widths = if width >= TWO {
        vec![width.min(780.0) - 252.0 - grid::APART, 252.0]
    } else {
        vec![width]
    };
    columns_ui(ui, &widths, |ui, at| {
        if at == 0 {
            what_it_is_ui(ui, counter, &mut sheet, &found);
            shape_ui(ui, &mut sheet, &found);
            heat_ui(ui, counter, &mut sheet, &found);
            extras::closures_ui(ui, counter, &mut sheet, &found);
            extras::serviceware_ui(ui, counter, &mut sheet, &found);
        }
        if at + 1 == widths.len() {
            drawing::drawing_ui(ui, &found, counter.units);
            section_ui(ui, "Used in");
            let used = removal::uses_ui(ui, counter, state.shelf.uses.list(&item));
            going = going.take().or(used);
        }
    });
    let asked = removal::commands_ui(ui, room, "Duplicate");
    going = asked.or(going);
    let escaped = sheet.escaped;
    if let Some(going) = going {
        removal::carry_out(going, counter, &item, view, actions);
    }
    escaped
}

const KINDS: [VesselKind; 3] = [VesselKind::Cup, VesselKind::Shaker, VesselKind::Jug];

fn what_it_is_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    before: &Vessel,
) {
    sheet.row(ui, "is a", |sheet, ui| {
        let word = |kind: &VesselKind| kind.word().to_owned();
        sheet.choice(
            ui,
            Spot::wide("kind", "Kind"),
            &before.kind,
            &KINDS,
            word,
            |item, kind| item.kind = kind,
        );
    });
    sheet.row(ui, "capacity to the rim", |sheet, ui| {
        sheet.required_in(
            ui,
            Spot::number("capacity", "Capacity"),
            "ml",
            before.capacity,
            |item, capacity| {
                item.capacity = capacity;
            },
        );
    });
    sheet.row(ui, "one costs", |sheet, ui| {
        let spot = Spot::number("price", "Price of one").hint("no price");
        sheet.number(ui, spot, before.price, |item, price| item.price = price);
        quiet_ui(ui, &counter.book.settings.currency);
    });
    sheet.row(ui, "note", |sheet, ui| {
        sheet.long_text(
            ui,
            Spot::wide("note", "Note"),
            &before.note,
            |item, text| item.note = text,
        );
    });
}

/// Proportions that a shape begins with, mm (common practice, no source); each is measured with a ruler afterwards.
const FIRST_SHAPE: Shape = Shape {
    height: 130.0,
    bottom: 60.0,
    top: 90.0,
};

fn shape_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Vessel>, before: &Vessel) {
    section_ui(ui, "Inside measurements");
    let Some(shape) = before.shape else {
        quiet_ui(ui, "Shape not stated, so a plain cup is drawn.");
        if super::sheet::link_ui(ui, "State its shape").clicked() {
            sheet.change("shape", |item| item.shape = Some(FIRST_SHAPE));
        }
        return;
    };
    let change = |item: &mut Vessel, change: &dyn Fn(&mut Shape)| {
        if let Some(shape) = &mut item.shape {
            change(shape);
        }
    };
    sheet.row(ui, "height", |sheet, ui| {
        sheet.measured(
            ui,
            Spot::number("height", "Height inside"),
            super::sheet::plain(shape.height),
            length,
            |item, mm| {
                change(item, &|shape| shape.height = mm);
            },
        );
        quiet_ui(ui, "mm, bottom to rim");
    });
    sheet.row(ui, "across", |sheet, ui| {
        sheet.measured(
            ui,
            Spot::number("top", "Across the rim"),
            super::sheet::plain(shape.top),
            length,
            |item, mm| {
                change(item, &|shape| shape.top = mm);
            },
        );
        quiet_ui(ui, "mm at the rim,");
        let bottom = Spot::number("bottom", "Across the bottom");
        sheet.measured(
            ui,
            bottom,
            super::sheet::plain(shape.bottom),
            length,
            |item, mm| {
                change(item, &|shape| shape.bottom = mm);
            },
        );
        quiet_ui(ui, "mm at the bottom");
    });
    if super::sheet::link_ui(ui, "Forget the shape").clicked() {
        sheet.change("shape", |item| item.shape = None);
    }
}

fn length(text: &str) -> Result<f64, String> {
    match crate::quantity::parse_number(text.trim().trim_end_matches("mm")) {
        Ok(length) if length > 0.0 => Ok(length),
        Ok(_) => Err(format!("a length is more than 0 mm; found `{text}`")),
        Err(error) => Err(error.said(crate::say::Speaker::without_book())),
    }
}

fn heat_ui(ui: &mut Ui, counter: Counter<'_>, sheet: &mut Sheet<'_, Vessel>, before: &Vessel) {
    section_ui(ui, "The heat it takes");
    sheet.row(ui, "weighs", |sheet, ui| {
        let spot = Spot::number("mass", "Mass").width(VALUE).hint("not stated");
        sheet.number(ui, spot, before.mass, |item, mass| item.mass = mass);
        quiet_ui(ui, "g");
    });
    sheet.row(ui, "specific heat", |sheet, ui| {
        let spot = Spot::number("heat", "Specific heat")
            .width(VALUE)
            .hint("not stated");
        sheet.number(ui, spot, before.specific_heat, |item, heat| {
            item.specific_heat = heat;
        });
        quiet_ui(
            ui,
            "kJ/(kg K): paper 1.4, plastic 1.7, glass 0.84, steel 0.5",
        );
    });
    let room = counter
        .units
        .of("°C")
        .trimmed(counter.book.settings.room_temperature, 1);
    sheet.row(ui, "starts at", |sheet, ui| {
        let spot = Spot::number("temperature", "Temperature at the start")
            .width(VALUE)
            .hint(&room);
        sheet.number_in(ui, spot, "°C", before.temperature, |item, celsius| {
            item.temperature = celsius;
        });
    });
    sheet.row(ui, "cooling time", |sheet, ui| {
        let spot = Spot::number("cooling", "Cooling time constant")
            .width(VALUE)
            .hint("not stated");
        sheet.number(ui, spot, before.cooling_minutes, |item, minutes| {
            item.cooling_minutes = minutes;
        });
        quiet_ui(
            ui,
            "minutes for a full, open cup to cool 63 % of the way to room temperature",
        );
    });
    if let Some(run) = &before.cooling_run {
        let words = format!(
            "{} thermometer readings are used instead of this time.",
            run.readings.len()
        );
        quiet_ui(ui, &words);
    }
}
