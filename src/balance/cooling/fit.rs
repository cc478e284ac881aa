//! Least squares of one or two exponentials through thermometer readings (Levenberg–Marquardt, up to four parameters).
//!
//! Written out here because the crates for non-linear least squares bring a whole linear-algebra library along; this
//! needs the solution of at most four equations. Rates are fitted as logarithms, so that they stay positive.

use super::curve::{CoolingModel, Term};

/// Parameters of the largest model: excess and logarithm of the rate, twice.
pub(super) const PARAMETERS: usize = 4;

/// Steps after which the search gives up looking for a better place.
const STEPS: usize = 200;

/// Rates that a drink can have, 1/min: from a vacuum flask over days to a drop on a plate.
const RATES: (f64, f64) = (1e-5, 20.0);

/// The inverse of the normal equations, in the order excess, ln rate, excess, ln rate.
pub(super) type Covariance = [[f64; PARAMETERS]; PARAMETERS];

/// A fitted model.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Fit {
    pub(super) terms: [Term; 2],
    /// Sum of the squared residuals, K².
    pub(super) squares: f64,
    /// Inverse of the normal equations (`JᵀJ`); times the variance of a reading it is the covariance of the parameters.
    pub(super) inverse: Covariance,
}

/// Fits a model to readings of (minutes, excess over the room); `None` when they determine no such curve.
pub(super) fn fit(readings: &[(f64, f64)], model: CoolingModel) -> Option<Fit> {
    let one = descend(readings, start_of_one(readings)?, CoolingModel::OneConstant)?;
    match model {
        CoolingModel::OneConstant => Some(one),
        CoolingModel::TwoConstants => starts_of_two(readings, one.terms[0].rate)
            .into_iter()
            .filter_map(|start| descend(readings, start, model))
            .min_by(|a, b| a.squares.total_cmp(&b.squares)),
    }
}

/// The straight line through the logarithms of the excess: −d ln(T − room)/dt is the rate.
fn start_of_one(readings: &[(f64, f64)]) -> Option<[Term; 2]> {
    let points: Vec<(f64, f64)> = readings
        .iter()
        .filter(|(_, excess)| *excess > 0.0)
        .map(|(minutes, excess)| (*minutes, excess.ln()))
        .collect();
    let count = points.len() as f64;
    if points.len() < 2 {
        return None;
    }
    let mean = |of: fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / count;
    let (minutes, logarithm) = (mean(|point| point.0), mean(|point| point.1));
    let spread: f64 = points.iter().map(|point| (point.0 - minutes).powi(2)).sum();
    let together: f64 = points
        .iter()
        .map(|point| (point.0 - minutes) * (point.1 - logarithm))
        .sum();
    let rate = -together / spread;
    let first = Term {
        excess: (logarithm + rate * minutes).exp(),
        rate,
    };
    (rate > RATES.0).then_some([first, Term::NONE])
}

/// Pairs of a fast and a slow rate around the single one, each with its best amplitudes.
fn starts_of_two(readings: &[(f64, f64)], rate: f64) -> Vec<[Term; 2]> {
    let mut starts = Vec::new();
    for fast in [2.0, 4.0, 8.0, 16.0] {
        for slow in [0.9, 0.7, 0.5, 0.3] {
            if let Some(terms) = amplitudes(readings, rate * fast, rate * slow) {
                starts.push(terms);
            }
        }
    }
    starts
}

/// The amplitudes of two exponentials with given rates: two linear equations.
fn amplitudes(readings: &[(f64, f64)], fast: f64, slow: f64) -> Option<[Term; 2]> {
    let (mut ff, mut fs, mut ss, mut fy, mut sy) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (minutes, excess) in readings {
        let (f, s) = ((-fast * minutes).exp(), (-slow * minutes).exp());
        ff += f * f;
        fs += f * s;
        ss += s * s;
        fy += f * excess;
        sy += s * excess;
    }
    let determinant = ff * ss - fs * fs;
    let terms = [
        Term {
            excess: (fy * ss - sy * fs) / determinant,
            rate: fast,
        },
        Term {
            excess: (sy * ff - fy * fs) / determinant,
            rate: slow,
        },
    ];
    (determinant.abs() > 1e-12).then_some(terms)
}

fn descend(readings: &[(f64, f64)], start: [Term; 2], model: CoolingModel) -> Option<Fit> {
    let count = model.parameters();
    let mut terms = start;
    let mut squares = sum_of_squares(readings, &terms);
    let mut damping = 1e-3;
    for _ in 0..STEPS {
        let (mut normal, towards) = normal_equations(readings, &terms, count);
        for (at, row) in normal.iter_mut().enumerate().take(count) {
            row[at] *= 1.0 + damping;
        }
        let Some(inverse) = inverse(&normal, count) else {
            break;
        };
        let mut moved = terms;
        for (at, row) in inverse.iter().enumerate().take(count) {
            let step: f64 = row.iter().zip(&towards).map(|(a, b)| a * b).sum();
            moved[at / 2].move_by(at % 2, step);
        }
        let better = sum_of_squares(readings, &moved);
        if better.is_finite() && better <= squares {
            let gain = squares - better;
            (terms, squares) = (moved, better);
            damping = (damping * 0.3).max(1e-12);
            if gain <= 1e-12 * (1.0 + squares) {
                break;
            }
        } else {
            damping *= 8.0;
            if damping > 1e12 {
                break;
            }
        }
    }
    let sound = terms[..count / 2].iter().all(|term| {
        term.excess.is_finite() && term.excess > 0.0 && (RATES.0..=RATES.1).contains(&term.rate)
    });
    let inverse = inverse(&normal_equations(readings, &terms, count).0, count)?;
    sound.then_some(Fit {
        terms,
        squares,
        inverse,
    })
}

