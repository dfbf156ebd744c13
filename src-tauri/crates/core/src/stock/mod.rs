//! Stock: what is kept, what a build needs of it, what it costs, and in which order a batch is worked.

mod fit;
pub mod money;
mod need;
mod order;
mod thing;

pub use fit::may_be;
pub use need::{Found, Shelved, Stands, Wanted, needs};
pub use order::{CrimpTurn, Setup, ToCrimp, setups};
pub use thing::{Item, StockKind, Thing};
