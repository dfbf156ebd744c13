//! Readings -> what it was: a ranked list of hose types and end families with honest probabilities.

mod found;
mod readings;

pub use found::{
    EndCandidate, EndFound, EndName, Found, HoseCandidate, HoseName, LookalikeFound, NextReading, Part,
    Settled, UnknownHose,
};
pub use readings::{EndReadings, HoseReadings, Origin, Readings};
