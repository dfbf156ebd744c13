//! Flow, viscosity and surge against their check values.

use crate::vectors::{Compared, Row, rows};
use hosewright_core::flow::{
    Elbow, FlowAnswer, FlowQuestion, Fluid, SurgeAnswer, SurgeQuestion, Walther, basic_values, flow,
    friction_factor, fully_turbulent_steel, stored_energy_gas, stored_energy_gas_brode, stored_energy_liquid,
    surge, velocity, viscosity_index,
};
use hosewright_core::quantity::{Celsius, Degrees, LitresPerMinute, Metres, Millimetres};
use std::f64::consts::PI;

/// The tables are written to eight significant digits.
const DIGITS: i32 = 8;
/// Standard gravity in m/s2 (ISO 80000-3).
const GRAVITY: f64 = 9.80665;
/// Pounds-force a square foot, in Pa (NIST SP 811).
const PSF: f64 = 47.880_258_98;
/// A pound a cubic foot, in kg/m3 (NIST SP 811).
const LB_FT3: f64 = 16.018_463_37;
const FOOT: f64 = 0.3048;

/// `flow_cases.csv`: velocity, friction, pressure drop, fittings and published examples.
pub fn flow_cases() -> Vec<Compared> {
    rows("flow_cases.csv")
        .iter()
        .flat_map(|row| match row.text("group") {
            "velocity" => velocity_case(row),
            "friction_factor" => friction_case(row),
            "pressure_drop" => drop_case(row),
            "minor_loss" => fitting_case(row),
            "published_example" => published_flow(row),
            group => panic!("{}: no comparison for group {group}", row.id()),
        })
        .collect()
}

fn velocity_case(row: &Row) -> Vec<Compared> {
    let found = velocity(LitresPerMinute(row.number("flow_L_min")), Millimetres(row.number("bore_mm")));
    let mut compared = vec![row.compare("velocity_m_s", found, DIGITS)];
    if row.maybe("printed_value").is_some() {
        // The handbooks' constant 0.3208 has four digits itself.
        compared.push(row.compare("printed_value", found / FOOT, 4));
    }
    compared
}

fn friction_case(row: &Row) -> Vec<Compared> {
    let reynolds = row.number("reynolds");
    let column = if reynolds <= 2300.0 {
        "friction_factor_darcy_laminar_64_over_re"
    } else {
        "friction_factor_darcy_colebrook"
    };
    vec![row.compare(column, friction_factor(reynolds, row.number("relative_roughness")), DIGITS)]
}

/// The line of a row, with its fluid by viscosity and density.
fn line(row: &Row, viscosity: f64, density: f64) -> FlowQuestion {
    let bore = row.number("bore_mm");
    let flow_l_min = row
        .maybe("flow_L_min")
        .unwrap_or_else(|| row.number("velocity_m_s") * PI * bore * bore / 4.0 * 60.0 / 1000.0);
    FlowQuestion {
        flow_l_min: LitresPerMinute(flow_l_min),
        bore_mm: Millimetres(bore),
        length_m: row.maybe("length_m").map(Metres),
        fluid: Some(Fluid {
            kinematic_viscosity_mm2_s: Some(viscosity),
            density_kg_m3: Some(density),
            ..Fluid::default()
        }),
        temp_c: None,
        roughness_mm: row.maybe("roughness_mm").map(Millimetres),
        elbows: Vec::new(),
    }
}

fn answer(row: &Row, question: &FlowQuestion) -> FlowAnswer {
    flow(question).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
}

fn known<T>(row: &Row, value: Option<T>) -> T {
    value.unwrap_or_else(|| panic!("{}: no answer", row.id()))
}

fn drop_pa(row: &Row, question: &FlowQuestion) -> f64 {
    known(row, answer(row, question).pressure_drop_bar).get() * 1e5
}

