//! The events of the register: what is ever written, as plain data and pure functions.
//!
//! An [`Event`] belongs to the numbered series of one device, names the hash of the event before it
//! there, the events it builds on, and holds one [`Body`]. A body belongs to one [`Track`], the line
//! of events about one thing (a machine, a hose's whereabouts); [`arrange`] puts a track's events in
//! order and finds where two of them contradict each other. What the screens read is computed from
//! tracks alone, so it does not depend on the order in which events arrived.

mod arrange;
mod assembly;
mod bench;
mod beside;
mod body;
mod clock;
mod counts;
mod device_key;
mod event;
mod hex;
mod id;
mod machine;
mod member;
mod membership;
mod policy;
mod ports;
mod stock;
mod track;
mod whereabouts;

pub use arrange::{Arranged, Entry, Node, Shape, arrange};
pub use assembly::{Assembly, Labelled, LabelledHow, NotProved, Proof, ProofFailure, TagWithdrawn, TakenIn};
pub use bench::{BenchRecord, CrimpDone, Finished, GivenUp, StepDone, WhyGivenUp};
pub use beside::{About, Graded, Inspected, Noted, Overridden, PhotoAdded, SurveyState, Surveyed};
pub use body::{Body, BodyError, BodyText, DeviceNamed, SCHEMA, Voided};
pub use clock::Hlc;
pub use counts::blind_counts;
pub use device_key::DeviceKeyTold;
pub use event::{Event, EventError, EventRef};
pub use hex::HexError;
pub use id::{CircuitId, DeviceId, Hash, JobId, MachineId, PersonId, PieceId, PlaceId, SiteId};
pub use machine::{Circuit, HoursRead, Machine, Place, Site};
pub use member::{DeviceAdmitted, DeviceWithdrawn, MemberRole};
pub use membership::{Admission, LeftOut, Member, Membership, Standing};
pub use policy::{PolicyKey, PolicyOf, PolicySet, Scope, ScopeError};
pub use ports::{OilLine, Ports};
pub use stock::{Piece, PieceChanged, PriceSet, StockChanged, StockMoved, StockPlaced, StockUnit, StockWhy};
pub use track::Track;
pub use whereabouts::{Fitted, Stint, TakenOff, stints};
