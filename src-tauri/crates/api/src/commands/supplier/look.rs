//! What is known of how the ends of a spec go on: the suppliers' rows, the last time, and learned cut-offs.

use super::super::make::MakeQuestion;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::cutoff::{CutoffLearned, CutoffSum, Lengths, learned};
use hosewright_core::make::{EndSettings, Filled};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{Assembly, PersonId, Proof};
use hosewright_core::spec::{EndSpec, HoseRef, Role, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::SupplierKept;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What is to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SupplierLookupQuestion {
    /// Hose and ends.
    pub spec: Spec,
    /// Settings as far as they are known: the series of an end parts its cut-offs from another's.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub settings: Vec<EndSettings>,
}

/// What is known.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SupplierLookup {
    /// Of each end, A first.
    pub ends: Vec<EndKnown>,
    /// Both cut-offs together, learned from finished lengths.
    pub cutoffs: Option<CutoffSum>,
}

/// What is known of one end.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct EndKnown {
    /// Which.
    pub role: Role,
    /// The rows of all suppliers that fit.
    pub rows: Vec<SupplierKept>,
    /// How it was done last time for the same hose and end.
    pub last: Option<LastTime>,
    /// Its cut-off, learned from finished lengths.
    pub cutoff: Option<CutoffLearned>,
}

/// How an end was put on last time.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LastTime {
    /// In which assembly.
    pub code: TagCode,
    /// When it was assembled.
    pub assembled: Option<NaiveDate>,
    /// By which settings, for the end that is asked.
    pub settings: EndSettings,
    /// With which cut-off.
    pub cutoff_mm: Option<Millimetres>,
    /// By whom, where anyone said so and the name stands.
    pub by: Option<String>,
}

/// The suppliers' rows for hose and ends, how it was done last time, and what finished lengths taught of the cut-offs.
///
/// # Errors
/// The hose or an end is not in the tables; the register can not be read.
pub fn lookup(
    api: &mut Api,
    asked: SupplierLookupQuestion,
    _: &[u8],
) -> Result<Answer<SupplierLookup>, ApiError> {
    let spec = named(api.catalogue, &asked.spec)?;
    let hose = spec.hose.clone().ok_or_else(|| ApiError::input("spec.hose", "a hose is expected"))?;
    let benches = api.register()?.benches()?;
    let people = api.register()?.people()?;
    let name =
        |id: PersonId| people.iter().find(|person| person.id == id).and_then(|person| person.name.clone());
    let rows = api.register()?.supplier_rows_for(&hose.standard, &hose.kind, hose.dn)?;
    let taught = taught(api.catalogue, &spec, &asked.settings, &benches);
    let ends = [Role::A, Role::B].into_iter().filter_map(|role| {
        let end = spec.end(role)?;
        let fitting = rows.iter().filter(|kept| kept.row.holds(&hose, end)).cloned();
        Some(EndKnown {
            role,
            rows: fitting.collect(),
            last: last(api.catalogue, &benches, &hose, end, &name),
            cutoff: taught.as_ref().and_then(|taught| if role == Role::A { taught.a } else { taught.b }),
        })
    });
    let ends = ends.collect();
    Ok(api.answer(SupplierLookup { ends, cutoffs: taught.and_then(|taught| taught.sum) }))
}

/// The spec with its names as the tables have them. What is not in the tables is an error.
fn named(catalogue: &Catalogue, spec: &Spec) -> Result<Spec, ApiError> {
    let mut spec = spec.clone();
    if let Some(hose) = &mut spec.hose {
        let found = catalogue.hose(&hose.standard, &hose.kind, hose.dn);
        let found = found.map_err(|error| ApiError::input("spec.hose", &error))?;
        (hose.standard, hose.kind, hose.dn) = (found.standard.clone(), found.kind.clone(), found.dn);
    }
    for end in &mut spec.ends {
        let found = catalogue.connection(&end.family, &end.size);
        let found = found.map_err(|error| ApiError::input("spec.ends", &error))?;
        (end.family, end.size) = (found.family().to_owned(), found.size().to_owned());
    }
    Ok(spec)
}

fn taught(
    catalogue: &Catalogue,
    spec: &Spec,
    settings: &[EndSettings],
    benches: &[Assembly],
) -> Option<hosewright_core::cutoff::CutoffsLearned> {
    let made: Vec<Lengths> = benches.iter().filter_map(|made| lengths(catalogue, made)).collect();
    let nothing = Millimetres(0.0);
    let ends = Lengths::of(spec, |role| series(settings, role), Some(nothing), Some(nothing))?.ends;
    Some(learned(&ends, &made))
}

