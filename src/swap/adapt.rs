//! A drink changed on purpose, brought back to its standard as near as its measures allow: what ladder, resizing and icing
//! share.

use std::borrow::Cow;
use std::cell::OnceCell;
use std::sync::Arc;

use crate::balance::{
    Balance, Difference, balance, balance_version, difference, held_standard, standard_balance,
    without_sweeteners,
};
use crate::book::{
    Book, Change, Place, Recipe, Resolved, Role, Stage, Version, VersionId, differences_between,
    resolve,
};
use crate::edit::Edit;
use crate::optimiser::{Range, Status};

use super::changes::{LineMove, line_moves, with_amounts};
use super::demands::Demands;
use super::grown::tastes_of_itself;
use super::impossible::impossible;
use super::problem::{Problem, ProblemInput, run};
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;
use super::shortfall::{Shortfall, shortfalls};
use super::watch::Watch;

/// Most lines that move when a drink is made hot or iced.
const MOST_MOVABLE: usize = 8;

/// How a drink is changed on purpose.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Adaptation {
    /// Not at all: only its amounts move towards its standard.
    ToStandard,
    /// To a part of its added sweetness.
    SugarLevel {
        /// Sugar of the drink without any sweetener, g; `None` when it is not known.
        floor_sugar: Option<f64>,
    },
    /// Into another cup.
    Cup {
        /// How many times as much that cup holds.
        ratio: f64,
        /// Part of it that the drink fills, percent; `None` when it is not known.
        fill: Option<f64>,
    },
    /// From hot to iced.
    Iced,
    /// To a part of its ice.
    IceLevel {
        /// Volume of the standard, ml.
        standard_volume: f64,
    },
    /// From iced to hot.
    Hot {
        /// Temperature that water and tea are poured at, °C.
        poured_at: f64,
    },
}

/// A drink that has been changed and brought back.
#[derive(Clone, Debug, PartialEq)]
pub struct Adapted {
    /// Lines that move against the version as it stands.
    pub moves: Vec<LineMove>,
    /// The changes that make a version of it.
    pub changes: Vec<Change>,
    /// Its balance.
    pub balance: Arc<Balance>,
    /// How it differs from what it is held to.
    pub difference: Difference,
    /// What the search aimed at and did not reach within a noticeable step, with what stands in the way.
    pub shortfalls: Vec<Shortfall>,
    /// How it was changed on purpose.
    pub adaptation: Adaptation,
    /// Whether it is proven best.
    pub proven_optimal: bool,
}

impl Adapted {
    /// The edit that keeps it as a new version with this name, and the id of that version. It builds on the version that it
    /// was made from; neither that one nor anything approved changes.
    pub fn accept(
        &self,
        recipe: &Recipe,
        version: Option<&VersionId>,
        name: &str,
    ) -> (Edit, VersionId) {
        new_version(recipe, version, &self.changes, name)
    }
}

/// The edit that adds a draft with these changes, and its id.
pub(super) fn new_version(
    recipe: &Recipe,
    builds_on: Option<&VersionId>,
    changes: &[Change],
    name: &str,
) -> (Edit, VersionId) {
    let id = VersionId::from_name(name, |taken| recipe.version(taken).is_some());
    let mut version = Version::draft(id.clone(), name.to_owned(), builds_on.cloned());
    version.changes = changes.to_vec();
    let recipe = recipe.id.clone();
    (Edit::AddVersion { recipe, version }, id)
}

/// What a drink starts from.
pub(super) struct Origin<'book> {
    pub(super) book: &'book Book,
    pub(super) recipe: &'book Recipe,
    /// The version as it stands.
    base: Resolved,
    /// The lines that are changed: those of the version, or what has been made of them already.
    pub(super) resolved: Resolved,
    /// How these lines are.
    pub(super) now: Balance,
    /// Its standard or, without one, itself.
    pub(super) standard: Balance,
    /// The book as the standard was tasted.
    then: Cow<'book, Book>,
    /// The lines without their sweeteners, once they are asked for.
    bare: OnceCell<Balance>,
    /// The standard without its sweeteners, once it is asked for.
    floor: OnceCell<Balance>,
    pub(super) watch: &'book Watch,
}

