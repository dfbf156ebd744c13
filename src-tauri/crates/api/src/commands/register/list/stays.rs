//! Who sat at a place when: a place holds one hose at a time.

use super::names::Names;
use crate::ApiError;
use chrono::NaiveDate;
use hosewright_core::hose_list::{Column, Row};
use hosewright_core::record::PlaceId;
use hosewright_core::spec::Spec;
use hosewright_core::tag::TagCode;
use hosewright_store::Register;
use std::collections::HashMap;

/// The hoses that the register has: what they are, and where they sat.
#[derive(Default)]
pub(super) struct Held {
    specs: HashMap<TagCode, Option<Spec>>,
    stays: HashMap<PlaceId, Vec<hosewright_store::Stay>>,
    sits: HashMap<TagCode, hosewright_store::Stay>,
}

impl Held {
    /// All of them.
    pub(super) fn of(register: &Register) -> Result<Self, ApiError> {
        let mut held = Self::default();
        for (code, spec) in register.hose_specs()? {
            held.specs.insert(code, spec);
        }
        for stay in register.stays()? {
            if stay.off.is_none() {
                held.sits.insert(stay.code, stay.clone());
            }
            held.stays.entry(stay.at.place).or_default().push(stay);
        }
        Ok(held)
    }

    /// Whether the register has it.
    pub(super) fn has(&self, code: &TagCode) -> bool {
        self.specs.contains_key(code)
    }

    /// What it is, where that is on record.
    pub(super) fn spec(&self, code: &TagCode) -> Option<&Spec> {
        self.specs.get(code)?.as_ref()
    }

    /// Its stay that has not ended.
    pub(super) fn sits(&self, code: &TagCode) -> Option<&hosewright_store::Stay> {
        self.sits.get(code)
    }

    /// The stays at a place.
    pub(super) fn at(&self, place: PlaceId) -> &[hosewright_store::Stay] {
        self.stays.get(&place).map(Vec::as_slice).unwrap_or_default()
    }
}

/// How a row goes with what the register has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Taken {
    /// A hose that the register has not.
    New,
    /// The register has it and knows as much.
    Known,
    /// The register has it on, the list off.
    Off,
}

/// The days a hose sat at a place.
pub(super) struct Stay {
    /// The day it was fitted; none where only its coming off is recorded.
    from: Option<NaiveDate>,
    /// The day it came off; none while it sits there.
    until: Option<NaiveDate>,
    who: Who,
}

/// The hose of a stay.
#[derive(Clone, Copy)]
enum Who {
    /// One that the register has.
    Recorded(TagCode),
    /// One of this row of the list.
    Listed(usize),
}

impl Stay {
    /// The stay of a row.
    pub(super) fn of_list(row: &Row) -> Self {
        Self { from: Some(row.fitted), until: row.removed, who: Who::Listed(row.row) }
    }

    /// A stay that the register has.
    pub(super) fn of_register(stay: &hosewright_store::Stay) -> Self {
        Self { from: stay.on_date, until: stay.off_date, who: Who::Recorded(stay.code) }
    }

    /// The first day it is known to have sat there: one whose fitting is not recorded sat there the day before it came off.
    fn known_from(&self) -> NaiveDate {
        self.from.or_else(|| self.until?.pred_opt()).unwrap_or(NaiveDate::MIN)
    }

    /// Whether both sat there on some day, the day of the change not counted.
    fn overlaps(&self, other: &Self) -> bool {
        let begins_before_end = |a: &Self, b: &Self| b.until.is_none_or(|until| a.known_from() < until);
        let same_days = self.known_from() == other.known_from() && self.until == other.until;
        same_days || begins_before_end(self, other) && begins_before_end(other, self)
    }

    fn is_of(&self, code: TagCode) -> bool {
        matches!(self.who, Who::Recorded(recorded) if recorded == code)
    }

