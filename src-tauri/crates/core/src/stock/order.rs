//! In which order a batch is worked, so that the press is changed least.

use crate::quantity::Millimetres;
use crate::spec::Role;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// An end to be crimped.
#[derive(Debug, Clone, PartialEq)]
pub struct ToCrimp {
    /// Which hose of the batch, by its place in the question.
    pub hose: usize,
    /// Which end.
    pub role: Role,
    /// The die set; none is not known.
    pub die_set: Option<String>,
    /// Size of the hose.
    pub dn: f64,
    /// Diameter over the crimped ferrule; none is not known.
    pub diameter_mm: Option<Millimetres>,
}

/// What is crimped with one set of dies, one after the other.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// The die set; none: what it is is not known.
    pub die_set: Option<String>,
    /// The crimps.
    pub crimps: Vec<ToCrimp>,
}

/// A crimp in the order of the work.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CrimpTurn {
    /// The hose, as the batch calls it.
    pub name: String,
    /// Which end.
    pub role: Role,
    /// Diameter over the crimped ferrule; none is not known.
    pub diameter_mm: Option<Millimetres>,
}

/// Every crimp of a batch, die set by die set. Each set goes into the press once, which no other order betters; the
/// smallest hose comes first, within a set the same diameter stays together, and what has no die set yet comes last.
pub fn setups(mut crimps: Vec<ToCrimp>) -> Vec<Setup> {
    let size_of = |die: &Option<String>, crimps: &[ToCrimp]| {
        let sizes = crimps.iter().filter(|crimp| crimp.die_set == *die).map(|crimp| crimp.dn);
        sizes.fold(f64::INFINITY, f64::min)
    };
    for crimp in &mut crimps {
        crimp.die_set = crimp.die_set.take().map(|die| die.trim().to_owned()).filter(|die| !die.is_empty());
    }
    let mut dies: Vec<Option<String>> = Vec::new();
    for crimp in &crimps {
        if !dies.contains(&crimp.die_set) {
            dies.push(crimp.die_set.clone());
        }
    }
    dies.sort_by(|one, other| {
        let sizes = size_of(one, &crimps).total_cmp(&size_of(other, &crimps));
        one.is_none().cmp(&other.is_none()).then(sizes).then(one.cmp(other))
    });
    let setup = |die: Option<String>| {
        let mut own: Vec<ToCrimp> = crimps.iter().filter(|crimp| crimp.die_set == die).cloned().collect();
        let diameter = |crimp: &ToCrimp| crimp.diameter_mm.map_or(f64::INFINITY, Millimetres::get);
        own.sort_by(|one, other| {
            diameter(one)
                .total_cmp(&diameter(other))
                .then(one.hose.cmp(&other.hose))
                .then(one.role.cmp(&other.role))
        });
        Setup { die_set: die, crimps: own }
    };
    dies.into_iter().map(setup).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn crimp((hose, die, role): (usize, u8, bool)) -> ToCrimp {
        ToCrimp {
            hose,
            role: if role { Role::A } else { Role::B },
            die_set: (die > 0).then(|| format!(" {die} ")),
            dn: f64::from(die),
            diameter_mm: None,
        }
    }

    proptest! {
        #[test]
        fn every_crimp_is_there_once_and_every_die_set_goes_in_once(given in prop::collection::vec((0..9_usize, 0..5_u8, any::<bool>()), 0..30)) {
            let crimps: Vec<ToCrimp> = given.into_iter().map(crimp).collect();
            let planned = setups(crimps.clone());
            let mut dies: Vec<_> = planned.iter().map(|setup| setup.die_set.clone()).collect();
            prop_assert!(dies.iter().rev().skip(1).all(Option::is_some), "what has no die set comes last");
            dies.sort();
            dies.dedup();
            prop_assert_eq!(dies.len(), planned.len());
            let key = |one: &ToCrimp| (one.hose, one.role, one.die_set.as_deref().map(str::trim).map(str::to_owned));
            let mut before: Vec<_> = crimps.iter().map(key).collect();
            let mut after: Vec<_> = planned.iter().flat_map(|setup| &setup.crimps).map(key).collect();
            before.sort();
            after.sort();
            prop_assert_eq!(before, after);
        }
    }
}
