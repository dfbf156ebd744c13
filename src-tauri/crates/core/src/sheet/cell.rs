//! Reading one cell of a sheet.

use super::{Cell, Unit};
use crate::catalogue::Catalogue;
use crate::quantity::{Bar, Dn, Millimetres, parse_length};
use chrono::NaiveDate;
use thiserror::Error;

/// A cell that can not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CellError {
    /// No length.
    #[error("\"{cell}\" is no length; write for example 27.4, 27,4 mm or 1 1/16 in")]
    Length {
        /// The cell.
        cell: String,
    },
    /// No pressure.
    #[error("\"{cell}\" is no pressure; write for example 207 bar, 3000 psi or 20.7 MPa")]
    Pressure {
        /// The cell.
        cell: String,
    },
    /// No number.
    #[error("\"{cell}\" is no number from 0 up")]
    Number {
        /// The cell.
        cell: String,
    },
    /// A point or comma that may part thousands.
    #[error(
        "\"{cell}\" is {small} or {large}; write {large} without a sign in it, or {small} with another figure behind"
    )]
    Thousands {
        /// The cell.
        cell: String,
        /// With a decimal sign.
        small: String,
        /// With thousands parted.
        large: String,
    },
    /// A number whose unit nobody said.
    #[error("\"{cell}\" has no unit and neither has its column; match the column with {units}")]
    NoUnit {
        /// The cell.
        cell: String,
        /// Those it can have.
        units: &'static str,
    },
    /// What a spreadsheet made of a fraction.
    #[error("\"{cell}\" is a date: the spreadsheet made it of a fraction; write the fraction as text")]
    Date {
        /// The cell.
        cell: String,
    },
    /// No size of that hose.
    #[error("\"{cell}\" is no size of {hose}; there are {sizes}")]
    Size {
        /// The cell.
        cell: String,
        /// The hose.
        hose: String,
        /// Its sizes.
        sizes: String,
    },
}

