//! Values derived from the book, computed once per book stamp.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::serving::{Serving, serving};
use crate::balance::{Balance, Difference, balance_version, difference, standard_balance};
use crate::book::{Book, Finding, RecipeId, VersionId, findings};

/// Which book a derived value belongs to. Stamps come from a counter that never goes back, so that undo gets a new one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BookStamp(pub u64);

/// The standard of a version, and how the version differs from it.
#[derive(Clone, Debug, PartialEq)]
pub struct Standard {
    /// Day of the approval.
    pub date: String,
    /// Who approved it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// Which version was approved.
    pub version: Option<VersionId>,
    /// Its balance with today's ingredient figures.
    pub balance: Arc<Balance>,
    /// How the version that was asked for differs from it.
    pub difference: Arc<Difference>,
}

type Key = (RecipeId, Option<VersionId>);

/// Values derived from one book. Dropped as a whole when the book changes: an ingredient may be in every recipe.
#[derive(Debug, Default)]
pub struct Derived {
    stamp: BookStamp,
    balances: BTreeMap<Key, Option<Arc<Balance>>>,
    standards: BTreeMap<Key, Option<Standard>>,
    servings: BTreeMap<Key, Arc<Serving>>,
    findings: Option<Arc<Vec<Finding>>>,
    engine_calls: u64,
}

impl Derived {
    /// How often the engine has been asked since the start.
    pub fn engine_calls(&self) -> u64 {
        self.engine_calls
    }

    /// The engine was asked for something that is kept elsewhere.
    pub(super) fn count_call(&mut self) {
        self.engine_calls += 1;
    }

    fn keep_only(&mut self, stamp: BookStamp) {
        if self.stamp != stamp {
            *self = Self {
                stamp,
                engine_calls: self.engine_calls,
                ..Self::default()
            };
        }
    }

    /// The balance of a version; `None` when there is none such.
    pub fn balance(
        &mut self,
        book: &Book,
        stamp: BookStamp,
        recipe: &RecipeId,
        version: Option<&VersionId>,
    ) -> Option<Arc<Balance>> {
        self.keep_only(stamp);
        let key = (recipe.clone(), version.cloned());
        if let Some(known) = self.balances.get(&key) {
            return known.clone();
        }
        self.engine_calls += 1;
        let balance = book
            .recipe(recipe)
            .and_then(|recipe| balance_version(book, recipe, version))
            .map(Arc::new);
        self.balances.insert(key, balance.clone());
        balance
    }

    /// The standard of a version; `None` when nothing has been approved.
    pub fn standard(
        &mut self,
        book: &Book,
        stamp: BookStamp,
        recipe: &RecipeId,
        version: Option<&VersionId>,
    ) -> Option<Standard> {
        let balance = self.balance(book, stamp, recipe, version)?;
        let key = (recipe.clone(), version.cloned());
        if let Some(known) = self.standards.get(&key) {
            return known.clone();
        }
        self.engine_calls += 1;
        let standard = book.recipe(recipe).and_then(|recipe| {
            let (standard, approval) = standard_balance(book, recipe, version)?;
            Some(Standard {
                date: approval.date.clone(),
                by: approval.by.clone(),
                reason: approval.reason.clone(),
                version: approval.version.clone(),
                difference: Arc::new(difference(&book.settings, &standard, &balance)),
                balance: Arc::new(standard),
            })
        });
        self.standards.insert(key, standard.clone());
        standard
    }

    /// What is said of a version as it is served; `None` when there is none such.
    pub fn serving(
        &mut self,
        book: &Book,
        stamp: BookStamp,
        recipe: &RecipeId,
        version: Option<&VersionId>,
    ) -> Option<Arc<Serving>> {
        let balance = self.balance(book, stamp, recipe, version)?;
        let key = (recipe.clone(), version.cloned());
        if let Some(known) = self.servings.get(&key) {
            return Some(known.clone());
        }
        self.engine_calls += 1;
        let serving = Arc::new(serving(book, &balance));
        self.servings.insert(key, serving.clone());
        Some(serving)
    }

    /// What is wrong with the book.
    pub fn findings(&mut self, book: &Book, stamp: BookStamp) -> Arc<Vec<Finding>> {
        self.keep_only(stamp);
        self.findings
            .get_or_insert_with(|| Arc::new(findings(book)))
            .clone()
    }
}
