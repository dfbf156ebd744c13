//! Helpers that the tests share, and the comparisons with check values that stand in the figures.

pub mod calibration;
pub mod find_figures;
pub mod flow_figures;
pub mod life_figures;
pub mod route_figures;
pub mod surge_figures;
pub mod vectors;
pub mod viscosity_figures;
