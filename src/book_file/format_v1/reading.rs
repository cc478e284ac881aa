//! A reading of a measure as it stands in a file: its mass or its volume is a field of its own.

use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::super::checker::Checker;
use super::stored::{Stored, says_nothing};
use crate::book::{self, ReadingAmount};

/// The fields of a file.
#[derive(Clone, Deserialize, PartialEq, Serialize)]
#[serde(deny_unknown_fields, rename = "Reading")]
struct Fields {
    #[serde(default, skip_serializing_if = "says_nothing")]
    ingredient: Option<String>,
    uses: u32,
    #[serde(default, skip_serializing_if = "says_nothing")]
    grams: Option<f64>,
    #[serde(default, skip_serializing_if = "says_nothing")]
    millilitres: Option<f64>,
    #[serde(default, skip_serializing_if = "says_nothing")]
    date: Option<String>,
}

#[derive(PartialEq)]
pub(crate) struct Reading {
    fields: Fields,
    amount: ReadingAmount,
}

impl<'de> Deserialize<'de> for Reading {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let fields = Fields::deserialize(deserializer)?;
        let amount = match (fields.grams, fields.millilitres) {
            (Some(grams), None) => ReadingAmount::Grams(grams),
            (None, Some(millilitres)) => ReadingAmount::Millilitres(millilitres),
            (None, None) => return Err(D::Error::missing_field("grams")),
            (Some(_), Some(_)) => return Err(D::Error::duplicate_field("millilitres")),
        };
        Ok(Self { fields, amount })
    }
}

impl Serialize for Reading {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.fields.serialize(serializer)
    }
}

impl Stored<book::Reading> for Reading {
    fn from_book(value: &book::Reading) -> Self {
        let book::Reading {
            ingredient,
            uses,
            amount,
            date,
        } = value;
        let (grams, millilitres) = match *amount {
            ReadingAmount::Grams(grams) => (Some(grams), None),
            ReadingAmount::Millilitres(millilitres) => (None, Some(millilitres)),
        };
        Self {
            fields: Fields {
                ingredient: Stored::from_book(ingredient),
                uses: *uses,
                grams,
                millilitres,
                date: date.clone(),
            },
            amount: *amount,
        }
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::Reading {
        let Self { fields, amount } = self;
        let ingredient = fields.ingredient;
        let ingredient = checker.within("ingredient", |checker| ingredient.into_book(checker));
        let field = match amount {
            ReadingAmount::Grams(_) => "grams",
            ReadingAmount::Millilitres(_) => "millilitres",
        };
        let number = checker.within(field, |checker| amount.number().into_book(checker));
        book::Reading {
            ingredient,
            uses: fields.uses,
            amount: amount.with_number(number),
            date: fields.date,
        }
    }
}
