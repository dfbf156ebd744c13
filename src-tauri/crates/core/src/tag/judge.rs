//! What a tag that was read is worth: who made it, and how it stands beside the record.

use super::seal::is_made_by;
use super::{Assembled, GRAMMAR, Proof, TagCode, TagContent, TagError, code_of, is_sealed_by, read};
use crate::check::Verdict;
use crate::fleet::{FleetKey, FleetMark};
use crate::record::{self, PlaceId, TakenIn};
use crate::spec::Duty;
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
    /// The record of its making was struck out.
    pub undone: bool,
    /// Two records of its making contradict each other, and nobody has settled which one stands.
    pub contradicted: bool,
    /// It came off a machine and sits on none since.
    pub off: Option<Off>,
    /// Where it sits.
    pub sits: Option<PlaceId>,
    /// What it is; none while the record of its making has not arrived, and where that was struck out.
    pub made: Option<&'a record::Assembly>,
}

/// How a hose came off its machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Off {
    /// Nobody gave a cause of failure.
    Whole,
    /// It had failed.
    Failed,
}

/// Something to be said of a tag.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TagFindingCode {
    /// Its text is not as it was made.
    Altered,
    /// It was taken out of use.
    Withdrawn,
    /// The record of its making was struck out.
    Undone,
    /// The hose of that code failed its proof.
    FailedProof,
    /// The hose of that code failed on a machine and was taken off.
    FailedInUse,
    /// The records of its making contradict each other.
    Contradicted,
    /// A hose of that code sits at another place than this.
    FittedElsewhere,
    /// The own fleet made the hose of that code, and the tag has the seal of another.
    OtherSeal,
    /// The register knows the code with another spec.
    OtherSpec,
    /// It carries more by its tag than by the record.
    HigherPressure,
    /// It says proved, and the record does not, or not so high.
    OtherProof,
    /// It says something else than the record of pressure, fluid, duties, line or date.
    OtherFigures,
    /// The hose of that code was taken off a machine.
    TakenOff,
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
    /// Neither its tag nor the record says when it was assembled.
    AgeNotKnown,
    /// Where the hose of that code sits.
    Sits,
}

impl TagFindingCode {
    /// Every one.
    pub const ALL: [TagFindingCode; 21] = [
        TagFindingCode::Altered,
        TagFindingCode::Withdrawn,
        TagFindingCode::Undone,
        TagFindingCode::FailedProof,
        TagFindingCode::FailedInUse,
        TagFindingCode::Contradicted,
        TagFindingCode::FittedElsewhere,
        TagFindingCode::OtherSeal,
        TagFindingCode::OtherSpec,
        TagFindingCode::HigherPressure,
        TagFindingCode::OtherProof,
        TagFindingCode::OtherFigures,
        TagFindingCode::TakenOff,
        TagFindingCode::NotKnown,
        TagFindingCode::MergeFirst,
        TagFindingCode::SealMissing,
        TagFindingCode::ForeignFigures,
        TagFindingCode::Newer,
        TagFindingCode::NotProved,
        TagFindingCode::AgeNotKnown,
        TagFindingCode::Sits,
    ];

