//! The layout of a book file: one value a line, small groups on one line, everything in the order of its type.

use std::fmt::{self, Write as _};

use serde::ser::{self, Impossible, Serialize, Serializer};

use crate::quantity::is_hidden;

/// The groups whose fields have a line each. The fields of any other group share one line.
const TALL: [&str; 16] = [
    "Add",
    "Approval",
    "Composition",
    "CoolingRun",
    "EarlierState",
    "EarlierStates",
    "HouseMade",
    "Ingredient",
    "Instruction",
    "Line",
    "Measure",
    "Recipe",
    "Resolved",
    "Settings",
    "Version",
    "Vessel",
];

/// Text that grows line by line, indented by the brackets that are open.
#[derive(Default)]
pub(super) struct Layout {
    text: String,
    depth: usize,
    on_one_line: bool,
    /// Numbers that are not finite, and values of a kind that a book does not have.
    unreadable: usize,
}

impl Layout {
    /// A layout inside of so many brackets, for a part of a book.
    pub(super) fn at_depth(depth: usize) -> Self {
        Self {
            depth,
            ..Self::default()
        }
    }

    /// The text, and how much of it could not be read back.
    pub(super) fn finish(self) -> (String, usize) {
        (self.text, self.unreadable)
    }

    /// The whole book, a field a line.
    pub(super) fn book(&mut self, fields: impl FnOnce(&mut Self)) {
        self.between('(', ')', fields);
        self.text.push('\n');
    }

    /// A field with a list, an item a line.
    pub(super) fn list(&mut self, name: &str, items: impl FnOnce(&mut Self)) {
        self.indent();
        self.name(name);
        self.between('[', ']', items);
        self.text.push_str(",\n");
    }

    /// A field, on lines of its own.
    pub(super) fn field(&mut self, name: &str, value: &impl Serialize) {
        self.lines(Some(name), value)
            .unwrap_or_else(|fmt::Error| self.unreadable += 1);
    }

    /// An item of a list, on lines of its own.
    pub(super) fn item(&mut self, value: &impl Serialize) {
        self.lines(None, value)
            .unwrap_or_else(|fmt::Error| self.unreadable += 1);
    }

    fn lines(&mut self, name: Option<&str>, value: &(impl Serialize + ?Sized)) -> fmt::Result {
        self.indent();
        if let Some(name) = name {
            self.name(name);
        }
        value.serialize(&mut *self)?;
        self.text.push_str(",\n");
        Ok(())
    }

    fn between(&mut self, opening: char, closing: char, content: impl FnOnce(&mut Self)) {
        self.text.push(opening);
        self.text.push('\n');
        self.depth += 1;
        content(self);
        self.depth -= 1;
        self.indent();
        self.text.push(closing);
    }

    fn indent(&mut self) {
        for _ in 0..self.depth {
            self.text.push_str("    ");
        }
    }

    fn name(&mut self, name: &str) {
        self.text.push_str(name);
        self.text.push_str(": ");
    }

    /// A text in quotes. Only what would end it or could not be seen is escaped, so that names of any script stay readable.
    fn quoted(&mut self, text: &str) -> fmt::Result {
        self.text.push('"');
        for character in text.chars() {
            match character {
                '"' | '\\' => self.text.extend(['\\', character]),
                '\n' => self.text.push_str("\\n"),
                '\r' => self.text.push_str("\\r"),
                '\t' => self.text.push_str("\\t"),
                character if is_hidden(character) => {
                    write!(self.text, "\\u{{{:x}}}", u32::from(character))?;
                }
                character => self.text.push(character),
            }
        }
        self.text.push('"');
        Ok(())
    }

    fn open(&mut self, opening: char, closing: char, on_one_line: bool) -> Brackets<'_> {
        let is_within_line = self.on_one_line;
        self.on_one_line |= on_one_line;
        self.text.push(opening);
        if !self.on_one_line {
            self.text.push('\n');
            self.depth += 1;
        }
        Brackets {
            layout: self,
            closing,
            is_within_line,
            is_empty: true,
        }
    }

    fn open_group(&mut self, name: &str) -> Brackets<'_> {
        self.open('(', ')', !TALL.contains(&name))
    }
}

/// Brackets that are open, and what is put between them.
pub(super) struct Brackets<'layout> {
    layout: &'layout mut Layout,
    closing: char,
    /// Whether what they stand in is on one line.
    is_within_line: bool,
    is_empty: bool,
}

impl Brackets<'_> {
    fn put(&mut self, name: Option<&str>, value: &(impl Serialize + ?Sized)) -> fmt::Result {
        let layout = &mut *self.layout;
        if !layout.on_one_line {
            return layout.lines(name, value);
        }
        if !self.is_empty {
            layout.text.push_str(", ");
        }
        self.is_empty = false;
        if let Some(name) = name {
            layout.name(name);
        }
        value.serialize(layout)
    }

    fn close(self) {
        let layout = self.layout;
        if !layout.on_one_line {
            layout.depth -= 1;
            layout.indent();
        }
        layout.text.push(self.closing);
        layout.on_one_line = self.is_within_line;
    }
}

