//! What is missing on a label and what does not add up on it, in sentences.

use crate::balance::{Component, Measurand, Mix, hints_of, statement_findings};
use crate::book::{Basis, Finding, Ingredient, Nutrient, Place};
use crate::edit::{FieldName, Which};
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

/// Something that nobody has stated, with what would close the gap.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Gap {
    /// What is missing, and where to find it.
    pub words: &'static str,
    /// The field of the form where it is entered.
    pub field: FieldName,
}

/// The message of a component that is not known, and the field that closes the gap; `None` for one that nobody enters.
fn gap_of(component: Component, item: &Ingredient) -> Option<(&'static str, FieldName)> {
    use Component as C;
    let label = |nutrient| FieldName::of("label", Which::Nutrient(nutrient));
    Some(match component {
        C::Sugars => ("ingredient-missing-sugars", label(Nutrient::Sugars)),
        C::Fat => ("ingredient-missing-fat", label(Nutrient::Fat)),
        C::Saturates => ("ingredient-missing-saturates", label(Nutrient::Saturates)),
        C::Carbohydrate => (
            "ingredient-missing-carbohydrate",
            label(Nutrient::Carbohydrate),
        ),
        // A statement of ingredients names any that was added.
        C::Polyols if item.statement.trim().is_empty() && hints_of(item).polyols.is_empty() => {
            ("ingredient-missing-statement", "statement".into())
        }
        C::Polyols => ("ingredient-missing-polyols", label(Nutrient::Polyols)),
        C::Fibre => ("ingredient-missing-fibre", label(Nutrient::Fibre)),
        C::Protein => ("ingredient-missing-protein", label(Nutrient::Protein)),
        C::Salt => ("ingredient-missing-salt", label(Nutrient::Salt)),
        C::Acid => ("ingredient-missing-acid", label(Nutrient::Acid)),
        C::TeaSolids => ("ingredient-missing-tea-solids", label(Nutrient::TeaSolids)),
        C::Insoluble => ("ingredient-missing-insoluble", label(Nutrient::Insoluble)),
        C::Caffeine => ("ingredient-missing-caffeine", label(Nutrient::Caffeine)),
        C::Water => ("ingredient-missing-water", label(Nutrient::Water)),
        C::EnergyKj | C::EnergyKcal => ("ingredient-missing-energy", label(Nutrient::Energy)),
        C::FreeSugars => ("ingredient-missing-free-sugars", "free".into()),
        C::Sucrose | C::Glucose | C::Fructose | C::Lactose | C::Maltose | C::OtherSugar => {
            ("ingredient-missing-profile", "profile".into())
        }
        C::PolyolSweetness => ("ingredient-missing-polyol", label(Nutrient::Polyols)),
        C::HiddenSweetener => ("ingredient-missing-sweetener", "sweetener".into()),
        C::Cost if item.price.is_some() => ("ingredient-missing-pack-density", density_of(item)),
        C::Cost => ("ingredient-missing-price", "price".into()),
        C::Mass | C::Ice | C::Diluting | C::Heat | C::Particles | C::Air | C::TastedSweetness => {
            return None;
        }
    })
}

/// The density that turns a volume of it into grams.
fn density_of(item: &Ingredient) -> FieldName {
    if item.form.lies_in_pieces() {
        "bulk"
    } else {
        "density"
    }
    .into()
}

/// A figure that others follow from: what follows is not asked for beside it.
fn rests_on(component: Component) -> &'static [Component] {
    use Component as C;
    match component {
        C::FreeSugars
        | C::Sucrose
        | C::Glucose
        | C::Fructose
        | C::Lactose
        | C::Maltose
        | C::OtherSugar
        | C::Polyols => &[C::Sugars],
        C::PolyolSweetness => &[C::Sugars, C::Polyols],
        C::Water | C::EnergyKj | C::EnergyKcal => &[
            C::Sugars,
            C::Fat,
            C::Carbohydrate,
            C::Polyols,
            C::Fibre,
            C::Protein,
            C::Salt,
            C::Acid,
            C::TeaSolids,
        ],
        _ => &[],
    }
}

/// What is known of an ingredient besides its label.
#[derive(Clone, Copy)]
pub(super) struct Known {
    /// Whether a measure has been weighed with it.
    pub is_weighed: bool,
    /// Whether a gram of it has a price.
    pub is_priced: bool,
}

