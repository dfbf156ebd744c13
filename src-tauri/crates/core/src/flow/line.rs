//! The oil in one hose of the tables: speed against what is usual, pressure drop warm and cold, sizes that would do,
//! and what the pressure does when the oil is stopped.

use super::{
    Elbow, FlowAnswer, FlowError, FlowQuestion, Fluid, SurgeAnswer, SurgeQuestion, flow, surge, velocity,
};
use crate::catalogue::{Basis, Catalogue, FluidGroup, HoseRow, Provenance, UnknownName};
use crate::check::{CheckError, Finding, Question, Verdict, findings_of, practice, usual_speed, wide_enough};
use crate::quantity::{Bar, Celsius, Dn, Metres, Millimetres};
use crate::spec::{HoseRef, Service, Spec};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// A hose and its service, as the check takes them, and what only the oil asks for.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct OilQuestion {
    /// The hose and, for the length, its overall length.
    pub spec: Spec,
    /// Flow, line, fluid, its hottest and coldest, working pressure.
    pub service: Service,
    /// Length of the whole line, where it is not the hose alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_m: Option<Metres>,
    /// Elbows and fittings in it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub elbows: Vec<Elbow>,
    /// The fluid's grade or viscosity and density, where they are known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fluid: Option<Fluid>,
    /// How long the valve takes to close; at once unless given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub closure_time_s: Option<f64>,
    /// Bulk modulus of the fluid, from its supplier.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bulk_modulus_pa: Option<f64>,
    /// Volumetric expansion of the hose (ISO 6801), from its supplier. Without it the wall is taken as rigid.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub volumetric_expansion_cm3_m_mpa: Option<f64>,
}

/// What the oil does in the hose. What can not be known from what was given is none.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct OilAnswer {
    /// Bore that was reckoned with: the hose's nominal one.
    pub bore_mm: Millimetres,
    /// At the hottest that was given, or where only a viscosity was.
    pub warm: FlowAnswer,
    /// At the coldest that was given: a cold start.
    pub cold: Option<FlowAnswer>,
    /// The speed that is usual in such a line; none while nobody said what the line does.
    pub usual: Option<UsualSpeed>,
    /// Whether the speed is within it: a caution above, and while it is not known.
    pub verdict: Verdict,
    /// The sizes of this type from the smallest in which the oil runs no faster than usual.
    pub sizes: Vec<SizeTried>,
    /// When the oil is stopped.
    pub surge: Option<Stopped>,
    /// What nobody gave and was taken instead.
    pub assumed: Vec<Assumption>,
}

/// The speed of oil that is usual in a kind of line.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct UsualSpeed {
    /// Least.
    pub low_m_s: f64,
    /// Most.
    pub high_m_s: f64,
    /// Source and basis.
    #[serde(flatten)]
    #[ts(flatten)]
    pub provenance: Provenance,
}

/// Another size of the type, put through the whole check in the same service.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SizeTried {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Speed of the oil in it.
    pub velocity_m_s: f64,
    /// The gravest that the whole check says of it and not of the spec's own hose: what was left out of the question
    /// speaks against both.
    pub verdict: Verdict,
}

/// What the pressure does when the whole flow is stopped.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Stopped {
    /// Wave and rise.
    #[serde(flatten)]
    #[ts(flatten)]
    pub answer: SurgeAnswer,
    /// Working pressure and rise together; none while the working pressure is not known.
    pub peak_bar: Option<Bar>,
}

/// A figure that nobody gave.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Assumption {
    /// Which: `oil-usual-grade`, `oil-usual-index`, `oil-bulk-modulus`, `oil-density`, `rigid-wall`,
    /// `sudden-closure`, `smooth-bore`.
    pub what: &'static str,
    /// It in words; empty until the edge writes it.
    pub words: String,
    /// Its value; none where it is none, such as a closure at once.
    pub value: Option<f64>,
    /// Unit of the value.
    pub unit: String,
    /// Source and basis.
    #[serde(flatten)]
    #[ts(flatten)]
    pub provenance: Provenance,
}

