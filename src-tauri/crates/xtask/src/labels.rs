//! Labels as they print, read by independent decoders: every stock of the demo, at every printer, round hoses of every
//! thickness.

use crate::sight;
use hosewright_core::quantity::Millimetres;
use hosewright_core::tag::{self, LabelForm, LabelStock};
use hosewright_papers::{LabelError, Wanted, label};
use hosewright_words::{Language, Words};
use std::fs;
use std::io::{Error, Result};
use std::path::Path;

/// A whole tag with its seal: as much as a common hose asks of a label.
const TAG: &str = include_str!("../../../../tests/fuzz/seeds/tag/sealed");

/// Dots an inch of the printers that are sold for labels (common practice).
const PRINTERS: [f64; 3] = [203.0, 300.0, 600.0];

/// Diameters over the cover, in mm, from the thinnest hose of the tables to a thick one.
const DIAMETERS: [f64; 6] = [11.0, 15.0, 20.0, 26.3, 38.0, 60.0];

/// Leaves the labels with their texts below `target/labels` and has them read.
pub fn print() -> Result<()> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let folder = root.join("target/labels");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    let stocks: Vec<LabelStock> = serde_json::from_slice(&fs::read(root.join("demo/stocks.json"))?)?;
    let (mut made, mut too_thin) = (0, 0);
    for dpi in PRINTERS {
        let group = folder.join(format!("{dpi} dots an inch"));
        fs::create_dir_all(&group)?;
        for stock in &stocks {
            let stock = LabelStock { dpi, ..stock.clone() };
            let hoses = if stock.form == LabelForm::Wrap { &DIAMETERS[..] } else { &DIAMETERS[..1] };
            for od in hoses {
                if leave(&group, &stock, *od)? {
                    made += 1;
                } else {
                    too_thin += 1;
                }
            }
        }
    }
    println!("{made} labels; {too_thin} refused, the hose being too thin for a code round it");
    sight::print(Some(&folder), true)
}

/// Leaves a label and its text; false where the hose is too thin for one.
fn leave(folder: &Path, stock: &LabelStock, od: f64) -> Result<bool> {
    let tag = tag::read(TAG).map_err(Error::other)?;
    let wanted = Wanted { tag: &tag, stock, cover_od_mm: Some(Millimetres(od)), reprint: false };
    let label = match label(wanted, &Words::of(Language::English)) {
        Ok(label) => label,
        Err(LabelError::Curved { .. }) => return Ok(false),
        Err(other) => return Err(Error::other(format!("{} at {}: {other}", stock.name, stock.dpi))),
    };
    let name = format!("{}, hose of {od} mm", stock.name);
    fs::write(folder.join(format!("{name}.png")), label.to_png().map_err(Error::other)?)?;
    fs::write(folder.join(format!("{name}.txt")), label.text)?;
    Ok(true)
}
