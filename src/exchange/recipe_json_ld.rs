//! A schema.org `Recipe` in JSON-LD, as pages and other programs hold it, read for review.
//!
//! Vocabulary: <https://schema.org/Recipe>. Ingredients are sentences there, see [`super::written`]. What has no place in a book
//! is named.

use serde_json::Value;

use super::written::{WrittenLine, read_line};
use crate::quantity::excerpt;

/// Longest text that is shown of what could not be read, in characters.
const SHOWN: usize = 60;

/// Why there is no recipe in a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JsonLdError {
    /// It is not JSON.
    NotJson {
        /// The line where that is seen, from 1.
        line: usize,
        /// The letter of that line, from 1.
        column: usize,
    },
    /// No value in it is a recipe.
    NoRecipe,
}

/// A recipe as it was written.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ReadRecipe {
    /// Its name.
    pub name: String,
    /// Its description.
    pub description: String,
    /// How much it makes, in words.
    pub makes: String,
    /// Its ingredients.
    pub ingredients: Vec<WrittenLine>,
    /// Its method, sentence by sentence.
    pub instructions: Vec<String>,
    /// Its nutrition: property and text. Not taken over, since the book computes its own; kept for comparison.
    pub nutrition: Vec<(String, String)>,
    /// What a book has no place for.
    pub left_out: Vec<String>,
}

/// Properties that are taken over.
const TAKEN: [&str; 7] = [
    "name",
    "description",
    "recipeYield",
    "recipeIngredient",
    "ingredients",
    "recipeInstructions",
    "nutrition",
];

/// Reads the first recipe of a text.
pub fn read_json_ld(text: &str) -> Result<ReadRecipe, JsonLdError> {
    let text = text.trim_start_matches('\u{feff}');
    let value: Value = serde_json::from_str(text).map_err(|error| JsonLdError::NotJson {
        line: error.line(),
        column: error.column(),
    })?;
    let recipe = find_recipe(&value, 0).ok_or(JsonLdError::NoRecipe)?;
    let mut read = ReadRecipe {
        name: text_of(recipe.get("name")),
        description: text_of(recipe.get("description")),
        makes: text_of(recipe.get("recipeYield")),
        ..ReadRecipe::default()
    };
    let ingredients = recipe
        .get("recipeIngredient")
        .or_else(|| recipe.get("ingredients"));
    let mut sentences = Sentences::default();
    sentences.add(ingredients, 0);
    read.ingredients = sentences.read.iter().map(|text| read_line(text)).collect();
    read.left_out = sentences.left_out;
    read_instructions(recipe.get("recipeInstructions"), &mut read.instructions, 0);
    if let Some(Value::Object(nutrition)) = recipe.get("nutrition") {
        for (key, value) in nutrition.iter().filter(|(key, _)| !key.starts_with('@')) {
            read.nutrition.push((key.clone(), text_of(Some(value))));
        }
    }
    if let Value::Object(map) = recipe {
        let others = map
            .iter()
            .filter(|(key, _)| !key.starts_with('@') && !TAKEN.contains(&key.as_str()));
        read.left_out
            .extend(others.map(|(key, value)| match text_of(Some(value)) {
                text if text.is_empty() => key.clone(),
                text => format!("{key}: {}", excerpt(&text, SHOWN)),
            }));
    }
    Ok(read)
}

/// How deep a recipe is looked for.
const DEEPEST: usize = 6;

fn find_recipe(value: &Value, depth: usize) -> Option<&Value> {
    if depth > DEEPEST {
        return None;
    }
    match value {
        Value::Array(values) => values
            .iter()
            .find_map(|value| find_recipe(value, depth + 1)),
        Value::Object(map) => {
            let is_recipe = |kind: &Value| {
                kind.as_str()
                    .is_some_and(|kind| kind.rsplit(['/', ':', '#']).next() == Some("Recipe"))
            };
            let found = map.get("@type").is_some_and(|kind| match kind {
                Value::Array(kinds) => kinds.iter().any(is_recipe),
                kind => is_recipe(kind),
            });
            if found {
                return Some(value);
            }
            [
                "@graph",
                "mainEntity",
                "mainEntityOfPage",
                "itemListElement",
                "item",
            ]
            .iter()
            .filter_map(|key| map.get(*key))
            .find_map(|value| find_recipe(value, depth + 1))
        }
        _ => None,
    }
}

/// The text of a value: of a text itself, of a number, of an object's `@value`, `text` or `name`, of the first of a list.
fn text_of(value: Option<&Value>) -> String {
    match value {
        Some(Value::String(text)) => text.trim().to_owned(),
        Some(Value::Number(number)) => number.to_string(),
        Some(Value::Array(values)) => text_of(values.first()),
        Some(Value::Object(map)) => {
            let keys = ["@value", "text", "name"];
            text_of(keys.iter().find_map(|key| map.get(*key)))
        }
        _ => String::new(),
    }
}

/// The sentences of a list, those of lists within it too, and what in it is none.
#[derive(Default)]
struct Sentences {
    read: Vec<String>,
    left_out: Vec<String>,
}

impl Sentences {
    fn add(&mut self, value: Option<&Value>, depth: usize) {
        let lines = match value {
            None | Some(Value::Null) => return,
            Some(Value::Array(values)) if depth <= DEEPEST => {
                for value in values {
                    self.add(Some(value), depth + 1);
                }
                return;
            }
            // A list that is no list of the format: a text with a line for each.
            Some(value) if depth == 0 => text_of(Some(value)),
            Some(value) => text_of(Some(value)).replace(['\r', '\n'], " "),
        };
        let before = self.read.len();
        let lines = lines.lines().filter(|line| !line.trim().is_empty());
        self.read.extend(lines.map(str::to_owned));
        let is_text = value.is_some_and(Value::is_string);
        if self.read.len() == before && !is_text {
            let text = value.map(Value::to_string).unwrap_or_default();
            self.left_out.push(excerpt(&text, SHOWN));
        }
    }
}

fn read_instructions(value: Option<&Value>, found: &mut Vec<String>, depth: usize) {
    if depth > DEEPEST {
        return;
    }
    match value {
        Some(Value::Array(values)) => values
            .iter()
            .for_each(|value| read_instructions(Some(value), found, depth + 1)),
        Some(Value::Object(map)) => {
            let (name, text) = (text_of(map.get("name")), text_of(map.get("text")));
            // A step is often named by its first words.
            let is_said = text.contains(name.trim_end_matches(['…', '.']));
            found.extend(
                [(name, is_said), (text, false)]
                    .into_iter()
                    .filter_map(|(text, is_said)| (!text.is_empty() && !is_said).then_some(text)),
            );
            if let Some(steps) = map.get("itemListElement") {
                read_instructions(Some(steps), found, depth + 1);
            }
        }
        Some(value) => found.extend(
            text_of(Some(value))
                .lines()
                .map(|line| line.trim().to_owned())
                .filter(|line| !line.is_empty()),
        ),
        None => {}
    }
}
