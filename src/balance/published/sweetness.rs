//! Sweetness: sugars and polyols relative to sucrose, and the curves of high-potency sweeteners.
//!
//! Relative sweetness is per gram, against sucrose in the same drink at the same temperature.
//!
//! **How the numbers were chosen.** Published tables disagree widely, and none is plainly right. `typical` is the median of the tables' values (a
//! table that prints a range counts with its middle). All published figures, ends of ranges included, are then read as drawn from one
//! rectangular distribution, and its standard uncertainty, half-width/√3 (JCGM 100:2008, 4.3.7), goes with the value. A few figures
//! seldom reach the ends: `n` of them span on average `(n − 1)/(n + 1)` of what they are drawn from, and the width is that much larger than
//! their range. Each table told from the others in this way is off by about what the width says (a test holds them against each other).
//! The tables: Chattopadhyay et al. 2014 (J. Food Sci. Technol. 51:611, table 2), Regnat et al. 2018 (Appl. Microbiol. Biotechnol. 102:587, table 1),
//! Wiebe et al. 2011 (BMC Medicine 9:123, table 1), Public Health Nutrition 2023 (26:952, table 2), Gaman & Sherrington 1990 with Emodi 1982, and
//! Bender's dictionary (the values of Biester, Wood & Wahlin 1925). Valid for drinks of about 2–15 % sugars; the values don't change with concentration.
//!
//! # Limitations
//!
//! - Glucose gains a little on sucrose as the concentration rises, and all sugars lose sweetness below about 12 °C; neither is modelled.
//! - [`combined`] adds what each sweetener tastes of alone; synergy and suppression between them are part of its uncertainty.
//! - The sweeteners' curves are measured in water at room temperature. In milk and coffee they are less known.

use crate::balance::number::Number;
use crate::book::HighPotencySweetener;
use crate::quantity::RECTANGULAR;

/// Sweetness per gram against sucrose = 1, with its standard uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RelativeSweetness {
    /// Grams of sucrose that one gram is as sweet as.
    pub typical: f64,
    /// Standard uncertainty of `typical`, in the same unit.
    pub standard_uncertainty: f64,
}

impl RelativeSweetness {
    /// A typical value that lies between `low` and `high`.
    const fn from_range(low: f64, typical: f64, high: f64) -> Self {
        Self {
            typical,
            standard_uncertainty: (high - low) / 2.0 * RECTANGULAR,
        }
    }

    /// A typical value of so many published figures, at least two, which run from `low` to `high`: they span on average
    /// `(n − 1)/(n + 1)` of the rectangular distribution that they are drawn from.
    const fn from_figures(figures: u8, low: f64, typical: f64, high: f64) -> Self {
        let figures = figures as f64;
        let widened = (figures + 1.0) / (figures - 1.0);
        Self {
            typical,
            standard_uncertainty: widened * (high - low) / 2.0 * RECTANGULAR,
        }
    }
}

/// Sucrose: the unit itself, exact.
pub const SUCROSE: RelativeSweetness = RelativeSweetness::from_range(1.0, 1.0, 1.0);
/// Glucose: 0.5, 0.5–1, 0.8, 0.75, 0.74.
pub const GLUCOSE: RelativeSweetness = RelativeSweetness::from_figures(6, 0.5, 0.75, 1.0);
/// Lactose: 0.2–0.4, 0.2, 0.15, 0.16.
pub const LACTOSE: RelativeSweetness = RelativeSweetness::from_figures(5, 0.15, 0.18, 0.4);
/// Maltose: 0.4, 0.5, 0.3, 0.33.
pub const MALTOSE: RelativeSweetness = RelativeSweetness::from_figures(4, 0.3, 0.365, 0.5);
/// Galactose: 0.3 and 0.32 (the second from memory), which share an origin; the range 0.2–0.4 is assumed, as wide as that of lactose.
pub const GALACTOSE: RelativeSweetness = RelativeSweetness::from_range(0.2, 0.31, 0.4);
/// Isomaltulose: 0.3–0.4, 0.5, 0.4.
pub const ISOMALTULOSE: RelativeSweetness = RelativeSweetness::from_figures(4, 0.3, 0.4, 0.5);
/// Trehalose: 0.5–0.7, 0.45.
pub const TREHALOSE: RelativeSweetness = RelativeSweetness::from_figures(3, 0.45, 0.525, 0.7);
/// Tagatose: 0.92, 0.9, which probably share an origin; the range 0.8–1.0 is assumed.
pub const TAGATOSE: RelativeSweetness = RelativeSweetness::from_range(0.8, 0.91, 1.0);
/// Allulose: 0.7, value from memory; the range 0.6–0.8 is assumed.
pub const ALLULOSE: RelativeSweetness = RelativeSweetness::from_range(0.6, 0.7, 0.8);
/// A sugar whose kind is not known and is none of the common five: the middle of galactose (0.3) to tagatose (0.9), assumed.
pub const OTHER_SUGAR: RelativeSweetness = RelativeSweetness::from_range(0.3, 0.6, 0.9);
/// Maltodextrin: 0.2 (one table); the range 0–0.4 is assumed, since it depends on the dextrose equivalent.
pub const MALTODEXTRIN: RelativeSweetness = RelativeSweetness::from_range(0.0, 0.2, 0.4);

