//! The range over which each length of a hose or an end lies, for the strays among its readings.

/// Least and most of each reading, mm: beyond these the trade has no part.
const RANGES_MM: [(&str, (f64, f64)); 11] = [
    ("id_mm", (2.0, 120.0)),
    ("reinforcement_od_mm", (5.0, 140.0)),
    ("cover_od_mm", (6.0, 150.0)),
    ("thread_diameter_mm", (3.0, 120.0)),
    ("tube_od_mm", (2.0, 80.0)),
    ("male_bore_mm", (1.0, 70.0)),
    ("swivel_hex_mm", (8.0, 100.0)),
    ("head_od_mm", (20.0, 200.0)),
    ("head_thickness_mm", (4.0, 25.0)),
    ("bolt_long_mm", (15.0, 200.0)),
    ("bolt_short_mm", (10.0, 120.0)),
];

/// The range of the length with that key; the widest for a key that is none of them.
pub(super) fn range_mm(key: &str) -> (f64, f64) {
    RANGES_MM.iter().find(|(known, _)| *known == key).map_or((0.1, 500.0), |(_, range)| *range)
}
