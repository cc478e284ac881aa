//! What an ingredient that a recipe names may be in a book, and what form a new one of that name has.

use std::collections::BTreeSet;

use crate::book::{Book, Form, Ingredient, IngredientId, Role, folded};

/// Why an ingredient of the book is taken for one that a recipe names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyAlike {
    /// It is called so.
    SameName,
    /// It is called so but for words such as "cold" and "fresh", or it is the only ice or water there is.
    Alike,
    /// A person chose it.
    Chosen,
}

/// Words that make nothing else of an ingredient, without marks on their letters.
const NEUTRAL: &[&str] = &[
    "brewed",
    "chilled",
    "cold",
    "cooled",
    "crushed",
    "cube",
    "filtered",
    "fresh",
    "freshly",
    "good",
    "hot",
    "iced",
    "large",
    "of",
    "small",
    "still",
    "strong",
    "the",
    "warm",
    "boiling",
    "abgekuhlt",
    "abgekuhlte",
    "abgekuhlter",
    "abgekuhltes",
    "eiskalt",
    "frisch",
    "frische",
    "frischer",
    "frisches",
    "gebruht",
    "gebruhter",
    "gekuhlt",
    "gekuhlte",
    "gekuhlter",
    "heiss",
    "heisse",
    "heisser",
    "heisses",
    "kalt",
    "kalte",
    "kalter",
    "kaltes",
    "lauwarm",
    "lauwarmes",
    "starker",
    "stilles",
    "warme",
    "warmer",
    "warmes",
    "kochendes",
];

/// Names of ice and of water, without the words above.
const ICE: &[&str] = &["ice", "eis", "eiswurfel"];
const WATER: &[&str] = &["water", "wasser"];

/// The ingredient that a name is likely to mean; `None` when there is none, or several.
pub(super) fn likely(book: &Book, name: &str) -> Option<(IngredientId, WhyAlike)> {
    let wanted = folded(name.trim());
    let is_named = |item: &&Ingredient| names(item).any(|name| name == wanted);
    let items = || book.ingredients.iter().map(AsRef::as_ref);
    if let Some(one) = only(items().filter(is_named)) {
        return Some((one.id.clone(), WhyAlike::SameName));
    }
    let words = words(&wanted);
    let is_alike = |item: &&Ingredient| {
        let brand = self::words(&folded(&item.brand));
        names(item).any(|name| {
            let of_item = self::words(&name);
            let differing: Vec<&String> = words.symmetric_difference(&of_item).collect();
            !words.is_empty() && differing.iter().all(|word| brand.contains(*word))
        })
    };
    let essential: Vec<&str> = words.iter().map(String::as_str).collect();
    let essential = essential.join(" ");
    let is_the_one = |item: &&Ingredient| {
        ICE.contains(&essential.as_str()) && item.form == Form::Ice
            || WATER.contains(&essential.as_str())
                && item.role == Role::Water
                && item.form == Form::Liquid
    };
    let alike = only(items().filter(is_alike)).or_else(|| only(items().filter(is_the_one)));
    alike.map(|one| (one.id.clone(), WhyAlike::Alike))
}

fn only<'book>(mut items: impl Iterator<Item = &'book Ingredient>) -> Option<&'book Ingredient> {
    items.next().filter(|_| items.next().is_none())
}

/// What an ingredient is called, in all languages, folded.
fn names(item: &Ingredient) -> impl Iterator<Item = String> + '_ {
    let translated = item.translations.iter();
    let translated = translated.filter(|known| known.of == item.name);
    let translated = translated.map(|known| known.text.as_str());
    let own = [item.name.as_str()].into_iter().chain(translated);
    own.map(folded).chain([folded(&item.full_name())])
}

