//! `tag` in plain text.

use super::Plain;
use super::check::{finding_text, verdict};
use super::text::wrapped;
use hosewright_api::commands::tag::{Scan, Scanned, TagMade};
use hosewright_core::check::Verdict;
use hosewright_words::Words;

impl Plain for TagMade {
    fn plain(&self, words: &Words) -> String {
        match &self.text {
            Some(text) if self.service_checked => format!("{text}\n"),
            Some(text) => format!("{text}\n\n{}\n", wrapped(&words.say("tag-service-unchecked", &[]), 0)),
            None => {
                let stops: Vec<String> = self.stops.iter().map(|stop| finding_text(stop, words)).collect();
                format!(
                    "{}: {}\n\n{}\n",
                    verdict(self.verdict, words),
                    words.say("tag-refused", &[]),
                    stops.join("\n\n")
                )
            }
        }
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}

impl Plain for Scan {
    fn plain(&self, words: &Words) -> String {
        match (&self.tag, self.code) {
            (None, Some(code)) => format!("{code}\n{}", words.say("tag-code-alone", &[])),
            _ => self.text.clone(),
        }
    }
}

impl Plain for Scanned {
    fn plain(&self, words: &Words) -> String {
        self.codes.iter().map(|scan| scan.plain(words)).collect::<Vec<_>>().join("\n\n")
    }
}
