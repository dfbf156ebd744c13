//! Commands on tags, labels and fleets.

use crate::args::{Fleet, Form, LabelFile, LabelOn, LabelPaper, Tag};
use crate::bench::open;
use crate::input;
use crate::outcome::Outcome;
use crate::plain::{FleetHandedOn, Stocks, TagAgain, TagShown};
use crate::run::{ending, no_such_kind};
use hosewright_api::commands::fleet::{FleetBegin, FleetHandOn, FleetJoin, FleetLeave, FleetLook, FleetRole};
use hosewright_api::commands::member::{self as members, FleetAdmit, FleetWithdraw};
use hosewright_api::commands::register::Named;
use hosewright_api::commands::tag::{
    LabelBatchOf, LabelBatchQuestion, LabelKind, LabelPaper as Lie, LabelQuestion, OpenQuestion,
    ReadQuestion, ScanListQuestion, TagAdopt, TagOfQuestion, TagQuestion,
};
use hosewright_api::commands::{Nothing, fleet as fleets, register, settings, share as shares, tag as tags};
use hosewright_api::{Api, ApiError};
use hosewright_core::check::Question;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{DeviceId, MemberRole, PlaceId};
use hosewright_core::spec::Spec;
use hosewright_core::tag::{LabelForm, LabelMaterial, LabelStock, Proof, TagCode, TagContent};
use std::path::Path;

/// Makes and reads tags.
pub fn tag(api: &mut Api, command: &Tag, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Tag::Make { spec, label, db } => {
            if let Some(db) = db {
                open(api, db)?;
            }
            let made = tags::make(api, tag_question(spec)?, &[])?;
            let label = made.content.tag.clone().map(|tag| leave(api, tag, label)).transpose()?.flatten();
            Outcome::of(&TagShown { made, label, register: db.is_some() }, json, api.words())
        }
        Tag::Again { code, label, db } => {
            open(api, db)?;
            let of = tags::of(api, TagOfQuestion { code: typed(code)? }, &[])?;
            let label = leave(api, of.content.tag.clone(), label)?;
            Outcome::of(&TagAgain { of, label }, json, api.words())
        }
        Tag::Batch { machine, due, code, stock, paper, out, db } => {
            open(api, db)?;
            let of = batch_of(api, machine.as_deref(), *due, code)?;
            let asked = LabelBatchQuestion { of, stock: stocked(api, stock)?, paper: lie(*paper) };
            let answer = tags::batch(api, asked.clone(), &[])?;
            if let Some(out) = out {
                if ending(out) != "pdf" {
                    return Err(no_such_kind(out, &ending(out), "pdf"));
                }
                let file = tags::batch_paper(api, asked, &[])?;
                input::leave(out, &file.bytes)?;
            }
            Outcome::of(&answer, json, api.words())
        }
        Tag::Read { photo, all, raw, db, place } => {
            if let Some(db) = db {
                open(api, db)?;
            }
            let picture = input::bytes(photo)?;
            let asked = ReadQuestion { raw: *raw, place: stands(place.as_deref())?, frame: None };
            let answer = tags::read(api, asked, &picture).map_err(|error| about(error, photo))?;
            if *all {
                Outcome::of(&answer, json, api.words())
            } else {
                Outcome::of(&answer.first(), json, api.words())
            }
        }
        Tag::Open { what, db, place } => {
            open(api, db)?;
            let place = stands(place.as_deref())?;
            let asked = match what.parse::<TagCode>() {
                Ok(code) => OpenQuestion { code: Some(code), place, text: None },
                Err(_) if what == "-" || Path::new(what).exists() => {
                    OpenQuestion { text: Some(input::text(Path::new(what))?), place, code: None }
                }
                Err(error) => return Err(ApiError::input("code", error)),
            };
            Outcome::of(&tags::open(api, asked, &[])?, json, api.words())
        }
        Tag::Adopt { tag, db } => {
            open(api, db)?;
            let text = text_of(api, tag)?;
            Outcome::of(&tags::adopt(api, TagAdopt { text }, &[])?, json, api.words())
        }
        Tag::Scans { most, db } => {
            open(api, db)?;
            Outcome::of(&tags::scans(api, ScanListQuestion { most: Some(*most) }, &[])?, json, api.words())
        }
        Tag::Stocks { keep, db } => {
            open(api, db)?;
            if let Some(keep) = keep {
                let mut all = settings::read(api, Nothing {}, &[])?.content.settings;
                all.label_stocks = input::question(keep)?;
                settings::write(api, all, &[])?;
            }
            let stocks = settings::read(api, Nothing {}, &[])?.content.settings.label_stocks;
            Outcome::of(&Stocks { stocks }, json, api.words())
        }
    }
}

