//! A hose that is to be made, taken apart into what it needs.

use super::line::NeedLine;
use super::names::known;
use super::need::Extra;
use super::said::{Said, SaidCode};
use crate::commands::make::Prepared;
use crate::{Api, ApiError};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{Checked, Question};
use hosewright_core::make::EndSettings;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::StockUnit;
use hosewright_core::spec::{Adapter, EndSpec, Role};
use hosewright_core::stock::{Item, Stands, StockKind, Thing, Wanted, may_be};

/// One hose that is to be made, checked and taken apart.
#[derive(Debug)]
pub(in crate::commands) struct Build {
    pub question: Question,
    pub settings: Vec<EndSettings>,
    pub checked: Checked,
    /// The hose by its names; none while it is not said.
    pub hose: Option<Thing>,
    /// The length to cut; none while it is not known.
    pub cut_mm: Option<Millimetres>,
    pub kerf: Option<Millimetres>,
    /// Everything but the hose.
    pub wanted: Vec<Part>,
}

/// A part that one hose takes.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::commands) struct Part {
    pub item: Item,
    pub role: Option<Role>,
    pub count: i64,
}

impl Part {
    pub(in crate::commands) fn wanted(&self, hoses: i64) -> Wanted {
        Wanted { item: self.item.clone(), count: self.count * hoses }
    }
}

impl Build {
    pub(in crate::commands) fn of(
        catalogue: &Catalogue,
        prepared: Prepared,
        more: Vec<Extra>,
    ) -> Result<Self, ApiError> {
        let Prepared { asked: make, checked, kerf, .. } = prepared;
        let spec = &make.question.spec;
        let hose = match &spec.hose {
            Some(hose) => match known(catalogue, Thing::of_hose(hose).into())? {
                Item::Thing(hose) => Some(hose),
                Item::Named(_) => None,
            },
            None => None,
        };
        let mut wanted = Vec::new();
        for end in &spec.ends {
            wanted.extend(of_end(catalogue, end, hose.as_ref(), &make.settings)?);
        }
        for adapter in &spec.adapters {
            wanted.push(Part { item: thing_of(adapter).into(), role: None, count: 1 });
        }
        for (at, extra) in more.into_iter().enumerate() {
            if !(1..=1000).contains(&extra.count) {
                return Err(ApiError::input(format!("more[{at}].count"), "1 to 1000 is expected"));
            }
            wanted.push(Part { item: known(catalogue, extra.item)?, role: None, count: extra.count });
        }
        let cut_mm = checked.cut_length_mm;
        Ok(Self { settings: make.settings, question: make.question, checked, hose, cut_mm, kerf, wanted })
    }

    /// Whether a counted thing may have gone into it. Of kinds that nobody named, such as ferrules without settings,
    /// every one may have.
    pub(in crate::commands) fn may_use(&self, catalogue: &Catalogue, item: &Item) -> bool {
        let kind = item.kind();
        if !matches!(kind, StockKind::End | StockKind::Ferrule | StockKind::Adapter) {
            return true;
        }
        let mut alike = self.wanted.iter().filter(|part| part.item.kind() == kind).peekable();
        alike.peek().is_none() && kind == StockKind::Ferrule
            || alike.any(|part| may_be(catalogue, &part.item, item))
    }

    pub(super) fn roles_of(&self, item: &Item) -> Vec<Role> {
        self.wanted.iter().filter(|part| part.item == *item).filter_map(|part| part.role).collect()
    }

    pub(super) fn said(&self, api: &Api) -> Vec<Said> {
        let mut said = Vec::new();
        if self.cut_mm.is_none() {
            let name = self.hose.as_ref().map(Thing::name).unwrap_or_default();
            said.push(Said::of(api.words(), SaidCode::CutLengthNotKnown, &[("name", &name)]));
        }
        if self.kerf.is_none() {
            said.push(Said::of(api.words(), SaidCode::KerfNotKnown, &[]));
        }
        said
    }

    /// Ends whose ferrule nobody named: it is not known whether it is there.
    pub(in crate::commands) fn unnamed_ferrules(&self, api: &Api) -> Vec<NeedLine> {
        let named = |role: Role| {
            let own = self.settings.iter().find(|settings| settings.role == role);
            own.and_then(|settings| settings.ferrule.as_deref()).is_some_and(|name| !name.trim().is_empty())
        };
        let roles: Vec<Role> =
            self.question.spec.ends.iter().map(|end| end.role).filter(|role| !named(*role)).collect();
        if roles.is_empty() {
            return Vec::new();
        }
        vec![NeedLine {
            part: StockKind::Ferrule,
            item: None,
            name: api.words().say("stock-ferrule-unnamed", &[]),
            wanted: roles.len() as i64,
            roles,
            unit: StockUnit::Pieces,
            state: Stands::NotKnown,
            quantity: 0,
            bins: Vec::new(),
            doubtful: Vec::new(),
            elsewhere: Vec::new(),
        }]
    }
}

/// An end and its ferrule.
fn of_end(
    catalogue: &Catalogue,
    end: &EndSpec,
    hose: Option<&Thing>,
    settings: &[EndSettings],
) -> Result<Vec<Part>, ApiError> {
    let Some(Thing::Hose { dn, .. }) = hose else { return Ok(Vec::new()) };
    let own = settings.iter().find(|settings| settings.role == end.role);
    let item = known(
        catalogue,
        Item::from(Thing::End {
            family: end.family.clone(),
            size: end.size.clone(),
            gender: end.gender,
            form: end.form.clone(),
            dn: *dn,
            series: own.and_then(|own| own.series.clone()),
        }),
    )?;
    let role = Some(end.role);
    let mut parts = vec![Part { item, role, count: 1 }];
    let ferrule = own.and_then(|own| own.ferrule.as_deref()).map(str::trim).filter(|name| !name.is_empty());
    parts.extend(ferrule.map(|name| Part {
        item: Item::from(Thing::Ferrule { name: name.to_owned(), dn: Some(*dn) }),
        role,
        count: 1,
    }));
    Ok(parts)
}

fn thing_of(adapter: &Adapter) -> Thing {
    Thing::Adapter {
        name: adapter.name.trim().to_owned(),
        hose_side: adapter.between.as_ref().map(|between| between.hose_side.clone()),
        machine_side: adapter.between.as_ref().map(|between| between.machine_side.clone()),
        rating_bar: adapter.rating_bar,
    }
}
