//! What every code of a size has at the same places.

use rxing::qrcode::common::{Version, VersionRef};

/// The fixed parts of a code of one version.
pub(crate) struct Symbol {
    pub(crate) version: VersionRef,
    /// Modules of a side.
    pub(crate) side: usize,
    /// Row by row: -1 for a module that is always dark, 1 for one that is always light, 0 for the others.
    pub(crate) fixed: Vec<i8>,
    /// Row by row: whether a module carries no data.
    pub(crate) reserved: Vec<bool>,
}

impl Symbol {
    /// Of a version, 1 to 40.
    pub(crate) fn of(number: u32) -> Option<Self> {
        let version = Version::getVersionForNumber(number).ok()?;
        let side = version.getDimensionForVersion() as usize;
        let pattern = version.buildFunctionPattern().ok()?;
        let reserved =
            (0..side * side).map(|at| pattern.get((at % side) as u32, (at / side) as u32)).collect();
        let mut symbol = Self { version, side, fixed: vec![0; side * side], reserved };
        symbol.timing();
        symbol.corners();
        symbol.alignment();
        Some(symbol)
    }

    fn set(&mut self, column: usize, row: usize, dark: bool) {
        self.fixed[row * self.side + column] = if dark { -1 } else { 1 };
    }

    fn timing(&mut self) {
        for at in 8..self.side - 8 {
            self.set(at, 6, at % 2 == 0);
            self.set(6, at, at % 2 == 0);
        }
    }

    fn corners(&mut self) {
        let far = self.side - 7;
        for (left, top) in [(0, 0), (far, 0), (0, far)] {
            for row in top.saturating_sub(1)..(top + 8).min(self.side) {
                for column in left.saturating_sub(1)..(left + 8).min(self.side) {
                    let from = |at: usize, corner: usize| (at as i32 - corner as i32 - 3).abs();
                    let ring = from(column, left).max(from(row, top));
                    self.set(column, row, ring != 2 && ring != 4);
                }
            }
        }
    }

    fn alignment(&mut self) {
        let centres: Vec<usize> =
            self.version.getAlignmentPatternCenters().iter().map(|at| *at as usize).collect();
        let last = centres.last().copied().unwrap_or_default();
        for &x in &centres {
            for &y in &centres {
                if [(6, 6), (6, last), (last, 6)].contains(&(x, y)) {
                    continue;
                }
                for row in y - 2..=y + 2 {
                    for column in x - 2..=x + 2 {
                        self.set(column, row, x.abs_diff(column).max(y.abs_diff(row)) != 1);
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_fixed_parts_are_those_of_codes_by_another_maker() {
        for number in [1, 2, 5, 7, 12, 25, 40] {
            let level = qrcode::EcLevel::M;
            let code = qrcode::QrCode::with_version(b"1", qrcode::Version::Normal(number as i16), level);
            let colours = code.expect("a code").to_colors();
            let symbol = Symbol::of(number).expect("a version");
            assert_eq!(symbol.side * symbol.side, colours.len());
            for (at, fixed) in symbol.fixed.iter().enumerate().filter(|(_, fixed)| **fixed != 0) {
                assert_eq!(colours[at] == qrcode::Color::Dark, *fixed < 0, "module {at} of version {number}");
            }
        }
    }
}
