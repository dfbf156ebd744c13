//! Every case a finding can be, by the key of its words. A case outside this list can't be named,
//! so a test over [`CASES`] holds that every finding has words in every language.

macro_rules! cases {
    ($($(#[$about:meta])* $name:ident = $key:literal,)*) => {
        $($(#[$about])* pub(super) const $name: &str = $key;)*

        /// The key of every case: its words are `why-<key>` and, where it is no pass, `cure-<key>`.
        /// A case that passes ends in `-ok`.
        pub const CASES: &[&str] = &[$($key),*];
    };
}

cases! {
    HOSE_MISSING = "hose-missing",
    END_MISSING = "end-missing",
    LINE_MISSING = "line-missing",

    WORKING_PRESSURE_MISSING = "working-pressure-missing",
    RELIEF_MISSING = "relief-missing",
    SURGE_MISSING = "surge-missing",
    RELIEF_BELOW_WORKING = "relief-below-working",
    SURGE_BELOW_WORKING = "surge-below-working",
    PRESSURE_OK = "pressure-ok",
    PRESSURE_UNVERIFIED = "pressure-unverified",
    PRESSURE_PROXY = "pressure-proxy",
    PRESSURE_ABOVE_RATING = "pressure-above-rating",
    PRESSURE_ABOVE_PROXY = "pressure-above-proxy",
    PRESSURE_UNKNOWN = "pressure-unknown",

    HEAT_MISSING = "heat-missing",
    HEAT_OK = "heat-ok",
    HEAT_UNVERIFIED = "heat-unverified",
    HEAT_ABOVE_LIMIT = "heat-above-limit",
    FLUID_HEAT_OK = "fluid-heat-ok",
    FLUID_HEAT_UNVERIFIED = "fluid-heat-unverified",
    FLUID_HEAT_ABOVE_LIMIT = "fluid-heat-above-limit",
    COLD_MISSING = "cold-missing",
    COLD_OK = "cold-ok",
    COLD_UNVERIFIED = "cold-unverified",
    COLD_BELOW_LIMIT = "cold-below-limit",
    FROST_OK = "frost-ok",
    FROST_UNVERIFIED = "frost-unverified",
    FROST_BELOW_LIMIT = "frost-below-limit",
    AMBIENT_MISSING = "ambient-missing",
    AMBIENT_OK = "ambient-ok",
    AMBIENT_UNVERIFIED = "ambient-unverified",
    AMBIENT_ABOVE_LIMIT = "ambient-above-limit",

    FLUID_MISSING = "fluid-missing",
    FLUID_UNKNOWN = "fluid-unknown",
    FLUID_EXCLUDED = "fluid-excluded",
    FLUID_NOT_NAMED = "fluid-not-named",
    FLUID_TUBE_UNKNOWN = "fluid-tube-unknown",
    FLUID_UNRATED = "fluid-unrated",
    FLUID_DESTROYS_TUBE = "fluid-destroys-tube",
    FLUID_LIMITED = "fluid-limited",
    FLUID_UNVERIFIED = "fluid-unverified",
    FLUID_OK = "fluid-ok",
    OUT_OF_SCOPE = "out-of-scope",

    BEND_MISSING = "bend-missing",
    BEND_OK = "bend-ok",
    BEND_UNVERIFIED = "bend-unverified",
    BEND_TOO_TIGHT = "bend-too-tight",
    BEND_LIMIT_UNKNOWN = "bend-limit-unknown",

    DUTY_OK = "duty-ok",
    DUTY_COVER_MISSING = "duty-cover-missing",
    DUTY_WIRE_CONDUCTS = "duty-wire-conducts",

    VACUUM_MISSING = "vacuum-missing",
    VACUUM_OK = "vacuum-ok",
    VACUUM_UNVERIFIED = "vacuum-unverified",
    VACUUM_TOO_DEEP = "vacuum-too-deep",
    VACUUM_UNRATED = "vacuum-unrated",
    SUCTION_HELIX_OK = "suction-helix-ok",
    SUCTION_HELIX_MISSING = "suction-helix-missing",

    FLOW_MISSING = "flow-missing",
    FLOW_OK = "flow-ok",
    FLOW_TOO_FAST = "flow-too-fast",

    END_OK = "end-ok",
    END_NOT_READ = "end-not-read",
    END_UNSETTLED = "end-unsettled",
    END_DIFFERS = "end-differs",
    END_GENDER_MISSING = "end-gender-missing",
    END_FORM_MISSING = "end-form-missing",
    END_DROP_MISSING = "end-drop-missing",
    SIZE_OK = "size-ok",
    SIZE_JUMP = "size-jump",
    SIZE_UNKNOWN = "size-unknown",

    ORIGINAL_MISSING = "original-missing",
    ORIGINAL_UNKNOWN = "original-unknown",
    ORIGINAL_PRESSURE_OK = "original-pressure-ok",
    ORIGINAL_PRESSURE_ABOVE = "original-pressure-above",
    ORIGINAL_PRESSURE_UNKNOWN = "original-pressure-unknown",
    PRINTED_PRESSURE_OK = "printed-pressure-ok",
    PRINTED_PRESSURE_ABOVE = "printed-pressure-above",
    ORIGINAL_BORE_OK = "original-bore-ok",
    ORIGINAL_BORE_LARGER = "original-bore-larger",
    ORIGINAL_BORE_SMALLER = "original-bore-smaller",
    ORIGINAL_HEAT_OK = "original-heat-ok",
    ORIGINAL_HEAT_ABOVE = "original-heat-above",
    ORIGINAL_HEAT_MEASURED = "original-heat-measured",
    ORIGINAL_COLD_OK = "original-cold-ok",
    ORIGINAL_COLD_BELOW = "original-cold-below",
    ORIGINAL_COLD_MEASURED = "original-cold-measured",
    ORIGINAL_BEND_OK = "original-bend-ok",
    ORIGINAL_BEND_TIGHTER = "original-bend-tighter",
    ORIGINAL_VACUUM_OK = "original-vacuum-ok",
    ORIGINAL_VACUUM_DEEPER = "original-vacuum-deeper",
    ORIGINAL_VACUUM_NOT_ASKED = "original-vacuum-not-asked",

    LENGTH_MISSING = "length-missing",
    CUTOFF_MISSING = "cutoff-missing",
    CUT_LENGTH_OK = "cut-length-ok",
    CUT_LENGTH_IMPOSSIBLE = "cut-length-impossible",
    LENGTH_TOLERANCE_UNKNOWN = "length-tolerance-unknown",
    TURN_OK = "turn-ok",
    TURN_MISSING = "turn-missing",

    OVERRIDE_TAKEN = "override-taken",
    OVERRIDE_REFUSED = "override-refused",
    OVERRIDE_UNSIGNED = "override-unsigned",

    ALTERNATIVE_TWIN = "alternative-twin-ok",
    ALTERNATIVE_PRESSURE = "alternative-pressure-ok",
    ALTERNATIVE_BEND = "alternative-bend-ok",
    ALTERNATIVE_SAME = "alternative-same",
}
