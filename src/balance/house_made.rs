//! What the house makes: what so much of it takes, and the brew that a batch of tea is.

use super::brewing::{Brew, BrewMethod, Infusion, brew_yield};
use super::mix::Component;
use super::prepare::{Kitchen, prepare};
use super::report::balance::balance;
use super::slots::Slots;
use super::solve::figures::solved_count;
use crate::book::{
    Book, Evidence, Figure, HouseMade, Ingredient, IngredientId, LineId, Place, Recipe, Resolved,
    Role, Stage,
};
use crate::quantity::Uncertain;

/// Part of a batch or a pack that is no reason to take another one.
const LITTLE: f64 = 1e-6;

/// Water that is colder than this is for a cold infusion, °C (assumed).
const COLD_WATER: f64 = 40.0;

/// Brews whose leaf and water are in proportion to this part are the same brew in another size.
const SAME_PROPORTION: f64 = 1e-6;

/// The batches that so much of something house-made takes.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchesFor {
    /// How many, as a fraction.
    pub batches: f64,
    /// What one of them leaves to use, less what is thrown away, g.
    pub usable: f64,
    /// What goes into all of them: leaf and water of a brew; what is house-made among it is not taken apart any further.
    pub parts: Vec<BatchPart>,
}

/// A line of a batch.
#[derive(Clone, Debug, PartialEq)]
pub struct BatchPart {
    /// The line; what a topping brings along has the id of the topping.
    pub line: LineId,
    /// What goes in.
    pub ingredient: IngredientId,
    /// How much of it, g; `None` when nobody knows what the line weighs.
    pub grams: Option<f64>,
}

impl BatchesFor {
    /// The same in whole batches, and what is left over of them, g.
    pub fn whole(&self) -> (Self, f64) {
        let batches = whole_ones(self.batches);
        let factor = if self.batches > 0.0 {
            batches / self.batches
        } else {
            0.0
        };
        let parts = self.parts.iter().map(|part| BatchPart {
            grams: part.grams.map(|grams| grams * factor),
            ..part.clone()
        });
        let whole = Self {
            batches,
            usable: self.usable,
            parts: parts.collect(),
        };
        (whole, (batches - self.batches) * self.usable)
    }
}

/// Rounded up to whole ones: batches or packs.
pub(super) fn whole_ones(wanted: f64) -> f64 {
    (wanted - LITTLE).ceil().max(0.0)
}

/// What so many grams of something house-made take: "what leaf and water does this much tea need". `None` for what is bought, and
/// where nothing of a batch can be used.
pub fn batches_for(book: &Book, id: &IngredientId, grams: f64) -> Option<BatchesFor> {
    let made = book.ingredient(id)?.house_made.as_ref()?;
    let recipe = book.recipe(&made.recipe)?;
    let usable = made.usable_grams();
    let batches = grams / usable;
    if !(usable > 0.0 && batches.is_finite() && batches >= 0.0) {
        return None;
    }
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let prepared = prepare(book, &in_a_pot(recipe), &mut Slots::default(), &place);
    let parts = prepared.lines.iter().enumerate().map(|(at, line)| {
        let count = solved_count(&prepared, at);
        let is_known = line.grams_per_unit > 0.0 || count == Some(0.0);
        BatchPart {
            line: line.id.clone(),
            ingredient: line.ingredient.clone(),
            grams: count
                .filter(|_| is_known)
                .map(|count| count * line.grams_per_unit * batches),
        }
    });
    Some(BatchesFor {
        batches,
        usable,
        parts: parts.collect(),
    })
}

/// A batch is made in no cup, whatever its recipe is served in otherwise.
fn in_a_pot(recipe: &Recipe) -> Resolved {
    Resolved {
        cup: None,
        shaker: None,
        ..recipe.plain()
    }
}

/// What a gram of an ingredient costs, through its batches.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GramCost {
    /// The part of it that is known, in the book's currency.
    pub known: f64,
    /// Whether no price is missing.
    pub is_complete: bool,
}

/// What a gram of an ingredient costs; `None` when there is none such.
pub fn cost_of_gram(book: &Book, id: &IngredientId) -> Option<GramCost> {
    let gram = Kitchen::new(book).gram(book.ingredient(id)?);
    Some(GramCost {
        known: gram.get(Component::Cost),
        is_complete: gram.knows(Component::Cost),
    })
}

