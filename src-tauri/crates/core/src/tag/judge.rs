//! What a tag that was read is worth: who made it, and how it stands beside the record.

use super::seal::is_made_by;
use super::{Assembled, GRAMMAR, Proof, TagCode, TagContent, TagError, code_of, is_sealed_by, read};
use crate::check::Verdict;
use crate::fleet::{FleetKey, FleetMark};
use crate::record::{self, PlaceId};
use crate::spec::Spec;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Who made a tag, as far as its text tells.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TagStanding {
    /// This device's own fleet: its seal is true.
    Own,
    /// A fleet whose key this device has joined as a partner's: its seal is true.
    Partner,
    /// A fleet that this device does not know: its seal can not be tried.
    Foreign,
    /// It has no seal: made by no fleet, or before there was one.
    Unsealed,
    /// Its code and nothing else: it says nothing of who made it.
    CodeAlone,
    /// It is a tag, but not as it was made: seal, checksum or a line does not fit.
    Altered,
    /// It was written by a newer program.
    Newer,
}

/// A tag as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct TagRead {
    /// Who made it.
    pub standing: TagStanding,
    /// The fleet whose seal it claims, where it has one.
    pub fleet: Option<FleetMark>,
    /// Its code, where that could be read.
    pub code: Option<TagCode>,
    /// What it says; none of a code alone, and of nothing that was altered.
    pub content: Option<TagContent>,
    /// What is wrong with it.
    pub problem: Option<TagError>,
}

/// What a text is, given the keys of this device's own fleet and of its partners; none where it is no tag.
pub fn open(text: &str, own: Option<&FleetKey>, partners: &[&FleetKey]) -> Option<TagRead> {
    let nothing = TagRead {
        standing: TagStanding::Altered,
        fleet: None,
        code: code_of(text),
        content: None,
        problem: None,
    };
    let content = match read(text) {
        Ok(content) => content,
        Err(TagError::NotATag) => {
            let code = text.trim().parse().ok()?;
            return Some(TagRead { standing: TagStanding::CodeAlone, code: Some(code), ..nothing });
        }
        Err(problem) => {
            let newer = matches!(problem, TagError::Version { found } if found > GRAMMAR);
            let standing = if newer { TagStanding::Newer } else { TagStanding::Altered };
            return Some(TagRead { standing, problem: Some(problem), ..nothing });
        }
    };
    let code = Some(content.code);
    let Some(seal) = content.seal else {
        return Some(TagRead { standing: TagStanding::Unsealed, code, content: Some(content), ..nothing });
    };
    let fleet = Some(seal.fleet());
    let sealed = |key: &FleetKey| is_sealed_by(text, key);
    let standing = if own.is_some_and(sealed) {
        TagStanding::Own
    } else if partners.iter().any(|key| sealed(key)) {
        TagStanding::Partner
    } else if own
        .into_iter()
        .chain(partners.iter().copied())
        .any(|key| key.mark() == seal.fleet() || is_made_by(text, key))
    {
        // It claims a seal that can be tried and is none of that fleet's; or the mark before a true one was altered.
        return Some(TagRead { fleet, code, ..nothing });
    } else {
        TagStanding::Foreign
    };
    Some(TagRead { standing, fleet, code, content: Some(content), problem: None })
}

/// What the register has of the hose of a code.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct OnRecord<'a> {
    /// Its tag was taken out of use.
    pub withdrawn: bool,
    /// Where it sits.
    pub sits: Option<PlaceId>,
    /// What it is; none while the record of its making has not arrived.
    pub spec: Option<&'a Spec>,
    /// Whether it was proved.
    pub proof: Option<&'a record::Proof>,
}

