//! Every end and flange of the tables is named from a full set of readings of itself.

use hosewright_core::catalogue::{Band, Catalogue, Cone, Connection, EndRow, Flange};
use hosewright_core::find::{EndCandidate, Part, Why, explain};
use hosewright_tests::find_figures::ask;
use serde_json::{Value, json};

/// A part as it is measured: its half, and what was read of it.
struct Measured {
    gender: Option<&'static str>,
    readings: Value,
}

/// Both halves where the tables have both, and the part itself where it has no thread.
fn parts(end: &EndRow) -> Vec<Measured> {
    let male =
        || Measured { gender: Some("male"), readings: read(end, end.male_major_mm, end.male_cone, "male") };
    let female = || {
        let mut readings = read(end, end.female_minor_mm, end.female_cone, "female");
        put(&mut readings, "swivel_hex_mm", end.swivel_hex_mm.map(|hex| hex.get()));
        Measured { gender: Some("female"), readings }
    };
    match (&end.thread, end.male_major_mm, end.female_minor_mm) {
        (None, ..) => vec![Measured { gender: None, readings: read(end, None, end.male_cone, "") }],
        (_, Some(_), None) => vec![male()],
        (_, None, Some(_)) => vec![female()],
        _ => vec![male(), female()],
    }
}

/// Everything the row states, read in the middle of its limits with a good caliper.
fn read(end: &EndRow, thread: Option<Band>, cone: Option<Cone>, gender: &str) -> Value {
    let mut readings = json!({"role": "A"});
    if !gender.is_empty() {
        readings["gender"] = json!(gender);
        readings["taper"] = json!(end.taper);
    }
    // A saw-tooth thread has a nominal size and no limits in the tables.
    let nominal = if gender == "male" { end.male_major_nom_mm } else { end.female_minor_nom_mm };
    let middle = thread.map(|band| 0.5 * (band.min + band.max)).or(nominal.map(|size| size.get()));
    put(&mut readings, "thread_diameter_mm", middle);
    match end.tpi {
        Some(tpi) => put(&mut readings, "tpi", Some(tpi)),
        None => put(&mut readings, "pitch_mm", end.pitch_mm.map(|pitch| pitch.get())),
    }
    put(&mut readings, "flank_angle_deg", end.flank_angle_deg.map(|flank| flank.get()));
    put(&mut readings, "seat_included_angle_deg", end.seat_included_angle_deg.map(|seat| seat.get()));
    put(&mut readings, "tube_od_mm", end.tube_od_mm.map(|tube| tube.get()));
    put(&mut readings, "male_bore_mm", end.male_bore_mm.map(|bore| bore.get()));
    if let Some(seal) = end.seals.first() {
        readings["seal"] = json!(seal);
    }
    if let Some(cone) = cone {
        readings["cone"] = json!(cone);
    }
    readings
}

fn of_flange(flange: &Flange) -> Measured {
    let mut readings = json!({"role": "A", "seal": "o-ring-face"});
    put(&mut readings, "head_od_mm", flange.head_od_mm.map(|head| head.get()));
    put(&mut readings, "head_thickness_mm", flange.head_thickness_mm.map(|head| head.get()));
    put(&mut readings, "bolt_long_mm", flange.bolt_long_mm.map(|bolt| bolt.get()));
    put(&mut readings, "bolt_short_mm", flange.bolt_short_mm.map(|bolt| bolt.get()));
    Measured { gender: None, readings }
}

fn put(readings: &mut Value, key: &str, value: Option<f64>) {
    if let Some(value) = value {
        readings[key] = json!(value);
    }
}

fn measured(row: Connection<'_>) -> Vec<Measured> {
    match row {
        Connection::End(end) => parts(end),
        Connection::Flange(flange) => vec![of_flange(flange)],
    }
}

fn names(class: &EndCandidate, row: Connection<'_>, gender: Option<&str>) -> bool {
    let half = class.gender.map(|half| json!(half));
    let is_it = |family: &str, size: &str| (family, size) == (row.family(), row.size());
    half.as_ref().and_then(Value::as_str) == gender
        && (is_it(&class.family, &class.size)
            || class.also.iter().any(|name| is_it(&name.family, &name.size)))
}

/// Families whose mark no reading of today can tell, and the mark. A row of theirs need not lead, and
/// no other row may be ten times likelier.
const MARKS_NO_READING_TELLS: [(&str, &str); 9] = [
    ("Standpipe metric", "no thread"),
    ("Standpipe inch", "no thread"),
    ("Staple end", "no thread, a groove for the staple"),
    ("Quick coupling ISO 7241 A", "no thread, a valve and a ball groove"),
    ("Quick coupling ISO 7241 B", "no thread, a valve and a ball groove"),
    ("Quick coupling ISO 16028", "no thread, a flush face"),
    ("Quick coupling ISO 14540", "a valve in the mouth"),
    ("Banjo G", "a hollow bolt with a cross hole"),
    ("Test point", "a ball or pin in the nose"),
];

/// A pin is read as the tube of a 24 degree end, and nothing says that there is no cone.
const PIN_OR_CONE: &str = "M22x1.5 pin 15";

fn is_marked(row: Connection<'_>) -> bool {
    row.size() == PIN_OR_CONE || MARKS_NO_READING_TELLS.iter().any(|(family, _)| *family == row.family())
}

/// Whether no reading speaks for the leading class against the one at that place: how common the two
/// families are decides, and a machine's origin would.
fn is_alike(readings: &Value, place: usize) -> bool {
    let readings = json!({"caliper_error_mm": 0.05, "ends": [readings]});
    let readings = serde_json::from_value(readings).expect("readings by the contract");
    let why = Why { readings, of: Part::A, candidate: place, rival: Some(0) };
    let explained = explain(Catalogue::embedded(), &why).expect("readings that can be").expect("a candidate");
    explained.readings.iter().map(|said| said.bits).sum::<f64>() > -0.3
}

#[test]
fn a_full_set_of_readings_names_every_row() {
    let catalogue = Catalogue::embedded();
    let (mut first, mut lost) = (0, Vec::new());
    for row in catalogue.connections() {
        for part in measured(row) {
            let found = ask(catalogue, &json!({"caliper_error_mm": 0.05, "ends": [part.readings]}));
            let classes = &found.ends[0].candidates;
            let of_row = classes.iter().find(|class| names(class, row, part.gender));
            let share = of_row.map_or(0.0, |class| class.probability / classes[0].probability);
            first += usize::from(share >= 1.0);
            let place = classes.iter().position(|class| names(class, row, part.gender));
            let is_told = share >= 1.0
                || share >= 0.1
                    && (is_marked(row) || place.is_some_and(|place| is_alike(&part.readings, place)));
            if !is_told {
                let (family, size) = (&classes[0].family, &classes[0].size);
                lost.push(format!(
                    "{} {} {:?}: {share:.2} of {family} {size}; read {}",
                    row.family(),
                    row.size(),
                    part.gender,
                    part.readings
                ));
            }
        }
    }
    assert!(lost.is_empty(), "{first} lead, these do not:\n{}", lost.join("\n"));
    assert!(first > 575, "only {first} parts lead");
}
