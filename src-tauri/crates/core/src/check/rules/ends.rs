//! Each end: settled by what was read, of the right size, and wholly described.

use crate::catalogue::Connection;
use crate::check::subject::{End, Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::find::{EndCandidate, EndFound};
use crate::spec::{Between, Gender};

pub(super) fn ends(subject: &Subject<'_>) -> Vec<Finding> {
    let of_end = |end| {
        let mut findings = vec![settled(subject, end)];
        findings.extend(described(end));
        findings.extend(size(subject, end));
        findings.into_iter().map(|finding| named(finding, end))
    };
    subject.ends.iter().flat_map(of_end).collect()
}

fn named(finding: Finding, end: &End<'_>) -> Finding {
    finding
        .about("end", format!("{:?}", end.spec.role))
        .about("family", &end.spec.family)
        .about("size", &end.spec.size)
}

/// An end is never guessed: what was read must have settled it, and on what the machine will see: the spec's own end,
/// or the adapter that sits on it.
fn settled(subject: &Subject<'_>, end: &End<'_>) -> Finding {
    let role = end.spec.role;
    let stop = |key| Finding::new("end-unsettled", Verdict::Stop, key).from(&practice());
    let between = match between(subject, end).as_slice() {
        [] => None,
        [one] if one.hose_side.takes(end.spec) => Some(*one),
        [_] => return stop(cases::ADAPTER_MISFIT),
        _ => return stop(cases::ADAPTERS_STACKED),
    };
    let seen = between.map_or_else(
        || Seen { family: end.connection.family(), size: end.connection.size(), gender: end.spec.gender },
        |between| Seen {
            family: &between.machine_side.family,
            size: &between.machine_side.size,
            gender: between.machine_side.gender,
        },
    );
    let read = subject.end_found(role);
    let said = subject.found().and_then(|found| found.settled).map(|settled| settled.end(role));
    let (verdict, case) = match (read, said) {
        (_, Some(false)) | (Some(_), None) => (Verdict::Stop, cases::END_UNSETTLED),
        (None, _) => (Verdict::Caution, cases::END_NOT_READ),
        (Some(read), Some(true)) if is_the_one(read, &seen) => (Verdict::Pass, cases::END_OK),
        (Some(_), Some(true)) => (Verdict::Stop, cases::END_DIFFERS),
    };
    Finding::new("end-unsettled", verdict, case).from(&practice())
}

/// What the machine sees of the assembly at an end.
struct Seen<'a> {
    family: &'a str,
    size: &'a str,
    gender: Option<Gender>,
}

/// The adapters that are said to sit on that end.
fn between<'a>(subject: &Subject<'a>, end: &End<'_>) -> Vec<&'a Between> {
    let all = subject.spec.adapters.iter().filter_map(|adapter| adapter.between.as_ref());
    all.filter(|between| between.role == end.spec.role).collect()
}

/// Whether the likeliest class of what was read holds what the machine sees.
fn is_the_one(read: &EndFound, seen: &Seen<'_>) -> bool {
    let likeliest = read.candidates.iter().max_by(|a, b| a.probability.total_cmp(&b.probability));
    likeliest.is_some_and(|candidate| same_end(candidate, seen))
}

fn same_end(candidate: &EndCandidate, seen: &Seen<'_>) -> bool {
    let itself = candidate.family == seen.family && candidate.size == seen.size;
    let twin = candidate.also.iter().any(|also| also.family == seen.family && also.size == seen.size);
    let genders = candidate.gender.zip(seen.gender);
    (itself || twin) && genders.is_none_or(|(read, asked)| read == asked)
}

/// What must be said of an end before it can be bought and fitted.
fn described(end: &End<'_>) -> Vec<Finding> {
    let threaded = matches!(end.connection, Connection::End(row) if row.thread.is_some());
    let missing = [
        (threaded && end.spec.gender.is_none(), cases::END_GENDER_MISSING),
        (end.spec.form.is_none(), cases::END_FORM_MISSING),
        (end.bent() == Some(true) && end.spec.drop_mm.is_none(), cases::END_DROP_MISSING),
    ];
    let caution = |key| Finding::new("end-described", Verdict::Caution, key).from(&practice());
    missing.into_iter().filter(|(missing, _)| *missing).map(|(_, key)| caution(key)).collect()
}

/// An end of another size than its hose (a jump size) exists, but is seldom meant.
fn size(subject: &Subject<'_>, end: &End<'_>) -> Option<Finding> {
    let hose = subject.hose?.row.dn;
    let new = |verdict, case| Finding::new("end-size", verdict, case).from(&practice());
    Some(match end.connection.dn() {
        None => new(Verdict::Caution, cases::SIZE_UNKNOWN),
        Some(dn) => {
            let (verdict, case) = if subject.catalogue.one_size(dn, hose) {
                (Verdict::Pass, cases::SIZE_OK)
            } else {
                (Verdict::Caution, cases::SIZE_JUMP)
            };
            new(verdict, case).measured(dn.get(), hose.get(), "DN")
        }
    })
}
