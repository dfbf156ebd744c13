//! What stands on a label in words, by importance.

use crate::Weight;
use hosewright_core::spec::{EndSpec, Gender, Role};
use hosewright_core::tag::{Proof, TagContent};
use hosewright_words::{Pressure, Words, pressure};

/// A fact of a label.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fact {
    /// Which hose.
    Hose,
    /// Highest pressure of the assembly.
    Pressure,
    /// That it was proved.
    Proved,
    /// That it was not proved.
    NotProved,
    /// That the hose had a label before.
    Reprint,
    /// What the place or the cover is for, such as non-conductive.
    Duty,
    /// Overall length and turn.
    Length,
    /// An end.
    End,
    /// Date of assembly.
    Made,
    /// An adapter and its rating.
    Adapter,
    /// Version of the tables it was checked against.
    Catalogue,
    /// That the maker's instructions come first.
    Caution,
}

/// A fact in words.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Line {
    pub(super) fact: Fact,
    pub(super) text: String,
    pub(super) weight: Weight,
}

/// All facts of a tag, the most important first.
pub(super) fn lines(tag: &TagContent, reprint: bool, words: &Words) -> Vec<Line> {
    let mut lines = Vec::new();
    let mut add = |fact, weight, text| lines.push(Line { fact, text, weight });
    if let Some(hose) = &tag.spec.hose {
        add(Fact::Hose, Weight::Bold, format!("{} {} DN{}", hose.standard, hose.kind, hose.dn));
    }
    match tag.pressure_bar {
        Some(bar) => {
            let pressure = pressure(bar.get(), Pressure::Bar);
            add(Fact::Pressure, Weight::Bold, words.say("label-pressure", &[("pressure", &pressure)]));
        }
        None => add(Fact::Pressure, Weight::Bold, words.say("label-pressure-unknown", &[])),
    }
    match tag.proof {
        Proof::Proved { pressure_bar } => {
            let proved = pressure(pressure_bar.get(), Pressure::Bar);
            add(Fact::Proved, Weight::Regular, words.say("label-proved", &[("pressure", &proved)]));
        }
        Proof::NotProved => add(Fact::NotProved, Weight::Bold, words.say("label-not-proved", &[])),
        Proof::NoRig => add(Fact::NotProved, Weight::Bold, words.say("label-no-rig", &[])),
    }
    if reprint {
        add(Fact::Reprint, Weight::Bold, words.say("label-reprint", &[]));
    }
    for duty in duties(tag, words) {
        add(Fact::Duty, Weight::Bold, duty);
    }
    if let Some(overall) = tag.spec.overall_length_mm {
        let overall = words.length(overall.get(), 1);
        add(
            Fact::Length,
            Weight::Regular,
            match tag.spec.turn_deg {
                Some(turn) => {
                    let turn = words.number(turn.get(), 1);
                    words.say("label-length-and-turn", &[("length", &overall), ("turn", &turn)])
                }
                None => words.say("label-length", &[("length", &overall)]),
            },
        );
    }
    for end in &tag.spec.ends {
        add(Fact::End, Weight::Regular, end_words(end, words));
    }
    if let Some(made) = tag.assembled {
        add(Fact::Made, Weight::Regular, words.say("label-made", &[("date", &made.to_string())]));
    }
    for adapter in &tag.spec.adapters {
        add(Fact::Adapter, Weight::Regular, words.say("label-adapter", &[("name", &adapter.name)]));
    }
    add(Fact::Catalogue, Weight::Regular, words.say("label-catalogue", &[("version", &tag.catalogue)]));
    add(Fact::Caution, Weight::Regular, words.say("label-caution", &[]));
    lines
}

/// Duties of place and cover, each once.
fn duties(tag: &TagContent, words: &Words) -> Vec<String> {
    use hosewright_core::spec::{Cover, Duty};
    let of_cover = match tag.spec.cover {
        Some(Cover::NonConductive) => Some(Duty::NonConductive),
        Some(Cover::FlameResistant) => Some(Duty::FlameResistant),
        Some(Cover::Antistatic) => Some(Duty::Antistatic),
        Some(Cover::Plain) | None => None,
    };
    let has = |duty| tag.duties.contains(&duty) || of_cover == Some(duty);
    [
        (Duty::NonConductive, "label-non-conductive"),
        (Duty::FlameResistant, "label-flame-resistant"),
        (Duty::Antistatic, "label-antistatic"),
    ]
    .into_iter()
    .filter(|(duty, _)| has(*duty))
    .map(|(_, id)| words.say(id, &[]))
    .collect()
}

fn end_words(end: &EndSpec, words: &Words) -> String {
    let role = match end.role {
        Role::A => "A",
        Role::B => "B",
    };
    let gender = match end.gender {
        Some(Gender::Male) => words.say("label-male", &[]),
        Some(Gender::Female) => words.say("label-female", &[]),
        None => String::new(),
    };
    let form = end.form.as_deref().map_or(String::new(), |form| words.form(form));
    let parts = [role, &end.family, &end.size, &gender, &form];
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" ")
}
