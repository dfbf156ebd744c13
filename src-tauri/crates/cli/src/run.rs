//! Runs a command: reads its question, asks the API, makes the outcome.

use crate::args::{Arguments, Command, LivesBy, Of, Paper, Register};
use crate::bench;
use crate::care;
use crate::input::{self, How};
use crate::office;
use crate::outcome::Outcome;
use crate::photo;
use crate::plain::{CutShown, Left, Schemas, SheetShown};
use crate::share;
use crate::stock::{self, RoundFile};
use crate::tag;
use crate::world::Machine;
use hosewright_api::commands::certificate::CertificateQuestion;
use hosewright_api::commands::make::{MakeQuestion, PaperKind, PaperQuestion, PaperSize};
use hosewright_api::commands::press::PressQuestion;
use hosewright_api::commands::print::PrintQuestion;
use hosewright_api::commands::register::{
    Export, ExportKind, Import, ListMatchQuestion, LivesPaper, LivesQuestion, MachineQuestion, Named,
    PlaceQuestion, Record, RecordEvent, Search, ShowQuestion,
};
use hosewright_api::commands::round::RoundQuestion;
use hosewright_api::commands::{self, File, Nothing};
use hosewright_api::{Api, ApiError};
use hosewright_core::check::{Question, Verdict};
use hosewright_core::cutting::Batch;
use hosewright_core::find::{Part, Why};
use hosewright_words::Language;
use std::path::Path;

