//! Three cups put in order by each person: whether their rank sums differ by more than chance, exactly.
//!
//! Each person gives the ranks 1 (the most), 2 and 3; `R` are the sums of a cup over `n` people. Under the hypothesis of no difference
//! each person's six orders are equally likely, and everything here is counted over them:
//!
//! - Friedman's `F = 12/(n·k·(k + 1))·ΣR² − 3·n·(k + 1)`, with `k` = 3 cups `Σ(R − 2n)²/n`, where no order was predicted (ISO 8587;
//!   Friedman, J. Am. Stat. Assoc. 32, 1937: 675);
//! - Page's `L = Σ j·R_j` where the order was predicted before the tasting, `j` = 1 for the cup that is to have the most (Page, J. Am.
//!   Stat. Assoc. 58, 1963: 216);
//! - the least significant difference of two rank sums, taken once the cups as a whole differ: the smallest that two sums reach with
//!   no more than the probability of the level. ISO 8587 has `z·√(n·k·(k + 1)/6)` for it, its limit for large panels.
//!
//! (Formulas: values from memory; the tests hold them to the tables that Friedman and Page published.)
//!
//! Limitations: a person gives three different ranks (ties are not offered); above [`MOST_EXACT`] people `F` is taken to be
//! chi-squared with two degrees of freedom.

use std::collections::BTreeMap;

use super::distributions::{normal_below, normal_density};
use super::power::Effect;
use super::serving_order::Sample;
use crate::balance::number::{crossing, integral};

/// The cups as one person puts them, the most first.
pub type CupOrder = [Sample; 3];

/// Most people for whom `F` is counted order by order.
pub const MOST_EXACT: u32 = 100;

use Sample::{A, B, C};

/// The orders that a person can give.
pub const CUP_ORDERS: [CupOrder; 6] = [
    [A, B, C],
    [A, C, B],
    [B, A, C],
    [B, C, A],
    [C, A, B],
    [C, B, A],
];

/// How likely each of the six orders is, as in [`CUP_ORDERS`].
pub type OrderShares = [f64; 6];

/// What somebody who tastes no difference answers.
const GUESSING: OrderShares = [1.0 / 6.0; 6];

/// What people answered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct RankSums {
    /// People, each counted once.
    pub people: u32,
    /// The sum of the ranks of A, B and C: small for the cup with the most.
    pub sums: [u32; 3],
    /// Further answers of the same people, which are not counted.
    pub repeated: u32,
}

impl RankSums {
    /// The sums of the first answer of each person.
    pub fn of<Person: Ord>(answers: impl IntoIterator<Item = (Person, CupOrder)>) -> Self {
        let mut known = std::collections::BTreeSet::new();
        let mut found = Self::default();
        for (person, order) in answers {
            if !known.insert(person) {
                found.repeated += 1;
                continue;
            }
            found.people += 1;
            for (rank, cup) in (1..).zip(order) {
                found.sums[cup as usize] += rank;
            }
        }
        found
    }

    /// Friedman's `F`: 0 where all sums are equal. 0 without people.
    pub fn friedman(&self) -> f64 {
        if self.people == 0 {
            return 0.0;
        }
        f64::from(self.squares()) / f64::from(self.people)
    }

    /// `Σ(R − 2n)²`.
    fn squares(&self) -> u32 {
        let each = self.sums.iter();
        each.map(|sum| sum.abs_diff(2 * self.people).pow(2)).sum()
    }

    /// Page's `L` of an order that was predicted.
    pub fn page(&self, predicted: CupOrder) -> u32 {
        let each = (1..).zip(predicted);
        each.map(|(place, cup)| place * self.sums[cup as usize])
            .sum()
    }
}

/// How rank sums of `n` people are distributed when their orders have these shares.
///
/// A state is how far the sums of A and B are from `2n`; that of C follows. After each person the probabilities of all states are
/// those of the states before, moved by each order.
struct Spread {
    people: u32,
    shares: OrderShares,
    /// By A, then B, from `−n` to `n`.
    of: Vec<f64>,
}

impl Spread {
    fn new(shares: OrderShares) -> Self {
        Self {
            people: 0,
            shares,
            of: vec![1.0],
        }
    }

    fn of(shares: OrderShares, people: u32) -> Self {
        let mut spread = Self::new(shares);
        (0..people).for_each(|_| spread.one_more());
        spread
    }

    fn one_more(&mut self) {
        let (width, wider) = (self.width(), self.width() + 2);
        let mut next = vec![0.0; wider * wider];
        for (order, share) in CUP_ORDERS.iter().zip(self.shares) {
            // The rank less 2, plus 1 for the wider table.
            let place = |cup: Sample| order.iter().position(|one| *one == cup).unwrap_or_default();
            let (a, b) = (place(A), place(B));
            for row in 0..width {
                for column in 0..width {
                    next[(row + a) * wider + column + b] += share * self.of[row * width + column];
                }
            }
        }
        self.people += 1;
        self.of = next;
    }