fn lengths(catalogue: &Catalogue, made: &Assembly) -> Option<Lengths> {
    let bench = made.bench.as_ref()?;
    let spec = named(catalogue, &made.spec).ok()?;
    Lengths::of(&spec, |role| series(&bench.settings, role), bench.cut_length_mm, bench.finished.length_mm)
}

fn series(settings: &[EndSettings], role: Role) -> Option<String> {
    settings.iter().find(|settings| settings.role == role).and_then(|settings| settings.series.clone())
}

/// The last time this end was put on this hose, at whichever side.
fn last(
    catalogue: &Catalogue,
    benches: &[Assembly],
    hose: &HoseRef,
    wanted: &EndSpec,
    name: &impl Fn(PersonId) -> Option<String>,
) -> Option<LastTime> {
    benches.iter().rev().find_map(|made| {
        // How a hose was made that failed is no example.
        if matches!(made.proof, Proof::Failed { .. }) {
            return None;
        }
        let bench = made.bench.as_ref()?;
        let spec = named(catalogue, &made.spec).ok()?;
        let of = spec.hose.as_ref()?;
        if (&of.standard, &of.kind, of.dn) != (&hose.standard, &hose.kind, hose.dn) {
            return None;
        }
        let same = |end: &&EndSpec| (&end.family, &end.size) == (&wanted.family, &wanted.size);
        let end = spec.end(wanted.role).filter(same).or_else(|| spec.ends.iter().find(same))?;
        let settings = bench.settings.iter().find(|settings| settings.role == end.role)?.clone();
        if settings == EndSettings::unknown(end.role) {
            return None;
        }
        Some(LastTime {
            code: made.code,
            assembled: made.assembled,
            settings: EndSettings { role: wanted.role, ..settings },
            // A cut-off is of one form of an end: an elbow's is not a straight one's.
            cutoff_mm: end.cutoff_mm.filter(|_| (&end.form, end.gender) == (&wanted.form, wanted.gender)),
            by: bench.steps.iter().rev().find_map(|step| step.by).and_then(name),
        })
    })
}

/// Fills ends that nobody gave settings for, each from the one row that fits it; of one supplier's rows one for that
/// end stands over one for any. Where several fit a person chooses: figures of two suppliers are never mixed. Without an open register, or with a hose or end that is not in the tables,
/// nothing is filled.
pub(in super::super) fn fill(api: &mut Api, asked: &mut MakeQuestion) -> Result<Vec<Filled>, ApiError> {
    let catalogue = api.catalogue;
    let Some(register) = &api.register else { return Ok(Vec::new()) };
    let Ok(spec) = named(catalogue, &asked.question.spec) else { return Ok(Vec::new()) };
    let Some(hose) = &spec.hose else { return Ok(Vec::new()) };
    let rows = register.supplier_rows_for(&hose.standard, &hose.kind, hose.dn)?;
    let mut filled = Vec::new();
    for role in [Role::A, Role::B] {
        let Some(end) = spec.end(role) else { continue };
        let fitting: Vec<_> = rows
            .iter()
            .filter(|kept| kept.row.holds(hose, end))
            .filter(|kept| asked.supplier.as_ref().is_none_or(|wanted| *wanted == kept.row.supplier))
            .collect();
        let narrower = |kept: &SupplierKept| {
            let other = |other: &&SupplierKept| other.row.supplier == kept.row.supplier;
            fitting.iter().copied().filter(other).any(|other| other.row.narrowness() > kept.row.narrowness())
        };
        let mut narrowest = fitting.iter().copied().filter(|kept| !narrower(kept));
        let (Some(kept), None) = (narrowest.next(), narrowest.next()) else { continue };
        let given =
            asked.settings.iter().any(|given| given.role == role && *given != EndSettings::unknown(role));
        if given {
            continue;
        }
        asked.settings.retain(|given| given.role != role);
        let mut settings = kept.row.settings(role);
        // A row knows no form: its cut-off is taken for the straight end of just that family and size, no other.
        let of_this = kept.row.family.is_some() && kept.row.size.is_some();
        let straight = |end: &&mut EndSpec| of_this && end.form.as_deref() == Some("straight");
        let open = asked.question.spec.ends.iter_mut();
        let open = { open }.find(|end| end.role == role && end.cutoff_mm.is_none()).filter(straight);
        let cutoff = open.is_some() && kept.row.cutoff_mm.is_some();
        if let Some(end) = open {
            end.cutoff_mm = kept.row.cutoff_mm;
        }
        if !cutoff {
            settings.cutoff_source = None;
        }
        asked.settings.push(settings);
        filled.push(Filled {
            role,
            supplier: kept.row.supplier.clone(),
            from: kept.row.from.clone(),
            cutoff,
        });
    }
    Ok(filled)
}
