//! What is said of the engine's findings on screens, cards and in commands: causes of doubt, gaps, claims.

use super::{
    AllergenSummary, Assumed, Assumption, Balance, Because, Cause, CoolingQuestion, Kind,
    Measurand, Sweet, Verdict,
};
use crate::book::{
    Allergen, Amount, Book, Evidence, IngredientId, LineId, MeasureId, MeasureKind, Nutrient,
    PolyolKind, Stage, VesselId,
};
use crate::quantity::{name_as_shown, rounded, show_number};

/// A cause of uncertainty in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CauseWords {
    /// What is uncertain: "the pear pump with Tambrel pear syrup".
    pub what: String,
    /// What would narrow it: "weigh ten presses three times".
    pub narrow: Option<String>,
}

/// Says a cause the way the counter would.
#[expect(
    clippy::too_many_lines,
    reason = "one arm for each cause, as in a table"
)]
pub fn cause_words(book: &Book, balance: &Balance, cause: &Cause) -> CauseWords {
    let words = |what: String, narrow: Option<&str>| CauseWords {
        what,
        narrow: narrow.map(str::to_owned),
    };
    match cause {
        Cause::Composition(id, nutrient) => composition_words(book, id, *nutrient),
        Cause::SugarSplit(id) => {
            let what = format!("how the sugars of {} divide", ingredient_name(book, id));
            words(what, Some("ask the maker which sugars they are"))
        }
        Cause::Undeclared(id) => {
            let what = format!(
                "water and solids that the pack of {} leaves out",
                ingredient_name(book, id)
            );
            words(what, Some("ask for the specification sheet"))
        }
        Cause::Flavour(id, at) => {
            // The index counts the flavours of the ingredient, not those of the drink.
            let flavour = book
                .ingredient(id)
                .and_then(|item| item.composition.flavours.get(*at))
                .map_or("flavour", |flavour| flavour.name.as_str());
            let what = format!(
                "how strong the {flavour} of {} is",
                ingredient_name(book, id)
            );
            words(what, Some("taste it side by side with the standard"))
        }
        Cause::HighPotency(id, _) => {
            let what = format!("the sweetener in {}", ingredient_name(book, id));
            words(what, Some("ask for the specification sheet"))
        }
        Cause::Density(id) => words(
            format!("the density of {}", ingredient_name(book, id)),
            Some("weigh 100 ml of it"),
        ),
        Cause::BulkDensity(id) => words(
            format!(
                "how densely {} lies in a measure",
                ingredient_name(book, id)
            ),
            Some("weigh level measures of it"),
        ),
        Cause::Calibration(measure, id) => calibration_words(book, measure, id.as_ref()),
        Cause::Extraction(id) => words(
            format!("how much of {} dissolves", ingredient_name(book, id)),
            Some("measure the soluble solids of the brew"),
        ),
        Cause::Retention(id) => words(
            format!("how much water {} keeps back", ingredient_name(book, id)),
            Some("weigh the brew that comes off it"),
        ),
        Cause::FreeSugars(id) => words(
            format!(
                "which part of the sugars of {} is added",
                ingredient_name(book, id)
            ),
            Some("read the statement of ingredients"),
        ),
        Cause::MeasureTemperature(id) => words(
            format!("how hot the {} pours", measure_name(book, id)),
            Some("read a thermometer as it pours"),
        ),
        Cause::LineTemperature(line) => words(
            format!("how warm {} goes in", line_name(book, balance, line)),
            Some("read a thermometer as it is poured"),
        ),
        Cause::Batch(id, _) => words(
            format!(
                "how a batch of {} was weighed and measured out",
                ingredient_name(book, id)
            ),
            Some("weigh what goes into a batch"),
        ),
        Cause::PolyolSweetness(kind) => words(
            format!(
                "how sweet {} is: published values disagree",
                kind.map_or("a polyol of no known kind", PolyolKind::word)
            ),
            None,
        ),
        Cause::PolyolEnergy(id) => words(
            format!("which polyol {} holds", ingredient_name(book, id)),
            Some("read the statement of ingredients"),
        ),
        Cause::Potency(_) => words(
            "how sweet the intense sweetener is: published values disagree".to_owned(),
            Some("taste it side by side with the standard"),
        ),
        Cause::SweetenerMixture => words(
            "what several intense sweeteners taste of together".to_owned(),
            Some("taste it side by side with the standard"),
        ),
        Cause::FreezingPoint => words(
            "at how many degrees the drink freezes".to_owned(),
            Some("read a thermometer in the iced drink"),
        ),
        Cause::Melting => words(
            "how far the ice has melted when the drink is handed over".to_owned(),
            Some("read a thermometer in the iced drink"),
        ),
        Cause::HeatModel => words(
            "the heat that is lost while mixing and pouring".to_owned(),
            Some("read a thermometer in the drink as it is handed over"),
        ),
        Cause::DensityModel => words(
            "the volume that the parts of the drink add up to".to_owned(),
            Some("weigh 100 ml of the drink"),
        ),
        Cause::Yield(id) => words(
            format!("what a batch of {} yields", ingredient_name(book, id)),
            Some("weigh the next three batches"),
        ),
        Cause::RoomTemperature => words(
            "the temperature of the room".to_owned(),
            Some("read a thermometer"),
        ),
        Cause::Temperature(id) => words(
            format!(
                "how warm {} comes to the counter",
                ingredient_name(book, id)
            ),
            Some("read a thermometer as it is poured"),
        ),
        Cause::VesselHeat(id) => words(
            format!("the heat that {} takes", vessel_name(book, id)),
            Some("weigh it empty and state what it is made of"),
        ),
        Cause::Cooling(id) => words(
            format!("how fast {} cools", vessel_name(book, id)),
            book.vessel(id)
                .map(|cup| CoolingQuestion::of(cup, balance.drinking_temperature).words()),
        ),
        Cause::RelativeSweetness(sweet) => {
            words(sweetness_words(*sweet, balance.drinking_temperature), None)
        }
        Cause::UseScatter(line) => scatter_words(book, balance, line),
        Cause::Reading(line) => words(
            format!(
                "reading the scale or the mark, for {}",
                line_name(book, balance, line)
            ),
            None,
        ),
    }
}

