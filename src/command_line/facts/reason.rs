//! Why nothing, or not enough, can be suggested, and what a suggestion comes to.

use serde_json::{Value, json};

use super::{Fact, amount, axes, ids};
use crate::balance::{Balance, Measurand, Unweighed};
use crate::book::{Amount, IngredientId, MeasureId};
use crate::swap::{
    Adaptation, Adapted, Answer, Bound, CapKind, ComparedDrink, Hindrance, Impossible, Means,
    NoLevels, Obstacle, Reason, Shortfall, Suggestion, Unadaptable,
};

/// Why nothing, or not enough, can be suggested.
pub(in crate::command_line) fn swap_reason(reason: &Reason) -> Fact {
    let arguments = match reason {
        Reason::NotInVersion(id) => json!({ "ingredient": id.as_str() }),
        Reason::NotWeighed(unweighed) => not_weighed(unweighed),
        Reason::SweetnessNotKnown { drink, missing } => {
            let drink = match drink {
                ComparedDrink::Standard => "standard",
                ComparedDrink::PlainSwap => "plain-swap",
            };
            json!({ "drink": drink, "ingredients": ids(missing) })
        }
        Reason::NotVegan { ingredients, .. } => json!({ "ingredients": ids(ingredients) }),
        Reason::Contains {
            ingredients,
            allergen,
        }
        | Reason::MayContain {
            ingredients,
            allergen,
        } => json!({ "ingredients": ids(ingredients), "allergen": allergen.word() }),
        Reason::AllergensNotStated {
            ingredients,
            allergens,
        } => {
            let allergens: Vec<&str> = allergens.iter().map(|one| one.word()).collect();
            json!({ "ingredients": ids(ingredients), "allergens": allergens })
        }
        Reason::Impossible(impossible) => self::impossible(impossible),
        Reason::NotReached { axis, steps, why } => {
            json!({ "axis": axis.word(), "steps": steps, "why": hindrance(why) })
        }
        Reason::KeptTo(bounds) => {
            json!({ "bounds": bounds.iter().map(|one| bound(*one)).collect::<Vec<_>>() })
        }
        Reason::NotCompared { with, axes } => {
            json!({ "ingredient": with.as_str(), "axes": self::axes(axes) })
        }
        Reason::Unheld(unheld) => {
            json!({ "bound": bound(unheld.bound), "ingredients": ids(&unheld.missing) })
        }
    };
    Fact::new(reason.word(), arguments)
}

/// Why a drink can't be made in another way.
pub(in crate::command_line) fn unadaptable(reason: &Unadaptable) -> Fact {
    let arguments = match reason {
        Unadaptable::Impossible(impossible) => self::impossible(impossible),
        Unadaptable::NotInWholeMeasures { sweeteners } => {
            let step = |(id, step): &(IngredientId, Amount)| json!({ "ingredient": id.as_str(), "smallest": amount(step) });
            json!({ "sweeteners": sweeteners.iter().map(step).collect::<Vec<_>>() })
        }
        Unadaptable::NoCup
        | Unadaptable::AlreadyIced
        | Unadaptable::NoIceInBook
        | Unadaptable::NoIce
        | Unadaptable::IceFills
        | Unadaptable::NothingPouredHot => json!({}),
    };
    Fact::new(reason.word(), arguments)
}

/// By what a level of sugar is had that whole measures miss.
pub(in crate::command_line) fn means(means: &Means) -> Fact {
    let (kind, arguments) = match means {
        Means::PartOfMeasure { sweetener } => (
            "part-of-measure",
            json!({ "ingredient": sweetener.as_str() }),
        ),
        Means::OtherMeasure { sweetener, measure } => (
            "other-measure",
            json!({ "ingredient": sweetener.as_str(), "measure": measure.as_str() }),
        ),
        Means::Scale { sweetener } => ("scale", json!({ "ingredient": sweetener.as_str() })),
        Means::OtherSweetener { sweetener } => (
            "other-sweetener",
            json!({ "ingredient": sweetener.as_str() }),
        ),
    };
    Fact::new(kind, arguments)
}

fn not_weighed(unweighed: &Unweighed) -> Value {
    let measure = unweighed.measure.as_ref().map(MeasureId::as_str);
    json!({ "ingredient": unweighed.ingredient.as_str(), "measure": measure })
}

/// Why a drink has no sugar levels.
pub(in crate::command_line) fn no_levels(reason: &NoLevels) -> Fact {
    let arguments = match reason {
        NoLevels::NotWeighed(unweighed) => not_weighed(unweighed),
        NoLevels::SweetnessNotKnown { missing } => json!({ "ingredients": ids(missing) }),
        NoLevels::NoSweetener { sugar } => json!({ "sugar_g": sugar }),
        NoLevels::NotInSteps { sweeteners } => json!({ "ingredients": ids(sweeteners) }),
    };
    Fact::new(reason.word(), arguments)
}

/// What a suggestion comes to; its kind is what it is best at.
pub(in crate::command_line) fn suggestion(answer: &Answer, suggestion: &Suggestion) -> Value {
    let moved: Vec<&str> = suggestion
        .moves
        .iter()
        .map(|moved| moved.line.as_str())
        .collect();
    json!({
        "sugar_of_standard_g": sugar(&answer.standard),
        "sugar_by_equal_measures_g": sugar(&answer.plain),
        "sugar_g": sugar(&suggestion.balance),
        "moved_lines": moved,
        "level": suggestion.difference.is_level(),
        "within_one_step": suggestion.difference.within_one_step(),
        "not_compared": axes(suggestion.difference.not_compared()),
    })
}

