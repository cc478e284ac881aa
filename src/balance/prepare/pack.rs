//! What a pack weighs that is sold by volume.

use super::portion::{Portion, portion};
use crate::balance::mix::Mix;
use crate::book::{Amount, Book, Ingredient, Price};
use crate::quantity::{Pack, PackUnit};

/// Temperature at which the volume on a pack holds, °C (Council Directive 76/211/EEC, Annex I, 3).
pub(super) const OF_PACKS: f64 = 20.0;

/// What a pack of an ingredient holds, g; `None` where it is sold by volume and nobody knows what that weighs.
pub fn pack_grams(book: &Book, item: &Ingredient, per_gram: &Mix, content: Pack) -> Option<f64> {
    let grams = match content.unit {
        PackUnit::Grams => content.whole(),
        PackUnit::Millilitres => content.whole() * poured(book, item, per_gram)?.grams,
    };
    (grams > 0.0 && grams.is_finite()).then_some(grams)
}

/// What can be used of a pack, g.
pub fn usable_grams(book: &Book, item: &Ingredient, per_gram: &Mix, price: &Price) -> Option<f64> {
    let usable = pack_grams(book, item, per_gram, price.content)? * price.usable_part();
    (usable > 0.0).then_some(usable)
}

/// What one millilitre of a pack weighs, as a millilitre in a drink does.
pub(super) fn poured(book: &Book, item: &Ingredient, per_gram: &Mix) -> Option<Portion> {
    portion(book, item, per_gram, &Amount::Millilitres(1.0), OF_PACKS)
}
