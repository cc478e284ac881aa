//! Causes of uncertainty.

use serde_json::json;

use super::Fact;
use crate::balance::{Cause, Sweet};
use crate::book::{HighPotencySweetener, PolyolKind};

/// A cause of uncertainty of a figure.
pub(in crate::command_line) fn cause(cause: &Cause) -> Fact {
    let arguments = match cause {
        Cause::Composition(id, nutrient) => {
            json!({ "ingredient": id.as_str(), "nutrient": nutrient.word() })
        }
        Cause::Flavour(id, at) => json!({ "ingredient": id.as_str(), "flavour_index": at }),
        Cause::HighPotency(id, at) => json!({ "ingredient": id.as_str(), "sweetener_index": at }),
        Cause::SugarSplit(id)
        | Cause::Undeclared(id)
        | Cause::Density(id)
        | Cause::BulkDensity(id)
        | Cause::Extraction(id)
        | Cause::Retention(id)
        | Cause::Yield(id)
        | Cause::FreeSugars(id)
        | Cause::Temperature(id)
        | Cause::TastedSweetness(id)
        | Cause::PolyolEnergy(id) => json!({ "ingredient": id.as_str() }),
        Cause::Calibration(measure, with) => json!({
            "measure": measure.as_str(),
            "ingredient": with.as_ref().map(AsRef::<str>::as_ref),
        }),
        Cause::MeasureTemperature(id) => json!({ "measure": id.as_str() }),
        Cause::LineTemperature(line) | Cause::UseScatter(line) | Cause::Reading(line) => {
            json!({ "line": line.as_str() })
        }
        Cause::VesselHeat(id) | Cause::Cooling(id) => json!({ "vessel": id.as_str() }),
        Cause::RelativeSweetness(sugar) => json!({ "sugar": sweet(*sugar) }),
        Cause::PolyolSweetness(kind) => json!({ "polyol": kind.map(PolyolKind::word) }),
        Cause::Potency(kind) => json!({ "sweetener": sweetener(*kind) }),
        Cause::Batch(id, line) => json!({ "ingredient": id.as_str(), "line": line.as_str() }),
        Cause::RoomTemperature
        | Cause::SweetenerMixture
        | Cause::FreezingPoint
        | Cause::Melting
        | Cause::HeatModel
        | Cause::DensityModel => json!({}),
    };
    Fact::new(kind(cause), arguments)
}

/// The name of a cause.
fn kind(cause: &Cause) -> &'static str {
    match cause {
        Cause::Composition(..) => "composition",
        Cause::SugarSplit(..) => "sugar-split",
        Cause::Undeclared(..) => "undeclared",
        Cause::Flavour(..) => "flavour",
        Cause::HighPotency(..) => "high-potency",
        Cause::Density(..) => "density",
        Cause::BulkDensity(..) => "bulk-density",
        Cause::Calibration(..) => "calibration",
        Cause::Extraction(..) => "extraction",
        Cause::Retention(..) => "retention",
        Cause::Yield(..) => "yield",
        Cause::FreeSugars(..) => "free-sugars",
        Cause::RoomTemperature => "room-temperature",
        Cause::Temperature(..) => "temperature",
        Cause::MeasureTemperature(..) => "measure-temperature",
        Cause::LineTemperature(..) => "line-temperature",
        Cause::VesselHeat(..) => "vessel-heat",
        Cause::Cooling(..) => "cooling",
        Cause::RelativeSweetness(..) => "relative-sweetness",
        Cause::PolyolSweetness(..) => "polyol-sweetness",
        Cause::TastedSweetness(..) => "tasted-sweetness",
        Cause::PolyolEnergy(..) => "polyol-energy",
        Cause::Potency(..) => "potency",
        Cause::SweetenerMixture => "sweetener-mixture",
        Cause::FreezingPoint => "freezing-point",
        Cause::Melting => "melting",
        Cause::HeatModel => "heat-model",
        Cause::DensityModel => "density-model",
        Cause::Batch(..) => "batch",
        Cause::UseScatter(..) => "use-scatter",
        Cause::Reading(..) => "reading",
    }
}

/// The name of a sugar.
fn sweet(sugar: Sweet) -> &'static str {
    match sugar {
        Sweet::Glucose => "glucose",
        Sweet::Fructose => "fructose",
        Sweet::Lactose => "lactose",
        Sweet::Maltose => "maltose",
        Sweet::OtherSugar => "other-sugar",
    }
}

/// The name of a high-potency sweetener.
fn sweetener(kind: HighPotencySweetener) -> &'static str {
    match kind {
        HighPotencySweetener::Sucralose => "sucralose",
        HighPotencySweetener::Aspartame => "aspartame",
        HighPotencySweetener::AcesulfameK => "acesulfame-k",
        HighPotencySweetener::RebaudiosideA => "rebaudioside-a",
        HighPotencySweetener::Stevioside => "stevioside",
        HighPotencySweetener::Saccharin => "saccharin",
    }
}
