//! A drink from the counter to the last sip.

use serde_json::json;

use super::Fact;
use crate::balance::{LastSipRemark, OtherWay};

/// A fact about a drink from the counter to the last sip.
pub(in crate::command_line) fn last_sip_remark(remark: &LastSipRemark) -> Fact {
    match remark {
        LastSipRemark::Level([from, to]) => {
            Fact::new("level", json!({ "from_minutes": from, "to_minutes": to }))
        }
        LastSipRemark::NeverLevel => Fact::alone("never-level"),
        LastSipRemark::Best { minutes, distance } => {
            Fact::new("best", json!({ "minutes": minutes, "distance": distance }))
        }
        LastSipRemark::NothingKnown => Fact::alone("nothing-known"),
        LastSipRemark::End(sip) => Fact::new(
            "end",
            json!({ "minutes": sip.minutes, "celsius": sip.temperature.value }),
        ),
        LastSipRemark::Arrives { sip, best_minutes } => Fact::new(
            "arrives",
            json!({
                "minutes": sip.minutes,
                "celsius": sip.temperature.value,
                "level": sip.is_level(),
                "best_minutes": best_minutes,
            }),
        ),
        LastSipRemark::Melts(rate) => Fact::new(
            "melts",
            json!({
                "grams_per_minute": rate.grams_per_minute.value,
                "u": rate.grams_per_minute.u,
                "stated": rate.is_stated,
            }),
        ),
    }
}

/// Another way to hand a drink over.
pub(in crate::command_line) fn other_way(way: &OtherWay) -> Fact {
    match way {
        OtherWay::Closure(kind) => Fact::new("closure", json!({ "closure": kind.word() })),
        OtherWay::Ice(percent) => Fact::new("ice", json!({ "percent": percent })),
    }
}
