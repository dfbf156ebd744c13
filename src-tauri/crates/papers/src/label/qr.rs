//! Making a QR code and choosing how strong and how large it is printed.

use qrcode::bits::Bits;
use qrcode::{Color, EcLevel, QrCode, Version};

/// Light modules that must stand free on every side (ISO/IEC 18004).
pub(super) const QUIET: usize = 4;

/// The smallest module that a hand-held phone reads well (common practice of print guides).
pub(super) const SMALLEST_MODULE_MM: f64 = 0.4;

/// The module for labels that get oily or worn (common practice of print guides).
pub(super) const GOOD_MODULE_MM: f64 = 0.5;

/// Which QR code a text takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Code {
    pub(super) version: i16,
    pub(super) level: EcLevel,
}

impl Code {
    /// The smallest code of that level that holds the text; none when no code does.
    pub(super) fn smallest(text: &str, level: EcLevel) -> Option<Self> {
        (1..=40).map(|version| Self { version, level }).find(|code| code.bits(text).is_some())
    }

    /// Modules in a row (ISO/IEC 18004).
    pub(super) fn side(self) -> usize {
        17 + 4 * self.version.unsigned_abs() as usize
    }

    /// Modules in a row with the quiet zone.
    pub(super) fn with_quiet(self) -> usize {
        self.side() + 2 * QUIET
    }

    /// The modules row by row, true is dark.
    pub(super) fn modules(self, text: &str) -> Option<Vec<bool>> {
        let code = QrCode::with_bits(self.bits(text)?, self.level).ok()?;
        Some(code.into_colors().into_iter().map(|color| color == Color::Dark).collect())
    }

    /// The text goes in as one piece, as alphanumeric or as its UTF-8 bytes: a mixed coding would
    /// let pairs of bytes pass as kanji, which readers give back as other letters.
    fn bits(self, text: &str) -> Option<Bits> {
        let mut bits = Bits::new(Version::Normal(self.version));
        let bytes = text.as_bytes();
        if bytes.iter().all(|byte| is_alphanumeric(*byte)) {
            bits.push_alphanumeric_data(bytes).ok()?;
        } else {
            bits.push_byte_data(bytes).ok()?;
        }
        bits.push_terminator(self.level).ok()?;
        Some(bits)
    }
}

/// The 45 characters of the alphanumeric mode (ISO/IEC 18004).
fn is_alphanumeric(byte: u8) -> bool {
    byte.is_ascii_digit() || byte.is_ascii_uppercase() || b" $%*+-./:".contains(&byte)
}
