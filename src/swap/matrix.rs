//! A drink in every size, with every amount of ice, at every level of sugar: what a menu of sizes and levels is made by.

use std::collections::{BTreeMap, BTreeSet};

use crate::balance::Balance;
use crate::book::{
    Book, Level, LevelName, Recipe, Resolved, Role, Stage, VersionId, VesselId, VesselKind, resolve,
};

use super::adapt::Origin;
use super::iced::{iced_in, with_part_of_ice};
use super::ladder::{Rung, no_levels, rungs};
use super::reason::Unadaptable;
use super::resize::resized;
use super::watch::Watch;

/// How much ice a column has.
#[derive(Clone, Debug, PartialEq)]
pub enum MatrixIce {
    /// As the drink stands.
    AsItStands,
    /// A hot drink iced.
    Iced,
    /// A level of the ice of an iced one.
    Level(Level),
}

/// A size with an amount of ice, at every level of sugar.
#[derive(Clone, Debug, PartialEq)]
pub struct MatrixColumn {
    /// The cup; `None` where the drink has none.
    pub cup: Option<VesselId>,
    /// The ice.
    pub ice: MatrixIce,
    /// The levels, or why there is no drink in this size with this ice.
    pub rungs: Result<Vec<Rung>, Unadaptable>,
}

/// Every level of sugar in every size with every amount of ice.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Matrix {
    /// The levels of sugar, in their order.
    pub levels: Vec<Level>,
    /// Sizes and ice.
    pub columns: Vec<MatrixColumn>,
}

/// The matrix of a version, in its own cup and those that the shop serves such drinks in; `None` when there is no such version.
pub fn matrix(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    watch: &Watch,
) -> Option<Matrix> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let mut levels = book.settings.sugar_levels();
    if no_levels(&origin).is_some() {
        // Nothing is there that could be made less: the sizes and the ice remain.
        levels = vec![Level {
            name: LevelName::Percent,
            percent: origin.resolved.sugar_level.unwrap_or(100.0),
        }];
    }
    let is_iced = has_ice(&origin.resolved);
    let mut ices = vec![MatrixIce::AsItStands];
    if is_iced {
        let levels = book.settings.ice_levels().into_iter();
        let others = levels.filter(|level| (level.percent - 100.0).abs() > 1e-9);
        ices.extend(others.map(MatrixIce::Level));
    } else {
        ices.push(MatrixIce::Iced);
    }
    let own = origin.resolved.cup.clone();
    let served = CupsServed::of(book);
    let (hot, cold) = (served.fitting(book, false), served.fitting(book, true));
    let mut places: Vec<(Option<VesselId>, MatrixIce)> = Vec::new();
    for ice in ices {
        let iced = is_iced || ice == MatrixIce::Iced;
        let cups = if iced { &cold } else { &hot };
        let mut cups: Vec<Option<VesselId>> = cups.iter().cloned().map(Some).collect();
        if iced == is_iced && !cups.contains(&own) {
            cups.insert(0, own.clone());
        }
        if own.is_none() {
            // A drink without a cup has no size that could be told.
            cups = vec![None];
        }
        places.extend(cups.into_iter().map(|cup| (cup, ice.clone())));
    }
    watch.expect(places.len() * levels.len());
    let mut columns = Vec::new();
    let mut sizes: BTreeMap<Option<VesselId>, Result<Balance, Unadaptable>> = BTreeMap::new();
    for (cup, ice) in places {
        if watch.is_stopped() {
            break;
        }
        let sized = sizes.entry(cup.clone());
        let sized = sized.or_insert_with(|| in_size(&origin, cup.as_ref()));
        let made = sized.as_ref().map_err(Clone::clone);
        let made = made.and_then(|lines| with_ice(&origin, lines, cup.as_ref(), &ice));
        let rungs = made.map(|lines| rungs(&origin.made_further(&lines), &levels));
        columns.push(MatrixColumn { cup, ice, rungs });
    }
    Some(Matrix { levels, columns })
}

/// The drink in a cup; as it stands in its own.
fn in_size(origin: &Origin<'_>, cup: Option<&VesselId>) -> Result<Balance, Unadaptable> {
    match cup.filter(|cup| origin.resolved.cup.as_ref() != Some(*cup)) {
        None => Ok(origin.now.clone()),
        Some(cup) => {
            let drink = resized(origin, cup).unwrap_or(Err(Unadaptable::NoCup))?;
            Ok(drink.balance.as_ref().clone())
        }
    }
}

fn with_ice(
    origin: &Origin<'_>,
    sized: &Balance,
    cup: Option<&VesselId>,
    ice: &MatrixIce,
) -> Result<Balance, Unadaptable> {
    let drink = match ice {
        MatrixIce::AsItStands => return Ok(sized.clone()),
        MatrixIce::Iced => iced_in(&origin.made_further(sized), cup)?,
        MatrixIce::Level(level) => with_part_of_ice(&origin.made_further(sized), level.percent)?,
    };
    Ok(drink.balance.as_ref().clone())
}

/// The cups in which the shop serves iced drinks, or hot ones; every cup where it serves none yet.
pub fn cups_in_use(book: &Book, iced: bool) -> BTreeSet<VesselId> {
    CupsServed::of(book).in_use(book, iced)
}

/// The cups in which the shop serves its drinks.
#[derive(Default)]
struct CupsServed {
    hot: BTreeSet<VesselId>,
    iced: BTreeSet<VesselId>,
}

impl CupsServed {
    fn of(book: &Book) -> Self {
        let mut served = Self::default();
        let mut note = |lines: &Resolved| {
            if let Some(cup) = lines.cup.as_ref().filter(|cup| book.vessel(cup).is_some()) {
                let of_kind = if has_ice(lines) {
                    &mut served.iced
                } else {
                    &mut served.hot
                };
                of_kind.insert(cup.clone());
            }
        };
        for recipe in &book.recipes {
            note(&recipe.plain());
            let in_circles = recipe.each_resolved(|_, lines, _| note(lines));
            for version in in_circles {
                note(&resolve(recipe, Some(&version.id)).0);
            }
        }
        served
    }

    fn kind(&self, iced: bool) -> &BTreeSet<VesselId> {
        if iced { &self.iced } else { &self.hot }
    }

    /// The cups of a kind of drink; every cup where the shop serves none yet.
    fn in_use(&self, book: &Book, iced: bool) -> BTreeSet<VesselId> {
        let cups = self.kind(iced);
        if cups.is_empty() {
            every_cup(book).collect()
        } else {
            cups.clone()
        }
    }

    /// The cups that a drink may be put in: those in which the shop serves such drinks, and those in which it serves none of
    /// the other kind.
    fn fitting(&self, book: &Book, iced: bool) -> BTreeSet<VesselId> {
        let others = self.kind(!iced);
        let free = every_cup(book).filter(|id| !others.contains(id));
        let mut cups = self.in_use(book, iced);
        cups.extend(free);
        cups
    }
}

fn every_cup(book: &Book) -> impl Iterator<Item = VesselId> {
    let cups = book.vessels.iter();
    cups.filter(|vessel| vessel.kind == VesselKind::Cup)
        .map(|vessel| vessel.id.clone())
}

/// Whether there is loose ice in a drink.
pub fn has_ice(lines: &Resolved) -> bool {
    lines
        .lines()
        .any(|line| line.role == Role::Ice && line.stage == Stage::Mixed)
}
