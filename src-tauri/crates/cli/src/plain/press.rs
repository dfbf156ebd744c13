//! `press` in plain text.

use super::Plain;
use super::text::{columns, wrapped};
use hosewright_api::commands::press::{DieSet, Press};
use hosewright_core::check::Verdict;
use hosewright_core::press::CareDue;
use hosewright_words::{Words, signed};
use std::fmt::Write;

impl Plain for Press {
    fn plain(&self, words: &Words) -> String {
        let mut out = format!("{}\n", words.say("press-on", &[("on", &self.on.to_string())]));
        if self.dies.is_empty() {
            let _ = writeln!(out, "{}", words.say("press-none", &[]));
        }
        for die in &self.dies {
            let _ = writeln!(out, "\n{}", die_set(die, words));
        }
        if self.left_out > 0 {
            let _ =
                writeln!(out, "\n{}", wrapped(&words.say("press-left-out", &[("count", &self.left_out)]), 2));
        }
        for each in &self.care {
            let _ = writeln!(out, "{}", wrapped(&care(each, words), 2));
        }
        out
    }
}

fn mm(value: f64) -> String {
    format!("{} mm", signed(value, 3))
}

fn die_set(die: &DieSet, words: &Words) -> String {
    let count = die.crimps.len();
    let mut out = words.say("press-die", &[("die", &die.die_set), ("count", &count)]);
    let Some(chart) = &die.chart else {
        let _ = write!(out, "\n  {}", words.say("press-few", &[]));
        return out;
    };
    let limits = words.say(
        "press-limits",
        &[("centre", &mm(chart.centre)), ("lower", &mm(chart.lower)), ("upper", &mm(chart.upper))],
    );
    let _ = writeln!(out, "\n  {limits}");
    let signalled = die.crimps.iter().zip(&chart.points).filter(|(_, point)| !point.signals.is_empty());
    let rows = signalled.map(|(crimp, point)| {
        let signals = point
            .signals
            .iter()
            .map(|signal| words.say(&format!("press-{}", hosewright_api::key(signal)), &[]));
        vec![
            format!("  {} {:?}", crimp.code, crimp.role),
            crimp.assembled.map_or_else(|| "?".to_owned(), |day| day.to_string()),
            mm(point.value),
            signals.collect::<Vec<_>>().join(", "),
        ]
    });
    out + columns(&rows.collect::<Vec<_>>()).trim_end()
}

fn care(care: &CareDue, words: &Words) -> String {
    let crimps = usize::try_from(care.crimps_since).unwrap_or(usize::MAX);
    let mut said = words.say("press-care", &[("name", &care.care.name), ("crimps", &crimps)]);
    if let Some(on) = care.due_on {
        let _ = write!(said, "; {}", words.say("press-care-on", &[("on", &on.to_string())]));
    }
    if care.care.last_done.is_none() {
        let _ = write!(said, "; {}", words.say("press-care-undone", &[]));
    }
    if care.verdict == Verdict::Caution {
        let caution = super::check::verdict(Verdict::Caution, words);
        said = format!("{caution} {said}; {}", words.say("press-care-due", &[]));
    }
    said
}