/// Erythritol: 0.7, 0.6–0.8, 0.7.
pub const ERYTHRITOL: RelativeSweetness = RelativeSweetness::from_figures(4, 0.6, 0.7, 0.8);
/// Xylitol: 1.0, 1.0, 1.0, 0.85–1.2.
pub const XYLITOL: RelativeSweetness = RelativeSweetness::from_figures(5, 0.85, 1.0, 1.2);
/// Sorbitol: 0.6, 0.5–0.7, 0.6, 0.6, 0.5.
pub const SORBITOL: RelativeSweetness = RelativeSweetness::from_figures(6, 0.5, 0.6, 0.7);
/// Mannitol: 0.5–0.72, 0.5–0.7, 0.4.
pub const MANNITOL: RelativeSweetness = RelativeSweetness::from_figures(5, 0.4, 0.6, 0.72);
/// Maltitol: 0.5–0.9, 0.9, 0.9, 0.9, 0.5–0.9.
pub const MALTITOL: RelativeSweetness = RelativeSweetness::from_figures(7, 0.5, 0.9, 0.9);
/// Isomalt: 0.45–0.65 (one table).
pub const ISOMALT: RelativeSweetness = RelativeSweetness::from_range(0.45, 0.55, 0.65);
/// Lactitol: 0.35–0.4, 0.3–0.4, 0.3–0.4.
pub const LACTITOL: RelativeSweetness = RelativeSweetness::from_figures(6, 0.3, 0.35, 0.4);
/// A polyol whose kind is not known: the middle of lactitol (0.3) to xylitol (1.2).
pub const OTHER_POLYOL: RelativeSweetness = RelativeSweetness::from_range(0.3, 0.75, 1.2);

/// Relative sweetness of fructose in solution at 5, 18, 40 and 60 °C.
///
/// Up to 40 °C: Tsuzuki & Yamazaki 1953, Biochem. Z. 323:525–531 (value from memory). The sweet β-pyranose form gives way to tasteless
/// forms as it warms, by a fifth from 31 to 80 °C (Angyal 1984, value from memory), not by the 0.79 that the old series has at 60 °C; a
/// cook's handbook has the level of table sugar in hot coffee (`McGee` 2004). No second measured series of hot drinks was found, so
/// 1.0 from 40 °C on is assumed, with a band that holds both.
const FRUCTOSE_BY_CELSIUS: [(f64, f64); 4] =
    [(5.0, 1.437), (18.0, 1.285), (40.0, 1.000), (60.0, 1.000)];

/// Half-width of what fructose may be in hot drinks, from 40 °C on: 0.8 to 1.2 (assumed).
const HOT_FRUCTOSE_HALF_WIDTH: f64 = 0.2;

/// Further loss for each kelvin beyond 60 °C, as half-width (assumed: the slope of the old series).
const HOT_FRUCTOSE_DRIFT: f64 = 0.0105;

/// Middle and half-width of what is published for fructose in cold drinks: 1.2 in solution to 1.8 for the crystal (Alternative Sweeteners,
/// 3rd ed., p. 371).
const COLD_FRUCTOSE: (f64, f64) = (1.5, 0.3);

