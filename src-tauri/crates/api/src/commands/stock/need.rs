//! What a build needs against what is there: the piece to cut from, parts, and what may stand in for what is short.

use super::shelf::{NeedLine, Said, Shelf, end, hose_name, item_name, known, line, mm, tenths};
use super::used::{Used, UsedItem, UsedPiece};
use crate::commands::check::checked;
use crate::commands::make::{MakeQuestion, Prepared};
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::catalogue::{AgeOf, Catalogue};
use hosewright_core::check::{Checked, Question, Verdict, alternatives_of};
use hosewright_core::cutting::{self, Batch, CutPlan, StockSort};
use hosewright_core::make::EndSettings;
use hosewright_core::quantity::{Bar, Millimetres};
use hosewright_core::record::{Piece, PieceId, StockUnit};
use hosewright_core::spec::{Adapter, Between, EndSpec, HoseRef, Role, Spec};
use hosewright_core::stock::{Found, Item, Stands, StockKind, Thing, Wanted, may_be};
use hosewright_store::PieceKept;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What is to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "NeedQuestion")]
pub struct NeedQuestion {
    /// What is to be made, by which settings.
    pub make: MakeQuestion,
    /// From which van or shelf; the one this device works from without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub store: Option<String>,
    /// How many such hoses; one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub count: Option<u32>,
    /// Sleeves, seals and other things that each hose takes beside.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<Extra>>")]
    pub more: Vec<Extra>,
}

/// Something that a hose takes beside hose, ends and ferrules.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "ExtraPart")]
pub struct Extra {
    /// What.
    pub item: Item,
    /// How many for each hose.
    #[ts(type = "number")]
    pub count: i64,
}

/// What is needed, what is there, and what may stand in.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Need {
    /// Of which van or shelf.
    pub store: String,
    /// What the check says of it. Nothing is cut or used while it says stop.
    pub verdict: Verdict,
    /// What is needed against what is there.
    pub lines: Vec<NeedLine>,
    /// What is cut from what.
    pub cuts: Vec<CutFrom>,
    /// Other hoses of this store that are long enough and may be made, each by the whole check.
    pub substitutes: Vec<HoseSubstitute>,
    /// For an end that is short: another end with an adapter on it, by the whole check.
    pub adapters: Vec<AdapterWay>,
    /// What the record of each build may be told that it used; none while something is not there or not known.
    pub used: Vec<Used>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A piece that is cut from.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutFrom {
    /// Which.
    pub piece: PieceId,
    /// Reel or offcut.
    pub sort: StockSort,
    /// Its bin; blank is not said.
    pub bin: String,
    /// The supplier's name for it.
    pub label: String,
    /// First day of the period printed on it; none is not known.
    pub made: Option<NaiveDate>,
    /// Its length before.
    pub length_mm: Millimetres,
    /// The lengths that are cut from it.
    pub cuts_mm: Vec<Millimetres>,
    /// Its length after, the saw's kerf taken off.
    pub left_mm: Millimetres,
    /// Whether the rest is kept; one of an offcut that is too short is scrap.
    pub kept: bool,
}

/// Another hose that may be made in its place.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseSubstitute {
    /// Which.
    pub hose: Thing,
    /// It in words.
    pub name: String,
    /// What the whole check says of it; never stop.
    pub verdict: Verdict,
    /// For and against, in words.
    pub reasons: Vec<String>,
    /// The longest piece.
    pub piece: PieceId,
    /// Its bin.
    pub bin: String,
    /// Its length.
    pub length_mm: Millimetres,
}

/// Another end with an adapter on it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct AdapterWay {
    /// At which end.
    pub role: Role,
    /// The end that goes on the hose.
    pub end: Item,
    /// The adapter between it and the machine.
    pub adapter: Item,
    /// Both in words.
    pub names: Vec<String>,
    /// What the whole check says of it; never stop.
    pub verdict: Verdict,
    /// Rating of the whole with the adapter in the chain.
    pub assembly_pressure_bar: Option<Bar>,
    /// What would be made. Its length is to be measured anew: the adapter has one of its own.
    pub spec: Spec,
}

/// Most hoses that are asked for at once.
const MOST: u32 = 100;

