//! A hundred cups: what really leaves the counter, drawn from the causes of doubt that the engine has.
//!
//! The distributions are propagated by drawing (JCGM 101:2008): the prepared drink of the engine is worked out with every cause
//! off by its own multiple of its standard uncertainty. What varies from one cup to the next is drawn for every cup, what a whole
//! shift shares is drawn once a shift, and what is the same in every cup, because it is not scatter but a figure that nobody
//! knows better, stays where it is ([`When`]). Each cup is held to the standard of the drink, by the noticeable step of each axis.
//!
//! - [`draw_cups`] draws them and says how many taste like the standard, and what would help.
//! - [`CupDoctor`] says of one cup that was weighed or read what most likely went wrong with it.
//!
//! The same seed gives the same cups, on every machine.

mod aim;
mod counter;
mod drawn;
mod fault;
mod gauss;
mod normal;
mod remark;
mod remedy;
mod share;
mod shift;
mod why_off;
mod why_off_remark;

pub use aim::HeldTo;
pub use drawn::{DrawnCause, When, when_drawn};
pub use fault::Fault;
pub use remark::{CupsRemark, OfAHundred};
pub use remedy::{Helps, Remedy};
pub use share::Share;
pub use shift::{AxisCups, Cups, CupsQuestion, QUANTILES, draw_cups};
pub use why_off::{
    CupDoctor, CupReading, LikelyFault, Measured, NextMeasurement, OffBy, SimulatedCup, WhyOff,
};
pub use why_off_remark::WhyOffRemark;
