//! What is wrong with a book, and where.

use serde_json::{Value, json};

use super::{Fact, ids};
use crate::book::{
    AgainstClaim, ChangedField, FigureName, FindingKind, Held, NamedUnit, Place, SlotKind,
    StatedClaim, Unfinished, YieldLimit,
};

/// Where something stands: ids, and the field of the file.
pub(in crate::command_line) fn place(place: &Place) -> Value {
    let (kind, arguments) = match place {
        Place::Settings => ("settings", json!({})),
        Place::Ingredient(id, field) => (
            "ingredient",
            json!({ "ingredient": id.as_str(), "field": field }),
        ),
        Place::Measure(id, field) => ("measure", json!({ "measure": id.as_str(), "field": field })),
        Place::Vessel(id, field) => ("vessel", json!({ "vessel": id.as_str(), "field": field })),
        Place::Recipe(id, field) => ("recipe", json!({ "recipe": id.as_str(), "field": field })),
        Place::Line(recipe, version, line) => (
            "line",
            json!({
                "recipe": recipe.as_str(),
                "version": version.as_ref().map(AsRef::<str>::as_ref),
                "line": line.as_str(),
            }),
        ),
        Place::Version(recipe, version) => (
            "version",
            json!({ "recipe": recipe.as_str(), "version": version.as_str() }),
        ),
        Place::Tasting(id, field) => ("tasting", json!({ "tasting": id.as_str(), "field": field })),
        Place::Approval(recipe, number) => (
            "approval",
            json!({ "recipe": recipe.as_str(), "number": number }),
        ),
    };
    Fact::new(kind, arguments).beside(json!({}))
}

/// What is wrong.
#[expect(clippy::too_many_lines, reason = "the arguments of each kind")]
pub(in crate::command_line) fn finding(kind: &FindingKind) -> Fact {
    let arguments = match kind {
        FindingKind::Dangling { kind, id, nearest } => {
            json!({ "names": kind.key(), "id": id, "nearest": nearest })
        }
        FindingKind::DuplicateInRecipe { id } => json!({ "id": id }),
        FindingKind::VersionCycle { chain } | FindingKind::HouseMadeCycle { chain } => {
            json!({ "chain": chain })
        }
        FindingKind::ChangeWithoutTarget { field } => json!({ "field": changed_field(*field) }),
        FindingKind::OutOfRange { what, value, range } => json!({
            "figure": figure(what),
            "value": value,
            "least": range.least,
            "most": range.most,
            "unit": range.unit,
        }),
        FindingKind::Unfinished(what) => unfinished(what),
        FindingKind::ImpossibleYield { grams, limit } => {
            let limit = match limit {
                YieldLimit::WhatGoesIn => "what-goes-in",
                YieldLimit::Solids => "solids",
            };
            json!({ "yield_g": grams, "limit": limit })
        }
        FindingKind::SumOverWhole { parts, sum, whole } => {
            let parts: Vec<&str> = parts.iter().map(|part| part.word()).collect();
            json!({ "parts": parts, "sum_g": sum, "whole_g": whole })
        }
        FindingKind::PartOverWhole {
            part,
            part_value,
            whole,
            whole_value,
        } => json!({
            "part": part.word(),
            "part_value": part_value,
            "part_unit": part.unit(),
            "whole": whole.word(),
            "whole_value": whole_value,
            "whole_unit": whole.unit(),
        }),
        FindingKind::SizeNotAsCalled { name, miscalled } => json!({
            "name": name,
            "measure_kind": miscalled.kind.word(),
            "called_number": miscalled.called.number,
            "called_unit": named_unit(miscalled.called.unit),
            "found_ml": miscalled.found_ml,
            "found_by": match miscalled.held {
                Held::ByReadings => "readings",
                Held::AsSetDown => "entry",
            },
        }),
        FindingKind::ReadingsDisagree { least, most } => {
            json!({ "least_g": least, "most_g": most })
        }
        FindingKind::TooManySlots { kind, count, limit } => {
            let what = match kind {
                SlotKind::Flavours => "flavours",
                SlotKind::HighPotencySweeteners => "high-potency-sweeteners",
            };
            json!({ "what": what, "count": count, "limit": limit })
        }
        FindingKind::NoMass {
            ingredient,
            measure,
        } => json!({
            "ingredient": ingredient.as_str(),
            "measure": measure.as_ref().map(AsRef::<str>::as_ref),
        }),
        FindingKind::HiddenCharacters { shown } => json!({ "shown": shown }),
        FindingKind::NoDate { found } => json!({ "found": found }),
        FindingKind::EnergyNotOfComposition {
            stated,
            from,
            to,
            percent,
            fits_as_kilocalories,
        } => json!({
            "stated_kj": stated,
            "from_kj": from,
            "to_kj": to,
            "off_percent": percent,
            "fits_as_kilocalories": fits_as_kilocalories,
        }),
        FindingKind::DensityNotOfComposition {
            what,
            stated,
            low,
            high,
        } => json!({
            "figure": figure(what),
            "stated_g_per_ml": stated,
            "low_g_per_ml": low,
            "high_g_per_ml": high,
        }),
        FindingKind::ClaimNotCarried { claim, against } => {
            let claim = match claim {
                StatedClaim::DairyFree => "dairy-free",
                StatedClaim::Vegan => "vegan",
                StatedClaim::AllergensListed => "allergens-listed",
            };
            json!({ "claim": claim, "against": against_claim(against) })
        }
        FindingKind::StalePrice {
            date,
            months,
            newest,
        } => json!({ "date": date, "months": months, "newest": newest }),
        FindingKind::NoLongerSold { ingredient } => json!({ "ingredient": ingredient.as_str() }),
        FindingKind::MoreAnswersThanPeople { answers, named } => {
            json!({ "answers": answers, "named": named })
        }
        FindingKind::ChangedSinceApproval { date } => json!({ "date": date }),
        FindingKind::MoreFindings { listed } => json!({ "listed": listed }),
        FindingKind::NeverCalibrated
        | FindingKind::SeveralFillAmounts
        | FindingKind::TooManyToCheck
        | FindingKind::FillOutOfReach
        | FindingKind::NotALeaf
        | FindingKind::NoCup
        | FindingKind::MarkedOnly => json!({}),
    };
    Fact::new(kind.key(), arguments)
}

