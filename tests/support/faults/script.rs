//! Every command that writes, one after another, on an invented fleet.

use super::served::{Served, answer};
use chrono::Utc;
use hosewright_core::fleet::{DeviceKey, FleetKey, hand_on};
use serde_json::{Value, json};
use std::path::Path;
use std::process::Command;

/// The commands that write in the register or in a file beside it. [`script`] calls each at least once.
pub const WRITING: [&str; 33] = [
    "bench.record",
    "bench.undo",
    "fleet.admit",
    "fleet.begin",
    "fleet.found",
    "fleet.join",
    "fleet.leave",
    "fleet.withdraw",
    "job.close",
    "job.keep",
    "people.add",
    "people.erase",
    "photo.add",
    "register.backup",
    "register.backups.keep",
    "register.import",
    "register.merge",
    "register.rebuild",
    "register.record",
    "register.restore",
    "settings.write",
    "share.exchange",
    "share.set",
    "stock.change",
    "stock.take",
    "supplier.import",
    "supplier.keep",
    "supplier.remove",
    "tag.adopt",
    "tag.label",
    "tag.open",
    "unfinished.close",
    "unfinished.keep",
];

/// The commands that only answer; `tag.read` writes what `tag.open` writes, and `tag.batch.paper` what `tag.label` does.
pub const READING: [&str; 78] = [
    "batch",
    "batch.paper",
    "bench.judge",
    "certificate.paper",
    "check",
    "crimp",
    "cut",
    "cutoff.measured",
    "desk.codes",
    "desk.export",
    "desk.glance",
    "desk.hoses",
    "diagnose",
    "explain",
    "find",
    "fleet.hand-on",
    "fleet.look",
    "fleet.show",
    "flow",
    "inspect.try",
    "job.list",
    "life",
    "make",
    "make.paper",
    "oil",
    "people.list",
    "photo.list",
    "photo.read",
    "policy.at",
    "policy.list",
    "policy.try",
    "press",
    "print",
    "quote",
    "quote.paper",
    "register.affected",
    "register.backups",
    "register.bundle",
    "register.due",
    "register.due.export",
    "register.export",
    "register.id",
    "register.life",
    "register.life.paper",
    "register.machine",
    "register.match",
    "register.overview",
    "register.place",
    "register.search",
    "register.show",
    "register.survey",
    "register.verify",
    "report.paper",
    "round",
    "round.paper",
    "route",
    "route.field",
    "scan.list",
    "settings.read",
    "share.left-out",
    "share.show",
    "stock.list",
    "stock.need",
    "supplier.list",
    "supplier.lookup",
    "supplier.match",
    "surge",
    "tables",
    "tag.batch",
    "tag.batch.paper",
    "tag.make",
    "tag.of",
    "tag.preview",
    "tag.read",
    "unfinished.file",
    "unfinished.read",
    "work.look",
    "work.stop",
];

const FLEET: &str = include_str!("../../../demo/fleet.csv");
const SUPPLIER: &str = include_str!("../../../demo/supplier.csv");
const STOCK: &str = include_str!("../../../demo/stock.json");
const PICTURE: &[u8] = include_bytes!("../../fuzz/seeds/picture/label.jpg");
const VAN: &str = include_str!("../../../demo/van.json");

/// Rows of the demo's list that are taken in: enough to fill some pages, few enough to be quick.
const ROWS: usize = 12;

