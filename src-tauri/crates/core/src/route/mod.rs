//! Where the ports are -> how tight the hose bends.
//!
//! The hose is an inextensible rod that bends equally easily all ways, held by its ports
//! along the straight length behind each end, and lies in the shape of least bending energy that has the given
//! length. From outside in: [`route`] reads the [`Layout`] into the machine's travel (`travel`), finds how
//! the hose lies in each pose over its change of length (`lie`), or first seeks the shortest length that will
//! do (`length`), adds the twist (`twist`) and holds all against the limits (`answer`).
//!
//! A [`Span`] is one hose between two clamps (`rod`): curves of the right length (`starts`) are followed
//! downhill (`newton`) as chains of tangents (`chain`) on a `mesh`, and the least is refined
//! and extrapolated into a [`Shape`], which knows its radius, course, residual and how it carries a mark.
//!
//! [`field`] asks the same in the words of a technician, who has no vectors.
//!
//! It is an estimate: weight, set, the stiffness that pressure adds and clamps are not in it.

mod answer;
mod chain;
mod error;
pub mod field;
mod layout;
mod length;
mod lie;
mod mesh;
mod newton;
mod rod;
mod routed;
mod shape;
mod starts;
mod travel;
mod twist;
mod vector;

pub(crate) use answer::MARGIN;
pub use answer::route;
pub use error::RouteError;
pub use layout::{Layout, Port, Pose};
pub use rod::{Settled, Shapeless, Span};
pub use routed::{Bend, Reason, Routed};
pub use shape::{Rod, RodNode, Shape, Tightest};
pub use vector::Vector;
