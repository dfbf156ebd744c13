//! A spec under its service -> findings: may it be made.

mod finding;

pub use finding::{Alternative, Case, Checked, Evidence, Finding, Override, Question, Verdict, Weakest};
