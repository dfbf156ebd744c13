//! Friction in a straight line: the Darcy friction factor.

use crate::quantity::Millimetres;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Reynolds number up to which the flow is taken as laminar.
const LAMINAR_UP_TO: f64 = 2300.0;
/// Reynolds number up to which the flow may be either; Colebrook is used there, the higher of both.
const TRANSITIONAL_UP_TO: f64 = 4000.0;

/// How the oil runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Regime {
    /// In layers, Reynolds number up to 2300.
    Laminar,
    /// Neither one nor the other, up to 4000: friction is uncertain.
    Transitional,
    /// Turbulent.
    Turbulent,
}

impl Regime {
    /// The regime at a Reynolds number.
    pub fn at(reynolds: f64) -> Self {
        if reynolds <= LAMINAR_UP_TO {
            Self::Laminar
        } else if reynolds <= TRANSITIONAL_UP_TO {
            Self::Transitional
        } else {
            Self::Turbulent
        }
    }
}

/// Darcy friction factor: 64/Re (Hagen and Poiseuille) while laminar, Colebrook above.
pub fn friction_factor(reynolds: f64, relative_roughness: f64) -> f64 {
    match Regime::at(reynolds) {
        Regime::Laminar => 64.0 / reynolds,
        Regime::Transitional | Regime::Turbulent => colebrook(reynolds, relative_roughness),
    }
}

/// Colebrook 1939: 1/sqrt(f) = -2 log10(roughness / 3.7 + 2.51 / (Re sqrt(f))), solved for
/// x = 1/sqrt(f) by Newton's method from Haaland's explicit formula (1983).
///
/// The equation is concave and rising in x, so that Newton's steps can not miss.
fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    let rough = relative_roughness / 3.7;
    let smooth = 2.51 / reynolds;
    let mut x = -1.8 * ((6.9 / reynolds) + rough.powf(1.11)).log10();
    for _ in 0..20 {
        let inside = rough + smooth * x;
        let residual = x + 2.0 * inside.log10();
        let slope = 1.0 + 2.0 * std::f64::consts::LOG10_E * smooth / inside;
        let step = residual / slope;
        x -= step;
        if step.abs() <= f64::EPSILON * x {
            break;
        }
    }
    1.0 / (x * x)
}

/// Friction factor of clean steel pipe in fully turbulent flow, on which the equivalent-length
/// method of Technical Paper 410 bases the losses of elbows.
///
/// The paper tabulates it; this gives the table's values: Colebrook at Re = 7.5e6 m^-1 times the
/// bore, with the roughness of bare carbon steel by Farshad and Rieke 2006,
/// 0.0014 (d/in)^-1.0112 of the bore. Basis: reference-library (fluids 1.3.1, PyPI).
pub fn fully_turbulent_steel(bore: Millimetres) -> f64 {
    let inches = bore.get() / Millimetres::PER_INCH;
    colebrook(7.5e6 * bore.get() / 1000.0, 0.0014 * inches.powf(-1.0112))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn colebrooks_equation_is_solved_to_the_last_digits(
            reynolds in 2300.1..1e8_f64,
            relative_roughness in prop_oneof![Just(0.0), 1e-7..0.05_f64],
        ) {
            let x = 1.0 / friction_factor(reynolds, relative_roughness).sqrt();
            let residual = x + 2.0 * (relative_roughness / 3.7 + 2.51 * x / reynolds).log10();
            prop_assert!(residual.abs() < 1e-12, "{residual:e}");
        }
    }

    #[test]
    fn the_regime_changes_at_2300_and_4000() {
        assert_eq!(Regime::at(2300.0), Regime::Laminar);
        assert_eq!(Regime::at(2300.1), Regime::Transitional);
        assert_eq!(Regime::at(4000.0), Regime::Transitional);
        assert_eq!(Regime::at(4000.1), Regime::Turbulent);
    }
}
