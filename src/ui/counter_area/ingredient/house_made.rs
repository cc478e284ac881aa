//! Where an ingredient comes from: bought, or made in the house by a recipe, which is begun here; and the batch or brew that it is.

use egui::{Label, RichText, Ui};

use crate::balance::{HouseBrew, Infusion, Measurand};
use crate::book::{
    Amount, Book, Evidence, Figure, Form, HouseMade, Ingredient, IngredientId, LineId, Recipe,
    RecipeId, Role, Stage,
};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::counter_area::item::Counter;
use crate::ui::counter_area::removal::Going;
use crate::ui::theme::{self, TypeStyle};
use crate::ui::widgets::asked_figure::Asked;
use crate::ui::widgets::form::{BEFORE_FIELDS, Entry, Sheet, link_ui};
use crate::ui::widgets::{choice_ui, word_menu_ui};
use crate::ui::words::{capitalised, quiet_ui};
use crate::workbench::{
    Answers, BalanceOf, Begun, BookQuestion, CostOfGram, HouseBrewOf, Shown, begin_batch,
    begin_brew, brew_with_amount, by_its_batch, reference_brew,
};
use std::sync::Arc;

/// Where an ingredient comes from, or will.
#[derive(Clone, Debug, PartialEq)]
enum Source {
    /// From a supplier.
    Bought,
    /// From a recipe of the book.
    Recipe(RecipeId),
    /// From a recipe that is begun.
    NewBatch,
    /// Brewed from a leaf, by a recipe that is begun.
    Brew(IngredientId),
}

/// What an ingredient can come from: recipes without a cup or that make something already, and the leaves that can be brewed.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
struct SourcesOfBook;

impl BookQuestion for SourcesOfBook {
    type Answer = Arc<Vec<Source>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let made = book.ingredients.iter().map(|item| &item.house_made);
        let made: std::collections::BTreeSet<&RecipeId> =
            made.flatten().map(|made| &made.recipe).collect();
        let recipes = book.recipes.iter();
        let recipes = recipes
            .filter(|recipe| recipe.cup.is_none() || made.contains(&recipe.id))
            .map(|recipe| Source::Recipe(recipe.id.clone()));
        let leaves = book.ingredients.iter();
        let leaves = leaves
            .filter(|item| item.form == Form::Leaf && item.role == Role::Tea)
            .map(|item| Source::Brew(item.id.clone()));
        let begun = std::iter::once(Source::NewBatch).chain(leaves);
        Arc::new(
            std::iter::once(Source::Bought)
                .chain(recipes)
                .chain(begun)
                .collect(),
        )
    }
}

/// Bought, or made in the house.
pub(super) fn source_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
    going: &mut Option<Going>,
) {
    let speaker = counter.speaker;
    let made = before.house_made.as_ref();
    let current = made.map_or(Source::Bought, |made| Source::Recipe(made.recipe.clone()));
    let label = speaker.word("ingredient-source");
    let word = |source: &Source| match source {
        Source::Bought => speaker.word("ingredient-bought").to_owned(),
        Source::Recipe(id) => speaker.recipe(id),
        Source::NewBatch => speaker.word("ingredient-new-batch").to_owned(),
        Source::Brew(leaf) => {
            say!(speaker, "ingredient-brewed-from", leaf: speaker.ingredient(leaf))
        }
    };
    sheet.row(ui, label, |sheet, ui| {
        let (name, focus) = (capitalised(label), sheet.focus("made"));
        let mut taken = None;
        word_menu_ui(ui, &focus, &name, &word(&current), |ui| {
            let all = counter.answers.to(&SourcesOfBook);
            // Leaf is brewed to something else than itself.
            let all = all.iter().filter(|source| {
                !matches!(source, Source::Brew(leaf) if *leaf == before.id || before.form == Form::Leaf)
            });
            taken = choice_ui(ui, all.cloned(), &current, word);
        });
        match taken.filter(|taken| *taken != current) {
            Some(Source::Bought) => sheet.change("made", |item| item.house_made = None),
            Some(Source::Recipe(id)) => sheet.change("made", |item| {
                item.house_made = Some(match item.house_made.take() {
                    Some(made) => HouseMade { recipe: id, ..made },
                    None => made_by(counter, id),
                });
            }),
            Some(Source::NewBatch) => {
                let begun = begin_batch(counter.book, before.clone(), &before.full_name());
                *going = Some(Going::Begun(begun, true));
            }
            Some(Source::Brew(leaf)) => {
                let begun = begin_reference_brew(counter.book, speaker, before.clone(), &leaf);
                *going = begun.map(|begun| Going::Begun(begun, false));
            }
            None => {}
        }
        if let Some(made) = made
            && link_ui(ui, speaker.word("ingredient-see-recipe")).clicked()
        {
            *going = Some(Going::Recipe(made.recipe.clone(), None));
        }
    });
    let Some(made) = made else {
        return;
    };
    if !before.composition.printed.is_empty() {
        below_ui(ui, speaker.word("ingredient-label-before-batch"));
        let is_asked = ui
            .horizontal(|ui| {
                ui.add_space(BEFORE_FIELDS);
                link_ui(ui, speaker.word("ingredient-by-its-batch")).clicked()
            })
            .inner;
        if is_asked {
            sheet.change("by-its-batch", by_its_batch);
        }
    }
    let brew = counter.answers.to(&HouseBrewOf(before.id.clone()));
    if let Some(brew) = &brew {
        brew_ui(ui, counter, sheet, made, brew);
    }
    let recipe = counter.book.recipe(&made.recipe);
    batch_ui(
        ui,
        speaker,
        sheet,
        made,
        recipe.is_some_and(|recipe| steeps(recipe)),
    );
    if let Some(brew) = &brew {
        brewed_ui(ui, counter, before, brew);
    }
}

