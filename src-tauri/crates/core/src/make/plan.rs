//! The steps of the job in order, each with the cautions that belong to it.

use super::settings::EndSettings;
use crate::catalogue::{Basis, Catalogue, Caution, Step};
use crate::find::CALIPER_ERROR;
use crate::quantity::Millimetres;
use crate::spec::Role;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// One step of a build sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SheetStep {
    /// The part of the job it belongs to.
    pub step: Step,
    /// What is done: the words `step-<code>`.
    pub code: &'static str,
    /// Which end; none for the whole.
    pub role: Option<Role>,
    /// What to mind at this step and not before.
    pub cautions: Vec<StepCaution>,
}

/// A caution at its step.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct StepCaution {
    /// Its number in the table.
    pub id: String,
    /// What to do or not to do.
    pub caution: String,
    /// What happens otherwise.
    pub why: String,
    /// Where it stands.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

/// When a step is part of the job.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum When {
    Always,
    /// Once for that end.
    End(Role),
    /// The crimp tolerance of that end is too fine for a caliper.
    Fine(Role),
    /// For that end, unless its settings say that nothing is skived.
    Skived(Role),
    /// With two bent ends.
    Turned,
    /// With a flange at either end.
    Flanged,
}

struct Planned {
    step: Step,
    code: &'static str,
    when: When,
    cautions: &'static [&'static str],
}

const fn planned(step: Step, code: &'static str, when: When, cautions: &'static [&'static str]) -> Planned {
    Planned { step, code, when, cautions }
}

use Role::{A, B};
use Step::{Before, Fit, Make, Prove, Tag};
use When::{Always, End, Fine, Flanged, Skived, Turned};

/// The job in order (common practice of the trade). Sleeves go on before the second end.
const PLAN: &[Planned] = &[
    planned(Before, "plan", Always, &["C08", "C16", "C17", "C18"]),
    planned(Before, "lower-load", Always, &["C09"]),
    planned(Before, "lock-out", Always, &["C10"]),
    planned(Before, "release-pressure", Always, &["C11", "C12", "C13", "C14"]),
    planned(Before, "mark-lines", Always, &["C60"]),
    planned(Before, "loosen", Always, &["C15", "C19", "C06", "C07"]),
    planned(Before, "if-injected", Always, &["C01", "C02", "C03", "C04", "C05"]),
    planned(Make, "fetch-parts", Always, &["C42", "C43"]),
    planned(Make, "cut", Always, &["C35", "C36", "C37", "C38"]),
    planned(Make, "clean-bore", Always, &["C44"]),
    planned(Make, "skive", Skived(A), &[]),
    planned(Make, "mark-insertion", End(A), &[]),
    planned(Make, "push-on", End(A), &[]),
    planned(Make, "crimp", End(A), &["C39", "C40", "C41"]),
    planned(Make, "fine-instrument", Fine(A), &[]),
    planned(Make, "measure-crimp", End(A), &[]),
    planned(Make, "sleeves", Always, &[]),
    planned(Make, "skive", Skived(B), &[]),
    planned(Make, "mark-insertion", End(B), &[]),
    planned(Make, "push-on", End(B), &[]),
    planned(Make, "set-turn", Turned, &[]),
    planned(Make, "crimp", End(B), &["C39", "C40", "C41"]),
    planned(Make, "fine-instrument", Fine(B), &[]),
    planned(Make, "measure-crimp", End(B), &[]),
    planned(Make, "mark-not-moved", Always, &[]),
    planned(Make, "bore-gauge", Always, &[]),
    planned(Make, "nuts-free", Always, &[]),
    planned(Make, "measure-length", Always, &[]),
    planned(Make, "measure-turn", Turned, &[]),
    planned(Make, "flush-and-cap", Always, &["C44"]),
    planned(Prove, "connect-rig", Always, &["C45", "C48", "C49"]),
    planned(Prove, "bleed-rig", Always, &["C46"]),
    planned(Prove, "close-guard", Always, &["C47"]),
    planned(Prove, "raise-pressure", Always, &["C50"]),
    planned(Prove, "hold-pressure", Always, &[]),
    planned(Prove, "release-and-look", Always, &["C51"]),
    planned(Prove, "no-rig", Always, &["C52"]),
    planned(Tag, "mark-ferrule", Always, &["C53", "C54"]),
    planned(Tag, "label", Always, &["C55"]),
    planned(Fit, "match-lines", Always, &["C60", "C64"]),
    planned(Fit, "new-seals", Always, &["C57", "C58"]),
    planned(Fit, "tighten", Always, &["C56"]),
    planned(Fit, "tighten-flange", Flanged, &["C58", "C59"]),
    planned(Fit, "lay-straight", Always, &["C61"]),
    planned(Fit, "bleed-and-fill", Always, &["C62"]),
    planned(Fit, "first-run", Always, &["C63", "C66"]),
    planned(Fit, "leak-check", Always, &["C20", "C21", "C22"]),
    planned(Fit, "clean-up", Always, &["C65"]),
    planned(Fit, "log-hours", Always, &[]),
];

/// Cautions of these steps are on the sheet whether or not the plan names them.
const ON_THE_SHEET: [Step; 5] = [Before, Make, Prove, Tag, Fit];

/// The code of every step, for the test that each has words.
pub fn codes() -> impl Iterator<Item = &'static str> {
    PLAN.iter().map(|planned| planned.code)
}

