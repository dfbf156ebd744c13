//! Bytes in Crockford's base 32, the most significant bit first, filled up with zeros at the end.

use super::code::{ALPHABET, character};

/// Whether a tag, a seal or a key may have that letter.
pub(crate) fn is_letter(letter: u8) -> bool {
    ALPHABET.contains(&letter)
}

/// The characters of these bytes.
pub(crate) fn write(bytes: &[u8]) -> String {
    let bit = |at: usize| bytes.get(at / 8).map_or(0, |byte| byte >> (7 - at % 8) & 1);
    (0..(bytes.len() * 8).div_ceil(5))
        .map(|place| character((0..5).fold(0, |value, step| value << 1 | bit(place * 5 + step))))
        .collect()
}

/// The bytes behind just such a writing; `None` where it has another length, letters of its own, or an end that
/// is not filled up with zeros.
pub(crate) fn read<const N: usize>(text: &str) -> Option<[u8; N]> {
    let mut bytes = [0; N];
    for (place, letter) in text.bytes().enumerate() {
        let value = ALPHABET.iter().position(|known| *known == letter)?;
        for step in 0..5 {
            let at = place * 5 + step;
            let set = value >> (4 - step) & 1;
            match bytes.get_mut(at / 8) {
                Some(byte) => *byte |= (set as u8) << (7 - at % 8),
                None if set == 1 => return None,
                None => {}
            }
        }
    }
    (write(&bytes) == text).then_some(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn bits_stand_in_their_order() {
        assert_eq!(write(&[0xff, 0, 0, 0, 0]), "ZW000000");
        assert_eq!(write(&[0x80]), "G0");
        assert_eq!(read::<1>("G0"), Some([0x80]));
        for wrong in ["", "G", "G1", "g0", "GU", "G00", "GÄ"] {
            assert_eq!(read::<1>(wrong), None, "{wrong}");
        }
    }

    proptest! {
        #[test]
        fn bytes_come_back(bytes: [u8; 32], ten: [u8; 10]) {
            prop_assert_eq!(read(&write(&bytes)), Some(bytes));
            prop_assert_eq!(write(&ten).len(), 16);
            prop_assert_eq!(read(&write(&ten)), Some(ten));
        }
    }
}
