//! Blind tests against the tables of their standards, exact fractions and simulated panels.

use std::cmp::Ordering;

use evensip::tasting::{
    BlindTest, Effect, Sides, Standing, StoppingRule, d_prime, guessed, least_panel,
    least_panel_for_similar, most_right_for_similar, needed, power, right_answers, right_limits,
    share, share_limits, shown_share,
};
use num_bigint::BigUint;
use proptest::prelude::*;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};

const ONE_SIDED: [BlindTest; 3] = [
    BlindTest::Triangle,
    BlindTest::DuoTrio,
    BlindTest::Pair(Sides::One),
];

/// One in so many.
const LEVELS: [(f64, u32); 3] = [(0.05, 20), (0.01, 100), (0.001, 1000)];

/// In how many of all equally likely results so many or more are right, and how many results there are: as whole numbers.
fn results(test: BlindTest, people: u32, least: u32) -> (BigUint, BigUint) {
    // A guess is right in one way and wrong in so many.
    let wrong: u32 = if test == BlindTest::Triangle { 2 } else { 1 };
    let mut ways = BigUint::from(1u32);
    let mut sum = BigUint::from(0u32);
    for right in (0..=people).rev() {
        // C(n, n − right) · wrong^(n − right)
        if right >= least {
            sum += &ways * BigUint::from(wrong).pow(people - right);
        }
        ways = ways * right / (people - right + 1);
    }
    (sum, BigUint::from(wrong + 1).pow(people))
}

/// The least number of right answers by whole numbers alone: `tails·sum/all ≤ 1/parts`.
fn needed_by_fractions(test: BlindTest, people: u32, parts: u32) -> Option<u32> {
    let tails: u32 = if test == BlindTest::Pair(Sides::Two) {
        2
    } else {
        1
    };
    (people.div_ceil(2) * (tails - 1)..=people).find(|right| {
        let (sum, all) = results(test, people, *right);
        (sum * tails * parts).cmp(&all) != Ordering::Greater
    })
}

fn ratio((part, all): &(BigUint, BigUint)) -> f64 {
    // Both are scaled down to what a float can tell.
    let shift = all.bits().saturating_sub(1000);
    let float = |number: &BigUint| (number >> shift).to_string().parse::<f64>().unwrap();
    float(part) / float(all)
}

#[test]
fn critical_numbers_are_those_of_exact_fractions_from_1_to_100_people_at_three_levels() {
    let mut count = 0;
    for test in BlindTest::ALL {
        for people in 1..=100 {
            for (level, parts) in LEVELS {
                let expected = needed_by_fractions(test, people, parts);
                let found = needed(test, people, level);
                assert_eq!(
                    found.map(|one| one.answers),
                    expected,
                    "{test:?}, {people}, {level}"
                );
                if let Some(found) = found {
                    assert!(found.chance <= level);
                }
                count += 1;
            }
        }
    }
    assert_eq!(count, 1200);
}

#[test]
fn probabilities_are_those_of_exact_fractions() {
    for test in ONE_SIDED {
        for people in [1, 5, 6, 17, 60, 100] {
            for right in 0..=people {
                let expected = ratio(&results(test, people, right));
                let found = guessed(test, people, right);
                let off = (found / expected - 1.0).abs();
                assert!(
                    off < 1e-10,
                    "{test:?}, {right} of {people}: {found} and {expected}"
                );
            }
        }
    }
}

/// People, then the critical numbers at three levels.
type Rows = &'static [(u32, [u32; 3])];

