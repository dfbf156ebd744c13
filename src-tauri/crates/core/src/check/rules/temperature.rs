//! Heat and cold of the fluid and the air, against the hose and against what the fluid allows.

use crate::catalogue::{FluidGroup, HoseRow, Provenance};
use crate::check::fluid::{Fluid, Temperature};
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
    let held = heat(subject, hose).into_iter().chain(cold(subject, hose)).chain(ambient(subject, hose));
    findings.extend(held.map(|finding| finding.about("hose", hose_name(hose.row))));
    findings
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
    let of_fluid = subject.fluid.and_then(|fluid| {
        let (hottest, source) = hottest(hose, fluid)?;
        Some(FLUID_HEAT.at_most(asked.get(), hottest.get(), &source).about("fluid", &fluid.class.name))
    });
    std::iter::once(of_hose).chain(of_fluid).collect()
}

/// The lowest limit of this fluid: of every material the tube may be of, and of the hose standards
/// where water is in it.
fn hottest(hose: Hose<'_>, fluid: Fluid<'_>) -> Option<Temperature> {
    let tubes = hose.kind.tube.iter().filter(|tube| !row_is_for(hose, fluid, tube));
    let in_tubes = tubes.filter_map(|tube| fluid.in_tube(tube));
    let in_tubes = in_tubes.filter_map(|row| Some((row.max_temp_c?, row.provenance.clone())));
    let by_standard = fluid.water_limits(&hose.row.standard).map(|limits| limits.hottest);
    in_tubes.chain(by_standard).min_by(|(a, _), (b, _)| a.get().total_cmp(&b.get()))
}

/// Whether the row's own limit is that of this fluid in this tube. It is for oil that the standard
/// names, in NBR: the fluid table's figure there is that of the ordinary types, and types of
/// heat-resistant NBR have a higher one.
fn row_is_for(hose: Hose<'_>, fluid: Fluid<'_>, tube: &str) -> bool {
    tube == "NBR" && fluid.class.group == FluidGroup::Oil && hose.kind.fluids.contains(&fluid.class.class)
}

fn cold(subject: &Subject<'_>, hose: Hose<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid_min_c else { return Vec::new() };
    let source = row_source(subject, hose.row, hose.row.temp_min_c, cold_limit(hose.row));
    let of_hose = COLD.at_least(asked.get(), hose.row.temp_min_c.get(), &source);
    // Water freezes long before the hose gets stiff.
    let frost = subject.fluid.and_then(|fluid| {
        let (coldest, source) = fluid.water_limits(&hose.row.standard)?.coldest?;
        Some(FROST.at_least(asked.get(), coldest.get(), &source).about("fluid", &fluid.class.name))
    });
    std::iter::once(of_hose).chain(frost).collect()
}

/// No table says how hot the air round a hose may be; it is held to what the hose bears inside.
fn ambient(subject: &Subject<'_>, hose: Hose<'_>) -> Option<Finding> {
    let asked = subject.service.ambient_max_c?;
    Some(AMBIENT.at_most(asked.get(), hose.row.temp_max_c.get(), &heat_source(subject, hose.row)))
}

fn heat_source(subject: &Subject<'_>, row: &HoseRow) -> Provenance {
    row_source(subject, row, row.temp_max_c, heat_limit(row))
}

/// The hose table's rows do not say how sure their temperatures are; where a limit of the scopes names
/// the same figure for that type, that limit's source stands, else the row's weakest column's.
fn row_source(subject: &Subject<'_>, row: &HoseRow, figure: Celsius, limit: Option<&str>) -> Provenance {
    let limit = limit.and_then(|key| subject.catalogue.limit(key));
    match limit.filter(|limit| limit.value == Some(figure.get())) {
        Some(limit) => limit.provenance.clone(),
        None => Provenance { source: row.source.clone(), basis: row.basis },
    }
}

fn heat_limit(row: &HoseRow) -> Option<&'static str> {
    match (row.standard.as_str(), row.kind.trim_start_matches("100")) {
        ("EN 853" | "EN 854" | "EN 857", _) | ("EN 856", "4SP" | "4SH") => Some("oil-temp-max"),
        ("EN 856" | "SAE J517" | "ISO 3862", "R12" | "R13" | "R15") => Some("oil-temp-max-hot-types"),
        ("SAE J517", "R7" | "R8") => Some("oil-temp-max-thermoplastic"),
        ("SAE J517", "R14") => Some("ptfe-temp-max"),
        _ => None,
    }
}

fn cold_limit(row: &HoseRow) -> Option<&'static str> {
    match (row.standard.as_str(), row.kind.as_str()) {
        ("SAE J517", "100R14") => Some("ptfe-temp-min"),
        ("EN 853" | "EN 854" | "EN 856" | "EN 857" | "SAE J517", _) => Some("oil-temp-min"),
        _ => None,
    }
}
