//! The facts behind the sentences of JSON, for programs that make sentences of their own: what is said, and of what.
//!
//! Ids are those of the book. Numbers are metric, and the unit of one stands in its key unless a unit stands beside it.

mod cause;
mod change;
mod control;
mod cups;
mod finding;
mod ingredient;
mod last_sip;
mod load;
mod reason;
mod record;
mod tasting;
mod why_off;
mod yardstick;

pub(super) use cause::cause;
pub(super) use change::changes;
pub(super) use control::{chart_limits, chart_rough, chart_shift, moved_drink, too_few_days};
pub(super) use cups::{cups_remark, drawn_causes};
pub(super) use finding::{finding, place};
pub(super) use ingredient::{assumption, no_figure, statement};
pub(super) use last_sip::{last_sip_remark, other_way};
pub(super) use load::load_error;
pub(super) use reason::{adapted, means, no_levels, suggestion, swap_reason, unadaptable};
pub(super) use record::{record_verdict, rescaled_doubt, scored};
pub(super) use tasting::{
    brix_caution, brix_comparison, brix_not_computed, drink_effect, effect, proposal, remark,
    stopping, tasting_outcome, unbalanced, weighed_tasting,
};
pub(super) use why_off::{likely_fault, why_off_remark};
pub(super) use yardstick::{yardstick, yardstick_line};

use serde_json::{Map, Value, json};

use crate::book::{Amount, Axis, IngredientId};

/// What a sentence says.
pub(super) struct Fact {
    /// The name of what is said, from the variant that holds it: "not-reached".
    pub kind: &'static str,
    /// Of what: an object, empty where the kind says all.
    pub arguments: Value,
}

impl Fact {
    fn new(kind: &'static str, arguments: Value) -> Self {
        Self { kind, arguments }
    }

    /// A fact that its kind says all of.
    fn alone(kind: &'static str) -> Self {
        Self::new(kind, json!({}))
    }

    /// Puts the fact beside the sentence that an object holds.
    pub(super) fn beside(self, mut object: Value) -> Value {
        if let Value::Object(map) = &mut object {
            map.insert("kind".to_owned(), json!(self.kind));
            self.arguments_beside(map);
        }
        object
    }

    /// Puts its arguments into an object that has a kind of its own.
    pub(super) fn arguments_beside(self, map: &mut Map<String, Value>) {
        map.insert("arguments".to_owned(), self.arguments);
    }
}

/// Puts facts beside a list of sentences: "reasons" gets `reason_kinds` and `reason_arguments`, each in the order of the sentences.
pub(super) fn beside_each(object: &mut Value, one: &str, facts: Vec<Fact>) {
    if let Value::Object(map) = object {
        let kinds: Vec<&str> = facts.iter().map(|fact| fact.kind).collect();
        map.insert(format!("{one}_kinds"), json!(kinds));
        let arguments: Vec<Value> = facts.into_iter().map(|fact| fact.arguments).collect();
        map.insert(format!("{one}_arguments"), json!(arguments));
    }
}

fn ids<'id>(ids: impl IntoIterator<Item = &'id IngredientId>) -> Vec<&'id str> {
    ids.into_iter().map(IngredientId::as_str).collect()
}

fn axes<'axis>(axes: impl IntoIterator<Item = &'axis Axis>) -> Vec<&'axis str> {
    axes.into_iter().map(Axis::word).collect()
}

fn amount(amount: &Amount) -> Value {
    match amount {
        Amount::Count(count, measure) => json!({ "count": count, "measure": measure.as_str() }),
        Amount::Grams(grams) => json!({ "grams": grams }),
        Amount::Millilitres(millilitres) => json!({ "millilitres": millilitres }),
        Amount::FillTo(millilitres) => json!({ "fill_to_millilitres": millilitres }),
        Amount::FillToRim => json!({ "fill_to": "rim" }),
    }
}