/// The words of a folded name that say what it is, in the singular as far as a last "s" tells.
fn words(name: &str) -> BTreeSet<String> {
    let is_neutral = |word: &str| NEUTRAL.contains(&word);
    let words = name.split(|c: char| !c.is_alphanumeric());
    let words = words.filter(|word| !word.is_empty() && !is_neutral(word));
    let one = |word: &str| match word.strip_suffix('s') {
        Some(one) if one.len() > 2 && !one.ends_with('s') => one.to_owned(),
        _ => word.to_owned(),
    };
    // "Cubes" is neutral without its last letter, "kochendes" with it.
    words.map(one).filter(|word| !is_neutral(word)).collect()
}

/// Ends of words that tell pieces: those that are there to be seen, and those that sit in the cup; folded.
const GARNISHES: &[&str] = &[
    "slice", "slices", "scheibe", "scheiben", "wedge", "wedges", "spalte", "spalten", "zest",
];
const PIECES: &[&str] = &[
    "pearl", "pearls", "perle", "perlen", "jelly", "gelee", "cube", "cubes", "wurfel",
];

/// Ends of words that tell a foam, and words that do so wherever they stand; folded.
const FOAMS: &[&str] = &["foam", "schaum", "schlagsahne", "schlagrahm", "schlagobers"];
const WHIPPED: &[&str] = &[
    "whipped",
    "frothed",
    "aufgeschlagen",
    "geschlagen",
    "geschaumt",
];

/// Ends of words that tell a form, folded.
const FORMS: [(Form, &[&str]); 9] = [
    (
        Form::Powder,
        &[
            "powder", "pulver", "mehl", "flour", "cocoa", "kakao", "cinnamon", "zimt",
        ],
    ),
    (
        Form::Syrup,
        &["syrup", "sirup", "honey", "honig", "molasses", "melasse"],
    ),
    (Form::Crystals, &["sugar", "zucker", "salt", "salz"]),
    (
        Form::Ice,
        &["ice", "eis", "eiswurfel", "ice cubes", "ice cube"],
    ),
    (Form::Pieces, GARNISHES),
    (Form::Pieces, PIECES),
    (
        Form::Leaf,
        &[
            "tea leaves",
            "teeblatter",
            "loose tea",
            "tea bag",
            "teebeutel",
        ],
    ),
    (Form::Foam, FOAMS),
    (
        Form::Liquid,
        &[
            "milk", "milch", "water", "wasser", "juice", "saft", "tea", "tee", "puree", "cream",
            "sahne", "coffee", "kaffee", "espresso", "nectar", "nektar", "essence", "extract",
            "drink",
        ],
    ),
];

/// The form that the last word of a name tells, or a word for what is whipped; `None` when nothing tells one.
pub fn form_told(name: &str) -> Option<Form> {
    let name = folded(name.trim());
    if is_whipped(&name) {
        return Some(Form::Foam);
    }
    let told = FORMS.iter().find(|(_, words)| ends(&name, words));
    told.map(|(form, _)| *form)
}

/// The role that a name tells together with its form: a slice is there to be seen, a pearl sits in the cup, and so on; `None`
/// where the form may play several.
pub fn role_told(name: &str) -> Option<Role> {
    let name = folded(name.trim());
    match form_told(&name)? {
        Form::Pieces if ends(&name, GARNISHES) => Some(Role::Garnish),
        Form::Pieces | Form::Foam => Some(Role::Topping),
        Form::Ice => Some(Role::Ice),
        _ => None,
    }
}

/// Whether a folded name ends with one of these words.
fn ends(name: &str, words: &[&str]) -> bool {
    words.iter().any(|word| {
        // Words of German grow together at the front; short ones must stand alone.
        name.strip_suffix(word).is_some_and(|rest| {
            word.len() > 3 || !rest.ends_with(|c: char| c.is_alphanumeric()) || *word == "tee"
        })
    })
}

