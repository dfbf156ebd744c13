//! `office` in plain text.

use super::Plain;
use super::text::wrapped;
use crate::office::OfficeKept;
use hosewright_words::Words;

impl Plain for OfficeKept {
    fn plain(&self, words: &Words) -> String {
        let Self { kept, exchanged, not_exchanged } = self;
        let mut lines = Vec::new();
        if let Some(why) = not_exchanged {
            lines.push(wrapped(&words.say("office-not-exchanged", &[("why", why)]), 2));
        }
        lines.extend(exchanged.as_ref().map(|exchanged| exchanged.plain(words)));
        let at = kept.at.format("%Y-%m-%d %H:%M").to_string();
        let told = words.say(
            "office-kept",
            &[
                ("at", &at),
                ("came", &kept.came),
                ("events", &kept.events),
                ("written", &kept.written),
                ("removed", &kept.removed),
            ],
        );
        lines.push(wrapped(&told, 2));
        lines.join("\n")
    }
}
