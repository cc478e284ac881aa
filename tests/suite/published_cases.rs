//! The published correlations against figures from outside, kept as data in `tests/published-cases`.
//!
//! Each test prints its table of computed value, published value, deviation and tolerance (`--nocapture` shows it).
//! A case marked as a known miss must miss: when it no longer does, the mark has to go.

use evensip::balance::published::food_components::FoodComponent;
use evensip::balance::published::freezing::{Solute, freezing_point_celsius};
use evensip::balance::published::sweetness;
use evensip::balance::published::{polyol, refraction, sugar_solution, water};
use evensip::book::{HighPotencySweetener, PolyolKind};
use serde::Deserialize;

/// Figures of one quantity from one source.
#[derive(Deserialize)]
struct Group {
    quantity: String,
    unit: String,
    source: String,
    tolerance: f64,
    why_this_tolerance: String,
    cases: Vec<Case>,
}

#[derive(Deserialize)]
struct Case {
    question: Question,
    expected: f64,
    /// Why the engine doesn't agree with this figure.
    #[serde(default)]
    known_miss: Option<String>,
}

/// What a case asks of the correlations. Masses in g, temperatures in °C, composition in % by mass.
#[derive(Debug, Deserialize)]
enum Question {
    WaterEnthalpy {
        t_celsius: f64,
    },
    WaterEnthalpyRise {
        from_celsius: f64,
        to_celsius: f64,
    },
    WaterSpecificHeat {
        t_celsius: f64,
    },
    WaterDensity {
        t_celsius: f64,
    },
    MixedWater {
        bodies: Vec<(f64, f64)>,
    },
    WaterInPan {
        water_g: f64,
        water_celsius: f64,
        pan_kj_per_k: f64,
        pan_celsius: f64,
    },
    IceWarmedToZero {
        t_celsius: f64,
    },
    IceSpecificHeat {
        t_celsius: f64,
    },
    IceDensity {
        t_celsius: f64,
    },
    HeatOfFusion,
    IceLeft {
        water_g: f64,
        water_celsius: f64,
        ice_g: f64,
        ice_celsius: f64,
    },
    IceThatCools {
        water_g: f64,
        from_celsius: f64,
        to_celsius: f64,
        ice_celsius: f64,
    },
    SugarDensity {
        mass_percent: f64,
        t_celsius: f64,
    },
    SugarSolutionVolume {
        sugar_g: f64,
        water_g: f64,
        t_celsius: f64,
    },
    SugarPerLitre {
        mass_percent: f64,
        t_celsius: f64,
    },
    SugarSolutionSpecificHeat {
        mass_percent: f64,
        t_celsius: f64,
    },
    CrystalSpecificHeat {
        t_celsius: f64,
    },
    Solubility {
        t_celsius: f64,
    },
    Dissolving {
        crystal: String,
        crystal_g: f64,
        water_g: f64,
        t_celsius: f64,
    },
    SucroseIndex {
        brix: f64,
        t_celsius: f64,
    },
    WaterIndex {
        t_celsius: f64,
    },
    BrixOfIndex {
        index: f64,
    },
    RefractometerCorrection {
        brix: f64,
        t_celsius: f64,
    },
    FoodSpecificHeat {
        component: String,
        t_celsius: f64,
    },
    FoodDensity {
        component: String,
        t_celsius: f64,
    },
    MixtureMeanSpecificHeat {
        water: f64,
        protein: f64,
        fat: f64,
        sugar: f64,
        ash: f64,
    },
    Fructose {
        t_celsius: f64,
    },
    FructoseUncertainty {
        t_celsius: f64,
    },
    SugarUncertainty {
        sugar: String,
    },
    HighPotencyEquivalent {
        sweetener: String,
        sweetness_percent: f64,
    },
    HighPotencyAdded {
        sugar_percent: f64,
        sweeteners: Vec<(String, f64)>,
    },
    FreezingPoint {
        solutes: Vec<(String, f64)>,
        water_g: f64,
    },
}

#[test]
fn water_agrees_with_iapws() {
    check(include_str!("../published-cases/water.ron"));
}

#[test]
fn ice_agrees_with_iapws_and_textbooks() {
    check(include_str!("../published-cases/ice.ron"));
}

#[test]
fn bodies_of_water_mix_to_the_temperature_of_equal_enthalpy() {
    check(include_str!("../published-cases/mixing.ron"));
}

#[test]
fn density_of_sugar_solutions_agrees_with_icumsa_and_handbook() {
    check(include_str!("../published-cases/sugar_density.ron"));
}

#[test]
fn heat_of_sugar_agrees_with_the_sugar_industry() {
    check(include_str!("../published-cases/sugar_heat.ron"));
}

