//! What is found of a routing, each with its limit and where that comes from.

use super::case::{Case, Lain, keeps};
use super::ends::proportion;
use super::question::FieldQuestion;
use crate::catalogue::{Basis, Catalogue, Provenance};
use crate::check::{Finding, Verdict, cases, practice, unverified};
use crate::quantity::{Degrees, Millimetres};
use crate::route::answer::TWIST_DEG;
use crate::route::{Reason, RouteError, Routed};

/// A figure of the tables that a rule rests on.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Rule {
    pub value: f64,
    pub from: Provenance,
}

/// The rules of the trade that a routing is held against.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Rules {
    /// Straight length behind a ferrule before a bend, in outside diameters.
    pub straight: Rule,
    /// The smallest figure in use for the same.
    pub straight_least: Rule,
    /// Twist from which much of a hose's life is lost.
    pub twist: Rule,
}

impl Rules {
    /// From the catalogue's limits.
    pub fn of(catalogue: &Catalogue) -> Self {
        let rule = |key: &str, value: Option<f64>, without: f64| {
            let limit = catalogue.limit(key);
            Rule {
                value: value.or(limit.and_then(|limit| limit.value)).unwrap_or(without),
                from: limit.map_or_else(practice, |limit| limit.provenance.clone()),
            }
        };
        Self {
            straight: rule("straight-behind-ferrule-od", None, 1.5),
            straight_least: rule("straight-behind-ferrule-od-least", None, 1.0),
            twist: rule("life-loss-twist-5", Some(TWIST_DEG), TWIST_DEG),
        }
    }

    /// Straight lengths to try, in outside diameters.
    pub fn straights(&self) -> [f64; 2] {
        [self.straight.value, self.straight_least.value]
    }
}

/// All findings of a routing at one length, gravest first.
pub(super) fn findings(case: &Case<'_>, lain: Option<&Lain>, asked: &Asked<'_>) -> Vec<Finding> {
    let mut findings = travel(asked.question).into_iter().collect::<Vec<_>>();
    findings.extend(ends(case));
    findings.push(length_change(case));
    match lain {
        Some(lain) => match &lain.routed {
            Ok(routed) => {
                findings.extend(bend(case, routed));
                findings.extend(straight(case, lain, asked.rules));
                findings.extend(twist(case, routed, asked.rules));
                findings.extend(turn(case, routed, asked));
            }
            Err(error) => findings.push(no_shape(lain, error, asked.shortest_mm)),
        },
        None => findings.push(no_length(case)),
    }
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.verdict));
    findings
}

/// What a routing is held against, and what was asked.
pub(super) struct Asked<'a> {
    pub catalogue: &'a Catalogue,
    pub question: &'a FieldQuestion,
    pub rules: &'a Rules,
    pub shortest_mm: Option<f64>,
}

/// The gravest of how the hose is bent: its radius, and the straight length behind its ferrules. No length cures a
/// twist, so that is left out, and what is merely not known of the ends.
pub(super) fn bend_verdict(case: &Case<'_>, lain: &Lain) -> Verdict {
    let Ok(routed) = &lain.routed else { return Verdict::Stop };
    let straight = match lain.straight_inside_mm {
        [full, _] if keeps(full, case.stands.least_inside_mm) => Verdict::Pass,
        [_, least] if keeps(least, case.stands.least_inside_mm) => Verdict::Caution,
        _ => Verdict::Stop,
    };
    let bent = routed.reasons.iter().filter(|reason| **reason != Reason::Twist);
    bent.map(|reason| reason.verdict()).max().unwrap_or(Verdict::Pass).max(straight)
}

/// Whether the machine moves is for a person to say: a travel that nobody named is not none.
fn travel(question: &FieldQuestion) -> Option<Finding> {
    (question.open.is_none() && !question.fixed).then(|| {
        Finding::new("route-travel", Verdict::Caution, cases::ROUTE_TRAVEL_MISSING).from(&practice())
    })
}

