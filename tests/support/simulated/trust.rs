//! All figures of how far `find` may be trusted.

use super::dangers::Dangers;
use super::effort::{self, Walk};
use super::jobs::{Drawn, Job, few, some};
use super::laws::{Hands, Law, MODEL, Reads, Technician};
use super::random::Random;
use super::scores::{Scored, Share};
use super::strangers::{self, Strange};
use super::world::{Part, World};
use hosewright_core::find::{EndFound, Found, Readings, candidates};
use serde_json::{Value, json};

/// Standard errors of the caliper that are tried, mm.
pub const ERRORS_MM: [f64; 3] = [0.05, 0.1, 0.2];

/// What a law and a caliper gave.
#[derive(Debug, Clone)]
pub struct Cell {
    /// The law.
    pub law: Law,
    /// The caliper's standard error, mm.
    pub error: f64,
    /// Every list, asked with few, some and all readings.
    pub lists: Vec<Scored>,
    /// The lists of hoses with some readings and no print.
    pub some_hoses: Vec<Scored>,
    /// The lists of ends with some readings.
    pub some_ends: Vec<Scored>,
    /// The lists of hoses with all readings, a whole print among them.
    pub full_hoses: Vec<Scored>,
    /// The lists of ends with all readings.
    pub full_ends: Vec<Scored>,
    /// The same with all readings of the machine's halves.
    pub full_pairs: Vec<Scored>,
    /// Warnings of the ends.
    pub dangers: Dangers,
}

/// How many readings a question carries.
#[derive(Clone, Copy, PartialEq)]
enum Depth {
    Few,
    Some,
    Full,
}

fn ask(world: &World, question: &Value) -> Found {
    let readings: Readings = serde_json::from_value(question.clone()).expect("readings by the contract");
    candidates(world.catalogue, &readings).expect("readings that can be")
}

/// Draws so many jobs and asks each with few, some and all of its readings.
pub fn cell(world: &World, law: Law, error: f64, jobs: usize, seed: u64) -> Cell {
    let mut random = Random(seed);
    let mut cell = Cell {
        law,
        error,
        lists: Vec::new(),
        some_hoses: Vec::new(),
        some_ends: Vec::new(),
        full_hoses: Vec::new(),
        full_ends: Vec::new(),
        full_pairs: Vec::new(),
        dangers: Dangers::default(),
    };
    for _ in 0..jobs {
        let job = Job::draw(world, law, error, &mut random);
        for depth in [Depth::Few, Depth::Some, Depth::Full] {
            cell.ask(world, &job, depth, &mut random);
        }
    }
    cell
}

impl Cell {
    fn ask(&mut self, world: &World, job: &Job, depth: Depth, random: &mut Random) {
        let mut taken = |reads: &Reads| match depth {
            Depth::Few => few(reads),
            Depth::Some => some(reads, random),
            Depth::Full => reads.clone(),
        };
        let mut hose = taken(&job.hose.reads);
        if let (Depth::Full, Some(part)) = (depth, truth(&job.hose, &world.hoses)) {
            let [standard, kind, dn] = &part.name;
            hose.insert("print", json!(format!("{standard} {kind} DN {dn}")));
        }
        let ends = [taken(&job.ends[0].reads), taken(&job.ends[1].reads)];
        let few_of_mates = job.mates.each_ref().map(few);
        let mates =
            [0, 1].map(|at| (depth == Depth::Some && job.mates_read[at]).then_some(&few_of_mates[at]));
        let found = ask(world, &job.question(&hose, [&ends[0], &ends[1]], mates));
        let of_hose = Scored::of_hose(&found, truth(&job.hose, &world.hoses));
        match depth {
            Depth::Few => {}
            Depth::Some => self.some_hoses.push(of_hose.clone()),
            Depth::Full => self.full_hoses.push(of_hose.clone()),
        }
        self.lists.push(of_hose);
        for ((end, taken), found) in job.ends.iter().zip(&ends).zip(&found.ends) {
            let truth = truth(end, &world.halves);
            let of_end = of_end(world, found, truth, taken, job.error);
            match depth {
                Depth::Few => {}
                Depth::Some => self.some_ends.push(of_end.clone()),
                Depth::Full => self.full_ends.push(of_end.clone()),
            }
            self.lists.push(of_end);
            if let Some(truth) = truth {
                self.dangers.count(world, truth, taken, job.error, found);
            }
        }
        if depth == Depth::Full {
            let mates = job.mates.each_ref().map(Some);
            let found = ask(world, &job.question(&hose, [&ends[0], &ends[1]], mates));
            for ((end, taken), found) in job.ends.iter().zip(&ends).zip(&found.ends) {
                self.full_pairs.push(of_end(world, found, truth(end, &world.halves), taken, job.error));
            }
        }
    }

    fn full_and_known(&self) -> impl Iterator<Item = &Scored> + Clone {
        self.full_hoses.iter().chain(&self.full_ends).filter(|list| !list.is_stranger())
    }

    /// With all readings: the right class leads, or one that nothing read can part from it.
    pub fn right_first(&self) -> Share {
        Share::of(self.full_and_known(), |list| list.is_right)
    }

