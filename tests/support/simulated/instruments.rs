//! How each reading is taken: range, strays, leaves and confusions.
//!
//! These figures restate those of the model (`core/src/find`) on purpose: a simulation by the model's
//! own laws needs them, and one that read them from the model would agree with any slip there. Where
//! the model's figures are changed with reason, they are changed here too.

use hosewright_core::catalogue::Catalogue;

/// What a reading is taken with.
#[derive(Debug, Clone)]
pub enum Instrument {
    /// A caliper, over that range; the share `strays` of readings is anything.
    Caliper {
        /// Range that is believed, mm.
        range: (f64, f64),
        /// Share of strays.
        strays: f64,
    },
    /// A gauge with leaves, confused by `width` (a share of the leaf, or its unit), and a share of lapses.
    Gauge {
        /// Leaves.
        leaves: Vec<f64>,
        /// Width of the confusion.
        width: Width,
        /// Share of readings that are any leaf.
        lapse: f64,
    },
    /// The eye: the chance of each answer (column) for each truth (row).
    Eye(&'static [&'static [f64]]),
    /// A second diameter, some threads nearer the body.
    Second,
}

/// Width of a gauge's confusion.
#[derive(Debug, Clone, Copy)]
pub enum Width {
    /// As a share of the leaf.
    Share(f64),
    /// In the unit of the gauge.
    Units(f64),
}

impl Width {
    /// In the unit of the gauge.
    pub fn at(self, leaf: f64) -> f64 {
        match self {
            Width::Share(share) => share * leaf,
            Width::Units(units) => units,
        }
    }
}

/// Two diameters: how many threads apart, the share of strays and of those read in the other order,
/// and how far apart strays lie at most, mm.
pub const THREADS_APART: f64 = 5.0;
/// Share of second diameters that are anything.
pub const SECOND_STRAYS: f64 = 0.02;
/// Share of two diameters that were read in the other order.
pub const SWAPPED: f64 = 0.1;
/// How far a stray second diameter lies from the first at most, mm.
pub const WIDEST: f64 = 3.0;
/// Share of readings that are given of a feature that is not there.
pub const ABSENT: f64 = 0.02;

const TWO: &[&[f64]] = &[&[0.995, 0.005], &[0.005, 0.995]];
const KIND: &[&[f64]] = &[
    &[0.930, 0.004, 0.050, 0.002, 0.001, 0.004, 0.001, 0.004, 0.002, 0.002],
    &[0.004, 0.955, 0.002, 0.020, 0.001, 0.004, 0.002, 0.008, 0.002, 0.002],
    &[0.080, 0.002, 0.900, 0.004, 0.004, 0.002, 0.001, 0.003, 0.002, 0.002],
    &[0.004, 0.030, 0.004, 0.950, 0.002, 0.002, 0.002, 0.003, 0.002, 0.001],
    &[0.002, 0.002, 0.006, 0.004, 0.980, 0.001, 0.002, 0.001, 0.001, 0.001],
    &[0.006, 0.004, 0.002, 0.002, 0.001, 0.970, 0.003, 0.005, 0.006, 0.001],
    &[0.001, 0.002, 0.001, 0.002, 0.001, 0.004, 0.985, 0.002, 0.001, 0.001],
    &[0.010, 0.020, 0.004, 0.006, 0.001, 0.004, 0.002, 0.930, 0.003, 0.020],
    &[0.004, 0.004, 0.006, 0.004, 0.001, 0.020, 0.002, 0.007, 0.950, 0.002],
    &[0.030, 0.030, 0.010, 0.005, 0.001, 0.002, 0.001, 0.060, 0.001, 0.860],
];
const SHOULDER: &[&[f64]] = &[&[0.95, 0.05], &[0.07, 0.93]];
const TAPER: &[&[f64]] = &[&[0.95, 0.05], &[0.07, 0.93]];
const CONE: &[&[f64]] = &[&[0.96, 0.03, 0.01], &[0.03, 0.95, 0.02], &[0.01, 0.04, 0.95]];
const SEAL: &[&[f64]] = &[
    &[0.86, 0.01, 0.01, 0.06, 0.01, 0.01, 0.03, 0.01],
    &[0.01, 0.90, 0.03, 0.01, 0.01, 0.01, 0.01, 0.02],
    &[0.01, 0.02, 0.86, 0.01, 0.06, 0.02, 0.01, 0.01],
    &[0.38, 0.02, 0.02, 0.54, 0.01, 0.01, 0.01, 0.01],
    &[0.03, 0.02, 0.08, 0.01, 0.68, 0.03, 0.01, 0.14],
    &[0.08, 0.01, 0.02, 0.01, 0.02, 0.84, 0.01, 0.01],
    &[0.10, 0.01, 0.01, 0.01, 0.01, 0.02, 0.83, 0.01],
    &[0.03, 0.06, 0.02, 0.01, 0.17, 0.02, 0.01, 0.68],
];
const REINFORCEMENT: &[&[f64]] = &[
    &[0.950, 0.030, 0.005, 0.005, 0.005, 0.005],
    &[0.040, 0.940, 0.005, 0.005, 0.005, 0.005],
    &[0.005, 0.005, 0.880, 0.080, 0.005, 0.025],
    &[0.005, 0.005, 0.120, 0.860, 0.005, 0.005],
    &[0.030, 0.005, 0.005, 0.005, 0.950, 0.005],
    &[0.020, 0.010, 0.040, 0.005, 0.005, 0.920],
];
const LAYERS: &[&[f64]] = &[
    &[0.950, 0.045, 0.002, 0.001, 0.001, 0.001],
    &[0.040, 0.925, 0.032, 0.001, 0.001, 0.001],
    &[0.003, 0.060, 0.890, 0.045, 0.001, 0.001],
    &[0.001, 0.030, 0.040, 0.900, 0.015, 0.014],
    &[0.001, 0.002, 0.010, 0.060, 0.867, 0.060],
    &[0.001, 0.001, 0.002, 0.050, 0.060, 0.886],
];
const COVER: &[&[f64]] = &[&[0.88, 0.02, 0.06, 0.04], &[0.70, 0.27, 0.01, 0.02]];

