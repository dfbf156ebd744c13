//! How long hoses last: Weibull and Kaplan-Meier from times with some still in service, some found failed since nobody
//! knows when and some watched since they were old.
//!
//! A history is a list of [`Record`]s, which [`read_csv`] reads from a spreadsheet's table. [`life()`] answers from it how
//! long such hoses last, and how sure that is; [`Counts`] how many will fail, [`least_cost()`] when to replace them, and
//! [`excesses`] where more fail than elsewhere.

mod answer;
mod bounds;
mod excess;
mod expected;
mod fit;
mod history;
mod kaplan_meier;
mod least_cost;
mod likelihood;
mod record;
mod to_tell;
mod turnbull;
mod weibull;

pub use answer::{FittedPoint, Life, SurvivalBy, Unfitted, Wear, life, life_and_fit};
pub use excess::{Excess, excesses};
pub use expected::{Counts, Expected};
pub use fit::{Covariance, Fit, fit};
pub use history::{HistoryError, read_csv};
pub use kaplan_meier::{kaplan_meier, kaplan_meier_ci95};
pub use least_cost::{LeastCost, least_cost};
pub use record::{Record, RecordError};
pub use to_tell::ToTell;
pub use turnbull::turnbull;
pub use weibull::Weibull;
