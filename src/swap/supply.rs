//! Which supplier for the whole menu: every combination of the brands on offer over all drinks that use them.
//!
//! A drink depends on the choice of brands alone, so each is answered once for every choice among those that it uses, and the totals of a
//! combination are put together from these answers. What a drink becomes is the first suggestion of its swap, the one that a reviewed
//! list takes: what is promised here is what is kept there.
//!
//! # Limitations
//!
//! - What the house makes of an ingredient keeps it.
//! - Two ingredients that would trade places are no combination.

use std::collections::{BTreeMap, BTreeSet};

use crate::balance::{
    Balance, Measurand, Verdict, balance_version, difference, figure_difference, standard_balance,
};
use crate::book::{Allergen, Book, IngredientId, Recipe, RecipeId, State, VersionId, resolve};
use crate::quantity::Uncertain;

use super::answer::answer_watched;
use super::demands::Demands;
use super::question::Question;
use super::watch::Watch;

/// Weeks of a year.
pub const WEEKS_OF_A_YEAR: f64 = 365.0 / 7.0;

/// Most combinations that are put together.
pub const MOST_COMBINATIONS: usize = 10_000;

/// A drink of the menu: a recipe, or a version of it.
pub type MenuDrink = (RecipeId, Option<VersionId>);

/// An ingredient that is decided about.
#[derive(Clone, Debug, PartialEq)]
pub struct Needed {
    /// The ingredient that the drinks have now.
    pub ingredient: IngredientId,
    /// What may be bought for it, itself among them where it may stay.
    pub offered: Vec<IngredientId>,
}

impl Needed {
    /// An ingredient with all that is sold of its kind: the same role and form, and the same flavours. `None` for one that nobody has.
    pub fn of_its_kind(book: &Book, ingredient: &IngredientId) -> Option<Self> {
        let now = book.ingredient(ingredient)?;
        let flavours = |item: &crate::book::Ingredient| -> BTreeSet<String> {
            let flavours = item.composition.flavours.iter();
            flavours.map(|flavour| flavour.name.clone()).collect()
        };
        let is_of_kind = |item: &crate::book::Ingredient| {
            !item.no_longer_sold
                && item.house_made.is_none()
                && item.role == now.role
                && item.form == now.form
                && flavours(item) == flavours(now)
        };
        let offered = book.ingredients.iter().filter(|item| is_of_kind(item));
        Some(Self {
            ingredient: ingredient.clone(),
            offered: offered.map(|item| item.id.clone()).collect(),
        })
    }
}

/// What becomes of one drink.
#[derive(Clone, Debug, PartialEq)]
struct Made {
    /// How much more it costs than now; `None` when that is not known.
    more: Option<Uncertain>,
    /// What it costs.
    cost: Option<Uncertain>,
    /// Its distance from what it is held to, and whether all of it is known.
    distance: Option<f64>,
    is_known: bool,
    is_changed: bool,
    /// Lines that move.
    moves: usize,
    contains: BTreeSet<Allergen>,
    vegan: Verdict,
}

/// What comes of a drink with a choice of brands.
enum Outcome {
    Made(Box<Made>),
    /// Nothing brings it back.
    Nothing,
    /// Two of its ingredients would trade places.
    Traded,
}

/// What is not known of a combination.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NotKnownOf {
    /// What a drink costs.
    Cost,
    /// How far it is from what it is held to, on some axis.
    Distance,
    /// How many cups of it are sold, where that is stated of others.
    Cups,
}

/// A combination of brands, over the whole menu.
#[derive(Clone, Debug, PartialEq)]
pub struct Supply {
    /// What is bought for each of the needed ingredients, in their order.
    pub with: Vec<IngredientId>,
    /// What the drinks cost a week, over those of which cost and cups are known, in the book's currency. Doubts are taken as acting
    /// alike, which is the most that they can come to.
    pub cost: Uncertain,
    /// How much more that is than now.
    pub more: Uncertain,
    /// The greatest distance of a drink from what it is held to, noticeable steps; `None` when none is known.
    pub worst: Option<f64>,
    /// The mean of the distances over the cups.
    pub mean: Option<f64>,
    /// Drinks whose cards change.
    pub cards: usize,
    /// Amounts that move: habits that the staff has to change.
    pub habits: usize,
    /// What a drink contains that it does not contain now.
    pub gained: Vec<(MenuDrink, Allergen)>,
    /// What a drink contains now and then no longer.
    pub lost: Vec<(MenuDrink, Allergen)>,
    /// Drinks that become vegan, and that are so no longer.
    pub vegan: Vec<MenuDrink>,
    /// Drinks that are no longer surely vegan.
    pub no_longer_vegan: Vec<MenuDrink>,
    /// What is not known.
    pub not_known: Vec<(MenuDrink, NotKnownOf)>,
    /// Drinks that nothing brings near what they are held to.
    pub impossible: Vec<MenuDrink>,
    /// Whether no other combination is at least as cheap and as near, and better in one of them, as far as it is known of all of them;
    /// never when something is impossible, or less is known than of the others.
    pub is_unbeaten: bool,
}

