//! Commands of stock, batches, quotes and rounds.

use crate::args::{Paper, Stock};
use crate::bench::{open, writing};
use crate::input;
use crate::outcome::Outcome;
use crate::run::{SheetFile, paper_kind, size};
use hosewright_api::commands::batch::{BatchPaper, BatchQuestion};
use hosewright_api::commands::care::{RoundPaper, round_paper};
use hosewright_api::commands::make::MakeQuestion;
use hosewright_api::commands::quote::{QuotePaper, QuoteQuestion};
use hosewright_api::commands::register::{Named, named};
use hosewright_api::commands::round::RoundQuestion;
use hosewright_api::commands::settings::{self, Settings};
use hosewright_api::commands::stock::{
    BenchUndo, NeedQuestion, StockChange, StockDo, StockQuestion, StockTake,
};
use hosewright_api::commands::{
    Nothing, batch as batches, quote as quotes, round as rounds, stock as commands,
};
use hosewright_api::{Answer, Api, ApiError};
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PieceId;
use hosewright_core::stock::Item;
use hosewright_core::tag::TagCode;
use std::path::Path;

/// Shows the settings, or changes those that are named and shows what holds.
pub fn settings(api: &mut Api, db: &Path, change: Option<&Path>, json: bool) -> Result<Outcome, ApiError> {
    let Some(change) = change else {
        open(api, db)?;
        return Outcome::of(&settings_of(api)?, json, api.words());
    };
    let change = hosewright_api::document(&input::text(change)?)?;
    let Some(change) = change.as_object() else {
        return Err(ApiError::input("", "an object with the settings to be changed is expected"));
    };
    writing(api, db, |api| {
        let holds = settings_of(api)?.content;
        let mut document = serde_json::to_value(holds).map_err(|error| ApiError::input("", error))?;
        for (key, value) in change {
            document[key.as_str()] = value.clone();
        }
        let written = settings::write(api, hosewright_api::question(document)?, &[])?;
        Outcome::of(&written, json, api.words())
    })
}

fn settings_of(api: &mut Api) -> Result<Answer<Settings>, ApiError> {
    let Answer { content, catalogue, program } = settings::read(api, Nothing {}, &[])?;
    Ok(Answer { content: content.settings, catalogue, program })
}

/// Runs a command on stock.
pub fn stock(api: &mut Api, db: &Path, command: &Stock, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Stock::Load { changes } => {
            let changes: Vec<StockDo> = input::question(changes)?;
            writing(api, db, |api| changed(api, changes, json))
        }
        Stock::Take { counted, save } => {
            let mut asked: StockTake = input::question(counted)?;
            asked.save |= *save;
            writing(api, db, |api| Outcome::of(&commands::take(api, asked, &[])?, json, api.words()))
        }
        _ => {
            open(api, db)?;
            on_stock(api, command, json)
        }
    }
}

fn on_stock(api: &mut Api, command: &Stock, json: bool) -> Result<Outcome, ApiError> {
    let change = match command {
        Stock::List { store, bin, text, low, all } => {
            let asked = StockQuestion {
                store: store.clone(),
                bin: bin.clone(),
                text: text.clone(),
                kind: None,
                low: *low,
                all: *all,
            };
            return Outcome::of(&commands::list(api, asked, &[])?, json, api.words());
        }
        Stock::Need { question, settings, store, count } => {
            let make = MakeQuestion {
                question: input::question(question)?,
                settings: settings.as_deref().map(input::question).transpose()?.unwrap_or_default(),
                ..MakeQuestion::default()
            };
            let asked = NeedQuestion { make, store: store.clone(), count: Some(*count), more: Vec::new() };
            return Outcome::of(&commands::need(api, asked, &[])?, json, api.words());
        }
        Stock::Undo { code, reason, give_back } => {
            let asked = BenchUndo { code: tag(code)?, reason: reason.clone(), give_back: *give_back };
            return Outcome::of(&commands::undo(api, asked, &[])?, json, api.words());
        }
        Stock::Move { what, from, from_bin, to, count, bin } => match one(api, what, from.as_deref())? {
            Kept::Piece(piece) => StockDo::MovePiece { piece, to: to.clone(), bin: bin.clone() },
            Kept::Item { item, store: from } => {
                let (to, from_bin, bin) = (to.clone(), from_bin.clone(), bin.clone());
                StockDo::Move { item, from, to, count: *count, from_bin, bin }
            }
        },
        Stock::Correct { what, store, to, bin } => match one(api, what, store.as_deref())? {
            Kept::Piece(piece) => StockDo::CorrectPiece { piece, to_mm: Millimetres(*to) },
            Kept::Item { item, store } if to.fract() == 0.0 => {
                StockDo::Correct { store, item, to: *to as i64, bin: bin.clone() }
            }
            Kept::Item { .. } => return Err(ApiError::input("to", "a whole number is expected")),
        },
        Stock::Scrap { what, store, count, bin } => match one(api, what, store.as_deref())? {
            Kept::Piece(piece) => StockDo::ScrapPiece { piece },
            Kept::Item { item, store } => StockDo::Scrap { store, item, count: *count, bin: bin.clone() },
        },
        Stock::Keep { what, store, bin, low } => {
            let (item, store) = thing(api, what, store.as_deref())?;
            StockDo::Keep { store, item, bin: bin.clone(), low: low.map(Some) }
        }
        Stock::Price { what, price } => {
            let (item, _) = thing(api, what, None)?;
            StockDo::Price { item, price: price.clone() }
        }
        Stock::Load { .. } | Stock::Take { .. } => {
            return Err(ApiError::input("", "it begins a register where there is none"));
        }
    };
    changed(api, vec![change], json)
}

