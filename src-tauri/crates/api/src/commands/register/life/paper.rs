//! How long hoses last, as a sheet.

use super::{LivesOf, LivesQuestion, PlaceLives, lives};
use crate::commands::File;
use crate::commands::make::{PaperKind, PaperSize};
use crate::commands::paper::file;
use crate::{Api, ApiError, PROGRAM};
use hosewright_core::life::{Expected, LeastCost};
use hosewright_papers::LivesDrawn;
use hosewright_papers::sheet::{Body, Section, Sheet};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The lives of hoses on paper.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LivesPaper {
    /// What is asked of them.
    #[serde(default)]
    pub lives: LivesQuestion,
    /// Size of the paper.
    pub paper: PaperSize,
    /// Kind of file.
    pub kind: PaperKind,
}

/// Width of a curve on the sheet, in mm.
const DRAWN_MM: f64 = 170.0;

/// How long hoses last here, as a sheet with the curves.
///
/// # Errors
/// As [`super::life`]; the sheet can not be written.
pub fn paper(api: &mut Api, asked: LivesPaper, _: &[u8]) -> Result<File, ApiError> {
    let lives = lives(api, asked.lives)?;
    let words = &api.words;
    let end = lives.groups.iter().map(|group| group.longest).fold(1.0, f64::max).ceil();
    let mut sections = vec![Section {
        heading: String::new(),
        body: Body::Text(vec![words.say("lives-heading", &[("on", &lives.on.to_string())])]),
    }];
    for group in lives.groups.iter().filter(|group| group.life.unfitted.is_none()) {
        sections.extend(of_group(group, end, words));
    }
    let few: Vec<(String, String)> = lives
        .groups
        .iter()
        .filter(|group| group.life.unfitted.is_some())
        .map(|group| (group.of.named(words), count(group, words)))
        .collect();
    if !few.is_empty() {
        sections.push(Section { heading: words.say("lives-few", &[]), body: Body::Facts(few) });
    }
    if !lives.places.is_empty() {
        let heading = words.say("lives-places", &[("count", &lives.places_looked_at)]);
        sections.push(Section { heading, body: places(&lives.places, words) });
    }
    let limits = words.say("lives-limits", &[]);
    sections.push(Section { heading: String::new(), body: Body::Text(vec![limits]) });
    let catalogue = api.catalogue.version.clone();
    let sheet = Sheet {
        title: words.say("lives-title", &[]),
        subject: lives.on.to_string(),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &catalogue)]),
    };
    file(api, "lives", &sheet, &lives, asked.paper, asked.kind)
}

fn of_group(group: &LivesOf, end: f64, words: &Words) -> [Section; 2] {
    let life = &group.life;
    let drawn = LivesDrawn {
        steps: life.survival.clone(),
        bounds: life.survival_ci95.clone(),
        fitted: life.fitted.iter().map(|point| [point.time, point.survival]).collect(),
        longest: group.longest,
        end,
        unit: words.say("lives-years", &[]),
    };
    let heading = format!("{}: {}", group.of.named(words), count(group, words));
    [
        Section { heading, body: Body::Drawing { drawing: drawn.drawing(DRAWN_MM), said: String::new() } },
        Section { heading: String::new(), body: Body::Facts(facts(group, words)) },
    ]
}

fn facts(group: &LivesOf, words: &Words) -> Vec<(String, String)> {
    let life = &group.life;
    let side = |bound: Option<f64>| bound.map_or_else(|| "?".to_owned(), |bound| words.number(bound, 1));
    let span = |value: Option<f64>, [low, high]: [Option<f64>; 2]| {
        format!("{} ({} \u{2013} {})", side(value), side(low), side(high))
    };
    let mut facts = vec![
        (words.say("life-b10", &[]), span(life.b10, life.b10_ci95)),
        (words.say("life-shape", &[]), span(life.shape, life.shape_ci95)),
        (words.say("life-scale", &[]), span(life.scale, life.scale_ci95)),
    ];
    if let Some(next) = &group.expected {
        facts.push((words.say("lives-next", &[]), expected(next, words)));
    }
    if let Some(LeastCost { age: Some(age), age_ci95, ratio, .. }) = &group.least_cost {
        let heading = words.say("lives-least", &[("ratio", &words.number(*ratio, 1))]);
        facts.push((heading, span(Some(*age), *age_ci95)));
    }
    facts
}

fn expected(next: &Expected, words: &Words) -> String {
    let [low, high] = next.ci95;
    format!("{} ({low} \u{2013} {high})", words.number(next.failures, 1))
}

fn places(told: &[PlaceLives], words: &Words) -> Body {
    let rows = told.iter().map(|place| {
        let names = [&place.at.site_name, &place.at.machine_name, &place.at.place_name];
        let named: Vec<&str> = names.into_iter().flatten().map(String::as_str).collect();
        let excess = &place.excess;
        let [low, high] = excess.ratio_ci95.map(|bound| words.number(bound, 1));
        let out = if place.stands_out { "lives-place-stands-out" } else { "lives-place-chance" };
        vec![
            named.join(", "),
            words.say(
                "lives-place-seen",
                &[("seen", &excess.seen), ("expected", &words.number(excess.expected, 1))],
            ),
            format!("{} ({low} \u{2013} {high})", words.number(excess.ratio, 1)),
            words.say(out, &[]),
        ]
    });
    let head = ["lives-place", "lives-place-failures", "lives-place-times", "lives-place-verdict"];
    Body::Table { head: head.map(|id| words.say(id, &[])).to_vec(), rows: rows.collect() }
}

fn count(group: &LivesOf, words: &Words) -> String {
    let life = &group.life;
    words.say("life-counts", &[("hoses", &life.n), ("failures", &life.failures)])
}
