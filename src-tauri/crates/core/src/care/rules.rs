//! Which rule holds: the owner's policy of the narrowest scope that says anything, else the guide of the tables.

use super::DueFor;
use crate::catalogue::{Age, AgeOf, Basis, Catalogue, Demand, Practice};
use crate::record::{MachineId, PlaceId, PolicyKey, PolicyOf, PolicySet, Scope, SiteId};
use crate::spec::Line;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// Where a hose is, as far as rules go.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Spot {
    /// The place it sits at.
    pub place: Option<PlaceId>,
    /// The machine.
    pub machine: Option<MachineId>,
    /// The site.
    pub site: Option<SiteId>,
    /// What the line does; none is not said.
    pub line: Option<Line>,
    /// How hard it is on the hose; none is not said, and counts as normal.
    pub demand: Option<Demand>,
}

/// Whose a rule is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Whose {
    /// A guide value of the tables.
    Guide,
    /// The owner's.
    Yours,
}

/// A rule and where it comes from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "CareRule")]
pub struct Rule {
    /// Whose.
    pub whose: Whose,
    /// Where the owner's holds; none for a guide.
    pub scope: Option<Scope>,
    /// For which hoses there.
    pub of: PolicyOf,
    /// The guide's rule, such as `L055`; none for the owner's.
    pub id: Option<String>,
    /// Where it comes from.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
    /// Whether crossing it is a stop; else a caution.
    pub stop: bool,
    /// In words, why it is this one; blank in the core.
    pub why: String,
}

/// A limit and the rule that sets it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "RuleHeld")]
pub struct Held {
    /// Years, or hours of the machine.
    pub limit: f64,
    /// The rule.
    pub rule: Rule,
}

/// What holds at a spot.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct RuleAt {
    /// The limit in years; none where the tables have no guide and nobody has said anything.
    pub years: Option<Held>,
    /// The limit in hours of the machine; none where nobody set one.
    pub hours: Option<Held>,
    /// The guide's own limit in years, where an owner's stands over it.
    pub guide: Option<Held>,
    /// The owner's rules that a narrower one stands over, the narrowest first.
    pub over: Vec<Held>,
}

/// The owner's policies beside the guides of the tables.
#[derive(Debug, Clone)]
pub struct Rules<'c> {
    catalogue: &'c Catalogue,
    policies: BTreeMap<PolicyKey, PolicySet>,
}

impl<'c> Rules<'c> {
    /// These policies over the guides of that catalogue.
    pub fn new(catalogue: &'c Catalogue, policies: impl IntoIterator<Item = PolicySet>) -> Self {
        Self { catalogue, policies: policies.into_iter().map(|policy| (policy.key(), policy)).collect() }
    }

    /// The same with one policy set anew.
    pub fn with(&self, policy: PolicySet) -> Self {
        let mut changed = self.clone();
        changed.policies.insert(policy.key(), policy);
        changed
    }

    /// Every policy of the owner.
    pub fn policies(&self) -> impl Iterator<Item = &PolicySet> {
        self.policies.values()
    }

    /// Whether any policy counts hours.
    pub fn count_hours(&self) -> bool {
        self.policies().any(|policy| policy.service_hours.or(policy.inspection_hours).is_some())
    }

    /// What holds there for hoses in service, in store or between inspections. Nothing holds for what was seen: that
    /// has a day of its own.
    pub fn at(&self, what: DueFor, spot: &Spot) -> RuleAt {
        let policies = || self.at_spot(spot);
        let years = policies().find_map(|policy| held(policy, years_of(policy, what)?));
        let hours = policies().find_map(|policy| held(policy, hours_of(policy, what)?));
        let guide = self.guide(what, spot.demand.unwrap_or_default());
        let over = policies().filter_map(|policy| held(policy, years_of(policy, what)?)).skip(1).collect();
        match years {
            Some(years) => RuleAt { years: Some(years), hours, guide, over },
            None => RuleAt { years: guide, hours, guide: None, over },
        }
    }

