//! A version brought back to its standard as it stands: nothing is swapped, only amounts move.

use crate::book::{Book, Line, Recipe, Role, Stage, VersionId};

use super::adapt::{Adapted, Origin};
use super::demands::Demands;
use super::question::{Adjustable, steps_in};
use super::reason::Unadaptable;
use super::watch::Watch;

/// How far a line may move from its amount, in steps.
const REACH: i32 = 8;

/// Most lines that move.
const MOST_LINES: usize = 8;

/// The amounts of a version that bring it nearest to its standard; `None` when there is no such version. `Err` says why
/// nothing is possible. It is watched from outside. Lines of what is mixed move, sweeteners down to none, the others not below one step.
pub fn bring_level(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let origin = Origin::new(book, recipe, version, watch)?;
    let mut lines: Vec<&Line> = origin
        .resolved
        .lines()
        .filter(|line| line.stage == Stage::Mixed && !line.amount.fills())
        .collect();
    lines.sort_by_key(|line| {
        !matches!(
            line.role,
            Role::Sweetener | Role::Flavour | Role::Creamer | Role::Tea | Role::Water
        )
    });
    lines.truncate(MOST_LINES);
    let adjustable = lines.into_iter().filter_map(|line| {
        let mut found = Adjustable::new(book, line, false)?;
        let now = steps_in(line.amount.number()?, found.step);
        let is_sweetener = line.role == Role::Sweetener;
        if now == 0 && !is_sweetener {
            // A line of nothing is there to be filled in by a person.
            return None;
        }
        let least = i32::from(!is_sweetener);
        found.range.low = (now - REACH).max(least);
        found.range.high = now.max(least) + REACH;
        Some(found)
    });
    let adjustable = adjustable.collect();
    // A line counts as moved against how it stands, not against the standard, whose measures may be another shop's.
    Some(origin.bring_back(
        origin.resolved.clone(),
        adjustable,
        &origin.resolved,
        &Demands::default(),
    ))
}
