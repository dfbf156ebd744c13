//! The press over time: how its crimps lie against their targets, and what care it is due.

mod care;
mod chart;

pub use care::{CareDue, CareError, PressCare, due};
pub use chart::{ChartPoint, Charted, Signal, chart};
