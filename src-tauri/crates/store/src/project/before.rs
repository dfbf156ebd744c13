//! What the tables have of a track before it is projected anew.

use super::assembly;
use crate::Error;
use hosewright_core::record::Track;
use rusqlite::{Connection, Params, params};

/// Whether the tables have rows of a track.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Before {
    /// None: no event of it counted. A new thing is spared looking for them.
    Nothing,
    /// Those of the events that counted.
    Rows,
}

/// Takes the rows of a track away.
pub(super) fn clear(db: &Connection, track: &Track) -> Result<(), Error> {
    gone(db, "DELETE FROM conflict WHERE track = ?1", [track.to_string()])?;
    match track {
        Track::Device(id) => gone(db, "DELETE FROM device WHERE device = ?1", [id.to_string()]),
        Track::DeviceKey(id) => gone(db, "DELETE FROM device_key WHERE device = ?1", [id.to_string()]),
        Track::Member(_) => Ok(()),
        Track::Site(id) => gone(db, "DELETE FROM site WHERE site = ?1", [id.to_string()]),
        Track::Machine(id) => gone(db, "DELETE FROM machine WHERE machine = ?1", [id.to_string()]),
        Track::Hours(id) => gone(db, "DELETE FROM hours WHERE machine = ?1", [id.to_string()]),
        Track::Circuit(id) => gone(db, "DELETE FROM circuit WHERE circuit = ?1", [id.to_string()]),
        Track::Place(id) => gone(db, "DELETE FROM place WHERE place = ?1", [id.to_string()]),
        Track::Made(code) => {
            assembly::clear_rests(db, code)?;
            gone(db, "DELETE FROM assembly WHERE code = ?1", [code.to_string()])
        }
        Track::Whereabouts(code) => gone(db, "DELETE FROM stint WHERE code = ?1", [code.to_string()]),
        Track::Inspections(code) => gone(db, "DELETE FROM inspection WHERE code = ?1", [code.to_string()]),
        Track::Overrides(code) => gone(db, "DELETE FROM override WHERE code = ?1", [code.to_string()]),
        Track::Labels(code) => gone(db, "DELETE FROM labelled WHERE code = ?1", [code.to_string()]),
        Track::Withdrawal(code) => gone(db, "DELETE FROM withdrawal WHERE code = ?1", [code.to_string()]),
        Track::Policy(key) => gone(db, "DELETE FROM policy WHERE key = ?1", [key.to_string()]),
        Track::Surveys(place) => gone(db, "DELETE FROM survey WHERE place = ?1", [place.to_string()]),
        Track::Stock { item, unit } => {
            let of = params![item.key(), unit.name()];
            gone(db, "DELETE FROM stock WHERE item = ?1 AND unit = ?2", of)?;
            gone(db, "DELETE FROM stock_used WHERE item = ?1 AND unit = ?2", of)
        }
        Track::StockPlace { store, item } => {
            gone(db, "DELETE FROM stock_place WHERE store = ?1 AND item = ?2", params![store, item.key()])
        }
        Track::Price(item) => gone(db, "DELETE FROM price WHERE item = ?1", [item.key()]),
        Track::Piece(id) => gone(db, "DELETE FROM piece WHERE piece = ?1", [id.to_string()]),
        Track::PieceLength(id) => {
            gone(db, "DELETE FROM piece_length WHERE piece = ?1", [id.to_string()])?;
            gone(db, "DELETE FROM stock_used WHERE piece = ?1", [id.to_string()])
        }
        Track::Photos(about) => gone(db, "DELETE FROM photo WHERE about = ?1", [about.to_string()]),
        Track::Notes(about) => gone(db, "DELETE FROM note WHERE about = ?1", [about.to_string()]),
    }
}

fn gone(db: &Connection, sql: &str, of: impl Params) -> Result<(), Error> {
    db.prepare_cached(sql)?.execute(of)?;
    Ok(())
}
