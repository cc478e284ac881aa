//! A schema.org `Recipe` in JSON-LD, as pages and other programs hold it, read for review.
//!
//! Vocabulary: <https://schema.org/Recipe>. Ingredients are sentences there: an amount at their beginning is read, the rest
//! is the name. What has no place in a book is named.

use std::sync::Arc;

use serde_json::Value;

use crate::book::{
    Amount, Book, Entry, Form, Ingredient, IngredientId, Instruction, Line, LineId, Recipe,
    RecipeId, Role, Stage, State,
};
use crate::edit::{Edit, EditError, WholeBook, apply_soundly};
use crate::quantity::{AmountTextError, NumberError, TypedUnit, excerpt, parse_amount};

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

/// Why the amount of an ingredient can't be told.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum UnclearAmount {
    /// Its number can be read in two ways.
    Number(NumberError),
    /// "2 500 ml" may be two of 500 ml as well as 2500 ml.
    TwoCounts {
        /// The digits before the space.
        first: String,
        /// Those behind it.
        second: String,
    },
}

/// What has to be looked at in a recipe that is brought in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RecipeQuestion {
    /// An ingredient stands among the instructions, because its amount may be one thing or another.
    UnclearAmount {
        /// The ingredient as it was written, shortened.
        text: String,
        /// Why.
        why: UnclearAmount,
    },
    /// An ingredient stands among the instructions, because it states neither grams nor millilitres.
    NoAmount {
        /// The ingredient as it was written, shortened.
        text: String,
    },
    /// An ingredient is new to the book, and nothing is known of it.
    NewIngredient {
        /// Its name, shortened.
        name: String,
    },
    /// Cup, shaker, temperatures and stages are not in such a file.
    NotInFile,
}

/// An ingredient as it was written.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadIngredient {
    /// The whole sentence.
    pub text: String,
    /// The amount at its beginning, in grams or millilitres; `None` when it says neither.
    pub amount: Option<Amount>,
    /// Why the amount can't be told, where it may be one thing or another.
    pub unclear: Option<UnclearAmount>,
    /// What is left: the name.
    pub name: String,
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
    pub ingredients: Vec<ReadIngredient>,
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
    read.ingredients = texts_of(ingredients)
        .into_iter()
        .map(read_ingredient)
        .collect();
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

/// The text of a value: of a text itself, of a number, of an object's `@value` or `name`, of the first of a list.
fn text_of(value: Option<&Value>) -> String {
    match value {
        Some(Value::String(text)) => text.trim().to_owned(),
        Some(Value::Number(number)) => number.to_string(),
        Some(Value::Array(values)) => text_of(values.first()),
        Some(Value::Object(map)) => text_of(map.get("@value").or_else(|| map.get("name"))),
        _ => String::new(),
    }
}

