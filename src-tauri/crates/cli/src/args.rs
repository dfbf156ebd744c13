//! What can be asked on the command line.

use clap::{Args, Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// Find out what a burst hose was, check what may replace it, make it, tag it, record it.
///
/// Inputs are JSON documents from a file, or from - (standard input). Exit codes: 0 done; 1 done, and
/// the verdict is stop; 2 the input is wrong; 3 there is nothing to answer with (no tag, no such hose,
/// nothing found); 4 a file or register can not be read or written. The maker's instructions, local codes
/// and licensed practice come first.
#[derive(Debug, Parser)]
#[command(name = "hosewright", version, max_term_width = 80)]
pub struct Arguments {
    /// Answer with one JSON document instead of plain text.
    #[arg(long, global = true)]
    pub json: bool,
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
}

/// The commands, in the order the day goes.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Readings of a failed hose -> what it was.
    Find {
        /// The readings, as JSON; - reads standard input.
        readings: PathBuf,
    },
    /// Why a candidate of `find` stands where it stands -> what each reading says for it.
    Explain {
        /// The same readings that `find` takes; - reads standard input.
        readings: PathBuf,
        /// Which part.
        #[arg(long, value_enum, default_value = "hose")]
        of: Of,
        /// The candidate's place in the list; 1 is the likeliest.
        #[arg(long, default_value_t = 1, value_parser = clap::value_parser!(u16).range(1..))]
        candidate: u16,
        /// The rival's place; unless it is given, the likeliest other.
        #[arg(long, value_parser = clap::value_parser!(u16).range(1..))]
        rival: Option<u16>,
    },
    /// What stands on the cover -> fields; `?` or `.` for a worn letter, `*` for any number of them.
    Print {
        /// The printing, in quotes.
        text: String,
    },
    /// A spec under its service -> may it be made.
    Check {
        /// Spec, service and what was found, as JSON; - reads standard input.
        question: PathBuf,
    },
    /// A spec that may be made -> its build sheet.
    Make {
        /// The same document that `check` takes.
        question: PathBuf,
        /// Insertion, ferrule, die set and crimp of each end, from your supplier, as a JSON list.
        #[arg(long)]
        settings: Option<PathBuf>,
        /// What the sheet is for, on every page: the tag's code, the machine and place.
        #[arg(long, default_value = "")]
        subject: String,
        /// Leave the sheet as a file: .pdf, .txt, .json or .svg.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
        /// The register whose suppliers' tables fill ends without settings.
        #[arg(long)]
        db: Option<PathBuf>,
        /// Whose table, where rows of several fit.
        #[arg(long, requires = "db")]
        supplier: Option<String>,
    },
    /// Readings over a crimped ferrule -> may it be ticked.
    Crimp {
        /// Target, tolerance, readings and instrument, as JSON; - reads standard input.
        readings: PathBuf,
    },
    /// Readings of a new end -> its cut-off.
    Cutoff {
        /// Readings and instrument, as JSON; - reads standard input.
        readings: PathBuf,
    },
    /// What was read, measured and proved -> may it be tagged; with --record its record.
    Bench {
        /// What was made and what was done, as JSON; - reads standard input.
        work: PathBuf,
        /// The register's file.
        #[arg(long)]
        db: Option<PathBuf>,
        /// Write the assembly down with all that was done.
        #[arg(long, requires = "db")]
        record: bool,
    },
    /// The crimp tables of your own suppliers.
    Supplier {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do with them.
        #[command(subcommand)]
        command: Supplier,
    },
    /// How the crimps lie against their targets, die set by die set, and what care the press is due.
    Press {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// Of this die set alone.
        #[arg(long)]
        die_set: Option<String>,
        /// Count as of this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
    },
    /// The certificate of a hose that was made here, as a file: .pdf, .txt, .json or .svg.
    Certificate {
        /// The code on its tag.
        code: String,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// The file.
        #[arg(long)]
        out: PathBuf,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
        /// Leave out what only the bench needs: a report of the job to share.
        #[arg(long)]
        report: bool,
        /// Name and strokes of a signature, as JSON.
        #[arg(long)]
        signature: Option<PathBuf>,
    },
    /// Pieces wanted and hose that is there -> which is cut from which reel or offcut.
    Cut {
        /// Cut lengths, reels and offcuts, the saw's kerf and the least useful rest, as JSON; - reads standard input.
        batch: PathBuf,
    },
    /// The settings of this register's device: van, kerf, prices and the rest.
    Settings {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// Settings to be changed, as JSON; the others stay. - reads standard input.
        change: Option<PathBuf>,
    },
    /// What is on the vans and shelves.
    Stock {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do with it.
        #[command(subcommand)]
        command: Stock,
    },
    /// Several hoses -> one cut list over the van's pieces, parts against stock, the order of the press.
    Batch {
        /// The hoses, as JSON; - reads standard input.
        hoses: PathBuf,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// The van or shelf; else the one of the settings, or the only one.
        #[arg(long)]
        store: Option<String>,
        /// What the sheet is for, on every page.
        #[arg(long, default_value = "")]
        subject: String,
        /// Leave the batch as a file: .pdf, .txt, .json or .svg.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
    },
    /// What hoses cost by your own prices and times.
    Quote {
        /// The hoses, as the JSON that `batch` takes; - reads standard input.
        #[arg(required_unless_present = "codes")]
        hoses: Option<PathBuf>,
        /// Hoses on record by their codes: what went into them.
        #[arg(long, num_args = 1..)]
        codes: Vec<String>,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What the sheet is for, on every page.
        #[arg(long, default_value = "")]
        subject: String,
        /// Leave the quote as a file: .pdf, .txt, .json or .svg.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
    },
    /// The visits of a day -> what falls due there, against the van, and what to load.
    Round {
        /// Machines and places by name or id.
        #[arg(required = true)]
        what: Vec<String>,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// On this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// How many days ahead counts as due.
        #[arg(long)]
        within_days: Option<u32>,
        /// The van; else the one of the settings, or the only one.
        #[arg(long)]
        store: Option<String>,
        /// Leave the round as a file: .pdf, .txt, .json or .svg.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
        /// With each hose's code on the paper to be scanned.
        #[arg(long, requires = "out")]
        tags: bool,
    },
    /// Your own rules of service, storage and inspection over the guides of the tables.
    Policy {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do.
        #[command(subcommand)]
        command: Policy,
    },
    /// Where the ports are -> how tight the hose bends.
    Route {
        /// The ports and poses as vectors, or how they face, as JSON; - reads standard input.
        ports: PathBuf,
    },
    /// Flow through a bore -> speed and pressure drop.
    Flow {
        /// Flow, bore, length and fluid, as JSON; - reads standard input.
        line: PathBuf,
    },
    /// A flow that is stopped -> the pressure peak.
    Surge {
        /// Line, fluid and closure, as JSON; - reads standard input.
        line: PathBuf,
    },
    /// A hose and its service -> speed of the oil, pressure drop, sizes that would do, surge.
    Oil {
        /// Spec and service, as JSON; - reads standard input.
        line: PathBuf,
    },
    /// Make tags and labels, and read them back.
    #[command(subcommand)]
    Tag(Tag),
    /// The fleet whose seal is on your tags, and this device's keys.
    Fleet {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do.
        #[command(subcommand)]
        command: Fleet,
    },
    /// The storage over which the devices of a fleet exchange what they wrote; without a command, what was sent and what waits.
    Share {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do.
        #[command(subcommand)]
        command: Option<Share>,
    },
    /// Keep a PostgreSQL database up to the register, for a planner's own tools; exchanges first where a storage is chosen. Safe to stop and run again.
    Office {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// The database, postgres://user@server/name. Its password may stand there or in PGPASSWORD.
        #[arg(long)]
        to: String,
    },
    /// Times to failure -> how long hoses last.
    Life {
        /// CSV with the columns time, failed and, where known, entered; - reads standard input.
        history: PathBuf,
    },
    /// The records: machines, places, hoses and what became of them.
    Register {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// What to do with it.
        #[command(subcommand)]
        command: Register,
    },
    /// Leave a file for a report of a fault: versions, counts and what does not verify; no names, places or codes.
    Diagnose {
        /// The register's file; without it the program alone.
        #[arg(long)]
        db: Option<PathBuf>,
        /// The file, .zip.
        #[arg(long)]
        out: PathBuf,
    },
    /// The JSON Schema of a command's input and answer; without a name, the list of commands.
    Schema {
        /// A command, such as `find`.
        name: Option<String>,
    },
    /// Serve the screens and the same commands on the loopback, for development and browser tests.
    #[cfg(feature = "serve")]
    Serve {
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// The built screens.
        #[arg(long, default_value = "ui/dist")]
        ui: PathBuf,
        /// Port; 0 takes a free one and prints it.
        #[arg(long, default_value_t = 0)]
        port: u16,
    },
}

