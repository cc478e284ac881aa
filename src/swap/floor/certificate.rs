//! A convex minorant of the cost over a box, and a certified lower bound of it.
//!
//! The minorant is `F(n) = Σ q·(dist(0, row(n) + offset)/V(n))² + Σ q·dist(0, row(n) + offset)²`: the concentrations, each a
//! deviation times the volume over a volume that is nowhere too small, and what is no concentration. A square counts only
//! what its enclosure leaves, so `F` never exceeds the cost.
//!
//! **Convexity.** `(D/V)²` alone is not convex in `(D, V)`: in the worst direction (`δD = 2D·δV/V`) its second derivative is
//! `−2D²/V⁴·δV²`. The square `q_v·(V − V*)²` of the volume's own axis has `+2·q_v·δV²`. So the sum is convex over a box where
//! `Σ q·D²/V² ≤ q_v·V²`, which [`super::over_box`] sees to; where it can't, it divides by the greatest volume of the box instead,
//! and `F` is a convex quadratic.
//!
//! **Certificate.** For any point `x` of the box, with the slope `g` of `F` there and any `λ ≥ 0` on
//! limits `r(n) ≤ 0`,
//!
//! `cost(n) ≥ F(n) + λ·r(n) ≥ F(x) + λ·r(x) + (g + λ·∇r)·(n − x)` for every allowed `n` of the box,
//!
//! and the right side, with the cost of each line that moves, falls apart into one variable each: its least over whole
//! numbers is at an end or at the standard's amount. So the bound holds for whatever `x` and `λ` are found; that a few sweeps
//! of coordinate descent do not quite reach the minimum makes it lower, never wrong.

use crate::optimiser::{MOST_LIMITS, MOST_VARIABLES};

use super::form::{Form, Interval, PLACES};
use super::rows::Row;

/// Most rows of one kind.
pub(super) const MOST_ROWS: usize = MOST_LIMITS;

/// Parts of the full stiffness, stage by stage.
const STAGES: [f64; 3] = [1e-3, 3e-2, 1.0];

/// The convex problem of one box.
pub(super) struct Minorant<'rows> {
    pub(super) squares: &'rows [Square<'rows>],
    /// The volume that concentrations are divided by, nowhere below the true one.
    pub(super) volume: &'rows Form,
    /// Rows that must not be above zero, with the low end of their offset.
    pub(super) limits: &'rows [(&'rows Row, f64)],
    /// How stiffly limits push back while a point is looked for.
    pub(super) stiffness: f64,
    pub(super) low: &'rows [i32],
    pub(super) high: &'rows [i32],
    /// The standard's amounts in steps; a line that stands elsewhere costs `move_cost`.
    pub(super) standard: &'rows [f64],
    pub(super) move_cost: f64,
    /// Rounds of coordinate descent and a Newton step.
    pub(super) rounds: usize,
}

/// A weighted square of the distance from zero.
#[derive(Clone, Copy)]
pub(super) struct Square<'rows> {
    pub(super) row: &'rows Row,
    pub(super) weight: f64,
    pub(super) offset: Interval,
    /// Whether it is divided by the volume.
    pub(super) per_volume: bool,
}

type Matrix = [[f64; MOST_VARIABLES]; MOST_VARIABLES];

/// The rows at a point: squares by their form, limits with the low end of their offset.
struct State {
    values: [f64; MOST_ROWS],
    excesses: [f64; MOST_ROWS],
    /// The weights at this volume.
    weights: [f64; MOST_ROWS],
    /// Slope of the concentrations' squares by the volume itself.
    by_volume: f64,
    /// How stiffly limits push back at this stage.
    stiffness: f64,
}