/// Something to be said of a tag.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TagFindingCode {
    /// Its text is not as it was made.
    Altered,
    /// It was taken out of use.
    Withdrawn,
    /// The hose of that code failed its proof.
    FailedProof,
    /// A hose of that code sits at another place than this.
    FittedElsewhere,
    /// The register knows the code with another spec.
    OtherSpec,
    /// It says proved, and the record does not.
    OtherProof,
    /// This register has nothing of that code.
    NotKnown,
    /// It is of the own fleet, and this register has nothing of it: another device has.
    MergeFirst,
    /// The fleet seals its tags, and this one of a hose on record has no seal.
    SealMissing,
    /// Its figures are the word of someone this device does not know.
    ForeignFigures,
    /// It was written by a newer program.
    Newer,
    /// The hose was not proved.
    NotProved,
    /// Where the hose of that code sits.
    Sits,
}

impl TagFindingCode {
    /// Every one.
    pub const ALL: [TagFindingCode; 13] = [
        TagFindingCode::Altered,
        TagFindingCode::Withdrawn,
        TagFindingCode::FailedProof,
        TagFindingCode::FittedElsewhere,
        TagFindingCode::OtherSpec,
        TagFindingCode::OtherProof,
        TagFindingCode::NotKnown,
        TagFindingCode::MergeFirst,
        TagFindingCode::SealMissing,
        TagFindingCode::ForeignFigures,
        TagFindingCode::Newer,
        TagFindingCode::NotProved,
        TagFindingCode::Sits,
    ];

    /// How grave it is.
    pub const fn verdict(self) -> Verdict {
        match self {
            TagFindingCode::Altered
            | TagFindingCode::Withdrawn
            | TagFindingCode::FailedProof
            | TagFindingCode::FittedElsewhere
            | TagFindingCode::OtherSpec => Verdict::Stop,
            TagFindingCode::Sits => Verdict::Pass,
            _ => Verdict::Caution,
        }
    }
}

/// What is to be said of a tag, gravest first. `here` is the place at which the person stands; `fleet`, whether this
/// device has one of its own.
pub fn findings(
    tag: &TagRead,
    known: Option<&OnRecord<'_>>,
    here: Option<PlaceId>,
    fleet: bool,
) -> Vec<TagFindingCode> {
    let mut found = Vec::new();
    match tag.standing {
        TagStanding::Altered => found.push(TagFindingCode::Altered),
        TagStanding::Newer => found.push(TagFindingCode::Newer),
        TagStanding::Foreign | TagStanding::Unsealed if known.is_none() => {
            found.push(TagFindingCode::ForeignFigures);
        }
        TagStanding::Unsealed if fleet => found.push(TagFindingCode::SealMissing),
        _ => {}
    }
    match known {
        None if tag.standing == TagStanding::Own => found.push(TagFindingCode::MergeFirst),
        None => found.push(TagFindingCode::NotKnown),
        Some(known) => found.extend(beside_record(tag, known, here)),
    }
    let proved = tag.content.as_ref().map(|content| matches!(content.proof, Proof::Proved { .. }));
    if proved == Some(false) {
        found.push(TagFindingCode::NotProved);
    }
    found.sort_by_key(|code| (std::cmp::Reverse(code.verdict()), *code));
    found
}

/// How a tag stands beside the record of its code.
fn beside_record(tag: &TagRead, known: &OnRecord<'_>, here: Option<PlaceId>) -> Vec<TagFindingCode> {
    let mut found = Vec::new();
    if known.withdrawn {
        found.push(TagFindingCode::Withdrawn);
    }
    if matches!(known.proof, Some(record::Proof::Failed { .. })) {
        found.push(TagFindingCode::FailedProof);
    }
    match (known.sits, here) {
        (Some(sits), Some(here)) if sits != here => found.push(TagFindingCode::FittedElsewhere),
        (Some(_), None) => found.push(TagFindingCode::Sits),
        _ => {}
    }
    if let Some(content) = &tag.content {
        if known.spec.is_some_and(|spec| *spec != content.spec) {
            found.push(TagFindingCode::OtherSpec);
        }
        let proved = matches!(content.proof, Proof::Proved { .. });
        if proved && known.proof.is_some_and(|proof| !matches!(proof, record::Proof::Proved { .. })) {
            found.push(TagFindingCode::OtherProof);
        }
    }
    found
}

