//! What the tastings of a book say of its ingredients, and what taking that over does to its drinks.
//!
//! Each tasting that the shop lets count is handed to [`super::evidence()`] with the cups as the engine works them out, in the book as
//! it was when they were tasted. What was taken over before is left out of them: all tastings are weighed anew against the packs.

mod cups;
mod effect;
mod weighing;

pub use effect::{DrinkEffect, effects};
pub use weighing::{
    Factor, ForetoldTasting, Learned, Proposal, SetAside, WeighedTasting, foretold_tastings,
    learned,
};
