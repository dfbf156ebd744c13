//! `tag`: a checked spec -> its tag and label; a picture -> the hose.

use super::File;
use super::check::checked;
use super::settings::Settings;
use crate::{Answer, Api, ApiError};
use hosewright_core::check::{Finding, Question, Verdict};
use hosewright_core::record;
use hosewright_core::spec::Service;
use hosewright_core::tag::{self, Assembled, Proof, TagCode, TagContent};
use hosewright_papers::{DrawingError, Form, Label, LabelError, LabelSize};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What a tag is made for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct TagQuestion {
    /// What `check` is asked: no tag is made of what must not be made.
    pub question: Question,
    /// A code that the hose already has; a new one is made without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<TagCode>,
    /// When it was assembled; the present day without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembled: Option<Assembled>,
    /// Whether it was proved; not proved without.
    #[serde(default = "not_proved")]
    pub proof: Proof,
}

fn not_proved() -> Proof {
    Proof::NotProved
}

/// A tag, or why there is none.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TagMade {
    /// The check's verdict; with a stop there is no tag.
    pub verdict: Verdict,
    /// Whether it was checked against a service; else the tag carries the rating of the parts alone.
    pub service_checked: bool,
    /// What the tag says.
    pub tag: Option<TagContent>,
    /// Its text, as a phone shows it.
    pub text: Option<String>,
    /// What stopped it.
    pub stops: Vec<Finding>,
}

/// Cases of the check that say nothing of a spec but that its service was not given.
const OF_SERVICE: [&str; 2] = ["working-pressure-missing", "fluid-missing"];

/// A spec that may be made -> what its tag says. A spec alone, with no service, gets a tag with the rating
/// of its parts, and the answer cautions that it was not checked against any service.
///
/// # Errors
/// Names the field that can not be; refuses an assembly that failed its proof.
pub fn make(api: &mut Api, asked: TagQuestion, _: &[u8]) -> Result<Answer<TagMade>, ApiError> {
    if let Some(code) = asked.code {
        not_scrap(api, code)?;
    }
    let checked = checked(api, &asked.question)?;
    let service_checked = asked.question.service != Service::default();
    let stops: Vec<Finding> = checked
        .findings
        .into_iter()
        .filter(|finding| finding.verdict == Verdict::Stop)
        .filter(|finding| service_checked || !OF_SERVICE.contains(&finding.case.key))
        .collect();
    let verdict = match (stops.is_empty(), service_checked) {
        (false, _) => Verdict::Stop,
        (true, false) => Verdict::Caution,
        (true, true) => checked.verdict,
    };
    let tag = match verdict {
        Verdict::Stop => None,
        _ => Some(TagContent {
            code: asked.code.unwrap_or_else(|| api.new_code()),
            spec: checked.spec,
            pressure_bar: checked.assembly_pressure_bar,
            line: asked.question.service.line,
            fluid: asked.question.service.fluid,
            duties: asked.question.service.duties,
            assembled: asked.assembled.or_else(|| Assembled::on(api.today())),
            proof: asked.proof,
            catalogue: api.catalogue.version.clone(),
        }),
    };
    let text = tag.as_ref().map(tag::write);
    Ok(api.answer(TagMade { verdict, service_checked, tag, text, stops }))
}

/// Refuses an assembly that stands on record as one that failed its proof.
fn not_scrap(api: &Api, code: TagCode) -> Result<(), ApiError> {
    let Some(register) = &api.register else { return Ok(()) };
    let Some(hose) = register.hose(&code)? else { return Ok(()) };
    // Its proof counts, whatever became of it since.
    if hose.assembly.is_some_and(|made| matches!(made.record.proof, record::Proof::Failed { .. })) {
        let why = format!("{code} failed its proof: it is scrap and gets no tag; make it anew");
        return Err(ApiError::input("code", why));
    }
    Ok(())
}

/// A label to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LabelQuestion {
    /// What it says.
    pub tag: TagContent,
    /// Its width.
    pub width_mm: f64,
    /// Its height.
    pub height_mm: f64,
    /// The printer's dots an inch.
    pub dpi: f64,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: LabelKind,
}

/// Kinds of label files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelKind {
    /// One printer dot is one pixel.
    Png,
    /// Sized in mm.
    Svg,
    /// One page of the label's size.
    Pdf,
}

impl From<DrawingError> for ApiError {
    fn from(error: DrawingError) -> Self {
        ApiError::file("", error)
    }
}

impl From<LabelError> for ApiError {
    fn from(error: LabelError) -> Self {
        ApiError::input("width_mm", error)
    }
}

/// The label of the settings.
pub(super) fn label_size(settings: &Settings) -> LabelSize {
    LabelSize {
        width_mm: settings.label_width_mm,
        height_mm: settings.label_height_mm,
        dpi: settings.label_dpi,
    }
}

