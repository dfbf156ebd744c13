//! How true sizes and readings come about: by the model's own laws, and by others.

use super::features::{Feature, NOT, ONE_LIMIT, Shows, Use};
use super::instruments::{ABSENT, Instrument, SECOND_STRAYS, SWAPPED, THREADS_APART, WIDEST};
use super::random::Random;
use super::world::World;
use hosewright_core::catalogue::{EndKind, Reinforcement, Seal, Shoulder};
use hosewright_core::spec::Cover;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// The error of a caliper. All have the standard deviation that is stated with the readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Tails {
    /// Gaussian.
    Gaussian,
    /// Student's t of three degrees of freedom.
    Student,
}

/// Where in its band a true size lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Sizes {
    /// Anywhere alike.
    Even,
    /// Mostly near one limit (beta of 1 and 5): the tool that made it was worn, or new.
    Lopsided,
}

/// How much use has changed a size, of the same mean but the last.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Wear {
    /// Exponential.
    Exponential,
    /// Lognormal, spread 0.8.
    Lognormal,
    /// Evenly up to three times the mean of the model: 0 to 0.3 mm for a male thread.
    Uniform,
}

/// How eyes, gauges and hands err.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Hands {
    /// By the tables of the model; strays and what no table states lie anywhere.
    OfTheModel,
    /// Eyes err half as often again and more evenly; leaves are taken by a jittered look at all of
    /// them; strays are burrs of up to 1.5 mm; what no table states goes with the thread's size.
    Others,
}

/// Which parts are met how often.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Usage {
    /// Every class alike, sizes coupled and the origin hinting as in the model; 2 % strangers.
    OfTheModel,
    /// Everyday families and hoses four times as often, both ends mostly of one region, jump sizes
    /// rarer; no strangers.
    OfTheTrade,
}

/// One way in which parts and readings come about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Law {
    /// What it is called.
    pub name: &'static str,
    /// The caliper's error.
    pub tails: Tails,
    /// Whether half of its variance is one zero error for the whole job.
    pub shares_zero: bool,
    /// True sizes.
    pub sizes: Sizes,
    /// Use.
    pub wear: Wear,
    /// Eyes and gauges.
    pub hands: Hands,
    /// What is met.
    pub usage: Usage,
}

/// The model's own laws.
pub const MODEL: Law = Law {
    name: "the model's own",
    tails: Tails::Gaussian,
    shares_zero: false,
    sizes: Sizes::Even,
    wear: Wear::Exponential,
    hands: Hands::OfTheModel,
    usage: Usage::OfTheModel,
};

/// Every law other than the model's, alone and then all at once.
pub const OTHERS: [Law; 8] = [
    Law { name: "heavy tails", tails: Tails::Student, ..MODEL },
    Law { name: "shared zero error", shares_zero: true, ..MODEL },
    Law { name: "lopsided sizes", sizes: Sizes::Lopsided, ..MODEL },
    Law { name: "lognormal wear", wear: Wear::Lognormal, ..MODEL },
    Law { name: "uniform wear", wear: Wear::Uniform, ..MODEL },
    Law { name: "other hands and eyes", hands: Hands::Others, ..MODEL },
    Law { name: "the trade's usage", usage: Usage::OfTheTrade, ..MODEL },
    WORST,
];

/// All at once.
pub const WORST: Law = Law {
    name: "all of these",
    tails: Tails::Student,
    shares_zero: true,
    sizes: Sizes::Lopsided,
    wear: Wear::Lognormal,
    hands: Hands::Others,
    usage: Usage::OfTheTrade,
};

/// Readings by key, as they go into a question.
pub type Reads = BTreeMap<&'static str, Value>;

/// Whoever reads one job: one caliper with one zero, parts made by one tool.
#[derive(Debug)]
pub struct Technician<'w> {
    world: &'w World,
    law: Law,
    /// Standard deviation of one caliper reading, its share of the zero error left out.
    random_error: f64,
    zero: f64,
    is_near_least: bool,
}

impl<'w> Technician<'w> {
    /// With a caliper of that standard error.
    pub fn new(world: &'w World, law: Law, error: f64, random: &mut Random) -> Self {
        let part = if law.shares_zero { error / 2f64.sqrt() } else { error };
        let zero = if law.shares_zero { part * random.normal() } else { 0.0 };
        Self { world, law, random_error: part, zero, is_near_least: random.chance(0.5) }
    }

