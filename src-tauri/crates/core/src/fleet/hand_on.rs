//! A fleet's key as a text, shown as a QR code by one device and read off it by another.
//!
//! ```text
//! HOSE FLEET 3 7KQ4M         version, mark of the fleet
//! NAME Northern vans
//! KEY ...                    the key, 52 characters
//! FOUNDER ...                public key of the device that founded the fleet, whom its members believe first
//! FROM ...                   public key of the device that hands it on, 52 characters
//! SHOWN 2026-11-26T20:12Z    when, by the clock of that device
//! SIGN ...                   its signature (Ed25519) of all above, 103 characters
//! SUM 1JVF9CA                as on a tag
//! ```
//!
//! A fleet that nobody has founded yet is handed on in version 2, which has no line `FOUNDER`.
//!
//! It is read for a day ([`LASTS`]): a picture of it that turns up later joins nobody. That shuts no door on whoever takes the
//! key out of the text by other means.

use super::{DeviceKey, DevicePublic, FleetKey};
use crate::tag::{base32, escaped, sum, unescaped};
use chrono::{DateTime, NaiveDateTime, TimeDelta, Utc};
use thiserror::Error;

/// How long a text is read after it was shown.
const LASTS: TimeDelta = TimeDelta::hours(24);

/// By how much the clocks of two devices may differ (common practice): a text shown so much later than now is read.
const CLOCKS: TimeDelta = TimeDelta::hours(1);

const SHOWN: &str = "%Y-%m-%dT%H:%MZ";

/// A fleet as it was handed on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HandedOn {
    /// Its key.
    pub key: FleetKey,
    /// What its people call it.
    pub name: String,
    /// The device that founded it; none of a fleet that is open.
    pub founder: Option<DevicePublic>,
    /// The device that handed it on.
    pub from: DevicePublic,
}

/// Why a text hands no fleet on. No message repeats the text: it may hold the key.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum FleetError {
    /// Something else.
    #[error(
        "this hands no fleet on: its first line is not HOSE FLEET, 2 or 3 and a mark; have the key shown on a device of the fleet and scan that"
    )]
    NotAFleet,
    /// A line is missing, out of place or broken.
    #[error("line {line} of the fleet's key is broken: scan it again, the whole of it")]
    Line {
        /// Which line.
        line: usize,
    },
    /// Checksum, signature or mark does not fit.
    #[error(
        "the fleet's key was changed on its way ({what} does not fit): have it shown anew and scan it again"
    )]
    Altered {
        /// What does not fit.
        what: &'static str,
    },
    /// It was shown too long ago.
    #[error(
        "the fleet's key was shown on {} and is read for a day: have it shown anew and scan it again",
        shown.format("%Y-%m-%d %H:%M UTC")
    )]
    Expired {
        /// When it was shown.
        shown: DateTime<Utc>,
    },
    /// It is yet to be shown, by the clock of the device that reads it.
    #[error(
        "the fleet's key was shown on {}, which by this device's clock is still to come: set the clocks of both devices right and have it shown anew",
        shown.format("%Y-%m-%d %H:%M UTC")
    )]
    Ahead {
        /// When it was shown, by the clock of the other device.
        shown: DateTime<Utc>,
    },
}

/// The text that hands a fleet's key on. It holds the key.
pub fn hand_on(
    name: &str,
    key: &FleetKey,
    founder: Option<&DevicePublic>,
    from: &DeviceKey,
    shown: DateTime<Utc>,
) -> String {
    let (version, founder) =
        founder.map_or(("2", String::new()), |founder| ("3", format!("\nFOUNDER {founder}")));
    let head = format!(
        "HOSE FLEET {version} {}\nNAME {}\nKEY {}{founder}\nFROM {}\nSHOWN {}",
        key.mark(),
        escaped(name),
        base32::write(&key.bytes()),
        from.public(),
        shown.format(SHOWN)
    );
    let body = format!("{head}\nSIGN {}", from.signature(&head));
    format!("{body}\nSUM {}", sum(&body))
}

