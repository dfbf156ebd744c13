//! Making a QR code and choosing how strong and how large it is printed.

use qrcode::bits::Bits;
use qrcode::{Color, EcLevel, QrCode, Version};

/// Light modules that must stand free on every side (ISO/IEC 18004).
pub(super) const QUIET: usize = 4;

/// The smallest module that a hand-held phone reads well (common practice of print guides).
pub(super) const SMALLEST_MODULE_MM: f64 = 0.4;

/// The module for labels that get oily or worn (common practice of print guides).
pub(super) const GOOD_MODULE_MM: f64 = 0.5;

/// A QR code in modules.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Code {
    pub(super) version: i16,
    pub(super) level: EcLevel,
    pub(super) side: usize,
    pub(super) dark: Vec<bool>,
}

impl Code {
    /// Side with the quiet zone, in modules.
    pub(super) fn with_quiet(&self) -> usize {
        self.side + 2 * QUIET
    }
}

/// The smallest code of that level that holds the text; none when no code does.
pub(super) fn smallest(text: &str, level: EcLevel) -> Option<Code> {
    (1..=40).find_map(|version| of_version(text, version, level))
}

/// The text goes in as one piece, as alphanumeric or as its UTF-8 bytes: a mixed coding would let
/// pairs of bytes pass as kanji, which readers give back as other letters.
fn of_version(text: &str, version: i16, level: EcLevel) -> Option<Code> {
    let mut bits = Bits::new(Version::Normal(version));
    let bytes = text.as_bytes();
    if bytes.iter().all(|byte| is_alphanumeric(*byte)) {
        bits.push_alphanumeric_data(bytes).ok()?;
    } else {
        bits.push_byte_data(bytes).ok()?;
    }
    bits.push_terminator(level).ok()?;
    let code = QrCode::with_bits(bits, level).ok()?;
    let side = code.width();
    let dark = code.into_colors().into_iter().map(|color| color == Color::Dark).collect();
    Some(Code { version, level, side, dark })
}

/// The 45 characters of the alphanumeric mode (ISO/IEC 18004).
fn is_alphanumeric(byte: u8) -> bool {
    byte.is_ascii_digit() || byte.is_ascii_uppercase() || b" $%*+-./:".contains(&byte)
}
