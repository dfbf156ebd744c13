//! A label: how it comes out on a stock, and its file.

use super::{seal, taggable};
use crate::commands::File;
use crate::{Answer, Api, ApiError};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{Assembly, Body, Labelled, LabelledHow};
use hosewright_core::tag::{
    self, LEAST_OF_LARGEST, LabelDirection, LabelHolds, LabelStock, TagContent, TagFindingCode,
};
use hosewright_papers::{DrawingError, Label, LabelError, Wanted};
use hosewright_store::Hose;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A label to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LabelQuestion {
    /// What it says. Of a hose on record the label is that of the record; any other keeps the seal it was made with.
    pub tag: TagContent,
    /// What it is printed on.
    pub stock: LabelStock,
    /// Diameter over the hose's cover, as it was measured; that of the tables without. Only a label that is stuck round
    /// the hose asks for it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cover_od_mm: Option<Millimetres>,
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

/// Where the diameter over the cover comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum DiameterFrom {
    /// It was given.
    Given,
    /// The smallest that the tables allow the hose.
    Tables,
    /// The tables have its largest alone: the smallest that may be (`LEAST_OF_LARGEST`) was reckoned from it.
    Reckoned,
}

/// A label that came out, and the hose where it is on record.
pub(super) struct Composed {
    pub(super) label: Label,
    pub(super) hose: Option<Hose>,
    sealed: bool,
    od_from: Option<DiameterFrom>,
}

impl Composed {
    pub(super) fn reprint(&self) -> bool {
        self.hose.as_ref().is_some_and(|hose| hose.labelled)
    }

    /// Where the diameter comes from by which it was composed; none where it does not go round the hose.
    pub(super) fn od_from(&self) -> Option<DiameterFrom> {
        self.od_from.filter(|_| self.label.round.is_some())
    }
}

/// Composes a label. The outer error refuses the tag itself, the inner one the stock. Of a hose on record the label is that
/// of the record; of any other the tag as it is given, whose seal is none that this puts on it.
pub(super) fn composed(
    api: &Api,
    content: &TagContent,
    stock: &LabelStock,
    cover_od_mm: Option<Millimetres>,
) -> Result<Result<Composed, LabelError>, ApiError> {
    let hose = taggable(api, content.code)?;
    let made = hose.as_ref().and_then(|hose| hose.assembly.as_ref()).map(|made| &made.record);
    let content = match made {
        Some(made) => of_record(api, content, made)?,
        None => as_it_was_made(api, content)?,
    };
    let (cover_od_mm, od_from) = diameter(api, &content, cover_od_mm).unzip();
    let reprint = hose.as_ref().is_some_and(|hose| hose.labelled);
    let wanted = Wanted { tag: &content, stock, cover_od_mm, reprint };
    let sealed = is_own(api, &content)?;
    Ok(hosewright_papers::label(wanted, &api.words).map(|label| Composed { label, hose, sealed, od_from }))
}

/// The tag of the record; refused where what was asked for claims another hose, or more of it.
fn of_record(api: &Api, asked: &TagContent, made: &Assembly) -> Result<TagContent, ApiError> {
    let code = asked.code;
    let claims = tag::beside(asked, made, true);
    let field = if claims.contains(&TagFindingCode::OtherSpec) {
        Some("tag.spec")
    } else if claims.contains(&TagFindingCode::OtherProof) {
        Some("tag.proof")
    } else {
        claims.contains(&TagFindingCode::HigherPressure).then_some("tag.pressure_bar")
    };
    if let Some(field) = field {
        let why = format!(
            "the record of {code} does not say so; correct the record first, or make the tag of it anew"
        );
        return Err(ApiError::input(field, why));
    }
    let failed =
        || ApiError::input("tag.code", format!("{code} failed its proof: it is scrap and gets no tag"));
    let mut content = tag::of_record(made).ok_or_else(failed)?;
    seal(api, &mut content, Some(made))?;
    Ok(content)
}

/// A tag that no record has: with the seal that it was made with, or with none.
fn as_it_was_made(api: &Api, content: &TagContent) -> Result<TagContent, ApiError> {
    let keys = api.register.as_ref().map(|register| register.keys()).transpose()?.unwrap_or_default();
    let own = keys.own().map(|fleet| &fleet.key);
    match tag::open(&tag::write(content), own, &keys.partners()) {
        Some(read) if read.content.is_some() => Ok(content.clone()),
        _ => Err(ApiError::input(
            "tag",
            "the tag is not as it was made: its seal does not fit it; make it anew",
        )),
    }
}

