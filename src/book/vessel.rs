//! Cups, shakers and jugs.

use super::{EarlierStates, Item, Translation, VesselId};

/// What a vessel is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum VesselKind {
    /// What the guest drinks from.
    Cup,
    /// What the drink is mixed or shaken in.
    Shaker,
    /// What is poured from.
    Jug,
}

impl VesselKind {
    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Cup => "cup",
            Self::Shaker => "shaker",
            Self::Jug => "jug",
        }
    }
}

/// A frustum, for the drawing of the cup and for its fill line; inner measures in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shape {
    /// From the bottom to the rim.
    pub height: f64,
    /// Across the bottom.
    pub bottom: f64,
    /// Across the rim.
    pub top: f64,
}

/// How a cup is closed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ClosureKind {
    /// Nothing on top.
    Open,
    /// A pressed-on lid.
    Lid,
    /// A sealed film.
    Film,
}

impl ClosureKind {
    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Open => "open",
            Self::Lid => "lid",
            Self::Film => "film",
        }
    }
}

/// A way to close a cup.
#[derive(Clone, Debug, PartialEq)]
pub struct Closure {
    /// What it is.
    pub kind: ClosureKind,
    /// Price of one, in the book's currency.
    pub price: Option<f64>,
    /// Room that must stay free below the rim, ml.
    pub head_room: f64,
    /// Factor on the cooling rate; 1 for an open cup. A lid or film without a factor keeps vapour in as published lids do.
    pub cooling_factor: Option<f64>,
}

/// What goes with a cup.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ServicewareKind {
    /// A straw; `wide` ones let toppings and hot gulps through.
    Straw {
        /// Wide enough for toppings.
        wide: bool,
    },
    /// A sleeve round a hot cup.
    Sleeve,
}

/// A straw or sleeve that goes with a cup.
#[derive(Clone, Debug, PartialEq)]
pub struct Serviceware {
    /// What it is.
    pub kind: ServicewareKind,
    /// Price of one, in the book's currency.
    pub price: Option<f64>,
}

/// One look at the thermometer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoolingReading {
    /// Minutes since the first look or since pouring.
    pub minutes: f64,
    /// Temperature of the drink, °C.
    pub celsius: f64,
}

/// A drink that was left to cool in a vessel, and what the thermometer showed.
#[derive(Clone, Debug, PartialEq)]
pub struct CoolingRun {
    /// Temperature of the room, °C.
    pub room: f64,
    /// Volume at the start, ml, when it was noted: less drink cools faster.
    pub millilitres: Option<f64>,
    /// The vessel was open; the readings, in any order.
    pub readings: Vec<CoolingReading>,
}

/// A vessel of this shop.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    /// Its id.
    pub id: VesselId,
    /// Its name: "paper cup 500".
    pub name: String,
    /// What it is for.
    pub kind: VesselKind,
    /// Volume to the rim, ml.
    pub capacity: f64,
    /// Its inner shape.
    pub shape: Option<Shape>,
    /// Mass of the wall that takes part in the heat exchange, g.
    pub mass: Option<f64>,
    /// Specific heat of the wall, kJ/(kg K).
    pub specific_heat: Option<f64>,
    /// Temperature before anything is poured in, °C; that of the room when none is stated.
    pub temperature: Option<f64>,
    /// Minutes in which a drink falls 63 % of the way from 85 °C to the room, open and full.
    pub cooling_minutes: Option<f64>,
    /// Thermometer readings of a drink that cooled in it, open; they go before the time constant.
    pub cooling_run: Option<CoolingRun>,
    /// Price of one, in the book's currency.
    pub price: Option<f64>,
    /// How it can be closed; the first is the usual one.
    pub closures: Vec<Closure>,
    /// What goes with it.
    pub serviceware: Vec<Serviceware>,
    /// A note.
    pub note: String,
    /// What it was before its figures changed, as far as a drink was approved with that.
    pub earlier: EarlierStates<Self>,
    /// What its texts are in other languages.
    pub translations: Vec<Translation>,
}

impl Item for Vessel {
    type Id = VesselId;
    fn id(&self) -> &VesselId {
        &self.id
    }
}

impl Vessel {
    /// A vessel that holds so many millilitres, of which nothing else is stated yet.
    pub fn new(id: VesselId, name: String, kind: VesselKind, capacity: f64) -> Self {
        Self {
            id,
            name,
            kind,
            capacity,
            shape: None,
            mass: None,
            specific_heat: None,
            temperature: None,
            cooling_minutes: None,
            cooling_run: None,
            price: None,
            closures: Vec::new(),
            serviceware: Vec::new(),
            note: String::new(),
            earlier: EarlierStates::default(),
            translations: Vec::new(),
        }
    }

    /// Heat capacity of the wall, kJ/K; `None` when its mass or specific heat is not stated.
    pub fn heat_capacity(&self) -> Option<f64> {
        Some(self.mass? / 1000.0 * self.specific_heat?)
    }

    /// The usual closure, open when none is stated.
    pub fn usual_closure(&self) -> Option<&Closure> {
        self.closures.first()
    }
}
