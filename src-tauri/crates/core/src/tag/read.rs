//! A tag's text read back, and every doubt about it named.

use super::name::{COVERS, DUTIES, GENDERS, LINES, unescape, value_of};
use super::sum::sum;
use super::write::{HOSE_SIDE, MACHINE_SIDE, write_as};
use super::{CodeError, GRAMMAR, Proof, TagCode, TagContent};
use crate::spec::{Adapter, Between, EndSpec, Gender, HoseRef, Role, Side, Spec};
use std::str::FromStr;
use thiserror::Error;

/// Why a text is no tag that can be relied on. Lines are counted from 1.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum TagError {
    /// Something else altogether.
    #[error("this is no hose tag: its first line is not HOSE TAG, a version and a code")]
    NotATag,
    /// Written by another version of the grammar.
    #[error(
        "line 1: the tag is written by version {found} of the tags' grammar and this program reads versions 1 to {GRAMMAR}: read it with a program that knows version {found}"
    )]
    Version {
        /// The version that stands there.
        found: u32,
    },
    /// The code in the first line does not check.
    #[error("line 1: {0}")]
    Code(#[from] CodeError),
    /// A line that is not as the grammar has it.
    #[error("line {line}, \"{text}\": {right} should stand there")]
    Line {
        /// Which line.
        line: usize,
        /// What stands there.
        text: String,
        /// What should.
        right: String,
    },
    /// The text stops before its checksum.
    #[error(
        "the text ends after line {line} without its last line, SUM and seven characters: part of it is missing"
    )]
    CutShort {
        /// The last line that is there.
        line: usize,
    },
    /// Every line can be read, but they are not those that were written.
    #[error(
        "line {line}: the checksum is {found} and the lines above it make {right}: something in them was changed"
    )]
    Sum {
        /// The line of the checksum.
        line: usize,
        /// What stands there.
        found: String,
        /// What the lines make.
        right: String,
    },
}

/// Reads a tag's text by the grammar of this [module](super). Line ends of any kind and space
/// around the whole are forgiven, nothing else.
///
/// # Errors
/// Names the first line that is broken, or the checksum's when all lines read but were altered.
pub fn read(text: &str) -> Result<TagContent, TagError> {
    let lines = lines(text);
    let (first, rest) = lines.split_first().ok_or(TagError::NotATag)?;
    let (version, code) = match head(first) {
        // Every version ends in the checksum of what stands above it: a text it does not fit was altered, whatever
        // version it claims.
        Err(TagError::Version { found }) => {
            checksum(&lines)?;
            return Err(TagError::Version { found });
        }
        other => other?,
    };
    let mut tag = TagContent {
        code,
        spec: Spec::default(),
        pressure_bar: None,
        line: None,
        fluid: None,
        duties: Vec::new(),
        assembled: None,
        proof: Proof::NotProved,
        catalogue: String::new(),
        seal: None,
    };
    let (_, facts) = rest.split_last().ok_or(TagError::CutShort { line: 1 })?;
    for (at, line) in facts.iter().enumerate() {
        fact(&mut tag, line).map_err(|right| wrong(at + 2, line, right))?;
    }
    checksum(&lines)?;
    only_writing(version, &lines, &tag)?;
    Ok(tag)
}

/// Whether the last line is the checksum of those above it.
fn checksum(lines: &[&str]) -> Result<(), TagError> {
    let cut_short = TagError::CutShort { line: lines.len() };
    let Some((last, body)) = lines.split_last() else { return Err(cut_short) };
    let Some(found) = last.strip_prefix("SUM ") else { return Err(cut_short) };
    let right = sum(&body.join("\n"));
    match found == right {
        true => Ok(()),
        false => Err(TagError::Sum { line: lines.len(), found: found.to_owned(), right }),
    }
}

