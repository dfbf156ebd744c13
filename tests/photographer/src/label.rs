//! The printed label: what its code says, how large it is, and what reflects light at each place of it.

use crate::{Random, Setting};
use qrcode::{Color, EcLevel, QrCode};

/// Parts of the light that come back.
const PAPER: f64 = 0.85;
const INK: f64 = 0.05;
const SCRATCH: f64 = 0.6;

/// White modules round a code, as ISO/IEC 18004 asks.
const QUIET: f64 = 4.0;

/// Most of a hose's round that a code may take for a camera to see it whole: 100 degrees.
const SEEN: f64 = 100.0 / 360.0 * std::f64::consts::PI;

/// A label; its coordinates are mm from the middle of its code, x to the right and y down.
pub(crate) struct Label {
    pub(crate) text: String,
    code: QrCode,
    /// Side of a module in mm.
    pub(crate) module_mm: f64,
    words: Vec<Mark>,
    mud: Vec<Mark>,
    scratches: Vec<[f64; 4]>,
}

/// An ellipse or a rectangle.
struct Mark {
    x: f64,
    y: f64,
    half_width: f64,
    half_height: f64,
    reflects: f64,
    round: bool,
}

impl Mark {
    fn covers(&self, x: f64, y: f64) -> bool {
        let (u, v) = ((x - self.x) / self.half_width, (y - self.y) / self.half_height);
        if self.round { u * u + v * v < 1.0 } else { u.abs() < 1.0 && v.abs() < 1.0 }
    }
}

impl Label {
    /// A label that suits the hose: on a thin one the code holds less, so that its modules stay large enough.
    pub(crate) fn printed(setting: &Setting, random: &mut Random) -> Self {
        let wanted = random.between(0.35, 0.8);
        let room = setting.hose_mm.map_or(f64::INFINITY, |hose| hose * SEEN);
        let first = random.below(3);
        let (text, code) = (0..=first)
            .rev()
            .map(|amount| coded(amount, random))
            .find(|(_, code)| code.width() as f64 * 0.35 <= room)
            .unwrap_or_else(|| coded(0, random));
        let module_mm = wanted.min(room / code.width() as f64);
        let side = code.width() as f64 * module_mm;
        Self {
            text,
            words: words(side, module_mm, random),
            mud: mud(side, setting.mud, random),
            scratches: (0..setting.scratches).map(|_| scratch(side, random)).collect(),
            code,
            module_mm,
        }
    }

    /// Pixels of a module, given the setting: on a small picture a large code is taken from further away.
    pub(crate) fn pixels_per_module(&self, setting: &Setting) -> f64 {
        let most = 0.8 * f64::from(setting.picture.1) / (self.code.width() as f64 + 2.0 * QUIET);
        setting.pixels_per_module.min(most)
    }

    /// Side of the code in mm.
    pub(crate) fn side_mm(&self) -> f64 {
        self.code.width() as f64 * self.module_mm
    }

    /// The part of the light that comes back there; none is beside the label.
    pub(crate) fn reflects(&self, x: f64, y: f64) -> Option<f64> {
        let half = self.side_mm() / 2.0 + QUIET * self.module_mm;
        if y.abs() > half || x < -half || x > 2.6 * half {
            return None;
        }
        let over = self.mud.iter().find(|mark| mark.covers(x, y)).map(|mark| mark.reflects);
        let scratched = || self.scratches.iter().any(|ends| near(*ends, x, y) < 0.35 * self.module_mm);
        Some(over.unwrap_or_else(|| if scratched() { SCRATCH } else { self.printed_at(x, y) }))
    }

    fn printed_at(&self, x: f64, y: f64) -> f64 {
        let at = |mm: f64| ((mm + self.side_mm() / 2.0) / self.module_mm).floor();
        let (column, row, width) = (at(x), at(y), self.code.width() as f64);
        let inside = (0.0..width).contains(&column) && (0.0..width).contains(&row);
        let dark = if inside {
            self.code[(column as usize, row as usize)] == Color::Dark
        } else {
            self.words.iter().any(|word| word.covers(x, y))
        };
        if dark { INK } else { PAPER }
    }
}

