//! The cups of a drink.

use serde_json::{Value, json};

use super::{Fact, cause};
use crate::balance::Taste;
use crate::book::Axis;
use crate::cups::{Cups, CupsRemark, DrawnCause, OfAHundred, Remedy, When};

/// A fact about the cups of a drink; shares from 0 to 1, cups of a hundred where a sentence counts them.
pub(in crate::command_line) fn cups_remark(cups: &Cups, remark: &CupsRemark) -> Fact {
    match remark {
        CupsRemark::Share { within, off } => {
            let off = off.iter().map(|(of, axis, taste)| {
                json!({ "cups": of_a_hundred(*of), "axis": axis.word(), "taste": self::taste(*taste) })
            });
            Fact::new(
                "share",
                json!({ "cups": of_a_hundred(*within), "off": off.collect::<Vec<_>>() }),
            )
        }
        CupsRemark::NothingKnown => Fact::alone("nothing-known"),
        CupsRemark::Drawn => Fact::new(
            "drawn",
            json!({
                "cups": cups.question.shifts * cups.question.per_shift,
                "shifts": cups.question.shifts,
                "worst_and_best_shift": cups.shifts,
            }),
        ),
        CupsRemark::RecipeOff(off) => {
            let off = off
                .iter()
                .map(|(axis, steps)| json!({ "axis": axis.word(), "steps": steps }));
            Fact::new("recipe-off", json!({ "off": off.collect::<Vec<_>>() }))
        }
        CupsRemark::NotKnown(axes) => Fact::new(
            "not-known",
            json!({ "axes": axes.iter().map(Axis::word).collect::<Vec<_>>() }),
        ),
        CupsRemark::Helps(helps) => Fact::new(helps.remedy.word(), of_remedy(&helps.remedy)),
        CupsRemark::NothingHelps => Fact::alone("nothing-helps"),
        CupsRemark::Varies(when, causes) => {
            let kind = if *when == When::EachCup {
                "each-cup"
            } else {
                "each-shift"
            };
            Fact::new(kind, json!({ "causes": drawn_causes(causes) }))
        }
        CupsRemark::Held => Fact::alone("held"),
    }
}

/// Causes that are drawn, each with what it alone does.
pub(in crate::command_line) fn drawn_causes(causes: &[DrawnCause]) -> Vec<Value> {
    let value = |drawn: &DrawnCause| {
        cause(&drawn.cause).beside(json!({
            "drawn_each": drawn.when.word(),
            "axis": drawn.axis.word(),
            "steps": drawn.steps,
        }))
    };
    causes.iter().map(value).collect()
}

fn of_remedy(remedy: &Remedy) -> Value {
    match remedy {
        Remedy::BringLevel => json!({}),
        Remedy::Weigh(line, grams) => json!({ "line": line.as_str(), "grams": grams }),
        Remedy::SmallerTwice(line, measure) => {
            json!({ "line": line.as_str(), "measure": measure.as_str() })
        }
        Remedy::Recalibrate(measure) => json!({ "measure": measure.as_str() }),
        Remedy::Thermometer(of, limits) => {
            let of = cause(of);
            json!({ "cause": { "kind": of.kind, "arguments": of.arguments }, "limits_kelvin": limits })
        }
    }
}

fn of_a_hundred(of: OfAHundred) -> Value {
    match of {
        OfAHundred::All => json!(100),
        OfAHundred::Over99 => json!("over 99"),
        OfAHundred::About(cups) => json!(cups),
        OfAHundred::Under1 => json!("under 1"),
        OfAHundred::None => json!(0),
    }
}

fn taste(taste: Taste) -> &'static str {
    match taste {
        Taste::Less => "less",
        Taste::Same => "same",
        Taste::More => "more",
    }
}
