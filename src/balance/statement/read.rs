//! Reading a statement: words with what stands before them, so that "free from milk" is no milk.
//!
//! Where a statement can be read in two ways, the reader takes the one that finds more: what it overlooks nobody asks about.

use std::rc::Rc;

use super::sign::{StatementKind, StatementMatch};
use super::sign_words::{NUMBERS, OTHER_THINGS, PLANT_COUNTERPARTS, PLANTS, TERMS};
use crate::balance::recalled::Recalled;

/// A word of the statement, or a mark that ends something.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Token {
    /// In lower case.
    Word(String),
    /// Ends an item of the list: comma, slash.
    Item,
    /// Ends a heading: "Allergens:".
    Heading,
    /// Begins a bracket.
    Open,
    /// Ends a bracket.
    Close,
    /// Ends a sentence: full stop, semicolon, line end.
    Sentence,
}

/// How what follows is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Sense {
    /// It is in it.
    Contains,
    /// Traces of it may be in it, up to the end of the sentence.
    Traces,
    /// It is not in it, up to the end of the sentence: "Free from milk, soya and nuts".
    FreeFrom,
    /// It is not in it, up to the end of the item: "no milk, sugar".
    No,
}

thread_local! {
    static KNOWN: Recalled<String, Rc<[StatementMatch]>> = const { Recalled::new() };
}

/// What a statement names. The same words are matched once, in the order of the statement.
pub(super) fn read(statement: &str) -> Rc<[StatementMatch]> {
    KNOWN.with(|known| known.answer(statement, |_| true, || read_anew(statement).into()))
}

fn read_anew(statement: &str) -> Vec<StatementMatch> {
    let tokens = tokens(statement);
    let mut found: Vec<StatementMatch> = Vec::new();
    for (at, sense) in present_words(&tokens) {
        let (kinds, length) = kinds_at(&tokens, at);
        if kinds.is_empty() {
            continue;
        }
        let words = words_at(&tokens, at, length);
        let is_flavouring = is_flavouring(&tokens, at + length);
        for kind in kinds {
            let kind = match kind {
                // A flavouring called after something is not made from it of need.
                StatementKind::Animal if is_flavouring => StatementKind::PerhapsAnimal,
                kind => *kind,
            };
            let is_trace = sense == Sense::Traces;
            let same = |other: &StatementMatch| other.kind == kind && other.is_trace == is_trace;
            match found.iter_mut().find(|other| same(other)) {
                Some(other) if !other.words.contains(&words) => other.words.push(words.clone()),
                Some(_) => {}
                None => found.push(StatementMatch {
                    kind,
                    words: vec![words.clone()],
                    is_trace,
                }),
            }
        }
    }
    found
}

/// The places of the words that are said to be in it, or to be in it as traces.
pub(super) fn present_words(tokens: &[Token]) -> Vec<(usize, Sense)> {
    let mut present = Vec::new();
    let mut reading = Reading::default();
    for at in 0..tokens.len() {
        reading.step(tokens, at);
        let is_absent = matches!(reading.level.sense, Sense::FreeFrom | Sense::No)
            || is_called_free(tokens, at)
            || at
                .checked_sub(1)
                .is_some_and(|before| is(tokens, before, "non"));
        if matches!(tokens[at], Token::Word(_)) && !is_absent {
            present.push((at, reading.level.sense));
        }
    }
    present
}

/// One level of brackets.
#[derive(Clone, Copy)]
struct Level {
    sense: Sense,
    /// Whether an item has ended in this sentence: "sugar, free from gluten, milk powder" is free from gluten alone, while
    /// "Free from gluten, milk" is free from both.
    is_in_list: bool,
}

impl Default for Level {
    fn default() -> Self {
        Self {
            sense: Sense::Contains,
            is_in_list: false,
        }
    }
}

#[derive(Default)]
struct Reading {
    level: Level,
    /// The levels around it, the outermost first.
    around: Vec<Level>,
}

impl Reading {
    fn step(&mut self, tokens: &[Token], at: usize) {
        match &tokens[at] {
            Token::Sentence => *self = Self::default(),
            Token::Heading => {
                self.end_item();
                self.level.is_in_list = false;
            }
            Token::Item => {
                self.end_item();
                self.level.is_in_list = true;
            }
            Token::Open => {
                self.end_item();
                self.around.push(self.level);
                self.level.is_in_list = false;
            }
            Token::Close => {
                self.level = self.around.pop().unwrap_or_default();
                self.level.is_in_list = true;
            }
            Token::Word(_) => self.hear(tokens, at),
        }
    }

