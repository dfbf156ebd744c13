//! What is kept on a van or shelf, by what it is and not by an id: the same thing that two devices load adds up.

use crate::quantity::{Bar, Dn};
use crate::spec::{Gender, HoseRef, Side};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Something that is kept. Names are the tables' own where the tables have it, else the supplier's.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Thing {
    /// Hose; it is kept as pieces, each with its own length.
    Hose {
        /// The standard, such as `EN 853`.
        standard: String,
        /// The type within it, such as `2SN`.
        #[serde(rename = "type")]
        kind: String,
        /// Nominal diameter.
        dn: Dn,
    },
    /// A hose end.
    End {
        /// Family by the tables' name.
        family: String,
        /// Size within the family.
        size: String,
        /// Which half; none where nobody wrote it down, and for flanges.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gender: Option<Gender>,
        /// `straight`, `elbow90` and so on; none where nobody wrote it down.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        form: Option<String>,
        /// Nominal diameter of the hose it goes on.
        dn: Dn,
        /// Series of the fitting, by the supplier's name.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        series: Option<String>,
    },
    /// A ferrule.
    Ferrule {
        /// The supplier's name for it.
        name: String,
        /// Nominal diameter of the hose it goes on.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        dn: Option<Dn>,
    },
    /// A part between hose end and machine.
    Adapter {
        /// What it is called.
        name: String,
        /// The side that the hose end screws on.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        hose_side: Option<Side>,
        /// The side that the machine sees.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        machine_side: Option<Side>,
        /// The supplier's rating; unknown stops.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        rating_bar: Option<Bar>,
    },
    /// A protecting sleeve.
    Sleeve {
        /// The supplier's name for it.
        name: String,
        /// Nominal diameter of the hose it goes over.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        dn: Option<Dn>,
    },
    /// A seal.
    Seal {
        /// The supplier's name for it.
        name: String,
    },
}

/// A thing that is kept, or anything else by what people call it, such as `assembly oil 1 l`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(untagged)]
pub enum Item {
    /// A thing of the trade.
    Thing(Thing),
    /// Anything else.
    Named(String),
}

/// Kinds of things, for lists.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum StockKind {
    /// Hose.
    Hose,
    /// Hose ends.
    End,
    /// Ferrules.
    Ferrule,
    /// Adapters.
    Adapter,
    /// Sleeves.
    Sleeve,
    /// Seals.
    Seal,
    /// Anything else.
    Other,
}

impl StockKind {
    /// The name it is written by.
    pub const fn name(self) -> &'static str {
        match self {
            StockKind::Hose => "hose",
            StockKind::End => "end",
            StockKind::Ferrule => "ferrule",
            StockKind::Adapter => "adapter",
            StockKind::Sleeve => "sleeve",
            StockKind::Seal => "seal",
            StockKind::Other => "other",
        }
    }
}

impl Thing {
    /// A hose by its names.
    pub fn of_hose(hose: &HoseRef) -> Self {
        Thing::Hose { standard: hose.standard.clone(), kind: hose.kind.clone(), dn: hose.dn }
    }

    /// What it is called in the trade, shortly: names and sizes without half and form.
    pub fn name(&self) -> String {
        let named =
            |name: &str, dn: &Option<Dn>| dn.map_or_else(|| name.to_owned(), |dn| format!("{name} DN{dn}"));
        match self {
            Thing::Hose { standard, kind, dn } => format!("{standard} {kind} DN{dn}"),
            Thing::End { family, size, dn, .. } => format!("{family} {size} DN{dn}"),
            Thing::Ferrule { name, dn } | Thing::Sleeve { name, dn } => named(name, dn),
            Thing::Adapter { name, .. } | Thing::Seal { name } => name.clone(),
        }
    }

    /// Which kind.
    pub const fn kind(&self) -> StockKind {
        match self {
            Thing::Hose { .. } => StockKind::Hose,
            Thing::End { .. } => StockKind::End,
            Thing::Ferrule { .. } => StockKind::Ferrule,
            Thing::Adapter { .. } => StockKind::Adapter,
            Thing::Sleeve { .. } => StockKind::Sleeve,
            Thing::Seal { .. } => StockKind::Seal,
        }
    }
}

impl Item {
    /// Which kind.
    pub const fn kind(&self) -> StockKind {
        match self {
            Item::Thing(thing) => thing.kind(),
            Item::Named(_) => StockKind::Other,
        }
    }

    /// What it is called in the trade, shortly.
    pub fn name(&self) -> String {
        match self {
            Item::Thing(thing) => thing.name(),
            Item::Named(text) => text.clone(),
        }
    }

    /// The text that names it wherever it is counted: its JSON, the same for the same thing on every device.
    pub fn key(&self) -> String {
        // Plain data with text keys is always written.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Whether it names anything.
    pub fn is_blank(&self) -> bool {
        let texts: &[&str] = match self {
            Item::Named(text) => &[text.as_str()],
            Item::Thing(Thing::Hose { standard, kind, .. }) => &[standard.as_str(), kind.as_str()],
            Item::Thing(Thing::End { family, size, .. }) => &[family.as_str(), size.as_str()],
            Item::Thing(
                Thing::Ferrule { name, .. }
                | Thing::Adapter { name, .. }
                | Thing::Sleeve { name, .. }
                | Thing::Seal { name },
            ) => &[name.as_str()],
        };
        texts.iter().any(|text| text.trim().is_empty())
    }
}

impl From<Thing> for Item {
    fn from(thing: Thing) -> Self {
        Item::Thing(thing)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_item_reads_back_as_itself_and_a_text_stays_a_text() {
        let end = Thing::End {
            family: "JIC 37 flare".into(),
            size: "-10".into(),
            gender: Some(Gender::Female),
            form: None,
            dn: "16".parse().expect("a size"),
            series: None,
        };
        for item in [Item::from(end), Item::Named("assembly oil 1 l".into()), Item::Named("{}".into())] {
            let json = serde_json::to_string(&item).expect("writes");
            assert_eq!(serde_json::from_str::<Item>(&json).expect("reads"), item);
        }
    }
}
