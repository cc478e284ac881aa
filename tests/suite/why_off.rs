//! Why one cup is off: simulated cups of which it is known what went wrong, and what is said of them.

#![allow(
    clippy::print_stdout,
    reason = "how often which cause was named is what one wants to read"
)]

use evensip::book::{Book, RecipeId, VersionId};
use evensip::cups::{CupDoctor, CupReading, Fault, Measured, WhyOffRemark};
use evensip::quantity::Uncertain;
use evensip::say::{Language, Speaker};

use crate::sample::sample;

/// Drinks of the shop that differ in what can go wrong: hot and iced, scoops and presses, with and without milk.
const DRINKS: [(&str, Option<&str>); 5] = [
    ("hob-and-ember", None),
    ("hob-and-ember", Some("iced")),
    ("hazelthwaite", None),
    ("pear-drift", None),
    ("hob-and-ember", Some("vegan")),
];

fn doctor(book: &Book, recipe: &str, version: Option<&str>) -> CupDoctor {
    let recipe = book.recipe(&RecipeId::new(recipe).unwrap()).unwrap();
    let version = version.map(|id| VersionId::new(id).unwrap());
    CupDoctor::of(book, recipe, version.as_ref()).unwrap()
}

/// How often something was said with a probability of about so much, and how often it was so.
#[derive(Clone, Copy, Default)]
struct Bin {
    said: usize,
    probability: f64,
    right: usize,
}

#[test]
fn of_a_thousand_single_faults_the_right_one_is_named_where_that_can_be_told() {
    let book = sample();
    let (mut all, mut first, mut told, mut told_right) = (0, 0, 0, 0);
    for (recipe, version) in DRINKS {
        let doctor = doctor(&book, recipe, version);
        let faults = doctor.faults().count();
        for seed in 0..200_usize {
            let cup = doctor.simulated(seed as u64, Some(seed % faults));
            let why = doctor.why_off(&cup.readings);
            let is_right = |fault: &Option<Fault>| *fault == cup.fault;
            all += 1;
            first += usize::from(is_right(&why.causes[0].fault));
            if let Some(likely) = why.told() {
                told += 1;
                told_right += usize::from(is_right(&likely.fault));
            }
        }
    }
    println!(
        "{all} faults: right first {first}; told of {told}, right {told_right} ({:.1} %)",
        100.0 * told_right as f64 / told as f64
    );
    assert_eq!(all, 1000);
    assert!(told * 3 > all, "told of {told} of {all}");
    assert!(told_right * 100 >= told * 80, "{told_right} of {told}");
}

#[test]
fn stated_probabilities_are_those_that_come_true() {
    let book = sample();
    let mut bins = [Bin::default(); 10];
    for (recipe, version) in DRINKS {
        let doctor = doctor(&book, recipe, version);
        for seed in 0..400 {
            // By the prior: some cups have nothing but scatter.
            let cup = doctor.simulated(10_000 + seed, None);
            let all: &[Measured] = match seed % 3 {
                0 => &Measured::ALL,
                1 => &[Measured::Weight, Measured::Temperature],
                _ => &[Measured::Weight, Measured::Brix],
            };
            let known: Vec<CupReading> = cup
                .readings
                .iter()
                .filter(|reading| all.contains(&reading.measured))
                .copied()
                .collect();
            for likely in &doctor.causes(&known) {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "one of ten"
                )]
                let bin = &mut bins[((likely.probability * 10.0) as usize).min(9)];
                bin.said += 1;
                bin.probability += likely.probability;
                bin.right += usize::from(likely.fault == cup.fault);
            }
        }
    }
    for (at, bin) in bins.iter().enumerate().filter(|(_, bin)| bin.said > 0) {
        let said = bin.probability / bin.said as f64;
        let came = bin.right as f64 / bin.said as f64;
        let u = (said * (1.0 - said) / bin.said as f64).sqrt();
        println!(
            "{at}0 %: said {:5} times, {said:.3} on the mean, came true {came:.3} ± {u:.3}",
            bin.said
        );
        // Faults far from the recipe bend what the slopes at the recipe say of the scatter.
        assert!(
            (came - said).abs() < 4.0 * u + 0.03,
            "bin {at}: said {said:.3}, came {came:.3}"
        );
    }
}

