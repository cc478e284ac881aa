//! What readings of a measure tell beyond their mean: whether it drifts, what weighing more would bring, and the poured bulk
//! density of a powder.

use std::collections::BTreeSet;

use super::prepare::portion::{ASSUMED_SCATTER, ONE_READING_UNCERTAINTY};
use crate::book::{Evidence, Figure, IngredientId, Measure, Nominal, Reading, WATER_DENSITY};
use crate::quantity::Uncertain;

/// A difference counts as drift beyond this many standard uncertainties: a chance of about one in twenty that it is none.
const COVERAGE: f64 = 2.0;

/// Uses weighed together by somebody who begins (common practice, no source).
const FIRST_USES: u32 = 30;

/// The readings of one day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayCalibration {
    /// The day, `2026-05-04`.
    pub date: String,
    /// Grams of one use.
    pub grams: Uncertain,
    /// Uses that were weighed.
    pub uses: u32,
}

/// The last calibration of a measure against the one before it.
#[derive(Clone, Debug, PartialEq)]
pub struct Drift {
    /// The calibration before.
    pub before: DayCalibration,
    /// The last one.
    pub now: DayCalibration,
    /// Now less before, g a use.
    pub difference: Uncertain,
    /// The difference as a part of what it was before.
    pub relative: f64,
    /// Whether it is more than the readings scatter by.
    pub is_significant: bool,
}

/// The drift of a measure with an ingredient (or, for `None`, with water); `None` without readings of two days.
///
/// Both days scatter alike, so their spreads are pooled: `s² = Σ(Mᵢ − nᵢ·m_day)²/nᵢ / Σ(readings − 1)`, and the difference of
/// the two means has `u² = s²/N₁ + s²/N₂` with N uses weighed on each day. Without a second reading on either day a use is taken
/// to scatter by 4 % (assumed).
pub fn drift(measure: &Measure, ingredient: Option<&IngredientId>) -> Option<Drift> {
    let mut latest = dates(measure, ingredient).into_iter().rev();
    let (now, before) = (latest.next()?, latest.next()?);
    let (now, before) = (
        Day::of(measure, ingredient, now),
        Day::of(measure, ingredient, before),
    );
    let freedom = now.readings + before.readings - 2;
    let scatter = if freedom > 0 {
        ((now.squares + before.squares) / freedom as f64).sqrt()
    } else {
        ASSUMED_SCATTER * f64::midpoint(now.grams, before.grams)
    };
    let (now, before) = (now.calibration(scatter), before.calibration(scatter));
    let difference = Uncertain {
        value: now.grams.value - before.grams.value,
        u: now.grams.u.hypot(before.grams.u),
    };
    Some(Drift {
        relative: difference.value / before.grams.value,
        is_significant: difference.value.abs() > COVERAGE * difference.u,
        difference,
        before,
        now,
    })
}

/// By how much a measure weighs something else from one day to another, beyond the scatter of its uses: a standard deviation, as a
/// part of a use. `None` without readings of two days.
///
/// The component of variance between days, `σ² = (M − s²)/n₀` with `M = ΣN_d(m_d − m)²/(D − 1)`, the pooled square s² within days, and
/// `n₀ = (N − ΣN_d²/N)/(D − 1)` for D days of `N_d` uses (analysis of variance with one random factor; value from memory). It is 0 where the days
/// differ by no more than the uses do.
pub fn between_days(measure: &Measure, ingredient: Option<&IngredientId>) -> Option<f64> {
    let days: Vec<Day> = dates(measure, ingredient)
        .into_iter()
        .map(|date| Day::of(measure, ingredient, date))
        .collect();
    if days.len() < 2 {
        return None;
    }
    let uses: f64 = days.iter().map(|day| f64::from(day.uses)).sum();
    let weighted = days.iter().map(|day| f64::from(day.uses) * day.grams);
    let grams = weighted.sum::<f64>() / uses;
    let readings: usize = days.iter().map(|day| day.readings).sum();
    let freedom = readings - days.len();
    let within = if freedom > 0 {
        days.iter().map(|day| day.squares).sum::<f64>() / freedom as f64
    } else {
        (ASSUMED_SCATTER * grams).powi(2)
    };
    let steps = days.len() as f64 - 1.0;
    let between = days
        .iter()
        .map(|day| f64::from(day.uses) * (day.grams - grams).powi(2));
    let between = between.sum::<f64>() / steps;
    let squares: f64 = days.iter().map(|day| f64::from(day.uses).powi(2)).sum();
    let uses_a_day = (uses - squares / uses) / steps;
    Some(((between - within) / uses_a_day).max(0.0).sqrt() / grams)
}