/// Solves `matrix · x = −slopes` for the lower triangle of a positive matrix, by Cholesky's factors in place; `None` where it
/// is not positive.
fn solve(
    matrix: &mut Matrix,
    slopes: &[f64; MOST_VARIABLES],
    count: usize,
) -> Option<[f64; MOST_VARIABLES]> {
    let mut solution = [0.0; MOST_VARIABLES];
    for row in 0..count {
        for column in 0..=row {
            let mut rest = matrix[row][column];
            rest -= (0..column)
                .map(|inner| matrix[row][inner] * matrix[column][inner])
                .sum::<f64>();
            if row == column {
                if rest <= 0.0 {
                    return None;
                }
                matrix[row][row] = rest.sqrt();
            } else {
                matrix[row][column] = rest / matrix[column][column];
            }
        }
    }
    for row in 0..count {
        let known: f64 = (0..row)
            .map(|inner| matrix[row][inner] * solution[inner])
            .sum();
        solution[row] = (-slopes[row] - known) / matrix[row][row];
    }
    for row in (0..count).rev() {
        let known: f64 = (row + 1..count)
            .map(|inner| matrix[inner][row] * solution[inner])
            .sum();
        solution[row] = (solution[row] - known) / matrix[row][row];
    }
    Some(solution)
}

/// `x` beyond the interval of what counts as no deviation.
fn beyond(value: f64, offset: Interval) -> f64 {
    if value + offset.low > 0.0 {
        value + offset.low
    } else if value + offset.high < 0.0 {
        value + offset.high
    } else {
        0.0
    }
}

