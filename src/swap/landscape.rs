//! The cost of a candidate: how far it is from its targets, in noticeable steps, and what else it should be.
//!
//! `taste(n) = Σ_axes w · ((p(n) − p*) / step)²`. The closest taste has the cost `taste + 0.01` for each line that moves from the
//! standard's amount; the other aims put something else first and keep every axis within a limit. What is cheapest is found by
//! its cost alone, and of all that cost no more the closest taste by a second search ([`TasteLandscape::no_more_than`]). Every cost
//! is evaluated by the real balance. Forbidden are candidates that do not fit the cup, leave the temperature window or break a cap.

use std::sync::Arc;

use crate::balance::{
    Component, Figures, Fill, Measurand, Prepared, PreparedLine, figures_with, flavour_figure,
    flavour_slot,
};
use crate::book::{Axis, TemperatureWindow};
use crate::optimiser::{Landscape, Range};

use super::floor::{Cap, Floor, FloorInput, Of, Small, Term};
use super::obstacle::{CapKind, Obstacle, powder_and_hot_water};

/// What a line costs that moves from the standard's amount, in squared steps.
pub(super) const COST_OF_A_MOVE: f64 = 0.01;

/// Hot water that a gram of powder needs to dissolve in, g (common practice, no source).
pub(super) const HOT_WATER_PER_GRAM_OF_POWDER: f64 = 2.0;

/// What a figure may be above its cap for rounding.
const CAP_SLACK: f64 = 1e-9;

/// What the engine's temperature may be off, K, with room.
const TEMPERATURE_SLACK: f64 = 1e-8;

/// Rounds that the minimum of a box is looked for.
const ROUNDS: usize = 12;

/// What a candidate should be best at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// The closest taste.
    Taste,
    /// As few lines as can be that move; of equal ones the closest taste.
    FewestChanges,
    /// The least cost of the ingredients.
    Cost,
    /// The least sugar.
    Sugar,
}

impl Aim {
    /// Weight of the squared distance beside what comes first: all of it together never outweighs one line that moves.
    fn taste_weight(self, targets: &[Target]) -> f64 {
        let most = |target: &Target| {
            let weighed = target.weight > 0.0;
            let steps = target.limit.filter(|_| weighed);
            steps.map_or(0.0, |steps| target.weight * steps * steps)
        };
        match self {
            Self::Taste => 1.0,
            Self::FewestChanges => 1e-3_f64.min(0.5 / targets.iter().map(most).sum::<f64>()),
            Self::Cost | Self::Sugar => 0.0,
        }
    }

    fn move_cost(self) -> f64 {
        match self {
            Self::Taste => COST_OF_A_MOVE,
            Self::FewestChanges => 1.0,
            Self::Cost | Self::Sugar => 0.0,
        }
    }

    /// What is made small instead of the taste.
    fn small(self) -> Option<Small> {
        match self {
            Self::Cost => Some(Small::Cost),
            Self::Sugar => Some(Small::Sugar),
            Self::Taste | Self::FewestChanges => None,
        }
    }
}

/// One axis on which a candidate is compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Target {
    /// The axis.
    pub axis: Axis,
    /// Its place among the figures.
    pub slot: usize,
    /// The value aimed at, in the unit of the axis.
    pub value: f64,
    /// The noticeable step.
    pub step: f64,
    /// Weight in the distance.
    pub weight: f64,
    /// How many steps it may be off at most.
    pub limit: Option<f64>,
}

impl Target {
    /// The place of an axis among the figures of a drink with these flavours; `None` for a flavour that it can't have.
    pub fn slot_of(flavours: &[String], axis: &Axis) -> Option<usize> {
        let measurand = match axis {
            Axis::Flavour(name) => {
                return flavours
                    .iter()
                    .position(|known| known == name)
                    .map(flavour_figure);
            }
            Axis::Sweetness => Measurand::Sweetness,
            Axis::TeaStrength => Measurand::TeaStrength,
            Axis::Creaminess => Measurand::Creaminess,
            Axis::Acidity => Measurand::Acidity,
            Axis::Body => Measurand::Body,
            Axis::Temperature => Measurand::ServingTemperature,
            Axis::Volume => Measurand::Volume,
        };
        Some(measurand.slot())
    }