#[test]
fn refraction_agrees_with_handbook_and_iapws() {
    check(include_str!("../published-cases/refraction.ron"));
}

#[test]
fn food_components_agree_with_choi_okos_and_measured_foods() {
    check(include_str!("../published-cases/food_components.ron"));
}

#[test]
fn sweetness_agrees_with_published_curves() {
    check(include_str!("../published-cases/sweetness.ron"));
}

#[test]
fn freezing_points_agree_with_hand_and_handbook() {
    check(include_str!("../published-cases/freezing.ron"));
}

/// How many figures of each kind are held by a tolerance alone: the code carries the formula or the constants of their source.
pub(crate) fn held_by_tolerance() -> Vec<(&'static str, usize)> {
    let files = [
        ("water", include_str!("../published-cases/water.ron")),
        ("ice", include_str!("../published-cases/ice.ron")),
        ("mixing", include_str!("../published-cases/mixing.ron")),
        (
            "density of sugar solutions",
            include_str!("../published-cases/sugar_density.ron"),
        ),
        (
            "heat of sugar",
            include_str!("../published-cases/sugar_heat.ron"),
        ),
        (
            "refraction",
            include_str!("../published-cases/refraction.ron"),
        ),
        (
            "components of food",
            include_str!("../published-cases/food_components.ron"),
        ),
        (
            "curves of sweetness",
            include_str!("../published-cases/sweetness.ron"),
        ),
        (
            "freezing by hand",
            include_str!("../published-cases/freezing.ron"),
        ),
    ];
    files
        .into_iter()
        .map(|(name, file)| {
            let groups: Vec<Group> = ron::from_str(file).expect("the case file is well formed");
            (name, groups.iter().map(|group| group.cases.len()).sum())
        })
        .collect()
}

