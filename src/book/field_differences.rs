//! Which fields of two items differ.
//!
//! Every struct is taken apart field by field, so that a field that it gains does not compile until it is compared.

use super::{
    Differences, Ingredient, Measure, Recipe, Settings, State, Version, VersionId, Vessel,
    differences_between, resolve,
};

/// How many versions of a recipe are compared line by line; a recipe may have thousands.
const VERSIONS: usize = 10;

/// What differs inside an item that two books have.
#[derive(Clone, Debug, PartialEq)]
pub enum ItemDetail {
    /// A field, by its name in the file.
    Field(&'static str),
    /// The name of a recipe.
    Name {
        /// The earlier one.
        before: String,
        /// The later one.
        after: String,
    },
    /// The state of a recipe.
    State {
        /// The earlier one.
        before: State,
        /// The later one.
        after: State,
    },
    /// The lines of a recipe, its cup and the rest that a version may change.
    Lines(Box<Differences>),
    /// A version that is new.
    VersionAdded {
        /// Its name.
        name: String,
        /// What it does otherwise than its base, when that was compared.
        lines: Option<Box<Differences>>,
    },
    /// A version that has other values.
    VersionChanged {
        /// Its name.
        name: String,
        /// The fields that differ, by their names in the file.
        fields: Vec<&'static str>,
        /// What it does otherwise than before, when that was compared.
        lines: Option<Box<Differences>>,
    },
    /// A version that is gone.
    VersionRemoved {
        /// Its name.
        name: String,
    },
    /// The number of approvals, or what one of them holds.
    Approvals {
        /// How many there were.
        before: usize,
        /// How many there are.
        after: usize,
    },
}

/// Names of the fields in which two values of a struct differ.
macro_rules! differing {
    ($type:ident, $one:expr, $other:expr, { $($field:ident),+ $(,)? }) => {{
        let ($type { $($field),+ }, other) = ($one, $other);
        [$((stringify!($field), is_another($field, &other.$field))),+]
            .into_iter()
            .filter(|(_, differs)| *differs)
            .map(|(name, _)| name)
            .collect::<Vec<&'static str>>()
    }};
}

pub(super) fn settings(one: &Settings, other: &Settings) -> Vec<ItemDetail> {
    as_details(differing!(Settings, one, other, {
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
    }))
}

pub(super) fn ingredient(one: &Ingredient, other: &Ingredient) -> Vec<ItemDetail> {
    as_details(differing!(Ingredient, one, other, {
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
    }))
}

pub(super) fn measure(one: &Measure, other: &Measure) -> Vec<ItemDetail> {
    as_details(differing!(Measure, one, other, {
        id,
        name,
        kind,
        nominal,
        filling,
        increment,
        temperature,
        readings,
        note,
    }))
}

pub(super) fn vessel(one: &Vessel, other: &Vessel) -> Vec<ItemDetail> {
    as_details(differing!(Vessel, one, other, {
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
    }))
}

fn is_another<T: PartialEq>(one: &T, other: &T) -> bool {
    one != other
}

fn as_details(fields: Vec<&'static str>) -> Vec<ItemDetail> {
    fields.into_iter().map(ItemDetail::Field).collect()
}

/// What differs between two states of a recipe.
pub(super) fn recipe(one: &Recipe, other: &Recipe) -> Vec<ItemDetail> {
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
    let mut details = Vec::new();
    if *name != other.name {
        details.push(ItemDetail::Name {
            before: name.clone(),
            after: other.name.clone(),
        });
    }
    if *state != other.state {
        details.push(ItemDetail::State {
            before: *state,
            after: other.state,
        });
    }
    let lines = differences_between(&one.plain(), &other.plain());
    if !lines.is_empty() {
        details.push(ItemDetail::Lines(Box::new(lines)));
    }
    let mut compared = 0;
    for version in &other.versions {
        let name = || version.name.clone();
        match versions.iter().find(|earlier| earlier.id == version.id) {
            None => {
                let base = (other, version.builds_on.as_ref());
                let lines = lines_between(base, (other, Some(&version.id)), &mut compared);
                details.push(ItemDetail::VersionAdded {
                    name: name(),
                    lines,
                });
            }
            Some(earlier) if earlier != version => {
                let id = Some(&version.id);
                details.push(ItemDetail::VersionChanged {
                    name: name(),
                    fields: version_fields(earlier, version),
                    lines: lines_between((one, id), (other, id), &mut compared),
                });
            }
            Some(_) => {}
        }
    }
    let is_gone = |version: &&Version| other.version(&version.id).is_none();
    details.extend(versions.iter().filter(is_gone).map(|version| {
        let name = version.name.clone();
        ItemDetail::VersionRemoved { name }
    }));
    if *approvals != other.approvals {
        details.push(ItemDetail::Approvals {
            before: approvals.len(),
            after: other.approvals.len(),
        });
    }
    if *note != other.note {
        details.push(ItemDetail::Field("note"));
    }
    details
}

/// What the second of two states does otherwise than the first, for the first versions that are asked about.
fn lines_between(
    (one, from): (&Recipe, Option<&VersionId>),
    (other, to): (&Recipe, Option<&VersionId>),
    compared: &mut usize,
) -> Option<Box<Differences>> {
    *compared += 1;
    (*compared <= VERSIONS).then(|| {
        let (before, after) = (resolve(one, from).0, resolve(other, to).0);
        Box::new(differences_between(&before, &after))
    })
}

fn version_fields(one: &Version, other: &Version) -> Vec<&'static str> {
    differing!(Version, one, other, { id, name, builds_on, state, season, changes })
}
