//! A stated temperature as it stands in a file: a number, or the two ends of a range in brackets.

use std::fmt;

use serde::de::{self, SeqAccess, Visitor};
use serde::ser::SerializeTuple as _;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::super::checker::Checker;
use super::stored::Stored;
use crate::book;

/// What a reader says that it wanted in its place.
pub(crate) const TEMPERATURE: &str = "temperature";

/// Both ends, in the order of the file; equal for one figure.
#[derive(Clone, Copy, PartialEq)]
pub(crate) struct Temperature([f64; 2]);

impl Stored<book::Temperature> for Temperature {
    fn from_book(value: &book::Temperature) -> Self {
        Self(value.ends())
    }

    fn into_book(self, checker: &mut Checker<'_>) -> book::Temperature {
        let [from, to] = self.0.map(|end| end.into_book(checker));
        book::Temperature::between(from, to)
    }
}

impl Serialize for Temperature {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let [from, to] = self.0;
        // What is no number at all is no range either.
        if from >= to || from.is_nan() {
            return serializer.serialize_f64(from);
        }
        let mut ends = serializer.serialize_tuple(2)?;
        ends.serialize_element(&from)?;
        ends.serialize_element(&to)?;
        ends.end()
    }
}

impl<'de> Deserialize<'de> for Temperature {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Ends;

        impl<'de> Visitor<'de> for Ends {
            type Value = Temperature;

            fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
                formatter.write_str(TEMPERATURE)
            }

            fn visit_f64<E: de::Error>(self, celsius: f64) -> Result<Temperature, E> {
                Ok(Temperature([celsius; 2]))
            }

            #[expect(clippy::cast_precision_loss, reason = "no temperature is as large")]
            fn visit_i64<E: de::Error>(self, celsius: i64) -> Result<Temperature, E> {
                Ok(Temperature([celsius as f64; 2]))
            }

            #[expect(clippy::cast_precision_loss, reason = "no temperature is as large")]
            fn visit_u64<E: de::Error>(self, celsius: u64) -> Result<Temperature, E> {
                Ok(Temperature([celsius as f64; 2]))
            }

            fn visit_seq<A: SeqAccess<'de>>(self, mut ends: A) -> Result<Temperature, A::Error> {
                let mut next = |place| {
                    let end = ends.next_element::<f64>()?;
                    end.ok_or_else(|| de::Error::invalid_length(place, &Ends))
                };
                Ok(Temperature([next(0)?, next(1)?]))
            }
        }

        deserializer.deserialize_any(Ends)
    }
}
