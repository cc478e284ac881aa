//! What is taken for granted of ingredients, what their statements name, and why a figure is not there.

use serde_json::json;

use super::Fact;
use crate::balance::{
    Assumed, Assumption, Because, Concern, Kind, NoFigure, StatementFinding, StatementKind,
};
use crate::book::IngredientId;

/// What is taken for granted of an ingredient.
pub(in crate::command_line) fn assumption(whose: &IngredientId, assumption: &Assumption) -> Fact {
    let (nutrient, flavour, unit) = match assumption.what {
        Assumed::Figure(nutrient) => (Some(nutrient.word()), None, Some(nutrient.unit())),
        Assumed::Flavour(at) => (None, Some(at), Some("house units/g")),
        Assumed::Moisture => (None, None, Some("g")),
        Assumed::NoSweetener => (None, None, Some("mg")),
        Assumed::Density => (None, None, Some("g/ml")),
        Assumed::SugarSplit
        | Assumed::FreeSugars
        | Assumed::Rest
        | Assumed::Packing
        | Assumed::PouredDensity
        | Assumed::PolyolKind => (None, None, None),
    };
    let (because, of_kind) = match assumption.because {
        Because::Kind(kind) => ("kind", Some(ingredient_kind(kind))),
        Because::StatementNamesNone => ("statement-names-none", None),
        Because::NothingLeft => ("nothing-left", None),
        Because::PartOfNothing => ("part-of-nothing", None),
    };
    let arguments = json!({
        "ingredient": whose.as_str(),
        "nutrient": nutrient,
        "flavour_index": flavour,
        "unit": unit,
        "because": because,
        "of_kind": of_kind,
    });
    Fact::new(assumed(assumption.what), arguments)
}

/// A question about what the statement of an ingredient names.
pub(in crate::command_line) fn statement(finding: &StatementFinding) -> Fact {
    let concern = match finding.concern {
        Concern::Contradicts => "contradicts",
        Concern::NotStated => "not-stated",
        Concern::Mention => "mention",
    };
    let allergen = match finding.kind {
        StatementKind::Allergen(allergen) => Some(allergen.word()),
        _ => None,
    };
    let arguments = json!({
        "ingredient": finding.ingredient.as_str(),
        "concern": concern,
        "words": finding.matched_words,
        "traces": finding.is_trace,
        "allergen": allergen,
        "sold_as_dairy_free": finding.is_sold_as_dairy_free,
    });
    Fact::new(statement_kind(finding.kind), arguments)
}

/// Why a figure can't be given, or only a part of it.
pub(in crate::command_line) fn no_figure(reason: NoFigure) -> Fact {
    Fact::alone(match reason {
        NoFigure::CupOrWarmRoom => "cup-or-warm-room",
        NoFigure::Cup => "cup",
        NoFigure::Price => "price",
        NoFigure::OnlyWater => "only-water",
        NoFigure::WarmerOnly => "gets-warmer-only",
        NoFigure::Empty => "empty",
    })
}

/// What can be taken for granted.
fn assumed(what: Assumed) -> &'static str {
    match what {
        Assumed::Figure(..) => "figure",
        Assumed::Moisture => "moisture",
        Assumed::SugarSplit => "sugar-split",
        Assumed::FreeSugars => "free-sugars",
        Assumed::NoSweetener => "no-sweetener",
        Assumed::Rest => "rest",
        Assumed::Density => "density",
        Assumed::Packing => "packing",
        Assumed::PouredDensity => "poured-density",
        Assumed::PolyolKind => "polyol-kind",
        Assumed::Flavour(..) => "flavour",
    }
}

/// What kind an ingredient is of.
fn ingredient_kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Water => "water",
        Kind::Sugar => "sugar",
        Kind::Sweetener => "sweetener",
        Kind::Milk => "milk",
        Kind::Creamer => "creamer",
        Kind::BrewedTea => "brewed-tea",
        Kind::Leaf => "leaf",
        Kind::TeaPowder => "tea-powder",
        Kind::FlavourSyrup => "flavour-syrup",
        Kind::Juice => "juice",
        Kind::FlavourPowder => "flavour-powder",
        Kind::Paste => "paste",
        Kind::Pieces => "pieces",
    }
}

/// What the words of a statement are a sign of.
fn statement_kind(kind: StatementKind) -> &'static str {
    match kind {
        StatementKind::Allergen(..) => "statement-allergen",
        StatementKind::Animal => "statement-animal",
        StatementKind::PerhapsAnimal => "statement-perhaps-animal",
        StatementKind::Phenylalanine => "statement-phenylalanine",
        StatementKind::Polyol => "statement-polyol",
        StatementKind::Sweetener => "statement-sweetener",
        StatementKind::ChildrenColour => "statement-children-colour",
        StatementKind::Quinine => "statement-quinine",
        StatementKind::Caffeine => "statement-caffeine",
    }
}
