//! What a shop should measure first: what narrows the figures of its drinks most.
//!
//! The doubt of a drink is the root of the weighted sum of the squared uncertainties of its axes, in noticeable steps. What is
//! measured takes its own part of that sum away, or as much of it as measuring can; the ranking adds up over the drinks by how much the
//! root falls.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::axes::slot_of;
use super::balance::Balance;
use crate::balance::cause::Cause;
use crate::book::{Book, Evidence, Figure, IngredientId, ItemId, MeasureId, Nutrient};

/// Something that a shop can weigh, read or ask for, and what that does for its drinks.
#[derive(Clone, Debug, PartialEq)]
pub struct ToMeasure {
    /// Where it is written down.
    pub item: ItemId,
    /// What is not known well, or not at all.
    pub what: Doubtful,
    /// In how many drinks it counts.
    pub drinks: usize,
    /// The part by which the doubt of all drinks falls; `None` where nothing is known yet, so that nothing can be compared.
    pub part: Option<f64>,
    /// The drink in which it counts most.
    pub balance: Arc<Balance>,
}

/// What is not known well, or not at all.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Doubtful {
    /// What nobody can weigh yet: an ingredient by a measure, or by millilitres.
    NoMass(IngredientId, Option<MeasureId>),
    /// A cause; the one that counts most, where one look at a pack or a sheet settles several.
    Cause(Cause),
}

/// Adds up what is doubtful over many drinks.
pub struct Narrowing<'book> {
    book: &'book Book,
    doubt: f64,
    found: BTreeMap<(ItemId, Option<Cause>), Sum>,
    unweighed: BTreeMap<(IngredientId, Option<MeasureId>), (usize, Arc<Balance>)>,
}

/// What one act of measuring does over the drinks.
struct Sum {
    falls: f64,
    drinks: usize,
    /// The cause and the drink that it does most for, and how much.
    most: (f64, Cause, Arc<Balance>),
}

/// A part of the doubt of a drink below which a cause does not count in it.
const COUNTS: f64 = 1e-3;

impl<'book> Narrowing<'book> {
    /// No drink yet.
    pub fn of(book: &'book Book) -> Self {
        Self {
            book,
            doubt: 0.0,
            found: BTreeMap::new(),
            unweighed: BTreeMap::new(),
        }
    }

    /// One drink more.
    pub fn add(&mut self, balance: &Arc<Balance>) {
        for line in balance.unweighed() {
            let key = (line.ingredient, line.measure);
            let known = self.unweighed.entry(key);
            known.or_insert_with(|| (0, balance.clone())).0 += 1;
        }
        let squares = squares_of(balance);
        let whole: f64 = squares.iter().sum();
        if whole <= 0.0 {
            return;
        }
        self.doubt += whole.sqrt();
        let mut acts: BTreeMap<(ItemId, Option<Cause>), (f64, f64, &Cause)> = BTreeMap::new();
        for (contribution, square) in balance.contributions.iter().zip(squares) {
            let cause = &contribution.cause;
            let falls = square * goes_by_measuring(self.book, cause);
            let Some(act) = act_of(cause).filter(|_| falls > 0.0) else {
                continue;
            };
            let (sum, most, lead) = acts.entry(act).or_insert((0.0, 0.0, cause));
            *sum += falls;
            if falls > *most {
                (*most, *lead) = (falls, cause);
            }
        }
        for (act, (square, _, lead)) in acts {
            let falls = whole.sqrt() - (whole - square.min(whole)).sqrt();
            if falls < COUNTS * whole.sqrt() {
                continue;
            }
            let sum = self.found.entry(act).or_insert_with(|| Sum {
                falls: 0.0,
                drinks: 0,
                most: (0.0, lead.clone(), balance.clone()),
            });
            sum.falls += falls;
            sum.drinks += 1;
            if falls > sum.most.0 {
                sum.most = (falls, lead.clone(), balance.clone());
            }
        }
    }

    /// What to measure, what does most for the drinks first; before it what nobody can weigh yet.
    pub fn ranked(self) -> Vec<ToMeasure> {
        let unweighed = self.unweighed.into_iter().map(|(key, (drinks, balance))| {
            let (ingredient, measure) = key;
            let item = match &measure {
                Some(measure) => ItemId::Measure(measure.clone()),
                None => ItemId::Ingredient(ingredient.clone()),
            };
            ToMeasure {
                item,
                what: Doubtful::NoMass(ingredient, measure),
                drinks,
                part: None,
                balance,
            }
        });
        let mut unweighed: Vec<ToMeasure> = unweighed.collect();
        unweighed.sort_by_key(|found| std::cmp::Reverse(found.drinks));
        let doubt = self.doubt;
        let found = self.found.into_iter().map(|((item, _), sum)| ToMeasure {
            item,
            what: Doubtful::Cause(sum.most.1),
            drinks: sum.drinks,
            part: Some(sum.falls / doubt),
            balance: sum.most.2,
        });
        let mut found: Vec<ToMeasure> = found.collect();
        found.sort_by(|a, b| b.part.unwrap_or(0.0).total_cmp(&a.part.unwrap_or(0.0)));
        unweighed.extend(found);
        unweighed
    }
}

