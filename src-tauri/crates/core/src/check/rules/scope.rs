//! What is refused whatever the hose: other lines with other rules, each in its own words.

use crate::check::fluid::squeezed;
use crate::check::subject::Subject;
use crate::check::{Finding, Verdict, cases};

/// Words in the name of a fluid, squeezed, that put it out of scope. The first that fits is taken.
const REFUSED: &[(&str, &str)] = &[
    ("brake", cases::SCOPE_BRAKES),
    ("dot3", cases::SCOPE_BRAKES),
    ("dot4", cases::SCOPE_BRAKES),
    ("dot5", cases::SCOPE_BRAKES),
    ("steam", cases::SCOPE_STEAM),
    ("oxygen", cases::SCOPE_OXYGEN),
    ("refrigerant", cases::SCOPE_REFRIGERANT),
    ("jetting", cases::SCOPE_WATER_JETTING),
    ("fuelgas", cases::SCOPE_FUEL_GAS),
    ("naturalgas", cases::SCOPE_FUEL_GAS),
    ("lpg", cases::SCOPE_FUEL_GAS),
    ("propane", cases::SCOPE_FUEL_GAS),
    ("butane", cases::SCOPE_FUEL_GAS),
    ("acetylene", cases::SCOPE_FUEL_GAS),
    ("hydrogen", cases::SCOPE_FUEL_GAS),
    ("compressed", cases::SCOPE_GAS),
    ("nitrogen", cases::SCOPE_GAS),
];

/// Names that are refused only when they stand alone.
const REFUSED_ALONE: &[(&str, &str)] = &[("air", cases::SCOPE_GAS), ("gas", cases::SCOPE_GAS)];

pub(super) fn scope(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.fluid.as_deref() else { return Vec::new() };
    let refusal = Finding::new("scope", Verdict::Stop, match refused(asked) {
        Some(key) => key,
        None => return Vec::new(),
    });
    vec![refusal.about("fluid", asked).from(&subject.caution("C17"))]
}

fn refused(asked: &str) -> Option<&'static str> {
    let asked = squeezed(asked);
    let within = REFUSED.iter().find(|(word, _)| asked.contains(word));
    let alone = || REFUSED_ALONE.iter().find(|(word, _)| asked == *word);
    within.or_else(alone).map(|(_, key)| *key)
}
