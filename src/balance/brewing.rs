//! Brewing tea: how much comes off the leaf, how strong it is, and how much water and leaf a wanted amount takes.
//!
//! Dry leaf keeps water back: `ready = water + dissolved − leaf · (retention + dissolved share)`, close to
//! `water − leaf · retention`. What dissolves is a part of the leaf, `leaf · extraction`, and is spread evenly over all the
//! liquor, the part that the leaf keeps too: so the strength is `leaf · extraction / (water + leaf · extraction)`, and the tea
//! that is ready carries strength times its mass. (Counting everything that dissolved in the ready tea would make it too strong
//! by the part that stays in the leaf, 8 % for the reference brew.)

use crate::book::{Evidence, Figure, Nutrient};
use crate::quantity::Uncertain;

/// Water that a gram of dry leaf keeps back, g (common practice, no source: 3 to 5; weigh it).
pub const RETENTION: Uncertain = Uncertain { value: 4.0, u: 0.6 };

/// Poured density of tea leaf that states none, g/ml: between the 0.28 and 0.39 of a tea merchant's scale table (value from
/// memory). Leaf that is rolled to pearls or left whole is outside of that; the uncertainty is assumed for both.
pub const LEAF_BULK_DENSITY: Uncertain = Uncertain {
    value: 0.335,
    u: 0.07,
};

/// How leaf is brewed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Infusion {
    /// Hot water on dry leaf.
    Hot,
    /// Cold water on dry leaf, for hours.
    Cold,
    /// Hot water on leaf that has been brewed once.
    Second,
    /// The reference brew of ISO 3103.
    Reference,
}

impl Infusion {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 4] = [Self::Hot, Self::Cold, Self::Second, Self::Reference];

    /// The method as it usually is; a shop replaces what it has measured.
    ///
    /// Hot: extraction between 22 % of the leaf in household infusions (Letheby, in Cooley's Cyclopaedia) and 35 % at equilibrium
    /// at 1:10 (Long 1977). Cold: assumed, lower than hot. Second: assumed, most of what a first infusion leaves below those
    /// 35 %. Reference: ISO 3103:2019, 2 g per 100 ml, boiling water, 6 min for black tea; extraction as for a hot brew.
    pub fn usual(self) -> BrewMethod {
        let method = BrewMethod {
            infusion: self,
            water_celsius: 95.0,
            steep_minutes: 5.0,
            extraction: Uncertain {
                value: 0.26,
                u: 0.05,
            },
            retention: RETENTION,
        };
        match self {
            Self::Hot => method,
            Self::Cold => BrewMethod {
                water_celsius: 5.0,
                steep_minutes: 480.0,
                extraction: Uncertain {
                    value: 0.20,
                    u: 0.06,
                },
                ..method
            },
            Self::Second => BrewMethod {
                extraction: Uncertain {
                    value: 0.08,
                    u: 0.04,
                },
                // Wet leaf holds what it can: what is poured on comes off again.
                retention: Uncertain { value: 0.0, u: 0.3 },
                ..method
            },
            Self::Reference => BrewMethod {
                water_celsius: 100.0,
                steep_minutes: 6.0,
                ..method
            },
        }
    }
}

/// Leaf per 100 ml of water in the reference brew, g: ISO 3103:2019.
pub const REFERENCE_LEAF_PER_100_ML: f64 = 2.0;

/// How leaf is brewed, with the figures of the method.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BrewMethod {
    /// What kind of infusion it is.
    pub infusion: Infusion,
    /// Temperature of the water as it is poured on, °C.
    pub water_celsius: f64,
    /// How long the leaf stays in, minutes.
    pub steep_minutes: f64,
    /// Part of the dry leaf that dissolves, 0 to 1.
    pub extraction: Uncertain,
    /// Water that a gram of leaf keeps back, g.
    pub retention: Uncertain,
}

/// Water and leaf of one pot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Brew {
    /// Water poured on, g.
    pub water: f64,
    /// Dry leaf, g.
    pub leaf: f64,
    /// Standard uncertainty of the leaf, g: what was measured by volume is no surer than its poured density.
    pub leaf_u: f64,
    /// Caffeine that comes out of a gram of leaf, mg, when it is known.
    pub caffeine_per_gram: Option<Uncertain>,
}

