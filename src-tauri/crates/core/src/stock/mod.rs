//! Stock: what is kept, what a build needs of it, what it costs, and in which order a batch is worked.

pub mod money;
mod need;
mod order;
mod thing;

pub use need::{Found, Shelved, Stands, Wanted, may_be, needs};
pub use order::{CrimpTurn, Setup, ToCrimp, setups};
pub use thing::{Item, StockKind, Thing};
