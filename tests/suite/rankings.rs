//! Three cups in order: exact counts, the tables that Friedman and Page published, simulated panels.

#![allow(clippy::print_stdout, reason = "the powers are the finding")]

use std::collections::BTreeMap;

use evensip::tasting::{
    CUP_ORDERS, Effect, Prediction, RankSums, RankingRemark, RankingTerms, Remark, Sample,
    friedman_chance, least_rank_difference, least_ranking_panel, order_shares, page_chance,
    page_needed, ranking_plan, ranking_power, ranking_verdict, ranks_needed,
};
use num_bigint::BigUint;
use proptest::prelude::*;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};

/// In how many of the `6ⁿ` equally likely results the sums are these: whole numbers alone.
fn ways(people: u32) -> BTreeMap<[u32; 3], BigUint> {
    let mut ways = BTreeMap::from([([0; 3], BigUint::from(1u32))]);
    for _ in 0..people {
        let mut next: BTreeMap<[u32; 3], BigUint> = BTreeMap::new();
        for (sums, count) in &ways {
            for order in CUP_ORDERS {
                let mut sums = *sums;
                for (rank, cup) in (1..).zip(order) {
                    sums[cup as usize] += rank;
                }
                *next.entry(sums).or_default() += count;
            }
        }
        ways = next;
    }
    ways
}

fn part(of: &BigUint, all: &BigUint) -> f64 {
    let shift = all.bits().saturating_sub(1000);
    let float = |number: &BigUint| (number >> shift).to_string().parse::<f64>().unwrap();
    float(of) / float(all)
}

fn sums_of(people: u32, sums: [u32; 3]) -> RankSums {
    RankSums {
        people,
        sums,
        repeated: 0,
    }
}

#[test]
fn chances_are_those_of_whole_numbers() {
    for people in 1..=20 {
        let ways = ways(people);
        let all = BigUint::from(6u32).pow(people);
        let more = |least: f64, statistic: &dyn Fn(RankSums) -> f64| {
            let reached = ways
                .iter()
                .filter(|(sums, _)| statistic(sums_of(people, **sums)) >= least - 1e-9);
            part(&reached.map(|(_, count)| count).sum(), &all)
        };
        for sums in ways.keys().step_by(7) {
            let found = sums_of(people, *sums);
            let friedman = more(found.friedman(), &|sums| sums.friedman());
            assert!(
                (friedman_chance(&found) - friedman).abs() < 1e-12,
                "{found:?}"
            );
            let order = CUP_ORDERS[3];
            let page = found.page(order);
            let expected = more(f64::from(page), &|sums| f64::from(sums.page(order)));
            assert!(
                (page_chance(people, page) - expected).abs() < 1e-12,
                "{found:?}"
            );
        }
        for level in [0.05, 0.01] {
            let apart = |sums: RankSums| f64::from(sums.sums[0].abs_diff(sums.sums[1]));
            let least = (1..=2 * people).find(|least| more(f64::from(*least), &apart) <= level);
            assert_eq!(
                least_rank_difference(people, level),
                least,
                "{people}, {level}"
            );
        }
    }
}

/// Friedman's `F` with the probabilities that his table of three samples prints (J. Am. Stat. Assoc. 32, 1937: 675, table V; values
/// from memory): people, `F`, probability.
const FRIEDMAN: [(u32, f64, f64); 18] = [
    (3, 6.000, 0.028),
    (4, 6.500, 0.042),
    (4, 8.000, 0.0046),
    (5, 6.400, 0.039),
    (5, 7.600, 0.024),
    (5, 8.400, 0.0085),
    (6, 6.333, 0.052),
    (6, 7.000, 0.029),
    (6, 8.333, 0.012),
    (6, 9.000, 0.0081),
    (7, 7.143, 0.027),
    (7, 7.714, 0.021),
    (7, 8.857, 0.0084),
    (8, 6.250, 0.047),
    (8, 9.000, 0.0099),
    (9, 6.222, 0.048),
    (9, 8.667, 0.010),
    (9, 9.556, 0.0060),
];

#[test]
fn friedmans_table_is_met_to_its_last_digit() {
    for (people, friedman, printed) in FRIEDMAN {
        let all = ways(people);
        let reached = all
            .keys()
            .map(|sums| sums_of(people, *sums))
            .find(|sums| (sums.friedman() - friedman).abs() < 0.000_6);
        let found = friedman_chance(&reached.expect("no sums give this F"));
        // Two digits are printed.
        let last = 10f64.powf(printed.log10().floor() - 1.0);
        assert!(
            (found - printed).abs() <= 0.51 * last,
            "{people}, {friedman}: {found}"
        );
    }
    // The least F at the 5 % and the 1 % level.
    for (people, five, one) in [
        (3, 6.0, None),
        (4, 6.5, Some(8.0)),
        (5, 6.4, Some(8.4)),
        (6, 7.0, Some(9.0)),
        (7, 50.0 / 7.0, Some(62.0 / 7.0)),
        (8, 6.25, Some(9.0)),
        (9, 56.0 / 9.0, Some(86.0 / 9.0)),
    ] {
        let needed = |level| ranks_needed(people, level).map(|needed| needed.friedman);
        assert!((needed(0.05).unwrap() - five).abs() < 1e-9, "{people}");
        match (needed(0.01), one) {
            (Some(found), Some(printed)) => assert!((found - printed).abs() < 1e-9, "{people}"),
            (found, printed) => assert_eq!(found, printed, "{people}"),
        }
    }
    assert_eq!(ranks_needed(2, 0.05), None);
}

