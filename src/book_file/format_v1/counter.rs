//! Measures and vessels as they stand in a file.

use super::super::checker::Checker;
use super::earlier::EarlierStates;
use super::reading::Reading;
use super::stored::{Stored, file_group, in_file};
use super::{ClosureKind, Filling, MeasureKind, Temperature, Translation, VesselKind};

in_file! {
    struct Measure named by id {
        id: String,
        name: String,
        kind: MeasureKind,
        nominal: Option<Nominal> = nothing,
        filling: Option<Filling> = nothing,
        increment: Option<f64> = nothing,
        temperature: Option<Temperature> = nothing,
        readings: Vec<Reading> = nothing,
        note: String = nothing,
        earlier: EarlierStates<Measure> = nothing,
        translations: Vec<Translation> = nothing,
    }
}

in_file! {
    enum Nominal with parts here {
        Volume(millilitres: f64),
        Mass(grams: f64),
    }
}

in_file! {
    struct Vessel named by id {
        id: String,
        name: String,
        kind: VesselKind,
        capacity: f64,
        shape: Option<Shape> = nothing,
        mass: Option<f64> = nothing,
        specific_heat: Option<f64> = nothing,
        temperature: Option<f64> = nothing,
        cooling_minutes: Option<f64> = nothing,
        cooling_run: Option<CoolingRun> = nothing,
        price: Option<f64> = nothing,
        closures: Vec<Closure> = nothing,
        serviceware: Vec<Serviceware> = nothing,
        note: String = nothing,
        earlier: EarlierStates<Vessel> = nothing,
        translations: Vec<Translation> = nothing,
    }
}

in_file! {
    struct Shape {
        height: f64,
        bottom: f64,
        top: f64,
    }
}

in_file! {
    struct CoolingRun {
        room: f64,
        millilitres: Option<f64> = nothing,
        readings: Vec<CoolingReading> = nothing,
    }
}

in_file! {
    struct CoolingReading {
        minutes: f64,
        celsius: f64,
    }
}

in_file! {
    struct Closure {
        kind: ClosureKind,
        price: Option<f64> = nothing,
        head_room: f64,
        cooling_factor: Option<f64> = nothing,
    }
}

in_file! {
    struct Serviceware {
        kind: ServicewareKind,
        price: Option<f64> = nothing,
    }
}

in_file! {
    enum ServicewareKind with parts here {
        Straw { wide: bool, },
        Sleeve,
    }
}
