//! What was done at the bench -> whether the hose may be tagged, and what is open.

mod finished;
mod judge;
mod proof;
mod question;

pub use finished::{CODES as FINISHED, FinishedCheck};
pub use judge::{BenchJudged, WHY_NOT, judge};
pub use proof::{CODES as PROOF, ProofJudged, ProofState};
pub use question::{Bench, BenchError, CrimpRead, Proving};
