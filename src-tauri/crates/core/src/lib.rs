//! What a hydraulic hose was, what may replace it and how it is made.
//!
//! Data flows one way, a module for each arrow:
//! readings -> [`find`] -> candidates -> [`check`] -> findings -> [`make`] -> build sheet ->
//! [`tag`] -> text on a label -> [`record`] -> events of the register.
//! [`care`] says when a hose falls due. [`print`], [`flow`], [`route`], [`crimp`](mod@crimp) and [`life`] answer questions beside that way; [`fleet`] says
//! who made a tag.
//!
//! The crate does no input or output, has no clock and no randomness of its own, and makes no
//! sentences: it gives codes and values, and words are made at the edge.

pub mod bench;
pub mod care;
pub mod catalogue;
pub mod check;
pub mod crimp;
pub mod cutoff;
pub mod cutting;
pub mod find;
pub mod fleet;
pub mod flow;
mod gamma;
pub mod hose_list;
pub mod life;
pub mod make;
pub mod measure;
pub mod press;
pub mod print;
pub mod quantity;
pub mod record;
mod root;
pub mod route;
pub mod sheet;
pub mod spec;
pub mod stock;
pub mod supplier;
pub mod tag;
