//! What an ingredient is likely to hold by its name, its flavours and its statement, where no figure says so.
//!
//! A hint is no figure. It tells a figure that is missing because nobody states what is not there (caffeine of milk) from one
//! that is missing although there is something (caffeine of matcha).

use std::collections::BTreeSet;
use std::rc::Rc;

use super::hint_kind::{HintKind, NamedPolyol, NamedSweetener};
use super::hint_words::{HINT_NUMBERS, HINT_TERMS, NO_HINTS};
use super::read::{
    Sense, Token, are_words, e_number, is_flavouring, is_part_of_any, present_words, tokens,
    words_at,
};
use crate::balance::recalled::Recalled;
use crate::book::{Ingredient, SugarProfile};

/// The words by which a hint of a name is quoted that says it is without sugar.
const SUGAR_FREE: [&str; 2] = ["sugar", "free"];

/// What an ingredient is likely to hold, each with the words that say so, in lower case and in their order: first those of the
/// statement, then of the name, then of the flavours.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Hints {
    /// Caffeine: matcha, tea, coffee, cocoa, guarana, cola.
    pub caffeine: Vec<String>,
    /// Tea solids: tea, and infusions that are called so.
    pub tea: Vec<String>,
    /// Acid: citric acid, lemon, plum, berries, vinegar, yoghurt.
    pub acid: Vec<String>,
    /// Polyols by kind.
    pub polyols: Vec<(NamedPolyol, String)>,
    /// High-potency sweeteners by kind.
    pub sweeteners: Vec<(NamedSweetener, String)>,
    /// The sugar that the name or, if that names none, the statement names, when it is the only one there.
    pub sugars: Option<SugarProfile>,
}

/// The sugars that a name or a statement names.
const SUGARS: [(SugarProfile, &[&str]); 6] = [
    (SugarProfile::Fructose, &["fructose", "fruktose"]),
    (
        SugarProfile::Glucose,
        &["dextrose", "glucose", "traubenzucker"],
    ),
    (SugarProfile::Honey, &["honey", "honig", "miel"]),
    (SugarProfile::Lactose, &["lactose", "laktose"]),
    (SugarProfile::Invert, &["invert"]),
    (
        SugarProfile::Sucrose,
        &[
            "sucrose",
            "sugar",
            "zucker",
            "sucre",
            "azúcar",
            "saccharose",
        ],
    ),
];

impl Hints {
    fn add(&mut self, kind: HintKind, words: &str) {
        let list = match kind {
            HintKind::Caffeine => &mut self.caffeine,
            HintKind::Tea => &mut self.tea,
            HintKind::Acid => &mut self.acid,
            HintKind::Polyol(kind) => return add_of_kind(&mut self.polyols, kind, words),
            HintKind::Sweetener(kind) => return add_of_kind(&mut self.sweeteners, kind, words),
        };
        if !list.iter().any(|known| known == words) {
            list.push(words.to_owned());
        }
    }

    /// "Sweeteners: maltitol" names one, and "sweetener" is no other one beside it.
    fn keep_named(&mut self) {
        let is_polyol_named = self
            .polyols
            .iter()
            .any(|(kind, _)| *kind != NamedPolyol::NotNamed);
        let is_sweetener_named = is_polyol_named
            || self
                .sweeteners
                .iter()
                .any(|(kind, _)| *kind != NamedSweetener::NotNamed);
        self.polyols
            .retain(|(kind, _)| !is_polyol_named || *kind != NamedPolyol::NotNamed);
        self.sweeteners
            .retain(|(kind, _)| !is_sweetener_named || *kind != NamedSweetener::NotNamed);
    }

    /// The kinds of polyol that are named.
    pub fn polyol_kinds(&self) -> BTreeSet<NamedPolyol> {
        self.polyols.iter().map(|(kind, _)| *kind).collect()
    }

