//! Questions about what the ingredient list of a pack names.

use super::{Speaker, say};
use crate::balance::{Concern, StatementFinding, StatementKind};
use crate::book::Allergen;

impl Speaker<'_> {
    /// The question to whoever has the pack, in whole sentences; the first may begin with words of the list in small letters.
    pub fn question(&self, finding: &StatementFinding) -> String {
        let name = self.ingredient(&finding.ingredient);
        let words = &finding.matched_words;
        let traces = if finding.is_trace {
            "traces"
        } else {
            "contains"
        };
        match (finding.kind, finding.concern) {
            (StatementKind::Allergen(Allergen::Milk), Concern::Contradicts)
                if finding.is_sold_as_dairy_free =>
            {
                say!(self, "question-milk-in-dairy-free", ingredient: name, words: words)
            }
            (StatementKind::Allergen(allergen), Concern::Contradicts) => say!(
                self,
                "question-allergen-contradicted",
                traces: traces,
                ingredient: name,
                words: words,
                allergen: self.allergen(allergen)
            ),
            (StatementKind::Allergen(allergen), _) => say!(
                self,
                "question-allergen-not-stated",
                traces: traces,
                ingredient: name,
                words: words,
                allergen: self.allergen(allergen)
            ),
            (StatementKind::Animal, Concern::Contradicts) => {
                say!(self, "question-animal-in-vegan", ingredient: name, words: words)
            }
            (StatementKind::Animal, _) => {
                say!(self, "question-animal", ingredient: name, words: words)
            }
            (StatementKind::PerhapsAnimal, _) => {
                say!(self, "question-perhaps-animal", ingredient: name, words: words)
            }
            (StatementKind::Phenylalanine, _) => {
                say!(self, "question-phenylalanine", ingredient: name, words: words)
            }
            (StatementKind::Polyol, Concern::Mention) => {
                say!(self, "question-polyol-mention", ingredient: name, words: words)
            }
            (StatementKind::Polyol, _) => {
                say!(self, "question-polyol-not-stated", ingredient: name, words: words)
            }
            (StatementKind::Sweetener, _) => {
                say!(self, "question-sweetener", ingredient: name, words: words)
            }
            (StatementKind::ChildrenColour, _) => {
                say!(self, "question-children-colour", ingredient: name, words: words)
            }
            (StatementKind::Quinine, _) => {
                say!(self, "question-quinine", ingredient: name, words: words)
            }
            (StatementKind::Caffeine, Concern::NotStated) => {
                say!(self, "question-caffeine-not-stated", ingredient: name, words: words)
            }
            (StatementKind::Caffeine, _) => {
                say!(self, "question-caffeine", ingredient: name, words: words)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::IngredientId;

    #[test]
    fn every_question_names_the_words_and_is_one() {
        let kinds = [
            StatementKind::Allergen(Allergen::Milk),
            StatementKind::Animal,
            StatementKind::PerhapsAnimal,
            StatementKind::Phenylalanine,
            StatementKind::Polyol,
            StatementKind::Sweetener,
            StatementKind::ChildrenColour,
            StatementKind::Quinine,
            StatementKind::Caffeine,
        ];
        for kind in kinds {
            for concern in [Concern::Contradicts, Concern::NotStated, Concern::Mention] {
                for flags in 0..4 {
                    let finding = StatementFinding {
                        ingredient: IngredientId::new("creamer").unwrap(),
                        kind,
                        concern,
                        matched_words: "caseinate, E 951".to_owned(),
                        is_trace: flags & 1 == 1,
                        is_sold_as_dairy_free: flags & 2 == 2,
                    };
                    let question = Speaker::without_book().question(&finding);
                    assert!(question.ends_with('?'), "{question}");
                    assert!(question.contains("creamer"), "{question}");
                    assert!(question.contains("caseinate, E 951"), "{question}");
                }
            }
        }
    }
}
