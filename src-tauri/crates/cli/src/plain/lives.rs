//! How long the hoses of a register last, in plain text.

use super::Plain;
use super::place::place;
use super::text::{columns, set_in, wrapped};
use hosewright_api::commands::register::{Lives, LivesOf, PlaceLives};
use hosewright_core::life::{Expected, LeastCost};
use hosewright_words::Words;
use std::fmt::Write;

impl Plain for Lives {
    fn plain(&self, words: &Words) -> String {
        let mut out = wrapped(&words.say("lives-heading", &[("on", &self.on.to_string())]), 0);
        out.push('\n');
        for each in &self.groups {
            let _ = writeln!(out, "\n{}\n{}", each.of.named(words), lives_of(each, words));
        }
        if self.groups.is_empty() {
            let _ = writeln!(out, "{}", words.say("lives-none", &[]));
        }
        if let Some(all) = &self.expected {
            let said = expected("lives-expected-all", all, words);
            let _ = writeln!(out, "\n{}", wrapped(&said, 0));
        }
        if self.not_expected > 0 {
            let said = words.say("lives-not-expected", &[("count", &self.not_expected)]);
            let _ = writeln!(out, "{}", wrapped(&said, 0));
        }
        out += &places(&self.places, self.places_looked_at, words);
        for (id, count) in [("lives-left-out", self.left_out), ("lives-ended-before", self.ended_before)] {
            if count > 0 {
                let _ = write!(out, "\n{}", wrapped(&words.say(id, &[("count", &count)]), 0));
            }
        }
        out
    }
}

fn lives_of(of: &LivesOf, words: &Words) -> String {
    let mut lines: Vec<String> =
        of.life.plain(words).lines().map(|line| line.trim_start().to_owned()).collect();
    if of.life.to_tell.more > 0 {
        lines.push(to_tell(of, words));
    }
    if let Some(next) = &of.expected {
        lines.push(expected("lives-expected", next, words));
    }
    if let Some(cost) = &of.least_cost {
        lines.push(least_cost(cost, words));
    }
    lines.iter().map(|line| set_in(line, 2, 2)).collect::<Vec<_>>().join("\n")
}

/// How many failures more it takes, and how long that may be.
fn to_tell(of: &LivesOf, words: &Words) -> String {
    let more =
        words.say("lives-to-tell", &[("more", &of.life.to_tell.more), ("all", &of.life.to_tell.failures)]);
    match of.years_to_tell {
        Some(years) => {
            format!("{more} {}", words.say("lives-to-tell-years", &[("years", &words.number(years, 1))]))
        }
        None => more,
    }
}

fn expected(id: &str, expected: &Expected, words: &Words) -> String {
    let [low, high] = expected.ci95;
    words.say(id, &[("failures", &words.number(expected.failures, 1)), ("low", &low), ("high", &high)])
}

fn least_cost(cost: &LeastCost, words: &Words) -> String {
    let years =
        |age: Option<f64>| age.map_or_else(|| words.say("lives-waiting", &[]), |age| words.number(age, 1));
    let ratio = words.number(cost.ratio, 1);
    let Some(age) = cost.age else { return words.say("lives-waiting-pays", &[("ratio", &ratio)]) };
    let [low, high] = cost.age_ci95;
    let part = words.number(cost.cost * 100.0, 0);
    words.say(
        "lives-least-cost",
        &[
            ("age", &words.number(age, 1)),
            ("low", &years(low)),
            ("high", &years(high)),
            ("ratio", &ratio),
            ("part", &part),
        ],
    )
}

fn places(told: &[PlaceLives], looked_at: usize, words: &Words) -> String {
    if told.is_empty() {
        return String::new();
    }
    let mut out = format!("\n{}\n", wrapped(&words.say("lives-places", &[("count", &looked_at)]), 0));
    let rows = told.iter().map(|one| {
        let excess = &one.excess;
        let [low, high] = excess.ratio_ci95.map(|bound| words.number(bound, 1));
        let stands_out = if one.stands_out { "lives-place-stands-out" } else { "lives-place-chance" };
        vec![
            format!(
                "  {}",
                words.say(
                    "lives-place-seen",
                    &[("seen", &excess.seen), ("expected", &words.number(excess.expected, 1))]
                )
            ),
            format!("{} ({low} \u{2013} {high})", words.number(excess.ratio, 1)),
            words.say(stands_out, &[]),
            place(&one.at),
        ]
    });
    out += &columns(&rows.collect::<Vec<_>>());
    out
}
