//! Every case a finding can be, by the key of its words. A case outside this list can't be named,
//! so a test over [`CASES`] holds that every finding has words in every language.

use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What a finding can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Case {
    /// The key of its words, such as `pressure-above-rating`: `why-<key>` and, where it is no pass, `cure-<key>`. One
    /// that passes ends in `-ok`.
    #[serde(rename = "case")]
    pub key: &'static str,
    /// Who asks it.
    pub asked_by: AskedBy,
    /// Whether nothing is known to be over its limit: something is not known, or not for sure.
    pub open: bool,
}

/// Who asks what a finding is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum AskedBy {
    /// The line asks it of its hose, also of one that sits there already.
    Line,
    /// Making the hose, or putting it in another's place.
    Making,
}

macro_rules! cases {
    ($($asked_by:ident { $($name:ident = $key:literal $($open:ident)?,)* })*) => {
        $($(pub(crate) const $name: Case =
            Case { key: $key, asked_by: AskedBy::$asked_by, open: cases!(@ $($open)?) };)*)*

        /// Every case.
        pub const CASES: &[Case] = &[$($($name),*),*];
    };
    (@) => { false };
    (@ open) => { true };
}

cases! {
    Making {
        HOSE_MISSING = "hose-missing" open,
        END_MISSING = "end-missing" open,
        LINE_MISSING = "line-missing" open,
    }

    Line {
        WORKING_PRESSURE_MISSING = "working-pressure-missing" open,
        RELIEF_MISSING = "relief-missing" open,
        SURGE_MISSING = "surge-missing" open,
        SURGE_RECKONED = "surge-reckoned" open,
        SURGE_ESTIMATED = "surge-estimated" open,
        SURGE_ESTIMATED_ABOVE = "surge-estimated-above" open,
        RELIEF_BELOW_WORKING = "relief-below-working",
        SURGE_BELOW_WORKING = "surge-below-working",
        PRESSURE_OK = "pressure-ok",
        PRESSURE_UNVERIFIED = "pressure-unverified" open,
        PRESSURE_PROXY = "pressure-proxy" open,
        PRESSURE_ABOVE_RATING = "pressure-above-rating",
        PRESSURE_ABOVE_PROXY = "pressure-above-proxy" open,
        PRESSURE_UNKNOWN = "pressure-unknown" open,

        HEAT_MISSING = "heat-missing" open,
        HEAT_OK = "heat-ok",
        HEAT_UNVERIFIED = "heat-unverified" open,
        HEAT_ABOVE_LIMIT = "heat-above-limit",
        FLUID_HEAT_OK = "fluid-heat-ok",
        FLUID_HEAT_UNVERIFIED = "fluid-heat-unverified" open,
        FLUID_HEAT_ABOVE_LIMIT = "fluid-heat-above-limit",
        COLD_MISSING = "cold-missing" open,
        COLD_OK = "cold-ok",
        COLD_UNVERIFIED = "cold-unverified" open,
        COLD_BELOW_LIMIT = "cold-below-limit",
        FROST_OK = "frost-ok",
        FROST_UNVERIFIED = "frost-unverified" open,
        FROST_BELOW_LIMIT = "frost-below-limit",
        AMBIENT_MISSING = "ambient-missing" open,
        AMBIENT_OK = "ambient-ok",
        AMBIENT_UNVERIFIED = "ambient-unverified" open,
        AMBIENT_ABOVE_LIMIT = "ambient-above-limit",

        FLUID_MISSING = "fluid-missing" open,
        FLUID_UNKNOWN = "fluid-unknown" open,
        FLUID_EXCLUDED = "fluid-excluded",
        FLUID_NOT_NAMED = "fluid-not-named",
        FLUID_TUBE_UNKNOWN = "fluid-tube-unknown" open,
        FLUID_UNRATED = "fluid-unrated" open,
        FLUID_DESTROYS_TUBE = "fluid-destroys-tube",
        FLUID_LIMITED = "fluid-limited",
        FLUID_UNVERIFIED = "fluid-unverified" open,
        FLUID_OK = "fluid-ok",
        OUT_OF_SCOPE = "out-of-scope",

        BEND_MISSING = "bend-missing" open,
        BEND_OK = "bend-ok",
        BEND_ESTIMATED_OK = "bend-estimated-ok",
        BEND_ESTIMATED_NEAR = "bend-estimated-near" open,
        BEND_UNVERIFIED = "bend-unverified" open,
        BEND_TOO_TIGHT = "bend-too-tight",
        BEND_LIMIT_UNKNOWN = "bend-limit-unknown" open,

        DUTY_OK = "duty-ok",
        DUTY_COVER_MISSING = "duty-cover-missing" open,
        DUTY_WIRE_CONDUCTS = "duty-wire-conducts",

        VACUUM_MISSING = "vacuum-missing" open,
        VACUUM_OK = "vacuum-ok",
        VACUUM_UNVERIFIED = "vacuum-unverified" open,
        VACUUM_TOO_DEEP = "vacuum-too-deep",
        VACUUM_UNRATED = "vacuum-unrated" open,
        SUCTION_HELIX_OK = "suction-helix-ok",
        SUCTION_HELIX_MISSING = "suction-helix-missing",

        FLOW_MISSING = "flow-missing" open,
        FLOW_OK = "flow-ok",
        FLOW_TOO_FAST = "flow-too-fast",
        FLOW_TOO_FAST_SIZE = "flow-too-fast-size",
        FLOW_TOO_FAST_STOPPED = "flow-too-fast-stopped",
    }

    Making {
        END_OK = "end-ok",
        END_NOT_READ = "end-not-read" open,
        END_UNSETTLED = "end-unsettled" open,
        END_DIFFERS = "end-differs",
        ADAPTER_MISFIT = "adapter-misfit",
        ADAPTERS_STACKED = "adapters-stacked",
        END_GENDER_MISSING = "end-gender-missing" open,
        END_FORM_MISSING = "end-form-missing" open,
        END_DROP_MISSING = "end-drop-missing" open,
        SIZE_OK = "size-ok",
        SIZE_JUMP = "size-jump",
        SIZE_UNKNOWN = "size-unknown" open,

        ORIGINAL_MISSING = "original-missing" open,
        ORIGINAL_UNKNOWN = "original-unknown" open,
        ORIGINAL_PRESSURE_OK = "original-pressure-ok",
        ORIGINAL_PRESSURE_ABOVE = "original-pressure-above",
        ORIGINAL_PRESSURE_UNKNOWN = "original-pressure-unknown" open,
        ORIGINAL_EDITION_OPEN = "original-edition-open",
        ORIGINAL_EDITION_NEWER = "original-edition-newer-ok",
        ORIGINAL_EDITION_OLDER = "original-edition-older-ok",
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

        LENGTH_MISSING = "length-missing" open,
        CUTOFF_MISSING = "cutoff-missing" open,
        CUT_LENGTH_OK = "cut-length-ok",
        CUT_LENGTH_IMPOSSIBLE = "cut-length-impossible",
        LENGTH_TOLERANCE_UNKNOWN = "length-tolerance-unknown" open,
        TURN_OK = "turn-ok",
        TURN_MISSING = "turn-missing" open,

        ROUTE_TRAVEL_MISSING = "route-travel-missing" open,
        ROUTE_RIGID_ASSUMED = "route-rigid-assumed",
        ROUTE_DROP_ASSUMED = "route-drop-assumed",
        ROUTE_CHANGE_OK = "route-change-ok",
        ROUTE_CHANGE_UNVERIFIED = "route-change-unverified" open,
        ROUTE_CHANGE_TAKEN = "route-change-taken",
        ROUTE_STRAIGHT_LINE = "route-straight-line-ok",
        ROUTE_NEAR_LIMIT = "route-near-limit",
        ROUTE_RIVAL = "route-rival",
        ROUTE_BEHIND_OK = "route-behind-ok",
        ROUTE_BEHIND_SHORT = "route-behind-short",
        ROUTE_BEHIND_NONE = "route-behind-none",
        ROUTE_TWIST_OK = "route-twist-ok",
        ROUTE_TWIST = "route-twist",
        ROUTE_TURN_OK = "route-turn-ok",
        ROUTE_TURN_NEEDED = "route-turn-needed",
        ROUTE_TURN_DIFFERS = "route-turn-differs",
        ROUTE_TOO_SHORT = "route-too-short",
        ROUTE_OUT_OF_REACH = "route-out-of-reach",
        ROUTE_UNSETTLED = "route-unsettled" open,
        ROUTE_NO_LENGTH = "route-no-length",

        OVERRIDE_TAKEN = "override-taken",
        OVERRIDE_REFUSED = "override-refused",
        OVERRIDE_UNSIGNED = "override-unsigned",

        ALTERNATIVE_TWIN = "alternative-twin-ok",
        ALTERNATIVE_PRESSURE = "alternative-pressure-ok",
        ALTERNATIVE_BEND = "alternative-bend-ok",
        ALTERNATIVE_PRESSURE_LESS = "alternative-pressure-less",
        ALTERNATIVE_BEND_WIDER = "alternative-bend-wider",
        ALTERNATIVE_SAME = "alternative-same",

        BELONGS_BORE = "belongs-bore",
        BELONGS_ENDS = "belongs-ends",
        BELONGS_SHORTER = "belongs-shorter",
        BELONGS_LONGER = "belongs-longer",
        CIRCUIT_SISTER_WEAKER = "circuit-sister-weaker",
        CIRCUIT_WEAKER = "circuit-weaker",
        CIRCUIT_RELIEF_ABOVE = "circuit-relief-above",
        CIRCUIT_UNKNOWN = "circuit-unknown" open,
        CIRCUIT_OK = "circuit-ok",
        FAILED_BEFORE = "failed-before",
        FAILED_REPEATEDLY = "failed-repeatedly",
    }
}
