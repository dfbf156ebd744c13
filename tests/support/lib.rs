//! Helpers that the tests share.

pub mod route_figures;
