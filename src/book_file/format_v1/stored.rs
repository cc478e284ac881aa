//! How a value of the book stands in a file, and the way back: of plain values here, of groups and choices by [`in_file`],
//! which takes each field from one list.

use std::collections::BTreeMap;

use super::super::checker::Checker;
use super::super::error::{LoadProblem, Step};
use crate::book::{
    self, IdError, IngredientId, LanguageId, LineId, MeasureId, RecipeId, TastingId, VersionId,
    VesselId,
};

/// A value as it stands in a file, for a value `B` of the book.
pub(crate) trait Stored<B>: Sized {
    /// How many of them a list may hold.
    const MOST: usize = usize::MAX;

    /// How a value of the book stands in a file.
    fn from_book(value: &B) -> Self;

    /// The value of the book. What can't be taken is reported, and something stands in for it: the reading goes on and finds
    /// the other problems.
    fn into_book(self, checker: &mut Checker<'_>) -> B;

    /// What names it among the items of a list.
    #[expect(clippy::unnecessary_literal_bound, reason = "what has a name lends it")]
    fn label(&self) -> &str {
        ""
    }
}

/// Whether a field is left out that may be absent.
pub(crate) fn says_nothing<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}

impl Stored<f64> for f64 {
    fn from_book(value: &f64) -> Self {
        *value
    }

    fn into_book(self, checker: &mut Checker<'_>) -> f64 {
        if !self.is_finite() {
            checker.report(|place| LoadProblem::NotFinite { found: self, place });
        }
        self
    }
}

macro_rules! as_it_is {
    ($($kind:ty),+) => {
        $(impl Stored<$kind> for $kind {
            fn from_book(value: &$kind) -> Self {
                value.clone()
            }

            fn into_book(self, _: &mut Checker<'_>) -> $kind {
                self
            }
        })+
    };
}

as_it_is!(bool, u32, u64, String);

macro_rules! ids {
    ($($id:ident),+) => {
        $(impl Stored<$id> for String {
            fn from_book(id: &$id) -> Self {
                id.as_str().to_owned()
            }

            fn into_book(self, checker: &mut Checker<'_>) -> $id {
                $id::new(&self).unwrap_or_else(|error: IdError| {
                    checker.report(|place| LoadProblem::BadId { error, place });
                    $id::from_name("", |_| false)
                })
            }
        })+
    };
}

ids!(
    IngredientId,
    MeasureId,
    VesselId,
    RecipeId,
    TastingId,
    LineId,
    VersionId,
    LanguageId
);

impl<F: Stored<B>, B> Stored<Option<B>> for Option<F> {
    fn from_book(value: &Option<B>) -> Self {
        value.as_ref().map(F::from_book)
    }

    fn into_book(self, checker: &mut Checker<'_>) -> Option<B> {
        self.map(|found| found.into_book(checker))
    }
}

/// Figures by the id of what they are of.
impl<Id: Ord> Stored<BTreeMap<Id, u32>> for Vec<(String, u32)>
where
    String: Stored<Id>,
{
    fn from_book(value: &BTreeMap<Id, u32>) -> Self {
        let entries = value.iter();
        entries
            .map(|(id, figure)| (Stored::from_book(id), *figure))
            .collect()
    }

    fn into_book(self, checker: &mut Checker<'_>) -> BTreeMap<Id, u32> {
        let entries = self.into_iter();
        entries
            .map(|(id, figure)| (id.into_book(checker), figure))
            .collect()
    }
}

impl<F: Stored<B>, B> Stored<Vec<B>> for Vec<F> {
    fn from_book(items: &Vec<B>) -> Self {
        items.iter().map(F::from_book).collect()
    }

    fn into_book(self, checker: &mut Checker<'_>) -> Vec<B> {
        let count = self.len();
        if count > F::MOST {
            checker.report(|place| LoadProblem::TooMany { count, place });
            return Vec::new();
        }
        let numbered = self.into_iter().enumerate();
        numbered
            .map(|(index, item)| {
                let label = item.label().to_owned();
                checker.after(Step::Item { index, label }, |checker| {
                    item.into_book(checker)
                })
            })
            .collect()
    }
}

/// Choices whose usual one is left out.
macro_rules! usual_left_out {
    ($($name:ident),+) => {
        $(impl Stored<book::$name> for Option<super::$name> {
            fn from_book(value: &book::$name) -> Self {
                (*value != book::$name::default()).then(|| Stored::from_book(value))
            }

            fn into_book(self, checker: &mut Checker<'_>) -> book::$name {
                self.map_or_else(Default::default, |found| found.into_book(checker))
            }
        })+
    };
}

usual_left_out!(
    Basis,
    CarbohydrateKind,
    EnergyUnit,
    SaltUnit,
    Filling,
    Stage,
    State,
    TastingOutcome
);

