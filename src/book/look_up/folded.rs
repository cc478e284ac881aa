//! Text as it is compared when something is looked up: without case, accents and the shapes of a font.

use unicode_normalization::UnicodeNormalization;

/// A text in which "Crème BRÛLÉE" and "creme brulee" are the same.
pub fn folded(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let mut folded = String::with_capacity(text.len());
    for character in text.nfkd() {
        for small in character.to_lowercase() {
            match small {
                // Only what is set on Latin, Greek and Cyrillic letters: the marks of other scripts tell letters apart.
                '\u{300}'..='\u{36f}' => {}
                'ß' => folded.push_str("ss"),
                'æ' => folded.push_str("ae"),
                'œ' => folded.push_str("oe"),
                'ø' => folded.push('o'),
                'đ' | 'ð' => folded.push('d'),
                'ł' => folded.push('l'),
                'ı' => folded.push('i'),
                'þ' => folded.push_str("th"),
                '\u{2018}' | '\u{2019}' => folded.push('\''),
                '\u{2010}'..='\u{2013}' => folded.push('-'),
                other => folded.push(other),
            }
        }
    }
    folded
}

/// What was typed to find something, as words that may come in any order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WantedWords {
    words: Vec<String>,
    whole: String,
}

impl WantedWords {
    /// The words of what was typed.
    pub fn of(typed: &str) -> Self {
        let words: Vec<String> = folded(typed)
            .split_whitespace()
            .map(str::to_owned)
            .collect();
        let whole = words.join(" ");
        Self { words, whole }
    }

    /// Whether nothing is wanted yet.
    pub fn is_empty(&self) -> bool {
        self.words.is_empty()
    }

    /// Whether a text holds every word; the text may have capitals and accents.
    pub fn are_in(&self, text: &str) -> bool {
        self.are_in_folded(&folded(text))
    }

    /// The same for a text that is [`folded`] already.
    pub fn are_in_folded(&self, text: &str) -> bool {
        self.words.iter().all(|word| text.contains(word.as_str()))
    }

    /// Whether every word stands in one of two texts that are [`folded`] already.
    pub(super) fn are_in_either(&self, a: &str, b: &str) -> bool {
        let mut words = self.words.iter().map(String::as_str);
        words.all(|word| a.contains(word) || b.contains(word))
    }

    /// Whether a name begins with the first word.
    pub fn begin(&self, name: &str) -> bool {
        let begins = |word: &String| folded(name).starts_with(word.as_str());
        self.words.first().is_some_and(begins)
    }

    /// How well they fit a thing with this name, what stands beside the name, and everything; all of it [`folded`].
    pub(super) fn fit(&self, name: &str, name_and_beside: &str, all: &str) -> Option<Fit> {
        if !self.are_in_folded(all) {
            return None;
        }
        if !self.are_in_folded(name_and_beside) {
            return Some(Fit::InText);
        }
        if !self.are_in_folded(name) {
            return Some(Fit::BesideName);
        }
        let begins_word = |word: &String| {
            let begin = |part: &str| part.starts_with(word.as_str());
            name.split(|c: char| !c.is_alphanumeric()).any(begin)
        };
        Some(if name == self.whole {
            Fit::IsName
        } else if name.starts_with(&self.whole) {
            Fit::BeginsName
        } else if self.words.iter().all(begins_word) {
            Fit::BeginsWords
        } else {
            Fit::InName
        })
    }

    /// A piece of a text round the first place where a word stands, for a text that is too long to be shown whole.
    pub fn piece_of(&self, text: &str, length: usize) -> String {
        let words: Vec<&str> = text.split_whitespace().collect();
        if text.chars().count() <= length {
            return crate::quantity::excerpt(&words.join(" "), length);
        }
        let is_wanted = |part: &&str| {
            let part = folded(part);
            self.words.iter().any(|word| part.contains(word.as_str()))
        };
        let at = words.iter().position(is_wanted).unwrap_or_default();
        let before = words[..at].iter().rev();
        let mut room = length / 3;
        let fits = |word: &&&str| {
            let needed = word.chars().count() + 1;
            let fits = needed <= room;
            room = room.saturating_sub(needed);
            fits
        };
        let from = at - before.take_while(fits).count();
        let mark = if from > 0 { "… " } else { "" };
        let piece = crate::quantity::excerpt(&words[from..].join(" "), length);
        format!("{mark}{piece}")
    }
}

/// How well something fits, the best first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// It is the name.
    IsName,
    /// The name begins so.
    BeginsName,
    /// Each word begins a word of the name.
    BeginsWords,
    /// The words stand in the name.
    InName,
    /// They stand in the name or beside it: the brand, the drink that a version belongs to.
    BesideName,
    /// They stand in a note, an instruction, a reason.
    InText,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_the_letters_that_no_accent_explains_do_not_count() {
        for (written, typed) in [
            ("Crème BRÛLÉE", "creme brulee"),
            ("Trà sữa đá", "tra sua da"),
            ("Weiße Schokolade", "weisse schokolade"),
            ("Rødgrød", "rodgrod"),
            ("ＦＵＬＬ　ｗｉｄｔｈ", "full width"),
            ("Mother’s own", "mother's own"),
        ] {
            assert_eq!(folded(written), typed);
        }
        // A voiced syllable is another one.
        assert_ne!(folded("が"), folded("か"));
    }

    #[test]
    fn words_fit_in_any_order_and_the_beginning_of_a_name_fits_best() {
        let fit = |typed: &str, name: &str, beside: &str, text: &str| {
            let [name, beside, text] = [name, beside, text].map(folded);
            let beside = format!("{name} {beside}");
            WantedWords::of(typed).fit(&name, &beside, &format!("{beside} {text}"))
        };
        let powder = |typed| fit(typed, "Chestnut powder", "Tambrel", "sweet; stir well");
        assert_eq!(powder("chestnut  POWDER"), Some(Fit::IsName));
        assert_eq!(powder("chest"), Some(Fit::BeginsName));
        assert_eq!(powder("pow chest"), Some(Fit::BeginsWords));
        assert_eq!(powder("nut"), Some(Fit::InName));
        assert_eq!(powder("powder tambrel"), Some(Fit::BesideName));
        assert_eq!(powder("stir tambrel"), Some(Fit::InText));
        assert_eq!(powder("stirring"), None);
    }

    #[test]
    fn a_long_text_is_shown_round_the_word() {
        let text = "Warm the milk slowly and do not let it boil, then whisk the powder in until no lump is left";
        let wanted = WantedWords::of("whisk");
        let piece = wanted.piece_of(text, 40);
        assert!(
            piece.starts_with("… boil, then whisk the powder"),
            "{piece}"
        );
        assert!(piece.ends_with('…'), "{piece}");
        assert_eq!(wanted.piece_of("whisk well", 40), "whisk well");
        assert_eq!(wanted.piece_of("", 40), "");
    }
}