/// A cell in one line: blanks of every kind are one blank.
pub fn tidy(cell: &str) -> String {
    let blank = |c: char| c.is_whitespace() || c == '\u{a0}' || c == '\u{202f}';
    if !cell.contains(blank) {
        return cell.to_owned();
    }
    cell.split(blank).filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Whether a cell has a number and no unit.
pub fn is_bare(cell: &str) -> bool {
    cell.chars().all(|c| c.is_ascii_digit() || ['.', ',', ' ', '-', '/'].contains(&c))
}

/// A length; a unit in the cell stands over that of the column. A bare number without either is in millimetres.
///
/// # Errors
/// It is none, or what a spreadsheet made of a fraction.
pub fn length(cell: &str, unit: Option<Unit>) -> Result<Millimetres, CellError> {
    let wrong = || CellError::Length { cell: cell.to_owned() };
    if is_date(cell) {
        return Err(CellError::Date { cell: cell.to_owned() });
    }
    let bare = is_bare(cell);
    let inches = unit == Some(Unit::In) && bare;
    // Two figures in one cell, as in `27.4 1.079`, are no fraction.
    if bare && cell.contains(' ') && !cell.contains('/') {
        return Err(wrong());
    }
    let text = if inches { format!("{cell} in") } else { cell.to_owned() };
    let (value, _) = parse_length(&text).map_err(|_| wrong())?;
    if value >= 0.0 && value.is_finite() { Ok(Millimetres(value)) } else { Err(wrong()) }
}

/// Longest hose assembly that a list is believed, in mm; highest pressure, in bar; most hours of a machine. More than that
/// can not be, so a figure that would be so with its thousands parted is a decimal one.
const LONGEST: f64 = 50_000.0;
const HIGHEST: f64 = 7_000.0;
const MOST_HOURS: f64 = 200_000.0;

/// A length of a cell whose unit is never taken for granted, nor a sign that may part thousands for a decimal one. A
/// fraction is in inches, as everywhere in the trade.
///
/// # Errors
/// It is none, has no unit, or can be read two ways.
pub fn sure_length(cell: &Cell) -> Result<Millimetres, CellError> {
    let text = &cell.text;
    if is_bare(text) && !text.contains('/') && cell.unit.is_none() && !is_date(text) {
        return Err(CellError::NoUnit { cell: text.clone(), units: "mm or in" });
    }
    let inches = cell.unit == Some(Unit::In) && is_bare(text) || text.ends_with("in") || text.ends_with('"');
    // A thousandth of an inch is a common figure, a thousandth of a millimetre of hose none.
    if !(inches && text.contains('.')) {
        not_thousands(text, |large| length(large, cell.unit).is_ok_and(|length| length.get() > LONGEST))?;
    }
    length(text, cell.unit)
}

/// A pressure, its unit never taken for granted.
///
/// # Errors
/// It is none, has no unit, or can be read two ways.
pub fn pressure(cell: &Cell) -> Result<Bar, CellError> {
    let text = &cell.text;
    if is_bare(text) && cell.unit.is_none() {
        return Err(CellError::NoUnit { cell: text.clone(), units: "bar, psi or MPa" });
    }
    let read = |text: &str| {
        let behind = cell.unit.filter(|_| is_bare(text)).map_or("", Unit::name);
        let bar: Option<Bar> = format!("{text} {behind}").parse().ok();
        bar.filter(|bar| bar.get() >= 0.0 && bar.get().is_finite())
    };
    not_thousands(text, |large| read(large).is_some_and(|bar| bar.get() > HIGHEST))?;
    read(text).ok_or_else(|| CellError::Pressure { cell: text.clone() })
}

/// A number of hours: `12450`, `12450,5`, `12 450`, `12.450,5`.
///
/// # Errors
/// It is none, or can be read two ways.
pub fn hours(cell: &str) -> Result<f64, CellError> {
    not_thousands(cell, |large| large.parse().is_ok_and(|hours: f64| hours > MOST_HOURS))?;
    let plain: String = cell.chars().filter(|c| ![' ', '\''].contains(c)).collect();
    // Of two kinds of signs the last is the decimal one.
    let plain = match (plain.rfind('.'), plain.rfind(',')) {
        (Some(point), Some(comma)) if point < comma => plain.replace('.', "").replace(',', "."),
        (Some(_), Some(_)) => plain.replace(',', ""),
        _ => plain.replace(',', "."),
    };
    let plain_figures = plain.chars().all(|c| c.is_ascii_digit() || c == '.');
    let number: Option<f64> = plain.parse().ok().filter(|_| plain_figures);
    number.filter(|number| number.is_finite()).ok_or_else(|| CellError::Number { cell: cell.to_owned() })
}

/// Refuses a number whose only sign stands before three figures: `1,240` is a little more than one or a thousand and more.
/// Where the larger can not be it is the smaller.
fn not_thousands(cell: &str, can_not_be: impl Fn(&str) -> bool) -> Result<(), CellError> {
    let end = cell.find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',')).unwrap_or(cell.len());
    let (figures, rest) = cell.split_at(end);
    let Some((before, behind)) = figures.split_once(['.', ',']) else { return Ok(()) };
    let group = behind.len() == 3 && behind.chars().all(|c| c.is_ascii_digit());
    if !group || !(1..=3).contains(&before.len()) || before.starts_with('0') {
        return Ok(());
    }
    let large = format!("{before}{behind}");
    if can_not_be(&format!("{large}{rest}")) {
        return Ok(());
    }
    Err(CellError::Thousands { cell: cell.to_owned(), small: format!("{before}.{behind}"), large })
}

/// `2026-05-08`, as a spreadsheet stores what was typed as 5/8.
pub fn is_date(cell: &str) -> bool {
    cell.len() >= 8
        && NaiveDate::parse_from_str(cell.split(' ').next().unwrap_or_default(), "%Y-%m-%d").is_ok()
}