fn sum_of_squares(readings: &[(f64, f64)], terms: &[Term; 2]) -> f64 {
    readings
        .iter()
        .map(|(minutes, excess)| (excess - Term::sum(terms, *minutes)).powi(2))
        .sum()
}

/// The left and the right side of the normal equations, `JᵀJ` and `Jᵀr`.
fn normal_equations(
    readings: &[(f64, f64)],
    terms: &[Term; 2],
    count: usize,
) -> (Covariance, [f64; PARAMETERS]) {
    let mut normal = [[0.0; PARAMETERS]; PARAMETERS];
    let mut towards = [0.0; PARAMETERS];
    for (minutes, excess) in readings {
        let gradient = Term::gradient(terms, *minutes);
        let residual = excess - Term::sum(terms, *minutes);
        for row in 0..count {
            towards[row] += gradient[row] * residual;
            for column in 0..count {
                normal[row][column] += gradient[row] * gradient[column];
            }
        }
    }
    (normal, towards)
}

/// Gauss–Jordan with the largest pivot; `None` when the equations do not determine the parameters.
fn inverse(matrix: &Covariance, count: usize) -> Option<Covariance> {
    let mut left = *matrix;
    let mut right = [[0.0; PARAMETERS]; PARAMETERS];
    for (at, row) in right.iter_mut().enumerate().take(count) {
        row[at] = 1.0;
    }
    for column in 0..count {
        let pivot = (column..count)
            .max_by(|a, b| left[*a][column].abs().total_cmp(&left[*b][column].abs()))?;
        left.swap(column, pivot);
        right.swap(column, pivot);
        let scale = left[column][column];
        if !scale.is_finite() || scale.abs() < 1e-300 {
            return None;
        }
        for at in 0..count {
            left[column][at] /= scale;
            right[column][at] /= scale;
        }
        for row in (0..count).filter(|row| *row != column) {
            let factor = left[row][column];
            for at in 0..count {
                left[row][at] -= factor * left[column][at];
                right[row][at] -= factor * right[column][at];
            }
        }
    }
    right[..count]
        .iter()
        .flatten()
        .all(|value| value.is_finite())
        .then_some(right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_inverse_times_its_matrix_is_one() {
        let matrix = [
            [4.0, 1.0, 0.5, 0.1],
            [1.0, 3.0, 0.2, 0.0],
            [0.5, 0.2, 0.0, 1.0],
            [0.1, 0.0, 1.0, 5.0],
        ];
        let inverse = inverse(&matrix, 4).unwrap();
        for (row, left) in matrix.iter().enumerate() {
            let products = (0..4).map(|column| {
                left.iter()
                    .zip(&inverse)
                    .map(|(a, row)| a * row[column])
                    .sum::<f64>()
            });
            for (column, product) in products.enumerate() {
                let expected = if row == column { 1.0 } else { 0.0 };
                assert!(
                    (product - expected).abs() < 1e-12,
                    "{row} {column}: {product}"
                );
            }
        }
    }

    #[test]
    fn two_exponentials_without_noise_are_found_again() {
        let truth = [
            Term {
                excess: 20.0,
                rate: 0.15,
            },
            Term {
                excess: 45.0,
                rate: 0.015,
            },
        ];
        let readings: Vec<(f64, f64)> = (0..20)
            .map(|at| (f64::from(at) * 4.0, Term::sum(&truth, f64::from(at) * 4.0)))
            .collect();
        let found = fit(&readings, CoolingModel::TwoConstants).unwrap();
        for (found, truth) in found.terms.iter().zip(truth) {
            assert!((found.excess - truth.excess).abs() < 1e-3, "{found:?}");
            assert!((found.rate / truth.rate - 1.0).abs() < 1e-4, "{found:?}");
        }
    }

    #[test]
    fn readings_that_do_not_fall_determine_nothing() {
        assert_eq!(
            fit(
                &[(0.0, 40.0), (5.0, 40.0), (10.0, 40.0)],
                CoolingModel::OneConstant
            ),
            None
        );
        assert_eq!(
            fit(
                &[(0.0, 40.0), (5.0, 45.0), (10.0, 50.0)],
                CoolingModel::OneConstant
            ),
            None
        );
        assert_eq!(
            fit(
                &[(3.0, 40.0), (3.0, 41.0), (3.0, 42.0)],
                CoolingModel::OneConstant
            ),
            None
        );
    }
}
