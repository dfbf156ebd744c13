//! `share` in plain text.

use super::Plain;
use super::photo::short;
use super::text::wrapped;
use hosewright_api::commands::left_out::LeftOutList;
use hosewright_api::commands::share::{Exchanged, PhotosExchanged, Shared};
use hosewright_api::key;
use hosewright_core::record::Standing;
use hosewright_store::Unheard;
use hosewright_words::{Say, Words};

impl Plain for Shared {
    fn plain(&self, words: &Words) -> String {
        let mut lines = vec![match &self.url {
            Some(url) => words.say("share-storage", &[("url", url)]),
            None => words.say("share-no-storage", &[]),
        }];
        if self.fleet.is_none() {
            lines.push(words.say("share-no-fleet", &[]));
        }
        let waiting = self.written.saturating_sub(self.sent);
        lines.push(words.say("share-sent", &[("sent", &self.sent), ("waiting", &waiting)]));
        if self.photos.named > 0 {
            let values: [(&str, &dyn Say); 2] = [("here", &self.photos.here), ("named", &self.photos.named)];
            lines.push(words.say("share-photos", &values));
        }
        lines.extend(self.devices.iter().map(|device| {
            let name = device.name.clone().unwrap_or_else(|| device.device.to_string());
            let day = device.latest.date_naive().to_string();
            words.say("share-device", &[("name", &name), ("events", &device.events), ("day", &day)])
        }));
        lines.extend(standing(self.standing, words));
        lines.extend(self.left_out.iter().map(|left_out| {
            let device = left_out.device.to_string();
            let name = left_out.name.clone().unwrap_or_else(|| device.clone());
            let why = words.say(&format!("share-left-out-{}", key(&left_out.why)), &[]);
            let values: [(&str, &dyn Say); 4] =
                [("name", &name), ("device", &device), ("count", &left_out.count), ("why", &why)];
            words.say("share-left-out", &values)
        }));
        if self.not_settled > 0 {
            lines.push(words.say("share-not-settled", &[("count", &self.not_settled)]));
        }
        if let Some(last) = &self.last {
            lines.push(String::new());
            lines.push(last.plain(words));
        }
        lines.iter().map(|line| wrapped(line, 2)).collect::<Vec<_>>().join("\n")
    }
}

/// What this device is told of how it stands in its fleet; nothing where it works as ever.
pub(super) fn standing(standing: Standing, words: &Words) -> Option<String> {
    let id = match standing {
        Standing::Open => "share-standing-open",
        Standing::Waits => "share-standing-waits",
        Standing::Reader => "share-standing-reader",
        Standing::Withdrawn => "share-standing-withdrawn",
        Standing::Technician | Standing::Planner | Standing::Founder => return None,
    };
    Some(words.say(id, &[]))
}

/// What people call a kind of event, where it has words.
fn kind(kind: &str, words: &Words) -> String {
    let id = format!("van-kind-{kind}");
    if words.has(&id) { words.say(&id, &[]) } else { kind.to_owned() }
}

impl Plain for LeftOutList {
    fn plain(&self, words: &Words) -> String {
        if self.events.is_empty() {
            return words.say("share-left-out-nothing", &[]);
        }
        let line = |event: &Unheard| {
            let why = words.say(&format!("share-left-out-{}", key(&event.why)), &[]);
            let about = &event.about;
            let what = about.hose.map(|hose| hose.to_string()).or(about.name.clone()).unwrap_or_default();
            let kind = about.told.first().map(|told| kind(&told.kind, words)).unwrap_or_default();
            let (day, event) = (event.time.date_naive().to_string(), event.event.number);
            let values: [(&str, &dyn Say); 5] =
                [("event", &event), ("day", &day), ("kind", &kind), ("what", &what), ("why", &why)];
            wrapped(&words.say("share-left-out-event", &values), 2)
        };
        self.events.iter().map(line).collect::<Vec<_>>().join("\n")
    }
}

impl Plain for Exchanged {
    fn plain(&self, words: &Words) -> String {
        let at = self.at.format("%Y-%m-%d %H:%M").to_string();
        let mut lines =
            vec![words.say("share-exchanged", &[("at", &at), ("came", &self.came), ("went", &self.went)])];
        lines.extend(self.refused.iter().map(|refused| {
            let device = refused.device.to_string();
            let id = if refused.copied { "share-copied" } else { "share-refused" };
            words.say(id, &[("device", &device), ("from", &refused.from), ("why", &refused.why)])
        }));
        lines.extend(
            self.waiting_for
                .iter()
                .map(|device| words.say("share-waiting-for", &[("device", &device.to_string())])),
        );
        lines.extend(photos(&self.photos, words));
        if let Some(why) = &self.cut_off {
            lines.push(words.say("share-cut-off", &[("why", why)]));
        }
        lines.iter().map(|line| wrapped(line, 2)).collect::<Vec<_>>().join("\n")
    }
}

/// What became of photos, where there are any.
fn photos(photos: &PhotosExchanged, words: &Words) -> Vec<String> {
    let PhotosExchanged { came, went, to_come, to_go, refused } = photos;
    let mut lines = Vec::new();
    if came + went > 0 {
        lines.push(words.say("share-photos-moved", &[("came", came), ("went", went)]));
    }
    let waiting = [("share-photos-to-come", *to_come), ("share-photos-to-go", to_go.unwrap_or(0))];
    let waiting = waiting.iter().filter(|(_, count)| *count > 0);
    lines.extend(waiting.map(|(id, count)| words.say(id, &[("count", count)])));
    lines.extend(refused.iter().map(|hash| words.say("share-photo-refused", &[("photo", &short(*hash))])));
    lines
}