/// What is put between brackets by its place, and by its name.
macro_rules! between_brackets {
    ($($what:ident::$put:ident($($name:ident)?);)+) => {
        $(impl ser::$what for Brackets<'_> {
            type Ok = ();
            type Error = fmt::Error;

            fn $put<T: Serialize + ?Sized>(&mut self, $($name: &'static str,)? value: &T) -> fmt::Result {
                self.put(None$(.or(Some($name)))?, value)
            }

            fn end(self) -> fmt::Result {
                self.close();
                Ok(())
            }
        })+
    };
}

between_brackets! {
    SerializeSeq::serialize_element();
    SerializeTuple::serialize_element();
    SerializeTupleVariant::serialize_field();
    SerializeStruct::serialize_field(name);
    SerializeStructVariant::serialize_field(name);
}

macro_rules! whole_numbers {
    ($($serialize:ident($kind:ty);)+) => {
        $(fn $serialize(self, value: $kind) -> fmt::Result {
            write!(self.text, "{value}")
        })+
    };
}

/// A kind of value that no book has is an error, and counts as what can't be read back.
impl<'layout> Serializer for &'layout mut Layout {
    type Ok = ();
    type Error = fmt::Error;
    type SerializeSeq = Brackets<'layout>;
    type SerializeTuple = Brackets<'layout>;
    type SerializeTupleStruct = Impossible<(), fmt::Error>;
    type SerializeTupleVariant = Brackets<'layout>;
    type SerializeMap = Impossible<(), fmt::Error>;
    type SerializeStruct = Brackets<'layout>;
    type SerializeStructVariant = Brackets<'layout>;

    whole_numbers! {
        serialize_i8(i8);
        serialize_i16(i16);
        serialize_i32(i32);
        serialize_i64(i64);
        serialize_u8(u8);
        serialize_u16(u16);
        serialize_u32(u32);
        serialize_u64(u64);
    }

    fn serialize_bool(self, value: bool) -> fmt::Result {
        write!(self.text, "{value}")
    }

    fn serialize_f32(self, value: f32) -> fmt::Result {
        self.serialize_f64(value.into())
    }

    /// The fewest digits that are read back as the same number.
    fn serialize_f64(self, value: f64) -> fmt::Result {
        if !value.is_finite() {
            self.unreadable += 1;
        }
        write!(self.text, "{value:?}")
    }

    fn serialize_char(self, _: char) -> fmt::Result {
        Err(fmt::Error)
    }

    fn serialize_str(self, value: &str) -> fmt::Result {
        self.quoted(value)
    }

    fn serialize_bytes(self, _: &[u8]) -> fmt::Result {
        Err(fmt::Error)
    }

    fn serialize_none(self) -> fmt::Result {
        self.text.push_str("None");
        Ok(())
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> fmt::Result {
        value.serialize(self)
    }

    fn serialize_unit(self) -> fmt::Result {
        Err(fmt::Error)
    }

    fn serialize_unit_struct(self, _: &'static str) -> fmt::Result {
        Err(fmt::Error)
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> fmt::Result {
        self.text.push_str(variant);
        Ok(())
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> fmt::Result {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> fmt::Result {
        self.text.push_str(variant);
        let mut brackets = self.open('(', ')', true);
        brackets.put(None, value)?;
        brackets.close();
        Ok(())
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Brackets<'layout>, fmt::Error> {
        Ok(self.open('[', ']', false))
    }

    fn serialize_tuple(self, _: usize) -> Result<Brackets<'layout>, fmt::Error> {
        Ok(self.open('(', ')', true))
    }

    fn serialize_tuple_struct(
        self,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeTupleStruct, fmt::Error> {
        Err(fmt::Error)
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Brackets<'layout>, fmt::Error> {
        self.text.push_str(variant);
        Ok(self.open('(', ')', true))
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Self::SerializeMap, fmt::Error> {
        Err(fmt::Error)
    }

    fn serialize_struct(
        self,
        name: &'static str,
        _: usize,
    ) -> Result<Brackets<'layout>, fmt::Error> {
        Ok(self.open_group(name))
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Brackets<'layout>, fmt::Error> {
        self.text.push_str(variant);
        Ok(self.open_group(variant))
    }
}

#[cfg(test)]
mod tests {
    use super::Layout;

    fn quoted(text: &str) -> String {
        let mut layout = Layout::default();
        layout.quoted(text).unwrap();
        layout.finish().0
    }

    #[test]
    fn names_of_any_script_stay_readable_and_hidden_characters_become_visible() {
        assert_eq!(quoted("黑糖珍珠, ชานม, Bob's"), "\"黑糖珍珠, ชานม, Bob's\"");
        assert_eq!(
            quoted("a\"b\\c\nd\u{202e}\u{0}"),
            "\"a\\\"b\\\\c\\nd\\u{202e}\\u{0}\""
        );
    }

    #[test]
    fn what_a_book_does_not_have_is_counted_and_not_lost_unseen() {
        let mut layout = Layout::default();
        layout.item(&('a', 1));
        layout.item(&[f64::NAN, 1.0]);
        assert_eq!(layout.finish().1, 2);
    }
}
