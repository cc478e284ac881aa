//! The search that proves its answer without looking at every point: branch and bound, lowest floor first.
//!
//! A box of the grid is divided until its floor reaches the best cost that has been seen; then none of its points can be
//! better. The order of the boxes depends on their floors alone and a limit counts boxes, so the same problem always
//! takes the same course.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use super::{Best, Landscape, Outcome, Range, Status};

/// Most variables that one search has: a drink has fewer lines that may move.
pub const MOST_VARIABLES: usize = 16;

/// Whole numbers of every variable.
type Point = [i32; MOST_VARIABLES];

/// The problem has more variables than a search holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooManyVariables {
    /// How many there are.
    pub found: usize,
}

/// A box that has not been divided yet. Plain numbers of a fixed size: a node costs no allocation.
#[derive(Clone, Copy, Debug)]
struct Node {
    floor: f64,
    order: u64,
    low: Point,
    high: Point,
    hint: [f64; MOST_VARIABLES],
}

impl PartialEq for Node {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Node {}

impl PartialOrd for Node {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Node {
    /// The greatest node is the next one: the lowest floor and, of equal ones, the latest, which goes deep first.
    fn cmp(&self, other: &Self) -> Ordering {
        other
            .floor
            .total_cmp(&self.floor)
            .then(self.order.cmp(&other.order))
    }
}

/// A search that is advanced by so many boxes, so that it can be stopped and its progress shown.
#[derive(Debug)]
pub struct BranchAndBound<'landscape, L: Landscape> {
    landscape: &'landscape L,
    variables: usize,
    open: BinaryHeap<Node>,
    best: Option<(Point, f64)>,
    evaluated: u64,
    nodes: u64,
    done: bool,
}

impl<'landscape, L: Landscape> BranchAndBound<'landscape, L> {
    /// A search over the grid, its first candidates evaluated.
    pub fn new(landscape: &'landscape L, ranges: &[Range]) -> Result<Self, TooManyVariables> {
        if ranges.len() > MOST_VARIABLES {
            return Err(TooManyVariables {
                found: ranges.len(),
            });
        }
        let mut search = Self {
            landscape,
            variables: ranges.len(),
            open: BinaryHeap::with_capacity(256),
            best: None,
            evaluated: 0,
            nodes: 0,
            done: true,
        };
        if ranges.iter().any(|range| range.is_empty()) {
            return Ok(search);
        }
        search.done = false;
        let mut root = Node {
            floor: 0.0,
            order: 0,
            low: [0; MOST_VARIABLES],
            high: [0; MOST_VARIABLES],
            hint: [0.0; MOST_VARIABLES],
        };
        for (at, range) in ranges.iter().enumerate() {
            (root.low[at], root.high[at]) = (range.low, range.high);
            root.hint[at] = f64::midpoint(f64::from(range.low), f64::from(range.high));
        }
        search.look_at(&mut root);
        if root.floor < f64::INFINITY {
            search.descend(&root);
            search.open.push(root);
        }
        Ok(search)
    }

    /// A point that is known already, from another search of the same grid: what is no better is cut off from the start.
    pub fn offer(&mut self, point: &[i32]) {
        let mut offered = [0; MOST_VARIABLES];
        if point.len() == self.variables {
            offered[..point.len()].copy_from_slice(point);
            self.evaluate(&offered);
        }
    }

    /// Goes on for so many boxes; `true` when the search has ended.
    pub fn advance(&mut self, boxes: u64) -> bool {
        let until = self.nodes.saturating_add(boxes);
        while !self.done && self.nodes < until {
            match self.open.pop() {
                Some(node) if self.can_be_better(node.floor) => self.divide(&node),
                // The lowest floor reaches the best cost: so does every other.
                _ => {
                    self.open.clear();
                    self.done = true;
                }
            }
        }
        self.done
    }

    /// The boxes looked at so far, and the two ends between which the best cost lies: bound and best so far.
    pub fn progress(&self) -> (u64, f64, f64) {
        (
            self.nodes,
            self.bound(),
            self.best.map_or(f64::INFINITY, |(_, cost)| cost),
        )
    }

    /// What has been found so far.
    pub fn outcome(&self) -> Outcome {
        let best = self.best.map(|(point, cost)| Best {
            point: point[..self.variables].to_vec(),
            cost,
        });
        let status = match (self.done, best.is_some()) {
            (true, true) => Status::Optimal,
            (true, false) => Status::Infeasible,
            (false, true) => Status::Feasible,
            (false, false) => Status::NoAnswerYet,
        };
        Outcome {
            status,
            best,
            evaluated: self.evaluated,
            bound: self.bound(),
            nodes: self.nodes,
        }
    }

