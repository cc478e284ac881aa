//! What a control chart of a measure shows.

use serde_json::{Value, json};

use super::Fact;
use crate::balance::{ChartDay, ControlChart, FIRM, Shift, TooFewDays};
use crate::book::{IngredientId, VersionId};
use crate::command_line::json::uncertain;
use crate::swap::Drifted;

/// The last day with its limits; grams of one use.
pub(in crate::command_line) fn chart_limits(chart: &ControlChart, last: &ChartDay) -> Fact {
    let arguments = json!({
        "date": last.date,
        "mean_g": last.mean.value,
        "limits_g": last.mean.limits,
        "days": chart.base_days(),
    });
    Fact::new("limits", arguments)
}

/// That limits are rough.
pub(in crate::command_line) fn chart_rough(chart: &ControlChart) -> Fact {
    Fact::new("rough", json!({ "days": chart.base_days(), "firm": FIRM }))
}

/// Since when a measure has dosed otherwise, or that nothing shows.
pub(in crate::command_line) fn chart_shift(shift: Option<&Shift>) -> Fact {
    match shift {
        None => Fact::alone("steady"),
        Some(shift) => Fact::new(
            "shift",
            json!({
                "since": shift.since,
                "signal": shift.signal.word(),
                "before_g": uncertain(shift.before),
                "now_g": uncertain(shift.now),
                "relative": shift.relative(),
            }),
        ),
    }
}

/// Why there is no chart yet.
pub(in crate::command_line) fn too_few_days(few: &TooFewDays) -> Fact {
    let ingredient = few.ingredient.as_ref().map(IngredientId::as_str);
    let arguments = json!({ "ingredient": ingredient, "days": few.days, "wanted": few.wanted });
    Fact::new("too-few-days", arguments)
}

/// How far a drink moves with a measure.
pub(in crate::command_line) fn moved_drink(moved: &Drifted) -> Fact {
    let arguments: Value = json!({
        "recipe": moved.recipe.as_str(),
        "version": moved.version.as_ref().map(VersionId::as_str),
        "distance": moved.difference.distance,
    });
    Fact::new("moved", arguments)
}