/// A part of the job.
#[derive(Debug, Clone, Copy, ValueEnum)]
pub enum Of {
    /// The hose.
    Hose,
    /// End A.
    #[value(name = "A")]
    A,
    /// End B.
    #[value(name = "B")]
    B,
}

/// What can be done with suppliers' tables.
#[derive(Debug, Subcommand)]
pub enum Supplier {
    /// What the columns of a sheet seem to be.
    Match {
        /// CSV or XLSX.
        sheet: PathBuf,
    },
    /// Take a sheet in, all rows or none.
    Import {
        /// CSV or XLSX.
        sheet: PathBuf,
        /// Whose it is, where no column says so.
        #[arg(long)]
        supplier: Option<String>,
        /// Header row, columns, values for all rows and rows left out, as JSON.
        #[arg(long)]
        how: Option<PathBuf>,
        /// Say what would be taken and refused; change nothing. Ends with 2 if any row would be refused.
        #[arg(long)]
        dry_run: bool,
    },
    /// The suppliers and their rows.
    List {
        /// Of this supplier alone.
        #[arg(long)]
        supplier: Option<String>,
    },
    /// What is known for a spec: the rows that fit, the last time, learned cut-offs.
    Lookup {
        /// The spec, as JSON; - reads standard input.
        spec: PathBuf,
    },
    /// Keep a row entered by hand.
    Keep {
        /// The row, as JSON; - reads standard input.
        row: PathBuf,
    },
    /// Take a supplier's rows away.
    Remove {
        /// Its name.
        supplier: String,
    },
}

