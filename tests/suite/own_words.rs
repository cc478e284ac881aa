//! What a person wrote stands as it was written, in whatever units the rest is read.

use evensip::balance::balance_version;
use evensip::book::{Book, Entry, RecipeId, resolve};
use evensip::cards::{Block, CardOptions, CardRequest, Document, Drink, StepRow, card};
use evensip::quantity::{DisplayUnits, TemperatureUnit, VolumeUnit};
use evensip::say::Speaker;
use evensip::swap::{Question, answer};

use crate::sample::sample;

const US: DisplayUnits = DisplayUnits {
    temperature: TemperatureUnit::Fahrenheit,
    volume: VolumeUnit::FluidOunces,
};

/// The sample book in which every name and note holds a volume and a temperature.
fn own() -> Book {
    let mut book = sample();
    let named = |name: &str, at: usize| format!("Own {name}, {} ml at {} °C", 500 + at, 40 + at);
    let mut count = 0;
    let mut next = |text: &mut String| {
        count += 1;
        *text = named(text, count);
    };
    let ingredients: Vec<_> = book.ingredients.iter().cloned().collect();
    for item in ingredients {
        let mut item = item.as_ref().clone();
        next(&mut item.name);
        book.ingredients.put(item);
    }
    let measures: Vec<_> = book.measures.iter().cloned().collect();
    for item in measures {
        let mut item = item.as_ref().clone();
        next(&mut item.name);
        book.measures.put(item);
    }
    let vessels: Vec<_> = book.vessels.iter().cloned().collect();
    for item in vessels {
        let mut item = item.as_ref().clone();
        next(&mut item.name);
        book.vessels.put(item);
    }
    let recipes: Vec<_> = book.recipes.iter().cloned().collect();
    for item in recipes {
        let mut item = item.as_ref().clone();
        next(&mut item.name);
        next(&mut item.note);
        for entry in &mut item.entries {
            match entry {
                Entry::Line(line) => next(&mut line.note),
                Entry::Instruction(instruction) => next(&mut instruction.text),
            }
        }
        for version in &mut item.versions {
            next(&mut version.name);
        }
        book.recipes.put(item);
    }
    book
}

/// Every text of a person in a metric sentence is in the translated one, and no metric figure of the program is left there.
fn check(book: &Book, metric: &str, shown: &str) -> usize {
    let full_names: Vec<String> = book
        .ingredients
        .iter()
        .map(|item| item.full_name())
        .collect();
    let names = full_names
        .iter()
        .chain(book.measures.iter().map(|item| &item.name))
        .chain(book.vessels.iter().map(|item| &item.name))
        .chain(book.recipes.iter().map(|item| &item.name))
        .chain(book.recipes.iter().map(|item| &item.note))
        .chain(
            book.recipes
                .iter()
                .flat_map(|item| item.versions.iter().map(|version| &version.name)),
        );
    let entries = book.recipes.iter().flat_map(|item| &item.entries);
    let entries = entries.map(|entry| match entry {
        Entry::Line(line) => &line.note,
        Entry::Instruction(instruction) => &instruction.text,
    });
    let mut seen = 0;
    let mut rest = shown.to_owned();
    for name in names.chain(entries) {
        let times = metric.matches(name.as_str()).count();
        assert_eq!(
            shown.matches(name.as_str()).count(),
            times,
            "{name}\n{metric}\n{shown}"
        );
        seen += times;
        rest = rest.replace(name.as_str(), "");
    }
    let metric = rest.lines().find(|line| line.contains("°C"));
    assert_eq!(metric, None);
    seen
}

fn texts(document: &Document) -> String {
    let mut all = Vec::new();
    for block in &document.blocks {
        match block {
            Block::Heading(text) => all.push(text.clone()),
            Block::Facts(facts) => all.extend(
                facts
                    .iter()
                    .map(|fact| format!("{}: {}", fact.name, fact.value)),
            ),
            Block::Table(table) => all.extend(table.rows.iter().flatten().cloned()),
            Block::Steps(stages) => {
                let rows = stages.iter().flat_map(|stage| &stage.rows);
                all.extend(rows.flat_map(StepRow::texts).map(str::to_owned));
            }
            Block::Cautions(cautions) => {
                all.extend(cautions.iter().map(|caution| caution.text.clone()));
            }
            Block::Paragraphs(lines) | Block::Footnotes(lines) => all.extend(lines.iter().cloned()),
        }
    }
    all.join("\n")
}

#[test]
fn cautions_and_suggestions_leave_names_as_they_are() {
    let book = own();
    let mut seen = 0;
    for recipe in &book.recipes {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions) {
            let balance = balance_version(&book, recipe, version).unwrap();
            for caution in &balance.cautions {
                let speaker = Speaker::new(&book);
                let metric = speaker.caution(&caution.fact);
                let shown = speaker.in_units(US).caution(&caution.fact);
                seen += check(&book, &metric, &shown);
            }
        }
        for line in resolve(recipe, None).0.lines() {
            let others = book
                .ingredients
                .iter()
                .filter(|other| other.role == line.role);
            for other in others.take(3) {
                let question = Question {
                    recipe: recipe.id.clone(),
                    version: None,
                    replace: line.ingredient.clone(),
                    with: other.id.clone(),
                    adjust: Some(vec![line.id.clone()]),
                };
                let found = answer(&book, &question).unwrap();
                let (metric, us) = (Speaker::new(&book), Speaker::new(&book).in_units(US));
                for one in &found.suggestions {
                    let said = |speaker: Speaker<'_>| speaker.suggestion(&found, one);
                    seen += check(&book, &said(metric), &said(us));
                }
                for reason in &found.reasons {
                    let said = |speaker: Speaker<'_>| speaker.swap_reason(reason);
                    seen += check(&book, &said(metric), &said(us));
                }
            }
        }
    }
    assert!(seen > 300, "{seen}");
}

#[test]
fn cards_leave_names_notes_and_instructions_as_they_are() {
    let book = own();
    let mut seen = 0;
    let drink = |recipe: &RecipeId| Drink {
        recipe: recipe.clone(),
        version: None,
    };
    for recipe in &book.recipes {
        for request in [
            CardRequest::Counter(drink(&recipe.id)),
            CardRequest::Training(drink(&recipe.id)),
        ] {
            let printed = |units| {
                let options = CardOptions {
                    units,
                    ..CardOptions::default()
                };
                card(&book, &request, &options).map(|document| texts(&document))
            };
            let (Ok(metric), Ok(us)) = (printed(DisplayUnits::METRIC), printed(US)) else {
                continue;
            };
            seen += check(&book, &metric, &us);
        }
    }
    assert!(seen > 100, "{seen}");
}