/// The least `L` of three samples at 5, 1 and 0.1 % (Page, J. Am. Stat. Assoc. 58, 1963: 216, table 2; values from memory), from
/// two people on; 0 where the table has none.
const PAGE: [[u32; 3]; 19] = [
    [28, 0, 0],
    [41, 42, 0],
    [54, 55, 56],
    [66, 68, 70],
    [79, 81, 83],
    [91, 93, 96],
    [104, 106, 109],
    [116, 119, 121],
    [128, 131, 134],
    [141, 144, 147],
    [153, 156, 160],
    [165, 169, 172],
    [178, 181, 185],
    [190, 194, 197],
    [202, 206, 210],
    [215, 218, 223],
    [227, 231, 235],
    [239, 243, 248],
    [251, 256, 260],
];

#[test]
fn pages_table_is_met() {
    for (people, row) in (2..).zip(PAGE) {
        for (level, printed) in [0.05, 0.01, 0.001].into_iter().zip(row) {
            let found = page_needed(people, level).map_or(0, |(page, _)| page);
            assert_eq!(found, printed, "{people} people, {level}");
        }
    }
}

#[test]
fn the_least_difference_is_at_most_two_ranks_above_the_limit_of_the_standard() {
    // ISO 8587: z·√(n·k·(k + 1)/6), with three cups z·√(2n). Its normal law is a limit; differences are whole, and rarer here than
    // the level.
    for (level, z) in [(0.05, 1.96), (0.01, 2.576)] {
        for people in 5..=100 {
            let found = f64::from(least_rank_difference(people, level).unwrap());
            let limit = z * f64::from(2 * people).sqrt();
            assert!(
                (limit - 0.5..limit + 2.0).contains(&found),
                "{people}: {found}, {limit}"
            );
        }
    }
}

#[test]
fn beyond_a_hundred_people_chi_squared_takes_over_without_a_step() {
    for away in [10, 15, 20, 25] {
        let chance = |people: u32| {
            let sums = [2 * people - away, 2 * people, 2 * people + away];
            friedman_chance(&sums_of(people, sums))
        };
        let (exact, limit) = (chance(100), chance(101));
        assert!(
            (exact / limit - 1.0).abs() < 0.15,
            "{away}: {exact}, {limit}"
        );
    }
}

fn drawn(random: &mut ChaCha8Rng) -> f64 {
    (random.next_u64() >> 11) as f64 / (1u64 << 53) as f64
}

fn normal(random: &mut ChaCha8Rng) -> f64 {
    // Box & Muller.
    let (radius, angle) = (1.0 - drawn(random), drawn(random));
    (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * angle).cos()
}

#[test]
fn orders_and_power_are_those_of_simulated_tasters() {
    let mut random = ChaCha8Rng::seed_from_u64(5);
    let (panels, level) = (4000, 0.05);
    for (people, d_prime) in [(4, 2.0), (6, 1.5), (8, 1.0), (12, 2.0)] {
        let mut given = [0u32; 6];
        let (mut friedman, mut page) = (0, 0);
        for _ in 0..panels {
            let orders: Vec<(u32, [Sample; 3])> = (0..people)
                .map(|person| {
                    let mut felt: Vec<(f64, Sample)> = Sample::ALL
                        .into_iter()
                        .zip([d_prime / 2.0, 0.0, -d_prime / 2.0])
                        .map(|(cup, mean)| (mean + normal(&mut random), cup))
                        .collect();
                    felt.sort_by(|a, b| b.0.total_cmp(&a.0));
                    let order = [felt[0].1, felt[1].1, felt[2].1];
                    given[CUP_ORDERS.iter().position(|one| *one == order).unwrap()] += 1;
                    (person, order)
                })
                .collect();
            let sums = RankSums::of(orders);
            friedman += u32::from(friedman_chance(&sums) <= level);
            page += u32::from(page_chance(people, sums.page(Sample::ALL)) <= level);
        }
        let effect = Effect::DPrime(d_prime);
        let near = |found: u32, of: u32, expected: f64| {
            let (found, of) = (f64::from(found) / f64::from(of), f64::from(of));
            let u = (expected * (1.0 - expected) / of).sqrt();
            assert!(
                (found - expected).abs() < 4.0 * u,
                "{people}, {d_prime}: {found}, {expected}"
            );
        };
        for (found, expected) in given.into_iter().zip(order_shares(effect)) {
            near(found, panels * people, expected);
        }
        let power = |prediction| ranking_power(people, level, effect, prediction).unwrap();
        near(friedman, panels, power(Prediction::None));
        near(page, panels, power(Prediction::Order));
    }
}