/// What a build needs against what one van or shelf has.
///
/// # Errors
/// What `check` refuses; no such store; the register can not be read.
pub fn need(api: &mut Api, asked: NeedQuestion, _: &[u8]) -> Result<Answer<Need>, ApiError> {
    let count = asked.count.unwrap_or(1);
    if !(1..=MOST).contains(&count) {
        return Err(ApiError::input("count", format!("1 to {MOST} is expected")));
    }
    let prepared = Prepared::of(api, asked.make)?;
    let one = Build::of(api.catalogue, prepared, asked.more)?;
    let shelf = Shelf::of(api, asked.store.as_deref())?;
    let kerf = one.kerf;
    let mut said = one.said(api);
    let cut = Cutting::of(api, &shelf, &one.hose, &vec![one.cut_mm; count as usize], kerf)?;
    said.extend(cut.said.clone());
    let wanted: Vec<Wanted> = one.wanted.iter().map(|part| part.wanted(i64::from(count))).collect();
    let found = shelf.needs(api.catalogue, &wanted);
    let mut lines: Vec<NeedLine> = cut.line.iter().cloned().collect();
    lines.extend(found.iter().map(|found| line(api, &shelf, found, one.roles_of(&found.wanted.item))));
    lines.extend(one.unnamed_ferrules(api));
    let stops = one.checked.verdict == Verdict::Stop;
    let hose_open = stops || lines.first().is_some_and(|line| line.state != Stands::There);
    let substitutes = if hose_open { substitutes(api, &shelf, &one)? } else { Vec::new() };
    let adapters = adapters(api, &shelf, &one, &found)?;
    let used = if stops { Vec::new() } else { used(&shelf, &cut, &found, count) };
    let cuts = if stops { Vec::new() } else { cut.from.clone() };
    let verdict = one.checked.verdict;
    Ok(api.answer(Need { store: shelf.store, verdict, lines, cuts, substitutes, adapters, used, said }))
}

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

    fn roles_of(&self, item: &Item) -> Vec<Role> {
        self.wanted.iter().filter(|part| part.item == *item).filter_map(|part| part.role).collect()
    }

    fn said(&self, api: &Api) -> Vec<Said> {
        let mut said = Vec::new();
        if self.cut_mm.is_none() {
            let name = self.hose.as_ref().map(Thing::name).unwrap_or_default();
            said.push(Said::of(api.words(), "cut-length-not-known", &[("name", &name)]));
        }
        if self.kerf.is_none() {
            said.push(Said::of(api.words(), "kerf-not-known", &[]));
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

/// Lengths of one hose, cut from what one store has of it.
#[derive(Debug)]
pub(in crate::commands) struct Cutting {
    /// The line of the hose; none while it is not said.
    pub line: Option<NeedLine>,
    /// What is cut from what; nothing while a length is not known.
    pub from: Vec<CutFrom>,
    /// The plan, and the pieces it names by their place.
    pub plan: Option<CutPlan>,
    /// For each length asked for, the piece it is cut from.
    pub of: Vec<Option<PieceId>>,
    pub said: Vec<Said>,
}

impl Cutting {
    pub(in crate::commands) fn of(
        api: &mut Api,
        shelf: &Shelf,
        hose: &Option<Thing>,
        lengths: &[Option<Millimetres>],
        kerf: Option<Millimetres>,
    ) -> Result<Self, ApiError> {
        let mut cut = Self {
            line: None,
            from: Vec::new(),
            plan: None,
            of: vec![None; lengths.len()],
            said: Vec::new(),
        };
        let Some(hose) = hose else { return Ok(cut) };
        let useful = api.settings()?.offcut_mm;
        let kerf = kerf.unwrap_or(Millimetres(0.0));
        let mut pieces = shelf.pieces_of(hose);
        if pieces.len() > Batch::MOST {
            pieces.sort_by_key(|kept| std::cmp::Reverse(kept.tenths_mm));
            pieces.truncate(Batch::MOST);
            cut.said.push(Said::of(api.words(), "too-many-pieces", &[("name", &hose_name(hose))]));
        }
        let known: Option<Vec<Millimetres>> = lengths.iter().copied().collect();
        let total: i64 = pieces.iter().map(|kept| kept.tenths_mm).sum();
        let (mut stands, mut wanted) = (Stands::NotKnown, 0);
        if let Some(known) = known {
            let plan = cutting::cut(&Batch {
                pieces_mm: known.clone(),
                stock: pieces
                    .iter()
                    .map(|kept| cutting::Stock {
                        sort: kept.piece.record.sort,
                        length_mm: mm(kept.tenths_mm),
                    })
                    .collect(),
                kerf_mm: kerf,
                useful_mm: useful.unwrap_or(Millimetres(0.0)),
            })?;
            for one in &plan.cuts {
                let Some(kept) = pieces.get(one.stock) else { continue };
                for place in &one.pieces {
                    cut.of[*place] = Some(kept.piece.record.piece);
                }
                let cuts_mm = one.pieces.iter().filter_map(|place| known.get(*place).copied()).collect();
                cut.from.push(cut_from(kept, cuts_mm, one.left_mm, one.kept));
                cut.said.extend(aged(api, &kept.piece.record));
            }
            for length in &known {
                wanted += tenths("cut_length_mm", Millimetres(length.get() + kerf.get()))?;
            }
            stands = match (plan.unmade.is_empty(), shelf.keeps_hose(hose)) {
                (true, _) => Stands::There,
                (false, true) => Stands::Short,
                (false, false) => Stands::NotKept,
            };
            cut.plan = Some(plan);
        }
        let mut bins: Vec<String> = cut.from.iter().map(|from| from.bin.clone()).collect();
        bins.retain(|bin| !bin.is_empty());
        bins.sort();
        bins.dedup();
        cut.line = Some(NeedLine {
            part: StockKind::Hose,
            item: Some(hose.clone().into()),
            roles: Vec::new(),
            name: hose_name(hose),
            wanted: (wanted + 9) / 10,
            unit: StockUnit::Millimetres,
            state: stands,
            quantity: total / 10,
            bins,
            doubtful: Vec::new(),
            elsewhere: if stands == Stands::There { Vec::new() } else { shelf.hose_elsewhere(hose) },
        });
        Ok(cut)
    }
}

fn cut_from(kept: &PieceKept, cuts_mm: Vec<Millimetres>, left_mm: Millimetres, keep: bool) -> CutFrom {
    let record = &kept.piece.record;
    CutFrom {
        piece: record.piece,
        sort: record.sort,
        bin: record.bin.clone(),
        label: record.label.clone(),
        made: record.made,
        length_mm: mm(kept.tenths_mm),
        cuts_mm,
        left_mm,
        kept: keep,
    }
}

/// A piece older than hose should be when it is made into an assembly, by the shortest guide age that may be meant; or of
/// an age that nobody knows.
pub(super) fn aged(api: &Api, piece: &Piece) -> Option<Said> {
    let name = hose_name(&piece.hose);
    let Some(made) = piece.made else {
        return Some(Said::of(api.words(), "hose-age-not-known", &[("name", &name)]));
    };
    let months = api.catalogue.ages_of(AgeOf::HoseStorage).map(|age| age.months).min()?;
    let limit = made.checked_add_months(chrono::Months::new(months))?;
    (api.today() > limit).then(|| {
        let values = [("name", name.as_str()), ("made", &made.to_string()), ("months", &months.to_string())];
        Said::of(api.words(), "hose-old", &values)
    })
}

/// Other hoses of the store that are long enough for the length asked for, put through the whole check.
fn substitutes(api: &Api, shelf: &Shelf, build: &Build) -> Result<Vec<HoseSubstitute>, ApiError> {
    let Some(length) = build.cut_mm else { return Ok(Vec::new()) };
    let length = tenths("cut_length_mm", length)?;
    let mut longest: Vec<&PieceKept> = Vec::new();
    for kept in shelf.pieces().filter(|kept| kept.tenths_mm >= length) {
        match longest.iter_mut().find(|one| one.piece.record.hose == kept.piece.record.hose) {
            Some(one) if one.tenths_mm < kept.tenths_mm => *one = kept,
            Some(_) => {}
            None => longest.push(kept),
        }
    }
    let hoses: Vec<HoseRef> = longest.iter().filter_map(|kept| reference(&kept.piece.record.hose)).collect();
    let tried = alternatives_of(api.catalogue, &build.question, &hoses)?;
    let may = tried.into_iter().filter(|tried| tried.verdict != Verdict::Stop);
    let found = may.filter_map(|mut tried| {
        // Another size is another bore and other ends.
        let own = build.question.spec.hose.as_ref()?.dn;
        if !api.catalogue.one_size(own, tried.dn) {
            return None;
        }
        let hose = Thing::Hose { standard: tried.standard, kind: tried.kind, dn: tried.dn };
        let kept = longest.iter().find(|kept| kept.piece.record.hose == hose)?;
        for ground in &mut tried.grounds {
            crate::commands::check::word(api.words(), ground);
        }
        Some(HoseSubstitute {
            name: hose_name(&hose),
            hose,
            verdict: tried.verdict,
            reasons: tried.grounds.into_iter().map(|ground| ground.why).collect(),
            piece: kept.piece.record.piece,
            bin: kept.piece.record.bin.clone(),
            length_mm: mm(kept.tenths_mm),
        })
    });
    Ok(found.collect())
}

fn reference(hose: &Thing) -> Option<HoseRef> {
    match hose {
        Thing::Hose { standard, kind, dn } => Some(HoseRef::named(standard.as_str(), kind.as_str(), *dn)),
        _ => None,
    }
}

/// For each end that is not there: every other end of the store that an adapter of the store makes it of, by the whole
/// check with the adapter's rating in the chain.
fn adapters(api: &Api, shelf: &Shelf, build: &Build, found: &[Found]) -> Result<Vec<AdapterWay>, ApiError> {
    let items: Vec<Item> =
        shelf.items().into_iter().filter(|kept| kept.quantity > 0).map(|kept| kept.item).collect();
    let mut ways = Vec::new();
    for wanted in &build.question.spec.ends {
        let short = |part: &&Part| {
            part.role == Some(wanted.role)
                && part.item.kind() == StockKind::End
                && found.iter().any(|one| one.wanted.item == part.item && one.stands != Stands::There)
        };
        if !build.wanted.iter().any(|part| short(&part)) {
            continue;
        }
        for adapter in &items {
            for other in &items {
                ways.extend(way(api, build, wanted, adapter, other)?);
            }
        }
    }
    ways.sort_by_key(|way| way.verdict);
    Ok(ways)
}

/// That end with that adapter in the place of the wanted end, where they fit and the check does not stop it.
fn way(
    api: &Api,
    build: &Build,
    wanted: &EndSpec,
    adapter: &Item,
    other: &Item,
) -> Result<Option<AdapterWay>, ApiError> {
    let Item::Thing(Thing::Adapter {
        name,
        hose_side: Some(hose_side),
        machine_side: Some(machine_side),
        rating_bar,
    }) = adapter
    else {
        return Ok(None);
    };
    let Item::Thing(Thing::End { family, size, gender, form, dn, .. }) = other else { return Ok(None) };
    let fits_hose = build.hose.as_ref().is_some_and(|hose| match hose {
        Thing::Hose { dn: own, .. } => api.catalogue.one_size(*own, *dn),
        _ => false,
    });
    let instead = end(wanted.role, family, size, *gender, form.clone());
    if !fits_hose || !machine_side.is_like(wanted) || !hose_side.takes(&instead) {
        return Ok(None);
    }
    let mut question = build.question.clone();
    for end in question.spec.ends.iter_mut().filter(|end| end.role == wanted.role) {
        *end = instead.clone();
    }
    question.spec.adapters.push(Adapter {
        name: name.clone(),
        rating_bar: *rating_bar,
        between: Some(Between {
            role: wanted.role,
            hose_side: hose_side.clone(),
            machine_side: machine_side.clone(),
        }),
    });
    let checked = checked(api, &question)?;
    if checked.verdict == Verdict::Stop {
        return Ok(None);
    }
    Ok(Some(AdapterWay {
        role: wanted.role,
        end: other.clone(),
        adapter: adapter.clone(),
        names: vec![item_name(other, api.words()), item_name(adapter, api.words())],
        verdict: checked.verdict,
        assembly_pressure_bar: checked.assembly_pressure_bar,
        spec: question.spec,
    }))
}

/// What each build uses, where all of it is there. One that takes from the doubtful is for a person to say.
fn used(shelf: &Shelf, cut: &Cutting, found: &[Found], count: u32) -> Vec<Used> {
    let all_there = found.iter().all(|one| one.stands == Stands::There);
    let pieces: Option<Vec<PieceId>> = cut.of.iter().copied().collect();
    let lengths: Vec<(PieceId, Millimetres)> =
        cut.from.iter().flat_map(|from| from.cuts_mm.iter().map(|length| (from.piece, *length))).collect();
    let (true, Some(pieces)) = (all_there, pieces) else { return Vec::new() };
    let mut stocked: Vec<(Item, i64)> = found
        .iter()
        .flat_map(|one| one.from.iter().map(|(kept, taken)| (kept.item.clone(), *taken)))
        .collect();
    let builds = pieces.into_iter().enumerate().map(|(at, piece)| {
        let length =
            lengths.iter().find(|(of, _)| *of == piece).map_or(Millimetres(0.0), |(_, length)| *length);
        let rest = i64::from(count) - at as i64;
        let items = stocked.iter_mut().filter_map(|(item, left)| {
            let own = (*left + rest - 1) / rest;
            *left -= own;
            (own > 0).then(|| UsedItem { item: item.clone(), count: own })
        });
        Used {
            store: shelf.store.clone(),
            items: items.collect(),
            pieces: vec![UsedPiece { piece, length_mm: length, scrap_rest: false }],
        }
    });
    builds.collect()
}
