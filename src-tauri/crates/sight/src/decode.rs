//! Modules to text. Fewer errors are corrected than the code would allow where too few codewords guard against a
//! misreading, and what can not be told from its surroundings counts as missing, which costs half as much as wrong.

use crate::solomon;
use crate::symbol::Symbol;
use rxing::DecodeHints;
use rxing::qrcode::common::ErrorCorrectionLevel;
use rxing::qrcode::decoder::{DataBlock, decoded_bit_stream_parser};

/// Most bits by which the two writings of the format may differ from the nearest format together, of 30.
const FORMAT_ERRORS: u32 = 6;

/// Codewords that a block keeps unused for correction, so that chance does not make a text: where it has few,
/// and where some are taken for missing.
const KEPT: usize = 2;
const KEPT_OF_MISSING: usize = 3;

/// A block with no more than this many codewords for correction has few.
const FEW: usize = 10;

/// The text of a code, from how much lighter each module is than its surroundings.
pub(crate) fn text(symbol: &Symbol, values: &[f32]) -> Option<String> {
    let dark = |column: usize, row: usize| values[row * symbol.side + column] < 0.0;
    let (level, mask) = format(symbol.side, dark)?;
    let (codewords, doubts) = codewords(symbol, values, mask);
    let blocks = DataBlock::getDataBlocks(&codewords, symbol.version, level).ok()?;
    let doubts = DataBlock::getDataBlocks(&doubts, symbol.version, level).ok()?;
    let mut bytes = Vec::new();
    for (block, doubts) in blocks.iter().zip(&doubts) {
        let data = block.getNumDataCodewords() as usize;
        let corrected = corrected(block.getCodewords(), doubts.getCodewords(), data)?;
        bytes.extend_from_slice(&corrected[..data]);
    }
    let hints = DecodeHints::default();
    let read = decoded_bit_stream_parser::decode(&bytes, symbol.version, level, &hints).ok()?;
    (!read.getText().is_empty()).then(|| read.getText().to_owned())
}

/// The level of correction and the mask: the format nearest to both its writings.
fn format(side: usize, dark: impl Fn(usize, usize) -> bool) -> Option<(ErrorCorrectionLevel, u8)> {
    let bits = |places: &[(usize, usize)]| {
        places.iter().fold(0_u32, |bits, (column, row)| bits << 1 | u32::from(dark(*column, *row)))
    };
    let first: Vec<_> = (0..6)
        .map(|column| (column, 8))
        .chain([(7, 8), (8, 8), (8, 7)])
        .chain((0..6).rev().map(|row| (8, row)))
        .collect();
    let second: Vec<_> =
        (0..7).map(|at| (8, side - 1 - at)).chain((side - 8..side).map(|column| (column, 8))).collect();
    let (first, second) = (bits(&first), bits(&second));
    let apart = |format: u32| (first ^ format).count_ones().min(6) + (second ^ format).count_ones().min(6);
    let (number, apart) =
        (0..32).map(|number| (number, apart(written(number)))).min_by_key(|(_, apart)| *apart)?;
    if apart > FORMAT_ERRORS {
        return None;
    }
    let level = ErrorCorrectionLevel::forBits((number >> 3) as u8).ok()?;
    Some((level, (number & 7) as u8))
}

/// A format as it is written: five bits, ten of a BCH code (generator 10100110111), and ISO/IEC 18004's mask.
fn written(number: u32) -> u32 {
    let mut rest = number << 10;
    for bit in (10..15).rev() {
        if rest >> bit & 1 == 1 {
            rest ^= 0b101_0011_0111 << (bit - 10);
        }
    }
    (number << 10 | rest) ^ 0b101_0100_0001_0010
}

/// Whether a mask flips the module.
fn flips(mask: u8, x: usize, y: usize) -> bool {
    match mask {
        0 => (x + y).is_multiple_of(2),
        1 => y.is_multiple_of(2),
        2 => x.is_multiple_of(3),
        3 => (x + y).is_multiple_of(3),
        4 => (y / 2 + x / 3).is_multiple_of(2),
        5 => x * y % 2 + x * y % 3 == 0,
        6 => (x * y % 2 + x * y % 3).is_multiple_of(2),
        _ => ((x + y) % 2 + x * y % 3).is_multiple_of(2),
    }
}

/// The codewords in their order, and for each how doubtful its most doubtful module is, 0 to 255.
fn codewords(symbol: &Symbol, values: &[f32], mask: u8) -> (Vec<u8>, Vec<u8>) {
    let side = symbol.side;
    let typical = values.iter().map(|value| value.abs()).sum::<f32>() / values.len() as f32;
    let (mut codewords, mut doubts) = (Vec::new(), Vec::new());
    let (mut bits, mut word, mut doubt) = (0, 0_u8, 0_u8);
    let mut right = side as i32 - 1;
    let mut up = true;
    while right > 0 {
        if right == 6 {
            right -= 1;
        }
        for step in 0..side {
            let row = if up { side - 1 - step } else { step };
            for column in [right as usize, right as usize - 1] {
                let at = row * side + column;
                if symbol.reserved[at] {
                    continue;
                }
                word = word << 1 | u8::from((values[at] < 0.0) != flips(mask, column, row));
                let sure = (values[at].abs() / typical).min(1.0);
                doubt = doubt.max(255 - (sure * 255.0) as u8);
                bits += 1;
                if bits == 8 {
                    codewords.push(word);
                    doubts.push(doubt);
                    (bits, word, doubt) = (0, 0, 0);
                }
            }
        }
        up = !up;
        right -= 2;
    }
    (codewords, doubts)
}

/// A block with its errors corrected: as it is, or with its most doubtful codewords taken for missing.
fn corrected(block: &[u8], doubts: &[u8], data: usize) -> Option<Vec<u8>> {
    let spare = block.len() - data;
    let usable = spare - if spare <= FEW { KEPT } else { 0 };
    let mut order: Vec<usize> = (0..block.len()).collect();
    order.sort_by_key(|at| std::cmp::Reverse(doubts[*at]));
    solomon::corrected(block, spare, &[], usable).or_else(|| {
        let usable = spare - KEPT_OF_MISSING.min(spare);
        let missing = [usable / 3, 2 * usable / 3];
        missing.into_iter().find_map(|missing| solomon::corrected(block, spare, &order[..missing], usable))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn values(code: &qrcode::QrCode) -> Vec<f32> {
        code.to_colors()
            .iter()
            .map(|colour| if *colour == qrcode::Color::Dark { -1.0 } else { 1.0 })
            .collect()
    }

    #[test]
    fn codes_by_another_maker_say_what_they_were_made_of() {
        for (number, level) in [
            (1, qrcode::EcLevel::H),
            (3, qrcode::EcLevel::L),
            (8, qrcode::EcLevel::Q),
            (22, qrcode::EcLevel::M),
        ] {
            let code = qrcode::QrCode::with_version(b"7KQ4M", qrcode::Version::Normal(number), level)
                .expect("a code");
            let symbol = Symbol::of(number as u32).expect("a version");
            assert_eq!(text(&symbol, &values(&code)).as_deref(), Some("7KQ4M"), "version {number}");
        }
    }

    #[test]
    fn noise_says_nothing() {
        let mut state = 7_u32;
        for number in [1, 2, 4].into_iter().cycle().take(3000) {
            let symbol = Symbol::of(number).expect("a version");
            let mut next = || {
                state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                (state >> 16) as f32 / 32768.0 - 1.0
            };
            let values: Vec<f32> = (0..symbol.side * symbol.side).map(|_| next()).collect();
            assert_eq!(text(&symbol, &values), None);
        }
    }
}