/// A batch that is a brew: leaf that steeps in water, and nothing else.
#[derive(Clone, Debug, PartialEq)]
pub struct HouseBrew {
    /// The leaf.
    pub leaf: IngredientId,
    /// Its line.
    pub leaf_line: LineId,
    /// The line of the water; `None` where several pour it.
    pub water_line: Option<LineId>,
    /// Water and leaf of one batch.
    pub brew: Brew,
    /// The method that gives what the batch yields: its own extraction, and the retention that its yield says.
    pub method: BrewMethod,
}

/// The brew that a batch is; `None` where it is something else, or its masses are not known.
pub fn house_brew(book: &Book, item: &Ingredient) -> Option<HouseBrew> {
    let made = item.house_made.as_ref()?;
    let recipe = book.recipe(&made.recipe)?;
    let place = Place::Recipe(recipe.id.clone(), "lines");
    let batch = balance(book, in_a_pot(recipe), &place);
    let steeped = |stage| stage == Stage::Steeped;
    let mut leaves = batch.lines.iter().filter(|share| steeped(share.stage));
    let (leaf, None) = (leaves.next()?, leaves.next()) else {
        return None;
    };
    let waters: Vec<_> = batch
        .lines
        .iter()
        .filter(|share| !steeped(share.stage))
        .collect();
    let is_water = waters
        .iter()
        .all(|share| share.role == Role::Water && share.stage == Stage::Mixed && !share.carried);
    if !is_water {
        return None;
    }
    let grams = waters.iter().map(|share| share.grams);
    let water: f64 = grams.sum::<Option<f64>>().filter(|water| *water > 0.0)?;
    let warm: f64 = waters
        .iter()
        .map(|share| share.grams.unwrap_or(0.0) * share.celsius)
        .sum();
    let brew = Brew {
        water,
        leaf: leaf.grams.filter(|leaf| *leaf > 0.0)?,
        leaf_u: leaf.u_grams.unwrap_or(0.0),
        caffeine_per_gram: None,
    };
    let water_line = match waters.as_slice() {
        [one] => Some(one.line.clone()),
        _ => None,
    };
    Some(HouseBrew {
        leaf: leaf.ingredient.clone(),
        leaf_line: leaf.line.clone(),
        water_line,
        method: method_of(made, &brew, warm / water),
        brew,
    })
}

/// From `ready = (water + leaf·e)·(1 − leaf·r/water)` the retention is what the yield leaves of the liquor.
fn method_of(made: &HouseMade, brew: &Brew, celsius: f64) -> BrewMethod {
    let infusion = if celsius < COLD_WATER {
        Infusion::Cold
    } else {
        Infusion::Hot
    };
    // Leaf of which nobody says what it gives is reckoned like a hot brew, in a batch as well.
    let usual = Infusion::Hot.usual();
    let extraction = made
        .extraction
        .map_or(usual.extraction, |figure| Uncertain {
            value: figure.value,
            u: figure.standard_uncertainty(),
        });
    let liquor = brew.water + brew.leaf * extraction.value;
    let per_gram_of_liquor = brew.water / (brew.leaf * liquor);
    BrewMethod {
        infusion,
        water_celsius: celsius,
        steep_minutes: made
            .steep_minutes
            .unwrap_or_else(|| infusion.usual().steep_minutes),
        extraction,
        retention: Uncertain {
            value: (liquor - made.yield_grams.value) * per_gram_of_liquor,
            u: made.yield_grams.standard_uncertainty() * per_gram_of_liquor,
        },
    }
}

/// What a batch yields when it is brewed otherwise: a measured yield stays measured while leaf and water keep their proportion.
/// `None` where nothing comes off the leaf.
pub fn yield_of(
    brew: &Brew,
    method: &BrewMethod,
    before: Option<(&Brew, Figure)>,
) -> Option<Figure> {
    let ready = brew_yield(brew, method).ok()?.ready;
    if let Some((former, figure)) = before {
        let proportion = (brew.leaf / brew.water) / (former.leaf / former.water);
        if (proportion - 1.0).abs() < SAME_PROPORTION {
            let size = brew.water / former.water;
            if (size - 1.0).abs() < SAME_PROPORTION {
                return Some(figure);
            }
            return Some(Figure {
                value: to_the_gram(figure.value * size),
                u: figure.u.map(|u| u * size),
                ..figure
            });
        }
    }
    Some(Figure {
        value: to_the_gram(ready.value),
        evidence: Evidence::Assumed,
        u: Some(ready.u),
    })
}

/// What a scale of the counter shows: a yield of digits that nobody can weigh would look surer than it is.
fn to_the_gram(grams: f64) -> f64 {
    if grams < 100.0 {
        (10.0 * grams).round() / 10.0
    } else {
        grams.round()
    }
}
