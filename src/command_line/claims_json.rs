//! What is claimed of a drink, as data.

use serde_json::{Value, json};

use crate::balance::{AllergenSummary, Verdict};

/// "yes", "no", "not known".
pub(super) fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Yes => "yes",
        Verdict::No => "no",
        Verdict::NotKnown => "not known",
    }
}

/// Ids of further ingredients that say nothing of an allergen outside the annex, by the word of the allergen.
pub(super) fn silent_on(summary: &AllergenSummary) -> Value {
    let silent = summary.silent_on.iter().map(|(allergen, ids)| {
        let ids: Vec<&str> = ids.iter().map(AsRef::as_ref).collect();
        (allergen.word().to_owned(), json!(ids))
    });
    Value::Object(silent.collect())
}