/// ISO 4120:2021, ISO 10399:2017 and ISO 5495:2005, the tables of their annexes (values from memory): people, then the numbers at 0.05,
/// 0.01 and 0.001, 0 where there is none.
const TABLES: [(BlindTest, Rows); 4] = [
    (
        BlindTest::Triangle,
        &[
            (5, [4, 5, 0]),
            (6, [5, 6, 0]),
            (7, [5, 6, 7]),
            (8, [6, 7, 8]),
            (10, [7, 8, 9]),
            (12, [8, 9, 10]),
            (15, [9, 10, 12]),
            (18, [10, 12, 13]),
            (20, [11, 13, 14]),
            (24, [13, 15, 16]),
            (30, [15, 17, 19]),
        ],
    ),
    (
        BlindTest::DuoTrio,
        &[
            (5, [5, 0, 0]),
            (8, [7, 8, 0]),
            (10, [9, 10, 10]),
            (12, [10, 11, 12]),
            (15, [12, 13, 14]),
            (20, [15, 16, 18]),
            (30, [20, 22, 24]),
        ],
    ),
    (
        BlindTest::Pair(Sides::One),
        &[
            (6, [6, 0, 0]),
            (7, [7, 7, 0]),
            (9, [8, 9, 0]),
            (16, [12, 14, 15]),
            (24, [17, 19, 20]),
        ],
    ),
    (
        BlindTest::Pair(Sides::Two),
        &[
            (6, [6, 0, 0]),
            (8, [8, 8, 0]),
            (10, [9, 10, 0]),
            (12, [10, 11, 12]),
            (15, [12, 13, 14]),
            (20, [15, 17, 18]),
            (30, [21, 23, 25]),
        ],
    ),
];

#[test]
fn critical_numbers_are_those_of_the_standards() {
    for (test, rows) in TABLES {
        for (people, numbers) in rows {
            for ((level, _), number) in LEVELS.into_iter().zip(numbers) {
                let found = needed(test, *people, level).map_or(0, |needed| needed.answers);
                assert_eq!(found, *number, "{test:?}, {people} people, {level}");
            }
        }
    }
}

#[test]
fn panels_are_as_large_as_the_standard_asks_for() {
    // ISO 4120:2021, table of the number of assessors at 0.05 (values from memory): power 0.80, 0.90 and 0.95.
    for (share, panels) in [
        (0.5, [16, 20, 23]),
        (0.4, [23, 30, 40]),
        (0.3, [40, 53, 66]),
        (0.2, [87, 117, 147]),
    ] {
        for (wanted, people) in [0.8, 0.9, 0.95].into_iter().zip(panels) {
            let effect = Effect::Share(share);
            let panel = least_panel(BlindTest::Triangle, 0.05, effect, wanted, 500).unwrap();
            assert_eq!(panel.people, people, "{share}, {wanted}");
            assert!(panel.power >= wanted);
            let fewer = power(BlindTest::Triangle, people - 1, 0.05, effect);
            assert!(fewer < wanted, "{share}, {wanted}: {fewer}");
        }
    }
    let effect = Effect::Share(0.01);
    assert_eq!(
        least_panel(BlindTest::DuoTrio, 0.05, effect, 0.9, 200),
        None
    );
}

#[test]
fn power_is_that_of_a_statistics_library() {
    // scipy 1.17.1, binom.sf.
    for (test, people, level, share, expected) in [
        (BlindTest::Triangle, 6, 0.05, 0.5, 0.351_165_980_8),
        (BlindTest::Triangle, 30, 0.05, 0.3, 0.709_083_141_1),
        (BlindTest::Triangle, 100, 0.001, 0.3, 0.833_705_038_7),
        (BlindTest::DuoTrio, 20, 0.05, 0.5, 0.617_172_654_4),
        (BlindTest::Pair(Sides::One), 8, 0.05, 0.5, 0.367_080_688_5),
    ] {
        let found = power(test, people, level, Effect::Share(share));
        assert!(
            (found - expected).abs() < 1e-9,
            "{test:?}, {people}: {found}"
        );
    }
}

#[test]
fn right_answers_by_d_prime_are_those_of_a_statistics_library() {
    // scipy 1.17.1, quad and norm.cdf: triangle, duo–trio, pair; the first two also by four million simulated tastings, to 0.0005.
    for (d, expected) in [
        (0.5, [0.355_834_649_6, 0.522_347_000_6, 0.638_163_195_1]),
        (1.0, [0.418_046_674_7, 0.582_475_444_2, 0.760_249_938_9]),
        (2.0, [0.604_806_932_8, 0.746_820_245_5, 0.921_350_396_5]),
        (3.0, [0.781_427_598_6, 0.876_456_704_0, 0.983_052_573_2]),
    ] {
        for (test, expected) in ONE_SIDED.into_iter().zip(expected) {
            let found = right_answers(test, Effect::DPrime(d));
            assert!((found - expected).abs() < 1e-9, "{test:?}, {d}: {found}");
            let back = d_prime(test, found).unwrap();
            assert!((back - d).abs() < 1e-8, "{test:?}: {back}");
        }
    }
    for test in BlindTest::ALL {
        let none = right_answers(test, Effect::DPrime(0.0));
        assert!((none - test.guessing()).abs() < 1e-10, "{test:?}: {none}");
        assert_eq!(d_prime(test, 0.2), Some(0.0));
        assert_eq!(d_prime(test, 1.0), None);
        assert!(share(test, 0.2).abs() < 1e-15);
        let right = right_answers(test, Effect::Share(0.4));
        assert!((share(test, right) - 0.4).abs() < 1e-12);
    }
}

