//! Every dangerous pair is warned of while nothing parts it, and never once it is parted.

use hosewright_core::catalogue::{Cone, Connection, EndRow, Lookalike};
use hosewright_core::catalogue::{Catalogue, ThreadRule};
use hosewright_core::find::{EndFound, Found, Readings, candidates};
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

fn catalogue() -> &'static Catalogue {
    Catalogue::embedded()
}

fn row<'c>((family, size): (&str, &str)) -> Connection<'c> {
    let mut rows = catalogue().connections();
    rows.find(|row| (row.family(), row.size()) == (family, size)).expect("a row of the tables")
}

/// Everything that can be read of one half, as new and without error.
fn full(row: Connection<'_>, gender: Option<&str>) -> Map<String, Value> {
    let mut read = Map::new();
    let mut put = |key: &str, value: Value| {
        if !value.is_null() {
            read.insert(key.to_owned(), value);
        }
    };
    match row {
        Connection::End(end) => {
            let is_female = gender == Some("female");
            let (band, cone) = match is_female {
                true => (end.female_minor_mm, end.female_cone),
                false => (end.male_major_mm, end.male_cone),
            };
            put("gender", json!(gender));
            if end.thread.is_some() {
                put("thread_diameter_mm", json!(band.map(|band| 0.5 * (band.min + band.max))));
                put("pitch_mm", json!(end.pitch_mm));
                put("taper", json!(end.taper));
                put("flank_angle_deg", json!(end.flank_angle_deg));
            }
            put("seal", json!(end.seals.first()));
            put("seat_included_angle_deg", json!(end.seat_included_angle_deg));
            put("cone", json!(cone));
            put("tube_od_mm", json!(end.tube_od_mm));
            if !is_female {
                put("male_bore_mm", json!(end.male_bore_mm));
            }
        }
        Connection::Flange(flange) => {
            put("head_od_mm", json!(flange.head_od_mm));
            put("head_thickness_mm", json!(flange.head_thickness_mm));
            put("bolt_long_mm", json!(flange.bolt_long_mm));
            put("bolt_short_mm", json!(flange.bolt_short_mm));
        }
    }
    read
}

/// The halves of a row that can be in the hand.
fn halves(row: Connection<'_>) -> Vec<Option<&'static str>> {
    let Connection::End(end) = row else { return vec![None] };
    if end.thread.is_none() {
        return vec![None];
    }
    let male = end.male_major_mm.map(|_| Some("male"));
    male.into_iter().chain(end.female_minor_mm.map(|_| Some("female"))).collect()
}

fn other(gender: Option<&str>) -> Option<&'static str> {
    gender.map(|gender| if gender == "male" { "female" } else { "male" })
}

/// What a reading of `truth` would not tell from the same half of `partner`.
fn alike(truth: Connection<'_>, partner: Connection<'_>, gender: Option<&str>) -> Map<String, Value> {
    let theirs = full(partner, gender);
    let mut read = full(truth, gender);
    read.retain(|key, value| match (value.as_f64(), theirs.get(key)) {
        (Some(mine), Some(their)) => {
            let differ = (mine - their.as_f64().unwrap_or(f64::INFINITY)).abs();
            differ < match key.as_str() {
                "pitch_mm" => 0.002,
                "flank_angle_deg" | "seat_included_angle_deg" => 1.0,
                "male_bore_mm" => 1.0,
                _ => 0.2,
            }
        }
        (None, Some(their)) => value == their,
        (_, None) => false,
    });
    read
}

fn ask(own: &Map<String, Value>, mate: Option<&Map<String, Value>>) -> Found {
    let with_role = |read: &Map<String, Value>| {
        let mut read = read.clone();
        read.insert("role".to_owned(), json!("A"));
        Value::Object(read)
    };
    let mates: Vec<Value> = mate.map(with_role).into_iter().collect();
    let readings: Readings =
        serde_json::from_value(json!({ "ends": [with_role(own)], "mates": mates })).expect("readings");
    candidates(catalogue(), &readings).expect("readings that can be")
}

fn is_warned(end: &EndFound, pair: &Lookalike) -> bool {
    end.lookalikes.iter().any(|found| {
        let of = found.pair.as_ref().expect("the pair in codes");
        (&of.female.family, &of.female.size) == (&pair.female_family, &pair.female_size)
            && (&of.male.family, &of.male.size) == (&pair.male_family, &pair.male_size)
    })
}

/// What the class of an end holds.
fn held(end: &EndFound, (family, size): (&str, &str)) -> f64 {
    let is = |a: &str, b: &str| (a, b) == (family, size);
    let classes = end.candidates.iter().filter(|class| {
        is(&class.family, &class.size) || class.also.iter().any(|name| is(&name.family, &name.size))
    });
    classes.map(|class| class.probability).fold(0.0, f64::max)
}

#[derive(Debug, Default)]
struct Tally {
    asked: usize,
    warned: usize,
    unnamed: usize,
    missed: usize,
    silent: usize,
    silent_with_mate: usize,
    settled: usize,
    settled_with_mate: usize,
    never: Vec<String>,
}

fn rule_of(pair: &Lookalike) -> &'static str {
    match pair.fit.map(|fit| fit.rule) {
        None => "table",
        Some(ThreadRule::SameThread) => "same thread",
        Some(ThreadRule::NearThread) => "near thread",
        Some(ThreadRule::TaperInParallel) => "taper in parallel",
        Some(ThreadRule::ParallelInTaper) => "parallel in taper",
        Some(ThreadRule::TwoTapers) => "two tapers",
    }
}

