//! `tag` in plain text.

use super::Plain;
use super::check::{finding_text, verdict};
use super::text::{columns, set_in, wrapped};
use hosewright_api::Answer;
use hosewright_api::commands::tag::{
    LabelBatch, LabelDrawn, Scan, ScanList, Scanned, TagAdopted, TagFinding, TagJudged, TagMade, TagOf,
};
use hosewright_core::check::Verdict;
use hosewright_core::tag::{LabelDirection, LabelStock};
use hosewright_words::{Pressure, Words, length, number, pressure};
use serde::Serialize;
use std::fmt::Write;

/// A tag that was made, and how its label came out.
#[derive(Debug, Serialize)]
#[serde(transparent)]
pub struct TagShown {
    /// The answer.
    pub made: Answer<TagMade>,
    /// The label; none where no tag was made.
    #[serde(skip)]
    pub label: Option<LabelDrawn>,
    /// Whether a register was open.
    #[serde(skip)]
    pub register: bool,
}

impl Plain for TagShown {
    fn plain(&self, words: &Words) -> String {
        let mut out = self.made.content.plain(words);
        if !self.register && self.made.content.tag.is_some() {
            let _ = write!(out, "\n{}\n", wrapped(&words.say("tag-no-register", &[]), 0));
        }
        if let Some(label) = &self.label {
            let _ = write!(out, "\n{}\n", label_text(label, words));
        }
        for notice in &self.made.content.notices {
            let _ = write!(out, "\n{}\n", found(notice, words));
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.made.content.verdict)
    }
}

/// A tag that was made again from the record, and how its label came out.
#[derive(Debug, Serialize)]
#[serde(transparent)]
pub struct TagAgain {
    /// The answer.
    pub of: Answer<TagOf>,
    /// The label.
    #[serde(skip)]
    pub label: Option<LabelDrawn>,
}

impl Plain for TagAgain {
    fn plain(&self, words: &Words) -> String {
        let label = self.label.as_ref().map(|label| label_text(label, words)).unwrap_or_default();
        format!("{}\n\n{label}", self.of.content.text)
    }
}

/// How a label came out.
fn label_text(label: &LabelDrawn, words: &Words) -> String {
    let mm = |value: f64| length(value, 2);
    let of = words.say(
        "tag-label-of",
        &[
            ("holds", &hosewright_api::key(&label.holds)),
            ("version", &number(f64::from(label.version), 0)),
            ("level", &label.level.to_string()),
            ("module", &mm(label.module_mm)),
            ("dots", &number(f64::from(label.module_dots), 0)),
            ("from", &length(label.reads_from_mm, 0)),
        ],
    );
    let mut lines = vec![of];
    if let Some(curve) = &label.curve {
        let id = match curve.direction {
            LabelDirection::Along => "tag-label-along",
            LabelDirection::Around => "tag-label-around",
        };
        let (od, seen) = (length(curve.cover_od_mm.get(), 1), length(curve.seen_mm.get(), 1));
        lines.push(words.say(id, &[("od", &od), ("seen", &seen)]));
        lines.extend(curve.doubt.clone());
    }
    if label.reprint {
        lines.push(words.say("tag-label-reprint", &[]));
    }
    lines.iter().map(|line| wrapped(line, 0)).collect::<Vec<_>>().join("\n")
}

/// Something that is said of a tag, and what to do.
fn found(finding: &TagFinding, words: &Words) -> String {
    let said = format!("{}: {} {}", verdict(finding.verdict, words), finding.why, finding.cure);
    set_in(&said, 0, 2)
}

impl Plain for TagJudged {
    fn plain(&self, words: &Words) -> String {
        let findings = self.findings.iter().map(|finding| found(finding, words));
        std::iter::once(wrapped(&self.says, 0)).chain(findings).collect::<Vec<_>>().join("\n")
    }
}

impl Plain for LabelBatch {
    fn plain(&self, words: &Words) -> String {
        let said = words.say(
            "tag-batch-made",
            &[("made", &self.made), ("pages", &self.pages), ("reprints", &self.reprints)],
        );
        let rows = self.labels.iter().map(|label| {
            let refused = label.refused.as_ref().map(|why| words.say("tag-batch-refused", &[("why", why)]));
            let reprint = label.reprint.then(|| words.say("tag-batch-reprint", &[]));
            let from = label
                .od_from
                .map(|from| words.say("batch-diameter", &[("from", &hosewright_api::key(&from))]));
            let said: Vec<String> = [refused, reprint, from].into_iter().flatten().collect();
            vec![label.code.to_string(), said.join("; ")]
        });
        format!("{}\n{}", wrapped(&said, 2), columns(&rows.collect::<Vec<_>>()))
    }
}

impl Plain for TagAdopted {
    fn plain(&self, words: &Words) -> String {
        let done = words.say("tag-taken-in-done", &[("code", &self.code.to_string())]);
        let carries = match self.assembly.pressure_bar {
            Some(bar) => {
                words.say("tag-taken-in-pressure", &[("pressure", &pressure(bar.get(), Pressure::Bar))])
            }
            None => words.say("tag-taken-in-no-pressure", &[]),
        };
        wrapped(&format!("{done} {carries}"), 0)
    }
}

impl Plain for ScanList {
    fn plain(&self, words: &Words) -> String {
        if self.scans.is_empty() {
            return words.say("tag-scans-none", &[]);
        }
        let rows = self.scans.iter().map(|scan| {
            vec![
                scan.time.format("%Y-%m-%d %H:%M").to_string(),
                scan.code.map(|code| code.to_string()).unwrap_or_default(),
                words.say(&format!("tag-way-{}", hosewright_api::key(&scan.way)), &[]),
                verdict(scan.verdict, words),
                hosewright_api::key(&scan.standing),
            ]
        });
        columns(&rows.collect::<Vec<_>>())
    }
}

/// The user's label stocks.
#[derive(Debug, Serialize)]
pub struct Stocks {
    /// As they are kept.
    pub stocks: Vec<LabelStock>,
}

impl Plain for Stocks {
    fn plain(&self, words: &Words) -> String {
        let rows = self.stocks.iter().map(|stock| {
            let size = format!("{} x {} mm", stock.width_mm, stock.height_mm);
            let form = words.say(&format!("tag-stock-form-{}", hosewright_api::key(&stock.form)), &[]);
            vec![stock.name.clone(), size, format!("{} dpi", stock.dpi), form]
        });
        columns(&rows.collect::<Vec<_>>())
    }
}

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
        let text = match (&self.tag, self.code) {
            (None, Some(code)) if self.problem.is_none() => {
                format!("{code}\n{}", words.say("tag-code-alone", &[]))
            }
            _ => self.text.clone(),
        };
        match &self.judged {
            Some(judged) => format!("{text}\n\n{}", judged.plain(words)),
            None => text,
        }
    }

    fn verdict(&self) -> Option<Verdict> {
        self.judged.as_ref().map(|judged| judged.verdict)
    }
}

impl Plain for Scanned {
    fn plain(&self, words: &Words) -> String {
        self.codes.iter().map(|scan| scan.plain(words)).collect::<Vec<_>>().join("\n\n")
    }
    fn verdict(&self) -> Option<Verdict> {
        self.codes.iter().filter_map(Plain::verdict).max()
    }
}
