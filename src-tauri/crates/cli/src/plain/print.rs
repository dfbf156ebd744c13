//! `print` in plain text.

use super::Plain;
use super::text::columns;
use hosewright_api::ApiError;
use hosewright_core::print::{Made, Printed};
use hosewright_words::{Pressure, Words, pressure};

/// Candidates that are shown; the JSON answer has all.
const SHOWN: usize = 8;

impl Plain for Printed {
    fn nothing(&self, words: &Words) -> Option<ApiError> {
        let known = self.standard.is_some()
            || self.kind.is_some()
            || self.dn.is_some()
            || self.dash.is_some()
            || self.pressure_bar.is_some()
            || self.made.is_some()
            || self.cover.is_some()
            || !self.candidates.is_empty();
        (!known).then(|| ApiError::nothing("text", words.say("print-nothing", &[("text", &self.unread)])))
    }

    fn plain(&self, words: &Words) -> String {
        let mut rows = Vec::new();
        let mut row = |name: &str, value: Option<String>| {
            if let Some(value) = value {
                rows.push(vec![words.say(name, &[]), value]);
            }
        };
        row("print-standard", self.standard.clone());
        row("print-type", self.kind.clone());
        row("print-size", self.dn.map(|dn| format!("DN{dn}")));
        row("print-dash", self.dash.map(|dash| format!("-{dash}")));
        row("print-pressure", self.pressure_bar.map(|bar| pressure(bar.get(), Pressure::Bar)));
        row("print-made", self.made.map(made));
        let others: Vec<String> = self.made_or.iter().copied().map(made).collect();
        row("print-made-or", Some(others.join(", ")).filter(|others| !others.is_empty()));
        row("print-unread", Some(self.unread.clone()).filter(|unread| !unread.is_empty()));
        let settled = self.kind.is_some() && self.dn.is_some();
        if !settled && !self.candidates.is_empty() {
            rows.push(vec![words.say("print-candidates", &[("count", &self.candidates.len())])]);
            let named = self.candidates.iter().take(SHOWN);
            rows.extend(
                named.map(|hose| {
                    vec![String::new(), format!("{} {} DN{}", hose.standard, hose.kind, hose.dn)]
                }),
            );
        }
        columns(&rows)
    }
}

fn made(made: Made) -> String {
    match (made.quarter, made.month, made.week) {
        (Some(quarter), ..) => format!("{} Q{quarter}", made.year),
        (_, Some(month), _) => format!("{}-{month:02}", made.year),
        (.., Some(week)) => format!("{} W{week:02}", made.year),
        _ => made.year.to_string(),
    }
}
