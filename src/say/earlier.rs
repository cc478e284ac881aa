//! How an item differs from what it was.

use super::{Speaker, say};
use crate::book::{Figure, Ingredient, Nutrient};

/// Digits behind the point of a figure of a label, at most.
const DIGITS: usize = 2;

impl Speaker<'_> {
    /// What the figures of an ingredient were and are: "sugars 48 → 62 g"; other fields by their names.
    pub fn changes_of_ingredient(&self, was: &Ingredient, now: &Ingredient) -> Vec<String> {
        let mut changes: Vec<String> = Nutrient::ALL
            .into_iter()
            .filter_map(|nutrient| {
                let (before, after) =
                    (was.composition.get(nutrient), now.composition.get(nutrient));
                let value = |figure: Option<Figure>| figure.map(|figure| figure.value);
                if value(before) == value(after) {
                    return None;
                }
                let shown = |figure: Option<Figure>| {
                    figure.map_or_else(
                        || self.word("counter-not-stated").to_owned(),
                        |figure| self.trimmed(figure.value, nutrient.unit(), DIGITS),
                    )
                };
                let (before, now) = (shown(before), shown(after));
                let figure = self.nutrient(nutrient);
                Some(say!(self, "counter-earlier-figure", figure: figure, before: before, now: now))
            })
            .collect();
        let mut fields = was.fields_changed_to(now);
        if !changes.is_empty() {
            fields.retain(|field| *field != "composition");
        }
        changes.extend(self.item_fields(&fields).into_iter().map(str::to_owned));
        changes
    }
}