/// What comes off the leaf.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BrewYield {
    /// Tea that is ready to use, g.
    pub ready: Uncertain,
    /// Water that the leaf keeps back, g.
    pub retained: Uncertain,
    /// The wet leaf that is left behind, with what dissolved in the water that it keeps, g.
    pub spent: Uncertain,
    /// Tea solids, g per 100 g of tea.
    pub strength: Uncertain,
    /// Tea solids in the ready tea, g.
    pub tea_solids: Uncertain,
    /// Caffeine in the ready tea, mg; `None` when that of the leaf is not known.
    pub caffeine: Option<Uncertain>,
}

impl BrewYield {
    /// The figures of the tea per 100 g, to be entered with the ingredient: what carries its strength into every drink.
    pub fn figures(&self) -> Vec<(Nutrient, Figure)> {
        let stated = |value: f64, u: f64| Figure {
            value,
            evidence: Evidence::Assumed,
            u: Some(u),
        };
        let solids = self.strength;
        let mut figures = vec![
            (Nutrient::Water, stated(100.0 - solids.value, solids.u)),
            (Nutrient::TeaSolids, stated(solids.value, solids.u)),
        ];
        if let Some(caffeine) = self.caffeine {
            let per_100_grams = 100.0 / self.ready.value;
            figures.push((
                Nutrient::Caffeine,
                stated(caffeine.value * per_100_grams, caffeine.u * per_100_grams),
            ));
        }
        figures
    }
}

/// Why a brew can't be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum BrewError {
    /// Nothing comes off.
    LeafTakesAll {
        /// Leaf, g.
        leaf: f64,
        /// What it keeps back, g.
        retained: f64,
        /// Water, g.
        water: f64,
    },
    /// Stronger than the leaf can make it.
    TooStrong {
        /// Wanted strength, g per 100 g.
        wanted: f64,
        /// The strength at which the leaf keeps everything back, g per 100 g.
        most: f64,
    },
    /// An amount that is no amount.
    NotAnAmount {
        /// What it is.
        what: BrewAmount,
        /// What was found.
        found: f64,
    },
}

/// An amount that a brew needs, which is above zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BrewAmount {
    /// Water, g.
    Water,
    /// Leaf, g.
    Leaf,
    /// Ready tea, g.
    Tea,
    /// Strength, g per 100 g.
    Strength,
    /// Part of the leaf that dissolves.
    Extraction,
    /// Water that a pot holds, g.
    Pot,
}

fn above_zero(what: BrewAmount, found: f64) -> Result<f64, BrewError> {
    if found > 0.0 && found.is_finite() {
        Ok(found)
    } else {
        Err(BrewError::NotAnAmount { what, found })
    }
}

/// What comes off the leaf of one pot.
pub fn brew_yield(brew: &Brew, method: &BrewMethod) -> Result<BrewYield, BrewError> {
    let water = above_zero(BrewAmount::Water, brew.water)?;
    let leaf = above_zero(BrewAmount::Leaf, brew.leaf)?;
    let of = |leaf: f64, extraction: f64, retention: f64| {
        let liquor = water + leaf * extraction;
        let kept = leaf * retention;
        // The leaf keeps water with what is dissolved in it.
        let ready = liquor * (1.0 - kept / water);
        let strength = leaf * extraction / liquor * 100.0;
        let solids = ready * strength / 100.0;
        // What comes out of the leaf otherwise leaves with the same part of the liquor.
        let drawn = leaf * (1.0 - kept / water);
        let spent = water + leaf - ready;
        [ready, kept, strength, solids, spent, drawn]
    };
    let (e, r) = (method.extraction, method.retention);
    let value = of(leaf, e.value, r.value);
    if value[0] <= 0.0 {
        return Err(BrewError::LeafTakesAll {
            leaf,
            retained: value[1],
            water,
        });
    }
    let off = [
        of(leaf, e.value + e.u, r.value),
        of(leaf, e.value, r.value + r.u),
        of(leaf + brew.leaf_u, e.value, r.value),
    ];
    let figure = |at: usize| Uncertain {
        value: value[at],
        u: off
            .iter()
            .map(|off| off[at] - value[at])
            .fold(0.0, f64::hypot),
    };
    let drawn = figure(5);
    let caffeine = brew.caffeine_per_gram.map(|caffeine| Uncertain {
        value: caffeine.value * drawn.value,
        u: (caffeine.u * drawn.value).hypot(caffeine.value * drawn.u),
    });
    Ok(BrewYield {
        ready: figure(0),
        retained: figure(1),
        strength: figure(2),
        tea_solids: figure(3),
        spent: figure(4),
        caffeine,
    })
}