    /// The kinds of high-potency sweetener that are named.
    pub fn sweetener_kinds(&self) -> BTreeSet<NamedSweetener> {
        self.sweeteners.iter().map(|(kind, _)| *kind).collect()
    }
}

fn add_of_kind<K: PartialEq>(list: &mut Vec<(K, String)>, kind: K, words: &str) {
    let known = |(other, text): &(K, String)| *other == kind && text == words;
    if !list.iter().any(known) {
        list.push((kind, words.to_owned()));
    }
}

thread_local! {
    static KNOWN: Recalled<String, Rc<Hints>> = const { Recalled::new() };
}

/// What stands between the texts of an ingredient when they are looked up together; no text of a person has it.
const BETWEEN: char = '\u{1f}';

/// What an ingredient is likely to hold by its own entry. What the house makes it from is not looked into.
///
/// Whatever a text says is absent ("sugar, no caffeine") or may be there as traces is no hint, and neither is a flavouring in
/// a statement ("lemon flavouring"). Text that says "caffeine-free" takes every hint of caffeine away.
pub fn hints_of(ingredient: &Ingredient) -> Rc<Hints> {
    let flavours = ingredient.composition.flavours.iter();
    let mut texts = ingredient.statement.clone();
    let others = flavours.map(|flavour| flavour.name.as_str());
    for text in std::iter::once(ingredient.name.as_str()).chain(others) {
        texts.push(BETWEEN);
        texts.push_str(text);
    }
    let read = || read_anew(ingredient).into();
    KNOWN.with(|known| known.answer(texts.as_str(), |_| true, read))
}

fn read_anew(ingredient: &Ingredient) -> Hints {
    let mut hints = Hints::default();
    let mut is_caffeine_free = false;
    let flavours = ingredient.composition.flavours.iter();
    let texts = std::iter::once((ingredient.statement.as_str(), Text::Statement))
        .chain([(ingredient.name.as_str(), Text::Name)])
        .chain(flavours.map(|flavour| (flavour.name.as_str(), Text::Flavour)));
    for (text, kind) in texts {
        let tokens = tokens(text);
        let present = present_words(&tokens);
        is_caffeine_free |= (0..tokens.len())
            .filter(|at| are_words(&tokens, *at, &["caffeine"]))
            .any(|at| present.iter().all(|(other, _)| *other != at));
        let mut read_to = 0;
        for (at, sense) in present {
            if sense == Sense::Contains && at >= read_to {
                read_to = at + read_word(&mut hints, &tokens, at, kind);
            }
        }
        if kind == Text::Name && is_called_sugar_free(&tokens) {
            let words = SUGAR_FREE.join(" ");
            hints.add(HintKind::Sweetener(NamedSweetener::NotNamed), &words);
        }
    }
    if is_caffeine_free {
        hints.caffeine.clear();
    }
    hints.keep_named();
    hints.sugars = only_sugar(&ingredient.name).or_else(|| only_sugar(&ingredient.statement));
    hints
}

