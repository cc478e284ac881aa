//! The window: it draws the open book and says what the person wants changed.

pub mod icons;
pub mod theme;
