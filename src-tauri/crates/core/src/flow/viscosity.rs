//! Kinematic viscosity at a temperature, by ASTM D341.

use super::FlowError;
use super::error::within;
use super::viscosity_index::nu_at_100c;
use crate::quantity::Celsius;

/// Walther's straight line: log10 log10 Z = a - b log10 T, with T in kelvin and Z nearly
/// the viscosity and 0.7 (ASTM D341, equations 1 to 3; for 0.21 to 2e7 mm2/s).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Walther {
    /// Intercept.
    pub a: f64,
    /// Slope.
    pub b: f64,
}

impl Walther {
    /// The line through two known points: temperature, and kinematic viscosity in mm2/s.
    pub fn through((t1, nu1): (Celsius, f64), (t2, nu2): (Celsius, f64)) -> Self {
        let (x1, x2) = (log_kelvin(t1), log_kelvin(t2));
        let (y1, y2) = (z(nu1).log10().log10(), z(nu2).log10().log10());
        let b = (y1 - y2) / (x2 - x1);
        Self { a: y1 + b * x1, b }
    }

    /// The line of an oil by its ISO viscosity grade (ISO 3448: mm2/s at 40 degrees C, plus or minus 10 %)
    /// and its viscosity index.
    ///
    /// # Errors
    /// When grade or index are out of range, or describe an oil too thin for the index.
    pub fn of_grade(iso_vg: f64, viscosity_index: f64) -> Result<Self, FlowError> {
        within("fluid.iso_vg", iso_vg, 2.0, 5000.0)?;
        within("fluid.viscosity_index", viscosity_index, 0.0, 400.0)?;
        let nu_100c = nu_at_100c(iso_vg, viscosity_index)?;
        Ok(Self::through((Celsius(40.0), iso_vg), (Celsius(100.0), nu_100c)))
    }

    /// Kinematic viscosity in mm2/s at a temperature; `None` outside the standard's range.
    pub fn at(self, temperature: Celsius) -> Option<f64> {
        let z = 10_f64.powf(10_f64.powf(self.a - self.b * log_kelvin(temperature)));
        let m = z - 0.7;
        let nu = m - (-0.7487 - 3.295 * m + 0.6119 * m * m - 0.3193 * m.powi(3)).exp();
        (0.21..=2e7).contains(&nu).then_some(nu)
    }
}

fn log_kelvin(temperature: Celsius) -> f64 {
    (temperature.get() + 273.15).log10()
}

/// Z of the standard. The exponential counts below 2 mm2/s only.
fn z(nu: f64) -> f64 {
    nu + 0.7 + (-1.47 - 1.84 * nu - 0.51 * nu * nu).exp()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_known_points_come_back() {
        for (nu1, nu2) in [(46.0, 6.8), (3000.0, 90.0), (10.0, 2.6), (3.0, 1.1), (1.0, 0.5)] {
            let line = Walther::through((Celsius(40.0), nu1), (Celsius(100.0), nu2));
            // The standard's own inverse of Z is an approximation, the worse the thinner.
            let allowed = |nu: f64| if nu < 2.0 { 2e-3 } else { 5e-5 };
            for (t, nu) in [(40.0, nu1), (100.0, nu2)] {
                let back = line.at(Celsius(t)).unwrap();
                assert!((back / nu - 1.0).abs() < allowed(nu), "{back} for {nu}");
            }
        }
    }

    #[test]
    fn oil_thins_as_it_warms() {
        let line = Walther::of_grade(46.0, 95.0).unwrap();
        let nus: Vec<f64> = (-30..=120).step_by(10).map(|t| line.at(Celsius(t.into())).unwrap()).collect();
        assert!(nus.windows(2).all(|pair| pair[1] < pair[0]), "{nus:?}");
    }

    #[test]
    fn outside_the_standards_range_there_is_no_answer() {
        assert_eq!(Walther::of_grade(1000.0, 50.0).unwrap().at(Celsius(-60.0)), None);
    }
}
