//! What the tastings of the open book say of its ingredients, and taking that over.

use std::sync::Arc;

use super::derived::{Answers, BookQuestion};
use crate::book::{TastedFigure, TastingOutcome};
use crate::edit::{Edit, apply};
use crate::tasting::{
    BlindTest, Counted, DrinkEffect, Factor, Learned, Proposal, Remark, Sides, Terms,
    blind_answers, effects, learned, verdict_remarks,
};

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

/// The risk of a false alarm by which a tasting is read where nothing else was agreed on (common practice, no source).
const USUAL_LEVEL: f64 = 0.05;

/// What a blind test shows by itself, and what it does not; nothing of any other tasting, and of one that is not finished.
pub fn verdict_of(outcome: TastingOutcome) -> Vec<Remark> {
    let Some((test, people, chosen)) = blind_answers(outcome) else {
        return Vec::new();
    };
    // A verdict counts those who chose the first sample, the book those who chose the second cup.
    let right = match test {
        BlindTest::Pair(Sides::Two) => people - chosen,
        _ => chosen,
    };
    let terms = Terms {
        test,
        level: USUAL_LEVEL,
        power: 0.80,
        confidence: 0.95,
    };
    let counted = Counted {
        people,
        right,
        repeated: 0,
    };
    verdict_remarks(&terms, counted, None)
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
