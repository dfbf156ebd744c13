//! Sheets as files.

use super::File;
use super::make::{PaperKind, PaperSize};
use crate::{Api, ApiError};
use hosewright_papers::sheet::Sheet;
use serde::Serialize;

/// Columns of a sheet as plain text: those of a terminal.
const COLUMNS: usize = 80;

/// A sheet as a file of that kind; `document` is what it says, for other programs.
pub(super) fn file(
    api: &Api,
    name: &str,
    sheet: &Sheet,
    document: &impl Serialize,
    paper: PaperSize,
    kind: PaperKind,
) -> Result<File, ApiError> {
    let (ending, mime, bytes) = match kind {
        PaperKind::Text => {
            ("txt", "text/plain; charset=utf-8", sheet.to_text(COLUMNS, &api.words).into_bytes())
        }
        PaperKind::Pdf => {
            let pdf = hosewright_papers::to_pdf(&sheet.pages(paper.into(), &api.words), &sheet.title)?;
            ("pdf", "application/pdf", pdf)
        }
        PaperKind::Json => {
            let json = serde_json::to_vec_pretty(document).map_err(|error| ApiError::input("", error))?;
            ("json", "application/json", json)
        }
        PaperKind::Svg => {
            let pages = sheet.pages(paper.into(), &api.words);
            let svg = hosewright_papers::stacked(&pages).to_svg();
            ("svg", "image/svg+xml", svg.into_bytes())
        }
    };
    Ok(File { name: format!("{name}.{ending}"), mime, bytes })
}
