//! A build sheet as a paper: what is cut, pushed on, crimped, proved and fitted, in that order.

use crate::PROGRAM;
use hosewright_core::catalogue::TorqueMethod;
use hosewright_core::make::{BuildSheet, Cleanliness, EndSettings, Filled, Part, SheetStep, TorqueValue};
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::{EndSpec, Role};
use hosewright_papers::AssemblyDrawn;
use hosewright_papers::sheet::{Body, Paper, Section, Sheet, Step};
use hosewright_words::{Pressure, Words, pressure};

/// The sheet's content in the reader's language. `subject` is what it is about: a code or a place.
pub fn sheet(build: &BuildSheet, subject: &str, words: &Words) -> Sheet {
    let say = |id: &str| words.say(id, &[]);
    let section = |heading: &str, body: Body| Section { heading: say(heading), body };
    let mut sections = vec![
        section("sheet-first", Body::Text(vec![say("sheet-maker-first")])),
        section("sheet-parts", Body::Facts(parts(build, words))),
        section("certificate-drawing", drawing(build, words)),
        section("sheet-lengths", Body::Facts(lengths(build, words))),
        section("sheet-settings", settings(build, words)),
    ];
    if !build.filled.is_empty() {
        let filled = build.filled.iter().map(|from| filled(from, words)).collect();
        sections.push(Section { heading: String::new(), body: Body::Text(filled) });
    }
    if !build.missing.is_empty() {
        sections.push(section("sheet-missing", Body::Text(missing(build, words))));
    }
    if !build.cautions.is_empty() {
        let cautions =
            build.cautions.iter().map(|finding| format!("{} {}", finding.why, finding.cure)).collect();
        sections.push(section("sheet-cautions", Body::Text(cautions)));
    }
    sections
        .push(section("sheet-steps", Body::Steps(build.steps.iter().map(|at| step(at, words)).collect())));
    if !build.cleanliness.is_empty() {
        let rules = build.cleanliness.iter().map(|rule| clean(rule, words)).collect();
        sections.push(section("sheet-cleanliness", Body::Text(rules)));
    }
    sections.extend(tighten(build, words));
    Sheet {
        title: say("sheet-title"),
        subject: subject.to_owned(),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &build.catalogue)]),
    }
}

/// A rule of cleanliness: what it asks, for what, and where it stands.
fn clean(rule: &Cleanliness, words: &Words) -> String {
    let asks = words.say(&format!("asks-{}", rule.rule), &[("code", &rule.code), ("asks", &rule.asks)]);
    let basis = words.say(&format!("basis-{}", key(&rule.basis)), &[]);
    format!("{asks} ({}; {basis})", rule.source)
}

/// Width of a drawing: what both papers leave between their margins.
pub(crate) const DRAWN_MM: f64 = Paper::A4.room_mm();

fn drawing(build: &BuildSheet, words: &Words) -> Body {
    let end = |role| {
        build.parts.iter().find_map(|part| match part {
            Part::End { end } if end.role == role => Some(drawn_end(end, words)),
            _ => None,
        })
    };
    let [a, b] = [Role::A, Role::B].map(|role| end(role).unwrap_or_default());
    let drawn = AssemblyDrawn {
        ends: [a, b],
        overall: words.length(build.cut.overall_length_mm.get(), 1),
        cut: build
            .cut
            .cut_length_mm
            .map(|cut| format!("{} {}", words.say("sheet-cut-length", &[]), words.length(cut.get(), 1))),
        turn_deg: build.turn.as_ref().map(|turn| turn.turn_deg.get()),
    };
    Body::Drawing { drawing: drawn.drawing(DRAWN_MM), said: String::new() }
}

/// The name of an end as it stands on a drawing, and its angle.
pub(crate) fn drawn_end(end: &EndSpec, words: &Words) -> (String, f64) {
    let form = end.form.as_deref().unwrap_or_default();
    let angle = form.trim_start_matches(|c: char| !c.is_ascii_digit()).parse().unwrap_or(0.0);
    (format!("{:?}  {}", end.role, end_name(end, words)), angle)
}

