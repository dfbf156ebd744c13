//! The code of a tag: ten characters of Crockford's base 32 and a check character.
//!
//! The check character is a sum over GF(32) in which each place has its own weight, a power of a
//! primitive element. A wrong character changes the sum by weight times difference, a swap by
//! difference of weights times difference of characters; neither product is ever zero, so every
//! single error and every swap of two characters is caught, neighbours or not.

use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// Crockford's base 32: no I, L, O or U.
pub(super) const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// Characters that carry the number; the check character stands behind them.
const DATA: usize = 10;

/// x^5 + x^2 + 1, primitive over GF(2), so that x has order 31.
const POLYNOMIAL: u8 = 0b10_0101;

/// The code of one tag, unique by 50 random bits. Written `7KQ4M-2XR9D-D`, typed as one likes:
/// lower case, without dashes, `I` or `L` for 1 and `O` for 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, JsonSchema, TS)]
#[schemars(with = "String")]
#[ts(as = "String")]
pub struct TagCode([u8; DATA]);

/// Why a typed code is none. Each message says what would be right.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CodeError {
    /// Too few or too many characters.
    #[error("\"{text}\" has {found} letters and digits; a tag's code has 11, such as 7KQ4M-2XR9D-D")]
    Length {
        /// What was given.
        text: String,
        /// Letters and digits in it.
        found: usize,
    },
    /// A character that no code has.
    #[error(
        "\"{character}\" in \"{text}\" is no character of a code; a code has 0-9 and A-Z without I, L, O, U"
    )]
    Character {
        /// What was given.
        text: String,
        /// The character.
        character: char,
    },
    /// The check character does not fit: one is wrong or two changed places.
    #[error(
        "\"{text}\" does not check: a character is wrong or two have changed places; read it from the tag again"
    )]
    Check {
        /// What was given.
        text: String,
    },
}

impl TagCode {
    /// A code from seven random bytes, of which 50 bits are used.
    pub fn from_random(bytes: [u8; 7]) -> Self {
        let mut bits = bytes.iter().fold(0_u64, |bits, byte| bits << 8 | u64::from(*byte));
        let mut data = [0; DATA];
        for value in &mut data {
            *value = (bits & 31) as u8;
            bits >>= 5;
        }
        Self(data)
    }

    /// The three groups in which a person reads it out: five, five and the check character.
    pub fn groups(self) -> [String; 3] {
        let text = |values: &[u8]| values.iter().map(|value| character(*value)).collect();
        let (first, second) = self.0.split_at(DATA / 2);
        [text(first), text(second), text(&[check(&self.0)])]
    }
}

/// The character of a value below 32.
pub(super) fn character(value: u8) -> char {
    char::from(ALPHABET[usize::from(value & 31)])
}

fn value(typed: char) -> Option<u8> {
    let plain = match typed.to_ascii_uppercase() {
        'I' | 'L' => '1',
        'O' => '0',
        other => other,
    };
    ALPHABET.iter().position(|known| char::from(*known) == plain).map(|at| at as u8)
}

/// Horner's rule: weights x^10 down to x, the check character having weight 1.
fn check(data: &[u8]) -> u8 {
    data.iter().fold(0, |sum, value| times_x(sum ^ value))
}

fn times_x(value: u8) -> u8 {
    let doubled = value << 1;
    if doubled & 32 == 0 { doubled } else { doubled ^ POLYNOMIAL }
}

impl fmt::Display for TagCode {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Registers write millions: one piece of text, not one for each group.
        let mut text = [b'-'; DATA + 3];
        for (at, value) in self.0.into_iter().chain([check(&self.0)]).enumerate() {
            text[at + at / (DATA / 2)] = ALPHABET[usize::from(value)];
        }
        to.write_str(std::str::from_utf8(&text).map_err(|_| fmt::Error)?)
    }
}

impl FromStr for TagCode {
    type Err = CodeError;
    fn from_str(text: &str) -> Result<Self, CodeError> {
        let mut values = Vec::with_capacity(DATA + 1);
        for typed in text.chars().filter(|c| !c.is_whitespace() && !matches!(c, '-' | '\u{2013}')) {
            values.push(value(typed).ok_or_else(|| CodeError::Character {
                text: crate::fleet::repeated(text),
                character: typed,
            })?);
        }
        let length = || CodeError::Length { text: crate::fleet::repeated(text), found: values.len() };
        let (last, data) = values.split_last().ok_or_else(length)?;
        let data: [u8; DATA] = data.try_into().map_err(|_| length())?;
        if check(&data) == *last {
            Ok(Self(data))
        } else {
            Err(CodeError::Check { text: crate::fleet::repeated(text) })
        }
    }
}

impl Serialize for TagCode {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for TagCode {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        String::deserialize(from)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLACES: usize = DATA + 1;