/// The code in the first line of what is a hose tag, whole, altered or of another version; none where it is no tag or
/// its code does not check.
pub fn code_of(text: &str) -> Option<TagCode> {
    let (_, code) = lines(text).first()?.strip_prefix("HOSE TAG ")?.split_once(' ')?;
    code.parse().ok()
}

/// The lines of a text without what copying adds to it.
pub(super) fn lines(text: &str) -> Vec<&str> {
    text.trim_matches(is_margin).lines().map(str::trim_end).collect()
}

/// Space that copying adds around a text.
fn is_margin(c: char) -> bool {
    c.is_whitespace() || c == '\u{feff}'
}

/// A fact has one writing: a text that this program would write otherwise was not made by the grammar.
fn only_writing(version: u32, lines: &[&str], tag: &TagContent) -> Result<(), TagError> {
    let written = write_as(version, tag);
    let mut right = written.lines();
    for (at, line) in lines.iter().enumerate() {
        let right = right.next().unwrap_or("nothing");
        if *line != right {
            return Err(wrong(at + 1, line, &format!("\"{right}\"")));
        }
    }
    Ok(())
}

fn wrong(line: usize, text: &str, right: &str) -> TagError {
    TagError::Line { line, text: text.to_owned(), right: right.to_owned() }
}

/// The version of the grammar and the tag's code.
fn head(line: &str) -> Result<(u32, TagCode), TagError> {
    let (version, code) =
        line.strip_prefix("HOSE TAG ").and_then(|rest| rest.split_once(' ')).ok_or(TagError::NotATag)?;
    let found = version.parse().map_err(|_| TagError::NotATag)?;
    if !(1..=GRAMMAR).contains(&found) {
        return Err(TagError::Version { found });
    }
    Ok((found, code.parse()?))
}

/// Takes one line into the tag; the error says what should stand there.
fn fact(tag: &mut TagContent, line: &str) -> Result<(), &'static str> {
    const NO_FACT: &str = "a fact such as LENGTH 1240 mm";
    match line {
        "NOT PROVED" => tag.proof = Proof::NotProved,
        "NOT PROVED: NO RIG" => tag.proof = Proof::NoRig,
        _ => {
            let (key, value) = line.split_once(' ').ok_or(NO_FACT)?;
            match key {
                "HOSE" => tag.spec.hose = Some(hose(value).ok_or("a hose such as HOSE EN 853 2SN DN16")?),
                "A" => tag.spec.ends.push(end(Role::A, value).ok_or(END)?),
                "B" => tag.spec.ends.push(end(Role::B, value).ok_or(END)?),
                "ADAPTER" => tag
                    .spec
                    .adapters
                    .push(adapter(value).ok_or("an adapter such as ADAPTER test point, rated 400 bar")?),
                "LENGTH" => {
                    tag.spec.overall_length_mm =
                        Some(number(value).ok_or("a length such as LENGTH 1240 mm")?);
                }
                "TURN" => tag.spec.turn_deg = Some(number(value).ok_or("a turn such as TURN 90 deg")?),
                "COVER" => {
                    tag.spec.cover = Some(value_of(&COVERS, value).ok_or("a cover such as COVER plain")?)
                }
                "MAX" => {
                    let exact = value.split_once(" (").map(|(exact, _)| exact);
                    tag.pressure_bar =
                        Some(exact.and_then(number).ok_or("a pressure such as MAX 276 bar (4000 psi)")?);
                }
                "LINE" => tag.line = Some(value_of(&LINES, value).ok_or("a line such as LINE pressure")?),
                "FLUID" => tag.fluid = Some(unescape(value).ok_or("a fluid such as FLUID HM")?),
                "DUTY" => {
                    let duties: Option<_> = value.split(' ').map(|duty| value_of(&DUTIES, duty)).collect();
                    tag.duties = duties.ok_or("duties such as DUTY non-conductive antistatic")?;
                }
                "MADE" => tag.assembled = Some(value.parse().map_err(|_| "a date such as MADE 2026-11")?),
                "PROVED" => {
                    let pressure_bar = number(value).ok_or("a proof such as PROVED 552 bar")?;
                    tag.proof = Proof::Proved { pressure_bar };
                }
                "CATALOGUE" => {
                    tag.catalogue = unescape(value).ok_or("a version such as CATALOGUE 5f0c1d2e")?
                }
                "SEAL" => {
                    tag.seal = Some(value.parse().map_err(|_| "a seal such as SEAL 7KQ4M 0123456789ABCDEF")?);
                }
                _ => return Err(NO_FACT),
            }
        }
    }
    Ok(())
}