/// Why the oil in a hose can not be worked out.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum OilError {
    /// Something that is needed is missing.
    #[error("{field} is missing; give {wanted}")]
    Missing {
        /// The field.
        field: &'static str,
        /// What would be right.
        wanted: &'static str,
    },
    /// A name that is not in the tables.
    #[error("{field}: {name}")]
    Unknown {
        /// The field.
        field: String,
        /// The name and the nearest ones.
        name: UnknownName,
    },
    /// A figure that no line has.
    #[error(transparent)]
    Flow(#[from] FlowError),
    /// A figure that the check refuses.
    #[error(transparent)]
    Check(#[from] CheckError),
}

impl OilError {
    /// The field of the question that has to change.
    pub fn field(&self) -> String {
        match self {
            Self::Missing { field, .. } => (*field).to_owned(),
            Self::Unknown { field, .. } => field.clone(),
            Self::Flow(error) => error.field().to_owned(),
            Self::Check(error) => error.field().to_owned(),
        }
    }
}

/// The oil in the hose of a spec.
///
/// # Errors
/// Names the field that is missing or that no line can have.
pub fn oil(catalogue: &Catalogue, question: &OilQuestion) -> Result<OilAnswer, OilError> {
    let missing = |field, wanted| OilError::Missing { field, wanted };
    let named = question.spec.hose.as_ref();
    let named = named.ok_or_else(|| missing("spec.hose", "the hose by standard, type and dn"))?;
    let flow_l_min = question.service.flow_l_min;
    let flow_l_min = flow_l_min
        .ok_or_else(|| missing("service.flow_l_min", "the flow of the pump or valve, such as 60"))?;
    let unknown = |name: UnknownName| OilError::Unknown { field: format!("spec.hose.{}", name.what), name };
    let hose = catalogue.hose(&named.standard, &named.kind, named.dn).map_err(unknown)?;
    let mut assumed = vec![taken("smooth-bore", Some(0.0), "mm", practice())];
    let fluid = fluid(catalogue, question, &mut assumed);
    let length_m = length(question);
    let line = |temp_c: Option<Celsius>| FlowQuestion {
        flow_l_min,
        bore_mm: hose.id_nom_mm,
        length_m,
        // A grade says nothing without a temperature.
        fluid: fluid.filter(|fluid| temp_c.is_some() || fluid.kinematic_viscosity_mm2_s.is_some()),
        temp_c,
        roughness_mm: None,
        elbows: question.elbows.clone(),
    };
    let warm = flow(&line(question.service.fluid_max_c))?;
    let cold = question.service.fluid_min_c.filter(|_| fluid.is_some_and(|fluid| fluid.iso_vg.is_some()));
    // Oil too stiff for the equation of viscosity has no figure in the cold.
    let cold = cold.and_then(|temp_c| flow(&line(Some(temp_c))).ok());
    let usual = question.service.line.and_then(|line| usual_speed(catalogue, line));
    let usual = usual.map(|speed| UsualSpeed {
        low_m_s: speed.low_m_s,
        high_m_s: speed.high_m_s,
        provenance: speed.provenance.clone(),
    });
    let within = usual.as_ref().is_some_and(|usual| warm.velocity_m_s <= usual.high_m_s);
    let sizes =
        usual.as_ref().map_or_else(|| Ok(Vec::new()), |usual| sizes(catalogue, question, hose, usual))?;
    let surge = stopped(catalogue, question, hose, &warm, &mut assumed)?;
    let verdict = if within { Verdict::Pass } else { Verdict::Caution };
    Ok(OilAnswer { bore_mm: hose.id_nom_mm, warm, cold, usual, verdict, sizes, surge, assumed })
}

/// How many sizes from the smallest that would do.
const SIZES: usize = 3;

fn sizes(
    catalogue: &Catalogue,
    question: &OilQuestion,
    hose: &HoseRow,
    usual: &UsualSpeed,
) -> Result<Vec<SizeTried>, OilError> {
    let Some(flow_l_min) = question.service.flow_l_min else { return Ok(Vec::new()) };
    let rows = wide_enough(catalogue, hose, flow_l_min, usual.high_m_s);
    let found = |row: &HoseRow| -> Result<Vec<Finding>, OilError> {
        let spec = Spec {
            hose: Some(HoseRef::named(row.standard.as_str(), row.kind.as_str(), row.dn)),
            ..question.spec.clone()
        };
        let service = question.service.clone();
        Ok(findings_of(catalogue, &Question { spec, service, ..Question::default() })?)
    };
    let own = found(hose)?;
    let tried = rows.into_iter().take(SIZES).map(|row| {
        let as_own = |finding: &Finding| own.iter().any(|own| own.case == finding.case);
        let new = found(row)?.into_iter().filter(|finding| !as_own(finding));
        Ok(SizeTried {
            standard: row.standard.clone(),
            kind: row.kind.clone(),
            dn: row.dn,
            velocity_m_s: velocity(flow_l_min, row.id_nom_mm),
            verdict: new.map(|finding| finding.verdict).max().unwrap_or(Verdict::Pass),
        })
    });
    tried.collect()
}

/// The whole line's length, or the hose's own.
fn length(question: &OilQuestion) -> Option<Metres> {
    let hose = question.spec.overall_length_mm.map(|length| Metres(length.get() / 1000.0));
    question.length_m.or(hose)
}

/// The fluid's figures as given; for a mineral oil of which none are, the usual ones.
fn fluid(catalogue: &Catalogue, question: &OilQuestion, assumed: &mut Vec<Assumption>) -> Option<Fluid> {
    let given = question.fluid.unwrap_or_default();
    let class = question.service.fluid.as_deref().and_then(|name| catalogue.fluid(name).ok());
    let mineral = class.is_some_and(|class| class.group == FluidGroup::Oil);
    let told = given.iso_vg.is_some() || given.kinematic_viscosity_mm2_s.is_some();
    if !told && !mineral {
        return None;
    }
    if given.density_kg_m3.is_none() && given.kinematic_viscosity_mm2_s.is_none() {
        assumed.push(taken("oil-density", Some(868.0), "kg/m3", practice()));
    }
    if given.kinematic_viscosity_mm2_s.is_some() {
        return Some(given);
    }
    let mut usual = |key: &'static str, given: Option<f64>| {
        given.or_else(|| {
            let limit = catalogue.limit(key)?;
            assumed.push(taken(key, limit.value, &limit.unit, limit.provenance.clone()));
            limit.value
        })
    };
    let iso_vg = usual("oil-usual-grade", given.iso_vg);
    let viscosity_index = usual("oil-usual-index", given.viscosity_index);
    Some(Fluid { iso_vg, viscosity_index, ..given })
}