/// What each cause adds to the square of the doubt of a drink.
fn squares_of(balance: &Balance) -> Vec<f64> {
    let axes: Vec<(usize, f64)> = balance
        .axes
        .iter()
        .filter(|axis| axis.value.is_some() && axis.step > 0.0)
        .filter_map(|axis| {
            let slot = slot_of(&balance.flavours, &axis.axis)?;
            Some((slot, axis.weight / axis.step.powi(2)))
        })
        .collect();
    let square = |effect: &[f64]| -> f64 {
        let parts = axes
            .iter()
            .map(|(slot, weight)| weight * effect[*slot].powi(2));
        parts.sum()
    };
    let contributions = balance.contributions.iter();
    contributions.map(|one| square(&one.effect)).collect()
}

/// Where a cause is written down, and what sets it apart there: one pack or sheet settles all figures of a composition.
/// `None` for what a shop can't find out.
fn act_of(cause: &Cause) -> Option<(ItemId, Option<Cause>)> {
    let itself = || Some(cause.clone());
    let ingredient = |id: &IngredientId| ItemId::Ingredient(id.clone());
    Some(match cause {
        Cause::Composition(id, _) | Cause::Undeclared(id) | Cause::HighPotency(id, _) => {
            (ingredient(id), None)
        }
        Cause::SugarSplit(id)
        | Cause::Density(id)
        | Cause::BulkDensity(id)
        | Cause::Extraction(id)
        | Cause::Retention(id)
        | Cause::Yield(id)
        | Cause::FreeSugars(id)
        | Cause::PolyolEnergy(id)
        | Cause::Temperature(id) => (ingredient(id), itself()),
        Cause::Calibration(id, _) | Cause::MeasureTemperature(id) => {
            (ItemId::Measure(id.clone()), itself())
        }
        Cause::VesselHeat(id) | Cause::Cooling(id) => (ItemId::Vessel(id.clone()), itself()),
        Cause::RoomTemperature => (ItemId::Settings, itself()),
        Cause::Flavour(..)
        | Cause::LineTemperature(_)
        | Cause::RelativeSweetness(_)
        | Cause::PolyolSweetness(_)
        | Cause::TastedSweetness(_)
        | Cause::Potency(_)
        | Cause::SweetenerMixture
        | Cause::FreezingPoint
        | Cause::Melting
        | Cause::HeatModel
        | Cause::DensityModel
        | Cause::Batch(..)
        | Cause::UseScatter(_)
        | Cause::Reading(_) => return None,
    })
}

/// As many readings again leave half of the variance (JCGM 100:2008, 4.2.3).
const BY_READING_AGAIN: f64 = 0.5;

/// The part of a cause's variance that goes when it is measured, or when the maker's sheet is read.
fn goes_by_measuring(book: &Book, cause: &Cause) -> f64 {
    let of_figure = |figure: Option<Figure>| match figure {
        Some(figure) if figure.evidence == Evidence::Measured => BY_READING_AGAIN,
        _ => 1.0,
    };
    let item = |id: &IngredientId| book.ingredient(id);
    match cause {
        Cause::Composition(id, nutrient) => {
            let stated = item(id).and_then(|item| item.composition.get(*nutrient));
            by_a_sheet(stated, *nutrient)
        }
        Cause::Density(id) => of_figure(item(id).and_then(|item| item.density)),
        Cause::BulkDensity(id) => of_figure(item(id).and_then(|item| item.bulk_density)),
        Cause::Calibration(measure, with) => {
            let measure = book.measure(measure);
            let known = measure.and_then(|measure| measure.calibration(with.as_ref()));
            if known.is_some_and(|known| known.readings > 1) {
                BY_READING_AGAIN
            } else {
                1.0
            }
        }
        _ => 1.0,
    }
}

/// What the maker's specification sheet does for a figure. One that is taken from the kind of the ingredient because nobody prints
/// it is in no sheet either.
fn by_a_sheet(stated: Option<Figure>, nutrient: Nutrient) -> f64 {
    let is_printed = !matches!(
        nutrient,
        Nutrient::Acid | Nutrient::TeaSolids | Nutrient::Polyols | Nutrient::Insoluble
    );
    if stated.is_none() && !is_printed {
        return 0.0;
    }
    let usual = Evidence::usual_relative_uncertainty;
    let evidence = stated.map_or(Evidence::Assumed, |figure| figure.evidence);
    match evidence {
        Evidence::SpecSheet => 0.0,
        Evidence::Measured => BY_READING_AGAIN,
        other => 1.0 - (usual(Evidence::SpecSheet) / usual(other)).powi(2),
    }
}