fn changed(api: &mut Api, changes: Vec<StockDo>, json: bool) -> Result<Outcome, ApiError> {
    let answer = commands::change(api, StockChange { changes }, &[])?;
    Outcome::of(&answer, json, api.words())
}

/// Something that is kept.
enum Kept {
    Piece(PieceId),
    Item { item: Item, store: String },
}

/// The one piece or counted thing that is named so.
fn one(api: &mut Api, what: &str, store: Option<&str>) -> Result<Kept, ApiError> {
    match what.parse() {
        Ok(piece) => Ok(Kept::Piece(piece)),
        Err(_) => {
            let (item, store) = thing(api, what, store)?;
            Ok(Kept::Item { item, store })
        }
    }
}

/// The one thing that is named so, and where it is.
fn thing(api: &mut Api, what: &str, store: Option<&str>) -> Result<(Item, String), ApiError> {
    let asked = StockQuestion {
        store: store.map(str::to_owned),
        text: Some(what.to_owned()),
        all: true,
        ..StockQuestion::default()
    };
    let list = commands::list(api, asked, &[])?.content;
    let mut found: Vec<(String, Item, String)> =
        list.items.into_iter().map(|kept| (kept.name, kept.item, kept.store)).collect();
    // What lies in several bins is one thing.
    found.dedup();
    found.extend(list.hoses.into_iter().map(|hose| (hose.name, hose.hose.into(), hose.store)));
    let exact: Vec<_> =
        found.iter().filter(|(name, ..)| name.eq_ignore_ascii_case(what.trim())).cloned().collect();
    if exact.len() == 1 {
        found = exact;
    }
    match found.as_slice() {
        [(_, item, store)] => Ok((item.clone(), store.clone())),
        [] => Err(ApiError::nothing("what", format!("nothing that is kept has \"{what}\" in its name"))),
        many => {
            let names: Vec<String> =
                many.iter().map(|(name, _, store)| format!("{name} ({store})")).collect();
            let why = format!("\"{what}\" can be any of {}: give more words, or the store", names.join("; "));
            Err(ApiError::input("what", why))
        }
    }
}

fn tag(code: &str) -> Result<TagCode, ApiError> {
    code.parse().map_err(|error| ApiError::input("code", error))
}

/// Plans a batch, and leaves its paper where one is asked for.
pub fn batch(
    api: &mut Api,
    hoses: &Path,
    store: Option<String>,
    file: &SheetFile<'_>,
    json: bool,
) -> Result<Outcome, ApiError> {
    let mut asked: BatchQuestion = input::question(hoses)?;
    asked.store = store.or(asked.store);
    let planned = batches::batch(api, asked.clone(), &[])?;
    if let Some(out) = file.out {
        let (kind, paper) = (paper_kind(out)?, size(file.paper));
        let asked = BatchPaper { batch: asked, subject: file.subject.to_owned(), paper, kind };
        input::leave(out, &batches::paper(api, asked, &[])?.bytes)?;
    }
    Outcome::of(&planned, json, api.words())
}

/// Prices hoses, and leaves the paper where one is asked for.
pub fn quote(
    api: &mut Api,
    hoses: Option<&Path>,
    codes: &[String],
    file: &SheetFile<'_>,
    json: bool,
) -> Result<Outcome, ApiError> {
    let hoses: Option<BatchQuestion> = hoses.map(input::question).transpose()?;
    let asked = QuoteQuestion {
        hoses: hoses.map(|batch| batch.hoses).unwrap_or_default(),
        codes: codes.iter().map(|code| tag(code)).collect::<Result<_, _>>()?,
    };
    let quoted = quotes::quote(api, asked.clone(), &[])?;
    if let Some(out) = file.out {
        let (kind, paper) = (paper_kind(out)?, size(file.paper));
        let asked = QuotePaper { quote: asked, subject: file.subject.to_owned(), paper, kind };
        input::leave(out, &quotes::paper(api, asked, &[])?.bytes)?;
    }
    Outcome::of(&quoted, json, api.words())
}

/// The round as a paper.
pub struct RoundFile<'a> {
    /// The file.
    pub out: &'a Path,
    /// Size of the paper.
    pub paper: Paper,
    /// With the codes of the hoses.
    pub tags: bool,
}

/// The round over machines and places by name.
pub fn round(
    api: &mut Api,
    what: &[String],
    mut asked: RoundQuestion,
    file: Option<RoundFile<'_>>,
    json: bool,
) -> Result<Outcome, ApiError> {
    for name in what {
        match named(api, name)? {
            Named::Machine(machine) => asked.machines.push(machine),
            Named::Place(place) => asked.places.push(place),
            Named::Hose(_) => {
                return Err(ApiError::input("what", "the name of a machine or place is expected"));
            }
        }
    }
    if let Some(RoundFile { out, paper, tags }) = file {
        let (kind, paper) = (paper_kind(out)?, size(paper));
        let asked = RoundPaper { round: asked.clone(), paper, kind, tags };
        input::leave(out, &round_paper(api, asked, &[])?.bytes)?;
    }
    Outcome::of(&rounds::round(api, asked, &[])?, json, api.words())
}
