//! What is said of a drink: its figures with their doubt, the axes of taste, the share of each line, cautions, and what
//! becomes of it in a cup.

pub(super) mod axes;
pub(super) mod balance;
pub(super) mod caution;
pub(super) mod every_version;
pub(super) mod held;
pub(super) mod last_sip;
pub(super) mod margin;
pub(super) mod milestones;
pub(super) mod narrowing;
pub(super) mod nutrition;
mod parts;
pub(super) mod share;
pub(super) mod standing;
pub(super) mod taste_difference;
pub(super) mod unstated;
pub(super) mod yardsticks;