    fn end_item(&mut self) {
        if self.level.sense == Sense::No {
            self.level.sense = Sense::Contains;
        }
    }

    fn hear(&mut self, tokens: &[Token], at: usize) {
        let word = |offset: usize| match tokens.get(at + offset) {
            Some(Token::Word(word)) => word.as_str(),
            _ => "",
        };
        let free_from = if self.level.is_in_list {
            Sense::No
        } else {
            Sense::FreeFrom
        };
        let next = match (word(0), word(1), word(2)) {
            ("free", "from" | "of", _)
            | ("does" | "do", "not", "contain" | "include" | "have")
            | ("without", _, _) => free_from,
            // "Not less than 30 % milk solids".
            ("no" | "not", "less", _) => return,
            ("no" | "not", next, _)
                if next != "suitable" && self.level.sense != Sense::FreeFrom =>
            {
                Sense::No
            }
            // "Not suitable for people with a milk allergy".
            ("not", "suitable", _)
            | ("may" | "can", "contain", _)
            | ("trace" | "traces", _, _)
            | (
                "facility" | "factory" | "equipment",
                "that" | "which" | "where" | "handling" | "processing",
                _,
            ) => Sense::Traces,
            // "Free from gluten but contains milk", "Free from gluten, contains milk".
            ("but" | "contains", _, _) => Sense::Contains,
            _ => return,
        };
        self.level.sense = next;
    }
}

fn is(tokens: &[Token], at: usize, text: &str) -> bool {
    matches!(tokens.get(at), Some(Token::Word(word)) if word == text)
}

/// "milk-free", "gluten free".
fn is_called_free(tokens: &[Token], at: usize) -> bool {
    is(tokens, at + 1, "free") && !is(tokens, at + 2, "range")
}

/// "honey flavouring".
pub(super) fn is_flavouring(tokens: &[Token], at: usize) -> bool {
    ["flavour", "flavor", "flavouring", "flavoring", "aroma"]
        .iter()
        .any(|word| matches!(tokens.get(at), Some(Token::Word(found)) if is_word(found, word)))
}

/// What the words from here on are a sign of, and how many words that takes.
fn kinds_at(tokens: &[Token], at: usize) -> (&'static [StatementKind], usize) {
    if let Some((number, length)) = e_number(tokens, at) {
        let found = NUMBERS
            .iter()
            .find(|(numbers, _)| numbers.contains(&number));
        return (found.map_or(&[], |(_, kinds)| *kinds), length);
    }
    let matched = TERMS.iter().find(|term| are_words(tokens, at, term.words));
    let Some(term) = matched else { return (&[], 1) };
    let before = at.checked_sub(1).and_then(|before| tokens.get(before));
    let of_plant = matches!(before, Some(Token::Word(before)) if PLANTS.iter().any(|plant| is_word(before, plant)));
    let is_other = (PLANT_COUNTERPARTS.contains(&term.words[0]) && of_plant)
        || is_part_of_any(tokens, at, OTHER_THINGS);
    if is_other {
        (&[], 1)
    } else {
        (term.kinds, term.words.len())
    }
}

/// Whether these words stand here.
pub(super) fn are_words(tokens: &[Token], at: usize, words: &[&str]) -> bool {
    words.iter().enumerate().all(
        |(offset, term)| matches!(tokens.get(at + offset), Some(Token::Word(word)) if is_word(word, term)),
    )
}

/// Whether the word here is a part of one of these names: "malt" of "rice malt".
pub(super) fn is_part_of_any(tokens: &[Token], at: usize, names: &[&[&str]]) -> bool {
    names.iter().any(|name| {
        (0..name.len())
            .filter_map(|offset| at.checked_sub(offset))
            .any(|start| are_words(tokens, start, name))
    })
}

/// A word in its singular or plural.
fn is_word(word: &str, term: &str) -> bool {
    word == term
        || word
            .strip_suffix("es")
            .or(word.strip_suffix('s'))
            .is_some_and(|stem| stem == term)
        || word.strip_suffix('s').is_some_and(|stem| stem == term)
        || word
            .strip_suffix("ies")
            .is_some_and(|stem| term.strip_suffix('y') == Some(stem))
}

