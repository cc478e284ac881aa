//! What the tastings of the open book say of its ingredients, and taking that over.

use std::sync::Arc;

use super::derived::{Answers, BookQuestion};
use crate::book::TastedFigure;
use crate::edit::{Edit, apply};
use crate::tasting::{DrinkEffect, Factor, Learned, Proposal, effects, learned};

/// What all tastings together say.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct WhatTastingsSay;

impl BookQuestion for WhatTastingsSay {
    type Answer = Arc<Learned>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(learned(answers.book()))
    }
}

/// What becomes of the drinks when what the tastings say of a figure is taken over.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct EffectOfTaking(pub Factor);

impl BookQuestion for EffectOfTaking {
    type Answer = Arc<Vec<DrinkEffect>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let found = answers.to(&WhatTastingsSay);
        let Self(factor) = self;
        let book = answers.book();
        let proposal = found.proposal(&factor.ingredient, &factor.what);
        let edit = proposal.and_then(|proposal| taking_over(&found, proposal, "", "", ""));
        let after = edit.and_then(|edit| apply(book, &edit).ok());
        let effects = after.map(|after| effects(book, &after, factor));
        Arc::new(effects.unwrap_or_default())
    }
}

/// The edit that takes over what the tastings say of a figure; `None` where they can't be weighed together, and of what the others
/// of a flavour are measured by.
pub fn taking_over(
    found: &Learned,
    proposal: &Proposal,
    date: &str,
    by: &str,
    reason: &str,
) -> Option<Edit> {
    (found.settled && !proposal.is_reference()).then(|| Edit::TakeTasted {
        ingredient: proposal.factor.ingredient.clone(),
        figure: TastedFigure {
            what: proposal.factor.what.clone(),
            times: proposal.times,
            u: proposal.u,
            date: date.to_owned(),
            by: by.to_owned(),
            reason: reason.to_owned(),
            tastings: proposal.tastings.clone(),
        },
    })
}
