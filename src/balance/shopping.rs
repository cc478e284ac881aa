//! What so many drinks take: to buy in packs, to brew, to make beforehand in whole batches, and what is left over of each.

use std::collections::BTreeSet;

use super::brewing::{Brew, Infusion, brew_for};
use super::house_made::{batches_for, whole_ones};
use super::mix::{Component, Mix};
use super::prepare::pack::usable_grams;
use super::prepare::per_gram::per_gram;
use super::report::balance::Balance;
use super::slots::Slots;
use crate::book::{Book, Form, HouseMade, Ingredient, IngredientId, Price, Role};
use crate::quantity::{Pack, Uncertain};

/// How much of an ingredient is needed.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// Grams, as far as they are known.
    pub grams: f64,
    /// Whether some line does not say what it weighs.
    pub is_least: bool,
}

/// Something that the house makes beforehand.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchToMake {
    /// What is needed of it.
    pub need: Need,
    /// What one batch gives, less what is thrown away, g.
    pub usable: f64,
    /// Whole batches; `None` when a batch gives nothing.
    pub count: Option<f64>,
    /// How long it keeps, hours.
    pub keeps_hours: Option<f64>,
    /// What goes into all batches together, g.
    pub parts: Vec<(IngredientId, Option<f64>)>,
}

/// Tea that is brewed and has no recipe in the book: leaf and water instead of packs.
#[derive(Clone, Debug, PartialEq)]
pub struct TeaToBrew {
    /// What is needed of it.
    pub need: Need,
    /// What is brewed so that this is left after waste, g.
    pub ready: f64,
    /// Leaf and water in a usual hot brew, g; `None` when its strength is not known or can't be brewed.
    pub brew: Option<LeafAndWater>,
    /// What it costs by its price per weight.
    pub cost: Option<f64>,
}

/// Leaf and water of a brew.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeafAndWater {
    /// Dry leaf, g; its doubt is that of how much dissolves.
    pub leaf: Uncertain,
    /// Water that is poured on, g.
    pub water: f64,
}

/// Something that is bought in packs.
#[derive(Clone, Debug, PartialEq)]
pub struct Purchase {
    /// What is needed of it.
    pub need: Need,
    /// The packs; `None` when no price says what is in one.
    pub packs: Option<Packs>,
}

/// Whole packs of a purchase.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Packs {
    /// What is in one, as it is printed.
    pub content: Pack,
    /// What can be used of one, g.
    pub usable: f64,
    /// How many.
    pub count: f64,
    /// What all of them cost.
    pub cost: f64,
}

/// Water from the tap and ice from the machine: nobody buys packs of them.
#[derive(Clone, Debug, PartialEq)]
pub struct FromTap {
    /// What is needed of it.
    pub need: Need,
    /// What it costs by its price per weight.
    pub cost: Option<f64>,
}

/// What so many drinks take.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shopping {
    /// What the house makes, each once, what needs it first.
    pub batches: Vec<BatchToMake>,
    /// What it brews.
    pub teas: Vec<TeaToBrew>,
    /// What it buys.
    pub bought: Vec<Purchase>,
    /// What it draws.
    pub from_tap: Vec<FromTap>,
}

impl BatchToMake {
    /// What is left over of the whole batches, g.
    pub fn left_over(&self) -> Option<f64> {
        left_over(self.count?, self.usable, &self.need)
    }
}

impl Purchase {
    /// What is left over of the whole packs, g.
    pub fn left_over(&self) -> Option<f64> {
        let packs = self.packs?;
        left_over(packs.count, packs.usable, &self.need)
    }
}

/// What is left when so many of so much are taken; `None` where nobody knows how much is needed.
fn left_over(count: f64, usable: f64, need: &Need) -> Option<f64> {
    (!need.is_least).then(|| (count * usable - need.grams).max(0.0))
}