/// `E 472e`, `E472e`, `e-472e`, `INS 472e`: the number, and how many words it takes. "Vitamin E 120 mg" is none.
pub(super) fn e_number(tokens: &[Token], at: usize) -> Option<(u16, usize)> {
    let Some(Token::Word(word)) = tokens.get(at) else {
        return None;
    };
    let number = |text: &str| {
        let digits: String = text.chars().take_while(char::is_ascii_digit).collect();
        let rest = &text[digits.len()..];
        let is_letter = rest.len() <= 1 && rest.chars().all(|c| c.is_ascii_lowercase());
        ((3..=4).contains(&digits.len()) && is_letter)
            .then(|| digits.parse::<u16>().ok())
            .flatten()
    };
    if word == "e" || word == "ins" {
        let is_vitamin = at
            .checked_sub(1)
            .is_some_and(|before| is(tokens, before, "vitamin"));
        let Some(Token::Word(next)) = tokens.get(at + 1).filter(|_| !is_vitamin) else {
            return None;
        };
        return number(next).map(|number| (number, 2));
    }
    word.strip_prefix('e')
        .and_then(number)
        .map(|number| (number, 1))
}

/// So many words from here on, as they are quoted: an E number with its capital letter.
pub(super) fn words_at(tokens: &[Token], at: usize, length: usize) -> String {
    let words = tokens[at..]
        .iter()
        .take(length)
        .filter_map(|token| match token {
            Token::Word(word) => Some(word.as_str()),
            _ => None,
        });
    let mut words = words.collect::<Vec<_>>().join(" ");
    if e_number(tokens, at).is_some() {
        let letters = words.chars().take_while(char::is_ascii_alphabetic).count();
        words[..letters].make_ascii_uppercase();
    }
    words
}

