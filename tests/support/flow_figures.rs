//! Flow against its check values.

use crate::vectors::{Compared, Row, rows};
use hosewright_core::flow::{
    Elbow, FlowAnswer, FlowQuestion, Fluid, flow, friction_factor, fully_turbulent_steel, velocity,
};
use hosewright_core::quantity::{Degrees, LitresPerMinute, Metres, Millimetres};
use std::f64::consts::PI;

/// The table is written to eight significant digits.
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

/// A flow through a smooth line, in l/min and mm, with its fluid by viscosity in mm2/s and density in kg/m3.
fn question(flow: f64, bore: f64, viscosity: f64, density: f64) -> FlowQuestion {
    FlowQuestion {
        flow_l_min: LitresPerMinute(flow),
        bore_mm: Millimetres(bore),
        length_m: None,
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

/// The flow in l/min that runs at a speed in m/s through a bore in mm.
fn flow_at(speed: f64, bore: f64) -> f64 {
    speed * PI * bore * bore / 4.0 * 60.0 / 1000.0
}

/// The line of a row, with its flow where the row gives one.
fn line(row: &Row, viscosity: f64, density: f64) -> FlowQuestion {
    let bore = row.number("bore_mm");
    let flow = row.maybe("flow_L_min").unwrap_or_else(|| flow_at(row.number("velocity_m_s"), bore));
    line_with(row, flow, viscosity, density)
}

/// The line of a row, with a flow.
fn line_with(row: &Row, flow: f64, viscosity: f64, density: f64) -> FlowQuestion {
    FlowQuestion {
        length_m: row.maybe("length_m").map(Metres),
        roughness_mm: row.maybe("roughness_mm").map(Millimetres),
        ..question(flow, row.number("bore_mm"), viscosity, density)
    }
}

fn answer(row: &Row, question: &FlowQuestion) -> FlowAnswer {
    flow(question).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
}

fn drop_pa(row: &Row, question: &FlowQuestion) -> f64 {
    row.known(answer(row, question).pressure_drop_bar).get() * 1e5
}

fn drop_case(row: &Row) -> Vec<Compared> {
    let question = line(row, row.number("kinematic_viscosity_mm2_s"), row.number("density_kg_m3"));
    let found = answer(row, &question);
    let (reynolds, friction) = (row.known(found.reynolds), row.known(found.friction_factor));
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
    let bore = 12.7;
    let with = |elbows| FlowQuestion {
        length_m: Some(Metres(1.0)),
        elbows,
        ..question(flow_at(speed, bore), bore, 30.0, density)
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
        "PUB-01b" | "PUB-02c" => row.known(answer(row, &given()).reynolds),
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
            let trial = line_with(row, 100.0, viscosity(), row.number("density_kg_m3"));
            100.0 / 60_000.0 * left / drop_pa(row, &trial)
        }
        "PUB-04a" => row.known(answer(row, &with_density(62.42 * LB_FT3)).reynolds),
        "PUB-04b" => row.known(answer(row, &with_density(62.42 * LB_FT3)).friction_factor),
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
            drop_pa(row, &question) * 0.0230 / row.known(answer(row, &question).friction_factor)
        }
        // With an open globe valve of 340 diameters.
        "PUB-08" => {
            let valve = 340.0 * fully_turbulent_steel(Millimetres(row.number("bore_mm")));
            let elbows = vec![Elbow { loss_coefficient: Some(valve), ..Elbow::default() }];
            drop_pa(row, &FlowQuestion { elbows, ..given() })
        }
        "PUB-09b" => row.known(answer(row, &with_density(1000.0)).friction_factor),
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