/// A tag's code alone, its first facts, or its whole text, and the QR code of it.
#[allow(clippy::expect_used, reason = "a text below 400 bytes fits every level")]
fn coded(amount: usize, random: &mut Random) -> (String, QrCode) {
    let text = text(amount, random);
    let level = [EcLevel::L, EcLevel::M, EcLevel::Q][random.below(3)];
    let code = QrCode::with_error_correction_level(&text, level).expect("a short text");
    (text, code)
}

fn text(amount: usize, random: &mut Random) -> String {
    let mut letters = |count: usize| -> String {
        (0..count).map(|_| char::from(b"0123456789ABCDEFGHJKMNPQRSTVWXYZ"[random.below(32)])).collect()
    };
    let code = format!("{}-{}-{}", letters(5), letters(5), letters(1));
    let sum = letters(7);
    let dash = [4, 6, 8, 10, 12, 16][random.below(6)];
    let length = 200 + random.below(3000);
    let bar = 100 + random.below(40) * 10;
    match amount {
        0 => code.to_string(),
        1 => format!("HOSE TAG 2 {code}\nHOSE EN 853 2SN DN16\nLENGTH {length} mm\nMAX {bar} bar\nSUM {sum}"),
        _ => format!(
            "HOSE TAG 2 {code}\nHOSE EN 853 2SN DN16, bend 130 mm\nA JIC 37 flare -{dash}, female, elbow90, drop 55 mm, cut-off 32.5 mm\nB ORFS -{dash}, female, straight, cut-off 41 mm\nLENGTH {length} mm\nTURN 90 deg\nMAX {bar} bar\nLINE pressure\nFLUID HM\nMADE 2026-11\nPROVED {} bar\nCATALOGUE 8cc60e69cee7\nSUM {sum}",
            2 * bar
        ),
    }
}

/// Words stand beside the code as dark strokes of a letter's height.
fn words(side: f64, module_mm: f64, random: &mut Random) -> Vec<Mark> {
    let left = side / 2.0 + QUIET * module_mm;
    let mut words = Vec::new();
    let letter = side / 14.0;
    for row in 0..7 {
        let y = -side / 2.0 + letter + f64::from(row) * 2.0 * letter;
        let mut x = left + letter;
        while x < 1.1 * side {
            let half_width = letter * random.between(0.08, 0.4);
            let mark = Mark {
                x: x + half_width,
                y,
                half_width,
                half_height: letter * 0.6,
                reflects: INK,
                round: false,
            };
            words.push(mark);
            x += 2.0 * half_width + letter * random.between(0.15, 0.5);
        }
    }
    words
}

/// Splashes until they cover that part of the code, overlaps counted twice.
fn mud(side: f64, part: f64, random: &mut Random) -> Vec<Mark> {
    let mut marks = Vec::new();
    let mut covered = 0.0;
    while covered < part * side * side {
        let radius = side * random.between(0.015, 0.09);
        let squeeze = random.between(0.6, 1.6);
        let place = |random: &mut Random| random.between(-side / 2.0, side / 2.0);
        let mark = Mark {
            x: place(random),
            y: place(random),
            half_width: radius * squeeze,
            half_height: radius / squeeze,
            reflects: random.between(0.08, 0.5),
            round: true,
        };
        covered += std::f64::consts::PI * radius * radius;
        marks.push(mark);
    }
    marks
}

fn scratch(side: f64, random: &mut Random) -> [f64; 4] {
    [0; 4].map(|_| random.between(-0.6 * side, 0.6 * side))
}

/// How far a place is from a stretch between two ends.
fn near([x1, y1, x2, y2]: [f64; 4], x: f64, y: f64) -> f64 {
    let (dx, dy) = (x2 - x1, y2 - y1);
    let along = (((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy)).clamp(0.0, 1.0);
    (x - x1 - along * dx).hypot(y - y1 - along * dy)
}