impl Minorant<'_> {
    /// The bound; `hint` is where the search for the minimum starts and where it ended.
    pub(super) fn bound(&self, hint: &mut [f64]) -> f64 {
        for (hint, (low, high)) in hint.iter_mut().zip(self.low.iter().zip(self.high)) {
            *hint = hint.clamp(f64::from(*low), f64::from(*high));
        }
        let mut state = State {
            values: [0.0; MOST_ROWS],
            excesses: [0.0; MOST_ROWS],
            weights: [0.0; MOST_ROWS],
            by_volume: 0.0,
            stiffness: self.stiffness,
        };
        for (value, square) in state.values.iter_mut().zip(self.squares) {
            *value = square.row.form.at(hint);
        }
        for (excess, (row, offset)) in state.excesses.iter_mut().zip(self.limits) {
            *excess = row.form.at(hint) + offset;
        }
        // Limits push back softly at first: a stiff start would creep along the first limit that it meets. Every stage gives
        // a bound of its own, and the largest counts.
        let mut bound = f64::NEG_INFINITY;
        for stage in if self.limits.is_empty() {
            &[1.0][..]
        } else {
            &STAGES[..]
        } {
            state.stiffness = self.stiffness * stage;
            for _ in 0..self.rounds {
                self.weigh(hint, &mut state);
                let moved = self.sweep(hint, &mut state);
                let stepped = self.newton(hint, &mut state);
                if moved.max(stepped) < 1e-4 {
                    break;
                }
            }
            self.weigh(hint, &mut state);
            bound = bound.max(self.certified(hint, &state));
        }
        bound
    }

    /// Weights and the slope by the volume, at a point.
    fn weigh(&self, hint: &[f64], state: &mut State) {
        let volume = self.volume.at(hint);
        let mut concentrations = 0.0;
        for ((weight, value), square) in state
            .weights
            .iter_mut()
            .zip(&state.values)
            .zip(self.squares)
        {
            *weight = square.weight;
            if square.per_volume {
                *weight /= volume * volume;
                concentrations += *weight * beyond(*value, square.offset).powi(2);
            }
        }
        state.by_volume = -2.0 * concentrations / volume;
    }

    /// Slope of the volume under the concentrations along one variable.
    fn linear(&self, variable: usize, state: &State) -> f64 {
        state.by_volume * self.volume.per[variable]
    }

    /// One pass of coordinate descent; how far a variable has moved at most.
    fn sweep(&self, hint: &mut [f64], state: &mut State) -> f64 {
        let mut moved = 0.0_f64;
        for variable in 0..hint.len() {
            let by = self.best_along(variable, hint[variable], state) - hint[variable];
            if by != 0.0 {
                self.shift(variable, by, hint, state);
                moved = moved.max(by.abs());
            }
        }
        moved
    }

    fn shift(&self, variable: usize, by: f64, hint: &mut [f64], state: &mut State) {
        hint[variable] += by;
        for (value, square) in state.values.iter_mut().zip(self.squares) {
            *value += square.row.form.per[variable] * by;
        }
        for (excess, (row, _)) in state.excesses.iter_mut().zip(self.limits) {
            *excess += row.form.per[variable] * by;
        }
    }

    /// Slope and curvature of the penalised minorant along one variable.
    fn slope(&self, variable: usize, state: &State) -> (f64, f64) {
        let (mut slope, mut curvature) = (self.linear(variable, state), 0.0);
        for ((value, weight), square) in state.values.iter().zip(&state.weights).zip(self.squares) {
            let by = square.row.form.per[variable];
            let off = beyond(*value, square.offset);
            slope += 2.0 * weight * off * by;
            curvature += if off == 0.0 {
                0.0
            } else {
                2.0 * weight * by * by
            };
        }
        for (excess, (row, _)) in state.excesses.iter().zip(self.limits) {
            if *excess > 0.0 {
                let by = row.form.per[variable];
                slope += 2.0 * state.stiffness * excess * by;
                curvature += 2.0 * state.stiffness * by * by;
            }
        }
        (slope, curvature)
    }

    /// The best place of one variable with the others held: a Newton step, drawn to the standard's amount by the convex
    /// envelope of the cost of a move.
    fn best_along(&self, variable: usize, at: f64, state: &State) -> f64 {
        let (low, high) = (
            f64::from(self.low[variable]),
            f64::from(self.high[variable]),
        );
        if high <= low {
            return low;
        }
        let (slope, curvature) = self.slope(variable, state);
        let standard = self.standard[variable];
        let inside = (low..=high).contains(&standard);
        let (down, up) = self.envelope(variable);
        if curvature <= 1e-12 {
            return if slope > down {
                low
            } else if slope < -up {
                high
            } else {
                at
            };
        }
        let free = at - slope / curvature;
        let next = if !inside {
            free
        } else if free - up / curvature > standard {
            free - up / curvature
        } else if free + down / curvature < standard {
            free + down / curvature
        } else {
            standard
        };
        next.clamp(low, high)
    }

    /// Slopes of the convex envelope of the cost of a move, below and above the standard's amount.
    fn envelope(&self, variable: usize) -> (f64, f64) {
        let (low, high) = (
            f64::from(self.low[variable]),
            f64::from(self.high[variable]),
        );
        let standard = self.standard[variable];
        if !(low..=high).contains(&standard) {
            return (0.0, 0.0);
        }
        let slope = |distance: f64| {
            if distance > 0.0 {
                self.move_cost / distance
            } else {
                0.0
            }
        };
        (slope(standard - low), slope(high - standard))
    }

    /// A Newton step over the variables that are at no end and not held at the standard's amount, as far as the first end
    /// allows; how far a variable has moved at most. Coordinate descent alone creeps where several lines trade off.
    fn newton(&self, hint: &mut [f64], state: &mut State) -> f64 {
        let mut free = [(0, 0.0, 0.0); MOST_VARIABLES];
        let mut count = 0;
        let mut slopes = [0.0; MOST_VARIABLES];
        for (variable, at) in hint.iter().enumerate() {
            let (low, high) = (
                f64::from(self.low[variable]),
                f64::from(self.high[variable]),
            );
            let standard = self.standard[variable];
            let inside = (low..=high).contains(&standard);
            if *at <= low + 1e-9 || *at >= high - 1e-9 || (inside && (*at - standard).abs() < 1e-9)
            {
                continue;
            }
            let (down, up) = self.envelope(variable);
            let (from, to, tilt) = match inside {
                true if *at > standard => (standard, high, up),
                true => (low, standard, -down),
                false => (low, high, 0.0),
            };
            free[count] = (variable, from, to);
            slopes[count] = self.slope(variable, state).0 + tilt;
            count += 1;
        }
        if count < 2 {
            return 0.0;
        }
        let free = &free[..count];
        let mut matrix = self.curvature(free, state);
        let Some(step) = solve(&mut matrix, &slopes, count) else {
            return 0.0;
        };
        let mut part = 1.0_f64;
        for ((variable, from, to), by) in free.iter().zip(&step) {
            let room = if *by > 0.0 {
                to - hint[*variable]
            } else {
                from - hint[*variable]
            };
            if by.abs() > 1e-12 {
                part = part.min(room / by);
            }
        }
        let mut moved = 0.0_f64;
        for ((variable, from, to), by) in free.iter().zip(&step) {
            let target = (hint[*variable] + by * part).clamp(*from, *to);
            let by = target - hint[*variable];
            moved = moved.max(by.abs());
            self.shift(*variable, by, hint, state);
        }
        moved
    }

    /// Second derivatives over the free variables, with a little added on the diagonal so that a solution exists.
    fn curvature(&self, free: &[(usize, f64, f64)], state: &State) -> Matrix {
        let mut matrix = [[0.0; MOST_VARIABLES]; MOST_VARIABLES];
        let mut add = |row: &Row, weight: f64| {
            for (at, (one, _, _)) in free.iter().enumerate() {
                let scaled = 2.0 * weight * row.form.per[*one];
                for (other, (two, _, _)) in free.iter().enumerate().take(at + 1) {
                    matrix[at][other] += scaled * row.form.per[*two];
                }
            }
        };
        for ((value, weight), square) in state.values.iter().zip(&state.weights).zip(self.squares) {
            if beyond(*value, square.offset) != 0.0 {
                add(square.row, *weight);
            }
        }
        for (excess, (row, _)) in state.excesses.iter().zip(self.limits) {
            if *excess > 0.0 {
                add(row, state.stiffness);
            }
        }
        for (at, row) in matrix.iter_mut().enumerate().take(free.len()) {
            row[at] = row[at] * (1.0 + 1e-9) + 1e-9;
        }
        matrix
    }

    fn certified(&self, hint: &[f64], state: &State) -> f64 {
        let mut bound = 0.0;
        let mut slopes = [0.0; PLACES];
        for (variable, slope) in slopes.iter_mut().enumerate().take(hint.len()) {
            *slope = self.linear(variable, state);
        }
        let mut lean = |row: &Row, by: f64| {
            for (slope, per) in slopes.iter_mut().zip(&row.form.per).take(hint.len()) {
                *slope += by * per;
            }
        };
        for ((value, weight), square) in state.values.iter().zip(&state.weights).zip(self.squares) {
            let off = beyond(*value, square.offset);
            if off != 0.0 {
                bound += weight * off * off;
                lean(square.row, 2.0 * weight * off);
            }
        }
        for (excess, (row, _)) in state.excesses.iter().zip(self.limits) {
            if *excess > 0.0 {
                let multiplier = 2.0 * state.stiffness * excess;
                bound += multiplier * excess;
                lean(row, multiplier);
            }
        }
        for (variable, at) in hint.iter().enumerate() {
            bound += self.least_along(variable, slopes[variable], *at);
        }
        bound
    }

    /// The least of `slope·(n − at)` plus the cost of a move, over the whole numbers of one variable.
    fn least_along(&self, variable: usize, slope: f64, at: f64) -> f64 {
        let (low, high) = (
            f64::from(self.low[variable]),
            f64::from(self.high[variable]),
        );
        let standard = self.standard[variable];
        let moved = |count: f64| {
            if (count - standard).abs() < 1e-9 {
                0.0
            } else {
                self.move_cost
            }
        };
        let mut least = (slope * (low - at) + moved(low)).min(slope * (high - at) + moved(high));
        if (low..=high).contains(&standard) {
            least = least.min(slope * (standard - at));
        }
        least
    }
}
