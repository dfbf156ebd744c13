//! `supplier`: the crimp tables of the user's own suppliers.

mod keep;
mod look;
mod sheet;

pub use keep::{
    SupplierId, SupplierList, SupplierListQuestion, SupplierName, SupplierRemove, SupplierRemoved,
    SupplierRowQuestion, keep, list, remove,
};
pub(super) use look::fill;
pub use look::{EndKnown, LastTime, SupplierLookup, SupplierLookupQuestion, lookup};
pub(in crate::commands) use sheet::cells;
pub use sheet::{SupplierImport, SupplierImported, SupplierMatchQuestion, SupplierMatches, import, matches};
