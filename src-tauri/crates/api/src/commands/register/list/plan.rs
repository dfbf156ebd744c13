//! Rows -> the events that write them down: sites, machines and places that are new, then every hose
//! in the order it was fitted.

use super::names::Names;
use super::stays::{Held, Stay, Stays, Taken};
use crate::{Api, ApiError, PROGRAM};
use hosewright_core::catalogue::RowMark;
use hosewright_core::check::{Question, assembly_rating};
use hosewright_core::hose_list::Row;
use hosewright_core::quantity::Bar;
use hosewright_core::record::{
    Assembly, Body, Fitted, HoursRead, Machine, MachineId, NotProved, Place, PlaceId, Proof, Site, SiteId,
    TakenOff,
};
use hosewright_core::tag::TagCode;
use std::collections::HashMap;

/// Site and machine in lower case: what a list calls a machine by.
type MachineKey = (String, String);

/// What becomes of a row that can be taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Became {
    /// Its hose is written down.
    Made,
    /// Its hose is taken off.
    Changed,
    /// The register has it.
    Known,
}

/// A row's number, what it is about and what becomes of it, or why it is refused.
pub(super) type Told = (usize, String, Result<Became, String>);

/// What hoses of the same spec in the same service have in common.
#[derive(Clone)]
struct Kind {
    /// The pressure of its weakest part.
    pressure: Option<Bar>,
    rests_on: Vec<RowMark>,
}

/// The places of a machine by number and, in lower case, by name.
#[derive(Default)]
struct Places {
    by_number: HashMap<u32, PlaceId>,
    by_name: HashMap<String, u32>,
}

/// What there is and what is to be written.
#[derive(Default)]
pub(super) struct Plan {
    held: Held,
    sites: HashMap<String, SiteId>,
    machines: HashMap<MachineKey, MachineId>,
    places: HashMap<MachineKey, Places>,
    stays: HashMap<(MachineKey, u32), Stays>,
    /// What a list has many of, or why it can not be rated, by spec and service as text.
    kinds: HashMap<String, Result<Kind, String>>,
    pub(super) events: Vec<Body>,
    pub(super) sites_made: usize,
    pub(super) machines_made: usize,
    pub(super) places_made: usize,
    pub(super) hoses_made: usize,
    pub(super) changed: usize,
}

impl Plan {
    /// Begins with what the register has.
    pub(super) fn over(api: &mut Api) -> Result<Self, ApiError> {
        let register = api.register()?;
        let held = Held::of(register)?;
        let mut plan = Self { held, ..Self::default() };
        for site in register.sites()? {
            plan.sites.insert(site.name.to_lowercase(), site.site);
        }
        for row in register.machines()? {
            let site = row.site_name.unwrap_or_default().to_lowercase();
            let key = (site, row.name.to_lowercase());
            for place in register.machine(row.machine)?.map(|sheet| sheet.places).unwrap_or_default() {
                let Place { place, number, name, .. } = place.place.record;
                let places = plan.places.entry(key.clone()).or_default();
                places.by_number.insert(number, place);
                places.by_name.entry(name.to_lowercase()).or_insert(number);
                let stays = plan.held.at(place).iter().map(Stay::of_register);
                plan.stays.entry((key.clone(), number)).or_default().extend(stays);
            }
            plan.machines.insert(key, row.machine);
        }
        Ok(plan)
    }

    /// Adds the rows, oldest hose first, so that each is taken off before the next goes on; what the register has already is
    /// known, or taken off where the list has it off. A row whose hose would have sat at its place beside another is refused.
    pub(super) fn add(
        &mut self,
        api: &mut Api,
        mut rows: Vec<Row>,
        names: &Names,
    ) -> Result<Vec<Told>, ApiError> {
        rows.sort_by_key(|row| (row.fitted, row.removed.is_none()));
        // The register's tables are ordered by code, and grow at their ends several times as fast as in their middles.
        let mut codes: Vec<TagCode> = rows.iter().map(|_| api.new_code()).collect();
        codes.sort_unstable();
        let mut told = Vec::with_capacity(rows.len());
        for (row, code) in rows.into_iter().zip(codes) {
            let what = format!("{}, {}, {}", row.site, row.machine, row.place_name);
            let number = row.row;
            told.push((number, what, self.add_row(api, row, code, names)?));
        }
        Ok(told)
    }

    /// Adds a row, under that code where it has none.
    fn add_row(
        &mut self,
        api: &mut Api,
        row: Row,
        code: TagCode,
        names: &Names,
    ) -> Result<Result<Became, String>, ApiError> {
        if let Some(code) = row.code.filter(|code| self.held.has(code)) {
            return Ok(Ok(self.known(code, &row)));
        }
        let kind = match self.kind(api, &row)? {
            Ok(kind) => kind,
            Err(why) => return Ok(Err(why)),
        };
        let key = (row.site.to_lowercase(), row.machine.to_lowercase());
        let number = self.number(&key, &row);
        let stays = self.stays.entry((key.clone(), number)).or_default();
        let same_day = if row.code.is_none() { stays.fitted_on(row.fitted) } else { None };
        let recorded = same_day.filter(|code| self.held.spec(code) == Some(&row.spec));
        let taken = match recorded {
            Some(code) => stays.take_for(code, &row, names),
            None => stays.add(Stay::of_list(&row), names).map(|()| Taken::New),
        };
        match (taken, recorded) {
            (Err(why), _) => return Ok(Err(why)),
            (Ok(Taken::Off), Some(code)) => return Ok(Ok(self.known(code, &row))),
            (Ok(_), Some(_)) => return Ok(Ok(Became::Known)),
            (Ok(_), None) => {}
        }
        let machine = self.machine(api, &key, &row);
        let place = self.place(api, machine, &key, number, &row);
        self.hose(api, place, kind, row.code.unwrap_or(code), row);
        Ok(Ok(Became::Made))
    }