/// What can be done with stock.
#[derive(Debug, Subcommand)]
pub enum Stock {
    /// What is there, what is low, and what can not be.
    List {
        /// Of this van or shelf alone.
        #[arg(long)]
        store: Option<String>,
        /// In this bin alone.
        #[arg(long)]
        bin: Option<String>,
        /// With these words in its name.
        #[arg(long)]
        text: Option<String>,
        /// What is low alone.
        #[arg(long)]
        low: bool,
        /// Also what is used up.
        #[arg(long)]
        all: bool,
    },
    /// Take things in, or do anything else with them: a list of changes, all or none.
    Load {
        /// The changes, as JSON; - reads standard input.
        changes: PathBuf,
    },
    /// Move things to another van, shelf or bin.
    Move {
        /// Words that only one thing has in its name, or the id of a piece of hose.
        what: String,
        /// From where; a piece is where it is.
        #[arg(long)]
        from: Option<String>,
        /// Out of which bin; out of those that have some without.
        #[arg(long)]
        from_bin: Option<String>,
        /// To where.
        #[arg(long)]
        to: String,
        /// How many; one without.
        #[arg(long, default_value_t = 1)]
        count: i64,
        /// Into which bin there.
        #[arg(long)]
        bin: Option<String>,
    },
    /// There are really so many, or a piece of hose is really that long.
    Correct {
        /// Words that only one thing has in its name, or the id of a piece of hose.
        what: String,
        /// Where.
        #[arg(long)]
        store: Option<String>,
        /// How many, or how many millimetres.
        #[arg(long)]
        to: f64,
        /// In which bin; needed where it lies in more than one.
        #[arg(long)]
        bin: Option<String>,
    },
    /// Throw things away, or what is left of a piece of hose.
    Scrap {
        /// Words that only one thing has in its name, or the id of a piece of hose.
        what: String,
        /// Where.
        #[arg(long)]
        store: Option<String>,
        /// How many; one without.
        #[arg(long, default_value_t = 1)]
        count: i64,
        /// Out of which bin; out of those that have some without.
        #[arg(long)]
        bin: Option<String>,
    },
    /// Put all of a thing into one bin, and set its low mark.
    Keep {
        /// Words that only one thing has in its name.
        what: String,
        /// Where.
        #[arg(long)]
        store: Option<String>,
        /// Its bin.
        #[arg(long)]
        bin: Option<String>,
        /// At or below how many it is low; of hose millimetres.
        #[arg(long)]
        low: Option<i64>,
    },
    /// Set what a thing costs, of hose a metre, in the currency of the settings.
    Price {
        /// Words that only one thing has in its name.
        what: String,
        /// Such as 12.50; without, the price is taken away.
        price: Option<String>,
    },
    /// What was counted against what was known: the differences, and with --save written down.
    Take {
        /// What was counted, as JSON; - reads standard input.
        counted: PathBuf,
        /// Write the differences down.
        #[arg(long)]
        save: bool,
    },
    /// What a build needs against what is there, and what may stand in for it.
    Need {
        /// The document that `check` takes; - reads standard input.
        question: PathBuf,
        /// Insertion, ferrule, die set and crimp of each end, from your supplier, as a JSON list.
        #[arg(long)]
        settings: Option<PathBuf>,
        /// The van or shelf; else the one of the settings, or the only one.
        #[arg(long)]
        store: Option<String>,
        /// How many such hoses.
        #[arg(long, default_value_t = 1)]
        count: u32,
    },
    /// Strike out the record of a build; what it used comes back, but for one that failed its proof.
    Undo {
        /// The code of the hose.
        code: String,
        /// Why.
        #[arg(long)]
        reason: String,
        /// Whether what it used comes back, where that is to be said.
        #[arg(long)]
        give_back: Option<bool>,
    },
}

