//! The build sheet.

use super::MakeError;
use super::plan::{self, SheetStep};
use super::settings::{self, EndSettings, Filled, Missing};
use super::tighten::{self, Tighten};
use crate::catalogue::{Basis, Catalogue, Connection, Provenance};
use crate::check::{Checked, Finding, Verdict, bent};
use crate::quantity::{Bar, Degrees, Millimetres};
use crate::spec::{Adapter, Cover, EndSpec, HoseRef, Role, Spec};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Everything that whoever makes the hose needs, in the order they need it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BuildSheet {
    /// The verdict it is made under: pass or caution.
    pub verdict: Verdict,
    /// What the check cautions of: whoever makes it knows.
    pub cautions: Vec<Finding>,
    /// What to fetch.
    pub parts: Vec<Part>,
    /// The cut.
    pub cut: Cut,
    /// The turn, where both ends are bent.
    pub turn: Option<Turn>,
    /// How each end goes on, A first: yours.
    pub settings: [EndSettings; 2],
    /// The ends whose settings are from a supplier's table of yours.
    pub filled: Vec<Filled>,
    /// What to get before the hose is cut.
    pub missing: Vec<Missing>,
    /// The steps.
    pub steps: Vec<SheetStep>,
    /// The proof test.
    pub proof: Proof,
    /// How each end is tightened on the machine, A first.
    pub tighten: Vec<Tighten>,
    /// How clean the finished hose has to be, and how it is made so.
    pub cleanliness: Vec<Cleanliness>,
    /// The tables it rests on.
    pub catalogue: String,
}

/// A part to fetch.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[serde(tag = "what", rename_all = "kebab-case")]
#[ts(rename = "BuildPart")]
pub enum Part {
    /// The hose.
    Hose {
        /// Its name.
        hose: HoseRef,
        /// What its cover must be.
        cover: Option<Cover>,
    },
    /// An end with its ferrule.
    End {
        /// Which.
        end: EndSpec,
    },
    /// An adapter.
    Adapter {
        /// Which.
        adapter: Adapter,
    },
}

/// A figure of the tables.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Figure {
    /// The figure.
    pub value: f64,
    /// Its unit.
    pub unit: &'static str,
    /// Where it stands.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

/// A rule of cleanliness of the tables.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Cleanliness {
    /// Its key among the limits, such as `cleanliness-general`.
    pub rule: String,
    /// What it asks: a class, a method, or what to do.
    pub asks: String,
    /// By which code the class is written; blank where it is none.
    pub code: String,
    /// What it is for.
    pub applies_to: String,
    /// Where it stands.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

/// The rules of cleanliness, in the order of the work.
const CLEANLINESS: [&str; 4] =
    ["clean-after-cutting", "cleanliness-general", "cleanliness-servo", "cleanliness-sampling"];

/// From overall length to cut length.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Cut {
    /// From sealing point to sealing point.
    pub overall_length_mm: Millimetres,
    /// What end A takes off.
    pub cutoff_a_mm: Option<Millimetres>,
    /// What end B takes off.
    pub cutoff_b_mm: Option<Millimetres>,
    /// What is cut; none while a cut-off is missing.
    pub cut_length_mm: Option<Millimetres>,
    /// How far either way the cut may be off. It is not the assembly's tolerance.
    pub aim: Figure,
    /// How far from square it may be.
    pub out_of_square: Option<Figure>,
    /// Tolerance of the finished overall length: minus (negative) and plus.
    pub length_tolerance_mm: Option<[f64; 2]>,
    /// Where that tolerance is from.
    pub length_source: Option<Provenance>,
    /// What the saw takes; none is not known.
    pub kerf_mm: Option<Millimetres>,
    /// What the cut takes off the reel: its length and the kerf. None while either is not known.
    pub off_reel_mm: Option<Millimetres>,
}

/// The turn of B's elbow against A's: looking along the hose from A to B with A's elbow up,
/// clockwise.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Turn {
    /// 0 to 359.
    pub turn_deg: Degrees,
    /// How far either way.
    pub tolerance: Option<Figure>,
}

/// The proof test.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "ProofDue")]
pub struct Proof {
    /// Working pressure of the assembly: its weakest part's rating.
    pub working_pressure_bar: Bar,
    /// Proof pressure.
    pub proof_pressure_bar: Bar,
    /// The one over the other.
    pub ratio: Figure,
    /// Shortest hold.
    pub hold_from: Figure,
    /// Longest hold.
    pub hold_to: Figure,
}