    fn term(&self) -> Term {
        let of = match &self.axis {
            Axis::Sweetness => Of::Sweetness,
            Axis::TeaStrength => Of::Component(Component::TeaSolids),
            Axis::Flavour(_) => Of::Place(flavour_slot(self.slot - flavour_figure(0))),
            Axis::Creaminess => Of::Component(Component::Fat),
            Axis::Acidity => Of::Component(Component::Acid),
            Axis::Body => Of::Body,
            Axis::Temperature => Of::Temperature,
            Axis::Volume => Of::Volume,
        };
        Term {
            of,
            value: self.value,
            step: self.step,
            weight: self.weight,
            limit: self.limit,
        }
    }
}

/// A line that may move.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dimension {
    /// Index among the prepared lines.
    pub line: usize,
    /// One step, in units of the line.
    pub step: f64,
    /// The standard's amount, in units of the line.
    pub standard: f64,
    /// The steps that it may take.
    pub range: Range,
}

/// What a candidate must keep.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// Serving temperatures.
    pub window: TemperatureWindow,
    /// Sugars of the mixed drink at most, g per 100 ml of it.
    pub sugar_per_100_ml: Option<f64>,
    /// Energy at most, kJ.
    pub energy_kj: Option<f64>,
    /// Cost at most, cup and closure included, in the book's currency.
    pub cost: Option<f64>,
    /// Ice that is left at least, g.
    pub ice_left: Option<f64>,
    /// Hot water at least, g per gram of powder.
    pub hot_water: Option<f64>,
    /// Temperature from which water counts as hot, °C.
    pub hot_from: f64,
}

/// The taste of every candidate against its targets.
#[derive(Clone, Debug)]
pub struct TasteLandscape {
    prepared: Arc<Prepared>,
    targets: Vec<Target>,
    dimensions: Vec<Dimension>,
    /// The dimension that each prepared line belongs to.
    dimension_of: Vec<Option<usize>>,
    bounds: Bounds,
    aim: Aim,
    /// What must not be more than this.
    most: Option<(Small, f64)>,
    floor: Floor,
    /// Whether every mass is known, so that a missing one is that of an amount which does not fill.
    masses_are_known: bool,
}

impl TasteLandscape {
    /// The landscape of a prepared candidate for the closest taste.
    pub fn new(
        mut prepared: Prepared,
        targets: Vec<Target>,
        dimensions: Vec<Dimension>,
        bounds: Bounds,
    ) -> Self {
        for line in &mut prepared.lines {
            // The search looks at values only; what is uncertain is worked out for what it finds.
            line.sensitivities.clear();
        }
        let dimension_of = (0..prepared.lines.len())
            .map(|line| {
                dimensions
                    .iter()
                    .position(|dimension| dimension.line == line)
            })
            .collect();
        let mut landscape = Self {
            masses_are_known: masses_are_known(&prepared),
            prepared: Arc::new(prepared),
            targets,
            dimensions,
            dimension_of,
            bounds,
            aim: Aim::Taste,
            most: None,
            floor: Floor::default(),
        };
        landscape.floor = floor(&landscape);
        landscape
    }

    /// The same candidates with another aim, no axis further off than its limit (in steps, in the order of the targets).
    #[must_use]
    pub fn aiming_at(&self, aim: Aim, limits: &[f64]) -> Self {
        let mut landscape = self.clone();
        for (target, limit) in landscape.targets.iter_mut().zip(limits) {
            target.limit = Some(*limit);
        }
        landscape.aim = aim;
        landscape.floor = floor(&landscape);
        landscape
    }

    /// The closest taste among the candidates of this landscape that have no more than `most` of what it makes small; `None`
    /// for an aim that makes nothing small.
    pub fn no_more_than(&self, most: f64) -> Option<Self> {
        let mut landscape = self.clone();
        landscape.most = Some((self.aim.small()?, most + self.tolerance()));
        landscape.aim = Aim::Taste;
        landscape.floor = floor(&landscape);
        Some(landscape)
    }

    /// Whether all that may move states this, so that candidates can be ordered by it: what stays adds the same to each.
    pub fn orders_by(&self, component: Component) -> bool {
        let lines = self.prepared.lines.iter().zip(&self.dimension_of);
        lines
            .filter(|(line, dimension)| dimension.is_some() || line.fill.is_some())
            .all(|(line, _)| line.per_unit.knows(component))
    }

    fn small_of(&self, small: Small, figures: &Figures) -> f64 {
        match small {
            // The cup costs the same whatever is in it, known or not.
            Small::Cost => {
                figures.of[Measurand::Cost.slot()] - self.prepared.setup.serviceware_cost
            }
            Small::Sugar => figures.of[Measurand::TotalSugar.slot()],
        }
    }

