//! Jobs drawn from the catalogue: a hose, two ends that go with it, their mates, the machine's origin.

use super::features::{self, Feature, Shows};
use super::instruments::Instrument;
use super::laws::{Law, Reads, Technician, Usage};
use super::random::Random;
use super::world::{Part, World};
use serde_json::{Map, Value, json};

/// Share of strangers by the model's usage.
const STRANGERS: f64 = 0.02;
/// How often an end goes on a hose so many sizes apart: as the model has it, and rarer. The last
/// stands for parts without a size.
const JUMPS: [f64; 4] = [1.0, 0.4, 0.12, 0.03];
const RARE_JUMPS: [f64; 4] = [1.0, 0.2, 0.03, 0.005];
const SIZELESS: f64 = 0.3;
/// How much oftener everyday parts are met. Common practice, no source.
const EVERYDAY: f64 = 4.0;
/// Share of machines whose ends are both of the families of its region, and how much oftener those
/// are met there. Common practice, no source.
const ONE_REGION: f64 = 0.85;
const IN_REGION: f64 = 6.0;
/// Share of jobs where the machine's origin is said.
const ORIGIN_SAID: f64 = 0.5;
/// Share of ends of which the machine's half is measured too, and of mates that are anything.
const MATES: f64 = 0.3;
const WRONG_MATES: f64 = 0.03;

/// How often a machine comes from each origin, how often the named one is right, and the share of ends
/// that were changed for any other: as the model has it.
const ORIGINS: [f64; 4] = [0.3, 0.35, 0.25, 0.1];
const NAMED_RIGHT: f64 = 0.9;
const CHANGED: f64 = 0.05;

/// Origins that can be named; the last of all is elsewhere.
const NAMES: [&str; 3] = ["north-america", "europe", "east-asia"];

/// A family is of a region where the table has it so much oftener than elsewhere.
const OF_REGION: f64 = 2.0;

/// A part of a job: what it is and all that can be read of it.
#[derive(Debug, Clone)]
pub struct Drawn {
    /// Its place among the hoses or halves of the world; none is a stranger.
    pub truth: Option<usize>,
    /// Everything that can be read.
    pub reads: Reads,
}

/// One job.
#[derive(Debug, Clone)]
pub struct Job {
    /// The machine's origin, where it is said.
    pub origin: Option<&'static str>,
    /// The hose.
    pub hose: Drawn,
    /// Ends A and B.
    pub ends: [Drawn; 2],
    /// Everything that can be read of the machine's halves.
    pub mates: [Reads; 2],
    /// Whether a part of that was read.
    pub mates_read: [bool; 2],
    /// The caliper's standard error.
    pub error: f64,
}

/// What goes together on a part, the thread before what is read of it.
const HOSE_TRAITS: [&[&str]; 1] = [&["id_mm"]];
const HOSE_REST: [&str; 5] = ["reinforcement_od_mm", "cover_od_mm", "reinforcement", "layers", "cover"];
const END_TRAITS: [&[&str]; 4] = [
    &["thread_diameter_mm", "pitch_mm", "flank_angle_deg"],
    &["kind", "gender", "taper", "second_thread_diameter_mm"],
    &["shoulder", "seal", "seat_included_angle_deg", "cone"],
    &[
        "tube_od_mm",
        "male_bore_mm",
        "swivel_hex_mm",
        "head_od_mm",
        "head_thickness_mm",
        "bolt_long_mm",
        "bolt_short_mm",
    ],
];

/// Share of the traits of a stranger that are some row's, and of its other features that are like some row's for
/// themselves: as the model has it. Of hoses the bore alone.
const COMMON: f64 = 0.7;

/// Share of strangers that are some row's in all but their sizes, as the model has it.
const ODD_SIZES: f64 = 0.3;

/// Weights of all parts of one kind, a stranger last.
struct Weights {
    each: Vec<f64>,
    steps: Vec<Option<i32>>,
}