/// What can be done with tags.
#[derive(Debug, Subcommand)]
pub enum Tag {
    /// A spec -> its label.
    Make {
        /// A spec, or the document that `check` takes; - reads standard input.
        spec: PathBuf,
        /// The label.
        #[command(flatten)]
        label: LabelFile,
        /// The register whose fleet seals it and whose record it is held against.
        #[arg(long)]
        db: Option<PathBuf>,
    },
    /// A hose on record -> its label again, under the code it has.
    Again {
        /// The code.
        code: String,
        /// The label.
        #[command(flatten)]
        label: LabelFile,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
    },
    /// Labels of a machine's hoses, of what is due, or of codes -> one PDF; without --out what it would hold.
    Batch {
        /// A machine, by its name or id, or words that only one has.
        #[arg(long, group = "of", required_unless_present_any = ["due", "code"])]
        machine: Option<String>,
        /// What falls due up to this day (YYYY-MM-DD).
        #[arg(long, group = "of")]
        due: Option<chrono::NaiveDate>,
        /// A hose's code; may be given again.
        #[arg(long, group = "of")]
        code: Vec<String>,
        /// What they are printed on.
        #[command(flatten)]
        stock: LabelOn,
        /// How they lie on paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: LabelPaper,
        /// The PDF.
        #[arg(long)]
        out: Option<PathBuf>,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
    },
    /// A picture of a tag -> the hose.
    Read {
        /// PNG or JPEG.
        photo: PathBuf,
        /// Every tag in the picture, not only the first.
        #[arg(long)]
        all: bool,
        /// The text of any code, ours or not.
        #[arg(long)]
        raw: bool,
        /// The register it is held against, and whose log of scans it goes in.
        #[arg(long)]
        db: Option<PathBuf>,
        /// Id of the place at which you stand.
        #[arg(long, requires = "db")]
        place: Option<String>,
    },
    /// A typed code, or a file with a tag's text -> the hose.
    Open {
        /// The code, or the file; - reads standard input.
        what: String,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
        /// Id of the place at which you stand.
        #[arg(long)]
        place: Option<String>,
    },
    /// A tag that the register has nothing of -> a hose on record.
    Adopt {
        /// A picture of it (PNG, JPEG), or a file with its text; - reads standard input.
        tag: PathBuf,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
    },
    /// What was scanned on this device, newest first.
    Scans {
        /// At most so many.
        #[arg(long, default_value_t = 100)]
        most: u32,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
    },
    /// Your label stocks; with --keep the list of them anew.
    Stocks {
        /// All stocks, as a JSON list; - reads standard input.
        #[arg(long)]
        keep: Option<PathBuf>,
        /// The register's file.
        #[arg(long)]
        db: PathBuf,
    },
}