/// A fleet and its key.
pub fn fleet(api: &mut Api, db: &Path, command: &Fleet, json: bool) -> Result<Outcome, ApiError> {
    match command {
        // A device that is new begins with its fleet: everything else comes from the others.
        Fleet::Begin { .. } | Fleet::Join { .. } => api.open(db)?,
        _ => open(api, db)?,
    }
    let answer = match command {
        Fleet::Show => fleets::show(api, Nothing {}, &[])?,
        Fleet::Begin { name } => fleets::begin(api, FleetBegin { name: name.clone() }, &[])?,
        Fleet::HandOn { out } => return hand_on(api, out, json),
        Fleet::Join { key, partner, from } => {
            let role = if *partner { FleetRole::Partner } else { FleetRole::Own };
            let bytes = input::bytes(key)?;
            let text = String::from_utf8(bytes.clone()).ok();
            let Some(from) = from.clone() else {
                return Outcome::of(
                    &fleets::look(api, FleetLook { text, frame: None }, &bytes)?,
                    json,
                    api.words(),
                );
            };
            fleets::join(api, FleetJoin { text, frame: None, from, role }, &bytes)?
        }
        Fleet::Found => members::found(api, Nothing {}, &[])?,
        Fleet::Admit { device, role } => {
            let role = match role.as_str() {
                "reader" => MemberRole::Reader,
                "planner" => MemberRole::Planner,
                _ => MemberRole::Technician,
            };
            let device = device_named(api, device)?;
            members::admit(api, FleetAdmit { device, role }, &[])?
        }
        Fleet::Withdraw { device, after } => {
            let device = device_named(api, device)?;
            members::withdraw(api, FleetWithdraw { device, after: *after }, &[])?
        }
        Fleet::Leave { mark } => {
            let mark = mark.parse().map_err(|error| ApiError::input("mark", error))?;
            fleets::leave(api, FleetLeave { mark }, &[])?
        }
    };
    Outcome::of(&answer, json, api.words())
}

/// The device with that mark, or whose id alone begins so.
pub fn device_named(api: &mut Api, named: &str) -> Result<DeviceId, ApiError> {
    let known = fleets::show(api, Nothing {}, &[])?.content.others;
    let written = shares::show(api, Nothing {}, &[])?.content.devices;
    let marked = known.iter().filter(|known| known.mark == named).map(|known| known.device);
    let begun =
        written.iter().map(|known| known.device).filter(|device| device.to_string().starts_with(named));
    let mut found: Vec<DeviceId> = marked.chain(begun).collect();
    found.sort_unstable();
    found.dedup();
    match found.as_slice() {
        [one] => Ok(*one),
        _ => Err(ApiError::nothing(
            "device",
            format!(
                "\"{named}\" is not the mark or the beginning of the id of one device; fleet show lists them"
            ),
        )),
    }
}

/// Leaves the fleet's key in a file that only its owner may read, and says what to mind.
fn hand_on(api: &mut Api, out: &Path, json: bool) -> Result<Outcome, ApiError> {
    let kind = ending(out);
    if !["svg", "txt"].contains(&kind.as_str()) {
        return Err(no_such_kind(out, &kind, "svg or txt"));
    }
    let handed = fleets::hand_on(api, Nothing {}, &[])?.content;
    let text = if kind == "svg" { &handed.svg } else { &handed.text };
    input::leave_private(out, text.as_bytes())?;
    let FleetHandOn { until, caution, .. } = handed;
    let left = FleetHandedOn { file: out.display().to_string(), until, caution };
    Outcome::of(&left, json, api.words())
}

/// Leaves a label and says how it came out.
fn leave(api: &mut Api, tag: TagContent, label: &LabelFile) -> Result<Option<tags::LabelDrawn>, ApiError> {
    let kind = match ending(&label.out).as_str() {
        "png" => LabelKind::Png,
        "svg" => LabelKind::Svg,
        "pdf" => LabelKind::Pdf,
        other => return Err(no_such_kind(&label.out, other, "png, svg or pdf")),
    };
    let stock = stocked(api, &label.stock)?;
    let asked = LabelQuestion { tag, stock, cover_od_mm: label.cover_od_mm.map(Millimetres), kind };
    let preview = tags::preview(api, asked.clone(), &[])?;
    let file = tags::label(api, asked, &[])?;
    input::leave(&label.out, &file.bytes)?;
    Ok(preview.content.label)
}

