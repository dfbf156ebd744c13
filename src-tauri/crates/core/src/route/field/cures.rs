//! Which one change would make it pass: each is routed over the whole travel before it is offered.

use super::answer::{Change, Cure, Recommended};
use super::case::{Case, Lain};
use super::ends::RigidEnd;
use super::findings::{Asked, bend_verdict, findings, needed_turn};
use super::lengths::recommended;
use super::question::Points;
use crate::check::{Verdict, gravest};
use crate::quantity::{Degrees, Millimetres};

/// Forms that a bent end is tried with: the ones that are on every van.
const FORMS: [&str; 2] = ["elbow45", "elbow90"];

/// Ways that an elbow can point, those in the plane of the drawing first.
const WAYS: [Points; 4] = [Points::Towards, Points::Away, Points::Front, Points::Back];

/// How the routing is that a cure has to better.
pub(super) struct Ill<'a> {
    pub case: &'a Case<'a>,
    /// How the hose lies as it was asked; none where no length does.
    pub lain: Option<&'a Lain>,
    /// The length to make without any other change.
    pub recommended: Option<&'a Recommended>,
    /// Whether the length was given, so that another one is a change.
    pub length_given: bool,
}

impl Ill<'_> {
    fn verdict(&self) -> Verdict {
        self.lain.map_or(Verdict::Stop, |lain| bend_verdict(self.case, lain))
    }
}

/// Changes that better how the hose is bent, gentlest and simplest first; none where nothing is wrong.
pub(super) fn cures(ill: &Ill<'_>, asked: &Asked<'_>) -> Vec<Cure> {
    if ill.verdict() == Verdict::Pass || ill.case.stands.least_inside_mm.is_none() {
        return Vec::new();
    }
    let mut cures: Vec<Cure> = longer(ill, asked).into_iter().collect();
    for side in 0..2 {
        cures.extend(best(ill, asked, Change::Exit, side, None));
        for form in FORMS {
            cures.extend(best(ill, asked, Change::Form, side, Some(form)));
        }
    }
    cures.sort_by_key(|cure| (cure.verdict, cure.change));
    cures
}

/// Another length alone.
fn longer(ill: &Ill<'_>, asked: &Asked<'_>) -> Option<Cure> {
    let length = ill.recommended.filter(|_| ill.length_given)?;
    let lain = ill.case.lain(length.overall_length_mm.get(), asked.rules.straights());
    offered(ill, asked, Change::Length, ill.case, None, &lain)
}

/// The best of the ways that an end can point: with another form, or with its own.
fn best(ill: &Ill<'_>, asked: &Asked<'_>, change: Change, side: usize, form: Option<&str>) -> Option<Cure> {
    let own = &ill.case.ends[side];
    let changed = |points: Points| -> Option<RigidEnd> {
        match form {
            Some(form) => own.formed(form, points, ill.case.stands.od_mm).filter(|end| end.bend != own.bend),
            None => (own.bent() && points != own.points).then(|| RigidEnd { points, ..own.clone() }),
        }
    };
    let ways = if ill.case.plane() { &WAYS[..2] } else { &WAYS[..] };
    let tried = ways.iter().copied().filter_map(changed).filter_map(|end| {
        let mut ends = ill.case.ends.clone();
        ends[side] = end;
        let case = Case { ends, ..ill.case.clone() };
        let lain = at_best_length(ill, asked, &case)?;
        offered(ill, asked, change, &case, Some(side), &lain)
    });
    // The shortest of the gentlest.
    tried.min_by(|a, b| {
        let lengths = || a.overall_length_mm.get().total_cmp(&b.overall_length_mm.get());
        a.verdict.cmp(&b.verdict).then_with(lengths)
    })
}

/// At the length that was given, if that will do; else at the case's own recommended one.
fn at_best_length(ill: &Ill<'_>, asked: &Asked<'_>, case: &Case<'_>) -> Option<Lain> {
    let straights = asked.rules.straights();
    let kept = ill.lain.filter(|_| ill.length_given).map(|own| case.lain(own.overall_mm, straights));
    kept.filter(|lain| bend_verdict(case, lain) == Verdict::Pass).or_else(|| {
        let length = recommended(asked.catalogue, case, asked.rules)?;
        Some(case.lain(length.overall_length_mm.get(), straights))
    })
}

/// The cure, if it betters how the hose is bent.
fn offered(
    ill: &Ill<'_>,
    asked: &Asked<'_>,
    change: Change,
    case: &Case<'_>,
    side: Option<usize>,
    lain: &Lain,
) -> Option<Cure> {
    let routed = lain.routed.as_ref().ok()?;
    if bend_verdict(case, lain) >= ill.verdict() {
        return None;
    }
    let turn_deg = needed_turn(case, routed).map(Degrees);
    // The turn that goes with the change is made with it.
    let spec = crate::spec::Spec { turn_deg, ..asked.question.spec.clone() };
    let question = super::question::FieldQuestion { spec, ..asked.question.clone() };
    let end = side.map(|side| &case.ends[side]);
    Some(Cure {
        change,
        what: String::new(),
        end: end.map(|end| end.role),
        form: end.and_then(|end| end.form.clone()),
        points: end.filter(|end| end.bent()).map(|end| end.points),
        drop_mm: end.filter(|end| end.bent()).map(|end| Millimetres(end.drop_mm)),
        rigid_mm: end.map(|end| Millimetres(end.rigid_mm)),
        assumed: end.is_some_and(|end| end.assumed.any()),
        overall_length_mm: Millimetres(lain.overall_mm),
        turn_deg,
        verdict: gravest(&findings(case, Some(lain), &Asked { question: &question, ..*asked })),
        min_inside_radius_mm: routed.min_inside_radius_mm,
    })
}
