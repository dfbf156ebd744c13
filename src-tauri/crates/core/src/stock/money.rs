//! Money in whole minor units of a currency, exactly: no figure here is ever a fraction that was rounded unsaid.

use thiserror::Error;

/// Decimals of the currencies that have not two: ISO 4217, list one (published; read against its list of 2024-06-25).
const OTHER_DIGITS: [(u8, &[&str]); 3] = [
    (
        0,
        &[
            "BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND", "VUV",
            "XAF", "XOF", "XPF",
        ],
    ),
    (3, &["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"]),
    (4, &["CLF", "UYW"]),
];

/// How many decimals a currency has, by its letters.
pub fn digits(currency: &str) -> u8 {
    OTHER_DIGITS.iter().find(|(_, letters)| letters.contains(&currency)).map_or(2, |(digits, _)| *digits)
}

/// A text that is no amount of money.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum MoneyError {
    /// No digits, or something else than digits and one decimal sign.
    #[error("\"{text}\" is no price; digits with at most one point or comma are expected, such as 12.50")]
    Text {
        /// What stood there.
        text: String,
    },
    /// More decimals than the currency has.
    #[error("\"{text}\" has more decimals than the {digits} of the currency")]
    Decimals {
        /// What stood there.
        text: String,
        /// How many there may be.
        digits: u8,
    },
    /// Too much.
    #[error("that is more than can be kept")]
    TooMuch,
}

/// Reads an amount as it is typed: `12`, `12.5` or `12,50`. What it says is kept exactly or refused.
///
/// # Errors
/// No amount, more decimals than the currency has, or too much.
pub fn parse(text: &str, digits: u8) -> Result<i64, MoneyError> {
    let wrong = || MoneyError::Text { text: text.chars().take(40).collect() };
    let typed = text.trim();
    let (whole, decimals) = typed.split_once(['.', ',']).unwrap_or((typed, ""));
    let all_digits = |part: &str| part.bytes().all(|byte| byte.is_ascii_digit());
    if whole.len() + decimals.len() == 0 || !all_digits(whole) || !all_digits(decimals) {
        return Err(wrong());
    }
    let decimals = decimals.trim_end_matches('0');
    let digits_there = usize::from(digits);
    if decimals.len() > digits_there {
        return Err(MoneyError::Decimals { text: text.chars().take(40).collect(), digits });
    }
    let minor = format!("{whole}{decimals:0<digits_there$}");
    let minor = minor.trim_start_matches('0');
    if minor.is_empty() {
        return Ok(0);
    }
    // What JavaScript still holds exactly.
    minor.parse().ok().filter(|minor| *minor <= MOST).ok_or(MoneyError::TooMuch)
}

/// The most that an amount may be: what every JSON reader still holds exactly.
const MOST: i64 = (1 << 53) - 1;

/// An amount with its decimals, such as `12.50`.
pub fn written(minor: i64, digits: u8) -> String {
    let digits = usize::from(digits);
    let sign = if minor < 0 { "\u{2212}" } else { "" };
    let all = format!("{:0>width$}", minor.unsigned_abs(), width = digits + 1);
    let (whole, decimals) = all.split_at(all.len() - digits);
    if decimals.is_empty() { format!("{sign}{whole}") } else { format!("{sign}{whole}.{decimals}") }
}

/// `price` times `part` of `whole`, rounded once to the minor unit, halves away from nothing (the common commercial
/// rounding, DIN 1333).
///
/// # Errors
/// More than can be kept.
pub fn share(price: i64, part: i64, whole: i64) -> Result<i64, MoneyError> {
    let (exact, whole) = (i128::from(price) * i128::from(part), i128::from(whole));
    let half = if exact < 0 { -whole / 2 } else { whole / 2 };
    let rounded = (exact + half) / whole;
    i64::try_from(rounded).ok().filter(|minor| minor.abs() <= MOST).ok_or(MoneyError::TooMuch)
}

/// The sum of amounts.
///
/// # Errors
/// More than can be kept.
pub fn sum(amounts: impl IntoIterator<Item = i64>) -> Result<i64, MoneyError> {
    let total: i128 = amounts.into_iter().map(i128::from).sum();
    i64::try_from(total).ok().filter(|minor| minor.abs() <= MOST).ok_or(MoneyError::TooMuch)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn an_amount_is_read_exactly_or_refused() {
        for (text, minor) in [
            ("12", 1200),
            ("12.5", 1250),
            ("12,50", 1250),
            (" 0.05 ", 5),
            (".5", 50),
            ("0", 0),
            ("007.100", 710),
        ] {
            assert_eq!(parse(text, 2), Ok(minor), "{text}");
        }
        for text in ["", ".", "12.345", "-1", "1 000", "1.2.3", "12e2", "99999999999999999999", "٣"] {
            assert!(parse(text, 2).is_err(), "{text}");
        }
        assert_eq!(parse("1200", 0), Ok(1200), "a currency without decimals");
        assert!(parse("1200.5", 0).is_err());
    }

    #[test]
    fn halves_are_rounded_away_from_nothing_and_once() {
        // 1.1775 m at 9.99 a metre is 11.763225.
        assert_eq!(share(999, 11775, 10_000), Ok(1176));
        assert_eq!((share(1, 1, 2), share(-1, 1, 2), share(3, 1, 2)), (Ok(1), Ok(-1), Ok(2)));
        assert_eq!(share(i64::MAX, 2, 1), Err(MoneyError::TooMuch));
    }

    #[test]
    fn a_currency_has_the_decimals_of_iso_4217() {
        for (currency, expected) in [("EUR", 2), ("JPY", 0), ("HUF", 2), ("KWD", 3), ("CLF", 4), ("", 2)] {
            assert_eq!(digits(currency), expected, "{currency}");
        }
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_back(minor in 0..MOST, digits in 0..=4_u8) {
            prop_assert_eq!(parse(&written(minor, digits), digits), Ok(minor));
        }

        #[test]
        fn a_share_is_within_half_a_unit_of_the_exact_one(price in -1_000_000_i64..1_000_000, part in 0..1_000_000_i64, whole in 1..100_000_i64) {
            let rounded = i128::from(share(price, part, whole).expect("small"));
            let exact = i128::from(price) * i128::from(part);
            prop_assert!((rounded * i128::from(whole) - exact).abs() * 2 <= i128::from(whole));
        }
    }
}