/// Whether a folded name has a word for what is full of air: "whipped topping", "geschlagene Sahne".
fn is_whipped(name: &str) -> bool {
    let mut words = name.split(|c: char| !c.is_alphanumeric());
    words.any(|word| {
        // German bends the word at its end.
        let stem = WHIPPED.iter().find_map(|stem| word.strip_prefix(stem));
        stem.is_some_and(|end| end.len() <= 2)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn book(names: &[(&str, &str, Form, Role)]) -> Book {
        let mut book = Book::default();
        for (name, brand, form, role) in names {
            let id = IngredientId::from_name(name, |id| book.ingredient(id).is_some());
            book.ingredients.put(Ingredient {
                brand: (*brand).to_owned(),
                form: *form,
                role: *role,
                ..Ingredient::new(id, (*name).to_owned())
            });
        }
        book
    }

    #[test]
    fn another_ingredient_is_never_taken_for_the_one_that_is_named() {
        let book = book(&[
            ("Milk", "", Form::Liquid, Role::Creamer),
            ("Black tea", "Velm", Form::Liquid, Role::Tea),
            ("Ice", "", Form::Ice, Role::Ice),
            ("Tap water", "", Form::Liquid, Role::Water),
            ("Quince syrup", "Ombery", Form::Syrup, Role::Flavour),
            ("Quince syrup", "Tarn", Form::Syrup, Role::Flavour),
            ("Plum", "", Form::Pieces, Role::Topping),
        ]);
        let found = |name: &str| likely(&book, name).map(|(id, _)| id.to_string());
        for (name, wanted) in [
            ("milk", Some("milk")),
            ("Cold milk", Some("milk")),
            ("chilled Velm black tea", Some("black-tea")),
            ("black tea", Some("black-tea")),
            ("ice cubes", Some("ice")),
            ("Eiswürfel", Some("ice")),
            ("crushed ice", Some("ice")),
            ("heißes Wasser", Some("tap-water")),
            ("kochendes Wasser", Some("tap-water")),
            ("stilles Wasser", Some("tap-water")),
            ("lauwarmes Wasser", Some("tap-water")),
            ("crushed Eis", Some("ice")),
            ("plums", Some("plum")),
            ("oat milk", None),
            ("milk powder", None),
            ("tea", None),
            ("quince syrup", None),
            ("Tarn quince syrup", Some("quince-syrup-2")),
            ("rose water", None),
        ] {
            assert_eq!(found(name).as_deref(), wanted, "{name}");
        }
    }

    #[test]
    fn a_form_is_told_by_the_last_word_or_not_at_all() {
        for (name, form) in [
            ("roasted barley powder", Some(Form::Powder)),
            ("Gerstenpulver", Some(Form::Powder)),
            ("honey", Some(Form::Syrup)),
            ("Quittensirup", Some(Form::Syrup)),
            ("brown sugar", Some(Form::Crystals)),
            ("ice", Some(Form::Ice)),
            ("juice", Some(Form::Liquid)),
            ("Schwarztee", Some(Form::Liquid)),
            ("Hafermilch", Some(Form::Liquid)),
            ("plum purée", Some(Form::Liquid)),
            ("dried pear slice", Some(Form::Pieces)),
            ("Birnenscheiben", Some(Form::Pieces)),
            ("cooked pearls", Some(Form::Pieces)),
            ("whipped topping", Some(Form::Foam)),
            ("geschlagene Sahne", Some(Form::Foam)),
            ("Milchschaum", Some(Form::Foam)),
            ("whip of willow", None),
            ("rice", None),
            ("Reis", None),
            ("plum", None),
        ] {
            assert_eq!(form_told(name), form, "{name}");
        }
        for (name, role) in [
            ("dried pear slice", Some(Role::Garnish)),
            ("cooked pearls", Some(Role::Topping)),
            ("whipped topping", Some(Role::Topping)),
            ("crushed ice", Some(Role::Ice)),
            ("quince syrup", None),
            ("plum", None),
        ] {
            assert_eq!(role_told(name), role, "{name}");
        }
    }
}
