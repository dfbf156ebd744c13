//! A checked spec -> its build sheet: parts, cut length, turn, steps with their cautions, proof.

mod error;
mod plan;
mod settings;
mod sheet;
mod tighten;

pub use error::MakeError;
pub use plan::{SheetStep, StepCaution, codes, shared_steps};
pub use settings::{EndSettings, Filled, MISSING, Missing, Skive};
pub use sheet::{BuildSheet, Cleanliness, Cut, Figure, Part, Proof, Turn, make};
pub use tighten::{Tighten, TorqueValue};
