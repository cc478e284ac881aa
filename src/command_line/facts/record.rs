//! What was read beside what had been foretold.

use serde_json::json;

use super::Fact;
use crate::book::RescaledDoubt;
use crate::record::{ClassRecord, FROM_READINGS, Scored, Source};

/// What a record says of the doubts of its class.
pub(in crate::command_line) fn record_verdict(record: &ClassRecord) -> Fact {
    let arguments = json!({
        "times": record.scale.times,
        "low": record.scale.low,
        "high": record.scale.high,
        "accepted": record.accepted,
        "inside_rescaled": record.inside_rescaled(),
        "readings": record.readings.len(),
        "from_readings": FROM_READINGS,
    });
    Fact::new(record.verdict.word(), arguments)
}

/// What was accepted.
pub(in crate::command_line) fn rescaled_doubt(doubt: &RescaledDoubt) -> Fact {
    let arguments = json!({
        "class": doubt.class.word(),
        "times": doubt.times,
        "date": doubt.date,
        "person": doubt.by,
        "readings": doubt.readings,
        "inside": doubt.inside,
    });
    Fact::new("rescaled", arguments)
}

/// A reading.
pub(in crate::command_line) fn scored(scored: &Scored) -> Fact {
    let (kind, unit) = match &scored.source {
        Source::Cup { what, .. } => (what.word(), what.unit()),
        Source::Measure { .. } => ("measure", "g"),
        Source::Tasting(_) => ("tasting", ""),
    };
    let of = match &scored.source {
        Source::Cup {
            recipe, version, ..
        } => {
            json!({ "recipe": recipe.as_str(), "version": version.as_ref().map(AsRef::<str>::as_ref) })
        }
        Source::Measure {
            measure,
            ingredient,
        } => {
            json!({ "measure": measure.as_str(), "ingredient": ingredient.as_ref().map(AsRef::<str>::as_ref) })
        }
        Source::Tasting(id) => json!({ "tasting": id.as_str() }),
    };
    let figures = scored.figures.map(
        |(read, foretold, u)| json!({ "read": read, "foretold": foretold, "u": u, "unit": unit }),
    );
    let arguments = json!({
        "date": scored.date,
        "of": of,
        "inside": scored.inside,
        "inside_rescaled": scored.inside_rescaled,
        "figures": figures,
    });
    Fact::new(kind, arguments)
}
