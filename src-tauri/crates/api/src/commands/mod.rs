//! The one table of commands: name, function, question and answer. Every way in goes through it, and
//! the JSON Schemas and the types of the screens are made from it.

pub mod batch;
pub mod bench;
pub mod care;
pub mod certificate;
pub mod check;
mod contradiction;
pub mod crimp;
pub mod cut;
pub mod cutoff;
pub mod diagnose;
pub mod find;
pub mod fleet;
pub mod job;
pub mod left_out;
pub mod life;
mod lookalike;
pub mod make;
pub mod member;
pub mod oil;
mod paper;
pub mod people;
pub mod photo;
pub mod picture;
pub mod press;
pub mod print;
pub mod quote;
pub mod register;
pub mod round;
pub mod route;
pub mod settings;
pub mod share;
pub mod stock;
mod stray;
pub mod supplier;
pub mod tables;
pub mod tag;
pub mod unfinished;
pub mod work;

use crate::typescript::Declarations;
use crate::{Answer, Api, ApiError, question};
use schemars::{JsonSchema, Schema};
use serde::{Deserialize, Serialize};
use serde_json::Value;
use ts_rs::TS;

/// A question with nothing in it.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Nothing {}

/// A file that a command leaves. Its bytes go beside the document, never inside it.
#[derive(Debug, Clone, PartialEq, Eq, TS)]
#[ts(rename = "FileMade")]
pub struct File {
    /// A name to save it under.
    pub name: String,
    /// Its MIME type.
    pub mime: &'static str,
    /// Its content.
    #[ts(skip)]
    pub bytes: Vec<u8>,
}

/// Commands that wait for a network. Whoever answers several questions at a time gives them an [`Api`] of their own over
/// the same register, so that nothing else waits with them.
pub const SLOW: &[&str] = &["share.exchange"];

/// What a command answers with.
#[derive(Debug, Clone, PartialEq)]
pub enum Reply {
    /// A JSON document.
    Document(Value),
    /// A file, as bytes.
    File(File),
}

/// What can be sent as a reply.
trait IntoReply {
    fn reply(self) -> Result<Reply, ApiError>;
    fn schema() -> Schema;
}

impl<T: Serialize + JsonSchema> IntoReply for Answer<T> {
    fn reply(self) -> Result<Reply, ApiError> {
        serde_json::to_value(self).map(Reply::Document).map_err(|error| ApiError::input("", error))
    }

    fn schema() -> Schema {
        schemars::schema_for!(Self)
    }
}

impl IntoReply for File {
    fn reply(self) -> Result<Reply, ApiError> {
        Ok(Reply::File(self))
    }

    fn schema() -> Schema {
        schemars::json_schema!({"description": "A file, as bytes.", "type": "string", "format": "binary"})
    }
}

/// What can be known of a command without running it.
#[derive(Debug, Clone, PartialEq)]
pub struct Described {
    /// Its name.
    pub name: &'static str,
    /// JSON Schema of its question.
    pub input: Schema,
    /// JSON Schema of its answer.
    pub output: Schema,
}

