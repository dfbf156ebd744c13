//! Chance times consequence: which hose to change first.

use super::DueRow;
use crate::catalogue::{Catalogue, Stake};
use crate::life::{Record, Weibull, fit};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// Failures from which a fit is used for single hoses (common practice: below it the bounds are wider than what is told).
pub const FEWEST_FAILURES: usize = 5;

/// Mean length of a year.
const YEAR_DAYS: f64 = 365.25;

/// Where chances come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ChanceFrom {
    /// The lives of the fleet's own hoses: the chance to fail in the days ahead, given that it has lasted so far.
    Life,
    /// Too few failures for that: the part of its limit of age that is used up by then, which is no chance but puts the
    /// oldest first.
    Age,
}

/// Records of lives in years, by the hose's standard and type; none is not known.
pub type Lives = BTreeMap<Option<(String, String)>, Vec<Record>>;

/// How likely hoses are to fail in the days ahead.
#[derive(Debug, Clone, PartialEq)]
pub struct Chances {
    ahead_days: u32,
    failures: usize,
    fleet: Option<Weibull>,
    types: BTreeMap<(String, String), Weibull>,
}

/// The chances of a fleet's hoses in so many days ahead: of each type that has failures enough its own, of the others
/// that of all. All are of one kind, so that they can be put in one order.
pub fn chances(lives: &Lives, ahead_days: u32) -> Chances {
    let all: Vec<Record> = lives.values().flatten().copied().collect();
    let fleet = fitted(&all);
    let types = lives.iter().filter_map(|(of, records)| Some((of.clone()?, fitted(records)?)));
    let types = if fleet.is_some() { types.collect() } else { BTreeMap::new() };
    Chances { ahead_days, failures: failures(&all), fleet, types }
}

fn failures(records: &[Record]) -> usize {
    records.iter().filter(|record| record.failed()).count()
}

fn fitted(records: &[Record]) -> Option<Weibull> {
    (failures(records) >= FEWEST_FAILURES).then(|| fit(records).ok()).flatten().map(|fit| fit.weibull)
}

/// How likely one hose is to fail.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chance {
    /// From 0 to 1.
    pub chance: f64,
    /// What it is.
    pub from: ChanceFrom,
}

impl Chances {
    /// How many days ahead.
    pub fn ahead_days(&self) -> u32 {
        self.ahead_days
    }

    /// Failures that are known of.
    pub fn failures(&self) -> usize {
        self.failures
    }

    /// Where they come from.
    pub fn from(&self) -> ChanceFrom {
        if self.fleet.is_some() { ChanceFrom::Life } else { ChanceFrom::Age }
    }

    /// The chance of one hose; none where its age is not known.
    pub fn of(
        &self,
        hose: Option<&(String, String)>,
        new_on: Option<NaiveDate>,
        row: &DueRow,
        today: NaiveDate,
    ) -> Option<Chance> {
        let ahead = f64::from(self.ahead_days);
        let Some(fleet) = self.fleet else {
            let (since, due) = (row.since?, row.due?);
            let whole = (due - since).num_days() as f64;
            let used = (today - since).num_days() as f64 + ahead;
            let chance = if whole > 0.0 { (used / whole).clamp(0.0, 1.0) } else { 1.0 };
            return Some(Chance { chance, from: ChanceFrom::Age });
        };
        let life = hose.and_then(|of| self.types.get(of)).unwrap_or(&fleet);
        let age = (today - new_on?).num_days().max(0) as f64 / YEAR_DAYS;
        let (now, then) = (life.survival(age), life.survival(age + ahead / YEAR_DAYS));
        // Where nothing is left of the curve it has outlived all that was ever seen.
        let chance = if now > 0.0 { (1.0 - then / now).clamp(0.0, 1.0) } else { 1.0 };
        Some(Chance { chance, from: ChanceFrom::Life })
    }
}

/// What says how bad a failure would be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ConsequenceWhy {
    /// Someone works or passes beside it.
    SomeoneBeside,
    /// It holds a load up.
    LoadHeldUp,
    /// A hot surface lies within reach of a jet.
    HotSurface,
    /// Help and spares are far away.
    Remote,
    /// None of these.
    None,
    /// Nobody has said.
    NotSaid,
    /// The owner's own word.
    Owner,
}

impl From<Stake> for ConsequenceWhy {
    fn from(stake: Stake) -> Self {
        match stake {
            Stake::SomeoneBeside => ConsequenceWhy::SomeoneBeside,
            Stake::LoadHeldUp => ConsequenceWhy::LoadHeldUp,
            Stake::HotSurface => ConsequenceWhy::HotSurface,
            Stake::Remote => ConsequenceWhy::Remote,
        }
    }
}

/// How bad a failure would be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Consequence {
    /// From 1 to 5.
    pub weight: u8,
    /// What says so, the gravest first.
    pub why: Vec<ConsequenceWhy>,
}

/// How bad a failure at a place would be: the owner's word, else the gravest of what is at stake there by the table.
pub fn consequence(catalogue: &Catalogue, stakes: Option<&[Stake]>, owner: Option<u8>) -> Consequence {
    if let Some(weight) = owner {
        return Consequence { weight, why: vec![ConsequenceWhy::Owner] };
    }
    let weight = |key: &str| {
        let row = catalogue.stakes.iter().find(|row| row.key == key);
        // A stake without a row is as grave as can be, and a test holds that each has one.
        row.map_or(5, |row| row.weight)
    };
    let Some(stakes) = stakes else {
        return Consequence { weight: weight("not-said"), why: vec![ConsequenceWhy::NotSaid] };
    };
    let mut held: Vec<(u8, Stake)> = stakes.iter().map(|stake| (weight(stake.name()), *stake)).collect();
    held.sort_by(|one, other| other.0.cmp(&one.0).then(one.1.cmp(&other.1)));
    match held.first() {
        Some((weight, _)) => {
            Consequence { weight: *weight, why: held.iter().map(|(_, stake)| (*stake).into()).collect() }
        }
        None => Consequence { weight: weight("none"), why: vec![ConsequenceWhy::None] },
    }
}

