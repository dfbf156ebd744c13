//! The project's own chores.

#![allow(clippy::print_stdout, reason = "a chore tells what it did")]

mod app_size;
mod cutting;
mod diagram;
mod faults;
mod imports;
mod labels;
mod layouts;
mod lives;
mod million;
mod peers;
mod promises;
mod quick;
mod reliability;
mod sample;
mod schemas;
mod sight;
mod timed;
mod types;
mod validation;

use clap::{Parser, Subcommand};
use std::io::{Error, Result};
use std::path::PathBuf;
use std::process::{Command, ExitCode};

/// The project's own chores.
#[derive(Parser)]
struct Arguments {
    #[command(subcommand)]
    chore: Chore,
}

#[derive(Subcommand)]
enum Chore {
    /// Write the JSON Schema of every command's question and answer.
    Schemas,
    /// Write the TypeScript types of every command's question and answer.
    Types,
    /// Write every published case with its source and what the program answers, and print how far the two are apart.
    Validation {
        /// The report, as Markdown.
        #[arg(default_value = "target/validation.md")]
        report: PathBuf,
    },
    /// Put random layouts through the rod and check each shape by integrating the rod's equation.
    Layouts {
        /// How many.
        #[arg(default_value_t = 10_000)]
        count: usize,
        /// Another seed gives other layouts.
        #[arg(long, default_value_t = 1744)]
        seed: u64,
    },
    /// Measure all that the README promises of speed, and print figure, limit or peer, ratio and machine. Some of it takes long.
    Promises {
        /// The file of the register of a million hoses; one that is there is measured as it is.
        #[arg(long, default_value = "target/million.db")]
        file: PathBuf,
    },
    /// Time the rod beside a general-purpose solver on the same cases (makes a Python environment under target/).
    Peers,
    /// Time a list of many hoses that is tried and taken in.
    Imports {
        /// How many rows.
        #[arg(default_value_t = imports::ROWS)]
        rows: usize,
    },
    /// Time the lives of many hoses beside a general-purpose library on the same history (makes a Python environment under target/).
    Lives {
        /// How many hoses.
        #[arg(default_value_t = lives::COUNT)]
        count: u32,
    },
    /// Put random batches through the cutting beside a general-purpose solver (makes a Python environment under target/).
    Cutting {
        /// How many.
        #[arg(default_value_t = cutting::Batches::default().count)]
        count: usize,
        /// Another seed gives other batches.
        #[arg(long, default_value_t = cutting::Batches::default().seed)]
        seed: u64,
        /// Seconds that the peer may search, for the new hose and again for the scrap.
        #[arg(long, default_value_t = cutting::Batches::default().limit)]
        limit: f64,
    },
    /// Print how far what `find` says may be trusted, on simulated jobs, and draw the reliability diagram.
    Reliability {
        /// The folder of the pictures.
        #[arg(default_value = "target")]
        folder: PathBuf,
    },
    /// Print what our reader, zbar and OpenCV read of the labels of every stock of the demo, and fail where one is not read.
    Labels,
    /// Print how many pictures our reader, zbar and OpenCV read and misread, and how long they take, in one run.
    Sight {
        /// A folder of pictures with their texts beside them; without one, 1000 rendered photographs of tags.
        folder: Option<PathBuf>,
    },
    /// Make a register of a million hoses and five million events, and time what people ask of it.
    Million {
        /// How many hoses.
        #[arg(default_value_t = million::HOSES)]
        hoses: u64,
        /// The register's file; one that is there is measured as it is.
        #[arg(long, default_value = "target/million.db")]
        file: PathBuf,
        /// Another seed gives another fleet.
        #[arg(long, default_value_t = million::SEED)]
        seed: u64,
    },
    /// What `million` runs in a process of its own.
    #[command(hide = true)]
    MillionAsk {
        /// How many hoses.
        hoses: u64,
        /// The register's file.
        file: PathBuf,
        /// The seed it was made by.
        seed: u64,
    },
    /// Kill the program and cut the power at random moments of every writing command (Linux, `strace`), and count what is lost.
    Faults {
        /// How many kills.
        #[arg(long, default_value_t = 5000)]
        kills: usize,
        /// How many power cuts.
        #[arg(long, default_value_t = 1000)]
        cuts: usize,
        /// Another seed gives other moments.
        #[arg(long, default_value_t = 1887)]
        seed: u64,
        /// The command line, built with `--features hosewright-cli/serve`.
        #[arg(long, default_value = "target/debug/hosewright")]
        program: PathBuf,
    },
    /// Leave a register of the present schemas under tests/databases, for the tests of later programs.
    Sample {
        /// The command line, built with `--features hosewright-cli/serve`.
        #[arg(long, default_value = "target/debug/hosewright")]
        program: PathBuf,
    },
    /// Print the built program's size, the time until its screens are up and the memory it holds then.
    AppSize {
        /// The program; a release is built by `cargo build --release -p hosewright-app`.
        #[arg(default_value = "target/release/hosewright-app")]
        program: PathBuf,
    },
}

impl Chore {
    /// Whether it times something.
    fn is_timed(&self) -> bool {
        use Chore::{Cutting, Imports, Lives, Million, Peers, Promises};
        matches!(
            self,
            Promises { .. } | Peers | Imports { .. } | Lives { .. } | Cutting { .. } | Million { .. }
        )
    }
}

fn main() -> ExitCode {
    let chore = Arguments::parse().chore;
    let done = if cfg!(debug_assertions) && chore.is_timed() { in_a_release() } else { run(chore) };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            println!("{error}");
            ExitCode::FAILURE
        }
    }
}

/// Times of a development build say nothing: a release is built and asked the same.
fn in_a_release() -> Result<()> {
    let build = ["run", "--quiet", "--release", "--package", "hosewright-xtask", "--"];
    let ran = Command::new(env!("CARGO")).args(build).args(std::env::args_os().skip(1)).status()?;
    if ran.success() { Ok(()) } else { Err(Error::other("it did not end well")) }
}

fn run(chore: Chore) -> Result<()> {
    match chore {
        Chore::Schemas => schemas::write(),
        Chore::Types => types::write(),
        Chore::Validation { report } => validation::write(&report),
        Chore::Layouts { count, seed } => layouts::print(count, seed),
        Chore::Promises { file } => promises::print(&file),
        Chore::Peers => peers::measure().and_then(promises::judged),
        Chore::Imports { rows } => imports::measure(rows).and_then(promises::judged),
        Chore::Lives { count } => lives::measure(count).and_then(promises::judged),
        Chore::Cutting { count, seed, limit } => {
            cutting::measure(&cutting::Batches { count, seed, limit }).and_then(promises::judged)
        }
        Chore::Reliability { folder } => reliability::print(&folder),
        Chore::Labels => labels::print(),
        Chore::Sight { folder } => sight::print(folder.as_deref(), false),
        Chore::Million { hoses, file, seed } => {
            million::measure(hoses, &file, seed).and_then(promises::judged)
        }
        Chore::MillionAsk { hoses, file, seed } => million::ask(hoses, &file, seed),
        Chore::Faults { kills, cuts, seed, program } => faults::print(&program, kills, cuts, seed),
        Chore::Sample { program } => sample::leave(&program),
        Chore::AppSize { program } => app_size::print(&program),
    }
}