macro_rules! table {
    ($($name:literal => $function:path: $input:ty => $output:ty,)*) => {
        /// The names of all commands.
        pub const NAMES: &[&str] = &[$($name),*];

        impl Api {
            /// Runs a command by its name. `bytes` is the picture, list or bundle of those that take one.
            ///
            /// # Errors
            /// A name that is no command, a question that is wrong, and what the command itself refuses.
            pub fn call(&mut self, name: &str, input: Value, bytes: &[u8]) -> Result<Reply, ApiError> {
                let key = holds_a_key(&input);
                self.answered(name, input, bytes).map_err(|error| {
                    let error = error.in_words(&self.words);
                    // What reads keys says what is wrong with one, and repeats none.
                    let of_keys = name.starts_with("fleet.") && ["", "text", "from"].contains(&error.field.as_str());
                    match key && !of_keys {
                        true => ApiError {
                            field: String::new(),
                            message: self.words.say("tag-is-a-fleets-key", &[]),
                            ..error
                        },
                        false => error,
                    }
                })
            }

            fn answered(&mut self, name: &str, input: Value, bytes: &[u8]) -> Result<Reply, ApiError> {
                match name {
                    $($name => {
                        let output: $output = $function(self, question::<$input>(input)?, bytes)?;
                        output.reply()
                    })*
                    _ => Err(ApiError::input("", format!("\"{name}\" is no command; there are {}", NAMES.join(", ")))),
                }
            }
        }

        /// The types of all commands in TypeScript.
        pub fn typescript() -> String {
            let mut declared = Declarations::new();
            $(declared.command::<$input, $output>($name);)*
            declared.named_by_hand::<tag::TagJudged>();
            declared.text()
        }

        /// All commands with their schemas.
        pub fn described() -> Vec<Described> {
            vec![$(Described {
                name: $name,
                input: schemars::schema_for!($input),
                output: <$output as IntoReply>::schema(),
            }),*]
        }
    };
}

/// Whether a fleet's key stands in a question, wherever. No command but those of the fleet has a use for it, and no error
/// repeats it.
fn holds_a_key(input: &Value) -> bool {
    match input {
        Value::String(text) => hosewright_core::fleet::is_one(text),
        Value::Array(list) => list.iter().any(holds_a_key),
        Value::Object(fields) => fields.values().any(holds_a_key),
        _ => false,
    }
}

