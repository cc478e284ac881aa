//! What the drink costs, line by line and with what it is handed over in, and what is left of its price.

use egui::Ui;

use super::sheet;
use crate::balance::{Margin, Measurand};
use crate::book::{ClosureKind, Serviceware, ServicewareKind, Vessel};
use crate::quantity::{Uncertain, name_as_shown, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::widgets::facts::{Fact, fact_ui, facts_as_table, figure_ui};
use crate::workbench::Serving;

/// A part of the cost.
struct Part {
    name: String,
    price: Option<f64>,
}

impl Part {
    fn fact<'book>(&self, speaker: Speaker<'_>, currency: &'book str) -> Fact<'book> {
        let value = self.price.map_or_else(
            || Value::not_known(speaker.word("serving-cost-no-price-stated")),
            |price| Value::digits(show_number(price, 2)),
        );
        (name_as_shown(&self.name).into_owned(), value, currency)
    }
}

pub(super) fn cost_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    let speaker = screen.speaker;
    let total_name = speaker.word("serving-cost-of-drink");
    let currency = screen.book.settings.currency.as_str();
    let parts = parts(screen);
    let of_parts: Vec<Fact<'_>> = parts
        .iter()
        .map(|part| part.fact(speaker, currency))
        .collect();
    let total = total(screen, &parts);
    let left = match &serving.margin {
        Some(margin) => margin_facts(screen, margin, &parts),
        None => vec![no_margin(screen)],
    };
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in &of_parts {
            fact_ui(ui, name, value, unit);
        }
        ui.add_space(grid::NEAR);
        figure_ui(ui, screen, total_name, &total, currency, Measurand::Cost);
        for (name, value, unit) in &left {
            fact_ui(ui, name, value, unit);
        }
    });
    copy_ui(ui, speaker.word("serving-cost-table"), || {
        let total = (total_name.to_owned(), total, currency);
        facts_as_table(speaker, of_parts.into_iter().chain([total]).chain(left))
    });
    sheet::quiet_ui(ui, speaker.word("serving-cost-source"));
}

/// The lines of the drink, then cup, closure and what goes with it.
fn parts(screen: &Screen<'_>) -> Vec<Part> {
    let lines = screen
        .balance
        .lines
        .iter()
        .filter(|line| line.count != 0.0)
        .map(|line| Part {
            name: screen.speaker.ingredient(&line.ingredient),
            price: line.cost,
        });
    let cup = screen
        .balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| screen.book.vessel(id));
    lines
        .chain(cup.iter().flat_map(|cup| parts_of_cup(screen.speaker, cup)))
        .collect()
}

fn parts_of_cup(speaker: Speaker<'_>, cup: &Vessel) -> Vec<Part> {
    // An open cup has no closure to pay for, but a price may be stated for one all the same.
    let closure = cup
        .usual_closure()
        .filter(|closure| closure.price.is_some() || closure.kind != ClosureKind::Open);
    let closure = closure.map(|closure| Part {
        name: speaker
            .word(match closure.kind {
                ClosureKind::Open => "serving-cost-no-closure",
                ClosureKind::Lid => "serving-cost-lid",
                ClosureKind::Film => "serving-cost-film",
            })
            .to_owned(),
        price: closure.price,
    });
    std::iter::once(Part {
        name: cup.name.clone(),
        price: cup.price,
    })
    .chain(closure)
    .chain(
        cup.serviceware
            .iter()
            .map(|ware| part_of_serviceware(speaker, ware)),
    )
    .collect()
}

fn part_of_serviceware(speaker: Speaker<'_>, ware: &Serviceware) -> Part {
    let name = match ware.kind {
        ServicewareKind::Straw { wide: true } => "serving-cost-wide-straw",
        ServicewareKind::Straw { wide: false } => "serving-cost-straw",
        ServicewareKind::Sleeve => "serving-cost-sleeve",
    };
    Part {
        name: speaker.word(name).to_owned(),
        price: ware.price,
    }
}

/// The cost with everything in it, or the known part of it with the names of what has no price.
fn total(screen: &Screen<'_>, parts: &[Part]) -> Value {
    let value = Value::of(screen.speaker, screen.balance, Measurand::Cost, 2);
    let is_partial = screen.balance.figures.missing(Measurand::Cost) != 0;
    let gap = missing(screen.speaker, parts);
    if !is_partial || value.gap.is_some() && gap.is_none() {
        return value;
    }
    let cost = screen
        .balance
        .reported(Measurand::Cost)
        .value
        .filter(|cost| *cost > 0.0);
    cost.map_or_else(Value::default, |cost| {
        Value::digits(show_number(cost, 2)).at_least()
    })
    .with_gap(gap)
}

/// "no price: Ondry creamer, lid".
fn missing(speaker: Speaker<'_>, parts: &[Part]) -> Option<String> {
    let names: Vec<&str> = parts
        .iter()
        .filter(|part| part.price.is_none())
        .map(|part| part.name.as_str())
        .collect();
    (!names.is_empty()).then(|| say!(speaker, "serving-cost-no-price", parts: names.join(", ")))
}

/// What is left of the price, step by step.
fn margin_facts<'book>(
    screen: &Screen<'book>,
    margin: &Margin,
    parts: &[Part],
) -> Vec<Fact<'book>> {
    let speaker = screen.speaker;
    let settings = &screen.book.settings;
    let currency = settings.currency.as_str();
    let money = |value: f64| Value::digits(show_number(value, 2));
    let tax_name = settings.sales_tax_percent.map_or_else(
        || speaker.word("serving-cost-sales-tax").to_owned(),
        |percent| say!(speaker, "serving-cost-sales-tax-of", percent: speaker.number(percent, 1)),
    );
    let tax = margin.sales_tax.map_or_else(
        || Value::not_known(speaker.word("serving-cost-no-rate")),
        money,
    );
    let mut gaps: Vec<String> = missing(screen.speaker, parts).into_iter().collect();
    if margin.sales_tax.is_none() {
        gaps.push(speaker.word("serving-cost-tax-not-stated").to_owned());
    }
    let gap = (!gaps.is_empty()).then(|| gaps.join("; "));
    let figure = |figure: Uncertain, decimals: i32| {
        let value = Value::known(figure, decimals);
        if margin.is_at_most {
            Value { u: None, ..value }.at_most()
        } else {
            value
        }
    };
    let mut facts = vec![
        (
            speaker.word("serving-cost-menu-price").to_owned(),
            money(margin.menu_price),
            currency,
        ),
        (tax_name, tax, currency),
        (
            speaker.word("serving-cost-margin").to_owned(),
            figure(margin.margin, 2).with_gap(gap),
            currency,
        ),
    ];
    facts.extend(margin.percent.map(|percent| {
        let name = speaker.word("serving-cost-margin-share").to_owned();
        (name, figure(percent, 1), "%")
    }));
    facts
}

fn no_margin<'book>(screen: &Screen<'book>) -> Fact<'book> {
    let reason = if screen.balance.resolved.menu_price.is_some() {
        "serving-cost-not-known"
    } else {
        "serving-cost-no-menu-price"
    };
    let currency = screen.book.settings.currency.as_str();
    let speaker = screen.speaker;
    let name = speaker.word("serving-cost-margin").to_owned();
    (name, Value::not_known(speaker.word(reason)), currency)
}
