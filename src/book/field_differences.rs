//! Which fields of two items differ.
//!
//! Every struct is taken apart field by field, so that a field that it gains does not compile until it is compared.

use super::{
    Book, Ingredient, Measure, Recipe, Settings, Version, VersionId, Vessel, differences_between,
    resolve,
};
use crate::quantity::excerpt;

/// Longest name in a sentence, in characters.
const NAME: usize = 40;

/// How many versions of a recipe are told with their lines, and how many lines of each.
const VERSIONS: usize = 10;
const LINES: usize = 4;

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
    // Versions whose lines are told; a recipe may have thousands.
    let mut told = 0;
    sentences.extend(differences_between(&one.plain(), &other.plain()).sentences(book));
    for version in &other.versions {
        match versions.iter().find(|earlier| earlier.id == version.id) {
            None => {
                let base = (other, version.builds_on.as_ref());
                let of = lines_between(book, base, (other, Some(&version.id)), &mut told);
                let name = excerpt(&version.name, NAME);
                sentences.push(with_lines(format!("version “{name}” added"), &of));
            }
            Some(earlier) if earlier != version => {
                let id = Some(&version.id);
                let of = lines_between(book, (one, id), (other, id), &mut told);
                sentences.push(with_lines(version_sentence(earlier, version), &of));
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

/// What the second of two states does otherwise than the first, for the first versions that are asked about.
fn lines_between(
    book: &Book,
    (one, from): (&Recipe, Option<&VersionId>),
    (other, to): (&Recipe, Option<&VersionId>),
    told: &mut usize,
) -> Vec<String> {
    *told += 1;
    if *told > VERSIONS {
        return Vec::new();
    }
    let (before, after) = (resolve(one, from).0, resolve(other, to).0);
    differences_between(&before, &after).sentences(book)
}

/// "version “vegan” added (House sweetener: 1 spoon instead of 2 spoons)".
fn with_lines(sentence: String, lines: &[String]) -> String {
    let listed = lines.iter().take(LINES).cloned().collect::<Vec<_>>();
    match lines.len().saturating_sub(LINES) {
        _ if lines.is_empty() => sentence,
        0 => format!("{sentence} ({})", listed.join("; ")),
        more => format!("{sentence} ({}; and {more} more)", listed.join("; ")),
    }
}

fn version_sentence(one: &Version, other: &Version) -> String {
    let fields = differing!(Version, one, other, { id, name, builds_on, state, season, changes });
    format!(
        "version “{}”: {}",
        excerpt(&other.name, NAME),
        fields.join(", ")
    )
}
