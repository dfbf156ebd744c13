//! Placing code, QR code and words on a label.

use super::facts::lines;
use super::lettering::{Demand, EASY_EM, Lettering, Room, SMALLEST_EM};
use super::qr::{Code, GOOD_MODULE_MM, QUIET, SMALLEST_MODULE_MM};
use super::{Form, Label, LabelSize};
use crate::{Drawing, Op};
use hosewright_core::tag::{self, TagContent};
use qrcode::EcLevel;

/// Margin round the words, in mm: labels are cut and printed a little off.
const MARGIN: f64 = 1.2;

/// Between the code's quiet zone and the words, in mm: round letters reach a little over.
const GAP: f64 = 0.5;

/// Largest modules, in mm; more gains nothing and takes room from the words.
const LARGEST_MODULE_MM: f64 = 0.75;

/// A level of error correction and the smallest module it is printed in, in mm.
type Choice = (EcLevel, f64);

/// Strong correction in modules for worn labels.
const GOOD: &[Choice] = &[(EcLevel::Q, GOOD_MODULE_MM), (EcLevel::M, GOOD_MODULE_MM)];

/// Modules that are still read well when clean.
const FINE: &[Choice] = &[(EcLevel::M, SMALLEST_MODULE_MM)];

/// What corrects little is only printed in modules for worn labels.
const WEAK: &[Choice] = &[(EcLevel::L, GOOD_MODULE_MM)];

/// The code alone is short: it gets the strongest there is.
const ALONE: &[Choice] = &[(EcLevel::H, GOOD_MODULE_MM), (EcLevel::Q, SMALLEST_MODULE_MM)];

/// What gives way, in turn, where room is short: size of letters, then facts that the QR code has.
const EASY: Demand = Demand { least_em: EASY_EM, all_facts: true };
const SMALL: Demand = Demand { least_em: SMALLEST_EM, all_facts: true };
const FEW: Demand = Demand { least_em: SMALLEST_EM, all_facts: false };

/// What is tried for the full text, in turn.
const FULL: [(&[Choice], Demand); 9] = [
    (GOOD, EASY),
    (GOOD, SMALL),
    (FINE, EASY),
    (FINE, SMALL),
    (GOOD, FEW),
    (FINE, FEW),
    (WEAK, EASY),
    (WEAK, SMALL),
    (WEAK, FEW),
];

/// What is to stand on a label, whatever its size.
pub(super) struct Plan {
    lettering: Lettering,
    full: Symbol,
    alone: Symbol,
}

/// A QR code's text and the code at each level that may be printed.
struct Symbol {
    form: Form,
    text: String,
    codes: Vec<Code>,
}

impl Symbol {
    fn new(form: Form, text: String, levels: &[EcLevel]) -> Self {
        let codes = levels.iter().filter_map(|level| Code::smallest(&text, *level)).collect();
        Self { form, text, codes }
    }
}

impl Plan {
    pub(super) fn new(tag: &TagContent, words: &hosewright_words::Words) -> Self {
        Self {
            lettering: Lettering::new(tag.code.groups(), lines(tag, words)),
            full: Symbol::new(Form::FullText, tag::write(tag), &[EcLevel::Q, EcLevel::M, EcLevel::L]),
            alone: Symbol::new(Form::CodeAlone, tag.code.to_string(), &[EcLevel::H, EcLevel::Q]),
        }
    }

    /// The label at that size, as good as it has room for.
    pub(super) fn label(&self, size: LabelSize) -> Option<Label> {
        let full = FULL.iter().find_map(|(choices, demand)| self.with(size, &self.full, choices, *demand));
        full.or_else(|| [EASY, SMALL].iter().find_map(|demand| self.with(size, &self.alone, ALONE, *demand)))
    }

    /// The label with the first of these choices that leaves such words room, its modules as
    /// large as can be.
    fn with(&self, size: LabelSize, symbol: &Symbol, choices: &[Choice], demand: Demand) -> Option<Label> {
        let dot = 25.4 / size.dpi;
        choices.iter().find_map(|(level, module_mm)| {
            let code = *symbol.codes.iter().find(|code| code.level == *level)?;
            let least = (module_mm / dot - 1e-9).ceil() as u32;
            let most = size.width_mm.min(size.height_mm) / code.with_quiet() as f64;
            let most = (most.min(LARGEST_MODULE_MM) / dot + 1e-9).floor() as u32;
            (least..=most).rev().find_map(|module_dots| {
                let module_mm = f64::from(module_dots) * dot;
                let room = room(size, code.with_quiet() as f64 * module_mm)?;
                let (ops, left_off) = self.lettering.set(room, demand)?;
                Some(Label {
                    drawing: drawing(size, code, code.modules(&symbol.text)?, module_mm, ops),
                    size,
                    form: symbol.form,
                    text: symbol.text.clone(),
                    version: code.version,
                    level: letter(code.level),
                    module_dots,
                    module_mm,
                    left_off,
                })
            })
        })
    }
}

/// The room that a QR code of that side leaves: beside it on a wide label, beneath it on a high one.
/// The quiet zone is the margin towards the code.
fn room(size: LabelSize, qr_side: f64) -> Option<Room> {
    let room = if size.width_mm >= size.height_mm {
        Room {
            x: qr_side + GAP,
            y: MARGIN,
            width: size.width_mm - qr_side - GAP - MARGIN,
            height: size.height_mm - 2.0 * MARGIN,
        }
    } else {
        Room {
            x: MARGIN,
            y: qr_side + GAP,
            width: size.width_mm - 2.0 * MARGIN,
            height: size.height_mm - qr_side - GAP - MARGIN,
        }
    };
    (room.width > 0.0 && room.height > 0.0).then_some(room)
}

fn drawing(size: LabelSize, code: Code, dark: Vec<bool>, module: f64, words: Vec<Op>) -> Drawing {
    let quiet = QUIET as f64 * module;
    let whole = code.with_quiet() as f64 * module;
    // Centred in its strip to whole dots, so that every module is.
    let dot = 25.4 / size.dpi;
    let centred = |side: f64| (((side - whole) / 2.0 / dot).floor() * dot).max(0.0);
    let (x, y) = if size.width_mm >= size.height_mm {
        (0.0, centred(size.height_mm))
    } else {
        (centred(size.width_mm), 0.0)
    };
    let mut drawing = Drawing::new(size.width_mm, size.height_mm);
    drawing.ops.push(Op::Modules { x: x + quiet, y: y + quiet, module, side: code.side(), dark });
    drawing.ops.extend(words);
    drawing
}

fn letter(level: EcLevel) -> char {
    match level {
        EcLevel::L => 'L',
        EcLevel::M => 'M',
        EcLevel::Q => 'Q',
        EcLevel::H => 'H',
    }
}