impl Weights {
    fn of(parts: &[Part], law: Law, factor: impl Fn(&Part) -> f64) -> Self {
        let (strangers, everyday) = match law.usage {
            Usage::OfTheModel => (STRANGERS, 1.0),
            Usage::OfTheTrade => (0.0, EVERYDAY),
        };
        let usual = |part: &Part| if part.is_everyday { everyday } else { 1.0 };
        let mut each: Vec<f64> =
            parts.iter().map(|part| (1.0 - strangers) * part.even * factor(part) * usual(part)).collect();
        each.push(strangers);
        let steps = parts.iter().map(|part| part.step).chain([None]).collect();
        Self { each, steps }
    }

    /// How the weights go with a neighbour of that size.
    fn beside(&self, step: Option<i32>, jumps: &[f64; 4]) -> Vec<f64> {
        let affinity = |own: Option<i32>| match (own, step) {
            (Some(a), Some(b)) => jumps[(a.abs_diff(b) as usize).min(3)],
            _ => SIZELESS,
        };
        self.each.iter().zip(&self.steps).map(|(weight, own)| weight * affinity(*own)).collect()
    }
}

/// What is drawn: the truths of one job.
#[derive(Debug, Clone, Copy)]
struct Truths {
    origin: Option<&'static str>,
    hose: Option<usize>,
    ends: [Option<usize>; 2],
}

impl Job {
    /// Draws a job and reads all of it.
    pub fn draw(world: &World, law: Law, error: f64, random: &mut Random) -> Self {
        let technician = Technician::new(world, law, error, random);
        let truths = draw(world, law, random);
        let half = |at: Option<usize>, random: &mut Random| match at {
            Some(at) => world.halves[at].features.clone(),
            None => strange(world, &world.halves, &END_TRAITS, &[], random),
        };
        let read = |truth: Option<usize>, features: Vec<Feature>, random: &mut Random| Drawn {
            truth,
            reads: technician.reads(&features, random),
        };
        let hose_features = match truths.hose {
            Some(at) => world.hoses[at].features.clone(),
            None => strange(world, &world.hoses, &HOSE_TRAITS, &HOSE_REST, random),
        };
        let hose = read(truths.hose, hose_features, random);
        let ends = truths.ends.map(|end| read(end, half(end, random), random));
        let mates = truths.ends.map(|end| {
            let own = end.and_then(|end| world.halves[end].opposite);
            let mate = if random.chance(WRONG_MATES) { Some(any(&world.halves, random)) } else { own };
            read(None, half(mate, random), random).reads
        });
        let mates_read = [0, 1].map(|_| random.chance(MATES));
        Self { origin: truths.origin, hose, ends, mates, mates_read, error }
    }

    /// The question these readings ask.
    pub fn question(&self, hose: &Reads, ends: [&Reads; 2], mates: [Option<&Reads>; 2]) -> Value {
        let mates: Vec<Value> =
            ["A", "B"].iter().zip(mates).filter_map(|(role, mate)| Some(of_role(role, mate?))).collect();
        json!({
            "hose": hose,
            "ends": [of_role("A", ends[0]), of_role("B", ends[1])],
            "mates": mates,
            "caliper_error_mm": self.error,
            "origin": self.origin,
        })
    }
}

/// The readings of one half, with its role and, where two diameters are given, the threads between.
pub fn of_role(role: &str, reads: &Reads) -> Value {
    let mut half: Map<String, Value> =
        reads.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect();
    half.insert("role".to_owned(), json!(role));
    if half.contains_key("second_thread_diameter_mm") {
        half.insert("threads_apart".to_owned(), json!(super::instruments::THREADS_APART));
    }
    Value::Object(half)
}

/// The first readings anyone takes: which half, the size that is nearest to hand, the pitch; of a
/// hose the bore and the cover.
pub fn few(reads: &Reads) -> Reads {
    const FIRST: [&str; 6] = ["kind", "gender", "pitch_mm", "bolt_long_mm", "id_mm", "cover_od_mm"];
    let size = ["thread_diameter_mm", "tube_od_mm"].into_iter().find(|key| reads.contains_key(key));
    reads
        .iter()
        .filter(|(key, _)| FIRST.contains(*key) || Some(**key) == size)
        .map(|(key, value)| (*key, value.clone()))
        .collect()
}

