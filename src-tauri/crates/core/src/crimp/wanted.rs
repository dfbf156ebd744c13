//! How a crimp is read.

/// Directions over the flats at one place along the ferrule (common practice).
pub const DIRECTIONS: usize = 4;

/// Places along the ferrule: behind its mouth, in its middle, before its end (common practice).
pub const PLACES: usize = 3;

/// All readings of one crimp.
pub const WANTED: usize = DIRECTIONS * PLACES;
