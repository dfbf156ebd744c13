//! Placing code, QR code and words on a label.

use super::Label;
use super::facts::{Fact, lines};
use super::lettering::{Demand, EASY_EM, Keep, Lettering, Room, SMALLEST_EM};
use super::qr::{Code, GOOD_MODULE_MM, QUIET, SMALLEST_MODULE_MM};
use crate::{Drawing, Op};
use hosewright_core::tag::{self, Curve, LabelDirection, LabelHolds, LabelStock, TagContent};
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
const EASY: Demand = Demand { least_em: EASY_EM, keep: Keep::All };
const SMALL: Demand = Demand { least_em: SMALLEST_EM, keep: Keep::All };
const FEW: Demand = Demand { least_em: SMALLEST_EM, keep: Keep::Needed };
const WARNINGS: Demand = Demand { least_em: SMALLEST_EM, keep: Keep::Warnings };

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

/// What the code of a bent label is made of: one that corrects little is not stuck round a hose.
const FULL_ROUND: &[(&[Choice], Demand)] = FULL.split_at(6).0;

/// The room of a label and the dots it is printed in.
#[derive(Debug, Clone, Copy)]
pub(super) struct Size {
    width_mm: f64,
    height_mm: f64,
    dpi: f64,
    /// What a camera sees of a label that is bent.
    curve: Option<Curve>,
}

impl Size {
    /// All of a stock, or what of it does not cover itself round a hose.
    pub(super) fn of(stock: &LabelStock, round: Option<(Curve, LabelDirection)>) -> Self {
        let LabelStock { width_mm, height_mm, dpi, .. } = *stock;
        match round {
            Some((curve, LabelDirection::Along)) => {
                let height_mm = height_mm.min(curve.around_mm.get());
                Self { width_mm, height_mm, dpi, curve: Some(curve) }
            }
            around => Self { width_mm, height_mm, dpi, curve: around.map(|(curve, _)| curve) },
        }
    }

    /// The same room on a label that lies flat.
    pub(super) fn flat(self) -> Self {
        Self { curve: None, ..self }
    }

    fn dot(self) -> f64 {
        25.4 / self.dpi
    }
}

/// What is to stand on a label, whatever its size.
pub(super) struct Plan {
    lettering: Lettering,
    full: Symbol,
    alone: Symbol,
}

/// A QR code's text and the code at each level that may be printed.
struct Symbol {
    text: String,
    codes: Vec<Code>,
}

impl Symbol {
    fn new(text: String, levels: &[EcLevel]) -> Self {
        let codes = levels.iter().filter_map(|level| Code::smallest(&text, *level)).collect();
        Self { text, codes }
    }
}

impl Plan {
    pub(super) fn new(tag: &TagContent, reprint: bool, words: &hosewright_words::Words) -> Self {
        Self {
            lettering: Lettering::new(tag.code.groups(), lines(tag, reprint, words)),
            full: Symbol::new(tag::write(tag), &[EcLevel::Q, EcLevel::M, EcLevel::L]),
            alone: Symbol::new(tag.code.to_string(), &[EcLevel::H, EcLevel::Q]),
        }
    }

    /// The label of that stock, as good as it has room for.
    pub(super) fn label(
        &self,
        stock: &LabelStock,
        size: Size,
        round: Option<(Curve, LabelDirection)>,
    ) -> Option<Label> {
        let full = if round.is_some() { FULL_ROUND } else { &FULL };
        let tries = full
            .iter()
            .map(|(choices, demand)| (LabelHolds::FullText, &self.full, *choices, *demand))
            .chain([EASY, SMALL].map(|demand| (LabelHolds::CodeAlone, &self.alone, ALONE, demand)))
            .chain([(LabelHolds::CodeOnly, &self.alone, ALONE, WARNINGS)]);
        tries.into_iter().find_map(|(holds, symbol, choices, demand)| {
            self.with(size, symbol, choices, demand).map(|set| set.label(stock, size, holds, symbol, round))
        })
    }

    /// Code and words with the first of these choices that leaves such words room, its modules as large as can be.
    fn with(&self, size: Size, symbol: &Symbol, choices: &[Choice], demand: Demand) -> Option<Set> {
        let dot = size.dot();
        choices.iter().find_map(|(level, module_mm)| {
            let code = *symbol.codes.iter().find(|code| code.level == *level)?;
            let least = (module_mm / dot - 1e-9).ceil() as u32;
            let seen = size.curve.map_or(f64::INFINITY, |curve| curve.seen_mm(code.version).get());
            let bent = seen / code.side() as f64;
            let most = (size.width_mm.min(size.height_mm) / code.with_quiet() as f64).min(bent);
            let most = (most.min(LARGEST_MODULE_MM) / dot + 1e-9).floor() as u32;
            (least..=most).rev().find_map(|module_dots| {
                let module_mm = f64::from(module_dots) * dot;
                let room = room(size, code.with_quiet() as f64 * module_mm)?;
                let (words, left_off) = self.lettering.set(room, demand)?;
                let dark = code.modules(&symbol.text)?;
                Some(Set { code, dark, module_dots, words, left_off })
            })
        })
    }
}

/// Code and words as they were set.
struct Set {
    code: Code,
    dark: Vec<bool>,
    module_dots: u32,
    words: Vec<Op>,
    left_off: Vec<Fact>,
}

impl Set {
    fn label(
        self,
        stock: &LabelStock,
        size: Size,
        holds: LabelHolds,
        symbol: &Symbol,
        round: Option<(Curve, LabelDirection)>,
    ) -> Label {
        let module_mm = f64::from(self.module_dots) * size.dot();
        Label {
            drawing: drawing(stock, size, self.code, self.dark, module_mm, self.words),
            stock: stock.clone(),
            holds,
            text: symbol.text.clone(),
            version: self.code.version,
            level: letter(self.code.level),
            module_dots: self.module_dots,
            module_mm,
            left_off: self.left_off,
            round,
        }
    }
}

/// The room that a QR code of that side leaves: beside it on a wide label, beneath it on a high one.
/// The quiet zone is the margin towards the code.
fn room(size: Size, qr_side: f64) -> Option<Room> {
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

fn drawing(
    stock: &LabelStock,
    size: Size,
    code: Code,
    dark: Vec<bool>,
    module: f64,
    words: Vec<Op>,
) -> Drawing {
    let quiet = QUIET as f64 * module;
    let whole = code.with_quiet() as f64 * module;
    // Centred in its strip to whole dots, so that every module is.
    let dot = size.dot();
    let centred = |side: f64| (((side - whole) / 2.0 / dot).floor() * dot).max(0.0);
    let (x, y) = if size.width_mm >= size.height_mm {
        (0.0, centred(size.height_mm))
    } else {
        (centred(size.width_mm), 0.0)
    };
    // What covers itself round a hose lies with its end outside: that end is printed.
    let down = ((stock.height_mm - size.height_mm) / dot).floor() * dot;
    let mut drawing = Drawing::new(stock.width_mm, stock.height_mm);
    let symbol = Op::Modules { x: x + quiet, y: y + quiet, module, side: code.side(), dark };
    drawing.ops.extend([symbol].into_iter().chain(words).map(|op| op.moved(0.0, down)));
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
