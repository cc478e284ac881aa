//! The least of a linear cost over a box under linear limits: a small linear program, and a bound that holds whatever rounding did.
//!
//! The dual simplex method for bounded variables (Lemke 1954; the textbook form with bound flips): it starts with every limit
//! slack and each variable at its cheaper end, which is dual feasible as it stands, and mends one broken limit a round. The
//! sizes are those of a drink, so the dictionary is dense and lies on the stack.
//!
//! **Certificate.** What is returned is not the simplex's own value but the Lagrangean bound of its multipliers `λ ≥ 0`:
//!
//! `cost·x ≥ cost·x + λ·(rows·x − most) ≥ Σ least over the box`, for every `x` that keeps the limits,
//!
//! evaluated anew from the given numbers. It holds for any `λ`, also when the rounds run out or a pivot was inexact; a
//! poor `λ` makes it lower, never wrong. That no point keeps the limits is certified alike: `λ·(rows·x − most) > 0` all over the box.

use super::MOST_VARIABLES;

/// Most limits of one program; a caller may leave any out, which makes the bound lower and never wrong.
pub const MOST_LIMITS: usize = 40;

/// Rounds after which the multipliers are taken as they are.
const MOST_ROUNDS: usize = 80;

/// A limit counts as broken beyond this; limits are to be scaled to about one.
const BROKEN: f64 = 1e-8;

/// A limit that all points of a box break by this much is broken, whatever rounding did.
const SURELY_BROKEN: f64 = 1e-6;

/// A pivot below this is not trusted.
const LEAST_PIVOT: f64 = 1e-9;

/// Coefficients of every variable.
pub type Coefficients = [f64; MOST_VARIABLES];

/// `cost·x` over the box `low..=high`, where every limit `(row, most)` keeps `row·x ≤ most`.
#[derive(Clone, Copy, Debug)]
pub struct LinearProgram<'program> {
    /// Cost of a unit of each variable.
    pub cost: &'program Coefficients,
    /// The limits; those after [`MOST_LIMITS`] are left out.
    pub limits: &'program [(&'program Coefficients, f64)],
    /// The least each variable may be.
    pub low: &'program [f64],
    /// The most.
    pub high: &'program [f64],
}

/// A variable or the slack of a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Name {
    Variable(usize),
    Slack(usize),
}

/// Every basic one as a form of those that stand at an end.
struct Dictionary {
    variables: usize,
    limits: usize,
    /// Those at an end, with the end and whether it is the upper one.
    out: [(Name, bool); MOST_VARIABLES],
    basic: [Name; MOST_LIMITS],
    value: [f64; MOST_LIMITS],
    per: [Coefficients; MOST_LIMITS],
    /// Slope of the cost along each that stands at an end.
    slope: Coefficients,
}

/// What a round of the method came to.
enum Round {
    Mended,
    Settled,
    /// No point keeps the limit of this row of the dictionary, which is short of an end (`true`: of its lower one).
    Impossible(usize, bool),
}

impl Dictionary {
    /// Multipliers of the limits whose slack stands at its end.
    fn multipliers(&self, of: impl Fn(usize) -> f64) -> [f64; MOST_LIMITS] {
        let mut multipliers = [0.0; MOST_LIMITS];
        for (at, (name, _)) in self.out[..self.variables].iter().enumerate() {
            if let Name::Slack(limit) = name {
                multipliers[*limit] = of(at).max(0.0);
            }
        }
        multipliers
    }
}

