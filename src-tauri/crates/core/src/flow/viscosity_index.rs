//! Viscosity index by ASTM D2270, forwards and backwards.

use super::FlowError;
use super::viscosity_index_table::BASIC_VALUES;
use crate::root::root;

/// Thinnest oil at 100 degrees C for which the index is defined, in mm2/s.
const THINNEST: f64 = 2.0;
/// Thickest oil at 100 degrees C that is reckoned with: far above every lubricant.
const THICKEST: f64 = 1e4;

/// What oils of index 0 and 100 have at 40 degrees C, in mm2/s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BasicValues {
    /// Of the oil of index 0.
    pub l: f64,
    /// Of the oil of index 100.
    pub h: f64,
}

/// The basic values for a kinematic viscosity at 100 degrees C, in mm2/s: table 1 of the standard with
/// straight lines between its rows up to 70 mm2/s, its equations above. `None` below 2 mm2/s.
pub fn basic_values(nu_100c: f64) -> Option<BasicValues> {
    if !(THINNEST..=THICKEST).contains(&nu_100c) {
        return None;
    }
    let above = BASIC_VALUES.partition_point(|[y, ..]| *y < nu_100c).max(1);
    let (Some([y0, l0, h0]), Some([y1, l1, h1])) = (BASIC_VALUES.get(above - 1), BASIC_VALUES.get(above))
    else {
        return Some(BasicValues {
            l: (0.8353 * nu_100c + 14.67) * nu_100c - 216.0,
            h: (0.1684 * nu_100c + 11.85) * nu_100c - 97.0,
        });
    };
    let part = (nu_100c - y0) / (y1 - y0);
    Some(BasicValues { l: l0 + part * (l1 - l0), h: h0 + part * (h1 - h0) })
}

/// The viscosity index of an oil from its kinematic viscosities in mm2/s, unrounded. `None` where the
/// standard does not define it: below 2 mm2/s at 100 degrees C.
pub fn viscosity_index(nu_40c: f64, nu_100c: f64) -> Option<f64> {
    let BasicValues { l, h } = basic_values(nu_100c)?;
    Some(if nu_40c > h {
        (l - nu_40c) / (l - h) * 100.0
    } else {
        let n = (h / nu_40c).log10() / nu_100c.log10();
        (10_f64.powf(n) - 1.0) / 0.007_15 + 100.0
    })
}

/// Viscosity at 40 degrees C of the oil of that index that has `nu_100c` at 100 degrees C.
fn nu_at_40c(nu_100c: f64, index: f64) -> Option<f64> {
    let BasicValues { l, h } = basic_values(nu_100c)?;
    Some(if index <= 100.0 {
        l - index / 100.0 * (l - h)
    } else {
        let n = ((index - 100.0) * 0.007_15 + 1.0).log10();
        h / nu_100c.powf(n)
    })
}

/// Kinematic viscosity at 100 degrees C, in mm2/s, of an oil by its grade (ISO 3448: its viscosity
/// at 40 degrees C) and its viscosity index.
///
/// # Errors
/// When that oil would be thinner at 100 degrees C than the index is defined for.
pub(super) fn nu_at_100c(iso_vg: f64, index: f64) -> Result<f64, FlowError> {
    let too_thin = FlowError::TooThin { iso_vg, viscosity_index: index };
    root(THINNEST, THICKEST, |nu_100c| nu_at_40c(nu_100c, index).map_or(f64::NAN, |nu| nu - iso_vg))
        .ok_or(too_thin)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_basic_values_rise_row_by_row_without_a_slip() {
        for pair in BASIC_VALUES.windows(2) {
            let [[y0, l0, h0], [y1, l1, h1]] = [pair[0], pair[1]];
            assert!(y1 > y0 && l1 > l0 && h1 > h0, "{pair:?}");
        }
        // A mistyped digit would show as a jump of the slope against both of its neighbours.
        for rows in BASIC_VALUES.windows(3) {
            for column in [1, 2] {
                let slope =
                    |i: usize| (rows[i + 1][column] - rows[i][column]) / (rows[i + 1][0] - rows[i][0]);
                assert!((slope(1) / slope(0) - 1.0).abs() < 0.25, "column {column} near {rows:?}");
            }
        }
    }

    #[test]
    fn table_and_equations_meet_at_70() {
        let (table, equation) = (basic_values(70.0).unwrap(), basic_values(70.000_001).unwrap());
        assert!((table.l / equation.l - 1.0).abs() < 1e-3, "{table:?} {equation:?}");
        assert!((table.h / equation.h - 1.0).abs() < 1e-3, "{table:?} {equation:?}");
    }

    proptest! {
        #[test]
        fn grade_and_index_come_back(iso_vg in 22.0..1500.0_f64, index in 0.0..350.0_f64) {
            let nu_100c = nu_at_100c(iso_vg, index).unwrap();
            prop_assert!((nu_at_40c(nu_100c, index).unwrap() / iso_vg - 1.0).abs() < 1e-12);
            // The standard's two formulas leave a small gap at an index of 100.
            prop_assert!((viscosity_index(iso_vg, nu_100c).unwrap() - index).abs() < 1e-6);
        }
    }

    #[test]
    fn an_oil_too_thin_for_the_index_is_refused() {
        assert_eq!(nu_at_100c(3.0, 100.0).unwrap_err().field(), "fluid");
        assert_eq!(viscosity_index(5.0, 1.9), None);
    }
}