    /// The same of hose ends and flanges alone: without ports, tubes, banjos, couplings and hoses.
    pub fn right_end_first(&self) -> Share {
        Share::of(self.full_ends.iter().filter(|list| list.is_everyday), |list| list.is_right)
    }

    /// The same of all ends where the machine's halves were read as well.
    pub fn right_pair_first(&self) -> Share {
        Share::of(self.full_pairs.iter().filter(|list| !list.is_stranger()), |list| list.is_right)
    }

    /// What the model itself states of that: the mean of the leading probabilities.
    pub fn stated_first(&self) -> f64 {
        let lists = self.full_and_known();
        lists.clone().map(|list| list.top().0).sum::<f64>() / lists.count().max(1) as f64
    }

    /// With all readings: a row of the tables is called unknown.
    pub fn called_unknown(&self) -> Share {
        Share::of(self.full_and_known(), |list| list.is_called_unknown())
    }
}

fn of_end(world: &World, found: &EndFound, truth: Option<&Part>, taken: &Reads, error: f64) -> Scored {
    let leader = found.candidates.first().and_then(|class| {
        let is = |part: &&Part| {
            part.name[0] == class.family && part.name[1] == class.size && part.gender == class.gender
        };
        world.halves.iter().find(is)
    });
    Scored::of_end(found, truth).or_alike(world, leader, truth, taken, error)
}

fn truth<'w>(drawn: &Drawn, parts: &'w [Part]) -> Option<&'w Part> {
    drawn.truth.map(|at| &parts[at])
}

/// Strangers called unknown: ends, then hoses.
pub fn strangers(world: &World, how: Strange, error: f64, count: usize, seed: u64) -> [Vec<Scored>; 2] {
    let law = Law { hands: Hands::Others, ..MODEL };
    let mut random = Random(seed);
    let mut ends = Vec::new();
    let mut hoses = Vec::new();
    for _ in 0..count {
        let technician = Technician::new(world, law, error, &mut random);
        let end = technician.reads(&strangers::end(world, how, error, &mut random), &mut random);
        let hose = technician.reads(&strangers::hose(world, how, error, &mut random), &mut random);
        let half = super::jobs::of_role("A", &end);
        let found = ask(world, &json!({"ends": [half], "caliper_error_mm": error}));
        ends.push(Scored::of_end(&found.ends[0], None));
        let found = ask(world, &json!({"hose": hose, "caliper_error_mm": error}));
        hoses.push(Scored::of_hose(&found, None));
    }
    [ends, hoses]
}

/// Guided and fixed walks over the same simulated ends.
#[derive(Debug, Clone, Default)]
pub struct Walks {
    /// Each end both ways: guided, fixed.
    pub each: Vec<(Walk, Walk)>,
}

/// So many ends that are in the tables.
pub fn walks(world: &World, law: Law, error: f64, count: usize, seed: u64) -> Walks {
    let mut random = Random(seed);
    let mut walks = Walks::default();
    while walks.each.len() < count {
        let job = Job::draw(world, law, error, &mut random);
        let [end, _] = job.ends;
        if end.truth.is_some() {
            walks.each.push((
                effort::guided(world.catalogue, &end.reads, error),
                effort::fixed(world.catalogue, &end.reads, error),
            ));
        }
    }
    walks
}

impl Walks {
    /// Mean effort over the ends that both ways settle: guided, fixed.
    pub fn mean_effort(&self) -> (f64, f64) {
        let both = self.each.iter().filter(|(guided, fixed)| guided.is_settled && fixed.is_settled);
        let count = both.clone().count().max(1) as f64;
        let sum = |of: fn(&(Walk, Walk)) -> f64| both.clone().map(of).sum::<f64>() / count;
        (sum(|(guided, _)| guided.effort), sum(|(_, fixed)| fixed.effort))
    }

    /// Mean effort spent on every end, settled or not: guided, fixed.
    pub fn mean_spent(&self) -> (f64, f64) {
        let count = self.each.len().max(1) as f64;
        let sum = |of: fn(&(Walk, Walk)) -> f64| self.each.iter().map(of).sum::<f64>() / count;
        (sum(|(guided, _)| guided.effort), sum(|(_, fixed)| fixed.effort))
    }

    /// Share settled: guided, fixed.
    pub fn settled(&self) -> (Share, Share) {
        (
            Share::of(&self.each, |(guided, _)| guided.is_settled),
            Share::of(&self.each, |(_, fixed)| fixed.is_settled),
        )
    }

    /// Share that a dangerous partner alone kept open to the end: guided, fixed.
    pub fn threatened(&self) -> (Share, Share) {
        (
            Share::of(&self.each, |(guided, _)| guided.is_threatened),
            Share::of(&self.each, |(_, fixed)| fixed.is_threatened),
        )
    }

    /// How much less effort guided takes over the ends that both settle, 0 to 1.
    pub fn saved(&self) -> f64 {
        let (guided, fixed) = self.mean_effort();
        1.0 - guided / fixed
    }
}