/// The choice of suppliers.
#[derive(Clone, Debug, PartialEq)]
pub struct Supplies {
    /// Every combination; the nearest first, and what is impossible last.
    pub combinations: Vec<Supply>,
    /// The drinks that use one of the ingredients.
    pub drinks: Vec<MenuDrink>,
    /// Searches that it took.
    pub searches: usize,
}

/// Why there is no choice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoSupplies {
    /// No drink of the menu uses one of the ingredients.
    NotUsed,
    /// So many combinations are more than are put together.
    TooMany(usize),
    /// It was asked to stop.
    Stopped,
}

/// Every combination of what is offered, over the drinks on the menu (approved or on trial; batches are none), each brought back as near
/// as it can be, by so many cups a week. Where no cups are stated at all each drink counts for one; where some are, the cost of the others
/// is not known.
pub fn supplies(
    book: &Book,
    needed: &[Needed],
    cups: &BTreeMap<MenuDrink, f64>,
    watch: &Watch,
) -> Result<Supplies, NoSupplies> {
    let all = needed.iter().try_fold(1_usize, |product, needed| {
        product.checked_mul(needed.offered.len())
    });
    let all = all.unwrap_or(usize::MAX);
    if all > MOST_COMBINATIONS {
        return Err(NoSupplies::TooMany(all));
    }
    let users = users(book, needed);
    if users.is_empty() || all == 0 {
        return Err(NoSupplies::NotUsed);
    }
    let chosen: Vec<Vec<usize>> = (0..all).map(|at| choice(needed, at)).collect();
    let wanted: usize = users
        .iter()
        .map(|user| {
            user.uses
                .iter()
                .map(|at| needed[*at].offered.len())
                .product::<usize>()
        })
        .sum();
    watch.expect(wanted);
    let mut totals: Vec<Option<Total>> = chosen.iter().map(|_| Some(Total::default())).collect();
    let mut searches = 0;
    for user in &users {
        let weight = match cups.get(&user.drink) {
            Some(cups) => Some(*cups),
            None => cups.is_empty().then_some(1.0),
        };
        let mut made: BTreeMap<Vec<usize>, Outcome> = BTreeMap::new();
        for (choice, total) in chosen.iter().zip(&mut totals) {
            if watch.is_stopped() {
                return Err(NoSupplies::Stopped);
            }
            let own: Vec<usize> = user.uses.iter().map(|at| choice[*at]).collect();
            let made = made.entry(own).or_insert_with(|| {
                searches += 1;
                let found = user.made(book, needed, choice, watch);
                watch.done();
                found
            });
            let made = match &*made {
                Outcome::Made(made) => Some(&**made),
                Outcome::Nothing => None,
                Outcome::Traded => {
                    *total = None;
                    continue;
                }
            };
            if let Some(total) = total {
                total.add(user, weight, made);
            }
        }
    }
    let with = |choice: &[usize]| -> Vec<IngredientId> {
        let chosen = choice.iter().zip(needed);
        chosen
            .map(|(at, needed)| needed.offered[*at].clone())
            .collect()
    };
    let done = chosen.iter().zip(totals);
    let mut combinations: Vec<Supply> = done
        .filter_map(|(choice, total)| Some(total?.supply(with(choice))))
        .collect();
    mark_unbeaten(&mut combinations);
    let worst = |supply: &Supply| supply.mean.unwrap_or(f64::INFINITY);
    combinations.sort_by(|a, b| {
        let impossible = a.impossible.len().cmp(&b.impossible.len());
        impossible.then(worst(a).total_cmp(&worst(b)))
    });
    Ok(Supplies {
        combinations,
        drinks: users.into_iter().map(|user| user.drink).collect(),
        searches,
    })
}

/// The place of what is chosen for each need, of the combination at a place.
fn choice(needed: &[Needed], mut at: usize) -> Vec<usize> {
    let of = |needed: &Needed| {
        let chosen = at % needed.offered.len();
        at /= needed.offered.len();
        chosen
    };
    needed.iter().map(of).collect()
}

