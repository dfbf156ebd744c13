//! The weakest part sets the assembly's pressure, and surge counts as pressure.

use crate::catalogue::{Basis, Provenance};
use crate::check::limit::unverified;
use crate::check::rating::{self, Rated};
use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, Weakest, cases};
use crate::quantity::Bar;
use crate::spec::Service;

const RULE: &str = "pressure";

pub(super) fn pressure(subject: &Subject<'_>) -> Vec<Finding> {
    let surge_counts = subject.caution("C30");
    let mut findings = missing(subject.service, &surge_counts);
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

fn missing(service: &Service, source: &Provenance) -> Vec<Finding> {
    let asked = [
        (service.working_pressure_bar, Verdict::Stop, cases::WORKING_PRESSURE_MISSING),
        (service.relief_bar, Verdict::Caution, cases::RELIEF_MISSING),
        (service.surge_pressure_bar, Verdict::Caution, cases::SURGE_MISSING),
    ];
    let missing = asked.into_iter().filter(|(given, ..)| given.is_none());
    missing.map(|(_, verdict, key)| Finding::new("pressure-missing", verdict, key).from(source)).collect()
}

/// A relief valve set below the pressure the line works at, or a peak below it: one of the two figures is
/// wrong, and nobody can say which.
fn contradictions(service: &Service, source: &Provenance) -> Vec<Finding> {
    let above = [
        (service.relief_bar, cases::RELIEF_BELOW_WORKING),
        (service.surge_pressure_bar, cases::SURGE_BELOW_WORKING),
    ];
    let crossed = |(given, key): (Option<Bar>, &'static str)| {
        let (given, working) = (given?, service.working_pressure_bar?);
        (given < working).then(|| {
            Finding::new("pressure-contradiction", Verdict::Stop, key)
                .measured(given.get(), working.get(), Bar::UNIT)
                .from(source)
        })
    };
    above.into_iter().filter_map(crossed).collect()
}

fn held(part: Rated, required: Option<Bar>) -> Finding {
    let (verdict, key) = judged(&part, required);
    let name = match part.part {
        Weakest::Hose => "hose",
        Weakest::A => "A",
        Weakest::B => "B",
        Weakest::Adapter => "adapter",
    };
    let mut finding = Finding::new(RULE, verdict, key).about("part", name).from(&part.provenance);
    finding = finding.about("name", part.name.unwrap_or_default());
    finding.value = required.map(Bar::get);
    finding.limit = part.pressure.map(Bar::get);
    finding.unit = Bar::UNIT;
    finding
}

/// A stand-in (proxy) is no rating: within it a caution at best, above it a stop.
fn judged(part: &Rated, required: Option<Bar>) -> (Verdict, &'static str) {
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