impl Shopping {
    /// What everything costs: less than it will be when the second is `true`.
    pub fn cost(&self) -> (f64, bool) {
        let teas = self.teas.iter().map(|tea| (&tea.need, tea.cost));
        let drawn = self.from_tap.iter().map(|drawn| (&drawn.need, drawn.cost));
        sum_of(self.of_packs().chain(teas).chain(drawn))
    }

    /// What the packs cost: less than it will be when the second is `true`.
    pub fn cost_of_packs(&self) -> (f64, bool) {
        sum_of(self.of_packs())
    }

    fn of_packs(&self) -> impl Iterator<Item = (&Need, Option<f64>)> {
        self.bought.iter().map(|purchase| {
            let cost = purchase.packs.map(|packs| packs.cost);
            (&purchase.need, cost)
        })
    }
}

/// The sum of what is known, and whether it is less than it will be.
fn sum_of<'need>(costs: impl Iterator<Item = (&'need Need, Option<f64>)>) -> (f64, bool) {
    costs.fold((0.0, false), |(sum, is_least), (need, cost)| {
        let is_least = is_least || cost.is_none() || need.is_least;
        (sum + cost.unwrap_or(0.0), is_least)
    })
}

/// What so many of these drinks take. What the house makes is followed down to what is bought, each batch rounded up once for
/// everything that needs it.
pub fn shopping<'balance>(
    book: &Book,
    drinks: impl IntoIterator<Item = (&'balance Balance, u32)>,
) -> Shopping {
    let mut needs = Needs::default();
    for (balance, count) in drinks {
        for share in &balance.lines {
            let grams = share.grams.map(|grams| grams * f64::from(count));
            needs.add(&share.ingredient, grams);
        }
    }
    let mut shopping = Shopping::default();
    for id in made_in_order(book, &needs) {
        let Some(made) = house_made(book, &id) else {
            continue;
        };
        let Some(need) = needs.take(&id) else {
            continue;
        };
        let batch = batch(book, made, need);
        for (part, grams) in &batch.parts {
            needs.add(part, *grams);
        }
        shopping.batches.push(batch);
    }
    for need in needs.0 {
        let Some(item) = book.ingredient(&need.ingredient) else {
            shopping.bought.push(Purchase { need, packs: None });
            continue;
        };
        let mix = per_gram(item, &mut Slots::default()).mix;
        // A price of a pack of which nothing can be used says nothing.
        let price = item.price.as_ref().and_then(|price| {
            let usable = usable_grams(book, item, &mix, price)?;
            Some((price, usable))
        });
        let by_weight = price.map(|(price, usable)| need.grams / usable * price.pack);
        match where_from(item) {
            WhereFrom::Tap => shopping.from_tap.push(FromTap {
                cost: by_weight,
                need,
            }),
            WhereFrom::Pot => {
                let ready = need.grams / price.map_or(1.0, |(price, _)| price.usable_part());
                shopping.teas.push(TeaToBrew {
                    brew: strength(&mix).and_then(|strength| leaf_and_water(ready, strength)),
                    ready,
                    cost: by_weight,
                    need,
                });
            }
            WhereFrom::Shop => shopping.bought.push(Purchase {
                packs: price.map(|(price, usable)| packs(price, usable, &need)),
                need,
            }),
        }
    }
    shopping
}

/// Where an ingredient comes from that the house has no recipe for.
enum WhereFrom {
    Shop,
    Tap,
    Pot,
}

/// What somebody sells is bought, water and tea too.
fn where_from(item: &Ingredient) -> WhereFrom {
    let is_sold = !item.supplier.trim().is_empty() || !item.brand.trim().is_empty();
    match (item.form, item.role) {
        _ if is_sold => WhereFrom::Shop,
        (Form::Ice, _) | (Form::Liquid, Role::Water) => WhereFrom::Tap,
        (Form::Liquid, Role::Tea) => WhereFrom::Pot,
        _ => WhereFrom::Shop,
    }
}

