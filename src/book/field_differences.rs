//! Which fields of two items differ, and which are taken from whom when two people changed one item.
//!
//! Every struct is taken apart field by field, so that a field that it gains does not compile until it is compared and merged.

use super::{
    Differences, Ingredient, Measure, Recipe, Settings, State, Tasting, Version, VersionId, Vessel,
    differences_between, resolve,
};

/// Whose state is taken.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Side {
    /// That of the book in hand.
    #[default]
    Mine,
    /// That of the other book.
    Theirs,
}

/// Fields of an item that only make sense together, by their names in the file: who changes one has looked at the others. The
/// one that names them stands first.
pub type Together = &'static [&'static str];

/// A value whose fields are known.
pub(super) trait Fields: Clone {
    /// All fields but the id.
    const TOGETHER: &'static [Together];

    /// Names of the fields in which two of them differ.
    fn differing(&self, other: &Self) -> Vec<&'static str>;

    /// Takes fields over from another one.
    fn take(&mut self, fields: Together, other: &Self);
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

/// Lists the fields of a struct; those in one pair of brackets belong together.
macro_rules! fields {
    ($type:ident { $($id:ident,)? $([$($field:ident),+]),+ $(,)? }) => {
        impl $type {
            /// The fields that another state of it has otherwise, by their names in the file; of those that belong together the
            /// one that names them.
            pub fn fields_changed_to(&self, after: &Self) -> Vec<&'static str> {
                leading(self, after)
            }
        }

        impl Fields for $type {
            const TOGETHER: &'static [Together] = &[$(&[$(stringify!($field)),+]),+];

            fn differing(&self, other: &Self) -> Vec<&'static str> {
                differing!($type, self, other, { $($id,)? $($($field),+),+ })
            }

            fn take(&mut self, fields: Together, other: &Self) {
                $($(if fields.contains(&stringify!($field)) {
                    self.$field.clone_from(&other.$field);
                })+)+
            }
        }
    };
}

/// The fields that another state of a value has otherwise; of those that belong together the first one.
fn leading<T: Fields>(before: &T, after: &T) -> Vec<&'static str> {
    let differing = before.differing(after);
    let first = |fields: &Together| {
        let mut fields = fields.iter().copied();
        fields.find(|field| differing.contains(field))
    };
    T::TOGETHER.iter().filter_map(first).collect()
}

fields!(Settings {
    [shop],
    [note],
    [currency],
    [room_temperature],
    [refrigerator_temperature],
    [ice_temperature],
    [hot_drinking_temperature],
    [iced_drinking_temperature],
    [hot_window],
    [iced_window],
    [ice_bulk_density],
    [ice_melt_rate],
    [ice_left],
    [sales_tax_percent],
    [instruments],
    [doubts],
    [steps],
    [yardsticks],
    [sugar_levels],
    [ice_levels],
    [earlier],
    [language],
    [translations],
    [confirmations],
    [allergen_lists],
});

// A batch has in its composition only what its recipe does not give; a density is checked against the form; what a pack says of
// allergens and diets is said of the list that is printed on it.
fields!(Ingredient {
    id,
    [name],
    [brand],
    [lot],
    [role],
    [composition, house_made],
    [form, density, bulk_density],
    [temperature],
    [statement, allergens, diet],
    [opened_life_hours],
    [price, earlier_prices, supplier],
    [articles],
    [no_longer_sold],
    [tasted],
    [note],
    [earlier],
    [translations],
});

// Readings are of the measure as it was filled.
fields!(Measure {
    id,
    [name],
    [kind, filling, readings],
    [nominal],
    [increment],
    [temperature],
    [note],
    [earlier],
    [translations],
});

// Lids leave room below the rim, the shape gives the capacity, and a cooling time is of the same cup as the run.
fields!(Vessel {
    id,
    [name],
    [kind],
    [capacity, shape, closures],
    [mass, specific_heat],
    [temperature],
    [cooling_run, cooling_minutes],
    [price],
    [serviceware],
    [note],
    [earlier],
    [translations],
});

// Two halves of a drink that each tasted right need not do so together.
fields!(Recipe {
    id,
    [name],
    [
        entries,
        cup,
        shaker,
        strained,
        drinking_temperature,
        menu_price,
        sugar_level,
        versions,
        state,
        approvals
    ],
    [readings],
    [note],
    [earlier],
    [translations],
});

// What came out is of these cups and of what was asked about them, and notes are on them by their number.
fields!(Tasting {
    id,
    [date],
    [people],
    [reason],
    [outcome, cups, axis, seed, notes],
    [counts],
});

/// What two people made of one value. What only one of them changed is taken from that one; `choose` says whose fields are taken
/// where both changed some that belong together.
pub(super) fn merged<T: Fields>(
    [base, mine, theirs]: [&T; 3],
    mut choose: impl FnMut(Together) -> Side,
) -> T {
    let (by_me, by_them) = (base.differing(mine), base.differing(theirs));
    let apart = mine.differing(theirs);
    let mut merged = mine.clone();
    for fields in T::TOGETHER {
        let has_some = |of: &[&str]| fields.iter().any(|field| of.contains(field));
        let takes_theirs = match (has_some(&by_me), has_some(&by_them)) {
            _ if !has_some(&apart) => false,
            (true, true) => choose(fields) == Side::Theirs,
            (_, changed_by_them) => changed_by_them,
        };
        if takes_theirs {
            merged.take(fields, theirs);
        }
    }
    merged
}

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

fn is_another<T: PartialEq>(one: &T, other: &T) -> bool {
    one != other
}

impl ItemDetail {
    /// Whether it tells of one of these fields.
    pub fn is_of(&self, fields: &[&str]) -> bool {
        fields.contains(&match self {
            Self::Field(field) => field,
            Self::Name { .. } => "name",
            Self::State { .. } => "state",
            Self::Lines(_) => "entries",
            Self::VersionAdded { .. }
            | Self::VersionChanged { .. }
            | Self::VersionRemoved { .. } => "versions",
            Self::Approvals { .. } => "approvals",
        })
    }
}

/// What differs between two states of an item that is no recipe.
pub(super) fn fields<T: Fields>(one: &T, other: &T) -> Vec<ItemDetail> {
    let fields = one.differing(other).into_iter();
    fields.map(ItemDetail::Field).collect()
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
        sugar_level: _,
        versions,
        approvals,
        readings,
        note,
        earlier,
        translations,
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
    if *readings != other.readings {
        details.push(ItemDetail::Field("readings"));
    }
    if *note != other.note {
        details.push(ItemDetail::Field("note"));
    }
    if *earlier != other.earlier {
        details.push(ItemDetail::Field("earlier"));
    }
    if *translations != other.translations {
        details.push(ItemDetail::Field("translations"));
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