fn ends(case: &Case<'_>) -> Vec<Finding> {
    let of_end = |end: &super::ends::RigidEnd| {
        let new = |key, value: f64| {
            Finding::new("route-ends", Verdict::Caution, key)
                .measured(value, None, Millimetres::UNIT)
                .about("end", format!("{:?}", end.role))
                .from(&proportion())
        };
        let form = end
            .form
            .is_none()
            .then(|| Finding { value: None, ..new(cases::END_FORM_MISSING, 0.0) }.from(&practice()));
        let rigid = end.assumed.rigid.then(|| new(cases::ROUTE_RIGID_ASSUMED, end.rigid_mm));
        let drop = end.assumed.drop.then(|| new(cases::ROUTE_DROP_ASSUMED, end.drop_mm));
        form.into_iter().chain(rigid).chain(drop).collect::<Vec<_>>()
    };
    case.ends.iter().flat_map(of_end).collect()
}

fn length_change(case: &Case<'_>) -> Finding {
    let stands = case.stands;
    let (verdict, said) = if stands.change_taken {
        (Verdict::Caution, cases::ROUTE_CHANGE_TAKEN)
    } else if unverified(stands.change_from.basis) {
        (Verdict::Caution, cases::ROUTE_CHANGE_UNVERIFIED)
    } else {
        (Verdict::Pass, cases::ROUTE_CHANGE_OK)
    };
    let [least, greatest] = stands.change_pct;
    Finding::new("route-length-change", verdict, said)
        .measured(least, greatest, "%")
        .about("hose", &stands.name)
        .from(&stands.change_from)
}

/// The radius at the inside, and whether the hose may lie otherwise and tighter.
fn bend(case: &Case<'_>, routed: &Routed) -> Vec<Finding> {
    let stands = case.stands;
    let inside = routed.min_inside_radius_mm.map(Millimetres::get);
    let has = |reason: Reason| routed.reasons.contains(&reason);
    let (verdict, said) = if stands.least_inside_mm.is_none() {
        (Verdict::Stop, cases::BEND_LIMIT_UNKNOWN)
    } else if has(Reason::BelowLimit) {
        (Verdict::Stop, cases::BEND_TOO_TIGHT)
    } else if unverified(stands.bend_from.basis) {
        (Verdict::Caution, cases::BEND_UNVERIFIED)
    } else if has(Reason::NearLimit) {
        (Verdict::Caution, cases::ROUTE_NEAR_LIMIT)
    } else if inside.is_none() {
        (Verdict::Pass, cases::ROUTE_STRAIGHT_LINE)
    } else {
        (Verdict::Pass, cases::BEND_OK)
    };
    let held = |verdict, said, from: &Provenance| {
        let finding = Finding::new("bend", verdict, said).about("hose", &stands.name).from(from);
        Finding { value: inside, limit: stands.least_inside_mm, unit: Millimetres::UNIT, ..finding }
    };
    let rival = has(Reason::RivalTooTight).then(|| {
        let tightest = routed.poses.iter().filter_map(|pose| pose.rival_min_radius_mm);
        let tightest = tightest.map(|radius| radius.get() - stands.od_mm / 2.0).fold(f64::INFINITY, f64::min);
        Finding { value: Some(tightest), ..held(Verdict::Caution, cases::ROUTE_RIVAL, &stands.bend_from) }
    });
    std::iter::once(held(verdict, said, &stands.bend_from)).chain(rival).collect()
}

/// Room to lie straight behind each ferrule: kept in the bend, the rest must still keep the least radius. A hose
/// that is bent too tight anyway is told that alone.
fn straight(case: &Case<'_>, lain: &Lain, rules: &Rules) -> Option<Finding> {
    let too_tight = |routed: &Routed| routed.reasons.contains(&Reason::BelowLimit);
    let least = case.stands.least_inside_mm.filter(|_| !lain.routed.as_ref().is_ok_and(too_tight))?;
    let [full, smallest] = lain.straight_inside_mm;
    let (verdict, said, inside, rule) = if keeps(full, Some(least)) {
        (Verdict::Pass, cases::ROUTE_BEHIND_OK, full, &rules.straight)
    } else if keeps(smallest, Some(least)) {
        (Verdict::Caution, cases::ROUTE_BEHIND_SHORT, full, &rules.straight)
    } else {
        (Verdict::Stop, cases::ROUTE_BEHIND_NONE, smallest, &rules.straight_least)
    };
    let straight_mm = rule.value * case.stands.od_mm;
    let finding = Finding::new("route-behind-ferrule", verdict, said)
        .about("straight", format!("{straight_mm:.0}"))
        .about("times", format!("{}", rule.value))
        .from(&rule.from);
    let inside = inside.filter(|inside| inside.is_finite());
    Some(Finding { value: inside, limit: Some(least), unit: Millimetres::UNIT, ..finding })
}