/// The days of which there are readings.
pub(super) fn dates<'measure>(
    measure: &'measure Measure,
    ingredient: Option<&IngredientId>,
) -> BTreeSet<&'measure str> {
    let readings = of(measure, ingredient);
    readings
        .filter_map(|reading| reading.date.as_deref())
        .collect()
}

/// Readings that say something, of one ingredient or of water.
pub(super) fn of<'measure>(
    measure: &'measure Measure,
    ingredient: Option<&IngredientId>,
) -> impl Iterator<Item = &'measure Reading> {
    measure
        .readings
        .iter()
        .filter(move |reading| reading.weighed() == ingredient && reading.is_usable())
}

/// The readings of a day.
pub(super) struct Day<'date> {
    pub(super) date: &'date str,
    /// Uses that were weighed.
    pub(super) uses: u32,
    /// Grams of one use.
    pub(super) grams: f64,
    pub(super) readings: usize,
    /// `Σ(M − n·m)²/n` of the readings `M` of `n` uses around the mean `m` of one use.
    pub(super) squares: f64,
}

impl<'date> Day<'date> {
    pub(super) fn of(
        measure: &Measure,
        ingredient: Option<&IngredientId>,
        date: &'date str,
    ) -> Self {
        let readings: Vec<&Reading> = of(measure, ingredient)
            .filter(|reading| reading.date.as_deref() == Some(date))
            .collect();
        let uses: u32 = readings
            .iter()
            .fold(0, |sum, reading| sum.saturating_add(reading.uses));
        let grams =
            readings.iter().map(|reading| reading.grams()).sum::<f64>() / f64::from(uses.max(1));
        let square = |reading: &&Reading| {
            let uses = f64::from(reading.uses);
            (reading.grams() - uses * grams).powi(2) / uses
        };
        Self {
            date,
            uses,
            grams,
            readings: readings.len(),
            squares: readings.iter().map(square).sum(),
        }
    }

    fn calibration(&self, scatter: f64) -> DayCalibration {
        let u = scatter / f64::from(self.uses.max(1)).sqrt();
        DayCalibration {
            date: self.date.to_owned(),
            grams: Uncertain {
                value: self.grams,
                u,
            },
            uses: self.uses,
        }
    }
}

/// Readings of a measure from which the spread of its uses is known well enough to foretell by: with fewer the factor below has no
/// meaning.
const FORETELLS_FROM: usize = 4;

/// A day of weighing a measure, beside what had been foretold of it.
#[derive(Clone, Debug, PartialEq)]
pub struct ForetoldWeighing {
    /// The day; empty where none is stated.
    pub date: String,
    /// What was weighed; water for none.
    pub ingredient: Option<IngredientId>,
    /// Uses that were weighed.
    pub uses: u32,
    /// Grams of one use, as it was weighed.
    pub grams: f64,
    /// Grams of one use, as it was foretold of the mean of so many uses.
    pub foretold: Uncertain,
}

/// What was foretold of each day on which a measure was weighed: by the readings of the days before or, on the first one, by what the
/// measure is called to hold. Days between the two, with fewer than four readings before them, are left out.
///
/// The mean of N uses is foretold with `u² = u(m)² + s²/N`. With few readings `s` is not known well itself: for k of them u is
/// √((k − 1)/(k − 3)) times as large (JCGM 101:2008, 6.4.9.4).
pub fn measure_foretold(measure: &Measure) -> Vec<ForetoldWeighing> {
    let weighed: BTreeSet<Option<&IngredientId>> = measure
        .readings
        .iter()
        .filter(|reading| reading.is_usable())
        .map(Reading::weighed)
        .collect();
    let mut found = Vec::new();
    for ingredient in weighed {
        for date in dates(measure, ingredient) {
            let day = Day::of(measure, ingredient, date);
            let Some(foretold) = foretold_of(measure, ingredient, &day) else {
                continue;
            };
            found.push(ForetoldWeighing {
                date: date.to_owned(),
                ingredient: ingredient.cloned(),
                uses: day.uses,
                grams: day.grams,
                foretold,
            });
        }
    }
    found
}