/// A label of one hose.
#[derive(Debug, Clone, Args)]
pub struct LabelFile {
    /// The label's file: .png, .svg or .pdf.
    #[arg(long)]
    pub out: PathBuf,
    /// What it is printed on.
    #[command(flatten)]
    pub stock: LabelOn,
    /// Diameter over the hose's cover as measured, in mm, for a wrap; the tables' without.
    #[arg(long)]
    pub cover_od_mm: Option<f64>,
}

/// What labels are printed on.
#[derive(Debug, Clone, Args)]
pub struct LabelOn {
    /// A stock of yours, by its name.
    #[arg(long, requires = "db", conflicts_with_all = ["width_mm", "height_mm", "dpi", "form"])]
    pub stock: Option<String>,
    /// Width of the label.
    #[arg(long, default_value_t = 60.0)]
    pub width_mm: f64,
    /// Height of the label.
    #[arg(long, default_value_t = 40.0)]
    pub height_mm: f64,
    /// The printer's dots an inch.
    #[arg(long, default_value_t = 203)]
    pub dpi: u32,
    /// How it is fixed to the hose.
    #[arg(long, value_enum, default_value = "flag")]
    pub form: Form,
}

/// How a label is fixed to a hose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Form {
    /// Stands off the hose, flat.
    Flag,
    /// Stuck round the hose.
    Wrap,
    /// Flat, tied on or fixed beside it.
    Plate,
}

/// How labels lie on paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum LabelPaper {
    /// Each on a page of its own size.
    OneEach,
    /// ISO 216 A4.
    A4,
    /// US Letter.
    Letter,
}

/// What can be done with a fleet.
#[derive(Debug, Subcommand)]
pub enum Fleet {
    /// This device, its fleet, and the partners' fleets it knows.
    Show,
    /// Begin a fleet: from then on your tags carry its seal.
    Begin {
        /// What its people call it.
        name: String,
    },
    /// Leave the fleet's key as a QR code for another device. Whoever has it can make your tags.
    HandOn {
        /// The file: .svg or .txt. Only you may read it; delete it when the other device has joined.
        #[arg(long)]
        out: PathBuf,
    },
    /// Join a fleet by the key that another device left.
    Join {
        /// A picture of the QR code (PNG, JPEG), or its text; - reads standard input.
        key: PathBuf,
        /// Mark of the device that hands it on, as that device's own screen has it. Without, the key is only looked at.
        #[arg(long)]
        from: Option<String>,
        /// Only know its tags; make none for it.
        #[arg(long)]
        partner: bool,
    },
    /// Take a fleet's key off this device.
    Leave {
        /// The fleet's mark.
        mark: String,
    },
    /// Make this device the founder of its fleet, which has none yet: its word then says who belongs to it.
    Found,
    /// Admit a device that waits for the office's nod, or give a member another role.
    Admit {
        /// The device's mark, or the beginning of its id.
        device: String,
        /// What it may do.
        #[arg(long = "as", value_parser = ["reader", "technician", "planner"], default_value = "technician")]
        role: String,
    },
    /// Withdraw a lost device: what it wrote stays, what it signs from now on counts nowhere.
    Withdraw {
        /// The device's mark, or the beginning of its id.
        device: String,
        /// The last number of its series that stays; without, all that has come here.
        #[arg(long)]
        after: Option<u64>,
    },
}

/// What can be done with a fleet's storage.
#[derive(Debug, Subcommand)]
pub enum Share {
    /// Choose the storage: a folder, WebDAV or an S3-compatible service. Nothing is sent yet.
    Set {
        /// file:///folder, https://server/folder or s3://bucket/folder; "" takes the storage away.
        url: String,
        /// Address of an S3-compatible service.
        #[arg(long)]
        endpoint: Option<String>,
        /// Region of the bucket.
        #[arg(long)]
        region: Option<String>,
        /// Name of the account, or id of the key. The password or key itself is read from standard input.
        #[arg(long)]
        user: Option<String>,
    },
    /// Fetch what others wrote and send what this device wrote.
    Now,
    /// What a device wrote and does not count, and why.
    LeftOut {
        /// The device's mark, or the beginning of its id.
        device: String,
    },
}