fn drop_case(row: &Row) -> Vec<Compared> {
    let question = line(row, row.number("kinematic_viscosity_mm2_s"), row.number("density_kg_m3"));
    let found = answer(row, &question);
    let (reynolds, friction) = (known(row, found.reynolds), known(row, found.friction_factor));
    let drop_kpa = drop_pa(row, &question) / 1000.0;
    let friction_column = if reynolds <= 2300.0 {
        "friction_factor_darcy_laminar_64_over_re"
    } else {
        "friction_factor_darcy_colebrook"
    };
    vec![
        row.compare("velocity_m_s", found.velocity_m_s, DIGITS),
        row.compare("reynolds", reynolds, DIGITS),
        row.compare(friction_column, friction, DIGITS),
        row.compare("pressure_drop_kPa", drop_kpa, DIGITS),
    ]
}

fn fitting_case(row: &Row) -> Vec<Compared> {
    let description = row.text("description");
    let numbers = row.numbers_in("description");
    let loss = |elbow: Elbow, friction| {
        let bore = Millimetres(row.number("bore_mm"));
        elbow.loss(bore, friction).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
    };
    let elbow = |angle: f64, radius_ratio| Elbow {
        angle_deg: Some(Degrees(angle)),
        radius_ratio,
        loss_coefficient: None,
    };
    if description.starts_with("standard") {
        return vec![row.compare("loss_coefficient_K", loss(elbow(numbers[0], None), f64::NAN), DIGITS)];
    }
    if description.contains(" fT)") {
        // A bend of steel pipe: the published multiple of the fully turbulent friction factor.
        let diameters: f64 = numbers[numbers.len() - 1];
        let fully_turbulent = fully_turbulent_steel(Millimetres(row.number("bore_mm")));
        return vec![
            row.compare("friction_factor_darcy_colebrook", fully_turbulent, DIGITS),
            row.compare("loss_coefficient_K", diameters * fully_turbulent, DIGITS),
        ];
    }
    if description.starts_with("smooth round bend") {
        // "smooth round bend, 90 degrees, r/d=1.5; alternative correlation (Ito 1960) gives K=0.2270"
        let [angle, ratio, _year, alternative] = numbers[..] else { panic!("{}: {numbers:?}", row.id()) };
        let friction = friction_factor(row.number("reynolds"), 0.0);
        let found = loss(elbow(angle, Some(ratio)), friction);
        return vec![
            row.compare("loss_coefficient_K", found, DIGITS),
            row.compare_with("alternative K", alternative, found, 4),
        ];
    }
    // A given loss: what an elbow of that loss adds to a line, in velocity heads.
    let coefficient = row.number("loss_coefficient_K");
    let density = row.maybe("density_kg_m3").unwrap_or(870.0);
    let speed = row.maybe("velocity_m_s").unwrap_or(4.0);
    let bore: f64 = 12.7;
    let with = |elbows| FlowQuestion {
        flow_l_min: LitresPerMinute(speed * PI * bore * bore / 4.0 * 60.0 / 1000.0),
        bore_mm: Millimetres(bore),
        length_m: Some(Metres(1.0)),
        fluid: Some(Fluid {
            kinematic_viscosity_mm2_s: Some(30.0),
            density_kg_m3: Some(density),
            ..Fluid::default()
        }),
        temp_c: None,
        roughness_mm: None,
        elbows,
    };
    let given = Elbow { loss_coefficient: Some(coefficient), ..Elbow::default() };
    let added = drop_pa(row, &with(vec![given])) - drop_pa(row, &with(Vec::new()));
    let mut compared =
        vec![row.compare("loss_coefficient_K", added / (density * speed * speed / 2.0), DIGITS)];
    if row.maybe("pressure_drop_kPa").is_some() {
        compared.push(row.compare("pressure_drop_kPa", added / 1000.0, DIGITS));
    }
    compared
}

