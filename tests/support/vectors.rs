//! The check values in `vectors/`, and what was found against them.

use std::collections::BTreeMap;
use std::path::PathBuf;

/// Tolerance where a row states none: 0.5 %.
const DEFAULT_TOLERANCE: f64 = 5e-3;

/// A row of a table of check values.
pub struct Row {
    cells: BTreeMap<String, String>,
}

/// The text of a file in `vectors/`.
pub fn text(file: &str) -> String {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("vectors").join(file);
    std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// The rows of a file in `vectors/`.
pub fn rows(file: &str) -> Vec<Row> {
    csv::Reader::from_reader(text(file).as_bytes())
        .deserialize()
        .map(|row| Row { cells: row.unwrap_or_else(|error| panic!("{file}: {error}")) })
        .collect()
}

impl Row {
    /// The row's name.
    pub fn id(&self) -> &str {
        self.text("case_id")
    }

    /// A cell's text.
    pub fn text(&self, column: &str) -> &str {
        self.cells.get(column).unwrap_or_else(|| panic!("there is no column {column}"))
    }

    /// A cell's number; none where the cell is empty.
    pub fn maybe(&self, column: &str) -> Option<f64> {
        let text = self.text(column);
        let number = || text.parse().unwrap_or_else(|_| panic!("{}: {column} is {text}", self.id()));
        (!text.is_empty()).then(number)
    }

    /// A cell's number.
    pub fn number(&self, column: &str) -> f64 {
        self.maybe(column).unwrap_or_else(|| panic!("{}: {column} is empty", self.id()))
    }

    /// What was found for this row, which must be something.
    pub fn known<T>(&self, found: Option<T>) -> T {
        found.unwrap_or_else(|| panic!("{}: no answer", self.id()))
    }

    /// The numbers in a cell's words, in their order: `two-point: 46 mm2/s at 40 C` gives 46 and 40.
    pub fn numbers_in(&self, column: &str) -> Vec<f64> {
        self.text(column).split([' ', '=', '(', ')', ';', ',']).filter_map(|word| word.parse().ok()).collect()
    }

    /// What was found, against a column of this row, with the row's own tolerance.
    pub fn compare(&self, column: &str, found: f64, digits: i32) -> Compared {
        self.compare_with(column, self.number(column), found, digits)
    }

    /// What was found, against a value, with the row's own tolerance.
    pub fn compare_with(&self, quantity: &str, expected: f64, found: f64, digits: i32) -> Compared {
        Compared {
            case: self.id().to_owned(),
            group: self.text("group").to_owned(),
            quantity: quantity.to_owned(),
            expected,
            found,
            tolerance: self.maybe("tolerance_rel").unwrap_or(DEFAULT_TOLERANCE),
            digits,
            source: self.text("source").to_owned(),
        }
    }
}

/// A value found and the check value.
#[derive(Debug, Clone)]
pub struct Compared {
    /// The row's name.
    pub case: String,
    /// The row's group.
    pub group: String,
    /// What is compared.
    pub quantity: String,
    /// The check value.
    pub expected: f64,
    /// What was found.
    pub found: f64,
    /// By how much it may differ, relative.
    pub tolerance: f64,
    /// Significant digits to which the check value was written.
    pub digits: i32,
    /// Where the check value is from.
    pub source: String,
}

impl Compared {
    /// Deviation relative to the check value; the plain deviation where that is nought.
    pub fn deviation(&self) -> f64 {
        let apart = (self.found - self.expected).abs();
        if self.expected == 0.0 { apart } else { apart / self.expected.abs() }
    }

    /// Whether it is within the tolerance and the rounding of the check value's last digit.
    pub fn agrees(&self) -> bool {
        let rounding = match self.expected.abs() {
            0.0 => 0.5 * 10_f64.powi(-self.digits),
            size => 0.5 * 10_f64.powf(size.log10().floor() + 1.0) * 10_f64.powi(-self.digits) / size,
        };
        self.deviation() <= self.tolerance + rounding
    }
}

/// The worst relative deviation of each group.
pub fn worst_by_group(compared: &[Compared]) -> BTreeMap<String, f64> {
    let mut worst = BTreeMap::new();
    for one in compared {
        let so_far: &mut f64 = worst.entry(one.group.clone()).or_default();
        *so_far = so_far.max(one.deviation());
    }
    worst
}

/// Fails unless every comparison agrees and every row of the file was compared.
#[track_caller]
pub fn assert_all_agree(file: &str, compared: &[Compared]) {
    for row in rows(file) {
        assert!(compared.iter().any(|one| one.case == row.id()), "{file}: {} was not compared", row.id());
    }
    let wrong: Vec<String> = compared
        .iter()
        .filter(|one| !one.agrees())
        .map(|one| {
            let Compared { case, quantity, found, expected, tolerance, .. } = one;
            format!("{case}, {quantity}: {found} and not {expected} to {tolerance:e} ({:e})", one.deviation())
        })
        .collect();
    assert!(wrong.is_empty(), "{file}:\n{}", wrong.join("\n"));
}

#[cfg(test)]
mod tests {
    use super::*;

    fn compared(expected: f64, found: f64) -> Compared {
        let (case, group, quantity) = ("A-1".to_owned(), "group".to_owned(), "value".to_owned());
        Compared { case, group, quantity, expected, found, tolerance: 1e-9, digits: 8, source: String::new() }
    }

    #[test]
    fn a_value_off_by_more_than_the_last_digits_rounding_does_not_agree() {
        assert!(compared(9.2103555, 9.210_355_543).agrees());
        assert!(!compared(9.2103555, 9.210_355_57).agrees());
        assert!(!compared(0.0, 1e-7).agrees());
        assert!(!compared(9.2103555, f64::NAN).agrees());
    }

    #[test]
    #[should_panic(expected = "VEL-03 was not compared")]
    fn a_row_left_out_is_noticed() {
        let first: Vec<Compared> =
            rows("flow_cases.csv").iter().take(1).map(|row| row.compare("bore_mm", 4.8, 8)).collect();
        assert_all_agree("flow_cases.csv", &first);
    }
}
