//! The other parts of a certificate.

use super::{Certificate, Section};
use crate::sheet::{end_name, key};
use hosewright_core::check::Verdict;
use hosewright_core::make::EndSettings;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::Proof;
use hosewright_core::spec::{Role, Service};
use hosewright_papers::sheet::Body;
use hosewright_store::Stay;
use hosewright_words::{Pressure, Say, Words, pressure};

type Facts = Vec<(String, String)>;

/// What it is and what it was checked for.
pub(super) fn facts(of: &Certificate, words: &Words) -> Facts {
    let made = &of.assembly;
    let say = |id: &str| words.say(id, &[]);
    let bar = |value: f64| pressure(value, Pressure::Bar);
    let hose = made.spec.hose.as_ref().map(|hose| format!("{} {} DN{}", hose.standard, hose.kind, hose.dn));
    let end = |role| {
        let end = made.spec.end(role)?;
        let name = end_name(end, words);
        Some(match end.rating_bar {
            Some(own) => words.say("certificate-own-rating", &[("end", &name), ("rating", &bar(own.get()))]),
            None => name,
        })
    };
    let verdict = made.verdict.map(|verdict| words.say(&format!("verdict-{}", key(&verdict)), &[]));
    // A pass says nothing without what was asked for.
    let unasked = made.service == Service::default();
    let verdict = verdict.map(|verdict| {
        if unasked { words.say("certificate-verdict-unasked", &[("verdict", &verdict)]) } else { verdict }
    });
    let facts = [
        ("certificate-code", Some(made.code.to_string())),
        ("sheet-hose", hose),
        ("sheet-end-a", end(Role::A)),
        ("sheet-end-b", end(Role::B)),
        ("sheet-rating", made.pressure_bar.map(|rating| bar(rating.get()))),
        ("certificate-verdict", verdict),
        ("certificate-working", made.service.working_pressure_bar.map(|asked| bar(asked.get()))),
        ("certificate-relief", made.service.relief_bar.map(|asked| bar(asked.get()))),
        ("certificate-fluid", made.service.fluid.clone()),
        ("certificate-hose-made", made.hose_made.map(|day| day.to_string())),
        ("certificate-assembled", made.assembled.map(|day| day.to_string())),
    ];
    let known =
        |(name, value): (&str, Option<String>)| (say(name), value.unwrap_or_else(|| say("sheet-not-known")));
    facts.into_iter().map(known).collect()
}

/// What keeps it from a pass, where anything does. A service that is not on record was said with the verdict.
pub(super) fn found(of: &Certificate, words: &Words) -> Option<Section> {
    let verdict = of.assembly.verdict.filter(|_| of.assembly.service != Service::default())?;
    let said = |verdict: Verdict| words.say(&format!("verdict-{}", key(&verdict)), &[]);
    let mut told: Vec<String> = match &of.found {
        Some(found) => {
            found.iter().map(|finding| format!("{}: {}", said(finding.verdict), finding.why)).collect()
        }
        None => vec![words.say("certificate-found-none", &[])],
    };
    // What was read of the old hose is not on record, nor are the tables of that day.
    if verdict != Verdict::Pass {
        let catalogue = &of.assembly.catalogue;
        let values: [(&str, &dyn Say); 2] = [("verdict", &said(verdict)), ("catalogue", catalogue)];
        told.push(words.say("certificate-found-more", &values));
    }
    let heading = words.say("certificate-found", &[]);
    (!told.is_empty()).then_some(Section { heading, body: Body::Text(told) })
}

/// What was asked for and what was measured.
pub(super) fn lengths(of: &Certificate, words: &Words) -> Facts {
    let made = &of.assembly;
    let say = |id: &str| words.say(id, &[]);
    let finished = made.bench.as_ref().map(|bench| bench.finished).unwrap_or_default();
    let measured = |value: Option<String>| value.unwrap_or_else(|| say("certificate-not-measured"));
    let mm = |value: Option<Millimetres>| value.map(|value| words.length(value.get(), 1));
    let asked = mm(made.spec.overall_length_mm).unwrap_or_else(|| say("sheet-not-known"));
    let mut facts = vec![(say("certificate-asked"), asked)];
    if let Some(held) = &of.tolerance {
        let [minus, plus] = held.mm;
        let tolerance = format!("{} / {} mm", words.signed(plus, 1), words.signed(minus, 1));
        let from = held.from.source.as_str();
        let said = words.say("sheet-tolerance-from", &[("tolerance", &tolerance), ("source", &from)]);
        facts.push((say("sheet-tolerance"), said));
    }
    facts.push((say("certificate-finished"), measured(mm(finished.length_mm))));
    if let Some(cut) = made.bench.as_ref().and_then(|bench| bench.cut_length_mm) {
        facts.push((say("certificate-cut"), words.length(cut.get(), 1)));
    }
    if let Some(turn) = made.spec.turn_deg {
        facts.push((say("certificate-turn-asked"), format!("{}\u{b0}", words.number(turn.get(), 1))));
        let turn = finished.turn_deg.map(|turn| format!("{}\u{b0}", words.number(turn.get(), 1)));
        facts.push((say("certificate-finished-turn"), measured(turn)));
    }
    facts
}