fn texts_of(value: Option<&Value>) -> Vec<String> {
    let texts = match value {
        Some(Value::Array(values)) => values.iter().map(|value| text_of(Some(value))).collect(),
        Some(value) => text_of(Some(value)).lines().map(str::to_owned).collect(),
        None => Vec::new(),
    };
    texts
        .into_iter()
        .filter(|text: &String| !text.trim().is_empty())
        .collect()
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
            if let Some(steps) = map.get("itemListElement") {
                read_instructions(Some(steps), found, depth + 1);
                return;
            }
            let text = text_of(map.get("text").or_else(|| map.get("name")));
            if !text.is_empty() {
                found.push(text);
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

/// "17.6 g Tambrel chestnut powder (2 scoops, brown scoop)" is 17.6 g and the name; what is said in brackets is dropped.
fn read_ingredient(text: String) -> ReadIngredient {
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut unclear = None;
    // "200 ml of milk", "200ml milk", "1 1/2 l water": the longest beginning that is an amount with a known unit.
    for count in (1..=words.len().min(3)).rev() {
        let beginning = &words[..count];
        let amount = match parse_amount(&beginning.join(" ")) {
            Ok(amount) => amount,
            Err(AmountTextError::Number(error @ NumberError::Ambiguous { .. })) => {
                unclear = Some(UnclearAmount::Number(error));
                continue;
            }
            Err(_) => continue,
        };
        let amount = match amount.unit {
            TypedUnit::Grams => Amount::Grams(amount.number),
            TypedUnit::Millilitres => Amount::Millilitres(amount.number),
            _ => continue,
        };
        if let Some(error) = two_counts(beginning) {
            unclear = Some(error);
            break;
        }
        let rest = words[count..].join(" ");
        let rest = rest.strip_prefix("of ").unwrap_or(&rest);
        let name = rest.split(" (").next().unwrap_or(rest).trim();
        if !name.is_empty() {
            return ReadIngredient {
                amount: Some(amount),
                unclear: None,
                name: name.to_owned(),
                text,
            };
        }
    }
    let name = text.split(" (").next().unwrap_or(&text).trim().to_owned();
    ReadIngredient {
        amount: None,
        unclear,
        name,
        text,
    }
}

/// In a sentence "2 500 ml" may be two of 500 ml as well as 2500 ml.
fn two_counts(words: &[&str]) -> Option<UnclearAmount> {
    let [first, second, ..] = words else {
        return None;
    };
    let is_digits = |word: &str| word.chars().all(|c| c.is_ascii_digit());
    let digits = second.trim_end_matches(|c: char| !c.is_ascii_digit());
    let may_be_group = is_digits(first) && digits.len() == 3 && is_digits(digits);
    may_be_group.then(|| UnclearAmount::TwoCounts {
        first: (*first).to_owned(),
        second: digits.to_owned(),
    })
}

impl ReadRecipe {
    /// The recipe as a draft of this book with this name, in one step, and what has to be looked at. Ingredients that the book does not know are added
    /// with nothing stated: their figures stay unknown until a label is read.
    pub fn edit(&self, book: &Book, name: &str) -> Result<(Edit, Vec<RecipeQuestion>), EditError> {
        let mut after = book.clone();
        let mut questions = Vec::new();
        let mut entries: Vec<Entry> = Vec::new();
        for read in &self.ingredients {
            let Some(amount) = &read.amount else {
                let text = excerpt(&read.text, SHOWN);
                questions.push(match read.unclear.clone() {
                    Some(why) => RecipeQuestion::UnclearAmount { text, why },
                    None => RecipeQuestion::NoAmount { text },
                });
                entries.push(instruction(&entries, &read.text));
                continue;
            };
            let wanted = read.name.to_lowercase();
            let known = book
                .ingredients
                .iter()
                .find(|item| item.full_name().to_lowercase() == wanted);
            let (ingredient, role, stage) = if let Some(known) = known {
                let stage = match known.form {
                    Form::Pieces => Stage::Topping,
                    _ => Stage::Mixed,
                };
                (known.id.clone(), known.role, stage)
            } else {
                let id = IngredientId::from_name(&read.name, |id| after.ingredient(id).is_some());
                let form = match amount {
                    Amount::Millilitres(_) => Form::Liquid,
                    _ => Form::Powder,
                };
                let new = unknown_ingredient(id.clone(), &read.name, form);
                after = apply_soundly(&after, [&Edit::PutIngredient(new)])?;
                let name = excerpt(&read.name, SHOWN);
                questions.push(RecipeQuestion::NewIngredient { name });
                (id, Role::Flavour, Stage::Mixed)
            };
            let id = LineId::from_name(ingredient.as_str(), |id| {
                entries.iter().any(|entry| entry.id() == id)
            });
            entries.push(Entry::Line(Line {
                id,
                ingredient,
                amount: amount.clone(),
                temperature: None,
                role,
                stage,
                carried: None,
                note: String::new(),
            }));
        }
        for text in &self.instructions {
            entries.push(instruction(&entries, text));
        }
        questions.push(RecipeQuestion::NotInFile);
        let recipe = self.recipe(book, name, entries);
        after = apply_soundly(&after, [&Edit::PutRecipe(recipe)])?;
        let edit = Edit::PutBook {
            book: Arc::new(after),
            reason: WholeBook::Recipe(name.to_owned()),
        };
        Ok((edit, questions))
    }

    fn recipe(&self, book: &Book, name: &str, entries: Vec<Entry>) -> Recipe {
        Recipe {
            id: RecipeId::from_name(name, |id| book.recipe(id).is_some()),
            name: name.to_owned(),
            state: State::Draft,
            entries,
            cup: None,
            shaker: None,
            strained: false,
            drinking_temperature: None,
            menu_price: None,
            versions: Vec::new(),
            approvals: Vec::new(),
            note: self.description.clone(),
            translations: Vec::new(),
        }
    }
}

fn instruction(entries: &[Entry], text: &str) -> Entry {
    Entry::Instruction(Instruction {
        id: LineId::from_name("step", |id| entries.iter().any(|entry| entry.id() == id)),
        text: text.to_owned(),
    })
}

fn unknown_ingredient(id: IngredientId, name: &str, form: Form) -> Ingredient {
    Ingredient {
        form,
        ..Ingredient::new(id, name.to_owned())
    }
}