fn parts(build: &BuildSheet, words: &Words) -> Vec<(String, String)> {
    build
        .parts
        .iter()
        .map(|part| match part {
            Part::Hose { hose, cover } => {
                let cover = cover.map_or_else(String::new, |cover| {
                    format!(", {}", words.say(&format!("cover-{}", key(&cover)), &[]))
                });
                (
                    words.say("sheet-hose", &[]),
                    format!("{} {} DN{}{cover}", hose.standard, hose.kind, hose.dn),
                )
            }
            Part::End { end } => (role(end.role, words), end_name(end, words)),
            Part::Adapter { adapter } => {
                let rated = adapter
                    .rating_bar
                    .map_or_else(String::new, |rated| format!(", {}", pressure(rated.get(), Pressure::Bar)));
                (words.say("sheet-adapter", &[]), format!("{}{rated}", adapter.name))
            }
        })
        .collect()
}

/// The name of a choice in the contract, such as `non-conductive`: the key of its words.
pub fn key<T: serde::Serialize>(value: &T) -> String {
    serde_json::to_value(value).ok().and_then(|value| value.as_str().map(str::to_owned)).unwrap_or_default()
}

fn role(role: Role, words: &Words) -> String {
    words.say("sheet-end", &[("end", &format!("{role:?}"))])
}

/// An end as people name it: family, size, half, form.
pub fn end_name(end: &EndSpec, words: &Words) -> String {
    let mut name = format!("{} {}", end.family, end.size);
    if let Some(gender) = end.gender {
        name += &format!(", {}", words.say(&format!("gender-{}", key(&gender)), &[]));
    }
    if let Some(form) = &end.form {
        name += &format!(", {}", words.form(form));
    }
    if let Some(drop) = end.drop_mm {
        name += &format!(", {}", words.say("sheet-drop", &[("drop", &words.length(drop.get(), 1))]));
    }
    name
}

fn lengths(build: &BuildSheet, words: &Words) -> Vec<(String, String)> {
    let cut = &build.cut;
    let mm = |value: Option<Millimetres>| {
        value.map_or_else(|| words.say("sheet-not-known", &[]), |value| words.length(value.get(), 1))
    };
    let mut facts = vec![
        (words.say("sheet-cut-length", &[]), mm(cut.cut_length_mm)),
        (words.say("sheet-aim", &[]), format!("\u{b1}{}", words.length(cut.aim.value, 1))),
        (words.say("sheet-cutoff", &[("end", &"A")]), mm(cut.cutoff_a_mm)),
        (words.say("sheet-cutoff", &[("end", &"B")]), mm(cut.cutoff_b_mm)),
        (words.say("sheet-overall", &[]), words.length(cut.overall_length_mm.get(), 1)),
    ];
    for (name, value) in [("sheet-kerf", cut.kerf_mm), ("sheet-off-reel", cut.off_reel_mm)] {
        if let Some(value) = value {
            facts.push((words.say(name, &[]), words.length(value.get(), 1)));
        }
    }
    if let Some([minus, plus]) = cut.length_tolerance_mm {
        let tolerance = format!("{} / {} mm", words.signed(plus, 1), words.signed(minus, 1));
        let said = match &cut.length_source {
            Some(from) => words
                .say("sheet-tolerance-from", &[("tolerance", &tolerance), ("source", &from.source.as_str())]),
            None => tolerance,
        };
        facts.push((words.say("sheet-tolerance", &[]), said));
    }
    if let Some(turn) = &build.turn {
        let tolerance = turn
            .tolerance
            .as_ref()
            .map_or_else(String::new, |figure| format!(" \u{b1}{}\u{b0}", words.number(figure.value, 0)));
        facts.push((
            words.say("sheet-turn", &[]),
            format!(
                "{}\u{b0}{tolerance}. {}",
                words.number(turn.turn_deg.get(), 0),
                words.say("sheet-turn-how", &[])
            ),
        ));
    }
    let proof = &build.proof;
    facts.push((words.say("sheet-rating", &[]), pressure(proof.working_pressure_bar.get(), Pressure::Bar)));
    facts.push((
        words.say("sheet-proof", &[]),
        words.say(
            "sheet-proof-at",
            &[
                ("pressure", &pressure(proof.proof_pressure_bar.get(), Pressure::Bar)),
                ("from", &words.number(proof.hold_from.value, 0)),
                ("to", &words.number(proof.hold_to.value, 0)),
            ],
        ),
    ));
    facts
}

