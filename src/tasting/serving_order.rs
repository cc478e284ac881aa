//! Serving orders: which cup stands where for whom, balanced and shuffled from a stated seed, under three-digit codes.
//!
//! Every order of a design is served once before one is served again, so that each place and each neighbour comes equally often
//! (ISO 4120:2021, 8; ISO 10399:2017, 8; ISO 5495:2005, 8; value from memory). The generator is `ChaCha8`, whose numbers are the same
//! everywhere for a seed; shuffling is done here, because a library may change how it shuffles.

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};

/// A sample that is tasted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Sample {
    /// The first: the standard, where there is one.
    A,
    /// The second.
    B,
    /// The third, of a ranking.
    C,
}

/// What is put before each person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum ServingDesign {
    /// AAB, ABA, BAA, BBA, BAB, ABB.
    Triangle,
    /// The first sample as the reference of everybody, which is the one they know; AB or BA.
    DuoTrioKnownReference,
    /// Either sample as the reference; AB or BA.
    DuoTrio,
    /// AB or BA.
    Pair,
    /// Three samples in each of their six orders, in which each stands before and behind each other equally often.
    Ranking,
}

/// A cup on the tray.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cup {
    /// What stands on it, 100 to 999.
    pub code: u16,
    /// What is in it.
    pub sample: Sample,
}

/// What one person gets.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Serving {
    /// The person, counted from 1.
    pub person: u32,
    /// What is in the cup marked as the reference.
    pub reference: Option<Sample>,
    /// The cups in the order of tasting.
    pub cups: Vec<Cup>,
}

/// More cups than there are codes of three digits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooManyCups {
    /// How many people there are codes for.
    pub most: u32,
}

/// The smallest and the largest code.
const CODES: (u16, u16) = (100, 999);

use Sample::{A, B, C};

/// The orders of a design: the reference and the cups.
type Order = (Option<Sample>, &'static [Sample]);

const TRIANGLE: [Order; 6] = [
    (None, &[A, A, B]),
    (None, &[A, B, A]),
    (None, &[B, A, A]),
    (None, &[B, B, A]),
    (None, &[B, A, B]),
    (None, &[A, B, B]),
];
const DUO_TRIO_KNOWN: [Order; 2] = [(Some(A), &[A, B]), (Some(A), &[B, A])];
const DUO_TRIO: [Order; 4] = [
    (Some(A), &[A, B]),
    (Some(A), &[B, A]),
    (Some(B), &[A, B]),
    (Some(B), &[B, A]),
];
const PAIR: [Order; 2] = [(None, &[A, B]), (None, &[B, A])];
const RANKING: [Order; 6] = [
    (None, &[A, B, C]),
    (None, &[A, C, B]),
    (None, &[B, A, C]),
    (None, &[B, C, A]),
    (None, &[C, A, B]),
    (None, &[C, B, A]),
];

impl Sample {
    /// All of them, in the order of their letters.
    pub const ALL: [Self; 3] = [A, B, C];

    /// Its letter.
    pub const fn letter(self) -> &'static str {
        match self {
            Self::A => "A",
            Self::B => "B",
            Self::C => "C",
        }
    }
}

impl ServingDesign {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::Triangle,
        Self::DuoTrio,
        Self::DuoTrioKnownReference,
        Self::Pair,
        Self::Ranking,
    ];

    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Triangle => "triangle",
            Self::DuoTrio => "duo-trio",
            Self::DuoTrioKnownReference => "duo-trio-known",
            Self::Pair => "pair",
            Self::Ranking => "ranking",
        }
    }

    /// Its orders, each of which is served equally often.
    pub const fn orders(self) -> &'static [Order] {
        match self {
            Self::Triangle => &TRIANGLE,
            Self::DuoTrioKnownReference => &DUO_TRIO_KNOWN,
            Self::DuoTrio => &DUO_TRIO,
            Self::Pair => &PAIR,
            Self::Ranking => &RANKING,
        }
    }

    /// How many people make every order come equally often: this many, or a multiple of it.
    #[expect(clippy::cast_possible_truncation, reason = "six orders at most")]
    pub const fn balanced_in(self) -> u32 {
        self.orders().len() as u32
    }

    /// How many different samples it serves.
    pub const fn samples(self) -> usize {
        match self {
            Self::Ranking => 3,
            _ => 2,
        }
    }

    /// How many people there are codes for.
    #[expect(clippy::cast_possible_truncation, reason = "three cups at most")]
    pub const fn most_people(self) -> u32 {
        let cups = self.orders()[0].1.len() as u32;
        (CODES.1 - CODES.0 + 1) as u32 / cups
    }
}

/// The servings of so many people. Equal seeds give equal servings.
pub fn servings(
    design: ServingDesign,
    people: u32,
    seed: u64,
) -> Result<Vec<Serving>, TooManyCups> {
    let most = design.most_people();
    if people > most {
        return Err(TooManyCups { most });
    }
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    let mut codes: Vec<u16> = (CODES.0..=CODES.1).collect();
    shuffle(&mut codes, &mut random);
    let mut codes = codes.into_iter();
    let mut block: Vec<Order> = Vec::new();
    let servings = (1..=people).map(|person| {
        if block.is_empty() {
            block = design.orders().to_vec();
            shuffle(&mut block, &mut random);
        }
        let (reference, samples) = block.pop().unwrap_or((None, &[]));
        // There are codes for all: the number of people was looked at.
        let cups = samples.iter().zip(codes.by_ref());
        Serving {
            person,
            reference,
            cups: cups
                .map(|(sample, code)| Cup {
                    code,
                    sample: *sample,
                })
                .collect(),
        }
    });
    Ok(servings.collect())
}

impl Serving {
    /// The code of the right answer: of the odd cup, or of the one that is as the reference. `None` where no answer is right or
    /// wrong by itself, as in a pair.
    pub fn right_code(&self) -> Option<u16> {
        let is_right = |cup: &&Cup| {
            if let Some(reference) = self.reference {
                return cup.sample == reference;
            }
            let same = self.cups.iter();
            same.filter(|other| other.sample == cup.sample).count() == 1
        };
        let is_choice = self.reference.is_some() || self.cups.iter().filter(is_right).count() == 1;
        let right = self.cups.iter().find(is_right)?;
        is_choice.then_some(right.code)
    }
}

/// Puts items into an order, each as likely as every other (Fisher & Yates, as in Knuth, Algorithm P; value from memory).
fn shuffle<Item>(items: &mut [Item], random: &mut ChaCha8Rng) {
    for last in (1..items.len()).rev() {
        items.swap(last, below(last as u64 + 1, random));
    }
}

/// A whole number below `end`, each equally likely: numbers that would favour some are drawn again.
fn below(end: u64, random: &mut ChaCha8Rng) -> usize {
    let fair = u64::MAX - u64::MAX % end;
    loop {
        let drawn = random.next_u64();
        if drawn < fair {
            return usize::try_from(drawn % end).unwrap_or_default();
        }
    }
}