const END: &str = "an end such as A JIC 37 flare -10, female, elbow90, drop 55 mm";

/// A quantity, whose own reading takes more than the grammar does: `only_writing` sees to the rest.
fn number<T: FromStr>(text: &str) -> Option<T> {
    text.parse().ok()
}

fn hose(text: &str) -> Option<HoseRef> {
    let mut parts = text.split(", ");
    let (name, dn) = parts.next()?.rsplit_once(" DN")?;
    let (standard, kind) = name.rsplit_once(' ')?;
    let mut hose = HoseRef::named(unescape(standard)?, unescape(kind)?, number(dn)?);
    for part in parts {
        if let Some(radius) = part.strip_prefix("bend ") {
            hose.min_bend_radius_mm = Some(number(radius)?);
        } else {
            hose.vacuum_kpa_abs = Some(number(part.strip_prefix("vacuum ")?.strip_suffix(" kPa")?)?);
        }
    }
    Some(hose)
}

fn end(role: Role, text: &str) -> Option<EndSpec> {
    let mut parts = text.split(", ");
    let (family, size) = parts.next()?.rsplit_once(' ')?;
    let mut end = EndSpec {
        role,
        family: unescape(family)?,
        size: unescape(size)?,
        gender: None,
        form: None,
        drop_mm: None,
        cutoff_mm: None,
        rating_bar: None,
    };
    for part in parts {
        if let Some(drop) = part.strip_prefix("drop ") {
            end.drop_mm = Some(number(drop)?);
        } else if let Some(cutoff) = part.strip_prefix("cut-off ") {
            end.cutoff_mm = Some(number(cutoff)?);
        } else if let Some(rating) = part.strip_prefix("rated ") {
            end.rating_bar = Some(number(rating)?);
        } else if let Some(gender) = value_of(&GENDERS, part) {
            end.gender = Some(gender);
        } else {
            end.form = Some(unescape(part)?);
        }
    }
    Some(end)
}

fn adapter(text: &str) -> Option<Adapter> {
    let mut parts = text.split(", ").peekable();
    let name = unescape(parts.next()?)?;
    let rating = parts.next_if(|part| part.starts_with("rated "));
    let rating_bar = rating.map(|rating| number(&rating["rated ".len()..]).ok_or(())).transpose().ok()?;
    let between = match parts.next() {
        None => None,
        Some(at) => Some(Between {
            role: match at {
                "at A" => Role::A,
                "at B" => Role::B,
                _ => return None,
            },
            hose_side: side(parts.next()?.strip_prefix(HOSE_SIDE)?, gender(&mut parts))?,
            machine_side: side(parts.next()?.strip_prefix(MACHINE_SIDE)?, gender(&mut parts))?,
        }),
    };
    parts.next().is_none().then_some(Adapter { name, rating_bar, between })
}

/// The next part, where it is the half of a connection.
fn gender<'a>(parts: &mut std::iter::Peekable<impl Iterator<Item = &'a str>>) -> Option<Gender> {
    let gender = parts.peek().and_then(|part| value_of(&GENDERS, part))?;
    parts.next();
    Some(gender)
}

fn side(text: &str, gender: Option<Gender>) -> Option<Side> {
    let (family, size) = text.rsplit_once(' ')?;
    Some(Side { family: unescape(family)?, size: unescape(size)?, gender })
}