fn composition_words(book: &Book, id: &IngredientId, nutrient: Nutrient) -> CauseWords {
    let name = ingredient_name(book, id);
    let figure = book
        .ingredient(id)
        .and_then(|ingredient| ingredient.composition.get(nutrient));
    let (source, narrow) = match figure.map(|figure| figure.evidence) {
        Some(Evidence::Label) => (" on the label", Some("ask for the specification sheet")),
        Some(Evidence::SpecSheet) => (" on the specification sheet", None),
        Some(Evidence::Measured) => (" as measured here", Some("measure it again")),
        Some(Evidence::Published) => (
            " from a published table",
            Some("read the label of the pack"),
        ),
        Some(Evidence::Assumed) => (
            ", which is assumed",
            Some("read the label, or ask the maker"),
        ),
        None => (
            ", which is worked out from the rest",
            Some("ask for the specification sheet"),
        ),
    };
    CauseWords {
        what: format!("the {} of {name}{source}", nutrient.word()),
        narrow: narrow.map(str::to_owned),
    }
}

fn measure_name(book: &Book, id: &MeasureId) -> String {
    book.measure(id)
        .map_or_else(|| id.to_string(), |measure| measure.name.clone())
}

fn calibration_words(book: &Book, measure: &MeasureId, with: Option<&IngredientId>) -> CauseWords {
    let Some(measure) = book.measure(measure) else {
        return CauseWords {
            what: "a measure that is not in the book".to_owned(),
            narrow: None,
        };
    };
    let (_, uses) = measure.words();
    let readings = measure
        .calibration(with)
        .map_or(0, |calibration| calibration.readings);
    let narrow = match readings {
        0 => format!("nobody has weighed it: weigh ten {uses} three times"),
        1 => format!("weighed once: weigh ten {uses} twice more"),
        _ => format!("weigh ten {uses} three times more"),
    };
    CauseWords {
        what: match with {
            Some(id) => format!("the {} with {}", measure.name, ingredient_name(book, id)),
            None => format!("what the {} holds", measure.name),
        },
        narrow: Some(narrow),
    }
}

