//! What the statements of ingredients name that has to be mentioned, or that contradicts the rest of the entry.

use super::fact::{CautionFact, Mention, NamedWords};
use crate::balance::statement::{Concern, StatementFinding, StatementKind};

/// Additives whose mention the law may ask for, in the order in which they are named.
const MENTIONED: [StatementKind; 6] = [
    StatementKind::Phenylalanine,
    StatementKind::ChildrenColour,
    StatementKind::Polyol,
    StatementKind::Quinine,
    StatementKind::Caffeine,
    StatementKind::Sweetener,
];

/// Additives whose mention the law may ask for.
pub(super) fn additives(findings: &[StatementFinding]) -> Option<CautionFact> {
    let mention = |kind: StatementKind| {
        let named = named(findings, |finding| finding.kind == kind);
        (!named.is_empty()).then_some(Mention { kind, named })
    };
    let mentions: Vec<Mention> = MENTIONED.into_iter().filter_map(mention).collect();
    (!mentions.is_empty()).then_some(CautionFact::Additives(mentions))
}

/// Statements that contradict what the entry says of allergens or of vegans.
pub(super) fn contradictions(findings: &[StatementFinding]) -> Option<CautionFact> {
    let named = named(findings, |finding| finding.concern == Concern::Contradicts);
    (!named.is_empty()).then_some(CautionFact::StatementsContradict(named))
}

/// The words of the findings that are wanted, ingredient by ingredient.
fn named(
    findings: &[StatementFinding],
    is_wanted: impl Fn(&StatementFinding) -> bool,
) -> Vec<NamedWords> {
    let wanted = findings.iter().filter(|finding| is_wanted(finding));
    wanted
        .map(|finding| NamedWords {
            ingredient: finding.ingredient.clone(),
            words: finding.matched_words.clone(),
        })
        .collect()
}