#[test]
fn what_small_teams_can_show() {
    let power = |people, d_prime, prediction| {
        let found = ranking_power(people, 0.05, Effect::DPrime(d_prime), prediction);
        (found.unwrap() * 100.0).round()
    };
    // Cups in even steps, the first and the last d′ 2 apart.
    let any = [4, 6, 8].map(|people| power(people, 2.0, Prediction::None));
    let predicted = [4, 6, 8].map(|people| power(people, 2.0, Prediction::Order));
    println!("any order {any:?}, predicted {predicted:?}");
    for (any, predicted) in any.into_iter().zip(predicted) {
        assert!(
            any + 10.0 < predicted,
            "a prediction makes a small team stronger"
        );
    }
    assert!(any[0] < 50.0 && any[2] > 60.0, "{any:?}");
    let least = |prediction| least_ranking_panel(0.05, Effect::DPrime(2.0), 0.8, prediction);
    assert!(least(Prediction::Order).unwrap().0 < least(Prediction::None).unwrap().0);
}

#[test]
fn equal_cups_are_found_different_as_rarely_as_agreed() {
    for people in 1..=40 {
        for prediction in [Prediction::None, Prediction::Order] {
            for effect in [Effect::Share(0.0), Effect::DPrime(0.0)] {
                let found = ranking_power(people, 0.05, effect, prediction).unwrap();
                assert!(found <= 0.05 + 1e-9, "{people}: {found}");
            }
        }
    }
}

#[test]
fn a_verdict_says_which_cups_are_apart_and_of_which_nothing_is_shown() {
    let terms = RankingTerms {
        level: 0.05,
        power: 0.8,
        predicted: None,
    };
    let [a, b, c] = Sample::ALL;
    // Eight people put A last; of B and C four each are first.
    let mut answers: Vec<(u32, [Sample; 3])> = (0..4).map(|one| (one, [b, c, a])).collect();
    answers.extend((4..8).map(|one| (one, [c, b, a])));
    answers.push((0, [a, b, c]));
    let sums = RankSums::of(answers);
    assert_eq!(
        (sums.people, sums.sums, sums.repeated),
        (8, [24, 12, 12], 1)
    );
    let remarks = ranking_verdict(&terms, sums);
    let has = |wanted: &RankingRemark| remarks.contains(&Remark::Ranking(*wanted));
    assert!(has(&RankingRemark::Found { level: 0.05 }));
    let difference = 12;
    assert!(has(&RankingRemark::Apart {
        more: b,
        less: a,
        difference
    }));
    assert!(has(&RankingRemark::NotApart {
        a: b,
        b: c,
        difference: 0
    }));
    assert!(remarks.contains(&Remark::Repeated {
        people: 8,
        repeated: 1
    }));
    // Two people show nothing, whatever they answer.
    let two = RankSums::of([(0, [a, b, c]), (1, [a, b, c])]);
    let remarks = ranking_verdict(&terms, two);
    let least = remarks.iter().find_map(|remark| match remark {
        Remark::Ranking(RankingRemark::CannotShow { least, .. }) => *least,
        _ => None,
    });
    assert_eq!(least, Some(3));
    let plan = ranking_plan(&terms, Some(2), Effect::Share(0.5));
    assert!(
        plan.iter()
            .any(|remark| remark.word() == "rank-cannot-show")
    );
}

proptest! {
    #[test]
    fn chances_are_chances_and_names_of_cups_do_not_matter(
        orders in prop::collection::vec(0usize..6, 1..30),
        turn in 0usize..6,
    ) {
        let cups: Vec<[Sample; 3]> = orders.iter().map(|one| CUP_ORDERS[*one]).collect();
        let sums = RankSums::of(cups.iter().copied().enumerate());
        let turned = CUP_ORDERS[turn];
        let renamed = cups.iter().map(|order| order.map(|cup| turned[cup as usize]));
        let other = RankSums::of(renamed.enumerate());
        let chance = friedman_chance(&sums);
        prop_assert!((0.0..=1.0).contains(&chance));
        prop_assert!((chance - friedman_chance(&other)).abs() < 1e-12);
        prop_assert_eq!(sums.page(Sample::ALL), other.page(turned));
        prop_assert_eq!(sums.sums.iter().sum::<u32>(), 6 * sums.people);
    }
}
