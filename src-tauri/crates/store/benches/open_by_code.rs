//! How long a technician waits: a hose by its code, a machine, search and the due list, in a
//! register of ten thousand hoses; and one record written to the disk.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]
#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    reason = "a test or a bench that can not go on must panic"
)]

use chrono::{DateTime, NaiveDate};
use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_core::record::{
    Assembly, Body, DeviceId, Fitted, HoursRead, Machine, MachineId, NotProved, Place, PlaceId, Proof, Site,
    SiteId,
};
use hosewright_core::spec::{Service, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::{DueAsk, Register};
use std::hint::black_box;

const MACHINES: u16 = 500;
const PLACES: u16 = 20;

fn id(n: u16) -> [u8; 16] {
    let mut bytes = [0; 16];
    bytes[..2].copy_from_slice(&n.to_be_bytes());
    bytes
}

fn code(n: u16) -> TagCode {
    TagCode::from_random([0, 0, 0, 0, 0, (n >> 8) as u8, n as u8])
}

fn day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2024, 2, 29).expect("a day")
}

fn fleet() -> Vec<Body> {
    let spec: Spec = serde_json::from_value(serde_json::json!({
        "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
        "ends": [
            {"role": "A", "family": "JIC 37 flare", "size": "-10"},
            {"role": "B", "family": "ORFS", "size": "-10"}
        ],
        "overall_length_mm": 1240
    }))
    .expect("a spec");
    let site = SiteId::from_bytes(id(0));
    let mut bodies = vec![Body::SiteNamed(Site { site, name: "North Quarry".into() })];
    for m in 0..MACHINES {
        let machine = MachineId::from_bytes(id(m));
        let name = format!("Excavator {m}");
        bodies.push(Body::MachineSet(Machine {
            machine,
            site: Some(site),
            name,
            sort: "excavator".into(),
            demand: None,
        }));
        for p in m * PLACES..(m + 1) * PLACES {
            let place = PlaceId::from_bytes(id(p));
            bodies.push(Body::PlaceSet(Box::new(Place {
                place,
                machine,
                number: u32::from(p % PLACES),
                name: format!("Place {p}"),
                line: None,
                circuit: None,
                spec: Some(spec.clone()),
                service: Service::default(),
                ports: None,
                oil: None,
                demand: None,
                stakes: None,
                consequence: None,
            })));
            bodies.push(Body::AssemblyMade(Box::new(Assembly {
                code: code(p),
                spec: spec.clone(),
                service: Service::default(),
                hose_made: None,
                assembled: Some(day()),
                proof: Proof::NotProved { why: NotProved::NoRig },
                verdict: None,
                pressure_bar: None,
                bench: None,
                catalogue: "tables".into(),
                rests_on: Vec::new(),
                program: "bench".into(),
                taken_in: None,
            })));
            let (already_there, hours) = (false, None);
            bodies.push(Body::Fitted(Fitted { code: code(p), place, date: day(), already_there, hours }));
        }
    }
    bodies
}

fn bench(criterion: &mut Criterion) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut register =
        Register::open(folder.path().join("bench.db"), DeviceId::from_bytes([1; 16])).expect("opens");
    register.append(fleet(), DateTime::UNIX_EPOCH).expect("is written");
    let today = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a day");

    criterion.bench_function("open a hose by its code, 10 000 hoses", |bench| {
        bench.iter(|| register.hose(black_box(&code(4711))).expect("reads").expect("is there"));
    });
    criterion.bench_function("open a machine with 20 places", |bench| {
        bench.iter(|| register.machine(black_box(MachineId::from_bytes(id(77)))).expect("reads"));
    });
    criterion.bench_function("search two words, 10 000 hoses", |bench| {
        let words = format!("excavator {}", code(4711));
        bench.iter(|| register.search(black_box(&words), 20).expect("reads"));
    });
    let rules = register.rules().expect("reads");
    criterion.bench_function("first page of what falls due, 10 000 hoses", |bench| {
        let ask = DueAsk { limit: Some(50), ..DueAsk::default() };
        bench.iter(|| register.due(black_box(today), &ask, &rules).expect("reads"));
    });
    criterion.bench_function("write one record", |bench| {
        let machine = MachineId::from_bytes(id(499));
        bench.iter(|| {
            let read = HoursRead { machine, hours: 6812.0, date: today };
            register.append([Body::HoursRead(read)], DateTime::UNIX_EPOCH).expect("is written")
        });
    });
}

criterion_group! {
    name = benches;
    config = Criterion::default().sample_size(10);
    targets = bench
}
criterion_main!(benches);