    /// The same candidates, with other things to keep.
    #[must_use]
    pub(super) fn bounded_by(&self, bounds: Bounds) -> Self {
        let mut landscape = self.clone();
        landscape.bounds = bounds;
        landscape.floor = floor(&landscape);
        landscape
    }

    /// The whole numbers that each line may take.
    pub fn ranges(&self) -> Vec<Range> {
        self.dimensions
            .iter()
            .map(|dimension| dimension.range)
            .collect()
    }

    /// The targets.
    pub fn targets(&self) -> &[Target] {
        &self.targets
    }

    /// What must be kept.
    pub fn bounds(&self) -> &Bounds {
        &self.bounds
    }

    /// The figures of a candidate.
    pub fn figures(&self, point: &[i32]) -> Figures {
        figures_with(
            &self.prepared,
            &|line: &PreparedLine, at| match self.dimension_of[at] {
                Some(dimension) => f64::from(point[dimension]) * self.dimensions[dimension].step,
                None => line.count,
            },
        )
    }

    /// Why a candidate is forbidden, if it is.
    pub fn obstacle(&self, point: &[i32], figures: &Figures) -> Option<Obstacle> {
        let setup = &self.prepared.setup;
        if self.masses_are_known && figures.missing(Measurand::Mass) != 0 {
            return Some(Obstacle::FillOutOfReach);
        }
        if let (Some(fill), Some(capacity)) = (figures.get(Measurand::Fill), setup.capacity) {
            let room = (capacity - setup.head_room) / capacity * 100.0;
            // An amount that fills to the rim ends exactly there.
            if fill > room + 0.01 {
                return Some(Obstacle::Cup { fill, room });
            }
        }
        let left = figures.of[Measurand::IceLeft.slot()];
        let knows_heat = figures.get(Measurand::ServingTemperature).is_some();
        if let Some(wanted) = self.bounds.ice_left.filter(|wanted| left < *wanted)
            && knows_heat
        {
            return Some(Obstacle::IceLeft { left, wanted });
        }
        let window = self.bounds.window;
        // Where the temperature is not known, everything else must still be kept.
        if let Some(celsius) = figures.get(Measurand::ServingTemperature)
            && !(window.from..=window.to).contains(&celsius)
        {
            return Some(Obstacle::Temperature { celsius, window });
        }
        let of = |measurand: Measurand| figures.of[measurand.slot()];
        let caps = [
            (
                CapKind::Sugar,
                of(Measurand::SugarPer100Ml),
                self.bounds.sugar_per_100_ml,
            ),
            (
                CapKind::Energy,
                of(Measurand::EnergyKj),
                self.bounds.energy_kj,
            ),
            (CapKind::Cost, of(Measurand::Cost), self.bounds.cost),
        ];
        for (kind, found, most) in caps {
            if let Some(most) = most.filter(|most| found > most + CAP_SLACK) {
                return Some(Obstacle::Cap { kind, found, most });
            }
        }
        self.dry_powder(point)
    }

    fn dry_powder(&self, point: &[i32]) -> Option<Obstacle> {
        let needed = self.bounds.hot_water?;
        let count = |at: usize| match self.dimension_of[at] {
            Some(dimension) => f64::from(point[dimension]) * self.dimensions[dimension].step,
            None => self.prepared.lines[at].count,
        };
        let (powder, hot) = powder_and_hot_water(&self.prepared, self.bounds.hot_from, count);
        (hot + 1e-6 < needed * powder).then_some(Obstacle::HotWater {
            hot,
            powder,
            needed,
        })
    }

    /// The squared distance of figures from the targets.
    pub fn squared_distance(&self, figures: &Figures) -> f64 {
        self.targets
            .iter()
            .map(|target| target.weight * steps(target, figures).powi(2))
            .sum()
    }

    /// How far figures are off on each target, in steps.
    pub fn deviations(&self, figures: &Figures) -> Vec<f64> {
        self.targets
            .iter()
            .map(|target| steps(target, figures))
            .collect()
    }

    /// Lines that move from the standard's amount.
    pub(super) fn moves(&self, point: &[i32]) -> usize {
        let moved = self.dimensions.iter().zip(point).filter(|(dimension, at)| {
            (f64::from(**at) * dimension.step - dimension.standard).abs() > 1e-9
        });
        moved.count()
    }

    /// Whether a line fills what the others leave, so that its own amount is no choice.
    pub fn fills_volume(&self) -> bool {
        self.prepared
            .lines
            .iter()
            .any(|line| matches!(line.fill, Some(Fill::Volume(_))))
    }

