//! Random histories: what people do on several devices, in any order, with wrong clocks.

use super::fleet::{self, Kept, a_circuit, a_machine, a_note, a_place, a_site, fitted, made, taken_off};
use chrono::{DateTime, Utc};
use hosewright_core::check::Verdict;
use hosewright_core::cutting::StockSort;
use hosewright_core::fleet::DeviceKey;
use hosewright_core::record::{
    About, Body, DeviceId, DeviceKeyTold, DeviceNamed, Fitted, Graded, Hash, HoursRead, Inspected, Labelled,
    LabelledHow, Overridden, PhotoAdded, Piece, PieceChanged, PieceId, PolicyOf, PolicySet, PriceSet, Scope,
    StockChanged, StockMoved, StockPlaced, StockUnit, StockWhy, SurveyState, Surveyed, TagWithdrawn, Voided,
};
use hosewright_core::spec::Line;
use hosewright_core::stock::{Item, Thing};
use hosewright_store::{Error, NewEvent};
use proptest::prelude::*;

/// One thing a person does: what, with which of a few ids, and which earlier events it builds on.
#[derive(Debug, Clone)]
pub struct Deed {
    what: u8,
    which: u8,
    other: u8,
    builds_on: Option<Vec<prop::sample::Index>>,
    /// Offset of the device's clock from the right time, in seconds.
    clock: i64,
}

pub fn deed() -> impl Strategy<Value = Deed> {
    let builds_on = prop_oneof![
        3 => Just(None),
        1 => prop::collection::vec(any::<prop::sample::Index>(), 1..3).prop_map(Some),
    ];
    (0..28_u8, 0..3_u8, 0..3_u8, builds_on, -200_000_000..200_000_000_i64)
        .prop_map(|(what, which, other, builds_on, clock)| Deed { what, which, other, builds_on, clock })
}

impl Deed {
    /// Does it. What the register refuses for what it says is no failure: people try such things.
    pub fn apply(&self, kept: &mut Kept) -> Result<(), TestCaseError> {
        let builds_on = match &self.builds_on {
            None => None,
            Some(chosen) => {
                let events = kept.register.bundle().expect("reads").events;
                let alike: Vec<_> = events
                    .iter()
                    .filter(|event| event.body.kind() == self.kind() || self.what == 20)
                    .map(|event| event.at())
                    .collect();
                (!alike.is_empty()).then(|| chosen.iter().map(|index| *index.get(&alike)).collect())
            }
        };
        let now: DateTime<Utc> = fleet::later(self.clock);
        let body = self.body(kept.register.device());
        match kept.register.append([NewEvent { body, builds_on }], now) {
            Ok(_)
            | Err(
                Error::NotKnown { .. }
                | Error::CodeTaken { .. }
                | Error::AlreadyFitted { .. }
                | Error::Occupied { .. }
                | Error::NotFittedThere { .. }
                | Error::OffBeforeOn { .. }
                | Error::Withdrawn { .. }
                | Error::OtherMachine { .. }
                | Error::OtherTrack { .. }
                | Error::NothingVoided
                | Error::Reader
                | Error::PlannersOnly
                | Error::Gone
                | Error::WordStays,
            ) => Ok(()),
            Err(other) => Err(TestCaseError::fail(format!("{self:?}: {other}"))),
        }
    }

    fn kind(&self) -> String {
        let json = serde_json::to_value(self.body(DeviceId::from_bytes([0; 16]))).expect("writes");
        json["kind"].as_str().expect("a kind").to_owned()
    }

