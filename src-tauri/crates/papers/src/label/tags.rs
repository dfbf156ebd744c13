//! Codes of hoses side by side, to be scanned off a sheet.

use super::qr::{Code, GOOD_MODULE_MM, QUIET};
use crate::drawing::{Anchor, Drawing, Op, Weight};
use qrcode::EcLevel;

/// Size of the words beneath a code (its em).
const EM: f64 = 2.6;
/// Room for two lines beneath a code.
const WORDS: f64 = 8.0;
/// No narrower than a code's own words.
const NARROWEST: f64 = 32.0;

/// The codes in rows no wider than that, each with its code and name beneath it; none where there is no code.
pub fn tags(codes: &[(String, String)], width_mm: f64) -> Option<Drawing> {
    let made: Vec<(Code, &(String, String))> =
        codes.iter().filter_map(|named| Some((Code::smallest(&named.0, EcLevel::M)?, named))).collect();
    let side = made.iter().map(|(code, _)| code.with_quiet() as f64 * GOOD_MODULE_MM).reduce(f64::max)?;
    let (cell, high) = (side.max(NARROWEST), side + WORDS);
    let in_row = ((width_mm / cell).floor() as usize).max(1);
    let mut ops = Vec::new();
    for (at, (code, (text, name))) in made.iter().enumerate() {
        let (x, y) = ((at % in_row) as f64 * cell, (at / in_row) as f64 * high);
        let quiet = QUIET as f64 * GOOD_MODULE_MM;
        ops.push(Op::Modules {
            x: x + quiet,
            y: y + quiet,
            module: GOOD_MODULE_MM,
            side: code.side(),
            dark: code.modules(text)?,
        });
        for (line, words, weight) in [(0.0, text, Weight::Bold), (1.0, name, Weight::Regular)] {
            let y = y + side + EM + line * (EM + 0.6);
            let text = fitting(words, cell - quiet - 1.0, weight);
            ops.push(Op::Text { x: x + quiet, y, size: EM, weight, anchor: Anchor::Start, text });
        }
    }
    let rows = made.len().div_ceil(in_row);
    Some(Drawing { width_mm: in_row.min(made.len()) as f64 * cell, height_mm: rows as f64 * high, ops })
}

/// As much of a text as fits a width.
fn fitting(text: &str, width: f64, weight: Weight) -> String {
    let mut text = text.to_owned();
    while !text.is_empty() && crate::drawing::font::width(&text, EM, weight) > width {
        text.pop();
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_stand_beside_each_other_no_wider_than_the_page_and_none_is_cut() {
        let codes: Vec<(String, String)> = (0..7)
            .map(|n| (format!("3292T-Z4PCD-{n}"), format!("{n} Stick cylinder, rod side, left hand")))
            .collect();
        let drawing = tags(&codes, 180.0).expect("a drawing");
        assert!(drawing.width_mm <= 180.0, "{}", drawing.width_mm);
        let modules: Vec<_> = drawing.ops.iter().filter(|op| matches!(op, Op::Modules { .. })).collect();
        assert_eq!(modules.len(), codes.len());
        for op in &drawing.ops {
            if let Op::Modules { x, y, module, side, .. } = op {
                let far = *side as f64 * module;
                assert!(x + far <= drawing.width_mm && y + far <= drawing.height_mm, "{op:?}");
            }
        }
        assert_eq!(tags(&[], 180.0), None);
    }
}