    fn bound(&self) -> f64 {
        let best = self
            .best
            .map_or(f64::INFINITY, |(_, cost)| cost - self.landscape.tolerance());
        self.open.peek().map_or(best, |node| node.floor.min(best))
    }

    /// Without a tolerance equal floors are followed too: of equal points the first in lexicographic order wins, whatever the
    /// course.
    fn can_be_better(&self, floor: f64) -> bool {
        let tolerance = self.landscape.tolerance();
        self.best.is_none_or(|(_, cost)| floor <= cost - tolerance) && floor < f64::INFINITY
    }

    fn look_at(&mut self, node: &mut Node) {
        self.nodes += 1;
        node.order = self.nodes;
        let own = self.variables;
        node.floor = self
            .landscape
            .floor_near(&node.low[..own], &node.high[..own], &mut node.hint[..own])
            .max(node.floor);
    }

    fn evaluate(&mut self, point: &Point) -> bool {
        self.evaluated += 1;
        let Some(cost) = self.landscape.cost(&point[..self.variables]) else {
            return false;
        };
        let better = match &self.best {
            None => true,
            Some((best, least)) => cost.total_cmp(least).then_with(|| point.cmp(best)).is_lt(),
        };
        if better {
            self.best = Some((*point, cost));
        }
        better
    }

    /// The floor of a single point costs a part of its evaluation, so it is asked first.
    fn evaluate_if_promising(&mut self, point: &Point) -> bool {
        let own = self.variables;
        let floor = self.landscape.floor(&point[..own], &point[..own]);
        self.can_be_better(floor)
            && self.best.is_none_or(|(best, _)| best != *point)
            && self.evaluate(point)
    }

    /// From the rounded hint downhill by single steps: a good first answer cuts most boxes off.
    fn descend(&mut self, root: &Node) {
        let mut point = rounded(root);
        self.evaluate(&point);
        let mut improved = true;
        while improved {
            improved = false;
            for variable in 0..self.variables {
                for step in [-1, 1] {
                    let mut next = point;
                    next[variable] += step;
                    let inside =
                        (root.low[variable]..=root.high[variable]).contains(&next[variable]);
                    if inside && self.evaluate_if_promising(&next) {
                        point = next;
                        improved = true;
                    }
                }
            }
        }
    }

    fn divide(&mut self, node: &Node) {
        let Some((variable, at)) = self.division(node) else {
            return;
        };
        let before = rounded(node);
        for lower in [true, false] {
            let mut part = *node;
            if lower {
                part.high[variable] = at;
            } else {
                part.low[variable] = at + 1;
            }
            self.look_at(&mut part);
            if !self.can_be_better(part.floor) {
                continue;
            }
            // The point of the surrounding box has been evaluated with it; a single point needs no box.
            let point = rounded(&part);
            let single = part.low[..self.variables] == part.high[..self.variables];
            if point != before {
                if single {
                    self.evaluate(&point);
                } else {
                    self.evaluate_if_promising(&point);
                }
            }
            if !single {
                self.open.push(part);
            }
        }
    }

    /// Which variable to divide and where: the one whose hint is furthest from a whole number or, when all are whole, the
    /// widest, each by its weight. `None` for a single point.
    fn division(&self, node: &Node) -> Option<(usize, i32)> {
        let mut choice: Option<(usize, f64)> = None;
        for variable in 0..self.variables {
            let width = f64::from(node.high[variable]) - f64::from(node.low[variable]);
            if width <= 0.0 {
                continue;
            }
            let hint = node.hint[variable];
            let fraction = (hint - hint.round()).abs();
            let merit = self.landscape.weight(variable) * (fraction * 4.0 + width * 0.05);
            if choice.is_none_or(|(_, best)| merit > best) {
                choice = Some((variable, merit));
            }
        }
        let (variable, _) = choice?;
        let at = floor_of(node.hint[variable]).clamp(node.low[variable], node.high[variable] - 1);
        Some((variable, at))
    }
}

fn rounded(node: &Node) -> Point {
    let mut point = node.low;
    for (at, value) in point.iter_mut().enumerate() {
        *value = floor_of(node.hint[at] + 0.5).clamp(node.low[at], node.high[at]);
    }
    point
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast to an integer saturates, and the callers clamp"
)]
fn floor_of(value: f64) -> i32 {
    value.floor() as i32
}

/// The proven best point of the grid, unless `limit` boxes do not suffice for the proof.
///
/// No variables means one point: the empty one.
pub fn branch_and_bound(
    landscape: &impl Landscape,
    ranges: &[Range],
    limit: u64,
) -> Result<Outcome, TooManyVariables> {
    let mut search = BranchAndBound::new(landscape, ranges)?;
    search.advance(limit);
    Ok(search.outcome())
}

#[cfg(test)]
mod tests {
    use super::super::exhaustive;
    use super::*;

