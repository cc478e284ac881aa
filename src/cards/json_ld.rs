//! A drink as a schema.org `Recipe` in JSON-LD, with `NutritionInformation`; and what that vocabulary has no place for.
//!
//! Vocabulary: <https://schema.org/Recipe> and <https://schema.org/NutritionInformation>.

use serde_json::{Map, Value, json};

use super::document::{Block, StepRow};
use super::recipe_blocks::Made;
use super::request::{CardError, CardOptions, Drink};
use crate::balance::{Measurand, Verdict};
use crate::book::{Book, SALT_PER_SODIUM};
use crate::quantity::{rounded_at_most, show_number};
use crate::say::{Untranslated, UntranslatedText, say};

/// A recipe in JSON-LD and what it leaves behind.
#[derive(Clone, Debug, PartialEq)]
pub struct JsonLdRecipe {
    /// The JSON-LD value.
    pub value: Value,
    /// What the vocabulary has no place for, in sentences.
    pub left_behind: Vec<String>,
    /// Texts of the book that stand in it as they are written, because they have no words in its language.
    pub untranslated: Vec<UntranslatedText>,
}

/// Nutrients that the vocabulary has a property for.
const NUTRIENTS: [(&str, Measurand); 7] = [
    ("calories", Measurand::EnergyKcal),
    ("fatContent", Measurand::Fat),
    ("saturatedFatContent", Measurand::Saturates),
    ("carbohydrateContent", Measurand::Carbohydrate),
    ("sugarContent", Measurand::TotalSugar),
    ("fiberContent", Measurand::Fibre),
    ("proteinContent", Measurand::Protein),
];

/// A drink as a schema.org recipe. A nutrient that is known only in part is left out: the vocabulary can't say "at least".
pub fn json_ld(
    book: &Book,
    drink: &Drink,
    options: &CardOptions,
) -> Result<JsonLdRecipe, CardError> {
    let untranslated = Untranslated::default();
    let speaker = options.speaker(book).translating(&untranslated);
    let made = Made::new(speaker, drink)?;
    let mut left_behind = Vec::new();
    let mut recipe = Map::new();
    let mut put = |key: &str, value: Value| recipe.insert(key.to_owned(), value);
    put("@context", json!("https://schema.org"));
    put("@type", json!("Recipe"));
    put("name", json!(made.name()));
    put("identifier", json!(identifier(drink)));
    put("inLanguage", json!(options.language.code()));
    put("recipeCategory", json!(speaker.word("recipe-category")));
    if !book.settings.shop.is_empty() {
        put(
            "author",
            json!({ "@type": "Organization", "name": book.settings.shop }),
        );
    }
    if !made.recipe.note.is_empty() {
        put("description", json!(made.note()));
    }
    let approval = made
        .recipe
        .approvals
        .iter()
        .rev()
        .find(|approval| approval.version == drink.version);
    match approval {
        Some(approval) if approval.resolved == made.balance.resolved => {
            put("dateModified", json!(approval.date));
        }
        _ => left_behind.push(say!(speaker, "left-state", revision: made.revision())),
    }
    put("recipeYield", json!(servings(&made)));
    put("recipeIngredient", json!(ingredients(&made)));
    put("recipeInstructions", instructions(&made));
    put("nutrition", nutrition(&made, &mut left_behind));
    if made.balance.vegan == Verdict::Yes {
        put("suitableForDiet", json!("https://schema.org/VeganDiet"));
    }
    if !made.balance.cautions.is_empty() {
        let count = made.balance.cautions.len();
        left_behind.push(say!(speaker, "left-cautions", count: count));
    }
    let allergens = &made.balance.allergens;
    if !allergens.contains.is_empty()
        || !allergens.may_contain.is_empty()
        || !allergens.is_complete()
    {
        left_behind.push(speaker.word("left-allergens").to_owned());
    }
    let always = [
        "left-uncertainty",
        "left-measures",
        "left-roles",
        "left-composition",
        "left-versions",
    ];
    left_behind.extend(always.map(|message| speaker.word(message).to_owned()));
    Ok(JsonLdRecipe {
        value: Value::Object(recipe),
        left_behind,
        untranslated: untranslated.into_texts(),
    })
}