#[test]
fn six_people_see_what_half_of_them_taste_once_in_three_tastings() {
    let half = Effect::Share(0.5);
    let triangle = power(BlindTest::Triangle, 6, 0.05, half);
    assert!((0.3..0.4).contains(&triangle), "{triangle}");
    let shown = shown_share(BlindTest::Triangle, 6, 0.05, 0.8).unwrap();
    let kept = power(BlindTest::Triangle, 6, 0.05, Effect::Share(shown));
    assert!((kept - 0.8).abs() < 1e-9, "{kept}");
    // Two can't show anything, whatever they answer.
    assert_eq!(shown_share(BlindTest::Triangle, 2, 0.05, 0.8), None);
    // The same cups: asking for a direction shows more than asking for the odd one.
    let cups = Effect::DPrime(1.5);
    let pair = power(BlindTest::Pair(Sides::One), 12, 0.05, cups);
    assert!(
        pair > power(BlindTest::Triangle, 12, 0.05, cups) + 0.2,
        "{pair}"
    );
}

#[test]
fn limits_are_those_of_clopper_and_pearson() {
    // scipy 1.17.1, beta.ppf: 4 of 6 and 11 of 30 at 0.95.
    let six = right_limits(6, 4, 0.95);
    assert!((six.least - 0.271_338_372_5).abs() < 1e-9, "{six:?}");
    assert!((six.most - 0.937_150_108_3).abs() < 1e-9, "{six:?}");
    assert!((right_limits(30, 11, 0.95).most - 0.533_086_329_9).abs() < 1e-9);
    // ISO 4120's normal approximation is narrower.
    let exact = share_limits(BlindTest::Triangle, 30, 11, 0.95).most;
    let (x, n) = (11f64, 30f64);
    let normal = 1.5 * x / n - 0.5 + 1.5 * 1.645 * ((n * x - x * x) / n.powi(3)).sqrt();
    assert!(
        normal < exact && exact < normal + 0.05,
        "{normal} and {exact}"
    );
    let all = share_limits(BlindTest::DuoTrio, 8, 8, 0.95);
    assert!((all.most - 1.0).abs() < 1e-12);
    let none = share_limits(BlindTest::DuoTrio, 8, 0, 0.95);
    assert!(
        none.least.abs() < 1e-12 && none.most.abs() < 1e-12,
        "{none:?}"
    );
}

#[test]
fn similar_cups_need_more_people_than_a_difference() {
    let share = 0.3;
    for test in BlindTest::ALL {
        let found = least_panel(test, 0.05, Effect::Share(share), 0.8, 400).unwrap();
        let same = least_panel_for_similar(test, share, 0.95, 0.8, 400).unwrap();
        assert!(
            same + 8 > found.people && same > 30,
            "{test:?}: {same} and {found:?}"
        );
        let most = most_right_for_similar(test, same, share, 0.95).unwrap();
        assert!(share_limits(test, same, most, 0.95).most <= share);
        assert!(share_limits(test, same, most + 1, 0.95).most > share);
    }
    assert_eq!(
        most_right_for_similar(BlindTest::Triangle, 3, share, 0.95),
        None
    );
}

fn is_right(random: &mut ChaCha8Rng, each: f64) -> bool {
    f64::from(random.next_u32()) < each * f64::from(u32::MAX)
}

