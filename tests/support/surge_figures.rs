//! Surge and stored energy against their check values.

use crate::vectors::{Compared, Row, rows};
use hosewright_core::flow::{
    SurgeAnswer, SurgeQuestion, stored_energy_gas, stored_energy_gas_brode, stored_energy_liquid, surge,
    velocity,
};
use hosewright_core::quantity::{LitresPerMinute, Metres, Millimetres};
use std::f64::consts::PI;

/// The table is written to eight significant digits.
const DIGITS: i32 = 8;

/// `surge_cases.csv`: effective modulus, wave speed, closure, air and stored energy.
pub fn surge_cases() -> Vec<Compared> {
    rows("surge_cases.csv")
        .iter()
        .flat_map(|row| match row.text("group") {
            "published_example" => published_surge(row),
            group if group.starts_with("stored_energy") => energy_case(row),
            _ => surge_columns(row, &stopped(row)),
        })
        .collect()
}

/// The answer for a row. A row that gives the wave speed gives the modulus by it.
fn stopped(row: &Row) -> SurgeAnswer {
    let density = row.maybe("density_kg_m3");
    let modulus = row.maybe("bulk_modulus_Pa").unwrap_or_else(|| {
        density.unwrap_or(1000.0) * row.number("wave_speed_m_s") * row.number("wave_speed_m_s")
    });
    let expansion = (row.text("group") == "hose_volumetric_expansion").then(|| {
        // "compliance from measured volumetric expansion 0.20 cm3 per metre per MPa"
        row.known(row.numbers_in("description").first().copied())
    });
    let question = SurgeQuestion {
        bulk_modulus_pa: modulus,
        density_kg_m3: density.or(Some(1000.0)),
        bore_mm: row.maybe("bore_mm").map(Millimetres),
        wall_thickness_mm: row.maybe("wall_thickness_mm").map(Millimetres),
        wall_modulus_pa: row.maybe("wall_modulus_Pa"),
        poisson: row.maybe("poisson"),
        length_m: row.maybe("length_m").map(Metres),
        velocity_change_m_s: row.maybe("velocity_change_m_s"),
        closure_time_s: row.maybe("closure_time_s"),
        air_fraction: row.maybe("air_fraction"),
        pressure_pa: row.maybe("pressure_Pa"),
        volumetric_expansion_cm3_m_mpa: expansion,
    };
    surge(&question).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
}

/// Every column of a row that the answer has a value for.
fn surge_columns(row: &Row, found: &SurgeAnswer) -> Vec<Compared> {
    [
        ("effective_bulk_modulus_Pa", Some(found.effective_bulk_modulus_pa)),
        ("wave_speed_m_s", found.wave_speed_m_s),
        ("critical_time_s", found.critical_time_s),
        ("pressure_rise_Pa", found.pressure_rise_bar.map(|rise| rise.get() * 1e5)),
    ]
    .into_iter()
    .filter(|(column, _)| row.maybe(column).is_some())
    .map(|(column, found)| row.compare(column, row.known(found), DIGITS))
    .collect()
}

fn published_surge(row: &Row) -> Vec<Compared> {
    let found = stopped(row);
    let rise_pa = || row.known(found.pressure_rise_bar).get() * 1e5;
    let printed = match row.id() {
        "S-PUB-01a" => found.effective_bulk_modulus_pa,
        "S-PUB-01b" | "S-PUB-02a" => row.known(found.wave_speed_m_s),
        "S-PUB-01d" | "S-PUB-03c" => rise_pa(),
        // 0.4 m3/s in a pipe of 0.5 m.
        "S-PUB-02b" => velocity(LitresPerMinute(24_000.0), Millimetres(row.number("bore_mm"))),
        // The example slows the column as a rigid whole, which is half of what Michaud gives.
        "S-PUB-03a" => rise_pa() / 2.0,
        "S-PUB-03b" => row.known(found.critical_time_s),
        id => panic!("no comparison for {id}"),
    };
    let mut compared = surge_columns(row, &found);
    compared.push(row.compare("printed_value", printed, DIGITS));
    compared
}

fn energy_case(row: &Row) -> Vec<Compared> {
    let (pressure, volume) = (row.number("pressure_Pa"), row.number("volume_m3"));
    match row.text("group") {
        "stored_energy_gas_isentropic" => {
            vec![row.compare("energy_J", stored_energy_gas(pressure, volume), DIGITS)]
        }
        "stored_energy_gas_brode" => {
            vec![row.compare("energy_J", stored_energy_gas_brode(pressure, volume), DIGITS)]
        }
        group => {
            // The wall of these rows gives way by 1/(0.8 GPa): so many cm3 a metre and MPa of this bore.
            let bore: f64 = 12.7;
            let expansion =
                (group == "stored_energy_liquid_and_wall").then_some(PI * bore * bore / 4.0 / 800.0);
            let question = SurgeQuestion {
                bulk_modulus_pa: row.number("bulk_modulus_Pa"),
                density_kg_m3: None,
                bore_mm: Some(Millimetres(bore)),
                wall_thickness_mm: None,
                wall_modulus_pa: None,
                poisson: None,
                length_m: None,
                velocity_change_m_s: None,
                closure_time_s: None,
                air_fraction: None,
                pressure_pa: None,
                volumetric_expansion_cm3_m_mpa: expansion,
            };
            let found = surge(&question).unwrap_or_else(|error| panic!("{}: {error}", row.id()));
            let energy = stored_energy_liquid(pressure, volume, found.effective_bulk_modulus_pa);
            let mut compared = surge_columns(row, &found);
            compared.push(row.compare("energy_J", energy, DIGITS));
            compared
        }
    }
}
