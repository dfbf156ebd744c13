//! Helpers that the tests share.

// A helper that meets what can not be has failed its test, and says so by panicking.
#![allow(clippy::expect_used)]

pub mod calibration;
pub mod find_figures;
