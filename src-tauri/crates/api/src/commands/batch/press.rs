//! In which order a batch is crimped.

use super::One;
use hosewright_core::stock::{CrimpTurn, Thing, ToCrimp, setups};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What is crimped with one set of dies.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PressSetup {
    /// The die set; none while it is not known.
    pub die_set: Option<String>,
    /// The crimps in order.
    pub crimps: Vec<CrimpTurn>,
}

/// Every crimp of the hoses that may be made.
pub(super) fn presses(made: &[&One]) -> Vec<PressSetup> {
    let crimps = made.iter().enumerate().flat_map(|(hose, one)| {
        let dn = match &one.build.hose {
            Some(Thing::Hose { dn, .. }) => dn.get(),
            _ => 0.0,
        };
        let settings = &one.build.settings;
        one.build.question.spec.ends.iter().map(move |end| {
            let own = settings.iter().find(|settings| settings.role == end.role);
            ToCrimp {
                hose,
                role: end.role,
                die_set: own.and_then(|own| own.die_set.clone()),
                dn,
                diameter_mm: own.and_then(|own| own.crimp_diameter_mm),
            }
        })
    });
    let turn = |crimp: ToCrimp| CrimpTurn {
        name: made.get(crimp.hose).map(|one| one.name.clone()).unwrap_or_default(),
        role: crimp.role,
        diameter_mm: crimp.diameter_mm,
    };
    setups(crimps.collect())
        .into_iter()
        .map(|setup| PressSetup {
            die_set: setup.die_set,
            crimps: setup.crimps.into_iter().map(turn).collect(),
        })
        .collect()
}
