//! What the ingredients of a drink do not state.

use super::share::LineShare;
use crate::balance::mix::Component;
use crate::balance::solve::prepared::Prepared;
use crate::book::IngredientId;

/// What an ingredient of the drink does not state.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unstated {
    /// The ingredient.
    pub ingredient: IngredientId,
    /// The component.
    pub component: Component,
}

pub(super) fn unstated(prepared: &Prepared, lines: &[LineShare]) -> Vec<Unstated> {
    let mut unstated = Vec::new();
    for (line, share) in prepared.lines.iter().zip(lines) {
        if share.count == 0.0 {
            continue;
        }
        let gaps = Component::ALL.into_iter();
        for component in gaps.filter(|component| !line.per_unit.knows(*component)) {
            let gap = Unstated {
                ingredient: line.ingredient.clone(),
                component,
            };
            if !unstated.contains(&gap) {
                unstated.push(gap);
            }
        }
    }
    unstated
}
