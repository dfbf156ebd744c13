//! Backups that are made by themselves beside the register, each proved by restoring it before it counts.
//!
//! They guard against a damaged file and a mistaken restore; not against a lost device, which needs a copy elsewhere.

use crate::Error;
use crate::backup::{beside, copy, put_in_place, remove, restore};
use crate::open::{Access, connect};
use chrono::{DateTime, Datelike, NaiveDateTime, TimeDelta, Utc};
use hosewright_core::record::DeviceId;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// How many are kept of each span, the newest of each: seven days, four weeks, three months that have any.
const DAYS: usize = 7;
const WEEKS: usize = 4;
const MONTHS: usize = 3;

/// A new one is due when the newest is as old as this.
const EVERY: TimeDelta = TimeDelta::days(1);

/// The newest says little when it is as old as this.
const LATE: TimeDelta = TimeDelta::days(3);

/// The name of a file is the time at which it was made, in UTC.
const NAME: &str = "%Y%m%dT%H%M%SZ.hosewright";

/// A backup that was made by itself and proved.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BackupKept {
    /// Its file's name in the folder of backups.
    pub name: String,
    /// When it was made, by the clock of its device.
    pub made: DateTime<Utc>,
    /// Its size in bytes.
    pub bytes: u64,
}

/// The folder of backups of the register at that path.
pub fn backups_of(register: &Path) -> PathBuf {
    beside(register, "backups")
}

/// The backups kept of the register at that path, the newest first. The register itself is not opened, so that they
/// are found when it can not be.
///
/// # Errors
/// The folder is there and can not be read.
pub fn backups(register: &Path) -> Result<Vec<BackupKept>, Error> {
    let folder = backups_of(register);
    let cannot = |source| Error::CannotOpen { path: folder.clone(), source };
    let files = match fs::read_dir(&folder) {
        Ok(files) => files,
        Err(missing) if missing.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(other) => return Err(cannot(other)),
    };
    let mut kept = Vec::new();
    for file in files {
        let file = file.map_err(cannot)?;
        let name = file.file_name().to_string_lossy().into_owned();
        if let Ok(made) = NaiveDateTime::parse_from_str(&name, NAME) {
            kept.push(BackupKept {
                name,
                made: made.and_utc(),
                bytes: file.metadata().map_err(cannot)?.len(),
            });
        }
    }
    kept.sort_by_key(|kept| std::cmp::Reverse(kept.made));
    Ok(kept)
}

/// Whether a new backup is due. One from the future says that the clock was set back: it proves nothing of today.
pub fn backup_due(kept: &[BackupKept], now: DateTime<Utc>) -> bool {
    kept.first().is_none_or(|newest| newest.made > now || now - newest.made >= EVERY)
}

/// Whether the newest backup is so old, or so far in the future, that something kept the next from being made.
pub fn backup_late(kept: &[BackupKept], now: DateTime<Utc>) -> bool {
    kept.first().is_some_and(|newest| (now - newest.made).abs() >= LATE)
}

/// Makes a backup of the register at that path while it stays in use, restores it under another name and verifies what
/// came out, and only then counts it and takes away those that are no longer kept. `scratch_device` is a new id for
/// the restored one, which is thrown away.
///
/// # Errors
/// The register can not be read; the copy does not verify, or there is no room for two of them. Older backups stay.
pub fn keep_backup(
    register: &Path,
    now: DateTime<Utc>,
    scratch_device: DeviceId,
) -> Result<BackupKept, Error> {
    let folder = backups_of(register);
    fs::create_dir_all(&folder).map_err(|source| Error::CannotOpen { path: folder.clone(), source })?;
    let name = now.format(NAME).to_string();
    let [part, tried] = ["backup.part", "tried.part"].map(|name| folder.join(name));
    remove(&tried);
    copy(&connect(register, Access::Read)?, &part)?;
    let proved = restore(&part, &tried, scratch_device).map(drop);
    remove(&tried);
    if let Err(error) = proved {
        remove(&part);
        return Err(match error {
            // The copy is the register's own: it is the register that is to be looked at.
            Error::BackupDamaged { .. } => Error::Damaged,
            other => other,
        });
    }
    let bytes = fs::metadata(&part).map_err(|source| Error::CannotOpen { path: part.clone(), source })?.len();
    put_in_place(&part, &folder.join(&name))?;
    let kept = backups(register)?;
    for old in no_longer_kept(&kept) {
        // One that can not be taken away takes room and does no harm.
        remove(&folder.join(&old.name));
    }
    Ok(BackupKept { name, made: now, bytes })
}

