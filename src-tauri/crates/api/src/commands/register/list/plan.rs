//! Rows -> the events that write them down: sites, machines and places that are new, then every hose
//! in the order it was fitted.

use super::RowRefused;
use super::row::Row;
use super::stays::{Stay, Stays};
use crate::{Api, ApiError, PROGRAM};
use hosewright_core::check::{Question, assembly_rating};
use hosewright_core::record::{
    Assembly, Body, Fitted, HoursRead, Machine, MachineId, NotProved, Place, PlaceId, Proof, Site, SiteId,
    TakenOff,
};
use hosewright_core::tag::TagCode;
use std::collections::HashMap;

/// Site and machine in lower case, and the place's number: what a list calls a place by.
type PlaceKey = (String, String, u32);

fn key(row: &Row) -> PlaceKey {
    (row.site.to_lowercase(), row.machine.to_lowercase(), row.number)
}

/// What there is and what is to be written.
#[derive(Default)]
pub(super) struct Plan {
    sites: HashMap<String, SiteId>,
    machines: HashMap<(String, String), MachineId>,
    places: HashMap<(MachineId, u32), PlaceId>,
    stays: HashMap<PlaceKey, Stays>,
    pub(super) events: Vec<Body>,
    pub(super) sites_made: usize,
    pub(super) machines_made: usize,
    pub(super) places_made: usize,
    pub(super) hoses_made: usize,
    /// Rows without a code whose hose the register has.
    pub(super) known: usize,
}

impl Plan {
    /// Begins with what the register has.
    pub(super) fn over(api: &mut Api) -> Result<Self, ApiError> {
        let register = api.register()?;
        let mut plan = Self::default();
        for site in register.sites()? {
            plan.sites.insert(site.name.to_lowercase(), site.site);
        }
        for row in register.machines()? {
            let site = row.site_name.unwrap_or_default().to_lowercase();
            let name = row.name.to_lowercase();
            for place in register.machine(row.machine)?.map(|sheet| sheet.places).unwrap_or_default() {
                let Place { place, number, .. } = place.place.record;
                plan.places.insert((row.machine, number), place);
                let sheet = register.place(place)?;
                let stays = sheet.iter().flat_map(|sheet| &sheet.stays).map(Stay::of_register);
                plan.stays.entry((site.clone(), name.clone(), number)).or_default().extend(stays);
            }
            plan.machines.insert((site, name), row.machine);
        }
        Ok(plan)
    }

    /// Adds the rows, oldest hose first, so that each is taken off before the next goes on; a row without a
    /// code that says what the register has already is counted as known. Gives back those whose hose would
    /// have sat at its place beside another.
    pub(super) fn add(&mut self, api: &mut Api, mut rows: Vec<Row>) -> Result<Vec<RowRefused>, ApiError> {
        rows.sort_by_key(|row| (row.fitted, row.removed.is_none()));
        let mut refused = Vec::new();
        for row in rows {
            let stays = self.stays.entry(key(&row)).or_default();
            let recorded = recorded(api, stays, &row)?;
            let seated = match recorded {
                Some(code) => stays.take_for(code, &row),
                None => stays.add(Stay::of_list(&row)),
            };
            if let Err(why) = seated {
                refused.push(RowRefused { row: row.row, why });
                continue;
            }
            if recorded.is_some() {
                self.known += 1;
                continue;
            }
            let machine = self.machine(api, &row);
            let place = self.place(api, machine, &row);
            self.hose(api, place, row)?;
        }
        Ok(refused)
    }

    /// Nothing comes of it: a row of the list was refused, and all are taken in or none.
    pub(super) fn makes_nothing(&mut self) {
        self.events.clear();
        (self.sites_made, self.machines_made, self.places_made, self.hoses_made) = (0, 0, 0, 0);
    }

    fn machine(&mut self, api: &mut Api, row: &Row) -> MachineId {
        let key = (row.site.to_lowercase(), row.machine.to_lowercase());
        if let Some(machine) = self.machines.get(&key) {
            return *machine;
        }
        let site = self.site(api, &row.site);
        let machine = MachineId::from_bytes(api.world.random());
        self.machines.insert(key, machine);
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

    fn place(&mut self, api: &mut Api, machine: MachineId, row: &Row) -> PlaceId {
        if let Some(place) = self.places.get(&(machine, row.number)) {
            return *place;
        }
        let place = PlaceId::from_bytes(api.world.random());
        self.places.insert((machine, row.number), place);
        self.places_made += 1;
        self.events.push(Body::PlaceSet(Box::new(Place {
            place,
            machine,
            number: row.number,
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

    fn hose(&mut self, api: &mut Api, place: PlaceId, row: Row) -> Result<(), ApiError> {
        let code = match row.code {
            Some(code) => code,
            None => api.new_code(),
        };
        self.hoses_made += 1;
        let assembly = assembly(api, code, &row)?;
        self.events.push(Body::AssemblyMade(Box::new(assembly)));
        let (date, hours) = (row.fitted, row.fitted_hours);
        self.events.push(Body::Fitted(Fitted { code, place, date, already_there: false, hours }));
        if let Some(date) = row.removed {
            let (hours, cause, note) = (row.removed_hours, row.cause, row.note);
            self.events.push(Body::TakenOff(TakenOff { code, place, date, hours, cause, note }));
        }
        Ok(())
    }
}

/// The hose of the register that a row without a code is about: fitted at the same place on the same day, by
/// the same spec.
fn recorded(api: &mut Api, stays: &Stays, row: &Row) -> Result<Option<TagCode>, ApiError> {
    let same_day = if row.code.is_none() { stays.fitted_on(row.fitted) } else { None };
    let Some(code) = same_day else { return Ok(None) };
    let assembly = api.register()?.hose(&code)?.and_then(|hose| hose.assembly);
    Ok(assembly.filter(|assembly| assembly.record.spec == row.spec).map(|_| code))
}

/// A hose of a list: made elsewhere as far as we know, its pressure that of its weakest part.
fn assembly(api: &Api, code: TagCode, row: &Row) -> Result<Assembly, ApiError> {
    let question = Question { spec: row.spec.clone(), service: row.service.clone(), ..Question::default() };
    let pressure_bar = assembly_rating(api.catalogue, &question)?;
    Ok(Assembly {
        code,
        spec: row.spec.clone(),
        service: row.service.clone(),
        hose_made: row.hose_made,
        assembled: row.assembled,
        proof: Proof::NotProved { why: NotProved::MadeElsewhere },
        verdict: None,
        pressure_bar,
        bench: None,
        catalogue: api.catalogue.version.clone(),
        rests_on: api.catalogue.marks(&row.spec),
        program: PROGRAM.to_owned(),
        taken_in: None,
    })
}
