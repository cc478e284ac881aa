//! Measures of the counter: scoops, pumps, spoons, jugs, ice scoops and dispenser buttons, with their readings.

use super::{EarlierStates, IngredientId, Item, MeasureId, Temperature, Translation};

/// What kind of thing measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum MeasureKind {
    /// A scoop for powder.
    Scoop,
    /// A pump on a bottle; one use is a press.
    Pump,
    /// A spoon.
    Spoon,
    /// A jug or jigger with a mark.
    Jug,
    /// A scoop for ice.
    IceScoop,
    /// A button of a dispenser.
    Button,
    /// The thing itself, counted: a slice, a leaf, a pearl. What one weighs is known where it was weighed, by the ingredient.
    Piece,
}

impl MeasureKind {
    /// All kinds.
    pub const ALL: [Self; 7] = [
        Self::Scoop,
        Self::Pump,
        Self::Spoon,
        Self::Jug,
        Self::IceScoop,
        Self::Button,
        Self::Piece,
    ];

    /// The word for the thing itself.
    pub fn word(self) -> &'static str {
        match self {
            Self::Scoop => "scoop",
            Self::Pump => "pump",
            Self::Spoon => "spoon",
            Self::Jug => "jug",
            Self::IceScoop => "ice scoop",
            Self::Button => "button",
            Self::Piece => "piece",
        }
    }

    /// The words for one use and for several.
    pub fn words(self) -> (&'static str, &'static str) {
        match self {
            Self::Scoop => ("scoop", "scoops"),
            Self::Pump => ("press", "presses"),
            Self::Spoon => ("spoon", "spoons"),
            Self::Jug => ("jug", "jugs"),
            Self::IceScoop => ("ice scoop", "ice scoops"),
            Self::Button => ("push", "pushes"),
            Self::Piece => ("piece", "pieces"),
        }
    }

    /// The smallest step that a person at the counter can make, in uses (common practice, no source).
    pub fn usual_increment(self) -> f64 {
        match self {
            Self::Scoop | Self::IceScoop | Self::Jug => 0.5,
            Self::Pump | Self::Button | Self::Piece => 1.0,
            Self::Spoon => 0.25,
        }
    }
}

/// How a scoop or spoon is filled.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Filling {
    /// Struck off level with the rim.
    #[default]
    Levelled,
    /// As it comes out of the tin.
    Heaped,
}

/// What a measure is called to hold, before anybody has weighed it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Nominal {
    /// Millilitres.
    Volume(f64),
    /// Grams.
    Mass(f64),
}

/// One weighing: so many uses together.
#[derive(Clone, Debug, PartialEq)]
pub struct Reading {
    /// What was measured; none when it is the measure's volume in water.
    pub ingredient: Option<IngredientId>,
    /// Uses weighed together, at least 1.
    pub uses: u32,
    /// What all of them together are.
    pub amount: ReadingAmount,
    /// Day of the reading, `2026-05-04`.
    pub date: Option<String>,
}

/// What a scale or a graduated jug says; nothing has been read yet where it is 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReadingAmount {
    /// A mass, g.
    Grams(f64),
    /// A volume, ml.
    Millilitres(f64),
}

impl ReadingAmount {
    /// The number in it.
    pub fn number(self) -> f64 {
        match self {
            Self::Grams(number) | Self::Millilitres(number) => number,
        }
    }

    /// The same kind of amount with another number.
    #[must_use]
    pub fn with_number(self, number: f64) -> Self {
        match self {
            Self::Grams(_) => Self::Grams(number),
            Self::Millilitres(_) => Self::Millilitres(number),
        }
    }
}

/// Density of water of 20 °C, g/ml: what a measure holds of water is its volume.
pub const WATER_DENSITY: f64 = 0.998_2;

impl Reading {
    /// What its mass is of: `None` for water, and for a volume, which is that of the measure whatever fills it.
    pub fn weighed(&self) -> Option<&IngredientId> {
        match self.amount {
            ReadingAmount::Grams(_) => self.ingredient.as_ref(),
            ReadingAmount::Millilitres(_) => None,
        }
    }

    /// Its mass; for a volume that of as much water.
    pub fn grams(&self) -> f64 {
        match self.amount {
            ReadingAmount::Grams(grams) => grams,
            ReadingAmount::Millilitres(millilitres) => millilitres * WATER_DENSITY,
        }
    }

    /// Whether it says something.
    pub fn is_usable(&self) -> bool {
        let grams = self.grams();
        self.uses > 0 && grams.is_finite() && grams > 0.0
    }
}

/// A measure of this shop.
#[derive(Clone, Debug, PartialEq)]
pub struct Measure {
    /// Its id.
    pub id: MeasureId,
    /// Its name: "green scoop".
    pub name: String,
    /// What kind of thing it is.
    pub kind: MeasureKind,
    /// What it is called to hold.
    pub nominal: Option<Nominal>,
    /// How it is filled.
    pub filling: Filling,
    /// Smallest step, in uses; the usual one of its kind when none is stated.
    pub increment: Option<f64>,
    /// Temperature at which it pours, for the button of a dispenser; the ingredient's own when none is stated.
    pub temperature: Option<Temperature>,
    /// Weighings.
    pub readings: Vec<Reading>,
    /// A note.
    pub note: String,
    /// What it was before its figures changed, as far as a drink was approved with that.
    pub earlier: EarlierStates<Self>,
    /// What its texts are in other languages.
    pub translations: Vec<Translation>,
}

