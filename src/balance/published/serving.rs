//! Lines of temperature, time and dose that published guidance draws for drinks, each with its source.

use ScaldSource::{HealthPage, Hospital, Hottest, MoritzHenriques, Plumbing};

/// Above this a drink counts as very hot, °C: IARC Monographs vol. 116 (2018), very hot beverages, group 2A.
pub const VERY_HOT_CELSIUS: f64 = 65.0;

/// Lukewarm, °C: the temperature of the body, at which a drink feels neither warm nor cold (assumed).
pub const LUKEWARM_CELSIUS: f64 = 37.0;

/// Whose skin is burnt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Skin {
    /// That of adults.
    Adult,
    /// That of small children.
    SmallChild,
}

/// How the seconds of a burn are meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaldBound {
    /// That long at most.
    AtMost,
    /// Less than that.
    LessThan,
}

/// Until hot water burns skin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScaldTime {
    /// Seconds.
    pub seconds: f64,
    /// How they are meant.
    pub bound: ScaldBound,
}

/// A published time until hot water burns skin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScaldRow {
    /// Temperature of the water, °C.
    pub celsius: f64,
    /// Seconds; the shortest of a range.
    pub seconds: f64,
    /// How they are meant.
    pub bound: ScaldBound,
    /// Where it is published.
    pub source: ScaldSource,
}

/// Where times until hot water burns skin are published.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ScaldSource {
    /// Moritz & Henriques 1947, Am. J. Pathol. 23:695, in a table based on it: second degree.
    MoritzHenriques,
    /// A children's hospital's page on scald prevention: serious burn, second to third degree.
    Hospital,
    /// A public health page on scalds.
    HealthPage,
    /// A plumbing safety page on codes: severe burn of small children, a fifth to a third of the adult time.
    Plumbing,
    /// Moritz & Henriques 1947: full thickness, value from memory; no time was measured above it.
    Hottest,
}

const fn row(celsius: f64, seconds: f64, source: ScaldSource) -> ScaldRow {
    ScaldRow {
        celsius,
        seconds,
        bound: ScaldBound::AtMost,
        source,
    }
}

const fn under(celsius: f64, seconds: f64, source: ScaldSource) -> ScaldRow {
    ScaldRow {
        bound: ScaldBound::LessThan,
        ..row(celsius, seconds, source)
    }
}

/// Published times for the skin of adults, the coolest first. The tables differ in how deep a burn they mean (second degree,
/// second to third, full thickness), and where they differ in time the shorter one counts.
pub const ADULT_SCALDS: [ScaldRow; 18] = [
    row(44.0, 21_600.0, MoritzHenriques),
    row(45.0, 7200.0, MoritzHenriques),
    row(47.0, 1200.0, MoritzHenriques),
    row(48.0, 900.0, MoritzHenriques),
    row(48.9, 300.0, Hospital),
    row(49.0, 480.0, MoritzHenriques),
    row(51.0, 120.0, MoritzHenriques),
    row(51.7, 90.0, Hospital),
    row(52.0, 90.0, HealthPage),
    row(54.4, 30.0, Hospital),
    row(55.0, 17.0, MoritzHenriques),
    row(57.0, 10.0, HealthPage),
    row(57.2, 10.0, Hospital),
    row(60.0, 3.0, MoritzHenriques),
    under(62.8, 3.0, Hospital),
    row(65.6, 1.5, Hospital),
    row(68.3, 1.0, Hospital),
    under(70.0, 1.0, Hottest),
];

/// Published times for the skin of small children, the coolest first.
pub const CHILD_SCALDS: [ScaldRow; 3] = [
    row(48.9, 240.0, Plumbing),
    row(60.0, 1.0, Plumbing),
    row(65.6, 0.5, Plumbing),
];

/// Hot holding not below this, °C: Food Hygiene Regulations (UK), Schedule 4.
pub const HOT_HOLDING_UK_CELSIUS: f64 = 63.0;

/// Hot holding not below this, °C: FDA Food Code 3-501.16 (135 °F).
pub const HOT_HOLDING_US_CELSIUS: f64 = 57.0;

/// Cold holding not above this, °C: Food Standards Agency, England, Wales and Northern Ireland.
pub const COLD_HOLDING_UK_CELSIUS: f64 = 8.0;

/// Cold holding not above this, °C: FDA Food Code 3-501.16 (41 °F).
pub const COLD_HOLDING_US_CELSIUS: f64 = 5.0;

/// Brewed tea is not held longer than this, hours: Tea Council of the USA fact sheet after the CDC memo on iced tea, 1996.
/// A state trade body says 12; the shorter time is taken.
pub const BREWED_TEA_HOURS: f64 = 8.0;

