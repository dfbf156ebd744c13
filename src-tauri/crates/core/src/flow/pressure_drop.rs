//! The line as a whole: what a flow does in a bore, and what it loses on the way.

use super::error::{FlowError, needed, within};
use super::{Elbow, Regime, Walther, friction_factor, velocity};
use crate::quantity::{Bar, Celsius, LitresPerMinute, Metres, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A flow through a line. Flow and bore give the velocity; with the fluid follows the friction,
/// with the length the pressure drop.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FlowQuestion {
    /// Volume flow.
    pub flow_l_min: LitresPerMinute,
    /// Inside diameter.
    pub bore_mm: Millimetres,
    /// Length of the straight line.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length_m: Option<Metres>,
    /// What flows.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fluid: Option<Fluid>,
    /// How warm it is; needed where the viscosity follows from the grade.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temp_c: Option<Celsius>,
    /// Roughness of the bore; none for a hose, whose lining is smooth (common practice).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub roughness_mm: Option<Millimetres>,
    /// Elbows in the line.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub elbows: Vec<Elbow>,
}

/// A fluid, by grade and viscosity index or by its viscosity at the temperature of the line.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(default, deny_unknown_fields)]
pub struct Fluid {
    /// ISO viscosity grade, such as 46.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub iso_vg: Option<f64>,
    /// Viscosity index, such as 95; belongs to the grade.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub viscosity_index: Option<f64>,
    /// Kinematic viscosity at the temperature of the line, in place of grade and index.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub kinematic_viscosity_mm2_s: Option<f64>,
    /// Density; that of mineral oil where only a grade is given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub density_kg_m3: Option<f64>,
}

/// What the flow does. What can not be known from what was given is none.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct FlowAnswer {
    /// Mean velocity.
    pub velocity_m_s: f64,
    /// Reynolds number.
    pub reynolds: Option<f64>,
    /// How it runs.
    pub regime: Option<Regime>,
    /// Darcy friction factor.
    pub friction_factor: Option<f64>,
    /// Pressure lost in line and elbows.
    pub pressure_drop_bar: Option<Bar>,
    /// Viscosity that was reckoned with.
    pub kinematic_viscosity_mm2_s: Option<f64>,
    /// Density that was reckoned with.
    pub density_kg_m3: Option<f64>,
}

impl Fluid {
    /// Kinematic viscosity in mm2/s in the line.
    fn viscosity(&self, temperature: Option<Celsius>) -> Result<f64, FlowError> {
        let grade = [("fluid.iso_vg", self.iso_vg), ("fluid.viscosity_index", self.viscosity_index)];
        if let Some(viscosity) = self.kinematic_viscosity_mm2_s {
            if let Some((field, _)) = grade.into_iter().find(|(_, value)| value.is_some()) {
                return Err(FlowError::Conflict { field, other: "fluid.kinematic_viscosity_mm2_s" });
            }
            return within("fluid.kinematic_viscosity_mm2_s", viscosity, 0.01, 2e7);
        }
        let iso_vg = needed("fluid.iso_vg", self.iso_vg, "fluid (or give kinematic_viscosity_mm2_s)")?;
        let index = needed("fluid.viscosity_index", self.viscosity_index, "fluid.iso_vg")?;
        let temperature = needed("temp_c", temperature, "fluid.iso_vg")?;
        let temp_c = within("temp_c", temperature.get(), -60.0, 250.0)?;
        Walther::of_grade(iso_vg, index)?
            .at(temperature)
            .ok_or(FlowError::OutsideViscosityEquation { temp_c })
    }

    /// Density in kg/m3. Where only the grade is known, that of a mineral hydraulic oil: 868 at
    /// 40 degrees C and 0.6 less for each degree more (common practice; grades 32 to 68 differ by 1 %).
    fn density(&self, temperature: Option<Celsius>) -> Result<Option<f64>, FlowError> {
        match (self.density_kg_m3, self.iso_vg, temperature) {
            (Some(density), _, _) => within("fluid.density_kg_m3", density, 100.0, 20_000.0).map(Some),
            (None, Some(_), Some(temperature)) => Ok(Some(868.0 - 0.6 * (temperature.get() - 40.0))),
            _ => Ok(None),
        }
    }
}

