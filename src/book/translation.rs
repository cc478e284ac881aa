//! What the texts of an item are in other languages.

use super::LanguageId;

/// A text of an item in another language.
///
/// It belongs to the text as it stands, not to a place: when an instruction becomes another one, what was said for the former
/// is no longer printed for it, in no version and no approval, and comes back when the text does.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Translation {
    /// The language.
    pub language: LanguageId,
    /// The text of the item that it is for.
    pub of: String,
    /// The text in that language.
    pub text: String,
}

/// The text in the language of a code, if it has one; of two for the same text the first.
pub fn translated<'list>(
    translations: &'list [Translation],
    code: &str,
    of: &str,
) -> Option<&'list str> {
    translations
        .iter()
        .find(|known| known.of == of && known.language.is(code) && !known.text.is_empty())
        .map(|known| known.text.as_str())
}

impl LanguageId {
    /// Whether it names the language of this code, in any case.
    pub fn is(&self, code: &str) -> bool {
        self.as_str().eq_ignore_ascii_case(code)
    }
}

/// Puts a translation in place of what stood for the same text in its language; an empty one only takes that away.
pub fn put_translation(translations: &mut Vec<Translation>, new: Translation) {
    let is_for_same = |known: &Translation| known.language == new.language && known.of == new.of;
    let at = translations.iter().position(is_for_same);
    translations.retain(|known| !is_for_same(known));
    if !new.text.is_empty() {
        let end = translations.len();
        translations.insert(at.unwrap_or(end).min(end), new);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn german(of: &str, text: &str) -> Translation {
        Translation {
            language: LanguageId::new("de").unwrap(),
            of: of.to_owned(),
            text: text.to_owned(),
        }
    }

    #[test]
    fn a_translation_belongs_to_the_text_as_it_stands_and_keeps_its_place() {
        let mut list = vec![german("pear", "Birne"), german("plum", "Pflaume")];
        put_translation(&mut list, german("pear", "Williamsbirne"));
        assert_eq!(list[0], german("pear", "Williamsbirne"));
        assert_eq!(translated(&list, "DE", "pear"), Some("Williamsbirne"));
        assert_eq!(translated(&list, "de", "pears"), None);
        put_translation(&mut list, german("pear", ""));
        assert_eq!(list, [german("plum", "Pflaume")]);
        put_translation(&mut list, german("sour plum", ""));
        assert_eq!(list.len(), 1);
    }
}
