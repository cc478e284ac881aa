//! Why one cup is off.

use serde_json::{Value, json};

use super::{Fact, cause};
use crate::command_line::json::uncertain;
use crate::cups::{Fault, LikelyFault, WhyOffRemark};

/// A fact about a cup that is off; probabilities from 0 to 1.
pub(in crate::command_line) fn why_off_remark(remark: &WhyOffRemark) -> Fact {
    match remark {
        WhyOffRemark::Reading(off) => Fact::new(
            "reading",
            json!({
                "measured": off.reading.measured.word(),
                "read": off.reading.read.value,
                "should": off.should.map(|should| should.value),
                "apart": off.apart,
            }),
        ),
        WhyOffRemark::NothingToCompare => Fact::alone("nothing-to-compare"),
        WhyOffRemark::Likely(likely) => Fact::new("likely", json!({ "cause": value(likely) })),
        WhyOffRemark::Others(others) => Fact::new("others", json!({ "causes": values(others) })),
        WhyOffRemark::CannotTell(listed) => {
            Fact::new("cannot-tell", json!({ "causes": values(listed) }))
        }
        WhyOffRemark::Unexplained => Fact::alone("unexplained"),
        WhyOffRemark::Next(next) => Fact::new(
            "next",
            json!({ "measure": next.measured.word(), "likeliest_then": next.likely }),
        ),
    }
}

/// What went wrong.
pub(in crate::command_line) fn likely_fault(likely: &LikelyFault) -> Fact {
    let (Some(fault), size) = (&likely.fault, likely.size) else {
        return Fact::alone("only-scatter");
    };
    let (key, size) = match fault {
        Fault::Warmer(_) | Fault::Cooler(_) => ("kelvin", size),
        _ => ("grams", size),
    };
    let mut arguments = match fault {
        Fault::Warmer(of) | Fault::Cooler(of) => {
            let of = cause(of);
            json!({ "cause": { "kind": of.kind, "arguments": of.arguments } })
        }
        _ => json!({ "line": fault.line().map(AsRef::<str>::as_ref) }),
    };
    if let Some(size) = size {
        arguments[key] = uncertain(size);
    }
    Fact::new(fault.word(), arguments)
}

fn value(likely: &LikelyFault) -> Value {
    let fact = likely_fault(likely);
    json!({ "kind": fact.kind, "arguments": fact.arguments, "probability": likely.probability })
}

fn values(likely: &[LikelyFault]) -> Vec<Value> {
    likely.iter().map(value).collect()
}
