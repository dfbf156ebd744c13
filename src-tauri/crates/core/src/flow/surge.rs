//! Surge: what the pressure does when the oil is stopped.

use super::energy::{ATMOSPHERE_PA, GAMMA_AIR};
use super::error::{FlowError, needed, within};
use crate::quantity::{Bar, Metres, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::f64::consts::PI;
use ts_rs::TS;

/// A line in which the oil is stopped. Without a wall or a measured expansion it is rigid.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SurgeQuestion {
    /// Bulk modulus of the fluid without air.
    pub bulk_modulus_pa: f64,
    /// Density of the fluid; gives the wave speed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density_kg_m3: Option<f64>,
    /// Inside diameter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bore_mm: Option<Millimetres>,
    /// Thickness of the wall.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wall_thickness_mm: Option<Millimetres>,
    /// Young's modulus of the wall.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wall_modulus_pa: Option<f64>,
    /// Poisson's ratio of the wall. With it the wall is reckoned as thick, without it as thin.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub poisson: Option<f64>,
    /// Length of the line to where the wave turns back; gives the critical time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length_m: Option<Metres>,
    /// How much of its velocity the oil loses; gives the pressure rise.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub velocity_change_m_s: Option<f64>,
    /// How long that takes; at once unless given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub closure_time_s: Option<f64>,
    /// Part of the volume that is free air, measured at atmospheric pressure.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub air_fraction: Option<f64>,
    /// Pressure in the line before, gauge; needed with air.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_pa: Option<f64>,
    /// Volumetric expansion of the hose as measured by ISO 6801, in place of a wall.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub volumetric_expansion_cm3_m_mpa: Option<f64>,
}

/// What the pressure does. What can not be known from what was given is none.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct SurgeAnswer {
    /// Bulk modulus of fluid, air and wall together.
    pub effective_bulk_modulus_pa: f64,
    /// Speed of the pressure wave.
    pub wave_speed_m_s: Option<f64>,
    /// Time in which the wave runs to the end and back; a faster closure is as bad as a sudden one.
    pub critical_time_s: Option<f64>,
    /// Rise above the pressure before.
    pub pressure_rise_bar: Option<Bar>,
}

/// The pressure rise when oil in a line is stopped: Joukowsky's when it is stopped within the
/// critical time, Michaud's reduction of it by critical over closure time when slower.
///
/// A closure time without a length counts as sudden, which is the safe side.
///
/// # Errors
/// Names the key whose value no line can have, or that is missing beside another.
pub fn surge(question: &SurgeQuestion) -> Result<SurgeAnswer, FlowError> {
    let given =
        |field, value: Option<f64>, least, most| value.map(|v| within(field, v, least, most)).transpose();
    let density = given("density_kg_m3", question.density_kg_m3, 1.0, 20_000.0)?;
    let length = given("length_m", question.length_m.map(Metres::get), 0.001, 1e6)?;
    let change = given("velocity_change_m_s", question.velocity_change_m_s, 0.0, 1000.0)?;
    let closure = given("closure_time_s", question.closure_time_s, 0.0, 1e6)?;

    let effective = 1.0 / (fluid_compliance(question)? + wall_compliance(question)?);
    let wave_speed = density.map(|density| (effective / density).sqrt());
    let critical = wave_speed.zip(length).map(|(speed, length)| 2.0 * length / speed);
    let slowed = match (critical, closure) {
        (Some(critical), Some(closure)) if closure > critical => critical / closure,
        _ => 1.0,
    };
    let rise = density.zip(wave_speed).zip(change).map(|((density, speed), change)| density * speed * change);
    Ok(SurgeAnswer {
        effective_bulk_modulus_pa: effective,
        wave_speed_m_s: wave_speed,
        critical_time_s: critical,
        pressure_rise_bar: rise.map(|sudden_pa| Bar(sudden_pa * slowed / 1e5)),
    })
}

/// Compliance in 1/Pa of the fluid with its air: the liquid's and the gas's by their shares at
/// pressure, the gas compressed without loss of heat (Wood's mixture rule; Merritt, Hydraulic Control
/// Systems, 1967).
fn fluid_compliance(question: &SurgeQuestion) -> Result<f64, FlowError> {
    let liquid = 1.0 / within("bulk_modulus_pa", question.bulk_modulus_pa, 1e6, 1e12)?;
    let Some(air) = question.air_fraction else { return Ok(liquid) };
    let air = within("air_fraction", air, 0.0, 0.99)?;
    let gauge = needed("pressure_pa", question.pressure_pa, "air_fraction")?;
    let absolute = within("pressure_pa", gauge, -0.99 * ATMOSPHERE_PA, 1e9)? + ATMOSPHERE_PA;
    let gas = air * (ATMOSPHERE_PA / absolute).powf(1.0 / GAMMA_AIR);
    let share = gas / (gas + 1.0 - air);
    Ok((1.0 - share) * liquid + share / (GAMMA_AIR * absolute))
}

