//! A tag that this register has nothing of -> a hose on record.

use super::{believed, is_vouched_for};
use crate::{Answer, Api, ApiError, PROGRAM};
use hosewright_core::check::{self, Question};
use hosewright_core::quantity::Bar;
use hosewright_core::record::{
    self, About, Assembly, Body, EventRef, Labelled, LabelledHow, NotProved, Noted, TakenIn,
};
use hosewright_core::spec::{Service, Spec};
use hosewright_core::tag::{self, Proof, TagCode, TagContent, TagStanding};
use hosewright_words::{Pressure, pressure};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A tag to be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct TagAdopt {
    /// Its whole text, as it was read.
    pub text: String,
}

/// A hose that was taken in from its tag.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TagAdopted {
    /// Its code.
    pub code: TagCode,
    /// The events; they are on the disk.
    pub written: Vec<EventRef>,
    /// What stands on record.
    pub assembly: Assembly,
}

/// Takes a hose into the register from its tag. Its proof stays a remark: how long and by which gauge stands on no tag.
/// Its pressure and its maker's own figures are what its tag says only where a fleet sealed it that this device knows. Else
/// those figures are left out, and it carries the lower of its tag and the tables, not known where the tables know none.
///
/// # Errors
/// The text is no whole tag, or was altered; the register has the code already, or can not be written.
pub fn adopt(api: &mut Api, asked: TagAdopt, _: &[u8]) -> Result<Answer<TagAdopted>, ApiError> {
    let keys = api.register()?.keys()?;
    let own = keys.own().map(|fleet| &fleet.key);
    let read = tag::open(&asked.text, own, &keys.partners());
    let Some((standing, content)) = read.and_then(|read| Some((read.standing, read.content?))) else {
        let why = "only a whole tag can be taken in, as it was made: scan it again; of a code alone the words beside it are the spec to enter";
        return Err(ApiError::input("text", why));
    };
    let code = content.code;
    if api.register()?.hose(&code)?.is_some() {
        let why = format!(
            "the register has {code} already; what it says otherwise than its tag is for its record to say"
        );
        return Err(ApiError::input("text", why));
    }
    let assembly = made_elsewhere(api, &content, standing);
    let bodies = [
        Body::AssemblyMade(Box::new(assembly.clone())),
        Body::Labelled(Labelled { code, how: LabelledHow::Seen }),
        Body::Noted(Noted { about: About::Hose(code), text: remark(api, &content, standing) }),
    ];
    let now = api.world.now();
    let written = api.register()?.append(bodies, now)?;
    Ok(api.answer(TagAdopted { code, written, assembly }))
}

fn made_elsewhere(api: &Api, content: &TagContent, standing: TagStanding) -> Assembly {
    let why = if content.proof == Proof::NoRig { NotProved::NoRig } else { NotProved::MadeElsewhere };
    Assembly {
        code: content.code,
        spec: believed(content, standing),
        service: Service {
            line: content.line,
            fluid: content.fluid.clone(),
            duties: content.duties.clone(),
            ..Service::default()
        },
        hose_made: None,
        assembled: content.assembled.map(|made| made.first_day()),
        proof: record::Proof::NotProved { why },
        verdict: None,
        pressure_bar: carried(api, content, standing),
        bench: None,
        catalogue: content.catalogue.clone(),
        rests_on: if content.catalogue == api.catalogue.version {
            api.catalogue.marks(&content.spec)
        } else {
            Vec::new()
        },
        program: PROGRAM.to_owned(),
        taken_in: Some(match standing {
            TagStanding::Own => TakenIn::Own,
            TagStanding::Partner => TakenIn::Partner,
            _ => TakenIn::Unknown,
        }),
    }
}

fn carried(api: &Api, content: &TagContent, standing: TagStanding) -> Option<Bar> {
    if is_vouched_for(standing) {
        return content.pressure_bar;
    }
    let question = Question { spec: believed(content, standing), ..Question::default() };
    let tables = check::assembly_rating(api.catalogue, &question).ok().flatten()?;
    content.pressure_bar.map(|said| Bar(said.get().min(tables.get())))
}

/// Who sealed it and what it says of its proof.
fn remark(api: &Api, content: &TagContent, standing: TagStanding) -> String {
    let words = &api.words;
    let proof = match content.proof {
        Proof::Proved { pressure_bar } => {
            words.say("label-proved", &[("pressure", &pressure(pressure_bar.get(), Pressure::Bar))])
        }
        Proof::NotProved => words.say("label-not-proved", &[]),
        Proof::NoRig => words.say("label-no-rig", &[]),
    };
    let said = words.say(&format!("tag-taken-in-{}", crate::key(&standing)), &[("proof", &proof)]);
    match left_out(content, standing).as_slice() {
        [] => said,
        lines => format!("{said} {}", words.say("tag-taken-in-left-out", &[("lines", &lines.join("; "))])),
    }
}

/// The tag's lines with figures that were not taken over.
fn left_out(content: &TagContent, standing: TagStanding) -> Vec<String> {
    let facts = |spec: Spec| {
        let text = tag::write(&TagContent { spec, seal: None, ..content.clone() });
        text.lines().map(str::to_owned).collect::<Vec<_>>()
    };
    let (all, kept) = (facts(content.spec.clone()), facts(believed(content, standing)));
    all.into_iter().filter(|line| !kept.contains(line) && !line.starts_with("SUM ")).collect()
}
