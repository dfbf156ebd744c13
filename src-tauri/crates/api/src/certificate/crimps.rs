//! The crimps on a certificate: readings, limits and the rule they are held by.

use super::{Certificate, Section};
use crate::sheet::key;
use hosewright_core::crimp::{Crimped, DIRECTIONS};
use hosewright_core::measure::Instrument;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{CrimpDone, GivenUp};
use hosewright_papers::sheet::Body;
use hosewright_words::Words;

/// A table for each end, with what it is held against beneath.
pub(super) fn crimps(of: &Certificate, words: &Words) -> Vec<Section> {
    let done = of.assembly.bench.iter().flat_map(|bench| &bench.crimps);
    let mut sections: Vec<Section> = done
        .filter_map(|done| Some((done, done.judged().ok()?)))
        .flat_map(|(done, judged)| {
            let heading = words.say("certificate-crimp", &[("end", &format!("{:?}", done.role))]);
            let body = if judged.places.is_empty() {
                Body::Text(vec![words.say("certificate-no-crimp", &[])])
            } else {
                table(&judged, words)
            };
            let limits = (!judged.places.is_empty()).then(|| limits(done, &judged, words));
            let said = limits.into_iter().chain(given_up(done, words)).collect();
            [Section { heading, body }, Section { heading: String::new(), body: Body::Text(said) }]
        })
        .collect();
    if sections.is_empty() {
        let none = words.say("certificate-no-crimp", &[]);
        sections.push(Section { heading: String::new(), body: Body::Text(vec![none]) });
    }
    sections
}

fn table(judged: &Crimped, words: &Words) -> Body {
    let say = |id: &str| words.say(id, &[]);
    let directions = (1..=DIRECTIONS).map(|direction| direction.to_string());
    // With the decimals of a micrometer, so that a column of them can be compared.
    let fixed = |mm: Millimetres| words.fixed(mm.get(), 3);
    let head = std::iter::once(say("certificate-place"))
        .chain(directions)
        .chain([say("certificate-mean"), say("certificate-oval")]);
    let rows = judged.places.iter().map(|place| {
        let reading = |direction: usize| {
            let index = (place.place - 1) * DIRECTIONS + direction;
            let read = judged.readings.iter().find(|reading| reading.index == index);
            read.map_or_else(|| "\u{2013}".to_owned(), |read| fixed(read.mm))
        };
        std::iter::once(say(&format!("certificate-place-{}", place.place)))
            .chain((0..DIRECTIONS).map(reading))
            .chain([fixed(place.mean_mm), fixed(place.oval_mm)])
            .collect()
    });
    Body::Table { head: head.collect(), rows: rows.collect() }
}

/// What was read before the readings that count.
fn given_up(done: &CrimpDone, words: &Words) -> Option<String> {
    let one = |one: &GivenUp| {
        words.say(
            &format!("certificate-given-up-{}", key(&one.why)),
            &[("reading", &words.length(one.mm.get(), 3)), ("instrument", &named(&one.instrument, words))],
        )
    };
    let all = done.given_up.iter().map(one).collect::<Vec<_>>().join("; ");
    (!all.is_empty()).then(|| words.say("certificate-given-up", &[("readings", &all)]))
}

fn named(instrument: &Instrument, words: &Words) -> String {
    match instrument.name.trim() {
        "" => words.say("certificate-instrument", &[]),
        name => name.to_owned(),
    }
}

fn limits(done: &CrimpDone, judged: &Crimped, words: &Words) -> String {
    let mm =
        |value: Option<Millimetres>| value.map_or_else(|| "?".to_owned(), |mm| words.length(mm.get(), 3));
    let limits = judged.limits;
    words.say(
        "certificate-crimp-limits",
        &[
            ("low", &mm(limits.map(|limits| limits.low_mm))),
            ("high", &mm(limits.map(|limits| limits.high_mm))),
            ("accept-low", &mm(limits.and_then(|limits| limits.accept_low_mm))),
            ("accept-high", &mm(limits.and_then(|limits| limits.accept_high_mm))),
            ("instrument", &named(&done.instrument, words)),
            ("expanded", &mm(Some(Millimetres(done.instrument.expanded_mm())))),
            ("source", &judged.source),
            ("count", &judged.count),
            ("mean", &mm(judged.mean_mm)),
            ("spread", &mm(judged.spread_mm)),
            ("verdict", &words.say(&format!("bench-judged-{}", key(&judged.verdict)), &[])),
        ],
    )
}
