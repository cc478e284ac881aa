//! The line whose amount fills, and how much of it there can be.

use crate::balance::{Component, Fill, Prepared, PreparedLine};

use super::drink::{Lines, Over};

/// The volume that is filled, ml.
pub(super) fn target_of(fill: Option<Fill>, prepared: &Prepared) -> f64 {
    let mark = fill.and_then(|fill| fill.mark(&prepared.setup));
    mark.unwrap_or(0.0)
}

/// The line that fills, if one does.
pub(super) fn filling_line(prepared: &Prepared) -> Option<&PreparedLine> {
    prepared.lines.iter().find(|line| line.fill.is_some())
}

/// No amount of the line is ever greater, for what weighs less than 1.8 g/ml; [`Filling::new`] sees to it that it does.
pub(super) fn most_of(line: &PreparedLine, prepared: &Prepared) -> f64 {
    target_of(line.fill, prepared).max(1.0) / line.grams_per_unit.max(1e-9) * 1.9
}

/// The reference with about as much of what fills as there will be: what is nearer has narrower enclosures.
pub(super) fn with_fill(reference: &[f64], prepared: &Prepared, lines: &Lines) -> Vec<f64> {
    let mut reference = reference.to_vec();
    if let Some(line) = filling_line(prepared) {
        let of_others = lines.component(Over::InCup, Component::Mass);
        let target = target_of(line.fill, prepared);
        let beside = (target - of_others.at(&reference) / 1.03).max(0.0);
        let bed = target * prepared.setup.ice_bulk_density;
        let is_bed = line.fill == Some(Fill::Rim) && line.per_unit.get(Component::Ice) > 0.0;
        let room = if is_bed { beside.min(bed) } else { beside };
        let place = reference.len() - 1;
        reference[place] = room / line.grams_per_unit.max(1e-9);
    }
    reference
}
