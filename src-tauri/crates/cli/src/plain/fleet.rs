//! `fleet` in plain text.

use super::Plain;
use super::text::{set_in, wrapped};
use chrono::{DateTime, Utc};
use hosewright_api::commands::fleet::{Fleet, FleetSeen, Fleets};
use hosewright_api::key;
use hosewright_words::Words;
use serde::Serialize;

impl Plain for Fleets {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![words.say("fleets-device", &[("mark", &self.device.mark)])];
        lines.push(match &self.own {
            Some(own) => fleet("fleets-own", own, words),
            None => words.say("fleets-none", &[]),
        });
        if self.own.is_some() {
            lines.push(match &self.founder {
                Some(mark) => {
                    let stands = words.say(&format!("fleets-standing-{}", key(&self.standing)), &[]);
                    words.say("fleets-founder", &[("mark", mark), ("stands", &stands)])
                }
                None => words.say("share-standing-open", &[]),
            });
        }
        lines.extend(self.partners.iter().map(|partner| fleet("fleets-partner", partner, words)));
        lines.extend(self.others.iter().map(|other| {
            let name = other.name.clone().unwrap_or_else(|| words.say("fleets-no-name", &[]));
            let stands = words.say(&format!("fleets-standing-{}", key(&other.standing)), &[]);
            words.say("fleets-other", &[("name", &name), ("mark", &other.mark), ("stands", &stands)])
        }));
        lines.push(String::new());
        lines.push(self.kept.clone());
        lines.iter().map(|line| wrapped(line, 2)).collect::<Vec<_>>().join("\n")
    }
}

fn fleet(id: &str, of: &Fleet, words: &Words) -> String {
    let from = of.from.as_ref().map_or_else(String::new, |from| words.say("fleets-from", &[("from", from)]));
    let (mark, day) = (of.mark.to_string(), of.since.date_naive().to_string());
    words.say(id, &[("name", &of.name), ("mark", &mark), ("day", &day), ("from", &from)])
}

impl Plain for FleetSeen {
    fn plain(&self, words: &Words) -> String {
        let values: [(&str, &dyn hosewright_words::Say); 3] =
            [("name", &self.name), ("mark", &self.mark.to_string()), ("from", &self.from)];
        let known = self.from_name.as_ref();
        let known =
            known.map(|device| words.say("fleets-seen-known", &[("from", &self.from), ("device", device)]));
        let founder = match &self.founder {
            Some(mark) => words.say("fleets-seen-founder", &[("mark", mark)]),
            None => words.say("fleets-seen-open", &[]),
        };
        let said = [Some(words.say("fleets-seen", &values)), known, Some(founder)];
        said.into_iter().flatten().map(|line| wrapped(&line, 0)).collect::<Vec<_>>().join("\n")
    }
}

/// Where a fleet's key was left, and what to mind.
#[derive(Debug, Serialize)]
pub struct FleetHandedOn {
    /// The file.
    pub file: String,
    /// Until when it is read.
    pub until: DateTime<Utc>,
    /// What to mind.
    pub caution: String,
}

impl Plain for FleetHandedOn {
    fn plain(&self, words: &Words) -> String {
        let caution = format!("{}: {}", words.say("verdict-caution", &[]), self.caution);
        let until = self.until.format("%Y-%m-%d %H:%M UTC").to_string();
        let until = wrapped(&words.say("fleets-hand-on-until", &[("until", &until)]), 0);
        format!("{}\n{until}\n\n{}", self.file, set_in(&caution, 0, 2))
    }
}
