//! A fleet's key as a text, shown as a QR code by one device and read off it by another.
//!
//! ```text
//! HOSE FLEET 1 7KQ4M      version, mark of the fleet
//! NAME Northern vans
//! KEY ...                 the key, 52 characters
//! FROM ...                public key of the device that hands it on, 52 characters
//! SIGN ...                its signature (Ed25519) of all above, 103 characters
//! SUM 1JVF9CA             as on a tag
//! ```

use super::{DeviceKey, DevicePublic, FleetKey};
use crate::tag::{base32, escaped, sum, unescaped};
use thiserror::Error;

/// A fleet as it was handed on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct HandedOn {
    /// Its key.
    pub key: FleetKey,
    /// What its people call it.
    pub name: String,
    /// The device that handed it on.
    pub from: DevicePublic,
}

/// Why a text hands no fleet on. No message repeats the text: it may hold the key.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum FleetError {
    /// Something else.
    #[error(
        "this hands no fleet on: its first line is not HOSE FLEET, 1 and a mark; have the key shown on a device of the fleet and scan that"
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
}

/// The text that hands a fleet's key on. It holds the key.
pub fn hand_on(name: &str, key: &FleetKey, from: &DeviceKey) -> String {
    let head = format!(
        "HOSE FLEET 1 {}\nNAME {}\nKEY {}\nFROM {}",
        key.mark(),
        escaped(name),
        base32::write(&key.bytes()),
        from.public()
    );
    let body = format!("{head}\nSIGN {}", from.signature(&head));
    format!("{body}\nSUM {}", sum(&body))
}

/// Whether a text hands a fleet on, whole or broken: it may hold a key and is not to be shown.
pub fn is_one(text: &str) -> bool {
    text.trim_start_matches(|c: char| c.is_whitespace() || c == '\u{feff}').starts_with("HOSE FLEET")
}

/// So much of a text that was given as an error repeats of it: the beginning of its first line. A key may have been given
/// for something else.
pub(crate) fn repeated(text: &str) -> String {
    text.trim().lines().next().unwrap_or_default().chars().take(12).collect()
}

/// Reads such a text. Line ends of any kind and space around the whole are forgiven.
///
/// # Errors
/// Says what is wrong with it, never what stands in it.
pub fn read(text: &str) -> Result<HandedOn, FleetError> {
    let lines: Vec<&str> = text.trim().lines().map(str::trim_end).collect();
    let line = |at: usize, start: &str| {
        lines.get(at).and_then(|line| line.strip_prefix(start)).ok_or(FleetError::Line { line: at + 1 })
    };
    let mark = line(0, "HOSE FLEET 1 ").map_err(|_| FleetError::NotAFleet)?;
    let name = unescaped(line(1, "NAME ")?).ok_or(FleetError::Line { line: 2 })?;
    let key = base32::read(line(2, "KEY ")?).map(FleetKey::from_bytes).ok_or(FleetError::Line { line: 3 })?;
    let from = DevicePublic::read(line(3, "FROM ")?).ok_or(FleetError::Line { line: 4 })?;
    let signature = base32::read::<64>(line(4, "SIGN ")?).ok_or(FleetError::Line { line: 5 })?;
    let found = line(5, "SUM ")?;
    if lines.len() != 6 {
        return Err(FleetError::Line { line: 7 });
    }
    if found != sum(&lines[..5].join("\n")) {
        return Err(FleetError::Altered { what: "the checksum" });
    }
    if !from.signed(&lines[..4].join("\n"), &signature) {
        return Err(FleetError::Altered { what: "the signature" });
    }
    if mark != key.mark().to_string() {
        return Err(FleetError::Altered { what: "the mark" });
    }
    Ok(HandedOn { key, name, from })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_handed_on_is_read_and_nothing_that_was_changed() {
        let (key, device) = (FleetKey::from_bytes([7; 32]), DeviceKey::from_bytes([9; 32]));
        let text = hand_on("Vans, north", &key, &device);
        let read_back = HandedOn { key, name: "Vans, north".to_owned(), from: device.public() };
        assert_eq!(read(&text), Ok(read_back.clone()));
        assert_eq!(read(&format!("\n{}\r\n", text.replace('\n', "\r\n"))), Ok(read_back), "as copied");
        assert_eq!(read("HOSE TAG 2 7KQ4M-2XR9D-D"), Err(FleetError::NotAFleet));
        for at in 0..text.len() {
            let right = text.as_bytes()[at];
            let wrong = if right == b'7' { '8' } else { '7' };
            let mut changed = text.clone();
            changed.replace_range(at..=at, &wrong.to_string());
            let error = read(&changed).expect_err("one character was changed");
            assert!(!error.to_string().contains(&text.lines().nth(2).expect("a line")[4..20]), "{error}");
            // Cut anywhere, and with a checksum made to fit: the signature holds.
            assert!(read(&text[..at]).is_err(), "cut at {at}");
        }
        let forged = text.replacen("NAME Vans", "NAME Mine", 1);
        let body = forged.rsplit_once('\n').expect("lines").0;
        let forged = format!("{body}\nSUM {}", sum(body));
        assert_eq!(read(&forged), Err(FleetError::Altered { what: "the signature" }));
    }

    #[test]
    fn a_key_is_known_for_one_however_it_was_copied_and_no_error_repeats_it() {
        let text = hand_on("Vans", &FleetKey::from_bytes([7; 32]), &DeviceKey::from_bytes([9; 32]));
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
                    assert!(!error.contains(&key[..13]) && !error.contains(&key[20..30]), "{error}");
                }
            }
        }
    }
}
