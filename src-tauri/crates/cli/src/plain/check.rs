//! `check` in plain text.

use super::Plain;
use super::text::wrapped;
use hosewright_core::catalogue::Basis;
use hosewright_core::check::{Checked, Finding, Verdict, Weakest};
use hosewright_words::{Pressure, Words, length, pressure, signed};
use std::fmt::Write;

impl Plain for Checked {
    fn plain(&self, words: &Words) -> String {
        let mut out = verdict(self.verdict, words);
        if let Some(rating) = self.assembly_pressure_bar {
            let weakest = words.say(weakest(self.weakest), &[]);
            let rating = pressure(rating.get(), Pressure::Bar);
            let _ = write!(
                out,
                "  {}",
                words.say("check-assembly", &[("pressure", &rating), ("weakest", &weakest)])
            );
        }
        out.push('\n');
        if let Some(cut) = self.cut_length_mm {
            let _ = writeln!(out, "{}", words.say("check-cut", &[("length", &length(cut.get(), 1))]));
        }
        if let Some([minus, plus]) = self.length_tolerance_mm {
            let tolerance = format!("{} / {} mm", signed(plus, 1), signed(minus, 1));
            let _ = writeln!(out, "{}", words.say("check-tolerance", &[("tolerance", &tolerance)]));
        }
        out.push('\n');
        let (grave, passed): (Vec<&Finding>, Vec<&Finding>) =
            self.findings.iter().partition(|finding| finding.verdict != Verdict::Pass);
        for finding in grave {
            let _ = writeln!(out, "{}\n", finding_text(finding, words));
        }
        for finding in passed {
            let _ = writeln!(out, "{}", finding_text(finding, words));
        }
        if self.verdict != Verdict::Pass && !self.alternatives.is_empty() {
            let _ = writeln!(out, "\n{}", words.say("check-alternatives", &[]));
            for other in &self.alternatives {
                let reasons = other.reasons.join(" ");
                let line = format!(
                    "  {} {} {} DN{}. {reasons}",
                    verdict(other.verdict, words),
                    other.standard,
                    other.kind,
                    other.dn
                );
                let _ = writeln!(out, "{}", wrapped(&line, 4));
            }
        }
        let left_out: Vec<&str> = self.not_checked.iter().map(|left_out| left_out.words.as_str()).collect();
        let left_out = format!("{} {}", words.say("check-not-checked", &[]), left_out.join(" "));
        let _ = writeln!(out, "\n{}", wrapped(&left_out, 0));
        let _ = writeln!(out, "\n{}", wrapped(&words.say("sheet-maker-first", &[]), 0));
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}

/// The word of a verdict.
pub fn verdict(verdict: Verdict, words: &Words) -> String {
    words.say(
        match verdict {
            Verdict::Pass => "verdict-pass",
            Verdict::Caution => "verdict-caution",
            Verdict::Stop => "verdict-stop",
        },
        &[],
    )
}

fn weakest(part: Option<Weakest>) -> &'static str {
    match part {
        Some(Weakest::Hose) | None => "find-of-hose",
        Some(Weakest::A) => "find-of-a",
        Some(Weakest::B) => "find-of-b",
        Some(Weakest::Adapter) => "check-adapter",
    }
}

/// A finding: why, what to do, and where its limit comes from.
pub fn finding_text(finding: &Finding, words: &Words) -> String {
    let mut text =
        wrapped(&format!("{}: {} {}", verdict(finding.verdict, words), finding.why, finding.cure), 2);
    if !finding.source.is_empty() {
        let _ =
            write!(text, "\n{}", wrapped(&format!("  {}", source(&finding.source, finding.basis, words)), 4));
    }
    text
}

/// A source with its basis; what is recalled says in words that nobody verified it.
pub fn source(source: &str, basis: Basis, words: &Words) -> String {
    format!("[{source}; {}]", words.say(&format!("basis-{}", hosewright_api::key(&basis)), &[]))
}