/// Calls every writing command in turn.
pub fn script(from: &Others, mut call: impl FnMut(&'static str, Value, &[u8]) -> Value) {
    let list = FLEET.lines().take(ROWS + 1).collect::<Vec<_>>().join("\n");
    call("settings.write", parsed(VAN), &[]);
    call("register.import", json!({"name": "fleet.csv"}), list.as_bytes());
    let person = call("people.add", json!({"name": "Invented Name"}), &[])["person"].clone();
    let job = call("job.keep", json!({"job": null, "content": {"typed": 1}}), &[])["job"].clone();
    call("job.keep", json!({"job": job, "content": {"typed": "13/16 in"}}), &[]);
    call("stock.change", json!({"changes": parsed(STOCK)}), &[]);
    call(
        "stock.take",
        json!({"store": "Van 2", "items": [{"item": ferrule(), "counted": 7}], "save": true}),
        &[],
    );
    call("supplier.import", json!({"name": "supplier.csv"}), SUPPLIER.as_bytes());
    call("supplier.keep", json!({"row": by_hand()}), &[]);
    let made = call("bench.record", json!({"make": make(), "bench": bench()}), &[]);
    let tag =
        call("tag.make", json!({"question": make()["question"], "code": made["code"]}), &[])["tag"].clone();
    call("tag.label", json!({"tag": tag, "stock": flag(), "as": "png"}), &[]);
    call("tag.open", json!({"code": made["code"]}), &[]);
    call("tag.adopt", json!({"text": from.tag}), &[]);
    call("photo.add", json!({"about": {"hose": made["code"]}}), PICTURE);
    call("register.merge", json!({}), from.bundle.as_bytes());
    call("register.backup", json!({}), &[]);
    call("register.backups.keep", json!({}), &[]);
    let kept = call("register.backups", json!({}), &[])["backups"][0]["name"].clone();
    call("register.record", json!({"events": [{"body": note(&made["code"])}]}), &[]);
    call("bench.undo", json!({"code": made["code"], "reason": "never made"}), &[]);
    call("people.erase", json!({"person": person}), &[]);
    call("supplier.remove", json!({"supplier": "Demo North (invented)"}), &[]);
    call("register.rebuild", json!({}), &[]);
    call("fleet.join", json!({"text": from.key, "from": from.mark, "as": "partner"}), &[]);
    let begun = call("fleet.begin", json!({"name": "Invented vans"}), &[]);
    call("share.set", json!({"url": from.storage}), &[]);
    call("share.exchange", json!({}), &[]);
    let device = begun["others"][0]["device"].clone();
    call("fleet.admit", json!({"device": device, "role": "reader"}), &[]);
    call("fleet.withdraw", json!({"device": device}), &[]);
    call("fleet.leave", json!({"mark": begun["own"]["mark"]}), &[]);
    call("fleet.join", json!({"text": from.open, "from": from.open_from, "as": "own"}), &[]);
    call("fleet.found", json!({}), &[]);
    call("unfinished.keep", json!({"what": "supplier-row", "content": {"typed": "28.5"}}), &[]);
    call("unfinished.close", json!({"what": "supplier-row"}), &[]);
    call("job.close", json!({"job": job}), &[]);
    call("register.restore", json!({"kept": kept}), &[]);
}

/// What comes from other devices.
pub struct Others {
    /// Another device's bundle.
    pub bundle: String,
    /// A fleet's key as another device hands it on.
    pub key: Value,
    /// That device's mark.
    pub mark: Value,
    /// The key of a fleet that is open, as an older program hands it on.
    pub open: String,
    /// The mark of the device that does.
    pub open_from: String,
    /// A tag that no register here knows.
    pub tag: Value,
    /// A folder in which a fleet's devices meet.
    pub storage: String,
}

impl Others {
    /// Makes them with a device of their own in that folder.
    ///
    /// # Panics
    /// It is refused: then the script is wrong.
    pub fn made(program: &Path, folder: &Path) -> Self {
        let other = Served::start(Command::new(program), &folder.join("other.db"));
        let ask =
            |name, input, bytes: &[u8]| answer(other.begin(name, &input, bytes)).expect("it is answered");
        let list = FLEET.lines().take(3).collect::<Vec<_>>().join("\n");
        ask("register.import", json!({"name": "fleet.csv"}), list.as_bytes());
        let begun = ask("fleet.begin", json!({"name": "Another invented fleet"}), &[]).document;
        let tag = ask("tag.make", json!({"question": make()["question"]}), &[]).document;
        let bundle = ask("register.bundle", json!({}), &[]).bytes;
        let open_from = DeviceKey::from_bytes([8; 32]);
        let open = hand_on("Open vans", &FleetKey::from_bytes([7; 32]), None, &open_from, Utc::now());
        let storage = folder.join("storage");
        std::fs::create_dir_all(&storage).expect("a folder is made");
        Self {
            bundle: String::from_utf8(bundle).expect("a bundle is text"),
            key: ask("fleet.hand-on", json!({}), &[]).document["text"].clone(),
            mark: begun["device"]["mark"].clone(),
            open,
            open_from: open_from.public().mark(),
            tag: tag["text"].clone(),
            storage: format!("file://{}", storage.display()),
        }
    }
}

fn parsed(text: &str) -> Value {
    serde_json::from_str(text).expect("a document of the demo")
}

fn ferrule() -> Value {
    json!({"kind": "ferrule", "name": "F-10", "dn": 16})
}

/// A hose that passes the check, with everything that is needed to make it.
fn make() -> Value {
    let end = |role| json!({"role": role, "family": "ORFS", "size": "-10", "gender": "female", "form": "straight", "cutoff_mm": 31.5});
    let settings = |role| {
        json!({"role": role, "source": "my supplier's table (invented)", "series": "S1", "insertion_mm": 34,
            "skive": "none", "ferrule": "F-10", "lubricant": "oil", "die_set": "28", "crimp_diameter_mm": 28.5,
            "crimp_tolerance_mm": 0.1})
    };
    json!({"question": {
            "spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16}, "ends": [end("A"), end("B")],
                "overall_length_mm": 1240},
            "service": {"working_pressure_bar": 185, "relief_bar": 195, "surge_pressure_bar": 200, "fluid": "HM",
                "fluid_min_c": -20, "fluid_max_c": 88, "ambient_max_c": 40, "flow_l_min": 60, "line": "pressure",
                "bend_radius_mm": 230}},
        "settings": [settings("A"), settings("B")]})
}

fn bench() -> Value {
    let crimp = |role| json!({"role": role, "readings_mm": vec![28.5; 12], "instrument": {"name": "micrometer 3", "error_mm": 0.01}});
    json!({"crimps": [crimp("A"), crimp("B")], "cut_length_mm": 1177, "finished": {"length_mm": 1243},
        "proof": {"rig": false}, "steps": []})
}

fn by_hand() -> Value {
    json!({"supplier": "By hand (invented)", "standard": "EN 853", "type": "2SN", "dn": 16, "series": "S9",
        "ferrule": "F-10", "insertion_mm": 34, "skive": "none", "die_set": "28", "crimp_diameter_mm": 28.5,
        "crimp_tolerance_mm": 0.1, "from": "entered by hand"})
}

fn flag() -> Value {
    json!({"name": "Flag", "width_mm": 100, "height_mm": 50, "dpi": 300, "material": "polyester", "form": "flag"})
}

fn note(code: &Value) -> Value {
    json!({"kind": "noted", "about": {"hose": code}, "text": "an invented note"})
}
