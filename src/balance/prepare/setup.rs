//! Everything apart from the lines that a figure depends on: vessels, prices, temperatures, the sweetness of sugars.

use crate::balance::cause::{Cause, Sweet};
use crate::balance::mix::{Component, HIGH_POTENCY_SLOTS};
use crate::balance::published::{freezing, sweetness};
use crate::balance::solve::cooling::{CoolingCurve, curve_of};
use crate::balance::solve::figures::{figures, fill_of};
use crate::balance::solve::physics::{Freezing, MODEL_VOLUME_UNCERTAINTY, Wall};
use crate::balance::solve::prepared::{Prepared, Setup, SetupChange};
use crate::book::{Book, Form, Line, Resolved, Role, Temperature, Vessel};
use crate::quantity::RECTANGULAR;

/// Standard uncertainty of the temperature at which something comes, K, where the shop does not say how well it measures
/// (assumed).
const TEMPERATURE_UNCERTAINTY: f64 = 1.5;

/// Relative standard uncertainty of the heat capacity of a vessel (assumed).
const VESSEL_UNCERTAINTY: f64 = 0.15;

/// A temperature at which hot drinks are handed over, °C, for the relative uncertainty of their cooling (assumed).
const POURED_HOT: f64 = 75.0;

/// Part of the melting that may not have happened when a drink is handed over, as standard uncertainty (assumed): a shaker comes
/// within some tenths of a kelvin of its freezing point in a quarter of a minute, a drink poured over ice and stirred does not.
const UNMELTED_SHAKEN: f64 = 0.03;

/// The same for a drink that is made in its cup (assumed).
const UNMELTED_IN_THE_CUP: f64 = 0.08;

/// Part of the way to the temperature of the room that is lost while mixing and pouring, as standard uncertainty (assumed: half a
/// minute in an open cup).
const HEAT_LOST: f64 = 0.015;

/// Standard uncertainty of a temperature that somebody states, K.
pub fn temperature_uncertainty(book: &Book, stated: Temperature) -> f64 {
    let thermometer = book.settings.instruments.thermometer_kelvin;
    let reading = thermometer.map_or(TEMPERATURE_UNCERTAINTY, |kelvin| kelvin * RECTANGULAR);
    stated.uncertainty(reading)
}

/// Whether a line puts ice, or something frozen, into the drink. None of it is not there.
fn is_iced(book: &Book, line: &Line) -> bool {
    let is_there = line.amount.fills() || line.amount.number().is_some_and(|number| number > 0.0);
    let item = book.ingredient(&line.ingredient);
    let of_item = || item.and_then(|item| item.temperature);
    let celsius = line.temperature.or_else(of_item).map(Temperature::celsius);
    let is_ice = line.role == Role::Ice || item.is_some_and(|item| item.form == Form::Ice);
    is_there && (is_ice || celsius.is_some_and(|celsius| celsius < FROZEN_BELOW))
}

/// Whether there is ice, or something frozen, in a drink.
pub(in crate::balance) fn is_iced_drink(book: &Book, resolved: &Resolved) -> bool {
    resolved.lines().any(|line| is_iced(book, line))
}

/// What goes in colder than this is frozen, °C (assumed; juice and fruit begin to freeze at −0.8 to −1.6).
const FROZEN_BELOW: f64 = -2.0;

pub(super) fn setup(book: &Book, resolved: &Resolved) -> Setup {
    let settings = &book.settings;
    let iced = is_iced_drink(book, resolved);
    let cup = resolved.cup.as_ref().and_then(|id| book.vessel(id));
    let shaker = resolved.shaker.as_ref().and_then(|id| book.vessel(id));
    let wall = |vessel: &Vessel| Wall {
        heat_capacity: vessel.heat_capacity().unwrap_or(0.0),
        celsius: vessel
            .temperature
            .unwrap_or(settings.room_temperature.celsius()),
    };
    let usual = if iced {
        settings.iced_drinking_temperature
    } else {
        settings.hot_drinking_temperature
    };
    let drinking = resolved.drinking_temperature.unwrap_or(usual);
    let room = Wall {
        heat_capacity: 0.0,
        celsius: settings.room_temperature.celsius(),
    };
    let closure = cup.and_then(|cup| cup.usual_closure());
    let prices = cup.map_or_else(Vec::new, |cup| {
        let serviceware = cup.serviceware.iter().map(|ware| ware.price);
        std::iter::once(cup.price)
            .chain(closure.map(|closure| closure.price))
            .chain(serviceware)
            .collect()
    });
    Setup {
        shaker: shaker.map(|shaker| wall(shaker)),
        cup: cup.map_or(room, |cup| wall(cup)),
        strained: resolved.strained && shaker.is_some(),
        capacity: cup.map(|cup| cup.capacity),
        head_room: closure.map_or(0.0, |closure| closure.head_room),
        cooling: None,
        cooling_time_factor: 1.0,
        room: settings.room_temperature.celsius(),
        drinking,
        ice_bulk_density: settings.ice_bulk_density,
        serviceware_cost: prices.iter().flatten().sum(),
        serviceware_cost_known: cup.is_none() || prices.iter().all(Option::is_some),
        sweetness: sweetness_at(drinking),
        sweeteners: [None; HIGH_POTENCY_SLOTS],
        potency: [1.0; HIGH_POTENCY_SLOTS],
        mixture: 1.0,
        freezing: Freezing::default(),
        unmelted: 0.0,
        heat_lost: 0.0,
        volume: 1.0,
        iced,
    }
}