#[test]
fn causes_add_up_to_certainty_and_the_likeliest_stands_first() {
    let book = sample();
    for (recipe, version) in DRINKS {
        let doctor = doctor(&book, recipe, version);
        for seed in 0..20 {
            let why = doctor.why_off(&doctor.simulated(seed, None).readings);
            let sum: f64 = why.causes.iter().map(|cause| cause.probability).sum();
            assert!((sum - 1.0).abs() < 1e-9, "{sum}");
            let ranked = why.causes.windows(2);
            assert!(
                ranked
                    .clone()
                    .all(|pair| pair[0].probability >= pair[1].probability)
            );
            assert_eq!(why.causes.len(), doctor.faults().count() + 1);
        }
    }
}

#[test]
fn a_cup_as_it_should_be_has_only_scatter() {
    let book = sample();
    let doctor = doctor(&book, "pear-drift", None);
    let nothing = doctor.why_off(&[]);
    assert!(
        nothing.causes.is_empty() && nothing.next.is_some(),
        "{:?}",
        nothing.next
    );
    let figures = &nothing.balance.figures;
    let readings: Vec<CupReading> = [Measured::Weight, Measured::Temperature, Measured::Brix]
        .into_iter()
        .map(|measured| {
            let value = figures.complete(measured.measurand()).unwrap();
            doctor.reading(&book, measured, value)
        })
        .collect();
    let why = doctor.why_off(&readings);
    assert_eq!(why.causes[0].fault, None, "{:?}", why.causes[0]);
    assert!(
        why.readings
            .iter()
            .all(|off| off.apart.unwrap().abs() < 1e-9)
    );
    assert!(!why.is_unexplained);
    // A weight that nothing explains.
    let heavy = CupReading {
        measured: Measured::Weight,
        read: Uncertain {
            value: 5.0 * readings[0].read.value,
            u: 0.3,
        },
    };
    let why = doctor.why_off(&[heavy]);
    assert!(why.is_unexplained && why.told().is_none());
    assert!(why.remarks().contains(&WhyOffRemark::Unexplained));
}

#[test]
fn more_ice_is_found_with_its_grams_and_the_next_measurement_is_the_cheapest_that_tells() {
    let book = sample();
    let doctor = doctor(&book, "pear-drift", None);
    let usual = doctor.drink().figures.of[Measured::Weight.measurand().slot()];
    let by_weight =
        |more: f64| doctor.why_off(&[doctor.reading(&book, Measured::Weight, usual + more)]);
    let mut open = (-8..=8).map(|more| by_weight(5.0 * f64::from(more)));
    let light = open
        .find(|why| why.told().is_none() && why.next.is_some())
        .expect("a weight alone leaves something open");
    let next = light.next.unwrap();
    assert!(next.measured != Measured::Weight);
    assert!(next.likely > light.causes[0].probability);
    let speaker = Speaker::new(&book);
    let german = speaker.in_language(Language::from_code("de").unwrap());
    // A size is no surer than what it was read with.
    let sized = light.causes.iter().filter_map(|cause| cause.size);
    assert!(sized.clone().count() > 2 && sized.clone().all(|size| size.u > 0.1));
    for remark in light.remarks() {
        println!("{}", speaker.why_off_remark(&light, &remark));
        assert!(!german.why_off_remark(&light, &remark).is_empty());
    }
}

#[test]
fn a_refractometer_is_believed_less_in_a_milky_drink() {
    let book = sample();
    let u = |recipe: &str| {
        let doctor = doctor(&book, recipe, None);
        doctor.reading(&book, Measured::Brix, 9.0).read.u
    };
    assert!(
        u("sootwick") > 2.0 * u("pear-drift"),
        "{} {}",
        u("sootwick"),
        u("pear-drift")
    );
}
