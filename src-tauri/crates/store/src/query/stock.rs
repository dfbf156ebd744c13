//! What is on the vans and shelves.

use super::Versioned;
use crate::{Error, Register, log, members, rows};
use hosewright_core::record::{Body, EventRef, Piece, PieceId, PriceSet, Proof, StockUnit, StockWhy, Track};
use hosewright_core::stock::Item;
use hosewright_core::tag::TagCode;
use rusqlite::Row;

/// How much of an item lies in one bin of a van or shelf.
#[derive(Debug, Clone, PartialEq)]
pub struct Stock {
    /// The van or shelf.
    pub store: String,
    /// What.
    pub item: Item,
    /// Counted in.
    pub unit: StockUnit,
    /// How much; below zero when more went than was ever entered. None of hose, and where only a bin or low mark was set.
    pub quantity: Option<i64>,
    /// The bin as it was counted; blank is the usual one.
    pub bin: String,
    /// The bin that was set for the thing there; blank is none.
    pub usual: String,
    /// At or below how much in all bins together it is low.
    pub low: Option<i64>,
}

/// A piece of hose.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceKept {
    /// All of it but its length.
    pub piece: Versioned<Piece>,
    /// Its length in tenths of a millimetre; below zero when more was cut than there was.
    pub tenths_mm: i64,
}

/// What went into a hose.
#[derive(Debug, Clone, PartialEq)]
pub struct StockUsed {
    /// The event.
    pub version: EventRef,
    /// What.
    pub what: UsedWhat,
    /// Whether it was used, or a rest that was thrown away.
    pub why: StockWhy,
}

/// A counted item or a length of a piece.
#[derive(Debug, Clone, PartialEq)]
pub enum UsedWhat {
    /// Counted.
    Item {
        /// From which store.
        store: String,
        /// What.
        item: Item,
        /// How many.
        count: i64,
    },
    /// Cut.
    Piece {
        /// From which piece.
        piece: PieceId,
        /// How much, kerf included, in tenths of a millimetre.
        tenths_mm: i64,
    },
}

/// What devices said of the stock without knowing of each other.
#[derive(Debug, Clone, PartialEq)]
pub enum StockConflict {
    /// A piece, bin or price was changed on two at once. Setting it again settles it.
    Changed {
        /// What.
        name: String,
    },
    /// A bin was counted before its device had heard of what another had entered. Counting it again settles it.
    Counted {
        /// The van or shelf.
        store: String,
        /// The bin; blank is the one that was set for the thing.
        bin: String,
        /// What.
        item: Item,
    },
    /// A piece was measured so.
    Measured {
        /// Which.
        piece: PieceId,
    },
}

