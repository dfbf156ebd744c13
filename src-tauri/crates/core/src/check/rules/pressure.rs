//! The weakest part sets the assembly's pressure, and surge counts as pressure.

use crate::catalogue::{Basis, Provenance};
use crate::check::limit::unverified;
use crate::check::rating::{self, Rated};
use crate::check::subject::Subject;
use crate::check::{Case, Finding, Verdict, Weakest, cases};
use crate::quantity::Bar;
use crate::spec::Service;

const RULE: &str = "pressure";
const MISSING: &str = "pressure-missing";

pub(super) fn pressure(subject: &Subject<'_>) -> Vec<Finding> {
    let surge_counts = subject.caution("C30");
    let mut findings = missing(subject, &surge_counts);
    findings.extend(contradictions(subject.service, &surge_counts));
    let required = required(subject.service);
    findings.extend(rating::parts(subject).into_iter().map(|part| held(part, required)));
    findings
}

/// The highest of working pressure, relief setting and surge. None while none of them is known.
fn required(service: &Service) -> Option<Bar> {
    let known = [service.working_pressure_bar, service.relief_bar, service.surge_pressure_bar];
    known.into_iter().flatten().max_by(|a, b| a.get().total_cmp(&b.get()))
}

fn missing(subject: &Subject<'_>, source: &Provenance) -> Vec<Finding> {
    let service = subject.service;
    let asked = [
        (service.working_pressure_bar, Verdict::Stop, cases::WORKING_PRESSURE_MISSING),
        (service.relief_bar, Verdict::Caution, cases::RELIEF_MISSING),
    ];
    let missing = asked.into_iter().filter(|(given, _, _)| given.is_none());
    let missing = missing.map(|(_, verdict, case)| Finding::new(MISSING, verdict, case).from(source));
    let surge = service.surge_pressure_bar.is_none().then(|| {
        let unknown = || Finding::new(MISSING, Verdict::Caution, cases::SURGE_MISSING).from(source);
        estimated_surge(subject).unwrap_or_else(unknown)
    });
    let reckoned = service.is_surge_estimated().then(|| {
        let surge = service.surge_pressure_bar.map(Bar::get);
        let finding = Finding::new(MISSING, Verdict::Caution, cases::SURGE_RECKONED).from(source);
        Finding { value: surge, unit: Bar::UNIT, ..finding }
    });
    missing.chain(surge).chain(reckoned).collect()
}

/// The peak that a relief setting lets through, by the factor of the tables. An estimate: it is no pass where the
/// weakest part bears it, and no stop where it does not.
fn estimated_surge(subject: &Subject<'_>) -> Option<Finding> {
    let relief = subject.service.relief_bar?;
    let factor = subject.catalogue.limit("surge-over-relief")?;
    let surge = relief.get() * factor.value?;
    let rating = rating::assembly(subject).map(|(rating, _)| rating.get());
    let key = match rating {
        Some(rating) if surge > rating => cases::SURGE_ESTIMATED_ABOVE,
        _ => cases::SURGE_ESTIMATED,
    };
    Some(
        Finding::new(MISSING, Verdict::Caution, key)
            .measured(surge, rating, Bar::UNIT)
            .about("relief", format!("{:.0}", relief.get()))
            .about("factor", factor.value.map_or_else(String::new, |factor| factor.to_string()))
            .from(&factor.provenance),
    )
}

/// A relief valve set below the pressure the line works at, or a peak below it: one of the two figures is
/// wrong, and nobody can say which.
fn contradictions(service: &Service, source: &Provenance) -> Vec<Finding> {
    let above = [
        (service.relief_bar, cases::RELIEF_BELOW_WORKING),
        (service.surge_pressure_bar, cases::SURGE_BELOW_WORKING),
    ];
    let crossed = |(given, case): (Option<Bar>, Case)| {
        let (given, working) = (given?, service.working_pressure_bar?);
        (given < working).then(|| {
            Finding::new("pressure-contradiction", Verdict::Stop, case)
                .measured(given.get(), working.get(), Bar::UNIT)
                .from(source)
        })
    };
    above.into_iter().filter_map(crossed).collect()
}

fn held(part: Rated, required: Option<Bar>) -> Finding {
    let (verdict, case) = judged(&part, required);
    let name = match part.part {
        Weakest::Hose => "hose",
        Weakest::A => "A",
        Weakest::B => "B",
        Weakest::Adapter => "adapter",
    };
    let mut finding = Finding::new(RULE, verdict, case).about("part", name).from(&part.provenance);
    finding = finding.about("name", part.name.unwrap_or_default());
    finding.value = required.map(Bar::get);
    finding.limit = part.pressure.map(Bar::get);
    finding.unit = Bar::UNIT;
    finding
}

/// A stand-in (proxy) is no rating: within it a caution at best, above it a stop.
fn judged(part: &Rated, required: Option<Bar>) -> (Verdict, Case) {
    let Some(rating) = part.pressure else { return (Verdict::Stop, cases::PRESSURE_UNKNOWN) };
    let within = required.is_none_or(|required| required <= rating);
    match (within, part.provenance.basis) {
        (false, Basis::Proxy) => (Verdict::Stop, cases::PRESSURE_ABOVE_PROXY),
        (false, _) => (Verdict::Stop, cases::PRESSURE_ABOVE_RATING),
        (true, Basis::Proxy) => (Verdict::Caution, cases::PRESSURE_PROXY),
        (true, basis) if unverified(basis) => (Verdict::Caution, cases::PRESSURE_UNVERIFIED),
        (true, _) => (Verdict::Pass, cases::PRESSURE_OK),
    }
}
