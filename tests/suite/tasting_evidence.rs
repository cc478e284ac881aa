//! What tastings say of ingredients: hidden truths of simulated shops are covered as often as the figures say.

use evensip::tasting::{
    BlindTest, ComparedCups, CupIntensity, Effect, Sides, TastingResult, d_prime, evidence,
    right_answers,
};
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};

const STEP: f64 = 0.1;

fn uniform(random: &mut ChaCha8Rng) -> f64 {
    (f64::from(random.next_u32()) + 0.5) / 4_294_967_296.0
}

/// A standard normal value (Box & Muller 1958).
fn normal(random: &mut ChaCha8Rng) -> f64 {
    let (radius, angle) = (uniform(random), uniform(random));
    (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * angle).cos()
}

fn alone(factor: usize, amount: f64) -> CupIntensity {
    CupIntensity {
        parts: vec![(factor, amount)],
        rest: 0.0,
    }
}

fn pair(first: CupIntensity, second: CupIntensity, people: u32, right: u32) -> ComparedCups {
    ComparedCups {
        first,
        second,
        step: STEP,
        result: TastingResult::Blind {
            test: BlindTest::Pair(Sides::Two),
            people,
            right,
        },
    }
}

fn intensity(cup: &CupIntensity, truth: &[f64]) -> f64 {
    let parts = cup
        .parts
        .iter()
        .map(|(place, amount)| amount * truth[*place].exp());
    parts.sum::<f64>() + cup.rest
}

/// What a panel whose threshold is one step says of two cups.
fn tasted(
    random: &mut ChaCha8Rng,
    truth: &[f64],
    first: CupIntensity,
    second: CupIntensity,
) -> ComparedCups {
    let delta = (intensity(&second, truth) / intensity(&first, truth)).ln();
    let at_a_step = d_prime(BlindTest::Pair(Sides::One), 0.75).unwrap();
    let size = delta / STEP.ln_1p() * at_a_step;
    let people = 4 + random.next_u32() % 5;
    let test = match random.next_u32() % 5 {
        0 => BlindTest::Triangle,
        1 => BlindTest::DuoTrio,
        _ => BlindTest::Pair(Sides::Two),
    };
    let share = right_answers(test, Effect::DPrime(size.abs()));
    let share = if matches!(test, BlindTest::Pair(_)) && size < 0.0 {
        1.0 - share
    } else {
        share
    };
    let right = (0..people)
        .map(|_| u32::from(uniform(random) < share))
        .sum();
    ComparedCups {
        first,
        second,
        step: STEP,
        result: TastingResult::Blind {
            test,
            people,
            right,
        },
    }
}

/// A cup of a simulated shop: one or two of its ingredients in whole measures, and what no factor changes.
fn cup(random: &mut ChaCha8Rng, factors: usize) -> CupIntensity {
    let main = random.next_u32() as usize % factors;
    let other = random.next_u32() as usize % factors;
    let mut parts = vec![(main, 1.0 + f64::from(random.next_u32() % 5) / 4.0)];
    if other != main {
        parts.push((other, f64::from(random.next_u32() % 3) / 4.0));
    }
    CupIntensity {
        parts,
        rest: uniform(random) * 0.3,
    }
}

#[test]
#[expect(
    clippy::print_stdout,
    reason = "the table by number of tastings is the point"
)]
fn hidden_factors_are_covered_as_often_as_their_uncertainty_says() {
    let priors = [0.0, 0.25, 0.25, 0.15];
    let counts = [0usize, 3, 8, 20];
    let shops = 40u32;
    let mut inside = [0u32; 4];
    let mut far = [0.0; 4];
    let mut width = [0.0; 4];
    for shop in 0..shops {
        let mut random = ChaCha8Rng::seed_from_u64(u64::from(shop));
        let truth: Vec<f64> = priors.iter().map(|u| u * normal(&mut random)).collect();
        let tastings: Vec<ComparedCups> = (0..20)
            .map(|_| {
                let (first, second) = (cup(&mut random, 4), cup(&mut random, 4));
                tasted(&mut random, &truth, first, second)
            })
            .collect();
        for (slot, count) in counts.into_iter().enumerate() {
            let known = evidence(&priors, &tastings[..count]);
            assert!(known.settled, "shop {shop}, {count} tastings");
            for (factor, truth) in known.factors.iter().zip(&truth).skip(1) {
                let off = (factor.log - truth).abs();
                inside[slot] += u32::from(off <= 2.0 * factor.u);
                far[slot] += off / (3.0 * f64::from(shops));
                width[slot] += factor.u / (3.0 * f64::from(shops));
            }
            assert!(known.factors[0].u.abs() < 1e-12);
        }
    }
    let all = 3 * shops;
    println!("tastings  inside two u   mean distance   mean u");
    for (slot, count) in counts.into_iter().enumerate() {
        let share = f64::from(inside[slot]) / f64::from(all);
        println!(
            "{count:>8}  {:>11.1} %  {:>14.3}  {:>7.3}",
            share * 100.0,
            far[slot],
            width[slot]
        );
        assert!((0.90..=0.99).contains(&share), "{count} tastings: {share}");
    }
    assert!(
        far[3] < 0.6 * far[0] && width[3] < 0.6 * width[0],
        "{far:?}, {width:?}"
    );
    assert!(width.windows(2).all(|pair| pair[1] < pair[0]), "{width:?}");
}

