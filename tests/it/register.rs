//! The register: what is recorded stays, comes back, and is the same on every device.

mod fleet;
mod histories;
mod kept;
mod members;
mod merging;
mod older;
mod people;
mod place;
mod plans;
mod questions;
mod refusals;
mod whole;
