//! What the screen asks of the open book, apart from words.

use std::collections::HashMap;
use std::hash::{Hash, Hasher};
use std::sync::Arc;

use super::action::Shown;
use super::derived::{Answers, BookQuestion, KEPT_OF_TYPED};
use super::serving::{Serving, serving};
use crate::balance::{
    Balance, Difference, GramCost, HouseBrew, Kitchen, LastSip, Measurand, Mix, OtherWay, Portion,
    Slots, balance_version, cost_of_gram, difference, figures, house_brew, last_sip, other_ways,
    per_gram, portion, standard_balance,
};
use crate::book::{
    Amount, Book, BookDifference, Conflict, Finding, Ingredient, IngredientId, Item, MeasureId,
    Side, VersionId, difference_of_books, findings, merge,
};
use crate::cups::{CupDoctor, CupReading, Measured, WhyOff};

/// The balance of a version; `None` when there is none such.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct BalanceOf(pub Shown);

impl BookQuestion for BalanceOf {
    type Answer = Option<Arc<Balance>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let Self(Shown { recipe, version }) = self;
        let book = answers.book();
        balance_version(book, book.recipe(recipe)?, version.as_ref()).map(Arc::new)
    }
}

/// The standard of a version; `None` when nothing has been approved.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct StandardOf(pub Shown);

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
    /// Whether it knows what it was tasted with; one from before that was kept has the first figures that were.
    pub knows_its_figures: bool,
    /// Its balance with the figures that it was tasted with.
    pub balance: Balance,
    /// How the version that was asked for differs from it.
    pub difference: Difference,
}

impl BookQuestion for StandardOf {
    type Answer = Option<Arc<Standard>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let balance = answers.to(&BalanceOf(self.0.clone()))?;
        let Shown { recipe, version } = &self.0;
        let (standard, approval) = standard_balance(book, book.recipe(recipe)?, version.as_ref())?;
        Some(Arc::new(Standard {
            date: approval.date.clone(),
            by: approval.by.clone(),
            reason: approval.reason.clone(),
            knows_its_figures: approval.tasted_with.is_some(),
            version: approval.version.clone(),
            difference: difference(&book.settings, &standard, &balance),
            balance: standard,
        }))
    }
}

/// What is said of a version as it is served; `None` when there is none such.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct ServingOf(pub Shown);

impl BookQuestion for ServingOf {
    type Answer = Option<Arc<Serving>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let balance = answers.to(&BalanceOf(self.0.clone()))?;
        Some(Arc::new(serving(answers.book(), &balance)))
    }
}

/// A version from the counter to the last sip; `None` when there is none such, its cup is empty, or nobody knows how it cools.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct LastSipOf(pub Shown);

/// A drink from the counter to the last sip, and what other ways to hand it over change.
#[derive(Clone, Debug, PartialEq)]
pub struct Standings {
    /// As it is handed over.
    pub course: LastSip,
    /// In other ways.
    pub others: Vec<(OtherWay, LastSip)>,
}

/// For how long a drink is followed, minutes.
pub const LAST_SIP_MINUTES: u16 = 60;

impl BookQuestion for LastSipOf {
    type Answer = Option<Arc<Standings>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let balance = answers.to(&BalanceOf(self.0.clone()))?;
        let standard = answers.to(&StandardOf(self.0.clone()));
        let standard = standard.as_ref().map(|found| &found.balance);
        let minutes: Vec<f64> = (0..=LAST_SIP_MINUTES).map(f64::from).collect();
        Some(Arc::new(Standings {
            course: last_sip(book, &balance, standard, &minutes)?,
            others: other_ways(book, &balance, standard, &minutes),
        }))
    }
}

/// Why one cup of a version is off; `None` when there is none such, or nothing in its cup.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct WhyOffOf {
    shown: Shown,
    /// The bits of what was read, in the order of [`Measured::ALL`].
    read: [Option<u64>; Measured::ALL.len()],
}

impl WhyOffOf {
    /// A cup of a version with what was read of it, in the order of [`Measured::ALL`] and in the unit of each figure.
    pub fn new(shown: &Shown, read: [Option<f64>; Measured::ALL.len()]) -> Self {
        Self {
            shown: shown.clone(),
            read: read.map(|read| read.map(f64::to_bits)),
        }
    }
}

impl BookQuestion for WhyOffOf {
    type Answer = Option<Arc<WhyOff>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let Shown { recipe, version } = &self.shown;
        let doctor = CupDoctor::of(book, book.recipe(recipe)?, version.as_ref())?;
        let readings = Measured::ALL.into_iter().zip(self.read);
        let readings: Vec<CupReading> = readings
            .filter_map(|(measured, bits)| {
                Some(doctor.reading(book, measured, f64::from_bits(bits?)))
            })
            .collect();
        Some(Arc::new(doctor.why_off(&readings)))
    }
}

/// How a version differs from another one; `None` when one of them is not there.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct DifferenceFrom {
    /// The version that is the line.
    pub first: Shown,
    /// The other one.
    pub other: Shown,
}

