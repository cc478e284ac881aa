//! Approved drinks that no longer taste as they were approved, because a product, a tool or the shop has changed since.

use crate::balance::{ControlChart, Difference, VersionBalances, difference, since_day};
use crate::book::{Book, IngredientId, ItemId, Measure, RecipeId, State, VersionId};
use crate::edit::{Edit, apply};

use super::question::Question;
use super::watch::Watch;

/// An approved drink whose standard was tasted with what has changed since.
#[derive(Clone, Debug, PartialEq)]
pub struct Drifted {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version; the recipe itself for `None`.
    pub version: Option<VersionId>,
    /// What has changed.
    pub causes: Vec<ItemId>,
    /// How the drink that is made now differs from the one that was tasted.
    pub difference: Difference,
    /// An ingredient of the drink whose lines, and what goes with them, bring it back: one that has changed, where one has.
    pub replace: Option<IngredientId>,
}

impl Drifted {
    /// What brings it back: the ingredient for itself, as it is now.
    pub fn question(&self) -> Option<Question> {
        let replace = self.replace.clone()?;
        Some(Question {
            recipe: self.recipe.clone(),
            version: self.version.clone(),
            with: replace.clone(),
            replace,
            adjust: None,
        })
    }
}

/// The approved drinks that what has changed since moves by more than a step on an axis, or on one that can't be told, in the
/// order of the book. What leaves every figure of a drink as it was has not moved it.
pub fn drifted(book: &Book) -> Vec<Drifted> {
    drifted_watched(book, &Watch::default())
}

/// The same, watched from outside.
pub fn drifted_watched(book: &Book, watch: &Watch) -> Vec<Drifted> {
    drifted_by(book, watch, |causes| !causes.is_empty())
}

/// The approved drinks that have drifted and whose causes are wanted.
fn drifted_by(book: &Book, watch: &Watch, is_wanted: impl Fn(&[ItemId]) -> bool) -> Vec<Drifted> {
    let mut found = Vec::new();
    if !book.keeps_earlier_states() {
        return found;
    }
    for recipe in &book.recipes {
        let mut balances = VersionBalances::new(book, recipe);
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions) {
            let approvals = recipe.approvals.iter().rev();
            let mut own = approvals.filter(|approval| approval.version.as_ref() == version);
            let is_approved = recipe.state_of(version) == Some(State::Approved);
            let Some(approval) = own.next().filter(|_| is_approved) else {
                continue;
            };
            let causes = book.changed_since(approval);
            if !is_wanted(&causes) || watch.is_stopped() {
                continue;
            }
            let (Some(standard), Some(now)) =
                (balances.standard(version), balances.balance(version))
            else {
                continue;
            };
            // A scoop that another powder was weighed with since is another scoop, and makes the same drink: what nobody can
            // tell of it was not known when it was tasted either.
            if standard.figures == now.figures {
                continue;
            }
            let difference = difference(&book.settings, &standard, &now);
            if difference.within_one_step() == Some(true) {
                continue;
            }
            let used = || now.resolved.lines().map(|line| &line.ingredient);
            let has_changed =
                |id: &&IngredientId| causes.contains(&ItemId::Ingredient((*id).clone()));
            let replace = used().find(has_changed).or_else(|| used().next());
            found.push(Drifted {
                recipe: recipe.id.clone(),
                version: version.cloned(),
                replace: replace.cloned(),
                causes,
                difference,
            });
        }
    }
    found
}

/// The approved drinks that move with a measure that has changed as its chart shows; none where it shows nothing.
pub fn moved_as_charted(book: &Book, measure: &Measure, chart: &ControlChart) -> Vec<Drifted> {
    chart.shift().map_or_else(Vec::new, |shift| {
        let ingredient = chart.ingredient.as_ref();
        moved_by(book, &since_day(measure, ingredient, &shift.since))
    })
}

/// The approved drinks that would be more than a step from what was approved if a measure were as it is here, and that this measure
/// has a part in.
pub fn moved_by(book: &Book, measure: &Measure) -> Vec<Drifted> {
    let cause = ItemId::Measure(measure.id.clone());
    let Ok(after) = apply(book, &Edit::PutMeasure(measure.clone())) else {
        return Vec::new();
    };
    drifted_by(&after, &Watch::default(), |causes| causes.contains(&cause))
}