/// Relative sweetness of fructose at a drinking temperature.
///
/// Straight lines between the points; the end value is held outside, where nothing is published, with an uncertainty that grows by
/// how far the end line of the old series would have gone on. The old series lies low in the range that is published for cold
/// solutions, and the uncertainty is that of the whole range about it: how far its middle is off counts, too.
pub fn fructose(t_celsius: f64) -> RelativeSweetness {
    let points = &FRUCTOSE_BY_CELSIUS;
    let last = points.len() - 1;
    let piece = points[1..last]
        .iter()
        .take_while(|(t, _)| t_celsius > *t)
        .count();
    let ((t_left, left), (t_right, right)) = (points[piece], points[piece + 1]);
    let slope_per_kelvin = (right - left) / (t_right - t_left);
    let inside = t_celsius.clamp(points[0].0, points[last].0);
    let hot = ((t_celsius - points[1].0) / (points[2].0 - points[1].0)).clamp(0.0, 1.0);
    let (middle, cold_half_width) = COLD_FRUCTOSE;
    let half_width = cold_half_width + (HOT_FRUCTOSE_HALF_WIDTH - cold_half_width) * hot;
    let drift = if t_celsius > inside {
        HOT_FRUCTOSE_DRIFT
    } else {
        slope_per_kelvin
    };
    let typical = left + slope_per_kelvin * (inside - t_left);
    let off_the_middle = (middle - typical) * (1.0 - hot);
    let width = half_width.hypot(drift * (t_celsius - inside)) * RECTANGULAR;
    RelativeSweetness {
        typical,
        standard_uncertainty: width.hypot(off_the_middle),
    }
}

/// The curve `R = Rm·C/(k + C)` of one sweetener.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResponseCurve {
    /// The sweetness that no concentration reaches, % sucrose equivalent.
    pub ceiling_percent: f64,
    /// The concentration that gives half the ceiling, mg/l.
    pub half_way_mg_per_l: f64,
}

impl HighPotencySweetener {
    /// Every sweetener.
    pub const ALL: [Self; 6] = [
        Self::Sucralose,
        Self::Aspartame,
        Self::AcesulfameK,
        Self::RebaudiosideA,
        Self::Stevioside,
        Self::Saccharin,
    ];

    /// The constants of the concentration–response curve.
    ///
    /// `DuBois` et al. 1991, in Sweeteners: Discovery, Molecular Design and Chemoreception, ACS Symposium Series 450, pp. 261–276 (value from memory; the
    /// form of the curve is confirmed by later work of the same group). In water at room temperature; valid up to some 80 % of the ceiling.
    pub const fn curve(self) -> ResponseCurve {
        let (ceiling_percent, half_way_mg_per_l) = match self {
            Self::Sucralose => (14.7, 170.0),
            Self::Aspartame => (16.0, 560.0),
            Self::AcesulfameK => (11.6, 470.0),
            Self::RebaudiosideA => (10.0, 200.0),
            Self::Stevioside => (9.9, 310.0),
            Self::Saccharin => (10.1, 140.0),
        };
        ResponseCurve {
            ceiling_percent,
            half_way_mg_per_l,
        }
    }

    /// Sweetness of a concentration alone in water, % sucrose equivalent (g in 100 ml); 0 at and below no concentration.
    pub fn response_percent<N: Number>(self, concentration_mg_per_l: N) -> N {
        let curve = self.curve();
        if concentration_mg_per_l.value() <= 0.0 {
            return concentration_mg_per_l.bend_at_zero();
        }
        // This form of Rm·C/(k + C) has its limit, Rm, at an infinite concentration.
        N::from(curve.ceiling_percent)
            / (N::from(curve.half_way_mg_per_l) / concentration_mg_per_l + 1.0)
    }

    /// The concentration that alone is as sweet as this, mg/l; `None` at or above the ceiling, which no concentration reaches.
    pub fn equivalent_concentration_mg_per_l(self, sweetness_percent: f64) -> Option<f64> {
        let curve = self.curve();
        let sweetness = sweetness_percent.max(0.0);
        (sweetness < curve.ceiling_percent)
            .then(|| curve.half_way_mg_per_l * sweetness / (curve.ceiling_percent - sweetness))
    }
}