    /// A crooked valley with forbidden points; its floor is exact in the separable part.
    struct Valley {
        target: [f64; 3],
        tilt: f64,
        forbid_multiples_of: i32,
    }

    impl Landscape for Valley {
        fn cost(&self, point: &[i32]) -> Option<f64> {
            if self.forbid_multiples_of > 0
                && point.iter().sum::<i32>() % self.forbid_multiples_of == 0
            {
                return None;
            }
            let squares: f64 = point
                .iter()
                .zip(self.target)
                .map(|(at, target)| (f64::from(*at) - target).powi(2))
                .sum();
            Some(squares + self.tilt * (f64::from(point[0]) - f64::from(point[1])).abs())
        }

        fn floor(&self, low: &[i32], high: &[i32]) -> f64 {
            low.iter()
                .zip(high)
                .zip(self.target)
                .map(|((low, high), target)| {
                    (target.clamp(f64::from(*low), f64::from(*high)) - target).powi(2)
                })
                .sum()
        }
    }

    /// The same cost everywhere.
    struct Nothing;

    impl Landscape for Nothing {
        fn cost(&self, _: &[i32]) -> Option<f64> {
            Some(7.0)
        }

        fn floor(&self, _: &[i32], _: &[i32]) -> f64 {
            0.0
        }
    }

    const GRID: [Range; 3] = [
        Range { low: -4, high: 6 },
        Range { low: 0, high: 9 },
        Range { low: -2, high: 3 },
    ];

    #[test]
    fn it_finds_what_looking_at_every_point_finds() {
        for case in 0_i32..60 {
            let at = f64::from(case);
            let valley = Valley {
                target: [
                    at * 0.37 % 9.0 - 3.0,
                    at * 0.71 % 11.0,
                    at * 0.13 % 4.0 - 1.0,
                ],
                tilt: at * 0.05,
                forbid_multiples_of: case % 4,
            };
            let proven = branch_and_bound(&valley, &GRID, u64::MAX).unwrap();
            let seen = exhaustive(&valley, &GRID, u64::MAX);
            assert_eq!(proven.best, seen.best, "case {case}");
            assert_eq!(proven.status, seen.status);
            assert_eq!(
                proven.bound.total_cmp(&seen.bound),
                Ordering::Equal,
                "{} {}",
                proven.bound,
                seen.bound
            );
        }
    }

    #[test]
    fn forbidden_everywhere_is_infeasible_and_ties_go_to_the_first() {
        let nowhere = Valley {
            target: [0.0; 3],
            tilt: 0.0,
            forbid_multiples_of: 1,
        };
        let outcome = branch_and_bound(&nowhere, &GRID, u64::MAX).unwrap();
        assert_eq!((outcome.status, outcome.best), (Status::Infeasible, None));
        let tied = Valley {
            target: [0.5, 2.5, 0.5],
            tilt: 0.0,
            forbid_multiples_of: 0,
        };
        assert_eq!(
            branch_and_bound(&tied, &GRID, u64::MAX)
                .unwrap()
                .best
                .unwrap()
                .point,
            [0, 2, 0]
        );
    }

    #[test]
    fn a_limit_an_empty_range_no_variables_and_too_many_are_answers() {
        let valley = Valley {
            target: [0.4, 2.6, 0.5],
            tilt: 0.0,
            forbid_multiples_of: 0,
        };
        let stopped = branch_and_bound(&valley, &GRID, 0).unwrap();
        assert_eq!(stopped.status, Status::Feasible);
        assert!(stopped.bound <= stopped.best.unwrap().cost);
        let empty = branch_and_bound(&valley, &[Range { low: 1, high: 0 }], 5).unwrap();
        assert_eq!(empty.status, Status::Infeasible);
        let many = [Range { low: 0, high: 1 }; MOST_VARIABLES + 1];
        assert_eq!(
            branch_and_bound(&valley, &many, 5),
            Err(TooManyVariables {
                found: MOST_VARIABLES + 1
            })
        );
        assert_eq!(
            branch_and_bound(&Nothing, &[], 5)
                .unwrap()
                .best
                .unwrap()
                .point,
            Vec::<i32>::new()
        );
    }

    #[test]
    fn advancing_by_single_boxes_takes_the_same_course() {
        let valley = Valley {
            target: [0.4, 2.6, 0.5],
            tilt: 0.9,
            forbid_multiples_of: 3,
        };
        let at_once = branch_and_bound(&valley, &GRID, u64::MAX).unwrap();
        let mut search = BranchAndBound::new(&valley, &GRID).unwrap();
        while !search.advance(1) {
            let (_, bound, best) = search.progress();
            assert!(bound <= best);
        }
        assert_eq!(search.outcome(), at_once);
    }
}
