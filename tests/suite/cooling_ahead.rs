//! Published cups whose later readings are told from their first ones, by all that is known without their source.

#![allow(
    clippy::print_stdout,
    reason = "the table of what was told and what came is what one wants to read"
)]

use evensip::balance::{
    CupPrior, LEAST_READINGS, MeasuredCooling, NOTED_ROOM, PUBLISHED_CUPS, ReadCup,
};
use evensip::book::CoolingReading;
use evensip::quantity::Uncertain;
use serde::Deserialize;

#[derive(Clone, Copy, Debug, PartialEq, Deserialize)]
enum At {
    /// In the drink.
    Drink,
    /// On the side of the wall that the drink touches.
    InnerWall,
    /// On the side of the wall that the hand touches: no temperature of a drink.
    OuterWall,
}

#[derive(Deserialize)]
struct Cup {
    source: String,
    name: String,
    #[expect(dead_code, reason = "for whoever reads the file")]
    published: String,
    room: Option<f64>,
    millilitres: Option<f64>,
    covered: bool,
    at: At,
    readings: Vec<(f64, f64)>,
}

/// What a cup holds that is not stated, ml: a usual one, 80 % full.
const USUAL_CAPACITY: f64 = 312.5;

/// A room that is not stated, °C.
const ROOM_NOT_STATED: Uncertain = Uncertain {
    value: 22.0,
    u: 2.0,
};

/// Standard uncertainty of a reading, K.
const READING: f64 = 0.3;

/// How many standard uncertainties an interval reaches to either side, and the part of readings that lie outside of it.
const COVERAGE: f64 = 2.0;
const OUTSIDE: f64 = 0.0455;

impl Cup {
    fn read(&self) -> ReadCup {
        ReadCup {
            capacity: self.millilitres.map_or(USUAL_CAPACITY, |held| held / 0.8),
            millilitres: self.millilitres,
            covered: self.covered,
            room: self.room.map_or(ROOM_NOT_STATED, |value| Uncertain {
                value,
                u: NOTED_ROOM,
            }),
        }
    }

    /// From the highest reading on: before it, the cup was being filled.
    fn readings(&self) -> Vec<CoolingReading> {
        let highest = |best: usize, at: usize| {
            if self.readings[at].1 > self.readings[best].1 {
                at
            } else {
                best
            }
        };
        let begin = (0..self.readings.len()).fold(0, highest);
        let later = self.readings[begin..].iter();
        later
            .map(|&(minutes, celsius)| CoolingReading { minutes, celsius })
            .collect()
    }
}

fn cups() -> Vec<Cup> {
    ron::from_str(include_str!("../published-cases/cooling.ron"))
        .expect("the case file is well formed")
}

/// The table in the code is what the readings give, with hardly anything known beforehand.
#[test]
fn the_published_cups_of_the_code_are_those_of_their_readings() {
    let mut cups = cups();
    cups.retain(|cup| cup.at != At::OuterWall);
    let mut misses = Vec::new();
    for cup in &cups {
        let fitted = MeasuredCooling::of(&cup.read(), &cup.readings(), &CupPrior::open())
            .expect("a published cup cools");
        let known = PUBLISHED_CUPS
            .iter()
            .find(|known| known.source == cup.source && known.name == cup.name)
            .expect("every published cup is in the table");
        let words = fitted
            .cup_parameters()
            .map(|(value, u)| format!("{value:.3} ×/÷ {:.2}", u.exp()));
        println!(
            "{}, {}: wall {} W/(m² K), evaporation {} W/(m² K), {} K in {} min; largest miss {:.2} K",
            cup.source,
            cup.name,
            words[0],
            words[1],
            words[2],
            words[3],
            fitted.largest_miss()
        );
        for (at, ((value, u), known)) in fitted
            .cup_parameters()
            .into_iter()
            .zip(known.parameters())
            .enumerate()
        {
            let open = u > 0.8 || (at == 1 && cup.covered);
            let agree = match known {
                Some(known) => !open && (value / known - 1.0).abs() < 0.02,
                None => open,
            };
            if !agree {
                misses.push((&cup.name, at, value, known));
            }
        }
    }
    assert!(misses.is_empty(), "{misses:?}");
}

/// What was told of the later readings of a cup, and what they were.
struct Told {
    name: String,
    readings: usize,
    inside: f64,
    worst: f64,
    median_u: f64,
    score: f64,
    /// How far each reading was off, in standard uncertainties.
    off: Vec<f64>,
    /// Scores of one assumed constant, by how well it is said to be known.
    by_constant: [f64; ASSUMED.len()],
}

/// A constant that is assumed for every cup, 1/min, and how well it may be said to be known, as a part of it: as well as a
/// stated time constant, and as cups differ.
const CONSTANT: f64 = 0.025;
const ASSUMED: [f64; 3] = [0.15, 0.4, 0.7];