/// The instruments of all readings.
#[derive(Debug)]
pub struct Instruments(Vec<(&'static str, Instrument)>);

impl Instruments {
    /// With the leaves the catalogue's threads and seats need.
    pub fn of(catalogue: &Catalogue) -> Self {
        let caliper = |least, most, strays| Instrument::Caliper { range: (least, most), strays };
        let gauge =
            |leaves: Vec<f64>, width, lapse| Instrument::Gauge { leaves: sorted(leaves), width, lapse };
        let ends = &catalogue.ends;
        let pitches = ends.iter().filter_map(|end| Some(end.pitch_mm?.get())).collect();
        let flanks = ends.iter().filter_map(|end| Some(end.flank_angle_deg?.get())).collect();
        let seats = ends.iter().filter_map(|end| Some(end.seat_included_angle_deg?.get())).collect();
        Self(vec![
            ("kind", Instrument::Eye(KIND)),
            ("shoulder", Instrument::Eye(SHOULDER)),
            ("gender", Instrument::Eye(TWO)),
            ("thread_diameter_mm", caliper(3.0, 120.0, 0.02)),
            ("pitch_mm", gauge(pitches, Width::Share(0.02), 0.005)),
            ("taper", Instrument::Eye(TAPER)),
            ("second_thread_diameter_mm", Instrument::Second),
            ("flank_angle_deg", gauge(flanks, Width::Units(2.6), 0.02)),
            ("seal", Instrument::Eye(SEAL)),
            ("seat_included_angle_deg", gauge(seats, Width::Units(3.5), 0.002)),
            ("cone", Instrument::Eye(CONE)),
            ("tube_od_mm", caliper(2.0, 80.0, 0.02)),
            ("male_bore_mm", caliper(1.0, 70.0, 0.15)),
            ("swivel_hex_mm", caliper(8.0, 100.0, 0.15)),
            ("head_od_mm", caliper(20.0, 200.0, 0.02)),
            ("head_thickness_mm", caliper(4.0, 25.0, 0.02)),
            ("bolt_long_mm", caliper(15.0, 200.0, 0.02)),
            ("bolt_short_mm", caliper(10.0, 120.0, 0.02)),
            ("id_mm", caliper(2.0, 120.0, 0.02)),
            ("reinforcement_od_mm", caliper(5.0, 140.0, 0.02)),
            ("cover_od_mm", caliper(6.0, 150.0, 0.02)),
            ("reinforcement", Instrument::Eye(REINFORCEMENT)),
            ("layers", Instrument::Eye(LAYERS)),
            ("cover", Instrument::Eye(COVER)),
        ])
    }

    /// What that reading is taken with.
    ///
    /// # Panics
    /// On a key that is no reading.
    pub fn of_key(&self, key: &str) -> &Instrument {
        let found = self.0.iter().find(|(known, _)| *known == key);
        &found.unwrap_or_else(|| panic!("no reading is called {key}")).1
    }
}

fn sorted(mut leaves: Vec<f64>) -> Vec<f64> {
    leaves.sort_by(f64::total_cmp);
    leaves.dedup_by(|a, b| (*a - *b).abs() < 1e-3);
    leaves
}
