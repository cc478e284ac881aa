//! What holds for the whole shop: its name and currency, temperatures, ice, tax, and how fine its tasters are.

use egui::Ui;

use super::sheet::{Sheet, Spot, columns_ui, section_ui};
use super::{Counter, steps};
use crate::book::{Instruments, Settings, TemperatureWindow};
use crate::edit::Edit;
use crate::say::Speaker;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::workbench::Action;

/// From this width on the steps stand beside the settings, in points.
const TWO: f32 = 1060.0;

/// What the settings are called among the items of the counter.
pub(super) const PLACE: &str = "shop/settings";

/// The editor; tells whether a field was left with Escape.
pub(super) fn editor_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) -> bool {
    let settings = &counter.book.settings;
    let mut sheet = Sheet::new(
        settings.clone(),
        counter.units,
        PLACE,
        Edit::SetSettings,
        &mut view.drafts,
        actions,
    );
    sheet.title(
        ui,
        Spot::wide("shop", "Name of the shop").hint("the shop's name"),
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
    columns_ui(ui, &widths, |ui, at| {
        if at == 0 {
            money_ui(ui, &mut sheet, settings);
            temperatures_ui(ui, &mut sheet, settings);
            ice_ui(ui, &mut sheet, settings);
            instruments_ui(ui, &mut sheet, settings);
        }
        if at + 1 == widths.len() {
            steps::steps_ui(ui, counter, &mut sheet, settings);
            findings_ui(ui, counter);
        }
    });
    sheet.escaped
}

fn money_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    sheet.row(ui, "currency", |sheet, ui| {
        let spot = Spot::number("currency", "Currency");
        sheet.text(ui, spot, &before.currency, |item, text| {
            item.currency = text;
        });
    });
    sheet.row(ui, "sales tax", |sheet, ui| {
        let spot = Spot::number("tax", "Sales tax in percent")
            .width(76.0)
            .hint("not stated");
        sheet.number(ui, spot, before.sales_tax_percent, |item, percent| {
            item.sales_tax_percent = percent;
        });
        quiet_ui(ui, "% within the menu price");
    });
    sheet.row(ui, "note", |sheet, ui| {
        sheet.long_text(
            ui,
            Spot::wide("note", "Note on the book"),
            &before.note,
            |item, text| item.note = text,
        );
    });
}

fn temperatures_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    section_ui(ui, "Temperatures");
    celsius_ui(
        ui,
        sheet,
        "the room",
        ["room", "Temperature of the room"],
        before.room_temperature,
        |item, celsius| {
            item.room_temperature = celsius;
        },
    );
    let names = ["refrigerator", "Temperature of the refrigerator"];
    celsius_ui(
        ui,
        sheet,
        "the refrigerator",
        names,
        before.refrigerator_temperature,
        |item, celsius| {
            item.refrigerator_temperature = celsius;
        },
    );
    celsius_ui(
        ui,
        sheet,
        "the ice",
        ["ice", "Temperature of the ice"],
        before.ice_temperature,
        |item, celsius| {
            item.ice_temperature = celsius;
        },
    );
    let names = ["hot", "Hot drinks are tasted at"];
    celsius_ui(
        ui,
        sheet,
        "hot, tasted at",
        names,
        before.hot_drinking_temperature,
        |item, celsius| {
            item.hot_drinking_temperature = celsius;
        },
    );
    window_ui(ui, sheet, "hot", before.hot_window, |item, window| {
        item.hot_window = window;
    });
    let names = ["iced", "Iced drinks are tasted at"];
    celsius_ui(
        ui,
        sheet,
        "iced, tasted at",
        names,
        before.iced_drinking_temperature,
        |item, celsius| {
            item.iced_drinking_temperature = celsius;
        },
    );
    window_ui(ui, sheet, "iced", before.iced_window, |item, window| {
        item.iced_window = window;
    });
}

fn celsius_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    words: &str,
    [field, name]: [&str; 2],
    value: f64,
    put: impl FnOnce(&mut Settings, f64),
) {
    sheet.row(ui, words, |sheet, ui| {
        sheet.required_in(ui, Spot::number(field, name), "°C", value, put);
    });
}

/// The temperatures between which a kind of drink is served.
fn window_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    kind: &str,
    window: TemperatureWindow,
    put: impl Fn(&mut Settings, TemperatureWindow),
) {
    sheet.row(ui, &format!("{kind}, served"), |sheet, ui| {
        let (field, name) = (
            format!("{kind} from"),
            format!("Coolest that is served {kind}"),
        );
        sheet.required_in(
            ui,
            Spot::number(&field, &name),
            "°C",
            window.from,
            |item, from| {
                put(item, TemperatureWindow { from, ..window });
            },
        );
        quiet_ui(ui, "to");
        let (field, name) = (
            format!("{kind} to"),
            format!("Hottest that is served {kind}"),
        );
        let spot = Spot::number(&field, &name);
        sheet.required_in(ui, spot, "°C", window.to, |item, to| {
            put(item, TemperatureWindow { to, ..window });
        });
    });
}

fn ice_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    section_ui(ui, "Ice");
    sheet.row(ui, "as it lies", |sheet, ui| {
        let spot = Spot::number("ice density", "Bulk density of ice");
        sheet.required(ui, spot, before.ice_bulk_density, |item, density| {
            item.ice_bulk_density = density;
        });
        quiet_ui(
            ui,
            "g/ml; weigh a level scoop of it and measure the scoop with water",
        );
    });
    sheet.row(ui, "melts", |sheet, ui| {
        let spot = Spot::number("melt", "Ice that melts in a minute")
            .width(76.0)
            .hint("assumed");
        sheet.number(ui, spot, before.ice_melt_rate, |item, rate| {
            item.ice_melt_rate = rate;
        });
        quiet_ui(ui, "g a minute in a drink that stands");
    });
}

/// How well the shop measures, where it knows.
fn instruments_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings) {
    section_ui(ui, "How well you measure");
    let instruments = before.instruments;
    let mut row = |words: &str,
                   names: [&str; 2],
                   value,
                   unit: &str,
                   put: fn(&mut Instruments, Option<f64>)| {
        sheet.row(ui, words, |sheet, ui| {
            let spot = Spot::number(names[0], names[1]).width(76.0).hint("assumed");
            sheet.number(ui, spot, value, |item: &mut Settings, number| {
                put(&mut item.instruments, number);
            });
            quiet_ui(ui, unit);
        });
    };
    row(
        "the scale shows",
        ["scale", "Steps of the scale in grams"],
        instruments.scale_grams,
        "g steps",
        |instruments, grams| instruments.scale_grams = grams,
    );
    row(
        "temperatures are",
        ["thermometer", "How far a temperature may be off"],
        instruments.thermometer_kelvin,
        "K off at most",
        |instruments, kelvin| instruments.thermometer_kelvin = kelvin,
    );
    row(
        "marks are",
        ["jug", "How far a mark may be off in percent"],
        instruments.jug_percent,
        "% off at most",
        |instruments, percent| instruments.jug_percent = percent,
    );
}

/// What is wrong with the settings.
fn findings_ui(ui: &mut Ui, counter: Counter<'_>) {
    let palette = theme::palette(ui.visuals());
    let speaker = Speaker::new(counter.book).in_units(counter.units);
    for finding in counter
        .findings
        .iter()
        .filter(|finding| finding.place == crate::book::Place::Settings)
    {
        let text = egui::RichText::new(speaker.finding_kind(&finding.kind))
            .font(TypeStyle::Small.font_id())
            .color(palette.off_level);
        ui.add(egui::Label::new(text).wrap());
    }
}