/// Each reading in half the cases.
pub fn some(reads: &Reads, random: &mut Random) -> Reads {
    reads.iter().filter(|_| random.chance(0.5)).map(|(key, value)| (*key, value.clone())).collect()
}

/// A part that is in no table: some row of other sizes, or of each trait what some row shows, or of each feature of
/// it, or anything; anything of the rest.
fn strange(
    world: &World,
    parts: &[Part],
    traits: &[&[&'static str]],
    rest: &[&'static str],
    random: &mut Random,
) -> Vec<Feature> {
    let row = |random: &mut Random| random.chance(COMMON).then(|| any(parts, random));
    let odd = random.chance(ODD_SIZES).then(|| any(parts, random));
    let of_odd =
        |key: &str| odd.filter(|_| !matches!(world.instruments.of_key(key), Instrument::Caliper { .. }));
    let mut features = Vec::new();
    for keys in traits {
        let whole = if odd.is_some() { None } else { row(random) };
        for &key in *keys {
            let alone =
                |random: &mut Random| if keys.len() > 1 || odd.is_some() { row(random) } else { None };
            let at = of_odd(key).or(whole).or_else(|| alone(random));
            features.push((key, at.map_or(Shows::Unstated, |at| features::shown(&parts[at].features, key))));
        }
    }
    let of_rest = |key| of_odd(key).map_or(Shows::Unstated, |at| features::shown(&parts[at].features, key));
    features.extend(rest.iter().map(|&key| (key, of_rest(key))));
    features
}

fn any(parts: &[Part], random: &mut Random) -> usize {
    random.weighted(parts.iter().map(|part| part.even))
}

/// The origin that is said of a machine from one of them.
fn named(origin: usize, random: &mut Random) -> Option<&'static str> {
    if !random.chance(ORIGIN_SAID) {
        return None;
    }
    let wrong = (1.0 - NAMED_RIGHT) / NAMES.len() as f64;
    let said = random.weighted((0..ORIGINS.len()).map(|at| if at == origin { NAMED_RIGHT } else { wrong }));
    NAMES.get(said).copied()
}

/// How much oftener an end is met on a machine of that origin.
fn oftener(law: Law, origin: usize, is_of_region: bool, part: &Part) -> f64 {
    let weight = part.by_origin[origin];
    match law.usage {
        Usage::OfTheModel => (1.0 - CHANGED) * weight + CHANGED,
        Usage::OfTheTrade if is_of_region && weight >= OF_REGION => IN_REGION,
        Usage::OfTheTrade => 1.0,
    }
}

fn draw(world: &World, law: Law, random: &mut Random) -> Truths {
    let origin = random.weighted(ORIGINS.into_iter());
    let jumps = match law.usage {
        Usage::OfTheModel => &JUMPS,
        Usage::OfTheTrade => &RARE_JUMPS,
    };
    let of_region = random.chance(ONE_REGION);
    let ends = [true, of_region]
        .map(|is_of_region| Weights::of(&world.halves, law, |part| oftener(law, origin, is_of_region, part)));
    let mut hoses = Weights::of(&world.hoses, law, |_| 1.0);
    // The hose stands between the ends: it is as likely as what goes on either side of it.
    let mut known: Vec<(Option<i32>, f64)> = Vec::new();
    for (weight, step) in hoses.each.iter_mut().zip(&hoses.steps) {
        let beside = known.iter().find(|(known, _)| known == step).map(|(_, beside)| *beside);
        *weight *= beside.unwrap_or_else(|| {
            let sums = ends.iter().map(|end| end.beside(*step, jumps).iter().sum::<f64>());
            let beside = sums.product();
            known.push((*step, beside));
            beside
        });
    }
    let hose = random.weighted(hoses.each.iter().copied());
    let step = hoses.steps[hose];
    let ends = ends.map(|end| {
        let weights = end.beside(step, jumps);
        let at = random.weighted(weights.iter().copied());
        (at < world.halves.len()).then_some(at)
    });
    Truths { origin: named(origin, random), hose: (hose < world.hoses.len()).then_some(hose), ends }
}