/// Whether a tag carries the true seal of this device's fleet.
fn is_own(api: &Api, content: &TagContent) -> Result<bool, ApiError> {
    let Some(register) = &api.register else { return Ok(false) };
    let text = tag::write(content);
    Ok(register.keys()?.own().is_some_and(|own| tag::is_sealed_by(&text, &own.key)))
}

/// The diameter over the cover: as it was measured, or the smallest by the tables, of which a camera sees least.
fn diameter(
    api: &Api,
    content: &TagContent,
    given: Option<Millimetres>,
) -> Option<(Millimetres, DiameterFrom)> {
    if let Some(given) = given {
        return Some((given, DiameterFrom::Given));
    }
    let hose = content.spec.hose.as_ref()?;
    let row = api.catalogue.hose(&hose.standard, &hose.kind, hose.dn).ok()?;
    let least = row.cover_od_min_mm.map(|od| (od, DiameterFrom::Tables));
    least.or_else(|| {
        let largest = row.cover_od_max_mm?;
        Some((Millimetres(largest.get() * LEAST_OF_LARGEST), DiameterFrom::Reckoned))
    })
}

/// The label as a file. Of a hose that is on record it is written down that it got one.
///
/// # Errors
/// No such stock, or no room for what must stand on it; the tag is not to be made; the register can not be written.
pub fn label(api: &mut Api, asked: LabelQuestion, _: &[u8]) -> Result<File, ApiError> {
    let composed = composed(api, &asked.tag, &asked.stock, asked.cover_od_mm)?;
    let composed = composed.map_err(|error| {
        let LabelRefused { why, doubt, instead, .. } = refused(api, &asked, &error);
        let parts = [format!("{why}."), doubt.unwrap_or_default(), instead];
        let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        ApiError::input("stock", said.join(" ").trim_end_matches('.').to_owned())
    })?;
    let label = &composed.label;
    let (ending, mime, bytes) = match asked.kind {
        LabelKind::Png => ("png", "image/png", label.to_png()?),
        LabelKind::Svg => ("svg", "image/svg+xml", label.to_svg().into_bytes()),
        LabelKind::Pdf => ("pdf", "application/pdf", label.to_pdf()?),
    };
    if let Some(hose) = &composed.hose {
        let printed = Body::Labelled(Labelled { code: hose.code, how: LabelledHow::Printed });
        let now = api.world.now();
        api.register()?.append([printed], now)?;
    }
    Ok(File { name: format!("{}.{ending}", asked.tag.code), mime, bytes })
}

/// How a label comes out, or why there is none: one of the two.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelPreview {
    /// The label.
    pub label: Option<LabelDrawn>,
    /// Why it can not be made on that stock.
    pub refused: Option<LabelRefused>,
}

/// A label as it will print.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelDrawn {
    /// The label, sized in mm.
    pub svg: String,
    /// What it holds.
    pub holds: LabelHolds,
    /// What its QR code says when read.
    pub text: String,
    /// Side of a module.
    pub module_mm: f64,
    /// Printer dots a module.
    pub module_dots: u32,
    /// Version of the QR code, 1 to 40.
    pub version: i16,
    /// Error correction level of the QR code: `L`, `M`, `Q` or `H`.
    pub level: char,
    /// Side of the QR code without its quiet zone.
    pub code_mm: f64,
    /// From how far a camera reads it, by a rule of thumb of print guides: ten times its side for a code of 25 modules, and
    /// less as there are more.
    pub reads_from_mm: f64,
    /// How many facts had no room in words.
    pub left_off: usize,
    /// How it lies on the hose, where it is stuck round it.
    pub curve: Option<LabelCurve>,
    /// Whether it says that the hose had a label before.
    pub reprint: bool,
    /// Whether it carries the seal of this device's fleet. A QR code that holds the code alone has no seal.
    pub sealed: bool,
}

/// How a label lies on a hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelCurve {
    /// Diameter over the cover.
    pub cover_od_mm: Millimetres,
    /// Where that comes from.
    pub od_from: DiameterFrom,
    /// What is not sure of it, in words; none where it was measured.
    pub doubt: Option<String>,
    /// How wide a code may be round the hose for a camera to read it.
    pub seen_mm: Millimetres,
    /// Which way the label lies.
    pub direction: LabelDirection,
}