/// Answers every case of a file, prints the table and fails with all lines that are wrong.
#[expect(
    clippy::print_stdout,
    reason = "the table of deviations is the point of these tests"
)]
fn check(file: &str) {
    let groups: Vec<Group> = ron::from_str(file).expect("the case file is well formed");
    let mut wrong = Vec::new();
    for group in &groups {
        println!("\n{}, {}: {}", group.quantity, group.unit, group.source);
        println!(
            "  tolerance {}: {}",
            group.tolerance, group.why_this_tolerance
        );
        println!(
            "  {:>12} {:>12} {:>10}",
            "computed", "published", "deviation"
        );
        for case in &group.cases {
            let computed = answer(&case.question);
            let deviation = computed - case.expected;
            // Written so that a deviation that is no number is not within.
            let is_within = deviation.abs() <= group.tolerance;
            let verdict = match (is_within, &case.known_miss) {
                (true, None) => String::new(),
                (false, Some(why)) => format!("known miss: {why}"),
                (true, Some(_)) => "WRONG: marked as a known miss, but it agrees".to_owned(),
                (false, None) => "WRONG: beyond the tolerance".to_owned(),
            };
            let line = format!(
                "  {computed:>12.4} {:>12.4} {deviation:>+10.4}  {:?}  {verdict}",
                case.expected, case.question
            );
            println!("{line}");
            if verdict.starts_with("WRONG") {
                wrong.push(format!("{}: {line}", group.quantity));
            }
        }
    }
    assert!(!groups.is_empty(), "the case file is empty");
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn answer(question: &Question) -> f64 {
    match question {
        Question::WaterEnthalpy { .. }
        | Question::WaterEnthalpyRise { .. }
        | Question::WaterSpecificHeat { .. }
        | Question::WaterDensity { .. }
        | Question::MixedWater { .. }
        | Question::WaterInPan { .. } => answer_on_water(question),
        Question::IceWarmedToZero { .. }
        | Question::IceSpecificHeat { .. }
        | Question::IceDensity { .. }
        | Question::HeatOfFusion
        | Question::IceLeft { .. }
        | Question::IceThatCools { .. } => answer_on_ice(question),
        Question::SugarDensity { .. }
        | Question::SugarSolutionVolume { .. }
        | Question::SugarPerLitre { .. }
        | Question::SugarSolutionSpecificHeat { .. }
        | Question::CrystalSpecificHeat { .. }
        | Question::Solubility { .. }
        | Question::Dissolving { .. } => answer_on_sugar(question),
        Question::SucroseIndex { .. }
        | Question::WaterIndex { .. }
        | Question::BrixOfIndex { .. }
        | Question::RefractometerCorrection { .. } => answer_on_refraction(question),
        Question::FoodSpecificHeat { .. }
        | Question::FoodDensity { .. }
        | Question::MixtureMeanSpecificHeat { .. } => answer_on_food(question),
        _ => answer_on_taste_and_freezing(question),
    }
}

fn answer_on_water(question: &Question) -> f64 {
    match question {
        Question::WaterEnthalpy { t_celsius } => water::enthalpy_kj_per_kg(*t_celsius),
        Question::WaterEnthalpyRise {
            from_celsius,
            to_celsius,
        } => water::enthalpy_kj_per_kg(*to_celsius) - water::enthalpy_kj_per_kg(*from_celsius),
        Question::WaterSpecificHeat { t_celsius } => water::specific_heat_kj_per_kg_k(*t_celsius),
        Question::WaterDensity { t_celsius } => water::density_kg_per_m3(*t_celsius),
        Question::MixedWater { bodies } => temperature_where(|t| {
            bodies
                .iter()
                .map(|(grams, celsius)| {
                    grams * (water::enthalpy_kj_per_kg(t) - water::enthalpy_kj_per_kg(*celsius))
                })
                .sum()
        }),
        Question::WaterInPan {
            water_g,
            water_celsius,
            pan_kj_per_k,
            pan_celsius,
        } => temperature_where(|t| {
            let gained = water::enthalpy_kj_per_kg(t) - water::enthalpy_kj_per_kg(*water_celsius);
            water_g / 1000.0 * gained + pan_kj_per_k * (t - pan_celsius)
        }),
        other => unreachable!("{other:?} is not about water"),
    }
}

fn answer_on_refraction(question: &Question) -> f64 {
    match question {
        Question::SucroseIndex { brix, t_celsius } => refraction::index(*brix, *t_celsius),
        Question::WaterIndex { t_celsius } => refraction::water_index(*t_celsius),
        Question::BrixOfIndex { index } => refraction::brix_of_index(*index),
        Question::RefractometerCorrection { brix, t_celsius } => {
            refraction::corrected_brix(*brix, *t_celsius) - brix
        }
        other => unreachable!("{other:?} is not about refraction"),
    }
}

fn answer_on_ice(question: &Question) -> f64 {
    match question {
        Question::IceWarmedToZero { t_celsius } => {
            water::ice_enthalpy_kj_per_kg(0.0) - water::ice_enthalpy_kj_per_kg(*t_celsius)
        }
        Question::IceSpecificHeat { t_celsius } => water::ice_specific_heat_kj_per_kg_k(*t_celsius),
        Question::IceDensity { t_celsius } => water::ice_density_kg_per_m3(*t_celsius),
        Question::HeatOfFusion => {
            water::enthalpy_kj_per_kg(0.0) - water::ice_enthalpy_kj_per_kg(0.0)
        }
        Question::IceLeft {
            water_g,
            water_celsius,
            ice_g,
            ice_celsius,
        } => {
            let heat = water_g * water::enthalpy_kj_per_kg(*water_celsius)
                + ice_g * water::ice_enthalpy_kj_per_kg(*ice_celsius);
            -heat / water::HEAT_OF_FUSION_KJ_PER_KG
        }
        Question::IceThatCools {
            water_g,
            from_celsius,
            to_celsius,
            ice_celsius,
        } => {
            let end = water::enthalpy_kj_per_kg(*to_celsius);
            water_g * (water::enthalpy_kj_per_kg(*from_celsius) - end)
                / (end - water::ice_enthalpy_kj_per_kg(*ice_celsius))
        }
        other => unreachable!("{other:?} is not about ice"),
    }
}

fn answer_on_sugar(question: &Question) -> f64 {
    match question {
        Question::SugarDensity {
            mass_percent,
            t_celsius,
        } => sugar_solution::density_kg_per_m3(mass_percent / 100.0, *t_celsius),
        Question::SugarSolutionVolume {
            sugar_g,
            water_g,
            t_celsius,
        } => {
            let total_g = sugar_g + water_g;
            total_g * 1000.0 / sugar_solution::density_kg_per_m3(sugar_g / total_g, *t_celsius)
        }
        Question::SugarPerLitre {
            mass_percent,
            t_celsius,
        } => {
            let fraction = mass_percent / 100.0;
            fraction * sugar_solution::density_kg_per_m3(fraction, *t_celsius)
        }
        Question::SugarSolutionSpecificHeat {
            mass_percent,
            t_celsius,
        } => {
            let fraction = mass_percent / 100.0;
            (1.0 - fraction) * water::specific_heat_kj_per_kg_k(*t_celsius)
                + fraction * sugar_solution::dissolved_sugar_specific_heat_kj_per_kg_k(*t_celsius)
        }
        Question::CrystalSpecificHeat { t_celsius } => {
            sugar_solution::crystal_specific_heat_kj_per_kg_k(*t_celsius)
        }
        Question::Solubility { t_celsius } => {
            100.0 * sugar_solution::sucrose_solubility_mass_fraction(*t_celsius)
        }
        Question::Dissolving {
            crystal,
            crystal_g,
            water_g,
            t_celsius,
        } => {
            let heat_of_solution = match crystal.as_str() {
                "sucrose" => sugar_solution::SUCROSE_HEAT_OF_SOLUTION_KJ_PER_KG,
                "erythritol" => polyol::heat_of_solution_kj_per_kg(Some(PolyolKind::Erythritol)),
                other => unreachable!("no heat of solution for {other}"),
            };
            let dry = sugar_solution::crystal_enthalpy_kj_per_kg(*t_celsius, heat_of_solution);
            let before = water_g * water::enthalpy_kj_per_kg(*t_celsius) + crystal_g * dry;
            let end = temperature_where(|t| {
                water_g * water::enthalpy_kj_per_kg(t)
                    + crystal_g * sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(t)
                    - before
            });
            end - t_celsius
        }
        other => unreachable!("{other:?} is not about sugar"),
    }
}

fn answer_on_food(question: &Question) -> f64 {
    match question {
        Question::FoodSpecificHeat {
            component,
            t_celsius,
        } => food_component(component).specific_heat_kj_per_kg_k(*t_celsius),
        Question::FoodDensity {
            component,
            t_celsius,
        } => food_component(component).density_kg_per_m3(*t_celsius),
        Question::MixtureMeanSpecificHeat {
            water,
            protein,
            fat,
            sugar,
            ash,
        } => {
            // Mean of 0–100 °C: the enthalpies over that range, divided by 100 % and 100 K.
            let enthalpies = water * water::enthalpy_kj_per_kg(100.0)
                + protein * FoodComponent::Protein.enthalpy_kj_per_kg(100.0)
                + fat * FoodComponent::Fat.enthalpy_kj_per_kg(100.0)
                + sugar * sugar_solution::dissolved_sugar_enthalpy_kj_per_kg(100.0)
                + ash * FoodComponent::Ash.enthalpy_kj_per_kg(100.0);
            enthalpies / 100.0 / 100.0
        }
        other => unreachable!("{other:?} is not about food"),
    }
}

fn answer_on_taste_and_freezing(question: &Question) -> f64 {
    match question {
        Question::Fructose { t_celsius } => sweetness::fructose(*t_celsius).typical,
        Question::FructoseUncertainty { t_celsius } => {
            sweetness::fructose(*t_celsius).standard_uncertainty
        }
        Question::SugarUncertainty { sugar } => {
            let relative = match sugar.as_str() {
                "sucrose" => sweetness::SUCROSE,
                "glucose" => sweetness::GLUCOSE,
                "lactose" => sweetness::LACTOSE,
                "maltose" => sweetness::MALTOSE,
                other => unreachable!("no relative sweetness for {other}"),
            };
            relative.standard_uncertainty
        }
        Question::HighPotencyEquivalent {
            sweetener,
            sweetness_percent,
        } => high_potency(sweetener)
            .equivalent_concentration_mg_per_l(*sweetness_percent)
            .expect("the published sweetness is below the ceiling"),
        Question::HighPotencyAdded {
            sugar_percent,
            sweeteners,
        } => {
            let sweeteners: Vec<_> = sweeteners
                .iter()
                .map(|(name, concentration)| (high_potency(name), *concentration))
                .collect();
            sweetness::combined(*sugar_percent, &sweeteners) - sugar_percent
        }
        Question::FreezingPoint { solutes, water_g } => {
            let solutes: Vec<_> = solutes
                .iter()
                .map(|(name, grams)| (solute(name), *grams))
                .collect();
            freezing_point_celsius(&solutes, *water_g).expect("there is water")
        }
        other => unreachable!("{other:?} is neither about taste nor about freezing"),
    }
}

/// The temperature between −20 and 160 °C at which a rising function is zero, by bisection.
///
/// Deliberately not the solver of the engine: a published case should not depend on it.
fn temperature_where(rising: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (-20.0, 160.0);
    for _ in 0..60 {
        let middle = f64::midpoint(low, high);
        if rising(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    f64::midpoint(low, high)
}

fn food_component(name: &str) -> FoodComponent {
    named(FoodComponent::ALL, name)
}

pub(crate) fn high_potency(name: &str) -> HighPotencySweetener {
    named(HighPotencySweetener::ALL, name)
}

pub(crate) fn solute(name: &str) -> Solute {
    named(Solute::ALL, name)
}

/// The variant whose name is `name`, apart from case and spaces.
fn named<T: std::fmt::Debug>(all: impl IntoIterator<Item = T>, name: &str) -> T {
    let wanted = name.replace(' ', "");
    all.into_iter()
        .find(|candidate| format!("{candidate:?}").eq_ignore_ascii_case(&wanted))
        .expect("the case names a known variant")
}
