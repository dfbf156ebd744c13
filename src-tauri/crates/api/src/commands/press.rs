//! `press`: how the crimps of this register lie against their targets, and what care the press is due.

use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::press::{CareDue, Charted, chart, due};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::Assembly;
use hosewright_core::spec::Role;
use hosewright_core::tag::TagCode;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// What is asked of the press.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct PressQuestion {
    /// Of this die set; of all without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub die_set: Option<String>,
    /// As of which day; today without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub on: Option<NaiveDate>,
}

/// The press as the register shows it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Press {
    /// As of that day.
    pub on: NaiveDate,
    /// The die sets by name.
    pub dies: Vec<DieSet>,
    /// Crimps that are in none: no die set, target or reading was written down.
    pub left_out: usize,
    /// What is done at the press by the user's own schedule.
    pub care: Vec<CareDue>,
}

/// The crimps of one die set in order.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DieSet {
    /// Its name.
    pub die_set: String,
    /// The crimps.
    pub crimps: Vec<CrimpOf>,
    /// Their deviations from target as a control chart, in mm; none of fewer than eight.
    pub chart: Option<Charted>,
}

/// One crimp of a die set.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CrimpOf {
    /// The assembly.
    pub code: TagCode,
    /// The end.
    pub role: Role,
    /// When it was assembled.
    pub assembled: Option<NaiveDate>,
    /// Mean of the readings less target.
    pub deviation_mm: Millimetres,
}

/// Deviations from target of each die set as a control chart, and the care that is due.
///
/// # Errors
/// The register can not be read.
pub fn press(api: &mut Api, asked: PressQuestion, _: &[u8]) -> Result<Answer<Press>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let mut made = api.register()?.benches()?;
    made.retain(|made| made.assembled.is_none_or(|day| day <= on));
    let mut dies: BTreeMap<String, Vec<CrimpOf>> = BTreeMap::new();
    let (mut left_out, mut days) = (0, Vec::new());
    for (assembly, role) in made.iter().flat_map(|made| [(made, Role::A), (made, Role::B)]) {
        days.extend(assembly.assembled);
        match crimp_of(assembly, role) {
            Some((die, crimp)) => dies.entry(die).or_default().push(crimp),
            None => left_out += 1,
        }
    }
    if let Some(wanted) = &asked.die_set {
        dies.retain(|name, _| name == wanted);
    }
    let dies = dies.into_iter().map(|(die_set, crimps)| {
        let deviations: Vec<f64> = crimps.iter().map(|crimp| crimp.deviation_mm.get()).collect();
        DieSet { die_set, chart: chart(&deviations), crimps }
    });
    let dies = dies.collect();
    let care = api.settings()?.press_care.iter().map(|care| due(care, &days, on)).collect();
    Ok(api.answer(Press { on, dies, left_out, care }))
}

fn crimp_of(made: &Assembly, role: Role) -> Option<(String, CrimpOf)> {
    let bench = made.bench.as_ref()?;
    let die = bench.settings.iter().find(|settings| settings.role == role)?.die_set.clone()?;
    let read = bench.crimps.iter().find(|read| read.role == role)?;
    let deviation_mm = read.judged().ok()?.deviation_mm?;
    Some((die.trim().to_owned(), CrimpOf { code: made.code, role, assembled: made.assembled, deviation_mm }))
}
