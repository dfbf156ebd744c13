//! May it be made: limits, what is left out, doubt, prudence, and what holds of any question.
#![allow(clippy::expect_used, reason = "what a test can not do without fails it")]

mod alternatives;
mod cases;
mod cures;
mod editions;
mod ends;
mod fluid;
mod length;
mod limits;
mod line;
mod missing;
mod original;
mod place;
mod pressure;
mod properties;
mod prudence;
mod tables;
mod whole;
mod words;
mod yours;
