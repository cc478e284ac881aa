//! The editor of a vessel: what it holds, its shape, the heat it takes, how it is closed and what goes with it.

mod drawing;
mod extras;

use egui::Ui;

use super::item::{Counter, CounterItem};
use super::removal;
use super::state::CounterState;
use super::uses::UsesOfBook;
use crate::book::{ItemId, Shape, Vessel, VesselId, VesselKind};
use crate::edit::{Edit, FieldName};
use crate::say::{Speaker, say};
use crate::ui::earlier_states::{Since, earlier_ui};
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::ui::widgets::asked_figure::VALUE;
use crate::ui::widgets::form::{Entry, Sheet, columns_ui, section_ui};
use crate::ui::words::{self, quiet_ui};
use crate::workbench::Action;

/// From this width on the drawing stands beside the fields, in points.
const TWO: f32 = 620.0;

/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    id: &VesselId,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let Some(found) = counter.book.vessel(id).cloned() else {
        return false;
    };
    let item = CounterItem::Vessel(id.clone());
    let mut sheet = Sheet::new(
        found.as_ref().clone(),
        counter.speaker.units,
        item.id(),
        Edit::PutVessel,
        &mut view.drafts,
        actions,
    );
    let room = ui.available_width() - grid::TARGET - grid::EASY;
    sheet.title(
        ui,
        &Entry::wide(FieldName::NAME, counter.speaker.word("counter-name")).width(room),
        &found.name,
        |item, name| item.name = name,
    );
    let room = removal::commands_room(ui, counter, &item, state);
    let mut going = None;
    let (tasted, mut way) = (ItemId::Vessel(id.clone()), None);
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
            let item = ItemId::Vessel(id.clone());
            sheet.other_languages(ui, counter.speaker, &item, &mut view.other_language);
        }
        if at + 1 == widths.len() {
            drawing::drawing_ui(ui, &found, counter.speaker);
            let since = sheet.beside(Since::of(&*found, &tasted), Since::edit);
            way = earlier_ui(ui, counter.speaker, &*found, &tasted, since);
            section_ui(ui, counter.speaker.word("counter-used-in"));
            let uses = counter.answers.to(&UsesOfBook);
            let used = removal::uses_ui(ui, counter, uses.list(&item));
            going = going.take().or(used);
        }
    });
    let asked = removal::commands_ui(ui, room, counter.speaker.word("counter-duplicate"));
    going = asked.or(going);
    let escaped = sheet.escaped;
    view.area = way.unwrap_or(view.area);
    if let Some(going) = going {
        removal::carry_out(going, counter, &item, state, view, actions);
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
    let speaker = counter.speaker;
    sheet.row(ui, speaker.word("counter-vessel-kind"), |sheet, ui| {
        let word = |kind: &VesselKind| speaker.vessel_kind(*kind).to_owned();
        sheet.choice(
            ui,
            &Entry::wide("kind", speaker.word("counter-kind-named")),
            &before.kind,
            &KINDS,
            word,
            |item, kind| item.kind = kind,
        );
    });
    sheet.row(ui, speaker.word("counter-vessel-capacity"), |sheet, ui| {
        sheet.required(
            ui,
            &Entry::number("capacity", speaker.word("counter-vessel-capacity-named")).metric("ml"),
            before.capacity,
            |item, capacity| {
                item.capacity = capacity;
            },
        );
    });
    sheet.row(ui, speaker.word("counter-vessel-price"), |sheet, ui| {
        let spot = Entry::number("price", speaker.word("counter-vessel-price-named"))
            .hint(speaker.word("counter-no-price"));
        sheet.number(ui, &spot, before.price, |item, price| item.price = price);
        quiet_ui(ui, &counter.book.settings.currency);
    });
    sheet.row(ui, speaker.word("counter-note"), |sheet, ui| {
        sheet.text(
            ui,
            &Entry::wide(FieldName::NOTE, speaker.word("counter-note-named")).several_rows(),
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
    let speaker = words::speaker(ui.ctx());
    section_ui(ui, speaker.word("counter-vessel-inside"));
    let Some(shape) = before.shape else {
        quiet_ui(ui, speaker.word("counter-vessel-no-shape"));
        if crate::ui::widgets::form::link_ui(ui, speaker.word("counter-vessel-state-shape"))
            .clicked()
        {
            sheet.change("height", |item| item.shape = Some(FIRST_SHAPE));
        }
        return;
    };
    let change = |item: &mut Vessel, change: &dyn Fn(&mut Shape)| {
        if let Some(shape) = &mut item.shape {
            change(shape);
        }
    };
    sheet.row(ui, speaker.word("counter-vessel-height"), |sheet, ui| {
        sheet.read(
            ui,
            &Entry::number("height", speaker.word("counter-vessel-height-named")),
            &crate::ui::widgets::form::plain(shape.height),
            |text| length(speaker, text),
            |item, mm| {
                change(item, &|shape| shape.height = mm);
            },
        );
        quiet_ui(ui, speaker.word("counter-vessel-height-unit"));
    });
    sheet.row(ui, speaker.word("counter-vessel-across"), |sheet, ui| {
        sheet.read(
            ui,
            &Entry::number("top", speaker.word("counter-vessel-top-named")),
            &crate::ui::widgets::form::plain(shape.top),
            |text| length(speaker, text),
            |item, mm| {
                change(item, &|shape| shape.top = mm);
            },
        );
        quiet_ui(ui, speaker.word("counter-vessel-top-unit"));
        let bottom = Entry::number("bottom", speaker.word("counter-vessel-bottom-named"));
        sheet.read(
            ui,
            &bottom,
            &crate::ui::widgets::form::plain(shape.bottom),
            |text| length(speaker, text),
            |item, mm| {
                change(item, &|shape| shape.bottom = mm);
            },
        );
        quiet_ui(ui, speaker.word("counter-vessel-bottom-unit"));
    });
    if crate::ui::widgets::form::link_ui(ui, speaker.word("counter-vessel-forget-shape")).clicked()
    {
        sheet.change("height", |item| item.shape = None);
    }
}

fn length(speaker: Speaker<'_>, text: &str) -> Result<f64, String> {
    match crate::quantity::parse_number(text.trim().trim_end_matches("mm")) {
        Ok(length) if length > 0.0 => Ok(length),
        Ok(_) => Err(say!(speaker, "counter-error-length", found: text)),
        Err(error) => Err(speaker.number_error(&error)),
    }
}

fn heat_ui(ui: &mut Ui, counter: Counter<'_>, sheet: &mut Sheet<'_, Vessel>, before: &Vessel) {
    let speaker = counter.speaker;
    let not_stated = speaker.word("counter-not-stated");
    section_ui(ui, speaker.word("counter-vessel-heat"));
    sheet.row(ui, speaker.word("counter-vessel-mass"), |sheet, ui| {
        let spot = Entry::number("mass", speaker.word("counter-vessel-mass-named"))
            .width(VALUE)
            .hint(not_stated);
        sheet.number(ui, &spot, before.mass, |item, mass| item.mass = mass);
        quiet_ui(ui, "g");
    });
    sheet.row(
        ui,
        speaker.word("counter-vessel-specific-heat"),
        |sheet, ui| {
            let spot = Entry::number("heat", speaker.word("counter-vessel-specific-heat-named"))
                .width(VALUE)
                .hint(not_stated);
            sheet.number(ui, &spot, before.specific_heat, |item, heat| {
                item.specific_heat = heat;
            });
            quiet_ui(ui, speaker.word("counter-vessel-specific-heat-unit"));
        },
    );
    let room = counter
        .speaker
        .units
        .of("°C")
        .trimmed(counter.book.settings.room_temperature.celsius(), 1);
    sheet.row(
        ui,
        speaker.word("counter-vessel-temperature"),
        |sheet, ui| {
            let spot = Entry::number(
                "temperature",
                speaker.word("counter-vessel-temperature-named"),
            )
            .width(VALUE)
            .hint(&room);
            sheet.number(
                ui,
                &spot.metric("°C"),
                before.temperature,
                |item, celsius| {
                    item.temperature = celsius;
                },
            );
        },
    );
    sheet.row(ui, speaker.word("counter-vessel-cooling"), |sheet, ui| {
        let spot = Entry::number("cooling", speaker.word("counter-vessel-cooling-named"))
            .width(VALUE)
            .hint(not_stated);
        sheet.number(ui, &spot, before.cooling_minutes, |item, minutes| {
            item.cooling_minutes = minutes;
        });
        quiet_ui(ui, speaker.word("counter-vessel-cooling-unit"));
    });
    if let Some(run) = &before.cooling_run {
        let words = say!(speaker, "counter-vessel-cooling-run", count: run.readings.len());
        quiet_ui(ui, &words);
    }
}
