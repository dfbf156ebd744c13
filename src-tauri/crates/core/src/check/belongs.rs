//! Whether a hose is the one that belongs at a place. Another bore, other ends or another length may go on all the same and
//! be the next failure.

use super::subject::practice;
use super::{Case, Finding, Verdict, cases};
use crate::catalogue::{Catalogue, LengthPractice};
use crate::quantity::Millimetres;
use crate::spec::{EndSpec, HoseRef, Spec};

/// What tells a hose from the one that belongs there, gravest first; nothing where nobody said what belongs there. What is
/// known of one of the two alone is not compared.
pub fn belongs(catalogue: &Catalogue, there: &Spec, hose: &Spec) -> Vec<Finding> {
    let found = [bore(catalogue, there, hose), ends(catalogue, there, hose), length(catalogue, there, hose)];
    found.into_iter().flatten().collect()
}

fn bore(catalogue: &Catalogue, there: &Spec, hose: &Spec) -> Option<Finding> {
    let (there, hose) = (there.hose.as_ref()?, hose.hose.as_ref()?);
    (!catalogue.one_size(there.dn, hose.dn)).then(|| {
        other(Verdict::Stop, cases::BELONGS_BORE)
            .measured(hose.dn.get(), there.dn.get(), "DN")
            .about("there", name(there))
            .about("hose", name(hose))
    })
}

fn name(hose: &HoseRef) -> String {
    format!("{} {} DN {}", hose.standard, hose.kind, hose.dn)
}

/// Either way round: a hose has no front.
fn ends(catalogue: &Catalogue, there: &Spec, hose: &Spec) -> Option<Finding> {
    let both = |spec: &Spec| {
        let mut names: Vec<String> = spec.ends.iter().map(|end| connection(catalogue, end)).collect();
        names.sort_unstable();
        (names.len() == 2).then_some(names)
    };
    let (belong, carried) = (both(there)?, both(hose)?);
    // What an adapter makes of an end is a person's to judge.
    let verdict =
        if hose.adapters.is_empty() && there.adapters.is_empty() { Verdict::Stop } else { Verdict::Caution };
    (belong != carried).then(|| {
        other(verdict, cases::BELONGS_ENDS)
            .about("there", belong.join(", "))
            .about("hose", carried.join(", "))
    })
}

/// By the tables' name, which is one for all that people call it.
fn connection(catalogue: &Catalogue, end: &EndSpec) -> String {
    match catalogue.connection(&end.family, &end.size) {
        Ok(row) => row.name(),
        Err(_) => format!("{} {}", end.family, end.size),
    }
}

/// By more than the tolerance of what belongs there, either way.
fn length(catalogue: &Catalogue, there: &Spec, hose: &Spec) -> Option<Finding> {
    let (belongs, carried) = (there.overall_length_mm?, hose.overall_length_mm?);
    let dn = there.hose.as_ref().or(hose.hose.as_ref())?.dn;
    let row = catalogue.length_tolerance(LengthPractice::default(), dn, belongs)?;
    let [less, more] = row.at(belongs);
    let case = match carried.get() - belongs.get() {
        off if off < less => cases::BELONGS_SHORTER,
        off if off > more => cases::BELONGS_LONGER,
        _ => return None,
    };
    let finding = other(Verdict::Caution, case).measured(carried.get(), belongs.get(), Millimetres::UNIT);
    Some(finding.from(&row.provenance))
}

fn other(verdict: Verdict, case: Case) -> Finding {
    Finding::new("belongs", verdict, case).from(&practice())
}
