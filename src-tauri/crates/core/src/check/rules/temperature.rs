//! Heat and cold of the fluid and the air, against the hose and against what the fluid allows.

use crate::catalogue::{HoseRow, Provenance};
use crate::check::fluid;
use crate::check::limit::Limit;
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};
use crate::quantity::Celsius;

const HEAT: Limit = Limit {
    rule: "fluid-temperature",
    unit: Celsius::UNIT,
    ok: cases::HEAT_OK,
    unverified: cases::HEAT_UNVERIFIED,
    broken: cases::HEAT_ABOVE_LIMIT,
};
const FLUID_HEAT: Limit = Limit {
    ok: cases::FLUID_HEAT_OK,
    unverified: cases::FLUID_HEAT_UNVERIFIED,
    broken: cases::FLUID_HEAT_ABOVE_LIMIT,
    ..HEAT
};
const COLD: Limit = Limit {
    ok: cases::COLD_OK,
    unverified: cases::COLD_UNVERIFIED,
    broken: cases::COLD_BELOW_LIMIT,
    ..HEAT
};
const FROST: Limit = Limit {
    ok: cases::FROST_OK,
    unverified: cases::FROST_UNVERIFIED,
    broken: cases::FROST_BELOW_LIMIT,
    ..HEAT
};
const AMBIENT: Limit = Limit {
    rule: "ambient-temperature",
    ok: cases::AMBIENT_OK,
    unverified: cases::AMBIENT_UNVERIFIED,
    broken: cases::AMBIENT_ABOVE_LIMIT,
    ..HEAT
};

pub(super) fn temperature(subject: &Subject<'_>) -> Vec<Finding> {
    let mut findings = missing(subject);
    let Some(hose) = subject.hose else { return findings };
    findings.extend(heat(subject, hose));
    findings.extend(cold(subject, hose));
    findings.extend(subject.service.ambient_max_c.map(|asked| {
        AMBIENT.at_most(asked.get(), hose.row.temp_max_c.get(), &heat_source(subject, hose.row))
    }));
    findings.into_iter().map(|finding| finding.about("hose", hose_name(hose.row))).collect()
}

fn missing(subject: &Subject<'_>) -> Vec<Finding> {
    let asked = [
        (subject.service.fluid_max_c, HEAT.rule, cases::HEAT_MISSING),
        (subject.service.fluid_min_c, HEAT.rule, cases::COLD_MISSING),
        (subject.service.ambient_max_c, AMBIENT.rule, cases::AMBIENT_MISSING),
    ];
    let missing = asked.into_iter().filter(|(given, ..)| given.is_none());
    missing.map(|(_, rule, key)| Finding::new(rule, Verdict::Caution, key).from(&practice())).collect()
}

fn heat(subject: &Subject<'_>, hose: Hose<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid_max_c else { return Vec::new() };
    let of_hose = HEAT.at_most(asked.get(), hose.row.temp_max_c.get(), &heat_source(subject, hose.row));
    let of_fluid = hottest_fluid(subject, hose).map(|(hottest, source, name)| {
        FLUID_HEAT.at_most(asked.get(), hottest.get(), &source).about("fluid", name)
    });
    std::iter::once(of_hose).chain(of_fluid).collect()
}

/// The lowest limit of this fluid: of every material the tube may be of, and of the hose standards
/// for water-based fluids.
fn hottest_fluid(subject: &Subject<'_>, hose: Hose<'_>) -> Option<(Celsius, Provenance, String)> {
    let asked = subject.service.fluid.as_deref()?;
    let rows = fluid::rows(subject.catalogue, asked);
    let name = fluid::id(rows.first()?).to_owned();
    let of_tube = rows.iter().filter(|row| hose.kind.tube.contains(&row.elastomer));
    let of_tube = of_tube.filter_map(|row| Some((row.max_temp_c?, row.provenance.clone())));
    let of_water = fluid::water_limits(subject, &hose.row.standard, &name).map(|limits| limits.hottest);
    let lowest = of_tube.chain(of_water).min_by(|(a, _), (b, _)| a.get().total_cmp(&b.get()));
    lowest.map(|(hottest, source)| (hottest, source, name))
}

fn cold(subject: &Subject<'_>, hose: Hose<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid_min_c else { return Vec::new() };
    let source = row_source(subject, hose.row, hose.row.temp_min_c, cold_rule(hose.row));
    let of_hose = COLD.at_least(asked.get(), hose.row.temp_min_c.get(), &source);
    std::iter::once(of_hose).chain(frost(subject, hose, asked)).collect()
}

/// Water freezes long before the hose gets stiff.
fn frost(subject: &Subject<'_>, hose: Hose<'_>, asked: Celsius) -> Option<Finding> {
    let rows = fluid::rows(subject.catalogue, subject.service.fluid.as_deref()?);
    let name = fluid::id(rows.first()?);
    let limits = fluid::water_limits(subject, &hose.row.standard, name)?;
    let (coldest, source) = limits.coldest?;
    Some(FROST.at_least(asked.get(), coldest.get(), &source).about("fluid", name))
}

fn heat_source(subject: &Subject<'_>, row: &HoseRow) -> Provenance {
    row_source(subject, row, row.temp_max_c, heat_rule(row))
}

/// The hose table's rows do not say how sure their temperatures are; where a rule of the scopes names
/// the same figure for that type, the rule's source stands, else the row takes its weakest column's.
fn row_source(subject: &Subject<'_>, row: &HoseRow, limit: Celsius, rule: Option<&str>) -> Provenance {
    let same_figure = rule.and_then(|id| subject.rule(id)).filter(|(figure, _)| *figure == limit.get());
    let of_row = || Provenance { source: row.source.clone(), basis: row.basis };
    same_figure.map_or_else(of_row, |(_, source)| source.clone())
}

fn heat_rule(row: &HoseRow) -> Option<&'static str> {
    match (row.standard.as_str(), row.kind.trim_start_matches("100")) {
        ("EN 853" | "EN 854" | "EN 857", _) | ("EN 856", "4SP" | "4SH") => Some("L089"),
        ("EN 856" | "SAE J517" | "ISO 3862", "R12" | "R13" | "R15") => Some("L090"),
        ("SAE J517", "R7" | "R8") => Some("L092"),
        ("SAE J517", "R14") => Some("L093"),
        _ => None,
    }
}

fn cold_rule(row: &HoseRow) -> Option<&'static str> {
    match (row.standard.as_str(), row.kind.as_str()) {
        ("SAE J517", "100R14") => Some("L094"),
        ("EN 853" | "EN 854" | "EN 856" | "EN 857" | "SAE J517", _) => Some("L091"),
        _ => None,
    }
}
