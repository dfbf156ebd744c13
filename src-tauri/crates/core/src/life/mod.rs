//! How long hoses last: Weibull and Kaplan-Meier from times with some still in service.
//!
//! A history is a list of [`Record`]s, which [`read_csv`] reads from a spreadsheet's table. [`life()`]
//! answers from it how long such hoses last, and how sure that is.

mod answer;
mod bounds;
mod fit;
mod history;
mod kaplan_meier;
mod likelihood;
mod record;
mod weibull;

pub use answer::{Life, Unfitted, life};
pub use fit::{Covariance, Fit, fit};
pub use history::{HistoryError, read_csv};
pub use kaplan_meier::{kaplan_meier, kaplan_meier_ci95};
pub use record::{Record, RecordError};
pub use weibull::Weibull;
