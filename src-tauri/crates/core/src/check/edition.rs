//! Which edition of its mark an original was of: the pressure printed on it and its date tell. Where neither does, the
//! higher pressure counts.

use super::subject::{Subject, hose_name};
use super::{Evidence, Finding, Verdict, cases};
use crate::catalogue::{Catalogue, Edition, HoseRow, Provenance};
use crate::print::is_one_pressure;
use crate::quantity::Bar;

/// What an original of a mark with two pressures may carry.
struct Edited<'a> {
    edition: &'a Edition,
    older: Bar,
    newer: Bar,
    /// Whether it was of the newer edition; none while nothing tells.
    is_newer: Option<bool>,
}

impl<'a> Edited<'a> {
    fn of(catalogue: &'a Catalogue, row: &HoseRow, found: Option<&Evidence>) -> Option<Self> {
        let (edition, newer) = catalogue.newer_edition(row)?;
        let (older, newer) = (row.max_working_pressure_bar?, newer.max_working_pressure_bar?);
        let is_printed =
            |bar: Bar| found?.printed_pressure_bar.map(|printed| is_one_pressure(printed.get(), bar.get()));
        let by_print = match (is_printed(older), is_printed(newer)) {
            (_, Some(true)) => Some(true),
            (Some(true), _) => Some(false),
            _ => None,
        };
        let by_year = || Some(found?.printed_year? >= edition.from_year?);
        Some(Self { edition, older, newer, is_newer: by_print.or_else(by_year) })
    }

    fn asks(&self) -> Bar {
        match self.is_newer {
            Some(false) => self.older,
            Some(true) | None => self.newer,
        }
    }

    fn finding(&self, row: &HoseRow) -> Finding {
        let (verdict, case) = match self.is_newer {
            Some(true) => (Verdict::Pass, cases::ORIGINAL_EDITION_NEWER),
            Some(false) => (Verdict::Pass, cases::ORIGINAL_EDITION_OLDER),
            None => (Verdict::Caution, cases::ORIGINAL_EDITION_OPEN),
        };
        let year = self.edition.from_year.map_or_else(|| "unknown".to_owned(), |year| year.to_string());
        Finding::new("original", verdict, case)
            .measured(self.older.get(), self.newer.get(), Bar::UNIT)
            .about("rival", hose_name(row))
            .about("year", year)
            .from(&self.edition.provenance)
    }
}

/// What an original may have carried, and where that is from.
pub(super) fn rated(subject: &Subject<'_>, row: &HoseRow) -> (Option<Bar>, Provenance) {
    match Edited::of(subject.catalogue, row, subject.found()) {
        Some(edited) => (Some(edited.asks()), edited.edition.provenance.clone()),
        None => (row.max_working_pressure_bar, row.pressure_provenance()),
    }
}

/// Of each plausible original whose mark has two pressures: which of them it carried, or that nothing tells.
pub(super) fn findings(subject: &Subject<'_>) -> Vec<Finding> {
    let rows = subject.rivals.rows.iter();
    rows.filter_map(|row| Some(Edited::of(subject.catalogue, row, subject.found())?.finding(row))).collect()
}
