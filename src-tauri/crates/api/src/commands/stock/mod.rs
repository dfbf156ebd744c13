//! `stock`: what is on the vans and shelves, what is done with it, and what a build needs of it.

mod change;
mod list;
mod need;
mod shelf;
mod take;
mod used;

pub use change::{StockChange, StockChangedAnswer, StockDo, change};
pub use list::{HoseStock, ItemStock, PieceStock, StockList, StockQuestion, StoreSum, list};
pub use need::{AdapterWay, CutFrom, Extra, HoseSubstitute, Need, NeedQuestion, need};
pub use shelf::{Elsewhere, Money, NeedLine, SAID, Said, amount};
pub use take::{CountedItem, CountedPiece, NotCounted, StockTake, StockTaken, TakeRow, take};
pub use used::{BenchUndo, BenchUndone, GivenBack, Used, UsedItem, UsedPiece, undo};

pub(super) use need::{Build, Cutting};
pub(super) use shelf::{Shelf, item_name, line, money};
pub(super) use used::{Taken, used_bodies};
