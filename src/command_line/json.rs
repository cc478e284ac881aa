//! The JSON that commands print.

use serde_json::{Map, Value, json};

use super::claims_json::{silent_on, verdict};
use super::{facts, speaker};
use crate::balance::{
    Assumption, Balance, Component, Difference, Layer, LineShare, Measurand, Reported,
};
use crate::book::{Axis, Book, Finding, IngredientId, VersionId};
use crate::quantity::Uncertain;
use crate::say::Speaker;

/// A quantity: value, standard uncertainty, unit, ingredients that are missing; a reason when there is no value for
/// another cause.
pub(super) fn quantity(reported: &Reported, unit: &str) -> Value {
    let missing: Vec<&str> = reported.missing.iter().map(AsRef::as_ref).collect();
    let mut quantity =
        json!({ "value": reported.value, "u": reported.u, "unit": unit, "missing": missing });
    let Some(reason) = reported.reason else {
        return quantity;
    };
    if let Value::Object(map) = &mut quantity {
        map.insert("reason".to_owned(), json!(speaker().no_figure(reason)));
    }
    facts::no_figure(reason).beside(quantity)
}

/// A figure with its standard uncertainty, whose unit is told by its key or beside it.
pub(super) fn uncertain(figure: Uncertain) -> Value {
    json!({ "value": figure.value, "u": figure.u })
}

/// How many causes of doubt a figure names.
const CAUSES: usize = 3;

/// The figures of a balance by the keys that the interface names.
const FIGURES: [(&str, Measurand); 26] = [
    ("mass", Measurand::Mass),
    ("volume", Measurand::Volume),
    ("total_sugar", Measurand::TotalSugar),
    ("free_sugars", Measurand::FreeSugars),
    ("sweetness", Measurand::Sweetness),
    ("brix", Measurand::Brix),
    ("density", Measurand::Density),
    ("dilution", Measurand::Dilution),
    ("serving_temperature", Measurand::ServingTemperature),
    ("ice_left", Measurand::IceLeft),
    ("minutes_to_drinkable", Measurand::MinutesToDrinkable),
    ("energy_kj", Measurand::EnergyKj),
    ("energy_kcal", Measurand::EnergyKcal),
    ("fat", Measurand::Fat),
    ("saturates", Measurand::Saturates),
    ("carbohydrate", Measurand::Carbohydrate),
    ("polyols", Measurand::Polyols),
    ("protein", Measurand::Protein),
    ("fibre", Measurand::Fibre),
    ("salt", Measurand::Salt),
    ("caffeine", Measurand::Caffeine),
    ("tea_solids", Measurand::TeaSolids),
    ("acid", Measurand::Acid),
    ("dry_matter", Measurand::DryMatter),
    ("cost", Measurand::Cost),
    ("fill", Measurand::Fill),
];

const SUGARS: [(&str, Measurand); 6] = [
    ("sucrose", Measurand::Sucrose),
    ("glucose", Measurand::Glucose),
    ("fructose", Measurand::Fructose),
    ("lactose", Measurand::Lactose),
    ("maltose", Measurand::Maltose),
    ("other", Measurand::OtherSugar),
];

fn unit_of(book: &Book, measurand: Measurand) -> &str {
    if measurand == Measurand::Cost {
        &book.settings.currency
    } else {
        measurand.unit()
    }
}

