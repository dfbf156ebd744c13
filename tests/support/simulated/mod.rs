//! Jobs whose truth is known because it was drawn: how far what `find` says of them may be trusted.

pub mod dangers;
pub mod effort;
pub mod features;
pub mod instruments;
pub mod jobs;
pub mod laws;
pub mod random;
pub mod scores;
pub mod strangers;
pub mod trust;
pub mod world;
