//! How much of a label that is stuck round a hose a camera sees well.
//!
//! The camera faces the middle of the code, square to the hose's axis. Across the hose its picture shrinks towards the
//! edges; along the hose it does not. Readers set a code right that lies askew in a plane, not one that is bent.

use crate::quantity::Millimetres;
use std::f64::consts::PI;

/// How far from the cover the camera is held at the nearest, in mm: the shortest distance at which a telephone's
/// camera gives a sharp picture (common practice). Farther away a camera sees more.
const CAMERA_MM: f64 = 100.0;

/// By how much the modules at the edge of a code may be narrower in the picture than those in the middle. Measured on 48
/// rendered pictures each (5 and 8 pixels a module, turned, blurred, noisy): zbar 0.23.92 reads codes of version 2 in 48
/// at 0.2, 47 at 0.25, 26 at 0.3 and none at 0.4; OpenCV 5.0.0 in 43, 42, 4 and none, and in 46 at 0.1.
const NARROWER: f64 = 0.2;

/// The same for codes of many modules, where less of a shift takes a module for its neighbour: zbar 0.23.92 reads one of
/// version 15 in 48 at 0.15, 43 at 0.2 and none at 0.25.
const DENSE_NARROWER: f64 = 0.15;

/// The version of a QR code from which it has many modules: 45 in a row.
const DENSE: i16 = 7;

/// The smallest that a cover may be, as a part of the largest, where the tables have the largest alone: less than in any row
/// that has both (derived; 0.862 is the least of 118 rows, EN 854 1TE DN 5).
pub const LEAST_OF_LARGEST: f64 = 0.86;

/// What a camera sees of a label round a hose.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    /// Diameter over the cover.
    pub cover_od_mm: Millimetres,
    /// Once round the hose.
    pub around_mm: Millimetres,
    /// How wide a code of few modules may be, measured round the hose and without its quiet zone.
    few_mm: Millimetres,
    /// The same of one of many.
    dense_mm: Millimetres,
}

impl Curve {
    /// How wide a code of that version may be, measured round the hose and without its quiet zone.
    pub fn seen_mm(&self, version: i16) -> Millimetres {
        if version < DENSE { self.few_mm } else { self.dense_mm }
    }
}

/// What a camera sees round a hose of that diameter; none where it is no diameter.
pub fn seen(cover_od_mm: Millimetres) -> Option<Curve> {
    let diameter = cover_od_mm.get();
    let wide = |narrower| Millimetres(diameter * half_angle(CAMERA_MM / (diameter / 2.0), narrower));
    (diameter.is_finite() && diameter > 0.0).then(|| Curve {
        cover_od_mm,
        around_mm: Millimetres(PI * diameter),
        few_mm: wide(NARROWER),
        dense_mm: wide(DENSE_NARROWER),
    })
}

/// The angle at the hose's axis from the middle of the code to an edge whose modules are narrower by so much, seen
/// from `distance` radii above the cover: where cos(phi + beta) = 1 - narrower, beta being how far the ray to the
/// edge lies from the one to the middle.
fn half_angle(distance: f64, narrower: f64) -> f64 {
    let cosine = |phi: f64| {
        let beta = libm::atan2(libm::sin(phi), 1.0 + distance - libm::cos(phi));
        libm::cos(phi + beta)
    };
    let (mut sees, mut hidden) = (0.0, libm::acos(1.0 / (1.0 + distance)));
    // The angle halves 60 times: less than a double can tell.
    for _ in 0..60 {
        let middle = (sees + hidden) / 2.0;
        if cosine(middle) >= 1.0 - narrower { sees = middle } else { hidden = middle }
    }
    sees
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    #[test]
    fn no_cover_of_the_tables_is_smaller_than_the_part_of_its_largest_that_is_taken_for_it() {
        let catalogue = Catalogue::embedded();
        let parts = catalogue.hoses.iter().filter_map(|hose| {
            let (least, largest) = hose.cover_od_min_mm.zip(hose.cover_od_max_mm)?;
            Some(least.get() / largest.get())
        });
        let least = parts.fold(f64::INFINITY, f64::min);
        assert!((LEAST_OF_LARGEST..LEAST_OF_LARGEST + 0.01).contains(&least), "{least}");
    }

    /// `tests/vectors/qr_facts.csv`, rows QF-32 to QF-43: the fraction of the circumference, by the same geometry
    /// solved elsewhere.
    #[test]
    fn the_arc_is_that_of_the_table() {
        for (narrower, distance, fraction) in [
            (0.1, 4.0, 0.115_781_41),
            (0.2, 4.0, 0.166_543_31),
            (0.3, 4.0, 0.207_563_55),
            (0.1, 8.0, 0.128_143_81),
            (0.2, 8.0, 0.183_596_36),
            (0.3, 8.0, 0.227_899_09),
            (0.1, 15.0, 0.134_893_47),
            (0.2, 15.0, 0.192_893_34),
            (0.3, 15.0, 0.238_971_17),
            (0.1, 30.0, 0.139_090_4),
            (0.2, 30.0, 0.198_671_54),
            (0.3, 30.0, 0.245_849_8),
        ] {
            let ours = half_angle(distance, narrower) / PI;
            assert!((ours - fraction).abs() < 1e-7, "{narrower} {distance}: {ours}, not {fraction}");
        }
    }

    #[test]
    fn a_thicker_hose_shows_more_and_none_shows_nothing() {
        let widths: Vec<f64> = (5..=80)
            .map(|mm| seen(Millimetres(f64::from(mm))).expect("a diameter").seen_mm(2).get())
            .collect();
        assert!(widths.windows(2).all(|pair| pair[0] < pair[1]), "{widths:?}");
        let curve = seen(Millimetres(25.0)).expect("a diameter");
        assert!(curve.seen_mm(7) < curve.seen_mm(6), "a code of many modules is narrower");
        for none in [0.0, -5.0, f64::NAN, f64::INFINITY] {
            assert_eq!(seen(Millimetres(none)), None);
        }
    }
}