    fn days(&self) -> String {
        match (self.from, self.until) {
            (Some(from), Some(until)) => format!("from {from} to {until}"),
            (Some(from), None) => format!("since {from}"),
            (None, Some(until)) => format!("until {until}, since when is not known"),
            (None, None) => "since a day that is not known".to_owned(),
        }
    }
}

/// The stays at one place.
#[derive(Default)]
pub(super) struct Stays(Vec<Stay>);

impl Extend<Stay> for Stays {
    fn extend<I: IntoIterator<Item = Stay>>(&mut self, stays: I) {
        self.0.extend(stays);
    }
}

impl Stays {
    /// The hose of the register that was fitted here that day, unless a row of the list was it already.
    pub(super) fn fitted_on(&self, day: NaiveDate) -> Option<TagCode> {
        self.0.iter().filter(|stay| stay.from == Some(day)).find_map(|stay| match stay.who {
            Who::Recorded(code) => Some(code),
            Who::Listed(_) => None,
        })
    }

    /// Takes a row for that hose of the register, unless both say when it came off and say otherwise: then says what would
    /// be right. Where only the register knows that it came off, the row is merely older.
    pub(super) fn take_for(&mut self, code: TagCode, row: &Row, names: &Names) -> Result<Taken, String> {
        let recorded = |stay: &&mut Stay| stay.from == Some(row.fitted) && stay.is_of(code);
        let Some(stay) = self.0.iter_mut().find(recorded) else { return Ok(Taken::Known) };
        let taken = match (stay.until, row.removed) {
            (Some(until), Some(removed)) if until != removed => {
                return Err(format!(
                    "the register has this hose, {code}, at this place {}; the list has it off on {removed}: correct \
                     \"{}\", or the record",
                    stay.days(),
                    names.of_column(Column::Removed)
                ));
            }
            (None, Some(_)) => Taken::Off,
            _ => Taken::Known,
        };
        stay.until = stay.until.or(row.removed);
        stay.who = Who::Listed(row.row);
        Ok(taken)
    }

    /// Adds a stay, unless another hose sat there at the time: then says which, and what would be right.
    pub(super) fn add(&mut self, stay: Stay, names: &Names) -> Result<(), String> {
        if let Some(other) = self.0.iter().find(|other| other.overlaps(&stay)) {
            let days = other.days();
            let [code_column, fitted, removed] =
                [Column::Code, Column::Fitted, Column::Removed].map(|column| names.of_column(column));
            return Err(match other.who {
                Who::Recorded(code) => format!(
                    "the register has hose {code} at this place {days}; if it is the same hose, write that code in \
                     \"{code_column}\", else correct \"{fitted}\" and \"{removed}\""
                ),
                Who::Listed(row) => {
                    format!(
                        "the hose of row {row} sits at this place {days}; correct \"{fitted}\" and \"{removed}\" of \
                         one of them"
                    )
                }
            });
        }
        self.0.push(stay);
        Ok(())
    }
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    fn listed(row: usize, from: &str, until: Option<&str>) -> Stay {
        Stay { from: Some(day(from)), until: until.map(day), who: Who::Listed(row) }
    }

    #[test]
    fn a_hose_whose_fitting_is_not_known_sat_there_until_it_came_off() {
        let code = TagCode::from_random([1; 7]);
        let names = Names(Column::ALL.iter().map(|column| column.name().to_owned()).collect());
        let recorded = || Stay { from: None, until: Some(day("2022-05-01")), who: Who::Recorded(code) };
        for (from, until, fits) in [
            ("2020-01-01", Some("2022-04-30"), true),
            ("2020-01-01", Some("2022-05-01"), false),
            ("2020-01-01", None, false),
            ("2022-05-01", None, true),
        ] {
            let mut stays = Stays::default();
            stays.extend([recorded()]);
            let added = stays.add(listed(2, from, until), &names);
            assert_eq!(added.is_ok(), fits, "{from} to {until:?}: {added:?}");
            if let Err(why) = added {
                assert!(why.contains("until 2022-05-01, since when is not known"), "{why}");
            }
        }
    }
}