fn steeps(recipe: &Recipe) -> bool {
    let mut lines = recipe.entries.iter().filter_map(|entry| entry.line());
    lines.any(|line| line.stage == Stage::Steeped)
}

/// Begins the brew of a leaf that the shop has until it says otherwise: so much leaf as the reference brew takes.
pub(in crate::ui) fn begin_reference_brew(
    book: &Book,
    speaker: Speaker<'_>,
    item: Ingredient,
    leaf: &IngredientId,
) -> Option<Begun> {
    let name = item.full_name();
    let brew = reference_brew();
    let names = (name.as_str(), speaker.word("house-made-water"));
    begin_brew(book, item, leaf, (&brew, &Infusion::Hot.usual()), names)
}

/// A batch yields at first what goes into it.
fn made_by(counter: Counter<'_>, recipe: RecipeId) -> HouseMade {
    let balance = counter.answers.to(&BalanceOf(Shown {
        recipe: recipe.clone(),
        version: None,
    }));
    let grams = balance
        .and_then(|balance| balance.figures.get(Measurand::Mass))
        .filter(|grams| *grams > 0.0);
    HouseMade {
        recipe,
        yield_grams: Figure::new(grams.unwrap_or(1000.0), Evidence::Assumed),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    }
}

/// Water, leaf and time of a brew: what is typed goes into the recipe, and the yield follows.
fn brew_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    made: &HouseMade,
    brew: &HouseBrew,
) {
    let speaker = counter.speaker;
    if let Some(water) = &brew.water_line {
        let words = ["ingredient-brew-water", "ingredient-brew-water-named"];
        part_ui(
            ui,
            counter,
            sheet,
            (made, brew),
            water,
            ("brew-water", words),
        );
    }
    let words = ["ingredient-brew-leaf", "ingredient-brew-leaf-named"];
    part_ui(
        ui,
        counter,
        sheet,
        (made, brew),
        &brew.leaf_line,
        ("brew-leaf", words),
    );
    sheet.row(ui, speaker.word("ingredient-steeps"), |sheet, ui| {
        let usual = brew.method.infusion.usual().steep_minutes;
        let usual = speaker.digits(&crate::ui::widgets::form::plain(usual));
        let spot = Entry::number("steeps", speaker.word("ingredient-steeps-named")).hint(&usual);
        sheet.number(ui, &spot, made.steep_minutes, |item, minutes| {
            if let Some(made) = &mut item.house_made {
                made.steep_minutes = minutes;
            }
        });
        quiet_ui(ui, speaker.word("ingredient-minutes"));
    });
}

