//! What a column of a supplier's table can be.

use crate::sheet::{self, Holds, Unit};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What a column of a supplier's table is.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
#[ts(rename = "SupplierColumn")]
pub enum Column {
    /// Whose figures they are.
    Supplier,
    /// The hose's standard.
    Standard,
    /// Its type.
    Type,
    /// Its size: nominal diameter, dash or inches.
    Dn,
    /// Family of the end.
    Family,
    /// Size of the end.
    Size,
    /// Series of the fitting, by the supplier's name.
    Series,
    /// The ferrule, by the supplier's name.
    Ferrule,
    /// How far the hose goes on.
    Insertion,
    /// How much of the cover is taken off.
    Skive,
    /// How much of the tube is taken off.
    SkiveInner,
    /// What the hose is pushed on with.
    Lubricant,
    /// The die set.
    DieSet,
    /// Diameter over the crimped ferrule.
    CrimpDiameter,
    /// How far either way it may be off.
    CrimpTolerance,
    /// From sealing point to hose stop.
    Cutoff,
}

impl sheet::Column for Column {
    const ALL: &'static [Self] = &[
        Column::Supplier,
        Column::Standard,
        Column::Type,
        Column::Dn,
        Column::Family,
        Column::Size,
        Column::Series,
        Column::Ferrule,
        Column::Insertion,
        Column::Skive,
        Column::SkiveInner,
        Column::Lubricant,
        Column::DieSet,
        Column::CrimpDiameter,
        Column::CrimpTolerance,
        Column::Cutoff,
    ];

    const BARE_LENGTH: Option<Unit> = Some(Unit::Mm);

    fn missing(present: &[Self]) -> Vec<Self> {
        let needed = [Column::Supplier, Column::Standard, Column::Type, Column::Dn];
        needed.into_iter().filter(|column| !present.contains(column)).collect()
    }

    fn name(self) -> &'static str {
        match self {
            Column::Supplier => "supplier",
            Column::Standard => "standard",
            Column::Type => "type",
            Column::Dn => "dn",
            Column::Family => "family",
            Column::Size => "size",
            Column::Series => "series",
            Column::Ferrule => "ferrule",
            Column::Insertion => "insertion",
            Column::Skive => "skive",
            Column::SkiveInner => "skive-inner",
            Column::Lubricant => "lubricant",
            Column::DieSet => "die-set",
            Column::CrimpDiameter => "crimp-diameter",
            Column::CrimpTolerance => "crimp-tolerance",
            Column::Cutoff => "cutoff",
        }
    }

    fn words(self) -> &'static [&'static str] {
        match self {
            Column::Supplier => &["supplier", "vendor", "lieferant", "proveedor"],
            Column::Standard => &["standard", "norm", "norma"],
            Column::Type => {
                &["type", "hose type", "hose", "typ", "schlauchtyp", "schlauch", "tipo", "manguera"]
            }
            Column::Dn => &[
                "dn",
                "hose size",
                "hose dn",
                "hose dash",
                "dash",
                "nominal size",
                "nennweite",
                "nw",
                "diametro nominal",
                "diámetro nominal",
            ],
            Column::Family => &[
                "family",
                "end",
                "end family",
                "connection",
                "anschluss",
                "anschlussform",
                "conexión",
                "conexion",
            ],
            Column::Size => &["end size", "thread", "thread size", "fitting size", "gewinde", "rosca"],
            Column::Series => {
                &["series", "fitting series", "serie", "baureihe", "armatur", "fitting", "racor"]
            }
            Column::Ferrule => {
                &["ferrule", "shell", "collar", "socket", "hülse", "presshülse", "fassung", "casquillo"]
            }
            Column::Insertion => &[
                "insertion",
                "insertion depth",
                "insertion length",
                "einstecktiefe",
                "profundidad de inserción",
                "inserción",
            ],
            Column::Skive => &[
                "skive",
                "skiving",
                "skive length",
                "skive outer",
                "outer skive",
                "schällänge",
                "schälen",
                "pelado",
            ],
            Column::SkiveInner => &["skive inner", "inner skive", "innen schälen", "pelado interior"],
            Column::Lubricant => &["lubricant", "lube", "schmiermittel", "gleitmittel", "lubricante"],
            Column::DieSet => &[
                "die",
                "dies",
                "die set",
                "dieset",
                "pressbacken",
                "backen",
                "backensatz",
                "mordaza",
                "mordazas",
            ],
            Column::CrimpDiameter => &[
                "crimp",
                "crimp ø",
                "crimp od",
                "crimp dia",
                "crimp diameter",
                "pressmaß",
                "pressmass",
                "pressdurchmesser",
                "diámetro de prensado",
                "prensado",
            ],
            Column::CrimpTolerance => {
                &["tol", "tolerance", "crimp tolerance", "crimp diameter tolerance", "toleranz", "tolerancia"]
            }
            Column::Cutoff => {
                &["cutoff", "cut off", "cut off length", "abzugsmaß", "abzugsmass", "descuento"]
            }
        }
    }

    fn holds(self) -> Holds {
        match self {
            Column::Insertion
            | Column::Skive
            | Column::SkiveInner
            | Column::CrimpDiameter
            | Column::CrimpTolerance
            | Column::Cutoff => Holds::Length,
            _ => Holds::Text,
        }
    }

    fn meant(heading: &str, plain: &str) -> Option<Self> {
        if ["±", "+/-"].contains(&heading.trim()) {
            return Some(Column::CrimpTolerance);
        }
        // "Crimp" alone is the diameter; beside another word it is of what that word says.
        let counts = |words: &str| !ALONE.contains(&words) || plain == words;
        let stands = |words: &&str| format!(" {plain} ").contains(&format!(" {words} ")) && counts(words);
        let other = NOT_THE_TARGET.iter().any(stands);
        let best =
            sheet::longest(plain, counts).filter(|column| !(other && *column == Column::CrimpDiameter));
        match best {
            // A tolerance is one whatever it is a tolerance of.
            Some(_) if Column::CrimpTolerance.words().iter().any(stands) => Some(Column::CrimpTolerance),
            Some(column) => Some(column),
            // A size of a hose is the hose's.
            None => (plain == "size").then_some(Column::Dn),
        }
    }
}

/// Words that name the crimp diameter only where nothing stands beside them.
const ALONE: [&str; 2] = ["crimp", "prensado"];

/// What stands in a heading of something else than the diameter to crimp to: a limit of it, or what it was before.
const NOT_THE_TARGET: [&str; 6] = ["min", "max", "minimum", "maximum", "pre", "before"];
