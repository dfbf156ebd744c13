//! Labels of many hoses at once: of a machine, of what falls due, of codes that were picked.

use super::label::{Composed, DiameterFrom, composed};
use super::recorded;
use super::scan::sits;
use crate::commands::File;
use crate::commands::care::lines;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::record::{Body, Labelled, LabelledHow, MachineId};
use hosewright_core::tag::{LabelHolds, LabelStock, TagCode};
use hosewright_papers::sheet::Paper;
use hosewright_papers::{Drawing, on_pages, to_pdf};
use hosewright_store::{DueAsk, PlaceAt};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::HashSet;
use ts_rs::TS;

/// Labels to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LabelBatchQuestion {
    /// Of which hoses.
    pub of: LabelBatchOf,
    /// What they are printed on.
    pub stock: LabelStock,
    /// How they lie on paper.
    pub paper: LabelPaper,
}

/// Of which hoses labels are made.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelBatchOf {
    /// Those that sit on a machine, by place.
    Machine(MachineId),
    /// Those for which something falls due up to and with that day, soonest first.
    Due(NaiveDate),
    /// These.
    Codes(Vec<TagCode>),
}

/// How labels lie on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelPaper {
    /// Each on a page of its own size: for a label printer.
    OneEach,
    /// Row by row on ISO 216 A4, with marks to cut along.
    A4,
    /// Row by row on US Letter.
    Letter,
}

/// The labels of a batch.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelBatch {
    /// Each hose and what becomes of its label, in their order on paper.
    pub labels: Vec<BatchLabel>,
    /// How many are made.
    pub made: usize,
    /// How many say that the hose had a label before.
    pub reprints: usize,
    /// Pages that they take.
    pub pages: usize,
}

/// A label of a batch.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BatchLabel {
    /// The hose.
    pub code: TagCode,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// What its label holds; none where none is made.
    pub holds: Option<LabelHolds>,
    /// Whether it says that the hose had a label before.
    pub reprint: bool,
    /// Where the diameter over the cover comes from; none where the label does not go round the hose.
    pub od_from: Option<DiameterFrom>,
    /// Why none is made.
    pub refused: Option<String>,
}

/// Most labels of a batch.
const MOST: usize = 1000;

/// What labels a batch would have, and for which hoses none can be made and why. Nothing is written down.
///
/// # Errors
/// No such machine, no hose to make a label of, or too many; the register can not be read.
pub fn batch(api: &mut Api, asked: LabelBatchQuestion, _: &[u8]) -> Result<Answer<LabelBatch>, ApiError> {
    let (labels, made) = labels(api, &asked)?;
    let pages = pages(&made, asked.paper).len();
    let reprints = made.iter().filter(|label| label.reprint()).count();
    Ok(api.answer(LabelBatch { labels, made: made.len(), reprints, pages }))
}

/// The labels of a batch as a PDF. Of each hose it is written down that it got one.
///
/// # Errors
/// As [`batch`], and where no label can be made.
pub fn batch_paper(api: &mut Api, asked: LabelBatchQuestion, _: &[u8]) -> Result<File, ApiError> {
    let (labels, made) = labels(api, &asked)?;
    if made.is_empty() {
        let why = labels.into_iter().find_map(|label| label.refused).unwrap_or_default();
        return Err(ApiError::input("stock", why));
    }
    let bytes = to_pdf(&pages(&made, asked.paper), &api.words.say("tag-batch-title", &[]))?;
    let printed = made.iter().filter_map(|label| label.hose.as_ref());
    let printed: Vec<Body> =
        printed.map(|hose| Body::Labelled(Labelled { code: hose.code, how: LabelledHow::Printed })).collect();
    let now = api.world.now();
    api.register()?.append(printed, now)?;
    Ok(File { name: "labels.pdf".to_owned(), mime: "application/pdf", bytes })
}

fn pages(made: &[Composed], paper: LabelPaper) -> Vec<Drawing> {
    let labels: Vec<_> = made.iter().map(|composed| composed.label.clone()).collect();
    match paper {
        LabelPaper::OneEach => labels.into_iter().map(|label| label.drawing).collect(),
        LabelPaper::A4 => on_pages(&labels, Paper::A4),
        LabelPaper::Letter => on_pages(&labels, Paper::Letter),
    }
}

/// What becomes of each hose's label, and those that were made.
fn labels(api: &mut Api, asked: &LabelBatchQuestion) -> Result<(Vec<BatchLabel>, Vec<Composed>), ApiError> {
    let codes = codes(api, &asked.of)?;
    if codes.is_empty() {
        return Err(ApiError::nothing("of", "there is no hose here to make a label of"));
    }
    if codes.len() > MOST {
        let why = format!("{} labels are too many at once; {MOST} at most", codes.len());
        return Err(ApiError::input("of", why));
    }
    let (mut all, mut made) = (Vec::new(), Vec::new());
    for code in codes {
        let (label, composed) = one(api, code, &asked.stock)?;
        all.push(label);
        made.extend(composed);
    }
    Ok((all, made))
}

fn one(api: &mut Api, code: TagCode, stock: &LabelStock) -> Result<(BatchLabel, Option<Composed>), ApiError> {
    let at = api.register()?.hose(&code)?.as_ref().and_then(sits);
    let none = BatchLabel { code, at, holds: None, reprint: false, od_from: None, refused: None };
    let content = match recorded(api, code) {
        Ok((content, _)) => content,
        // What can not be read at all ends the batch; what gets no label is told with the others.
        Err(refused) if refused.code != crate::Code::File => {
            return Ok((BatchLabel { refused: Some(refused.message), ..none }, None));
        }
        Err(broken) => return Err(broken),
    };
    Ok(match composed(api, &content, stock, None)? {
        Ok(composed) => {
            let (holds, reprint) = (Some(composed.label.holds), composed.reprint());
            let od_from = composed.od_from();
            (BatchLabel { holds, reprint, od_from, ..none }, Some(composed))
        }
        Err(refused) => (BatchLabel { refused: Some(refused.to_string()), ..none }, None),
    })
}

/// The hoses, each once.
fn codes(api: &mut Api, of: &LabelBatchOf) -> Result<Vec<TagCode>, ApiError> {
    let mut codes: Vec<TagCode> = match of {
        LabelBatchOf::Codes(codes) => codes.clone(),
        LabelBatchOf::Machine(machine) => {
            let sheet = api.register()?.machine(*machine)?;
            let nothing = || ApiError::nothing("of.machine", format!("there is no machine {machine}"));
            let places = sheet.ok_or_else(nothing)?.places;
            places.iter().flat_map(|place| &place.hoses).map(|stay| stay.code).collect()
        }
        LabelBatchOf::Due(day) => {
            let due = lines(api, *day, &DueAsk { until: Some(*day), ..DueAsk::default() })?;
            due.iter().filter(|line| line.due.row.is_past(*day)).map(|line| line.due.code).collect()
        }
    };
    let mut seen = HashSet::new();
    codes.retain(|code| seen.insert(*code));
    Ok(codes)
}
