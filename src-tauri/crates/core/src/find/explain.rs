//! Why a candidate stands where it stands: what each reading says for it against a rival, and what
//! would have to be wrong for the rival to be right.

use super::belief::Class;
use super::end::Ends;
use super::model::Model;
use super::truth::Seen;
use super::worked::Worked;
use super::{End, FindError, Job, Models, Part, Readings, hose};
use crate::catalogue::{Catalogue, Provenance};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::f64::consts::LN_2;
use ts_rs::TS;

/// A reading that speaks this much for a candidate (ten to one) must be wrong for the rival to be right.
const MUST_BE_WRONG_BITS: f64 = 3.3;

/// Which candidate is to be explained.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Why {
    /// The readings of the job.
    pub readings: Readings,
    /// Which part.
    #[serde(default)]
    pub of: Part,
    /// The candidate by its place in `find`'s list; 0 is the likeliest.
    #[serde(default)]
    pub candidate: usize,
    /// The rival by its place; unless it is given, the likeliest other. Past the end of the list stands
    /// "none of these".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rival: Option<usize>,
}

/// A candidate against a rival, reading by reading.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Explained {
    /// The candidate's name, as `find` gives it.
    pub candidate: String,
    /// The rival's; none where it is "none of these".
    pub rival: Option<String>,
    /// What each reading says, the most telling first.
    pub readings: Vec<Said>,
    /// What is left: how common both are, the sizes of the other parts, and the machine's origin.
    pub together_bits: f64,
    /// All of it: the logarithm (base 2) of the odds.
    pub odds_bits: f64,
    /// Readings that would have to be wrong for the rival to be right.
    pub must_be_wrong: Vec<String>,
    /// Where the candidate's row comes from.
    pub candidate_from: Provenance,
    /// Where the rival's row comes from.
    pub rival_from: Option<Provenance>,
}

/// What one reading says for a candidate against a rival.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Said {
    /// The key of the reading; `print` for the print, `mate` for all of the machine's half.
    pub reading: String,
    /// Logarithm (base 2) of the ratio of its likelihoods: above nothing it speaks for the candidate.
    pub bits: f64,
}

/// Explains a candidate of `find`'s answer; none where the list has no such candidate.
///
/// # Errors
/// As [`find`](super::find).
pub fn explain(catalogue: &Catalogue, why: &Why) -> Result<Option<Explained>, FindError> {
    let models = Models::of(catalogue);
    let job = Job::read(catalogue, models, &why.readings)?;
    Ok(match why.of {
        Part::Hose => of_hose(&job, catalogue, models, why),
        Part::A => of_end(&job.ends[0], catalogue, &models.ends, why),
        Part::B => of_end(&job.ends[1], catalogue, &models.ends, why),
    })
}

/// A class against a class, or against "none of these".
struct Pair {
    odds_bits: f64,
    /// A hypothesis of each: all of a class agree in every reading.
    of_candidate: usize,
    of_rival: Option<usize>,
}

fn pair(classes: &[Class], unknown: f64, why: &Why) -> Option<Pair> {
    let candidate = classes.get(why.candidate)?;
    let place = why.rival.unwrap_or(usize::from(why.candidate == 0));
    let rival = classes.get(place);
    let against = rival.map_or(unknown, |class| class.probability);
    Some(Pair {
        odds_bits: (candidate.probability / against.max(f64::MIN_POSITIVE)).log2(),
        of_candidate: *candidate.members.first()?,
        of_rival: rival.and_then(|class| class.members.first().copied()),
    })
}

/// What each reading of a part says.
fn said(pair: &Pair, model: &Model, seen: &[(usize, Seen)]) -> Vec<Said> {
    let each = seen.iter().map(|&(at, seen)| {
        let column = &model.columns[at];
        let rival = match pair.of_rival {
            Some(rival) => column.ln_of(seen, rival),
            None => Worked::new(model, &[(at, seen)]).ln_of_unknown_each_alone(),
        };
        Said { reading: column.key.to_owned(), bits: (column.ln_of(seen, pair.of_candidate) - rival) / LN_2 }
    });
    each.collect()
}

fn of_hose(job: &Job, catalogue: &Catalogue, models: &Models, why: &Why) -> Option<Explained> {
    let (classes, unknown) = job.hose_classes(models);
    let pair = pair(&classes, unknown, why)?;
    let mut readings = said(&pair, &models.hoses.model, &job.hose_seen);
    if job.has_print() {
        let rival = pair.of_rival.map_or(job.print.unknown, |rival| job.print.rows[rival]);
        let bits = (job.print.rows[pair.of_candidate] - rival) / LN_2;
        readings.push(Said { reading: "print".to_owned(), bits });
    }
    let rows = hose::rows(catalogue);
    let row = |at: usize| {
        (format!("{} {} DN{}", rows[at].standard, rows[at].kind, rows[at].dn), rows[at].provenance())
    };
    Some(explained(&pair, readings, row))
}

fn of_end(end: &End, catalogue: &Catalogue, ends: &Ends, why: &Why) -> Option<Explained> {
    let (classes, unknown) = end.classes(ends);
    let pair = pair(&classes, unknown, why)?;
    let mut readings = said(&pair, &ends.model, &end.read.seen);
    if let Some(mate) = &end.read.mate {
        let rival = pair.of_rival.map_or(mate.ln_likelihood_of_unknown(), |rival| mate.ln_likelihood(rival));
        let bits = (mate.ln_likelihood(pair.of_candidate) - rival) / LN_2;
        readings.push(Said { reading: "mate".to_owned(), bits });
    }
    let row = |at: usize| {
        let row = ends.hypotheses[at].row(catalogue);
        (row.name(), row.provenance().clone())
    };
    Some(explained(&pair, readings, row))
}

fn explained(pair: &Pair, mut readings: Vec<Said>, row: impl Fn(usize) -> (String, Provenance)) -> Explained {
    readings.sort_by(|a, b| b.bits.abs().total_cmp(&a.bits.abs()));
    let of_readings: f64 = readings.iter().map(|said| said.bits).sum();
    let wrong = readings.iter().filter(|said| said.bits >= MUST_BE_WRONG_BITS);
    let (candidate, candidate_from) = row(pair.of_candidate);
    let (rival, rival_from) = pair.of_rival.map(row).unzip();
    Explained {
        candidate,
        rival,
        together_bits: pair.odds_bits - of_readings,
        odds_bits: pair.odds_bits,
        must_be_wrong: wrong.map(|said| said.reading.clone()).collect(),
        candidate_from,
        rival_from,
        readings,
    }
}
