//! How a cup that was tasted comes by its taste.

use crate::balance::{balance, label_sweetness};
use crate::book::{
    Axis, Book, Ingredient, IngredientId, ItemId, Place, TastedCup, TastedFactor, TastedFigure,
    TastingId,
};

/// A cup on one axis.
pub(super) struct CupTaste {
    /// What an ingredient brings when what is stated of it holds, in the unit of the axis.
    pub(super) parts: Vec<(IngredientId, f64)>,
    /// The whole.
    pub(super) value: f64,
    /// The noticeable step around it, in the unit of the axis.
    pub(super) step: f64,
    /// Ingredients that are another product now than the one that was tasted.
    pub(super) changed: Vec<IngredientId>,
}

/// The relative standard uncertainty of what is stated of an ingredient; `None` where nothing is, or nothing of it is in it.
pub(super) fn stated_uncertainty(item: &Ingredient, what: &TastedFactor) -> Option<f64> {
    match what {
        // A batch is as sweet as what goes into it: that is what a tasting of it corrects.
        TastedFactor::Sweetness if item.house_made.is_some() => None,
        TastedFactor::Sweetness => {
            let stated = label_sweetness(item)?;
            Some(stated.u / stated.value)
        }
        TastedFactor::Flavour(name) => {
            let mut flavours = item.composition.flavours.iter();
            let stated = flavours.find(|flavour| flavour.name == *name)?.figure();
            (stated.value > 0.0).then(|| stated.standard_uncertainty() / stated.value)
        }
    }
}

/// How a cup tastes on an axis, as it was tasted and by what packs say alone; `None` where that is not known.
pub(super) fn taste(
    book: &Book,
    tasting: &TastingId,
    cup: &TastedCup,
    axis: &Axis,
    what: &TastedFactor,
) -> Option<CupTaste> {
    let mut then = cup.in_its_book(book).into_owned();
    let within: Vec<IngredientId> = then
        .everything_in(cup.lines.ingredients())
        .map(|item| item.id.clone())
        .collect();
    for id in &within {
        if let Some(item) = then.ingredient(id).filter(|item| !item.tasted.is_empty()) {
            let item = item.untasted();
            then.ingredients.put(item);
        }
    }
    let place = Place::Tasting(tasting.clone(), "cups");
    let balanced = balance(&then, cup.lines.clone(), &place);
    let on_axis = balanced.axis(axis)?;
    let value = on_axis.value.filter(|value| *value > 0.0)?;
    let mut parts = Vec::new();
    for id in within {
        let Some(item) = then.ingredient(&id) else {
            continue;
        };
        if stated_uncertainty(item, what).is_none() {
            continue;
        }
        let mut twice = then.clone();
        twice.ingredients.put(Ingredient {
            tasted: vec![twice_as_much(what)],
            ..item.as_ref().clone()
        });
        let more = balance(&twice, cup.lines.clone(), &place);
        let more = more.axis(axis).and_then(|axis| axis.value)?;
        // The engine adds up what ingredients bring to these axes, so that twice as much of one brings itself once more.
        let brings = more - value;
        if brings > value * LEAST_PART {
            parts.push((id, brings));
        }
    }
    let changed = book.changed_since_tasted(&cup.lines, cup.tasted_with.as_ref());
    let changed = changed.into_iter().filter_map(|item| match item {
        ItemId::Ingredient(id) => Some(id),
        _ => None,
    });
    Some(CupTaste {
        parts,
        value,
        step: on_axis.step,
        changed: changed.collect(),
    })
}

/// What brings less than this part of a taste is not in it.
const LEAST_PART: f64 = 1e-9;

fn twice_as_much(what: &TastedFactor) -> TastedFigure {
    TastedFigure {
        what: what.clone(),
        times: 2.0,
        u: 0.0,
        date: String::new(),
        by: String::new(),
        reason: String::new(),
        tastings: Vec::new(),
    }
}
