//! `share` in plain text.

use super::Plain;
use super::text::wrapped;
use hosewright_api::commands::share::{Exchanged, Shared};
use hosewright_words::Words;

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
        lines.extend(self.devices.iter().map(|device| {
            let name = device.name.clone().unwrap_or_else(|| device.device.to_string());
            let day = device.latest.date_naive().to_string();
            words.say("share-device", &[("name", &name), ("events", &device.events), ("day", &day)])
        }));
        if let Some(last) = &self.last {
            lines.push(String::new());
            lines.push(last.plain(words));
        }
        lines.iter().map(|line| wrapped(line, 2)).collect::<Vec<_>>().join("\n")
    }
}

impl Plain for Exchanged {
    fn plain(&self, words: &Words) -> String {
        let at = self.at.format("%Y-%m-%d %H:%M").to_string();
        let mut lines =
            vec![words.say("share-exchanged", &[("at", &at), ("came", &self.came), ("went", &self.went)])];
        lines.extend(self.refused.iter().map(|refused| {
            let device = refused.device.to_string();
            words.say("share-refused", &[("device", &device), ("from", &refused.from), ("why", &refused.why)])
        }));
        lines.extend(
            self.waiting_for
                .iter()
                .map(|device| words.say("share-waiting-for", &[("device", &device.to_string())])),
        );
        if let Some(why) = &self.cut_off {
            lines.push(words.say("share-cut-off", &[("why", why)]));
        }
        lines.iter().map(|line| wrapped(line, 2)).collect::<Vec<_>>().join("\n")
    }
}