    /// Everything that can be read of a part.
    pub fn reads(&self, features: &[Feature], random: &mut Random) -> Reads {
        let shown: Vec<Feature> =
            features.iter().map(|&(key, shows)| (key, self.guessed(key, shows, features))).collect();
        let mut reads = Reads::new();
        let mut thread = None;
        for &(key, shows) in &shown {
            let read = match self.world.instruments.of_key(key) {
                Instrument::Caliper { range, strays } => {
                    let size = self.true_size(shows, random);
                    if key == "thread_diameter_mm" {
                        thread = size;
                    }
                    self.caliper(shows, size, *range, *strays, random).map(|size| json!(rounded(size)))
                }
                Instrument::Gauge { leaves, width, lapse } => {
                    self.gauge(shows, leaves, |leaf| width.at(leaf), *lapse, random).map(|leaf| json!(leaf))
                }
                Instrument::Eye(table) => {
                    self.eye(shows, table, random).map(|said| answers(key).swap_remove(said))
                }
                Instrument::Second => self.second(shows, thread, random).map(|size| json!(rounded(size))),
            };
            if let Some(read) = read {
                reads.insert(key, read);
            }
        }
        reads
    }

    /// What no table states still has some size: about so much of the thread.
    fn guessed(&self, key: &str, shows: Shows, features: &[Feature]) -> Shows {
        if self.law.hands == Hands::OfTheModel || shows != Shows::Unstated {
            return shows;
        }
        let thread = features.iter().find_map(|(key, shows)| match shows {
            Shows::Band { min, max, .. } if *key == "thread_diameter_mm" => Some(0.5 * (min + max)),
            _ => None,
        });
        let share = match key {
            "tube_od_mm" => 0.75,
            "male_bore_mm" => 0.6,
            "swivel_hex_mm" => 1.25,
            _ => return Shows::Absent,
        };
        thread.map_or(Shows::Absent, |thread| Shows::Band {
            min: 0.85 * share * thread,
            max: 1.15 * share * thread,
            use_: NOT,
        })
    }

    fn true_size(&self, shows: Shows, random: &mut Random) -> Option<f64> {
        match shows {
            Shows::Band { min, max, use_ } => {
                let place = match self.law.sizes {
                    Sizes::Even => random.uniform(),
                    Sizes::Lopsided if self.is_near_least => random.near_zero(),
                    Sizes::Lopsided => 1.0 - random.near_zero(),
                };
                Some(min + place * (max - min) + self.change(use_, random))
            }
            Shows::AtMost(max) => Some(max - ONE_LIMIT * random.normal().abs()),
            Shows::AtLeast(min) => Some(min + ONE_LIMIT * random.normal().abs()),
            _ => None,
        }
    }

    /// What one of the terms does to a size, or none of them.
    fn change(&self, use_: Use, random: &mut Random) -> f64 {
        let as_new = 1.0 - use_.iter().map(|(_, share, _)| share).sum::<f64>();
        let at = random.weighted(use_.iter().map(|(_, share, _)| *share).chain([as_new]));
        use_.get(at).map_or(0.0, |(sign, _, mean)| sign * self.wear(*mean, random))
    }

    fn wear(&self, mean: f64, random: &mut Random) -> f64 {
        const SPREAD: f64 = 0.8;
        match self.law.wear {
            Wear::Exponential => random.exponential(mean),
            Wear::Lognormal => mean * (SPREAD * random.normal() - 0.5 * SPREAD * SPREAD).exp(),
            Wear::Uniform => random.between(0.0, 3.0 * mean),
        }
    }

    fn error(&self, random: &mut Random) -> f64 {
        let unit = match self.law.tails {
            Tails::Gaussian => random.normal(),
            Tails::Student => random.student(),
        };
        self.zero + self.random_error * unit
    }

    /// A feature that is not there is read now and then; one that no table states lies anywhere.
    fn is_anything(&self, shows: Shows, random: &mut Random) -> Option<bool> {
        match shows {
            Shows::Absent => (self.law.hands == Hands::OfTheModel && random.chance(ABSENT)).then_some(true),
            Shows::Unstated => Some(true),
            _ => Some(false),
        }
    }

    fn caliper(
        &self,
        shows: Shows,
        size: Option<f64>,
        (least, most): (f64, f64),
        strays: f64,
        random: &mut Random,
    ) -> Option<f64> {
        let is_anything = self.is_anything(shows, random)?;
        let Some(size) = size.filter(|_| !is_anything) else { return Some(random.between(least, most)) };
        let strays_now = random.chance(strays);
        let read = match self.law.hands {
            Hands::OfTheModel if strays_now => random.between(least, most),
            Hands::Others if strays_now => size + random.between(-1.5, 1.5) + self.error(random),
            _ => size + self.error(random),
        };
        // What is beyond belief is refused, and read again.
        Some(read.clamp(least, most))
    }

