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

    /// The text in pieces, each alphanumeric or the bytes of its UTF-8, so that all of it takes the fewest bits. No
    /// piece is ever kanji: pairs of bytes that pass as such are given back as other letters.
    fn bits(self, text: &str) -> Option<Bits> {
        let mut bits = Bits::new(Version::Normal(self.version));
        for (mode, piece) in pieces(text.as_bytes(), self.version) {
            match mode {
                Mode::Alphanumeric => bits.push_alphanumeric_data(piece).ok()?,
                Mode::Bytes => bits.push_byte_data(piece).ok()?,
            }
        }
        bits.push_terminator(self.level).ok()?;
        Some(bits)
    }
}

/// How a piece of a text is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Mode {
    Bytes,
    Alphanumeric,
}

impl Mode {
    const ALL: [Mode; 2] = [Mode::Bytes, Mode::Alphanumeric];

    /// Sixths of a bit that the head of a piece takes: four bits for the mode, and the count (ISO/IEC 18004).
    fn head(self, version: i16) -> u32 {
        let count = match (self, version) {
            (Mode::Bytes, ..=9) => 8,
            (Mode::Bytes, _) => 16,
            (Mode::Alphanumeric, ..=9) => 9,
            (Mode::Alphanumeric, ..=26) => 11,
            (Mode::Alphanumeric, _) => 13,
        };
        6 * (4 + count)
    }

    /// Sixths of a bit that a byte takes; none where it can not be written so.
    fn byte(self, byte: u8) -> Option<u32> {
        match self {
            Mode::Bytes => Some(6 * 8),
            Mode::Alphanumeric => is_alphanumeric(byte).then_some(6 * 11 / 2),
        }
    }
}

/// The pieces of a text that take the fewest bits in a code of that version: the cheapest way from byte to byte, a
/// change of mode paying for its head and for the half bit that an odd piece leaves.
fn pieces(text: &[u8], version: i16) -> Vec<(Mode, &[u8])> {
    // For each byte and mode: the least cost so far, and the mode of the byte before.
    let mut costs = Mode::ALL.map(|mode| Some(mode.head(version)));
    let mut came = Vec::with_capacity(text.len());
    for (at, byte) in text.iter().enumerate() {
        let mut best = [None; 2];
        let mut from = [Mode::Bytes; 2];
        for (to, mode) in Mode::ALL.into_iter().enumerate() {
            let Some(step) = mode.byte(*byte) else { continue };
            for (before, cost) in costs.iter().enumerate() {
                let Some(cost) = cost else { continue };
                let changes = before != to;
                if changes && at == 0 {
                    continue;
                }
                let start = if changes { cost.div_ceil(6) * 6 + mode.head(version) } else { *cost };
                if best[to].is_none_or(|least| start + step < least) {
                    best[to] = Some(start + step);
                    from[to] = Mode::ALL[before];
                }
            }
        }
        came.push(from);
        costs = best;
    }
    let mut mode = match costs {
        [Some(bytes), Some(letters)] if letters < bytes => Mode::Alphanumeric,
        [None, Some(_)] => Mode::Alphanumeric,
        _ => Mode::Bytes,
    };
    let mut modes = vec![mode; text.len()];
    for (at, from) in came.iter().enumerate().rev() {
        modes[at] = mode;
        mode = from[mode as usize];
    }
    let mut pieces = Vec::new();
    let mut rest = text;
    for run in modes.chunk_by(|a, b| a == b) {
        let (piece, after) = rest.split_at(run.len());
        pieces.push((run[0], piece));
        rest = after;
    }
    pieces
}

/// The 45 characters of the alphanumeric mode (ISO/IEC 18004).
fn is_alphanumeric(byte: u8) -> bool {
    byte.is_ascii_digit() || byte.is_ascii_uppercase() || b" $%*+-./:".contains(&byte)
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::tag;

    /// Sixths of a bit that pieces take, the half bit of an odd piece counted whole.
    fn cost(pieces: &[(Mode, &[u8])], version: i16) -> u32 {
        let piece = |(mode, piece): &(Mode, &[u8])| {
            let bytes: u32 = piece.iter().map(|byte| mode.byte(*byte).expect("a byte of the mode")).sum();
            mode.head(version) + bytes.div_ceil(6) * 6
        };
        pieces.iter().map(piece).sum()
    }

    /// Every way to cut a short text into pieces is tried.
    #[test]
    fn the_pieces_take_the_fewest_bits() {
        let texts = [
            "",
            "A",
            "a",
            "HOSE TAG 3 7KQ",
            "aB",
            "AAAAAAAAAAAAaA",
            "aAAAAAAAAAAAAa",
            "a1234567890ABb",
            "\u{e4}AAAAAAAAAA",
        ];
        for version in [5, 15, 30] {
            for text in texts {
                let bytes = text.as_bytes();
                let ours = pieces(bytes, version);
                assert_eq!(
                    ours.iter().flat_map(|(_, piece)| piece.iter()).copied().collect::<Vec<u8>>(),
                    bytes
                );
                let least = (0..1_u32 << bytes.len())
                    .filter_map(|way| {
                        let modes: Vec<Mode> =
                            (0..bytes.len()).map(|at| Mode::ALL[(way >> at & 1) as usize]).collect();
                        let can = modes.iter().zip(bytes).all(|(mode, byte)| mode.byte(*byte).is_some());
                        let mut rest = bytes;
                        let cut = modes.chunk_by(|a, b| a == b).map(|run| {
                            let (piece, after) = rest.split_at(run.len());
                            rest = after;
                            (run[0], piece)
                        });
                        can.then(|| cost(&cut.collect::<Vec<_>>(), version))
                    })
                    .min();
                assert_eq!(Some(cost(&ours, version)), least, "{text} in version {version}");
            }
        }
    }

    #[test]
    fn a_tag_takes_fewer_bits_in_pieces() {
        let text = "HOSE TAG 3 FTYKH-7MAXC-5\nHOSE EN 853 2SN DN16\nNOT PROVED\nCATALOGUE 8cc60e69cee7\nSEAL 7KQ4M 0123456789ABCDEF\nSUM 0V144G8";
        assert!(tag::code_of(text).is_some(), "a text as tags have it");
        let whole = [(Mode::Bytes, text.as_bytes())];
        let saved = cost(&whole, 10) - cost(&pieces(text.as_bytes(), 10), 10);
        assert!(saved > 6 * 100, "{} bits", saved / 6);
    }
}