pub(super) fn tokens(statement: &str) -> Vec<Token> {
    let mut tokens = Vec::new();
    let mut word = String::new();
    let characters: Vec<char> = statement.chars().flat_map(char::to_lowercase).collect();
    for (at, character) in characters.iter().enumerate() {
        if character.is_alphanumeric() {
            word.push(*character);
            continue;
        }
        if !word.is_empty() {
            tokens.push(Token::Word(std::mem::take(&mut word)));
        }
        // The point of "0.5" ends nothing.
        let in_number = |at: usize| characters.get(at).is_some_and(char::is_ascii_digit);
        match character {
            '.' | ',' if at > 0 && in_number(at - 1) && in_number(at + 1) => {}
            '.' | ';' | '\n' | '!' | '•' => tokens.push(Token::Sentence),
            ',' | '/' => tokens.push(Token::Item),
            ':' => tokens.push(Token::Heading),
            '(' | '[' | '{' => tokens.push(Token::Open),
            ')' | ']' | '}' => tokens.push(Token::Close),
            _ => {}
        }
    }
    if !word.is_empty() {
        tokens.push(Token::Word(word));
    }
    tokens
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Allergen;

    fn kinds(statement: &str) -> Vec<StatementKind> {
        read(statement)
            .iter()
            .filter(|found| !found.is_trace)
            .map(|found| found.kind)
            .collect()
    }

    const MILK: StatementKind = StatementKind::Allergen(Allergen::Milk);

    #[test]
    fn caseinate_in_a_creamer_is_milk() {
        let found = read(
            "Glucose syrup, hydrogenated coconut oil, sodium caseinate (from milk), stabiliser E 340.",
        );
        assert_eq!(found.len(), 1);
        assert_eq!(
            (found[0].kind, found[0].words.as_slice()),
            (MILK, ["caseinate".to_owned(), "milk".to_owned()].as_slice())
        );
        for text in [
            "Whey powder",
            "skimmed MILK powder",
            "Milk solids",
            "caseinates",
            "lactose",
        ] {
            assert_eq!(kinds(text), [MILK], "{text}");
        }
    }

    #[test]
    fn words_are_whole_words() {
        for text in [
            "Buckwheat flour",
            "eggplant",
            "butternut squash",
            "creamy flavouring",
            "nutmeg",
            "coconut",
            "maltodextrin",
            "maltose",
            "chestnut",
            "Lactic acid E 270",
            "milky",
            "doughnut",
            "goat willow",
        ] {
            assert_eq!(kinds(text), [], "{text}");
        }
    }

    #[test]
    fn plants_give_milk_and_butter_that_are_none() {
        for text in [
            "coconut milk",
            "Cocoa butter",
            "oat cream",
            "coconut cream 9 %",
            "cream of tartar",
            "shea butter",
        ] {
            assert!(!kinds(text).contains(&MILK), "{text}");
        }
        assert_eq!(
            kinds("soy milk"),
            [StatementKind::Allergen(Allergen::Soybeans)]
        );
        assert_eq!(kinds("coconut oil, milk"), [MILK]);
    }

    #[test]
    fn what_is_said_to_be_absent_is_not_found() {
        for text in [
            "Rice syrup. Free from milk, soya and nuts.",
            "milk-free",
            "Dairy free, gluten free, milk free",
            "Contains no milk",
            "Without added milk or egg",
            "Does not contain milk, egg.",
            "no gelatine",
            "non milk",
        ] {
            assert_eq!(kinds(text), [], "{text}");
        }
        assert_eq!(kinds("No honey, milk"), [MILK]);
        assert_eq!(kinds("Free from gluten but contains milk"), [MILK]);
        assert_eq!(kinds("Free from gluten. Skimmed milk."), [MILK]);
    }

    #[test]
    fn what_is_absent_ends_where_the_list_goes_on() {
        for text in [
            "Sugar, free from gluten, milk powder",
            "Sugar, coconut oil (without preservatives), milk powder",
            "Cocoa (free from gluten, soya and nuts), milk",
            "Non-fat milk solids",
            "Not less than 30 % milk solids",
            "Non-GMO sugar, milk",
            "Free from gluten, contains milk",
            "No added sugar (unsweetened) milk",
            "Sugar (no starch) milk",
            "flavoured milk",
        ] {
            assert_eq!(kinds(text), [MILK], "{text}");
        }
        for text in [
            "Allergens: free from milk, soya and egg.",
            "Sugar (free from milk, soya).",
            "Rice syrup, without milk",
            "Non-dairy creamer base: rice syrup",
        ] {
            assert_eq!(kinds(text), [], "{text}");
        }
        assert_eq!(
            kinds("Non-GMO soya lecithin"),
            [StatementKind::Allergen(Allergen::Soybeans)]
        );
    }

    #[test]
    fn names_of_other_things_are_not_taken_apart() {
        for text in [
            "rice malt syrup",
            "tiger nuts",
            "kola nut extract",
            "oyster mushroom",
            "vegetable gelatine",
            "microbial rennet",
            "vegan honey",
            "Vitamin E 120 mg",
        ] {
            assert_eq!(kinds(text), [], "{text}");
        }
        assert_eq!(kinds("honey flavouring"), [StatementKind::PerhapsAnimal]);
        assert_eq!(kinds("honey, flavouring"), [StatementKind::Animal]);
        assert_eq!(kinds("INS 120"), [StatementKind::Animal]);
        assert_eq!(read("ins 471")[0].words, ["INS 471"]);
        assert_eq!(read("e472E")[0].words, ["E472e"]);
    }

    #[test]
    fn lactitol_comes_from_milk_and_is_no_allergen_by_law() {
        for text in ["lactitol", "E 966"] {
            let found = kinds(text);
            assert!(found.contains(&StatementKind::Animal), "{text}: {found:?}");
            assert!(!found.contains(&MILK), "{text}: {found:?}");
        }
    }

    #[test]
    fn traces_are_kept_apart() {
        let found = read("Sugar, cocoa. May contain traces of milk, hazelnuts.");
        assert_eq!(found.len(), 2);
        assert!(found.iter().all(|found| found.is_trace));
        for text in [
            "Not suitable for people with a milk allergy.",
            "Made in a factory that handles milk.",
            "Traces: milk.",
            "cocoa (may contain milk), sugar",
        ] {
            let found = read(text);
            assert!(found.len() == 1 && found[0].is_trace, "{text}: {found:?}");
        }
        let found = read("Cocoa (may contain nuts), milk");
        assert!(
            found
                .iter()
                .any(|found| found.kind == MILK && !found.is_trace)
        );
    }

    #[test]
    fn e_numbers_are_read_in_every_spelling() {
        for text in ["E 951", "E951", "e-951", "sweetener (E951)"] {
            assert!(
                kinds(text).contains(&StatementKind::Phenylalanine),
                "{text}"
            );
        }
        assert_eq!(kinds("emulsifier E 472e"), [StatementKind::PerhapsAnimal]);
        assert_eq!(kinds("colour E150a, acid E 330, 951 g, E9, E 95120"), []);
        assert_eq!(
            kinds("colours: E102, E 110; E129"),
            [StatementKind::ChildrenColour]
        );
        assert_eq!(
            kinds("dried fruit (E 220)"),
            [StatementKind::Allergen(Allergen::Sulphites)]
        );
        assert_eq!(kinds("E 960a"), [StatementKind::Sweetener]);
    }

    #[test]
    fn any_text_is_read_without_a_panic() {
        for text in [
            "",
            ".",
            "e",
            "E ",
            "黑糖珍珠, ชานม",
            "free",
            "free from",
            "(((",
            "İstanbul milk",
            "may contain",
        ] {
            let _ = read(text);
        }
        assert_eq!(kinds("İ, milk"), [MILK]);
    }
}
