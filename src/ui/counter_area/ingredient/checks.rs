//! What is missing on a label and what does not add up on it, in sentences.

use crate::balance::{Component, Mix, statement_findings};
use crate::book::{Basis, Finding, Ingredient, Place};
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

/// Figures that a drink needs, as the part of the mix they become, each with the message that says where to find it.
const WANTED: [(Component, &str); 8] = [
    (Component::Sugars, "ingredient-missing-sugars"),
    (Component::Fat, "ingredient-missing-fat"),
    (Component::Saturates, "ingredient-missing-saturates"),
    (Component::Carbohydrate, "ingredient-missing-carbohydrate"),
    (Component::Protein, "ingredient-missing-protein"),
    (Component::Salt, "ingredient-missing-salt"),
    (Component::Caffeine, "ingredient-missing-caffeine"),
    (Component::Water, "ingredient-missing-water"),
];

/// What nobody has stated, each with what would close the gap; `mix` is what a gram holds.
pub(super) fn missing(
    speaker: Speaker<'_>,
    item: &Ingredient,
    mix: Option<&Mix>,
) -> Vec<&'static str> {
    let mut gaps = Vec::new();
    if let (Some(mix), None) = (mix, &item.house_made) {
        gaps.extend(
            WANTED
                .iter()
                .filter(|(component, _)| !mix.knows(*component))
                .map(|(_, message)| speaker.word(message)),
        );
        if mix.knows(Component::Sugars) && !mix.knows(Component::FreeSugars) {
            gaps.push(speaker.word("ingredient-missing-free-sugars"));
        }
        let kinds_known = Component::SUGAR_KINDS
            .into_iter()
            .all(|kind| mix.knows(kind));
        if mix.knows(Component::Sugars) && !kinds_known {
            gaps.push(speaker.word("ingredient-missing-profile"));
        }
        if item.price.is_none() {
            gaps.push(speaker.word("ingredient-missing-price"));
        }
    }
    if item.form.is_dry() && item.bulk_density.is_none() {
        gaps.push(speaker.word("ingredient-missing-poured-density"));
    }
    if item.composition.basis == Basis::Per100Millilitres && item.density.is_none() {
        gaps.push(speaker.word("ingredient-missing-density"));
    }
    if item.allergens.is_none() {
        gaps.push(speaker.word("ingredient-missing-allergens"));
    }
    if item.diet.vegan.is_none() {
        gaps.push(speaker.word("ingredient-missing-vegan"));
    }
    gaps
}

/// What can't be true of a label, and what its statement of ingredients says otherwise.
pub(super) fn contradictions(
    speaker: Speaker<'_>,
    item: &Ingredient,
    findings: &[Finding],
) -> Vec<String> {
    let own =
        |finding: &&Finding| matches!(&finding.place, Place::Ingredient(id, _) if *id == item.id);
    let mut wrong: Vec<String> = findings
        .iter()
        .filter(own)
        .map(|finding| speaker.finding_kind(&finding.kind))
        .collect();
    let asked = statement_findings(item);
    wrong.extend(asked.iter().map(|asked| speaker.question(asked)));
    wrong.iter().map(|sentence| capitalised(sentence)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::{Slots, per_gram};
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
        let missing = |item: &Ingredient| {
            let mix = per_gram(item, &mut Slots::default()).mix;
            missing(Speaker::without_book(), item, Some(&mix))
        };
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
