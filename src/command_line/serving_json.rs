//! The part of a balance's JSON that is about serving it: cooling, standing, nutrition, yardsticks, margin, questions.

use serde_json::{Map, Value, json};

use super::{facts, speaker};
use crate::balance::{
    Balance, Concern, CoolingBasis, CoolingLine, cooling, declaration, margin, standing,
    statement_findings_of, yardsticks,
};
use crate::book::Book;
use crate::quantity::Uncertain;
use crate::say::Speaker;

/// Minutes after which a drink with ice is looked at again.
const STANDING_MINUTES: [f64; 3] = [5.0, 10.0, 20.0];

/// Adds what is known of serving the drink; a part that does not apply is null.
pub(super) fn add(book: &Book, balance: &Balance, map: &mut Map<String, Value>) {
    map.insert(
        "dairy_free".to_owned(),
        json!(super::claims_json::verdict(balance.dairy_free)),
    );
    map.insert("cooling".to_owned(), cooling_json(book, balance));
    map.insert("standing".to_owned(), standing_json(book, balance));
    map.insert("nutrition".to_owned(), nutrition_json(balance));
    map.insert("yardsticks".to_owned(), yardsticks_json(book, balance));
    map.insert("margin".to_owned(), margin_json(book, balance));
    map.insert("questions".to_owned(), questions_json(book, balance));
}

fn uncertain(quantity: Uncertain, unit: &str) -> Value {
    json!({ "value": quantity.value, "u": quantity.u, "unit": unit, "missing": [] })
}

fn cooling_json(book: &Book, balance: &Balance) -> Value {
    let Some(cooling) = cooling(book, balance) else {
        return Value::Null;
    };
    let (basis, readings) = match cooling.basis {
        CoolingBasis::Readings(count) => ("readings", Some(count)),
        CoolingBasis::TimeConstant => ("time constant", None),
        CoolingBasis::PublishedCups => ("published cups", None),
    };
    let milestones = cooling.milestones.iter().map(|milestone| {
        json!({
            "line": line_key(milestone.line),
            "temperature": milestone.celsius,
            "minutes": milestone.minutes.map(|minutes| uncertain(minutes, "min")),
            "earliest": milestone.interval.map(|[earliest, _]| earliest),
            "latest": milestone.interval.map(|[_, latest]| latest),
        })
    });
    json!({
        "basis": basis,
        "readings": readings,
        "model": "heat through the wall and by evaporation",
        "fill": cooling.curve.fill(),
        "milestones": milestones.collect::<Vec<_>>(),
    })
}

fn line_key(line: CoolingLine) -> &'static str {
    match line {
        CoolingLine::VeryHot => "below very hot",
        CoolingLine::Drinking => "drinking temperature",
        CoolingLine::Lukewarm => "lukewarm",
    }
}

fn standing_json(book: &Book, balance: &Balance) -> Value {
    let after = standing(book, balance, &STANDING_MINUTES).into_iter().map(|standing| {
        json!({
            "minutes": standing.minutes,
            "ice_left": uncertain(standing.ice_left, "g"),
            "melted": uncertain(standing.melted, "g"),
            "dilution": standing.dilution.map(|dilution| uncertain(dilution, "g/g")),
            "sweetness": standing.sweetness.map(|sweetness| uncertain(sweetness, "g/100 ml")),
            "tea_strength": standing.tea_strength.map(|strength| uncertain(strength, "g/100 ml")),
            "ice_gone_after": uncertain(standing.ice_gone_after, "min"),
        })
    });
    after.collect()
}

fn nutrition_json(balance: &Balance) -> Value {
    let rows = declaration(balance).into_iter().map(|row| {
        let complete = row.per_drink.is_complete;
        json!({
            "words": speaker().nutrition_row(row.measurand),
            "kind": row.measurand.key().replace('_', "-"),
            "arguments": {},
            "unit": row.unit,
            "per_100_ml": row.per_100_ml.map(|printed| printed.text),
            "per_drink": row.per_drink.text,
            "complete": complete,
        })
    });
    rows.collect()
}

fn yardsticks_json(book: &Book, balance: &Balance) -> Value {
    let speaker = Speaker::new(book);
    let readings = yardsticks(book, balance).into_iter().map(|reading| {
        let lines = reading.lines.iter().map(|line| {
            let missing: Vec<&str> = line.missing.iter().map(AsRef::as_ref).collect();
            facts::yardstick_line(line).beside(json!({
                "what": speaker.yardstick_part(line.part),
                "value": line.value,
                "unit": line.unit,
                "outcome": speaker.yardstick_outcome(line.outcome),
                "missing": missing,
            }))
        });
        facts::yardstick(reading.yardstick).beside(json!({
            "name": speaker.yardstick(reading.yardstick),
            "publisher": speaker.yardstick_publisher(reading.yardstick),
            "definition": speaker.yardstick_definition(reading.yardstick),
            "lines": lines.collect::<Vec<_>>(),
        }))
    });
    readings.collect()
}

fn margin_json(book: &Book, balance: &Balance) -> Value {
    let Some(margin) = margin(book, balance) else {
        return Value::Null;
    };
    let missing: Vec<&str> = margin.missing.iter().map(AsRef::as_ref).collect();
    json!({
        "menu_price": margin.menu_price,
        "sales_tax": margin.sales_tax,
        "net_price": margin.net_price,
        "margin": uncertain(margin.margin, &book.settings.currency),
        "percent": margin.percent.map(|percent| uncertain(percent, "%")),
        "is_at_most": margin.is_at_most,
        "missing": missing,
    })
}

fn questions_json(book: &Book, balance: &Balance) -> Value {
    let questions = statement_findings_of(book, &balance.resolved)
        .into_iter()
        .map(|finding| {
            let concern = match finding.concern {
                Concern::Contradicts => "contradicts",
                Concern::NotStated => "not stated",
                Concern::Mention => "mention",
            };
            facts::statement(&finding).beside(json!({
                "ingredient": finding.ingredient.as_str(),
                "concern": concern,
                "words": finding.matched_words,
                "question": Speaker::new(book).question(&finding),
            }))
        });
    questions.collect()
}