fn relative_sweetness(sweet: Sweet, drinking: f64) -> sweetness::RelativeSweetness {
    match sweet {
        Sweet::Glucose => sweetness::GLUCOSE,
        Sweet::Fructose => sweetness::fructose(drinking),
        Sweet::Lactose => sweetness::LACTOSE,
        Sweet::Maltose => sweetness::MALTOSE,
        Sweet::OtherSugar => sweetness::OTHER_SUGAR,
    }
}

/// Relative sweetness at a temperature, in the order of [`Sweet::ALL`].
pub(in crate::balance) fn sweetness_at(celsius: f64) -> [f64; 5] {
    Sweet::ALL.map(|sweet| relative_sweetness(sweet, celsius).typical)
}

/// Enters the causes of doubt that are not a line's.
pub(super) fn add_causes(book: &Book, resolved: &Resolved, prepared: &mut Prepared) {
    add_taste_causes(prepared);
    add_vessel_causes(book, resolved, prepared);
    let mut push = |cause, change| {
        let cause = prepared.cause(cause);
        prepared.setup_changes.push((cause, change));
    };
    push(
        Cause::DensityModel,
        SetupChange::Volume(MODEL_VOLUME_UNCERTAINTY),
    );
    push(Cause::HeatModel, SetupChange::HeatLost(HEAT_LOST));
    let holds_ice = prepared
        .lines
        .iter()
        .any(|line| line.per_unit.get(Component::Ice) > 0.0);
    if holds_ice {
        let relative = freezing::RELATIVE_UNCERTAINTY;
        let kelvin = freezing::UNDECLARED_MINERALS_KELVIN;
        let change = SetupChange::Freezing { relative, kelvin };
        let cause = prepared.cause(Cause::FreezingPoint);
        prepared.setup_changes.push((cause, change));
        let unmelted = if prepared.setup.shaker.is_some() {
            UNMELTED_SHAKEN
        } else {
            UNMELTED_IN_THE_CUP
        };
        let cause = prepared.cause(Cause::Melting);
        prepared
            .setup_changes
            .push((cause, SetupChange::Unmelted(unmelted)));
    }
}

fn add_taste_causes(prepared: &mut Prepared) {
    let drinking = prepared.setup.drinking;
    for (slot, sweet) in Sweet::ALL.into_iter().enumerate() {
        let u = relative_sweetness(sweet, drinking).standard_uncertainty;
        let cause = prepared.cause(Cause::RelativeSweetness(sweet));
        prepared
            .setup_changes
            .push((cause, SetupChange::Sweetness(slot, u)));
    }
    let sweeteners = prepared.setup.sweeteners;
    for (slot, sweetener) in sweeteners.into_iter().enumerate() {
        if let Some(sweetener) = sweetener {
            let cause = prepared.cause(Cause::Potency(sweetener));
            prepared.setup_changes.push((
                cause,
                SetupChange::Potency(slot, sweetness::POTENCY_UNCERTAINTY),
            ));
        }
    }
    if sweeteners.iter().flatten().count() > 1 {
        let cause = prepared.cause(Cause::SweetenerMixture);
        let change = SetupChange::Mixture(sweetness::MIXTURE_UNCERTAINTY);
        prepared.setup_changes.push((cause, change));
    }
}

fn add_vessel_causes(book: &Book, resolved: &Resolved, prepared: &mut Prepared) {
    let stands_in_room = |id: &crate::book::VesselId| {
        book.vessel(id)
            .is_some_and(|vessel| vessel.temperature.is_none() && vessel.heat_capacity().is_some())
    };
    if let Some(id) = &resolved.cup {
        let heat = prepared.setup.cup.heat_capacity * VESSEL_UNCERTAINTY;
        let cause = prepared.cause(Cause::VesselHeat(id.clone()));
        prepared
            .setup_changes
            .push((cause, SetupChange::CupHeat(heat)));
    }
    if let (Some(id), Some(curve)) = (&resolved.cup, prepared.setup.cooling) {
        let cause = prepared.cause(Cause::Cooling(id.clone()));
        let relative = curve.doubt_between(POURED_HOT, prepared.setup.drinking);
        prepared
            .setup_changes
            .push((cause, SetupChange::CoolingTime(relative)));
    }
    if let (Some(id), Some(wall)) = (&resolved.shaker, prepared.setup.shaker) {
        let heat = wall.heat_capacity * VESSEL_UNCERTAINTY;
        let cause = prepared.cause(Cause::VesselHeat(id.clone()));
        prepared
            .setup_changes
            .push((cause, SetupChange::ShakerHeat(heat)));
    }
    let change = SetupChange::WallTemperature {
        cup: resolved.cup.as_ref().is_some_and(stands_in_room),
        shaker: resolved.shaker.as_ref().is_some_and(stands_in_room),
        kelvin: temperature_uncertainty(book, book.settings.room_temperature),
    };
    let cause = prepared.cause(Cause::RoomTemperature);
    prepared.setup_changes.push((cause, change));
}

/// How the drink cools in its cup, as full as the lines fill it: a search that moves amounts keeps that fill.
pub(super) fn cooling(
    book: &Book,
    resolved: &Resolved,
    prepared: &Prepared,
) -> Option<CoolingCurve> {
    if prepared.setup.iced {
        return None;
    }
    let cup = book.vessel(resolved.cup.as_ref()?)?;
    let fill = fill_of(&figures(prepared));
    Some(curve_of(cup, book.settings.room_temperature.celsius(), fill)?.0)
}
