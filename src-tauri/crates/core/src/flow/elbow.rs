//! Losses of elbows and other fittings.

use super::FlowError;
use super::error::{needed, within};
use super::friction::fully_turbulent_steel;
use crate::quantity::{Degrees, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::f64::consts::PI;
use ts_rs::TS;

/// An elbow in the line, in one of three ways.
///
/// - `loss_coefficient` alone: the supplier's figure, for any fitting.
/// - `angle_deg` of 45 or 90 alone: a short elbow, forged or block.
/// - `angle_deg` and `radius_ratio`: a bent tube.
///
/// The losses are those of turbulent flow. In laminar flow an elbow loses more than is reckoned here.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(default, deny_unknown_fields)]
pub struct Elbow {
    /// Angle through which it turns the flow.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub angle_deg: Option<Degrees>,
    /// Radius of its centre line over its bore.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub radius_ratio: Option<f64>,
    /// Loss in velocity heads.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub loss_coefficient: Option<f64>,
}

impl Elbow {
    /// Its loss in velocity heads, in a line of that bore and friction factor.
    ///
    /// # Errors
    /// When it is described in none of the three ways.
    pub fn loss(&self, bore: Millimetres, friction_factor: f64) -> Result<f64, FlowError> {
        match *self {
            Elbow { loss_coefficient: Some(loss), angle_deg: None, radius_ratio: None } => {
                within("elbows.loss_coefficient", loss, 0.0, 1e4)
            }
            Elbow { loss_coefficient: Some(_), .. } => Err(FlowError::Conflict {
                field: "elbows.loss_coefficient",
                other: "elbows.angle_deg or elbows.radius_ratio",
            }),
            Elbow { angle_deg: None, radius_ratio: None, .. } => Err(FlowError::ElbowEmpty),
            Elbow { angle_deg: Some(angle), radius_ratio: None, .. } => short_elbow(angle.get(), bore),
            Elbow { angle_deg, radius_ratio: Some(ratio), .. } => {
                let angle = needed("elbows.angle_deg", angle_deg, "elbows.radius_ratio")?;
                let angle = within("elbows.angle_deg", angle.get(), 1.0, 180.0)?;
                let ratio = within("elbows.radius_ratio", ratio, 0.5, 50.0)?;
                Ok(bent_tube(angle.to_radians(), ratio, friction_factor))
            }
        }
    }
}

/// Technical Paper 410: 30 diameters' worth of fully turbulent friction for 90 degrees, 16 for 45.
fn short_elbow(angle_deg: f64, bore: Millimetres) -> Result<f64, FlowError> {
    let diameters = match angle_deg {
        90.0 => 30.0,
        45.0 => 16.0,
        _ => return Err(FlowError::ElbowAngle { angle_deg }),
    };
    Ok(diameters * fully_turbulent_steel(bore))
}

/// Rennels and Hudson, Pipe Flow (2012), smooth round bend.
fn bent_tube(angle: f64, radius_ratio: f64, friction_factor: f64) -> f64 {
    let sine = (angle / 2.0).sin();
    friction_factor * angle * radius_ratio
        + (0.10 + 2.4 * friction_factor) * sine
        + 6.6 * friction_factor * (sine.sqrt() + sine) / radius_ratio.powf(4.0 * angle / PI)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case(Elbow::default(), "elbows")]
    #[case(Elbow { angle_deg: Some(Degrees(60.0)), ..Elbow::default() }, "elbows")]
    #[case(Elbow { radius_ratio: Some(3.0), ..Elbow::default() }, "elbows.angle_deg")]
    #[case(Elbow { loss_coefficient: Some(-1.0), ..Elbow::default() }, "elbows.loss_coefficient")]
    #[case(Elbow { angle_deg: Some(Degrees(90.0)), radius_ratio: Some(0.0), ..Elbow::default() }, "elbows.radius_ratio")]
    #[case(Elbow { angle_deg: Some(Degrees(90.0)), loss_coefficient: Some(1.0), ..Elbow::default() }, "elbows.loss_coefficient")]
    fn an_elbow_that_is_not_fully_described_is_refused(#[case] elbow: Elbow, #[case] field: &str) {
        assert_eq!(elbow.loss(Millimetres(12.7), 0.03).unwrap_err().field(), field);
    }

    #[test]
    fn a_sharper_bend_loses_more() {
        let loss = |ratio| {
            Elbow { angle_deg: Some(Degrees(90.0)), radius_ratio: Some(ratio), loss_coefficient: None }
                .loss(Millimetres(12.7), 0.02)
                .unwrap()
        };
        assert!(loss(1.0) > loss(1.5) && loss(1.5) > loss(3.0));
    }
}