impl Register {
    /// What is counted on the vans and shelves bin by bin, and what has a bin or low mark there, by store and item.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn stock(&self) -> Result<Vec<Stock>, Error> {
        self.rows(include_str!("stock.sql"), [], |row| {
            Ok(Stock {
                store: row.get("store")?,
                item: rows::json(row, "item")?,
                unit: rows::json(row, "unit")?,
                quantity: row.get("quantity")?,
                bin: row.get("bin")?,
                usual: row.get("usual")?,
                low: row.get("low")?,
            })
        })
    }

    /// Every piece of hose, used up or not.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn pieces(&self) -> Result<Vec<PieceKept>, Error> {
        let sql = "SELECT content, version, coalesce(tenths, 0) AS tenths
                   FROM piece LEFT JOIN piece_length USING (piece) ORDER BY piece";
        self.rows(sql, [], |row| {
            let piece =
                Versioned { version: rows::parsed(row, "version")?, record: rows::json(row, "content")? };
            Ok(PieceKept { piece, tenths_mm: row.get("tenths")? })
        })
    }

    /// A piece of hose by its id; none that was told of.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn piece(&self, piece: PieceId) -> Result<Option<Piece>, Error> {
        let sql = "SELECT content FROM piece WHERE piece = ?1";
        Ok(self.rows(sql, [piece.to_string()], |row| rows::json(row, "content"))?.pop())
    }

    /// Pieces that something was cut from and nobody has told us of yet.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn untold_pieces(&self) -> Result<Vec<PieceId>, Error> {
        let sql =
            "SELECT piece FROM piece_length WHERE piece NOT IN (SELECT piece FROM piece) ORDER BY piece";
        self.rows(sql, [], |row| rows::parsed(row, "piece"))
    }

    /// The prices that stand.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn prices(&self) -> Result<Vec<PriceSet>, Error> {
        self.rows("SELECT item, minor, currency FROM price ORDER BY item", [], |row| {
            Ok(PriceSet {
                item: rows::json(row, "item")?,
                minor: row.get("minor")?,
                currency: row.get("currency")?,
            })
        })
    }

    /// What went into a hose.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn used_for(&self, code: TagCode) -> Result<Vec<StockUsed>, Error> {
        let sql = "SELECT version, store, item, piece, quantity, json_quote(why) AS why
             FROM stock_used WHERE code = ?1 ORDER BY version";
        self.rows(sql, [code.to_string()], |row| {
            let what = match rows::optional(row, "piece")? {
                Some(piece) => UsedWhat::Piece { piece, tenths_mm: row.get("quantity")? },
                None => UsedWhat::Item {
                    store: row.get("store")?,
                    item: rows::json(row, "item")?,
                    count: row.get("quantity")?,
                },
            };
            Ok(StockUsed { version: rows::parsed(row, "version")?, what, why: rows::json(row, "why")? })
        })
    }

    /// What of the stock devices said without knowing of each other.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn stock_conflicts(&self) -> Result<Vec<StockConflict>, Error> {
        let sql = "SELECT DISTINCT event FROM conflict
                   WHERE track LIKE 'piece/%' OR track LIKE 'price/%' OR track LIKE 'stock-place/%'
                      OR track LIKE 'stock/%' OR track LIKE 'piece-length/%' ORDER BY event";
        let events: Vec<EventRef> = self.rows(sql, [], |row| rows::parsed(row, "event"))?;
        let mut conflicts = Vec::new();
        for at in events {
            let Some(event) = log::get(&self.db, at)? else { continue };
            conflicts.extend(match event.body.read() {
                Body::PieceSet(piece) => Some(StockConflict::Changed { name: piece.hose.name() }),
                Body::PriceSet(price) => Some(StockConflict::Changed { name: price.item.name() }),
                Body::StockPlaced(placed) => Some(StockConflict::Changed { name: placed.item.name() }),
                Body::StockChanged(change) if change.seen.is_some() => {
                    Some(StockConflict::Counted { store: change.store, bin: change.bin, item: change.item })
                }
                Body::PieceChanged(change) if change.seen.is_some() => {
                    Some(StockConflict::Measured { piece: change.piece })
                }
                _ => None,
            });
        }
        let mut told: Vec<StockConflict> = Vec::new();
        for conflict in conflicts {
            if !told.contains(&conflict) {
                told.push(conflict);
            }
        }
        Ok(told)
    }

    /// What goes with builds that are struck out by voiding these events: what they used, unless they failed their
    /// proof. A build that an older version of its record still stands for is not struck out.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn given_back_with(&self, voided: &[EventRef]) -> Result<Vec<EventRef>, Error> {
        let members = members::read(&self.db)?;
        let mut back = Vec::new();
        for at in voided {
            let Some(Body::AssemblyMade(made)) = log::get(&self.db, *at)?.map(|event| event.body.read())
            else {
                continue;
            };
            let versions = log::entries(&self.db, &members, &Track::Made(made.code).to_string())?;
            let stands =
                versions.iter().any(|entry| entry.struck_out.is_empty() && !voided.contains(&entry.at));
            if !stands && !matches!(made.proof, Proof::Failed { .. }) {
                back.extend(self.used_for(made.code)?.into_iter().map(|used| used.version));
            }
        }
        back.retain(|at| !voided.contains(at));
        back.sort_unstable();
        back.dedup();
        Ok(back)
    }

    fn rows<T>(
        &self,
        sql: &str,
        key: impl rusqlite::Params,
        read: impl FnMut(&Row<'_>) -> rusqlite::Result<T>,
    ) -> Result<Vec<T>, Error> {
        let mut statement = self.db.prepare_cached(sql)?;
        let read = statement.query_map(key, read)?;
        Ok(read.collect::<Result<_, _>>()?)
    }
}