/// The day, week or month of a backup, by its year and number.
type SpanOf = fn(&BackupKept) -> (i32, u32);

/// Those that stand for no day, week or month that is kept. Counted from the newest and not from today: a clock that
/// was set back or forth takes none away.
fn no_longer_kept(newest_first: &[BackupKept]) -> Vec<&BackupKept> {
    let spans: [(usize, SpanOf); 3] = [
        (DAYS, |backup| (backup.made.year(), backup.made.ordinal())),
        (WEEKS, |backup| (backup.made.iso_week().year(), backup.made.iso_week().week())),
        (MONTHS, |backup| (backup.made.year(), backup.made.month())),
    ];
    let mut stays = BTreeSet::new();
    for (most, span) in spans {
        let mut seen = BTreeSet::new();
        let newest_of_each = newest_first.iter().filter(|backup| seen.insert(span(backup)));
        stays.extend(newest_of_each.take(most).map(|backup| &backup.name));
    }
    newest_first.iter().filter(|backup| !stays.contains(&backup.name)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::TimeZone;

    fn made_on(made: DateTime<Utc>) -> BackupKept {
        BackupKept { name: made.format(NAME).to_string(), made, bytes: 1 }
    }

    #[test]
    fn seven_days_four_weeks_and_three_months_stay_of_a_year_of_days() {
        let end = Utc.with_ymd_and_hms(2026, 11, 26, 6, 0, 0).unwrap();
        let mut kept: Vec<BackupKept> = Vec::new();
        for day in (0..365).rev() {
            kept.insert(0, made_on(end - TimeDelta::days(day)));
            let gone: Vec<String> = no_longer_kept(&kept).into_iter().map(|old| old.name.clone()).collect();
            kept.retain(|backup| !gone.contains(&backup.name));
        }
        let days: Vec<String> = kept.iter().map(|backup| backup.made.format("%m-%d").to_string()).collect();
        assert_eq!(
            days,
            [
                "11-26", "11-25", "11-24", "11-23", "11-22", "11-21", "11-20", "11-15", "11-08", "10-31",
                "09-30"
            ]
        );
    }

    #[test]
    fn a_clock_that_was_set_back_takes_none_away_and_makes_one_due() {
        let now = Utc.with_ymd_and_hms(2026, 11, 26, 6, 0, 0).unwrap();
        let future = [made_on(now + TimeDelta::days(400)), made_on(now - TimeDelta::days(3))];
        assert!(backup_due(&future, now));
        assert_eq!(no_longer_kept(&future), Vec::<&BackupKept>::new());
    }

    #[test]
    fn one_is_due_when_there_is_none_or_the_newest_is_a_day_old() {
        let now = Utc.with_ymd_and_hms(2026, 11, 26, 6, 0, 0).unwrap();
        for (age, due, late) in [
            (None, true, false),
            (Some(0), false, false),
            (Some(23), false, false),
            (Some(24), true, false),
            (Some(72), true, true),
            (Some(-72), true, true),
        ] {
            let kept: Vec<_> = age.map(|hours| made_on(now - TimeDelta::hours(hours))).into_iter().collect();
            assert_eq!((backup_due(&kept, now), backup_late(&kept, now)), (due, late), "{age:?} hours");
        }
    }
}
