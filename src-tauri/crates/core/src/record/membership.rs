//! Who belongs to a fleet, and which events count: a pure function of the words of its planners.
//!
//! The founder's key, which a member got with the fleet's, is believed first. From there on a planner's word counts where
//! the planner signed it, at a number at which it was one, on a device that is not before it: planners stand in the order
//! in which those before them made them planners, the founder first. So two planners that withdraw each other are no riddle,
//! whatever their clocks say, and the answer depends on the words alone and not on the order in which they came.

use super::member::Word;
use super::{Body, DeviceId, Entry, EventRef, Hlc, MemberRole};
use crate::fleet::DevicePublic;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet, VecDeque};
use std::ops::RangeInclusive;
use ts_rs::TS;

/// The members of a fleet, as one device sees them. Without a founder everybody's events count.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Membership {
    founder: Option<DevicePublic>,
    /// The device that asks. What it writes while it waits counts on itself alone.
    here: Option<DeviceId>,
    members: BTreeMap<DeviceId, Member>,
}

/// What the planners said of a device.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Member {
    /// Its place among the planners, past and present; the founder has 0.
    pub rank: Option<u32>,
    /// Its admissions.
    pub admitted: Vec<Admission>,
    /// The last number that stays where it was withdrawn.
    pub withdrawn: Option<u64>,
    /// Its own words on others that count for nothing though it is a planner, by their numbers.
    pub refused: BTreeMap<u64, LeftOut>,
}

/// A word that admitted a device or gave it a role.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Admission {
    /// When it was said.
    pub time: Hlc,
    /// The event that says so; of the founder, the one that tells its key.
    pub by: EventRef,
    /// The key it was admitted with.
    pub public_key: DevicePublic,
    /// As what.
    pub role: MemberRole,
    /// It holds for what the device wrote after this number.
    pub after: u64,
}

/// Why an event does not count.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum LeftOut {
    /// Its device waits for a planner's nod.
    Waits,
    /// Its device has not the role for it.
    Role,
    /// Its device was withdrawn before.
    Withdrawn,
    /// A word on a device that its writer did not sign for that place.
    Forged,
    /// A word on a device that stands before its writer.
    Senior,
}

/// How a device stands in a fleet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[schemars(rename = "MemberStanding")]
#[ts(rename = "MemberStanding")]
pub enum Standing {
    /// The fleet has no founder that this register knows: every device counts.
    Open,
    /// It waits for a planner's nod.
    Waits,
    /// A reader.
    Reader,
    /// A technician.
    Technician,
    /// A planner.
    Planner,
    /// The fleet's founder, a planner whom no other withdraws.
    Founder,
    /// Withdrawn.
    Withdrawn,
}

impl Member {
    /// The device whose key it is that all believe first.
    fn founder(public_key: DevicePublic, told: &Entry) -> Self {
        let role = MemberRole::Planner;
        let admission = Admission { time: told.time, by: told.at, public_key, role, after: 0 };
        Self { admitted: vec![admission], ..Self::default() }
    }

    /// The word on it that holds for that number: the latest one.
    fn admission(&self, number: u64) -> Option<&Admission> {
        let said = self.admitted.iter().filter(|admission| admission.after < number);
        said.max_by_key(|admission| (admission.time, admission.by))
    }

    fn has_gone(&self, number: u64) -> bool {
        self.withdrawn.is_some_and(|after| number > after)
    }

    fn planner_at(&self, number: u64) -> Option<&Admission> {
        let planner = |said: &&Admission| said.role == MemberRole::Planner && !self.has_gone(number);
        self.admission(number).filter(planner)
    }

    /// Takes a word of a planner in.
    fn take(&mut self, word: &Word<'_>, time: Hlc, by: EventRef) {
        match word.admitted {
            Some((public_key, role)) => {
                let (public_key, after) = (*public_key, word.after);
                self.admitted.push(Admission { time, by, public_key, role, after });
            }
            None => self.withdrawn = Some(self.withdrawn.map_or(word.after, |lower| lower.min(word.after))),
        }
    }
}

