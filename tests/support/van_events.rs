//! What a van writes in some years of work, for a merge and an office that are measured.

use hosewright_core::record::{Body, MachineId, PlaceId, SiteId};
use hosewright_core::tag::TagCode;
use serde_json::{Value, json};

/// Places of a machine; a hose after the other sits there, two and three by turns.
const PLACES: u32 = 20;
/// Events of a machine with its places.
pub const EVENTS_OF_MACHINE: usize = 258;

fn id(n: u32) -> [u8; 16] {
    let mut bytes = [0; 16];
    bytes[..4].copy_from_slice(&n.wrapping_mul(0x9e37_79b9).to_be_bytes());
    bytes
}

fn code(n: u32) -> TagCode {
    let [a, b, c, d] = n.wrapping_mul(0x9e37_79b9).to_be_bytes();
    TagCode::from_random([0, a, b, c, d, a, b])
}

/// A day some days after the beginning of 2016, in months of 28 days.
fn day(n: u32) -> String {
    format!("{:04}-{:02}-{:02}", 2016 + n / 336, n / 28 % 12 + 1, n % 28 + 1)
}

fn spec(n: u32) -> Value {
    json!({
        "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
        "ends": [
            {"role": "A", "family": "JIC 37 flare", "size": "-10", "gender": "female"},
            {"role": "B", "family": "ORFS", "size": "-10", "gender": "female", "form": "elbow90"}
        ],
        "overall_length_mm": 400 + n % 200 * 10
    })
}

fn body(value: Value) -> Body {
    serde_json::from_value(value).unwrap_or_else(|error| panic!("no body: {error}"))
}

/// The site of a van.
pub fn site(van: u32) -> Body {
    body(json!({"kind": "site-named", "site": SiteId::from_bytes(id(van)), "name": format!("Quarry {van}")}))
}

/// A machine on that site: its hours, and at each place two hoses or three, one after the other. No two vans write of
/// one machine.
pub fn machine(van: u32, number: u32) -> Vec<Body> {
    let m = van * 10_000 + number;
    let machine = MachineId::from_bytes(id(m));
    let mut bodies =
        vec![json!({"kind": "machine-set", "machine": machine, "site": SiteId::from_bytes(id(van)),
        "name": format!("Excavator {m}"), "sort": "excavator"})];
    for n in 0..7 {
        bodies
            .push(json!({"kind": "hours-read", "machine": machine, "hours": 900 * n, "date": day(330 * n)}));
    }
    for p in m * PLACES..(m + 1) * PLACES {
        bodies.extend(place(p, machine));
    }
    bodies.into_iter().map(body).collect()
}

fn place(p: u32, machine: MachineId) -> Vec<Value> {
    let place = PlaceId::from_bytes(id(p));
    let mut bodies =
        vec![json!({"kind": "place-set", "place": place, "machine": machine, "number": p % PLACES + 1,
        "name": "Stick cylinder, rod side", "line": "cylinder", "spec": spec(p), "service": {}})];
    let mut on = p % 700;
    let hoses = 2 + p % 2;
    for n in 0..hoses {
        let code = code(p * 4 + n);
        bodies.push(json!({"kind": "assembly-made", "code": code, "spec": spec(p), "service": {},
            "assembled": day(on), "proof": {"state": "not-proved", "why": "no-rig"}, "pressure_bar": 206.8,
            "catalogue": "tables", "program": "van"}));
        bodies.push(json!({"kind": "labelled", "code": code, "how": "printed"}));
        bodies.push(json!({"kind": "fitted", "code": code, "place": place, "date": day(on)}));
        bodies.push(json!({"kind": "inspected", "code": code, "date": day(on + 90), "findings": []}));
        if n + 1 < hoses {
            on += 400;
            bodies.push(
                json!({"kind": "taken-off", "code": code, "place": place, "date": day(on), "cause": "ABR"}),
            );
        }
    }
    bodies
}