/// How far either way the cut may be off (common practice of the trade).
const AIM_MM: f64 = 2.0;

/// Widest kerf that is taken: a wider one is a slip of the finger.
const MOST_KERF_MM: f64 = 20.0;

/// Makes the build sheet of what was checked.
///
/// `settings` are the user's own, from the supplier of the ends; what they lack is listed in
/// [`BuildSheet::missing`] with nothing put in its place. `filled` says which of them are from
/// a supplier's table. `kerf` is what the user's saw takes; it counts on the reel.
///
/// # Errors
/// The check says stop; a length, or the turn of two bent ends, is missing; settings or a kerf that can not be.
pub fn make(
    catalogue: &Catalogue,
    checked: &Checked,
    settings: &[EndSettings],
    filled: Vec<Filled>,
    kerf: Option<Millimetres>,
) -> Result<BuildSheet, MakeError> {
    not_stopped(checked)?;
    let spec = &checked.spec;
    let hose = spec.hose.clone().ok_or_else(|| missing("spec.hose", "a hose by standard, type and DN"))?;
    let cut = cut(catalogue, checked, &hose, kerf)?;
    let turn = turn(catalogue, spec, cut.overall_length_mm)?;
    let proof = proof(catalogue, checked)?;
    let settings = settings::of_both_ends(settings)?;
    let tighten: Vec<Tighten> = [Role::A, Role::B]
        .iter()
        .filter_map(|role| Some(tighten::tighten(catalogue, spec.end(*role)?)))
        .collect();
    let job = plan::Job { settings: &settings, turned: turn.is_some(), flanged: flanged(catalogue, spec) };
    Ok(BuildSheet {
        verdict: checked.verdict,
        cautions: checked
            .findings
            .iter()
            .filter(|finding| finding.verdict != Verdict::Pass)
            .cloned()
            .collect(),
        parts: parts(spec, hose),
        missing: everything_missing(&cut, &settings, &tighten),
        steps: plan::steps(catalogue, &job),
        cut,
        turn,
        settings,
        filled,
        proof,
        tighten,
        cleanliness: CLEANLINESS.iter().filter_map(|key| cleanliness(catalogue, key)).collect(),
        catalogue: catalogue.version.clone(),
    })
}

fn cleanliness(catalogue: &Catalogue, key: &str) -> Option<Cleanliness> {
    let limit = catalogue.limit(key)?;
    Some(Cleanliness {
        rule: key.to_owned(),
        asks: limit.words.clone()?,
        code: limit.unit.clone(),
        applies_to: limit.applies_to.clone(),
        source: limit.provenance.source.clone(),
        basis: limit.provenance.basis,
    })
}

fn not_stopped(checked: &Checked) -> Result<(), MakeError> {
    let stops = checked.findings.iter().filter(|finding| finding.verdict == Verdict::Stop);
    let mut rules: Vec<String> = stops.map(|finding| finding.rule.clone()).collect();
    rules.dedup();
    if checked.verdict == Verdict::Stop || !rules.is_empty() {
        return Err(MakeError::Stopped { rules });
    }
    Ok(())
}

fn missing(field: &'static str, expected: &'static str) -> MakeError {
    MakeError::Missing { field, expected }
}

fn parts(spec: &Spec, hose: HoseRef) -> Vec<Part> {
    let ends =
        [Role::A, Role::B].into_iter().filter_map(|role| Some(Part::End { end: spec.end(role)?.clone() }));
    let adapters = spec.adapters.iter().map(|adapter| Part::Adapter { adapter: adapter.clone() });
    std::iter::once(Part::Hose { hose, cover: spec.cover }).chain(ends).chain(adapters).collect()
}