/// What of the assembly decides which steps there are.
pub(super) struct Job<'a> {
    pub(super) settings: &'a [EndSettings; 2],
    pub(super) turned: bool,
    pub(super) flanged: bool,
}

/// The steps of that job.
pub(super) fn steps(catalogue: &Catalogue, job: &Job<'_>) -> Vec<SheetStep> {
    let mut steps: Vec<SheetStep> = PLAN
        .iter()
        .filter(|planned| job.needs(planned.when))
        .map(|planned| SheetStep {
            step: planned.step,
            code: planned.code,
            role: planned.when.role(),
            cautions: cautions(catalogue, planned.cautions),
        })
        .collect();
    place_the_rest(catalogue, &mut steps);
    steps
}

/// The steps that the hoses of a batch have in common while they are made, proved and tagged, each once and for no end of
/// its own.
pub fn shared_steps(catalogue: &Catalogue) -> Vec<SheetStep> {
    let mut steps: Vec<SheetStep> = Vec::new();
    for planned in PLAN.iter().filter(|planned| [Make, Prove, Tag].contains(&planned.step)) {
        let has_cautions = !planned.cautions.is_empty();
        let in_common = matches!(planned.when, Always) || has_cautions;
        if in_common && !steps.iter().any(|step| step.code == planned.code) {
            let cautions = cautions(catalogue, planned.cautions);
            steps.push(SheetStep { step: planned.step, code: planned.code, role: None, cautions });
        }
    }
    place_the_rest(catalogue, &mut steps);
    steps
}

impl Job<'_> {
    fn needs(&self, when: When) -> bool {
        match when {
            Always | End(_) => true,
            Skived(role) => {
                self.settings.iter().any(|settings| settings.role == role && settings.may_need_skiving())
            }
            Fine(role) => self.settings.iter().any(|settings| {
                settings.role == role && settings.crimp_tolerance_mm.is_some_and(too_fine_for_a_caliper)
            }),
            Turned => self.turned,
            Flanged => self.flanged,
        }
    }
}

/// Whether a caliper's own error takes half of a tolerance or more: what it reads as good may then be outside.
fn too_fine_for_a_caliper(tolerance: Millimetres) -> bool {
    tolerance.get() <= 2.0 * CALIPER_ERROR.get()
}

impl When {
    fn role(self) -> Option<Role> {
        match self {
            End(role) | Skived(role) | Fine(role) => Some(role),
            Always | Turned | Flanged => None,
        }
    }
}

fn cautions(catalogue: &Catalogue, ids: &[&str]) -> Vec<StepCaution> {
    let row = |id: &&str| catalogue.cautions.iter().find(|caution| caution.id == *id);
    ids.iter().filter_map(row).map(StepCaution::of).collect()
}

/// A caution that the plan does not know yet goes to the first step of its part of the job.
fn place_the_rest(catalogue: &Catalogue, steps: &mut [SheetStep]) {
    let known = |id: &str| PLAN.iter().any(|planned| planned.cautions.contains(&id));
    let rest = catalogue.cautions.iter().filter(|row| ON_THE_SHEET.contains(&row.step) && !known(&row.id));
    for row in rest {
        if let Some(first) = steps.iter_mut().find(|step| step.step == row.step) {
            first.cautions.push(StepCaution::of(row));
        }
    }
}

impl StepCaution {
    fn of(row: &Caution) -> Self {
        Self {
            id: row.id.clone(),
            caution: row.caution.clone(),
            why: row.why.clone(),
            source: row.provenance.source.clone(),
            basis: row.provenance.basis,
        }
    }
}