/// Relative standard uncertainty of the sweetness of a high-potency sweetener at drink strength (assumed).
///
/// Potencies are published without the level that they hold at, and most of their spread is the bend of the curve: from 9 to 1 % it
/// gives sucralose 335 to 806 where tables have 320 to 1000 (Regnat et al. 2018), aspartame 125 to 268 where they have 150 to 220 (Public
/// Health Nutrition 2023;26:952; Alternative Sweeteners 2001, p. 44), saccharin 79 to 650 where they have 200 to 700 (FDA statement). What
/// is left at the ends is a twentieth to a quarter, and a fifth is taken for all.
pub const POTENCY_UNCERTAINTY: f64 = 0.20;

/// Relative standard uncertainty of what several high-potency sweeteners taste of together.
///
/// In milk pairs are mostly additive and in instant coffee less than that (Choi & Chung 2015, Food Res. Int. 74:168); in water, coffee and
/// soft drinks pairs of intense sweeteners reach 1.25 to 2.1 times the sum (Alternative Sweeteners 2001, p. 467; Sweeteners 2012). From
/// 0.9 to 1.9, as a rectangular distribution around 1.
pub const MIXTURE_UNCERTAINTY: f64 = 0.29;

/// Sweetness of sugars and high-potency sweeteners together, % sucrose equivalent (g in 100 ml): the sum of what each tastes of
/// alone.
///
/// Two models were held against the published mixtures (the test `honesty` does it again). To add concentrations that would taste the same
/// and to read one curve makes sugar beside an intense sweetener nearly tasteless: 2.5 % of each comes to 4.0–4.3 % where a panel in
/// milk found about 5. Sums agree there, and fall short by a quarter or more only for pairs of intense sweeteners in coffee and soft
/// drinks, as the other model does still more.
pub fn combined(
    sugar_sweetness_percent: f64,
    concentrations_mg_per_l: &[(HighPotencySweetener, f64)],
) -> f64 {
    let intense: f64 = concentrations_mg_per_l
        .iter()
        .map(|(sweetener, concentration)| sweetener.response_percent(*concentration))
        .sum();
    sugar_sweetness_percent + intense
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fructose_loses_sweetness_steadily_and_is_less_certain_outside_what_was_measured() {
        for step in 5_i32..40 {
            let t = f64::from(step);
            assert!(fructose(t + 1.0).typical < fructose(t).typical, "at {t} °C");
        }
        assert!((fructose(0.0).typical - 1.437).abs() < 1e-12);
        assert!((fructose(85.0).typical - 1.0).abs() < 1e-12);
        assert!(fructose(0.0).standard_uncertainty > fructose(5.0).standard_uncertainty);
        assert!(fructose(85.0).standard_uncertainty > fructose(60.0).standard_uncertainty);
    }

    #[test]
    fn the_equivalent_concentration_undoes_the_response() {
        for sweetener in HighPotencySweetener::ALL {
            for concentration in [0.0, 3.0, 50.0, 400.0] {
                let back = sweetener
                    .equivalent_concentration_mg_per_l(sweetener.response_percent(concentration))
                    .expect("a response is below the ceiling");
                assert!((back - concentration).abs() < 1e-9, "{sweetener:?}");
            }
            let ceiling = sweetener.curve().ceiling_percent;
            assert_eq!(sweetener.equivalent_concentration_mg_per_l(ceiling), None);
        }
    }

    #[test]
    fn the_order_of_the_list_does_not_matter_and_more_is_never_less_sweet() {
        let first = (HighPotencySweetener::AcesulfameK, 60.0);
        let second = (HighPotencySweetener::Sucralose, 20.0);
        let one_way = combined(4.0, &[first, second]);
        let other_way = combined(4.0, &[second, first]);
        assert!((one_way - other_way).abs() < 1e-12);
        assert!(one_way > combined(4.0, &[first]));
        assert!(combined(4.0, &[first]) > 4.0);
    }

    #[test]
    fn sugar_beside_an_intense_sweetener_keeps_its_taste() {
        let stevia = [(HighPotencySweetener::RebaudiosideA, 1438.0)];
        assert!((combined(6.7, &stevia) - combined(0.0, &stevia) - 6.7).abs() < 1e-12);
    }
}