    /// The policies that speak of a spot, the narrowest scope first, and in each those that say most of which hoses.
    fn at_spot(&self, spot: &Spot) -> impl Iterator<Item = &PolicySet> {
        let scopes = [
            spot.place.map(Scope::Place),
            spot.machine.map(Scope::Machine),
            spot.site.map(Scope::Site),
            Some(Scope::Fleet),
        ];
        let (line, demand) = (spot.line, Some(spot.demand.unwrap_or_default()));
        let mut kinds = vec![
            PolicyOf { line, demand },
            PolicyOf { line, demand: None },
            PolicyOf { line: None, demand },
            PolicyOf::ALL,
        ];
        kinds.dedup();
        let keys = scopes.into_iter().flatten().flat_map(move |scope| {
            kinds.clone().into_iter().map(move |of| PolicyKey { scope: scope.clone(), of })
        });
        // Where the line is not said, what holds for any line is looked up twice and found once.
        let mut seen = Vec::new();
        keys.filter_map(|key| self.policies.get(&key)).filter(move |policy| {
            let new = !seen.contains(&policy.key());
            seen.push(policy.key());
            new
        })
    }

    fn guide(&self, what: DueFor, demand: Demand) -> Option<Held> {
        let age = guide(self.catalogue, what, demand)?;
        Some(Held {
            limit: f64::from(age.months) / 12.0,
            rule: Rule {
                whose: Whose::Guide,
                scope: None,
                of: PolicyOf { line: None, demand: age.demand },
                id: Some(age.id.clone()),
                source: age.provenance.source.clone(),
                basis: age.provenance.basis,
                stop: false,
                why: String::new(),
            },
        })
    }

    /// The guides of the tables: what, for which demand, and the row.
    pub fn guides(&self) -> Vec<(DueFor, &'c Age)> {
        let all = [DueFor::Service, DueFor::Storage, DueFor::Inspection];
        all.into_iter().flat_map(|what| rows(self.catalogue, what).map(move |age| (what, age))).collect()
    }
}

fn rows(catalogue: &Catalogue, what: DueFor) -> impl Iterator<Item = &Age> {
    let of = match what {
        DueFor::Service => Some(AgeOf::ServiceLife),
        DueFor::Storage => Some(AgeOf::AssemblyStorage),
        DueFor::Inspection => Some(AgeOf::InspectionInterval),
        DueFor::Finding | DueFor::Asked => None,
    };
    catalogue.ages.iter().filter(move |age| Some(age.of) == of && age.practice == Practice::European)
}

/// The row that speaks of that demand, else one that speaks of any.
fn guide(catalogue: &Catalogue, what: DueFor, demand: Demand) -> Option<&Age> {
    let find = |of: Option<Demand>| rows(catalogue, what).find(|age| age.demand == of);
    find(Some(demand)).or_else(|| find(None))
}

fn years_of(policy: &PolicySet, what: DueFor) -> Option<f64> {
    match what {
        DueFor::Service => policy.service_years,
        DueFor::Storage => policy.storage_years,
        DueFor::Inspection => policy.inspection_years,
        DueFor::Finding | DueFor::Asked => None,
    }
}

fn hours_of(policy: &PolicySet, what: DueFor) -> Option<f64> {
    match what {
        DueFor::Service => policy.service_hours,
        DueFor::Inspection => policy.inspection_hours,
        DueFor::Storage | DueFor::Finding | DueFor::Asked => None,
    }
}

