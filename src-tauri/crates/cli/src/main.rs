//! The `hosewright` command line.
//!
//! It owns what the library does not: arguments, files, standard streams, the clock and chance.

mod args;
mod bench;
mod care;
mod input;
mod office;
mod outcome;
mod photo;
mod plain;
mod run;
#[cfg(feature = "serve")]
mod serve;
mod share;
mod stock;
mod tag;
mod world;

use args::Arguments;
use clap::Parser;
use hosewright_api::ApiError;
use outcome::Outcome;
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments = match Arguments::try_parse() {
        Ok(arguments) => arguments,
        Err(asked) if !asked.use_stderr() => {
            return outcome::print(&plain::wrapped_lines(&asked.to_string()));
        }
        Err(wrong) => {
            let json = std::env::args_os().any(|argument| argument == "--json");
            let error = ApiError::input("", wrong.to_string().trim_start_matches("error: ").trim_end());
            return outcome::fail(&error, json);
        }
    };
    match run::run(&arguments) {
        Ok(Outcome { text, exit }) => match outcome::print(&text) {
            code if code == ExitCode::SUCCESS => ExitCode::from(exit),
            broken => broken,
        },
        Err(error) => outcome::fail(&error, arguments.json),
    }
}