    /// How grave it is.
    pub const fn verdict(self) -> Verdict {
        match self {
            TagFindingCode::Altered
            | TagFindingCode::Withdrawn
            | TagFindingCode::Undone
            | TagFindingCode::FailedProof
            | TagFindingCode::FailedInUse
            | TagFindingCode::Contradicted
            | TagFindingCode::FittedElsewhere
            | TagFindingCode::OtherSeal
            | TagFindingCode::OtherSpec
            | TagFindingCode::HigherPressure => Verdict::Stop,
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
    found.extend(of_maker(tag.standing, known, fleet));
    match known {
        None if tag.standing == TagStanding::Own => found.push(TagFindingCode::MergeFirst),
        None => found.push(TagFindingCode::NotKnown),
        Some(known) => found.extend(beside_record(tag, known, here)),
    }
    let proved = match &tag.content {
        Some(content) => Some(matches!(content.proof, Proof::Proved { .. })),
        // A code says nothing; the record does.
        None => known.and_then(|known| known.made).and_then(|made| match made.proof {
            record::Proof::Proved { .. } => Some(true),
            record::Proof::NotProved { .. } => Some(false),
            record::Proof::Failed { .. } => None,
        }),
    };
    if proved == Some(false) {
        found.push(TagFindingCode::NotProved);
    }
    if is_of_no_age(tag, known.and_then(|known| known.made)) {
        found.push(TagFindingCode::AgeNotKnown);
    }
    found.sort_by_key(|code| (std::cmp::Reverse(code.verdict()), *code));
    found
}

/// Whether a hose is read, or on record, and neither says when it was assembled. A code of which nothing is known is said to
/// be not known, and of what was altered nothing counts.
fn is_of_no_age(tag: &TagRead, made: Option<&record::Assembly>) -> bool {
    let said = tag.content.as_ref().and_then(|content| content.assembled);
    let is_told = tag.content.is_some() || made.is_some();
    is_told && said.is_none() && made.is_none_or(|made| made.assembled.is_none())
}

/// What is to be said of who made it.
fn of_maker(standing: TagStanding, known: Option<&OnRecord<'_>>, fleet: bool) -> Option<TagFindingCode> {
    let made = known.and_then(|known| known.made);
    // Checked here, or taken in under the own seal: such a tag has the own fleet's seal or none.
    let ours = made.is_some_and(|made| match made.taken_in {
        Some(taken_in) => taken_in == TakenIn::Own,
        None => made.verdict.is_some(),
    });
    let unknown = made.is_some_and(|made| made.taken_in == Some(TakenIn::Unknown));
    match standing {
        TagStanding::Altered => Some(TagFindingCode::Altered),
        TagStanding::Newer => Some(TagFindingCode::Newer),
        TagStanding::Foreign | TagStanding::Partner if ours => Some(TagFindingCode::OtherSeal),
        TagStanding::Foreign => Some(TagFindingCode::ForeignFigures),
        TagStanding::Unsealed if known.is_none() || unknown => Some(TagFindingCode::ForeignFigures),
        TagStanding::Unsealed if fleet => Some(TagFindingCode::SealMissing),
        _ => None,
    }
}

/// How a tag stands beside the record of its code.
fn beside_record(tag: &TagRead, known: &OnRecord<'_>, here: Option<PlaceId>) -> Vec<TagFindingCode> {
    let mut found = Vec::new();
    let mut say = |is: bool, code| found.extend(is.then_some(code));
    say(known.withdrawn, TagFindingCode::Withdrawn);
    say(known.undone && !known.withdrawn, TagFindingCode::Undone);
    say(known.contradicted, TagFindingCode::Contradicted);
    say(known.off == Some(Off::Failed), TagFindingCode::FailedInUse);
    say(known.off == Some(Off::Whole), TagFindingCode::TakenOff);
    let failed = known.made.is_some_and(|made| matches!(made.proof, record::Proof::Failed { .. }));
    say(failed, TagFindingCode::FailedProof);
    match (known.sits, here) {
        (Some(sits), Some(here)) if sits != here => found.push(TagFindingCode::FittedElsewhere),
        (Some(_), None) => found.push(TagFindingCode::Sits),
        _ => {}
    }
    if let (Some(content), Some(made)) = (&tag.content, known.made) {
        found.extend(beside(content, made, tag.standing == TagStanding::Own));
    }
    found
}

/// What a tag says otherwise than the record of its hose. `sealed`: the own seal is true on it, so that what the record
/// leaves open is the fleet's own word.
pub fn beside(content: &TagContent, made: &record::Assembly, sealed: bool) -> Vec<TagFindingCode> {
    let mut found = Vec::new();
    // What nobody known vouched for was not taken over from the tag, and so differs from it.
    let unknown = made.taken_in == Some(TakenIn::Unknown);
    let same_spec = match unknown {
        true => content.spec.without_own_figures() == made.spec.without_own_figures(),
        false => content.spec == made.spec,
    };
    if !same_spec {
        found.push(TagFindingCode::OtherSpec);
    }
    if claims_more(content.proof, &made.proof) {
        found.push(TagFindingCode::OtherProof);
    }
    let higher = match (content.pressure_bar, made.pressure_bar) {
        (Some(said), Some(recorded)) => said.get() > recorded.get(),
        _ => false,
    };
    if higher && !unknown {
        found.push(TagFindingCode::HigherPressure);
    } else if other_figures(content, made, sealed) {
        found.push(TagFindingCode::OtherFigures);
    }
    found
}

/// Whether a tag says proved where the record does not, or at a higher pressure.
fn claims_more(said: Proof, recorded: &record::Proof) -> bool {
    match (said, recorded) {
        (Proof::Proved { pressure_bar }, record::Proof::Proved { pressure_bar: held, .. }) => {
            pressure_bar.get() > held.get()
        }
        (Proof::Proved { .. }, _) => true,
        _ => false,
    }
}

fn other_figures(content: &TagContent, made: &record::Assembly, sealed: bool) -> bool {
    let service = &made.service;
    let missing = |these: &[Duty], those: &[Duty]| these.iter().any(|duty| !those.contains(duty));
    other(content.pressure_bar.as_ref(), made.pressure_bar.as_ref(), sealed)
        || other(content.line.as_ref(), service.line.as_ref(), sealed)
        || other(content.fluid.as_ref(), service.fluid.as_ref(), sealed)
        || other(content.assembled.map(Assembled::first_day).as_ref(), made.assembled.as_ref(), sealed)
        || missing(&content.duties, &service.duties)
        || missing(&service.duties, &content.duties)
}

fn other<T: PartialEq>(said: Option<&T>, recorded: Option<&T>, sealed: bool) -> bool {
    said != recorded && !(sealed && recorded.is_none())
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
        let newer = plain.replace("HOSE TAG 3", "HOSE TAG 9");
        assert_eq!(
            standing(&newer),
            Some(TagStanding::Altered),
            "a figure in the first line makes no newer tag"
        );
        let body = newer.rsplit_once('\n').expect("lines").0;
        let newer = format!("{body}\nSUM {}", super::super::sum(body));
        assert_eq!(standing(&newer), Some(TagStanding::Newer));
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
