//! The shortest length that will do, and the length to make.

use super::answer::Recommended;
use super::case::Case;
use super::findings::{Rules, bend_verdict};
use crate::catalogue::{Basis, Catalogue, LengthPractice, Provenance};
use crate::check::Verdict;
use crate::quantity::Millimetres;
use crate::route::route;

/// By how much the recommended length keeps the least radius: an estimate needs as much. Common practice.
const MARGIN: f64 = 1.1;

/// The recommended length is a whole number of these, as lengths are ordered. Common practice.
const ROUND_MM: f64 = 10.0;

/// How many such steps are tried upwards. A hose that bulges past a good length is not cured by far more.
const STEPS: usize = 12;

/// The shortest overall length that keeps the least radius by that factor, with the straight length kept.
/// None where the limit is not known or no length does.
pub(super) fn shortest_mm(case: &Case<'_>, rules: &Rules, factor: f64) -> Option<f64> {
    let straight_mm = rules.straight.value * case.stands.od_mm;
    let least = case.stands.least_inside_mm? * factor;
    let free = route(&case.layout(None, straight_mm, Some(least))).ok()?.shortest_free_length_mm?;
    Some(free.get() + 2.0 * straight_mm + case.rigid_mm())
}

/// The length to make, routed at its longest and shortest. None where no length will do.
pub(super) fn recommended(catalogue: &Catalogue, case: &Case<'_>, rules: &Rules) -> Option<Recommended> {
    let shortest = shortest_mm(case, rules, MARGIN)?;
    let mut length = (shortest / ROUND_MM).ceil() * ROUND_MM;
    for _ in 0..STEPS {
        let overall_length_mm = Millimetres(length);
        let tolerance =
            catalogue.length_tolerance(LengthPractice::default(), case.stands.dn, overall_length_mm);
        let short_by = tolerance.map_or(0.0, |tolerance| -tolerance.at(overall_length_mm)[0]);
        let made = [length, length - short_by].map(|overall| case.lain(overall, rules.straights()));
        if length - short_by >= shortest && made.iter().all(|lain| bend_verdict(case, lain) == Verdict::Pass)
        {
            let [own, _] = made;
            let tolerances = tolerance.map(|tolerance| format!("; {}", tolerance.provenance.source));
            return Some(Recommended {
                overall_length_mm,
                short_by_mm: Millimetres(short_by),
                min_inside_radius_mm: own.routed.ok()?.min_inside_radius_mm,
                provenance: Provenance {
                    source: format!("trade practice{}", tolerances.unwrap_or_default()),
                    basis: Basis::CommonPractice,
                },
            });
        }
        length += ROUND_MM;
    }
    None
}