impl BookQuestion for DifferenceFrom {
    type Answer = Option<Arc<Difference>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let first = answers.to(&BalanceOf(self.first.clone()))?;
        let other = answers.to(&BalanceOf(self.other.clone()))?;
        let settings = &answers.book().settings;
        Some(Arc::new(difference(settings, &first, &other)))
    }
}

/// What is wrong with the book.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct FindingsOfBook;

impl BookQuestion for FindingsOfBook {
    type Answer = Arc<Vec<Finding>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(findings(answers.book()))
    }
}

/// What a gram of an ingredient holds, from its label alone; `None` when there is none such.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct GramOf(pub IngredientId);

/// A gram of an ingredient.
#[derive(Debug)]
pub struct Gram {
    of: Arc<Ingredient>,
    /// What it holds.
    pub mix: Mix,
}

impl BookQuestion for GramOf {
    type Answer = Option<Arc<Gram>>;
    /// A label says what it says, whatever else the book holds.
    const STAYS_FOR: Option<fn(&Self::Answer, &Book) -> bool> = Some(|answer, book| {
        let of = answer.as_ref().map(|gram| &gram.of);
        of.is_some_and(|of| {
            let now = book.ingredient(&of.id);
            now.is_some_and(|now| Arc::ptr_eq(of, now))
        })
    });

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let of = answers.book().ingredient(&self.0)?.clone();
        let mix = per_gram(&of, &mut Slots::default()).mix;
        Some(Arc::new(Gram { of, mix }))
    }
}

/// What one use of a measure holds of an ingredient.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct OneUseOf {
    ingredient: IngredientId,
    measure: MeasureId,
    /// The bits of a temperature, °C.
    celsius: u64,
}

impl OneUseOf {
    /// Of an ingredient of so many °C.
    pub fn new(ingredient: &IngredientId, measure: &MeasureId, celsius: f64) -> Self {
        Self {
            ingredient: ingredient.clone(),
            measure: measure.clone(),
            celsius: celsius.to_bits(),
        }
    }
}

impl BookQuestion for OneUseOf {
    type Answer = Option<Portion>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let ingredient = book.ingredient(&self.ingredient)?;
        let gram = answers.to(&GramOf(self.ingredient.clone()))?;
        let one_use = Amount::Count(1.0, self.measure.clone());
        portion(
            book,
            ingredient,
            &gram.mix,
            &one_use,
            f64::from_bits(self.celsius),
        )
    }
}

/// The brew that an ingredient of the house is; `None` for everything else.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct HouseBrewOf(pub IngredientId);

impl BookQuestion for HouseBrewOf {
    type Answer = Option<Arc<HouseBrew>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        house_brew(book, book.ingredient(&self.0)?).map(Arc::new)
    }
}

/// What a gram of an ingredient costs, through its batches; `None` when there is none such.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct CostOfGram(pub IngredientId);

impl BookQuestion for CostOfGram {
    type Answer = Option<GramCost>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        cost_of_gram(answers.book(), &self.0)
    }
}

/// Sugars in 100 g of what is made in the house, g, where they are known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct SugarsOfBatches;

impl BookQuestion for SugarsOfBatches {
    type Answer = Arc<HashMap<IngredientId, f64>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        // Nobody asks how sure it is here: a whole balance for each of a chain of batches would take seconds.
        let mut kitchen = Kitchen::new(book);
        let sugars = book.ingredients.iter().filter_map(|item| {
            let made = item.house_made.as_ref()?;
            let recipe = book.recipe(&made.recipe)?;
            let sugars = figures(&kitchen.prepare(recipe, None)).complete(Measurand::TotalSugar)?;
            let sugars = 100.0 * sugars / made.yield_grams.value;
            (made.yield_grams.value > 0.0).then(|| (item.id().clone(), sugars))
        });
        Arc::new(sugars.collect())
    }
}

/// Another state of the book. It is asked about in every frame: two are the same when they are the same in memory.
#[derive(Clone, Debug)]
pub struct Snapshot(pub Arc<Book>);

impl PartialEq for Snapshot {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl Eq for Snapshot {}

impl Hash for Snapshot {
    fn hash<H: Hasher>(&self, state: &mut H) {
        Arc::as_ptr(&self.0).hash(state);
    }
}

/// Most answers of a question that holds a whole book.
const KEPT_OF_SNAPSHOTS: usize = 2;

/// How the book differs from another state of it.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct ChangesSince(pub Snapshot);

impl BookQuestion for ChangesSince {
    type Answer = Arc<BookDifference>;
    const KEPT: usize = KEPT_OF_SNAPSHOTS;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(difference_of_books(&self.0.0, answers.book()))
    }
}

/// What the book and another one have both changed, differently.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct ConflictsWith {
    /// The other one.
    pub theirs: Snapshot,
    /// The state that both have come from.
    pub base: Snapshot,
}

impl BookQuestion for ConflictsWith {
    type Answer = Arc<Vec<Conflict>>;
    const KEPT: usize = KEPT_OF_SNAPSHOTS;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let merged = merge(&self.base.0, answers.book(), &self.theirs.0, |_| Side::Mine);
        Arc::new(merged.conflicts)
    }
}