/// Until when a text is read that is shown now.
pub fn until(shown: DateTime<Utc>) -> DateTime<Utc> {
    shown + LASTS
}

/// Whether a text hands a fleet on, whole or broken: it may hold a key and is not to be shown.
pub fn is_one(text: &str) -> bool {
    text.trim_start_matches(|c: char| c.is_whitespace() || c == '\u{feff}').starts_with("HOSE FLEET")
}

/// So much of a text that was given as an error repeats of it: the beginning of its first line. A key may have been given
/// for something else; of it no more shows than of a tag's code, which shows whole.
pub(crate) fn repeated(text: &str) -> String {
    text.trim().lines().next().unwrap_or_default().chars().take("7KQ4M-2XR9D-D".len()).collect()
}

/// Reads such a text. Line ends of any kind and space around the whole are forgiven. `now` is what the clock of the device
/// says that reads it.
///
/// # Errors
/// Says what is wrong with it, never what stands in it.
pub fn read(text: &str, now: DateTime<Utc>) -> Result<HandedOn, FleetError> {
    let lines: Vec<&str> = text.trim().lines().map(str::trim_end).collect();
    let line = |at: usize, start: &str| {
        lines.get(at).and_then(|line| line.strip_prefix(start)).ok_or(FleetError::Line { line: at + 1 })
    };
    let version = |start| line(0, start).map_err(|_| FleetError::NotAFleet);
    let (mark, founded) = match version("HOSE FLEET 3 ") {
        Ok(mark) => (mark, 1),
        Err(_) => (version("HOSE FLEET 2 ")?, 0),
    };
    let broken = |at: usize| FleetError::Line { line: at + 1 };
    let public = |at, start| DevicePublic::read(line(at, start)?).ok_or(broken(at));
    let name = unescaped(line(1, "NAME ")?).ok_or(broken(1))?;
    let key = base32::read(line(2, "KEY ")?).map(FleetKey::from_bytes).ok_or(broken(2))?;
    let founder = if founded == 1 { Some(public(3, "FOUNDER ")?) } else { None };
    let from = public(3 + founded, "FROM ")?;
    let shown = NaiveDateTime::parse_from_str(line(4 + founded, "SHOWN ")?, SHOWN)
        .map_err(|_| broken(4 + founded))?
        .and_utc();
    let signature = base32::read::<64>(line(5 + founded, "SIGN ")?).ok_or(broken(5 + founded))?;
    let found = line(6 + founded, "SUM ")?;
    if lines.len() != 7 + founded {
        return Err(broken(7 + founded));
    }
    if found != sum(&lines[..6 + founded].join("\n")) {
        return Err(FleetError::Altered { what: "the checksum" });
    }
    if !from.signed(&lines[..5 + founded].join("\n"), &signature) {
        return Err(FleetError::Altered { what: "the signature" });
    }
    if mark != key.mark().to_string() {
        return Err(FleetError::Altered { what: "the mark" });
    }
    let age = now - shown;
    if age > LASTS {
        return Err(FleetError::Expired { shown });
    }
    if age < -CLOCKS {
        return Err(FleetError::Ahead { shown });
    }
    Ok(HandedOn { key, name, founder, from })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn shown() -> DateTime<Utc> {
        DateTime::from_timestamp(1_795_723_920, 0).expect("a time")
    }

    #[test]
    fn what_was_handed_on_is_read_and_nothing_that_was_changed() {
        for founder in [None, Some(DeviceKey::from_bytes([8; 32]).public())] {
            comes_back_whole_or_not_at_all(founder);
        }
    }

    fn comes_back_whole_or_not_at_all(founder: Option<DevicePublic>) {
        let (key, device) = (FleetKey::from_bytes([7; 32]), DeviceKey::from_bytes([9; 32]));
        let text = hand_on("Vans, north", &key, founder.as_ref(), &device, shown());
        let read_back = HandedOn { key, name: "Vans, north".to_owned(), founder, from: device.public() };
        assert_eq!(read(&text, shown()), Ok(read_back.clone()));
        assert_eq!(
            read(&format!("\n{}\r\n", text.replace('\n', "\r\n")), shown()),
            Ok(read_back),
            "as copied"
        );
        assert_eq!(read("HOSE TAG 2 7KQ4M-2XR9D-D", shown()), Err(FleetError::NotAFleet));
        for at in 0..text.len() {
            let right = text.as_bytes()[at];
            let wrong = if right == b'7' { '8' } else { '7' };
            let mut changed = text.clone();
            changed.replace_range(at..=at, &wrong.to_string());
            let error = read(&changed, shown()).expect_err("one character was changed");
            assert!(!error.to_string().contains(&text.lines().nth(2).expect("a line")[4..20]), "{error}");
            // Cut anywhere, and with a checksum made to fit: the signature holds.
            assert!(read(&text[..at], shown()).is_err(), "cut at {at}");
        }
        let forged = text.replacen("NAME Vans", "NAME Mine", 1);
        let body = forged.rsplit_once('\n').expect("lines").0;
        let forged = format!("{body}\nSUM {}", sum(body));
        assert_eq!(read(&forged, shown()), Err(FleetError::Altered { what: "the signature" }));
    }

    #[test]
    fn it_is_read_for_a_day_by_the_clock_of_whoever_reads_it() {
        let text =
            hand_on("Vans", &FleetKey::from_bytes([7; 32]), None, &DeviceKey::from_bytes([9; 32]), shown());
        let after = |minutes| read(&text, shown() + TimeDelta::minutes(minutes)).map(|read| read.name);
        for minutes in [-60, 0, 5, 24 * 60] {
            assert_eq!(after(minutes), Ok("Vans".to_owned()), "{minutes} minutes after");
        }
        assert_eq!(after(24 * 60 + 1), Err(FleetError::Expired { shown: shown() }));
        assert_eq!(after(-61), Err(FleetError::Ahead { shown: shown() }));
        let newer = text.replacen("SHOWN 2026-11-26", "SHOWN 2026-11-27", 1);
        let body = newer.rsplit_once('\n').expect("lines").0;
        let newer = format!("{body}\nSUM {}", sum(body));
        let altered = Err(FleetError::Altered { what: "the signature" });
        assert_eq!(read(&newer, shown() + TimeDelta::hours(30)), altered, "its day is signed");
    }

    #[test]
    fn a_key_is_known_for_one_however_it_was_copied_and_no_error_repeats_it() {
        let text =
            hand_on("Vans", &FleetKey::from_bytes([7; 32]), None, &DeviceKey::from_bytes([9; 32]), shown());
        for copied in [text.clone(), format!("\u{feff}{text}"), format!("\r\n \u{feff}{text}\n")] {
            assert!(is_one(&copied));
            let key = text.lines().nth(2).expect("a line").strip_prefix("KEY ").expect("the key");
            for given in [copied.as_str(), key, &text[12..], &format!("{key} {key}")] {
                let errors = [
                    given.parse::<crate::tag::TagCode>().expect_err("no code").to_string(),
                    given.parse::<crate::fleet::FleetMark>().expect_err("no mark").to_string(),
                    given.parse::<crate::tag::TagSeal>().expect_err("no seal").to_string(),
                    given.parse::<crate::tag::Assembled>().expect_err("no date").to_string(),
                    given.parse::<crate::record::PlaceId>().expect_err("no id").to_string(),
                    given.parse::<crate::record::EventRef>().expect_err("no event").to_string(),
                ];
                for error in errors {
                    assert!(!error.contains(&key[..14]) && !error.contains(&key[20..30]), "{error}");
                }
            }
        }
    }
}