/// How much the line gives way, in 1/Pa: change of volume by volume and pressure.
fn wall_compliance(question: &SurgeQuestion) -> Result<f64, FlowError> {
    let bore = |needed_by| {
        let bore = needed("bore_mm", question.bore_mm, needed_by)?;
        within("bore_mm", bore.get(), 0.1, 1e4)
    };
    match (question.volumetric_expansion_cm3_m_mpa, question.wall_thickness_mm, question.wall_modulus_pa) {
        (Some(_), Some(_), _) | (Some(_), _, Some(_)) => Err(FlowError::Conflict {
            field: "volumetric_expansion_cm3_m_mpa",
            other: "wall_thickness_mm and wall_modulus_pa",
        }),
        (Some(expansion), None, None) => {
            let expansion = within("volumetric_expansion_cm3_m_mpa", expansion, 0.0, 1e6)?;
            let bore = bore("volumetric_expansion_cm3_m_mpa")?;
            // cm3 of a metre's volume, which in cm3 is the bore's area in mm2; 1e6 Pa to the MPa.
            Ok(expansion / 1e6 / (PI * bore * bore / 4.0))
        }
        (None, None, None) if question.poisson.is_some() => {
            Err(FlowError::Missing { field: "wall_modulus_pa", needed_by: "poisson" })
        }
        (None, None, None) => Ok(0.0),
        (None, Some(_), None) => {
            Err(FlowError::Missing { field: "wall_modulus_pa", needed_by: "wall_thickness_mm" })
        }
        (None, None, Some(_)) => {
            Err(FlowError::Missing { field: "wall_thickness_mm", needed_by: "wall_modulus_pa" })
        }
        (None, Some(thickness), Some(modulus)) => {
            let thickness = within("wall_thickness_mm", thickness.get(), 0.01, 1e4)?;
            let modulus = within("wall_modulus_pa", modulus, 1e4, 1e13)?;
            wall(bore("wall_thickness_mm")?, thickness, modulus, question.poisson)
        }
    }
}

/// Thin: d/(E t) (Korteweg; Wylie and Streeter 1993). Thick, with Poisson's ratio:
/// (2/E)((D^2 + d^2)/(D^2 - d^2) + nu) (Lame's cylinder; Merritt 1967).
fn wall(bore: f64, thickness: f64, modulus: f64, poisson: Option<f64>) -> Result<f64, FlowError> {
    let Some(poisson) = poisson else { return Ok(bore / (modulus * thickness)) };
    let poisson = within("poisson", poisson, 0.0, 0.5)?;
    let outside = bore + 2.0 * thickness;
    let (inside2, outside2) = (bore * bore, outside * outside);
    Ok(2.0 / modulus * ((outside2 + inside2) / (outside2 - inside2) + poisson))
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    const OIL_IN_HOSE: SurgeQuestion = SurgeQuestion {
        bulk_modulus_pa: 1.4e9,
        density_kg_m3: Some(870.0),
        bore_mm: Some(Millimetres(12.7)),
        wall_thickness_mm: Some(Millimetres(3.8)),
        wall_modulus_pa: Some(8e8),
        poisson: None,
        length_m: Some(Metres(2.0)),
        velocity_change_m_s: Some(4.0),
        closure_time_s: None,
        air_fraction: None,
        pressure_pa: None,
        volumetric_expansion_cm3_m_mpa: None,
    };

    #[rstest]
    #[case(SurgeQuestion { bulk_modulus_pa: -1.0, ..OIL_IN_HOSE }, "bulk_modulus_pa")]
    #[case(SurgeQuestion { bore_mm: None, ..OIL_IN_HOSE }, "bore_mm")]
    #[case(SurgeQuestion { wall_modulus_pa: None, ..OIL_IN_HOSE }, "wall_modulus_pa")]
    #[case(SurgeQuestion { wall_thickness_mm: None, ..OIL_IN_HOSE }, "wall_thickness_mm")]
    #[case(SurgeQuestion { poisson: Some(0.7), ..OIL_IN_HOSE }, "poisson")]
    #[case(SurgeQuestion { air_fraction: Some(0.01), ..OIL_IN_HOSE }, "pressure_pa")]
    #[case(SurgeQuestion { air_fraction: Some(1.5), ..OIL_IN_HOSE }, "air_fraction")]
    #[case(SurgeQuestion { closure_time_s: Some(-1.0), ..OIL_IN_HOSE }, "closure_time_s")]
    #[case(SurgeQuestion { volumetric_expansion_cm3_m_mpa: Some(1.0), ..OIL_IN_HOSE }, "volumetric_expansion_cm3_m_mpa")]
    fn an_impossible_line_is_refused_by_the_key(#[case] question: SurgeQuestion, #[case] field: &str) {
        assert_eq!(surge(&question).unwrap_err().field(), field);
    }

    #[test]
    fn air_and_a_soft_wall_slow_the_wave() {
        let speed = |question| surge(&question).unwrap().wave_speed_m_s.unwrap();
        let rigid = SurgeQuestion { wall_thickness_mm: None, wall_modulus_pa: None, ..OIL_IN_HOSE };
        let airy = SurgeQuestion { air_fraction: Some(0.01), pressure_pa: Some(1e6), ..OIL_IN_HOSE };
        assert!(speed(OIL_IN_HOSE) < speed(rigid));
        assert!(speed(airy) < speed(OIL_IN_HOSE));
    }

    #[test]
    fn closing_slower_than_the_wave_returns_softens_the_blow() {
        let rise = |closure_time_s| {
            surge(&SurgeQuestion { closure_time_s, ..OIL_IN_HOSE }).unwrap().pressure_rise_bar.unwrap().get()
        };
        let critical = surge(&OIL_IN_HOSE).unwrap().critical_time_s.unwrap();
        assert_eq!(rise(None), rise(Some(critical)));
        assert!((rise(Some(2.0 * critical)) * 2.0 / rise(None) - 1.0).abs() < 1e-14);
    }
}