    fn width(&self) -> usize {
        2 * self.people as usize + 1
    }

    /// The probabilities by `Σ(R − 2n)²`.
    fn by_squares(&self) -> BTreeMap<u32, f64> {
        let mut found = BTreeMap::new();
        let (width, middle) = (self.width(), i64::from(self.people));
        for (row, of_row) in (0_i64..).zip(self.of.chunks(width)) {
            for (column, probability) in (0_i64..).zip(of_row).filter(|(_, one)| **one > 0.0) {
                let (a, b) = (row - middle, column - middle);
                let squares = u32::try_from(2 * (a * a + a * b + b * b)).unwrap_or(u32::MAX);
                *found.entry(squares).or_insert(0.0) += probability;
            }
        }
        found
    }

    /// The probability that `Σ(R − 2n)²` is at least so much.
    fn at_least(&self, squares: u32) -> f64 {
        let more = self.by_squares();
        more.range(squares..)
            .map(|(_, one)| one)
            .sum::<f64>()
            .min(1.0)
    }

    /// The smallest `Σ(R − 2n)²` that is reached with at most this probability, and that probability.
    fn first_within(&self, level: f64) -> Option<(u32, f64)> {
        rarest(level, self.by_squares().into_iter().rev())
    }
}

/// The probability of an `F` at least as large, by guessing alone.
pub fn friedman_chance(sums: &RankSums) -> f64 {
    if sums.people > MOST_EXACT {
        return (-sums.friedman() / 2.0).exp();
    }
    Spread::of(GUESSING, sums.people).at_least(sums.squares())
}

/// What rank sums must reach.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RanksNeeded {
    /// At least this `F`.
    pub friedman: f64,
    /// The probability of that much or more by guessing alone.
    pub chance: f64,
}

/// The `F` from which so many people show a difference at a level; `None` where none does, and for more than [`MOST_EXACT`] people.
pub fn ranks_needed(people: u32, level: f64) -> Option<RanksNeeded> {
    if people == 0 || people > MOST_EXACT {
        return None;
    }
    let (squares, chance) = Spread::of(GUESSING, people).first_within(level)?;
    Some(RanksNeeded {
        friedman: f64::from(squares) / f64::from(people),
        chance,
    })
}

/// The smallest difference of two rank sums that guessing reaches with at most the probability of the level, in either direction;
/// `None` where none is rare enough.
pub fn least_rank_difference(people: u32, level: f64) -> Option<u32> {
    // One person's difference of two ranks: of six orders one has −2, two −1, two 1, one 2.
    let of_one = [1.0, 2.0, 0.0, 2.0, 1.0].map(|ways: f64| ways / 6.0);
    let spread = sums_of(&of_one, people);
    let middle = 2 * people as usize;
    let either_way = (1..=middle).rev().map(|far| {
        let probability = spread[middle + far] + spread[middle - far];
        (far, probability)
    });
    let (least, _) = rarest(level, either_way)?;
    u32::try_from(least).ok()
}

/// The last of some values, of which the rarest comes first, that is reached with at most a probability, and with which.
fn rarest<T>(level: f64, values: impl Iterator<Item = (T, f64)>) -> Option<(T, f64)> {
    let tails = values.scan(0.0, |tail, (value, probability)| {
        *tail += probability;
        Some((value, *tail))
    });
    tails.take_while(|(_, tail)| *tail <= level).last()
}

/// How the sum of so many independent numbers is distributed, each 0, 1, 2 … with these probabilities.
fn sums_of(of_one: &[f64], count: u32) -> Vec<f64> {
    let mut sums = vec![1.0];
    for _ in 0..count {
        let mut next = vec![0.0; sums.len() + of_one.len() - 1];
        for (at, probability) in sums.iter().enumerate() {
            for (more, one) in of_one.iter().enumerate() {
                next[at + more] += probability * one;
            }
        }
        sums = next;
    }
    sums
}

/// How far one person's `L` lies above 10, the least.
fn page_of_one(shares: OrderShares) -> [f64; 5] {
    let mut of_one = [0.0; 5];
    for (order, share) in CUP_ORDERS.iter().zip(shares) {
        let sums = RankSums::of([((), *order)]);
        of_one[(sums.page([A, B, C]) - LEAST_PAGE) as usize] += share;
    }
    of_one
}

/// The least and the largest `L` of one person.
const LEAST_PAGE: u32 = 10;
const MOST_PAGE: u32 = 14;

/// The probability of an `L` at least as large by guessing alone. It does not depend on the order that was predicted.
pub fn page_chance(people: u32, page: u32) -> f64 {
    page_at_least(people, page, GUESSING)
}

