//! The shortest length that will do, and the length to make.

use super::answer::Recommended;
use super::case::Case;
use super::findings::{Rules, bend_verdict};
use crate::catalogue::{Basis, Catalogue, LengthPractice, Provenance};
use crate::check::Verdict;
use crate::quantity::Millimetres;
use crate::route::MARGIN;
use crate::route::length::{Fineness, shortest};
use crate::route::lie::Changes;
use crate::route::travel::travel;

/// The recommended length is a whole number of these, as lengths are ordered. Common practice.
const ROUND_MM: f64 = 10.0;

/// How many such steps are tried upwards. A hose that bulges past a good length is not cured by far more.
const STEPS: usize = 12;

/// The shortest overall length that keeps the least radius by that factor, with the straight length kept.
/// None where the limit is not known or no length does.
pub(super) fn shortest_mm(case: &Case<'_>, rules: &Rules, factor: f64) -> Option<f64> {
    let straight_mm = rules.straight.value * case.stands.od_mm;
    let least = case.stands.least_inside_mm? * factor;
    let layout = case.layout(None, straight_mm, Some(least));
    let changes = Changes::read(layout.length_change_pct).ok()?;
    let centre_mm = least + case.stands.od_mm / 2.0;
    let free_mm = shortest(&travel(&layout).ok()?, &changes, centre_mm, Fineness::WORKSHOP).ok()?;
    Some((free_mm + 2.0 * straight_mm + case.rigid_mm()).ceil())
}

/// The length to make, routed at its longest and shortest. None where no length will do.
pub(super) fn recommended(catalogue: &Catalogue, case: &Case<'_>, rules: &Rules) -> Option<Recommended> {
    let shortest = shortest_mm(case, rules, 1.0 + MARGIN)?;
    let mut length = (shortest / ROUND_MM).ceil() * ROUND_MM;
    for _ in 0..STEPS {
        let overall_length_mm = Millimetres(length);
        let tolerance =
            catalogue.length_tolerance(LengthPractice::default(), case.stands.dn, overall_length_mm);
        let short_by = tolerance.map_or(0.0, |tolerance| -tolerance.at(overall_length_mm)[0]);
        let passes = |overall: f64| {
            Some(case.lain(overall, rules.straights()))
                .filter(|lain| bend_verdict(case, lain) == Verdict::Pass)
        };
        // Where it would do at its shortest, its own length is looked at as well.
        let short = Some(length - short_by).filter(|short| *short >= shortest).and_then(passes);
        if let Some(own) = short.and_then(|_| passes(length)) {
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