fn settings(build: &BuildSheet, words: &Words) -> Body {
    let say = |id: &str| words.say(id, &[]);
    let head = vec![String::new(), say("sheet-end-a"), say("sheet-end-b")];
    let unknown = say("sheet-not-known");
    let length_of = |value: Option<Millimetres>| value.map(|mm| words.length(mm.get(), 2));
    type Read<'a> = (&'a str, Box<dyn Fn(&EndSettings) -> Option<String> + 'a>);
    let rows: [Read<'_>; 7] = [
        ("sheet-insertion", Box::new(move |end| length_of(end.insertion_mm))),
        ("sheet-ferrule", Box::new(|end| end.ferrule.clone())),
        ("sheet-lubricant", Box::new(|end| end.lubricant.clone())),
        ("sheet-die-set", Box::new(|end| end.die_set.clone())),
        ("sheet-crimp", Box::new(move |end| length_of(end.crimp_diameter_mm))),
        (
            "sheet-crimp-tolerance",
            Box::new(move |end| length_of(end.crimp_tolerance_mm).map(|mm| format!("\u{b1}{mm}"))),
        ),
        ("sheet-settings-source", Box::new(|end| end.source.clone())),
    ];
    let rows = rows.iter().map(|(name, read)| {
        let cells = build.settings.iter().map(|end| read(end).unwrap_or_else(|| unknown.clone()));
        std::iter::once(say(name)).chain(cells).collect()
    });
    Body::Table { head, rows: rows.collect() }
}

/// Whose figures an end is filled from.
fn filled(from: &Filled, words: &Words) -> String {
    let end = format!("{:?}", from.role);
    words.say("sheet-filled", &[("end", &end), ("supplier", &from.supplier), ("from", &from.from)])
}

fn missing(build: &BuildSheet, words: &Words) -> Vec<String> {
    build
        .missing
        .iter()
        .map(|missing| {
            let what = words.say(&format!("missing-{}", missing.code), &[]);
            match missing.role {
                Some(of) => format!("{}: {what}", role(of, words)),
                None => what,
            }
        })
        .collect()
}

/// A step with its cautions.
pub(crate) fn step(at: &SheetStep, words: &Words) -> Step {
    let mut text = words.say(&format!("step-{}", at.code), &[]);
    if let Some(of) = at.role {
        text = format!("{}: {text}", role(of, words));
    }
    Step { text, cautions: at.cautions.iter().map(|caution| caution.caution.clone()).collect() }
}

/// The figures of each end under its own heading: they hold under their own condition and are no range.
fn tighten(build: &BuildSheet, words: &Words) -> Vec<Section> {
    let known: Vec<_> = build.tighten.iter().filter(|end| !end.values.is_empty()).collect();
    if known.is_empty() {
        return Vec::new();
    }
    let how = Body::Text(vec![words.say("sheet-tighten-how", &[])]);
    let mut sections = vec![Section { heading: words.say("sheet-tighten", &[]), body: how }];
    sections.extend(known.iter().map(|end| {
        let head = ["sheet-column-value", "sheet-column-condition", "sheet-column-source"];
        let head = head.iter().map(|id| words.say(id, &[])).collect();
        let rows = end.values.iter().map(|value| torque(value, words)).collect();
        Section {
            heading: words.say("sheet-tighten-end", &[("end", &format!("{:?}", end.role))]),
            body: Body::Table { head, rows },
        }
    }));
    sections
}

fn torque(value: &TorqueValue, words: &Words) -> Vec<String> {
    let upper = match value.method {
        TorqueMethod::FlatsFromFingerTight => {
            words.say("sheet-flats", &[("figure", &words.number(value.max, 1)), ("count", &value.max)])
        }
        TorqueMethod::Torque | TorqueMethod::Angle => words.quantity(value.max, value.unit),
    };
    let figure = match value.min {
        Some(min) if min < value.max => format!("{} \u{2013} {upper}", words.number(min, 1)),
        _ => upper,
    };
    let basis = words.say(&format!("basis-{}", key(&value.basis)), &[]);
    vec![figure, value.condition.clone(), format!("{} ({basis})", value.source)]
}