    fn gauge(
        &self,
        shows: Shows,
        leaves: &[f64],
        width: impl Fn(f64) -> f64,
        lapse: f64,
        random: &mut Random,
    ) -> Option<f64> {
        let is_anything = self.is_anything(shows, random)?;
        let Shows::Leaf(leaf) = shows else { return is_anything.then(|| leaves[random.below(leaves.len())]) };
        let width = width(leaf);
        if self.law.hands == Hands::Others {
            let look = leaf + 1.2 * width * random.student();
            let nearest = |a: &&f64, b: &&f64| (**a - look).abs().total_cmp(&(**b - look).abs());
            return leaves.iter().min_by(nearest).copied();
        }
        if random.chance(lapse) {
            return Some(leaves[random.below(leaves.len())]);
        }
        let kernel = leaves.iter().map(|other| (-0.5 * ((other - leaf) / width).powi(2)).exp());
        Some(leaves[random.weighted(kernel)])
    }

    fn eye(&self, shows: Shows, table: &[&[f64]], random: &mut Random) -> Option<usize> {
        let answers = table[0].len();
        let is_anything = self.is_anything(shows, random)?;
        let Shows::OneOf(mask) = shows else { return is_anything.then(|| random.below(answers)) };
        let true_ones: Vec<usize> = (0..table.len()).filter(|at| mask & (1 << at) != 0).collect();
        let truth = true_ones[random.below(true_ones.len())];
        let row = table[truth];
        if self.law.hands == Hands::OfTheModel || answers != table.len() {
            return Some(random.weighted(row.iter().copied()));
        }
        let wrong = 1.0 - row[truth];
        if !random.chance((1.5 * wrong).min(0.6)) {
            return Some(truth);
        }
        let even = wrong / (answers - 1) as f64;
        let weights = row.iter().enumerate().map(|(at, p)| if at == truth { 0.0 } else { p + even });
        Some(random.weighted(weights))
    }

    fn second(&self, shows: Shows, thread: Option<f64>, random: &mut Random) -> Option<f64> {
        let is_anything = self.is_anything(shows, random)?;
        // Without a first diameter a second tells nothing.
        let first = thread?;
        let Shows::Slope(slope) = shows else {
            return is_anything.then(|| first + random.between(-WIDEST, WIDEST));
        };
        if random.chance(SECOND_STRAYS) {
            return Some(first + random.between(-WIDEST, WIDEST));
        }
        let apart = slope * THREADS_APART;
        let apart = if random.chance(SWAPPED) { -apart } else { apart };
        Some(first + apart + self.error(random))
    }
}

/// As the display shows it; nothing can be read below a tenth.
fn rounded(size: f64) -> f64 {
    (size.max(0.2) * 1000.0).round() / 1000.0
}

/// The answers of a look, in the order of its table.
///
/// # Panics
/// On a key that is no look.
pub fn answers(key: &str) -> Vec<Value> {
    let of = |answers: Value| answers.as_array().cloned().expect("a list");
    match key {
        "kind" => of(json!([
            EndKind::Male,
            EndKind::Nut,
            EndKind::Stud,
            EndKind::Socket,
            EndKind::Banjo,
            EndKind::Tube,
            EndKind::Flange,
            EndKind::Coupling,
            EndKind::Staple,
            EndKind::TestPoint
        ])),
        "shoulder" => of(json!([Shoulder::Chamfered, Shoulder::Flat])),
        "gender" => of(json!(["male", "female"])),
        "taper" => of(json!([false, true])),
        "cone" => of(json!(["convex", "concave", "flat"])),
        "seal" => of(json!([
            Seal::Cone,
            Seal::ORingFace,
            Seal::ORingShoulder,
            Seal::ORingCone,
            Seal::BondedWasher,
            Seal::Thread,
            Seal::InvertedFlare,
            Seal::FlatGasket
        ])),
        "reinforcement" => of(json!([
            Reinforcement::WireBraid,
            Reinforcement::WireSpiral,
            Reinforcement::TextileBraid,
            Reinforcement::ThermoplasticTextile,
            Reinforcement::PtfeSteelBraid,
            Reinforcement::SuctionHelix
        ])),
        "layers" => of(json!([1, 2, 3, 4, 5, 6])),
        "cover" => of(json!([Cover::Plain, Cover::NonConductive, Cover::FlameResistant, Cover::Antistatic])),
        _ => panic!("{key} is no look"),
    }
}