/// Velocity, Reynolds number, friction (64/Re up to Re 2300, Colebrook above), viscosity at
/// temperature (ASTM D341) and pressure drop (Darcy and Weisbach) of a flow through a line.
///
/// # Errors
/// Names the key whose value no line can have, or that is missing beside another.
pub fn flow(question: &FlowQuestion) -> Result<FlowAnswer, FlowError> {
    within("flow_l_min", question.flow_l_min.get(), 0.001, 1e6)?;
    let bore = within("bore_mm", question.bore_mm.get(), 0.1, 1e4)?;
    let roughness = question.roughness_mm.map_or(0.0, Millimetres::get);
    within("roughness_mm", roughness, 0.0, bore / 20.0)?;
    let length = question.length_m.map(|length| within("length_m", length.get(), 0.0, 1e6)).transpose()?;

    let speed = velocity(question.flow_l_min, question.bore_mm);
    let mut answer = FlowAnswer {
        velocity_m_s: speed,
        reynolds: None,
        regime: None,
        friction_factor: None,
        pressure_drop_bar: None,
        kinematic_viscosity_mm2_s: None,
        density_kg_m3: None,
    };
    let Some(fluid) = question.fluid else { return Ok(answer) };
    let viscosity = fluid.viscosity(question.temp_c)?;
    let density = fluid.density(question.temp_c)?;
    let reynolds = speed * bore * 1000.0 / viscosity;
    let friction = friction_factor(reynolds, roughness / bore);
    answer.kinematic_viscosity_mm2_s = Some(viscosity);
    answer.density_kg_m3 = density;
    answer.reynolds = Some(reynolds);
    answer.regime = Some(Regime::at(reynolds));
    answer.friction_factor = Some(friction);

    let elbows = question
        .elbows
        .iter()
        .map(|elbow| elbow.loss(question.bore_mm, friction))
        .sum::<Result<f64, FlowError>>()?;
    answer.pressure_drop_bar = density.zip(length).map(|(density, length)| {
        let velocity_head_pa = density * speed * speed / 2.0;
        Bar((friction * length * 1000.0 / bore + elbows) * velocity_head_pa / 1e5)
    });
    Ok(answer)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    fn question(fluid: Fluid) -> FlowQuestion {
        FlowQuestion {
            flow_l_min: LitresPerMinute(60.0),
            bore_mm: Millimetres(12.7),
            length_m: Some(Metres(3.0)),
            fluid: Some(fluid),
            temp_c: Some(Celsius(40.0)),
            roughness_mm: None,
            elbows: Vec::new(),
        }
    }

    const VG46: Fluid = Fluid {
        iso_vg: Some(46.0),
        viscosity_index: Some(95.0),
        kinematic_viscosity_mm2_s: None,
        density_kg_m3: None,
    };

    #[test]
    fn a_grade_at_40_degrees_has_its_own_number_as_viscosity() {
        let answer = flow(&question(VG46)).unwrap();
        assert!((answer.kinematic_viscosity_mm2_s.unwrap() - 46.0).abs() < 1e-9);
        assert_eq!(answer.density_kg_m3, Some(868.0));
    }

    #[rstest]
    #[case(Fluid { kinematic_viscosity_mm2_s: Some(46.0), ..VG46 }, "fluid.iso_vg")]
    #[case(Fluid { viscosity_index: None, ..VG46 }, "fluid.viscosity_index")]
    #[case(Fluid::default(), "fluid.iso_vg")]
    #[case(Fluid { iso_vg: Some(-46.0), ..VG46 }, "fluid.iso_vg")]
    #[case(Fluid { density_kg_m3: Some(0.9), ..VG46 }, "fluid.density_kg_m3")]
    fn a_fluid_that_can_not_be_is_refused(#[case] fluid: Fluid, #[case] field: &str) {
        assert_eq!(flow(&question(fluid)).unwrap_err().field(), field);
    }

    #[rstest]
    #[case(FlowQuestion { bore_mm: Millimetres(0.0), ..question(VG46) }, "bore_mm")]
    #[case(FlowQuestion { flow_l_min: LitresPerMinute(f64::NAN), ..question(VG46) }, "flow_l_min")]
    #[case(FlowQuestion { length_m: Some(Metres(-1.0)), ..question(VG46) }, "length_m")]
    #[case(FlowQuestion { roughness_mm: Some(Millimetres(5.0)), ..question(VG46) }, "roughness_mm")]
    #[case(FlowQuestion { temp_c: None, ..question(VG46) }, "temp_c")]
    #[case(FlowQuestion { temp_c: Some(Celsius(-300.0)), ..question(VG46) }, "temp_c")]
    #[case(FlowQuestion { elbows: vec![Elbow::default()], ..question(VG46) }, "elbows")]
    fn an_impossible_line_is_refused_by_the_key(#[case] question: FlowQuestion, #[case] field: &str) {
        assert_eq!(flow(&question).unwrap_err().field(), field);
    }
}
