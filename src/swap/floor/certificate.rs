//! A convex minorant of the cost over a box, and a certified lower bound of it.
//!
//! The minorant is `F(n) = c·n + Σ q·dist(0, row(n) + offset)²`: a square counts only what its enclosure leaves, so `F` never
//! exceeds the cost, and it is convex and smooth. For any point `x` of the box, with the slope `g` of `F` there and any `λ ≥ 0` on
//! limits `r(n) ≤ 0`,
//!
//! `cost(n) ≥ F(n) + λ·r(n) ≥ F(x) + λ·r(x) + (g + λ·∇r)·(n − x)` for every allowed `n` of the box,
//!
//! and the right side, with the cost of each line that moves, falls apart into one variable each: its least over whole
//! numbers is at an end or at the standard's amount. So the bound holds for whatever `x` and `λ` are found; that a few sweeps
//! of coordinate descent do not quite reach the minimum makes it lower, never wrong.

use super::form::{Form, Interval, PLACES};
use super::rows::Row;

/// Most rows of one kind.
const MOST_ROWS: usize = 40;

/// The convex problem of one box.
pub(super) struct Minorant<'rows> {
    pub(super) squares: &'rows [(Row, f64, Interval)],
    /// Rows that must not be above zero, with the low end of their offset.
    pub(super) limits: &'rows [(Row, f64)],
    /// What is to be small, with its weight in it.
    pub(super) objective: Option<&'rows Form>,
    /// How stiffly limits push back while a point is looked for.
    pub(super) stiffness: f64,
    pub(super) low: &'rows [i32],
    pub(super) high: &'rows [i32],
    /// The standard's amounts in steps; a line that stands elsewhere costs `move_cost`.
    pub(super) standard: &'rows [f64],
    pub(super) move_cost: f64,
    pub(super) sweeps: usize,
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
        let dimensions = hint.len();
        for (hint, (low, high)) in hint.iter_mut().zip(self.low.iter().zip(self.high)) {
            *hint = hint.clamp(f64::from(*low), f64::from(*high));
        }
        let mut values = [0.0; MOST_ROWS];
        let mut excesses = [0.0; MOST_ROWS];
        for (value, (row, _, _)) in values.iter_mut().zip(self.squares) {
            *value = row.form.at(hint);
        }
        for (excess, (row, offset)) in excesses.iter_mut().zip(self.limits) {
            *excess = row.form.at(hint) + offset;
        }
        for _ in 0..self.sweeps {
            let mut moved = 0.0_f64;
            for variable in 0..dimensions {
                let next = self.best_along(variable, hint[variable], &values, &excesses);
                let by = next - hint[variable];
                if by == 0.0 {
                    continue;
                }
                hint[variable] = next;
                moved = moved.max(by.abs());
                for (value, (row, _, _)) in values.iter_mut().zip(self.squares) {
                    *value += row.form.per[variable] * by;
                }
                for (excess, (row, _)) in excesses.iter_mut().zip(self.limits) {
                    *excess += row.form.per[variable] * by;
                }
            }
            if moved < 1e-3 {
                break;
            }
        }
        self.certified(hint, &values, &excesses)
    }

    /// Slope and curvature of the penalised minorant along one variable.
    fn slope(&self, variable: usize, values: &[f64; MOST_ROWS], excesses: &[f64; MOST_ROWS]) -> (f64, f64) {
        let (mut slope, mut curvature) = (self.objective.map_or(0.0, |form| form.per[variable]), 0.0);
        for (value, (row, weight, offset)) in values.iter().zip(self.squares) {
            let by = row.form.per[variable];
            let off = beyond(*value, *offset);
            slope += 2.0 * weight * off * by;
            curvature += if off == 0.0 { 0.0 } else { 2.0 * weight * by * by };
        }
        for (excess, (row, _)) in excesses.iter().zip(self.limits) {
            if *excess > 0.0 {
                let by = row.form.per[variable];
                slope += 2.0 * self.stiffness * excess * by;
                curvature += 2.0 * self.stiffness * by * by;
            }
        }
        (slope, curvature)
    }

    /// The best place of one variable with the others held: a Newton step, drawn to the standard's amount by the convex
    /// envelope of the cost of a move.
    fn best_along(&self, variable: usize, at: f64, values: &[f64; MOST_ROWS], excesses: &[f64; MOST_ROWS]) -> f64 {
        let (low, high) = (f64::from(self.low[variable]), f64::from(self.high[variable]));
        if high <= low {
            return low;
        }
        let (slope, curvature) = self.slope(variable, values, excesses);
        let standard = self.standard[variable];
        let inside = (low..=high).contains(&standard);
        let up = if inside && high > standard { self.move_cost / (high - standard) } else { 0.0 };
        let down = if inside && standard > low { self.move_cost / (standard - low) } else { 0.0 };
        if curvature <= 1e-12 {
            return if slope > down { low } else if slope < -up { high } else { at };
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

    fn certified(&self, hint: &[f64], values: &[f64; MOST_ROWS], excesses: &[f64; MOST_ROWS]) -> f64 {
        let mut bound = self.objective.map_or(0.0, |form| form.at(hint));
        let mut slopes = [0.0; PLACES];
        for (variable, slope) in slopes.iter_mut().enumerate().take(hint.len()) {
            *slope = self.objective.map_or(0.0, |form| form.per[variable]);
        }
        let mut lean = |row: &Row, by: f64| {
            for (slope, per) in slopes.iter_mut().zip(&row.form.per).take(hint.len()) {
                *slope += by * per;
            }
        };
        for (value, (row, weight, offset)) in values.iter().zip(self.squares) {
            let off = beyond(*value, *offset);
            if off != 0.0 {
                bound += weight * off * off;
                lean(row, 2.0 * weight * off);
            }
        }
        for (excess, (row, _)) in excesses.iter().zip(self.limits) {
            if *excess > 0.0 {
                let multiplier = 2.0 * self.stiffness * excess;
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
        let (low, high) = (f64::from(self.low[variable]), f64::from(self.high[variable]));
        let standard = self.standard[variable];
        let moved = |count: f64| if (count - standard).abs() < 1e-9 { 0.0 } else { self.move_cost };
        let mut least = (slope * (low - at) + moved(low)).min(slope * (high - at) + moved(high));
        if (low..=high).contains(&standard) {
            least = least.min(slope * (standard - at));
        }
        least
    }
}