#[test]
fn a_matched_pair_says_how_much_stronger_an_ingredient_is() {
    // B at 1½ scoops was as sweet as A at 2: B is a third stronger by the scoop.
    let matched = ComparedCups {
        first: alone(0, 2.0),
        second: alone(1, 1.5),
        step: STEP,
        result: TastingResult::Alike {
            people: 6,
            within_steps: 0.5,
        },
    };
    let known = evidence(&[0.0, 0.25], &[matched]);
    let wanted = (2.0f64 / 1.5).ln();
    // By hand: prior 0.25; one person √2/0.9539·ln 1.1 = 0.1413, six 0.0577, half a step 0.0275; weights of both.
    let seen = 0.0577f64.hypot(0.0275);
    let weight = 0.0625 / (0.0625 + seen * seen);
    assert!(
        (known.factors[1].log - weight * wanted).abs() < 0.002,
        "{known:?}"
    );
    assert!(
        (known.factors[1].u - (weight.sqrt() * seen)).abs() < 0.002,
        "{known:?}"
    );
    assert!(known.settled && known.contradictions().count() == 0);
}

#[test]
fn a_triangle_bounds_a_difference_and_has_no_direction() {
    let triangle = |right: u32| ComparedCups {
        result: TastingResult::Blind {
            test: BlindTest::Triangle,
            people: 24,
            right,
        },
        ..pair(alone(0, 1.0), alone(1, 1.0), 1, 1)
    };
    let none = evidence(&[0.0, 0.25], &[triangle(8)]);
    assert!(none.factors[1].log.abs() < 1e-9, "{none:?}");
    assert!(none.factors[1].u < 0.15, "{none:?}");
    let found = evidence(&[0.0, 0.25], &[triangle(20)]);
    assert!(found.factors[1].log.abs() < 1e-9, "{found:?}");
    assert!((found.factors[1].u - 0.25).abs() < 0.01, "{found:?}");
}

#[test]
fn the_order_of_tastings_changes_nothing_and_nobody_is_counted_twice() {
    let mut tastings = vec![
        pair(alone(0, 2.0), alone(1, 2.0), 8, 6),
        pair(alone(1, 1.5), alone(2, 2.0), 6, 2),
        pair(alone(2, 1.0), alone(0, 1.5), 5, 4),
    ];
    let priors = [0.0, 0.25, 0.25];
    let forwards = evidence(&priors, &tastings);
    tastings.reverse();
    let backwards = evidence(&priors, &tastings);
    for (a, b) in forwards.factors.iter().zip(&backwards.factors) {
        assert!(
            (a.log - b.log).abs() < 1e-4 && (a.u - b.u).abs() < 1e-4,
            "{a:?}, {b:?}"
        );
    }
    let none = evidence(&priors, &[]);
    assert!(none.settled && (none.factors[1].u - 0.25).abs() < 1e-12);
    for (with, without) in forwards.factors.iter().zip(&none.factors) {
        assert!(with.u <= without.u);
    }
}

#[test]
fn a_contradiction_is_told() {
    let tastings = [
        pair(alone(0, 1.0), alone(1, 1.0), 12, 12),
        pair(alone(0, 1.0), alone(1, 1.0), 12, 11),
        pair(alone(0, 1.0), alone(1, 1.0), 12, 0),
    ];
    let known = evidence(&[0.0, 0.25], &tastings);
    assert!(known.contradictions().any(|place| place == 2), "{known:?}");
    let agreed = evidence(&[0.0, 0.25], &tastings[..2]);
    assert_eq!(agreed.contradictions().count(), 0, "{agreed:?}");
}