/// The water and leaf for so much ready tea at a strength (g of tea solids per 100 g), in one pot.
///
/// From `strength = leaf·e/(water + leaf·e)` the leaf per gram of water is `s/(e·(1 − s))`; the ready tea then gives the water.
pub fn brew_for(ready: f64, strength: f64, method: &BrewMethod) -> Result<Brew, BrewError> {
    let ready = above_zero(BrewAmount::Tea, ready)?;
    let wanted = above_zero(BrewAmount::Strength, strength)?;
    let part = wanted / 100.0;
    let (extraction, retention) = (method.extraction.value, method.retention.value);
    let leaf_per_water =
        part / (above_zero(BrewAmount::Extraction, extraction)? * (1.0 - part).max(1e-9));
    let kept = leaf_per_water * retention;
    // A leaf to water ratio at which everything is kept back.
    let most = extraction / (extraction + retention.max(1e-9)) * 100.0;
    if kept >= 1.0 || part >= 1.0 {
        return Err(BrewError::TooStrong {
            wanted,
            most: most.min(100.0),
        });
    }
    let water = ready / ((1.0 + leaf_per_water * extraction) * (1.0 - kept));
    Ok(Brew {
        water,
        leaf: water * leaf_per_water,
        leaf_u: 0.0,
        caffeine_per_gram: None,
    })
}

/// A brew divided over pots that hold a limited amount of water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Batches {
    /// How many pots.
    pub count: u32,
    /// Water and leaf of each.
    pub each: Brew,
}

/// Divides a brew evenly over pots of at most so much water, g.
pub fn in_batches(whole: &Brew, pot_water: f64) -> Result<Batches, BrewError> {
    let pot = above_zero(BrewAmount::Pot, pot_water)?;
    let water = above_zero(BrewAmount::Water, whole.water)?;
    // A shop that needs more than ten thousand pots has mistyped the pot.
    let count = (water / pot - 1e-9).ceil().clamp(1.0, 10_000.0);
    let each = Brew {
        water: water / count,
        leaf: whole.leaf / count,
        leaf_u: whole.leaf_u / count,
        ..*whole
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 1 and 10 000"
    )]
    let count = count as u32;
    Ok(Batches { count, each })
}

/// A time of day in minutes since midnight, on this day or a later one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct DayMinute {
    /// Days after the day on which the brewing begins.
    pub days_later: i64,
    /// Minutes since midnight, 0 to 1439.
    pub minute: i64,
}

impl DayMinute {
    fn after(start: i64, minutes: f64) -> Self {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "rounded, and a cast of what is too large saturates"
        )]
        let whole = start.saturating_add(minutes.round() as i64);
        Self {
            days_later: whole.div_euclid(1440),
            minute: whole.rem_euclid(1440),
        }
    }
}

/// When tea is ready and until when it may be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BrewTimes {
    /// The leaf comes out.
    pub ready: DayMinute,
    /// The holding rule ends; `None` when the shop has none.
    pub use_by: Option<DayMinute>,
}

