//! `route` in plain text.

use super::Plain;
use super::check::{finding_text, verdict};
use super::text::{columns, wrapped};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Millimetres;
use hosewright_core::route::field::FieldRouted;
use hosewright_core::route::{Reason, Routed};
use hosewright_words::{Words, length, number};
use std::fmt::Write;

impl Plain for Routed {
    fn plain(&self, words: &Words) -> String {
        let mm = |radius: Option<Millimetres>| {
            radius.map_or_else(|| words.say("route-straight", &[]), |mm| length(mm.get(), 1))
        };
        let mut out = format!("{} ({})\n", verdict(self.verdict, words), words.say("route-estimate", &[]));
        for reason in &self.reasons {
            let _ = writeln!(
                out,
                "{}",
                wrapped(
                    &format!("  {}", words.say(&format!("route-{}", hosewright_api::key(reason)), &[])),
                    2
                )
            );
        }
        // Without the outside diameter the inside of the bend is not known, which is not straight.
        let inside = if self.reasons.contains(&Reason::NoDiameter) {
            words.say("sheet-not-known", &[])
        } else {
            mm(self.min_inside_radius_mm)
        };
        let mut rows = vec![
            vec![words.say("route-inside", &[]), inside],
            vec![words.say("route-centre", &[]), mm(self.min_radius_mm)],
            vec![words.say("route-length", &[]), length(self.free_length_mm.get(), 1)],
        ];
        if let Some(shortest) = self.shortest_free_length_mm {
            rows.push(vec![words.say("route-shortest", &[]), length(shortest.get(), 1)]);
        }
        let [least, greatest] = self.twist_range_deg;
        let twist = format!("{}\u{b0} \u{2026} {}\u{b0}", number(least.get(), 1), number(greatest.get(), 1));
        rows.push(vec![words.say("route-twist-range", &[]), twist]);
        out.push_str(&columns(&rows));
        if self.poses.iter().any(|pose| pose.near_rival) {
            let _ = writeln!(out, "{}", wrapped(&words.say("route-near-rival", &[]), 0));
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}

impl Plain for FieldRouted {
    fn plain(&self, words: &Words) -> String {
        let mm = |mm: Option<Millimetres>, none: &str| {
            mm.map_or_else(|| words.say(none, &[]), |mm| length(mm.get(), 0))
        };
        let unknown = "sheet-not-known";
        let inside = match &self.routed {
            Some(routed) => mm(routed.min_inside_radius_mm, "route-straight"),
            None => words.say("route-no-shape", &[]),
        };
        let recommended = self.recommended.as_ref().map(|made| made.overall_length_mm);
        let mut rows = vec![
            vec![words.say("route-inside", &[]), inside],
            vec![words.say("route-overall", &[]), mm(self.overall_length_mm, unknown)],
            vec![words.say("route-shortest-overall", &[]), mm(self.shortest_overall_length_mm, "route-none")],
            vec![words.say("route-recommended", &[]), mm(recommended, "route-none")],
        ];
        if let Some(turn) = self.turn_deg {
            rows.push(vec![words.say("route-turn", &[]), format!("{}\u{b0}", number(turn.get(), 0))]);
        }
        let mut out = format!("{} ({})\n", verdict(self.verdict, words), words.say("route-estimate", &[]));
        out.push_str(&columns(&rows));
        for finding in &self.findings {
            let gap = if finding.verdict == Verdict::Pass { "" } else { "\n" };
            let _ = writeln!(out, "{gap}{}", finding_text(finding, words));
        }
        if !self.cures.is_empty() {
            let _ = writeln!(out, "\n{}", words.say("route-cures", &[]));
        }
        for cure in &self.cures {
            let assumed = if cure.assumed { words.say("route-cure-assumed", &[]) } else { String::new() };
            let radius = mm(cure.min_inside_radius_mm, "route-straight");
            let line = format!(
                "  {}: {} {} {assumed}",
                verdict(cure.verdict, words),
                cure.what,
                words.say("route-cure-radius", &[("radius", &radius)])
            );
            let _ = writeln!(out, "{}", wrapped(&line, 4));
        }
        let _ = writeln!(out, "\n{}", wrapped(&words.say("sheet-maker-first", &[]), 0));
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}