/// Examples worked in print. What an example gives and its row has no column for stands here.
fn published_flow(row: &Row) -> Vec<Compared> {
    let bore_m = || row.number("bore_mm") / 1000.0;
    let viscosity = || {
        row.maybe("kinematic_viscosity_mm2_s")
            .or_else(|| Some(row.maybe("dynamic_viscosity_Pa_s")? / row.maybe("density_kg_m3")? * 1e6))
            .unwrap_or_else(|| row.number("velocity_m_s") * bore_m() / row.number("reynolds") * 1e6)
    };
    let with_density = |density: f64| line(row, viscosity(), density);
    let given = || with_density(row.number("density_kg_m3"));
    let head = |question: &FlowQuestion, density: f64| drop_pa(row, question) / (density * GRAVITY);
    let found = match row.id() {
        "PUB-01a" => answer(row, &given()).velocity_m_s,
        "PUB-01b" | "PUB-02c" => known(row, answer(row, &given()).reynolds),
        "PUB-01d" | "PUB-02a" => head(&given(), row.number("density_kg_m3")),
        // Down a slope of 10 degrees the weight of the oil helps.
        "PUB-01e" => {
            let fall = row.number("length_m") * 10_f64.to_radians().sin();
            drop_pa(row, &given()) - row.number("density_kg_m3") * GRAVITY * fall
        }
        // The flow at which 745 kPa at one end leave 97 kPa at the other; laminar, so in proportion.
        "PUB-03a" | "PUB-03b" => {
            let slope: f64 = if row.id() == "PUB-03b" { 15.0 } else { 0.0 };
            let rise = row.number("length_m") * slope.to_radians().sin();
            let left = 648_000.0 - row.number("density_kg_m3") * GRAVITY * rise;
            let trial = FlowQuestion {
                flow_l_min: LitresPerMinute(100.0),
                ..line_at(row, viscosity(), row.number("density_kg_m3"))
            };
            100.0 / 60_000.0 * left / drop_pa(row, &trial)
        }
        "PUB-04a" => known(row, answer(row, &with_density(62.42 * LB_FT3)).reynolds),
        "PUB-04b" => known(row, answer(row, &with_density(62.42 * LB_FT3)).friction_factor),
        // Water at 40 F has 62.42 lb/ft3, at 60 F 62.36.
        "PUB-04c" => drop_pa(row, &with_density(62.42 * LB_FT3)) / PSF,
        "PUB-05b" | "PUB-06a" => friction_factor(row.number("reynolds"), row.number("relative_roughness")),
        "PUB-05c" => {
            let roughness = row.number("relative_roughness") * row.number("bore_mm");
            let question =
                FlowQuestion { roughness_mm: Some(Millimetres(roughness)), ..with_density(62.36 * LB_FT3) };
            drop_pa(row, &question) / PSF
        }
        "PUB-07a" => drop_pa(row, &given()),
        // The printed solution reads 0.0230 from a chart; the rest of the sum is ours.
        "PUB-07b" => {
            let question = given();
            drop_pa(row, &question) * 0.0230 / known(row, answer(row, &question).friction_factor)
        }
        // With an open globe valve of 340 diameters.
        "PUB-08" => {
            let valve = 340.0 * fully_turbulent_steel(Millimetres(row.number("bore_mm")));
            let elbows = vec![Elbow { loss_coefficient: Some(valve), ..Elbow::default() }];
            drop_pa(row, &FlowQuestion { elbows, ..given() })
        }
        "PUB-09b" => known(row, answer(row, &with_density(1000.0)).friction_factor),
        // Feet of head, with a rise of 2000 ft.
        "PUB-10" => {
            let steel = Some(Millimetres(0.04572));
            let question = FlowQuestion { roughness_mm: steel, ..given() };
            head(&question, row.number("density_kg_m3")) / FOOT + 2000.0
        }
        "PUB-11a" => drop_pa(row, &given()),
        id => panic!("no comparison for {id}"),
    };
    vec![row.compare("printed_value", found, DIGITS)]
}

/// [`line`] for a row with neither flow nor velocity.
fn line_at(row: &Row, viscosity: f64, density: f64) -> FlowQuestion {
    FlowQuestion {
        flow_l_min: LitresPerMinute(1.0),
        bore_mm: Millimetres(row.number("bore_mm")),
        length_m: row.maybe("length_m").map(Metres),
        fluid: Some(Fluid {
            kinematic_viscosity_mm2_s: Some(viscosity),
            density_kg_m3: Some(density),
            ..Fluid::default()
        }),
        temp_c: None,
        roughness_mm: None,
        elbows: Vec::new(),
    }
}

