//! A label: how it comes out on a stock, and its file.

use super::{claims_more, had_a_label, seal, taggable};
use crate::commands::File;
use crate::{Answer, Api, ApiError};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{Body, Labelled, LabelledHow};
use hosewright_core::tag::{self, LabelDirection, LabelHolds, LabelStock, TagContent};
use hosewright_papers::{DrawingError, Label, LabelError, Wanted};
use hosewright_store::Hose;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A label to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LabelQuestion {
    /// What it says. The seal of this device's fleet is put on it.
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
        self.hose.as_ref().is_some_and(had_a_label)
    }
}

/// Composes a label. The outer error refuses the tag itself, the inner one the stock.
pub(super) fn composed(
    api: &Api,
    content: &TagContent,
    stock: &LabelStock,
    cover_od_mm: Option<Millimetres>,
) -> Result<Result<Composed, LabelError>, ApiError> {
    let hose = taggable(api, content.code)?;
    let recorded = hose.as_ref().and_then(|hose| tag::proof_of(&hose.assembly.as_ref()?.record.proof));
    if recorded.is_some_and(|recorded| claims_more(content.proof, recorded)) {
        let why = format!(
            "the record of {} does not say that it was proved so; record its proof first, or make the tag anew",
            content.code
        );
        return Err(ApiError::input("tag.proof", why));
    }
    let mut content = content.clone();
    seal(api, &mut content)?;
    let (cover_od_mm, od_from) = diameter(api, &content, cover_od_mm).unzip();
    let wanted =
        Wanted { tag: &content, stock, cover_od_mm, reprint: hose.as_ref().is_some_and(had_a_label) };
    let sealed = content.seal.is_some();
    Ok(hosewright_papers::label(wanted, &api.words).map(|label| Composed { label, hose, sealed, od_from }))
}

/// The diameter over the cover: as it was measured, or the smallest of the tables, of which a camera sees least.
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
    row.cover_od_min_mm.or(row.cover_od_max_mm).map(|od| (od, DiameterFrom::Tables))
}

/// The label as a file. Of a hose that is on record it is written down that it got one.
///
/// # Errors
/// No such stock, or no room for what must stand on it; the tag is not to be made; the register can not be written.
pub fn label(api: &mut Api, asked: LabelQuestion, _: &[u8]) -> Result<File, ApiError> {
    let composed = composed(api, &asked.tag, &asked.stock, asked.cover_od_mm)?;
    let composed = composed.map_err(|error| {
        let refused = refused(api, &asked, &error);
        let parts = [refused.why, refused.instead];
        ApiError::input("stock", parts.join(". ").trim_end_matches(". ").to_owned())
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
        Ok(composed) => LabelPreview { label: Some(drawn(&composed)), refused: None },
        Err(error) => LabelPreview { label: None, refused: Some(refused(api, &asked, &error)) },
    };
    Ok(api.answer(preview))
}

fn drawn(composed: &Composed) -> LabelDrawn {
    let label = &composed.label;
    let curve = label.round.zip(composed.od_from).map(|((curve, direction), od_from)| LabelCurve {
        cover_od_mm: curve.cover_od_mm,
        od_from,
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
    LabelRefused { case, why: error.to_string(), instead, would_do, needed_height_mm }
}