/// The whole flow stopped at the end of the line. What is not known is taken on the side of the higher peak.
fn stopped(
    catalogue: &Catalogue,
    question: &OilQuestion,
    hose: &HoseRow,
    warm: &FlowAnswer,
    assumed: &mut Vec<Assumption>,
) -> Result<Option<Stopped>, OilError> {
    let Some(density) = warm.density_kg_m3 else { return Ok(None) };
    let table = catalogue.limit("oil-bulk-modulus").and_then(|limit| Some((limit, limit.value? * 1e6)));
    let bulk_modulus_pa = match (question.bulk_modulus_pa, table) {
        (Some(own), _) => own,
        (None, Some((limit, modulus))) => {
            assumed.push(taken("oil-bulk-modulus", limit.value, &limit.unit, limit.provenance.clone()));
            modulus
        }
        (None, None) => return Ok(None),
    };
    if question.volumetric_expansion_cm3_m_mpa.is_none() {
        assumed.push(taken("rigid-wall", None, "", bound("Korteweg's wave speed")));
    }
    if question.closure_time_s.is_none() {
        assumed.push(taken("sudden-closure", None, "", bound("Joukowsky's rise")));
    }
    let answer = surge(&SurgeQuestion {
        bulk_modulus_pa,
        density_kg_m3: Some(density),
        bore_mm: Some(hose.id_nom_mm),
        wall_thickness_mm: None,
        wall_modulus_pa: None,
        poisson: None,
        length_m: length(question),
        velocity_change_m_s: Some(warm.velocity_m_s),
        closure_time_s: question.closure_time_s,
        air_fraction: None,
        pressure_pa: None,
        volumetric_expansion_cm3_m_mpa: question.volumetric_expansion_cm3_m_mpa,
    })?;
    let working = question.service.working_pressure_bar;
    let peak_bar =
        working.zip(answer.pressure_rise_bar).map(|(working, rise)| Bar(working.get() + rise.get()));
    Ok(Some(Stopped { answer, peak_bar }))
}

/// A wall that gives way slows the wave, and a slow valve lets it come back in time: neither can make the rise greater
/// than the formula has it without them.
fn bound(of: &str) -> Provenance {
    let source = format!("upper bound by {of} (Wylie and Streeter 1993)");
    Provenance { source, basis: Basis::Derived }
}

fn taken(what: &'static str, value: Option<f64>, unit: &str, provenance: Provenance) -> Assumption {
    Assumption { what, words: String::new(), value, unit: unit.to_owned(), provenance }
}
