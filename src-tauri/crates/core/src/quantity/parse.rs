//! Reading the trade's writing of numbers with units.

use super::{Bar, Millimetres};
use thiserror::Error;

/// Why a quantity could not be read. Each message says what would be right.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum QuantityError {
    /// No number stands at the front.
    #[error("\"{text}\" has no number in it; write for example {example}")]
    NoNumber {
        /// What was given.
        text: String,
        /// What would be right.
        example: &'static str,
    },
    /// The unit is not one of this kind.
    #[error("\"{unit}\" is no unit of this kind; use {allowed}")]
    Unit {
        /// What was given.
        unit: String,
        /// The units that can stand here.
        allowed: &'static str,
    },
    /// A fraction such as 3/0.
    #[error("\"{text}\" is no fraction; write for example 13/16 in")]
    Fraction {
        /// What was given.
        text: String,
    },
    /// No nominal diameter.
    #[error("\"{text}\" is no nominal diameter; write for example 12")]
    Size {
        /// What was given.
        text: String,
    },
}

/// A number as written, the step of its fraction where it was one, and the unit behind it.
struct Written {
    number: f64,
    /// 1/16 for a number written in sixteenths.
    step: Option<f64>,
    unit: String,
}

/// Reads `13/16 in`, `1 1/16"`, `1-1/16 in`, `20,6 mm`, `-40 F`.
fn written(text: &str, example: &'static str) -> Result<Written, QuantityError> {
    let no_number = || QuantityError::NoNumber { text: text.to_owned(), example };
    let trimmed = text.trim().replace('\u{2212}', "-");
    let (negative, rest) = match trimmed.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, trimmed.as_str()),
    };
    let (first, rest) = split_number(rest).ok_or_else(no_number)?;
    // "1 1/16" and "1-1/16": a whole number before the fraction.
    let after = rest.trim_start_matches([' ', '-']);
    let (number, step, rest) = if let Some(denominator) = rest.strip_prefix('/') {
        let (part, step, rest) = fraction(first, denominator, text)?;
        (part, Some(step), rest)
    } else if let Some((top, denominator)) = split_number(after)
        .and_then(|(top, tail)| tail.strip_prefix('/').map(|denominator| (top, denominator)))
    {
        let (part, step, rest) = fraction(top, denominator, text)?;
        (first + part, Some(step), rest)
    } else {
        (first, None, rest)
    };
    Ok(Written { number: if negative { -number } else { number }, step, unit: rest.trim().to_owned() })
}

/// The number at the front of a text and what follows it. Decimal comma or point.
fn split_number(text: &str) -> Option<(f64, &str)> {
    let end = text.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(text.len());
    let number: f64 = text[..end].replace(',', ".").parse().ok()?;
    number.is_finite().then_some((number, &text[end..]))
}

fn fraction<'a>(top: f64, denominator: &'a str, text: &str) -> Result<(f64, f64, &'a str), QuantityError> {
    let wrong = || QuantityError::Fraction { text: text.to_owned() };
    let (bottom, rest) = split_number(denominator).ok_or_else(wrong)?;
    if bottom < 1.0 || bottom.fract() != 0.0 || top.fract() != 0.0 {
        return Err(wrong());
    }
    Ok((top / bottom, 1.0 / bottom, rest))
}

/// A length in mm and, where it was written as a fraction, the step of that fraction in mm.
///
/// # Errors
/// Says which part of the text is no length.
pub fn parse_length(text: &str) -> Result<(f64, Option<f64>), QuantityError> {
    let written = written(text, "20.6 mm or 13/16 in")?;
    let scale = match written.unit.to_lowercase().as_str() {
        // A bare fraction is always inches in the trade; a bare number is millimetres.
        "" if written.step.is_some() => Millimetres::PER_INCH,
        "" | "mm" => 1.0,
        "in" | "in." | "inch" | "inches" | "\"" | "\u{2033}" | "''" => Millimetres::PER_INCH,
        "cm" => 10.0,
        "m" => 1000.0,
        "ft" | "ft." | "'" | "\u{2032}" => 12.0 * Millimetres::PER_INCH,
        _ => return Err(QuantityError::Unit { unit: written.unit, allowed: "mm, cm, m, in or ft" }),
    };
    Ok((written.number * scale, written.step.map(|step| step * scale)))
}