fn unfinished(what: &Unfinished) -> Value {
    match what {
        Unfinished::EmptyReading => json!({ "what": "empty-reading" }),
        Unfinished::SugarFractions { sum } => json!({ "what": "sugar-fractions", "sum": sum }),
        Unfinished::Window { what, from, to } => json!({
            "what": "window",
            "figure": figure(what),
            "from_celsius": from,
            "to_celsius": to,
        }),
        Unfinished::NoStep(axis) => json!({ "what": "no-step", "axis": axis.word() }),
        Unfinished::MoreRightThanPeople { people, right } => {
            json!({ "what": "more-right-than-people", "people": people, "right": right })
        }
        Unfinished::NotTwoCups { cups } => json!({ "what": "not-two-cups", "cups": cups }),
        Unfinished::NoSuchCup { cup, cups } => {
            json!({ "what": "no-such-cup", "cup": cup, "cups": cups })
        }
    }
}

fn against_claim(against: &AgainstClaim) -> Value {
    let (kind, part, allergen) = match against {
        AgainstClaim::Contains(allergen) => ("contains", None, Some(allergen)),
        AgainstClaim::Lactose => ("lactose", None, None),
        AgainstClaim::Honey => ("honey", None, None),
        AgainstClaim::NotDairyFree => ("not-dairy-free", None, None),
        AgainstClaim::PartContains(part, allergen) => ("part-contains", Some(part), Some(allergen)),
        AgainstClaim::PartIsNot(part) => ("part-is-not", Some(part), None),
    };
    let arguments = json!({
        "ingredients": ids(part),
        "allergen": allergen.map(|allergen| allergen.word()),
    });
    Fact::new(kind, arguments).beside(json!({}))
}

/// A number of the book: its name, and what it is of where there are several.
fn figure(name: &FigureName) -> Value {
    let of = match name {
        FigureName::Nutrient(nutrient) => Some(nutrient.word()),
        FigureName::Level(level) => Some(level.as_str()),
        FigureName::NoticeableStep(axis)
        | FigureName::StepFloor(axis)
        | FigureName::AxisWeight(axis) => Some(axis.word()),
        _ => None,
    };
    json!({ "name": figure_name(name), "of": of })
}