#[test]
fn pairs() {
    let mut tallies: BTreeMap<&str, Tally> = BTreeMap::new();
    let mut by_mechanism: BTreeMap<String, usize> = BTreeMap::new();
    let mut never: BTreeMap<String, usize> = BTreeMap::new();
    for pair in &catalogue().lookalikes {
        *by_mechanism.entry(format!("{} {:?} {:?}", rule_of(pair), pair.mechanism, pair.danger)).or_default() += 1;
        let female = (pair.female_family.as_str(), pair.female_size.as_str());
        let male = (pair.male_family.as_str(), pair.male_size.as_str());
        if female == male {
            continue;
        }
        let tally = tallies.entry(rule_of(pair)).or_default();
        for (truth, partner) in [(female, male), (male, female)] {
            let (of_truth, of_partner) = (row(truth), row(partner));
            for gender in halves(of_truth) {
                tally.asked += 1;
                let open = ask(&alike(of_truth, of_partner, gender), None);
                let end = &open.ends[0];
                if is_warned(end, pair) {
                    tally.warned += 1;
                } else if held(end, truth).max(held(end, partner)) < 0.01 {
                    tally.unnamed += 1;
                } else {
                    tally.missed += 1;
                    eprintln!("MISSED {truth:?} {partner:?} {gender:?} {:?} {} {}", alike(of_truth, of_partner, gender), held(end, truth), held(end, partner));
                }
                let own = full(of_truth, gender);
                let mate = full(of_truth, other(gender));
                let one = ask(&own, None);
                let both = ask(&own, Some(&mate));
                let (silent, mated) = (!is_warned(&one.ends[0], pair), !is_warned(&both.ends[0], pair));
                tally.silent += usize::from(silent);
                tally.settled += usize::from(one.settled.a);
                tally.silent_with_mate += usize::from(silent || mated);
                tally.settled_with_mate += usize::from(both.settled.a);
                if !silent && !mated {
                    *never.entry(format!("{} | {} {:?} vs {}", rule_of(pair), truth.0, gender, partner.0)).or_default() += 1;
                    tally.never.push(format!("{truth:?} {partner:?}"));
                }
            }
        }
    }
    for (what, count) in &by_mechanism { eprintln!("{count:5} {what}"); }
    for (what, count) in &never { eprintln!("NEVER {count:5} {what}"); }
    for (rule, t) in &tallies {
        eprintln!("{rule}: asked {} warned {} unnamed {} missed {} | silent own {} own+mate {} never {} | settled own {} own+mate {}",
            t.asked, t.warned, t.unnamed, t.missed, t.silent, t.silent_with_mate, t.never.len(), t.settled, t.settled_with_mate);
    }
}

#[test]
fn alarms() {
    const ORDER: [&[&str]; 8] = [&["gender"], &["thread_diameter_mm", "head_od_mm"], &["pitch_mm", "head_thickness_mm"], &["seal", "bolt_long_mm"], &["seat_included_angle_deg", "bolt_short_mm"], &["cone"], &["taper", "flank_angle_deg"], &["tube_od_mm", "male_bore_mm"]];
    let (mut ids, mut false_alarms, mut true_alarms, mut settled) = (0usize, [0usize; 9], [0usize; 9], [0usize; 9]);
    for truth in catalogue().connections() {
        for gender in halves(truth) {
            ids += 1;
            let all = full(truth, gender);
            let mut read = Map::new();
            for (step, keys) in ORDER.iter().enumerate() {
                for key in *keys { if let Some(value) = all.get(*key) { read.insert((*key).to_owned(), value.clone()); } }
                let found = ask(&read, None);
                let name = (truth.family(), truth.size());
                for like in &found.ends[0].lookalikes {
                    let of = like.pair.as_ref().unwrap();
                    let is = (of.female.family.as_str(), of.female.size.as_str()) == name || (of.male.family.as_str(), of.male.size.as_str()) == name;
                    if is { true_alarms[step] += 1 } else { false_alarms[step] += 1 }
                }
                settled[step] += usize::from(found.settled.a);
            }
            let found = ask(&all, Some(&full(truth, other(gender))));
            let name = (truth.family(), truth.size());
            for like in &found.ends[0].lookalikes {
                let of = like.pair.as_ref().unwrap();
                let is = (of.female.family.as_str(), of.female.size.as_str()) == name || (of.male.family.as_str(), of.male.size.as_str()) == name;
                if is { true_alarms[8] += 1 } else { false_alarms[8] += 1 }
            }
            settled[8] += usize::from(found.settled.a);
        }
    }
    let per = |n: [usize; 9]| n.map(|n| (100.0 * n as f64 / ids as f64).round() / 100.0);
    eprintln!("{ids} identifications; false {:?} true {:?} settled {:?}", per(false_alarms), per(true_alarms), per(settled));
    let t = std::time::Instant::now();
    for _ in 0..200 { std::hint::black_box(ask(json!({"gender":"male","thread_diameter_mm":22.1}).as_object().unwrap(), None)); }
    eprintln!("one diameter {:?}", t.elapsed() / 200);
    let t = std::time::Instant::now();
    for _ in 0..200 { std::hint::black_box(ask(json!({"gender":"male"}).as_object().unwrap(), None)); }
    eprintln!("gender {:?}", t.elapsed() / 200);
    let t = std::time::Instant::now();
    for _ in 0..200 { std::hint::black_box(ask(json!({"gender":"male","seat_included_angle_deg":60}).as_object().unwrap(), None)); }
    eprintln!("seat {:?}", t.elapsed() / 200);
    let _ = (None::<EndRow>, None::<Cone>);
}
