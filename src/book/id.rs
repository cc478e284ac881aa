//! Short text ids that people can read and a version control can diff.

use std::fmt;
use std::sync::Arc;

/// Longest id, in characters. Longer ones no longer fit a line of a diff.
pub const LONGEST_ID: usize = 48;

/// Why a text is no id.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum IdError {
    /// Nothing was given.
    Empty,
    /// Longer than 48 characters.
    TooLong {
        /// The beginning of what was given.
        found: String,
        /// Its length in characters.
        length: usize,
    },
    /// Contains a character other than a–z, 0–9 and the hyphen.
    Character {
        /// What was given, with control characters escaped.
        found: String,
        /// The first character that is not allowed, escaped.
        character: String,
    },
}

fn checked(text: &str) -> Result<Arc<str>, IdError> {
    let length = text.chars().count();
    if length == 0 {
        return Err(IdError::Empty);
    }
    let beginning = || {
        text.chars()
            .take(LONGEST_ID)
            .collect::<String>()
            .escape_debug()
            .to_string()
    };
    if length > LONGEST_ID {
        return Err(IdError::TooLong {
            found: beginning(),
            length,
        });
    }
    let allowed = |c: &char| c.is_ascii_lowercase() || c.is_ascii_digit() || *c == '-';
    if let Some(character) = text.chars().find(|c| !allowed(c)) {
        return Err(IdError::Character {
            found: beginning(),
            character: format!("{character:?}"),
        });
    }
    Ok(Arc::from(text))
}

/// Lower-case ASCII from a name: `Pear syrup (large)` becomes `pear-syrup-large`; empty when nothing is left.
fn slug(name: &str) -> String {
    let mut slug = String::new();
    for c in name.chars() {
        if c.is_ascii_alphanumeric() {
            slug.push(c.to_ascii_lowercase());
        } else if !slug.ends_with('-') && !slug.is_empty() {
            slug.push('-');
        }
        if slug.len() >= LONGEST_ID - 8 {
            break;
        }
    }
    slug.trim_end_matches('-').to_owned()
}

macro_rules! id {
    ($(#[$doc:meta])* $name:ident, $kind:literal) => {
        $(#[$doc])*
        #[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(Arc<str>);

        impl $name {
            /// Checks a text: 1 to 48 characters of a–z, 0–9 and hyphen.
            pub fn new(text: &str) -> Result<Self, IdError> {
                checked(text).map(Self)
            }

            /// An id made from a name that is not yet `taken`; numbered when the plain one is.
            pub fn from_name(name: &str, taken: impl Fn(&Self) -> bool) -> Self {
                let slug = slug(name);
                let stem = if slug.is_empty() { $kind.to_owned() } else { slug };
                let mut candidate = Self(Arc::from(stem.as_str()));
                let mut number = 2_u32;
                while taken(&candidate) {
                    candidate = Self(Arc::from(format!("{stem}-{number}")));
                    number += 1;
                }
                candidate
            }

            /// The text of the id.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl AsRef<str> for $name {
            fn as_ref(&self) -> &str {
                &self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
                formatter.write_str(&self.0)
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(formatter, "{}({})", stringify!($name), self.0)
            }
        }
    };
}

id!(
    /// Names an ingredient of the book.
    IngredientId,
    "ingredient"
);
id!(
    /// Names a measure of the book.
    MeasureId,
    "measure"
);
id!(
    /// Names a vessel of the book.
    VesselId,
    "vessel"
);
id!(
    /// Names a recipe of the book.
    RecipeId,
    "recipe"
);
id!(
    /// Names a line or an instruction; unique in its recipe, over all versions.
    LineId,
    "line"
);
id!(
    /// Names a version of a recipe; unique in its recipe.
    VersionId,
    "version"
);

id!(
    /// Names a tasting of the book.
    TastingId,
    "tasting"
);

id!(
    /// Names a language by its code, in small letters: "de", "zh-hant". Which languages there are is not known to the book.
    LanguageId,
    "language"
);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_short_lower_case_ascii_is_an_id() {
        assert!(RecipeId::new("hob-and-ember-2").is_ok());
        assert_eq!(RecipeId::new(""), Err(IdError::Empty));
        for (text, wrong) in [
            ("Hob", "'H'"),
            ("pear syrup", "' '"),
            ("黑糖", "'黑'"),
            ("a\u{202e}b", "'\\u{202e}'"),
        ] {
            match RecipeId::new(text) {
                Err(IdError::Character { character, .. }) => assert_eq!(character, wrong),
                other => panic!("{text}: {other:?}"),
            }
        }
        let long = RecipeId::new(&"a".repeat(49));
        assert!(matches!(long, Err(IdError::TooLong { length: 49, .. })));
    }

    #[test]
    fn an_id_from_a_name_is_valid_and_free() {
        let taken = |id: &IngredientId| matches!(id.as_str(), "pear-syrup" | "ingredient");
        assert_eq!(
            IngredientId::from_name("Pear  syrup!", taken).as_str(),
            "pear-syrup-2"
        );
        assert_eq!(
            IngredientId::from_name("黑糖珍珠", taken).as_str(),
            "ingredient-2"
        );
        let long = IngredientId::from_name(&"x".repeat(90), taken);
        assert!(IngredientId::new(long.as_str()).is_ok());
    }
}
