//! Two readers by others, side by side: they fail on other pictures than our own does.

use crate::Found;
use crate::picture::Copy;
use rxing::common::HybridBinarizer;
use rxing::multi::MultipleBarcodeReader;
use rxing::multi::qrcode::QRCodeMultiReader;
use rxing::qrcode::QRCodeReader;
use rxing::{BinaryBitmap, DecodeHints, Luma8LuminanceSource, RXingResult, Reader};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::thread;

/// All that either reader finds, each code once.
pub(crate) fn read(copy: &Copy) -> Vec<Found> {
    let mut all: Vec<Found> = Vec::new();
    // The readers are others' code and get photographs of anything: one that panics has read nothing.
    let by =
        |reader: fn(&Copy) -> Vec<Found>| catch_unwind(AssertUnwindSafe(|| reader(copy))).unwrap_or_default();
    let read = thread::scope(|scope| {
        let beside = scope.spawn(|| by(second));
        [by(first), beside.join().unwrap_or_default()]
    });
    for found in read {
        for mut found in found {
            for (x, y) in &mut found.corners {
                *x *= copy.scale;
                *y *= copy.scale;
            }
            if !all.iter().any(|known| same_place(known, &found)) {
                all.push(found);
            }
        }
    }
    all
}

/// Whether two readings are of one code: each one's centre lies within the other's reach.
fn same_place(one: &Found, other: &Found) -> bool {
    let (a, b) = (centre(&one.corners), centre(&other.corners));
    let apart = (a.0 - b.0).hypot(a.1 - b.1);
    apart < reach(&one.corners).max(reach(&other.corners)) / 2.0
}

fn centre(corners: &[(f32, f32); 4]) -> (f32, f32) {
    let [a, _, c, _] = corners;
    ((a.0 + c.0) / 2.0, (a.1 + c.1) / 2.0)
}

fn reach(corners: &[(f32, f32); 4]) -> f32 {
    let [a, _, c, _] = corners;
    (a.0 - c.0).hypot(a.1 - c.1) / 2.0
}

fn first(copy: &Copy) -> Vec<Found> {
    let (width, height) = copy.grey.dimensions();
    let Ok(source) = Luma8LuminanceSource::new(copy.grey.as_raw().clone(), width, height) else {
        return Vec::new();
    };
    let mut bitmap = BinaryBitmap::new(HybridBinarizer::new(source));
    let hints = DecodeHints { TryHarder: Some(true), ..DecodeHints::default() };
    let mut results =
        QRCodeMultiReader::new().decode_multiple_with_hints(&mut bitmap, &hints).unwrap_or_default();
    if results.is_empty() {
        results.extend(QRCodeReader::new().decode_with_hints(&mut bitmap, &hints));
    }
    results.iter().filter_map(of_first).collect()
}

/// This reader gives the centres of the three marks: bottom left, top left, top right.
fn of_first(result: &RXingResult) -> Option<Found> {
    let [bottom_left, top_left, top_right] = *result.getPoints().first_chunk::<3>()?;
    let bottom_right = (top_right.x + bottom_left.x - top_left.x, top_right.y + bottom_left.y - top_left.y);
    Some(Found {
        text: result.getText().to_owned(),
        corners: [
            (top_left.x, top_left.y),
            (top_right.x, top_right.y),
            bottom_right,
            (bottom_left.x, bottom_left.y),
        ],
    })
}

fn second(copy: &Copy) -> Vec<Found> {
    let (width, height) = copy.grey.dimensions();
    let grey = |x: usize, y: usize| copy.grey.get_pixel(x as u32, y as u32).0[0];
    let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(width as usize, height as usize, grey);
    let read = |grid: rqrr::Grid<_>| {
        let (_, text) = grid.decode().ok()?;
        Some(Found { text, corners: grid.bounds.map(|at| (at.x as f32, at.y as f32)) })
    };
    prepared.detect_grids().into_iter().filter_map(read).collect()
}