fn sweetness_words(sweet: Sweet, celsius: f64) -> String {
    let word = sweet.word();
    let verb = if sweet == Sweet::OtherSugar {
        "are"
    } else {
        "is"
    };
    format!(
        "how sweet {word} {verb} at {} °C: published values disagree",
        show_number(celsius, 0)
    )
}

fn scatter_words(book: &Book, balance: &Balance, line: &LineId) -> CauseWords {
    let measure = balance
        .resolved
        .line(line)
        .and_then(|line| match &line.amount {
            Amount::Count(_, measure) => book.measure(measure),
            _ => None,
        });
    let narrow = match measure.map(|measure| measure.kind) {
        Some(MeasureKind::Pump | MeasureKind::Button) => "press to the stop, or weigh this line",
        Some(MeasureKind::Scoop | MeasureKind::Spoon | MeasureKind::IceScoop) => {
            "strike it level, or weigh this line"
        }
        Some(MeasureKind::Jug) | None => "weigh this line",
    };
    CauseWords {
        what: format!(
            "the hand at the counter: no use is quite like the next, for {}",
            line_name(book, balance, line)
        ),
        narrow: Some(narrow.to_owned()),
    }
}

/// Brand and name of an ingredient; its id when it is no longer in the book.
pub fn ingredient_name(book: &Book, id: &IngredientId) -> String {
    book.ingredient(id).map_or_else(
        || id.to_string(),
        |ingredient| name_as_shown(&ingredient.full_name()).into_owned(),
    )
}

/// Where a line is found in the drink.
pub fn stage_words(stage: Stage) -> &'static str {
    match stage {
        Stage::Mixed => "mixed in",
        Stage::Topping => "sits in the cup",
        Stage::OnTop => "on top",
        Stage::Steeped => "steeped",
    }
}

fn vessel_name(book: &Book, id: &VesselId) -> String {
    book.vessel(id)
        .map_or_else(|| id.to_string(), |vessel| format!("the {}", vessel.name))
}

fn line_name(book: &Book, balance: &Balance, line: &LineId) -> String {
    let line = balance.resolved.line(line);
    line.map_or_else(
        || "a line".to_owned(),
        |line| ingredient_name(book, &line.ingredient),
    )
}

/// "Velloom oat creamer and Ondry creamer".
pub fn names(book: &Book, ids: &[IngredientId]) -> String {
    let names: Vec<String> = ids.iter().map(|id| ingredient_name(book, id)).collect();
    match names.split_last() {
        Some((last, [])) => last.clone(),
        Some((last, others)) => format!("{} and {last}", others.join(", ")),
        None => String::new(),
    }
}

/// "Whole milk: no tea solids, ± 0 g in 100 g, as in every milk": what is taken for granted of an ingredient.
pub fn assumption_words(book: &Book, whose: &IngredientId, assumption: &Assumption) -> String {
    let name = ingredient_name(book, whose);
    let because = match assumption.because {
        Because::Kind(kind) => format!("as {}", kind_words(kind)),
        Because::StatementNamesNone => "its statement of ingredients names none".to_owned(),
        Because::NothingLeft => "the other figures add up to the whole".to_owned(),
        Because::PartOfNothing => "it is a part of something that is none".to_owned(),
    };
    let number = |unit: &str| {
        assumption.figure.map_or_else(String::new, |figure| {
            let shown = rounded(figure.value, Some(figure.u));
            let doubt = shown.u.map_or_else(String::new, |u| format!(" ± {u}"));
            format!(" {}{doubt} {unit}", shown.value)
        })
    };
    let what = match assumption.what {
        Assumed::Figure(nutrient) => {
            format!(
                "{}{}",
                nutrient.word(),
                number(&format!("{} in 100 g", nutrient.unit()))
            )
        }
        Assumed::Moisture => format!("moisture{}", number("g in 100 g")),
        Assumed::SugarSplit => "which sugars it holds".to_owned(),
        Assumed::FreeSugars => "which part of its sugars is free".to_owned(),
        Assumed::NoSweetener => "no intense sweetener".to_owned(),
        Assumed::Rest => "what the rest of it is".to_owned(),
        Assumed::Density => "its density, from its composition".to_owned(),
        Assumed::Packing => "how much of a measure its pieces fill".to_owned(),
        Assumed::PolyolKind => "which polyol it holds".to_owned(),
        Assumed::Flavour(_) => "as strong in flavour as another brand".to_owned(),
    };
    format!("{name}: {what}; {because}")
}

