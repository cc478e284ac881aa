//! The open book: what is done to it, what is derived from it, and where it is kept. Knows no screen.

mod derived;
mod open_book;
mod picker;

pub use derived::{BookStamp, Derived, Standard};
pub use open_book::{Action, Command, Home, Intent, Message, Sample, Shown, Workbench};
pub use picker::{FilePicker, NoPicker, PickRequest, SystemPicker};
