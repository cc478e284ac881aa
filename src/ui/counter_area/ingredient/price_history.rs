//! What a pack cost before, as a small table: when, how much, what a kilogram or litre came to, and how much more that was.

use egui::{Align, Id, Layout, Sense, Ui, vec2};

use crate::balance::pack_grams;
use crate::book::{Form, Ingredient, Price, PriceInTime};
use crate::edit::{FieldName, Focus};
use crate::quantity::{Pack, PackUnit, excerpt, show_compact, show_number};
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::field::take_keyboard;
use crate::ui::icons::{Icon, icon_button};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::{Sheet, cell_ui, link_ui, number_heading_ui, words_ui};
use crate::ui::widgets::name::name_at;
use crate::workbench::GramOf;

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
    let speaker = counter.speaker;
    let currency = counter.book.settings.currency.as_str();
    let per = Per::of(counter, before);
    let history = before.price_history();
    let narrow = DAY + PACK + EACH + CHANGE + grid::TARGET;
    let has_suppliers = history.iter().any(|row| !row.supplier.is_empty());
    let room = ui.available_width() - narrow;
    let supplier = (has_suppliers && room >= SUPPLIER.0).then(|| room.min(SUPPLIER.1));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 0.0;
        words_ui(ui, speaker.word("ingredient-prices"), DAY);
        let pack = say!(speaker, "ingredient-prices-per-pack", currency: currency);
        let each = match per.of {
            PerWhat::Litre => say!(speaker, "ingredient-prices-per-litre", currency: currency),
            PerWhat::Kilogram => {
                say!(speaker, "ingredient-prices-per-kilogram", currency: currency)
            }
        };
        // A shop may state no currency.
        number_heading_ui(ui, pack.trim(), PACK);
        number_heading_ui(ui, each.trim(), EACH);
        number_heading_ui(ui, speaker.word("ingredient-prices-change"), CHANGE);
        if let Some(width) = supplier {
            ui.add_space(grid::NEAR);
            let words = speaker.word("ingredient-prices-from");
            words_ui(ui, words, width - grid::NEAR);
        }
    });
    let id = Id::unique(("all prices", before.id.as_str()));
    let all = history.len() <= MOST || ui.data(|data| data.get_temp(id).unwrap_or(false));
    let shown = if all { history.len() } else { MOST };
    let mut forgotten = None;
    for row in &history[..shown] {
        let focus = row.earlier.map(|at| sheet.focus(earlier_price(at)));
        if row_ui(ui, speaker, row, focus.as_ref(), per, supplier) {
            forgotten = row.earlier;
        }
    }
    if !all {
        let words = say!(speaker, "ingredient-prices-all", count: history.len());
        if link_ui(ui, &words).clicked() {
            ui.data_mut(|data| data.insert_temp(id, true));
        }
    }
    copy_ui(ui, speaker.word("ingredient-prices-table"), || {
        as_table(speaker, currency, per, &history)
    });
    if let Some(at) = forgotten {
        sheet.change(earlier_price(at), |item| {
            drop(item.earlier_prices.remove(at));
        });
    }
    ui.add_space(grid::TIGHT);
}

/// What takes a price of before away, by its place from 0.
fn earlier_price(at: usize) -> FieldName {
    FieldName::at("earlier-price", at)
}

/// What prices are compared by, and what a millilitre weighs.
#[derive(Clone, Copy)]
struct Per {
    of: PerWhat,
    density: Option<f64>,
}

#[derive(Clone, Copy)]
enum PerWhat {
    Litre,
    Kilogram,
}

impl Per {
    /// A litre of what is sold so or pours and has a density, else a kilogram.
    fn of(counter: Counter<'_>, item: &Ingredient) -> Self {
        let gram = counter.answers.to(&GramOf(item.id.clone()));
        let millilitre = Pack::of_millilitres(1.0);
        let density = gram.and_then(|gram| pack_grams(counter.book, item, &gram.mix, millilitre));
        let is_sold_so = |price: &Price| price.content.unit == PackUnit::Millilitres;
        let pours = item.form == Form::Liquid && item.density.is_some();
        let of = if pours || item.price.as_ref().is_some_and(is_sold_so) {
            PerWhat::Litre
        } else {
            PerWhat::Kilogram
        };
        Self { of, density }
    }

    /// What a price comes to.
    fn of_price(self, row: &PriceInTime<'_>) -> Option<f64> {
        let whole = row.content.whole();
        let amount = match (self.of, row.content.unit) {
            (PerWhat::Litre, PackUnit::Millilitres) | (PerWhat::Kilogram, PackUnit::Grams) => whole,
            (PerWhat::Litre, PackUnit::Grams) => whole / self.density?,
            (PerWhat::Kilogram, PackUnit::Millilitres) => whole * self.density?,
        };
        let each = 1000.0 * row.pack / amount;
        each.is_finite().then_some(each)
    }
}