/// What a figure of a drink needs and nobody has stated, in the order of the label: exactly what makes one "at least".
///
/// `mix` is what a gram of its label holds.
pub(super) fn missing(
    speaker: Speaker<'_>,
    item: &Ingredient,
    mix: Option<&Mix>,
    known: Known,
) -> Vec<Gap> {
    let mut gaps: Vec<Gap> = Vec::new();
    let mut put = |words: &'static str, field: FieldName| {
        let gap = Gap {
            words: speaker.word(words),
            field,
        };
        if !gaps.contains(&gap) {
            gaps.push(gap);
        }
    };
    let needed = |component: &Component| {
        let needs = |figure: Measurand| figure.needs() & component.bit() != 0;
        *component != Component::Cost && Measurand::ALL.into_iter().any(needs)
    };
    if let (Some(mix), None) = (mix, &item.house_made) {
        for component in Component::ALL.into_iter().filter(needed) {
            let follows = || rests_on(component).iter().any(|part| !mix.knows(*part));
            if mix.knows(component) || follows() {
                continue;
            }
            if let Some((words, field)) = gap_of(component, item) {
                put(words, field);
            }
        }
        if !known.is_priced
            && let Some((words, field)) = gap_of(Component::Cost, item)
        {
            put(words, field);
        }
    }
    if item.form.is_dry() && item.bulk_density.is_none() && !known.is_weighed {
        put("ingredient-missing-poured-density", "bulk".into());
    }
    if item.composition.basis == Basis::Per100Millilitres && item.density.is_none() {
        put("ingredient-missing-density", "density".into());
    }
    if item.allergens.is_none() {
        put("ingredient-missing-allergens", "allergens".into());
    }
    if item.diet.vegan.is_none() {
        put("ingredient-missing-vegan", "vegan".into());
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
    use crate::book::{Evidence, Figure, Form, Role};

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

    const KNOWN: Known = Known {
        is_weighed: true,
        is_priced: true,
    };

    fn gaps_of(item: &Ingredient) -> Vec<&'static str> {
        let gram = per_gram(item, &mut Slots::default());
        missing(Speaker::without_book(), item, Some(&gram.mix), KNOWN)
            .into_iter()
            .map(|gap| gap.words)
            .collect()
    }

    #[test]
    fn what_is_not_stated_is_named_and_zero_is_not_missing() {
        let gaps = gaps_of(&labelled(&POWDER));
        assert!(
            gaps.iter().any(|gap| gap.starts_with("sugars: not stated")),
            "{gaps:?}"
        );
        let mut figures = POWDER.to_vec();
        figures.push((Nutrient::Sugars, 0.0));
        let gaps = gaps_of(&labelled(&figures));
        assert!(
            gaps.iter().all(|gap| !gap.starts_with("sugars")),
            "{gaps:?}"
        );
    }

    /// The seven figures of a European label, per 100 g.
    const SEVEN: [(Nutrient, f64); 7] = [
        (Nutrient::Energy, 1690.0),
        (Nutrient::Fat, 4.1),
        (Nutrient::Saturates, 3.6),
        (Nutrient::Carbohydrate, 86.0),
        (Nutrient::Sugars, 61.0),
        (Nutrient::Protein, 3.2),
        (Nutrient::Salt, 0.42),
    ];

    #[test]
    fn seven_figures_of_a_plain_label_are_enough() {
        for (form, role) in [
            (Form::Powder, Role::Flavour),
            (Form::Powder, Role::Creamer),
            (Form::Crystals, Role::Sweetener),
            (Form::Powder, Role::Sweetener),
            // A syrup with more in it than sugar may be of a sour fruit: that is asked.
        ] {
            let item = Ingredient {
                form,
                role,
                name: "Barley".into(),
                statement: String::new(),
                ..labelled(&SEVEN)
            };
            // A label may leave fibre out, and flavour powders differ too much in what does not dissolve.
            let known = [
                "price",
                "allergens",
                "vegan",
                "poured",
                "fibre",
                "insoluble",
            ];
            let label = |gap: &&str| known.iter().all(|other| !gap.starts_with(other));
            let gaps: Vec<&str> = gaps_of(&item).into_iter().filter(label).collect();
            assert!(gaps.is_empty(), "{form:?} {role:?}: {gaps:?}");
        }
    }

    /// A field is named where, and only where, a figure that somebody could read lacks it.
    #[test]
    fn what_is_missing_is_named_exactly_whatever_a_label_states() {
        let speaker = Speaker::without_book();
        let mut draws = 1_u64;
        let mut draw = |below: usize| {
            draws = draws
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            (draws >> 33) as usize % below
        };
        for _ in 0..2000 {
            let all = [
                SEVEN.as_slice(),
                &[(Nutrient::Fibre, 2.0), (Nutrient::Acid, 0.3)],
            ]
            .concat();
            let stated: Vec<(Nutrient, f64)> = all.into_iter().filter(|_| draw(3) > 0).collect();
            let names = ["Barley", "Lemon", "Black tea", "Cocoa", "Sugar-free plum"];
            let item = Ingredient {
                form: Form::ALL[draw(Form::ALL.len())],
                role: Role::ALL[draw(Role::ALL.len())],
                name: names[draw(names.len())].into(),
                statement: ["", "sugar, barley", "water, sorbitol, citric acid"][draw(3)].into(),
                ..labelled(&stated)
            };
            let mix = per_gram(&item, &mut Slots::default()).mix;
            let gaps = missing(speaker, &item, Some(&mix), KNOWN);
            for component in Component::ALL {
                let is_needed = component != Component::Cost
                    && Measurand::ALL
                        .into_iter()
                        .any(|figure| figure.needs() & component.bit() != 0);
                let Some((_, field)) = gap_of(component, &item).filter(|_| is_needed) else {
                    continue;
                };
                let closes = |gap: &Gap| {
                    let parts = rests_on(component).iter();
                    let mut fields = parts.filter(|part| !mix.knows(**part));
                    gap.field == field
                        || fields.any(|part| {
                            gap_of(*part, &item).is_some_and(|(_, field)| gap.field == field)
                        })
                };
                if mix.knows(component) {
                    let others = Component::ALL.into_iter().any(|other| {
                        let same = gap_of(other, &item).is_some_and(|(_, of)| of == field);
                        same && !mix.knows(other)
                    });
                    let is_named = gaps.iter().any(|gap| gap.field == field);
                    assert!(others || !is_named, "{component:?} of {item:?}");
                } else {
                    assert!(
                        gaps.iter().any(closes),
                        "{component:?} of {item:?}: {gaps:?}"
                    );
                }
            }
        }
    }
}