/// `viscosity_cases.csv`: grades, viscosity index and viscosity at temperature.
pub fn viscosity_cases() -> Vec<Compared> {
    rows("viscosity_cases.csv")
        .iter()
        .flat_map(|row| match row.text("group") {
            "iso3448" => grade_case(row),
            "viscosity_index" => index_case(row),
            "d341_two_point" => {
                let [nu1, t1, nu2, t2] = row.numbers_in("description")[..] else {
                    panic!("{}: {}", row.id(), row.text("description"))
                };
                temperature_case(row, Walther::through((Celsius(t1), nu1), (Celsius(t2), nu2)))
            }
            "d341_from_vi" => {
                let line = oil(row, row.number("iso_vg"), row.number("viscosity_index"));
                let mut compared = temperature_case(row, line);
                let nu_100c = known(row, line.at(Celsius(100.0)));
                compared.push(row.compare("nu_100C_mm2_s", nu_100c, DIGITS));
                compared
            }
            group => panic!("{}: no comparison for group {group}", row.id()),
        })
        .collect()
}

fn oil(row: &Row, iso_vg: f64, index: f64) -> Walther {
    Walther::of_grade(iso_vg, index).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
}

/// A grade is its viscosity at 40 C, whatever the index; its limits are 10 % to either side.
fn grade_case(row: &Row) -> Vec<Compared> {
    let midpoint = known(row, oil(row, row.number("iso_vg"), 95.0).at(Celsius(row.number("temperature_C"))));
    let limit = match row.text("description").split(',').next() {
        Some("lower limit") => 0.9,
        Some("upper limit") => 1.1,
        _ => 1.0,
    };
    vec![row.compare("nu_at_temperature_mm2_s", limit * midpoint, DIGITS)]
}

fn index_case(row: &Row) -> Vec<Compared> {
    let nu_100c = row.number("nu_100C_mm2_s");
    let basic = known(row, basic_values(nu_100c));
    let mut compared = Vec::new();
    if let Some(nu_40c) = row.maybe("nu_40C_mm2_s") {
        let index = known(row, viscosity_index(nu_40c, nu_100c));
        compared.push(row.compare("viscosity_index", index, DIGITS));
        compared.push(row.compare("printed_value", index, DIGITS));
    }
    for (column, found) in [("L_mm2_s", basic.l), ("H_mm2_s", basic.h)] {
        if row.maybe(column).is_some() {
            compared.push(row.compare(column, found, DIGITS));
        }
    }
    compared
}

fn temperature_case(row: &Row, line: Walther) -> Vec<Compared> {
    let found = known(row, line.at(Celsius(row.number("temperature_C"))));
    vec![
        row.compare("nu_at_temperature_mm2_s", found, DIGITS),
        row.compare("walther_A", line.a, DIGITS),
        row.compare("walther_B", line.b, DIGITS),
    ]
}

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
        known(row, row.numbers_in("description").first().copied())
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
    .map(|(column, found)| row.compare(column, known(row, found), DIGITS))
    .collect()
}

fn published_surge(row: &Row) -> Vec<Compared> {
    let found = stopped(row);
    let rise_pa = || known(row, found.pressure_rise_bar).get() * 1e5;
    let printed = match row.id() {
        "S-PUB-01a" => found.effective_bulk_modulus_pa,
        "S-PUB-01b" | "S-PUB-02a" => known(row, found.wave_speed_m_s),
        "S-PUB-01d" | "S-PUB-03c" => rise_pa(),
        // 0.4 m3/s in a pipe of 0.5 m.
        "S-PUB-02b" => velocity(LitresPerMinute(24_000.0), Millimetres(row.number("bore_mm"))),
        // The example slows the column as a rigid whole, which is half of what Michaud gives.
        "S-PUB-03a" => rise_pa() / 2.0,
        "S-PUB-03b" => known(row, found.critical_time_s),
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