/// A group of fields as it stands in a file. Without more, a field must be there;
///
/// - `= nothing`: it may be absent, and is left out when it says nothing (no text, no items, no statement);
/// - `= usual`: where it is absent, the default of the book holds. It is always written, so that a book does not change
///   when a later program assumes another one.
macro_rules! file_group {
    ($(#[$attribute:meta])* struct $name:ident {
        $($(#[$of_field:meta])* $field:ident: $kind:ty $(= $absent:ident)?,)+
    }) => {
        $(#[$attribute])*
        #[derive(serde::Deserialize, PartialEq, serde::Serialize)]
        #[serde(deny_unknown_fields)]
        pub(crate) struct $name {
            $(
                $(#[$of_field])*
                $(
                    #[doc = concat!("absent: `", stringify!($absent), "`")]
                    #[serde(default, skip_serializing_if = "crate::book_file::format_v1::stored::says_nothing")]
                )?
                pub(crate) $field: $kind,
            )+
        }
    };
}

/// A group ([`file_group`]) or a choice as it stands in a file, and both ways between it and the value of the book that has its
/// name: a field that one of them gains does not compile until the other has it.
///
/// A field is a step on the way to a value; a part of a choice is one with `parts within`, and none with `parts here`.
/// Where the book has another shape for the named fields of a choice, `as` says which: a `tuple`, or a struct.
macro_rules! in_file {
    ($(#[$attribute:meta])* struct $name:ident $(named by $label:ident)? {
        $($(#[$of_field:meta])* $field:ident: $kind:ty $(= $absent:ident)?,)+
        $(; $($more:tt)+)?
    }) => {
        file_group! {
            $(#[$attribute])*
            struct $name {
                $($(#[$of_field])* $field: $kind $(= $absent)?,)+
            }
        }

        impl Stored<crate::book::$name> for $name {
            $($($more)+)?

            fn from_book(value: &crate::book::$name) -> Self {
                let crate::book::$name { $($field),+ } = value;
                Self {
                    $($field: in_file!(@from_book $field $($absent)?)),+
                }
            }

            fn into_book(self, checker: &mut Checker<'_>) -> crate::book::$name {
                let Self { $($field),+ } = self;
                crate::book::$name {
                    $($field: in_file!(@into_book $name checker $field $($absent)?)),+
                }
            }

            $(fn label(&self) -> &str {
                &self.$label
            })?
        }
    };
    ($(#[$attribute:meta])* enum $name:ident with parts $place:ident {
        $($variant:ident
            $(($($part:ident: $part_kind:ty),+))?
            $({ $($field:ident: $kind:ty $(= $absent:ident)?,)+ })?
            $(as $shape:ident)?
        ,)+
        $(; $($more:tt)+)?
    }) => {
        $(#[$attribute])*
        #[derive(serde::Deserialize, PartialEq, serde::Serialize)]
        #[serde(deny_unknown_fields)]
        pub(crate) enum $name {
            $($variant
                $(($($part_kind),+))?
                $({
                    $(
                        $(
                            #[doc = concat!("absent: `", stringify!($absent), "`")]
                            #[serde(default, skip_serializing_if = "crate::book_file::format_v1::stored::says_nothing")]
                        )?
                        $field: $kind,
                    )+
                })?
            ),+
        }

        impl Stored<crate::book::$name> for $name {
            $($($more)+)?

            fn from_book(value: &crate::book::$name) -> Self {
                match value {
                    $(in_file!(@in_book $name $variant $(($($part)+))? $({$($field)+})? $($shape)?) => Self::$variant
                        $(($(Stored::from_book($part)),+))?
                        $({ $($field: in_file!(@from_book $field $($absent)?)),+ })?
                    ),+
                }
            }

            fn into_book(self, checker: &mut Checker<'_>) -> crate::book::$name {
                match self {
                    $(Self::$variant $(($($part),+))? $({ $($field),+ })? => {
                        $($(let $part = checker.$place(stringify!($part), |checker| $part.into_book(checker));)+)?
                        $($(let $field = in_file!(@into_book $name checker $field $($absent)?);)+)?
                        in_file!(@in_book $name $variant $(($($part)+))? $({$($field)+})? $($shape)?)
                    }),+
                }
            }
        }
    };

    (@from_book $field:ident usual) => { Some(Stored::from_book($field)) };
    (@from_book $field:ident $($nothing:ident)?) => { Stored::from_book($field) };

    (@into_book $name:ident $checker:ident $field:ident usual) => {
        match $field {
            Some($field) => in_file!(@into_book $name $checker $field),
            None => crate::book::$name::default().$field,
        }
    };
    (@into_book $name:ident $checker:ident $field:ident $($nothing:ident)?) => {
        $checker.within(stringify!($field), |checker| $field.into_book(checker))
    };

    (@in_book $name:ident $variant:ident $(($($part:ident)+))?) => {
        crate::book::$name::$variant $(($($part),+))?
    };
    (@in_book $name:ident $variant:ident {$($field:ident)+}) => {
        crate::book::$name::$variant { $($field),+ }
    };
    (@in_book $name:ident $variant:ident {$($field:ident)+} tuple) => {
        crate::book::$name::$variant($($field),+)
    };
    (@in_book $name:ident $variant:ident {$($field:ident)+} $of:ident) => {
        crate::book::$name::$variant(crate::book::$of { $($field),+ })
    };
}

pub(super) use {file_group, in_file};
