//! What is missing on a label and what does not add up on it, in sentences.

use crate::balance::{Component, Slots, per_gram, statement_findings};
use crate::book::{Basis, Book, Finding, Ingredient, Place};
use crate::say::Speaker;
use crate::ui::words::capitalised;

/// What the figures of a label are multiplied with to be per 100 g; `None` while a density is missing.
pub(super) fn per_100_grams(item: &Ingredient) -> Option<f64> {
    match item.composition.basis {
        Basis::Per100Grams => Some(1.0),
        Basis::PerServing(grams) => (grams > 0.0).then(|| 100.0 / grams),
        Basis::Per100Millilitres => item
            .density
            .map(|density| 1.0 / density.value)
            .filter(|factor| factor.is_finite()),
    }
}

/// Figures that a drink needs, the part of the mix they become, and where to find them.
const WANTED: [(Component, &str); 8] = [
    (Component::Sugars, "sugars: not stated — read the label"),
    (Component::Fat, "fat: not stated — read the label"),
    (
        Component::Saturates,
        "saturates: not stated — read the label",
    ),
    (
        Component::Carbohydrate,
        "carbohydrate: not stated — read the label",
    ),
    (Component::Protein, "protein: not stated — read the label"),
    (Component::Salt, "salt: not stated — read the label"),
    (
        Component::Caffeine,
        "caffeine: not stated — ask the maker, or enter 0 if it can't contain any",
    ),
    (
        Component::Water,
        "water: can't be told while a solid is not stated",
    ),
];

/// What nobody has stated, each with what would close the gap.
pub(super) fn missing(item: &Ingredient) -> Vec<String> {
    let mut gaps = Vec::new();
    if item.house_made.is_none() {
        let mix = per_gram(item, &mut Slots::default()).mix;
        gaps.extend(
            WANTED
                .iter()
                .filter(|(component, _)| !mix.knows(*component))
                .map(|(_, words)| (*words).to_owned()),
        );
        if mix.knows(Component::Sugars) && !mix.knows(Component::FreeSugars) {
            gaps.push("free sugars: not stated — say which part of the sugars is added".to_owned());
        }
        let kinds_known = Component::SUGAR_KINDS
            .into_iter()
            .all(|kind| mix.knows(kind));
        if mix.knows(Component::Sugars) && !kinds_known {
            gaps.push("which sugars they are: not stated — sweetness needs it".to_owned());
        }
        if item.price.is_none() {
            gaps.push("price: not stated — the cost of its drinks is not known".to_owned());
        }
    }
    if item.form.is_dry() && item.bulk_density.is_none() {
        gaps.push("poured density: not stated — weigh a level measure of it".to_owned());
    }
    if item.composition.basis == Basis::Per100Millilitres && item.density.is_none() {
        gaps.push(
            "density: not stated — the label is per 100 ml, so weigh 100 ml of it".to_owned(),
        );
    }
    if item.allergens.is_none() {
        gaps.push(
            "allergens: not stated — no drink with it can be called free of an allergen".to_owned(),
        );
    }
    if item.diet.vegan.is_none() {
        gaps.push("vegan: not stated".to_owned());
    }
    gaps
}

/// What can't be true of a label, and what its statement of ingredients says otherwise.
pub(super) fn contradictions(book: &Book, item: &Ingredient, findings: &[Finding]) -> Vec<String> {
    let own =
        |finding: &&Finding| matches!(&finding.place, Place::Ingredient(id, _) if *id == item.id);
    let mut wrong: Vec<String> = findings
        .iter()
        .filter(own)
        .map(|finding| Speaker::new(book).finding_kind(&finding.kind))
        .collect();
    let asked = statement_findings(item);
    wrong.extend(asked.iter().map(|asked| Speaker::new(book).question(asked)));
    wrong.iter().map(|sentence| capitalised(sentence)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Evidence, Figure, Nutrient};

    fn labelled(figures: &[(Nutrient, f64)]) -> Ingredient {
        let workbench = crate::workbench::Workbench::with_sample();
        let id = crate::book::IngredientId::new("tambrel-chestnut").unwrap();
        let mut item = workbench.book().ingredient(&id).unwrap().as_ref().clone();
        item.composition.printed = figures
            .iter()
            .map(|(nutrient, value)| (*nutrient, Figure::new(*value, Evidence::Label)))
            .collect();
        item
    }

    const POWDER: [(Nutrient, f64); 3] = [
        (Nutrient::Fat, 8.0),
        (Nutrient::Carbohydrate, 84.0),
        (Nutrient::Protein, 2.0),
    ];

    #[test]
    fn a_label_per_serving_or_per_100_ml_is_brought_to_100_g_when_it_can_be() {
        let mut item = labelled(&POWDER);
        assert_eq!(per_100_grams(&item), Some(1.0));
        item.composition.basis = Basis::PerServing(16.0);
        assert_eq!(per_100_grams(&item), Some(6.25));
        item.composition.basis = Basis::Per100Millilitres;
        assert_eq!(per_100_grams(&item), None);
        item.density = Some(Figure::new(1.25, Evidence::Measured));
        assert_eq!(per_100_grams(&item), Some(0.8));
    }

    #[test]
    fn what_is_not_stated_is_named_and_zero_is_not_missing() {
        let gaps = missing(&labelled(&POWDER));
        assert!(
            gaps.iter().any(|gap| gap.starts_with("sugars: not stated")),
            "{gaps:?}"
        );
        let mut figures = POWDER.to_vec();
        figures.push((Nutrient::Sugars, 0.0));
        assert!(
            missing(&labelled(&figures))
                .iter()
                .all(|gap| !gap.starts_with("sugars"))
        );
    }
}
