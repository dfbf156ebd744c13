//! Machines, the readings of their hour meters, and their circuits.

use crate::Error;
use hosewright_core::catalogue::Demand;
use hosewright_core::record::{Arranged, Body, CircuitId, Entry, MachineId};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, id: MachineId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::MachineSet(machine), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO machine (machine, site, name, sort, folded, version, demand)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)",
    )?
    .execute(params![
        id.to_string(),
        machine.site.map(|site| site.to_string()),
        machine.name,
        machine.sort,
        format!("{} {}", machine.name, machine.sort).to_lowercase(),
        at.to_string(),
        machine.demand.map(Demand::name),
    ])?;
    Ok(())
}

pub(super) fn project_hours(db: &Connection, id: MachineId, readings: &Arranged) -> Result<(), Error> {
    let mut insert =
        db.prepare_cached("INSERT INTO hours (version, machine, date, hours) VALUES (?1, ?2, ?3, ?4)")?;
    for node in &readings.nodes {
        let Body::HoursRead(read) = &node.current.body else { continue };
        insert.execute(params![
            node.current.at.to_string(),
            id.to_string(),
            read.date.to_string(),
            read.hours
        ])?;
    }
    Ok(())
}

pub(super) fn project_circuit(db: &Connection, id: CircuitId, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::CircuitSet(circuit), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO circuit (circuit, machine, name, relief_bar, version) VALUES (?1, ?2, ?3, ?4, ?5)",
    )?
    .execute(params![
        id.to_string(),
        circuit.machine.to_string(),
        circuit.name,
        circuit.relief_bar.map(|pressure| pressure.get()),
        at.to_string(),
    ])?;
    Ok(())
}
