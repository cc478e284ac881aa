//! A drink in every size, with every amount of ice, at every level of sugar: what a menu of sizes and levels is made by.

use crate::balance::Balance;
use crate::book::{Book, Level, Recipe, Role, Stage, VersionId, VesselId};

use super::adapt::Origin;
use super::iced::{iced_in, with_part_of_ice};
use super::ladder::{Rung, rungs};
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

/// The matrix of a version in these cups, besides its own; `None` when there is no such version.
pub fn matrix(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    cups: &[VesselId],
    watch: &Watch,
) -> Option<Matrix> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let mut levels = book.settings.sugar_levels();
    let sweetens = super::ladder::sweeteners(&origin.resolved).next().is_some();
    if !sweetens {
        // Nothing is there to be made less: the sizes and the ice remain.
        levels.clear();
    }
    let all_of_it = Level {
        name: crate::book::LevelName::Percent,
        percent: origin.resolved.sugar_level.unwrap_or(100.0),
    };
    if levels.is_empty() {
        levels.push(all_of_it);
    }
    let own = origin.resolved.cup.clone();
    let mut sizes = vec![own.clone()];
    sizes.extend(
        cups.iter()
            .filter(|cup| Some(*cup) != own.as_ref())
            .cloned()
            .map(Some),
    );
    let is_iced = origin
        .resolved
        .lines()
        .any(|line| line.role == Role::Ice && line.stage == Stage::Mixed);
    let mut ices = vec![MatrixIce::AsItStands];
    if is_iced {
        let levels = book.settings.ice_levels().into_iter();
        let others = levels.filter(|level| (level.percent - 100.0).abs() > 1e-9);
        ices.extend(others.map(MatrixIce::Level));
    } else {
        ices.push(MatrixIce::Iced);
    }
    watch.expect(sizes.len() * ices.len() * levels.len());
    let mut columns = Vec::new();
    for cup in &sizes {
        let sized = in_size(&origin, cup.as_ref());
        for ice in &ices {
            if watch.is_stopped() {
                break;
            }
            let made = sized.clone().and_then(|lines| with_ice(&origin, &lines, cup.as_ref(), ice));
            let rungs = made.map(|lines| rungs_of(&origin, &lines, &levels));
            columns.push(MatrixColumn {
                cup: cup.clone(),
                ice: ice.clone(),
                rungs,
            });
        }
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
        MatrixIce::Iced => iced_in(&origin.from_lines(sized), cup)?,
        MatrixIce::Level(level) => with_part_of_ice(&origin.from_lines(sized), level.percent)?,
    };
    Ok(drink.balance.as_ref().clone())
}

fn rungs_of(origin: &Origin<'_>, lines: &Balance, levels: &[Level]) -> Vec<Rung> {
    let from = origin.from_lines(lines);
    rungs(&from, levels)
}