    fn whole(code: TagCode) -> [u8; PLACES] {
        let mut places = [0; PLACES];
        places[..DATA].copy_from_slice(&code.0);
        places[DATA] = check(&code.0);
        places
    }

    fn checks(places: &[u8; PLACES]) -> bool {
        check(&places[..DATA]) == places[DATA]
    }

    /// The code whose characters at two places are those given; the check may be one of the two.
    fn with(at: usize, first: u8, second: u8) -> Option<[u8; PLACES]> {
        let mut data = TagCode::from_random([0x1d, 0x5a, 0xc3, 0x42, 0x99, 0x07, 0xe6]).0;
        data[at] = first;
        if at + 1 < DATA {
            data[at + 1] = second;
            return Some(whole(TagCode(data)));
        }
        // The check is set by the characters before it: another of them is turned until it fits.
        (0..32)
            .map(|turned| {
                data[0] = turned;
                whole(TagCode(data))
            })
            .find(|places| places[DATA] == second)
    }

    #[test]
    fn a_code_that_does_not_check_is_repeated_whole() {
        let said = "5TAXQ-BDKTQ-0".parse::<TagCode>().map_err(|error| error.to_string());
        assert!(said.is_err_and(|said| said.starts_with("\"5TAXQ-BDKTQ-0\" does not check")));
    }

    /// Exhaustive: the sum is linear, so each place and each pair of characters is every case.
    #[test]
    fn every_wrong_character_is_caught() {
        let right = whole(TagCode::from_random([7, 6, 5, 4, 3, 2, 1]));
        let mut tried = 0;
        for at in 0..PLACES {
            for first in 0..32 {
                for second in (0..32).filter(|second| *second != first) {
                    // A valid code with `first` at the place: moved there along the code's own kernel.
                    let Some(mut places) = valid_with(right, at, first) else {
                        panic!("no code has {first} at {at}")
                    };
                    assert!(checks(&places), "{places:?}");
                    places[at] = second;
                    assert!(!checks(&places), "place {at}: {first} as {second} was not caught");
                    tried += 1;
                }
            }
        }
        assert_eq!(tried, PLACES * 32 * 31);
    }

    fn valid_with(mut places: [u8; PLACES], at: usize, value: u8) -> Option<[u8; PLACES]> {
        let other = if at == 0 { 1 } else { 0 };
        (0..32).find_map(|turned| {
            places[other] = turned;
            if at < DATA {
                places[at] = value;
            }
            places[DATA] = check(&places[..DATA]);
            (places[at] == value).then_some(places)
        })
    }

    #[test]
    fn every_swap_of_neighbours_is_caught() {
        let mut tried = 0;
        for at in 0..DATA {
            for first in 0..32 {
                for second in (0..32).filter(|second| *second != first) {
                    let mut places = with(at, first, second).expect("some code has these two");
                    assert!(checks(&places), "{places:?}");
                    places.swap(at, at + 1);
                    assert!(!checks(&places), "place {at}: {first} and {second} swapped was not caught");
                    tried += 1;
                }
            }
        }
        assert_eq!(tried, DATA * 32 * 31);
    }

    #[test]
    fn a_code_is_typed_as_one_likes() {
        let code = TagCode::from_random([1, 2, 3, 4, 5, 6, 7]);
        let printed = code.to_string();
        assert_eq!(printed.len(), 13, "{printed}");
        assert_eq!(printed.parse(), Ok(code));
        assert_eq!(printed.to_lowercase().replace('-', " ").parse(), Ok(code));
        assert_eq!(printed.replace('-', "").replace('1', "l").replace('0', "o").parse(), Ok(code));
        assert_eq!(printed.replace('1', "I").replace('0', "O").parse(), Ok(code));
    }

    #[test]
    fn what_is_no_code_says_why() {
        assert!("7KQ4M-2XR9D-D".parse::<TagCode>().is_ok(), "the example in the messages is a code");
        assert!(matches!("7KQ4M".parse::<TagCode>(), Err(CodeError::Length { found: 5, .. })));
        assert!(matches!("".parse::<TagCode>(), Err(CodeError::Length { found: 0, .. })));
        assert!(matches!(
            "7KQ4M-2XR9D-U".parse::<TagCode>(),
            Err(CodeError::Character { character: 'U', .. })
        ));
        assert!(matches!(
            "7KQ4M-2XR9Ü-2".parse::<TagCode>(),
            Err(CodeError::Character { character: 'Ü', .. })
        ));
    }

    #[test]
    fn fifty_bits_make_a_code_and_no_two_the_same() {
        let last = TagCode::from_random([0xff; 7]);
        assert!(last.to_string().starts_with("ZZZZZ-ZZZZZ-"), "{last}");
        assert_ne!(TagCode::from_random([0, 0, 0, 0, 0, 0, 1]), TagCode::from_random([0; 7]));
        assert_ne!(TagCode::from_random([2, 0, 0, 0, 0, 0, 0]), TagCode::from_random([0; 7]));
    }
}