fn foretold_of(
    measure: &Measure,
    ingredient: Option<&IngredientId>,
    day: &Day<'_>,
) -> Option<Uncertain> {
    let is_before = |reading: &&Reading| reading.date.as_deref().is_none_or(|date| date < day.date);
    let before = Measure {
        readings: measure.readings.iter().filter(is_before).cloned().collect(),
        ..measure.clone()
    };
    let uses = f64::from(day.uses.max(1));
    let Some(known) = before.calibration(ingredient) else {
        let value = match (measure.nominal?, ingredient) {
            (Nominal::Volume(millilitres), None) => millilitres * WATER_DENSITY,
            (Nominal::Mass(grams), Some(_)) => grams,
            _ => return None,
        };
        let of_measure = measure.assumed_relative_uncertainty() * value;
        let of_uses = ASSUMED_SCATTER * value / uses.sqrt();
        return (value > 0.0).then(|| Uncertain {
            value,
            u: of_measure.hypot(of_uses),
        });
    };
    if known.readings < FORETELLS_FROM {
        return None;
    }
    let (mean, scatter) = (known.u_mean?, known.scatter?);
    let count = known.readings as f64;
    let u = mean.hypot(scatter / uses.sqrt()) * ((count - 1.0) / (count - 3.0)).sqrt();
    (u > 0.0).then_some(Uncertain {
        value: known.grams,
        u,
    })
}

/// What more weighing would bring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoreWeighing {
    /// Uses weighed so far.
    pub uses: u32,
    /// Standard uncertainty of a use as it stands, g; `None` before there are two readings.
    pub u: Option<f64>,
    /// Uses to weigh in addition so that it halves.
    pub more_uses: u32,
}

/// How many more uses halve the uncertainty of a calibration: it falls with the root of the uses, so four times as many are
/// needed. With fewer than two readings there is no spread to halve yet, and thirty uses, ten at a time, give one.
pub fn more_weighing(measure: &Measure, ingredient: Option<&IngredientId>) -> MoreWeighing {
    let uses = of(measure, ingredient).fold(0_u32, |sum, reading| sum.saturating_add(reading.uses));
    let u = measure
        .calibration(ingredient)
        .and_then(|calibration| calibration.u_mean);
    let more_uses = if u.is_some() {
        uses.saturating_mul(3)
    } else {
        FIRST_USES.saturating_sub(uses).max(1)
    };
    MoreWeighing { uses, u, more_uses }
}

/// Poured bulk density of a powder, g/ml, from readings of a measure with the powder and with water; `None` without both.
pub fn bulk_density_from(measure: &Measure, powder: &IngredientId) -> Option<Figure> {
    let grams = grams_of_use(measure, Some(powder))?;
    let volume = volume_of_use(measure)?;
    let value = grams.value / volume.value;
    let u = value * (grams.u / grams.value).hypot(volume.u / volume.value);
    Some(Figure {
        value,
        evidence: Evidence::Measured,
        u: Some(u),
    })
}

/// What a level use of a measure weighs of a powder of a bulk density, g; `None` when its volume was not measured with water.
pub fn grams_from_bulk_density(measure: &Measure, bulk_density: Figure) -> Option<Uncertain> {
    let volume = volume_of_use(measure)?;
    let value = volume.value * bulk_density.value;
    let relative = bulk_density.standard_uncertainty() / bulk_density.value;
    Some(Uncertain {
        value,
        u: value * relative.hypot(volume.u / volume.value),
    })
}

/// Volume of one use, ml, from readings with water of 20 °C.
pub fn volume_of_use(measure: &Measure) -> Option<Uncertain> {
    let grams = grams_of_use(measure, None)?;
    Some(Uncertain {
        value: grams.value / WATER_DENSITY,
        u: grams.u / WATER_DENSITY,
    })
}

