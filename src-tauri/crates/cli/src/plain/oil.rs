//! `flow`, `surge` and `life` in plain text.

use super::Plain;
use super::check::verdict;
use super::text::{columns, wrapped};
use hosewright_core::check::Verdict;
use hosewright_core::flow::{FlowAnswer, OilAnswer, SurgeAnswer};
use hosewright_core::life::Life;
use hosewright_words::{Words, number};
use std::fmt::Write;

/// Rows of a name, a number and a unit; what is not known is left out.
fn rows(words: &Words, given: &[(&str, Option<f64>, usize, &str)]) -> String {
    let known = given.iter().filter_map(|(name, value, decimals, unit)| {
        value.map(|value| vec![words.say(name, &[]), format!("{} {unit}", number(value, *decimals))])
    });
    columns(&known.collect::<Vec<_>>())
}

impl Plain for FlowAnswer {
    fn plain(&self, words: &Words) -> String {
        let regime = self.regime.map(|regime| hosewright_api::key(&regime)).unwrap_or_default();
        rows(
            words,
            &[
                ("flow-velocity", Some(self.velocity_m_s), 2, "m/s"),
                ("flow-reynolds", self.reynolds, 0, &regime),
                ("flow-friction", self.friction_factor, 4, ""),
                ("flow-drop", self.pressure_drop_bar.map(|bar| bar.get()), 3, "bar"),
                ("flow-viscosity", self.kinematic_viscosity_mm2_s, 2, "mm2/s"),
            ],
        )
    }
}

impl Plain for SurgeAnswer {
    fn plain(&self, words: &Words) -> String {
        rows(
            words,
            &[
                ("surge-rise", self.pressure_rise_bar.map(|bar| bar.get()), 1, "bar"),
                ("surge-speed", self.wave_speed_m_s, 0, "m/s"),
                ("surge-critical", self.critical_time_s.map(|time| time * 1000.0), 2, "ms"),
                ("surge-modulus", Some(self.effective_bulk_modulus_pa / 1e6), 0, "MPa"),
            ],
        )
    }
}

impl Plain for OilAnswer {
    fn plain(&self, words: &Words) -> String {
        let mut out = format!("{}\n{}", verdict(self.verdict, words), self.warm.plain(words));
        let speed = |value: f64| format!("{} m/s", number(value, 1));
        if let Some(usual) = &self.usual {
            let range = format!("{} \u{2013} {}", number(usual.low_m_s, 1), speed(usual.high_m_s));
            out.push_str(&columns(&[vec![words.say("oil-plain-usual", &[]), range]]));
        }
        if let Some(drop) = self.cold.and_then(|cold| cold.pressure_drop_bar) {
            let drop = format!("{} bar", number(drop.get(), 3));
            out.push_str(&columns(&[vec![words.say("oil-plain-cold-drop", &[]), drop]]));
        }
        if let Some(stopped) = &self.surge {
            out.push_str(&stopped.answer.plain(words));
            if let Some(peak) = stopped.peak_bar {
                let peak = format!("{} bar", number(peak.get(), 0));
                out.push_str(&columns(&[vec![words.say("oil-plain-peak", &[]), peak]]));
            }
        }
        for size in &self.sizes {
            let hose = format!("{} {} DN {}", size.standard, size.kind, size.dn);
            let line = words.say("oil-plain-size", &[("hose", &hose), ("speed", &speed(size.velocity_m_s))]);
            let _ = writeln!(out, "{}", wrapped(&format!("{}: {line}", verdict(size.verdict, words)), 2));
        }
        for assumed in &self.assumed {
            let _ = writeln!(out, "{}", wrapped(&assumed.words, 2));
        }
        out
    }

    fn verdict(&self) -> Option<Verdict> {
        Some(self.verdict)
    }
}

impl Plain for Life {
    fn plain(&self, words: &Words) -> String {
        let mut out = words.say("life-counts", &[("hoses", &self.n), ("failures", &self.failures)]);
        out.push('\n');
        if let Some(why) = self.unfitted {
            out.push_str(&words.say(&format!("life-{}", hosewright_api::key(&why)), &[]));
            return out;
        }
        let [shape, scale] = [self.shape_ci95, self.scale_ci95].map(bounds);
        out.push_str(&rows(
            words,
            &[
                ("life-shape", self.shape, 3, &shape),
                ("life-scale", self.scale, 1, &scale),
                ("life-b10", self.b10, 1, ""),
                ("life-mean", self.mean, 1, ""),
            ],
        ));
        out.push_str(&words.say("life-bounds", &[]));
        out
    }
}

fn bounds([low, high]: [Option<f64>; 2]) -> String {
    let side = |value: Option<f64>| value.map_or_else(|| "?".to_owned(), |value| number(value, 2));
    format!("({} \u{2013} {})", side(low), side(high))
}