impl LinearProgram<'_> {
    /// A number that no point of the box that keeps the limits costs less than; infinite when none keeps them. `point` is
    /// left where the cost is least as far as it was found, within the box.
    pub fn bound(&self, point: &mut [f64]) -> f64 {
        let mut dictionary = self.start();
        let mut impossible = None;
        for _ in 0..MOST_ROUNDS {
            match self.round(&mut dictionary) {
                Round::Mended => {}
                Round::Settled => break,
                Round::Impossible(row, below) => {
                    impossible = Some((row, below));
                    break;
                }
            }
        }
        self.leave(&dictionary, point);
        if let Some((row, below)) = impossible {
            let sign = if below { -1.0 } else { 1.0 };
            let mut multipliers = dictionary.multipliers(|at| sign * dictionary.per[row][at]);
            if let Name::Slack(limit) = dictionary.basic[row] {
                multipliers[limit] = 1.0;
            }
            if self.least(&[0.0; MOST_VARIABLES], &multipliers) > SURELY_BROKEN {
                return f64::INFINITY;
            }
        }
        self.least(
            self.cost,
            &dictionary.multipliers(|at| dictionary.slope[at]),
        )
    }

    /// The least of `cost·x + λ·(rows·x − most)` over the box.
    fn least(&self, cost: &Coefficients, multipliers: &[f64; MOST_LIMITS]) -> f64 {
        let mut slopes = *cost;
        let mut bound = 0.0;
        for ((row, most), multiplier) in self.limits.iter().zip(multipliers) {
            if *multiplier > 0.0 {
                bound -= multiplier * most;
                for (slope, per) in slopes.iter_mut().zip(*row).take(self.low.len()) {
                    *slope += multiplier * per;
                }
            }
        }
        for ((slope, low), high) in slopes.iter().zip(self.low).zip(self.high) {
            bound += (slope * low).min(slope * high);
        }
        bound
    }

    fn start(&self) -> Dictionary {
        let (variables, limits) = (self.low.len(), self.limits.len().min(MOST_LIMITS));
        let mut dictionary = Dictionary {
            variables,
            limits,
            out: [(Name::Variable(0), false); MOST_VARIABLES],
            basic: [Name::Slack(0); MOST_LIMITS],
            value: [0.0; MOST_LIMITS],
            per: [[0.0; MOST_VARIABLES]; MOST_LIMITS],
            slope: *self.cost,
        };
        for at in 0..variables {
            dictionary.out[at] = (Name::Variable(at), self.cost[at] < 0.0);
        }
        for (at, (row, most)) in self.limits.iter().enumerate().take(limits) {
            dictionary.basic[at] = Name::Slack(at);
            let mut value = *most;
            for variable in 0..variables {
                dictionary.per[at][variable] = -row[variable];
                value -= row[variable] * self.end(dictionary.out[variable]);
            }
            dictionary.value[at] = value;
        }
        dictionary
    }

    fn ends(&self, name: Name) -> (f64, f64) {
        match name {
            Name::Variable(at) => (self.low[at], self.high[at]),
            Name::Slack(_) => (0.0, f64::INFINITY),
        }
    }

    fn end(&self, (name, upper): (Name, bool)) -> f64 {
        let (low, high) = self.ends(name);
        if upper { high } else { low }
    }

    /// Mends the row that is furthest from its ends.
    fn round(&self, dictionary: &mut Dictionary) -> Round {
        let mut worst: Option<(usize, f64, bool)> = None;
        for at in 0..dictionary.limits {
            let (low, high) = self.ends(dictionary.basic[at]);
            let value = dictionary.value[at];
            let (short, below) = if value < low {
                (low - value, true)
            } else {
                (value - high, false)
            };
            if short > BROKEN && worst.is_none_or(|(_, most, _)| short > most) {
                worst = Some((at, short, below));
            }
        }
        let Some((row, mut short, below)) = worst else {
            return Round::Settled;
        };
        let sign = if below { 1.0 } else { -1.0 };
        // Those that can move it towards its end, cheapest first. One that its own other end stops before it suffices is put
        // there, and the next one goes on; the first that suffices takes the row's place.
        let mut flipped = [false; MOST_VARIABLES];
        loop {
            let mut choice: Option<(usize, f64, f64)> = None;
            for (at, (name, upper)) in dictionary.out[..dictionary.variables].iter().enumerate() {
                let (low, high) = self.ends(*name);
                let towards = sign * dictionary.per[row][at] * if *upper { -1.0 } else { 1.0 };
                if flipped[at] || towards <= LEAST_PIVOT || high <= low {
                    continue;
                }
                let price = dictionary.slope[at].abs() / towards;
                let better = choice.is_none_or(|(_, least, pivot)| {
                    price < least - 1e-12 || (price <= least + 1e-12 && towards > pivot)
                });
                if better {
                    choice = Some((at, price, towards));
                }
            }
            let Some((column, _, towards)) = choice else {
                return Round::Impossible(row, below);
            };
            let (low, high) = self.ends(dictionary.out[column].0);
            if (high - low) * towards < short {
                short -= (high - low) * towards;
                flipped[column] = true;
                self.flip(dictionary, column);
                continue;
            }
            self.pivot(dictionary, row, column, below);
            return Round::Mended;
        }
    }

    /// Puts one at its other end.
    fn flip(&self, dictionary: &mut Dictionary, column: usize) {
        let before = self.end(dictionary.out[column]);
        dictionary.out[column].1 = !dictionary.out[column].1;
        let by = self.end(dictionary.out[column]) - before;
        for row in 0..dictionary.limits {
            dictionary.value[row] += dictionary.per[row][column] * by;
        }
    }

    /// The row's own leaves to its end, and the column's comes in.
    fn pivot(&self, dictionary: &mut Dictionary, row: usize, column: usize, below: bool) {
        let leaving = (dictionary.basic[row], !below);
        let pivot = dictionary.per[row][column];
        let moved = (self.end(leaving) - dictionary.value[row]) / pivot;
        let entering = self.end(dictionary.out[column]) + moved;
        for at in 0..dictionary.limits {
            dictionary.value[at] += dictionary.per[at][column] * moved;
        }
        // entering = (leaving − Σ others) / pivot
        let mut of_entering = dictionary.per[row].map(|per| -per / pivot);
        of_entering[column] = 1.0 / pivot;
        let substitute = |per: &mut Coefficients| {
            let factor = per[column];
            if factor != 0.0 {
                per[column] = 0.0;
                for at in 0..dictionary.variables {
                    per[at] += factor * of_entering[at];
                }
            }
        };
        for at in 0..dictionary.limits {
            if at != row {
                substitute(&mut dictionary.per[at]);
            }
        }
        substitute(&mut dictionary.slope);
        dictionary.per[row] = of_entering;
        dictionary.basic[row] = dictionary.out[column].0;
        dictionary.value[row] = entering;
        dictionary.out[column] = leaving;
    }

    fn leave(&self, dictionary: &Dictionary, point: &mut [f64]) {
        for out in &dictionary.out[..dictionary.variables] {
            if let Name::Variable(at) = out.0 {
                point[at] = self.end(*out);
            }
        }
        for (name, value) in dictionary.basic[..dictionary.limits]
            .iter()
            .zip(&dictionary.value)
        {
            if let Name::Variable(at) = name {
                point[*at] = value.clamp(self.low[*at], self.high[*at]);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Numbers between −1 and 1 from a seed (`SplitMix64`, Steele, Lea & Flood 2014).
    struct Chance(u64);

    impl Chance {
        fn next(&mut self) -> f64 {
            self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
            let mut z = self.0;
            z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
            z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
            ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 52) as f64 - 1.0
        }
    }

    struct Problem {
        low: Vec<f64>,
        high: Vec<f64>,
        cost: Coefficients,
        limits: Vec<(Coefficients, f64)>,
    }

    /// A box, a cost and limits, some of which all points break.
    fn problem(seed: u64) -> Problem {
        let mut chance = Chance(seed);
        let variables = 1 + usize::try_from(seed % 8).unwrap();
        let low: Vec<f64> = (0..variables)
            .map(|_| (chance.next() * 10.0).round())
            .collect();
        let high: Vec<f64> = low
            .iter()
            .map(|low| low + (chance.next() * 12.0).round().max(0.0))
            .collect();
        let mut coefficients = |scale: f64| {
            let mut row = [0.0; MOST_VARIABLES];
            for per in row.iter_mut().take(variables) {
                let value = chance.next() * scale;
                *per = if value.abs() < 0.2 * scale {
                    0.0
                } else {
                    value
                };
            }
            row
        };
        let cost = coefficients(1.0);
        let inside: Vec<f64> = low
            .iter()
            .zip(&high)
            .map(|(low, high)| low + (high - low) * 0.4)
            .collect();
        let limits = (0..seed % 13)
            .map(|at| {
                let row = coefficients(0.3);
                let value: f64 = row.iter().zip(&inside).map(|(per, at)| per * at).sum();
                (
                    row,
                    value + [0.0, 0.4, 1.0, -0.02][usize::try_from(at % 4).unwrap()],
                )
            })
            .collect();
        Problem {
            low,
            high,
            cost,
            limits,
        }
    }

    #[test]
    fn the_bound_is_the_cost_of_a_point_that_keeps_the_limits_or_there_is_none() {
        let (mut solved, mut impossible) = (0, 0);
        for seed in 0..4000 {
            let Problem {
                low,
                high,
                cost,
                limits,
            } = problem(seed);
            let limits: Vec<(&Coefficients, f64)> =
                limits.iter().map(|(row, most)| (row, *most)).collect();
            let program = LinearProgram {
                cost: &cost,
                limits: &limits,
                low: &low,
                high: &high,
            };
            let mut point = vec![0.0; low.len()];
            let bound = program.bound(&mut point);
            if bound == f64::INFINITY {
                impossible += 1;
                continue;
            }
            let at = |row: &Coefficients| -> f64 {
                row.iter().zip(&point).map(|(per, at)| per * at).sum()
            };
            assert!(
                (at(&cost) - bound).abs() < 1e-6,
                "{seed}: {} {bound}",
                at(&cost)
            );
            for (row, most) in &limits {
                assert!(at(row) <= most + 1e-6, "{seed}");
            }
            solved += 1;
        }
        assert!(solved > 1000 && impossible > 100, "{solved} {impossible}");
    }
}
