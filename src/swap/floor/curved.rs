//! Sweetness with high-potency sweeteners: a curve of each concentration, enclosed box by box.

use crate::balance::HIGH_POTENCY_SLOTS;
use crate::book::HighPotencySweetener;

use super::enclosure::Enclosed;
use super::form::{Bounds, Interval};
use super::rows::{CurvedSweetness, Row, Rows};

/// What the sweetness with high-potency sweeteners costs at least, and as a square for the minorant.
///
/// Each response rises with its concentration, so the sweetness lies between that of the least and of the greatest concentrations.
/// By the mean value theorem a response is that at the middle of the box plus a slope somewhere in the box times the way from there;
/// with the middle of the slope's interval the deviation times the volume is linear, and the rest of the interval goes into the
/// offset.
pub(super) fn curved(
    rows: &Rows,
    known: [Option<HighPotencySweetener>; HIGH_POTENCY_SLOTS],
    enclosed: &Enclosed,
    bounds: &Bounds,
    volume: Interval,
) -> Curved {
    let Some(CurvedSweetness {
        term,
        sugars,
        sweeteners,
    }) = &rows.curved
    else {
        return Curved::NONE;
    };
    let over_volume = |row: &Row| {
        let amount = row.form.range(bounds).plus(row.offset(enclosed));
        Interval::new(
            (amount.low / volume.high).max(0.0),
            amount.high.max(0.0) / volume.low,
        )
    };
    let mut range = over_volume(sugars);
    let mut sum = *sugars;
    let (mut by_volume, mut rest) = (-term.value, 1e-9 * volume.high);
    for (slot, row) in sweeteners {
        let Some(sweetener) = known[*slot] else {
            continue;
        };
        let concentration = over_volume(row).times(1000.0);
        range = range.plus(Interval::new(
            sweetener.response_percent(concentration.low),
            sweetener.response_percent(concentration.high),
        ));
        let slope = slope_within(sweetener, concentration);
        let middle = concentration.middle();
        let by_sweetener = slope.middle();
        by_volume += sweetener.response_percent(middle) - by_sweetener * middle;
        rest += volume.high * slope.width() / 2.0 * concentration.width() / 2.0;
        sum = sum.plus(&row.times(1000.0 * by_sweetener));
    }
    let off = range
        .plus(Interval::new(-term.value - 1e-9, -term.value + 1e-9))
        .least_distance_from_zero()
        / term.step;
    let sum = sum.plus(&rows.volume.times(by_volume));
    let offset = sum.offset(enclosed).plus(Interval::new(-rest, rest));
    let limits = term.limit.map(|limit| {
        let most = (limit + 1e-9) * term.step;
        let scale = 1.0 / (term.step * volume.high);
        let room = rows.volume.times(-most);
        let side = |row: Row, low: f64| {
            let side = row.plus(&room).times(scale);
            (side, (low + room.offset(enclosed).low) * scale)
        };
        [side(sum, offset.low), side(sum.times(-1.0), -offset.high)]
    });
    Curved {
        least: term.weight * off * off,
        square: Some((sum, term.weight / (term.step * term.step), offset)),
        limits,
    }
}

/// What the curved axis contributes in a box.
pub(super) struct Curved {
    pub(super) least: f64,
    pub(super) square: Option<(Row, f64, Interval)>,
    /// Both sides of its limit, with the low end of their offset.
    pub(super) limits: Option<[(Row, f64); 2]>,
}

impl Curved {
    const NONE: Self = Self {
        least: 0.0,
        square: None,
        limits: None,
    };
}

/// Slope of the response of a sweetener between two concentrations: `Rm·k/(k + C)²`, which falls with the concentration.
fn slope_within(sweetener: HighPotencySweetener, concentration: Interval) -> Interval {
    let curve = sweetener.curve();
    let slope = |c: f64| {
        let beyond = curve.half_way_mg_per_l + c;
        curve.ceiling_percent * curve.half_way_mg_per_l / (beyond * beyond)
    };
    Interval::new(slope(concentration.high), slope(concentration.low))
}
