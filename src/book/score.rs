//! The record that a book keeps of itself: readings beside what had been foretold, and what was learnt from them about doubts.

use super::VersionId;

/// Doubts that the record tells of together: those of one kind of knowledge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum DoubtClass {
    /// How much goes in: what measures dose, and what fills and densities make of it.
    Dose,
    /// How warm a drink is when it is handed over: what comes warm or cold, vessels, ice, heat lost on the way.
    Temperature,
    /// What is in it: what packs state or leave out, what brews and batches yield.
    Composition,
    /// How sweet it tastes: the relative sweetness of sugars and sweeteners.
    Sweetness,
    /// How strong a flavour is.
    Flavour,
}

impl DoubtClass {
    /// All of them, in the order in which they are shown.
    pub const ALL: [Self; 5] = [
        Self::Dose,
        Self::Temperature,
        Self::Composition,
        Self::Sweetness,
        Self::Flavour,
    ];

    /// Its key in reports and in the names of messages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Dose => "dose",
            Self::Temperature => "temperature",
            Self::Composition => "composition",
            Self::Sweetness => "sweetness",
            Self::Flavour => "flavour",
        }
    }
}

/// A factor on the doubts of a class that somebody accepted from the record.
#[derive(Clone, Debug, PartialEq)]
pub struct RescaledDoubt {
    /// Which doubts.
    pub class: DoubtClass,
    /// How many times what is assumed without a record.
    pub times: f64,
    /// The day on which it was accepted, `2026-05-04`.
    pub date: String,
    /// Who accepted it.
    pub by: String,
    /// Why.
    pub reason: String,
    /// How many readings the record had then.
    pub readings: u32,
    /// How many of them lay within two standard uncertainties.
    pub inside: u32,
}

/// What was read of a cup.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CupQuantity {
    /// Its temperature as it is handed over, °C.
    Temperature,
    /// Soluble solids of the liquid, °Brix.
    Brix,
    /// Weight of what is in the cup, g.
    Weight,
}

impl CupQuantity {
    /// All of them, in the order in which they are shown.
    pub const ALL: [Self; 3] = [Self::Temperature, Self::Brix, Self::Weight];

    /// Its key in reports and in the names of messages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Temperature => "temperature",
            Self::Brix => "brix",
            Self::Weight => "weight",
        }
    }

    /// The unit of a reading.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Temperature => "°C",
            Self::Brix => "°Brix",
            Self::Weight => "g",
        }
    }

    /// The doubts that it tells of.
    pub const fn class(self) -> DoubtClass {
        match self {
            Self::Temperature => DoubtClass::Temperature,
            Self::Brix => DoubtClass::Composition,
            Self::Weight => DoubtClass::Dose,
        }
    }
}

/// A reading of a cup, with what had been foretold of it.
///
/// What was foretold stands as it was said at that time, and does not move when the recipe or a doubt becomes another one.
#[derive(Clone, Debug, PartialEq)]
pub struct FiledReading {
    /// The version that it was; none for the recipe itself.
    pub version: Option<VersionId>,
    /// Day, `2026-05-04`.
    pub date: String,
    /// Who read it.
    pub by: String,
    /// What was read.
    pub what: CupQuantity,
    /// What the instrument said, in the unit of `what`.
    pub value: f64,
    /// Standard uncertainty of the instrument, in the same unit.
    pub u: f64,
    /// What was foretold, in the same unit.
    pub foretold: f64,
    /// Standard uncertainty of what was foretold.
    pub foretold_u: f64,
    /// The part of it that is of the class of `what`: the root of the sum of those squares.
    pub of_class: f64,
    /// What the doubts of the class were multiplied with at that time.
    pub times: f64,
}
