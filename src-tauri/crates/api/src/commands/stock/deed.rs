//! Each thing that is done with stock, as the events it comes to.

use super::change::{HoseLoaded, StockDo};
use super::doing::{Doing, MOST};
use super::names::{known, tenths};
use crate::commands::settings::Pricing;
use crate::{Api, ApiError};
use hosewright_core::record::{Body, Piece, PieceId, PriceSet, StockWhy};
use hosewright_core::stock::{Item, money};

/// Most pieces that come at once.
const MOST_PIECES: u32 = 200;

/// Does one thing.
pub(super) fn deed(
    doing: &mut Doing,
    api: &mut Api,
    one: StockDo,
    pricing: &Pricing,
) -> Result<(), ApiError> {
    let bin_of = |doing: &Doing, store: &str, bin: Option<String>| bin.map(|bin| doing.bin(store, &bin));
    match one {
        StockDo::Load { store, item, count, bin } => {
            let at = doing.counted_at(api, &store, item)?;
            let bin = bin_of(doing, &at.store, bin);
            doing.load(&at, bin.as_deref(), some("count", count)?);
        }
        StockDo::LoadHose(loaded) => load_hose(doing, api, loaded)?,
        StockDo::Correct { store, item, to, bin } => {
            let at = doing.counted_at(api, &store, item)?;
            let bin = bin_of(doing, &at.store, bin);
            doing.correct(&at, bin.as_deref(), to)?;
        }
        StockDo::CorrectPiece { piece, to_mm } => {
            doing.correct_piece(piece, tenths("to_mm", to_mm)?)?;
        }
        StockDo::Scrap { store, item, count, bin } => {
            let at = doing.counted_at(api, &store, item)?;
            let bin = bin_of(doing, &at.store, bin);
            doing.take_out(&at, bin.as_deref(), some("count", count)?, StockWhy::Scrapped, None);
        }
        StockDo::ScrapPiece { piece } => {
            let (_, left) = doing.piece(piece)?;
            doing.lengthen(piece, -left, StockWhy::Scrapped, None)?;
        }
        StockDo::Move { item, from, to, count, from_bin, bin } => {
            let from = doing.counted_at(api, &from, item.clone())?;
            let to = doing.counted_at(api, &to, item)?;
            let (from_bin, bin) = (bin_of(doing, &from.store, from_bin), bin_of(doing, &to.store, bin));
            let count = some("count", count)?;
            doing.move_counted(&from, from_bin.as_deref(), &to, bin.as_deref(), count)?;
        }
        StockDo::MovePiece { piece, to, bin } => {
            let to = doing.store(&to)?;
            let (mut record, left) = doing.piece(piece)?;
            let stays = record.store == to;
            record.bin = match bin {
                Some(bin) => doing.bin(&to, &bin),
                None if stays => record.bin,
                None => String::new(),
            };
            record.store = to;
            doing.set_piece(record, left);
        }
        StockDo::Keep { store, item, bin, low } => {
            let at = doing.at(api, &store, item)?;
            if low.flatten().is_some_and(|low| low < 0) {
                return Err(ApiError::input("low", "a number from 0 up is expected, or none"));
            }
            let bin = bin_of(doing, &at.store, bin);
            doing.keep(&at, bin, low);
        }
        StockDo::Price { item, price } => {
            let item = doing.item(api, item)?;
            if pricing.currency.is_empty() {
                let why = "no currency is set: set it before anything is priced (pricing.currency)";
                return Err(ApiError::input("price", why));
            }
            let price = price.as_deref().map(str::trim).filter(|price| !price.is_empty());
            let digits = money::digits(&pricing.currency);
            let minor = price.map(|price| money::parse(price, digits)).transpose();
            let minor = minor.map_err(|error| ApiError::input("price", error))?;
            let currency = pricing.currency.clone();
            doing.bodies.push(Body::PriceSet(PriceSet { item, minor, currency }));
        }
    }
    Ok(())
}

fn load_hose(doing: &mut Doing, api: &mut Api, loaded: HoseLoaded) -> Result<(), ApiError> {
    let HoseLoaded { store, hose, sort, length_mm, pieces, made, label, bin } = loaded;
    let store = doing.store(&store)?;
    let Item::Thing(hose) = known(api.catalogue, hose.into())? else {
        return Err(ApiError::input("hose", "a hose is expected"));
    };
    let length = tenths("length_mm", length_mm)?;
    let pieces = pieces.unwrap_or(1);
    if !(1..=MOST_PIECES).contains(&pieces) || length == 0 {
        let why = format!("1 to {MOST_PIECES} pieces of more than 0 mm are expected");
        return Err(ApiError::input("pieces", why));
    }
    let label = label.as_deref().unwrap_or_default().trim().to_owned();
    let bin = doing.bin(&store, bin.as_deref().unwrap_or_default());
    for _ in 0..pieces {
        let piece = PieceId::from_bytes(api.world.random());
        let (store, bin, hose, label) = (store.clone(), bin.clone(), hose.clone(), label.clone());
        doing.new.push(piece);
        doing.set_piece(Piece { piece, store, bin, hose, sort, made, label }, 0);
        doing.lengthen(piece, length, StockWhy::Loaded, None)?;
    }
    Ok(())
}

/// How many, where that can be.
fn some(field: &str, count: i64) -> Result<i64, ApiError> {
    if (1..=MOST).contains(&count) {
        Ok(count)
    } else {
        let why = format!("{count} can not be; a whole number from 1 to {MOST} is expected");
        Err(ApiError::input(field, why))
    }
}
