//! The crimps on a certificate: readings, limits and the rule they are held by.

use super::{Certificate, Section};
use crate::sheet::key;
use hosewright_core::crimp::{Crimped, DIRECTIONS};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::CrimpDone;
use hosewright_papers::sheet::Body;
use hosewright_words::Words;

/// A table for each end, with what it is held against beneath.
pub(super) fn crimps(of: &Certificate, words: &Words) -> Vec<Section> {
    let done = of.assembly.bench.iter().flat_map(|bench| &bench.crimps);
    let mut sections: Vec<Section> = done
        .filter_map(|done| Some((done, done.judged().ok()?)))
        .flat_map(|(done, judged)| {
            let heading = words.say("certificate-crimp", &[("end", &format!("{:?}", done.role))]);
            let said = std::iter::once(limits(done, &judged, words)).chain(retaken(done, words));
            [
                Section { heading, body: table(&judged, words) },
                Section { heading: String::new(), body: Body::Text(said.collect()) },
            ]
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

/// What was read before these readings: a crimp that was read until it pleased looks like any other else.
fn retaken(done: &CrimpDone, words: &Words) -> Option<String> {
    let read = done.retaken_mm.iter().map(|mm| words.fixed(mm.get(), 3));
    let read = read.collect::<Vec<_>>().join("; ");
    (!read.is_empty()).then(|| words.say("certificate-retaken", &[("readings", &read)]))
}

fn limits(done: &CrimpDone, judged: &Crimped, words: &Words) -> String {
    let mm =
        |value: Option<Millimetres>| value.map_or_else(|| "?".to_owned(), |mm| words.length(mm.get(), 3));
    let limits = judged.limits;
    let instrument = match done.instrument.name.trim() {
        "" => words.say("certificate-instrument", &[]),
        name => name.to_owned(),
    };
    words.say(
        "certificate-crimp-limits",
        &[
            ("low", &mm(limits.map(|limits| limits.low_mm))),
            ("high", &mm(limits.map(|limits| limits.high_mm))),
            ("accept-low", &mm(limits.and_then(|limits| limits.accept_low_mm))),
            ("accept-high", &mm(limits.and_then(|limits| limits.accept_high_mm))),
            ("instrument", &instrument),
            ("expanded", &mm(Some(Millimetres(done.instrument.expanded_mm())))),
            ("source", &judged.source),
            ("count", &judged.count),
            ("mean", &mm(judged.mean_mm)),
            ("spread", &mm(judged.spread_mm)),
            ("verdict", &words.say(&format!("bench-judged-{}", key(&judged.verdict)), &[])),
        ],
    )
}