/// The probability of an `L` at least as large when orders have these shares.
fn page_at_least(people: u32, page: u32, shares: OrderShares) -> f64 {
    let above = page.saturating_sub(LEAST_PAGE * people) as usize;
    let spread = sums_of(&page_of_one(shares), people);
    spread.iter().skip(above).sum::<f64>().min(1.0)
}

/// The `L` from which so many people show the predicted order at a level, and the probability of that by guessing; `None` where
/// none does.
pub fn page_needed(people: u32, level: f64) -> Option<(u32, f64)> {
    let spread = sums_of(&page_of_one(GUESSING), people);
    let (below, chance) = rarest(level, (0_u32..).zip(spread.into_iter().rev()))?;
    Some((MOST_PAGE * people - below, chance))
}

/// How likely each order is when cups are so different: A has the most, C the least, B is halfway between.
///
/// - A share of people taste the order, and all others guess.
/// - `d′` lies between A and C: perceptions are independent and normal with the standard deviation 1, and
///   `P(x > y > z) = ∫ φ(t − μ_y)·[1 − Φ(t − μ_x)]·Φ(t − μ_z) dt`.
pub fn order_shares(effect: Effect) -> OrderShares {
    match effect {
        Effect::Share(share) => {
            let share = share.clamp(0.0, 1.0);
            let mut shares = GUESSING.map(|one| (1.0 - share) * one);
            shares[0] += share;
            shares
        }
        Effect::DPrime(d_prime) => {
            let d_prime = d_prime.clamp(0.0, LARGEST_D_PRIME);
            let mean = |cup: Sample| match cup {
                A => d_prime / 2.0,
                B => 0.0,
                C => -d_prime / 2.0,
            };
            CUP_ORDERS.map(|[most, middle, least]| between(mean(most), mean(middle), mean(least)))
        }
    }
}

/// A `d′` beyond which every order is right, to the last digits that a count of people can show.
const LARGEST_D_PRIME: f64 = 16.0;
/// How far the integral goes on either side, in standard deviations, and in how many steps.
const FAR: f64 = 8.0;
const STEPS: u32 = 400;

/// `P(x > y > z)`.
fn between(x: f64, y: f64, z: f64) -> f64 {
    integral((-FAR, FAR), STEPS, |from_y| {
        let at = y + from_y;
        normal_density(from_y) * normal_below(x - at) * normal_below(at - z)
    })
}

/// Whether an order was predicted before the tasting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Prediction {
    /// It was: Page's test.
    Order,
    /// Any cup may have the most: Friedman's test.
    None,
}

/// The probability that so many people show a difference between cups that are so different; 0 where no result does. The predicted
/// order is the true one. `None` where it is not worked out, for more than [`MOST_EXACT`] people and no prediction.
pub fn ranking_power(
    people: u32,
    level: f64,
    effect: Effect,
    prediction: Prediction,
) -> Option<f64> {
    let shares = order_shares(effect);
    Some(match prediction {
        Prediction::None if people > MOST_EXACT => return None,
        Prediction::None => match Spread::of(GUESSING, people).first_within(level) {
            Some((squares, _)) if people > 0 => Spread::of(shares, people).at_least(squares),
            _ => 0.0,
        },
        Prediction::Order => page_power(people, level, shares),
    })
}

fn page_power(people: u32, level: f64, shares: OrderShares) -> f64 {
    page_needed(people, level).map_or(0.0, |(page, _)| page_at_least(people, page, shares))
}

/// The smallest panel that shows a difference often enough, with that probability; `None` where more than [`MOST_EXACT`] people are
/// needed.
pub fn least_ranking_panel(
    level: f64,
    effect: Effect,
    wanted: f64,
    prediction: Prediction,
) -> Option<(u32, f64)> {
    let shares = order_shares(effect);
    let (mut guessing, mut tasting) = (Spread::new(GUESSING), Spread::new(shares));
    (1..=MOST_EXACT).find_map(|people| {
        let power = match prediction {
            Prediction::Order => page_power(people, level, shares),
            Prediction::None => {
                guessing.one_more();
                tasting.one_more();
                let needed = guessing.first_within(level);
                needed.map_or(0.0, |(squares, _)| tasting.at_least(squares))
            }
        };
        (power >= wanted).then_some((people, power))
    })
}

/// Most people for whom the smallest share is looked for: of more, every trial takes long.
const MOST_FOR_SHARE: u32 = 40;

/// The smallest share of people who taste the order that a panel shows often enough; `None` where it shows none, and for more than
/// forty people.
pub fn shown_order_share(
    people: u32,
    level: f64,
    wanted: f64,
    prediction: Prediction,
) -> Option<f64> {
    if people > MOST_FOR_SHARE {
        return None;
    }
    let power = |share: f64| {
        ranking_power(people, level, Effect::Share(share), prediction).unwrap_or_default()
    };
    (power(1.0) >= wanted).then(|| crossing((0.0, 1.0), wanted, power))
}
