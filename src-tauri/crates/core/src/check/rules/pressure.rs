//! The weakest part sets the assembly's pressure, and surge counts as pressure.

use crate::catalogue::{Basis, Provenance};
use crate::check::limit::unverified;
use crate::check::rating::{self, Rated};
use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, cases};
use crate::quantity::Bar;
use crate::spec::Service;

const RULE: &str = "pressure";

pub(super) fn pressure(subject: &Subject<'_>) -> Vec<Finding> {
    let surge_counts = subject.caution("C30");
    let mut findings = missing(subject.service, &surge_counts);
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

fn held(part: Rated, required: Option<Bar>) -> Finding {
    let (verdict, key) = judged(&part, required);
    let mut finding = Finding::new(RULE, verdict, key).about("part", part.name).from(&part.provenance);
    finding.value = required.map(Bar::get);
    finding.limit = part.pressure.map(Bar::get);
    finding.unit = Bar::UNIT;
    finding
}

/// A stand-in (proxy) is no rating: within it a caution at best, above it a stop.
fn judged(part: &Rated, required: Option<Bar>) -> (Verdict, &'static str) {
    let basis = part.provenance.basis;
    let Some(rating) = part.pressure.filter(|_| basis != Basis::None) else {
        return (Verdict::Stop, cases::PRESSURE_UNKNOWN);
    };
    let within = required.is_none_or(|required| required <= rating);
    match (within, basis) {
        (false, Basis::Proxy) => (Verdict::Stop, cases::PRESSURE_ABOVE_PROXY),
        (false, _) => (Verdict::Stop, cases::PRESSURE_ABOVE_RATING),
        (true, Basis::Proxy) => (Verdict::Caution, cases::PRESSURE_PROXY),
        (true, basis) if unverified(basis) => (Verdict::Caution, cases::PRESSURE_UNVERIFIED),
        (true, _) => (Verdict::Pass, cases::PRESSURE_OK),
    }
}
