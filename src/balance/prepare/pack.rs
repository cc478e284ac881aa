//! What a pack weighs that is sold by volume, and what a gram of it costs.

use super::per_gram::{PerGram, Sensitivity, per_gram};
use super::portion::{Portion, portion};
use super::unit::with_doubt_of_composition;
use crate::balance::mix::{Component, Mix};
use crate::balance::slots::Slots;
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

/// One gram of an ingredient from its label, with what it costs.
pub(super) fn gram_at_its_price(book: &Book, item: &Ingredient, slots: &mut Slots) -> PerGram {
    let mut gram = per_gram(item, slots);
    put_cost(book, item, &mut gram);
    gram
}

/// What a gram costs. A bottle that is sold by volume holds as many grams as its density says: what is poured from it costs
/// the same whatever that is.
fn put_cost(book: &Book, item: &Ingredient, gram: &mut PerGram) {
    let price = item.price.as_ref();
    let usable = price.and_then(|price| usable_grams(book, item, &gram.mix, price));
    let Some((price, usable)) = price.zip(usable) else {
        gram.mix.mark_unknown(Component::Cost);
        return;
    };
    let cost = price.pack / usable;
    gram.mix.set(Component::Cost, cost);
    let by_volume = price.content.unit == PackUnit::Millilitres;
    let poured = by_volume.then(|| poured(book, item, &gram.mix));
    let poured = poured.flatten().map(|portion| {
        // As unsure as it is in a drink: what is doubted twice over would not cancel out.
        with_doubt_of_composition(portion, item, gram, OF_PACKS)
    });
    let density = poured.and_then(|portion| portion.density_cause(&item.id));
    if let Some((relative, cause)) = density {
        let mut change = Mix::EMPTY;
        change.set(Component::Cost, cost / (1.0 + relative) - cost);
        gram.sensitivities.push(Sensitivity { cause, change });
    }
}