/// A drink that uses one of the ingredients.
struct User<'book> {
    recipe: &'book Recipe,
    drink: MenuDrink,
    /// Which of the needs it has.
    uses: Vec<usize>,
    now: Balance,
    /// What it is held to.
    standard: Option<Balance>,
}

/// The drinks on the menu that use one of the ingredients.
fn users<'book>(book: &'book Book, needed: &[Needed]) -> Vec<User<'book>> {
    let batches = book
        .ingredients
        .iter()
        .filter_map(|item| item.house_made.as_ref());
    let batches: BTreeSet<&RecipeId> = batches.map(|made| &made.recipe).collect();
    let mut users = Vec::new();
    for recipe in book
        .recipes
        .iter()
        .filter(|recipe| !batches.contains(&recipe.id))
    {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions) {
            let state = recipe.state_of(version);
            if !matches!(state, Some(State::Approved | State::OnTrial)) {
                continue;
            }
            let lines = resolve(recipe, version).0;
            let uses = |needed: &Needed| {
                let mut lines = lines.lines();
                lines.any(|line| line.ingredient == needed.ingredient)
            };
            let uses: Vec<usize> = (0..needed.len()).filter(|at| uses(&needed[*at])).collect();
            if uses.is_empty() {
                continue;
            }
            if let Some(now) = balance_version(book, recipe, version) {
                users.push(User {
                    recipe,
                    drink: (recipe.id.clone(), version.cloned()),
                    uses,
                    now,
                    standard: standard_balance(book, recipe, version).map(|found| found.0),
                });
            }
        }
    }
    users
}

impl User<'_> {
    /// What it becomes.
    fn made(&self, book: &Book, needed: &[Needed], choice: &[usize], watch: &Watch) -> Outcome {
        let swaps = self.uses.iter().map(|at| {
            let needed = &needed[*at];
            (
                needed.ingredient.clone(),
                needed.offered[choice[*at]].clone(),
            )
        });
        let swaps = swaps.filter(|(replace, with)| replace != with);
        let Some(swaps) = in_order(swaps.collect()) else {
            return Outcome::Traded;
        };
        let Some(((replace, with), also)) = swaps.split_first() else {
            let held = self.standard.as_ref().unwrap_or(&self.now);
            let off = difference(&book.settings, held, &self.now);
            // The same cup costs no more than itself, however its hands scatter.
            let mut made = self.of(&self.now, &off, false, 0);
            made.more = made.cost.map(|_| Uncertain::exact(0.0));
            return Outcome::Made(Box::new(made));
        };
        let question = Question {
            recipe: self.recipe.id.clone(),
            version: self.drink.1.clone(),
            replace: replace.clone(),
            with: with.clone(),
            adjust: None,
        };
        let demands = Demands {
            also: also.to_vec(),
            ..Demands::default()
        };
        let answer = answer_watched(book, &question, &demands, watch);
        let Some(first) = answer
            .as_ref()
            .and_then(|answer| answer.suggestions.first())
        else {
            return Outcome::Nothing;
        };
        let is_changed = !first.changes.is_empty();
        let made = self.of(
            &first.balance,
            &first.difference,
            is_changed,
            first.moves.len(),
        );
        Outcome::Made(Box::new(made))
    }

    fn of(
        &self,
        made: &Balance,
        off: &crate::balance::Difference,
        is_changed: bool,
        moves: usize,
    ) -> Made {
        let cost = made.figures.complete(Measurand::Cost);
        let counted = off.axes.iter().filter(|axis| axis.weight > 0.0);
        Made {
            more: figure_difference(&self.now, made, Measurand::Cost),
            cost: cost.map(|value| Uncertain {
                value,
                u: made.uncertainty(Measurand::Cost.slot()),
            }),
            distance: off.distance,
            is_known: off.distance.is_some()
                && counted.into_iter().all(|axis| axis.steps.is_some()),
            is_changed,
            moves,
            contains: made.allergens.contains.clone(),
            vegan: made.vegan,
        }
    }
}

/// Swaps one after another so that none takes away what another has brought; `None` where that can't be.
fn in_order(
    mut swaps: Vec<(IngredientId, IngredientId)>,
) -> Option<Vec<(IngredientId, IngredientId)>> {
    let mut ordered = Vec::new();
    while !swaps.is_empty() {
        let brings_what_goes =
            |with: &IngredientId| swaps.iter().any(|(replace, _)| replace == with);
        let next = swaps.iter().position(|(_, with)| !brings_what_goes(with))?;
        ordered.push(swaps.remove(next));
    }
    Some(ordered)
}