/// Runs what was asked.
///
/// # Errors
/// Whatever the command refuses; nothing is changed then.
pub fn run(arguments: &Arguments) -> Result<Outcome, ApiError> {
    let mut api = Api::new(Language::English, Box::new(Machine));
    let json = arguments.json;
    match &arguments.command {
        Command::Find { readings } => {
            let answer = commands::find::find(&mut api, input::question(readings)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Explain { readings, of, candidate, rival } => {
            let why = Why {
                readings: input::question(readings)?,
                of: match of {
                    Of::Hose => Part::Hose,
                    Of::A => Part::A,
                    Of::B => Part::B,
                },
                candidate: usize::from(*candidate) - 1,
                rival: rival.map(|place| usize::from(place) - 1),
            };
            let answer = commands::find::explain(&mut api, why, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Print { text } => {
            let answer = commands::print::print(&mut api, PrintQuestion { text: text.clone() }, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Check { question } => {
            let answer = commands::check::check(&mut api, input::question(question)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Make { question, settings, subject, out, paper, db, supplier } => {
            if let Some(db) = db {
                bench::open(&mut api, db)?;
            }
            let question: Question = input::question(question)?;
            let settings = settings.as_deref().map(input::question).transpose()?.unwrap_or_default();
            let sheet = SheetFile { subject, out: out.as_deref(), paper: *paper };
            let asked = MakeQuestion { question, settings, supplier: supplier.clone(), kerf_mm: None };
            make(&mut api, asked, &sheet, json)
        }
        Command::Crimp { readings } => {
            let answer = commands::crimp::crimp(&mut api, input::question(readings)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Cutoff { readings } => {
            let answer = commands::cutoff::measured(&mut api, input::question(readings)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Bench { work, db, record } => bench::bench(&mut api, work, db.as_deref(), *record, json),
        Command::Supplier { db, command } => bench::supplier(&mut api, db, command, json),
        Command::Press { db, die_set, on } => {
            bench::open(&mut api, db)?;
            let asked = PressQuestion { die_set: die_set.clone(), on: *on };
            Outcome::of(&commands::press::press(&mut api, asked, &[])?, json, api.words())
        }
        Command::Certificate { code, db, out, paper, report, signature } => {
            bench::open(&mut api, db)?;
            let code = code.parse().map_err(|error| ApiError::input("code", error))?;
            let signature = signature.as_deref().map(input::question).transpose()?;
            let kind = paper_kind(out)?;
            let asked = CertificateQuestion { code, paper: size(*paper), kind, signature };
            let file = if *report {
                commands::certificate::report(&mut api, asked, &[])?
            } else {
                commands::certificate::paper(&mut api, asked, &[])?
            };
            input::leave(out, &file.bytes)?;
            Outcome::of(&Left::at(out), json, api.words())
        }
        Command::Cut { batch } => {
            let batch: Batch = input::question(batch)?;
            let plan = commands::cut::cut(&mut api, batch.clone(), &[])?;
            Outcome::of(&CutShown { plan, batch }, json, api.words())
        }
        Command::Settings { db, change } => stock::settings(&mut api, db, change.as_deref(), json),
        Command::Stock { db, command } => stock::stock(&mut api, db, command, json),
        Command::Batch { hoses, db, store, subject, out, paper } => {
            bench::open(&mut api, db)?;
            let file = SheetFile { subject, out: out.as_deref(), paper: *paper };
            stock::batch(&mut api, hoses, store.clone(), &file, json)
        }
        Command::Quote { hoses, codes, db, subject, out, paper } => {
            bench::open(&mut api, db)?;
            let file = SheetFile { subject, out: out.as_deref(), paper: *paper };
            stock::quote(&mut api, hoses.as_deref(), codes, &file, json)
        }
        Command::Round { what, db, on, within_days, store, out, paper, tags } => {
            bench::open(&mut api, db)?;
            let asked = RoundQuestion {
                on: *on,
                within_days: *within_days,
                store: store.clone(),
                ..RoundQuestion::default()
            };
            let paper = out.as_deref().map(|out| RoundFile { out, paper: *paper, tags: *tags });
            stock::round(&mut api, what, asked, paper, json)
        }
        Command::Policy { db, command } => {
            bench::open(&mut api, db)?;
            care::policy(&mut api, command, json)
        }
        Command::Route { ports } => route(&mut api, ports, json),
        Command::Flow { line } => {
            let answer = commands::oil::flow(&mut api, input::question(line)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Surge { line } => {
            let answer = commands::oil::surge(&mut api, input::question(line)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Oil { line } => {
            let answer = commands::oil::oil(&mut api, input::question(line)?, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Life { history } => {
            let answer = commands::life::life(&mut api, Nothing {}, &input::bytes(history)?)?;
            Outcome::of(&answer, json, api.words())
        }
        Command::Tag(command) => tag::tag(&mut api, command, json),
        Command::Fleet { db, command } => tag::fleet(&mut api, db, command, json),
        Command::Share { db, command } => share::share(&mut api, db, command.as_ref(), json),
        Command::Office { db, to } => office::office(&mut api, db, to, json),
        Command::Register { db, command } => register(&mut api, db, command, json),
        Command::Diagnose { db, out } => {
            // One that is there and can not be opened is what the file is made for.
            if let Some(db) = db
                && let Err(why) = bench::open(&mut api, db)
                && !db.exists()
            {
                return Err(why);
            }
            input::leave(out, &commands::diagnose::diagnose(&mut api, Nothing {}, &[])?.bytes)?;
            Outcome::of(&Left::at(out), json, api.words())
        }
        Command::Schema { name } => Outcome::of(&Schemas::of(name.as_deref())?, json, api.words()),
        #[cfg(feature = "serve")]
        Command::Serve { db, ui, port } => {
            api.open(db)?;
            api.speak_as_set();
            let token = uuid::Uuid::new_v4().simple().to_string();
            crate::serve::serve(api, ui, *port, &token)?;
            Ok(Outcome { text: String::new(), exit: 0 })
        }
    }
}

/// Ports by their vectors, or how they face: the document says which.
fn route(api: &mut Api, ports: &Path, json: bool) -> Result<Outcome, ApiError> {
    let document = hosewright_api::document(&input::text(ports)?)?;
    if document.get("facing").is_some() {
        let answer = commands::route::field(api, hosewright_api::question(document)?, &[])?;
        return Outcome::of(&answer, json, api.words());
    }
    let answer = commands::route::route(api, hosewright_api::question(document)?, &[])?;
    Outcome::of(&answer, json, api.words())
}

/// A sheet as it is asked for.
pub struct SheetFile<'a> {
    /// What it is for.
    pub subject: &'a str,
    /// The file; none where none is left.
    pub out: Option<&'a Path>,
    /// Size of the paper.
    pub paper: Paper,
}

fn make(api: &mut Api, asked: MakeQuestion, file: &SheetFile<'_>, json: bool) -> Result<Outcome, ApiError> {
    let subject = file.subject.to_owned();
    let made = match commands::make::make(api, asked.clone(), &[]) {
        Ok(made) => made,
        // A stop is an answer, not a wrong input: it is shown as the check shows it.
        Err(refused) => {
            let checked = commands::check::check(api, asked.question, &[])?;
            let stopped = checked.content.verdict == Verdict::Stop;
            return if stopped { Outcome::of(&checked, json, api.words()) } else { Err(refused) };
        }
    };
    if let Some(out) = file.out {
        let (kind, paper) = (paper_kind(out)?, size(file.paper));
        let asked = PaperQuestion { make: asked, subject: subject.clone(), paper, kind };
        let file = commands::make::paper(api, asked, &[])?;
        input::leave(out, &file.bytes)?;
    }
    Outcome::of(&SheetShown { sheet: made, subject }, json, api.words())
}

/// The kind of paper that a file's ending says.
///
/// # Errors
/// It is none that is made.
pub fn paper_kind(out: &Path) -> Result<PaperKind, ApiError> {
    match ending(out).as_str() {
        "pdf" => Ok(PaperKind::Pdf),
        "txt" => Ok(PaperKind::Text),
        "json" => Ok(PaperKind::Json),
        "svg" => Ok(PaperKind::Svg),
        other => Err(no_such_kind(out, other, "pdf, txt, json or svg")),
    }
}

/// The size of the paper.
pub fn size(paper: Paper) -> PaperSize {
    match paper {
        Paper::A4 => PaperSize::A4,
        Paper::Letter => PaperSize::Letter,
    }
}

/// The ending of a file's name, in lower case.
pub fn ending(path: &Path) -> String {
    path.extension().map(|ending| ending.to_string_lossy().to_lowercase()).unwrap_or_default()
}

/// A file whose ending says no kind that is known.
pub fn no_such_kind(path: &Path, ending: &str, known: &str) -> ApiError {
    ApiError::input("out", format!("{} ends in \"{ending}\"; {known} is known", path.display()))
}

/// Runs a command on a register. One that this command begins stays only if something was written in it.
fn register(api: &mut Api, db: &Path, command: &Register, json: bool) -> Result<Outcome, ApiError> {
    let began = !db.exists();
    let outcome = on_register(api, db, command, json);
    if began {
        api.discard_if_empty()?;
    }
    outcome
}

fn on_register(api: &mut Api, db: &Path, command: &Register, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Register::Restore { backup } => api.restore_from(backup, db)?,
        // The list is there for the one whose register can not be opened.
        Register::Backups { keep: false } => drop(open(api, db, command)),
        _ => open(api, db, command)?,
    }
    match command {
        Register::Match { list } => {
            let asked =
                ListMatchQuestion { name: list.display().to_string(), header_row: None, columns: None };
            let answer = commands::register::matches(api, asked, &input::bytes(list)?)?;
            Outcome::of(&answer, json, api.words())
        }
        Register::Import { list, how, dry_run } => {
            let How { header_row, columns, fixed, leave_out } =
                how.as_deref().map(input::question).transpose()?.unwrap_or_default();
            let name = list.display().to_string();
            let asked = Import { name, dry_run: *dry_run, header_row, columns, fixed, leave_out };
            let answer = commands::register::import(api, asked, &input::bytes(list)?)?;
            Outcome::of(&answer, json, api.words())
        }
        Register::Export { out } => export(api, out, json),
        Register::Record { events } => {
            let document = hosewright_api::document(&input::text(events)?)?;
            let events: Vec<RecordEvent> = match document {
                list @ serde_json::Value::Array(_) => hosewright_api::question(list)?,
                one => vec![hosewright_api::question(one)?],
            };
            Outcome::of(&commands::register::record(api, Record { events }, &[])?, json, api.words())
        }
        Register::Show { what, hose } => show(api, what, hose.as_deref(), json),
        Register::Due { .. } => care::due(api, command, json),
        Register::Inspect { .. } => care::inspect(api, command, json),
        Register::Survey { machine } => care::survey(api, machine, json),
        Register::Affected { code } => care::affected(api, code.as_deref(), json),
        Register::Hoses { .. } => care::hoses(api, command, json),
        Register::Life { by, on, since, failure_cost, planned_cost, out, paper } => {
            let by = match by {
                LivesBy::Hose => commands::register::LivesBy::Hose,
                LivesBy::Line => commands::register::LivesBy::Line,
                LivesBy::Load => commands::register::LivesBy::Load,
                LivesBy::Machine => commands::register::LivesBy::Machine,
                LivesBy::Place => commands::register::LivesBy::Place,
            };
            let (on, since) = (*on, *since);
            let (failure_cost, planned_cost) = (*failure_cost, *planned_cost);
            let asked = LivesQuestion { by, on, since, failure_cost, planned_cost };
            if let Some(out) = out {
                let (kind, paper) = (paper_kind(out)?, size(*paper));
                let asked = LivesPaper { lives: asked, paper, kind };
                input::leave(out, &commands::register::life_paper(api, asked, &[])?.bytes)?;
            }
            let answer = commands::register::life(api, asked, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Register::Search { words: text } => {
            let answer = commands::register::search(api, Search { words: text.clone(), limit: None }, &[])?;
            Outcome::of(&answer, json, api.words())
        }
        Register::Photo(command) => photo::photo(api, command, json),
        Register::Merge { bundle } => {
            let merged = commands::register::merge(api, Nothing {}, &input::bytes(bundle)?)?;
            api.take_photos(bundle)?;
            Outcome::of(&merged, json, api.words())
        }
        Register::Backup { out } => {
            api.backup_to(out)?;
            Outcome::of(&Left::at(out), json, api.words())
        }
        Register::Backups { keep } => {
            let list = if *keep { commands::register::keep_backup } else { commands::register::backups };
            Outcome::of(&list(api, Nothing {}, &[])?, json, api.words())
        }
        Register::Rebuild => {
            Outcome::of(&commands::register::rebuild(api, Nothing {}, &[])?, json, api.words())
        }
        Register::Restore { .. } | Register::Verify => {
            let answer = commands::register::verify(api, Nothing {}, &[])?;
            let faults = answer.content.faults.len();
            if faults > 0 {
                return Err(ApiError::file(db.display().to_string(), answer.content.faults.join(" ")));
            }
            Outcome::of(&answer, json, api.words())
        }
    }
}

/// Opens the register; only commands that write begin one where there is none.
fn open(api: &mut Api, db: &Path, command: &Register) -> Result<(), ApiError> {
    let begins = matches!(
        command,
        Register::Match { .. } | Register::Import { .. } | Register::Record { .. } | Register::Merge { .. }
    );
    if !begins && !db.exists() {
        return Err(ApiError::file(
            db.display().to_string(),
            format!("there is no register at {}; `import`, `record` or `merge` begin one", db.display()),
        ));
    }
    api.open(db)
}

/// A hose, a place or a machine.
fn show(api: &mut Api, what: &str, hose: Option<&str>, json: bool) -> Result<Outcome, ApiError> {
    let hose = hose.map(|code| code.parse().map_err(|error| ApiError::input("hose", error))).transpose()?;
    match commands::register::named(api, what)? {
        Named::Hose(_) | Named::Machine(_) if hose.is_some() => {
            Err(ApiError::input("hose", "a hose is held against a place; name the place"))
        }
        Named::Hose(code) => {
            Outcome::of(&commands::register::show(api, ShowQuestion { code }, &[])?, json, api.words())
        }
        Named::Place(place) => Outcome::of(
            &commands::register::place(api, PlaceQuestion { place, hose }, &[])?,
            json,
            api.words(),
        ),
        Named::Machine(machine) => {
            let sheet = commands::register::machine(api, MachineQuestion { machine }, &[])?;
            Outcome::of(&sheet, json, api.words())
        }
    }
}

fn export(api: &mut Api, out: &Path, json: bool) -> Result<Outcome, ApiError> {
    let kind = match ending(out).as_str() {
        "csv" => ExportKind::Csv,
        "xlsx" => ExportKind::Xlsx,
        "json" => ExportKind::Json,
        "zip" => ExportKind::Zip,
        "ics" => ExportKind::Ics,
        "bundle" => {
            let file = commands::register::export_bundle(api, Nothing {}, &[])?;
            input::leave(out, &file.bytes)?;
            api.give_photos(out)?;
            return Outcome::of(&Left::at(out), json, api.words());
        }
        other => return Err(no_such_kind(out, other, "csv, xlsx, zip, json, ics or bundle")),
    };
    let File { bytes, .. } = commands::register::export(api, Export { kind }, &[])?;
    input::leave(out, &bytes)?;
    Outcome::of(&Left::at(out), json, api.words())
}
