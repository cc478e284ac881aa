//! Allergens and what ingredients claim.

use std::collections::BTreeSet;

use super::{Speaker, say};
use crate::balance::{AllergenSummary, Verdict};
use crate::book::{Allergen, AllergenList, IngredientId};

impl Speaker<'_> {
    /// One allergen, as it stands in a list: "milk".
    pub fn allergen(&self, allergen: Allergen) -> &'static str {
        self.word(match allergen {
            Allergen::Gluten => "allergen-gluten",
            Allergen::Crustaceans => "allergen-crustaceans",
            Allergen::Eggs => "allergen-eggs",
            Allergen::Fish => "allergen-fish",
            Allergen::Peanuts => "allergen-peanuts",
            Allergen::Soybeans => "allergen-soybeans",
            Allergen::Milk => "allergen-milk",
            Allergen::Nuts => "allergen-nuts",
            Allergen::Celery => "allergen-celery",
            Allergen::Mustard => "allergen-mustard",
            Allergen::Sesame => "allergen-sesame",
            Allergen::Sulphites => "allergen-sulphites",
            Allergen::Lupin => "allergen-lupin",
            Allergen::Molluscs => "allergen-molluscs",
            Allergen::Buckwheat => "allergen-buckwheat",
            Allergen::Wheat => "allergen-wheat",
            Allergen::Mango => "allergen-mango",
            Allergen::Peach => "allergen-peach",
            Allergen::Tomato => "allergen-tomato",
            Allergen::Coconut => "allergen-coconut",
            Allergen::Walnuts => "allergen-walnuts",
            Allergen::PineNuts => "allergen-pine-nuts",
            Allergen::Mackerel => "allergen-mackerel",
            Allergen::Crab => "allergen-crab",
            Allergen::Shrimp => "allergen-shrimp",
            Allergen::Squid => "allergen-squid",
            Allergen::Shellfish => "allergen-shellfish",
            Allergen::Pork => "allergen-pork",
            Allergen::Chicken => "allergen-chicken",
            Allergen::Beef => "allergen-beef",
        })
    }

    /// Whose list of allergens it is: "European Union".
    pub fn allergen_list(&self, list: AllergenList) -> &'static str {
        self.word(match list {
            AllergenList::EuropeanUnion => "allergen-list-european-union",
            AllergenList::Taiwan => "allergen-list-taiwan",
            AllergenList::China => "allergen-list-china",
            AllergenList::HongKong => "allergen-list-hong-kong",
            AllergenList::SouthKorea => "allergen-list-south-korea",
        })
    }

    /// What the US law calls it, for the nine that it names (Food Allergen Labeling and Consumer Protection Act of 2004, with
    /// sesame by the FASTER Act of 2021). Of the cereals it names wheat alone; a pack that says "gluten" may mean another one.
    pub fn us_allergen(&self, allergen: Allergen) -> Option<&'static str> {
        let message = match allergen {
            Allergen::Gluten => "serving-guests-us-wheat",
            Allergen::Crustaceans => "serving-guests-us-shellfish",
            Allergen::Eggs => "serving-guests-us-eggs",
            Allergen::Fish => "serving-guests-us-fish",
            Allergen::Peanuts => "serving-guests-us-peanuts",
            Allergen::Soybeans => "serving-guests-us-soybeans",
            Allergen::Milk => "serving-guests-us-milk",
            Allergen::Nuts => "serving-guests-us-tree-nuts",
            Allergen::Sesame => "serving-guests-us-sesame",
            _ => return None,
        };
        Some(self.word(message))
    }

    /// "soybeans, milk and nuts"; empty for none.
    pub fn allergens<'set>(&self, set: impl IntoIterator<Item = &'set Allergen>) -> String {
        let words: Vec<&str> = set.into_iter().map(|item| self.allergen(*item)).collect();
        self.and(&words)
    }

    /// "contains milk; may contain nuts; not stated for Plum syrup": what the packs of a drink say.
    pub fn allergen_summary(&self, summary: &AllergenSummary) -> String {
        let (contains, may_contain) = (&summary.contains, &summary.may_contain);
        let clauses = [
            (!contains.is_empty())
                .then(|| say!(self, "allergens-contains", allergens: self.allergens(contains))),
            (!may_contain.is_empty()).then(
                || say!(self, "allergens-may-contain", allergens: self.allergens(may_contain)),
            ),
            (!summary.not_stated.is_empty()).then(|| {
                let silent = self.ingredients(&summary.not_stated);
                say!(self, "allergens-not-stated", ingredients: silent)
            }),
        ];
        let silences = self.allergen_silences(summary);
        let said = self.clauses(clauses.into_iter().flatten().chain(silences));
        if said.is_empty() {
            self.word("allergens-none").to_owned()
        } else {
            said
        }
    }

    /// "mango not stated for Plum syrup": what packs that state their allergens say nothing of, because it is not in the annex.
    pub fn allergen_silences(&self, summary: &AllergenSummary) -> Vec<String> {
        let silences = summary.silences().into_iter();
        let clause = |(allergens, silent): (Vec<Allergen>, &BTreeSet<IngredientId>)| {
            let (allergens, silent) = (self.allergens(&allergens), self.ingredients(silent));
            say!(self, "allergens-silent-on", allergens: allergens, ingredients: silent)
        };
        silences.map(clause).collect()
    }

    /// How the allergens of one drink differ from those of another, each in a clause of its own; none where they do not.
    pub fn allergen_differences(
        &self,
        from: &AllergenSummary,
        to: &AllergenSummary,
    ) -> Vec<String> {
        let list = |allergens: &mut dyn Iterator<Item = &Allergen>| {
            let words = self.allergens(allergens);
            (!words.is_empty()).then_some(words)
        };
        let gone = &from.contains - &to.contains;
        let added = list(&mut to.contains.difference(&from.contains));
        let removed = list(&mut gone.difference(&to.may_contain));
        let may_be_added = list(&mut to.may_contain.difference(&from.may_contain));
        let may_be_gone = list(&mut from.may_contain.difference(&to.may_contain));
        let silent = self.ingredients(to.not_stated.difference(&from.not_stated));
        // Where a pack is silent, nothing can be said of all ingredients.
        let packs = if to.not_stated.is_empty() {
            "all"
        } else {
            "some"
        };
        let clauses = [
            added.map(|list| say!(self, "allergens-added", allergens: list)),
            removed.map(|list| say!(self, "allergens-gone", packs: packs, allergens: list)),
            may_be_added.map(|list| say!(self, "allergens-may-be-added", allergens: list)),
            may_be_gone.map(|list| say!(self, "allergens-may-be-gone", allergens: list)),
            (!silent.is_empty())
                .then(|| say!(self, "allergens-no-longer-stated", ingredients: silent)),
        ];
        clauses.into_iter().flatten().collect()
    }

    /// "yes", "no", "not known".
    pub fn verdict(&self, verdict: Verdict) -> &'static str {
        self.word(match verdict {
            Verdict::Yes => "verdict-yes",
            Verdict::No => "verdict-no",
            Verdict::NotKnown => "verdict-not-known",
        })
    }

    /// Whether a drink is vegan; what speaks against it is in the allergens and the cautions.
    pub fn vegan(&self, verdict: Verdict) -> &'static str {
        self.word(match verdict {
            Verdict::Yes => "vegan-yes",
            Verdict::No => "vegan-no",
            Verdict::NotKnown => "vegan-not-known",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn summary(contains: &[Allergen], may: &[Allergen], silent: &[&str]) -> AllergenSummary {
        AllergenSummary {
            contains: contains.iter().copied().collect(),
            may_contain: may.iter().copied().collect(),
            not_stated: silent
                .iter()
                .map(|id| IngredientId::new(id).unwrap())
                .collect(),
            ..AllergenSummary::default()
        }
    }

    #[test]
    fn allergens_are_told_as_lists_and_differences_as_clauses() {
        use Allergen::{Milk, Nuts, Soybeans};
        let speaker = Speaker::without_book();
        let before = summary(&[Milk, Soybeans], &[Nuts], &[]);
        assert_eq!(
            speaker.allergen_summary(&before),
            "contains soybeans and milk; may contain nuts"
        );
        let none = summary(&[], &[], &[]);
        assert_eq!(speaker.allergen_summary(&none), "no pack names an allergen");
        assert_eq!(speaker.allergen_differences(&before, &before).len(), 0);
        assert_eq!(
            speaker.allergen_differences(&before, &summary(&[Nuts], &[Milk], &["plum"])),
            [
                "also contains nuts",
                "no soybeans by the packs that state allergens",
                "may contain milk",
                "no longer any pack with “may contain nuts”",
                "allergens not stated for plum: read the label",
            ]
        );
    }
}
