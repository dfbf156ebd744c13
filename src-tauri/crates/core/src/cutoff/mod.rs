//! Cut-offs: measured on a new end, and learned from what came out of the last cuts.

mod learned;
mod measured;

pub use learned::{CutoffLearned, CutoffSum, CutoffsLearned, HowLearned, Lengths, learned};
pub use measured::{CODES, CutoffError, CutoffMeasured, CutoffReadings, STEPS, measured};