/// What can be done with a register.
#[derive(Debug, Subcommand)]
pub enum Register {
    /// What the columns of a list of hoses seem to be, and what must be said before it can be read.
    Match {
        /// CSV or XLSX.
        list: PathBuf,
    },
    /// Take in a list of hoses, one row for each hose that sat at a place. All rows or none.
    Import {
        /// CSV or XLSX.
        list: PathBuf,
        /// Header row, columns with their units and order of days, values for all rows and rows left out, as JSON.
        #[arg(long)]
        how: Option<PathBuf>,
        /// Say what would be taken in and refused; change nothing. Ends with 2 if any row would be refused.
        #[arg(long)]
        dry_run: bool,
    },
    /// Write records out: .csv or .xlsx of all hoses, .zip (CSV tables) or .json of everything, .ics of what falls due, .bundle for another device.
    Export {
        /// The file; its ending says the form.
        out: PathBuf,
    },
    /// Write down what was done: an assembly made, fitted, taken off, hours, a spec at a place.
    Record {
        /// One event or a list of them, as JSON; - reads standard input.
        events: PathBuf,
    },
    /// A hose, place or machine, with what became of it: at a place, what failed there before and why.
    Show {
        /// The code as it stands on the tag; or the name or id of a place or machine, or words that only one has.
        what: String,
        /// Of a place: hold the hose of this code, which is to go there, against what belongs there.
        #[arg(long, value_name = "CODE")]
        hose: Option<String>,
    },
    /// What falls due, soonest first, or by what a failure puts at risk.
    Due {
        /// Count as of this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// In which order.
        #[arg(long, value_enum, default_value = "date")]
        by: DueBy,
        /// Of these kinds alone.
        #[arg(long, value_enum)]
        what: Vec<DueWhat>,
        /// At this machine or place alone, by name or id.
        #[arg(long)]
        at: Option<String>,
        /// On this site alone, by name.
        #[arg(long)]
        site: Option<String>,
        /// What is past, not known, or comes within so many days.
        #[arg(long)]
        within_days: Option<u32>,
        /// How many days ahead the chance of failing looks.
        #[arg(long)]
        ahead_days: Option<u32>,
        /// Leave it as a file: .ics, .csv or .xlsx.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Show every date; without it the first 40. The JSON answer has all.
        #[arg(long)]
        all: bool,
    },
    /// An inspection of a hose: what was seen, and what that does.
    Inspect {
        /// The code on its tag.
        code: String,
        /// What was seen, by its code (`ABR-WIRE`), as many as there are; graver than the table with `:stop`.
        #[arg(long)]
        sign: Vec<String>,
        /// On this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// Its ends were opened; else it was looked at in place.
        #[arg(long)]
        opened: bool,
        /// Say what it would do; write nothing.
        #[arg(long)]
        dry_run: bool,
    },
    /// A walk round a machine: what was read of each place without opening it.
    Survey {
        /// The machine, by name or id.
        machine: String,
    },
    /// The hoses that rest on rows of the tables that have changed since.
    Affected {
        /// Of this hose alone, by its code.
        code: Option<String>,
    },
    /// All hoses in one table.
    Hoses {
        /// With words that begin so.
        words: Option<String>,
        /// In which order.
        #[arg(long, value_enum, default_value = "due")]
        sort: HosesBy,
        /// The other way round.
        #[arg(long)]
        descending: bool,
        /// Whose day has come.
        #[arg(long)]
        past: bool,
        /// Count as of this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// So many from the first are left out.
        #[arg(long)]
        offset: Option<u32>,
        /// So many at most.
        #[arg(long)]
        limit: Option<u32>,
    },
    /// How long hoses last here, in years since they were fitted.
    Life {
        /// What is put together.
        #[arg(long, value_enum, default_value = "hose")]
        by: LivesBy,
        /// Count as of this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// Since this day (YYYY-MM-DD) every failure is on record; what failed earlier is not known.
        #[arg(long)]
        since: Option<chrono::NaiveDate>,
        /// What a failure costs with all that comes of it, in your money; with --planned-cost the age of least cost is told.
        #[arg(long, requires = "planned_cost")]
        failure_cost: Option<f64>,
        /// What a planned replacement costs, in the same money.
        #[arg(long, requires = "failure_cost")]
        planned_cost: Option<f64>,
        /// Leave it as a sheet with the curves: .pdf, .txt, .json or .svg.
        #[arg(long)]
        out: Option<PathBuf>,
        /// Size of the paper.
        #[arg(long, value_enum, default_value = "a4")]
        paper: Paper,
    },
    /// Hoses by the beginning of a word: code, machine, place, site, size.
    Search {
        /// The words.
        words: String,
    },
    /// Photos of machines, places and hoses.
    #[command(subcommand)]
    Photo(Photo),
    /// Take in another device's bundle, and the photos in the folder that was left with it. Twice, or in another order, gives the same register.
    Merge {
        /// The bundle.
        bundle: PathBuf,
    },
    /// Copy the register to a new file while it is in use, with the photos that are here.
    Backup {
        /// The copy; must not exist.
        out: PathBuf,
    },
    /// The backups that stand beside the register, and when the last was made and proved by restoring it.
    Backups {
        /// Make and prove one more first, and take away those no longer kept (7 days, 4 weeks, 3 months).
        #[arg(long)]
        keep: bool,
    },
    /// Make this register from a backup; it goes on as a new device.
    Restore {
        /// The backup.
        backup: PathBuf,
    },
    /// Build the tables anew from the log.
    Rebuild,
    /// Walk the log and prove that nothing in it was changed.
    Verify,
}