/// The sugar of a text that names exactly one; "fructose-glucose syrup" names two.
fn only_sugar(text: &str) -> Option<SugarProfile> {
    let tokens = tokens(text);
    let present = present_words(&tokens);
    let names = |names: &[&str]| {
        present.iter().any(|(at, sense)| {
            *sense == Sense::Contains && names.iter().any(|name| are_words(&tokens, *at, &[name]))
        })
    };
    let mut named = SUGARS.iter().filter(|(_, words)| names(words));
    let (profile, _) = named.next()?;
    named.next().is_none().then_some(*profile)
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Text {
    Statement,
    Name,
    Flavour,
}

/// Reads what stands here, and says how many words that took.
fn read_word(hints: &mut Hints, tokens: &[Token], at: usize, text: Text) -> usize {
    let (kinds, length) = kinds_at(tokens, at);
    if text != Text::Statement || !is_flavouring(tokens, at + length) {
        let words = words_at(tokens, at, length);
        // In a name, "sweetener" says what it is for; sugar syrup is called so, too.
        let says_nothing = |kind: &HintKind| {
            text == Text::Name && *kind == HintKind::Sweetener(NamedSweetener::NotNamed)
        };
        for kind in kinds.iter().filter(|kind| !says_nothing(kind)) {
            hints.add(*kind, &words);
        }
    }
    length
}

fn kinds_at(tokens: &[Token], at: usize) -> (&'static [HintKind], usize) {
    if let Some((number, length)) = e_number(tokens, at) {
        let found = HINT_NUMBERS
            .iter()
            .find(|(numbers, _)| numbers.contains(&number));
        return (found.map_or(&[], |(_, kinds)| *kinds), length);
    }
    let matched = HINT_TERMS
        .iter()
        .find(|(words, _)| are_words(tokens, at, words));
    match matched {
        // A name of several words is what it says; a single one may be a part of another name.
        Some((words, kinds)) if words.len() > 1 || !is_part_of_any(tokens, at, NO_HINTS) => {
            (kinds, words.len())
        }
        None if is_berry(tokens, at) => (&[HintKind::Acid], 1),
        _ => (&[], 1),
    }
}

/// "strawberry", "blueberries".
fn is_berry(tokens: &[Token], at: usize) -> bool {
    matches!(tokens.get(at), Some(Token::Word(word)) if word.ends_with("berry") || word.ends_with("berries"))
}

fn is_called_sugar_free(tokens: &[Token]) -> bool {
    let two = |one: &str, two: &str| (0..tokens.len()).any(|at| are_words(tokens, at, &[one, two]));
    two("sugar", "free") || two("zero", "sugar") || two("no", "sugar")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::statement::StatementKind;
    use crate::balance::statement::sign_words::{NUMBERS, TERMS};
    use crate::book::FlavourStrength;

    fn hints(name: &str, statement: &str) -> Rc<Hints> {
        hints_of(&super::super::tests::ingredient(name, statement))
    }

    #[test]
    fn what_holds_caffeine_is_known_by_its_name_or_statement() {
        for (name, statement) in [
            ("Matcha", ""),
            ("Uji powder", "Ground green tea leaf."),
            ("Espresso", ""),
            ("Hot chocolate", ""),
            ("Powder", "Sugar, fat-reduced cocoa powder, salt."),
            ("Drops", "Water, guarana extract"),
            ("Cola syrup", ""),
            ("Decaffeinated coffee", ""),
            ("Yerba mate", ""),
            ("Milk tea powder", "Sugar, black tea extract 3 %"),
        ] {
            assert!(
                !hints(name, statement).caffeine.is_empty(),
                "{name} {statement}"
            );
        }
        for (name, statement) in [
            ("Whole milk", "Milk."),
            ("Sugar", "Sugar."),
            ("Bubble tea pearls", "Tapioca starch, water"),
            ("Coffee creamer", "Glucose syrup, coconut oil"),
            ("Bar", "Cocoa butter, white chocolate"),
            ("Syrup", "Sugar, water, coffee flavouring"),
            ("Syrup", "Sugar. May contain traces of cocoa."),
            ("Teaspoon sugar", "Steamed chestnut, mated grain"),
            ("Caffeine-free black tea", ""),
            ("Black tea", "Tea. Contains no caffeine."),
            ("Peppermint tea", ""),
        ] {
            assert_eq!(
                hints(name, statement).caffeine,
                [""; 0],
                "{name} {statement}"
            );
        }
        assert_eq!(hints("Peppermint tea", "").tea, ["peppermint tea"]);
    }

    #[test]
    fn what_is_sour_is_known_by_its_fruit_or_its_acid() {
        for (name, statement) in [
            ("Lemon juice", ""),
            ("Syrup", "Sugar, water, acid E 330."),
            ("Syrup", "Sugar, citric acid"),
            ("Strawberry syrup", ""),
            ("Compote", "Blueberries, sugar"),
            ("Plum paste", "Plums 85 %"),
            ("Yoghurt powder", ""),
            ("Monk fruit and cherry drops", ""),
        ] {
            assert!(
                !hints(name, statement).acid.is_empty(),
                "{name} {statement}"
            );
        }
        for (name, statement) in [
            ("Syrup", "Sugar, water, lemon flavouring"),
            (
                "Powder",
                "Mono- and diglycerides of fatty acids, amino acids",
            ),
            ("Cane juice", "Sugar cane juice"),
            ("Milk", "Milk."),
            ("Monk fruit extract", ""),
        ] {
            assert_eq!(hints(name, statement).acid, [""; 0], "{name} {statement}");
        }
        let mut syrup = super::super::tests::ingredient("House syrup", "");
        syrup.composition.flavours.push(FlavourStrength {
            name: "pear".to_owned(),
            per_gram: None,
        });
        assert_eq!(hints_of(&syrup).acid, ["pear"]);
    }

    #[test]
    fn sweeteners_and_polyols_are_told_apart_by_kind() {
        let found = hints(
            "Drops",
            "Water, sweeteners: sucralose, E 950, E 960a; maltitol syrup, E 968.",
        );
        let kinds: Vec<NamedSweetener> = found.sweetener_kinds().into_iter().collect();
        assert_eq!(
            kinds,
            [
                NamedSweetener::AcesulfameK,
                NamedSweetener::Sucralose,
                NamedSweetener::SteviolGlycosides
            ]
        );
        let kinds: Vec<NamedPolyol> = found.polyol_kinds().into_iter().collect();
        assert_eq!(kinds, [NamedPolyol::Maltitol, NamedPolyol::Erythritol]);
        assert_eq!(found.polyols[1].1, "E 968");
        let found = hints("Sugar-free vanilla syrup", "");
        assert_eq!(
            found.sweeteners,
            [(NamedSweetener::NotNamed, "sugar free".to_owned())]
        );
        assert_eq!(hints("Sugar", "Sugar, no sweeteners").sweeteners, []);
        let found = hints("Syrup", "Sweeteners: maltitol, isomalt.");
        assert_eq!((found.sweeteners.len(), found.polyols.len()), (0, 2));
        assert_eq!(hints("Syrup", "Sweeteners.").sweeteners.len(), 1);
    }

    #[test]
    fn every_word_of_a_polyol_or_sweetener_is_a_hint_of_one() {
        for term in TERMS {
            let found = hints("", &term.words.join(" "));
            if term.kinds.contains(&StatementKind::Polyol) {
                assert!(!found.polyols.is_empty(), "{:?}", term.words);
            } else if term.kinds.contains(&StatementKind::Sweetener) {
                assert!(!found.sweeteners.is_empty(), "{:?}", term.words);
            }
            if term.kinds.contains(&StatementKind::Caffeine) {
                assert!(!found.caffeine.is_empty(), "{:?}", term.words);
            }
        }
        for (numbers, kinds) in NUMBERS {
            for number in numbers.clone() {
                let found = hints("", &format!("E {number}"));
                let is_hinted = !found.polyols.is_empty() || !found.sweeteners.is_empty();
                assert!(
                    !kinds.contains(&StatementKind::Sweetener) || is_hinted,
                    "E {number}"
                );
            }
        }
    }

    #[test]
    fn every_hint_is_found_by_its_own_words() {
        for (words, kinds) in HINT_TERMS {
            let text = words.join(" ");
            let found = hints("", &text);
            let all = [&found.caffeine, &found.tea, &found.acid];
            let named: usize = all.iter().map(|list| list.len()).sum::<usize>()
                + found.polyols.len()
                + found.sweeteners.len();
            assert!(named >= kinds.len(), "{text}: {found:?}");
        }
    }
}
