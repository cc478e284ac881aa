//! Sweetness with high-potency sweeteners: a curve of the concentrations, enclosed box by box.

use crate::balance::HIGH_POTENCY_SLOTS;
use crate::balance::published::sweetness;
use crate::book::HighPotencySweetener;

use super::enclosure::Enclosed;
use super::form::{Bounds, Interval};
use super::rows::{CurvedSweetness, Row, Rows};

/// What the sweetness with high-potency sweeteners costs at least, and as a square for the minorant where there is one
/// such sweetener.
///
/// What they taste of rises with every concentration, so its range lies between that of the least and of the greatest
/// concentrations. By the mean value theorem its deviation is that at the middle of the box plus the slopes somewhere in
/// the box times the way from there; with the middle of each slope's interval the deviation times the volume is linear, and
/// the rest of the interval goes into the offset.
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
    let mut low = [(HighPotencySweetener::Sucralose, 0.0); HIGH_POTENCY_SLOTS];
    let mut high = low;
    for (slot, row) in sweeteners {
        if let Some(sweetener) = known[*slot] {
            let concentration = over_volume(row).times(1000.0);
            low[*slot] = (sweetener, concentration.low);
            high[*slot] = (sweetener, concentration.high);
        }
    }
    let sugar = over_volume(sugars);
    let range = Interval::new(
        sweetness::combined(sugar.low, &low),
        sweetness::combined(sugar.high, &high),
    );
    let off = range
        .plus(Interval::new(-term.value - 1e-9, -term.value + 1e-9))
        .least_distance_from_zero()
        / term.step;
    let weight = term.weight / (term.step * term.step);
    let square = match sweeteners.as_slice() {
        [(slot, row)] => known[*slot].and_then(|sweetener| {
            let sweet = Interval::new(low[*slot].1, high[*slot].1);
            let slopes = Slopes::within(sweetener, sugar, sweet)?;
            let (s, c) = (
                f64::midpoint(sugar.low, sugar.high),
                f64::midpoint(sweet.low, sweet.high),
            );
            let here = sweetness::combined(s, &[(sweetener, c)]) - term.value;
            let (by_sugar, by_sweet) = (slopes.sugar.middle(), slopes.sweetener.middle());
            let by_volume = here - by_sugar * s - by_sweet * c;
            let rest = volume.high
                * (slopes.sugar.width() / 2.0 * sugar.width() / 2.0
                    + slopes.sweetener.width() / 2.0 * sweet.width() / 2.0)
                + 1e-9 * volume.high;
            let sum = rows
                .volume
                .times(by_volume)
                .plus(&sugars.times(by_sugar))
                .plus(&row.times(1000.0 * by_sweet));
            Some((
                sum,
                weight,
                sum.offset(enclosed).plus(Interval::new(-rest, rest)),
            ))
        }),
        _ => None,
    };
    let limits = term
        .limit
        .zip(square.as_ref())
        .map(|(limit, (row, _, offset))| {
            let most = (limit + 1e-9) * term.step;
            let scale = 1.0 / (term.step * volume.high);
            let room = rows.volume.times(-most);
            let side = |row: Row, low: f64| {
                let side = row.plus(&room).times(scale);
                (side, (low + room.offset(enclosed).low) * scale)
            };
            [side(*row, offset.low), side(row.times(-1.0), -offset.high)]
        });
    Curved {
        least: term.weight * off * off,
        square,
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

/// Slopes of the sweetness of sugar with one high-potency sweetener, over a box of concentrations.
struct Slopes {
    sugar: Interval,
    sweetener: Interval,
}

impl Slopes {
    /// With `E(s) = k·s/(Rm − s)` and `R(C) = Rm·C/(k + C)` the sweetness is `R(E(s) + c)`; its slopes are
    /// `((k + E)/(k + E + c))²` by the sugar, which rises with `s` and falls with `c`, and `Rm·k/(k + E + c)²` by the sweetener,
    /// which falls with both. `None` where the sugar alone may reach the ceiling.
    fn within(sweetener: HighPotencySweetener, sugar: Interval, sweet: Interval) -> Option<Self> {
        let curve = sweetener.curve();
        let (ceiling, half) = (curve.ceiling_percent, curve.half_way_mg_per_l);
        if sugar.high >= ceiling * 0.999 {
            return None;
        }
        let base = |s: f64| half + half * s / (ceiling - s);
        let by_sugar = |s: f64, c: f64| (base(s) / (base(s) + c)).powi(2);
        let by_sweetener = |s: f64, c: f64| ceiling * half / (base(s) + c).powi(2);
        Some(Self {
            sugar: Interval::new(
                by_sugar(sugar.low, sweet.high),
                by_sugar(sugar.high, sweet.low),
            ),
            sweetener: Interval::new(
                by_sweetener(sugar.high, sweet.high),
                by_sweetener(sugar.low, sweet.low),
            ),
        })
    }
}