/// The name of a number of the book.
fn figure_name(name: &FigureName) -> &'static str {
    match name {
        FigureName::Amount => "amount",
        FigureName::Temperature => "temperature",
        FigureName::CarriedSyrup => "carried-syrup",
        FigureName::MenuPrice => "menu-price",
        FigureName::DrinkingTemperature => "drinking-temperature",
        FigureName::SugarLevel => "sugar-level",
        FigureName::Nutrient(..) => "nutrient",
        FigureName::Uncertainty => "uncertainty",
        FigureName::FreeSugarFraction => "free-sugar-fraction",
        FigureName::SugarFraction => "sugar-fraction",
        FigureName::DextroseEquivalent => "dextrose-equivalent",
        FigureName::Density => "density",
        FigureName::BulkDensity => "bulk-density",
        FigureName::PackPrice => "pack-price",
        FigureName::EarlierPackPrice => "earlier-pack-price",
        FigureName::PackContent => "pack-content",
        FigureName::Waste => "waste",
        FigureName::Yield => "yield",
        FigureName::Extraction => "extraction",
        FigureName::SteepingTime => "steeping-time",
        FigureName::Volume => "volume",
        FigureName::Mass => "mass",
        FigureName::Increment => "increment",
        FigureName::Reading => "reading",
        FigureName::UsesInReading => "uses-in-reading",
        FigureName::ReadingTime => "reading-time",
        FigureName::Capacity => "capacity",
        FigureName::SpecificHeat => "specific-heat",
        FigureName::CoolingTime => "cooling-time",
        FigureName::CoolingFactor => "cooling-factor",
        FigureName::Price => "price",
        FigureName::Height => "height",
        FigureName::BottomDiameter => "bottom-diameter",
        FigureName::TopDiameter => "top-diameter",
        FigureName::HeadRoom => "head-room",
        FigureName::RoomTemperature => "room-temperature",
        FigureName::RefrigeratorTemperature => "refrigerator-temperature",
        FigureName::HotDrinkingTemperature => "hot-drinking-temperature",
        FigureName::IcedDrinkingTemperature => "iced-drinking-temperature",
        FigureName::IceTemperature => "ice-temperature",
        FigureName::IceBulkDensity => "ice-bulk-density",
        FigureName::IceMeltRate => "ice-melt-rate",
        FigureName::IceLeft => "ice-left",
        FigureName::Level(..) => "level",
        FigureName::HotWindow => "hot-window",
        FigureName::IcedWindow => "iced-window",
        FigureName::SalesTax => "sales-tax",
        FigureName::Tasters => "tasters",
        FigureName::TimesAsMuch => "times-as-much",
        FigureName::TastedTimes => "tasted-times",
        FigureName::DoubtTimes => "doubt-times",
        FigureName::ScaleStep => "scale-step",
        FigureName::ThermometerError => "thermometer-error",
        FigureName::MarkError => "mark-error",
        FigureName::NoticeableStep(..) => "noticeable-step",
        FigureName::StepFloor(..) => "step-floor",
        FigureName::AxisWeight(..) => "axis-weight",
    }
}

/// What a change changes.
fn changed_field(field: ChangedField) -> &'static str {
    match field {
        ChangedField::Ingredient => "ingredient",
        ChangedField::Amount => "amount",
        ChangedField::Temperature => "temperature",
        ChangedField::Role => "role",
        ChangedField::Stage => "stage",
        ChangedField::CarriedSyrup => "carried-syrup",
        ChangedField::Note => "note",
        ChangedField::Instruction => "instruction",
        ChangedField::AddedLine => "added-line",
        ChangedField::RemovedLine => "removed-line",
        ChangedField::Order => "order",
        ChangedField::Cup => "cup",
        ChangedField::Shaker => "shaker",
        ChangedField::Straining => "straining",
        ChangedField::DrinkingTemperature => "drinking-temperature",
        ChangedField::MenuPrice => "menu-price",
        ChangedField::SugarLevel => "sugar-level",
    }
}

/// What a measure is called by.
fn named_unit(unit: NamedUnit) -> &'static str {
    match unit {
        NamedUnit::Millilitre => "millilitre",
        NamedUnit::Teaspoon => "teaspoon",
        NamedUnit::Tablespoon => "tablespoon",
        NamedUnit::Cup => "cup",
        NamedUnit::FluidOunce => "fluid-ounce",
        NamedUnit::Pint => "pint",
        NamedUnit::Quart => "quart",
    }
}