/// A balance as the interface describes it.
pub(super) fn balance(
    book: &Book,
    recipe: &str,
    version: Option<&VersionId>,
    balance: &Balance,
    difference: Option<&Difference>,
) -> Value {
    let mut map = Map::new();
    map.insert("recipe".to_owned(), json!(recipe));
    map.insert("version".to_owned(), json!(version.map(VersionId::as_str)));
    let reported = |measurand| {
        let mut figure = quantity(&balance.reported(measurand), unit_of(book, measurand));
        if let Value::Object(map) = &mut figure {
            map.insert("causes".to_owned(), causes(book, balance, measurand));
        }
        figure
    };
    for (key, measurand) in FIGURES {
        map.insert(key.to_owned(), reported(measurand));
        if key == "free_sugars" {
            let sugars: Map<String, Value> = SUGARS
                .iter()
                .map(|(key, measurand)| ((*key).to_owned(), reported(*measurand)))
                .collect();
            map.insert("sugars".to_owned(), Value::Object(sugars));
        }
    }
    map.insert("per_100_ml".to_owned(), per_100_millilitres(balance));
    if let Some(layers) = &balance.layers {
        map.insert("first_sip".to_owned(), layer(balance, &layers.first_sip));
        map.insert("stirred".to_owned(), layer(balance, &layers.stirred));
    }
    let assumptions = balance.assumptions.iter();
    map.insert(
        "assumptions".to_owned(),
        assumptions
            .map(|(whose, assumption)| self::assumption(book, whose, assumption))
            .collect(),
    );
    map.insert(
        "drinking_temperature".to_owned(),
        json!(balance.drinking_temperature),
    );
    map.insert("vegan".to_owned(), json!(verdict(balance.vegan)));
    map.insert("allergens".to_owned(), allergens(balance));
    super::serving_json::add(book, balance, &mut map);
    map.insert("axes".to_owned(), axes(balance, difference));
    let cautions = balance
        .cautions
        .iter()
        .map(|caution| super::caution_json::caution(book, caution));
    map.insert("cautions".to_owned(), cautions.collect());
    map.insert(
        "lines".to_owned(),
        balance
            .lines
            .iter()
            .map(|line| line_json(book, line))
            .collect(),
    );
    map.insert(
        "findings".to_owned(),
        balance
            .findings
            .iter()
            .map(|one| finding(book, one))
            .collect(),
    );
    Value::Object(map)
}

/// The causes that matter most for the uncertainty of a figure, each with its part of the variance.
fn causes(book: &Book, balance: &Balance, measurand: Measurand) -> Value {
    balance
        .largest_causes(measurand.slot(), CAUSES)
        .into_iter()
        .map(|(cause, part)| {
            let words = Speaker::new(book).cause(balance, cause);
            facts::cause(cause).beside(json!({
                "cause": words.what,
                "part_of_variance": part,
                "to_narrow": words.narrow,
            }))
        })
        .collect()
}

/// What is in 100 ml of the mixed drink at 20 °C, toppings and what floats on it left out.
fn per_100_millilitres(balance: &Balance) -> Value {
    let keys = FIGURES
        .iter()
        .filter_map(|(key, measurand)| Some((key, measurand.per_100_ml()?)));
    let per = |measurand: Measurand| quantity(&balance.reported(measurand), measurand.unit());
    Value::Object(
        keys.map(|(key, measurand)| ((*key).to_owned(), per(measurand)))
            .collect(),
    )
}

/// What is tasted of what floats on top, or of the drink with it stirred in.
fn layer(balance: &Balance, layer: &Layer) -> Value {
    let of = |measurand: Measurand| {
        let found = layer.get(measurand);
        let reported = Reported {
            value: found.map(|found| found.value),
            u: found.map(|found| found.u),
            missing: balance.missing_for(layer.figures.missing(measurand)),
            reason: None,
        };
        (
            measurand.key().to_owned(),
            quantity(&reported, measurand.unit()),
        )
    };
    Value::Object(Layer::TASTED.into_iter().map(of).collect())
}

/// What is taken for granted of an ingredient.
fn assumption(book: &Book, whose: &IngredientId, assumption: &Assumption) -> Value {
    let fact = facts::assumption(whose, assumption);
    let kind = fact.kind;
    fact.beside(json!({
        "ingredient": whose.as_str(),
        "kind": kind,
        "value": assumption.figure.map(|figure| figure.value),
        "u": assumption.figure.map(|figure| figure.u),
        "text": Speaker::new(book).assumption(whose, assumption),
    }))
}