impl Membership {
    /// Of a fleet with that founder, by what devices told of their keys and planners of devices, in any order. What strikes
    /// an entry out counts for nothing: a word is taken back by another.
    pub fn of(founder: DevicePublic, said: &[Entry]) -> Self {
        let mut told: Vec<&Entry> = said.iter().filter(|entry| tells(entry, &founder)).collect();
        told.sort_by_key(|entry| entry.at);
        let mut members = BTreeMap::new();
        for entry in told {
            members.entry(entry.at.device).or_insert_with(|| Member::founder(founder, entry));
        }
        let mut counted = Self { founder: Some(founder), here: None, members };
        counted.hear(&founder, said);
        counted
    }

    /// The same, as that device sees it.
    #[must_use]
    pub fn seen_from(self, here: DeviceId) -> Self {
        Self { here: Some(here), ..self }
    }

    /// Anew from what was worked out before.
    pub fn again(founder: DevicePublic, members: BTreeMap<DeviceId, Member>) -> Self {
        Self { founder: Some(founder), here: None, members }
    }

    /// Hears the planners, each after all that stand before it: then nothing can change about it any more.
    fn hear(&mut self, founder: &DevicePublic, said: &[Entry]) {
        let mut words: BTreeMap<DeviceId, Vec<(&Entry, Word<'_>)>> = BTreeMap::new();
        for entry in said {
            if let Some(word) = Word::of(&entry.body).filter(|word| word.founder == founder) {
                words.entry(entry.at.device).or_default().push((entry, word));
            }
        }
        words.values_mut().for_each(|words| words.sort_by_key(|(entry, _)| entry.at));
        let mut queue: VecDeque<DeviceId> = self.members.keys().copied().collect();
        let mut heard: BTreeSet<DeviceId> = queue.iter().copied().collect();
        let mut planners = heard.clone();
        let mut rank = 0;
        while let Some(planner) = queue.pop_front() {
            heard.insert(planner);
            self.members.entry(planner).or_default().rank = Some(rank);
            rank += 1;
            for (entry, word) in words.get(&planner).into_iter().flatten() {
                match self.counts_of(planner, entry.at, word, &heard) {
                    None => {}
                    Some(Err(why)) => {
                        let known = self.members.entry(planner).or_default();
                        known.refused.insert(entry.at.number, why);
                    }
                    Some(Ok(())) => {
                        self.members.entry(word.device).or_default().take(word, entry.time, entry.at);
                        let planner_now = matches!(word.admitted, Some((_, MemberRole::Planner)));
                        if planner_now && planners.insert(word.device) {
                            queue.push_back(word.device);
                        }
                    }
                }
            }
        }
    }

    /// Whether a word counts; none where its writer was no planner at that number.
    fn counts_of(
        &self,
        planner: DeviceId,
        at: EventRef,
        word: &Word<'_>,
        heard: &BTreeSet<DeviceId>,
    ) -> Option<Result<(), LeftOut>> {
        let admission = self.members.get(&planner)?.planner_at(at.number)?;
        Some(if !word.is_signed(at, &admission.public_key) {
            Err(LeftOut::Forged)
        } else if heard.contains(&word.device) {
            Err(LeftOut::Senior)
        } else {
            Ok(())
        })
    }

    /// The founder's key; none where the fleet is open.
    pub fn founder(&self) -> Option<&DevicePublic> {
        self.founder.as_ref()
    }

    /// What the planners said of each device that they spoke of.
    pub fn members(&self) -> &BTreeMap<DeviceId, Member> {
        &self.members
    }

    /// Whether what needs that role counts, written by that device under that number.
    ///
    /// # Errors
    /// Why it does not.
    pub fn judge(&self, at: EventRef, needs: Option<MemberRole>) -> Result<(), LeftOut> {
        if self.founder.is_none() {
            return Ok(());
        }
        let role = self.role(at);
        let Some(needed) = needs else { return role.map_or_else(of_itself, |_| Ok(())) };
        let refused = self.members.get(&at.device).and_then(|member| member.refused.get(&at.number));
        match (role?, refused) {
            (_, Some(why)) => Err(*why),
            (role, None) if role < needed => Err(LeftOut::Role),
            _ => Ok(()),
        }
    }

    /// Whether a device was a technician or planner when it wrote that.
    pub fn works(&self, at: EventRef) -> bool {
        self.founder.is_none() || self.role(at).is_ok_and(|role| role >= MemberRole::Technician)
    }

    /// In which role a device wrote that.
    fn role(&self, at: EventRef) -> Result<MemberRole, LeftOut> {
        let member = self.members.get(&at.device);
        if member.is_some_and(|member| member.has_gone(at.number)) {
            return Err(LeftOut::Withdrawn);
        }
        match member.and_then(|member| member.admission(at.number)) {
            Some(admission) => Ok(admission.role),
            // A planner said that so much of it stays.
            None if member.is_some_and(|member| member.withdrawn.is_some()) => Ok(MemberRole::Technician),
            None if self.here == Some(at.device) => Ok(MemberRole::Technician),
            None => Err(LeftOut::Waits),
        }
    }

    /// The stretches of a device's series, up to that number, of which nothing of the job counts.
    pub fn left_out(&self, device: DeviceId, end: u64) -> Vec<(RangeInclusive<u64>, LeftOut)> {
        if self.founder.is_none() {
            return Vec::new();
        }
        let member = self.members.get(&device);
        let said = member.into_iter().flat_map(|member| &member.admitted).map(|admission| admission.after);
        let withdrawn = member.and_then(|member| member.withdrawn);
        // Between two of these every event is judged alike.
        let ends: BTreeSet<u64> = said.chain(withdrawn).filter(|last| *last < end).chain([end]).collect();
        let mut from = 1;
        let mut left_out = Vec::new();
        for to in ends.into_iter().filter(|to| *to > 0) {
            let why = match self.role(EventRef { device, number: to }) {
                Ok(role) => (role < MemberRole::Technician).then_some(LeftOut::Role),
                Err(why) => Some(why),
            };
            left_out.extend(why.map(|why| (from..=to, why)));
            from = to + 1;
        }
        left_out
    }

    /// How a device stands now.
    pub fn standing(&self, device: DeviceId) -> Standing {
        if self.founder.is_none() {
            return Standing::Open;
        }
        let Some(member) = self.members.get(&device) else { return Standing::Waits };
        if member.withdrawn.is_some() {
            return Standing::Withdrawn;
        }
        match member.admission(u64::MAX) {
            None => Standing::Waits,
            Some(said) if Some(said.public_key) == self.founder && said.by.device == device => {
                Standing::Founder
            }
            Some(said) => match said.role {
                MemberRole::Reader => Standing::Reader,
                MemberRole::Technician => Standing::Technician,
                MemberRole::Planner => Standing::Planner,
            },
        }
    }

    /// Whether a planner's word on a device would count: it is a planner now, and the device is not before it.
    ///
    /// # Errors
    /// Why it would not.
    pub fn may_judge(&self, planner: DeviceId, device: DeviceId) -> Result<(), LeftOut> {
        let rank = |device| self.members.get(&device).and_then(|member| member.rank);
        match (self.standing(planner), rank(planner), rank(device)) {
            (Standing::Founder | Standing::Planner, Some(one), Some(other)) if other <= one => {
                Err(LeftOut::Senior)
            }
            (Standing::Founder | Standing::Planner, ..) => Ok(()),
            _ => Err(LeftOut::Role),
        }
    }

    /// The key that a device was admitted with last.
    pub fn key_of(&self, device: DeviceId) -> Option<&DevicePublic> {
        self.members.get(&device)?.admission(u64::MAX).map(|admission| &admission.public_key)
    }

    /// Whether the key is that of a device which is a planner now.
    pub fn is_planners(&self, key: &DevicePublic) -> bool {
        let now = |member: &Member| member.planner_at(u64::MAX).is_some_and(|said| said.public_key == *key);
        self.members.values().any(now)
    }
}

/// A device's own name and key count while it waits.
fn of_itself(why: LeftOut) -> Result<(), LeftOut> {
    if why == LeftOut::Waits { Ok(()) } else { Err(why) }
}

/// Whether an entry tells that key for its own device.
fn tells(entry: &Entry, key: &DevicePublic) -> bool {
    matches!(&entry.body, Body::DeviceKey(told) if told.public_key == *key && told.is_of(entry.at.device))
}
