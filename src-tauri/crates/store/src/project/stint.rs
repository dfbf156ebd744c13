//! On and off: where hoses sat.

use crate::Error;
use hosewright_core::record::{Arranged, EventRef, Stint, stints};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, code: &TagCode, whereabouts: &Arranged) -> Result<(), Error> {
    let mut insert = db.prepare_cached(
        "INSERT INTO stint (code, position, place, on_version, on_date, already_there, on_hours,
                            off_version, off_date, off_hours, cause, note)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12)",
    )?;
    let text = |event: &EventRef| event.to_string();
    for (position, Stint { on, off }) in (0_i64..).zip(stints(whereabouts)) {
        let fitted = on.as_ref().map(|(_, fitted)| fitted);
        let taken_off = off.as_ref().map(|(_, off)| off);
        let Some(place) = fitted.map(|fitted| fitted.place).or(taken_off.map(|off| off.place)) else {
            continue;
        };
        insert.execute(params![
            code.to_string(),
            position,
            place.to_string(),
            on.as_ref().map(|(event, _)| text(event)),
            fitted.map(|fitted| fitted.date.to_string()),
            fitted.is_some_and(|fitted| fitted.already_there),
            fitted.and_then(|fitted| fitted.hours),
            off.as_ref().map(|(event, _)| text(event)),
            taken_off.map(|off| off.date.to_string()),
            taken_off.and_then(|off| off.hours),
            taken_off.and_then(|off| off.cause.as_deref()),
            taken_off.and_then(|off| off.note.as_deref()),
        ])?;
    }
    Ok(())
}