/// The times of a brew that begins at a minute of the day, by the shop's own holding rule in hours from when it is ready.
pub fn brew_times(start_minute: i64, method: &BrewMethod, holding_hours: Option<f64>) -> BrewTimes {
    let steep = method.steep_minutes.max(0.0);
    BrewTimes {
        ready: DayMinute::after(start_minute, steep),
        use_by: holding_hours
            .map(|hours| DayMinute::after(start_minute, steep + hours.max(0.0) * 60.0)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn brew(water: f64, leaf: f64) -> Brew {
        Brew {
            water,
            leaf,
            leaf_u: 0.0,
            caffeine_per_gram: None,
        }
    }

    #[test]
    fn a_spoon_of_leaf_keeps_back_a_fifth_of_a_cup() {
        // Common practice, no source: 125 ml of water on a spoon of leaf (a little over 15 ml) gives about 100 ml of tea.
        // Leaf of 0.28 to 0.39 g/ml poured (a tea merchant's scale table) in a spoon of 16 ml is 4.5 to 6.2 g.
        for bulk_density in [0.28, 0.39] {
            let found =
                brew_yield(&brew(125.0, 16.0 * bulk_density), &Infusion::Hot.usual()).unwrap();
            assert!((found.ready.value - 104.0).abs() < 5.0, "{found:?}");
            // The uncertainty of what leaf keeps back spans the figure of the trade.
            assert!(
                (found.ready.value - 100.0).abs() < 3.0 * found.ready.u,
                "{found:?}"
            );
        }
    }

    #[test]
    fn the_reference_brew_of_iso_3103_is_of_cup_strength() {
        // Large pot: 5.6 g on about 285 ml. Cup strength about 0.6 % (Letheby) from more leaf; USDA SR28 14355 has 0.30.
        let found = brew_yield(&brew(285.0, 5.6), &Infusion::Reference.usual()).unwrap();
        assert!((5.6 / 285.0 * 100.0 / REFERENCE_LEAF_PER_100_ML - 1.0).abs() < 0.02);
        assert!(
            found.strength.value > 0.3 && found.strength.value < 0.65,
            "{found:?}"
        );
        assert!((found.retained.value - 22.4).abs() < 1e-9);
    }

    #[test]
    fn letheby_is_met_with_his_own_figures() {
        // 263 grains (17.04 g) on an imperial pint (568 g), 22 % of the leaf dissolved: about 0.6 % extractive.
        let method = BrewMethod {
            extraction: Uncertain {
                value: 0.22,
                u: 0.0,
            },
            ..Infusion::Hot.usual()
        };
        let found = brew_yield(&brew(568.0, 17.04), &method).unwrap();
        assert!((found.strength.value - 0.6).abs() < 0.06, "{found:?}");
    }

    #[test]
    fn solids_are_conserved_between_the_tea_and_what_the_leaf_keeps() {
        let method = Infusion::Hot.usual();
        let found = brew_yield(&brew(1000.0, 25.0), &method).unwrap();
        let dissolved = 25.0 * method.extraction.value;
        let kept = dissolved * found.retained.value / 1000.0;
        assert!((found.tea_solids.value + kept - dissolved).abs() < 1e-9);
    }

    #[test]
    fn the_figures_of_a_brew_add_up_to_the_whole() {
        let brew = Brew {
            caffeine_per_gram: Some(Uncertain {
                value: 20.0,
                u: 4.0,
            }),
            ..brew(1000.0, 25.0)
        };
        let figures = brew_yield(&brew, &Infusion::Hot.usual()).unwrap().figures();
        assert!((figures[0].1.value + figures[1].1.value - 100.0).abs() < 1e-9);
        // 25 g of leaf with 20 mg each in 1006.5 g of liquor.
        assert!(
            (figures[2].1.value - 500.0 / 1006.5 * 100.0).abs() < 1e-6,
            "{figures:?}"
        );
    }

    /// Each input of a brew moved by a small part of its uncertainty, both ways: what the whole file should make of it.
    #[test]
    fn the_doubt_of_every_figure_is_that_of_the_inputs() {
        const PART: f64 = 1e-4;
        let uncertain = |value, u| Uncertain { value, u };
        let (leaf, caffeine) = (uncertain(60.0, 9.0), uncertain(20.0, 2.0));
        let method = Infusion::Hot.usual();
        let at = |leaf: f64, caffeine: f64, extraction: f64, retention: f64| {
            let exact = |value| Uncertain { value, u: 0.0 };
            let brew = Brew {
                caffeine_per_gram: Some(exact(caffeine)),
                ..brew(1000.0, leaf)
            };
            let method = BrewMethod {
                extraction: exact(extraction),
                retention: exact(retention),
                ..method
            };
            let found = brew_yield(&brew, &method).unwrap();
            let caffeine = found.caffeine.unwrap();
            [
                found.ready,
                found.retained,
                found.spent,
                found.strength,
                found.tea_solids,
                caffeine,
            ]
            .map(|figure| figure.value)
        };
        let inputs = [leaf, caffeine, method.extraction, method.retention];
        let moved = |which: usize, part: f64| {
            let mut values = inputs.map(|input| input.value);
            values[which] += part * inputs[which].u;
            at(values[0], values[1], values[2], values[3])
        };
        let brew = Brew {
            leaf_u: leaf.u,
            caffeine_per_gram: Some(caffeine),
            ..brew(1000.0, leaf.value)
        };
        let found = brew_yield(&brew, &method).unwrap();
        let figures = [
            found.ready,
            found.retained,
            found.spent,
            found.strength,
            found.tea_solids,
            found.caffeine.unwrap(),
        ];
        for (which, figure) in figures.iter().enumerate() {
            let slope = |input| {
                let (more, less) = (moved(input, PART), moved(input, -PART));
                (more[which] - less[which]) / (2.0 * PART)
            };
            let u = (0..inputs.len()).map(slope).fold(0.0, f64::hypot);
            // The file takes one whole step of each input, so what is curved is off by a little.
            assert!(
                (figure.u / u - 1.0).abs() < 0.1,
                "{which}: {figure:?} against {u}"
            );
        }
    }

    #[test]
    fn the_plan_undoes_the_yield() {
        for infusion in Infusion::ALL {
            let method = infusion.usual();
            let plan = brew_for(2000.0, 0.4, &method).unwrap();
            let found = brew_yield(&plan, &method).unwrap();
            assert!(
                (found.ready.value - 2000.0).abs() < 1e-6,
                "{infusion:?}: {found:?}"
            );
            assert!(
                (found.strength.value - 0.4).abs() < 1e-9,
                "{infusion:?}: {found:?}"
            );
        }
    }

    #[test]
    fn what_can_not_be_brewed_is_refused_with_the_reason() {
        let hot = Infusion::Hot.usual();
        assert!(matches!(
            brew_yield(&brew(100.0, 30.0), &hot),
            Err(BrewError::LeafTakesAll { .. })
        ));
        assert!(matches!(
            brew_for(1000.0, 9.0, &hot),
            Err(BrewError::TooStrong { .. })
        ));
        for (ready, strength) in [
            (0.0, 0.4),
            (f64::NAN, 0.4),
            (1000.0, -1.0),
            (f64::INFINITY, 0.4),
        ] {
            assert!(matches!(
                brew_for(ready, strength, &hot),
                Err(BrewError::NotAnAmount { .. })
            ));
        }
    }

    #[test]
    fn batches_share_water_and_leaf_evenly() {
        let batches = in_batches(&brew(5000.0, 100.0), 2000.0).unwrap();
        assert_eq!(batches.count, 3);
        assert!(
            (batches.each.water * 3.0 - 5000.0).abs() < 1e-9
                && (batches.each.leaf * 3.0 - 100.0).abs() < 1e-9
        );
        assert_eq!(in_batches(&brew(4000.0, 80.0), 2000.0).unwrap().count, 2);
    }

    #[test]
    fn tea_that_is_brewed_late_is_good_until_the_next_day() {
        let times = brew_times(23 * 60 + 50, &Infusion::Hot.usual(), Some(4.0));
        let at = |days_later, hour: i64, minute| DayMinute {
            days_later,
            minute: hour * 60 + minute,
        };
        assert_eq!(times.ready, at(0, 23, 55));
        assert_eq!(times.use_by, Some(at(1, 3, 55)));
        let cold = brew_times(480, &Infusion::Cold.usual(), None);
        assert_eq!(cold.ready, at(0, 16, 0));
    }
}
