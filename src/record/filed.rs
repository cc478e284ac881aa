//! A reading of a cup as it is filed: beside what is foretold of it now.

use crate::balance::{Balance, Measurand, doubt_class};
use crate::book::{Book, CupQuantity, FiledReading, VersionId};
use crate::cups::Measured;
use crate::quantity::Uncertain;

/// The figure of a drink that a reading is held to.
pub(super) const fn measurand(what: CupQuantity) -> Measurand {
    measured(what).measurand()
}

const fn measured(what: CupQuantity) -> Measured {
    match what {
        CupQuantity::Temperature => Measured::Temperature,
        CupQuantity::Brix => Measured::Brix,
        CupQuantity::Weight => Measured::Weight,
    }
}

/// What is foretold of a reading of a drink, in the unit of the reading; `None` where that is not known.
pub fn foretold(balance: &Balance, what: CupQuantity) -> Option<Uncertain> {
    let measurand = measurand(what);
    let value = balance.figures.complete(measurand)?;
    let u = balance.uncertainty(measurand.slot());
    Some(Uncertain { value, u })
}

/// A reading of a drink with what is foretold of it; `None` where that is not known. `value` is in the unit of the reading.
pub fn filed_reading(
    book: &Book,
    balance: &Balance,
    version: Option<&VersionId>,
    (what, value): (CupQuantity, f64),
    (date, by): (&str, &str),
) -> Option<FiledReading> {
    let foretold = foretold(balance, what)?;
    let slot = measurand(what).slot();
    let of_class = balance
        .contributions
        .iter()
        .filter(|one| doubt_class(book, &one.cause) == Some(what.class()))
        .fold(0.0, |sum: f64, one| sum.hypot(one.effect[slot]));
    Some(FiledReading {
        version: version.cloned(),
        date: date.to_owned(),
        by: by.to_owned(),
        what,
        value,
        u: measured(what).uncertainty(book, balance, value),
        foretold: foretold.value,
        foretold_u: foretold.u,
        of_class: of_class.min(foretold.u),
        times: book.settings.doubt_times(what.class()),
    })
}
