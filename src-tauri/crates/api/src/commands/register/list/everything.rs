//! Everything that is on record, in forms that any program reads.

use crate::ApiError;
use hosewright_core::record::PolicySet;
use hosewright_store::{Hose, MachineSheet, Register, SiteRow};
use serde::Serialize;
use serde_json::{Map, Value};

/// Everything that is on record. Names of people, suppliers' tables and the settings of this device are not in it.
#[derive(Debug, Serialize)]
pub(super) struct Everything {
    sites: Vec<SiteRow>,
    /// With circuits and places.
    machines: Vec<MachineSheet>,
    /// Fitted or not, with stays, inspections and history.
    hoses: Vec<Hose>,
    policies: Vec<PolicySet>,
    /// Every event as it was written, stock and prices among them.
    log: Vec<Value>,
}

/// A table by the name of its file: rows of cells, the headings first.
type NamedTable = (&'static str, Vec<Vec<String>>);

impl Everything {
    /// All of it.
    pub(super) fn of(register: &Register) -> Result<Self, ApiError> {
        let wrong = |error: &dyn std::fmt::Display| ApiError::file("", error);
        let mut machines = Vec::new();
        for row in register.machines()? {
            machines.extend(register.machine(row.machine)?);
        }
        let mut hoses = Vec::new();
        for (code, _) in register.hose_specs()? {
            hoses.extend(register.hose(&code)?);
        }
        let mut log = Vec::new();
        for event in register.bundle()?.events {
            let line = event.line().map_err(|error| wrong(&error))?;
            log.push(serde_json::from_str(&line).map_err(|error| wrong(&error))?);
        }
        let policies = register.policies()?.into_iter().map(|(policy, _)| policy).collect();
        Ok(Self { sites: register.sites()?, machines, hoses, policies, log })
    }

    /// The same as tables: what belongs to each thing stands in a table of its own.
    pub(super) fn tables(&self) -> Result<Vec<NamedTable>, ApiError> {
        let places = self.machines.iter().flat_map(|machine| &machine.places);
        let circuits = self.machines.iter().flat_map(|machine| &machine.circuits);
        let stays = self.hoses.iter().flat_map(|hose| &hose.stays);
        Ok(vec![
            ("sites", table(&self.sites)?),
            ("machines", table(self.machines.iter().map(|machine| &machine.machine.record))?),
            ("hours", table(self.machines.iter().filter_map(|machine| machine.hours.as_ref()))?),
            ("circuits", table(circuits.map(|circuit| &circuit.record))?),
            ("places", table(places.map(|place| &place.place.record))?),
            ("hoses", table(self.hoses.iter().map(HoseRow::of))?),
            ("stays", table(stays)?),
            ("inspections", table(self.hoses.iter().flat_map(InspectionRow::all))?),
            ("policies", table(&self.policies)?),
            ("log", table(&self.log)?),
        ])
    }
}

/// A hose in a row.
#[derive(Serialize)]
struct HoseRow<'a> {
    code: String,
    status: &'a hosewright_store::Status,
    labelled: bool,
    assembly: Option<&'a hosewright_core::record::Assembly>,
}

impl<'a> HoseRow<'a> {
    fn of(hose: &'a Hose) -> Self {
        let assembly = hose.assembly.as_ref().map(|made| &made.record);
        Self { code: hose.code.to_string(), status: &hose.status, labelled: hose.labelled, assembly }
    }
}

/// An inspection in a row.
#[derive(Serialize)]
struct InspectionRow<'a> {
    code: String,
    inspection: &'a hosewright_store::HoseInspection,
}

impl<'a> InspectionRow<'a> {
    fn all(hose: &'a Hose) -> impl Iterator<Item = Self> {
        let code = hose.code.to_string();
        hose.inspections.iter().map(move |inspection| Self { code: code.clone(), inspection })
    }
}

/// Things as rows: a column for each key that any of them has, keys within keys parted by a point, list items by their number.
fn table<T: Serialize>(things: impl IntoIterator<Item = T>) -> Result<Vec<Vec<String>>, ApiError> {
    let mut head: Vec<String> = Vec::new();
    let mut flat: Vec<Map<String, Value>> = Vec::new();
    for thing in things {
        let value = serde_json::to_value(thing).map_err(|error| ApiError::input("", error))?;
        let mut row = Map::new();
        flatten("", value, &mut row);
        for key in row.keys().filter(|key| !head.contains(key)).cloned().collect::<Vec<_>>() {
            head.push(key);
        }
        flat.push(row);
    }
    let cells =
        |row: Map<String, Value>| head.iter().map(|key| row.get(key).map(cell).unwrap_or_default()).collect();
    let mut rows: Vec<Vec<String>> = flat.into_iter().map(cells).collect();
    rows.insert(0, head);
    Ok(rows)
}

fn flatten(at: &str, value: Value, row: &mut Map<String, Value>) {
    let below = |key: &str| if at.is_empty() { key.to_owned() } else { format!("{at}.{key}") };
    match value {
        Value::Object(fields) => {
            for (key, value) in fields {
                flatten(&below(&key), value, row);
            }
        }
        Value::Array(items) => {
            for (number, value) in (1_usize..).zip(items) {
                flatten(&below(&number.to_string()), value, row);
            }
        }
        value => {
            row.insert(at.to_owned(), value);
        }
    }
}

fn cell(value: &Value) -> String {
    match value {
        Value::Null => String::new(),
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn what_stands_in_each_other_stands_in_columns_of_its_own() {
        let rows =
            table([json!({"a": 1, "b": {"c": "x", "d": [true, null]}}), json!({"e": "y"})]).expect("rows");
        assert_eq!(rows[0], ["a", "b.c", "b.d.1", "b.d.2", "e"]);
        assert_eq!(rows[1], ["1", "x", "true", "", ""]);
        assert_eq!(rows[2], ["", "", "", "", "y"]);
    }
}
