//! The figures of everything on the menu, a row for each drink: what it costs and what it leaves, its sugar and energy, its
//! allergens, and how far it is from its standard.

use super::request::{Drink, drinks_of_menu};
use crate::balance::{
    AllergenSummary, Balance, Margin, Measurand, Reported, VersionBalances, difference, margin,
};
use crate::book::{ApprovalMark, Book, Recipe, State};
use crate::swap::Watch;

/// A drink of the menu with its figures.
#[derive(Clone, Debug, PartialEq)]
pub struct MenuRow {
    /// The drink.
    pub drink: Drink,
    /// How far it is.
    pub state: State,
    /// What stands behind its mark, where it is marked approved.
    pub mark: Option<ApprovalMark>,
    /// What it costs with cup and closure, in the book's currency.
    pub cost: Reported,
    /// What is left of its menu price; `None` without one, or while nothing is known of its cost.
    pub margin: Option<Margin>,
    /// Its price on the menu, sales tax included.
    pub menu_price: Option<f64>,
    /// Total sugar of the whole drink, g.
    pub sugar: Reported,
    /// Energy of the whole drink, kJ.
    pub energy: Reported,
    /// What its packs say of allergens.
    pub allergens: AllergenSummary,
    /// Whether it is held to a standard.
    pub has_standard: bool,
    /// Its overall difference from that, in noticeable steps; `None` without one, or when no axis is known.
    pub distance: Option<f64>,
    /// Whether an axis that counts is not known, so that it may be more.
    pub distance_is_least: bool,
}

impl MenuRow {
    /// Whether it is what was approved.
    pub fn is_approved(&self) -> bool {
        self.mark == Some(ApprovalMark::AsApproved)
    }

    /// The row of a drink, whose balance is known, beside its standard.
    pub(super) fn new(
        book: &Book,
        recipe: &Recipe,
        drink: &Drink,
        balance: &Balance,
        standard: Option<&Balance>,
    ) -> Self {
        let version = drink.version.as_ref();
        let apart = standard.map(|standard| difference(&book.settings, standard, balance));
        Self {
            drink: drink.clone(),
            state: recipe.state_of(version).unwrap_or_default(),
            mark: recipe.standing(version, &balance.resolved).mark(),
            cost: balance.reported(Measurand::Cost),
            margin: margin(book, balance),
            menu_price: balance.resolved.menu_price,
            sugar: balance.reported(Measurand::TotalSugar),
            energy: balance.reported(Measurand::EnergyKj),
            allergens: balance.allergens.clone(),
            has_standard: apart.is_some(),
            distance_is_least: apart
                .as_ref()
                .is_some_and(|apart| apart.counted().any(|axis| axis.steps.is_none())),
            distance: apart.and_then(|apart| apart.distance),
        }
    }
}

/// The rows of everything on the menu, in the order of the book.
pub fn menu_figures(book: &Book) -> Vec<MenuRow> {
    menu_figures_watched(book, &Watch::default())
}

/// The same, watched from outside: one part for each recipe.
pub fn menu_figures_watched(book: &Book, watch: &Watch) -> Vec<MenuRow> {
    let drinks = drinks_of_menu(book);
    let by_recipe = || drinks.chunk_by(|a, b| a.recipe == b.recipe);
    watch.expect(by_recipe().count());
    let mut rows = Vec::with_capacity(drinks.len());
    for of_recipe in by_recipe() {
        if watch.is_stopped() {
            break;
        }
        if let Some(recipe) = book.recipe(&of_recipe[0].recipe) {
            let mut balances = VersionBalances::new(book, recipe);
            rows.extend(of_recipe.iter().filter_map(|drink| {
                let version = drink.version.as_ref();
                let balance = balances.balance(version)?;
                let standard = balances.standard(version);
                let standard = standard.as_deref();
                Some(MenuRow::new(book, recipe, drink, &balance, standard))
            }));
        }
        watch.done();
    }
    rows
}