fn twist(case: &Case<'_>, routed: &Routed, rules: &Rules) -> Option<Finding> {
    let [least, greatest] = routed.twist_range_deg.map(Degrees::get);
    let key = if routed.reasons.contains(&Reason::Twist) {
        (Verdict::Caution, cases::ROUTE_TWIST)
    } else {
        (Verdict::Pass, cases::ROUTE_TWIST_OK)
    };
    (case.ports.len() > 1).then(|| {
        Finding::new("route-twist", key.0, key.1)
            .measured(greatest - least, rules.twist.value, Degrees::UNIT)
            .from(&rules.twist.from)
    })
}

/// The turn that the ports ask for between two bent ends, against the spec's: made otherwise, the hose is twisted
/// as it is fitted.
fn turn(case: &Case<'_>, routed: &Routed, asked: &Asked<'_>) -> Option<Finding> {
    let needed = needed_turn(case, routed)?;
    let Some(given) = asked.question.spec.turn_deg else {
        return Some(
            Finding {
                limit: Some(needed),
                unit: Degrees::UNIT,
                ..Finding::new("turn", Verdict::Caution, cases::ROUTE_TURN_NEEDED)
            }
            .from(&practice()),
        );
    };
    let tolerance =
        asked.catalogue.turn_tolerance(Millimetres(case.rigid_mm() + routed.free_length_mm.get()));
    let allowed = tolerance.map_or(0.0, |tolerance| tolerance.plus_minus_deg);
    let from = tolerance.map_or_else(practice, |tolerance| tolerance.provenance.clone());
    let off = (given.get() - needed + 180.0).rem_euclid(360.0) - 180.0;
    let (verdict, said) = if off.abs() <= allowed {
        (Verdict::Pass, cases::ROUTE_TURN_OK)
    } else {
        (Verdict::Stop, cases::ROUTE_TURN_DIFFERS)
    };
    Some(Finding::new("turn", verdict, said).measured(given.get(), needed, Degrees::UNIT).from(&from))
}

/// The turn between two bent ends that the ports ask for, to whole degrees.
pub(super) fn needed_turn(case: &Case<'_>, routed: &Routed) -> Option<f64> {
    let bent = case.ends.iter().all(super::ends::RigidEnd::bent);
    bent.then(|| routed.turn_deg.map(|turn| turn.get().round().rem_euclid(360.0))).flatten()
}

fn no_shape(lain: &Lain, error: &RouteError, shortest_mm: Option<f64>) -> Finding {
    let key = match error {
        RouteError::Unsettled { .. } => cases::ROUTE_UNSETTLED,
        _ if shortest_mm.is_none() => cases::ROUTE_OUT_OF_REACH,
        _ => cases::ROUTE_TOO_SHORT,
    };
    Finding::new("route-length", Verdict::Stop, key)
        .measured(lain.overall_mm, shortest_mm, Millimetres::UNIT)
        .from(&Provenance { source: "elastic rod".to_owned(), basis: Basis::Derived })
}

fn no_length(case: &Case<'_>) -> Finding {
    let stands = case.stands;
    let key = match stands.least_inside_mm {
        Some(_) => cases::ROUTE_NO_LENGTH,
        None => cases::BEND_LIMIT_UNKNOWN,
    };
    let finding = Finding::new("route-length", Verdict::Stop, key).about("hose", &stands.name);
    Finding { limit: stands.least_inside_mm, unit: Millimetres::UNIT, ..finding }.from(&stands.bend_from)
}
