//! (filled by its capability)