/// Why a label can not be made on a stock, and what would do.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LabelRefused {
    /// What kind of reason.
    pub case: LabelRefusal,
    /// Why, and what would do.
    pub why: String,
    /// What is not sure of the diameter that it was refused by, in words; none where that was measured or is no reason.
    pub doubt: Option<String>,
    /// The user's other stocks that would do, in words; empty where none would.
    pub instead: String,
    /// The names of these stocks.
    pub would_do: Vec<String>,
    /// The height that would do at that width, where there is one.
    pub needed_height_mm: Option<f64>,
}

/// Kinds of reasons why a label can not be made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelRefusal {
    /// There is no such stock.
    Stock,
    /// No room for what must stand on it.
    TooSmall,
    /// It is to be stuck round a hose whose diameter nobody knows.
    NoDiameter,
    /// The hose is too thin for a code round it.
    Curved,
}

/// The label as it will print, and what form it took; or why there is none, and which stock would do.
///
/// # Errors
/// The tag is not to be made.
pub fn preview(api: &mut Api, asked: LabelQuestion, _: &[u8]) -> Result<Answer<LabelPreview>, ApiError> {
    let preview = match composed(api, &asked.tag, &asked.stock, asked.cover_od_mm)? {
        Ok(composed) => LabelPreview { label: Some(drawn(api, &composed)), refused: None },
        Err(error) => LabelPreview { label: None, refused: Some(refused(api, &asked, &error)) },
    };
    Ok(api.answer(preview))
}

fn drawn(api: &Api, composed: &Composed) -> LabelDrawn {
    let label = &composed.label;
    let curve = label.round.zip(composed.od_from).map(|((curve, direction), od_from)| LabelCurve {
        cover_od_mm: curve.cover_od_mm,
        od_from,
        doubt: doubt(api, od_from),
        seen_mm: curve.seen_mm(label.version),
        direction,
    });
    LabelDrawn {
        svg: label.to_svg(),
        holds: label.holds,
        text: label.text.clone(),
        module_mm: label.module_mm,
        module_dots: label.module_dots,
        version: label.version,
        level: label.level,
        code_mm: label.code_mm(),
        reads_from_mm: READS_FROM_MODULES * label.module_mm,
        left_off: label.left_off.len(),
        curve,
        reprint: composed.reprint(),
        sealed: composed.sealed && label.holds == LabelHolds::FullText,
    }
}

/// Distance from which a camera reads a code, in sides of a module (common practice: public print guides have ten times
/// the side of a code of 25 modules; QF-16 of `tests/vectors/qr_facts.csv`).
const READS_FROM_MODULES: f64 = 250.0;

fn refused(api: &mut Api, asked: &LabelQuestion, error: &LabelError) -> LabelRefused {
    let (case, needed_height_mm) = match error {
        LabelError::Stock(_) => (LabelRefusal::Stock, None),
        LabelError::TooSmall { needed_height_mm, .. } => (LabelRefusal::TooSmall, *needed_height_mm),
        LabelError::NoDiameter => (LabelRefusal::NoDiameter, None),
        LabelError::Curved { .. } => (LabelRefusal::Curved, None),
    };
    let stocks = api.settings().map(|settings| settings.label_stocks).unwrap_or_default();
    let would = |stock: &LabelStock| {
        *stock != asked.stock
            && composed(api, &asked.tag, stock, asked.cover_od_mm).is_ok_and(|composed| composed.is_ok())
    };
    let would_do: Vec<String> =
        stocks.into_iter().filter(|stock| would(stock)).map(|stock| stock.name).collect();
    let instead = match would_do.as_slice() {
        [] => String::new(),
        names => api.words.say("tag-stocks-that-do", &[("stocks", &names.join(", "))]),
    };
    let from = diameter(api, &asked.tag, asked.cover_od_mm).map(|(_, from)| from);
    let doubt = from.filter(|_| case == LabelRefusal::Curved).and_then(|from| doubt(api, from));
    LabelRefused { case, why: error.to_string(), doubt, instead, would_do, needed_height_mm }
}

/// What is not sure of a diameter that nobody measured, in words.
fn doubt(api: &Api, from: DiameterFrom) -> Option<String> {
    let part = api.words.number(LEAST_OF_LARGEST, 2);
    let said = || api.words.say("tag-diameter-doubt", &[("from", &crate::key(&from)), ("part", &part)]);
    (from != DiameterFrom::Given).then(said)
}