#[cfg(test)]
mod tests {
    use super::super::{example, write};
    use super::*;

    /// The text with one line put otherwise and its checksum made to fit again.
    fn with_line(line: usize, text: &str) -> String {
        let written = write(&example::full());
        let mut lines: Vec<_> = written.lines().collect();
        lines.pop();
        lines[line - 1] = text;
        let body = lines.join("\n");
        format!("{body}\nSUM {}", sum(&body))
    }

    #[test]
    fn what_was_written_is_read() {
        let tag = example::full();
        let text = write(&tag);
        assert_eq!(read(&text), Ok(tag.clone()));
        assert_eq!(read(&format!("\u{feff}{}\r\n", text.replace('\n', "\r\n"))), Ok(tag), "as copied");
    }

    #[test]
    fn a_broken_line_is_named() {
        for (line, text, right) in [
            (2, "HOSE EN 853 2SN", "HOSE EN 853"),
            (2, "HOSE EN 853 2SN DN16, vacuum 20", "HOSE EN 853"),
            (3, "A JIC", "an end such as"),
            (3, "A JIC 37 flare -10, drop x mm", "an end such as"),
            (5, "ADAPTER test point, at C, hose side ORFS -10, machine side ORFS -10", "an adapter such as"),
            (5, "ADAPTER test point, at A, hose side ORFS -10", "an adapter such as"),
            (6, "LENGTH 12#0", "LENGTH 1240 mm"),
            (8, "COVER pink", "COVER plain"),
            (12, "DUTY non-conductive antistati", "DUTY"),
            (13, "MADE 2026-13", "MADE 2026-11"),
            (14, "PROV", "a fact"),
        ] {
            let error = read(&with_line(line, text)).unwrap_err();
            assert!(matches!(error, TagError::Line { line: at, .. } if at == line), "{text}: {error}");
            assert!(error.to_string().contains(right), "{text}: {error}");
        }
    }

    #[test]
    fn a_fact_has_one_writing() {
        for (line, text) in [
            (6, "LENGTH 1240.0 mm"),
            (6, "LENGTH 124 cm"),
            (2, "HOSE EN 853 2SN DN16, vacuum 20 kPa, bend 130 mm"),
            (9, "MAX 276 bar (4003 psi)"),
            (7, "LENGTH 1240 mm"),
            (3, "A JIC 37 flare -10, elbow90, female"),
            (5, "ADAPTER test point, rated 400.0 bar"),
        ] {
            let error = read(&with_line(line, text)).unwrap_err();
            assert!(matches!(error, TagError::Line { .. }), "{text}: {error}");
        }
    }

    #[test]
    fn another_version_says_so() {
        let code = example::full().code;
        for version in [0, 4] {
            let first = format!("HOSE TAG {version} {code}");
            assert_eq!(read(&with_line(1, &first)), Err(TagError::Version { found: version }));
            assert_eq!(code_of(&with_line(1, &first)), Some(code));
            // Another figure in the first line is no other version while the checksum is that of the old one.
            let altered = write(&example::full()).replacen("HOSE TAG 3", &format!("HOSE TAG {version}"), 1);
            assert!(matches!(read(&altered), Err(TagError::Sum { .. })), "{version}");
        }
    }

    #[test]
    fn what_is_no_tag_or_half_of_one_says_so() {
        assert_eq!(read(""), Err(TagError::NotATag));
        assert_eq!(read("https://example.org/"), Err(TagError::NotATag));
        assert!(matches!(read("HOSE TAG 1 7KQ4M"), Err(TagError::Code(_))));
        let text = write(&example::full());
        let half: String = text.lines().take(5).collect::<Vec<_>>().join("\n");
        assert_eq!(read(&half), Err(TagError::CutShort { line: 5 }));
        assert!(matches!(
            read(&text.replace("LENGTH 1240", "LENGTH 1250")),
            Err(TagError::Sum { line: 16, .. })
        ));
    }
}
