//! The fluid asked for, and what water does to a hose's limits.

use crate::catalogue::{Catalogue, FluidClass, FluidGroup, FluidRow, OutOfScope, Provenance};
use crate::quantity::Celsius;

/// A fluid of the tables.
#[derive(Clone, Copy)]
pub(super) struct Fluid<'a> {
    pub(super) class: &'a FluidClass,
    catalogue: &'a Catalogue,
}

/// A temperature and where it comes from.
pub(super) type Temperature = (Celsius, Provenance);

/// What the standard of a hose allows for a fluid with water in it.
pub(super) struct WaterLimits {
    pub(super) hottest: Temperature,
    pub(super) coldest: Option<Temperature>,
}

/// Why a fluid is none of this trade's: by its name, or because it is another name of one that is not.
pub(super) fn refused<'a>(catalogue: &'a Catalogue, asked: &str) -> Option<&'a OutOfScope> {
    catalogue.out_of_scope(asked).or_else(|| {
        let class = catalogue.fluid(asked).ok()?.class.as_str();
        catalogue.out_of_scope(if class.starts_with("brake-fluid") { "brake-line" } else { class })
    })
}

impl<'a> Fluid<'a> {
    /// The fluid by any name people use for it. None where the tables do not have it.
    pub(super) fn named(catalogue: &'a Catalogue, asked: &str) -> Option<Self> {
        Some(Self { class: catalogue.fluid(asked).ok()?, catalogue })
    }

    /// How a tube material stands it. None where nobody knows.
    pub(super) fn in_tube(self, tube: &str) -> Option<&'a FluidRow> {
        self.catalogue.resistance(self.class, tube)
    }

    /// What the standard allows where water is in the fluid; none for other fluids and standards.
    pub(super) fn water_limits(self, standard: &str) -> Option<WaterLimits> {
        let water = match self.class.group {
            FluidGroup::Water => true,
            FluidGroup::WaterBased => false,
            _ => return None,
        };
        match standard {
            "EN 853" | "EN 854" | "EN 856" | "EN 857" | "ISO 3862" => Some(WaterLimits {
                hottest: self.limit("water-based-temp-max")?,
                coldest: if water { self.limit("water-temp-min") } else { None },
            }),
            "ISO 11237" | "ISO 3949" => Some(WaterLimits {
                hottest: self.limit("water-based-temp-max-iso")?,
                coldest: Some(self.limit("water-based-temp-min-iso")?),
            }),
            _ => None,
        }
    }

    fn limit(self, key: &str) -> Option<Temperature> {
        let limit = self.catalogue.limit(key)?;
        Some((Celsius(limit.value?), limit.provenance.clone()))
    }
}