/// One price; `true` when it is to be forgotten.
fn row_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    row: &PriceInTime<'_>,
    focus: Option<&Focus>,
    per: Per,
    supplier: Option<f32>,
) -> bool {
    let palette = theme::palette(ui.visuals());
    let mut forgotten = false;
    let day = row.date.map(|day| excerpt(day, 12));
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
        let no_day = || speaker.word("ingredient-no-day").to_owned();
        put(ui, day.clone().unwrap_or_else(no_day), DAY, false);
        put(ui, pack_words(speaker, row), PACK, true);
        let each = per
            .of_price(row)
            .map_or_else(|| "–".to_owned(), |each| speaker.number(each, 2));
        put(ui, each, EACH, true);
        put(ui, change_words(speaker, row.change_percent), CHANGE, true);
        if let Some(width) = supplier {
            ui.add_space(grid::NEAR);
            put(ui, row.supplier.to_owned(), width - grid::NEAR, false);
        }
        let words = match day {
            Some(day) => say!(speaker, "ingredient-price-remove", day: day),
            None => speaker.word("ingredient-price-remove-no-day").to_owned(),
        };
        if let Some(focus) = focus {
            cell_ui(ui, grid::TARGET, |ui| {
                let response = icon_button(ui, Icon::Delete, &words, &words);
                take_keyboard(ui, focus, &response);
                forgotten = response.clicked();
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
    name_at(ui, rect, layout, words, TypeStyle::Small, colour);
}

/// Every price for a spreadsheet, with the content of the pack in a column of its own.
fn as_table(speaker: Speaker<'_>, currency: &str, per: Per, history: &[PriceInTime<'_>]) -> Table {
    let each = speaker.word(match per.of {
        PerWhat::Litre => "ingredient-head-per-litre",
        PerWhat::Kilogram => "ingredient-head-per-kilogram",
    });
    let content = speaker.word("ingredient-head-content");
    let unit = unit_of_all(history);
    let heads = [
        speaker.word("ingredient-head-day").to_owned(),
        spreadsheet::head(speaker.word("ingredient-head-pack"), currency),
        unit.map_or_else(
            || content.to_owned(),
            |unit| spreadsheet::head(content, unit),
        ),
        spreadsheet::head(each, currency),
        spreadsheet::head(speaker.word("ingredient-prices-change"), "%"),
        speaker.word("ingredient-prices-from").to_owned(),
    ];
    let mut table = Table::new(heads);
    for row in history {
        let each = per.of_price(row);
        let each = each.map(|each| show_number(each, 2)).unwrap_or_default();
        let change = row.change_percent.map(|change| show_number(change, 1));
        table.row([
            Cell::words(row.date.unwrap_or(speaker.word("ingredient-no-day"))),
            Cell::figure(&show_number(row.pack, 2)),
            match unit {
                Some(_) => Cell::figure(&show_compact(row.content.whole())),
                None => Cell::words(&speaker.pack(row.content)),
            },
            Cell::figure(&each),
            Cell::figure(&change.unwrap_or_default()),
            Cell::words(row.supplier),
        ]);
    }
    table
}

/// The unit of all packs; `None` where some are sold by mass and some by volume.
fn unit_of_all(history: &[PriceInTime<'_>]) -> Option<&'static str> {
    let first = history.first()?.content.unit;
    let is_one = history.iter().all(|row| row.content.unit == first);
    is_one.then_some(match first {
        PackUnit::Grams => "g",
        PackUnit::Millilitres => "ml",
    })
}

/// "11.40 for 1 kg".
fn pack_words(speaker: Speaker<'_>, row: &PriceInTime<'_>) -> String {
    let content = speaker.pack(row.content);
    say!(speaker, "ingredient-price-for", price: speaker.number(row.pack, 2), content: content)
}

/// "+9.6 %"; nothing for the first price.
fn change_words(speaker: Speaker<'_>, percent: Option<f64>) -> String {
    match percent {
        None => String::new(),
        Some(percent) if percent.abs() < 0.05 => speaker.word("ingredient-prices-same").to_owned(),
        Some(percent) => {
            let sign = if percent > 0.0 { "+" } else { "" };
            format!("{sign}{}", speaker.in_unit(percent, "%", 1))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::say::Language;

    #[test]
    fn a_change_says_which_way() {
        let english = Speaker::without_book();
        let german = english.in_language(Language::from_code("de").unwrap());
        for (percent, words, in_german) in [
            (None, "", ""),
            (Some(0.01), "the same", "unverändert"),
            (Some(9.649), "+9.6\u{a0}%", "+9,6\u{a0}%"),
            (Some(-12.5), "−12.5\u{a0}%", "−12,5\u{a0}%"),
        ] {
            assert_eq!(change_words(english, percent), words);
            assert_eq!(change_words(german, percent), in_german);
        }
    }
}
