//! Reading a statement: words with what stands before them, so that "free from milk" is no milk.

use super::words::{NUMBERS, PLANT_COUNTERPARTS, PLANTS, TERMS};
use super::{StatementKind, StatementMatch};

/// A word of the statement, or a mark that ends something.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Token {
    /// In lower case.
    Word(String),
    /// Ends an item of the list: comma, bracket, colon, slash.
    Item,
    /// Ends a sentence: full stop, semicolon, line end.
    Sentence,
}

/// How what follows is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sense {
    /// It is in it.
    Contains,
    /// Traces of it may be in it, up to the end of the sentence.
    Traces,
    /// It is not in it, up to the end of the sentence: "free from milk, soya and nuts".
    FreeFrom,
    /// It is not in it, up to the end of the item: "no milk, sugar".
    No,
}

/// What a statement names. The same words are matched once, in the order of the statement.
pub(super) fn read(statement: &str) -> Vec<StatementMatch> {
    let tokens = tokens(statement);
    let mut found: Vec<StatementMatch> = Vec::new();
    let mut sense = Sense::Contains;
    for (at, token) in tokens.iter().enumerate() {
        sense = next_sense(sense, &tokens, at);
        let Token::Word(word) = token else { continue };
        let is_absent = matches!(sense, Sense::FreeFrom | Sense::No) || is_called_free(&tokens, at);
        let (kinds, length) = kinds_at(&tokens, at, word);
        if is_absent || kinds.is_empty() {
            continue;
        }
        let mut words = words_at(&tokens, at, length);
        if e_number(&tokens, at, word).is_some() {
            words.replace_range(..1, "E");
        }
        for kind in kinds {
            let is_trace = sense == Sense::Traces;
            let same = |other: &StatementMatch| other.kind == *kind && other.is_trace == is_trace;
            match found.iter_mut().find(|other| same(other)) {
                Some(other) if !other.words.contains(&words) => other.words.push(words.clone()),
                Some(_) => {}
                None => found.push(StatementMatch {
                    kind: *kind,
                    words: vec![words.clone()],
                    is_trace,
                }),
            }
        }
    }
    found
}

fn next_sense(sense: Sense, tokens: &[Token], at: usize) -> Sense {
    let word = |offset: usize| match tokens.get(at + offset) {
        Some(Token::Word(word)) => word.as_str(),
        _ => "",
    };
    match &tokens[at] {
        Token::Sentence => Sense::Contains,
        Token::Item if sense == Sense::No => Sense::Contains,
        Token::Item => sense,
        Token::Word(_) => match (word(0), word(1)) {
            ("free", "from" | "of") | ("does" | "do", "not") | ("without", _) => Sense::FreeFrom,
            ("no" | "not" | "non", _) if sense != Sense::FreeFrom => Sense::No,
            ("may" | "can", "contain") | ("trace" | "traces", "of") => Sense::Traces,
            // "free from gluten but contains milk".
            ("but", _) => Sense::Contains,
            _ => sense,
        },
    }
}

/// "milk-free", "gluten free".
fn is_called_free(tokens: &[Token], at: usize) -> bool {
    let next = |offset: usize| tokens.get(at + offset);
    let is =
        |offset: usize, text: &str| matches!(next(offset), Some(Token::Word(word)) if word == text);
    is(1, "free") && !is(2, "range")
}

/// What the words from here on are a sign of, and how many words that takes.
fn kinds_at(tokens: &[Token], at: usize, word: &str) -> (&'static [StatementKind], usize) {
    if let Some((number, length)) = e_number(tokens, at, word) {
        let found = NUMBERS
            .iter()
            .find(|(numbers, _)| numbers.contains(&number));
        return (found.map_or(&[], |(_, kinds)| *kinds), length);
    }
    let matched = TERMS.iter().find(|term| {
        term.words.iter().enumerate().all(
            |(offset, term)| matches!(tokens.get(at + offset), Some(Token::Word(word)) if is_word(word, term)),
        )
    });
    let Some(term) = matched else { return (&[], 1) };
    let before = at.checked_sub(1).and_then(|before| tokens.get(before));
    let of_plant = matches!(before, Some(Token::Word(before)) if PLANTS.iter().any(|plant| is_word(before, plant)));
    // "cream of tartar" is an acid, "milk thistle" a plant.
    let after =
        |text: &str| matches!(tokens.get(at + 1), Some(Token::Word(after)) if after == text);
    let is_other = PLANT_COUNTERPARTS.contains(&term.words[0])
        && (of_plant || after("of") || after("thistle"));
    if is_other {
        (&[], 1)
    } else {
        (term.kinds, term.words.len())
    }
}

/// A word in its singular or plural.
fn is_word(word: &str, term: &str) -> bool {
    word == term
        || word
            .strip_suffix("es")
            .or(word.strip_suffix('s'))
            .is_some_and(|stem| stem == term)
        || word.strip_suffix('s').is_some_and(|stem| stem == term)
}

/// `E 472e`, `E472e`, `e-472e`: the number, and how many words it takes.
fn e_number(tokens: &[Token], at: usize, word: &str) -> Option<(u16, usize)> {
    let number = |text: &str| {
        let digits: String = text.chars().take_while(char::is_ascii_digit).collect();
        let rest = &text[digits.len()..];
        let is_letter = rest.len() <= 1 && rest.chars().all(|c| c.is_ascii_lowercase());
        ((3..=4).contains(&digits.len()) && is_letter)
            .then(|| digits.parse::<u16>().ok())
            .flatten()
    };
    if word == "e" {
        let Some(Token::Word(next)) = tokens.get(at + 1) else {
            return None;
        };
        return number(next).map(|number| (number, 2));
    }
    word.strip_prefix('e')
        .and_then(number)
        .map(|number| (number, 1))
}

fn words_at(tokens: &[Token], at: usize, length: usize) -> String {
    let words = tokens[at..]
        .iter()
        .take(length)
        .filter_map(|token| match token {
            Token::Word(word) => Some(word.as_str()),
            Token::Item | Token::Sentence => None,
        });
    words.collect::<Vec<_>>().join(" ")
}

fn tokens(statement: &str) -> Vec<Token> {
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
            ',' | '(' | ')' | '[' | ']' | ':' | '/' => tokens.push(Token::Item),
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
            .into_iter()
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
    fn traces_are_kept_apart() {
        let found = read("Sugar, cocoa. May contain traces of milk, hazelnuts.");
        assert_eq!(found.len(), 2);
        assert!(found.iter().all(|found| found.is_trace));
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
