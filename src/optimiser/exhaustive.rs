//! The search that looks at every point: slow, simple, and the yardstick for any faster one.

use super::{Best, Landscape, Outcome, Range, Status};

/// Evaluates every point of the grid in lexicographic order, at most `limit` of them.
///
/// No variables means one point: the empty one.
pub fn exhaustive(landscape: &impl Landscape, ranges: &[Range], limit: u64) -> Outcome {
    let mut outcome = Outcome {
        status: Status::Infeasible,
        best: None,
        evaluated: 0,
        bound: f64::NEG_INFINITY,
        nodes: 0,
    };
    if ranges.iter().any(|range| range.is_empty()) {
        outcome.bound = f64::INFINITY;
        return outcome;
    }
    let mut point: Vec<i32> = ranges.iter().map(|range| range.low).collect();
    loop {
        if outcome.evaluated == limit {
            outcome.status = if outcome.best.is_some() {
                Status::Feasible
            } else {
                Status::NoAnswerYet
            };
            return outcome;
        }
        outcome.evaluated += 1;
        if let Some(cost) = landscape.cost(&point)
            && outcome.best.as_ref().is_none_or(|best| cost < best.cost)
        {
            outcome.best = Some(Best {
                point: point.clone(),
                cost,
            });
        }
        if !advance(&mut point, ranges) {
            break;
        }
    }
    if outcome.best.is_some() {
        outcome.status = Status::Optimal;
    }
    outcome.bound = outcome
        .best
        .as_ref()
        .map_or(f64::INFINITY, |best| best.cost);
    outcome
}

/// Moves to the next point, the last variable fastest; `false` behind the last one.
fn advance(point: &mut [i32], ranges: &[Range]) -> bool {
    for (value, range) in point.iter_mut().zip(ranges).rev() {
        if *value < range.high {
            *value += 1;
            return true;
        }
        *value = range.low;
    }
    false
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Squared distance to a target, with odd sums forbidden where asked.
    struct Bowl {
        target: [f64; 2],
        even_only: bool,
    }

    impl Landscape for Bowl {
        fn cost(&self, point: &[i32]) -> Option<f64> {
            if self.even_only && point.iter().sum::<i32>() % 2 != 0 {
                return None;
            }
            Some(
                point
                    .iter()
                    .zip(self.target)
                    .map(|(at, target)| (f64::from(*at) - target).powi(2))
                    .sum(),
            )
        }

        fn floor(&self, _: &[i32], _: &[i32]) -> f64 {
            0.0
        }
    }

    const GRID: [Range; 2] = [Range { low: -3, high: 5 }, Range { low: 0, high: 9 }];

    #[test]
    fn the_best_point_is_found_and_every_point_was_seen() {
        let outcome = exhaustive(
            &Bowl {
                target: [1.2, 7.9],
                even_only: false,
            },
            &GRID,
            u64::MAX,
        );
        assert_eq!(outcome.status, Status::Optimal);
        assert_eq!(outcome.best.unwrap().point, [1, 8]);
        assert_eq!(outcome.evaluated, 90);
    }

    #[test]
    fn a_forbidden_best_gives_way_and_ties_go_to_the_first() {
        // (1, 8) has an odd sum; (1, 7) and (0, 8) … cost the same from (1, 7.5)? By hand: target (1, 7): (1, 7) is best.
        let outcome = exhaustive(
            &Bowl {
                target: [1.0, 7.5],
                even_only: true,
            },
            &GRID,
            u64::MAX,
        );
        assert_eq!(outcome.best.unwrap().point, [1, 7]);
    }

    #[test]
    fn a_limit_an_empty_range_and_no_variables_are_answers() {
        let bowl = Bowl {
            target: [1.0, 1.0],
            even_only: false,
        };
        assert_eq!(exhaustive(&bowl, &GRID, 5).status, Status::Feasible);
        assert_eq!(exhaustive(&bowl, &GRID, 0).status, Status::NoAnswerYet);
        assert_eq!(
            exhaustive(&bowl, &[Range { low: 1, high: 0 }], 5).status,
            Status::Infeasible
        );
        assert_eq!(
            exhaustive(&bowl, &[], 5).best.unwrap().point,
            Vec::<i32>::new()
        );
    }
}