/// The size of a hose: `16`, `DN 16`, the dash `-10`, or inches `5/8`.
///
/// # Errors
/// The hose has no such size; the error names those it has.
pub fn dn(cell: &str, catalogue: &Catalogue, standard: &str, kind: &str) -> Result<Dn, CellError> {
    let sizes = || catalogue.sizes(standard, kind);
    if is_date(cell) {
        return Err(CellError::Date { cell: cell.to_owned() });
    }
    let wrong = || CellError::Size {
        cell: cell.to_owned(),
        hose: format!("{standard} {kind}"),
        sizes: sizes().map(|row| row.dn.to_string()).collect::<Vec<_>>().join(", "),
    };
    let dash = match cell.strip_prefix(['-', '#', '\u{2212}']) {
        Some(dash) => Some(dash.trim().parse().map_err(|_| wrong())?),
        None if cell.contains(['/', '"', '\u{2033}']) || cell.to_lowercase().ends_with("in") => {
            let (inches, _) = parse_length(cell).map_err(|_| wrong())?;
            let sixteenths = inches / Millimetres::PER_INCH * 16.0;
            let whole = sixteenths.round();
            ((sixteenths - whole).abs() < 1e-6 && (1.0..=200.0).contains(&whole)).then_some(whole as u16)
        }
        None => None,
    };
    let found = match dash {
        Some(dash) => sizes().find(|row| row.dash == Some(dash)),
        None => {
            let dn: Dn = cell.to_uppercase().parse().map_err(|_| wrong())?;
            sizes().find(|row| row.dn == dn).or_else(|| sizes().find(|row| catalogue.one_size(row.dn, dn)))
        }
    };
    found.map(|row| row.dn).ok_or_else(wrong)
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    fn cell(text: &str, unit: Option<Unit>) -> Cell {
        Cell { text: text.to_owned(), unit, days: None }
    }

    #[rstest]
    #[case("1240", Some(Unit::Mm), 1240.0)]
    #[case("1240,5", Some(Unit::Mm), 1240.5)]
    #[case("1.24 m", None, 1240.0)]
    #[case("48 13/16", None, 1239.8375)]
    #[case("48.8125", Some(Unit::In), 1239.8375)]
    #[case("48.125 in", None, 1222.375)]
    fn a_length_is_read_with_its_unit(#[case] text: &str, #[case] unit: Option<Unit>, #[case] mm: f64) {
        assert!((sure_length(&cell(text, unit)).unwrap().get() - mm).abs() < 1e-9, "{text}");
    }

    #[rstest]
    #[case("207", Some(Unit::Bar), 207.0)]
    #[case("20,7", Some(Unit::Mpa), 207.0)]
    #[case("3000 psi", Some(Unit::Bar), 206.842_718_795)]
    fn a_pressure_is_read_with_its_unit(#[case] text: &str, #[case] unit: Option<Unit>, #[case] bar: f64) {
        assert!((pressure(&cell(text, unit)).unwrap().get() - bar).abs() < 1e-6, "{text}");
    }

    #[test]
    fn a_unit_is_asked_and_never_taken_for_granted() {
        assert!(matches!(sure_length(&cell("1240", None)), Err(CellError::NoUnit { .. })));
        assert!(matches!(pressure(&cell("207", None)), Err(CellError::NoUnit { .. })));
    }

    #[rstest]
    #[case("3,000")]
    #[case("1.240")]
    #[case("12,450")]
    fn what_may_be_thousands_is_asked_and_never_guessed(#[case] text: &str) {
        assert!(matches!(hours(text), Err(CellError::Thousands { .. })), "{text}");
        assert!(
            matches!(sure_length(&cell(text, Some(Unit::Mm))), Err(CellError::Thousands { .. })),
            "{text}"
        );
        assert!(matches!(pressure(&cell(text, Some(Unit::Psi))), Err(CellError::Thousands { .. })), "{text}");
    }

    /// As this program writes a list: 35 1/8 in is 892.175 mm.
    #[test]
    fn what_can_not_be_thousands_is_a_decimal_figure() {
        assert_eq!(sure_length(&cell("892.175", Some(Unit::Mm))), Ok(Millimetres(892.175)));
        assert_eq!(pressure(&cell("206.843", Some(Unit::Bar))), Ok(Bar(206.843)));
        assert_eq!(hours("345.125"), Ok(345.125));
    }

    #[rstest]
    #[case("12450", 12450.0)]
    #[case("12 450", 12450.0)]
    #[case("12.450,5", 12450.5)]
    #[case("12,450.5", 12450.5)]
    #[case("0.125", 0.125)]
    #[case("12450,5", 12450.5)]
    fn hours_are_read_as_offices_write_them(#[case] text: &str, #[case] value: f64) {
        assert_eq!(hours(text), Ok(value));
    }

    #[rstest]
    #[case("-3")]
    #[case("1e9")]
    #[case("inf")]
    #[case("about 12")]
    fn what_is_no_number_is_refused(#[case] text: &str) {
        assert!(matches!(hours(text), Err(CellError::Number { .. })), "{text}");
    }
}
