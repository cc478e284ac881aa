//! The ingredients of a book by what a list may call them.

use std::collections::BTreeMap;

use crate::book::{Article, Book, Ingredient, IngredientId};

/// What a row may be about.
pub(super) enum Found<'book> {
    None,
    One(&'book Ingredient),
    Several(Vec<IngredientId>),
}

/// The ingredients of a book by what a table may call them; a list of thousands would else go through all of them per row.
pub(super) struct KnownNames<'book> {
    book: &'book Book,
    /// In small letters, brand and name together and the name alone; each ingredient once per name, in the order of the book.
    by_name: BTreeMap<String, Vec<&'book Ingredient>>,
    /// Supplier and article, in small letters.
    by_article: BTreeMap<(String, String), Vec<&'book Ingredient>>,
}

impl<'book> KnownNames<'book> {
    pub(super) fn of(book: &'book Book) -> Self {
        let mut by_name: BTreeMap<String, Vec<&Ingredient>> = BTreeMap::new();
        let mut by_article: BTreeMap<(String, String), Vec<&Ingredient>> = BTreeMap::new();
        for item in &book.ingredients {
            let (full, alone) = (folded(&item.full_name()), folded(&item.name));
            if full != alone {
                by_name.entry(alone).or_default().push(item);
            }
            by_name.entry(full).or_default().push(item);
            for article in &item.articles {
                let known = by_article.entry(folded_article(article)).or_default();
                if known.last().is_none_or(|last| last.id != item.id) {
                    known.push(item);
                }
            }
        }
        Self {
            book,
            by_name,
            by_article,
        }
    }

    /// The ingredients that are known by an article of a supplier.
    pub(super) fn with_article(&self, article: &Article) -> &[&'book Ingredient] {
        let known = self.by_article.get(&folded_article(article));
        known.map_or(&[], Vec::as_slice)
    }

    /// The ingredient that a row is about: by the article that a person matched before, by id, by brand and name, or by name
    /// alone when the row states no brand.
    pub(super) fn find(&self, article: &Article, brand: &str, name: &str) -> Found<'book> {
        match self.with_article(article) {
            [] => {}
            known => return found(known),
        }
        let by_id = IngredientId::new(name).ok();
        if let Some(known) = by_id.and_then(|id| self.book.ingredient(&id)) {
            return Found::One(known);
        }
        let full = if brand.is_empty() {
            folded(name)
        } else {
            folded(&[brand, name].join(" "))
        };
        let (alone, brand) = (folded(name), folded(brand));
        let fits = |item: &&&Ingredient| {
            folded(&item.full_name()) == full
                || folded(&item.name) == alone && (brand.is_empty() || folded(&item.brand) == brand)
        };
        let called = |name: &str| self.by_name.get(name).map_or(&[][..], Vec::as_slice);
        let by_full = called(&full).iter().filter(fits);
        let by_alone = called(&alone).iter().filter(|_| full != alone).filter(fits);
        let mut matching: Vec<&Ingredient> = Vec::new();
        for item in by_full.chain(by_alone) {
            if !matching.iter().any(|known| known.id == item.id) {
                matching.push(item);
            }
        }
        found(&matching)
    }
}

fn found<'book>(matching: &[&'book Ingredient]) -> Found<'book> {
    match matching {
        [] => Found::None,
        [one] => Found::One(one),
        several => Found::Several(several.iter().map(|item| item.id.clone()).collect()),
    }
}

/// A name as it is compared: without space around it, in small letters.
fn folded(name: &str) -> String {
    name.trim().to_lowercase()
}

/// An article as it is compared.
pub(super) fn folded_article(article: &Article) -> (String, String) {
    (folded(&article.supplier), folded(&article.article))
}
