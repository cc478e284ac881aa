//! Measures and vessels from a file.

use super::{Checker, file};
use crate::book::{
    Closure, ClosureKind, CoolingReading, CoolingRun, Measure, Nominal, Reading, Serviceware,
    ServicewareKind, Shape, Vessel, VesselKind,
};

pub(super) fn measure(checker: &mut Checker<'_>, found: file::Measure) -> Measure {
    Measure {
        id: checker.id("id", &found.id),
        name: found.name,
        kind: found.kind.into(),
        nominal: found.nominal.map(|nominal| match nominal {
            file::Nominal::Volume(millilitres) => {
                Nominal::Volume(checker.number("nominal", millilitres))
            }
            file::Nominal::Mass(grams) => Nominal::Mass(checker.number("nominal", grams)),
        }),
        filling: found.filling.map(Into::into).unwrap_or_default(),
        increment: checker.optional_number("increment", found.increment),
        temperature: checker.optional_number("temperature", found.temperature),
        readings: checker.items("readings", found.readings, |_| "", reading),
        note: found.note,
    }
}

fn reading(checker: &mut Checker<'_>, found: file::Reading) -> Reading {
    Reading {
        ingredient: checker.optional_id("ingredient", found.ingredient.as_ref()),
        uses: found.uses,
        grams: checker.number("grams", found.grams),
        date: found.date,
    }
}

pub(super) fn vessel(checker: &mut Checker<'_>, found: file::Vessel) -> Vessel {
    Vessel {
        id: checker.id("id", &found.id),
        name: found.name,
        kind: VesselKind::from(found.kind),
        capacity: checker.number("capacity", found.capacity),
        shape: found
            .shape
            .map(|shape| checker.within("shape", |checker| cup_shape(checker, &shape))),
        mass: checker.optional_number("mass", found.mass),
        specific_heat: checker.optional_number("specific_heat", found.specific_heat),
        temperature: checker.optional_number("temperature", found.temperature),
        cooling_minutes: checker.optional_number("cooling_minutes", found.cooling_minutes),
        cooling_run: found
            .cooling_run
            .map(|run| checker.within("cooling_run", |checker| cooling_run(checker, run))),
        price: checker.optional_number("price", found.price),
        closures: checker.items("closures", found.closures, |_| "", closure),
        serviceware: checker.items("serviceware", found.serviceware, |_| "", serviceware),
        note: found.note,
    }
}

fn cup_shape(checker: &mut Checker<'_>, found: &file::Shape) -> Shape {
    Shape {
        height: checker.number("height", found.height),
        bottom: checker.number("bottom", found.bottom),
        top: checker.number("top", found.top),
    }
}

fn cooling_run(checker: &mut Checker<'_>, found: file::CoolingRun) -> CoolingRun {
    CoolingRun {
        room: checker.number("room", found.room),
        millilitres: checker.optional_number("millilitres", found.millilitres),
        readings: checker.items(
            "readings",
            found.readings,
            |_| "",
            |checker, reading| CoolingReading {
                minutes: checker.number("minutes", reading.minutes),
                celsius: checker.number("celsius", reading.celsius),
            },
        ),
    }
}

fn closure(checker: &mut Checker<'_>, found: file::Closure) -> Closure {
    Closure {
        kind: ClosureKind::from(found.kind),
        price: checker.optional_number("price", found.price),
        head_room: checker.number("head_room", found.head_room),
        cooling_factor: checker.optional_number("cooling_factor", found.cooling_factor),
    }
}

fn serviceware(checker: &mut Checker<'_>, found: file::Serviceware) -> Serviceware {
    Serviceware {
        kind: match found.kind {
            file::ServicewareKind::Straw { wide } => ServicewareKind::Straw { wide },
            file::ServicewareKind::Sleeve => ServicewareKind::Sleeve,
        },
        price: checker.optional_number("price", found.price),
    }
}