fn composed(api: &Api, asked: &LabelQuestion) -> Result<Label, ApiError> {
    not_scrap(api, asked.tag.code)?;
    let size = LabelSize { width_mm: asked.width_mm, height_mm: asked.height_mm, dpi: asked.dpi };
    Ok(hosewright_papers::label(&asked.tag, size, &api.words)?)
}

/// The label as a file.
///
/// # Errors
/// No such size, or no room for what must stand on it.
pub fn label(api: &mut Api, asked: LabelQuestion, _: &[u8]) -> Result<File, ApiError> {
    let label = composed(api, &asked)?;
    let (ending, mime, bytes) = match asked.kind {
        LabelKind::Png => ("png", "image/png", label.to_png()?),
        LabelKind::Svg => ("svg", "image/svg+xml", label.to_svg().into_bytes()),
        LabelKind::Pdf => ("pdf", "application/pdf", label.to_pdf()?),
    };
    Ok(File { name: format!("{}.{ending}", asked.tag.code), mime, bytes })
}

/// How a label came out.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelPreview {
    /// The label, sized in mm.
    pub svg: String,
    /// Whether its code holds the whole text; else the tag's code alone.
    pub full_text: bool,
    /// What its code says when read.
    pub text: String,
    /// Side of a module.
    pub module_mm: f64,
    /// Printer dots a module.
    pub module_dots: u32,
    /// How many facts had no room in words.
    pub left_off: usize,
}

/// The label as it will print, and what form it took.
///
/// # Errors
/// No such size, or no room for what must stand on it.
pub fn preview(api: &mut Api, asked: LabelQuestion, _: &[u8]) -> Result<Answer<LabelPreview>, ApiError> {
    let label = composed(api, &asked)?;
    Ok(api.answer(LabelPreview {
        svg: label.to_svg(),
        full_text: label.form == Form::FullText,
        module_mm: label.module_mm,
        module_dots: label.module_dots,
        left_off: label.left_off.len(),
        text: label.text,
    }))
}

/// How a picture is read.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct ReadQuestion {
    /// The text of any code, ours or not.
    pub raw: bool,
}

/// What stands in a picture.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Scanned {
    /// Every code that was read.
    pub codes: Vec<Scan>,
}

impl Answer<Scanned> {
    /// The first code alone. `read` gives at least one.
    pub fn first(self) -> Answer<Scan> {
        let content = self.content.codes.into_iter().next().unwrap_or_default();
        Answer { content, catalogue: self.catalogue, program: self.program }
    }
}

/// One code of a picture.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema, TS)]
#[ts(
    type = "{ code: TagCode | null, text: string, problem: string | null } & Partial<Omit<TagContent, 'code'>>"
)]
pub struct Scan {
    /// The tag's code, where it is a tag.
    pub code: Option<TagCode>,
    /// All that the tag says; none where it holds its code alone.
    #[serde(flatten)]
    pub tag: Option<TagContent>,
    /// The text as it was read.
    pub text: String,
    /// Why the text is no whole tag, where it is none.
    pub problem: Option<String>,
}

/// A picture -> the tags in it, or with `raw` the text of every code.
///
/// # Errors
/// [`ApiError::nothing`] when there is no code, or no tag among them; [`ApiError::input`] when it is no picture.
pub fn read(api: &mut Api, asked: ReadQuestion, picture: &[u8]) -> Result<Answer<Scanned>, ApiError> {
    let found = hosewright_sight::read(picture).map_err(|error| ApiError::file("", error))?;
    if found.is_empty() {
        return Err(ApiError::nothing(
            "",
            "there is no code in this picture that can be read; take it nearer, square on and in focus, or type the code that stands beside it",
        ));
    }
    let scans: Vec<Scan> = found.into_iter().map(|found| scan(found.text)).collect();
    if asked.raw {
        return Ok(api.answer(Scanned { codes: scans }));
    }
    let first_problem = scans.iter().find_map(|scan| scan.problem.clone());
    let codes: Vec<Scan> = scans.into_iter().filter(|scan| scan.code.is_some()).collect();
    if codes.is_empty() {
        let why = first_problem.unwrap_or_default();
        return Err(ApiError::nothing("", format!("no code in this picture is a hose tag: {why}")));
    }
    Ok(api.answer(Scanned { codes }))
}

/// What a text is: a whole tag, a tag's code alone, or neither.
fn scan(text: String) -> Scan {
    match tag::read(&text) {
        Ok(tag) => Scan { code: Some(tag.code), tag: Some(tag), text, problem: None },
        Err(problem) => match text.trim().parse::<TagCode>() {
            Ok(code) => Scan { code: Some(code), text, ..Scan::default() },
            Err(_) => Scan { text, problem: Some(problem.to_string()), ..Scan::default() },
        },
    }
}
