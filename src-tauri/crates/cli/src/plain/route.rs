//! `route` in plain text.

use super::Plain;
use super::check::verdict;
use super::text::{columns, wrapped};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Millimetres;
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
