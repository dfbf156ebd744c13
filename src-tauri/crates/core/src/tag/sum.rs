//! The checksum of a tag's text: CRC-32, written in Crockford's base 32.

use super::code::character;

/// CRC-32 as in ISO 3309 / IEEE 802.3. It catches every change that lies within 32 bits in a row,
/// so every single wrong character of up to four bytes, and others but for one in 2^32.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |sum, byte| {
        (0..8).fold(
            sum ^ u32::from(*byte),
            |sum, _| {
                if sum & 1 == 0 { sum >> 1 } else { sum >> 1 ^ 0xedb8_8320 }
            },
        )
    })
}

/// The seven characters that stand behind `SUM`, the most significant first.
pub(crate) fn sum(text: &str) -> String {
    let crc = crc32(text.as_bytes());
    (0..7).rev().map(|place| character((crc >> (5 * place) & 31) as u8)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The check value of CRC-32 that is published with the algorithm.
    #[test]
    fn the_sum_is_crc_32() {
        assert_eq!(crc32(b"123456789"), 0xcbf4_3926);
        assert_eq!(sum("123456789"), "35Z8E96");
    }
}
