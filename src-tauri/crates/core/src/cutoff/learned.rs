//! What finished lengths say of cut-offs: a finished length less its cut length is what both ends add to the hose.

use crate::measure::robust;
use crate::quantity::Millimetres;
use crate::spec::{EndSpec, Role};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// The lengths of one hose that was made, with its ends.
#[derive(Debug, Clone, PartialEq)]
pub struct Lengths {
    /// Its ends, each with the series of its fitting where that is known.
    pub ends: [(EndSpec, Option<String>); 2],
    /// Length of the hose as it was cut.
    pub cut: Millimetres,
    /// Length of the assembly as it was measured.
    pub finished: Millimetres,
}

/// What was learned for the ends of one assembly.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutoffsLearned {
    /// Both cut-offs together, from hoses with these two ends; none where none was measured.
    pub sum: Option<CutoffSum>,
    /// The cut-off of end A.
    pub a: Option<CutoffLearned>,
    /// The cut-off of end B.
    pub b: Option<CutoffLearned>,
}

/// Both cut-offs of two ends together.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutoffSum {
    /// The robust mean.
    pub mm: Millimetres,
    /// Robust standard deviation; none of fewer than three.
    pub spread_mm: Option<Millimetres>,
    /// From how many hoses.
    pub n: usize,
}

/// The cut-off of one end.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutoffLearned {
    /// The robust mean.
    pub mm: Millimetres,
    /// Robust standard deviation; none of fewer than three.
    pub spread_mm: Option<Millimetres>,
    /// From how many hoses.
    pub n: usize,
    /// How it was parted from the other end's.
    pub how: HowLearned,
}

/// How the cut-off of one end was parted from the other's.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum HowLearned {
    /// Half of what hoses with two such ends took.
    SameEnds,
    /// What both took together, less the other's known cut-off.
    LessOther,
}

/// The most that two cut-offs take together: more is a slip of the tape.
const MOST_MM: f64 = 2000.0;

/// What was learned for these two ends. A cut-off that is given for one of them stands, and parts the other's.
pub fn learned(ends: &[(EndSpec, Option<String>); 2], made: &[Lengths]) -> CutoffsLearned {
    let [a, b] = ends;
    let pair = |lengths: &Lengths| {
        let [one, other] = &lengths.ends;
        (alike(one, a) && alike(other, b)) || (alike(one, b) && alike(other, a))
    };
    let sum = CutoffSum::of(made, pair);
    CutoffsLearned { a: of_end(a, b, made, sum), b: of_end(b, a, made, sum), sum }
}

fn of_end(
    end: &(EndSpec, Option<String>),
    other: &(EndSpec, Option<String>),
    made: &[Lengths],
    sum: Option<CutoffSum>,
) -> Option<CutoffLearned> {
    let twins = CutoffSum::of(made, |lengths| lengths.ends.iter().all(|one| alike(one, end)));
    if let Some(CutoffSum { mm, spread_mm, n }) = twins {
        let half = |mm: Millimetres| Millimetres(mm.get() / 2.0);
        return Some(CutoffLearned {
            mm: half(mm),
            spread_mm: spread_mm.map(half),
            n,
            how: HowLearned::SameEnds,
        });
    }
    let left = sum?.mm.get() - other.0.cutoff_mm?.get();
    (left > 0.0).then_some(CutoffLearned {
        mm: Millimetres(left),
        spread_mm: sum?.spread_mm,
        n: sum?.n,
        how: HowLearned::LessOther,
    })
}

impl CutoffSum {
    fn of(made: &[Lengths], wanted: impl Fn(&Lengths) -> bool) -> Option<Self> {
        let sums = made.iter().filter(|lengths| wanted(lengths));
        let sums = sums.map(|lengths| lengths.finished.get() - lengths.cut.get());
        let sums: Vec<f64> = sums.filter(|sum| *sum > 0.0 && *sum < MOST_MM).collect();
        let robust = robust(&sums)?;
        Some(Self {
            mm: Millimetres(robust.mean),
            spread_mm: robust.deviation.map(Millimetres),
            n: robust.count,
        })
    }
}

/// Whether two ends take the same: one form of one size and family, of one series.
fn alike((one, series): &(EndSpec, Option<String>), (other, of): &(EndSpec, Option<String>)) -> bool {
    let form = |end: &EndSpec| end.form.clone().unwrap_or_else(|| "straight".to_owned());
    (&one.family, &one.size, one.gender, form(one), one.drop_mm)
        == (&other.family, &other.size, other.gender, form(other), other.drop_mm)
        && series == of
}

/// The ends of an assembly, A first, with the series of each; none where one is not known.
impl Lengths {
    /// From the ends and series of an assembly with its two lengths.
    pub fn of(
        spec: &crate::spec::Spec,
        series: impl Fn(Role) -> Option<String>,
        cut: Option<Millimetres>,
        finished: Option<Millimetres>,
    ) -> Option<Self> {
        let end = |role| Some((spec.end(role)?.clone(), series(role)));
        Some(Self { ends: [end(Role::A)?, end(Role::B)?], cut: cut?, finished: finished? })
    }
}
