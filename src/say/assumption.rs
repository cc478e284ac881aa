//! What is taken for granted of ingredients.

use super::{Speaker, say};
use crate::balance::{Assumed, Assumption, Because, Kind};
use crate::book::IngredientId;

impl Speaker<'_> {
    /// "Whole milk: tea solids 0 g per 100 g; as in milk".
    pub fn assumption(&self, whose: &IngredientId, assumption: &Assumption) -> String {
        let because = match assumption.because {
            Because::Kind(kind) => because_of_kind(kind),
            Because::StatementNamesNone => "because-not-in-list",
            Because::NothingLeft => "because-nothing-left",
            Because::PartOfNothing => "because-part-of-nothing",
        };
        say!(
            self,
            "assumption",
            ingredient: self.ingredient(whose),
            what: self.assumed(assumption),
            because: self.word(because)
        )
    }

    fn assumed(&self, assumption: &Assumption) -> String {
        let figure = |unit: &str| assumption.figure.map(|figure| self.uncertain(figure, unit));
        let message = match assumption.what {
            Assumed::Figure(nutrient) => {
                let name = self.nutrient(nutrient);
                return match figure(nutrient.unit()) {
                    Some(figure) => say!(self, "assumed-figure", nutrient: name, figure: figure),
                    None => say!(self, "assumed-nutrient", nutrient: name),
                };
            }
            Assumed::Moisture => match figure("g") {
                Some(figure) => return say!(self, "assumed-moisture", figure: figure),
                None => "assumed-some-moisture",
            },
            Assumed::SugarSplit => "assumed-sugar-split",
            Assumed::FreeSugars => "assumed-free-sugars",
            Assumed::NoSweetener => "assumed-no-sweetener",
            Assumed::Rest => "assumed-rest",
            Assumed::Density => "assumed-density",
            Assumed::Packing => "assumed-packing",
            Assumed::PouredDensity => "assumed-poured-density",
            Assumed::PolyolKind => "assumed-polyol-kind",
            Assumed::Flavour(_) => "assumed-flavour",
        };
        self.word(message).to_owned()
    }
}

fn because_of_kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Water => "because-water",
        Kind::Sugar => "because-sugar",
        Kind::Sweetener => "because-sweetener",
        Kind::Milk => "because-milk",
        Kind::Creamer => "because-creamer",
        Kind::BrewedTea => "because-brewed-tea",
        Kind::Leaf => "because-leaf",
        Kind::TeaPowder => "because-tea-powder",
        Kind::FlavourSyrup => "because-flavour-syrup",
        Kind::Juice => "because-juice",
        Kind::FlavourPowder => "because-flavour-powder",
        Kind::Paste => "because-paste",
        Kind::Pieces => "because-pieces",
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Nutrient;
    use crate::quantity::Uncertain;

    #[test]
    fn an_assumption_says_whose_it_is_what_it_is_and_why() {
        let whose = IngredientId::new("milk").unwrap();
        let said = |what, figure, because| {
            let assumption = Assumption {
                what,
                figure,
                because,
            };
            Speaker::without_book().assumption(&whose, &assumption)
        };
        let figure = Some(Uncertain { value: 0.5, u: 0.2 });
        assert_eq!(
            said(
                Assumed::Figure(Nutrient::Acid),
                figure,
                Because::Kind(Kind::Milk)
            ),
            "milk: acid 0.50 ± 0.20\u{a0}g per 100 g; as in milk"
        );
        assert_eq!(
            said(Assumed::SugarSplit, None, Because::NothingLeft),
            "milk: which sugars are in it; the other figures add up to the whole"
        );
    }
}
