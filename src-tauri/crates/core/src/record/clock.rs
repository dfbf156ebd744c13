//! A hybrid logical clock: wall time where the wall clock is right, and order always.

use chrono::{DateTime, Utc};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A time of the register: milliseconds since 1970 UTC, and a count within one millisecond.
///
/// An event's time is later than that of every event its device had seen, whatever the device's
/// wall clock says (Kulkarni and others, "Logical physical clocks", 2014). It orders; how old a
/// hose is comes from the dates that people enter.
#[derive(
    Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(deny_unknown_fields)]
pub struct Hlc {
    /// Milliseconds since 1970-01-01 UTC.
    #[ts(type = "number")]
    pub ms: i64,
    /// Position among events of the same millisecond.
    pub count: u32,
}

impl Hlc {
    /// Milliseconds at the end of the year 9999; no event may claim a later time.
    pub const LATEST_MS: i64 = 253_402_300_799_999;

    /// The next time after the latest one seen: the wall clock's if that is later, else the latest
    /// with its count raised.
    pub fn after(latest: Hlc, wall: DateTime<Utc>) -> Hlc {
        let wall = wall.timestamp_millis().clamp(0, Self::LATEST_MS);
        if wall > latest.ms {
            return Hlc { ms: wall, count: 0 };
        }
        match latest.count.checked_add(1) {
            Some(count) => Hlc { ms: latest.ms, count },
            None => Hlc { ms: latest.ms.saturating_add(1), count: 0 },
        }
    }

    /// Whether a device can have written that time.
    pub fn is_plausible(self) -> bool {
        (0..=Self::LATEST_MS).contains(&self.ms)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn wall(ms: i64) -> DateTime<Utc> {
        DateTime::from_timestamp_millis(ms).expect("within chrono's range")
    }

    fn any_time() -> impl Strategy<Value = Hlc> {
        let count = prop_oneof![Just(0), Just(u32::MAX), any::<u32>()];
        (0..=Hlc::LATEST_MS, count).prop_map(|(ms, count)| Hlc { ms, count })
    }

    proptest! {
        #[test]
        fn the_next_time_is_later_whatever_the_wall_clock_says(
            latest in any_time(),
            walls in proptest::collection::vec(-1_000_000_000_000_i64..=Hlc::LATEST_MS, 1..20),
        ) {
            let mut last = latest;
            for ms in walls {
                let next = Hlc::after(last, wall(ms));
                prop_assert!(next > last, "{next:?} does not come after {last:?} at wall {ms}");
                last = next;
            }
        }

        #[test]
        fn a_wall_clock_that_is_ahead_of_all_seen_is_believed(latest in any_time(), ahead in 1..1_000_000_i64) {
            prop_assume!(latest.ms + ahead <= Hlc::LATEST_MS);
            prop_assert_eq!(
                Hlc::after(latest, wall(latest.ms + ahead)),
                Hlc { ms: latest.ms + ahead, count: 0 }
            );
        }

        #[test]
        fn two_devices_that_hear_of_each_other_keep_cause_before_effect(
            start in any_time(),
            turns in proptest::collection::vec((any::<bool>(), any::<bool>(), 0..=Hlc::LATEST_MS), 1..40),
        ) {
            let mut devices = [start, start];
            for (first, hears, ms) in turns {
                let (me, other) = if first { (0, 1) } else { (1, 0) };
                if hears {
                    devices[me] = devices[me].max(devices[other]);
                }
                let before = devices[me];
                devices[me] = Hlc::after(before, wall(ms));
                prop_assert!(devices[me] > before);
                prop_assert!(!hears || devices[me] > devices[other]);
            }
        }
    }

    #[test]
    fn a_clock_set_back_five_years_still_gives_later_times() {
        let before = Hlc::after(Hlc::default(), wall(1_795_600_000_000));
        let after = Hlc::after(before, wall(1_795_600_000_000 - 5 * 365 * 86_400_000));
        assert_eq!(after, Hlc { ms: before.ms, count: 1 });
    }
}