    /// What that device writes of it.
    fn body(&self, device: DeviceId) -> Body {
        let (which, other) = (self.which, self.other);
        let tag = ["A1", "B2", "C3"][usize::from(which)];
        let name = ["North", "South", "Quarry"][usize::from(other)];
        let date = ["2024-02-29", "2025-06-01", "2026-11-25"][usize::from(other)];
        match self.what {
            0 => Body::DeviceNamed(DeviceNamed { name: name.into() }),
            1 => a_site(which, name),
            2 => a_machine(which, other, name),
            3 => a_circuit(which, other, 300.0 + f64::from(other)),
            4 => a_place(which, other, name),
            5 | 6 => made(tag, date),
            7 | 8 => with_hours(fitted(tag, other, date), (which > 0).then(|| 10.0 * f64::from(other))),
            9 | 10 => taken_off(tag, other, date, (other > 0).then_some("ABR")),
            11 => Body::HoursRead(HoursRead {
                machine: fleet::machine(which),
                hours: f64::from(other) + 0.1,
                date: fleet::day(date),
            }),
            12 => Body::Inspected(Inspected {
                code: fleet::code(tag),
                date: fleet::day(date),
                findings: vec![Graded { sign: "ABR".into(), grade: Verdict::Caution }; usize::from(other)],
                opened: other == 1,
            }),
            13 => Body::PolicySet(PolicySet {
                scope: [Scope::Fleet, Scope::Site(fleet::site(other)), Scope::Place(fleet::place(other))]
                    [usize::from(which)]
                .clone(),
                of: PolicyOf { line: (other == 1).then_some(Line::Cylinder), demand: None },
                service_years: Some(f64::from(other) * 0.5),
                service_hours: (other == 2).then_some(100.0),
                storage_years: None,
                inspection_years: Some(1.0),
                inspection_hours: None,
                stop: other == 1,
            }),
            14 => Body::StockChanged(StockChanged {
                store: "Van 2".into(),
                item: Item::Named(tag.into()),
                unit: [StockUnit::Millimetres, StockUnit::Pieces][usize::from(other % 2)],
                difference: i64::from(other) * 1000 - 500,
                why: (which == 0).then_some(StockWhy::Counted),
                hose: (other > 0).then(|| fleet::code(tag)),
                bin: ["", "A1"][usize::from(other / 2 % 2)].into(),
                seen: None,
            }),
            15 => Body::Overridden(Overridden {
                code: fleet::code(tag),
                rule: "flow-speed".into(),
                reason: name.into(),
                by: fleet::person(1),
            }),
            16 => Body::PhotoAdded(PhotoAdded {
                about: About::Hose(fleet::code(tag)),
                sha256: Hash::from_bytes([other; 32]),
                mime: "image/jpeg".into(),
                length: 12,
            }),
            17 => a_note(About::Machine(fleet::machine(which)), name),
            18 => Body::TagWithdrawn(TagWithdrawn { code: fleet::code(tag), reason: name.into() }),
            27 => Body::Surveyed(Box::new(Surveyed {
                place: fleet::place(which),
                date: fleet::day(date),
                state: [SurveyState::NotOpened, SurveyState::NotReached][usize::from(other % 2)],
                code: None,
                readings: None,
                note: None,
            })),
            19 | 20 => Body::Voided(Voided { reason: name.into() }),
            21 => Body::StockMoved(StockMoved {
                item: Item::Named(tag.into()),
                unit: StockUnit::Millimetres,
                from: "Van 2".into(),
                to: name.into(),
                count: i64::from(other) + 1,
                from_bin: ["", "A1"][usize::from(other / 2 % 2)].into(),
                to_bin: String::new(),
            }),
            22 => Body::StockPlaced(StockPlaced {
                store: "Van 2".into(),
                item: Item::Named(tag.into()),
                bin: name.into(),
                low: Some(i64::from(other)),
            }),
            23 => Body::PriceSet(PriceSet {
                item: Item::Named(tag.into()),
                minor: (other > 0).then_some(i64::from(other)),
                currency: "EUR".into(),
            }),
            24 => a_piece(which, name),
            25 => Body::PieceChanged(PieceChanged {
                piece: PieceId::from_bytes([which; 16]),
                tenths_mm: i64::from(other) * 1000 - 500,
                why: [StockWhy::Used, StockWhy::Counted][usize::from(other % 2)],
                hose: (other > 0).then(|| fleet::code(tag)),
                seen: None,
            }),
            26 => Body::DeviceKey(DeviceKeyTold::of(device, &DeviceKey::from_bytes([other; 32]))),
            _ => Body::Labelled(Labelled {
                code: fleet::code(tag),
                how: if other == 0 { LabelledHow::Seen } else { LabelledHow::Printed },
            }),
        }
    }
}

/// A register with a person and enough things that most deeds mean something.
pub fn begin(device: u8) -> Kept {
    let mut kept = fleet::begin(device);
    kept.register.name_person(fleet::person(1), "N. N.", fleet::now()).expect("is named");
    kept
}

fn with_hours(body: Body, hours: Option<f64>) -> Body {
    match body {
        Body::Fitted(fitted) => Body::Fitted(Fitted { hours, ..fitted }),
        other => other,
    }
}

/// The things that the first device sets up before the others join.
pub fn common() -> Vec<Body> {
    (0..3)
        .map(|n| a_site(n, "North"))
        .chain((0..3).map(|n| a_machine(n, n, "Loader")))
        .chain((0..3).map(|n| a_place(n, n, "Lift")))
        .chain(["A1", "B2", "C3"].map(|tag| made(tag, "2025-01-01")))
        .chain((0..3).map(|n| a_piece(n, "Shelf")))
        .collect()
}

fn a_piece(n: u8, store: &str) -> Body {
    let hose =
        Thing::Hose { standard: "EN 853".into(), kind: "2SN".into(), dn: "16".parse().expect("a size") };
    Body::PieceSet(Box::new(Piece {
        piece: PieceId::from_bytes([n; 16]),
        store: store.into(),
        bin: String::new(),
        hose,
        sort: StockSort::Reel,
        made: None,
        label: String::new(),
    }))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn rebuilding_from_the_log_gives_the_live_tables(deeds in prop::collection::vec(deed(), 1..40)) {
        let mut kept = begin(1);
        kept.register.append(common(), fleet::now()).expect("is written");
        for deed in &deeds {
            deed.apply(&mut kept)?;
        }
        let live = kept.register.dump().expect("reads");
        kept.register.rebuild().expect("rebuilds");
        prop_assert_eq!(kept.register.dump().expect("reads"), live);
        prop_assert_eq!(kept.register.verify().expect("verifies").faults, []);
    }
}

/// Ids of different kinds are alike here, as they may be in a bundle from outside.
#[test]
fn whatever_is_struck_out_leaves_the_tables_as_a_rebuild_gives_them() {
    let mut written = fleet::fleet();
    written.extend([
        with_hours(fitted("A1", 3, "2026-11-25"), Some(40.0)),
        Body::HoursRead(HoursRead {
            machine: fleet::machine(1),
            hours: 90.0,
            date: fleet::day("2026-11-26"),
        }),
        Body::PolicySet(PolicySet {
            scope: Scope::Fleet,
            of: PolicyOf { line: None, demand: None },
            service_years: None,
            service_hours: Some(100.0),
            storage_years: None,
            inspection_years: None,
            inspection_hours: None,
            stop: false,
        }),
    ]);
    for (struck, body) in written.iter().enumerate() {
        let mut kept = begin(1);
        let events = fleet::write(&mut kept, written.clone());
        let void = NewEvent::on(Body::Voided(Voided { reason: "by mistake".into() }), [events[struck]]);
        fleet::write(&mut kept, [void]);
        assert_eq!(kept.register.verify().expect("verifies").faults, [], "without {body:?}");
    }
}