/// A single dose of caffeine that raises no concern in adults, mg: EFSA Journal 2015;13(5):4102.
pub const CAFFEINE_SINGLE_DOSE_MG: f64 = 200.0;

/// Caffeine that may disturb sleep, mg: EFSA Journal 2015;13(5):4102.
pub const CAFFEINE_SLEEP_MG: f64 = 100.0;

/// Above this a drink that is not named after tea or coffee bears "High caffeine content", mg/l: Regulation (EU) 1169/2011,
/// Annex III, 4.1 (value from memory).
pub const HIGH_CAFFEINE_MG_PER_LITRE: f64 = 150.0;

/// Until water of a temperature burns skin, rounded towards danger: between two published temperatures the time of the hotter
/// one, as the most that can be said (the tables are too uneven to interpolate), and above the hottest one less than its time.
/// `None` below the coolest one.
pub fn scald_time(skin: Skin, celsius: f64) -> Option<ScaldTime> {
    let rows: &[ScaldRow] = match skin {
        Skin::Adult => &ADULT_SCALDS,
        Skin::SmallChild => &CHILD_SCALDS,
    };
    let coolest = rows.first()?;
    if celsius.is_nan() || celsius < coolest.celsius {
        return None;
    }
    let to = rows
        .iter()
        .position(|row| row.celsius >= celsius)
        .unwrap_or(rows.len() - 1);
    let shortest = rows[..=to]
        .iter()
        .min_by(|one, other| one.seconds.total_cmp(&other.seconds))?;
    let own = rows[to];
    let is_published = own.celsius <= celsius
        && celsius <= own.celsius
        && own.seconds <= shortest.seconds
        && own.bound == ScaldBound::AtMost;
    Some(ScaldTime {
        seconds: shortest.seconds,
        bound: if is_published {
            ScaldBound::AtMost
        } else {
            ScaldBound::LessThan
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const SKINS: [(Skin, &[ScaldRow]); 2] = [
        (Skin::Adult, &ADULT_SCALDS),
        (Skin::SmallChild, &CHILD_SCALDS),
    ];

    #[test]
    fn hotter_water_never_takes_longer_and_never_longer_than_a_published_row() {
        for (skin, rows) in SKINS {
            assert!(
                rows.windows(2)
                    .all(|pair| pair[0].celsius < pair[1].celsius)
            );
            let mut before = f64::INFINITY;
            for step in 0..8000 {
                let celsius = 40.0 + f64::from(step) / 100.0;
                let Some(time) = scald_time(skin, celsius) else {
                    assert!(celsius < rows[0].celsius, "{skin:?} at {celsius} °C");
                    continue;
                };
                assert!(time.seconds <= before, "{skin:?} at {celsius} °C");
                before = time.seconds;
                for row in rows.iter().filter(|row| row.celsius <= celsius) {
                    assert!(time.seconds <= row.seconds, "{celsius} °C against {row:?}");
                }
                if let Some(hotter) = rows.iter().find(|row| row.celsius >= celsius) {
                    assert!(
                        time.seconds <= hotter.seconds,
                        "{celsius} °C against {hotter:?}"
                    );
                }
            }
        }
        for step in 0..8000 {
            let celsius = 40.0 + f64::from(step) / 100.0;
            if let (Some(adult), Some(child)) = (
                scald_time(Skin::Adult, celsius),
                scald_time(Skin::SmallChild, celsius),
            ) {
                assert!(child.seconds <= adult.seconds, "{celsius} °C");
            }
        }
    }

    #[test]
    fn what_is_said_is_rounded_towards_danger() {
        let said = |skin, celsius| {
            let time = scald_time(skin, celsius)?;
            Some((time.seconds, time.bound))
        };
        let (most, less) = (ScaldBound::AtMost, ScaldBound::LessThan);
        for (celsius, expected) in [
            (43.9, None),
            (55.0, Some((17.0, most))),
            (56.0, Some((10.0, less))),
            (57.0, Some((10.0, most))),
            (59.0, Some((3.0, less))),
            (60.0, Some((3.0, most))),
            (62.8, Some((3.0, less))),
            (65.6, Some((1.5, most))),
            (68.3, Some((1.0, most))),
            (77.0, Some((1.0, less))),
            (96.0, Some((1.0, less))),
            (f64::NAN, None),
        ] {
            assert_eq!(said(Skin::Adult, celsius), expected, "{celsius} °C");
        }
        assert_eq!(said(Skin::SmallChild, 58.0), Some((1.0, less)));
        assert_eq!(said(Skin::SmallChild, 65.6), Some((0.5, most)));
        assert_eq!(said(Skin::SmallChild, 77.0), Some((0.5, less)));
    }
}