/// The settings that were worked to, with their sources.
pub(super) fn settings(of: &Certificate, words: &Words) -> Body {
    let say = |id: &str| words.say(id, &[]);
    let bench = of.assembly.bench.as_ref();
    let end = |role| bench.and_then(|bench| bench.settings.iter().find(|settings| settings.role == role));
    let mm = |value: Option<Millimetres>| value.map(|mm| words.length(mm.get(), 2));
    type Read<'a> = (&'a str, Box<dyn Fn(&EndSettings) -> Option<String> + 'a>);
    let rows: [Read<'_>; 7] = [
        ("sheet-insertion", Box::new(move |end| mm(end.insertion_mm))),
        ("sheet-ferrule", Box::new(|end| end.ferrule.clone())),
        ("sheet-lubricant", Box::new(|end| end.lubricant.clone())),
        ("sheet-die-set", Box::new(|end| end.die_set.clone())),
        ("sheet-crimp", Box::new(move |end| mm(end.crimp_diameter_mm))),
        (
            "sheet-crimp-tolerance",
            Box::new(move |end| mm(end.crimp_tolerance_mm).map(|mm| format!("\u{b1}{mm}"))),
        ),
        ("sheet-settings-source", Box::new(|end| end.source.clone())),
    ];
    let rows = rows.iter().map(|(name, read)| {
        let cells =
            [Role::A, Role::B].map(|role| end(role).and_then(read).unwrap_or_else(|| say("sheet-not-known")));
        std::iter::once(say(name)).chain(cells).collect()
    });
    let head = vec![String::new(), say("sheet-end-a"), say("sheet-end-b")];
    Body::Table { head, rows: rows.collect() }
}

/// Whether it was proved, and by which gauge.
pub(super) fn proof(of: &Certificate, words: &Words) -> Facts {
    let say = |id: &str| words.say(id, &[]);
    let by = |gauge: &str, calibrated: Option<chrono::NaiveDate>| match calibrated {
        Some(day) => words.say("certificate-calibrated", &[("gauge", &gauge), ("day", &day.to_string())]),
        None => words.say("certificate-undated", &[("gauge", &gauge)]),
    };
    match &of.assembly.proof {
        Proof::Proved { pressure_bar, hold_s, gauge, gauge_calibrated } => {
            let held = pressure(pressure_bar.get(), Pressure::Bar);
            let said =
                words.say("certificate-proved", &[("pressure", &held), ("hold", &words.number(*hold_s, 0))]);
            vec![(say("certificate-proof"), said), (say("certificate-gauge"), by(gauge, *gauge_calibrated))]
        }
        Proof::Failed { what, .. } => {
            vec![(say("certificate-proof"), say(&format!("certificate-failed-{}", key(what))))]
        }
        Proof::NotProved { why } => {
            vec![(say("certificate-proof"), say(&format!("certificate-not-proved-{}", key(why))))]
        }
    }
}

/// The steps that were ticked, when and by whom.
pub(super) fn steps(of: &Certificate, words: &Words) -> Option<Section> {
    let bench = of.assembly.bench.as_ref().filter(|bench| !bench.steps.is_empty())?;
    let head = ["certificate-step", "certificate-when", "certificate-who"];
    let rows = bench.steps.iter().map(|step| {
        let id = format!("step-{}", step.code);
        let done = if words.has(&id) { words.say(&id, &[]) } else { step.code.clone() };
        let done = match step.role {
            Some(role) => {
                format!("{}: {done}", words.say("sheet-end", &[("end", &format!("{role:?}"))]))
            }
            None => done,
        };
        let who = step.by.and_then(|by| of.names.get(&by)).cloned();
        vec![done, step.at.format("%Y-%m-%d %H:%M").to_string(), who.unwrap_or_default()]
    });
    Some(Section {
        heading: words.say("certificate-steps", &[]),
        body: Body::Table { head: head.map(|id| words.say(id, &[])).to_vec(), rows: rows.collect() },
    })
}

/// Where it sat and sits, and what was there before it.
pub(super) fn stays(of: &Certificate, words: &Words) -> Option<Section> {
    if of.stays.is_empty() {
        return None;
    }
    let mut facts = Vec::new();
    for stay in &of.stays {
        facts.extend(stayed(stay, words));
    }
    if let Some(before) = &of.before {
        let days = [before.on_date, before.off_date]
            .map(|day| day.map_or_else(|| "?".to_owned(), |day| day.to_string()));
        let mut said = format!("{}, {} \u{2013} {}", before.code, days[0], days[1]);
        for more in [&before.cause, &before.note].into_iter().flatten() {
            said = format!("{said}; {more}");
        }
        facts.push((words.say("certificate-before", &[]), said));
    }
    Some(Section { heading: words.say("certificate-where", &[]), body: Body::Facts(facts) })
}

fn stayed(stay: &Stay, words: &Words) -> Facts {
    let say = |id: &str| words.say(id, &[]);
    let number_of = stay.at.number.map(|number| number.to_string());
    let parts = [&stay.at.site_name, &stay.at.machine_name, &number_of, &stay.at.place_name];
    let place = parts.into_iter().flatten().map(String::as_str).collect::<Vec<_>>().join(", ");
    let facts = [
        ("certificate-place-name", Some(place)),
        ("certificate-fitted", stay.on_date.map(|day| day.to_string())),
        ("certificate-hours", stay.on_hours.map(|hours| words.number(hours, 1))),
        ("certificate-off", stay.off_date.map(|day| day.to_string())),
    ];
    facts.into_iter().filter_map(|(name, value)| Some((say(name), value?))).collect()
}
