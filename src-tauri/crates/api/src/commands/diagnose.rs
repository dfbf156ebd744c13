//! `diagnose`: what someone who mends the program needs to know of a register, and nothing of what stands in it.

use super::{File, Nothing};
use crate::{Api, ApiError, PROGRAM};
use hosewright_store::{Problem, Register};
use serde_json::{Value, json};
use std::io::{Cursor, Write};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// Said in the file itself, in English: it is for who mends the program.
const ABOUT: &str = "\
What hosewright found out about itself and a register, for a report of a fault.\n\
diagnosis.json holds versions, counts, sizes and kinds of faults. It holds no names, places, codes, notes,\n\
pictures, prices, keys, ids of devices or paths. Nothing was sent anywhere.\n";

/// Versions, counts and what does not verify, as a file to be handed on with a report. Also without a register, and of
/// one that can not be opened.
///
/// # Errors
/// The file can not be made.
pub fn diagnose(api: &mut Api, _: Nothing, _: &[u8]) -> Result<File, ApiError> {
    let diagnosis = json!({
        "program": PROGRAM,
        "catalogue": api.catalogue().version,
        "system": [std::env::consts::OS, std::env::consts::ARCH],
        "made": api.world.now().format("%Y-%m-%d").to_string(),
        "register": register(api),
        "backups": backups(api),
    });
    let text = serde_json::to_string_pretty(&diagnosis).map_err(|error| ApiError::input("", error))?;
    let bytes = zipped(&[("README.txt", ABOUT), ("diagnosis.json", &text)])
        .map_err(|error| ApiError::file("", error))?;
    Ok(File { name: "hosewright-diagnosis.zip".to_owned(), mime: "application/zip", bytes })
}

fn register(api: &mut Api) -> Value {
    let Some(register) = api.register.as_mut() else {
        // Why it can not be opened; the message has a path, its id has none.
        let path = api.register_path.clone();
        let why =
            path.and_then(|path| api.open(&path).err()).and_then(|error| error.words).map(|words| words.id);
        return json!({ "open": false, "why": why });
    };
    json!({
        "open": true,
        "stands": register.diagnosis().map_or_else(|error| json!(kind(&error)), |stands| json!(stands)),
        "verified": verified(register),
    })
}

/// How many faults of each kind; which event they are about would name its device.
fn verified(register: &mut Register) -> Value {
    match register.verify() {
        Err(error) => json!(kind(&error)),
        Ok(verified) => {
            let count =
                |is: fn(&Problem) -> bool| verified.faults.iter().filter(|fault| is(&fault.problem)).count();
            json!({
                "events": verified.events,
                "unreadable": count(|problem| matches!(problem, Problem::Unreadable)),
                "changed": count(|problem| matches!(problem, Problem::Changed)),
                "broken_chain": count(|problem| matches!(problem, Problem::BrokenChain)),
                "tables": count(|problem| matches!(problem, Problem::Tables)),
                "file": count(|problem| matches!(problem, Problem::File(_))),
            })
        }
    }
}

fn backups(api: &Api) -> Value {
    let Some(path) = &api.register_path else { return Value::Null };
    match hosewright_store::backups(path) {
        Err(error) => json!(kind(&error)),
        Ok(kept) => json!({
            "late": hosewright_store::backup_late(&kept, api.world.now()),
            "kept": kept.iter().map(|kept| json!({"made": kept.made, "bytes": kept.bytes})).collect::<Vec<_>>(),
        }),
    }
}

/// The kind of an error, without what it is about.
fn kind(error: &hosewright_store::Error) -> String {
    let text = format!("{error:?}");
    text.split([' ', '(', '{']).next().unwrap_or_default().to_owned()
}

fn zipped(files: &[(&str, &str)]) -> Result<Vec<u8>, zip::result::ZipError> {
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, text) in files {
        archive.start_file(*name, SimpleFileOptions::default())?;
        archive.write_all(text.as_bytes())?;
    }
    Ok(archive.finish()?.into_inner())
}
