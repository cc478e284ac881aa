//! Small normal distributions: the likelihood of a few readings, and one figure given others.

/// Most readings that are looked at together.
pub(super) const MOST: usize = 4;

/// A covariance of a few figures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Covariance {
    size: usize,
    of: [[f64; MOST]; MOST],
}

impl Covariance {
    /// That of so many figures, by a function of two of them.
    pub(super) fn of(size: usize, at: impl Fn(usize, usize) -> f64) -> Self {
        let mut of = [[0.0; MOST]; MOST];
        for (row, cells) in of.iter_mut().enumerate().take(size) {
            for (column, cell) in cells.iter_mut().enumerate().take(size) {
                *cell = at(row, column);
            }
        }
        Self { size, of }
    }

    /// The lower triangle L with L·Lᵀ equal to it (Cholesky); a figure without any spread gets a tiny one.
    pub(super) fn root(&self) -> Root {
        let mut root = [[0.0; MOST]; MOST];
        for row in 0..self.size {
            for column in 0..=row {
                let known: f64 = (0..column).map(|at| root[row][at] * root[column][at]).sum();
                let left = self.of[row][column] - known;
                root[row][column] = if row == column {
                    left.max(LEAST_VARIANCE * self.of[row][row].max(LEAST_VARIANCE))
                        .sqrt()
                } else {
                    left / root[column][column]
                };
            }
        }
        Root {
            size: self.size,
            of: root,
        }
    }
}

/// Part of a variance that stays when others explain all of it: rounding.
const LEAST_VARIANCE: f64 = 1e-12;

/// The root of a covariance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Root {
    size: usize,
    of: [[f64; MOST]; MOST],
}

impl Root {
    /// How far figures are off in independent standard deviations: L⁻¹·(figures − means).
    pub(super) fn whitened(&self, figures: &[f64], means: &[f64]) -> [f64; MOST] {
        let mut whitened = [0.0; MOST];
        for row in 0..self.size {
            let known: f64 = (0..row).map(|at| self.of[row][at] * whitened[at]).sum();
            whitened[row] = (figures[row] - means[row] - known) / self.of[row][row];
        }
        whitened
    }

    /// The sum of squares of that, which has a chi-square distribution.
    pub(super) fn squares(&self, figures: &[f64], means: &[f64]) -> f64 {
        let whitened = self.whitened(figures, means);
        whitened.iter().map(|value| value * value).sum()
    }

    /// Mean and standard deviation of the last figure when the others before it are known.
    pub(super) fn last_given(&self, others: &[f64], means: &[f64]) -> (f64, f64) {
        let last = self.size - 1;
        let before = Self {
            size: last,
            of: self.of,
        };
        let whitened = before.whitened(others, means);
        let moved: f64 = (0..last).map(|at| self.of[last][at] * whitened[at]).sum();
        (means[last] + moved, self.of[last][last])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_root_undoes_a_covariance() {
        // By hand: [[4, 2], [2, 2]] = L·Lᵀ with L = [[2, 0], [1, 1]]; of (2, 3): (1, 2), squares 5.
        let cells = [[4.0, 2.0], [2.0, 2.0]];
        let root = Covariance::of(2, |row, column| cells[row][column]).root();
        assert!((root.squares(&[2.0, 3.0], &[0.0, 0.0]) - 5.0).abs() < 1e-12);
        // The second given that the first is 2: mean 2·2/4 = 1, variance 2 − 4/4 = 1.
        let (mean, deviation) = root.last_given(&[2.0], &[0.0, 0.0]);
        assert!((mean - 1.0).abs() < 1e-12 && (deviation - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_figure_that_others_settle_is_no_division_by_nothing() {
        let root = Covariance::of(2, |_, _| 1.0).root();
        assert!(root.squares(&[1.0, 1.0], &[0.0, 0.0]).is_finite());
    }
}