fn identifier(drink: &Drink) -> String {
    match &drink.version {
        Some(version) => format!("{}/{version}", drink.recipe),
        None => drink.recipe.to_string(),
    }
}

fn servings(made: &Made<'_>) -> String {
    match made.balance.figures.complete(Measurand::Volume) {
        Some(volume) => {
            say!(made.speaker, "serving-of", volume: made.speaker.volume(volume, 0))
        }
        None => made.speaker.word("serving").to_owned(),
    }
}

/// "17.6 g Tambrel chestnut powder (2 scoops, brown scoop)": grams first, so that anybody can weigh it.
fn ingredients(made: &Made<'_>) -> Vec<String> {
    let Block::Steps(stages) = made.steps() else {
        return Vec::new();
    };
    let rows = stages.into_iter().flat_map(|stage| stage.rows);
    rows.filter_map(|row| match row {
        StepRow::Instruction(_) => None,
        StepRow::Line {
            amount,
            measure,
            name,
            grams,
            ..
        } => {
            let said = if measure.is_empty() {
                amount
            } else {
                format!("{amount}, {measure}")
            };
            let is_known = grams.starts_with(|first: char| first.is_ascii_digit());
            Some(if !is_known || said.replace(' ', "\u{a0}") == grams {
                format!("{said} {name}")
            } else {
                format!("{} {name} ({said})", grams.replace('\u{a0}', " "))
            })
        }
    })
    .collect()
}

fn instructions(made: &Made<'_>) -> Value {
    let Block::Steps(stages) = made.steps() else {
        return Value::Null;
    };
    let step = |row: &StepRow| {
        let text = match row {
            StepRow::Instruction(text) => text.clone(),
            StepRow::Line { amount, name, .. } => {
                say!(made.speaker, "step-add", amount: amount, ingredient: name)
            }
        };
        json!({ "@type": "HowToStep", "text": text })
    };
    let sections = stages.iter().map(|stage| {
        json!({
            "@type": "HowToSection",
            "name": stage.title,
            "itemListElement": stage.rows.iter().map(step).collect::<Vec<_>>(),
        })
    });
    sections.collect()
}

fn nutrition(made: &Made<'_>, left_behind: &mut Vec<String>) -> Value {
    let mut nutrition = Map::new();
    nutrition.insert("@type".to_owned(), json!("NutritionInformation"));
    nutrition.insert("servingSize".to_owned(), json!(servings(made)));
    for (key, measurand) in NUTRIENTS {
        let reported = made.balance.reported(measurand);
        let complete = made.balance.figures.complete(measurand);
        let Some(value) = complete else {
            left_behind.push(say!(
                made.speaker,
                "left-figure",
                figure: made.speaker.measurand(measurand),
                known: made.words(measurand),
            ));
            continue;
        };
        let shown = rounded_at_most(value, reported.u, 2).value;
        nutrition.insert(
            key.to_owned(),
            json!(format!("{shown} {}", measurand.unit())),
        );
    }
    match made.balance.figures.complete(Measurand::Salt) {
        Some(salt) => {
            let sodium = salt / SALT_PER_SODIUM * 1000.0;
            nutrition.insert(
                "sodiumContent".to_owned(),
                json!(format!("{} mg", show_number(sodium, 0))),
            );
        }
        None => left_behind.push(say!(
            made.speaker,
            "left-figure",
            figure: made.speaker.measurand(Measurand::Salt),
            known: made.words(Measurand::Salt),
        )),
    }
    left_behind.push(made.speaker.word("left-caffeine").to_owned());
    Value::Object(nutrition)
}