/// A stock of the user's, or the one that was described.
fn stocked(api: &mut Api, stock: &LabelOn) -> Result<LabelStock, ApiError> {
    let Some(name) = &stock.stock else {
        let LabelOn { width_mm, height_mm, dpi, form, .. } = *stock;
        let form = match form {
            Form::Flag => LabelForm::Flag,
            Form::Wrap => LabelForm::Wrap,
            Form::Plate => LabelForm::Plate,
        };
        let name = format!("{width_mm} x {height_mm}");
        let material = LabelMaterial::Other;
        return Ok(LabelStock { name, width_mm, height_mm, dpi: f64::from(dpi), material, form });
    };
    let stocks = settings::read(api, Nothing {}, &[])?.content.settings.label_stocks;
    let known = stocks.iter().map(|stock| stock.name.clone()).collect::<Vec<_>>().join(", ");
    let found = stocks.into_iter().find(|stock| stock.name.eq_ignore_ascii_case(name.trim()));
    found.ok_or_else(|| {
        ApiError::input("stock", format!("there is no label stock \"{name}\"; there are {known}"))
    })
}

fn batch_of(
    api: &mut Api,
    machine: Option<&str>,
    due: Option<chrono::NaiveDate>,
    codes: &[String],
) -> Result<LabelBatchOf, ApiError> {
    if let Some(day) = due {
        return Ok(LabelBatchOf::Due(day));
    }
    let Some(machine) = machine else {
        let codes: Result<Vec<TagCode>, ApiError> = codes.iter().map(|code| typed(code)).collect();
        return Ok(LabelBatchOf::Codes(codes?));
    };
    match register::named(api, machine)? {
        Named::Machine(machine) => Ok(LabelBatchOf::Machine(machine)),
        _ => Err(ApiError::input("machine", format!("\"{machine}\" is no machine; give its name or id"))),
    }
}

fn lie(paper: LabelPaper) -> Lie {
    match paper {
        LabelPaper::OneEach => Lie::OneEach,
        LabelPaper::A4 => Lie::A4,
        LabelPaper::Letter => Lie::Letter,
    }
}

fn typed(code: &str) -> Result<TagCode, ApiError> {
    code.parse().map_err(|error| ApiError::input("code", error))
}

fn stands(place: Option<&str>) -> Result<Option<PlaceId>, ApiError> {
    place.map(|place| place.parse().map_err(|error| ApiError::input("place", error))).transpose()
}

/// The text of a tag: off a picture, or as it stands in a file.
fn text_of(api: &mut Api, tag: &Path) -> Result<String, ApiError> {
    let bytes = input::bytes(tag)?;
    if let Ok(text) = String::from_utf8(bytes.clone()) {
        return Ok(text);
    }
    let read = tags::read(api, ReadQuestion::default(), &bytes).map_err(|error| about(error, tag))?;
    Ok(read.first().content.text)
}

/// An error about a file that was given.
fn about(error: ApiError, path: &Path) -> ApiError {
    if error.field.is_empty() { error.about(path.display().to_string()) } else { error }
}

/// A spec alone, or the document that `check` takes, with or without code, date and proof.
fn tag_question(path: &Path) -> Result<TagQuestion, ApiError> {
    let mut document = hosewright_api::document(&input::text(path)?)?;
    let Some(fields) = document.as_object_mut() else {
        return Err(ApiError::input("", "a spec, or a document with `spec` and `service`, is expected"));
    };
    let [code, assembled, proof] = ["code", "assembled", "proof"].map(|name| fields.remove(name));
    let question = if fields.contains_key("spec") {
        hosewright_api::question(document)?
    } else {
        Question { spec: hosewright_api::question::<Spec>(document)?, ..Question::default() }
    };
    let proof = proof.map(hosewright_api::question).transpose()?.unwrap_or(Proof::NotProved);
    Ok(TagQuestion {
        question,
        code: code.map(hosewright_api::question).transpose()?,
        assembled: assembled.map(hosewright_api::question).transpose()?,
        proof,
    })
}