    /// Whether the floor rests on enclosures of the drink, not on the moves alone.
    pub fn is_enclosed(&self) -> bool {
        self.floor.is_modelled()
    }
}

fn steps(target: &Target, figures: &Figures) -> f64 {
    (figures.of[target.slot] - target.value) / target.step
}

fn masses_are_known(prepared: &Prepared) -> bool {
    let mut lines = prepared.lines.iter();
    lines.all(|line| line.per_unit.knows(Component::Mass))
}

fn floor(landscape: &TasteLandscape) -> Floor {
    let TasteLandscape {
        prepared,
        targets,
        dimensions,
        bounds,
        aim,
        ..
    } = landscape;
    let terms: Vec<Term> = targets.iter().map(Target::term).collect();
    let setup = &prepared.setup;
    let mut caps = Vec::new();
    caps.extend(landscape.most.map(|(small, most)| match small {
        Small::Cost => Cap::Cost(most),
        Small::Sugar => Cap::Sugar(most),
    }));
    caps.extend(
        bounds
            .sugar_per_100_ml
            .map(|most| most + CAP_SLACK)
            .map(Cap::SugarPer100Ml),
    );
    caps.extend(
        bounds
            .energy_kj
            .map(|most| most + CAP_SLACK)
            .map(Cap::EnergyKj),
    );
    caps.extend(
        bounds
            .cost
            .map(|cost| Cap::Cost(cost - setup.serviceware_cost + CAP_SLACK)),
    );
    // With a mass that is not known neither the temperature nor the level is, and none is asked of them.
    if masses_are_known(prepared) {
        caps.push(Cap::Hottest(bounds.window.to + TEMPERATURE_SLACK));
        caps.push(Cap::Coolest(bounds.window.from - TEMPERATURE_SLACK));
        caps.extend(
            setup
                .capacity
                .map(|capacity| Cap::Level(capacity - setup.head_room + 0.000_1 * capacity)),
        );
    }
    let lines: Vec<(usize, f64)> = dimensions
        .iter()
        .map(|dimension| (dimension.line, dimension.step))
        .collect();
    let ranges: Vec<Range> = dimensions.iter().map(|dimension| dimension.range).collect();
    let standard: Vec<f64> = dimensions
        .iter()
        .map(|dimension| dimension.standard / dimension.step)
        .collect();
    Floor::new(&FloorInput {
        prepared,
        dimensions: &lines,
        ranges: &ranges,
        standard: &standard,
        terms: &terms,
        caps: &caps,
        small: aim.small(),
        taste_weight: aim.taste_weight(targets),
        move_cost: aim.move_cost(),
    })
}

impl Landscape for TasteLandscape {
    fn cost(&self, point: &[i32]) -> Option<f64> {
        let figures = self.figures(point);
        if self.obstacle(point, &figures).is_some() {
            return None;
        }
        let within = |target: &Target| {
            target
                .limit
                .is_none_or(|limit| steps(target, &figures).abs() <= limit + 1e-9)
        };
        let is_small = self
            .most
            .is_none_or(|(small, most)| self.small_of(small, &figures) <= most);
        if !is_small || !self.targets.iter().all(within) {
            return None;
        }
        Some(match self.aim.small() {
            Some(small) => self.small_of(small, &figures),
            None => {
                self.aim.move_cost() * self.moves(point) as f64
                    + self.aim.taste_weight(&self.targets) * self.squared_distance(&figures)
            }
        })
    }

    fn floor(&self, low: &[i32], high: &[i32]) -> f64 {
        let mut hint = [0.0; crate::optimiser::MOST_VARIABLES];
        for ((hint, low), high) in hint.iter_mut().zip(low).zip(high) {
            *hint = f64::midpoint(f64::from(*low), f64::from(*high));
        }
        self.floor.of(low, high, &mut hint[..low.len()], ROUNDS)
    }

    fn floor_near(&self, low: &[i32], high: &[i32], hint: &mut [f64]) -> f64 {
        self.floor.of(low, high, hint, ROUNDS)
    }

    /// What rounding may have done to a cost or to sugar: candidates that differ by no more are equal, and the closest taste among
    /// them is looked for by itself.
    fn tolerance(&self) -> f64 {
        match self.aim {
            Aim::Taste | Aim::FewestChanges => 0.0,
            Aim::Cost | Aim::Sugar => 4.0 * self.floor.rounding(),
        }
    }

    fn weight(&self, variable: usize) -> f64 {
        self.floor.weight(variable)
    }
}