    /// A hose that the register has: where the list has it off and the register on, it is taken off.
    fn known(&mut self, code: TagCode, row: &Row) -> Became {
        let sits = self.held.sits(&code).filter(|stay| stay.on_date == Some(row.fitted));
        let (Some(stay), Some(date)) = (sits, row.removed) else { return Became::Known };
        let (hours, cause, note) = (row.removed_hours, row.cause.clone(), row.note.clone());
        let place = stay.at.place;
        self.events.push(Body::TakenOff(TakenOff { code, place, date, hours, cause, note }));
        self.changed += 1;
        Became::Changed
    }

    /// The place's number: as the row says or, where it has a name alone, that of the place of that name, or the next.
    fn number(&mut self, key: &MachineKey, row: &Row) -> u32 {
        let places = self.places.entry(key.clone()).or_default();
        let name = row.place_name.to_lowercase();
        let next = || places.by_number.keys().chain(places.by_name.values()).max().map_or(1, |last| last + 1);
        let number = row.number.unwrap_or_else(|| places.by_name.get(&name).copied().unwrap_or_else(next));
        places.by_name.entry(name).or_insert(number);
        number
    }

    fn machine(&mut self, api: &mut Api, key: &MachineKey, row: &Row) -> MachineId {
        if let Some(machine) = self.machines.get(key) {
            return *machine;
        }
        let site = self.site(api, &row.site);
        let machine = MachineId::from_bytes(api.world.random());
        self.machines.insert(key.clone(), machine);
        self.machines_made += 1;
        let (name, sort) = (row.machine.clone(), row.kind.clone());
        self.events.push(Body::MachineSet(Machine { machine, site: Some(site), name, sort, demand: None }));
        if let Some(hours) = row.machine_hours {
            self.events.push(Body::HoursRead(HoursRead { machine, hours, date: api.today() }));
        }
        machine
    }

    fn site(&mut self, api: &mut Api, name: &str) -> SiteId {
        if let Some(site) = self.sites.get(&name.to_lowercase()) {
            return *site;
        }
        let site = SiteId::from_bytes(api.world.random());
        self.sites.insert(name.to_lowercase(), site);
        self.sites_made += 1;
        self.events.push(Body::SiteNamed(Site { site, name: name.to_owned() }));
        site
    }

    fn place(
        &mut self,
        api: &mut Api,
        machine: MachineId,
        key: &MachineKey,
        number: u32,
        row: &Row,
    ) -> PlaceId {
        let places = self.places.entry(key.clone()).or_default();
        if let Some(place) = places.by_number.get(&number) {
            return *place;
        }
        let place = PlaceId::from_bytes(api.world.random());
        places.by_number.insert(number, place);
        self.places_made += 1;
        self.events.push(Body::PlaceSet(Box::new(Place {
            place,
            machine,
            number,
            name: row.place_name.clone(),
            line: row.service.line,
            circuit: None,
            spec: Some(row.spec.clone()),
            service: row.service.clone(),
            ports: None,
            oil: None,
            demand: None,
            stakes: None,
            consequence: None,
        })));
        place
    }

    fn hose(&mut self, api: &Api, place: PlaceId, kind: Kind, code: TagCode, row: Row) {
        self.hoses_made += 1;
        let assembly = assembly(api, code, kind, &row);
        self.events.push(Body::AssemblyMade(Box::new(assembly)));
        let (date, hours) = (row.fitted, row.fitted_hours);
        self.events.push(Body::Fitted(Fitted { code, place, date, already_there: false, hours }));
        if let Some(date) = row.removed {
            let (hours, cause, note) = (row.removed_hours, row.cause, row.note);
            self.events.push(Body::TakenOff(TakenOff { code, place, date, hours, cause, note }));
        }
    }

    /// Lists have many hoses of few kinds: each kind is rated once.
    fn kind(&mut self, api: &Api, row: &Row) -> Result<Result<Kind, String>, ApiError> {
        let text =
            serde_json::to_string(&(&row.spec, &row.service)).map_err(|error| ApiError::input("", error))?;
        let rated = self.kinds.entry(text).or_insert_with(|| {
            let question =
                Question { spec: row.spec.clone(), service: row.service.clone(), ..Question::default() };
            let pressure = assembly_rating(api.catalogue, &question).map_err(|error| error.to_string())?;
            Ok(Kind { pressure, rests_on: api.catalogue.marks(&row.spec) })
        });
        Ok(rated.clone())
    }
}

/// A hose of a list: made elsewhere as far as we know, its pressure that of its weakest part.
fn assembly(api: &Api, code: TagCode, kind: Kind, row: &Row) -> Assembly {
    Assembly {
        code,
        spec: row.spec.clone(),
        service: row.service.clone(),
        hose_made: row.hose_made,
        assembled: row.assembled,
        proof: Proof::NotProved { why: NotProved::MadeElsewhere },
        verdict: None,
        pressure_bar: kind.pressure,
        bench: None,
        catalogue: api.catalogue.version.clone(),
        rests_on: kind.rests_on,
        program: PROGRAM.to_owned(),
        taken_in: None,
    }
}
