//! `stock`: what is on the vans and shelves, what is done with it, and what a build needs of it.

mod build;
mod change;
mod cutting;
mod deed;
mod doing;
mod instead;
mod kept;
mod line;
mod list;
mod names;
mod need;
mod price;
mod rows;
mod said;
mod shelf;
mod take;
mod used;

pub use change::{HoseLoaded, StockChange, StockChangedAnswer, StockDo, change};
pub use cutting::CutFrom;
pub use instead::{AdapterWay, HoseSubstitute};
pub use line::NeedLine;
pub use list::{HoseStock, ItemStock, PieceStock, StockList, StockQuestion, StoreSum, list};
pub use names::amount;
pub use need::{Extra, Need, NeedQuestion, need};
pub use price::Money;
pub use said::{Said, SaidCode};
pub use shelf::Elsewhere;
pub use take::{CountedItem, CountedPiece, NotCounted, StockTake, StockTaken, TakeRow, take};
pub use used::{BenchUndo, BenchUndone, GivenBack, Used, UsedItem, UsedPiece, undo};

pub(super) use build::Build;
pub(super) use cutting::Cutting;
pub(super) use line::line;
pub(super) use names::item_name;
pub(super) use price::money;
pub(super) use shelf::Shelf;
pub(super) use used::{Taken, used_bodies};
