//! Tracks: which line of events a body belongs to.

use super::{
    About, Body, CircuitId, DeviceId, MachineId, PieceId, PlaceId, PolicyKey, Shape, SiteId, StockUnit,
};
use crate::stock::Item;
use crate::tag::TagCode;
use std::fmt;

/// A line of events about one thing. Every event of a known kind, but a [`Body::Voided`], belongs
/// to exactly one; what the screens read of that thing is computed from its track alone.
#[derive(Debug, Clone, PartialEq)]
pub enum Track {
    /// Name of a device.
    Device(DeviceId),
    /// Public key of a device.
    DeviceKey(DeviceId),
    /// What planners said of a device.
    Member(DeviceId),
    /// A site.
    Site(SiteId),
    /// A machine.
    Machine(MachineId),
    /// Readings of a machine's hour meter.
    Hours(MachineId),
    /// A circuit.
    Circuit(CircuitId),
    /// A place.
    Place(PlaceId),
    /// How a hose was made.
    Made(TagCode),
    /// Where a hose sat.
    Whereabouts(TagCode),
    /// Inspections of a hose.
    Inspections(TagCode),
    /// Surveys of a place.
    Surveys(PlaceId),
    /// Overrides for a hose.
    Overrides(TagCode),
    /// Labels of a hose.
    Labels(TagCode),
    /// A tag taken out of use.
    Withdrawal(TagCode),
    /// The owner's limits for hoses of a scope.
    Policy(PolicyKey),
    /// Counts of one item in every store: what moves from one to another is one event of both.
    Stock {
        /// What.
        item: Item,
        /// Counted in.
        unit: StockUnit,
    },
    /// Bin and low mark of an item in a store.
    StockPlace {
        /// The van or shelf.
        store: String,
        /// What.
        item: Item,
    },
    /// The price of an item.
    Price(Item),
    /// A piece of hose.
    Piece(PieceId),
    /// The length of a piece of hose.
    PieceLength(PieceId),
    /// Photos of a thing.
    Photos(About),
    /// Remarks on a thing.
    Notes(About),
}

impl Body {
    /// The track it belongs to when written by that device.
    pub fn track(&self, device: DeviceId) -> Option<Track> {
        Some(match self {
            Body::DeviceNamed(_) => Track::Device(device),
            Body::DeviceKey(_) => Track::DeviceKey(device),
            Body::DeviceAdmitted(said) => Track::Member(said.device),
            Body::DeviceWithdrawn(said) => Track::Member(said.device),
            Body::SiteNamed(site) => Track::Site(site.site),
            Body::MachineSet(machine) => Track::Machine(machine.machine),
            Body::HoursRead(read) => Track::Hours(read.machine),
            Body::CircuitSet(circuit) => Track::Circuit(circuit.circuit),
            Body::PlaceSet(place) => Track::Place(place.place),
            Body::AssemblyMade(made) => Track::Made(made.code),
            Body::Fitted(fitted) => Track::Whereabouts(fitted.code),
            Body::TakenOff(off) => Track::Whereabouts(off.code),
            Body::Inspected(seen) => Track::Inspections(seen.code),
            Body::Overridden(over) => Track::Overrides(over.code),
            Body::Labelled(labelled) => Track::Labels(labelled.code),
            Body::TagWithdrawn(withdrawn) => Track::Withdrawal(withdrawn.code),
            Body::PolicySet(policy) => Track::Policy(policy.key()),
            Body::Surveyed(seen) => Track::Surveys(seen.place),
            Body::StockChanged(stock) => Track::Stock { item: stock.item.clone(), unit: stock.unit },
            Body::StockMoved(moved) => Track::Stock { item: moved.item.clone(), unit: moved.unit },
            Body::StockPlaced(placed) => {
                Track::StockPlace { store: placed.store.clone(), item: placed.item.clone() }
            }
            Body::PriceSet(price) => Track::Price(price.item.clone()),
            Body::PieceSet(piece) => Track::Piece(piece.piece),
            Body::PieceChanged(changed) => Track::PieceLength(changed.piece),
            Body::PhotoAdded(photo) => Track::Photos(photo.about.clone()),
            Body::Noted(note) => Track::Notes(note.about.clone()),
            Body::Voided(_) | Body::Unknown { .. } => return None,
        })
    }
}

impl Track {
    /// How its events hang together.
    pub fn shape(&self) -> Shape {
        match self {
            Track::Device(_)
            | Track::DeviceKey(_)
            | Track::Site(_)
            | Track::Machine(_)
            | Track::Circuit(_)
            | Track::Place(_)
            | Track::Made(_)
            | Track::Withdrawal(_)
            | Track::Policy(_)
            | Track::StockPlace { .. }
            | Track::Price(_)
            | Track::Piece(_) => Shape::Record,
            Track::Whereabouts(_) => Shape::Line,
            Track::Member(_)
            | Track::Hours(_)
            | Track::Inspections(_)
            | Track::Surveys(_)
            | Track::Overrides(_)
            | Track::Labels(_)
            | Track::Stock { .. }
            | Track::PieceLength(_)
            | Track::Photos(_)
            | Track::Notes(_) => Shape::Facts,
        }
    }

    /// The keys of every track about that hose.
    pub fn of_hose(code: TagCode) -> [String; 8] {
        let about = About::Hose(code);
        [
            Track::Made(code),
            Track::Whereabouts(code),
            Track::Inspections(code),
            Track::Overrides(code),
            Track::Labels(code),
            Track::Withdrawal(code),
            Track::Photos(about.clone()),
            Track::Notes(about),
        ]
        .map(|track| track.to_string())
    }
}

/// The key it is stored under.
impl fmt::Display for Track {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Track::Device(id) => write!(to, "device/{id}"),
            Track::DeviceKey(id) => write!(to, "device-key/{id}"),
            Track::Member(id) => write!(to, "member/{id}"),
            Track::Site(id) => write!(to, "site/{id}"),
            Track::Machine(id) => write!(to, "machine/{id}"),
            Track::Hours(id) => write!(to, "hours/{id}"),
            Track::Circuit(id) => write!(to, "circuit/{id}"),
            Track::Place(id) => write!(to, "place/{id}"),
            Track::Made(code) => write!(to, "made/{code}"),
            Track::Whereabouts(code) => write!(to, "whereabouts/{code}"),
            Track::Inspections(code) => write!(to, "inspections/{code}"),
            Track::Surveys(place) => write!(to, "surveys/{place}"),
            Track::Overrides(code) => write!(to, "overrides/{code}"),
            Track::Labels(code) => write!(to, "labels/{code}"),
            Track::Withdrawal(code) => write!(to, "withdrawal/{code}"),
            Track::Policy(key) => write!(to, "policy/{key}"),
            // Lengths keep a slash in a name from making two stores' items the same key.
            Track::Stock { item, unit } => write!(to, "stock/{}/{}", unit.name(), item.key()),
            Track::StockPlace { store, item } => {
                write!(to, "stock-place/{}:{store}/{}", store.len(), item.key())
            }
            Track::Price(item) => write!(to, "price/{}", item.key()),
            Track::Piece(piece) => write!(to, "piece/{piece}"),
            Track::PieceLength(piece) => write!(to, "piece-length/{piece}"),
            Track::Photos(about) => write!(to, "photos/{about}"),
            Track::Notes(about) => write!(to, "notes/{about}"),
        }
    }
}