fn packs(price: &Price, usable: f64, need: &Need) -> Packs {
    let count = whole_ones(need.grams / usable);
    Packs {
        content: price.content,
        usable,
        count,
        cost: count * price.pack,
    }
}

/// Tea solids, g per 100 g.
fn strength(per_gram: &Mix) -> Option<f64> {
    let is_known = per_gram.knows(Component::TeaSolids);
    is_known.then(|| 100.0 * per_gram.get(Component::TeaSolids))
}

fn leaf_and_water(ready: f64, strength: f64) -> Option<LeafAndWater> {
    let method = Infusion::Hot.usual();
    let Brew { water, leaf, .. } = brew_for(ready, strength, &method).ok()?;
    let u = leaf * method.extraction.u / method.extraction.value;
    let leaf = Uncertain { value: leaf, u };
    Some(LeafAndWater { leaf, water })
}

fn batch(book: &Book, made: &HouseMade, need: Need) -> BatchToMake {
    let whole = batches_for(book, &need.ingredient, need.grams).map(|needed| needed.whole().0);
    let parts = if let Some(whole) = &whole {
        let parts = whole.parts.iter();
        parts
            .map(|part| {
                let grams = part.grams.filter(|_| !need.is_least);
                (part.ingredient.clone(), grams)
            })
            .collect()
    } else {
        // A batch that gives nothing takes nobody knows how much of what goes into it.
        let recipe = book.recipe(&made.recipe);
        let parts = recipe.into_iter().flat_map(|recipe| recipe.ingredients());
        parts.map(|part| (part.clone(), None)).collect()
    };
    BatchToMake {
        parts,
        usable: made.usable_grams(),
        count: whole.map(|whole| whole.batches),
        keeps_hours: made.shelf_life_hours,
        need,
    }
}

#[derive(Default)]
struct Needs(Vec<Need>);

impl Needs {
    fn add(&mut self, ingredient: &IngredientId, grams: Option<f64>) {
        let known = self.0.iter().position(|of| of.ingredient == *ingredient);
        let at = known.unwrap_or_else(|| {
            self.0.push(Need {
                ingredient: ingredient.clone(),
                grams: 0.0,
                is_least: false,
            });
            self.0.len() - 1
        });
        let need = &mut self.0[at];
        need.grams += grams.unwrap_or(0.0);
        need.is_least |= grams.is_none();
    }

    fn take(&mut self, ingredient: &IngredientId) -> Option<Need> {
        let at = self.0.iter().position(|of| of.ingredient == *ingredient)?;
        Some(self.0.remove(at))
    }
}

fn house_made<'book>(book: &'book Book, id: &IngredientId) -> Option<&'book HouseMade> {
    let item = book.ingredient(id)?;
    item.recipe_in(book)?;
    item.house_made.as_ref()
}

/// What the house makes of all this, what a batch goes into before the batch. Whatever is made of itself comes once.
fn made_in_order(book: &Book, needs: &Needs) -> Vec<IngredientId> {
    let mut seen = BTreeSet::new();
    let mut behind = Vec::new();
    for need in &needs.0 {
        made_behind(book, &need.ingredient, &mut seen, &mut behind);
    }
    behind.reverse();
    behind
}

/// Puts down what a batch is made of and then the batch, without recursion: a book may nest as deep as it is long.
fn made_behind(
    book: &Book,
    id: &IngredientId,
    seen: &mut BTreeSet<IngredientId>,
    behind: &mut Vec<IngredientId>,
) {
    let mut open = vec![(id.clone(), false)];
    while let Some((id, is_followed)) = open.pop() {
        if is_followed {
            behind.push(id);
            continue;
        }
        let made = house_made(book, &id).and_then(|made| book.recipe(&made.recipe));
        let Some(recipe) = made.filter(|_| seen.insert(id.clone())) else {
            continue;
        };
        open.push((id, true));
        open.extend(recipe.ingredients().map(|part| (part.clone(), false)));
    }
}