/// The amount of a line of the brew, as it is said at the counter.
fn part_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    (made, brew): (&HouseMade, &HouseBrew),
    line: &LineId,
    (field, [words, name]): (&'static str, [&'static str; 2]),
) {
    let (book, speaker) = (counter.book, counter.speaker);
    let recipe = book.recipe(&made.recipe);
    let entries = recipe.into_iter().flat_map(|recipe| &recipe.entries);
    let mut lines = entries.filter_map(|entry| entry.line());
    let Some(found) = lines.find(|found| found.id == *line) else {
        return;
    };
    let item = book.ingredient(&found.ingredient).map(AsRef::as_ref);
    sheet.row(ui, speaker.word(words), |sheet, ui| {
        let spot = Entry::number(field, speaker.word(name)).width(76.0);
        let shown = speaker.amount(&found.amount);
        let read = |text: &str| speaker.read_amount(text, item, Some(&found.amount));
        sheet.read_with(ui, &spot, &shown, read, |tea, amount: Amount| {
            let Some((changed, edits)) = brew_with_amount(book, tea, brew, line, amount) else {
                return Vec::new();
            };
            *tea = changed;
            edits
        });
        if let Some(item) = item {
            quiet_ui(ui, &name_as_shown(&item.full_name()));
        }
    });
}

/// What comes of the brew: how strong, what is left behind, what it costs.
fn brewed_ui(ui: &mut Ui, counter: Counter<'_>, tea: &Ingredient, brew: &HouseBrew) {
    let speaker = counter.speaker;
    let Ok(found) = crate::balance::brew_yield(&brew.brew, &brew.method) else {
        return;
    };
    let strength = speaker.uncertain(found.strength, "g");
    let spent = speaker.uncertain(found.spent, "g");
    let cost = counter.answers.to(&CostOfGram(tea.id.clone()));
    let money = cost.map(|cost| {
        let currency = &counter.book.settings.currency;
        let money = speaker.number(100.0 * cost.known, 2);
        (format!("{money}\u{a0}{currency}"), cost.is_complete)
    });
    let words = match money {
        Some((cost, true)) => {
            say!(speaker, "ingredient-brewed", strength: strength, spent: spent, cost: cost)
        }
        Some((cost, false)) => {
            say!(speaker, "ingredient-brewed-at-least", strength: strength, spent: spent, cost: cost)
        }
        None => return,
    };
    below_ui(ui, &words);
}

/// A sentence below the fields that it is about.
fn below_ui(ui: &mut Ui, words: &str) {
    ui.horizontal(|ui| {
        ui.add_space(BEFORE_FIELDS);
        ui.vertical(|ui| {
            let palette = theme::palette(ui.visuals());
            let text = RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet);
            ui.add(Label::new(text).wrap());
        });
    });
}

fn batch_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    made: &HouseMade,
    steeps: bool,
) {
    let change = |item: &mut Ingredient, change: &dyn Fn(&mut HouseMade)| {
        if let Some(made) = &mut item.house_made {
            change(made);
        }
    };
    sheet.row(ui, speaker.word("ingredient-yield"), |sheet, ui| {
        let asked = Asked {
            field: "yield".into(),
            name: speaker.word("ingredient-yield-named"),
            unit: "g",
            unit_width: 30.0,
            factor: 1.0,
            first: Evidence::Measured,
        };
        sheet.figure(ui, &asked, Some(made.yield_grams), |item, figure| {
            if let Some(figure) = figure {
                change(item, &|made| made.yield_grams = figure);
            }
        });
    });
    if steeps || made.extraction.is_some() {
        sheet.row(ui, speaker.word("ingredient-extraction"), |sheet, ui| {
            let asked = Asked {
                field: "extraction".into(),
                name: speaker.word("ingredient-extraction-named"),
                unit: "%",
                unit_width: 30.0,
                factor: 100.0,
                first: Evidence::Measured,
            };
            sheet.figure(ui, &asked, made.extraction, |item, figure| {
                change(item, &|made| made.extraction = figure);
            });
        });
    }
    sheet.row(ui, speaker.word("ingredient-keeps"), |sheet, ui| {
        let spot = Entry::number("keeps", speaker.word("ingredient-keeps-named")).hint("–");
        sheet.number(ui, &spot, made.shelf_life_hours, |item, hours| {
            change(item, &|made| made.shelf_life_hours = hours);
        });
        quiet_ui(ui, speaker.word("ingredient-hours-waste"));
        let name = speaker.word("ingredient-waste-of-batch-named");
        sheet.required(
            ui,
            &Entry::number("batch-waste", name).width(44.0),
            made.waste_percent,
            |item, percent| {
                change(item, &|made| made.waste_percent = percent);
            },
        );
        quiet_ui(ui, "%");
    });
}
