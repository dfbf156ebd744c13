//! Where more failed than was to be expected.

use super::{Group, LivesBy, Watched, group};
use hosewright_core::life::{Excess, Record, Weibull, excesses, fit};
use hosewright_store::PlaceAt;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::{BTreeMap, HashMap};
use ts_rs::TS;

/// A place against what was to be expected there.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PlaceLives {
    /// Which.
    pub at: PlaceAt,
    /// Failures there against those that hoses of their types and ages have in the whole register.
    pub excess: Excess,
    /// So many are not to be had by chance, even by the worst of all places that were looked at (5 %).
    pub stands_out: bool,
}

/// Places that are listed.
const LISTED: usize = 20;
/// The chance below which a place stands out.
const BY_CHANCE: f64 = 0.05;

/// The places with most failures against what was to be expected, and how many were looked at. What is expected of a hose is
/// by the fit of its type, or of all hoses where its type has too few failures; the place's own failures are among those, so
/// that a bad place looks a little better than it is.
pub(super) fn places(watched: &[Watched<'_>]) -> (Vec<PlaceLives>, usize) {
    let laws = Laws::of(watched);
    let mut sums: HashMap<String, (&PlaceAt, usize, f64)> = HashMap::new();
    for one in watched {
        let Some(law) = laws.law(one) else { continue };
        let at = &one.spell.at;
        let sum = sums.entry(at.place.to_string()).or_insert((at, 0, 0.0));
        sum.1 += usize::from(one.record.failed());
        sum.2 += law.hazard(one.record.time()) - law.hazard(one.record.entered());
    }
    let mut all: Vec<(&PlaceAt, usize, f64)> = sums.into_values().collect();
    all.sort_by_key(|(at, ..)| at.place.to_string());
    let seen: Vec<(usize, f64)> = all.iter().map(|(_, seen, expected)| (*seen, *expected)).collect();
    let mut told: Vec<PlaceLives> = all
        .iter()
        .zip(excesses(&seen))
        .filter_map(|((at, ..), excess)| {
            let excess = excess?;
            Some(PlaceLives { at: (*at).clone(), excess, stands_out: excess.by_chance <= BY_CHANCE })
        })
        .collect();
    let looked_at = told.len();
    told.retain(|place| place.excess.seen as f64 > place.excess.expected && place.excess.seen > 1);
    told.sort_by(|a, b| {
        let chance = a.excess.by_chance.total_cmp(&b.excess.by_chance);
        chance.then(b.excess.ratio_ci95[0].total_cmp(&a.excess.ratio_ci95[0]))
    });
    told.truncate(LISTED);
    (told, looked_at)
}

/// How long hoses last, by type.
struct Laws {
    by_type: BTreeMap<Group, Weibull>,
    of_all: Option<Weibull>,
}

impl Laws {
    fn of(watched: &[Watched<'_>]) -> Self {
        let law = |records: &[Record]| fit(records).ok().map(|fit| fit.weibull);
        let mut by_type: BTreeMap<Group, Vec<Record>> = BTreeMap::new();
        for one in watched {
            by_type.entry(group(one.spell, LivesBy::Hose)).or_default().push(one.record);
        }
        let all: Vec<Record> = watched.iter().map(|one| one.record).collect();
        let known = by_type.into_iter().filter_map(|(of, records)| Some((of, law(&records)?)));
        Self { by_type: known.collect(), of_all: law(&all) }
    }

    fn law(&self, one: &Watched<'_>) -> Option<&Weibull> {
        self.by_type.get(&group(one.spell, LivesBy::Hose)).or(self.of_all.as_ref())
    }
}
