//! The balances of many versions of one recipe, without looking for what they share again and again.

use std::rc::Rc;

use super::balance::balance_resolved;
use super::held::{approved_balance, held_to_approval, is_held_as_it_is};
use crate::balance::Balance;
use crate::book::{Approval, Book, Lineages, Recipe, VersionId};

/// Works out versions of a recipe one after the other.
pub struct VersionBalances<'book> {
    book: &'book Book,
    recipe: &'book Recipe,
    lineages: Lineages<'book>,
    /// The standard that was worked out last: versions often share it.
    standard: Option<(&'book Approval, Rc<Balance>)>,
}

impl<'book> VersionBalances<'book> {
    /// Nothing is worked out yet.
    pub fn new(book: &'book Book, recipe: &'book Recipe) -> Self {
        Self {
            book,
            recipe,
            lineages: Lineages::new(recipe),
            standard: None,
        }
    }

    /// The recipe.
    pub fn recipe(&self) -> &'book Recipe {
        self.recipe
    }

    /// The same as [`crate::balance::balance_version`].
    pub fn balance(&mut self, version: Option<&VersionId>) -> Option<Balance> {
        if !self.lineages.has(version) {
            return None;
        }
        let (resolved, findings) = self.lineages.resolve(version);
        let standard = self.lineages.standard_for(version);
        let tasted_at = standard.and_then(|standard| standard.tasted_at);
        let balance = balance_resolved(self.book, self.recipe, version, resolved, findings);
        Some(Balance {
            tasted_at,
            ..balance
        })
    }

    /// The balance of the same standard as [`crate::balance::standard_balance`].
    pub fn standard(&mut self, version: Option<&VersionId>) -> Option<Rc<Balance>> {
        let approval = self.lineages.standard_for(version)?;
        if let Some((kept, balance)) = &self.standard
            && std::ptr::eq(*kept, approval)
        {
            let balance = balance.clone();
            return Some(self.held(approval, balance, version));
        }
        let balance = Rc::new(approved_balance(self.book, self.recipe, approval));
        self.standard = Some((approval, balance.clone()));
        Some(self.held(approval, balance, version))
    }

    /// A standard as a version is held to it.
    fn held(
        &mut self,
        approval: &Approval,
        standard: Rc<Balance>,
        version: Option<&VersionId>,
    ) -> Rc<Balance> {
        let (lines, _) = self.lineages.resolve(version);
        if is_held_as_it_is(&standard.resolved, &lines) {
            return standard;
        }
        let standard = standard.as_ref().clone();
        let held = held_to_approval(self.book, self.recipe, approval, standard, &lines);
        Rc::new(held)
    }
}