/// Chance times consequence of one hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Risk {
    /// From 0 to 1.
    pub chance: f64,
    /// What that is.
    pub from: ChanceFrom,
    /// From 1 to 5.
    pub consequence: u8,
    /// What says so.
    pub why: Vec<ConsequenceWhy>,
    /// Chance times consequence.
    pub product: f64,
}

impl Risk {
    /// Of that chance and consequence.
    pub fn of(chance: Chance, consequence: Consequence) -> Self {
        Self {
            chance: chance.chance,
            from: chance.from,
            consequence: consequence.weight,
            product: chance.chance * f64::from(consequence.weight),
            why: consequence.why,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::care::{Aged, DueFor, OnSince, Rules, Spot};

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    fn row(made: &str, today: &str) -> DueRow {
        let on = Some(OnSince { day: Some(day(made)), already_there: false, hours: None });
        let hose = Aged { assembled: Some(day(made)), on, ..Aged::default() };
        let row = hose.due(&Rules::new(Catalogue::embedded(), []), &Spot::default(), day(today)).remove(0);
        assert_eq!(row.what, DueFor::Service);
        row
    }

    fn lives(failed: &[f64], whole: &[f64], kind: &str) -> Lives {
        let of = Some(("EN 853".to_owned(), kind.to_owned()));
        let failed = failed.iter().map(|years| Record::new(*years, true, 0.0).expect("a life"));
        let whole = whole.iter().map(|years| Record::new(*years, false, 0.0).expect("a life"));
        Lives::from([(of, failed.chain(whole).collect())])
    }

    #[test]
    fn too_few_failures_put_the_oldest_first_and_say_so() {
        let chances = chances(&lives(&[2.0, 3.0, 4.0, 5.0], &[6.0], "2SN"), 90);
        assert_eq!((chances.from(), chances.failures()), (ChanceFrom::Age, 4));
        let today = day("2026-01-01");
        let of =
            |made: &str| chances.of(None, None, &row(made, "2026-01-01"), today).expect("a chance").chance;
        assert!(of("2021-01-01") > of("2024-01-01"), "the older one first");
        assert!((of("2015-01-01") - 1.0).abs() < 1e-12, "all of it is used up");
        // (731 + 90) of 2192 days.
        assert!((of("2024-01-01") - 821.0 / 2192.0).abs() < 1e-12);
    }

    #[test]
    fn enough_failures_give_the_chance_to_fail_in_the_days_ahead_given_the_age() {
        let many = lives(&[3.0, 4.0, 5.0, 6.0, 7.0, 4.5], &[5.0, 6.0], "2SN");
        let chances = chances(&many, 365);
        let life = fit(&many.values().flatten().copied().collect::<Vec<_>>()).expect("a fit").weibull;
        let hose = ("EN 853".to_owned(), "2SN".to_owned());
        let (today, new) = (day("2026-01-01"), day("2022-01-01"));
        let chance =
            chances.of(Some(&hose), Some(new), &row("2022-01-01", "2026-01-01"), today).expect("a chance");
        let (age, then) = (1461.0 / YEAR_DAYS, (1461.0 + 365.0) / YEAR_DAYS);
        // By the definition of the conditional chance, from the distribution's own formula.
        let by_hand =
            1.0 - ((age / life.scale).powf(life.shape) - (then / life.scale).powf(life.shape)).exp();
        assert!((chance.chance - by_hand).abs() < 1e-12, "{} is not {by_hand}", chance.chance);
        assert_eq!(chance.from, ChanceFrom::Life);
        assert_eq!(
            chances.of(Some(&hose), None, &row("2022-01-01", "2026-01-01"), today),
            None,
            "no age, no chance"
        );
    }

    #[test]
    fn the_gravest_stake_counts_the_owners_word_stands_over_it_and_silence_is_the_middle() {
        let of = |stakes: Option<&[Stake]>, owner| consequence(Catalogue::embedded(), stakes, owner);
        let both = of(Some(&[Stake::Remote, Stake::SomeoneBeside]), None);
        assert_eq!(both.weight, 5);
        assert_eq!(both.why, [ConsequenceWhy::SomeoneBeside, ConsequenceWhy::Remote]);
        assert_eq!(
            of(Some(&[Stake::SomeoneBeside]), Some(2)),
            Consequence { weight: 2, why: vec![ConsequenceWhy::Owner] }
        );
        assert_eq!(of(None, None), Consequence { weight: 3, why: vec![ConsequenceWhy::NotSaid] });
        assert_eq!(of(Some(&[]), None), Consequence { weight: 1, why: vec![ConsequenceWhy::None] });
    }

    #[test]
    fn every_stake_has_a_weight() {
        let keys: Vec<&str> = Catalogue::embedded().stakes.iter().map(|row| row.key.as_str()).collect();
        for key in Stake::ALL.iter().map(|stake| stake.name()).chain(["none", "not-said"]) {
            assert!(keys.contains(&key), "{key}");
        }
    }
}