fn cut(
    catalogue: &Catalogue,
    checked: &Checked,
    hose: &HoseRef,
    kerf: Option<Millimetres>,
) -> Result<Cut, MakeError> {
    if let Some(value) = kerf.map(|kerf| kerf.get()).filter(|kerf| !(0.0..=MOST_KERF_MM).contains(kerf)) {
        return Err(MakeError::Kerf { value: value.to_string() });
    }
    let spec = &checked.spec;
    let overall = spec.overall_length_mm;
    let overall = overall
        .ok_or_else(|| missing("spec.overall_length_mm", "the length from sealing point to sealing point"))?;
    let cutoff = |role| spec.end(role).and_then(|end| end.cutoff_mm);
    Ok(Cut {
        overall_length_mm: overall,
        cutoff_a_mm: cutoff(Role::A),
        cutoff_b_mm: cutoff(Role::B),
        cut_length_mm: checked.cut_length_mm,
        aim: Figure {
            value: AIM_MM,
            unit: Millimetres::UNIT,
            source: "trade practice".to_owned(),
            basis: Basis::CommonPractice,
        },
        out_of_square: out_of_square(catalogue, hose),
        length_tolerance_mm: checked.length_tolerance_mm,
        length_source: checked.length_source.clone(),
        kerf_mm: kerf,
        off_reel_mm: checked.cut_length_mm.zip(kerf).map(|(cut, kerf)| Millimetres(cut.get() + kerf.get())),
    })
}

fn out_of_square(catalogue: &Catalogue, hose: &HoseRef) -> Option<Figure> {
    let bore = catalogue.hose(&hose.standard, &hose.kind, hose.dn).ok()?.id_nom_mm;
    let tolerance = catalogue.cut_tolerance(bore)?;
    Some(figure(tolerance.out_of_square_mm.get(), Millimetres::UNIT, &tolerance.provenance))
}

fn turn(catalogue: &Catalogue, spec: &Spec, overall: Millimetres) -> Result<Option<Turn>, MakeError> {
    let is_bent = |role| spec.end(role).and_then(bent) == Some(true);
    if !(is_bent(Role::A) && is_bent(Role::B)) {
        return Ok(None);
    }
    let turn_deg = spec.turn_deg;
    let turn_deg =
        turn_deg.ok_or_else(|| missing("spec.turn_deg", "the angle between the two elbows, 0 to 359"))?;
    let tolerance = catalogue.turn_tolerance(overall);
    let tolerance = tolerance.map(|row| figure(row.plus_minus_deg, Degrees::UNIT, &row.provenance));
    Ok(Some(Turn { turn_deg, tolerance }))
}

/// Twice the working pressure of the assembly, held for half a minute to a minute: the figures
/// stand in the limits.
fn proof(catalogue: &Catalogue, checked: &Checked) -> Result<Proof, MakeError> {
    let working = checked.assembly_pressure_bar;
    let working = working.ok_or_else(|| missing("spec.ends.rating_bar", "a rating of every part"))?;
    let limit = |key, unit| {
        let known =
            catalogue.limit(key).and_then(|limit| Some(figure(limit.value?, unit, &limit.provenance)));
        known.ok_or_else(|| missing("catalogue.limits", "proof-ratio, proof-hold-min-s and proof-hold-max-s"))
    };
    let ratio = limit("proof-ratio", "")?;
    Ok(Proof {
        working_pressure_bar: working,
        proof_pressure_bar: Bar(working.get() * ratio.value),
        ratio,
        hold_from: limit("proof-hold-min-s", "s")?,
        hold_to: limit("proof-hold-max-s", "s")?,
    })
}

fn figure(value: f64, unit: &'static str, provenance: &Provenance) -> Figure {
    Figure { value, unit, source: provenance.source.clone(), basis: provenance.basis }
}

fn flanged(catalogue: &Catalogue, spec: &Spec) -> bool {
    let connection = |end: &EndSpec| catalogue.connection(&end.family, &end.size).ok();
    spec.ends.iter().filter_map(connection).any(|connection| matches!(connection, Connection::Flange(_)))
}

fn everything_missing(cut: &Cut, settings: &[EndSettings; 2], tighten: &[Tighten]) -> Vec<Missing> {
    let cutoffs = [(cut.cutoff_a_mm, Role::A), (cut.cutoff_b_mm, Role::B)];
    let cutoffs = cutoffs.into_iter().filter(|(cutoff, _)| cutoff.is_none());
    let cutoffs = cutoffs.map(|(_, role)| Missing { code: settings::CUTOFF, role: Some(role) });
    let tolerance = cut.length_tolerance_mm.is_none();
    let tolerance = tolerance.then_some(Missing { code: settings::LENGTH_TOLERANCE, role: None });
    let torques = tighten.iter().filter(|end| end.values.is_empty());
    let torques = torques.map(|end| Missing { code: settings::TORQUE, role: Some(end.role) });
    let of_ends = settings.iter().flat_map(EndSettings::missing);
    cutoffs.chain(tolerance).chain(of_ends).chain(torques).collect()
}
