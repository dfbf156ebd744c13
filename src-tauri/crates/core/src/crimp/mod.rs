//! Readings over the crimped ferrule -> whether the crimp may be ticked, and what to do where not.

mod advice;
mod answer;
mod question;
mod wanted;

pub use advice::CODES;
pub use answer::{CrimpLimits, CrimpPlace, CrimpReading, Crimped, InstrumentFit, crimp};
pub use question::{CrimpError, CrimpQuestion};
pub use wanted::{DIRECTIONS, PLACES, WANTED};