fn held(policy: &PolicySet, limit: f64) -> Option<Held> {
    Some(Held {
        limit,
        rule: Rule {
            whose: Whose::Yours,
            scope: Some(policy.scope.clone()),
            of: policy.of,
            id: None,
            source: String::new(),
            basis: Basis::Yours,
            stop: policy.stop,
            why: String::new(),
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn policy(scope: Scope, of: PolicyOf, service_years: f64) -> PolicySet {
        PolicySet { service_years: Some(service_years), ..PolicySet::none(scope, of) }
    }

    fn spot() -> Spot {
        Spot {
            place: Some(PlaceId::from_bytes([1; 16])),
            machine: Some(MachineId::from_bytes([2; 16])),
            site: Some(SiteId::from_bytes([3; 16])),
            line: Some(Line::Cylinder),
            demand: Some(Demand::Harsh),
        }
    }

    fn of(line: Option<Line>, demand: Option<Demand>) -> PolicyOf {
        PolicyOf { line, demand }
    }

    fn limit(policies: &[PolicySet], spot: &Spot) -> f64 {
        let rules = Rules::new(Catalogue::embedded(), policies.iter().cloned());
        rules.at(DueFor::Service, spot).years.expect("a limit").limit
    }

    #[test]
    fn the_narrowest_scope_wins_and_within_it_what_says_most() {
        let (line, demand) = (Some(Line::Cylinder), Some(Demand::Harsh));
        // From the widest to the narrowest: each stands over all before it.
        let all = [
            policy(Scope::Fleet, of(None, None), 5.0),
            policy(Scope::Fleet, of(None, demand), 4.0),
            policy(Scope::Fleet, of(line, None), 3.0),
            policy(Scope::Fleet, of(line, demand), 2.5),
            policy(Scope::Site(SiteId::from_bytes([3; 16])), of(None, None), 7.0),
            policy(Scope::Machine(MachineId::from_bytes([2; 16])), of(None, None), 8.0),
            policy(Scope::Machine(MachineId::from_bytes([2; 16])), of(line, None), 9.0),
            policy(Scope::Place(PlaceId::from_bytes([1; 16])), of(None, None), 1.0),
        ];
        for upto in 1..=all.len() {
            let expected = all[upto - 1].service_years.expect("a limit");
            assert!((limit(&all[..upto], &spot()) - expected).abs() < 1e-12, "with {upto}");
        }
        let over = Rules::new(Catalogue::embedded(), all).at(DueFor::Service, &spot()).over;
        assert_eq!(
            over.iter().map(|held| held.limit).collect::<Vec<_>>(),
            [9.0, 8.0, 7.0, 2.5, 3.0, 4.0, 5.0]
        );
    }

    #[test]
    fn a_rule_for_other_hoses_does_not_hold() {
        let others = [
            policy(Scope::Fleet, of(Some(Line::Suction), None), 1.0),
            policy(Scope::Fleet, of(None, Some(Demand::Normal)), 1.0),
            policy(Scope::Place(PlaceId::from_bytes([9; 16])), of(None, None), 1.0),
        ];
        assert!((limit(&others, &spot()) - 2.0).abs() < 1e-12, "the guide for harsh demands (L056)");
        let normal = Spot { demand: None, ..spot() };
        assert!((limit(&others[..1], &normal) - 6.0).abs() < 1e-12, "the guide for normal demands (L055)");
    }

    #[test]
    fn years_and_hours_are_sought_apart_and_the_guide_is_told_beside() {
        let hours = PolicySet { service_hours: Some(4000.0), ..PolicySet::none(Scope::Fleet, PolicyOf::ALL) };
        let at = |policies: Vec<PolicySet>| {
            Rules::new(Catalogue::embedded(), policies).at(DueFor::Service, &spot())
        };
        let only_hours = at(vec![hours.clone()]);
        assert_eq!(only_hours.years.as_ref().map(|held| held.rule.whose), Some(Whose::Guide));
        assert_eq!(only_hours.hours.as_ref().map(|held| held.limit), Some(4000.0));
        assert_eq!(only_hours.guide, None);
        let both = at(vec![PolicySet { service_years: Some(8.0), ..hours }]);
        assert_eq!(both.years.map(|held| (held.limit, held.rule.whose)), Some((8.0, Whose::Yours)));
        assert_eq!(both.guide.map(|held| held.rule.id), Some(Some("L056".to_owned())));
    }
}
