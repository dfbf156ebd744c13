//! Helpers that the tests share, and the comparisons with check values that stand in the figures.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    reason = "a test or a bench that can not go on must panic"
)]

pub mod calibration;
pub mod faults;
pub mod find_figures;
pub mod flow_figures;
pub mod life_figures;
pub mod random_layouts;
pub mod route_figures;
pub mod simulated;
pub mod surge_figures;
pub mod van_events;
pub mod vectors;
pub mod viscosity_figures;