/// What became of a drink that is made in another way.
pub(in crate::command_line) fn adapted(drink: &Adapted) -> Fact {
    let (kind, mut arguments) = match drink.adaptation {
        Adaptation::ToStandard => ("to-standard", json!({})),
        Adaptation::SugarLevel { floor_sugar } => {
            ("sugar-level", json!({ "floor_sugar_g": floor_sugar }))
        }
        Adaptation::Cup { ratio, fill } => ("cup", json!({ "ratio": ratio, "fill_percent": fill })),
        Adaptation::Iced => ("iced", json!({})),
        Adaptation::IceLevel { standard_volume } => (
            "ice-level",
            json!({ "volume_of_standard_ml": standard_volume }),
        ),
        Adaptation::Hot { poured_at } => ("hot", json!({ "poured_at_celsius": poured_at })),
    };
    if let Value::Object(map) = &mut arguments {
        let shortfalls: Vec<Value> = drink.shortfalls.iter().map(shortfall).collect();
        map.insert("sugar_g".to_owned(), sugar(&drink.balance));
        map.insert("shortfalls".to_owned(), json!(shortfalls));
    }
    Fact::new(kind, arguments)
}

/// The sugar of a drink, or the part of it that is known.
fn sugar(balance: &Balance) -> Value {
    let is_complete = balance.figures.complete(Measurand::TotalSugar).is_some();
    let sugar = balance.figures.of[Measurand::TotalSugar.slot()];
    json!({ "value": sugar, "complete": is_complete })
}

fn shortfall(shortfall: &Shortfall) -> Value {
    json!({
        "axis": shortfall.axis.word(),
        "steps": shortfall.steps,
        "why": hindrance(&shortfall.why),
    })
}

fn impossible(impossible: &Impossible) -> Value {
    match impossible {
        Impossible::Forbidden(forbidden) => {
            let mut arguments = obstacle(&forbidden.obstacle).arguments;
            if let (Value::Object(map), Some(carrier)) = (&mut arguments, &forbidden.carrier) {
                // In the unit of the cap, for the whole drink.
                let carrier =
                    json!({ "ingredient": carrier.ingredient.as_str(), "amount": carrier.amount });
                map.insert("carrier".to_owned(), carrier);
            }
            arguments
        }
        Impossible::LeastOverfills { fill, room } => {
            json!({ "fill_percent": fill, "room_percent": room })
        }
        Impossible::AllConditions => json!({}),
    }
}

fn obstacle(obstacle: &Obstacle) -> Fact {
    let arguments = match obstacle {
        Obstacle::FillOutOfReach => json!({}),
        Obstacle::Cup { fill, room } => json!({ "fill_percent": fill, "room_percent": room }),
        Obstacle::Temperature { celsius, window } => json!({
            "celsius": celsius,
            "from_celsius": window.from,
            "to_celsius": window.to,
        }),
        Obstacle::IceLeft { left, wanted } => json!({ "left_g": left, "wanted_g": wanted }),
        Obstacle::Cap { kind, found, most } => match kind {
            CapKind::Sugar => json!({ "found_g_per_100_ml": found, "most_g_per_100_ml": most }),
            CapKind::Energy => json!({ "found_kj": found, "most_kj": most }),
            CapKind::Cost => json!({ "found_cost": found, "most_cost": most }),
        },
        Obstacle::HotWater {
            hot,
            powder,
            needed,
        } => json!({ "hot_water_g": hot, "powder_g": powder, "needed_g_per_g": needed }),
    };
    Fact::new(obstacle.word(), arguments)
}

fn hindrance(why: &Hindrance) -> Value {
    let fact = match why {
        Hindrance::AtMost {
            line,
            ingredient,
            amount,
        } => Fact::new(
            "at-most",
            json!({
                "line": line.as_str(),
                "ingredient": ingredient.as_str(),
                "amount": self::amount(amount),
            }),
        ),
        Hindrance::AtLeast {
            line,
            ingredient,
            amount,
        } => Fact::new(
            "at-least",
            json!({
                "line": line.as_str(),
                "ingredient": ingredient.as_str(),
                "amount": self::amount(amount),
            }),
        ),
        Hindrance::Forbidden {
            line,
            ingredient,
            more,
            obstacle,
        } => Fact::new(
            "forbidden",
            json!({
                "line": line.as_str(),
                "ingredient": ingredient.as_str(),
                "more": more,
                "obstacle": self::obstacle(obstacle).beside(json!({})),
            }),
        ),
        Hindrance::PushesOthers {
            line,
            ingredient,
            more,
            axes,
        } => Fact::new(
            "pushes-others",
            json!({
                "line": line.as_str(),
                "ingredient": ingredient.as_str(),
                "more": more,
                "axes": self::axes(axes),
            }),
        ),
        Hindrance::TooCoarse {
            line,
            ingredient,
            step,
        } => Fact::new(
            "too-coarse",
            json!({
                "line": line.as_str(),
                "ingredient": ingredient.as_str(),
                "step": amount(step),
            }),
        ),
        Hindrance::BringsSugar { ingredient, grams } => Fact::new(
            "brings-sugar",
            json!({ "ingredient": ingredient.as_str(), "sugar_g": grams }),
        ),
        Hindrance::NoLine => Fact::alone("no-line"),
    };
    fact.beside(json!({}))
}

fn bound(bound: Bound) -> Value {
    let fact = match bound {
        Bound::Sugar(most) => Fact::new("sugar", json!({ "most_g_per_100_ml": most })),
        Bound::Energy(most) => Fact::new("energy", json!({ "most_kj": most })),
        Bound::Cost(most) => Fact::new("cost", json!({ "most_cost": most })),
        Bound::Temperature(window) => Fact::new(
            "temperature",
            json!({ "from_celsius": window.from, "to_celsius": window.to }),
        ),
        Bound::Cup => Fact::alone("cup"),
    };
    fact.beside(json!({}))
}
