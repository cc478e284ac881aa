//! What else is asked of a swap: which lines may move and how far, what the drink must keep, and what else is swapped.

use crate::balance::{Verdict, claims_of_ingredient};
use crate::book::{Allergen, Book, IngredientId, LineId, TemperatureWindow};

/// Boxes that one search looks at before it gives up the proof.
const USUAL_LIMIT: u64 = 60_000;

/// How far a line may move, in the unit of its amount.
#[derive(Clone, Debug, PartialEq)]
pub struct LineLimit {
    /// The line.
    pub line: LineId,
    /// The least amount.
    pub least: Option<f64>,
    /// The greatest amount.
    pub most: Option<f64>,
    /// The increment; that of the measure when none is given.
    pub increment: Option<f64>,
}

/// What is asked beside the swap itself. The default asks for nothing and lets the program choose.
#[derive(Clone, Debug, PartialEq)]
pub struct Demands {
    /// Lines that must not move.
    pub locked: Vec<LineId>,
    /// Lines that may move besides those that are chosen by default.
    pub unlocked: Vec<LineId>,
    /// Limits and increments.
    pub limits: Vec<LineLimit>,
    /// Whether a sweetener of the house may be added that the drink does not have.
    pub may_add_sweetener: bool,
    /// Whether a sweetener may be left out altogether.
    pub may_leave_out_sweetener: bool,
    /// Whether the drink must be vegan by its ingredients.
    pub keep_vegan: bool,
    /// Allergens that no ingredient may contain.
    pub without: Vec<Allergen>,
    /// Sugars of the whole drink at most, g per 100 ml of the mixed drink.
    pub most_sugar_per_100_ml: Option<f64>,
    /// Energy at most, kJ.
    pub most_energy_kj: Option<f64>,
    /// Cost at most, in the book's currency.
    pub most_cost: Option<f64>,
    /// Part of the cup that may be filled, percent; up to its head room when none is given.
    pub most_fill: Option<f64>,
    /// Serving temperatures; those of the shop when none are given.
    pub temperature: Option<TemperatureWindow>,
    /// Ice that is left when the drink is handed over, at least, g.
    pub least_ice_left: Option<f64>,
    /// Further swaps that are made together with the question's own.
    pub also: Vec<(IngredientId, IngredientId)>,
    /// Boxes that one search looks at before it gives up the proof.
    pub limit: u64,
}

impl Default for Demands {
    fn default() -> Self {
        Self {
            locked: Vec::new(),
            unlocked: Vec::new(),
            limits: Vec::new(),
            may_add_sweetener: true,
            may_leave_out_sweetener: true,
            keep_vegan: false,
            without: Vec::new(),
            most_sugar_per_100_ml: None,
            most_energy_kj: None,
            most_cost: None,
            most_fill: None,
            temperature: None,
            least_ice_left: None,
            also: Vec::new(),
            limit: USUAL_LIMIT,
        }
    }
}

impl Demands {
    /// Whether an ingredient may be in the drink, by its own entry and by everything that the house makes it from. One that
    /// nobody knows to be vegan, or free of an allergen, may not.
    pub(super) fn admit_ingredient(&self, book: &Book, id: &IngredientId) -> bool {
        if !self.keep_vegan && self.without.is_empty() {
            return true;
        }
        let claims = claims_of_ingredient(book, id);
        let is_free = |allergen: &Allergen| claims.allergens.free_of(*allergen) == Verdict::Yes;
        (!self.keep_vegan || claims.vegan == Verdict::Yes) && self.without.iter().all(is_free)
    }
}