fn grams_of_use(measure: &Measure, ingredient: Option<&IngredientId>) -> Option<Uncertain> {
    let found = measure.calibration(ingredient)?;
    Some(Uncertain {
        value: found.grams,
        u: found
            .u_mean
            .unwrap_or(ONE_READING_UNCERTAINTY * found.grams),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{MeasureId, MeasureKind, ReadingAmount};

    fn measure(kind: MeasureKind, readings: &[(Option<&str>, u32, f64, Option<&str>)]) -> Measure {
        Measure {
            readings: readings
                .iter()
                .map(|&(ingredient, uses, grams, date)| Reading {
                    ingredient: ingredient.map(|id| IngredientId::new(id).unwrap()),
                    uses,
                    amount: ReadingAmount::Grams(grams),
                    date: date.map(str::to_owned),
                })
                .collect(),
            ..Measure::new(MeasureId::new("measure").unwrap(), "measure".into(), kind)
        }
    }

    #[test]
    fn a_worn_pump_shows_and_scatter_alone_does_not() {
        let (may, june) = (Some("2026-05-04"), Some("2026-06-08"));
        // By hand: means 10.0 and 9.0; Σ(M − nm)²/n = 2·(1/10) + 2·(1/10) = 0.4 over 2 degrees of freedom, s² = 0.2;
        // u² = 0.2/20 + 0.2/20 = 0.02, u = 0.141.
        let worn = measure(
            MeasureKind::Pump,
            &[
                (None, 10, 99.0, may),
                (None, 10, 101.0, may),
                (None, 10, 89.0, june),
                (None, 10, 91.0, june),
            ],
        );
        let found = drift(&worn, None).unwrap();
        assert!(
            (found.difference.value + 1.0).abs() < 1e-12
                && (found.difference.u - 0.02_f64.sqrt()).abs() < 1e-12
        );
        assert!(found.is_significant && (found.relative + 0.1).abs() < 1e-12);
        assert_eq!(found.now.date, "2026-06-08");
        let same = measure(
            MeasureKind::Pump,
            &[
                (None, 10, 98.0, may),
                (None, 10, 102.0, may),
                (None, 10, 99.0, june),
                (None, 10, 103.0, june),
            ],
        );
        assert!(!drift(&same, None).unwrap().is_significant);
    }

    #[test]
    fn one_day_or_no_date_is_no_drift() {
        let one_day = measure(
            MeasureKind::Pump,
            &[(None, 10, 99.0, Some("2026-05-04")), (None, 10, 90.0, None)],
        );
        assert_eq!(drift(&one_day, None), None);
    }

    #[test]
    fn only_the_last_two_days_are_compared() {
        let days = ["2025-12-01", "2026-01-12", "2026-02-09"];
        let pump = measure(
            MeasureKind::Pump,
            &[
                (None, 10, 50.0, Some(days[0])),
                (None, 10, 100.0, Some(days[1])),
                (None, 10, 100.5, Some(days[2])),
            ],
        );
        let found = drift(&pump, None).unwrap();
        assert_eq!(found.before.date, days[1]);
        assert!(
            !found.is_significant,
            "one reading a day scatters by 4 % of a use, assumed: {found:?}"
        );
    }

    #[test]
    fn what_days_differ_by_is_what_their_uses_do_not_explain() {
        let (may, june) = (Some("2026-05-04"), Some("2026-06-08"));
        // By hand: means 10 and 9, within s² = 0.8 + 0.8 over 2 = 0.8, M = 20·0.25 + 20·0.25 = 10, n₀ = 40 − 20 = 20:
        // σ = √(9.2/20) = 0.678, of 9.5.
        let drifts = measure(
            MeasureKind::Pump,
            &[
                (None, 10, 98.0, may),
                (None, 10, 102.0, may),
                (None, 10, 88.0, june),
                (None, 10, 92.0, june),
            ],
        );
        let found = between_days(&drifts, None).unwrap();
        assert!((found - 0.46_f64.sqrt() / 9.5).abs() < 1e-12, "{found}");
        let steady = measure(
            MeasureKind::Pump,
            &[
                (None, 10, 98.0, may),
                (None, 10, 102.0, may),
                (None, 10, 100.5, june),
            ],
        );
        assert_eq!(between_days(&steady, None), Some(0.0));
        let one_day = measure(MeasureKind::Pump, &[(None, 10, 98.0, may)]);
        assert_eq!(between_days(&one_day, None), None);
    }

    #[test]
    fn four_times_the_uses_halve_the_uncertainty() {
        let pump = measure(
            MeasureKind::Pump,
            &[(None, 10, 98.0, None), (None, 10, 102.0, None)],
        );
        let advice = more_weighing(&pump, None);
        assert_eq!((advice.uses, advice.more_uses), (20, 60));
        assert_eq!(
            more_weighing(&measure(MeasureKind::Pump, &[]), None).more_uses,
            30
        );
    }

    #[test]
    fn bulk_density_and_grams_undo_each_other() {
        let scoop = measure(
            MeasureKind::Scoop,
            &[
                (None, 5, 249.55, None),
                (None, 5, 249.55, None),
                (Some("powder"), 5, 120.0, None),
                (Some("powder"), 5, 130.0, None),
            ],
        );
        let powder = IngredientId::new("powder").unwrap();
        let bulk = bulk_density_from(&scoop, &powder).unwrap();
        // 50 ml hold 25 g.
        assert!((bulk.value - 0.5).abs() < 1e-9, "{bulk:?}");
        let grams = grams_from_bulk_density(&scoop, bulk).unwrap();
        assert!((grams.value - 25.0).abs() < 1e-9 && grams.u > 0.0);
        assert_eq!(
            bulk_density_from(
                &measure(MeasureKind::Scoop, &[(None, 5, 250.0, None)]),
                &powder
            ),
            None
        );
    }
}
