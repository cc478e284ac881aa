//! The words of fixed lists: what kind a thing is, how far a recipe is, what a figure rests on.

use super::Speaker;
use crate::balance::Lens;
use crate::book::{
    ClosureKind, Evidence, Form, FoundKind, MeasureKind, Nutrient, PolyolKind, Recipe,
    ServicewareKind, Severity, State, VersionId, VesselKind,
};

impl Speaker<'_> {
    /// What a figure rests on: "specification sheet".
    pub fn evidence_kind(&self, evidence: Evidence) -> &'static str {
        self.kind("evidence", evidence.word())
    }

    /// What an ingredient is like: "powder".
    pub fn form(&self, form: Form) -> &'static str {
        self.kind("form", form.word())
    }

    /// A figure of an ingredient: "saturates".
    pub fn nutrient(&self, nutrient: Nutrient) -> &'static str {
        self.kind("nutrient", nutrient.word())
    }

    /// A sweetening alcohol.
    pub fn polyol(&self, kind: PolyolKind) -> &'static str {
        self.kind("polyol", kind.word())
    }

    /// What a measure is: "pump".
    pub fn measure_kind(&self, kind: MeasureKind) -> &'static str {
        self.kind("measure-kind", kind.word())
    }

    /// What a vessel is: "shaker".
    pub fn vessel_kind(&self, kind: VesselKind) -> &'static str {
        self.kind("vessel-kind", kind.word())
    }

    /// What closes a cup.
    pub fn closure(&self, kind: ClosureKind) -> &'static str {
        self.word(match kind {
            ClosureKind::Open => "counter-closure-open",
            ClosureKind::Lid => "counter-closure-lid",
            ClosureKind::Film => "counter-closure-film",
        })
    }

    /// What goes with a cup.
    pub fn serviceware(&self, kind: ServicewareKind) -> &'static str {
        self.word(match kind {
            ServicewareKind::Straw { wide: false } => "counter-ware-straw",
            ServicewareKind::Straw { wide: true } => "counter-ware-wide-straw",
            ServicewareKind::Sleeve => "counter-ware-sleeve",
        })
    }

    /// How far a recipe or version is: "on trial".
    pub fn state(&self, state: State) -> &'static str {
        self.kind("state", state.word())
    }

    /// How far a recipe or one of its versions is; approved is only what an approval is kept of.
    pub fn state_of(&self, recipe: &Recipe, version: Option<&VersionId>) -> &'static str {
        if recipe.is_only_marked(version) {
            return self.word("state-marked-only");
        }
        recipe
            .state_of(version)
            .map_or("", |state| self.state(state))
    }

    /// What the shares of the lines are shown of.
    pub fn lens(&self, lens: Lens) -> &'static str {
        self.kind("lens", lens.word())
    }

    /// What was found in the book.
    pub fn found_kind(&self, kind: FoundKind) -> &'static str {
        self.kind("found", kind.word())
    }

    /// How serious a finding is.
    pub fn severity(&self, severity: Severity) -> &'static str {
        self.kind("severity", severity.word())
    }

    /// The message of a key such as "ice scoop" in a list.
    fn kind(&self, list: &str, key: &str) -> &'static str {
        self.word(&message(list, key))
    }
}

fn message(list: &str, key: &str) -> String {
    let key = key
        .replace(' ', "-")
        .replace('°', "degrees-")
        .to_lowercase();
    format!("{list}-{key}")
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn every_message_is_the_word_of_a_fact_and_every_fact_has_one() {
        let words = |list: &str, keys: &[&str]| -> Vec<String> {
            keys.iter().map(|key| message(list, key)).collect()
        };
        let found = [
            FoundKind::Recipe,
            FoundKind::Version,
            FoundKind::Ingredient,
            FoundKind::Measure,
            FoundKind::Vessel,
            FoundKind::Flavour,
            FoundKind::SugarLevel,
            FoundKind::IceLevel,
            FoundKind::Instruction,
            FoundKind::Note,
            FoundKind::Approval,
            FoundKind::Tasting,
            FoundKind::Shop,
        ];
        let vessels = [VesselKind::Cup, VesselKind::Shaker, VesselKind::Jug];
        let said: BTreeSet<String> = [
            words("evidence", &Evidence::ALL.map(Evidence::word)),
            words("form", &Form::ALL.map(Form::word)),
            words("nutrient", &Nutrient::ALL.map(Nutrient::word)),
            words("polyol", &PolyolKind::ALL.map(PolyolKind::word)),
            words("measure-kind", &MeasureKind::ALL.map(MeasureKind::word)),
            words("vessel-kind", &vessels.map(VesselKind::word)),
            words("state", &State::ALL.map(State::word)),
            words("state", &["marked-only"]),
            words("lens", &Lens::ALL.map(Lens::word)),
            words("found", &found.map(FoundKind::word)),
            words(
                "severity",
                &[Severity::Warning, Severity::Error].map(Severity::word),
            ),
        ]
        .into_iter()
        .flatten()
        .collect();
        let text = include_str!("../../assets/languages/en/kinds.ftl");
        let kept: BTreeSet<String> = text
            .lines()
            .filter_map(|line| Some(line.split_once(" = ")?.0.to_owned()))
            // Words that are read, not said.
            .filter(|message| !message.starts_with("amount-words-of-"))
            .collect();
        assert_eq!(said, kept);
    }
}
