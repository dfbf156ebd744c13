//! The same again at a place: what is made where the hose that sits there is replaced by its like.

use crate::{Api, ApiError};
use hosewright_core::check::{Failures, Way};
use hosewright_core::make::EndSettings;
use hosewright_core::record::Assembly;
use hosewright_core::spec::{Service, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::PlaceSheet;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// The same again at a place.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Again {
    /// The hose that sits there and comes off; the latest where more than one is said to sit there.
    pub replaces: Option<TagCode>,
    /// That hose as it was made, or what belongs there; none where nobody knows the hose.
    pub spec: Option<Spec>,
    /// What the new one has to stand.
    pub service: Service,
    /// How its ends were crimped.
    pub settings: Vec<EndSettings>,
    /// Why it is not made without a look at the place, in words.
    pub why_not: Option<String>,
}

/// The same again at that place: of the hose that sits there, or of the last that did.
///
/// # Errors
/// The register can not be read.
pub(in crate::commands) fn again(
    api: &mut Api,
    sheet: &PlaceSheet,
    failures: &Failures,
) -> Result<Again, ApiError> {
    let sitting: Vec<TagCode> =
        sheet.stays.iter().filter(|stay| stay.off.is_none()).map(|stay| stay.code).collect();
    let last = sitting.last().copied().or_else(|| sheet.stays.last().map(|stay| stay.code));
    let hose = match last {
        Some(code) => api.register()?.hose(&code)?,
        None => None,
    };
    let contradicted = sitting.len() > 1 || hose.as_ref().is_some_and(|hose| !hose.conflicts.is_empty());
    let made: Option<Assembly> = hose.and_then(|hose| hose.assembly).map(|assembly| assembly.record);
    let relief = sheet.circuit.as_ref().and_then(|circuit| circuit.record.relief_bar);
    let service = sheet.place.record.asks(relief, made.as_ref().map(|made| made.service.clone()));
    let settings = made.as_ref().and_then(|made| made.bench.as_ref()).map(|bench| bench.settings.clone());
    let spec = made.map(|made| made.spec).or_else(|| sheet.place.record.spec.clone());
    let spec = spec.filter(|spec| spec.hose.is_some());
    let words = api.words();
    let why_not = match &spec {
        None => Some(words.say("round-hose-not-known", &[])),
        Some(_) if contradicted => Some(words.say("round-contradicted", &[])),
        Some(_) if failures.way == Way::Long => {
            Some(words.say("round-repeated", &[("times", &failures.times)]))
        }
        Some(_) => None,
    };
    Ok(Again {
        replaces: sitting.last().copied(),
        spec,
        service,
        settings: settings.unwrap_or_default(),
        why_not,
    })
}