pub(super) fn length(text: &str) -> Result<f64, QuantityError> {
    parse_length(text).map(|(value, _)| value)
}

pub(super) fn metres(text: &str) -> Result<f64, QuantityError> {
    let written = written(text, "3.5 m or 10 ft")?;
    if written.unit.is_empty() && written.step.is_none() {
        return Ok(written.number);
    }
    length(text).map(|millimetres| millimetres / 1000.0)
}

pub(super) fn pressure(text: &str) -> Result<f64, QuantityError> {
    let written = written(text, "207 bar or 3000 psi")?;
    let scale = match written.unit.to_lowercase().as_str() {
        "" | "bar" => 1.0,
        "psi" => Bar::PER_PSI,
        "mpa" => 10.0,
        "kpa" => 0.01,
        _ => return Err(QuantityError::Unit { unit: written.unit, allowed: "bar, psi, MPa or kPa" }),
    };
    Ok(written.number * scale)
}

pub(super) fn temperature(text: &str) -> Result<f64, QuantityError> {
    let written = written(text, "100 C or 212 F")?;
    match written.unit.trim_start_matches('\u{b0}').trim().to_lowercase().as_str() {
        "" | "c" => Ok(written.number),
        "f" => Ok((written.number - 32.0) / 1.8),
        "k" => Ok(written.number - 273.15),
        _ => Err(QuantityError::Unit { unit: written.unit, allowed: "C, F or K" }),
    }
}

pub(super) fn angle(text: &str) -> Result<f64, QuantityError> {
    let written = written(text, "74")?;
    match written.unit.to_lowercase().as_str() {
        "" | "deg" | "\u{b0}" => Ok(written.number),
        _ => Err(QuantityError::Unit { unit: written.unit, allowed: "deg" }),
    }
}

pub(super) fn flow(text: &str) -> Result<f64, QuantityError> {
    let written = written(text, "80 l/min or 20 gpm")?;
    let scale = match written.unit.to_lowercase().replace(' ', "").as_str() {
        "" | "l/min" | "lpm" => 1.0,
        // US gallon, 231 cubic inches exactly (NIST SP 811).
        "gpm" | "gal/min" | "usgpm" | "usgal/min" => 3.785_411_784,
        _ => return Err(QuantityError::Unit { unit: written.unit, allowed: "l/min or gpm" }),
    };
    Ok(written.number * scale)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("13/16 in", 20.6375, Some(1.5875))]
    #[case("1 1/16\"", 26.9875, Some(1.5875))]
    #[case("1-1/16 in", 26.9875, Some(1.5875))]
    #[case("20,6 mm", 20.6, None)]
    #[case("0.875in", 22.225, None)]
    #[case("13/16", 20.6375, Some(1.5875))]
    #[case("22.2", 22.2, None)]
    #[case("1.24 m", 1240.0, None)]
    fn the_trades_writing_of_a_length(#[case] text: &str, #[case] mm: f64, #[case] step: Option<f64>) {
        let (value, read_step) = parse_length(text).unwrap();
        assert!((value - mm).abs() < 1e-9, "{text}: {value}");
        assert_eq!(read_step.map(|s| (s * 1e6).round()), step.map(|s| (s * 1e6).round()), "{text}");
    }

    #[rstest]
    #[case("")]
    #[case("in")]
    #[case("3/0 in")]
    #[case("12 bar")]
    #[case("1/2/3")]
    fn what_is_no_length_is_refused(#[case] text: &str) {
        assert!(parse_length(text).is_err(), "{text}");
    }

    #[rstest]
    #[case("3,5 m", 3.5)]
    #[case("3.5", 3.5)]
    #[case("10 ft", 3.048)]
    #[case("250 mm", 0.25)]
    fn the_length_of_a_line_is_metres_unless_a_unit_says_otherwise(#[case] text: &str, #[case] m: f64) {
        assert!((metres(text).unwrap() - m).abs() < 1e-12, "{text}");
    }

    #[test]
    fn pressures_and_temperatures_take_the_trades_units() {
        assert!((pressure("3000 psi").unwrap() - 206.843).abs() < 0.001);
        assert!((pressure("28.0 MPa").unwrap() - 280.0).abs() < 1e-9);
        assert!((temperature("212 F").unwrap() - 100.0).abs() < 1e-9);
        assert!((temperature("-40 \u{b0}F").unwrap() + 40.0).abs() < 1e-9);
    }
}
