//! The likeliest parameters for residuals that are in units of their standard uncertainty, by Levenberg and Marquardt, with the
//! covariance of Laplace's approximation.
//!
//! Written out here because the crates for non-linear least squares bring a whole linear-algebra library along; this needs the
//! solution of six equations. What is known beforehand enters as further residuals, which leave no parameter open.

/// Parameters of a cup that was read: excess at the start, the four of a cup, and how far the room is off.
pub(super) const PARAMETERS: usize = 6;

/// A parameter each.
pub(super) type Parameters = [f64; PARAMETERS];

/// Covariances of the parameters.
pub(super) type Covariance = [Parameters; PARAMETERS];

/// Steps after which the search ends where it is.
const STEPS: usize = 60;

/// By how much a parameter is moved for a derivative: all are logarithms or kelvins.
const MOVED: f64 = 1e-4;

/// Damping beyond which no step helps.
const MOST_DAMPING: f64 = 1e10;

/// Parameters, their covariance, and the sum of the squared residuals there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Fit {
    pub(super) parameters: Parameters,
    pub(super) covariance: Covariance,
    pub(super) squares: f64,
}

/// Fits from a start; `residuals` puts them into a list, always as many. `None` when they are not numbers there.
pub(super) fn fit(
    start: Parameters,
    residuals: impl Fn(&Parameters, &mut Vec<f64>),
) -> Option<Fit> {
    let mut here = Vec::new();
    let mut there = Vec::new();
    let mut parameters = start;
    residuals(&parameters, &mut here);
    let mut squares = sum_of_squares(&here);
    let mut damping = 1e-3;
    let mut normal = Normal::at(&parameters, &here, &residuals);
    for _ in 0..STEPS {
        let Some(step) = normal.step(damping) else {
            break;
        };
        let mut moved = parameters;
        for (value, step) in moved.iter_mut().zip(step) {
            // A step of more than a factor of e is a guess too far.
            *value += step.clamp(-1.0, 1.0);
        }
        residuals(&moved, &mut there);
        let better = sum_of_squares(&there);
        if better <= squares {
            let gain = squares - better;
            (parameters, squares) = (moved, better);
            std::mem::swap(&mut here, &mut there);
            normal = Normal::at(&parameters, &here, &residuals);
            damping = (damping * 0.2).max(1e-9);
            if gain <= 1e-10 * (1.0 + squares) {
                break;
            }
        } else {
            damping *= 8.0;
            if damping > MOST_DAMPING {
                break;
            }
        }
    }
    let covariance = inverse(&normal.left)?;
    squares.is_finite().then_some(Fit {
        parameters,
        covariance,
        squares,
    })
}

fn sum_of_squares(residuals: &[f64]) -> f64 {
    residuals.iter().map(|residual| residual * residual).sum()
}

/// The normal equations: `JᵀJ` and `−Jᵀr`.
struct Normal {
    left: Covariance,
    right: Parameters,
}

impl Normal {
    fn at(
        parameters: &Parameters,
        here: &[f64],
        residuals: &impl Fn(&Parameters, &mut Vec<f64>),
    ) -> Self {
        let mut slopes: [Vec<f64>; PARAMETERS] = Default::default();
        for (at, slopes) in slopes.iter_mut().enumerate() {
            let mut moved = *parameters;
            moved[at] += MOVED;
            residuals(&moved, slopes);
            for (value, here) in slopes.iter_mut().zip(here) {
                *value = (*value - here) / MOVED;
            }
        }
        let product = |one: &[f64], other: &[f64]| -> f64 {
            one.iter().zip(other).map(|(one, other)| one * other).sum()
        };
        Self {
            left: std::array::from_fn(|row| {
                std::array::from_fn(|column| product(&slopes[row], &slopes[column]))
            }),
            right: std::array::from_fn(|row| -product(&slopes[row], here)),
        }
    }

    fn step(&self, damping: f64) -> Option<Parameters> {
        let mut damped = self.left;
        for (at, row) in damped.iter_mut().enumerate() {
            row[at] *= 1.0 + damping;
        }
        let inverse = inverse(&damped)?;
        Some(inverse.map(|row| row.iter().zip(self.right).map(|(a, b)| a * b).sum()))
    }
}

/// Gauss and Jordan with the largest pivot; `None` for a matrix that has no inverse.
fn inverse(matrix: &Covariance) -> Option<Covariance> {
    let mut left = *matrix;
    let mut right: Covariance =
        std::array::from_fn(|row| std::array::from_fn(|at| if at == row { 1.0 } else { 0.0 }));
    for column in 0..PARAMETERS {
        let pivot = (column..PARAMETERS)
            .max_by(|a, b| left[*a][column].abs().total_cmp(&left[*b][column].abs()))?;
        left.swap(column, pivot);
        right.swap(column, pivot);
        let scale = left[column][column];
        if !scale.is_finite() || scale.abs() < 1e-300 {
            return None;
        }
        for at in 0..PARAMETERS {
            left[column][at] /= scale;
            right[column][at] /= scale;
        }
        for row in (0..PARAMETERS).filter(|row| *row != column) {
            let factor = left[row][column];
            for at in 0..PARAMETERS {
                left[row][at] -= factor * left[column][at];
                right[row][at] -= factor * right[column][at];
            }
        }
    }
    let is_sound = right.iter().flatten().all(|value| value.is_finite());
    is_sound.then_some(right)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_inverse_times_its_matrix_is_one() {
        let mut matrix: Covariance = std::array::from_fn(|row| {
            std::array::from_fn(|column| 1.0 / (1.0 + row as f64 + 2.0 * column as f64))
        });
        for (at, row) in matrix.iter_mut().enumerate() {
            row[at] += at as f64 - 2.0;
        }
        let inverse = inverse(&matrix).unwrap();
        for (row, left) in matrix.iter().enumerate() {
            for column in 0..PARAMETERS {
                let product: f64 = left
                    .iter()
                    .zip(&inverse)
                    .map(|(a, row)| a * row[column])
                    .sum();
                let expected = if row == column { 1.0 } else { 0.0 };
                assert!(
                    (product - expected).abs() < 1e-9,
                    "{row} {column}: {product}"
                );
            }
        }
    }

    #[test]
    fn what_is_known_beforehand_and_what_is_read_are_weighed() {
        // Each parameter is 0 ± 1 beforehand; the first is read as 4 ± 1/2, which counts four times as much: 3.2 ± √(1/5).
        let found = fit([0.0; PARAMETERS], |parameters, residuals| {
            residuals.clear();
            residuals.extend(parameters);
            residuals.push((parameters[0] - 4.0) / 0.5);
        })
        .unwrap();
        assert!((found.parameters[0] - 3.2).abs() < 1e-6, "{found:?}");
        assert!((found.covariance[0][0] - 0.2).abs() < 1e-6, "{found:?}");
        assert!((found.covariance[1][1] - 1.0).abs() < 1e-6, "{found:?}");
    }
}