fn allergens(balance: &Balance) -> Value {
    let words = |set: &std::collections::BTreeSet<crate::book::Allergen>| -> Vec<&str> {
        set.iter().map(|allergen| allergen.word()).collect()
    };
    let us_words = |set: &std::collections::BTreeSet<crate::book::Allergen>| -> Vec<&str> {
        set.iter()
            .filter_map(|allergen| Speaker::without_book().us_allergen(*allergen))
            .collect()
    };
    let not_stated: Vec<&str> = balance
        .allergens
        .not_stated
        .iter()
        .map(AsRef::as_ref)
        .collect();
    json!({
        "contains": words(&balance.allergens.contains),
        "may_contain": words(&balance.allergens.may_contain),
        "us_contains": us_words(&balance.allergens.contains),
        "us_may_contain": us_words(&balance.allergens.may_contain),
        "not_stated": not_stated,
        "silent_on": silent_on(&balance.allergens),
    })
}

fn axes(balance: &Balance, difference: Option<&Difference>) -> Value {
    let against = |axis: &Axis| {
        difference.and_then(|difference| difference.axes.iter().find(|other| other.axis == *axis))
    };
    let axis = |value: &crate::balance::AxisValue| {
        let mut entry = json!({
            "axis": value.axis.word(),
            "value": value.value,
            "u": value.u,
            "step": value.step,
            "unit": value.axis.unit(),
        });
        if let (Some(against), Value::Object(map)) = (against(&value.axis), &mut entry) {
            map.insert("standard".to_owned(), json!(against.standard));
            map.insert("steps".to_owned(), json!(against.steps));
            map.insert("u_steps".to_owned(), json!(against.u_steps));
        }
        entry
    };
    balance.axes.iter().map(axis).collect()
}

fn line_json(book: &Book, line: &LineShare) -> Value {
    // As in the totals, what adds up gives its known part and names what is missing: the lines sum to the drink.
    let share = |value: Option<f64>, known_part: Option<f64>, u: Option<f64>, unit: &str| {
        let missing = if value.is_none() {
            vec![line.ingredient.clone()]
        } else {
            Vec::new()
        };
        quantity(
            &Reported {
                value: value.or(known_part),
                u,
                missing,
                reason: None,
            },
            unit,
        )
    };
    let part = |component| Some(line.mix.get(component));
    json!({
        "line": line.line.as_str(),
        "carried": line.carried,
        "ingredient": line.ingredient.as_str(),
        "mass": share(line.grams, part(Component::Mass), line.u_grams, "g"),
        "volume": share(line.millilitres, None, None, "ml"),
        "total_sugar": share(line.sugar, part(Component::Sugars), line.sugar_uncertainty, "g"),
        "energy_kj": share(line.energy, Some(line.known_energy()), None, "kJ"),
        "cost": share(line.cost, part(Component::Cost), None, &book.settings.currency),
        "heat": share(line.heat, None, None, "kJ"),
        "temperature": line.celsius,
    })
}

/// A finding with its place.
pub(super) fn finding(book: &Book, finding: &Finding) -> Value {
    let speaker = Speaker::new(book);
    facts::finding(&finding.kind).beside(json!({
        "severity": finding.severity.word(),
        "kind": finding.kind.key(),
        "place": speaker.place(&finding.place),
        "at": facts::place(&finding.place),
        "text": speaker.finding_kind(&finding.kind),
    }))
}

/// A distance: axis by axis, and overall.
pub(super) fn distance(difference: &Difference) -> Value {
    let axes = difference.axes.iter().map(|axis| {
        json!({
            "axis": axis.axis.word(),
            "standard": axis.standard,
            "value": axis.value,
            "step": axis.step,
            "steps": axis.steps,
            "u_steps": axis.u_steps,
        })
    });
    json!({
        "overall": difference.distance,
        "within_one_step": difference.within_one_step(),
        "axes": axes.collect::<Vec<_>>(),
    })
}
