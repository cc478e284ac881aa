//! What a pack cost before, as a small table: when, how much, what a kilogram or litre came to, and how much more that was.

use egui::{Align, Id, Label, Layout, RichText, Sense, Ui, UiBuilder, vec2};

use crate::book::{Form, Ingredient, PriceInTime};
use crate::quantity::show_number;
use crate::ui::counter_area::Counter;
use crate::ui::counter_area::sheet::{Sheet, cell_ui, link_ui, number_heading_ui, words_ui};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};

/// Widths of the columns, in points.
const DAY: f32 = 21.0 * grid::STEP;
const PACK: f32 = 31.0 * grid::STEP;
const EACH: f32 = 20.0 * grid::STEP;
const CHANGE: f32 = 18.0 * grid::STEP;
/// Least and most width of the supplier, who has a column only where there is room.
const SUPPLIER: (f32, f32) = (25.0 * grid::STEP, 45.0 * grid::STEP);
/// Height of a row, in points.
const ROW: f32 = 6.0 * grid::STEP;
/// Most rows before somebody asks for all of them.
const MOST: usize = 6;

/// The table; nothing while there is one price only.
pub(super) fn price_history_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
) {
    if before.earlier_prices.is_empty() {
        return;
    }
    let per = Per::of(before);
    let history = before.price_history();
    let narrow = DAY + PACK + EACH + CHANGE + grid::TARGET;
    let has_suppliers = history.iter().any(|row| !row.supplier.is_empty());
    let room = ui.available_width() - narrow;
    let supplier = (has_suppliers && room >= SUPPLIER.0).then(|| room.min(SUPPLIER.1));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        words_ui(ui, "prices so far", DAY);
        let in_currency = |words: &str| {
            let words = format!("{} {words}", counter.book.settings.currency);
            words.trim_start().to_owned()
        };
        number_heading_ui(ui, &in_currency("a pack"), PACK);
        number_heading_ui(ui, &in_currency(per.word), EACH);
        number_heading_ui(ui, "change", CHANGE);
        if let Some(width) = supplier {
            ui.add_space(grid::NEAR);
            words_ui(ui, "from", width - grid::NEAR);
        }
    });
    let id = Id::unique(("all prices", before.id.as_str()));
    let all = history.len() <= MOST || ui.data(|data| data.get_temp(id).unwrap_or(false));
    let shown = if all { history.len() } else { MOST };
    let mut forgotten = None;
    for row in &history[..shown] {
        if row_ui(ui, row, per, supplier) {
            forgotten = row.earlier;
        }
    }
    if !all && link_ui(ui, &format!("Show all {} prices", history.len())).clicked() {
        ui.data_mut(|data| data.insert_temp(id, true));
    }
    copy_ui(ui, "prices", || {
        as_table(&counter.book.settings.currency, per, &history)
    });
    if let Some(at) = forgotten {
        sheet.change("earlier prices", |item| {
            drop(item.earlier_prices.remove(at));
        });
    }
    ui.add_space(grid::TIGHT);
}

/// What prices are compared by.
#[derive(Clone, Copy)]
struct Per {
    word: &'static str,
    grams: f64,
}

impl Per {
    /// A litre of what pours and has a density, else a kilogram.
    fn of(item: &Ingredient) -> Self {
        let density = item.density.map(|figure| figure.value);
        match density.filter(|density| item.form == Form::Liquid && *density > 0.0) {
            Some(density) => Self {
                word: "per l",
                grams: 1000.0 * density,
            },
            None => Self {
                word: "per kg",
                grams: 1000.0,
            },
        }
    }

    /// What a price comes to.
    fn of_price(self, row: &PriceInTime<'_>) -> Option<f64> {
        let each = self.grams * row.pack / row.grams;
        each.is_finite().then_some(each)
    }
}