impl Item for Measure {
    type Id = MeasureId;
    fn id(&self) -> &MeasureId {
        &self.id
    }
}

/// What the readings of one measure say of one use.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Calibration {
    /// Grams of one use: the mean over the readings, each weighted by its uses.
    pub grams: f64,
    /// Standard uncertainty of that mean, g (Type A): a cause shared by every use.
    pub u_mean: Option<f64>,
    /// Standard deviation of one use, g: scatter that each use has for itself.
    pub scatter: Option<f64>,
    /// Number of readings.
    pub readings: usize,
}

impl Measure {
    /// A measure of which nothing is stated yet.
    pub fn new(id: MeasureId, name: String, kind: MeasureKind) -> Self {
        Self {
            id,
            name,
            kind,
            nominal: None,
            filling: Filling::Levelled,
            increment: None,
            temperature: None,
            readings: Vec::new(),
            note: String::new(),
            earlier: EarlierStates::default(),
            translations: Vec::new(),
        }
    }

    /// Smallest step, in uses.
    pub fn step(&self) -> f64 {
        self.increment
            .unwrap_or_else(|| self.kind.usual_increment())
    }

    /// The words for one use and for several.
    pub fn words(&self) -> (&'static str, &'static str) {
        self.kind.words()
    }

    /// The calibration from the readings with this ingredient (or, for `None`, with water); `None` without readings.
    ///
    /// A reading i of nᵢ uses that weighs Mᵢ is nᵢ·m and noise of variance nᵢ·s². The best estimate is
    /// m = `ΣMᵢ` / Σnᵢ and s² = Σ (Mᵢ − nᵢ·m)²/nᵢ / (k − 1): n uses weighed together scatter √n times one use, and one
    /// use scatters √n times as much as their mean. u(m) = s/√Σnᵢ (JCGM 100:2008, 4.2).
    pub fn calibration(&self, ingredient: Option<&IngredientId>) -> Option<Calibration> {
        let readings: Vec<&Reading> = self
            .readings
            .iter()
            .filter(|reading| reading.weighed() == ingredient && reading.is_usable())
            .collect();
        let uses: f64 = readings.iter().map(|reading| f64::from(reading.uses)).sum();
        if readings.is_empty() {
            return None;
        }
        let grams = readings.iter().map(|reading| reading.grams()).sum::<f64>() / uses;
        let squares: f64 = readings
            .iter()
            .map(|reading| {
                (reading.grams() - f64::from(reading.uses) * grams).powi(2)
                    / f64::from(reading.uses)
            })
            .sum();
        let scatter = (readings.len() > 1).then(|| (squares / (readings.len() - 1) as f64).sqrt());
        Some(Calibration {
            grams,
            u_mean: scatter.map(|scatter| scatter / uses.sqrt()),
            scatter,
            readings: readings.len(),
        })
    }

    /// Relative standard uncertainty of a use that nobody has weighed: ±10 % for a pump, ±20 % for a levelled scoop or
    /// spoon, ±30 % for a heaped one, ±5 % for a jug with a mark or a dispenser (all assumed).
    pub fn assumed_relative_uncertainty(&self) -> f64 {
        match (self.kind, self.filling) {
            (MeasureKind::Pump, _) => 0.10,
            (MeasureKind::Jug | MeasureKind::Button, _) => 0.05,
            (_, Filling::Levelled) => 0.20,
            (_, Filling::Heaped) => 0.30,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pump(readings: &[(u32, f64)]) -> Measure {
        Measure {
            readings: readings
                .iter()
                .map(|&(uses, grams)| Reading {
                    ingredient: None,
                    uses,
                    amount: ReadingAmount::Grams(grams),
                    date: None,
                })
                .collect(),
            ..Measure::new(
                MeasureId::new("pump").unwrap(),
                "pump".into(),
                MeasureKind::Pump,
            )
        }
    }

    #[test]
    fn presses_weighed_together_scatter_by_the_root_of_their_count() {
        // Ten presses together: 100 ± 2 g twice. One press then scatters by √10 times the 0.2·√2 … by hand:
        // M = 98, 102, n = 10, m = 10; Σ(M − nm)²/n = (4 + 4)/10 = 0.8; s = √0.8; u(m) = √(0.8/20) = 0.2.
        let calibration = pump(&[(10, 98.0), (10, 102.0)]).calibration(None).unwrap();
        assert!((calibration.grams - 10.0).abs() < 1e-12);
        assert!((calibration.scatter.unwrap() - 0.8_f64.sqrt()).abs() < 1e-12);
        assert!((calibration.u_mean.unwrap() - 0.2).abs() < 1e-12);
    }

    #[test]
    fn one_reading_gives_a_mean_and_no_spread() {
        let calibration = pump(&[(5, 50.0)]).calibration(None).unwrap();
        assert_eq!(
            (calibration.grams, calibration.u_mean, calibration.scatter),
            (10.0, None, None)
        );
        assert_eq!(pump(&[]).calibration(None), None);
        assert_eq!(pump(&[(0, 5.0), (1, f64::NAN)]).calibration(None), None);
    }
}