impl<'book> Origin<'book> {
    /// `None` when there is no such version.
    pub(super) fn new(
        book: &'book Book,
        recipe: &'book Recipe,
        version: Option<&VersionId>,
        watch: &'book Watch,
    ) -> Option<Self> {
        let now = balance_version(book, recipe, version)?;
        let (standard, then) = match standard_balance(book, recipe, version) {
            Some((standard, approval)) => {
                let as_it_is = Balance {
                    aims: Vec::new(),
                    ..standard
                };
                (as_it_is, book.as_tasted(approval))
            }
            None => (now.clone(), Cow::Borrowed(book)),
        };
        let (base, _) = resolve(recipe, version);
        Some(Self {
            book,
            recipe,
            resolved: base.clone(),
            base,
            now,
            standard,
            then,
            bare: OnceCell::new(),
            floor: OnceCell::new(),
            watch,
        })
    }

    /// The same with something made of it already, which is changed further.
    pub(super) fn made_further(&self, lines: &Balance) -> Self {
        Self {
            base: self.base.clone(),
            resolved: lines.resolved.clone(),
            now: lines.clone(),
            standard: self.standard.clone(),
            then: self.then.clone(),
            bare: OnceCell::new(),
            floor: self.floor.clone(),
            ..*self
        }
    }

    /// The standard as lines are held to it, once they are kept.
    pub(super) fn held(&self, lines: &Resolved) -> Balance {
        let standard = self.standard.clone();
        let id = &self.recipe.id;
        held_standard(self.book, &self.then, id, standard, &self.floor, lines)
    }

    /// The drink with every sweetener left out that can be: what no level of sugar goes below.
    pub(super) fn bare(&self) -> &Balance {
        let of_lines = || {
            let bare = without_sweeteners(self.book, &self.resolved);
            balance(self.book, bare, &self.place())
        };
        self.bare.get_or_init(of_lines)
    }

    pub(super) fn place(&self) -> Place {
        Place::Recipe(self.recipe.id.clone(), "lines")
    }

    /// Lets lines of changed lines move until the taste is nearest to what they are held to. A line counts as moved against
    /// `from`. `Err` says why nothing is possible.
    pub(super) fn bring_back(
        &self,
        changed: Resolved,
        adjustable: Vec<Adjustable>,
        from: &Resolved,
        demands: &Demands,
    ) -> Result<Adapted, Unadaptable> {
        let mut held = self.held(&changed);
        let start = balance(self.book, changed, &self.place());
        held.resolved = from.clone();
        let problem = Problem::new(&ProblemInput {
            book: self.book,
            recipe: &self.recipe.id,
            standard: &held,
            start: &start,
            adjustable,
            demands,
        });
        let outcome = run(&problem.landscape, demands.limit, None, self.watch);
        let Some((best, status)) =
            outcome.and_then(|outcome| Some((outcome.best?, outcome.status)))
        else {
            return Err(Unadaptable::Impossible(impossible(&problem, &start)));
        };
        let lines = with_amounts(&problem.lines, &problem.adjustable, &best.point);
        let adapted = balance(self.book, lines, &self.place());
        let held = self.held(&adapted.resolved);
        Ok(Adapted {
            moves: line_moves(&self.base, &self.base, &adapted.resolved),
            changes: differences_between(&self.base, &adapted.resolved).changes,
            difference: difference(&self.book.settings, &held, &adapted),
            balance: Arc::new(adapted),
            shortfalls: shortfalls(&problem, &best.point),
            adaptation: Adaptation::ToStandard,
            proven_optimal: status == Status::Optimal,
        })
    }
}

/// The mixed lines of some roles, with their increments; only a sweetener may be left out altogether.
pub(super) fn movable(
    book: &Book,
    lines: &Resolved,
    takes: impl Fn(Role) -> bool,
) -> Vec<Adjustable> {
    let mixed = lines
        .lines()
        .filter(|line| line.stage == Stage::Mixed && takes(line.role));
    let mut found: Vec<Adjustable> = mixed
        .filter_map(|line| Adjustable::new(book, line, false))
        .take(MOST_MOVABLE)
        .collect();
    for adjustable in &mut found {
        if tastes_of_itself(book, &adjustable.line) {
            let number = adjustable.line.amount.number().unwrap_or(0.0);
            let now = steps_in(number, adjustable.step);
            adjustable.range = Range {
                low: now - 1,
                high: now + 1,
            };
        }
        if adjustable.line.role != Role::Sweetener {
            adjustable.range.low = adjustable.range.low.max(1);
        }
    }
    found
}