fn kind_words(kind: Kind) -> &'static str {
    match kind {
        Kind::Water => "water is",
        Kind::Sugar => "in sugars and plain syrups",
        Kind::Sweetener => "in sweeteners",
        Kind::Milk => "in milk",
        Kind::Creamer => "in creamers and plant drinks",
        Kind::BrewedTea => "in brewed tea",
        Kind::Leaf => "in tea leaf",
        Kind::TeaPowder => "in tea powders",
        Kind::FlavourSyrup => "in flavoured syrups",
        Kind::Juice => "in juices and purées",
        Kind::FlavourPowder => "in flavoured powders",
        Kind::Paste => "in pastes",
        Kind::Pieces => "in toppings",
    }
}

/// The claim alone; what speaks against it is in the allergens.
pub fn vegan_words(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Yes => "vegan by its ingredients",
        Verdict::No => "not vegan",
        Verdict::NotKnown => {
            "vegan or not: not known, an ingredient does not state it or is contradicted"
        }
    }
}

/// How the allergens of one drink differ from those of another, each in a clause of its own; none where they do not.
pub fn allergen_differences(
    book: &Book,
    from: &AllergenSummary,
    to: &AllergenSummary,
) -> Vec<String> {
    let list = |allergens: &mut dyn Iterator<Item = &Allergen>| {
        let words: Vec<&str> = allergens.map(|allergen| allergen.word()).collect();
        (!words.is_empty()).then(|| words.join(", "))
    };
    let comes = list(&mut to.contains.difference(&from.contains));
    let gone = &from.contains - &to.contains;
    let goes = list(&mut gone.difference(&to.may_contain));
    let may = list(&mut to.may_contain.difference(&from.may_contain));
    let may_no_more = list(&mut from.may_contain.difference(&to.may_contain));
    let silent: Vec<IngredientId> = to
        .not_stated
        .difference(&from.not_stated)
        .cloned()
        .collect();
    // Where a pack is silent, nothing can be said of all ingredients.
    let by = if to.not_stated.is_empty() {
        "by its ingredients"
    } else {
        "by the packs that state them"
    };
    let clauses = [
        comes.map(|words| format!("contains {words} as well")),
        goes.map(|words| format!("no {words} {by}")),
        may.map(|words| format!("may contain {words}")),
        may_no_more.map(|words| format!("no pack says that it may contain {words}")),
        (!silent.is_empty()).then(|| {
            format!(
                "allergens are not stated by {}: read the label",
                names(book, &silent)
            )
        }),
    ];
    clauses.into_iter().flatten().collect()
}

/// The allergens of a drink, by what the packs say.
pub fn allergen_words(book: &Book, balance: &Balance) -> String {
    let summary = &balance.allergens;
    let list = |set: &std::collections::BTreeSet<crate::book::Allergen>| {
        set.iter()
            .map(|allergen| allergen.word())
            .collect::<Vec<_>>()
            .join(", ")
    };
    let mut parts = Vec::new();
    if !summary.contains.is_empty() {
        parts.push(format!("contains {}", list(&summary.contains)));
    }
    if !summary.may_contain.is_empty() {
        parts.push(format!("may contain {}", list(&summary.may_contain)));
    }
    if !summary.not_stated.is_empty() {
        let ids: Vec<IngredientId> = summary.not_stated.iter().cloned().collect();
        parts.push(format!("not stated by {}", names(book, &ids)));
    }
    if parts.is_empty() {
        "no allergen is named on any pack".to_owned()
    } else {
        parts.join("; ")
    }
}

