//! Swaps: one ingredient replaced by another, and the changes to other lines that bring the taste back.
//!
//! A [`Question`] becomes a search over whole increments of the counter's measures ([`landscape`], with the proof from
//! [`floor`]), the outcome becomes [`Suggestion`]s with the edits to accept them. Nothing is applied here. The same search
//! serves the sugar ladder, another cup, and a hot drink turned iced.

mod adapt;
mod answer;
mod at_level;
mod bring_level;
mod changes;
mod demands;
mod drifted;
mod everywhere;
mod floor;
mod grown;
mod hot;
mod iced;
mod impossible;
mod ladder;
mod landscape;
mod matrix;
mod means;
mod nearby;
mod obstacle;
mod offer;
mod plain;
mod problem;
mod question;
mod reason;
mod resize;
mod short;
mod shortfall;
mod suggestion;
mod supply;
mod unheld;
mod walk;
mod watch;
mod worth;

pub use adapt::{Adaptation, Adapted};
pub use answer::{answer, answer_watched, answer_with};
pub use bring_level::bring_level;
pub use changes::LineMove;
pub use demands::{Demands, LineLimit};
pub use drifted::{Drifted, drifted, drifted_watched, moved_as_charted, moved_by};
pub use everywhere::{
    ReviewItem, all_brought_back, everywhere, everywhere_watched, everywhere_with,
};
pub use hot::hot;
pub use iced::{ice_level_watched, iced, iced_watched, with_ice_level};
pub use ladder::{Ladder, Rung, ladder, ladder_watched};
pub use landscape::{Aim, Bounds, Dimension, Target, TasteLandscape};
pub use matrix::{Matrix, MatrixColumn, MatrixIce, cups_in_use, has_ice, matrix};
pub use means::Means;
pub use nearby::Nearby;
pub use obstacle::{CapKind, Obstacle};
pub use offer::Offer;
pub use plain::{add_line_for, measure_for, plain_swap};
pub use problem::Problem;
pub use question::{Adjustable, Question, adjustable_lines};
pub use reason::{Carrier, ComparedDrink, Forbidden, Impossible, NoLevels, Reason, Unadaptable};
pub use resize::{resize, resize_watched};
pub use shortfall::{Hindrance, Shortfall};
pub use suggestion::{Answer, Suggestion, SuggestionKind};
pub use supply::{
    MOST_COMBINATIONS, MenuDrink, Needed, NoSupplies, NotKnownOf, Supplies, Supply,
    WEEKS_OF_A_YEAR, supplies,
};
pub use unheld::{Bound, Unheld};
pub use walk::{Driver, WalkMove, WalkStep, driver, walk};
pub use watch::Watch;
