//! What holds for the whole shop: its name and currency, temperatures, ice, tax, and how fine its tasters are.

use egui::{Checkbox, Ui};

use super::item::Counter;
use super::steps;
use crate::book::{AllergenList, ItemId, Settings, TemperatureWindow};
use crate::edit::{Edit, FieldName};
use crate::ui::earlier_states::{Since, earlier_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::form::{Entry, Sheet, columns_ui, section_ui};
use crate::ui::words::{self, quiet_ui};
use crate::workbench::Action;

/// From this width on the steps stand beside the settings, in points.
const TWO: f32 = 1060.0;

/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let speaker = counter.speaker;
    let settings = &counter.book.settings;
    let mut sheet = Sheet::new(
        settings.clone(),
        counter.speaker.units,
        ItemId::Settings,
        Edit::SetSettings,
        &mut view.drafts,
        actions,
    );
    sheet.title(
        ui,
        &Entry::wide(FieldName::NAME, speaker.word("counter-shop-name-named"))
            .hint(speaker.word("counter-shop-name-hint")),
        &settings.shop,
        |item, name| {
            item.shop = name;
        },
    );
    ui.add_space(grid::TIGHT);
    let width = ui.available_width();
    let widths = if width >= TWO {
        vec![460.0, (width - 460.0 - grid::APART).min(640.0)]
    } else {
        vec![width.min(680.0)]
    };
    let mut way = None;
    columns_ui(ui, &widths, |ui, at| {
        if at == 0 {
            money_ui(ui, &mut sheet, settings);
            temperatures_ui(ui, &mut sheet, settings);
            ice_ui(ui, &mut sheet, settings);
            instruments_ui(ui, &mut sheet, settings);
            allergen_lists_ui(ui, &mut sheet, settings);
            let item = ItemId::Settings;
            sheet.other_languages(ui, speaker, &item, &mut view.other_language);
        }
        if at + 1 == widths.len() {
            let since = sheet.beside(Since::of(settings, &ItemId::Settings), Since::edit);
            way = earlier_ui(ui, speaker, settings, &ItemId::Settings, since);
            steps::steps_ui(ui, counter, &mut sheet, settings);
            findings_ui(ui, counter);
        }
    });
    let escaped = sheet.escaped;
    view.area = way.unwrap_or(view.area);
    escaped
}

fn money_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    let speaker = words::speaker(ui.ctx());
    sheet.row(ui, speaker.word("counter-shop-currency"), |sheet, ui| {
        let spot = Entry::number("currency", speaker.word("counter-shop-currency-named"));
        sheet.text(ui, &spot, &before.currency, |item, text| {
            item.currency = text;
        });
    });
    sheet.row(ui, speaker.word("counter-shop-tax"), |sheet, ui| {
        let spot = Entry::number("tax", speaker.word("counter-shop-tax-named"))
            .width(76.0)
            .hint(speaker.word("counter-not-stated-hint"));
        sheet.number(ui, &spot, before.sales_tax_percent, |item, percent| {
            item.sales_tax_percent = percent;
        });
        quiet_ui(ui, speaker.word("counter-shop-tax-unit"));
    });
    sheet.row(ui, speaker.word("counter-note"), |sheet, ui| {
        sheet.text(
            ui,
            &Entry::wide(FieldName::NOTE, speaker.word("counter-shop-note-named")).several_rows(),
            &before.note,
            |item, text| item.note = text,
        );
    });
}

fn temperatures_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    let speaker = words::speaker(ui.ctx());
    section_ui(ui, speaker.word("counter-shop-temperatures"));
    sheet.row(ui, speaker.word("counter-shop-room"), |sheet, ui| {
        let spot = Entry::number("room", speaker.word("counter-shop-room-named"));
        sheet.required_temperature(ui, &spot, before.room_temperature, |item, stated| {
            item.room_temperature = stated;
        });
    });
    let names = (
        "refrigerator",
        speaker.word("counter-shop-refrigerator-named"),
    );
    celsius_ui(
        ui,
        sheet,
        speaker.word("counter-shop-refrigerator"),
        names,
        before.refrigerator_temperature,
        |item, celsius| {
            item.refrigerator_temperature = celsius;
        },
    );
    celsius_ui(
        ui,
        sheet,
        speaker.word("counter-shop-ice-temperature"),
        ("ice", speaker.word("counter-shop-ice-temperature-named")),
        before.ice_temperature,
        |item, celsius| {
            item.ice_temperature = celsius;
        },
    );
    let names = ("hot", speaker.word("counter-shop-hot-named"));
    celsius_ui(
        ui,
        sheet,
        speaker.word("counter-shop-hot"),
        names,
        before.hot_drinking_temperature,
        |item, celsius| {
            item.hot_drinking_temperature = celsius;
        },
    );
    let words = [
        speaker.word("counter-shop-hot-window"),
        speaker.word("counter-shop-hot-from-named"),
        speaker.word("counter-shop-hot-to-named"),
    ];
    window_ui(
        ui,
        sheet,
        ["hot-from", "hot-to"],
        words,
        before.hot_window,
        |item, window| {
            item.hot_window = window;
        },
    );
    let names = ("iced", speaker.word("counter-shop-iced-named"));
    celsius_ui(
        ui,
        sheet,
        speaker.word("counter-shop-iced"),
        names,
        before.iced_drinking_temperature,
        |item, celsius| {
            item.iced_drinking_temperature = celsius;
        },
    );
    let words = [
        speaker.word("counter-shop-iced-window"),
        speaker.word("counter-shop-iced-from-named"),
        speaker.word("counter-shop-iced-to-named"),
    ];
    window_ui(
        ui,
        sheet,
        ["iced-from", "iced-to"],
        words,
        before.iced_window,
        |item, window| {
            item.iced_window = window;
        },
    );
}