/// The figure of a composition that a figure of the drink is made of; `None` when it is made of several.
pub fn nutrient_behind(measurand: Measurand) -> Option<Nutrient> {
    Some(match measurand {
        Measurand::TotalSugar | Measurand::FreeSugars | Measurand::Sweetness => Nutrient::Sugars,
        Measurand::Fat | Measurand::Creaminess => Nutrient::Fat,
        Measurand::Saturates => Nutrient::Saturates,
        Measurand::Carbohydrate => Nutrient::Carbohydrate,
        Measurand::Polyols => Nutrient::Polyols,
        Measurand::Fibre => Nutrient::Fibre,
        Measurand::Protein => Nutrient::Protein,
        Measurand::Salt => Nutrient::Salt,
        Measurand::Caffeine => Nutrient::Caffeine,
        Measurand::TeaSolids | Measurand::TeaStrength => Nutrient::TeaSolids,
        Measurand::Acid | Measurand::Acidity => Nutrient::Acid,
        Measurand::Brix => Nutrient::Water,
        _ => return None,
    })
}

/// "Velloom oat drink (label)": the ingredients of the drink grouped by the evidence of their figures, the strongest first.
pub fn evidence_words(book: &Book, balance: &Balance, nutrient: Nutrient) -> Vec<String> {
    Evidence::ALL
        .into_iter()
        .filter_map(|evidence| {
            let mut ids: Vec<IngredientId> = Vec::new();
            for line in &balance.lines {
                let figure = book
                    .ingredient(&line.ingredient)
                    .and_then(|ingredient| ingredient.composition.get(nutrient));
                let matters =
                    figure.is_some_and(|figure| figure.evidence == evidence && figure.value != 0.0);
                if matters && !ids.contains(&line.ingredient) {
                    ids.push(line.ingredient.clone());
                }
            }
            (!ids.is_empty()).then(|| format!("{} ({})", names(book, &ids), evidence.word()))
        })
        .collect()
}

/// The sum or law behind a figure, in a sentence.
pub fn formula_words(measurand: Measurand) -> &'static str {
    match measurand {
        Measurand::Sweetness => {
            "Each sugar's grams times how sweet it is at this temperature (sucrose is 1), per 100 ml of the mixed drink."
        }
        Measurand::ServingTemperature => {
            "The temperature at which the heat of all lines, the ice, the cup and the shaker balances."
        }
        Measurand::MinutesToDrinkable => {
            "Heat through the wall and by evaporation, as the cup was read or as published cups have it, for how full it is."
        }
        Measurand::Volume => {
            "The volumes of water and dissolved solids at 20 °C, with the ice that has melted."
        }
        Measurand::Fill => "Drink, toppings, foam and ice against what the cup holds to its rim.",
        Measurand::Dilution => {
            "Grams of water, molten ice and tea for each gram of everything else in the mixed drink."
        }
        Measurand::Brix => "Soluble solids of the mixed drink, in percent of its mass.",
        Measurand::EnergyKj | Measurand::EnergyKcal => {
            "Carbohydrate, protein, fat, fibre and acid times the factors of Regulation (EU) 1169/2011, Annex XIV."
        }
        Measurand::Cost => {
            "Each line's grams times the price of its pack, with what is lost, plus cup, closure and what goes with it."
        }
        Measurand::FreeSugars => {
            "Of each line's sugars the part that counts as free: added, or in honey, syrup and juice."
        }
        Measurand::TotalSugar => "Each line's grams times the sugars of its ingredient, added up.",
        _ => "Each line's grams times the figure of its ingredient, added up.",
    }
}
