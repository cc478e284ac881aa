//! Commands without a display.
