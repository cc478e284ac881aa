//! What the statements of ingredients name that has to be mentioned, or that contradicts the rest of the entry.

use super::Facts;
use crate::balance::statement::{Concern, StatementFinding, StatementKind, statement_findings_of};

/// Additives whose mention the law may ask for.
pub(super) fn additives(facts: &Facts<'_>) -> Option<String> {
    let findings = statement_findings_of(facts.book, facts.resolved);
    let mentions: Vec<String> = [
        (
            StatementKind::Phenylalanine,
            "contains a source of phenylalanine",
        ),
        (
            StatementKind::ChildrenColour,
            "colours that may have an adverse effect on activity and attention in children",
        ),
        (
            StatementKind::Polyol,
            "polyols, of which much may have laxative effects",
        ),
        (StatementKind::Quinine, "quinine"),
        (StatementKind::Caffeine, "added caffeine"),
        (StatementKind::Sweetener, "with sweetener(s)"),
    ]
    .into_iter()
    .filter_map(|(kind, mention)| {
        let named = sources(facts, &findings, |finding| finding.kind == kind)?;
        Some(format!("{mention} ({named})"))
    })
    .collect();
    (!mentions.is_empty()).then(|| {
        format!("by the statements of ingredients, these may have to be mentioned: {}; read the packs, and follow your local code",
            mentions.join("; "))
    })
}

/// Statements that contradict what the entry says of allergens or of vegans.
pub(super) fn contradictions(facts: &Facts<'_>) -> Option<String> {
    let findings = statement_findings_of(facts.book, facts.resolved);
    let named = sources(facts, &findings, |finding| {
        finding.concern == Concern::Contradicts
    })?;
    Some(format!(
        "the statement of ingredients says otherwise than the entry: {named}; read the pack before you tell a guest"
    ))
}

/// "Ondry creamer: caseinate, milk", ingredient by ingredient.
fn sources(
    facts: &Facts<'_>,
    findings: &[StatementFinding],
    wanted: impl Fn(&StatementFinding) -> bool,
) -> Option<String> {
    let name = |finding: &StatementFinding| {
        let found = facts.book.ingredient(&finding.ingredient);
        found.map_or_else(
            || finding.ingredient.to_string(),
            |ingredient| ingredient.full_name(),
        )
    };
    let named: Vec<String> = findings
        .iter()
        .filter(|finding| wanted(finding))
        .map(|finding| format!("{}: {}", name(finding), finding.matched_words))
        .collect();
    (!named.is_empty()).then(|| named.join("; "))
}
