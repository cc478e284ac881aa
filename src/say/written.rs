//! What is said of a written recipe that is brought in: what its sentences become, and what has to be looked at.

use super::{Speaker, say};
use crate::book::Amount;
use crate::exchange::{
    ArrivedLine, Becomes, Household, NewMeasure, RecipeQuestion, Span, UnclearAmount, WhyAlike,
};
use crate::quantity::show_compact;

impl Speaker<'_> {
    /// What a sentence of a recipe becomes, in the book that comes of it: "2 × tablespoon (15 ml): honey".
    pub fn becomes(&self, line: &ArrivedLine) -> String {
        match &line.becomes {
            Becomes::Instruction => self.word("becomes-instruction").to_owned(),
            Becomes::LeftOut => self.word("becomes-left-out").to_owned(),
            Becomes::Line {
                amount, ingredient, ..
            } => {
                let name = self.ingredient(ingredient);
                match amount {
                    Amount::Count(count, measure) => {
                        let (count, measure) = (self.count(*count), self.measure(measure));
                        say!(self, "becomes-line-measured", count: count, measure: measure, ingredient: name)
                    }
                    _ => say!(self, "becomes-line", amount: self.amount(amount), ingredient: name),
                }
            }
        }
    }

    /// Why an ingredient of the book is taken for one that a recipe names.
    pub fn why_alike(&self, why: WhyAlike) -> &'static str {
        self.word(match why {
            WhyAlike::SameName => "alike-same-name",
            WhyAlike::Alike => "alike-nearly",
            WhyAlike::Chosen => "alike-chosen",
        })
    }

    /// What has to be looked at in a sentence of a recipe that is brought in.
    pub fn recipe_question(&self, question: &RecipeQuestion) -> String {
        match question {
            RecipeQuestion::UnclearAmount(why) => {
                let why = match why {
                    UnclearAmount::Number(error) => self.number_error(error),
                    UnclearAmount::TwoCounts { first, second } => {
                        say!(self, "amount-two-counts", first: first, second: second)
                    }
                    UnclearAmount::TooLong => self.word("amount-too-long").to_owned(),
                };
                say!(self, "question-unclear-amount", why: why)
            }
            RecipeQuestion::NoAmount => self.word("question-no-amount").to_owned(),
            RecipeQuestion::SecondFill => self.word("question-second-fill").to_owned(),
            RecipeQuestion::TooMuch => self.word("question-too-much").to_owned(),
            RecipeQuestion::NewIngredient { form, is_told } => {
                let told = if *is_told { "yes" } else { "no" };
                say!(self, "question-new-ingredient", told: told, form: self.form(*form))
            }
            RecipeQuestion::Alike => self.word("question-alike").to_owned(),
            RecipeQuestion::Range(Span { from, to }) => {
                say!(self, "question-range", from: self.count(*from), to: self.count(*to))
            }
            RecipeQuestion::Household(of) => {
                let legal = if of.is_legal() { "yes" } else { "no" };
                let size = self.count(of.millilitres());
                say!(self, "question-household", legal: legal, measure: self.household(*of), size: size)
            }
            RecipeQuestion::NotWeighed => self.word("question-not-weighed").to_owned(),
        }
    }

    fn household(&self, of: Household) -> &'static str {
        self.word(match of {
            Household::Teaspoon => "household-teaspoon",
            Household::Tablespoon => "household-tablespoon",
            Household::Cup => "household-cup",
            Household::Tasse => "household-tasse",
            Household::Pinch => "household-pinch",
            Household::KnifeTip => "household-knife-tip",
            Household::Dash => "household-dash",
            Household::Splash => "household-splash",
        })
    }

    /// The name and the note of a measure that a recipe brings along.
    pub fn new_measure(&self, new: NewMeasure<'_>) -> (String, String) {
        match new {
            NewMeasure::Household {
                of,
                is_heaped,
                is_dry,
            } => {
                let how = match (
                    is_heaped,
                    is_dry && matches!(of, Household::Cup | Household::Tasse),
                ) {
                    (true, _) => "heaped",
                    (false, true) => "dry",
                    (false, false) => "level",
                };
                let size = show_compact(of.millilitres());
                let name = say!(self, "measure-household", how: how, measure: self.household(of), size: size);
                let note = if of.is_legal() {
                    "measure-household-legal"
                } else {
                    "measure-household-practice"
                };
                (name, self.word(note).to_owned())
            }
            NewMeasure::Pieces(word) => {
                let name = if word.is_empty() {
                    self.word("measure-piece").to_owned()
                } else {
                    word.to_owned()
                };
                (name, self.word("measure-piece-note").to_owned())
            }
        }
    }
}
