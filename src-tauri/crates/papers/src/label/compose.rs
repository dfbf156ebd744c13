//! Placing code, QR code and words on a label.

use super::facts::{Fact, Line, lines};
use super::qr::{self, Code, GOOD_MODULE_MM, QUIET, SMALLEST_MODULE_MM};
use super::{Form, Label, LabelSize};
use crate::drawing::font::{self, CAP_HEIGHT};
use crate::{Anchor, Drawing, Op, Weight};
use hosewright_core::tag::{self, TagContent};
use qrcode::EcLevel;

/// Smallest letters, em in mm: lower case letters are then 1 mm high. European food labelling
/// (Regulation 1169/2011) takes 0.9 mm as the least that is read on a small label.
const SMALLEST_EM: f64 = 1.8;

/// Letters that are read with ease, em in mm.
const EASY_EM: f64 = 2.3;

/// Largest letters of facts, em in mm.
const LARGEST_EM: f64 = 4.0;

/// The code is at least that large, em in mm: it is read out and typed.
const CODE_SMALLEST_EM: f64 = 3.2;

/// And at most that large.
const CODE_LARGEST_EM: f64 = 8.0;

/// Margin round the words, in mm: labels are cut and printed a little off.
const MARGIN: f64 = 1.2;

/// From baseline to baseline, in em.
const LEADING: f64 = 1.2;

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
const EASY: Words = Words { least_em: EASY_EM, all_facts: true };
const SMALL: Words = Words { least_em: SMALLEST_EM, all_facts: true };
const FEW: Words = Words { least_em: SMALLEST_EM, all_facts: false };

/// What is tried for the full text, in turn.
const FULL: [(&[Choice], Words); 9] = [
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

/// What words must be.
#[derive(Clone, Copy)]
struct Words {
    least_em: f64,
    all_facts: bool,
}

/// What is to stand on a label, whatever its size.
pub(super) struct Plan {
    groups: [String; 3],
    lines: Vec<Line>,
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
        let codes = levels.iter().filter_map(|level| qr::smallest(&text, *level)).collect();
        Self { form, text, codes }
    }
}

/// Room for words, in mm.
#[derive(Clone, Copy)]
struct Room {
    x: f64,
    y: f64,
    width: f64,
    height: f64,
}

impl Plan {
    pub(super) fn new(tag: &TagContent, words: &hosewright_words::Words) -> Self {
        Self {
            groups: tag.code.groups(),
            lines: lines(tag, words),
            full: Symbol::new(Form::FullText, tag::write(tag), &[EcLevel::Q, EcLevel::M, EcLevel::L]),
            alone: Symbol::new(Form::CodeAlone, tag.code.to_string(), &[EcLevel::H, EcLevel::Q]),
        }
    }

    /// The label at that size, as good as it has room for.
    pub(super) fn label(&self, size: LabelSize) -> Option<Label> {
        let full = FULL.iter().find_map(|(choices, words)| self.with(size, &self.full, choices, *words));
        full.or_else(|| [EASY, SMALL].iter().find_map(|words| self.with(size, &self.alone, ALONE, *words)))
    }