table! {
    "tables" => tables::tables: Nothing => Answer<tables::Tables>,
    "find" => find::find: hosewright_core::find::Readings => Answer<hosewright_core::find::Found>,
    "explain" => find::explain: hosewright_core::find::Why => Answer<hosewright_core::find::Explained>,
    "print" => print::print: print::PrintQuestion => Answer<hosewright_core::print::Printed>,
    "check" => check::check: hosewright_core::check::Question => Answer<hosewright_core::check::Checked>,
    "make" => make::make: make::MakeQuestion => Answer<hosewright_core::make::BuildSheet>,
    "make.paper" => make::paper: make::PaperQuestion => File,
    "cut" => cut::cut: hosewright_core::cutting::Batch => Answer<hosewright_core::cutting::CutPlan>,
    "cutoff.measured" => cutoff::measured: hosewright_core::cutoff::CutoffReadings => Answer<hosewright_core::cutoff::CutoffMeasured>,
    "crimp" => crimp::crimp: hosewright_core::crimp::CrimpQuestion => Answer<hosewright_core::crimp::Crimped>,
    "bench.judge" => bench::judge: bench::BenchQuestion => Answer<hosewright_core::bench::BenchJudged>,
    "bench.record" => bench::record: bench::BenchRecordQuestion => Answer<bench::BenchRecorded>,
    "bench.undo" => stock::undo: stock::BenchUndo => Answer<stock::BenchUndone>,
    "stock.list" => stock::list: stock::StockQuestion => Answer<stock::StockList>,
    "stock.change" => stock::change: stock::StockChange => Answer<stock::StockChangedAnswer>,
    "stock.take" => stock::take: stock::StockTake => Answer<stock::StockTaken>,
    "stock.need" => stock::need: stock::NeedQuestion => Answer<stock::Need>,
    "batch" => batch::batch: batch::BatchQuestion => Answer<batch::Planned>,
    "batch.paper" => batch::paper: batch::BatchPaper => File,
    "quote" => quote::quote: quote::QuoteQuestion => Answer<quote::Quote>,
    "quote.paper" => quote::paper: quote::QuotePaper => File,
    "policy.list" => care::policies: Nothing => Answer<care::Policies>,
    "policy.at" => care::policy_at: care::PolicyAtQuestion => Answer<care::PolicyAt>,
    "policy.try" => care::policy_try: care::PolicyTry => Answer<care::PolicyTried>,
    "inspect.try" => care::inspect_try: care::InspectTry => Answer<care::InspectTried>,
    "desk.hoses" => care::hoses: care::DeskQuestion => Answer<care::DeskTable>,
    "desk.codes" => care::codes: care::DeskQuestion => Answer<care::HoseCodes>,
    "desk.glance" => care::glance: care::GlanceQuestion => Answer<care::Glance>,
    "desk.export" => care::desk_export: care::DeskExport => File,
    "round" => round::round: round::RoundQuestion => Answer<round::Round>,
    "round.paper" => care::round_paper: care::RoundPaper => File,
    "certificate.paper" => certificate::paper: certificate::CertificateQuestion => File,
    "report.paper" => certificate::report: certificate::CertificateQuestion => File,
    "press" => press::press: press::PressQuestion => Answer<press::Press>,
    "supplier.match" => supplier::matches: supplier::SupplierMatchQuestion => Answer<supplier::SupplierMatches>,
    "supplier.import" => supplier::import: supplier::SupplierImport => Answer<supplier::SupplierImported>,
    "supplier.keep" => supplier::keep: supplier::SupplierRowQuestion => Answer<supplier::SupplierId>,
    "supplier.list" => supplier::list: supplier::SupplierListQuestion => Answer<supplier::SupplierList>,
    "supplier.remove" => supplier::remove: supplier::SupplierRemove => Answer<supplier::SupplierRemoved>,
    "supplier.lookup" => supplier::lookup: supplier::SupplierLookupQuestion => Answer<supplier::SupplierLookup>,
    "route" => route::route: hosewright_core::route::Layout => Answer<hosewright_core::route::Routed>,
    "route.field" => route::field: hosewright_core::route::field::FieldQuestion => Answer<hosewright_core::route::field::FieldRouted>,
    "flow" => oil::flow: hosewright_core::flow::FlowQuestion => Answer<hosewright_core::flow::FlowAnswer>,
    "surge" => oil::surge: hosewright_core::flow::SurgeQuestion => Answer<hosewright_core::flow::SurgeAnswer>,
    "oil" => oil::oil: hosewright_core::flow::OilQuestion => Answer<hosewright_core::flow::OilAnswer>,
    "life" => life::life: Nothing => Answer<hosewright_core::life::Life>,
    "tag.make" => tag::make: tag::TagQuestion => Answer<tag::TagMade>,
    "tag.of" => tag::of: tag::TagOfQuestion => Answer<tag::TagOf>,
    "tag.preview" => tag::preview: tag::LabelQuestion => Answer<tag::LabelPreview>,
    "tag.label" => tag::label: tag::LabelQuestion => File,
    "tag.read" => tag::read: tag::ReadQuestion => Answer<tag::Scanned>,
    "tag.open" => tag::open: tag::OpenQuestion => Answer<tag::Scan>,
    "tag.adopt" => tag::adopt: tag::TagAdopt => Answer<tag::TagAdopted>,
    "tag.batch" => tag::batch: tag::LabelBatchQuestion => Answer<tag::LabelBatch>,
    "tag.batch.paper" => tag::batch_paper: tag::LabelBatchQuestion => File,
    "scan.list" => tag::scans: tag::ScanListQuestion => Answer<tag::ScanList>,
    "fleet.show" => fleet::show: Nothing => Answer<fleet::Fleets>,
    "fleet.begin" => fleet::begin: fleet::FleetBegin => Answer<fleet::Fleets>,
    "fleet.hand-on" => fleet::hand_on: Nothing => Answer<fleet::FleetHandOn>,
    "fleet.look" => fleet::look: fleet::FleetLook => Answer<fleet::FleetSeen>,
    "fleet.join" => fleet::join: fleet::FleetJoin => Answer<fleet::Fleets>,
    "fleet.leave" => fleet::leave: fleet::FleetLeave => Answer<fleet::Fleets>,
    "fleet.found" => member::found: Nothing => Answer<fleet::Fleets>,
    "fleet.admit" => member::admit: member::FleetAdmit => Answer<fleet::Fleets>,
    "fleet.withdraw" => member::withdraw: member::FleetWithdraw => Answer<fleet::Fleets>,
    "share.show" => share::show: Nothing => Answer<share::Shared>,
    "share.set" => share::set: share::ShareSet => Answer<share::Shared>,
    "share.exchange" => share::exchange: Nothing => Answer<share::Exchanged>,
    "share.left-out" => left_out::left_out: left_out::LeftOutQuestion => Answer<left_out::LeftOutList>,
    "job.keep" => job::keep: job::Keep => Answer<job::Job>,
    "job.list" => job::list: Nothing => Answer<job::Jobs>,
    "job.close" => job::close: job::Job => Answer<job::Job>,
    "unfinished.keep" => unfinished::keep: unfinished::UnfinishedKeep => Answer<Nothing>,
    "unfinished.read" => unfinished::read: unfinished::UnfinishedWhat => Answer<unfinished::UnfinishedRead>,
    "unfinished.file" => unfinished::file: unfinished::UnfinishedWhat => File,
    "unfinished.close" => unfinished::close: unfinished::UnfinishedWhat => Answer<Nothing>,
    "people.list" => people::list: Nothing => Answer<people::People>,
    "people.add" => people::add: people::NewPerson => Answer<people::PersonAdded>,
    "people.erase" => people::erase: people::PersonErased => Answer<people::PersonErased>,
    "photo.add" => photo::add: photo::PhotoAdd => Answer<photo::PhotoOnRecord>,
    "photo.list" => photo::list: photo::PhotoQuestion => Answer<photo::Photos>,
    "photo.read" => photo::read: photo::PhotoRead => File,
    "settings.read" => settings::read: Nothing => Answer<settings::SettingsRead>,
    "settings.write" => settings::write: settings::Settings => Answer<settings::Settings>,
    "work.look" => work::look: Nothing => Answer<crate::WorkDone>,
    "work.stop" => work::look: Nothing => Answer<crate::WorkDone>,
    "register.overview" => register::overview: Nothing => Answer<register::Overview>,
    "register.machine" => register::machine: register::MachineQuestion => Answer<register::MachineSaid>,
    "register.place" => register::place: register::PlaceQuestion => Answer<register::PlaceSaid>,
    "register.show" => register::show: register::ShowQuestion => Answer<register::HoseShown>,
    "register.due" => care::due: care::DueQuestion => Answer<care::DueList>,
    "register.due.export" => care::due_export: care::DueExport => File,
    "register.survey" => care::survey: care::SurveyQuestion => Answer<care::Survey>,
    "register.affected" => care::affected: care::AffectedQuestion => Answer<care::Affected>,
    "register.life" => register::life: register::LivesQuestion => Answer<register::Lives>,
    "register.life.paper" => register::life_paper: register::LivesPaper => File,
    "register.search" => register::search: register::Search => Answer<register::Hits>,
    "register.id" => register::id: Nothing => Answer<register::Id>,
    "register.record" => register::record: register::Record => Answer<register::Recorded>,
    "register.match" => register::matches: register::ListMatchQuestion => Answer<register::ListMatches>,
    "register.import" => register::import: register::Import => Answer<register::Imported>,
    "register.export" => register::export: register::Export => File,
    "register.bundle" => register::export_bundle: Nothing => File,
    "register.merge" => register::merge: Nothing => Answer<register::Merged>,
    "register.verify" => register::verify: Nothing => Answer<register::Verified>,
    "register.rebuild" => register::rebuild: Nothing => Answer<register::Verified>,
    "register.backup" => register::backup: Nothing => File,
    "register.backups" => register::backups: Nothing => Answer<register::Backups>,
    "register.backups.keep" => register::keep_backup: Nothing => Answer<register::Backups>,
    "diagnose" => diagnose::diagnose: Nothing => File,
    "register.restore" => register::restore: register::RestoreQuestion => Answer<register::Verified>,
}