#[test]
fn a_rule_that_stops_early_keeps_its_errors() {
    for test in ONE_SIDED {
        for most in [8, 20, 60] {
            for level in [0.05, 0.01] {
                let effect = Effect::Share(0.5);
                let rule = StoppingRule::new(test, effect, level, 0.1, most).unwrap();
                let errors = rule.errors();
                assert!(errors.false_alarm <= level, "{test:?}, {most}: {errors:?}");
                // Eight people can show nothing at 0.01: then both are 0.
                assert!(errors.power > errors.false_alarm || errors.power.abs() < 1e-15);
                assert!(errors.people_if_equal <= f64::from(most));
            }
        }
    }
    let long = StoppingRule::new(BlindTest::Triangle, Effect::Share(0.5), 0.05, 0.1, 80).unwrap();
    let errors = long.errors();
    assert!(
        errors.power > 0.88 && errors.people_if_different < 20.0,
        "{errors:?}"
    );
    // The same by simulated tastings.
    let mut random = ChaCha8Rng::seed_from_u64(7);
    let rounds = 20_000;
    for (each, expected) in [(1.0 / 3.0, errors.false_alarm), (2.0 / 3.0, errors.power)] {
        let found = (0..rounds).filter(|_| {
            let answers: Vec<bool> = (0..80).map(|_| is_right(&mut random, each)).collect();
            long.after(answers).0 == Standing::Difference
        });
        let found = found.count() as f64 / f64::from(rounds);
        assert!((found - expected).abs() < 0.01, "{found} and {expected}");
    }
    assert_eq!(
        StoppingRule::new(
            BlindTest::Pair(Sides::Two),
            Effect::Share(0.5),
            0.05,
            0.1,
            20
        ),
        None
    );
    assert_eq!(
        StoppingRule::new(BlindTest::Triangle, Effect::Share(0.0), 0.05, 0.1, 20),
        None
    );
}

#[test]
fn what_a_rule_lists_by_people_is_what_it_says_of_answers() {
    let rule = StoppingRule::new(BlindTest::Triangle, Effect::DPrime(2.0), 0.05, 0.2, 30).unwrap();
    for people in 1..=30 {
        let (none, shown) = rule.limits(people);
        for right in 0..=people {
            let standing = rule.standing(people, right);
            assert_eq!(
                standing == Standing::Difference,
                shown.is_some_and(|least| right >= least)
            );
            let is_none = standing == Standing::NoSuchDifference;
            assert_eq!(is_none, none.is_some_and(|most| right <= most));
        }
    }
    assert_eq!(rule.after([true; 30]).0, Standing::Difference);
    let (standing, after) = rule.after([false; 30]);
    assert!(
        standing == Standing::NoSuchDifference && after < 10,
        "{after}"
    );
    assert_eq!(rule.after([]), (Standing::GoOn, 0));
}

proptest! {
    #[test]
    fn more_right_answers_are_never_less_of_a_difference(
        slot in 0..BlindTest::ALL.len(), people in 1u32..400, right in 0u32..400, level in 1e-6..0.4f64,
    ) {
        let test = BlindTest::ALL[slot];
        let p = guessed(test, people, right);
        prop_assert!((0.0..=1.0).contains(&p));
        let is_two_sided = test == BlindTest::Pair(Sides::Two);
        if !is_two_sided || right * 2 >= people {
            prop_assert!(guessed(test, people, right + 1) <= p);
        }
        if let Some(found) = needed(test, people, level) {
            prop_assert!(found.answers <= people && found.chance <= level);
            prop_assert!(found.answers == 0 || guessed(test, people, found.answers - 1) > level);
        } else {
            prop_assert!(guessed(test, people, people) > level);
        }
        let limits = share_limits(test, people, right.min(people), 0.9);
        prop_assert!(0.0 <= limits.least && limits.least <= limits.most && limits.most <= 1.0);
    }

    #[test]
    fn a_larger_difference_is_shown_more_often(
        slot in 0..BlindTest::ALL.len(), people in 1u32..120, small in 0.0..1.0f64, large in 0.0..1.0f64,
    ) {
        let test = BlindTest::ALL[slot];
        let (small, large) = (small.min(large), small.max(large));
        for effect in [Effect::Share as fn(f64) -> Effect, |size| Effect::DPrime(size * 4.0)] {
            let low = power(test, people, 0.05, effect(small));
            let high = power(test, people, 0.05, effect(large));
            prop_assert!(low <= high + 1e-9, "{low} {high}");
        }
    }
}