/// What can be done with photos.
#[derive(Debug, Subcommand)]
pub enum Photo {
    /// Keep a picture: upright, at most 1600 pixels wide or high, without what its file tells besides.
    Add {
        /// A hose's code; or the name or id of a place or machine, or words that only one has.
        what: String,
        /// PNG or JPEG; - reads standard input.
        picture: PathBuf,
    },
    /// The photos on record, newest first: of one thing, or all.
    List {
        /// A hose's code; or the name or id of a place or machine, or words that only one has.
        what: Option<String>,
    },
    /// Leave a photo as a file.
    Save {
        /// Its hash, or the beginning of it.
        photo: String,
        /// The file, a JPEG.
        #[arg(long)]
        out: PathBuf,
    },
}

/// What can be done with the owner's rules.
#[derive(Debug, Subcommand)]
pub enum Policy {
    /// The guides of the tables, and your rules over them.
    List,
    /// Which rules hold at a machine or place, and why those.
    At {
        /// Its name or id.
        what: String,
    },
    /// What a rule would do, before it is kept: which hoses would fall due.
    Try {
        /// The rule, as JSON; - reads standard input.
        policy: PathBuf,
        /// Count as of this day (YYYY-MM-DD) instead of today.
        #[arg(long)]
        on: Option<chrono::NaiveDate>,
        /// How many days ahead are looked at.
        #[arg(long)]
        within_days: Option<u32>,
    },
    /// Keep a rule.
    Set {
        /// The rule, as JSON; - reads standard input.
        policy: PathBuf,
    },
}

/// In which order what falls due is listed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum DueBy {
    /// Soonest first.
    Date,
    /// Chance times consequence.
    Risk,
}

/// What falls due.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum DueWhat {
    /// To be replaced.
    Service,
    /// Stored long enough.
    Storage,
    /// To be inspected.
    Inspection,
    /// Something was seen on it.
    Finding,
    /// Its place asks more of it than it stands.
    Asked,
}

/// In which order hoses are listed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum HosesBy {
    /// The day it falls due.
    Due,
    /// Its age.
    Age,
    /// Site, machine and place.
    Machine,
    /// Standard, type and size.
    Type,
    /// Code.
    Code,
    /// The day it was fitted.
    Fitted,
    /// Failures at its place.
    Failures,
}

/// Sizes of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Paper {
    /// ISO 216 A4.
    A4,
    /// US Letter.
    Letter,
}

/// What hoses are put together by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum LivesBy {
    /// Standard and type of the hose.
    Hose,
    /// The line that the place is on.
    Line,
    /// How much of what the hose may carry its place asks.
    Load,
    /// The kind of machine.
    Machine,
    /// Places of one name on machines of one kind.
    Place,
}
