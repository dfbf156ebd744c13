//! Who sat at a place when: a place holds one hose at a time.

use super::row::Row;
use chrono::NaiveDate;
use hosewright_core::tag::TagCode;

/// The days a hose sat at a place.
pub(super) struct Stay {
    from: NaiveDate,
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
        Self { from: row.fitted, until: row.removed, who: Who::Listed(row.row) }
    }

    /// A stay that the register has. None where it knows no day of it.
    pub(super) fn of_register(stay: &hosewright_store::Stay) -> Option<Self> {
        let from = stay.on_date.or(stay.off_date)?;
        let until = stay.off.and(stay.off_date);
        Some(Self { from, until, who: Who::Recorded(stay.code) })
    }

    /// Whether both sat there on some day, the day of the change not counted.
    fn overlaps(&self, other: &Self) -> bool {
        let begins_before_end = |a: &Self, b: &Self| b.until.is_none_or(|until| a.from < until);
        let same_days = self.from == other.from && self.until == other.until;
        same_days || begins_before_end(self, other) && begins_before_end(other, self)
    }

    fn days(&self) -> String {
        match self.until {
            Some(until) => format!("from {} to {until}", self.from),
            None => format!("since {}", self.from),
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
    /// Adds a stay, unless another hose sat there at the time: then says which, and what would be right.
    pub(super) fn add(&mut self, stay: Stay) -> Result<(), String> {
        if let Some(other) = self.0.iter().find(|other| other.overlaps(&stay)) {
            let days = other.days();
            return Err(match other.who {
                Who::Recorded(code) => format!(
                    "the register has hose {code} at this place {days}; if it is the same hose, write that code in \
                     the column code, else correct fitted and removed"
                ),
                Who::Listed(row) => {
                    format!(
                        "the hose of row {row} sits at this place {days}; correct fitted and removed of one of them"
                    )
                }
            });
        }
        self.0.push(stay);
        Ok(())
    }
}
