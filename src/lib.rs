//! Evensip: the balance of a tea bar's drinks, and what brings it back after a swap.
//!
//! Units: grams, millilitres, degrees Celsius, kilojoules, minutes; concentrations in g per 100 ml at 20 °C.
//!
//! | module | what it is | may import |
//! |---|---|---|
//! | [`quantity`] | numbers with units, typed and shown | nothing of this crate |
//! | [`optimiser`] | search over whole numbers | nothing of this crate |
//! | [`book`] | the document | `quantity` |
//! | [`edit`] | the only way a book changes, and its history | `book`, `quantity` |
//! | [`balance`] | the pure engine | `book`, `quantity` |
//! | [`swap`] | question → search → edits | `balance`, `optimiser`, `edit`, `book`, `quantity` |
//! | [`tasting`] | blind tests, serving orders, refractometer readings, and what they show | `balance`, `book`, `quantity` |
//! | [`cups`] | a hundred cups as the counter makes them, and why one is off | `tasting`, `balance`, `book`, `quantity` |
//! | [`record`] | what was read beside what was foretold, and what that says of the doubts | `cups`, `tasting`, `balance`, `book`, `quantity` |
//! | [`book_file`] | reads and writes books | `book`, `quantity` |
//! | [`exchange`] | what comes in, as edits for review | `swap`, `balance`, `edit`, `book`, `quantity` |
//! | [`say`] | the only place with sentences | all above but `optimiser` |
//! | [`cards`] | what is printed and exported | `say`, `swap`, `tasting`, `balance`, `book`, `quantity` |
//! | [`workbench`] | the open book with its derived values | all above |
//! | [`command_line`] | commands without a display | all above |
//! | [`ui`] | draws, and returns actions | all above but `book_file` and `command_line` |
//!
//! A test reads the sources and enforces the table.

#![cfg_attr(test, allow(clippy::unwrap_used, reason = "a test may panic"))]

pub mod balance;
pub mod book;
pub mod book_file;
pub mod cards;
pub mod command_line;
pub mod cups;
pub mod edit;
pub mod exchange;
pub mod optimiser;
pub mod quantity;
pub mod record;
pub mod say;
pub mod swap;
pub mod tasting;
pub mod ui;
pub mod workbench;