fn celsius_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    words: &str,
    (field, name): (&'static str, &str),
    value: f64,
    put: impl FnOnce(&mut Settings, f64),
) {
    sheet.row(ui, words, |sheet, ui| {
        sheet.required(ui, &Entry::number(field, name).metric("°C"), value, put);
    });
}

/// The temperatures between which a kind of drink is served.
fn window_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    [from_field, to_field]: [&'static str; 2],
    [words, coolest, hottest]: [&str; 3],
    window: TemperatureWindow,
    put: impl Fn(&mut Settings, TemperatureWindow),
) {
    let until = words::speaker(ui.ctx()).word("counter-shop-window-to");
    sheet.row(ui, words, |sheet, ui| {
        sheet.required(
            ui,
            &Entry::number(from_field, coolest).metric("°C"),
            window.from,
            |item, from| {
                put(item, TemperatureWindow { from, ..window });
            },
        );
        quiet_ui(ui, until);
        let spot = Entry::number(to_field, hottest);
        sheet.required(ui, &spot.metric("°C"), window.to, |item, to| {
            put(item, TemperatureWindow { to, ..window });
        });
    });
}

fn ice_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    let speaker = words::speaker(ui.ctx());
    section_ui(ui, speaker.word("counter-shop-ice"));
    sheet.row(ui, speaker.word("counter-shop-ice-density"), |sheet, ui| {
        let spot = Entry::number(
            "ice-density",
            speaker.word("counter-shop-ice-density-named"),
        );
        sheet.required(ui, &spot, before.ice_bulk_density, |item, density| {
            item.ice_bulk_density = density;
        });
        quiet_ui(ui, speaker.word("counter-shop-ice-density-unit"));
    });
    assumed_ui(
        ui,
        sheet,
        speaker.word("counter-shop-ice-melts"),
        ("melt", speaker.word("counter-shop-ice-melts-named")),
        (before.ice_melt_rate, "counter-shop-ice-melts-unit"),
        |item, rate| item.ice_melt_rate = rate,
    );
    assumed_ui(
        ui,
        sheet,
        speaker.word("counter-shop-ice-left"),
        ("ice-left", speaker.word("counter-shop-ice-left-named")),
        (before.ice_left, "counter-shop-ice-left-unit"),
        |item, percent| item.ice_left = percent,
    );
}

/// A number that is assumed until the shop has measured it.
fn assumed_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    words: &str,
    (field, name): (&'static str, &str),
    (value, unit): (Option<f64>, &str),
    put: impl FnOnce(&mut Settings, Option<f64>),
) {
    let speaker = words::speaker(ui.ctx());
    sheet.row(ui, words, |sheet, ui| {
        let spot = Entry::number(field, name)
            .width(76.0)
            .hint(speaker.word("counter-shop-assumed"));
        sheet.number(ui, &spot, value, put);
        quiet_ui(ui, speaker.word(unit));
    });
}

/// How well the shop measures, where it knows.
fn instruments_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    let speaker = words::speaker(ui.ctx());
    section_ui(ui, speaker.word("counter-shop-instruments"));
    let instruments = before.instruments;
    assumed_ui(
        ui,
        sheet,
        speaker.word("counter-shop-scale"),
        ("scale", speaker.word("counter-shop-scale-named")),
        (instruments.scale_grams, "counter-shop-scale-unit"),
        |item, grams| item.instruments.scale_grams = grams,
    );
    assumed_ui(
        ui,
        sheet,
        speaker.word("counter-shop-thermometer"),
        (
            "thermometer",
            speaker.word("counter-shop-thermometer-named"),
        ),
        (
            instruments.thermometer_kelvin,
            "counter-shop-thermometer-unit",
        ),
        |item, kelvin| item.instruments.thermometer_kelvin = kelvin,
    );
    assumed_ui(
        ui,
        sheet,
        speaker.word("counter-shop-marks"),
        ("jug", speaker.word("counter-shop-marks-named")),
        (instruments.jug_percent, "counter-shop-marks-unit"),
        |item, percent| item.instruments.jug_percent = percent,
    );
}

/// The lists of allergens that the shop names to its guests. One of them always holds.
fn allergen_lists_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    let speaker = words::speaker(ui.ctx());
    section_ui(ui, speaker.word("counter-shop-allergen-lists"));
    quiet_ui(ui, speaker.word("counter-shop-allergen-lists-what"));
    let lists = before.allergen_lists();
    for list in AllergenList::ALL {
        let mut chosen = lists.contains(&list);
        let is_last = chosen && lists.len() == 1;
        let name = speaker.allergen_list(list);
        let checkbox = ui.add_enabled(!is_last, Checkbox::new(&mut chosen, name));
        if checkbox.changed() {
            let mut lists = lists.clone();
            lists.retain(|other| *other != list);
            if chosen {
                lists.push(list);
                lists.sort_unstable();
            }
            // What holds without a choice needs none.
            if lists == [AllergenList::EuropeanUnion] {
                lists.clear();
            }
            sheet.change("allergen-lists", |item| item.allergen_lists = lists);
        }
    }
}

/// What is wrong with the settings.
fn findings_ui(ui: &mut Ui, counter: Counter<'_>) {
    let palette = theme::palette(ui.visuals());
    for finding in counter
        .findings
        .iter()
        .filter(|finding| finding.place == crate::book::Place::Settings)
    {
        let text = egui::RichText::new(counter.speaker.finding_kind(&finding.kind))
            .font(TypeStyle::Small.font_id())
            .color(palette.off_level);
        ui.add(egui::Label::new(text).wrap());
    }
}