/// One price; `true` when it is to be forgotten.
fn row_ui(ui: &mut Ui, row: &PriceInTime<'_>, per: Per, supplier: Option<f32>) -> bool {
    let palette = theme::palette(ui.visuals());
    let mut forgotten = false;
    let day = row.date.unwrap_or("no day");
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        let colour = if row.earlier.is_none() {
            palette.text_strong
        } else {
            palette.text_normal
        };
        let put = |ui: &mut Ui, words: String, width, is_number| {
            put_ui(ui, &words, width, is_number, colour);
        };
        put(ui, crate::quantity::excerpt(day, 12), DAY, false);
        put(ui, pack_words(row), PACK, true);
        let each = per
            .of_price(row)
            .map_or_else(|| "–".to_owned(), |each| show_number(each, 2));
        put(ui, each, EACH, true);
        put(ui, change_words(row.change_percent), CHANGE, true);
        if let Some(width) = supplier {
            ui.add_space(grid::NEAR);
            put(
                ui,
                crate::quantity::excerpt(row.supplier, 60),
                width - grid::NEAR,
                false,
            );
        }
        let words = format!("Forget the price of {day}");
        if row.earlier.is_some() {
            cell_ui(ui, grid::TARGET, |ui| {
                forgotten = icon_button(ui, Icon::Delete, &words, &words).clicked();
            });
        }
    });
    forgotten
}

fn put_ui(ui: &mut Ui, words: &str, width: f32, is_number: bool, colour: egui::Color32) {
    let (rect, _) = ui.allocate_exact_size(vec2(width, ROW), Sense::hover());
    let (rect, layout) = if is_number {
        let rect = rect.with_max_x(rect.right() - grid::TIGHT);
        (rect, Layout::right_to_left(Align::Center))
    } else {
        (rect, Layout::left_to_right(Align::Center))
    };
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect).layout(layout));
    let text = RichText::new(words)
        .font(TypeStyle::Small.font_id())
        .color(colour);
    child.add(Label::new(text).selectable(false).truncate());
}

/// Every price for a spreadsheet, with the content of the pack in a column of its own.
fn as_table(currency: &str, per: Per, history: &[PriceInTime<'_>]) -> Table {
    let heads = [
        "day".to_owned(),
        spreadsheet::head("price of a pack", currency),
        spreadsheet::head("content", "g"),
        spreadsheet::head(&format!("price {}", per.word), currency),
        spreadsheet::head("change", "%"),
        "from".to_owned(),
    ];
    let mut table = Table::new(heads);
    for row in history {
        let each = per.of_price(row);
        let each = each.map(|each| show_number(each, 2)).unwrap_or_default();
        let change = row.change_percent.map(|change| show_number(change, 1));
        table.row([
            Cell::words(row.date.unwrap_or("no day")),
            Cell::figure(&show_number(row.pack, 2)),
            Cell::figure(&crate::quantity::show_compact(row.grams)),
            Cell::figure(&each),
            Cell::figure(&change.unwrap_or_default()),
            Cell::words(row.supplier),
        ]);
    }
    table
}

/// "11.40 for 1 kg".
fn pack_words(row: &PriceInTime<'_>) -> String {
    let content = if row.grams >= 1000.0 {
        format!("{} kg", crate::quantity::show_compact(row.grams / 1000.0))
    } else {
        format!("{} g", crate::quantity::show_compact(row.grams))
    };
    format!("{} for {content}", show_number(row.pack, 2))
}

/// "+9.6 %"; nothing for the first price.
fn change_words(percent: Option<f64>) -> String {
    match percent {
        None => String::new(),
        Some(percent) if percent.abs() < 0.05 => "the same".to_owned(),
        Some(percent) => {
            let sign = if percent > 0.0 { "+" } else { "−" };
            format!("{sign}{} %", show_number(percent.abs(), 1))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_change_says_which_way() {
        for (percent, words) in [
            (None, ""),
            (Some(0.01), "the same"),
            (Some(9.649), "+9.6 %"),
            (Some(-12.5), "−12.5 %"),
        ] {
            assert_eq!(change_words(percent), words);
        }
    }
}
