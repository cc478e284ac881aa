//! The editor of a measure: its readings, and what they say of one use.

mod control;
mod readings;
mod results;

use egui::Ui;

use super::item::{Counter, CounterItem};
use super::removal;
use super::state::CounterState;
use super::uses::UsesOfBook;
use crate::book::{Filling, ItemId, Measure, MeasureId, MeasureKind, Nominal};
use crate::edit::{Edit, FieldName};
use crate::ui::earlier_states::{Since, earlier_ui};
use crate::ui::theme::grid;
use crate::ui::view_state::ViewState;
use crate::ui::widgets::form::{Entry, Sheet, columns_ui, section_ui};
use crate::ui::words::{self, quiet_ui};
use crate::workbench::Action;

/// From this width on the results stand beside the readings, in points.
const TWO: f32 = 780.0;

/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    id: &MeasureId,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let Some(found) = counter.book.measure(id).cloned() else {
        return false;
    };
    let item = CounterItem::Measure(id.clone());
    let mut sheet = Sheet::new(
        found.as_ref().clone(),
        counter.speaker.units,
        item.id(),
        Edit::PutMeasure,
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
    let (tasted, mut way) = (ItemId::Measure(id.clone()), None);
    ui.add_space(grid::TIGHT);
    let width = ui.available_width();
    let widths = if width >= TWO {
        vec![460.0, (width - 460.0 - grid::APART).min(420.0)]
    } else {
        vec![width]
    };
    columns_ui(ui, &widths, |ui, at| {
        if at == 0 {
            what_it_is_ui(ui, &mut sheet, &found);
            readings::readings_ui(ui, counter, &mut sheet, &found, &mut state.next_readings);
            let item = ItemId::Measure(id.clone());
            sheet.other_languages(ui, counter.speaker, &item, &mut view.other_language);
        }
        if at + 1 == widths.len() {
            results::results_ui(ui, counter, &found);
            if let Some(kept) = control::control_ui(ui, counter, &found) {
                sheet.change("reading", |item| item.readings = kept);
                for place in 0..found.readings.len() {
                    for column in ["reading-uses", "reading-amount", "reading-day"] {
                        sheet.forget_draft(FieldName::at(column, place));
                    }
                }
            }
            let since = sheet.beside(Since::of(&*found, &tasted), Since::edit);
            way = earlier_ui(ui, counter.speaker, &*found, &tasted, since);
            section_ui(ui, counter.speaker.word("counter-used-in"));
            let uses = counter.answers.to(&UsesOfBook);
            let used = removal::uses_ui(ui, counter, uses.list(&item));
            going = going.take().or(used);
        }
    });
    let asked = removal::commands_ui(ui, room, counter.speaker.word("counter-measure-duplicate"));
    going = asked.or(going);
    let escaped = sheet.escaped;
    view.area = way.unwrap_or(view.area);
    if let Some(going) = going {
        removal::carry_out(going, counter, &item, state, view, actions);
    }
    escaped
}

#[derive(Clone, Copy, PartialEq)]
enum Called {
    Nothing,
    Millilitres,
    Grams,
}

fn what_it_is_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Measure>, before: &Measure) {
    let speaker = words::speaker(ui.ctx());
    sheet.row(ui, speaker.word("counter-measure-kind"), |sheet, ui| {
        let word = |kind: &MeasureKind| speaker.measure_kind(*kind).to_owned();
        sheet.choice(
            ui,
            &Entry::wide("kind", speaker.word("counter-kind-named")),
            &before.kind,
            &MeasureKind::ALL,
            word,
            |item, kind| item.kind = kind,
        );
        if matches!(
            before.kind,
            MeasureKind::Scoop | MeasureKind::Spoon | MeasureKind::IceScoop
        ) {
            quiet_ui(ui, speaker.word("counter-measure-filled"));
            let word = |filling: &Filling| speaker.filling(*filling).to_owned();
            let all = [Filling::Levelled, Filling::Heaped];
            let spot = Entry::wide("filling", speaker.word("counter-measure-filled-named"));
            sheet.choice(ui, &spot, &before.filling, &all, word, |item, filling| {
                item.filling = filling;
            });
        }
    });
    nominal_ui(ui, sheet, before);
    let usual = crate::ui::widgets::form::plain(before.kind.usual_increment());
    sheet.row(ui, speaker.word("counter-measure-step"), |sheet, ui| {
        let spot =
            Entry::number("increment", speaker.word("counter-measure-step-named")).hint(&usual);
        sheet.number(ui, &spot, before.increment, |item, increment| {
            item.increment = increment;
        });
        quiet_ui(ui, &speaker.uses_word(before.kind));
    });
    if before.kind == MeasureKind::Button || before.temperature.is_some() {
        sheet.row(ui, speaker.word("counter-measure-pours"), |sheet, ui| {
            let spot = Entry::number("temperature", speaker.word("counter-measure-pours-named"))
                .hint(speaker.word("counter-measure-pours-hint"));
            sheet.temperature(ui, &spot, before.temperature, |item, stated| {
                item.temperature = stated;
            });
        });
    }
    sheet.row(ui, speaker.word("counter-note"), |sheet, ui| {
        sheet.text(
            ui,
            &Entry::wide(FieldName::NOTE, speaker.word("counter-note-named")).several_rows(),
            &before.note,
            |item, text| item.note = text,
        );
    });
}

/// What it is called to hold.
fn nominal_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Measure>, before: &Measure) {
    let (kind, value) = match before.nominal {
        None => (Called::Nothing, None),
        Some(Nominal::Volume(value)) => (Called::Millilitres, Some(value)),
        Some(Nominal::Mass(value)) => (Called::Grams, Some(value)),
    };
    let speaker = words::speaker(ui.ctx());
    sheet.row(ui, speaker.word("counter-measure-size"), |sheet, ui| {
        let volumes = sheet.units.of("ml");
        let spot = Entry::number("nominal", speaker.word("counter-measure-size-named")).hint("–");
        let unit = if kind == Called::Grams {
            sheet.units.of("g")
        } else {
            volumes
        };
        let shown = value.map(|value| crate::ui::widgets::form::in_unit(&unit, value));
        let read = |text: &str| unit.read_optional(text);
        sheet.read(
            ui,
            &spot,
            &shown.unwrap_or_default(),
            read,
            |item, value| {
                item.nominal = value.map(|value| match item.nominal {
                    Some(Nominal::Mass(_)) => Nominal::Mass(value),
                    _ => Nominal::Volume(value),
                });
            },
        );
        let all = [Called::Millilitres, Called::Grams];
        let word = |called: &Called| {
            let unit = if *called == Called::Grams {
                "g"
            } else {
                volumes.symbol
            };
            unit.to_owned()
        };
        let current = if kind == Called::Nothing {
            Called::Millilitres
        } else {
            kind
        };
        let spot = Entry::wide(
            "nominal-unit",
            speaker.word("counter-measure-size-unit-named"),
        );
        sheet.choice(ui, &spot, &current, &all, word, |item, called| {
            item.nominal = value.map(|value| match called {
                Called::Grams => Nominal::Mass(value),
                _ => Nominal::Volume(value),
            });
        });
    });
}
