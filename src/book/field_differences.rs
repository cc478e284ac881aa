//! Which fields of two items differ.
//!
//! Every struct is taken apart field by field, so that a field that it gains does not compile until it is compared.

use super::{Book, Ingredient, Measure, Recipe, Settings, Version, Vessel, differences_between};
use crate::quantity::excerpt;

/// Longest name in a sentence, in characters.
const NAME: usize = 40;

/// Names of the fields in which two values of a struct differ.
macro_rules! differing {
    ($type:ident, $one:expr, $other:expr, { $($field:ident),+ $(,)? }) => {{
        let ($type { $($field),+ }, other) = ($one, $other);
        [$((stringify!($field), is_another($field, &other.$field))),+]
            .into_iter()
            .filter(|(_, differs)| *differs)
            .map(|(name, _)| name.replace('_', " "))
            .collect::<Vec<String>>()
    }};
}

pub(super) fn settings(one: &Settings, other: &Settings) -> Vec<String> {
    differing!(Settings, one, other, {
        shop,
        note,
        currency,
        room_temperature,
        refrigerator_temperature,
        ice_temperature,
        hot_drinking_temperature,
        iced_drinking_temperature,
        hot_window,
        iced_window,
        ice_bulk_density,
        ice_melt_rate,
        sales_tax_percent,
        instruments,
        steps,
        yardsticks,
        sugar_levels,
        ice_levels,
    })
}

pub(super) fn ingredient(one: &Ingredient, other: &Ingredient) -> Vec<String> {
    differing!(Ingredient, one, other, {
        id,
        name,
        brand,
        supplier,
        lot,
        form,
        role,
        composition,
        density,
        bulk_density,
        temperature,
        statement,
        allergens,
        diet,
        opened_life_hours,
        price,
        earlier_prices,
        house_made,
        note,
    })
}

pub(super) fn measure(one: &Measure, other: &Measure) -> Vec<String> {
    differing!(Measure, one, other, {
        id,
        name,
        kind,
        nominal,
        filling,
        increment,
        temperature,
        readings,
        note,
    })
}

pub(super) fn vessel(one: &Vessel, other: &Vessel) -> Vec<String> {
    differing!(Vessel, one, other, {
        id,
        name,
        kind,
        capacity,
        shape,
        mass,
        specific_heat,
        temperature,
        cooling_minutes,
        cooling_run,
        price,
        closures,
        serviceware,
        note,
    })
}

fn is_another<T: PartialEq>(one: &T, other: &T) -> bool {
    one != other
}

/// What differs between two states of a recipe, as sentences.
pub(super) fn recipe(book: &Book, one: &Recipe, other: &Recipe) -> Vec<String> {
    let Recipe {
        id: _,
        name,
        state,
        entries: _,
        cup: _,
        shaker: _,
        strained: _,
        drinking_temperature: _,
        menu_price: _,
        versions,
        approvals,
        note,
    } = one;
    let mut sentences = Vec::new();
    if *name != other.name {
        sentences.push(format!(
            "name: {} instead of {}",
            excerpt(&other.name, NAME),
            excerpt(name, NAME)
        ));
    }
    if *state != other.state {
        sentences.push(format!(
            "state: {} instead of {}",
            other.state.word(),
            state.word()
        ));
    }
    sentences.extend(differences_between(&one.plain(), &other.plain()).sentences(book));
    for version in &other.versions {
        match versions.iter().find(|earlier| earlier.id == version.id) {
            None => sentences.push(format!("version “{}” added", excerpt(&version.name, NAME))),
            Some(earlier) if earlier != version => {
                sentences.push(version_sentence(earlier, version));
            }
            Some(_) => {}
        }
    }
    for version in versions
        .iter()
        .filter(|version| other.version(&version.id).is_none())
    {
        sentences.push(format!(
            "version “{}” removed",
            excerpt(&version.name, NAME)
        ));
    }
    if *approvals != other.approvals {
        sentences.push(format!(
            "approvals: {} instead of {}",
            other.approvals.len(),
            approvals.len()
        ));
    }
    if *note != other.note {
        sentences.push("note".to_owned());
    }
    sentences
}

fn version_sentence(one: &Version, other: &Version) -> String {
    let fields = differing!(Version, one, other, { id, name, builds_on, state, season, changes });
    format!(
        "version “{}”: {}",
        excerpt(&other.name, NAME),
        fields.join(", ")
    )
}
