//! `crimp`, `cutoff` and `bench` in plain text.

use super::Plain;
use super::text::set_in;
use hosewright_api::commands::bench::BenchRecorded;
use hosewright_core::bench::{BenchJudged, FinishedCheck};
use hosewright_core::check::Verdict;
use hosewright_core::crimp::Crimped;
use hosewright_core::cutoff::CutoffMeasured;
use hosewright_core::measure::Judged;
use hosewright_core::quantity::Millimetres;
use hosewright_words::{Words, length, quantity, signed};
use std::fmt::Write;

/// Decimals of a diameter over a crimp: those of a micrometer.
const FINE: usize = 3;

fn judged(judged: Judged, words: &Words) -> String {
    words.say(&format!("bench-judged-{}", hosewright_api::key(&judged)), &[])
}

fn verdict(judged: Judged) -> Verdict {
    match judged {
        Judged::Pass => Verdict::Pass,
        Judged::Unsettled => Verdict::Caution,
        Judged::Stop => Verdict::Stop,
    }
}

/// A code with how it is done.
fn advice(code: &str, words: &Words) -> String {
    let how = words.say(&format!("bench-{code}-how"), &[]);
    set_in(&format!("{}. {how}", words.say(&format!("bench-{code}"), &[])), 2, 2)
}

impl Plain for Crimped {
    fn plain(&self, words: &Words) -> String {
        let name = match self.role {
            Some(role) => words.say("bench-crimp", &[("end", &format!("{role:?}"))]),
            None => words.say("bench-crimp-nameless", &[]),
        };
        let count = words.say("bench-count", &[("count", &self.count), ("wanted", &self.wanted)]);
        let mut out = format!("{}  {name}: {count}\n", judged(self.verdict, words));
        for code in &self.codes {
            let _ = writeln!(out, "{}", advice(code, words));
        }
        let mm = |value: Millimetres| length(value.get(), FINE);
        let _ = write!(out, "{}", limits(self, words));
        let facts = [
            self.mean_mm.map(|mean| {
                let spread = self.spread_mm.map_or_else(|| "?".to_owned(), mm);
                words.say("bench-mean", &[("mean", &mm(mean)), ("spread", &spread)])
            }),
            self.min_mm
                .zip(self.max_mm)
                .map(|(min, max)| words.say("bench-range", &[("min", &mm(min)), ("max", &mm(max))])),
            self.oval_mm.map(|oval| words.say("bench-oval", &[("oval", &mm(oval))])),
            self.taper_mm.map(|taper| {
                words.say("bench-taper", &[("taper", &format!("{} mm", signed(taper.get(), FINE)))])
            }),
        ];
        let facts: Vec<String> = facts.into_iter().flatten().collect();
        if !facts.is_empty() {
            let _ = writeln!(out, "{}", set_in(&facts.join("; "), 2, 2));
        }
        for place in &self.places {
            let [mean, min, max, oval] = [place.mean_mm, place.min_mm, place.max_mm, place.oval_mm].map(mm);
            let said = words.say(
                "bench-place",
                &[("place", &place.place), ("mean", &mean), ("min", &min), ("max", &max), ("oval", &oval)],
            );
            let _ = writeln!(out, "  {said}");
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(verdict(self.verdict))
    }
}

fn limits(crimp: &Crimped, words: &Words) -> String {
    let mm = |value: Millimetres| length(value.get(), FINE);
    let (Some(limits), Some(instrument)) = (crimp.limits, crimp.instrument) else { return String::new() };
    let (low, high) = (limits.low_mm.get(), limits.high_mm.get());
    let target = length((low + high) / 2.0, FINE);
    let tolerance = length((high - low) / 2.0, FINE);
    let mut said = words.say("bench-target", &[("target", &target), ("tolerance", &tolerance)]);
    if let (Some(low), Some(high)) = (limits.accept_low_mm, limits.accept_high_mm) {
        let accepted = words.say("bench-accepted", &[("low", &mm(low)), ("high", &mm(high))]);
        let _ = write!(said, "; {accepted} [{}]", crimp.source);
    }
    let fit = words.say(
        &format!("bench-fit-{}", hosewright_api::key(&instrument.fit)),
        &[("mm", &mm(instrument.would_do_mm))],
    );
    format!("{}\n{}\n", set_in(&said, 2, 2), set_in(&fit, 2, 2))
}

impl Plain for CutoffMeasured {
    fn plain(&self, words: &Words) -> String {
        let value = self.cutoff_mm.map_or_else(|| "?".to_owned(), |mm| length(mm.get(), 2));
        let error = self.expanded_mm.map_or_else(String::new, |mm| format!(" \u{b1}{}", length(mm.get(), 2)));
        let mut out =
            format!("{}  {value}{error}\n{}\n", judged(self.verdict, words), advice(self.next_do, words));
        for step in self.steps {
            let _ =
                writeln!(out, "{}", set_in(&format!("- {}", words.say(&format!("bench-{step}"), &[])), 2, 2));
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(verdict(self.verdict))
    }
}

impl Plain for BenchJudged {
    fn plain(&self, words: &Words) -> String {
        let mut out = String::new();
        for crimp in &self.crimps {
            let _ = writeln!(out, "{}", crimp.plain(words));
        }
        for check in &self.finished {
            let _ = writeln!(out, "{}", finished(check, words));
        }
        let _ = writeln!(out, "{}", words.say("bench-proof", &[]));
        for code in std::iter::once(&self.proof.next_do).chain(&self.proof.cautions) {
            let _ = writeln!(out, "{}", advice(code, words));
        }
        let tag = if self.tag { "bench-may-tag" } else { "bench-may-not-tag" };
        let _ = write!(out, "\n{}", words.say(tag, &[]));
        for code in &self.why_not {
            let _ = write!(out, "\n  {}", words.say(&format!("bench-why-{code}"), &[]));
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        let crimps = self.crimps.iter().map(|crimp| verdict(crimp.verdict));
        let finished = self.finished.iter().map(|check| verdict(check.verdict));
        let whole = if self.tag { Verdict::Pass } else { Verdict::Caution };
        let failed = self.why_not.contains(&"proof-failed").then_some(Verdict::Stop);
        crimps.chain(finished).chain(failed).chain([whole]).max()
    }
}

fn finished(check: &FinishedCheck, words: &Words) -> String {
    let name = words.say(&format!("bench-{}", check.code), &[]);
    let of = |value: Option<f64>| value.map_or_else(|| "?".to_owned(), |value| quantity(value, check.unit));
    let measured = words.say(
        "bench-measured",
        &[("value", &of(check.value)), ("low", &of(check.low)), ("high", &of(check.high))],
    );
    format!("{}  {name}: {measured}\n{}", judged(check.verdict, words), advice(check.next_do, words))
}

impl Plain for BenchRecorded {
    fn plain(&self, words: &Words) -> String {
        words.say("bench-recorded", &[("code", &self.code.to_string())])
    }
}
