//! What is known of a cup before anyone reads a thermometer in it: physics, and cups whose cooling has been published.

use std::sync::LazyLock;

/// Parameters of a cup: through wall and surface, by evaporation, what the wall still takes, and how long it takes it.
pub(super) const CUP_PARAMETERS: usize = 4;

/// A published cup, with the parameters that the law of cooling takes on over all of its readings (the readings and their
/// sources are in `tests/published-cases/cooling.ron`, and a test fits them again). A parameter that they leave open by more
/// than a factor of 2.2, and evaporation under a lid, are `None`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PublishedCup {
    /// Who published it, as a key.
    pub source: &'static str,
    /// Which cup, as a key.
    pub name: &'static str,
    /// Heat through wall and surface at 40 K, W/(m² K).
    pub dry: Option<f64>,
    /// Heat by evaporation at 40 K in a room of 22 °C, W/(m² K) of the open top.
    pub evaporation: Option<f64>,
    /// What the wall takes after the first reading, K.
    pub wall: Option<f64>,
    /// The time constant with which it takes that, minutes.
    pub wall_minutes: Option<f64>,
}

impl PublishedCup {
    /// The parameters in the order of the fit.
    pub fn parameters(&self) -> [Option<f64>; CUP_PARAMETERS] {
        [self.dry, self.evaporation, self.wall, self.wall_minutes]
    }
}

const fn cup(
    source: &'static str,
    name: &'static str,
    [dry, evaporation, wall, wall_minutes]: [Option<f64>; CUP_PARAMETERS],
) -> PublishedCup {
    PublishedCup {
        source,
        name,
        dry,
        evaporation,
        wall,
        wall_minutes,
    }
}

/// Cups of five sources. Readings at the outside of a wall are not among them.
pub const PUBLISHED_CUPS: [PublishedCup; 10] = [
    cup(
        "Gould-Tobochnik",
        "glass-cup",
        [Some(12.26), Some(44.0), None, None],
    ),
    cup(
        "Wagon",
        "mug",
        [Some(5.39), Some(48.5), Some(1.23), Some(0.886)],
    ),
    cup(
        "Lobanov",
        "thermos-mug-with-cap",
        [Some(5.32), None, Some(3.78), Some(2.24)],
    ),
    cup("Lobanov", "iron-mug", [Some(6.62), Some(55.1), None, None]),
    cup(
        "Lobanov",
        "ceramic-mug",
        [Some(8.14), Some(46.0), None, Some(3.09)],
    ),
    cup(
        "CHE 212",
        "ceramic-mug",
        [None, None, Some(5.76), Some(0.622)],
    ),
    cup("CHE 212", "vacuum-mug", [None, None, None, Some(1.8)]),
    cup("MPC", "small-can-22.6-g", [Some(23.5), None, None, None]),
    cup("MPC", "small-can-26.0-g", [Some(16.5), None, None, None]),
    cup("MPC", "small-can-16.4-g", [Some(18.1), None, None, None]),
];

/// What physics says before any cup has been measured, as a value with its uncertainty as a part of it, in the order of
/// [`PublishedCup::parameters`] (assumed):
///
/// - free convection and radiation carry 11 W/(m² K) off a surface at 40 K, of which table and wall hold some back;
/// - free convection of 5 W/(m² K) takes vapour along that carries eight times as much heat (Lewis's relation, 66 Pa/K);
/// - a wall takes a kelvin or two after the first reading, within a minute or two: thin steel less, a thick mug more.
const PHYSICS: [(f64, f64); CUP_PARAMETERS] = [(8.0, 0.5), (40.0, 0.5), (1.5, 1.0), (1.5, 0.6)];

/// How many cups the value of physics counts for.
const PHYSICS_COUNTS_FOR: f64 = 1.0;

/// How many cups its scatter counts for.
const SCATTER_COUNTS_FOR: f64 = 4.0;

/// What another cup may be like: logarithms of its parameters, normally distributed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CupPrior {
    /// Logarithms of the likeliest values, in the order of [`PublishedCup::parameters`].
    pub mean: [f64; CUP_PARAMETERS],
    /// Their standard uncertainties.
    pub u: [f64; CUP_PARAMETERS],
}

impl CupPrior {
    /// Physics and all published cups.
    pub fn published() -> &'static Self {
        static PUBLISHED: LazyLock<CupPrior> = LazyLock::new(|| CupPrior::without(""));
        &PUBLISHED
    }

    /// Physics and the published cups of all sources but one.
    pub fn without(source: &str) -> Self {
        let of = |parameter| predicted(parameter, source);
        let of = [of(0), of(1), of(2), of(3)];
        Self {
            mean: of.map(|(mean, _)| mean),
            u: of.map(|(_, u)| u),
        }
    }

    /// Hardly anything: for the fit of a whole published curve.
    pub fn open() -> Self {
        Self {
            mean: PHYSICS.map(|(value, _)| value.ln()),
            u: [1.5, 1.5, 1.5, 1.0],
        }
    }
}

/// The logarithm of a parameter of the next cup: the normal distribution with unknown mean and variance and its conjugate
/// prior (Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 3.3). Each source counts as one cup, since its cups
/// share room, thermometer and hand; the standard uncertainty is that of the t distribution that is predicted.
fn predicted(parameter: usize, without: &str) -> (f64, f64) {
    let cups = || {
        PUBLISHED_CUPS
            .iter()
            .filter(|cup| cup.source != without)
            .filter_map(|cup| Some((cup.source, cup.parameters()[parameter]?.ln())))
    };
    let weighed = || {
        cups().map(|(source, value)| {
            let of_source = cups().filter(|(other, _)| *other == source).count();
            (1.0 / of_source as f64, value)
        })
    };
    let count: f64 = weighed().map(|(weight, _)| weight).sum();
    let (physics, scatter) = (PHYSICS[parameter].0.ln(), PHYSICS[parameter].1);
    let sum: f64 = weighed().map(|(weight, value)| weight * value).sum();
    let mean = if count > 0.0 { sum / count } else { physics };
    let squares: f64 = weighed()
        .map(|(weight, value)| weight * (value - mean).powi(2))
        .sum();
    let counts_for = PHYSICS_COUNTS_FOR + count;
    let freedom = SCATTER_COUNTS_FOR + count;
    let apart = PHYSICS_COUNTS_FOR * count / counts_for * (mean - physics).powi(2);
    let variance = (SCATTER_COUNTS_FOR * scatter * scatter + squares + apart) / freedom;
    let predicted = variance * (1.0 + 1.0 / counts_for) * freedom / (freedom - 2.0);
    (
        (PHYSICS_COUNTS_FOR * physics + sum) / counts_for,
        predicted.sqrt(),
    )
}