/// What the record says of a hose's proof, as a tag has it; none of one that failed, which gets no tag.
pub fn proof_of(recorded: &record::Proof) -> Option<Proof> {
    match recorded {
        record::Proof::Proved { pressure_bar, .. } => Some(Proof::Proved { pressure_bar: *pressure_bar }),
        record::Proof::NotProved { why: record::NotProved::NoRig } => Some(Proof::NoRig),
        record::Proof::NotProved { .. } => Some(Proof::NotProved),
        record::Proof::Failed { .. } => None,
    }
}

/// The tag of a hose on record, from the record alone; none of one that failed its proof.
pub fn of_record(made: &record::Assembly) -> Option<TagContent> {
    Some(TagContent {
        code: made.code,
        spec: made.spec.clone(),
        pressure_bar: made.pressure_bar,
        line: made.service.line,
        fluid: made.service.fluid.clone(),
        duties: made.service.duties.clone(),
        assembled: made.assembled.and_then(Assembled::on),
        proof: proof_of(&made.proof)?,
        catalogue: made.catalogue.clone(),
        seal: None,
    })
}

#[cfg(test)]
mod tests {
    use super::super::{example, seal, write};
    use super::*;

    fn key(byte: u8) -> FleetKey {
        FleetKey::from_bytes([byte; 32])
    }

    fn sealed(by: u8) -> String {
        let mut tag = example::full();
        seal(&mut tag, &key(by));
        write(&tag)
    }

    #[test]
    fn each_makers_tag_stands_for_itself() {
        let (own, partner) = (key(1), key(2));
        let standing = |text: &str| open(text, Some(&own), &[&partner]).map(|tag| tag.standing);
        let plain = write(&example::full());
        assert_eq!(standing(&sealed(1)), Some(TagStanding::Own));
        assert_eq!(standing(&sealed(2)), Some(TagStanding::Partner));
        assert_eq!(standing(&sealed(3)), Some(TagStanding::Foreign));
        assert_eq!(standing(&plain), Some(TagStanding::Unsealed));
        assert_eq!(standing("7kq4m 2xr9d d"), Some(TagStanding::CodeAlone));
        assert_eq!(standing(&plain.replace("LENGTH 1240", "LENGTH 1250")), Some(TagStanding::Altered));
        assert_eq!(standing(&plain.replace("HOSE TAG 3", "HOSE TAG 9")), Some(TagStanding::Newer));
        assert_eq!(standing("https://example.org/"), None);
        assert_eq!(open(&sealed(1), None, &[]).map(|tag| tag.standing), Some(TagStanding::Foreign));
    }

    /// Whoever alters a tag can make its checksum fit again, but not its seal; what was altered says nothing more.
    #[test]
    fn a_sealed_tag_altered_anywhere_is_seen_though_its_checksum_was_made_to_fit() {
        let own = key(1);
        let text = sealed(1);
        let (above, _) = text.split_once("\nSEAL").expect("a seal");
        let mut tried = 0;
        for (right, wrong) in [
            ("276 bar (4000", "345 bar (5000"),
            ("1240 mm", "1340 mm"),
            ("2SN", "4SH"),
            ("PROVED 552", "PROVED 600"),
        ] {
            assert!(above.contains(right), "{right}");
            let altered = text.replacen(right, wrong, 1);
            let body = altered.rsplit_once('\n').expect("lines").0;
            let altered = format!("{body}\nSUM {}", super::super::sum(body));
            let read = open(&altered, Some(&own), &[]).expect("a tag");
            assert_eq!((read.standing, read.content), (TagStanding::Altered, None), "{wrong}");
            assert_eq!(read.code, Some(example::full().code));
            tried += 1;
        }
        assert_eq!(tried, 4);
    }

    #[test]
    fn every_finding_is_listed_once() {
        let mut all = TagFindingCode::ALL.to_vec();
        all.sort();
        all.dedup();
        assert_eq!(all.len(), TagFindingCode::ALL.len());
    }
}
