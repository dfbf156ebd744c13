//! Jobs that are not done.

use crate::Error;
use hosewright_core::record::{Arranged, Body, JobId};
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, job: JobId, draft: &Arranged) -> Result<(), Error> {
    db.prepare_cached("DELETE FROM draft WHERE job = ?1")?.execute([job.to_string()])?;
    // The last state of the line: closed by one device and kept on by another, it is offered still.
    let followed: Vec<usize> = draft.nodes.iter().filter_map(|node| node.follows).collect();
    let last = (0..).zip(&draft.nodes).filter(|(index, _)| !followed.contains(index)).map(|(_, node)| node);
    let kept = last
        .filter_map(|node| match &node.current.body {
            Body::DraftKept(kept) => Some((&node.current, kept)),
            _ => None,
        })
        .max_by_key(|(entry, _)| (entry.time, entry.at));
    let Some((entry, kept)) = kept else { return Ok(()) };
    db.prepare_cached("INSERT INTO draft (job, content, ms, version) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![job.to_string(), kept.content.to_string(), entry.time.ms, entry.at.to_string()])?;
    Ok(())
}