/// What is added up for a combination.
#[derive(Default)]
struct Total {
    cost: [f64; 2],
    more: [f64; 2],
    worst: Option<f64>,
    /// Cups times distance, and cups.
    distances: [f64; 2],
    cards: usize,
    habits: usize,
    gained: Vec<(MenuDrink, Allergen)>,
    lost: Vec<(MenuDrink, Allergen)>,
    vegan: Vec<MenuDrink>,
    no_longer_vegan: Vec<MenuDrink>,
    not_known: Vec<(MenuDrink, NotKnownOf)>,
    impossible: Vec<MenuDrink>,
}

impl Total {
    fn add(&mut self, user: &User<'_>, cups: Option<f64>, made: Option<&Made>) {
        let drink = || user.drink.clone();
        let Some(made) = made else {
            self.impossible.push(drink());
            return;
        };
        match (cups, made.cost, made.more) {
            (None, _, _) => self.not_known.push((drink(), NotKnownOf::Cups)),
            (Some(cups), Some(cost), Some(more)) => {
                self.cost[0] += cups * cost.value;
                self.cost[1] += cups * cost.u;
                self.more[0] += cups * more.value;
                self.more[1] += cups * more.u;
            }
            (Some(_), _, _) => self.not_known.push((drink(), NotKnownOf::Cost)),
        }
        if !made.is_known {
            self.not_known.push((drink(), NotKnownOf::Distance));
        }
        if let Some(distance) = made.distance {
            self.worst = Some(self.worst.map_or(distance, |worst| worst.max(distance)));
            let cups = cups.unwrap_or(0.0);
            self.distances[0] += cups * distance;
            self.distances[1] += cups;
        }
        self.cards += usize::from(made.is_changed);
        self.habits += made.moves;
        let before = &user.now.allergens.contains;
        let gained = made.contains.difference(before);
        self.gained
            .extend(gained.map(|allergen| (drink(), *allergen)));
        let lost = before.difference(&made.contains);
        self.lost.extend(lost.map(|allergen| (drink(), *allergen)));
        match (user.now.vegan == Verdict::Yes, made.vegan == Verdict::Yes) {
            (false, true) => self.vegan.push(drink()),
            (true, false) => self.no_longer_vegan.push(drink()),
            _ => {}
        }
    }

    fn supply(self, with: Vec<IngredientId>) -> Supply {
        let figure = |[value, u]: [f64; 2]| Uncertain { value, u };
        let [sum, cups] = self.distances;
        Supply {
            with,
            cost: figure(self.cost),
            more: figure(self.more),
            worst: self.worst,
            mean: (cups > 0.0).then(|| sum / cups),
            cards: self.cards,
            habits: self.habits,
            gained: self.gained,
            lost: self.lost,
            vegan: self.vegan,
            no_longer_vegan: self.no_longer_vegan,
            not_known: self.not_known,
            impossible: self.impossible,
            is_unbeaten: false,
        }
    }
}

/// Marks what no other combination beats in cost and mean distance. What is not known of any combination is left out of all of them
/// alike; one of which more is not known is not compared.
fn mark_unbeaten(combinations: &mut [Supply]) {
    let open = |supply: &Supply| -> BTreeSet<(MenuDrink, NotKnownOf)> {
        supply.not_known.iter().cloned().collect()
    };
    let possible = combinations
        .iter()
        .filter(|supply| supply.impossible.is_empty());
    let of_all = possible
        .map(open)
        .reduce(|all, one| all.intersection(&one).cloned().collect());
    let of_all = of_all.unwrap_or_default();
    let is_known =
        |supply: &Supply| supply.impossible.is_empty() && open(supply).is_subset(&of_all);
    let places: Vec<Option<[f64; 2]>> = combinations
        .iter()
        .map(|supply| Some([supply.more.value, supply.mean?]).filter(|_| is_known(supply)))
        .collect();
    let beats = |one: &[f64; 2], other: &[f64; 2]| {
        one[0] <= other[0] && one[1] <= other[1] && (one[0] < other[0] || one[1] < other[1])
    };
    for (supply, place) in combinations.iter_mut().zip(&places) {
        supply.is_unbeaten = place
            .as_ref()
            .is_some_and(|place| !places.iter().flatten().any(|other| beats(other, place)));
    }
}