    /// The label with the first of these choices that leaves room for such words, its modules as
    /// large as can be.
    fn with(&self, size: LabelSize, symbol: &Symbol, choices: &[Choice], words: Words) -> Option<Label> {
        let dot = 25.4 / size.dpi;
        choices.iter().find_map(|(level, module_mm)| {
            let code = symbol.codes.iter().find(|code| code.level == *level)?;
            let least = (module_mm / dot - 1e-9).ceil() as u32;
            let most = size.width_mm.min(size.height_mm) / code.with_quiet() as f64;
            let most = (most.min(LARGEST_MODULE_MM) / dot + 1e-9).floor() as u32;
            (least..=most).rev().find_map(|module_dots| {
                let module_mm = f64::from(module_dots) * dot;
                let room = room(size, code.with_quiet() as f64 * module_mm)?;
                let (ops, left_off) = self.words(room, words)?;
                Some(Label {
                    drawing: drawing(size, code, module_mm, ops),
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

    /// Code and facts within a room, letters as large as possible; facts that may be left off go
    /// one by one, the least important first.
    fn words(&self, room: Room, words: Words) -> Option<(Vec<Op>, Vec<Fact>)> {
        let mut lines: Vec<&Line> = self.lines.iter().collect();
        let mut left_off = Vec::new();
        loop {
            let sizes = (0..).map(|step| LARGEST_EM - 0.1 * f64::from(step));
            let mut sizes = sizes.take_while(|em| *em >= words.least_em - 1e-9);
            if let Some(ops) = sizes.find_map(|em| self.set(room, &lines, em)) {
                return Some((ops, left_off));
            }
            let spare = lines.iter().rposition(|line| may_be_left_off(line.fact, words))?;
            left_off.push(lines.remove(spare).fact);
        }
    }

    /// Code and facts at that size of letters, if they have room.
    fn set(&self, room: Room, lines: &[&Line], em: f64) -> Option<Vec<Op>> {
        let mut ops = Vec::new();
        let mut y = room.y;
        for (text, size) in self.code_lines(room.width, em)? {
            y += CAP_HEIGHT * size;
            ops.push(text_op(room.x, y, size, Weight::Bold, text));
            y += 0.3 * size;
        }
        y += 0.1 * em;
        ops.push(Op::Line { points: vec![(room.x, y), (room.x + room.width, y)], width: 0.3, dash: None });
        y += (LEADING - CAP_HEIGHT) * em + 0.2;
        let mut bottom = y;
        for line in lines {
            for text in font::wrap(&line.text, em, line.weight, room.width) {
                if font::width(&text, em, line.weight) > room.width {
                    return None;
                }
                bottom = y + CAP_HEIGHT * em;
                ops.push(text_op(room.x, bottom, em, line.weight, text));
                y += LEADING * em;
            }
        }
        // Tails of letters hang below the last baseline.
        (bottom + 0.24 * em <= room.y + room.height).then_some(ops)
    }

    /// The code on one line where it is wide enough at twice the letters' size, else on two.
    fn code_lines(&self, width: f64, em: f64) -> Option<Vec<(String, f64)>> {
        let [first, second, check] = &self.groups;
        let one = vec![format!("{first}-{second}-{check}")];
        let two = vec![first.clone(), format!("{second}-{check}")];
        let wanted = (2.0 * em).clamp(CODE_SMALLEST_EM, CODE_LARGEST_EM);
        let widest = |lines: &[String]| {
            lines.iter().map(|line| font::width(line, 1.0, Weight::Bold)).fold(0.0, f64::max)
        };
        let size_of = |lines: &[String]| (width / widest(lines)).min(wanted);
        let lines = if size_of(&one) >= wanted { one } else { two };
        let size = size_of(&lines);
        (size >= CODE_SMALLEST_EM).then(|| lines.into_iter().map(|line| (line, size)).collect())
    }
}

/// The room that a QR code of that side leaves: beside it on a wide label, beneath it on a high one.
/// The quiet zone is the margin towards the code.
fn room(size: LabelSize, qr_side: f64) -> Option<Room> {
    let room = if size.width_mm >= size.height_mm {
        Room {
            x: qr_side,
            y: MARGIN,
            width: size.width_mm - qr_side - MARGIN,
            height: size.height_mm - 2.0 * MARGIN,
        }
    } else {
        Room {
            x: MARGIN,
            y: qr_side,
            width: size.width_mm - 2.0 * MARGIN,
            height: size.height_mm - qr_side - MARGIN,
        }
    };
    (room.width > 0.0 && room.height > 0.0).then_some(room)
}

/// What a person needs without a phone is never left off, and what no QR code has neither.
fn may_be_left_off(fact: Fact, words: Words) -> bool {
    match fact {
        Fact::Hose | Fact::Pressure | Fact::Proof | Fact::Duty => false,
        Fact::Length | Fact::End | Fact::Made | Fact::Adapter => !words.all_facts,
        Fact::Caution => true,
    }
}

fn drawing(size: LabelSize, code: &Code, module: f64, words: Vec<Op>) -> Drawing {
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
    drawing.ops.push(Op::Modules {
        x: x + quiet,
        y: y + quiet,
        module,
        side: code.side,
        dark: code.dark.clone(),
    });
    drawing.ops.extend(words);
    drawing
}

fn text_op(x: f64, y: f64, size: f64, weight: Weight, text: String) -> Op {
    Op::Text { x, y, size, weight, anchor: Anchor::Start, text }
}

fn letter(level: EcLevel) -> char {
    match level {
        EcLevel::L => 'L',
        EcLevel::M => 'M',
        EcLevel::Q => 'Q',
        EcLevel::H => 'H',
    }
}