/// Interval score of Gneiting & Raftery 2007, section 6.2, K: the width, and what lies outside of it times 2/α.
fn interval_score(told: Uncertain, came: f64) -> f64 {
    let reach = COVERAGE * told.u;
    let outside = ((came - told.value).abs() - reach).max(0.0);
    2.0 * reach + 2.0 / OUTSIDE * outside
}

fn mean(values: impl IntoIterator<Item = f64>) -> f64 {
    let values: Vec<f64> = values.into_iter().collect();
    values.iter().sum::<f64>() / values.len() as f64
}

/// Tells the later readings of a cup from its first ones, knowing the published cups of all other sources.
fn told(cup: &Cup, first: usize) -> Option<Told> {
    let readings = cup.readings();
    let (known, later) = readings.split_at_checked(first)?;
    if later.is_empty() {
        return None;
    }
    let prior = CupPrior::without(&cup.source);
    let read = cup.read();
    let measured = MeasuredCooling::of(&read, known, &prior).expect("a published cup cools");
    let with_reading = |told: Uncertain| Uncertain {
        u: told.u.hypot(READING),
        ..told
    };
    let told: Vec<(Uncertain, f64)> = later
        .iter()
        .map(|reading| {
            (
                with_reading(measured.temperature_at(reading.minutes)),
                reading.celsius,
            )
        })
        .collect();
    let off: Vec<f64> = told
        .iter()
        .map(|(told, came)| (told.value - came) / told.u)
        .collect();
    let mut us: Vec<f64> = told.iter().map(|(told, _)| told.u).collect();
    us.sort_by(f64::total_cmp);
    let last = known[first - 1];
    let by_constant = ASSUMED.map(|part| {
        mean(later.iter().map(|reading| {
            let ways = CONSTANT * (reading.minutes - last.minutes);
            let excess = (last.celsius - read.room.value) * (-ways).exp();
            let told = with_reading(Uncertain {
                value: read.room.value + excess,
                u: part * ways * excess,
            });
            interval_score(told, reading.celsius)
        }))
    });
    Some(Told {
        name: format!("{}, {}", cup.source, cup.name),
        readings: later.len(),
        inside: mean(
            off.iter()
                .map(|off| f64::from(u8::from(off.abs() <= COVERAGE))),
        ),
        worst: off.iter().map(|off| off.abs()).fold(0.0, f64::max),
        median_u: us[us.len() / 2],
        score: mean(told.iter().map(|(told, came)| interval_score(*told, *came))),
        by_constant,
        off,
    })
}

/// How far later readings of the published cups were off, in standard uncertainties, told from the first ones and the cups of all
/// other sources: as many of each cup, evenly over its time, since the readings of a cup are off together.
pub(crate) fn off_ahead(first: usize) -> Vec<f64> {
    const OF_EACH: usize = 4;
    let mut cups = cups();
    cups.retain(|cup| cup.at != At::OuterWall);
    let told = cups.iter().filter_map(|cup| told(cup, first));
    told.flat_map(|told| {
        let last = told.off.len() - 1;
        (1..=OF_EACH).map(move |part| told.off[last * part / OF_EACH])
    })
    .collect()
}

#[test]
fn later_readings_lie_where_the_first_ones_and_other_cups_have_them() {
    let all = cups();
    let (drinks, walls): (Vec<&Cup>, Vec<&Cup>) =
        all.iter().partition(|cup| cup.at != At::OuterWall);
    for first in [LEAST_READINGS, 4, 6, 8] {
        println!(
            "\nfrom the first {first} readings     later  inside  worst/u  median u, K   score, K   \
             score of {CONSTANT}/min ± 15, 40, 70 %"
        );
        let tell = |cups: &[&Cup]| -> Vec<Told> {
            let told: Vec<Told> = cups.iter().filter_map(|cup| told(cup, first)).collect();
            for told in &told {
                let [close, middle, wide] = told.by_constant;
                println!(
                    "{:40} {:5}  {:4.0} %  {:6.2}  {:8.2}  {:12.1}  {close:10.1} {middle:6.1} {wide:6.1}",
                    told.name,
                    told.readings,
                    100.0 * told.inside,
                    told.worst,
                    told.median_u,
                    told.score
                );
            }
            told
        };
        let told = tell(&drinks);
        let met = told.iter().filter(|told| told.inside >= 0.9).count();
        let readings: usize = told.iter().map(|told| told.readings).sum();
        let inside: f64 = told
            .iter()
            .map(|told| told.inside * told.readings as f64)
            .sum::<f64>()
            / readings as f64;
        let score = mean(told.iter().map(|told| told.score));
        println!(
            "{met} of {} cups, {:.0} % of readings, score {score:.1} K",
            told.len(),
            100.0 * inside
        );
        println!("outer walls, which are no drinks and are not judged:");
        tell(&walls);
        assert!(met as f64 >= 0.9 * told.len() as f64, "{met} cups");
        assert!(inside >= 0.9, "{inside}");
        for (at, part) in ASSUMED.iter().enumerate() {
            let constant = mean(told.iter().map(|told| told.by_constant[at]));
            assert!(score < constant, "{score} against {constant} at {part}");
        }
    }
}
