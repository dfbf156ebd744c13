//! Bytes as hexadecimal digits, the writing of ids and hashes.

use thiserror::Error;

/// A text that is no id or hash.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("`{text}` is no {what}: {digits} hexadecimal digits are expected")]
pub struct HexError {
    /// What was expected, such as `MachineId`.
    pub what: &'static str,
    /// How many digits it has.
    pub digits: usize,
    /// What stood there.
    pub text: String,
}

/// Lower-case digits.
pub(super) fn write(bytes: &[u8]) -> String {
    const DIGITS: &[u8; 16] = b"0123456789abcdef";
    let mut text = String::with_capacity(bytes.len() * 2);
    for byte in bytes {
        for half in [byte >> 4, byte & 15] {
            text.push(char::from(DIGITS[usize::from(half)]));
        }
    }
    text
}

/// Exactly `N` bytes, digits of either case.
pub(super) fn read<const N: usize>(what: &'static str, text: &str) -> Result<[u8; N], HexError> {
    let wrong = || HexError { what, digits: N * 2, text: crate::fleet::repeated(text) };
    let digits = text.as_bytes();
    if digits.len() != N * 2 {
        return Err(wrong());
    }
    let mut bytes = [0; N];
    for (byte, pair) in bytes.iter_mut().zip(digits.chunks_exact(2)) {
        for digit in pair {
            let value = char::from(*digit).to_digit(16).ok_or_else(wrong)?;
            *byte = *byte << 4 | value as u8;
        }
    }
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bytes_come_back_from_their_digits() {
        let bytes = [0x00, 0x9f, 0xff, 0x10];
        assert_eq!(write(&bytes), "009fff10");
        assert_eq!(read::<4>("Id", "009FFf10"), Ok(bytes));
    }

    #[test]
    fn anything_else_is_refused_in_words() {
        for text in ["", "009fff1", "009fff100", "009fff1g", "00 fff10", "\u{e9}09fff1"] {
            let error = read::<4>("Id", text).expect_err(text);
            assert!(error.to_string().contains("8 hexadecimal digits"), "{error}");
        }
    }
}
